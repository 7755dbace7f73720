from math import isclose, sqrt

import numpy as np
import pytest

from engine.errors import OutOfRangeError
from engine.job.belief import Between, How, Known
from engine.job.evidence import (
    AIRFLOW_TOLERANCES,
    AirflowSource,
    FilterState,
    Tap,
    airflow_from_blower_table,
    airflow_from_flow_plate,
    airflow_from_hood_sum,
    airflow_from_rise,
    airflow_from_strip_heat,
    airflow_from_traverse,
    airflow_told,
    dirt_of,
    readings_of,
    tapped,
    total_external_inwc,
)
from engine.job.job import BlowerSetting, Job
from engine.job.modes import Mode
from engine.physics.blower_table import BlowerTable, TablePlace


def measured(value):
    return Known(value, How.MEASURED)


def believed(key, mode):
    return np.full(16, 1000.0)


def told(**facts):
    job = Job()
    for name, value in facts.items():
        job = job.with_fact(name.replace("__", "."), measured(value))
    return job


# Field airflow from heat: CFM = output / (1.08 x rise), published with the example 64,000 Btu/h at
# 55 F = 1,077 CFM in common field-formula sheets (memory).
def test_airflow_from_a_furnaces_rise_is_output_over_1_08_times_the_rise():
    read = airflow_from_rise(80000.0, 0.80, 55.0)
    assert read.airflow_cfm == pytest.approx(1077.4, abs=0.1)
    thin = airflow_from_rise(80000.0, 0.80, 55.0, density_ratio=0.8)
    assert thin.airflow_cfm == pytest.approx(read.airflow_cfm / 0.8)


# 15 kW at 40 F: 15 x 3,412 / (1.08 x 40) = 1,185 CFM (1 kW = 3,412 Btu/h).
def test_airflow_from_strip_heat_counts_a_kilowatt_as_3412_btuh():
    assert airflow_from_strip_heat(15.0, 40.0).airflow_cfm == pytest.approx(1184.7, abs=0.3)


# Root sum of squares of the error sources: input 7 % by plate or 3 % clocked, efficiency 2 %,
# rise 5.5 %.
@pytest.mark.parametrize(("clocked", "input_share"), [(False, 0.07), (True, 0.03)])
def test_tolerance_of_a_rise_is_the_root_of_squares_of_its_sources(clocked, input_share):
    read = airflow_from_rise(80000.0, 0.8, 55.0, clocked=clocked)
    combined = sqrt(input_share**2 + 0.02**2 + 0.055**2)
    assert read.tolerance_share == pytest.approx(combined, abs=0.003)


def test_every_source_of_airflow_has_a_tolerance_with_its_source():
    assert set(AIRFLOW_TOLERANCES) == set(AirflowSource)
    assert all(row.source and 0.0 < row.share < 1.0 for row in AIRFLOW_TOLERANCES.values())


def test_a_blower_table_is_read_along_its_lines_and_bounds_beyond_its_ends():
    table = BlowerTable.from_rows("high", [(0.2, 1300.0), (0.6, 1100.0)])
    within = airflow_from_blower_table(table, 0.4)
    assert (within.airflow_cfm, within.place) == (1200.0, TablePlace.WITHIN)
    assert within.hides_wheel
    assert airflow_from_blower_table(table, 0.7).place is TablePlace.BEYOND_LAST_ROW
    assert airflow_from_blower_table(table, 0.1).place is TablePlace.BELOW_FIRST_ROW


def test_a_flow_plate_is_brought_to_normal_running_by_the_root_of_the_pressures():
    assert airflow_from_flow_plate(1000.0).airflow_cfm == 1000.0
    assert airflow_from_flow_plate(1000.0, 0.16, 0.25).airflow_cfm == pytest.approx(1250.0)


def test_a_traverse_is_area_times_the_mean_speed():
    assert airflow_from_traverse(1.5, [600.0, 700.0, 800.0]).airflow_cfm == pytest.approx(1050.0)
    with pytest.raises(OutOfRangeError):
        airflow_from_traverse(1.5, [])


def test_a_hood_sum_adds_what_leaks_before_the_registers():
    assert airflow_from_hood_sum([89.0] * 10).airflow_cfm == pytest.approx(1000.0)
    assert airflow_from_hood_sum([100.0] * 8, 0.0).airflow_cfm == pytest.approx(800.0)


@pytest.mark.parametrize("airflow", [float("nan"), 0.0, 1e6])
def test_impossible_airflows_are_refused(airflow):
    with pytest.raises(OutOfRangeError):
        airflow_told(airflow)


