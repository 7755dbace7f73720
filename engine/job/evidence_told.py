"""The readings of a job as evidence: from facts a person stated to `Reading`s.

Which of several ways gives the airflow: the one somebody stated, else the temperatures read beside
it with the present equipment's heat, else the present blower's table at the static that was read.
"""

from collections.abc import Callable
from math import hypot
from types import MappingProxyType
from typing import Final

from engine.arrays import Array
from engine.job.belief import Belief, Between, How, Known, likely_number
from engine.job.evidence_airflow import (
    AirflowRead,
    AirflowSource,
    airflow_from_rise,
    airflow_from_strip_heat,
    airflow_told,
)
from engine.job.evidence_dirt import Dirt
from engine.job.evidence_readings import FilterState, Reading, Tap, Tapped, tapped
from engine.job.job import Job
from engine.job.modes import Mode
from engine.physics.blower_table import BlowerTable

__all__ = ["dirt_of", "readings_of"]

_TENTHS: Final = 2.563
"""Standard deviations between the tenth and the ninetieth percentile of a normal (computed)."""

_FACTOR_BY_HOW: Final = {How.PHONE: 2.0, How.GUESSED: 2.0}


def readings_of(
    job: Job,
    airflow_prior_cfm: Callable[[str, Mode | None], Array],
    density_ratio: float = 1.0,
) -> tuple[Reading, ...]:
    """Every reading of a job that holds at least one pressure or an airflow.

    Args:
        job: What is known.
        airflow_prior_cfm: For a reading's key and mode, what is believed of the present system's
            airflow before it, (n,) draws above 0.
        density_ratio: Density of this site's air over standard.

    Returns:
        Readings in the job's order; none if nothing was read.
    """
    found: list[Reading] = []
    for key in job.entries("readings"):
        taps = {tap: taken for tap in Tap if (taken := _taken(job, key, tap)) is not None}
        airflow = _airflow(job, key, density_ratio)
        if not taps and airflow is None:
            continue
        word = job.word(f"{key}.mode")
        mode = None if word is None else Mode(word)
        state = job.word(f"{key}.filter_state")
        found.append(
            Reading(
                key,
                MappingProxyType(taps),
                airflow_prior_cfm(key, mode),
                airflow,
                _table(job, key, mode),
                mode,
                None if state is None else FilterState(state),
                no_coil=job.word(f"{key}.no_coil") == "yes" or job.word("condition.coil") == "none",
            )
        )
    return tuple(found)


def dirt_of(job: Job) -> Dirt:
    """The condition words somebody stated; what nobody looked at is a belief."""
    return Dirt(
        coil=job.word("condition.coil"),
        blower_wheel=job.word("condition.blower_wheel"),
        filter=job.word("condition.filter"),
        second_heat_exchanger=job.word("condition.second_heat_exchanger"),
    )


def _taken(job: Job, key: str, tap: Tap) -> Tapped | None:
    belief = job.stated(f"{key}.{tap}_inwc")
    if belief is None:
        return None
    taken = tapped(tap, likely_number(belief), _widened(belief))
    if isinstance(belief, Between):
        spread = (belief.high - belief.low) / _TENTHS
        return Tapped(taken.value_inwc, hypot(taken.tolerance_inwc, spread))
    return taken


_WIDEST_SHARE: Final = 2.0
"""An airflow told within a wider share than this tells nothing more, and nothing less."""


def _widened(belief: Belief) -> float:
    hedged = isinstance(belief, Known) and belief.hedged
    return _FACTOR_BY_HOW.get(belief.how, 1.0) * (2.0 if hedged else 1.0)


def _airflow(job: Job, key: str, density_ratio: float) -> AirflowRead | None:
    belief = job.stated(f"{key}.airflow_cfm")
    if belief is not None:
        source = AirflowSource(job.word(f"{key}.airflow_source") or AirflowSource.OTHER)
        told = airflow_told(likely_number(belief), source, _widened(belief))
        if not isinstance(belief, Between):
            return told
        spread = (belief.high - belief.low) / _TENTHS / told.airflow_cfm
        share = min(hypot(told.tolerance_share, spread), _WIDEST_SHARE)
        return AirflowRead(told.airflow_cfm, share, source, told.hides_wheel)
    return _airflow_by_rise(job, key, density_ratio)


def _airflow_by_rise(job: Job, key: str, density_ratio: float) -> AirflowRead | None:
    back, supply = job.number(f"{key}.return_degf"), job.number(f"{key}.supply_degf")
    word = job.word(f"{key}.mode")
    if back is None or supply is None or word is None or not 5.0 <= supply - back <= 150.0:
        return None
    mode = Mode(word)
    if mode is Mode.STRIP_HEAT:
        kw = job.number("old.strip_kw")
        return None if kw is None else airflow_from_strip_heat(kw, supply - back, density_ratio)
    if not mode.is_burner:
        return None
    clocked = job.word(f"{key}.airflow_source") == AirflowSource.TEMPERATURE_RISE_CLOCKED
    low = "low_" if mode is Mode.HEATING_LOW else ""
    output = job.number(f"old.heating_{low}output_btuh")
    if output is not None:
        return airflow_from_rise(output, 1.0, supply - back, density_ratio, clocked=clocked)
    burnt = job.number(f"old.heating_{low}input_btuh")
    share = job.number("old.heating_efficiency_fraction")
    if burnt is None or share is None:
        return None
    return airflow_from_rise(burnt, share, supply - back, density_ratio, clocked=clocked)


def _table(job: Job, key: str, mode: Mode | None) -> BlowerTable | None:
    """The present blower's table of the setting it ran at; None if that can't be told."""
    told = job.word(f"{key}.setting")
    if told is not None:
        for setting in job.old_blower:
            if setting.table.setting.casefold() == told.casefold():
                return setting.table
        return None
    fitting = [s for s in job.old_blower if mode is not None and mode in s.modes]
    if len(fitting) == 1:
        return fitting[0].table
    return job.old_blower[0].table if len(job.old_blower) == 1 else None
