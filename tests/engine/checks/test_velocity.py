"""Speeds in ducts, by hand: airflow x share x 144 / square inches."""

import pytest
from support.houses import SOUND, cooling, facts, finding

from engine.verdict import FindingStatus, Harm, Part

FINE, TIGHT, OVER = FindingStatus.FINE, FindingStatus.TIGHT, FindingStatus.OVER


def trunk(**size):
    return finding(cooling(facts(supply__trunks=[size])), "trunk_velocity")


# Residential duct standard (memory): rigid supply trunk 700 / 900, flex 600 / 700 fpm.
TRUNKS = [
    # 1,000 x 144 / 240
    ({"width_in": 24, "height_in": 10}, 600.0, 700, 900, FINE),
    # 1,000 x 144 / 160, just at the limit
    ({"width_in": 20, "height_in": 8}, 900.0, 700, 900, TIGHT),
    # 1,000 x 144 / 152
    ({"width_in": 19, "height_in": 8}, 947.4, 700, 900, OVER),
    # liner: (20 - 2) x (12 - 2) = 180 sq in.
    ({"width_in": 20, "height_in": 12, "liner_in": 1}, 800.0, 700, 900, TIGHT),
    # 3.1416 x 16 x 16 / 4 = 201.06 sq in. of flex
    ({"diameter_in": 16, "material": "flex"}, 716.2, 600, 700, OVER),
    # duct board counts as metal
    ({"width_in": 20, "height_in": 10, "material": "duct_board"}, 720.0, 700, 900, TIGHT),
    # flat oval 24 x 8: 3.1416 x 64 / 4 + 8 x 16 = 178.27 sq in.
    ({"shape": "oval", "width_in": 24, "height_in": 8}, 807.8, 700, 900, TIGHT),
    # two of 14 x 8 in one section: 224 sq in.
    ({"width_in": 14, "height_in": 8, "count": 2}, 642.9, 700, 900, FINE),
    # half of the air stated
    ({"width_in": 20, "height_in": 8, "share_fraction": 0.5}, 450.0, 700, 900, FINE),
]


@pytest.mark.parametrize(("size", "fpm", "recommended", "maximum", "status"), TRUNKS)
def test_a_trunks_speed_and_status(size, fpm, recommended, maximum, status) -> None:
    found = trunk(**size)
    assert found.figure == pytest.approx(fpm, abs=0.1)
    assert (found.recommended, found.maximum) == (recommended, maximum)
    assert found.status is status
    assert found.harm is Harm.NOISE
    assert found.part is Part.SUPPLY_TRUNK


def test_the_formula_shows_its_numbers() -> None:
    assert trunk(width_in=20, height_in=8).formula == "1,000 CFM / (20 x 8 in. / 144) = 900 fpm"
    two = finding(
        cooling(facts(supply__trunks=[{"width_in": 18, "height_in": 8}] * 2)),
        "trunk_velocity",
        "trunk 2",
    )
    assert two.formula == "1,000 CFM x 0.50 / (18 x 8 in. / 144) = 500 fpm"


def test_one_trunk_or_two_is_the_difference_between_over_and_fine() -> None:
    # 1,050 CFM in one 18 x 8 is 1,050 fpm, in two 525 each (field practice, computed there)
    one = cooling(
        facts(target__cooling_high_cfm=1050, supply__trunks=[{"width_in": 18, "height_in": 8}])
    )
    assert finding(one, "trunk_velocity").figure == pytest.approx(1050.0)
    both = facts(
        target__cooling_high_cfm=1050, supply__trunks=[{"width_in": 18, "height_in": 8}] * 2
    )
    for where in ("trunk 1", "trunk 2"):
        assert finding(cooling(both), "trunk_velocity", where).figure == pytest.approx(525.0)


