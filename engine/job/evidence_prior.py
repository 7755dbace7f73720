"""What is believed of the pressure parts of the present system before anything was read."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Final

from engine.arrays import Array, require_within
from engine.errors import FactError
from engine.job.evidence_dirt import Dirt
from engine.trade.exponents import PressurePart

__all__ = ["DUCT_PARTS", "PARTS", "PartPrior", "PressurePrior"]

PARTS: Final = (
    PressurePart.RETURN_DUCT,
    PressurePart.FILTER,
    PressurePart.COIL,
    PressurePart.SUPPLY_DUCT,
)
"""The pressure parts of evidence: return duct with its grilles, filter, coil, supply duct with
its registers."""

DUCT_PARTS: Final = (PressurePart.RETURN_DUCT, PressurePart.SUPPLY_DUCT)


@dataclass(frozen=True, slots=True)
class PartPrior:
    """What geometry, or the lack of it, says of one part of the present system, clean.

    Attributes:
        drop_inwc: Drop at the reference airflow, (n,) draws above 0; a coil's when wet.
        exponent: Power of airflow with which it grows, (n,).
        is_inside: Whether the present equipment's rating includes the part, so that its total
            external static doesn't.
    """

    drop_inwc: Array
    exponent: Array
    is_inside: bool = False

    def __post_init__(self) -> None:
        """Refuse drops and exponents that can't be.

        Raises:
            FactError: Shapes that aren't both (n,).
            OutOfRangeError: A drop outside 1e-6 to 50 in wc, an exponent outside 0.5 to 3, NaN.
        """
        if self.drop_inwc.ndim != 1 or self.drop_inwc.shape != self.exponent.shape:
            raise FactError("part", "drop and exponent both have shape (n,)")
        require_within("drop_inwc", self.drop_inwc, 1e-6, 50.0)
        require_within("exponent", self.exponent, 0.5, 3.0)


@dataclass(frozen=True, slots=True)
class PressurePrior:
    """What is believed of a present system before its readings.

    Attributes:
        reference_cfm: Airflow at which the drops are stated.
        parts: The parts that exist; a filter or coil that isn't there is left out.
        filter_is_at_grille: The filter sits in a return grille: nothing is left to read before it.
        dirt: Condition.
    """

    reference_cfm: float
    parts: Mapping[PressurePart, PartPrior]
    filter_is_at_grille: bool = False
    dirt: Dirt = field(default_factory=Dirt)

    def __post_init__(self) -> None:
        """Refuse a prior without both ducts.

        Raises:
            FactError: A duct is missing, or the draws' numbers differ.
            OutOfRangeError: The reference airflow is outside 50 to 10,000 CFM.
        """
        require_within("reference_cfm", self.reference_cfm, 50.0, 10000.0)
        if any(part not in self.parts for part in DUCT_PARTS):
            raise FactError("parts", "needs both the return duct and the supply duct")
        if len({part.drop_inwc.size for part in self.parts.values()}) != 1:
            raise FactError("parts", "every part has the same number of draws")

    def is_inside(self, part: PressurePart) -> bool:
        """Whether the part is there and inside the rated box."""
        return part in self.parts and self.parts[part].is_inside
