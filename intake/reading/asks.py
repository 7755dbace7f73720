"""Sentences that more than one reader asks back with, and the shape of a wrong quantity."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from intake.reading.echo import echo, figure
from intake.reading.result import AskBack, AskKind, Values

__all__ = ["IN_WORDS", "WANTED", "implausible", "one_end", "two_values", "wrong_quantity"]

WANTED: Final[dict[str, str]] = {
    "duct": "the size of the duct, such as 20x8 or 8 inch round",
    "airflow": "airflow in CFM, such as 1200",
    "static_pressure": "a static pressure in inches of water column, such as 0.35",
    "length": "a length in feet, such as 40 or 18' 6\"",
    "temperature": "a temperature in °F, such as 72",
    "capacity": "a capacity, such as 3 tons or 80,000 BTU/h",
    "efficiency": "an efficiency in per cent (AFUE), such as 80 or 95",
    "filter": "the filter's printed size, such as 16x25x1",
    "grille": "the size of the opening, such as 20x14",
    "yes_no": "yes or no",
    "elevation": "the elevation in feet, such as 650",
    "material": "what the duct is made of, such as sheet metal, flex or duct board",
    "blower_type": "the kind of blower motor: PSC, constant torque ECM, or variable speed ECM",
    "coil_state": "how the coil looks: clean, some dirt, or plugged",
    "command": "skip, back, undo, why, help, repeat or quit",
    "choice": "one of the choices",
    "count": "a whole number, such as 8",
    "year": "a year, such as 1978",
    "area": "an area in square feet, such as 1800",
    "percent": "a percentage, such as 40",
    "text": "a few words",
    "rise_range": "the two ends of the rise range, such as 35-65",
    "blower_table": "the blower table: CFM at each static pressure, one row a line",
    "cooling_rows": "the cooling table: CFM, total and sensible capacity, one row a line",
    "fittings": "the fittings with their counts, such as 3 elbows and a boot",
}
"""What each field understands, as the end of "I need ..."."""

IN_WORDS: Final[dict[str, str]] = {
    "length": "a length",
    "area": "an area",
    "airflow": "an airflow",
    "airflow_per_ton": "CFM per ton",
    "velocity": "an air speed, not an airflow",
    "pressure": "a pressure",
    "high_pressure": "a pressure in another range (gas, refrigerant or vacuum)",
    "temperature": "a temperature",
    "difference": "a temperature difference",
    "heat": "a heating or cooling capacity",
    "power": "motor horsepower",
    "percent": "a percentage",
    "seer": "a cooling efficiency rating",
    "hspf": "a heat pump rating",
    "eer": "a cooling efficiency rating",
    "cop": "a heat pump rating",
    "afue": "a furnace efficiency",
    "merv": "a filter rating",
    "filter_rating": "a filter rating",
    "rvalue": "an insulation value",
    "gauge": "a metal thickness",
    "electric": "an electrical figure",
    "speed": "a motor speed",
    "weight": "a weight",
    "time": "a time",
    "gas": "a gas concentration",
    "money": "money",
}


def wrong_quantity(
    field: str, text: str, dimension: str, readings: Sequence[Values] = (), hint: str = ""
) -> AskBack:
    """A clear value of something else: name it, say what is needed."""
    what = IN_WORDS.get(dimension, "something else")
    tail = f" {hint}" if hint else ""
    return AskBack(
        f"That is {what}. I need {WANTED[field]}.{tail}", tuple(readings), AskKind.WRONG_QUANTITY
    )


def implausible(field: str, values: Values, meant: Sequence[Values] = ()) -> AskBack:
    """A value that no house has, with what was likely meant."""
    told = echo(field, values)
    if meant:
        names = " or ".join(echo(field, m) for m in meant)
        return AskBack(
            f"{told} is hard to believe. Did you mean {names}?", tuple(meant), AskKind.IMPLAUSIBLE
        )
    return AskBack(
        f"{told} is hard to believe here. Please check it; I need {WANTED[field]}.",
        (values,),
        AskKind.IMPLAUSIBLE,
    )


def two_values(field: str, readings: Sequence[Values]) -> AskBack:
    """Two values where one is wanted."""
    if len(readings) == 1:
        told = echo(field, readings[0])
        return AskBack(
            f"I read {told}, and another number beside it. Which one is it?",
            tuple(readings),
            AskKind.TWO_VALUES,
        )
    names = " or ".join(echo(field, r) for r in readings)
    return AskBack(f"Which is it: {names}?", tuple(readings), AskKind.TWO_VALUES)


def one_end(field: str, value: float, unit: str) -> AskBack:
    """Only one end of the value was given."""
    return AskBack(
        f"That gives one end, {figure(value)} {unit}. What is it, or between what and what?",
        (),
        AskKind.MISSING_PART,
    )
