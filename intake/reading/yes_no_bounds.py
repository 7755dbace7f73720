"""A number, or a word for more or less, against the bound that the question names.

"14 on my tape" is a yes to "Is the plenum taller than 12 inches?", "right around then" is neither
a yes nor a no to "Was it built before 1981?".
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import Enum
from typing import Final

from intake.reading.frames import framed
from intake.reading.scan import scanned
from intake.reading.units import DIMENSION, convert

__all__ = ["Place", "by_bound"]


class Place(Enum):
    """What an answer that is measured against a bound comes to."""

    YES = "yes"
    NO = "no"
    OPEN = "open"
    """It is spoken of, and may lie on either side."""
    UNMEASURED = "unmeasured"
    """It hasn't been measured."""


_MORE: Final = (
    r"(?:over|above|past|beyond|exceed(?:s|ing)?|at least|older than"
    r"|(?:more|greater|taller|bigger|larger|wider|longer|deeper|higher|thicker|hotter|warmer"
    r"|heavier|farther|further|better|louder|steeper) than)"
)
_LESS: Final = (
    r"(?:under|below|at most|within|(?:less|fewer|smaller|shorter|narrower|lower|thinner|colder"
    r"|cooler|lighter|closer|newer|younger|worse|tighter) than)"
)
_BOUND: Final = re.compile(
    rf"\b(?:(?P<more>{_MORE})|(?P<less>{_LESS})|(?P<late>after|since)|(?P<early>before|prior to))"
    r" (?:an? |the |about |around |year )*(?P<bound>[0-9][0-9.,]*)(?: ?(?:x|by) ?(?P<by>[0-9.]+))?"
    r"(?P<behind>.*)"
)
_BEHIND: Final = re.compile(
    r"\b(?P<bound>[0-9][0-9.,]*) ?(?P<behind>[a-z.\"]*(?: [a-z.]+)? or (?:(?P<more>more|over|higher"
    r"|bigger|larger|taller|wider|longer|older|better)|(?P<less>less|under|lower|smaller|shorter"
    r"|fewer|newer)))\b"
)
_LASTS: Final = re.compile(
    r"\bfor (?P<more>)(?P<bound>[0-9]+)(?P<behind> (?:minutes?|min|hours?|feet|ft)\b.*)"
)
"""A time or a stretch that is asked for, which is to be reached."""
_YEARS: Final = (1850.0, 2035.0)
_STRICT: Final = re.compile(r"^(?:at (?:least|most)|within|since)\b| or ")
_NEAR: Final = 0.05
"""The share of a bound within which a rough figure may lie on either side."""


@dataclass(frozen=True, slots=True)
class _Bound:
    value: float
    by: float | None
    above: bool
    strict: bool
    unit: str
    someone: bool
    every: bool
    more_asked: bool
    asked: str
    unit_words: str

    @property
    def years(self) -> bool:
        """Whether the bound is a year."""
        return not self.unit and _YEARS[0] <= self.value <= _YEARS[1]


def _bound_of(question: str) -> _Bound | None:
    asked = question.lower()
    found = _BOUND.search(asked) or _BEHIND.search(asked) or _LASTS.search(asked)
    if found is None:
        return None
    named = found.groupdict()
    value = float(found["bound"].rstrip(".,").replace(",", ""))
    above = named.get("more") is not None or named.get("late") is not None
    if "older than" in found[0] and _YEARS[0] <= value <= _YEARS[1]:
        above = False
    if "newer than" in found[0] and _YEARS[0] <= value <= _YEARS[1]:
        above = True
    unit = next(iter(n.unit for n in scanned(found[0], "yes_no").numbers), "")
    by = float(named["by"].rstrip(".")) if named.get("by") else None
    some = re.search(r"\b(?:any|anyone|anybody|anything|someone|somebody|either)\b", asked)
    every = re.search(r"\b(?:all|every|each|everyone|everything|both)\b", asked)
    more = re.search(r"\b(?:or|and) (?!more|over|higher|bigger|larger|older)", found["behind"])
    return _Bound(
        value,
        by,
        above,
        _STRICT.search(found[0]) is None and found.re is not _LASTS,
        unit,
        some is not None,
        every is not None,
        more is not None and named.get("less") is None,
        asked,
        found["behind"][:12],
    )


