"""The rows of the catalogue of facts.

Starting ranges are low / likely / high with one house in ten outside at either end.
"practice" means common practice with no published source; where a published figure stands
behind a range it is named. Ranges that depend on other facts are refined in
`engine.job.priors`; what stands here is the national picture.
"""

from typing import Final

from engine.job.belief import Belief, Between, How, OneOf
from engine.job.facts import Fact, Giver, Place, Quantity
from engine.job.modes import Mode
from engine.physics.fan import MotorKind
from engine.trade.materials import Material
from engine.trade.measuring import MeasuredWhere

__all__ = ["ROWS"]

_HP, _DR, _TT, _TM = Giver.HOMEOWNER, Giver.RECORDS, Giver.TAPE, Giver.GAUGE
_TX, _DP, _MD, _C = Giver.THERMOMETER, Giver.PLATE, Giver.MAKER, Giver.COMPUTED
_PRACTICE: Final = "practice"
YES_NO: Final = ("yes", "no")


def _range(low: float, likely: float, high: float) -> Between:
    return Between(low, likely, high, How.ASSUMED)


def _mix(**weights: float) -> OneOf:
    return OneOf(tuple(weights.items()), How.ASSUMED)


def _number(
    key: str,
    meaning: str,
    quantity: Quantity,
    unit: str,
    bounds: tuple[float, float],
    prior: Belief | None,
    givers: tuple[Giver, ...],
    place: Place,
    source: str = _PRACTICE,
) -> Fact:
    low, high = bounds
    return Fact(key, meaning, quantity, unit, low, high, prior, (), givers, place, source)


def _word(
    key: str,
    meaning: str,
    choices: tuple[str, ...],
    prior: Belief | None,
    givers: tuple[Giver, ...],
    place: Place,
    source: str = _PRACTICE,
) -> Fact:
    quantity = Quantity.CHOICE if choices else Quantity.TEXT
    return Fact(key, meaning, quantity, "", None, None, prior, choices, givers, place, source)


