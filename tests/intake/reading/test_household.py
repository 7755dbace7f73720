"""Who is at home: ages, illness, and what is denied of them."""

import pytest

from intake.reading.household import anybody_frail


@pytest.mark.parametrize(
    "line",
    [
        "my husband is seventy two", "she's eighty-one", "wife's 34 and pregnant", "i'm 70",
        "a 2 year old", "two kids, 4 and 7", "everyone's over 70", "in her eighties",
        "he's got asthma", "three month old", "no kids, but my mother in law is 90",
    ],
)  # fmt: skip
def test_somebody_who_cannot_wait_is_found(line):
    assert anybody_frail(line) is True


@pytest.mark.parametrize(
    "line",
    [
        "no kids, no old people", "nobody over 65", "we are in our 40s", "two teenagers",
        "me and my wife, 45 and 47", "nobody's sick", "no babies, no elderly",
    ],
)  # fmt: skip
def test_people_who_can_wait_are_told(line):
    assert anybody_frail(line) is False


@pytest.mark.parametrize(
    "line",
    [
        "just me", "two kids", "kids are 10 and 12", "it's been out 2 days", "two of us",
        "all adults", "in their sixties", "no", "65 degrees in here", "3 bedrooms",
    ],
)  # fmt: skip
def test_what_tells_no_age_leaves_it_open(line):
    assert anybody_frail(line) is None
