"""What reading a typed answer can come to.

A reading is exactly one of five things: `Accepted` (one meaning, take it and echo it), `AskBack`
(ask again, nothing is taken yet), `Unknown` (the person can't say), `Rejected` (nothing usable for
this question) or `Command` (the person wants the program to do something). Nothing here knows how
text is read, or what becomes of the answer.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import TypeAlias, Union

__all__ = [
    "Accepted",
    "AskBack",
    "AskKind",
    "Command",
    "CommandName",
    "Previous",
    "Reading",
    "Rejected",
    "Scalar",
    "Sure",
    "Unknown",
    "Value",
    "Values",
    "Volunteered",
    "number_of",
]

Scalar: TypeAlias = float | int | str | bool
"""One plain value."""

Value: TypeAlias = Union[Scalar, "list[Value]", "dict[str, Value]"]
"""A value of an answer: plain, or a list of rows."""

Values: TypeAlias = Mapping[str, Value]
"""An answer by value name, the unit last in the name (`width_in`, `inwc`, `ft_low`)."""


def number_of(value: Value) -> float:
    """A value that is known to be a number, as one.

    Raises:
        TypeError: It is a list or a mapping.
        ValueError: It is a word.
    """
    if isinstance(value, list | dict):
        raise TypeError(f"{value!r} is no number")
    return float(value)


class Sure(StrEnum):
    """How the person says that they know it."""

    PLAIN = "plain"
    """Nothing was said about it."""
    HEDGED = "hedged"
    """"About", "I think", "maybe", "roughly"."""
    MEASURED = "measured"
    """"I measured", "the tape says", "the gauge reads"."""
    PLATE = "plate"
    """"The sticker says", "label", "nameplate"."""
    GUESSED = "guessed"
    """"Just a guess", "if I had to"."""


class AskKind(StrEnum):
    """Why an answer can't be taken as it stands."""

    TWO_READINGS = "two_readings"
    """The same words mean two things ("65": 0.65 in. w.c. or 65 Pa)."""
    MISSING_PART = "missing_part"
    """Part of the answer is there, part is not ("15 by something")."""
    IMPLAUSIBLE = "implausible"
    """A clear value that no house has."""
    AMBIGUOUS_WORD = "ambiguous_word"
    """A word that the trade uses for two things ("ECM")."""
    WRONG_QUANTITY = "wrong_quantity"
    """A clear value of something else (feet per minute for CFM)."""
    TWO_VALUES = "two_values"
    """Two different values where one is wanted ("45 or 60k")."""


class CommandName(StrEnum):
    """What a person can ask the program to do in the middle of an interview."""

    SKIP = "skip"
    BACK = "back"
    UNDO = "undo"
    WHY = "why"
    WHERE = "where"
    HOW = "how"
    TYPICAL = "typical"
    HELP = "help"
    REPEAT = "repeat"
    SHOW = "show"
    QUIT = "quit"
    FINISH = "finish"
    CORRECT = "correct"


@dataclass(frozen=True, slots=True)
class Previous:
    """The last answer that was stored, against which a correction is read."""

    field: str
    text: str


@dataclass(frozen=True, slots=True)
class Volunteered:
    """A clear answer to another question, found in the same text."""

    field: str
    values: Values
    text: str


@dataclass(frozen=True, slots=True)
class Accepted:
    """One reading; take it, and echo it in normal form.

    Attributes:
        values: By the value names of the field; only what the text states.
        sure: How the person says that they know it.
        place: Measured where, if the text says so: "inside", "outside", "over wrap", "liner",
            "frame", "slots", "jacket", "core" or "bare".
        others: Clear answers to other questions in the same text.
    """

    values: Values
    sure: Sure = Sure.PLAIN
    place: str | None = None
    others: tuple[Volunteered, ...] = ()


@dataclass(frozen=True, slots=True)
class AskBack:
    """Take nothing yet; ask.

    Attributes:
        why: One question that a person reads, which says what was understood.
        readings: The candidates, likeliest first; may be empty or hold one.
        kind: Why it can't be taken as it stands.
    """

    why: str
    readings: tuple[Values, ...] = ()
    kind: AskKind = AskKind.TWO_READINGS


@dataclass(frozen=True, slots=True)
class Unknown:
    """The person can't say; `why` repeats their reason, or says so in a sentence."""

    why: str


@dataclass(frozen=True, slots=True)
class Rejected:
    """Nothing usable for this question; `why` says in one sentence what would be understood."""

    why: str


@dataclass(frozen=True, slots=True)
class Command:
    """The person wants something done.

    Attributes:
        name: What to do.
        value_text: For a correction, the new value as it was typed; None if no value was given.
        fact_words: For a correction or a question, the words that name the fact meant.
        old_text: For a correction, the value that is taken back, where it is said.
        either: For a correction, the two values between which the person wavers; `value_text`
            then holds both as they were said.
    """

    name: CommandName
    value_text: str | None = None
    fact_words: str | None = None
    old_text: str | None = None
    either: tuple[str, ...] = ()


Reading: TypeAlias = Accepted | AskBack | Unknown | Rejected | Command
"""What `read` returns."""
