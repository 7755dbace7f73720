"""A finding before it is told: its figure and its limits over all members of a house."""

from dataclasses import dataclass

import numpy as np

from engine.arrays import Array, Floats
from engine.job.job import LISTS, Job
from engine.job.modes import Mode
from engine.job.sample import Mask
from engine.verdict import Finding, FindingStatus, Harm, Part, PressureShare, Spread, TurnsAt

__all__ = ["Judged", "Raw", "against", "finding_of", "is_known_key", "spread_of"]

_ROUNDING = 1e-9
"""A figure within this share of a limit is equal to it, and passes."""


@dataclass(frozen=True, slots=True)
class Judged:
    """In which members a figure is over and in which it is tight; (n + 1,) each, never both."""

    over: Mask
    tight: Mask


@dataclass(frozen=True, slots=True)
class Raw:
    """One question put to every member of a house; see `engine.verdict.Finding` for the fields.

    Attributes:
        figure: (n + 1,).
        recommended: Limit beyond which it is tight; scalar or (n + 1,), or None.
        maximum: Limit beyond which it is over; scalar or (n + 1,), or None.
        judged: Where it is over and where tight.
        is_floor: The limits are floors: less is worse.
    """

    check: str
    part: Part
    mode: Mode
    where: str
    figure: Array
    unit: str
    recommended: Floats | None
    maximum: Floats | None
    judged: Judged
    harm: Harm
    rests_on: tuple[str, ...]
    formula: str
    source: str
    turns_at: TurnsAt | None = None
    is_floor: bool = False
    setting: str = ""
    because: tuple[str, ...] = ()
    note: str = ""
    votes: bool = True
    shares: tuple[PressureShare, ...] = ()

    @property
    def status(self) -> FindingStatus:
        """Of the central house."""
        if self.judged.over[0]:
            return FindingStatus.OVER
        return FindingStatus.TIGHT if self.judged.tight[0] else FindingStatus.FINE

    @property
    def over_share(self) -> float:
        """Share of the samples in which it is over."""
        return np.count_nonzero(self.judged.over[1:]) / (self.figure.size - 1)

    @property
    def tight_share(self) -> float:
        """Share of the samples in which it is tight."""
        return np.count_nonzero(self.judged.tight[1:]) / (self.figure.size - 1)


def against(
    figure: Array,
    recommended: Floats | None,
    maximum: Floats | None,
    *,
    is_floor: bool = False,
    present: Mask | None = None,
) -> Judged:
    """Compare a figure with its limits; a value equal to a limit passes.

    Args:
        figure: (n + 1,).
        recommended: Beyond it is tight; None if there is no such limit.
        maximum: Beyond it is over; None if there is no such limit.
        is_floor: Limits are floors: below is beyond.
        present: Where the question applies at all; everywhere if None.

    >>> bool(against(np.array([900.0]), 700.0, 900.0).over[0])
    False
    """

    def beyond(limit: Floats | None) -> Mask:
        if limit is None:
            return np.zeros(figure.shape, dtype=bool)
        if is_floor:
            return np.asarray(figure < limit * (1.0 - _ROUNDING))
        return np.asarray(figure > limit * (1.0 + _ROUNDING))

    over, tight = beyond(maximum), beyond(recommended)
    if present is not None:
        over, tight = over & present, tight & present
    return Judged(over, tight & ~over)


def spread_of(values: Array) -> Spread:
    """10th, 50th and 90th percentile over the samples of an (n + 1,) array."""
    low, likely, high = np.percentile(values[1:], (10.0, 50.0, 90.0))
    return Spread(float(low), float(likely), float(high))


def is_known_key(job: Job, key: str) -> bool:
    """Whether somebody stated a fact, a list, or a table."""
    if key in LISTS:
        return job.length(key) is not None
    if key == "equipment.blower_tables":
        return bool(job.blower)
    if key == "equipment.cooling_rows":
        return bool(job.cooling_rows)
    return job.is_known(key)


def finding_of(raw: Raw, job: Job) -> Finding:
    """What is told of a question: the central figure, and the shares over the samples."""
    known = tuple(dict.fromkeys(key for key in raw.rests_on if is_known_key(job, key)))
    others = tuple(dict.fromkeys(key for key in raw.rests_on if key not in known))
    recommended, maximum = _central(raw.recommended), _central(raw.maximum)
    figure = float(raw.figure[0])
    limit = recommended if maximum is None else maximum
    ratio = None
    if limit is not None and limit > 0.0:
        ratio = (limit / figure if figure > 0.0 else np.inf) if raw.is_floor else figure / limit
    return Finding(
        check=raw.check,
        part=raw.part,
        mode=raw.mode,
        where=raw.where,
        figure=figure,
        unit=raw.unit,
        recommended=recommended,
        maximum=maximum,
        ratio=ratio,
        status=raw.status,
        over_share=raw.over_share,
        tight_share=raw.tight_share,
        harm=raw.harm,
        spread=spread_of(raw.figure),
        rests_on=known + others,
        known=known,
        turns_at=raw.turns_at,
        formula=raw.formula,
        source=raw.source,
        setting=raw.setting,
        because=raw.because,
        note=raw.note,
        votes=raw.votes,
        shares=raw.shares,
    )


def _central(limit: Floats | None) -> float | None:
    if limit is None:
        return None
    return float(np.asarray(limit).reshape(-1)[0])
