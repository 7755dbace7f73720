"""What readings in the present system make of the ducts: the house's path, narrowed by evidence.

The ducts stay when equipment is replaced, so what was read of them holds for the new system. Where
an edited job changes a duct or filter, what its sizes say of the change is applied to what was
read of it.
"""

from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.job.evidence import (
    AIRFLOW_AS_FOUND_CFM_PER_TON,
    PartPrior,
    Posterior,
    PressurePrior,
    dirt_of,
    posterior,
    readings_of,
)
from engine.job.job import Job
from engine.job.modes import Mode
from engine.job.openings import filters_of
from engine.job.priors import believed_tons
from engine.job.sample import House
from engine.job.system import System, present_filter_inwc
from engine.job.targets import air_ratio
from engine.trade.exponents import PressurePart

__all__ = ["Evidence", "evidence_of", "has_readings", "with_evidence"]

_PRESENT_COIL_INWC: Final = (0.10, 0.20, 0.33)
"""Clean wet drop of a present coil nobody has a figure for, at its airflow (common practice)."""

_HEATING_OVER_COOLING: Final = (0.70, 0.85, 1.0)
"""A present furnace's airflow in heating over that in cooling (common practice)."""

_SIZES_MAY_MISS: Final = 0.60
"""Standard deviation of the logarithm of what a gauge finds over what sizes say, besides the doubt
of sizes alone: crushed, shut, blocked or leaking duct is rare in a survey of sizes but is what
gauges are for. Source: common practice, no published source."""

_CARRIED: Final = (PressurePart.RETURN_DUCT, PressurePart.FILTER, PressurePart.SUPPLY_DUCT)


@dataclass(frozen=True, slots=True)
class Evidence:
    """What the readings say, with the sizes it was said of.

    Attributes:
        posterior: The pressure parts after the readings.
        drop_inwc: Clean drops at the system's reference airflow, (n + 1,), by part.
        exponent: Their exponents, (n + 1,), by part.
        by_sizes_inwc: What sizes alone said of the same parts, (n + 1,).
        coil_dirt: What dirt multiplies the present coil's drop by, (n,).
        wheel: Share of its air that the present wheel still moves, (n,).
        airflow_cfm: Airflow while each reading was taken, by the reading's key, (n,).
    """

    posterior: Posterior
    drop_inwc: dict[PressurePart, Array]
    exponent: dict[PressurePart, Array]
    by_sizes_inwc: dict[PressurePart, Array]
    coil_dirt: Array
    wheel: Array
    airflow_cfm: dict[str, Array]


def has_readings(job: Job) -> bool:
    """Whether any reading was stated."""
    return bool(job.length("readings"))


def evidence_of(house: House, system: System, after: Posterior | None = None) -> Evidence | None:
    """What the readings of a job say of its path; None if nothing usable was read.

    Args:
        house: The house as it was read.
        system: Its path by sizes alone.
        after: The posterior of the same readings with at least as many draws, where it is known;
            finding it again takes longer than everything else.
    """
    if after is not None:
        return _coupled(system, _prior(house, system), _thinned(after, house.draws.samples))
    ratio = float(air_ratio(house)[0])
    readings = readings_of(house.job, lambda key, mode: _airflow_as_found(house, key, mode), ratio)
    if not readings:
        return None
    prior = _prior(house, system)
    after = posterior(prior, readings, samples=house.draws.samples, seed=house.draws.seed)
    return _coupled(system, prior, after)


def _airflow_as_found(house: House, key: str, mode: Mode | None) -> Array:
    low, likely, high = AIRFLOW_AS_FOUND_CFM_PER_TON
    tons = house.stated_number("old.cooling_tons")
    tons = believed_tons(house) if tons is None else tons
    airflow = tons * house.assumed("present airflow per ton", low, likely, high).clip(130.0, 650.0)
    if mode is not None and mode.is_burner:
        less = _HEATING_OVER_COOLING
        airflow = airflow * house.assumed(f"{key} heating airflow", *less).clip(0.4, 1.3)
    return np.asarray(airflow[1:])


