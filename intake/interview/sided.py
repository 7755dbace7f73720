"""A correction that means one of several values: one side of a pair, or what held the old value."""

import re
from typing import Final

from intake.interview.events import Answered
from intake.interview.planner import question_of
from intake.interview.question import Question
from intake.interview.talk import Talk

__all__ = ["holder_of_old", "of_one_side"]

_SIDE: Final = re.compile(r"\b(return|supply)\b")
_FIGURE: Final = r"\d*\.?\d+"


def of_one_side(earlier: str, text: str, value: str) -> str | None:
    """The earlier answer with one side's figure replaced; None if it doesn't name one side.

    >>> of_one_side("return .30, supply .40", "return should be .33", "return .33")
    'return .33, supply .40'
    >>> of_one_side(".30 return .40 supply", "supply is .45", ".45")
    '.30 return .45 supply'
    """
    sides = set(_SIDE.findall(text.lower()))
    figures = re.findall(_FIGURE, value)
    if len(sides) != 1 or len(figures) != 1:
        return None
    side = sides.pop()
    told = earlier.lower()
    if set(_SIDE.findall(told)) != {"return", "supply"} or len(re.findall(_FIGURE, told)) != 2:
        return None
    if re.match(r"[^\d.]*[a-z]", told):
        found = re.search(rf"\b{side}\b[^\d.]*(?P<at>{_FIGURE})", told)
    else:
        found = re.search(rf"(?P<at>{_FIGURE})[^\d.]*?\b{side}\b", told)
    if found is None:
        return None
    return f"{earlier[: found.start('at')]}{figures[0]}{earlier[found.end('at') :]}"


_OLD: Final = re.compile(r"\b(?:not|instead of|rather than)(?: the)? (?P<old>\d[\d,.]*\d|\d)\b")


_ANY: Final = re.compile(r"(?:the )?(?:airflow|cfm|air)\b")


def holder_of_old(talk: Talk, named: Question, text: str) -> Question | None:
    """The question of the same kind whose answer holds the value called wrong; else `named`.

    "Airflow was 1050 not 1150" is of the airflow that was told as 1150. None if no answer holds
    it and the text names no one airflow.
    """
    match = _OLD.search(text)
    if match is None:
        return named
    old = re.compile(rf"(?<![\d.]){re.escape(match['old'].replace(',', ''))}(?![\d.])")

    def holds(key: str) -> bool:
        said = talk.state.answer_to(key)
        return said is not None and old.search(said.text.replace(",", "")) is not None

    told = (talk.state.job.number(key) for key in named.facts)
    if holds(named.key) or float(match["old"].replace(",", "")) in told:
        return named
    keys = {
        e.question for e in talk.state.standing if isinstance(e, Answered) and holds(e.question)
    }
    alike = [one for key in keys if (one := question_of(key)) and one.field == named.field]
    if len(alike) == 1:
        return alike[0]
    return None if named.field == "airflow" and _ANY.match(text) else named
