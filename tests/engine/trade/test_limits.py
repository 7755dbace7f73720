from dataclasses import fields
from math import inf, nan

import pytest

from engine.errors import FactError, OutOfRangeError
from engine.trade.limits import (
    LIMITS,
    Limit,
    Limits,
    Role,
    SpeedLimit,
    turned,
    turned_figures,
    velocity_limits,
)
from engine.trade.materials import Material

# ANSI/ACCA 1 Manual D velocity table, rigid and flexible (memory, high); grilles: contractor
# association's design figures and a grille maker's range (read).
PUBLISHED = [
    (Role.SUPPLY_TRUNK, Material.GALVANIZED, 700.0, 900.0),
    (Role.SUPPLY_TRUNK, Material.FLEX, 600.0, 700.0),
    (Role.SUPPLY_BRANCH, Material.GALVANIZED, 600.0, 900.0),
    (Role.SUPPLY_BRANCH, Material.FLEX, 600.0, 700.0),
    (Role.RETURN_TRUNK, Material.GALVANIZED, 600.0, 700.0),
    (Role.RETURN_TRUNK, Material.FLEX, 600.0, 700.0),
    (Role.RETURN_BRANCH, Material.GALVANIZED, 400.0, 700.0),
    (Role.RETURN_BRANCH, Material.FLEX, 400.0, 600.0),
    (Role.RETURN_GRILLE, Material.GALVANIZED, 500.0, 600.0),
    (Role.FILTER_GRILLE, Material.GALVANIZED, 300.0, 450.0),
    (Role.REGISTER, Material.GALVANIZED, 500.0, 700.0),
]


@pytest.mark.parametrize(("role", "material", "recommended", "maximum"), PUBLISHED)
def test_speeds_are_the_published_ones(
    role: Role, material: Material, recommended: float, maximum: float
) -> None:
    limit = velocity_limits(role, material)
    assert (limit.recommended_fpm, limit.maximum_fpm) == (recommended, maximum)


@pytest.mark.parametrize("role", list(Role))
@pytest.mark.parametrize("material", list(Material))
def test_every_role_and_material_has_ordered_limits_with_a_source(
    role: Role, material: Material
) -> None:
    limit = velocity_limits(role, material)
    assert 0.0 < limit.recommended_fpm <= limit.maximum_fpm
    assert limit.source


@pytest.mark.parametrize("role", list(Role))
def test_board_and_liner_count_as_bare_metal(role: Role) -> None:
    bare = velocity_limits(role, Material.GALVANIZED)
    assert velocity_limits(role, Material.DUCT_BOARD) == bare
    assert velocity_limits(role, Material.LINED_METAL) == bare


def test_flex_is_never_allowed_more_than_metal() -> None:
    for role in Role:
        flex = velocity_limits(role, Material.FLEX)
        metal = velocity_limits(role, Material.GALVANIZED)
        assert flex.recommended_fpm <= metal.recommended_fpm
        assert flex.maximum_fpm <= metal.maximum_fpm


def test_a_return_drop_is_limited_as_a_return_trunk() -> None:
    for material in (Material.GALVANIZED, Material.FLEX):
        drop = velocity_limits(Role.RETURN_DROP, material)
        trunk = velocity_limits(Role.RETURN_TRUNK, material)
        assert (drop.recommended_fpm, drop.maximum_fpm) == (
            trunk.recommended_fpm,
            trunk.maximum_fpm,
        )


def test_a_filter_in_a_cabinet_has_no_speed_limit() -> None:
    assert velocity_limits(Role.FILTER).maximum_fpm == inf


def test_every_figure_has_a_unit_or_a_speed_and_a_source() -> None:
    for field in fields(Limits):
        figure = getattr(LIMITS, field.name)
        assert isinstance(figure, Limit | SpeedLimit)
        assert figure.source
        if isinstance(figure, Limit):
            assert figure.unit
            assert figure.value > 0.0


def test_turning_a_figure_turns_it_alone_and_says_so() -> None:
    office = turned(LIMITS, "friction_rate_low_inwc_per_100ft", 0.05, "our office")
    office = turned(office, "return_grille.maximum_fpm", 650.0, "our office")
    assert office.friction_rate_low_inwc_per_100ft.value == 0.05
    assert velocity_limits(Role.RETURN_GRILLE, limits=office).maximum_fpm == 650.0
    assert velocity_limits(Role.RETURN_GRILLE, limits=office).source == "our office"
    assert turned_figures(office) == ("return_grille", "friction_rate_low_inwc_per_100ft")
    assert turned_figures(LIMITS) == ()
    assert velocity_limits(Role.RETURN_GRILLE).maximum_fpm == 600.0


@pytest.mark.parametrize(
    ("name", "value", "words"),
    [
        ("no_such", 1.0, "no such limit"),
        ("supply_trunk_rigid", 1000.0, "say supply_trunk_rigid"),
        ("supply_trunk_rigid.middle_fpm", 1000.0, "say supply_trunk_rigid"),
        ("long_path_ft.maximum_fpm", 400.0, "give long_path_ft alone"),
        ("supply_trunk_rigid.recommended_fpm", 950.0, "above the largest"),
    ],
)
def test_a_figure_that_cannot_be_turned_is_refused_in_words(
    name: str, value: float, words: str
) -> None:
    with pytest.raises(FactError, match=words):
        turned(LIMITS, name, value, "our office")


@pytest.mark.parametrize("value", [0.0, -3.0, nan, inf])
def test_a_limit_is_above_nothing(value: float) -> None:
    with pytest.raises(OutOfRangeError, match="long_path_ft"):
        turned(LIMITS, "long_path_ft", value, "our office")
