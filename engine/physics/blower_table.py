"""A blower's table: airflow of one setting against external static pressure.

A table is read along straight lines between its rows and never beyond them: beyond its ends the
answer is a bound, and says which. Knows nothing of equipment or modes.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import IntEnum, StrEnum
from typing import Final, NamedTuple, Self

import numpy as np
from numpy.typing import NDArray

from engine.arrays import Array, Floats, require_within
from engine.errors import FactError

__all__ = [
    "AirflowAt",
    "BlowerTable",
    "MotorKind",
    "States",
    "StaticAt",
    "TablePlace",
]

States = NDArray[np.int8]


class MotorKind(StrEnum):
    """How a blower's motor answers pressure."""

    PSC = "psc"
    ECM_CONSTANT_TORQUE = "ecm_constant_torque"
    ECM_VARIABLE = "ecm_variable"
    OTHER = "other"


class TablePlace(IntEnum):
    """Where an answer lies against a blower's table; arrays hold these as int8."""

    BELOW_FIRST_ROW = -1
    """Less static than the table starts with: the blower moves at least the first row's air."""
    WITHIN = 0
    """On a line between two rows."""
    BEYOND_LAST_ROW = 1
    """More static than the table ends with: the blower moves at most the last row's air."""


class AirflowAt(NamedTuple):
    """Airflow at a static pressure; beyond the table's ends the nearest row's, as a bound."""

    airflow_cfm: Floats
    place: States


class StaticAt(NamedTuple):
    """Static pressure at an airflow; beyond the table's ends the nearest row's, as a bound."""

    static_inwc: Floats
    place: States


_MOST_STATIC_INWC: Final = 5.0
_MOST_AIRFLOW_CFM: Final = 20000.0
_FLAT_SHARE: Final = 0.03
"""How far airflow may rise from one row to the next and still count as held.

Source: scatter seen in constant-airflow blower tables (common practice, no published source).
"""


