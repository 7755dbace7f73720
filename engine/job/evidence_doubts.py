"""Contradictions among readings and with the geometry: which reading, which slip, where to look."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from math import exp, sqrt
from types import MappingProxyType
from typing import Final

from engine.arrays import Array
from engine.job.evidence_fit import Fit, best_fit, chi_square_share_above
from engine.job.evidence_model import Model, Observation
from engine.job.evidence_readings import Tap
from engine.job.evidence_slips import repaired, typed_oddly
from engine.job.evidence_words import PLACES, SLIP_WORDS, look_for
from engine.trade.exponents import PressurePart
from engine.verdict import Doubt

__all__ = ["MISFIT_SHARE", "doubts_of", "without_quarrel"]

MISFIT_SHARE: Final = 0.003
"""A misfit that fewer sound houses than this would show is a contradiction.

Source: this project's choice; the readings aren't quite normal, so that about one sound house in
two hundred is doubted.
"""

_REPAIRED_SHARE: Final = 0.005
_COSTS: Final[Mapping[str, float]] = MappingProxyType(
    {"": 7.0, "sign": 3.0, "ports_swapped": 3.0, "pascal": 3.5, "decimal_point": 5.0}
)
"""How unusual each explanation is: twice the logarithm of its odds, this project's choice."""

_PART_COST: Final = 5.0
"""The same for a house whose part is far from what its sizes say: crushed, shut, dirty, leaking."""

_UNASKED: Final = 2.5
"""How much more than its cost a slip must lower a misfit that is no contradiction by itself.

Source: this project's choice, so that about one sound house in a hundred is accused.
"""

_MORE_PLACES: Final = 6.0
"""Twice the logarithm of the odds for a slipped point where a figure has more decimal places than
all others beside it (judgement)."""

_FEWER_PLACES: Final = 1.5
"""The same where it has fewer: zeros at the end are left out (judgement)."""

_LOOSE: Final = 4.0
_MOST_DOUBTS: Final = 3


@dataclass(frozen=True, slots=True)
class _Guess:
    """One explanation of a misfit."""

    keys: tuple[str, ...]
    slip: str
    chi_square: float
    degrees: int
    u: Array
    part: PressurePart | None = None
    shown: float = 0.0

    @property
    def cost(self) -> float:
        """How unusual it is, less what else speaks for it."""
        return (_PART_COST if self.part else _COSTS[self.slip]) - self.shown

    @property
    def score(self) -> float:
        """Misfit left, less what that many readings would miss by anyway, and what it costs."""
        return self.chi_square - self.degrees + self.cost

    @property
    def repairs(self) -> bool:
        """Whether what is left is no contradiction any more."""
        return chi_square_share_above(self.chi_square, self.degrees) >= _REPAIRED_SHARE


def doubts_of(model: Model, fit: Fit) -> tuple[tuple[Doubt, ...], tuple[str, ...]]:
    """Contradictions, and the keys of readings to do without.

    Args:
        model: The house and its readings.
        fit: Its best fit.

    Returns:
        At most three doubts, the first explains the most; then the keys that a usual slip
        explains or that quarrel with the other readings whatever the house is like. A reading
        that only quarrels with the geometry is doubted but kept: the gauge was in the house.
    """
    doubts: list[Doubt] = []
    left_out: tuple[str, ...] = ()
    while model.observations and len(doubts) < _MOST_DOUBTS:
        contradicts = fit.share_above < MISFIT_SHARE
        if not contradicts and fit.chi_square < 0.5 * _UNASKED:
            break  # no reading's removal can gain what a slip nobody asked about must
        odd = _without_one(model, fit)
        guesses = list(_slips(model, odd, fit, are_asked=contradicts))
        if contradicts:
            guesses.append(min(odd, key=lambda guess: guess.score))
        if not guesses:
            break
        guesses += _odd_houses(model, odd, fit)
        best = min(guesses, key=lambda guess: guess.score)
        if not contradicts and not best.slip:
            break
        doubts.append(_told(best, model, fit.chi_square))
        if best.part or (not best.slip and _quarrel(model) >= MISFIT_SHARE):
            break
        left_out = (*left_out, *best.keys)
        model = model.with_observations([o for o in model.observations if o.key not in left_out])
        fit = best_fit(model)
    return tuple(doubts), left_out


def without_quarrel(model: Model) -> Model:
    """The house as it can be believed once its contradictions were told.

    Where sizes and readings contradict each other, the gauge was in the house: what sizes say of
    the part that explains it is taken to be four times as vague, of every part that was read
    and of the airflow where no single one does. Where readings contradict each other, all
    tolerances are widened by the square root of misfit over number of readings.

    Source: Birge ratio, usual in adjusting inconsistent measurements (memory, high); the four is
    this project's choice.
    """
    if best_fit(model).share_above < MISFIT_SHARE:
        names = _read_names(model)
        parts = [model.wider({name: _LOOSE}) for name in names]
        wide = model.wider(dict.fromkeys(names, _LOOSE))
        fits = [(best_fit(one), one) for one in parts]
        best, model = min(fits, key=lambda pair: pair[0].chi_square)
        if best.share_above < MISFIT_SHARE:
            best, model = best_fit(wide), wide
        if best.share_above < MISFIT_SHARE:
            ratio = sqrt(best.chi_square / best.degrees)
            widened = [replace(o, tolerance=ratio * o.tolerance) for o in model.observations]
            return model.with_observations(widened)
    return model


