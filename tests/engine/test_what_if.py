"""Other equipment on the same ducts: its consequences, and what it turns."""

import numpy as np
import pytest
from support.houses import COOLING, HEATING, finding, job

from engine.assessment import assess
from engine.candidate import BLOWER_TABLES, COOLING_ROWS
from engine.errors import EngineError
from engine.job.belief import Between, How, Known
from engine.job.job import Job
from engine.job.loading import job_from_mapping
from engine.job.modes import Mode
from engine.job.sample import draw
from engine.job.sections import ducts_of
from engine.judge import judge
from engine.verdict import ModeStatus
from engine.what_if import (
    SOLD_TONS,
    Candidate,
    candidate_job,
    compare,
    largest_quiet,
    no_longer_held,
)

THREE_TONS = {
    "equipment__cooling_tons": 3,
    "target__cooling_high_cfm": 1200,
    "supply__trunks": [{"width_in": 20, "height_in": 9, "material": "galvanized"}],
}
"""1,200 CFM in 20 x 9 in., 1.25 ft2, is 960 fpm; bare metal carries at most 900 quietly."""

ROWS = [
    {"stage": "high", "airflow_cfm": 1050, "total_btuh": 35000, "sensible_btuh": 25000},
    {"stage": "high", "airflow_cfm": 1200, "total_btuh": 36000, "sensible_btuh": 27000},
]


def heat_pump(**changed) -> Job:
    furnace = {
        "equipment__heating_input_btuh": None,
        "equipment__heating_efficiency_fraction": None,
        "equipment__rise_low_degf": None,
        "equipment__rise_high_degf": None,
    }
    own = {"equipment__kind": "heat_pump", "target__heat_pump_heating_cfm": 1140}
    return job(**{**furnace, **THREE_TONS, **own, **changed})


def test_half_a_ton_less_turns_a_trunk_that_is_too_fast():
    before, after = compare(job(**THREE_TONS), [Candidate(tons=2.5)], samples=1024)
    fast = finding(before.modes[COOLING], "trunk_velocity")
    slow = finding(after.modes[COOLING], "trunk_velocity")
    assert before.modes[COOLING].target_cfm.likely == pytest.approx(1200.0)
    assert after.modes[COOLING].target_cfm.likely == pytest.approx(1000.0)  # 2.5 x 400
    assert fast.figure == pytest.approx(960.0)  # 1,200 / 1.25 ft2
    assert slow.figure == pytest.approx(800.0)  # 1,000 / 1.25 ft2
    assert before.modes[COOLING].status is ModeStatus.WONT_CARRY
    assert before.modes[COOLING].reasons == ("trunk_velocity",)
    assert after.modes[COOLING].status is ModeStatus.CARRIES


def test_nothing_of_the_job_is_changed_and_the_same_seed_gives_the_same():
    its = job(**THREE_TONS)
    beliefs, lengths = dict(its.beliefs), dict(its.lengths)
    tried = [Candidate(tons=2.5), Candidate(airflow_cfm={COOLING: 1000.0})]
    first = compare(its, tried, samples=256, seed=7)
    assert first == compare(its, tried, samples=256, seed=7)
    assert first[0] == judge(its, samples=256, seed=7)
    assert (dict(its.beliefs), dict(its.lengths)) == (beliefs, lengths)
    assert its.blower


def test_a_candidate_that_changes_nothing_is_judged_as_the_job_is():
    its = job(**THREE_TONS)
    before, after = compare(its, [Candidate(tons=3.0)], samples=256)
    assert candidate_job(its, Candidate(tons=3.0)) == its
    assert after.modes == before.modes


def test_stated_airflows_stay_at_the_same_cfm_a_ton():
    after = candidate_job(heat_pump(target__cooling_low_cfm=840), Candidate(tons=2.0))
    assert after.number("target.cooling_high_cfm") == pytest.approx(800.0)  # 400 x 2
    assert after.number("target.heat_pump_heating_cfm") == pytest.approx(760.0)  # 380 x 2
    assert after.number("target.cooling_low_cfm") == pytest.approx(560.0)  # 280 x 2


def test_a_range_of_airflow_is_scaled_as_a_range():
    its = heat_pump().with_fact(
        "target.cooling_high_cfm", Between(1100.0, 1200.0, 1300.0, How.PHONE)
    )
    scaled = candidate_job(its, Candidate(tons=1.5)).stated("target.cooling_high_cfm")
    assert scaled == Between(550.0, 600.0, 650.0, How.PHONE)


def test_an_airflow_that_is_named_stands():
    after = candidate_job(heat_pump(), Candidate(tons=3.5, airflow_cfm={COOLING: 1250.0}))
    assert after.stated("target.cooling_high_cfm") == Known(1250.0, How.DOCUMENT)
    assert after.number("target.heat_pump_heating_cfm") == pytest.approx(1330.0)  # 380 x 3.5


