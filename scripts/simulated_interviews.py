"""Interviews of simulated people in simulated houses, one record for each, in every order.

Every order stops where every mode is settled or nothing left is worth asking; on the phone where
the booking is decided, nothing is worth asking, or seven minutes are over.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from functools import lru_cache
from typing import Any, Final

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")  # small matrices; threads only wait

import numpy as np

from engine.assessment import Assessment, assess
from engine.job.job import Job
from engine.job.modes import Mode
from engine.judge import judge
from engine.verdict import ModeStatus
from engine.worth import (
    BUNDLES,
    CALLER,
    TECHNICIAN,
    Person,
    Worth,
    booking_stand_of,
    booking_worth_of,
    may_stand,
)
from engine.worth.booking import BOOKING_LOSSES, DECIDED
from engine.worth.losses import Stakes
from engine.worth.ranking import LOSS_PER_MINUTE, ranked
from scripts.simulated_caller import ASKED_BY_PHONE, answer_by_phone
from scripts.simulated_technician import TrueHouse, bases_assessed, bases_shifted

__all__ = ["BANK", "DOZEN", "ORDERS", "PEOPLE", "PHONE_ORDERS", "of_house", "pool_of"]

_TARGETS: Final = tuple(f"target_{mode}" for mode in Mode)
BANK: Final = (
    *_TARGETS, "blower_table", "filter_rating", "blower_kind", "coil_drop", "trunks", "drop",
    "filter", "openings", "pressure_parts", "lengths", "fittings", "return_trunk", "step_down",
    "branches", "flex_slack", "elevation", "filter_drop", "loads", "blower_rating",
)  # fmt: skip
"""The order of the technician's bank of questions."""

DOZEN: Final = (
    *_TARGETS, "pressure_parts", "blower_table", "blower_kind", "openings", "filter", "trunks",
    "drop", "return_trunk", "coil_drop", "branches", "flex_slack", "lengths", "fittings",
)  # fmt: skip
"""An expert's dozen, in the order that he says moves a verdict most."""

ORDERS: Final = ("worth of asking", "the bank's order", "expert's dozen", "random order")
PHONE_ORDERS: Final = ("worth of asking", "the script's order", "random order")
PEOPLE: Final = ("exact", "honest", "shifted")
"""Technicians: exact answers; honest ones, misread and often not known; exact ones in stock that
differs from the prior."""

_BY_KEY: Final = {bundle.key: bundle for bundle in BUNDLES}
_MOST_QUESTIONS: Final = 30
_MOST_ON_THE_PHONE: Final = 7.0
_OF_THE_HOUSE: Final = ("supply.trunks", "return.drops", "return.grilles", "filters")

Choose = Callable[[Sequence[str], tuple[Worth, ...]], str | None]
Record = dict[str, Any]


def pool_of(modes: Sequence[Mode], left_out: Sequence[str] = ()) -> list[str]:
    """Bundles that may be asked of a job with these modes."""
    targets = {f"target_{mode}" for mode in modes}
    open_ = (key for key in BANK if key not in _TARGETS or key in targets)
    return [key for key in open_ if key not in left_out]


def of_house(
    number: int, *, houses: int, samples: int, seed: int, left_out: Sequence[str] = ()
) -> list[Record]:
    """Every interview in one house: every technician in every order, and the phone's."""
    found: list[Record] = []
    _judging.cache_clear()
    for person in PEOPLE:
        prior = _bases(person == "shifted", max(houses, 256), seed)[number % 4]
        house = TrueHouse(prior, 1 + number, seed, exact=person != "honest")
        found += _visits(house, number, person, samples, left_out)
        if person == "exact":
            found += _calls(house, number, samples, left_out)
    return found


@lru_cache(maxsize=2)
def _bases(shifted: bool, samples: int, seed: int) -> tuple[Assessment, ...]:
    return (bases_shifted if shifted else bases_assessed)(samples, seed)


