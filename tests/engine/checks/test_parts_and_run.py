"""Filter, coil, flat ducts, the longest run, readings, and the branch that starves."""

import pytest
from support.houses import SOUND, cooling, facts, finding

from engine.checks.longest_run import NO_REACH, NOTHING_LEFT
from engine.verdict import FindingStatus

FINE, TIGHT, OVER = FindingStatus.FINE, FindingStatus.TIGHT, FindingStatus.OVER


# Budgets 0.10 (filter, furnace) and 40 % of the 0.5 rating (coil); one house in ten is above 0.38
# and 0.42 (common practice).
@pytest.mark.parametrize(
    ("name", "drop", "status"),
    [
        ("filter", 0.10, FINE),
        ("filter", 0.11, TIGHT),
        ("filter", 0.38, TIGHT),
        ("filter", 0.39, OVER),
        ("coil", 0.20, FINE),
        ("coil", 0.21, TIGHT),
        ("coil", 0.42, TIGHT),
        ("coil", 0.43, TIGHT),  # too much or not is for the blower to say
    ],
)
def test_new_filter_and_coil_vote_by_their_drop(name, drop, status) -> None:
    found = finding(cooling({**SOUND, f"new.{name}_drop_inwc": drop}), f"{name}_drop")
    assert found.figure == pytest.approx(drop)
    assert found.status is status
    assert found.votes


def test_a_filters_face_speed_in_a_cabinet_is_a_note_by_depth() -> None:
    # 1,000 x 144 / (20 x 25) = 288 fpm; 1 in. notes above 300, 4 in. above 500
    thin = {"width_in": 16, "height_in": 25, "depth_in": 1, "place": "cabinet"}
    found = finding(cooling(facts(filters=[thin])), "filter_face_velocity")
    assert found.figure == pytest.approx(360.0)
    assert (found.status, found.votes) == (TIGHT, False)
    deep = finding(cooling(facts(filters=[{**thin, "depth_in": 4}])), "filter_face_velocity")
    assert deep.status is FINE


def test_a_flat_duct_is_a_note() -> None:
    # 36 / 8 = 4.5 to 1, advised at most 4
    found = finding(
        cooling(facts(supply__trunks=[{"width_in": 36, "height_in": 8}])), "aspect_ratio"
    )
    assert found.figure == pytest.approx(4.5)
    assert (found.status, found.votes) == (TIGHT, False)
    assert not [f for f in cooling(SOUND).findings if f.check == "aspect_ratio"]


FURNACE = {
    **{k: v for k, v in SOUND.items() if k != "equipment.blower_tables"},
    "target.heating_high_cfm": 900,
    "new.coil_drop_inwc": 0.22,
    "new.filter_drop_inwc": 0.15,
    "new.register_drop_inwc": 0.03,
    "new.grille_drop_inwc": 0.03,
    "path.total_effective_length_ft": 400,
}
"""Field practice's own sum: 0.50 less 0.22, 0.15 and 0.06 leaves 0.07; over 400 ft 0.018."""


def test_the_friction_rate_of_a_rated_furnace_is_computed_for_this_house() -> None:
    found = finding(cooling(FURNACE), "friction_rate")
    assert found.figure == pytest.approx(0.0175, abs=1e-4)
    assert found.status is TIGHT
    assert found.votes  # neither a table nor a reading with its airflow
    assert "- coil 0.22 - filter 0.15 - register 0.03 - grille 0.03 = 0.07 in." in found.formula
    assert "x 100 / 400 ft" in found.formula


def test_it_never_fails_a_house_by_itself() -> None:
    found = cooling({**FURNACE, "new.coil_drop_inwc": 0.42})
    rate = finding(found, "friction_rate")
    assert rate.over_share == 0.0
    assert rate.note == NOTHING_LEFT
    assert NOTHING_LEFT in rate.formula
    assert "per 100 ft" not in rate.formula
    assert rate.figure == 0.0


