"""People without heat or cooling: dangers of a whole line."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from intake.reading.red_flag_air import IF
from intake.reading.red_flag_kinds import RedFlag, RedFlagKind, RedFlagState
from intake.reading.red_flag_state import NOW, OLD_NEWS

__all__ = ["people"]

_BROKEN: Final = (
    r"(?: (?:is|went|has|just|been|was|its|gone|totally|completely|got)){0,3} "
    r"(?:out|dead|down|broken?|died|quit|quits|kaput|shot|toast|failed|stopped|gave out"
    r"|conked out|crapped out|shut down|locked out|on the fritz|wont (?:even )?(?:start|run|work"
    r"|come on|turn on|light|fire|firing|kick on|ignite|stay (?:on|lit))"
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
    r"(?! (?:cold )?(?:out(?! here)|outside|outdoors)\b)"
    r"|\bfreezing (?:in here|cold)\b(?! (?:out(?! here)|outside|outdoors)\b)"
)
_NO_COOLING: Final = re.compile(
    r"\b(?:no|without|lost|have no|dont have) (?:any )?(?:ac|cooling|cool air|cold air)\b"
    rf"|\b(?:acs?|cooling|air|unit|heat pump|compressor|condenser){_BROKEN}"
    r"|\b(?:not|isnt|wont|doesnt) cool(?:ing)?\b(?! (?:the|that|this|upstairs|evenly))"
)
_COOLING_BROKE: Final = re.compile(
    rf"\b(?:acs?|cooling){_BROKEN}|\b(?:not|isnt|wont) cooling\b|\blost (?:the )?ac\b"
)
_VULNERABLE: Final = re.compile(
    r"\b(?:\w*bab(?:y|ies)|infants?|newborns?|toddlers?|preemie|elderly|elders|grand(?:ma|pa|mother"
    r"|father|parents?)|seniors?|oxygen|disabled|wheelchair|pregnant|sick|chemo|hospice|dialysis"
    r"|diabetic|handicapp?ed|bedridden|frail|asthma|copd|invalid|cancer|stroke|alzheimers"
    r"|dementia|parkinsons|ventilator|cpap|pacemaker|immune\w*|surgery|paralyzed|hospital bed|crib"
    r"|lung disease|emphysema|kidney|illness|passed out|heatstroke|confused|shivering"
    r"|heart (?:condition|failure|trouble|problems?|patient|disease|attack|issues)|old (?:lady|man"
    r"|woman|couple|folks|people|person|parents)|ill (?:wife|husband|mother|father|mom|dad|kid"
    r"|child"
    r"|person)|is ill|parkinson|alzheimer|breathing machine|months? old|week old|weeks old"
    r"|(?:only|just) \w+ (?:weeks|months|days)|little ones?|small (?:kids?"
    r"|children|child)|(?:kids?|children))\b|\b(?:[6][5-9]|[789]\d|10\d|one|two|1|2)[ -]?(?:years?"
    r"|yrs?|yr|yo|y o)(?: old)?\b(?! (?:old )?(?:house|home|furnace|unit|system|duct\w*|equipment"
    r"|ac|heat|boiler))|\b(?:is|im|shes|hes|moms?|dads?|mothers?|fathers?|wifes?|husbands?|aged?"
    r"|whos) (?:is )?(?:6[5-9]|[789]\d|10\d)\b"
    r"|\b(?:lady|man|woman|mom|dad|mother|father|grand\w+|wife|husband|aunt|uncle|neighbor|nana"
    r"|tenant|she|he|shes|hes|law)(?: (?:is|who|whos|age|aged|about|over|almost|nearly|lady)){0,3}"
    r" (?:6[5-9]|[789]\d|10\d|(?:sixty|seventy|eighty|ninety)(?: ?\w+)?)\b(?! ?(?:percent|%|plus"
    r" furnace|furnace))"
)
_NO_SUCH_PEOPLE: Final = re.compile(
    r"\b(?:no|not|nobody|no one|none) (?!heat|ac\b|cool|air|furnace|working"
    r"|power)(?:\w+ ){0,2}(?:bab|infant|kid|child|elder|senior|sick|old|ill)"
)
_DEGREES_INSIDE: Final = re.compile(
    r"(?<!\bby )(?<!\bx )\b(\d{2,3})(?: ?(?:degrees|deg|f|fahrenheit))? (?:in here|in (?:the"
    r"|our|this|their|her|his"
    r"|my)"
    r" (?:house|home|living\w*|place|apartment|trailer|kitchen|bedroom|nursery)|inside|indoors"
    r"|upstairs|in there)\b"
    r"|\b(?:house|home|inside|indoors|in here|living room|thermostat|stat|apartment|place|trailer"
    r"|temp|temperature|nursery)(?: (?:is|at|reads?|reading|says|saying|shows|its|it|it is|down|to"
    r"|dropped|only|up|about|just|already|right|now|around|like|temp\w*|got|gotten|has|was|hit|we"
    r"|are|sitting|under|below|over)){1,6} (\d{2,3})(?! ?(?:%|percent|cfm|years?|yrs?|sq|feet|ft|x"
    r"|by|amps?|inch\w*|degree rise|degree split|or))\b"
)
_ELSEWHERE: Final = re.compile(
    r"\b(?:attic|garage|crawl\w*|supply|return|plenum|set|setpoint|rise|split|register|coil|bulb"
    r"|co|coalarm|codioxide|ppm|duct\w*|vent|humidity|rh|discharge|design|delta|td)\b"
)
_COLD_HERE: Final = re.compile(
    r"\b(?:cold|chilly|ice box|icebox) (?:in here|in the house|inside)\b|\bhouse is (?:so |really |"
    r"very |too |getting |ice )*cold\b|\bshivering\b|\bsee (?:my|our|your) breath\b"
)

# Below 55 F indoors anybody is in danger, and 60 F can chill an old person. Source: a national
# health institute's advice on cold rooms (how: read in summary). The hot figures: common practice,
# no source.
_COLD_FOR_ALL: Final = 55
_COLD_FOR_SOME: Final = 60
_CHILLY_FOR_SOME: Final = 64
_HOT_FOR_SOME: Final = 85
_HOT_FOR_ALL: Final = 90
_HOTTEST: Final = 125


_FREEZING: Final = re.compile(
    r"\bfreezing\b(?! (?:up|over|coil|rain|point|level|line))|\bheat(?: is)? (?:off|not on)\b"
)
_FROZEN_COIL: Final = re.compile(r"\b(?:coil|evap\w*|lineset|pipes?|drain|freezer)\b")
_HAD: Final = re.compile(
    r"\b(?:just |has )?had (?:\w+ ){0,3}?(?:surgery|stroke|baby|heart|operation|transplant|chemo)\b"
)


_EQUIPMENT: Final = r"(?:heat pumps?|furnaces?|gasunit|acs?|air ?handlers?|boilers?|condensers?)"
_SWAPPED: Final = re.compile(
    rf"\b{_EQUIPMENT} (?:in|out) (?:and |with |for )?(?:an? |the )?(?:(?:new|gas|oil|electric"
    rf"|bigger|other|old) )*{_EQUIPMENT} (?:in|out)\b(?! (?:the|a|my|our|her|his|there|here|today"
    r"|now|since|last|this|yesterday)\b)"
)
"""What goes out and what goes in, which tells of no outage: "heat pump out, furnace in"."""


_BEGAN: Final = re.compile(r"\b(?:yesterday|last night|this morning|(?:hours?|days?) ago)\b")
"""When an outage began that nobody has called over."""


def people(line: str) -> Iterator[RedFlag]:
    """No heat or no cooling, and whether somebody is there whom it can harm."""
    line = _SWAPPED.sub(" ", line)
    no_heat, no_cooling = _NO_HEAT.search(line), _NO_COOLING.search(line)
    there = bool(_VULNERABLE.search(line)) and not _NO_SUCH_PEOPLE.search(line)
    told = _HAD.sub(" ", line)
    told = _BEGAN.sub(" ", told) if there else told
    vague = bool(OLD_NEWS.search(told) or IF.search(line))
    vague = vague and not NOW.search(line)
    surely = RedFlagState.UNCLEAR if vague else RedFlagState.PRESENT
    cold = _COLD_HERE.search(line) or (
        _FREEZING.search(line) and not _FROZEN_COIL.search(line) and not no_cooling
    )
    if no_heat or (there and cold and "room" not in line):
        state = surely if there else RedFlagState.UNCLEAR
        yield RedFlag(RedFlagKind.NO_HEAT_VULNERABLE, state, line)
    if no_cooling and (there or _COOLING_BROKE.search(line)):
        state = surely if there else RedFlagState.UNCLEAR
        yield RedFlag(RedFlagKind.NO_COOLING_VULNERABLE, state, line)
    if not _ELSEWHERE.search(line):
        for found in _DEGREES_INSIDE.finditer(line):
            yield from _by_degrees(int(found[1] or found[2]), there, surely, line)


def _by_degrees(
    indoors_degf: int, there: bool, surely: RedFlagState, line: str
) -> Iterator[RedFlag]:
    asks = RedFlagState.UNCLEAR
    if indoors_degf < (_COLD_FOR_SOME + 1 if there else _COLD_FOR_ALL):
        yield RedFlag(RedFlagKind.NO_HEAT_VULNERABLE, surely, line)
    elif there and indoors_degf <= _CHILLY_FOR_SOME:
        yield RedFlag(RedFlagKind.NO_HEAT_VULNERABLE, asks, line)
    elif (_HOT_FOR_SOME if there else _HOT_FOR_ALL) <= indoors_degf <= _HOTTEST:
        state = surely if there else asks
        yield RedFlag(RedFlagKind.NO_COOLING_VULNERABLE, state, line)
