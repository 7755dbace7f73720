"""Return openings told in words that count or correct: "14x24 twice", "all 12x6 except one 30x8".

The line is rewritten into a plain list where its words leave no doubt, and then read as one.
"""

import itertools
import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from intake.reading.manner import sureness
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value, Values
from intake.reading.small_counts import COUNT, count_said

__all__ = ["openings_joined", "openings_told"]

_SIZE: Final = r"\d+(?:\.\d+)? ?(?:x|by|×|\*) ?\d+(?:\.\d+)?(?! ?(?:x|by) ?\d)"
_SLOTS: Final = re.compile(r"\b(?:slot\w*|holes?|openings?)\b")
_FRAME: Final = re.compile(r"\b(?:frames?|edges?|overall|outside)\b")
_OPENING_WORDS: Final = re.compile(r"[ ,]*\b(?:the )?(?:slots?|slotted(?: part)?|holes?)\b")

_TWICE: Final = re.compile(rf"({_SIZE}) (twice|once|three times|times two)\b")
_TIMES: Final = {"twice": "2", "once": "1", "three times": "3", "times two": "2"}
_DONT_COUNT: Final = re.compile(
    rf"(?:the )?({_SIZE})(?:'s| one| ones)? (?:(?:don'?t|doesn'?t|does not|do not) "
    rf"(?:count|pull|work|suck)"
    r"|(?:is|are|'s) (?:dead|blocked off|not hooked up|disconnected|closed off|fake"
    r"|a supply))[^,;]*[,;]?"
)
_NOT_IT: Final = re.compile(
    rf"({_SIZE})(?P<between>(?:(?!{_SIZE}).)*?),? (?:and )?(?:not|no not|wait not) \1,? "
    rf"(?:but |it'?s |its |rather )*"
    rf"(?P<new>{_SIZE})"
)
_EXCEPT: Final = re.compile(
    rf"(?P<n>{COUNT})(?: of (?:em|them))?,? (?:and )?(?:they'?re |are )?all (?:of them "
    rf"|of em )?(?:are )?(?P<most>{_SIZE})"
    rf",? (?:except|but|save|other than)(?: for)? (?:the )?(?P<m>{COUNT})(?: that'?s| is"
    rf"| at| which is)?"
    rf" (?P<few>{_SIZE})\D*"
)
_SAME_AGAIN: Final = re.compile(
    rf"({_SIZE})(?P<words>[^\d]*?),? (?:and )?(?:another|one more|a second)(?: one)?"
    rf"(?: the| of the| that)? same"
    r"(?: size| thing)?[^\d]*"
)
_TO_OF: Final = re.compile(r"^(?:there'?s |there are )?too? of (?=them|em|those)")
_ONE_THERE: Final = re.compile(
    r"[ ,(]*\b(?:one|1) (?:of (?:them|em) )?(?:is|was|'s) (?:behind|in|on|under|at|by"
    r"|near|above|blocked"
    r"|dirty|up|down|low|high|half)\b[^,;()\d]*\)?"
)
_ONE_PLACED: Final = re.compile(
    rf"^(?:just |only )?(?:1|one) (?:in|on|at|by) the [a-z ]+, ?(?={_SIZE})"
)
_EACH: Final = re.compile(
    rf"^(?P<n>{COUNT}),? (?:of (?:them|em),? )?(?P<size>{_SIZE}) (?:each|apiece)\b"
)
_KINDS: Final = re.compile(
    r"\b(?:stamped|louvered|louvred|steel|wood|metal|white|plain|old|cheap|bar|painted)"
    r"(?: (?:faces?|grill?e?s?|ones|type))?"
    rf"(?: (?:at|of))? (?={_SIZE})"
)
_PERHAPS_ANOTHER: Final = re.compile(r"\b(?:maybe|perhaps|possibly) (?=another\b)")


_HALF_OF_IT: Final = re.compile(
    rf"[^\d]*(?:(?:two|2),? (?:one is )?)?({_SIZE}),? (?:and )?(?:the )?(?:other"
    rf"(?: one)?(?: is)? )?"
    r"(?:about )?half (?:of )?(?:that|it|as big|the size)[^\d]*"
)


def openings_told(line: str) -> Reading | None:
    """What a normalised line lists, where its words count or correct; None if it is plain."""
    half = _HALF_OF_IT.fullmatch(line)
    if half is not None:
        first = read("grille", half[1])
        if isinstance(first, Accepted):
            return AskBack(
                "And the other one, or shall we go on with this one only?",
                (first.values,),
                AskKind.MISSING_PART,
            )
    plain = _plain(line)
    if plain == line:
        return _all_at_one_place(line) or _apart(line)
    hole, frame = _SLOTS.search(plain) is not None, _FRAME.search(plain) is not None
    found = read(
        "grille", _OPENING_WORDS.sub(" ", plain).strip(" ,;") if hole and not frame else plain
    )
    if not isinstance(found, Accepted):
        return None
    place = "slots" if hole and not frame else found.place
    return replace(found, sure=sureness(line), place=place)


