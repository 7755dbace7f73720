"""A return made of the house's framing: joist bays closed with metal, stud bays in a wall.

People name it and count the bays; nobody tapes one until asked. Until then one bay has the usual
size of the framing, held as assumed.
"""

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import Final

from engine.job.belief import Belief, Between, How, Known, OneOf
from engine.job.job import Job
from intake.interview.beliefs import Facts, Knowing, belief_of
from intake.interview.question import Context
from intake.reading.clean import normalise
from intake.reading.manner import sureness
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Sure, Value, Values

__all__ = [
    "BAYS",
    "bay_facts",
    "bay_size",
    "bays_told",
    "framing_size",
    "wants_bay_count",
    "wants_bay_size",
]

BAYS: Final[Mapping[str, tuple[Between, Between]]] = {
    "panned_joist": (
        Between(14.0, 14.5, 14.5, How.ASSUMED),
        Between(7.25, 9.25, 11.25, How.ASSUMED),
    ),
    "stud_bay": (
        Between(14.0, 14.5, 14.5, How.ASSUMED),
        Between(3.5, 3.5, 5.5, How.ASSUMED),
    ),
}
"""Clear width and depth of one bay, in.: framing 16 in. apart, 2x8 to 2x12 joists, 2x4 or 2x6
studs.

Source: dressed sizes of framing lumber, American Softwood Lumber Standard PS 20 (memory).
"""

_BAYS_UNTOLD: Final = OneOf(((1.0, 0.35), (2.0, 0.4), (3.0, 0.25)), How.ASSUMED)
"""Bays side by side, while nobody counted them. Source: common practice, no published source."""

_COUNT_WORDS: Final = {"one": 1, "a": 1, "single": 1, "two": 2, "couple": 2, "three": 3, "four": 4}
_COUNTED: Final = re.compile(
    r"(?<![\dx.])\b(?P<n>[1-6]|one|a|single|two|couple|three|four)(?: of)?"
    r" (?:them\b|those\b|(?:\w+ ){0,2}?(?:bays?|cavit(?:y|ies)|joists?|studs?|spaces?)\b)"
)
_SIZED: Final = re.compile(r"\d ?(?:x|by|×|\*|\"|in\b|inch)|\bwide\b|\bdeep\b|\btall\b")


def bays_told(found: Reading, line: str) -> Accepted | AskBack | None:
    """What a line says of bays told by their name; None if it tells a size, or none of them.

    Bays may be counted or not; a figure across is one side, and lumber tells the size.
    """
    made = read("material", line)
    material = made.values.get("choice", "") if isinstance(made, Accepted) else ""
    if material not in BAYS:
        return None
    counted = _count_of(line)
    framed = framing_size(line)
    if framed is not None:
        return replace(framed, values={**framed.values, "material": material, **counted})
    if not isinstance(found, AskBack):
        return None
    one_side = _one_side(found)
    if one_side is not None or _SIZED.search(line):
        return one_side
    numbers = re.findall(r"\d+", line)
    if len(numbers) > 1 or (numbers and not counted):
        return None
    return Accepted({"material": material, **counted}, sureness(line))


def _count_of(line: str) -> dict[str, Value]:
    counted = _COUNTED.search(normalise(line))
    if counted is None:
        return {}
    said = counted["n"]
    return {"count": int(said) if said.isdigit() else _COUNT_WORDS[said]}


def bay_size(found: Reading, line: str) -> Reading:
    """The size of one bay: two sides, or lumber and spacing; how many there are may stand by it."""
    framed = framing_size(line)
    if framed is not None:
        return replace(framed, values={**framed.values, **_count_of(line)})
    counted = _COUNTED.search(line)
    if isinstance(found, Accepted) or counted is None:
        return found
    rest = read("duct", _COUNTED.sub(" ", line).strip(" ,;"))
    if not isinstance(rest, Accepted) or "shape" not in rest.values:
        return found
    return replace(rest, values={**rest.values, **_count_of(line)})


_NARROWEST_IN: Final = 7.0
"""A lone figure from here on is a side of a bay rather than how many there are."""


def _one_side(found: AskBack) -> AskBack | None:
    """A bay is never round: a figure across is one of its sides."""
    sides = [r.get("diameter_in") for r in found.readings if r.get("material") in BAYS]
    side = sides[0] if len(sides) == 1 else None
    if not isinstance(side, int | float) or side < _NARROWEST_IN:
        return None
    return AskBack(
        f"I have one side of the bay, {side:g} in. What is the other?", (), AskKind.MISSING_PART
    )


_DRESSED_IN: Final = {"4": 3.5, "6": 5.5, "8": 7.25, "10": 9.25, "12": 11.25}
"""Depth of dressed lumber by its nominal size, in. Source: as for `BAYS`."""
_DRESSED_WIDE_IN: Final = 1.5
_LUMBER: Final = re.compile(r"(?<![\d.])2 ?(?:x|by|×) ?(?P<deep>4|6|8|10|12)(?:'?s)?(?![\d.])")
_SPACED: Final = re.compile(r"\b(?P<in>12|16|19\.2|24)\b(?! ?(?:x|by|×))")


def framing_size(line: str) -> Accepted | None:
    """A bay told by its lumber: "2x10s on 16 inch centers"; 16 in. where no spacing is told.

    >>> framing_size("2x10 joists, 16 on center").values["height_in"]
    9.25
    """
    lumber = _LUMBER.search(line)
    if lumber is None:
        return None
    spaced = _SPACED.search(_LUMBER.sub(" ", line))
    spacing_in = float(spaced["in"]) if spaced else 16.0
    values: dict[str, Value] = {
        "shape": "rect",
        "width_in": spacing_in - _DRESSED_WIDE_IN,
        "height_in": _DRESSED_IN[lumber["deep"]],
    }
    return Accepted(values, sureness(line) if spaced else Sure.HEDGED)


def bay_facts(section: str, values: Values, knowing: Knowing) -> Facts | None:
    """What bays without a size state; None if that isn't what the values are."""
    material = values.get("material")
    if "shape" in values or not isinstance(material, str) or material not in BAYS:
        return None
    key = f"{section}.0"
    wide, deep = BAYS[material]
    count = values.get("count")
    beliefs: dict[str, Belief] = {
        f"{key}.shape": Known("rect", How.ASSUMED),
        f"{key}.width_in": wide,
        f"{key}.height_in": deep,
        f"{key}.material": belief_of(f"{key}.material", material, knowing),
        f"{key}.count": (
            belief_of(f"{key}.count", count, knowing) if count is not None else _BAYS_UNTOLD
        ),
    }
    return Facts(beliefs, {section: 1}, (section,))


def _assumed(job: Job, key: str) -> bool:
    belief = job.stated(key)
    return belief is not None and belief.how is How.ASSUMED


def _of_bays(context: Context) -> bool:
    return context.job.word("return.trunks.0.material") in BAYS


def wants_bay_count(context: Context) -> bool:
    """Whether the bays are still to be counted."""
    key = "return.trunks.0.count"
    untold = context.job.stated(key) is None or _assumed(context.job, key)
    return _of_bays(context) and untold


def wants_bay_size(context: Context) -> bool:
    """Whether a bay is still to be taped."""
    return _of_bays(context) and _assumed(context.job, "return.trunks.0.width_in")
