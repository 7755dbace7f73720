"""Which clause of a told material, motor or coil stands: what is seen now, not what was or was"
" said.

"Was flex, we swapped it for hard pipe" is of hard pipe; "customer says it's clean but it's packed
solid" is of what is seen; "psc, no scratch that, constant torque" is of what was said last.
"""

from __future__ import annotations

import re
from typing import Final

from intake.reading.words import words

__all__ = ["CHOSEN", "about_the_coil", "of_another_part", "of_now"]

CHOSEN: Final = words("material blower_type coil_state choice")
"""Fields whose answers are one of a few words."""

_CUT: Final = re.compile(
    r"[,;.!]+ ?|\s-+\s|\b(?:but|although|though|however|whereas|only)\b|(?<=\S) (?=(?:till|until) )"
    r"|(?<=\S) (?=(?:they|we|i|he|somebody|someone|then) (?:tore|swapped|replaced|took|changed"
    r"|put|ripped"
    r"|switched|redid|converted)\b)"
    r"|(?<=\S) (?=(?:now|today) (?:it|the|they|we|there)\b)"
)
_THING: Final = (
    r"(?:it|they|that|this|there|these|those|the (?:coil|duct|ducts|trunk|motor|blower|old one|run)"
    r"|all of it|most of it)"
)
_LEAD: Final = r"^(?:well |yeah |oh |so |and |yes |no |i mean |at first |originally )*"
_PAST: Final = re.compile(
    rf"{_LEAD}(?:{_THING} )?(?:was|were|wasn'?t|weren'?t|used to (?:be|have)|had been"
    rf"|started out as"
    r"|(?:originally|previously|formerly|before))\b(?! (?:used|made|run|installed|told|put|built"
    r"|done|cleaned|washed|just))"
    rf"|{_LEAD}(?:i |we |they |he |she )?(?:cleaned|washed|sprayed|rinsed|hosed|replaced"
    rf"|changed)\b.*"
    r"\b(?:ago|last (?:year|summer|spring|fall|winter|season|month|time)|in (?:19|20)\d\d"
    r"|years? back|back in)\b"
    r"|\b(?:back then|in the beginning|when (?:we|they|i) (?:moved|bought|built)|years ago)\b"
)
_SAID: Final = re.compile(
    rf"{_LEAD}(?:the |my |our |his |her |last )*(?:customer|owner|homeowner|caller|tenant|landlord"
    r"|wife|husband|he|she|they|you|people|somebody|someone|everybody|everyone|(?:last |other |old"
    r" |previous )?(?:guy|tech|contractor|inspector|installer|crew|company)|salesman|neighbor"
    r"|sticker|label|tag|plate|nameplate"
    r"|print|prints|plans?|listing|paperwork|invoice|report|work order|notes?)"
    r"(?: (?:before|before me|last year|there|here|on the phone|before us))?"
    r" (?:says?|said|claims?|claimed|swears?|swore|thinks?|thought|told (?:me|us)|tells (?:me|us)"
    r"|called it|calls (?:it|for)|calls them|wrote|has it as|had it as|shows?|showed|insists?"
    r"|call it)\b"
)
_THOUGHT: Final = re.compile(
    rf"{_LEAD}(?:i|we|i'?d|you'?d|you)(?: would| have| had| was| were| just| did| first| always"
    rf"| kinda"
    r"| almost| originally)* (?:thought|figured|assumed|said|guess(?:ed)?|expect(?:ed)?|told you"
    r"|gonna say"
    r"|going to say|say|swear|sworn|swore|wrote|put down|think)\b(?! (?:so|it'?s now))"
    rf"|{_LEAD}(?:i|we) (?:was|were|am|got|had been|have been|been) told\b|{_LEAD}(?:i"
    rf"|we) (?:had )?heard\b"
    rf"|{_LEAD}(?:{_THING} |{_THING}'?d )?(?:would be|would'?ve been|would have been|should be"
    r"|should'?ve been|supposed to be|could pass for|looks like|looked like|sounds like|seems like"
    r"|almost looks)\b"
)
_TURNED: Final = re.compile(
    r"^.*\b(?:(?:no[,.!]* |oh,? )?(?:scratch that|strike that|wait(?: a (?:sec|minute))?|hang on"
    r"|hold on"
    r"|i mean|i meant|correction|my bad|make that|i take that back|nope"
    r"|sorry))\b[,.!: ]*(?:no\b[,.!: ]*)*"
)
_NO_AGAIN: Final = re.compile(r"(?:^|[,.;!] ?|\b)no,? [a-z]")
_BECAME: Final = re.compile(
    r"^(?:.*\b)?wasn'?t (?P<what>[a-z ]{3,20}?),? (?:but |and )?(?:it )?is (?:now|today)[.! ]*$"
    r"|^(?:.*\b)?was (?P<gone>[a-z ]{3,20}?),? (?:but |and )?(?:it )?(?:isn'?t|is not|not) (?:now"
    r"|any ?more)"
    r"[.! ]*$"
)
_WASHED: Final = re.compile(
    r"\b(?:washed|cleaned|sprayed|rinsed|hosed|scrubbed|brushed|blew|replaced|swapped|changed)\b"
    r"(?!.*\b(?:ago|last (?:year|summer|spring|fall|winter|season)|years?|needs?|never|not|isn'?t"
    r"|half|partly|some|most|part|tried)\b)"
)
_DIRT_WAS: Final = re.compile(
    r"^(?:it |that |coil |the coil )?(?:was|used to be|had been)\b.*\b(?:plugged|clogged|dirty"
    r"|filthy|packed"
    r"|caked|matted|bad|nasty|gross|solid|blocked|disgusting|terrible|mess|impacted)\b"
)
_OUTSIDE: Final = re.compile(
    r"\b(?:insulat\w+|wrapp\w+|covered)(?: (?:it|them|that|all|up|over|some|with \w+))*(?: (?:on"
    r"|from|around"
    r"|to))?(?: the)? (?:outside|exterior|outer side)(?: of it)?\b"
    r"|\b(?:under|beneath|below|behind|through|peel\w*|pull\w*|cut\w*|strip\w*)(?: (?:back|off"
    r"|away|up))?"
    r" (?:the|that|all the|all that|its|some) (?:insulation|wrap|jacket|blanket)\b"
    r"|\binsulation (?:is |was )?(?:all )?(?:on|around|over|goes on)(?: the| its)? (?:outside"
    r"|exterior)\b"
)


