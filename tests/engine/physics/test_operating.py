import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from engine.errors import FactError, OutOfRangeError
from engine.physics.fan import (
    GENERIC_CURVES,
    BlowerTable,
    MotorKind,
    System,
    TablePlace,
    coefficient_at,
    constant_airflow_point,
    generic_operating_point,
    operating_point,
    system_static_inwc,
)

# invented
HIGH = BlowerTable.from_rows(
    "high", [(0.1, 1400.0), (0.3, 1300.0), (0.5, 1180.0), (0.7, 1010.0), (0.9, 780.0)]
)
FLAT = BlowerTable.from_rows("held", [(0.1, 1205.0), (0.5, 1210.0), (0.8, 1200.0), (1.0, 1050.0)])
EXPONENTS = np.array([1.9, 1.8, 1.4, 2.0])


def _system(static_inwc: float, at_cfm: float, exponent: float = 2.0) -> System:
    coefficient = coefficient_at(static_inwc, at_cfm, exponent)
    return System(np.array([coefficient]), np.array([exponent]))


def test_a_system_through_a_row_meets_the_table_there() -> None:
    point = operating_point(HIGH, _system(0.5, 1180.0, 1.9))
    assert point.airflow_cfm == pytest.approx(1180.0, rel=1e-12)
    assert point.static_inwc == pytest.approx(0.5, rel=1e-12)
    assert point.place == TablePlace.WITHIN
    assert isinstance(point.airflow_cfm, float)


@given(
    st.lists(st.floats(0.0, 0.4), min_size=4, max_size=4).filter(lambda parts: sum(parts) > 0.01)
)
def test_the_crossing_is_a_root_finders(parts: list[float]) -> None:
    # two independent ways: our crossing, and scipy's root of the same two curves
    system = System(np.array(parts) / 1000.0**EXPONENTS, EXPONENTS)

    def surplus(static_inwc: float) -> float:
        airflow = np.interp(static_inwc, HIGH.static_inwc, HIGH.airflow_cfm)
        return float(system_static_inwc(system, float(airflow))) - static_inwc

    point = operating_point(HIGH, system)
    if surplus(0.1) < 0.0:
        assert point.place == TablePlace.BELOW_FIRST_ROW
        assert (point.airflow_cfm, point.static_inwc) == (1400.0, 0.1)
    elif surplus(0.9) > 0.0:
        assert point.place == TablePlace.BEYOND_LAST_ROW
        assert (point.airflow_cfm, point.static_inwc) == (780.0, 0.9)
    else:
        static = brentq(surplus, 0.1, 0.9, xtol=1e-14)
        assert point.static_inwc == pytest.approx(static, rel=1e-9)
        assert system_static_inwc(system, point.airflow_cfm) == pytest.approx(
            point.static_inwc, rel=1e-9
        )


@pytest.mark.parametrize("table", [HIGH, FLAT])
def test_samples_are_solved_as_each_alone(table: BlowerTable) -> None:
    rng = np.random.default_rng(5)
    coefficient = rng.uniform(0.0, 0.4, (200, 4)) * rng.uniform(0.0, 2.0, (200, 1))
    coefficient /= 1200.0**EXPONENTS
    whole = operating_point(table, System(coefficient, EXPONENTS))
    assert set(whole.place.tolist()) == {-1, 0, 1}
    for index in range(0, 200, 7):
        alone = operating_point(table, System(coefficient[index], EXPONENTS))
        assert whole.airflow_cfm[index] == pytest.approx(alone.airflow_cfm, rel=1e-12)
        assert whole.static_inwc[index] == pytest.approx(alone.static_inwc, rel=1e-12)
        assert whole.place[index] == alone.place


@given(st.floats(0.05, 2.0), st.floats(1.0, 3.0), st.floats(1.2, 2.2))
def test_a_stiffer_system_never_gets_more_air(
    static_inwc: float, factor: float, exponent: float
) -> None:
    for table in (HIGH, FLAT):
        loose = operating_point(table, _system(static_inwc, 1200.0, exponent))
        stiff = operating_point(table, _system(static_inwc * factor, 1200.0, exponent))
        # a held airflow scatters upward by half a per cent in its own table
        assert stiff.airflow_cfm <= loose.airflow_cfm * (1.0 if table is HIGH else 1.006) + 1e-9


@given(st.floats(0.01, 2.0), st.floats(200.0, 2500.0), st.floats(200.0, 2500.0), st.floats(1, 2.5))
def test_scaling_a_curve_there_and_back_returns_the_reading(
    static_inwc: float, at_cfm: float, other_cfm: float, exponent: float
) -> None:
    there = system_static_inwc(_system(static_inwc, at_cfm, exponent), other_cfm)
    if not 0.0 < there <= 20.0:
        return
    back = system_static_inwc(_system(there, other_cfm, exponent), at_cfm)
    assert back == pytest.approx(static_inwc, rel=1e-9)


