"""One complete job, from a file of facts to the JSON verdict, against arithmetic done by hand.

The house is invented. Every size and table is stated as from a document, which has no scatter, so
that each figure has one value; the blower holds its air whatever the ducts ask, so that what it
gives is known without their pressure. Worked by hand, with where each limit is from:

    air              sea level, so 1.08 Btu/h per CFM and F (definition, at standard air)
    supply trunk     20 x 8 in. = 160 sq in.; 1,000 CFM x 144 / 160 = 900 fpm. Residential duct
                     design standard: 700 recommended, 900 the most (how: memory). A figure equal
                     to its limit passes, so this is tight and not over.
    return drop      24 x 10 in. = 240 sq in.; 1,000 x 144 / 240 = 600 fpm; 600 and 700 (same).
    branches         10 of 6 in. round: area 3.1416 x 6 x 6 / 4 = 28.27 sq in. each;
                     100 CFM x 144 / 28.27 = 509 fpm; 600 and 900 (same).
    return opening   24 x 24 in. = 576 sq in.; 1,000 x 144 / 576 = 250 fpm; 500 and 600 (contractor
                     association and a grille maker, how: read).
    burner           80,000 x 0.80 = 64,000 Btu/h; 64,000 / (1.08 x 1,000) = 59.3 F; plate 35 to 65.
    coil             1,000 CFM / 2.5 tons = 400 CFM per ton; the maker's rows run from 900 to 1,100.
    sensible         half way between 22,000 and 24,000 is 23,000 Btu/h; / 21,000 = 109.5 %.
    most it carries  the trunk ends it: 900 fpm x 160 / 144 = 1,000 CFM; at 400 a ton, 2.5 tons.

Asked for 1,200 CFM instead: 1,200 x 144 / 160 = 1,080 fpm, 1.2 times the most, in every sample;
the blower still gives 1,000, which is 83.3 % of 1,200 and under the 85 % of the airflow tolerance
in the quality installation standard (how: memory). The trunk itself is too small.
"""

import json
from pathlib import Path

import pytest

from intake.commands.judging import judge_file

FACTS = {
    "site.elevation_ft": 0,
    "equipment.kind": "furnace",
    "equipment.cooling_tons": 2.5,
    "equipment.stages": "single",
    "equipment.blower_kind": "ecm_variable",
    "equipment.heating_input_btuh": 80000,
    "equipment.heating_efficiency_fraction": 0.80,
    "equipment.rise_low_degf": 35,
    "equipment.rise_high_degf": 65,
    "equipment.rated_static_inwc": 0.5,
    "equipment.blower_tables": [
        {
            "setting": "D",
            "rows": [
                {"static_inwc": 0.1, "airflow_cfm": 1000},
                {"static_inwc": 1.2, "airflow_cfm": 1000},
            ],
        }
    ],
    "equipment.cooling_rows": [
        {"stage": "high", "airflow_cfm": 900, "total_btuh": 29000, "sensible_btuh": 22000},
        {"stage": "high", "airflow_cfm": 1100, "total_btuh": 30000, "sensible_btuh": 24000},
    ],
    "loads.sensible_gain_btuh": 21000,
    "target.cooling_high_cfm": 1000,
    "target.heating_high_cfm": 1000,
    "new.coil_drop_inwc": 0.20,
    "new.coil_drop_at_cfm": 1000,
    "new.filter_drop_inwc": 0.10,
    "new.filter_drop_at_cfm": 1000,
    "supply.trunks": [
        {
            "shape": "rect",
            "width_in": 20,
            "height_in": 8,
            "material": "galvanized",
            "measured_where": "inside",
        }
    ],
    "supply.branches": [
        {"shape": "round", "diameter_in": 6, "count": 10, "material": "galvanized"}
    ],
    "return.drops": [
        {
            "shape": "rect",
            "width_in": 24,
            "height_in": 10,
            "material": "galvanized",
            "measured_where": "inside",
        }
    ],
    "return.trunks": [],
    "return.grilles": [
        {"width_in": 24, "height_in": 24, "measured_where": "hole", "has_filter": "no"}
    ],
    "filters": [{"width_in": 25, "height_in": 20, "depth_in": 4, "place": "cabinet"}],
}  # fmt: skip


