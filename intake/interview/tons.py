"""Tons of cooling: in words, as a model number, taken back in the same breath, or alone."""

import re
from typing import Final

from intake.reading.scan import Item, scan

__all__ = ["bare_tons", "tons_told"]

_SIZES: Final = (1.0, 5.5)
_MODEL_TONS: Final = {
    "018": 1.5,
    "024": 2.0,
    "030": 2.5,
    "036": 3.0,
    "042": 3.5,
    "048": 4.0,
    "060": 5.0,
}
_MODEL: Final = re.compile(r"(?<!\.)(018|024|030|036|042|048|060)(?![\d.])")
_AGAIN: Final = re.compile(
    r"[,;. -]+(?:(?:oh|er|uh|um|sorry) )*(?:no|nope|wait|scratch that|strike that|i mean"
    r"|make (?:that|it)|actually|sorry|correction|hold on|hang on)\b"
    r"(?: ?,? ?(?:no|wait|make (?:that|it)|it'?s|its|actually|sorry|i mean)\b)*[, ]*"
)
_NOT_AGAIN: Final = re.compile(
    r"no (?:a/?c|strips?|cool\w*|air\b|furnace|gas|heat|kit|aux\w*|back|stages?|idea|clue|zon\w+)"
)
_ANOTHERS: Final = re.compile(
    r"\b(?:upstairs|downstairs|the other (?:one|unit|system)|next door|other unit)\b"
)
_HERE: Final = re.compile(r"\bth(?:is|at) (?:one|unit|system)\b|\bthis\b|\bhere\b")
_COUNTS: Final = re.compile(
    r" ?-?(?:stages?|st|speeds?|zones?|units?|systems?|x\b|cfm|%|percent|kw|k\b|inch|in\b|\""
    r"|trunks?"
    r"|returns?|ducts?|phase|years?|poles?|of|thermostats?|stats?)"
)


def tons_told(text: str) -> list[float]:
    """The tons that a line tells; several if it leaves open which.

    Args:
        text: Normalised.

    >>> tons_told("five ton no four"), tons_told("3 or 3.5 ton heat pump")
    ([4.0], [3.5, 3.0])
    """
    parts = _parts(text)
    told = _with_unit(parts[0])
    for part in parts[1:]:
        later = _with_unit(part) or (_sizes_in(part) if told else [])
        told = later or told
    model = _MODEL.search(text)
    if model and not told:
        told = [_MODEL_TONS[model[1]]]
    return told


def _parts(text: str) -> list[str]:
    """The line, cut where something is taken back."""
    cuts = [0]
    ends = []
    for mark in _AGAIN.finditer(text):
        if _NOT_AGAIN.match(text, mark.start() + len(mark[0]) - len(mark[0].lstrip(",;. -"))):
            continue
        ends.append(mark.start())
        cuts.append(mark.end())
    return [text[a:b] for a, b in zip(cuts, [*ends, len(text)], strict=True)]


def _with_unit(part: str) -> list[float]:
    """Tons by name, and what stands beside them with "or" or "to" between."""
    numbers = scan(part, "capacity").numbers
    named = [n for n in numbers if n.unit == "ton" and not n.negated]
    told = [n.value for n in named]
    for item in numbers:
        near = any(_either(part, item, other) for other in named)
        if not item.unit and near and _SIZES[0] <= item.value <= _SIZES[1]:
            told.append(item.value)
    return told if len(set(told)) < 2 else _of_this_one(part, told)


def _either(part: str, item: Item, other: Item) -> bool:
    if item.negated or item.end > other.start:
        return False
    return part[item.end : other.start].strip(" ,") in ("or", "to", "-", "or maybe", "maybe")


def _sizes_in(part: str) -> list[float]:
    """Bare sizes behind a correction: "no four", "this one's two and a half"."""
    told = [
        n.value
        for n in scan(part, "capacity").numbers
        if not n.unit
        and not n.negated
        and _SIZES[0] <= n.value <= _SIZES[1]
        and n.value * 2 == int(n.value * 2)
        and not _COUNTS.match(part, n.end)
    ]
    return told if len(set(told)) < 2 else _of_this_one(part, told)


def _of_this_one(part: str, told: list[float]) -> list[float]:
    """What is left if another system's clause is put aside."""
    if not _ANOTHERS.search(part):
        return told
    clauses = [
        c for c in re.split(r"[,;]|\.(?!\d)|\band\b(?! a? ?half)", part) if not _ANOTHERS.search(c)
    ]
    left = [ton for clause in clauses for ton in (_with_unit(clause) or _sizes_in(clause))]
    return left or told


_ONLY: Final = re.compile(
    r"(?:it'?s |its |about |an? |like |just |maybe |that'?s |the |cooling (?:is )?)*"
    r"(?P<size>[\d /.]+|[a-z -]+?|\d and (?:a )?half)"
    r"(?: ?(?:k|,?000)(?: ?btu/?h?)?)?(?:,? (?:single|two|one|variable|2|1)[ -]?(?:stage|speed)?)?"
    r"[.! ]*"
)
_THOUSANDS: Final = (18, 24, 30, 36, 42, 48, 60)


def bare_tons(text: str) -> float | None:
    """A number alone is tons: "2 1/2", or thousands of BTU/h as model numbers have them: "36".

    >>> bare_tons("three, single stage"), bare_tons("36k"), bare_tons("not 3")
    (3.0, 3.0, None)
    """
    contrast = _CONTRAST.fullmatch(text)
    if contrast is not None:
        return bare_tons(contrast["right"] or contrast["left"])
    only = _ONLY.fullmatch(text)
    if only is None:
        return None
    numbers = [n for n in scan(text, "capacity").numbers if not _STAGE_NUMBER.match(text, n.start)]
    if len(numbers) != 1 or numbers[0].unit not in ("", "kbtuh", "btuh") or numbers[0].negated:
        return None
    number = text[numbers[0].start : numbers[0].end]
    if len(only["size"].strip()) > len(number):
        return None  # more is said than a number: "two of them"
    value = numbers[0].value * (1000.0 if numbers[0].unit == "kbtuh" else 1.0)
    if value in _THOUSANDS:
        value /= 12.0
    elif value / 1000.0 in _THOUSANDS[:-1]:  # 60,000 may as well be a burner's
        value /= 12_000.0
    return value if _SIZES[0] <= value <= _SIZES[1] else None


_CONTRAST: Final = re.compile(
    r"(?P<left>[^,]+?),? not (?:an? )?[\w. ]+|not [\w. ]+?,? (?:but )?(?P<right>.+)"
)
_STAGE_NUMBER: Final = re.compile(r"(?:one|two|1|2)[ -]?(?:stage|speed)")
