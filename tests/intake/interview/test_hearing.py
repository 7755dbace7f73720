"""What one line does: corrections, undo, back, ask-backs, questions back, bad input, red flags."""

import pytest
from support.dialogue import Dialogue

from engine.job.belief import How, Known
from intake.interview.turns import Manner, Speaker, Voice
from intake.reading.red_flags import RedFlagKind


def at_the_trunk() -> Dialogue:
    told = Dialogue().answer(
        safety="no",
        new_equipment="3 ton single stage heat pump, 1200 cfm",
        heat_pump_cfm="same",
        strip_cfm="none",
        blower_table="skip",
        blower_kind="psc",
        old_runs="yes",
        tools="tape and gauge",
        weather="yes",
        trunk_count="one",
    )
    assert told.key == "trunk_size", told.text
    return told


# --- corrections ---------------------------------------------------------------------------------


def test_a_correction_rewrites_the_last_answer():
    told = at_the_trunk().play("18x8 bare metal", "my bad, 20x8 not 18x8")
    assert told.talk.job.number("supply.trunks.0.width_in") == 20.0
    assert told.talk.job.word("supply.trunks.0.material") == "galvanized"
    assert "Corrected" in told.text
    assert told.key == "drop_size"


def test_one_number_of_an_answer_can_be_corrected():
    told = at_the_trunk().play("11x8 bare metal", "my bad, 17 not 11")
    assert told.talk.job.number("supply.trunks.0.width_in") == 17.0
    assert told.talk.job.number("supply.trunks.0.height_in") == 8.0


def test_a_correction_that_names_its_fact_rewrites_that():
    told = at_the_trunk().play("20x8 bare metal", "18x10 bare metal", "16x25x1", "slot")
    told.play("the return drop is 20x10")
    assert told.talk.job.number("return.drops.0.width_in") == 20.0
    assert told.key == "openings"


def test_a_correction_finds_the_answer_that_holds_the_wrong_value():
    told = at_the_trunk().play("20x8 bare metal", "18x10 bare metal", "16x25x1")
    told.play("sorry, 18x12 not 18x10")
    assert told.talk.job.number("return.drops.0.height_in") == 12.0
    assert told.talk.job.number("filters.0.height_in") == 25.0


def test_a_correction_from_a_rectangle_to_a_round_forgets_the_rectangle():
    told = at_the_trunk().play("20x8 bare metal", "sorry, it's actually 14 inch round")
    job = told.talk.job
    assert job.word("supply.trunks.0.shape") == "round"
    assert job.stated("supply.trunks.0.width_in") is None


def test_a_correction_after_the_verdict_gives_the_verdict_again():
    told = at_the_trunk().play("20x8 bare metal", "finish", "sorry, 22x8 not 20x8")
    assert told.talk.job.number("supply.trunks.0.width_in") == 22.0


# --- undo, back, show ----------------------------------------------------------------------------


def test_undo_takes_back_the_last_standing_answer_and_asks_it_again():
    told = at_the_trunk().play("20x8 bare metal", "18x10", "undo")
    assert told.key == "drop_size"
    assert told.talk.job.length("return.drops") is None
    told.play("undo")
    assert told.key == "trunk_size"
    assert told.talk.job.number("supply.trunks.0.count") == 1.0


def test_undo_brings_back_what_an_answer_had_replaced():
    told = at_the_trunk().play("20x8 bare metal", "sorry, 24x8 not 20x8", "undo")
    assert told.talk.job.number("supply.trunks.0.width_in") == 20.0


def test_undo_with_nothing_said_says_so():
    assert "nothing to take back" in Dialogue().play("undo").text.lower()


def test_back_asks_the_question_before_and_keeps_its_answer_until_another_comes():
    told = at_the_trunk().play("20x8 bare metal", "back")
    assert told.key == "trunk_size"
    assert told.talk.job.number("supply.trunks.0.width_in") == 20.0
    told.play("back")
    assert told.key == "trunk_count"
    told.play("two")
    assert told.key == "drop_size"
    assert told.talk.job.number("supply.trunks.0.count") == 2.0


def test_back_at_the_first_question_stays():
    assert Dialogue().play("back").key == "safety"


def test_show_lists_every_answer_in_normal_form():
    told = at_the_trunk().play("20 bite 8 bare metal", "show")
    assert "Supply trunk: 20 x 8 in. bare metal" in told.text
    assert "Blower table: not known" in told.text
    assert told.key == "drop_size"


