"""The airflow modes of a job, and what air each of them needs.

A target is what somebody stated, else what follows from a temperature rise or difference, from the
maker's cooling rows, from heat output and the plate's rise range, and only without any of these a
belief by tonnage.
"""

from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.job.job import CoolingRow, Job
from engine.job.modes import Mode
from engine.job.priors import believed_tons
from engine.job.sample import House
from engine.physics.air import density_ratio, sensible_factor
from engine.trade.limits import LIMITS, Limits

__all__ = ["Target", "air_ratio", "heat_output_btuh", "modes_of", "rows_of", "target_of"]

_STRIP_BTUH_PER_KW: Final = 3412.0
_SMALLEST_CFM, _LARGEST_CFM = 100.0, 4000.0

_COOLING_FACTS: Final = (
    "equipment.cooling_tons",
    "equipment.stages",
    "old.cooling_tons",
    "loads.sensible_gain_btuh",
    "new.coil_drop_inwc",
)
_HEATING_FACTS: Final = (
    "equipment.heating_input_btuh",
    "equipment.heating_output_btuh",
    "equipment.rise_low_degf",
    "equipment.rise_high_degf",
)
_WITH_COOLING: Final = ("heat_pump", "air_handler", "dual_fuel", "packaged")


@dataclass(frozen=True, slots=True)
class Target:
    """What air a mode needs.

    Attributes:
        mode: The mode.
        airflow_cfm: Actual CFM, (n + 1,).
        known: Whether it follows from what somebody stated, not from tonnage alone.
        rests_on: Keys it comes from.
        formula: Where the figure of the central house comes from; empty if it was stated.
        least_cfm: Least air that will do, where any airflow of a range does, (n + 1,); else None.
        most_cfm: Most air that will do there; None where `least_cfm` is.
    """

    mode: Mode
    airflow_cfm: Array
    known: bool
    rests_on: tuple[str, ...]
    formula: str = ""
    least_cfm: Array | None = None
    most_cfm: Array | None = None

    def met_by(self, airflow_cfm: Array) -> "Target":
        """The target a blower setting meets: what it gives, as far as the range allows.

        Args:
            airflow_cfm: What the setting gives, (n + 1,).
        """
        if self.least_cfm is None or self.most_cfm is None:
            return self
        return replace(self, airflow_cfm=np.clip(airflow_cfm, self.least_cfm, self.most_cfm))

    @property
    def likely_cfm(self) -> float:
        """The central house's."""
        return float(self.airflow_cfm[0])


def modes_of(job: Job) -> tuple[Mode, ...]:
    """The modes this job's equipment runs in, in the order of `Mode`; at least one."""
    kind = job.word("equipment.kind")
    stages = job.word("equipment.stages")
    told = {mode for mode in Mode if _is_told(job, mode)}
    found = set(told)
    cooling = bool(job.cooling_rows) or any(key in job.beliefs for key in _COOLING_FACTS)
    heating = any(key in job.beliefs for key in _HEATING_FACTS)
    if kind in _WITH_COOLING or cooling:
        found.add(Mode.COOLING_HIGH)
    if Mode.COOLING_HIGH in found and (
        stages in ("two", "variable") or any(row.stage == "low" for row in job.cooling_rows)
    ):
        found.add(Mode.COOLING_LOW)
    if kind in ("heat_pump", "dual_fuel"):
        found.add(Mode.HEAT_PUMP_HEATING)
    if kind in ("furnace", "dual_fuel") or heating:
        found.add(Mode.HEATING_HIGH)
    if any(f"equipment.heating_low_{name}_btuh" in job.beliefs for name in ("input", "output")):
        found.add(Mode.HEATING_LOW)
    if any(f"equipment.{name}" in job.beliefs for name in ("strip_kw", "strip_minimum_cfm")):
        found.add(Mode.STRIP_HEAT)
    if not found:
        found.add(Mode.COOLING_HIGH)
    return tuple(mode for mode in Mode if mode in found)


def _is_told(job: Job, mode: Mode) -> bool:
    return any(
        f"target.{mode}_{name}" in job.beliefs for name in ("cfm", "rise_degf", "difference_degf")
    )


def air_ratio(house: House) -> Array:
    """Density of this site's indoor air over standard, (n + 1,)."""
    return house.once(
        "air ratio", lambda: np.asarray(density_ratio(house.number("site.elevation_ft")))
    )


def rows_of(job: Job, mode: Mode) -> tuple[CoolingRow, ...]:
    """The maker's rows of a cooling mode's stage, by rising airflow."""
    stage = "low" if mode is Mode.COOLING_LOW else "high"
    rows = (row for row in job.cooling_rows if row.stage == stage)
    return tuple(sorted(rows, key=lambda row: row.airflow_cfm))