def _house() -> tuple[Fact, ...]:
    desk, living = Place.DESK, Place.LIVING_SPACE
    return (
        _number(
            "site.elevation_ft",
            "Height of the house above sea level.",
            Quantity.ELEVATION,
            "ft",
            (-280, 10500),
            _range(50, 650, 2500),
            (_DR, _HP),
            desk,
        ),
        _number(
            "house.year_built",
            "Year the house was built.",
            Quantity.YEAR,
            "",
            (1850, 2030),
            _range(1945, 1978, 2005),
            (_HP, _DR),
            desk,
            "half of ducted homes in a national stock model predate 1980",
        ),
        _number(
            "house.floor_area_ft2",
            "Floor area this one system serves.",
            Quantity.AREA,
            "ft2",
            (350, 6000),
            _range(1000, 1800, 3000),
            (_HP, _DR, _TT),
            desk,
        ),
        _number(
            "house.levels_count",
            "Floors this system serves.",
            Quantity.COUNT,
            "",
            (1, 4),
            _range(1, 1, 2),
            (_HP,),
            desk,
        ),
        _word(
            "house.duct_location",
            "Where most of the ducts run.",
            ("living_space", "attic", "crawlspace", "basement", "unheated_basement", "garage"),
            _mix(
                living_space=26,
                attic=22,
                crawlspace=20,
                basement=14,
                unheated_basement=12,
                garage=6,
            ),
            (_HP, _TT),
            living,
            "weights of a national stock model",
        ),
        _word(
            "house.vent_type",
            "How the present burner is vented.",
            ("draft_hood", "fan_assisted", "sealed", "none"),
            None,
            (_HP, _TT),
            Place.EQUIPMENT,
        ),
        _word(
            "house.water_heater_shares_flue",
            "Whether a water heater shares the furnace's flue.",
            YES_NO,
            None,
            (_HP, _TT),
            Place.EQUIPMENT,
        ),
        _word(
            "house.zoned",
            "Whether dampers split the system into zones.",
            YES_NO,
            _mix(no=0.94, yes=0.06),
            (_HP, _TT),
            living,
        ),
        _word("house.humid", "Whether summers are humid here.", YES_NO, None, (_HP, _DR), desk),
        _number(
            "house.closed_rooms_count",
            "Rooms with a supply, a closing door and no return grille.",
            Quantity.COUNT,
            "",
            (0, 8),
            _range(1, 3, 5),
            (_HP, _TT),
            living,
            "single central returns in 70 Florida houses",
        ),
        _number(
            "house.supply_registers_count",
            "Supply registers.",
            Quantity.COUNT,
            "",
            (3, 40),
            _range(7, 11, 17),
            (_HP, _TT),
            living,
        ),
        _number(
            "house.registers_shut_count",
            "Supply registers kept shut or blocked.",
            Quantity.COUNT,
            "",
            (0, 40),
            _range(0, 1, 4),
            (_HP, _TT),
            living,
        ),
        _word(
            "house.old_duct_wrap",
            "White or grey cloth-like tape, paper or plaster on the ducts.",
            YES_NO,
            None,
            (_HP, _TT),
            Place.EQUIPMENT,
        ),
        _number(
            "house.leakage_supply_fraction",
            "Share of the air that leaks from supply ducts.",
            Quantity.SHARE,
            "",
            (0, 0.5),
            _range(0.04, 0.11, 0.2),
            (_TT, _C),
            Place.ATTIC_CRAWL,
            "11 % a side for a typical system, residential load handbook",
        ),
        _number(
            "house.leakage_return_fraction",
            "Share of the air that leaks into return ducts.",
            Quantity.SHARE,
            "",
            (0, 0.5),
            _range(0.04, 0.11, 0.2),
            (_TT, _C),
            Place.ATTIC_CRAWL,
            "10 to 13 % in Florida field studies",
        ),
        _word(
            "house.clearance_for_return",
            "Room beside the cabinet for a bigger filter or drop.",
            YES_NO,
            None,
            (_TT,),
            Place.EQUIPMENT,
        ),
        _number(
            "loads.sensible_gain_btuh",
            "Sensible heat gain at design.",
            Quantity.LOAD,
            "Btu/h",
            (2000, 120000),
            None,
            (_MD, _DR),
            desk,
        ),
        _number(
            "loads.latent_gain_btuh",
            "Latent heat gain at design.",
            Quantity.LOAD,
            "Btu/h",
            (0, 40000),
            None,
            (_MD, _DR),
            desk,
        ),
        _number(
            "loads.heat_loss_btuh",
            "Heat loss at design.",
            Quantity.LOAD,
            "Btu/h",
            (3000, 200000),
            None,
            (_MD, _DR),
            desk,
        ),
    )


