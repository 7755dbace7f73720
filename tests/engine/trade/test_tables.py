"""Tables of figures: complete, in order, each with a source."""

import math

import numpy as np
import pytest

from engine.errors import FactError, OutOfRangeError
from engine.physics.colebrook import friction_factor
from engine.trade.allowances import ALLOWANCES, DIRT, WET_OVER_DRY_COIL, Piece
from engine.trade.exponents import EXPONENTS, PressurePart
from engine.trade.fittings import FITTINGS, SizeClass, equivalent_length_ft, fitting
from engine.trade.limits import Role
from engine.trade.materials import MATERIALS, Material, is_flexible
from engine.trade.measuring import (
    FILTER_PRINTED,
    MEASURED_WHERE,
    MeasuredWhere,
    inside_dimension_in,
)
from engine.trade.noise import is_beyond_nc_table, noise_criterion_nc, sound_change_db


@pytest.mark.parametrize("material", list(Material))
def test_every_material_has_ordered_roughness_words_and_a_source(material: Material) -> None:
    row = MATERIALS[material]
    assert 0.0 < row.roughness_low_ft <= row.roughness_likely_ft <= row.roughness_high_ft <= 0.02
    assert row.words
    assert row.source


# Roughness categories of 2021 ASHRAE Handbook-Fundamentals ch. 21 in mm (read): medium smooth
# 0.09, medium rough 0.9; PVC and aluminum up to 0.046 and 0.061.
@pytest.mark.parametrize(
    ("material", "published_mm"),
    [
        (Material.GALVANIZED, 0.09),
        (Material.FLEX, 0.9),
        (Material.DUCT_BOARD, 0.9),
        (Material.LINED_METAL, 1.52),
        (Material.PVC, 0.046),
        (Material.ALUMINUM, 0.046),
    ],
)
def test_likely_roughness_is_the_handbooks(material: Material, published_mm: float) -> None:
    likely_mm = MATERIALS[material].roughness_likely_ft * 304.8
    assert likely_mm == pytest.approx(published_mm, rel=0.03)


def test_only_flex_is_flexible() -> None:
    assert [m for m in Material if is_flexible(m)] == [Material.FLEX, Material.FLEX_METAL]


@pytest.mark.parametrize("part", list(PressurePart))
def test_every_part_has_an_exponent_in_order(part: PressurePart) -> None:
    row = EXPONENTS[part]
    assert 1.0 < row.low <= row.likely <= row.high <= 2.0
    assert row.source


@pytest.mark.parametrize("piece", list(Piece))
def test_every_piece_has_an_allowance_in_order(piece: Piece) -> None:
    row = ALLOWANCES[piece]
    assert 0.0 < row.low_inwc <= row.likely_inwc <= row.high_inwc < 1.0
    assert row.words
    assert row.source


def test_dirt_and_water_never_help() -> None:
    assert 1.0 <= WET_OVER_DRY_COIL.low <= WET_OVER_DRY_COIL.likely <= WET_OVER_DRY_COIL.high
    for name in ("coil_drop", "filter_drop"):
        assert 1.0 <= DIRT[name].low <= DIRT[name].likely <= DIRT[name].high
    assert DIRT["wheel_airflow"].low <= DIRT["wheel_airflow"].likely <= 1.0


@pytest.mark.parametrize("key", list(FITTINGS))
def test_every_fitting_has_ordered_lengths_words_and_a_source(key: str) -> None:
    row = FITTINGS[key]
    assert row.key == key
    assert 0.0 < row.low_ft <= row.likely_ft <= row.high_ft
    assert row.coefficient is None or row.coefficient > 0.0
    assert row.words
    assert row.source


def test_square_elbows_lose_more_than_vaned_and_trunks_more_than_branches() -> None:
    square, vaned = fitting("square_elbow_trunk"), fitting("vaned_elbow")
    assert square.low_ft > vaned.high_ft
    assert square.likely_ft > fitting("square_elbow_branch").likely_ft


