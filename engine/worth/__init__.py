"""Which question is worth asking: how far each bundle of facts would lower the expected loss."""

from engine.worth.booking import (
    BookingStand,
    Visit,
    booking_stand_of,
    booking_worth_of,
)
from engine.worth.bundles import BUNDLES, Bundle, Shows
from engine.worth.person import CALLER, TECHNICIAN, Giving, Person
from engine.worth.ranking import Settling, StopReason, Worth, stop_reason, worth_of
from engine.worth.standing import may_stand

__all__ = [
    "BUNDLES",
    "CALLER",
    "TECHNICIAN",
    "BookingStand",
    "Bundle",
    "Giving",
    "Person",
    "Settling",
    "Shows",
    "StopReason",
    "Visit",
    "Worth",
    "booking_stand_of",
    "booking_worth_of",
    "may_stand",
    "stop_reason",
    "worth_of",
]
