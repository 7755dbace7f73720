"""Temperatures, differences, and pairs of return and supply."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.asks import implausible, one_end, two_values
from intake.reading.bounds import BELIEVABLE, believable
from intake.reading.numbers import kept, labels_of, relation, together, vague
from intake.reading.phrasing import bounded
from intake.reading.plain_talk import is_plain
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value, number_of
from intake.reading.scan import Item, Scan
from intake.reading.units import convert
from intake.reading.words import words

__all__ = ["read_rise_range", "read_temperature"]

_COLD: Final = 40.0
"""A bare number below this may be Celsius."""


def _degf(item: Item) -> float:
    return round(convert(item.value * (item.sign or 1), item.unit or "degf", "degf"), 2)


def _delta(item: Item) -> float:
    unit = "delta_degc" if item.unit in ("degc", "degk") else "delta_degf"
    return round(convert(item.value, unit, "delta_degf"), 2)


def read_temperature(said: Scan, low: float, high: float, question: str = "") -> Reading | None:
    """Read temperatures in degF; None if the text holds none."""
    said = together(said, hundreds=True)
    numbers = kept(said, "", "temperature")
    asked = question.lower()
    if len(numbers) > 1 and "out" not in asked:
        _leave_out(said, numbers, [n for n in numbers if _is_outdoors(said, n)])
    other = None if is_plain(said.text) else _OTHER_TEMPERATURE.search(said.text)
    if other is not None and other[0] not in asked and len(numbers) > 1:
        _leave_out(said, numbers, [n for n in numbers if _beside(said.text, other.start(), n)])
        other = None if len(numbers) == 1 else other
    if numbers and other is not None and other[0] not in asked:
        return AskBack(
            f'That is of the "{other[0]}". What is the temperature asked for, in °F?',
            (),
            AskKind.WRONG_QUANTITY,
        )
    if not numbers:
        if (
            vague(said, "heat", "size")
            or said.says("role.rise")
            or said.words()
            & {
                "room",
                "ambient",
                "outside",
                "freezing",
                "temp",
            }
        ):
            return AskBack("What is the temperature, in °F?", (), AskKind.MISSING_PART)
        return None
    unit = next((n.unit for n in reversed(numbers) if n.unit in ("degc", "degf", "degk")), "")
    if not unit and _CELSIUS.search(said.text):
        unit = "degc"
    for n in numbers:
        if n.unit in ("", "deg") and unit:
            n.unit = unit
    rise = _is_difference(said, numbers) or (
        len(numbers) == 1 and _ASKS_RISE.search(asked) is not None
    )
    if len(numbers) == 1:
        return _one(said, numbers[0], rise, low, high)
    if len(numbers) == 2:
        return _two(said, numbers[0], numbers[1], rise, low, high, asked)
    return _many(said, numbers, low, high)


_CELSIUS: Final = re.compile(r"\b(?:celsius|celcius|centigrade|in c|deg(?:rees)? c)\b")
_OTHER_TEMPERATURE: Final = re.compile(
    r"\b(?:wet bulb|wetbulb|wb|dew ?point|satur\w+|super ?heat|sub ?cool\w*|suction line|liquid"
    r" line"
    r"|discharge line|flue|stack|water heater|boiler|outdoor coil|outside coil|compressor"
    r"|(?<!on )(?<!on high )(?:high )?limit(?: switch)?|set ?point"
    r"|set (?:to|at|for|on)|(?:thermostat|stat) (?:is )?set)\b"
    r"(?!.*\b(?:actual|reads?|reading|really)\b)"
)
"""Temperatures of something else than the air or the room, and settings."""

_ASKS_RISE: Final = re.compile(
    r"\b(?:temperature|temp) (?:rise|drop|split|difference)\b|\brise (?:across|through|over|in)\b"
    r"|\bdrop across\b|\bsplit\b|\bdelta"
)
_LEAST_HEATED: Final = 85.0
"""Below this a supply warmer than its return is more likely the two swapped, degF.

