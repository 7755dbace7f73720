"""What a change buys: which figures it brings nearer to their limits, and the best one in words."""

from typing import Final

import numpy as np

from engine.assessment import Assessment
from engine.checks.raw import Raw
from engine.job.modes import Mode

__all__ = ["buys", "lowers_a_figure"]

_HELPS_FIGURE: Final = 0.03
"""Share of a figure that a change must gain to count as a help (judgement)."""


def _worst_by_check(raws: tuple[Raw, ...]) -> dict[str, tuple[float, Raw]]:
    """By check the central figure over its limit, and the finding it is of."""
    found: dict[str, tuple[float, Raw]] = {}
    for raw in raws:
        if not raw.votes or raw.maximum is None:
            continue
        limit = float(np.asarray(raw.maximum).reshape(-1)[0])
        figure = float(raw.figure[0])
        if limit <= 0.0 or figure <= 0.0:
            continue
        ratio = limit / figure if raw.is_floor else figure / limit
        if raw.check not in found or ratio > found[raw.check][0]:
            found[raw.check] = (ratio, raw)
    return found


def lowers_a_figure(before: tuple[Raw, ...], after: tuple[Raw, ...]) -> bool:
    """Whether a figure that is over comes notably nearer to its limit, at the same setting."""
    then = _worst_by_check(after)
    return any(
        check in then
        and then[check][1].setting == raw.setting
        and then[check][0] < (1.0 - _HELPS_FIGURE) * ratio
        for check, (ratio, raw) in _worst_by_check(before).items()
        if raw.over_share > 0.02
    )


def buys(before: Assessment, after: Assessment, failing: tuple[Mode, ...]) -> str:
    """One sentence: the figure that gains most alone, in the mode that it gains most in."""
    best: tuple[float, str] = (0.0, "")
    for mode in failing:
        now, then = (_worst_by_check(it.modes[mode].raws) for it in (before, after))
        for check, (ratio, raw) in now.items():
            if check not in then or raw.over_share <= 0.02:
                continue
            if then[check][1].setting != raw.setting:  # another setting, not the same figure
                continue
            gain = (ratio - then[check][0]) / ratio
            if gain > best[0] + 1e-3:
                best = (gain, _gain_words(raw, then[check][1]))
    return best[1]


def _gain_words(now: Raw, then: Raw) -> str:
    digits = 2 if abs(float(now.figure[0])) < 10.0 else 0
    limit = float(np.asarray(now.maximum).reshape(-1)[0])
    word = "at least" if now.is_floor else "at most"
    return (
        f"Alone it takes {_CHECK_WORDS.get(now.check, now.where)} from "
        f"{float(now.figure[0]):,.{digits}f} to {float(then.figure[0]):,.{digits}f} {now.unit}; "
        f"{word} {limit:,.{digits}f} is wanted."
    )


_CHECK_WORDS: Final = {
    "delivered_airflow": "the air the blower gives",
    "external_static": "total external static",
    "temperature_rise": "the temperature rise",
    "coil_window": "the air over the coil",
    "sensible_coverage": "sensible cooling",
    "strip_minimum": "the air over the strips",
}
