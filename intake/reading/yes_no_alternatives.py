"""Answers that name another of a few things that exclude each other ("pvc" to "is it metal?")."""

from __future__ import annotations

import re
from typing import Final

__all__ = ["by_alternative"]

_GROUPS: Final[tuple[dict[str, re.Pattern[str]], ...]] = tuple(
    {name: re.compile(rf"\b(?:{words})\b") for name, words in group.items()}
    for group in (
        {
            "plastic": r"plastic|pvc|abs|vinyl|cpvc",
            "metal": r"metal|galv\w*|tin|steel|b[- ]?vent|sheet ?metal|aluminum|single wall",
            "flex": r"flex\w*|accordion|slinky",
            "board": "duct ?board|fiber ?board|board",
        },
        {
            "attic": "attic|loft",
            "basement": "basement|cellar",
            "crawl": r"crawl\w*",
            "slab": "slab|concrete",
            "garage": "garage",
            "closet": "closet",
            "hall": "hall|hallway|foyer|entry",
            "living": "living ?room|den|family room",
            "dining": "dining ?room",
            "kitchen": "kitchen",
            "bedroom": r"bedrooms?|master",
        },
        {
            "one": "single stage|one stage|single|one",
            "two": "two stages?|2 stages?|dual stage|two|high and low|high/low|2",
            "variable": "variable|modulating|modulates",
        },
    )
)
_PLACES: Final = _GROUPS[1]
_STAGES: Final = _GROUPS[2]
_SOMEWHERE: Final = re.compile(
    r"\b(?:in|on|above|under|below|inside|through) (?:the |a |an |your |their )?(?:attic|loft"
    r"|hall|hallway|kitchen|(?:\w+ )?bedroom|living room|dining room|family room|den|basement"
    r"|cellar|crawl\w*|slab|concrete|garage|(?:\w+ )?closet)\b"
)
"""A question of where something is, and not of the attic itself."""
_PARTLY: Final = re.compile(
    r"\b(?:half|some|part|partly|mostly|and|or|but|both|most|not|no|isn'?t|except|maybe)\b"
)
_NOT_THAT: Final = re.compile(
    r"^(?:no,? |nope,? )?(?:it'?s )?not (?:in |on )?(?:the |a )?[a-z]+ ?(?:,|but|-|;)+ ?"
    r"|, ?not (?:in |on )?(?:the |a )?[a-z]+$"
)
"""What is denied beside what is so ("not the attic, the crawl")."""
_LONGEST: Final = 6
"""Words of an answer that is taken so; a longer one says more."""


def by_alternative(text: str, question: str) -> bool | None:
    """Yes or no by which of a few exclusive things is named; None if that isn't plain.

    >>> by_alternative("white pvc", "Is the vent pipe metal?")
    False
    >>> by_alternative("basement", "Are the ducts in the attic?")
    False
    """
    text = _NOT_THAT.sub("", text)
    if len(text.split()) > _LONGEST or (_PARTLY.search(text) and "high and low" not in text):
        return None
    asked_line = question.lower()
    asked_for, _, instead = asked_line.partition(" rather than ")
    for group in _GROUPS:
        if group is _STAGES and "stage" not in asked_line:
            continue
        if group is _PLACES and not _SOMEWHERE.search(asked_line):
            continue
        asked = [name for name, words in group.items() if words.search(asked_for)]
        said = [name for name, words in group.items() if words.search(text)]
        if instead and len(said) == 1 and said[0] not in asked and group[said[0]].search(instead):
            return False
        if group is _PLACES and len(asked) == 1 and said and asked[0] not in said:
            return False
        if len(asked) == 1 and len(said) == 1:
            return asked == said
    return None
