"""What a yes or no says as a whole: against a bound, of the past alone, part by part, by name."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.result import Accepted, AskBack, AskKind, Reading, Unknown
from intake.reading.yes_no_bounds import Place, by_bound
from intake.reading.yes_no_clauses import by_parts, only_of_then
from intake.reading.yes_no_named import by_named
from intake.reading.yes_no_predicates import by_predicate
from intake.reading.yes_no_words import TURN, UNSURE

__all__ = ["by_whole", "which"]

_PLAIN_START: Final = re.compile(
    r"(?:(?P<yes>yes+|yeah|yea|yep|yup|ya)|no+|nope|nah|naw)\b(?! (?:more|less|bigger))"
)


def which(question: str) -> AskBack:
    """The question back where an answer may be a yes or a no."""
    asked = question.strip() or "the question"
    return AskBack(
        f"I can't tell if that is a yes or a no to: {asked}",
        ({"yes": True}, {"yes": False}),
        AskKind.TWO_READINGS,
    )


def by_whole(text: str, question: str) -> Reading | None:
    """What a text says as a whole: against a bound, of the past alone, part by part, by name."""
    place = by_bound(text, question)
    if place is not None:
        return _against(place, text, question)
    if TURN.search(text):
        return None
    then = only_of_then(text, question)
    if then is not None:
        return which(question) if then == "ask" else Accepted({"yes": False})
    parts = by_parts(text, question)
    if parts is not None:
        return which(question) if parts == "ask" else Accepted({"yes": parts is True})
    named = by_predicate(text, question)
    if named is None:
        named = by_named(text, question)
    if named is not None:
        return Accepted({"yes": named} | ({"sure": False} if UNSURE.search(text) else {}))
    return None


def _against(place: Place, text: str, question: str) -> Reading | None:
    """The answer that a figure gives, unless a plain yes or no beside it says the other thing."""
    said = _PLAIN_START.match(text)
    plain = None if said is None else said["yes"] is not None
    if place is Place.UNMEASURED:
        return None if plain is True else Unknown("You can't say.")
    if place is Place.OPEN:
        return None if plain is not None else which(question)
    yes = place is Place.YES
    if plain is not None and plain is not yes:
        return which(question)
    values: dict[str, bool] = {"yes": yes}
    if UNSURE.search(text):
        values["sure"] = False
    return Accepted(dict(values))
