"""Zones told by what is there: hand dampers, a thermostat a system, zones counted or taken out."""

import re
from typing import Final

from intake.reading.scan import scan

__all__ = ["smallest_zone", "zones_told"]

_COUNT: Final = r"(?:two|three|four|five|six|several|multiple|2|3|4|5|6)"
_STAT: Final = r"(?:thermostats?|t[ -]?stats?|stats?)"
_TWO_SYSTEMS: Final = re.compile(
    rf"\b(?:{_COUNT}|separate|own|different|another|each has its own) (?:separate |different )?"
    r"(?:systems?|furnaces?|air ?handlers?)\b"
    rf"|\b{_STAT}\b.*\b{_COUNT} units\b"
    rf"|\b{_STAT} (?:per|for each|each|a) (?:system|unit|furnace)\b"
    rf"|\b(?:one|1) {_STAT} (?:per|each|for each|a|to a) (?:system|unit|furnace)\b"
)
_HAND: Final = re.compile(
    r"\b(?:manual|hand|hand operated|balancing|balance|volume|butterfly) dampers?\b"
    r"|\bdampers?,? (?:(?:yes|but|are|is|they'?re|though|just|only|all|the)[, ]+)*"
    r"(?:hand|manual|balancing|balance)\b(?: ones?| kind| operated)?"
)
_POWERED: Final = re.compile(
    r"\b(?:motor\w*|actuator\w*|zone (?:board|panel|control\w*|dampers?)|powered|electric\w*"
    r"|automatic|auto)\b"
)
_ZONE: Final = re.compile(r"\bzon\w+\b")
_GONE: Final = re.compile(
    r"\b(?:had|used to (?:be|have)|was|were)\b.*\b(?:took|taken|taking|tak\w+ (?:it|them|em"
    r"|that) out"
    r"|remov\w+|ripp\w+|disconnect\w*|gone|disabled|abandon\w*|not any ?more|isn'?t now|no longer"
    r"|getting rid|gutted|wired open|capped)\b"
    r"|\b(?:not any ?more|no longer)\b|^(?:it )?used to (?:be|have)\b"
)
_NO_ZONES: Final = re.compile(
    r"\b(?:no|not|isn'?t|ain'?t|without|never) (?:\w+ ){0,2}?zon(?:e|es|ed|ing)\b"
    r"|\b(?:one|1|single) zone\b"
)
_ZONES: Final = re.compile(rf"\b{_COUNT} (?:\w+ )?zones?\b")
_HEDGE: Final = re.compile(r"\b(?:or|maybe|think|not sure|if|might|could|whether)\b|\?")


def zones_told(line: str) -> bool | None:
    """Whether the system is zoned, by what a line says is there; None if it doesn't settle it.

    Args:
        line: Normalised text, typed where that is asked.

    >>> zones_told("manual dampers only"), zones_told("two thermostats but two systems")
    (False, False)
    >>> zones_told("yes three zones"), zones_told("what counts as zoned") is None
    (True, True)
    """
    if _HEDGE.search(line) or re.match(r"(?:what|which|how|why)\b", line):
        return None
    if _GONE.search(line):
        return False
    if _TWO_SYSTEMS.search(line) and not _ZONES.search(line) and not line.startswith("yes"):
        return False
    if _NO_ZONES.search(line) and not _ZONES.search(line):
        return False
    if _ZONES.search(line):
        return None if re.match(r"(?:no|nope|nah)\b", line) else True
    by_hand = _HAND.search(line) and not _POWERED.search(line) and not _ZONE.search(line)
    return False if by_hand and not line.startswith(("yes", "yep", "yeah")) else None


_SMALLEST: Final = re.compile(
    r"\b(?:smallest|small one|littlest|smaller one)(?: zone)?\D{0,24}?"
    r"(?P<count>\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten)\b"
    r"(?: (?:registers?|vents?|supplies|outlets?|runs?))?"
)


def smallest_zone(line: str) -> int | None:
    """How many registers the smallest zone has, told beside the zones; None if it isn't."""
    found = _SMALLEST.search(line)
    if found is None:
        return None
    numbers = scan(found["count"], "count").numbers
    return int(numbers[0].value) if len(numbers) == 1 and numbers[0].whole else None
