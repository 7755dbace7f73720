"""What is replaced, in a caller's words: what goes out, what comes in, what stays as it is."""

import pytest
from support.dialogue import Dialogue, opened

from intake.interview.turns import Manner, Voice


def heard(line: str) -> Dialogue:
    return opened("d_change", Voice.DISPATCHER).play(line)


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("furnace and AC both, no heat pump", "like_for_like"),
        ("not a heat pump, furnace and ac again", "like_for_like"),
        ("no heat pump thanks, just a furnace", "heating_only"),
        ("no AC now and not adding any, new furnace", "heating_only"),
        ("same as the first time", "like_for_like"),
        ("house is bigger than it looks, same unit again", "like_for_like"),
        ("they have no cooling and don't want any, just the furnace", "heating_only"),
        ("not bigger, same size as now", "like_for_like"),
    ],
)
def test_what_is_denied_is_not_what_comes(line, word):
    told = heard(line)
    assert told.talk.job.word("phone.change") == word, told.text


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("they had a heat pump and want another", "like_for_like"),
        ("heat pump to heat pump", "like_for_like"),
        ("heat pump in, heat pump out, same size", "like_for_like"),
        ("heat pump dying, put in the same", "like_for_like"),
        ("pulling the old gas furnace, heat pump instead", "furnace_to_heat_pump"),
        ("oil furnace out, heat pump in", "furnace_to_heat_pump"),
        ("electric furnace over to heat pump", "furnace_to_heat_pump"),
        ("furnace for a heat pump", "furnace_to_heat_pump"),
        ("replacing the furnace with a heat pump", "furnace_to_heat_pump"),
        ("heat pump instead of the furnace", "furnace_to_heat_pump"),
    ],
)
def test_heat_pump_and_furnace_are_told_apart_by_what_goes_out(line, word):
    told = heard(line)
    assert told.talk.job.word("phone.change") == word, told.text


@pytest.mark.parametrize(
    "line",
    [
        "going the other way, heat pump out and gas furnace in",
        "dumping the heat pump for a gas furnace",
        "from a heat pump to a furnace",
        "replacing the heat pump with a furnace",
        "same AC but switching furnace to electric",
    ],
)
def test_a_change_that_is_none_of_the_six_is_asked_about(line):
    told = heard(line)
    assert told.talk.job.word("phone.change") is None, told.text
    assert told.lines(Manner.ASK_BACK)
    assert told.key == "d_change"


@pytest.mark.parametrize(
    "line",
    [
        "heat pump to heat pump, going from 3 to 3 and a half ton",
        "3 ton to a 4 ton",
        "two and a half now, she wants three",
        "2 ton unit, too small, want 2 and a half ton, bigger",
        "he wants the next size up",
        "going up from two and a half to three tons",
    ],
)
def test_more_tons_are_bigger_equipment(line):
    told = heard(line)
    assert told.talk.job.word("phone.change") == "bigger", told.text


@pytest.mark.parametrize("line", ["he wants to go smaller, 4 ton down to 3", "downsizing to less"])
def test_smaller_is_asked_whether_it_is_the_same_kind_otherwise(line):
    told = heard(line)
    assert "Smaller asks for less air" in told.text
    assert told.talk.job.number("old.cooling_tons") is None
    told.play("yes")
    assert told.talk.job.word("phone.change") == "like_for_like"


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("AC first now, furnace later", "cooling_only"),
        ("new AC, furnace stays", "cooling_only"),
        ("keep the furnace, replace the AC", "cooling_only"),
        ("coil and condenser, furnace is two years old", "cooling_only"),
        ("furnace is fine, it is the air conditioner that died", "cooling_only"),
        ("swap out the condenser only", "cooling_only"),
        ("the first time they get AC", "first_cooling"),
        ("he's got window units now, wants central", "first_cooling"),
        ("add cooling to the furnace we got", "first_cooling"),
    ],
)
def test_what_stays_or_comes_later_is_not_replaced(line, word):
    told = heard(line)
    assert told.talk.job.word("phone.change") == word, told.text


@pytest.mark.parametrize(
    "line",
    [
        "condenser quit on em, wanna do the whole system same tonnage",
        "no change in type, same tonnage, caller's sure",
        "everything, both halves, identical",
        "exact same setup, gas furnace with AC",
    ],
)
def test_the_whole_system_again_is_like_for_like(line):
    assert heard(line).talk.job.word("phone.change") == "like_for_like"


def test_present_tons_and_more_for_the_new_one_flag_bigger_equipment():
    told = opened("d_tons", Voice.DISPATCHER, d_change="same")
    told.play("it's four ton but the new one's gonna be five")
    assert told.talk.job.number("old.cooling_tons") == 4.0
    assert told.talk.job.word("phone.change") == "bigger"
    assert "bigger" in told.text
