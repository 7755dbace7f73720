"""Sizes of openings as people list them: pairs, sizes struck out again, the same once more."""

import re
from dataclasses import replace
from typing import Final

from intake.interview.question import Question
from intake.reading.clean import normalise
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, Reading

__all__ = ["as_listed", "without_place"]

_SIZE: Final = r"\d+(?:\.\d+)? ?(?:x|by) ?\d+(?:\.\d+)?"
_PAIR: Final = re.compile(
    rf"(?P<before>{_SIZE}[^\d]*?)\b(?:an? )?(?:pair|couple)(?: of)? (?P<what>(?:[a-z]+ )?)"
    rf"(?={_SIZE})"
)
_BOTH: Final = re.compile(
    rf"(?P<before>{_SIZE}\D*?)\bboth (?:the )?(?P<what>[a-z]+s) (?P<size>{_SIZE})"
)
_STRUCK: Final = re.compile(
    r"[,;. ]*\b(?:and |but |oh |no |wait |actually )*"
    r"(?:strike|scratch|forget|skip|remove|cross out|not counting|don'?t count|leave out"
    r"|leaving out|ignore)"
    rf" (?:the |that |a |an )?(?:[a-z]+ )?(?P<size>{_SIZE})(?P<rest>[^\d]*)$"
)
_DEAD: Final = re.compile(
    r"[,; ]+(?:and |but |plus )*(?:one|two|three|four|\d|some|a few)"
    r" (?:others?|(?:others? |more )?(?:returns?|openings?|grill?e?s?))(?: that)?"
    r" (?:are|is|was|were) (?:all )?(?:blocked|shut|dead|closed|covered|painted shut|sealed|capped"
    r"|abandoned)[^\d]*$"
)
"""Openings without a size that let no air through."""
_SAME_AGAIN: Final = re.compile(
    rf"(?:an? |one )?(?P<size>{_SIZE})(?P<where>[^\d,;]*)[,;] ?(?:and )?(?:the )?same"
    r"(?: (?:size|thing|one))? (?:down(?:stairs)?|up(?:stairs)?|in|at|on)\b[^\d]*"
)


def as_listed(question: Question, text: str) -> str:
    """The sizes of a line as they are meant to count; other lines as they were typed.

    Args:
        question: The open question.
        text: What was typed.

    >>> from intake.interview.planner import question_of
    >>> as_listed(question_of("openings"), "20x20 and a pair of 10x6")
    '20x20 and two 10x6'
    """
    if question.field != "grille":
        return text
    line = normalise(text)
    again = _SAME_AGAIN.fullmatch(line)
    if again is not None:
        return f"two {again['size']}"
    struck = _STRUCK.search(line)
    if struck is not None:
        return _without(line[: struck.start()], struck["size"]) or text
    if _DEAD.search(line):
        return _DEAD.sub("", line)
    if _PAIR.search(line):
        return _PAIR.sub(r"\g<before>two \g<what>", line)
    if _BOTH.search(line):
        return _BOTH.sub(r"\g<before>two \g<size> \g<what>", line)
    return text


def _without(listed: str, size: str) -> str:
    """A list without one size; it may have been told there or not. Empty if nothing is left."""
    one = re.compile(rf"(?:(?:,| and| plus|^) ?)(?:an? |one )?{re.escape(size)}(?=,| and|$)")
    left = one.sub("", listed, count=1) if len(one.findall(listed)) == 1 else listed
    return left.strip(" ,;") if re.search(r"\d", left) else ""


_PLACE: Final = re.compile(
    r"[,; ]*(?:(?:all )?(?:of )?(?:the |both )?(?:slots?|slotted(?: part)?|holes?|frames?"
    r"|(?:to|out to) the (?:frame|edge)s?)|(?P<inside>(?:without|minus|not counting|less|inside)"
    r" (?:of )?(?:the |their )?(?:frame|edge)s?))(?: (?:only|part of each|each|size))?[.! ]*$"
)
_SIZED: Final = re.compile(_SIZE)


def without_place(question: Question, found: Reading, line: str) -> Reading:
    """Several openings with where the tape was at the end: "20x20 and 14x8, slots".

    Args:
        question: The open question, of openings.
        found: What the whole line was read as.
        line: Normalised text.

    Returns:
        The openings without those words, taped there; `found` if the line doesn't end so.
    """
    match = _PLACE.search(line)
    several = len(_SIZED.findall(line)) > 1
    if match is None or not (isinstance(found, AskBack) or (several and _one_size(found))):
        return found
    listed = read(question.field, line[: match.start()], question=question.words)
    if not isinstance(listed, Accepted):
        return found if isinstance(found, AskBack) else listed
    framed = re.search("frame|edge", match[0]) and not match["inside"]
    return replace(listed, place="frame" if framed else "slots")


def _one_size(found: Reading) -> bool:
    return isinstance(found, Accepted) and "grilles" not in found.values
