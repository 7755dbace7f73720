"""What the delivered air means for the equipment: heat exchanger, coil, loads, strips."""

import numpy as np

from engine.arrays import Array
from engine.checks.context import Context
from engine.checks.raw import Judged, Raw, against
from engine.job.modes import Mode
from engine.job.priors import believed_tons
from engine.job.targets import heat_output_btuh, rows_of, target_of
from engine.physics.air import sensible_factor
from engine.verdict import Harm, Part, TurnsAt

__all__ = ["coil_window", "coverage", "strip_minimum", "temperature_rise"]


def _delivered(context: Context) -> Array:
    assert context.delivered is not None  # settings are judged with an operating point
    return context.delivered.airflow_cfm


def _setting(context: Context) -> str:
    return context.delivered.setting if context.delivered is not None else ""


def temperature_rise(context: Context) -> list[Raw]:
    """Rise over the burner at the delivered airflow, against the plate's range."""
    if not context.mode.is_burner:
        return []
    heat = heat_output_btuh(context.house, context.mode)
    high = context.house.stated_number("equipment.rise_high_degf")
    low = context.house.stated_number("equipment.rise_low_degf")
    if heat is None or (high is None and low is None):
        return []
    output, keys = heat
    airflow = _delivered(context)
    figure = output / (sensible_factor(context.ratio) * airflow)
    judged = against(figure, None, high)
    if low is not None:
        cold = against(figure, low, None, is_floor=True).tight
        judged = Judged(judged.over, cold & ~judged.over)
    ratio = float(context.ratio[0])
    note = ""
    if judged.tight[0]:
        note = "Below the plate's range: the flue may sweat; a lower setting helps."
    raw = Raw(
        check="temperature_rise",
        part=Part.EQUIPMENT,
        mode=context.mode,
        where="heat exchanger",
        figure=figure,
        unit="F",
        recommended=None,
        maximum=high,
        judged=judged,
        harm=Harm.EQUIPMENT,
        rests_on=(
            *keys,
            "equipment.rise_high_degf",
            "equipment.rise_low_degf",
            "equipment.blower_tables",
            *context.system.rests_on(),
        ),
        formula=(
            f"{output[0]:,.0f} Btu/h / (1.08 x {ratio:.3f} x {airflow[0]:,.0f} CFM) = "
            f"{figure[0]:.0f} F"
        ),
        source="the rise range on the furnace's plate",
        setting=_setting(context),
        note=note,
        turns_at=_rise_turn(context, keys[0], float(output[0]), figure, high),
    )
    return [raw]


def _rise_turn(
    context: Context, key: str, output: float, figure: Array, high: Array | None
) -> TurnsAt | None:
    """The input or output at which the rise meets the top of its range, at the same airflow."""
    stated = context.job.number(key)
    if high is None or stated is None:
        return None
    over = float(figure[0]) > float(high[0])
    value = stated * float(high[0]) / float(figure[0])
    return TurnsAt(key, value, "at least" if over else "at most")


def coil_window(context: Context) -> list[Raw]:
    """Delivered airflow against what the coil works in: the maker's rows, else 350 to 450 a ton."""
    if not context.mode.is_cooling:
        return []
    limits, airflow = context.limits, _delivered(context)
    rows = rows_of(context.job, context.mode)
    tons, ton_keys = _stage_tons(context)
    if len(rows) > 1:
        low, high = rows[0].airflow_cfm, rows[-1].airflow_cfm
        window = f"the maker's rows run from {low:,.0f} to {high:,.0f} CFM"
        bottom: Array = context.house.full(low)
        top: Array = context.house.full(high)
        keys: tuple[str, ...] = ("equipment.cooling_rows",)
    else:
        bottom = limits.cooling_low_cfm_per_ton.value * tons
        top = limits.cooling_high_cfm_per_ton.value * tons
        window = limits.cooling_low_cfm_per_ton.source
        keys = ton_keys
    if context.mode is Mode.COOLING_LOW and len(rows) <= 1:
        bottom, top = context.house.full(0.0), context.house.full(np.inf)
    floor = limits.cooling_floor_cfm_per_ton.value * tons
    judged = against(airflow, bottom, floor, is_floor=True)
    much = against(airflow, top, None).tight
    judged = Judged(judged.over, (judged.tight | much) & ~judged.over)
    per_ton = float(airflow[0] / tons[0])
    note = "More than the coil's range: water may blow off it." if much[0] else ""
    return [
        Raw(
            check="coil_window",
            part=Part.EQUIPMENT,
            mode=context.mode,
            where="cooling coil",
            figure=airflow,
            unit="CFM",
            recommended=bottom,
            maximum=floor,
            judged=judged,
            harm=Harm.EQUIPMENT,
            rests_on=(
                *keys,
                *ton_keys,
                "equipment.blower_tables",
                *context.system.rests_on(),
            ),
            formula=f"{airflow[0]:,.0f} CFM / {tons[0]:.3g} tons = {per_ton:,.0f} CFM per ton",
            source=f"{window}; floor: {limits.cooling_floor_cfm_per_ton.source}",
            is_floor=True,
            setting=_setting(context),
            note=note,
        )
    ]


def _stage_tons(context: Context) -> tuple[Array, tuple[str, ...]]:
    """Nominal size of the stage: stated, else of its rows; a low stage by its share of the air."""
    house = context.house
    if context.mode is Mode.COOLING_HIGH:
        if house.is_stated("equipment.cooling_tons"):
            return house.number("equipment.cooling_tons"), ("equipment.cooling_tons",)
        return believed_tons(house), ("equipment.cooling_tons", "equipment.cooling_rows")
    rows = rows_of(context.job, context.mode)
    if rows:
        tons = max(row.total_btuh for row in rows) / 12000.0
        return house.full(tons), ("equipment.cooling_rows",)
    high = target_of(house, Mode.COOLING_HIGH, context.limits)
    share = np.minimum(context.target_cfm / high.airflow_cfm, 1.0)
    return believed_tons(house) * share, ("equipment.cooling_tons", *high.rests_on)


