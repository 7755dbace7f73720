"""Contradictions among readings and with the geometry: which reading, which slip, where to look."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from math import exp, log, sqrt
from types import MappingProxyType
from typing import Final

from engine.arrays import Array
from engine.job.evidence_fit import Fit, best_fit, chi_square_share_above
from engine.job.evidence_model import Model, Observation, observations_of
from engine.job.evidence_readings import (
    RETURN_TAPS,
    SUPPLY_TAPS,
    Reading,
    Tap,
    Tapped,
    tapped,
    with_plain_signs,
)
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

_LOOSE: Final = 4.0
_MOST_DOUBTS: Final = 3
_PASCALS_PER_INWC: Final = 249.089
"""Pa in 1 in wc of water at 4 C (definition, memory high)."""


@dataclass(frozen=True, slots=True)
class _Guess:
    """One explanation of a misfit."""

    keys: tuple[str, ...]
    slip: str
    chi_square: float
    degrees: int
    u: Array
    part: PressurePart | None = None

    @property
    def score(self) -> float:
        """Misfit left, less what that many readings would miss by anyway, and what it costs."""
        cost = _PART_COST if self.part else _COSTS[self.slip]
        return self.chi_square - self.degrees + cost

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
    while fit.share_above < MISFIT_SHARE and len(doubts) < _MOST_DOUBTS:
        odd = _without_one(model, fit)
        worst = min(odd, key=lambda guess: guess.score)
        guesses = [*_slips(model, odd), *_odd_houses(model, odd, fit), worst]
        best = min(guesses, key=lambda guess: guess.score)
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


def _slips(model: Model, odd: Sequence[_Guess]) -> Iterator[_Guess]:
    """Every usual slip that repairs the misfit."""
    without = {guess.keys[0]: guess for guess in odd}
    for slip, keys, observations in _repaired(model):
        # of two ports, the one whose removal lowers the misfit more comes first
        ordered = tuple(sorted(keys, key=lambda key: without[key].chi_square))
        fit = best_fit(model.with_observations(observations), without[ordered[0]].u)
        guess = _Guess(ordered, slip, fit.chi_square, fit.degrees, fit.u)
        if guess.repairs:
            yield guess


Repaired = tuple[str, tuple[str, ...], list[Observation]]


def _repaired(model: Model) -> Iterator[Repaired]:
    """Each slip with the keys it touches and the observations as they would be without it."""
    live = {o.key for o in model.observations}
    for index, reading in enumerate(model.readings):
        for tap, taken in reading.taps.items():
            key = f"{reading.key}.{tap}_inwc"
            if key not in live:
                continue
            for slip, value in _values_meant(tap, taken.value_inwc, reading.taps):
                taps = {**reading.taps, tap: tapped(tap, value)}
                yield slip, (key,), _observed(model, index, reading, taps, live)
            if tap is Tap.TOTAL_EXTERNAL:
                yield (
                    "sign",
                    (key,),
                    [replace(o, is_difference=o.key == key) for o in model.observations],
                )
        for first, second in _SWAPS:
            keys = (f"{reading.key}.{first}_inwc", f"{reading.key}.{second}_inwc")
            if not live.issuperset(keys):
                continue
            plain = with_plain_signs(reading.taps)
            swapped = {**plain, first: plain[second], second: plain[first]}
            yield "ports_swapped", keys, _observed(model, index, reading, swapped, live)
    for seen in model.observations:
        if seen.tap is None and not model.readings[seen.reading].blower_table:
            for shift in (log(10.0), -log(10.0)):
                meant = replace(seen, value=seen.value + shift)
                yield (
                    "decimal_point",
                    (seen.key,),
                    [meant if o.key == seen.key else o for o in model.observations],
                )


_SWAPS: Final = (
    (Tap.BEFORE_FILTER, Tap.AFTER_FILTER),
    (Tap.BEFORE_COIL, Tap.AFTER_COIL),
    (Tap.AFTER_FILTER, Tap.BEFORE_COIL),
    (Tap.RETURN, Tap.SUPPLY),
)


def _values_meant(
    tap: Tap, typed_inwc: float, taps: Mapping[Tap, Tapped]
) -> Iterator[tuple[str, float]]:
    """What a person may have meant by a figure, by usual slip."""
    if tap in SUPPLY_TAPS and typed_inwc < 0.0:
        yield "sign", -typed_inwc
    if tap in RETURN_TAPS and typed_inwc > 0.0:
        pulls = any(taps[t].value_inwc < 0.0 for t in RETURN_TAPS if t in taps)
        if pulls:
            yield "sign", -typed_inwc
    yield "decimal_point", typed_inwc / 10.0
    if abs(typed_inwc) > 2.0:
        yield "decimal_point", typed_inwc / 100.0
        yield "pascal", typed_inwc / _PASCALS_PER_INWC
    if abs(typed_inwc) < 0.2:
        yield "decimal_point", typed_inwc * 10.0


def _observed(
    model: Model, index: int, reading: Reading, taps: Mapping[Tap, Tapped], live: set[str]
) -> list[Observation]:
    """The observations with one reading's pressures replaced; nothing that was left out returns."""
    readings = list(model.readings)
    readings[index] = replace(reading, taps=MappingProxyType(dict(taps)))
    airflow = f"{reading.key}.airflow_cfm"
    return [o for o in observations_of(model.prior, readings) if o.key in live or o.key == airflow]