_LEAD: Final = (
    r"(?:(?:oh|well|uh|um|it'?s|it is|they'?re|its|that'?s|is|i'?d say|i'd call it|looks|just|way"
    r"|well|far|a lot|lots|quite a bit|much|a bit|a little|a hair|a tad|a touch|slightly|barely"
    r"|somewhat|up|clearly|definitely|easily|still|probably|right|hair|tad|bit|little"
    r"|a good bit|i think|think it'?s|maybe) )*"
)
_TAIL: Final = (
    r"(?: (?:that|it|than that|then that|the line|the mark|by a lot|by a bit|by a hair|a bit|a lot"
    r"|a little|for sure|i think|easy|easily|sure|by a mile|though|of it|of that))*[.! ]*"
)
_SAYS_MORE: Final = re.compile(
    _LEAD + r"(?:over|above|past|more|bigger|larger|taller|wider|longer|deeper|higher|greater"
    r"|thicker|exceeds)" + _TAIL
)
_SAYS_LESS: Final = re.compile(
    _LEAD + r"(?:under|below|less|smaller|shorter|narrower|lower|thinner|short of|shy|shy of"
    r"|not quite(?: there)?|nowhere (?:near|close)(?: to)?|not even close(?: to)?)" + _TAIL
)
_SAYS_NEAR: Final = re.compile(
    _LEAD + r"(?:close(?: to)?|near|around|about|right (?:at|on|around|about|near)|borderline|at"
    r"|on the line|on the edge|pretty close|real close|same|the same)(?: (?:it|that|then|there"
    r"|the line|enough|thing))*[.! ]*"
)
_SAYS_YOUNGER: Final = re.compile(_LEAD + r"(?:newer|younger|later|after|since)" + _TAIL)
_SAYS_OLDER: Final = re.compile(_LEAD + r"(?:older|earlier|before|prior)" + _TAIL)
_OF_SIZE: Final = re.compile(
    r"\b(?:(?P<under>under|below|less than|smaller than|shorter than|lower than|no more than"
    r"|at most"
    r"|not over|not even|isn'?t even|up to|no bigger than|no taller than|just shy of|shy of"
    r"|short of|almost|nearly|not quite)|(?P<over>over|above|past|more than|bigger than|taller than"
    r"|larger than|longer than|wider than|higher than|at least|north of|upwards of|upward of))"
    r" (?:an? |about )*(?:[0-9.]+|foot\b|point\b|[a-z]+\b)"
)
_PLUS: Final = re.compile(
    r"[0-9](?:\"|in|inch|inches)? ?(?:\+|plus\b|and change\b|or (?:more|better|so)\b)"
)
_ROUGH: Final = re.compile(
    r"\b(?:about|around|roughly|maybe|probably|close to|near|nearly|almost|right at|approx\w*"
    r"|somewhere|give or take|guess\w*|eyeball\w*|i think|looks like|or so|more like)\b|\dish\b|~"
)
_DENIES: Final = re.compile(
    r"\b(?:not|isn'?t|ain'?t|wasn'?t|never|doesn'?t)(?: (?:a|an|the|really|quite|at|exactly))*"
    r" [0-9.]+(?!.*\d)"
)
_RANGE: Final = re.compile(r"\b(?:to|or|through|thru|between)\b|[0-9] ?- ?[0-9]")
_A_FOOT: Final = re.compile(r"\b(?:a|one) foot\b(?! of)")
_UNMEASURED: Final = re.compile(
    r"\b(?:haven'?t|have not|havent|didn'?t|never|not) (?:\w+ )?(?:measur\w+|checked|looked|drilled"
    r"|taped|tested|hooked|put a tape|got(?:ten)? (?:a|the) (?:reading|tape))\b"
    r"|\b(?:don'?t|do not|didn'?t|haven'?t) (?:have|got|own|bring|carry) (?:a|an|my|the|any|one)"
    r" ?(?:\w+ )?(?:tape|manometer|gauge|ruler|meter|mano|ladder|reading|thermometer|probe"
    r"|holes)?\b"
    r"|\bno (?:tape|manometer|gauge|ruler|meter|mano|reading|way to measure)\b"
)
_YEAR_SAID: Final = re.compile(
    r"'\d\d\b|\b0\d\b|\b(?:in|built|from|since|year|years|circa|back|before|after|new|installed"
    r"|made)"
    r" (?:in |on |about |around |it |up |back )*'?[0-9a-z]+"
)
_FAR: Final = 10.0
"""A value this many times the bound, or this part of it, is of something else."""
_TENS: Final = 20.0
_HALF_HOUR: Final = re.compile(r"\b(?:a )?half (?:an |a )?hour\b")
_HOUR: Final = re.compile(r"\b(?<!\d )(?:an |one |1 )?hour\b")
_CENTURY: Final = 26
"""Two-digit years up to this one are of this century."""


