"""What a sign of danger can be: its kind, and whether it is there."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

__all__ = ["RedFlag", "RedFlagKind", "RedFlagState"]


class RedFlagKind(StrEnum):
    """What the danger is, the gravest first."""

    GAS = "gas"
    CARBON_MONOXIDE = "carbon_monoxide"
    BURNING = "burning"
    SHOCK = "shock"
    """A cabinet, duct or wire that gives a shock."""
    WATER_ELECTRIC = "water_electric"
    FLAME = "flame"
    """Soot, yellow or rolled-out flame, exhaust in the room, a parted vent pipe, a cracked heat
    exchanger."""
    CO_READING = "co_reading"
    """Carbon monoxide measured in room air, from 9 ppm up."""
    NO_HEAT_VULNERABLE = "no_heat_vulnerable"
    NO_COOLING_VULNERABLE = "no_cooling_vulnerable"
    UNNAMED = "unnamed"
    """A danger of which nobody has said what it is."""
    ODD_SMELL = "odd_smell"
    """A smell of which nobody has said what it's like; never more than unclear."""
    LOW_BATTERY_CHIRP = "low_battery_chirp"


class RedFlagState(StrEnum):
    """Whether the danger is there."""

    PRESENT = "present"
    NEGATED = "negated"
    UNCLEAR = "unclear"


@dataclass(frozen=True, slots=True)
class RedFlag:
    """A danger that a text speaks of.

    Attributes:
        kind: What the danger is.
        state: There now, plainly denied, or to be asked.
        words: The clause that speaks of it, in the reader's own form.
    """

    kind: RedFlagKind
    state: RedFlagState
    words: str

    @property
    def stops(self) -> bool:
        """Whether every question ends here; a battery's chirp is told and doesn't stop."""
        return self.state is RedFlagState.PRESENT and self.kind is not RedFlagKind.LOW_BATTERY_CHIRP