def judged(folder: Path, **changed: object) -> dict:
    path = folder / "facts.json"
    path.write_text(json.dumps({**FACTS, **changed}), encoding="utf-8")
    return json.loads(judge_file(str(path), "json", nothing_more=True))


def finding(mode: dict, check: str) -> dict:
    found = [one for one in mode["findings"] if one["check"] == check]
    assert len(found) == 1, f"{check} is told {len(found)} times"
    return found[0]


@pytest.fixture(scope="module")
def report(tmp_path_factory: pytest.TempPathFactory) -> dict:
    return judged(tmp_path_factory.mktemp("job"))


# Each figure by hand above; arithmetic alone stands between the facts and it, so agreement is
# asked to the rounding of the hand figure.
BY_HAND = [
    ("trunk_velocity", 900.0, 0.5, 700.0, 900.0, "tight"),
    ("return_drop_velocity", 600.0, 0.5, 600.0, 700.0, "fine"),
    ("branch_velocity", 509.3, 0.5, 600.0, 900.0, "fine"),
    ("return_grille_velocity", 250.0, 0.5, 500.0, 600.0, "fine"),
    ("sensible_coverage", 109.5, 0.1, 100.0, 90.0, "fine"),
    ("delivered_airflow", 1000.0, 0.5, 950.0, 850.0, "fine"),
]


@pytest.mark.parametrize(("check", "figure", "within", "recommended", "maximum", "status"), BY_HAND)
def test_full_cooling_agrees_with_the_arithmetic_by_hand(
    report, check, figure, within, recommended, maximum, status
):
    found = finding(report["modes"]["cooling_high"], check)
    assert found["figure"] == pytest.approx(figure, abs=within)
    assert found["recommended"] == pytest.approx(recommended)
    assert found["maximum"] == pytest.approx(maximum)
    assert found["status"] == status


def test_the_rise_agrees_with_the_arithmetic_by_hand(report):
    rise = finding(report["modes"]["heating_high"], "temperature_rise")
    # 1.08 is a rounded constant of the trade; standard air gives 1.08 to 1.085.
    assert rise["figure"] == pytest.approx(59.3, abs=0.3)
    assert rise["maximum"] == 65.0
    assert rise["status"] == "fine"


def test_both_airflows_carry_since_a_figure_equal_to_its_limit_passes(report):
    for mode in ("cooling_high", "heating_high"):
        assert report["modes"][mode]["status"] == "carries"
        assert report["modes"][mode]["probability_over"] == 0.0


def test_the_most_these_ducts_carry_is_what_the_trunk_ends(report):
    assert report["modes"]["cooling_high"]["quiet_capacity_cfm"] == pytest.approx(1000.0, abs=0.5)


def test_a_fifth_more_air_is_too_much_for_the_trunk_and_told_as_that(tmp_path):
    facts = {"target.cooling_high_cfm": 1200, "equipment.cooling_tons": 3}
    cooling = judged(tmp_path, **facts)["modes"]["cooling_high"]
    trunk = finding(cooling, "trunk_velocity")
    assert trunk["figure"] == pytest.approx(1080.0, abs=0.5)
    assert trunk["ratio"] == pytest.approx(1.2, abs=1e-9)
    assert trunk["probability_over"] == 1.0
    air = finding(cooling, "delivered_airflow")
    assert air["figure"] / cooling["target_cfm"] == pytest.approx(0.833, abs=0.001)
    assert air["status"] == "over"
    assert cooling["status"] != "carries"
    assert "trunk_velocity" in cooling["reasons"]
    assert cooling["quiet_capacity_cfm"] == pytest.approx(1000.0, abs=0.5)
