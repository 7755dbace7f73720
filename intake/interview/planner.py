"""Which question is put next: the bank in order, less what is settled, implied or impossible."""

from collections.abc import Callable
from dataclasses import replace

from engine.job.facts import catalogue, pattern_of
from intake.interview.booking import BOOKING_RULES, can_change
from intake.interview.dispatcher import DISPATCHER
from intake.interview.fold import State
from intake.interview.question import Context, Question
from intake.interview.technician import TECHNICIAN
from intake.interview.turns import Voice

__all__ = [
    "bank_of",
    "collectable",
    "context_of",
    "next_question",
    "question_of",
    "still_open",
]


def bank_of(voice: Voice | None) -> tuple[Question, ...]:
    """Every question of a voice, in order."""
    return DISPATCHER if voice is Voice.DISPATCHER else TECHNICIAN


def question_of(key: str) -> Question | None:
    """A question of either bank by its key."""
    for question in (*TECHNICIAN, *DISPATCHER):
        if question.key == key:
            return question
    return None


def context_of(state: State, wanted: Callable[[], frozenset[str]] = frozenset) -> Context:
    """What the questions may look at."""
    return Context(
        state.job,
        state.voice or Voice.TECHNICIAN,
        state.unsaid,
        state.answered,
        state.closed,
        state.lacks,
        wanted,
    )


def next_question(state: State, context: Context) -> Question | None:
    """The question to put now; None if nothing is left, or the script is stopped."""
    if state.voice is None or state.stopped or state.doubt or state.finished:
        return None
    if state.reopened:
        return question_of(state.reopened)
    return still_open(state, context)


def still_open(state: State, context: Context) -> Question | None:
    """The first question of the bank that is neither settled, implied nor impossible."""
    calling = state.voice is Voice.DISPATCHER
    late = calling and _minutes_spent(state) >= BOOKING_RULES.longest_call_minutes
    for question in bank_of(state.voice):
        if not question.applies(context):
            continue
        if calling and not can_change(question.key, state.job, late=late):
            continue
        return question
    return None


def _minutes_spent(state: State) -> float:
    settled = state.answered | state.unsaid
    return sum(question.minutes for question in DISPATCHER if question.key in settled)


def collectable(state: State, context: Context) -> frozenset[str]:
    """Keys and lists that the questions still open could give; empty when all was asked."""
    if state.finished:
        return frozenset()
    everything = replace(context, wanted=lambda: frozenset(catalogue()))
    found: set[str] = set()
    for question in bank_of(state.voice):
        if question.applies(everything):
            found.update(question.facts)
            found.update(key for _, key in question.fills)
            if question.section:
                found.add(question.section)
    return frozenset({*found, *(pattern_of(key) for key in found)})
