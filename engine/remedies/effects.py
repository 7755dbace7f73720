"""What each change does, kept so that sets of changes can be guessed before they are re-judged.

For every mode and check: how far the figure is beyond its limit in each sample, as a logarithm
above 0 where it is over. Changes are guessed to act one after the other, so logarithms add up.
Guesses only order the search; what is told was re-judged.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from engine.arrays import Array
from engine.assessment import Assessment, ModeAssessment
from engine.checks.raw import Raw
from engine.job.modes import Mode

__all__ = ["Effects", "guessed_over_share", "severities"]

_MOST = 3.0
_JUST = 1e-6

Severities = Mapping[Mode, Mapping[str, Array]]


@dataclass(frozen=True, slots=True)
class Effects:
    """Severities of the house as it stands, and what each change adds, in one order of checks.

    Attributes:
        modes: Modes, in order.
        base: By mode, (checks, n).
        change: By mode, (candidates, checks, n).
    """

    modes: tuple[Mode, ...]
    base: Mapping[Mode, Array]
    change: Mapping[Mode, Array]

    @classmethod
    def of(cls, before: Assessment, after: Sequence[Assessment]) -> "Effects":
        """Compare a house with each of its single changes; all of the same samples and modes."""
        first, others = severities(before), [severities(it) for it in after]
        base: dict[Mode, Array] = {}
        change: dict[Mode, Array] = {}
        for mode, found in first.items():
            checks = sorted({*found, *(name for other in others for name in other[mode])})
            none = np.full(before.house.members - 1, -_MOST)
            base[mode] = np.stack([found.get(name, none) for name in checks])
            change[mode] = np.stack(
                [
                    np.stack([other[mode].get(name, none) for name in checks]) - base[mode]
                    for other in others
                ]
                or [np.zeros_like(base[mode])]
            )
        return cls(tuple(first), base, change)


def severities(assessment: Assessment) -> dict[Mode, dict[str, Array]]:
    """By mode and check, (n,): the logarithm of figure over limit, the worst place of a check."""
    return {mode: _of_mode(it) for mode, it in assessment.modes.items()}


def _of_mode(it: ModeAssessment) -> dict[str, Array]:
    found: dict[str, Array] = {}
    for raw in it.raws:
        if not raw.votes:
            continue
        one = _severity(raw)
        found[raw.check] = np.maximum(found[raw.check], one) if raw.check in found else one
    return found


def _severity(raw: Raw) -> Array:
    over = raw.judged.over[1:]
    if raw.maximum is None:
        return np.where(over, _JUST, -_MOST)
    limit = np.broadcast_to(np.asarray(raw.maximum, dtype=np.float64), raw.figure.shape)[1:]
    figure = raw.figure[1:]
    with np.errstate(divide="ignore", invalid="ignore"):
        beyond = np.log(limit / figure) if raw.is_floor else np.log(figure / limit)
    beyond = np.clip(np.nan_to_num(beyond, nan=-_MOST), -_MOST, _MOST)
    return np.asarray(np.where(over, np.maximum(beyond, _JUST), np.minimum(beyond, 0.0)))


def guessed_over_share(effects: Effects, mode: Mode, chosen: Sequence[int]) -> float:
    """Share of the samples guessed to have something over with these changes made together."""
    severity = effects.base[mode] + effects.change[mode][list(chosen)].sum(axis=0)
    return float(np.mean((severity > 0.0).any(axis=0)))
