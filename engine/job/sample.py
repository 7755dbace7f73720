"""A house in numbers: what is believed of it, as arrays over possible houses.

Every array is (n + 1,): place 0 is the central house, which holds the likely values, places 1 to n
are samples. Whatever is computed from these arrays is a figure and its spread at once.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, TypeVar

import numpy as np
from numpy.typing import NDArray

from engine.arrays import Array, Floats
from engine.errors import FactError
from engine.job.belief import Belief, Between, How, Known, OneOf, Scalar, likely_value
from engine.job.draws import Draws, skewed
from engine.job.facts import Fact, Quantity, catalogue, fact_for, pattern_of
from engine.job.job import Job
from engine.job.knowing import scatter_of

__all__ = ["Drawn", "House", "Mask", "draw"]

Mask = NDArray[np.bool_]
T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Drawn:
    """One quantity over the central house and the samples.

    Attributes:
        key: The fact, or a name of ours where no fact stands behind it.
        values: (n + 1,); for words the place in `words`.
        ranks: What was drawn, 0 to 1, (n,); None where nothing was.
        words: The words that `values` counts through; empty for numbers.
        stated: Whether somebody stated it.
        fact: The fact or list to ask for, to learn it; empty where none would tell.
    """

    key: str
    values: Array
    ranks: Array | None
    words: tuple[str, ...] = ()
    stated: bool = True
    fact: str = ""


class House:
    """A job's beliefs as arrays; draws each fact when it is first asked for.

    Attributes:
        job: What is known.
        draws: Where randomness comes from.
        drawn: Every quantity drawn so far, by key.
        as_found: The house before the changes that this job makes; None if it makes none. What
            nobody spoke of is believed of it.
    """

    def __init__(
        self, job: Job, samples: int, seed: int = 0, as_found: "House | None" = None
    ) -> None:
        """Hold the job; nothing is drawn yet."""
        self.job = job
        self.as_found = as_found
        self.draws = Draws(samples, seed)
        self.drawn: dict[str, Drawn] = {}
        self._made: dict[str, Any] = {}

    def once(self, name: str, make: Callable[[], T]) -> T:
        """What `make` gives, made when it is first asked for under this name."""
        if name not in self._made:
            self._made[name] = make()
        found: T = self._made[name]
        return found

    @property
    def members(self) -> int:
        """Length of every array: the samples and the central house."""
        return self.draws.samples + 1

    def full(self, value: float) -> Array:
        """The same value everywhere."""
        return np.full(self.members, value)

    def is_stated(self, key: str) -> bool:
        """Whether somebody stated this fact."""
        return self.job.is_known(key)

    def number(self, key: str) -> Array:
        """A fact that is a number: as stated, else by the catalogue's starting range.

        Raises:
            FactError: Nobody stated it and the catalogue has no starting range.
        """
        if key in self.drawn:
            return self.drawn[key].values
        stated = self.job.stated(key)
        belief = fact_for(key).prior if stated is None else stated
        if belief is None:
            raise FactError(key, "is needed here but nobody stated it")
        return self._draw_number(key, belief, stated=self.is_stated(key))

    def stated_number(self, key: str) -> Array | None:
        """A fact that is a number, if somebody stated it."""
        return self.number(key) if key in self.job.beliefs else None

    def assumed(
        self, key: str, low: Floats, likely: Floats, high: Floats, *, fact: str | None = None
    ) -> Array:
        """A fact nobody stated, by a range that depends on other facts.

        Args:
            key: The fact or a name of ours.
            low: One in ten is below; scalar or (n + 1,).
            likely: The median; scalar or (n + 1,).
            high: One in ten is above; scalar or (n + 1,).
            fact: What to ask for to learn it; the key itself where it is a fact.
        """
        if key in self.drawn:
            return self.drawn[key].values
        normals = self.draws.normals(key)
        values = skewed(np.concatenate([[0.0], normals]), low, likely, high)
        values = self._bounded(key, values)
        ranks = self.draws.ranks(key)
        self.drawn[key] = Drawn(key, values, ranks, stated=False, fact=_fact(key, fact))
        return values

    def stated_or(self, key: str, low: Floats, likely: Floats, high: Floats) -> Array:
        """A fact as stated, else by a range that depends on other facts."""
        stated = self.stated_number(key)
        return self.assumed(key, low, likely, high) if stated is None else stated

    def word(
        self, key: str, prior: Mapping[str, float] | None = None, *, fact: str | None = None
    ) -> Drawn:
        """A fact that is a word, as places in `Drawn.words`.

        Args:
            key: The fact, or a name of ours with a prior.
            prior: Weights to use instead of the catalogue's where nobody stated it.
            fact: What to ask for to learn it; the key itself where it is a fact.

        Raises:
            FactError: Nobody stated it and there are no weights.
        """
        if key in self.drawn:
            return self.drawn[key]
        belief = self.job.stated(key)
        stated = self.is_stated(key)
        if belief is None and prior is not None:
            belief = OneOf(tuple(prior.items()), How.ASSUMED)
        if belief is None:
            belief = fact_for(key).prior
        if belief is None:
            raise FactError(key, "is needed here but nobody stated it")
        options, weights = _options(belief)
        words = tuple(str(option) for option in options)
        values = np.zeros(self.members)
        values[0] = words.index(str(likely_value(belief)))
        ranks = None
        if len(words) > 1:
            ranks = self.draws.ranks(key)
            edges = np.cumsum(weights)[:-1] / np.sum(weights)
            values[1:] = np.searchsorted(edges, ranks, side="right")
        self.drawn[key] = Drawn(key, values, ranks, words, stated, _fact(key, fact))
        return self.drawn[key]

    def is_word(
        self,
        key: str,
        *wanted: str,
        prior: Mapping[str, float] | None = None,
        fact: str | None = None,
    ) -> Mask:
        """In which members a fact is one of these words, (n + 1,)."""
        drawn = self.word(key, prior, fact=fact)
        places = [drawn.words.index(word) for word in wanted if word in drawn.words]
        return np.asarray(np.isin(drawn.values, places))

    def happens(
        self, name: str, chance: float, *, in_central: bool = False, fact: str = ""
    ) -> Mask:
        """A yes or no that no fact stands for: true in this share of the samples."""
        if name not in self.drawn:
            ranks = self.draws.ranks(name)
            values = np.concatenate([[float(in_central)], (ranks < chance).astype(np.float64)])
            self.drawn[name] = Drawn(name, values, ranks, stated=False, fact=fact)
        return np.asarray(self.drawn[name].values > 0.5)

    def _draw_number(self, key: str, belief: Belief, *, stated: bool) -> Array:
        fact = fact_for(key)
        match belief:
            case Known():
                drawn = self._draw_known(key, fact, belief)
            case Between(low=low, likely=likely, high=high):
                normals = np.concatenate([[0.0], self.draws.normals(key)])
                ranks = self.draws.ranks(key) if high > low else None
                drawn = Drawn(key, skewed(normals, low, likely, high), ranks)
            case OneOf():
                drawn = self._draw_one_of(key, belief)
        values = self._bounded(key, drawn.values)
        if fact.quantity is Quantity.COUNT:
            values = np.round(values)
        self.drawn[key] = Drawn(key, values, drawn.ranks, stated=stated, fact=key)
        return values

    def _draw_known(self, key: str, fact: Fact, belief: Known) -> Drawn:
        value = _as_number(key, belief.value)
        scatter = scatter_of(fact.quantity, belief.how, hedged=belief.hedged)
        sigma = scatter.sigma(value, hedged=belief.hedged)
        if sigma == 0.0:
            return Drawn(key, self.full(value), None)
        normals = np.concatenate([[0.0], self.draws.normals(key)])
        return Drawn(key, value + sigma * normals, self.draws.ranks(key))

    def _draw_one_of(self, key: str, belief: OneOf) -> Drawn:
        options, weights = _options(belief)
        numbers = np.array([_as_number(key, option) for option in options])
        ranks = self.draws.ranks(key)
        edges = np.cumsum(weights)[:-1] / np.sum(weights)
        values = np.empty(self.members)
        values[0] = _as_number(key, likely_value(belief))
        values[1:] = numbers[np.searchsorted(edges, ranks, side="right")]
        return Drawn(key, values, ranks)

    def _bounded(self, key: str, values: Array) -> Array:
        low, high = _bounds(key)
        return np.clip(values, low, high)


def draw(job: Job, samples: int, seed: int = 0, *, as_found: Job | None = None) -> House:
    """A house of one central member and n samples.

    Args:
        job: What is known.
        samples: n, at least 1.
        seed: The same job, samples and seed give the same house.
        as_found: The job that this one changes, if it is one with changes made.
    """
    found = None if as_found is None else House(as_found, samples, seed)
    return House(job, samples, seed, found)


def _fact(key: str, fact: str | None) -> str:
    if fact is not None:
        return fact
    return key if pattern_of(key) in catalogue() else ""


def _bounds(key: str) -> tuple[float, float]:
    fact = catalogue().get(pattern_of(key))  # None for a name of ours, which has no bounds
    low = -np.inf if fact is None or fact.low is None else fact.low
    high = np.inf if fact is None or fact.high is None else fact.high
    return low, high


def _options(belief: Belief) -> tuple[tuple[Scalar, ...], Array]:
    if isinstance(belief, OneOf):
        return tuple(v for v, _ in belief.weights), np.array([w for _, w in belief.weights])
    return (likely_value(belief),), np.ones(1)


def _as_number(key: str, value: Scalar) -> float:
    if isinstance(value, str):
        raise FactError(key, f"takes a number, not {value!r}")
    return float(value)
