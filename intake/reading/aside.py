"""What else an answer holds: where it was measured, answers to other questions."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from intake.reading.bounds import believable
from intake.reading.duct_parts import describes_jacket
from intake.reading.result import Accepted, Reading, Volunteered
from intake.reading.scan import Item, Scan
from intake.reading.units import convert
from intake.reading.words import words

__all__ = ["place_of", "split_off", "volunteered"]

Reads = Callable[[str, str], Reading | None]
"""Reads a text for a field."""

_PLACES: Final = (
    "over wrap",
    "jacket",
    "core",
    "liner",
    "frame",
    "slots",
    "bare",
    "inside",
    "outside",
)
_NO_PLACE_BEFORE: Final = words("a an the it of this that house home wall unit garage door")


def place_of(said: Scan) -> str | None:
    """Measured where, if the text says so.

    >>> from intake.reading.scan import scan
    >>> place_of(scan("20x8 over the wrap", "duct"))
    'over wrap'
    >>> place_of(scan("liner inside a 19x9", "duct")) is None
    True
    """
    named = [(i, item) for i, item in enumerate(said.items) if item.means("place.")]
    cored = any(item.means("place.core") for _, item in named)
    for place in _PLACES if named else ():
        if place == "jacket" and (cored or describes_jacket(said.text)):
            continue
        for i, item in named:
            if item.means(f"place.{place}") and _says_where(said.items, i, place):
                return place
    return None


def _says_where(items: list[Item], i: int, place: str) -> bool:
    if place not in ("inside", "outside"):
        return True
    following = items[i + 1] if i + 1 < len(items) else None
    before = items[i - 1] if i else None
    if following is not None and following.text in _NO_PLACE_BEFORE:
        return False
    return not (before is not None and before.means("material.lined_metal", "material.wrapped"))


_WORDS: Final = {
    "filter": r"\b(?:filters?|merv)\b",
    "grille": r"\b(?:grilles?|grills?|return (?:grate|vent)|filter grille)\b",
    "static_pressure": r"\b(?:static|tesp|w\.?c\.?|inwc|iwc|pascals?)\b",
    "duct": r"\b(?:trunk|plenum|return drop|main duct|branch|branches|ducts?|riser)\b",
    "year": r"\b(?:built in|was built|house is from|built around)\b",
    "airflow": r"\b(?:cfm)\b",
    "capacity": r"\b(?:tons?|btuh?|btus?|mbh)\b",
}
_KEY: Final = {field: re.compile(words) for field, words in _WORDS.items()}
_CUT: Final = re.compile(
    r"(?:[,;.]+\s+|\s+-+\s+)(?:(?:oh|and|also|plus|then|by the way|btw|so)[\s,]+)*"
    r"|\s+(?:oh,? and|and also|and oh|also|by the way|btw|plus the|and the|and there's an?"
    r"|oh)[\s,]+"
)
_SEVERAL: Final = words(
    """
    duct filter grille length airflow static_pressure capacity efficiency year area count
    """
)


def split_off(field: str, line: str, reads: Reads) -> Accepted | None:
    """Read a text in which a later clause answers another question; None if there is none."""
    if field not in _SEVERAL:
        return None
    clauses = [part for part in _CUT.split(line) if part and part.strip()]
    if len(clauses) < 2:
        return None
    owners: list[str] = []
    for clause in clauses:
        named = [name for name, key in _KEY.items() if key.search(clause)]
        others = [name for name in named if name != field]
        if field in named or not named:
            owners.append(owners[-1] if owners and not named else field)
        else:
            owners.append(others[0])
    if set(owners) == {field} or field not in owners:
        return None
    mine = ", ".join(c for c, owner in zip(clauses, owners, strict=True) if owner == field)
    main = reads(field, mine)
    if not isinstance(main, Accepted):
        return None
    found: list[Volunteered] = []
    for other in dict.fromkeys(owners):
        if other == field:
            continue
        text = ", ".join(c for c, owner in zip(clauses, owners, strict=True) if owner == other)
        reading = reads(other, text)
        if not isinstance(reading, Accepted):
            return None
        found.append(Volunteered(other, reading.values, text))
    return Accepted(main.values, others=tuple(found))


_OTHER_UNITS: Final = {
    "airflow": ("airflow", "cfm", "cfm"),
    "pressure": ("static_pressure", "inwc", "inwc"),
    "heat": ("capacity", "btuh", "btuh"),
    "area": ("area", "sqft", "area_ft2"),
    "afue": ("efficiency", "", "fraction"),
}


def volunteered(field: str, said: Scan, own: frozenset[str]) -> tuple[Volunteered, ...]:
    """Values with a unit of another question, beside the answer to this one."""
    by_dimension: dict[str, list[Item]] = {}
    for number in said.numbers:
        if number.dimension in _OTHER_UNITS and number.dimension not in own and not number.negated:
            by_dimension.setdefault(number.dimension, []).append(number)
    found = []
    for dimension, numbers in by_dimension.items():
        other, unit, name = _OTHER_UNITS[dimension]
        if len(numbers) != 1 or other == field:
            continue
        number = numbers[0]
        if number.unit == "ton":
            continue  # tons are cooling, which no answer here means by its heat
        value = round(convert(number.value, number.unit, unit), 4) if unit else number.value / 100
        if not believable(name, value):
            continue
        text = said.text[number.start : number.end]
        found.append(Volunteered(other, {name: value}, text))
    return tuple(found)