_DIGITS: Final = {"one": "1", "two": "2", "three": "3", "four": "4", "five": "5"}
_SPELLED_BOUND: Final = re.compile(
    r"\b((?:more than|less than|fewer than|at least|at most) )(one|two|three|four|five)\b"
)
_NO_COUNT: Final = re.compile(
    r"(?<!just )(?<!only )\b(?:the|that|this|no|another|new|old|big|small|which|other|any|each"
    r"|every) one\b"
    r"|\bones\b|\bone (?:of|in|per|each|for each|on|up|down|upstairs|downstairs)\b"
)
_DIGIT: Final = re.compile(r"[0-9]|\b(?:inches?|point|percent)\b")
_A_FEW: Final = 5.0
_PRONOUN: Final = re.compile(
    r"\bone\b(?! (?:and|point|inch|ton|percent|hundred|thousand|fifty|oh|half)\b)"
)
"""A "one" that counts or stands for something, where the bound is no count."""
_IF_THAT: Final = re.compile(r"\b(?:even )?if (?:that|anything)\b")
_NONE: Final = re.compile(r"\bnone\b|\bthere'?s no\b|\bthere is no\b|\bdoesn'?t have (?:any|one)\b")
_SINGLE: Final = re.compile(r"\b(?:single|just the one|only the one)\b")


def by_bound(text: str, question: str) -> Place | None:
    """Where an answer lies against the bound of its question; None if one of them has none.

    Args:
        text: The normalised answer, without a plain yes or no before it.
        question: The words asked.

    >>> by_bound("14 on my tape", "Is the plenum taller than 12 inches?")
    <Place.YES: 'yes'>
    >>> by_bound("in the fifties", "Was the house built after 1981?")
    <Place.NO: 'no'>
    """
    asked = _SPELLED_BOUND.sub(lambda m: m[1] + _DIGITS[m[2]], question.lower())
    if not any(letter.isdigit() for letter in asked):
        return None
    bound = _bound_of(asked)
    if bound is None:
        return None
    if _UNMEASURED.search(text):
        return Place.UNMEASURED
    worded = _by_word(text, bound)
    if worded is not None:
        return worded
    if _NONE.search(text):
        return Place.OPEN
    told = _told(text, bound)
    if told is None:
        return None
    low, high = told
    text = _IF_THAT.sub(" ", text)
    size = _OF_SIZE.search(text)
    under = size is not None and size["under"] is not None
    if not under and (framed("length", text, question) is not None or _DENIES.search(text)):
        return Place.OPEN
    return _placed(low, high, bound)


def _by_word(text: str, bound: _Bound) -> Place | None:
    if bound.by is None and any(letter.isdigit() for letter in text):
        return None
    years = bound.years
    more = _SAYS_MORE.fullmatch(text)
    less = _SAYS_LESS.fullmatch(text)
    if years:
        more, less = _SAYS_YOUNGER.fullmatch(text), _SAYS_OLDER.fullmatch(text)
    if more or less:
        return Place.YES if (more is not None) is bound.above else Place.NO
    return Place.OPEN if _SAYS_NEAR.fullmatch(text) else None


