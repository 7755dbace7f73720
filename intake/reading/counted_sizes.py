"""How many there are of a size: "two 18x8", "18x8 x 2", "3 of them"."""

from __future__ import annotations

from collections.abc import Set
from itertools import pairwise
from typing import Final

from intake.reading.scan import Item
from intake.reading.words import words

__all__ = ["count_of", "counted_noun"]

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
        of_next = any(other.kind == "num" for other in items[k + 1 : k + 3])
        return None if of_next else (2, None)
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
