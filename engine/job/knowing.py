"""How far a stated number may lie from the truth, by the kind of number and how it is known.

Numbers from a document or a plate are taken as they stand. Where on a duct a tape was held, which
shifts a size rather than scattering it, is `engine.trade.measuring`'s subject.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from engine.job.belief import How
from engine.job.facts import Quantity

__all__ = ["SCATTER", "Scatter", "scatter_of"]

_CP: Final = "common practice, no published source"


@dataclass(frozen=True, slots=True)
class Scatter:
    """One standard deviation of a stated number about the truth.

    Attributes:
        absolute: In the fact's unit.
        relative: As a share of the value; the larger of the two counts.
        source: Where the figures are from.
    """

    absolute: float
    relative: float
    source: str = _CP

    def sigma(self, value: float, *, hedged: bool = False) -> float:
        """Standard deviation at a value; twice as much when the person said "about"."""
        return max(self.absolute, self.relative * abs(value)) * (2.0 if hedged else 1.0)


EXACT: Final = Scatter(0.0, 0.0, "a document or a plate is taken as it stands")

_HEDGED_DOCUMENT: Final = Scatter(0.0, 0.025, f"'about' before a documented number: {_CP}")

_M, _F, _P, _G = How.MEASURED, How.PHOTO, How.PHONE, How.GUESSED

SCATTER: Final[Mapping[tuple[Quantity, How], Scatter]] = MappingProxyType(
    {
        (Quantity.DUCT_SIDE, _M): Scatter(0.25, 0.0),
        (Quantity.DUCT_SIDE, _F): Scatter(0.25, 0.125, f"25 % of area by photo: {_CP}"),
        (Quantity.DUCT_SIDE, _P): Scatter(0.5, 0.20),
        (Quantity.DUCT_SIDE, _G): Scatter(0.5, 0.20),
        (Quantity.FLEX_DIAMETER, _M): Scatter(
            0.10, 0.0, f"round sizes come in whole inches: {_CP}"
        ),
        (Quantity.FLEX_DIAMETER, _F): Scatter(0.0, 0.125),
        (Quantity.FLEX_DIAMETER, _P): Scatter(1.0, 0.0),
        (Quantity.FLEX_DIAMETER, _G): Scatter(1.0, 0.15),
        (Quantity.GRILLE_SIDE, _M): Scatter(0.25, 0.0),
        (Quantity.GRILLE_SIDE, _F): Scatter(0.0, 0.10),
        (Quantity.GRILLE_SIDE, _P): Scatter(0.75, 0.0),
        (Quantity.GRILLE_SIDE, _G): Scatter(1.0, 0.20),
        (Quantity.FILTER_SIDE, _M): Scatter(0.0, 0.0, "sizes are printed on the frame"),
        (Quantity.FILTER_SIDE, _F): Scatter(0.0, 0.0, "sizes are printed on the frame"),
        (Quantity.FILTER_SIDE, _P): Scatter(0.1, 0.0),
        (Quantity.FILTER_SIDE, _G): Scatter(0.0, 0.15),
        (Quantity.LENGTH, _M): Scatter(0.0, 0.03),
        (Quantity.LENGTH, _F): Scatter(0.0, 0.20),
        (Quantity.LENGTH, _P): Scatter(0.0, 0.20),
        (Quantity.LENGTH, _G): Scatter(0.0, 0.30),
        (Quantity.AIRFLOW, _M): Scatter(0.0, 0.07),
        (Quantity.AIRFLOW, _F): Scatter(0.0, 0.03),
        (Quantity.AIRFLOW, _P): Scatter(0.0, 0.10),
        (Quantity.AIRFLOW, _G): Scatter(0.0, 0.12),
        (Quantity.STATIC, _M): Scatter(0.03, 0.10),
        (Quantity.STATIC, _F): Scatter(0.03, 0.10),
        (Quantity.STATIC, _P): Scatter(0.05, 0.20),
        (Quantity.STATIC, _G): Scatter(0.05, 0.30),
        (Quantity.TEMPERATURE, _M): Scatter(1.0, 0.0),
        (Quantity.TEMPERATURE, _F): Scatter(1.0, 0.0),
        (Quantity.TEMPERATURE, _P): Scatter(3.0, 0.0),
        (Quantity.TEMPERATURE, _G): Scatter(5.0, 0.0),
        (Quantity.DIFFERENCE, _M): Scatter(3.0, 0.0),
        (Quantity.DIFFERENCE, _F): Scatter(0.0, 0.0, "printed on the plate"),
        (Quantity.DIFFERENCE, _P): Scatter(3.0, 0.0),
        (Quantity.DIFFERENCE, _G): Scatter(5.0, 0.0),
        (Quantity.HEAT, _M): Scatter(0.0, 0.05),
        (Quantity.HEAT, _F): Scatter(0.0, 0.02),
        (Quantity.HEAT, _P): Scatter(0.0, 0.05),
        (Quantity.HEAT, _G): Scatter(0.0, 0.20),
        (Quantity.LOAD, _M): Scatter(0.0, 0.12, f"room method: {_CP}"),
        (Quantity.LOAD, _F): Scatter(0.0, 0.12),
        (Quantity.LOAD, _P): Scatter(0.0, 0.20, f"whole-house method: {_CP}"),
        (Quantity.LOAD, _G): Scatter(0.0, 0.40, f"square-foot rule: {_CP}"),
        (Quantity.TONS, _M): Scatter(0.0, 0.0),
        (Quantity.TONS, _F): Scatter(0.05, 0.0),
        (Quantity.TONS, _P): Scatter(0.15, 0.0, f"one in twenty reads the wrong class: {_CP}"),
        (Quantity.TONS, _G): Scatter(0.50, 0.0),
        (Quantity.SHARE, _M): Scatter(0.02, 0.10),
        (Quantity.SHARE, _F): Scatter(0.05, 0.15),
        (Quantity.SHARE, _P): Scatter(0.05, 0.20),
        (Quantity.SHARE, _G): Scatter(0.08, 0.25, f"8 points by eye: {_CP}"),
        (Quantity.COUNT, _M): Scatter(0.0, 0.0),
        (Quantity.COUNT, _F): Scatter(0.0, 0.0),
        (Quantity.COUNT, _P): Scatter(0.0, 0.08),
        (Quantity.COUNT, _G): Scatter(0.0, 0.20),
        (Quantity.YEAR, _M): Scatter(0.0, 0.0),
        (Quantity.YEAR, _F): Scatter(2.0, 0.0),
        (Quantity.YEAR, _P): Scatter(6.0, 0.0),
        (Quantity.YEAR, _G): Scatter(10.0, 0.0),
        (Quantity.AREA, _M): Scatter(0.0, 0.05),
        (Quantity.AREA, _F): Scatter(0.0, 0.15),
        (Quantity.AREA, _P): Scatter(0.0, 0.15),
        (Quantity.AREA, _G): Scatter(0.0, 0.25),
        (Quantity.ELEVATION, _M): Scatter(50.0, 0.0),
        (Quantity.ELEVATION, _F): Scatter(50.0, 0.0),
        (Quantity.ELEVATION, _P): Scatter(200.0, 0.05),
        (Quantity.ELEVATION, _G): Scatter(300.0, 0.10),
    }
)
"""Scatter by kind of number and way of knowing it; all by common practice unless said otherwise."""


def scatter_of(quantity: Quantity, how: How, *, hedged: bool = False) -> Scatter:
    """Scatter of a number that somebody stated.

    Args:
        quantity: Kind of number; words have none.
        how: How it is known. Document and plate are exact unless hedged.
        hedged: The person said "about".

    >>> scatter_of(Quantity.DUCT_SIDE, How.MEASURED).sigma(20.0)
    0.25
    """
    if quantity in (Quantity.CHOICE, Quantity.TEXT):
        return EXACT
    if how in (How.DOCUMENT, How.PLATE):
        return _HEDGED_DOCUMENT if hedged else EXACT
    return SCATTER[quantity, How.GUESSED if how is How.ASSUMED else how]
