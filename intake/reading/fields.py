"""One text to the reading of one field, by the reader of that field."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from typing import Final

from intake.reading import choices as choice_readers
from intake.reading.airflow import read_airflow
from intake.reading.beside_value import (
    without_clock,
    without_filter,
    without_joined,
    without_refrigerant,
    without_size,
)
from intake.reading.bounds import BELIEVABLE
from intake.reading.choice_numbers import numbered
from intake.reading.counts import read_count, read_percent, read_year
from intake.reading.duct import read_duct
from intake.reading.echo import echo
from intake.reading.elevation import read_area, read_elevation
from intake.reading.filters import read_filter
from intake.reading.fittings import read_fittings
from intake.reading.grilles import read_grille
from intake.reading.heat import read_capacity, read_efficiency
from intake.reading.length import read_length
from intake.reading.manner import cant_say
from intake.reading.numbers import something_else
from intake.reading.owned import counts_a_part
from intake.reading.phrasing import built, dated, elsewhere
from intake.reading.result import (
    Accepted,
    AskBack,
    AskKind,
    Reading,
    Values,
)
from intake.reading.scan import Scan, scan
from intake.reading.static import read_static
from intake.reading.temperature import read_rise_range, read_temperature
from intake.reading.token_passes import is_model
from intake.reading.words import words
from intake.reading.yes_no import read_yes_no

__all__ = ["NUMERIC", "read_field"]

_BOUNDS: Final = {
    "airflow": "cfm",
    "static_pressure": "inwc",
    "length": "ft",
    "elevation": "elevation_ft",
    "temperature": "degF",
    "capacity": "btuh",
    "efficiency": "fraction",
    "count": "count",
    "year": "year",
    "area": "area_ft2",
    "percent": "percent",
}


_MOST_NUMBERS: Final = 16


_MOST_LISTED: Final = 40
"""Numbers in one answer, and in a list of openings; more are asked for one at a time."""


_ONE_NUMBER: Final = words(
    """
    airflow static_pressure length elevation temperature capacity efficiency area rise_range
    """
)
"""Fields in which a number followed by an unknown thing ("two dogs") is no value."""


NUMERIC: Final = words(
    """
    duct airflow static_pressure length temperature capacity efficiency filter grille elevation
    count year area percent
    """
)
"""Fields whose answers are numbers, in which a second thought or another answer may follow."""


def read_field(
    field: str,
    line: str,
    question: str,
    choices: Sequence[str],
    low: float | None,
    high: float | None,
) -> Reading | None:
    """Read a normalised line for a field; None if it holds nothing of it.

    Args:
        field: The kind of answer wanted.
        line: Normalised text.
        question: The words asked.
        choices: The allowed values of a choice.
        low, high: Believable bounds of this fact, where known better than the field's own.
    """
    if field == "yes_no":
        return read_yes_no(line, question)
    if field in ("material", "blower_type", "coil_state", "choice") and choices:
        picked = numbered(line, choices)
        if picked is not None:
            return Accepted({"choice": picked})
    if field == "blower_type":
        return choice_readers.read_blower_type(line, choices)
    if field == "coil_state":
        return choice_readers.read_coil_state(line, choices)
    if field == "choice":
        return choice_readers.read_choice(line, choices)
    if field == "text":
        return None if cant_say(line) else Accepted({"text": line})
    if field == "fittings":
        return read_fittings(line)
    said = without_refrigerant(scan(line, field, normal=True))
    if ":" in line and field in NUMERIC:
        said = without_clock(said)
    if len(said.numbers) > (_MOST_LISTED if field == "grille" else _MOST_NUMBERS):
        return AskBack(
            "That is a lot of numbers. One thing at a time, please.", (), AskKind.TWO_VALUES
        )
    found = _read_scan(field, said, question, choices, low, high)
    if not isinstance(found, Accepted) or field not in NUMERIC:
        return found
    codes = [item.text.lstrip("?") for item in said.items if item.kind == "code"]
    codes = [code for code in codes if not is_model(code)]
    if codes:
        told = echo(field, found.values)
        return AskBack(
            f'I read {told}, but what is "{codes[0][:40]}"?', (found.values,), AskKind.TWO_READINGS
        )
    return found


def _read_scan(
    field: str,
    said: Scan,
    question: str,
    choices: Sequence[str],
    low: float | None,
    high: float | None,
) -> Reading | None:
    """Read a scanned text with the reader of its field."""
    if field == "length":
        said = without_size(said)
    if field in ("static_pressure", "airflow", "temperature"):
        said = without_filter(without_joined(said))
    if field in _ONE_NUMBER and elsewhere(said, plate=field in ("capacity", "efficiency")):
        return None
    if field in _ONE_NUMBER and (decade := _decade(said)) is not None:
        ends: tuple[Values, ...] = (
            ({"degF_low": decade, "degF_high": decade + 9},) if field == "temperature" else ()
        )
        return AskBack(
            f"In the {decade:g}s: what is it, or between what and what?", ends, AskKind.TWO_READINGS
        )
    if field in _ONE_NUMBER:
        for number in said.numbers:
            year = number.whole and _YEARS[0] <= number.value <= _YEARS[1] and not number.unit
            year = year or (number.whole and not number.unit and built(said, number))
            if year and dated(said, number) and field not in ("capacity", "efficiency"):
                number.unit = "years"
            if something_else(said, number) and not (field == "capacity" and number.value >= 1000):
                number.unit = "things"
    if field == "material":
        return choice_readers.read_material(said, choices)
    if field == "duct":
        return read_duct(said)
    if field == "filter":
        return read_filter(said)
    if field == "grille":
        return read_grille(said)
    if field == "rise_range":
        return read_rise_range(said)
    bounds = BELIEVABLE[_BOUNDS[field]]
    low = bounds[0] if low is None else low
    high = bounds[1] if high is None else high
    if field == "capacity":
        found = read_capacity(said, low, high, question)
    elif field == "static_pressure":
        found = read_static(said, low, high, question)
    elif field == "temperature":
        found = read_temperature(said, low, high, question)
    else:
        reader: Callable[[Scan, float, float], Reading | None] = _BOUNDED_READERS[field]
        found = reader(said, low, high)
    if isinstance(found, Accepted) and _leaves_numbers(said):
        told = echo(field, found.values)
        return AskBack(f"I read {told}. Is that all?", (found.values,), AskKind.TWO_VALUES)
    return found


_YEARS: Final = (1850.0, 2035.0)


def _decade(said: Scan) -> float | None:
    """The tens that are told for a value ("the 70s", "low seventies", "40-something"), or None."""
    numbers = said.numbers
    if len(numbers) != 1 or numbers[0].value % 10 != 0:
        return None
    return numbers[0].value if numbers[0].plural or _SOMETHING.search(said.text) else None


_SOMETHING: Final = re.compile(
    r"(?:\b[2-9]0|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)"
    r"[ -](?:something|some|odd)\b"
)


_IN_ALL: Final = re.compile(
    r"\b(?:total\w*|altogether|in all|adds? up to|comes? to|came (?:out )?to|sum|across|combined"
    r"|so)\b|="
)


def _leaves_numbers(said: Scan) -> bool:
    """Whether a bare number was taken while another one counts something unknown."""
    numbers = said.numbers
    things = [n for n in numbers if n.unit == "things" and not counts_a_part(said, n)]
    if not things:
        return False
    others = [number for number in numbers if number.unit != "things"]
    pointed = all(n.token is not None and n.token.decimals for n in others)
    if pointed and not any(n.token is not None and n.token.decimals for n in things):
        return False
    return not _IN_ALL.search(said.text) and all(not number.unit for number in others)


_BOUNDED_READERS: Final[dict[str, Callable[[Scan, float, float], Reading | None]]] = {
    "airflow": read_airflow,
    "length": read_length,
    "elevation": read_elevation,
    "efficiency": read_efficiency,
    "count": read_count,
    "year": read_year,
    "area": read_area,
    "percent": read_percent,
}
