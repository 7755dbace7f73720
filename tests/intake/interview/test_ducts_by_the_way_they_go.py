"""Trunks told by their ways, lists of openings, fittings by their vanes, and which filter."""

import pytest
from support.dialogue import opened

DUCTS = {"trunk_count": "1", "trunk_size": "20x8 bare metal", "drop_size": "20x10 bare metal"}
RUNS = {**DUCTS, "run_supply": "45", "run_return": "12"}


@pytest.mark.parametrize(
    ("line", "count"),
    [
        ("one each way", 2),
        ("one on each side", 2),
        ("one each end of the plenum", 2),
        ("one goes toward the front, one toward the back", 2),
        ("one to the left, another to the right and a third up", 3),
        ("one left, two right", 3),
        ("2, one left and one right", 2),
        ("one way", 1),
        ("one to the front", 1),
        ("one trunk and 10 branches", 1),
    ],
)
def test_trunks_are_counted_by_the_ways_they_go(line, count):
    told = opened("trunk_count").play(line)
    assert told.talk.job.number("supply.trunks.0.count") == count, told.text


@pytest.mark.parametrize(
    "line", ["1 main plus a little one for the addition", "a trunk and three 8 inch flexes"]
)
def test_a_trunk_beside_other_ducts_is_asked_about(line):
    told = opened("trunk_count").play(line)
    assert told.key == "trunk_count"
    assert not told.talk.job.length("supply.trunks")


def openings(line, **before):
    job = opened("openings", **before).play(line).talk.job
    names = ("count", "width_in", "height_in")
    return [
        tuple(job.number(f"{entry}.{name}") or 1 for name in names)
        for entry in job.entries("return.grilles")
    ]


@pytest.mark.parametrize(
    ("line", "rows"),
    [
        ("20x20 and a pair of 10x6", [(1, 20, 20), (2, 10, 6)]),
        ("16x16, a couple 12x12", [(1, 16, 16), (2, 12, 12)]),
        ("20x20 hall, pair of 14x6 bedrooms", [(1, 20, 20), (2, 14, 6)]),
        ("30x6 and both bedrooms 12x6", [(1, 30, 6), (2, 12, 6)]),
        ("a pair of 20x14s and a 12x12", [(2, 20, 14), (1, 12, 12)]),
        ("20x20, 14x8, and strike the 14x8", [(1, 20, 20)]),
        ("20x25, not counting the dead 12x12", [(1, 20, 25)]),
        ("6 of em, all 12x6 except one 30x8", [(5, 12, 6), (1, 30, 8)]),
        ("a 14x14 upstairs, same downstairs", [(2, 14, 14)]),
        ("20x20 and 14x8 slots", [(1, 20, 20), (1, 14, 8)]),
        ("20x20 and a 14x8 without the frame", [(1, 20, 20), (1, 14, 8)]),
        ("20x20 slots", [(1, 20, 20)]),
        ("20x20 and two returns are blocked", [(1, 20, 20)]),
    ],
)
def test_each_opening_of_a_list_counts_once(line, rows):
    assert openings(line) == rows


@pytest.mark.parametrize(
    "line", ["20x20 and 14x8 slots. filter is 4 inch, not 1", "20x20, 14x8 slots. filter's 4 inch"]
)
def test_a_corrected_filter_leaves_the_openings_whole(line):
    before = {**DUCTS, "filter": "16x25x1", "filter_place": "cabinet"}
    told = opened("openings", **before).play(line)
    assert told.talk.job.length("return.grilles") == 2, told.text
    assert told.talk.job.number("filters.0.depth_in") == 4


@pytest.mark.parametrize(
    ("line", "kind", "count"),
    [
        ("4 elbows, none vaned", "square_elbow_trunk", 4),
        ("4 elbows, none of them have vanes", "square_elbow_trunk", 4),
        ("turning vanes in both elbows", "vaned_elbow", 2),
        ("vanes in both square elbows", "vaned_elbow", 2),
        ("2 vaned elbows", "vaned_elbow", 2),
        ("one 90 at each end", "round_elbow_adjustable", 2),
    ],
)
def test_elbows_by_their_vanes_and_places(line, kind, count):
    told = opened("fittings", **RUNS).play(line)
    assert told.talk.job.word("path.fittings.0.kind") == kind, told.text
    assert told.talk.job.number("path.fittings.0.count") == count


def test_the_grilles_own_size_is_no_second_filter():
    told = opened("filter", **DUCTS).play("16x25x1 in the grille, which is a 16x25")
    assert told.talk.job.length("filters") == 1


@pytest.mark.parametrize(
    "line", ["16x25x1 today, 16x25x4 once I'm done", "14x25x1 I think, could be 16x25x1"]
)
def test_one_filter_of_two_sizes_is_asked_about(line):
    told = opened("filter").play(line)
    assert told.key == "filter"
    assert not told.talk.job.length("filters")


@pytest.mark.parametrize(
    ("line", "where"),
    [
        ("wrap's off, on the bare duct", "bare_metal"),
        ("wrapped, but I measured the bare tin", "bare_metal"),
        ("on the tin", "bare_metal"),
        ("over the wrap", "over_wrap"),
        ("on the wrap over the metal", "over_wrap"),
        ("not on the metal, over the insulation", "over_wrap"),
    ],
)
def test_where_the_tape_was_on_a_wrapped_trunk(line, where):
    told = opened("trunk_where", trunk_count="1", trunk_size="20x8 wrapped metal").play(line)
    assert told.talk.job.word("supply.trunks.0.measured_where") == where, told.text


def test_a_second_drop_is_no_return_trunk():
    told = opened("return_trunk", **DUCTS).play("none, but forgot there's a second drop, 14 round")
    assert told.talk.job.length("return.trunks") == 0
    assert told.key == "drop_size"


@pytest.mark.parametrize(
    "line", ["20x8 bare. i said two trunks, it's one", "20x8 bare and it's just the one trunk"]
)
def test_a_withdrawn_count_of_trunks(line):
    told = opened("trunk_size", trunk_count="2").play(line)
    assert told.talk.job.number("supply.trunks.0.count") == 1
    assert told.talk.job.number("supply.trunks.0.width_in") == 20


def test_branches_beside_a_trunk_are_no_second_trunk():
    job = (
        opened("trunk_size", trunk_count="2")
        .play("18x8 bare and 12 branches 6 inch round")
        .talk.job
    )
    assert (job.length("supply.trunks"), job.number("supply.trunks.0.count")) == (1, 2)
    assert job.number("supply.branches.0.count") == 12
