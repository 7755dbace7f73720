"""How fast the air goes in each section of duct, at the target and the section's own share.

Speed is about noise. Slow air is never a fault.
"""

from dataclasses import replace
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.checks.context import Context
from engine.checks.raw import Raw, against
from engine.job.sample import Mask
from engine.job.sections import Duct
from engine.physics.duct import Shape, round_duct_velocity_fpm
from engine.trade.limits import Role, velocity_limits
from engine.trade.materials import Material
from engine.verdict import FindingStatus, Harm, Part, TurnsAt

__all__ = ["velocities"]

_PARTS: Final = {
    Role.SUPPLY_TRUNK: Part.SUPPLY_TRUNK,
    Role.SUPPLY_BRANCH: Part.SUPPLY_BRANCHES,
    Role.RISER: Part.SUPPLY_BRANCHES,
    Role.RETURN_DROP: Part.RETURN_DROP,
    Role.RETURN_TRUNK: Part.RETURN_TRUNK,
    Role.RETURN_BRANCH: Part.RETURN_TRUNK,
}
_CHECKS: Final = {
    Role.SUPPLY_TRUNK: "trunk_velocity",
    Role.SUPPLY_BRANCH: "branch_velocity",
    Role.RISER: "riser_velocity",
    Role.RETURN_DROP: "return_drop_velocity",
    Role.RETURN_TRUNK: "return_trunk_velocity",
    Role.RETURN_BRANCH: "return_branch_velocity",
}


def velocities(context: Context) -> list[Raw]:
    """One finding for every section of duct, and for those that may be there unseen."""
    found = [_velocity(context, duct) for duct in context.ducts]
    return found + [_velocity(context, one.duct, one.present) for one in context.unseen]


def _velocity(context: Context, duct: Duct, present: Mask | None = None) -> Raw:
    figure = context.target_cfm * duct.share / (duct.area_ft2 * duct.count)
    rigid = velocity_limits(duct.role, Material.GALVANIZED, context.limits)
    flex = velocity_limits(duct.role, Material.FLEX, context.limits)
    recommended = np.where(duct.flexible, flex.recommended_fpm, rigid.recommended_fpm)
    maximum = np.where(duct.flexible, flex.maximum_fpm, rigid.maximum_fpm)
    judged = against(figure, recommended, maximum, present=present)
    raw = Raw(
        check=_CHECKS[duct.role],
        part=_PARTS[duct.role],
        mode=context.mode,
        where=duct.where,
        figure=figure,
        unit="fpm",
        recommended=recommended,
        maximum=maximum,
        judged=judged,
        harm=Harm.NOISE,
        rests_on=(*duct.rests_on, *context.target.rests_on),
        formula=_formula(context, duct, figure),
        source=(flex if duct.flexible[0] else rigid).source,
        note=_note(context, duct, figure),
    )
    turn = float(recommended[0] if raw.status is FindingStatus.FINE else maximum[0])
    return replace(raw, turns_at=_turns_at(context, duct, raw, turn))


def _formula(context: Context, duct: Duct, figure: Array) -> str:
    air = f"{context.target.likely_cfm:,.0f} CFM"
    if duct.share[0] < 0.9995:
        air += f" x {duct.share[0]:.2f}"
    count = float(duct.count[0])
    many = "" if count == 1.0 else f"{count:g} x "
    return f"{air} / ({many}{_area_words(duct)}) = {figure[0]:,.0f} fpm"


def _area_words(duct: Duct) -> str:
    if duct.diameter_in is not None:
        across = f"{duct.diameter_in[0]:.3g}"
        return f"3.14 x {across} x {across} in. / 576"
    assert duct.width_in is not None  # whatever isn't round has two sides
    assert duct.height_in is not None
    sides = f"{duct.width_in[0]:.3g} x {duct.height_in[0]:.3g} in."
    if duct.shape is Shape.OVAL:
        return f"oval {sides}, {duct.area_ft2[0]:.2f} sq ft"
    return f"{sides} / 144"


def _note(context: Context, duct: Duct, figure: Array) -> str:
    if duct.shape is not Shape.RECT:
        return ""
    each = context.target.likely_cfm * float(duct.share[0]) / float(duct.count[0])
    charted = float(round_duct_velocity_fpm(each, float(duct.equivalent_in[0])))
    if charted < 1.02 * figure[0]:
        return ""
    return (
        f"A friction chart shows {charted:,.0f} fpm: that is the speed in the "
        f"{duct.equivalent_in[0]:.1f} in. round duct of equal friction, whose area is smaller."
    )


def _turns_at(context: Context, duct: Duct, raw: Raw, limit_fpm: float) -> TurnsAt:
    """The width or diameter, as it was read, at which the speed meets its limit."""
    bigger = float(raw.figure[0]) / limit_fpm
    if duct.diameter_in is not None:
        key, clear = f"{duct.key}.diameter_in", float(duct.diameter_in[0])
        value = clear * np.sqrt(bigger)
    else:
        assert duct.width_in is not None  # whatever isn't round has two sides
        assert duct.height_in is not None
        key, clear = f"{duct.key}.width_in", float(duct.width_in[0])
        value = clear * bigger
        if duct.shape is Shape.OVAL:
            height = float(duct.height_in[0])
            ends = np.pi * height**2 / 4.0 - height**2  # what the round ends take off the box
            value = (144.0 * float(duct.area_ft2[0]) * bigger - ends) / height
    read = context.job.number(key)
    around = 0.0 if read is None else read - clear
    over = raw.status is FindingStatus.OVER
    return TurnsAt(key, float(value) + around, "at most" if over else "at least")
