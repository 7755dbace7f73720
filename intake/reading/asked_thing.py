"""Which duct a question asks about, and which part of an answer speaks of that one.

"Supply 18x8, return 24x8" answers the question about the return with its second part; "the return
drop is 20x10" doesn't answer the one about the supply trunk at all.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

__all__ = ["Part", "is_asked", "parts_of", "thing_asked"]

_THING: Final = re.compile(
    r"\b(?:(?P<back>return(?:ing)?(?: air)?|cold air)(?: (?:drops?|trunks?|ducts?|runs?|mains?"
    r"|sides?|grilles?|grills?|vents?|openings?|ones?|plenum))?"
    r"|(?P<supply>supply(?: air)?)(?: (?:trunks?|ducts?|runs?|mains?|sides?|vents?|registers?|ones?"
    r"|plenum))?"
    r"|(?P<branch>branches|branch(?: (?:runs?|ducts?))?|take ?offs|run ?outs)"
    r"|(?P<trunk>(?:main )?trunks?|main duct))(?:'s)?\b"
)
_WORDS: Final = {"back": "return", "supply": "supply", "branch": "branches", "trunk": "trunk"}
_FIGURE: Final = re.compile(
    r"[0-9]|\b(?:four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen"
    r"|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)\b"
)
_CLAUSES: Final = re.compile(r"[,;](?=\s)|\.(?=\s|$)|\bbut\b")
_BEFORE: Final = re.compile(r"(?:\b(?:and|but|the|my|our|a|an|on) )+$")


@dataclass(frozen=True, slots=True)
class Part:
    """A part of an answer that names a duct and gives a figure.

    Attributes:
        thing: "return", "supply", "branches" or "trunk".
        text: Its words.
        leads: Whether the name stands before the figures.
    """

    thing: str
    text: str
    leads: bool = True


def thing_asked(question: str) -> str:
    """The one kind of duct that a question asks about; "" if none, or several.

    >>> thing_asked("What size is the return duct?"), thing_asked("How long is it?")
    ('return', '')
    """
    things = {_thing(match) for match in _THING.finditer(question.lower())}
    if "return" in things or "supply" in things:
        things.discard("trunk")
    return things.pop() if len(things) == 1 else ""


def is_asked(part: Part, asked: str) -> bool:
    """Whether a part speaks of what is asked; a trunk without a side is the supply's."""
    return part.thing == asked or {part.thing, asked} == {"supply", "trunk"}


def parts_of(line: str) -> list[Part]:
    """The parts of a normalised answer that name ducts, each with its figures; [] if it isn't so.

    The names stand before all figures, or behind them all.

    >>> [part.thing for part in parts_of("supply 18x8 return 24x8")]
    ['supply', 'return']
    """
    named = list(_THING.finditer(line))
    figures = [match.start() for match in _FIGURE.finditer(line)]
    if not named or not figures:
        return []
    clauses = [clause.strip(" ,;.") for clause in _CLAUSES.split(line)]
    valued = [clause for clause in clauses if _FIGURE.search(clause)]
    if len(valued) > 1 and all(len(_THING.findall(clause)) == 1 for clause in valued):
        whose = [_THING.search(clause) for clause in valued]
        return [Part(_thing(match), c) for match, c in zip(whose, valued, strict=True) if match]
    leads = True
    if named[0].start() < figures[0]:
        starts = [_with_article(line, match.start()) for match in named]
        ends = [*starts[1:], len(line)]
        starts[0] = 0
    elif named[-1].end() > figures[-1]:
        ends = [match.end() for match in named]
        starts = [0, *ends[:-1]]
        ends[-1] = len(line)
        leads = False
    else:
        return []
    parts = [
        Part(_thing(match), line[start:end].strip(" ,;."), leads)
        for match, start, end in zip(named, starts, ends, strict=True)
    ]
    return [part for part in parts if _FIGURE.search(part.text)]


def _thing(match: re.Match[str]) -> str:
    return _WORDS[str(match.lastgroup)]


def _with_article(line: str, start: int) -> int:
    before = _BEFORE.search(line[:start])
    return before.start() if before else start
