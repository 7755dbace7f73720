"""Pressures told by where they were read: before or after the filter, before or after the coil."""

import re
from collections.abc import Mapping
from typing import Final

from engine.job.job import Job
from intake.interview.beside import ASIDE
from intake.interview.question import Question
from intake.reading.manner import sureness
from intake.reading.result import (
    Accepted,
    AskBack,
    AskKind,
    Unknown,
    Value,
    Volunteered,
)

__all__ = ["pressures_told"]

_AHEAD: Final = r"(?:before|ahead of|in front of|upstream of|pre)[- ]?(?:the )?"
_PAST: Final = r"(?:after|past|behind|beyond|downstream of|post)[- ]?(?:the )?"
_SIDE: Final = r"(?:(?:return|supply|ret|sup)(?: side| air| pressure)? )?"
_PLACES: Final = (
    ("before_filter", rf"{_SIDE}{_AHEAD}filters?"),
    ("after_filter", rf"{_SIDE}{_PAST}filters?"),
    ("before_coil", rf"{_SIDE}{_AHEAD}(?:a-?)?coil"),
    ("after_coil", rf"{_SIDE}(?:{_PAST}|over (?:the )?|above (?:the )?)(?:a-?)?coil"),
    ("total", r"(?:across the (?:unit|furnace|air ?handler|cabinet|whole thing|blower)|tesp"
              r"|total(?: external)?(?: static)?|overall)"),
    ("return", r"(?:return(?: side)?|ret|pull\w*)"),
    ("supply", r"(?:supply(?: side)?|sup|push\w*)"),
)  # fmt: skip
_TOKEN: Final = re.compile(
    "|".join(rf"(?P<{name}>\b{words}\b)" for name, words in _PLACES)
    + r"|(?P<side>\b(?:before|after)\b(?= ?-?\d?\.\d))"
    + r"|(?P<number>(?<![\w.])-?(?:\d{1,2})?\.\d+(?![\w.]*x)|\bzero\b|(?<![\w.])0(?![\w.]))"
)
_TENTHS: Final = re.compile(
    r"\b(?P<n>an?|one|two|three|four|five|six|seven|eight|nine)(?P<half> and a half)? tenths?\b"
)
_WORDS: Final = {
    "a": 1, "an": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7,
    "eight": 8, "nine": 9,
}  # fmt: skip
_CLAUSES: Final = re.compile(r"[,;]|\.(?!\d)|\b(?:but|and)\b")
_NOT_GOT: Final = re.compile(
    r"\b(?:can'?t|cannot|couldn'?t|could not|didn'?t|no way|unable|haven'?t|no port)\b"
)
_OTHERS: Final = re.compile(
    r"(?:(?:i|we|you|just|sorry|really)[, ]+)*(?:can'?t|cannot|couldn'?t|no way to|unable to"
    r"|didn'?t)"
    r"(?: really)? (?:get|reach|read|measure|do|take|drill)\w*(?: to| at)?"
    r" (?:the |those |these |either |any |both )*(?:other )?(?:two|ones?|others?|of (?:them"
    r"|those))?"
    r"[.! ]*"
)
_SIDE_FIRST: Final = re.compile(
    r"\b(?:return|supply|ret|sup)(?: side)?(?: is| was|'s|,)? "
    r"(?=-?\d?\.\d+,? (?:before|after|past|ahead of|behind)\b)"
)
"""A side in front of a pressure whose place stands behind it: "supply .41 before the coil"."""

_UNIT: Final = re.compile(r"\b(?:pa|pascals?|mm|cfm|fpm|psi)\b")
_ASKED: Final[Mapping[str, Mapping[str, str]]] = {
    "static_total": {"return": "after_filter", "supply": "before_coil"},
    "static_split": {"return": "before_filter", "supply": "after_coil"},
}
"""What return and supply mean by themselves, by the question that is open."""

_HOMES: Final[Mapping[str, Mapping[str, str]]] = {
    "static_total": {
        "after_filter": "return_inwc",
        "before_coil": "supply_inwc",
        "total": "total_inwc",
    },
    "static_split": {"before_filter": "return_inwc", "after_coil": "supply_inwc"},
}
_MOST_INWC: Final = 3.0


def pressures_told(question: Question, line: str, job: Job) -> Accepted | AskBack | Unknown | None:
    """The pressures of a line, each where it was read; None if the line doesn't name the places.

    Args:
        question: The open question, of one of the two pairs.
        line: Normalised text.
        job: What is known.
    """
    if question.key not in _HOMES or _UNIT.search(line):
        return None
    if question.key == "static_split" and (one := _one_of_the_outer(line)) is not None:
        return one
    if _OTHERS.fullmatch(line):
        return Unknown("You can't get there.")
    told = _by_place(_SIDE_FIRST.sub("", _in_digits(line)))
    if not told or not _names_a_place(told):
        return None
    own = _ASKED[question.key]
    placed = {own.get(place, place): size for place, size in told.items()}
    if len(placed) < len(told):
        return None
    if "total" in placed and len(placed) == 2:
        placed = _with_the_rest(placed)
    odd = _out_of_order(placed, job)
    values: dict[str, Value] = {}
    others: list[Volunteered] = []
    for key, homes in _HOMES.items():
        part: dict[str, Value] = {homes[p]: size for p, size in placed.items() if p in homes}
        if key == question.key:
            values = part
        elif part:
            others.append(Volunteered(f"{ASIDE}{key}", part, line))
    if odd and values:
        return AskBack(odd, (values,), AskKind.IMPLAUSIBLE)
    return Accepted(values, sureness(line), others=tuple(others))