def test_an_airflow_by_the_makers_row_stays_at_its_cfm_a_ton():
    its = job(**THREE_TONS | {"target__cooling_high_cfm": None}, equipment__cooling_rows=ROWS)
    after = candidate_job(its, Candidate(tons=2.5))
    assert after.number("target.cooling_high_cfm") == pytest.approx(1000.0)  # row 1,200 / 3 x 2.5
    assert not after.cooling_rows


def test_an_airflow_without_a_size_says_nothing_of_another_size():
    after = candidate_job(job(equipment__cooling_tons=None), Candidate(tons=2.0))
    assert after.stated("target.cooling_high_cfm") is None


def test_another_size_forgets_the_old_coil_and_rows_and_a_furnace_keeps_its_blower():
    its = job(**THREE_TONS, equipment__cooling_rows=ROWS)
    after = candidate_job(its, Candidate(tons=2.5))
    assert after.blower == its.blower
    assert set(no_longer_held(its, after)) == {
        "new.coil_drop_inwc",
        "new.coil_drop_at_cfm",
        COOLING_ROWS,
    }
    assert after.stated("new.filter_drop_inwc") == its.stated("new.filter_drop_inwc")


def test_another_heat_pump_brings_another_blower_whose_table_is_missing():
    its = heat_pump()
    after = candidate_job(its, Candidate(tons=2.5, coil_drop_inwc=0.2, coil_drop_at_cfm=1000.0))
    assert not after.blower
    assert BLOWER_TABLES in no_longer_held(its, after)
    assert after.number("new.coil_drop_inwc") == 0.2
    (_, tried) = compare(its, [Candidate(tons=2.5)], samples=512, collectable=())
    mode = tried.modes[COOLING]
    assert mode.status is ModeStatus.CANT_SAY
    assert mode.unmet_floor == (BLOWER_TABLES,)
    assert mode.treat_as is None  # its maker's book can be had, whatever is closed in this house


def test_another_furnace_asks_for_air_by_its_own_output():
    its = job(target__heating_high_cfm=1300, equipment__heating_low_input_btuh=42900)
    after = candidate_job(its, Candidate(heating_input_btuh=44000.0))
    assert after.stated("target.heating_high_cfm") is None
    assert not after.blower
    low = after.number("equipment.heating_low_input_btuh")
    assert low == pytest.approx(28600.0)  # 42,900 / 66,000 x 44,000
    target = assess(after, samples=64).modes[HEATING].target
    assert target.least_cfm is not None
    assert target.most_cfm is not None
    # sea level: 44,000 x 0.80 / (1.08 x 65 F) = 501 CFM; / (1.08 x 30 F) = 1,086 CFM
    assert target.least_cfm[0] == pytest.approx(501.4, rel=0.01)
    assert target.most_cfm[0] == pytest.approx(1086.4, rel=0.01)
    assert after.stated("new.coil_drop_inwc") == its.stated("new.coil_drop_inwc")


def test_another_input_keeps_the_efficiency_that_a_stated_output_told():
    its = job(
        equipment__heating_efficiency_fraction=None, equipment__heating_output_btuh=52800
    )  # 52,800 / 66,000 = 0.80
    after = candidate_job(its, Candidate(heating_input_btuh=50000.0))
    assert after.stated("equipment.heating_output_btuh") is None
    assert after.number("equipment.heating_efficiency_fraction") == pytest.approx(0.80)


def test_a_deeper_filter_takes_less_and_its_old_drop_is_forgotten():
    its = job(filters=[{"width_in": 25, "height_in": 16, "depth_in": 1, "place": "cabinet"}],
              new__filter_drop_inwc=0.30)  # fmt: skip
    after = candidate_job(its, Candidate(filter_depth_in=4.0))
    assert after.number("filters.0.depth_in") == 4.0
    assert after.number("filters.0.width_in") == 25.0
    assert after.stated("new.filter_drop_inwc") is None
    before, tried = compare(its, [Candidate(filter_depth_in=4.0)], samples=256)
    drops = [finding(v.modes[COOLING], "filter_drop").figure for v in (before, tried)]
    assert drops[1] < drops[0]


def test_a_filter_of_another_size_stands_where_one_was_never_told():
    after = candidate_job(
        Job(), Candidate(filter_width_in=20.0, filter_height_in=25.0, filter_depth_in=4.0)
    )
    assert after.length("filters") == 1
    assert after.number("filters.0.height_in") == 25.0


