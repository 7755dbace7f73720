"""Ducts of several sizes in one answer: each group is taken with its count, and echoed."""

import pytest
from support.dialogue import Dialogue, opened

from intake.interview.listening import listen
from intake.interview.lists import list_facts
from intake.interview.planner import question_of
from intake.interview.taking import knowing
from intake.interview.turns import Manner
from intake.reading.result import Accepted, AskBack


def groups(told: Dialogue, section: str) -> list[tuple[float | None, float | None, str | None]]:
    job = told.talk.job
    return [
        (job.number(f"{e}.count"), job.number(f"{e}.diameter_in"), job.word(f"{e}.material"))
        for e in job.entries(section)
    ]


@pytest.mark.parametrize(
    ("line", "counts"),
    [
        ("8 sixes and 2 sevens", {6: 8, 7: 2}),
        ("six 6 inch and two 8s", {6: 6, 8: 2}),
        ("6 six inch, 2 eights", {6: 6, 8: 2}),
        ("8 6s n 2 7s", {6: 8, 7: 2}),
        ('8-6" and 2-7"', {6: 8, 7: 2}),
        ("6 at 6 inch and 3 at 7 inch", {6: 6, 7: 3}),
        ("8 sixes and a 7", {6: 8, 7: 1}),
        ("8 sixes and two 7s plus one 4 inch to the bath", {6: 8, 7: 2, 4: 1}),
        ("about 8 sixes n 2 sevens", {6: 8, 7: 2}),
        ("8x6 and 2x7", {6: 8, 7: 2}),
    ],
)
def test_branches_of_several_sizes_are_taken_each_with_its_count(line, counts):
    told = opened("branches").play(line)
    assert {size: count for count, size, _ in groups(told, "supply.branches")} == counts
    assert told.key not in ("branches", "branch_count")
    for size in counts:
        assert f"{size} in. round" in told.lines(Manner.ECHO)[0]
    assert told.replayed() == told.state


def test_each_group_of_branches_keeps_its_own_material():
    told = opened("branches").play("8 six inch metal and 4 flex 7s")
    assert groups(told, "supply.branches") == [(8, 6, "galvanized"), (4, 7, "flex")]


def test_a_material_said_last_is_that_of_every_group():
    told = opened("branches").play("8 sixes and 2 sevens, all metal")
    assert groups(told, "supply.branches") == [(8, 6, "galvanized"), (2, 7, "galvanized")]


def test_the_slack_is_asked_of_the_flex_among_metal_branches_and_kept_with_it():
    told = opened("branches").play('2 8" metal, 10 6" flex')
    assert told.key == "flex_slack"
    told.play("bunched")
    assert told.talk.job.is_known("supply.branches.1.slack_fraction")
    assert not told.talk.job.is_known("supply.branches.0.slack_fraction")


def test_one_size_told_later_replaces_the_groups():
    told = opened("branches").play("8 sixes and 2 sevens", "sorry, just 9 sixes")
    assert groups(told, "supply.branches") == [(9, 6, None)]
    assert told.talk.job.length("supply.branches") == 1
    told.play("actually 8 sixes and 2 sevens")
    assert [group[:2] for group in groups(told, "supply.branches")] == [(8, 6), (2, 7)]


@pytest.mark.parametrize("line", ["mostly 6 inch, couple of 7s", "2 sevens rest sixes"])
def test_groups_without_their_counts_are_asked_for_them(line):
    told = opened("branches").play(line)
    assert told.key == "branches"
    assert told.lines(Manner.ASK_BACK)[0].startswith("How many of each size?")


@pytest.mark.parametrize("line", ["8 sixes or 2 sevens", "12 sixes and one 8 inch trunk"])
def test_a_doubt_or_another_duct_among_branches_is_no_group(line):
    told = opened("branches").play(line)
    assert told.key == "branches"
    assert told.talk.job.length("supply.branches") is None


def test_a_count_by_inches_is_not_taken_for_two_sides():
    told = opened("branches").play("12x6")
    assert "12 branches of 6 in. round" in told.lines(Manner.ASK_BACK)[0]
    told.play("1")
    assert groups(told, "supply.branches") == [(12, 6, None)]
    told = opened("branches").play("12x6 wall stack")
    assert told.talk.job.number("supply.branches.0.width_in") == 12


def test_two_return_trunks_of_two_sizes_are_two_entries():
    told = opened("return_trunk").play("20x8 and 16x8")
    job = told.talk.job
    assert [job.number(f"{e}.width_in") for e in job.entries("return.trunks")] == [20, 16]


def test_one_trunk_told_after_two_keeps_the_smaller_piece_that_hangs_on_it():
    told = opened("trunk_size").play("20x8 and 18x8 bare metal")
    step, trunk = question_of("step_down"), question_of("trunk_size")
    assert step is not None
    assert trunk is not None
    found = listen(step, "14x8", told.talk.job)
    assert isinstance(found, Accepted)
    talk = told.talk._talk
    job = talk.state.job.with_facts(list_facts(step, found, knowing(talk), talk.state.job).beliefs)
    single = listen(trunk, "one 22x8 bare metal", job)
    assert isinstance(single, Accepted)
    facts = list_facts(trunk, single, knowing(talk), job)
    after = job.without("supply.trunks").with_facts(facts.beliefs)
    assert facts.forget == ("supply.trunks",)
    assert [after.number(f"{e}.width_in") for e in after.entries("supply.trunks")] == [22, 14]
    assert after.word("supply.trunks.1.from") == "supply.trunks.0"


def test_a_smaller_size_further_on_is_no_second_trunk():
    trunk = question_of("trunk_size")
    assert trunk is not None
    found = listen(trunk, "20x8 then 14x8", opened("trunk_size").talk.job)
    assert isinstance(found, AskBack)


def test_two_filters_that_are_both_there_are_two_entries_in_one_place():
    told = opened("filter").play("20x30x1 behind the grill and 14x14x1 too")
    job = told.talk.job
    assert [job.number(f"{e}.width_in") for e in job.entries("filters")] == [20, 14]
    assert [job.word(f"{e}.place") for e in job.entries("filters")] == ["grille", "grille"]
    told = opened("filter").play("two filters, 20x20x1 and 16x20x1", "cabinet")
    job = told.talk.job
    assert [job.word(f"{e}.place") for e in job.entries("filters")] == ["cabinet", "cabinet"]
    told.play("sorry, the filter is 20x25x1")
    assert told.talk.job.length("filters") == 1


def test_one_filter_or_another_is_asked_about():
    told = opened("filter").play("16x25x1 or 16x20x1")
    assert told.key == "filter"
    assert ".." not in told.text


@pytest.mark.parametrize(
    "line",
    [
        "none",
        "hm theres no trunk really, its a plenum box with flex off it",
        "flex right off the plenum",
        "all runs come off the plenum",
    ],
)
def test_a_house_without_a_trunk_is_asked_for_no_size_of_one(line):
    told = opened("trunk_count").play(line)
    assert told.talk.job.length("supply.trunks") == 0
    asked = set()
    while told.key:
        asked.add(told.key)
        told.play("skip")
    assert not {"trunk_size", "trunk_skin", "trunk_where", "step_down"} & asked


def test_a_flex_drop_is_asked_for_its_core():
    told = opened("drop_size").play("20 inch flex")
    assert told.key == "drop_core"
    told.play("core")
    assert told.talk.job.word("return.drops.0.measured_where") == "flex_core"


def test_no_trunk_said_at_another_question_is_taken_there():
    told = opened("old_runs").play("there's no trunk")
    assert told.talk.job.length("supply.trunks") == 0
    assert told.key == "old_runs"
