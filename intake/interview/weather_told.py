"""Whether it is warm enough for cooling, told by the temperature outdoors or in plain words."""

import re
from typing import Final

from intake.reading.scan import scan

__all__ = ["degrees_in_doubt", "warm_enough"]

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
    r"(?:yes|yeah|yep|it'?s|its|really|pretty|oh|man|super|,| )*"
    r"(?:hot|warm|scorching|roasting|boiling|sweltering|blazing|baking|summer|like an? (?:oven"
    r"|sauna|furnace)"
    r"|in the (?:seventies|eighties|nineties))"
    r"(?: (?:out(?:side)?|there|today|now|here|enough|as (?:hell|blazes|heck|can be|an oven)"
    r"|(?:day|one)))*[.! ]*"
)
_INDOORS: Final = re.compile(
    r"\b(?:inside|indoors?|house|thermostat|t[ -]?stat|stat|attic|crawl\w*|in here|basement|set"
    r"|setpoint|supply|return)\b"
)
_NOT_NOW: Final = re.compile(
    r"\b(?:was|yesterday|last (?:week|night|month)|tonight|tomorrow|later|by (?:noon|afternoon)"
    r"|high of|should hit|supposed to|gets? (?:up )?to|will be|going to|gonna|forecast|if|or)\b|\?"
)
_OF_AIR: Final = re.compile(
    r"\b(?:cfm|static|filter|trunk|ducts?|tons?|btu\w*|coil|inwc|rise|kw|zon\w*|years?)\b|\dx\d"
)
_SAYS_NO: Final = re.compile(r"\b(?:no|nope|nah|can'?t|won'?t|not)\b|\btoo (?:cold|chilly|cool)\b")
_SAYS_YES: Final = re.compile(r"\b(?:yes|yeah|yep|yup|fine|sure|plenty|should be)\b")
_CLAUSES: Final = re.compile(r"[,;]|\.(?!\d)|\bbut\b|\band\b")
_BELIEVABLE_DEGF: Final = (-30.0, 125.0)
_MOST_WORDS: Final = 14


def warm_enough(line: str) -> bool | None:
    """The weather told by its temperature ("82 out") or in plain words ("too cold").

    Args:
        line: Normalised text.

    >>> warm_enough("85, house is 80 inside"), warm_enough("too chilly, 55")
    (True, False)
    """
    if degrees_in_doubt(line):
        return None
    match = _OUTDOORS.fullmatch(line)
    if match is not None:
        warm = float(match["degf"]) >= _WARM_DEGF
        return None if warm and line.startswith("no") else warm
    if _COLD.fullmatch(line):
        return False
    if _HOT.fullmatch(line):
        return True
    return _by_degrees(line)


_YES_AND: Final = re.compile(
    r"(?:yes|yeah|yep|yup|sure)[,.; ]+(?:it'?s |its |about |around |like |a nice )*"
    r"(?P<degrees>[1-4]\d) ?(?:degrees?|deg)?(?: (?:out(?:side)?|today|now|here))*[.! ]*"
)


def degrees_in_doubt(line: str) -> bool:
    """Whether a line says yes to degrees that are warm enough only if they are Celsius.

    >>> degrees_in_doubt("yes it's 27"), degrees_in_doubt("yes, 31 f"), degrees_in_doubt("no, 31")
    (True, False, False)
    """
    return _YES_AND.fullmatch(line) is not None


def _by_degrees(line: str) -> bool | None:
    """One outdoor temperature in a short line that says nothing else and nothing against it."""
    if _NOT_NOW.search(line) or _OF_AIR.search(line) or len(line.split()) > _MOST_WORDS:
        return None
    outdoors = " , ".join(c for c in _CLAUSES.split(line) if not _INDOORS.search(c))
    numbers = scan(outdoors, "temperature").numbers
    degrees = {n.value for n in numbers if n.unit in ("", "degf")}
    if len(numbers) != 1 or len(degrees) != 1:
        return None
    degf = degrees.pop()
    if not _BELIEVABLE_DEGF[0] <= degf <= _BELIEVABLE_DEGF[1] or abs(degf) < 10:
        return None
    warm = degf >= _WARM_DEGF
    says_no, says_yes = _SAYS_NO.search(line), _SAYS_YES.search(line)
    against = says_no if warm else (says_yes and not says_no)
    return None if against else warm
