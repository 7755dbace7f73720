"""True sentences with a number about this house, told as soon as what they need is known."""

from collections.abc import Callable
from math import ceil
from typing import Final

from engine.job.belief import How
from engine.job.job import Job
from engine.physics.air import SENSIBLE_FACTOR
from engine.physics.duct import Shape, area_ft2, velocity_fpm
from engine.trade.limits import Role, velocity_limits
from engine.trade.materials import Material, is_flexible
from engine.trade.measuring import MeasuredWhere, inside_dimension_in
from intake.interview.told import figure

__all__ = ["insights", "new_insights"]


def needed_cfm(job: Job) -> float | None:
    """The largest airflow that somebody stated for the new equipment."""
    keys = ("cooling_high", "heat_pump_heating", "heating_high")
    flows = [flow for key in keys if (flow := job.number(f"target.{key}_cfm")) is not None]
    return max(flows, default=None)


def _likely_cfm(job: Job) -> tuple[float, str] | None:
    stated = needed_cfm(job)
    if stated is not None:
        return stated, f"{stated:,.0f} CFM"
    tons = job.number("equipment.cooling_tons")
    if tons is None:
        return None
    return 400.0 * tons, f"{400.0 * tons:,.0f} CFM (400 a ton until you know better)"


def _need(job: Job) -> str:
    """The clear area that the airflow asks of a bare metal trunk."""
    flow = _likely_cfm(job)
    if flow is None:
        return ""
    limit = velocity_limits(Role.SUPPLY_TRUNK, Material.GALVANIZED).maximum_fpm
    area_in2 = 144.0 * flow[0] / limit
    wide, tall = _trunk_of(area_in2)
    return (
        f"{flow[1]} needs at least {area_in2:.0f} sq in. of bare metal trunk in all to stay at or"
        f" under {limit:.0f} fpm: one {figure(wide)} x {figure(tall)} in.,"
        " or the same split over two."
    )


def _trunk_of(area_in2: float) -> tuple[float, float]:
    """The flattest usual trunk of at least this area, at most three times as wide as tall."""
    for tall in (8.0, 10.0, 12.0):
        wide = 2.0 * ceil(area_in2 / tall / 2.0)
        if wide <= 3.0 * tall:
            return wide, tall
    return wide, tall


def _heating(job: Job) -> str:
    output = _heat_output(job)
    low, high = job.number("equipment.rise_low_degf"), job.number("equipment.rise_high_degf")
    if output is None or low is None or high is None:
        return ""
    most, least = output / (SENSIBLE_FACTOR * low), output / (SENSIBLE_FACTOR * high)
    return (
        f"{output:,.0f} BTU/h at a rise of {low:.0f} to {high:.0f} F is {least:,.0f} to"
        f" {most:,.0f} CFM at sea level: heating must land in there."
    )


def _heat_output(job: Job) -> float | None:
    stated = job.number("equipment.heating_output_btuh")
    heat, share = (
        job.number("equipment.heating_input_btuh"),
        job.number("equipment.heating_efficiency_fraction"),
    )
    if stated is not None:
        return stated
    return heat * share if heat is not None and share is not None else None


def _clear_area_ft2(job: Job, key: str) -> float | None:
    """Clear area of one duct as it was told, ft2; None if it can't be told yet."""
    word = job.word(f"{key}.measured_where")
    material = job.word(f"{key}.material")
    lined = material in ("lined_metal", "duct_board")
    liner = job.number(f"{key}.liner_in")
    if lined and liner is None and word != "inside":
        return None
    where = MeasuredWhere(word) if word else MeasuredWhere.BARE_METAL
    sides: dict[str, float] = {}
    for name in ("width_in", "height_in", "diameter_in"):
        size = job.number(f"{key}.{name}")
        if size is not None:
            clear = float(inside_dimension_in(size, where, (liner or 0.0) if lined else 0.0))
            if clear < 2.0:
                return None
            sides[name] = clear
    shape = job.word(f"{key}.shape") or "rect"
    complete = "diameter_in" in sides if shape == "round" else len(sides) == 2
    return float(area_ft2(Shape(shape), **sides)) if complete else None


def _speed(job: Job, key: str, role: Role, name: str, split: float) -> str:
    flow = _likely_cfm(job)
    area = _clear_area_ft2(job, key)
    material = Material(job.word(f"{key}.material") or "galvanized")
    if flow is None or area is None:
        return ""
    speed = float(velocity_fpm(flow[0] / split, area))
    limit = velocity_limits(role, material).maximum_fpm
    soft = "flex" if is_flexible(material) else "metal or board"
    share = "" if split == 1.0 else f", shared by {split:g},"
    return (
        f"{flow[1]}{share} through the {name} ({144.0 * area:.0f} sq in. clear) runs at"
        f" {speed:,.0f} fpm; {limit:.0f} is the most for {soft} there."
    )


def _trunk(job: Job) -> str:
    belief = job.stated("supply.trunks.0.count")
    count = job.number("supply.trunks.0.count")
    if (
        belief is None
        or count is None
        or belief.how is How.ASSUMED
        or (job.length("supply.trunks") or 0) > 1
    ):
        return ""
    return _speed(job, "supply.trunks.0", Role.SUPPLY_TRUNK, "supply trunk", count)


def _drop(job: Job) -> str:
    if (job.length("return.drops") or 0) > 1:
        return ""
    count = job.number("return.drops.0.count") or 1.0
    return _speed(job, "return.drops.0", Role.RETURN_DROP, "return drop", count)


def _openings(job: Job) -> str:
    flow = _likely_cfm(job)
    area_in2 = 0.0
    for entry in job.entries("return.grilles"):
        wide, tall = job.number(f"{entry}.width_in"), job.number(f"{entry}.height_in")
        if wide is None or tall is None:
            return ""
        area_in2 += wide * tall * (job.number(f"{entry}.count") or 1.0)
    if flow is None or not area_in2:
        return ""
    speed = flow[0] * 144.0 / area_in2
    filtered = job.word("filters.0.place") == "grille"
    limits = velocity_limits(Role.FILTER_GRILLE if filtered else Role.RETURN_GRILLE)
    name = "filter grille" if filtered else "return openings"
    return (
        f"{area_in2:.0f} sq in. of {name} take {flow[1]} at {speed:,.0f} fpm, gross;"
        f" {limits.recommended_fpm:.0f} is advised, {limits.maximum_fpm:.0f} the most."
    )


_INSIGHTS: Final[dict[str, Callable[[Job], str]]] = {
    "need": _need,
    "heating": _heating,
    "trunk": _trunk,
    "drop": _drop,
    "openings": _openings,
}


def insights(job: Job) -> dict[str, str]:
    """Every sentence that is true of what is known, by its name."""
    return {name: words for name, tell in _INSIGHTS.items() if (words := tell(job))}


def new_insights(before: Job, after: Job) -> list[str]:
    """The best one sentence that an answer has made possible; empty if it made none."""
    old, new = insights(before), insights(after)
    fresh = [name for name in new if name not in old]
    return [new[fresh[-1]]] if fresh else []
