"""A correction in free words rewrites the answer before, and keeps what it doesn't speak of."""

import pytest
from support.dialogue import Dialogue


def at_the_tape() -> Dialogue:
    told = Dialogue().answer(
        safety="no",
        new_equipment="3 ton single stage heat pump, 1200 cfm",
        heat_pump_cfm="same",
        strip_cfm="none",
        blower_table="skip",
        blower_kind="psc",
        old_runs="yes",
        tools="tape and gauge",
        weather="yes",
    )
    told.play("one", "20x8 lined")
    assert told.key == "trunk_where", told.text
    return told


@pytest.mark.parametrize(
    ("line", "size", "lined"),
    [
        ("misread the tape, it's 22x8", (22.0, 8.0), False),
        ("22x8, i wrote 20x8 by mistake", (22.0, 8.0), False),
        ("just remeasured that one, its 22x8", (22.0, 8.0), False),
        ("strike that and put 24x8", (24.0, 8.0), False),
        ("change that last one to 24x8", (24.0, 8.0), False),
        ("the 8 should be a 10", (20.0, 10.0), True),
        ("it's 10 not 8", (20.0, 10.0), True),
    ],
)
def test_the_answer_before_is_rewritten(line, size, lined):
    told = at_the_tape().play(line)
    job = told.talk.job
    sides = (job.number("supply.trunks.0.width_in"), job.number("supply.trunks.0.height_in"))
    assert "Corrected." in told.text
    assert sides == size
    assert ("lined" in told.text) is lined
    assert told.replayed() == told.state


def test_a_material_that_is_taken_back_leaves_the_size():
    told = at_the_tape().play("not lined, it's bare metal")
    assert "Supply trunk: 20 x 8 in. bare metal." in told.text


def test_an_answer_to_the_open_question_corrects_nothing():
    told = at_the_tape().play("outside on the metal")
    assert "Corrected." not in told.text
