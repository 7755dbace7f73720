"""A reading of an answer as facts: beliefs by dotted key."""

from engine.job.belief import Belief
from engine.job.job import Job
from intake.interview.beliefs import Facts, Knowing, belief_of, range_of, yes_or_no
from intake.interview.lists import list_facts
from intake.interview.question import Question
from intake.reading.result import Accepted, Sure, Values

__all__ = ["facts_from_answers"]


def facts_from_answers(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """What a reading states about the house.

    Args:
        question: The question it answers; tells which facts its values fill.
        reading: What was read, with how sure and measured where.
        knowing: Who says it.
        job: What is known so far; an answer to a list adds to or replaces its entries.

    Raises:
        FactError: A value that no house has; the caller tells the person.
    """
    knowing = Knowing(knowing.voice, _surest(reading))
    if question.section:
        return list_facts(question, reading, knowing, job)
    beliefs: dict[str, Belief] = {}
    for name, key in question.fills:
        found = _filled(name, key, reading.values, knowing)
        if found is not None and key not in beliefs:
            beliefs[key] = found
    return Facts(beliefs)


def _surest(reading: Accepted) -> Sure:
    unsure = reading.values.get("sure") is False and reading.sure is Sure.PLAIN
    return Sure.HEDGED if unsure else reading.sure


def _filled(name: str, key: str, values: Values, knowing: Knowing) -> Belief | None:
    low, high = values.get(f"{name}_low"), values.get(f"{name}_high")
    if isinstance(low, int | float) and isinstance(high, int | float):
        return range_of(key, float(low), float(high), knowing)
    value = values.get(name)
    if value is None or isinstance(value, list | dict):
        return None
    if name == "yes" and knowing.hedged:
        return yes_or_no(key, bool(value), knowing)
    return belief_of(key, value, knowing)
