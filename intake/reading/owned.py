"""Numbers that belong to another thing than the one asked about.

"20x8 with 7 takeoffs", "page 3 shows 22x10", "4 foot off the floor", "measured at 2:30": such a
number is neither a size nor a count nor a length of the duct. Each is found by its neighbours and
taken out of the numbers of the text; the words around it stay.
"""

from __future__ import annotations

import re
from typing import Final

from intake.reading.beside_value import (
    CLOCK,
    FEET,
    ON_CENTERS,
    inside,
    without,
)
from intake.reading.phrasing import built
from intake.reading.scan import Item, Scan
from intake.reading.words import words

__all__ = ["counts_a_part", "without_owned"]

_COUNTED_PARTS: Final = words(
    """
    elbow elbows ell ells boot boots damper dampers hanger hangers strap straps room rooms bedroom
    bedrooms floor floors story stories storey storeys level levels bath baths bathroom bathrooms
    window windows door doors wye wyes tee tees reducer reducers offset offsets turn turns bend
    bends screw screws seam seams kid kids people guys dog dogs cat cats time thermostat
    thermostats furnace furnaces house houses step steps rung rungs collars caps hole holes
    nut nuts wing bolt bolts clip clips latch latches
    families apartments posts fitting fittings
    columns beams walls corner corners transitions zones zone stages
    day days week weeks month months hour hours louver louvers slats fins bars blades rows screws
    closet closets tenants stick sticks joint joints section sections lengths
    """
)
"""Things beside a duct whose number is no count of ducts."""

_SHARED_PARTS: Final = words(
    "takeoff takeoffs register registers vent vents branch branches outlets grille grilles"
)
"""Things that may themselves be the ducts counted; beside a trunk's size they belong to it."""

_BRANCHING: Final = words("runs run lines leads ducts feeds drops legs pipes")
"""Ducts counted by their own word, that still belong to a trunk they come off."""

_SERVING: Final = words("feeds feeding feed serves serving supplies supplying with has")
_COMING_OFF: Final = words("come comes coming off tapped branch branching tap")

_LABELS: Final = words(
    """
    page section trunk unit system zone room suite apt apartment floor drawing sheet figure fig
    job number no no. line item stage phase option run branch duct drop return step plan day stop
    question
    """
)
"""What is told apart by a number behind it ("trunk 2 is ...", "section 3: ...")."""

_NUMBERED_SURELY: Final = words(
    """
    pic photo picture image attachment lot page suite apt apartment drawing sheet figure job
    plan question
    """
)
_IS: Final = words("is are was : = measures has shows - runs reads")

_PLACES: Final = (
    r"(?:the |a |my |our |that )?(?:floor|ground|grade|slab|furnace|plenum|unit|air handler|wall"
    r"|coil|boiler|water heater|ceiling|beam|elbow|corner|start|tee|takeoff|equipment|return"
    r"|damper|joists?|deck|roof|chimney|panel|door|end|blower|joint|trunk|attic floor|basement"
    r"|cabinet|stairs|hatch|manhole|finished floor)"
)
_FEET_BEHIND: Final = re.compile(
    r"^ ?(?:(?:up|down|high|in|out|away|or so|about|back|deep) )*(?:"
    r"(?:off|above|below|beneath) (?:of )?" + _PLACES + r"\b(?!.* to )"
    r"|(?:from|past|beyond|before|after|short of|away from|down from|over from) "
    + _PLACES
    + r"\b(?!.* to )"
    r"|of (?:clearance|headroom|head room|space|room|crawl ?space|ceiling|height|access)\b"
    r"|(?:high )?(?:ceilings?|ladder|basement|crawl ?space|crawl|hallway|step ladder|clearance"
    r"|headroom|tall guy|(?:tall )?walls?)\b"
    r"|(?:sections?|sticks?|joints?|pieces?|lengths?)\b|on cent(?:er|re)|o\.?c\b|apart\b"
    r"|off the (?:floor|ground)|centers\b|(?:up|overhead)$)"
)
_FEET_BEFORE: Final = re.compile(
    r"(?:\bat|\bevery(?: other)?|\bstarting|\bstarts|\b(?:ceilings?|i|basement|crawl ?space|crawl"
    r"|ladder|house|room|hall|height|headroom|clearance|hangers?|straps?|tape|he|she"
    r"|(?<!panned )joists|attic|closet)"
    r"(?:'s|'m| is| am"
    r"| are|m)?(?: only| about| like| maybe| just)?(?: at| every)?)(?: about| around| roughly)? $"
)
_RUNS_FOR: Final = re.compile(
    r"\b(?:for|runs?|running|long|length|goes|going|total|extends)(?: (?:about|around|of|is|like"
    r"|roughly|maybe|is about|of about|some|out|on))* $"
)
"""What makes the feet behind it a length, wherever that lies ("for 30 ft above the ceiling")."""

