"""There is none of what is asked: a drop, a return trunk, fittings, said together with why.

"No drop, it sits on a platform" and "just the drop, nothing above it" say that there is none;
"not sure there is a drop" doesn't.
"""

import re
from collections.abc import Mapping
from typing import Final

from intake.interview.question import Question

__all__ = ["says_none"]

_NOT_A: Final = (
    r"(?:no|isn'?t (?:really )?an?|isn'?t any|ain'?t (?:no|an?|any)|not (?:really )?an?|without an?"
    r"|don'?t (?:really )?(?:have|see) (?:an?|any)|never had an?)"
    r" (?:real |actual |separate |proper |such )*"
)
_PLATFORM: Final = (
    r"\bplatform return\b|\b(?:sits?|sitting|stands?|is|it'?s) on (?:a "
    r"|the )?(?:return )?platform\b"
)
_INTO_A_ROOM: Final = (
    r"^(?:no|nope|nah),? (?:it'?s|its|it|they'?re|the)\b\D*\b(?:open|opens|straight"
    r"|right|directly)\b"
    r"\D*\b(?:closet|grill?e?s?|room|hall|hallway|basement|floor|unit|furnace)\b"
)

_ABSENT: Final[Mapping[str, re.Pattern[str]]] = {
    "drop_size": re.compile(
        rf"\b{_NOT_A}(?:return )?(?:air )?drops?\b(?! (?:in|of|off|cloth|from|down|smaller|size)\b)"
        rf"|{_PLATFORM}|{_INTO_A_ROOM}"
        r"|^(?:it'?s |just )?(?:an? )?open (?:bottom|return)\b\D*$"
        r"|\bno (?:return )?(?:duct ?work|ducting|ducts?)\b(?! (?:tape|board))"
    ),
    "return_trunk": re.compile(
        rf"\b{_NOT_A}(?:return |big |main |long )*(?:trunk|duct)(?: line)?s?\b(?! (?:tape|board))"
        rf"|{_PLATFORM}|{_INTO_A_ROOM}"
        r"|^(?:it'?s |there'?s )?(?:just|only) (?:the |a )?drop\b\D*$"
        r"|^(?:the )?drop(?:'s| is) (?:it|all)\b\D*$|\bnothing (?:above|behind|past|beyond|before"
        r"|after|leading|feeding)\b"
    ),
    "fittings": re.compile(
        r"^(?:(?:it'?s |its )?(?:a )?(?:dead |pretty much )?straight(?: shot"
        r"| run)?\b[^\d,.;]*[,.;] ?)?"
        r"(?:there are |it has |i see )?no fittings(?: at all| whatsoever| anywhere| on "
        r"(?:it|either"
        r"|them))?[.! ]*$"
    ),
}
"""What says that there is none, by question."""

_BARE: Final = re.compile(
    r"(?:(?:nope|no|nah|none)[, ]+)+none(?: there| here)?[.! ]*"
    r"|none (?:on|in|at|for|here|with|that i)\b\D*"
    r"|(?:i |we |it )?(?:don'?t|do not|doesn'?t|does not) have (?:one|any)(?: here| there)?[.! ]*"
    r"|(?:no|nope|nah)[, ]+i don'?t (?:think|believe|see) (?:there'?s |there is |it has "
    r"|so)*(?:one|any)?"
    r"(?: here| there)?[.! ]*|nothing, \D*"
    r"|(?:actually |oh |wait )*there(?: is| are|'?s) (?:none|not one)(?: here| there)?[.! ]*"
)
_DOUBT: Final = re.compile(r"\b(?:not sure|unsure|don'?t know|dunno|can'?t (?:tell|see|say)|if)\b")
_OF_ANOTHER: Final = re.compile(r"\bno supply\b|\bsupply (?:trunk|duct)\b")


def says_none(question: Question, line: str) -> bool:
    """Whether a normalised line says that there is none of what a question asks for.

    Args:
        question: The question, for which "none" is an answer.
        line: Normalised text.
    """
    if not question.none or _DOUBT.search(line):
        return False
    if question.none == "zero" and _BARE.fullmatch(line):
        return True
    absent = _ABSENT.get(question.key)
    if absent is None or (question.key == "return_trunk" and _OF_ANOTHER.search(line)):
        return False
    return absent.search(line) is not None
