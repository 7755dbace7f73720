"""The words of a contradiction: places, slips, and what to look for in the house."""

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

from engine.job.evidence_readings import Tap

__all__ = ["LOOK_IF_HIGH", "PLACES", "SLIP_WORDS", "look_for"]

PLACES: Final[Mapping[Tap | None, str]] = MappingProxyType(
    {
        Tap.BEFORE_FILTER: "the return pressure before the filter",
        Tap.AFTER_FILTER: "the return pressure after the filter",
        Tap.BEFORE_COIL: "the supply pressure before the coil",
        Tap.AFTER_COIL: "the supply pressure after the coil",
        Tap.RETURN: "the return pressure",
        Tap.SUPPLY: "the supply pressure",
        Tap.FILTER_DROP: "the filter's drop",
        Tap.COIL_DROP: "the coil's drop",
        Tap.TOTAL_EXTERNAL: "the total external static",
        None: "the airflow",
    }
)

LOOK_IF_HIGH: Final[Mapping[Tap | None, str]] = MappingProxyType(
    {
        Tap.BEFORE_FILTER: "a blocked or covered return grille, or a crushed return",
        Tap.AFTER_FILTER: "a dirty filter, a second filter in a grille, or a crushed return",
        Tap.RETURN: "a dirty filter, a second filter in a grille, or a crushed return",
        Tap.FILTER_DROP: "a dirty filter",
        Tap.BEFORE_COIL: "a dirty or iced coil, crushed flex, or a shut damper",
        Tap.COIL_DROP: "a dirty or iced coil",
        Tap.AFTER_COIL: "crushed flex, a shut damper, or closed registers",
        Tap.SUPPLY: "crushed flex, a shut damper, closed registers, or a dirty coil",
        Tap.TOTAL_EXTERNAL: "a dirty filter or coil, crushed flex, or a shut damper",
        None: "the setting and mode it was found in, and how it was found",
    }
)
_LOOK_IF_LOW: Final[Mapping[Tap | None, str]] = MappingProxyType(
    {
        Tap.FILTER_DROP: "air that passes beside the filter, or the wrong tap",
        Tap.COIL_DROP: "air that passes beside the coil, an open panel, or the wrong tap",
        None: "the setting and mode it was found in, and a dirty wheel",
    }
)
_LOW: Final = "a leak, an open panel, or the wrong tap"

SLIP_WORDS: Final[Mapping[str, str]] = MappingProxyType(
    {
        "sign": "the sign looks wrong: the return side pulls, the supply side pushes, and the two "
        "add up",
        "decimal_point": "the decimal point looks out of place",
        "ports_swapped": "it and {other} look swapped: hoses or ports changed places",
        "pascal": "it looks like pascals, not inches of water",
    }
)


def look_for(tap: Tap | None, *, is_high: bool) -> str:
    """What to look for where a reading is far above or below what the rest says of it."""
    return LOOK_IF_HIGH[tap] if is_high else _LOOK_IF_LOW.get(tap, _LOW)
