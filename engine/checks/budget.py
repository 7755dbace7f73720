"""What each part of the path takes of total external static, beside its usual share of it."""

from collections.abc import Iterable, Mapping
from typing import Final

from engine.checks.context import Context
from engine.job.evidence_readings import Tap, Tapped, with_plain_signs
from engine.trade.exponents import PressurePart
from engine.trade.limits import Limits
from engine.verdict import PressureShare

__all__ = ["PART_WORDS", "over_their_share", "shares_of_path", "shares_of_taps", "usual_shares"]

PART_WORDS: Final = {
    PressurePart.RETURN_DUCT: "return",
    PressurePart.FILTER: "filter",
    PressurePart.COIL: "coil",
    PressurePart.STRIP_HEAT: "strips",
    PressurePart.SUPPLY_DUCT: "supply",
}
"""What to call the parts, in the order the air meets them."""


def usual_shares(limits: Limits) -> dict[PressurePart, float]:
    """What part of the rated static each part may take: 1 together, without strips."""
    return {
        PressurePart.RETURN_DUCT: limits.return_drop_share.value,
        PressurePart.FILTER: limits.filter_drop_share.value,
        PressurePart.COIL: limits.coil_drop_share.value,
        PressurePart.STRIP_HEAT: limits.strip_drop_share.value,
        PressurePart.SUPPLY_DUCT: limits.supply_drop_share.value,
    }


def shares_of_path(context: Context, airflow_cfm: float) -> tuple[PressureShare, ...]:
    """Of the central house at an airflow: what each part outside the rating takes."""
    system = context.system
    drops = {
        part: system.central_drop_inwc(part, airflow_cfm, context.mode)
        for part, found in system.parts.items()
        if not found.inside[0]
    }
    return _shares(drops, sum(drops.values()), context.limits)


def shares_of_taps(
    taps: Mapping[Tap, Tapped],
    total_inwc: float,
    limits: Limits,
    *,
    filter_is_inside: bool = False,
    coil_is_inside: bool = False,
    no_coil: bool = False,
) -> tuple[PressureShare, ...]:
    """Of what was read: the parts that the taps tell apart, in the order the air meets them.

    Args:
        taps: The pressures, as typed.
        total_inwc: Total external static of the same reading.
        limits: The office's figures.
        filter_is_inside: The total doesn't contain the filter.
        coil_is_inside: The total doesn't contain the coil.
        no_coil: There was no coil in the airstream.
    """
    read = {tap: taken.value_inwc for tap, taken in with_plain_signs(taps).items()}
    at_blower = read.get(Tap.AFTER_FILTER, read.get(Tap.RETURN))
    at_outlet = read.get(Tap.BEFORE_COIL, read.get(Tap.SUPPLY))
    filters = _drop(read.get(Tap.FILTER_DROP), at_blower, read.get(Tap.BEFORE_FILTER))
    coil = _drop(read.get(Tap.COIL_DROP), at_outlet, read.get(Tap.AFTER_COIL))
    ducts = {
        PressurePart.RETURN_DUCT: _rest(read.get(Tap.BEFORE_FILTER), at_blower, filters),
        PressurePart.SUPPLY_DUCT: _rest(
            read.get(Tap.AFTER_COIL), at_outlet, 0.0 if no_coil else coil
        ),
    }
    drops = {
        PressurePart.RETURN_DUCT: ducts[PressurePart.RETURN_DUCT],
        PressurePart.FILTER: None if filter_is_inside else filters,
        PressurePart.COIL: None if coil_is_inside or no_coil else coil,
        PressurePart.SUPPLY_DUCT: ducts[PressurePart.SUPPLY_DUCT],
    }
    told = {part: drop for part, drop in drops.items() if drop is not None and drop >= 0.0}
    return _shares(told, total_inwc, limits)


def over_their_share(shares: Iterable[PressureShare]) -> tuple[str, ...]:
    """Parts that take more than their usual share, the worst first."""
    over = [one for one in shares if one.share > one.usual_share]
    over.sort(key=lambda one: one.share / one.usual_share, reverse=True)
    return tuple(one.part for one in over)


def _drop(told: float | None, higher: float | None, lower: float | None) -> float | None:
    """A drop as it was read, else the difference of the readings on both sides."""
    if told is not None:
        return told
    return None if higher is None or lower is None else higher - lower


def _rest(told: float | None, both: float | None, other: float | None) -> float | None:
    """A duct's reading, else what the nearest one has besides the piece between."""
    if told is not None:
        return told
    return None if both is None or other is None else both - other


def _shares(
    drops: Mapping[PressurePart, float], total_inwc: float, limits: Limits
) -> tuple[PressureShare, ...]:
    if total_inwc <= 0.0:
        return ()
    usual = usual_shares(limits)
    return tuple(
        PressureShare(PART_WORDS[part], drops[part], drops[part] / total_inwc, usual[part])
        for part in PART_WORDS
        if part in drops
    )
