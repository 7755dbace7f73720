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
from intake.reading.red_flag_air import illness, readings
from intake.reading.red_flag_forms import clauses_in_one_form
from intake.reading.red_flag_kinds import RedFlag, RedFlagKind, RedFlagState
from intake.reading.red_flag_match import ideas_in
from intake.reading.red_flag_people import people
from intake.reading.red_flag_state import JUST_NO, STILL, state_of
from intake.reading.red_flag_words import KEYS, PRESENT, UNCLEAR

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
    line = _IS.sub(" is", normalise(text[:LONGEST_PASTE]).replace("we're", "we are"))
    line = _BUBBLE_WRAP.sub("wrap", line.replace("'", ""))
    if not _WORD.search(line):
        return None
    parts = clauses_in_one_form(line)
    whole = " ".join(parts)
    found = [*readings(line), *people(whole)]
    of_cold_or_heat = any(flag.kind in _COLD_OR_HEAT for flag in found)
    found += illness(whole, of_cold_or_heat=of_cold_or_heat)
    still = bool(STILL.search(line))
    all_denied = bool(parts) and bool(_NO_TO_ALL.fullmatch(parts[0]))
    for part, after in zip_longest(parts, parts[1:], fillvalue=""):
        denied = bool(JUST_NO.fullmatch(after)) or (all_denied and part.count(" ") <= 2)
        found += _in_clause(part, whole, denied_next=denied, still=still)
        if _SAME_THING.match(after) and not _DENIAL.search(f"{part} {after}"):
            found += _ideas(f"{part} {after}", whole, denied_next=False, still=still)
    if _CANT_SMELL.search(line) and not any(flag.stops for flag in found):
        found = [flag for flag in found if flag.state is not RedFlagState.NEGATED]
        found.append(RedFlag(RedFlagKind.ODD_SMELL, RedFlagState.UNCLEAR, line))
    if not found and _LIGHT_ABOVE.search(line):
        found.append(RedFlag(RedFlagKind.CARBON_MONOXIDE, RedFlagState.UNCLEAR, line))
    if not found and _BEEPS.search(line) and not _BEEPER.search(line):
        found.append(RedFlag(RedFlagKind.CARBON_MONOXIDE, RedFlagState.UNCLEAR, line))
    if not found and not _DENIAL.search(whole) and not _AIR_LEAKS.search(whole):
        found += (
            RedFlag(RedFlagKind(idea.kind), RedFlagState.UNCLEAR, whole)
            for idea, _, _ in ideas_in(whole)
        )
    return min(found, key=_gravity, default=None)


_CANT_SMELL: Final = re.compile(
    r"\b(?:nose|sinus\w*) (?:is |s )?(?:all )?(?:stuffed|plugged|blocked|stopped|congested|running"
    r"|shot)"
    r"|\b(?:have|got|having) (?:a |this )?(?:bad |head )?cold\b.*\bsmell|\b(?:no|lost) (?:my |the"
    r" )?sense"
    r" of smell\b|\bcant smell (?:anything|much|a thing) (?:since|with|because|anyway|these days)"
)
"""Whoever can't smell can't deny a smell."""
_LIGHT_ABOVE: Final = re.compile(
    r"\b(?:thing|box|disc|disk|device|gadget|unit)(?: up)? on the (?:ceiling|wall)\b.*\b(?:flash\w*"
    r"|blink\w*|red|beep\w*|chirp\w*|light)\b"
)
_COLD_OR_HEAT: Final = (RedFlagKind.NO_HEAT_VULNERABLE, RedFlagKind.NO_COOLING_VULNERABLE)
_WORD: Final = re.compile(r"[a-z]{2}|[a-z] ?[.-] ?[a-z]")
_IS: Final = re.compile(r"(?<!\bit)(?<!\bthere)(?<!\bthat)(?<!\blet)(?<!\bwhat)(?<!\bhe)'s\b")
"""The contraction of "is", read as such after all but the words that are known with it glued on."""
_NO_TO_ALL: Final = re.compile(
    r"(?:no|nope|nah|negative|none|nothing)(?: (?:to|on|for|of)) (?:all|any|both|each|every|that"
    r"|those|these|them|the above|it|everything)(?: (?:of|that|those|these|them|it|those|things))*"
)
_BUBBLE_WRAP: Final = re.compile(
    r"\bbubble[ -]?(?:wrap|foil|insulation)\b|\b(?:foil|reflective)[ -]bubble\b"
)
"""Insulation that is called by its bubbles."""
_SAME_THING: Final = re.compile(
    r"(?:and |n )?(?:it|its|still|the gas|(?:i|you|we) (?:can )?(?:smell|hear|see|feel))\b"
)
"""The opening of a clause that speaks on about what the clause before it named."""
_DENIAL: Final = re.compile(r"\b(?:no|not|none|never|nothing|without|nope|dont|isnt|arent)\b")
_BEEPS: Final = re.compile(r"\b(?:beep\w*|bleep\w*|sirens?|blaring|wailing)\b")
_BEEPER: Final = re.compile(
    r"\b(?:thermostat|stat|manometer|multimeter|meter|tester|microwave|truck|backup|ups|fridge"
    r"|phone|pager|tool|tape|laser|no|not|never|nothing)\b"
)


