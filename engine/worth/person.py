"""The person who is asked: what they can give, how surely, and where they stand."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from types import MappingProxyType
from typing import Final

from engine.job.belief import How
from engine.job.facts import Giver, Place

__all__ = ["CALLER", "TECHNICIAN", "Giving", "Person", "moving_minutes"]


@dataclass(frozen=True, slots=True)
class Giving:
    """What can be had of one kind.

    Attributes:
        chance: That asking brings an answer, 0 to 1.
        how: How the answer will be known, which sets its scatter.
    """

    chance: float
    how: How


@dataclass(frozen=True, slots=True)
class Person:
    """Who is asked.

    Attributes:
        gives: By kind of giver; a kind that is missing can't be had (no gauge in the bag).
        place: Where the person stands; None counts no moving.
        closed: Places that can't be reached today.
        unsaid: Keys of bundles that were asked and not known.
    """

    gives: Mapping[Giver, Giving]
    place: Place | None = None
    closed: frozenset[Place] = field(default_factory=frozenset)
    unsaid: frozenset[str] = field(default_factory=frozenset)

    def giving(self, givers: tuple[Giver, ...]) -> Giving | None:
        """The best way this person has of giving what one of these can give; None without any."""
        found = [self.gives[giver] for giver in givers if giver in self.gives]
        return max(found, key=lambda one: one.chance) if found else None

    def without(self, *givers: Giver) -> "Person":
        """The same person with an empty place in the bag."""
        kept = {giver: one for giver, one in self.gives.items() if giver not in givers}
        return replace(self, gives=MappingProxyType(kept))

    def at(self, place: Place) -> "Person":
        """The same person standing somewhere else."""
        return replace(self, place=place)

    def not_knowing(self, bundle: str) -> "Person":
        """The same person, who was asked for a bundle and doesn't know."""
        return replace(self, unsaid=self.unsaid | {bundle})


TECHNICIAN: Final = Person(
    MappingProxyType(
        {
            Giver.TAPE: Giving(0.95, How.MEASURED),
            Giver.GAUGE: Giving(0.85, How.MEASURED),
            Giver.THERMOMETER: Giving(0.80, How.MEASURED),
            Giver.PLATE: Giving(0.95, How.PLATE),
            Giver.MAKER: Giving(0.80, How.DOCUMENT),
            Giver.RECORDS: Giving(0.50, How.DOCUMENT),
        }
    )
)
"""Somebody in the house with a full bag. Source of the chances: common practice, no published
source."""

CALLER: Final = Person(
    MappingProxyType(
        {
            Giver.HOMEOWNER: Giving(0.60, How.PHONE),
            Giver.PLATE: Giving(0.60, How.PHOTO),
            Giver.RECORDS: Giving(0.40, How.DOCUMENT),
        }
    )
)
"""Somebody on the phone who can read a label and hold a tape to a grille. Source of the chances:
common practice, no published source."""

_WALKING: Final[Mapping[Place, float]] = MappingProxyType(
    {
        Place.DESK: 0.0,
        Place.LIVING_SPACE: 1.0,
        Place.EQUIPMENT: 1.0,
        Place.TRUNKS: 1.0,
        Place.REGISTERS: 2.0,
        Place.ATTIC_CRAWL: 5.0,
    }
)
"""Minutes to get to a place from another one; the maker's pages are in the hand. Source: common
practice, no published source."""

_NEXT_DOOR: Final = 0.3
"""Minutes between the equipment and the trunks that leave it."""


def moving_minutes(person: Person, place: Place) -> float:
    """Minutes until the person stands there."""
    if person.place is None or person.place is place:
        return 0.0
    if {person.place, place} == {Place.EQUIPMENT, Place.TRUNKS}:
        return _NEXT_DOOR
    return _WALKING[place]