_SMALL_PART: Final = re.compile(
    r"^ ?(?:up )?(?:off|above|from|below) (?:of )?(?:the )?(?:floor|ground|ceiling|wall|door"
    r"|baseboard)\b|"
    r"^ ?(?:\w+ )?(?:flange|hole|gap|dent|lip|s[- ]?lock|drive|straps?|seams?|screws?|nails?|tape"
    r"|port"
    r"|tear|rip|crack|standing seam|overlap|clearance|drop cloth|chase|soffit|joists?)s?\b"
)
_WITH_TAKEOFFS: Final = re.compile(
    r"\b(?:with|has|feeding|feeds|and|plus|w/?) (?:[a-z0-9.-]+ ){1,3}(?:inch |in |\" ?)?(?:round )?"
    r"(?:takeoffs?|take ?offs?|branches|branch runs|runs|taps|starting collars|leads)\b"
    r"(?=.*\b(?:off|from|it|them)\b|$)"
)
"""Branches told beside a trunk's size ("20x8 with nine six inch takeoffs coming off it")."""
_AT_TAKEOFF: Final = re.compile(
    r"\b(?:takeoff|take ?off|tap|elbow|collar|damper|boot)(?:'s| is)? (?:at|about|starts at|is at)"
    r" (?:about )?$"
)
_AT_HEIGHT: Final = re.compile(r"\b(?:is|was|mounted|sits|hung|set) at (?:about |like )?$")
_DATE_BEFORE: Final = re.compile(
    r"\b(?:in|of|since|from|around|back in|january|february|march|april|may|june|july|august"
    r"|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec)"
    r"\.?,? ?(?:the )?$"
)
_DECADE: Final = re.compile(r"\b(?:the|in|from|since|early|mid|late)[ -]'?$")
_PRICE: Final = re.compile(
    r"(?:\$|\b(?:costs?|paid|quoted?|quotes|sells?(?: it)?|priced?|charges?|bucks)(?: (?:me|us))?"
    r"(?: (?:for|at|about))?) ?\$?$"
)
_MOVED: Final = re.compile(
    r"\b(?:moving|moves|pushing|pushes|carrying|carries|flowing|flows|handles|handling|blowing)"
    r"(?: (?:about|maybe|around|roughly|some|like|almost))* $"
)
_AGE: Final = re.compile(
    r"\b(?:he|she|i|boss|owner|dad|mom|customer|wife|husband|kid|son|house|guy)(?:'s|'m| is| am)"
    r" (?:about |almost |only |like )?$"
)
_PACK_BEHIND: Final = re.compile(r"^ ?-?(?:pack|pk|pac)s?\b|^ (?:to|in) a (?:box|pack|case)\b")
_PACK_BEFORE: Final = re.compile(r"\b(?:pack|pk|box|case|carton|packs|boxes) of $")
"""How many were bought together ("3 pack") is not how many are in use."""


def counts_a_part(said: Scan, item: Item) -> bool:
    """Whether a number counts things beside a duct ("40 feet and 6 fittings").

    >>> from intake.reading.scan import scan
    >>> found = scan("40 feet and 6 fittings", "length")
    >>> [counts_a_part(found, number) for number in found.numbers]
    [False, True]
    """
    following = said.items[said.items.index(item) + 1 :][:1]
    words = {word for other in following for word in other.text.split()}
    bare = item.unit in ("", "things")
    return bare and item.whole and not words.isdisjoint(_COUNTED_PARTS)


