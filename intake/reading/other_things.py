"""Sizes that a clause gives to another thing than the one asked about ("the room is 12x14")."""

from __future__ import annotations

import re
from functools import cache
from typing import Final

__all__ = ["is_other_thing"]

_FOREIGN: Final = (
    "soffit|chase|bulkhead|crawl|crawl ?space|room|bedroom|bathroom|kitchen|basement|house|garage"
    "|attic|closet|window|door|doorway|hatch"
    "|access panel|access door|panel|sheet(?! ?(?:m[eai][td][a-z]*|mtl|steel|iron|tin))|plywood"
    "|drywall"
    "|board of|table|tile|tiles|slab|yard|deck"
    "|truck|trailer|shed|addition|living room|den|hall|picture|photo|beam|post|lumber|opening in"
    " the floor|chimney|water heater|tv|rug"
)
"""Things of a house that have a size and move no air."""

_PLACES: Final = (
    "bedroom|bathroom|kitchen|basement|house|garage|attic|closet|living room|den|hall|addition|shed"
)
"""Rooms that behind a size tell where it is, not what it is of."""

_OTHERS: Final = {
    "duct": _FOREIGN + "|filter|air filter|grille|grill|register|diffuser|return grille"
    "|filter grille|return vent",
    "grille": _FOREIGN + "|box|boot|filter|air filter|duct|trunk|plenum|return drop",
    "filter": _FOREIGN + "|duct|trunk|plenum|return drop|register|diffuser|cabinet|furnace",
}
_SIZE: Final = r"[0-9][0-9./ ]* ?(?:in|inch|inches|\")? ?(?:x|by|\*) ?[0-9]"
_DESCRIBING: Final = (
    r"(?:(?:the|my|our|a|an|and|that|this|return|supply|air|wall|floor|ceiling|main|big|little"
    r"|small"
    r"|front|back|whole|furnace|attic|metal|plastic) )*"
)
_STILL: Final = (
    r"(?! (?:boot|boots|box|stack|head|can|drop|duct|trunk|plenum|return|supply|grilles?|grills?"
    r"|grate|vent))"
)


@cache
def _patterns(field: str) -> tuple[re.Pattern[str], re.Pattern[str]]:
    noun = _OTHERS[field]
    before = re.compile(
        rf"^{_DESCRIBING}(?:{noun})s?{_STILL}(?:'s| is| are| was| measures| size is|:| =) ?"
        rf"(?:about |roughly |only |a |an |like )*{_SIZE}"
    )
    behind = re.compile(
        rf"{_SIZE}[0-9./]*(?: ?x ?[0-9./]+)? ?(?:in|inch|inches|ft|foot|feet|'|\")? ?"
        rf"(?:(?:is|was|are) (?:for )?(?:the |a |an |our )?)?"
        rf"(?:(?:return|supply|air|wall|floor|ceiling|metal)"
        rf" )*(?!(?:{_PLACES})\b)(?:{noun})\b{_STILL}"
    )
    return before, behind


_A_GRILLE: Final = re.compile(
    r"^(?:(?:just|only|one|two|there(?:'?s| is| are)|it has|it'?s|we have|has|got|with) )*"
    rf"{_DESCRIBING}(?:one )?(?:big |large |single )*(?:filter |return )?"
    r"(?:grilles?|grills?|registers?|diffusers?)"
    rf"{_STILL}(?: (?:in|on|at|by|up) (?:the |a )?[a-z]+(?: (?:wall|ceiling|floor|way))?)?"
    rf"(?: that)?(?:'s| is| are|:)? (?:about |roughly |maybe )?{_SIZE}"
)
"""A grille told before its size, as an answer about a duct."""


def is_other_thing(field: str, clause: str) -> bool:
    """Whether the size of a clause is that of another thing.

    >>> is_other_thing("duct", "the room is 12 by 14"), is_other_thing("duct", "20x25 filter")
    (True, True)
    >>> is_other_thing("duct", "20x8 to the room")
    False
    """
    if field not in _OTHERS:
        return False
    if field == "duct" and _A_GRILLE.search(clause):
        return True
    before, behind = _patterns(field)
    return before.search(clause) is not None or behind.search(clause) is not None
