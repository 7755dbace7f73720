"""What only sounds like a request, and requests among other words."""

import pytest

from intake.reading.corpus import read_line
from intake.reading.read import read
from intake.reading.result import Accepted, Command, CommandName, Previous, Unknown


@pytest.mark.parametrize(
    "text",
    ["cant go back there, the water heater's in the way", "cant get back there, its all boxes",
     "id have to go back and look", "dont have a way to get back up there"],
)  # fmt: skip
def test_what_cant_or_would_have_to_be_done_is_no_request(text) -> None:
    assert isinstance(read("length", text), Unknown)


@pytest.mark.parametrize(
    "text",
    ["how would i know, i'm just the renter", "how should i know", "how the heck would i know"],
)
def test_a_question_nobody_wants_answered_says_that_it_is_not_known(text) -> None:
    for field in ("capacity", "length", "command"):
        assert isinstance(read(field, text), Unknown), field


@pytest.mark.parametrize(("text", "yes"), [("why yes it is", True), ("why no, never has", False)])
def test_why_before_a_yes_or_no_asks_nothing(text, yes) -> None:
    reading = read("yes_no", text, question="Is the duct lined?")
    assert isinstance(reading, Accepted)
    assert reading.values["yes"] is yes


@pytest.mark.parametrize(
    ("text", "name"),
    [("phone cut out what'd you ask", "repeat"),
     ("can u ask that again i scrolled past it", "repeat"),
     ("my dog hit the keyboard, delete that", "undo"),
      ("skip that i'll text the homeowner", "skip"),
     ("gotta run, customers yelling, we'll finish some other time", "quit")],
)  # fmt: skip
def test_the_reason_may_stand_on_either_side_of_a_request(text, name) -> None:
    for field in ("command", "length", "duct", "material"):
        reading = read(field, text)
        assert isinstance(reading, Command), field
        assert reading.name is CommandName(name)


@pytest.mark.parametrize(
    ("text", "before", "value"),
    [("swap the 42 for 24", Previous("length", "42"), "24"),
     ("i said 22 but looking again the tape reads 26", Previous("length", "22"), "26"),
     ("not Phoenix sorry, the job's in Flagstaff", Previous("elevation", "Phoenix"), "Flagstaff"),
     ("the coil isnt plugged, its some dirt", Previous("coil_state", "plugged"), "some dirt"),
     ("i take it back, it is a yes", Previous("yes_no", "no"), "yes")],
)  # fmt: skip
def test_beside_what_is_taken_back_stands_what_is_meant(text, before, value) -> None:
    reading = read("command", text, previous=before)
    assert isinstance(reading, Command)
    assert (reading.name, reading.value_text) == (CommandName.CORRECT, value)


@pytest.mark.parametrize(
    ("text", "values"),
    [("its 33 or 38, one of the two, not the 28 i said", ["33", "38"]), ("change it", []),
     ("its not 28", []), ("that number's wrong", [])],
)  # fmt: skip
def test_a_correction_that_tells_no_one_value_asks(text, values) -> None:
    previous = {"field": "length", "text": "28"}
    told = read_line({"field": "command", "text": text, "previous": previous})
    assert told["outcome"] == "ask"
    assert [reading["value_text"] for reading in told["readings"]] == values


@pytest.mark.parametrize(
    ("field", "text"),
    [("airflow", "a thousand fifty"), ("duct", "its 16x8 bare metal"), ("length", "oh 40"),
     ("coil_state", "its impacted, no light through it")],
)  # fmt: skip
def test_what_the_open_question_reads_and_nothing_calls_wrong_is_its_answer(field, text) -> None:
    for before in (Previous("length", "30"), Previous("yes_no", "yes"), Previous(field, "1200")):
        assert isinstance(read(field, text, previous=before), Accepted), before
