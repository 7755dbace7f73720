"""Worth of a question on the phone: the cost of the wrong booking.

A call can't judge the ducts; it decides which visit is booked. Of what a caller can tell of (the
trunk, the openings, the filter, the branches), a house carries, is doubtful, or is over by so much
that an ordinary visit would be the wrong one. What no call reaches is looked at on every visit.
"""

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.assessment import Assessment
from engine.checks.raw import Raw
from engine.job.sample import Mask
from engine.verdict import Part
from engine.worth.bundles import BUNDLES, Bundle
from engine.worth.losses import ModeStake, Stakes
from engine.worth.person import CALLER, Person
from engine.worth.ranking import LOSS_PER_MINUTE, Worth, ranked

__all__ = [
    "BOOKING_LOSSES",
    "DECIDED",
    "BookingStand",
    "Visit",
    "booking_stand_of",
    "booking_worth_of",
]


class Visit(StrEnum):
    """What may be booked for the sake of the ducts."""

    ORDINARY = "ordinary_visit"
    SURVEY = "visit_and_duct_survey"
    PHOTOS = "photos_first"


BOOKING_LOSSES: Final[Mapping[Visit, tuple[float, float, float]]] = MappingProxyType(
    {
        Visit.ORDINARY: (0.0, 0.5, 2.0),
        Visit.SURVEY: (1.0, 0.5, 0.0),
        Visit.PHOTOS: (0.4, 0.5, 0.4),
    }
)
"""Loss of each booking where the house carries, is doubtful, or is far over.

In half days: a survey for nothing is one, an ordinary visit that must be repeated with other tools
is two; photos cost a day's wait and a second call. Source: judgement."""

DECIDED: Final = 0.05
"""Expected loss, over that of knowing, at which a booking is decided. Source: judgement."""

_FAR_OVER: Final = 4.0 / 3.0
"""Over a limit by a third: where the phone's hard flags begin (trunk 1,200 fpm against 900,
openings 100 sq in. a ton against 140). Source: common practice, no published source."""

_REACHED: Final = (
    Part.SUPPLY_TRUNK, Part.SUPPLY_BRANCHES, Part.RETURN_OPENINGS, Part.FILTER,
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class BookingStand:
    """Where a booking stands.

    Attributes:
        visit: The booking with the least expected loss.
        loss: What it is expected to cost, in half days.
        shares: Chance that the house carries, is doubtful, is far over.
        decided: Whether knowing more would save less than `DECIDED`.
    """

    visit: Visit
    loss: float
    shares: tuple[float, float, float]
    decided: bool


@dataclass(frozen=True, slots=True)
class _BookingStake(ModeStake):
    """The booking as the one thing at stake."""

    def free_and_barred(self, shares: Array) -> tuple[Array, Array]:
        """Least expected loss over the bookings; nothing is barred."""
        found = np.asarray((shares @ _table().T).min(axis=-1))
        return found, found


def booking_stand_of(assessment: Assessment) -> BookingStand:
    """What would be booked now, and whether that is decided."""
    shares = _truth(assessment).mean(axis=0)
    losses = _table() @ shares
    best = int(np.argmin(losses))
    known = float(_table().min(axis=0) @ shares)
    carries, doubtful, far = (float(share) for share in shares)
    decided = float(losses[best]) - known <= DECIDED
    return BookingStand(
        tuple(BOOKING_LOSSES)[best], float(losses[best]), (carries, doubtful, far), decided
    )


def booking_worth_of(
    assessment: Assessment,
    bundles: Collection[Bundle] = BUNDLES,
    person: Person = CALLER,
    *,
    loss_per_minute: float = LOSS_PER_MINUTE,
) -> tuple[Worth, ...]:
    """Bundles by what they would save of wrong bookings, the worthiest first.

    Args:
        assessment: The job put to every check.
        bundles: What may be asked.
        person: Who is asked.
        loss_per_minute: Price of a minute, in half days.

    Returns:
        As `engine.worth.worth_of`.
    """
    truth = _truth(assessment)
    stake = _BookingStake(
        mode=next(iter(assessment.modes)),
        truth=truth,
        shares=truth.mean(axis=0),
        missing=(),
        supported=True,
        deciding=(),
        hidden=(),
        hidden_share=0.0,
        findings=(),
    )
    stakes = Stakes((stake,), np.zeros((truth.shape[0], 0)), ())
    return ranked(
        assessment, stakes, bundles, person, loss_per_minute,
        settled=booking_stand_of(assessment).decided,
    )  # fmt: skip


def _table() -> Array:
    return np.array(list(BOOKING_LOSSES.values()))


def _truth(assessment: Assessment) -> Array:
    """In which samples the house carries, is doubtful, is far over: one-hot, (n, 3)."""
    samples = assessment.house.draws.samples
    over, far = np.zeros(samples, dtype=bool), np.zeros(samples, dtype=bool)
    for it in assessment.modes.values():
        for raw in it.raws:
            if raw.votes and raw.part in _REACHED:
                here = raw.judged.over[1:]
                over |= here
                far |= here & _is_far(raw)
    return np.stack([~over, over & ~far, far], axis=1).astype(np.float64)


def _is_far(raw: Raw) -> Mask:
    if raw.maximum is None:
        return np.zeros(raw.figure.size - 1, dtype=bool)
    limit = np.broadcast_to(np.asarray(raw.maximum), raw.figure.shape)[1:]
    figure = raw.figure[1:]
    return np.asarray(figure * _FAR_OVER < limit if raw.is_floor else figure > limit * _FAR_OVER)
