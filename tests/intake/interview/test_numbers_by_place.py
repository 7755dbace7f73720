"""A number beside a place counts or measures something; only warmth told as warmth is a danger."""

import pytest
from support.dialogue import Dialogue, opened

from intake.interview.turns import Voice

DUCTS = {"trunk_count": "1", "trunk_size": "20x8 bare metal", "drop_size": "20x10 bare metal"}


def call(key: str, line: str) -> Dialogue:
    return opened(key, Voice.DISPATCHER).play(line)


@pytest.mark.parametrize(
    ("line", "sizes"),
    [
        ("one 20 by 25 upstairs and one 20 by 25 downstairs", [(20, 25), (20, 25)]),
        ("14 by 30 upstairs, 20 by 20 downstairs", [(14, 30), (20, 20)]),
        ("a 20 by 20 upstairs", [(20, 20)]),
        ("20 by 20 in the house, 14x8 upstairs", [(20, 20), (14, 8)]),
    ],
)
def test_a_side_of_an_opening_upstairs_is_no_indoor_temperature(line, sizes):
    told = call("d_openings", line)
    job = told.talk.job
    kept = [
        (job.number(f"{at}.width_in"), job.number(f"{at}.height_in"))
        for at in job.entries("return.grilles")
    ]
    assert kept == sizes, told.text
    assert not told.talk.stopped


def test_a_technicians_opening_upstairs_is_no_indoor_temperature():
    told = opened("openings", **DUCTS).play("20 by 20 upstairs and 14 by 14 down")
    assert told.talk.job.length("return.grilles") == 2, told.text


@pytest.mark.parametrize(("line", "count"), [("10 inside", 10), ("12 upstairs", 12)])
def test_vents_counted_at_a_place_are_taken(line, count):
    told = call("d_registers", line)
    assert told.talk.job.number("house.supply_registers_count") == count, told.text


def test_vents_counted_at_two_places_are_asked_to_be_added():
    told = call("d_registers", "8 upstairs and 12 in the house below")
    assert "Is that 20 in all?" in told.text


@pytest.mark.parametrize(
    ("key", "line"),
    [
        ("d_registers", "it's 45 in the house"),
        ("d_registers", "45 inside"),
        ("d_registers", "it's 20 degrees inside"),
        ("d_registers", "12 upstairs, we have no heat and grandma's here"),
        ("d_registers", "10 vents and it's 48 in here"),
        ("d_openings", "one 20 by 25 upstairs and it's 50 inside, she's 80"),
        ("d_safety", "it's 45 in the house"),
    ],
)
def test_a_cold_house_still_stops_the_call(key, line):
    assert call(key, line).talk.stopped


@pytest.mark.parametrize(
    ("line", "count"), [("one, no more", 1), ("just two, no more", 2), ("no more than one", 1)]
)
def test_no_more_behind_a_count_does_not_end_the_call(line, count):
    told = call("d_rooms", line)
    assert told.talk.job.number("symptoms.uneven_rooms_count") == count, told.text
    assert not told.talk.ended


@pytest.mark.parametrize("line", ["no more", "no more questions", "that's the last one, no more"])
def test_no_more_by_itself_still_ends_the_call(line):
    assert call("d_rooms", line).talk.ended


@pytest.mark.parametrize(
    "line",
    [
        "there's water all around the furnace on the floor, not by any wires",
        "there's a puddle by the furnace, nowhere near the wiring",
    ],
)
def test_water_away_from_wires_is_asked_about(line):
    told = call("d_safety", line)
    assert told.state.doubt, told.text
    assert not told.talk.stopped


@pytest.mark.parametrize(
    "line",
    [
        "water is dripping on the panel",
        "water on the floor, not on the panel but the wires are wet",
    ],
)
def test_water_on_wires_stops(line):
    assert call("d_safety", line).talk.stopped
