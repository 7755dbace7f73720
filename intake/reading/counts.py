"""Whole numbers, years and percentages."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.asks import implausible, one_end, two_values
from intake.reading.manner import cant_say
from intake.reading.numbers import bounded, kept, relation, together, vague
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value
from intake.reading.scan import Scan

__all__ = ["read_count", "read_percent", "read_year"]

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
    if len(set(values)) == 1:
        return _whole(values[0], low, high)
    for k, value in enumerate(values):
        rest = values[:k] + values[k + 1 :]
        if len(rest) > 1 and value == sum(rest):
            return _whole(value, low, high)
    if said.says("alt.or"):
        return two_values("count", [{"count": int(v)} for v in values[:3]])
    total = sum(values)
    readings: list[dict[str, Value]] = [{"count": int(v)} for v in (total, *values[:3])]
    return AskBack(f"Is that {total:g} in all?", tuple(readings), AskKind.TWO_VALUES)


def _whole(value: float, low: float, high: float) -> Reading:
    if low <= value <= high:
        return Accepted({"count": int(value)})
    return implausible("count", {"count": int(value) if value < 1e9 else value})


def read_year(said: Scan, low: float, high: float) -> Reading | None:
    """Read a year; None if the text holds none."""
    said = together(said, hundreds=True)
    numbers = kept(said, "", "time")
    years = [n for n in numbers if n.unit == ""]
    for n in years:
        if n.plural and n.whole and n.value % 10 == 0 and 0 <= n.value < 100 and len(years) == 1:
            first = n.value + (1900 if n.value > 35 else 2000)
            return _in_decade(said.text, first, low, high)
    full = [n for n in years if n.whole and n.value >= 1000]
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


def read_percent(said: Scan, low: float, high: float) -> Reading | None:
    """Read a percentage; None if the text holds none."""
    numbers = kept(said, "percent") or kept(said, "")
    words = said.words()
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