def without_owned(said: Scan, *, sized: bool) -> Scan:
    """The scan without the numbers of other things.

    Args:
        said: As scanned for a duct, a grille or a filter.
        sized: The text holds a width by a height, so that what is counted beside it is its own.

    >>> from intake.reading.scan import scan
    >>> [n.value for n in without_owned(scan("20x8 with 4 elbows", "duct"), sized=True).numbers]
    [20.0, 8.0]
    """
    numbers = said.numbers
    if len(numbers) < 2:
        return said
    clocks = [match.span() for match in CLOCK.finditer(said.text)]
    found = [
        item
        for i, item in enumerate(said.items)
        if item.kind == "num"
        and (_is_owned(said, i, sized=sized) or (bool(clocks) and inside(item, clocks)))
    ]
    left = [n for n in numbers if not any(n is item for item in found)]
    return without(said, found) if found and left else said


def _is_owned(said: Scan, i: int, *, sized: bool) -> bool:
    items, item = said.items, said.items[i]
    following = items[i + 1] if i + 1 < len(items) else None
    before = items[i - 1] if i else None
    joined = (
        following is not None and following.means("join.by") and _number_at(items, i + 2)
    ) or (before is not None and before.means("join.by") and _number_at(items, i - 2))
    if joined or item.dimension not in ("", "length"):
        return False
    rest = said.text[item.end :]
    if not item.unit and 10 <= item.value < 100 and built(said, item):
        return True
    if item.value < 1 and item.spelled and following is not None and following.text == "of":
        return True
    if sized and inside(item, [match.span() for match in _WITH_TAKEOFFS.finditer(said.text)]):
        return True
    if item.unit == "in" and _AT_HEIGHT.search(said.text[: item.start]):
        return True
    if item.unit in ("in", "") and _AT_TAKEOFF.search(said.text[: item.start]):
        return True
    if _is_said_again(item, following, rest) or _is_of_measure(items, i):
        return True
    if item.unit == "in" and _SMALL_PART.match(rest):
        return True
    if item.unit in FEET:
        runs = _RUNS_FOR.search(said.text[: item.start]) is not None
        return (_FEET_BEHIND.match(rest) is not None and not runs) or _FEET_BEFORE.search(
            said.text[: item.start]
        ) is not None
    if ON_CENTERS.match(rest.lstrip()):
        return True
    if not item.unit and _PRICE.search(said.text[: item.start]):
        return True
    if not item.unit and _MOVED.search(said.text[: item.start]) and item.value >= 100:
        return True
    if item.unit or not item.whole:
        return False
    if _AGE.search(said.text[: item.start]) and 15 <= item.value <= 110:
        return True
    if _DATE_BEFORE.search(said.text[: item.start]) and 1900 <= item.value <= 2035:
        return True
    if (
        item.plural
        and item.value % 10 == 0
        and item.value >= 20
        and _DECADE.search(said.text[: item.start])
    ):
        return True
    if _PACK_BEHIND.match(rest) or _PACK_BEFORE.search(said.text[: item.start]):
        return True
    if following is not None and following.unit in FEET and _is_owned(said, i + 1, sized=sized):
        return True
    return _counts_other(items, i, sized=sized) or _is_label(items, i) or _is_of_elbows(items, i)


_MOST_ALIKE: Final = 12
"""The largest count that may equal a diameter ("8 8 inch")."""


def _is_of_measure(items: list[Item], i: int) -> bool:
    """ "radius is 4 so 8 round": the other measure of what is told as a diameter too."""
    near = items[max(0, i - 2) : i]
    if not any(item.means("measure.") for item in near):
        return False
    return any(
        items[k].kind == "num" and items[k + 1].means("shape.round", "shape.roundish")
        for k in range(i + 1, len(items) - 1)
    )


def _is_said_again(item: Item, following: Item | None, rest: str) -> bool:
    """ "not 16, 18. eighteen inch": the number comes again with its unit."""
    return (
        following is not None
        and following.kind == "num"
        and following.value == item.value > _MOST_ALIKE
        and not item.unit
        and bool(following.unit)
        and rest[:1] in (".", ",", ";")
    )


