import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.errors import OutOfRangeError
from engine.physics.flex import sag_length_factor, slack_factor
from engine.physics.friction import friction_inwc_per_100ft


@given(st.floats(4.0, 20.0), st.floats(0.0, 0.5), st.floats(0.0, 0.5), st.floats(0.0, 1.0))
def test_more_slack_never_loses_less(
    diameter_in: float, one: float, other: float, beyond: float
) -> None:
    tight, slack = sorted((one, other))
    assert (
        1.0 <= slack_factor(diameter_in, tight, beyond) <= slack_factor(diameter_in, slack, beyond)
    )


def test_tight_flex_is_not_corrected() -> None:
    assert slack_factor(8.0, 0.0) == 1.0
    assert slack_factor(16.0, 0.0, 1.0) == 1.0


@given(st.floats(4.0, 10.0), st.floats(0.0, 0.5), st.floats(0.0, 1.0))
def test_within_the_tests_there_is_no_doubt(
    diameter_in: float, slack: float, beyond: float
) -> None:
    assert slack_factor(diameter_in, slack, beyond) == slack_factor(diameter_in, slack, 0.0)


def test_beyond_the_tests_the_excess_is_one_to_three_times() -> None:
    published = slack_factor(14.0, 0.12, 0.0) - 1.0
    assert slack_factor(14.0, 0.12, 1.0) - 1.0 == pytest.approx(3.0 * published)
    assert published < slack_factor(14.0, 0.12, 0.5) - 1.0 < 3.0 * published


@given(st.floats(0.0, 0.45), st.floats(0.0, 1.0))
def test_a_larger_flex_never_loses_more_at_the_same_air(slack: float, beyond: float) -> None:
    diameter_in = np.linspace(5.0, 18.0, 261)
    loss = friction_inwc_per_100ft(400.0, diameter_in, 3e-3) * slack_factor(
        diameter_in, slack, beyond
    )
    assert np.all(np.diff(loss) < 0.0)


def test_sag_is_the_length_of_a_parabola() -> None:
    # two independent ways: the closed form against a polygon of a thousand pieces
    sag = 2.5 / 12.0
    across = np.linspace(0.0, 1.0, 1001)
    down = 4.0 * sag * across * (1.0 - across)
    polygon = float(np.sum(np.hypot(np.diff(across), np.diff(down))))
    assert sag_length_factor(2.5) == pytest.approx(polygon, rel=1e-5)
    assert sag_length_factor(0.0) == pytest.approx(1.0)


@pytest.mark.parametrize(
    ("call", "name"),
    [
        (lambda: slack_factor(1.0, 0.1), "diameter_in"),
        (lambda: slack_factor(8.0, 12.0), "slack_fraction"),
        (lambda: slack_factor(8.0, 0.1, 1.5), "beyond_tests"),
        (lambda: sag_length_factor(math.nan), "sag_in_per_ft"),
    ],
)
def test_the_impossible_is_refused_by_name(call: object, name: str) -> None:
    with pytest.raises(OutOfRangeError, match=name):
        call()  # type: ignore[operator]
