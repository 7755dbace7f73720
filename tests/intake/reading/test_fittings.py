"""Lists of fittings: which kind each is, wherever its shape is told, and how many there are."""

import pytest

from intake.reading.read import read
from intake.reading.result import Accepted, AskBack


def listed(line: str) -> dict[str, int]:
    found = read("fittings", line)
    assert isinstance(found, Accepted), found
    return {row["kind"]: row["count"] for row in found.values["fittings"]}


SQUARE, VANED, ROUND = "square_elbow_trunk", "vaned_elbow", "round_elbow_adjustable"


@pytest.mark.parametrize(
    ("line", "kinds"),
    [
        ("3 elbows square, a boot", {SQUARE: 3, "boot_angle": 1}),
        ("3 nineties, all square", {SQUARE: 3}),
        ("two 90s square, not vaned", {SQUARE: 2}),
        ("2 elbows without vanes", {SQUARE: 2}),
        ("three 90s no turning vanes", {SQUARE: 3}),
        ("elbows: 3 square", {SQUARE: 3}),
        ("square elbow at the plenum with vanes, boot", {VANED: 1, "boot_angle": 1}),
        ("2 elbows vaned, wye", {VANED: 2, "wye": 1}),
        ("square ell, square ell", {SQUARE: 2}),
        ("hard ell, two 90 round", {SQUARE: 1, ROUND: 2}),
        ("2 vaned, 1 radius", {VANED: 2, "radius_elbow": 1}),
    ],
)
def test_the_shape_of_an_elbow_may_stand_behind_it_or_alone(line, kinds):
    assert listed(line) == kinds


@pytest.mark.parametrize(
    ("line", "kinds"),
    [
        ("2 square elbows, a round boot", {SQUARE: 2, "boot_angle": 1}),
        ("2 round elbows, square to round", {ROUND: 2, "transition_gradual": 1}),
        ("3 radius elbows no vanes", {"radius_elbow": 3}),
        ("2 elbows on the square trunk, boot", {ROUND: 2, "boot_angle": 1}),
    ],
)
def test_a_shape_that_is_something_elses_is_not_the_elbows(line, kinds):
    assert listed(line) == kinds


@pytest.mark.parametrize(
    ("line", "kinds"),
    [
        ("4 elbows, two of em square and two round", {SQUARE: 2, ROUND: 2}),
        ("4 elbows, 2 square 2 round", {SQUARE: 2, ROUND: 2}),
        ("2 square elbows, one of them vaned", {SQUARE: 1, VANED: 1}),
        ("5 nineties, three of those vaned", {ROUND: 2, VANED: 3}),
        ("4 square elbows, 2 round", {SQUARE: 4, ROUND: 2}),
    ],
)
def test_those_told_apart_are_some_of_those_counted(line, kinds):
    assert {kind: n for kind, n in listed(line).items() if n} == kinds


@pytest.mark.parametrize("line", ["4 elbows, 3 square", "2 elbows, 3 of them vaned"])
def test_elbows_told_apart_that_dont_add_up_are_asked_about(line):
    assert isinstance(read("fittings", line), AskBack)


@pytest.mark.parametrize(
    ("line", "kinds"),
    [
        ("2x sq elb, 1x tkoff", {SQUARE: 2, "takeoff_straight": 1}),
        ("2 sqaure elbos, take off, bot", {SQUARE: 2, "takeoff_straight": 1, "boot_angle": 1}),
        ("to square elbows and a boot", {SQUARE: 2, "boot_angle": 1}),
        ("1 takeoff straight tap, boot", {"takeoff_straight": 1, "boot_angle": 1}),
    ],
)
def test_short_forms_slips_and_two_names_of_one_fitting(line, kinds):
    assert listed(line) == kinds


@pytest.mark.parametrize(
    ("line", "kinds"),
    [
        ("2 square elbows, no 3", {SQUARE: 3}),
        ("2 boots, make that 3", {"boot_angle": 3}),
        ("2 square elbows, no boot", {SQUARE: 2}),
    ],
)
def test_a_count_may_be_taken_back_in_the_same_breath(line, kinds):
    assert listed(line) == kinds


@pytest.mark.parametrize(
    ("line", "kinds"),
    [
        ("no fittings besides the boot", {"boot_angle": 1}),
        ("nothing but a takeoff and a boot", {"takeoff_straight": 1, "boot_angle": 1}),
    ],
)
def test_nothing_but_is_what_follows(line, kinds):
    assert listed(line) == kinds


def test_of_elbows_denied_alone_the_others_are_still_asked():
    assert isinstance(read("fittings", "no elbows at all"), AskBack)
