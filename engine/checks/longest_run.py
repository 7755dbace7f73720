"""The longest run: its effective length, what static is left for it, and the friction rate.

It explains where the pressure goes. It votes only where neither a blower table nor a reading with
its airflow exists, and then as tight.
"""

from typing import Final

import numpy as np

from engine.arrays import Array
from engine.checks.context import Context
from engine.checks.raw import Judged, Raw, against
from engine.job.job import BlowerSetting
from engine.trade.exponents import PressurePart
from engine.verdict import Harm, Part

__all__ = ["NOTHING_LEFT", "NO_REACH", "available_static", "longest_run"]

NOTHING_LEFT: Final = "nothing is left for the ducts"
NO_REACH: Final = "this setting can't give the target"


def longest_run(context: Context, setting: BlowerSetting | None, *, has_reading: bool) -> list[Raw]:
    """Effective length with its flag, and the friction rate of one setting.

    Args:
        context: One mode.
        setting: The blower's setting; None without a table.
        has_reading: Whether a reading with its airflow exists.
    """
    votes = setting is None and not has_reading
    return [_length(context), _friction_rate(context, setting, votes=votes)]


def _length(context: Context) -> Raw:
    lengths, limit = context.lengths, context.limits.long_path_ft
    figure = lengths.total_effective_ft
    judged = against(figure, limit.value, None)
    note = "Over 500 ft is told first: shorten it or ease its fittings." if judged.tight[0] else ""
    return Raw(
        check="effective_length",
        part=Part.SUPPLY_BRANCHES,
        mode=context.mode,
        where="longest run",
        figure=figure,
        unit="ft",
        recommended=limit.value,
        maximum=None,
        judged=judged,
        harm=Harm.AIR,
        rests_on=tuple(dict.fromkeys((*lengths.supply_keys, *lengths.return_keys))),
        formula=lengths.formula,
        source=limit.source,
        note=note,
        votes=False,
    )


def available_static(
    context: Context, setting: BlowerSetting | None
) -> tuple[Array, Array, str, bool]:
    """Static left for the ducts at the target, (n + 1,).

    Returns:
        What is left, in wc; whether the setting reaches the target (1) or not (0); the arithmetic;
        and whether the central house's setting reaches it.
    """
    house, target = context.house, context.target_cfm
    if setting is None:
        external = house.number("equipment.rated_static_inwc")
        reaches = np.ones(house.members)
        words = [f"{external[0]:.2f} in. rated"]
    else:
        found = setting.table.static_at(target)
        external = np.asarray(found.static_inwc, dtype=np.float64)
        reaches = np.asarray(setting.table.reaches(target), dtype=np.float64)
        words = [f"{external[0]:.2f} in. in the table at {target[0]:,.0f} CFM"]
    left = external.copy()
    for part, name in (
        (PressurePart.COIL, "coil"),
        (PressurePart.FILTER, "filter"),
        (PressurePart.STRIP_HEAT, "strips"),
    ):
        it = context.system.parts.get(part)
        if it is None:
            continue
        drop = np.where(it.inside, 0.0, context.system.drop_inwc(part, target, context.mode))
        left = left - drop
        if not it.inside[0]:
            words.append(f"{name} {drop[0]:.2f}")
    ends = _ends(context)
    left = left - sum((drop for _, drop in ends), start=house.full(0.0))
    words += [f"{name} {drop[0]:.2f}" for name, drop in ends]
    return left, reaches, " - ".join(words) + f" = {left[0]:.2f} in.", bool(reaches[0] > 0.5)


def _ends(context: Context) -> list[tuple[str, Array]]:
    """Register, grille and, where somebody stated one, damper: full at the reference airflow."""
    house = context.house
    square = np.square(context.target_cfm / context.system.reference_cfm) * context.ratio
    found = [("register", house.number("new.register_drop_inwc") * square)]
    found.append(("grille", house.number("new.grille_drop_inwc") * square))
    if "new.damper_drop_inwc" in house.job.beliefs:
        found.append(("damper", house.number("new.damper_drop_inwc") * square))
    return found


def _friction_rate(context: Context, setting: BlowerSetting | None, *, votes: bool) -> Raw:
    limits, length = context.limits, context.lengths.total_effective_ft
    low, high = limits.friction_rate_low_inwc_per_100ft, limits.friction_rate_high_inwc_per_100ft
    left, reaches, words, reached = available_static(context, setting)
    figure = np.maximum(left, 0.0) * 100.0 / length
    short = against(figure, low.value, None, is_floor=True).tight | (reaches < 0.5)
    nothing = np.zeros_like(short)
    if not reached:
        note, formula = NO_REACH, f"{NO_REACH}, {context.target.likely_cfm:,.0f} CFM"
    elif left[0] <= 0.0:
        note, formula = NOTHING_LEFT, f"{words}: {NOTHING_LEFT}"
    else:
        note = _rate_note(float(figure[0]), low.value, high.value)
        formula = f"{words}; x 100 / {length[0]:,.0f} ft = {figure[0]:.3f} in. per 100 ft"
    lengths = context.lengths
    return Raw(
        check="friction_rate",
        part=Part.BLOWER,
        mode=context.mode,
        where="longest run",
        figure=figure,
        unit="in. w.c. per 100 ft",
        recommended=low.value,
        maximum=None,
        judged=Judged(nothing, short),
        harm=Harm.AIR,
        rests_on=tuple(
            dict.fromkeys(
                (
                    "equipment.blower_tables" if setting else "equipment.rated_static_inwc",
                    *context.system.rests_on(),
                    *lengths.supply_keys,
                    *lengths.return_keys,
                    *context.target.rests_on,
                )
            )
        ),
        formula=formula,
        source=low.source,
        is_floor=True,
        setting="" if setting is None else setting.table.setting,
        note=note,
        votes=votes,
    )


def _rate_note(rate: float, low: float, high: float) -> str:
    if rate < low:
        return "Below the usual window: the run is long for what the blower has left."
    if rate > high:
        return "Above the usual window: more pressure than needed; speed decides, not friction."
    return "Inside the usual window."
