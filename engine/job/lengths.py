"""Feet of duct and fittings along the longest run: as stated, or as believed in a usual house."""

from dataclasses import dataclass
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.job.sample import House
from engine.trade.fittings import FITTINGS, SizeClass

__all__ = ["Lengths", "lengths_of"]

_TRUNK_PART, _BRANCH_PART, _DROP_PART, _RETURN_PART = 0.20, 0.32, 0.20, 0.10
"""How a usual longest run's fittings count for all the air (judgement): less than one together,
because other runs have fewer."""

_TRUNK_STRAIGHT: Final = 0.55
"""Share of the supply side's straight feet that is trunk (judgement)."""


@dataclass(frozen=True, slots=True)
class Lengths:
    """Feet along the longest run; arrays are (n + 1,).

    Attributes:
        supply_ft: Straight, supply side.
        return_ft: Straight, return side.
        trunk_ft: Straight trunk on the supply side.
        branch_ft: Straight branch.
        trunk_fittings_ft: What fittings of the trunk are worth.
        branch_fittings_ft: What fittings of the branch are worth.
        drop_fittings_ft: What fittings of the return drop are worth.
        return_fittings_ft: What the other fittings of the return side are worth.
        total_effective_ft: All of it.
        known: Whether somebody stated the total or every piece of it.
        supply_keys: Keys of the supply side.
        return_keys: Keys of the return side.
        formula: The central sum.
    """

    supply_ft: Array
    return_ft: Array
    trunk_ft: Array
    branch_ft: Array
    trunk_fittings_ft: Array
    branch_fittings_ft: Array
    drop_fittings_ft: Array
    return_fittings_ft: Array
    total_effective_ft: Array
    known: bool
    supply_keys: tuple[str, ...]
    return_keys: tuple[str, ...]
    formula: str


def lengths_of(house: House) -> Lengths:
    """Lengths along the longest run."""
    return house.once("lengths", lambda: _lengths_of(house))


def _lengths_of(house: House) -> Lengths:
    supply, back = house.number("path.supply_length_ft"), house.number("path.return_length_ft")
    straight = supply + back
    total_key = "path.total_effective_length_ft"
    entries = tuple(house.job.entries("path.fittings"))
    if entries:
        return _from_fittings(house, entries, supply, back)
    stated = house.stated_number(total_key)
    total = house.number(total_key) if stated is None else stated
    total = np.maximum(total, straight + 40.0) if stated is None else total
    fittings = np.maximum(total - straight, 40.0)
    formula = f"{total[0]:,.0f} ft"
    return _made(
        supply,
        back,
        (fittings * _TRUNK_PART, fittings * _BRANCH_PART),
        (fittings * _DROP_PART, fittings * _RETURN_PART),
        total,
        house.is_stated(total_key),
        ((total_key, "path.supply_length_ft"), (total_key, "path.return_length_ft")),
        formula,
    )


def _from_fittings(house: House, entries: tuple[str, ...], supply: Array, back: Array) -> Lengths:
    feet = {
        ("supply", SizeClass.TRUNK): house.full(0.0),
        ("supply", SizeClass.BRANCH): house.full(0.0),
        ("return", SizeClass.TRUNK): house.full(0.0),
        ("return", SizeClass.BRANCH): house.full(0.0),
    }
    words = []
    for key in entries:
        kind = house.job.word(f"{key}.kind") or ""
        row = FITTINGS.get(kind)
        side = house.job.word(f"{key}.side") or (
            "return" if row is not None and row.side == "return" else "supply"
        )
        count = house.stated_number(f"{key}.count")
        many = house.full(1.0) if count is None else count
        told = house.stated_number(f"{key}.equivalent_ft")
        if told is not None:
            each = told
        elif row is not None:
            each = house.assumed(f"{key}.equivalent_ft", row.low_ft, row.likely_ft, row.high_ft)
        else:
            each = house.assumed(f"{key}.equivalent_ft", 15.0, 35.0, 70.0)
        at = SizeClass.BRANCH if row is not None and row.at is SizeClass.BRANCH else SizeClass.TRUNK
        feet[side, at] = feet[side, at] + many * each
        words.append(f"{many[0]:g} x {each[0]:,.0f}")
    total = supply + back + sum(feet.values(), start=house.full(0.0))
    formula = f"{supply[0]:,.0f} + {back[0]:,.0f} ft straight + fittings {' + '.join(words)} = "
    formula += f"{total[0]:,.0f} ft"
    back_fittings = feet["return", SizeClass.TRUNK] + feet["return", SizeClass.BRANCH]
    known = house.is_stated("path.supply_length_ft") and house.is_stated("path.return_length_ft")
    return _made(
        supply,
        back,
        (feet["supply", SizeClass.TRUNK], feet["supply", SizeClass.BRANCH]),
        (back_fittings * 0.5, back_fittings * 0.5),
        total,
        known,
        (("path.supply_length_ft", "path.fittings"), ("path.return_length_ft", "path.fittings")),
        formula,
    )


def _made(
    supply: Array,
    back: Array,
    supply_fittings: tuple[Array, Array],
    return_fittings: tuple[Array, Array],
    total: Array,
    known: bool,
    keys: tuple[tuple[str, ...], tuple[str, ...]],
    formula: str,
) -> Lengths:
    return Lengths(
        supply_ft=supply,
        return_ft=back,
        trunk_ft=supply * _TRUNK_STRAIGHT,
        branch_ft=supply * (1.0 - _TRUNK_STRAIGHT),
        trunk_fittings_ft=supply_fittings[0],
        branch_fittings_ft=supply_fittings[1],
        drop_fittings_ft=return_fittings[0],
        return_fittings_ft=return_fittings[1],
        total_effective_ft=total,
        known=known,
        supply_keys=keys[0],
        return_keys=keys[1],
        formula=formula,
    )
