"""Where a tape was held, and what that adds to the size it read.

A reading is larger than the clear inside of a duct by liner, wrap, frame or jacket. Each place has
a mean excess and a scatter; both matter, the mean first.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import Final

import numpy as np

from engine.arrays import Floats, require_within

__all__ = [
    "FILTER_PRINTED",
    "MEASURED_WHERE",
    "MeasuredWhere",
    "SizeBias",
    "inside_dimension_in",
]


class MeasuredWhere(StrEnum):
    """Where a size was read."""

    BARE_METAL = "bare_metal"
    INSIDE = "inside"
    OUTSIDE_OF_LINER = "outside_of_liner"
    OVER_WRAP = "over_wrap"
    HOLE = "hole"
    FRAME = "frame"
    FLEX_CORE = "flex_core"
    FLEX_JACKET = "flex_jacket"


@dataclass(frozen=True, slots=True)
class SizeBias:
    """What a place adds to a size.

    Attributes:
        bias_in: Mean of reading less true size, in, before any liner.
        bias_low_in: Least usual excess, in.
        bias_high_in: Largest usual excess, in.
        sigma_in: One standard deviation of a careful reading, in.
        takes_liner: Whether liner inside the duct is still to be taken off, both sides.
        words: The place in everyday words.
        source: Where the figures are from.
    """

    bias_in: float
    bias_low_in: float
    bias_high_in: float
    sigma_in: float
    takes_liner: bool
    words: str
    source: str


_CP: Final = "common practice, no published source"

MEASURED_WHERE: Final[Mapping[MeasuredWhere, SizeBias]] = MappingProxyType(
    {
        MeasuredWhere.BARE_METAL: SizeBias(
            0.0, 0.0, 0.0, 0.25, True, "outside of the bare metal", _CP
        ),
        MeasuredWhere.INSIDE: SizeBias(
            0.0, 0.0, 0.0, 0.25, False, "clear inside, where the air goes", _CP
        ),
        MeasuredWhere.OUTSIDE_OF_LINER: SizeBias(
            0.0, 0.0, 0.0, 0.3, True, "outside of a duct that is lined", _CP
        ),
        MeasuredWhere.OVER_WRAP: SizeBias(
            3.0, 2.0, 4.0, 0.75, True, "over the insulation wrapped around it", _CP
        ),
        MeasuredWhere.HOLE: SizeBias(0.0, 0.0, 0.0, 0.25, False, "the hole behind the grille", _CP),
        MeasuredWhere.FRAME: SizeBias(
            1.75, 1.5, 2.0, 0.75, False, "outer edge of the grille's frame", _CP
        ),
        MeasuredWhere.FLEX_CORE: SizeBias(
            0.0, 0.0, 0.0, 0.25, False, "inner core of the flex", _CP
        ),
        MeasuredWhere.FLEX_JACKET: SizeBias(
            3.75, 2.5, 5.0, 1.0, False, "outer jacket of the flex", _CP
        ),
    }
)
"""Excess and scatter of each place, in."""

FILTER_PRINTED: Final = SizeBias(
    0.375, 0.25, 0.5, 0.1, False, "size printed on the filter's edge", _CP
)
"""A filter's printed size is nominal: the real one is 1/4 to 1/2 in smaller each way."""


def inside_dimension_in(
    outside_in: Floats,
    measured_where: MeasuredWhere,
    liner_in: Floats = 0.0,
    bias_in: Floats | None = None,
) -> Floats:
    """Clear inside size behind a reading.

    Args:
        outside_in: The reading, in, 0.5 to 120; any shape.
        measured_where: Where it was read.
        liner_in: Thickness of liner or board wall inside the duct, in, 0 to 4; broadcasts. Taken
            off twice where the reading was outside it.
        bias_in: Excess to take off instead of the place's mean, in, 0 to 12; broadcasts.

    Returns:
        Inside size, in, broadcast shape; may be zero or less when the reading can't be true, which
        the caller must refuse.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    >>> inside_dimension_in(18.0, MeasuredWhere.OUTSIDE_OF_LINER, 1.0)
    16.0
    """
    require_within("outside_in", outside_in, 0.5, 120.0)
    require_within("liner_in", liner_in, 0.0, 4.0)
    place = MEASURED_WHERE[measured_where]
    excess: Floats = place.bias_in if bias_in is None else bias_in
    require_within("bias_in", excess, 0.0, 12.0)
    if place.takes_liner:
        return outside_in - excess - 2.0 * liner_in
    return (
        outside_in - excess - np.zeros_like(liner_in)
        if np.ndim(liner_in)
        else (outside_in - excess)
    )
