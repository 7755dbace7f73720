"""One line, several questions: each clause is of the thing that it names."""

import pytest
from support.dialogue import opened

TWO = {"trunk_count": "2", "trunk_size": "20x8 bare metal", "drop_size": "20x10 bare"}


def test_a_drop_is_denied_and_a_return_trunk_told_beside_it():
    job = opened("drop_size").play("no drop, return trunk 20x8 goes right into the side").talk.job
    assert job.length("return.drops") == 0
    assert job.number("return.trunks.0.width_in") == 20


@pytest.mark.parametrize(
    "line", ["trunk one, 20x8 bare, drop is 18x10 bare", "drop is 18x10 bare and the trunk is 20x8"]
)
def test_a_trunk_named_at_the_drop_is_no_drop(line):
    job = opened("drop_size").play(line).talk.job
    assert job.number("return.drops.0.width_in") == 18
    assert job.number("supply.trunks.0.width_in") == 20
    assert job.length("supply.trunks") == 1


def test_the_trunk_to_the_drop_is_the_return_trunk():
    job = opened("drop_size").play("bare 18x10 and the trunk to it is 20x8").talk.job
    assert job.number("return.trunks.0.width_in") == 20
    assert job.length("supply.trunks") is None


def test_at_the_return_trunk_the_trunk_is_that_one():
    told = opened("return_trunk", **TWO).play("trunk is 24x10, drop was 18x10 not 20x10")
    assert told.talk.job.number("return.trunks.0.width_in") == 24
    assert told.talk.job.number("return.drops.0.width_in") == 18
    assert told.talk.job.number("supply.trunks.0.width_in") == 20


@pytest.mark.parametrize(
    ("key", "line", "section"),
    [
        ("trunk_count", "one, no return trunk by the way", "return.trunks"),
        ("trunk_count", "2. oh and no return trunk", "return.trunks"),
        ("step_down", "no and no return trunk", "return.trunks"),
        ("step_down", "forget the drop, there isn't one, it sits on a platform", "return.drops"),
    ],
)
def test_what_there_is_none_of_is_told_in_passing(key, line, section):
    assert opened(key, **TWO).play(line).talk.job.length(section) == 0


def test_the_same_size_is_that_of_the_clause_before():
    told = opened("trunk_size", trunk_count="1").play("20x8. return trunk same. no step down")
    job = told.talk.job
    assert job.number("return.trunks.0.width_in") == 20
    assert job.word("house.trunk_steps_down") == "no"


def test_the_size_of_the_drop_may_be_named_for_the_trunk():
    told = opened("return_trunk", **TWO).play("same as the drop")
    assert told.talk.job.number("return.trunks.0.height_in") == 10


def test_a_make_told_of_another_duct_is_not_the_branches():
    told = opened("branches", **TWO).play("12 six inch. and the drop is lined by the way")
    assert told.talk.job.word("supply.branches.0.material") is None
    assert told.talk.job.word("return.drops.0.material") == "lined_metal"


def test_house_facts_told_beside_branches_are_kept():
    job = opened("branches").play("10 6\" metal, year's 1968, one thermostat no zones").talk.job
    assert job.number("year_built") == 1968 or job.number("house.year_built") == 1968
    assert job.number("supply.branches.0.count") == 10


def test_the_return_run_told_with_the_supply_run():
    job = opened("run_supply").play("forty five foot, return's 12").talk.job
    assert job.number("path.supply_length_ft") == 45
    assert job.number("path.return_length_ft") == 12


def test_a_length_before_elbows_is_no_elbow():
    told = opened("run_supply").play("45 and there's 3 square elbows on it")
    assert told.talk.job.number("path.supply_length_ft") == 45
    assert told.talk.job.word("path.fittings.0.kind") == "square_elbow_trunk"
    assert told.talk.job.length("path.fittings") == 1


@pytest.mark.parametrize("line", ["double trunk 20x8 and return's 24x10"])
def test_a_size_of_which_it_isnt_told_what_it_is_of_is_said_to_be_left_out(line):
    told = opened("trunk_count").play(line)
    assert told.talk.job.length("supply.trunks") == 1
    assert told.talk.job.number("supply.trunks.0.count") == 2
    assert "return's 24x10" in told.text


def test_a_correction_beside_openings_keeps_the_openings():
    told = opened("openings", drop_size="22x10 bare")
    told.play("30x20 slots and 20x20 slots. sorry the drop is 20x10 not 22")
    assert told.talk.job.length("return.grilles") == 2
    assert told.talk.job.number("return.drops.0.width_in") == 20


def test_a_later_opening_is_added_to_those_that_are_known():
    told = opened("return_trunk", **TWO, openings="20x20 slots").play("forgot one opening: 12x6")
    assert told.talk.job.length("return.grilles") == 2
    assert told.talk.job.length("return.trunks") is None


@pytest.mark.parametrize("line", ["20x10, bare and clean", "20x10 but it is tight in there"])
def test_words_that_name_nothing_else_stay_with_the_open_question(line):
    told = opened("drop_size").play(line)
    assert told.talk.job.number("return.drops.0.width_in") == 20
    assert told.talk.job.length("supply.trunks") is None
