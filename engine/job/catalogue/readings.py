"""Readings taken at the equipment, and the state of what was read."""

from typing import Final

from engine.job.catalogue.rows import (
    EQUIPMENT,
    HP,
    TM,
    TT,
    TX,
    YES_NO,
    mixed,
    number,
    word,
)
from engine.job.facts import Fact
from engine.job.facts import Quantity as Q

__all__ = ["ROWS"]

ROWS: Final[tuple[Fact, ...]] = (
    word("readings[].mode", "Mode the system ran in.",
           ("cooling_high", "cooling_low", "heating_high", "heating_low", "heat_pump_heating",
           "strip_heat"),
           EQUIPMENT, (TM,)),
    word("readings[].setting", "Blower setting in use.", (), EQUIPMENT, (TM,)),
    word("readings[].filter_state", "State of the filter during the reading.",
           ("clean", "dirty", "none"), EQUIPMENT, (TM,)),
    number("readings[].airflow_cfm", "Airflow during the reading.", Q.AIRFLOW, "CFM", (150, 3000),
           EQUIPMENT, (TM,)),
    word("readings[].airflow_source", "How that airflow was found.",
           ("blower_table", "temperature_rise", "temperature_rise_clocked", "strip_heat",
           "flow_plate", "traverse", "hood_sum", "other"),
           EQUIPMENT, (TM,)),
    number("readings[].before_filter_inwc", "Static pressure in the return before the filter.",
           Q.STATIC, "in. w.c.", (-2, 2), EQUIPMENT, (TM,)),
    number("readings[].after_filter_inwc", "Static pressure between filter and blower.", Q.STATIC,
           "in. w.c.", (-2, 2), EQUIPMENT, (TM,)),
    number("readings[].before_coil_inwc", "Static pressure after the blower, before the coil.",
           Q.STATIC, "in. w.c.", (-2, 2), EQUIPMENT, (TM,)),
    number("readings[].after_coil_inwc", "Static pressure after the coil.", Q.STATIC, "in. w.c.",
           (-2, 2), EQUIPMENT, (TM,)),
    number("readings[].return_inwc", "Static pressure on the return side.", Q.STATIC, "in. w.c.",
           (-2, 2), EQUIPMENT, (TM,)),
    number("readings[].supply_inwc", "Static pressure on the supply side.", Q.STATIC, "in. w.c.",
           (-2, 2), EQUIPMENT, (TM,)),
    number("readings[].filter_drop_inwc", "Pressure drop over the filter.", Q.STATIC, "in. w.c.",
           (-2, 2), EQUIPMENT, (TM,)),
    number("readings[].coil_drop_inwc", "Pressure drop over the coil.", Q.STATIC, "in. w.c.",
           (-2, 2), EQUIPMENT, (TM,)),
    number("readings[].total_external_inwc", "Total external static pressure.", Q.STATIC,
           "in. w.c.", (-2, 2), EQUIPMENT, (TM,)),
    word("readings[].no_coil", "Whether there is no cooling coil in the air.", YES_NO, EQUIPMENT,
           (TM,)),
    number("readings[].return_degf", "Air temperature in the return.", Q.TEMPERATURE, "F",
           (40, 100), EQUIPMENT, (TX,)),
    number("readings[].supply_degf", "Air temperature in the supply.", Q.TEMPERATURE, "F",
           (30, 200), EQUIPMENT, (TX,)),
    word("condition.coil", "State of the present coil.", ("clean", "some_dirt", "plugged", "none"),
           EQUIPMENT, (TT,), mixed(clean=0.75, some_dirt=0.2, plugged=0.05)),
    word("condition.second_heat_exchanger", "State of the condensing furnace's second exchanger.",
           ("clean", "some_dirt", "plugged", "none"), EQUIPMENT, (TT,)),
    word("condition.blower_wheel", "State of the present blower wheel.",
           ("clean", "some_dirt", "plugged"), EQUIPMENT, (TT,),
           mixed(clean=0.5, some_dirt=0.35, plugged=0.15)),
    word("condition.filter", "State of the filter as found.", ("clean", "some_dirt", "plugged"),
           EQUIPMENT, (HP, TT)),
)  # fmt: skip
