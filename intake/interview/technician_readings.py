"""The technician's questions about pressures, temperatures and how clean things are."""

from typing import Final

from engine.job.facts import Place
from intake.interview.question import Context, Question

__all__ = ["THE_READINGS"]

_EQUIPMENT = Place.EQUIPMENT
_GAUGE: Final = ("site.has_gauge", "old.works")
_PROBES: Final = ("site.has_probes", "old.works")
_PORTS: Final = (
    "Use holes that are there, or flat sheet metal only: never near coil, drain pan, heat"
    " exchanger, wires or anything wrapped in old white tape. Blower off, depth stop, plug after."
)
READING_MODES: Final = (
    "cooling_high=cooling|full cooling|cool|ac|a/c|high cool|cooling full|cooling high|high"
    "|wet coil|second stage|2nd stage|stage two|stage 2|high stage|full stage",
    "cooling_low=low cooling|low cool|low stage|cooling low|first stage|low",
    "heating_high=heating|heat|htg|full heat|gas heat|furnace|high fire|high heat",
    "heat_pump_heating=heat pump|heat pump heat|hp heat|heat pump heating",
)


def _gauge(context: Context) -> bool:
    return context.is_yes("site.has_gauge") and context.is_yes("old.works")


def _probes(context: Context) -> bool:
    return context.is_yes("site.has_probes") and context.is_yes("old.works")


def _wants_rise(context: Context) -> bool:
    """A rise stands in for an airflow that nobody could measure."""
    return _probes(context) and not _airflow_known(context)


def _old_burns(context: Context) -> bool:
    return _wants_rise(context) and context.job.is_known("old.heating_input_btuh")


def _wants_old_efficiency(context: Context) -> bool:
    return _old_burns(context) and not context.job.is_known("old.heating_output_btuh")


def _any_reading(context: Context) -> bool:
    names = (
        "after_filter_inwc", "before_coil_inwc", "total_external_inwc", "before_filter_inwc",
        "after_coil_inwc", "return_inwc", "supply_inwc",
    )  # fmt: skip
    return any(context.job.is_known(f"readings.0.{name}") for name in names)


def _reading_airflow(context: Context) -> bool:
    return _any_reading(context)


def _airflow_known(context: Context) -> bool:
    return context.job.is_known("readings.0.airflow_cfm")


