"""What a value is said under: denied, past, another house's, on a condition, asked, taken back.

"Not 20x8", "used to be flex", "the neighbor's is 1,200", "if it's the big one, 4 ton", "is it
20x8?", "0.5 but that can't be right": each holds a value that the person doesn't give. The readers
find values; this says which clauses of a text speak of one that doesn't stand.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from intake.reading.frame_words import (
    ANOTHERS,
    ASKED,
    ASKED_THE,
    DENIED,
    HEDGED_NO,
    IF,
    IS_NOW,
    NEGATIVE,
    NOT_KNOWN_HERE,
    NOT_KNOWN_IF,
    OLD_ONE,
    ONE_AND_OTHER,
    OTHER_KIND,
    OTHER_UNIT,
    PAST,
    PLANNED,
    RATED,
    REAL,
    SPAN_OF_PLATE,
    SWAPPED,
    SWAPS,
    TAKEN_BACK,
    THE_DAY_BEFORE,
    THIS_UNIT,
    TOLD,
    WAS,
    WHOSE,
    WISHED,
    WRONG_BEHIND,
)
from intake.reading.other_things import is_other_thing
from intake.reading.plain_talk import is_innocent, is_plain
from intake.reading.words import words

__all__ = ["Frame", "Framed", "framed"]


class Frame(StrEnum):
    """Why a value that is said doesn't stand."""

    DENIED = "denied"
    PAST = "past"
    ANOTHERS = "another's"
    OTHER_THING = "another thing's"
    CONDITIONAL = "conditional"
    ASKED = "asked"
    TAKEN_BACK = "taken back"
    WISHED = "wished"
    PLANNED = "planned"
    """Only where another clause says what is really there, or that it isn't known."""
    TOLD = "told"
    """What somebody said or thought, beside what is seen; only where the two don't agree."""


@dataclass(frozen=True, slots=True)
class Framed:
    """The frame of a text.

    Attributes:
        frame: The first one found.
        rest: The clauses that stand, joined; "" if none of them says a value.
        within: The clauses that don't.
    """

    frame: Frame
    rest: str
    within: str

    @property
    def contrasted(self) -> bool:
        """Whether a clause stands beside those that don't."""
        return bool(self.rest)


_CUT: Final = re.compile(
    r"[;!?]+(?=\s|$)|,(?=\s)|\.+(?=\s|$)|\s-+\s|[()]+|\b(?:but|although|though|however|whereas"
    r"|while)\b"
    r"|(?<=\S) (?=(?:and )?(?:now|nowadays|today|currently) (?:it|the|we|there|its|is\b|\d|a\b"
    r"|an\b|at\b|reads?\b|all\b|they|has\b))"
    r"|(?<=\d) (?=(?:used to|oh\b|wait\b|i (?:got|get|measured|read|have)\b|(?:but )?actual|only"
    r" got))"
    r"|(?:(?<=\d)|(?<=ton)|(?<=tons)|(?<=inch)|(?<=round)|(?<=ft)|(?<=cfm)|(?<=flex)|(?<=\"))"
    r" (?=it'?s (?:a |an )?[0-9.])"
)
_NUMBER: Final = re.compile(
    r"[0-9]|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen"
    r"|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty"
    r"|sixty|seventy|eighty|ninety|hundred|half|quarter|point)\b"
)


_MAYBE_THE_OLD: Final = words("capacity airflow efficiency filter blower_type year area count")
"""Fields in which the question may well be about the old equipment."""

_MAYBE_WISHED: Final = words("airflow capacity efficiency static_pressure blower_type temperature")
"""Fields in which the question may well be about what is wanted or will be put in."""

_FIGURE: Final = words("airflow static_pressure temperature capacity percent")
"""Fields of what varies, in which "sometimes" is no value."""


_SIZED: Final = words("duct filter grille")
"""Fields in whose answers a plain word may name another thing that has a size ("20x8 trunk")."""


def framed(field: str, line: str, question: str = "") -> Framed | None:
    """What a normalised answer is said under, or None if it simply stands.

    >>> framed("duct", "used to be 20x8 but now 24x8").rest
    'now 24x8'
    >>> framed("length", "not sure, 40 ft") is None
    True
    """
    if is_innocent(line) or (field not in _SIZED and is_plain(line)):
        return None
    if any(swap in line for swap in SWAPS):
        line = SWAPPED.sub(r"used to be \g<old>, now \g<new>", line)
    if "other" in line:
        line = ONE_AND_OTHER.sub(r"\g<one>another", line)
    clauses = [part.strip() for part in _CUT.split(line) if part and part.strip()]
    found = [_frame_of(field, clause, question) for clause in clauses]
    _take_back(clauses, found)
    numbered = [bool(_NUMBER.search(clause)) for clause in clauses]
    _set_elsewhere(field, clauses, found, numbered, question)
    valued = numbered if field not in _WORDED else [True] * len(clauses)
    _contrast(clauses, found, valued)
    planned = [k for k, clause in enumerate(clauses) if numbered[k] and _is_planned(field, clause)]
    for k in planned:
        plate = SPAN_OF_PLATE.search(clauses[k]) or _BESIDE.search(clauses[k])
        behind = [
            c for j, c in enumerate(clauses) if j != k and numbered[j] and (plate or REAL.search(c))
        ]
        if found[k] is None and (behind or any(map(NOT_KNOWN_HERE.search, clauses))):
            found[k] = Frame.PLANNED
    if not any(found):
        told = [_is_told(field, c) for c in clauses]
        seen = [says and not tells for says, tells in zip(valued, told, strict=True)]
        if any(told) and any(seen) and not any(map(PLANNED.search, clauses)):
            found = [Frame.TOLD if tells else None for tells in told]
    if not any(found) and WHOSE.search(line):
        return Framed(Frame.ASKED, "", line)
    first = next((frame for frame in found if frame is not None), None)
    if first is None:
        return None
    rest = [clause for clause, frame in zip(clauses, found, strict=True) if frame is None]
    within = [clause for clause, frame in zip(clauses, found, strict=True) if frame is not None]
    says = bool(rest) and (field in _WORDED or any(_NUMBER.search(clause) for clause in rest))
    said = ", ".join(rest) if says else ""
    return Framed(first, said, ", ".join(within))


