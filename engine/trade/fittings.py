"""Fittings in everyday words, with what each is worth in feet of straight duct.

Lengths from memory are ranges at best: use the middle, and say that it is an estimate. Where a
loss coefficient is known it is truer, because it holds at every size.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import Final

from engine.arrays import Floats, require_within
from engine.errors import FactError

__all__ = ["FITTINGS", "Fitting", "Side", "SizeClass", "equivalent_length_ft", "fitting"]


class SizeClass(StrEnum):
    """Where a fitting sits; equivalent lengths grow with the duct."""

    TRUNK = "trunk"
    BRANCH = "branch"


class Side(StrEnum):
    """Which side of the blower a fitting is usual on."""

    SUPPLY = "supply"
    RETURN = "return"
    EITHER = "either"


@dataclass(frozen=True, slots=True)
class Fitting:
    """One kind of fitting.

    Attributes:
        key: Name in a job.
        words: What a person in the house would call it.
        side: Where it is usual.
        at: The duct it is usual in.
        low_ft: Equivalent length, one in ten below.
        likely_ft: The middle.
        high_ft: One in ten above.
        coefficient: Loss coefficient in velocity pressures of the branch or duct, if published.
        source: Where the figures are from.
    """

    key: str
    words: str
    side: Side
    at: SizeClass
    low_ft: float
    likely_ft: float
    high_ft: float
    coefficient: float | None
    source: str


_M: Final = "range of the residential standard and handbook tables (memory)"
_C: Final = "2021 ASHRAE Handbook-Fundamentals ch. 21, tables 10 and 11 (read)"
_CP: Final = "common practice, no published source"
_S, _R, _E = Side.SUPPLY, Side.RETURN, Side.EITHER
_T, _B = SizeClass.TRUNK, SizeClass.BRANCH

_ROWS: Final = (
    Fitting("round_elbow_smooth", "smooth or 5-piece round elbow", _E, _B, 10, 15, 20, 0.11,
            f"{_M}; C die-stamped r/D 1.5, {_C}"),
    Fitting("round_elbow_adjustable", "adjustable 4-piece round elbow", _E, _B,
            20, 25, 30, None, _M),
    Fitting("round_elbow_45", "45 degree round elbow", _E, _B, 5, 10, 15, None,
            f"half of the 90 degree elbow; {_M}"),
    Fitting("mitred_elbow", "mitred or kinked 90 degree turn", _E, _B, 60, 70, 75, None, _M),
    Fitting("radius_elbow", "curved square-duct elbow", _E, _T, 5, 15, 25, None,
            f"5 ft in an open training course (read); {_M}"),
    Fitting("square_elbow_trunk", "square trunk elbow without vanes", _E, _T, 65, 75, 85, None,
            f"80 ft in a home-owner duct guide (read); {_M}"),
    Fitting("square_elbow_branch", "square branch elbow without vanes", _E, _B, 30, 35, 50, None,
            f"35 ft in an open training course (read); {_M}"),
    Fitting("vaned_elbow", "square elbow with turning vanes", _E, _T, 8, 10, 15, None, _M),
    Fitting("trunk_offset", "trunk offset of two curved elbows", _E, _T, 40, 50, 60, None,
            f"50 ft together in a home-owner duct guide (read); spread {_CP}"),
    Fitting("plenum_exit_tapered", "tapered or curved start of the trunk", _S, _T,
            10, 25, 35, None, _M),
    Fitting("plenum_exit_square", "square start of the trunk, or a bullhead tee", _S, _T,
            60, 80, 120, None, _M),
    Fitting("takeoff_45", "45 degree or boot-shaped takeoff", _S, _B, 15, 30, 45, 0.64,
            f"{_M}; C tee with 45 degree entry, {_C}"),
    Fitting("takeoff_conical", "conical takeoff", _S, _B, 15, 25, 35, 0.87,
            f"length from C at 6 to 10 in (computed); C conical tee, {_C}"),
    Fitting("takeoff_straight", "straight collar takeoff", _S, _B, 30, 45, 65, 1.80,
            f"{_M}; C straight tee, {_C}"),
    Fitting("takeoff_top", "takeoff from the top of the trunk", _S, _B, 40, 50, 65, None, _M),
    Fitting("boot_straight", "straight floor boot", _S, _B, 5, 15, 30, None, _M),
    Fitting("boot_angle", "right-angle boot or stack boot", _S, _B, 30, 50, 80, None, _M),
    Fitting("ceiling_box", "flex into the side of a ceiling box", _S, _B, 40, 55, 60, None, _M),
    Fitting("wye", "45 degree wye", _E, _B, 5, 10, 20, 0.45,
            f"{_M}; C 45 degree conical wye, {_C}"),
    Fitting("junction_box", "plain box where flex splits", _E, _B, 40, 60, 80, None, f"{_M}, low"),
    Fitting("flex_bend_easy", "wide bend in flex", _E, _B, 10, 15, 20, 0.25,
            "C 0.2 to 0.3 and its length: judgement, no published value was readable"),
    Fitting("flex_bend_tight", "tight bend in flex", _E, _B, 15, 20, 30, 0.40,
            "C 0.3 to 0.5 and its length: judgement, no published value was readable"),
    Fitting("return_boot", "box behind a return grille", _R, _B, 15, 25, 35, None, _M),
    Fitting("return_drop_square", "square turn from the drop into the filter rack", _R, _T,
            60, 75, 90, None, _M),
    Fitting("return_drop_radius", "curved or vaned turn into the filter rack", _R, _T,
            10, 15, 25, None, _M),
    Fitting("cavity_return", "joist or stud cavity used as return, whole path", _R, _T,
            60, 100, 140, None, f"over 100 ft in an open training course (read); {_M}"),
    Fitting("transition_gradual", "gradual change of size", _E, _T, 5, 8, 10, 0.05,
            f"{_M}; C reducer of 5 to 10 degrees, {_C}"),
    Fitting("transition_abrupt", "abrupt change of size", _E, _T, 20, 30, 35, None, _M),
)  # fmt: skip

FITTINGS: Final[Mapping[str, Fitting]] = MappingProxyType({row.key: row for row in _ROWS})
"""Every known fitting by key."""


def fitting(key: str) -> Fitting:
    """One row of the catalogue.

    Raises:
        FactError: No fitting has this key.

    >>> fitting("vaned_elbow").likely_ft
    10
    """
    found = FITTINGS.get(key)
    if found is None:
        raise FactError(f"fitting {key}", f"no such fitting; known are {', '.join(FITTINGS)}")
    return found


def equivalent_length_ft(
    coefficient: Floats, diameter_in: Floats, friction_factor: Floats
) -> Floats:
    """Length of straight duct that loses as much as a loss coefficient.

    Args:
        coefficient: Loss coefficient in velocity pressures, 0 to 50; any shape.
        diameter_in: Diameter of the duct it is stated for, in, 0.25 to 120; broadcasts.
        friction_factor: Darcy factor there, 0.001 to 1; broadcasts.

    Returns:
        Length, ft, broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: L = C D / (12 f), from 2021 ASHRAE Handbook-Fundamentals ch. 21 eq. 34 (read).

    >>> round(equivalent_length_ft(1.8, 6.0, 0.0242))
    37
    """
    require_within("coefficient", coefficient, 0.0, 50.0)
    require_within("diameter_in", diameter_in, 0.25, 120.0)
    require_within("friction_factor", friction_factor, 1e-3, 1.0)
    return coefficient * diameter_in / (12.0 * friction_factor)
