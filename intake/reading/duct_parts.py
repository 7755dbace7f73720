"""Which number of a duct's description is what: sides, diameter, length, count, thickness."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Final

from intake.reading.counted_sizes import count_of
from intake.reading.scan import Item, Scan
from intake.reading.sizes import METRIC, Size, find_sizes, inches
from intake.reading.words import words

__all__ = [
    "LENGTH_UNITS",
    "DuctParts",
    "describes_jacket",
    "feet_of",
    "is_length",
    "is_thickness",
    "read_round_letter",
    "sorted_parts",
    "taped_around",
    "told_of_jacket",
]

LENGTH_UNITS: Final = frozenset(("ft", "yd", "m", "mi"))
_THICK: Final = 2.0


@dataclass(slots=True)
class DuctParts:
    """What the numbers of the text turned out to be."""

    sizes: list[Size]
    singles: list[Item] = field(default_factory=list)
    lengths: list[Item] = field(default_factory=list)
    counts: list[float] = field(default_factory=list)
    leftover: list[Item] = field(default_factory=list)
    counted: list[Item] = field(default_factory=list)
    count_item: Item | None = None


def feet_of(item: Item) -> float:
    """A length in feet; a bare number is in feet."""
    return inches(item, "ft") / 12.0


def sorted_parts(said: Scan) -> DuctParts:
    """Every number of the text, by what it is of the duct."""
    items = said.items
    sizes = find_sizes(items)
    inside = {id(side) for size in sizes for side in size.sides}
    parts = DuctParts(sizes)
    rest: list[Item] = []
    for i, item in enumerate(items):
        if item.kind != "num" or id(item) in inside or item.negated:
            continue
        if item.dimension not in ("", "length"):
            continue
        if is_length(items, i):
            parts.lengths.append(item)
        elif _is_counted(items, i):
            parts.counts.append(item.value)
            parts.counted.append(item)
        elif _is_over_jacket(items, i):
            continue
        elif not (is_thickness(items, i, bool(sizes)) or _is_aside(items, i)):
            rest.append(item)
    anchor = (sizes[0].first, sizes[0].last) if sizes else None
    if not sizes and rest:
        rest, diameter = _diameter_of(items, rest)
        if diameter is not None:
            parts.singles.append(diameter)
            anchor = (items.index(diameter), items.index(diameter))
        else:
            parts.singles = rest
    if anchor is not None and not parts.counts:
        counted = count_of(items, *anchor, inside)
        if counted is not None:
            parts.counts.append(float(counted[0]))
            rest = [item for item in rest if item is not counted[1]]
            parts.count_item = counted[1]
    square = any(i.means("shape.square") for i in items)
    if not parts.counts and any(
        i.means("count.multi")
        and i.text not in ("double", "dual", "both", "couple")
        and not (square and i.text.endswith("each side"))
        for i in items
    ):
        parts.counts.append(2.0)
    if sizes:
        parts.leftover = rest
    elif parts.singles and rest and parts.singles is not rest:
        parts.singles += rest
    return parts


_ABOUT_JACKET: Final = re.compile(
    r"\b(?:r ?-? ?[0-9](?:\.[0-9])?|black|silver|gr[ae]y|clear|plastic|foil|poly|white|torn"
    r"|ripped|old) jacket\b|\bjacket(?:'s| is| says| reads| has| marked| stamped)* ?r ?-? ?[0-9]"
)


def describes_jacket(text: str) -> bool:
    """Whether a jacket is named by its colour or insulation, not as where the tape went."""
    return _ABOUT_JACKET.search(text) is not None


def _is_over_jacket(items: list[Item], i: int) -> bool:
    """The outside of insulated flex, where the core is given too: "10 in core, 14 over jacket"."""
    flexible = any(item.means("material.flex") for item in items)
    if flexible and told_of_jacket(items, i):
        return True
    if _named_outside(items, i):
        return True
    core = ("place.core", "place.inside") if flexible else ("place.core",)
    if not any(item.means(*core) for item in items):
        return False
    outside = ("place.jacket", "place.over wrap", "place.outside")
    named = [k for k, item in enumerate(items) if item.means(*core, *outside)]
    first = next(k for k, item in enumerate(items) if item.kind == "num")
    nearest = (
        [k for k in named if k < i][-1:] if named[0] < first else [k for k in named if k > i][:1]
    )
    return any(items[k].means(*outside) and not items[k].means(*core) for k in nearest)


_PARTING: Final = words("and but") | {",", ";", "."}


def _named_outside(items: list[Item], i: int) -> bool:
    """ "core says 7, it's 11 over the jacket": the clause of the number names the outside alone."""
    start, end = i, i + 1
    while start and items[start - 1].text not in _PARTING:
        start -= 1
    while end < len(items) and items[end].text not in _PARTING:
        end += 1
    clause, others = items[start:end], items[:start] + items[end:]
    if sum(item.kind == "num" for item in clause) != 1:
        return False
    outside = any(item.means("place.jacket", "place.over wrap") for item in clause)
    return outside and any(item.means("place.core") for item in others)


def _is_counted(items: list[Item], i: int) -> bool:
    """ "3 runs", "qty 3"."""
    item = items[i]
    if item.unit or not item.whole or not 1 <= item.value <= 40:
        return False
    following = items[i + 1] if i + 1 < len(items) else None
    before = items[i - 1] if i else None
    if following is not None and _several_of(items, i):
        return True
    if following is not None and following.means("material.stud_bay", "material.panned_joist"):
        return any(other.means("join.by") for other in items[i + 1 :])
    if following is not None and following.means("noun.count"):
        return not (following.text == "each" or following.text == "total")
    return before is not None and before.text in ("qty", "quantity")


_MEASURES: Final = words("is measures about around are was runs like roughly maybe")


def told_of_jacket(items: list[Item], i: int) -> bool:
    """ "6 inch flex, jacket measures about 10": the larger number behind the jacket."""
    k = i - 1
    while k >= 0 and items[k].text in _MEASURES:
        k -= 1
    across = ("", "in", *METRIC)
    others = [item for item in items[: max(k, 0)] if item.kind == "num" and item.unit in across]
    return (
        k >= 0
        and items[i].unit in across
        and items[k].means("place.jacket", "place.outside")
        and any(inches(item) < inches(items[i]) for item in others)
    )


_HOSES: Final = words("hoses pipes tubes slinkies snakes worms accordions flexes ducts bays joists")


def _several_of(items: list[Item], i: int) -> bool:
    """ "3 slinky hoses, 8 inch": ducts named by what they are of, beside a size."""
    k = i + 1
    while k + 1 < len(items) and items[k].means("material."):
        if items[k].text.split()[-1] in _HOSES:
            break
        k += 1
    named = items[k].means("material.", "shape.roundish") and items[k].text.split()[-1] in _HOSES
    return named and any(
        item.kind == "num" and item.unit in ("in", "mm", "cm") for item in items[k + 1 :]
    )


def _is_aside(items: list[Item], i: int) -> bool:
    """A pronoun, an ordinal, a year: no part of a size."""
    item = items[i]
    following = items[i + 1] if i + 1 < len(items) else None
    if item.token is not None and item.token.pronoun:
        return True
    if i and items[i - 1].text == "#":
        return True
    if following is not None and following.glued and following.text in ("st", "nd", "th", "rd"):
        return True
    numbers = sum(other.kind == "num" for other in items)
    return item.unit == "" and item.whole and 1850 <= item.value <= 2035 and numbers > 1


def _diameter_of(items: list[Item], rest: list[Item]) -> tuple[list[Item], Item | None]:
    """The number that is the diameter, and the others; none if that isn't plain."""
    if len(rest) == 1:
        return [], rest[0]
    named = [item for item in rest if item.unit in ("in", "mm", "cm")]
    if len(named) != 1:
        named = [item for item in rest if _before_shape(items, item)]
    if len(named) == 1:
        return [item for item in rest if item is not named[0]], named[0]
    return rest, None


