"""Sizes: two or three sides joined by a times sign, in inches."""

from __future__ import annotations

from collections.abc import Set
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Final

from intake.reading.scan import Item
from intake.reading.units import convert
from intake.reading.words import words

__all__ = ["METRIC", "Size", "count_of", "counted_noun", "find_sizes", "inches", "numbers_of"]

METRIC: Final = frozenset(("mm", "cm", "m"))


@dataclass(slots=True)
class Size:
    """Numbers joined by a times sign.

    Attributes:
        sides: The numbers, in the order of the text, width before height where it says which.
        first, last: Places of the first and the last item in the list of items.
        joins: Where the times signs stand.
        labelled: The text says which side is which.
    """

    sides: list[Item]
    first: int
    last: int
    joins: list[Item] = field(default_factory=list)
    labelled: bool = False

    @property
    def negated(self) -> bool:
        """Whether "not" stands before it."""
        return self.sides[0].negated


def inches(item: Item, unit: str = "") -> float:
    """A side in inches; a bare number is in `unit` if given, else in inches."""
    name = item.unit or unit or "in"
    return round(convert(item.value, name, "in"), 4)


def numbers_of(size: Size) -> list[float]:
    """The sides in inches; one metric unit holds for all of them."""
    unit = next((side.unit for side in size.sides if side.unit in METRIC), "in")
    last = size.sides[-1]
    if last.unit == "ft" and all(not side.unit and side.value <= 4 for side in size.sides[:-1]):
        unit = "ft"
    return [inches(side, unit) for side in size.sides]


def find_sizes(items: list[Item]) -> list[Size]:
    """Every size of the text, left to right."""
    found: list[Size] = []
    last = len(items) - 1 if sum(map(_is_side, items)) > 1 else 0
    i = 0
    while i < last:
        size = _size_from(items, i)
        if size is None:
            i += 1
            continue
        _orient(items, size)
        found.append(size)
        i = size.last + 1
    return found


def _size_from(items: list[Item], i: int) -> Size | None:
    """The size that begins at a place."""
    if items[i].kind == "num":
        return _joined(items, i) or _labelled_after(items, i)
    return _labelled_before(items, i) if items[i].meanings else None


_NOT_COUNTED: Final = words("""
        floor floors story stories storey bedroom bedrooms room rooms ton tons zone zones stage
        year years people kids guys bath baths car old st nd rd th percent level levels house
        houses unit units merv
    """)
"""A number before one of these is no count of ducts or openings."""

_MOST_COUNTED: Final = 12


def count_of(
    items: list[Item], first: int, last: int, taken: Set[int] = frozenset()
) -> tuple[int, Item | None] | None:
    """How many there are of the size between two places, and the number that says so.

    "two 18x8", "2 panned bays 14x9", "(2) 14x8", "pair of 16x8"; "18x8 x 2", "18x8, 2 of them",
    "18x8 (x2)", "18x8 qty 2".
    """
    for found in (_count_before(items, first), _count_behind(items, last)):
        if found is not None and id(found[1]) not in taken:
            return found
    return None


def counted_noun(items: list[Item], taken: Set[int] = frozenset()) -> Item | None:
    """The number of "2 filters" or "3 of them", wherever it stands; None if none or several do."""
    found = [
        one
        for one, two in pairwise(items)
        if one.kind == "num"
        and not one.unit
        and one.whole
        and 1 <= one.value <= _MOST_COUNTED
        and id(one) not in taken
        and two.means("noun.count")
        and two.text not in ("each", "total", "ea")
    ]
    return found[0] if len(found) == 1 else None


def _count_before(items: list[Item], first: int) -> tuple[int, Item | None] | None:
    k = first - 1
    steps = 0
    while k >= 0 and steps < 7:
        item = items[k]
        if item.means("count.multi") and not item.means("alt.or"):
            return 2, None
        if item.kind == "num":
            if items[k + 1].text == "-" and _to_first(items, k, first):
                return None
            most = _MOST_BRANCHES if _before_inches(items, k, first) else _MOST_COUNTED
            if item.unit or not item.whole or not 1 <= item.value <= most or item.negated:
                return None
            if item.spelled and item.value == 1 and not (item.token and item.token.pronoun):
                return 1, item
            if item.token is not None and item.token.pronoun:
                return None
            if k == first - 1 and k and items[k - 1].text in _LABELS and not item.spelled:
                return None
            following = items[k + 1 : first]
            if any(w.kind == "word" and w.text not in _BETWEEN_COUNT for w in following):
                return None
            if any(w.text in _NOT_COUNTED for w in following[:2]):
                return None
            return int(item.value), item
        if item.text in (",", ";", "and", "plus", "&", "+", "/", "then", ".", "to", "maybe", "not"):
            return None
        if item.means("alt.or", "alt.change"):
            return None
        if item.kind == "sym" and item.text not in "()-@:#":
            return None
        each = item.text in ("each", "ea") and k and items[k - 1].kind != "num"
        if each or (item.means("join.by") and k != first - 1):
            return None
        k -= 1
        steps += 1
    return None


