"""Numbers of a call among other numbers: vents, rooms, square feet, years, tons, openings."""

import pytest
from support.dialogue import Dialogue, opened

from intake.interview.turns import Manner, Voice


def heard(key: str, line: str) -> Dialogue:
    return opened(key, Voice.DISPATCHER).play(line)


@pytest.mark.parametrize(
    ("line", "count"),
    [
        ("she's got 9, plus one in the bath", 10),
        ("10 plus 2 in the basement", 12),
        ("counted 9, plus a bathroom one, so ten", 10),
        ("two per room, six rooms", 12),
        ("13 counting the ones that suck, 11 that blow", 11),
        ("a dozen or so, two closed", 12),
        ("fourteen, three returns", 14),
        ("14 vents but 2 of em pull", 12),
        ("six up, seven down, thirteen", 13),
        ("a baker's dozen", 13),
    ],
)
def test_vents_that_blow_are_told_from_other_numbers(line, count):
    told = heard("d_registers", line)
    assert told.talk.job.number("house.supply_registers_count") == count, told.text


def test_a_yes_takes_the_sum_that_was_asked():
    told = heard("d_registers", "9 and 5")
    assert "Is that 14 in all?" in told.text
    assert told.play("yep").talk.job.number("house.supply_registers_count") == 14.0


@pytest.mark.parametrize(
    ("line", "count"),
    [
        ("kids room and the den", 2),
        ("sewing room's always cold", 1),
        ("guest room and office", 2),
        ("none of the rooms", 0),
        ("3 rooms", 3),
    ],
)
def test_rooms_that_are_named_are_counted(line, count):
    told = heard("d_rooms", line)
    assert told.talk.job.number("symptoms.uneven_rooms_count") == count, told.text


@pytest.mark.parametrize("line", ["half the house", "all of em", "the whole upstairs"])
def test_a_share_of_the_house_is_asked_for_as_a_number(line):
    told = heard("d_rooms", line)
    assert "How many rooms is that?" in told.text
    assert told.play("4").talk.job.number("symptoms.uneven_rooms_count") == 4.0


@pytest.mark.parametrize(
    ("line", "area"),
    [
        ("whole house is 2400 but this unit only does the upstairs, which is 1100", 1100.0),
        ("1,300 main floor and 600 upstairs, this unit's just main", 1300.0),
        ("two thousand give or take 200", 2000.0),
        ("1400 up and 700 down, one unit does it all", 2100.0),
        ("1,900 but the basement is another 900, this unit does both", 2800.0),
        ("1800, three levels", 1800.0),
        ("just the upstairs, about 900 feet", 900.0),
        ("downstairs 1200, upstairs has its own unit", 1200.0),
    ],
)
def test_the_area_of_this_unit_is_told_from_other_areas(line, area):
    told = heard("d_area", line)
    assert told.talk.job.number("house.floor_area_ft2") == area, told.text


@pytest.mark.parametrize("line", ["2,000 minus the garage", "1800 less the sunroom"])
def test_an_area_with_something_taken_off_is_asked_for(line):
    told = heard("d_area", line)
    assert told.talk.job.number("house.floor_area_ft2") is None
    assert told.lines(Manner.ASK_BACK)


def test_two_floors_of_which_nobody_says_that_one_unit_does_both_are_asked_about():
    told = heard("d_area", "1400 up and 700 down")
    assert told.talk.job.number("house.floor_area_ft2") is None
    assert told.play("yes").talk.job.number("house.floor_area_ft2") == 2100.0


@pytest.mark.parametrize(
    ("line", "year"),
    [
        ("built in 92, they've been there since 05", 1992),
        ("they moved in in 2003 but house is from the fifties, 1956 she thinks", 1956),
        ("1978, and the ducts were redone in 2001", 1978),
        ("they bought in 99, built in 74", 1974),
        ("1962, they redid the kitchen in 2010", 1962),
    ],
)
def test_the_year_built_is_told_from_other_years(line, year):
    told = heard("d_year", line)
    assert told.talk.job.number("house.year_built") == year, told.text


