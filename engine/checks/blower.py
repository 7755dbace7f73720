"""What the new blower really gives into this house, and at what pressure, per setting."""

from dataclasses import replace

import numpy as np

from engine.checks.budget import PART_WORDS, shares_of_path, usual_shares
from engine.checks.context import Context
from engine.checks.duct_board import duct_board_note
from engine.checks.raw import Judged, Raw, against
from engine.job.delivered import Delivered
from engine.physics.blower_table import BlowerTable
from engine.trade.exponents import PressurePart
from engine.verdict import FindingStatus, Harm, Part, TurnsAt

__all__ = ["blower"]


def blower(context: Context, table: BlowerTable | None) -> list[Raw]:
    """Delivered airflow and external static at one setting.

    Args:
        context: With `delivered` of this setting.
        table: The setting's table; None where the blower's reach is only a belief.
    """
    delivered = context.delivered
    assert delivered is not None  # settings are judged with an operating point
    airflow = _delivered(context, delivered, table)
    static = _static(context, delivered)
    if airflow.status is FindingStatus.OVER or static.status is FindingStatus.OVER:
        because = _because(context, delivered, table)
        airflow = replace(airflow, because=because)
        static = replace(static, because=because)
    return [airflow, static]


def _delivered(context: Context, delivered: Delivered, table: BlowerTable | None) -> Raw:
    limits, target = context.limits, context.target_cfm
    low, floor = limits.delivered_tight_share, limits.delivered_over_share
    much = limits.delivered_much_share
    figure = delivered.airflow_cfm
    judged = against(figure, low.value * target, floor.value * target, is_floor=True)
    lavish = against(figure, much.value * target, None).tight
    judged = Judged(judged.over, (judged.tight | lavish) & ~judged.over)
    rests = _rests_on(context, delivered)
    share = 100.0 * figure[0] / context.target.likely_cfm
    raw = Raw(
        check="delivered_airflow",
        part=Part.BLOWER,
        mode=context.mode,
        where="blower",
        figure=figure,
        unit="CFM",
        recommended=low.value * target,
        maximum=floor.value * target,
        judged=judged,
        harm=Harm.AIR,
        rests_on=rests,
        formula=(
            f"{figure[0]:,.0f} CFM at {delivered.static_inwc[0]:.2f} in. of external static = "
            f"{share:.0f} % of {context.target.likely_cfm:,.0f} CFM"
        ),
        source=floor.source,
        is_floor=True,
        setting=delivered.setting,
        note=_delivered_note(context, delivered),
        turns_at=None,
    )
    return replace(raw, turns_at=_turns_at(context, table, raw.status))


def _rests_on(context: Context, delivered: Delivered) -> tuple[str, ...]:
    first = ["equipment.blower_tables"]
    if not delivered.by_table:
        first += ["equipment.rated_static_inwc"]
        if "equipment.max_static_inwc" in context.job.beliefs:
            first += ["equipment.max_static_inwc"]
    keys = (*first, "equipment.blower_kind", *context.system.rests_on(), *context.target.rests_on)
    return tuple(dict.fromkeys(keys))


def _delivered_note(context: Context, delivered: Delivered) -> str:
    airflow, target = float(delivered.airflow_cfm[0]), context.target.likely_cfm
    if delivered.is_at_least[0]:
        return (
            f"At least {airflow:,.0f} CFM: these ducts take less pressure than the table starts "
            "with; a lower setting exists if that is too much."
        )
    if delivered.is_beyond[0]:
        return (
            f"At most {airflow:,.0f} CFM: these ducts take more pressure than the table ends with."
        )
    if airflow > context.limits.delivered_much_share.value * target:
        fastest = _fastest(context, airflow)
        return f"More air than needed; {fastest}a lower setting is quieter."
    if not delivered.by_table:
        return "No blower table was given: this is a belief by the kind of motor."
    leak = float(context.house.number("house.leakage_supply_fraction")[0])
    return f"About {airflow * (1.0 - leak):,.0f} CFM of it reaches rooms if {leak:.0%} leaks."


def _fastest(context: Context, airflow_cfm: float) -> str:
    trunks = [duct for duct in context.ducts if duct.key.startswith("supply.trunks")]
    if not trunks:
        return ""
    speeds = [airflow_cfm * float(d.share[0] / d.total_area_ft2[0]) for d in trunks]
    at = int(np.argmax(speeds))
    return f"it makes {speeds[at]:,.0f} fpm in the {trunks[at].where}; "


