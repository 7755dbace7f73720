"""Numbers as neighbours: which of them count, which two are a range, which run together."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from intake.reading.numerals import run_together
from intake.reading.phrases import is_known
from intake.reading.scan import Item, Scan
from intake.reading.words import words

__all__ = [
    "between",
    "kept",
    "labels_of",
    "relation",
    "something_else",
    "spread",
    "together",
    "vague",
]


def kept(said: Scan, *dimensions: str) -> list[Item]:
    """The numbers of these dimensions ("" for bare ones) that aren't denied or ordinals."""
    items = said.items
    found = [
        item
        for i, item in enumerate(items)
        if item.kind == "num" and item.dimension in dimensions and not _ordinal(items, i)
    ]
    if not found:
        return found
    real = [item for item in found if item.token is None or not item.token.pronoun]
    found = real or [item for item in found if len(items) == 1]
    asserted = [item for item in found if not item.negated]
    return asserted or found


_SPREAD: Final = re.compile(
    r"\+ ?/ ?-|\bplus (?:or|and|/)? ?minus\b|\bgive or take (?=[0-9.a-z]*[0-9]|ten\b|twenty\b"
    r"|fifty\b|a?n? ?hundred\b|twenty[- ]five\b)"
    r"|\bplus/minus\b|\bwithin\b"
)


def spread(said: Scan, one: Item, two: Item) -> bool:
    """Whether the second number is how far the first may be off ("1150 +/- 50")."""
    return two.value < one.value / 2 and _SPREAD.search(said.text[one.end : two.end]) is not None


_AFTER_VALUE: Final = words(
    """
    or so ish past n summed added totaled flat straight level vertical horizontal btw fyi anyway
    once all
    i i'd i'm think maybe probably perhaps about around at on in for the per to from
    by and but with without is it its it's was were of if when as tops give take total even now
    today yesterday before after here there up down over under exactly right actually roughly
    measured sir please thanks thank honestly man according not no that that's thats this one a
    an each stat thermostat told altogether minus plus built upstairs downstairs including
    counting excluding total sometime somewhere straight away out back long ft rated approx
    approximately guess guessing reckon believe say said says plus just like more less than
    then because cause since my our they he she you we last best on off between both are be can
    could should would will might may only still yet again either neither across through along
    into onto inside outside near next behind above below within during until till while where
    what which who how why yes yeah yep nope okay ok sorry oops wait hmm um uh well lol haha
    tho though steady bouncing ballpark nominal design actual max min peak m t going coming oh
    o thru bis - heating cooling heat cool fan new old wet dry clean dirty supply-side
    """
)
"""Words that may follow a number without being what it counts."""


def something_else(said: Scan, item: Item) -> bool:
    """Whether a bare number counts or measures a thing that the tables don't hold ("two dogs")."""
    if item.kind != "num" or item.unit not in ("", "deg"):
        return False
    place = said.items.index(item)
    before = [other.text for other in said.items[max(0, place - 2) : place]]
    if len(before) == 2 and before[1] == "of" and said.items[place - 2].kind == "word":
        return not is_known(before[0]) and before[0] not in _SHORT_OF
    if place + 1 >= len(said.items):
        return item.spelled and item.value == 1 and bool(_GETTING & set(before[-1:]))
    if place and said.items[place - 1].text in ("-", "to", "or", "maybe", "and"):
        return False
    following = said.items[place + 1]
    if item.value < 1 and item.spelled and following.text in ("the", "my", "our", "that"):
        return True
    if following.text == "-" and following.glued and place + 2 < len(said.items):
        following = said.items[place + 2]
    if following.kind == "code":
        return True
    if following.kind == "tag" and following.text in _COUNTED and item.whole and item.value <= 60:
        return any(n is not item and n.value > item.value for n in said.numbers)
    if following.text == "and" and item.spelled and place + 2 < len(said.items):
        rest = said.items[place + 2]
        return rest.kind == "word" and not is_known(rest.text) and rest.text not in _MOVING
    return following.kind == "word" and following.text not in _AFTER_VALUE


_GETTING: Final = words("got get getting have had has see find found take took need want on")
"""Before a last "one" that stands for the thing itself ("never got one")."""

_COUNTED: Final = words(
    "registers register vents vent grilles grille returns runs branches ducts filters trunks"
    " supplies"
)
"""Things whose number beside a larger one is no value ("1087 across 11 registers")."""

