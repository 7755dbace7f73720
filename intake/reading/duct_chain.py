"""Two or more numbers joined by times signs: sides, a count, a thickness or a length."""

from __future__ import annotations

from intake.reading.duct_checks import checked, ordered
from intake.reading.duct_parts import LENGTH_UNITS, feet_of, is_thickness
from intake.reading.echo import figure
from intake.reading.result import AskBack, AskKind, Reading, Value
from intake.reading.scan import Item, Scan
from intake.reading.sizes import METRIC, Size, inches

__all__ = ["by_diameter", "of_chain", "sides_of"]


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


def sides_of(size: Size) -> dict[str, Value]:
    """Width and height of a size, in inches."""
    unit = _unit_for(size.sides[:2])
    return {"width_in": inches(size.sides[0], unit), "height_in": inches(size.sides[1], unit)}


def by_diameter(said: Scan, size: Size, base: dict[str, Value]) -> Reading | None:
    """ "3 x 6 in. flex": three of six inches; "6 in. x 25 ft flex": a length."""
    one, two = size.sides
    if two.unit == "ft" and two.value >= 3 and one.unit != "ft":
        values = ordered(
            {
                "shape": "round",
                "diameter_in": inches(one),
                **base,
                "length_ft": round(feet_of(two), 3),
            }
        )
        return checked(said, values)
    sure_round = said.says("shape.round", "material.flex")
    if (
        one.unit == ""
        and two.unit == "in"
        and one.whole
        and one.value <= 12
        and sure_round
        and "count" not in base
    ):
        values = ordered(
            {"shape": "round", "diameter_in": inches(two), **base, "count": int(one.value)}
        )
        return checked(said, values)
    if (
        one.unit == "in"
        and two.unit == ""
        and two.whole
        and two.value <= 12
        and sure_round
        and "count" not in base
    ):
        values = ordered(
            {"shape": "round", "diameter_in": inches(one), **base, "count": int(two.value)}
        )
        return checked(said, values)
    pieces = two.unit == "in" and one.unit == "" and one.whole and one.value <= 8
    if said.says("shape.round", "material.flex") or pieces:
        readings: list[dict[str, Value]] = []
        if one.whole and one.value <= 12 and not one.unit:
            readings.append(
                ordered(
                    {"shape": "round", "diameter_in": inches(two), **base, "count": int(one.value)}
                )
            )
        readings.append(ordered({"shape": "rect", **sides_of(size), **base}))
        return AskBack(
            f"{figure(one.value)} x {figure(two.value)} with a round duct: is that "
            f"{figure(one.value)} ducts of {figure(two.value)} in., or a size?",
            tuple(readings),
            AskKind.TWO_READINGS,
        )
    return None


def of_chain(said: Scan, size: Size, base: dict[str, Value]) -> Reading | None:
    """Three or more numbers in a row."""
    sides = size.sides
    if len(sides) < 3:
        return None
    joins = {join.text if join.kind == "sym" else "x" for join in size.joins}
    if len(sides) == 3:
        third = said.items.index(sides[2])
        if joins == {"x"} and is_thickness(said.items, third, True):
            two = Size(sides[:2], size.first, size.last)
            return checked(said, ordered({"shape": "rect", **sides_of(two), **base}))
        following = said.items[third + 1].text if third + 1 < len(said.items) else ""
        if following == "long" and not sides[2].unit and sides[2].value >= 3:
            sides[2].unit = "ft"
        if (
            sides[2].unit in LENGTH_UNITS
            and (sides[0].unit not in LENGTH_UNITS or sides[1].unit == "in")
            and sides[2].value >= 3
        ):
            two = Size(sides[:2], size.first, size.last)
            values = {
                "shape": "oval" if said.says("shape.oval") else "rect",
                **sides_of(two),
                **base,
            }
            return checked(said, ordered({**values, "length_ft": round(feet_of(sides[2]), 3)}))
        spaced = [not join.glued for join in size.joins]
        tight = [not side.glued for side in sides[1:]]
        if joins == {"x"}:
            first_apart = tight[0] and not spaced[1] and not tight[1]
            mixed = size.joins[0].text != size.joins[1].text and size.joins[1].text in ("x", "*")
            last_apart = spaced[1] and (
                (not spaced[0] and not tight[0]) or (mixed and sides[2].glued)
            )
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
                    values = {"shape": "rect", **sides_of(two), **base, "count": int(count.value)}
                    return checked(said, ordered(values))
    two = Size(sides[:2], size.first, size.last)
    reading = ordered({"shape": "rect", **sides_of(two), **base})
    names = " x ".join(figure(side.value) for side in sides)
    return AskBack(
        f"{names} is more than two sides. Width by height in inches, please;"
        " then the length or count.",
        (reading,),
        AskKind.TWO_READINGS,
    )