@pytest.mark.parametrize(
    ("value", "tolerance"), [(0.1, 0.03), (0.3, 0.03), (0.5, 0.05), (-0.8, 0.08)]
)
def test_a_pressure_is_off_by_three_hundredths_or_a_tenth_whichever_is_more(value, tolerance):
    assert tapped(Tap.AFTER_COIL, value).tolerance_inwc == pytest.approx(tolerance)


def test_the_total_is_pull_plus_push_at_the_rated_boundary():
    taps = {
        Tap.BEFORE_FILTER: tapped(Tap.BEFORE_FILTER, -0.12),
        Tap.AFTER_FILTER: tapped(Tap.AFTER_FILTER, -0.30),
        Tap.BEFORE_COIL: tapped(Tap.BEFORE_COIL, 0.40),
        Tap.AFTER_COIL: tapped(Tap.AFTER_COIL, 0.18),
    }
    assert total_external_inwc(taps) == pytest.approx(0.70)
    cabinet = total_external_inwc(taps, filter_is_inside=True, coil_is_inside=True)
    assert cabinet == pytest.approx(0.30)
    del taps[Tap.BEFORE_COIL]
    assert total_external_inwc(taps) is None


def test_a_jobs_readings_come_with_mode_filter_and_the_airflow_somebody_stated():
    job = told(
        readings__0__mode="cooling_high",
        readings__0__filter_state="clean",
        readings__0__after_filter_inwc=-0.3,
        readings__0__before_coil_inwc=0.4,
        readings__0__airflow_cfm=1100.0,
        readings__0__airflow_source="flow_plate",
        readings__1__total_external_inwc=0.8,
    )
    first, second = readings_of(job, believed)
    assert (first.key, first.mode, first.filter_state) == (
        "readings.0",
        Mode.COOLING_HIGH,
        FilterState.CLEAN,
    )
    assert first.taps[Tap.AFTER_FILTER].value_inwc == -0.3
    assert first.airflow is not None
    assert first.airflow.source is AirflowSource.FLOW_PLATE
    assert (second.mode, second.filter_state, second.airflow) == (None, None, None)


def test_temperatures_beside_a_reading_give_its_airflow_from_the_old_furnace():
    job = told(
        old__heating_input_btuh=80000.0,
        old__heating_efficiency_fraction=0.8,
        readings__0__mode="heating_high",
        readings__0__return_degf=68.0,
        readings__0__supply_degf=123.0,
        readings__0__total_external_inwc=0.5,
    )
    (reading,) = readings_of(job, believed, density_ratio=1.0)
    assert reading.airflow is not None
    assert reading.airflow.airflow_cfm == pytest.approx(1077.4, abs=0.1)
    assert reading.airflow.source is AirflowSource.TEMPERATURE_RISE
    cooling = job.with_fact("readings.0.mode", measured("cooling_high"))
    assert readings_of(cooling, believed)[0].airflow is None


def test_the_old_blowers_table_is_that_of_the_setting_it_ran_at():
    tables = [BlowerTable.from_rows(name, [(0.3, cfm)]) for name, cfm in (("Hi", 1300.0),
              ("Lo", 900.0))]  # fmt: skip
    job = told(readings__0__total_external_inwc=0.3, readings__0__setting="hi")
    job = Job(job.beliefs, job.lengths, old_blower=tuple(BlowerSetting(t) for t in tables))
    (reading,) = readings_of(job, believed)
    assert reading.blower_table is tables[0]
    unsaid = job.without("readings.0.setting")
    assert readings_of(unsaid, believed)[0].blower_table is None


def test_hedged_and_ranged_pressures_are_wider():
    key = "readings.0.after_coil_inwc"
    plain = Job().with_fact(key, measured(0.2))
    hedged = Job().with_fact(key, Known(0.2, How.MEASURED, hedged=True))
    ranged = Job().with_fact(key, Between(0.1, 0.2, 0.3, How.MEASURED))
    widths = [
        readings_of(job, believed)[0].taps[Tap.AFTER_COIL].tolerance_inwc
        for job in (plain, hedged, ranged)
    ]
    assert isclose(widths[1], 2.0 * widths[0])
    assert isclose(widths[2], sqrt(0.03**2 + (0.2 / 2.563) ** 2))


def test_condition_words_are_taken_over_and_unseen_ones_stay_open():
    dirt = dirt_of(told(condition__coil="some_dirt", condition__blower_wheel="clean"))
    assert (dirt.coil, dirt.blower_wheel, dirt.filter) == ("some_dirt", "clean", None)
