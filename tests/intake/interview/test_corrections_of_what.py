"""Corrections without a name: they land where the person means, or it is asked where."""

import pytest
from support.dialogue import opened

from intake.interview.turns import Manner


def test_a_correction_of_a_size_asked_about_is_of_that_size():
    told = opened("old_runs").play("20x8 metal", "sorry 18x10")
    assert told.lines(Manner.ASK_BACK) == [
        "18 x 10 in.: is that the supply trunk? Yes, or what it is."
    ]
    assert told.key == "old_runs"
    told.play("no, the return drop")
    assert told.talk.job.number("return.drops.0.width_in") == 18
    assert not told.talk.job.is_known("supply.trunks.0.width_in")


def test_a_correction_of_an_answer_asked_back_is_of_that_answer():
    told = opened("branches", trunk_count="one", trunk_size="20x8 bare metal")
    told.play("six", "sorry 7")
    assert told.key == "branches"
    assert "7 in. round" in told.lines(Manner.ASK_BACK)[0]
    told.play("9 of them, 7 inch")
    assert told.talk.job.number("supply.branches.0.diameter_in") == 7


def test_a_sorry_and_a_size_where_another_size_is_asked_is_asked_about():
    told = opened("drop_size", trunk_count="one", trunk_size="20x8", trunk_skin="bare metal")
    told.play("sorry 18x10")
    assert told.key == "drop_size"
    assert "a correction of the supply trunk?" in told.lines(Manner.ASK_BACK)[0]
    assert told.talk.job.number("supply.trunks.0.width_in") == 20
    told.play("yes")
    assert told.talk.job.number("supply.trunks.0.width_in") == 18
    assert told.key == "drop_size"
    assert told.replayed() == told.state


def test_a_sorry_after_an_answer_that_was_asked_back_is_that_answer():
    told = opened("drop_size", trunk_count="one", trunk_size="20x8", trunk_skin="bare metal")
    told.play("10", "sorry 18x10")
    assert told.talk.job.number("return.drops.0.width_in") == 18
    assert told.talk.job.number("supply.trunks.0.width_in") == 20


@pytest.mark.parametrize("line", ["sorry its 3.5 ton", "no, its a 3.5 ton", "actually 3.5 tons"])
def test_a_correction_that_fits_one_answer_alone_is_of_that_one(line):
    told = opened("old_runs").play(line)
    assert told.talk.job.number("equipment.cooling_tons") == 3.5
    assert told.key == "old_runs"
    assert not told.talk.job.is_known("old.works")


def test_a_correction_that_fits_nothing_said_is_asked_about_and_nothing_is_reopened():
    told = opened("old_runs").play("sorry 18x10")
    assert told.key == "old_runs"
    assert "Of what is “18x10” the right value?" in told.lines(Manner.ASK_BACK)[0]


def test_a_no_and_two_figures_turned_is_no_answer_to_a_yes_or_no_question():
    told = opened("old_runs").play("no, 17 not 11")
    assert not told.talk.job.is_known("old.works")
