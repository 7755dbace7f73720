"""Past trouble in a caller's words, and whether it runs today."""

import pytest
from support.dialogue import Dialogue, opened

from intake.interview.turns import Manner, Voice


def heard(line: str) -> Dialogue:
    return opened("d_trouble", Voice.DISPATCHER).play(line)


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("doesn't freeze", "never"),
        ("does not trip or freeze", "never"),
        ("no freezing, no tripping, no parts", "never"),
        ("not once in 20 years", "never"),
        ("nope never once", "never"),
        ("not since they moved in, five years", "never"),
        ("new igniter once but nothing you listed", "never"),
        ("thermostat was replaced, that's all", "never"),
        ("had the blower swapped in 2019, nothing since", "once"),
        ("never froze but the exchanger was replaced once", "once"),
        ("once it froze, once the board went", "repeated"),
        ("it iced up in june and then again in august", "repeated"),
        ("a couple of times last summer, fine since", "repeated"),
        ("two boards in three years", "repeated"),
        ("froze up, then a month later the motor went", "repeated"),
        ("it froze and then shut itself down", "once"),
        ("i think three or four times", "repeated"),
        ("it's never frozen but it does shut off by itself now and then", "repeated"),
    ],
)
def test_failures_are_counted_and_what_is_denied_is_none(line, word):
    told = heard(line)
    assert told.talk.job.word("phone.trouble") == word, told.text


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("never... wait, husband says they put a new blower motor in last year", "once"),
        ("only once, no twice", "repeated"),
        ("one time. actually two times", "repeated"),
        ("twice, no wait, just once", "once"),
    ],
)
def test_the_second_thought_counts(line, word):
    told = heard(line)
    assert told.talk.job.word("phone.trouble") == word, told.text


def test_a_never_with_an_exception_offers_what_can_be_picked():
    told = heard("nothing ever except capacitor")
    assert "1) once  2) repeated" in told.text
    assert told.play("1").talk.job.word("phone.trouble") == "once"


def test_how_often_and_that_it_runs_now_are_both_taken():
    told = heard("twice, runs ok now")
    assert told.talk.job.word("phone.trouble") == "repeated"
    assert told.talk.job.word("old.works") == "yes"


def works(line: str) -> Dialogue:
    return opened("d_works", Voice.DISPATCHER, d_trouble="twice").play(line)


@pytest.mark.parametrize(
    "line",
    [
        "runs but blows warm",
        "running, froze again this morning",
        "works fine downstairs, upstairs nothing",
        "it won't shut off",
        "it comes on but trips after ten minutes",
        "runs nonstop and can't keep up",
    ],
)
def test_what_runs_without_doing_its_work_is_asked_about(line):
    told = works(line)
    assert told.talk.job.word("old.works") is None, told.text
    assert told.lines(Manner.ASK_BACK)
    assert told.play("no").talk.job.word("old.works") == "no"


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("works great now", "yes"),
        ("hasn't frozen since, runs good", "yes"),
        ("yes, no problems", "yes"),
        ("no", "no"),
        ("stone dead", "no"),
    ],
)
def test_plain_words_of_running_are_taken(line, word):
    told = works(line)
    assert told.talk.job.word("old.works") == word, told.text


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("never, but they had it serviced every year", "never"),
        ("board, no wait it was the motor", "once"),
        ("froze once, shut down once", "repeated"),
        ("only the once, no more than that", "once"),
    ],
)
def test_upkeep_is_no_failure_and_each_failure_counts(line, word):
    told = heard(line)
    assert told.talk.job.word("phone.trouble") == word, told.text