def _equipment(prefix: str, whose: str) -> tuple[Fact, ...]:
    at = Place.DESK if prefix == "equipment" else Place.EQUIPMENT
    givers = (_MD, _DP, _DR) if prefix == "equipment" else (_DP, _HP, _TT)
    motors = tuple(kind.value for kind in MotorKind)
    motor_prior = (
        _mix(ecm_constant_torque=0.55, ecm_variable=0.40, psc=0.05)
        if prefix == "equipment"
        else _mix(psc=0.55, ecm_constant_torque=0.25, ecm_variable=0.20)
    )
    return (
        _word(
            f"{prefix}.kind",
            f"Kind of {whose} unit.",
            ("furnace", "heat_pump", "air_handler", "dual_fuel", "packaged"),
            None,
            givers,
            at,
        ),
        _number(
            f"{prefix}.cooling_tons",
            f"Nominal cooling size of the {whose} equipment.",
            Quantity.TONS,
            "tons",
            (1, 5.5),
            _range(2, 3, 4),
            givers,
            at,
            "3.1 tons average in about 5,000 Texas audits",
        ),
        _word(
            f"{prefix}.stages",
            f"Stages of the {whose} cooling.",
            ("single", "two", "variable"),
            None,
            givers,
            at,
        ),
        _number(
            f"{prefix}.heating_input_btuh",
            f"Burner input of the {whose} furnace, high fire.",
            Quantity.HEAT,
            "Btu/h",
            (25000, 200000),
            None,
            givers,
            at,
        ),
        _number(
            f"{prefix}.heating_low_input_btuh",
            f"Burner input of the {whose} furnace, low fire.",
            Quantity.HEAT,
            "Btu/h",
            (15000, 150000),
            None,
            givers,
            at,
        ),
        _number(
            f"{prefix}.heating_efficiency_fraction",
            f"Output over input of the {whose} furnace.",
            Quantity.SHARE,
            "",
            (0.55, 0.99),
            None,
            givers,
            at,
        ),
        _number(
            f"{prefix}.heating_output_btuh",
            f"Heat output of the {whose} equipment, high.",
            Quantity.HEAT,
            "Btu/h",
            (10000, 200000),
            None,
            givers,
            at,
        ),
        _number(
            f"{prefix}.heating_low_output_btuh",
            f"Heat output of the {whose} equipment, low.",
            Quantity.HEAT,
            "Btu/h",
            (8000, 150000),
            None,
            givers,
            at,
        ),
        _number(
            f"{prefix}.rise_low_degf",
            f"Least temperature rise on the {whose} plate.",
            Quantity.DIFFERENCE,
            "F",
            (10, 70),
            None,
            givers,
            at,
        ),
        _number(
            f"{prefix}.rise_high_degf",
            f"Greatest temperature rise on the {whose} plate.",
            Quantity.DIFFERENCE,
            "F",
            (25, 100),
            None,
            givers,
            at,
        ),
        _number(
            f"{prefix}.strip_kw",
            f"Electric heat strips in the {whose} unit.",
            Quantity.HEAT,
            "kW",
            (2, 40),
            None,
            givers,
            at,
        ),
        _number(
            f"{prefix}.strip_minimum_cfm",
            "Least airflow the strip heat kit allows.",
            Quantity.AIRFLOW,
            "CFM",
            (200, 2400),
            None,
            givers,
            at,
        ),
        _word(
            f"{prefix}.blower_kind",
            f"Motor of the {whose} blower.",
            motors,
            motor_prior,
            givers,
            at,
        ),
        _number(
            f"{prefix}.rated_static_inwc",
            f"External static pressure printed on the {whose} plate.",
            Quantity.STATIC,
            "in. w.c.",
            (0.1, 1.2),
            _range(0.5, 0.5, 0.8),
            givers,
            at,
            "0.50 is the usual plate figure",
        ),
        _number(
            f"{prefix}.max_static_inwc",
            f"Greatest external static pressure the {whose} maker allows.",
            Quantity.STATIC,
            "in. w.c.",
            (0.1, 2.0),
            None,
            givers,
            at,
        ),
        _word(
            f"{prefix}.coil_outside_rating",
            "Whether the cooling coil is outside what the blower table was taken with.",
            YES_NO,
            None,
            givers,
            at,
        ),
        _word(
            f"{prefix}.filter_outside_rating",
            "Whether the filter is outside what the blower table was taken with.",
            YES_NO,
            None,
            givers,
            at,
        ),
        _word(
            f"{prefix}.refrigerant",
            f"Refrigerant on the {whose} plate.",
            ("r22", "r410a", "a2l", "other"),
            None,
            givers,
            at,
        ),
        _word(
            f"{prefix}.works",
            f"Whether the {whose} blower runs today.",
            YES_NO,
            None,
            (_HP, _TT),
            Place.EQUIPMENT,
        ),
    )


def _targets() -> tuple[Fact, ...]:
    rows: list[Fact] = []
    for mode in Mode:
        name = mode.value.replace("_", " ")
        rows += [
            _number(
                f"target.{mode}_cfm",
                f"Airflow the equipment needs in {name}.",
                Quantity.AIRFLOW,
                "CFM",
                (150, 3000),
                None,
                (_MD, _C),
                Place.DESK,
            ),
            _number(
                f"target.{mode}_rise_degf",
                f"Temperature rise wanted in {name}.",
                Quantity.DIFFERENCE,
                "F",
                (10, 90),
                None,
                (_MD,),
                Place.DESK,
            ),
            _number(
                f"target.{mode}_difference_degf",
                f"Room air less supply air wanted in {name}.",
                Quantity.DIFFERENCE,
                "F",
                (8, 35),
                None,
                (_MD,),
                Place.DESK,
            ),
            _word(
                f"target.{mode}_is_standard_air",
                f"Whether the airflow of {name} is given as standard air.",
                YES_NO,
                None,
                (_MD,),
                Place.DESK,
            ),
        ]
    return tuple(rows)


