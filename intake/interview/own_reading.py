"""Answers that only this interview asks for: equipment, tools, skins, tapes, thickness, states.

Each reader takes normalised text and gives what `intake.reading` gives; None if it holds nothing
of the kind.
"""

import re
from collections.abc import Callable, Mapping
from typing import Final

from intake.interview.bag import read_tools
from intake.interview.beside import motor_aside
from intake.interview.denials import affirmed, denied
from intake.interview.own_words import (
    KINDS,
    PARTS,
    SKINS,
    STAGES,
    STATES,
    TAPED,
)
from intake.interview.phone_reading import read_change, read_trouble
from intake.reading.clean import normalise
from intake.reading.manner import cant_say
from intake.reading.result import (
    Accepted,
    AskBack,
    AskKind,
    Reading,
    Rejected,
    Value,
    Volunteered,
)
from intake.reading.scan import Item, scan

__all__ = ["OWN_FIELDS", "read_own"]

_WRONG_JOB: Final = re.compile(r"\bboiler\b|\b(?:mini[- ]?split|ductless)s?\b|\bradiators?\b")
_COOLING_ONLY: Final = re.compile(r"\b(?:a/?c|air con\w*|straight cool\w*|condenser|cooling)\b")
_INPUT_BTUH: Final = (25_000.0, 200_000.0)
_TONS: Final = (1.0, 5.5)
_MODEL_TONS: Final = {
    "018": 1.5,
    "024": 2.0,
    "030": 2.5,
    "036": 3.0,
    "042": 3.5,
    "048": 4.0,
    "060": 5.0,
}


def _equipment(text: str, choices: tuple[str, ...]) -> Reading | None:
    wrong = _WRONG_JOB.search(text)
    if wrong:
        return Rejected(
            f"A {wrong[0]} moves no air through these ducts, so there is nothing to judge here."
            " What goes in that blows air: furnace, heat pump, air handler?"
        )
    text, _ = motor_aside(text)
    kind = _kind(text)
    values: dict[str, Value] = {}
    if kind:
        values["kind"] = kind
    for stages, pattern in STAGES:
        if affirmed(pattern, text):
            values["stages"] = stages
            break
    bare = None if choices else _bare_tons(text)
    if bare is not None:
        return Accepted({"tons": bare})
    others = _figures(text, values)
    if isinstance(others, AskBack):
        return others
    if not values and _COOLING_ONLY.search(text):
        return AskBack(
            "Cooling it is. What moves the air: a furnace, an air handler, or a packaged unit?",
            ({"kind": "furnace"}, {"kind": "air_handler"}, {"kind": "packaged"}),
            AskKind.MISSING_PART,
        )
    if not values and not others and not _HEATS_ONLY.search(text):
        return None
    if _HEATS_ONLY.search(text) and "tons" not in values and kind != "heat_pump":
        values["cooling"] = False
    return Accepted(values, others=others) if values or others else None


_HEATS_ONLY: Final = re.compile(
    r"\b(?:no|without|w/o|minus|not getting|won'?t (?:have|get)|doesn'?t (?:have|get))"
    r" (?:an? |any )?(?:a/?c\b|air (?:con\w*|cond\w*)|cool\w*)"
    r"|\bheat(?:s|ing)?[- ]only\b|\bonly heats?\b|\bno air\b(?! ?(?:handler|flow))"
)


_NOT_THAT: Final = re.compile(
    r"\b(?:no|not an?|without an?|without|instead of (?:an?|the)|replac(?:es|ing) (?:an?|the))"
    r" (?:(?:gas|oil|old|electric|existing) )*(?:furnace|heat ?pump|air ?handler|package\w*)\b"
)
"""Equipment that is named only to say that it isn't what goes in."""


def _kind(text: str) -> str:
    text = _NOT_THAT.sub(" ", text)
    found = [kind for kind, pattern in KINDS if pattern.search(text)]
    if "heat_pump" in found and "furnace" in found:
        return "dual_fuel"
    return found[0] if found else ""


def _figures(text: str, values: dict[str, Value]) -> tuple[Volunteered, ...] | AskBack:
    """Tons into `values`; airflow and heat as answers to other questions."""
    heat: dict[str, Value] = {}
    others: list[Volunteered] = []
    tons: list[float] = []
    for item in scan(text, "capacity").numbers:
        value = _btuh(item)
        if item.unit == "cfm":
            others.append(Volunteered("airflow", {"cfm": item.value}, text))
        elif item.unit == "ton":
            tons.append(item.value)
        elif item.unit in ("pct", "afue") and 55 <= item.value <= 99:
            heat["efficiency"] = item.value / 100.0
        elif value is not None and _INPUT_BTUH[0] <= value <= _INPUT_BTUH[1]:
            heat.setdefault("input_btuh", value)
    bare = _BARE_AFUE.search(text)
    if bare and "input_btuh" in heat:
        heat.setdefault("efficiency", float(bare[1]) / 100.0)
    model = _MODEL.search(text)
    if model and not tons:
        tons.append(_MODEL_TONS[model[1]])
    either = _EITHER_TONS.search(text)
    if either:
        tons += [float(either[1]), float(either[2])]
    distinct = sorted(set(tons))
    if len(distinct) > 1:
        return AskBack(
            f"Is it {distinct[0]:g} or {distinct[-1]:g} tons?",
            tuple({**values, "tons": size} for size in distinct),
            AskKind.TWO_VALUES,
        )
    if distinct:
        if not _TONS[0] <= distinct[0] <= _TONS[1]:
            return AskBack(
                f"{distinct[0]:g} tons is outside what a house has, 1 to 5.5. How many tons?",
                (),
                AskKind.IMPLAUSIBLE,
            )
        values["tons"] = distinct[0]
    if heat:
        others.append(Volunteered("capacity", heat, text))
    return tuple(others)


