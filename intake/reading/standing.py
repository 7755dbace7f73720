"""Keeps back a value that is said but doesn't stand, or takes what the same text puts beside it."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Any, Final

from intake.reading.asked_thing import Part, is_asked, parts_of, thing_asked
from intake.reading.echo import echo
from intake.reading.frames import Frame, Framed, framed
from intake.reading.result import Accepted, AskBack, AskKind, Reading
from intake.reading.scan import scanned
from intake.reading.words import words

__all__ = ["standing"]

Reads = Callable[[str, str], Reading | None]
"""Reads a text for a field."""

_WORDED: Final = words("material blower_type coil_state choice")
_FRAMED: Final = _WORDED | words(
    """
    duct airflow static_pressure length temperature capacity efficiency filter grille elevation
    count year area percent rise_range fittings
    """
)
"""Fields whose answers may be said under a frame; yes and no have their own reader for that."""

_ASKING: Final[dict[Frame, str]] = {
    Frame.DENIED: "You say that it isn't {0}. What is it then?",
    Frame.PAST: "I read {0} as what it was. What is it now?",
    Frame.ANOTHERS: "I read {0} as that of another one. What is it here?",
    Frame.OTHER_THING: "I read {0} as the size of something else. What is it here?",
    Frame.CONDITIONAL: "I read {0}, but only on a condition. Which is it here?",
    Frame.ASKED: "Is {0} your answer?",
    Frame.TAKEN_BACK: "I read {0}, and that you don't trust it. What is right?",
    Frame.WISHED: "I read {0} as what is wanted. What is there now?",
    Frame.PLANNED: "I read {0} as what was planned. What is really there?",
    Frame.TOLD: "I read {0}. Is that what is there?",
}
_A_SIZE: Final = re.compile(r"(?<![\d.])([1-5](?:\.5)?)(?![\d.])")
_OF_DUCTS: Final = words("duct length")
"""Fields in which a question asks of one kind of duct."""
_OPEN: Final = (Frame.CONDITIONAL, Frame.ASKED)
"""Frames under which another clause is no answer either."""


def standing(
    field: str, line: str, question: str, found: Reading | None, reads: Reads
) -> Reading | None:
    """The reading of a text, unless what it holds is denied, past, another's or in doubt."""
    if field in _OF_DUCTS and (asked := thing_asked(question)):
        of_asked = _of_asked(field, line, asked, reads)
        if of_asked is not None:
            return of_asked
    if field not in _FRAMED or not isinstance(found, Accepted | AskBack):
        return found
    frame = framed(field, line, question)
    if frame is None:
        return found
    if isinstance(found, Accepted) and _is_apart(field, found.values, frame):
        return found
    if frame.rest and frame.frame not in _OPEN:
        rest = reads(field, frame.rest)
        if isinstance(rest, Accepted) and not _only_adds(frame, found, rest):
            return rest
        if field == "capacity" and "ton" in frame.within and "ton" not in frame.rest:
            in_tons = reads(field, _A_SIZE.sub(r"\1 ton", frame.rest, count=1))
            if isinstance(in_tons, Accepted):
                return in_tons
    if isinstance(found, Accepted) and frame.frame is Frame.TOLD:
        return found
    if not isinstance(found, Accepted):
        return found
    told = echo(field, found.values)
    return AskBack(_ASKING[frame.frame].format(told), (found.values,), AskKind.TWO_READINGS)


def _of_asked(field: str, line: str, asked: str, reads: Reads) -> Reading | None:
    """What an answer says of the duct asked about, where it names ducts; None if it doesn't."""
    parts = parts_of(line)
    own = [part.text for part in parts if is_asked(part, asked)]
    others = [part for part in parts if not is_asked(part, asked)]
    if not others or (not own and not others[0].leads):
        return None
    first = reads(field, others[0].text)
    named_first = thing_asked(line.split(others[0].text)[0])
    if not own and named_first and is_asked(Part(named_first, ""), asked):
        return None
    if not own and isinstance(first, Accepted):
        told = echo(field, first.values)
        return AskBack(
            f"{told}: that is of the {others[0].thing}. And the {asked}?",
            (first.values,),
            AskKind.WRONG_QUANTITY,
        )
    found = reads(field, ", ".join(own)) if own else None
    return found if isinstance(found, Accepted) else None


def _only_adds(frame: Framed, found: Reading, rest: Accepted) -> bool:
    """Whether what is seen fits what was told ("he said 16x25x1, I see 2 of them")."""
    if frame.frame is not Frame.TOLD or not isinstance(found, Accepted):
        return False
    return all(found.values.get(name) == value for name, value in rest.values.items())


def _is_apart(field: str, values: Mapping[str, Any], frame: Framed) -> bool:
    """Whether what is denied is no part of what was read ("not 6 inch round but 8")."""
    if frame.frame is not Frame.DENIED or not frame.contrasted:
        return False
    denied = {number.value for number in scanned(frame.within, field).numbers}
    taken = {float(v) for v in values.values() if isinstance(v, int | float)}
    return not denied & taken
