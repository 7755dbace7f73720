"""Counts among other numbers: trunks, branches by their diameters, registers, openings."""

import pytest
from support.dialogue import Dialogue, opened


def branches(told: Dialogue) -> list[tuple[float | None, float | None]]:
    job = told.talk.job
    return [
        (job.number(f"{e}.count"), job.number(f"{e}.diameter_in"))
        for e in job.entries("supply.branches")
    ]


@pytest.mark.parametrize(
    ("line", "count"),
    [
        ("two supplies, one return", 2),
        ("one trunk, one way", 1),
        ("two legs off the plenum, one to the front one to the back", 2),
        ("one goes left, one goes right", 2),
        ("one, no two, there's another behind the flue", 2),
        ("one big trunk and two 8 inch runs off the plenum", 1),
        ("one leaves the plenum, then tees to two 14x8", 1),
        ("2, both lined", 2),
        ("oen", 1),
    ],
)
def test_trunks_are_counted_among_other_numbers(line, count):
    told = opened("trunk_count").play(line)
    assert told.talk.job.number("supply.trunks.0.count") == count
    assert told.key == "trunk_size"


def test_two_sorts_of_trunk_are_asked_about_and_yes_will_do():
    told = opened("trunk_count").play("1 big 1 small")
    assert told.key == "trunk_count"
    assert told.play("yes").talk.job.number("supply.trunks.0.count") == 2


def test_a_count_told_wrong_before_is_put_right():
    two = {"trunk_count": "2", "trunk_size": "20x8 bare metal"}
    told = opened("step_down", **two).play("I said two trunks, there's only one")
    assert told.talk.job.number("supply.trunks.0.count") == 1


@pytest.mark.parametrize(
    ("line", "count"),
    [
        ("twelve minus the one in the closet", 11),
        ("10 supplies and 2 returns", 10),
        ("12 counting 2 shut", 12),
        ("13 but 2 are shut", 13),
        ("14, two in the basement closed", 14),
        ("8 up 6 down", 14),
        ("11 and one in the garage", 12),
        ("12 not counting the returns", 12),
    ],
)
def test_registers_are_counted_among_other_numbers(line, count):
    told = opened("registers", branches="skip").play(line)
    assert told.talk.job.number("house.supply_registers_count") == count


@pytest.mark.parametrize(
    ("line", "rows"),
    [
        ("five 7 inch and six 6 inch hard pipe, dampers on the 7s", [(5, 7), (6, 6)]),
        ("14, mostly 6 inch flex, a couple of 8s", [(12, 6), (2, 8)]),
        ("11 total, 7 sixes and 4 fives", [(7, 6), (4, 5)]),
        ("11, nine six inch and two eights, flex", [(9, 6), (2, 8)]),
        ("8 runs 6 inch, 2 runs 8 inch, all flex", [(8, 6), (2, 8)]),
        ("7 and 8 inch flex, four of each", [(4, 7), (4, 8)]),
        ("ten six inch, no wait they're five inch", [(10, 5)]),
        ("twelve, no eleven, one's capped off, all 6 inch metal", [(11, 6)]),
        ("eleven 6 inch less one that's blocked", [(10, 6)]),
        ("13 six inch minus the capped one", [(12, 6)]),
        ("ten 6 inch round, two of em crushed", [(10, 6)]),
        ("six, 8 inch", [(6, 8)]),
        ("let me count... 11, all 6", [(11, 6)]),
        ('16 @ 6"', [(16, 6)]),
        ("three 8s, five 6s, all r6 flex", [(3, 8), (5, 6)]),
        ("5 sixes off the left, 7 sixes off the right, and that one 7", [(12, 6), (1, 7)]),
        ("10 at 6, 2 at 8", [(10, 6), (2, 8)]),
    ],
)
def test_branches_are_counted_by_their_diameters(line, rows):
    assert branches(opened("branches").play(line)) == rows


