""" "What if" in the middle of a talk: answered with nothing kept, the open question asked again."""

import pytest
from support.dialogue import Dialogue, opened

from intake.interview.events import Answered
from intake.interview.turns import Manner, Voice


def at_the_drop() -> Dialogue:
    told = Dialogue(judged=True).answer(
        safety="no",
        new_equipment="3 ton single stage heat pump, 1200 cfm",
        heat_pump_cfm="same",
        strip_cfm="none",
        blower_table="skip",
        blower_kind="variable speed",
        blower_limit="0.9",
        old_runs="yes",
        tools="tape",
        weather="yes",
    )
    assert told.key == "drop_size", told.text
    return told


@pytest.fixture(scope="module")
def drop() -> Dialogue:
    return at_the_drop()


def unchanged(told: Dialogue, line: str) -> Dialogue:
    """Type a line of which nothing may be kept."""
    state, kept, key = told.state, list(told.kept), told.key
    told.play(line)
    assert told.state is state
    assert told.kept == kept
    assert told.key == key
    return told


def test_another_size_is_told_in_two_lines_and_the_question_asked_again(drop):
    unchanged(drop, "what if it were 2.5 tons?")
    first, second = drop.lines(Manner.INSIGHT)
    assert first.startswith("With 2.5 tons: full cooling, 1,000 CFM, ")  # 2.5 x 400
    assert "heat pump heating, 1,000 CFM" in first
    assert "The blower will give about" in second
    assert "Still missing: " in second
    assert drop.lines(Manner.NOTE) == ["Only tried; nothing of it is kept."]
    assert drop.lines(Manner.QUESTION)
    assert drop.talk.job.number("equipment.cooling_tons") == 3.0


def test_the_reason_is_told_with_the_candidates_own_airflow():
    told = at_the_drop().answer(
        drop_size="24x20 bare metal",
        trunk_count="one",
        trunk_size="20x9 bare metal",
        blower_limit="0.9",
    )
    unchanged(told, "what if 1150 cfm")
    assert "supply trunk moves at 920 fpm" in told.text  # 1,150 / 1.25 ft2
    assert told.lines(Manner.QUESTION)


def test_what_was_known_of_the_old_unit_alone_is_named():
    told = at_the_drop().answer(drop_size="24x20 bare metal")
    told.play("blower table: high: 0.1 1300, 0.5 1200, 0.8 1100")
    assert told.talk.job.blower, told.text
    unchanged(told, "what if 2.5 tons")
    assert "Not known of it: the new blower's table." in told.text
    unchanged(told, "what if 1100 cfm")
    assert "Not known of it" not in told.text


@pytest.mark.parametrize(
    "line",
    [
        "what about 1000 cfm",
        "how about 1000 cfm",
        "what if we use a 4 inch filter",
        "so what if we go with 2 tons",
        "would 2 tons work?",
        "ok, what would happen with 900 cfm",
        "suppose it was 2 tons",
    ],
)
def test_other_ways_to_ask(drop, line):
    assert unchanged(drop, line).lines(Manner.INSIGHT)


def test_two_candidates_are_told_side_by_side(drop):
    lines = unchanged(drop, "what if 3 ton vs 2.5 ton").lines(Manner.INSIGHT)
    assert [line.split(":")[0] for line in lines[::2]] == ["With 3 tons", "With 2.5 tons"]
    assert "nothing changes" in lines[0]


@pytest.mark.parametrize(
    ("line", "part"),
    [
        ("what if 1000", "of what"),
        ("what if the trunk was 24x10", "I can't try"),
        ("what if 600 tons", "600 tons is outside"),
        ("what if it gets cold", "I can try"),
    ],
)
def test_what_cannot_be_read_is_asked_back_and_is_no_misreading(drop, line, part):
    assert part in unchanged(drop, line).lines(Manner.ASK_BACK)[0]
    assert drop.state.misread == 0


def test_what_is_typical_and_short_answers_are_still_answered(drop):
    assert "Usual:" in unchanged(drop, "what's typical").text
    assert "A return is" in unchanged(drop, "what's a return").text
    assert "seldom" in unchanged(drop, "what if i close some vents?").text


def test_a_red_flag_goes_before_any_what_if():
    told = at_the_drop().play("what if there is gas smell")
    assert told.key == "red_flag"
    assert not told.lines(Manner.INSIGHT)
    stopped = at_the_drop().play("it smells like gas in here", "what if 2.5 tons")
    assert stopped.talk.stopped
    assert not stopped.lines(Manner.INSIGHT)


def test_after_the_verdict_it_is_still_answered():
    told = at_the_drop().play("finish")
    assert told.lines(Manner.VERDICT)
    unchanged(told, "what if 2 tons")
    assert told.lines(Manner.INSIGHT)[0].startswith("With 2 tons: full cooling, 800 CFM")
    assert not told.lines(Manner.QUESTION, Manner.VERDICT)


def test_an_answer_that_also_asks_how_about_stays_an_answer():
    told = Dialogue(judged=True).answer(safety="no", new_equipment="3 ton single stage heat pump")
    assert told.key == "cool_cfm", told.text
    told.play("how about 1100 cfm")
    assert told.talk.job.number("target.cooling_high_cfm") == 1100.0


def test_the_largest_size_names_what_is_missing_of_the_ducts(drop):
    unchanged(drop, "what's the biggest unit these ducts can take?")
    (line,) = drop.lines(Manner.INSIGHT)
    assert "can't be said yet; first: " in line
    assert "CFM" in line


def test_before_anything_is_known_it_says_so():
    told = Dialogue(judged=True).play("what if 2.5 tons")
    assert told.key == "safety"
    assert "can't say yet" in told.lines(Manner.INSIGHT)[0]
    assert not [event for event in told.events if isinstance(event, Answered)]


@pytest.mark.parametrize(
    "line",
    [
        "what if it were 2.5 tons",
        "what if we went 3 ton",
        "would 3 ton work",
        "whats the biggest unit these ducts can take",
    ],
)
def test_a_call_tries_nothing_and_says_where_it_is_tried(line):
    told = opened("d_tons", Voice.DISPATCHER).play(line)
    assert told.key == "d_tons"
    assert told.talk.job.number("old.cooling_tons") is None
    assert "tried on site" in told.lines(Manner.NOTE)[0]
    assert not told.lines(Manner.INSIGHT)
    assert "what if" not in told.play("help").text


def test_an_offered_answer_in_a_call_is_an_answer():
    told = opened("d_tons", Voice.DISPATCHER).play("how about 3 tons")
    assert told.talk.job.number("old.cooling_tons") == 3.0


def test_the_help_names_it():
    assert "what if 2.5 tons" in Dialogue().play("help").text
