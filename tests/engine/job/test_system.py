"""The path of the air: each part by hand, what the rating includes, what stock looks like."""

import numpy as np
import pytest
from support.houses import SOUND, facts, house

from engine.job.job import Job
from engine.job.modes import Mode
from engine.job.sample import draw
from engine.job.system import system_of
from engine.job.targets import target_of
from engine.trade.exponents import PressurePart

COOL, HEAT = Mode.COOLING_HIGH, Mode.HEATING_HIGH
RETURN, FILTER = PressurePart.RETURN_DUCT, PressurePart.FILTER
COIL, SUPPLY = PressurePart.COIL, PressurePart.SUPPLY_DUCT


def system(mapping, reference=1000.0, samples=256):
    found = house(mapping, samples)
    return system_of(found, reference, target_of(found, COOL).airflow_cfm)


def central(mapping, part, airflow=1000.0, mode=COOL, reference=1000.0):
    return float(system(mapping, reference).drop_inwc(part, airflow, mode)[0])


def test_listed_drops_hold_at_their_airflow_and_grow_with_their_power() -> None:
    listed = facts(new__coil_drop_inwc=0.22, new__coil_drop_at_cfm=1200)
    assert central(listed, COIL, 1200) == pytest.approx(0.22)
    # 0.22 x (1,000 / 1,200)^1.8 = 0.1585
    assert central(listed, COIL) == pytest.approx(0.1585, abs=1e-4)
    # filter 0.08 at 1,000; at 1,200: 0.08 x 1.2^1.4 = 0.1033
    assert central(SOUND, FILTER, 1200) == pytest.approx(0.1033, abs=1e-4)


def test_a_dry_coil_takes_less_than_the_wet_one_it_is_listed_as() -> None:
    # wet over dry 1.22 in the middle
    wet, dry = central(SOUND, COIL), central(SOUND, COIL, mode=HEAT)
    assert wet / dry == pytest.approx(1.22)


def test_thin_air_takes_less_pressure() -> None:
    # density ratio at 5,000 ft and 70 F: 0.832
    high = facts(site__elevation_ft=5000)
    assert central(high, COIL) == pytest.approx(0.832 * 0.20, abs=2e-4)
    for part in (RETURN, SUPPLY):
        # friction falls a little less than density, because it turns less turbulent
        assert central(high, part) / central(SOUND, part) == pytest.approx(0.85, abs=0.03)


def test_an_air_handlers_coil_is_inside_its_rating() -> None:
    inside = {k: v for k, v in SOUND.items() if k != "equipment.coil_outside_rating"}
    handler = system({**inside, "equipment.kind": "air_handler"})
    furnace = system(inside)
    assert handler.parts[COIL].inside.all()
    assert not furnace.parts[COIL].inside.any()
    less = furnace.external_inwc(1000.0, COOL) - handler.external_inwc(1000.0, COOL)
    assert less == pytest.approx(furnace.drop_inwc(COIL, 1000.0, COOL))


def test_a_filter_in_a_grille_is_outside_whatever_the_rating_includes() -> None:
    grille = [{"width_in": 20, "height_in": 25, "depth_in": 1, "place": "grille"}]
    found = system({**SOUND, "filters": grille, "equipment.filter_outside_rating": False})
    assert not found.parts[FILTER].inside.any()


def test_a_house_without_a_filter_has_none_in_the_way() -> None:
    assert FILTER not in system({**SOUND, "filters": []}).parts


def test_a_bigger_filter_takes_less() -> None:
    by_size = {k: v for k, v in SOUND.items() if not k.startswith("new.filter")}
    small = {"width_in": 16, "height_in": 20, "depth_in": 1, "place": "cabinet"}
    large = {**small, "width_in": 20, "height_in": 25}
    ratio = central({**by_size, "filters": [small]}, FILTER) / central(
        {**by_size, "filters": [large]}, FILTER
    )
    # 500 / 320 sq in., to the power 1.4
    assert ratio == pytest.approx((500 / 320) ** 1.4)
    deep = {**small, "depth_in": 4}
    assert central({**by_size, "filters": [deep]}, FILTER) < central(
        {**by_size, "filters": [small]}, FILTER
    )


def test_two_trunks_take_about_a_quarter_of_what_one_takes() -> None:
    # half the air in each: friction to the power 1.85 of one half is 0.28
    long = {**SOUND, "supply.branches": None, "new.register_drop_inwc": 0.0}
    one = {"width_in": 14, "height_in": 8, "length_ft": 60}
    base = {k: v for k, v in long.items() if v is not None}
    single = central({**base, "supply.trunks": [one]}, SUPPLY)
    double = central({**base, "supply.trunks": [one, one]}, SUPPLY)
    huge = {"width_in": 40, "height_in": 20, "length_ft": 60}
    rest = central({**base, "supply.trunks": [huge]}, SUPPLY)  # the branches alone
    assert (double - rest) / (single - rest) == pytest.approx(0.28, abs=0.02)


def test_grilles_take_pressure_by_the_square_of_their_speed() -> None:
    one = {"width_in": 20, "height_in": 20, "has_filter": False}
    small = central({**SOUND, "return.grilles": [one]}, RETURN)
    twice = central({**SOUND, "return.grilles": [one, one]}, RETURN)
    # 0.03 in. at 400 fpm: 1,000 x 144 / 400 = 360 fpm gives 0.0243, half the speed a quarter
    assert small - twice == pytest.approx(0.0243 * 0.75, abs=2e-4)


def test_stated_branches_count_by_their_tree_not_by_their_worst_run() -> None:
    near = {"diameter_in": 7, "count": 10, "length_ft": 10, "share_fraction": 0.9}
    far = {"diameter_in": 5, "count": 1, "length_ft": 80, "share_fraction": 0.1}
    even = [{"diameter_in": 7, "count": 11, "length_ft": 10, "share_fraction": 1}]
    all_near = central({**SOUND, "supply.branches": even}, SUPPLY)
    mixed = central({**SOUND, "supply.branches": [near, far]}, SUPPLY)
    # one starved run of eleven raises what all the air feels a little, never to the run's own loss
    assert all_near < mixed < 1.35 * all_near


def test_the_prior_house_looks_like_what_gauges_find() -> None:
    # field practice at the airflow as found (about 337 CFM a ton): return before the filter 0.10,
    # supply after the coil 0.18, total external 0.70 with filters and coils as dirty as they are
    found = draw(Job(), 4096)
    target = target_of(found, COOL)
    path = system_of(found, target.likely_cfm, target.airflow_cfm)
    airflow = 337.0 * found.number("equipment.cooling_tons")
    middle = {p: float(np.median(path.drop_inwc(p, airflow, COOL)[1:])) for p in path.parts}
    assert middle[RETURN] == pytest.approx(0.10, rel=0.35)
    assert middle[SUPPLY] == pytest.approx(0.18, rel=0.25)
    assert 0.08 < middle[FILTER] < 0.20
    assert 0.12 < middle[COIL] < 0.22


def test_everything_the_path_rests_on_is_named() -> None:
    keys = system(SOUND).rests_on()
    for key in (
        "supply.trunks.0.width_in",
        "return.drops.0.height_in",
        "new.coil_drop_inwc",
        "new.filter_drop_inwc",
        "return.grilles.0.width_in",
        "path.total_effective_length_ft",
    ):
        assert key in keys
