"""Answers that name how many, or which ones: "some are", "just the guest room", "not a one is"
" shut".

Some is a yes to "any ... ?" and a no to "all ... ?". A place that isn't the one asked about denies
it where it is said to be the only one.
"""

from __future__ import annotations

import re
from typing import Final

from intake.reading.words import words

__all__ = ["by_named", "with_not_a_one"]

_ANY: Final = re.compile(r"\b(?:any|anywhere|some)\b")
_ALL: Final = re.compile(r"\b(?:all|every|each|both|entire|whole)\b")
_WORD: Final = re.compile(r"[a-z]+(?:'[a-z]+)?|\d+")
_NO: Final = words(
    """no not none never isn't aren't ain't doesn't don't without nothing nope nah except but only
    hasn't haven't can't won't wasn't weren't nobody if when unless maybe might depends neither
    didn't says said was were
    used probably think guess thinks yes yeah yep meant mean half part or sometimes
    most mostly some few before after until till ago"""
)
_ROOMS: Final = words(
    """
    bedroom bedrooms master guest spare hall hallway bath bathroom bathrooms kitchen den office
    living dining family nursery laundry basement upstairs downstairs attic garage foyer entry
    closet bonus room rooms sunroom playroom cellar addition
    """
)
_WITH_ROOMS: Final = words(
    """
    the a an one two three four few couple of my our his her in and just mostly only ones yes yeah
    yep do does are is that them floor end side both back front vent vents register registers
    some kid's kids' kids front utility boys girls
    door doors grille grilles usually always i we it's there's
    """
)
_PART_SAID: Final = re.compile(
    r"^(?:just |only |maybe |about |yeah |well )*(?:some|half|a few|a couple|several|most|one|two"
    r"|three|four|five|six)(?: or (?:two|three|so))?(?:(?: of (?:them|em|'em"
    r"|the (?P<those>[a-z]+)))"
    r"(?: (?:are|is|do|does|have|has|yes|yeah))?| (?:are|is|do|does|have|has|yes|yeah))[.! ]*$"
)
_ALL_SAID: Final = re.compile(
    r"^(?:yes |yeah |yep )?all (?:\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)"
    r"(?: of (?:them|em|'em))?(?: (?:are|do|have))?[.! ]*$"
)
_COUNTED: Final = re.compile(
    r"^(?:yes |yeah |there'?s |there are |i see |i count |got |just |only )*(?:one|two|three|four"
    r"|a couple"
    r"|a few|several|[1-9])(?: of (?:them|em|'em)| small ones?| big ones?)?[.! ]*$"
)
_PUT_IN: Final = re.compile(
    r"^(?:i |we |they |yes |yeah |just |he |she )*(?:put|stuck|slid|installed|slipped) (?:one"
    r"|a new one"
    r"|a fresh one|it|mine)(?: back)? in(?: there| it| today| yesterday| last (?:week"
    r"|month))*[.! ]*$"
)
_WHETHER_THERE: Final = re.compile(r"^(?:so |and )?(?:is|are) there\b")
_TAIL_YES: Final = re.compile(r"^(?P<head>.{3,50}?),? (?:yes|yeah|yep|yup|ya)[.! ]*$")
_NOT_A_ONE: Final = re.compile(
    r"\bnot (?:a (?:single )?(?:one|thing)|one|a (?:single )?(?:register|vent|door|damper|leak"
    r"|joint)s?)(?: of (?:them|em|'em))?"
    r"(?: is| are| that's| was|'s)?\b"
)
_NOT_THE: Final = re.compile(
    r"^(?:no,? |nope,? |nah,? )?not (?:in |on |at |to |for |under |from )?(?:the |a |any |that )"
    r"?(?P<what>[a-z]+)(?: [a-z]+)?(?:[,;.]| but| -|$)"
)
_ONLY_ROOM: Final = re.compile(r"^(?:it'?s |there'?s )?(?:only|just)(?: one)?(?: in)? (?:the |a )?")


def with_not_a_one(text: str) -> str:
    """A text in which "not a one is" stands as "none are"."""
    return _NOT_A_ONE.sub("none are", text) if "not " in text else text


def by_named(text: str, question: str) -> bool | None:
    """Yes or no by how many, or by which ones, are named; None if that isn't plain.

    >>> by_named("some are", "Are all the registers open?")
    False
    >>> by_named("just the guest room", "Do you keep any vents shut?")
    True
    """
    asked = question.lower()
    any_, all_ = _ANY.search(asked) is not None, _ALL.search(asked) is not None
    said = _WORD.findall(text)
    if len(said) > _LONGEST:
        return None
    if _WHETHER_THERE.match(asked) and not all_ and (_COUNTED.match(text) or _PUT_IN.match(text)):
        return True
    tail = _TAIL_YES.match(text) if not all_ else None
    if tail is not None and not _NO & set(_WORD.findall(tail["head"])):
        return True
    if any_ != all_:
        if all_ and _ALL_SAID.match(text):
            return True
        part = _PART_SAID.match(text)
        if part is not None and (part["those"] is None or part["those"] in asked):
            return any_
        if any_ and _names_rooms(said, asked):
            return True
    asked_words = set(_WORD.findall(asked))
    denied = _NOT_THE.match(text)
    if denied is not None and len(denied["what"]) > 3 and denied["what"] in asked_words & _PLACES:
        return None if any_ else False
    if _ONLY_ROOM.match(text) and not any_ and asked_words & _ROOMS:
        rooms = set(said) & (_ROOMS - {"room", "rooms"})
        if rooms and not rooms & asked_words and len(said) <= 9:
            return False
    return None


_LONGEST: Final = 12
_PLACES: Final = _ROOMS | words(
    """
    crawl crawlspace slab supply return trunk plenum drop branch branches furnace loft roof outside
    inside
    """
)


def _names_rooms(said: list[str], asked: str) -> bool:
    """Whether the text names rooms and nothing else."""
    rooms = set(said) & (_ROOMS | {"ones"})
    return bool(rooms) and len(said) <= 7 and set(said) <= _ROOMS | _WITH_ROOMS
