"""Lengths, elevations and areas."""

from __future__ import annotations

import itertools
import re
from dataclasses import replace
from typing import Final

from intake.reading.asks import implausible, one_end, two_values, wrong_quantity
from intake.reading.manner import hedged
from intake.reading.numbers import between, kept, relation, spread, together, vague
from intake.reading.owned import counts_a_part
from intake.reading.phrasing import bounded, multiplied
from intake.reading.plain_talk import is_plain, is_plain_without
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Values, number_of
from intake.reading.scan import Item, Scan
from intake.reading.sizes import find_sizes
from intake.reading.units import convert
from intake.reading.words import words

__all__ = ["in_feet", "read_length"]

_JOIST_FT: Final = 16 / 12
"""Usual spacing of joists and studs, ft (common practice)."""


_PIECES: Final = words(
    """
    section sections piece pieces joint joints stick sticks length lengths roll rolls bag bags
    runs each tiles tile sheets sheet panels panel
    """
)
"""Words that make "3 of 10 ft" a product."""

_STRETCHES: Final = words(
    "floor floors story stories storey rooms houses cars blocks doors tiles panels bays walls"
)
"""Things by which people tell how far it is."""

_ONLY_PART: Final = re.compile(
    r"\b(?:can'?t|couldn'?t|cannot|only|unable to|didn'?t)\b.*\b(?:past|see|saw|first"
    r"|reach|get|beyond|visible|of it)\b"
)

_LOST: Final = re.compile(
    r"\b(?:as far as|up to|to) (?:the|that|where)\b.*\b(?:i )?(?:lost (?:it|sight|track)|can'?t"
    r" follow)\b"
)
"""Only the first part could be followed."""
_ROLL_FT: Final = 25.0
"""Usual length of a bag of flexible duct, ft (common practice)."""


def in_feet(item: Item, unit: str = "ft") -> float:
    """A number in feet; a bare one is in `unit`."""
    return round(convert(item.value, item.unit or unit, "ft"), 4)


def read_length(said: Scan, low: float, high: float) -> Reading | None:
    """Read a length in feet; None if the text holds none."""
    said = together(said, hundreds=True)
    mixed = _FEET_THEN_SIZE.search(said.text)
    if mixed is not None:
        feet = float(mixed["feet"])
        both = (feet, round(feet + float(mixed["inches"]) / 12, 4))
        return two_values("length", [{"ft": value} for value in both])
    said = _without_other_feet(said)
    if _AT_STAT.search(said.text):
        return None
    numbers = [n for n in kept(said, "", "length") if not counts_a_part(said, n)]
    concluded = _concluded(said, numbers)
    if concluded is not None:
        return _within(said, {"ft": in_feet(concluded)}, low, high)
    odd = kept(said, "joists", "paces", "rolls")
    sized = [s for s in find_sizes(said.items) if len(s.sides) >= 2 and s.joins]
    if sized:
        return wrong_quantity("length", said.text, "area", hint="That looks like a size.")
    pieces = said.words() & _PIECES
    counted = [n for n in said.numbers if n.unit in ("", "things", "ft", "rolls")]
    one = any(n.spelled and n.value == 1 and not n.unit for n in counted)
    if (pieces or any(n.unit == "rolls" for n in counted)) and len(counted) == 2 and not one:
        product = counted[0].value * counted[1].value
        return AskBack(f"Is that {product:g} ft in all?", ({"ft": product},), AskKind.TWO_READINGS)
    if not is_plain_without(said.text, _PLAIN_PARTS) and _PART_OF.search(said.text):
        return AskBack("How many feet does that come to?", (), AskKind.MISSING_PART)
    spacings = [n for n in numbers if n.unit == "in" and n.value in _SPACINGS_IN]
    if len(odd) == 1 and odd[0].unit == "joists" and len(spacings) == len(numbers) == 1:
        return _within(said, {"ft": round(odd[0].value * spacings[0].value / 12, 4)}, low, high)
    if len(odd) == 1 and odd[0].unit == "paces" and len(numbers) == 1:
        step = in_feet(numbers[0])
        if _A_STEP.search(said.text) and _STEP_FT[0] <= step <= _STEP_FT[1]:
            return _within(said, {"ft": round(odd[0].value * step, 4)}, low, high)
    if odd and not any(n.unit for n in numbers):
        return _counted(odd[0], numbers)
    if not numbers:
        if any(item.kind == "owned" for item in said.items):
            return AskBack("And the duct itself: how many feet?", (), AskKind.MISSING_PART)
        if (
            vague(said, "size", "amount")
            or (said.numbers and said.words() & _STRETCHES)
            or odd
            or said.words() & (_PIECES | {"joists", "joist", "paces", "yard"})
        ):
            return AskBack("About how many feet is that?", (), AskKind.MISSING_PART)
        return None
    if len(numbers) == 1:
        return _one(said, numbers[0], low, high)
    if len(numbers) == 2:
        return _two(said, numbers[0], numbers[1], low, high)
    values = [{"ft": in_feet(n)} for n in numbers[:4]]
    if all(relation(said.items, a, b) == "plus" for a, b in itertools.pairwise(numbers)):
        total = round(sum(in_feet(n) for n in numbers), 4)
        if _added(said, numbers):
            return _within(said, {"ft": total}, low, high)
        return AskBack(f"Is that {total:g} ft in all?", ({"ft": total},), AskKind.TWO_READINGS)
    return two_values("length", values)


