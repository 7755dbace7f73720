"""Friction of straight duct: Darcy-Weisbach with the factor of `engine.physics.colebrook`.

Knows nothing of materials: roughness comes in feet. Slack flex, fittings and elevation are other
modules' subjects; density and viscosity come in as numbers.
"""

from typing import Final, NamedTuple

import numpy as np

from engine.arrays import Array, Floats, require_within
from engine.physics.colebrook import (
    LAMINAR_BELOW_REYNOLDS,
    TURBULENT_FROM_REYNOLDS,
    friction_exponent,
    friction_factor,
    slow_factor,
)

__all__ = [
    "LAMINAR_BELOW_REYNOLDS",
    "TURBULENT_FROM_REYNOLDS",
    "Friction",
    "airflow_at_friction_cfm",
    "friction_and_exponent",
    "friction_at_velocity_inwc_per_100ft",
    "friction_exponent",
    "friction_factor",
    "friction_inwc_per_100ft",
    "reynolds_number",
]

_FPM_FACTOR: Final = 1096.7


def reynolds_number(
    airflow_cfm: Floats, diameter_in: Floats, viscosity_ft2_s: Floats = 1.62e-4
) -> Floats:
    """Reynolds number of round duct.

    Args:
        airflow_cfm: Airflow, CFM, 0 to 20,000; any shape.
        diameter_in: Inside or equivalent diameter, in, 0.25 to 120; broadcasts.
        viscosity_ft2_s: Kinematic viscosity, 5e-5 to 1e-3 ft2/s; broadcasts.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: Re = V D / nu = 4 Q / (pi D nu).
    """
    require_within("airflow_cfm", airflow_cfm, 0.0, 20000.0)
    require_within("diameter_in", diameter_in, 0.25, 120.0)
    require_within("viscosity_ft2_s", viscosity_ft2_s, 5e-5, 1e-3)
    return (4.0 * 12.0 / (60.0 * np.pi)) * airflow_cfm / (diameter_in * viscosity_ft2_s)


def friction_inwc_per_100ft(
    airflow_cfm: Floats,
    diameter_in: Floats,
    roughness_ft: Floats,
    density_lb_ft3: Floats = 0.075,
    viscosity_ft2_s: Floats = 1.62e-4,
) -> Floats:
    """Pressure lost in 100 ft of straight duct.

    Args:
        airflow_cfm: Airflow, CFM, 0 to 20,000; any shape.
        diameter_in: Inside diameter, or the equivalent diameter of another shape, in, 0.25 to
            120; broadcasts.
        roughness_ft: Absolute roughness, ft, 0 to 0.02; broadcasts. At most a fifth of the
            diameter.
        density_lb_ft3: Air density, 0.02 to 0.12 lb/ft3; broadcasts.
        viscosity_ft2_s: Kinematic viscosity, 5e-5 to 1e-3 ft2/s; broadcasts.

    Returns:
        Friction, in wc per 100 ft, broadcast shape; 0 without airflow.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: Darcy, dp = f (12 L / D) VP, 2021 ASHRAE Handbook-Fundamentals ch. 21 eq. 18 (read).

    >>> round(friction_inwc_per_100ft(1000.0, 14.0, 0.0003), 4)
    0.0885
    """
    reynolds, relative_roughness = _duct_numbers(
        airflow_cfm, diameter_in, roughness_ft, viscosity_ft2_s
    )
    factor = friction_factor(reynolds, relative_roughness)
    velocity_pressure = _velocity_pressure_inwc(airflow_cfm, diameter_in, density_lb_ft3)
    return 1200.0 * factor / diameter_in * velocity_pressure


class Friction(NamedTuple):
    """Friction and how fast it grows with airflow; both of the broadcast shape."""

    friction_inwc_per_100ft: Floats
    exponent: Floats


def friction_and_exponent(
    airflow_cfm: Floats,
    diameter_in: Floats,
    roughness_ft: Floats,
    density_lb_ft3: Floats = 0.075,
    viscosity_ft2_s: Floats = 1.62e-4,
) -> Friction:
    """`friction_inwc_per_100ft` together with its local `friction_exponent`.

    Arguments, shapes, errors and source as there; one solution of Colebrook serves both.
    """
    reynolds, relative_roughness = _duct_numbers(
        airflow_cfm, diameter_in, roughness_ft, viscosity_ft2_s
    )
    factor = friction_factor(reynolds, relative_roughness)
    velocity_pressure = _velocity_pressure_inwc(airflow_cfm, diameter_in, density_lb_ft3)
    exponent = friction_exponent(reynolds, relative_roughness, factor)
    friction = 1200.0 * factor / diameter_in * velocity_pressure
    return Friction(friction, exponent)


