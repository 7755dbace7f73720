"""What a caller says of past trouble: how often it froze up, shut itself down or broke."""

import re
from typing import Final

from intake.interview.own_words import whole_words
from intake.reading.result import Accepted, AskBack, AskKind, Reading

__all__ = ["plain_trouble", "read_trouble"]

_FREEZES: Final = r"fr[eo]e?ze\w*|froze\w*|ice[ds]?(?: up)?|icing"
_SHUTS: Final = r"shut(?:s|ting)?|trip\w*|kick\w* (?:off|out)|cut\w* (?:off|out)|lock\w* (?:up|out)"
_PARTS: Final = (
    r"boards?|blower|motors?|exchangers?|repair\w*|fix\w*|replac\w*|broke\w*|breaks?|died|swap\w*"
    r"|fail\w*|quit|stopp\w*|went(?: out)?|had (?:to|a|one|it)|happen\w*|serviced?|trouble\w*"
    r"|problems?|issues?"
)
_EVENTS: Final = whole_words(_FREEZES, _SHUTS, _PARTS)
_FIGURES: Final = re.compile(r"\d")
_AT_TIMES: Final = (
    r"now and (?:then|again)|sometimes|occasional\w*|every (?:so often|now and then"
    r"|once in a while)"
    r"|once in a while|from time to time|off and on|on and off|at times|(?:most|every|each) \w+"
)
_OFTEN: Final = whole_words(
    r"twice|(?<!not )a lot|several|few|many|couple|every|keeps?|again|always|often|times|more"
    r" than once|repeated\w*|all the time|constantly|regularly",
    r"(?:two|three|four|five|[2-9]) ?(?:times|x)",
    _AT_TIMES,
)
_NEVER: Final = whole_words(
    r"never|no|nope|nah|none|not|hasn'?t|haven'?t|didn'?t|nothing|no problems?|doesn'?t|don'?t"
    r"|does not|isn'?t|won'?t"
)
_ONE_TIME: Final = re.compile(r"\b(?:just |only )?(?:one|1) time\b|\b(?:just |only )?once\b")
_NOT_ONCE: Final = re.compile(
    r"(?:(?:oh|well|um|no|nope|nah)[, ]+)*(?:(?:not|never) (?:even )?(?:once|one time"
    r"|a single time)"
    r"|not since (?:they|we|i|he|she)(?:'ve|'s| have| has)? (?:moved|bought|got|had|owned|lived"
    r"|been)|not in all (?:these|those|the) years|not in (?:\d+"
    r"|\w+) years)\b[^\d]*(?:\d+ years?)?\W*"
)
_NEVER_ALONE: Final = re.compile(
    r"(?:(?:oh|well|um|uh|honestly)[, ]+)*(?:never|no|nope|nah|none|not (?:that|once|really|yet)"
    r"|nothing|n|zero|0|hasn'?t|it hasn'?t|it'?s (?:never|been (?:fine|good|great))|we'?ve never"
    r"|he'?s never|she says (?:no|never))\b.*"
)
_OFTEN_ALONE: Final = re.compile(
    r"(?:yes|yeah|yep|yup|oh|well|like|about|maybe|i think|she thinks|he thinks|[, ])*"
    r"(?:repeated|twice|(?:two|three|four|[2-5]) (?:or|to) (?:three|four|five|[3-9]) times|(?:two"
    r"|three|four|five|[2-9])(?: ?(?:times|x))?|a couple(?: of)?|several"
    r"|a few|many"
    r"|a lot|lots|always|often|every \w+|more than once)\b(?: (?:times|of times|now|already|a \w+"
    r"|last \w+|this \w+|at least|i think)[, ]*)*[.! ]*"
)
_ONCE_ALONE: Final = re.compile(
    r"(?:yes|yep|yeah|yup|y|one|1|once|just (?:the )?one(?: time)?)[.! ]*"
)
_TWICE_FIRST: Final = re.compile(
    r"(?:yes|yeah|oh|well|like|about|maybe|[, ])*(?:twice|(?:two|three|four|five) times|several"
    r" times|a (?:couple|few) times|more than once)\b[^\d]*"
)
_BUT: Final = re.compile(r"\b(?:but|except(?: for)?|although|though)\b(?P<rest>.*)")
_CLAUSES: Final = re.compile(r"[,;.]|\b(?:and|then)\b")
_UPKEEP: Final = whole_words(
    r"(?:(?:had|has|have|gets?|got|they|it|them|was|is|been|regularly|always) )*(?:serviced|tuned"
    r"(?: up)?"
    r"|cleaned|checked|inspected|maintained|looked at|tune[- ]?ups?|maintenance|service plan)"
    r"(?: (?:every|each|once|twice|a|per|last|this) ?\w*(?: (?:year|spring|fall|season))?)*"
)
"""Regular service, which is no failure."""
_NOT_THE_UNIT: Final = whole_words(
    r"(?:new |the |a |replaced (?:the |a )?)*(?:thermostats?|t-?stat|filters?|batter(?:y|ies)"
    r"|ign[ia]t[eo]rs?|flame sensors?|capacitors?|contactors?|thermocouples?)"
    r"(?:(?: was| were| got| has been| have been| once| that| we| they| had| it)*"
    r" (?:replaced|changed|swapped|fixed|once))?"
)
"""Small parts that are none of those asked after."""
_NOTHING_ELSE: Final = whole_words(
    r"that'?s (?:all|it)|nothing (?:else|you (?:listed|said|named|mentioned)|like that|on (?:your"
    r"|the)"
    r" list|of th(?:at|ose)|bigger|major)|none of (?:that|those|these)|only that|not those"
)
_SINCE: Final = whole_words(
    r"(?:it'?s |been |it'?s been |and |but )*(?:nothing|never|none|not|no (?:trouble|problems?"
    r"|issues?)"
    r"|fine|good|ok|okay|great)(?: again| else| more)? (?:ever )?(?:since|after that"
    r"|since then)(?: then)?"
    r"|never again"
)
"""That it was over then, which takes nothing from what happened before."""
_AGAIN: Final = re.compile(
    r"(?P<first>.+?)[, .;…-]+(?:no wait|wait|actually|i mean|make that|scratch that|hold on"
    r"|correction|no)\b[,. ]*(?P<then>.+)"
)
_COUNTED: Final = re.compile(
    r"^(?:only |just |it was |like )*(?:once|twice|one|two|three|never|\d)\b"
)