_A_STEP: Final = re.compile(
    r"\b(?:i|my|each|every|one|a|per) (?:step|pace|stride|am about|go about|do about)s?\b"
    r"|\b(?:each|apiece|per (?:step|pace|stride))\b|\b(?:steps?|strides?|paces?)"
    r" (?:is|are|of|about)\b"
)
_STEP_FT: Final = (1.5, 4.0)
"""What one step may be, ft (common practice)."""

_AT_STAT: Final = re.compile(r"\d ?(?:degrees?|f)? (?:at|on) (?:the )?(?:thermo|t-?)?stat\b")
_SHORTEST: Final = re.compile(r"\bshortest\b[^,;]*$")
_CONCLUDING: Final = re.compile(
    r"(?:\bso|\bthat'?s|\bmakes(?: it)?|\bcomes? to|\bcall it|=|\bequals|\btotal(?: of| is)?)"
    r"(?: (?:like|about|around|roughly|it'?s))* $"
)
_IN_ALL: Final = re.compile(
    r"^ ?(?:ft|feet|foot|')? ?(?:all told|in all|total|altogether|all together|overall)\b"
)


_LEAST_WHOLE: Final = 10.0
"""Feet; below this "of the two" counts."""
_OUT_OF: Final = re.compile(r"\bof (?:the|that|those|all) (?:about )?$")


def _concluded(said: Scan, numbers: list[Item]) -> Item | None:
    """The figure that the person makes of the others ("30 down the hall plus 12 up, 42 in all")."""
    if len(numbers) < 2:
        return None
    whole = len(numbers) == 2 and numbers[0].value < numbers[1].value >= _LEAST_WHOLE
    if whole and _OUT_OF.search(said.text[: numbers[1].start]):
        return numbers[1]
    last = numbers[-1]
    before, behind = said.text[: last.start], said.text[last.end :]
    if "longest" in said.text and _SHORTEST.search(before):
        return numbers[-2]
    if _CONCLUDING.search(before) or _IN_ALL.match(behind):
        parts = numbers[:-1]
        adds = abs(sum(in_feet(n) for n in parts) - in_feet(last)) < 1.0
        times = len(parts) == 2 and abs(parts[0].value * parts[1].value - last.value) < 1.0
        if adds or times or any(n.unit in ("joists", "paces") for n in said.numbers):
            return last
    return None


_OTHER_FEET: Final = re.compile(
    r"\b(?:ceilings?|ladder|my tape|tape (?:only )?(?:goes|is|runs)|tape measure|i'?m|he'?s"
    r"|arm ?span|joists?|height|head ?room|clearance|(?:room|hall(?:way)?|house|basement|door)"
    r"(?='s| is| are| only| goes| measures))"
    r"(?:'s| is| are| only goes| goes| measures)?(?: only| just| about| to| at| maybe| a)* ?"
    r"(?P<behind>\d+(?:\.\d+)?) ?(?:ft|foot|feet|')?\b(?! (?:of|run))"
    r"|(?P<before>\d+(?:\.\d+)?)[ -]?(?:ft|foot|feet|')? (?:high |tall |long |wide )?"
    r"(?:ceilings?(?! tiles?)|ladders?|tape(?! (?:says|said|reads|read|measured|shows))|tall\b"
    r"|walls?\b|doors?\b|clearance|head ?room|house\b|ranch\b|home\b|building\b)"
)
"""Feet of a ceiling, a ladder, the tape itself: no length of a duct."""


def _without_other_feet(said: Scan) -> Scan:
    spans = [
        match.span(name)
        for match in _OTHER_FEET.finditer(said.text)
        for name in ("behind", "before")
        if match[name] is not None
    ]
    if not spans:
        return said
    items = [
        replace(item, kind="owned", unit="", meanings=())
        if item.kind == "num" and any(start <= item.start < end for start, end in spans)
        else item
        for item in said.items
    ]
    return Scan(said.text, items)


def _counted(item: Item, others: list[Item]) -> AskBack:
    """Joists, paces, rolls: a length by way of a usual spacing."""
    each = {"joists": _JOIST_FT, "paces": 2.5, "rolls": _ROLL_FT}[item.unit]
    if item.unit == "rolls" and others and others[0].value >= 5:
        each = others[0].value
    feet = round(item.value * each, 2)
    return AskBack(
        f"{item.value:g} {item.unit} would be about {feet:g} ft. How many feet is it?",
        ({"ft": feet},),
        AskKind.TWO_READINGS,
    )


