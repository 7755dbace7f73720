"""What readings say of a house: its pressure parts drawn from their posterior, and contradictions.

Geometry is the prior of each part, the readings with their tolerances are the likelihood. Prior
samples are never weighted: four good readings would leave a dozen of four thousand.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final
from zlib import crc32

import numpy as np

from engine.arrays import Array, require_within
from engine.job.evidence_airflow import (
    AIRFLOW_AS_FOUND_CFM_PER_TON,
    AIRFLOW_TOLERANCES,
    AirflowRead,
    AirflowSource,
    airflow_from_blower_table,
    airflow_from_flow_plate,
    airflow_from_hood_sum,
    airflow_from_rise,
    airflow_from_strip_heat,
    airflow_from_traverse,
    airflow_told,
)
from engine.job.evidence_dirt import Dirt
from engine.job.evidence_doubts import doubts_of, without_quarrel
from engine.job.evidence_fit import Draws, Fit, best_fit, posterior_draws
from engine.job.evidence_model import Model
from engine.job.evidence_prior import DUCT_PARTS, PARTS, PartPrior, PressurePrior
from engine.job.evidence_readings import (
    FilterState,
    Reading,
    Tap,
    Tapped,
    tapped,
    total_external_inwc,
    with_plain_signs,
)
from engine.job.evidence_told import dirt_of, readings_of
from engine.trade.exponents import PressurePart
from engine.verdict import Doubt

__all__ = [
    "AIRFLOW_AS_FOUND_CFM_PER_TON",
    "AIRFLOW_TOLERANCES",
    "DUCT_PARTS",
    "PARTS",
    "AirflowRead",
    "AirflowSource",
    "Dirt",
    "FilterState",
    "PartPrior",
    "Posterior",
    "PressurePrior",
    "Reading",
    "Tap",
    "Tapped",
    "airflow_from_blower_table",
    "airflow_from_flow_plate",
    "airflow_from_hood_sum",
    "airflow_from_rise",
    "airflow_from_strip_heat",
    "airflow_from_traverse",
    "airflow_told",
    "dirt_of",
    "matching_draws",
    "posterior",
    "readings_of",
    "tapped",
    "total_external_inwc",
    "with_plain_signs",
]


@dataclass(frozen=True, slots=True)
class Posterior:
    """What is believed of a present system after its readings.

    The ducts carry over to new equipment; the filter and the coil are those of the present
    system, clean, and carry over only where they stay.

    Attributes:
        reference_cfm: Airflow at which the drops are stated.
        drop_inwc: Clean drop of each part at that airflow, (n,); a coil's when wet.
        exponent: Power of airflow of each part, (n,).
        likely_drop_inwc: The middle of each part's drop.
        likely_exponent: The middle of each part's exponent.
        airflow_cfm: Airflow while each reading was taken, by the reading's key, (n,).
        coil_dirt: What dirt multiplies the coil's drop by, (n,).
        wheel: Share of its air that the wheel still moves, (n,).
        effective_samples: Independent draws the (n,) arrays are worth.
        chi_square: Misfit of all readings at the best fit.
        degrees: Readings it counts.
        share_above: Share of sound houses that would miss by more.
        doubts: Contradictions, the best explanation first.
        left_out: Keys of readings the draws do without, because a usual slip explains them.
        used: Keys of the readings the draws rest on.
    """

    reference_cfm: float
    drop_inwc: Mapping[PressurePart, Array]
    exponent: Mapping[PressurePart, Array]
    likely_drop_inwc: Mapping[PressurePart, float]
    likely_exponent: Mapping[PressurePart, float]
    airflow_cfm: Mapping[str, Array]
    coil_dirt: Array
    wheel: Array
    effective_samples: float
    chi_square: float
    degrees: int
    share_above: float
    doubts: tuple[Doubt, ...]
    left_out: tuple[str, ...]
    used: tuple[str, ...]

    def log_coefficient(self, part: PressurePart) -> Array:
        """Logarithm of the part's in wc per CFM^exponent, (n,)."""
        scale = np.log(self.reference_cfm)
        return np.asarray(np.log(self.drop_inwc[part]) - self.exponent[part] * scale)

    def drop_at_inwc(self, part: PressurePart, airflow_cfm: Array | float) -> Array:
        """The part's clean drop at another airflow, 1 to 20,000 CFM, (n,).

        Raises:
            OutOfRangeError: The airflow is outside these limits, or NaN.
        """
        require_within("airflow_cfm", airflow_cfm, 1.0, 20000.0)
        ratio = np.asarray(airflow_cfm) / self.reference_cfm
        return np.asarray(self.drop_inwc[part] * ratio ** self.exponent[part])