_BETWEEN_COUNT: Final = words(
    """
    of the a are is at it it's its big old main trunk trunks duct ducts each them there there's
    those that identical separate about roughly like more new good these this line lines box
    boxes all our my we got have i see both for in to go going goes run running come off from
    with on filter filters grille grilles furnace hall upstairs downstairs basement attic
    bedroom living room wall floor ceiling single plain nice little small large huge long short
    straight regular
    """
)
"""Words that may stand between a count and the size counted."""

_LABELS: Final = words(
    """
    unit system zone room suite floor section stage phase option trunk page line number no level
    location item step tap apartment apt # building house store space ahu rtu furnace
    """
)
"""Words after which a number tells which one it is, not how many ("unit 3 20x8")."""

_MOST_BRANCHES: Final = 24


def _before_inches(items: list[Item], k: int, first: int) -> bool:
    """ "13 six inch round": digits and words side by side make two numbers."""
    return first == k + 1 and items[first].unit == "in" and items[k].spelled != items[first].spelled


def _to_first(items: list[Item], k: int, first: int) -> bool:
    """ "8-9 inch": two diameters, or from one to the other; no count."""
    one, two = items[k], items[first]
    single = first + 1 >= len(items) or not items[first + 1].means("join.by")
    return single and first == k + 2 and one.value >= 3 and one.value < two.value


def _count_behind(items: list[Item], last: int) -> tuple[int, Item | None] | None:
    k = last + 1
    opened = False
    while k < len(items) and (
        items[k].text
        in (
            "(",
            ",",
            "-",
            ":",
            "qty",
            "quantity",
            "count",
            "there",
            "are",
            "have",
            "we",
            "got",
            "i",
            "of",
            "@",
            "there's",
            "them",
            "and",
            "is",
            "it's",
            "n",
            "&",
            "theres",
            "there're",
            "plus",
            "floor",
            "wall",
            "ceiling",
            "white",
            "hall",
        )
        or (items[k].means("shape.", "material.") and not items[k].means("count.multi"))
        or items[k].text in ("x", "*", "times")
        or (items[k].means("count.multi") is False and items[k].means("noun.count"))
        or items[k].text in ("duct", "pipe", "trunk", "grille", "filter", "inch", "each", "long")
    ):
        opened = (
            opened
            or items[k].text in ("(", "x", "*", "times")
            or items[k].text
            in ("qty", "quantity", "count", ",", "there", "are", "have", "got", "-", ":", "of")
        )
        k += 1
    if k >= len(items):
        return None
    item = items[k]
    if (
        item.means("count.multi")
        and not item.means("alt.or")
        and item.text not in ("double", "twin", "dual")
    ):
        return 2, None
    if item.kind != "num" or item.unit or not item.whole or not 1 <= item.value <= _MOST_COUNTED:
        return None
    following = items[k + 1] if k + 1 < len(items) else None
    if item.token is not None and item.token.pronoun:
        return None
    counted = following is not None and (
        following.means("noun.count") or following.text in ("of", "total")
    )
    ends = following is None or following.text in (")", ",", "and", "plus", ";", "total", "of", "&")
    times = items[k - 1].text in ("x", "*", "times") and not (
        following is not None
        and (
            (following.means("join.by") and following.text != "by")
            or (following.kind == "num" and following.unit != "ft")
        )
    )
    if counted or times or ((opened or item.spelled) and ends):
        return int(item.value), item
    return None


def _is_side(item: Item) -> bool:
    return item.kind == "num" and item.dimension in ("", "length")


_BETWEEN_SIDES: Final = words("ish maybe about inside outside roughly around approx say")


