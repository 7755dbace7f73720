"""New filter and coil, each by the pressure it takes; a flat duct; what fills a wall."""

import numpy as np

from engine.arrays import Array
from engine.checks.context import Context
from engine.checks.raw import Judged, Raw, against
from engine.job.openings import FilterBank
from engine.physics.duct import Shape, aspect_ratio
from engine.trade.exponents import PressurePart
from engine.trade.limits import Limit
from engine.trade.materials import Material
from engine.verdict import Harm, Part, TurnsAt

__all__ = ["aspect_ratios", "coil_drop", "filter_drop", "filter_face"]


def filter_drop(context: Context) -> list[Raw]:
    """Clean drop of the new filter at the target: a filter in a cabinet votes by it."""
    limits = context.limits
    in_handler = context.job.word("equipment.kind") in ("air_handler", "heat_pump")
    budget = limits.filter_drop_air_handler_inwc if in_handler else limits.filter_drop_furnace_inwc
    return _drop(
        context, PressurePart.FILTER, Part.FILTER, "filter", budget, limits.filter_drop_most_inwc
    )


def coil_drop(context: Context) -> list[Raw]:
    """Drop of the new coil at the target, where it is outside the blower's rating.

    Large is tight: whether it is too much, the blower that must push through it says.
    """
    limits = context.limits
    rated = context.house.number("equipment.rated_static_inwc")
    share = limits.coil_drop_share
    budget = Limit(share.value * float(rated[0]), "in. w.c.", f"40 % of the rating: {share.source}")
    return _drop(context, PressurePart.COIL, Part.COIL, "coil", budget, None)


def _drop(
    context: Context, name: PressurePart, part: Part, word: str, budget: Limit, most: Limit | None
) -> list[Raw]:
    found = context.system.parts.get(name)
    if found is None or found.inside.all():
        return []
    figure = context.system.drop_inwc(name, context.target_cfm, context.mode)
    maximum = None if most is None else most.value
    judged = against(figure, budget.value, maximum, present=~found.inside)
    raw = Raw(
        check=f"{word}_drop",
        part=part,
        mode=context.mode,
        where=f"new {word}",
        figure=figure,
        unit="in. w.c.",
        recommended=budget.value,
        maximum=maximum,
        judged=judged,
        harm=Harm.AIR,
        rests_on=(*found.rests_on, *context.target.rests_on),
        formula=_scaled_words(context, name, found.words, figure),
        source=budget.source if most is None else f"{budget.source}; most: {most.source}",
        votes=True,
        turns_at=_turn(context, word, budget.value, maximum, figure, judged),
    )
    return [raw]


def _scaled_words(context: Context, name: PressurePart, words: str, figure: Array) -> str:
    exponent = float(context.system.parts[name].exponent[0])
    target = context.target.likely_cfm
    wet = name is PressurePart.COIL and not context.mode.is_cooling
    dry = ", dry" if wet else ""
    scaled = f"scaled by (CFM ratio)^{exponent:.1f} to {target:,.0f} CFM{dry}"
    return f"{words}, {scaled} = {figure[0]:.2f} in."


def _turn(
    context: Context, word: str, budget: float, most: float | None, figure: Array, judged: Judged
) -> TurnsAt | None:
    key = f"new.{word}_drop_inwc"
    stated = context.job.number(key)
    if stated is None or figure[0] <= 0.0:
        return None
    fine = not judged.over[0] and not judged.tight[0]
    limit = budget if fine or most is None else most
    return TurnsAt(
        key, stated * limit / float(figure[0]), "at least" if judged.over[0] else "at most"
    )


def filter_face(context: Context) -> list[Raw]:
    """Speed through the face of a filter in a cabinet: a note by its depth, never a vote."""
    found = []
    for bank in context.filters:
        if bank.place != "cabinet" or not bank.present[0]:
            continue
        figure = context.target_cfm / bank.area_ft2
        note = _face_limit(context, bank)
        found.append(
            Raw(
                check="filter_face_velocity",
                part=Part.FILTER,
                mode=context.mode,
                where="filter in the cabinet",
                figure=figure,
                unit="fpm",
                recommended=note.value,
                maximum=None,
                judged=against(figure, note.value, None, present=bank.present),
                harm=Harm.AIR,
                rests_on=(*bank.rests_on, *context.target.rests_on),
                formula=(
                    f"{context.target.likely_cfm:,.0f} CFM / ({bank.sizes}"
                    f"{'' if bank.sizes.startswith('a believed') else ' in.'} / 144) = "
                    f"{figure[0]:,.0f} fpm"
                ),
                source=note.source,
                note="A note: a filter in a cabinet is judged by its drop.",
                votes=False,
            )
        )
    return found


def _face_limit(context: Context, bank: FilterBank) -> Limit:
    depth = float(bank.depth_in[0])
    if depth < 1.5:
        return context.limits.filter_1_in_note_fpm
    return (
        context.limits.filter_2_in_note_fpm
        if depth < 3.0
        else (context.limits.filter_4_in_note_fpm)
    )


def aspect_ratios(context: Context) -> list[Raw]:
    """Flat rectangular ducts: a note, because they cost friction and metal."""
    limit = context.limits.aspect_ratio
    found = []
    for duct in context.ducts:
        if duct.shape is not Shape.RECT or not duct.stated:
            continue
        if duct.material in (Material.STUD_BAY, Material.PANNED_JOIST):
            continue  # a cavity's shape is the framing's
        assert duct.width_in is not None  # a rectangle has two sides
        assert duct.height_in is not None
        figure = np.asarray(aspect_ratio(duct.width_in, duct.height_in))
        judged = against(figure, limit.value, None)
        if judged.over[0] or judged.tight[0]:
            found.append(
                Raw(
                    check="aspect_ratio",
                    part=_part(duct.key),
                    mode=context.mode,
                    where=duct.where,
                    figure=figure,
                    unit="to 1",
                    recommended=limit.value,
                    maximum=None,
                    judged=judged,
                    harm=Harm.AIR,
                    rests_on=duct.size_keys,
                    formula=(
                        f"{max(duct.width_in[0], duct.height_in[0]):.3g} / "
                        f"{min(duct.width_in[0], duct.height_in[0]):.3g} in. = {figure[0]:.1f}"
                    ),
                    source=limit.source,
                    note="A flat duct has more friction than its area suggests.",
                    votes=False,
                )
            )
    return found


def _part(key: str) -> Part:
    if key.startswith("supply.trunks"):
        return Part.SUPPLY_TRUNK
    if key.startswith("supply."):
        return Part.SUPPLY_BRANCHES
    return Part.RETURN_DROP if key.startswith("return.drops") else Part.RETURN_TRUNK
