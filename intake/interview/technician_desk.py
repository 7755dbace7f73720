"""The technician's questions before the equipment is reached: safety, and what goes in."""

from typing import Final

from engine.job.facts import Place
from intake.interview.question import Context, Question

__all__ = ["AT_THE_DESK"]

_DESK = Place.DESK
YES_NO: Final = ("yes", "no")


def _wants_kind(context: Context) -> bool:
    return context.settled("new_equipment")


def _wants_stages(context: Context) -> bool:
    return context.cooling and context.settled("new_equipment")


def _wants_tons(context: Context) -> bool:
    return context.settled("new_equipment") and context.cooling


def _staged_cooling(context: Context) -> bool:
    return context.cooling and context.staged


def _burner(context: Context) -> bool:
    return context.burner


def _wants_efficiency(context: Context) -> bool:
    known = context.job.is_known
    return (
        context.burner
        and known("equipment.heating_input_btuh")
        and not known("equipment.heating_output_btuh")
    )


def _low_fire(context: Context) -> bool:
    return context.burner and (context.staged or "burner_staged" in context.answered)


def _strips_possible(context: Context) -> bool:
    return context.word("equipment.kind") in ("heat_pump", "air_handler")


AT_THE_DESK: Final[tuple[Question, ...]] = (
    Question(
        "safety",
        "yes_no",
        "First a look and a sniff: any gas or burning smell, an alarm sounding, or water near"
        " wires right now?",
        "If there is, nothing else matters: everybody out first, ducts later.",
        "At the door, then beside the unit, before any panel is opened.",
        "Stop, sniff, listen, and look at the floor around the unit.",
        "Nearly always no.",
        _DESK,
        0.3,
        fills=(
            ("yes", "symptoms.gas_smell"),
            ("yes", "symptoms.co_alarm"),
            ("yes", "symptoms.burning_smell"),
            ("yes", "symptoms.water_near_electrics"),
        ),
        choices=YES_NO,
        topics=("safety",),
        label="Smell, alarm or water near wires",
    ),
    Question(
        "new_equipment",
        "equipment",
        'What goes in? Kind, tons and stages, like "3 ton two-stage heat pump".',
        "The new equipment sets how much air the old ducts must carry.",
        "On the quote or the maker's page.",
        "Read the kind, the nominal tons, and how many stages it has.",
        "Two to four tons; a gas furnace with a coil, or a heat pump with its air handler.",
        _DESK,
        1.0,
        fills=(
            ("kind", "equipment.kind"),
            ("tons", "equipment.cooling_tons"),
            ("stages", "equipment.stages"),
        ),
        facts=("equipment.kind",),
        topics=("equipment", "new unit", "new system", "what goes in"),
        label="New equipment",
    ),
    Question(
        "new_kind",
        "equipment",
        "Which kind is it: furnace, heat pump, air handler, dual fuel, or packaged unit?",
        "A furnace has its coil outside the rated box, an air handler inside; the sums differ.",
        "On the quote or the plate.",
        "Furnace: it has a burner. Heat pump: the outdoor unit heats too.",
        "A gas furnace in most older houses, a heat pump with its air handler next.",
        _DESK,
        0.3,
        fills=(
            ("kind", "equipment.kind"),
            ("tons", "equipment.cooling_tons"),
            ("stages", "equipment.stages"),
        ),
        facts=("equipment.kind",),
        choices=("furnace", "heat_pump", "air_handler", "dual_fuel", "packaged"),
        when=_wants_kind,
        topics=("kind",),
        label="Kind",
    ),
    Question(
        "new_tons",
        "equipment",
        'How many tons of cooling? "none" if it only heats.',
        "Tons give the likely airflow until the exact figure is known.",
        "In the outdoor unit's model number: 018, 024, 030, 036, 042, 048 or 060.",
        "Divide those digits by 12: 036 is 3 tons.",
        "2 to 4 tons.",
        _DESK,
        0.3,
        fills=(
            ("kind", "equipment.kind"),
            ("tons", "equipment.cooling_tons"),
            ("stages", "equipment.stages"),
        ),
        facts=("equipment.cooling_tons",),
        unit="tons",
        when=_wants_tons,
        topics=("tons", "tonnage", "size of the unit"),
        none="new_no_cooling",
        label="Cooling",
    ),
    Question(
        "new_stages",
        "choice",
        "Is the cooling single-stage, two-stage, or variable speed?",
        "Each stage moves its own amount of air and gets its own verdict.",
        "On the maker's page.",
        "One capacity figure: single. High and low: two. A range: variable.",
        "Single-stage in about three of four.",
        _DESK,
        0.3,
        fills=(("choice", "equipment.stages"),),
        facts=("equipment.stages",),
        choices=(
            "single=one|1|single stage|one stage|single-stage",
            "two=2|two stage|two-stage|2 stage|high and low|high low",
            "variable=variable speed|inverter|modulating|variable-speed",
        ),
        when=_wants_stages,
        topics=("stages", "stage"),
        label="Stages",
    ),
    Question(
        "cool_cfm",
        "airflow",
        "How many CFM does it need in full cooling?",
        "Every speed and pressure is judged at this airflow.",
        "In the maker's expanded cooling table, at the row you designed with.",
        "Take the CFM of that row. 400 per ton is a habit, not a design.",
        "350 to 450 CFM per ton: less where summers are humid, more where they are dry.",
        _DESK,
        1.0,
        fills=(("cfm", "target.cooling_high_cfm"),),
        facts=("target.cooling_high_cfm",),
        unit="CFM",
        when=lambda c: c.cooling,
        topics=("cooling airflow", "cooling cfm", "airflow", "cfm"),
        label="Airflow in full cooling",
    ),
    Question(
        "low_cfm",
        "airflow",
        "And how many CFM in low-stage cooling?",
        "Low stage is where the drying happens; it is judged by itself.",
        "In the same table, low-stage rows.",
        "Read the CFM for low stage; a blower table may list it too.",
        "About two thirds of the high-stage airflow.",
        _DESK,
        0.5,
        fills=(("cfm", "target.cooling_low_cfm"),),
        facts=("target.cooling_low_cfm",),
        unit="CFM",
        when=_staged_cooling,
        topics=("low stage airflow", "low stage cfm", "low cfm", "low stage"),
        same="target.cooling_high_cfm",
        label="Airflow in low-stage cooling",
    ),
    Question(
        "heat_pump_cfm",
        "airflow",
        'How many CFM does it need as a heat pump heating? "same" if as in cooling.',
        "Heating may call for more air than cooling; the ducts must carry the larger.",
        "In the heating table of the heat pump.",
        "Take the CFM of its heating rows at your design temperature.",
        "The same as in cooling, or a little more.",
        _DESK,
        0.5,
        fills=(("cfm", "target.heat_pump_heating_cfm"),),
        facts=("target.heat_pump_heating_cfm",),
        unit="CFM",
        when=lambda c: c.heat_pump,
        topics=("heating airflow", "heat pump airflow", "heating cfm", "heat pump cfm"),
        same="target.cooling_high_cfm",
        label="Airflow heating with the heat pump",
    ),
    Question(
        "strip_cfm",
        "airflow",
        'If it gets electric strips: the least CFM the kit allows? "none" if no strips.',
        "Strips with too little air trip their limit or burn out.",
        "On the heat kit's label or in the air handler's book.",
        "Look for minimum airflow beside the kit's kilowatts.",
        "350 to 400 CFM per ton of the cabinet; about 600 CFM for 10 kW.",
        _DESK,
        0.5,
        fills=(("cfm", "equipment.strip_minimum_cfm"), ("kw", "equipment.strip_kw")),
        facts=("equipment.strip_minimum_cfm",),
        unit="CFM",
        when=_strips_possible,
        topics=("strip", "strips", "heat kit"),
        none="strip_none",
        label="Strip kit",
    ),
    Question(
        "furnace_heat",
        "capacity",
        'What heat does the furnace make: input and efficiency, like "80,000 in, 96 percent"?',
        "Output and temperature rise give the airflow that heating needs.",
        "On the plate inside the door, or the maker's page.",
        "INPUT in BTU/h, and AFUE or OUTPUT. Not the digits of the model number.",
        "60,000 to 100,000 BTU/h in; 80 or 95 percent.",
        _DESK,
        1.0,
        fills=(
            ("input_btuh", "equipment.heating_input_btuh"),
            ("btuh", "equipment.heating_input_btuh"),
            ("output_btuh", "equipment.heating_output_btuh"),
            ("efficiency", "equipment.heating_efficiency_fraction"),
        ),
        facts=("equipment.heating_input_btuh",),
        unit="BTU/h",
        when=_burner,
        topics=("furnace input", "input", "furnace size", "burner"),
        label="Furnace",
    ),
    Question(
        "furnace_efficiency",
        "efficiency",
        "And its efficiency, in percent?",
        "Heat out is input times efficiency.",
        "On the plate or the yellow label, as AFUE.",
        "Plastic vent pipe means 90 or more; metal vent means about 80.",
        "80, or 92 to 97.",
        _DESK,
        0.3,
        fills=(("fraction", "equipment.heating_efficiency_fraction"),),
        facts=("equipment.heating_efficiency_fraction",),
        unit="%",
        when=_wants_efficiency,
        topics=("efficiency", "afue"),
        label="Efficiency",
    ),
    Question(
        "furnace_low_heat",
        "capacity",
        'Low-fire input of the burner, in BTU/h? "none" if it has one stage.',
        "Low fire has its own airflow and its own rise.",
        "On the same plate, beside the high-fire input.",
        "Two-stage plates list two inputs; take the smaller.",
        "65 to 70 percent of high fire.",
        _DESK,
        0.3,
        fills=(
            ("btuh", "equipment.heating_low_input_btuh"),
            ("input_btuh", "equipment.heating_low_input_btuh"),
        ),
        facts=("equipment.heating_low_input_btuh",),
        unit="BTU/h",
        when=_low_fire,
        topics=("low fire", "low input"),
        none="burner_one_stage",
        label="Burner",
    ),
    Question(
        "rise",
        "rise_range",
        'What temperature rise does the plate allow, like "35 to 65"?',
        "Outside that range the furnace overheats or its exhaust condenses.",
        "On the plate: AIR TEMP. RISE.",
        "Both ends of the range, in degrees F. Not the largest outlet temperature.",
        "35 to 65, or 25 to 55 for some condensing furnaces.",
        _DESK,
        0.5,
        fills=(
            ("rise_low_degf", "equipment.rise_low_degf"),
            ("rise_high_degf", "equipment.rise_high_degf"),
        ),
        facts=("equipment.rise_low_degf", "equipment.rise_high_degf"),
        unit="F",
        when=_burner,
        topics=("rise", "temperature rise"),
        label="Allowed rise",
    ),
)
"""Safety, then what goes in."""