def test_plain_facts_are_set_and_the_size_among_them_has_its_consequences():
    after = candidate_job(
        job(**THREE_TONS),
        Candidate(facts={"equipment.cooling_tons": 2.5, "equipment.stages": "two"}),
    )
    assert after == candidate_job(
        job(**THREE_TONS), Candidate(tons=2.5, facts={"equipment.stages": "two"})
    )
    assert Mode.COOLING_LOW in assess(after, samples=16).modes


def test_one_stage_has_no_low_airflow_and_full_cooling_stays():
    its = heat_pump(equipment__stages="two", target__cooling_low_cfm=840)
    after = candidate_job(its, Candidate(facts={"equipment.stages": "single"}))
    assert after.stated("target.cooling_low_cfm") is None
    assert after.number("target.cooling_high_cfm") == 1200.0
    assert not after.blower
    assert Mode.COOLING_LOW not in assess(after, samples=16).modes


@pytest.mark.parametrize("wrong", [
    Candidate(tons=30.0),
    Candidate(facts={"equipment.cooling_tons": "three"}),
    Candidate(facts={"equipment.wings": 2.0}),
    Candidate(airflow_cfm={COOLING: float("nan")}),
])  # fmt: skip
def test_what_no_house_has_is_refused(wrong):
    with pytest.raises(EngineError):
        candidate_job(job(), wrong)


def test_ducts_that_nobody_described_stay_as_they_were_believed():
    its = job_from_mapping({"equipment.cooling_tons": 4, "equipment.kind": "heat_pump"})
    after = candidate_job(its, Candidate(tons=2.0))
    for name in ("supply.trunks", "return.drops"):
        areas = [
            ducts_of(house, name)[0].area_ft2
            for house in (draw(its, 128), draw(after, 128, as_found=its))
        ]
        np.testing.assert_array_equal(areas[0], areas[1])
    before, tried = compare(its, [Candidate(tons=2.0)], samples=1024)
    assert tried.modes[COOLING].over_share < before.modes[COOLING].over_share


def test_readings_say_the_same_of_the_ducts_whatever_is_tried():
    reading = {
        "mode": "cooling_high",
        "filter_state": "clean",
        "total_external_inwc": 0.9,
        "return_inwc": -0.5,
    }
    its = job(**THREE_TONS, readings=[reading])
    before = assess(its, samples=256)
    after = assess(
        candidate_job(its, Candidate(tons=2.5)),
        samples=256,
        evidence=before.evidence,
        as_found=its,
    )
    (_, tried) = compare(its, [Candidate(tons=2.5)], samples=256)
    assert tried.modes[COOLING].over_share == after.modes[COOLING].over_share


def test_the_largest_quiet_size_is_the_last_that_carries():
    # 20 x 9 in. at 900 fpm is 1,125 CFM, 2.8 tons at 400 CFM a ton: 2.5 is the largest sold
    its = job(**THREE_TONS)
    found = largest_quiet(its, samples=1024)
    assert found is not None
    assert (found.tons, found.airflow_cfm, found.per_ton_cfm) == (2.5, 1000.0, 400.0)
    assert found.quiet_cfm is not None
    assert found.quiet_cfm.likely == pytest.approx(1125.0)
    assert not found.needs
    assert not found.unmet
    verdicts = compare(its, [Candidate(tons=2.5)], samples=1024)
    assert [v.modes[COOLING].status is ModeStatus.CARRIES for v in verdicts] == [False, True]


def test_a_size_of_another_heat_pump_is_told_with_the_table_that_it_needs():
    found = largest_quiet(heat_pump(), samples=1024)
    assert found is not None
    assert found.tons in SOLD_TONS
    assert found.needs == (BLOWER_TABLES,)


def test_ducts_too_small_for_any_size_carry_none():
    # 10 x 6 in. at 900 fpm is 375 CFM; 1.5 tons ask for 600
    small = THREE_TONS | {"supply__trunks": [{"width_in": 10, "height_in": 6}]}
    found = largest_quiet(job(**small), samples=512)
    assert found is not None
    assert found.tons is None
    assert not found.unmet
    assert found.quiet_cfm is not None
    assert found.quiet_cfm.high < 1.5 * 400.0


def test_no_size_is_called_carried_by_ducts_that_nobody_described():
    found = largest_quiet(job(**THREE_TONS | {"supply__trunks": None}), samples=256)
    assert found is not None
    assert found.tons is None
    assert found.unmet == ("supply.trunks",)


def test_without_cooling_there_is_no_largest_size():
    only_heat = job(
        equipment__cooling_tons=None, equipment__stages=None, target__cooling_high_cfm=None,
        new__coil_drop_inwc=None, new__coil_drop_at_cfm=None,
    )  # fmt: skip
    assert largest_quiet(only_heat, samples=64) is None
