"""Return openings, filters and registers as they are believed to be: gross sizes.

Openings draw from the same return, so the air through all of them goes at about the same speed:
what counts is their area together.
"""

from dataclasses import dataclass
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.job.belief import How
from engine.job.priors import FILTER_IN2_PER_TON, OPENING_IN2_PER_TON, tons_of_the_house
from engine.job.sample import House, Mask
from engine.trade.measuring import MEASURED_WHERE, MeasuredWhere

__all__ = ["FilterBank", "Openings", "Registers", "filters_of", "openings_of", "registers_of"]

_FRAME_CHANCE: Final = {How.MEASURED: 0.25, How.PHOTO: 0.5, How.PHONE: 0.7, How.GUESSED: 0.7}
"""How often a grille whose place wasn't told was read at its frame (common practice)."""


_FILTER_AT_GRILLE: Final = 0.30
_SMALLEST_IN: Final = 2.0


@dataclass(frozen=True, slots=True)
class Openings:
    """All return openings together; arrays are (n + 1,).

    Attributes:
        stated: Whether somebody stated their sizes.
        area_ft2: Gross area of all of them.
        filtered: Where a filter sits in the opening, so that the filter grille's limits apply.
        sizes: Central sizes for the arithmetic, "20 x 20 in." or "2 of 20 x 20 in.".
        size_keys: Keys of their sizes, the first the most natural to change.
        rests_on: Keys that all of this comes from.
        widths: Central width, height and count of each, in the order stated.
    """

    stated: bool
    area_ft2: Array
    filtered: Mask
    sizes: str
    size_keys: tuple[str, ...]
    rests_on: tuple[str, ...]
    widths: tuple[tuple[float, float, float], ...] = ()


@dataclass(frozen=True, slots=True)
class FilterBank:
    """Filters side by side at one place; arrays are (n + 1,).

    Attributes:
        place: "cabinet" or "grille"; where unstated, the central house's.
        stated: Whether somebody stated their size.
        area_ft2: Printed face area of all of them.
        depth_in: Printed thickness.
        present: Where they exist.
        sizes: Central sizes for the arithmetic.
        rests_on: Keys that this comes from.
    """

    place: str
    stated: bool
    area_ft2: Array
    depth_in: Array
    present: Mask
    sizes: str
    rests_on: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Registers:
    """All supply registers that were stated; their gross area together, (n + 1,)."""

    area_ft2: Array
    count: Array
    sizes: str
    rests_on: tuple[str, ...]


def filters_of(house: House) -> tuple[FilterBank, ...]:
    """Filters by place: stated ones, or what is believed where nobody spoke of any.

    Returns:
        At most one bank in the cabinet and one in the grilles, which are in series; empty where
        the list was stated to be empty.
    """
    return house.once("filters", lambda: _filters_of(house))


def _filters_of(house: House) -> tuple[FilterBank, ...]:
    entries = tuple(house.job.entries("filters"))
    if house.job.length("filters") == 0:
        return ()
    if not entries:
        at_grille = _unsaid_place(house, "filters")
        return tuple(
            _usual_filter(house, place, present)
            for place, present in (("cabinet", ~at_grille), ("grille", at_grille))
        )
    banks: dict[str, FilterBank] = {}
    for key in entries:
        place = house.job.word(f"{key}.place") or _likely_place(house)
        one = _stated_filter(house, key, place)
        banks[place] = _together(banks[place], one) if place in banks else one
    return tuple(banks.values())


def _likely_place(house: House) -> str:
    filtered = any(
        house.job.word(f"{key}.has_filter") == "yes" for key in house.job.entries("return.grilles")
    )
    return "grille" if filtered else "cabinet"


def _unsaid_place(house: House, fact: str) -> Mask:
    return house.is_word(
        "filters place",
        "grille",
        prior={"cabinet": 1.0 - _FILTER_AT_GRILLE, "grille": _FILTER_AT_GRILLE},
        fact=fact,
    )


def _usual_filter(house: House, place: str, present: Mask) -> FilterBank:
    r = FILTER_IN2_PER_TON
    per_ton = house.assumed("filters in2 per ton", r.low, r.likely, r.high, fact="filters")
    area = tons_of_the_house(house) * np.maximum(per_ton, r.least) / 144.0
    depth = house.assumed("filters depth", 1.0, 1.0, 4.0, fact="filters").clip(0.5, 5.0)
    sizes = f"a believed {area[0] * 144.0:,.0f} sq in."
    return FilterBank(place, False, area, depth, present, sizes, ("filters",))


def _stated_filter(house: House, key: str, place: str) -> FilterBank:
    keys = [f"{key}.width_in", f"{key}.height_in"]
    width = house.stated_or(keys[0], 14.0, 16.0, 20.0)
    height = house.stated_or(keys[1], 20.0, 25.0, 25.0)
    count = house.stated_number(f"{key}.count")
    if count is not None:
        keys.append(f"{key}.count")
    many = house.full(1.0) if count is None else count
    depth = house.stated_or(f"{key}.depth_in", 1.0, 1.0, 4.0)
    area = width * height * many / 144.0
    stated = all(house.is_stated(k) for k in keys[:2])
    sizes = _size(width[0], height[0], many[0])
    rests = (*keys, f"{key}.depth_in")
    return FilterBank(place, stated, area, depth, np.ones(house.members, dtype=bool), sizes, rests)


def _together(first: FilterBank, second: FilterBank) -> FilterBank:
    return FilterBank(
        first.place,
        first.stated and second.stated,
        first.area_ft2 + second.area_ft2,
        np.minimum(first.depth_in, second.depth_in),
        first.present | second.present,
        f"{first.sizes} + {second.sizes}",
        first.rests_on + second.rests_on,
    )


