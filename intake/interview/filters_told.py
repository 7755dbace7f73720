"""The filter that it will run with, where the line also tells of the one that is there or of none.

What goes in counts; the old one, and "no filter at the unit", only say what is there today.
"""

import re
from typing import Final

from intake.interview.beside import filter_place
from intake.reading.manner import sureness
from intake.reading.read import read
from intake.reading.result import Accepted, Value

__all__ = ["filters_each_in_place", "the_filter"]

_SIZE: Final = r"\d+(?:\.\d+)? ?(?:x|by|×|\*) ?\d+(?:\.\d+)?(?: ?(?:x|by|×|\*) ?\d+(?:\.\d+)?)?"
_HAS_SIZE: Final = re.compile(_SIZE)
_CLAUSES: Final = re.compile(r"[,;]|\.(?!\d)|\b(?:but|and)\b")
_OLD: Final = re.compile(
    r"\b(?:currently|current|old|existing|was|now|had|today|at the moment|used to)\b|^(?:has"
    r"|it has)\b"
)
_NEW: Final = re.compile(
    r"\b(?:(?:i'?m |we'?re |they'?re |i |we )?(?:(?:plan(?:ning)?|want(?:s|ing)?|switch(?:ing)?"
    r"|go(?:ing)?|chang(?:e|ing)|upgrad(?:e|ing)|mov(?:e|ing)) (?:on |to |with |for |up to )+"
    r"|put(?:ting)? in |install(?:ing)? |getting |add(?:ing)? )|(?:the )?new (?:one|filter"
    r"|cabinet|rack|media)"
    r"(?: (?:is|will be|gonna be|going to be|takes|has|gets|holds))?|there'?ll be|there will be"
    r"|will (?:be|have|run|get)"
    r"|it'?ll (?:be|have|run|get))(?: (?:an?|the))?\b"
)
_NONE_THERE: Final = re.compile(
    r"^(?:there'?s |there is )?(?:none (?:yet|now|at the (?:unit|furnace))|no filter(?: rack)?"
    r"(?: (?:at|in|by) (?:the )?(?:unit|furnace|air ?handler|cabinet|blower|slot))?"
    r"|nothing (?:there |yet|now))(?: yet| now| there)?$"
)
_ELSEWHERE: Final = re.compile(
    r"\b(?:no|isn'?t an?|none) filter(?: rack)? (?:at|in|by) (?:the )?"
    r"(?:unit|furnace|air ?handler|cabinet)\b[, ]*(?:but |and |only |just )*"
)
_EACH: Final = re.compile(
    r",? (?:one|1) (?:per|for each|in each|behind each|each) (?:grille?|return|side|filter)?s?\b"
    r"|, (?:one|1) each\b"
)
_PLEAT: Final = re.compile(
    r"(?P<size>\d+ ?x ?\d+ ?x ?(?P<depth>[1-6]))[,; ]+(?:an? )?"
    r"(?P<again>one|two|four|five|1|2|4|5)[- ]?(?:inch|in|\")s?(?: (?:thick|deep|pleat\w*|media"
    r"|filter))*"
)
_AGAIN: Final = re.compile(
    r"(?P<faces>\d+ ?x ?\d+ ?x ?)\d[, ]+(?:no|sorry|i mean|make that|wait|scratch that)[, ]+"
    r"(?:wait[, ]+|it'?s |its |an? )*(?P<depth>\d)(?: inch| in| deep| thick)?[.! ]*$"
)
_HOUSING: Final = re.compile(r"\b(?:cabinets?|slots?|racks?|box|housing)\b")
_WORDS: Final = {"one": "1", "two": "2", "four": "4", "five": "5"}


_FULL: Final = r"\d+ ?(?:x|by) ?\d+ ?(?:x|by) ?\d+"
_IN_ONE: Final = re.compile(
    r",? (?:which|that) is (?:also )?(?:an? )?\d+ ?(?:x|by) ?\d+(?! ?(?:x|by) ?\d)(?: too)?[.! ]*$"
)
"""The size of the grille or slot that a filter sits in."""
_EITHER_FILTER: Final = re.compile(
    rf"(?:it'?s |an? )*(?P<one>{_FULL}) (?:(?:for )?(?:today|now|at the moment)|i (?:think|guess))"
    rf"[, ]+(?:but |and )?(?:could be |might be |maybe |or |later |then )*(?:an? )?(?P<two>{_FULL})"
    r"(?: (?:once|when|after|later|maybe|possibly|i think)\b[^\d]*)?"
)
"""One filter of two sizes, of which it isn't said which one it will run with."""


def the_filter(line: str) -> str:
    """The line with nothing in it but the filter it will run with.

    >>> the_filter("currently a 16x25x1 but going to a 20x25x5 cabinet")
    'a 20x25x5'
    >>> the_filter("20x25x5, no 4")
    '20x25x4'
    """
    line = _IN_ONE.sub("", _EACH.sub("", line))
    either = _EITHER_FILTER.fullmatch(line)
    if either is not None and either["one"] != either["two"]:
        return f"{either['one']} or {either['two']}"
    again = _AGAIN.search(line)
    if again is not None:
        line = line[: again.start()] + again["faces"] + again["depth"]
    pleat = _PLEAT.search(line)
    if pleat is not None and _WORDS.get(pleat["again"], pleat["again"]) == pleat["depth"]:
        line = line[: pleat.start()] + pleat["size"] + line[pleat.end() :]
    line = _ELSEWHERE.sub("", line)
    pieces = [piece.strip() for piece in _CLAUSES.split(line) if piece.strip()]
    sized = [piece for piece in pieces if _HAS_SIZE.search(piece)]
    new = [piece for piece in sized if _NEW.search(piece) and not _OLD.search(piece)]
    dropped = [
        piece for piece in pieces if _NONE_THERE.match(piece) or (_OLD.search(piece) and new)
    ]
    if not (dropped and (new or [p for p in sized if p not in dropped])):
        return line
    kept = [
        _HOUSING.sub(" ", _NEW.sub(" ", piece)).strip() for piece in pieces if piece not in dropped
    ]
    return " ".join(", ".join(kept).split())


def filters_each_in_place(line: str) -> Accepted | None:
    """Two filters, each told with its own place; None if one lacks it or both share one.

    >>> found = filters_each_in_place("20x20x1 in the hall and 16x25x1 at the unit")
    >>> [row["place"] for row in found.values["filters"]]
    ['grille', 'cabinet']
    """
    pieces = [p for p in _CLAUSES.split(line) if _HAS_SIZE.search(p)]
    if len(pieces) != 2 or _OLD.search(line):
        return None
    rows: list[Value] = []
    places = []
    for piece in pieces:
        sizes = _HAS_SIZE.findall(piece)
        place = filter_place(piece)
        found = read("filter", sizes[0]) if len(sizes) == 1 else None
        if not place or not isinstance(found, Accepted):
            return None
        places.append(place)
        rows.append({**found.values, "place": place})
    return Accepted({"filters": rows}, sureness(line)) if len(set(places)) == 2 else None
