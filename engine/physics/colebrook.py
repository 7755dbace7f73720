"""The Darcy friction factor: Colebrook to eleven digits, for whole arrays at once.

Colebrook's equation in logarithmic form is F + ln(X1 + F) = X2 with F = ln(10) / (2 sqrt(f)),
X1 = ln(10) / (2 x 2.51 x 3.7) x roughness x Re and X2 = ln(Re) - ln(2 x 2.51 / ln(10)) (Clamond,
Ind. Eng. Chem. Res. 48, 2009, memory). With y = X1 + F it reads y + ln(y) = X1 + X2: a function of
one number. Its logarithm ln(y) is held as a parabola on 1,024 cells for every doubling of that
number, so a factor costs one logarithm and F = X2 - ln(y). The parabolas are made once, on first
use, from y + ln(y) = v itself; their error is below 1e-11 of the factor.
"""

from functools import cache
from typing import Final

import numpy as np
from numpy.typing import NDArray

from engine.arrays import Array, Floats, require_within

__all__ = [
    "LAMINAR_BELOW_REYNOLDS",
    "TURBULENT_FROM_REYNOLDS",
    "friction_exponent",
    "friction_factor",
    "slow_factor",
]

LAMINAR_BELOW_REYNOLDS: Final = 2300.0
"""Source: 2021 ASHRAE Handbook-Fundamentals ch. 21 (read)."""

TURBULENT_FROM_REYNOLDS: Final = 4000.0
"""Where Colebrook's relation starts to hold. Source: engineering convention (memory)."""

_SLOWEST, _FASTEST = 1e-3, 1e9
_ROUGHEST: Final = 0.2
_ROUGHEST_BITS: Final = np.float64(_ROUGHEST).view(np.uint64)

_HALF_LN_10: Final = 1.151292546497022842
_ROUGH: Final = 0.123968186335417556  # ln(10) / (2 x 2.51 x 3.7)
_SMOOTH: Final = 0.779397488455682028  # ln(2 x 2.51 / ln(10))

_CHUNK: Final = 16384  # its work arrays stay near; long enough for the cost of a call to vanish
_SHIFT: Final = 42  # leaves the exponent and ten bits of a double: 1,024 cells for every doubling
_FIRST_CELL: Final = (1023 + 2) << 10  # 4; the smallest v is ln(2300)
_LAST_CELL: Final = (1023 + 25) << 10  # 2 ** 25; the largest is X1 of the roughest, fastest flow


def friction_factor(reynolds: Floats, relative_roughness: Floats) -> Floats:
    """Darcy friction factor of a round duct.

    Laminar below Re 2300, Colebrook to eleven digits from Re 4000, and in between a straight
    line from one to the other, so that friction neither jumps nor falls as airflow grows.

    Args:
        reynolds: Reynolds number, 1e-3 to 1e9; any shape.
        relative_roughness: Roughness over diameter, 0 to 0.2; broadcasts.

    Returns:
        Darcy factor (four times Fanning's), broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: Colebrook, 2021 ASHRAE Handbook-Fundamentals ch. 21 eq. 19 (read).

    >>> round(friction_factor(1e5, 3e-4), 5)
    0.01947
    """
    shape = np.broadcast_shapes(np.shape(reynolds), np.shape(relative_roughness))
    speed = _flat(reynolds, shape)
    rough = np.asarray(relative_roughness, dtype=np.float64)
    rough = rough.reshape(1) if rough.size == 1 else _flat(rough, shape)
    slowest = _least_within("reynolds", speed, _SLOWEST, _FASTEST)
    _require_rough(rough)
    factor = np.empty(speed.size)
    if slowest >= TURBULENT_FROM_REYNOLDS:
        _fill_colebrook(speed, rough, factor)
    else:
        _fill_colebrook(np.maximum(speed, LAMINAR_BELOW_REYNOLDS), rough, factor)
        slow = speed < TURBULENT_FROM_REYNOLDS
        factor[slow] = slow_factor(speed[slow], np.broadcast_to(rough, speed.shape)[slow])
    return float(factor[0]) if shape == () else factor.reshape(shape)


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
    if factor is None:
        factor = friction_factor(reynolds, relative_roughness)
    speed = np.asarray(reynolds, dtype=np.float64)
    exponent = _HALF_LN_10 / np.sqrt(np.asarray(factor))
    exponent = exponent + (1.0 + _ROUGH * np.multiply(relative_roughness, speed))
    exponent = np.asarray(2.0 - 2.0 / exponent)
    slow = np.broadcast_to(speed < TURBULENT_FROM_REYNOLDS, exponent.shape)
    if slow.any():
        now = np.broadcast_to(factor, exponent.shape)[slow]
        here = np.broadcast_to(speed, exponent.shape)[slow]
        # the straight line's slope in Re is (f - f at 2300) / (Re - 2300)
        rise = now - 64.0 / LAMINAR_BELOW_REYNOLDS
        slope = rise / np.maximum(here - LAMINAR_BELOW_REYNOLDS, 1e-9)
        exponent[slow] = np.where(here <= LAMINAR_BELOW_REYNOLDS, 1.0, 2.0 + slope * here / now)
    return float(exponent) if exponent.ndim == 0 else exponent