_NO_OUTER: Final = re.compile(
    r"\b(?:(?:no way|unable) to (?:reach|get(?: to)?|read|measure)|(?:can'?t|couldn'?t|didn'?t)"
    r" (?:reach|get(?: to)?|read|measure)|no|nothing|without)(?: the| an?)? "
    r"(?P<gone>after|before|past|ahead of)(?: the| a)?(?: (?P<thing>coil|filter))?\b"
)


def _one_of_the_outer(line: str) -> Accepted | None:
    """The one outer pressure of a line that says the other isn't there: ".11 and no after coil"."""
    gone = _NO_OUTER.search(line)
    told = re.findall(r"(?<![\w.])-?0?\.\d+", line)
    if gone is None or len(told) != 1:
        return None
    past = gone["gone"] in ("after", "past")
    if gone["thing"] == ("filter" if past else "coil"):
        return None
    rest = f"{line[: gone.start()]} {line[gone.end() :]}"
    if re.search(r"\bcoil\b" if past else r"\bfilter\b", rest):
        return None
    return Accepted({"return_inwc" if past else "supply_inwc": abs(float(told[0]))}, sureness(line))


def _in_digits(line: str) -> str:
    return _TENTHS.sub(lambda m: f"{(_WORDS[m['n']] + (0.5 if m['half'] else 0)) / 10:g}", line)


def _names_a_place(told: Mapping[str, float]) -> bool:
    """Whether more is named than return and supply, which the plain reader knows."""
    return any(place not in ("return", "supply") for place in told) or len(told) == 2


def _by_place(line: str) -> dict[str, float]:
    """Pressure by place, in. w.c.; empty if one of them has no place, or two."""
    clauses = [clause for clause in _CLAUSES.split(line) if not _missing(clause)]
    pairs = [pair for clause in clauses for pair in _pairs(clause)]
    if any(not pair[0] for pair in pairs):
        pairs = _pairs(", ".join(clauses))
    told: dict[str, float] = {}
    for place, text in pairs:
        size = 0.0 if text == "zero" else float(text or "nan")
        wrong_sign = size < 0 and place not in ("return", "before_filter", "after_filter")
        if not place or place in told or wrong_sign or not abs(size) <= _MOST_INWC:
            return {}
        told[place] = abs(size)
    return told


def _pairs(text: str) -> list[tuple[str, str]]:
    """Each place with its number; ("", "") if they don't come in pairs."""
    tokens: list[tuple[str, str]] = []
    thing = ""
    for match in _TOKEN.finditer(text):
        kind = match.lastgroup or ""
        if kind == "side":  # "before the filter .1, after .28"
            kind = f"{match[0]}_{thing}" if thing else ""
        elif "_" in kind:
            thing = kind.split("_")[1]
        tokens.append((kind, match[0]))
    pairs: list[tuple[str, str]] = []
    for one, other in zip(tokens[::2], tokens[1::2], strict=False):
        place, number = (other, one) if one[0] == "number" else (one, other)
        if number[0] != "number" or place[0] in ("number", ""):
            return [("", "")]
        pairs.append((place[0], number[1]))
    return pairs if len(tokens) % 2 == 0 else [("", "")]


def _missing(clause: str) -> bool:
    """Whether a clause only says that a reading isn't there."""
    return _NOT_GOT.search(clause) is not None and not re.search(r"\d", clause)


def _with_the_rest(placed: dict[str, float]) -> dict[str, float]:
    """The other side of a total: push and pull together are the whole."""
    for one, other in (("after_filter", "before_coil"), ("before_coil", "after_filter")):
        if one in placed and placed["total"] > placed[one]:
            return {**placed, other: round(placed["total"] - placed[one], 3)}
    return placed


_LEEWAY_INWC: Final = 0.02
_READINGS: Final = "readings.0"


def _out_of_order(placed: Mapping[str, float], job: Job) -> str:
    """What is wrong if the inner pair isn't the larger one."""
    for inner, outer, words in (
        ("after_filter", "before_filter", "The return can't pull more before the filter ({0:.2f})"
                                          " than after it ({1:.2f})"),
        ("before_coil", "after_coil", "The supply can't push more after the coil ({0:.2f}) than"
                                      " before it ({1:.2f})"),
    ):  # fmt: skip
        big = placed.get(inner, job.number(f"{_READINGS}.{inner}_inwc"))
        small = placed.get(outer, job.number(f"{_READINGS}.{outer}_inwc"))
        if big is not None and small is not None and small > big + _LEEWAY_INWC:
            return f"{words.format(small, big)}. Is it right as you say?"
    return ""