def read_trouble(text: str, choices: tuple[str, ...]) -> Reading | None:
    """How often it froze up, shut itself down or broke; None for a line about anything else."""
    plain = text.replace("more than once", "repeated").strip()
    if plain in choices:
        return _told(plain)
    again = _taken_back(plain, choices)
    if again is not None:
        return again
    if _ONCE_ALONE.fullmatch(plain):
        return _told("once")
    if _OFTEN_ALONE.fullmatch(plain) or _TWICE_FIRST.fullmatch(plain):
        return _told("repeated")
    if _NOT_ONCE.fullmatch(plain):
        return _told("never")
    small = _NOT_THE_UNIT.sub(" ", plain)
    if small != plain and _NOTHING_ELSE.search(plain):
        rest = _NOTHING_ELSE.sub(" ", small)
        if not _EVENTS.search(rest):
            return _told("never")
    plain = _UPKEEP.sub(" ", plain).strip(" ,;.") or "never"
    plain = _SINCE.sub(" ", plain).strip(" ,;.") or plain
    if _OFTEN_ALONE.fullmatch(plain):
        return _told("repeated")
    told = bool(_EVENTS.search(plain))
    if not told and _FIGURES.search(plain):
        return None
    return _by_events(plain, told)


_NO_REQUEST: Final = re.compile(
    rf"\b(?:{_FREEZES})\b|\b(?:once|twice)\b(?! more| again)|\bshut(?:s|ting)? (?:it(?:self)? )?"
    rf"(?:down"
    r"|off)\b.*\b(?:itself|last|every|never|a lot|when\w*|all|few|times|day|summer|winter)\b"
)
"""Trouble told in words that a request to the program never has."""


def plain_trouble(line: str) -> Reading | None:
    """Trouble that could be taken for a request ("froze once, shut down once"), else None."""
    found = read_trouble(line, ()) if _NO_REQUEST.search(line) else None
    return found if isinstance(found, Accepted) else None


_PART: Final = r"(?:boards?|blower(?: motor)?|motor(?: in the blower)?|(?:heat )?exchanger)"
_STOPS: Final = whole_words(_FREEZES, _SHUTS)
_NEW_PART: Final = re.compile(
    rf"\b(?:one|an?|new|bad|another|replaced|swapped|needed|lost|first)(?: (?:new|bad|the|a))*"
    rf" (?P<part>{_PART})\b"
    rf"|\b(?P<part2>{_PART})(?:'s| was| got)? (?:died|failed|quit|went|burn\w*"
    rf"|(?:back )?in (?:\d{{4}}"
    rf"|jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\w*|last (?:year|month|summer|winter|fall"
    rf"|spring)|(?:\w+ )?(?:replaced|swapped)|(?:a )?year|the year)\b"
)
"""A part of those asked after that gave out: "a board", "blower in March"."""
_IN_TURN: Final = re.compile(
    r"\bthen\b|\blater\b|\bafter\b|\bnext\b|\bfirst\b|\banother\b|\bthe year\b|\band again\b"
    r"|(?:in|last) (?!may )\w+,? [^,]*\b(?:in|last) \w+"
)
_DENIED_FIRST: Final = re.compile(r"(?:no|never|not|nope|hasn'?t|none|didn'?t)\b")