_PLACES: Final[Mapping[Tap | None, str]] = MappingProxyType(
    {
        Tap.BEFORE_FILTER: "the return pressure before the filter",
        Tap.AFTER_FILTER: "the return pressure after the filter",
        Tap.BEFORE_COIL: "the supply pressure before the coil",
        Tap.AFTER_COIL: "the supply pressure after the coil",
        Tap.RETURN: "the return pressure",
        Tap.SUPPLY: "the supply pressure",
        Tap.FILTER_DROP: "the filter's drop",
        Tap.COIL_DROP: "the coil's drop",
        Tap.TOTAL_EXTERNAL: "the total external static",
        None: "the airflow",
    }
)

_LOOK_IF_HIGH: Final[Mapping[Tap | None, str]] = MappingProxyType(
    {
        Tap.BEFORE_FILTER: "a blocked or covered return grille, or a crushed return",
        Tap.AFTER_FILTER: "a dirty filter, a second filter in a grille, or a crushed return",
        Tap.RETURN: "a dirty filter, a second filter in a grille, or a crushed return",
        Tap.FILTER_DROP: "a dirty filter",
        Tap.BEFORE_COIL: "a dirty or iced coil, crushed flex, or a shut damper",
        Tap.COIL_DROP: "a dirty or iced coil",
        Tap.AFTER_COIL: "crushed flex, a shut damper, or closed registers",
        Tap.SUPPLY: "crushed flex, a shut damper, closed registers, or a dirty coil",
        Tap.TOTAL_EXTERNAL: "a dirty filter or coil, crushed flex, or a shut damper",
        None: "the setting and mode it was found in, and how it was found",
    }
)
_LOOK_IF_LOW: Final[Mapping[Tap | None, str]] = MappingProxyType(
    {
        Tap.FILTER_DROP: "air that passes beside the filter, or the wrong tap",
        Tap.COIL_DROP: "air that passes beside the coil, an open panel, or the wrong tap",
        None: "the setting and mode it was found in, and a dirty wheel",
    }
)
_LOW: Final = "a leak, an open panel, or the wrong tap"

_SLIP_WORDS: Final[Mapping[str, str]] = MappingProxyType(
    {
        "sign": "the sign looks wrong: the return side pulls, the supply side pushes, and the two "
        "add up",
        "decimal_point": "the decimal point looks out of place",
        "ports_swapped": "it and {other} look swapped: hoses or ports changed places",
        "pascal": "it looks like pascals, not inches of water",
    }
)


def _told(guess: _Guess, model: Model, chi_square: float) -> Doubt:
    seen = next(o for o in model.observations if o.key == guess.keys[0])
    place = _PLACES[seen.tap]
    shown = _shown(seen, model)
    if guess.slip:
        other = ""
        if len(guess.keys) > 1:
            second = next(o for o in model.observations if o.key == guess.keys[1])
            other = _PLACES[second.tap]
        why = _SLIP_WORDS[guess.slip].format(other=other)
        words = f"{place[0].upper()}{place[1:]}, {shown}, doesn't fit the rest: {why}. Check it."
        return Doubt(chi_square, seen.key, guess.slip, "", words)
    high = _is_high(seen, model)
    look = _LOOK_IF_HIGH[seen.tap] if high else _LOOK_IF_LOW.get(seen.tap, _LOW)
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
        return f"{exp(seen.value):.0f} CFM"
    typed = model.readings[seen.reading].taps[seen.tap].value_inwc
    return f"{typed:g} in wc"