@dataclass(frozen=True, slots=True)
class BlowerTable:
    """One blower setting's airflow against external static pressure.

    Attributes:
        setting: The setting's name as the equipment calls it.
        static_inwc: External static, in wc, rising.
        airflow_cfm: Airflow at each, CFM, level or falling.
    """

    setting: str
    static_inwc: tuple[float, ...]
    airflow_cfm: tuple[float, ...]

    @classmethod
    def from_rows(
        cls,
        setting: str,
        rows: Iterable[tuple[float, float]],
        key: str = "equipment.blower_tables",
    ) -> Self:
        """Build a table from rows in any order; the same row twice counts once.

        Args:
            setting: The setting's name.
            rows: Pairs of static, 0 to 5 in wc, and airflow, above 0 to 20,000 CFM.
            key: The fact's key, for the error.

        Raises:
            FactError: No row, a row that can't be, two airflows at one static, or airflow that
                rises with static.

        >>> BlowerTable.from_rows("high", [(0.5, 1180.0), (0.1, 1300.0)]).static_inwc
        (0.1, 0.5)
        """
        seen: dict[float, float] = {}
        for static, airflow in rows:
            _require_row(key, setting, static, airflow)
            known = seen.setdefault(float(static), float(airflow))
            if known != airflow:
                raise FactError(
                    key,
                    f"setting {setting!r} has both {known:,g} and {airflow:,g} CFM at {static:g} "
                    "in wc; each static takes one airflow",
                )
        if not seen:
            raise FactError(
                key, f"setting {setting!r} has no rows; give static and airflow for at least one"
            )
        ordered = sorted(seen.items())
        lowest, lowest_at = ordered[0][1], ordered[0][0]
        for static, airflow in ordered:
            if airflow > lowest * (1.0 + _FLAT_SHARE):
                raise FactError(
                    key,
                    f"setting {setting!r} moves {airflow:,g} CFM at {static:g} in wc but only "
                    f"{lowest:,g} at {lowest_at:g}; airflow falls as static rises, so check these "
                    "two rows",
                )
            if airflow < lowest:
                lowest, lowest_at = airflow, static
        return cls(setting, tuple(s for s, _ in ordered), tuple(a for _, a in ordered))

    @property
    def last_static_inwc(self) -> float:
        """The highest static the table lists, in wc."""
        return self.static_inwc[-1]

    @property
    def most_airflow_cfm(self) -> float:
        """The most air the table shows at any static, CFM."""
        return max(self.airflow_cfm)

    def airflow_at(self, static_inwc: Floats) -> AirflowAt:
        """Airflow at an external static.

        Args:
            static_inwc: Static, 0 to 10 in wc; any shape.

        Returns:
            Airflow, CFM, and its place against the table, both of that shape.

        Raises:
            OutOfRangeError: The static is outside these limits, or NaN.
        """
        require_within("static_inwc", static_inwc, 0.0, 10.0)
        static = np.asarray(static_inwc, dtype=np.float64)
        airflow = np.interp(static, self.static_inwc, self.airflow_cfm)
        place = np.zeros(static.shape, dtype=np.int8)
        place[static < self.static_inwc[0]] = TablePlace.BELOW_FIRST_ROW
        place[static > self.static_inwc[-1]] = TablePlace.BEYOND_LAST_ROW
        return AirflowAt(_plain(airflow), place)

    def static_at(self, airflow_cfm: Floats) -> StaticAt:
        """The highest external static at which the setting still moves an airflow.

        Args:
            airflow_cfm: Airflow, 0 to 20,000 CFM; any shape.

        Returns:
            Static, in wc, and its place, both of that shape. BELOW_FIRST_ROW means the setting
            gives less than this at every static of the table; BEYOND_LAST_ROW means it gives more
            even at the last.

        Raises:
            OutOfRangeError: The airflow is outside these limits, or NaN.
        """
        require_within("airflow_cfm", airflow_cfm, 0.0, _MOST_AIRFLOW_CFM)
        wanted = np.asarray(airflow_cfm, dtype=np.float64)
        held = np.asarray(self._held_cfm())
        static_rows = np.asarray(self.static_inwc)
        last = np.searchsorted(-held, -wanted, side="right") - 1  # last row that still gives it
        row = np.clip(last, 0, max(len(held) - 2, 0))
        after = np.minimum(row + 1, len(held) - 1)
        fall = held[row] - held[after]
        way = np.clip((held[row] - wanted) / np.where(fall > 0.0, fall, 1.0), 0.0, 1.0)
        static = np.where(
            last >= len(held) - 1,
            static_rows[-1],
            static_rows[row] + way * (static_rows[after] - static_rows[row]),
        )
        static = np.where(wanted > held[0], static_rows[0], static)
        place = np.zeros(wanted.shape, dtype=np.int8)
        place[wanted > held[0]] = TablePlace.BELOW_FIRST_ROW
        place[wanted < held[-1]] = TablePlace.BEYOND_LAST_ROW
        return StaticAt(_plain(static), place)

    def reaches(self, airflow_cfm: Floats) -> NDArray[np.bool_]:
        """Whether the setting moves this airflow at any static of its table; same shape.

        Raises:
            OutOfRangeError: The airflow is outside 0 to 20,000 CFM, or NaN.
        """
        require_within("airflow_cfm", airflow_cfm, 0.0, _MOST_AIRFLOW_CFM)
        return np.asarray(np.asarray(airflow_cfm) <= self.most_airflow_cfm)

    def scaled_static(self, density_ratio: float) -> Self:
        """The table of a fixed-speed blower in air of another density: static goes with it.

        Raises:
            OutOfRangeError: The ratio is outside 0.3 to 1.6, or NaN.

        Source: fan laws, pressure in proportion to density at the same speed and airflow.
        """
        require_within("density_ratio", density_ratio, 0.3, 1.6)
        scaled = tuple(density_ratio * s for s in self.static_inwc)
        return type(self)(self.setting, scaled, self.airflow_cfm)

    def scaled_airflow(self, share: float) -> Self:
        """The table of the same blower moving a share of its air, as with a dirty wheel.

        Raises:
            OutOfRangeError: The share is outside 0.3 to 1.5, or NaN.
        """
        require_within("share", share, 0.3, 1.5)
        scaled = tuple(share * a for a in self.airflow_cfm)
        return type(self)(self.setting, self.static_inwc, scaled)

    def _held_cfm(self) -> tuple[float, ...]:
        """Airflow that this row or a later one still gives: never rising."""
        backwards = np.maximum.accumulate(self.airflow_cfm[::-1])
        return tuple(float(a) for a in backwards[::-1])


def _require_row(key: str, setting: str, static: float, airflow: float) -> None:
    if not 0.0 <= static <= _MOST_STATIC_INWC:
        raise FactError(
            key,
            f"setting {setting!r} has a row at static {static:g}; static is 0 to "
            f"{_MOST_STATIC_INWC:g} in wc",
        )
    if not 0.0 < airflow <= _MOST_AIRFLOW_CFM:
        raise FactError(
            key,
            f"setting {setting!r} has airflow {airflow:,g} at {static:g} in wc; airflow is above 0 "
            f"and at most {_MOST_AIRFLOW_CFM:,g} CFM",
        )


def _plain(values: Array) -> Floats:
    return float(values) if values.ndim == 0 else values
