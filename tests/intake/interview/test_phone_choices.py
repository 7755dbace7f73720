"""Choices and yes or no of a call: ways, places, noise, doors, hoses, photos."""

import pytest
from support.dialogue import Dialogue, opened

from intake.interview.turns import Voice


def word(key: str, line: str, **before: str) -> tuple[Dialogue, object]:
    told = opened(key, Voice.DISPATCHER, **before).play(line)
    facts = {
        "d_ways": "phone.trunk_directions",
        "d_location": "house.duct_location",
        "d_noise": "phone.return_noise",
        "d_doors": "symptoms.doors_move",
        "d_flex": "phone.flex_seen",
        "d_photos": "phone.photos",
    }
    return told, told.talk.job.word(facts[key])


@pytest.mark.parametrize(
    ("line", "ways"),
    [
        ("right and left", "both"),
        ("one big one out the front and a small one out the back", "both"),
        ("two, one each side", "both"),
        ("one heads north, the other south", "both"),
        ("only to the left", "one"),
        ("just the one, goes toward the back", "one"),
        ("left, not right", "one"),
        ("neither, it's a bunch of round pipes off the top", None),
    ],
)
def test_two_sides_are_both_ways(line, ways):
    told, found = word("d_ways", line)
    assert found == ways, told.text
    assert told.key != "d_ways"


@pytest.mark.parametrize(
    ("line", "place"),
    [
        ("mostly basement, a few go up in the attic", "basement"),
        ("some attic but most are in the crawl", "crawlspace"),
        ("mostly crawlspace, unit itself is in the garage", "crawlspace"),
        ("the furnace is in the garage, ducts are up in the attic", "attic"),
        ("all in the basement ceiling", "basement"),
        ("bsmt", "basement"),
        ("no basement, no crawl so has to be up top", "attic"),
    ],
)
def test_where_most_ducts_run(line, place):
    told, found = word("d_location", line)
    assert found == place, told.text


@pytest.mark.parametrize("line", ["half attic half basement", "attic or garage, one of them"])
def test_two_places_without_a_most_are_asked_about(line):
    told, found = word("d_location", line)
    assert found is None
    assert told.key == "d_location"


@pytest.mark.parametrize(
    ("line", "level"),
    [
        ("no need to raise your voice at all", "whisper"),
        ("could hear a pin drop", "whisper"),
        ("you barely know it is on", "whisper"),
        ("gotta raise her voice", "louder"),
        ("loud but no need to shout", "louder"),
        ("he's practically yelling", "shout"),
        ("he has to shout, real loud roar at the grille", "shout"),
        ("can't hold a conversation there", "shout"),
    ],
)
def test_how_loud_it_is_beside_the_return(line, level):
    told, found = word("d_noise", line)
    assert found == level, told.text


@pytest.mark.parametrize(
    ("line", "moves"),
    [
        ("no whistling but the laundry door moves by itself", "yes"),
        ("the bathroom door sucks shut", "yes"),
        ("whistles a bit", "yes"),
        ("no, doors are fine", "no"),
        ("not that she's noticed", "no"),
        ("nope, solid doors", "no"),
        ("nothing moves", "no"),
    ],
)
def test_one_door_that_moves_is_a_yes(line, moves):
    told, found = word("d_doors", line)
    sure = told.talk.job.stated("symptoms.doors_move")
    assert found == moves or f"Doors move: {moves}, not sure" in told.text, (told.text, sure)


def test_a_door_that_only_the_wind_moves_is_asked_about():
    told, found = word("d_doors", "only when windows are open")
    assert found is None
    assert told.key == "d_doors"


@pytest.mark.parametrize(
    ("line", "flex"),
    [
        ("he hasn't been up there in years", None),
        ("nobody's stuck their head up there", None),
        ("nah all sheet metal", "no"),
        ("shiny flex hoses", "yes"),
        ("silver snakes", "yes"),
    ],
)
def test_who_never_looked_says_nothing_of_hoses(line, flex):
    told, found = word("d_flex", line, d_location="attic")
    assert found == flex, told.text
    assert told.key != "d_flex"


@pytest.mark.parametrize(
    ("line", "comes"),
    [
        ("will do", "yes"),
        ("she'll have my brother do it", "yes"),
        ("tomorrow morning", "yes"),
        ("not today but tomorrow yes", "yes"),
        ("nah she'd rather not", "no"),
        ("can't, no camera", None),
        ("she has a flip phone", None),
    ],
)
def test_photos_come_by_whose_hand_and_whenever_it_may_be(line, comes):
    told, found = word("d_photos", line)
    assert found == comes or (comes is None and found == "no"), told.text
