"""Electric strips: none at all, one kit of several, or kilowatts without an airflow."""

import re
from typing import Final

from intake.reading.manner import sureness
from intake.reading.result import Accepted, AskBack, AskKind
from intake.reading.scan import scan

__all__ = ["denies_strips", "kit_chosen", "no_strips", "strip_kw"]

_STRIP_KW: Final = re.compile(
    r"\b(?P<kw>[1-9]\d?(?:\.\d+)?) ?(?:kw|kilowatts?)\b"
    r"(?! (?:\w+ )?(?:heat ?pump|hp|inverter|condenser|outdoor)\b)"
    r"|\b(?P<before>[1-9]\d?(?:\.\d+)?) ?k (?:heat )?(?:strips?|kit)\b"
)
"""Kilowatts of a strip kit; no other heat of such equipment is told in them."""

_KITS_KW: Final = (2.0, 40.0)


def strip_kw(line: str) -> float | None:
    """Kilowatts of the strip kit that a line tells, or None.

    >>> strip_kw("2.5 ton heat pump w 10kw strips"), strip_kw("ten kilowatt kit")
    (10.0, 10.0)
    """
    told = {float(found["kw"] or found["before"]) for found in _STRIP_KW.finditer(line)}
    if not told and _SPOKEN_KW.search(line):
        told = {n.value for n in scan(line, "airflow").numbers if n.unit == "kw"}
    kilowatts = told.pop() if len(told) == 1 else None
    return kilowatts if kilowatts and _KITS_KW[0] <= kilowatts <= _KITS_KW[1] else None


_SPOKEN_KW: Final = re.compile(
    r"[a-z] ?(?:kw|kilowatts?)\b(?! (?:\w+ )?(?:heat ?pump|hp|inverter|condenser|outdoor)\b)"
)
_THING: Final = (
    r"(?:(?:an? |any |the |electric |aux\w* |back ?-?up |heat |resistance |emergency )*"
    r"(?:strips?|strip heat|heat strips?|heat kits?|kits?|elements?|heaters?|aux\w*|'?em\b|them|any"
    r"|resistance heat|electric heat|backup heat))"
)
_NO_STRIPS: Final = re.compile(
    rf"\b(?:no|zero|without|w/o|minus|skip(?:ping|ped)?|delet(?:e|ed|ing)|omit\w*|dropp(?:ed|ing)"
    rf"|leav(?:e|ing) out|not (?:getting|doing|adding|installing|having|putting in|ordering|using)"
    r"|(?:isn'?t|aren'?t|ain'?t|won'?t be) (?:getting|doing|adding|installing|having|putting in)"
    r"|(?:doesn'?t|don'?t|didn'?t|won'?t) (?:get|have|need|want|take|order))"
    rf" {_THING}(?! ?(?:info\w*|label|sticker|data|number|book|plate|airflow|spec\w*|size|yet))\b"
)
_NONE_FIRST: Final = re.compile(
    r"(?:uh |um |well |nah,? |that'?s )?(?:none|zero|nada|zip|nope)\b(?!.*\d)"
    r"(?: ?[,;.-]? ?(?!(?:but|not sure|i think|idea|clue|maybe)\b).*)?"
)
_SO_NONE: Final = re.compile(
    r"(?:^|\b)(?:so|then|therefore) (?:that'?s |it'?s |there'?s )?(?:none|no)[.! ]*$"
)


def no_strips(line: str) -> bool:
    """Whether a line says that no strips go in.

    >>> no_strips("they're deleting em"), no_strips("no kit label"), no_strips("gas backup so none")
    (True, False, True)
    """
    if _DOUBT.search(line):
        return False
    return bool(denies_strips(line) or _NONE_FIRST.fullmatch(line) or _SO_NONE.search(line))


def denies_strips(line: str) -> bool:
    """Whether a line names strips and says that none go in.

    >>> denies_strips("heat pump, no strips"), denies_strips("zero, heating only")
    (True, False)
    """
    return not _DOUBT.search(line) and bool(_NO_STRIPS.search(line) or _LEFT_OUT.search(line))


_LEFT_OUT: Final = re.compile(
    r"\b(?:left|leaving|took|taking|dropped|deleted) (?:the |them |those )?(?:strips?|kit"
    r"|heat)? ?out\b"
    r"|\bstrips? (?:are|is|were|was|got) (?:out|deleted|dropped|off the (?:job|quote))\b"
)

_DOUBT: Final = re.compile(r"\b(?:if|unless|whether|not sure|don'?t know|dunno|maybe)\b|\?")

_KIT: Final = re.compile(
    r"(?P<cfm>\d,\d{3}|\d{3,4}) ?(?:cfm)? (?:for|at|with|on|w/) (?:the "
    r"|an? )?(?P<kw>\d{1,2}(?:\.5)?)"
    r" ?(?:kw|k\b|kilowatts?)?"
    r"|(?P<kw2>\d{1,2}(?:\.5)?) ?(?:kw|k|kilowatts?)? (?:is |needs |wants |takes |at |= ?)+"
    r"(?P<cfm2>\d,\d{3}|\d{3,4})"
)
_CHOSEN: Final = re.compile(
    r"\b(?:doing|using|going with|putting in|getting|got|chose|picked|want|ordered|ours is|it'?s"
    r"|have) (?:the |an? )?(?P<kw>\d{1,2}(?:\.5)?)(?! ?(?:cfm|\d))"
)


_PER_KW: Final = re.compile(
    r"(?P<cfm>\d{2,3}) ?(?:cfm )?(?:per|for each|for every|each) (?:each |every )?"
    r"(?P<kw>\d{1,2}) ?(?:kw|kilowatts?)\b"
)
_WHOLE_KW: Final = re.compile(r"\b(?P<kw>\d{1,2}(?:\.5)?) ?(?:kw|kilowatts?)\b")


def kit_chosen(line: str) -> Accepted | AskBack | None:
    """The kit that goes in, of several told: "1000 for 10kw, 1200 for the 15, doing the 15"."""
    rated = _PER_KW.search(line)
    if rated is not None:
        whole = _CHOSEN.search(line, rated.end()) or _WHOLE_KW.search(line, rated.end())
        if whole is None:
            return AskBack("And how many kilowatts has the kit in all?", (), AskKind.MISSING_PART)
        kilowatts = float(whole["kw"])
        return Accepted(
            {"cfm": round(float(rated["cfm"]) * kilowatts / float(rated["kw"])), "kw": kilowatts},
            sureness(line),
        )
    kits = {
        float(m["kw"] or m["kw2"]): float((m["cfm"] or m["cfm2"]).replace(",", ""))
        for m in _KIT.finditer(line)
    }
    chosen = _CHOSEN.search(line)
    if len(kits) < 2 or chosen is None or float(chosen["kw"]) not in kits:
        return None
    kilowatts = float(chosen["kw"])
    return Accepted({"cfm": kits[kilowatts], "kw": kilowatts}, sureness(line))