def coverage(context: Context) -> list[Raw]:
    """Capacity at the delivered airflow over the loads, by the maker's rows."""
    rows = rows_of(context.job, context.mode)
    if not rows or not context.mode.is_cooling:
        return []
    if context.mode is Mode.COOLING_LOW:
        return _drying(context)
    gain = context.house.stated_number("loads.sensible_gain_btuh")
    if gain is None:
        return []
    airflow = _delivered(context)
    points = [row.airflow_cfm for row in rows]
    sensible = np.interp(airflow, points, [row.sensible_btuh for row in rows])
    total = np.interp(airflow, points, [row.total_btuh for row in rows])
    figure = 100.0 * sensible / gain
    limits = context.limits
    tight, over = limits.sensible_tight_share, limits.sensible_over_share
    judged = against(figure, 100.0 * tight.value, 100.0 * over.value, is_floor=True)
    return [
        Raw(
            check="sensible_coverage",
            part=Part.EQUIPMENT,
            mode=context.mode,
            where="cooling",
            figure=figure,
            unit="%",
            recommended=100.0 * tight.value,
            maximum=100.0 * over.value,
            judged=judged,
            harm=Harm.AIR,
            rests_on=(
                "equipment.cooling_rows",
                "loads.sensible_gain_btuh",
                "equipment.blower_tables",
                *context.system.rests_on(),
            ),
            formula=(
                f"{sensible[0]:,.0f} Btu/h at {airflow[0]:,.0f} CFM / {gain[0]:,.0f} Btu/h = "
                f"{figure[0]:.0f} %"
            ),
            source=over.source,
            is_floor=True,
            setting=_setting(context),
            note=_size_note(context, float(total[0]), float(sensible[0])),
            turns_at=TurnsAt(
                "loads.sensible_gain_btuh",
                float(sensible[0]) / _turning_share(figure, tight.value, over.value),
                "at least" if judged.over[0] else "at most",
            ),
        )
    ]


def _turning_share(figure_pct: Array, tight: float, over: float) -> float:
    return tight if figure_pct[0] >= 100.0 * tight else over


def _size_note(context: Context, total: float, sensible: float) -> str:
    latent = context.job.number("loads.latent_gain_btuh")
    gain = context.job.number("loads.sensible_gain_btuh")
    if gain is None or latent is None:
        return ""
    dry = 100.0 * (total - sensible) / latent if latent > 0.0 else 100.0
    whole = 100.0 * total / (gain + latent)
    words = f"Latent {dry:.0f} %, total {whole:.0f} % of the load."
    if total > context.limits.cooling_oversize_share.value * (gain + latent):
        words += " Larger than the load asks for: less air and smaller equipment may do."
    return words


def _drying(context: Context) -> list[Raw]:
    """The drying airflow is judged on the moisture it takes out."""
    latent = context.house.stated_number("loads.latent_gain_btuh")
    if latent is None or latent[0] <= 0.0:
        return []
    rows = rows_of(context.job, context.mode)
    airflow = _delivered(context)
    points = [row.airflow_cfm for row in rows]
    dry = np.interp(airflow, points, [row.total_btuh - row.sensible_btuh for row in rows])
    figure = 100.0 * dry / np.maximum(latent, 1.0)
    judged = against(figure, 50.0, None, is_floor=True)
    return [
        Raw(
            check="latent_coverage",
            part=Part.EQUIPMENT,
            mode=context.mode,
            where="drying",
            figure=figure,
            unit="%",
            recommended=50.0,
            maximum=None,
            judged=judged,
            harm=Harm.HEALTH,
            rests_on=(
                "equipment.cooling_rows",
                "loads.latent_gain_btuh",
                "equipment.blower_tables",
                *context.system.rests_on(),
            ),
            formula=(
                f"{dry[0]:,.0f} Btu/h of moisture at {airflow[0]:,.0f} CFM / "
                f"{latent[0]:,.0f} Btu/h = {figure[0]:.0f} %"
            ),
            source="a low stage runs most of the time and should carry half of the moisture "
            "(judgement)",
            is_floor=True,
            setting=_setting(context),
        )
    ]


def strip_minimum(context: Context) -> list[Raw]:
    """Delivered airflow against the least the strip heat kit allows."""
    least = context.house.stated_number("equipment.strip_minimum_cfm")
    if context.mode is not Mode.STRIP_HEAT or least is None:
        return []
    airflow = _delivered(context)
    judged = against(airflow, None, least, is_floor=True)
    over = judged.over[0]
    return [
        Raw(
            check="strip_minimum",
            part=Part.EQUIPMENT,
            mode=context.mode,
            where="electric strips",
            figure=airflow,
            unit="CFM",
            recommended=None,
            maximum=least,
            judged=judged,
            harm=Harm.EQUIPMENT,
            rests_on=(
                "equipment.strip_minimum_cfm",
                "equipment.blower_tables",
                *context.system.rests_on(),
            ),
            formula=f"{airflow[0]:,.0f} CFM delivered, at least {least[0]:,.0f} CFM wanted",
            source="the strip heat kit's own least airflow",
            is_floor=True,
            setting=_setting(context),
            turns_at=TurnsAt(
                "equipment.strip_minimum_cfm",
                float(airflow[0]),
                "at least" if over else "at most",
            ),
        )
    ]