def _visits(
    house: TrueHouse, number: int, person: str, samples: int, left_out: Sequence[str]
) -> list[Record]:
    open_modes = [mode for mode, it in house.prior.modes.items() if it.target.least_cfm is None]
    keep = pool_of(open_modes, left_out)
    full = _judged(full_information(house, keep), samples)
    wanted = full.statuses()
    rng = np.random.default_rng([house.seed, number])
    sequences = (None, BANK, DOZEN, [str(key) for key in rng.permutation(keep)])
    found = []
    for order, sequence in zip(ORDERS, sequences, strict=True):
        steps, minutes, asked = interview(house, sequence, samples, keep)
        at, said = steps[-1].assessment, steps[-1].statuses()
        modes = [
            {
                "mode": mode.value,
                "over_share": it.over_share,
                "is_over": bool(house.prior.modes[mode].over[number]),
                "full_is_over": full.assessment.modes[mode].over_share > 0.5,
                "said": said[mode].value,
                "full": wanted[mode].value,
            }
            for mode, it in at.modes.items()
        ]
        found.append(
            {"house": number, "person": person, "order": order, "questions": len(asked),
             "minutes": minutes, "asked": asked, "modes": modes,
             "steps": [[step.assessment.modes[mode].over_share for mode in at.modes]
                       for step in steps],
             "knows_house": any(at.job.length(name) is not None for name in _OF_THE_HOUSE)}
        )  # fmt: skip
    return found


class _Judged:
    """One job assessed, and said of it when that is first wanted."""

    def __init__(self, job: Job, samples: int) -> None:
        self.assessment = assess(job, samples=samples, seed=1)
        self.stakes = Stakes.of(self.assessment)
        self._said: dict[Mode, ModeStatus] | None = None
        self._may_stand: bool | None = None

    def may_stand(self) -> bool:
        """Whether the verdict may be left as it is, while more can be had."""
        if self._may_stand is None:
            at = self.assessment
            verdict = judge(at.job, samples=at.house.draws.samples, seed=1, assessment=at)
            self._may_stand = may_stand(at, verdict)
        return self._may_stand

    def statuses(self) -> dict[Mode, ModeStatus]:
        """By mode, when nothing more can be had; what can't be said as it is to be treated."""
        if self._said is None:
            at = self.assessment
            verdict = judge(
                at.job, samples=at.house.draws.samples, seed=1, collectable=(), assessment=at
            )
            self._said = {mode: it.treat_as or it.status for mode, it in verdict.modes.items()}
        return self._said


_JOBS: Final[dict[str, Job]] = {}


@lru_cache(maxsize=256)
def _judging(key: str, samples: int) -> _Judged:
    return _Judged(_JOBS.pop(key), samples)


def _judged(job: Job, samples: int) -> _Judged:
    """A job assessed; orders that come to the same job share it."""
    key = repr(job)
    _JOBS[key] = job
    return _judging(key, samples)


def interview(
    house: TrueHouse, order: Sequence[str] | None, samples: int, keep: Sequence[str]
) -> tuple[list[_Judged], float, list[str]]:
    """Ask until every mode is settled, nothing is worth it, or the order ends.

    Args:
        house: Who is asked, and where.
        order: Keys of bundles in order; None asks the worthiest.
        samples: For judging and planning.
        keep: Keys that may be asked.

    Returns:
        What was believed after every answer, the minutes, and what was asked.
    """
    job, person, minutes = house.prior.job, TECHNICIAN, 0.0
    left, asked, steps = list(keep), list[str](), list[_Judged]()
    while True:
        judged = _judged(job, samples)
        steps.append(judged)
        next_ = None if len(asked) >= _MOST_QUESTIONS else _next(judged, left, order, person)
        if next_ is None:
            return steps, minutes, asked
        minutes += next_.minutes
        key = next_.bundle.key
        asked.append(key)
        left.remove(key)
        told = house.answer(job, next_.bundle)
        job = job if told is None else told
        person = person.at(next_.bundle.place)


