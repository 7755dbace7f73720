"""A size that nobody asked for and that has no name: of what is it?"""

import re
from typing import Final

from intake.interview.elsewhere import named_by
from intake.interview.events import Answered, AskedBack, Reopened, Unsaid
from intake.interview.listening import listen
from intake.interview.misplaced import nameless_size, one_size
from intake.interview.planner import question_of
from intake.interview.question import Question
from intake.interview.taking import take
from intake.interview.talk import Talk, say
from intake.interview.turns import Manner, Say, Voice
from intake.reading.clean import normalise
from intake.reading.echo import echo
from intake.reading.result import Accepted

__all__ = [
    "CONFIRMS",
    "ELSEWHERE",
    "ask_of_size",
    "ask_whether_corrected",
    "placed",
    "taken_elsewhere",
]

ELSEWHERE: Final = "elsewhere"
"""Begins the kind of the ask-back that is open then."""

CONFIRMS: Final = frozenset(
    [
        "yes",
        "y",
        "yep",
        "yup",
        "yeah",
        "correct",
        "right",
        "same",
        "confirmed",
        "confirm",
        "ok",
        "okay",
        "exactly",
    ]
) | {"that's right", "thats right", "same as that", "the same", "as they said", "same thing"}
"""Words that say yes to what was told."""


def taken_elsewhere(talk: Talk, other: tuple[Question, Accepted], line: str) -> list[Say]:
    """Take an answer to another question; empty if it says nothing there."""
    said = take(talk, other[0], other[1], line, volunteered=True)
    return [] if isinstance(said, str) else said


def ask_of_size(talk: Talk, question: Question, line: str) -> list[Say]:
    """A size where none was asked for: ask whether it is the trunk's; empty if it is no size."""
    size = nameless_size(question, normalise(line))
    if size is None:
        return []
    calling = talk.state.voice is Voice.DISPATCHER
    key, name = ("d_trunk", "main duct") if calling else ("trunk_size", "supply trunk")
    return _ask_whose(talk, question, size, line, key, f"is that the {name}")


def _ask_whose(
    talk: Talk, question: Question, size: Accepted, line: str, key: str, whose: str
) -> list[Say]:
    shown = echo("duct", size.values).replace("galvanized", "metal")
    why = f"{shown}: {whose}? Yes, or what it is."
    talk.happened(AskedBack(question=question.key, text=line, why=why, kind=f"{ELSEWHERE} {key}"))
    return [say(Manner.ASK_BACK, why)]


_SORRY: Final = re.compile(
    r"(?:oh,? |no,? |ah,? |wait,? )*(?:sorry|oops|whoops|my bad|my mistake|correction|scratch that"
    r"|i meant?|actually)\b[,.: ]*(?:it'?s |its |that'?s |that was |make (?:that|it) |i meant )?"
)


def ask_whether_corrected(talk: Talk, question: Question, line: str) -> list[Say]:
    """A size after a "sorry" where a size is asked: ask whether it corrects the one told before.

    Empty if nothing of the kind was told before, or if the open question itself was misread.
    """
    words = normalise(line)
    marker = _SORRY.match(words)
    if marker is None or question.field not in ("duct", "filter", "grille"):
        return []
    if talk.state.asked_back is not None or talk.state.misread:
        return []
    told = words[marker.end() :]
    size = one_size(told)
    if size is None or named_by(talk, told) is not None:
        return []
    for event in reversed(talk.state.standing):
        home = question_of(event.question) if isinstance(event, Answered) else None
        if home is not None and home.field == "duct" and _tells_a_size(event):
            name = home.label[0].lower() + home.label[1:]
            whose = f"a correction of the {name}"
            return _ask_whose(talk, question, size, told, home.key, whose)
    return []


def _tells_a_size(event: Answered | Unsaid) -> bool:
    return isinstance(event, Answered) and any(k.endswith(".width_in") for k in event.beliefs)


def placed(talk: Talk, question: Question, open_ask: AskedBack, line: str) -> list[Say] | None:
    """The answer to "is that the supply trunk?": taken there, or where the person says."""
    words = normalise(line)
    if words.strip(".! ") in CONFIRMS or re.match(r"(?:yes|yeah|yep|yup)\b", words):
        home = question_of(open_ask.kind.split()[1])
    else:
        home = named_by(talk, line) if not re.search(r"\d", words) else None
    if home is None:
        if re.fullmatch(r"(?:no|nope|nah)[.! ]*", words):
            talk.happened(Reopened(question=question.key))
            return [say(Manner.NOTE, "Then I leave that size out; name what it is of.")]
        return None
    found = listen(home, open_ask.text, talk.state.job)
    if not isinstance(found, Accepted):
        return None
    return taken_elsewhere(talk, (home, found), open_ask.text) or None
