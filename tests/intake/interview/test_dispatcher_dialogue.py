"""Whole phone calls with a dispatcher, one to each outcome."""

import pytest
from support.dialogue import Dialogue

from engine.job.belief import How, Known
from intake.interview.booking import Outcome
from intake.interview.dispatcher import DISPATCHER
from intake.interview.turns import Manner, Voice

QUIET_HOUSE = {
    "d_safety": "no, nothing like that",
    "d_change": "the same kind again",
    "d_trouble": "never",
    "d_area": "1800 square feet",
    "d_year": "1992",
    "d_tons": "it says ABC036X, so 3 tons",
    "d_filter": "20x25x4",
    "d_openings": "two of them, 20x20 each",
    "d_registers": "11",
    "d_boot": "4x10",
    "d_ways": "both ways",
    "d_trunk": "20 by 8",
    "d_location": "basement",
    "d_rooms": "none",
    "d_doors": "no",
    "d_noise": "whisper",
    "d_photos": "sure",
}


def call(**changed: str) -> Dialogue:
    told = Dialogue(Voice.DISPATCHER).answer(**{**QUIET_HOUSE, **changed})
    assert told.talk.booking() is not None
    return told


def test_a_quiet_house_is_an_ordinary_visit():
    told = call()
    assert told.talk.ended
    booking = told.talk.booking()
    assert booking.outcome is Outcome.ORDINARY, booking.flags
    assert booking.flags == ()
    assert any(line.startswith("Book: Ordinary replacement visit") for line in told.lines())


def test_a_small_filter_books_the_survey_and_says_what_decided():
    # 5 tons x 400 = 2,000 CFM over (16 - 1/4) x (25 - 1/4) in. = 2.707 ft2 is 739 fpm (arithmetic).
    told = call(d_tons="5 tons", d_filter="16x25x1")
    booking = told.talk.booking()
    assert booking.outcome is Outcome.SURVEY
    assert "739 fpm" in booking.decided
    assert booking.minutes > 45
    assert "static pressure" in booking.measure_first[0]


def test_a_hard_flag_decides_and_only_the_few_that_fill_the_card_are_asked():
    told = Dialogue(Voice.DISPATCHER).play("no", "going to a heat pump")
    decided = [line for line in told.lines(Manner.BOOKING) if "So it is a visit" in line]
    assert len(decided) == 1
    assert "furnace to heat pump" in decided[0]
    assert not told.talk.ended
    told.answer(**QUIET_HOUSE)
    asked = {event.question for event in told.state.standing}
    assert told.talk.booking().outcome is Outcome.SURVEY
    assert not {"d_area", "d_rooms", "d_doors", "d_noise", "d_openings", "d_boot"} & asked
    assert {"d_trouble", "d_photos", "d_filter", "d_location"} <= asked


def test_what_was_decided_is_said_once():
    told = Dialogue(Voice.DISPATCHER).play("no", "going to a heat pump", "never")
    assert "So it is a visit" not in told.text


def test_finish_before_the_sizes_never_books_an_ordinary_visit():
    told = Dialogue(Voice.DISPATCHER).play("no", "same", "never", "finish")
    booking = told.talk.booking()
    assert booking.outcome is Outcome.PHOTOS
    assert "7 of 7 sizes are unknown" in booking.decided
    assert "speaks against" not in told.text
    assert "the filter's size (not asked)" in booking.unknown


@pytest.mark.parametrize(
    "line",
    [
        "yeah whole house, like 1900 square feet two floors",
        "i like it",
        "it heats 1900 sq ft",
        "whole house",
        "replacing 15 year old ac",
    ],
)
def test_what_is_replaced_is_never_read_out_of_other_words(line):
    told = Dialogue(Voice.DISPATCHER).play("no", line)
    assert told.talk.job.word("phone.change") is None
    assert told.key == "d_change"


def test_square_feet_said_early_are_taken_as_such_and_the_question_repeated():
    told = Dialogue(Voice.DISPATCHER)
    told.play("no", "yeah whole house, like 1900 square feet two floors")
    assert told.talk.job.number("house.floor_area_ft2") == 1900.0
    assert "Area served: 1,900 sq ft" in told.text


def test_both_going_to_a_heat_pump_is_a_change_of_type():
    told = Dialogue(Voice.DISPATCHER).play("no", "ac and furnace, going to a heat pump")
    assert told.talk.job.word("phone.change") == "furnace_to_heat_pump"


@pytest.mark.parametrize(
    "line",
    [
        "she has one big metal trunk, dont know the size",
        "it has 2 filters",
        "one floor",
        "there are 12 vents",
        "its fine i guess",
        "no 20x8 that i can see",
    ],
)
def test_past_trouble_is_never_read_out_of_other_words(line):
    told = Dialogue(Voice.DISPATCHER).play("no", "same", line)
    assert told.talk.job.word("phone.trouble") is None


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("never", "never"), ("not that i know of", "never"), ("nope", "never"), ("no", "never"),
        ("yes", "once"), ("1", "once"), ("froze once", "once"), ("just one time", "once"),
        ("had the board replaced in 2015", "once"), ("it froze up last july", "once"),
        ("twice last summer", "repeated"), ("yeah keeps tripping", "repeated"),
        ("it shuts off every hot day", "repeated"), ("3", "repeated"),
    ],
)  # fmt: skip
def test_past_trouble_in_a_callers_words(line, word):
    told = Dialogue(Voice.DISPATCHER).play("no", "same", line)
    assert told.talk.job.word("phone.trouble") == word


