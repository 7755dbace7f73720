"""Returns made of the house's framing: named first, counted and taped when asked."""

import pytest
from support.dialogue import opened

from engine.job.belief import How
from intake.interview.bays import framing_size
from intake.interview.turns import Manner


def bay(told, name):
    return told.talk.job.number(f"return.trunks.0.{name}")


@pytest.mark.parametrize(
    ("line", "count"),
    [
        ("panned joists, 3 bays", 3),
        ("3 joist bays", 3),
        ("panned joists, like 3 of them", 3),
        ("yes, two joist bays", 2),
        ("just the joist bays", None),
        ("theyre panned", None),
        ("its just stud bays", None),
        ("sheet metal nailed under the joists", None),
    ],
)
def test_bays_named_without_a_size_are_taken_and_the_rest_is_asked(line, count):
    told = opened("return_trunk").play(line)
    size = told.talk.job.stated("return.trunks.0.width_in")
    assert size is not None
    assert size.how is How.ASSUMED
    assert "taken as the usual 14.5 x" in told.lines(Manner.ECHO)[0]
    if count is None:
        assert told.key == "return_bays"
        told.play("2")
    assert told.key == "return_bay_size"
    assert bay(told, "count") == (count or 2)
    told.play("14 x 9")
    assert (bay(told, "width_in"), bay(told, "height_in")) == (14, 9)
    assert bay(told, "count") == (count or 2)
    assert told.talk.job.word("return.trunks.0.material") in ("panned_joist", "stud_bay")
    assert told.key == "run_supply"
    assert told.replayed() == told.state


def test_a_bay_nobody_can_tape_keeps_the_usual_size():
    told = opened("return_trunk").play("panned joists, 3 bays", "can't tell")
    assert told.key == "run_supply"
    assert bay(told, "count") == 3
    assert bay(told, "width_in") == 14.5


def test_count_and_size_may_come_together_where_the_count_is_asked():
    told = opened("return_trunk").play("panned", "3 bays, 14 x 9")
    assert (bay(told, "count"), bay(told, "width_in"), bay(told, "height_in")) == (3, 14, 9)
    assert told.key == "run_supply"


def test_one_side_of_a_bay_is_no_round_duct():
    told = opened("return_trunk").play("joist bay 14 inch")
    assert told.lines(Manner.ASK_BACK) == ["I have one side of the bay, 14 in. What is the other?"]
    told.play("9")
    assert (bay(told, "width_in"), bay(told, "height_in")) == (14, 9)


def test_a_bay_with_its_size_needs_no_second_question_for_it():
    told = opened("return_trunk").play("3 joist bays, 14.5x9.25")
    assert (bay(told, "count"), bay(told, "width_in")) == (3, 14.5)
    assert told.key == "run_supply"


# Dressed sizes: American Softwood Lumber Standard PS 20 (memory): a nominal 2 in. is 1.5 in. thick,
# a nominal 4, 6, 8, 10, 12 in. is 3.5, 5.5, 7.25, 9.25, 11.25 in. deep.
@pytest.mark.parametrize(
    ("line", "wide", "deep"),
    [
        ("2x10 joists, 16 on center", 14.5, 9.25),
        ("2x8s", 14.5, 7.25),
        ("2x12 24 oc", 22.5, 11.25),
        ("2 by 4 studs", 14.5, 3.5),
    ],
)
def test_lumber_tells_the_size_of_a_bay(line, wide, deep):
    found = framing_size(line)
    assert found is not None
    assert (found.values["width_in"], found.values["height_in"]) == (wide, deep)
    told = opened("return_trunk").play("panned, 2 bays", line)
    assert (bay(told, "width_in"), bay(told, "height_in"), bay(told, "count")) == (wide, deep, 2)


def test_lumber_told_with_the_bays_is_their_size():
    told = opened("return_trunk").play("panned 2x10 joists, 2 bays")
    assert (bay(told, "width_in"), bay(told, "height_in"), bay(told, "count")) == (14.5, 9.25, 2)
