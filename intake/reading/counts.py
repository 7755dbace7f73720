"""Whole numbers, years and percentages."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.asks import implausible, one_end, two_values
from intake.reading.manner import cant_say
from intake.reading.numbers import kept, relation, together, vague
from intake.reading.phrasing import bounded, multiplied
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value, number_of
from intake.reading.scan import Item, Scan

__all__ = ["read_count", "read_percent", "read_year"]

_WHOLE: Final = {
    word: n for n, word in enumerate(("zero", "one", "two", "three", "four", "five", "six"))
} | {str(n): n for n in range(1, 41)}
_CONCLUDED: Final = re.compile(
    r"(?:\bso|=|\b(?:that )?makes|\bthat's|\btotal(?: of)?|\bin all)[ :]*(?:just |only )?"
    r"(\d+|one|two|three|four|five|six)(?: (?:total|in all|altogether|all told))?[.! ]*$"
)
_NONE = frozenset(["none", "zero", "nothing", "nada", "zilch"])


def read_count(said: Scan, low: float, high: float) -> Reading | None:
    """Read how many; None if the text doesn't say."""
    numbers = [n for n in said.numbers if n.dimension in ("", "joists", "rolls") and not n.negated]
    pronouns = [n for n in numbers if n.token is not None and n.token.pronoun]
    numbers = [n for n in numbers if n not in pronouns]
    if not numbers:
        words = said.words()
        if said.text.startswith(("no ", "not ")) and cant_say(said.text):
            return None
        if words & _NONE or said.text.startswith(
            ("no ", "there are no", "there aren't any", "there isn't", "not any", "not a ")
        ):
            return _whole(0.0, low, high)
        if pronouns and len(pronouns) == 1 and words & {"just", "only", "single"}:
            return _whole(1.0, low, high)
        if said.says("count.single") or words & {"once", "alone"}:
            return _whole(1.0, low, high)
        if words & {"couple", "few", "several"}:
            return AskBack("How many exactly?", (), AskKind.MISSING_PART)
        if said.says("count.multi"):
            return _whole(2.0, low, high)
        if vague(said, "size", "amount"):
            return AskBack("How many?", (), AskKind.MISSING_PART)
        return None
    if len(numbers) == 1 and multiplied(said.text):
        return AskBack("How many is that in all?", (), AskKind.MISSING_PART)
    if len(numbers) == 1 and pronouns and numbers[0].value == 1 and numbers[0].spelled:
        together_ = 1 + len(pronouns)
        return AskBack(f"Is that {together_} in all?", ({"count": together_},), AskKind.TWO_VALUES)
    if len(numbers) == 1:
        if bounded(said.text):
            return one_end("count", numbers[0].value, "")
        if not numbers[0].whole or numbers[0].sign < 0:
            return implausible("count", {"count": numbers[0].value})
        return _whole(numbers[0].value, low, high)
    if len(numbers) == 2:
        one, two = numbers
        how = relation(said.items, one, two)
        if how == "range" and one.whole and two.whole and low <= one.value < two.value <= high:
            return Accepted({"count_low": int(one.value), "count_high": int(two.value)})
    values = [n.value for n in numbers]
    if len(set(values)) == 1 and _SAME_AGAIN.search(said.text):
        return _whole(values[0], low, high)
    for k, value in enumerate(values):
        rest = values[:k] + values[k + 1 :]
        if len(rest) > 1 and value == sum(rest):
            return _whole(value, low, high)
    if said.says("alt.or"):
        return two_values("count", [{"count": int(v)} for v in values[:3]])
    concluded = _CONCLUDED.search(said.text)
    if concluded is not None and values[-1] == float(_WHOLE.get(concluded[1], 0)):
        return _whole(values[-1], low, high)
    total = sum(values)
    readings: list[dict[str, Value]] = [{"count": int(v)} for v in (total, *values[:3])]
    return AskBack(f"Is that {total:g} in all?", tuple(readings), AskKind.TWO_VALUES)


_SAME_AGAIN: Final = re.compile(
    r"\b(?:so|total|that's|thats|equals|i said|yes|yeah|counted|altogether|in all|or)\b|="
    r"|^\W*(\w+)\W+\1\W*$"
)
"""The same number twice is one value only where it is said again, not added up ("2 and 2")."""


