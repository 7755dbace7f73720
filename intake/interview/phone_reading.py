"""What a caller says of the change and of past trouble, read by the words that decide it."""

import re
from typing import Final

from intake.interview.own_words import Table, whole_words
from intake.reading.result import Accepted, AskBack, AskKind, Reading

__all__ = ["read_change", "read_trouble"]

_FIRST: Final = whole_words(
    r"first(?: time)?|never had (?:a/?c|air|cooling|any)\w*",
    r"add(?:ing)?(?: \w+)? (?:a/?c|air|cooling)",
    r"(?:have|got) no (?:a/?c|air|cooling)|no (?:a/?c|air conditioning|cooling) (?:now|yet|today)",
)
_BIGGER: Final = whole_words(r"bigger|larger|stronger|upsiz\w*|more tons|a size up|next size")
_HEAT_PUMP: Final = whole_words(r"heat ?pumps?|heat ?bump|furnace_to_heat_pump")
_TURNING: Final = whole_words(
    r"to|switch\w*|convert\w*|chang\w*|instead|by|for|going|from|replaced? with|want\w*|get rid"
)
_FURNACE: Final = whole_words(r"furnaces?|gas|oil|boiler")
_SAME: Final = whole_words(r"same|like for like|like_for_like|both|just replac\w*|all of it|whole")
_COOLS: Final = whole_words(r"a/?c|air con\w*|air|cool\w*|condenser|outdoor unit|outside unit")
_HEATS: Final = whole_words(r"heat\w*|furnaces?")
_NOT_BIGGER: Final = whole_words(r"(?:not|no|nothing|isn'?t) (?:any )?(?:bigger|larger|upsiz\w*)")


def read_change(text: str, choices: tuple[str, ...]) -> Reading | None:
    """What is replaced, and whether type or size changes; the change that asks for air wins."""
    if text.strip(" .!") in choices:
        return Accepted({"choice": text.strip(" .!")})
    plain = text.replace("_", " ")
    if _FIRST.search(plain):
        return Accepted({"choice": "first_cooling"})
    if _HEAT_PUMP.search(plain):
        return _with_heat_pump(plain)
    if _BIGGER.search(plain) and not _NOT_BIGGER.search(plain):
        return Accepted({"choice": "bigger"})
    cools, heats = bool(_COOLS.search(plain)), bool(_HEATS.search(plain))
    if _SAME.search(plain) or (cools and heats):
        return Accepted({"choice": "like_for_like"})
    if cools or heats:
        return Accepted({"choice": "cooling_only" if cools else "heating_only"})
    return None


def _with_heat_pump(text: str) -> Reading:
    if _SAME.search(text) and not _FURNACE.search(text):
        return Accepted({"choice": "like_for_like"})
    if _FURNACE.search(text) or _TURNING.search(text):
        return Accepted({"choice": "furnace_to_heat_pump"})
    return AskBack(
        "Is there a furnace now that becomes a heat pump, or a heat pump already?",
        ({"choice": "furnace_to_heat_pump"}, {"choice": "like_for_like"}),
        AskKind.TWO_READINGS,
    )


_TROUBLE: Final[Table] = (
    (
        "repeated",
        whole_words(
            r"twice|two|three|four|several|few|many|couple|every|keeps?|again|always|often|times",
            r"more than once|repeated\w*|all the time|[2-9](?: times|x)?|constantly|regularly",
        ),
    ),
    ("never", whole_words(r"never|no|nope|nah|none|not|hasn'?t|nothing|n|zero|0|no problems?")),
    (
        "once",
        whole_words(
            r"once|one|1|yes|yep|yeah|yup|y|froze\w*|frozen|iced?|shut|trip\w*|boards?|blower|motor",
            r"exchanger|repair\w*|fixed|replaced|broke\w*|died",
        ),
    ),
)
_ONE_TIME: Final = re.compile(r"\b(?:just |only )?(?:one|1) time\b|\bonce\b")


def read_trouble(text: str, choices: tuple[str, ...]) -> Reading | None:
    """How often it froze up, shut itself down or broke."""
    plain = text.replace("more than once", "repeated")
    if _ONE_TIME.search(plain) and "repeated" not in plain:
        return Accepted({"choice": "once"})
    for choice, pattern in _TROUBLE:
        if pattern.search(plain):
            return Accepted({"choice": choice})
    return None
