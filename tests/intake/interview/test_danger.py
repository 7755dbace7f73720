"""The safety question and its short answers; danger in the middle of the talk."""

import pytest
from support.dialogue import Dialogue

from intake.interview.turns import Manner, Voice
from intake.reading.red_flags import RedFlagKind

VOICES = list(Voice)


@pytest.mark.parametrize("voice", VOICES)
@pytest.mark.parametrize(
    ("typed", "kind"),
    [
        ("yes", RedFlagKind.UNNAMED),
        ("yeah", RedFlagKind.UNNAMED),
        ("yes all of it", RedFlagKind.UNNAMED),
        ("yes gas", RedFlagKind.GAS),
        ("yep, gas", RedFlagKind.GAS),
        ("yeah, rotten eggs", RedFlagKind.GAS),
        ("yes a little gas", RedFlagKind.GAS),
        ("yeah smells", RedFlagKind.ODD_SMELL),
        ("yes there's a smell", RedFlagKind.ODD_SMELL),
        ("yes the alarm", RedFlagKind.CARBON_MONOXIDE),
        ("just the alarm", RedFlagKind.CARBON_MONOXIDE),
        ("yes burning", RedFlagKind.BURNING),
        ("some smoke", RedFlagKind.BURNING),
        ("yup water", RedFlagKind.WATER_ELECTRIC),
        ("only the water", RedFlagKind.WATER_ELECTRIC),
        ("yes gas and water", RedFlagKind.GAS),
        ("the gas detector is screaming", RedFlagKind.GAS),
    ],
)
def test_a_yes_to_the_safety_question_stops_and_says_what_to_do(
    typed: str, kind: RedFlagKind, voice: Voice
) -> None:
    told = Dialogue(voice).play(typed)
    assert told.talk.stopped
    assert told.state.stopped == kind.value
    assert told.lines(Manner.ALARM)


@pytest.mark.parametrize("voice", VOICES)
@pytest.mark.parametrize(
    "typed",
    [
        "no", "nope", "none", "none of that", "nothing like that", "none of those", "all good",
        "all clear", "we're good", "nope all good", "no, all good here", "everything's fine",
        "no smell no alarm no water", "no gas, no smoke, no alarm, no water", "nothing",
        "nothing at all",
        "not a thing", "no sir", "didn't notice any", "haven't noticed anything", "smells ok",
        "smells fine", "dry and quiet", "good to go", "no to all of it", "nah", "no problems here",
        "no gas", "nothing unusual", "don't smell anything",
    ],
)  # fmt: skip
def test_a_no_to_the_safety_question_goes_on(typed: str, voice: Voice) -> None:
    opening = Dialogue(voice).key
    told = Dialogue(voice).play(typed)
    assert not told.talk.stopped
    assert not told.state.doubt, typed
    assert told.key not in ("", opening), typed


@pytest.mark.parametrize("voice", VOICES)
@pytest.mark.parametrize(
    ("typed", "kind"),
    [
        ("gas", RedFlagKind.GAS),
        ("water", RedFlagKind.WATER_ELECTRIC),
        ("no alarm, just gas", RedFlagKind.GAS),
        ("nothing except water", RedFlagKind.WATER_ELECTRIC),
        ("not good", RedFlagKind.UNNAMED),
        ("no good", RedFlagKind.UNNAMED),
        ("yes all good", RedFlagKind.UNNAMED),
        ("yes no", RedFlagKind.UNNAMED),
        ("smells", RedFlagKind.ODD_SMELL),
    ],
)
def test_a_doubtful_word_is_asked_about_and_never_passed_over(
    typed: str, kind: RedFlagKind, voice: Voice
) -> None:
    told = Dialogue(voice).play(typed)
    assert not told.talk.stopped
    assert told.state.doubt == kind.value
    assert told.play("yes").talk.stopped


@pytest.mark.parametrize("voice", VOICES)
@pytest.mark.parametrize("typed", ["haven't checked", "dunno", "20x8", "what do you mean"])
def test_what_is_no_answer_to_the_safety_question_leaves_it_open(typed: str, voice: Voice) -> None:
    opening = Dialogue(voice).key
    told = Dialogue(voice).play(typed)
    assert told.key == opening


def test_naming_the_danger_after_a_bare_yes_says_its_own_response() -> None:
    told = Dialogue(Voice.DISPATCHER).play("yes", "it smells like gas")
    assert told.state.stopped == RedFlagKind.GAS.value
    assert "leave" in told.text


def test_the_short_words_mean_nothing_when_another_question_is_open() -> None:
    told = Dialogue().play("no")
    key = told.key
    told.play("gas")
    assert not told.state.doubt
    assert not told.talk.stopped
    assert key
