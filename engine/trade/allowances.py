"""Pressure drops believed of parts whose own figure isn't known."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import Final

__all__ = ["ALLOWANCES", "DIRT", "WET_OVER_DRY_COIL", "Allowance", "Piece", "Spread"]


class Piece(StrEnum):
    """A part in the airstream with a drop of its own."""

    REGISTER = "register"
    GRILLE = "grille"
    DAMPER = "damper"
    COIL_WET = "coil_wet"
    FILTER_CLEAN = "filter_clean"
    STRIP_HEAT = "strip_heat"
    AIR_CLEANER = "air_cleaner"


@dataclass(frozen=True, slots=True)
class Allowance:
    """Drop at the full target airflow in standard air: one in ten below low, one above high.

    Attributes:
        low_inwc: in wc.
        likely_inwc: in wc.
        high_inwc: in wc.
        words: The part in everyday words.
        source: Where the figures are from.
    """

    low_inwc: float
    likely_inwc: float
    high_inwc: float
    words: str
    source: str


@dataclass(frozen=True, slots=True)
class Spread:
    """A factor believed to lie about a likely value."""

    low: float
    likely: float
    high: float
    source: str


_CP: Final = "common practice, no published source"

ALLOWANCES: Final[Mapping[Piece, Allowance]] = MappingProxyType(
    {
        Piece.REGISTER: Allowance(
            0.02, 0.03, 0.05, "supply register", f"0.03 usual allowance (memory); spread {_CP}"
        ),
        Piece.GRILLE: Allowance(
            0.02, 0.03, 0.06, "return grille", f"0.03 usual allowance (memory); spread {_CP}"
        ),
        Piece.DAMPER: Allowance(
            0.02, 0.03, 0.05, "balancing damper", f"0.03 usual allowance (memory); spread {_CP}"
        ),
        Piece.COIL_WET: Allowance(
            0.15, 0.25, 0.38, "wet cooling coil", f"0.20 to 0.30 typical (memory); spread {_CP}"
        ),
        Piece.FILTER_CLEAN: Allowance(
            0.06,
            0.15,
            0.30,
            "clean filter",
            f"0.10 budget (read), 0.15 to 0.30 in a furnace manual (read); spread {_CP}",
        ),
        Piece.STRIP_HEAT: Allowance(0.05, 0.07, 0.10, "electric heat kit", "0.05 to 0.10 (memory)"),
        Piece.AIR_CLEANER: Allowance(
            0.10, 0.12, 0.15, "electronic air cleaner", "0.10 to 0.15 (memory)"
        ),
    }
)

WET_OVER_DRY_COIL: Final = Spread(1.10, 1.22, 1.40, "15 to 40 % more (memory); 10 to 30 %, " + _CP)
"""A wet coil's drop over the same coil's dry one."""

DIRT: Final[Mapping[str, Spread]] = MappingProxyType(
    {
        "coil_drop": Spread(1.0, 1.5, 3.0, _CP),
        "filter_drop": Spread(1.0, 1.5, 3.0, _CP),
        "wheel_airflow": Spread(0.7, 0.9, 1.0, _CP),
    }
)
"""What dirt multiplies: a coil's or filter's drop, and the air a caked wheel still moves."""
