"""What the open questions are worth: the bank's rows as the engine's bundles, and who is asked."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from functools import cache
from types import MappingProxyType
from typing import Final

from engine.assessment import Assessment
from engine.job.belief import How
from engine.job.facts import Giver, Place
from engine.worth import (
    BUNDLES,
    CALLER,
    TECHNICIAN,
    Bundle,
    Giving,
    Person,
    StopReason,
    Worth,
    booking_worth_of,
    stop_reason,
    worth_of,
)
from intake.interview.question import Context, Question

__all__ = ["Weighing", "weigh", "weigh_call"]

_BY_EYE = Giving(0.6, How.GUESSED)
"""Sizes without a tape (judgement)."""

_CALLERS_REACH: Final = {"trunks": 0.6, "trunk_ways": 0.9}
"""What is left of a caller's chance to tell of things out of the living space (judgement)."""


@dataclass(frozen=True, slots=True)
class Weighing:
    """What is worth asking.

    Attributes:
        worths: What may still be asked, the worthiest first.
        stop: Why nothing more need be asked; None while something is worth it.
    """

    worths: tuple[Worth, ...]
    stop: StopReason | None

    @property
    def worth_asking(self) -> bool:
        """Whether something is worth its minutes by itself."""
        return bool(self.worths) and self.worths[0].worth > 0.0


def weigh(
    assessment: Assessment,
    context: Context,
    open_questions: Iterable[Question],
    settled: Iterable[Question],
    place: Place | None,
) -> Weighing:
    """Weigh the bundles of the open questions for the person who is there.

    Args:
        assessment: The job put to every check.
        context: What the questions look at.
        open_questions: Rows of the bank that may be asked.
        settled: Rows that were answered or given up; their minutes are spent.
        place: Where the person stands.
    """
    wanted = {question.bundle for question in open_questions}
    spent = tuple(settled)
    bundles = [_left_of(_bundles()[key], spent) for key in sorted(wanted) if key in _bundles()]
    worths = worth_of(assessment, bundles, _person(context, place))
    return Weighing(worths, stop_reason(assessment, worths))


def weigh_call(
    assessment: Assessment, context: Context, open_questions: Iterable[Question]
) -> Mapping[str, int]:
    """Ranks of the bundles by what they would save of wrong bookings, the worthiest 0.

    Args:
        assessment: The job put to every check.
        context: What the questions look at.
        open_questions: Rows of the call about sizes that may be asked.
    """
    wanted = {question.bundle for question in open_questions}
    bundles = [
        replace(_bundles()[key], chance=_CALLERS_REACH.get(key, 1.0)) for key in sorted(wanted)
    ]
    closed = frozenset(place for place in Place if place.value in context.closed)
    worths = booking_worth_of(assessment, bundles, replace(CALLER, closed=closed))
    return {worth.bundle.key: rank for rank, worth in enumerate(worths)}


@cache
def _bundles() -> Mapping[str, Bundle]:
    return MappingProxyType({bundle.key: bundle for bundle in BUNDLES})


def _left_of(bundle: Bundle, spent: tuple[Question, ...]) -> Bundle:
    """The bundle with the minutes that are still to be spent on it."""
    gone = sum(q.minutes for q in spent if q.bundle and _is_part(q, bundle))
    return replace(bundle, minutes=max(bundle.minutes - gone, 0.2))


def _is_part(question: Question, bundle: Bundle) -> bool:
    if question.bundle == bundle.key:
        return True
    # the outer pair of pressures is read beside the inner pair, which it stands for as well
    return (question.bundle, bundle.key) == ("pressures", "pressure_parts")


def _person(context: Context, place: Place | None) -> Person:
    closed = frozenset(place for place in Place if place.value in context.closed)
    person = replace(TECHNICIAN, place=place, closed=closed)
    if context.is_no("site.has_gauge") or context.is_no("old.works"):
        person = person.without(Giver.GAUGE)
    if context.is_no("site.has_tape"):
        gives = {**person.gives, Giver.TAPE: _BY_EYE}
        person = replace(person, gives=MappingProxyType(gives))
    return person
