"""Face speeds on gross size, by hand: airflow x 144 / square inches."""

import pytest
from support.houses import SOUND, cooling, facts, finding

from engine.verdict import FindingStatus, Part

FINE, TIGHT, OVER = FindingStatus.FINE, FindingStatus.TIGHT, FindingStatus.OVER

# Plain 500 / 600, filter grille 300 / 450 fpm (contractor association and a grille maker, read).
GRILLES = [
    (20, 20, False, 360.0, FINE),
    (20, 14, False, 514.3, TIGHT),
    (16, 15, False, 600.0, TIGHT),
    (14, 14, False, 734.7, OVER),
    (30, 20, True, 240.0, FINE),
    (20, 20, True, 360.0, TIGHT),
    (20, 16, True, 450.0, TIGHT),
    (16, 16, True, 562.5, OVER),
]


@pytest.mark.parametrize(("width", "height", "filtered", "fpm", "status"), GRILLES)
def test_a_return_openings_speed_and_status(width, height, filtered, fpm, status) -> None:
    grille = {"width_in": width, "height_in": height, "has_filter": filtered}
    check = "filter_grille_velocity" if filtered else "return_grille_velocity"
    found = finding(cooling(facts(return__grilles=[grille])), check)
    assert found.figure == pytest.approx(fpm, abs=0.1)
    assert found.status is status
    assert found.part is Part.RETURN_OPENINGS


def test_the_formula_shows_every_opening() -> None:
    grilles = [
        {"width_in": 20, "height_in": 20, "has_filter": False},
        {"width_in": 20, "height_in": 10},
    ]
    found = finding(cooling(facts(return__grilles=grilles)), "return_grille_velocity")
    assert found.formula == "1,000 CFM / (20 x 20 + 20 x 10 in. / 144 = 4.17 sq ft) = 240 fpm"


def test_the_width_at_which_an_opening_turns() -> None:
    grille = {"width_in": 14, "height_in": 14, "has_filter": False}
    found = finding(cooling(facts(return__grilles=[grille])), "return_grille_velocity")
    # over while 1,000 x 144 / (14 w) is above 600: w at most 17.14
    assert found.turns_at is not None
    assert found.turns_at.value == pytest.approx(17.143, abs=1e-3)
    assert found.turns_at.holds_while == "at most"


def test_a_house_without_openings_is_asked_nothing_of_them() -> None:
    found = cooling({**SOUND, "return.grilles": []})
    assert not [f for f in found.findings if f.check.endswith("grille_velocity")]


def test_registers_are_judged_where_their_sizes_are_stated() -> None:
    # 11 of 4 x 10: 1,000 x 144 / 440 = 327; of 2 x 10: 655 over 500; limits 500 / 700
    wide = {"width_in": 10, "height_in": 4, "count": 11}
    found = finding(cooling({**SOUND, "supply.registers": [wide]}), "register_velocity")
    assert found.figure == pytest.approx(327.3, abs=0.1)
    assert found.status is FINE
    small = finding(
        cooling({**SOUND, "supply.registers": [{**wide, "height_in": 2}]}), "register_velocity"
    )
    assert small.status is TIGHT
    assert not [f for f in cooling(SOUND).findings if f.check == "register_velocity"]
