import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.errors import OutOfRangeError
from engine.physics.duct import Shape, area_ft2, equivalent_diameter_in, hydraulic_diameter_in
from engine.physics.friction import (
    airflow_at_friction_cfm,
    friction_and_exponent,
    friction_at_velocity_inwc_per_100ft,
    friction_inwc_per_100ft,
    reynolds_number,
)

airflows = st.floats(0.0, 4000.0)
diameters = st.floats(3.0, 30.0)
roughnesses = st.floats(0.0, 0.015)


@given(airflows, airflows, diameters, roughnesses)
def test_more_air_never_lowers_friction(
    one: float, other: float, diameter_in: float, roughness_ft: float
) -> None:
    less, more = sorted((one, other))
    low = friction_inwc_per_100ft(less, diameter_in, roughness_ft)
    high = friction_inwc_per_100ft(more, diameter_in, roughness_ft)
    assert 0.0 <= low <= high * (1.0 + 1e-11)
    assert math.isfinite(high)


@given(airflows, diameters, diameters, roughnesses)
def test_a_larger_duct_never_raises_friction(
    airflow_cfm: float, one: float, other: float, roughness_ft: float
) -> None:
    small, large = sorted((one, other))
    high = friction_inwc_per_100ft(airflow_cfm, small, roughness_ft)
    assert friction_inwc_per_100ft(airflow_cfm, large, roughness_ft) <= high * (1.0 + 1e-11)


@given(airflows, diameters, roughnesses, roughnesses)
def test_rougher_never_lowers_friction(
    airflow_cfm: float, diameter_in: float, one: float, other: float
) -> None:
    smooth, rough = sorted((one, other))
    low = friction_inwc_per_100ft(airflow_cfm, diameter_in, smooth)
    assert low <= friction_inwc_per_100ft(airflow_cfm, diameter_in, rough) * (1.0 + 1e-11)


@given(st.floats(1e-3, 4000.0), diameters, roughnesses)
def test_airflow_at_friction_takes_it_back(
    airflow_cfm: float, diameter_in: float, roughness_ft: float
) -> None:
    friction = friction_inwc_per_100ft(airflow_cfm, diameter_in, roughness_ft)
    if friction <= 100.0:
        back = airflow_at_friction_cfm(friction, diameter_in, roughness_ft)
        assert back == pytest.approx(airflow_cfm, rel=1e-9)


def test_inverse_holds_through_the_slow_range_and_at_nothing() -> None:
    airflow = np.concatenate([[0.0], np.geomspace(0.01, 60.0, 300)])
    friction = friction_inwc_per_100ft(airflow, 10.0, 3e-3)
    assert airflow_at_friction_cfm(friction, 10.0, 3e-3) == pytest.approx(airflow, rel=1e-9)


def test_no_air_loses_nothing() -> None:
    assert friction_inwc_per_100ft(0.0, 8.0, 3e-4) == 0.0


def test_friction_goes_with_density() -> None:
    thick = friction_inwc_per_100ft(400.0, 10.0, 3e-4, 0.075)
    assert friction_inwc_per_100ft(400.0, 10.0, 3e-4, 0.0375) == pytest.approx(0.5 * thick)


@given(st.floats(50.0, 2000.0), st.floats(6.0, 24.0), st.floats(6.0, 16.0))
def test_two_accepted_ways_agree_for_house_rectangles(
    airflow_cfm: float, width_in: float, height_in: float
) -> None:
    if max(width_in, height_in) > 3.0 * min(width_in, height_in):
        return
    by_equivalent = friction_inwc_per_100ft(
        airflow_cfm, equivalent_diameter_in(Shape.RECT, width_in, height_in), 3e-4
    )
    by_hydraulic = friction_at_velocity_inwc_per_100ft(
        airflow_cfm / area_ft2(Shape.RECT, width_in, height_in),
        hydraulic_diameter_in(Shape.RECT, width_in, height_in),
        3e-4,
    )
    if reynolds_number(airflow_cfm, 12.0) > 1e4:
        assert by_hydraulic == pytest.approx(by_equivalent, rel=0.06)


def test_friction_and_exponent_is_one_friction() -> None:
    friction, exponent = friction_and_exponent(400.0, 10.0, 3e-4)
    assert friction == friction_inwc_per_100ft(400.0, 10.0, 3e-4)
    assert 1.75 < exponent < 2.0


@pytest.mark.parametrize(
    ("call", "name"),
    [
        (lambda: friction_inwc_per_100ft(-1.0, 8.0, 3e-4), "airflow_cfm"),
        (lambda: friction_inwc_per_100ft(100.0, 0.0, 3e-4), "diameter_in"),
        (lambda: friction_inwc_per_100ft(100.0, 8.0, 3.0), "roughness_ft"),
        (lambda: friction_inwc_per_100ft(100.0, 8.0, 3e-4, 62.4), "density_lb_ft3"),
        (lambda: friction_inwc_per_100ft(100.0, 8.0, 3e-4, 0.075, 1.0), "viscosity_ft2_s"),
        (lambda: airflow_at_friction_cfm(-0.1, 8.0, 3e-4), "friction_inwc_per_100ft"),
        (lambda: airflow_at_friction_cfm(0.1, 8.0, math.nan), "roughness_ft"),
        (lambda: airflow_at_friction_cfm(0.1, 0.5, 0.02), "relative_roughness"),
    ],
)
def test_the_impossible_is_refused_by_name(call: object, name: str) -> None:
    with pytest.raises(OutOfRangeError, match=name):
        call()  # type: ignore[operator]