def test_with_a_table_it_starts_from_the_table_and_does_not_vote() -> None:
    # the table gives 1,000 CFM at 0.7 in.: 0.5 + 0.3 x (1,080 - 1,000) / (1,080 - 960)
    table = {**FURNACE, "equipment.blower_tables": SOUND["equipment.blower_tables"]}
    found = finding(cooling(table), "friction_rate")
    assert not found.votes
    assert found.formula.startswith("0.70 in. in the table at 1,000 CFM")
    # 0.70 - 0.22 - 0.15 - 0.06 = 0.27; x 100 / 400
    assert found.figure == pytest.approx(0.0675, abs=1e-4)


def test_a_setting_that_does_not_reach_the_target_says_so() -> None:
    rows = [{"static_inwc": 0.1, "airflow_cfm": 990}, {"static_inwc": 1.0, "airflow_cfm": 900}]
    known = {**FURNACE, "equipment.blower_tables": [{"setting": "A", "rows": rows}]}
    found = finding(cooling(known), "friction_rate")
    assert found.note == NO_REACH
    assert found.status is TIGHT


def test_over_five_hundred_feet_is_told() -> None:
    for feet, status in ((500, FINE), (501, TIGHT)):
        found = finding(cooling(facts(path__total_effective_length_ft=feet)), "effective_length")
        assert found.figure == feet
        assert (found.status, found.votes) == (status, False)


def test_effective_length_adds_straight_feet_and_fittings() -> None:
    fittings = [
        {"kind": "takeoff_45", "count": 1, "equivalent_ft": 30},
        {"kind": "square_elbow_trunk", "count": 2, "equivalent_ft": 75},
        {"kind": "return_drop_square", "side": "return", "equivalent_ft": 75},
    ]
    found = finding(
        cooling(facts(path__total_effective_length_ft=None, path__fittings=fittings)),
        "effective_length",
    )
    # 35 + 8 + 30 + 2 x 75 + 75
    assert found.figure == pytest.approx(298.0)
    assert found.formula.endswith("= 298 ft")


def test_a_readings_total_is_told_against_the_rating_and_brought_to_the_target() -> None:
    # field practice's own sum: 0.30 and 0.40 make 0.70, never 0.10
    reading = [
        {
            "mode": "cooling_high",
            "airflow_cfm": 800,
            "airflow_source": "flow_plate",
            "after_filter_inwc": -0.30,
            "before_coil_inwc": 0.40,
        }
    ]
    found = finding(cooling(facts(readings=reading, old__rated_static_inwc=0.5)), "reading_total")
    assert found.figure == pytest.approx(0.70)
    assert found.status is TIGHT
    assert found.over_share == 0.0
    # 0.70 x (1,000 / 800)^1.9 = 1.07
    assert "1.07 in." in found.note


def test_the_branch_that_starves_is_named_with_what_it_lacks() -> None:
    near = {"diameter_in": 7, "count": 9, "length_ft": 10, "share_fraction": 0.9}
    far = {"diameter_in": 5, "length_ft": 70, "share_fraction": 0.1, "name": "far bedroom"}
    found = finding(cooling(facts(supply__branches=[near, far])), "branch_share")
    assert found.where == "far bedroom"
    assert found.status is TIGHT
    assert not found.votes
    given, wanted = (float(word) for word in found.formula.split(" CFM")[0].split(" of "))
    assert wanted == 100.0
    assert found.figure == pytest.approx(given, abs=0.6)
    equal = [
        {"diameter_in": 7, "count": 5, "length_ft": 10, "share_fraction": 0.5},
        {"diameter_in": 7, "count": 5, "length_ft": 10, "share_fraction": 0.5},
    ]
    even = cooling(facts(supply__branches=equal))
    starved = [f for f in even.findings if f.check == "branch_share"]
    assert not starved or starved[0].figure == pytest.approx(100.0, abs=0.01)
