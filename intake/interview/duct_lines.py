"""Lines about ducts that are read by what is asked of them, before any one value is looked for."""

import re
from typing import Final

from engine.job.job import Job
from intake.interview.branches import branches_told
from intake.interview.counted import count_told
from intake.interview.duct_rows import rows_told
from intake.interview.question import Question
from intake.interview.runs import run_told
from intake.interview.steps import step_told
from intake.reading.result import Accepted, Reading, Value
from intake.reading.second_thought import opens_correction

__all__ = ["as_meant", "told_of_ducts"]


def told_of_ducts(question: Question, line: str, job: Job) -> Reading | None:
    """What a line says of the ducts that a question asks for; None if it is read as any other.

    Args:
        question: The open question.
        line: Normalised text.
        job: What is known.
    """
    if question.key == "step_down":
        return step_told(line, job)
    if question.field == "count":
        return count_told(question, line, job)
    if question.field == "length":
        return run_told(question, line)
    if question.key == "return_trunk" and _AS_THE_DROP.fullmatch(line):
        return _of_the_drop(job)
    if question.key == "branches":
        return None if opens_correction(line) else branches_told(line)
    return rows_told(question, line, job)


_ANSWERED: Final = re.compile(
    r"\b(lined|wrapped|insulated|flex|liner|bare)\? ?(?:no|nope|nah)\b", re.IGNORECASE
)
"""A question that the same line answers: "24x8 tin, lined? no"."""
_SKIN: Final = r"(?:bare(?: metal)?|lined(?: metal)?|wrapped(?: metal)?|flex|duct ?board)"
_SKIN_AFTER_ALL: Final = re.compile(
    rf"\b{_SKIN}[,.;… -]+(?:(?:oh|no|nope|wait|sorry|actually|i mean|scratch that|hold on)[,. ]+)+"
    rf"(?:(?:it'?s|that'?s|they'?re) )?(?:actually )?(?P<skin>{_SKIN})\b(?! inside)",
    re.IGNORECASE,
)
"""A skin that is taken back for another: "20x8 bare, no, lined"."""
_BARE_OUTSIDE: Final = re.compile(
    r"\bbare (?:metal )?(?:on the )?outside,? (?:and |but )?(?:it'?s )?lined(?: on the)? inside\b",
    re.IGNORECASE,
)
"""A lined duct whose metal is bare to the tape."""
_THE_TRUNK: Final = re.compile(r"^(?:the )?trunk\b", re.IGNORECASE)
_SPOKEN: Final = re.compile(r"\b(twenty|thirty) (for|to) (?=by\b|x\b)", re.IGNORECASE)
_DIGIT: Final = {"for": "four", "to": "two"}
"""Speech-to-text for twenty-four and twenty-two, in front of "by"."""


def as_meant(question: Question, text: str) -> str:
    """The text with what its own words settle: "lined? no", and numbers as they were spoken.

    >>> from intake.interview.planner import question_of
    >>> as_meant(question_of("return_trunk"), "24x8 tin, lined? no")
    '24x8 tin, not lined'
    """
    if question.field not in ("duct", "skin", "grille"):
        return text
    if question.key == "return_trunk":
        text = _THE_TRUNK.sub("return trunk", text)
    text = _ANSWERED.sub(r"not \1", text)
    text = _BARE_OUTSIDE.sub("lined metal, measured outside on the metal", text)
    text = _SKIN_AFTER_ALL.sub(r"\g<skin>", text)
    return _SPOKEN.sub(lambda said: f"{said[1]} {_DIGIT[said[2].lower()]} ", text)


_AS_THE_DROP: Final = re.compile(
    r"(?:yes|yep|yeah|it'?s|its|there is|one|,| )*(?:the |about the )?same(?: size)?"
    r"(?: as| like) (?:the |that )?drop(?: is)?[.! ]*|(?:it'?s |its )?drop size[.! ]*"
)


def _of_the_drop(job: Job) -> Accepted | None:
    """The size of the drop, where that is known."""
    names = ("shape", "width_in", "height_in", "diameter_in", "material")
    values: dict[str, Value] = {}
    for name in names:
        known = job.word if name in ("shape", "material") else job.number
        said = known(f"return.drops.0.{name}")
        if said is not None:
            values[name] = said
    return Accepted(values) if "shape" in values else None
