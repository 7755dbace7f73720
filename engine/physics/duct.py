"""Shapes of ducts: areas, perimeters, hydraulic and equivalent diameters, air speed.

All sizes are clear inside sizes. Which side of a rectangle or oval is called width doesn't matter
to any formula here.
"""

from enum import StrEnum
from typing import Final

import numpy as np

from engine.arrays import Floats, require_within
from engine.errors import FactError
from engine.trade.measuring import MeasuredWhere, inside_dimension_in

__all__ = [
    "EQUIVALENT_DIAMETER_MAX_ASPECT_RATIO",
    "MeasuredWhere",
    "Shape",
    "area_ft2",
    "aspect_ratio",
    "equivalent_diameter_in",
    "hydraulic_diameter_in",
    "inside_dimension_in",
    "is_beyond_equivalent_range",
    "perimeter_ft",
    "round_duct_velocity_fpm",
    "squeezed_round_width_in",
    "velocity_fpm",
]

EQUIVALENT_DIAMETER_MAX_ASPECT_RATIO: Final = 8.0
"""Longest to shortest side up to which Huebscher's equivalent diameter is used.

Source: range of the aspect ratios in Huebscher's tests, 1948 (memory, medium).
"""

_SMALLEST_IN, _LARGEST_IN = 0.25, 120.0


class Shape(StrEnum):
    """Cross-section of a duct."""

    RECT = "rect"
    ROUND = "round"
    OVAL = "oval"


def area_ft2(
    shape: Shape,
    width_in: Floats | None = None,
    height_in: Floats | None = None,
    diameter_in: Floats | None = None,
) -> Floats:
    """Clear area of a cross-section.

    Args:
        shape: Round takes diameter_in; rect and oval take width_in and height_in.
        width_in: One inside side, in, 0.25 to 120; any shape.
        height_in: The other inside side, in, 0.25 to 120; broadcasts.
        diameter_in: Inside diameter, in, 0.25 to 120; any shape.

    Returns:
        Area, ft2, broadcast shape.

    Raises:
        FactError: A size that the shape needs is missing.
        OutOfRangeError: A size is outside these limits, or NaN.

    Source: geometry; flat oval pi a^2/4 + a (A - a), 2021 ASHRAE Handbook-Fundamentals ch. 21
    eq. 27 (read).

    >>> area_ft2(Shape.RECT, 18.0, 8.0)
    1.0
    """
    if shape is Shape.ROUND:
        across = _diameter(diameter_in)
        return np.pi * across**2 / 576.0
    width, height = _sides(width_in, height_in)
    if shape is Shape.RECT:
        return width * height / 144.0
    minor, major = np.minimum(width, height), np.maximum(width, height)
    return _plain((np.pi * minor**2 / 4.0 + minor * (major - minor)) / 144.0)


def perimeter_ft(
    shape: Shape,
    width_in: Floats | None = None,
    height_in: Floats | None = None,
    diameter_in: Floats | None = None,
) -> Floats:
    """Length around a cross-section; sizes and errors as in `area_ft2`.

    Returns:
        Perimeter, ft, broadcast shape.

    Source: geometry; flat oval pi a + 2 (A - a), 2021 ASHRAE Handbook-Fundamentals ch. 21 eq. 28
    (read).
    """
    if shape is Shape.ROUND:
        return np.pi * _diameter(diameter_in) / 12.0
    width, height = _sides(width_in, height_in)
    if shape is Shape.RECT:
        return 2.0 * (width + height) / 12.0
    minor, major = np.minimum(width, height), np.maximum(width, height)
    return _plain((np.pi * minor + 2.0 * (major - minor)) / 12.0)


def hydraulic_diameter_in(
    shape: Shape,
    width_in: Floats | None = None,
    height_in: Floats | None = None,
    diameter_in: Floats | None = None,
) -> Floats:
    """Four times area over perimeter, in; sizes and errors as in `area_ft2`.

    Source: 2021 ASHRAE Handbook-Fundamentals ch. 21 eq. 24 (read).
    """
    if shape is Shape.ROUND:
        return 1.0 * _diameter(diameter_in)
    area = area_ft2(shape, width_in, height_in)
    return 48.0 * area / perimeter_ft(shape, width_in, height_in)