def _joined(items: list[Item], i: int) -> Size | None:
    """A chain of two or more numbers from i."""
    if not _is_side(items[i]):
        return None
    size = Size([items[i]], i, i)
    j = i
    while True:
        k = j + 1
        while (
            k < len(items)
            and (items[k].means("side.") or items[k].text in _BETWEEN_SIDES)
            and not items[k].means("join.by")
        ):
            k += 1
        if k + 1 < len(items) and items[k].text in (",", "-") and items[k + 1].means("join.by"):
            k += 1
        if k + 1 >= len(items):
            break
        join = items[k]
        after = k + 1
        while (
            after < len(items)
            and (items[after].text == "-" or items[after].text in _BETWEEN_SIDES)
            and join.means("join.by")
        ):
            after += 1
        if after >= len(items) or not _is_side(items[after]):
            break
        signs = join.kind == "sym" and join.text in "/-," and _tight(items, j, k, after, size)
        if not (join.means("join.by") or signs):
            break
        size.joins.append(join)
        size.sides.append(items[after])
        j = after
        if len(size.sides) == 5:
            break
    if len(size.sides) < 2:
        return None
    size.last = j
    while size.last + 1 < len(items) and items[size.last + 1].means("side."):
        size.last += 1
    return size


def _tight(items: list[Item], j: int, k: int, after: int, size: Size) -> bool:
    """ "20/8" or "16-25-1": bare whole numbers with one sign written against both."""
    one, two = items[j], items[after]
    bare = one.unit == two.unit and one.unit in ("", "in") and not (one.spelled or two.spelled)
    return bare and k == j + 1 and items[k].glued and two.glued and one.value >= 2


def _labelled_after(items: list[Item], i: int) -> Size | None:
    """ "20 wide 8 tall", "8 high and 20 wide", "16 across and 8 high"."""
    if not _is_side(items[i]):
        return None
    one = _label_at(items, i + 1) or _across_at(items, i + 1)
    if not one:
        return None
    j = i + 2
    while j < len(items) and items[j].text in _BETWEEN_LABELLED:
        j += 1
    if j >= len(items) or not _is_side(items[j]):
        return None
    two = _label_at(items, j + 1) or _across_at(items, j + 1)
    if not two or two == one:
        return None
    return Size([items[i], items[j]], i, j + 1)


_BETWEEN_LABELLED: Final = words("and n maybe about roughly like by x") | {",", "&", ";", "-", "+"}


def _label_at(items: list[Item], i: int) -> str:
    if i < len(items):
        if items[i].means("side.width"):
            return "side.width"
        if items[i].means("side.height"):
            return "side.height"
    return ""


def _across_at(items: list[Item], i: int) -> str:
    """Beside a height "across" is the width; alone it is a diameter."""
    return "side.width" if i < len(items) and items[i].text == "across" else ""


def _labelled_before(items: list[Item], i: int) -> Size | None:
    """ "width 20, height 8", "w=20 h=8"."""
    one = _label_at(items, i)
    if not one or (i and items[i - 1].kind == "num"):
        return None
    j = _past_signs(items, i + 1)
    if j >= len(items) or not _is_side(items[j]):
        return None
    k = _past_signs(items, j + 1)
    two = _label_at(items, k)
    if not two or two == one:
        return None
    m = _past_signs(items, k + 1)
    if m >= len(items) or not _is_side(items[m]):
        return None
    sides = [items[j], items[m]]
    if one == "side.height":
        sides.reverse()
    return Size(sides, i, m, labelled=True)


def _past_signs(items: list[Item], i: int) -> int:
    while i < len(items) and items[i].text in (",", ":", "=", "is", "and", "&", ";", "of"):
        i += 1
    return i


def _orient(items: list[Item], size: Size) -> None:
    """Put the width first where the text names the sides."""
    if size.labelled or len(size.sides) != 2:
        return
    places = [items.index(side) for side in size.sides]
    labels = [_label_at(items, place + 1) or _across_at(items, place + 1) for place in places]
    if labels == ["side.height", "side.width"] or labels == ["side.height", ""]:
        size.sides.reverse()
        size.labelled = True
    elif labels[0] or labels[1] == "side.height":
        size.labelled = True
    elif labels == ["", "side.width"]:
        size.sides.reverse()
        size.labelled = True
