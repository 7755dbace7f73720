"""Finds the ideas of `red_flag_ideas` in one clause; linear in its length."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache, lru_cache
from typing import Final

from intake.reading.red_flag_ideas import FAMILIES, IDEAS, Idea

__all__ = ["ideas_in"]

_NO_ENDING_OFF: Final = frozenset((
    "plugged", "boarded", "controlled", "switched", "wired", "fused", "piped", "lined", "lining",
    "fitted", "ported", "metered", "elements", "gases", "during", "string", "spring", "open",
    "bed", "red", "used", "panned", "firing", "disconnected", "sparky", "plugging",
))  # fmt: skip
"""Words whose plain form is a member of a family that they aren't."""


@cache
def _families() -> dict[str, frozenset[str]]:
    found: dict[str, set[str]] = {}
    for family, words in FAMILIES.items():
        for word in words.split():
            found.setdefault(word, set()).add(family)
    return {word: frozenset(families) for word, families in found.items()}


@cache
def _ideas_by_family() -> dict[str, tuple[Idea, ...]]:
    """Each idea under the first family that it needs."""
    first = {idea.families[0] for idea in IDEAS}
    return {name: tuple(idea for idea in IDEAS if idea.families[0] == name) for name in first}


@lru_cache(maxsize=4096)
def _families_of(word: str) -> frozenset[str]:
    table = _families()
    found = table.get(word, frozenset())
    if word in _NO_ENDING_OFF or len(word) > 20:
        return found
    for plain in _plain_forms(word):
        found |= table.get(plain, frozenset())
    return found


def _plain_forms(word: str) -> Iterator[str]:
    for ending in ("s", "es", "ed", "d", "ing", "in", "y"):
        stem = word.removesuffix(ending)
        if stem == word or len(stem) < 3:
            continue
        yield stem
        if ending in ("ing", "in", "ed"):
            yield stem + "e"
            if stem[-1] == stem[-2]:
                yield stem[:-1]


def ideas_in(clause: str) -> Iterator[tuple[Idea, tuple[int, int], bool]]:
    """The ideas a clause tells: each with its place and whether it is told for sure.

    Args:
        clause: One clause in one form, words parted by single spaces.
    """
    starts: dict[str, list[int]] = {}
    spans: list[tuple[int, int]] = []
    at = 0
    for number, word in enumerate(clause.split(" ")):
        spans.append((at, at + len(word)))
        at += len(word) + 1
        for family in _families_of(word):
            starts.setdefault(family, []).append(number)
    if not starts:
        return
    by_family = _ideas_by_family()
    for idea in (idea for family in starts for idea in by_family.get(family, ())):
        if any(family not in starts for family in idea.families):
            continue
        if any(family in starts for family in idea.unless):
            continue
        near = _near([starts[family] for family in idea.families], idea.within)
        if near is None:
            continue
        doubtful = any(family in starts for family in idea.doubt)
        yield idea, (spans[near[0]][0], spans[near[1]][1]), idea.sure and not doubtful


def _near(places: list[list[int]], within: int) -> tuple[int, int] | None:
    """First and last of the nearest places, one of each list, all different; None if too far."""
    marks = sorted((place, which) for which, row in enumerate(places) for place in row)
    last: dict[int, int] = {}
    for place, which in marks:
        last[which] = place
        if len(last) == len(places):
            first = min(last.values())
            if place - first <= within and len(set(last.values())) == len(places):
                return first, place
    return None
