"""Which question is put next: rules first, then by what it is worth, until nothing is."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from engine.job.facts import Place, catalogue, pattern_of
from intake.interview.booking import BOOKING_RULES, can_change
from intake.interview.dispatcher import DISPATCHER
from intake.interview.fold import State
from intake.interview.question import Context, Question
from intake.interview.technician import TECHNICIAN
from intake.interview.turns import Voice

if TYPE_CHECKING:  # the engine's numbers are loaded once something is weighed
    from engine.assessment import Assessment
    from intake.interview.weighing import Weighing

__all__ = [
    "Plan",
    "bank_of",
    "collectable",
    "context_of",
    "left_over",
    "place_of",
    "plan_of",
    "question_of",
    "weighed",
]


@dataclass(frozen=True, slots=True)
class Plan:
    """What is asked now.

    Attributes:
        question: The question to put; None if nothing is left that is worth it, or the script is
            stopped.
        weighing: What it was chosen by; None where it is asked by rule.
    """

    question: Question | None
    weighing: "Weighing | None" = None


def bank_of(voice: Voice | None) -> tuple[Question, ...]:
    """Every question of a voice, in order."""
    return DISPATCHER if voice is Voice.DISPATCHER else TECHNICIAN


def question_of(key: str) -> Question | None:
    """A question of either bank by its key."""
    for question in (*TECHNICIAN, *DISPATCHER):
        if question.key == key:
            return question
    return None


def context_of(
    state: State,
    wanted: Callable[[], frozenset[str]] = frozenset,
    assessed: "Callable[[], Assessment] | None" = None,
    undecided: Callable[[], bool] = lambda: False,
) -> Context:
    """What the questions may look at."""
    return Context(
        state.job,
        state.voice or Voice.TECHNICIAN,
        state.unsaid,
        state.answered,
        state.closed,
        state.lacks,
        wanted,
        assessed,
        undecided,
        state.beyond,
    )


def plan_of(state: State, context: Context) -> Plan:
    """The question to put now, and why."""
    if state.voice is None or state.stopped or state.doubt or state.finished:
        return Plan(None)
    if state.reopened:
        return Plan(question_of(state.reopened))
    if state.voice is Voice.DISPATCHER:
        return Plan(_of_the_call(state, context))
    if context.assessed is None:
        return Plan(next(_applying(context), None))
    by_rule = next((q for q in TECHNICIAN if not q.bundle and q.applies(context)), None)
    if by_rule is not None:  # before anything is judged
        return Plan(by_rule)
    open_questions = tuple(_applying(context))
    begun = _begun(state, open_questions)
    weighing = None if begun else weighed(state, context)
    if weighing is None:
        return Plan(begun)
    goes_on = context.beyond or (weighing.worth_asking and context.undecided())
    if weighing.stop is not None and not goes_on:
        return Plan(next((q for q in open_questions if q.closing), None), weighing)
    ranks = {worth.bundle.key: rank for rank, worth in enumerate(weighing.worths)}
    first = min(open_questions, key=lambda question: ranks.get(question.bundle, len(ranks)))
    return Plan(first, weighing)


def left_over(state: State, context: Context) -> bool:
    """Whether more could be asked after the end, worth asking or not."""
    going_on = replace(state, finished=False, beyond=True)
    return plan_of(going_on, replace(context, beyond=True)).question is not None


def weighed(state: State, context: Context) -> "Weighing | None":
    """What the technician's open questions are worth; None without an engine or questions."""
    open_questions = tuple(_applying(context))
    if not open_questions or context.assessed is None:
        return None
    # Imported here: weighing loads numpy, which the first questions don't need.
    from intake.interview.weighing import weigh

    settled = [question for question in TECHNICIAN if context.settled(question.key)]
    return weigh(context.assessed(), context, open_questions, settled, place_of(state))


def place_of(state: State) -> Place | None:
    """Where the person stands: where the last question that was put is answered."""
    asked = [question_of(key) for key in state.asked]
    return asked[-1].place if asked and asked[-1] is not None else None


def _applying(context: Context) -> Iterator[Question]:
    return (question for question in TECHNICIAN if question.applies(context))


def _begun(state: State, open_questions: tuple[Question, ...]) -> Question | None:
    """What is left of the bundle that was begun last, asked for or told by the way."""
    for event, voice in zip(reversed(state.standing), reversed(state.voices), strict=True):
        asked = question_of(event.question) if voice is state.voice else None
        if asked is not None and asked.bundle:
            for question in open_questions:
                if question.bundle == asked.bundle:
                    return question
    return None


def _of_the_call(state: State, context: Context) -> Question | None:
    """The next question of a call; of those about sizes, the one that may turn the booking most."""
    late = _minutes_spent(state) >= BOOKING_RULES.longest_call_minutes
    first: Question | None = None
    sizes: list[Question] = []
    for question in DISPATCHER:
        if not question.bundle and first is not None and not sizes:
            break
        if question.applies(context) and can_change(question.key, state.job, late=late):
            first = first or question
            if question.bundle:
                sizes.append(question)
    if first is None or not first.bundle or len(sizes) < 2 or context.assessed is None:
        return first
    # Imported here: weighing loads numpy, which the first questions don't need.
    from intake.interview.weighing import weigh_call

    ranks = weigh_call(context.assessed(), context, sizes)
    return min(sizes, key=lambda question: ranks.get(question.bundle, len(ranks)))


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
