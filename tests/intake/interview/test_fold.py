"""A conversation is the fold of its events: replay, resume, and a record that fails."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from support.dialogue import Dialogue, no_judge

from engine.job.belief import How, Known
from intake.interview.conversation import Conversation
from intake.interview.events import Answered, Started, Unsaid, event_from_json, event_to_json
from intake.interview.fold import fold
from intake.interview.turns import Voice

LINES = st.sampled_from(
    [
        "yes", "no", "idk", "skip", "back", "undo", "show", "why", "finish", "go on", "quit",
        "3 ton heat pump", "1200 cfm", "20x8", "20x8 bare metal", "18x10 lined", "1 inch", "two",
        "none", "same", "16x25x1", "20x20 and two 14x8", "return .3 supply .4", "65", "1", "first",
        "my bad, 17 not 11", "sorry, 22x8 not 20x8", "the filter is 20x25x4", "15 by something",
        "smells like gas", "it's safe now", "smelled gas last week", "purple", "", "[/]", "tape",
        "the drop is 20x10", "just a tape", "42 ft", "35-65", "80k 80%", "clean", "cooling",
    ]
)  # fmt: skip


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.sampled_from(Voice), st.lists(LINES, max_size=40))
def test_replaying_the_events_gives_the_live_state(voice, lines):
    told = Dialogue(voice).play(*lines)
    assert told.replayed() == told.state
    assert (
        Conversation(told.events, judge=no_judge).pending == (None if told.talk.left else told.open)
        or told.talk.left
    )


@settings(max_examples=30, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.lists(LINES, max_size=25))
def test_nothing_typed_in_answer_is_lost(lines):
    told = Dialogue(Voice.TECHNICIAN).play(*lines)
    for event in told.events:
        if isinstance(event, Answered | Unsaid):
            assert event.question


def test_a_resumed_job_goes_on_at_the_open_question():
    first = Dialogue().play("no", "3 ton single stage heat pump, 1200 cfm", "same", "none")
    again = Dialogue(events=first.events)
    assert again.key == first.key == "old_runs"
    assert "Back to this job" in again.text
    assert again.talk.job == first.talk.job


def test_a_pending_ask_back_survives_a_resume():
    first = Dialogue().play("no", "3 ton single stage heat pump", "no idea", "same", "5")
    first = Dialogue().answer(safety="no", new_equipment="furnace 3 ton single stage 1200 cfm")
    first.play("45 or 60k")
    assert first.key == "furnace_heat"
    again = Dialogue(events=first.events).play("the second")
    assert again.talk.job.number("equipment.heating_input_btuh") == 60_000.0


def test_a_stopped_script_is_still_stopped_after_a_resume():
    first = Dialogue().play("no", "smells like gas in here")
    again = Dialogue(events=first.events)
    assert again.talk.stopped
    assert again.open is None
    assert again.play("all clear").key == "new_equipment"


def test_sittings_are_marked():
    first = Dialogue().play("no")
    again = Dialogue(events=first.events)
    assert sum(isinstance(event, Started) for event in again.events) == 2
    assert again.state.sittings == 2


PHONE = {
    "d_safety": "no",
    "d_change": "same",
    "d_trouble": "never",
    "d_area": "1800",
    "d_year": "1971",
    "d_tons": "3 tons",
    "d_filter": "16x25x1",
    "d_openings": "20x20",
    "d_registers": "11",
    "d_boot": "4x10",
    "d_ways": "one way",
    "d_trunk": "20 by 8",
    "d_location": "basement",
    "d_rooms": "0",
    "d_doors": "no",
    "d_noise": "whisper",
    "d_photos": "yes",
}


def after_the_call() -> Dialogue:
    call = Dialogue(Voice.DISPATCHER).answer(**PHONE)
    assert call.talk.ended
    return Dialogue(Voice.TECHNICIAN, call.events)


def test_the_job_is_resumed_on_site_in_the_other_voice():
    told = after_the_call()
    assert not told.talk.ended
    assert told.key == "safety"
    job = told.talk.job
    assert job.stated("supply.trunks.0.width_in") == Known(20.0, How.PHONE)
    assert told.talk.booking() is None


def at_the_trunk_after_the_call() -> Dialogue:
    return after_the_call().answer(
        safety="no", new_equipment="3 ton single stage heat pump, 1200 cfm", heat_pump_cfm="same",
        strip_cfm="none", blower_table="skip", blower_kind="psc", old_runs="no", tools="tape",
        trunk_count="one",
    )  # fmt: skip


def test_what_was_said_by_phone_is_confirmed_on_site():
    told = at_the_trunk_after_the_call()
    assert told.key == "trunk_size"
    assert "By phone: 20 x 8 in." in told.text
    told.play("yes")
    assert told.talk.job.stated("supply.trunks.0.width_in") == Known(20.0, How.MEASURED)


def test_what_is_measured_on_site_replaces_what_was_said_by_phone():
    told = at_the_trunk_after_the_call().play("14x8 bare metal")
    assert told.talk.job.stated("supply.trunks.0.width_in") == Known(14.0, How.MEASURED)


def test_dont_know_on_site_leaves_the_phones_answer():
    told = at_the_trunk_after_the_call().play("can't reach it")
    assert told.talk.job.stated("supply.trunks.0.width_in") == Known(20.0, How.PHONE)


def test_what_the_phone_settled_is_not_asked_again():
    told = at_the_trunk_after_the_call()
    asked = []
    while not told.talk.ended:
        asked.append(told.key)
        told.play("skip")
    assert "year_built" not in asked
    assert "filter" in asked


def test_an_event_that_cant_be_kept_is_not_taken_in():
    def full(event: object) -> None:
        raise OSError("disk full")

    talk = Conversation(judge=no_judge, record=full)
    with pytest.raises(OSError, match="disk full"):
        talk.choose(Voice.TECHNICIAN)
    assert talk.voice is None
    assert talk.events == ()


def test_an_answer_is_kept_before_the_next_question_appears():
    kept: list[str] = []
    talk = Conversation(judge=no_judge, record=lambda event: kept.append(event_to_json(event)))
    talk.choose(Voice.TECHNICIAN)
    talk.hear("no")
    assert [event_from_json(line).type for line in kept] == ["started", "answered"]


def test_an_empty_job_folds_to_nothing():
    assert fold(()).voice is None
    assert fold(()).standing == ()