def slow_factor(reynolds: Array, relative_roughness: Array) -> Array:
    """Laminar factor, and the straight line from it to Colebrook's at Re 4000.

    Args:
        reynolds: Reynolds numbers above 0 and up to 4000, (n,).
        relative_roughness: Roughness over diameter, 0 to 0.2, (n,).

    Returns:
        Darcy factor, (n,). Arguments aren't checked again here.
    """
    at_turbulent = np.empty_like(reynolds)
    turbulent = np.full_like(reynolds, TURBULENT_FROM_REYNOLDS)
    _fill_colebrook(turbulent, relative_roughness, at_turbulent)
    at_laminar = 64.0 / LAMINAR_BELOW_REYNOLDS
    way = (reynolds - LAMINAR_BELOW_REYNOLDS) / (TURBULENT_FROM_REYNOLDS - LAMINAR_BELOW_REYNOLDS)
    return np.where(way <= 0.0, 64.0 / reynolds, at_laminar + way * (at_turbulent - at_laminar))


def _flat(values: Floats, shape: tuple[int, ...]) -> Array:
    given = np.asarray(values, dtype=np.float64)
    spread = given if given.shape == shape else np.broadcast_to(given, shape)
    return np.ascontiguousarray(spread).reshape(-1)


def _least_within(name: str, values: Array, low: float, high: float) -> float:
    """Smallest value, after making sure that all are within limits above 0.

    As whole numbers, the bits of doubles above 0 are in the doubles' own order; those of anything
    below 0 are below 0, and those of NaN outside any limits. Whole numbers are compared faster.
    """
    if values.size == 0:
        return high
    bits = values.view(np.int64)
    least = bits.min().view(np.float64)
    most = bits.max().view(np.float64)
    if not (least >= low and most <= high):  # true of NaN as well
        require_within(name, values, low, high)
    return float(least)


def _require_rough(values: Array) -> None:
    """As `require_within`, in one pass: as whole numbers, the bits of a double of either sign, or
    NaN, that is outside 0 to the roughest are larger than the bits of the roughest."""
    if values.size and values.view(np.uint64).max() > _ROUGHEST_BITS:
        require_within("relative_roughness", values, 0.0, _ROUGHEST)


def _fill_colebrook(reynolds: Array, relative_roughness: Array, factor: Array) -> None:
    """Fill `factor`, (n,), from Reynolds numbers of 2300 up, (n,), and roughness, (n,) or (1,).

    Written for few passes over memory and few small objects: constants are arrays, because a
    Python number costs each call more than the arithmetic on a short row does.
    """
    constant, first, second = _parabolas()
    rough, half_ln_10 = np.array(_ROUGH), np.array(_HALF_LN_10)
    shift, first_cell = np.array(_SHIFT), np.array(_FIRST_CELL)
    chunks = max(-(-reynolds.size // _CHUNK), 1)
    size = max(-(-reynolds.size // chunks), 1)
    work = np.empty((3, size))
    v_bits = work[0].view(np.int64)
    cells = np.empty(size, dtype=np.int64)
    alike = relative_roughness.size == 1
    for start in range(0, reynolds.size, size):
        stop = min(start + size, reynolds.size)
        v, ln_y, looked_up = work[:, : stop - start]
        cell, f, speed = cells[: stop - start], factor[start:stop], reynolds[start:stop]
        np.log(speed, out=f)
        if alike:
            np.multiply(speed, rough * relative_roughness, out=v)
        else:
            np.multiply(speed, relative_roughness[start:stop], out=v)
            np.multiply(v, rough, out=v)
        np.add(v, f, out=v)
        np.right_shift(v_bits[: stop - start], shift, out=cell)
        np.subtract(cell, first_cell, out=cell)
        # a column of coefficients is small enough to stay near; a table of rows is not
        second.take(cell, out=ln_y, mode="clip")
        for column in (first, constant):
            np.multiply(ln_y, v, out=ln_y)
            np.add(ln_y, column.take(cell, out=looked_up, mode="clip"), out=ln_y)
        np.add(f, ln_y, out=f)
        np.divide(half_ln_10, f, out=f)
        np.multiply(f, f, out=f)


@cache
def _parabolas() -> tuple[Array, Array, Array]:
    """Coefficients, by powers of v, of -ln(y) - ln(2 x 2.51 / ln(10)): (cells,) each.

    The number looked up is v = X1 + ln(Re). Each parabola passes through three Chebyshev points of
    its cell. Written in powers of v itself its terms stay near 1, so that nothing cancels.
    """
    cells: NDArray[np.int64] = np.arange(_FIRST_CELL, _LAST_CELL + 1, dtype=np.int64)
    edges = (cells << _SHIFT).view(np.float64)
    left, width = edges[:-1], np.diff(edges)
    way = 0.5 - 0.5 * np.cos(np.pi * (2.0 * np.arange(3) + 1.0) / 6.0)
    target = left + width * way[:, np.newaxis] - _SMOOTH
    y = target - np.log(target)
    for _ in range(4):  # Newton, doubling its digits from an error of a few per cent
        y = y * (1.0 + target - np.log(y)) / (1.0 + y)
    rows = np.linalg.solve(np.vander(way, 3, increasing=True), np.log(y))
    a, b, c = (-row / width**power for power, row in enumerate(rows))
    return a - left * (b - left * c) - _SMOOTH, b - 2.0 * left * c, c
