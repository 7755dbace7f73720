"""Seeded streams by name, and the distribution a range stands for."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import norm

from engine.job.draws import NORMAL_90, Draws, skewed


def test_a_stream_holds_one_value_in_each_equal_slice() -> None:
    ranks = Draws(64, 3).ranks("a fact")
    assert np.array_equal(np.sort(np.floor(ranks * 64)), np.arange(64))


def test_normal_values_are_those_of_the_ranks() -> None:
    draws = Draws(256, 1)
    # scipy's quantile function is the reference
    assert draws.normals("x") == pytest.approx(norm.ppf(draws.ranks("x")), abs=1e-9)
    assert norm.ppf(0.9) == pytest.approx(NORMAL_90, abs=1e-12)


def test_streams_depend_on_name_and_seed_alone() -> None:
    assert np.array_equal(Draws(128, 1).ranks("x"), Draws(128, 1).ranks("x"))
    assert not np.array_equal(Draws(128, 1).ranks("x"), Draws(128, 1).ranks("y"))
    assert not np.array_equal(Draws(128, 1).ranks("x"), Draws(128, 2).ranks("x"))


def test_two_streams_are_not_correlated() -> None:
    draws = Draws(4096)
    correlation = np.corrcoef(draws.normals("one"), draws.normals("other"))[0, 1]
    assert abs(correlation) < 4.0 / np.sqrt(4096)  # four standard errors


@settings(max_examples=50)
@given(
    st.tuples(*[st.floats(-100, 100, allow_subnormal=False)] * 3).map(sorted),
)
def test_a_range_is_met_at_its_tenth_middle_and_ninetieth(ends) -> None:
    low, likely, high = ends
    values = skewed(Draws(2000).normals("x"), low, likely, high)
    found = np.percentile(values, (10, 50, 90))
    assert found == pytest.approx([low, likely, high], abs=0.01 * (high - low) + 1e-9)


def test_at_least_one_sample_is_needed() -> None:
    with pytest.raises(ValueError, match="at least one"):
        Draws(0)


def test_the_samples_in_order_are_those_of_rising_ranks() -> None:
    draws = Draws(257, 3)
    assert (draws.in_order("a name") == np.argsort(draws.ranks("a name"))).all()