def test_a_system_is_the_sum_of_its_parts() -> None:
    system = System(np.array([0.2, 0.3]) / 1000.0**2, np.array([2.0, 2.0]))
    assert system_static_inwc(system, 1000.0) == pytest.approx(0.5)
    assert system_static_inwc(system, np.array([0.0, 500.0])) == pytest.approx([0.0, 0.125])


def test_a_constant_airflow_blower_holds_to_its_limit_and_no_further() -> None:
    easy, just, hard = (_system(s, 1200.0) for s in (0.6, 0.8, 1.6))
    assert constant_airflow_point(1200.0, 0.8, easy)[:2] == (1200.0, pytest.approx(0.6))
    at_limit = constant_airflow_point(1200.0, 0.8, just)
    assert at_limit.airflow_cfm == 1200.0  # equal to the limit is held
    over = constant_airflow_point(1200.0, 0.8, hard)
    assert over.place == TablePlace.BEYOND_LAST_ROW
    assert over.airflow_cfm == pytest.approx(1200.0 * math.sqrt(0.5), rel=1e-9)
    assert over.static_inwc == 0.8


def test_constant_airflow_takes_samples() -> None:
    system = System(np.array([[0.6], [1.6]]) / 1200.0**2, np.array([2.0]))
    point = constant_airflow_point(np.array([1200.0, 1200.0]), 0.8, system)
    assert point.airflow_cfm == pytest.approx([1200.0, 1200.0 * math.sqrt(0.5)])
    assert point.place.tolist() == [0, 1]


@pytest.mark.parametrize("motor", list(MotorKind))
def test_generic_blowers_pass_through_their_rated_point(motor: MotorKind) -> None:
    reach = np.linspace(0.0, 1.0, 11)
    point = generic_operating_point(motor, 1200.0, 0.5, reach, _system(0.5, 1200.0))
    assert point.airflow_cfm == pytest.approx(np.full(11, 1200.0), rel=1e-9)


@pytest.mark.parametrize("motor", list(MotorKind))
def test_a_stronger_generic_blower_moves_more_against_much(motor: MotorKind) -> None:
    reach = np.linspace(0.0, 1.0, 11)
    point = generic_operating_point(motor, 1200.0, 0.5, reach, _system(0.9, 1200.0))
    assert np.all(np.diff(point.airflow_cfm) >= -1e-9)
    assert point.airflow_cfm[-1] > point.airflow_cfm[0]


def test_motors_rank_as_the_trade_ranks_them() -> None:
    hard = _system(0.9, 1200.0)
    psc, torque, variable = (
        generic_operating_point(kind, 1200.0, 0.5, 0.5, hard).airflow_cfm
        for kind in (MotorKind.PSC, MotorKind.ECM_CONSTANT_TORQUE, MotorKind.ECM_VARIABLE)
    )
    assert psc < torque < variable


@pytest.mark.parametrize("motor", list(MotorKind))
def test_generic_curves_fall_and_their_beliefs_are_in_order(motor: MotorKind) -> None:
    curve = GENERIC_CURVES[motor]
    for shares in (curve.low_share, curve.likely_share, curve.high_share):
        assert list(shares) == sorted(shares, reverse=True)
    for ratio, low, likely, high in zip(*curve[:4], strict=True):
        assert low <= likely <= high
        assert ratio != 1.0 or low == likely == high == 1.0


def test_systems_that_cannot_be_are_refused() -> None:
    with pytest.raises(FactError, match=r"parts"):
        System(np.empty(0), np.empty(0))
    with pytest.raises(FactError, match="exponent"):
        System(np.ones(2), np.ones(3))
    with pytest.raises(OutOfRangeError, match="coefficient"):
        System(np.array([-1e-7]), np.array([2.0]))
    with pytest.raises(OutOfRangeError, match="exponent"):
        System(np.array([1e-7]), np.array([math.nan]))


@pytest.mark.parametrize(
    ("call", "name"),
    [
        (lambda: coefficient_at(0.5, 0.0, 2.0), "airflow_cfm"),
        (lambda: coefficient_at(-0.5, 900.0, 2.0), "static_inwc"),
        (lambda: system_static_inwc(_system(0.5, 900.0), -1.0), "airflow_cfm"),
        (lambda: constant_airflow_point(0.0, 0.8, _system(0.5, 900.0)), "held_cfm"),
        (lambda: constant_airflow_point(900.0, 0.0, _system(0.5, 900.0)), "limit_static_inwc"),
        (
            lambda: generic_operating_point(MotorKind.PSC, 900.0, 0.5, 2.0, _system(0.5, 900.0)),
            "reach",
        ),
    ],
)
def test_the_impossible_is_refused_by_name(call: object, name: str) -> None:
    with pytest.raises(OutOfRangeError, match=name):
        call()  # type: ignore[operator]
