"""Choices by their nicknames, slips and denials."""

import pytest

from intake.reading.materials import MATERIALS
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, Unknown

BLOWERS = ("psc", "ecm_constant_torque", "ecm_variable", "other")
COILS = ("clean", "some_dirt", "plugged")


def choice(field: str, text: str, choices: tuple[str, ...]) -> object:
    reading = read(field, text, choices=choices)
    assert isinstance(reading, Accepted), reading
    return reading.values["choice"]


@pytest.mark.parametrize(
    ("text", "material"),
    [
        ("accordion tube", "flex"), ("hard pipe", "galvanized"), ("rings when i tap it",
        "galvanized"),
        ("white plastic pipe", "pvc"), ("sheet metal nailed under the joists", "panned_joist"),
        ("grey fluffy stuff inside", "lined_metal"), ("foil-faced board", "duct_board"),
        ("metal wrapped in insulation", "galvanized"), ("flexible metal", "flex"), ("flxe", "flex"),
        ("galvinized", "galvanized"), ("number two", "flex"), ("1", "galvanized"),
        ("just the inside of the wall", "stud_bay"),
    ],
)  # fmt: skip
def test_a_material_is_read_by_its_nickname(text, material):
    assert choice("material", text, MATERIALS) == material


@pytest.mark.parametrize(
    "text",
    ["fiberglass", "insulated", "metal and flex", "not flex", "silver", "cardboard", "round pipe"],
)
def test_an_ambiguous_material_is_asked(text):
    assert isinstance(read("material", text, choices=MATERIALS), AskBack)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("p.s.c.", "psc"), ("pee ess see", "psc"), ("3-speed", "psc"), ("not an ecm", "psc"),
        ("five tap ecm", "ecm_constant_torque"), ("constant talk", "ecm_constant_torque"),
        ("non-variable ECM", "ecm_constant_torque"), ("not variable, the other ecm",
        "ecm_constant_torque"),
        ("very able speed", "ecm_variable"), ("constant cfm", "ecm_variable"), ("has a belt",
        "other"),
    ],
)  # fmt: skip
def test_a_blower_is_read_by_its_nickname(text, kind):
    assert choice("blower_type", text, BLOWERS) == kind


@pytest.mark.parametrize(
    "text", ["ecm", "electronically commutated", "brushless", "psc or ecm", "direct drive"]
)
def test_an_ambiguous_blower_is_asked(text):
    assert isinstance(read("blower_type", text, choices=BLOWERS), AskBack)


def test_a_blower_door_is_no_blower():
    assert isinstance(
        read("blower_type", "havent pulled the blower door", choices=BLOWERS), Unknown
    )


@pytest.mark.parametrize(
    ("text", "state"),
    [
        ("like new", "clean"), ("not dirty", "clean"), ("a little dusty", "some_dirt"),
        ("not plugged, just dusty", "some_dirt"), ("dirty but not plugged", "some_dirt"),
        ("packed with lint", "plugged"), ("can't see light through it", "plugged"), ("2",
        "some_dirt"),
    ],
)  # fmt: skip
def test_a_coil_is_read_by_how_it_looks(text, state):
    assert choice("coil_state", text, COILS) == state


@pytest.mark.parametrize(
    "text",
    ["dirty", "filthy", "half blocked", "bottom third is plugged", "ok", "iced up", "no coil"],
)
def test_an_ambiguous_coil_is_asked(text):
    assert isinstance(read("coil_state", text, choices=COILS), AskBack)


@pytest.mark.parametrize("text", ["can't see it", "cant see it, its cased", "have not looked"])
def test_an_unseen_coil_is_unknown(text):
    assert isinstance(read("coil_state", text, choices=COILS), Unknown)


def test_a_weak_word_in_a_long_sentence_is_no_coil():
    assert not isinstance(read("coil_state", "turn left at the light", choices=COILS), Accepted)


PLACES = ("basement=cellar|down cellar", "attic=loft|up top", "crawl_space=under the house")


@pytest.mark.parametrize(
    ("text", "key"),
    [("cellar", "basement"), ("in the atic", "attic"), ("under the house", "crawl_space"),
    ("the crawl", "crawl_space"),
     ("the second one", "attic"), ("3", "crawl_space"), ("not the attic or the crawl space",
     "basement")],
)  # fmt: skip
def test_any_choice_is_read_by_key_synonym_slip_or_number(text, key):
    assert choice("choice", text, PLACES) == key


def test_two_choices_are_asked():
    assert isinstance(read("choice", "attic and basement", choices=PLACES), AskBack)
