"""Bundles against the catalogue, and what dirt, the old furnace's rise and callers show."""

from dataclasses import replace
from typing import Any

import pytest
from support.houses import facts

from engine.assessment import assess
from engine.job.belief import How
from engine.job.facts import catalogue
from engine.job.job import LISTS
from engine.job.loading import job_from_mapping
from engine.worth import BUNDLES, CALLER, TECHNICIAN, Bundle, worth_of
from engine.worth.signals import signals_of

BY_KEY = {bundle.key: bundle for bundle in BUNDLES}
TABLES = {"equipment.blower_tables", "equipment.cooling_rows"}
READ: dict[str, Any] = {
    "mode": "cooling_high", "filter_state": "clean", "airflow_cfm": 900,
    "airflow_source": "flow_plate", "before_filter_inwc": 0.15, "after_filter_inwc": 0.30,
    "before_coil_inwc": 0.45, "after_coil_inwc": 0.20,
}  # fmt: skip


def shown(key: str, **changed: Any) -> set[str]:
    at = assess(job_from_mapping(facts(**changed)), samples=512)
    return {one.name for one in signals_of(at, BY_KEY[key], How.MEASURED)}


def test_keys_are_each_bundles_own() -> None:
    assert len(BY_KEY) == len(BUNDLES)


@pytest.mark.parametrize("bundle", BUNDLES, ids=lambda bundle: bundle.key)
def test_every_fact_of_a_bundle_is_in_the_catalogue_or_a_list_or_table(bundle: Bundle) -> None:
    for fact in (*bundle.facts, *bundle.also):
        known = fact in catalogue() or fact in LISTS or fact in TABLES
        assert known, f"{bundle.key} asks for {fact}, which nothing knows"


@pytest.mark.parametrize("bundle", BUNDLES, ids=lambda bundle: bundle.key)
def test_somebody_can_give_every_bundle(bundle: Bundle) -> None:
    assert TECHNICIAN.giving(bundle.givers) or CALLER.giving(bundle.givers)
    assert bundle.minutes > 0.0
    assert 0.0 < bundle.chance <= 1.0


def test_dirt_tells_nothing_without_a_reading_and_something_with_one() -> None:
    for key in ("coil_dirt", "wheel_dirt", "filter_dirt"):
        assert shown(key) == set()
        assert len(shown(key, readings=[READ])) == 1


def test_dirt_that_was_looked_at_tells_nothing_more() -> None:
    assert shown("coil_dirt", readings=[READ], condition__coil="clean") == set()
    assert shown("wheel_dirt", readings=[READ], condition__blower_wheel="some_dirt") == set()


def test_the_old_rise_tells_the_airflow_that_pressures_were_read_at() -> None:
    bare = {k: v for k, v in READ.items() if not k.startswith("airflow")}
    assert shown("old_rise") == set()
    assert shown("old_rise", readings=[bare]) == {"readings.0 airflow"}
    assert shown("old_rise", readings=[READ]) == set()


def test_which_way_the_trunks_go_tells_their_number_until_it_is_told() -> None:
    assert shown("trunk_ways", supply__trunks=None) == {"supply.trunks count"}
    told = {"supply__trunks": None, "phone__trunk_directions": "both"}
    assert shown("trunk_ways", **told) == set()


def test_a_step_down_is_worth_asking_where_the_trunk_is_near_its_limit() -> None:
    # 1,000 x 144 / (17 x 10) = 847 fpm against 900: a smaller part may well be over
    near = {"supply__trunks": [{"width_in": 17, "height_in": 10}], "house__trunk_steps_down": None}
    at = assess(job_from_mapping(facts(**near)), samples=2048)
    (found,) = worth_of(at, [BY_KEY["step_down"]])
    assert found.worth > 0.0
    told = assess(job_from_mapping(facts(**{**near, "house__trunk_steps_down": "no"})), samples=512)
    (known,) = worth_of(told, [BY_KEY["step_down"]], loss_per_minute=0.0)
    assert known.worth == 0.0


def test_zones_are_known_to_the_catalogue_and_move_no_verdict_of_the_whole() -> None:
    at = assess(job_from_mapping(facts(supply__trunks=None)), samples=512)
    (found,) = worth_of(at, [replace(BY_KEY["zones"])], loss_per_minute=0.0)
    assert found.worth == 0.0
