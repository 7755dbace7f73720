"""A part told beside the whole of a call: one side dead, two parts in turn, one of several."""

import pytest
from support.dialogue import Dialogue, opened

from intake.interview.turns import Manner, Voice


def call(key: str, line: str, **before: str) -> Dialogue:
    return opened(key, Voice.DISPATCHER, **before).play(line)


@pytest.mark.parametrize(
    "line",
    [
        "no complaints today",
        "no issues right now",
        "nothing wrong today",
        "no problems at all",
        "nothing to report",
    ],
)
def test_nothing_to_complain_of_means_that_it_runs(line):
    told = call("d_works", line, d_trouble="twice")
    assert told.talk.job.word("old.works") == "yes", told.text


@pytest.mark.parametrize(
    "line",
    [
        "heats fine, AC doesn't",
        "heat works, cooling doesn't",
        "runs good but not the heat",
        "runs but it's on its last leg",
        "AC works, furnace hasn't been on yet",
        "no, nothing wrong but it's loud",
    ],
)
def test_one_dead_side_is_asked_about(line):
    told = call("d_works", line, d_trouble="twice")
    assert told.talk.job.word("old.works") is None, told.text
    assert told.lines(Manner.ASK_BACK)
    assert told.key == "d_works"


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("new motor in the blower, then the year after a board", "repeated"),
        ("blower in March, board in June", "repeated"),
        ("first a blower then a heat exchanger", "repeated"),
        ("no freezing, no shutdowns, one board back in 2015", "once"),
        ("no freezes, one blower motor in 2018", "once"),
        ("never, it's the original blower and board", "never"),
        ("no board, no blower, nothing", "never"),
        ("had the blower motor replaced last year", "once"),
        ("blower and board at the same time", "once"),
    ],
)
def test_parts_that_failed_are_counted_and_denied_ones_are_not(line, word):
    told = call("d_trouble", line)
    assert told.talk.job.word("phone.trouble") == word, told.text


def test_a_stop_and_then_a_part_are_asked_to_be_one_or_two():
    told = call("d_trouble", "froze up once, then a board")
    assert "Once, or more than once?" in told.text


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("just the AC, heater's only four years old", "cooling_only"),
        ("AC's only five years old, it's the furnace", "heating_only"),
        ("AC only, furnace was replaced 2 years ago", "cooling_only"),
        ("the heat side only, there's no AC", "heating_only"),
        ("just the heat, they have no AC but want it now", "first_cooling"),
        ("furnace out, heat pump in, they might move in a year or two", "furnace_to_heat_pump"),
    ],
)
def test_what_stays_by_its_age_or_is_not_there_is_no_change(line, word):
    told = call("d_change", line)
    assert told.talk.job.word("phone.change") == word, told.text


def test_a_change_that_is_not_decided_is_asked_about():
    told = call("d_change", "they don't know yet, maybe a heat pump maybe another furnace")
    assert told.talk.job.word("phone.change") is None, told.text
    assert told.lines(Manner.ASK_BACK)


def test_a_filter_that_fits_and_one_that_is_put_in_are_one():
    told = call("d_filter", "it's 16 x 25 x 1 but she's been putting a 16 x 24 in")
    assert "Which of the two" in told.text
    assert not told.talk.job.length("filters")


def test_a_filter_in_one_of_two_openings_is_no_opening():
    told = call("d_openings", "two in the hall 14x20, one of 'em has the filter 14x20x1")
    job = told.talk.job
    assert job.number("return.grilles.0.count") == 2, told.text
    assert job.number("filters.0.depth_in") == 1


def test_one_measured_opening_of_several_is_asked_about():
    told = call("d_openings", "5 of them but she only measured one, 14x6")
    assert told.talk.job.length("return.grilles") in (None, 0), told.text
    assert told.play("1").talk.job.number("return.grilles.0.count") == 5


@pytest.mark.parametrize(
    ("line", "widths"),
    [
        ("14x8 where it's thin, 20x8 where it's fat", [20]),
        ("20x8 by the unit, 14x8 at the far end", [20]),
        ("20x8 on the left, 14x8 on the right", [20, 14]),
    ],
)
def test_the_fattest_place_of_the_main_duct_counts(line, widths):
    told = call("d_trunk", line)
    job = told.talk.job
    kept = [job.number(f"{at}.width_in") for at in job.entries("supply.trunks")]
    assert kept == widths, told.text


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("two ducts but both go the same way", "one"),
        ("both pipes head the same way", "one"),
        ("two, side by side, going back", "one"),
        ("one each side, same size", "both"),
        ("not the same way, one left one right", "both"),
    ],
)
def test_two_ducts_may_leave_the_same_way(line, word):
    told = call("d_ways", line)
    assert told.talk.job.word("phone.trunk_directions") == word, told.text


