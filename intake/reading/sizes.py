"""Sizes: two or three sides joined by a times sign, in inches."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

from intake.reading.scan import Item
from intake.reading.units import convert
from intake.reading.words import words

__all__ = ["METRIC", "Size", "find_sizes", "inches", "numbers_of"]

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
