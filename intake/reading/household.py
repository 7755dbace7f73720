"""Who is at home: whether a line tells of somebody very young, 65 or over, or ill."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.clean import normalise
from intake.reading.scan import Item, scan

__all__ = ["anybody_frail"]

_FRAIL: Final = re.compile(
    r"\b(?:bab(?:y|ies)|infants?|newborns?|toddlers?|preemies?|elderly|grand(?:ma|pa|mother|father"
    r"|mom|dad|parents?)(?:'?s)?|nana|granny|gramps|seniors?|oxygen|disabled|wheelchair|pregnant"
    r"|expecting|sick|ill|chemo\w*|hospice|dialysis|diabet\w*|bedridden|frail|asthma\w*|copd"
    r"|cancer|stroke|alzheimer\w*|dementia|parkinson\w*|ventilator|cpap|pacemaker|transplant"
    r"|emphysema|lung (?:disease|problems?)|heart (?:condition|failure|trouble|problems?|disease)"
    r"|immune\w*|handicapp?ed|little ones?|pre-?schoolers?|in (?:his|her|their|my|our) (?:mid |late"
    r" |early )*(?:70|80|90)'?s|seventies|eighties|nineties|septuagenarians?)\b"
)
_KIDS: Final = re.compile(
    r"\b(?:kids?|child|children|sixties|old (?:folks|people|couple|man|lady))"
)
_DENIED: Final = re.compile(
    r"\b(?:no|not|nobody|no ?one|none|never|without|neither|nor|isn'?t|aren'?t|don'?t|doesn'?t"
    r"|ain'?t)\b"
)
_KIDS_AGED: Final = re.compile(
    r"\b(?:kids?|children|sons?|daughters?|boys?|girls?)\W+[1-5]\b(?! of)"
)
_CLAUSES: Final = re.compile(r"[,;.:!]|\b(?:but|except|though|although|and|just|only|plus)\b")
_NOBODY_BELOW: Final = re.compile(
    r"\b(?:nobody|no ?one|none(?: of (?:us|them))?|not one)(?:'s| is| are)? (?:here )?"
    r"(?:under|below|younger than|less than) (?:6[5-9]|[78]\d|sixty[- ]?five|seventy|eighty)"
)
_NOBODY_ABOVE: Final = re.compile(
    r"\b(?:nobody|no ?one|none(?: of (?:us|them))?|not one)(?:'s| is| are)? (?:here )?"
    r"(?:over|above|older than|past|near|close to|even|that old|65|sixty)"
)
_ABOVE: Final = re.compile(
    r"\b(?:all|both|everybody|everyone|we|they)(?:'s|'re| are| is)?(?: \w+)? (?:over|above|past"
    r"|older than)"
    r" (?:6[5-9]|[78]\d|sixty[- ]?five|seventy|eighty)"
)
_OF_MANY: Final = re.compile(
    r"[ -]*(?:of (?:us|them|'?em)|people|adults?|kids?|children|teen\w*|bedrooms?|degrees?|dogs?"
    r"|cats?|%|percent|or older|or over|or up|and (?:up|over|older)|folks|healthy|hours?|days?)"
)
_AGED: Final = re.compile(
    r"(?:'s|\bis|\bam|\bi'?m|\bare|\baged?|\bturn(?:s|ing|ed)|\balmost|\bnearly|\babout|\bboth"
    r"|\bshes?|\bhes?|\bwhos|\bage of|\band|^|\bwho is|'re|\ball)[ ,]*$"
)
_OLD: Final = re.compile(r"[ -]*(?:yrs?|years?|y\.?/?o\.?)\b(?:[ -]olds?)?")
_BABY_AGE: Final = re.compile(r"[ -]*(?:weeks?|wks?|months?|mos?|days?)[ -]olds?\b")
_OLD_FROM: Final = 65
_LITTLE_TO: Final = 5
_GROWN_FROM: Final = 13
_OLDEST: Final = 112


def anybody_frail(line: str) -> bool | None:
    """Whether somebody very young, 65 or over, or ill is told of; None if a line doesn't say.

    One who is outweighs any that aren't. Children of no told age, and people "in their sixties",
    leave it open.

    >>> anybody_frail("no babies but grandpa's 79"), anybody_frail("just the two of us, both 40")
    (True, False)
    """
    text = normalise(line)
    if _KIDS_AGED.search(text):
        return True
    if _NOBODY_BELOW.search(text) or _ABOVE.search(text):
        return True
    if _NOBODY_ABOVE.search(text) and not _FRAIL.search(_CLAUSES.split(text)[-1]):
        text = _NOBODY_ABOVE.sub("nobody frail ", text)
        return _of_clauses(text, denied=True)
    return _of_clauses(text, denied=False)


def _of_clauses(text: str, *, denied: bool) -> bool | None:
    none, open_ = denied, False
    for clause in _CLAUSES.split(text):
        if not clause.strip():
            continue
        told = _FRAIL.search(clause)
        if told and not _DENIED.search(clause[: told.start()]):
            return True
        none = none or bool(told)
        if not denied and (age := _age_told(clause)) is not None:
            if age >= _OLD_FROM or age <= _LITTLE_TO:
                return True
            none = none or age >= _GROWN_FROM
            open_ = open_ or age < _GROWN_FROM
        if kids := _KIDS.search(clause):
            lacks = bool(_DENIED.search(clause[: kids.start()]))
            none, open_ = none or lacks, open_ or not lacks
        none = none or bool(_YEARS_OF_LIFE.search(clause)) or bool(_TEENS.search(clause))
    return False if none and not open_ else None


_YEARS_OF_LIFE: Final = re.compile(r"\b(?:twenties|thirties|forties|fifties|(?:20|30|40|50)'?s)\b")
_TEENS: Final = re.compile(r"\bteen(?:s|ager\w*)\b")


def _age_told(clause: str) -> float | None:
    """The age in years that a clause tells of a person; the most telling one, or None."""
    ages = [
        age for item in scan(clause, "count").numbers if (age := _age(clause, item)) is not None
    ]
    frail = [age for age in ages if age >= _OLD_FROM or age <= _LITTLE_TO]
    return next(iter(frail or ages), None)


def _age(clause: str, item: Item) -> float | None:
    before, after, tail = clause[: item.start], clause[item.end :], clause[item.start :]
    if item.unit not in ("", "years"):
        return None
    if _BABY_AGE.search(tail):
        return 0.0
    if _OF_MANY.match(after) or not 0 < item.value <= _OLDEST:
        return None
    if _OLD.search(tail) or (_AGED.search(before) and (item.value > _LITTLE_TO or before.strip())):
        return float(item.value)
    return None