def _new_pieces() -> tuple[Fact, ...]:
    desk = Place.DESK
    drop = Quantity.STATIC
    return (
        _number(
            "new.coil_drop_inwc",
            "Pressure drop of the new coil, wet.",
            drop,
            "in. w.c.",
            (0.05, 0.7),
            _range(0.15, 0.25, 0.38),
            (_MD,),
            desk,
        ),
        _number(
            "new.coil_drop_at_cfm",
            "Airflow the new coil's drop is listed at.",
            Quantity.AIRFLOW,
            "CFM",
            (300, 2600),
            None,
            (_MD,),
            desk,
        ),
        _number(
            "new.filter_drop_inwc",
            "Pressure drop of the new filter, clean.",
            drop,
            "in. w.c.",
            (0.02, 0.6),
            _range(0.06, 0.15, 0.30),
            (_MD,),
            desk,
        ),
        _number(
            "new.filter_drop_at_cfm",
            "Airflow the new filter's drop is listed at.",
            Quantity.AIRFLOW,
            "CFM",
            (300, 2600),
            None,
            (_MD,),
            desk,
        ),
        _number(
            "new.cabinet_width_in",
            "Width of the new cabinet.",
            Quantity.DUCT_SIDE,
            "in",
            (10, 30),
            None,
            (_MD,),
            desk,
        ),
        _number(
            "new.register_drop_inwc",
            "Pressure drop of a supply register.",
            drop,
            "in. w.c.",
            (0.0, 0.15),
            _range(0.015, 0.03, 0.05),
            (_MD,),
            desk,
            "0.03 is the allowance of the residential duct standard (memory)",
        ),
        _number(
            "new.grille_drop_inwc",
            "Pressure drop of a return grille.",
            drop,
            "in. w.c.",
            (0.0, 0.15),
            _range(0.015, 0.03, 0.05),
            (_MD,),
            desk,
            "0.03 is the allowance of the residential duct standard (memory)",
        ),
        _number(
            "new.damper_drop_inwc",
            "Pressure drop of a balancing damper.",
            drop,
            "in. w.c.",
            (0.0, 0.15),
            _range(0.0, 0.02, 0.04),
            (_MD,),
            desk,
            "0.03 is the allowance of the residential duct standard (memory)",
        ),
        _word(
            "new.drop_remade",
            "Whether the crew will build a new return drop.",
            YES_NO,
            None,
            (_TT,),
            Place.EQUIPMENT,
        ),
    )


def _section(name: str, what: str, place: Place) -> tuple[Fact, ...]:
    side = Quantity.DUCT_SIDE
    tape = (_TT,)
    return (
        _word(
            f"{name}[].shape", f"Shape of the {what}.", ("rect", "round", "oval"), None, tape, place
        ),
        _number(
            f"{name}[].width_in", f"Width of the {what}.", side, "in", (2, 48), None, tape, place
        ),
        _number(
            f"{name}[].height_in", f"Height of the {what}.", side, "in", (2, 36), None, tape, place
        ),
        _number(
            f"{name}[].diameter_in",
            f"Diameter of the {what}.",
            Quantity.FLEX_DIAMETER,
            "in",
            (3, 30),
            None,
            tape,
            place,
        ),
        _word(
            f"{name}[].material",
            f"What the {what} is made of.",
            tuple(material.value for material in Material),
            None,
            tape,
            place,
        ),
        _number(
            f"{name}[].liner_in",
            f"Thickness of the liner in the {what}.",
            Quantity.LENGTH,
            "in",
            (0, 2),
            None,
            tape,
            place,
        ),
        _number(
            f"{name}[].slack_fraction",
            f"How much the flex of the {what} is left slack.",
            Quantity.SHARE,
            "",
            (0, 0.5),
            _range(0.03, 0.12, 0.28),
            tape,
            place,
            "field compression studies; laboratory range to 45 %",
        ),
        _word(
            f"{name}[].measured_where",
            f"Where on the {what} the tape was held.",
            tuple(where.value for where in MeasuredWhere),
            None,
            tape,
            place,
        ),
        _number(
            f"{name}[].length_ft",
            f"Straight length of the {what}.",
            Quantity.LENGTH,
            "ft",
            (0, 150),
            None,
            tape,
            place,
        ),
        _number(
            f"{name}[].share_fraction",
            f"Share of all the air that the {what} carries.",
            Quantity.SHARE,
            "",
            (0.01, 1),
            None,
            (_TT, _C),
            place,
        ),
        _number(
            f"{name}[].count",
            f"How many equal ducts the {what} stands for.",
            Quantity.COUNT,
            "",
            (1, 40),
            None,
            tape,
            place,
        ),
        _word(f"{name}[].name", f"What people call the {what}.", (), None, tape, place),
        _word(
            f"{name}[].from",
            f"The section the {what} hangs on; none is the plenum.",
            (),
            None,
            tape,
            place,
        ),
        _word(
            f"{name}[].on_longest_run",
            f"Whether the {what} is on the longest run.",
            YES_NO,
            None,
            tape,
            place,
        ),
        _word(
            f"{name}[].is_riser",
            f"Whether the {what} goes up inside a wall.",
            YES_NO,
            None,
            tape,
            place,
        ),
    )


