"""Sizes of ducts as they were read, brought to the clear inside.

Where nobody said where the tape was held, the central house takes the size as it was told, and
some samples hold that it was read over liner, wrap or jacket. A size that what is on it leaves
nothing of is held at the smallest duct; `engine.job.possible` refuses it by name.
"""

from typing import Final

import numpy as np

from engine.arrays import Array
from engine.job.belief import How
from engine.job.priors import (
    BRANCH_DIAMETER_IN,
    DROP_IN2_PER_TON,
    RETURN_TRUNK_IN2_PER_TON,
    TRUNK_IN2_PER_TON,
    tons_of_the_house,
)
from engine.job.sample import House
from engine.trade.materials import Material, is_flexible
from engine.trade.measuring import MEASURED_WHERE, MeasuredWhere

__all__ = ["clear_size_in"]

_SMALLEST_IN: Final = 1.5
"""Clear size below which a section would be no duct; samples are held above it."""

_OVER_WRAP_CHANCE: Final = {How.MEASURED: 0.08, How.PHOTO: 0.12, How.PHONE: 0.15}
_JACKET_CHANCE: Final = {How.MEASURED: 0.15, How.PHOTO: 0.30, How.PHONE: 0.50, How.GUESSED: 0.50}
_LINED_UNSAID_CHANCE: Final = {How.MEASURED: 0.08, How.PHOTO: 0.10, How.PHONE: 0.12}
_READ_OUTSIDE_CHANCE: Final = 0.85
# Source of these four: common practice, no published source; field shares of liner and wrap.


def clear_size_in(house: House, key: str, side: str, material: Material) -> Array:
    """A dimension brought to the clear inside, or believed where nobody stated it."""
    told = house.stated_number(f"{key}.{side}")
    if told is None:
        return _believed_side(house, key, side)
    liner = house.stated_number(f"{key}.liner_in")
    where = house.job.word(f"{key}.measured_where")
    if where is not None:
        clear = _known_place(house, key, told, MeasuredWhere(where), liner)
    else:
        clear = _unsaid_place(house, key, side, told, material, liner)
    return np.maximum(clear, _SMALLEST_IN)


def _known_place(
    house: House, key: str, told: Array, where: MeasuredWhere, liner: Array | None
) -> Array:
    place = MEASURED_WHERE[where]
    clear = told
    if place.bias_high_in > 0.0:
        clear = clear - house.assumed(
            f"{key} excess",
            place.bias_low_in,
            place.bias_in,
            place.bias_high_in,
            fact=f"{key}.measured_where",
        )
    if place.takes_liner:
        thickness = (
            _believed_liner(house, key)
            if liner is None and (where is MeasuredWhere.OUTSIDE_OF_LINER)
            else liner
        )
        if thickness is not None:
            clear = clear - 2.0 * thickness
    return clear


def _unsaid_place(
    house: House, key: str, side: str, told: Array, material: Material, liner: Array | None
) -> Array:
    how = house.job.beliefs[f"{key}.{side}"].how
    doubted = how not in (How.DOCUMENT, How.PLATE)
    central = told
    if liner is not None:  # a duct told with its liner is told by its outside
        outside = told - 2.0 * liner
        if not doubted:
            return outside
        read_outside = house.happens(
            f"{key} read outside its liner",
            _READ_OUTSIDE_CHANCE,
            in_central=True,
            fact=f"{key}.measured_where",
        )
        return np.where(read_outside, outside, told)
    if not doubted:
        return central
    if is_flexible(material):
        chance = _JACKET_CHANCE.get(how, 0.5)
        place = MEASURED_WHERE[MeasuredWhere.FLEX_JACKET]
        excess = house.assumed(
            f"{key} excess",
            place.bias_low_in,
            place.bias_in,
            place.bias_high_in,
            fact=f"{key}.measured_where",
        )
        jacket = house.happens(f"{key} over jacket", chance, fact=f"{key}.measured_where") & (
            told - excess >= 3.0
        )
        return np.where(jacket, told - excess, told)
    if material in (Material.LINED_METAL, Material.DUCT_BOARD):
        lined = house.happens(f"{key} read outside its liner", 0.5, fact=f"{key}.measured_where")
        return np.where(lined, told - 2.0 * _believed_liner(house, key), told)
    if material is Material.GALVANIZED and side != "diameter_in":
        wrap = MEASURED_WHERE[MeasuredWhere.OVER_WRAP]
        excess = house.assumed(
            f"{key} excess",
            wrap.bias_low_in,
            wrap.bias_in,
            wrap.bias_high_in,
            fact=f"{key}.measured_where",
        )
        over_wrap = house.happens(
            f"{key} over wrap", _OVER_WRAP_CHANCE.get(how, 0.15), fact=f"{key}.measured_where"
        )
        clear = np.where(over_wrap, told - excess, told)
        if f"{key}.material" not in house.job.beliefs:
            lined = house.happens(
                f"{key} has liner", _LINED_UNSAID_CHANCE.get(how, 0.12), fact=f"{key}.material"
            )
            clear = np.where(lined & ~over_wrap, told - 2.0 * _believed_liner(house, key), clear)
        return clear
    return central


def _believed_liner(house: House, key: str) -> Array:
    return house.assumed(f"{key}.liner_in", 0.5, 1.0, 1.0)


def _believed_side(house: House, key: str, side: str) -> Array:
    name = key.rsplit(".", 1)[0]
    if name == "supply.branches":
        r = BRANCH_DIAMETER_IN
        return house.assumed(f"{key}.{side}", r.low, r.likely, r.high)
    per_ton = {
        "supply.trunks": TRUNK_IN2_PER_TON,
        "return.drops": DROP_IN2_PER_TON,
        "return.trunks": RETURN_TRUNK_IN2_PER_TON,
        "return.branches": RETURN_TRUNK_IN2_PER_TON,
    }[name]
    among = max(house.job.length(name) or 1, 1)
    tons = tons_of_the_house(house) / among
    low, likely, high = (
        np.maximum(a * tons, 30.0) for a in (per_ton.low, per_ton.likely, per_ton.high)
    )
    if side == "diameter_in":
        low, likely, high = (np.sqrt(4.0 * a / np.pi) for a in (low, likely, high))
        return house.assumed(f"{key}.{side}", low, likely, high)
    other = house.job.number(f"{key}.{'height_in' if side == 'width_in' else 'width_in'}")
    if side == "height_in" and other is None:
        return house.assumed(f"{key}.{side}", 8.0, 8.0, 10.0)
    across = 8.0 if other is None else other
    return house.assumed(f"{key}.{side}", low / across, likely / across, high / across)
