"""The power of airflow with which each part's pressure drop grows, as beliefs."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import Final

__all__ = ["EXPONENTS", "Exponent", "PressurePart"]


class PressurePart(StrEnum):
    """A part of the airstream that takes pressure."""

    RETURN_DUCT = "return_duct"
    FILTER = "filter"
    COIL = "coil"
    STRIP_HEAT = "strip_heat"
    SUPPLY_DUCT = "supply_duct"
    REGISTER = "register"
    GRILLE = "grille"


@dataclass(frozen=True, slots=True)
class Exponent:
    """Power of airflow: one in ten below low, one in ten above high."""

    low: float
    likely: float
    high: float
    source: str


_DUCT: Final = Exponent(
    1.8,
    1.9,
    2.0,
    "exact Colebrook gives 1.79 to 1.96 at house sizes (computed); 2 for fittings, common practice",
)
_OPENING: Final = Exponent(2.0, 2.0, 2.0, "loss coefficient x velocity pressure (definition)")

EXPONENTS: Final[Mapping[PressurePart, Exponent]] = MappingProxyType(
    {
        PressurePart.RETURN_DUCT: _DUCT,
        PressurePart.SUPPLY_DUCT: _DUCT,
        PressurePart.COIL: Exponent(
            1.6,
            1.8,
            2.0,
            "dry one-row coil tables fit 1.50 to 1.71 (read, fits computed); wet higher, common "
            "practice",
        ),
        PressurePart.FILTER: Exponent(
            1.2,
            1.4,
            1.7,
            "mean of tested filters 1.18 (Li 2022, read); 2 when dirty or too small, common "
            "practice",
        ),
        PressurePart.STRIP_HEAT: _OPENING,
        PressurePart.REGISTER: _OPENING,
        PressurePart.GRILLE: _OPENING,
    }
)
