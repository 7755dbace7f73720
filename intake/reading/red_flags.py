"""Signs of danger in anything that is typed: gas, carbon monoxide, burning, water, flame, cold.

`look` is shown every line, whatever the open question. Missing a danger is far worse than one
extra question, so what is neither plainly there nor plainly denied is `unclear`: ask "is that
happening right now?". It knows no question, no job and no response (`telling.responses` has the
words to say). Linear in the length of the text, which is cut first.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from itertools import zip_longest
from typing import Final

from intake.reading.clean import LONGEST_PASTE, normalise
from intake.reading.red_flag_forms import clauses, one_form
from intake.reading.red_flag_kinds import RedFlag, RedFlagKind, RedFlagState
from intake.reading.red_flag_people import people, readings
from intake.reading.red_flag_state import JUST_NO, STILL, state_of
from intake.reading.red_flag_words import PRESENT, UNCLEAR

__all__ = ["RedFlag", "RedFlagKind", "RedFlagState", "look"]


def look(text: str) -> RedFlag | None:
    """The gravest danger that a text speaks of, or None.

    Args:
        text: One line as typed or already cleaned; only its first 20,000 characters are read.

    >>> look("it smells like gas in here").state
    <RedFlagState.PRESENT: 'present'>
    >>> look("no gas smell").state
    <RedFlagState.NEGATED: 'negated'>
    >>> look("smelled gas last week").state
    <RedFlagState.UNCLEAR: 'unclear'>
    >>> look("80% gas furnace") is None
    True
    """
    line = normalise(text[:LONGEST_PASTE]).replace("'", "")
    found = [*readings(line), *people(one_form(line))]
    parts = [one_form(part) for part in clauses(line)]
    still = bool(STILL.search(line))
    for part, after in zip_longest(parts, parts[1:], fillvalue=""):
        found += _in_clause(part, denied_next=bool(JUST_NO.fullmatch(after)), still=still)
    return min(found, key=_gravity, default=None)


_STATES: Final = (RedFlagState.PRESENT, RedFlagState.UNCLEAR, RedFlagState.NEGATED)
_KINDS: Final = tuple(RedFlagKind)


def _gravity(flag: RedFlag) -> tuple[int, int]:
    return _STATES.index(flag.state), _KINDS.index(flag.kind)


# --- one clause ----------------------------------------------------------------------------------


@cache
def _compiled(rows: tuple[tuple[str, str], ...]) -> tuple[tuple[RedFlagKind, re.Pattern[str]], ...]:
    return tuple((RedFlagKind(kind), re.compile(pattern)) for kind, pattern in rows)


_ALARM_AT_REST: Final = re.compile(
    r"\b(?:install\w*|new|replaced?|replac\w+|works?|working|test|tested|testing|have|has|having"
    r"|got|hallway|hall|upstairs|downstairs|bedrooms?|mounted|good|fine|ok|okay|quiet|silent"
    r"|silence|old|expired|years?|brand|needs?|need|require[sd]?|code|bring|sell|quote|add|adding"
    r"|every|each|floor|\d+|both|two|three|combo|plug in|green light|missing|present"
    r"|on the (?:wall|ceiling))\b"
)
_ORDINARY_SMELL: Final = re.compile(
    r"\b(?:musty|mustiness|mold\w*|mould\w*|mildew\w*|dust|dusty|dog|dogs|cat|cats|pets?|sock|socks"
    r"|paint\w*|cook\w*|food|kitchen|damp|wet|stale|perfume|fresh|new|tobacco|cigarettes?|sewage"
    r"|sewer|nice|clean|old|earthy|moist|basement|fine|ok|normal|dead|mouse|mice|mask|tool|glue)\b"
)
_DUST_BURNING_OFF: Final = re.compile(
    r"\bdust\w*\b|\bfirst (?:heat|time|start|run|few minutes|cold|of the season|use)\b"
    r"|\bfirst firing\b|\bstart of (?:the )?(?:season|fall|winter)\b|\bfor a (?:few )?(?:minute"
    r"|minutes|sec|second)\b"
)
_AIR_HISSES: Final = re.compile(
    r"\b(?:registers?|vents?|grilles?|grills?|filter|return|supply|duct|air|diffusers?|damper)\b"
)
_BY_DESIGN: Final = re.compile(r"\b(?:drain|drains|condensate|pan|humidifier|pump|trap|coil)\b")
_LEAK_LOOKED_FOR: Final = re.compile(
    r"\bleak (?:test|check|search|detector|tested|checked)\b|\b(?:passed|soap\w*|bubble)\b"
)


def _in_clause(clause: str, *, denied_next: bool, still: bool) -> Iterator[RedFlag]:
    if chirp := _CHIRP.search(clause):
        state = state_of(clause, chirp.span(), denied_next=denied_next, still=still)
        yield RedFlag(RedFlagKind.LOW_BATTERY_CHIRP, state, clause)
        return
    told: set[RedFlagKind] = set()
    for kind, pattern in _compiled(PRESENT):
        spans = [found.span() for found in pattern.finditer(clause)]
        only_likely = bool(spans) and _only_likely(kind, clause)
        for span in spans:
            state = state_of(clause, span, denied_next=denied_next, still=still)
            if only_likely and state is RedFlagState.PRESENT:
                state = RedFlagState.UNCLEAR
            told.add(kind)
            yield RedFlag(kind, state, clause)
    if _ALL_DENIED.search(clause):
        yield RedFlag(RedFlagKind.GAS, RedFlagState.NEGATED, clause)
        return
    for kind, pattern in _compiled(UNCLEAR):
        hint = pattern.search(clause)
        if hint is None or kind in told or _ordinary(kind, clause, bool(told)):
            continue
        state = state_of(clause, hint.span(), denied_next=denied_next, still=False)
        told.add(kind)
        denied = state is RedFlagState.NEGATED
        yield RedFlag(kind, state if denied else RedFlagState.UNCLEAR, clause)


_CHIRP: Final = re.compile(
    r"\b\w*alarm\b(?!.*\bnonstop\b)(?: \w+){0,8}? chirp\b"
    r"|\bchirp\b(?: \w+){0,8}? \w*alarm\b(?!.*nonstop)"
)
_ALL_DENIED: Final = re.compile(
    r"\b(?:no|zero|not any|never any|without) (?:(?:weird|odd|strange|funny|bad|other|unusual|any"
    r"|such|more|kind of) )*(?:smells?|alarms?|red flags|danger\w*|safety (?:issues?|concerns?)"
    r"|leaks?)\b|\bnothing (?:smell|unsafe|dangerous)\b|\b(?:cant|dont|didnt|doesnt|havent|not"
    r"|never) (?:really )?smell(?:ed)? (?:anything|nothing|a thing|any)\b"
)


def _ordinary(kind: RedFlagKind, clause: str, told: bool) -> bool:
    """Whether a word that may mean danger stands in an ordinary sentence."""
    if kind is RedFlagKind.GAS:
        return bool(_AIR_HISSES.search(clause))
    if kind is RedFlagKind.ODD_SMELL:
        return told or bool(_ORDINARY_SMELL.search(clause))
    if kind is RedFlagKind.CARBON_MONOXIDE and "alarm" in clause:
        return told or (bool(_ALARM_AT_REST.search(clause)) and "sounding" not in clause)
    if kind is RedFlagKind.BURNING:
        at_rest = "smokealarm" in clause and bool(_ALARM_AT_REST.search(clause))
        return told or at_rest or bool(re.search(r"\b(?:he|she|they|customer|owner) smok", clause))
    return kind is RedFlagKind.WATER_ELECTRIC and bool(_BY_DESIGN.search(clause))


def _only_likely(kind: RedFlagKind, clause: str) -> bool:
    """Whether the sentence makes a danger ordinary enough to ask about it first."""
    if kind is RedFlagKind.BURNING:
        return bool(_DUST_BURNING_OFF.search(clause))
    if kind is RedFlagKind.WATER_ELECTRIC:
        return bool(_BY_DESIGN.search(clause))
    return kind is RedFlagKind.GAS and bool(_LEAK_LOOKED_FOR.search(clause))
