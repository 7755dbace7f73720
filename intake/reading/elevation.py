"""Elevations above the sea, and floor areas."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.asks import implausible, one_end, two_values
from intake.reading.length import in_feet
from intake.reading.numbers import kept, relation, spread, together, vague
from intake.reading.phrasing import bounded, multiplied
from intake.reading.result import Accepted, AskBack, AskKind, Reading
from intake.reading.scan import Scan
from intake.reading.sizes import find_sizes
from intake.reading.units import convert
from intake.reading.words import words

__all__ = ["read_area", "read_elevation"]

_LEAST_BARE: Final = 20.0
"""A bare elevation below this is more likely something else, ft."""


_OVER_ELSEWHERE: Final = re.compile(
    r"(?:ft |feet |foot |miles? |up )*(?:above|over|below) (?:the |our |my )?(?:river|valley|lake"
    r"|street|ground|road|town|city"
    r"|creek"
    r"|floor|yard|house|water table)\b|(?:ft |feet |foot |miles? |minutes? |mi )*(?:from|to|off"
    r"|inland from) (?:the )?(?:coast|beach|ocean"
    r"|sea|shore|water|city|town|highway|airport|road|street|house)\b|(?:ft |feet |miles?"
    r" )*inland\b"
)
"""Heights above, and distances from, something else than the sea's level."""


_WEATHER: Final = re.compile(
    r"\b(?:sunny|cloudy|rain(?:ing|y)?|snow(?:ing|y)?|humid|windy|degrees|outside (?:today|now))\b"
)


_PART_OF_HOUSE: Final = re.compile(
    r"\b(?:attic|roof|ceiling|chimney|ladder|deck|second floor|basement)(?:'s| is| sits)\b"
)


_ABOVE: Final = re.compile(r"(?<=[0-9]) ?(?:ft|feet|foot)? above[.! ]*$")
"""Above the sea, left unsaid."""


_TERRAIN: Final = words(
    """
    mountain mountains flat coast coastal beach hill hills valley plains foothills desert hilly
    mountainous lowland highlands plateau
    """
)