def _openings_and_path() -> tuple[Fact, ...]:
    living, equipment, trunks = Place.LIVING_SPACE, Place.EQUIPMENT, Place.TRUNKS
    grille, filters = Quantity.GRILLE_SIDE, Quantity.FILTER_SIDE
    return (
        _number(
            "return.grilles[].width_in",
            "Width of the return opening.",
            grille,
            "in",
            (4, 48),
            None,
            (_TT, _HP),
            living,
        ),
        _number(
            "return.grilles[].height_in",
            "Height of the return opening.",
            grille,
            "in",
            (4, 48),
            None,
            (_TT, _HP),
            living,
        ),
        _number(
            "return.grilles[].count",
            "How many equal return openings.",
            Quantity.COUNT,
            "",
            (1, 15),
            None,
            (_TT, _HP),
            living,
        ),
        _word(
            "return.grilles[].has_filter",
            "Whether a filter sits behind the opening.",
            YES_NO,
            None,
            (_TT, _HP),
            living,
        ),
        _word(
            "return.grilles[].measured_where",
            "The hole or the frame.",
            tuple(where.value for where in MeasuredWhere),
            None,
            (_TT, _HP),
            living,
        ),
        _word(
            "return.grilles[].name", "Where the return opening is.", (), None, (_TT, _HP), living
        ),
        _number(
            "filters[].width_in",
            "Printed width of the filter.",
            filters,
            "in",
            (6, 36),
            None,
            (_HP, _TT),
            equipment,
        ),
        _number(
            "filters[].height_in",
            "Printed height of the filter.",
            filters,
            "in",
            (6, 36),
            None,
            (_HP, _TT),
            equipment,
        ),
        _number(
            "filters[].depth_in",
            "Printed thickness of the filter.",
            Quantity.LENGTH,
            "in",
            (0.25, 6),
            None,
            (_HP, _TT),
            equipment,
        ),
        _number(
            "filters[].merv",
            "Printed MERV of the filter.",
            Quantity.COUNT,
            "",
            (1, 16),
            None,
            (_HP, _TT),
            equipment,
        ),
        _word(
            "filters[].kind",
            "Kind of filter.",
            ("fiberglass", "pleated", "electronic", "other"),
            None,
            (_HP, _TT),
            equipment,
        ),
        _word(
            "filters[].place",
            "Where the filter sits.",
            ("cabinet", "grille"),
            None,
            (_HP, _TT),
            equipment,
        ),
        _number(
            "filters[].count",
            "How many equal filters side by side.",
            Quantity.COUNT,
            "",
            (1, 6),
            None,
            (_HP, _TT),
            equipment,
        ),
        _number(
            "path.supply_length_ft",
            "Straight feet to the farthest supply.",
            Quantity.LENGTH,
            "ft",
            (3, 150),
            _range(25, 45, 75),
            (_TT,),
            trunks,
        ),
        _number(
            "path.return_length_ft",
            "Straight feet from the farthest return.",
            Quantity.LENGTH,
            "ft",
            (0, 100),
            _range(4, 18, 45),
            (_TT,),
            trunks,
        ),
        _number(
            "path.total_effective_length_ft",
            "Straight feet plus fittings, supply and return.",
            Quantity.LENGTH,
            "ft",
            (20, 1500),
            _range(230, 380, 600),
            (_C, _DR),
            trunks,
        ),
        _word(
            "path.fittings[].kind", "Kind of fitting on the longest run.", (), None, (_TT,), trunks
        ),
        _word(
            "path.fittings[].side",
            "Supply or return side.",
            ("supply", "return"),
            None,
            (_TT,),
            trunks,
        ),
        _number(
            "path.fittings[].count",
            "How many of this fitting.",
            Quantity.COUNT,
            "",
            (1, 25),
            None,
            (_TT,),
            trunks,
        ),
        _number(
            "path.fittings[].equivalent_ft",
            "Feet of duct one of this fitting is worth.",
            Quantity.LENGTH,
            "ft",
            (0, 200),
            None,
            (_C, _DR),
            trunks,
        ),
    )


