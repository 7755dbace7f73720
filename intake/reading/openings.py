"""Filters and grilles: sizes with counts, and lists of grilles."""

from __future__ import annotations

import re
from itertools import pairwise
from typing import Final

from intake.reading.asks import implausible
from intake.reading.bounds import BELIEVABLE, believable
from intake.reading.duct_checks import is_bound
from intake.reading.echo import echo, figure
from intake.reading.numbers import kept, something_else, vague
from intake.reading.owned import without_owned
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value, number_of
from intake.reading.scan import Item, Scan
from intake.reading.sizes import METRIC, Size, count_of, counted_noun, find_sizes, inches
from intake.reading.words import words

__all__ = ["read_filter", "read_grille"]

_DEPTHS: Final = (0.5, 6.0)


def _numbers_of(size: Size) -> list[float]:
    unit = next((side.unit for side in size.sides if side.unit in METRIC), "in")
    return [inches(side, unit) for side in size.sides]


def read_filter(said: Scan) -> Reading | None:
    """Read a filter; None if the text holds nothing of one."""
    said = without_owned(said, sized=False)
    merv = kept(said, "merv")
    sizes = [size for size in find_sizes(said.items) if not size.negated]
    if not sizes:
        sizes = _spoken(said)
    if len(sizes) > 1:
        return _several(said, sizes)
    if not sizes:
        return _no_size(said, bool(merv))
    size = sizes[0]
    if _NO_FILTER.search(said.text):
        told = echo("filter", _as_filter(_numbers_of(size)))
        return AskBack(
            f"No filter in it? Then what is the {told}?",
            (_as_filter(_numbers_of(size)),),
            AskKind.TWO_READINGS,
        )
    if _dangles(said, size):
        return AskBack(
            "How thick is it, in inches?", (_as_filter(_numbers_of(size)),), AskKind.MISSING_PART
        )
    if is_bound(said, size.sides):
        told = " x ".join(figure(side.value) for side in size.sides)
        return AskBack(
            f"{told} is one end of it. What is the size itself, in inches?",
            (),
            AskKind.MISSING_PART,
        )
    numbers = _numbers_of(size)
    values = _as_filter(numbers)
    if len(numbers) == 4 and _counts_first(size, numbers):
        return _checked({**_as_filter(numbers[1:]), "count": int(numbers[0]), **_rated(merv)})
    if len(numbers) > 3:
        count = size.sides[3]
        if len(numbers) == 4 and count.whole and 1 <= count.value <= 6 and count.unit == "":
            return _checked({**_as_filter(numbers[:3]), "count": int(count.value)})
        return AskBack("Please give one filter, such as 16x25x1.", (), AskKind.TWO_VALUES)
    used = {id(side) for side in size.sides}
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


_NO_FILTER: Final = re.compile(
    r"\b(?:no|isn'?t (?:a|any)|without (?:a|any)|doesn'?t have (?:a|any)|never had (?:a|any))"
    r" filter\b"
)


