"""Changes that cost no metal: another blower setting, less air, smaller equipment."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from functools import partial
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.assessment import ModeAssessment
from engine.job.belief import Known
from engine.job.job import CoolingRow, Job
from engine.job.modes import Mode
from engine.job.targets import rows_of
from engine.physics.air import density_ratio, sensible_factor
from engine.remedies.candidate import (
    AIRFLOW_GROUP,
    DESIGN_QUANTILE,
    Candidate,
    Order,
    Situation,
    exact,
)
from engine.verdict import Part

__all__ = ["airflow_candidates"]

_STEP_CFM: Final = 10.0
_RISE_SHARE: Final = 0.95
"""Less air is planned so that the rise stays 5 % under the plate's top (judgement)."""
_LEAST_CHANGE: Final = 0.97
_HALF_TON: Final = 0.5


def airflow_candidates(at: Situation) -> Iterator[Candidate]:
    """Another setting, less air where the loads allow, half a ton less where they allow."""
    for mode in at.failing:
        yield from _settings(at, mode)
    for mode in at.failing:
        yield from _less_air(at, mode)
    smaller = _smaller_equipment(at)
    if smaller is not None:
        yield smaller


def _settings(at: Situation, mode: Mode) -> Iterator[Candidate]:
    """Settings that the table keeps for other modes."""
    for setting in at.job.blower:
        if not setting.modes or mode in setting.modes:
            continue
        name = setting.table.setting
        yield Candidate(
            key=f"setting_{_slug(name)}_for_{mode}",
            words=f"Use blower setting {name} for {mode.words} too, if the board allows it.",
            effort_hours=(0.3, 0.5),
            order_hours=Order.SETTINGS,
            group=f"setting:{mode}",
            edit=partial(_with_setting, name=name, mode=mode),
        )


def _slug(name: str) -> str:
    return "_".join("".join(c if c.isalnum() else " " for c in name.lower()).split()) or "other"


def _with_setting(job: Job, name: str, mode: Mode) -> Job:
    settings = tuple(
        replace(s, modes=(*s.modes, mode)) if s.table.setting == name and mode not in s.modes else s
        for s in job.blower
    )
    return replace(job, blower=settings)


@dataclass(frozen=True, slots=True)
class _Allowed:
    """Airflows below the target that the loads or the plate's rise allow.

    Attributes:
        airflow_cfm: In steps, the least first.
        why: Says of one of them what allows it.
    """

    airflow_cfm: Array
    why: Callable[[float], str]


def _less_air(at: Situation, mode: Mode) -> Iterator[Candidate]:
    """As much as the trunks, and then every duct and opening, can take; and the least."""
    allowed = _allowed_cooling(at, mode) if mode.is_cooling else _allowed_heating(at, mode)
    if allowed is None:
        return
    now_cfm = at.assessment.modes[mode].target.likely_cfm
    below_cfm = _LEAST_CHANGE * now_cfm
    for name, most_cfm in (*_enough(at.assessment.modes[mode]), ("less_air", 0.0)):
        fitting = allowed.airflow_cfm[allowed.airflow_cfm <= most_cfm]
        airflow_cfm = float(fitting[-1] if fitting.size else allowed.airflow_cfm[0])
        if airflow_cfm > below_cfm or (most_cfm and not fitting.size):
            continue
        below_cfm = _LEAST_CHANGE * airflow_cfm
        yield Candidate(
            key=f"{name}_{mode}",
            words=(
                f"Run {mode.words} at {airflow_cfm:,.0f} CFM instead of {now_cfm:,.0f}, by "
                f"the lower blower setting: {allowed.why(airflow_cfm)}."
            ),
            effort_hours=(0.3, 0.5),
            order_hours=Order.LESS_AIR,
            group=f"{AIRFLOW_GROUP}{mode}",
            edit=partial(_with_target, mode=mode, airflow_cfm=airflow_cfm),
        )


def _enough(it: ModeAssessment) -> Iterator[tuple[str, float]]:
    """Airflows at which ever more of what is too fast is surely slow enough."""
    trunks = (("supply_trunk", Part.SUPPLY_TRUNK), ("return_trunk", Part.RETURN_TRUNK))
    carried_cfm = np.full(it.target.airflow_cfm.size - 1, np.inf)
    for name, part in trunks:
        for raw in it.raws:
            if raw.votes and raw.part is part and raw.maximum is not None:
                share = np.broadcast_to(raw.maximum, raw.figure.shape)[1:] / raw.figure[1:]
                carried_cfm = np.minimum(carried_cfm, share * it.target.airflow_cfm[1:])
        if np.isfinite(carried_cfm).all():
            yield f"less_air_for_{name}", _surely(carried_cfm)
    if np.isfinite(it.quiet_cfm).all():
        yield "less_air_for_every_duct", _surely(it.quiet_cfm[1:])


def _surely(carried_cfm: Array) -> float:
    return float(np.quantile(carried_cfm, 1.0 - DESIGN_QUANTILE))


def _with_target(job: Job, mode: Mode, airflow_cfm: float) -> Job:
    for name in ("rise_degf", "difference_degf", "is_standard_air"):
        job = job.without(f"target.{mode}_{name}")
    return job.with_fact(f"target.{mode}_cfm", exact(airflow_cfm))


