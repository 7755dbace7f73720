"""Ducts of several sizes or counts, and what is asked about them."""

from __future__ import annotations

from intake.reading.bounds import believable
from intake.reading.duct_chain import sides_of
from intake.reading.duct_checks import ordered
from intake.reading.duct_parts import (
    DuctParts,
    feet_of,
    taped_around,
)
from intake.reading.duct_runs import Runs
from intake.reading.echo import echo, figure
from intake.reading.numbers import vague
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value, Values, Volunteered
from intake.reading.scan import Item, Scan
from intake.reading.sizes import Size, inches

__all__ = ["base_of", "loose", "no_size", "round_by_another_measure", "several", "several_runs"]


def base_of(materials: tuple[str, ...], parts: DuctParts | None) -> dict[str, Value] | AskBack:
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
    lengths = {round(feet_of(item), 3) for item in parts.lengths}
    if len(lengths) > 1:
        return AskBack("How long is it, in feet?", (), AskKind.TWO_VALUES)
    if lengths:
        values["length_ft"] = lengths.pop()
    return values


def round_by_another_measure(said: Scan) -> AskBack | None:
    """What to ask where a duct is told by its radius or by how far it is around; else None."""
    numbers = [n for n in said.numbers if n.dimension in ("", "length") and n.unit != "ft"]
    if len(numbers) != 1:
        return None
    place = said.items.index(numbers[0])
    following = said.items[place + 1] if place + 1 < len(said.items) else None
    if (
        following is not None
        and following.text in ("across", "accross")
        and said.says("shape.round")
    ):
        return None
    value = inches(numbers[0])
    if any(item.kind == "owned" for item in said.items):
        return None
    if said.says("measure.radius"):
        reading: dict[str, Value] = {"shape": "round", "diameter_in": round(2 * value, 2)}
        return AskBack(
            f"A radius of {figure(value)} in. is {figure(2 * value)} in. across. Is that the size?",
            (reading,),
            AskKind.TWO_READINGS,
        )
    if (said.says("measure.around") or taped_around(said, numbers[0])) and not said.says(
        "material.wrapped"
    ):
        reading = {"shape": "round", "diameter_in": round(value / 3.14159, 1)}
        return AskBack(
            f"{figure(value)} in. around is {figure(value / 3.14159, 1)} in. across. Is that it?",
            (reading,),
            AskKind.TWO_READINGS,
        )
    return None


def several(said: Scan, sizes: list[Size], materials: tuple[str, ...]) -> Reading:
    """What to ask of several sizes, or how many there are of one told twice."""
    readings: list[dict[str, Value]] = []
    for size in sizes:
        if len(size.sides) >= 2:
            shape = "oval" if said.says("shape.oval") else "rect"
            pair = {"shape": shape, **sides_of(size)}
            readings.append(pair)
    distinct = [r for k, r in enumerate(readings) if r not in readings[:k]]
    if len(distinct) == 1 and all(len(size.sides) == 2 for size in sizes):
        only = dict(distinct[0])
        if len(materials) == 1:
            only["material"] = materials[0]
        return AskBack(
            f"How many {echo('duct', distinct[0])} ducts are there?", (only,), AskKind.TWO_VALUES
        )
    names = " and ".join(echo("duct", r) for r in distinct).rstrip(".")
    return AskBack(
        f"That is more than one size: {names}. Which one is meant here? One at a time, please.",
        tuple(distinct),
        AskKind.TWO_VALUES,
    )


def several_runs(said: Scan, runs: tuple[Runs, ...], materials: tuple[str, ...]) -> Reading:
    """ "16 six inch and 2 sevens" are two sizes; "10 or 11 sixes" is one, of so many or so many."""
    base = base_of(materials, None)
    if isinstance(base, AskBack):
        return base
    if len(runs) == 1:
        size = ordered({"shape": "round", "diameter_in": runs[0].diameter_in, **base})
        counts: Values = {"count_low": runs[0].low, "count_high": runs[0].high}
        return Accepted(size, others=(Volunteered("count", counts, said.text),))
    rows = tuple(
        ordered({"shape": "round", "diameter_in": run.diameter_in, **base, "count": run.low})
        for run in runs
    )
    names = " and ".join(echo("duct", row) for row in rows).rstrip(".")
    return AskBack(
        f"That is more than one size: {names}. Which one is meant here? One at a time, please.",
        rows,
        AskKind.TWO_VALUES,
    )


def loose(said: Scan, singles: list[Item], base: dict[str, Value]) -> Reading:
    """What to ask of numbers that no sign joins."""
    if len(singles) == 2 and not said.says("alt.or", "alt.change"):
        one, two = inches(singles[0]), inches(singles[1])
        reading = ordered({"shape": "rect", "width_in": one, "height_in": two, **base})
        if believable("side_in", one) and believable("side_in", two):
            return AskBack(
                f"Did you mean {figure(one)} by {figure(two)} in.?",
                (reading,),
                AskKind.TWO_READINGS,
            )
    named = " and ".join(figure(inches(item)) for item in singles)
    return AskBack(
        f"I see {named}. Which is the size? Width by height, or the diameter, in inches.",
        tuple(ordered({"shape": "round", "diameter_in": inches(s), **base}) for s in singles)
        if said.says("shape.round", "material.flex", "shape.roundish")
        else (),
        AskKind.TWO_VALUES,
    )


def no_size(said: Scan, materials: tuple[str, ...]) -> Reading | None:
    """What to ask where a duct is told without its size; None if it is no duct."""
    length = any(n.dimension == "length" for n in said.numbers)
    if (
        materials
        or length
        or vague(said, "size")
        or said.says("shape.", "join.by", "alt.change", "side.")
    ):
        return AskBack(
            "What is its size? Width by height, or the diameter if it is round, in inches.",
            (),
            AskKind.MISSING_PART,
        )
    return None
