"""The catalogue of facts: every key a job may hold, its unit, meaning and believable bounds.

Keys are dotted and carry their unit. A list is written with `[]` in the catalogue
(`supply.trunks[].width_in`) and with a number in a job (`supply.trunks.0.width_in`).
The rows themselves are in `engine.job.catalogue`.
"""

import re
from dataclasses import dataclass
from enum import StrEnum
from functools import cache, lru_cache
from math import isfinite
from typing import Final

from engine.errors import FactError
from engine.job.belief import Belief, Between, Known, OneOf, Scalar

__all__ = ["Fact", "Giver", "Place", "Quantity", "catalogue", "checked", "fact_for", "pattern_of"]


class Giver(StrEnum):
    """Who can give a fact."""

    HOMEOWNER = "homeowner"
    RECORDS = "records"
    TAPE = "tape"
    GAUGE = "gauge"
    THERMOMETER = "thermometer"
    PLATE = "plate"
    MAKER = "maker's data"
    COMPUTED = "computed"


class Place(StrEnum):
    """Where a person stands when giving a fact."""

    DESK = "desk"
    LIVING_SPACE = "living space"
    EQUIPMENT = "equipment"
    TRUNKS = "trunks"
    REGISTERS = "registers"
    ATTIC_CRAWL = "attic or crawl"


class Quantity(StrEnum):
    """What kind of thing a fact is; with `How` it decides the scatter of a stated value."""

    DUCT_SIDE = "duct side"
    FLEX_DIAMETER = "flex diameter"
    GRILLE_SIDE = "grille side"
    FILTER_SIDE = "filter side"
    LENGTH = "length"
    AIRFLOW = "airflow"
    STATIC = "static"
    TEMPERATURE = "temperature"
    DIFFERENCE = "temperature difference"
    HEAT = "heat"
    LOAD = "load"
    TONS = "tons"
    SHARE = "share"
    COUNT = "count"
    YEAR = "year"
    AREA = "area"
    ELEVATION = "elevation"
    CHOICE = "choice"
    TEXT = "text"


_PASCALS_PER_INWC: Final = 249.089
"""Pa in 1 in wc of water at 4 C (definition, memory high)."""

_LEAST_PASCALS: Final = 5.0
"""A smaller figure is more likely a slipped decimal point than pascals (judgement)."""


@dataclass(frozen=True, slots=True)
class Fact:
    """One row of the catalogue.

    Attributes:
        key: Dotted key, `[]` where a list index stands.
        meaning: What it is, one sentence for a person.
        quantity: Kind of thing; decides the scatter.
        unit: Unit as written to a person; empty for counts, shares and words.
        low: Smallest believable value; a smaller one is a mistake. None for words.
        high: Largest believable value. None for words.
        prior: What is believed before anyone is asked; None where the fact is absent
            until stated.
        choices: The words allowed, for a choice.
        givers: Who can give it, best first.
        place: Where it is given.
        source: Where the starting range comes from.
    """

    key: str
    meaning: str
    quantity: Quantity
    unit: str
    low: float | None
    high: float | None
    prior: Belief | None
    choices: tuple[str, ...]
    givers: tuple[Giver, ...]
    place: Place
    source: str

    @property
    def is_word(self) -> bool:
        """Whether the fact is held as a word, not a number."""
        return self.quantity in (Quantity.CHOICE, Quantity.TEXT)


_INDEX = re.compile(r"(?:\.|\[)(\d{1,2})\]?(?=\.|$)")


@lru_cache(maxsize=4096)
def pattern_of(key: str) -> str:
    """The catalogue key of a job's key.

    >>> pattern_of("supply.trunks.0.width_in")
    'supply.trunks[].width_in'
    """
    return _INDEX.sub("[]", key)


@cache
def catalogue() -> dict[str, Fact]:
    """Every fact by its catalogue key, in the order a person would read them."""
    from engine.job.catalogue import ROWS  # the rows need the classes above

    return {fact.key: fact for fact in ROWS}


def fact_for(key: str) -> Fact:
    """The catalogue row of a job's key.

    Raises:
        FactError: The catalogue has no such fact; names the nearest ones.
    """
    found = catalogue().get(pattern_of(key))
    if found is None:
        raise FactError(key, f"is no fact of the catalogue{_nearest(pattern_of(key))}")
    return found


def _nearest(pattern: str) -> str:
    from difflib import get_close_matches  # only on the way to a refusal

    near = get_close_matches(pattern, catalogue(), n=3, cutoff=0.6)
    return f"; did you mean {' or '.join(near)}?" if near else ""


def checked(key: str, belief: Belief) -> Belief:
    """The belief itself, if it is possible for this fact.

    Raises:
        FactError: Unknown key, a word for a number or the reverse, a word that is no
            choice of the fact, or a value outside its believable bounds.
    """
    fact = fact_for(key)
    match belief:
        case Known(value=value):
            _check_value(key, fact, value)
        case Between(low=low, high=high):
            if fact.is_word:
                raise FactError(key, "takes a word, not a range of numbers")
            _check_value(key, fact, low)
            _check_value(key, fact, high)
        case OneOf(weights=weights):
            for value, _ in weights:
                _check_value(key, fact, value)
    return belief


def _check_value(key: str, fact: Fact, value: Scalar) -> None:
    if isinstance(value, str):
        if not fact.is_word:
            raise FactError(key, f"takes a number{_in(fact.unit)}, not {value!r}")
        if fact.choices and value not in fact.choices:
            raise FactError(key, f"is one of {', '.join(fact.choices)}, not {value!r}")
        return
    if fact.is_word:
        raise FactError(key, f"takes a word, not the number {value:g}")
    if not isfinite(value):
        raise FactError(key, f"takes a finite number{_in(fact.unit)}")
    low, high = fact.low, fact.high
    if (low is not None and not value >= low) or (high is not None and not value <= high):
        raise FactError(
            key,
            f"{_figure(fact, value)} is outside what is believable, {_figure(fact, low)} to "
            f"{_figure(fact, high)} {fact.unit}".rstrip()
            + _as_pascals(fact, value),
        )


def _figure(fact: Fact, value: float | None) -> str:
    """A figure as people write it; a year has no comma."""
    return f"{value:,g}" if fact.unit else f"{value:g}"


def _as_pascals(fact: Fact, value: float) -> str:
    """What a pressure would be if it was read in pascals; empty where that isn't believable."""
    inwc = value / _PASCALS_PER_INWC
    if fact.quantity is not Quantity.STATIC or fact.low is None or fact.high is None:
        return ""
    if abs(value) < _LEAST_PASCALS or not fact.low <= inwc <= fact.high:
        return ""
    return f"; if it was read in pascals, it is {inwc:.2f} in. w.c."


def _in(unit: str) -> str:
    return f" in {unit}" if unit else ""
