"""An airflow told by another one: the same, a share of it, or so much more or less."""

import re
from typing import Final

from engine.job.job import Job
from intake.interview.question import Question
from intake.reading.manner import sureness
from intake.reading.result import Accepted, Value
from intake.reading.scan import scan

__all__ = ["as_low", "relative_flow", "says_same", "without_too"]

_HIGH: Final = "target.cooling_high_cfm"
_LOW: Final = "target.cooling_low_cfm"
_BESIDE: Final = ("low_cfm", "heat_pump_cfm")
"""Questions whose airflow is often told by the one before."""

_LEAD: Final = (
    r"(?:(?:uh|um|well|ok|yeah|yes|yep|nah|no|just|use|make it|keep it|call it|about|around|roughly"
    r"|like|probably|prolly|should be|would be|i'?d say|i would say|i think|it'?s|its|it is|that'?s"
    r"|they'?re|doesn'?t matter|don'?t matter|exactly|pretty much|basically|runs?|goes|at|the|a"
    r"|all|stays?|remains?)[, ]+)*"
)
_AFTER: Final = (
    r"(?:[, ]+(?:i think|i guess|i believe|too|again|as well|also|airflow|number|cfm|figure|one"
    r"|thing|there|here|for (?:heat\w*|both|that)|in heat\w*|to (?:the )?cool\w*|then|please"
    r"|i'?d say|as (?:in |for )?"
    r"(?:cool\w*|before|above|the (?:cool\w*|other|last|first)(?: one)?|that"
    r"|high(?: stage)?)))*[.! ]*"
)
_SAME: Final = re.compile(
    rf"{_LEAD}(?:same|ditto|identical|equal|no (?:different|difference|change)|unchanged"
    rf"|(?:equal|same) (?:to|as) (?:full |high )*cool\w*"
    rf"|as (?:in |for )?cool\w*|like (?:in )?cool\w*|matches(?: cool\w*)?){_AFTER}"
)
_AS_LOW: Final = re.compile(
    rf"{_LEAD}(?:same|equal|identical|ditto)(?: as| to)?(?: in| the| at)* low\w*(?: stage| cool\w*"
    r"| fire| one)?[.! ]*"
)
_SHARES: Final = {
    "half": 0.5,
    "one half": 0.5,
    "two thirds": 2 / 3,
    "2/3": 2 / 3,
    "2/3rds": 2 / 3,
    "three quarters": 0.75,
    "3/4": 0.75,
    "a third": 1 / 3,
}
_SHARE: Final = re.compile(
    rf"{_LEAD}(?:(?P<pct>\d{{2,3}}) ?(?:%|percent|per cent)|(?P<word>{'|'.join(_SHARES)}))"
    r"(?: ?(?:of|that|it|the|what|high\w*|full|cool\w*|stage|airflow|flow|cfm|on low|in low"
    r"|\d{3,4}|i think|or so|is|number|\()+)*[.!) ]*"
)
_MORE: Final = re.compile(
    rf"{_LEAD}(?P<n>(?:an? )?[\w, -]+?) ?(?:cfm )?(?P<way>more|less|higher|lower|over|under|above"
    r"|below)(?: (?:than )?(?:in |the |that|it|full |high )*(?:cool\w*|that|it|high\w*|stage|is)*)?"
    r"[.! ]*"
)
_LESS: Final = ("less", "lower", "under", "below")
_MOST_CHANGE_CFM: Final = 600.0
_TOO: Final = re.compile(r"[, ]+(?:too|as well|also|again|either)[.! ]*$")


def says_same(line: str) -> bool:
    """Whether a line says that it is the same as in cooling.

    >>> says_same("i'd say the same again"), says_same("no different"), says_same("not the same")
    (True, True, False)
    """
    return _SAME.fullmatch(line) is not None


def as_low(line: str) -> bool:
    """Whether a line says that it is the same as in low stage, which is not cooling in full."""
    return _AS_LOW.fullmatch(line) is not None


def relative_flow(question: Question, line: str, job: Job) -> Accepted | None:
    """The airflow that a line tells by another one; None if it doesn't, or that one is unknown.

    Args:
        question: The open question, of an airflow.
        line: Normalised text.
        job: What is known.
    """
    if question.key == "cool_cfm":
        return _per_ton(line, job)
    if question.key not in _BESIDE:
        return None
    high, low = job.number(_HIGH), job.number(_LOW)
    if question.key == "heat_pump_cfm" and _AS_LOW.fullmatch(line):
        return _flow(low, line)
    if high is None:
        return None
    share = _SHARE.fullmatch(line)
    if share is not None and not (share["pct"] and float(share["pct"]) > 150):
        part = float(share["pct"]) / 100 if share["pct"] else _SHARES[share["word"]]
        return _flow(round(high * part), line)
    more = _MORE.fullmatch(line)
    if more is None:
        return None
    numbers = scan(more["n"], "airflow").numbers
    if len(numbers) != 1 or numbers[0].unit not in ("", "cfm"):
        return None
    change = numbers[0].value
    if not 0 < change <= _MOST_CHANGE_CFM:
        return None
    return _flow(high - change if more["way"] in _LESS else high + change, line)


_RATE: Final = re.compile(
    rf"{_LEAD}(?P<rate>[2-5]\d\d) ?(?:cfm )?(?:a|per|each|/) ?ton(?: i think| or so)?[.! ]*"
)
_CHECKED: Final = re.compile(
    r"(?:about )?(?P<flow>\d,?\d{3}|\d{3})(?: cfm)?[, ]+(?:(?:so|that'?s|it'?s|from|a|its) )*"
    r"(?P<tons>[1-5](?:\.5)?)[ -]?tons? (?:at|@|x|times) (?P<rate>[2-5]\d\d)(?: cfm)?[.! ]*"
)


def _per_ton(line: str, job: Job) -> Accepted | None:
    """So much a ton, where the tons were told; or an airflow with the sum that it comes from."""
    checked = _CHECKED.fullmatch(line)
    if checked is not None:
        flow = float(checked["flow"].replace(",", ""))
        right = abs(float(checked["tons"]) * float(checked["rate"]) - flow) < 1
        return _flow(flow, line) if right else None
    rate, tons = _RATE.fullmatch(line), job.number("equipment.cooling_tons")
    if rate is None or tons is None:
        return None
    return _flow(tons * float(rate["rate"]), line)


def _flow(cfm: float | None, line: str) -> Accepted | None:
    values: dict[str, Value] = {} if cfm is None else {"cfm": float(cfm)}
    return Accepted(values, sureness(line)) if values else None


def without_too(question: Question, text: str, line: str) -> tuple[str, str]:
    """Text and line without "too" behind an airflow: "1200 too"."""
    if question.field != "airflow" or not _TOO.search(line):
        return text, line
    plain = _TOO.sub("", line)
    return plain, plain
