"""What equipment goes in: its kind, tons, stages, and the heat and airflows told with it."""

import math
import re
from typing import Final

from intake.interview.beside import motor_aside
from intake.interview.out_and_in import plainly_put, what_goes_in
from intake.interview.own_words import KINDS
from intake.interview.stage_of import stages_told
from intake.interview.tons import bare_tons, tons_told
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

__all__ = ["read_equipment"]

_WRONG_JOB: Final = re.compile(r"\bboiler\b|\b(?:mini[- ]?split|ductless)s?\b|\bradiators?\b")
_COOLING_ONLY: Final = re.compile(r"\b(?:a/?c|air con\w*|straight cool\w*|condenser|cooling)\b")
_INPUT_BTUH: Final = (25_000.0, 200_000.0)
_TONS: Final = (1.0, 5.5)


def read_equipment(text: str, choices: tuple[str, ...]) -> Reading | None:
    """Read what goes in; None if the text holds nothing of it.

    Args:
        text: Normalised.
        choices: The kinds, if only the kind is asked for.
    """
    text = what_goes_in(plainly_put(text))
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
    told = stages_told(text, burns=kind in ("furnace", "dual_fuel"))
    if told.cooling:
        values["stages"] = told.cooling
    if told.burner:
        values["burner_stages"] = told.burner
    bare = None if choices else bare_tons(text)
    if bare is not None:
        return Accepted({**{k: v for k, v in values.items() if k == "stages"}, "tons": bare})
    others = _figures(text, values)
    if isinstance(others, AskBack):
        return others
    if not values and _COOLING_ONLY.search(text) and not _HEATS_ONLY.search(text):
        return AskBack(
            "Cooling it is. What moves the air: a furnace, an air handler, or a packaged unit?",
            ({"kind": "furnace"}, {"kind": "air_handler"}, {"kind": "packaged"}),
            AskKind.MISSING_PART,
        )
    if not values and not others and not _HEATS_ONLY.search(text):
        return None
    if _HEATS_ONLY.search(text) and "tons" not in values and kind != "heat_pump":
        values["cooling"] = False
        if "stages" not in values and "burner_stages" in values:
            values["stages"] = values.pop("burner_stages")
    return Accepted(values, others=others) if values or others else None


_HEATS_ONLY: Final = re.compile(
    r"\b(?:no|without|w/o|minus|not getting|won'?t (?:have|get)|doesn'?t (?:have|get))"
    r" (?:an? |any )?(?:a/?c\b|air (?:con\w*|cond\w*)|cool\w*)"
    r"|\bheat(?:s|ing)?[- ]only\b|\bonly heats?\b|\bno air\b(?! ?(?:handler|flow))"
)


_NOT_THAT: Final = re.compile(
    r"\b(?:no|not an?|without an?|without|instead of (?:an?|the)|replac(?:es|ing) (?:an?|the)"
    r"|isn'?t an?) (?:(?:gas|oil|old|electric|existing) )*"
    r"(?:furnace|heat ?pump|air ?handler|package\w*)\b"
)
"""Equipment that is named only to say that it isn't what goes in."""

_BACKUP: Final = re.compile(
    r"\b(?:gas|propane|oil|lp|natural gas) (?:back ?-?up|aux\w*|backing|second stage|supplement\w*)"
    r"|\b(?:back ?-?up|aux\w*) (?:is |heat is |heat )?(?:on )?(?:gas|propane|oil)\b"
)
"""A burner that helps a heat pump."""

_GAS_PACK: Final = re.compile(r"\bgas[ /-]*(?:heat |fired )?(?:and electric )?pack")
_SPACE: Final = re.compile(r"\bfurnace (?:room|closet|sits|location|area|space)\b")


def _kind(text: str) -> str:
    text = _SPACE.sub(" ", _NOT_THAT.sub(" ", text))
    found = [kind for kind, pattern in KINDS if pattern.search(text)]
    if "heat_pump" in found and ("furnace" in found or _BACKUP.search(text)):
        return "dual_fuel"
    if "heat_pump" in found and "packaged" in found and not _GAS_PACK.search(text):
        return "heat_pump"
    return found[0] if found else ""


def _figures(text: str, values: dict[str, Value]) -> tuple[Volunteered, ...] | AskBack:
    """Tons into `values`; airflow and heat as answers to other questions."""
    heat: dict[str, Value] = {}
    others: list[Volunteered] = []
    burns = values.get("kind", "furnace") in ("furnace", "dual_fuel", "packaged")
    tons = tons_told(text)
    kilowatts: float | None = None
    for item in scan(text, "capacity").numbers:
        value = _btuh(item)
        if item.unit == "cfm":
            others.append(Volunteered("airflow", {"cfm": item.value}, text))
        elif item.unit in ("pct", "afue") and 55 <= item.value <= 99:
            heat["efficiency"] = item.value / 100.0
        elif item.unit == "kw" and _PUMP_KW.match(text, item.start):
            kilowatts = item.value
        elif value is not None and not burns:
            if not tons and value / 6000.0 in _HALF_TONS:
                tons.append(value / 12000.0)
        elif value is not None and _INPUT_BTUH[0] <= value <= _INPUT_BTUH[1]:
            heat.setdefault("input_btuh", value)
    bare = _BARE_AFUE.search(text)
    if bare and "input_btuh" in heat:
        heat.setdefault("efficiency", float(bare[1]) / 100.0)
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
    elif kilowatts is not None and not burns:
        return _by_kilowatts(kilowatts, values)
    if heat:
        others.append(Volunteered("capacity", heat, text))
    return tuple(others)


def _by_kilowatts(kilowatts: float, values: dict[str, Value]) -> AskBack:
    """Asks which nominal size a heat pump told in kilowatts has."""
    tons = kilowatts / _KW_PER_TON
    near = (math.floor(2 * tons) / 2, math.ceil(2 * tons) / 2)
    return AskBack(
        f"{kilowatts:g} kW is about {tons:.1f} tons. Is it {near[0]:g} or {near[1]:g} tons?",
        tuple({**values, "tons": size} for size in near),
        AskKind.TWO_READINGS,
    )


_KW_PER_TON: Final = 3.517
_HALF_TONS: Final = frozenset(range(3, 11))
"""Sizes of cooling equipment, in half tons of 6,000 BTU/h."""

_PUMP_KW: Final = re.compile(
    r"[\d.]+ ?(?:kw|kilowatts?) (?:\w+ )?(?:heat ?pump|hp|inverter|condenser|outdoor)\b"
)
"""Kilowatts that are a heat pump's size, not its strips'."""

_BARE_AFUE: Final = re.compile(
    r"\b\d{2,3}(?:,?000|k| ?mbh)(?: ?btu/?h?)?[ ,/@-]+(?:at )?(7[89]|8\d|9[0-8])\b"
    r"(?! ?(?:[k%,\d\"']|x\b|cfm|tons?|btu|mbh|in\b|amps?|degrees?))"
)
"""A furnace as it is called for short, "80k 96": its input and its efficiency in per cent."""


def _btuh(item: Item) -> float | None:
    if item.unit == "btuh" or (not item.unit and item.value >= 18_000.0):
        return item.value
    if item.unit == "kbtuh":
        return item.value * 1000.0
    return None
