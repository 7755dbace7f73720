"""Airflows told by the one before, and strips that are none."""

import pytest
from support.dialogue import opened

STAGED = {"new_equipment": "3 ton two stage heat pump", "cool_cfm": "1200"}


@pytest.mark.parametrize(
    ("line", "cfm"),
    [
        ("use the same", 1200),
        ("same i think", 1200),
        ("no different", 1200),
        ("doesnt matter, same", 1200),
        ("1100 too", 1100),
        ("a hundred more than cooling", 1300),
        ("50 more", 1250),
        ("50 less", 1150),
        ("same as low", 800),
    ],
)
def test_heating_is_told_by_the_cooling(line, cfm):
    told = opened("heat_pump_cfm", **STAGED, low_cfm="800").play(line)
    assert told.talk.job.number("target.heat_pump_heating_cfm") == cfm


def test_the_same_as_an_unknown_low_stage_is_not_full_cooling():
    told = opened("heat_pump_cfm", new_equipment="3 ton single stage heat pump", cool_cfm="1200")
    assert told.play("same as low").talk.job.number("target.heat_pump_heating_cfm") is None


@pytest.mark.parametrize("line", ["not the same", "different"])
def test_what_is_not_the_same_is_no_answer(line):
    told = opened("heat_pump_cfm", **STAGED).play(line)
    assert told.talk.job.number("target.heat_pump_heating_cfm") is None


@pytest.mark.parametrize(
    ("line", "cfm"), [("70 percent of that", 840), ("two thirds", 800), ("half", 600)]
)
def test_low_stage_is_told_as_a_share(line, cfm):
    told = opened("low_cfm", **STAGED).play(line)
    assert told.talk.job.number("target.cooling_low_cfm") == cfm


@pytest.mark.parametrize(
    "line",
    [
        "no strips on this job",
        "not getting strips",
        "not getting any",
        "no kit",
        "no heat kit is ordered",
        "they're deleting em",
        "zero strips",
        "gas backup so none",
        "none like i said",
        "no electric strips in this one, she's got a wood stove for backup",
    ],
)
def test_no_strips_are_none_and_not_unknown(line):
    told = opened("strip_cfm").play(line)
    assert told.text.startswith("Strip kit: none.")


@pytest.mark.parametrize("line", ["no kit label", "not sure if it gets strips", "no idea"])
def test_what_is_not_known_of_strips_is_not_none(line):
    assert "none" not in opened("strip_cfm").play(line).text.split("\n")[0]


@pytest.mark.parametrize(
    ("line", "kw", "cfm"),
    [
        ("1000 for 10kw, 1200 for the 15, we're doing the 15", 15, 1200),
        ("kit's 8 kw, book doesn't say", 8, None),
        ("7.5 kw, dunno the min", 7.5, None),
        ("ten kilowatt kit minimum eight hundred", 10, 800),
    ],
)
def test_the_kit_is_kept_with_what_is_known_of_it(line, kw, cfm):
    job = opened("strip_cfm").play(line).talk.job
    assert job.number("equipment.strip_kw") == kw
    assert job.number("equipment.strip_minimum_cfm") == cfm


def test_what_is_said_in_passing_is_kept():
    told = opened("heat_pump_cfm").play("same, no strips either")
    assert told.talk.job.number("target.heat_pump_heating_cfm") == 1200.0
    assert told.key != "strip_cfm"
    told = opened("strip_cfm").play("none, and blower's dead by the way")
    assert told.talk.job.word("old.works") == "no"
    told = opened("cool_cfm", new_equipment="3 ton heat pump").play("1200 but it's zoned")
    assert told.talk.job.word("house.zoned") == "yes"
    told = opened("safety").play("all clear, and the house is from 1972 by the way")
    assert told.talk.job.number("house.year_built") == 1972.0
    assert told.key == "new_equipment"


@pytest.mark.parametrize(("line", "cfm"), [("350 a ton", 1050), ("1200, 3 ton at 400", 1200)])
def test_so_much_a_ton_counts_the_tons_that_were_told(line, cfm):
    told = opened("cool_cfm", new_equipment="3 ton single stage heat pump").play(line)
    assert told.talk.job.number("target.cooling_high_cfm") == cfm


def test_heating_with_the_same_air_is_taken_beside_cooling():
    told = opened("cool_cfm", new_equipment="3 ton single stage heat pump")
    told.play("1200 for cooling, same heating")
    assert told.talk.job.number("target.heat_pump_heating_cfm") == 1200.0
    furnace = opened("cool_cfm", new_equipment="3 ton single stage furnace, 80k 80 percent")
    furnace.play("1200 for cooling, same heating")
    assert not furnace.talk.job.is_known("target.heat_pump_heating_cfm")
