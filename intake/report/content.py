"""What a report says, before it is Markdown, HTML or JSON: frozen, plain, already in words.

Text here is as it was typed; each format escapes it on its own.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from engine.job.job import Job
from engine.trade.limits import LIMITS, Limits
from engine.verdict import RemedySet, Verdict
from intake.interview.booking import Booking
from intake.report.answers import Stated, TypedAnswer, stated_facts
from intake.report.booking_card import BookingCard, booking_card
from intake.report.limits_used import limits_used, turned_limits
from intake.report.modes import mode_contents
from intake.report.pieces import ChangeSet, Line, ModeContent
from intake.telling.capacity import capacity_sentences
from intake.telling.cautions import Caution
from intake.telling.names import belief_words, fact_words, mode_words, thing_words, wanted_words
from intake.telling.numbers import hours, sure
from intake.telling.situation import cautions_of
from intake.telling.verdict import (
    DEFERS,
    assumed_value,
    headline,
)

__all__ = ["AIR_NOTE", "SURE_NOTE", "Content", "content_of"]

AIR_NOTE: Final = (
    "CFM here is actual CFM at the return side of the blower; speeds and their limits are meant so."
)
"""Said once in every report."""

SURE_NOTE: Final = (
    "How sure: thousands of houses that fit what was told were computed; the share of them that "
    "agrees is what is told."
)
"""What the odds in a report are."""

_TITLE: Final = "Can these ducts carry the new air?"
_EQUIPMENT: Final = (
    "equipment.kind",
    "equipment.cooling_tons",
    "equipment.stages",
    "equipment.heating_input_btuh",
    "equipment.heating_output_btuh",
    "equipment.rise_low_degf",
    "equipment.rise_high_degf",
    "equipment.strip_kw",
    "equipment.blower_kind",
)


@dataclass(frozen=True, slots=True)
class Content:
    """A whole report.

    Attributes:
        title: What the report is headed with.
        headline: The verdict in one sentence.
        equipment: What goes in.
        modes: Every mode, in the engine's order.
        capacity: The most these ducts carry quietly.
        sets: Sufficient changes, cheapest first.
        others: Changes that help but are in no set.
        assumed: Facts nobody stated, most influential first, with range and source.
        collect_next: What to find out next, and why.
        doubts: Contradictions among the readings, and what to look for.
        zone: What is said of the smallest zone alone.
        refused: Questions not answered, with the reason.
        cautions: Cautions that are on.
        limits: The limits used, with value and source.
        turned: Limits that the office has changed.
        answers: Every stated fact in normal form, with how it is known.
        typed: What was typed, as it was typed.
        booking: The dispatcher's card, if there is one.
        defers: Whom the report defers to.
        job: The job it is of.
        verdict: The verdict it tells.
    """

    title: str
    headline: str
    equipment: tuple[Line, ...]
    modes: tuple[ModeContent, ...]
    capacity: tuple[str, ...]
    sets: tuple[ChangeSet, ...]
    others: tuple[Line, ...]
    assumed: tuple[Line, ...]
    collect_next: tuple[Line, ...]
    doubts: tuple[Line, ...]
    zone: tuple[str, ...]
    refused: tuple[str, ...]
    cautions: tuple[Caution, ...]
    limits: tuple[Line, ...]
    turned: tuple[Line, ...]
    answers: tuple[Stated, ...]
    typed: tuple[TypedAnswer, ...]
    booking: BookingCard | None
    defers: str
    job: Job
    verdict: Verdict


def content_of(
    job: Job,
    verdict: Verdict,
    booking: Booking | None = None,
    said: str = "",
    title: str = "",
    answers: Sequence[TypedAnswer] = (),
    *,
    limits: Limits = LIMITS,
) -> Content:
    """Everything a report says of a job.

    Args:
        job: What is known.
        verdict: What the engine says of it.
        booking: The dispatcher's booking, if there is one.
        said: Everything that was typed, for cautions that words switch on.
        title: What the report is headed with; a plain question if empty.
        answers: The typed lines that still stand (`intake.report.answers.typed_answers`).
        limits: The limits the verdict was made with; those turned are told.
    """
    sets = _sets(verdict)
    used = {key for one in _remedy_sets(verdict) for key in one.remedies}
    return Content(
        title=title or _TITLE,
        headline=headline(verdict),
        equipment=tuple(
            Line(fact_words(key, job), belief_words(key, belief))
            for key in _EQUIPMENT
            if (belief := job.stated(key)) is not None
        ),
        modes=mode_contents(verdict, job),
        capacity=tuple(capacity_sentences(verdict, job)),
        sets=sets,
        others=tuple(
            Line(_as_label(one.words), one.buys, hours(one.effort_hours))
            for one in verdict.remedies
            if one.key not in used
        ),
        assumed=tuple(
            Line(thing_words(one.key, job), assumed_value(one), one.source)
            for one in verdict.assumed
        ),
        collect_next=tuple(
            Line(wanted_words(one.key, job), one.why) for one in verdict.collect_next
        ),
        doubts=tuple(
            Line(one.words, "", f"look for: {one.look_for}" if one.look_for else "")
            for one in verdict.doubts
        ),
        zone=() if verdict.smallest_zone is None else (verdict.smallest_zone.words,),
        refused=verdict.refused,
        cautions=cautions_of(job, verdict, said),
        limits=limits_used(verdict),
        turned=turned_limits(limits),
        answers=stated_facts(job),
        typed=tuple(answers),
        booking=None if booking is None else booking_card(booking),
        defers=DEFERS,
        job=job,
        verdict=verdict,
    )


def _as_label(words: str) -> str:
    """Words without the full stop, in front of a colon; "in." keeps its own."""
    return words if words.endswith("in.") else words.rstrip(".")


def _remedy_sets(verdict: Verdict) -> tuple[RemedySet, ...]:
    every = [] if verdict.changes is None else [verdict.changes]
    every += [one.changes for one in verdict.modes.values() if one.changes is not None]
    return tuple({one.remedies: one for one in reversed(every)}.values())[::-1]


def _sets(verdict: Verdict) -> tuple[ChangeSet, ...]:
    by_key = {one.key: one for one in verdict.remedies}
    return tuple(
        ChangeSet(
            purpose=_purpose(one, verdict),
            effort=hours(one.effort_hours),
            sure=sure(one.confidence),
            changes=tuple(
                Line(
                    _as_label(by_key[key].words),
                    by_key[key].buys,
                    hours(by_key[key].effort_hours),
                )
                for key in one.remedies
                if key in by_key
            ),
        )
        for one in _remedy_sets(verdict)
    )


def _purpose(changes: RemedySet, verdict: Verdict) -> str:
    if set(changes.modes) >= set(verdict.modes):
        return "Enough for every airflow"
    names = ", ".join(mode_words(one) for one in changes.modes)
    return f"Enough for {names}"
