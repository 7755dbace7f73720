"""The dispatcher's booking as labelled lines, the same for every format."""

from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from intake.interview.booking import Booking, Outcome

__all__ = ["OUTCOMES", "BookingCard", "CardLine", "booking_card"]

OUTCOMES: Final = MappingProxyType(
    {
        Outcome.ORDINARY: "ordinary replacement visit",
        Outcome.SURVEY: "replacement visit with a duct survey",
        Outcome.PHOTOS: "photos first, then book",
        Outcome.SAFETY: "safety or service call first",
    }
)
"""Each outcome in the words of a schedule."""


@dataclass(frozen=True, slots=True)
class CardLine:
    """One line of the card: its field, its label, and one or more texts."""

    name: str
    label: str
    texts: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class BookingCard:
    """The card: the outcome in words, and its lines in reading order; empty ones are left out."""

    booking: Booking
    told: str
    lines: tuple[CardLine, ...]

    @property
    def outcome(self) -> str:
        """The outcome's own word, for programs."""
        return self.booking.outcome.value


def booking_card(booking: Booking) -> BookingCard:
    """The card of a booking, every field that says something under its label."""
    flags = tuple(f"{one.words}{' (decides alone)' if one.hard else ''}" for one in booking.flags)
    lines = (
        CardLine("minutes", "Minutes to block", (f"{booking.minutes}",)),
        CardLine("decided", "What decided it", (booking.decided,)),
        CardLine("for_caller", "Say to the caller", (booking.for_caller,)),
        CardLine("for_board", "For the board", (booking.for_board,)),
        CardLine("flags", "Flags", flags),
        CardLine("bring", "Bring", booking.bring),
        CardLine("photos", "Photos owed, text to copy", booking.photos),
        CardLine("safety", "Safety answers", booking.safety),
        CardLine("measure_first", "Measure first", booking.measure_first),
        CardLine("unknown", "Nobody knew", booking.unknown),
    )
    told = tuple(line for line in lines if any(line.texts))
    return BookingCard(booking, OUTCOMES[booking.outcome], told)
