"""A correction goes to the fact it names; the open question keeps its answer."""

import pytest
from support.dialogue import opened

from intake.interview.called import without_lead
from intake.interview.clauses import without_its_end
from intake.interview.turns import Voice

AIRFLOWS = {"heat_pump_cfm": "1150", "strip_cfm": "850"}
DUCTS = {"drop_size": "22x10", "trunk_count": "1", "trunk_size": "20x8"}


def fact(talk, key):
    belief = talk.state.job.stated(key)
    return None if belief is None else belief.value


@pytest.mark.parametrize(
    ("line", "cfm"),
    [
        ("cooling is 1100 actually", 1100.0),
        ("change cooling to 1150", 1150.0),
        ("wait cooling should be 1250", 1250.0),
        ("actually make cooling 1075", 1075.0),
    ],
)
def test_an_airflow_called_by_a_loose_name_is_put_right(line, cfm):
    talk = opened("old_runs", **AIRFLOWS).play(line)
    assert fact(talk, "target.cooling_high_cfm") == cfm
    assert fact(talk, "equipment.strip_minimum_cfm") == 850.0
    assert talk.key == "old_runs"


@pytest.mark.parametrize(
    ("line", "cfm"),
    [
        ("runs fine, oh and scratch that, heat pump heating is 1125", 1125.0),
        ("yes, make the heat pump heating 1100", 1100.0),
    ],
)
def test_an_answer_and_a_correction_in_one_line_are_both_taken(line, cfm):
    talk = opened("old_runs", **AIRFLOWS).play(line)
    assert fact(talk, "target.heat_pump_heating_cfm") == cfm
    assert talk.key == "tools"


def test_what_is_the_same_is_copied_after_its_source_is_put_right():
    talk = opened("heat_pump_cfm").play("its same as cooling and actually cooling is 1150 not 1200")
    assert fact(talk, "target.cooling_high_cfm") == 1150.0
    assert fact(talk, "target.heat_pump_heating_cfm") == 1150.0


def test_a_thickness_corrects_the_filter_that_was_told_whole():
    talk = opened("year_built", filter="16x25x4").play("1960, filter's actually 1 inch")
    assert fact(talk, "house.year_built") == 1960
    assert fact(talk, "filters.0.depth_in") == 1.0


@pytest.mark.parametrize(
    "line",
    [
        "hall 20x20, den 14x14, and take the drop down to 18x10",
        "20x20 and 14x14. sorry the drop is 18x10 not 22",
    ],
)
def test_a_drop_put_right_among_openings_is_no_opening(line):
    talk = opened("openings", **DUCTS).play(line)
    assert talk.state.job.length("return.grilles") == 2
    assert fact(talk, "return.drops.0.width_in") == 18.0


def test_one_trunk_of_several_is_asked_for_whole():
    told = {**DUCTS, "trunk_count": "2", "trunk_size": "20x8 and 16x8"}
    talk = opened("openings", **told).play(
        "one 24x30 filter grille, and I lied about the second trunk its 18x8"
    )
    assert talk.state.job.length("return.grilles") == 1
    assert "say them all once more" in talk.text
    assert talk.key == "trunk_size"


@pytest.mark.parametrize(
    ("line", "height"), [("16x8, no 14x8", 14.0), ("16x8... no wait 12x8", 12.0)]
)
def test_a_slip_mended_in_its_own_line_changes_nothing_else(line, height):
    talk = opened("step_down", **DUCTS).play(line)
    assert fact(talk, "supply.trunks.0.width_in") == 20.0
    assert "Corrected" not in talk.text
    assert f"{height:g} x 8" in talk.text


def test_in_a_list_the_taken_back_opening_is_gone():
    talk = opened("openings", **DUCTS).play("20x20 and 14x8, not 14x8 its 14x6")
    assert talk.state.job.length("return.grilles") == 2
    assert "14 x 6" in talk.text
    assert "14 x 8" not in talk.text


def test_nothing_is_called_corrected_that_stays_as_it_was():
    talk = opened("old_runs", **AIRFLOWS).play("sorry, heat pump heating is 1150")
    assert "Corrected" not in talk.text


def test_a_call_takes_a_count_and_a_correction_together():
    talk = opened("d_registers", Voice.DISPATCHER, d_filter="16x25x1", d_tons="3 ton").play(
        "11. ah and she says the tonnage is 3.5 not 3"
    )
    assert fact(talk, "old.cooling_tons") == 3.5
    assert talk.key != "d_registers"


@pytest.mark.parametrize(
    ("words", "rest"),
    [
        ("oh and scratch that, the heat pump heating is 1425", "heat pump heating is 1425"),
        ("and i lied about the second trunk", "second trunk"),
        ("no return trunk", "no return trunk"),
        ("make it 20x8", "it 20x8"),
    ],
)
def test_what_leads_up_to_a_name_is_left_out(words, rest):
    assert without_lead(words) == rest


def test_what_led_to_the_next_clause_is_left_out():
    assert without_its_end("20x20 and 14x14. sorry") == "20x20 and 14x14"


@pytest.mark.parametrize("key", ["drop_where", "drop_skin", "trunk_skin"])
def test_a_loose_name_is_understood_where_no_figure_is_asked(key):
    told = {**AIRFLOWS, "drop_size": "20x10", "trunk_count": "1", "trunk_size": "20x8"}
    skin = {} if key.endswith("skin") else {"drop_skin": "wrapped"}
    talk = opened(key, **told, **skin).play("cooling is 1100 actually")
    assert fact(talk, "target.cooling_high_cfm") == 1100.0
    assert talk.key == key