def heat_output_btuh(house: House, mode: Mode) -> tuple[Array, tuple[str, ...]] | None:
    """Heat put into the air in a burner or strip mode, and its keys; None if nothing tells."""
    if mode is Mode.STRIP_HEAT:
        kw = house.stated_number("equipment.strip_kw")
        return None if kw is None else (kw * _STRIP_BTUH_PER_KW, ("equipment.strip_kw",))
    if not mode.is_burner:
        return None
    low = "low_" if mode is Mode.HEATING_LOW else ""
    key = f"equipment.heating_{low}output_btuh"
    stated = house.stated_number(key)
    if stated is not None:
        return stated, (key,)
    key = f"equipment.heating_{low}input_btuh"
    burnt = house.stated_number(key)
    if burnt is None:
        return None
    share = house.stated_or("equipment.heating_efficiency_fraction", 0.79, 0.80, 0.95)
    return burnt * share, (key, "equipment.heating_efficiency_fraction")


def target_of(house: House, mode: Mode, limits: Limits = LIMITS) -> Target:
    """What air a mode needs, in actual CFM.

    Args:
        house: The house.
        mode: One of its modes.
        limits: The office's figures: airflow per ton where nothing else tells.
    """
    found = (
        _stated(house, mode)
        or _from_difference(house, mode)
        or _from_minimum(house, mode, limits)
        or _from_rows(house, mode, limits)
        or _from_output(house, mode)
        or _from_other_mode(house, mode, limits)
        or _from_tons(house, mode, limits)
    )
    airflow = np.clip(found.airflow_cfm, _SMALLEST_CFM, _LARGEST_CFM)
    return replace(found, airflow_cfm=airflow)


def _stated(house: House, mode: Mode) -> Target | None:
    key = f"target.{mode}_cfm"
    airflow = house.stated_number(key)
    if airflow is None:
        return None
    if house.job.word(f"target.{mode}_is_standard_air") == "yes":
        ratio = air_ratio(house)
        formula = (
            f"{airflow[0]:,.0f} standard CFM / {ratio[0]:.3f} = {airflow[0] / ratio[0]:,.0f} CFM"
        )
        return Target(mode, airflow / ratio, True, (key, "site.elevation_ft"), formula)
    return Target(mode, airflow, house.is_stated(key), (key,))


def _from_difference(house: House, mode: Mode) -> Target | None:
    """From a wanted rise with the heat output, or a wanted difference with the sensible gain."""
    rise_key, difference_key = f"target.{mode}_rise_degf", f"target.{mode}_difference_degf"
    rise = house.stated_number(rise_key)
    if rise is not None and (heat := heat_output_btuh(house, mode)) is not None:
        return _by_heat(house, mode, heat[0], rise, (rise_key, *heat[1]))
    difference = house.stated_number(difference_key)
    gain_key = "loads.sensible_gain_btuh"
    gain = house.stated_number(gain_key)
    if difference is not None and gain is not None and mode.is_cooling:
        return _by_heat(house, mode, gain, difference, (difference_key, gain_key))
    return None


def _from_minimum(house: House, mode: Mode, limits: Limits) -> Target | None:
    """Strips run at the airflow of the other modes, or any down to the least their kit allows."""
    key = "equipment.strip_minimum_cfm"
    least = house.stated_number(key) if mode is Mode.STRIP_HEAT else None
    if least is None:
        return None
    other = _from_other_mode(house, mode, limits) or _from_tons(house, mode, limits)
    most = np.maximum(other.airflow_cfm, least)
    formula = f"as in the other modes; the kit's least is {least[0]:,.0f} CFM"
    return Target(mode, most, True, (key, *other.rests_on), formula, least, most)


def _by_heat(
    house: House, mode: Mode, heat: Array, difference: Array, rests_on: tuple[str, ...]
) -> Target:
    ratio = air_ratio(house)
    airflow = heat / (sensible_factor(ratio) * difference)
    formula = (
        f"{heat[0]:,.0f} Btu/h / (1.08 x {ratio[0]:.3f} x {difference[0]:.0f} F) = "
        f"{airflow[0]:,.0f} CFM"
    )
    known = all(house.is_stated(key) for key in rests_on)
    return Target(mode, airflow, known, (*rests_on, "site.elevation_ft"), formula)


