"""Small turns of a typed line: going on, leaving, asking what a word means, half an answer."""

import re
from collections.abc import Mapping
from typing import Final

from intake.interview.cleanliness import told_states
from intake.interview.listening import Heard
from intake.interview.own_reading import OWN_FIELDS
from intake.interview.question import Question
from intake.interview.told import figure
from intake.reading.clean import normalise
from intake.reading.echo import echo
from intake.reading.result import (
    Accepted,
    AskBack,
    AskKind,
    Value,
)

__all__ = [
    "ASKS_MEANING",
    "GO_ON",
    "MEANS_WHAT",
    "PLAIN_YES",
    "holds",
    "joined",
    "offered",
    "only_leaves",
    "which_of_two",
]

GO_ON: Final = re.compile(
    r"(?:ok |please )?(?:go on|continue|resume|carry on|keep going|more questions|ask on|more)"
    r"(?: asking| please| with the questions)?[.! ]*"
)


MEANS_WHAT: Final = re.compile(
    r"(?:huh|sorry|wait|um|so)?[,? ]*(?:what(?:'?s| do| does| is)? .{0,40}\bmean(?:s|t)?\b|wdym\b"
    r"|what(?:'?s| does| do)? .{0,30}\blooks? like\b|what(?:'?s| is) an? [a-z]+(?: [a-z]+)?\??$)"
    r"|what (?:counts|qualifies|is considered|do you count|would count) as\b"
)


ASKS_MEANING: Final = re.compile(
    r"(?:huh|sorry|um|so)?[,? ]*what do you mean by (?:the |an? )?[a-z]+(?: [a-z]+)?[?. ]*"
)
"""Asks for the meaning of a word and says nothing else, whatever the word is."""


_LEAVES: Final = re.compile(r"(?:please )?(?:quit|exit|bye|good ?bye)(?: now| please)?[.! ]*")


def only_leaves(line: str) -> bool:
    """Whether a line is nothing but a goodbye, which no question reads as an answer."""
    return _LEAVES.fullmatch(normalise(line)) is not None


PLAIN_YES: Final = re.compile(r"(?:yes|yeah|yep|yup|ya|y|there is|i do|we do|oh yes)\b")


def which_of_two(question: Question, found: Accepted) -> AskBack | None:
    """One pressure where two were asked for: which one is it?"""
    if question.key != "static_split" or "inwc" not in found.values:
        return None
    figure = found.values["inwc"]
    return AskBack(
        f"Is {echo('static_pressure', {'inwc': figure})} the return before the filter, or the"
        " supply after the coil?",
        ({"return_inwc": figure}, {"supply_inwc": figure}),
        AskKind.TWO_READINGS,
    )


def offered(question: Question, values: Mapping[str, Value]) -> str:
    """A candidate in words."""
    if question.field == "conditions":
        return told_states(values)
    several = values.get("ducts")
    if isinstance(several, list):
        rows = [row for row in several if isinstance(row, Mapping)]
        return " and ".join(echo(question.field, row) for row in rows)
    if question.field not in OWN_FIELDS:
        return echo(question.field, values)
    units = {"tons": "tons", "in": "in."}
    names = ("skin", "place", "kind", "choice")
    named = next((values[name] for name in names if name in values), None)
    if named is not None and "tons" not in values:
        return str(named).replace("_", " ")
    return ", ".join(
        f"{figure(float(value))} {units.get(name, name)}"
        for name, value in values.items()
        if isinstance(value, int | float)
    )


def holds(whole: Accepted, fresh: Heard) -> bool:
    """Whether the joined line keeps everything that the new line says alone."""
    if not isinstance(fresh, Accepted):
        return True
    return all(whole.values.get(name) == value for name, value in fresh.values.items())


_BLANKS: Final = ("something", "unknown", "don't know", "dont know", "not sure", "???", "??", "?")


def joined(earlier: str, line: str) -> list[str]:
    """An answer with its missing half: what was said before and what is said now, put together."""
    low = earlier.lower()
    found = [
        earlier[: low.index(blank)] + line + earlier[low.index(blank) + len(blank) :]
        for blank in _BLANKS
        if blank in low
    ]
    bare = earlier.rstrip(" xX*.,?")
    return [*found[:1], f"{earlier} {line}", f"{bare} x {line}", f"{line} {earlier}"]
