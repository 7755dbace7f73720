"""What the new blower really delivers into a house's air path, at one setting and mode.

The crossing of a blower's table with the path is found for all members at once, along the table's
own straight lines; `engine.physics.operating` is the same for one system and is what this is held
to.
"""

from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from engine.arrays import Array
from engine.job.job import BlowerSetting
from engine.job.modes import Mode
from engine.job.sample import House, Mask
from engine.job.system import System
from engine.physics.blower_table import MotorKind, TablePlace
from engine.physics.operating import GENERIC_CURVES

__all__ = ["Delivered", "delivered_by_kind", "delivered_by_table", "is_constant_airflow"]

Places = NDArray[np.int8]
Members = NDArray[np.intp]

_SETTLED_INWC: Final = 1e-10
_MOST_STEPS: Final = 60


@dataclass(frozen=True, slots=True)
class Delivered:
    """Where the blower meets the path; arrays are (n + 1,).

    Attributes:
        setting: The setting's name; empty without a table.
        airflow_cfm: Delivered at the blower; a bound where `place` isn't WITHIN.
        static_inwc: What the path takes at that airflow, total external.
        place: `TablePlace` values.
        by_table: Whether a table stands behind it, or a belief by kind of motor.
        last_static_inwc: Static of the table's last row, in this air; infinite without a table.
    """

    setting: str
    airflow_cfm: Array
    static_inwc: Array
    place: Places
    by_table: bool
    last_static_inwc: Array

    @property
    def is_beyond(self) -> Mask:
        """Where the path takes more than the table's last row, so that airflow is "at most"."""
        return np.asarray(self.place == TablePlace.BEYOND_LAST_ROW)

    @property
    def is_at_least(self) -> Mask:
        """Where the path takes less than the table's first row: good news."""
        return np.asarray(self.place == TablePlace.BELOW_FIRST_ROW)


def is_constant_airflow(house: House) -> Mask:
    """Where the new blower holds its airflow whatever the pressure, up to its limit."""
    return house.is_word("equipment.blower_kind", MotorKind.ECM_VARIABLE.value)


def delivered_by_table(
    house: House, setting: BlowerSetting, system: System, mode: Mode, ratio: Array
) -> Delivered:
    """Operating point on one setting's table.

    Args:
        house: The house.
        setting: The table.
        system: The path.
        mode: The mode, which decides whether the coil is wet.
        ratio: Density over standard, (n + 1,): the static of a fixed-speed blower goes with it.
    """
    table = setting.table
    factor = np.where(is_constant_airflow(house), 1.0, ratio)
    airflow, place = _crossing(
        np.asarray(table.static_inwc), np.asarray(table.airflow_cfm), factor, system, mode
    )
    return Delivered(
        table.setting,
        airflow,
        system.external_inwc(airflow, mode),
        place,
        True,
        table.last_static_inwc * factor,
    )


def delivered_by_kind(
    house: House, system: System, mode: Mode, target_cfm: Array, ratio: Array
) -> Delivered:
    """Operating point of a blower without a table, by its kind of motor.

    A blower is believed to be chosen so that it gives somewhat more than the target at its rated
    static; one that holds its airflow holds the target. A stated greatest static of such a blower
    is taken as the end of what it can hold.
    """
    kinds = house.word("equipment.blower_kind")
    rated = house.number("equipment.rated_static_inwc")
    strength = house.assumed("blower reach", 0.1, 0.5, 0.9, fact="equipment.blower_tables").clip(
        0.0, 1.0
    )
    over = house.assumed("blower size over target", 1.0, 1.08, 1.2, fact="equipment.blower_tables")
    limit = house.stated_number("equipment.max_static_inwc")
    airflow = np.empty(house.members)
    place = np.zeros(house.members, dtype=np.int8)
    for code, word in enumerate(kinds.words):
        here = np.asarray(kinds.values == code)
        if not here.any():
            continue
        kind = MotorKind(word)
        holds = kind is MotorKind.ECM_VARIABLE
        at_rated = target_cfm[here] * (1.0 if holds else over[here])
        if holds and limit is not None:
            static_rows, airflow_rows = _held_rows(at_rated, limit[here])
        else:
            static_rows, airflow_rows = _kind_rows(kind, strength[here], rated[here], at_rated)
        factor = np.ones(int(here.sum())) if holds else ratio[here]
        found, where = _crossing(static_rows, airflow_rows, factor, system, mode, here)
        if holds and limit is None:  # a curve's end is no printed row: the bound is only a belief
            where = np.where(where == TablePlace.BEYOND_LAST_ROW, TablePlace.WITHIN, where)
        airflow[here], place[here] = found, where
    place = np.where(place == TablePlace.BELOW_FIRST_ROW, TablePlace.WITHIN, place).astype(np.int8)
    static = system.external_inwc(airflow, mode)
    return Delivered("", airflow, static, place, False, house.full(np.inf))


