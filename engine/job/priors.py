"""What is believed of a house's ducts before anyone looks, given the size of its equipment.

Widths, areas and counts here grow with tonnage, as in real stock. Ranges are low / likely / high,
one house in ten outside at either end, common practice without a published source unless said.

How a house believed in this way compares with houses that were measured (3 tons, furnace, 400 CFM
a ton; computed; the tests hold it):

- The total external static at what the blower delivers is 0.78 to 0.83 in wc in the mean; one
  training body's field average is 0.82 (read at second hand).
- Clean filters take 0.16 in the mean; 34 Californian systems as found, dirt included, took 0.28
  (read at second hand).
- A fixed-speed blower delivers 388 CFM a ton in the middle, and less than 350 in 19 of 100; field
  studies of old equipment as found, with its dirt, have a mean of 320 and 55 of 100 below 350, and
  the larger of the two may lean low. New, clean equipment should deliver more.
- The blower can push enough air (85 % of target) in 95 of 100 houses, in 86 with a fixed-speed
  motor. Every largest speed is kept as well in only 6 of 100: trunks of usual size carry
  400 CFM a ton at more than the residential standard's speeds. No published survey of speeds is
  known to compare that share with; the pressures above are what ducts of these sizes take.
"""

from dataclasses import dataclass
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.job.modes import Mode
from engine.job.sample import House, Mask

__all__ = [
    "BRANCH_DIAMETER_IN",
    "DROP_IN2_PER_TON",
    "FILTER_DROP_AT_300_FPM",
    "FILTER_IN2_PER_TON",
    "OPENING_IN2_PER_TON",
    "RETURN_TRUNK_IN2_PER_TON",
    "RETURN_TRUNK_OVER_DROP",
    "RETURN_TRUNK_THERE",
    "TRUNK_IN2_PER_TON",
    "TWO_TRUNKS",
    "Range",
    "believed_tons",
    "tons_of_the_house",
    "two_trunks",
]


@dataclass(frozen=True, slots=True)
class Range:
    """Low, likely and high of a starting range."""

    low: float
    likely: float
    high: float

    @property
    def least(self) -> float:
        """No believed size is smaller: six tenths of what one house in ten is below (judgement)."""
        return 0.6 * self.low


TRUNK_IN2_PER_TON: Final = Range(38.0, 55.0, 78.0)
"""All supply trunks together; 14x8, 20x8 and 24x10 at 2, 3 and 4 tons are 56, 53 and 60."""

RETURN_TRUNK_IN2_PER_TON: Final = Range(36.0, 54.0, 76.0)
"""12x8, 20x8 and 24x10 at 2, 3 and 4 tons are 48, 53 and 60."""

DROP_IN2_PER_TON: Final = Range(45.0, 66.0, 95.0)
"""14x8, 20x10 and 24x14 at 2, 3 and 4 tons are 56, 67 and 84."""

OPENING_IN2_PER_TON: Final = Range(90.0, 160.0, 300.0)
"""All return openings; one code table equals 286 to 333 (read at second hand)."""

FILTER_IN2_PER_TON: Final = Range(110.0, 160.0, 230.0)
"""16x25 to 20x25 at 3 tons is 133 to 167."""

TWO_TRUNKS: Final = {"one": 0.65, "two": 0.35}
"""One trunk from the plenum, or two leaving opposite sides; the same is believed of returns."""

RETURN_TRUNK_OVER_DROP: Final = Range(0.85, 1.05, 1.4)
"""All return trunks over the drops they lead to, in area: the drop is usually the narrowest
place of a return (common practice)."""

RETURN_TRUNK_THERE: Final = {"yes": 0.7, "no": 0.3}
"""A duct that carries return air to the drop, or a drop that opens into the room."""

TWO_TRUNKS_AREA_RATIO: Final = 1.15
"""Two trunks together have somewhat more area than one would."""

BRANCH_DIAMETER_IN: Final = Range(5.4, 6.0, 7.0)

FILTER_DROP_AT_300_FPM: Final = {
    1.0: Range(0.07, 0.13, 0.20),
    2.0: Range(0.05, 0.10, 0.16),
    4.0: Range(0.04, 0.07, 0.12),
}
"""Drop of a clean pleated filter at 300 fpm through its face, in wc, by depth in inches.

A 20x25x1 at 1,200 CFM (346 fpm) comes to 0.16, the middle of what new filters take.
"""


def believed_tons(house: House) -> Array:
    """Nominal cooling size, (n + 1,): as stated, else from the target, the old unit, or stock."""
    if house.is_stated("equipment.cooling_tons"):
        return house.number("equipment.cooling_tons")
    target = house.stated_number(f"target.{Mode.COOLING_HIGH}_cfm")
    if target is None:
        target = house.stated_number(f"target.{Mode.HEAT_PUMP_HEATING}_cfm")
    if target is not None:
        per_ton = house.assumed(
            "target per ton", 350.0, 400.0, 450.0, fact="equipment.cooling_tons"
        )
        return np.clip(target / per_ton, 1.0, 5.5)
    if house.job.cooling_rows:
        largest = max(row.total_btuh for row in house.job.cooling_rows)
        return house.full(min(max(largest / 12000.0, 1.0), 5.5))
    old = house.stated_number("old.cooling_tons")
    if old is not None:
        return house.assumed("equipment.cooling_tons", old - 0.25, old, old + 0.25)
    return house.number("equipment.cooling_tons")


def tons_of_the_house(house: House) -> Array:
    """The size that ducts nobody described are believed to be made for, (n + 1,).

    Where other equipment is tried, the ducts stay as they were believed to be.
    """
    return believed_tons(house.as_found or house)


def two_trunks(house: House) -> Mask:
    """In which members two trunks leave the plenum where nobody spoke of trunks."""
    stated = house.job.word("phone.trunk_directions")
    if stated is not None:
        return np.full(house.members, stated == "both")
    return house.is_word("supply.trunks count", "two", prior=TWO_TRUNKS, fact="supply.trunks")
