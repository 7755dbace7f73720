"""Requests and corrections hidden in answers."""

import pytest

from intake.reading.corpus import read_line
from intake.reading.read import read
from intake.reading.result import Accepted, Command, CommandName, Previous, Rejected, Unknown


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("next one please", "skip"), ("let's move on", "skip"), ("come back to that later", "skip"),
        ("none of your business", "skip"), ("go back", "back"), ("take me back one", "back"),
        ("undoo", "undo"), ("never mind that", "undo"), ("forget that last one", "undo"),
        ("how come you're asking", "why"), ("y do u ask", "why"), ("what do you need that for",
        "why"),
        ("huh?", "help"), ("what does that mean", "help"), ("what's a plenum", "help"),
        ("say that again", "repeat"), ("what was the question", "repeat"),
        ("i'm done for today", "quit"),
        ("where do i measure that", "where"), ("what's typical", "typical"),
        ("show me what you have", "show"),
    ],
)  # fmt: skip
def test_a_request_is_found_whatever_field_is_open(text, name):
    for field in ("command", "length", "duct", "capacity", "material"):
        reading = read(field, text)
        assert isinstance(reading, Command), (field, reading)
        assert reading.name is CommandName(name)


@pytest.mark.parametrize(
    "text",
    ["next to the furnace", "the return drops back", "skip the second filter it's 16x25x1",
     "the back bedroom", "help yourself", "17", "yes"],
)  # fmt: skip
def test_an_answer_that_holds_a_request_s_word_is_no_request(text):
    assert not isinstance(read("command", text), Command)


def test_not_knowing_is_told_from_chat_when_a_request_is_wanted():
    assert isinstance(read("command", "dunno"), Unknown)
    assert isinstance(read("command", "the weather is nice"), Rejected)


@pytest.mark.parametrize(
    ("text", "before", "value"),
    [
        ("my bad, 17 not 11", "11", "17"), ("make that 22", "11", "22"), ("not 11, 17", "11", "17"),
        ("11 should have been 17", "11", "17"), ("i said 11 but it's 17", "11", "17"),
        ("17 instead of 11", "11", "17"), ("17 sorry", "11", "17"), ("meant to say 40 ft",
        "14 ft", "40 ft"),
        ("11 was wrong it's 17", "11", "17"), ("it's 17 actually", "11", "17"),
        ("scratch that, 17", "11", "17"),
    ],
)  # fmt: skip
def test_a_correction_gives_the_new_value_as_typed(text, before, value):
    reading = read("command", text, previous=Previous("length", before))
    assert isinstance(reading, Command)
    assert (reading.name, reading.value_text) == (CommandName.CORRECT, value)


@pytest.mark.parametrize(
    ("field", "before", "text", "value"),
    [
        ("static_pressure", ".53", "i meant .35", ".35"), ("yes_no", "no", "no its yes", "yes"),
        ("material", "tin", "my mistake, flex not tin", "flex"), ("duct", "20x8",
        "its 22x8 actually", "22x8"),
        ("temperature", "47", "wrong, it was 74", "74"), ("duct", "20X8 tin",
        "make that 20X10 Tin", "20X10 Tin"),
    ],
)  # fmt: skip
def test_words_and_points_can_be_corrected_too(field, before, text, value):
    reading = read("command", text, previous=Previous(field, before))
    assert isinstance(reading, Command)
    assert reading.value_text == value


def test_a_correction_may_name_another_fact():
    before = Previous("length", "11")
    reading = read("command", "the filter is 20x25 not 16x25", previous=before)
    assert isinstance(reading, Command)
    assert (reading.value_text, reading.fact_words) == ("20x25", "filter")
    reading = read("command", "that was the return one", previous=before)
    assert isinstance(reading, Command)
    assert (reading.value_text, reading.fact_words) == (None, "return")


def test_an_apology_before_a_fitting_answer_is_no_correction():
    reading = read("airflow", "sorry, 1200 cfm", previous=Previous("length", "11"))
    assert isinstance(reading, Accepted)
    assert dict(reading.values) == {"cfm": 1200.0}


def test_the_line_format_knows_eight_requests():
    known = {"skip", "back", "undo", "why", "help", "repeat", "quit", "correct"}
    for text in ("where do i measure that", "what's typical", "show me", "give me the answer"):
        assert read_line({"field": "command", "text": text})["expect"]["command"] in known
