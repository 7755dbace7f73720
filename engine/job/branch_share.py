"""What part of the air a branch gets, where nobody stated it: by its size and their number."""

from collections.abc import Sequence
from typing import TYPE_CHECKING, Final

import numpy as np

from engine.arrays import Array
from engine.job.priors import tons_of_the_house
from engine.job.sample import House

if TYPE_CHECKING:
    from engine.job.sections import Duct

__all__ = ["branch_share"]

_WANTS_BY_AREA: Final = 4.0 / 3.0
"""Exponent of a branch's area in the air that its room wants.

Branches are sized for their rooms at one friction rate (common practice), and at one rate the air
goes with the diameter to about 8/3 (computed)."""

_FEWEST: Final = 4.0
"""Branches; a house has more than these, so fewer told are not all there are (judgement)."""


def branch_share(house: House, duct: "Duct", ducts: Sequence["Duct"]) -> Array:
    """Share of all the air in the branches of one entry together, (n + 1,).

    Args:
        house: Beliefs as arrays.
        duct: The entry.
        ducts: All entries of branches, this one among them.
    """
    told = sum((d.count for d in ducts), start=house.full(0.0))
    registers = house.stated_number("house.supply_registers_count")
    total = np.maximum(told, registers) if registers is not None else told
    if registers is None and told[0] < _FEWEST:
        tons = tons_of_the_house(house)
        total = np.maximum(
            told,
            tons
            * house.assumed(
                "supply.branches per ton", 2.6, 3.7, 5.2, fact="house.supply_registers_count"
            ),
        )
    uneven = house.assumed(f"{duct.key} uneven", 0.75, 1.0, 1.3, fact=f"{duct.key}.share_fraction")
    wants = sum((d.count * _wanted(d) for d in ducts), start=house.full(0.0)) / told
    return np.asarray(np.minimum(duct.count / total * (_wanted(duct) / wants) * uneven, 1.0))


def _wanted(duct: "Duct") -> Array:
    return np.asarray(duct.area_ft2**_WANTS_BY_AREA)
