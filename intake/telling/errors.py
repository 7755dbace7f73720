"""What the engine refused -> a sentence: what was understood, what is odd, what to do about it.

Written from the fields of the two errors that have them.
"""

from dataclasses import fields
from difflib import get_close_matches
from math import isnan

from engine.errors import EngineError, FactError, OutOfRangeError
from engine.job.facts import Fact, catalogue, fact_for, pattern_of
from engine.job.job import LISTS
from engine.trade.limits import Limits
from intake.telling.names import fact_words, number_words, value_words
from intake.telling.numbers import quantity

__all__ = ["error_sentence"]

_UNITS = {
    "cfm": "CFM",
    "fpm": "fpm",
    "inwc": "in wc",
    "ft": "ft",
    "in": "in",
    "ft2": "ft2",
    "in2": "in2",
    "degf": "F",
    "btuh": "Btu/h",
    "tons": "tons",
    "pct": "%",
    "share": "share",
    "fraction": "share",
}
"""Ends of names, and the unit they mean."""


def error_sentence(error: EngineError) -> str:
    """One or two sentences for the person whose data was refused.

    Args:
        error: What the engine raised; an error of another kind than the two with fields is told
            by its own message, which the engine writes without file names or code.

    Returns:
        Sentences naming the key (or the quantity) and what to do about it.
    """
    match error:
        case FactError():
            return _of_fact(error)
        case OutOfRangeError():
            return _of_range(error)
        case _:
            return f"That can't be computed: {str(error).rstrip('.')}. Check the last answer given."


def _of_fact(error: FactError) -> str:
    problem = error.problem.strip().rstrip(".")
    first = f"{error.key}{' ' if _reads_on(problem) else ': '}{problem}."
    pattern = pattern_of(error.key)
    if pattern in catalogue():
        return f"{first} {_wanted(error.key, fact_for(error.key))}"
    if error.key in LISTS:
        return f"{first} Give a list of entries, or an empty list if the house has none."
    if error.key.startswith("limits."):
        return f"{first} {_nearest_limits(error.key)}"
    return f"{first} `trunktalk facts` lists every name a job may hold."


def _nearest_limits(key: str) -> str:
    known = [field.name for field in fields(Limits)]
    wanted = key.removeprefix("limits.").split(".", 1)[0]
    near = get_close_matches(wanted, known, n=3, cutoff=0.3) or known
    return f"Limits that can be turned: {', '.join(near)}."


def _reads_on(problem: str) -> bool:
    return problem.split(" ", 1)[0] in {"is", "takes", "needs", "has", "must", "can't", "holds"}


def _wanted(key: str, fact: Fact) -> str:
    what = fact_words(key)
    if fact.choices:
        words = ", ".join(value_words(key, one) for one in fact.choices)
        return f"Wanted is {what}: one of {words}."
    if fact.is_word:
        return f"Wanted is {what}, in words."
    if fact.low is None or fact.high is None:
        return f"Wanted is {what}, as a number."
    low, high = number_words(fact, fact.low), number_words(fact, fact.high)
    return f"Wanted is {what}, from {low} to {high}; leave it out if nobody knows it."


def _of_range(error: OutOfRangeError) -> str:
    if pattern_of(error.name) in catalogue():
        fact = fact_for(error.name)
        got = "not a number" if isnan(error.value) else number_words(fact, error.value)
        return f"{error.name} is {got}. {_wanted(error.name, fact)}"
    name, unit = _name_and_unit(error.name)
    limits = (error.low, error.high)
    low, high = (quantity(one, unit) for one in limits)
    if isnan(error.value):
        got = "can't be computed"
    elif abs(error.value) == float("inf"):
        got = "comes out without bound"
    else:
        got = f"comes out as {quantity(error.value, unit, limits)}"
    return (
        f"The {name} ({error.name}) {got}, and what is known of it holds from {low} to {high}. "
        "Check the sizes and airflows it is made from."
    )


def _name_and_unit(name: str) -> tuple[str, str]:
    last = name.rsplit(".", 1)[-1]
    stem, _, end = last.rpartition("_")
    if stem and end in _UNITS:
        return stem.replace("_", " "), _UNITS[end]
    return last.replace("_", " "), ""
