import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.errors import OutOfRangeError
from engine.physics.colebrook import friction_exponent, friction_factor

speeds = st.floats(0.0, 8.5).map(lambda power: 10.0**power)
roughnesses = st.one_of(st.just(0.0), st.floats(-7.0, -0.7).map(lambda p: 10.0**p))


@given(st.floats(4001.0, 1e9), roughnesses)
def test_the_factor_satisfies_colebrooks_equation(reynolds: float, relative: float) -> None:
    root = 1.0 / math.sqrt(friction_factor(reynolds, relative))
    other = -2.0 * math.log10(relative / 3.7 + 2.51 * root / reynolds)
    assert root == pytest.approx(other, rel=1e-11)


@given(speeds, speeds, roughnesses)
def test_faster_air_never_loses_less(one: float, other: float, relative: float) -> None:
    slow, fast = sorted((one, other))
    slow_loss = friction_factor(slow, relative) * slow**2
    assert slow_loss <= friction_factor(fast, relative) * fast**2 * (1.0 + 1e-11)


@given(speeds, roughnesses, roughnesses)
def test_rougher_never_loses_less(reynolds: float, one: float, other: float) -> None:
    smooth, rough = sorted((one, other))
    assert friction_factor(reynolds, smooth) <= friction_factor(reynolds, rough) * (1.0 + 1e-11)


@given(roughnesses)
def test_the_factor_has_no_jump(relative: float) -> None:
    for joint in (2300.0, 4000.0):
        below, above = friction_factor(np.array([joint * (1 - 1e-9), joint * (1 + 1e-9)]), relative)
        assert below == pytest.approx(above, rel=1e-7)


@given(speeds, roughnesses)
def test_the_exponent_is_the_slope(reynolds: float, relative: float) -> None:
    for joint in (2300.0, 4000.0):
        if abs(reynolds / joint - 1.0) < 1e-4:
            return  # the slope has a corner there
    step = 1e-5
    low, high = friction_factor(reynolds * np.exp([-step, step]), relative)
    measured = 2.0 + math.log(high / low) / (2.0 * step)
    assert friction_exponent(reynolds, relative) == pytest.approx(measured, abs=1e-5)


def test_long_arrays_are_cut_without_a_seam() -> None:
    rng = np.random.default_rng(3)
    reynolds = 10 ** rng.uniform(2.0, 8.0, 70_003)
    relative = 10 ** rng.uniform(-6.0, -1.0, 70_003)
    whole = friction_factor(reynolds, relative)
    places = np.concatenate([np.arange(0, 70_003, 911), [23334, 23335, 32767, 32768, 70_002]])
    assert whole[places] == pytest.approx(
        [friction_factor(reynolds[i], relative[i]) for i in places], rel=1e-14
    )


def test_empty_arrays_stay_empty() -> None:
    assert friction_factor(np.empty(0), np.empty(0)).shape == (0,)
    assert friction_factor(np.empty((0, 3)), 0.01).shape == (0, 3)


def test_inputs_are_left_alone() -> None:
    reynolds, relative = np.array([100.0, 3000.0, 1e5]), np.array([0.0, 0.001, 0.01])
    before = reynolds.copy(), relative.copy()
    friction_factor(reynolds, relative)
    assert np.array_equal(reynolds, before[0])
    assert np.array_equal(relative, before[1])


@pytest.mark.parametrize(
    ("reynolds", "relative", "name"),
    [
        (0.0, 0.01, "reynolds"),
        (-5.0, 0.01, "reynolds"),
        (2e9, 0.01, "reynolds"),
        (math.inf, 0.01, "reynolds"),
        (math.nan, 0.01, "reynolds"),
        (1e5, -1e-9, "relative_roughness"),
        (1e5, 0.21, "relative_roughness"),
        (1e5, math.nan, "relative_roughness"),
        (1e5, -math.inf, "relative_roughness"),
    ],
)
def test_the_impossible_is_refused_by_name(reynolds: float, relative: float, name: str) -> None:
    with pytest.raises(OutOfRangeError, match=name):
        friction_factor(reynolds, relative)
    with pytest.raises(OutOfRangeError, match=name):
        friction_factor(np.array([1e5, reynolds]), np.array([0.0, relative]))


def test_minus_zero_is_smooth() -> None:
    assert friction_factor(1e5, -0.0) == friction_factor(1e5, 0.0)
