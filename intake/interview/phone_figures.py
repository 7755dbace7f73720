"""The arithmetic of a phone call: likely airflow, and speeds that follow from what a caller said.

Rules of thumb, labelled as such; the visit overwrites every one of them.
"""

from dataclasses import dataclass

from engine.job.job import Job
from engine.physics.air import SENSIBLE_FACTOR
from intake.interview.booking_rules import BookingRules

__all__ = [
    "PhoneAirflow",
    "filter_fpm",
    "openings_in2_per_ton",
    "phone_airflow",
    "register_cfm",
    "trunk_fpm",
]

_IN2_PER_FT2 = 144.0


@dataclass(frozen=True, slots=True)
class PhoneAirflow:
    """The airflow that a phone call points at.

    Attributes:
        airflow_cfm: Likely airflow.
        tons: Tons it stands for.
        firm: Whether somebody said a size; False if it follows from the floor area alone.
        because: Where it comes from, for a person.
    """

    airflow_cfm: float
    tons: float
    firm: bool
    because: str


def phone_airflow(job: Job, rules: BookingRules) -> PhoneAirflow | None:
    """The likely airflow of the new equipment, CFM; None if nothing points at one.

    Cooling goes by tons, heat alone by output over 1.08 times the rise, and if no size is known
    by floor area.
    """
    per_ton = rules.cfm_per_ton_humid if job.word("house.humid") == "yes" else rules.cfm_per_ton
    tons = job.number("equipment.cooling_tons") or job.number("old.cooling_tons")
    if tons is not None:
        flow = tons * per_ton
        return PhoneAirflow(flow, tons, True, f"{tons:g} tons at {per_ton:.0f} CFM a ton")
    heat = job.number("equipment.heating_input_btuh") or job.number("old.heating_input_btuh")
    if heat is not None:
        efficiency = job.number("old.heating_efficiency_fraction") or rules.heating_efficiency
        flow = heat * efficiency / (SENSIBLE_FACTOR * rules.heating_rise_degf)
        because = (
            f"{heat:,.0f} BTU/h at {100 * efficiency:.0f} % over 1.08 x"
            f" {rules.heating_rise_degf:.0f} F"
        )
        return PhoneAirflow(flow, flow / rules.cfm_per_ton, True, because)
    area = job.number("house.floor_area_ft2")
    if area is not None:
        guess = area / rules.area_per_ton_ft2
        because = f"{area:,.0f} sq ft at {rules.area_per_ton_ft2:.0f} a ton, a guess"
        return PhoneAirflow(guess * per_ton, guess, False, because)
    return None


def filter_fpm(job: Job, airflow_cfm: float, rules: BookingRules) -> float | None:
    """Face speed at the filters, fpm, on their true size; None if no size was read out."""
    area_in2 = 0.0
    for entry in job.entries("filters"):
        width, height = job.number(f"{entry}.width_in"), job.number(f"{entry}.height_in")
        if width is not None and height is not None:
            excess = rules.filter_nominal_excess_in
            area_in2 += (width - excess) * (height - excess) * (job.number(f"{entry}.count") or 1.0)
    return airflow_cfm * _IN2_PER_FT2 / area_in2 if area_in2 else None


def openings_in2_per_ton(job: Job, tons: float) -> float | None:
    """Gross return openings per ton, in2; None if no size was told."""
    area_in2 = 0.0
    for entry in job.entries("return.grilles"):
        width, height = job.number(f"{entry}.width_in"), job.number(f"{entry}.height_in")
        if width is not None and height is not None:
            area_in2 += width * height * (job.number(f"{entry}.count") or 1.0)
    return area_in2 / tons if area_in2 else None


def register_cfm(job: Job, airflow_cfm: float) -> float | None:
    """Airflow per supply register, CFM; None if nobody counted."""
    count = job.number("house.supply_registers_count")
    return airflow_cfm / count if count else None


def trunk_fpm(job: Job, airflow_cfm: float) -> float | None:
    """Speed in the main duct, fpm: all the air one way, half of it if ducts leave both ways.

    None if no size was told.
    """
    width, height = (job.number(f"supply.trunks.0.{side}_in") for side in ("width", "height"))
    diameter = job.number("supply.trunks.0.diameter_in")
    if diameter is not None:
        area_in2 = 3.141592653589793 / 4.0 * diameter * diameter
    elif width is not None and height is not None:
        area_in2 = width * height
    else:
        return None
    both = job.word("phone.trunk_directions") == "both"
    return airflow_cfm * (0.5 if both else 1.0) * _IN2_PER_FT2 / area_in2