def _counts_first(size: Size, numbers: list[float]) -> bool:
    """ "2x 16x25x1", "2 x 20x20x1": the first number can be no face, the last is the depth."""
    first = size.sides[0]
    counting = first.whole and not first.unit and 1 <= first.value <= 6
    return counting and min(numbers[1:3]) >= 8 and numbers[3] <= _DEPTHS[1]


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
    following = said.items[place + 1] if place + 1 < len(said.items) else None
    return following is not None and following.means("side.depth") and inches(item) <= _DEPTHS[1]


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
    readings = [_as_filter(_numbers_of(size)) for size in sizes if len(size.sides) in (2, 3)]
    names = " and ".join(echo("filter", r) for r in readings)
    return AskBack(
        f"Those are two sizes: {names}. Which filter is meant here?",
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


def read_grille(said: Scan) -> Reading | None:
    """Read one grille, or a list of them; None if the text holds nothing of one."""
    said = without_owned(said, sized=False)
    sizes = [size for size in find_sizes(said.items) if not size.negated]
    denied = {id(s) for size in find_sizes(said.items) if size.negated for s in size.sides}
    numbers = [n for n in kept(said, "", "length") if id(n) not in denied]
    if not sizes:
        return _no_grille(said, numbers)
    used = {id(side) for size in sizes for side in size.sides}
    rows: list[dict[str, Value]] = []
    for size in sizes:
        if is_bound(said, size.sides):
            told = " x ".join(figure(side.value) for side in size.sides)
            return AskBack(
                f"{told} is one end of it. What is the size itself, in inches?",
                (),
                AskKind.MISSING_PART,
            )
        sides = _numbers_of(size)
        counts = count_of(said.items, size.first, size.last, used)
        if len(sides) == 3:
            row = _three(size)
            if row is None:
                names = " x ".join(figure(s) for s in sides)
                return AskBack(
                    f"{names} is more than two sides. How wide and how tall is the opening?",
                    ({"width_in": sides[0], "height_in": sides[1]},),
                    AskKind.TWO_READINGS,
                )
            rows.append(row)
            continue
        if len(sides) > 3:
            return AskBack("Please give each opening as width by height.", (), AskKind.TWO_VALUES)
        row = {"width_in": sides[0], "height_in": sides[1]}
        row["count"] = counts[0] if counts else 1
        if counts and counts[1] is not None:
            used.add(id(counts[1]))
        rows.append(row)
    loose = [n for n in numbers if id(n) not in used]
    loose = [n for n in loose if not (n.unit in ("ft",) or (n.unit == "in" and inches(n) < 2))]
    vaguely = (said.words() & _SOME and not _NO_OTHERS.search(said.text)) or (
        "each" in said.words() and rows[0]["count"] == 1 and counted_noun(said.items, used) is None
    )
    if vaguely:
        return AskBack("How many of each size are there?", tuple(rows), AskKind.MISSING_PART)
    if said.words() & _MORE and len(rows) == 1 and not _NO_OTHERS.search(said.text):
        return AskBack(
            "And the other one, or shall we go on with this one only?",
            tuple(rows),
            AskKind.MISSING_PART,
        )
    if len(rows) > 1 and _perhaps_between(said, sizes):
        return AskBack("Which size is it?", tuple(rows), AskKind.TWO_VALUES)
    if _EXCEPT.search(said.text) or (_rooms_counted(said) and whole_count(rows) == len(rows)):
        return AskBack("How many of each size are there?", tuple(rows), AskKind.MISSING_PART)
    if len(rows) > 1 and _totals_first(said, sizes[0], rows):
        rows[0]["count"] = 1
    if said.says("alt.or") and len(rows) > 1:
        return AskBack("Which size is it?", tuple(rows), AskKind.TWO_VALUES)
    if len(rows) > 1 and said.says("place.frame", "place.slots", "place.outside", "place.inside"):
        return AskBack(
            "Which one is the opening, without the frame?", tuple(rows), AskKind.TWO_VALUES
        )
    noun = counted_noun(said.items, used)
    if len(rows) > 1 and (leading := counted_noun(said.items[: sizes[0].first])) is not None:
        each = [1.0 if k == 0 else number_of(r["count"]) for k, r in enumerate(rows)]
        if leading.value != sum(each):
            return AskBack("How many of each size?", tuple(rows), AskKind.TWO_VALUES)
        rows[0]["count"] = 1
        used.add(id(leading))
        noun = None
    if noun is not None and len(rows) == 1:
        rows[0]["count"] = int(noun.value)
    whole = sum(number_of(r["count"]) for r in rows)
    if noun is not None and len(rows) > 1 and noun.value != whole:
        return AskBack("How many of each size?", tuple(rows), AskKind.TWO_VALUES)
    loose = [n for n in loose if n is not noun and id(n) not in used]
    if len(rows) > 1 and len(loose) == 1 and not loose[0].unit and loose[0].value == whole:
        loose = []
    leads = len(rows) == 1 and len(loose) == 1 and _leads(said, loose[0], sizes[0])
    if leads and rows[0]["count"] == 1:
        rows[0]["count"] = int(loose[0].value)
        loose = []
    if loose:
        extra = " and ".join(figure(n.value) for n in loose)
        read = " and ".join(echo("grille", r) for r in rows)
        return AskBack(
            f"I read {read}, but what is the {extra}?", tuple(rows), AskKind.TWO_READINGS
        )
    for row in rows:
        odd = _odd_grille(row)
        if odd is not None:
            return odd
    if len(rows) == 1:
        only = rows[0]
        return Accepted({k: v for k, v in only.items() if not (k == "count" and v == 1)})
    return Accepted({"grilles": list(rows)})


_EXCEPT: Final = re.compile(r"\b(?:except|but (?:the|one|two)|other than|all but)\b")
_PERHAPS: Final = words("maybe perhaps possibly could might")


def _leads(said: Scan, item: Item, size: Size) -> bool:
    """ "two, 30x6": a count, a comma and the size, and nothing before."""
    counting = item.whole and not item.unit and 2 <= item.value <= 12
    return counting and size.first == 2 and said.items[0] is item and said.items[1].text in ",:-"


def whole_count(rows: list[dict[str, Value]]) -> float:
    """How many openings the rows are."""
    return sum(number_of(row.get("count", 1)) for row in rows)


def _perhaps_between(said: Scan, sizes: list[Size]) -> bool:
    """ "20x20 maybe 20x25": one of them, or both?"""
    return any(
        _PERHAPS & {item.text for item in said.items[one.last + 1 : two.first]}
        for one, two in pairwise(sizes)
    )


_COUNTED_ROOMS: Final = re.compile(
    r"\b(?:[2-9]|two|three|four|five|six) (?:\w+ )?(?:bed)?rooms\b|\ball (?:of them |the \w+"
    r" )?(?:are )?"
    r"(?=\d+ ?(?:x|by))"
)


def _rooms_counted(said: Scan) -> bool:
    """Whether rooms are counted, not openings ("8x8 in 3 bedrooms"), or "all" are of a size."""
    return _COUNTED_ROOMS.search(said.text) is not None


def _totals_first(said: Scan, size: Size, rows: list[dict[str, Value]]) -> bool:
    """ "two: 20x20 and 14x8": the number before the colon counts the whole list."""
    before = said.items[max(0, size.first - 2) : size.first]
    colon = len(before) == 2 and before[0].kind == "num" and before[1].text == ":"
    others = sum(number_of(row.get("count", 1)) for row in rows[1:])
    return colon and before[0].value == others + 1


_NO_OTHERS: Final = re.compile(
    r"\b(?:no|not any|without|isn't any|there's no) (?:others?|more|rest)\b"
)
_SOME: Final = words("rest few several something smaller bigger larger every others")
"""Words that speak of openings without counting or measuring them."""

_MORE: Final = words("another other others rest more also")
"""Words that speak of a further opening."""


def _three(size: Size) -> dict[str, Value] | None:
    """ "30x8 x 2": the last is a count if it stands apart."""
    one, two = size.joins[0], size.joins[1]
    sides = size.sides
    mixed = one.text != two.text and two.text in ("x", "*")
    apart_last = not two.glued and (one.glued or (mixed and sides[2].glued))
    apart_first = not sides[1].glued and two.glued and sides[2].glued
    if apart_last and sides[2].whole and 1 <= sides[2].value <= 8 and not sides[2].unit:
        return {
            "width_in": inches(sides[0]),
            "height_in": inches(sides[1]),
            "count": int(sides[2].value),
        }
    if apart_first and sides[0].whole and 1 <= sides[0].value <= 6:
        return {
            "width_in": inches(sides[1]),
            "height_in": inches(sides[2]),
            "count": int(sides[0].value),
        }
    return None


_FLOOR_IN: Final = 2.25
_LONGEST_FLOOR_IN: Final = 16.0
"""Narrow floor and toe-kick registers: 2 1/4 in. by 10 to 14 in. (common practice)."""


def _odd_grille(row: dict[str, Value]) -> AskBack | None:
    sides = [number_of(row["width_in"]), number_of(row["height_in"])]
    low, high = BELIEVABLE["grille_side_in"]
    if all(low <= side <= high for side in sides) and max(sides) >= 6:
        return None
    if min(sides) == _FLOOR_IN and low <= max(sides) <= _LONGEST_FLOOR_IN:
        return None
    if all(100 <= side <= 1200 for side in sides):
        metric: dict[str, Value] = {
            **row,
            "width_in": round(sides[0] / 25.4, 2),
            "height_in": round(sides[1] / 25.4, 2),
        }
        return AskBack(
            f"Is that in millimetres: {echo('grille', metric)}?", (metric,), AskKind.IMPLAUSIBLE
        )
    return implausible("grille", row)


def _no_grille(said: Scan, numbers: list[Item]) -> Reading | None:
    if said.says("shape.square") and len(numbers) == 1:
        side = inches(numbers[0])
        row: dict[str, Value] = {"width_in": side, "height_in": side}
        return _odd_grille(row) or Accepted(row)
    if len(numbers) == 2:
        row = {"width_in": inches(numbers[0]), "height_in": inches(numbers[1])}
        return AskBack(f"Did you mean {echo('grille', row)}?", (row,), AskKind.TWO_READINGS)
    numbers = [n for n in numbers if not something_else(said, n)]
    words = {"grille", "grilles", "grill", "vent", "vents", "none", "filter", "square", "returns"}
    if (
        numbers
        or vague(said, "size")
        or said.says("join.by", "noun.count", "shape.", "side.")
        or said.words() & words
    ):
        return AskBack(
            "What size is the opening, width by height in inches?", (), AskKind.MISSING_PART
        )
    return None