THE_READINGS: Final[tuple[Question, ...]] = (
    Question(
        "static_total",
        "static_pressure",
        "Gauge: return pressure after the filter and supply before the coil?"
        ' Like "return .30, supply .40".',
        "Push and pull together are what the old blower works against.",
        "Between filter and blower; and after the blower, before the coil. On an air handler:"
        " before and after the whole cabinet.",
        "Most-airflow mode for ten minutes, doors and registers open, holes side-on to the air."
        " Drop the signs: .30 and .40 make .70.",
        "0.14 to 0.52 return, 0.18 to 0.68 supply; 0.70 together.",
        _EQUIPMENT,
        6.0,
        fills=(
            ("return_inwc", "readings.0.after_filter_inwc"),
            ("supply_inwc", "readings.0.before_coil_inwc"),
            ("total_inwc", "readings.0.total_external_inwc"),
            ("inwc", "readings.0.total_external_inwc"),
        ),
        facts=("readings.0.after_filter_inwc", "readings.0.before_coil_inwc"),
        unit="in. w.c.",
        needs=_GAUGE,
        when=_gauge,
        topics=("static", "total static", "external static", "pressure"),
        label="Static pressure",
        caution=_PORTS,
        bundle="pressures",
    ),
    Question(
        "static_split",
        "static_pressure",
        "And the other two: return before the filter, supply after the coil?",
        "Four readings name the guilty part: return duct, filter, coil or supply duct.",
        "In the return drop before the filter; in the plenum after the coil.",
        "Same mode, without touching anything in between.",
        "0.03 to 0.25 return, 0.05 to 0.35 supply.",
        _EQUIPMENT,
        4.0,
        fills=(
            ("return_inwc", "readings.0.before_filter_inwc"),
            ("supply_inwc", "readings.0.after_coil_inwc"),
        ),
        facts=("readings.0.before_filter_inwc", "readings.0.after_coil_inwc"),
        unit="in. w.c.",
        needs=_GAUGE,
        when=lambda c: _gauge(c) and _any_reading(c),
        topics=("split readings",),
        label="Static pressure, outer pair",
        bundle="pressure_parts",
    ),
    Question(
        "reading_mode",
        "choice",
        "Which mode was it running in?",
        "A pressure means little without its airflow, and each mode has its own.",
        "At the thermostat.",
        "Fan alone is often slower than cooling.",
        "Cooling, full.",
        _EQUIPMENT,
        0.2,
        fills=(("choice", "readings.0.mode"),),
        facts=("readings.0.mode",),
        choices=READING_MODES,
        when=_any_reading,
        topics=("mode",),
        label="Mode",
        bundle="pressures",
    ),
    Question(
        "reading_filter",
        "choice",
        "Was the filter clean, dirty, or out?",
        "A packed filter fakes a bad duct; no filter flatters it.",
        "In its slot.",
        "As it was during the reading.",
        "A clean one for the verdict.",
        _EQUIPMENT,
        0.2,
        fills=(("choice", "readings.0.filter_state"),),
        facts=("readings.0.filter_state",),
        choices=(
            "clean=new|fresh|clean one|brand new|good",
            "dirty=as found|used|some dirt|loaded|packed|plugged|old|dusty|filthy|nasty|clogged",
            "none=out|no filter|removed|taken out|without|pulled",
        ),
        when=_any_reading,
        topics=("filter state",),
        label="Filter during the reading",
        bundle="pressures",
    ),
    Question(
        "reading_airflow",
        "airflow",
        "What airflow was moving then, in CFM?",
        "With it, one pressure tells more than twenty tape measurements.",
        "Flow plate, hood, or the old blower's table at that pressure.",
        "Old blower table: find the setting in use, read CFM at the total static.",
        "220 to 475 CFM per ton; half of systems are under 350.",
        _EQUIPMENT,
        5.0,
        fills=(("cfm", "readings.0.airflow_cfm"),),
        facts=("readings.0.airflow_cfm",),
        unit="CFM",
        when=_reading_airflow,
        topics=("measured airflow", "airflow then"),
        label="Airflow during the reading",
        bundle="pressures",
    ),
    Question(
        "reading_source",
        "choice",
        "How was that airflow found?",
        "Each way has its own error, from 6 to 20 percent.",
        "You know best.",
        "Pick the nearest.",
        "Blower table at the measured static.",
        _EQUIPMENT,
        0.2,
        fills=(("choice", "readings.0.airflow_source"),),
        facts=("readings.0.airflow_source",),
        choices=(
            "blower_table=table|fan table|blower chart|chart|book|static and table",
            "flow_plate=plate|flow grid",
            "temperature_rise=rise|temp rise|temperature",
            "strip_heat=strips|electric heat|strip",
            "traverse=pitot|anemometer|hot wire|vane",
            "hood_sum=hood|flow hood|sum of registers",
            "other=another way|something else|guess",
        ),
        when=_airflow_known,
        topics=("airflow source",),
        label="Airflow found by",
        bundle="pressures",
    ),
    Question(
        "old_heat",
        "capacity",
        'The old furnace\'s plate: input and efficiency? "none" if the old one burns nothing.',
        "Its output over the rise you measure gives the airflow of today.",
        "Inside its upper door.",
        "INPUT in BTU/h; plastic vent means 90 percent or more, metal about 80.",
        "60,000 to 110,000 BTU/h; 78 to 80 percent in most old ones.",
        _EQUIPMENT,
        0.5,
        fills=(
            ("input_btuh", "old.heating_input_btuh"),
            ("btuh", "old.heating_input_btuh"),
            ("output_btuh", "old.heating_output_btuh"),
            ("efficiency", "old.heating_efficiency_fraction"),
        ),
        facts=("old.heating_input_btuh",),
        unit="BTU/h",
        needs=_PROBES,
        when=_wants_rise,
        topics=("old furnace", "old input"),
        none="old_burns_nothing",
        label="Old furnace",
        bundle="old_rise",
    ),
    Question(
        "old_efficiency",
        "efficiency",
        "And the old furnace's efficiency, in percent?",
        "Heat out is input times efficiency.",
        "On its plate, or by its vent: plastic 90 or more, metal about 80.",
        "AFUE, or output over input.",
        "80.",
        _EQUIPMENT,
        0.2,
        fills=(("fraction", "old.heating_efficiency_fraction"),),
        facts=("old.heating_efficiency_fraction",),
        unit="%",
        needs=_PROBES,
        when=_wants_old_efficiency,
        topics=("old efficiency",),
        label="Old furnace's efficiency",
        bundle="old_rise",
    ),
    Question(
        "rise_reading",
        "temperature",
        'Heating, steady: return and supply air temperature? Like "68 in, 120 out".',
        "Output over rise gives the airflow of today.",
        "Return drop; supply past the first turn, out of sight of the hot metal.",
        "High fire for ten to fifteen minutes; average two or three points.",
        "A rise of 35 to 72 F.",
        _EQUIPMENT,
        8.0,
        section="readings.rise",
        unit="F",
        needs=_PROBES,
        when=_old_burns,
        topics=("temperatures",),
        label="Temperatures, heating",
        bundle="old_rise",
    ),
    Question(
        "conditions",
        "conditions",
        'How clean are coil, blower wheel and filter? Like "coil some dirt, wheel clean".',
        "Dirt fakes bad ducts; the new parts will be clean.",
        "Mirror from below the coil; the wheel through the blower door; power locked out.",
        "Clean, some dirt, or plugged, for each.",
        "Coil clean in three of four, wheel in half.",
        _EQUIPMENT,
        5.0,
        fills=(
            ("coil", "condition.coil"),
            ("blower_wheel", "condition.blower_wheel"),
            ("filter", "condition.filter"),
        ),
        facts=("condition.coil", "condition.blower_wheel"),
        choices=("clean", "some_dirt", "plugged"),
        when=lambda c: _any_reading(c),
        topics=("condition", "coil", "blower wheel", "wheel"),
        label="As found",
        caution="Lock out power before a panel comes off, and check that it is dead; two sources"
        " can feed one cabinet. Cut-proof gloves.",
        bundle="pressures",
    ),
)
"""Readings, with everything that makes them worth something."""
