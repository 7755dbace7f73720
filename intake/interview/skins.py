"""What a duct looks like, and where on it the tape was held."""

import re
from typing import Final

from intake.interview.denials import affirmed
from intake.interview.own_words import SKINS, TAPED
from intake.reading.result import Accepted, AskBack, AskKind, Reading

__all__ = ["read_measured_where", "read_skin", "under_the_wrap"]

_UNLINED: Final = re.compile(
    r"\b(?:un-?lined|not lined|no lin\w+|no insulation|nothing (?:in|out)side)\b"
)


_NOT_WRAPPED: Final = re.compile(r"\b(?:no|not|un-?|isn'?t|without)[ -]?(?:an? )?wrap\w*")
_OUTSIDE_WRAP: Final = re.compile(
    r"\b(?:bubble(?: wrap)?|foil (?:bubble|wrap|insulation|blanket)|insulation|blanket"
    r"|fib(?:er|re)glass)"
    r"(?: \w+)? (?:on (?:the )?|around (?:the )?|over (?:the )?)?(?:outside|around it|over it)\b"
)
_EACH_ITS_OWN: Final = re.compile(
    r"\b(?:one|1|left|front|first)(?: one)?(?:'?s| is)? (?:is )?(?P<one>[a-z]+)\b.*?"
    r"\b(?:one|1|other(?: one)?|right|back|second)(?: one)?(?:'?s| is)? (?:is )?(?P<two>[a-z]+)"
)


def read_skin(text: str, choices: tuple[str, ...]) -> Reading | None:
    """What a duct looks like: its material, and where the tape then was if that follows."""
    if _UNLINED.search(text) and _NOT_WRAPPED.search(text):
        return Accepted({"material": "galvanized"}, place="bare")
    apart = _EACH_ITS_OWN.search(text)
    if apart is not None and len(both := _skins_of(apart["one"]) + _skins_of(apart["two"])) == 2:
        each = " and one ".join(name.replace("_", " ") for name in both)
        if both[0] != both[1]:
            return AskBack(
                f"One {each}: which is which? Say each with its size, like “20x8 lined and 16x8"
                " bare”, as “the trunks are ...”.",
                (),
                AskKind.TWO_READINGS,
            )
    if _OUTSIDE_WRAP.search(text) and not re.search(r"\blin(?:ed|er|ing)\b|\binside\b", text):
        return Accepted({"material": "galvanized"})
    if _UNLINED.search(text) and not re.search(r"\bwrap", text):
        return Accepted({"material": "galvanized"}, place="bare")
    found = [row for row in SKINS if affirmed(row[3], text)]
    if not found:
        return None
    if len(found) > 1 and found[-1][0] == "bare":
        found = found[:-1]
    names = [row[0] for row in found]
    if names in (["lined", "wrapped"],) and re.search(r"\bboth\b|\band\b", text):
        return Accepted({"material": "lined_metal"}, place="over wrap")
    if len(found) > 1:
        said = " or ".join(name.replace("_", " ") for name in names)
        return AskBack(
            f"Which one: {said}?",
            tuple({"material": row[1], "skin": row[0]} for row in found),
            AskKind.TWO_READINGS,
        )
    return Accepted({"material": found[0][1]}, place=found[0][2])


def _skins_of(word: str) -> list[str]:
    return [row[0] for row in SKINS if row[3].fullmatch(word)]


_WRAP: Final = r"(?:wrap\w*|insulation|blanket|bubble|foil)"
_UNDER: Final = re.compile(
    r"\b(?:i |we |he |tape |held it |it )?(?:measured|taped|did|went|on|to|was)(?: on| to"
    r"| the tape)*"
    r"(?: the)? bare (?:tin|metal|steel|duct)\b|"
    rf"\b(?:under(?:neath)?|beneath|below|behind|inside(?: of)?) (?:the |that )?{_WRAP}"
    r"|\b(?:pulled|peeled|rolled|cut|folded|moved|took|lifted|pushed|slit|sliced|opened)"
    rf" (?:the |that |back |off |up )*{_WRAP}"
    rf"|\b{_WRAP} (?:was |is )?(?:pulled|peeled|rolled|cut|folded|moved|lifted)"
    r" (?:back|off|up|away)|\b(?:wrap|insulation|blanket)(?:'s| is| was) (?:off|gone|away|back)\b"
    r"|\bwrap(?:ped)?\b.*\b(?:no wait|wait|actually|sorry|no),? (?:it was |it's )?under"
)
_ON_THE_METAL: Final = re.compile(
    r"\b(?:on|to|off|against|measured|taped|at|so) (?:the |that )?(?:bare )?"
    r"(?:tin|steel|metal|sheet metal|skin|duct)(?: itself)?\b|\bduct itself\b"
)
_OVER: Final = re.compile(
    rf"\bover\b|\b{_WRAP} (?:is |that'?s )?(?:still )?(?:on|to)\b|\bplus\b|\bnot\b|n't\b"
)
_NOT_THE_FRAME: Final = re.compile(
    r"\b(?:not|without|minus|no|inside|excluding|less) (?:of )?(?:the |counting the )?frames?\b"
)


_DIDNT: Final = re.compile(
    r"\b(?:didn'?t|couldn'?t|can'?t|haven'?t) (?:go|get|pull|peel|reach|look) "
)


def under_the_wrap(text: str) -> bool:
    """Whether the tape went under the wrap, on the metal: "i peeled the wrap back".

    >>> under_the_wrap("i pulled the wrap back"), under_the_wrap("over the wrap")
    (True, False)
    """
    return affirmed(_UNDER, _DIDNT.sub("not ", text))


_UNWRAPPED: Final = re.compile(
    r"\b(?:not|no|without|isn'?t|ain'?t)(?: any)? (?:wrap\w*|insulation|blanket)\b|\bunwrapped\b"
)
"""Nothing lies over the metal, so that the tape was on it."""


def read_measured_where(text: str, choices: tuple[str, ...]) -> Reading | None:
    """Where the tape was held, by the first of the question's choices."""
    rows = TAPED.get(choices[0] if choices else "", ())
    over = any(place == "over wrap" for place, _ in rows)
    if over and (under_the_wrap(text) or (_ON_THE_METAL.search(text) and not _OVER.search(text))):
        return Accepted({}, place="outside")
    if rows and rows[0][0] == "slots" and _NOT_THE_FRAME.search(text):
        return Accepted({}, place="slots")
    found = [place for place, pattern in rows if affirmed(pattern, text)]
    if not found and any(place == "over wrap" for place, _ in rows) and _UNWRAPPED.search(text):
        return Accepted({}, place="outside")
    if not found:
        return None
    if len(found) > 1 and not (found[0] == "over wrap" and found[1:] == ["outside"]):
        return AskBack(
            f"Which one: {' or '.join(found)}?",
            tuple({"place": place} for place in found),
            AskKind.TWO_READINGS,
        )
    return Accepted({}, place=found[0])