def _parts_told(plain: str) -> set[str]:
    """Kinds of parts that gave out, each clause by itself, denied ones aside."""
    kinds: set[str] = set()
    for clause in _CLAUSES.split(plain):
        if _NEVER.search(clause):
            continue
        for found in _NEW_PART.finditer(clause):
            part = found["part"] or found["part2"]
            kinds.add("board" if "board" in part else "heat" if "exch" in part else "blower")
    return kinds


def _by_events(plain: str, told: bool) -> Reading | None:
    if _each_once(plain) or _MORE_PARTS.search(plain):
        return _told("repeated")
    parts = _parts_told(plain)
    if len(parts) > 1:
        return _told("repeated") if _IN_TURN.search(plain) else _often_asked()
    if (
        parts
        and _IN_TURN.search(plain)
        and any(
            _STOPS.search(one) and not _NEVER.search(one) and not _NEW_PART.search(one)
            for one in _CLAUSES.split(plain)
        )
    ):
        return _often_asked()
    if parts and _DENIED_FIRST.match(plain) and not _BUT.search(plain):
        return _told("once") if not _OFTEN.search(plain) else _often_asked()
    turned = _BUT.search(plain)
    if turned is not None and not turned["rest"].strip(" ,;.it"):
        plain, turned = plain[: turned.start()].strip(" ,;."), None
    if turned is not None and _NEVER.search(plain[: turned.start()]):
        return _after_but(turned["rest"])
    if _NEVER_ONCE.search(plain):
        return _told("never") if turned is None else _often_asked()
    if _ONE_TIME.search(plain) and "repeated" not in plain and not _regular(plain):
        return _told("once")
    if told and _OFTEN.search(plain):
        return _told("repeated")
    if _NEVER_ALONE.fullmatch(plain) or (told and _NEVER.search(plain)):
        return _told("never") if turned is None else _often_asked()
    return _told("once") if told else None


_MORE_PARTS: Final = re.compile(
    r"\b(?:two|three|four|[2-4]) (?:\w+ )?(?:boards|motors|blowers|exchangers|repairs|breakdowns"
    r"|freeze[- ]?ups|shutdowns|service calls)\b"
)
_NEVER_ONCE: Final = re.compile(r"\b(?:never|not)(?: even)? (?:once|one time|a single time)\b")


_LATER: Final = whole_words(
    r"(?:years?|months?|weeks?|summers?|winters?|seasons?) later|later on|another time|the (?:next|"
    r"following) (?:year|month|week|summer|winter|season)|a second time"
)


def _each_once(plain: str) -> bool:
    """Whether two clauses tell of one failure each: "froze once, shut down once"."""
    told = [clause for clause in _CLAUSES.split(plain) if _EVENTS.search(clause)]
    once = [clause for clause in told if _ONE_TIME.search(clause)]
    return len(once) > 1 or (len(told) > 1 and _LATER.search(plain) is not None)


def _regular(plain: str) -> bool:
    return re.search(rf"\b(?:{_AT_TIMES})\b", plain) is not None


def _after_but(rest: str) -> Reading:
    """What stands against a "never": told with its number, or asked."""
    if _OFTEN.search(rest) and not _NEVER.search(rest):
        return _told("repeated")
    if _ONE_TIME.search(rest) and not _NEVER.search(rest):
        return _told("once")
    return _often_asked()


def _taken_back(plain: str, choices: tuple[str, ...]) -> Reading | None:
    """What is said after "no wait" or "actually", where that counts again."""
    again = _AGAIN.fullmatch(plain)
    if again is None:
        return None
    turned = re.search(
        r"\b(?:wait|actually|i mean|make that|scratch that|hold on|correction)\b", plain
    )
    then = again["then"]
    counted = _COUNTED.match(then) or _ONE_TIME.search(then) or _OFTEN.search(then)
    first = _COUNTED.match(plain) or _NEVER_ALONE.fullmatch(plain)
    if not turned and not (first and _COUNTED.match(then)):
        return None
    if turned and _COUNTED.match(plain) and not plain.startswith("never") and not counted:
        return None
    found = read_trouble(again["then"].strip(), choices)
    return found if isinstance(found, Accepted) else None


def _told(word: str) -> Accepted:
    return Accepted({"choice": word})


def _often_asked() -> AskBack:
    return AskBack(
        "Once, or more than once?",
        ({"choice": "once"}, {"choice": "repeated"}),
        AskKind.TWO_READINGS,
    )