def _prior(house: House, system: System) -> PressurePrior:
    job = house.job
    parts: dict[PressurePart, PartPrior] = {}
    for part in (PressurePart.RETURN_DUCT, PressurePart.SUPPLY_DUCT):
        found = system.parts[part]
        stray = np.concatenate([[0.0], house.draws.normals(f"{part} beyond its sizes")])
        drop = found.drop_inwc * np.exp(_SIZES_MAY_MISS * stray)
        parts[part] = _part(drop, found.exponent, is_inside=False)
    in_cabinet = job.word("old.kind") in ("air_handler", "heat_pump", "packaged")
    banks = filters_of(house)
    at_grille = any(bank.place == "grille" and bank.present[0] for bank in banks)
    present = present_filter_inwc(house, system.reference_cfm)
    if present is not None:
        drop, exponent = present
        inside = job.word("old.filter_outside_rating") == "no" and not at_grille
        parts[PressurePart.FILTER] = _part(drop, exponent, is_inside=inside)
    if job.word("condition.coil") != "none":
        told = job.word("old.coil_outside_rating")
        inside = told == "no" or (told is None and in_cabinet)
        drop = house.assumed("present coil drop", *_PRESENT_COIL_INWC).clip(0.03, 0.8)
        drop = drop * air_ratio(house)
        exponent = house.assumed("coil exponent", 1.6, 1.8, 2.0).clip(1.0, 2.2)
        parts[PressurePart.COIL] = _part(drop, exponent, is_inside=inside)
    return PressurePrior(system.reference_cfm, parts, at_grille, dirt_of(job))


def _part(drop: Array, exponent: Array, *, is_inside: bool) -> PartPrior:
    return PartPrior(np.clip(drop[1:], 1e-4, 20.0), exponent[1:], is_inside)


def _thinned(after: Posterior, samples: int) -> Posterior:
    """The same posterior with fewer draws."""
    wheel = after.wheel
    if wheel.size == samples:
        return after
    kept = np.linspace(0, wheel.size - 1, samples).astype(np.intp)
    return replace(
        after,
        drop_inwc={part: values[kept] for part, values in after.drop_inwc.items()},
        exponent={part: values[kept] for part, values in after.exponent.items()},
        airflow_cfm={key: values[kept] for key, values in after.airflow_cfm.items()},
        coil_dirt=after.coil_dirt[kept],
        wheel=wheel[kept],
        effective_samples=after.effective_samples * samples / wheel.size,
    )


def _coupled(system: System, prior: PressurePrior, after: Posterior) -> Evidence:
    """Give each sample of the house the posterior draw of its rank in total pressure.

    So what the parts say of each other is kept whole, and houses whose sizes ask for much
    pressure go with draws that take much.
    """
    parts = [part for part in _CARRIED if part in after.drop_inwc]
    before = sum(prior.parts[part].drop_inwc for part in parts)
    total = sum(after.drop_inwc[part] for part in parts)
    place = np.empty(np.size(before), dtype=np.intp)
    place[np.argsort(before, kind="stable")] = np.argsort(total, kind="stable")
    drops, exponents, by_sizes = {}, {}, {}
    for part in parts:
        likely, power = after.likely_drop_inwc[part], after.likely_exponent[part]
        drops[part] = np.concatenate([[likely], after.drop_inwc[part][place]])
        exponents[part] = np.concatenate([[power], after.exponent[part][place]])
        by_sizes[part] = system.parts[part].drop_inwc if part in system.parts else drops[part]
    airflow = {key: values[place] for key, values in after.airflow_cfm.items()}
    dirt, wheel = after.coil_dirt[place], after.wheel[place]
    return Evidence(after, drops, exponents, by_sizes, dirt, wheel, airflow)


def with_evidence(house: House, system: System, evidence: Evidence) -> System:
    """A path by sizes, corrected by what was read.

    Args:
        house: The house, as read or edited.
        system: Its path by sizes alone.
        evidence: From the house as it was read.

    Returns:
        Each duct as read, times what its sizes say it changes; a filter likewise, unless its own
        drop is listed, because then a listed new one goes in.
    """
    parts = dict(system.parts)
    scale = system.reference_cfm / evidence.posterior.reference_cfm
    for part in _CARRIED:
        if part not in evidence.drop_inwc or part not in parts:
            continue
        if part is PressurePart.FILTER and "new.filter_drop_inwc" in house.job.beliefs:
            continue
        exponent = evidence.exponent[part]
        base = evidence.by_sizes_inwc[part] * scale ** parts[part].exponent
        read = evidence.drop_inwc[part] * scale**exponent
        drop = read * parts[part].drop_inwc / np.maximum(base, 1e-6)
        rests = ("readings", *parts[part].rests_on)
        parts[part] = replace(parts[part], drop_inwc=drop, exponent=exponent, rests_on=rests)
    return replace(system, parts=parts)