def read_elevation(said: Scan, low: float, high: float) -> Reading | None:
    """Read an elevation above the sea, ft; None if the text holds none."""
    said = together(said, hundreds=True, thousands=True)
    numbers = kept(said, "", "length")
    text = said.text
    afar = [n for n in numbers if _OVER_ELSEWHERE.match(text[n.end :].lstrip(" '"))]
    near = [n for n in numbers if n not in afar]
    numbers = near or numbers
    if numbers and _WEATHER.search(text) and not any(n.unit for n in numbers):
        return AskBack(
            "That sounds like the weather. About how many feet above sea level is it?",
            (),
            AskKind.WRONG_QUANTITY,
        )
    if (numbers and _PART_OF_HOUSE.search(text)) or (afar and not near):
        return AskBack("And above sea level: about how many feet?", (), AskKind.WRONG_QUANTITY)
    if not numbers:
        if "sea level" in text and not (
            "below" in text or "above" in text or "not" in text.split()
        ):
            return Accepted({"ft": 0.0})
        if "mile high" in text or "mile-high" in text:
            return AskBack(
                "A mile is 5,280 ft. Is that the elevation?",
                ({"ft": 5280.0},),
                AskKind.TWO_READINGS,
            )
        terrain = said.words() & _TERRAIN
        if vague(said, "size", "amount", "state") or terrain or "sea level" in text:
            return AskBack(
                "About how many feet above sea level? The town or ZIP will do to look it up.",
                (),
                AskKind.MISSING_PART,
            )
        return None
    if len(numbers) == 2 and spread(said, *numbers):
        numbers = numbers[:1]
    if len(numbers) == 2 and relation(said.items, *numbers) in ("range", "or"):
        ends = [in_feet(numbers[0], numbers[1].unit or "ft"), in_feet(numbers[1])]
        return two_values("elevation", [{"ft": feet} for feet in ends])
    if len(numbers) > 1:
        values = [in_feet(n) for n in numbers if n.value >= _LEAST_BARE]
        if values and max(values) - min(values) > 0.03 * max(values):
            return two_values("elevation", [{"ft": feet} for feet in values[:3]])
        numbers = [n for n in numbers if n.unit] or numbers
    if len(numbers) == 1:
        item = numbers[0]
        if item.unit == "" and 0 < item.value < _LEAST_BARE:
            return AskBack(
                f"{item.value:g} feet above sea level?", ({"ft": item.value},), AskKind.IMPLAUSIBLE
            )
        feet = in_feet(item)
        if item.sign < 0 or "below" in text:
            feet = -feet
        if bounded(_ABOVE.sub(" ", text.replace("below sea", " "))):
            return one_end("elevation", feet, "ft")
        if (
            item.unit == ""
            and item.token is not None
            and len(item.token.text) == 5
            and item.token.text.isdigit()
        ) and ("zip" in text or feet > high or item.token.text[0] == "0"):
            return AskBack(
                "That looks like a ZIP code. What is the elevation in feet?",
                (),
                AskKind.WRONG_QUANTITY,
            )
        if "zip" in text:
            return AskBack("What is the elevation in feet?", (), AskKind.WRONG_QUANTITY)
        if item.unit == "m" and item.token is not None and item.token.text.endswith("k"):
            return AskBack("What is the elevation in feet?", (), AskKind.TWO_READINGS)
        if low <= feet <= high:
            return Accepted({"ft": round(feet, 1)})
        return implausible(
            "elevation",
            {"ft": feet},
            [{"ft": round(feet / 3.28084, 1)}] if item.unit == "m" else [],
        )
    first, second = in_feet(numbers[0], numbers[1].unit or "ft"), in_feet(numbers[1])
    agree = abs(first - second) <= 0.03 * max(first, second)
    if agree and all(low <= feet <= high for feet in (first, second)):
        told = [in_feet(n) for n in numbers if n.unit in ("ft", "")]
        return Accepted({"ft": told[0] if told else first})
    return two_values("elevation", [{"ft": first}, {"ft": second}])


_AREA_PART: Final = re.compile(
    r"\bplus (?:the |a |an |full |finished )?(?:basement|garage|addition|attic|upstairs|loft"
    r"|porch)\b"
    r"|\b(?:upstairs|downstairs|main floor|first floor|each floor)\b"
)


def read_area(said: Scan, low: float, high: float) -> Reading | None:
    """Read a floor area, ft2; None if the text holds none."""
    said = together(said, hundreds=True, thousands=True)
    numbers = kept(said, "", "area")
    named = [n for n in numbers if n.unit]
    numbers = named or numbers
    if not numbers:
        if vague(said, "size", "amount"):
            return AskBack("About how many square feet?", (), AskKind.MISSING_PART)
        return None
    values = [round(convert(n.value, n.unit or "sqft", "sqft"), 1) for n in numbers]
    if len(values) == 1 and (multiplied(said.text) or _AREA_PART.search(said.text)):
        return AskBack("How many square feet is it in all?", (), AskKind.MISSING_PART)
    if said.says("join.by") and find_sizes(said.items) and len(values) == 2 and not named:
        product = values[0] * values[1]
        return AskBack(
            f"Is that {product:,.0f} square feet?", ({"area_ft2": product},), AskKind.TWO_READINGS
        )
    if len(values) == 1:
        if bounded(said.text):
            return one_end("area", values[0], "ft2")
        if low <= values[0] <= high:
            return Accepted({"area_ft2": values[0]})
        return implausible("area", {"area_ft2": values[0]})
    if len(values) == 2 and relation(said.items, numbers[0], numbers[1]) == "range":
        if low <= values[0] < values[1] <= high:
            return Accepted({"area_ft2_low": values[0], "area_ft2_high": values[1]})
        return implausible("area", {"area_ft2_low": values[0], "area_ft2_high": values[1]})
    return two_values("area", [{"area_ft2": v} for v in values[:4]])