def friction_at_velocity_inwc_per_100ft(
    velocity_fpm: Floats,
    hydraulic_diameter_in: Floats,
    roughness_ft: Floats,
    density_lb_ft3: Floats = 0.075,
    viscosity_ft2_s: Floats = 1.62e-4,
) -> Floats:
    """Friction by hydraulic diameter and real speed, the other accepted way for flat ducts.

    Args:
        velocity_fpm: Speed in the real cross-section, 0 to 20,000 fpm; any shape.
        hydraulic_diameter_in: 4 A / P, in, 0.25 to 120; broadcasts.
        roughness_ft: Absolute roughness, ft, 0 to 0.02; broadcasts.
        density_lb_ft3: Air density, 0.02 to 0.12 lb/ft3; broadcasts.
        viscosity_ft2_s: Kinematic viscosity, 5e-5 to 1e-3 ft2/s; broadcasts.

    Returns:
        Friction, in wc per 100 ft, broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: 2021 ASHRAE Handbook-Fundamentals ch. 21 eq. 18 and 24 (read).
    """
    require_within("velocity_fpm", velocity_fpm, 0.0, 20000.0)
    require_within("hydraulic_diameter_in", hydraulic_diameter_in, 0.25, 120.0)
    area_of_round_ft2 = np.pi * hydraulic_diameter_in**2 / 576.0
    return friction_inwc_per_100ft(
        velocity_fpm * area_of_round_ft2,
        hydraulic_diameter_in,
        roughness_ft,
        density_lb_ft3,
        viscosity_ft2_s,
    )


def airflow_at_friction_cfm(
    friction_inwc_per_100ft: Floats,
    diameter_in: Floats,
    roughness_ft: Floats,
    density_lb_ft3: Floats = 0.075,
    viscosity_ft2_s: Floats = 1.62e-4,
) -> Floats:
    """Airflow of a duct at a friction: the inverse of `friction_inwc_per_100ft`.

    Args:
        friction_inwc_per_100ft: Friction, in wc per 100 ft, 0 to 100; any shape.
        diameter_in: Inside or equivalent diameter, in, 0.25 to 120; broadcasts.
        roughness_ft: Absolute roughness, ft, 0 to 0.02; broadcasts.
        density_lb_ft3: Air density, 0.02 to 0.12 lb/ft3; broadcasts.
        viscosity_ft2_s: Kinematic viscosity, 5e-5 to 1e-3 ft2/s; broadcasts.

    Returns:
        Airflow, CFM, broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: Colebrook is explicit in this direction, since friction gives Re sqrt(f) at once.

    >>> round(airflow_at_friction_cfm(0.10, 14.0, 0.0003))
    1068
    """
    require_within("friction_inwc_per_100ft", friction_inwc_per_100ft, 0.0, 100.0)
    require_within("diameter_in", diameter_in, 0.25, 120.0)
    require_within("roughness_ft", roughness_ft, 0.0, 0.02)
    require_within("density_lb_ft3", density_lb_ft3, 0.02, 0.12)
    require_within("viscosity_ft2_s", viscosity_ft2_s, 5e-5, 1e-3)
    relative_roughness = roughness_ft * 12.0 / diameter_in
    require_within("relative_roughness", relative_roughness, 0.0, 0.2)
    one_fpm = 1200.0 * density_lb_ft3 / (diameter_in * _FPM_FACTOR**2)
    root_f_times_fpm = np.sqrt(friction_inwc_per_100ft / one_fpm)
    reynolds_per_fpm = diameter_in / (720.0 * viscosity_ft2_s)
    group = np.asarray(root_f_times_fpm * reynolds_per_fpm)  # Re sqrt(f)
    relative = np.broadcast_to(relative_roughness, group.shape)
    turbulent = np.maximum(group, 150.0)  # Re 4000 needs at least 700 in the smoothest duct
    reynolds = group * -2.0 * np.log10(relative / 3.7 + 2.51 / turbulent)
    slow = reynolds < TURBULENT_FROM_REYNOLDS
    if slow.any():
        reynolds = np.where(slow, 0.0, reynolds)
        reynolds[slow] = _slow_reynolds(group[slow], relative[slow])
    airflow = reynolds / reynolds_per_fpm * np.pi * np.square(diameter_in) / 576.0
    return float(airflow) if airflow.ndim == 0 else airflow


def _slow_reynolds(group: Array, relative_roughness: Array) -> Array:
    """Reynolds number below Colebrook's start, from Re sqrt(f)."""
    square = group**2
    laminar = square / 64.0
    low = np.full_like(group, LAMINAR_BELOW_REYNOLDS)
    high = np.full_like(group, TURBULENT_FROM_REYNOLDS)
    for _ in range(60):  # halves 1700 down to rounding
        middle = 0.5 * (low + high)
        less = slow_factor(middle, relative_roughness) * middle**2 < square
        low, high = np.where(less, middle, low), np.where(less, high, middle)
    return np.where(laminar <= LAMINAR_BELOW_REYNOLDS, laminar, 0.5 * (low + high))


def _duct_numbers(
    airflow_cfm: Floats, diameter_in: Floats, roughness_ft: Floats, viscosity_ft2_s: Floats
) -> tuple[Floats, Floats]:
    require_within("roughness_ft", roughness_ft, 0.0, 0.02)
    reynolds = reynolds_number(airflow_cfm, diameter_in, viscosity_ft2_s)
    return np.maximum(reynolds, 1e-3), roughness_ft * 12.0 / diameter_in


def _velocity_pressure_inwc(
    airflow_cfm: Floats, diameter_in: Floats, density_lb_ft3: Floats
) -> Floats:
    require_within("density_lb_ft3", density_lb_ft3, 0.02, 0.12)
    area_ft2 = np.pi * diameter_in**2 / 576.0
    return density_lb_ft3 * (airflow_cfm / area_ft2 / _FPM_FACTOR) ** 2
