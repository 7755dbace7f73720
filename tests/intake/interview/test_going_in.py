"""What goes in: apart from what comes out, whose stages, which tons, and what is told beside."""

import pytest
from support.dialogue import opened

FURNACE = "3 ton single stage furnace with coil, 80k 80 percent"


def going_in(line: str):
    return opened("new_equipment").play(line).talk.job


@pytest.mark.parametrize(
    "line",
    [
        "converting oil furnace to 3 ton heat pump, single stage",
        "going from a furnace to a 3 ton single stage heat pump with a matching air handler",
        "it was a 4 ton but we're putting in a 3 ton single stage heat pump",
        "taking out an 80k furnace and 2.5 ton ac, putting in a 3 ton single stage heat pump",
        "going from a 2.5 ton ac to a 3 ton single stage heat pump",
        "3 ton single stage heat pump, replacing an 80k furnace",
        "yanking the old 80k furnace, going all electric, 3 ton heat pump single stage",
    ],
)
def test_what_comes_out_says_nothing_of_what_goes_in(line):
    job = going_in(line)
    assert job.word("equipment.kind") == "heat_pump"
    assert job.number("equipment.cooling_tons") == 3.0
    assert not job.is_known("equipment.heating_input_btuh")


@pytest.mark.parametrize(
    "line",
    [
        "3 ton single stage heat pump, the old furnace stays",
        "3 ton heat pump with gas backup, single",
        "heat pump over a gas furnace, 3 ton single stage",
    ],
)
def test_a_furnace_that_stays_makes_it_dual_fuel(line):
    assert going_in(line).word("equipment.kind") == "dual_fuel"


@pytest.mark.parametrize(
    "line",
    [
        "two stage furnace with single stage 3 ton ac",
        "single stage 3 ton ac on a two stage furnace",
        "3 ton AC and a 70,000 80% furnace, AC is single stage and the furnace two stage",
        "80k two stage 96 percent furnace with a three ton coil, single stage condenser outside",
    ],
)
def test_a_burner_s_stages_are_not_the_cooling_s(line):
    told = opened("new_equipment").play(line)
    assert told.talk.job.word("equipment.stages") == "single"
    assert "the burner in stages" in told.text
    told.play("1200")
    assert told.key != "low_cfm"


def test_a_burner_in_stages_is_asked_for_its_low_fire():
    told = opened("furnace_low_heat", new_equipment="two stage furnace with single stage 3 ton ac")
    assert told.key == "furnace_low_heat"


def test_stages_of_a_burner_alone_leave_those_of_the_cooling_open():
    told = opened("new_equipment").play("two stage 80k furnace with a 3 ton coil")
    assert told.key == "new_stages"


@pytest.mark.parametrize(
    "line", ["one stage condenser, two stage furnace", "on/off", "no stages just on off"]
)
def test_the_cooling_is_single_stage(line):
    told = opened("new_stages", new_equipment="furnace with 3 tons").play(line)
    assert told.talk.job.word("equipment.stages") == "single"


def test_stages_with_an_or_between_stay_open():
    assert not going_in("3 ton heat pump, not sure if single or two stage").is_known(
        "equipment.stages"
    )


@pytest.mark.parametrize(
    ("line", "tons"),
    [
        ("five ton no four, variable, heat pump", 4.0),
        ("3 ton, no, 2.5 ton heat pump 2 stage", 2.5),
        ("3 ton no make that 2.5 ton heat pump, 2 stage", 2.5),
        ("3 ton no wait, upstairs is 3, this one's two and a half, single heat pump", 2.5),
        ("30,000 btu heat pump variable", 2.5),
        ("3.0 nominal tons heat pump single stage", 3.0),
        ("3 ton heat pump, no strips", 3.0),
    ],
)
def test_the_tons_that_stand_are_taken(line, tons):
    job = going_in(line)
    assert job.number("equipment.cooling_tons") == tons
    assert not job.is_known("equipment.heating_input_btuh")


@pytest.mark.parametrize(
    ("line", "tons"),
    [("36k", 3.0), ("three, single stage", 3.0), ("two and a half not three", 2.5)],
)
def test_tons_alone_answer_the_question_of_tons(line, tons):
    told = opened("new_tons", new_equipment="heat pump").play(line)
    assert told.talk.job.number("equipment.cooling_tons") == tons


def test_two_sizes_are_offered_by_their_tons():
    told = opened("new_equipment").play("furnace w coil, 2 and half or 3 ton not sure yet")
    assert "1) 2.5 tons  2) 3 tons" in told.text


def test_kilowatts_of_a_heat_pump_are_its_size_and_not_its_strips():
    told = opened("new_equipment").play("10 kW heat pump, inverter")
    assert "about 2.8 tons" in told.text
    told.play("3")
    assert told.talk.job.number("equipment.cooling_tons") == 3.0
    assert told.talk.job.word("equipment.kind") == "heat_pump"
    assert not told.talk.job.is_known("equipment.strip_kw")


@pytest.mark.parametrize(
    ("line", "cooling", "heating"),
    [
        ("3 ton heat pump single stage, 1200 cfm cooling and 1150 heating", 1200, 1150),
        ("3 ton heat pump, cooling 1200 heating 1150 cfm", 1200, 1150),
        ("3 ton heat pump, single, 1200 cfm both modes", 1200, 1200),
        ("3 ton heat pump, 1200 cfm heating and cooling", 1200, 1200),
    ],
)
def test_airflows_belong_to_what_is_named_beside_them(line, cooling, heating):
    job = going_in(line)
    assert job.number("target.cooling_high_cfm") == cooling
    assert job.number("target.heat_pump_heating_cfm") == heating


def test_a_packaged_heat_pump_burns_nothing():
    assert going_in("package heat pump 3 ton single stage").word("equipment.kind") == "heat_pump"
    assert going_in("gas pack 3 ton").word("equipment.kind") == "packaged"


def test_tons_beside_an_airflow_are_no_furnace():
    told = opened("cool_cfm", new_equipment=FURNACE).play("twelve hundred, it's a 3 ton")
    assert told.talk.job.number("equipment.heating_input_btuh") == 80_000.0


def test_a_furnace_that_was_walked_around_does_not_go_in():
    told = opened("safety").play("checked around the furnace, all good")
    assert not told.talk.job.is_known("equipment.kind")
    assert told.key == "new_equipment"
