"""The safety question of a call, and what settles a doubt about danger."""

import pytest
from support.dialogue import Dialogue, opened

from intake.interview.turns import Manner, Voice
from intake.reading.red_flags import RedFlagKind

SAFE = "symptoms.gas_smell"


def heard(*lines: str) -> Dialogue:
    return Dialogue(Voice.DISPATCHER).play(*lines)


@pytest.mark.parametrize(
    "line",
    [
        "no alarm, no smell. water? there's a wet spot on the ceiling under the attic unit",
        "no smells. the ceiling below it is dripping though",
        "no gas, there's a faint odor by the panel",
        "carpet by the furnace closet is soggy",
        "nothing, just a little water by the unit",
    ],
)
def test_what_is_reported_beside_a_no_is_asked_about(line):
    told = heard(line)
    assert told.talk.job.word(SAFE) is None, told.text
    assert told.state.doubt or told.state.stopped


@pytest.mark.parametrize(
    "line",
    [
        "caller says no to all four of those",
        "she doesn't smell anything and no water",
        "lady says none of the above",
        "he says nope",
        "my husband says no",
        "lady says no, house was built in 1983",
        "they don't smell anything",
    ],
)
def test_a_no_passed_on_from_the_caller_is_a_no(line):
    told = heard(line)
    assert told.talk.job.word(SAFE) == "no", told.text
    assert told.key == "d_change"


@pytest.mark.parametrize(
    "line", ["she says yes", "caller says there is a gas smell", "he says gas"]
)
def test_a_danger_passed_on_from_the_caller_stops_or_is_asked_about(line):
    told = heard(line)
    assert told.state.stopped or told.state.doubt


def test_a_no_with_another_answer_keeps_both():
    told = heard("no. and before I forget the filter is a 20x25x4")
    assert told.talk.job.word(SAFE) == "no"
    assert told.talk.job.number("filters.0.depth_in") == 4.0
    assert told.key == "d_change"


def test_gas_told_with_another_answer_stops_all_the_same():
    told = heard("no alarm but i smell gas, filter is 20x25x4")
    assert told.state.stopped == RedFlagKind.GAS.value


def test_just_dust_settles_a_smell_that_nobody_named():
    told = heard("she says it smells dusty when it first kicks on, that's it")
    assert told.state.doubt
    told.play("just dust")
    assert not told.state.stopped
    assert told.key == "d_safety"


@pytest.mark.parametrize("line", ["yes", "burning dust", "dust and something electrical", "gas"])
def test_what_is_more_than_dust_stops(line):
    told = heard("there is a smell of something")
    assert told.state.doubt
    told.play(line)
    assert told.state.stopped or told.state.doubt


@pytest.mark.parametrize(
    ("line", "stops"),
    [
        ("she's 81", True),
        ("yes and there's a newborn", True),
        ("her mom is 84", True),
        ("just the two of them, both forty", False),
        ("it's out, but nobody old or sick here", False),
        ("two adults in their thirties, no kids", False),
    ],
)
def test_who_is_at_home_settles_whether_an_outage_is_urgent(line, stops):
    told = opened("d_works", Voice.DISPATCHER, d_trouble="twice").play("no heat since yesterday")
    assert told.state.doubt == RedFlagKind.NO_HEAT_VULNERABLE.value
    told.play(line)
    assert bool(told.state.stopped) is stops, told.text
    if not stops:
        assert told.talk.job.word("old.works") == "no"
        assert told.talk.job.word("symptoms.vulnerable_people") == "no"


def test_a_no_that_names_somebody_frail_is_asked_about_once_and_then_stops():
    told = opened("d_works", Voice.DISPATCHER, d_trouble="twice").play("no heat since yesterday")
    told.play("no, just my 90 year old mother")
    assert told.state.doubt
    assert told.play("no, mother is 90").talk.stopped


def test_heat_that_is_on_the_fritz_is_no_heat():
    told = opened("d_works", Voice.DISPATCHER, d_trouble="twice").play("no heat since yesterday")
    assert told.play("no, the heat is on the fritz and she's 81").talk.stopped


def test_heat_that_is_back_is_not_urgent_for_anybody():
    told = opened("d_works", Voice.DISPATCHER, d_trouble="twice").play("no heat since yesterday")
    told.play("no, the heat is back on, but she is 81")
    assert not told.state.stopped


def test_a_bare_no_to_the_outage_leaves_open_whether_it_runs():
    told = opened("d_works", Voice.DISPATCHER, d_trouble="twice").play("no heat since yesterday")
    told.play("no")
    assert not told.state.stopped
    assert told.talk.job.word("old.works") is None


def test_a_system_that_is_out_cold_is_asked_about_and_a_person_stops():
    told = opened("d_works", Voice.DISPATCHER, d_trouble="twice").play("it's out cold")
    assert told.state.doubt
    assert not told.state.stopped
    told = opened("d_works", Voice.DISPATCHER, d_trouble="twice").play("my wife is out cold")
    assert told.state.stopped == RedFlagKind.CARBON_MONOXIDE.value


@pytest.mark.parametrize(
    "line", ["heat pump in, heat pump out", "furnace out and a new heat pump in", "ac out, ac in"]
)
def test_what_goes_out_and_in_tells_of_no_outage(line):
    told = opened("d_change", Voice.DISPATCHER).play(line)
    assert not told.state.doubt
    assert not told.state.stopped


@pytest.mark.parametrize(
    "line",
    [
        "furnace out, baby in the house",
        "heat pump out since last night",
        "furnace out and no heat in the house",
    ],
)
def test_an_outage_is_still_asked_about(line):
    told = opened("d_change", Voice.DISPATCHER).play(line)
    assert told.state.doubt or told.state.stopped


def test_a_correction_never_keeps_a_danger_without_an_alarm():
    told = Dialogue(Voice.DISPATCHER).play("no", "actually yes to the first one")
    assert told.talk.job.word(SAFE) != "yes"
    told = opened("d_change", Voice.DISPATCHER).play("they have none and don't want any")
    assert told.talk.job.word(SAFE) != "yes"


def people(line: str) -> Dialogue:
    return opened("d_people", Voice.DISPATCHER, d_trouble="twice", d_works="no").play(line)


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("no babies but grandpa's 79", "yes"),
        ("nobody under 65", "yes"),
        ("her mom is 84", "yes"),
        ("newborn", "yes"),
        ("baby's six weeks old", "yes"),
        ("two toddlers", "yes"),
        ("husband's on oxygen", "yes"),
        ("just her, shes 68", "yes"),
        ("all healthy thirties", "no"),
        ("no one over 60, youngest is 14", "no"),
        ("nobody's sick, we're both 40", "no"),
    ],
)
def test_people_who_cannot_wait_are_known_by_age_and_illness(line, word):
    told = people(line)
    assert told.talk.job.word("symptoms.vulnerable_people") == word, told.text


@pytest.mark.parametrize("line", ["two kids", "just me", "the dog", "kid is 9"])
def test_people_of_no_told_age_are_asked_about(line):
    told = people(line)
    assert told.talk.job.word("symptoms.vulnerable_people") is None, told.text
    assert told.key == "d_people"
    assert told.lines(Manner.ASK_BACK)


@pytest.mark.parametrize(
    "line",
    [
        "caller isn't sure",
        "she isn't there",
        "he's not at the house",
        "she can't smell",
        "they didn't say",
        "he isn't answering",
    ],
)
def test_a_caller_who_did_not_look_has_not_said_no(line):
    told = heard(line)
    assert told.talk.job.word(SAFE) is None, told.text
    assert told.key == "d_safety" or told.state.doubt