# --- questions back ------------------------------------------------------------------------------


@pytest.mark.parametrize("asked", ["why", "where", "how", "what's typical", "help", "repeat"])
def test_a_question_back_is_answered_and_the_open_one_repeated(asked):
    told = at_the_trunk()
    question = told.lines(Manner.QUESTION)[-1]
    told.play(asked)
    assert told.key == "trunk_size"
    assert told.lines(Manner.QUESTION) == [question]
    assert asked == "repeat" or told.lines(Manner.HELP)


def test_what_is_typical_is_told_only_when_asked():
    told = at_the_trunk()
    assert "14x8 to 24x10" not in told.text
    assert "14x8 to 24x10" in told.play("what's typical").text


# --- ask-backs -----------------------------------------------------------------------------------


def at_the_gauge() -> Dialogue:
    told = at_the_trunk().play("20x8 bare metal", "18x10 bare metal", "16x25x1", "slot")
    told.play("20x20", "slots")
    assert told.key == "static_total"
    return told


@pytest.mark.parametrize("pick", ["1", "the first", "first one", "#1", "0.65"])
def test_a_candidate_is_picked_by_place_or_by_its_value(pick):
    told = at_the_gauge().play("65")
    assert told.key == "static_total"
    assert told.lines(Manner.ASK_BACK)
    told.play(pick)
    assert told.talk.job.number("readings.0.total_external_inwc") == pytest.approx(0.65)
    assert told.key == "static_split"


def test_one_pressure_where_two_were_asked_for_asks_which():
    told = at_the_gauge().play("return .30, supply .40", ".12")
    assert told.key == "static_split"
    told.play("2")
    assert told.talk.job.number("readings.0.after_coil_inwc") == pytest.approx(0.12)


def test_half_a_size_keeps_what_was_said():
    told = at_the_trunk().play("15 by something")
    assert told.key == "trunk_size"
    told.play("8")
    assert told.talk.job.number("supply.trunks.0.width_in") == 15.0
    assert told.talk.job.number("supply.trunks.0.height_in") == 8.0


def test_an_answer_of_its_own_after_an_ask_back_counts():
    told = at_the_trunk().play("15 by something", "22x10 bare metal")
    assert told.talk.job.number("supply.trunks.0.width_in") == 22.0
    assert told.key == "drop_size"


def test_the_second_misreading_offers_numbers_and_the_third_goes_on():
    told = at_the_trunk().play("purple")
    assert told.key == "trunk_size"
    assert "Pick a number" not in told.text
    told.play("a lovely day")
    assert "Pick a number" in told.text
    told.play("bananas")
    assert told.key != "trunk_size"
    assert told.state.unsaid >= {"trunk_size"}


def test_a_number_picked_from_the_choices_is_the_answer():
    told = at_the_trunk().play("20x8", "purple", "polka dots", "3")
    assert told.talk.job.word("supply.trunks.0.material") == "lined_metal"


def test_a_number_picked_for_a_free_answer_tells_where_to_look():
    told = at_the_trunk().play("purple", "polka dots", "2")
    assert told.key == "trunk_size"
    assert "plenum" in told.lines(Manner.HELP)[0]


def test_an_impossible_value_is_refused_with_its_bounds():
    told = Dialogue(Voice.DISPATCHER).answer(
        d_safety="no", d_change="same", d_trouble="never", d_area="1800", d_year="1980",
        d_tons="3 tons", d_filter="16x25x1", d_openings="20x20",
    )  # fmt: skip
    told.play("60", "yes")
    assert told.key == "d_registers"
    assert told.talk.job.stated("house.supply_registers_count") is None


# --- volunteered ---------------------------------------------------------------------------------


def test_an_answer_to_another_question_is_taken_and_the_open_one_stays():
    told = at_the_trunk().play("the filter is 20x25x4")
    assert told.key == "trunk_size"
    assert "Filter: 20 x 25 x 4 in." in told.text
    told.play("20x8 bare metal", "none")
    assert told.key == "filter_place"


def test_elevation_said_in_passing_is_not_asked_again():
    told = at_the_trunk().play("elevation is 5200 ft")
    assert told.talk.job.number("site.elevation_ft") == 5200.0
    while not told.talk.ended:
        assert told.key != "elevation"
        told.play("skip")


