"""Friction of straight duct: Darcy-Weisbach with Colebrook's factor, solved for whole arrays.

Knows nothing of materials: roughness comes in feet. Slack flex, fittings and elevation are other
modules' subjects; density and viscosity come in as numbers.
"""

from typing import Final, NamedTuple

import numpy as np

from engine.arrays import Array, Floats, require_within

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

LAMINAR_BELOW_REYNOLDS: Final = 2300.0
"""Source: 2021 ASHRAE Handbook-Fundamentals ch. 21 (read)."""

TURBULENT_FROM_REYNOLDS: Final = 4000.0
"""Where Colebrook's relation starts to hold. Source: engineering convention (memory)."""

_CHUNK: Final = 4096  # six work arrays of it stay inside a second-level cache
_HALF_LN_10: Final = 1.151292546497022842
_ROUGH: Final = 0.123968186335417556  # ln(10) / (2 x 2.51 x 3.7)
_SMOOTH: Final = 0.779397488455682028  # ln(2 x 2.51 / ln(10))
_FPM_FACTOR: Final = 1096.7


def friction_factor(reynolds: Floats, relative_roughness: Floats) -> Floats:
    """Darcy friction factor of a round duct.

    Laminar below Re 2300, Colebrook to machine precision from Re 4000, and in between a straight
    line from one to the other, so that friction neither jumps nor falls as airflow grows.

    Args:
        reynolds: Reynolds number, 1e-3 to 1e9; any shape.
        relative_roughness: Roughness over diameter, 0 to 0.2; broadcasts.

    Returns:
        Darcy factor (four times Fanning's), broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: Colebrook, 2021 ASHRAE Handbook-Fundamentals ch. 21 eq. 19 (read). Solved in the
    logarithmic form F + ln(X1 + F) = X2 with two fourth-order steps, after Clamond, Ind. Eng.
    Chem. Res. 48 (2009) (memory).

    >>> round(friction_factor(1e5, 3e-4), 5)
    0.01947
    """
    require_within("reynolds", reynolds, 1e-3, 1e9)
    require_within("relative_roughness", relative_roughness, 0.0, 0.2)
    shape = np.broadcast_shapes(np.shape(reynolds), np.shape(relative_roughness))
    flat_reynolds = _flat(reynolds, shape)
    flat_roughness = _flat(relative_roughness, shape)
    factor = np.empty(flat_reynolds.size)
    _solve_colebrook(flat_reynolds, flat_roughness, factor)
    slow = flat_reynolds < TURBULENT_FROM_REYNOLDS
    if slow.any():
        factor[slow] = _slow_factor(flat_reynolds[slow], flat_roughness[slow])
    return float(factor[0]) if shape == () else factor.reshape(shape)


def _flat(values: Floats, shape: tuple[int, ...]) -> Array:
    spread = np.broadcast_to(np.asarray(values, dtype=np.float64), shape)
    return np.ascontiguousarray(spread).reshape(-1)


def _solve_colebrook(reynolds: Array, relative_roughness: Array, factor: Array) -> None:
    """Fill `factor`; chunked and in place, because memory traffic costs more than arithmetic."""
    size = min(_CHUNK, max(reynolds.size, 1))
    work = np.empty((7, size))
    for start in range(0, reynolds.size, size):
        stop = min(start + size, reynolds.size)
        x1, x2, f, y, step, base, extra = work[:, : stop - start]
        np.maximum(reynolds[start:stop], LAMINAR_BELOW_REYNOLDS, out=y)
        np.multiply(y, relative_roughness[start:stop], out=x1)
        x1 *= _ROUGH
        np.log(y, out=x2)
        x2 -= _SMOOTH
        np.subtract(x2, 0.2, out=f)
        for _ in range(2):
            # With y = X1 + F and e = (F + ln y - X2) / (1 + y):
            # F -= e y (1 + y + e/2) / (1 + y + e + e^2/3)
            np.add(x1, f, out=y)
            np.add(y, 1.0, out=base)
            np.log(y, out=step)
            step += f
            step -= x2
            step /= base
            y *= step
            step *= 0.5
            base += step
            y *= base
            # the half step h = e/2: e + e^2/3 = h + h (1 + 4/3 h)
            np.multiply(step, 4.0 / 3.0, out=extra)
            extra += 1.0
            extra *= step
            base += extra
            y /= base
            f -= y
        np.divide(_HALF_LN_10, f, out=f)
        np.multiply(f, f, out=factor[start:stop])


def _slow_factor(reynolds: Array, relative_roughness: Array) -> Array:
    """Laminar factor, and the straight line from it to Colebrook's at Re 4000."""
    at_turbulent = np.empty_like(reynolds)
    _solve_colebrook(
        np.full_like(reynolds, TURBULENT_FROM_REYNOLDS), relative_roughness, at_turbulent
    )
    at_laminar = 64.0 / LAMINAR_BELOW_REYNOLDS
    way = (reynolds - LAMINAR_BELOW_REYNOLDS) / (TURBULENT_FROM_REYNOLDS - LAMINAR_BELOW_REYNOLDS)
    return np.where(way <= 0.0, 64.0 / reynolds, at_laminar + way * (at_turbulent - at_laminar))


def friction_exponent(
    reynolds: Floats, relative_roughness: Floats, factor: Floats | None = None
) -> Floats:
    """Power of airflow with which friction grows at this point: 1 laminar, 1.75 to 2 turbulent.

    Args:
        reynolds: Reynolds number, 1e-3 to 1e9; any shape.
        relative_roughness: Roughness over diameter, 0 to 0.2; broadcasts.
        factor: `friction_factor` of both if the caller has it; broadcasts.

    Returns:
        2 + d ln f / d ln Re, broadcast shape. Between Re 2300 and 4000 it is larger than 2.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: Colebrook differentiated: d ln f / d ln Re = -2 / (1 + X1 + F).
    """
    known = friction_factor(reynolds, relative_roughness) if factor is None else factor
    speed = np.asarray(reynolds, dtype=np.float64)
    rough = np.asarray(relative_roughness, dtype=np.float64)
    root = _HALF_LN_10 / np.sqrt(known)
    exponent = np.asarray(2.0 - 2.0 / (1.0 + _ROUGH * rough * speed + root))
    slow = np.broadcast_to(speed < TURBULENT_FROM_REYNOLDS, exponent.shape)
    if slow.any():
        now = np.broadcast_to(known, exponent.shape)[slow]
        here = np.broadcast_to(speed, exponent.shape)[slow]
        # the straight line's slope d ln f / d ln Re = (f - intercept) / f
        slope = (now - 64.0 / LAMINAR_BELOW_REYNOLDS) / np.maximum(
            here - LAMINAR_BELOW_REYNOLDS, 1e-9
        )
        exponent[slow] = np.where(here <= LAMINAR_BELOW_REYNOLDS, 1.0, 2.0 + slope * here / now)
    return float(exponent) if exponent.ndim == 0 else exponent


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
        less = _slow_factor(middle, relative_roughness) * middle**2 < square
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
