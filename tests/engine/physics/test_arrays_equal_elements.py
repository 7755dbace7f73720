"""Every public function of physics and trade gives on an array what it gives on each element."""

from collections.abc import Callable

import numpy as np
import pytest

from engine.physics import air, colebrook, duct, flex, friction, operating
from engine.trade import fittings, measuring, noise
from engine.trade.limits import Role

RNG = np.random.default_rng(7)


def _between(low: float, high: float) -> np.ndarray:
    return RNG.uniform(low, high, 9)


Q, D, E = _between(20.0, 2000.0), _between(4.0, 24.0), _between(0.0, 0.01)
T, Z, R = _between(40.0, 140.0), _between(0.0, 10000.0), _between(0.6, 1.1)
W, V = _between(0.0, 0.02), _between(100.0, 1500.0)

CASES: list[tuple[Callable[..., object], tuple[object, ...]]] = [
    (air.pressure_psia, (Z,)),
    (air.density_lb_ft3, (Z, T, W)),
    (air.density_ratio, (Z, T)),
    (air.kinematic_viscosity_ft2_s, (Z, T)),
    (air.velocity_pressure_inwc, (V, 0.075 * R)),
    (air.sensible_factor, (R,)),
    (air.moist_sensible_factor, (0.075 * R, W)),
    (air.latent_factor, (R,)),
    (air.total_factor, (R,)),
    (air.airflow_for_heat_cfm, (1e3 * D, _between(10.0, 70.0), R)),
    (air.rise_degf, (1e3 * D, Q, R)),
    (air.saturation_pressure_psia, (T,)),
    (air.humidity_ratio, (T, _between(0.0, 1.0), Z)),
    (air.humidity_ratio_at_wet_bulb, (T, np.maximum(T - 9.0, 33.0), Z)),
    (air.enthalpy_btu_lb, (T, W)),
    (duct.area_ft2, (duct.Shape.RECT, D, D[::-1])),
    (duct.area_ft2, (duct.Shape.OVAL, D, D[::-1])),
    (duct.area_ft2, (duct.Shape.ROUND, None, None, D)),
    (duct.perimeter_ft, (duct.Shape.RECT, D, D[::-1])),
    (duct.perimeter_ft, (duct.Shape.OVAL, D, D[::-1])),
    (duct.perimeter_ft, (duct.Shape.ROUND, None, None, D)),
    (duct.hydraulic_diameter_in, (duct.Shape.RECT, D, D[::-1])),
    (duct.hydraulic_diameter_in, (duct.Shape.OVAL, D, D[::-1])),
    (duct.hydraulic_diameter_in, (duct.Shape.ROUND, None, None, D)),
    (duct.equivalent_diameter_in, (duct.Shape.RECT, D, D[::-1])),
    (duct.equivalent_diameter_in, (duct.Shape.OVAL, D, D[::-1])),
    (duct.equivalent_diameter_in, (duct.Shape.ROUND, None, None, D)),
    (duct.aspect_ratio, (D, D[::-1])),
    (duct.is_beyond_equivalent_range, (D, 2.0 + E)),
    (duct.squeezed_round_width_in, (D, 0.8 * D)),
    (duct.velocity_fpm, (Q, R)),
    (duct.round_duct_velocity_fpm, (Q, D)),
    (colebrook.friction_factor, (10 ** _between(1.0, 7.0), E)),
    (colebrook.friction_exponent, (10 ** _between(1.0, 7.0), E)),
    (friction.reynolds_number, (Q, D, 1e-4 * R)),
    (friction.friction_inwc_per_100ft, (Q, D, E, 0.075 * R, 1.6e-4 * R)),
    (friction.friction_at_velocity_inwc_per_100ft, (V, D, E, 0.075 * R, 1.6e-4 * R)),
    (friction.airflow_at_friction_cfm, (0.1 * R, D, E, 0.075 * R, 1.6e-4 * R)),
    (flex.slack_factor, (D, _between(0.0, 0.4), _between(0.0, 1.0))),
    (flex.sag_length_factor, (_between(0.0, 3.0),)),
    (operating.coefficient_at, (R, Q, 2.0 * R)),
    (fittings.equivalent_length_ft, (R, D, 0.02 * R)),
    (measuring.inside_dimension_in, (D, measuring.MeasuredWhere.BARE_METAL, R)),
    (measuring.inside_dimension_in, (D, measuring.MeasuredWhere.FRAME, R)),
    (noise.noise_criterion_nc, (Role.REGISTER, V)),
    (noise.is_beyond_nc_table, (Role.RETURN_GRILLE, V)),
    (noise.sound_change_db, (V, V[::-1])),
]


@pytest.mark.parametrize(
    ("function", "arguments"), CASES, ids=[f"{f.__name__}-{i}" for i, (f, _) in enumerate(CASES)]
)
def test_an_array_gives_what_its_elements_give(
    function: Callable[..., object], arguments: tuple[object, ...]
) -> None:
    whole = np.asarray(function(*arguments))
    assert whole.shape == (9,)
    for index in range(9):
        one = [float(a[index]) if isinstance(a, np.ndarray) else a for a in arguments]
        single = function(*one)
        assert isinstance(single, float | bool)
        assert float(whole[index]) == pytest.approx(float(single), rel=1e-13, abs=1e-15)


@pytest.mark.parametrize(
    ("function", "arguments"), CASES, ids=[f"{f.__name__}-{i}" for i, (f, _) in enumerate(CASES)]
)
def test_no_function_lets_nan_through(
    function: Callable[..., object], arguments: tuple[object, ...]
) -> None:
    for place, argument in enumerate(arguments):
        if not isinstance(argument, np.ndarray):
            continue
        spoilt = argument.copy()
        spoilt[4] = np.nan
        changed = (*arguments[:place], spoilt, *arguments[place + 1 :])
        with pytest.raises(ValueError, match=r"is outside"):
            function(*changed)


def test_rows_and_columns_broadcast() -> None:
    grid = friction.friction_inwc_per_100ft(Q[:, np.newaxis], D[np.newaxis, :], 3e-4)
    assert np.shape(grid) == (9, 9)
    assert np.asarray(grid)[3, 5] == friction.friction_inwc_per_100ft(Q[3], D[5], 3e-4)
