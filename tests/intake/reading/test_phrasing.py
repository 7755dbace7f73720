"""What the words around a value make of it; texts written for this test."""

from __future__ import annotations

import pytest

from intake.reading.phrasing import bounded

BOUNDS = (
    "at least 900", "at the very most 900", "900 tops", "no more than 900", "not more than 900",
    "no less than 900", "less than 900", "more than 900", "greater than 900", "under 900",
    "over 900", "above 900", "below 900", "up to 900", "north of 900", "south of 900",
    "upward of 900", "upwards of 900", "900 minimum", "900 maximum", "900 max", "900 min",
    "maxes out at 900", "maxed out at 900", "at minimum 900", "900 or more", "900 or less",
    "900 or better", "900 or higher", "900 or lower", "900 or under", "900 or over",
    "900 plus change", "exceeds 900", "tops out at 900", "less then 900", "more then 900",
    "not over 900", "not under 900", "fewer than 900", "past 900", "beyond 900",
    "900 is the limit", "well under 900", "bigger than 900", "smaller than 900",
    "hotter than 90", "colder than 90", "warmer than 90", "cooler than 90", "longer than 90",
    "shorter than 90", "higher than 90", "lower than 90", "it couldn't be 900", "can't be 900",
    "<900", "> 900", "900+", "900 plus", "900 something", "900 some odd", "900 cfm odd",
)  # fmt: skip


@pytest.mark.parametrize("text", BOUNDS)
def test_one_end_of_a_value_is_heard_however_it_is_said(text: str) -> None:
    assert bounded(text)


@pytest.mark.parametrize("text", ["900", "900 cfm", "more or less 900", "just under 900"])
def test_a_value_that_stands_is_no_bound(text: str) -> None:
    assert not bounded(text)
