"""Rows of an answer that is a list, and the facts of one that says nothing."""

from collections.abc import Mapping
from typing import Final

from intake.interview.beliefs import Facts
from intake.reading.result import Value, Values

__all__ = ["NO_FACTS", "entries", "figure_of"]

NO_FACTS: Final = Facts()


def entries(values: Values, name: str) -> list[Mapping[str, Value]]:
    """The rows of a value that is a list; the values themselves where it is none."""
    rows = values.get(name)
    if isinstance(rows, list):
        return [row for row in rows if isinstance(row, dict)]
    return [values]


def figure_of(value: Value) -> float:
    """A value as a number; not a number if it is none."""
    return float(value) if isinstance(value, int | float | str) else float("nan")
