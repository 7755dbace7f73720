"""Houses whose truth is known, for tests of what readings say. Written apart from the engine."""

from dataclasses import dataclass, field

import numpy as np

from engine.job.evidence import (
    AirflowSource,
    Dirt,
    FilterState,
    PartPrior,
    PressurePrior,
    Reading,
    Tap,
    airflow_told,
    tapped,
)
from engine.job.modes import Mode
from engine.trade.exponents import PressurePart

RETURN, FILTER = PressurePart.RETURN_DUCT, PressurePart.FILTER
COIL, SUPPLY = PressurePart.COIL, PressurePart.SUPPLY_DUCT
REFERENCE_CFM = 1000.0
MIDDLES = {RETURN: 0.12, FILTER: 0.16, COIL: 0.22, SUPPLY: 0.16}
SCATTER = {RETURN: 0.45, FILTER: 0.35, COIL: 0.25, SUPPLY: 0.45}
POWERS = {RETURN: (1.9, 0.06), FILTER: (1.4, 0.12), COIL: (1.8, 0.1), SUPPLY: (1.9, 0.06)}
CLEAN = Dirt(coil="clean", blower_wheel="clean", filter="clean")


def prior_of(
    n: int = 4096,
    seed: int = 1,
    dirt: Dirt = CLEAN,
    middles: dict[PressurePart, float] = MIDDLES,
    **more: object,
) -> PressurePrior:
    rng = np.random.default_rng(seed)
    parts = {
        part: PartPrior(
            middle * np.exp(SCATTER[part] * rng.standard_normal(n)),
            POWERS[part][0] + POWERS[part][1] * rng.standard_normal(n),
        )
        for part, middle in middles.items()
    }
    return PressurePrior(REFERENCE_CFM, parts, dirt=dirt, **more)  # type: ignore[arg-type]


def airflow_prior(n: int = 4096, seed: int = 2, likely: float = 1050.0) -> np.ndarray:
    rng = np.random.default_rng(seed)
    return np.asarray(likely * np.exp(0.28 * rng.standard_normal(n)))


@dataclass
class Truth:
    """One house drawn from the prior, and what gauges read in it."""

    drops: dict[PressurePart, float]
    powers: dict[PressurePart, float]
    airflow_cfm: float
    noise: np.random.Generator = field(repr=False)

    @classmethod
    def drawn(cls, seed: int, middles: dict[PressurePart, float] = MIDDLES) -> "Truth":
        rng = np.random.default_rng([seed, 99])
        return cls(
            {p: m * float(np.exp(SCATTER[p] * rng.standard_normal())) for p, m in middles.items()},
            {p: POWERS[p][0] + POWERS[p][1] * float(rng.standard_normal()) for p in middles},
            1050.0 * float(np.exp(0.28 * rng.standard_normal())),
            rng,
        )

    def at(self, part: PressurePart) -> float:
        return self.drops[part] * (self.airflow_cfm / REFERENCE_CFM) ** self.powers[part]

    def exact(self) -> dict[Tap, float]:
        return {
            Tap.BEFORE_FILTER: self.at(RETURN),
            Tap.AFTER_FILTER: self.at(RETURN) + self.at(FILTER),
            Tap.BEFORE_COIL: self.at(SUPPLY) + self.at(COIL),
            Tap.AFTER_COIL: self.at(SUPPLY),
        }

    def gauged(self) -> dict[Tap, float]:
        """Four readings with field scatter, rounded to 0.01 as gauges show them."""
        return {
            tap: round(value + float(self.noise.normal()) * max(0.03, 0.1 * value), 2)
            for tap, value in self.exact().items()
        }

    def airflow_found(self, share: float = 0.09) -> float:
        return float(round(self.airflow_cfm * np.exp(share * self.noise.standard_normal())))


def reading_of(
    taps: dict[Tap, float],
    airflow_cfm: float | None = None,
    source: AirflowSource = AirflowSource.TEMPERATURE_RISE,
    n: int = 4096,
    **more: object,
) -> Reading:
    given: dict[str, object] = {
        "mode": Mode.COOLING_HIGH,
        "filter_state": FilterState.CLEAN,
        **more,
    }
    return Reading(
        "readings.0",
        {tap: tapped(tap, value) for tap, value in taps.items()},
        airflow_prior(n),
        airflow=None if airflow_cfm is None else airflow_told(airflow_cfm, source),
        **given,  # type: ignore[arg-type]
    )