def _one(said: Scan, item: Item, low: float, high: float) -> Reading:
    feet = in_feet(item)
    seen = not is_plain(said.text) and _ONLY_PART.search(said.text) and not hedged(said.text)
    if seen or bounded(said.text) or _LOST.search(said.text):
        return one_end("length", feet, "ft")
    if item.sign < 0:
        return implausible("length", {"ft": -feet}, [{"ft": feet}])
    if said.says("join.by") or multiplied(said.text) or "times" in said.words():
        return AskBack("How many feet is it in all?", ({"ft": feet},), AskKind.MISSING_PART)
    half = "half" in said.words() and not _CONCLUDES.search(said.text[: item.start])
    rolls = bool(said.words() & {"roll", "rolls", "bag"})
    if (half or rolls or _MORE.search(said.text)) and not (
        item.token is not None and item.token.fraction
    ):
        return AskBack("How many feet is it in all?", ({"ft": feet},), AskKind.MISSING_PART)
    return _within(said, {"ft": feet}, low, high)


_CONCLUDES: Final = re.compile(
    r"[,;.] ?(?:so|that'?s|which is|call it)(?: (?:like|about|maybe))* $"
)
"""Before the figure that a text comes to ("half the house, so like 20 foot")."""
_MORE: Final = re.compile(r"\bplus\b(?! (?:i|i'm|im|my|it's|its|we|he|she)\b)")
_PART_OF: Final = re.compile(
    r"\b(?:\d(?:rd|th|nd)|half|third|quarter|fourth|fifth|two thirds|\d+ ?(?:%"
    r"|percent)) of (?:a |the )?"
    r"(?:about )?[0-9]|\b(?:less|minus|plus|add) [0-9]+ ?(?:%|percent)"
    r"|\d ?(?:ft|foot|feet|')? (?:minus|less|short of|shy of)\b"
    r"|\bfirst \d+ ?(?:ft|feet|foot|')? ?(?:then|and then|before|until|till)\b"
    r"|\d ?(?:ft|feet|foot|')? (?:of it )?(?:is |are )?(?:visible|exposed|showing|in view)\b"
    r"|\brest (?:is|of it|goes|disappears|hidden)\b"
    r"|\b(?:the|for the|just the) (?:first|last|other|next) \d+ ?(?:ft|feet|foot|')?(?=$|[ ,.])"
    r"|\d ?(?:ft|foot|feet|')? (?:or so )?(?:half ?way|part ?way|to the middle)\b"
)
_PLAIN_PARTS: Final = words("of minus plus")
"""The plain words that make a part of a number."""
_FEET_THEN_SIZE: Final = re.compile(
    r"(?P<feet>\d+) ?(?:ft|feet|foot|') ?(?P<inches>\d+) ?(?:in|inch|\")"
    r" (?:flex|round|pipe|metal|duct)"
)
"""Feet and a duct's size, or feet and inches ("22 ft 6 in flex")."""
_SPACINGS_IN: Final = (12.0, 16.0, 19.2, 24.0)
"""Usual spacings of joists and studs, in. (common practice)."""


def _two(said: Scan, one: Item, two: Item, low: float, high: float) -> Reading:
    if one.unit == "" and two.unit:
        one.unit = two.unit
    elif two.unit == "" and one.unit:
        two.unit = one.unit
    how = relation(said.items, one, two)
    first, second = in_feet(one), in_feet(two)
    comma = between(said.items, one, two) == [","]
    if comma and first < second <= 1.25 * first:
        how = "range"
    if how == "range" and first < second:
        if not low <= first or not second <= high:
            return implausible("length", {"ft_low": first, "ft_high": second})
        return Accepted({"ft_low": first, "ft_high": second})
    if spread(said, one, two):
        ends: Values = {"ft_low": first - second, "ft_high": first + second}
        if not low <= first - second or not first + second <= high:
            return implausible("length", ends)
        return Accepted(ends)
    if how == "plus":
        total = round(first + second, 4)
        if _added(said, [one, two]):
            return _within(said, {"ft": total}, low, high)
        return AskBack(f"Is that {total:g} ft in all?", ({"ft": total},), AskKind.TWO_READINGS)
    if first == second and how != "or":
        return AskBack(
            f"Is that {first + second:g} ft in all?",
            ({"ft": first + second},),
            AskKind.TWO_READINGS,
        )
    return two_values("length", [{"ft": first}, {"ft": second}])


def _added(said: Scan, numbers: list[Item]) -> bool:
    """Whether a sum is typed with its signs, "12 + 7 + 4", and nothing else than a unit."""
    told = {item.text for item in said.items if item.kind != "num"}
    return told == {"+"} and all(not n.unit or n.unit == numbers[-1].unit for n in numbers)


def _within(said: Scan, values: Values, low: float, high: float) -> Reading:
    del said
    feet = number_of(values["ft"])
    if low <= feet <= high:
        return Accepted(values)
    meant: list[Values] = []
    if feet > high and low <= feet / 12 <= high:
        meant = [{"ft": round(feet / 12, 2)}]
    return implausible("length", values, meant)
