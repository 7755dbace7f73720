"""Answers told another way: the weather as a temperature, rooms by name, one zone, a polite no."""

import re
from typing import Final

__all__ = ["declines", "one_zone", "rooms_named", "warm_enough"]

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


_ONE_ZONE: Final = re.compile(
    r"(?:no|nope|nah|naw|not zoned|it'?s|its|there'?s|theres|there is|we have|has|have|got|just"
    r"|only|all|the|a|,|\.| )*\b(?:one|1|single|same)(?: (?:big|main|single|zone|system|thermostat"
    r"|therm\w*|t[ -]?stat|stat|of them|here|upstairs|downstairs|in the (?:hall\w*|living room)"
    r"|(?:for|does|runs|controls) (?:the )?(?:whole|all|entire|everything)(?: of it"
    r"| (?:the )?(?:house|place|thing|home))?))*[.! ]*"
)


def one_zone(line: str) -> bool:
    """Whether a line says that one thermostat works the whole system: "nah just the one".

    >>> one_zone("nope, one thermostat"), one_zone("one upstairs, one down")
    (True, False)
    """
    return (_ONE_ZONE.fullmatch(_NO_ZONES.sub("", line)) or _NO_ZONES.fullmatch(line)) is not None


_NO_ZONES: Final = re.compile(r",? ?(?:and )?no zon(?:es?|ing)[.! ]*")

_ROOM: Final = re.compile(
    r"\b(?:bed ?rooms?|bath(?: ?room)?s?|office|kitchen|living ?room|dining ?room|den|nursery|study"
    r"|family ?room|bonus ?room|sun ?room|play ?room|laundry|hall(?:way)?|guest ?room|master"
    r"|basement|son'?s|daughter'?s"
    r"|(?!(?:each|every|any|no|one|some|the|that|this|which|rest|whole|other|another|last|bad"
    r"|of)\b)"
    r"[a-z]+(?:'s|s')? ?room)\b"
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
    r"|yep,? |nope,? |a |and |n |(?:clear|cloudy|rainy|humid|nice|sunny|cool|warm|hot|mild|cold)"
    r"(?: day| out(?:side)?)?,? )*"
    r"(?P<degf>-\d{1,2}|\d{2,3})s? ?(?:f|degrees?|deg|°f?)?"
    r"(?:,? (?:out(?:side)?|today|now|degrees|here|f|and|with|but|is|it'?s|no|too|so|a bit|kinda"
    r"|rain\w*|sun\w*|cloud\w*|overcast|wind\w*|snow\w*|humid|muggy|clear|cold|cool|warm|hot|nice"
    r"|wet|damp|dry|drizzl\w*|fog\w*))*[.! ]*"
)
_WARM_DEGF: Final = 60.0
"""Outdoor temperature from which cooling may run. Source: common practice."""


_COLD: Final = re.compile(
    r"(?:no|nope|nah|not|today|it'?s|its|is|like|kinda|way|much|far|really|pretty|still|too|so"
    r"|below|,| )*"
    r"(?:cold|freezing(?: cold)?|frozen|chilly|wintry|snowing|snow|winter"
    r"|in the (?:teens|twenties|thirties|forties))"
    r"(?: (?:out(?:side)?|there|today|now|here|for (?:that|ac|cooling)))*[.! ]*"
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
