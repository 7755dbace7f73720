"""Filters and grilles as typed."""

import pytest

from intake.reading.read import read
from intake.reading.result import Accepted, AskBack


def accepted(field: str, text: str) -> dict[str, object]:
    reading = read(field, text)
    assert isinstance(reading, Accepted), reading
    return dict(reading.values)


def filter_(width: float, height: float, depth: float, **more: object) -> dict[str, object]:
    return {"width_in": width, "height_in": height, "depth_in": depth, **more}


@pytest.mark.parametrize(
    "text",
    [
        "16x25x1", "16 by 25 by 1", "16-25-1", "16/25/1", "16,25,1", "16 25 1", "16x25, 1 inch",
        "sixteen twenty-five one", "1x16x25", '1" 16x25', "16 x 25 x 1 pleated",
        "16 by 25, one inch thick",
    ],
)  # fmt: skip
def test_a_filter_is_read_in_any_order_and_spelling(text):
    assert accepted("filter", text) == filter_(16.0, 25.0, 1.0)


def test_a_depth_that_is_not_said_is_not_invented():
    assert accepted("filter", "16x25") == {"width_in": 16.0, "height_in": 25.0}


@pytest.mark.parametrize(
    "text",
    ["two 14x20x1", "14x20x1 x 2", "14x20x1 (x2)", "14x20x1, 2 of em", "two filters, 14x20x1",
     "a pair of 14x20x1s", "2 filters 14x20x1 each"],
)  # fmt: skip
def test_a_count_of_filters_is_read(text):
    assert accepted("filter", text) == filter_(14.0, 20.0, 1.0, count=2)


def test_the_merv_is_read_on_either_side():
    assert accepted("filter", "12x24x1 merv 10")["merv"] == 10
    assert accepted("filter", "merv13 16x25x4")["merv"] == 13
    assert "merv" not in accepted("filter", "MPR 1500 20x20x1")


def test_the_pronoun_one_is_no_size():
    assert accepted("filter", 'the 5" one, 16x25') == filter_(16.0, 25.0, 5.0)


@pytest.mark.parametrize(
    "text",
    ["charcoal type", "4 inch media", "20x20x25", "20x25x4 and 16x25x1", "16x25x1 or 16x20x1",
    "1625",
     "16x25x1 merv 50", "none", "14x14x1 and another one just like it", "400x500x50", "FPR 7"],
)  # fmt: skip
def test_an_unclear_filter_is_asked(text):
    assert isinstance(read("filter", text), AskBack)


def test_grilles_in_several_rooms_become_a_list():
    assert accepted("grille", "18x18 upstairs plus two 10x6 in the den") == {
        "grilles": [
            {"width_in": 18.0, "height_in": 18.0, "count": 1},
            {"width_in": 10.0, "height_in": 6.0, "count": 2},
        ]
    }


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("30x8 x2, 14x8 x1", [2, 1]), ("10x6 two, 14x8 one", [2, 1]), ("30x8 30x8 14x6", [1, 1, 1]),
        ("three 30x6, one 14x14", [3, 1]), ("3 grilles: 14x6, 14x6, 20x20", [1, 1, 1]),
        ("18 by 18 upstairs and 2 ten by sixes in the den", [1, 2]),
        ("hall 20x30, master 10x8 and 2 in the basement 14x6", [1, 1, 2]),
    ],
)  # fmt: skip
def test_each_grille_has_its_own_count(text, counts):
    rows = accepted("grille", text)["grilles"]
    assert [row["count"] for row in rows] == counts


@pytest.mark.parametrize(
    ("text", "count"),
    [("two 14x20", 2), ("14x20(2)", 2), ("2 of them, 14x20", 2), ("two of them, 14x20 each", 2)],
)
def test_a_count_of_one_size_is_read(text, count):
    assert accepted("grille", text) == {"width_in": 14.0, "height_in": 20.0, "count": count}


@pytest.mark.parametrize(
    "text",
    ["medium size", "20 inch", "30 x 8 or 28x6 hole", "20x20x1",
    "a 20x20 and another one i cant "
     "measure", "16x16 or 18x18", "14x6 in each bedroom", "60x60",
     "3 grilles 14x6 and 20x20"],
)  # fmt: skip
def test_an_unclear_grille_is_asked(text):
    assert isinstance(read("grille", text), AskBack)


@pytest.mark.parametrize(
    "text",
    ["30 x 8 frame, 28x6 hole", "28x6 slots, the frame is 30x8", "28 x 6, with the frame 30x8"],
)
def test_the_opening_is_taken_beside_its_frame(text):
    assert accepted("grille", text) == {"width_in": 28.0, "height_in": 6.0}


@pytest.mark.parametrize(
    "text",
    [
        "14x6 in each of 3 bedrooms",
        "one 14x6 per bedroom, three bedrooms",
        "14x6 floor vents times 3",
    ],
)
def test_openings_are_counted_by_their_rooms(text):
    assert accepted("grille", text) == {"width_in": 14.0, "height_in": 6.0, "count": 3}


@pytest.mark.parametrize(
    ("text", "place"), [("just the slots, 14x18", "slots"), ("30x8 over the frame", "frame")]
)
def test_frame_or_slots_is_kept(text, place):
    reading = read("grille", text)
    assert isinstance(reading, Accepted)
    assert reading.place == place


@pytest.mark.parametrize("text", ["14x6 each room", "a few 14x6", "one 14x6, rest are 12x6"])
def test_openings_that_are_not_counted_are_asked(text):
    assert isinstance(read("grille", text), AskBack)