def _whole(value: float, low: float, high: float) -> Reading:
    if low <= value <= high:
        return Accepted({"count": int(value)})
    return implausible("count", {"count": int(value) if value < 1e9 else value})


_EITHER_CENTURY: Final = 20
"""The twenties were a hundred years ago and are today; later decades are of the last century."""


def read_year(said: Scan, low: float, high: float) -> Reading | None:
    """Read a year; None if the text holds none."""
    said = together(said, hundreds=True)
    numbers = kept(said, "", "time")
    years = [n for n in numbers if n.unit == ""]
    decades = [n for n in years if n.plural and n.whole and n.value % 10 == 0]
    if len(decades) == len(years) == 2:
        return _two_decades(said, decades[0], decades[1], low, high)
    for n in years:
        if n.plural and n.whole and n.value % 10 == 0 and 0 <= n.value < 100 and len(years) == 1:
            if n.value == _EITHER_CENTURY:
                return AskBack("The 1920s, or after 2020?", (), AskKind.MISSING_PART)
            first = n.value + (1900 if n.value > _EITHER_CENTURY else 2000)
            return _in_decade(said.text, first, low, high)
    full = [n for n in years if n.whole and n.value >= 1000]
    if len(full) == 1 and _END_OF_YEARS.search(said.text[: full[0].start]):
        return AskBack(
            f"That is one end, {full[0].value:.0f}. About which year is it?",
            (),
            AskKind.MISSING_PART,
        )
    if len(full) == 1 and _NOT_BUILT.search(said.text) and not _BUILT.search(said.text):
        return AskBack(
            f"Is {full[0].value:.0f} the year asked for?",
            ({"year": int(full[0].value)},),
            AskKind.TWO_READINGS,
        )
    short = [n for n in years if n.whole and 0 <= n.value <= 99 and n not in full]
    if len(full) == 1 and len(short) == 1 and relation(said.items, full[0], short[0]) == "or":
        second = full[0].value - full[0].value % 100 + short[0].value
        return two_values("year", [{"year": int(full[0].value)}, {"year": int(second)}])
    if len(full) == 1:
        if bounded(said.text.replace("+", " ")):
            return one_end("year", full[0].value, "").__class__(
                f"Is {full[0].value:.0f} the year?",
                ({"year": int(full[0].value)},),
                AskKind.MISSING_PART,
            )
        if full[0].plural:
            return _in_decade(said.text, full[0].value, low, high)
        if low <= full[0].value <= high:
            return Accepted({"year": int(full[0].value)})
        return implausible("year", {"year": int(full[0].value)})
    if (
        len(full) == 2
        and relation(said.items, full[0], full[1]) == "range"
        and low <= full[0].value < full[1].value <= high
    ):
        return Accepted({"year_low": int(full[0].value), "year_high": int(full[1].value)})
    if len(full) > 1:
        return two_values("year", [{"year": int(n.value)} for n in full[:3]])
    if len(years) == 1 and years[0].whole and 0 <= years[0].value <= 99:
        century = 1900 if years[0].value > 35 else 2000
        year = int(century + years[0].value)
        return AskBack(f"Is that {year}?", ({"year": year},), AskKind.TWO_READINGS)
    if (
        numbers
        or vague(said, "size", "amount")
        or said.words() & {"old", "new", "newer", "older", "ago", "war", "postwar", "prewar"}
    ):
        return AskBack("About which year?", (), AskKind.MISSING_PART)
    return None


_END_OF_YEARS: Final = re.compile(
    r"\b(?:before|after|pre|post|since|prior to|earlier than|later than|newer than|older than"
    r"|no later than|no earlier than)[ -]?(?:about |around )?$"
)
_NOT_BUILT: Final = re.compile(
    r"\b(?:(?:we|i|they) (?:bought|moved|got it)|bought it|moved in|remodel\w*|renovat\w*|redone"
    r"|redid"
    r"|addition|added on|last owner|sold)\b"
)
_BUILT: Final = re.compile(r"\b(?:built|new|installed|original|made|put in|manufactured|dated)\b")


