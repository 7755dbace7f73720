"""A zoned system with its smallest zone alone: speeds by hand, and what isn't known by name."""

from typing import Any

import pytest
from support.houses import facts, finding, verdict

from engine.job.loading import job_from_mapping
from engine.job.modes import Mode
from engine.job.zones import smallest_zone
from engine.verdict import ModeStatus, ZoneVerdict

TWO_TRUNKS = [
    {"width_in": 20, "height_in": 8, "name": "main floor trunk"},
    {"width_in": 12, "height_in": 8, "name": "upstairs trunk"},
]
BRANCHES = [
    {"diameter_in": 7, "count": 8, "from": "main floor trunk", "share_fraction": 0.7},
    {"diameter_in": 7, "count": 4, "from": "upstairs trunk", "share_fraction": 0.3,
     "name": "upstairs runs"},
]  # fmt: skip


def zoned(**changed: Any) -> dict[str, Any]:
    told: dict[str, Any] = {
        "house__zoned": "yes",
        "equipment__stages": "two",
        "target__cooling_low_cfm": 700,
        "target__heating_high_cfm": 800,
        "equipment__heating_low_input_btuh": 40000,
        "target__heating_low_cfm": 600,
        "supply__trunks": TWO_TRUNKS,
        "supply__branches": BRANCHES,
        "house__supply_registers_count": 12,
        "zones__count": 2,
        "zones__smallest_ducts": "upstairs trunk",
    }
    return facts(**{**told, **changed})


def zone_of(**changed: Any) -> ZoneVerdict:
    found = verdict(zoned(**changed), samples=512)
    assert found.smallest_zone is not None, found.refused
    assert found.refused == ()
    return found.smallest_zone


# By hand: all of the low stage's 700 CFM through the 12 x 8 trunk: 700 x 144 / 96 = 1,050 fpm, 900
# the most; through four 7 in. runs: 175 CFM x 144 / 38.48 sq in. = 655 fpm.
def test_the_smallest_zone_takes_all_the_air_of_the_lowest_stage() -> None:
    zone = zone_of()
    assert set(zone.modes) == {Mode.COOLING_LOW, Mode.HEATING_LOW}
    low = zone.modes[Mode.COOLING_LOW]
    assert low.target_cfm.likely == pytest.approx(700.0)
    trunk = finding(low, "trunk_velocity")
    assert trunk.where == "upstairs trunk"
    assert trunk.figure == pytest.approx(1050.0, rel=1e-3)
    assert finding(low, "branch_velocity").figure == pytest.approx(655.0, rel=2e-3)
    assert low.status is ModeStatus.WONT_CARRY
    assert zone.open_fraction == pytest.approx(4.0 / 12.0)
    assert "1,050 fpm" in zone.words
    assert "bypass doesn't count" in zone.words
    assert "cooling," in zone.words
    assert "_" not in zone.words


def test_all_zones_open_is_judged_as_before() -> None:
    together = verdict(zoned(), samples=512).modes[Mode.COOLING_LOW]
    plain = verdict(zoned(house__zoned=None, zones__count=None, zones__smallest_ducts=None),
                    samples=512).modes[Mode.COOLING_LOW]  # fmt: skip
    assert together.over_share == plain.over_share
    assert together.status is plain.status


FLAT = [
    {"setting": "A", "rows": [{"static_inwc": 0.05, "airflow_cfm": 1000},
                              {"static_inwc": 1.2, "airflow_cfm": 1000}]}
]  # fmt: skip


def test_registers_take_the_square_of_their_air_when_the_others_are_shut() -> None:
    # 0.03 in. with all open; each of half as many carries twice the air: 4 x 0.03 = 0.12, so 0.09
    # more at the same 1,000 CFM.
    common = {"supply__branches": None, "new__register_drop_inwc": 0.03,
              "equipment__blower_tables": FLAT, "target__heating_high_cfm": 1000}  # fmt: skip
    whole, half = (
        finding(verdict(facts(**common, **more), samples=64).modes[Mode.COOLING_HIGH],
                "external_static").figure
        for more in ({}, {"zones__open_fraction": 0.5})
    )  # fmt: skip
    assert half - whole == pytest.approx(0.09, abs=0.001)


def test_the_open_part_is_the_zones_registers_over_all() -> None:
    zone = smallest_zone(job_from_mapping(zoned(zones__smallest_registers_count=6)))
    assert not isinstance(zone, str)
    assert zone.open_fraction == pytest.approx(0.5)
    assert zone.job.number("zones.open_fraction") == pytest.approx(0.5)


def test_one_trunk_with_dampers_in_its_branches_needs_a_count_of_registers() -> None:
    one = {"supply__trunks": [{"width_in": 20, "height_in": 8}], "zones__smallest_ducts": None,
           "supply__branches": [{"diameter_in": 7, "count": 12}]}  # fmt: skip
    assert "how many supply registers it has" in verdict(zoned(**one), samples=64).refused[0]
    zone = zone_of(**one, zones__smallest_registers_count=3)
    low = zone.modes[Mode.COOLING_LOW]
    # 700 CFM in the whole trunk: 630 fpm; in three runs of 12: 233 CFM x 144 / 38.48 = 873 fpm
    assert finding(low, "trunk_velocity").figure == pytest.approx(630.0, rel=1e-3)
    assert finding(low, "branch_velocity").figure == pytest.approx(873.0, rel=0.02)


@pytest.mark.parametrize(
    ("changed", "words"),
    [
        ({"zones__smallest_ducts": None}, "which of the trunks feeds it"),
        ({"zones__smallest_ducts": "attic trunk"}, "no supply trunk or branch is called"),
        ({"supply__trunks": None, "supply__branches": None}, "the supply trunk isn't described"),
    ],
)
def test_what_is_not_known_of_the_zone_is_refused_by_name(changed, words) -> None:
    found = verdict(zoned(**changed), samples=64)
    assert found.smallest_zone is None
    assert len(found.refused) == 1
    assert found.refused[0].startswith("smallest zone alone: ")
    assert words in found.refused[0]


def test_branches_that_were_named_bring_the_trunk_they_hang_on() -> None:
    zone = zone_of(zones__smallest_ducts="upstairs runs")
    low = zone.modes[Mode.COOLING_LOW]
    assert finding(low, "trunk_velocity").where == "upstairs trunk"
    assert zone.ducts == ("upstairs runs",)


def test_a_house_without_zones_says_nothing_of_them() -> None:
    found = verdict(facts(), samples=64)
    assert found.smallest_zone is None
    assert found.refused == ()
