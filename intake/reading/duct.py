"""A duct's size, shape, material, count and length, as people describe it.

Every number of the text must find its part (a side, the diameter, a thickness, a count, a
length); one that finds none is asked about, so nothing is taken with a number ignored.
"""

from __future__ import annotations

import re
from typing import Final

from intake.reading.bounds import BELIEVABLE
from intake.reading.duct_chain import by_diameter, of_chain, sides_of
from intake.reading.duct_checks import checked, only_one_end, ordered
from intake.reading.duct_parts import (
    DuctParts,
    describes_jacket,
    read_round_letter,
    sorted_parts,
    told_of_jacket,
)
from intake.reading.duct_runs import counted_runs
from intake.reading.duct_several import (
    base_of,
    loose,
    no_size,
    round_by_another_measure,
    several,
    several_runs,
)
from intake.reading.echo import echo, figure
from intake.reading.materials import material_of
from intake.reading.numbers import something_else
from intake.reading.owned import without_owned
from intake.reading.phrasing import dated
from intake.reading.result import AskBack, AskKind, Reading, Value
from intake.reading.scan import Item, Scan
from intake.reading.sizes import METRIC, Size, find_sizes, inches, numbers_of
from intake.reading.words import words

__all__ = ["read_duct"]

_LARGEST_BRANCH_IN: Final = 12.0
_RUNS: Final = words("runs branches takeoffs leads")
"""Ducts that are round where only their diameter is told; so are three or more of anything."""

_ONE_OF_THEM: Final = re.compile(
    r"\bthe (?:big|bigger|biggest|large|larger|small|smaller|first|second|other|main|left"
    r"|right|front"
    r"|back|long|longer|upper|lower|near|far) one(?:'s| is| was| measures)\b"
)
_YES: Final = re.compile(r"\b(?:yes|yep|yeah|right|correct|still|again)\b")
"""A size said twice over is the same one ("25x8... tape was upside down, 25x8 yes")."""
_CHANGES: Final = words(
    """reduces reducing reduced reducer reduction tapers tapering tapered necks necked shrinks
    shrinking narrows narrowing transitions transition steps stepping minus less until til"""
)
"""Words that make one size the beginning of several."""


def read_duct(said: Scan) -> Reading | None:
    """Read a duct; None if the text holds nothing of one."""
    sized = any(len(size.sides) >= 2 for size in find_sizes(said.items))
    said = without_owned(said, sized=sized)
    items = said.items
    materials = material_of(items)
    read_round_letter(said)
    wrong_measure = round_by_another_measure(said)
    if wrong_measure is not None:
        return wrong_measure
    runs = counted_runs(said)
    if len(runs) > 1 or (runs and runs[0].low < runs[0].high):
        return several_runs(said, runs, materials)
    if runs and any(item.plural for item in items):
        base = base_of(materials, None)
        if isinstance(base, dict):
            only: dict[str, Value] = {
                "shape": "round",
                "diameter_in": runs[0].diameter_in,
                "count": runs[0].low,
            }
            return checked(said, ordered({**only, **base}))
    small = len(runs) == 1 and runs[0].diameter_in <= _LARGEST_BRANCH_IN
    many = small and (runs[0].low > 2 or (bool(said.words() & _RUNS) and runs[0].low > 1))
    if many:
        base = base_of(materials, None)
        if isinstance(base, dict):
            run: dict[str, Value] = {
                "shape": "round",
                "diameter_in": runs[0].diameter_in,
                "count": runs[0].low,
            }
            return checked(said, ordered({**run, **base}))
    parts = sorted_parts(said)
    one_end = only_one_end(said, parts)
    if one_end is not None:
        return one_end
    if any(count > 1 for count in parts.counts) and _ONE_OF_THEM.search(said.text):
        return AskBack(
            "Is that the size of one of them, or of all? One at a time, please.",
            (),
            AskKind.TWO_READINGS,
        )
    sizes = [size for size in parts.sizes if not size.negated] or parts.sizes
    if len(sizes) == 2 and numbers_of(sizes[0]) == numbers_of(sizes[1]) and _YES.search(said.text):
        sizes = sizes[1:]
    if len(sizes) > 1:
        return several(said, sizes, materials)
    if sizes:
        return _sized(said, sizes[0], parts, materials)
    if parts.singles:
        return _single(said, parts, materials)
    return no_size(said, materials)


def _sized(said: Scan, size: Size, parts: DuctParts, materials: tuple[str, ...]) -> Reading:
    base = base_of(materials, parts)
    if isinstance(base, AskBack):
        return base
    if len(size.sides) > 2 or said.says("shape.round"):
        chain = of_chain(said, size, base)
        if chain is not None:
            return chain
    rounded = said.says("shape.roundish", "shape.round") or "flex" in materials
    rounded = rounded and not said.says("shape.oval") and not _no_round(said, materials)
    if rounded and len(size.sides) == 2:
        counted = by_diameter(said, size, base)
        if counted is not None:
            return counted
    if said.words() & _CHANGES:
        reading = ordered({"shape": "rect", **sides_of(size), **base})
        return AskBack(
            f"{echo('duct', reading)}, and what does it become?", (reading,), AskKind.TWO_VALUES
        )
    shape = "oval" if said.says("shape.oval") else "rect"
    sides = size.sides[:2]
    if any(_may_be_two(side) for side in sides) and not any(side.unit in METRIC for side in sides):
        return AskBack(
            "Is the comma a decimal point? Please give width by height in inches.",
            (),
            AskKind.TWO_READINGS,
        )
    values: dict[str, Value] = {"shape": shape, **sides_of(size), **base}
    values = ordered(values)
    if parts.leftover:
        extra = " and ".join(figure(item.value) for item in parts.leftover)
        return AskBack(
            f"I read {echo('duct', values)}, but what is the {extra}?",
            (values,),
            AskKind.TWO_READINGS,
        )
    return checked(said, values)