_ASKED_FIRST: Final = re.compile(
    r"^(?:is it |was it )?[a-z ]{2,24}\? ?(?:no|nah|nope|naw|not?)\b[,.;!: ]*(?P<rest>[a-z].*)$"
)
_OTHER_PART: Final = re.compile(
    r"\b(?:filters?|wheel|blower|outdoor|outside|condenser|grilles?|ducts?|return|cabinet|pan)\b"
    r"(?!.*\b(?:coil|evap\w*|fins)\b)|\b(?:outdoor|outside|condenser) (?:coil|one|unit)\b"
)
"""A clause about another part than the indoor coil ("filter's plugged, coil's fine")."""
_PARTS: Final = re.compile(r"[,;]|\.(?=\s)|\b(?:but|and|while)\b")


def about_the_coil(text: str) -> str:
    """An answer about a coil without its clauses about other parts.

    >>> about_the_coil("filter's plugged, coil's fine")
    "coil's fine"
    """
    told = [part.strip() for part in _PARTS.split(text) if part.strip()]
    of_coil = [part for part in told if not _OTHER_PART.search(part)]
    named = any("coil" in part or "inside" in part or "indoor" in part for part in of_coil)
    return ", ".join(of_coil) if named and len(of_coil) < len(told) else text


def of_another_part(text: str) -> bool:
    """Whether a text about a coil names only other parts ("filter's clean")."""
    return _OTHER_PART.search(text) is not None and "coil" not in text


_AGAINST: Final = re.compile(
    r"\b(?:but|though|although|however|whereas|i see|i'?m seeing|i found|i can see|to me)\b"
)


def of_now(field: str, text: str) -> tuple[str, ...]:
    """What of a normalised answer stands, in the order to be tried; () if all of it does.

    >>> of_now("material", "i thought flex but it's metal")
    ("it's metal",)
    >>> of_now("material", "sheet metal")
    ()
    """
    tries: list[str] = []
    asked = _ASKED_FIRST.match(text)
    if asked is not None:
        tries.append(asked["rest"])
    if field == "material" and (outside := _OUTSIDE.sub("wrapped", text)) != text:
        tries.append(outside)
        text = outside
    became = _BECAME.match(text) if field == "coil_state" else None
    if became is not None and became["what"]:
        tries.append(became["what"])
    turned = _TURNED.sub("", text)
    if turned and turned != text and not _NO_AGAIN.search(turned):
        tries.append(turned)
    clauses = [part.strip() for part in _CUT.split(text) if part and part.strip()]
    if len(clauses) > 1:
        but = _AGAINST.search(text) is not None
        gone = [bool(_PAST.search(c) or _is_said(c, but=but)) for c in clauses]
        stand = [c for c, g in zip(clauses, gone, strict=True) if not g]
        if stand and any(gone):
            tries.append(", ".join(stand))
        if field == "coil_state" and _DIRT_WAS.match(clauses[0]) and _WASHED.search(text):
            tries.append("clean")
    return tuple(tries)


def _is_said(clause: str, *, but: bool) -> bool:
    """Whether a clause is what somebody says or thought, and the text sets something against it."""
    return but and (_SAID.search(clause) is not None or _THOUGHT.search(clause) is not None)