_BARE_AFUE: Final = re.compile(
    r"\b\d{2,3}(?:,?000|k| ?mbh)(?: ?btu/?h?)?[ ,/@-]+(?:at )?(7[89]|8\d|9[0-8])\b"
    r"(?! ?(?:[k%,\d\"']|x\b|cfm|tons?|btu|mbh|in\b|amps?|degrees?))"
)
"""A furnace as it is called for short, "80k 96": its input and its efficiency in per cent."""

_MODEL: Final = re.compile(r"(?<!\.)(018|024|030|036|042|048|060)(?![\d.])")
_EITHER_TONS: Final = re.compile(r"(\d(?:\.\d)?) ?(?:or|to|-) ?(\d(?:\.\d)?)[ -]?tons?\b")
_ONLY_DIGITS: Final = re.compile(r"[\d /.]+|[a-z ]+")


def _bare_tons(text: str) -> float | None:
    """A number alone is tons: "2 1/2", or thousands of BTU/h as model numbers have them: "36"."""
    numbers = scan(text, "capacity").numbers
    if len(numbers) != 1 or numbers[0].unit or not _ONLY_DIGITS.fullmatch(text):
        return None
    value = numbers[0].value
    if value in (18, 24, 30, 36, 42, 48, 60):
        value /= 12.0
    only = numbers[0].end - numbers[0].start >= len(text.strip())
    return value if only and _TONS[0] <= value <= _TONS[1] else None


def _btuh(item: Item) -> float | None:
    if item.unit == "btuh" or (not item.unit and item.value >= _INPUT_BTUH[0]):
        return item.value
    if item.unit == "kbtuh":
        return item.value * 1000.0
    return None


_UNLINED: Final = re.compile(
    r"\b(?:un-?lined|not lined|no lin\w+|no insulation|nothing (?:in|out)side)\b"
)


def _skin(text: str, choices: tuple[str, ...]) -> Reading | None:
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


_UNWRAPPED: Final = re.compile(
    r"\b(?:not|no|without|isn'?t|ain'?t)(?: any)? (?:wrap\w*|insulation|blanket)\b|\bunwrapped\b"
)
"""Nothing lies over the metal, so that the tape was on it."""


def _measured_where(text: str, choices: tuple[str, ...]) -> Reading | None:
    rows = TAPED.get(choices[0] if choices else "", ())
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


_THICKEST_IN: Final = 6.5
"""Filters are at most 6 in. deep, liner and board at most 2."""

_PER_UNIT_IN: Final = {"": 1.0, "in": 1.0, "mm": 1 / 25.4, "cm": 1 / 2.54}


_AN_INCH: Final = re.compile(r"\ban? inch\b|^(?:about |like |just )?inch\b(?! and)")


def _thickness(text: str, choices: tuple[str, ...]) -> Reading | None:
    numbers = [n for n in scan(text, "duct").numbers if n.unit in _PER_UNIT_IN]
    if not numbers:
        return Accepted({"in": 1.0}) if _AN_INCH.search(text) else None
    sizes = sorted({round(n.value * _PER_UNIT_IN[n.unit], 3) for n in numbers})
    if sizes[-1] > _THICKEST_IN:
        return None
    if len(sizes) > 1:
        return AskBack(
            f"Which thickness: {' or '.join(f'{s:g}' for s in sizes)} in.?",
            tuple({"in": size} for size in sizes),
            AskKind.TWO_VALUES,
        )
    return Accepted({"in": sizes[0]})


def _state(clause: str) -> str:
    """How clean a clause says something is; not dirty is clean."""
    for state, pattern in STATES:
        if affirmed(pattern, clause):
            return state
    dirty = (pattern for state, pattern in STATES if state != "clean")
    return "clean" if any(denied(pattern, clause) for pattern in dirty) else ""


def _conditions(text: str, choices: tuple[str, ...]) -> Reading | None:
    values: dict[str, Value] = {}
    waiting: list[str] = []
    for clause in re.split(r"[,;.]|\bbut\b|\band\b", text):
        parts = [part for part, pattern in PARTS if pattern.search(clause)]
        state = _state(clause)
        if cant_say(clause):
            continue
        if parts and not state:
            waiting += parts
        elif state:
            for part in [*waiting, *parts] or [p for p, _ in PARTS if p not in values]:
                values[part] = state
            waiting = []
    for part in waiting:  # "all clean but the wheel": of these no state was told
        values.pop(part, None)
    if re.search(r"\bno coil\b", text):
        values["coil"] = "none"
    return Accepted(values) if values else None


_Reader = Callable[[str, tuple[str, ...]], Reading | None]
_READERS: Final[Mapping[str, _Reader]] = {
    "equipment": _equipment,
    "tools": read_tools,
    "skin": _skin,
    "measured_where": _measured_where,
    "thickness": _thickness,
    "conditions": _conditions,
    "change": read_change,
    "trouble": read_trouble,
}
OWN_FIELDS: Final = frozenset(_READERS)
"""Fields that are read here."""


def read_own(field: str, text: str, choices: tuple[str, ...]) -> Reading | None:
    """Read an answer to one of `OWN_FIELDS`; None if the text holds nothing of it.

    >>> read_own("equipment", "two-stage 3 ton heat pump", ()).values
    {'kind': 'heat_pump', 'stages': 'two', 'tons': 3.0}
    """
    return _READERS[field](normalise(text), choices)