def _told(text: str, bound: _Bound) -> tuple[float, float] | None:
    """The lowest and the highest value that the text can mean, in the unit of the bound."""
    text = _A_FOOT.sub("12 inches", text)
    if not bound.unit and bound.value <= _A_FEW and bound.value == int(bound.value):
        text = _SINGLE.sub("one", text)
    else:
        text = _PRONOUN.sub(" ", text)
    text = _NO_COUNT.sub(" ", text)
    years = bound.years
    if "minute" in bound.unit_words:
        text = _HOUR.sub("60 minutes", _HALF_HOUR.sub("30 minutes", text))
    values: list[tuple[float, float]] = []
    for number in scanned(text, "yes_no").numbers:
        value = number.value
        if years:
            if number.dimension or number.unit:
                return None
            span = 9.0 if number.plural else 0.0
            if value < 100 and not number.plural and not _is_year(text, value):
                return None
            if value < 100:
                value += 2000 if value <= _CENTURY and not number.plural else 1900
            if not _YEARS[0] <= value <= _YEARS[1]:
                return None
            low, high = value, value + span
            if span and re.search(r"\bearly\b", text):
                high = value + 4
            if span and re.search(r"\blate\b", text):
                low = value + 5
            values.append((low, high))
            continue
        if bound.value != int(bound.value) and value == int(value) and not _DIGIT.search(text):
            return None
        if number.dimension and not _same_kind(number.unit, bound):
            return None
        factor = _factor(number.unit, bound.unit)
        span = 9.0 if number.plural and value >= _TENS else 0.0
        values.append((value * factor, value * factor + span))
    if not values:
        return None
    if bound.by is not None:
        return _area(values, bound) if len(values) == 2 else None
    lows, highs = [v[0] for v in values], [v[1] for v in values]
    low, high = min(lows), max(highs)
    if len(values) == 1:
        return _widened(text, low, high, bound)
    if len(values) == 2 and _RANGE.search(text):
        return low, high
    return (-float("inf"), float("inf"))


def _is_year(text: str, value: float) -> bool:
    """Whether a number below a hundred is a year ("built in 72", "08", "68")."""
    if value != int(value):
        return False
    return _YEAR_SAID.search(text) is not None or (value > _CENTURY and len(text.split()) <= _FEW)


_FEW: Final = 3


def _widened(text: str, low: float, high: float, bound: _Bound) -> tuple[float, float]:
    """A single value with what is said around it: "under 12", "about 12", "12 and change"."""
    size = _OF_SIZE.search(text)
    edge = low * 1e-6
    if size is not None and size["under"]:
        return (-float("inf"), high - edge) if size["under"] not in ("up to",) else (0.0, high)
    if (size is not None and size["over"]) or _PLUS.search(text):
        return low + (0 if size is not None and size["over"] == "at least" else edge), float("inf")
    if not bound.years and not 1 / _FAR < low / (bound.value or 1.0) < _FAR:
        return (-float("inf"), float("inf"))
    if _ROUGH.search(text) and not bound.years:
        return low - bound.value * _NEAR, high + bound.value * _NEAR
    if _ROUGH.search(text):
        return low - 2, high + 2
    return low, high


def _area(values: list[tuple[float, float]], bound: _Bound) -> tuple[float, float]:
    """A size of two sides against one of two sides, as shares of the bound."""
    said = sorted(v[0] for v in values)
    asked = sorted((bound.value, bound.by or bound.value))
    shares = [s / a for s, a in zip(said, asked, strict=True)]
    if min(shares) >= 1 and max(shares) > 1:
        return bound.value * 2, bound.value * 2
    if max(shares) <= 1:
        return bound.value * min(shares), bound.value * min(shares)
    return -float("inf"), float("inf")


def _placed(low: float, high: float, bound: _Bound) -> Place:
    inside = high < bound.value, low > bound.value
    on = low == high == bound.value
    if on:
        fits: bool | None = not bound.strict
    elif inside[1]:
        fits = bound.above
    elif inside[0]:
        fits = not bound.above
    else:
        fits = None
    if fits is None or (not fits and (bound.someone or bound.more_asked)):
        return Place.OPEN
    if fits and bound.every:
        return Place.OPEN
    return Place.YES if fits else Place.NO


_KINDS: Final = {
    "temperature": re.compile(r"\b(?:rise|temp\w*|degrees?|hot|cold|warm\w*|cool\w*|split)\b"),
    "pressure": re.compile(r"\b(?:static|pressure|drop)\b"),
    "airflow": re.compile(r"\b(?:airflow|air flow|cfm|moving)\b"),
    "heat": re.compile(r"\b(?:tons?|capacity|btu\w*)\b"),
    "length": re.compile(r"\b(?:wide|wider|tall|taller|deep|deeper|long|longer|high|thick|away)\b"),
}
"""What a bound without a unit is of, by the words of its question."""


def _same_kind(unit: str, bound: _Bound) -> bool:
    said = DIMENSION.get(unit, "")
    if bound.unit:
        return said == DIMENSION.get(bound.unit, "") or (not said and unit == bound.unit)
    kind = _KINDS.get("temperature" if said == "difference" else said)
    return kind is not None and kind.search(bound.asked) is not None


def _factor(unit: str, asked: str) -> float:
    if not unit or not asked or unit == asked:
        return 1.0
    return convert(1.0, unit, asked)
