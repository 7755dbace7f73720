"""Lines that tell more of ducts than one size: side by side, narrowing, taped twice, with liner."""

import pytest
from support.dialogue import Dialogue, opened


def sizes(told: Dialogue, section: str) -> list[tuple[float | None, ...]]:
    job = told.talk.job
    return [
        (
            job.number(f"{e}.count"),
            job.number(f"{e}.width_in") or job.number(f"{e}.diameter_in"),
            job.number(f"{e}.height_in"),
        )
        for e in job.entries(section)
    ]


TRUNK = {"trunk_count": "1", "trunk_size": "20x8 bare metal"}


@pytest.mark.parametrize(
    ("line", "size"),
    [
        ("8x20, that's 8 deep 20 wide", (20, 8)),
        ("20x10 ... 20x12. final answer 20x12", (20, 12)),
        ("20x10, sorry 20x12", (20, 12)),
        ("24x10 but narrowest is the elbow at 22x8", (22, 8)),
        ("16x10 at its narrowest, 20x10 up top", (16, 10)),
        ("20 by 8 at the beam, 20 by 12 below that", (20, 8)),
        ("20x10 but the filter slot necks it to 16x10", (16, 10)),
        ("the filter rack chokes it down to 16x20", (16, 20)),
        ("16x10, oops thats outside the wrap, 14x8 bare under it", (14, 8)),
    ],
)
def test_of_one_drop_the_narrowest_size_is_taken(line, size):
    told = opened("drop_size").play(line)
    assert [row[1:] for row in sizes(told, "return.drops")] == [size]
    assert told.talk.job.length("filters") is None


@pytest.mark.parametrize(
    "line",
    ["two drops, left 14x20 right 12x20", "14x20 and 12x20", "one 14x20 and one 12x20, both bare"],
)
def test_two_drops_side_by_side_are_two(line):
    told = opened("drop_size").play(line)
    assert sizes(told, "return.drops") == [(1, 14, 20), (1, 12, 20)]


@pytest.mark.parametrize(
    ("line", "rows"),
    [
        ("two, 20x8 and 16x8, both bare metal", [(1, 20, 8), (1, 16, 8)]),
        ("three, two 16x8 and a 12 round flex", [(2, 16, 8), (1, 12, None)]),
        ("three. 20x8, 16x8 and a 10 inch round", [(1, 20, 8), (1, 16, 8), (1, 10, None)]),
        ("double trunk 20x8", [(2, 20, 8)]),
        ("just the one, 20 by 8", [(1, 20, 8)]),
    ],
)
def test_trunks_told_with_their_sizes_are_counted(line, rows):
    told = opened("trunk_count").play(line)
    assert sizes(told, "supply.trunks") == rows
    assert told.key not in ("trunk_count", "trunk_size")


def test_sizes_that_dont_make_the_count_are_asked_about():
    told = opened("trunk_size", trunk_count="3").play("two 18x8 and 14x8")
    assert told.key == "trunk_size"
    assert not told.talk.job.is_known("supply.trunks.0.width_in")


def test_of_two_trunks_one_is_taped_and_the_other_is_asked_after():
    told = opened("trunk_size", trunk_count="2")
    told.play("one of them's 20x8, couldn't get to the other")
    assert told.key == "trunk_size"
    assert told.talk.job.number("supply.trunks.0.count") == 2
    told.play("yes")
    assert sizes(told, "supply.trunks") == [(2, 20, 8)]


@pytest.mark.parametrize(
    "line",
    [
        "one 24x8, bare, reduces to 16x8 halfway",
        "one, it's 24x8 bare, drops to 16x8 about halfway",
        "one 24x8 bare then 16x8 after 15 ft",
    ],
)
def test_a_trunk_told_with_its_smaller_part_settles_both(line):
    told = opened("trunk_count").play(line)
    assert sizes(told, "supply.trunks") == [(1, 24, 8), (1, 16, 8)]
    assert told.talk.job.word("supply.trunks.1.from") == "supply.trunks.0"
    assert "step_down" in told.state.answered


@pytest.mark.parametrize(
    ("key", "line", "fact", "thick"),
    [
        ("drop_size", "20x10 lined one inch", "return.drops.0", 1.0),
        ("drop_size", "20x8 board, inch and a half", "return.drops.0", 1.5),
        ("drop_size", "20x10 lined, half inch liner", "return.drops.0", 0.5),
        ("trunk_size", "22 wide x 10 high, galvanized, 1 in liner", "supply.trunks.0", 1.0),
    ],
)
def test_how_thick_a_liner_is_may_be_told_with_the_size(key, line, fact, thick):
    told = opened(key, trunk_count="1").play(line)
    assert told.talk.job.number(f"{fact}.liner_in") == thick


def test_how_thick_a_liner_is_may_be_told_with_the_make():
    told = opened("trunk_skin", trunk_count="2", trunk_size="20x8").play("lined, half inch")
    assert told.talk.job.number("supply.trunks.0.liner_in") == 0.5
    told = opened("drop_size").play("20x8 lined, and a 1 inch filter")
    assert not told.talk.job.is_known("return.drops.0.liner_in")


@pytest.mark.parametrize(
    "line",
    [
        "goes from 20x8 to 14x8",
        "the 20x8 drops to 14x8",
        "yes, 14x8 for the last half",
        "front leg necks down to 14x8 half way out",
        "16x8, no 14x8",
        "not until the last 6 feet, then 14x8",
    ],
)
def test_the_smaller_part_is_told_apart_from_the_trunks_own_size(line):
    told = opened("step_down", **TRUNK).play(line)
    assert sizes(told, "supply.trunks")[1][1:] == (14, 8)
    assert sizes(told, "supply.trunks")[0][1:] == (20, 8)


