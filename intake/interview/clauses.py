"""Several answers in one breath: the clauses of a line, each with the question that it names."""

import re
from dataclasses import dataclass
from typing import Final

from intake.interview.listening import listen
from intake.interview.question import Question
from intake.interview.taking import elsewhere, named_first
from intake.interview.talk import Talk
from intake.reading.clean import normalise
from intake.reading.result import Accepted

__all__ = ["Clause", "clauses"]

_MARKS: Final = re.compile(r"[,;](?!\d{3}\b)|\.(?!\d)|\band (?=the |my |a )|\bplus\b")
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
    own: list[str] = []
    groups: list[tuple[Question, list[str]]] = []
    for piece in (part.strip() for part in _MARKS.split(line)):
        named = named_first(talk, piece) if re.search(r"\d", piece) else None
        if named is not None and named.key != question.key and piece:
            groups.append((named, [piece]))
        elif groups:
            groups[-1][1].append(piece)
        elif piece:
            own.append(piece)
    if not groups or not own:
        return None
    found: list[Clause] = []
    for named, pieces in groups:
        text = ", ".join(piece for piece in pieces if piece)
        heard = listen(named, text, talk.state.job)
        if not isinstance(heard, Accepted):
            return None
        found.append(Clause(named, heard, text))
    rest = ", ".join(own)
    heard = listen(question, rest, talk.state.job)
    if not isinstance(heard, Accepted) and elsewhere(talk, question, rest) is None:
        return None
    return normalise(rest), found
