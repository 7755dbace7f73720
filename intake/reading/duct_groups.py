"""Ducts of several sizes in one text, each with its count and what it is made of.

"two 16x8 and a 12 round flex", "three: 20x8, 16x8 and a 10 inch round". Every number must find its
part, else nothing is read.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from intake.reading.bounds import believable
from intake.reading.duct_chain import sides_of
from intake.reading.duct_checks import checked, ordered
from intake.reading.duct_parts import is_length, is_thickness
from intake.reading.materials import material_of
from intake.reading.owned import without_owned
from intake.reading.result import Accepted, Value
from intake.reading.scan import Item, Scan, scan
from intake.reading.sizes import find_sizes, inches
from intake.reading.words import words

__all__ = ["Group", "Groups", "duct_groups"]

_MOST: Final = 24
_ACROSS: Final = ("", "in", "mm", "cm")
_MARKS: Final = words(", . : ; - ( )")
_DUCTS: Final = words(
    """
    trunk trunks duct ducts drop drops main mains line lines run runs supply supplies return returns
    of leg legs it's its them total there are is all each
    """
)


@dataclass(frozen=True, slots=True)
class Group:
    """Ducts of one size.

    Attributes:
        values: Shape, size, and material where the text tells one.
        count: How many, if it says.
        start, end: The clause that it stands in.
    """

    values: dict[str, Value]
    count: int | None
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Groups:
    """Every group of a text.

    Attributes:
        groups: Left to right.
        total: How many there are in all, if that is told before them.
    """

    groups: tuple[Group, ...]
    total: int | None


@dataclass(slots=True)
class _Size:
    values: dict[str, Value]
    first: int
    last: int
    count: int | None = None


def duct_groups(line: str) -> Groups | None:
    """The groups of a normalised text; None unless each of its numbers is a part of one.

    >>> found = duct_groups("two 16x8 and a 12 inch round flex")
    >>> [(group.count, group.values["shape"]) for group in found.groups]
    [(2, 'rect'), (1, 'round')]
    """
    said = without_owned(scan(line, "duct"), sized=True)
    items = said.items
    sizes = _sizes_in(said)
    if not sizes:
        return None
    inside = {i for size in sizes for i in range(size.first, size.last + 1)}
    counts = [i for i, item in enumerate(items) if item.kind == "num" and i not in inside]
    counts = [i for i in counts if not _is_aside(items, i)]
    total: int | None = None
    for i in counts:
        item = items[i]
        if item.unit or item.plural or not item.whole or not 1 <= item.value <= _MOST:
            return None
        size = next((size for size in sizes if size.first > i), None)
        alone = int(item.value) == 1 and i == 0 and items[1].text == ","
        if total is None and i < sizes[0].first and alone:
            total = 1
        elif total is None and i < sizes[0].first and _is_total(said, i, counts, sizes):
            total = int(item.value)
        elif size is not None and _stands_before(items, i, size) and size.count is None:
            size.count = int(item.value)
        else:
            return None
    for size in sizes:
        if size.count is None and size.first and items[size.first - 1].text in ("a", "an", "one"):
            size.count = 1
    return Groups(_with_materials(said, sizes), total)


def _sizes_in(said: Scan) -> list[_Size]:
    """Widths by heights and diameters, left to right; empty if one can't be read."""
    items = said.items
    found: list[_Size] = []
    inside: set[int] = set()
    for size in find_sizes(items):
        if len(size.sides) != 2 or size.negated:
            return []
        if _of_round(items, size.last) and size.sides[0].value <= 6:
            return []
        shape = "oval" if said.says("shape.oval") else "rect"
        found.append(_Size({"shape": shape, **sides_of(size)}, size.first, size.last))
        inside |= set(range(size.first, size.last + 1))
    for i, item in enumerate(items):
        if item.kind != "num" or i in inside or item.dimension not in ("", "length"):
            continue
        if item.unit not in _ACROSS or is_length(items, i):
            continue
        if is_thickness(items, i, True) or not believable("diameter_in", inches(item)):
            continue
        if item.unit or (not item.unit and _of_round(items, i)):
            found.append(_Size({"shape": "round", "diameter_in": inches(item)}, i, i))
    found.sort(key=lambda size: size.first)
    good = all(isinstance(checked(said, ordered(dict(size.values))), Accepted) for size in found)
    return found if good else []


def _of_round(items: list[Item], i: int) -> bool:
    """ "12 round", "10 flex"."""
    return i + 1 < len(items) and items[i + 1].means(
        "shape.round", "shape.roundish", "material.flex"
    )


def _is_aside(items: list[Item], i: int) -> bool:
    """A pronoun, a part, a length, a thickness: no count."""
    item = items[i]
    pronoun = item.token is not None and item.token.pronoun
    return pronoun or item.value < 1 or is_length(items, i) or is_thickness(items, i, True)


def _is_total(said: Scan, i: int, counts: list[int], sizes: list[_Size]) -> bool:
    """ "three, two 16x8 and a 12 round", "2, 18x8 and 14x8", "two drops, left 14x20 ..."."""
    items, text = said.items, said.text
    between = items[i + 1 : sizes[0].first]
    if any(i < other < sizes[0].first for other in counts):
        return True
    value = int(items[i].value)
    parted = any(item.text in _DUCTS for item in between) or any(
        mark in text[items[i].end : items[sizes[0].first].start] for mark in ",.:;"
    )
    return len(sizes) > 1 and value == len(sizes) and parted


_BETWEEN: Final = words(
    """
    of the big old main trunk trunks duct ducts drop drops them those identical separate about like
    runs run mains lines line at plain bare metal flex round supply return is are small large flat
    """
)


def _stands_before(items: list[Item], i: int, size: _Size) -> bool:
    """Whether only describing words stand between a count and its size."""
    between = items[i + 1 : size.first]
    return all(w.text in _BETWEEN or w.text in _MARKS or w.meanings for w in between) and not any(
        w.text in ("and", "plus") for w in between
    )


def _with_materials(said: Scan, sizes: list[_Size]) -> tuple[Group, ...]:
    """Each size with the material of its own clause, or the one that the whole text tells."""
    items = said.items
    whole = material_of(items)
    of_all = bool(said.words() & {"all", "both", "each"})
    groups: list[Group] = []
    for k, size in enumerate(sizes):
        begins = 0 if k == 0 else sizes[k - 1].last + 1
        ends = sizes[k + 1].first if k + 1 < len(sizes) else len(items)
        own = material_of(items[size.first : ends])
        made = whole if len(whole) == 1 else own
        if made == ("flex",) and not of_all and "width_in" in size.values:
            made = own if k + 1 == len(sizes) else material_of(items[size.first : size.last + 2])
        values = dict(size.values)
        if len(made) == 1 and made[0] not in ("mixed", "foreign", "shiny"):
            values["material"] = made[0]
        start = items[begins].start if begins < len(items) else len(said.text)
        end = items[ends - 1].end
        groups.append(Group(ordered(values), size.count, start, end))
    return tuple(groups)
