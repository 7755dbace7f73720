"""How far a trunk's air could be lowered without touching the trunk, sample by sample.

What the search for changes would try, as factors on a speed: less air where the loads or the
plate's rise allow it, half a ton less equipment, and a second return beside a return trunk. An
estimate for telling which questions matter; the changes that are told were judged again.
"""

from typing import Final

import numpy as np

from engine.arrays import Array
from engine.assessment import Assessment, ModeAssessment
from engine.checks.raw import Raw
from engine.job.draws import skewed
from engine.job.modes import Mode
from engine.job.sample import Mask
from engine.job.targets import rows_of
from engine.verdict import Part

__all__ = ["load_ratio", "needs_trunk", "waits_for_loads"]

_LOAD_RATIO: Final = (0.60, 0.93, 1.47)
"""Sensible gain over what the equipment takes out at full air, where nobody stated loads.

9, 14 and 22 Btu/h per ft2 over 9,000 Btu/h per ton and 600 ft2 per ton (computed; both common
practice, no published source)."""

_SENSIBLE_BTUH_PER_TON: Final = 9000.0
_LESS_AIR_PER_TON: Final = 350.0
"""Least cooling airflow a load may allow (the coil's usual window begins there)."""
_LESS_AIR_TAKES_OUT: Final = 0.95
"""Sensible capacity at the least air over that at the usual one (common practice)."""
_HALF_TON: Final = 0.5
_RISE_SHARE: Final = 0.95
"""Less air is planned so that the rise stays 5 % under the plate's top (judgement)."""
_SCALED: Final = (Mode.COOLING_HIGH, Mode.COOLING_LOW, Mode.HEAT_PUMP_HEATING)
_SECOND_RETURN: Final = 0.5
"""Air left in a return trunk when a second return of the same size is built beside it."""


def load_ratio(assessment: Assessment) -> Array:
    """Sensible gain over what the equipment takes out at full air, (n,): stated or believed."""
    job, draws = assessment.job, assessment.house.draws
    gain, tons = job.number("loads.sensible_gain_btuh"), job.number("equipment.cooling_tons")
    if gain is not None and tons is not None:
        return np.full(draws.samples, gain / (tons * _SENSIBLE_BTUH_PER_TON))
    return skewed(draws.normals("load over capacity"), *_LOAD_RATIO)


def needs_trunk(assessment: Assessment, it: ModeAssessment) -> Mask:
    """In which samples a trunk of this mode stays over whatever else is changed, (n,)."""
    return _trunk_stays_over(assessment, it, _air_left(assessment, it))


def waits_for_loads(assessment: Assessment, it: ModeAssessment) -> Mask:
    """In which samples less air would clear a trunk, but nobody may plan it: no loads, (n,)."""
    none = np.zeros(assessment.house.draws.samples, dtype=bool)
    if it.mode not in _SCALED or assessment.job.is_known("loads.sensible_gain_btuh"):
        return none
    full_air = np.ones(none.size)
    return _trunk_stays_over(assessment, it, full_air) & ~needs_trunk(assessment, it)


def _trunk_stays_over(assessment: Assessment, it: ModeAssessment, air: Array) -> Mask:
    """In which samples a trunk is over at a share of its air, (n,); beside a second return."""
    found = np.zeros(assessment.house.draws.samples, dtype=bool)
    for raw in it.raws:
        if raw.votes and raw.part in (Part.SUPPLY_TRUNK, Part.RETURN_TRUNK):
            found |= _stays_over(raw, air * _return_left(assessment, raw))
    return found


def _stays_over(raw: Raw, left: Array) -> Mask:
    over = raw.judged.over[1:]
    if raw.maximum is None:
        return over
    most = np.broadcast_to(np.asarray(raw.maximum), raw.figure.shape)[1:]
    return np.asarray(over & (raw.figure[1:] * left > most))


def _return_left(assessment: Assessment, raw: Raw) -> float:
    """What is left of the air in a return trunk beside a second return, if one can be built."""
    job = assessment.job
    if raw.check != "return_trunk_velocity" or job.word("house.clearance_for_return") == "no":
        return 1.0
    single = all((job.length(name) or 1) <= 1 for name in ("return.drops", "return.trunks"))
    return _SECOND_RETURN if single and job.length("return.grilles") != 0 else 1.0


def _air_left(assessment: Assessment, it: ModeAssessment) -> Array:
    """Least share of its air that a mode could do with, (n,); at most 1."""
    least = np.ones(assessment.house.draws.samples)
    if it.mode.is_burner:
        if it.target.least_cfm is not None:
            least = it.target.least_cfm[1:] / _RISE_SHARE / it.target.airflow_cfm[1:]
    elif it.mode in _SCALED:
        least = _cooling_air_left(assessment, it)
    return np.minimum(least, 1.0)


def _cooling_air_left(assessment: Assessment, it: ModeAssessment) -> Array:
    job, ratio = assessment.job, load_ratio(assessment)
    tons = job.number("equipment.cooling_tons")
    least = np.ones(ratio.size)
    if tons is None:
        return least
    if tons - _HALF_TON >= 1.0 and _heats_enough(assessment, tons - _HALF_TON):
        share = (tons - _HALF_TON) / tons
        least = np.where(ratio <= share, share, least)
    if it.mode is Mode.COOLING_HIGH and len(rows_of(job, it.mode)) > 1:
        share_of_now = _LESS_AIR_PER_TON * tons / it.target.airflow_cfm[1:]
        least = np.where(ratio <= _LESS_AIR_TAKES_OUT, np.minimum(least, share_of_now), least)
    return least


def _heats_enough(assessment: Assessment, tons: float) -> bool:
    """Whether smaller equipment would still heat the house: never assumed of a heat pump."""
    if assessment.job.word("equipment.kind") not in ("heat_pump", "dual_fuel"):
        return True
    loss = assessment.job.number("loads.heat_loss_btuh")
    return loss is not None and loss <= 12000.0 * tons
