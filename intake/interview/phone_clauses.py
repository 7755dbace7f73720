"""Several answers of a call in one breath: "12, most ducts in the attic, and doors whistle"."""

import re
from typing import Final

from intake.interview.clauses import Clause
from intake.interview.listening import listen
from intake.interview.phone_topics import named_on_phone
from intake.interview.planner import question_of
from intake.interview.question import Question
from intake.interview.talk import Talk
from intake.interview.turns import Voice
from intake.reading.clean import normalise
from intake.reading.result import Accepted, AskBack

__all__ = ["phone_clauses"]

_MARKS: Final = re.compile(
    r"([,;](?!\d{3}\b)|\.(?!\d)|[!?]|\b(?:and|plus|but)\b(?! a half)| - "
    r"|(?<=[a-z]) (?=built (?:in |back in |around )?'?\d{2})"
    r"|\bwith (?=an? \d+ ?(?:x|by) ?\d+ ?(?:x|by) ?\d))"
)
_FILLER: Final = re.compile(
    r"(?:(?:oh|ah|um|uh|and|also|so|well|wait|by the way|btw|before i forget|i forgot"
    r"|one more thing"
    r"|let me see|hang on|hold on|actually|ok|okay|right|sorry|she remembers(?: now)?"
    r"|he remembers(?: now)?"
    r"|i remember(?: now)?|(?:she|he|they|caller) (?:says?|said))[,. ]*)*"
)


def phone_clauses(talk: Talk, question: Question, line: str) -> tuple[str, list[Clause]] | None:
    """The part of a line that answers the open question, and the clauses that answer others.

    Returns:
        None in another talk than a call, or if no clause names another question and answers it.
        The own part is empty where the line says nothing else.
    """
    if talk.state.voice is not Voice.DISPATCHER or len(line) > _LONGEST:
        return None
    groups = _groups(talk, question, normalise(line))
    own = " ".join(text for key, text in groups if key == question.key).strip(" ,;.")
    found: list[Clause] = []
    for key, text in groups:
        if key == question.key:
            continue
        named = question_of(key)
        text = _INSTEAD_OF.sub("", text)
        heard = listen(named, text, talk.state.job) if named is not None else None
        figures = _FROM_SIZE.search(text) if key == "d_filter" else None
        if named is not None and figures is not None and not isinstance(heard, Accepted):
            heard = listen(named, figures[0], talk.state.job)
        if named is None or not isinstance(heard, Accepted):
            return None
        known = talk.state.answer_to(named.key) is not None
        found.append(Clause(named, heard, text, corrects=known))
    if not found:
        return None
    if _FILLER.fullmatch(own):
        own = ""
        whole = listen(question, line, talk.state.job)
        choosing = question.key in ("d_change", "d_trouble") and isinstance(whole, AskBack)
        if choosing or isinstance(whole, Accepted):
            return None
    return own, found


_FROM_SIZE: Final = re.compile(r"\d+ ?(?:x|by) ?\d.*")
_LONGEST: Final = 400
_INSTEAD_OF: Final = re.compile(
    r",? (?:and )?not \d[\d.,]*(?: ?(?:x|by|×) ?\d[\d.]*)*(?: ?tons?)?$"
)
"""The value that was told before, behind the right one: "20x25x1 not 16x25x1"."""


def _groups(talk: Talk, question: Question, line: str) -> list[tuple[str, str]]:
    """The clauses of a line, those of one question in a row joined, each with its question."""
    groups: list[tuple[str, str]] = []
    for mark, piece in _pieces(line):
        key = named_on_phone(question.key, piece)
        if not key and groups and groups[-1][0] != question.key and _fits(talk, question, piece):
            key = question.key
        key = key or (groups[-1][0] if groups else question.key)
        if groups and groups[-1][0] == key:
            groups[-1] = (key, f"{groups[-1][1]}{mark}{piece}")
        else:
            groups.append((key, piece))
    return groups


def _fits(talk: Talk, question: Question, piece: str) -> bool:
    """Whether an unnamed piece answers the open question by itself ("..., and 12")."""
    return isinstance(listen(question, piece, talk.state.job), Accepted)


def _pieces(line: str) -> list[tuple[str, str]]:
    """The pieces between marks, each with the mark before it."""
    parts = _MARKS.split(line)
    marks = ["", *(f"{m} " if m in ",;.!?" else f" {m.strip()} " for m in parts[1::2])]
    pieces = (part.strip() for part in parts[::2])
    return [(mark, piece) for mark, piece in zip(marks, pieces, strict=True) if piece]
