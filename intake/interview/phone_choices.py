"""Choices of a call in a caller's words: which ways ducts leave, where they run, how loud it is."""

import re
from typing import Final

from intake.interview.denials import affirmed
from intake.interview.own_words import Table, whole_words
from intake.reading.manner import sureness
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Unknown

__all__ = ["location", "noise", "ways"]

_CLAUSES: Final = re.compile(r"[,;.:!]|\b(?:but|except|though|although|and|while|plus)\b| - ")
_DENIES: Final = re.compile(
    r"\b(?:no|not|nothing|never|none|without|don'?t|doesn'?t|didn'?t|isn'?t|aren'?t|won'?t|nor"
    r"|neither|hardly|can'?t be)\b"
)

_SIDES: Final = whole_words(
    r"left|right|front|back|north|south|east|west|forward|rear|this way|that way|the other(?: way)?"
)
_EACH: Final = whole_words(
    r"one (?:on |to |out |goes |going )*(?:the )?(?:each|either) (?:side|way|direction|end|of)"
    r"|each (?:side|way|direction|end)|either (?:side|way|end)|both (?:ways|sides|directions|ends)"
    r"|(?:two|2|opposite) (?:ways|directions|sides)|opposite (?:ways|ends)"
)
_ONE_WAY: Final = whole_words(r"one (?:way|direction|side)|single|same (?:way|direction|side)")
_BOTH_TO_ONE: Final = re.compile(r"\bboth\b.*\b(?:to|toward|towards|out)\b")
_TOGETHER: Final = whole_words(r"(?:the )?same (?:way|direction|side)|side by side")
_NEITHER: Final = whole_words(
    r"neither|no (?:big |main |metal )*(?:ducts?|trunks?)|octopus|spider"
    r"|(?:a )?(?:bunch|lot|load)s? of (?:\w+ )?(?:round|small|little|flex\w*|skinny)? ?(?:pipes?"
    r"|hoses?"
    r"|ducts?|lines)|(?:round|flex\w*) (?:pipes?|hoses?|ducts?) (?:\w+ )?(?:off|out of|from)"
)


def ways(line: str) -> Reading | None:
    """Whether ducts leave one way or both, by the sides that are named."""
    if _NEITHER.search(line) and not _EACH.search(line):
        return Unknown("You can't say.")
    if re.search(r"\bor\b|\?|\bthen\b|\bturns?\b", line):
        return None
    told = {
        side[0]
        for clause in _CLAUSES.split(line)
        if not _DENIES.search(clause)
        for side in _SIDES.finditer(clause)
    }
    each = _EACH.search(line)
    together = _TOGETHER.search(line)
    if together and not each and not _DENIES.search(line[: together.start()]):
        return Accepted({"choice": "one"}, sureness(line))
    if each and not _DENIES.search(line[: each.start()]):
        return Accepted({"choice": "both"}, sureness(line))
    if len(told) == 1 and not each and _BOTH_TO_ONE.search(line):
        return AskBack(
            "Is that one way for all of them, or both ways?",
            ({"choice": "one"}, {"choice": "both"}),
            AskKind.TWO_READINGS,
        )
    if (
        len(told) == 1
        and not together
        and _DENIES.search(line)
        and len(set(_SIDES.findall(line))) > 1
    ):
        return Accepted({"choice": "one"}, sureness(line))
    if len(told) > 1 and not affirmed(_ONE_WAY, line):
        return Accepted({"choice": "both"}, sureness(line))
    return None


_PLACES: Final[Table] = (
    ("attic", whole_words(r"attics?|loft|up top|above the ceiling|in the rafters|roof ?space")),
    (
        "crawlspace",
        whole_words(r"crawl(?: ?spaces?)?|crwl|under the (?:house|floor|home)|underneath"),
    ),
    ("basement", whole_words(r"basements?|bsmt|bsmnt|basment|cellar")),
    ("garage", whole_words(r"garages?")),
    (
        "living_space",
        whole_words(
            r"living ?space|inside(?: the (?:rooms?|house|walls))?|in the (?:rooms|walls?|house)"
            r"|soffits?|(?:under|in) the slab|slab|dropped ceilings?"
        ),
    ),
)
_MOST: Final = whole_words(
    r"most|mostly|mainly|majority|bulk|primarily|main ones?|nearly all|almost all"
)
_A_FEW: Final = whole_words(
    r"a few|few|some|a couple|couple|one|two|three|a bit|rest|others?|little"
)
_OF_THE_UNIT: Final = whole_words(
    r"(?:the )?(?:unit|furnace|air ?handler|equipment|filter|water heater|thermostat"
    r"|return)(?: itself)?"
)
_MUST_BE: Final = re.compile(r"\bso\b.*|\b(?:has to|must|got to|gotta) be\b.*")


