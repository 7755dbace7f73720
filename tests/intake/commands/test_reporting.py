"""Reports of kept jobs: their form."""

from pathlib import Path

import pytest

from intake.commands.reporting import form_of


@pytest.mark.parametrize(
    ("name", "form"),
    [("r.html", "html"), ("r.JSON", "json"), ("r.md", "markdown"), ("r.txt", "markdown")],
)
def test_the_ending_of_a_reports_name_tells_its_form(name, form):
    assert form_of(Path(name)) == form
    assert form_of(None) == "markdown"
