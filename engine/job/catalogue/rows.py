"""How a row of the catalogue is written: short names, and a function for each of two kinds."""

from typing import Final

from engine.job.belief import Belief, Between, How, OneOf
from engine.job.facts import Fact, Giver, Place, Quantity

__all__ = [
    "ATTIC",
    "DESK",
    "DP",
    "DR",
    "EQUIPMENT",
    "HP",
    "LIVING",
    "MD",
    "REGISTERS",
    "TM",
    "TRUNKS",
    "TT",
    "TX",
    "YES_NO",
    "C",
    "mixed",
    "number",
    "ranged",
    "word",
]

HP, DR, TT, TM = Giver.HOMEOWNER, Giver.RECORDS, Giver.TAPE, Giver.GAUGE
TX, DP, MD, C = Giver.THERMOMETER, Giver.PLATE, Giver.MAKER, Giver.COMPUTED
DESK, LIVING, EQUIPMENT = Place.DESK, Place.LIVING_SPACE, Place.EQUIPMENT
TRUNKS, REGISTERS, ATTIC = Place.TRUNKS, Place.REGISTERS, Place.ATTIC_CRAWL
YES_NO: Final = ("yes", "no")
_PRACTICE: Final = "practice"


def ranged(low: float, likely: float, high: float) -> Between:
    """A starting range: one house in ten below `low`, one above `high`."""
    return Between(low, likely, high, How.ASSUMED)


def mixed(**weights: float) -> OneOf:
    """A starting choice, each word with its weight."""
    return OneOf(tuple(weights.items()), How.ASSUMED)


def number(
    key: str,
    meaning: str,
    quantity: Quantity,
    unit: str,
    bounds: tuple[float, float],
    place: Place,
    givers: tuple[Giver, ...],
    prior: Belief | None = None,
    source: str = _PRACTICE,
) -> Fact:
    """A fact that is held as a number; bounds are what is believable at all."""
    low, high = bounds
    return Fact(key, meaning, quantity, unit, low, high, prior, (), givers, place, source)


def word(
    key: str,
    meaning: str,
    choices: tuple[str, ...],
    place: Place,
    givers: tuple[Giver, ...],
    prior: Belief | None = None,
    source: str = _PRACTICE,
) -> Fact:
    """A fact that is held as a word: one of `choices`, or free text without any."""
    quantity = Quantity.CHOICE if choices else Quantity.TEXT
    return Fact(key, meaning, quantity, "", None, None, prior, choices, givers, place, source)
