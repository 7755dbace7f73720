import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.errors import OutOfRangeError
from engine.physics import air

heights = st.floats(0.0, 10000.0)
temperatures = st.floats(40.0, 140.0)


def test_standard_air_has_a_ratio_of_exactly_one() -> None:
    assert air.density_ratio(0.0, 70.0) == 1.0


@given(heights, heights, temperatures)
def test_higher_air_is_thinner(low: float, high: float, temperature_degf: float) -> None:
    low, high = sorted((low, high))
    assert air.density_ratio(low, temperature_degf) >= air.density_ratio(high, temperature_degf)
    assert air.kinematic_viscosity_ft2_s(low, temperature_degf) <= air.kinematic_viscosity_ft2_s(
        high, temperature_degf
    )


@given(heights, temperatures, temperatures)
def test_warmer_air_is_thinner(elevation_ft: float, one: float, other: float) -> None:
    cold, warm = sorted((one, other))
    assert air.density_lb_ft3(elevation_ft, cold) >= air.density_lb_ft3(elevation_ft, warm)


@given(st.floats(1000.0, 200000.0), st.floats(5.0, 100.0), st.floats(0.6, 1.2))
def test_rise_of_the_airflow_for_a_heat_is_the_difference_again(
    heat_btuh: float, difference_degf: float, ratio: float
) -> None:
    airflow_cfm = air.airflow_for_heat_cfm(heat_btuh, difference_degf, ratio)
    if 1.0 <= airflow_cfm <= 20000.0:
        assert air.rise_degf(heat_btuh, airflow_cfm, ratio) == pytest.approx(difference_degf)


def test_thin_air_asks_for_more_airflow() -> None:
    ratio = air.density_ratio(5000.0)
    assert air.airflow_for_heat_cfm(60000.0, 55.0, ratio) > air.airflow_for_heat_cfm(60000.0, 55.0)


@given(st.floats(0.0, 3000.0))
def test_velocity_pressure_goes_with_the_square(velocity_fpm: float) -> None:
    twice = air.velocity_pressure_inwc(2.0 * velocity_fpm)
    assert twice == pytest.approx(4.0 * air.velocity_pressure_inwc(velocity_fpm))


def test_damp_air_is_lighter_and_saturated_air_has_equal_bulbs() -> None:
    assert air.density_lb_ft3(0.0, 75.0, 0.01) < air.density_lb_ft3(0.0, 75.0)
    assert air.humidity_ratio_at_wet_bulb(60.0, 60.0) == pytest.approx(
        air.humidity_ratio(60.0, 1.0), rel=1e-12
    )


def test_bulbs_further_apart_than_dry_air_allows_give_no_vapour() -> None:
    assert air.humidity_ratio_at_wet_bulb(120.0, 33.0) == 0.0


@pytest.mark.parametrize(
    ("call", "name"),
    [
        (lambda: air.pressure_psia(30000.0), "elevation_ft"),
        (lambda: air.density_lb_ft3(0.0, 900.0), "temperature_degf"),
        (lambda: air.velocity_pressure_inwc(-1.0), "velocity_fpm"),
        (lambda: air.airflow_for_heat_cfm(60000.0, 0.0), "difference_degf"),
        (lambda: air.rise_degf(60000.0, 0.0), "airflow_cfm"),
        (lambda: air.humidity_ratio(75.0, 50.0), "relative_humidity_share"),
        (lambda: air.humidity_ratio_at_wet_bulb(60.0, 70.0), "wet_bulb_degf"),
    ],
)
def test_the_impossible_is_refused_by_name(call: object, name: str) -> None:
    with pytest.raises(OutOfRangeError, match=name):
        call()  # type: ignore[operator]


def test_scalars_come_back_as_plain_floats() -> None:
    assert isinstance(air.kinematic_viscosity_ft2_s(0.0, 70.0), float)
    assert isinstance(air.saturation_pressure_psia(70.0), float)
    assert isinstance(air.kinematic_viscosity_ft2_s(np.zeros(3)), np.ndarray)
