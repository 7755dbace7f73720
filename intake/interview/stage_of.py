"""Whose stages are told: those of the cooling, or those of the burner.

A two-stage furnace often goes with a single-stage condenser; a stage belongs to the thing named in
its own phrase.
"""

import re
from dataclasses import dataclass
from typing import Final

from intake.interview.denials import affirmed
from intake.interview.own_words import STAGES

__all__ = ["StagesTold", "cooling_stage", "stages_told"]


@dataclass(frozen=True, slots=True)
class StagesTold:
    """Stages of the cooling and of the burner; empty where nobody told them.

    Attributes:
        cooling: "single", "two", "variable" or empty.
        burner: The same of the burner.
    """

    cooling: str = ""
    burner: str = ""


_PHRASES: Final = re.compile(
    r"[;]|,(?!\d{3}\b)|\.(?!\d)|\b(?:and|with|w/?|over|on top of|on|under|plus|but|paired with"
    r"|for)\b"
    r"|&|\+"
)
_BURNER: Final = re.compile(
    r"\b(?:furn\w{1,5}|burner|gas valve|gas heat|fire|heat side|heating side|gas side)\b"
)
_COOLER: Final = re.compile(
    r"\b(?:a/?c|air con\w*|condens\w+|coil|cool\w*|outdoor\w*|compressor|heat ?pump|hp|outside"
    r"|tons?)\b"
)
_DOUBT: Final = re.compile(r"\b(?:or|maybe|either)\b|\?")


def stages_told(text: str, *, burns: bool) -> StagesTold:
    """The stages that a line tells, each of its own thing.

    Args:
        text: Normalised.
        burns: Whether a burner goes in beside the cooling.

    >>> stages_told("two stage furnace with a single stage 3 ton ac", burns=True)
    StagesTold(cooling='single', burner='two')
    """
    cooling = burner = loose = ""
    for phrase in _PHRASES.split(text):
        stages = _stages_in(phrase)
        if len(stages) != 1:
            continue
        burning = burns and _BURNER.search(phrase) is not None
        if burning and not _COOLER.search(phrase):
            burner = stages[0]
        elif _COOLER.search(phrase) and not burning:
            cooling = stages[0]
        else:
            loose = loose or stages[0]
    if not (cooling or burner or loose) and _SAYS_SINGLE.search(text):
        loose = "single"
    return StagesTold(cooling or loose, burner)


_SINGLE_WORD: Final = re.compile(
    r"(?:^|[,;]) ?(?:it'?s |its |just |only )?(?:a )?single(?= ?(?:[,;.]|$))"
)
_SAYS_SINGLE: Final = re.compile(
    _SINGLE_WORD.pattern
    + r"|\bon[ /-]+(?:and )?off\b|\bno stages\b|\bsingle(?= (?:heat ?pump|a/?c|condenser)\b)"
)


def _stages_in(phrase: str) -> list[str]:
    found = [stages for stages, pattern in STAGES if affirmed(pattern, phrase)]
    if _WHICH.search(phrase) or (len(found) > 1 and _DOUBT.search(phrase)):
        return []
    return found[:1]


_WHICH: Final = re.compile(
    r"\b(?:single|one|1|two|2|variable|inverter)[ -]?(?:stage|speed)? or (?:maybe |a )?"
    r"(?:single|one|1|two|2|variable|inverter)\b|\b(?:single|one)/(?:two|variable)\b"
)
"""Two stages with "or" between them."""

_ON_OFF: Final = re.compile(
    r"(?:it'?s |its |just |only |simple |plain |no stages?,? ?|the |old |it |is |a )*"
    r"(?:on[ /-]+(?:and )?off|either on or off|no stages?)(?: only| type| unit| kind)?[.! ]*"
)


_RAMPS: Final = re.compile(
    r"(?:it'?s |it |they |the |compressor |unit |just |kind of )*(?:ramps|modulates|varies|inverts)"
    r"(?: (?:up|down|and|itself|with the load|all over|its speed))*[.! ]*"
)
_BARE_AC: Final = re.compile(
    r"\b(?:a/?c|condenser|cooling|outdoor\w*)(?: side)?(?: is|'s)? "
    r"(?P<stage>one|single|two|1|2)\b(?![- ]*\d)"
)


def cooling_stage(line: str) -> str:
    """The stage of the cooling that a line tells, where that is asked; empty if it tells none.

    >>> cooling_stage("one stage condenser, two stage furnace"), cooling_stage("just on/off")
    ('single', 'single')
    """
    if _ON_OFF.fullmatch(line):
        return "single"
    if _RAMPS.fullmatch(line):
        return "variable"
    bare = _BARE_AC.search(line)
    if bare is not None and _BURNER.search(line):
        return {"one": "single", "1": "single", "single": "single"}.get(bare["stage"], "two")
    told = stages_told(line, burns=True)
    return told.cooling if told.burner else ""