@pytest.mark.parametrize(
    "line",
    ["20x8 all the way", "no, 20x8 to the end", "no it's straight 20x8", "never changes", "nope"],
)
def test_the_trunks_own_size_to_the_end_is_no_smaller_part(line):
    told = opened("step_down", **TRUNK).play(line)
    assert told.talk.job.word("house.trunk_steps_down") == "no"
    assert told.talk.job.length("supply.trunks") == 1


@pytest.mark.parametrize("line", ["it goes bigger to 24x8", "20x8"])
def test_a_size_that_isnt_smaller_is_asked_about(line):
    told = opened("step_down", **TRUNK).play(line)
    assert told.key == "step_down"
    assert told.talk.job.length("supply.trunks") == 1


@pytest.mark.parametrize(
    ("line", "share"), [("16x8 after 6 of 10 runs", 0.4), ("14x8 last 3 of 9 branches", 0.333)]
)
def test_the_air_left_follows_from_the_branches_before_and_after(line, share):
    told = opened("step_down", **TRUNK).play(line)
    assert told.talk.job.number("supply.trunks.1.share_fraction") == pytest.approx(share, abs=1e-3)
    assert told.key != "step_share"


@pytest.mark.parametrize(
    ("line", "share"),
    [("60 percent is gone by then", 0.4), ("60 percent is left", 0.6), ("60", 0.6)],
)
def test_what_is_gone_leaves_the_rest(line, share):
    told = opened("step_share", **TRUNK, step_down="16x8").play(line)
    assert told.talk.job.number("supply.trunks.1.share_fraction") == pytest.approx(share)


def test_only_one_of_two_trunks_steps_down():
    two = {"trunk_count": "2", "trunk_size": "20x8 bare"}
    told = opened("step_down", **two).play("just the left trunk, to 12x8", "40")
    assert told.talk.job.number("supply.trunks.1.count") == 1
    assert told.talk.job.number("supply.trunks.1.share_fraction") == pytest.approx(0.2)


@pytest.mark.parametrize(
    ("key", "line", "section"),
    [
        ("drop_size", "there's no drop", "return.drops"),
        ("drop_size", "theres no drop, return comes straight into the closet", "return.drops"),
        ("drop_size", "it's a platform return", "return.drops"),
        ("drop_size", "don't have one", "return.drops"),
        ("return_trunk", "there is no return trunk", "return.trunks"),
        ("return_trunk", "no trunk, the drop goes right to the grilles", "return.trunks"),
        ("return_trunk", "just the drop", "return.trunks"),
        ("return_trunk", "nope none", "return.trunks"),
        ("fittings", "straight shot, no fittings", "path.fittings"),
    ],
)
def test_that_there_is_none_may_be_said_with_why(key, line, section):
    told = opened(key, **TRUNK).play(line)
    assert told.talk.job.length(section) == 0
    assert told.talk.job.number("supply.trunks.0.width_in") == 20


@pytest.mark.parametrize(
    "line", ["not sure there is a drop", "no drop in pressure, i mean 20x10", "can't see it"]
)
def test_a_doubt_is_no_none(line):
    told = opened("drop_size").play(line)
    assert told.talk.job.length("return.drops") != 0


@pytest.mark.parametrize(
    "line",
    [
        "under the wrap",
        "i pulled the wrap back",
        "slit the wrap",
        "outside of the wrap no wait under it",
    ],
)
def test_under_the_wrap_is_on_the_metal(line):
    told = opened("trunk_where", trunk_count="1", trunk_size="20x8 wrapped metal").play(line)
    assert told.talk.job.word("supply.trunks.0.measured_where") == "bare_metal"


@pytest.mark.parametrize("line", ["over the wrap", "didn't go under the wrap", "on the insulation"])
def test_over_the_wrap_stays_over_it(line):
    told = opened("trunk_where", trunk_count="1", trunk_size="20x8 wrapped metal").play(line)
    assert told.talk.job.word("supply.trunks.0.measured_where") == "over_wrap"


def test_a_make_of_each_its_own_is_asked_about():
    told = opened("trunk_skin", trunk_count="2", trunk_size="20x8").play("one's lined one's bare")
    assert told.key == "trunk_skin"
    assert not told.talk.job.is_known("supply.trunks.0.material")


@pytest.mark.parametrize("line", ["no liner, no wrap", "not lined, not wrapped"])
def test_neither_lined_nor_wrapped_is_bare(line):
    told = opened("drop_skin", drop_size="20x10").play(line)
    assert told.talk.job.word("return.drops.0.measured_where") == "bare_metal"


@pytest.mark.parametrize("line", ["what's lined look like", "what is a panned bay"])
def test_asking_what_a_make_is_takes_none(line):
    told = opened("drop_skin", drop_size="20x10").play(line)
    assert told.key == "drop_skin"
    assert not told.talk.job.is_known("return.drops.0.material")


@pytest.mark.parametrize(
    ("line", "feet"),
    [
        ("45 straight plus 10 up the wall", 55),
        ("20 ft of trunk plus 18 of branch", 38),
        ("33 to the end of the trunk and another 12", 45),
        ("none is over 25, say 25", 25),
    ],
)
def test_a_run_told_in_pieces_is_their_sum(line, feet):
    assert opened("run_supply").play(line).talk.job.number("path.supply_length_ft") == feet


@pytest.mark.parametrize(
    "line", ["40 or 45", "no more than 8", "it's on the other side of the wall"]
)
def test_a_limit_or_a_place_is_no_length(line):
    told = opened("run_return").play(line)
    assert told.talk.job.number("path.return_length_ft") is None or line == "40 or 45"
    assert told.talk.job.word("equipment.blower_kind") == "psc"
