"""Texts that once broke the reader; each must be answered, whatever the answer is."""

import pytest

from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, Rejected


@pytest.mark.parametrize(("field", "text"), [("duct", "six 6s° six 6s° six 6s°")])
def test_it_is_answered(field, text):
    assert isinstance(read(field, text), AskBack | Rejected)


@pytest.mark.parametrize(
    "text",
    [
        "8in flex black jacket 45 psi",
        "3in flex black jacket 259 pa",
        '6" core flex, r-8 jacket 6" core flex, r-8 jacket',
        "three and a qu outside 3.5 ton inside",
    ],
)
def test_a_figure_of_another_kind_beside_a_jacket_raises_nothing(text):
    assert read("duct", text) is not None


@pytest.mark.parametrize("text", ["31½ ft   8in round", "14  or inch round, 30 feet 14 inch round"])
def test_feet_before_the_inches_of_a_duct_are_read(text):
    assert not isinstance(read("length", text), Accepted)
