"""What the words of the open question decide of an answer that alone would be asked back."""

import re
from collections.abc import Mapping
from typing import Final

from intake.interview.question import Question
from intake.reading.manner import sureness
from intake.reading.result import Accepted, AskBack, AskKind

__all__ = ["as_asked", "without_the_end"]

_ENDS: Final[Mapping[str, re.Pattern[str]]] = {
    "strip_cfm": re.compile(
        r"\b(?:(?:the )?min(?:imum)?(?: (?:is|of))?|at least|not? less than|or (?:more|better))\b"
    ),
    "blower_limit": re.compile(
        r"\b(?:(?:the )?max(?:imum)?(?: (?:is|of))?|up to|at most|no more than|tops)\b"
    ),
}
"""Words that name the very end of a range that a question asks for."""


def without_the_end(question: Question, text: str, line: str) -> tuple[str, str]:
    """Text and line without "at least" or "up to", where that end is what was asked for."""
    end = _ENDS.get(question.key)
    if end is None or not end.search(line):
        return text, line
    plain = " ".join(end.sub(" ", line).split())
    return plain, plain


_EITHER: Final = re.compile(r"\bor\b|\bmaybe\b|\bnot\b|\?|\bthen\b|\bnow\b")


def as_asked(question: Question, found: AskBack, line: str) -> Accepted | None:
    """What the question's own words decide between readings; None if they don't.

    Two bare pressures come in the order that was asked for, return before supply; a branch told
    by one size is round. Both are echoed, and "the other way round" turns them.
    """
    if _EITHER.search(line):
        return None
    readings = found.readings
    if question.key in ("static_total", "static_split") and found.kind is AskKind.TWO_VALUES:
        plain = [values["inwc"] for values in readings if set(values) == {"inwc"}]
        if len(plain) == len(readings) == 2:
            values = {"return_inwc": plain[0], "supply_inwc": plain[1]}
            return Accepted(values, sureness(line))
    if len(readings) != 1:
        return None
    both = set(readings[0]) >= {"return_inwc", "supply_inwc"}
    decided = (both and question.key in ("static_total", "static_split")) or (
        question.key == "branches" and readings[0].get("shape") == "round"
    )
    return Accepted(dict(readings[0]), sureness(line)) if decided else None