def _before_shape(items: list[Item], item: Item) -> bool:
    place = items.index(item)
    return place + 1 < len(items) and items[place + 1].means(
        "shape.round", "material.flex", "shape.roundish"
    )


def is_length(items: list[Item], i: int) -> bool:
    """Whether the number at i is a length along the duct, not a side."""
    item = items[i]
    if item.unit in LENGTH_UNITS and (
        item.value >= 3 or _near_word(items, i, "long", "length", "run")
    ):
        return not (item.unit == "m" and item.value < 1)
    following = items[i + 1].text if i + 1 < len(items) else ""
    before = items[i - 1].text if i else ""
    return item.unit in ("", "in", "cm") and (following == "long" or before == "length")


def _near_word(items: list[Item], i: int, *words: str) -> bool:
    return any(item.text in words for item in items[max(0, i - 1) : i + 3])


def is_thickness(items: list[Item], i: int, sized: bool) -> bool:
    """Whether the number at i is how thick a liner or board is, not a side."""
    item = items[i]
    if item.unit not in ("", "in", "mm") or inches(item) > _THICK + 0.05:
        return False
    around = items[max(0, i - 3) : i] + items[i + 1 : i + 3]
    about = any(
        near.means(
            "material.lined_metal",
            "material.duct_board",
            "material.wrapped",
            "material.insulated",
            "material.fiberglass",
            "side.depth",
            "place.liner",
        )
        for near in around
    )
    fraction = item.unit == "in" and inches(item) < _THICK
    return (about and (item.unit != "" or not item.whole or sized)) or (sized and fraction)


def read_round_letter(said: Scan) -> None:
    """ "12r" is 12 round."""
    for i, (one, two) in enumerate(pairwise(said.items)):
        if one.kind == "num" and two.text == "r" and two.glued:
            said.means_now(i + 1, "shape.round")


def taped_around(said: Scan, number: Item) -> bool:
    """ "25 inches around": the tape went around it."""
    items = said.items
    place = items.index(number)
    behind = items[place + 1 :]
    return (
        bool(behind)
        and behind[0].text == "around"
        and (len(behind) == 1 or behind[1].text in ("it", "the", "outside", ",", "with", "by"))
        and (bool(number.unit) or len(behind) > 1)
    )
