"""The dispatcher's card in every format, and what of the typed lines still stands."""

import json

import pytest
from support.verdicts import a_job, a_verdict

from engine.job.belief import How, Known
from engine.job.job import BlowerSetting, CoolingRow, Job
from engine.physics.blower_table import BlowerTable
from engine.verdict import Verdict
from intake.interview.booking import Booking, Flag, Outcome
from intake.interview.events import Answered, Started, Undone, Unsaid
from intake.interview.turns import Voice
from intake.report.answers import stated_facts, typed_answers
from intake.report.booking_card import OUTCOMES, booking_card
from intake.report.content import content_of
from intake.report.html import report_html
from intake.report.json import report_json
from intake.report.markdown import report_markdown

CARD = Booking(
    outcome=Outcome.SURVEY,
    minutes=120,
    for_caller="We will need two hours.",
    for_board="Survey: one 16x25x1 filter for 3 tons.",
    bring=("tape", "gauge"),
    photos=("Please photograph the filter's edge.",),
    safety=("no smell of gas",),
    measure_first=("pressure before and after the filter",),
    unknown=(),
    flags=(Flag("d_filter", True, "about 450 fpm through the filter"),),
    decided="Decided by the filter.",
)


@pytest.mark.parametrize(
    "told",
    [
        "replacement visit with a duct survey",
        "120",
        "We will need two hours.",
        "Survey: one 16x25x1 filter for 3 tons.",
        "tape",
        "gauge",
        "Please photograph the filter's edge.",
        "no smell of gas",
        "pressure before and after the filter",
        "about 450 fpm through the filter (decides alone)",
        "Decided by the filter.",
    ],
)
def test_the_card_is_whole_in_markdown_and_html(told):
    content = content_of(a_job(), a_verdict(), booking=CARD)
    assert told in report_markdown(content)
    assert told.replace("'", "&#39;") in report_html(content)


def test_an_empty_line_of_the_card_is_left_out():
    assert "unknown" not in [line.name for line in booking_card(CARD).lines]


def test_the_card_is_in_json_under_its_own_names():
    card = json.loads(report_json(content_of(Job(), Verdict(modes={}), booking=CARD)))["booking"]
    assert card["outcome"] == "visit_and_duct_survey"
    assert card["minutes"] == 120
    assert card["flags"] == [
        {"question": "d_filter", "hard": True, "words": "about 450 fpm through the filter"}
    ]


def test_every_outcome_has_words():
    assert set(OUTCOMES) == set(Outcome)


def test_a_report_without_a_call_has_no_card():
    content = content_of(a_job(), a_verdict())
    assert "Booking" not in report_markdown(content)
    assert json.loads(report_json(content))["booking"] is None


def test_typed_lines_that_were_taken_back_are_not_reported():
    answered = Answered(question="tons", text="3 ton")
    events = (
        Started(voice=Voice.TECHNICIAN),
        answered,
        Unsaid(question="filter", text="idk"),
        Answered(question="trunk", text="20 bite 8"),
        Undone(),
    )
    assert [one.text for one in typed_answers(events)] == ["3 ton", "idk"]


def test_stated_facts_tell_tables_row_by_row_and_lists_stated_empty():
    table = BlowerTable.from_rows("high", [(0.3, 1320.0), (0.5, 1240.0)])
    rows = (CoolingRow("high", 1200.0, 36000.0, 27000.0),)
    job = Job(blower=(BlowerSetting(table),), cooling_rows=rows)
    job = job.with_fact("equipment.kind", Known("furnace", How.PLATE))
    job = job.with_length("return.drops", 0)
    told = [(one.what, one.value, one.how) for one in stated_facts(job)]
    assert told == [
        ("kind of new unit", "furnace", "read from the plate"),
        ("the return drop's size, or that there is none", "none in this house", "stated"),
        (
            "the new blower on “high”, by external static in in. w.c.",
            "1,320 CFM at 0.30, 1,240 CFM at 0.50",
            "maker's table",
        ),
        (
            "cooling capacity at 1,200 CFM, high stage",
            "36,000 Btu/h, of it 27,000 sensible",
            "maker's table",
        ),
    ]