_SHORT_OF: Final = words("shy north south upwards upward most tune total max excess reading")

_MOVING: Final = words("falling rising climbing dropping counting holding change steady")
"""What may stand before "of" and a value, and behind "and" after one."""

_AROUND_VAGUE: Final = words(
    """
    a an the it its it's is was of or so and as about i think guess maybe pretty kinda kind just
    like looks look one ones really very quite too for in on than before to me what whatever this
    that these those they are there my our their your be seems any thing sort what's fits here up
    down size-wise with all not all else other more probably likely i'd say call by from filter
    filters duct ducts grille grilles vent vents trunk return supply unit furnace air heat speed
    dial came comes every last time them it'll i'm be at or so old new residential cheap come
    house home would will do don't right about how much
    """
)
"""Words that may stand around a vague one; any other word makes the text about something else."""


def vague(said: Scan, *kinds: str) -> bool:
    """Whether a text gives a vague amount of these kinds and speaks of nothing else."""
    names = tuple(f"vague.{kind}" for kind in kinds)
    if not said.says(*names):
        return False
    return all(
        item.kind != "word" or item.text in _AROUND_VAGUE
        for item in said.items
        if not item.means(*names)
    )


def labels_of(said: Scan, numbers: list[Item], names: Mapping[str, tuple[str, ...]]) -> list[str]:
    """The label of each number: all labels stand before their numbers, or all behind.

    Args:
        said: As scanned.
        numbers: In the order of the text.
        names: Each label, and the meanings or words that say it.

    Returns:
        A label, or "", for each number.
    """
    items = said.items
    spoken = {word for said_by in names.values() for word in said_by if "." not in word}

    def label(item: Item) -> str:
        if not item.meanings and item.text not in spoken:
            return ""
        for name, said_by in names.items():
            if any(item.means(w) if "." in w else item.text == w for w in said_by):
                return name
        return ""

    places = [i for i, item in enumerate(items) if label(item)]
    if not places or not numbers:
        return [""] * len(numbers)
    leading = places[0] < items.index(numbers[0])
    found: list[str] = []
    for number in numbers:
        place = items.index(number)
        if leading:
            near = [i for i in places if i < place and not _number_between(items, i, place)]
            if not near and number is numbers[-1]:
                near = [i for i in places if i > place][:1]
            found.append(label(items[near[-1]]) if near else "")
        else:
            near = [i for i in places if i > place and not _number_between(items, place, i)]
            found.append(label(items[near[0]]) if near else "")
    return found


def _number_between(items: list[Item], i: int, j: int) -> bool:
    return any(item.kind == "num" for item in items[i + 1 : j])


def _ordinal(items: list[Item], i: int) -> bool:
    following = items[i + 1] if i + 1 < len(items) else None
    if following is not None and following.glued and following.text in ("st", "nd", "rd", "th"):
        return True
    if i > 0 and items[i - 1].text in _DOORS and items[i].whole and not items[i].unit:
        return i + 1 < len(items) and items[i + 1].text in _IS_OF_DOOR
    named = i > 0 and items[i - 1].text in _NUMBERED
    return named and items[i].whole and items[i].value <= _LAST_NUMBERED


_NUMBERED: Final = words("# no. number stage floor zone speed tap unit system")

_LAST_NUMBERED: Final = 12

_IS_OF_DOOR: Final = words("is was on reads has at blows gets runs") | {",", ":"}
_DOORS: Final = words("room suite apt apartment unit building bldg door")
"""What carries a number of its own, however high ("room 23 is 71 degrees")."""


def between(items: list[Item], one: Item, two: Item) -> list[str]:
    """The texts that stand between two items."""
    return [item.text for item in items[items.index(one) + 1 : items.index(two)]]


_RANGE: Final = frozenset(
    {
        "-",
        "to",
        "- to",
        "thru",
        "through",
        "up to",
        "maybe",
        ", maybe",
        "till",
        "until",
        "- maybe",
        "..",
        "perhaps",
        ". . .",
        "possibly",
        "or maybe even",
        "to maybe",
        "to about",
        "to around",
        "ish to",
        "tops",
        "- -",
        "on up to",
        "probably",
        "ish maybe",
        "bis",
        "2",
        "and up to",
    }
)


