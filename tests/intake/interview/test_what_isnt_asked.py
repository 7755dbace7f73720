"""A line about another thing than the open question's is taken there, not as its yes or no."""

import pytest
from support.dialogue import opened


@pytest.mark.parametrize(
    "line",
    [
        "no drop, sits on a platform, filter slot under it",
        "no drop, it just opens into the closet",
        "there's no drop, sits on a stand",
    ],
)
def test_no_drop_is_no_answer_about_the_trunks(line):
    told = opened("trunk_count").play(line)
    assert told.talk.job.length("return.drops") == 0
    assert told.talk.job.length("supply.trunks") is None
    assert told.key == "trunk_count"


@pytest.mark.parametrize("line", ["none, all runs come off the plenum", "no, just a box of flexes"])
def test_none_and_why_still_answers_its_own_question(line):
    assert opened("trunk_count").play(line).talk.job.length("supply.trunks") == 0


@pytest.mark.parametrize("before", [(), ("uh its complicated",)])
def test_what_is_in_the_bag_says_nothing_of_the_blower(before):
    told = opened("old_runs").play(*before, "tape, gauge but no probes")
    assert told.talk.job.word("site.has_probes") == "no"
    assert told.talk.job.word("site.has_gauge") == "yes"
    assert not told.talk.job.is_known("old.works")
    assert told.key == "old_runs"


@pytest.mark.parametrize(
    ("line", "works"),
    [
        ("old one's dead, bad board", "no"),
        ("the old blower is toast", "no"),
        ("it was shot but they fixed it", None),
        ("no, meter reads zero", "no"),
    ],
)
def test_a_dead_blower_doesnt_run(line, works):
    told = opened("old_runs").play(line)
    assert told.talk.job.word("old.works") == works


@pytest.mark.parametrize("line", ["14 round, and the supply is 18x8", "20x10. supply's 18 by 8"])
def test_the_supply_beside_the_drop_is_no_second_drop(line):
    told = opened("drop_size").play(line)
    assert told.talk.job.length("return.drops") == 1
    assert told.talk.job.number("supply.trunks.0.width_in") == 18


def test_a_safety_look_that_cant_be_read_is_not_called_a_range():
    told = opened("safety").play("purple", "purple", "purple")
    assert "nobody has said that it is safe" in told.text
    assert "range" not in told.text