def _number_at(items: list[Item], i: int) -> bool:
    return 0 <= i < len(items) and items[i].kind == "num"


def _counts_other(items: list[Item], i: int, *, sized: bool) -> bool:
    item = items[i]
    behind = [other.text for other in items[i + 1 : i + 3]]
    if behind[:1] == ["-"]:
        behind = [other.text for other in items[i + 2 : i + 4]]
    nouns = {word for text in behind[:1] for word in text.split()}
    if len(behind) > 1 and not items[i + 1].means("shape.", "material.", "join.by"):
        nouns |= set(behind[1].split()) & _COUNTED_PARTS if items[i + 1].kind == "word" else set()
    if behind[:1] == ["times"]:
        return True
    if (
        item.spelled
        and item.value == 1
        and (
            behind[:1] == ["per"] or (behind[:1] == ["in"] and behind[1:2] in (["each"], ["every"]))
        )
    ):
        return True
    if item.spelled and item.value == 1 and _one_goes(behind):
        return sized or behind[0].split()[0] in ("goes", "used")
    if nouns & _COUNTED_PARTS:
        return True
    if not sized:
        return False
    return bool(nouns & _SHARED_PARTS) or (bool(nouns & _BRANCHING) and _comes_off(items, i))


_GOING: Final = words(
    "out off at goes used sits runs feeds serves heads heading going per for on to each way"
)


def _one_goes(behind: list[str]) -> bool:
    """ "one goes each way", "one per side"."""
    return behind[:1] != [] and behind[0].split()[0] in _GOING


def _comes_off(items: list[Item], i: int) -> bool:
    """ "3 runs come off it", "feeding 4 runs"."""
    before = {items[k].text for k in range(max(0, i - 1), i)}
    behind = {word for other in items[i + 2 : i + 5] for word in other.text.split()}
    return bool(before & (_SERVING - {"has", "with"})) or bool(behind & _COMING_OFF)


_ROOMS: Final = words("room bedroom suite unit apt apartment rm")


def _is_of_elbows(items: list[Item], i: int) -> bool:
    """ "two nineties", "a 45": elbows and how many of them."""
    following = items[i + 1] if i + 1 < len(items) else None
    if not items[i].unit and items[i].value in (45.0, 90.0):
        return True
    return (
        following is not None
        and following.kind == "num"
        and not following.unit
        and following.value in (45.0, 90.0)
        and items[i].value <= 12
    )


def _ends_clause(items: list[Item], i: int) -> bool:
    return i + 1 >= len(items) or items[i + 1].text in (",", ";", ".", ")")


_LABELS_BEFORE_SIZE: Final = words("unit system zone room floor section stage trunk ahu rtu level")


def _size_at(items: list[Item], i: int) -> bool:
    """Whether a size begins at a place ("unit 3 20x8")."""
    return _number_at(items, i) and i + 1 < len(items) and items[i + 1].means("join.by")


_LAST_LABEL: Final = 99
"""The largest number of a part of a house; jobs and pages go higher ("job 2206: ...")."""


def _is_label(items: list[Item], i: int) -> bool:
    """ "trunk 2 is", "section 3:", "#2 trunk", "no. 2"."""
    item = items[i]
    if not i:
        return False
    if item.value > _LAST_LABEL:
        ends = _ends_clause(items, i) or items[i + 1].text == ":"
        return items[i - 1].text in _NUMBERED_SURELY and ends
    before = items[i - 1].text
    if before == "." and i > 1:
        before = items[i - 2].text
    if item.glued and len(before) == 1 and before.isalpha() and before not in "xwhr":
        return True
    if before == "#":
        return i < 2 or items[i - 2].text not in ("qty", "(")
    last = before.split()[-1] if before else ""
    if last in _NUMBERED_SURELY or (last in _ROOMS and _ends_clause(items, i)):
        return True
    if last in _LABELS_BEFORE_SIZE and _size_at(items, i + 1):
        return True
    if last in ("no", "number", "num") and i > 1:
        return any(
            word in _LABELS for other in items[max(0, i - 3) : i - 1] for word in other.text.split()
        )
    following = items[i + 1].text if i + 1 < len(items) else ""
    return last in _LABELS and following in _IS and item.value < 20
