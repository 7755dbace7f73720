"""Yes or no, against the words of the question."""

import pytest

from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, Command, Rejected, Unknown

SOUND = "Is the plenum metal sound?"
RUSTY = "Is the plenum rusty?"
ATTIC = "Is the attic reachable?"
RUNS = "Does the old blower run today?"
OPEN = "Are all the registers open?"
LINED = "Is the supply trunk lined inside?"
FROZEN = "Has it ever frozen up?"
ONE_WAY = "Does all the air leave the plenum in one direction?"
EVERY = "Is there a return in every bedroom?"
GAUGE = "Have you got a manometer with you?"


def answer(text: str, question: str) -> bool:
    reading = read("yes_no", text, question=question)
    assert isinstance(reading, Accepted), reading
    value = reading.values["yes"]
    assert isinstance(value, bool)
    return value


@pytest.mark.parametrize(
    "text",
    ["yup", "y", "sure does", "affirmative", "uh huh", "ofc", "yse", "no doubt", "you bet", "👍"],
)
def test_a_plain_yes_is_yes(text):
    assert answer(text, RUNS) is True


@pytest.mark.parametrize(
    "text", ["nope", "n", "noep", "nuh uh", "not at all", "it doesnt", "no way", "👎"]
)
def test_a_plain_no_is_no(text):
    assert answer(text, RUNS) is False


@pytest.mark.parametrize(
    ("text", "question", "yes"),
    [
        ("rusty", SOUND, False), ("rusty", RUSTY, True), ("not rusty", SOUND, True),
        ("no rust", SOUND, True), ("rust free", SOUND, True), ("it ain't rusty", SOUND, True),
        ("solid", RUSTY, False), ("swiss cheese", SOUND, False), ("dead", RUNS, False),
        ("two are shut", OPEN, False), ("none are closed", OPEN, True),
        ("bare metal", LINED, False),
        ("insulation on the outside", LINED, False), ("insulated inside", LINED, True),
        ("both ways", ONE_WAY, False), ("it splits", ONE_WAY, False),
        ("painted shut", ATTIC, False),
        ("can't get up there", ATTIC, False), ("easy", ATTIC, True), ("no access", ATTIC, False),
    ],
)  # fmt: skip
def test_a_telling_word_is_read_against_the_question(text, question, yes):
    assert answer(text, question) is yes


@pytest.mark.parametrize(
    ("text", "question", "yes"),
    [
        ("only in the hall", EVERY, False), ("just the master", EVERY, False),
        ("all but one", OPEN, False), ("twice last summer", FROZEN, True), ("once", FROZEN, True),
        ("left it in the other van", GAUGE, False), ("havent got one", GAUGE, False),
    ],
)  # fmt: skip
def test_a_part_answers_all_with_no_and_ever_with_yes(text, question, yes):
    assert answer(text, question) is yes


@pytest.mark.parametrize(
    ("text", "yes"),
    [("i believe so", True), ("probably", True), ("i doubt it", False), ("dont think so", False),
     ("not that i know of", False), ("as far as i know yes", True)],
)  # fmt: skip
def test_doubt_is_kept(text, yes):
    reading = read("yes_no", text, question=ATTIC)
    assert isinstance(reading, Accepted)
    assert dict(reading.values) == {"yes": yes, "sure": False}


@pytest.mark.parametrize(
    ("text", "question"),
    [
        ("yes and no", RUNS), ("yeah no", RUNS), ("sometimes", RUNS), ("no, it's solid", SOUND),
        ("yes, but rusty", SOUND), ("yes", "Are there no dampers on the branches?"), ("half", OPEN),
        ("maybe", LINED),
    ],
)  # fmt: skip
def test_what_is_neither_or_contradicts_itself_is_asked(text, question):
    assert isinstance(read("yes_no", text, question=question), AskBack)


@pytest.mark.parametrize(
    "text",
    ["no idea", "not sure", "hard to say", "dont know", "haven't looked", "knot sure", "n/a", "?"],
)
def test_not_knowing_is_no_no(text):
    assert isinstance(read("yes_no", text, question=LINED), Unknown)


@pytest.mark.parametrize("text", ["purple", "the kitchen is being painted", "14"])
def test_chat_is_no_answer(text):
    assert isinstance(read("yes_no", text, question=ATTIC), Rejected)


def test_skipping_is_still_possible():
    assert isinstance(read("yes_no", "skip it", question=ATTIC), Command)
