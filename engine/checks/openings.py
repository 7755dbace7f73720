"""How fast the air goes through return openings and supply registers, on their gross size."""

from dataclasses import replace
from typing import Final

import numpy as np

from engine.checks.context import Context
from engine.checks.raw import Raw, against
from engine.job.openings import Openings
from engine.job.sample import Mask
from engine.trade.limits import Role, velocity_limits
from engine.trade.noise import FREE_AREA_SHARE, is_beyond_nc_table, noise_criterion_nc
from engine.verdict import FindingStatus, Harm, Part, TurnsAt

__all__ = ["return_openings", "supply_registers"]

_FASTEST_FPM: Final = 5000.0
"""Far beyond the last band of the noise table, where only "at least" is said."""


def return_openings(context: Context) -> list[Raw]:
    """Face speed of the return openings: as filter grilles where a filter sits in them."""
    openings = context.openings
    if openings is None:
        return []
    found = []
    if not openings.filtered.all():
        found.append(_opening(context, openings, Role.RETURN_GRILLE, ~openings.filtered))
    if openings.filtered.any():
        found.append(_opening(context, openings, Role.FILTER_GRILLE, openings.filtered))
    return found


def _opening(context: Context, openings: Openings, role: Role, present: Mask) -> Raw:
    figure = context.target_cfm / openings.area_ft2
    limit = velocity_limits(role, limits=context.limits)
    judged = against(figure, limit.recommended_fpm, limit.maximum_fpm, present=present)
    filtered = role is Role.FILTER_GRILLE
    raw = Raw(
        check="filter_grille_velocity" if filtered else "return_grille_velocity",
        part=Part.RETURN_OPENINGS,
        mode=context.mode,
        where="filter grille" if filtered else "return grille",
        figure=figure,
        unit="fpm",
        recommended=limit.recommended_fpm,
        maximum=limit.maximum_fpm,
        judged=judged,
        harm=Harm.NOISE,
        rests_on=(*openings.rests_on, *context.target.rests_on),
        formula=_formula(context, openings.sizes, float(openings.area_ft2[0]), float(figure[0])),
        source=limit.source,
        note=_loudness(Role.FILTER_GRILLE if filtered else Role.RETURN_GRILLE, float(figure[0])),
    )
    return _with_turn(raw, context, openings)


def _with_turn(raw: Raw, context: Context, openings: Openings) -> Raw:
    """Where one opening has a stated width, its width; else the airflow."""
    fine = raw.status is FindingStatus.FINE
    limit = raw.recommended if fine else raw.maximum
    assert limit is not None  # both kinds of opening have both limits
    over = raw.status is FindingStatus.OVER
    need_ft2 = context.target.likely_cfm / float(np.asarray(limit))
    if openings.widths:
        width, height, count = openings.widths[0]
        rest = float(openings.area_ft2[0]) - width * height * count / 144.0
        value = (need_ft2 - rest) * 144.0 / (height * count)
        if value > 0.0:
            turn = TurnsAt(openings.size_keys[0], value, "at most" if over else "at least")
            return replace(raw, turns_at=turn)
    airflow = float(openings.area_ft2[0]) * float(np.asarray(limit))
    key = f"target.{context.mode}_cfm"
    turn = TurnsAt(key, airflow, "at least" if over else "at most")
    return replace(raw, turns_at=turn)


def supply_registers(context: Context) -> list[Raw]:
    """Face speed of the supply registers, where their sizes were stated."""
    registers = context.registers
    if registers is None:
        return []
    told = context.house.stated_number("house.supply_registers_count")
    total = registers.count if told is None else np.maximum(told, registers.count)
    if told is None and registers.count[0] < 4.0:
        return []  # a few registers of a house say nothing without how many there are
    figure = context.target_cfm * registers.count / total / registers.area_ft2
    limit = velocity_limits(Role.REGISTER, limits=context.limits)
    air = f"{context.target.likely_cfm:,.0f} CFM x {registers.count[0]:g} of {total[0]:g} registers"
    return [
        Raw(
            check="register_velocity",
            part=Part.SUPPLY_BRANCHES,
            mode=context.mode,
            where="supply registers",
            figure=figure,
            unit="fpm",
            recommended=limit.recommended_fpm,
            maximum=limit.maximum_fpm,
            judged=against(figure, limit.recommended_fpm, limit.maximum_fpm),
            harm=Harm.NOISE,
            rests_on=(
                *registers.rests_on,
                "house.supply_registers_count",
                *context.target.rests_on,
            ),
            formula=f"{air} / ({registers.sizes} in. / 144) = {figure[0]:,.0f} fpm",
            source=limit.source,
            note=_loudness(Role.REGISTER, float(figure[0])),
        )
    ]


def _formula(context: Context, sizes: str, area_ft2: float, figure: float) -> str:
    air = f"{context.target.likely_cfm:,.0f} CFM"
    if sizes.startswith("a believed"):
        return f"{air} / ({sizes} / 144) = {figure:,.0f} fpm"
    return f"{air} / ({sizes} in. / 144 = {area_ft2:.2f} sq ft) = {figure:,.0f} fpm"


def _loudness(role: Role, gross_fpm: float) -> str:
    free = min(gross_fpm / FREE_AREA_SHARE[1], _FASTEST_FPM)
    if is_beyond_nc_table(role, free):
        return "Expect a loud rush of air there, above NC 45 (a rough guide)."
    nc = float(noise_criterion_nc(role, free))
    return f"About NC {nc:,.0f} there, a rough guide; living rooms want 35 or less."
