"""A reading of an answer as facts: beliefs by dotted key."""

from typing import Final

from engine.job.belief import Belief, likely_value
from engine.job.job import Job
from intake.interview.beliefs import Facts, Knowing, belief_of, range_of, yes_or_no
from intake.interview.lists import list_facts
from intake.interview.question import Question
from intake.reading.result import Accepted, Sure, Values

__all__ = ["BURNER_STAGED", "NO_COOLING", "facts_from_answers"]

NO_COOLING: Final = "new_no_cooling"
"""What is settled once somebody says that the new equipment only heats."""


BURNER_STAGED: Final = "burner_staged"
"""What is settled once somebody says that the burner has stages of its own."""


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
    place = beliefs.get("filters.0.place")
    if place is not None:  # filters told together sit alike
        beliefs |= {f"{entry}.place": place for entry in job.entries("filters")}
    if reading.values.get("cooling") is False:
        return _heats_only(beliefs)
    burner = reading.values.get("burner_stages")
    return Facts(beliefs, settles=(BURNER_STAGED,) if burner in ("two", "variable") else ())


def _heats_only(beliefs: dict[str, Belief]) -> Facts:
    """Equipment without cooling: its stages, if told, are the burner's."""
    staged = beliefs.pop("equipment.stages", None)
    burner = (BURNER_STAGED,) if staged is not None and not _is_single(staged) else ()
    forget = ("equipment.cooling_tons", "equipment.stages")
    return Facts(beliefs, forget=forget, settles=(NO_COOLING, "new_tons", *burner))


def _is_single(stages: Belief) -> bool:
    return likely_value(stages) == "single"


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
