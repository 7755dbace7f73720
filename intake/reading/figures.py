"""The figures of a text and where they stand, without what they measure."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from typing import Final

from intake.reading.number_words import ONES, TENS

__all__ = ["Figure", "figures_in"]


@dataclass(frozen=True, slots=True)
class Figure:
    """One number, in digits or in a few words.

    Attributes:
        text: As it stands.
        value: What it is.
        start, end: Where it stands.
    """

    text: str
    value: float
    start: int
    end: int


_DIGITS: Final = r"[0-9]{1,3}(?:,[0-9]{3})+(?:\.[0-9]+)?|[0-9]*\.[0-9]+|[0-9]+"


@cache
def _pattern() -> re.Pattern[str]:
    ones, tens = "|".join(sorted(ONES, key=len, reverse=True)), "|".join(TENS)
    return re.compile(
        rf"(?P<digits>{_DIGITS})"
        rf"|\b(?:(?P<tens>{tens})(?:[ -](?P<unit>{ones}))?|(?P<ones>{ones}))(?P<many> hundred)?\b"
    )


def figures_in(text: str) -> list[Figure]:
    """The figures of a normalised text, left to right.

    >>> [f.value for f in figures_in("two 16x20x1, fifteen hundred, .47")]
    [2.0, 16.0, 20.0, 1.0, 1500.0, 0.47]
    """
    found = []
    for match in _pattern().finditer(text):
        if match["digits"]:
            value = float(match["digits"].replace(",", ""))
        else:
            value = float(
                TENS[match["tens"]] + ONES.get(match["unit"] or "zero", 0)
                if match["tens"]
                else ONES[match["ones"]]
            )
            value *= 100.0 if match["many"] else 1.0
        found.append(Figure(match.group(), value, match.start(), match.end()))
    return found
