"""Several answers in one breath: the clauses of a line, each with the question that it names."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

from intake.interview.elsewhere import elsewhere, named_first
from intake.interview.listening import listen
from intake.interview.own_words import TOOLS
from intake.interview.planner import question_of
from intake.interview.question import Question
from intake.interview.talk import Talk
from intake.reading.clean import normalise
from intake.reading.result import Accepted

__all__ = ["Clause", "clauses"]

_MARKS: Final = re.compile(r"([,;](?!\d{3}\b)|\.(?!\d)|\b(?:and|plus|but)\b)")
_PASTED: Final = ("blower_table", "cooling_rows")


@dataclass(frozen=True, slots=True)
class Clause:
    """A part of a line that answers another question than the open one.

    Attributes:
        question: The question that it names.
        found: What it answers.
        text: Its words.
    """

    question: Question
    found: Accepted
    text: str


def clauses(talk: Talk, question: Question, line: str) -> tuple[str, list[Clause]] | None:
    """The line's own part and the clauses that name and answer other questions.

    Returns:
        None if no clause does, or if a clause that names another question doesn't answer it.
    """
    if question.field in _PASTED or question.field == "text":
        return None
    own = ""
    groups: list[tuple[Question, str]] = []
    for mark, piece in _pieces(line):
        named = named_first(talk, piece) if re.search(r"\d", piece) else None
        named = named or _comes_next(talk, question, piece)
        if groups and named is groups[-1][0]:
            groups[-1] = (named, groups[-1][1] + mark + piece)
        elif named is not None and named.key != question.key:
            groups.append((named, piece))
        elif groups:
            groups[-1] = (groups[-1][0], groups[-1][1] + mark + piece)
        else:
            own += mark + piece
    if not groups or not own.strip():
        return None
    found: list[Clause] = []
    for named, text in groups:
        heard = listen(named, text.strip(), talk.state.job)
        if not isinstance(heard, Accepted):
            return None
        found.append(Clause(named, heard, text.strip()))
    rest = own.strip()
    heard = listen(question, rest, talk.state.job)
    if not isinstance(heard, Accepted) and elsewhere(talk, question, rest) is None:
        return None
    return normalise(rest), found


_NEXT: Final[Mapping[str, tuple[str, ...]]] = {
    "old_runs": ("tools", "weather"),
    "tools": ("weather",),
}
"""Questions that people answer ahead, whose answers need no name."""


def _comes_next(talk: Talk, question: Question, piece: str) -> Question | None:
    """The question after the open one that a piece answers, where the open one can't use it."""
    for key in _NEXT.get(question.key, ()):
        coming = question_of(key)
        if coming is None:
            continue
        names_it = coming.field == "tools" and any(tool.search(piece) for _, tool in TOOLS)
        if not names_it and isinstance(listen(question, piece, talk.state.job), Accepted):
            continue
        if isinstance(listen(coming, piece, talk.state.job), Accepted):
            return coming
    return None


def _pieces(line: str) -> list[tuple[str, str]]:
    """The pieces between marks, each with the mark before it, as it was typed."""
    parts = _MARKS.split(line)
    marks = ["", *(f"{mark} " if mark in ",;." else f" {mark} " for mark in parts[1::2])]
    pieces = (part.strip() for part in parts[::2])
    return [(mark, piece) for mark, piece in zip(marks, pieces, strict=True) if piece]
