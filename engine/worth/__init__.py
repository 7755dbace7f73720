"""Which question is worth asking: how far each bundle of facts would lower the expected loss."""

from engine.worth.bundles import BUNDLES, Bundle, Shows
from engine.worth.person import CALLER, TECHNICIAN, Giving, Person
from engine.worth.ranking import Settling, StopReason, Worth, stop_reason, worth_of

__all__ = [
    "BUNDLES",
    "CALLER",
    "TECHNICIAN",
    "Bundle",
    "Giving",
    "Person",
    "Settling",
    "Shows",
    "StopReason",
    "Worth",
    "stop_reason",
    "worth_of",
]
