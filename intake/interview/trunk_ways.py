"""Trunks counted by the ways they go: "one each way", "one left, two right", "one plus a little
one"."""

import re
from typing import Final

from intake.reading.manner import sureness
from intake.reading.result import Accepted, AskBack, AskKind
from intake.reading.small_counts import COUNT, count_said

__all__ = ["trunks_by_way"]

_EACH: Final = re.compile(
    r"(?:there'?s |it'?s |we have |just )*(?:one|1|a trunk|one trunk|(?:the )?trunks?)"
    r" (?:goes |go |going |runs? |off |out |leaves? |comes? )*(?:to |on |at |in |off |out )*"
    r"(?:each|either|both) (?:of the )?"
    r"(?:way|side|end|direction|ways|sides|ends|directions)(?: of (?:it|the (?:plenum|box|unit"
    r"|furnace)))?[.! ]*"
)
_WAY: Final = (
    r"(?:left|right|front|back|rear|up|down|north|south|east|west|side|end|upstairs|downstairs"
    r"|basement|attic|addition|garage|crawl\w*|bedrooms?|kitchen|living)"
)
_NUMBER: Final = rf"(?:{COUNT}|another|a second|a third|the other|an?)"
_PIECE: Final = re.compile(
    rf"(?:and |plus )*(?P<n>{_NUMBER})(?: (?:one|trunk|more|main|big one|small one|little one))?"
    r"(?: (?:goes|going|runs|running|heads|heading|leaves|feeds|to|toward|towards|out|off|on|for"
    rf"|in|of|at|the))* (?:[a-z]+ )?{_WAY}(?: (?:side|end|of the house|rooms?))?"
)
_AND_A: Final = re.compile(
    rf"(?:there'?s |it'?s )*(?:{COUNT}|an?) (?:(?:big|main|large) )*(?:main|trunk|one)s?\b[^,;\d]*?"
    r"[,;]? ?(?:plus|and|with|\+) (?:an?|one|another) (?:little|small|smaller|short|separate|tiny)"
    r" (?:one|trunk|main|duct)\b[^\d]*"
)
_RUNS_TOO: Final = re.compile(
    rf"(?:an?|one|1) (?:main |supply )?trunk (?:and|plus) {COUNT} (?!.*\b(?:runs?|branch\w*)\b)"
    r".*\b(?:flex\w*|rounds?|pipes?|ducts?)\b.*"
)
_SPLIT: Final = re.compile(r"[,;&]|\band\b|\bplus\b")


def trunks_by_way(line: str) -> Accepted | AskBack | None:
    """How many trunks leave the plenum, by where each goes; None if the line doesn't tell it so.

    Args:
        line: Normalised text.

    >>> trunks_by_way("one left, two right").values, trunks_by_way("one way") is None
    ({'count': 3}, True)
    """
    if _EACH.fullmatch(line):
        return Accepted({"count": 2}, sureness(line))
    if _RUNS_TOO.fullmatch(line):
        return AskBack(
            "One trunk, and the others are runs of their own off the plenum? How many ducts leave"
            " it in all?",
            (),
            AskKind.MISSING_PART,
        )
    if _AND_A.fullmatch(line):
        return AskBack("How many trunks is that in all?", (), AskKind.MISSING_PART)
    pieces = [piece.strip(" .!") for piece in _SPLIT.split(line)]
    pieces = [piece for piece in pieces if piece]
    told = [_PIECE.fullmatch(piece) for piece in pieces]
    if len(pieces) < 2 or any(piece is None for piece in told):
        return None
    total = sum(_how_many(piece["n"]) for piece in told if piece is not None)
    return Accepted({"count": total}, sureness(line))


def _how_many(words: str) -> int:
    return count_said(words) or 1
