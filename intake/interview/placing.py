"""A size that nobody asked for and that has no name: of what is it?"""

import re
from typing import Final

from intake.interview.events import AskedBack, Reopened
from intake.interview.listening import listen
from intake.interview.misplaced import nameless_size
from intake.interview.planner import question_of
from intake.interview.question import Question
from intake.interview.taking import named_by, take
from intake.interview.talk import Talk, say
from intake.interview.turns import Manner, Say, Voice
from intake.reading.clean import normalise
from intake.reading.echo import echo
from intake.reading.result import Accepted

__all__ = ["CONFIRMS", "ELSEWHERE", "ask_of_size", "placed", "taken_elsewhere"]

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
    shown = echo("duct", size.values).replace("galvanized", "metal")
    why = f"{shown}: is that the {name}? Yes, or what it is."
    talk.happened(AskedBack(question=question.key, text=line, why=why, kind=f"{ELSEWHERE} {key}"))
    return [say(Manner.ASK_BACK, why)]


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