# Two independent ways: the remembered range against the published coefficient's length at 6 to
# 8 in and 700 fpm, whose middle must not lie outside the range by more than a quarter.
@pytest.mark.parametrize("key", ["takeoff_45", "takeoff_conical", "takeoff_straight", "wye"])
def test_coefficients_and_remembered_lengths_agree(key: str) -> None:
    row = fitting(key)
    assert row.coefficient is not None
    assert row.at is SizeClass.BRANCH
    diameter_in = np.array([6.0, 7.0, 8.0])
    reynolds = 700.0 / 60.0 * diameter_in / 12.0 / 1.62e-4
    factor = friction_factor(reynolds, 3e-4 * 12.0 / diameter_in)
    length = float(np.mean(equivalent_length_ft(row.coefficient, diameter_in, factor)))
    assert 0.75 * row.low_ft <= length <= 1.25 * row.high_ft


def test_an_unknown_fitting_is_refused_with_the_known_ones() -> None:
    with pytest.raises(FactError, match="vaned_elbow"):
        fitting("wormhole")


@pytest.mark.parametrize("place", list(MeasuredWhere))
def test_every_place_has_a_bias_within_its_range(place: MeasuredWhere) -> None:
    row = MEASURED_WHERE[place]
    assert 0.0 <= row.bias_low_in <= row.bias_in <= row.bias_high_in
    assert row.sigma_in > 0.0
    assert row.words
    assert row.source


# Worked by hand: 18 x 10 outside with 1 in liner is 16 x 8 inside, 71 % of the area.
def test_liner_is_taken_off_both_sides() -> None:
    wide = inside_dimension_in(18.0, MeasuredWhere.OUTSIDE_OF_LINER, 1.0)
    high = inside_dimension_in(10.0, MeasuredWhere.BARE_METAL, 1.0)
    assert (wide, high) == (16.0, 8.0)
    assert wide * high / 180.0 == pytest.approx(0.71, abs=0.005)


def test_inside_means_inside() -> None:
    assert inside_dimension_in(16.0, MeasuredWhere.INSIDE, 1.0) == 16.0
    assert inside_dimension_in(14.0, MeasuredWhere.HOLE) == 14.0


def test_wrap_frame_and_jacket_lose_their_mean_or_a_given_excess() -> None:
    assert inside_dimension_in(23.0, MeasuredWhere.OVER_WRAP) == 20.0
    assert inside_dimension_in(16.0, MeasuredWhere.FRAME) == 14.25
    assert inside_dimension_in(10.0, MeasuredWhere.FLEX_JACKET, bias_in=4.0) == 6.0
    assert FILTER_PRINTED.bias_low_in == 0.25


@pytest.mark.parametrize(
    ("call", "name"),
    [
        (lambda: inside_dimension_in(0.0, MeasuredWhere.INSIDE), "outside_in"),
        (lambda: inside_dimension_in(9.0, MeasuredWhere.INSIDE, math.nan), "liner_in"),
        (lambda: inside_dimension_in(9.0, MeasuredWhere.FRAME, bias_in=-1.0), "bias_in"),
        (lambda: equivalent_length_ft(-1.0, 8.0, 0.02), "coefficient"),
        (lambda: noise_criterion_nc(Role.REGISTER, -1.0), "free_velocity_fpm"),
        (lambda: sound_change_db(0.0, 500.0), "velocity_fpm"),
    ],
)
def test_the_impossible_is_refused_by_name(call: object, name: str) -> None:
    with pytest.raises(OutOfRangeError, match=name):
        call()  # type: ignore[operator]


def test_noise_is_only_told_of_openings() -> None:
    with pytest.raises(FactError, match="only for openings"):
        noise_criterion_nc(Role.SUPPLY_TRUNK, 900.0)


def test_noise_grows_with_speed_and_ends_with_its_table() -> None:
    speeds = np.linspace(0.0, 2000.0, 200)
    for role in (Role.REGISTER, Role.RETURN_GRILLE, Role.FILTER_GRILLE):
        assert np.all(np.diff(noise_criterion_nc(role, speeds)) >= 0.0)
    assert is_beyond_nc_table(Role.REGISTER, 651.0) is True
    assert is_beyond_nc_table(Role.REGISTER, 650.0) is False


def test_sound_changes_there_and_back() -> None:
    assert sound_change_db(700.0, 450.0) == pytest.approx(-sound_change_db(450.0, 700.0))