def test_never_but_is_asked_how_often():
    told = Dialogue(Voice.DISPATCHER).play("no", "same", "no but it ices up")
    assert told.key == "d_trouble"
    assert told.play("more than once").talk.job.word("phone.trouble") == "repeated"


def test_many_unknown_sizes_ask_for_photos_first():
    told = call(
        d_tons="no idea",
        d_filter="don't know",
        d_openings="dunno",
        d_registers="11",
        d_boot="can't tell",
        d_ways="no idea",
        d_trunk="can't reach it",
    )
    booking = told.talk.booking()
    assert booking.outcome is Outcome.PHOTOS
    assert len(booking.photos) == 5
    assert all(photo.startswith("Please text a photo") for photo in booking.photos)
    assert "the filter's size" in booking.unknown


def test_unknown_sizes_without_photos_book_the_survey():
    told = call(
        d_tons="no idea", d_filter="idk", d_openings="idk", d_boot="idk", d_trunk="idk",
        d_photos="no thanks",
    )  # fmt: skip
    booking = told.talk.booking()
    assert booking.outcome is Outcome.SURVEY
    assert booking.photos == ()


def test_a_broken_unit_with_a_history_books_a_service_call():
    told = call(d_trouble="twice, it froze up", d_works="no", d_people="no")
    booking = told.talk.booking()
    assert booking.outcome is Outcome.SAFETY
    assert "isn't running" in booking.decided


def test_gas_in_the_middle_of_a_call_stops_it_and_books_safety():
    told = Dialogue(Voice.DISPATCHER).play("no", "same", "never")
    told.play("oh wait now it smells like gas in here")
    assert told.talk.stopped
    assert told.open is None
    assert any("leave" in line.lower() for line in told.lines(Manner.ALARM))
    assert told.talk.booking().outcome is Outcome.SAFETY
    assert any("Safety or service call" in line for line in told.lines(Manner.BOOKING))


def test_yes_to_the_safety_question_stops_the_call():
    told = Dialogue(Voice.DISPATCHER).play("yes")
    assert told.talk.stopped
    assert told.talk.booking().outcome is Outcome.SAFETY
    assert "911" in told.text


def test_the_call_is_short():
    assert sum(question.minutes for question in DISPATCHER) <= 9.0
    told = Dialogue(Voice.DISPATCHER).play("no")
    while not told.talk.ended:
        told.play("no idea")
    spent = sum(
        question.minutes
        for question in DISPATCHER
        if question.key in {event.question for event in told.state.standing}
    )
    assert spent <= 7.5


def test_what_is_said_by_phone_is_known_by_phone():
    told = call()
    job = told.talk.job
    assert job.stated("return.grilles.0.width_in") == Known(20.0, How.PHONE)
    assert job.stated("house.year_built") == Known(1992.0, How.PHONE)


def test_what_was_read_off_a_sticker_is_known_from_the_plate():
    told = call(d_tons="the sticker says 3 tons")
    assert told.talk.job.stated("old.cooling_tons") == Known(3.0, How.PLATE)


def test_old_houses_carry_the_asbestos_warning_on_the_card():
    booking = call(d_year="1962", d_tons="5 tons", d_filter="16x25x1").talk.booking()
    assert any("asbestos" in thing for thing in booking.bring)


def test_the_card_is_whole_at_any_moment():
    told = Dialogue(Voice.DISPATCHER)
    assert "If stopped now" in told.talk.standing()
    told.play("no", "same")
    booking = told.talk.booking()
    assert booking.for_caller
    assert booking.for_board
    assert told.talk.verdict() is None


def test_finish_ends_the_call_with_the_card():
    told = Dialogue(Voice.DISPATCHER).play("no", "same", "finish")
    assert told.talk.ended
    assert told.lines(Manner.BOOKING)


def test_questions_are_words_that_can_be_read_out():
    jargon = ("static", "plenum", "CFM", "fpm", "takeoff", "trunk", "TESP", "grille", "register")
    for question in DISPATCHER:
        assert not [word for word in jargon if word.lower() in question.words.lower()], question.key
        assert question.words.endswith(("?", "please."))


@pytest.mark.parametrize(
    ("line", "tons"),
    [
        ("swap the 3 ton heat pump like for like", 3.0),
        ("they want the same again, 2.5 tons", 2.5),
        ("like for like, 3 ton to 3.5 ton", None),
        ("bigger, 4 tons this time", None),
    ],
)
def test_what_comes_again_as_it_was_tells_the_present_tons(line, tons):
    told = Dialogue(Voice.DISPATCHER).play("no", line)
    assert told.talk.job.number("old.cooling_tons") == tons
    assert told.key != "d_change"
