"""A line that can't be read: what would be understood, then numbered choices, then on."""

import re
from typing import Final

from intake.interview.events import AskedBack, Unsaid
from intake.interview.listening import plain_choices
from intake.interview.question import Question
from intake.interview.talk import Talk, say
from intake.interview.turns import Manner, Say

__all__ = ["MISREADS_BEFORE_CHOICES", "MISREADS_BEFORE_SKIP", "REJECTED", "misread"]

MISREADS_BEFORE_CHOICES: Final = 2
MISREADS_BEFORE_SKIP: Final = 3
REJECTED: Final = "rejected"
_WORDY: Final = 4
_IF_WRONG_NOW: Final = (
    "If something is wrong right now (gas, alarm, smoke, water, a shock, anybody ill), say so."
)
_LEFT: Final = "I can't read that either, so I'll work with a range; \"back\" returns to it."
_SAFETY: Final = ("safety", "d_safety")
_SAFETY_LEFT: Final = (
    "I can't read that either and go on; nobody has said that it is safe. At any smell, alarm,"
    " smoke or water near wires: stop and say so."
)
_WAYS_ON: Final = ("don't know, go on", "where to look", "how to get it")


def misread(talk: Talk, question: Question, why: str, line: str) -> list[Say]:
    """Say what would be understood; the second time offer numbers, the third time go on."""
    times = talk.state.misread + 1
    if times >= MISREADS_BEFORE_SKIP:
        talk.happened(Unsaid(question=question.key, text=line))
        words = _SAFETY_LEFT if question.key in _SAFETY else _LEFT
        return [say(Manner.NOTE, words)]
    talk.happened(AskedBack(question=question.key, text=line, why=why, kind=REJECTED))
    says = [say(Manner.ASK_BACK, why)]
    if times == 1 and _wordy(line):
        says.append(say(Manner.ASK_BACK, _IF_WRONG_NOW))
    if times >= MISREADS_BEFORE_CHOICES:
        says.append(say(Manner.ASK_BACK, _choices(question)))
    return says


def _wordy(line: str) -> bool:
    """Whether a line tells something in words that hold no figure."""
    return len(line.split()) >= _WORDY and not re.search(r"\d", line)


def _choices(question: Question) -> str:
    offered = [choice.replace("_", " ") for choice in plain_choices(question)] or [*_WAYS_ON]
    return "Pick a number: " + "  ".join(f"{n}) {words}" for n, words in enumerate(offered, 1))