def location(line: str) -> Reading | None:
    """Where most of the ducts run; what is denied, few, or the unit's own place doesn't count."""
    if re.search(r"\bor\b|\?", line):
        return None
    most: list[str] = []
    told: list[str] = []
    for clause in _CLAUSES.split(line):
        if _OF_THE_UNIT.search(clause) and not re.search(r"\bducts?\b", clause):
            continue
        must = _MUST_BE.search(clause)
        part = must[0] if must else clause
        places = [name for name, pattern in _PLACES if pattern.search(part)]
        if "basement" in places or "crawlspace" in places:
            places = [name for name in places if name != "living_space"]
        if not places or _DENIES.search(part):
            continue
        if _MOST.search(part):
            most += places
        elif not (most and _A_FEW.search(part)):
            told += places
    found = most or told
    if len(found) != 1:
        return None
    return Accepted({"choice": found[0]}, sureness(_MOST.sub(" ", line)))


_SHOUT: Final = whole_words(
    r"shout\w*|yell\w*|scream\w*|holler\w*|roar\w*|very loud|real(?:ly)? loud|super loud|so loud"
    r"|deafening|can'?t (?:even )?(?:hold|have|carry on|keep up) a conversation|like a (?:jet|truck"
    r"|train|plane|freight train)|can'?t hear (?:\w+ )?(?:a thing"
    r"|anything|yourself|myself|himself|herself|each other|me|us|you)"
)
_LOUDER: Final = whole_words(
    r"louder|loud|noisy|speak up|talk up|(?:raise|raises|raising|raised) (?:my|your|her|his|their"
    r"|our"
    r"|the|a|one'?s)? ?voices?|talk (?:a (?:bit|little) )?(?:louder|over it)|turn up the tv"
)
_WHISPER: Final = whole_words(
    r"whisper\w*|quiet\w*|silent|hardly (?:hear|any)|(?:barely|hardly) (?:hear|know|notice|tell"
    r"|any)|can'?t (?:even )?hear it"
    r"|(?:gentle|soft|low|slight|faint|light|quiet|little|just a|only a) hum\w*"
    r"|^(?:a |an )?hum,? (?:no|nothing) more"
    r"|talk normal\w*|normal(?: voice)?|hushed|hear a pin drop"
)
_NEEDN_T: Final = re.compile(
    r"\b(?:no need|not|don'?t|doesn'?t|didn'?t|without|never|no|isn'?t|needn'?t|nothing)"
    r"(?: (?:have|has|need|needs|got|having|needing|that|too|very|really|to|even|any|quite"
    r"|so)){0,3} $"
)


def noise(line: str) -> Reading | None:
    """How loud it is beside the return; the loudest that is said and not denied."""
    if re.search(r"\bor\b|\?|\bif\b", line):
        return None
    levels: list[str] = []
    denied: list[str] = []
    for name, pattern in (("shout", _SHOUT), ("louder", _LOUDER), ("whisper", _WHISPER)):
        for at in pattern.finditer(line):
            (denied if _NEEDN_T.search(line[: at.start()]) else levels).append(name)
    if "shout" in levels and "whisper" not in levels:
        return Accepted({"choice": "shout"}, sureness(line))
    if set(levels) == {"louder"} and "louder" not in denied:
        return Accepted({"choice": "louder"}, sureness(line))
    if set(levels) == {"whisper"} or (not levels and denied == ["louder"] and _VOICE.search(line)):
        return Accepted({"choice": "whisper"}, sureness(line))
    return None


_VOICE: Final = re.compile(r"\brais\w+|\bspeak up|\btalk\b")
