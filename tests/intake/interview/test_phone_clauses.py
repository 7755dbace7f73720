"""Several answers of a call in one breath, and answers out of place."""

import pytest
from support.dialogue import Dialogue, opened

from intake.interview.turns import Manner, Voice

VENTS = "house.supply_registers_count"
ROOMS = "symptoms.uneven_rooms_count"
PLACE = "house.duct_location"
NOISE = "phone.return_noise"
DOORS = "symptoms.doors_move"


def said(told: Dialogue, key: str) -> object:
    return told.talk.job.value(key)


@pytest.mark.parametrize(
    ("key", "line", "facts"),
    [
        ("d_registers", "12, most ducts in the attic", {VENTS: 12.0, PLACE: "attic"}),
        ("d_registers", "nine, it's loud by the return", {VENTS: 9.0, NOISE: "louder"}),
        ("d_registers", "ten, no rooms are off", {VENTS: 10.0, ROOMS: 0.0}),
        ("d_rooms", "two, and doors whistle", {ROOMS: 2.0, DOORS: "yes"}),
        (
            "d_rooms",
            "none, no doors move either, and it's whisper quiet",
            {ROOMS: 0.0, DOORS: "no", NOISE: "whisper"},
        ),
        ("d_rooms", "2, she'll text the photos", {ROOMS: 2.0, "phone.photos": "yes"}),
        (
            "d_rooms",
            "no rooms bad but the noise is terrible, they shout",
            {ROOMS: 0.0, NOISE: "shout"},
        ),
        (
            "d_openings",
            "she measured 30 by 10, 11 vents blow, and two rooms are never right",
            {"return.grilles.0.width_in": 30.0, VENTS: 11.0, ROOMS: 2.0},
        ),
        (
            "d_openings",
            "20x20. the filter is 20x20x1. 10 vents blow.",
            {"return.grilles.0.width_in": 20.0, "filters.0.depth_in": 1.0, VENTS: 10.0},
        ),
        (
            "d_openings",
            "30x12 with a 16x20x1 filter behind it",
            {"return.grilles.0.width_in": 30.0, "filters.0.width_in": 16.0},
        ),
        (
            "d_openings",
            "two, 20x20 and 14x30, and 12 vents blow",
            {"return.grilles.1.height_in": 30.0, VENTS: 12.0},
        ),
        (
            "d_filter",
            "20x25x4, and she counted 12 vents blowing",
            {"filters.0.depth_in": 4.0, VENTS: 12.0},
        ),
        (
            "d_filter",
            "16x25x1, attic for the ducts",
            {"filters.0.width_in": 16.0, PLACE: "attic"},
        ),
        (
            "d_tons",
            "3 ton, ducts both ways",
            {"old.cooling_tons": 3.0, "phone.trunk_directions": "both"},
        ),
        (
            "d_ways",
            "one way only, by the way it's eleven vents that blow",
            {"phone.trunk_directions": "one", VENTS: 11.0},
        ),
        (
            "d_trunk",
            "twenty by eight no make that twenty four by eight and it leaves both ways",
            {"supply.trunks.0.width_in": 24.0, "phone.trunk_directions": "both"},
        ),
        (
            "d_change",
            "AC only, 3 ton, house is 1,700 square feet",
            {
                "phone.change": "cooling_only",
                "old.cooling_tons": 3.0,
                "house.floor_area_ft2": 1700.0,
            },
        ),
        (
            "d_area",
            "1450, she says scratch what she said, it's bigger equipment they want",
            {"house.floor_area_ft2": 1450.0, "phone.change": "bigger"},
        ),
    ],
)
def test_every_clause_answers_the_question_that_it_names(key, line, facts):
    told = opened(key, Voice.DISPATCHER).play(line)
    assert {fact: said(told, fact) for fact in facts} == facts, told.text


@pytest.mark.parametrize(
    ("before", "line", "facts"),
    [
        (
            {"d_filter": "16x25x1"},
            "eleven and the filter's 20x25x1 not 16x25x1",
            {VENTS: 11.0, "filters.0.width_in": 20.0},
        ),
        (
            {"d_tons": "3 ton"},
            "11. ah and she says the tonnage is 3.5 not 3",
            {VENTS: 11.0, "old.cooling_tons": 3.5},
        ),
    ],
)
def test_an_answer_and_a_correction_in_one_line_are_both_kept(before, line, facts):
    told = opened("d_registers", Voice.DISPATCHER, **before).play(line)
    assert {fact: said(told, fact) for fact in facts} == facts, told.text


@pytest.mark.parametrize(
    ("key", "line", "fact", "value"),
    [
        ("d_noise", "ducts are in the crawl not the attic", PLACE, "crawlspace"),
        ("d_location", "it did freeze once, she remembers now", "phone.trouble", "once"),
        ("d_location", "they want it bigger actually", "phone.change", "bigger"),
        ("d_location", "tons are 3.5 actually", "old.cooling_tons", 3.5),
    ],
)
def test_an_answer_to_another_question_leaves_the_open_one_open(key, line, fact, value):
    told = opened(key, Voice.DISPATCHER).play(line)
    assert said(told, fact) == value, told.text
    assert key not in told.state.answered
    assert key not in told.state.unsaid


@pytest.mark.parametrize(
    ("key", "line", "fact"),
    [
        ("d_registers", "12, the neighbor's ducts are in the attic", PLACE),
        ("d_rooms", "2, the compressor outside is loud", NOISE),
        ("d_registers", "9, the filter is dirty", "filters.0.width_in"),
        ("d_location", "basement, room doors are oak", DOORS),
        ("d_openings", "20x20 in the loud room", NOISE),
    ],
)
def test_words_of_another_question_that_answer_nothing_there_are_not_taken(key, line, fact):
    told = opened(key, Voice.DISPATCHER).play(line)
    assert not told.talk.job.is_known(fact), told.text


def test_a_question_of_the_callers_is_answered_like_the_dispatchers():
    told = opened("d_area", Voice.DISPATCHER).play("she asks why you need that")
    why = opened("d_area", Voice.DISPATCHER).play("why?")
    assert told.lines(Manner.HELP) == why.lines(Manner.HELP)
    assert told.key == "d_area"
