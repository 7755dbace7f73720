import contextlib
import math
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.errors import FactError, OutOfRangeError
from engine.physics.fan import (
    BlowerTable,
    TablePlace,
    fan_law_airflow_cfm,
    fan_law_power_w,
    fan_law_static_inwc,
)

# invented
ROWS = [(0.1, 1400.0), (0.3, 1300.0), (0.5, 1180.0), (0.7, 1010.0), (0.9, 780.0)]
HIGH = BlowerTable.from_rows("high", ROWS)
HELD = BlowerTable.from_rows("held", [(0.1, 1205.0), (0.5, 1210.0), (0.8, 1200.0), (1.0, 1050.0)])


def test_rows_come_in_any_order_and_once() -> None:
    assert BlowerTable.from_rows("high", [*reversed(ROWS), ROWS[2]]) == HIGH


@pytest.mark.parametrize(
    ("rows", "words"),
    [
        ([], "no rows"),
        ([(0.1, 1400.0), (0.1, 1300.0)], "both 1,400 and 1,300 CFM at 0.1"),
        ([(0.1, 1000.0), (0.5, 1200.0)], "airflow falls as static rises"),
        ([(0.1, 1000.0), (0.3, 1020.0), (0.5, 1045.0)], "airflow falls as static rises"),
        ([(-0.1, 1000.0)], "static is 0 to 5"),
        ([(math.nan, 1000.0)], "static is 0 to 5"),
        ([(50.0, 1000.0)], "static is 0 to 5"),
        ([(0.5, 0.0)], "airflow is above 0"),
        ([(0.5, math.nan)], "airflow is above 0"),
    ],
)
def test_a_table_that_cannot_be_is_refused_in_words(
    rows: list[tuple[float, float]], words: str
) -> None:
    with pytest.raises(FactError, match=words) as caught:
        BlowerTable.from_rows("low", rows, key="equipment.blower_tables.0")
    assert caught.value.key == "equipment.blower_tables.0"


def test_lines_are_straight_between_rows() -> None:
    airflow, place = HIGH.airflow_at(np.array([0.1, 0.2, 0.4, 0.9]))
    assert airflow == pytest.approx([1400.0, 1350.0, 1240.0, 780.0])
    assert (place == TablePlace.WITHIN).all()


def test_ends_are_told_apart_and_never_passed() -> None:
    airflow, place = HIGH.airflow_at(np.array([0.0, 0.1, 0.9, 1.2]))
    assert airflow == pytest.approx([1400.0, 1400.0, 780.0, 780.0])
    assert place.tolist() == [
        TablePlace.BELOW_FIRST_ROW,
        TablePlace.WITHIN,
        TablePlace.WITHIN,
        TablePlace.BEYOND_LAST_ROW,
    ]


def test_static_at_an_airflow_names_the_side() -> None:
    static, place = HIGH.static_at(np.array([1500.0, 1400.0, 1240.0, 780.0, 700.0]))
    assert static == pytest.approx([0.1, 0.1, 0.4, 0.9, 0.9])
    assert place.tolist() == [
        TablePlace.BELOW_FIRST_ROW,
        TablePlace.WITHIN,
        TablePlace.WITHIN,
        TablePlace.WITHIN,
        TablePlace.BEYOND_LAST_ROW,
    ]
    assert HIGH.reaches(np.array([1401.0, 1400.0])).tolist() == [False, True]


def test_a_held_airflow_is_given_up_to_the_last_static_that_gives_it() -> None:
    assert HELD.static_at(1200.0).static_inwc == pytest.approx(0.8)
    assert HELD.static_at(1100.0).static_inwc == pytest.approx(0.8 + 0.2 * 100.0 / 150.0)
    assert HELD.static_at(1207.0).static_inwc == pytest.approx(0.5 + 0.3 * 3.0 / 10.0)


@given(st.floats(780.0, 1400.0))
def test_static_at_and_airflow_at_are_inverse(airflow_cfm: float) -> None:
    static = HIGH.static_at(airflow_cfm).static_inwc
    assert HIGH.airflow_at(static).airflow_cfm == pytest.approx(airflow_cfm, rel=1e-12)


def test_one_row_is_a_table_of_one_point() -> None:
    only = BlowerTable.from_rows("only", [(0.5, 1200.0)])
    assert only.airflow_at(np.array([0.4, 0.5, 0.6])).place.tolist() == [-1, 0, 1]
    assert only.static_at(1200.0).static_inwc == 0.5
    assert only.static_at(np.array([1300.0, 1200.0, 1100.0])).place.tolist() == [-1, 0, 1]


@given(st.lists(st.tuples(st.floats(0.0, 1.5), st.floats(1.0, 3000.0)), min_size=1, max_size=9))
def test_any_rows_are_taken_or_refused_in_a_sentence(rows: list[tuple[float, float]]) -> None:
    ordered = sorted(set(rows))
    falling = all(b[1] <= a[1] for a, b in pairwise(ordered))
    if not falling or len({static for static, _ in ordered}) < len(ordered):
        with contextlib.suppress(FactError):  # a small rise is let pass as held air
            BlowerTable.from_rows("any", rows)
        return
    table = BlowerTable.from_rows("any", rows)
    airflow, _ = table.airflow_at(np.linspace(0.0, 2.0, 50))
    assert np.all(np.isfinite(airflow))
    static, _ = table.static_at(np.linspace(0.0, 3000.0, 50))
    assert np.all((static >= table.static_inwc[0]) & (static <= table.last_static_inwc))
    assert np.all(np.diff(static) <= 1e-12)


def test_thin_air_scales_static_and_dirt_scales_air() -> None:
    assert HIGH.scaled_static(0.8).airflow_at(0.4).airflow_cfm == pytest.approx(1180.0)
    assert HIGH.scaled_airflow(0.9).airflow_at(0.5).airflow_cfm == pytest.approx(0.9 * 1180.0)


@given(st.floats(0.5, 2.0), st.floats(0.5, 1.2))
def test_fan_laws_there_and_back(speed: float, density: float) -> None:
    assert fan_law_airflow_cfm(fan_law_airflow_cfm(900.0, speed), 1.0 / speed) == pytest.approx(
        900.0
    )
    there = fan_law_static_inwc(0.5, speed, density)
    assert fan_law_static_inwc(there, 1.0 / speed, 1.0 / density) == pytest.approx(0.5)
    there = fan_law_power_w(400.0, speed, density)
    assert fan_law_power_w(there, 1.0 / speed, 1.0 / density) == pytest.approx(400.0)


@pytest.mark.parametrize(
    ("call", "name"),
    [
        (lambda: HIGH.airflow_at(-0.1), "static_inwc"),
        (lambda: HIGH.airflow_at(math.nan), "static_inwc"),
        (lambda: HIGH.static_at(-1.0), "airflow_cfm"),
        (lambda: HIGH.reaches(math.nan), "airflow_cfm"),
        (lambda: HIGH.scaled_static(0.0), "density_ratio"),
        (lambda: fan_law_airflow_cfm(900.0, 0.0), "speed_ratio"),
    ],
)
def test_the_impossible_is_refused_by_name(call: object, name: str) -> None:
    with pytest.raises(OutOfRangeError, match=name):
        call()  # type: ignore[operator]
