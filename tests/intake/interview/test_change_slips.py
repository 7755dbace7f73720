"""A misspelt change of type is never taken for a smaller one."""

import pytest

from intake.interview.phone_reading import read_change
from intake.reading.result import Accepted, AskBack

CHOICES = (
    "like_for_like",
    "cooling_only",
    "heating_only",
    "bigger",
    "furnace_to_heat_pump",
    "first_cooling",
)


@pytest.mark.parametrize(
    "text", ["furnace to heat pmup", "going from a furnace to a heat pum", "gas to heatpupm"]
)
def test_a_misspelt_heat_pump_is_one(text: str) -> None:
    reading = read_change(text, CHOICES)
    assert isinstance(reading, Accepted)
    assert reading.values == {"choice": "furnace_to_heat_pump"}


@pytest.mark.parametrize("text", ["furnace to something else", "switching the furnace"])
def test_a_change_to_nobody_knows_what_is_asked(text: str) -> None:
    assert isinstance(read_change(text, CHOICES), AskBack)


def test_heat_alone_is_heat_alone() -> None:
    reading = read_change("just the heat", CHOICES)
    assert isinstance(reading, Accepted)
    assert reading.values == {"choice": "heating_only"}
