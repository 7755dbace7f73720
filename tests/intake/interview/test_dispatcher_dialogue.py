"""Whole phone calls with a dispatcher, one to each outcome."""

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


def test_a_hard_flag_ends_the_questions_that_cant_change_the_booking():
    told = call(d_change="going to a heat pump")
    asked = {event.question for event in told.state.standing}
    assert told.talk.booking().outcome is Outcome.SURVEY
    assert "d_filter" not in asked
    assert {"d_trouble", "d_photos"} <= asked


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