_STREAM: Final = crc32(b"evidence")


def posterior(
    prior: PressurePrior, readings: Sequence[Reading], *, samples: int = 4096, seed: int = 0
) -> Posterior:
    """Draw the pressure parts from what is believed after the readings.

    Args:
        prior: What geometry says of the parts, and their condition.
        readings: What was read; none gives back the prior, redrawn.
        samples: Draws wanted, n, 16 to 100,000.
        seed: Seed; the same seed gives the same draws.

    Raises:
        FactError: A prior or reading that can't be.
        OutOfRangeError: A number outside its limits, or NaN.
    """
    require_within("samples", float(samples), 16.0, 100000.0)
    model = Model(prior, readings)
    fit = _best_of(_fits(model))
    doubts, left_out = doubts_of(model, fit)
    kept = tuple(o for o in model.observations if o.key not in left_out)
    used = without_quarrel(model.with_observations(kept)) if doubts else model
    rng = np.random.default_rng([seed, _STREAM])
    draws = posterior_draws(used, _fits(used), samples, rng)
    return _told(prior, readings, draws, fit, used, (doubts, left_out))


def _fits(model: Model) -> list[Fit]:
    """Best fits from the prior's middle and from a dirty house, in whose tail another may lie."""
    fits = [best_fit(model)]
    names = model.latents.names
    for name in ("coil_dirt", "filter_dirt.unsaid", "filter_dirt.dirty"):
        if name in names and model.observations:
            start = np.zeros(len(names))
            start[names.index(name)] = 1.7
            fits.append(best_fit(model, start))
    return fits


def _best_of(fits: Sequence[Fit]) -> Fit:
    return min(fits, key=lambda fit: fit.chi_square)


def _told(
    prior: PressurePrior,
    readings: Sequence[Reading],
    draws: Draws,
    fit: Fit,
    used: Model,
    doubted: tuple[tuple[Doubt, ...], tuple[str, ...]],
) -> Posterior:
    values = used.latents.values(draws.u)
    drops = {part: np.exp(values[f"drop.{part}"]) for part in PARTS if part in prior.parts}
    exponents = {part: values[f"exponent.{part}"] for part in drops}
    level = np.zeros(len(draws.u))
    return Posterior(
        reference_cfm=prior.reference_cfm,
        drop_inwc=MappingProxyType(drops),
        exponent=MappingProxyType(exponents),
        likely_drop_inwc=MappingProxyType({p: float(np.median(v)) for p, v in drops.items()}),
        likely_exponent=MappingProxyType({p: float(np.median(v)) for p, v in exponents.items()}),
        airflow_cfm=MappingProxyType({r.key: np.exp(values[f"airflow.{r.key}"]) for r in readings}),
        coil_dirt=np.exp(values.get("coil_dirt", level)),
        wheel=np.exp(values["wheel"]),
        effective_samples=draws.effective_samples,
        chi_square=fit.chi_square,
        degrees=fit.degrees,
        share_above=fit.share_above,
        doubts=doubted[0],
        left_out=doubted[1],
        used=tuple(o.key for o in used.observations),
    )


def matching_draws(
    prior_inwc: Array, posterior_inwc: Array, *, seed: int = 0, stream: str = ""
) -> np.ndarray:
    """For each posterior draw of a duct's drop, a prior draw whose geometry goes with it.

    Args:
        prior_inwc: Drops that the geometry draws predict, (n,), above 0.
        posterior_inwc: Drops drawn after the readings at the same airflow, (m,), above 0.
        seed: Seed.
        stream: Name that keeps two calls' random numbers apart.

    Returns:
        Indices into the prior draws, (m,): picked at random among the near ones, so that what
        the drop doesn't tell about the geometry keeps its spread.
    """
    order = np.argsort(prior_inwc, kind="stable")
    place = np.searchsorted(np.log(prior_inwc[order]), np.log(posterior_inwc))
    rng = np.random.default_rng([seed, _STREAM, crc32(stream.encode())])
    near = max(len(prior_inwc) // 40, 1)
    picked = place + rng.integers(-near, near + 1, size=len(posterior_inwc))
    return np.asarray(order[np.clip(picked, 0, len(order) - 1)])