def openings_of(house: House) -> Openings | None:
    """The return openings; None where the list was stated to be empty.

    Where no grille was stated but filters in grilles were, these filters are the openings.
    """
    return house.once("openings", lambda: _openings_of(house))


def _openings_of(house: House) -> Openings | None:
    if house.job.length("return.grilles") == 0:
        return None
    entries = tuple(house.job.entries("return.grilles"))
    banks = filters_of(house)
    if not entries:
        at_grille = [bank for bank in banks if bank.place == "grille" and bank.stated]
        if at_grille:
            bank = at_grille[0]
            filtered = np.ones(house.members, dtype=bool)
            return Openings(
                True, bank.area_ft2, filtered, bank.sizes, bank.rests_on[:2], bank.rests_on
            )
        return _usual_openings(house, banks)
    area = house.full(0.0)
    sizes: list[str] = []
    keys: list[str] = []
    boxes: list[tuple[float, float, float]] = []
    for key in entries:
        width, height = _grille_side(house, key, "width_in"), _grille_side(house, key, "height_in")
        count = house.stated_number(f"{key}.count")
        many = house.full(1.0) if count is None else count
        area = area + width * height * many / 144.0
        sizes.append(_size(width[0], height[0], many[0]))
        boxes.append((float(width[0]), float(height[0]), float(many[0])))
        keys += [f"{key}.width_in", f"{key}.height_in"]
        keys += [f"{key}.count"] if count is not None else []
        keys += [f"{key}.measured_where"] if _has_where(house, key) else []
    stated = all(house.is_stated(k) for k in keys if k.endswith("_in"))
    filtered, more = _filtered(house, entries, banks)
    sides = tuple(k for k in keys if k.endswith("_in"))
    return Openings(stated, area, filtered, " + ".join(sizes), sides, (*keys, *more), tuple(boxes))


def _usual_openings(house: House, banks: tuple[FilterBank, ...]) -> Openings:
    r = OPENING_IN2_PER_TON
    per_ton = house.assumed(
        "return.grilles in2 per ton", r.low, r.likely, r.high, fact="return.grilles"
    )
    area = tons_of_the_house(house) * np.maximum(per_ton, r.least) / 144.0
    filtered = np.zeros(house.members, dtype=bool)
    for bank in banks:
        if bank.place == "grille":
            filtered = filtered | bank.present
    sizes = f"a believed {area[0] * 144.0:,.0f} sq in."
    return Openings(
        False, area, filtered, sizes, ("return.grilles",), ("return.grilles", "filters")
    )


def _filtered(
    house: House, entries: tuple[str, ...], banks: tuple[FilterBank, ...]
) -> tuple[Mask, tuple[str, ...]]:
    told = [house.job.word(f"{key}.has_filter") for key in entries]
    keys = tuple(f"{k}.has_filter" for k, word in zip(entries, told, strict=True) if word)
    if "yes" in told:
        return np.ones(house.members, dtype=bool), keys
    if all(word == "no" for word in told):
        return np.zeros(house.members, dtype=bool), keys
    if house.job.length("filters") is None:
        return _unsaid_place(house, "filters"), (*keys, "filters")
    stated = [key for key in house.job.entries("filters") if house.job.word(f"{key}.place")]
    at_grille = any(bank.place == "grille" for bank in banks)
    return np.full(house.members, at_grille), (*keys, *(f"{key}.place" for key in stated))


def _has_where(house: House, key: str) -> bool:
    return f"{key}.measured_where" in house.job.beliefs


def _grille_side(house: House, key: str, side: str) -> Array:
    told = house.stated_number(f"{key}.{side}")
    if told is None:
        return house.assumed(f"{key}.{side}", 14.0, 20.0, 25.0)
    frame = MEASURED_WHERE[MeasuredWhere.FRAME]
    excess_key = f"{key}.measured_where"
    if house.job.word(excess_key) == MeasuredWhere.FRAME:
        excess = house.assumed(
            f"{key} frame", frame.bias_low_in, frame.bias_in, frame.bias_high_in, fact=""
        )
        return np.maximum(told - excess, _SMALLEST_IN)
    if _has_where(house, key):
        return np.maximum(told, _SMALLEST_IN)
    how = house.job.beliefs[f"{key}.{side}"].how
    if how in (How.DOCUMENT, How.PLATE):
        return told
    excess = house.assumed(
        f"{key} frame", frame.bias_low_in, frame.bias_in, frame.bias_high_in, fact=excess_key
    )
    at_frame = house.happens(
        f"{key} read at its frame", _FRAME_CHANCE.get(how, 0.7), fact=excess_key
    )
    return np.maximum(np.where(at_frame, told - excess, told), _SMALLEST_IN)


def registers_of(house: House) -> Registers | None:
    """The supply registers whose sizes were stated; None where nobody stated any."""
    entries = tuple(house.job.entries("supply.registers"))
    if not entries:
        return None
    area, count = house.full(0.0), house.full(0.0)
    sizes, keys = [], []
    for key in entries:
        width, height = _grille_side(house, key, "width_in"), _grille_side(house, key, "height_in")
        told = house.stated_number(f"{key}.count")
        many = house.full(1.0) if told is None else told
        area, count = area + width * height * many / 144.0, count + many
        sizes.append(_size(width[0], height[0], many[0]))
        keys += [f"{key}.width_in", f"{key}.height_in", f"{key}.count"]
    return Registers(area, count, " + ".join(sizes), tuple(keys))


def _size(width_in: float, height_in: float, count: float) -> str:
    one = f"{width_in:g} x {height_in:g}"
    return one if count == 1.0 else f"{count:g} x {one}"
