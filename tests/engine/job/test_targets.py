"""Modes, and the airflow each of them needs, by hand."""

import numpy as np
import pytest
from support.houses import house, job

from engine.job.job import Job
from engine.job.loading import job_from_mapping
from engine.job.modes import Mode
from engine.job.sample import draw
from engine.job.targets import modes_of, target_of

COOL, COOL_LOW = Mode.COOLING_HIGH, Mode.COOLING_LOW
HEAT, HEAT_LOW = Mode.HEATING_HIGH, Mode.HEATING_LOW
PUMP, STRIP = Mode.HEAT_PUMP_HEATING, Mode.STRIP_HEAT


@pytest.mark.parametrize(
    ("facts", "modes"),
    [
        ({}, (COOL,)),
        ({"target.cooling_high_cfm": 900}, (COOL,)),
        ({"equipment.kind": "furnace", "equipment.cooling_tons": 3}, (COOL, HEAT)),
        ({"equipment.kind": "furnace", "equipment.heating_input_btuh": 60000}, (HEAT,)),
        (
            {
                "equipment.kind": "furnace",
                "equipment.heating_input_btuh": 60000,
                "equipment.heating_low_input_btuh": 40000,
                "equipment.stages": "two",
            },
            (COOL, COOL_LOW, HEAT, HEAT_LOW),
        ),
        ({"equipment.kind": "heat_pump", "equipment.strip_kw": 10}, (COOL, PUMP, STRIP)),
        ({"equipment.kind": "dual_fuel"}, (COOL, HEAT, PUMP)),
        ({"equipment.kind": "air_handler"}, (COOL,)),
        ({"target.strip_heat_cfm": 800}, (STRIP,)),
    ],
)
def test_modes_follow_from_what_goes_in(facts, modes) -> None:
    assert modes_of(job_from_mapping(facts)) == tuple(m for m in Mode if m in modes)


def target(mode, **facts):
    return target_of(house({k.replace("__", "."): v for k, v in facts.items()}), mode)


def test_a_stated_airflow_is_actual_air() -> None:
    found = target(COOL, target__cooling_high_cfm=1000, site__elevation_ft=5000)
    assert (found.airflow_cfm == 1000.0).all()
    assert found.known


def test_standard_air_is_more_actual_air_at_height() -> None:
    # density ratio at 5,000 ft and 70 F is 0.832 (standard atmosphere): 1,000 / 0.832 = 1,202
    found = target(
        COOL,
        target__cooling_high_cfm=1000,
        target__cooling_high_is_standard_air=True,
        site__elevation_ft=5000,
    )
    assert found.likely_cfm == pytest.approx(1202, abs=1)


def test_heating_follows_from_output_and_the_middle_of_the_rise_range() -> None:
    # 80,000 x 0.80 = 64,000 Btu/h over (35 + 65) / 2 = 50 F: 64,000 / (1.08 x 50) = 1,185 CFM
    facts = {
        "equipment__heating_input_btuh": 80000,
        "equipment__heating_efficiency_fraction": 0.80,
        "equipment__rise_low_degf": 35,
        "equipment__rise_high_degf": 65,
        "site__elevation_ft": 0,
    }
    found = target(HEAT, **facts)
    assert found.likely_cfm == pytest.approx(1185, abs=1)
    assert found.known
    assert "64,000 Btu/h" in found.formula
    # a wanted rise of 55 F: 64,000 / (1.08 x 55) = 1,077 CFM
    wanted = target(HEAT, **facts, target__heating_high_rise_degf=55)
    assert wanted.likely_cfm == pytest.approx(1077, abs=1)
    # at 5,000 ft the same heat needs 1 / 0.832 as much air
    high = target(HEAT, **{**facts, "site__elevation_ft": 5000})
    assert high.likely_cfm == pytest.approx(1185 / 0.832, abs=2)


def test_without_its_efficiency_a_furnaces_airflow_is_not_known() -> None:
    found = target(
        HEAT,
        equipment__heating_input_btuh=80000,
        equipment__rise_low_degf=35,
        equipment__rise_high_degf=65,
    )
    assert not found.known
    assert np.ptp(found.airflow_cfm) > 50.0


def test_cooling_follows_from_sensible_gain_and_difference() -> None:
    # 21,600 / (1.08 x 20) = 1,000 CFM
    found = target(
        COOL,
        loads__sensible_gain_btuh=21600,
        target__cooling_high_difference_degf=20,
        site__elevation_ft=0,
    )
    assert found.likely_cfm == pytest.approx(1000.0)


ROWS = [
    {"airflow_cfm": 1050, "total_btuh": 34000, "sensible_btuh": 24000},
    {"airflow_cfm": 1200, "total_btuh": 35000, "sensible_btuh": 26000},
    {"airflow_cfm": 1350, "total_btuh": 36000, "sensible_btuh": 28000},
]


def test_the_row_that_meets_the_loads_is_the_target() -> None:
    rows = {"equipment__cooling_rows": ROWS}
    # without loads: nearest 400 CFM per ton of 36,000 / 12,000 = 3 tons
    assert target(COOL, **rows).likely_cfm == 1200.0
    # 27,000 Btu/h sensible is only met by the last row
    assert target(COOL, **rows, loads__sensible_gain_btuh=27000).likely_cfm == 1350.0
    # a sensible gain that all rows meet, and a latent one that only the first meets
    wet = target(COOL, **rows, loads__sensible_gain_btuh=20000, loads__latent_gain_btuh=9500)
    assert wet.likely_cfm == 1050.0


def test_only_tonnage_gives_four_hundred_a_ton_as_a_belief() -> None:
    found = target(COOL, equipment__cooling_tons=3)
    assert found.likely_cfm == 1200.0
    assert not found.known
    assert np.percentile(found.airflow_cfm[1:], (10, 90)) == pytest.approx([1050, 1350], rel=0.01)


def test_a_low_stage_is_a_share_of_the_high_one_until_it_is_told() -> None:
    found = target(COOL_LOW, target__cooling_high_cfm=1000)
    assert found.likely_cfm == pytest.approx(680.0)
    assert not found.known


def test_a_job_of_nothing_has_a_mode_and_a_target() -> None:
    found = target_of(draw(Job(), 64), COOL)
    assert np.isfinite(found.airflow_cfm).all()
    assert modes_of(job()) == (COOL, HEAT)


def test_a_strip_kits_least_airflow_is_enough_and_is_known():
    told = {"equipment.kind": "heat_pump", "equipment.strip_minimum_cfm": 700,
            "target.cooling_high_cfm": 1200}  # fmt: skip
    found = target_of(draw(job_from_mapping(told), 64), Mode.STRIP_HEAT)
    assert found.known
    assert found.least_cfm is not None
    assert found.least_cfm[0] == 700.0
    assert found.met_by(np.full(65, 900.0)).likely_cfm == 900.0
    assert found.met_by(np.full(65, 500.0)).likely_cfm == 700.0