def equivalent_diameter_in(
    shape: Shape,
    width_in: Floats | None = None,
    height_in: Floats | None = None,
    diameter_in: Floats | None = None,
) -> Floats:
    """Diameter of the round duct with the same friction at the same airflow.

    Speed comes from the real area, never from this diameter.

    Args:
        shape: Round takes diameter_in; rect and oval take width_in and height_in.
        width_in: One inside side, in, 0.25 to 120; any shape.
        height_in: The other inside side, in, 0.25 to 120; broadcasts.
        diameter_in: Inside diameter, in, 0.25 to 120; any shape.

    Returns:
        Equivalent diameter, in, broadcast shape. Beyond an aspect ratio of 8 the relation is less
        sure: see `is_beyond_equivalent_range`.

    Raises:
        FactError: A size that the shape needs is missing.
        OutOfRangeError: A size is outside these limits, or NaN.

    Source: rectangular 1.30 (ab)^0.625 / (a + b)^0.25 (Huebscher 1948), flat oval
    1.55 A^0.625 / P^0.25 (Heyt and Diaz 1975); 2021 ASHRAE Handbook-Fundamentals ch. 21 eq. 25
    and 26 (read).

    >>> round(equivalent_diameter_in(Shape.RECT, 18.0, 8.0), 2)
    12.86
    """
    if shape is Shape.ROUND:
        return 1.0 * _diameter(diameter_in)
    if shape is Shape.RECT:
        width, height = _sides(width_in, height_in)
        diameter: Floats = 1.30 * (width * height) ** 0.625 / (width + height) ** 0.25
        return diameter
    area_in2 = 144.0 * area_ft2(shape, width_in, height_in)
    around_in = 12.0 * perimeter_ft(shape, width_in, height_in)
    oval: Floats = 1.55 * area_in2**0.625 / around_in**0.25
    return oval


def aspect_ratio(width_in: Floats, height_in: Floats) -> Floats:
    """Longer side over shorter; 1 or more, whichever is called width."""
    width, height = _sides(width_in, height_in)
    return _plain(np.maximum(width, height) / np.minimum(width, height))


def is_beyond_equivalent_range(width_in: Floats, height_in: Floats) -> bool | np.ndarray:
    """Whether a duct is flatter than the equivalent-diameter formula was tested for."""
    beyond: np.ndarray = np.asarray(
        np.asarray(aspect_ratio(width_in, height_in)) > EQUIVALENT_DIAMETER_MAX_ASPECT_RATIO
    )
    return bool(beyond) if beyond.ndim == 0 else beyond


def squeezed_round_width_in(nominal_diameter_in: Floats, height_in: Floats) -> Floats:
    """Width of a round pipe that was squeezed to a height: its perimeter stays, its area shrinks.

    Args:
        nominal_diameter_in: Diameter before, in, 0.25 to 120; any shape.
        height_in: Height after, in, at most the diameter; broadcasts.

    Returns:
        Width, in, broadcast shape; with height_in the two sides of an oval.

    Raises:
        OutOfRangeError: A size is outside these limits, NaN, or the height above the diameter.

    Source: pi D = pi a + 2 (A - a), geometry.

    >>> round(squeezed_round_width_in(6.0, 3.5), 1)
    7.4
    """
    nominal = _diameter(nominal_diameter_in)
    require_within("height_in", height_in, _SMALLEST_IN, _LARGEST_IN)
    require_within("height_in / nominal_diameter_in", height_in / nominal, 0.0, 1.0)
    return height_in + np.pi * (nominal - height_in) / 2.0


def velocity_fpm(airflow_cfm: Floats, area_ft2: Floats) -> Floats:
    """Mean air speed through a cross-section.

    Args:
        airflow_cfm: Airflow, CFM, 0 to 20,000; any shape.
        area_ft2: Clear area, ft2, 0.0005 to 100; broadcasts.

    Returns:
        Speed, fpm, broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: continuity.

    >>> velocity_fpm(1050.0, 1.0)
    1050.0
    """
    require_within("airflow_cfm", airflow_cfm, 0.0, 20000.0)
    require_within("area_ft2", area_ft2, 5e-4, 100.0)
    return airflow_cfm / area_ft2


def round_duct_velocity_fpm(airflow_cfm: Floats, equivalent_diameter_in: Floats) -> Floats:
    """Speed in the round duct of equal friction, which is what a friction chart shows.

    It is higher than the real speed of a rectangular duct, whose area is larger.

    Args:
        airflow_cfm: Airflow, CFM, 0 to 20,000; any shape.
        equivalent_diameter_in: Equivalent diameter, in, 0.25 to 120; broadcasts.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.
    """
    return velocity_fpm(airflow_cfm, area_ft2(Shape.ROUND, diameter_in=equivalent_diameter_in))


def _diameter(diameter_in: Floats | None) -> Floats:
    if diameter_in is None:
        raise FactError("diameter_in", "a round duct needs its diameter")
    require_within("diameter_in", diameter_in, _SMALLEST_IN, _LARGEST_IN)
    return diameter_in


def _sides(width_in: Floats | None, height_in: Floats | None) -> tuple[Floats, Floats]:
    if width_in is None or height_in is None:
        missing = "width_in" if width_in is None else "height_in"
        raise FactError(missing, "a rectangular or oval duct needs its width and its height")
    require_within("width_in", width_in, _SMALLEST_IN, _LARGEST_IN)
    require_within("height_in", height_in, _SMALLEST_IN, _LARGEST_IN)
    return width_in, height_in


def _plain(values: Floats) -> Floats:
    return float(values) if np.ndim(values) == 0 else values