def _readings() -> tuple[Fact, ...]:
    at = Place.EQUIPMENT
    static = Quantity.STATIC
    modes = tuple(mode.value for mode in Mode)
    sources = (
        "blower_table",
        "temperature_rise",
        "temperature_rise_clocked",
        "strip_heat",
        "flow_plate",
        "traverse",
        "hood_sum",
        "other",
    )
    statics = (
        ("before_filter_inwc", "Static pressure in the return before the filter."),
        ("after_filter_inwc", "Static pressure between filter and blower."),
        ("before_coil_inwc", "Static pressure after the blower, before the coil."),
        ("after_coil_inwc", "Static pressure after the coil."),
        ("return_inwc", "Static pressure on the return side."),
        ("supply_inwc", "Static pressure on the supply side."),
        ("filter_drop_inwc", "Pressure drop over the filter."),
        ("coil_drop_inwc", "Pressure drop over the coil."),
        ("total_external_inwc", "Total external static pressure."),
    )
    return (
        _word("readings[].mode", "Mode the system ran in.", modes, None, (_TM,), at),
        _word("readings[].setting", "Blower setting in use.", (), None, (_TM,), at),
        _word(
            "readings[].filter_state",
            "State of the filter during the reading.",
            ("clean", "dirty", "none"),
            None,
            (_TM,),
            at,
        ),
        _number(
            "readings[].airflow_cfm",
            "Airflow during the reading.",
            Quantity.AIRFLOW,
            "CFM",
            (150, 3000),
            None,
            (_TM,),
            at,
        ),
        _word(
            "readings[].airflow_source", "How that airflow was found.", sources, None, (_TM,), at
        ),
        *(
            _number(f"readings[].{name}", meaning, static, "in. w.c.", (-2, 2), None, (_TM,), at)
            for name, meaning in statics
        ),
        _word(
            "readings[].no_coil",
            "Whether there is no cooling coil in the air.",
            YES_NO,
            None,
            (_TM,),
            at,
        ),
        _number(
            "readings[].return_degf",
            "Air temperature in the return.",
            Quantity.TEMPERATURE,
            "F",
            (40, 100),
            None,
            (_TX,),
            at,
        ),
        _number(
            "readings[].supply_degf",
            "Air temperature in the supply.",
            Quantity.TEMPERATURE,
            "F",
            (30, 200),
            None,
            (_TX,),
            at,
        ),
        _word(
            "condition.coil",
            "State of the present coil.",
            ("clean", "some_dirt", "plugged", "none"),
            _mix(clean=0.75, some_dirt=0.2, plugged=0.05),
            (_TT,),
            at,
        ),
        _word(
            "condition.second_heat_exchanger",
            "State of the condensing furnace's second exchanger.",
            ("clean", "some_dirt", "plugged", "none"),
            None,
            (_TT,),
            at,
        ),
        _word(
            "condition.blower_wheel",
            "State of the present blower wheel.",
            ("clean", "some_dirt", "plugged"),
            _mix(clean=0.5, some_dirt=0.35, plugged=0.15),
            (_TT,),
            at,
        ),
        _word(
            "condition.filter",
            "State of the filter as found.",
            ("clean", "some_dirt", "plugged"),
            None,
            (_HP, _TT),
            at,
        ),
        _word(
            "site.weather_allows_cooling",
            "Whether it is warm enough to run a wet coil.",
            YES_NO,
            None,
            (_HP, _TT),
            at,
        ),
        _word("site.has_tape", "A tape measure is at hand.", YES_NO, None, (_TT,), at),
        _word("site.has_gauge", "A pressure gauge is at hand.", YES_NO, None, (_TM,), at),
        _word("site.has_probes", "Probe thermometers are at hand.", YES_NO, None, (_TX,), at),
        _word("site.has_flow_plate", "A flow plate or hood is at hand.", YES_NO, None, (_TM,), at),
    )


