"""Answers that only look like corrections: "nope, one of them", "no cooling, just the furnace"."""

import re
from typing import Final

from intake.interview.beside import ASIDE
from intake.interview.commands import fitting
from intake.interview.listening import listen
from intake.interview.own_reading import OWN_FIELDS, read_own
from intake.interview.question import Question
from intake.interview.talk import Talk
from intake.reading.clean import normalise
from intake.reading.restated import looked_again, owns_up
from intake.reading.result import Accepted, Command, CommandName, Reading, Volunteered
from intake.reading.yes_no import read_yes_no

__all__ = ["plain_answer"]

_CORRECTS: Final = re.compile(
    r"\b(?:sorry|actually|wrong|correct\w*|instead|meant|mean|change|should|make (?:that|it)|oops"
    r"|typo|no|not|wait|scratch|fix|was|were|swap\w*|other way|redo)\b"
)


def plain_answer(talk: Talk, question: Question, command: Command, line: str) -> Reading | None:
    """What the open question takes of a line that only looks like a correction ("it's clean")."""
    if command.name is not CommandName.CORRECT or not command.value_text:
        return None
    if command.fact_words or command.old_text:
        return None
    dated = _NO_AND_YEAR.fullmatch(normalise(line)) if question.key == "zoned" else None
    if dated is not None and not talk.context.known("house.year_built"):
        built = Volunteered(f"{ASIDE}year_built", {"year": int(dated["year"])}, dated["year"])
        return Accepted({"yes": False}, others=(built,))
    if question.field == "yes_no" and _OPENS_WITH_NO.match(normalise(line)):
        fits = _TURNED.search(line) or _fits_before(talk, command.value_text)
        return None if fits else read_yes_no(normalise(line), question.words)
    if question.field in OWN_FIELDS and _OPENS_WITH_NO.match(normalise(line)):
        fits = _TURNED.search(line) or _fits_before(talk, command.value_text)
        return None if fits else read_own(question.field, line, question.choices)
    told = normalise(line)
    if question.field == "year" and _YEAR_MEANT.search(told):
        found = listen(question, command.value_text, talk.state.job)
        return found if isinstance(found, Accepted) else None
    if _CORRECTS.search(told) or owns_up(told):
        return None
    if looked_again(told) and talk.state.asked_back is None:
        return None
    found = listen(question, command.value_text, talk.state.job)
    return found if isinstance(found, Accepted) else None


_NO_AND_YEAR: Final = re.compile(r"(?:no|nope|nah)[.,; ]+(?P<year>19\d\d|20[0-3]\d)[.! ]*")
"""A no with the year that is asked next ("no. 1981")."""
_OPENS_WITH_NO: Final = re.compile(r"(?:no|nope|nah|naw|negative)\b")


_YEAR_MEANT: Final = re.compile(r"(?<![\d.,])(?:18|19|20)\d\d,? i (?:mean|meant)[.! ]*$")
"""A year, where a year is asked: "same as before, 1974 I mean"."""

_TURNED: Final = re.compile(r"\d\S* not \d")


def _fits_before(talk: Talk, value: str) -> bool:
    """Whether an answer before could have been this, so that a "no" before it corrects that."""
    return bool(fitting(talk, lambda key: (value,)))