@pytest.mark.parametrize(
    ("line", "tons"),
    [
        ("2 and a half, he's got the old invoice", 2.5),
        ("not 4, three and a half", 3.5),
        ("36000 btus", 3.0),
        ("the sticker says 42,000", 3.5),
        ("there's two units outside, 2 ton and 3 ton, we're doing the 3", 3.0),
        ("tag says 030 so two and a half", 2.5),
    ],
)
def test_tons_as_callers_tell_them(line, tons):
    told = heard("d_tons", line)
    assert told.talk.job.number("old.cooling_tons") == tons, told.text


@pytest.mark.parametrize("line", ["2 ton and 3 ton", "80000 btu furnace"])
def test_tons_that_are_not_told_stay_open(line):
    assert heard("d_tons", line).talk.job.number("old.cooling_tons") is None


def test_nothing_outside_is_no_cooling_and_an_age_is_no_size():
    assert "no cooling" in heard("d_tons", "nothing outside").text
    told = heard("d_tons", "no idea, its a five year old unit")
    assert told.talk.job.number("house.year_built") is None
    assert told.key != "d_year"


@pytest.mark.parametrize(
    ("line", "sizes"),
    [
        ("first one 12 by 6, second the same, third's 30 by 8", [(12, 6, 2), (30, 8, 1)]),
        ("20 by 30, other one same", [(20, 30, 2)]),
        ("3, all 10 by 6 slots", [(10, 6, 3)]),
    ],
)
def test_an_opening_that_is_the_same_counts_again(line, sizes):
    job = heard("d_openings", line).talk.job
    found: dict[tuple[float, float], float] = {}
    for entry in job.entries("return.grilles"):
        size = (job.number(f"{entry}.width_in"), job.number(f"{entry}.height_in"))
        found[size] = found.get(size, 0.0) + (job.number(f"{entry}.count") or 1.0)
    assert found == {(wide, tall): many for wide, tall, many in sizes}


@pytest.mark.parametrize("line", ["she measured the cover, six by fourteen", "the grate is 6x12"])
def test_a_cover_is_not_the_hole_under_it(line):
    told = heard("d_boot", line)
    assert not told.talk.job.entries("supply.branches") or told.key == "d_boot"
    assert "larger than its hole" in told.text
    assert told.play("4x10").talk.job.number("supply.branches.0.width_in") == 4.0


def test_the_hole_and_the_pipe_below_it_are_asked_apart():
    told = heard("d_boot", "hole's 4x10 and a 6 inch round under")
    assert "which feeds it?" in told.text
    assert told.play("2").talk.job.number("supply.branches.0.diameter_in") == 6.0


@pytest.mark.parametrize(
    "line",
    [
        "there's no big duct, just round hoses all coming off a box",
        "eight foot off the floor, can't",
    ],
)
def test_a_main_duct_that_is_not_there_or_out_of_reach_stays_open(line):
    told = heard("d_trunk", line)
    assert told.key != "d_trunk"
    assert not told.lines(Manner.ASK_BACK)


@pytest.mark.parametrize("line", ["the whole house is fine", "all rooms are good", "no room"])
def test_a_house_that_is_fine_has_no_such_room(line):
    assert heard("d_rooms", line).talk.job.number("symptoms.uneven_rooms_count") == 0.0


def test_vents_that_do_not_blow_are_taken_off_only_when_asked():
    told = heard("d_registers", "12 but 3 don't blow")
    assert "Is that 9 that blow?" in told.text
    assert told.play("yes").talk.job.number("house.supply_registers_count") == 9.0


def test_vents_less_some_are_asked_about():
    assert "Is that 9 that blow?" in heard("d_registers", "ten minus one that is broken").text


@pytest.mark.parametrize("line", ["eighteen or nineteen hundred", "eighteen to nineteen hundred"])
def test_two_figures_of_one_hundred_are_a_range(line):
    told = heard("d_area", line)
    belief = told.talk.job.stated("house.floor_area_ft2")
    assert belief is not None, told.text
    assert told.talk.job.number("house.floor_area_ft2") == 1850
