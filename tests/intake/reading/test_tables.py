"""Pasted tables and lists of fittings."""

import pytest

from engine.trade.fittings import FITTINGS
from intake.reading.fittings import FITTING_WORDS
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, Command, Rejected, Sure, Unknown


def tables(text: str) -> dict[object, list[tuple[float, float]]]:
    reading = read("blower_table", text)
    assert isinstance(reading, Accepted), reading
    return {
        table.get("setting"): [(row["static_inwc"], row["airflow_cfm"]) for row in table["rows"]]
        for table in reading.values["blower_tables"]
    }


ROWS = [(0.1, 1400.0), (0.2, 1350.0), (0.3, 1290.0)]


@pytest.mark.parametrize(
    "text",
    [
        "0.1 1400\n0.2 1350\n0.3 1290", "1,400 0.1\n1,350 0.2\n1,290 0.3",
        "0.1,1400\n0.2,1350\n0.3,1290",
        "0.1: 1400, 0.2: 1350, 0.3: 1290", "0.3 1290\n0.1 1400\n0.2 1350",
        "0.1 in. w.c., 1400 CFM\n0.2 in. w.c., 1350 CFM\n0.3 in. w.c., 1290 CFM",
    ],
)  # fmt: skip
def test_one_setting_is_read_in_any_layout(text):
    assert tables(text) == {None: ROWS}


def test_a_line_of_statics_heads_lines_of_airflow():
    assert tables("static 0.1 0.2 0.3\nhigh 1400 1350 1290\nlow 1000 980 950") == {
        "high": ROWS,
        "low": [(0.1, 1000.0), (0.2, 980.0), (0.3, 950.0)],
    }


def test_settings_may_stand_over_the_columns():
    assert tables("in wc, High, Low\n0.1, 1400, 900\n0.2, 1350, 880") == {
        "high": ROWS[:2],
        "low": [(0.1, 900.0), (0.2, 880.0)],
    }


def test_three_digit_airflows_between_commas_are_not_thousands():
    assert tables("0.5,950,880\n0.6,900,840")["column 1"] == [(0.5, 950.0), (0.6, 900.0)]


def test_an_empty_cell_leaves_a_row_out():
    assert tables("0.1 1400 -\n0.2 1350 1200")["column 2"] == [(0.2, 1200.0)]


def test_statics_in_pascals_are_converted():
    # 25 Pa / 249.089 Pa per in. w.c. = 0.1004
    assert tables("Pa 25 50\nhigh 1400 1350")["high"][0] == (
        pytest.approx(0.1004, abs=1e-4),
        1400.0,
    )


@pytest.mark.parametrize(
    "text", ["1400 1350\n1200 1100", "0.1 1400\n0.2 1500", "0.1 1400\n0.1 1300", "0.1 0.2\n0.3 0.4"]
)
def test_columns_that_can_t_be_told_apart_are_asked_not_swapped(text):
    assert isinstance(read("blower_table", text), AskBack)


def test_words_instead_of_a_table_are_still_understood():
    assert isinstance(read("blower_table", "i dont have it"), Unknown)
    assert isinstance(read("blower_table", "skip"), Command)
    assert isinstance(read("blower_table", "hello"), Rejected)


@pytest.mark.parametrize(
    "text",
    [
        "1200 36000 27000",
        "1200 27000 36000",
        "cfm total sensible\n1200 36.0 27.0",
        "CFM, Total, S/T\n1200, 36000, 0.75",
    ],
)
def test_cooling_rows_are_read_by_size_or_heading(text):
    reading = read("cooling_rows", text)
    assert isinstance(reading, Accepted)
    assert reading.values["cooling_rows"] == [
        {"airflow_cfm": 1200.0, "total_btuh": 36000.0, "sensible_btuh": 27000.0}
    ]


@pytest.mark.parametrize(
    "text", ["1200 36000", "1200 36000 5000", "1200 36000 27000\n1400 36500 20000"]
)
def test_cooling_rows_that_break_physics_are_asked(text):
    assert isinstance(read("cooling_rows", text), AskBack)


def test_every_fitting_word_names_a_fitting_of_the_engine():
    assert set(FITTING_WORDS) == set(FITTINGS)


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("3 elbows, a boot and a square turn",
         {"round_elbow_adjustable": 3, "boot_angle": 1, "square_elbow_trunk": 1}),
        ("two 90s and a 45", {"round_elbow_adjustable": 2, "round_elbow_45": 1}),
        ("three take-offs, 2 square elbows with vanes", {"takeoff_straight": 3, "vaned_elbow": 2}),
        ("no vanes, 4 radius elbows", {"radius_elbow": 4}), ("1 45 takeoff", {"takeoff_45": 1}),
    ],
)  # fmt: skip
def test_a_list_of_fittings_is_counted_by_kind(text, counts):
    reading = read("fittings", text)
    assert isinstance(reading, Accepted), reading
    assert {row["kind"]: row["count"] for row in reading.values["fittings"]} == counts


def test_a_plain_elbow_is_taken_as_the_commonest_and_marked_unsure():
    reading = read("fittings", "3 elbows")
    assert isinstance(reading, Accepted)
    assert reading.sure is Sure.HEDGED


@pytest.mark.parametrize("text", ["2 widgets", "5", "3 elbows and 2 thingamajigs"])
def test_a_fitting_nobody_knows_is_not_dropped_in_silence(text):
    assert not isinstance(read("fittings", text), Accepted)
