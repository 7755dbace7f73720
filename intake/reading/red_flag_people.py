"""Carbon monoxide in figures, and people without heat or cooling: dangers of a whole line."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from intake.reading.red_flag_kinds import RedFlag, RedFlagKind, RedFlagState
from intake.reading.red_flag_state import NOW, OLD_NEWS

__all__ = ["people", "readings"]

# --- carbon monoxide in figures ------------------------------------------------------------------

# Action levels for room air: 9 ppm find out why, 35 ppm shut the source down, 70 ppm leave.
# Source: ANSI/BPI-1200 (how: memory).
_ASK_PPM: Final = 9.0
_STOP_PPM: Final = 35.0
_LEAVE_PPM: Final = 70.0
_FLUE_PPM: Final = 100.0
"""In the flue, unlike in a room, up to about this much is common (common practice, no source)."""

_PPM: Final = re.compile(r"(\d+(?:\.\d+)?) ?(?:ppm|parts per million|p\.?p\.?m)\b")
_CO_FIGURE: Final = re.compile(
    r"\b(?:co|c\.o\.|see oh|carbon monoxide|monoxide)\b(?: (?:is|at|of|reads?|reading|readings"
    r"|level|levels|tested|test|measured|was|meter|alarm|detector|monitor|showing|shows|says|got"
    r"|in|the|room|air|ambient|house|about|around|now|a|up|to|hit"
    r"|hits))*[ :=]+(\d+(?:\.\d+)?)(?! ?(?:%|years?|yrs?|ft|feet|in\b|x|of|alarms?|detectors?|cfm"
    r"|ton|k\b|btu))(?=[ .,;!?]|$)"
)
_IN_THE_FLUE: Final = re.compile(r"\b(?:flue|stack|exhaust|vent|air free|undiluted|chimney)\b")
_DIOXIDE: Final = re.compile(r"\bco2\b|\bdioxide\b")


_IF: Final = re.compile(r"\b(?:if|maybe|might|perhaps|would|should)\b|\?")


def readings(line: str) -> Iterator[RedFlag]:
    """Carbon monoxide figures of a lower-case line that call for something."""
    figures = [float(found[1]) for found in (*_PPM.finditer(line), *_CO_FIGURE.finditer(line))]
    if not figures:
        return
    most = max(figures)
    if _DIOXIDE.search(line):
        if most >= _ASK_PPM:
            yield RedFlag(RedFlagKind.CO_READING, RedFlagState.UNCLEAR, line)
        return
    if _IN_THE_FLUE.search(line):
        if most >= _FLUE_PPM:
            yield RedFlag(RedFlagKind.CO_READING, RedFlagState.UNCLEAR, line)
        return
    if most < _ASK_PPM:
        return
    vague = OLD_NEWS.search(line) or _IF.search(line)
    unclear = most < _STOP_PPM or (vague and not NOW.search(line))
    kind = RedFlagKind.CARBON_MONOXIDE if most >= _LEAVE_PPM else RedFlagKind.CO_READING
    yield RedFlag(kind, RedFlagState.UNCLEAR if unclear else RedFlagState.PRESENT, line)


# --- people without heat or cooling --------------------------------------------------------------

_BROKEN: Final = (
    r"(?: (?:is|went|has|just|been|was|its|gone|totally|completely|got)){0,3} "
    r"(?:out|dead|down|broken?|died|quit|quits|wont (?:start|run|work|come on|turn on|light|fire)"
    r"|not (?:working|running|heating|cooling|coming on)|doesnt (?:work|run)|isnt working"
    r"|not work)\b"
)
_NO_HEAT: Final = re.compile(
    r"\b(?:no|without|lost|lose|havent had|dont have|have no|aint got no) (?:any )?(?:heat"
    r"|heating)\b(?! (?:pumps?|strips?|kit|exchanger|loss|load|recovery|gain|stage|upstairs"
    r"|downstairs|in (?:the )?(?!house)|at the|from the|to the|coming|cable|tape))"
    rf"|\b(?:heats?|furnaces?|heaters?|heating|gasunit|boiler|heat pump){_BROKEN}"
    r"|\b(?:not|isnt|wont|doesnt) heat(?:ing)?\b(?! (?:the|that|this|upstairs|evenly|up))"
    r"|\b(?:house|its|it is|were|we are|theyre|everyone|everybody) freezing\b"
    r"|\bfreezing (?:in here|cold)\b"
)
_NO_COOLING: Final = re.compile(
    r"\b(?:no|without|lost|have no|dont have) (?:any )?(?:ac|cooling|cool air|cold air)\b"
    rf"|\b(?:acs?|cooling|air|unit|heat pump){_BROKEN}"
    r"|\b(?:not|isnt|wont|doesnt) cool(?:ing)?\b(?! (?:the|that|this|upstairs|evenly))"
)
_COOLING_BROKE: Final = re.compile(
    rf"\b(?:acs?|cooling){_BROKEN}|\b(?:not|isnt|wont) cooling\b|\blost (?:the )?ac\b"
)
_VULNERABLE: Final = re.compile(
    r"\b(?:bab(?:y|ies)|infants?|newborns?|toddlers?|preemie|elderly|elders|grand(?:ma|pa|mother"
    r"|father|parents?)|seniors?|oxygen|disabled|wheelchair|pregnant|sick|chemo|hospice|dialysis"
    r"|diabetic|handicapp?ed|bedridden|frail|asthma|copd|invalid|heart condition|old (?:lady|man"
    r"|woman|couple|folks|people|person)|ill (?:wife|husband|mother|father|mom|dad|kid|child"
    r"|person)|is ill|breathing machine|months? old|week old|weeks old|little ones?|small (?:kids?"
    r"|children|child)|(?:kids?|children))\b|\b(?:[6][5-9]|[789]\d|10\d|one|two|1|2)[ -]?(?:years?"
    r"|yrs?|yr|yo|y o)(?: old)?\b(?! (?:old )?(?:house|home|furnace|unit|system|duct\w*|equipment"
    r"|ac|heat|boiler))|\b(?:is|im|shes|hes|moms?|dads?|mothers?|fathers?|wifes?|husbands?|aged?"
    r"|whos) (?:is )?(?:6[5-9]|[789]\d|10\d)\b"
)
_NO_SUCH_PEOPLE: Final = re.compile(
    r"\b(?:no|not|nobody|no one|none) (?!heat|ac\b|cool|air|furnace|working"
    r"|power)(?:\w+ ){0,2}(?:bab|infant|kid|child|elder|senior|sick|old|ill)"
)
_COLD_INSIDE: Final = re.compile(
    r"\b(?:its|it is|house is|inside is|down to|is at|only|indoors is|reads|stat says"
    r"|thermostat says) (?:only |about |down to |at )?([1-4]\d|5[0-4])(?: ?(?:degrees|deg"
    r"|f))? (?:in here|in the house|inside|indoors|in our house|in this house|in the living)\b"
    r"|\b(?:house|inside|indoors)(?: temp\w*)? (?:is |its |at )+(?:only |about |down to "
    r"|at )?([1-4]\d|5[0-4])(?: ?(?:degrees|deg|f))?$"
)


def people(line: str) -> Iterator[RedFlag]:
    """No heat or no cooling, and whether somebody is there whom it can harm."""
    no_heat, no_cooling = _NO_HEAT.search(line), _NO_COOLING.search(line)
    there = bool(_VULNERABLE.search(line)) and not _NO_SUCH_PEOPLE.search(line)
    vague = bool(OLD_NEWS.search(line) or _IF.search(line))
    vague = vague and not NOW.search(line)
    surely = RedFlagState.UNCLEAR if vague else RedFlagState.PRESENT
    if _COLD_INSIDE.search(line) and not re.search(r"\b(?:attic|garage|crawl|outside)\b", line):
        yield RedFlag(RedFlagKind.NO_HEAT_VULNERABLE, surely, line)
    elif no_heat:
        state = surely if there else RedFlagState.UNCLEAR
        yield RedFlag(RedFlagKind.NO_HEAT_VULNERABLE, state, line)
    if no_cooling and (there or _COOLING_BROKE.search(line)):
        state = surely if there else RedFlagState.UNCLEAR
        yield RedFlag(RedFlagKind.NO_COOLING_VULNERABLE, state, line)
