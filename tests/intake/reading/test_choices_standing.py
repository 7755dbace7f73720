"""A material, motor or coil by what stands now, not by what was, was said or was thought."""

import pytest

from intake.reading.corpus import read_line
from intake.reading.materials import MATERIALS

BLOWERS = ["psc", "ecm_constant_torque", "ecm_variable", "other"]
COILS = ["clean", "some_dirt", "plugged"]
CHOICES = {"material": list(MATERIALS), "blower_type": BLOWERS, "coil_state": COILS}


def choice(field: str, text: str) -> object:
    got = read_line({"field": field, "text": text, "choices": CHOICES[field]})
    return got["expect"]["choice"] if got["outcome"] == "accept" else got["outcome"]


@pytest.mark.parametrize(
    ("field", "text", "right"),
    [
        ("material", "was flex, we swapped it for hard pipe", "galvanized"),
        ("material", "used to be board they tore it out for spiral", "galvanized"),
        ("blower_type", "psc originally, variable now", "ecm_variable"),
        ("coil_state", "was clean last year now its plugged", "plugged"),
        ("coil_state", "i cleaned it last year, its got fuzz again", "some_dirt"),
        ("coil_state", "was plugged, the other tech washed it this morning", "clean"),
        ("coil_state", "it was clean last year", "ask"),
    ],
)
def test_what_is_now_stands_before_what_was(field, text, right):
    assert choice(field, text) == right


@pytest.mark.parametrize(
    ("field", "text", "right"),
    [
        ("material", "i thought flex but its metal", "galvanized"),
        ("material", "the guy before said board but i see tin", "galvanized"),
        ("coil_state", "customer says its clean but its packed solid", "plugged"),
        ("coil_state", "they told me it was clean, it isnt", "ask"),
        ("blower_type", "customer thinks its variable, i see a run cap so psc", "psc"),
    ],
)
def test_what_is_seen_stands_before_what_is_said(field, text, right):
    assert choice(field, text) == right


@pytest.mark.parametrize(
    ("field", "text", "right"),
    [
        ("coil_state", "not clean not terrible", "some_dirt"),
        ("coil_state", "neither clean nor plugged", "some_dirt"),
        ("coil_state", "not clean", "ask"),
        ("coil_state", "not plugged", "ask"),
        ("material", "anything but flex", "ask"),
        ("material", "flex? no. hard pipe", "galvanized"),
        ("material", "metal... correction flex... no metal", "ask"),
        ("blower_type", "psc... no scratch that, constant torque", "ecm_constant_torque"),
    ],
)
def test_what_is_denied_or_taken_back_is_not_taken(field, text, right):
    assert choice(field, text) == right


def test_insulation_around_metal_is_no_liner():
    said = "regular metal but they insulated it on the outside"
    assert choice("material", said) == "galvanized"
    assert choice("material", "metal, insulated on the inside") == "lined_metal"