def _two_decades(said: Scan, one: Item, two: Item, low: float, high: float) -> Reading:
    """ "late 90s, early 2000s", "70s or 80s": from the first to the second."""
    ends: list[Value] = []
    for text, item in ((said.text[: one.end], one), (said.text[one.end :], two)):
        century = 0 if item.value >= 1000 else 1900 if item.value > _EITHER_CENTURY else 2000
        found = _in_decade(text, item.value + century, low, high)
        if not isinstance(found, Accepted):
            return found
        ends += [found.values["year_low"], found.values["year_high"]]
    years = [int(number_of(year)) for year in ends]
    if years[0] < years[2]:
        return Accepted({"year_low": years[0], "year_high": years[3]})
    return two_values("year", [{"year_low": years[0], "year_high": years[1]}])


_EARLY: Final = re.compile(r"\b(?:early|beginning of|start of|first (?:half|part) of)\b")
_MIDDLE: Final = re.compile(r"\b(?:mid|middle|midst)\b")
_LATE: Final = re.compile(r"\b(?:late|later|end of|tail end of|last (?:half|part) of)\b")


def _in_decade(text: str, first: float, low: float, high: float) -> Reading:
    """ "the 70s", "early 1980s", "late fifties"; 1900s and 2000s may be the century."""
    start, end = int(first), int(first) + 9
    if start % 100 == 0 and start >= 1900 and not _MIDDLE.search(text):
        century = {"year_low": start, "year_high": min(start + 99, int(high))}
        if not (_EARLY.search(text) or start == 2000):
            return AskBack(
                f"About which year? The {start}s are a century.", (century,), AskKind.MISSING_PART
            )
    if _EARLY.search(text):
        end = start + 3
    elif _MIDDLE.search(text):
        start, end = start + 4, start + 6
    elif _LATE.search(text):
        start += 7
    if low <= start < end <= high + 9:
        return Accepted({"year_low": start, "year_high": min(end, int(high))})
    return implausible("year", {"year": start})


_OTHER_UNIT: Final = re.compile(
    r"\d ?(?:ft|feet|foot|minutes?|min|hours?|hrs?|years?|yrs?|inch|inches|cfm|degrees?|deg"
    r"|dollars)\b"
)


def _one_in(said: Scan, one: Item, two: Item) -> float | None:
    """ "one in three", "3 out of 10": a share in per cent, or None."""
    between = said.text[one.end : two.start].strip()
    part = between in ("in", "out of", "of", "of the", "out of the", "in every", "of every")
    if part and one.whole and two.whole and 0 <= one.value <= two.value <= 40 and two.value > 0:
        return round(100 * one.value / two.value, 4)
    return None


def read_percent(said: Scan, low: float, high: float) -> Reading | None:
    """Read a percentage; None if the text holds none."""
    numbers = kept(said, "percent", "")
    if len(numbers) != 2 or relation(said.items, *numbers) not in ("range", "or"):
        numbers = kept(said, "percent") or kept(said, "")
    words = said.words()
    if numbers and _OTHER_UNIT.search(said.text):
        return AskBack("What share is that, in per cent?", (), AskKind.WRONG_QUANTITY)
    if len(numbers) == 2 and (share := _one_in(said, *numbers)) is not None:
        return Accepted({"percent": share})
    if not numbers:
        if words & {"all", "everything", "entirely", "whole"} and "not" not in words:
            return Accepted({"percent": 100.0})
        if words & {"none", "nothing"}:
            return Accepted({"percent": 0.0})
        if vague(said, "size", "amount") or words & {"most", "half"}:
            return AskBack("About what share, in per cent?", (), AskKind.MISSING_PART)
        return None
    values = [
        n.value * 100
        if n.token is not None and n.token.fraction and not n.unit and n.value < 1
        else n.value
        for n in numbers
    ]
    if len(values) == 1:
        if bounded(said.text):
            return one_end("percent", values[0], "%")
        if numbers[0].unit == "" and 0 < values[0] < 1:
            return AskBack(
                f"Is that {values[0] * 100:g} %?",
                ({"percent": values[0] * 100},),
                AskKind.TWO_READINGS,
            )
        if low <= values[0] <= high and numbers[0].sign >= 0:
            return Accepted({"percent": values[0]})
        return implausible("percent", {"percent": values[0]})
    if (
        len(values) == 2
        and relation(said.items, numbers[0], numbers[1]) == "range"
        and low <= values[0] < values[1] <= high
    ):
        return Accepted({"percent_low": values[0], "percent_high": values[1]})
    return two_values("percent", [{"percent": v} for v in values[:3]])
