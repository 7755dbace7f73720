"""Which question is put next: the bank in its order, less what is settled, implied or impossible."""

from collections.abc import Callable
from dataclasses import replace

from engine.job.facts import catalogue, pattern_of
from intake.interview.booking import BOOKING_RULES, can_change
from intake.interview.dispatcher import DISPATCHER
from intake.interview.fold import State
from intake.interview.question import Context, Question
from intake.interview.technician import TECHNICIAN
from intake.interview.turns import Voice

__all__ = ["bank_of", "collectable", "context_of", "next_question", "question_of"]


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
    for question in bank_of(state.voice):
        if not question.applies(context):
            continue
        if state.voice is Voice.DISPATCHER and not can_change(
            question.key, state.job, state.unsaid, BOOKING_RULES
        ):
            continue
        return question
    return None


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