def _may_be_two(side: Item) -> bool:
    """Whether a comma may part two numbers; "12,5" is a half, since a pair is typed "12, 5"."""
    token = side.token
    return token is not None and token.comma == "decimal" and not token.text.endswith((",5", ",25"))


def _no_round(said: Scan, materials: tuple[str, ...]) -> bool:
    """Whether round ducts are spoken of only to deny them ("no flex anywhere")."""
    return said.says("material.flex") and not materials and not said.says("shape.round")


def _single(said: Scan, parts: DuctParts, materials: tuple[str, ...]) -> Reading | None:
    """One number that may be a diameter."""
    base = base_of(materials, parts)
    if isinstance(base, AskBack):
        return base
    singles = parts.singles
    if len(singles) > 1:
        return loose(said, singles, base)
    item = singles[0]
    value = inches(item)
    joined = _has_open_join(said, parts)
    if item.spelled and item.value == 1 and not (item.unit or joined or materials):
        return no_size(said, materials)
    year = item.whole and not item.unit and 1850 <= item.value <= 2035
    if year and dated(said, item):
        return None
    if something_else(said, item) and not (materials or said.says("shape.")):
        return None
    if said.says("shape.square") and said.says("shape.round"):
        return AskBack(
            f"{figure(value)} in. round, or {figure(value)} by {figure(value)}?",
            (
                ordered({"shape": "round", "diameter_in": value, **base}),
                ordered({"shape": "rect", "width_in": value, "height_in": value, **base}),
            ),
            AskKind.TWO_READINGS,
        )
    if said.says("shape.square") and not joined:
        values = ordered({"shape": "rect", "width_in": value, "height_in": value, **base})
        return checked(said, values)
    labelled = any(
        i.means("side.width", "side.height") and not i.means("side.depth") for i in said.items
    )
    if joined or labelled or said.says("shape.oval") or said.says("shape.rect"):
        return AskBack(
            f"I have one side, {figure(value)} in. What is the other side?",
            (),
            AskKind.MISSING_PART,
        )
    reading = ordered({"shape": "round", "diameter_in": value, **base})
    split = _run_together(item)
    if split is not None and not said.says("shape.round"):
        values = ordered({"shape": "rect", **split, **base})
        return AskBack(f"Did you mean {echo('duct', values)}?", (values,), AskKind.TWO_READINGS)
    jacketed = not describes_jacket(said.text) and said.says(
        "place.jacket", "place.over wrap", "place.outside"
    )
    beside = any(
        n.kind == "num" and told_of_jacket(said.items, k) for k, n in enumerate(said.items)
    )
    jacketed = jacketed and not (beside or said.says("place.core", "place.inside"))
    if "flex" in materials and jacketed:
        return AskBack(
            f"That is the jacket, {figure(value)} in. How wide is the core inside it, in inches?",
            (reading,),
            AskKind.WRONG_QUANTITY,
        )
    if (
        said.says("shape.round")
        or not {"spiral", "spiro"}.isdisjoint(said.words())
        or (item.plural and bool(parts.counts))
        or (
            said.says("material.flex", "material.pvc", "material.aluminum", "shape.roundish")
            and (item.unit or "flex" in materials or "pvc" in materials)
        )
        or (item.unit and said.says("place.core"))
    ):
        if item.unit == "" and value > BELIEVABLE["diameter_in"][1] and value >= 75:
            metric = ordered({"shape": "round", "diameter_in": round(value / 25.4, 2), **base})
            return AskBack(
                f"Is that {figure(value)} mm, which is {figure(value / 25.4, 1)} in.?",
                (metric,),
                AskKind.IMPLAUSIBLE,
            )
        return checked(said, reading)
    return AskBack(
        f"Is that {figure(value)} in. round, or one side of a rectangle"
        " (then how much by how much)?",
        (reading,),
        AskKind.MISSING_PART,
    )


def _has_open_join(said: Scan, parts: DuctParts) -> bool:
    """Whether a times sign stands beside a number and joins no count and no length."""
    items = said.items
    joins = [
        i for i, item in enumerate(items) if item.means("join.by") and _beside_number(items, i)
    ]
    for item in (parts.count_item, *parts.lengths, *parts.counted):
        if item is not None:
            place = items.index(item)
            joins = [i for i in joins if i not in (place - 1, place + 1)]
    return bool(joins)


def _beside_number(items: list[Item], i: int) -> bool:
    """ "15 by something", "x8"; not "by the water heater"."""
    following = items[i + 1] if i + 1 < len(items) else None
    if following is not None and following.kind == "num":
        return True
    if following is not None and following.text in ("the", "a", "my", "our", "that", "door"):
        return False
    return i > 0 and any(item.kind == "num" for item in items[max(0, i - 2) : i])


def _run_together(item: Item) -> dict[str, Value] | None:
    """ "20.8", "208", "2008": digits that may hide a times sign."""
    if item.unit or item.token is None or item.token.spelled:
        return None
    text = item.token.text
    for pattern in (text.split("."), text.split(",")):
        if len(pattern) == 2 and all(p.isdigit() for p in pattern):
            wide, tall = int(pattern[0]), int(pattern[1])
            if 4 <= wide <= 36 and 4 <= tall <= 36:
                return {"width_in": float(wide), "height_in": float(tall)}
    if text.isdigit() and len(text) in (3, 4):
        wide, tall = int(text[:2]), int(text[2:])
        if 6 <= wide <= 36 and 4 <= tall <= 36:
            return {"width_in": float(wide), "height_in": float(tall)}
    return None
