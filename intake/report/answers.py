"""What was answered: every stated fact in normal form, and the typed lines that still stand."""

from collections.abc import Iterable
from dataclasses import dataclass

from engine.job.belief import Belief, How, likely_value
from engine.job.facts import Quantity, fact_for
from engine.job.job import LISTS, Job
from intake.interview.events import Event
from intake.interview.fold import fold
from intake.interview.planner import question_of
from intake.telling.names import HOWS, belief_words, fact_words, wanted_words

__all__ = ["Stated", "TypedAnswer", "stated_facts", "typed_answers"]


@dataclass(frozen=True, slots=True)
class Stated:
    """One fact in normal form, with how it is known."""

    key: str
    what: str
    value: str
    how: str


@dataclass(frozen=True, slots=True)
class TypedAnswer:
    """One typed line: the question it was put to, and the words as typed."""

    question: str
    text: str


def stated_facts(job: Job) -> tuple[Stated, ...]:
    """Every fact somebody stated, in the order it was stated; lists stated empty are told too.

    A blower's tables and the maker's cooling rows are told by their number of rows.
    """
    facts = [
        Stated(key, fact_words(key, job), belief_words(key, belief), _how(key, belief))
        for key, belief in job.beliefs.items()
    ]
    empty = [
        Stated(name, wanted_words(name), "none in this house", "stated")
        for name in LISTS
        if job.length(name) == 0
    ]
    return (*facts, *empty, *_tables(job))


def _how(key: str, belief: Belief) -> str:
    """How a fact is known; nobody measures a word or a count."""
    if belief.how is not How.MEASURED:
        return HOWS[belief.how]
    if isinstance(likely_value(belief), str):
        return "seen on site"
    return "counted" if fact_for(key).quantity is Quantity.COUNT else HOWS[How.MEASURED]


def _tables(job: Job) -> Iterable[Stated]:
    for key, blower, whose in (
        ("equipment.blower_tables", job.blower, "the new blower"),
        ("old.blower_tables", job.old_blower, "the present blower"),
    ):
        for one in blower:
            rows = zip(one.table.static_inwc, one.table.airflow_cfm, strict=True)
            told = ", ".join(f"{flow:,.0f} CFM at {static:.2f}" for static, flow in rows)
            name = f"{whose} on “{one.table.setting}”, by external static in in. w.c."
            yield Stated(key, name, told, "maker's table")
    for row in job.cooling_rows:
        told = f"{row.total_btuh:,.0f} Btu/h, of it {row.sensible_btuh:,.0f} sensible"
        name = f"cooling capacity at {row.airflow_cfm:,.0f} CFM, {row.stage} stage"
        yield Stated("equipment.cooling_rows", name, told, "maker's table")


def typed_answers(events: Iterable[Event]) -> tuple[TypedAnswer, ...]:
    """The typed lines that still stand: answers and "don't know"s, without what was taken back."""
    standing = fold(events).standing
    return tuple(TypedAnswer(_asked(one.question), one.text) for one in standing)


def _asked(key: str) -> str:
    """What a question asks for, in the words of its echo."""
    question = question_of(key)
    return (question.label if question is not None else "") or key.replace("_", " ")
