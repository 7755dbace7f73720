"""What stands beside a value and is none: clocks, refrigerants, the size told with a length."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from intake.reading.scan import Item, Scan
from intake.reading.sizes import find_sizes
from intake.reading.words import words

__all__ = [
    "CLOCK",
    "FEET",
    "ON_CENTERS",
    "inside",
    "without",
    "without_clock",
    "without_filter",
    "without_joined",
    "without_refrigerant",
    "without_size",
]

ON_CENTERS: Final = re.compile(r"^(?:in|inch|inches|\")? ?(?:on cent(?:er|re)s?|o\.? ?c\b)")


CLOCK: Final = re.compile(
    r"\b(?:here|there|call(?: me| you)?|arrived?|started|back|meet|see you|done|leave|leaving)"
    r" (?:at"
    r"|by|around|about|till|until) \d{1,2}(?::\d{2})?\b|"
    r"\b(?:at |around |about |by )?\d{1,2}:\d{2}(?: ?[ap]\.?m\b)?|\b\d{1,2} ?[ap]\.?m\b"
    r"|\b\d{1,2} ?o'?clock\b"
)


_REFRIGERANT: Final = re.compile(
    r"\br ?-? ?(?:410|22|32|454|134|407|404|290)[abc]?\b(?! ?(?:cfm|by|x))|\b(?:410|454|134"
    r"|407)-?[abc]\b"
)


_REFRIGERANT_NUMBER: Final = re.compile("410|454|134|40[47]|290|22|32")


FEET: Final = frozenset(("ft", "yd", "m"))


def without_clock(said: Scan) -> Scan:
    """The scan without a time of day ("the call came in at 4:30")."""
    spans = [match.span() for match in CLOCK.finditer(said.text)]
    if not spans:
        return said
    items = [
        replace(item, kind="word", unit="") if item.kind == "num" and inside(item, spans) else item
        for item in said.items
    ]
    return Scan(said.text, items)


_OF_FILTER: Final = re.compile(
    r"\b[1-6] ?-?(?:inch|in|\") (?:thick )?(?:media|filter|pleat\w*|merv|cabinet)"
)


def without_filter(said: Scan) -> Scan:
    """The scan of a reading without how thick the filter is (".55 through a 4 inch media")."""
    spans = [match.span() for match in _OF_FILTER.finditer(said.text)]
    found = [n for n in said.numbers if n.unit == "in" and inside(n, spans)] if spans else []
    return without(said, found) if found and len(found) < len(said.numbers) else said


def without_refrigerant(said: Scan) -> Scan:
    """The scan without a refrigerant's number ("R-410A").

    >>> from intake.reading.scan import scan
    >>> without_refrigerant(scan("r-410a", "airflow")).numbers
    []
    """
    if _REFRIGERANT_NUMBER.search(said.text) is None:
        return said
    spans = [match.span() for match in _REFRIGERANT.finditer(said.text)]
    if not spans:
        return said
    return without(said, [i for i in said.items if inside(i, spans)])


def without_size(said: Scan) -> Scan:
    """The scan of a length without the size of the duct beside it.

    >>> from intake.reading.scan import scan
    >>> [n.value for n in without_size(scan("22 ft of 6 inch", "length")).numbers]
    [22.0]
    """
    if len(said.numbers) < 2:
        return said
    items = said.items
    sized = [s for s in find_sizes(items) if s.joins and not any(n.unit in FEET for n in s.sides)]
    sides = {id(side) for size in sized for side in size.sides}
    joins = {id(join) for size in sized for join in size.joins}
    feet = [n for n in said.numbers if n.unit in FEET and id(n) not in sides]
    if not feet:
        return said
    found = [
        item
        for i, item in enumerate(items)
        if id(item) in sides or id(item) in joins or (item.kind == "num" and _is_diameter(items, i))
    ]
    return without(said, found) if found else said


def without_joined(said: Scan) -> Scan:
    """The scan of a reading without the size of a filter or duct beside it ("16x25 filter, .47").

    >>> from intake.reading.scan import scan
    >>> [n.value for n in without_joined(scan("16x25 filter in, .47", "static_pressure")).numbers]
    [0.47]
    """
    if len(said.numbers) < 2:
        return said
    sized = [
        size
        for size in find_sizes(said.items)
        if size.joins
        and len(size.sides) in (2, 3)
        and all(3 <= s.value <= 40 for s in size.sides[:2])
    ]
    gone = [item for size in sized for item in (*size.sides, *size.joins)]
    gone = [item for item in gone if not (item.kind == "num" and item.unit not in ("", "in"))]
    left = [n for n in said.numbers if not any(n is item for item in gone)]
    return without(said, gone) if gone and left else said


def _is_diameter(items: list[Item], i: int) -> bool:
    """ "6 inch flex", "of 6 inch", "14 inch round"."""
    item = items[i]
    if item.unit not in ("in", "") or not 3 <= item.value <= 36:
        return False
    following = items[i + 1] if i + 1 < len(items) else None
    if following is not None and following.means("shape.", "material."):
        return True
    if item.unit != "in":
        return False
    said_of = i > 1 and items[i - 1].text == "of" and items[i - 2].kind == "num"
    return said_of or (following is not None and following.text in _DUCT_NOUNS)


_DUCT_NOUNS: Final = words("one ones duct ducts trunk run line branch main drop plenum wide deep")


def inside(item: Item, spans: list[tuple[int, int]]) -> bool:
    """Whether an item stands within one of these spans of the text."""
    return any(start <= item.start and item.end <= end + 1 for start, end in spans)


def without(said: Scan, found: list[Item]) -> Scan:
    """The scan with these items as words that mean nothing."""
    gone = {id(item) for item in found}
    for item in found:
        if ON_CENTERS.match(said.text[item.end :].lstrip()):
            place = next(k for k, other in enumerate(said.items) if other is item)
            framing = said.items[max(0, place - 4) : place + 6]
            gone |= {
                id(o)
                for o in framing
                if o.means("material.panned_joist", "material.stud_bay") and "pan" not in o.text
            }
    items = [
        replace(item, kind="owned", meanings=(), unit="") if id(item) in gone else item
        for item in said.items
    ]
    return Scan(said.text, items)
