"""What a house's parts would make a gauge read: the forward side of evidence.

Pressure parts, airflows and dirt are unknowns; a reading is compared with what they predict.
"""

from collections.abc import Mapping, Sequence
from math import log

import numpy as np

from engine.arrays import Array, require_within
from engine.job.evidence_dirt import DIRTY_WORDS, dirt_marginal
from engine.job.evidence_latents import (
    Latents,
    Marginal,
    correlations,
    marginal_of_draws,
    marginal_of_spread,
)
from engine.job.evidence_observed import Observation, observations_of
from engine.job.evidence_prior import PARTS, PressurePrior
from engine.job.evidence_readings import (
    FilterState,
    Reading,
    Tap,
)
from engine.trade.allowances import WET_OVER_DRY_COIL
from engine.trade.exponents import PressurePart

__all__ = ["Model"]


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
        residual: Array = (predicted - self.value) / self.tolerance
        if not self.side.any():
            return residual
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
        # one piece a column, as they are summed
        return np.stack(columns).T if columns else np.zeros((len(values["wheel"]), 0))

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
