"""How long a run is, told in pieces or by its ends: "20 ft of trunk plus 18 of branch"."""

import re
from typing import Final

from intake.interview.question import Question
from intake.reading.manner import sureness
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, AskKind, Reading

__all__ = ["run_told"]

_RUNS: Final = ("run_supply", "run_return")
_PIECE: Final = re.compile(r",? ?\b(?:plus|and then|then|and) (?:another |about |maybe |like )*")
_FEET: Final = re.compile(r"(?P<ft>\d{1,3}) ?(?:ft|feet|foot|')?(?= |$|[,.;])(?P<of>[^\d]*)")
_OF_THE_RUN: Final = re.compile(
    r"\b(?:straight|up|down|over|across|along|of (?:the )?(?:trunk|branch|flex|pipe|duct|main|run)"
    r"|to the|out|back|more|another|horizontal|vertical|through|in the)\b|^ *$"
)
_OTHER: Final = re.compile(
    r"\b(?:inch|x|by|elbows?|turns?|boots?|cfm|return|registers?|branches|runs?|takeoffs?|years?|joists?|steps?|paces?|yards?|bays?)\b"
)
_AT_MOST: Final = re.compile(
    r"(?:it'?s )?(?:no|not) (?:more|less|longer|farther|further|over|under)(?: than)? (?:about )?"
    r"(?P<ft>\d{1,3})(?: ?(?:ft|feet|foot|'))?[.! ]*"
)
_NO_RUN: Final = re.compile(
    r"(?:there'?s |there is |we have )?no (?:return )?(?:run|duct|ductwork)"
    r"(?: at all| there| really)?"
    r"(?:[,;. ]+(?:it'?s |the )?(?:return|grill?e?|opening|louver\w*)(?:'s| is)?"
    r" (?:right )?(?:in|on|at) (?:the )?(?:closet|door|unit|furnace|cabinet|side)[^\d]*)?[.! ]*"
)
_SAY: Final = re.compile(r".*\b(?:so )?(?:say|call it|figure|go with|use) (?P<ft>\d{1,3})\b\D*")
_NOWHERE: Final = re.compile(
    r"(?:it'?s |right |just |only )*(?:on|in|behind|across|through|under|over)\b[^\d]*"
)


def run_told(question: Question, line: str) -> Reading | None:
    """The length of a run that is told in pieces, as a limit or as a place; None if it is one.

    Args:
        question: The open question.
        line: Normalised text.
    """
    if question.key not in _RUNS:
        return None
    if question.key == "run_return" and _NO_RUN.fullmatch(line):
        return Accepted({"ft": 0.0}, sureness(line))
    limit = _AT_MOST.fullmatch(line)
    if limit is not None:
        return AskBack(
            f"{limit['ft']} ft is one end of it. About how many feet is it?",
            (),
            AskKind.MISSING_PART,
        )
    said = _SAY.fullmatch(line)
    if said is not None:
        return Accepted({"ft": float(said["ft"])}, sureness(line))
    if _NOWHERE.fullmatch(line) and isinstance(read("length", line), Accepted) is False:
        return AskBack("About how many feet is that?", (), AskKind.MISSING_PART)
    return _summed(line)


def _summed(line: str) -> Accepted | None:
    """The sum of the pieces of a run, two or three of them."""
    if _OTHER.search(line) or re.search(r"\bor\b|\bno\b|\bnot\b", line):
        return None
    pieces = [piece.strip() for piece in _PIECE.split(line) if piece and piece.strip()]
    lengths: list[float] = []
    for piece in pieces:
        told = _FEET.search(piece)
        if (
            told is None
            or len(re.findall(r"\d+", piece)) != 1
            or not _OF_THE_RUN.search(told["of"])
        ):
            return None
        lengths.append(float(told["ft"]))
    if not 2 <= len(lengths) <= 3:
        return None
    return Accepted({"ft": sum(lengths)}, sureness(line))
