"""A duct's size, shape, material, count and length, as people describe it.

Every number of the text must find its part (a side, the diameter, a thickness, a count, a
length); one that finds none is asked about, so nothing is taken with a number ignored.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

from intake.reading.bounds import BELIEVABLE, believable
from intake.reading.echo import echo, figure
from intake.reading.materials import material_of
from intake.reading.numbers import something_else
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value
from intake.reading.scan import Item, Scan
from intake.reading.sizes import METRIC, Size, count_of, find_sizes, inches

__all__ = ["read_duct"]

_LENGTH_UNITS: Final = frozenset(("ft", "yd", "m", "mi"))
_THICK: Final = 2.0
_LUMBER: Final = frozenset(((2, 4), (2, 6), (2, 8), (2, 10), (2, 12)))


@dataclass(slots=True)
class _Parts:
    """What the numbers of the text turned out to be."""

    sizes: list[Size]
    singles: list[Item] = field(default_factory=list)
    lengths: list[Item] = field(default_factory=list)
    counts: list[float] = field(default_factory=list)
    leftover: list[Item] = field(default_factory=list)
    counted: list[Item] = field(default_factory=list)
    count_item: Item | None = None


def read_duct(said: Scan) -> Reading | None:
    """Read a duct; None if the text holds nothing of one."""
    items = said.items
    materials = material_of(items)
    _read_round_letter(said)
    wrong_measure = _round_by_another_measure(said)
    if wrong_measure is not None:
        return wrong_measure
    parts = _sorted_parts(said)
    sizes = [size for size in parts.sizes if not size.negated] or parts.sizes
    if len(sizes) > 1:
        return _several(said, sizes, materials)
    if sizes:
        return _sized(said, sizes[0], parts, materials)
    if parts.singles:
        return _single(said, parts, materials)
    return _no_size(said, materials)


def _base(materials: tuple[str, ...], parts: _Parts | None) -> dict[str, Value] | AskBack:
    """Material, count and length, or what to ask about them."""
    values: dict[str, Value] = {}
    known = tuple(m for m in materials if m not in ("shiny", "foreign", "mixed"))
    if len(known) > 1:
        names = " or ".join(m.replace("_", " ") for m in known)
        return AskBack(f"Which is it: {names}?", (), AskKind.AMBIGUOUS_WORD)
    if known:
        values["material"] = known[0]
    if parts is None:
        return values
    counts = {count for count in parts.counts if count != 1}
    if len(counts) > 1:
        return AskBack("How many of these ducts are there?", (), AskKind.TWO_VALUES)
    if counts:
        values["count"] = int(counts.pop())
    lengths = {round(_feet(item), 3) for item in parts.lengths}
    if len(lengths) > 1:
        return AskBack("How long is it, in feet?", (), AskKind.TWO_VALUES)
    if lengths:
        values["length_ft"] = lengths.pop()
    return values


def _feet(item: Item) -> float:
    return inches(item, "ft") / 12.0


def _sorted_parts(said: Scan) -> _Parts:
    items = said.items
    sizes = find_sizes(items)
    inside = {id(side) for size in sizes for side in size.sides}
    parts = _Parts(sizes)
    rest: list[Item] = []
    for i, item in enumerate(items):
        if item.kind != "num" or id(item) in inside or item.negated:
            continue
        if item.dimension not in ("", "length"):
            continue
        if _is_length(items, i):
            parts.lengths.append(item)
        elif _is_counted(items, i):
            parts.counts.append(item.value)
            parts.counted.append(item)
        elif _is_over_jacket(items, i):
            continue
        elif not (_is_thickness(items, i, bool(sizes)) or _is_aside(items, i)):
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
    if not parts.counts and any(
        i.means("count.multi") and i.text not in ("double", "dual", "both", "couple") for i in items
    ):
        parts.counts.append(2.0)
    if sizes:
        parts.leftover = rest
    elif parts.singles and rest and parts.singles is not rest:
        parts.singles += rest
    return parts


def _is_over_jacket(items: list[Item], i: int) -> bool:
    """The outside of insulated flex, where the core is given too: "10 in core, 14 over jacket"."""
    if not any(item.means("place.core") for item in items):
        return False
    behind = [item for item in items[i + 1 : i + 3] if item.kind == "tag"]
    before = [item for item in items[max(0, i - 3) : i] if item.kind == "tag"]
    names = ("place.jacket", "place.over wrap", "place.outside")
    if any(item.means("place.core") for item in behind[:1] or before[-1:]):
        return False
    return any(item.means(*names) for item in behind or before)


def _is_counted(items: list[Item], i: int) -> bool:
    """ "3 runs", "qty 3"."""
    item = items[i]
    if item.unit or not item.whole or not 1 <= item.value <= 40:
        return False
    following = items[i + 1] if i + 1 < len(items) else None
    before = items[i - 1] if i else None
    if following is not None and following.means("noun.count"):
        return not (following.text == "each" or following.text == "total")
    return before is not None and before.text in ("qty", "quantity")


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


def _is_length(items: list[Item], i: int) -> bool:
    item = items[i]
    if item.unit in _LENGTH_UNITS and (
        item.value >= 3 or _near_word(items, i, "long", "length", "run")
    ):
        return not (item.unit == "m" and item.value < 1)
    following = items[i + 1].text if i + 1 < len(items) else ""
    before = items[i - 1].text if i else ""
    return item.unit in ("", "in", "cm") and (following == "long" or before == "length")


def _near_word(items: list[Item], i: int, *words: str) -> bool:
    return any(item.text in words for item in items[max(0, i - 1) : i + 3])


def _is_thickness(items: list[Item], i: int, sized: bool) -> bool:
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
    return about and (item.unit != "" or not item.whole or sized) or (sized and fraction)


def _read_round_letter(said: Scan) -> None:
    """ "12r" is 12 round."""
    for one, two in zip(said.items, said.items[1:], strict=False):
        if one.kind == "num" and two.text == "r" and two.glued:
            two.meanings = ("shape.round",)


def _around(said: Scan, number: Item) -> bool:
    """ "25 inches around": the tape went around it."""
    items = said.items
    place = items.index(number)
    behind = items[place + 1 :]
    return (
        bool(number.unit and behind)
        and behind[0].text == "around"
        and (len(behind) == 1 or behind[1].text in ("it", "the", "outside", ","))
    )


def _round_by_another_measure(said: Scan) -> AskBack | None:
    numbers = [n for n in said.numbers if n.dimension in ("", "length") and n.unit != "ft"]
    if len(numbers) != 1:
        return None
    value = inches(numbers[0])
    if said.says("measure.radius"):
        reading = {"shape": "round", "diameter_in": round(2 * value, 2)}
        return AskBack(
            f"A radius of {figure(value)} in. is {figure(2 * value)} in. across. Is that the size?",
            (reading,),
            AskKind.TWO_READINGS,
        )
    if (said.says("measure.around") or _around(said, numbers[0])) and not said.says(
        "material.wrapped"
    ):
        reading = {"shape": "round", "diameter_in": round(value / 3.14159, 1)}
        return AskBack(
            f"{figure(value)} in. around is a {figure(value / 3.14159, 1)} in. round duct. Is that it?",
            (reading,),
            AskKind.TWO_READINGS,
        )
    return None


def _several(said: Scan, sizes: list[Size], materials: tuple[str, ...]) -> Reading:
    readings: list[dict[str, Value]] = []
    for size in sizes:
        if len(size.sides) >= 2:
            shape = "oval" if said.says("shape.oval") else "rect"
            pair = {"shape": shape, **_sides(size)}
            readings.append(pair)
    distinct = [r for k, r in enumerate(readings) if r not in readings[:k]]
    if len(distinct) == 1 and all(len(size.sides) == 2 for size in sizes):
        only = dict(distinct[0])
        if len(materials) == 1:
            only["material"] = materials[0]
        return AskBack(
            f"How many {echo('duct', distinct[0])} ducts are there?", (only,), AskKind.TWO_VALUES
        )
    names = " and ".join(echo("duct", r) for r in distinct)
    return AskBack(
        f"That is more than one size: {names}. Which one is meant here? One at a time, please.",
        tuple(distinct),
        AskKind.TWO_VALUES,
    )


def _unit_for(sides: list[Item]) -> str:
    """The unit that bare sides share with a side that names one."""
    named = [side.unit for side in sides if side.unit]
    if not named:
        return "in"
    last = sides[-1].unit
    if named[0] in METRIC:
        return named[0]
    if last == "ft" and len(named) == 1:
        return "ft"
    return "in"


def _sides(size: Size) -> dict[str, Value]:
    unit = _unit_for(size.sides[:2])
    return {"width_in": inches(size.sides[0], unit), "height_in": inches(size.sides[1], unit)}


def _sized(said: Scan, size: Size, parts: _Parts, materials: tuple[str, ...]) -> Reading:
    base = _base(materials, parts)
    if isinstance(base, AskBack):
        return base
    if len(size.sides) > 2 or said.says("shape.round"):
        chain = _chain(said, size, base)
        if chain is not None:
            return chain
    rounded = said.says("shape.roundish", "material.flex", "shape.round") and not said.says(
        "shape.oval"
    )
    if rounded and len(size.sides) == 2:
        counted = _count_by_diameter(said, size, base)
        if counted is not None:
            return counted
    shape = "oval" if said.says("shape.oval") else "rect"
    sides = size.sides[:2]
    if any(side.token is not None and side.token.comma == "decimal" for side in sides) and not any(
        side.unit in METRIC for side in sides
    ):
        return AskBack(
            "Is the comma a decimal point? Please give width by height in inches.",
            (),
            AskKind.TWO_READINGS,
        )
    values: dict[str, Value] = {"shape": shape, **_sides(size), **base}
    values = _ordered(values)
    if parts.leftover:
        extra = " and ".join(figure(item.value) for item in parts.leftover)
        return AskBack(
            f"I read {echo('duct', values)}, but what is the {extra}?",
            (values,),
            AskKind.TWO_READINGS,
        )
    return _checked(said, values)


def _ordered(values: dict[str, Value]) -> dict[str, Value]:
    order = ("shape", "width_in", "height_in", "diameter_in", "material", "count", "length_ft")
    return {name: values[name] for name in order if name in values}


def _count_by_diameter(said: Scan, size: Size, base: dict[str, Value]) -> Reading | None:
    """ "3 x 6 in. flex": three of six inches; "6 in. x 25 ft flex": a length."""
    one, two = size.sides
    if two.unit == "ft" and two.value >= 3 and one.unit != "ft":
        values = _ordered(
            {
                "shape": "round",
                "diameter_in": inches(one),
                **base,
                "length_ft": round(_feet(two), 3),
            }
        )
        return _checked(said, values)
    sure_round = said.says("shape.round", "material.flex")
    if (
        one.unit == ""
        and two.unit == "in"
        and one.whole
        and one.value <= 12
        and sure_round
        and "count" not in base
    ):
        values = _ordered(
            {"shape": "round", "diameter_in": inches(two), **base, "count": int(one.value)}
        )
        return _checked(said, values)
    if (
        one.unit == "in"
        and two.unit == ""
        and two.whole
        and two.value <= 12
        and sure_round
        and "count" not in base
    ):
        values = _ordered(
            {"shape": "round", "diameter_in": inches(one), **base, "count": int(two.value)}
        )
        return _checked(said, values)
    if said.says("shape.round", "material.flex"):
        readings: list[dict[str, Value]] = []
        if one.whole and one.value <= 12 and not one.unit:
            readings.append(
                _ordered(
                    {"shape": "round", "diameter_in": inches(two), **base, "count": int(one.value)}
                )
            )
        readings.append(_ordered({"shape": "rect", **_sides(size), **base}))
        return AskBack(
            f"{figure(one.value)} x {figure(two.value)} with a round duct: is that "
            f"{figure(one.value)} ducts of {figure(two.value)} in., or a size?",
            tuple(readings),
            AskKind.TWO_READINGS,
        )
    return None


def _chain(said: Scan, size: Size, base: dict[str, Value]) -> Reading | None:
    """Three or more numbers in a row."""
    sides = size.sides
    if len(sides) < 3:
        return None
    joins = {join.text if join.kind == "sym" else "x" for join in size.joins}
    if len(sides) == 3:
        third = said.items.index(sides[2])
        if joins == {"x"} and _is_thickness(said.items, third, True):
            two = Size(sides[:2], size.first, size.last)
            return _checked(said, _ordered({"shape": "rect", **_sides(two), **base}))
        if (
            sides[2].unit in _LENGTH_UNITS
            and sides[0].unit not in _LENGTH_UNITS
            and sides[2].value >= 3
        ):
            two = Size(sides[:2], size.first, size.last)
            values = {"shape": "oval" if said.says("shape.oval") else "rect", **_sides(two), **base}
            return _checked(said, _ordered({**values, "length_ft": round(_feet(sides[2]), 3)}))
        spaced = [not join.glued for join in size.joins]
        tight = [not side.glued for side in sides[1:]]
        if joins == {"x"}:
            first_apart = tight[0] and not spaced[1] and not tight[1]
            last_apart = spaced[1] and not spaced[0] and not tight[0]
            for apart, count, pair in (
                (first_apart, sides[0], sides[1:]),
                (last_apart, sides[2], sides[:2]),
            ):
                if (
                    apart
                    and count.whole
                    and not count.unit
                    and 2 <= count.value <= 8
                    and "count" not in base
                ):
                    two = Size(list(pair), size.first, size.last)
                    values = {"shape": "rect", **_sides(two), **base, "count": int(count.value)}
                    return _checked(said, _ordered(values))
    two = Size(sides[:2], size.first, size.last)
    reading = _ordered({"shape": "rect", **_sides(two), **base})
    names = " x ".join(figure(side.value) for side in sides)
    return AskBack(
        f"{names} is more than two sides. Width by height in inches, please; then the length or count.",
        (reading,),
        AskKind.TWO_READINGS,
    )


def _single(said: Scan, parts: _Parts, materials: tuple[str, ...]) -> Reading | None:
    """One number that may be a diameter."""
    base = _base(materials, parts)
    if isinstance(base, AskBack):
        return base
    singles = parts.singles
    if len(singles) > 1:
        return _loose(said, singles, base)
    item = singles[0]
    value = inches(item)
    joined = _has_open_join(said, parts)
    if something_else(said, item) and not (materials or said.says("shape.")):
        return None
    if said.says("shape.square") and not joined:
        values = _ordered({"shape": "rect", "width_in": value, "height_in": value, **base})
        return _checked(said, values)
    labelled = any(
        i.means("side.width", "side.height") and not i.means("side.depth") for i in said.items
    )
    if joined or labelled or said.says("shape.oval") or said.says("shape.rect"):
        return AskBack(
            f"I have one side, {figure(value)} in. What is the other side?",
            (),
            AskKind.MISSING_PART,
        )
    reading = _ordered({"shape": "round", "diameter_in": value, **base})
    split = _run_together(item)
    if split is not None and not said.says("shape.round"):
        values = _ordered({"shape": "rect", **split, **base})
        return AskBack(f"Did you mean {echo('duct', values)}?", (values,), AskKind.TWO_READINGS)
    if said.says("shape.round") or (
        said.says("material.flex", "material.pvc", "shape.roundish")
        and (item.unit or "flex" in materials or "pvc" in materials)
    ):
        if item.unit == "" and value > BELIEVABLE["diameter_in"][1] and value >= 75:
            metric = _ordered({"shape": "round", "diameter_in": round(value / 25.4, 2), **base})
            return AskBack(
                f"Is that {figure(value)} mm, which is {figure(value / 25.4, 1)} in.?",
                (metric,),
                AskKind.IMPLAUSIBLE,
            )
        return _checked(said, reading)
    return AskBack(
        f"Is that {figure(value)} in. round, or one side of a rectangle (then how much by how much)?",
        (reading,),
        AskKind.MISSING_PART,
    )


def _has_open_join(said: Scan, parts: _Parts) -> bool:
    """Whether a times sign stands that joins no count."""
    items = said.items
    joins = [i for i, item in enumerate(items) if item.means("join.by")]
    for item in (parts.count_item, *parts.lengths, *parts.counted):
        if item is not None:
            place = items.index(item)
            joins = [i for i in joins if i not in (place - 1, place + 1)]
    return bool(joins)


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


def _loose(said: Scan, singles: list[Item], base: dict[str, Value]) -> Reading:
    if len(singles) == 2 and not said.says("alt.or", "alt.change"):
        one, two = inches(singles[0]), inches(singles[1])
        reading = _ordered({"shape": "rect", "width_in": one, "height_in": two, **base})
        if believable("side_in", one) and believable("side_in", two):
            return AskBack(
                f"Did you mean {figure(one)} by {figure(two)} in.?",
                (reading,),
                AskKind.TWO_READINGS,
            )
    named = " and ".join(figure(inches(item)) for item in singles)
    return AskBack(
        f"I see {named}. Which is the size? Width by height, or the diameter, in inches.",
        tuple(_ordered({"shape": "round", "diameter_in": inches(s), **base}) for s in singles)
        if said.says("shape.round", "material.flex", "shape.roundish")
        else (),
        AskKind.TWO_VALUES,
    )


def _no_size(said: Scan, materials: tuple[str, ...]) -> Reading | None:
    length = any(n.dimension == "length" for n in said.numbers)
    if materials or length or said.says("vague.size", "shape.", "join.by", "alt.change", "side."):
        return AskBack(
            "What is its size? Width by height, or the diameter if it is round, in inches.",
            (),
            AskKind.MISSING_PART,
        )
    return None


def _checked(said: Scan, values: dict[str, Value]) -> Reading:
    """The values, unless no house has them."""
    odd = _oddity(said, values)
    if odd is not None:
        return odd
    return Accepted(values)


def _oddity(said: Scan, values: dict[str, Value]) -> AskBack | None:
    told = echo("duct", values)
    if values.get("shape") == "round":
        diameter = float(values["diameter_in"])  # type: ignore[arg-type]
        if not believable("diameter_in", diameter):
            return AskBack(
                f"{told}? Please check: how many inches across?", (values,), AskKind.IMPLAUSIBLE
            )
    elif "width_in" in values and "height_in" in values:
        wide, tall = float(values["width_in"]), float(values["height_in"])  # type: ignore[arg-type]
        low = (
            2.0
            if said.says("material.stud_bay", "shape.oval")
            or _is_stack(wide, tall)
            or _says_stack(said)
            else 3.0
        )
        if (wide, tall) in _LUMBER or (tall, wide) in _LUMBER:
            return AskBack(
                f"{figure(wide)}x{figure(tall)} sounds like the lumber. How wide and deep is the open bay, in inches?",
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
            flat and min(wide, tall) > 4 or max(wide, tall) / max(min(wide, tall), 0.01) > 8
        ):
            return AskBack(
                f"{told}? Please check both sides, in inches.", (values,), AskKind.IMPLAUSIBLE
            )
    if "count" in values and not believable("duct_count", float(values["count"])):  # type: ignore[arg-type]
        return AskBack(
            f"{values['count']} of them? How many such ducts?", (values,), AskKind.IMPLAUSIBLE
        )
    if "length_ft" in values and not believable("duct_length_ft", float(values["length_ft"])):  # type: ignore[arg-type]
        return AskBack(f"{told}? Please check the length.", (values,), AskKind.IMPLAUSIBLE)
    return None


def _is_stack(wide: float, tall: float) -> bool:
    return min(wide, tall) in (2.25, 3.25, 3.5) and max(wide, tall) <= 16


def _says_stack(said: Scan) -> bool:
    return bool(said.words() & {"stack", "boot", "riser", "register", "wall", "joist"})
