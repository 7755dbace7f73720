"""Which of the readings that were offered a person picks, by its place, its value or in words."""

import re
from collections.abc import Mapping
from typing import Final

from intake.interview.events import AskedBack
from intake.interview.openings import openings_joined
from intake.reading.clean import normalise
from intake.reading.result import Accepted, Value, Values
from intake.reading.small_counts import COUNT, count_said

__all__ = ["picked"]

_NUMBERED: Final = re.compile(
    r"(?:option |number |no\.? |#|the )?([1-9])(?:st|nd|rd|th)?(?: one)?[).]?"
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

_ORDINAL: Final = re.compile(
    r"(?:the )?(first|second|third|fourth|last|former|latter)(?: one)?[.! ]*"
)

_YES: Final = re.compile(
    r"(?:yes|yep|yup|yeah|y|right|correct|that'?s (?:it|right)|exactly|sure|ok|okay)[.! ]*"
)

_ASKS_WHETHER: Final = ("Is that ", "Does this unit serve both")
"""Openings of a question that a yes answers with the first of the readings, such as the sum."""

_COUNTED: Final = re.compile(rf"({COUNT})(?: (?:of (?:them|em|those)|branches|runs|in all))?[.! ]*")


def picked(open_ask: AskedBack, fresh: object, text: str) -> Values | None:
    """The reading that a person picks of those offered, or None.

    A number that is itself one of the values offered means that value; otherwise "1" and "the
    first" pick by place, and "yes" picks the only one.
    """
    readings: tuple[Mapping[str, Value], ...] = tuple(open_ask.readings)  # type: ignore[arg-type]
    if not readings:
        return None
    line = normalise(text)
    joined = openings_joined(open_ask.why, readings, fresh, line)
    if joined is not None:
        return joined
    if isinstance(fresh, Accepted) and (one := _told_of_all(readings, fresh.values)) is not None:
        return one
    if isinstance(fresh, Accepted):
        same = [values for values in readings if _agrees(values, fresh.values)]
        if len(same) == 1:
            return {**same[0], **fresh.values}
    if _YES.fullmatch(line):
        whether = open_ask.why.startswith(_ASKS_WHETHER) and " or " not in open_ask.why
        return readings[0] if len(readings) == 1 or whether else None
    counted = _COUNTED.fullmatch(line)
    if counted is not None:
        same = [values for values in readings if values.get("count") == count_said(counted[1])]
        if len(same) == 1:
            return same[0]
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
