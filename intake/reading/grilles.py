"""Grilles and registers: sizes with counts, and lists of them."""

from __future__ import annotations

import re
from itertools import pairwise
from typing import Final

from intake.reading.asks import implausible
from intake.reading.bounds import BELIEVABLE
from intake.reading.counted_sizes import count_of, counted_noun
from intake.reading.duct_checks import is_bound
from intake.reading.echo import echo, figure
from intake.reading.numbers import kept, something_else, vague
from intake.reading.owned import without_owned
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value, number_of
from intake.reading.scan import Item, Scan
from intake.reading.sizes import Size, find_sizes, inches, numbers_of
from intake.reading.words import words

__all__ = ["read_grille"]


def read_grille(said: Scan) -> Reading | None:
    """Read one grille, or a list of them; None if the text holds nothing of one."""
    said = without_owned(said, sized=False)
    every = find_sizes(said.items)
    sizes = _openings(said, _of_returns(said, _standing(every)))
    denied = {id(s) for size in every if size not in sizes for s in size.sides}
    numbers = [n for n in kept(said, "", "length") if id(n) not in denied]
    if not sizes:
        return _no_grille(said, numbers)
    used = {id(side) for size in every for side in size.sides}
    if _BLOWS.search(said.text) and len(sizes) == 1:
        return AskBack(
            "Air comes out of it? I ask about those that air goes into.", (), AskKind.WRONG_QUANTITY
        )
    if len(sizes) > 1 and _WHICH.search(said.text):
        either: list[dict[str, Value]] = []
        for size in sizes:
            sides = numbers_of(size)
            either.append({"width_in": sides[0], "height_in": sides[1]})
        return AskBack("Which size is it?", tuple(either), AskKind.TWO_VALUES)
    if len(sizes) > 1 and _TAKES.search(said.text):
        sizes = [size for size in sizes if not _is_filter(size)] or sizes
    rows: list[dict[str, Value]] = []
    for size in sizes:
        if is_bound(said, size.sides):
            told = " x ".join(figure(side.value) for side in size.sides)
            return AskBack(
                f"{told} is one end of it. What is the size itself, in inches?",
                (),
                AskKind.MISSING_PART,
            )
        sides = numbers_of(size)
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
    loose = [n for n in loose if not _is_of_duct(said, n)]
    loose = [n for n in loose if not (n.unit in ("ft",) or (n.unit == "in" and inches(n) < 2))]
    some = said.words() & _SOME and not _FRAME_IS.search(said.text)
    vaguely = (some and not _NO_OTHERS.search(said.text)) or (
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
    if len(rows) > 1 and _REPLACED.search(said.text):
        return AskBack("Which of them is there now?", tuple(rows), AskKind.TWO_VALUES)
    if len(rows) > 1 and _perhaps_between(said, sizes):
        return AskBack("Which size is it?", tuple(rows), AskKind.TWO_VALUES)
    if _EXCEPT.search(said.text) or (_rooms_counted(said) and _whole_count(rows) == len(rows)):
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


_WHICH: Final = re.compile(r"\bwhich\b(?! is\b)|\bone or the other\b|\beither\b(?! (?:side|end))")
_TAKES: Final = re.compile(r"\b(?:takes?|filters?|fits|holds)\b")
_THINNEST_IN: Final = 6.0


def _is_filter(size: Size) -> bool:
    """A size of three sides, the last as thin as a filter ("20x20 grille, takes a 20x20x1")."""
    sides = numbers_of(size)
    return len(sides) == 3 and sides[2] <= _THINNEST_IN and min(sides[:2]) > _THINNEST_IN


_FRAME_IS: Final = re.compile(
    r"\bframe(?:'s| is) (?:a (?:bit|little) )?(?:bigger|larger|smaller)\b"
)
_OF_SUPPLY: Final = re.compile(r"\bsuppl(?:y|ies)(?: (?:vents?|registers?|grilles?|ones?))?\b")
_OF_RETURN: Final = re.compile(r"\breturns?\b")
_CLAUSE_ENDS: Final = re.compile(r"[,;](?=\s)|\.(?=\s)|\bbut\b")


def _of_returns(said: Scan, sizes: list[Size]) -> list[Size]:
    """Without the supply's, where the return's are told too ("supply vents are 4x10").

    A name holds for the sizes of its clause, and for those of later clauses that name none.
    """
    if not (_OF_SUPPLY.search(said.text) and _OF_RETURN.search(said.text)):
        return sizes
    found: list[Size] = []
    ofs = ""
    start = 0
    for cut in [*(m.end() for m in _CLAUSE_ENDS.finditer(said.text)), len(said.text)]:
        clause = said.text[start:cut]
        if _OF_SUPPLY.search(clause) or _OF_RETURN.search(clause):
            ofs = "supply" if _OF_SUPPLY.search(clause) else "return"
        inside = [size for size in sizes if start <= size.sides[0].start < cut]
        found += inside if ofs != "supply" else []
        start = cut
    return found or sizes


def _standing(every: list[Size]) -> list[Size]:
    """The sizes that are not denied, now or later ("20x20 and 14x8, not 14x8 its 14x6")."""
    denied = [numbers_of(size) for size in every if size.negated]
    return [size for size in every if not size.negated and numbers_of(size) not in denied]


_PARTING: Final = words("and but with") | {",", ";", "."}
_OF_OPENING: Final = ("place.slots", "place.inside", "place.liner")
_OF_FRAME: Final = ("place.frame", "place.outside")


def _openings(said: Scan, sizes: list[Size]) -> list[Size]:
    """Without the frame, where one of two sizes is said to be the opening or the frame."""
    if len(sizes) != 2 or said.says("alt.or") or not said.says(*_OF_OPENING, *_OF_FRAME):
        return sizes
    kinds = [_kind_of(said.items, sizes, k) for k in (0, 1)]
    if kinds[0] == kinds[1] or set(kinds) == {""}:
        return sizes
    wanted = "opening" if "opening" in kinds else ""
    return [size for size, kind in zip(sizes, kinds, strict=True) if kind == wanted]


def _kind_of(items: list[Item], sizes: list[Size], k: int) -> str:
    """Whether a size is called the opening's or the frame's in its own clause."""
    start = sizes[k - 1].last + 1 if k else 0
    end = sizes[k + 1].first if k + 1 < len(sizes) else len(items)
    cuts = [i for i in range(start, end) if items[i].text in _PARTING]
    before = max((i for i in cuts if i < sizes[k].first), default=start)
    behind = min((i for i in cuts if i > sizes[k].last), default=end)
    clause = items[before:behind]
    if any(item.means(*_OF_FRAME) for item in clause):
        return "" if any(item.means(*_OF_OPENING) for item in clause) else "frame"
    return "opening" if any(item.means(*_OF_OPENING) for item in clause) else ""


_REPLACED: Final = re.compile(
    r"\b(?:old(?: ones?)?|replac\w+|used to|instead of|swapp\w+|was|were|previous\w*|cut out to)\b"
)
_BLOWS: Final = re.compile(r"\bair (?:blows|comes|is blowing|is coming|pushes) out\b|\bit blows\b")
_EXCEPT: Final = re.compile(r"\b(?:except|but (?:the|one|two)|other than|all but)\b")

_PERHAPS: Final = words("maybe perhaps possibly could might")


def _is_of_duct(said: Scan, item: Item) -> bool:
    """ "with a 14 inch flex", "16 inch duct behind it": a size of the duct behind the opening."""
    place = said.items.index(item)
    following = said.items[place + 1] if place + 1 < len(said.items) else None
    if item.unit != "in" or following is None:
        return False
    ducts = ("duct", "pipe", "collar", "boot", "takeoff", "trunk")
    return following.means("material.flex", "shape.") or following.text in ducts


def _leads(said: Scan, item: Item, size: Size) -> bool:
    """ "two, 30x6": a count, a comma and the size, and nothing before."""
    counting = item.whole and not item.unit and 2 <= item.value <= 12
    return counting and size.first == 2 and said.items[0] is item and said.items[1].text in ",:-"


def _whole_count(rows: list[dict[str, Value]]) -> float:
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
    before = said.items[max(0, size.first - 4) : size.first]
    counts = [item for item in before if item.kind == "num"]
    colon = bool(before) and before[-1].text == ":" and len(counts) == 1
    others = sum(number_of(row.get("count", 1)) for row in rows[1:])
    return colon and counts[0].value == others + 1


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
