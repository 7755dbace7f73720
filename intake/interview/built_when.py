"""The year of the house itself, where the line tells those of its ducts or an addition too."""

import re
from typing import Final

__all__ = ["of_the_house"]

_PIECES: Final = re.compile(r"[,;]|\.(?!\d)|\b(?:but|plus|and|with|then|although|though|while)\b")
_LATER: Final = re.compile(
    r"\b(?:addition|added|adding|remodel\w*|renovat\w*|redone|redid|reno|rebuilt|gutted|updated"
    r"|ducts?|ductwork|furnace|a/?c|hvac|roof|kitchen|basement|garage|unit|equipment|bought"
    r"|moved in|flipped|permit\w*|new (?:ducts|furnace|system))\b"
)
_YEAR: Final = re.compile(r"\b(?:1[89]|20)\d\d\b|'\d\d\b|\b\d\ds?\b|\b[a-z]+ties\b")
_SHORT: Final = re.compile(
    r"(?:built |in |about |around |circa |it'?s |from |house is |maybe |, )*'?(?P<one>\d\d)"
    r" ?(?:or|/|-|to|and)(?: maybe)? '?(?P<two>\d\d)[.! ]*"
)
_APOSTROPHE: Final = re.compile(
    r"(?:built |in |about |around |circa |it'?s |from |house is |maybe |, )*'(?P<year>\d\d)[.! ]*"
)
_BUILT: Final = re.compile(
    r"(?:.*\b)?(?:built|house (?:is|was)|dates? (?:from|to)|constructed)(?: in| from| back in)?"
    r" '?(?P<year>[3-9]\d)[.! ]*"
)
_LAST_OF_2000S: Final = 30


def of_the_house(line: str) -> str:
    """The line without what it says of additions and ducts, two-digit years written out.

    >>> of_the_house("1964, ducts redone 1995")
    '1964'
    >>> of_the_house("61 or 62"), of_the_house("'84")
    ('1961 to 1962', '1984')
    """
    pieces = [piece.strip() for piece in _PIECES.split(line)]
    others = [piece for piece in pieces if _LATER.search(piece)]
    mine = [piece for piece in pieces if piece and piece not in others]
    if others and any(_YEAR.search(piece) for piece in mine):
        line = ", ".join(mine)
    both = _SHORT.fullmatch(line)
    if both is not None and _full(both["one"]) < _full(both["two"]):
        return f"{_full(both['one'])} to {_full(both['two'])}"
    short = _APOSTROPHE.fullmatch(line) or _BUILT.fullmatch(line)
    return str(_full(short["year"])) if short is not None else line


def _full(short: str) -> int:
    return int(short) + (1900 if int(short) >= _LAST_OF_2000S else 2000)
