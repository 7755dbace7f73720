import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.errors import FactError, OutOfRangeError
from engine.physics.duct import (
    Shape,
    area_ft2,
    aspect_ratio,
    equivalent_diameter_in,
    hydraulic_diameter_in,
    is_beyond_equivalent_range,
    perimeter_ft,
    round_duct_velocity_fpm,
    squeezed_round_width_in,
    velocity_fpm,
)

sides = st.floats(2.0, 48.0)
flat_shapes = st.sampled_from([Shape.RECT, Shape.OVAL])


@given(flat_shapes, sides, sides)
def test_which_side_is_called_width_changes_nothing(shape: Shape, a: float, b: float) -> None:
    for measure in (area_ft2, perimeter_ft, hydraulic_diameter_in, equivalent_diameter_in):
        assert measure(shape, a, b) == pytest.approx(measure(shape, b, a), rel=1e-14)
    assert aspect_ratio(a, b) == aspect_ratio(b, a) >= 1.0


@given(flat_shapes, sides, sides, st.floats(1.0, 1.5))
def test_a_larger_duct_has_larger_everything(
    shape: Shape, a: float, b: float, factor: float
) -> None:
    for measure in (area_ft2, perimeter_ft, hydraulic_diameter_in):
        assert measure(shape, a * factor, b) >= measure(shape, a, b) * (1.0 - 1e-12)
    # scaled in both directions every diameter scales too
    for measure in (hydraulic_diameter_in, equivalent_diameter_in):
        grown = measure(shape, a * factor, b * factor)
        assert grown == pytest.approx(factor * measure(shape, a, b), rel=1e-9)


@given(sides)
def test_an_oval_with_equal_sides_is_round(side: float) -> None:
    assert area_ft2(Shape.OVAL, side, side) == pytest.approx(
        area_ft2(Shape.ROUND, diameter_in=side)
    )
    assert hydraulic_diameter_in(Shape.OVAL, side, side) == pytest.approx(side)


@given(st.floats(4.0, 20.0), st.floats(0.3, 1.0))
def test_squeezing_keeps_the_perimeter_and_loses_area(pipe_in: float, share: float) -> None:
    height = share * pipe_in
    wide = squeezed_round_width_in(pipe_in, height)
    assert perimeter_ft(Shape.OVAL, wide, height) == pytest.approx(math.pi * pipe_in / 12.0)
    assert area_ft2(Shape.OVAL, wide, height) <= area_ft2(Shape.ROUND, diameter_in=pipe_in) * (
        1.0 + 1e-12
    )


@given(st.floats(10.0, 3000.0), sides, sides)
def test_a_chart_shows_more_speed_than_a_rectangle_has(
    airflow_cfm: float, a: float, b: float
) -> None:
    real = velocity_fpm(airflow_cfm, area_ft2(Shape.RECT, a, b))
    shown = round_duct_velocity_fpm(airflow_cfm, equivalent_diameter_in(Shape.RECT, a, b))
    assert shown > real


@given(st.floats(0.0, 3000.0), st.floats(0.0, 500.0), st.floats(0.05, 5.0), st.floats(1.0, 3.0))
def test_more_air_is_faster_and_more_room_slower(
    airflow_cfm: float, more_cfm: float, area: float, factor: float
) -> None:
    speed = velocity_fpm(airflow_cfm, area)
    assert velocity_fpm(airflow_cfm + more_cfm, area) >= speed
    assert velocity_fpm(airflow_cfm, area * factor) <= speed


def test_one_way_and_two_way_trunks() -> None:
    assert velocity_fpm(1050.0, area_ft2(Shape.RECT, 18.0, 8.0)) == 1050.0
    assert velocity_fpm(525.0, area_ft2(Shape.RECT, 18.0, 8.0)) == 525.0


def test_very_flat_duct_is_beyond_the_formulas_tests() -> None:
    assert is_beyond_equivalent_range(36.0, 4.0) is True
    assert is_beyond_equivalent_range(4.0, 32.0) is False


@pytest.mark.parametrize(
    "call",
    [
        lambda: area_ft2(Shape.ROUND, 12.0, 8.0),
        lambda: area_ft2(Shape.RECT, 12.0),
        lambda: perimeter_ft(Shape.OVAL, None, 8.0),
        lambda: equivalent_diameter_in(Shape.RECT, diameter_in=8.0),
    ],
)
def test_a_missing_size_is_asked_for(call: object) -> None:
    with pytest.raises(FactError, match=r"needs its"):
        call()  # type: ignore[operator]


@pytest.mark.parametrize(
    ("call", "name"),
    [
        (lambda: area_ft2(Shape.RECT, -3.0, 8.0), "width_in"),
        (lambda: area_ft2(Shape.RECT, 3.0, 800.0), "height_in"),
        (lambda: area_ft2(Shape.ROUND, diameter_in=0.0), "diameter_in"),
        (lambda: velocity_fpm(-1.0, 1.0), "airflow_cfm"),
        (lambda: velocity_fpm(1.0, 0.0), "area_ft2"),
        (lambda: squeezed_round_width_in(6.0, 7.0), "height_in"),
    ],
)
def test_the_impossible_is_refused_by_name(call: object, name: str) -> None:
    with pytest.raises(OutOfRangeError, match=name):
        call()  # type: ignore[operator]