def _held_rows(held_cfm: Array, limit_inwc: Array) -> tuple[Array, Array]:
    """Rows of a blower that holds its airflow to a limit and gives half of it just beyond."""
    zero = np.zeros_like(held_cfm)
    static = np.stack([zero, limit_inwc, limit_inwc * 1.001], axis=-1)
    return static, np.stack([held_cfm, held_cfm, held_cfm * 0.5], axis=-1)


def _kind_rows(
    kind: MotorKind, strength: Array, rated_inwc: Array, at_rated_cfm: Array
) -> tuple[Array, Array]:
    curve = GENERIC_CURVES[kind]
    place = strength[:, np.newaxis]
    ratio = np.asarray(curve.static_ratio)
    place = np.where(ratio < 1.0, 1.0 - place, place)
    toward = np.clip((place - 0.5) / 0.4, -1.25, 1.25)
    low, likely, high = (
        np.asarray(s) for s in (curve.low_share, curve.likely_share, curve.high_share)
    )
    share = likely + np.where(toward < 0.0, toward * (likely - low), toward * (high - likely))
    share = np.minimum.accumulate(np.maximum(share, 0.05), axis=-1)
    return rated_inwc[:, np.newaxis] * ratio, at_rated_cfm[:, np.newaxis] * share


def _crossing(
    static_rows: Array,
    airflow_rows: Array,
    factor: Array,
    system: System,
    mode: Mode,
    here: Mask | None = None,
) -> tuple[Array, Places]:
    """Airflow at which the path takes what the blower makes, and the place against the table.

    Args:
        static_rows: Rising; (rows,) or (members, rows).
        airflow_rows: Level or falling; the same shape.
        factor: What the table's static is multiplied with in this air, (members,).
        system: The path.
        mode: Decides whether the coil is wet.
        here: Members this is about; all if None.

    Along the table, what the path takes less what the blower makes only falls, so a bracketed
    Newton search along its straight lines finds the one crossing.
    """
    drops, exponents = system.external(mode)
    if here is not None:
        drops, exponents = drops[:, here], exponents[:, here]
    path = _Path(drops / factor, exponents, system.reference_cfm)
    rows = _Rows(static_rows, airflow_rows, factor.size)
    low, high = rows.first_static, rows.last_static
    at_first, at_last = path.taken(rows.first_airflow)[0], path.taken(rows.last_airflow)[0]
    at_least, beyond = at_first < low, at_last > high * (1.0 + 1e-12)
    inside = np.flatnonzero(~(at_least | beyond))
    more, less = at_first - low, high - at_last
    static = low + (high - low) * np.clip(more / np.maximum(more + less, 1e-12), 0.0, 1.0)
    static[inside] = _balance(path.of(inside), rows.of(inside), static[inside])
    airflow, _ = rows.at(static)
    airflow = np.where(at_least, rows.first_airflow, np.where(beyond, rows.last_airflow, airflow))
    place = np.zeros(factor.size, dtype=np.int8)
    place[at_least] = TablePlace.BELOW_FIRST_ROW
    place[beyond] = TablePlace.BEYOND_LAST_ROW
    return airflow, place


