"""The question bank: every row is whole, short, and fits the catalogue and the readers."""

import pytest

from engine.job.facts import catalogue, pattern_of
from engine.job.job import LISTS, Job
from intake.interview.dispatcher import DISPATCHER
from intake.interview.listening import listen, plain_choices
from intake.interview.own_reading import OWN_FIELDS
from intake.interview.planner import question_of
from intake.interview.question import Context
from intake.interview.technician import TECHNICIAN
from intake.interview.turns import Voice
from intake.reading.read import FIELDS
from intake.reading.result import Accepted

EVERY = (*TECHNICIAN, *DISPATCHER)
LONGEST_WORDS = 170


def test_keys_are_unique_and_found():
    keys = [question.key for question in EVERY]
    assert len(keys) == len(set(keys))
    assert all(question_of(key) is not None for key in keys)
    assert question_of("no_such_question") is None


@pytest.mark.parametrize("question", EVERY, ids=lambda question: question.key)
def test_every_question_is_whole(question):
    assert question.field in (*FIELDS, *OWN_FIELDS)
    assert len(question.words) <= LONGEST_WORDS
    assert question.words[0].isupper()
    for words in (question.why, question.where, question.how, question.typical, question.label):
        assert words
    assert 0.0 < question.minutes <= 8.0
    assert question.fills or question.section


@pytest.mark.parametrize("question", EVERY, ids=lambda question: question.key)
def test_every_fact_of_a_question_is_in_the_catalogue(question):
    keys = [*question.facts, *(key for _, key in question.fills), *question.needs]
    for key in keys:
        assert key in LISTS or pattern_of(key) in catalogue(), key


@pytest.mark.parametrize("question", EVERY, ids=lambda question: question.key)
def test_every_choice_typed_as_it_stands_is_understood(question):
    if question.field == "tools":
        return
    for choice in plain_choices(question):
        found = listen(question, choice.replace("_", " "), Job())
        assert isinstance(found, Accepted), (choice, found)
        if question.field == "choice":
            assert found.values == {"choice": choice}
            fact = catalogue()[pattern_of(question.fills[0][1])] if question.fills else None
            assert fact is None or choice in fact.choices


@pytest.mark.parametrize("question", EVERY, ids=lambda question: question.key)
def test_every_synonym_of_a_choice_means_that_choice(question):
    for entry in question.choices:
        key, _, words = entry.partition("=")
        for word in filter(None, words.split("|")):
            found = listen(question, word, Job())
            assert isinstance(found, Accepted), word
            assert found.values == {"choice": key}, word


@pytest.mark.parametrize("question", EVERY, ids=lambda question: question.key)
@pytest.mark.parametrize("words", ["idk", "i don't know", "no idea", "not sure", "dunno"])
def test_dont_know_is_never_an_answer(question, words):
    assert not isinstance(listen(question, words, Job()), Accepted)


def test_the_first_question_of_either_voice_is_safety():
    assert TECHNICIAN[0].key == "safety"
    assert DISPATCHER[0].key == "d_safety"


def test_the_technicians_bank_begins_with_safety_what_goes_in_and_the_gates():
    keys = [question.key for question in TECHNICIAN]
    order = [
        "safety", "new_equipment", "cool_cfm", "old_runs", "tools", "weather", "blower_table",
        "coil_drop", "trunk_count", "trunk_size", "drop_size", "filter", "openings", "static_total",
        "run_supply", "branches", "elevation", "year_built", "sensible_gain",
    ]  # fmt: skip
    assert [key for key in keys if key in order] == order


def test_loads_are_asked_only_when_the_verdict_wants_them():
    sensible = question_of("sensible_gain")
    assert sensible is not None
    assert not sensible.applies(Context(Job(), Voice.TECHNICIAN))
    wanting = Context(
        Job(), Voice.TECHNICIAN, wanted=lambda: frozenset(["loads.sensible_gain_btuh"])
    )
    assert sensible.applies(wanting)


def test_cautions_stand_before_the_work_they_are_about():
    for key, word in (("static_total", "holes"), ("conditions", "power"), ("flex_slack", "safe"),
                      ("filter", "off")):  # fmt: skip
        question = question_of(key)
        assert question is not None
        assert word in question.caution
