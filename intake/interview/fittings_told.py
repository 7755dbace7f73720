"""Vanes and elbows of a run as people tell them, in the words that the reader of fittings reads."""

import re
from typing import Final

from intake.interview.question import Question
from intake.reading.clean import normalise

__all__ = ["as_fitted"]

_COUNT: Final = r"(?:\d+|one|two|three|four|five|six)"
_NONE_VANED: Final = re.compile(
    r"[,; ]+(?:but |and )?(?:none|neither)(?: of (?:them|em|those|the elbows))?"
    r" (?:(?:is |are |were )?vaned|(?:has|have|got|with) (?:any )?(?:turning )?vanes)\b"
)
_VANES_IN: Final = re.compile(
    rf"(?:there(?:'s| are) )?(?:turning )?vanes in (?:(?:(?P<both>both)(?: of (?:the|them))?"
    rf"|(?:all |the )*(?P<count>{_COUNT})(?: of the)?) )(?:the )?(?:square )?"
    r"(?:elbows|90s|nineties|turns)\b"
)
_EACH_END: Final = re.compile(
    r"\b(?:an?|one|1) (?P<kind>(?:[a-z]+ )?(?:90|elbow)) (?:at|on) (?:each|either) (?:end|side)\b"
)


def as_fitted(question: Question, text: str) -> str:
    """The fittings of a line in the reader's words; other lines as they were typed.

    >>> from intake.interview.planner import question_of
    >>> as_fitted(question_of("fittings"), "4 elbows, none vaned")
    '4 elbows without vanes'
    """
    if question.key != "fittings":
        return text
    line = normalise(text)
    told = _NONE_VANED.sub(" without vanes", line)
    told = _VANES_IN.sub(_vaned, told)
    told = _EACH_END.sub(lambda m: f"two {m['kind']}s", told)
    return told if told != line else text


def _vaned(match: re.Match[str]) -> str:
    return f"{match['count'] or 'two'} vaned elbows"
