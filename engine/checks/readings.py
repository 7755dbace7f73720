"""Readings as they were taken: the total against the rating, and each part against its budget.

They tell of the present system at its own airflow; scaled to the target they tell what the same
ducts would ask for. Their weight in the verdict goes through the blower's operating point.
"""

from typing import Final

import numpy as np

from engine.checks.budget import over_their_share, shares_of_taps
from engine.checks.context import Context
from engine.checks.raw import Judged, Raw, against
from engine.job.evidence_readings import Tap, tapped, total_external_inwc
from engine.verdict import Harm, Part, PressureShare

__all__ = ["readings"]

_DUCT_EXPONENT: Final = 1.9


def readings(context: Context) -> list[Raw]:
    """For every reading: its total external static, told against the rating."""
    found = []
    for key in context.job.entries("readings"):
        raw = _total(context, key)
        if raw is not None:
            found.append(raw)
    return found


def _total(context: Context, key: str) -> Raw | None:
    job, house = context.job, context.house
    told = {tap: job.number(f"{key}.{tap}_inwc") for tap in Tap}
    taps = {tap: tapped(tap, value) for tap, value in told.items() if value is not None}
    inside = {
        "coil_is_inside": job.word("old.coil_outside_rating") == "no",
        "filter_is_inside": job.word("old.filter_outside_rating") == "no",
    }
    total = total_external_inwc(taps, **inside)
    if total is None:
        return None
    no_coil = job.word(f"{key}.no_coil") == "yes" or job.word("condition.coil") == "none"
    shares = shares_of_taps(taps, total, context.limits, no_coil=no_coil, **inside)
    rated_key = (
        "old.rated_static_inwc"
        if "old.rated_static_inwc" in job.beliefs
        else "equipment.rated_static_inwc"
    )
    rated = house.number(rated_key)
    figure = house.full(total)
    airflow = job.number(f"{key}.airflow_cfm")
    note = "Without the airflow it was read at, it can't be brought to the target."
    if airflow is not None:
        scaled = total * (context.target.likely_cfm / airflow) ** _DUCT_EXPONENT
        note = (
            f"At {context.target.likely_cfm:,.0f} instead of {airflow:,.0f} CFM the same path "
            f"would take about {scaled:.2f} in."
        )
    tight = against(figure, rated, None).tight
    named = over_their_share(shares)
    if named:
        note = f"{note} {_shares_words(shares, named)}"
    keys = tuple(f"{key}.{tap}_inwc" for tap in taps)
    more = (f"{key}.airflow_cfm",) if airflow is not None else ()
    none = np.zeros(house.members, dtype=bool)
    return Raw(
        check="reading_total",
        part=Part.BLOWER,
        mode=context.mode,
        where=f"reading {int(key.rsplit('.', 1)[1]) + 1}",
        figure=figure,
        unit="in. w.c.",
        recommended=rated,
        maximum=None,
        judged=Judged(none, tight),
        harm=Harm.EQUIPMENT,
        rests_on=(*keys, *more, rated_key),
        formula=f"{total:.2f} in. read, {rated[0]:.2f} in. rated",
        source="the rating is the maker's test point",
        note=note,
        because=named if tight[0] else (),
        shares=shares,
    )


def _shares_words(shares: tuple[PressureShare, ...], named: tuple[str, ...]) -> str:
    """What the parts above their usual share take, worst first."""
    told = {one.part: one for one in shares}
    words = [
        f"the {name} takes {told[name].inwc:.2f} in., {100.0 * told[name].share:.0f} % "
        f"({100.0 * told[name].usual_share:.0f} % is usual)"
        for name in named
    ]
    return f"Of it {' and '.join(words)}."
