"""What a caller says of the change and of past trouble, read by the words that decide it."""

import re
from typing import Final

from rapidfuzz.distance import OSA

from intake.interview.denials import affirmed
from intake.interview.own_words import whole_words
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
_SAME: Final = whole_words(
    r"(?:the )?same (?:kind|type|thing|size|sort|one|again|as (?:before|now))|like for like",
    r"(?:just |straight )?swap(?:ping)? (?:it|them|out|for)",
)
_SAME_ALONE: Final = re.compile(
    r"(?:(?:yeah|yes|well|um|just|it'?s|the|oh)[, ]+)*(?:same|both(?: of (?:them|it))?"
    r"|all of it|everything|the whole (?:thing|system|works)|whole (?:thing|system)"
    r"|heat(?:ing)? and (?:a/?c|air|cool\w*)|straight swap)(?: (?:please|again|thing))?[.! ]*"
)
_THE_SAME: Final = whole_words(r"(?:the|it'?s the|all the|stay(?:s|ing)?(?: the)?) same")
_FIGURES: Final = re.compile(r"\d")
_COOLS: Final = whole_words(r"a/?c|air con\w*|air|cool\w*|condenser|outdoor unit|outside unit")
_HEATS: Final = whole_words(r"heat\w*|furnaces?")
_NOT_BIGGER: Final = whole_words(r"(?:not|no|nothing|isn'?t) (?:any )?(?:bigger|larger|upsiz\w*)")


def read_change(text: str, choices: tuple[str, ...]) -> Reading | None:
    """What is replaced, and whether type or size changes; the change that asks for air wins.

    A line with figures says something else too; of it only the words that name a change count.
    """
    if text.strip(" .!") in choices:
        return Accepted({"choice": text.strip(" .!")})
    plain = _HEAT_SOMETHING.sub(_as_pump, text.replace("_", " "))
    if _FIRST.search(plain):
        return Accepted({"choice": "first_cooling"})
    if _HEAT_PUMP.search(plain):
        return _with_heat_pump(plain)
    if _BIGGER.search(plain) and not _NOT_BIGGER.search(plain):
        return Accepted({"choice": "bigger"})
    figures = _FIGURES.search(plain) is not None
    if (
        _SAME.search(plain)
        or _SAME_ALONE.fullmatch(plain)
        or (_THE_SAME.search(plain) and not figures)
    ):
        return Accepted({"choice": "like_for_like"})
    cools, heats = affirmed(_COOLS, plain), affirmed(_HEATS, plain)
    if cools and heats:
        return Accepted({"choice": "like_for_like"})
    if (cools or heats) and _BECOMES.search(plain):
        return AskBack(
            "What does it change to: a heat pump, or the same kind again?",
            ({"choice": "furnace_to_heat_pump"}, {"choice": "like_for_like"}),
            AskKind.TWO_READINGS,
        )
    if (cools or heats) and not figures:
        return Accepted({"choice": "cooling_only" if cools else "heating_only"})
    return None


_HEAT_SOMETHING: Final = re.compile(r"\b(heat ?)([a-z]{3,6})\b")
_BECOMES: Final = whole_words(r"to|into|switch\w*|convert\w*|chang\w*|instead|going")


def _as_pump(found: re.Match[str]) -> str:
    """ "heat pmup": one slip away from a heat pump."""
    slips = min(OSA.distance(found[2], right) for right in ("pump", "pumps"))
    return f"{found[1]}pump" if slips <= 1 else found[0]


_STAYS: Final = whole_words(
    r"same|already (?:have|got|a)|heat ?pump (?:to|for|by|with) (?:a )?heat ?pump"
)


def _with_heat_pump(text: str) -> Reading:
    if (_SAME.search(text) or _STAYS.search(text)) and not _FURNACE.search(text):
        return Accepted({"choice": "like_for_like"})
    if _FURNACE.search(text) or _TURNING.search(text):
        return Accepted({"choice": "furnace_to_heat_pump"})
    return AskBack(
        "Is there a furnace now that becomes a heat pump, or a heat pump already?",
        ({"choice": "furnace_to_heat_pump"}, {"choice": "like_for_like"}),
        AskKind.TWO_READINGS,
    )


_EVENTS: Final = whole_words(
    r"fr[eo]e?ze\w*|froze\w*|ice[ds]?|icing|shut(?:s|ting)?|trip\w*|kick\w* (?:off|out)",
    r"boards?|blower|motors?|exchangers?|repair\w*|fix\w*|replac\w*|broke\w*|breaks?|died"
    r"|fail\w*|quit|stopp\w*|went out|had (?:to|a|one|it)|happen\w*|serviced?|trouble\w*"
    r"|problems?|issues?",
)
_OFTEN: Final = whole_words(
    r"twice|several|few|many|couple|every|keeps?|again|always|often|times|more than once"
    r"|repeated\w*|all the time|constantly|regularly|on and off",
    r"(?:two|three|four|five|[2-9]) ?(?:times|x)",
)
_NEVER: Final = whole_words(
    r"never|no|nope|nah|none|not|hasn'?t|haven'?t|didn'?t|nothing|no problems?"
)
_ONE_TIME: Final = re.compile(r"\b(?:just |only )?(?:one|1) time\b|\b(?:just |only )?once\b")
_NEVER_ALONE: Final = re.compile(
    r"(?:(?:oh|well|um|uh|honestly)[, ]+)*(?:never|no|nope|nah|none|not (?:that|once|really|yet)"
    r"|nothing|n|zero|0|hasn'?t|it hasn'?t|it'?s (?:never|been (?:fine|good|great))|we'?ve never"
    r"|he'?s never|she says (?:no|never))\b.*"
)
_OFTEN_ALONE: Final = re.compile(
    r"(?:yes|yeah|yep|yup|oh|well|like|about|maybe|[, ])*"
    r"(?:repeated|twice|(?:two|three|four|five|[2-9])(?: ?(?:times|x))?|a couple|several|a few|many"
    r"|a lot|lots|always|often|every \w+|more than once)\b(?: (?:times|of times|now|already|a \w+"
    r"|last \w+|this \w+|at least|i think)[, ]*)*[.! ]*"
)
_ONCE_ALONE: Final = re.compile(
    r"(?:yes|yep|yeah|yup|y|one|1|once|just (?:the )?one(?: time)?)[.! ]*"
)


def read_trouble(text: str, choices: tuple[str, ...]) -> Reading | None:
    """How often it froze up, shut itself down or broke; None for a line about anything else."""
    plain = text.replace("more than once", "repeated").strip()
    if plain in choices:
        return Accepted({"choice": plain})
    if _ONCE_ALONE.fullmatch(plain):
        return Accepted({"choice": "once"})
    if _OFTEN_ALONE.fullmatch(plain):
        return Accepted({"choice": "repeated"})
    told = bool(_EVENTS.search(plain))
    if not told and _FIGURES.search(plain):
        return None
    if _ONE_TIME.search(plain) and "repeated" not in plain:
        return Accepted({"choice": "once"})
    if told and _OFTEN.search(plain):
        return Accepted({"choice": "repeated"})
    if _NEVER_ALONE.fullmatch(plain) or (told and _NEVER.search(plain)):
        return Accepted({"choice": "never"}) if not _BUT.search(plain) else _often_asked()
    return Accepted({"choice": "once"}) if told else None


_BUT: Final = re.compile(r"\b(?:but|except|although|though)\b.*")


def _often_asked() -> AskBack:
    return AskBack(
        "Once, or more than once?", ({"choice": "once"}, {"choice": "repeated"}),
        AskKind.TWO_READINGS,
    )  # fmt: skip
