"""Filters: two faces and a depth, a count, a rating."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.asks import implausible
from intake.reading.bounds import believable
from intake.reading.counted_sizes import count_of, counted_noun
from intake.reading.duct_checks import is_bound
from intake.reading.echo import echo, figure
from intake.reading.numbers import kept, something_else, vague
from intake.reading.owned import without_owned
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value, number_of
from intake.reading.scan import Item, Scan
from intake.reading.sizes import Size, find_sizes, inches, numbers_of
from intake.reading.words import words

__all__ = ["read_filter"]

_DEPTHS: Final = (0.5, 6.0)


def read_filter(said: Scan) -> Reading | None:
    """Read a filter; None if the text holds nothing of one."""
    said = without_owned(said, sized=False)
    merv = kept(said, "merv")
    sizes = [size for size in find_sizes(said.items) if not size.negated]
    if not sizes:
        sizes = _spoken(said)
    used = {id(side) for size in sizes for side in size.sides}
    if len(sizes) == 2:
        sizes = _printed(sizes)
    if len(sizes) > 1:
        return _several(said, sizes)
    if not sizes:
        return _no_size(said, bool(merv))
    size = sizes[0]
    if len(size.sides) == 2 and _OF_GRILLE.search(said.text):
        return AskBack(
            "That is the grille. And the filter: what is printed on its edge?",
            (_as_filter(numbers_of(size)),),
            AskKind.WRONG_QUANTITY,
        )
    if _NO_FILTER.search(said.text):
        told = echo("filter", _as_filter(numbers_of(size)))
        return AskBack(
            f"No filter in it? Then what is the {told}?",
            (_as_filter(numbers_of(size)),),
            AskKind.TWO_READINGS,
        )
    if size.last + 1 < len(said.items) and said.items[size.last + 1].text in ("something", "odd"):
        return AskBack(
            "And something? What exactly is printed on its edge?",
            (),
            AskKind.MISSING_PART,
        )
    if _dangles(said, size):
        return AskBack(
            "How thick is it, in inches?", (_as_filter(numbers_of(size)),), AskKind.MISSING_PART
        )
    if is_bound(said, size.sides):
        told = " x ".join(figure(side.value) for side in size.sides)
        return AskBack(
            f"{told} is one end of it. What is the size itself, in inches?",
            (),
            AskKind.MISSING_PART,
        )
    numbers = numbers_of(size)
    values = _as_filter(numbers)
    if len(numbers) == 4 and _counts_first(size, numbers):
        return _checked({**_as_filter(numbers[1:]), "count": int(numbers[0]), **_rated(merv)})
    if len(numbers) == 4 and size.joins[2].text == "-" and size.joins[1].text != "-":
        return AskBack("How thick is it, in inches?", (), AskKind.TWO_VALUES)
    if len(numbers) > 3:
        count = size.sides[3]
        if len(numbers) == 4 and count.whole and 1 <= count.value <= 6 and count.unit == "":
            return _checked({**_as_filter(numbers[:3]), "count": int(count.value)})
        return AskBack("Please give one filter, such as 16x25x1.", (), AskKind.TWO_VALUES)
    loose = [n for n in kept(said, "", "length") if id(n) not in used]
    counted = count_of(said.items, size.first, size.last, used)
    if counted is None and (noun := counted_noun(said.items, used)) is not None:
        counted = (int(noun.value), noun)
    if counted is not None:
        if counted[0] != 1:
            values["count"] = counted[0]
        loose = [n for n in loose if n is not counted[1]]
    depths_at: int | None = None
    if "depth_in" not in values:
        depths = [
            n for n in loose if n.unit in ("in", "mm") and _DEPTHS[0] <= inches(n) <= _DEPTHS[1]
        ] or [n for n in loose if _thick(said, n)]
        if len(depths) == 1:
            values["depth_in"] = inches(depths[0])
            depths_at = said.items.index(depths[0])
            loose.remove(depths[0])
    if "count" not in values and any(i.text.endswith("each side") for i in said.items):
        values["count"] = 2
        loose = [n for n in loose if n.unit or n.value not in (1, 2)]
    if said.words() & {"both", "twice", "two"} and "count" not in values:
        twos = [n for n in loose if n.value == 2 and not n.unit]
        if twos or said.words() & {"both", "twice"}:
            values["count"] = 2
            loose = [n for n in loose if n not in twos]
    if values.get("count") == 2 and "both" in said.words():
        loose = [n for n in loose if n.value != 2 or n.unit]
    if said.words() & _MORE and "count" not in values:
        return AskBack(
            "How many filters are there, and of what size?", (values,), AskKind.TWO_VALUES
        )
    if "count" not in values and loose and depths_at is not None:
        counted = count_of(said.items, depths_at, depths_at, used)
        if counted is not None and counted[1] is not None:
            values["count"] = counted[0]
            loose = [n for n in loose if n is not counted[1]]
    if merv:
        if len({m.value for m in merv}) > 1:
            return AskBack("Which MERV rating?", (values,), AskKind.TWO_VALUES)
        values["merv"] = merv[0].value if not merv[0].whole else int(merv[0].value)
    if loose:
        extra = " and ".join(figure(n.value) for n in loose)
        return AskBack(
            f"I read {echo('filter', values)}, but what is the {extra}?",
            (values,),
            AskKind.TWO_READINGS,
        )
    order = ("width_in", "height_in", "depth_in", "count", "merv")
    return _checked({name: values[name] for name in order if name in values})


_MORE: Final = words("another other others rest more also")
"""Words that speak of a further filter."""

_OF_GRILLE: Final = re.compile(
    r"^(?!.*\bfilters?\b)(?:the |my |our |big |return |air )*(?:vent|grille|grill|register)(?:'s"
    r"| is|:)"
)
_NO_FILTER: Final = re.compile(
    r"\b(?:no|isn'?t (?:a|any)|without (?:a|any)|doesn'?t have (?:a|any)|never had (?:a|any))"
    r" filter\b"
)


def _counts_first(size: Size, numbers: list[float]) -> bool:
    """ "2x 16x25x1", "2 x 20x20x1": the first number can be no face, the last is the depth."""
    first = size.sides[0]
    counting = first.whole and not first.unit and 1 <= first.value <= 6
    return counting and min(numbers[1:3]) >= 8 and numbers[3] <= _DEPTHS[1]


def _printed(sizes: list[Size]) -> list[Size]:
    """The printed size of "16x25x1, really 15 3/4 x 24 3/4 x 3/4", or both sizes.

    A filter is named by whole inches and made up to half an inch smaller on each side.
    """
    one, two = ([*numbers_of(size)] for size in sizes)
    if len(one) != len(two):
        return sizes
    for named, made, kept_size in ((one, two, sizes[0]), (two, one, sizes[1])):
        whole = all(side == int(side) for side in named)
        near = all(0 <= a - b <= 0.75 for a, b in zip(named, made, strict=True))
        if whole and near and named != made:
            return [kept_size]
    return sizes


def _rated(merv: list[Item]) -> dict[str, Value]:
    if len(merv) != 1:
        return {}
    return {"merv": merv[0].value if not merv[0].whole else int(merv[0].value)}


def _dangles(said: Scan, size: Size) -> bool:
    """ "16 by 25 by fve": a times sign with no number behind it."""
    rest = said.items[size.last + 1 : size.last + 3]
    return bool(rest) and rest[0].means("join.by") and (len(rest) < 2 or rest[1].text != "the")


def _thick(said: Scan, item: Item) -> bool:
    place = said.items.index(item)
    near = said.items[max(0, place - 1) : place] + said.items[place + 1 : place + 2]
    return any(other.means("side.depth") for other in near) and inches(item) <= _DEPTHS[1]


def _as_filter(numbers: list[float]) -> dict[str, Value]:
    """Two faces and a depth; the depth may be typed first, being the only small one."""
    if len(numbers) >= 3:
        sides = numbers[:3]
        thin = [n for n in sides if n <= _DEPTHS[1]]
        if len(thin) == 1:
            faces = [n for n in sides if n is not thin[0]]
            if sides.index(thin[0]) != 2:
                faces = [n for k, n in enumerate(sides) if k != sides.index(thin[0])]
            return {"width_in": faces[0], "height_in": faces[1], "depth_in": thin[0]}
        return {"width_in": sides[0], "height_in": sides[1], "depth_in": sides[2]}
    return {"width_in": numbers[0], "height_in": numbers[1]}


def _spoken(said: Scan) -> list[Size]:
    """ "sixteen twenty-five one", "16 25 1": three numbers side by side."""
    items = said.items
    for i in range(len(items)):
        run = i
        while (
            run < len(items) and items[run].kind == "num" and items[run].dimension in ("", "length")
        ):
            run += 1
        if run - i == 3:
            sides = items[i:run]
            values = [inches(s) for s in sides]
            if values[0] >= 8 and values[1] >= 8 and values[2] <= _DEPTHS[1]:
                return [Size(sides, i, run - 1)]
    return []


def _several(said: Scan, sizes: list[Size]) -> AskBack:
    del said
    readings = [_as_filter(numbers_of(size)) for size in sizes if len(size.sides) in (2, 3)]
    names = " and ".join(echo("filter", r) for r in readings)
    return AskBack(
        f"Those are two sizes: {names.rstrip('.')}. Which filter is meant here?",
        tuple(readings),
        AskKind.TWO_VALUES,
    )


def _no_size(said: Scan, merv: bool) -> Reading | None:
    numbers = kept(said, "", "length")
    if len(numbers) == 1 and numbers[0].token is not None and numbers[0].token.text.isdigit():
        text = numbers[0].token.text
        if len(text) in (4, 5, 6):
            reading = _as_filter(
                [float(text[:2]), float(text[2:4]), *([float(text[4:])] if len(text) > 4 else [])]
            )
            if all(number_of(v) > 0 for v in reading.values()):
                return AskBack(
                    f"Did you mean {echo('filter', reading)}?", (reading,), AskKind.TWO_READINGS
                )
    if len(numbers) == 2:
        reading = {"width_in": inches(numbers[0]), "height_in": inches(numbers[1])}
        return AskBack(f"Did you mean {echo('filter', reading)}?", (reading,), AskKind.TWO_READINGS)
    words = {
        "inch",
        "filter",
        "filters",
        "none",
        "media",
        "pleated",
        "washable",
        "electrostatic",
    }
    numbers = [n for n in numbers if not something_else(said, n)]
    if (
        numbers
        or merv
        or vague(said, "size", "type")
        or said.says("join.by", "noun.count", "role.filter")
        or any(n.unit == "in" for n in said.numbers)
        or said.words() & words
    ):
        return AskBack(
            "What size is printed on its edge, such as 16x25x1?", (), AskKind.MISSING_PART
        )
    return None


def _checked(values: dict[str, Value]) -> Reading:
    faces = [number_of(values["width_in"]), number_of(values["height_in"])]
    fine = all(believable("filter_side_in", face) for face in faces)
    if "depth_in" in values:
        fine = fine and believable("filter_depth_in", number_of(values["depth_in"]))
    if "merv" in values:
        fine = fine and believable("merv", number_of(values["merv"]))
    if "count" in values:
        fine = fine and 1 <= number_of(values["count"]) <= 6
    if fine:
        return Accepted(values)
    if all(150 <= face <= 950 for face in faces):
        metric: dict[str, Value] = {
            k: round(number_of(v) / 25.4, 2) if k.endswith("_in") else v for k, v in values.items()
        }
        return AskBack(
            f"Is that in millimetres: {echo('filter', metric)}?", (metric,), AskKind.IMPLAUSIBLE
        )
    return implausible("filter", values)
