"""Several answers in one breath: the clauses of a line, each with the question that it names."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

from intake.interview.called import begins_with_name, without_lead
from intake.interview.commands import corrected
from intake.interview.elsewhere import by_its_own_name, elsewhere, named_first
from intake.interview.in_passing import in_passing
from intake.interview.listening import Nothing, Same, listen
from intake.interview.own_words import TOOLS
from intake.interview.planner import bank_of, question_of
from intake.interview.question import Question
from intake.interview.safety_look import clear
from intake.interview.talk import Talk
from intake.interview.weather_told import warm_enough
from intake.reading.clean import normalise
from intake.reading.result import Accepted, Command, Previous

__all__ = ["Clause", "clauses"]

_MARKS: Final = re.compile(r"([,;](?!\d{3}\b)|\.(?!\d)|\b(?:and|plus|but)\b)")
_VALUE_NEXT: Final = re.compile(
    r"(?:it'?s|its|that'?s|should be|is|make it|make that|it should be) .*\d"
)
"""What gives the value of what the piece before it names."""
_ONE_OF_SEVERAL: Final = re.compile(
    r"(?:second|other|first|third|left|right|smaller|bigger|back|front) (?=[a-z])"
)
_PASTED: Final = ("blower_table", "cooling_rows")


@dataclass(frozen=True, slots=True)
class Clause:
    """A part of a line that answers another question than the open one.

    Attributes:
        question: The question that it names.
        found: What it answers; None if it speaks of one of several ("the second trunk").
        text: Its words.
        corrects: Whether it puts right what was said before.
    """

    question: Question
    found: Accepted | Nothing | None
    text: str
    corrects: bool = False


def clauses(talk: Talk, question: Question, line: str) -> tuple[str, list[Clause]] | None:
    """The line's own part and the clauses that name and answer other questions.

    Returns:
        None if no clause does, or if a clause that names another question doesn't answer it.
    """
    if question.field in _PASTED or question.field == "text":
        return None
    own = ""
    groups: list[tuple[Question, str]] = []
    pieces = _pieces(line)
    for k, (mark, piece) in enumerate(pieces):
        following = pieces[k + 1][1] if k + 1 < len(pieces) else ""
        valued = re.search(r"\d", piece) or _VALUE_NEXT.match(following)
        bare = _ONE_OF_SEVERAL.sub("", without_lead(piece)) if valued else ""
        named = (named_first(talk, bare) or begins_with_name(talk, bare)) if valued else None
        if named is not None and by_its_own_name(question, named, piece):
            named = None
        named = named or in_passing(talk, question, piece)
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
        clause = _clause(talk, named, text.strip())
        if clause is None:
            return None
        found.append(clause)
    rest = without_its_end(own)
    heard = listen(question, rest, talk.state.job)
    answers = isinstance(heard, Accepted | Same | Nothing)
    safe = question.field == "yes_no" and clear(rest)
    if not answers and not safe and elsewhere(talk, question, rest) is None:
        return None
    return normalise(rest), found


def _clause(talk: Talk, named: Question, text: str) -> Clause | None:
    """What a clause says of the question that it names: an answer, or a better one."""
    if _ONE_OF_SEVERAL.match(without_lead(text)):
        return Clause(named, None, text)
    known = talk.state.answer_to(named.key) is not None
    heard = listen(named, _BY_THE_WAY.sub(" ", text).strip(), talk.state.job)
    if isinstance(heard, Accepted | Nothing):
        return Clause(named, heard, text, corrects=known)
    bank = bank_of(talk.state.voice) if named.section else ()
    for other in bank:
        alike = other.section.startswith(named.section) and other is not named
        if alike and not other.choices:
            heard = listen(other, text, talk.state.job)
            if isinstance(heard, Accepted):
                return Clause(other, heard, text, corrects=known)
    earlier = talk.state.answer_to(named.key)
    last = Previous(named.field, earlier.text) if earlier is not None else None
    command = listen(named, text, talk.state.job, last)
    if not (isinstance(command, Command) and command.value_text):
        return None
    better = corrected(talk, named, command, text)
    return Clause(*better, corrects=True) if better is not None else None


def without_its_end(own: str) -> str:
    """A clause without the words that led to the next one ("30x20 slots. sorry").

    >>> without_its_end("runs fine, oh")
    'runs fine'
    """
    return _END.sub("", own).strip(" ,;")


_END: Final = re.compile(r"(?:[\s,;.]+(?:oh|and|sorry|wait|also|but|actually))+[\s,;.]*$")

_BY_THE_WAY: Final = re.compile(
    r"[, ]*\b(?:by the way|btw|fyi|though|too|as well|either)\b[, ]*|^(?:oh|also|and|so"
    r"|it turns out)\b[, ]*"
)

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
        if key == "weather" and warm_enough(piece) is None and not _of_weather(piece):
            continue
        names_it = coming.field == "tools" and any(tool.search(piece) for _, tool in TOOLS)
        if not names_it and isinstance(listen(question, piece, talk.state.job), Accepted):
            continue
        if isinstance(listen(coming, piece, talk.state.job), Accepted):
            return coming
    return None


_WEATHER: Final = re.compile(
    r"\b(?:out(?:side|doors)?|weather|cold|cool|warm|hot|rain\w*|snow\w*|sunny|freezing|chilly"
    r"|runs? (?:the )?(?:cooling|a/?c))\b"
)
_OF_AIR: Final = re.compile(r"\b(?:cfm|static|return|supply|filter|thermostat|tstat|coil)\b")


def _of_weather(piece: str) -> bool:
    return _WEATHER.search(piece) is not None and _OF_AIR.search(piece) is None


def _pieces(line: str) -> list[tuple[str, str]]:
    """The pieces between marks, each with the mark before it, as it was typed."""
    parts = _MARKS.split(line)
    marks = ["", *(f"{mark} " if mark in ",;." else f" {mark} " for mark in parts[1::2])]
    pieces = (part.strip() for part in parts[::2])
    return [(mark, piece) for mark, piece in zip(marks, pieces, strict=True) if piece]
