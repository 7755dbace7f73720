"""What the words around a value make of it: one end, a change, a share of several, a year."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.items import Item, Scan
from intake.reading.plain_talk import is_plain_without
from intake.reading.words import words

__all__ = ["bounded", "built", "dated", "elsewhere", "moved", "multiplied"]

_BELONGS_ELSEWHERE: Final = re.compile(
    r"\b(?:truck|van|car|model year|page|apt|apartment|suite|street|avenue|road|drive|lane"
    r"|route|exit|address|monday|tuesday|wednesday|thursday|friday|saturday|sunday|january"
    r"|february|april|june|july|august|september|october|november|december|o'?clock"
    r"|[0-9] ?(?:am|pm)|see you|meet|appointment|job number|invoice|figure|chapter"
    r"|ticket (?:number|no|#)"
    r"|born|birthday|kids|years? old|version|channel|miles away|exit|highway|lot|zip ?code"
    r"|password|extension|ext(?!\.? ?(?:static|sp))|code is|costs?|paid|pay|priced?|bill|serial"
    r"|s/n|p/n|sku|part"
    r" (?:number"
    r"|no|#)|tracking|order (?:number|no|#)|(?:house|home|place) is(?! [0-9]+ (?:ft|feet|foot"
    r"|long|wide|deep)\b)|room \d"
    r"|rent|mortgage|tax(?:es)?|population|pop|house (?:number|no|#))\b"
)

_DATED: Final = re.compile(
    r"\b(?:in|from|since|built|circa|installed|replaced|made|manufactured|bought|put in|year|model"
    r"|new in|dated|est|established) ?(?:around |about )?'?$"
)


_BUILT: Final = re.compile(
    r"\b(?:built|went up|put up|constructed|dates from|dates to|house is from|house was from"
    r"|poured|remodeled|redone)(?: back| sometime| around)?(?: in)?(?: about| the)? '?$"
)
"""Before the two digits of a year ("the house went up in 62")."""


def built(said: Scan, item: Item) -> bool:
    """Whether a number of two digits is the year of the house."""
    return 10 <= item.value < 100 and _BUILT.search(said.text[: item.start]) is not None


def dated(said: Scan, item: Item) -> bool:
    """Whether a number is the year in which something was done ("installed in 85")."""
    return _DATED.search(said.text[: item.start]) is not None


_MODEL: Final = re.compile(r"\bmodel\b")


def elsewhere(said: Scan, *, plate: bool = False) -> bool:
    """Whether the numbers of a text, all without a unit, are about something else ("page 3").

    Args:
        said: As scanned.
        plate: Whether a model number may tell what is asked (a capacity).
    """
    if is_plain_without(said.text, {"model"}):
        return False
    numbers = said.numbers
    bare = bool(numbers) and not any(number.unit for number in numbers)
    coded = any(item.kind == "code" for item in said.items)
    if bare and not (plate or coded) and _MODEL.search(said.text):
        return True
    return bare and _BELONGS_ELSEWHERE.search(said.text) is not None


_BOUNDED: Final = re.compile(
    r"\b(?:at (?:the )?(?:very )?least|at (?:the )?(?:very )?most|tops(?=\W*$)|no more than|not"
    r" more than|no less than|less than|more than"
    r"|greater than|under|over|above|below|up to|north of|south of|upwards? of|minimum"
    r"|maximum|max|min|max(?:es|ed)? out|at minimum|or more|or less|or better"
    r"|or higher|or lower|or under|or over|plus change|exceeds?|tops out|less then"
    r"|more then|not over|not under|fewer than|somewhere over|somewhere under|past|beyond"
    r"|limit|well over|well under|bigger than|smaller than|(?:hotter|colder|warmer|cooler) than"
    r"(?= (?:about )?[0-9])|longer than|shorter than|higher than"
    r"|lower than|couldn't be|can't be)\b|[<>]|(?<=\d) ?\+(?!\s*/?\s*[-\d.])"
    r"|\d ?[a-z]{0,6} (?:plus|something|(?:and )?some odd|odd)$|\band then some\b"
)

_OF_BOUNDS: Final = words(
    """
    above be below better beyond bigger change colder cooler exceed exceeds fewer greater higher
    hotter least less limit longer lower max maxed maxes maximum min minimum more most north odd
    over past plus shorter smaller something south then tops under up upward upwards warmer < > +
    """
)
"""Words and signs of which every bound holds one."""

_BOUNDING_SIGN: Final = re.compile("[<>+]")
_WORD_OR_SIGN: Final = re.compile(r"[a-z]+|[<>+]")

_NOT_BOUNDED: Final = re.compile(
    r"\b(?:more or less|add(?:s|ed)? up to|totals up to|just (?:under|over|below|above|shy of"
    r"|past)|(?:a"
    r" )?(?:little|bit"
    r"|hair|tad|touch|smidge) (?:under|over|below|above|more than|less than)|sea level"
    r"|on (?:the )?(?:high )?limit|above sea"
    r"|over the (?:wrap|insul|jack)|above grade|(?:max|maximum|min"
    r"|minimum) (?:static|speed|fan|fire|airflow|stage|input|output|rated?|capacity)|(?:under|over"
    r"|above|below|past"
    r"|beyond) (?:the|a|my|our|all|there|here|at|to)\b)"
)

_PER_MINUTE: Final = re.compile(r"(?:/ ?|per |an? )min\b|\bft min\b")

_MULTIPLES: Final = re.compile(
    r"\b(?:each|apiece|ea|(?<!measured )(?<!checked )(?<!taped )(?<!read )twice|double|triple"
    r"|half of|(?:a )?third of|both"
    r"|per (?:run|branch|room|floor|side|stage|zone|unit|level|story|register|vent|person|trunk)"
    r"|times (?:two|three|four|[2-9])|every)\b(?! (?:time|day|month|year|now and))"
)

_PLAIN_MULTIPLES: Final = words("each ea both half per times")
"""The plain words that are in one of these."""

_MOVED: Final = re.compile(
    r"\b(?:went|goes|going|go|jump(?:s|ed)?|climb(?:s|ed)?|rose|rises|drop(?:s|ped)?|fell|falls"
    r"|came|comes|moved|changed?|swings?|shot|up|down|increased?|decreased?|improved|rais\w+"
    r"|lower\w*|dropping|rising)\b[a-z ]*\bfrom\b"
)


def moved(text: str) -> bool:
    """Whether two values are those before and after a change ("went from 900 to 1200")."""
    return _MOVED.search(text) is not None


def multiplied(text: str) -> bool:
    """Whether a value is that of each of several things, or to be taken times something."""
    if is_plain_without(text, _PLAIN_MULTIPLES):
        return False
    return _MULTIPLES.search(text) is not None


def bounded(text: str) -> bool:
    """Whether only one end of the value is given ("at least 900").

    >>> bounded("at least 900"), bounded("just under 1200")
    (True, False)
    """
    if is_plain_without(text, _OF_BOUNDS) and _BOUNDING_SIGN.search(text) is None:
        return False
    if _OF_BOUNDS.isdisjoint(_WORD_OR_SIGN.findall(text)):
        return False
    return _BOUNDED.search(_NOT_BOUNDED.sub(" ", _PER_MINUTE.sub(" ", text))) is not None
