"""What no house has: the last look at a duct before it is taken."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.bounds import BELIEVABLE, believable
from intake.reading.duct_parts import DuctParts
from intake.reading.echo import echo, figure
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value, number_of
from intake.reading.scan import Item, Scan

__all__ = ["checked", "is_bound", "only_one_end", "ordered"]

_LUMBER: Final = frozenset(((2, 4), (2, 6), (2, 8), (2, 10), (2, 12)))


def ordered(values: dict[str, Value]) -> dict[str, Value]:
    """The values in the order in which they are echoed."""
    order = ("shape", "width_in", "height_in", "diameter_in", "material", "count", "length_ft")
    return {name: values[name] for name in order if name in values}


_BOUND_BEFORE: Final = re.compile(
    r"(?:(?<!wrap )(?<!sleeve )(?<!jacket )(?<!blanket )(?<!insulation )(?<!just )(?<!bit"
    r" )(?<!hair )(?<!little )(?<!tad )\b(?:under|over)"
    r"|\b(?:at least|at most|(?:no |not |any )?(?:more|less|fewer|bigger|smaller|larger|wider"
    r"|narrower|taller|shorter|greater) (?:than|then)|up to|max|maximum|min|minimum|north of"
    r"|exceeds?|not over|not under|limit|(?:max|min|limit)\w* (?:is|of)))"
    r"(?: (?:a|an|about|the|maybe))? ?$|[<>] ?$"
)
_BOUND_BEHIND: Final = re.compile(
    r"^ ?(?:in|inch|inches|\")?,? ?(?:or (?:bigger|larger|smaller|more|less|better|over|under|wider"
    r"|higher|lower)\b|minimum\b|maximum\b|(?:max|min)\b(?! fan)|at (?:the )?(?:least|most)\b"
    r"|and up\b"
    r"|\+(?! ?[(0-9a-z]))"
)
_STRETCHES: Final = frozenset(
    ("stick", "sticks", "joint", "joints", "section", "sections", "lengths", "pieces")
)


_FIRST_FEET: Final = re.compile(r"\b(?:first|next) (?:\d+|\w+) ?(?:ft|feet|foot|')(?=$|\W)")


def is_bound(said: Scan, sides: list[Item]) -> bool:
    """Whether a size is only one end of what it may be ("at least 20x8", "20x8 or bigger")."""
    start, end = min(s.start for s in sides), max(s.end for s in sides)
    before, behind = said.text[:start], said.text[end:]
    return _BOUND_BEFORE.search(before) is not None or _BOUND_BEHIND.match(behind) is not None


def only_one_end(said: Scan, parts: DuctParts) -> AskBack | None:
    """What to ask where the size is a bound ("at least 20x8"), or the length one of pieces."""
    sides = parts.sizes[0].sides if len(parts.sizes) == 1 else parts.singles[:1]
    if not sides:
        return None
    if is_bound(said, sides):
        told = " x ".join(figure(side.value) for side in sides)
        return AskBack(
            f"{told} is one end of it. What is the size itself, in inches?",
            (),
            AskKind.MISSING_PART,
        )
    if parts.lengths and _FIRST_FEET.search(said.text):
        return AskBack("And after that: does its size change?", (), AskKind.TWO_VALUES)
    if parts.lengths and said.words() & _STRETCHES and said.words() & {"each", "apiece", "ea"}:
        return AskBack("How many feet is it in all?", (), AskKind.MISSING_PART)
    return None


def checked(said: Scan, values: dict[str, Value]) -> Reading:
    """The values, unless no house has them."""
    odd = _oddity(said, values)
    if odd is not None:
        return odd
    return Accepted(values)


def _oddity(said: Scan, values: dict[str, Value]) -> AskBack | None:
    if values.get("shape") == "round":
        diameter = number_of(values["diameter_in"])
        if not believable("diameter_in", diameter):
            return AskBack(
                f"{echo('duct', values)}? Please check: how many inches across?",
                (values,),
                AskKind.IMPLAUSIBLE,
            )
    elif "width_in" in values and "height_in" in values:
        wide, tall = number_of(values["width_in"]), number_of(values["height_in"])
        low = (
            2.0
            if said.says("material.stud_bay", "shape.oval")
            or _is_stack(wide, tall)
            or _says_stack(said)
            else 3.0
        )
        if (wide, tall) in _LUMBER or (tall, wide) in _LUMBER:
            return AskBack(
                f"{figure(wide)}x{figure(tall)} sounds like the lumber. How wide and deep"
                " is the open bay, in inches?",
                (),
                AskKind.TWO_READINGS,
            )
        inside = all(low <= side <= BELIEVABLE["side_in"][1] for side in (wide, tall))
        flat = max(wide, tall) / max(min(wide, tall), 0.01) > BELIEVABLE["aspect"][1]
        if not inside and wide >= 75 and tall >= 75 and max(wide, tall) <= 1000:
            metric = {
                **values,
                "width_in": round(wide / 25.4, 2),
                "height_in": round(tall / 25.4, 2),
            }
            return AskBack(
                f"Is that in millimetres: {echo('duct', metric)}?", (metric,), AskKind.IMPLAUSIBLE
            )
        if not inside or (
            (flat and min(wide, tall) > 4) or max(wide, tall) / max(min(wide, tall), 0.01) > 8
        ):
            return AskBack(
                f"{echo('duct', values)}? Please check both sides, in inches.",
                (values,),
                AskKind.IMPLAUSIBLE,
            )
    if "count" in values and not believable("duct_count", number_of(values["count"])):
        return AskBack(
            f"{values['count']} of them? How many such ducts?", (values,), AskKind.IMPLAUSIBLE
        )
    if "length_ft" in values and not believable("duct_length_ft", number_of(values["length_ft"])):
        return AskBack(
            f"{echo('duct', values)}? Please check the length.", (values,), AskKind.IMPLAUSIBLE
        )
    return None


def _is_stack(wide: float, tall: float) -> bool:
    return min(wide, tall) in (2.25, 3.25, 3.5) and max(wide, tall) <= 16


def _says_stack(said: Scan) -> bool:
    return bool(said.words() & {"stack", "boot", "riser", "register", "wall", "joist"})
