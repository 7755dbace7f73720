"""Answers told another way: rooms by name, one zone, a polite no."""

import re
from typing import Final

__all__ = ["declines", "one_zone", "rooms_named"]

_DECLINES: Final = re.compile(
    r"(?:no|nope|nah)[, ]+(?:thanks?|thank you|thanx|sorry|ma'?am|sir)(?: (?:a lot|anyway|though))?"
    r"[.! ]*"
    r"|(?:no|nope|nah)[, ]+(?:none|nothing|no|nope|nah)[.! ]*"
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


_SHORT_ROOM: Final = re.compile(
    r" *(?:the |her |his |their )?(?:dining|living|family|guest|bonus|sun|play|laundry)[.! ]*"
)
"""A room without the word, beside one that has it: "living room and dining"."""


def rooms_named(line: str) -> int:
    """How many rooms a line names, if it counts none: "the back bedroom and the office"."""
    if re.search(r"\d|\b(?:two|three|four|five|six|all|every|no|none|both)\b", line):
        return 0
    pieces = re.split(r",|;|&|\band\b", line)
    if any(re.search(r"(?:bed|bath) ?rooms\b", piece) for piece in pieces):
        return 0
    named = sum(1 for piece in pieces if _ROOM.search(piece))
    return named + sum(1 for piece in pieces if named and _SHORT_ROOM.fullmatch(piece))
