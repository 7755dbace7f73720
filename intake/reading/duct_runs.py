"""Round ducts counted by their size: "16 six inch and 2 sevens", "10 or 11 sixes"."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from intake.reading.bounds import believable
from intake.reading.scan import Item, Scan
from intake.reading.sizes import inches
from intake.reading.words import words

__all__ = ["Runs", "counted_runs"]

_BETWEEN_COUNTS: Final = words("or - to maybe and")
_MOST: Final = 24


@dataclass(frozen=True, slots=True)
class Runs:
    """Ducts of one diameter.

    Attributes:
        diameter_in: Their size.
        low, high: How many of them, at least and at most.
    """

    diameter_in: float
    low: int
    high: int


def counted_runs(said: Scan) -> tuple[Runs, ...]:
    """The groups of round ducts of a text; none if any of its numbers is no part of one."""
    items = said.items
    numbers = [i for i, item in enumerate(items) if item.kind == "num"]
    if any(item.means("join.by") for item in items):
        return ()
    found: list[Runs] = []
    counts: list[int] = []
    for i in numbers:
        item = items[i]
        if counts and counts[-1] == i - 1 and _is_diameter(items, i):
            if "." in said.text[items[i - 1].end : item.start]:
                return ()
            group = _counts(items, counts)
            if group is None:
                return ()
            found.append(Runs(inches(item), *group))
            counts = []
        elif _is_count(item):
            counts.append(i)
        else:
            return ()
    return () if counts else tuple(found)


def _is_count(item: Item) -> bool:
    return (
        not (item.unit or item.plural or item.negated) and item.whole and 1 <= item.value <= _MOST
    )


def _is_diameter(items: list[Item], i: int) -> bool:
    item = items[i]
    behind = items[i + 1] if i + 1 < len(items) else None
    sized = item.unit == "in" or (item.plural and not item.unit)
    rounded = behind is not None and behind.means("shape.round", "shape.roundish")
    return (sized or (rounded and not item.unit)) and believable("diameter_in", inches(item))


def _counts(items: list[Item], places: list[int]) -> tuple[int, int] | None:
    """One count, or two that are told as either or as a range."""
    values = [int(items[i].value) for i in places]
    if len(places) == 1:
        return values[0], values[0]
    between = {item.text for item in items[places[0] + 1 : places[1]]}
    if len(places) == 2 and between and between <= _BETWEEN_COUNTS and values[0] < values[1]:
        return values[0], values[1]
    return None