_AT_PLACE: Final = re.compile(
    r"[ ,]*\b(?:(?:in|at|to|of|by) )?(?:the )?(?:slots?|slotted(?: part)?|holes?|openings?"
    r"|frames?)\b"
    r"(?: size)?"
)
_ONE_WITHIN_IN: Final = 4.0
"""Inches on each side by which a frame is larger than its slots, at the most."""


def _all_at_one_place(line: str) -> Accepted | None:
    """Several openings with one word of where the tape was: "20x20 and 14x8 slots".

    A size that fits closely in the other may be the same opening's without its frame.
    """
    hole, frame = _SLOTS.search(line) is not None, _FRAME.search(line) is not None
    told = (re.findall(r"\d+(?:\.\d+)?", size) for size in _ANY_SIZE.findall(line))
    sizes = [[float(side) for side in sides] for sides in told]
    if hole == frame or len(sizes) < 2 or not _AT_PLACE.search(line):
        return None
    for one, two in itertools.pairwise(sizes):
        sides = [abs(a - b) for a, b in zip(sorted(one), sorted(two), strict=True)]
        if one != two and max(sides) <= _ONE_WITHIN_IN and min(sides) > 0:
            return None
    found = read("grille", _AT_PLACE.sub(" ", line).strip(" ,;."))
    if not isinstance(found, Accepted) or "grilles" not in found.values:
        return None
    return replace(found, sure=sureness(line), place="slots" if hole else "frame")


_ANY_SIZE: Final = re.compile(_SIZE)


def _plain(line: str) -> str:
    """The line as a plain list of sizes with counts."""
    line = _TO_OF.sub("two of ", line)
    line = _DONT_COUNT.sub(" ", line)
    line = _NOT_IT.sub(r"\g<between> \g<new>", line)
    line = _TWICE.sub(lambda said: f"{_TIMES[said[2]]} {said[1]}", line)
    line = _PERHAPS_ANOTHER.sub("", line)
    line = _ONE_THERE.sub(" ", line) if len(re.findall(_SIZE, line)) == 1 else line
    line = _ONE_PLACED.sub("", line)
    line = _EACH.sub(r"\g<n> \g<size>", line)
    line = _KINDS.sub("", line) if re.search(rf"\b{COUNT} (?:\w+ ){{1,2}}{_SIZE}", line) else line
    again = _SAME_AGAIN.fullmatch(line)
    if again is not None:
        line = f"2 {again[1]} {again['words']}"
    but = _EXCEPT.fullmatch(line)
    if but is not None:
        every, few = count_said(but["n"]), count_said(but["m"])
        if every and few and few < every:
            line = f"{every - few} of {but['most']} and {few} of {but['few']}"
    return " ".join(line.split()).strip(" ,;")


_CLAUSE: Final = re.compile(r"[,;]|\band\b|\bbut\b")


def _apart(line: str) -> Accepted | None:
    """Sizes each with where its tape was: those at the hole, or all where all are alike."""
    pieces = [piece.strip() for piece in _CLAUSE.split(line) if piece.strip()]
    sized = [piece for piece in pieces if re.search(_SIZE, piece)]
    if len(sized) < 2 or len(sized) != len(pieces):
        return None
    holes = [piece for piece in sized if _SLOTS.search(piece) and not _FRAME.search(piece)]
    frames = [piece for piece in sized if _FRAME.search(piece) and not _SLOTS.search(piece)]
    if len(holes) == len(sized):
        kept, place = holes, "slots"
    elif len(frames) == len(sized):
        kept, place = frames, "frame"
    elif len(sized) == 2 and len(holes) == len(frames) == 1:
        kept, place = holes, "slots"
    else:
        return None
    plain = " and ".join(_FRAME.sub(" ", _OPENING_WORDS.sub(" ", piece)) for piece in kept)
    found = read("grille", " ".join(plain.replace(" on the ", " ").split()))
    return replace(found, place=place) if isinstance(found, Accepted) else None


def openings_joined(
    why: str, readings: Sequence[Mapping[str, Value]], fresh: object, line: str
) -> Values | None:
    """The openings asked about together with what the answer adds: the other one, or how many.

    Args:
        why: What was asked.
        readings: The openings read so far.
        fresh: The answer as it is read alone.
        line: The answer, normalised.
    """
    if why.startswith("And the other one") and len(readings) == 1:
        if isinstance(fresh, Accepted) and "width_in" in fresh.values:
            rows: list[Value] = [{**readings[0], "count": 1}, {"count": 1, **fresh.values}]
            return {"grilles": rows}
        return None
    if not why.startswith("How many of each size"):
        return None
    counts = [count_said(word) for word in re.findall(rf"\b{COUNT}\b", line)]
    plain = re.fullmatch(rf"(?:{COUNT}|and|,|then| )+[.! ]*", line)
    if plain is None or len(counts) != len(readings) or None in counts:
        return None
    counted: list[Value] = [
        {**row, "count": count} for row, count in zip(readings, counts, strict=True) if count
    ]
    return {"grilles": counted}
