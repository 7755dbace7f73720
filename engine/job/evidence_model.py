"""What a house's parts would make a gauge read: the forward side of evidence.

Pressure parts, airflows and dirt are unknowns; a reading is compared with what they predict.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from math import log
from typing import Final

import numpy as np

from engine.arrays import Array, require_within
from engine.errors import FactError
from engine.job.evidence_airflow import AirflowRead, airflow_from_blower_table
from engine.job.evidence_dirt import DIRTY_WORDS, Dirt, dirt_marginal
from engine.job.evidence_latents import (
    Latents,
    Marginal,
    correlations,
    marginal_of_draws,
    marginal_of_spread,
)
from engine.job.evidence_readings import (
    FilterState,
    Reading,
    Tap,
    Tapped,
    total_external_inwc,
    with_plain_signs,
)
from engine.physics.blower_table import TablePlace
from engine.trade.allowances import WET_OVER_DRY_COIL
from engine.trade.exponents import PressurePart

__all__ = [
    "DUCT_PARTS",
    "PARTS",
    "Model",
    "Observation",
    "PartPrior",
    "PressurePrior",
    "observations_of",
]

PARTS: Final = (
    PressurePart.RETURN_DUCT,
    PressurePart.FILTER,
    PressurePart.COIL,
    PressurePart.SUPPLY_DUCT,
)
"""The pressure parts of evidence: return duct with its grilles, filter, coil, supply duct with
its registers."""

DUCT_PARTS: Final = (PressurePart.RETURN_DUCT, PressurePart.SUPPLY_DUCT)


@dataclass(frozen=True, slots=True)
class PartPrior:
    """What geometry, or the lack of it, says of one part of the present system, clean.

    Attributes:
        drop_inwc: Drop at the reference airflow, (n,) draws above 0; a coil's when wet.
        exponent: Power of airflow with which it grows, (n,).
        is_inside: Whether the present equipment's rating includes the part, so that its total
            external static doesn't.
    """

    drop_inwc: Array
    exponent: Array
    is_inside: bool = False

    def __post_init__(self) -> None:
        """Refuse drops and exponents that can't be.

        Raises:
            FactError: Shapes that aren't both (n,).
            OutOfRangeError: A drop outside 1e-6 to 50 in wc, an exponent outside 0.5 to 3, NaN.
        """
        if self.drop_inwc.ndim != 1 or self.drop_inwc.shape != self.exponent.shape:
            raise FactError("part", "drop and exponent both have shape (n,)")
        require_within("drop_inwc", self.drop_inwc, 1e-6, 50.0)
        require_within("exponent", self.exponent, 0.5, 3.0)


@dataclass(frozen=True, slots=True)
class PressurePrior:
    """What is believed of a present system before its readings.

    Attributes:
        reference_cfm: Airflow at which the drops are stated.
        parts: The parts that exist; a filter or coil that isn't there is left out.
        filter_is_at_grille: The filter sits in a return grille: nothing is left to read before it.
        dirt: Condition.
    """

    reference_cfm: float
    parts: Mapping[PressurePart, PartPrior]
    filter_is_at_grille: bool = False
    dirt: Dirt = field(default_factory=Dirt)

    def __post_init__(self) -> None:
        """Refuse a prior without both ducts.

        Raises:
            FactError: A duct is missing, or the draws' numbers differ.
            OutOfRangeError: The reference airflow is outside 50 to 10,000 CFM.
        """
        require_within("reference_cfm", self.reference_cfm, 50.0, 10000.0)
        if any(part not in self.parts for part in DUCT_PARTS):
            raise FactError("parts", "needs both the return duct and the supply duct")
        if len({part.drop_inwc.size for part in self.parts.values()}) != 1:
            raise FactError("parts", "every part has the same number of draws")

    def is_inside(self, part: PressurePart) -> bool:
        """Whether the part is there and inside the rated box."""
        return part in self.parts and self.parts[part].is_inside


@dataclass(frozen=True, slots=True)
class Observation:
    """One number that speaks about the house.

    Attributes:
        key: Its fact key.
        reading: Index of its reading.
        tap: Where it was read; None for the airflow.
        value: in wc as an amount, or the logarithm of CFM.
        tolerance: One standard deviation, in the same measure.
        side: 0 for a plain figure; 1 if only a prediction above it counts against it ("at most"),
            -1 if only one below it does.
        hides_wheel: The airflow is one of a clean wheel.
        is_difference: A total that would be the difference of its two sides, not their sum.
    """

    key: str
    reading: int
    tap: Tap | None
    value: float
    tolerance: float
    side: int = 0
    hides_wheel: bool = False
    is_difference: bool = False


_DERIVED_WITHIN_INWC: Final = 0.0151
"""A figure this near to the sum or difference of its parts is theirs, not a reading of its own:
gauges and people round to 0.01."""


def observations_of(prior: PressurePrior, readings: Sequence[Reading]) -> tuple[Observation, ...]:
    """Everything the readings say, each once: signs made plain, sums of other figures left out."""
    found: list[Observation] = []
    for index, reading in enumerate(readings):
        taps = with_plain_signs(reading.taps)
        own = _own(taps)
        for tap, taken in own.items():
            side = 1 if _is_only_a_bound(tap, own, prior, reading) else 0
            key = f"{reading.key}.{tap}_inwc"
            found.append(Observation(key, index, tap, taken.value_inwc, taken.tolerance_inwc, side))
        airflow = _airflow(prior, reading, taps)
        if airflow is not None:
            side = {
                TablePlace.BEYOND_LAST_ROW: 1,
                TablePlace.BELOW_FIRST_ROW: -1,
                TablePlace.WITHIN: 0,
            }[airflow.place]
            found.append(
                Observation(
                    f"{reading.key}.airflow_cfm",
                    index,
                    None,
                    log(airflow.airflow_cfm),
                    airflow.tolerance_share,
                    side,
                    airflow.hides_wheel,
                )
            )
    return tuple(found)


def _airflow(
    prior: PressurePrior, reading: Reading, taps: Mapping[Tap, Tapped]
) -> AirflowRead | None:
    if reading.airflow is not None or reading.blower_table is None:
        return reading.airflow
    total = total_external_inwc(
        taps,
        filter_is_inside=prior.is_inside(PressurePart.FILTER),
        coil_is_inside=prior.is_inside(PressurePart.COIL),
    )
    if total is None or not 0.0 <= total <= 10.0:
        return None
    return airflow_from_blower_table(reading.blower_table, total)


def _own(taps: Mapping[Tap, Tapped]) -> dict[Tap, Tapped]:
    """The pressures that are readings of their own, not worked out from others."""
    value = {tap: taken.value_inwc for tap, taken in taps.items()}
    own = dict(taps)
    for same, others in (
        (Tap.RETURN, (Tap.AFTER_FILTER, Tap.BEFORE_FILTER)),
        (Tap.SUPPLY, (Tap.BEFORE_COIL, Tap.AFTER_COIL)),
    ):
        if same in own and any(
            abs(value[other] - value[same]) < _DERIVED_WITHIN_INWC
            for other in others
            if other in value
        ):
            del own[same]
    for drop, after, before in (
        (Tap.FILTER_DROP, Tap.AFTER_FILTER, Tap.BEFORE_FILTER),
        (Tap.COIL_DROP, Tap.BEFORE_COIL, Tap.AFTER_COIL),
    ):
        if drop in own and after in value and before in value:
            rest = value[after] - value[before] - value[drop]
            if abs(rest) < _DERIVED_WITHIN_INWC:
                del own[drop]
    if Tap.TOTAL_EXTERNAL in own:
        total = value[Tap.TOTAL_EXTERNAL]
        sums = [
            value[a] + value[b]
            for a in (Tap.RETURN, Tap.AFTER_FILTER, Tap.BEFORE_FILTER)
            for b in (Tap.SUPPLY, Tap.BEFORE_COIL, Tap.AFTER_COIL)
            if a in value and b in value
        ]
        if any(abs(total - summed) < _DERIVED_WITHIN_INWC for summed in sums):
            del own[Tap.TOTAL_EXTERNAL]
    return own


_LUMPS: Final = {
    Tap.AFTER_FILTER: (PressurePart.FILTER,),
    Tap.RETURN: (PressurePart.FILTER,),
    Tap.BEFORE_COIL: (PressurePart.COIL,),
    Tap.SUPPLY: (PressurePart.COIL,),
    Tap.TOTAL_EXTERNAL: (PressurePart.FILTER, PressurePart.COIL),
}
_SPLIT_BY: Final = {
    PressurePart.FILTER: ({Tap.FILTER_DROP}, {Tap.BEFORE_FILTER, Tap.AFTER_FILTER}),
    PressurePart.COIL: ({Tap.COIL_DROP}, {Tap.BEFORE_COIL, Tap.AFTER_COIL}),
}


def _is_only_a_bound(
    tap: Tap, own: Mapping[Tap, Tapped], prior: PressurePrior, reading: Reading
) -> bool:
    """Whether a pressure lumps ducts with a part known to be dirty whose own drop wasn't read.

    Nobody can tell how much of it is dirt, so it may lower what is believed of the ducts and
    never raise it.
    """
    return any(
        part in prior.parts
        and _is_stated_dirty(part, prior, reading)
        and not any(split <= own.keys() for split in _SPLIT_BY[part])
        for part in _LUMPS.get(tap, ())
    )


def _is_stated_dirty(part: PressurePart, prior: PressurePrior, reading: Reading) -> bool:
    if part is PressurePart.COIL:
        return prior.dirt.coil in DIRTY_WORDS and not reading.no_coil
    if reading.filter_state is None:
        return prior.dirt.filter in DIRTY_WORDS
    return reading.filter_state is FilterState.DIRTY


class Model:
    """Unknowns of one house and what its readings would be: residuals for the fit."""

    def __init__(
        self,
        prior: PressurePrior,
        readings: Sequence[Reading],
        observations: Sequence[Observation] | None = None,
        latents: Latents | None = None,
    ) -> None:
        """Build the unknowns once; `with_observations` reuses them."""
        self.prior = prior
        self.readings = tuple(readings)
        self.observations = (
            observations_of(prior, readings) if observations is None else tuple(observations)
        )
        self.latents = _latents(prior, readings) if latents is None else latents
        self.value = np.array([o.value for o in self.observations])
        self.tolerance = np.array([o.tolerance for o in self.observations])
        self.side = np.array([o.side for o in self.observations])

    def with_observations(self, observations: Sequence[Observation]) -> "Model":
        """The same house with other observations."""
        return Model(self.prior, self.readings, observations, self.latents)

    def wider(self, times: Mapping[str, float]) -> "Model":
        """The same readings in a house of which less is believed, by unknown."""
        latents = self.latents.wider(times)
        return Model(self.prior, self.readings, self.observations, latents)

    def residuals(self, u: Array) -> Array:
        """Prediction less observation in standard deviations, (k, m), for unknowns (k, d)."""
        predicted = self.predicted(self.latents.values(u))
        residual = (predicted - self.value) / self.tolerance
        residual = np.where(self.side > 0, np.maximum(residual, 0.0), residual)
        return np.asarray(np.where(self.side < 0, np.minimum(residual, 0.0), residual))

    def predicted(self, values: Mapping[str, Array]) -> Array:
        """What every observation should read, (k, m)."""
        columns: list[Array] = []
        parts: dict[int, dict[PressurePart, Array]] = {}
        for seen in self.observations:
            if seen.reading not in parts:
                parts[seen.reading] = self._drops(values, self.readings[seen.reading])
            if seen.tap is None:
                column = values[f"airflow.{self.readings[seen.reading].key}"]
                columns.append(column - values["wheel"] if seen.hides_wheel else column)
            else:
                drops = parts[seen.reading]
                columns.append(
                    np.abs(self._at(Tap.SUPPLY, drops) - self._at(Tap.RETURN, drops))
                    if seen.is_difference
                    else self._at(seen.tap, drops)
                )
        return np.stack(columns, axis=1) if columns else np.zeros((len(values["wheel"]), 0))

    def _drops(self, values: Mapping[str, Array], reading: Reading) -> dict[PressurePart, Array]:
        over = values[f"airflow.{reading.key}"] - log(self.prior.reference_cfm)
        found = {part: np.zeros_like(over) for part in PARTS}
        for part in self.prior.parts:
            rise = values[f"drop.{part}"] + values[f"exponent.{part}"] * over
            if part is PressurePart.COIL:
                if reading.no_coil:
                    continue
                rise = rise + values["coil_dirt"]
                if not reading.coil_is_wet:
                    rise = rise - values["wet_over_dry"]
            elif part is PressurePart.FILTER:
                if reading.filter_state is FilterState.NONE:
                    continue
                rise = rise + values[_filter_dirt_name(reading)]
            found[part] = np.exp(np.minimum(rise, 10.0))
        return found

    def _at(self, tap: Tap, drops: Mapping[PressurePart, Array]) -> Array:
        return_duct, filter_drop = drops[PressurePart.RETURN_DUCT], drops[PressurePart.FILTER]
        supply_duct, coil_drop = drops[PressurePart.SUPPLY_DUCT], drops[PressurePart.COIL]
        filter_counts = not self.prior.is_inside(PressurePart.FILTER)
        coil_counts = not self.prior.is_inside(PressurePart.COIL)
        match tap:
            case Tap.BEFORE_FILTER:
                at_grille = self.prior.filter_is_at_grille
                return np.zeros_like(return_duct) if at_grille else return_duct
            case Tap.AFTER_FILTER:
                return return_duct + filter_drop
            case Tap.RETURN:
                return return_duct + filter_drop * filter_counts
            case Tap.BEFORE_COIL:
                return supply_duct + coil_drop
            case Tap.AFTER_COIL:
                return supply_duct
            case Tap.SUPPLY:
                return supply_duct + coil_drop * coil_counts
            case Tap.FILTER_DROP:
                return filter_drop
            case Tap.COIL_DROP:
                return coil_drop
            case Tap.TOTAL_EXTERNAL:
                return (
                    return_duct
                    + filter_drop * filter_counts
                    + coil_drop * coil_counts
                    + supply_duct
                )


def _filter_dirt_name(reading: Reading) -> str:
    return f"filter_dirt.{reading.filter_state or 'unsaid'}"


def _latents(prior: PressurePrior, readings: Sequence[Reading]) -> Latents:
    marginals: dict[str, Marginal] = {}
    draws: list[Array | None] = []

    def add(name: str, marginal: Marginal, values: Array | None = None) -> None:
        marginals[name] = marginal
        draws.append(values)

    for part in PARTS:
        if part in prior.parts:
            drop = np.log(prior.parts[part].drop_inwc)
            add(f"drop.{part}", marginal_of_draws(drop), drop)
            exponent = prior.parts[part].exponent
            add(f"exponent.{part}", marginal_of_draws(exponent), exponent)
    airflows = len(draws)
    for reading in readings:
        require_within("airflow_prior_cfm", reading.airflow_prior_cfm, 1.0, 20000.0)
        airflow = np.log(reading.airflow_prior_cfm)
        add(f"airflow.{reading.key}", marginal_of_draws(airflow), airflow)
    correlation = correlations(draws)
    # two readings of one mode differ by filter and wetness: never taken as one airflow
    pairs = correlation[airflows:, airflows:]
    correlation[airflows:, airflows:] = np.where(np.eye(len(pairs)) > 0.0, 1.0, 0.95 * pairs)
    for name, marginal in _conditions(prior, readings).items():
        add(name, marginal)
    full = np.eye(len(draws))
    full[: len(correlation), : len(correlation)] = correlation
    return Latents.of(marginals, full)


def _conditions(prior: PressurePrior, readings: Sequence[Reading]) -> dict[str, Marginal]:
    found: dict[str, Marginal] = {}
    dirt = prior.dirt
    inside = dirt.second_heat_exchanger in DIRTY_WORDS
    found["wheel"] = dirt_marginal("wheel", "plugged" if inside else dirt.blower_wheel)
    if PressurePart.COIL in prior.parts and any(not r.no_coil for r in readings):
        found["coil_dirt"] = dirt_marginal("coil", dirt.coil)
        if any(not r.coil_is_wet and not r.no_coil for r in readings):
            wet = WET_OVER_DRY_COIL
            found["wet_over_dry"] = marginal_of_spread(log(wet.low), log(wet.likely), log(wet.high))
    if PressurePart.FILTER in prior.parts:
        for reading in readings:
            if reading.filter_state is FilterState.NONE:
                continue
            said = dirt.filter
            if reading.filter_state is FilterState.CLEAN:
                said = "clean"
            elif reading.filter_state is FilterState.DIRTY and said not in DIRTY_WORDS:
                said = "some_dirt"
            found[_filter_dirt_name(reading)] = dirt_marginal("filter", said)
    return {name: found[name] for name in sorted(found)}