# --- bad input -----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "typed",
    ["", "   ", "🎉", "[/]", "[bold]12", "z" * 500, "z" * 5000, "\x1b]0;x\x07", "💥💥",
     "\u202e20x8", "9**9**9", "nan", "1e999", "-5", "'; drop table jobs; --", "\n\n", "½",
     "20x8\x00"],
)  # fmt: skip
def test_no_line_raises_and_the_question_stays_or_is_answered(typed):
    told = at_the_trunk().play(typed)
    assert told.said[0].speaker is Speaker.PERSON
    assert told.lines()
    assert told.key in ("trunk_size", "trunk_skin", "trunk_where", "drop_size")
    assert told.replayed() == told.state


def test_a_line_that_is_far_too_long_says_so():
    assert "at most" in at_the_trunk().play("z" * 5000).text


# --- red flags -----------------------------------------------------------------------------------


def test_danger_stops_the_script_and_only_safe_again_goes_on():
    told = at_the_trunk().play("smells like gas in here")
    assert told.talk.stopped
    assert told.open is None
    assert told.lines(Manner.ALARM)
    told.play("20x8")
    assert told.talk.stopped
    assert told.talk.job.stated("supply.trunks.0.shape") is None
    told.play("it's safe now")
    assert not told.talk.stopped
    assert told.key == "trunk_size"
    assert told.play("20x8 bare metal").key == "drop_size"


def test_a_denied_danger_goes_on():
    told = at_the_trunk().play("20x8 bare metal, no gas smell")
    assert not told.talk.stopped
    assert told.state.doubt == ""


def test_a_past_danger_asks_once_and_keeps_the_answer_beside_it():
    told = at_the_trunk().play("20x8 bare metal, smelled gas last week")
    assert told.key == "red_flag"
    told.play("no, not now")
    assert not told.talk.stopped
    assert told.talk.job.number("supply.trunks.0.width_in") == 20.0


@pytest.mark.parametrize("typed", ["yes", "i don't know", "maybe", "yes it is"])
def test_a_danger_that_cant_be_denied_stops(typed):
    told = at_the_trunk().play("i smelled gas earlier", typed)
    assert told.talk.stopped


def test_two_answers_that_are_no_answer_to_danger_stop_too():
    told = at_the_trunk().play("i smelled gas earlier", "20x8")
    assert told.key == "red_flag"
    assert told.play("20x8").talk.stopped


def test_a_bare_yes_to_the_safety_look_stops():
    told = Dialogue().play("yes")
    assert told.talk.stopped
    assert "everybody out" in told.text
    told.play("it's the co alarm going off")
    assert told.state.stopped == RedFlagKind.CARBON_MONOXIDE.value


def test_danger_is_heard_before_the_voice_is_chosen():
    assert Dialogue(voice=None).play("there is smoke coming out of the furnace").talk.stopped


def test_quit_works_while_stopped():
    told = at_the_trunk().play("smells like gas in here", "quit")
    assert told.talk.left


# --- quitting ------------------------------------------------------------------------------------


def test_quit_keeps_everything_and_a_further_line_goes_on():
    told = at_the_trunk().play("quit")
    assert told.talk.ended
    assert told.talk.left
    told.play("20x8 bare metal")
    assert not told.talk.left
    assert told.talk.job.stated("supply.trunks.0.width_in") == Known(20.0, How.MEASURED)


def test_a_hesitant_no_to_danger_is_asked_once_more_and_then_stops():
    told = at_the_trunk().play("i smelled gas earlier", "i don't think so")
    assert told.key == "red_flag"
    assert told.play("i don't think so").talk.stopped
    assert not at_the_trunk().play("i smelled gas earlier", "no").talk.stopped


def test_a_count_said_early_is_not_asked_again_and_can_be_corrected_by_its_name():
    told = Dialogue().play("no", "3 ton heat pump single stage", "there are 2 trunks")
    assert told.key == "cool_cfm"
    assert told.talk.job.number("supply.trunks.0.count") == 2.0
    while told.key != "trunk_size":
        assert told.key != "trunk_count"
        told.play("skip")
    told.play("wait, actually three trunks")
    assert told.talk.job.number("supply.trunks.0.count") == 3.0
    assert told.key == "trunk_size"