def test_the_width_at_which_it_turns() -> None:
    # fine while 1,000 x 144 / (w x 10) is at most 700: w at least 20.57
    fine = trunk(width_in=24, height_in=10).turns_at
    assert fine is not None
    assert (fine.key, fine.holds_while) == ("supply.trunks.0.width_in", "at least")
    assert fine.value == pytest.approx(20.571, abs=1e-3)
    # over while w is at most 1,000 x 144 / (900 x 8) = 20
    over = trunk(width_in=18, height_in=8).turns_at
    assert over is not None
    assert (over.value, over.holds_while) == (pytest.approx(20.0), "at most")
    # lined: the size as it was read, 2 in. more than the clear 16 that 900 fpm needs at 10 in.
    lined = trunk(width_in=20, height_in=12, liner_in=1).turns_at
    assert lined is not None
    assert lined.value == pytest.approx(18.0)
    # round: 14.27 in. carries 1,000 CFM at 900 fpm
    across = trunk(diameter_in=15).turns_at
    assert across is not None
    assert across.value == pytest.approx(14.273, abs=1e-3)


@pytest.mark.parametrize(
    "size",
    [
        {"width_in": 24, "height_in": 10},
        {"width_in": 18, "height_in": 8},
        {"diameter_in": 15},
        {"width_in": 20, "height_in": 12, "liner_in": 1},
        {"shape": "oval", "width_in": 24, "height_in": 8},
    ],
)
def test_just_past_where_it_turns_the_status_is_another(size) -> None:
    found = trunk(**size)
    turn = found.turns_at
    assert turn is not None
    side = turn.key.rsplit(".", 1)[1]
    past = -0.01 if turn.holds_while == "at least" else 0.01
    assert trunk(**{**size, side: turn.value - past}).status is found.status
    assert trunk(**{**size, side: turn.value + past}).status is not found.status


def test_the_speed_a_friction_chart_shows_is_told_beside_the_real_one() -> None:
    # 1.30 x 160^0.625 / 28^0.25 = 13.48 in., 0.9914 sq ft: 1,000 / 0.9914 = 1,009 fpm
    assert "1,009 fpm" in trunk(width_in=20, height_in=8).note


ROLES = [
    # return drop 600 / 700: 1,000 x 144 / 224 = 643
    ("return_drop_velocity", {"return.drops": [{"width_in": 16, "height_in": 14}]}, 642.9, TIGHT),
    # return trunk 600 / 700: 1,000 x 144 / 200 = 720
    ("return_trunk_velocity", {"return.trunks": [{"width_in": 20, "height_in": 10}]}, 720.0, OVER),
    # return branch of metal 400 / 700: half of the air, 500 x 144 / 144 = 500
    (
        "return_branch_velocity",
        {"return.branches": [{"width_in": 12, "height_in": 12, "share_fraction": 0.5}]},
        500.0,
        TIGHT,
    ),
    # the same of flex 400 / 600: 500 x 144 / 113.1 = 636.6
    (
        "return_branch_velocity",
        {"return.branches": [{"diameter_in": 12, "material": "flex", "share_fraction": 0.5}]},
        636.6,
        OVER,
    ),
    # riser 500 / 800: 100 x 144 / 32.5 (10 x 3.25 wall stack) = 443
    (
        "riser_velocity",
        {
            "supply.branches": [
                {"width_in": 10, "height_in": 3.25, "share_fraction": 0.1, "is_riser": True}
            ]
        },
        443.1,
        FINE,
    ),
]


@pytest.mark.parametrize(("check", "ducts", "fpm", "status"), ROLES)
def test_every_role_has_its_own_limits(check, ducts, fpm, status) -> None:
    found = finding(cooling({**SOUND, **ducts}), check)
    assert found.figure == pytest.approx(fpm, abs=0.1)
    assert found.status is status


def test_slow_air_is_never_a_fault() -> None:
    found = trunk(width_in=48, height_in=20)
    assert found.figure == pytest.approx(150.0)
    assert found.status is FINE
