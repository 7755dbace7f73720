"""A value that is said but doesn't stand is asked about; what the text puts beside it is taken."""

from __future__ import annotations

import pytest

from intake.reading.frames import Frame, framed
from intake.reading.other_things import is_other_thing
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, Command, Rejected

VALUES = {
    "duct": "20x8",
    "airflow": "1200 cfm",
    "static_pressure": "0.5",
    "length": "40 ft",
    "temperature": "75",
    "capacity": "80,000 btu",
    "efficiency": "92%",
    "filter": "16x25x1",
    "grille": "20x20",
    "elevation": "1200 ft",
    "area": "1800 sq ft",
    "percent": "30%",
}
NOT_STANDING = [
    "used to be {}", "it used to be {} before", "was {} before the remodel", "it's not {}",
    "it isn't {}", "definitely not {}", "I doubt it's {}", "no way it's {}", "nowhere near {}",
    "the neighbor's is {}", "my brother's house has {}", "the other unit is {}",
    "if it's the big one it's {}", "{} unless they changed it", "is it {}?", "could it be {}?",
    "it says {} but I don't believe it", "{} but that's wrong", "{}, no that's not right",
    "forget {}", "don't write down {}", "two years ago it was {}",
]  # fmt: skip
STANDING = [
    "{}", "not sure but {}", "I don't know, {}", "{} if I remember right", "{} if that helps",
    "{} if the label is right", "it was {}", "{} now", "I never checked but {}", "call it {}",
]  # fmt: skip


@pytest.mark.parametrize("field", VALUES)
@pytest.mark.parametrize("said", NOT_STANDING)
def test_a_value_that_does_not_stand_is_never_taken(field: str, said: str) -> None:
    found = read(field, said.format(VALUES[field]))
    assert isinstance(found, AskBack | Rejected | Command), found


@pytest.mark.parametrize("field", VALUES)
@pytest.mark.parametrize("said", STANDING)
def test_doubt_and_courtesy_leave_a_value_standing(field: str, said: str) -> None:
    plain = read(field, VALUES[field])
    found = read(field, said.format(VALUES[field]))
    assert isinstance(plain, Accepted)
    assert isinstance(found, Accepted), found
    assert found.values == plain.values


@pytest.mark.parametrize(
    ("field", "text", "value"),
    [
        ("duct", "used to be 20x8 but now 24x8", {"width_in": 24.0}),
        ("duct", "the plans say 20x8 but I measured 18x8", {"width_in": 18.0}),
        ("duct", "grille is 20x20 but the duct is 16x8", {"width_in": 16.0}),
        ("airflow", "was 900 on the old motor, reads 1240 now", {"cfm": 1240.0}),
        ("airflow", "should be 1200 i got 1040", {"cfm": 1040.0}),
        ("capacity", "was a 3 ton, now it's a 4 ton", {"btuh": 48_000.0}),
        ("static_pressure", "not .6, .06", {"inwc": 0.06}),
        ("temperature", "was 80 this morning, 74 now", {"degF": 74.0}),
        ("filter", "was running a 20x20x1 now a 20x25x4", {"depth_in": 4.0}),
        ("grille", "old ones were 10x6, got swapped for 24x14", {"width_in": 24.0}),
        ("blower_type", "swapped the psc for a variable speed", {"choice": "ecm_variable"}),
        ("material", "it was flex, all hard galv pipe now", {"choice": "galvanized"}),
    ],
)
def test_what_stands_beside_it_is_taken(field: str, text: str, value: dict[str, object]) -> None:
    found = read(field, text)
    assert isinstance(found, Accepted), found
    assert value.items() <= found.values.items()


@pytest.mark.parametrize(
    ("text", "frame"),
    [
        ("it isn't 20x8", Frame.DENIED),
        ("used to be 20x8", Frame.PAST),
        ("my neighbor has 20x8", Frame.ANOTHERS),
        ("20x8 if it's the supply", Frame.CONDITIONAL),
        ("is it 20x8?", Frame.ASKED),
        ("20x8, that can't be right", Frame.TAKEN_BACK),
        ("we want 20x8", Frame.WISHED),
        ("the room is 20x18", Frame.OTHER_THING),
    ],
)
def test_each_frame_is_told_from_the_others(text: str, frame: Frame) -> None:
    found = framed("duct", text)
    assert found is not None
    assert found.frame is frame
    assert found.rest == ""


@pytest.mark.parametrize("text", ["20x8", "20x8 galv 30 ft", "18 by 8, lined", "not sure, 20x8"])
def test_a_plain_answer_has_no_frame(text: str) -> None:
    assert framed("duct", text) is None


@pytest.mark.parametrize(
    ("field", "text", "other"),
    [
        ("duct", "24x24 return grille", True),
        ("duct", "20x8 to the grille", False),
        ("duct", "28x10 sheet metal", False),
        ("grille", "12x12 bedroom", False),
        ("grille", "the window is 30x40", True),
        ("filter", "the trunk is 16x25", True),
        ("length", "the room is 12x14", False),
    ],
)
def test_a_size_belongs_to_the_thing_it_is_told_of(field: str, text: str, other: bool) -> None:
    assert is_other_thing(field, text) is other