def _next(
    judged: _Judged, left: Sequence[str], order: Sequence[str] | None, person: Person
) -> Worth | None:
    """What is asked next; None where asking stops: nothing is worth it, or all is settled and said.

    In a given order it is enough to find one bundle that is worth asking to go on.
    """
    if judged.stakes.settled and judged.may_stand():
        return None
    one = None
    if order is not None:
        wanted = next((key for key in order if key in left), None)
        if wanted is None:
            return None
        (one,) = _weighed(judged, [wanted], person)
        if one.worth > 0.0:
            return one
    worths = _weighed(judged, left, person)
    together = 0.0 if judged.stakes.settled else max(it.worth_together for it in worths)
    if all(it.worth <= 0.0 for it in worths) and together <= 0.0:
        return None
    return one or worths[0]


def _weighed(judged: _Judged, keys: Sequence[str], person: Person) -> tuple[Worth, ...]:
    """As `engine.worth.worth_of`, with what is at stake found once for every order."""
    bundles = [_BY_KEY[key] for key in keys]
    return ranked(judged.assessment, judged.stakes, bundles, person, LOSS_PER_MINUTE, settled=False)


def by_worth(left: Sequence[str], worths: tuple[Worth, ...]) -> str | None:
    """The worthiest."""
    return worths[0].bundle.key if worths else None


def in_order(order: Sequence[str]) -> Choose:
    """The first of an order that is left."""

    def choose(left: Sequence[str], worths: tuple[Worth, ...]) -> str | None:
        offered = {one.bundle.key for one in worths}
        return next((key for key in order if key in left and key in offered), None)

    return choose


def full_information(house: TrueHouse, keep: Sequence[str]) -> Job:
    """Everything answered exactly."""
    exact = TrueHouse(house.prior, house.at, house.seed, exact=True)
    job = house.prior.job
    for key in keep:
        told = exact.answer(job, _BY_KEY[key])
        job = job if told is None else told
    return job


def _calls(house: TrueHouse, number: int, samples: int, left_out: Sequence[str]) -> list[Record]:
    """The dispatcher's calls about one house."""
    keep = pool_of(list(house.prior.modes))
    full = _judged(full_information(house, keep), samples).assessment
    true = np.asarray(booking_stand_of(full).shares)
    losses = {visit: float(np.asarray(row) @ true) for visit, row in BOOKING_LOSSES.items()}
    rng = np.random.default_rng([house.seed, number, 1])
    shuffled = [str(key) for key in rng.permutation(ASKED_BY_PHONE)]
    found = []
    for order, choose in zip(
        PHONE_ORDERS, (by_worth, in_order(ASKED_BY_PHONE), in_order(shuffled)), strict=True
    ):
        at, minutes, asked = _call(house, choose, samples, left_out)
        stand = booking_stand_of(at)
        found.append(
            {"house": number, "person": "caller", "order": order, "questions": len(asked),
             "minutes": minutes, "asked": asked, "visit": stand.visit.value,
             "as_full": losses[stand.visit] <= min(losses.values()) + DECIDED,
             "lost": losses[stand.visit] - min(losses.values())}
        )  # fmt: skip
    return found


def _call(
    house: TrueHouse, choose: Choose, samples: int, left_out: Sequence[str]
) -> tuple[Assessment, float, list[str]]:
    job, minutes = house.prior.job, 0.0
    left = [key for key in ASKED_BY_PHONE if key not in left_out]
    asked: list[str] = []
    while True:
        at = _judged(job, samples).assessment
        if booking_stand_of(at).decided:
            return at, minutes, asked
        worths = booking_worth_of(at, [_BY_KEY[key] for key in left], CALLER)
        worth_it = any(one.worth > 0.0 or one.worth_together > 0.0 for one in worths)
        key = choose(left, worths) if worth_it else None
        spent = next((one.minutes for one in worths if one.bundle.key == key), 0.0)
        if key is None or minutes + spent > _MOST_ON_THE_PHONE:
            return at, minutes, asked
        minutes += spent
        asked.append(key)
        left.remove(key)
        told = answer_by_phone(house, job, _BY_KEY[key])
        job = job if told is None else told
