"""What the words of the open question decide of an answer that alone would be asked back."""

import re
from collections.abc import Mapping
from typing import Final

from engine.job.job import Job
from intake.interview.question import Question
from intake.reading.manner import sureness
from intake.reading.result import Accepted, AskBack, AskKind

__all__ = ["as_asked", "count_or_inches", "stays_the_same", "without_the_end"]

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


_INCHES: Final = re.compile(
    r"\d ?(?:\"|''|″|in\b|inch)|\binch|\b(?:[4-9]|1[0-4])'?s\b"
    r"|\b(?:fours|fives|sixes|sevens|eights|nines|tens|twelves)\b"
)
_LARGE_IN: Final = 8.0
"""A branch of which only a bare number was told is rarely larger; more is rather how many."""


def count_or_inches(question: Question, found: Accepted, line: str) -> AskBack | None:
    """Asks of a bare number whether it counts the branches: "10 flex runs"."""
    across = found.values.get("diameter_in")
    if question.key != "branches" or "count" in found.values or _INCHES.search(line):
        return None
    if not isinstance(across, int | float) or across < _LARGE_IN or "round" in line:
        return None
    return AskBack(
        f"Is {across:g} how many branches, or inches across? Say it like “10 six inch”.",
        (),
        AskKind.MISSING_PART,
    )


_SAME: Final = re.compile(
    r"\b(?:same (?:size )?(?:all (?:the way|along)|throughout|the whole way|to the end)"
    r"|(?:doesn'?t|does not|don'?t|never|won'?t)"
    r" (?:changes?|gets? (?:any )?smaller|reduces?|steps? down|shrinks?)"
    r"|(?:changes|reduces) nowhere|no changes?|stays (?:the same|one size|full size|that size)"
    r"|one size|all one|full size|straight through)\b"
)
_STAYS: Final = re.compile(r"\b(?:stays?|still|remains?|keeps?)\b\D*(\d+) ?(?:x|by) ?(\d+)")


def stays_the_same(line: str, job: Job) -> bool:
    """Whether a line says that the trunk doesn't get smaller: in words, or by its own size."""
    if _SAME.search(line) and not re.search(r"\d", line):
        return True
    size = _STAYS.search(line)
    if size is None:
        return False
    wide = job.number("supply.trunks.0.width_in")
    tall = job.number("supply.trunks.0.height_in")
    return {float(size[1]), float(size[2])} == {wide, tall}


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
    one_size = question.key == "branches" and readings[0].get("shape") == "round"
    decided = (both and question.key in ("static_total", "static_split")) or (
        one_size and _INCHES.search(line) is not None
    )
    return Accepted(dict(readings[0]), sureness(line)) if decided else None
