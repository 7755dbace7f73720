"""How a fact is held: one value, a range, or a weighted choice, and how it came to be known."""

from dataclasses import dataclass
from enum import StrEnum
from math import isfinite

from engine.errors import EngineError

__all__ = ["Belief", "Between", "How", "Known", "OneOf", "Scalar", "likely_number", "likely_value"]

Scalar = float | str
"""A number in the fact's unit, or one of its words (yes and no are words)."""


class How(StrEnum):
    """Where a fact comes from, best first; sets its scatter and its bias."""

    MEASURED = "measured"
    PLATE = "plate"
    DOCUMENT = "document"
    PHOTO = "photo"
    PHONE = "phone"
    GUESSED = "guessed"
    ASSUMED = "assumed"


@dataclass(frozen=True, slots=True)
class Known:
    """One stated value; what is drawn around it follows from `how`.

    Attributes:
        value: The number in the fact's unit, or a word.
        how: The way it is known.
        hedged: The person said "about" or "I think": scatter is doubled.
    """

    value: Scalar
    how: How
    hedged: bool = False

    def __post_init__(self) -> None:
        """Refuse NaN and infinity."""
        if isinstance(self.value, float) and not isfinite(self.value):
            raise EngineError(f"a known value must be finite, not {self.value}")


@dataclass(frozen=True, slots=True)
class Between:
    """A range: one case in ten lies below `low`, one in ten above `high`."""

    low: float
    likely: float
    high: float
    how: How

    def __post_init__(self) -> None:
        """Refuse a range that is not finite and in order."""
        ordered = self.low <= self.likely <= self.high
        if not (ordered and isfinite(self.low) and isfinite(self.high)):
            raise EngineError(f"a range must run up: {self.low}, {self.likely}, {self.high}")


@dataclass(frozen=True, slots=True)
class OneOf:
    """A weighted choice; weights are positive and need not sum to one."""

    weights: tuple[tuple[Scalar, float], ...]
    how: How

    def __post_init__(self) -> None:
        """Refuse an empty choice and weights that are not positive numbers."""
        if not self.weights or not all(isfinite(w) and w > 0.0 for _, w in self.weights):
            raise EngineError("a choice needs at least one option, each with a positive weight")


Belief = Known | Between | OneOf


def likely_value(belief: Belief) -> Scalar:
    """The single value that stands for a belief: stated, middle of the range, or heaviest.

    >>> likely_value(OneOf((("one", 0.7), ("two", 0.3)), How.ASSUMED))
    'one'
    """
    match belief:
        case Known(value=value):
            return value
        case Between(likely=likely):
            return likely
        case OneOf(weights=weights):
            return max(weights, key=lambda pair: pair[1])[0]


def likely_number(belief: Belief) -> float:
    """`likely_value` of a belief that is held as a number.

    Raises:
        EngineError: The belief is held as a word.
    """
    value = likely_value(belief)
    if isinstance(value, str):
        raise EngineError(f"a number was wanted where the fact holds {value!r}")
    return value
