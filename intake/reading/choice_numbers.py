"""A choice picked by its number in the list."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

__all__ = ["numbered"]

_SPLIT: Final = re.compile(r"[a-z0-9]+(?:'[a-z]+)?")


def numbered(text: str, choices: Sequence[str]) -> str | None:
    """The choice that a bare number picks ("2", "#2", "number two", "option 2"), or None."""
    words = [
        w
        for w in _SPLIT.findall(text)
        if w not in ("number", "option", "choice", "no", "the", "answer", "is", "it's")
    ]
    if len(words) != 1:
        return None
    place = int(words[0]) if words[0].isdigit() and len(words[0]) < 3 else _SPELLED.get(words[0], 0)
    return choices[place - 1].partition("=")[0] if 1 <= place <= len(choices) else None


_SPELLED: Final = {
    "one": 1,
    "two": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "seven": 7,
    "eight": 8,
}
