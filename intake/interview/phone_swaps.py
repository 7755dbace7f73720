"""Heat pump and furnace in one line: which of them goes out, and which goes in."""

import re
from enum import StrEnum
from typing import Final

__all__ = ["Swap", "swap_told"]


class Swap(StrEnum):
    """What becomes of a heat pump that a line names."""

    TO_HEAT_PUMP = "to_heat_pump"
    TO_FURNACE = "to_furnace"
    HEAT_PUMP_AGAIN = "heat_pump_again"


_PUMP: Final = r"(?:heat ?(?:pumps?|bump))"
_FIRE: Final = r"(?:furnaces?|gas(?: heat)?|oil(?: heat)?|boilers?|propane)"
_EITHER: Final = re.compile(rf"\b(?:(?P<pump>{_PUMP})|(?P<fire>{_FIRE}))\b")
_A: Final = r"(?:an?|the|new|old|existing|gas|oil|electric|propane|another|his|her|their|our|my)"
_GOES_IN: Final = re.compile(
    rf"\b(?:to|into|with|by|want\w*|wanna|get(?:ting)?"
    rf"|put(?:ting)?(?: in)?|add\w*|install\w*)"
    rf"(?: (?:be |have |go |put in |get ){{0,2}}(?:{_A} )*)$|\b(?:to|with|into|by|want|wants) $"
)
_GOES_OUT: Final = re.compile(
    rf"\b(?:from|instead of|in place of|rid of|replac(?:e|es|ing)|(?:tak|tear|pull|ripp?|yank)\w*"
    rf"(?: out)?|remov\w*|swap\w*|switch\w*|convert\w*|chang\w*|ha[ds]|have|los\w+|dump\w*|ditch\w*"
    rf"|drop\w*|scrap\w*|toss\w*|junk\w*|out with)"
    rf"(?: off| out| over)?(?: from)?(?: {_A})* $"
)
_TRADED: Final = re.compile(
    rf"\b(?:dump|ditch|drop|scrap|toss|junk|swap|trad|replac|exchang)\w*\b.* for (?:{_A} )*$"
)
"""What something is given up for: "dumping the heat pump for a furnace"."""
_IN_AFTER: Final = re.compile(
    r"^ (?:going |comes |goes )?in\b(?! (?:there|the|a|my|our|now|place))"
)
_OUT_AFTER: Final = re.compile(
    r"^ (?:is |goes |going |comes |coming |quit|died|gone)?(?:out\b|now\b|today\b|currently\b|quit"
    r"|died"
    r"|is dead|is shot|at the moment)"
)


def swap_told(text: str) -> Swap | None:
    """What a line that names a heat pump says of going out and coming in; None if nothing.

    >>> swap_told("heat pump out and gas furnace in").value
    'to_furnace'
    >>> swap_told("heat pump to heat pump").value
    'heat_pump_again'
    """
    named = list(_EITHER.finditer(text))
    pumps = [found for found in named if found["pump"]]
    fires = [found for found in named if found["fire"]]
    if not fires:
        return Swap.HEAT_PUMP_AGAIN if len(pumps) > 1 else None
    into = {found.lastgroup for found in named if _comes(text, found)}
    out = {found.lastgroup for found in named if _leaves(text, found)}
    if into == {"pump"} or (not into and out == {"fire"}):
        return Swap.TO_HEAT_PUMP
    if into == {"fire"} or (not into and out == {"pump"}):
        return Swap.TO_FURNACE
    return None if into == out and into else Swap.TO_HEAT_PUMP


def _comes(text: str, found: re.Match[str]) -> bool:
    if _OUT_AFTER.match(text[found.end() :]):
        return False
    before = text[: found.start()]
    if _TRADED.search(before):
        return True
    return bool(_IN_AFTER.match(text[found.end() :]) or _GOES_IN.search(before))


def _leaves(text: str, found: re.Match[str]) -> bool:
    if _comes(text, found):
        return False
    after = text[found.end() :]
    return bool(_OUT_AFTER.match(after) or _GOES_OUT.search(text[: found.start()]))