@pytest.mark.parametrize(
    ("line", "asked"),
    [
        ("two in each bedroom, three bedrooms, and four more", "Is that 10 in all?"),
        ("thirteen, but one doesn't blow", "Is that 12 that blow?"),
        ("she stopped counting at 15", "in all"),
    ],
)
def test_vents_beside_others_are_asked_to_be_added_or_left_out(line, asked):
    told = call("d_registers", line)
    assert asked in told.text
    assert told.talk.job.number("house.supply_registers_count") is None


@pytest.mark.parametrize(("line", "count"), [("a bakers dozen", 13), ("two in each of 3 rooms", 6)])
def test_vents_in_a_word_are_counted(line, count):
    told = call("d_registers", line)
    assert told.talk.job.number("house.supply_registers_count") == count, told.text


@pytest.mark.parametrize(
    ("line", "count"),
    [
        ("just one in summer, a different one in winter", 2),
        ("one upstairs, another downstairs", 2),
        ("living room and dining", 2),
        ("dining room and family", 2),
        ("kitchen's hot but that's always", 1),
        ("just the one room, nothing else", 1),
    ],
)
def test_rooms_by_season_or_short_name_are_counted(line, count):
    told = call("d_rooms", line)
    assert told.talk.job.number("symptoms.uneven_rooms_count") == count, told.text


def test_a_room_that_its_oven_heats_is_asked_about():
    told = call("d_rooms", "kitchen is hot but that's the oven")
    assert told.talk.job.number("symptoms.uneven_rooms_count") is None, told.text


@pytest.mark.parametrize(
    "line",
    ["they keep all doors open", "doors are always open there", "doors are shut all day"],
)
def test_doors_that_stand_open_tell_nothing(line):
    told = call("d_doors", line)
    assert told.talk.job.word("symptoms.doors_move") is None, told.text
    assert told.key == "d_doors"


@pytest.mark.parametrize(
    "line",
    ["they leave doors open because they slam by themselves", "doors open by themselves"],
)
def test_doors_that_move_are_told(line):
    assert call("d_doors", line).talk.job.word("symptoms.doors_move") == "yes"


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("would rather not", "no"),
        ("I'd rather you came out", "no"),
        ("I'd rather not send photos", "no"),
        ("she'd rather not but her son will send them", "yes"),
        ("I'd rather text them tonight", "yes"),
    ],
)
def test_a_polite_refusal_of_photos_is_a_no(line, word):
    told = call("d_photos", line)
    assert told.talk.job.word("phone.photos") == word, told.text


def test_two_ducts_to_one_side_are_asked_about():
    told = call("d_ways", "two ducts off the top, both head to the back")
    assert told.talk.job.word("phone.trunk_directions") is None, told.text
    assert told.play("one way").talk.job.word("phone.trunk_directions") == "one"


@pytest.mark.parametrize("line", ["some hose, some pipe", "mostly pipe, a couple of hoses"])
def test_hoses_and_pipes_told_as_some_of_each_are_asked_about(line):
    told = call("d_flex", line, d_location="attic")
    assert told.talk.job.word("phone.flex_seen") is None, told.text


@pytest.mark.parametrize(
    ("line", "year"),
    [("1974 I mean", 1974), ("same as before, 1974 I mean", 1974), ("1974, i mean 1984", 1984)],
)
def test_a_year_behind_a_slip_leaves_the_area_alone(line, year):
    told = call("d_year", line, d_area="1580")
    assert told.talk.job.number("house.year_built") == year, told.text
    assert told.talk.job.number("house.floor_area_ft2") == 1580


def test_a_filters_depth_in_words_is_put_right():
    told = call("d_location", "crawl. oh the filter is two inch not one", d_filter="16x25x1")
    assert told.talk.job.number("filters.0.depth_in") == 2, told.text
    assert told.talk.job.word("house.duct_location") == "crawlspace"