def _static(context: Context, delivered: Delivered) -> Raw:
    house, limits = context.house, context.limits
    rated = house.number("equipment.rated_static_inwc")
    most = house.stated_number("equipment.max_static_inwc")
    end = delivered.last_static_inwc
    maximum = end if most is None else np.minimum(end, most)
    figure = delivered.static_inwc
    over = against(figure, None, maximum).over | delivered.is_beyond
    tight = against(figure, rated, None).tight & ~over
    has_end = bool(np.isfinite(maximum[0]))
    parts = _parts_words(context, float(delivered.airflow_cfm[0]))
    rests = (*_rests_on(context, delivered), "equipment.rated_static_inwc")
    source = (
        "the rated static is the maker's test point; the table's last row or the maker's stated "
        "maximum is the end"
    )
    told = (
        "the printed rating"
        if house.is_stated("equipment.rated_static_inwc")
        else limits.rated_static_furnace_inwc.source
    )
    notes = (
        "Over the rating is a note, not a failure." if tight[0] else "",
        duct_board_note(context, float(delivered.airflow_cfm[0])),
    )
    return Raw(
        check="external_static",
        part=Part.BLOWER,
        mode=context.mode,
        where="blower",
        figure=figure,
        unit="in. w.c.",
        recommended=rated,
        maximum=maximum if has_end else None,
        judged=Judged(over, tight),
        harm=Harm.EQUIPMENT,
        rests_on=tuple(dict.fromkeys(rests)),
        formula=f"{parts} = {figure[0]:.2f} in. at {delivered.airflow_cfm[0]:,.0f} CFM",
        source=f"{source}; {told}",
        setting=delivered.setting,
        note=" ".join(note for note in notes if note),
        shares=shares_of_path(context, float(delivered.airflow_cfm[0])),
    )


def _parts_words(context: Context, airflow_cfm: float) -> str:
    words = []
    for part, found in context.system.parts.items():
        if found.inside[0]:
            continue
        drop = context.system.central_drop_inwc(part, airflow_cfm, context.mode)
        words.append(f"{PART_WORDS[part]} {drop:.2f}")
    return " + ".join(words)


def _because(context: Context, delivered: Delivered, table: BlowerTable | None) -> tuple[str, ...]:
    """Parts that take more than their share of the rated static; those that would clear it first.

    A part clears it if the blower reached 85 % of the target with that part at its budget.
    """
    limits, system = context.limits, context.system
    budget = usual_shares(limits)
    rated = float(context.house.number("equipment.rated_static_inwc")[0])
    airflow = context.limits.delivered_over_share.value * context.target.likely_cfm
    total = system.central_external_inwc(airflow, context.mode)
    allowed = _allowed_inwc(context, table, airflow)
    found = []
    for part, it in system.parts.items():
        if it.inside[0]:
            continue
        drop = system.central_drop_inwc(part, airflow, context.mode)
        excess = drop - budget[part] * rated
        clears = allowed is not None and total - max(excess, 0.0) <= allowed
        found.append((clears and excess > 0.0, drop / (budget[part] * rated), part))
    found.sort(key=lambda row: (not row[0], -row[1]))
    named = [PART_WORDS[part] for _, ratio, part in found if ratio > 1.0]
    return tuple(named or [PART_WORDS[found[0][2]]] if found else ())


def _allowed_inwc(context: Context, table: BlowerTable | None, airflow_cfm: float) -> float | None:
    """External static at which the central blower still gives an airflow; None if it never does."""
    if table is None:
        return float(context.house.number("equipment.rated_static_inwc")[0])
    if not table.reaches(airflow_cfm):
        return None
    holds = context.house.word("equipment.blower_kind")
    constant = holds.words[int(holds.values[0])] == "ecm_variable"
    factor = 1.0 if constant else float(context.ratio[0])
    return float(table.static_at(airflow_cfm).static_inwc) * factor


def _turns_at(context: Context, table: BlowerTable | None, status: FindingStatus) -> TurnsAt | None:
    """The new filter's or coil's drop at which delivered airflow meets its next limit."""
    limits, system = context.limits, context.system
    share = (
        limits.delivered_tight_share
        if status is FindingStatus.FINE
        else (limits.delivered_over_share)
    )
    airflow = share.value * context.target.likely_cfm
    allowed = _allowed_inwc(context, table, airflow)
    if allowed is None:
        return None
    spare = allowed - system.central_external_inwc(airflow, context.mode)
    for part, name in ((PressurePart.COIL, "coil"), (PressurePart.FILTER, "filter")):
        key = f"new.{name}_drop_inwc"
        listed = context.job.number(key)
        if part not in system.parts or system.parts[part].inside[0] or listed is None:
            continue
        drop = system.central_drop_inwc(part, airflow, context.mode)
        value = listed * (drop + spare) / drop
        if value > 0.0:
            over = status is FindingStatus.OVER
            return TurnsAt(key, value, "at least" if over else "at most")
    return _airflow_turn(context, table, status)


def _airflow_turn(
    context: Context, table: BlowerTable | None, status: FindingStatus
) -> TurnsAt | None:
    """The target at which delivered airflow meets its next limit."""
    delivered = context.delivered
    if delivered is None or table is None:
        return None
    limits = context.limits
    share = (
        limits.delivered_tight_share
        if status is FindingStatus.FINE
        else (limits.delivered_over_share)
    )
    value = float(delivered.airflow_cfm[0]) / share.value
    over = status is FindingStatus.OVER
    return TurnsAt(f"target.{context.mode}_cfm", value, "at least" if over else "at most")