def test_none_of_them_flex_is_no_flex():
    told = opened("branches").play("9 of em, seven inch, none are flex")
    assert branches(told) == [(9, 7)]
    assert told.talk.job.word("supply.branches.0.material") is None


@pytest.mark.parametrize(
    "line",
    ["5 on each side, six inch", "11 six inch, all flex but one", "8 sixes or 2 sevens"],
)
def test_branches_that_arent_counted_plainly_are_asked_about(line):
    told = opened("branches").play(line)
    assert told.key == "branches"
    assert told.talk.job.length("supply.branches") is None


def test_branches_some_of_which_are_capped_are_asked_about():
    told = opened("branches").play("twelve six inch round, two go to the garage and are capped")
    assert told.key == "branches"
    assert branches(told.play("10")) == [(10, 6)]


@pytest.mark.parametrize(
    "line",
    ["12 sixes round pipe, 45 feet to the farthest", "12 six inch flex, longest is 45 ft"],
)
def test_the_farthest_is_the_longest_run_and_not_the_length_of_each(line):
    told = opened("branches").play(line)
    assert told.talk.job.number("path.supply_length_ft") == 45
    assert not told.talk.job.is_known("supply.branches.0.length_ft")


def test_how_flex_hangs_may_be_told_with_it():
    told = opened("branches").play("10 six inch flex tight")
    assert told.talk.job.is_known("supply.branches.0.slack_fraction")
    assert told.key != "flex_slack"


def test_a_count_of_a_cross_is_taken_once_it_is_asked():
    assert branches(opened("branches").play("10x6", "ten of em")) == [(10, 6)]


def openings(told: Dialogue) -> list[tuple[float | None, ...]]:
    job = told.talk.job
    names = ("count", "width_in", "height_in")
    return [
        tuple(job.number(f"{e}.{n}") or 1 for n in names) for e in job.entries("return.grilles")
    ]


@pytest.mark.parametrize(
    ("lines", "rows"),
    [
        (("14x24 twice and 10x10 once",), [(2, 14, 24), (1, 10, 10)]),
        (("10x10 don't count, 20x30 is the only one that pulls",), [(1, 20, 30)]),
        (("the 12x12 is a supply, only 20x30",), [(1, 20, 30)]),
        (("20x20 and 14x8, not 14x8 its 14x6",), [(1, 20, 20), (1, 14, 6)]),
        (("6 of em, all 12x6 except one 30x8",), [(5, 12, 6), (1, 30, 8)]),
        (("30x8 hole, and another same size upstairs",), [(2, 30, 8)]),
        (("to of them twenty by twenty",), [(2, 20, 20)]),
        (("two 20x14 (one is behind the couch)",), [(2, 20, 14)]),
        (("1 in the hall, 20x24 hole",), [(1, 20, 24)]),
        (("two, one is 20x25 other one half that", "10x25"), [(1, 20, 25), (1, 10, 25)]),
        (("two, 14x14 each, slotted part",), [(2, 14, 14)]),
    ],
)
def test_openings_are_counted_in_words(lines, rows):
    assert openings(opened("openings").play(*lines)) == rows


@pytest.mark.parametrize(
    ("line", "place", "rows"),
    [
        ("16x20 on the frame, 14x18 hole", "hole", [(1, 14, 18)]),
        ("24x24 frame, 22x22 opening", "hole", [(1, 22, 22)]),
        ("16x25 hole, 12x12 hole", "hole", [(1, 16, 25), (1, 12, 12)]),
    ],
)
def test_of_a_frame_and_a_hole_the_hole_is_the_opening(line, place, rows):
    told = opened("openings").play(line)
    assert openings(told) == rows
    assert told.talk.job.word("return.grilles.0.measured_where") == place


@pytest.mark.parametrize("line", ["20x30 and half of that", "there aren't any", "14x8 or 14x6"])
def test_openings_that_arent_told_plainly_are_asked_about(line):
    told = opened("openings").play(line)
    assert told.key == "openings"
    assert told.talk.job.length("return.grilles") is None
