"""A finding -> sentences: the figure, what it is compared with, where that is from, what it means.

The words of each check are in `intake.telling.checks`; here they are put together. The arithmetic
is the finding's own formula with its numbers put in.
"""

import re
from math import isfinite
from typing import Final

from engine.job.facts import Quantity, fact_for
from engine.job.job import Job
from engine.verdict import Finding, FindingStatus
from intake.telling.checks import CHECKS, Bound, Told
from intake.telling.names import PARTS, fact_words, place_words, value_words
from intake.telling.numbers import in_how_many, per_cent, quantity, turning

__all__ = [
    "figure_words",
    "finding_sentence",
    "finding_where",
    "limits_words",
    "odds_sentence",
    "of_assumed_size",
    "plain_source",
    "told_of",
    "turns_sentence",
]

_HELD: Final = re.compile(
    r"\s*\((?:memory|read|computed|judgement)(?:,? (?:low|medium|high))*\)|,? \(how: [a-z]+\)"
)


_IN_DOUBT: Final = 0.1
"""Share of houses in which a figure is over from which nothing good is said of its middle."""


def told_of(check: str) -> Told:
    """The words of a check; a check without its own row gets its name, never someone else's."""
    found = CHECKS.get(check)
    if found is not None:
        return found
    name = check.replace("_", " ")
    return Told(name, f"The {name} of the {{where}} is {{figure}}", Bound.MOST)


def plain_source(source: str) -> str:
    """A source without the marks of how it is held; these stay in the report's own column.

    >>> plain_source("ANSI/ACCA 1 Manual D velocity table (memory)")
    'ANSI/ACCA 1 Manual D velocity table'
    """
    return _HELD.sub("", source).strip()


def finding_sentence(finding: Finding, job: Job | None = None, *, brief: bool = False) -> str:
    """The finding in words: figure, limits and their source, and what it means.

    Args:
        finding: What a check found.
        job: Gives the material that the limits are of, and the names of pieces.
        brief: Leave out a note that is an aside, for the chat.

    Returns:
        One to four sentences, ending with a full stop. Odds, turning point and arithmetic are told
        by `odds_sentence`, `turns_sentence` and the finding's formula.
    """
    told = told_of(finding.check)
    if finding.note in told.instead:
        return told.instead[finding.note]
    figure = quantity(finding.figure, finding.unit, (finding.recommended, finding.maximum))
    where = finding_where(finding, job)
    head = told.says.format(figure=figure, where=where)
    if where[-1:].isdigit():  # a number names it: "supply trunk 2", no article before it
        head = head.replace(f"the {where}", where)
    limits = limits_words(finding, job)
    first = f"{head[0].upper()}{head[1:]}{'; ' + limits if limits else ''}."
    note = "" if brief and told.aside else _sentence(finding.note)
    in_doubt = finding.status is FindingStatus.FINE and finding.over_share >= _IN_DOUBT
    meaning = "" if in_doubt else told.meaning(finding)
    size = _assumed_size(finding)
    parts = [first, size, meaning, _how_far(finding, told), _because(finding), note]
    return " ".join(part for part in parts if part)


def finding_where(finding: Finding, job: Job | None = None) -> str:
    """The place a finding is about, by the name somebody gave it if there is one."""
    where = finding.where or PARTS[finding.part]
    for key in finding.rests_on if job is not None else ():
        named = place_words(key, job)
        if "“" in named and (_plain(key) == where or f"“{where}”" in named):
            return named
    return where


def _plain(key: str) -> str:
    return place_words(re.sub(r"[.\[]\d{1,2}\]?", ".0", key, count=1))


_SIZES: Final = ("supply.", "return.", "filters")


def of_assumed_size(finding: Finding) -> bool:
    """Whether it is a speed whose duct or opening nobody described."""
    area = told_of(finding.check).area
    return area and not any(key.startswith(_SIZES) for key in finding.known)


def _assumed_size(finding: Finding) -> str:
    if not of_assumed_size(finding):
        return ""
    return "Nobody gave its size yet: this is a usual house's."


def limits_words(finding: Finding, job: Job | None = None, *, with_source: bool = True) -> str:
    """The limits the figure is compared with, as a clause without a full stop; empty if none."""
    told = told_of(finding.check)
    recommended, maximum = (
        _told_limit(one, told) for one in (finding.recommended, finding.maximum)
    )
    source = f" ({plain_source(finding.source)})" if with_source and finding.source else ""
    of = _material(finding, job) if told.aside else ""
    low = "" if recommended is None else quantity(recommended, finding.unit, (finding.figure,))
    high = "" if maximum is None else quantity(maximum, finding.unit, (finding.figure,))
    hard = told.hard or told.bound.value
    if low and high and low != high:
        return f"{low} is {told.soft} and {high} {hard}{of}{source}"
    if high:
        return f"{high} is {hard}{of}{source}"
    return f"{low} is {told.soft}{of}{source}" if low else ""