def relation(items: list[Item], one: Item, two: Item) -> str:
    """How two numbers belong together: "range", "or", "plus", "list" or "apart"."""
    words = [w for text in between(items, one, two) for w in text.split()]
    words = [w for w in words if w not in ("about", "around", "ish", ".")]
    said = " ".join(words)
    place = items.index(one)
    before = [item.text for item in items[max(0, place - 2) : place]]
    if said in _RANGE or not words:
        return "range" if words and one.value < two.value else "apart"
    if said in ("and", "&", "n") and any(
        w in ("between", "betwixt", "tween", "somewhere", "b/w", "btw", "btwn") for w in before
    ):
        return "range" if one.value < two.value else "apart"
    if (
        set(words)
        <= {
            "or",
            "maybe",
            ",",
            "either",
            "possibly",
            "even",
            "could",
            "be",
            "it",
            "its",
            "it's",
            "else",
            "might",
            "vs",
            "versus",
        }
        and words
    ):
        return "or"
    if said in ("+", "plus", "and another", "then another", "and then another", "plus another"):
        return "plus"
    if said in ("and", ",", "&", "/", ", and", "n", "then", ", then"):
        return "list"
    return "apart"


def together(said: Scan, *, hundreds: bool = False, thousands: bool = False) -> Scan:
    """The scan with numbers joined that were said or typed in two pieces.

    Args:
        said: As scanned.
        hundreds: "twelve fifty" is 1,250, "one oh five" is 105, "five zero" is 50.
        thousands: "24 000" is 24,000.
    """
    if len(said.numbers) < 2:
        return said
    items = list(said.items)
    i = 0
    while i + 1 < len(items):
        one, two = items[i], items[i + 1]
        joined = None
        if one.kind == "num" and not one.unit:
            if two.kind == "num" and hundreds and one.spelled and two.spelled:
                joined = _with_hundreds(one, two) or run_together(one.value, two.value)
                if (
                    joined is None and one.whole and two.whole and max(one.value, two.value) < 10
                ) or (
                    joined is None
                    and one.whole
                    and one.value % 10 == 0
                    and 0 <= two.value < 10
                    and one.value >= 10
                    and two.value == 0
                ):
                    joined = one.value * 10 + two.value
            elif two.kind == "num" and hundreds and _with_hundreds(one, two):
                joined = one.value + two.value
            elif two.kind == "num" and thousands and _is_group(one, two):
                joined = one.value * 1000 + two.value
            elif hundreds and _hyphened(items, i):
                joined = run_together(one.value, items[i + 2].value)
                if joined is not None:
                    two = items[i + 2]
                    del items[i + 1]
            elif (
                hundreds and one.spelled and two.text in ("oh", "o", "ought") and i + 2 < len(items)
            ):
                three = items[i + 2]
                if three.kind == "num" and three.spelled and three.value < 10:
                    joined = one.value * 100 + three.value
                    two = three
                    del items[i + 1]
        if joined is None:
            i += 1
            continue
        merged = Item(
            "num",
            f"{one.text} {two.text}",
            one.start,
            two.end,
            joined,
            two.unit,
            one.sign,
            token=one.token,
        )
        merged.negated, merged.glued = one.negated, one.glued
        items[i : i + 2] = [merged]
    return Scan(said.text, items)


def _with_hundreds(one: Item, two: Item) -> float | None:
    """ "1 thousand 2 hundred": the thousands and the rest of one number."""
    if one.value >= 1000 and one.value % 1000 == 0 and 100 <= two.value < 1000:
        return one.value + two.value if one.text.endswith(("thousand", "grand")) else None
    return None


def _hyphened(items: list[Item], i: int) -> bool:
    """ "one-fifty": a digit and tens in words, with a dash written against both."""
    if i + 2 >= len(items) or items[i + 1].text != "-" or not items[i + 1].glued:
        return False
    one, two = items[i], items[i + 2]
    least = 10 if one.value == 1 else 20
    tens = two.kind == "num" and two.spelled and two.glued and least <= two.value < 100
    return tens and one.spelled and one.whole and 1 <= one.value <= 19


def _is_group(one: Item, two: Item) -> bool:
    digits = two.token is not None and two.token.text.isdigit() and len(two.token.text) == 3
    digits = digits and two.value < 1000
    small = one.token is not None and one.token.text.isdigit() and 1 <= one.value <= 999
    return digits and small and not two.glued and two.start == one.end + 1