def _allowed_cooling(at: Situation, mode: Mode) -> _Allowed | None:
    """Airflows at which the maker's rows still meet the sensible and latent gain."""
    if mode is not Mode.COOLING_HIGH:
        return None
    job, limits = at.job, at.limits
    rows = rows_of(job, mode)
    tons = job.number("equipment.cooling_tons")
    gain = job.number("loads.sensible_gain_btuh")
    if len(rows) < 2 or tons is None or gain is None:
        return None
    lowest = max(
        limits.cooling_low_cfm_per_ton.value * tons,
        limits.cooling_floor_cfm_per_ton.value * tons,
        rows[0].airflow_cfm,
    )
    airflow = np.arange(np.ceil(lowest / _STEP_CFM), 400.0) * _STEP_CFM
    airflow = airflow[airflow <= rows[-1].airflow_cfm]
    points = [row.airflow_cfm for row in rows]
    sensible = np.interp(airflow, points, [row.sensible_btuh for row in rows])
    meets = sensible >= gain
    latent = job.number("loads.latent_gain_btuh")
    if latent is not None:
        dry = np.interp(airflow, points, [row.total_btuh - row.sensible_btuh for row in rows])
        meets &= dry >= latent
    if not meets.any():
        return None

    def why(least: float) -> str:
        share = 100.0 * float(np.interp(least, points, [r.sensible_btuh for r in rows])) / gain
        return f"{least / tons:,.0f} CFM per ton, and still {share:.0f} % of the sensible load"

    return _Allowed(airflow[meets], why)


def _allowed_heating(at: Situation, mode: Mode) -> _Allowed | None:
    """Airflows that keep the rise inside the plate's range."""
    if not mode.is_burner:
        return None
    job = at.job
    low = "low_" if mode is Mode.HEATING_LOW else ""
    output = job.number(f"equipment.heating_{low}output_btuh")
    burnt = job.number(f"equipment.heating_{low}input_btuh")
    share = job.number("equipment.heating_efficiency_fraction")
    top = job.number("equipment.rise_high_degf")
    if output is None and burnt is not None and share is not None:
        output = burnt * share
    if output is None or top is None:
        return None
    ratio = float(density_ratio(job.number("site.elevation_ft") or 0.0))
    rise_times_cfm = output / float(sensible_factor(ratio))
    least = np.ceil(rise_times_cfm / (top * _RISE_SHARE) / _STEP_CFM)
    most = at.assessment.modes[mode].target.likely_cfm / _STEP_CFM

    def why(airflow_cfm: float) -> str:
        return (
            f"the rise is then {rise_times_cfm / airflow_cfm:.0f} F, inside the plate's {top:,.0f}"
        )

    return _Allowed(np.arange(least, max(most, least) + 1.0) * _STEP_CFM, why)


def _smaller_equipment(at: Situation) -> Candidate | None:
    """Half a ton less, where the stated loads allow it."""
    job = at.job
    tons = job.number("equipment.cooling_tons")
    gain = job.number("loads.sensible_gain_btuh")
    if tons is None or gain is None or tons - _HALF_TON < 1.0:
        return None
    if not any(mode in at.failing for mode in _SCALED):
        return None
    smaller = tons - _HALF_TON
    share = smaller / tons
    if not _still_meets(job, share, smaller, gain):
        return None
    return Candidate(
        key="smaller_equipment",
        words=(
            f"Choose {smaller:g} tons instead of {tons:g}: the stated loads allow it, and every "
            f"cooling airflow falls to {100.0 * share:.0f} %. Check it with the maker's own table."
        ),
        effort_hours=(0.0, 0.5),
        order_hours=Order.OTHER_EQUIPMENT,
        group=f"{AIRFLOW_GROUP}{Mode.COOLING_HIGH}",  # its air is worked out for itself
        edit=partial(_with_smaller, share=share, tons=smaller),
    )


_SCALED: Final = (Mode.COOLING_HIGH, Mode.COOLING_LOW, Mode.HEAT_PUMP_HEATING)
_USUAL_SENSIBLE_SHARE: Final = 0.75
"""Sensible over total capacity of usual equipment (common practice, no published source)."""


def _still_meets(job: Job, share: float, tons: float, gain: float) -> bool:
    latent = job.number("loads.latent_gain_btuh")
    rows = rows_of(job, Mode.COOLING_HIGH)
    if rows:
        sensible = share * max(row.sensible_btuh for row in rows)
        total = share * max(row.total_btuh for row in rows)
    else:
        total = 12000.0 * tons
        sensible = _USUAL_SENSIBLE_SHARE * total
    if sensible < gain or (latent is not None and total < gain + latent):
        return False
    if job.word("equipment.kind") in ("heat_pump", "dual_fuel"):
        loss = job.number("loads.heat_loss_btuh")
        return loss is not None and loss <= 12000.0 * tons
    return True


def _with_smaller(job: Job, share: float, tons: float) -> Job:
    rows = tuple(
        CoolingRow(
            row.stage, row.airflow_cfm * share, row.total_btuh * share, row.sensible_btuh * share
        )
        for row in job.cooling_rows
    )
    job = replace(job, cooling_rows=rows).with_fact("equipment.cooling_tons", exact(tons))
    for mode in _SCALED:
        key = f"target.{mode}_cfm"
        belief = job.stated(key)
        if isinstance(belief, Known) and not isinstance(belief.value, str):
            job = job.with_fact(key, replace(belief, value=belief.value * share))
        elif belief is not None:
            value = job.number(key)
            assert value is not None  # a stated airflow is a number
            job = job.with_fact(key, exact(value * share))
    return job
