"""Figures for people. Nothing here is physics: the checks are of rounding, and of words."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.errors import EngineError
from engine.job.facts import catalogue
from engine.trade.limits import LIMITS, Limit, Limits
from intake.telling import numbers
from intake.telling.numbers import hours, in_how_many, odds, quantity, spread, tons, turning


@pytest.mark.parametrize(
    ("value", "unit", "told"),
    [
        (1083.7, "fpm", "1,080 fpm"),
        (1398.6, "CFM", "1,400 CFM"),
        (1225.0, "CFM", "1,225 CFM"),
        (0.5, "in. w.c.", "0.50 in. w.c."),
        (0.5, "in wc", "0.50 in. w.c."),
        (-0.304, "in. w.c.", "-0.30 in. w.c."),
        (0.0368, "in wc per 100 ft", "0.037 in. w.c. per 100 ft"),
        (41.6, "ft", "42 ft"),
        (2499.0, "ft", "2,500 ft"),
        (13.6, "in", "13.5 in."),
        (3.25, "in", "3.25 in."),
        (61.2, "F", "61 °F"),
        (0.273, "share", "27%"),
        (0.87, "of target", "87% of target"),
        (36012.0, "Btu/h", "36,000 Btu/h"),
        (397.0, "CFM per ton", "395 CFM per ton"),
        (2.46, "tons", "2.5 tons"),
        (1.0, "tons", "1 ton"),
        (0.004, "in wc", "0.004 in. w.c."),
        (0.0, "CFM", "0 CFM"),
        (5.0, "", "5"),
    ],
)
def test_a_figure_is_told_as_the_trade_says_it(value, unit, told):
    assert quantity(value, unit) == told


def test_rounding_never_carries_a_figure_across_or_onto_its_limit():
    assert quantity(904.0, "fpm", (900.0,)) == "904 fpm"
    assert quantity(899.0, "fpm", (900.0,)) == "899 fpm"
    assert quantity(900.0, "fpm", (900.0,)) == "900 fpm"
    assert quantity(0.502, "in wc", (0.5,)) == "0.502 in. w.c."
    assert quantity(0.8496, "of target", (0.85,)) == "84.96% of target"


@given(
    value=st.floats(1.0, 3000.0),
    limit=st.sampled_from([300.0, 450.0, 600.0, 700.0, 900.0]),
)
def test_a_told_speed_stands_to_its_limit_as_the_speed_itself(value, limit):
    told = float(quantity(value, "fpm", (limit,)).removesuffix(" fpm").replace(",", ""))
    if abs(value / limit - 1.0) > 1e-5:
        assert (told > limit) == (value > limit)
        assert (told < limit) == (value < limit)


@pytest.mark.parametrize("value", [float("nan"), float("inf"), -float("inf")])
def test_a_figure_that_is_not_finite_is_refused(value):
    with pytest.raises(EngineError):
        quantity(value, "CFM")


def test_every_unit_of_the_catalogue_and_of_the_limits_has_its_own_style():
    units = {fact.unit for fact in catalogue().values() if fact.unit}
    for name in Limits.__dataclass_fields__:
        limit = getattr(LIMITS, name)
        if isinstance(limit, Limit):
            units.add(limit.unit)
    assert {unit for unit in units if numbers._style(unit) is None} == set()


@pytest.mark.parametrize(
    ("share", "told"),
    [
        (1.0, "all but certain"),
        (0.95, "19 in 20"),
        (0.9, "nine in ten"),
        (0.5, "five in ten"),
        (0.1, "one in ten"),
        (0.0, "next to none"),
    ],
)
def test_odds_are_told_in_tenths(share, told):
    assert odds(share) == told


@given(st.floats(0.0, 1.0))
def test_every_probability_has_words(share):
    assert odds(share)
    assert in_how_many(share)


@pytest.mark.parametrize("share", [-0.1, 1.1, float("nan")])
def test_what_is_no_probability_is_refused(share):
    with pytest.raises(EngineError):
        odds(share)


@given(st.floats(2.0, 40.0))
def test_a_turning_point_is_rounded_to_its_safe_side(value):
    least = float(turning(value, "at least", "in").removesuffix(" in."))
    most = float(turning(value, "at most", "in").removesuffix(" in."))
    assert value - 1e-6 <= least <= value + 0.25
    assert value - 0.25 <= most <= value + 1e-6


def test_a_range_has_its_middle_and_no_ends_where_rounding_leaves_none():
    assert spread(1051.0, 1190.0, 1322.0, "CFM") == "1,190 CFM (1,050 to 1,320)"
    assert spread(899.6, 900.0, 900.4, "CFM") == "900 CFM"
    assert tons(2.0) == "2 tons"


@pytest.mark.parametrize(
    ("effort", "told"),
    [
        ((0.0, 0.0), "no extra time"),
        ((0.25, 0.5), "15 to 30 minutes"),
        ((1.0, 1.0), "1 hour"),
        ((2.0, 4.0), "2 to 4 hours"),
        ((0.5, 2.0), "0.5 to 2 hours"),
    ],
)
def test_effort_is_told_as_a_schedule_says_it(effort, told):
    assert hours(effort) == told