def _read_names(model: Model) -> tuple[str, ...]:
    """The unknowns that some reading speaks of: parts, and airflows of readings."""
    taps = {seen.tap for seen in model.observations}
    parts = [part for part in model.prior.parts if taps.intersection(_SEEN_AT[part])]
    keys = dict.fromkeys(model.readings[seen.reading].key for seen in model.observations)
    return (*(f"drop.{part}" for part in parts), *(f"airflow.{key}" for key in keys))


def _quarrel(model: Model) -> float:
    """Share of sound houses whose readings quarrel more, however odd the geometry."""
    return best_fit(model, looseness=dict.fromkeys(model.latents.names, _LOOSE)).share_above


def _without_one(model: Model, whole: Fit) -> list[_Guess]:
    found: list[_Guess] = []
    for seen in model.observations:
        rest = [other for other in model.observations if other.key != seen.key]
        fit = best_fit(model.with_observations(rest), whole.u)
        found.append(_Guess((seen.key,), "", fit.chi_square, fit.degrees, fit.u))
    return found


_SEEN_AT: Final[Mapping[PressurePart, tuple[Tap, ...]]] = MappingProxyType(
    {
        PressurePart.RETURN_DUCT: (
            Tap.BEFORE_FILTER,
            Tap.RETURN,
            Tap.AFTER_FILTER,
            Tap.TOTAL_EXTERNAL,
        ),
        PressurePart.FILTER: (Tap.FILTER_DROP, Tap.AFTER_FILTER, Tap.RETURN, Tap.TOTAL_EXTERNAL),
        PressurePart.COIL: (Tap.COIL_DROP, Tap.BEFORE_COIL, Tap.SUPPLY, Tap.TOTAL_EXTERNAL),
        PressurePart.SUPPLY_DUCT: (
            Tap.AFTER_COIL,
            Tap.SUPPLY,
            Tap.BEFORE_COIL,
            Tap.TOTAL_EXTERNAL,
        ),
    }
)
"""Where each part shows, most plainly first."""


def _odd_houses(model: Model, odd: Sequence[_Guess], whole: Fit) -> Iterator[_Guess]:
    """Every part that would explain all readings if it were far from what is believed of it."""
    live = {o.key for o in model.observations}
    for part in model.prior.parts:
        keys = [
            key
            for tap in _SEEN_AT[part]
            for reading in model.readings
            if (key := f"{reading.key}.{tap}_inwc") in live
        ]
        if not keys:
            continue
        fit = best_fit(model, whole.u, {f"drop.{part}": _LOOSE})
        guess = _Guess((keys[0],), "", fit.chi_square, fit.degrees, fit.u, part)
        if guess.repairs:
            yield guess


def _slips(model: Model, odd: Sequence[_Guess], whole: Fit, *, are_asked: bool) -> Iterator[_Guess]:
    """Every usual slip that repairs the misfit.

    Args:
        model: The house and its readings.
        odd: What is left without each of them.
        whole: The fit of all of them.
        are_asked: The readings contradict each other; where they don't, a slip must lower the
            misfit by what it costs and `_UNASKED` more.
    """
    without = {guess.keys[0]: guess for guess in odd}
    gains = {key: whole.chi_square - guess.chi_square for key, guess in without.items()}
    least = 0.0 if are_asked else 0.5 * _UNASKED
    for slip, keys, observations in repaired(model, lambda key: gains[key] >= least):
        # of two ports, the one whose removal lowers the misfit more comes first
        ordered = tuple(sorted(keys, key=lambda key: without[key].chi_square))
        fit = best_fit(model.with_observations(observations), without[ordered[0]].u)
        shown = _shown_by_digits(model, ordered[0]) if slip == "decimal_point" else 0.0
        guess = _Guess(ordered, slip, fit.chi_square, fit.degrees, fit.u, shown=shown)
        gain = whole.chi_square - fit.chi_square
        if guess.repairs and (are_asked or gain >= guess.cost + _UNASKED):
            yield guess


def _shown_by_digits(model: Model, key: str) -> float:
    """What the digits of a figure say for a slipped point, as twice a logarithm of odds."""
    more = typed_oddly(model, key)
    return _MORE_PLACES if more > 0 else _FEWER_PLACES if more < 0 else 0.0


def _told(guess: _Guess, model: Model, chi_square: float) -> Doubt:
    seen = next(o for o in model.observations if o.key == guess.keys[0])
    place = PLACES[seen.tap]
    shown = _shown(seen, model)
    if guess.slip:
        other = ""
        if len(guess.keys) > 1:
            second = next(o for o in model.observations if o.key == guess.keys[1])
            other = PLACES[second.tap]
        why = SLIP_WORDS[guess.slip].format(other=other)
        words = f"{place[0].upper()}{place[1:]}, {shown}, doesn't fit the rest: {why}. Check it."
        return Doubt(chi_square, seen.key, guess.slip, "", words)
    high = _is_high(seen, model)
    look = look_for(seen.tap, is_high=high)
    far = "far above" if high else "far below"
    words = (
        f"{place[0].upper()}{place[1:]}, {shown}, is {far} what the rest of this house says. "
        f"Look for {look}."
    )
    return Doubt(chi_square, seen.key, "", look, words)


def _is_high(seen: Observation, model: Model) -> bool:
    """Whether the reading is above what the others predict of it."""
    rest = model.with_observations([o for o in model.observations if o.key != seen.key])
    alone = model.with_observations([seen])
    u = best_fit(rest).u
    predicted = alone.predicted(alone.latents.values(u[None, :]))
    return bool(seen.value > predicted[0, 0])


def _shown(seen: Observation, model: Model) -> str:
    if seen.tap is None:
        return f"{exp(seen.value):,.0f} CFM"
    typed = model.readings[seen.reading].taps[seen.tap].value_inwc
    return f"{typed:g} in wc"
