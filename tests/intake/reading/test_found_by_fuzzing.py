"""Texts that once broke the reader; each must be answered, whatever the answer is."""

import pytest

from intake.reading.read import read
from intake.reading.result import AskBack, Rejected


@pytest.mark.parametrize(("field", "text"), [("duct", "six 6s° six 6s° six 6s°")])
def test_it_is_answered(field, text):
    assert isinstance(read(field, text), AskBack | Rejected)