def _balance(path: "_Path", rows: "_Rows", start_inwc: Array) -> Array:
    """The static at which a path takes what a blower makes, between its first and last row.

    Args:
        path: The path.
        rows: The blower's table.
        start_inwc: Where to look first, (members,).
    """
    found, left = start_inwc.copy(), np.arange(start_inwc.size)
    static, low, high = start_inwc, rows.first_static, rows.last_static
    for _ in range(_MOST_STEPS):
        airflow, slope = rows.at(static)
        taken, taken_slope = path.taken(airflow)
        surplus = taken - static
        low = np.where(surplus > 0.0, static, low)
        high = np.where(surplus > 0.0, high, static)
        step = static - surplus / (taken_slope * slope - 1.0)
        after = np.where((step >= low) & (step <= high), step, 0.5 * (low + high))
        moving = np.flatnonzero(np.abs(after - static) >= _SETTLED_INWC)
        found[left] = static = after
        if not moving.size:
            break
        if 2 * moving.size < left.size:  # most are there: go on with the others alone
            path, rows, left = path.of(moving), rows.of(moving), left[moving]
            static, low, high = static[moving], low[moving], high[moving]
    return found


@dataclass(frozen=True, slots=True)
class _Path:
    """What a path takes over the density of its air.

    Attributes:
        drop_inwc: Drops of its parts at the reference airflow, (parts, members).
        exponent: Powers of airflow, (parts, members).
        reference_cfm: The airflow.
    """

    drop_inwc: Array
    exponent: Array
    reference_cfm: float

    def taken(self, airflow: Array) -> tuple[Array, Array]:
        """Total external static at an airflow, and its slope, (members,) each."""
        parts = self.drop_inwc * np.exp(self.exponent * np.log(airflow / self.reference_cfm))
        return parts.sum(axis=0), (parts * self.exponent).sum(axis=0) / airflow

    def of(self, members: Members) -> "_Path":
        """The same of these members alone, which are in order."""
        if members.size == self.drop_inwc.shape[1]:
            return self
        return _Path(self.drop_inwc[:, members], self.exponent[:, members], self.reference_cfm)


class _Rows:
    """A table's rows, shared by all members or one set each, read along straight lines."""

    def __init__(self, static_rows: Array, airflow_rows: Array, members: int) -> None:
        if static_rows.shape[-1] == 1:  # one row: a level line of no length
            static_rows = np.concatenate([static_rows, static_rows * (1.0 + 1e-9)], axis=-1)
            airflow_rows = np.concatenate([airflow_rows, airflow_rows], axis=-1)
        self._members = members
        self._shared = static_rows.ndim == 1
        # rows first, so that each is one piece over the members
        self._static, self._airflow = (
            np.ascontiguousarray(rows.T) for rows in (static_rows, airflow_rows)
        )
        self._slope = np.diff(self._airflow, axis=0) / np.diff(self._static, axis=0)
        self.first_static = np.broadcast_to(self._static[0], members)
        self.last_static = np.broadcast_to(self._static[-1], members)
        self.first_airflow = np.broadcast_to(self._airflow[0], members)
        self.last_airflow = np.broadcast_to(self._airflow[-1], members)

    def of(self, members: Members) -> "_Rows":
        """The same of these members alone, which are in order."""
        if members.size == self._members:
            return self
        if self._shared:
            return _Rows(self._static, self._airflow, members.size)
        return _Rows(self._static[:, members].T, self._airflow[:, members].T, members.size)

    def at(self, static: Array) -> tuple[Array, Array]:
        """Airflow and its slope at a static between the first and the last row."""
        row = np.zeros(static.size, dtype=np.intp)
        for edge in self._static[1:-1]:
            row += static >= edge
        place = row if self._shared else row * self._members + np.arange(self._members)
        slope = self._slope.take(place)
        return self._airflow.take(place) + slope * (static - self._static.take(place)), slope
