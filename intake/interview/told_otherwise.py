"""Answers told another way: the weather as a temperature, rooms by name, a polite no."""

import re
from typing import Final

__all__ = ["declines", "rooms_named", "warm_enough"]

_DECLINES: Final = re.compile(
    r"(?:no|nope|nah)[, ]+(?:thanks?|thank you|thanx|sorry|ma'?am|sir)(?: (?:a lot|anyway|though))?"
    r"[.! ]*"
)


def declines(line: str) -> bool:
    """Whether a line is a polite no.

    >>> declines("no thanks"), declines("no idea")
    (True, False)
    """
    return _DECLINES.fullmatch(line) is not None


_ROOM: Final = re.compile(
    r"\b(?:bed ?rooms?|bath(?: ?room)?s?|office|kitchen|living ?room|dining ?room|den|nursery|study"
    r"|family ?room|bonus ?room|sun ?room|play ?room|laundry|hall(?:way)?|guest ?room|master"
    r"|basement|son'?s|daughter'?s)\b"
)


def rooms_named(line: str) -> int:
    """How many rooms a line names, if it counts none: "the back bedroom and the office"."""
    if re.search(r"\d|\b(?:two|three|four|five|six|all|every|no|none|both)\b", line):
        return 0
    pieces = re.split(r",|;|&|\band\b", line)
    if any(re.search(r"(?:bed|bath) ?rooms\b", piece) for piece in pieces):
        return 0
    return sum(1 for piece in pieces if _ROOM.search(piece))


_OUTDOORS: Final = re.compile(
    r"(?:it'?s |its |about |around |like |prolly |probably |maybe |i think |yes,? |no,? |yeah,? "
    r"|yep,? |nope,? )*(?P<degf>-\d{1,2}|\d{2,3})"
    r" ?(?:f|degrees?|deg|°f?)?(?: (?:out(?:side)?|today|now|degrees|here|f))*[.! ]*"
)
_WARM_DEGF: Final = 60.0
"""Outdoor temperature from which cooling may run. Source: common practice."""


_COLD: Final = re.compile(
    r"(?:no|nope|nah|it'?s|its|way|much|far|really|pretty|still|too|so|,| )*"
    r"(?:cold|freezing|frozen|chilly|wintry|snowing|snow|winter|in the (?:teens|twenties|thirties))"
    r"(?: (?:out(?:side)?|today|now|here|for (?:that|ac|cooling)))*[.! ]*"
)
_HOT: Final = re.compile(
    r"(?:yes|yeah|yep|it'?s|its|really|pretty|,| )*(?:hot|warm|scorching|roasting|boiling|summer"
    r"|in the (?:seventies|eighties|nineties))"
    r"(?: (?:out(?:side)?|today|now|here|enough|as hell))*[.! ]*"
)


def warm_enough(line: str) -> bool | None:
    """The weather told by its temperature ("82 out") or in plain words ("too cold")."""
    match = _OUTDOORS.fullmatch(line)
    if match is not None:
        return float(match["degf"]) >= _WARM_DEGF
    if _COLD.fullmatch(line):
        return False
    return True if _HOT.fullmatch(line) else None
