"""Which of the readings that were offered a person picks."""

import re
from collections.abc import Mapping
from typing import Final

from intake.interview.events import AskedBack
from intake.interview.listening import Heard
from intake.reading.clean import normalise
from intake.reading.result import Accepted, Value, Values

__all__ = ["picked"]

_NUMBERED: Final = re.compile(
    r"(?:option |number |no\.? |#|the )?([1-9])(?:st|nd|rd|th)?(?: one)?[).]?"
)
_ORDINAL: Final = re.compile(
    r"(?:the )?(first|second|third|fourth|last|former|latter)(?: one)?[.! ]*"
)
_ORDINALS: Final = {
    "first": 0,
    "former": 0,
    "second": 1,
    "third": 2,
    "fourth": 3,
    "last": -1,
    "latter": -1,
}
_YES: Final = re.compile(
    r"(?:yes|yep|yup|yeah|y|right|correct|that'?s (?:it|right)|exactly|sure|ok|okay)[.! ]*"
)


def picked(open_ask: AskedBack, fresh: Heard, text: str) -> Values | None:
    """The reading that a person picks of those offered, or None.

    A number that is itself one of the values offered means that value; otherwise "1" and "the
    first" pick by place, and "yes" picks the only one.
    """
    readings: tuple[Mapping[str, Value], ...] = tuple(open_ask.readings)  # type: ignore[arg-type]
    if not readings:
        return None
    line = normalise(text)
    if isinstance(fresh, Accepted) and (one := _told_of_all(readings, fresh.values)) is not None:
        return one
    if isinstance(fresh, Accepted):
        same = [values for values in readings if _agrees(values, fresh.values)]
        if len(same) == 1:
            return {**same[0], **fresh.values}
    if _YES.fullmatch(line):
        return readings[0] if len(readings) == 1 else None
    numbered, ordinal = _NUMBERED.fullmatch(line), _ORDINAL.fullmatch(line)
    if numbered:
        place = int(numbered[1]) - 1
    elif ordinal:
        place = _ORDINALS[ordinal[1]]
    else:
        return None
    if place >= len(readings):
        return None
    return readings[place]


def _told_of_all(readings: tuple[Mapping[str, Value], ...], said: Values) -> Values | None:
    """The reading that a bare word picks, where one thing alone differs and the word fits all."""
    differ = [name for name in readings[0] if len({str(r.get(name)) for r in readings}) > 1]
    if len(differ) != 1 or len(said) < 2 or len({str(value) for value in said.values()}) > 1:
        return None
    fit = [values for values in readings if values.get(differ[0]) == said.get(differ[0])]
    return fit[0] if len(fit) == 1 else None


def _agrees(offered: Values, said: Values) -> bool:
    shared = [name for name in said if name in offered]
    return bool(shared) and all(_alike(offered[name], said[name]) for name in shared)


def _alike(one: Value, two: Value) -> bool:
    if isinstance(one, int | float) and isinstance(two, int | float):
        return abs(float(one) - float(two)) <= 0.005 * max(abs(float(one)), 1e-9)
    return one == two