def _from_rows(house: House, mode: Mode, limits: Limits) -> Target | None:
    if not mode.is_cooling:
        return None
    rows = rows_of(house.job, mode)
    if not rows:
        return None
    per_ton = limits.cooling_default_cfm_per_ton.value
    meets = [row for row in rows if _meets_loads(house.job, row, mode)]
    tons = max(row.total_btuh for row in rows) / 12000.0
    best = min(meets or rows, key=lambda row: abs(row.airflow_cfm - per_ton * tons))
    formula = f"the maker's row at {best.airflow_cfm:,.0f} CFM"
    return Target(mode, house.full(best.airflow_cfm), True, ("equipment.cooling_rows",), formula)


def _meets_loads(job: Job, row: CoolingRow, mode: Mode) -> bool:
    if mode is Mode.COOLING_LOW:  # the low stage need not meet the design load
        return False
    sensible = job.number("loads.sensible_gain_btuh")
    latent = job.number("loads.latent_gain_btuh")
    if sensible is None:
        return False
    if row.sensible_btuh < sensible:
        return False
    return latent is None or row.total_btuh - row.sensible_btuh >= latent


def _from_output(house: House, mode: Mode) -> Target | None:
    """Heat output over the plate's rise range: any airflow of it will do, the middle is likely."""
    heat = heat_output_btuh(house, mode)
    if heat is None:
        return None
    if mode is Mode.STRIP_HEAT:
        return None
    low = house.stated_or("equipment.rise_low_degf", 25.0, 35.0, 45.0)
    high = house.stated_or("equipment.rise_high_degf", low + 25.0, low + 30.0, low + 35.0)
    keys = (*heat[1], "equipment.rise_low_degf", "equipment.rise_high_degf")
    middle = _by_heat(house, mode, heat[0], (low + high) / 2.0, keys)
    hot = heat[0] / sensible_factor(air_ratio(house))
    return replace(middle, least_cfm=hot / high, most_cfm=hot / low)


def _from_other_mode(house: House, mode: Mode, limits: Limits) -> Target | None:
    """Modes whose airflow is told by a stated one: a low stage, heat pump heating, strips."""
    if mode is Mode.COOLING_LOW:
        high = target_of(house, Mode.COOLING_HIGH, limits)
        share = house.assumed(
            "low over high cooling airflow", 0.55, 0.68, 0.80, fact=f"target.{mode}_cfm"
        )
        formula = f"{share[0]:.2f} x {high.likely_cfm:,.0f} CFM of the high stage"
        return Target(mode, high.airflow_cfm * share, False, high.rests_on, formula)
    if mode in (Mode.HEAT_PUMP_HEATING, Mode.STRIP_HEAT):
        like = Mode.COOLING_HIGH
        if like in modes_of(house.job):
            high = target_of(house, like, limits)
            more = house.assumed(
                f"{mode} over cooling airflow", 0.95, 1.0, 1.06, fact=f"target.{mode}_cfm"
            )
            formula = f"taken as the {high.likely_cfm:,.0f} CFM of cooling"
            return Target(mode, high.airflow_cfm * more, False, high.rests_on, formula)
    return None


def _from_tons(house: House, mode: Mode, limits: Limits) -> Target:
    if mode.is_burner:
        return _burner_by_stock(house, mode)
    tons = believed_tons(house)
    per_ton = house.assumed(
        f"{mode} per ton",
        limits.cooling_low_cfm_per_ton.value,
        limits.cooling_default_cfm_per_ton.value,
        limits.cooling_high_cfm_per_ton.value,
        fact=f"target.{mode}_cfm",
    )
    formula = f"{per_ton[0]:,.0f} CFM per ton x {tons[0]:g} tons = {per_ton[0] * tons[0]:,.0f} CFM"
    rests = ("equipment.cooling_tons", f"target.{mode}_cfm")
    return Target(mode, tons * per_ton, False, rests, formula)


def _burner_by_stock(house: House, mode: Mode) -> Target:
    """A furnace of which nothing but its kind is known."""
    rise = house.assumed(
        "middle of a usual rise range", 40.0, 50.0, 60.0, fact="equipment.rise_high_degf"
    )
    key = "equipment.heating_input_btuh"
    burnt = house.assumed(key, 50000.0, 80000.0, 105000.0)
    share = house.stated_or("equipment.heating_efficiency_fraction", 0.79, 0.80, 0.95)
    part = 0.65 if mode is Mode.HEATING_LOW else 1.0
    found = _by_heat(house, mode, burnt * share * part, rise, (key,))
    rests = (key, f"target.{mode}_cfm", "equipment.rise_high_degf")
    return Target(mode, found.airflow_cfm, False, rests, found.formula)
