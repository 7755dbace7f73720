"""`trunktalk facts`: every fact a job may hold."""

import json
from collections.abc import Iterator
from typing import Any

from engine.job.belief import Belief, Between, Known, OneOf
from engine.job.facts import Fact, Quantity, catalogue
from intake.commands.told import ToldError

__all__ = ["facts_json", "facts_text"]


def facts_text(words: tuple[str, ...] = ()) -> str:
    """The facts whose key or meaning has all of these words, for a person.

    Raises:
        ToldError: There is none.
    """
    return "\n\n".join("\n".join(_lines(fact)) for fact in _chosen(words)) + "\n"


def facts_json(words: tuple[str, ...] = ()) -> str:
    """The same as a JSON list of objects.

    Raises:
        ToldError: There is none.
    """
    return json.dumps([_mapping(fact) for fact in _chosen(words)], indent=2, allow_nan=False) + "\n"


def _chosen(words: tuple[str, ...]) -> list[Fact]:
    wanted = [word.casefold() for word in words]
    found = [
        fact
        for fact in catalogue().values()
        if all(word in f"{fact.key} {fact.meaning}".casefold() for word in wanted)
    ]
    if not found:
        raise ToldError(f"No fact has {' '.join(words)!r} in its name or meaning.")
    return found


def _lines(fact: Fact) -> Iterator[str]:
    yield f"{fact.key}  [{fact.unit}]" if fact.unit else fact.key
    yield f"  {fact.meaning}"
    if fact.choices:
        yield f"  one of: {', '.join(fact.choices)}"
    elif fact.low is not None and fact.high is not None:
        low, high = _number(fact.low, fact), _number(fact.high, fact)
        yield f"  believable: {low} to {high} {fact.unit}".rstrip()
    if fact.prior is not None:
        yield f"  taken until somebody says: {_range(fact.prior, fact)} ({fact.source})"
    givers = ", ".join(giver.value for giver in fact.givers)
    yield f"  who can give it: {givers}; where: {fact.place.value}"


def _range(prior: Belief, fact: Fact) -> str:
    match prior:
        case Known(value=value):
            return f"{_word(value, fact)} {fact.unit}".rstrip()
        case Between(low=low, likely=likely, high=high):
            ends = f"{_number(low, fact)} to {_number(high, fact)}"
            return f"{ends}, likeliest {_number(likely, fact)} {fact.unit}".rstrip()
        case OneOf(weights=weights):
            total = sum(weight for _, weight in weights)
            ordered = sorted(weights, key=lambda pair: -pair[1])
            return ", ".join(
                f"{_word(value, fact)} {weight / total:.0%}" for value, weight in ordered
            )


def _mapping(fact: Fact) -> dict[str, Any]:
    return {
        "key": fact.key,
        "meaning": fact.meaning,
        "quantity": fact.quantity.value,
        "unit": fact.unit,
        "low": fact.low,
        "high": fact.high,
        "choices": list(fact.choices),
        "starting_range": None if fact.prior is None else _prior(fact.prior),
        "givers": [giver.value for giver in fact.givers],
        "place": fact.place.value,
        "source": fact.source,
    }


def _prior(prior: Belief) -> dict[str, Any]:
    match prior:
        case Known(value=value):
            return {"value": value}
        case Between(low=low, likely=likely, high=high):
            return {"low": low, "likely": likely, "high": high}
        case OneOf(weights=weights):
            return {"one_of": {str(value): weight for value, weight in weights}}


def _word(value: float | str, fact: Fact) -> str:
    return value if isinstance(value, str) else _number(value, fact)


def _number(value: float, fact: Fact) -> str:
    return f"{value:.0f}" if fact.quantity is Quantity.YEAR else f"{value:,.10g}"