def _told_limit(limit: float | None, told: Told) -> float | None:
    if limit is None or not isfinite(limit):
        return None
    return None if told.bound is Bound.LEAST and limit <= 0.0 else limit


def _material(finding: Finding, job: Job | None) -> str:
    if job is None:
        return ""
    for key in finding.rests_on:
        if key.endswith(".material") and (word := job.word(key)):
            return f" for {value_words(key, word).split(',')[0]}"
    return ""


def _how_far(finding: Finding, told: Told) -> str:
    limit = finding.maximum if finding.status is FindingStatus.OVER else finding.recommended
    if finding.status is FindingStatus.FINE or limit is None or not isfinite(limit) or limit <= 0.0:
        return ""
    far = abs(finding.figure / limit - 1.0)
    if far < 0.005:
        return ""
    if told.area and finding.status is FindingStatus.OVER:
        return f"The same air at {quantity(limit, finding.unit)} needs {per_cent(far)} more area."
    return ""


_TAKES: Final = {"return": "return ducts", "supply": "supply ducts"}


def _because(finding: Finding) -> str:
    if not finding.because:
        return ""
    words = [_TAKES.get(one, one.replace("_", " ")) for one in finding.because]
    rest = f", then the {' and the '.join(words[1:])}" if len(words) > 1 else ""
    return f"What takes most of it: the {words[0]}{rest}."


def _sentence(note: str) -> str:
    text = note.strip()
    if not text:
        return ""
    return text if text.endswith((".", "!", "?")) else f"{text}."


def figure_words(finding: Finding) -> str:
    """The figure alone with its unit; a dash where it doesn't exist."""
    if finding.note in told_of(finding.check).instead:
        return "–"
    return quantity(finding.figure, finding.unit, (finding.recommended, finding.maximum))


def odds_sentence(finding: Finding) -> str:
    """How sure the finding is, over the houses that fit what was told; empty if it is settled.

    A range is told where the figure itself is uncertain.
    """
    if finding.note in told_of(finding.check).instead:
        return ""
    low, high = finding.spread.low, finding.spread.high
    limits = (finding.recommended, finding.maximum)
    least, most = (quantity(one, finding.unit, limits) for one in (low, high))
    between = "" if least == most else f"It may be anything from {least} to {most}"
    if finding.maximum is None or not 0.005 < finding.over_share < 0.995:
        return f"{between}." if between else ""
    chance = (
        f"over the limit in {in_how_many(finding.over_share)} of the houses that fit what was told"
    )
    return f"{between}; {chance}." if between else f"It is {chance}."


_DIMENSIONS: Final = {
    "width_in": "wide",
    "height_in": "tall",
    "depth_in": "thick",
    "diameter_in": "across",
    "length_ft": "long",
}


def turns_sentence(finding: Finding, job: Job | None = None) -> str:
    """Where the finding turns, as a sentence; empty if nothing a person can state turns it."""
    turns = finding.turns_at
    if turns is None:
        return ""
    fact = fact_for(turns.key)
    holds = _HOLDS[finding.status]
    field = turns.key.rsplit(".", 1)[-1]
    place = place_words(turns.key, job)
    if fact.quantity is Quantity.COUNT:
        size = turning(turns.value, turns.holds_while, "count")
    else:
        unit = "share" if fact.quantity is Quantity.SHARE else fact.unit
        size = turning(turns.value, turns.holds_while, unit)
    if place and field in _DIMENSIONS:
        the = place if place[-1].isdigit() else f"the {place}"
        return f"{holds} while {the} is {turns.holds_while} {size} {_DIMENSIONS[field]}."
    phrase = fact_words(turns.key, job)
    if "," in phrase or fact.quantity is Quantity.COUNT or phrase.startswith(_NOT_A_NOUN):
        return f"{holds} while this is {turns.holds_while} {size}: {phrase}."
    return f"{holds} while the {phrase} is {turns.holds_while} {size}."


_HOLDS: Final = {
    FindingStatus.FINE: "That holds",
    FindingStatus.TIGHT: "It gets no worse",
    FindingStatus.OVER: "It stays so",
}
_NOT_A_NOUN: Final = ("how ", "what ", "where ", "whether ", "which ")
