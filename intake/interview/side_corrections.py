"""A pressure told again for one side of the unit: "the supply was .45 not .40".

Where both sides were read and one of them is named with another figure, that side's reading is
put right; by itself such a figure would be taken for the pressure of the whole.
"""

import re
from typing import Final

from intake.interview.clause_words import LEADS
from intake.interview.clauses import Clause
from intake.interview.planner import question_of
from intake.interview.question import Question
from intake.interview.talk import Talk
from intake.reading.clean import normalise
from intake.reading.result import Accepted

__all__ = ["side_corrected"]

_P: Final = r"-?0?\.\d+"
_CORRECTION: Final = re.compile(
    rf"(?:^|[,;]\s*|\.(?!\d)\s*|\b(?:and|but)\b\s*)(?:{LEADS}[, ]+)*"
    r"(?:i (?:gave|told) you (?:the )?wrong |i (?:got|had|read|wrote) the |static (?:on|for) )?"
    r"(?:the )?(?P<side>return|ret|supply|sup)(?: side)?(?: static| pressure| reading)*"
    r"(?P<verb>(?:,? (?:it'?s|it is|it was|is|was|were|should(?: be| read)?|reads?|really|actually"
    r"|wrong)|'s)*)"
    rf" (?P<new>{_P})(?P<not>,? (?:and )?(?:not|instead of) (?P<old>{_P}))?"
    r"(?=[,;.! ]*$|[,;]|\.\s| and\b| but\b)"
)
_PUTS_RIGHT: Final = re.compile(
    r"\b(?:actually|really|should|wrong|sorry|was|were|oops|mistake|correct\w*|meant)\b"
)
_OF_THE_OPEN: Final = ("static_total", "static_split")
_READ: Final = {"return": "after_filter_inwc", "supply": "before_coil_inwc"}


def side_corrected(talk: Talk, question: Question | None, text: str) -> tuple[str, Clause] | None:
    """The rest of a line and the correction of one side's pressure; None if it has none.

    Args:
        talk: The conversation.
        question: The open question.
        text: What was typed.
    """
    line = normalise(text)
    found = list(_CORRECTION.finditer(line))
    home = question_of("static_total")
    if len(found) != 1 or home is None:
        return None
    said = found[0]
    side = "return" if said["side"].startswith("ret") else "supply"
    known = talk.state.job.number(f"readings.0.{_READ[side]}")
    if known is None or (said["old"] and abs(known - abs(float(said["old"]))) > _SAME_INWC):
        return None
    pressed = question is not None and question.key in _OF_THE_OPEN
    if not said["not"] and (pressed or not _PUTS_RIGHT.search(said[0])):
        return None
    rest = f"{line[: said.start()]}{line[said.end() :]}".strip(" ,;")
    answer = Accepted({f"{side}_inwc": abs(float(said["new"]))})
    return rest, Clause(home, answer, said[0].strip(" ,;."), corrects=True)


_SAME_INWC: Final = 0.005
