"""Carbon monoxide in figures, and people whom the air makes ill: dangers of a whole line."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from intake.reading.red_flag_kinds import RedFlag, RedFlagKind, RedFlagState
from intake.reading.red_flag_state import NOW, OLD_NEWS

__all__ = ["IF", "illness", "readings"]

# --- carbon monoxide in figures ------------------------------------------------------------------

# Action levels for room air: 9 ppm find out why, 35 ppm shut the source down, 70 ppm leave.
# Source: ANSI/BPI-1200 (how: memory).
_ASK_PPM: Final = 9.0
_STOP_PPM: Final = 35.0
_LEAVE_PPM: Final = 70.0
_FLUE_PPM: Final = 100.0
"""In the flue, unlike in a room, up to about this much is common (common practice, no source)."""
_MOST_PPM: Final = 3000.0
"""A figure above this beside "CO" is a height or a postal code of the state."""

_CO: Final = r"\b(?:co|c\.o\.?|see oh|sea oh|carbon mon\w*|monoxide)\b"
_PPM: Final = re.compile(r"(\d+(?:\.\d+)?) ?(?:ppm|parts per million|p\.?p\.?m|parts)\b")
_CO_FIGURE: Final = re.compile(
    rf"{_CO}(?:[ :=,-]+(?:is|at|of|reads?|reading|readings|levels?|tested|tests?|measured?|was"
    rf"|meter"
    r"|alarm|detector|monitor|showing|shows?|says?|got|getting|in|the|room|air|ambient|house|about"
    r"|around|now|a|up|to|hit|hits|its|it|by|near|on|from|over|above|under|just|hood|furnace"
    r"|supply|register|kitchen|hall|hallway|basement|living|bedroom|upstairs|downstairs|climbing"
    r"|went|jumped|rose|registers|came|back|and|like|only|still|high|spiked|pegged|stack"
    r"|flue)){0,7}"
    r"[ :=,-]+(\d{1,4}(?:\.\d+)?)(?!\d| ?(?:%|percent|years?|yrs?|ft|feet|inch\w*|in\.?(?=$|[,;])"
    r"|x|of|alarms?|detectors?|cfm|tons?|k\b|btu\w*|minutes?|times|deg\w*|f\b|st\b|ave\w*|rd\b"
    r"|street|beeps?|months?|inwc|in wc|am\b|pm\b|hours?|days?|weeks?|-))(?=[ .,;!?)]|$)"
)
_CO_SAYS: Final = re.compile(
    rf"{_CO}(?: \w+){{0,5}} (?:reads?|reading|says?|shows?|showing|displays?|at|hit)"
    r"(?: \w+){0,2}? (\d{1,4})(?!\d| ?(?:%|percent|years?|ft|feet|x|inch\w*|in\.|cfm|tons?|k\b"
    r"|minutes?|beeps?))\b"
)
_FIGURE_CO: Final = re.compile(
    rf"(?<![\d.x])(?<!x )(?<!by )(\d{{1,4}}) (?:of |on the |ambient |room |parts )?"
    rf"{_CO}(?! (?:alarms?|detectors?|monitors?|sensors?))"
)
_IN_THE_FLUE: Final = re.compile(
    r"\b(?:flue|stack|exhaust|vent|air free|airfree|undiluted|chimney|combustion analy\w+)\b"
)
_IN_THE_ROOM: Final = re.compile(
    r"\b(?:ambient|room|house|hall\w*|kitchen|bedroom|living|basement air|return|registers?"
    r"|indoors)\b"
)
_DIOXIDE: Final = re.compile(r"\bco2\b|\bdioxide\b")
IF: Final = re.compile(r"\b(?:if|maybe|might|perhaps|would|should)\b|\?")


def readings(line: str) -> Iterator[RedFlag]:
    """Carbon monoxide figures of a lower-case line that call for something."""
    matches = (m for p in (_PPM, _CO_FIGURE, _CO_SAYS, _FIGURE_CO) for m in p.finditer(line))
    figures = [figure for m in matches if (figure := float(m[1])) <= _MOST_PPM]
    if not figures:
        return
    most = max(figures)
    if _DIOXIDE.search(line):
        if most >= _ASK_PPM:
            yield RedFlag(RedFlagKind.CO_READING, RedFlagState.UNCLEAR, line)
        return
    if _IN_THE_FLUE.search(line) and not _IN_THE_ROOM.search(line):
        if most >= _FLUE_PPM:
            yield RedFlag(RedFlagKind.CO_READING, RedFlagState.UNCLEAR, line)
        return
    if most < _ASK_PPM:
        return
    vague = OLD_NEWS.search(line) or IF.search(line)
    unclear = most < _STOP_PPM or (vague and not NOW.search(line))
    kind = RedFlagKind.CARBON_MONOXIDE if most >= _LEAVE_PPM else RedFlagKind.CO_READING
    yield RedFlag(kind, RedFlagState.UNCLEAR if unclear else RedFlagState.PRESENT, line)


# --- people who are ill --------------------------------------------------------------------------

_SIGNS: Final = (
    r"\bheadaches?\b", r"\b(?:dizz\w+|lightheaded|light headed|vertigo)\b",
    r"\b(?:nause\w*|vomit\w*|throw(?:s|ing)? up|threw up)\b",
    r"\b(?:sick|ill)\b", r"\bpassed out\b|\bfaint(?:ed|ing)\b|\bcollapsed\b", r"\billness\b",
)  # fmt: skip
_SIGN: Final = re.compile("|".join(f"({sign})" for sign in _SIGNS))
_WITH_THE_AIR: Final = re.compile(
    r"\b(?:furnace|heat|heater|gasunit|boiler|house|inside|outside|in here|indoors|basement|air"
    r"|unit"
    r"|runs|running|smell|fumes|exhaust|everyone|everybody|we|all of us|family|kids|home|since"
    r"|gas|co|coalarm|alarm|turn|turned|kicks|comes on)\b"
)
_HOT_WORK: Final = re.compile(
    r"\b(?:attic|crawl\w*|roof|climb\w*|ladder|sweat\w*|filter|dust\w*)\b"
)
_OF_A_BUG: Final = re.compile(r"\bbug going around\b")
_NOBODY: Final = re.compile(
    r"\b(?:no|not|nobody|no one|noone|none|dont|isnt|arent|never|without)\b"
)
_DENIED: Final = re.compile(
    r"\b(?:nobody|no one|noone|none of|no|not|arent|isnt|dont|never|without|doesnt|havent)\b"
    r"(?: \w+){0,5}? (?:headaches?|dizz\w+|nause\w*|sick|ill|illness|passed out|lightheaded)\b"
)


def illness(line: str, *, of_cold_or_heat: bool) -> Iterator[RedFlag]:
    """Signs of illness in a line in one form: one asks, one with the air or two together stop.

    Confusion, slurred speech and the like are not the air's where people are cold or hot.
    """
    signs = {found.lastindex for found in _SIGN.finditer(line)}
    if of_cold_or_heat:
        signs -= {6}
    if _DENIED.search(line) or not (signs - {4}):
        return
    sure = 5 in signs or len(signs) > 1 or bool(_WITH_THE_AIR.search(line))
    vague = OLD_NEWS.search(line) or IF.search(line) or _NOBODY.search(line)
    doubtful = _OF_A_BUG.search(line) or (vague and not NOW.search(line)) or _HOT_WORK.search(line)
    state = RedFlagState.PRESENT if sure and not doubtful else RedFlagState.UNCLEAR
    yield RedFlag(RedFlagKind.CARBON_MONOXIDE, state, line)
