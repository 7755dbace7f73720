"""Requests with an excuse behind them, or that name the thing they are about."""

import pytest

from intake.reading.read import read
from intake.reading.result import Command, CommandName


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("leave that one blank for now", "skip"), ("we'll circle back to that, move on", "skip"),
        ("put nothing down, keep moving", "skip"), ("let's put a pin in that one", "skip"),
        ("skip it, ladder's too short", "skip"), ("come back to that later, attic is locked",
        "skip"), ("ask me that later", "skip"),
        ("run that question by me again", "repeat"), ("one more time, compressor was running",
        "repeat"), ("say that again, dog was barking", "repeat"), ("can you reword that", "repeat"),
        ("sorry you cut out", "repeat"), ("go over that again please", "repeat"),
        ("what do you need the elevation for", "why"), ("why do you need the filter size", "why"),
        ("what does the altitude have to do with my ducts", "why"),
        ("how does the town matter", "why"), ("what are you using the square footage for", "why"),
        ("where do I stick the probe", "where"), ("where should i drill the hole for it", "where"),
        ("which end do i hook the hose to", "where"), ("where does the red hose go", "where"),
        ("how do i read the gauge", "how"), ("how am I supposed to get a tape around it", "how"),
        ("gotta run, customer is here", "quit"),
    ],
)  # fmt: skip
def test_it_is_heard_whatever_field_is_open(text, name) -> None:
    for field in ("command", "length", "duct", "capacity", "material", "static_pressure"):
        reading = read(field, text)
        assert isinstance(reading, Command), (field, reading)
        assert reading.name is CommandName(name), (field, reading)


@pytest.mark.parametrize(
    ("field", "text"),
    [
        ("duct", "skip the jacket, 8 inch flex"),
        ("material", "come back to that later, it's flex"),
        ("coil_state", "hold off on that, it's plugged"), ("length", "next, the elbow"),
        ("yes_no", "one more, yes"), ("duct", "where it leaves the plenum its 20x8"),
        ("length", "how far? 40 ft"), ("static_pressure", "where the hose goes in its .47"),
        ("yes_no", "no, why would it matter"), ("material", "what you'd expect, flex"),
    ],
)  # fmt: skip
def test_an_answer_beside_such_words_stays_an_answer(field, text) -> None:
    reading = read(field, text, question="Is the filter clean?")
    assert not isinstance(reading, Command), reading
