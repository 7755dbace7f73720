"""Yes or no by what is denied, what is so now, and what the question names."""

import pytest

from intake.reading.corpus import read_line

LINED = "Is the trunk lined inside?"
RUNS = "Does the blower run today?"
OPEN = "Are all the registers open?"
SHUT = "Do you keep any vents shut?"
TALL = "Is the plenum taller than 12 inches?"
STATIC = "Is the total static over 0.8?"
BUILT = "Was the house built before 1981?"
RACK = "Is there a filter rack on the return?"
WHISTLE = "Does the whistle stop when you open the filter door?"
TRUNK = "Does the main trunk step down along the way?"
GAS = "Do you smell gas?"


def answer(question: str, text: str) -> object:
    got = read_line({"field": "yes_no", "text": text, "question": question})
    return got["expect"]["yes"] if got["outcome"] == "accept" else got["outcome"]


@pytest.mark.parametrize(
    ("question", "text", "right"),
    [
        (TALL, "14 on my tape", True), (TALL, "10 and a half", False), (TALL, "a foot even", False),
        (TALL, "not even 10", False), (TALL, "way over", True), (TALL, "11 to 14", "ask"),
        (TALL, "about 12", "ask"), (TALL, "no, 14", "ask"), (TALL, "20 x 8", "ask"),
        (TALL, "it was 14 before they cut it down", "ask"),
        (STATIC, "i got .64", False), (STATIC, "point nine two", True),
        (STATIC, "0.6 return and .4 supply", "ask"), (STATIC, "three of them", "ask"),
        (BUILT, "my grandfather put it up in the fifties", True), (BUILT, "08", False),
        (BUILT, "early 80s", "ask"), (BUILT, "1981", False), (BUILT, "right around then", "ask"),
        ("Is anyone in the house over 65 or ill?", "she's 81", True),
        ("Is anyone in the house over 65 or ill?", "i'm 40", "ask"),
        ("Is there more than one thermostat?", "just the one", False),
    ],
)  # fmt: skip
def test_a_figure_is_held_against_the_bound_of_the_question(question, text, right):
    assert answer(question, text) == right


@pytest.mark.parametrize(
    ("question", "text", "right"),
    [
        (RUNS, "havent tried that yet", "unknown"), (LINED, "cant see in", "unknown"),
        (RACK, "couldn't get the door off", "unknown"),
        (STATIC, "dont have a manometer", "unknown"),
        (GAS, "i got a cold cant smell a thing", "unknown"),
        ("Have you tried it on high?", "haven't tried that yet", False),
        ("Can you get into the attic?", "couldnt get in", False),
        ("Did you measure it?", "no, haven't measured it", False),
    ],
)  # fmt: skip
def test_a_denied_deed_is_a_no_only_where_the_deed_was_asked_about(question, text, right):
    assert answer(question, text) == right


@pytest.mark.parametrize(
    ("question", "text", "right"),
    [
        (RACK, "no no there is, its just hidden behind the drop", True),
        (RACK, "no no theres none", False), (RACK, "pretty sure theres not", False),
        (RACK, "barely but yeah", True), (LINED, "doesnt ring so id say it is", True),
        (LINED, "its caked so i doubt it", False),
        ("Is the coil wet?", "not wet not dry", "ask"), (OPEN, "not a one is closed", True),
        ("Is there rust on it?", "never had no rust", False),
    ],
)  # fmt: skip
def test_a_negation_reaches_as_far_as_it_is_meant(question, text, right):
    assert answer(question, text) == right


@pytest.mark.parametrize(
    ("question", "text", "right"),
    [
        (RUNS, "it was dead but its running now", True), (RUNS, "it did till tuesday", False),
        (RUNS, "used to", False), (RUNS, "it ran yesterday", "ask"),
        ("Has it ever frozen up?", "it did last summer", True),
        (RACK, "there was, it got sucked in", "ask"),
    ],
)  # fmt: skip
def test_what_was_is_not_what_is(question, text, right):
    assert answer(question, text) == right


@pytest.mark.parametrize(
    ("question", "text", "right"),
    [
        (LINED, "the plenum is, the trunk isnt", False),
        (LINED, "supply isnt the return is", "ask"),
        (LINED, "wrapped yes, lined no", False), (SHUT, "two of the bedrooms yes", True),
        (SHUT, "just the guest room", True), (OPEN, "some are", False),
        (OPEN, "some are some arent", False), (RACK, "some have em some dont", "ask"),
    ],
)  # fmt: skip
def test_the_part_that_was_asked_about_answers(question, text, right):
    assert answer(question, text) == right


@pytest.mark.parametrize(
    ("question", "text", "right"),
    [
        (WHISTLE, "yep goes dead quiet", True), (WHISTLE, "keeps right on whistling", False),
        (TRUNK, "same size all the way to the end cap", False), (TRUNK, "drops to 12", True),
        ("Is the furnace the only thing on that flue?", "water heater tees into it too", False),
        ("Is the gas shut off?", "its on", False), ("Is the gas shut off?", "not off yet", False),
        ("Will the filter rack take a 4 inch filter?", "one incher is all thatll go", False),
        ("Does the indoor coil match the outdoor unit's tonnage?", "3 ton outside, 3.5 coil inside",
         False),
        ("Are there shiny round hoses up there, rather than metal pipe?", "metal pipe", False),
    ],
)  # fmt: skip
def test_the_verb_of_the_question_decides(question, text, right):
    assert answer(question, text) == right


@pytest.mark.parametrize(
    ("question", "text"),
    [
        ("Is the attic hatch inside the house?", "hall closet ceiling"),
        ("Did you let the coil get wet before reading?", "ran it 15 min first"),
        ("Is the condensate drain clear?", "water's standing in the pan"),
        ("Does the drain line run to the outside?", "goes to a floor drain"),
        ("Is the flue pipe rusted through?", "surface rust only"),
    ],
)
def test_what_only_knowledge_of_houses_turns_into_an_answer_is_asked(question, text):
    assert answer(question, text) == "ask"


@pytest.mark.parametrize("text", ["back", "skip", "undo", "help", "why?", "repeat", "quit", "next"])
@pytest.mark.parametrize("question", [GAS, SHUT, LINED, RACK, TALL, "Any burning smell right now?"])
def test_a_bare_request_answers_nothing(question, text):
    got = read_line({"field": "yes_no", "text": text, "question": question})
    assert "yes" not in (got.get("expect") or {})
