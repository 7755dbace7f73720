"""Airflow: CFM, metric, CFM per ton with tons, ranges."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.asks import implausible, one_end, two_values, wrong_quantity
from intake.reading.bounds import BELIEVABLE
from intake.reading.numbers import between, kept, relation, spread, together, vague
from intake.reading.phrasing import bounded, moved, multiplied
from intake.reading.plain_talk import is_plain
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Values
from intake.reading.scan import Item, Scan
from intake.reading.units import convert

__all__ = ["read_airflow"]

_PER_TON: Final = (200.0, 600.0)


_OTHER_FLOW: Final = re.compile(
    r"\b(?:leaks?|leakage|leaking|bath(?:room)? fan|range hood|hood fan|kitchen hood|dryer|exhaust"
    r" fan"
    r"|outside air|fresh air|make ?up air|attic fan|whole house fan|ceiling fan)\b(?!.*\btotal\b)"
)


def _cfm(item: Item) -> float:
    return round(convert(item.value, item.unit or "cfm", "cfm"), 2)


def read_airflow(said: Scan, low: float, high: float) -> Reading | None:
    """Read an airflow between two believable bounds, CFM; None if the text holds none."""
    said = together(said, hundreds=True, thousands=True)
    if said.numbers and not is_plain(said.text) and _OTHER_FLOW.search(said.text):
        return AskBack(
            "That is another airflow. What does the blower move, in CFM?",
            (),
            AskKind.WRONG_QUANTITY,
        )
    tons = kept(said, "heat")
    per_ton = kept(said, "airflow_per_ton")
    values = kept(said, "", "airflow")
    named = [v for v in values if v.unit]
    product = _by_tons(said, tons, per_ton, values, low, high)
    if product is not None:
        return product
    share = kept(said, "percent")
    if share and values and not tons:
        return AskBack(
            "What does that come to, in CFM?",
            tuple({"cfm": _cfm(v)} for v in values[:2]),
            AskKind.TWO_READINGS,
        )
    if named and len(named) < len(values):
        values = _with_named(said, named, values)
    if not values:
        if vague(said, "size", "amount", "state") or said.words() & {
            "speed",
            "blast",
            "tap",
            "same",
            "strong",
            "hard",
        }:
            return AskBack("How much is it in CFM?", (), AskKind.MISSING_PART)
        return None
    values = _result_of(said, values)
    if said.says("alt.change") or (len(values) == 2 and moved(said.text)):
        return two_values("airflow", [{"cfm": _cfm(v)} for v in values])
    if len(values) == 1:
        if _joins(said.items) and "=" not in said.text:
            return AskBack("What is the airflow in CFM?", (), AskKind.MISSING_PART)
        return _one(said, values[0], low, high)
    if len(values) == 2:
        return _two(said, values[0], values[1], low, high)
    return two_values("airflow", [{"cfm": _cfm(v)} for v in values[:4]])


_SO: Final = re.compile(r"\b(?:so|that'?s|call it|makes it)(?: (?:it'?s|about|like))* $")


def _result_of(said: Scan, values: list[Item]) -> list[Item]:
    """ "3.5 x 400 = 1400": the number behind the equals sign, if the sum is right."""
    last = values[-1]
    concluded = _SO.search(said.text[: last.start]) is not None
    if len(values) > 2 and concluded and any(v.value == last.value for v in values[:-1]):
        return [last]
    texts = [item.text for item in said.items]
    if len(values) == 3 and "=" in texts:
        last = values[2]
        right = abs(values[0].value * values[1].value - last.value) <= 0.01 * last.value
        if right and texts.index("=") == said.items.index(last) - 1:
            return [last]
    return values


def _with_named(said: Scan, named: list[Item], values: list[Item]) -> list[Item]:
    """Bare numbers next to one with a unit share it if they are related, else are dropped."""
    unit = named[-1].unit
    found = []
    for k, value in enumerate(values):
        if value.unit:
            found.append(value)
            continue
        neighbours = [v for v in values[max(0, k - 1) : k + 2] if v.unit]
        if any(
            relation(said.items, *sorted((value, v), key=lambda i: i.start))
            in ("range", "or", "list")
            for v in neighbours
        ):
            value.unit = unit
            found.append(value)
        elif value.value >= 100:
            found.append(value)
    return found


def _by_tons(
    said: Scan, tons: list[Item], per_ton: list[Item], values: list[Item], low: float, high: float
) -> Reading | None:
    tons = [t for t in tons if t.unit == "ton"]
    rates = [p.value for p in per_ton]
    if len(set(rates)) > 1 or len({t.value for t in tons}) > 1:
        return AskBack("Which one: how many tons, at how many CFM per ton?", (), AskKind.TWO_VALUES)
    if not rates and tons:
        marked = said.words() & {"@", "at", "x", "times", "*", "per", "ton", "by", "each", "apiece"}
        bare = [v for v in values if not v.unit and _PER_TON[0] <= v.value <= _PER_TON[1]]
        if len(bare) == 1 and len(values) == 1 and marked:
            rates, values = [bare[0].value], []
    if not rates and len(tons) == 1 and len(values) == 1 and said.says("join.by"):
        rate = _cfm(values[0])
        if values[0].unit and _PER_TON[0] <= rate < 200 * tons[0].value:
            rates, values = [rate], []
    if rates and not tons:
        bare = [
            v
            for v in values
            if not v.unit and 1 <= v.value <= 6 and v.value * 2 == int(v.value * 2)
        ]
        if len(bare) == 1 and len(values) == 1:
            cfm = round(bare[0].value * rates[0], 2)
            if _IT_IS.search(said.text[: bare[0].start]):
                return _within({"cfm": cfm}, cfm, low, high)
            return AskBack(
                f"Is that {bare[0].value:g} tons at {rates[0]:g} CFM per ton,"
                f" {bare[0].value * rates[0]:,.0f} CFM?",
                ({"cfm": bare[0].value * rates[0]},),
                AskKind.TWO_READINGS,
            )
        if not [v for v in values if v.unit]:
            return AskBack(
                f"{rates[0]:g} CFM per ton, and how many tons?", (), AskKind.MISSING_PART
            )
        return None
    if rates and tons:
        cfm = round(tons[0].value * rates[0], 2)
        others = [v for v in values if v.unit or v.value >= 100]
        if any(abs(_cfm(v) - cfm) > 1 for v in others):
            return two_values("airflow", [{"cfm": cfm}, *({"cfm": _cfm(v)} for v in others)])
        return _within({"cfm": cfm}, cfm, low, high)
    short = [v for v in values if not v.unit and _PER_TON[0] <= v.value <= _PER_TON[1]]
    if tons and len(short) == 1 and len(values) == 1 and short[0].value < 200 * tons[0].value:
        cfm = round(tons[0].value * short[0].value, 2)
        return AskBack(
            f"Is that {short[0].value:g} CFM per ton, {cfm:,.0f} CFM in all?",
            ({"cfm": cfm}, {"cfm": short[0].value}),
            AskKind.TWO_READINGS,
        )
    if tons and not values:
        tons_value = tons[0].value
        return wrong_quantity(
            "airflow",
            said.text,
            "heat",
            [{"cfm": 400 * tons_value}],
            f"{tons_value:g} tons at the usual 400 CFM per ton would be {400 * tons_value:,.0f}.",
        )
    return None


_IT_IS: Final = re.compile(
    r"\b(?:it'?s|this is|this one is|that'?s|we have|we'?ve got|i have|unit is|unit'?s|got|with)"
    r" (?:about )?an? $"
)
"""Before tons without their name ("350 per ton and it's a two and a half")."""


def _joins(items: list[Item]) -> bool:
    """Whether a times sign is said; "by the flow grid" is none."""
    return any(
        item.means("join.by")
        and not (item.text == "by" and not (items[k + 1 :] and items[k + 1].kind == "num"))
        for k, item in enumerate(items)
    )


def _one(said: Scan, item: Item, low: float, high: float) -> Reading:
    cfm = _cfm(item)
    if multiplied(said.text):
        return AskBack("What is it in all, in CFM?", ({"cfm": cfm},), AskKind.MISSING_PART)
    if bounded(said.text):
        return one_end("airflow", cfm, "CFM")
    if item.sign < 0:
        return implausible("airflow", {"cfm": -cfm}, [{"cfm": cfm}])
    if item.token is not None and item.token.comma == "decimal":
        return implausible("airflow", {"cfm": cfm}, [{"cfm": round(cfm * 1000, 2)}])
    return _within({"cfm": cfm}, cfm, low, high)


def _two(said: Scan, one: Item, two: Item, low: float, high: float) -> Reading:
    how = relation(said.items, one, two)
    if how in ("range", "or") and _shares_hundred(said, one, two):
        one.value *= 100
    first, second = _cfm(one), _cfm(two)
    if spread(said, one, two):
        ends: Values = {"cfm_low": first - second, "cfm_high": first + second}
        if not low <= first - second or not first + second <= high:
            return implausible("airflow", ends)
        return Accepted(ends)
    if multiplied(said.text):
        return AskBack("What is it in all, in CFM?", (), AskKind.MISSING_PART)
    if how == "range" and first < second:
        if first < second / 20 or not low <= first <= high or not low <= second <= high:
            return implausible("airflow", {"cfm_low": first, "cfm_high": second})
        return Accepted({"cfm_low": first, "cfm_high": second})
    if first == second and how == "or":
        return _within({"cfm": first}, first, low, high)
    words = between(said.items, one, two)
    if words in (["x"], ["*"], ["times"]):
        tons, rate = sorted((one.value, two.value))
        if tons <= 6 and _PER_TON[0] <= rate <= _PER_TON[1]:
            return AskBack(
                f"Is that {tons:g} tons at {rate:g} CFM per ton, {tons * rate:,.0f} CFM?",
                ({"cfm": tons * rate},),
                AskKind.TWO_READINGS,
            )
        return wrong_quantity("airflow", said.text, "length")
    return two_values("airflow", [{"cfm": first}, {"cfm": second}])


def _shares_hundred(said: Scan, one: Item, two: Item) -> bool:
    """ "eleven to twelve hundred": both are in hundreds."""
    own_unit = one.unit and one.end - one.start > len(one.text)
    named = "hundred" in said.text[two.start : two.end] and not own_unit
    return named and one.value < 100 and 0.3 * two.value < 100 * one.value < 3 * two.value


def _within(values: Values, cfm: float, low: float, high: float) -> Reading:
    if low <= cfm <= high:
        return Accepted(values)
    meant = [{"cfm": round(cfm * f, 2)} for f in (100, 1000, 10, 0.1) if low <= cfm * f <= high]
    return implausible("airflow", values, meant[:2] if "cfm" in values else ())


def default_bounds() -> tuple[float, float]:
    """Believable CFM where the caller knows no better."""
    return BELIEVABLE["cfm"]
