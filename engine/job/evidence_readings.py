"""Pressure readings as a person takes and types them, made comparable: signs, tolerances, sums."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from types import MappingProxyType
from typing import Final

from engine.arrays import Array, require_within
from engine.job.evidence_airflow import AirflowRead
from engine.job.modes import Mode
from engine.physics.blower_table import BlowerTable

__all__ = [
    "RETURN_TAPS",
    "SUPPLY_TAPS",
    "FilterState",
    "Reading",
    "Tap",
    "Tapped",
    "tapped",
    "total_external_inwc",
    "with_plain_signs",
]


class Tap(StrEnum):
    """Where a pressure was read, named as its fact is."""

    BEFORE_FILTER = "before_filter"
    AFTER_FILTER = "after_filter"
    BEFORE_COIL = "before_coil"
    AFTER_COIL = "after_coil"
    RETURN = "return"
    SUPPLY = "supply"
    FILTER_DROP = "filter_drop"
    COIL_DROP = "coil_drop"
    TOTAL_EXTERNAL = "total_external"


RETURN_TAPS: Final = (Tap.BEFORE_FILTER, Tap.AFTER_FILTER, Tap.RETURN)
SUPPLY_TAPS: Final = (Tap.BEFORE_COIL, Tap.AFTER_COIL, Tap.SUPPLY)


class FilterState(StrEnum):
    """The filter while a reading was taken."""

    CLEAN = "clean"
    DIRTY = "dirty"
    NONE = "none"


_FLOOR_INWC: Final = 0.03
_SUBTRACTED_FLOOR_INWC: Final = 0.04
_SHARE: Final = 0.10
# Source of the three: static as taken in the field, 0.03 in wc or 10 %, the larger; a drop from
# two readings 0.04 (common practice, no published source).

_SUBTRACTED: Final = (Tap.FILTER_DROP, Tap.COIL_DROP)


@dataclass(frozen=True, slots=True)
class Tapped:
    """One pressure at one tap.

    Attributes:
        value_inwc: As typed, with its sign.
        tolerance_inwc: One standard deviation.
    """

    value_inwc: float
    tolerance_inwc: float


def tapped(tap: Tap, value_inwc: float, widened: float = 1.0) -> Tapped:
    """A pressure with the tolerance of field work.

    Args:
        tap: Where it was read.
        value_inwc: As typed, with its sign, -1,000 to 1,000.
        widened: Factor on the tolerance, 1 to 20; 2 where the person said "about".

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    >>> tapped(Tap.AFTER_COIL, 0.5)
    Tapped(value_inwc=0.5, tolerance_inwc=0.05)
    """
    require_within("value_inwc", value_inwc, -1000.0, 1000.0)
    require_within("widened", widened, 1.0, 20.0)
    floor = _SUBTRACTED_FLOOR_INWC if tap in _SUBTRACTED else _FLOOR_INWC
    return Tapped(value_inwc, widened * max(floor, _SHARE * abs(value_inwc)))


@dataclass(frozen=True, slots=True)
class Reading:
    """What was read at one time, in one mode and setting.

    Attributes:
        key: Its key in the job ("readings.0").
        taps: The pressures as typed.
        airflow_prior_cfm: What is believed of the airflow while it was taken, (n,) draws.
        airflow: Airflow found beside it; None if none.
        blower_table: Table of the present blower's setting: gives the airflow from the total
            external static where `airflow` is None.
        mode: The airflow mode; None if not said.
        filter_state: The filter then; None if not said.
        no_coil: There was no coil in the airstream.
    """

    key: str
    taps: Mapping[Tap, Tapped]
    airflow_prior_cfm: Array
    airflow: AirflowRead | None = None
    blower_table: BlowerTable | None = None
    mode: Mode | None = None
    filter_state: FilterState | None = None
    no_coil: bool = False
    notes: tuple[str, ...] = field(default=())

    @property
    def coil_is_wet(self) -> bool:
        """Whether water on the coil is part of its drop; taken as yes where no mode was said."""
        return self.mode is None or self.mode.is_cooling


def with_plain_signs(taps: Mapping[Tap, Tapped]) -> Mapping[Tap, Tapped]:
    """The pressures as amounts of pull on the return side and push on the supply side.

    Return readings are negative on the gauge and typed either way: their sign is dropped, unless
    some are typed negative and others positive; then a positive one is kept as a push on the
    return side, which no sound house has. A negative supply reading is kept as it is. Drops and
    totals have no sign.
    """
    pulls = [taps[tap].value_inwc for tap in RETURN_TAPS if tap in taps]
    minus_is_pull = any(pull < -_FLOOR_INWC for pull in pulls) or all(pull <= 0.0 for pull in pulls)
    plain: dict[Tap, Tapped] = {}
    for tap, taken in taps.items():
        value = taken.value_inwc
        if tap in RETURN_TAPS:
            value = -value if minus_is_pull else value
        elif tap not in SUPPLY_TAPS:
            value = abs(value)
        plain[tap] = Tapped(value, taken.tolerance_inwc)
    return MappingProxyType(plain)


def total_external_inwc(
    taps: Mapping[Tap, Tapped], *, filter_is_inside: bool = False, coil_is_inside: bool = False
) -> float | None:
    """Total external static: pull on the return side plus push on the supply side.

    Args:
        taps: The pressures, in plain signs or as typed.
        filter_is_inside: The rating includes the filter: the return side is read before it.
        coil_is_inside: The rating includes the coil: the supply side is read after it.

    Returns:
        in wc: the total as typed, else the sum of the two sides; None where a side is missing.
    """
    if Tap.TOTAL_EXTERNAL in taps:
        return abs(taps[Tap.TOTAL_EXTERNAL].value_inwc)
    return_side = _first(taps, Tap.RETURN, Tap.BEFORE_FILTER if filter_is_inside else _AFTER)
    supply_side = _first(taps, Tap.SUPPLY, Tap.AFTER_COIL if coil_is_inside else _BEFORE)
    if return_side is None or supply_side is None:
        return None
    return abs(return_side) + abs(supply_side)


_AFTER: Final = Tap.AFTER_FILTER
_BEFORE: Final = Tap.BEFORE_COIL


def _first(taps: Mapping[Tap, Tapped], *wanted: Tap) -> float | None:
    for tap in wanted:
        if tap in taps:
            return taps[tap].value_inwc
    return None
