"""Numbers as neighbours: which of them count, which two are a range, which run together."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.numerals import run_together
from intake.reading.scan import Item, Scan

__all__ = ["between", "bounded", "kept", "relation", "together"]


def kept(said: Scan, *dimensions: str) -> list[Item]:
    """The numbers of these dimensions ("" for bare ones) that aren't denied or ordinals."""
    items = said.items
    found = [
        item
        for i, item in enumerate(items)
        if item.kind == "num" and item.dimension in dimensions and not _ordinal(items, i)
    ]
    real = [item for item in found if item.token is None or not item.token.pronoun]
    found = real or [item for item in found if len(items) == 1]
    asserted = [item for item in found if not item.negated]
    return asserted or found


def _ordinal(items: list[Item], i: int) -> bool:
    following = items[i + 1] if i + 1 < len(items) else None
    if following is not None and following.glued and following.text in ("st", "nd", "rd", "th"):
        return True
    return i > 0 and items[i - 1].text in (
        "#",
        "no.",
        "number",
        "stage",
        "floor",
        "zone",
        "speed",
        "tap",
    )


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
    words = [w for w in between(items, one, two) if w not in ("about", "around", "ish", ".")]
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


_BOUNDED: Final = re.compile(
    r"\b(?:at least|at most|no more than|not more than|no less than|less than|more than|greater than|under|over|above|below|up to|north of|south of"
    r"|upwards? of|minimum|maximum|max|min|max(?:es|ed)? out|at minimum|or more|or less than|or better|or higher|or lower|or under|or over|plus change|exceeds?|tops out|less then|more then|not over|not under"
    r"|fewer than|somewhere over|somewhere under|past|beyond|well over|well under|bigger than|smaller than|longer than|shorter than|higher than|lower than|couldn't be|can't be)\b|[<>]|(?<=\d)\+(?!\s*/?\s*[-\d.])"
)
_NOT_BOUNDED: Final = re.compile(
    r"\b(?:more or less|just (?:under|over|below|above|shy of|past)|(?:a )?(?:little|bit|hair|tad|touch|smidge) (?:under|over|below|above|more than|less than)|sea level|above sea|over the (?:wrap|insul|jack)|above grade"
    r"|(?:max|maximum|min|minimum) (?:static|speed|fan|fire|airflow|stage)|(?:under|over|above|below|past|beyond) (?:the|a|my|our|all|there|here)\b)"
)


def bounded(text: str) -> bool:
    """Whether only one end of the value is given ("at least 900").

    >>> bounded("at least 900"), bounded("just under 1200")
    (True, False)
    """
    return _BOUNDED.search(_NOT_BOUNDED.sub(" ", text)) is not None


def together(said: Scan, *, hundreds: bool = False, thousands: bool = False) -> Scan:
    """The scan with numbers joined that were said or typed in two pieces.

    Args:
        said: As scanned.
        hundreds: "twelve fifty" is 1,250, "one oh five" is 105, "five zero" is 50.
        thousands: "24 000" is 24,000.
    """
    items = list(said.items)
    i = 0
    while i + 1 < len(items):
        one, two = items[i], items[i + 1]
        joined = None
        if one.kind == "num" and not one.unit:
            if two.kind == "num" and hundreds and one.spelled and two.spelled:
                joined = run_together(one.value, two.value)
                if joined is None and one.whole and two.whole and max(one.value, two.value) < 10:
                    joined = one.value * 10 + two.value
                elif (
                    joined is None
                    and one.whole
                    and one.value % 10 == 0
                    and 0 <= two.value < 10
                    and one.value >= 10
                    and two.value == 0
                ):
                    joined = one.value * 10 + two.value
            elif two.kind == "num" and thousands and _is_group(one, two):
                joined = one.value * 1000 + two.value
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


def _is_group(one: Item, two: Item) -> bool:
    digits = two.token is not None and two.token.text.isdigit() and len(two.token.text) == 3
    small = one.token is not None and one.token.text.isdigit() and 1 <= one.value <= 999
    return digits and small and not two.glued and two.start == one.end + 1
