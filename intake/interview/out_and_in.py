"""What goes in, in a line that also says what comes out: "replacing an 80k furnace with a 3 ton".

Only what goes in is left to be read; what is there today says nothing of it.
"""

import re
from typing import Final

__all__ = ["plainly_put", "what_goes_in"]

_THING: Final = (
    r"(?:furnace|heat ?pump|air ?handler|pack\w*|a/?c|unit|system|boiler|condenser|tons?|ton\b|one"
    r"|it|them|oil|gas|everything|equipment|hp)"
)
_LEAVES: Final = (
    r"replac\w+|taking (?:out|away)|took out|tak(?:e|ing) .{1,30}? out|pull(?:ing|ed)?(?: out)?"
    r"|ripping out|rip(?:ped)? out|yank\w*|remov\w+|tear\w* out|tore out|ditch\w*|los(?:e|ing)"
    r"|getting rid of|scrapp\w+|old (?:one|unit|system|furnace|heat ?pump|a/?c)|existing|currently"
    r"|used to (?:be|have)|was|were|had|there'?s an? .{1,30}? now|has an?|right now|at present"
    r"|came out|come(?:s)? out|coming out|goes out|going out|dead|out (?:goes|with)"
)
_COMES: Final = (
    r"putting (?:it |a |in )?in|put(?:ting)? in|install(?:ing|ed|s)?|going in|goes in|getting"
    r"|going (?:with|to|all[- ]electric)|we'?re (?:doing|going)|(?:they|he|she|owner"
    r"|customer) wants?|want(?:s)?"
    r"|new (?:one|unit|system|equipment)(?: (?:is|will be|'s|gonna be))?|will be|becomes?"
    r"|in (?:goes|with)|now (?:it'?s |getting |going )"
)
_FROM_TO: Final = re.compile(
    r"^.*?\b(?:convert|switch|chang|going|go|mov|upgrad|downsiz|upsiz|swap|replac|trad|stepp)\w*\b"
    r"(?:(?!\b(?:with|for|to|into)\b).)*?"
    rf"\b{_THING}\b(?:(?!\b(?:with|for|to|into)\b).)*?"
    r"(?: and putting in| ?->| ?=>|\b(?:to|into|with|for|over to))\b (?P<into>.+)$"
)
_FROM_SIZE_TO: Final = re.compile(
    r"^.*?\bfrom (?:an? |the )?[\d.]+(?: ?tons?)? (?:up |down )?to (?P<into>.+)$"
)
_OUT_THEN_IN: Final = re.compile(
    rf"^(?P<out>.*\b(?:{_LEAVES})\b.*?)\b(?:{_COMES})\b,? ?(?:an? |the )?(?P<into>.+)$"
)
_OUT_BEHIND: Final = re.compile(
    r"(?:[,;.(]|\b(?:and|but|to))* ?\b(?:replac(?:es|ing|e)|instead of|in place of|taking out"
    r"|pulling out|removing|was|old (?:one|unit|system|furnace|a/?c)(?: (?:is|was|'s))?|it was"
    r"|used to be|currently|existing (?:is|one is)|the existing|out goes|where the)"
    rf"(?: (?:an?|the|its|their|old|existing))* (?=[^,;.]*\b{_THING}\b|[\d.])[^,;]*"
)
_NEW_IN_BACK: Final = re.compile(
    r"^(?P<into>.+?) (?:going in|goes in|in),? (?:and )?(?:an? |the )?.*\b(?:out|coming out)\b"
)
_STAYS: Final = re.compile(r"\b(?:stays?|staying|keep(?:s|ing)?|leav(?:e|ing)|remains?|reus\w+)\b")
_NAMES: Final = re.compile(
    r"\b(?:furn\w+|heat ?(?:pump|bump|pmup)\w*|hp|air ?handler|ahu|pack\w*|dual ?fuel|hybrid"
    r"|fan ?coil)\b|\d ?-?tons?\b|\b(?:one|two|three|four|five)(?: and a half)? tons?\b"
)


def what_goes_in(text: str) -> str:
    """The part of a line that tells what goes in; the whole if nothing else is told.

    Args:
        text: Normalised.

    >>> what_goes_in("converting oil furnace to 4 ton heat pump, single stage")
    '4 ton heat pump, single stage'
    >>> what_goes_in("4 ton heat pump, the old furnace stays")
    '4 ton heat pump, the old furnace stays'
    """
    if _STAYS.search(text):
        return text
    for pattern in (_FROM_SIZE_TO, _FROM_TO, _OUT_THEN_IN, _NEW_IN_BACK):
        found = pattern.match(text)
        if found is not None and _NAMES.search(found["into"]):
            return found["into"]
    rest = _OUT_BEHIND.sub(" ", text).strip()
    return rest if rest != text and _NAMES.search(rest) else text


_NOMINAL: Final = re.compile(r"(?<=\d) ?nominal (?=tons?\b)|\bnominal(?:ly)? ")
_SPOKEN_PER_CENT: Final = re.compile(
    r"(?<=thousand) (?=(?:seventy|eighty|ninety)(?:[ -](?:one|two|three|four|five|six|seven|eight"
    r"|nine))? ?(?:percent|per cent|%|afue|efficien\w+))"
)


def plainly_put(text: str) -> str:
    """A line without "nominal", and with a mark between thousands and the per cent behind them.

    >>> plainly_put("eighty thousand eighty percent")
    'eighty thousand, eighty percent'
    """
    return _SPOKEN_PER_CENT.sub(", ", _NOMINAL.sub(" ", text)).replace("  ", " ")
