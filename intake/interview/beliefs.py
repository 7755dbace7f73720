"""What an answer states, and how it comes to be known: by whom, how surely, read off what."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Final

from engine.job.belief import Belief, Between, How, Known, OneOf
from engine.job.facts import Giver, fact_for
from engine.job.job import BlowerSetting, CoolingRow
from intake.interview.turns import Voice
from intake.reading.result import Sure, Value

__all__ = ["Facts", "Knowing", "belief_of", "how_known", "range_of", "yes_or_no"]


@dataclass(frozen=True, slots=True)
class Facts:
    """What an answer states.

    Attributes:
        beliefs: By dotted key.
        lengths: Lists whose number of entries it states.
        forget: Keys or lists forgotten first.
        settles: Other questions that need not be put after it.
        blower: Blower settings; None if it says nothing of them.
        cooling_rows: Performance rows; None if it says nothing of them.
    """

    beliefs: Mapping[str, Belief] = field(default_factory=dict)
    lengths: Mapping[str, int] = field(default_factory=dict)
    forget: tuple[str, ...] = ()
    settles: tuple[str, ...] = ()
    blower: tuple[BlowerSetting, ...] | None = None
    cooling_rows: tuple[CoolingRow, ...] | None = None

    @property
    def empty(self) -> bool:
        """Whether it states nothing at all."""
        stated = self.beliefs or self.lengths or self.settles or self.blower or self.cooling_rows
        return not stated


@dataclass(frozen=True, slots=True)
class Knowing:
    """How what is said is known: who says it, and how sure they are."""

    voice: Voice
    sure: Sure = Sure.PLAIN

    @property
    def hedged(self) -> bool:
        """Whether the person said "about" or "I think"."""
        return self.sure is Sure.HEDGED


_DESK_GIVERS: Final = (Giver.MAKER, Giver.RECORDS)


def how_known(key: str, knowing: Knowing) -> How:
    """How a stated fact is known.

    A technician measures, except what comes from the maker's page, the records or the plate;
    whoever is on the phone says it by phone, unless it was read off a plate.
    """
    if knowing.sure is Sure.GUESSED:
        return How.GUESSED
    if knowing.sure is Sure.PLATE:
        return How.PLATE
    if knowing.voice is Voice.DISPATCHER:
        return How.PHONE
    if knowing.sure is Sure.MEASURED:
        return How.MEASURED
    givers = fact_for(key).givers
    if givers and givers[0] is Giver.PLATE:
        return How.PLATE
    if any(giver in _DESK_GIVERS for giver in givers):
        return How.DOCUMENT
    return How.MEASURED


def belief_of(key: str, value: Value, knowing: Knowing) -> Belief:
    """A plain value as a belief; yes and no are words."""
    how = how_known(key, knowing)
    if isinstance(value, bool):
        return Known("yes" if value else "no", how, knowing.hedged)
    if isinstance(value, int | float):
        return Known(float(value), how, knowing.hedged)
    return Known(str(value), how, knowing.hedged)


def range_of(key: str, low: float, high: float, knowing: Knowing) -> Belief:
    """A range that a person gave, as a belief."""
    low, high = min(low, high), max(low, high)
    return Between(low, (low + high) / 2.0, high, how_known(key, knowing))


_HEDGED_YES: Final = 0.8
"""Weight of a hedged yes. Source: common practice, no published source."""


def yes_or_no(key: str, yes: bool, knowing: Knowing) -> Belief:
    """A yes or a no; a hedged one leaves room for the other."""
    how = how_known(key, knowing)
    if not knowing.hedged:
        return Known("yes" if yes else "no", how)
    said, other = ("yes", "no") if yes else ("no", "yes")
    return OneOf(((said, _HEDGED_YES), (other, 1.0 - _HEDGED_YES)), how)
