"""Tons as a caller tells them: half ones in words, thousands of BTU/h, from one size to another."""

import re
from typing import Final

from intake.interview.own_words import whole_words
from intake.reading.manner import sureness
from intake.reading.result import Accepted, Reading, Unknown

__all__ = ["change_of_tons", "new_tons", "phone_tons"]

_WORDS: Final = {"one": 1.0, "two": 2.0, "three": 3.0, "four": 4.0, "five": 5.0}
_HALF: Final = r"(?: ?1/2|[ -]and[ -]a[ -]half| ?½|\.5)"
_TON: Final = rf"(?:[1-5]|one|two|three|four|five){_HALF}?(?!\d|[.,]\d|[/x%])"
_FROM_TO: Final = re.compile(
    rf"\b(?P<from>{_TON})(?P<unit>[ -]?tons?)?(?: (?:now|today|unit|system|one))?,?"
    rf" (?:up |down |over )?(?:to|into|->) (?:an? )?(?P<to>{_TON})(?P<unit2>[ -]?tons?)?\b"
)
_NOW_AND_WANTED: Final = re.compile(
    rf"\b(?P<from>{_TON})(?:[ -]?tons?)? (?:now|today|currently)\b[^\d]*?\b(?:wants?|needs?|going"
    rf" to"
    rf"|to) (?:an? )?(?P<to>{_TON})(?:[ -]?tons?)?\b"
)
_SIZES: Final = whole_words(r"tons?|tonnage|size|sizes|bigger|smaller|going|down|up")
_NEW_ONE: Final = re.compile(
    rf"\b(?:the |a )?new (?:one|unit|system|condenser)?\D{{0,24}}?\b(?P<new>{_TON})"
    rf"|\b(?:going|go|bump\w*|step\w*|mov\w*) (?:up |down )?to (?:an? )?(?P<to>{_TON})"
    rf"|\b(?:wants?|wanna|getting|get|putting in) (?:an? )?(?P<wants>{_TON})(?= ?tons?\b| next\b|$)"
)


def _number(words: str) -> float:
    half = re.search(_HALF + "$", words)
    whole = words[: half.start()] if half else words
    return (_WORDS.get(whole) or float(whole)) + (0.5 if half else 0.0)


def change_of_tons(text: str) -> float | None:
    """By how many tons a line says that the size changes; None if it tells of no such change.

    >>> change_of_tons("going from 3 to 3 and a half ton"), change_of_tons("4 ton down to 3")
    (0.5, -1.0)
    >>> change_of_tons("3 ton, same again") is None
    True
    """
    found = _NOW_AND_WANTED.search(text)
    if found is None and _SIZES.search(text):
        found = _FROM_TO.search(text)
    if found is not None:
        change = _number(found["to"]) - _number(found["from"])
        return change or None
    return None


_BTUH: Final = re.compile(r"\b(18|24|30|36|42|48|60)(?:,?000|k\b)(?: ?btu\w*(?:/hr?)?)?")
_BUT_THEN: Final = re.compile(r"\W*\b(?:but|and|though|the|a)\b[ ,]*$|\W+$")
_FIRST_CLAUSE: Final = re.compile(
    r"(?:it'?s |its |a |about |like |maybe |(?:he|she|they|i) (?:thinks?|says?|said|believes?) )*"
    rf"(?P<tons>{_TON})(?:[ -]?tons?)?"
)
_NOT_SIZE: Final = re.compile(rf"\bnot (?:an? )?(?:{_TON})(?:[ -]?tons?)?\b[, ]*(?:but |it'?s )?")
_THIS_ONE: Final = re.compile(
    rf"\b(?:doing|replac\w+|chang\w+|swapp\w+|just|only|it'?s|its|this (?:is|one is)"
    rf"|(?:calling|call(?:ed)?) about|talking about|about) the (?P<tons>{_TON})"
    r"(?:[ -]?tons?)?(?: one| unit)?(?=$|[,.;])"
)
_NO_UNIT: Final = re.compile(
    r"(?:there'?s |there is |there are |we have |i see |they have )?(?:nothing|no (?:outdoor"
    r"|outside)"
    r" (?:unit|thing|box)|no (?:a/?c|condenser|unit)) (?:outside|outdoors|out there"
    r"|out back)?[.! ]*"
    r"|nothing out(?:side|doors| there| back)(?: at all)?[.! ]*"
)
_NO_STICKER: Final = re.compile(
    r"[^\d]*\b(?:can'?t|cannot|couldn'?t|no way to) (?:get|reach|climb|see|read|go)\b[^\d]*"
    r"|[^\d]*\b(?:gas|oil|propane) heat only\b[^\d]*|(?:it'?s )?(?:heat(?:ing)?"
    r"|furnace) only\b[^\d]*"
)
"""A unit that nobody can read, or none that cools."""
_AGE: Final = re.compile(r"\b(?:year|years|yr|yrs)[ -]olds?\b")
_NO_IDEA: Final = re.compile(
    r"^(?:no (?:idea|clue)|don'?t know|not sure|dunno|can'?t (?:say|tell))\b"
)
_TOPIC: Final = re.compile(
    rf"(?:and |oh |ah |also )*(?:(?:he|she|they|caller|the caller) (?:says?|said|thinks?) )?"
    rf"(?:the )?(?:tons|tonnage|size)(?: (?:is|are|was)|'s|:)? (?:actually "
    rf"|really )?(?P<tons>{_TON})"
    rf"(?:[ -]?tons?)?(?:,? not (?:{_TON}))?(?: actually| really)?(?: sorry)?[.! ]*"
)


def phone_tons(line: str) -> Reading | str | None:
    """The tons of what is outside; None leaves the line to the usual reader.

    >>> phone_tons("the sticker says 42,000").values
    {'tons': 3.5}
    """
    if _NO_UNIT.fullmatch(line):
        return Accepted({"cooling": False}, sureness(line))
    if _NO_STICKER.fullmatch(line):
        return Unknown("You can't say.")
    if _NO_IDEA.match(line) and (_AGE.search(line) or not re.search(r"\d", line)):
        return Unknown("You can't say.")
    topic = _TOPIC.fullmatch(line)
    if topic is not None:
        return Accepted({"tons": _number(topic["tons"])}, sureness(line))
    chosen = _THIS_ONE.search(line)
    if chosen is not None and re.search(_TON, line[: chosen.start()]):
        return Accepted({"tons": _number(chosen["tons"])}, sureness(line))
    told = {float(found) / 12.0 for found in _BTUH.findall(line)}
    if len(told) == 1 and not re.search(r"\btons?\b|\bheat\w*\b|\binput\b|\bfurnace\b", line):
        return Accepted({"tons": told.pop()}, sureness(line))
    clean = _NOT_SIZE.sub("", line).strip(" ,.")
    new = _NEW_ONE.search(clean)
    if new is not None and new["new"] and clean[: new.start()].strip(" ,.;"):
        clean = _BUT_THEN.sub("", clean[: new.start()]).strip(" ,.;")
    head, _, rest = clean.partition(",")
    first = _FIRST_CLAUSE.fullmatch(head.strip())
    if first is not None and not re.search(r"\d|\btons?\b", rest):
        return Accepted({"tons": _number(first["tons"])}, sureness(line))
    return clean if clean != line else None


def new_tons(line: str) -> float | None:
    """Tons of the new equipment that a line tells beside the present ones; None if it doesn't."""
    found = _NEW_ONE.search(line)
    if found is None:
        return None
    return _number(found["new"] or found["to"] or found["wants"])
