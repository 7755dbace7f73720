"""What switches a caution on: small questions to what is known, judged, chosen and said.

Each trigger answers with the reason as a clause for a person, or None. Nothing here knows the
cautions' own words.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from typing import Final, Protocol, TypeAlias

__all__ = [
    "Situation",
    "Trigger",
    "above",
    "always",
    "any_of",
    "both",
    "heard",
    "is_one_of",
    "material_is",
    "number_of",
    "remedy_touches",
    "rise_readings",
    "sizes_taken",
    "stated",
]


class Situation(Protocol):
    """What is known of the house and what has been said, as the triggers ask for it."""

    @property
    def remedies(self) -> frozenset[str]:
        """Keys of the remedies that are proposed."""

    @property
    def said(self) -> str:
        """Everything a person typed, in lower case."""

    def value(self, key: str) -> float | str | None:
        """Likely value of a fact that somebody stated; None if nobody did."""

    def known(self, key: str) -> bool:
        """Whether somebody stated the fact."""

    def finding(self, check: str) -> str | None:
        """Worst status of a check ("fine", "tight", "over"); None if it was not put."""

    def predicted(self, name: str) -> float | None:
        """A predicted figure by name ("rise_degf", "cfm_per_ton"); None without a prediction."""


Trigger: TypeAlias = Callable[[Situation], str | None]
"""The reason why a caution is on, as a clause; empty if it needs none; None if it is off."""

ROWS: Final = 12
"""Entries of a list that are looked at."""

_SECTIONS: Final = (
    "supply.trunks",
    "supply.branches",
    "return.drops",
    "return.trunks",
    "return.branches",
)


def always(_: Situation) -> str | None:
    """A caution that is on in every house."""
    return ""


def any_of(*triggers: Trigger) -> Trigger:
    """On as soon as one of them is, for the first one's reason."""

    def trigger(situation: Situation) -> str | None:
        reasons = (one(situation) for one in triggers)
        return next((reason for reason in reasons if reason is not None), None)

    return trigger


def both(first: Trigger, *others: Trigger) -> Trigger:
    """On only while all of them are; the reason names each."""

    def trigger(situation: Situation) -> str | None:
        reasons = [one(situation) for one in (first, *others)]
        if any(reason is None for reason in reasons):
            return None
        return " and ".join(reason for reason in reasons if reason)

    return trigger


def number_of(situation: Situation, key: str) -> float | None:
    """A stated fact as a number; None if unstated or a word."""
    value = situation.value(key)
    return None if value is None or isinstance(value, str) else float(value)


def is_one_of(key: str, words: tuple[str, ...], reason: str) -> Trigger:
    """On while a fact is one of these words."""
    return lambda situation: reason if situation.value(key) in words else None


def above(key: str, limit: float, reason: str) -> Trigger:
    """On while a stated number is greater than a limit; `{:g}` in the reason is the number."""

    def trigger(situation: Situation) -> str | None:
        number = number_of(situation, key)
        return reason.format(number) if number is not None and number > limit else None

    return trigger


def stated(key: str, reason: str) -> Trigger:
    """On as soon as somebody has stated the fact."""
    return lambda situation: reason if situation.known(key) else None


def heard(*phrases: str) -> Trigger:
    """On while one of these regular expressions stands in what was typed, not denied."""
    pattern = re.compile(rf"(?<!\bno )(?<!\bnot )\b(?:{'|'.join(phrases)})\b")

    def trigger(situation: Situation) -> str | None:
        found = pattern.search(situation.said)
        return f"you said “{found[0]}”" if found else None

    return trigger


def material_is(materials: tuple[str, ...], reason: str) -> Trigger:
    """On while a section is made of one of these."""

    def trigger(situation: Situation) -> str | None:
        keys = (f"{name}.{row}.material" for name in _SECTIONS for row in range(ROWS))
        return reason if any(situation.value(key) in materials for key in keys) else None

    return trigger


def sizes_taken(reason: str) -> Trigger:
    """On while somebody has put a tape on a duct or an opening."""
    sides = [f"{name}.{{}}.{side}" for name in _SECTIONS for side in ("width_in", "diameter_in")]
    sides += ["return.grilles.{}.width_in", "supply.registers.{}.width_in"]

    def trigger(situation: Situation) -> str | None:
        keys = (side.format(row) for side in sides for row in range(ROWS))
        return reason if any(situation.known(key) for key in keys) else None

    return trigger


def remedy_touches(words: tuple[str, ...], reason: str) -> Trigger:
    """On while a proposed change has one of these words in its key (`larger_return_drop`)."""

    def trigger(situation: Situation) -> str | None:
        parts = {part for key in situation.remedies for part in key.split("_")}
        return reason if parts & set(words) else None

    return trigger


def rise_readings(situation: Situation, *, heating: bool) -> Iterator[float]:
    """Temperature rises (heating) or drops (cooling) that were read, degrees F, each positive."""
    for row in range(ROWS):
        mode = situation.value(f"readings.{row}.mode")
        supply = number_of(situation, f"readings.{row}.supply_degf")
        back = number_of(situation, f"readings.{row}.return_degf")
        if supply is None or back is None or not isinstance(mode, str):
            continue
        if mode.startswith("cooling") != heating:
            yield supply - back if heating else back - supply
