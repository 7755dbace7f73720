"""Usual slips of typing pressures: what a person may have meant, and the readings without it."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from math import log
from types import MappingProxyType
from typing import Final, NamedTuple

from engine.job.evidence_model import Model
from engine.job.evidence_observed import Observation, observations_of
from engine.job.evidence_readings import (
    RETURN_TAPS,
    SUPPLY_TAPS,
    Reading,
    Tap,
    Tapped,
    tapped,
    with_plain_signs,
)

__all__ = ["Repaired", "are_turned_around", "is_on_the_wrong_side", "repaired", "typed_oddly"]

_PASCALS_PER_INWC: Final = 249.089
"""Pa in 1 in wc of water at 4 C (definition, memory high)."""


class Repaired(NamedTuple):
    """A slip undone.

    Attributes:
        slip: Its name.
        keys: Keys of the readings it touches.
        observations: What the readings say without it.
    """

    slip: str
    keys: tuple[str, ...]
    observations: list[Observation]


def repaired(model: Model, worth_trying: Callable[[str], bool]) -> Iterator[Repaired]:
    """Each usual slip with the observations as they would be without it.

    Args:
        model: The house and its readings.
        worth_trying: Whether a slip in the reading of a key is to be looked at.
    """
    live = {o.key for o in model.observations}
    for index, reading in enumerate(model.readings):
        for tap, taken in reading.taps.items():
            key = f"{reading.key}.{tap}_inwc"
            if key not in live or not worth_trying(key):
                continue
            for slip, value in _values_meant(tap, taken.value_inwc, reading.taps):
                taps = {**reading.taps, tap: tapped(tap, value)}
                yield Repaired(slip, (key,), _observed(model, index, reading, taps, live))
            if tap is Tap.TOTAL_EXTERNAL:
                sums = [replace(o, is_difference=o.key == key) for o in model.observations]
                yield Repaired("sign", (key,), sums)
        for first, second in _SWAPS:
            keys = (f"{reading.key}.{first}_inwc", f"{reading.key}.{second}_inwc")
            if not live.issuperset(keys) or not any(map(worth_trying, keys)):
                continue
            plain = with_plain_signs(reading.taps)
            swapped = {**plain, first: plain[second], second: plain[first]}
            yield Repaired("ports_swapped", keys, _observed(model, index, reading, swapped, live))
    for seen in model.observations:
        if seen.tap is not None or not worth_trying(seen.key):
            continue
        if not model.readings[seen.reading].blower_table:
            for shift in (log(10.0), -log(10.0)):
                meant = replace(seen, value=seen.value + shift)
                others = [meant if o.key == seen.key else o for o in model.observations]
                yield Repaired("decimal_point", (seen.key,), others)


_SWAPS: Final = (
    (Tap.BEFORE_FILTER, Tap.AFTER_FILTER),
    (Tap.BEFORE_COIL, Tap.AFTER_COIL),
    (Tap.AFTER_FILTER, Tap.BEFORE_COIL),
    (Tap.RETURN, Tap.SUPPLY),
)


def _values_meant(
    tap: Tap, typed_inwc: float, taps: Mapping[Tap, Tapped]
) -> Iterator[tuple[str, float]]:
    """What a person may have meant by a figure, by usual slip."""
    if tap in SUPPLY_TAPS and typed_inwc < 0.0:
        yield "sign", -typed_inwc
    if tap in RETURN_TAPS and typed_inwc > 0.0:
        pulls = any(taps[t].value_inwc < 0.0 for t in RETURN_TAPS if t in taps)
        if pulls:
            yield "sign", -typed_inwc
    yield "decimal_point", typed_inwc / 10.0
    if abs(typed_inwc) > 2.0:
        yield "decimal_point", typed_inwc / 100.0
        yield "pascal", typed_inwc / _PASCALS_PER_INWC
    if abs(typed_inwc) < 0.2:
        yield "decimal_point", typed_inwc * 10.0


def _observed(
    model: Model, index: int, reading: Reading, taps: Mapping[Tap, Tapped], live: set[str]
) -> list[Observation]:
    """The observations with one reading's pressures replaced; nothing that was left out returns."""
    readings = list(model.readings)
    readings[index] = replace(reading, taps=MappingProxyType(dict(taps)))
    airflow = f"{reading.key}.airflow_cfm"
    return [o for o in observations_of(model.prior, readings) if o.key in live or o.key == airflow]


def typed_oddly(model: Model, key: str) -> int:
    """Decimal places of one pressure less the most of the others typed beside it; 0 if few are.

    Gauges show every pressure to the same place, so 0.025 among 0.31 and 0.42 was likely 0.25.
    Figures that aren't read in inches of water have no telling number of places.
    """
    for reading in model.readings:
        places = {
            f"{reading.key}.{tap}_inwc": _places(taken.value_inwc)
            for tap, taken in reading.taps.items()
        }
        others = [count for other, count in places.items() if other != key]
        if key in places and len(others) > 1 and max(places.values()) <= _MOST_PLACES:
            return places[key] - max(others)
    return 0


def are_turned_around(model: Model, keys: tuple[str, ...]) -> bool:
    """Whether a piece seems to add pressure: more pull before a filter, or more push after a coil.

    Args:
        model: The house and its readings.
        keys: Of two pressures of one reading.
    """
    for reading in model.readings:
        plain = with_plain_signs(reading.taps)
        for less, more in _ACROSS:
            pair = {f"{reading.key}.{less}_inwc", f"{reading.key}.{more}_inwc"}
            if pair == set(keys):
                gap = plain[less].value_inwc - plain[more].value_inwc
                return gap > _TURNED_INWC
    return False


def is_on_the_wrong_side(model: Model, key: str) -> bool:
    """Whether one pressure pushes on the return side or pulls on the supply side, by its sign."""
    for reading in model.readings:
        plain = with_plain_signs(reading.taps)
        for tap in (*RETURN_TAPS, *SUPPLY_TAPS):
            if tap in plain and key == f"{reading.key}.{tap}_inwc":
                return plain[tap].value_inwc < -_TURNED_INWC
    return False


_ACROSS: Final = ((Tap.BEFORE_FILTER, Tap.AFTER_FILTER), (Tap.AFTER_COIL, Tap.BEFORE_COIL))
_TURNED_INWC: Final = 0.015
"""A smaller difference is within what one gauge reads twice (judgement)."""

_MOST_PLACES: Final = 3


def _places(value_inwc: float) -> int:
    return len(repr(float(value_inwc)).partition(".")[2].rstrip("0"))