def _symptoms() -> tuple[Fact, ...]:
    spoken = (
        ("loud", "It is loud when it runs."),
        ("loud_at_return_shout", "One must shout beside the return."),
        ("uneven_rooms", "Some rooms never get right."),
        ("doors_move", "Doors whistle or move when it starts."),
        ("short_cycles", "It runs a few minutes, stops, starts again."),
        ("limit_trips", "The burner quits while the fan goes on."),
        ("ice", "Ice was seen on the coil or the copper."),
        ("dusty", "Dusty soon after cleaning, musty at start."),
        ("sticky", "Sticky although it is cold inside."),
        ("past_failures", "Blower, board or heat exchanger failed before."),
        ("vulnerable_people", "Somebody very young, 65 or over, or ill lives there."),
        ("gas_smell", "A smell of gas now."),
        ("co_alarm", "A carbon monoxide alarm now."),
        ("burning_smell", "A smell of burning now."),
        ("water_near_electrics", "Water near wires or panels now."),
    )
    return (
        *(
            _word(f"symptoms.{name}", meaning, YES_NO, None, (_HP, _TT), Place.LIVING_SPACE)
            for name, meaning in spoken
        ),
        _number(
            "symptoms.uneven_rooms_count",
            "How many rooms never get right.",
            Quantity.COUNT,
            "",
            (0, 20),
            None,
            (_HP,),
            Place.LIVING_SPACE,
        ),
        _number(
            "symptoms.co_ppm",
            "Carbon monoxide measured in room air.",
            Quantity.COUNT,
            "ppm",
            (0, 1000),
            None,
            (_TT,),
            Place.LIVING_SPACE,
        ),
    )


def _phone() -> tuple[Fact, ...]:
    desk = Place.DESK
    return (
        _word(
            "phone.change",
            "What is replaced, and whether the type changes.",
            (
                "like_for_like",
                "cooling_only",
                "heating_only",
                "bigger",
                "furnace_to_heat_pump",
                "first_cooling",
            ),
            None,
            (_HP,),
            desk,
        ),
        _word("phone.photos", "Whether the caller will send photos.", YES_NO, None, (_HP,), desk),
        _word(
            "phone.trunk_directions",
            "Whether ducts leave the unit one way or both.",
            ("one", "both"),
            None,
            (_HP,),
            desk,
        ),
        _word(
            "phone.flex_seen", "Whether round flexible hoses are seen.", YES_NO, None, (_HP,), desk
        ),
        _word(
            "phone.return_noise",
            "Speaking beside the return.",
            ("whisper", "louder", "shout"),
            None,
            (_HP,),
            desk,
        ),
    )


ROWS: Final[tuple[Fact, ...]] = (
    *_house(),
    *_equipment("equipment", "new"),
    *_equipment("old", "present"),
    *_targets(),
    *_new_pieces(),
    *_section("supply.trunks", "supply trunk", Place.TRUNKS),
    *_section("supply.branches", "supply branch", Place.REGISTERS),
    *_section("return.drops", "return drop", Place.EQUIPMENT),
    *_section("return.trunks", "return trunk", Place.TRUNKS),
    *_section("return.branches", "return branch", Place.TRUNKS),
    *_openings_and_path(),
    *_readings(),
    *_symptoms(),
    *_phone(),
)
"""Every fact, in reading order."""
