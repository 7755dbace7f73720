"""Where a blower and the system it pushes against agree.

A system is a sum of terms coefficient x Q^exponent: ducts, coil, filter, grilles. A blower is a
table, a held airflow with a limit, or, when nothing is printed, a generic curve by kind of motor.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final, NamedTuple

import numpy as np

from engine.arrays import Array, Floats, require_within
from engine.errors import FactError
from engine.physics.blower_table import BlowerTable, MotorKind, States, TablePlace

__all__ = [
    "GENERIC_CURVES",
    "GenericCurve",
    "OperatingPoint",
    "System",
    "coefficient_at",
    "constant_airflow_point",
    "generic_operating_point",
    "operating_point",
    "system_static_inwc",
]

_MOST_AIRFLOW_CFM: Final = 20000.0


@dataclass(frozen=True, slots=True)
class System:
    """What the blower pushes against: the sum over parts of coefficient x Q^exponent.

    Attributes:
        coefficient: in wc per CFM^exponent, 0 or more; (parts,) or (n, parts).
        exponent: 0.5 to 3; (parts,) or (n, parts).
    """

    coefficient: Array
    exponent: Array

    def __post_init__(self) -> None:
        """Refuse what can't be a system.

        Raises:
            FactError: No part, or arrays whose shapes don't go together.
            OutOfRangeError: A coefficient or exponent outside its limits, or NaN.
        """
        if self.coefficient.ndim not in (1, 2) or self.coefficient.shape[-1] == 0:
            raise FactError("system.coefficient", "a system has shape (parts,) or (n, parts)")
        if self.exponent.shape[-1:] != self.coefficient.shape[-1:]:
            raise FactError("system.exponent", "every part takes one coefficient and one exponent")
        require_within("system.coefficient", self.coefficient, 0.0, 1e3)
        require_within("system.exponent", self.exponent, 0.5, 3.0)


class OperatingPoint(NamedTuple):
    """What a blower delivers into a system.

    Attributes:
        airflow_cfm: Delivered airflow; a bound where the place isn't WITHIN.
        static_inwc: External static there; of a bound, the table's row that sets it.
        place: `TablePlace` values: below the first row "at least", beyond the last "at most".
    """

    airflow_cfm: Floats
    static_inwc: Floats
    place: States


def coefficient_at(static_inwc: Floats, airflow_cfm: Floats, exponent: Floats) -> Floats:
    """Coefficient of the curve that passes through a reading.

    Args:
        static_inwc: Pressure lost, 0 to 20 in wc; any shape.
        airflow_cfm: Airflow it was read at, 1 to 20,000 CFM; broadcasts.
        exponent: Power of airflow, 0.5 to 3; broadcasts.

    Returns:
        in wc per CFM^exponent, broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    >>> coefficient_at(0.5, 1000.0, 2.0)
    5e-07
    """
    require_within("static_inwc", static_inwc, 0.0, 20.0)
    require_within("airflow_cfm", airflow_cfm, 1.0, _MOST_AIRFLOW_CFM)
    require_within("exponent", exponent, 0.5, 3.0)
    coefficient: Floats = static_inwc / airflow_cfm**exponent
    return coefficient


def system_static_inwc(system: System, airflow_cfm: Floats) -> Floats:
    """Pressure that a system takes at an airflow.

    Args:
        system: Its parts.
        airflow_cfm: Airflow, 0 to 20,000 CFM; scalar or (n,).

    Returns:
        Sum over the parts, in wc; scalar if nothing has n, else (n,).

    Raises:
        OutOfRangeError: The airflow is outside these limits, or NaN.
    """
    require_within("airflow_cfm", airflow_cfm, 0.0, _MOST_AIRFLOW_CFM)
    flow = np.asarray(airflow_cfm, dtype=np.float64)[..., np.newaxis]
    total = np.sum(system.coefficient * flow**system.exponent, axis=-1)
    return float(total) if total.ndim == 0 else np.asarray(total)


def operating_point(table: BlowerTable, system: System) -> OperatingPoint:
    """Where the table's straight lines cross the system's curve.

    Args:
        table: One blower setting.
        system: What it pushes against, n samples or one.

    Returns:
        Airflow, static and place; scalars (place 0-d) for one system, else (n,).

    Solved to a relative 1e-12 along each line, by bracketed Newton steps.
    """
    return _cross(np.asarray(table.static_inwc), np.asarray(table.airflow_cfm), system)


def constant_airflow_point(
    held_cfm: Floats, limit_static_inwc: Floats, system: System
) -> OperatingPoint:
    """A blower that holds its airflow up to a limit of static, and no further is known.

    Args:
        held_cfm: Airflow it is set to hold, 1 to 20,000 CFM; scalar or (n,).
        limit_static_inwc: Static up to which it can, 0.01 to 5 in wc; scalar or (n,).
        system: What it pushes against, n samples or one.

    Returns:
        The held airflow where the system takes at most the limit (WITHIN); else the airflow at
        which the system takes just the limit, as "at most" (BEYOND_LAST_ROW). A value equal to
        the limit is held.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.
    """
    require_within("held_cfm", held_cfm, 1.0, _MOST_AIRFLOW_CFM)
    require_within("limit_static_inwc", limit_static_inwc, 0.01, 5.0)
    held, limit, taken = np.broadcast_arrays(
        np.asarray(held_cfm, dtype=np.float64),
        np.asarray(limit_static_inwc, dtype=np.float64),
        np.asarray(system_static_inwc(system, held_cfm)),
    )
    over = taken > limit
    # a vertical line at the held airflow, then a level one at the limit down to no air
    static_rows = np.stack([np.zeros_like(limit), limit, limit], axis=-1)
    airflow_rows = np.stack([held, held, np.zeros_like(held)], axis=-1)
    crossing = _cross(static_rows, airflow_rows, system)
    airflow = np.where(over, crossing.airflow_cfm, held)
    static = np.where(over, limit, taken)
    place = np.where(over, TablePlace.BEYOND_LAST_ROW, TablePlace.WITHIN).astype(np.int8)
    return _point(airflow, static, place)


class GenericCurve(NamedTuple):
    """How a kind of blower's airflow falls, relative to its rated point.

    Attributes:
        static_ratio: External static over rated static, rising.
        low_share: Airflow over rated airflow at each, for one blower in ten.
        likely_share: The middle.
        high_share: For one blower in ten the other way.
        source: Where the figures are from.
    """

    static_ratio: tuple[float, ...]
    low_share: tuple[float, ...]
    likely_share: tuple[float, ...]
    high_share: tuple[float, ...]
    source: str


_GENERIC_SOURCE: Final = (
    "shape of usual residential blower tables; common practice, no published source"
)

GENERIC_CURVES: Final[Mapping[MotorKind, GenericCurve]] = MappingProxyType(
    {
        MotorKind.PSC: GenericCurve(
            (0.2, 0.6, 1.0, 1.4, 1.8, 2.2),
            (1.10, 1.06, 1.0, 0.86, 0.66, 0.40),
            (1.15, 1.08, 1.0, 0.90, 0.77, 0.58),
            (1.22, 1.12, 1.0, 0.93, 0.84, 0.70),
            _GENERIC_SOURCE,
        ),
        MotorKind.ECM_CONSTANT_TORQUE: GenericCurve(
            (0.2, 0.6, 1.0, 1.4, 1.8, 2.2),
            (1.05, 1.03, 1.0, 0.90, 0.78, 0.62),
            (1.10, 1.05, 1.0, 0.94, 0.86, 0.76),
            (1.15, 1.08, 1.0, 0.96, 0.91, 0.84),
            _GENERIC_SOURCE,
        ),
        MotorKind.ECM_VARIABLE: GenericCurve(
            (0.2, 0.6, 1.0, 1.4, 1.8, 2.2),
            (1.0, 1.0, 1.0, 0.97, 0.88, 0.74),
            (1.0, 1.0, 1.0, 0.99, 0.96, 0.88),
            (1.0, 1.0, 1.0, 1.0, 1.0, 0.97),
            _GENERIC_SOURCE,
        ),
        MotorKind.OTHER: GenericCurve(
            (0.2, 0.6, 1.0, 1.4, 1.8, 2.2),
            (1.0, 1.0, 1.0, 0.86, 0.66, 0.40),
            (1.10, 1.05, 1.0, 0.93, 0.84, 0.72),
            (1.20, 1.10, 1.0, 0.98, 0.95, 0.90),
            _GENERIC_SOURCE,
        ),
    }
)


def generic_operating_point(
    motor: MotorKind,
    rated_airflow_cfm: Floats,
    rated_static_inwc: Floats,
    reach: Floats,
    system: System,
) -> OperatingPoint:
    """Operating point of a blower of which only the rated point and the motor are known.

    Args:
        motor: Kind of motor.
        rated_airflow_cfm: Airflow at the rated static, 1 to 10,000 CFM; scalar or (n,).
        rated_static_inwc: Rated external static, 0.05 to 2 in wc; scalar or (n,).
        reach: Place of this blower among its kind, 0 (weak at high static) to 1 (strong); 0.1,
            0.5 and 0.9 are the curve's low, likely and high; scalar or (n,).
        system: What it pushes against, n samples or one.

    Returns:
        As `operating_point`; a belief, not a reading of any table.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.
    """
    require_within("rated_airflow_cfm", rated_airflow_cfm, 1.0, 10000.0)
    require_within("rated_static_inwc", rated_static_inwc, 0.05, 2.0)
    require_within("reach", reach, 0.0, 1.0)
    curve = GENERIC_CURVES[motor]
    ratio = np.asarray(curve.static_ratio)
    below = ratio < 1.0
    low, likely, high = (
        np.asarray(s) for s in (curve.low_share, curve.likely_share, curve.high_share)
    )
    place = np.asarray(reach, dtype=np.float64)[..., np.newaxis]
    # a strong blower gives more at high static and, being flatter, less at low
    place = np.where(below, 1.0 - place, place)
    toward = np.clip((place - 0.5) / 0.4, -1.25, 1.25)
    share = np.where(
        toward < 0.0, likely + toward * (likely - low), likely + toward * (high - likely)
    )
    share = np.where(below, np.maximum(share, 1.0), np.clip(share, 0.05, 1.0))
    share = np.minimum.accumulate(share, axis=-1)
    airflow_rows = np.asarray(rated_airflow_cfm, dtype=np.float64)[..., np.newaxis] * share
    static_rows = np.asarray(rated_static_inwc, dtype=np.float64)[..., np.newaxis] * ratio
    return _cross(static_rows, airflow_rows, system)


def _cross(static_rows: Array, airflow_rows: Array, system: System) -> OperatingPoint:
    """Crossing of lines through rows, (rows,) or (n, rows), with the system's curve.

    Along the table, what the system takes less what the blower makes falls from row to row, so
    one line holds the crossing.
    """
    coefficient, exponent = np.broadcast_arrays(
        np.atleast_2d(system.coefficient), np.atleast_2d(system.exponent)
    )
    static_rows, airflow_rows = np.broadcast_arrays(
        np.atleast_2d(static_rows), np.atleast_2d(airflow_rows)
    )
    n = max(len(coefficient), len(static_rows))
    single = (
        system.coefficient.ndim == system.exponent.ndim == 1 and len(static_rows) == 1 and n == 1
    )
    static_rows = np.broadcast_to(static_rows, (n, static_rows.shape[1]))
    airflow_rows = np.broadcast_to(airflow_rows, (n, airflow_rows.shape[1]))

    over = np.empty(static_rows.shape)
    for row in range(static_rows.shape[1]):
        taken = coefficient * airflow_rows[:, row, np.newaxis] ** exponent
        over[:, row] = np.sum(taken, axis=1) - static_rows[:, row]
    at_least, at_most = over[:, 0] < 0.0, over[:, -1] > 0.0
    # the last row at which the system still takes more than the blower makes
    start = np.clip(np.sum(over > 0.0, axis=1) - 1, 0, max(static_rows.shape[1] - 2, 0))
    stop = np.minimum(start + 1, static_rows.shape[1] - 1)
    each = np.arange(n)
    s0, s1 = static_rows[each, start], static_rows[each, stop]
    q0, q1 = airflow_rows[each, start], airflow_rows[each, stop]
    way = _root_along((s0, s1, q0, q1), coefficient, exponent)
    airflow, static = q0 + way * (q1 - q0), s0 + way * (s1 - s0)
    airflow = np.where(
        at_least, airflow_rows[:, 0], np.where(at_most, airflow_rows[:, -1], airflow)
    )
    static = np.where(at_least, static_rows[:, 0], np.where(at_most, static_rows[:, -1], static))
    place = np.zeros(n, dtype=np.int8)
    place[at_least] = TablePlace.BELOW_FIRST_ROW
    place[at_most] = TablePlace.BEYOND_LAST_ROW
    if single:
        return OperatingPoint(float(airflow[0]), float(static[0]), place.reshape(()))
    return _point(airflow, static, place)


def _root_along(
    ends: tuple[Array, Array, Array, Array], coefficient: Array, exponent: Array
) -> Array:
    """Share of the way from row to row at which the system takes what the blower makes, (n,).

    Newton steps, halving instead wherever one leaves the bracket.
    """
    s0, s1, q0, q1 = ends
    low, high = np.zeros_like(s0), np.ones_like(s0)
    way = np.full_like(s0, 0.5)
    for _ in range(80):
        flow = q0 + way * (q1 - q0)
        parts = coefficient * flow[:, np.newaxis] ** exponent
        surplus = np.sum(parts, axis=1) - (s0 + way * (s1 - s0))
        low, high = np.where(surplus > 0.0, way, low), np.where(surplus > 0.0, high, way)
        per_flow = np.sum(parts * exponent, axis=1) / np.maximum(flow, 1e-300)
        slope = per_flow * (q1 - q0) - (s1 - s0)  # falls along the table
        step = way - surplus / np.where(slope < 0.0, slope, -1.0)
        inside = (slope < 0.0) & (step >= low) & (step <= high)
        after = np.where(inside, step, 0.5 * (low + high))
        moved = np.abs(after - way)
        way = after
        if moved.max(initial=0.0) < 1e-14:
            break
    return way


def _point(airflow_cfm: Array, static_inwc: Array, place: States) -> OperatingPoint:
    if airflow_cfm.ndim == 0:
        return OperatingPoint(float(airflow_cfm), float(static_inwc), place)
    return OperatingPoint(airflow_cfm, static_inwc, place)
