"""Facts that can't be true beside each other."""

from typing import Final

from engine.errors import FactError
from engine.job.belief import likely_number
from engine.job.job import Job
from engine.job.sections import ROLES, parent_of
from engine.trade.fittings import FITTINGS
from engine.trade.measuring import MEASURED_WHERE, MeasuredWhere

__all__ = ["require_possible"]

_ORDERED: Final = (
    ("equipment.rise_low_degf", "equipment.rise_high_degf"),
    ("old.rise_low_degf", "old.rise_high_degf"),
    ("equipment.heating_low_input_btuh", "equipment.heating_input_btuh"),
    ("equipment.heating_output_btuh", "equipment.heating_input_btuh"),
    ("equipment.heating_low_output_btuh", "equipment.heating_output_btuh"),
    ("equipment.rated_static_inwc", "equipment.max_static_inwc"),
    ("old.heating_low_input_btuh", "old.heating_input_btuh"),
    ("old.heating_output_btuh", "old.heating_input_btuh"),
)
"""The first is at most the second."""

_ROUNDING: Final = 1e-9
_SMALLEST_IN: Final = 1.0


def require_possible(job: Job) -> None:
    """Refuse a job whose facts contradict each other whatever the house.

    Raises:
        FactError: Naming the fact to look at again.
    """
    for lower, upper in _ORDERED:
        low, high = job.number(lower), job.number(upper)
        if low is not None and high is not None and low > high * (1.0 + _ROUNDING):
            raise FactError(lower, f"{low:,g} is above {upper}, {high:,g}")
    _require_cooling(job)
    for name in ROLES:
        for key in job.entries(name):
            _require_section(job, key)
        _require_shares(job, name)
    for key in job.entries("path.fittings"):
        kind = job.word(f"{key}.kind")
        if kind is not None and kind not in FITTINGS and not job.is_known(f"{key}.equivalent_ft"):
            known = ", ".join(FITTINGS)
            raise FactError(
                f"{key}.kind",
                f"{kind!r} is no known fitting; give its equivalent_ft, or one of {known}",
            )


def _require_cooling(job: Job) -> None:
    low = job.number("target.cooling_low_cfm")
    high = job.number("target.cooling_high_cfm")
    if low is not None and high is not None and low > high * (1.0 + _ROUNDING):
        raise FactError(
            "target.cooling_low_cfm", f"{low:,g} is above the high stage's airflow, {high:,g} CFM"
        )


def _require_section(job: Job, key: str) -> None:
    liner = job.number(f"{key}.liner_in") or 0.0
    inside = job.word(f"{key}.measured_where") == "inside"
    for side in ("width_in", "height_in", "diameter_in"):
        size = job.number(f"{key}.{side}")
        if size is not None and not inside and size - 2.0 * liner < _SMALLEST_IN:
            raise FactError(
                f"{key}.liner_in",
                f"{liner:g} in. on both sides leaves nothing of {size:g} in. in {key}.{side}",
            )
    where = job.word(f"{key}.measured_where")
    if where is not None:
        excess = MEASURED_WHERE[MeasuredWhere(where)].bias_low_in
        for side in ("width_in", "height_in", "diameter_in"):
            size = job.number(f"{key}.{side}")
            if size is not None and size - excess - 2.0 * liner < _SMALLEST_IN:
                raise FactError(
                    f"{key}.{side}", f"{size:g} in. read {where.replace('_', ' ')} leaves no duct"
                )
    is_round = job.word(f"{key}.shape") == "round"
    sides = [side for side in ("width_in", "height_in") if f"{key}.{side}" in job.beliefs]
    if is_round and sides and f"{key}.diameter_in" not in job.beliefs:
        raise FactError(f"{key}.shape", f"is round but {key}.{sides[0]} is given; give diameter_in")
    if f"{key}.diameter_in" in job.beliefs and sides:
        raise FactError(
            f"{key}.diameter_in", "is given beside a width or height; a section has one shape"
        )
    parent_of(job, key)


def _require_shares(job: Job, name: str) -> None:
    """Sections that leave the plenum together carry at most all the air."""
    if name in ("supply.branches", "return.branches"):
        entries = list(job.entries(name))
    else:
        entries = [key for key in job.entries(name) if not parent_of(job, key)]
    shares = [
        likely_number(job.beliefs[f"{key}.share_fraction"])
        for key in entries
        if f"{key}.share_fraction" in job.beliefs
    ]
    if sum(shares) > 1.0 + 1e-6:
        raise FactError(
            f"{name}.0.share_fraction", f"shares add up to {sum(shares):g}; together at most 1"
        )