Common practice, no source."""
_OUTDOORS: Final = re.compile(
    r"^ ?(?:deg(?:ree)?s? ?[cf]?)? ?(?:outside|outdoors?|out (?:here|there|today|side)|ambient)\b"
)


def _leave_out(said: Scan, numbers: list[Item], apart: list[Item]) -> None:
    """Take these numbers out of the text, unless nothing would be left."""
    if len(apart) < len(numbers):
        for number in apart:
            said.leave_out(number)
            numbers.remove(number)


_CLAUSE_ENDS: Final = re.compile(r"[,;](?=\s)|\.(?=\s|$)|\b(?:but|and)\b")


def _beside(text: str, place: int, number: Item) -> bool:
    """Whether a number stands in the clause of a place ("58 at the vent, stat's set at 72")."""
    first, last = sorted((place, number.start))
    return _CLAUSE_ENDS.search(text, first, last) is None


def _is_outdoors(said: Scan, number: Item) -> bool:
    """ "it was 95 outside, 20 degree drop inside": what the weather is."""
    return _OUTDOORS.match(said.text[number.end :]) is not None


_COMPARED: Final = words(
    """
    warmer cooler colder hotter lower dropping drops dropped rising rises rose loses losing gain
    gains change apart
    """
)
"""Words of `role.rise` that make a difference only of the number they stand at ("15 cooler")."""

_MOVED_BY: Final = re.compile(
    r"(?:^(?:it'?s |it is )?(?:up|down)|\b(?:climb(?:s|ed|ing)?"
    r"|(?:go|goes|going|went|come|comes|came|coming)(?: it)? (?:up|down)"
    r"|(?:heat|heats|heated|warm|warms|warmed|cool|cools|cooled|bring|brings|brought|knocks?"
    r"|takes?)"
    r" (?:it |the air |air )?(?:up|down|off)|falls?|fell|drop(?:s|ped|ping)?(?: it)?|ris(?:es|ing)"
    r"|rose|rais(?:es|ed|ing)(?: it)?|los(?:es|ing|t)|gain(?:s|ed|ing)?|jump(?:s|ed)?"
    r"|picks? up|picking up|adds?|adding|warmer|cooler|colder|hotter|lower|change|apart))"
    r"(?: (?:it|about|around|like|roughly|by|only|maybe|almost|nearly|another|of|is|a|the air|air"
    r"|temp|temperature|approx|some|at least))* ?$"
)
"""A movement right before its number; "to" before the number makes it where it went."""

_MOVED_BEHIND: Final = re.compile(
    r"^ ?(?:deg(?:ree)?s?(?: ?[cf]\b)?|[cf]\b|fahrenheit|celsius)?(?: or so|ish)? ?(?:of )?"
    r"(?:warmer|cooler|colder|hotter|lower|higher|apart|change|gain|loss|across the"
    r"|over the (?:coil|furnace)|off (?:it|of it|the (?:air|coil))"
    r"|through the (?:coil|furnace)|thru the (?:coil|furnace))\b"
)


def _is_difference(said: Scan, numbers: list[Item]) -> bool:
    """Whether a difference is told, not a temperature.

    "Rise", "split" and the like speak of one wherever they stand; "warmer" and "dropping" only
    beside the number ("72, warmer than usual" is 72).
    """
    for item in said.items:
        if "and change" in said.text and item.text == "change":
            continue
        if item.means("role.rise") and not set(item.text.split()) <= _COMPARED:
            return True
    first = numbers[0]
    if _MOVED_BY.search(said.text[: first.start]):
        return len(numbers) == 1 or said.says("role.rise")
    behind = _MOVED_BEHIND.match(said.text[first.end :])
    if len(numbers) == 1:
        return behind is not None
    return said.says("role.rise")


_LABELS: Final = {
    "return": ("role.return", "in", "before", "back"),
    "supply": ("role.supply", "out", "after"),
}


def _one(said: Scan, item: Item, rise: bool, low: float, high: float) -> Reading:
    if bounded(said.text):
        return one_end("temperature", _degf(item), "°F")
    if rise:
        delta = _delta(item)
        if believable("delta_degF", delta):
            return Accepted({"delta_degF": delta})
        return implausible("temperature", {"delta_degF": delta})
    degf = _degf(item)
    role = labels_of(said, [item], _LABELS)[0]
    if said.says("role.supply") and not said.says("role.return") and role == "return":
        role = "supply"
    name = f"{role}_degF" if role and said.says("role.return", "role.supply") else "degF"
    if item.unit in ("", "deg") and 0 <= degf < _COLD and name != "x":
        celsius = round(convert(item.value, "degc", "degf"), 1)
        readings: list[dict[str, Value]] = [{name: celsius}, {name: degf}]
        return AskBack(
            f"{item.value:g}: in °F, or in °C, which is {celsius:g} °F?",
            tuple(readings),
            AskKind.TWO_READINGS,
        )
    if low <= degf <= high:
        return Accepted({name: degf})
    meant = [{name: round(degf / 10, 1)}] if low <= degf / 10 <= high and degf > 300 else []
    return implausible("temperature", {name: degf}, meant)


def _pair(
    one: float, two: float, roles: list[str], low: float, high: float, asked: str = ""
) -> Reading:
    values: dict[str, Value] = {f"{roles[0]}_degF": one, f"{roles[1]}_degF": two}
    values = {name: values[name] for name in ("supply_degF", "return_degF")}
    supply, back = number_of(values["supply_degF"]), number_of(values["return_degF"])
    heating = "heat" in asked and "cool" not in asked
    if (back < supply < _LEAST_HEATED and not heating) or (heating and supply < back):
        swapped: dict[str, Value] = {"supply_degF": back, "return_degF": supply}
        return AskBack(
            f"Supply {supply:g} °F and return {back:g} °F: are the two swapped?",
            (swapped, values),
            AskKind.IMPLAUSIBLE,
        )
    if all(low <= v <= high for v in (one, two)):
        return Accepted(values)
    return implausible("temperature", values)


def _two(
    said: Scan, one: Item, two: Item, rise: bool, low: float, high: float, asked: str
) -> Reading:
    roles = labels_of(said, [one, two], _LABELS)
    first, second = _degf(one), _degf(two)
    if all(roles) and roles[0] != roles[1]:
        return _pair(first, second, roles, low, high, asked)
    if sum(map(bool, roles)) == 1 and said.says("role.return", "role.supply") and not rise:
        known = next(r for r in roles if r)
        other = "supply" if known == "return" else "return"
        guess = [r or other for r in roles]
        values: dict[str, Value] = {f"{guess[0]}_degF": first, f"{guess[1]}_degF": second}
        return AskBack(
            "Which one is the return air, which the supply?", (values,), AskKind.TWO_READINGS
        )
    kinds = labels_of(said, [one, two], {**_LABELS, "delta": ("role.rise",)})
    if sorted(kinds) in (["delta", "return"], ["delta", "supply"]):
        found: dict[str, Value] = {}
        for kind, number in zip(kinds, (one, two), strict=True):
            found[f"{kind}_degF"] = _delta(number) if kind == "delta" else _degf(number)
        side = next(found[k] for k in found if k != "delta_degF")
        if low <= number_of(side) <= high and believable(
            "delta_degF", number_of(found["delta_degF"])
        ):
            return Accepted(found)
        return implausible("temperature", found)
    if rise:
        how = relation(said.items, one, two)
        deltas = [_delta(one), _delta(two)]
        if how in ("or", "range", "list") and "from" not in said.words():
            return two_values("temperature", [{"delta_degF": d} for d in deltas])
        difference = round(abs(first - second), 1)
        return AskBack(
            f"Is the difference {difference:g} °F, from {first:g} to {second:g}?",
            ({"delta_degF": difference},),
            AskKind.TWO_READINGS,
        )
    if first == second:
        return _one(said, one, rise, low, high)
    if abs(first - second) >= 8 and not said.says("alt.or"):
        cold, warm = sorted((first, second))
        if "supply" in asked and "return" in asked and ("cool" in asked) != ("heat" in asked):
            cooling = "cool" in asked
            return _pair(
                cold,
                warm,
                ["supply", "return"] if cooling else ["return", "supply"],
                low,
                high,
                asked,
            )
        if warm < 90:
            reading: dict[str, Value] = {"return_degF": warm, "supply_degF": cold}
        else:
            reading = {"return_degF": cold, "supply_degF": warm}
        return AskBack(
            "Which one is the return air, which the supply?", (reading,), AskKind.TWO_VALUES
        )
    return two_values("temperature", [{"degF": first}, {"degF": second}])


def _many(said: Scan, numbers: list[Item], low: float, high: float) -> Reading:
    roles = labels_of(said, numbers, _LABELS)
    if len(numbers) == 3 and said.says("role.rise"):
        for k in (0, 2):
            pair = [n for j, n in enumerate(numbers) if j != k]
            difference = abs(_degf(pair[0]) - _degf(pair[1]))
            if abs(difference - numbers[k].value) < 1.0:
                pair_roles = [roles[numbers.index(n)] for n in pair]
                if all(pair_roles) and pair_roles[0] != pair_roles[1]:
                    made = _pair(_degf(pair[0]), _degf(pair[1]), pair_roles, low, high)
                    told = {"delta_degF": _delta(numbers[k])}
                    if not isinstance(made, Accepted):
                        return made
                    if not believable("delta_degF", _delta(numbers[k])):
                        return implausible("temperature", {**made.values, **told})
                    return Accepted({**made.values, **told})
    return AskBack(
        "Those are several temperatures. Please give the return and the supply,"
        " such as: return 75 supply 55.",
        tuple({"degF": _degf(n)} for n in numbers[:4]),
        AskKind.TWO_VALUES,
    )


def read_rise_range(said: Scan) -> Reading | None:
    """Read the two ends of a temperature rise range, degF; None if the text holds none."""
    said = together(said, hundreds=True)
    numbers = kept(said, "", "temperature")
    if not numbers:
        return None
    low, high = BELIEVABLE["rise_degf"]
    if len(numbers) == 1:
        return AskBack(
            f"{numbers[0].value:g} is one end. What are both, such as 35-65?",
            (),
            AskKind.MISSING_PART,
        )
    if len(numbers) > 2:
        return AskBack("Which two are the lowest and the highest rise?", (), AskKind.TWO_VALUES)
    unit = numbers[1].unit
    if numbers[0].unit == "":
        numbers[0].unit = unit
    ends = sorted(_delta(n) for n in numbers)
    values: dict[str, Value] = {"rise_low_degf": ends[0], "rise_high_degf": ends[1]}
    if not low <= ends[0] < ends[1] <= high or not 10 <= ends[1] - ends[0] <= 45:
        return implausible("rise_range", values)
    return Accepted(values)
