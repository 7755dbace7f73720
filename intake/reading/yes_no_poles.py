"""What an answer that says neither yes nor no answers, by the axes it shares with its question."""

from __future__ import annotations

import re
from functools import cache
from typing import Final

from intake.reading.yes_no_axes import AXES
from intake.reading.yes_no_turns import ASKS_WHETHER_THERE
from intake.reading.yes_no_words import ASKING, GIVEN, NEGATIONS, WORD

__all__ = ["by_question", "poles_in"]


@cache
def _poles() -> dict[tuple[str, ...], tuple[tuple[str, int], ...]]:
    table: dict[tuple[str, ...], tuple[tuple[str, int], ...]] = {}
    for axis, (good, bad) in AXES.items():
        for pole, words in ((1, good), (-1, bad)):
            for phrase in words.split("|"):
                key = tuple(phrase.split())
                table[key] = (*table.get(key, ()), (axis, pole))
    return table


@cache
def _firsts() -> frozenset[str]:
    """The words that a phrase of the table begins with."""
    return frozenset(phrase[0] for phrase in _poles())


def poles_in(words: list[str]) -> list[tuple[str, int]]:
    """Axes and poles of what the words say, negation applied."""
    found: list[tuple[str, int]] = []
    table, firsts = _poles(), _firsts()
    i = 0
    while i < len(words):
        if words[i] not in firsts:
            i += 1
            continue
        for n in (5, 4, 3, 2, 1):
            senses = table.get(tuple(words[i : i + n])) if i + n <= len(words) else None
            if senses:
                free = words[i + n : i + n + 1] == ["free"]
                flip = -1 if _negated(words, i) != free else 1
                found.extend((axis, pole * flip) for axis, pole in senses)
                i += n - 1
                break
        i += 1
    return found


def _negated(words: list[str], i: int) -> bool:
    """Whether a negation reaches a word.

    One negation more doesn't take another back ("never had no rust", "not wet, not dry"), but where
    they touch ("doesn't not run"), or the second is "without".
    """
    before = [word for word in words[max(0, i - 4) : i] if word != "any"]
    places = [k for k, word in enumerate(before) if word in NEGATIONS]
    if len(places) > 1 and before[places[0]] == "no":
        places = places[1:]
    if len(places) < 2:
        return bool(places)
    last, other = places[-1], places[-2]
    return not (last - other == 1 or before[last] in ("without", "free"))


_COMPOUND: Final = re.compile(r"\ban? ([a-z]{3,}) ([a-z]{3,}) ?\?")
"""A thing of two words that is asked for: "electric heat" is no "heat pump"."""


def by_question(words: list[str], question: str) -> set[bool]:
    """What the words answer to the question: {True}, {False}, both, or nothing."""
    line, _, instead = question.lower().partition(" rather than ")
    asked_words = [w for w in WORD.findall(line) if w not in ("any", "ever")]
    asked = poles_in(asked_words)
    if any(axis == "lined" for axis, _ in asked):  # insulated may be inside or outside
        asked = [(axis, pole) for axis, pole in asked if axis != "insulated"]
    said = poles_in(words)
    answers: set[bool] = set()
    for axis, pole in said:
        for other, asked_pole in asked:
            if axis == other and axis != "present":
                answers.add(pole == asked_pole)
    if answers:
        return answers
    given = frozenset() if ASKS_WHETHER_THERE.search(line) else GIVEN
    compound = _COMPOUND.search(line)
    if compound is not None and len(set(words) & set(compound.groups())) == 1:
        asked_words = [word for word in asked_words if word not in compound.groups()]
    stems = {w[:5] for w in asked_words if len(w) > 3 and w not in ASKING and w not in given}
    others = {w[:5] for w in WORD.findall(instead) if len(w) > 3} - stems
    for i, word in enumerate(words):
        if len(word) > 3 and word[:5] in others:
            answers.add(_negated(words, i))
        elif len(word) > 3 and word[:5] in stems and word not in ASKING and word not in given:
            answers.add(not _negated(words, i))
    if answers:
        return answers
    asked_poles = {pole for axis, pole in asked if axis != "present"}
    said_poles = {
        pole
        for axis, pole in said
        if axis in ("condition", "clean", "running") and axis != "present"
    }
    if len(asked_poles) == 1 and len(said_poles) == 1:
        axes = {axis for axis, _ in asked}
        if axes & {"condition", "clean", "running", "tight"}:
            return {said_poles == asked_poles}
    return set()