def _contrast(clauses: list[str], found: list[Frame | None], valued: list[bool]) -> None:
    """Mark what was ("was 80 this morning, 74 now") beside what is said to be now."""
    if len(clauses) < 2 or any(frame is not None for frame in found):
        return
    was = [k for k, c in enumerate(clauses) if valued[k] and WAS.search(c) and not IS_NOW.search(c)]
    now = [k for k, c in enumerate(clauses) if valued[k] and k not in was and IS_NOW.search(c)]
    if was and now:
        for k in was:
            found[k] = Frame.PAST


def _set_elsewhere(
    field: str,
    clauses: list[str],
    found: list[Frame | None],
    valued: list[bool],
    question: str,
) -> None:
    """Mark another unit's value beside this one's ("downstairs does 1400, this one's 800")."""
    asked = question.lower()
    others = [
        valued[k] and (match := OTHER_UNIT.search(c)) is not None and match[0] not in asked
        for k, c in enumerate(clauses)
    ]
    for k, clause in enumerate(clauses):
        match = OTHER_KIND.search(clause) if valued[k] and sum(valued) > 1 else None
        if match is not None and match[0] not in asked and found[k] is None:
            found[k] = Frame.OTHER_THING
    this = [valued[k] and not others[k] and THIS_UNIT.search(c) for k, c in enumerate(clauses)]
    if any(others) and any(this) and field not in ("grille", "filter"):
        for k, other in enumerate(others):
            if other and found[k] is None and not THIS_UNIT.search(clauses[k]):
                found[k] = Frame.ANOTHERS


_BESIDE: Final = re.compile(r"\b(?:quoted?|would take|could take|rated for)\b")
"""What needs no word of the other clause to be held apart from it."""


def _is_told(field: str, clause: str) -> bool:
    """Whether a clause tells what somebody said, thought or wants, to be held against what is."""
    wished = field in _MAYBE_WISHED and WISHED.search(clause) is not None
    return wished or (TOLD.search(clause) is not None and PLANNED.search(clause) is None)


def _is_planned(field: str, clause: str) -> bool:
    rated = field in _FIGURE and field != "capacity" and RATED.search(clause) is not None
    if field == "temperature" and SPAN_OF_PLATE.search(clause):
        return True
    return rated or PLANNED.search(clause) is not None


def _frame_of(field: str, clause: str, question: str) -> Frame | None:
    number = _NUMBER.search(clause)
    if number is not None:
        before = clause[: number.start()]
        if DENIED.search(before) and not HEDGED_NO.search(before):
            return Frame.DENIED
    if number is not None and WRONG_BEHIND.search(clause[number.end() :]):
        return Frame.TAKEN_BACK
    if (ASKED.match(clause) or ASKED_THE.match(clause)) and (
        number is not None or field in _WORDED
    ):
        return Frame.ASKED
    if number is None and field not in _WORDED and NOT_KNOWN_IF.search(clause):
        return None
    if IF.search(clause) or (field in _FIGURE and re.search(r"\bsometimes\b", clause)):
        return Frame.CONDITIONAL
    if number is None and field not in _WORDED:
        return None
    if PAST.search(clause) or (field in _FIGURE and THE_DAY_BEFORE.search(clause)):
        return Frame.PAST
    asked = question.lower()
    if field not in _MAYBE_THE_OLD and "old" not in asked and OLD_ONE.search(clause):
        return Frame.PAST
    if ANOTHERS.search(clause):
        return Frame.ANOTHERS
    if number is not None and is_other_thing(field, clause):
        return Frame.OTHER_THING
    wished = field not in _MAYBE_WISHED and WISHED.search(clause)
    return Frame.WISHED if wished else None


_WORDED: Final = words("material blower_type coil_state choice")
"""Fields whose answers hold no number."""


def _take_back(clauses: list[str], found: list[Frame | None]) -> None:
    """Mark what stands before "that can't be right" or "that's the other one"."""
    for k, clause in enumerate(clauses):
        if not k or _NUMBER.search(_THE_ONE.sub(" ", clause)):
            continue
        other = ANOTHERS.search(clause) is not None
        if other and Frame.DENIED in found[:k]:
            continue
        if other or (TAKEN_BACK.search(clause) and _is_no(clause)):
            for j in range(k):
                if found[j] is None:
                    found[j] = Frame.ANOTHERS if other else Frame.TAKEN_BACK


_THE_ONE: Final = re.compile(
    r"\b(?:other|that|this|the|wrong|right|first|last|big|small|next|old|new|which) one\b"
)


def _is_no(clause: str) -> bool:
    said = set(clause.replace("'", "").split())
    no = re.search(r"\b(?:no|not|off|lie|typo|\w+n'?t)\b", clause) is not None
    return no or bool(said & NEGATIVE)