_STATES: Final = (RedFlagState.PRESENT, RedFlagState.UNCLEAR, RedFlagState.NEGATED)
_KINDS: Final = tuple(RedFlagKind)


def _gravity(flag: RedFlag) -> tuple[int, int]:
    return _STATES.index(flag.state), _KINDS.index(flag.kind)


# --- one clause ----------------------------------------------------------------------------------


_Patterns = tuple[tuple[RedFlagKind, tuple[str, ...], re.Pattern[str]], ...]


@cache
def _present() -> _Patterns:
    return _compiled(PRESENT)


@cache
def _unclear() -> _Patterns:
    return _compiled(UNCLEAR)


def _compiled(rows: tuple[tuple[str, str], ...]) -> _Patterns:
    return tuple((RedFlagKind(kind), KEYS[kind], re.compile(pattern)) for kind, pattern in rows)


_ALARM_AT_REST: Final = re.compile(
    r"\b(?:install\w*|new|replaced?|replac\w+|works?|working|test|tested|testing|have|has|having"
    r"|got|hallway|hall|upstairs|downstairs|bedrooms?|mounted|good|fine|ok|okay|quiet|silent"
    r"|silence|old|expired|years?|brand|needs?|need|require[sd]?|code|bring|sell|quote|add|adding"
    r"|every|each|floor|truck|bag|van|pocket|box|drawer|\d+|both|two|three|combo|plug in"
    r"|green light|missing|present"
    r"|zero|is (?:by|near|beside|next to|above|outside|in|on) the|made a|peep|wired|interconnected"
    r"|hardwired|on the (?:wall|ceiling))\b"
)
_ORDINARY_SMELL: Final = re.compile(
    r"\b(?:musty|mustiness|mold\w*|mould\w*|mildew\w*|dust|dusty|dog|dogs|cat|cats|pets?|sock|socks"
    r"|paint\w*|cook\w*|food|kitchen|damp|wet|stale|perfume|fresh|new|tobacco|cigarettes?|sewage"
    r"|sewer|nice|clean|old|earthy|moist|basement|dead|mouse|mice|mask|tool|glue|food)\b"
    r"|\bsmell\w* (?:\w+ )?(?:fine|ok|okay|normal|good)\b|\b(?:fine|normal|usual) smell"
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
_ELECTRIC: Final = re.compile(
    r"\b(?:wir(?:e|es|ing)|panel|breakers?|electric\w*|outlets?|boards?|controls?|cord|disconnect"
    r"|onto|floor|carpet|over the|down the)\b"
)
_LOOKS_OLD: Final = re.compile(r"\b(?:soot\w*|scorch\w*|\w*stain\w*|leak|rust\w*)\b")
_OLD: Final = re.compile(
    r"\b(?:waterstain|old|older|years?|ancient|previous\w*|long ago|faded|dry|cold)\b"
)
_LEAK_LOOKED_FOR: Final = re.compile(
    r"\bleak (?:test|check|search|detector|tested|checked)\b|\bpassed\b|\bbubble test\b"
)


def _in_clause(clause: str, whole: str, *, denied_next: bool, still: bool) -> Iterator[RedFlag]:
    if chirp := _CHIRP.search(clause):
        state = state_of(clause, chirp.span(), denied_next=denied_next, still=still)
        yield RedFlag(RedFlagKind.LOW_BATTERY_CHIRP, state, clause)
        return
    told: set[RedFlagKind] = set()
    for flag in _ideas(clause, whole, denied_next=denied_next, still=still):
        told.add(flag.kind)
        yield flag
    without = {keys for keys in KEYS.values() if not any(key in clause for key in keys)}
    for kind, keys, pattern in _present():
        if keys in without:
            continue
        spans = [found.span() for found in pattern.finditer(clause)]
        if kind is RedFlagKind.WATER_ELECTRIC and _air_leaks(clause):
            continue
        only_likely = bool(spans) and _only_likely(kind, clause, whole)
        for span in spans:
            state = state_of(clause, span, denied_next=denied_next, still=still)
            if only_likely and state is RedFlagState.PRESENT:
                state = RedFlagState.UNCLEAR
            told.add(kind)
            yield RedFlag(kind, state, clause)
    if _ALL_DENIED.search(clause):
        yield RedFlag(RedFlagKind.GAS, RedFlagState.NEGATED, clause)
        return
    for kind, keys, pattern in _unclear():
        if keys in without:
            continue
        hint = pattern.search(clause)
        if hint is None or kind in told or _ordinary(kind, clause, bool(told)):
            continue
        state = state_of(clause, hint.span(), denied_next=denied_next, still=False)
        told.add(kind)
        denied = state is RedFlagState.NEGATED
        yield RedFlag(kind, state if denied else RedFlagState.UNCLEAR, clause)


def _ideas(clause: str, whole: str, *, denied_next: bool, still: bool) -> Iterator[RedFlag]:
    for idea, span, sure in ideas_in(clause):
        kind = RedFlagKind(idea.kind)
        state = state_of(clause, span, denied_next=denied_next, still=still)
        if state is RedFlagState.PRESENT and not (sure and not _only_likely(kind, clause, whole)):
            state = RedFlagState.UNCLEAR
        yield RedFlag(kind, state, clause)


_AIR_LEAKS: Final = re.compile(r"\b(?:air|ducts?|ductwork|refrigerant|seams?|plenum|coil)\b")
_WET: Final = re.compile(
    r"\b(?:water|wet|drip\w*|flood\w*|puddl\w*|soak\w*|rain\w*|roof|ceiling|pipe)\b"
)


def _air_leaks(clause: str) -> bool:
    """Whether what leaks is air or refrigerant."""
    return bool(_AIR_LEAKS.search(clause)) and not _WET.search(clause)


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


def _only_likely(kind: RedFlagKind, clause: str, whole: str) -> bool:
    """Whether the sentence makes a danger ordinary enough to ask about it first."""
    if kind is RedFlagKind.BURNING:
        return bool(_DUST_BURNING_OFF.search(clause))
    if kind is RedFlagKind.WATER_ELECTRIC:
        by_design = bool(_BY_DESIGN.search(clause)) and not _ELECTRIC.search(clause)
        return by_design or _looks_old(clause, whole)
    if kind is RedFlagKind.FLAME:
        return _looks_old(clause, whole)
    return kind is RedFlagKind.GAS and bool(_LEAK_LOOKED_FOR.search(clause))


def _looks_old(clause: str, whole: str) -> bool:
    return bool(_LOOKS_OLD.search(clause)) and bool(_OLD.search(whole))
