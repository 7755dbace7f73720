"""The blower, the weather, zones, the year and the safety look, told by what is there."""

import pytest
from support.dialogue import opened


@pytest.mark.parametrize("line", ["not with the board fried", "not since the storm"])
def test_a_no_with_its_reason_is_a_no(line):
    assert opened("old_runs").play(line).talk.job.word("old.works") == "no"


@pytest.mark.parametrize("line", ["haven't tried", "haven't tried it yet", "didn't check"])
def test_a_blower_that_nobody_tried_stays_open(line):
    told = opened("old_runs").play(line)
    assert told.talk.job.word("old.works") is None
    assert told.key == "tools"


@pytest.mark.parametrize(
    ("line", "warm"),
    [
        ("80 out so yeah", "yes"),
        ("its 75 so should be fine", "yes"),
        ("85, house is 80 inside", "yes"),
        ("hot as blazes", "yes"),
        ("only 45 outside", "no"),
        ("too chilly, 55", "no"),
    ],
)
def test_the_weather_is_told_by_its_degrees(line, warm):
    told = opened("weather").play(line)
    assert told.key != "weather"
    belief = told.talk.job.stated("site.weather_allows_cooling")
    said = told.talk.job.word("site.weather_allows_cooling")
    assert said == warm or warm in str(belief)


@pytest.mark.parametrize("line", ["no, 72 out", "was 80 yesterday", "70 at the thermostat"])
def test_degrees_of_another_time_or_place_are_not_the_weather(line):
    told = opened("weather").play(line)
    assert told.talk.job.word("site.weather_allows_cooling") != "yes"


@pytest.mark.parametrize(
    "line",
    [
        "manual dampers only",
        "hand dampers at the takeoffs, no zoning",
        "it's got two thermostats but two systems",
        "no but they have two systems, this is the downstairs one",
        "No zone dampers, one thermostat",
        "one stat one zone",
        "had zones, took em out",
        "it was but i'm removing it",
    ],
)
def test_what_is_no_zone_is_none(line):
    assert opened("zoned").play(line).talk.job.word("house.zoned") == "no"


@pytest.mark.parametrize("line", ["two zones", "2 zones upstairs downstairs", "three zones"])
def test_zones_that_are_counted_are_zones(line):
    assert opened("zoned").play(line).talk.job.word("house.zoned") == "yes"


def test_the_smallest_zone_is_taken_beside_them():
    told = opened("zoned").play("yes three zones and the smallest has 4 registers")
    assert told.talk.job.number("zones.smallest_registers_count") == 4.0


def test_asking_what_counts_as_zoned_is_no_yes():
    told = opened("zoned").play("what counts as zoned")
    assert told.talk.job.word("house.zoned") is None
    assert told.key == "zoned"


@pytest.mark.parametrize(
    ("line", "year"),
    [
        ("built in 62, ducts are from 88", 1962),
        ("1978 plus addition 1992", 1978),
        ("1964, ducts redone 1995", 1964),
        ("tax record says 1958 but the addition's 1985", 1958),
        ("'84", 1984),
    ],
)
def test_the_year_of_the_house_is_not_that_of_its_ducts(line, year):
    assert opened("year_built").play(line).talk.job.number("house.year_built") == year


@pytest.mark.parametrize(
    ("line", "words"),
    [("it's from the thirties", "1930 to 1939"), ("61 or 62", "1961 to 1962")],
)
def test_a_decade_before_ours_is_of_the_last_century(line, words):
    assert words in opened("year_built").play(line).text


@pytest.mark.parametrize(
    "line",
    [
        "nothin smells, nothin beeps, nothin wet",
        "nothing that i can smell",
        "ok so just got here, no smells, alarms are quiet, concrete's dry",
        "well I walked all round the furnace and the laundry room, sniffed like a hound,"
        " and nothing at all",
    ],
)
def test_a_look_told_with_a_story_is_clear(line):
    assert opened("safety").play(line).key == "new_equipment"


@pytest.mark.parametrize(
    "line",
    [
        "got here, all good. puddle by the wires",
        "looked around, no smell, alarm beeps",
        "didn't check the furnace, all good i guess",
        "walked in, all good, wife has a headache",
        "smelled something yesterday, fine now i think",
        "nothing smells but the wires are wet",
    ],
)
def test_a_story_with_a_danger_or_a_doubt_is_not_clear(line):
    told = opened("safety").play(line)
    assert told.talk.job.word("symptoms.gas_smell") is None


def test_asking_for_the_meaning_of_an_alarm_raises_none():
    told = opened("safety").play("what do you mean by alarm?")
    assert not told.state.doubt
    assert told.key == "safety"
