"""Statuses: each from a house with one thing wrong, and what must be known before `carries`."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from support.houses import COOLING, HEATING, SOUND, assessed, cooling, facts, finding, job, verdict

from engine.job.belief import Between, How, Known
from engine.job.job import Job
from engine.judge import SURE, assess, judge
from engine.trade.exponents import PressurePart
from engine.trade.limits import LIMITS, turned
from engine.verdict import ModeStatus, Part

CARRIES, WONT, CANT = ModeStatus.CARRIES, ModeStatus.WONT_CARRY, ModeStatus.CANT_SAY
FIXABLE = (ModeStatus.CARRIES_WITH_CHANGES, ModeStatus.WONT_CARRY)


def test_the_sound_house_carries_in_every_mode() -> None:
    found = verdict(SOUND)
    assert tuple(found.modes) == (COOLING, HEATING)
    for mode in found.modes.values():
        assert mode.status is CARRIES
        assert mode.confidence >= SURE
        assert mode.unmet_floor == ()
        assert not mode.borderline
        assert mode.changes is None


# One fault each; the arithmetic that makes it one, at 1,000 CFM. Limits: see the limits table.
FAULTS = [
    # 1,000 x 144 / (14 x 8) = 1,286 fpm over 900
    ("trunk_velocity", Part.SUPPLY_TRUNK, {"supply.trunks": [{"width_in": 14, "height_in": 8}]}),
    # 1,000 x 144 / (14 x 8) = 1,286 fpm over 700
    (
        "return_drop_velocity",
        Part.RETURN_DROP,
        {"return.drops": [{"width_in": 14, "height_in": 8}]},
    ),
    # 1,000 x 144 / (14 x 14) = 735 fpm over 600
    (
        "return_grille_velocity",
        Part.RETURN_OPENINGS,
        {"return.grilles": [{"width_in": 14, "height_in": 14, "has_filter": False}]},
    ),
    # 1,000 x 144 / (14 x 20) = 514 fpm over 450
    (
        "filter_grille_velocity",
        Part.RETURN_OPENINGS,
        {"return.grilles": [{"width_in": 14, "height_in": 20, "has_filter": True}]},
    ),
    # 1,000 x 144 / (6 x pi x 6 x 6 / 4 = 169.6) = 849 fpm is under 900; 5 in.: 1,222 fpm over 900
    (
        "branch_velocity",
        Part.SUPPLY_BRANCHES,
        {"supply.branches": [{"diameter_in": 5, "count": 6, "share_fraction": 1}]},
    ),
    # 1,000 x 144 / (14 x 14) = 735 fpm over 700
    (
        "return_trunk_velocity",
        Part.RETURN_TRUNK,
        {"return.trunks": [{"width_in": 14, "height_in": 14}]},
    ),
    # 0.45 in. over 0.38
    ("filter_drop", Part.FILTER, {"new.filter_drop_inwc": 0.45}),
    # the whole table gives 700 CFM at most, 70 % of the target
    (
        "delivered_airflow",
        Part.BLOWER,
        {
            "equipment.blower_tables": [
                {
                    "setting": "low",
                    "rows": [
                        {"static_inwc": 0.1, "airflow_cfm": 700},
                        {"static_inwc": 1.0, "airflow_cfm": 600},
                    ],
                }
            ]
        },
    ),
]


@pytest.mark.parametrize(("check", "part", "fault"), FAULTS, ids=[row[0] for row in FAULTS])
def test_one_fault_alone_keeps_the_mode_from_carrying(check, part, fault) -> None:
    found = cooling({**SOUND, **fault})
    assert found.status in FIXABLE
    assert found.over_share >= SURE
    assert check in found.reasons
    told = finding(found, check)
    assert told.part is part
    assert told.ratio is not None
    assert told.ratio > 1.0
    assert told.known


def test_a_furnace_too_big_for_its_air_fails_in_heating_only() -> None:
    # 110,000 x 0.8 = 88,000 Btu/h; / (1.08 x about 1,050 CFM) = 78 F, the plate ends at 65
    found = verdict(facts(equipment__heating_input_btuh=110000, target__heating_high_cfm=1000))
    assert found.modes[COOLING].status is CARRIES
    assert found.modes[HEATING].status in FIXABLE
    assert "temperature_rise" in found.modes[HEATING].reasons


@pytest.mark.parametrize(
    ("missing", "key"),
    [
        ("target.cooling_high_cfm", "target.cooling_high_cfm"),
        ("supply.trunks", "supply.trunks"),
        ("return.drops", "return.drops"),
        ("return.grilles", "return.grilles"),
        ("filters", "filters"),
        ("equipment.blower_tables", "equipment.blower_tables"),
    ],
)
def test_what_the_floor_lacks_is_named_and_keeps_carries_away(missing, key) -> None:
    known = {k: v for k, v in SOUND.items() if k != missing}
    found = verdict(known)
    mode = found.modes[COOLING]
    assert mode.unmet_floor == (key,)
    assert mode.status is not CARRIES
    assert found.collect_next[0].key == key


def test_unmet_with_nothing_more_to_be_had_is_treated_as_wont_carry() -> None:
    # everything about this house is generous; only nobody knows the blower's table
    known = facts(
        equipment__blower_tables=None,
        equipment__blower_kind="ecm_variable",
        supply__trunks=[{"width_in": 30, "height_in": 12}],
    )
    found = cooling(known, collectable=())
    assert found.over_share <= 1.0 - SURE
    assert found.status is CANT
    assert found.treat_as is WONT
    assert not found.borderline


def test_a_house_without_a_drop_says_so_and_that_counts() -> None:
    found = cooling({**SOUND, "return.drops": []})
    assert found.unmet_floor == ()
    assert found.status is CARRIES


def test_a_range_somebody_gave_counts_as_known() -> None:
    ranged = {"low": 980, "likely": 1000, "high": 1020, "how": "phone"}
    found = cooling(facts(target__cooling_high_cfm=ranged))
    assert found.unmet_floor == ()


def test_the_stated_limit_of_a_constant_airflow_blower_counts_as_its_table() -> None:
    found = cooling(
        facts(
            equipment__blower_tables=None,
            equipment__blower_kind="ecm_variable",
            equipment__max_static_inwc=0.9,
        )
    )
    assert found.unmet_floor == ()
    assert found.status is CARRIES


def test_a_reading_with_its_airflow_counts_as_the_blowers_table() -> None:
    reading = [{"airflow_cfm": 1000, "airflow_source": "flow_plate", "total_external_inwc": 0.5}]
    found = cooling(facts(equipment__blower_tables=None, readings=reading))
    assert found.unmet_floor == ()
    without = [{"total_external_inwc": 0.5}]
    lacking = cooling(facts(equipment__blower_tables=None, readings=without))
    assert lacking.unmet_floor == ("equipment.blower_tables",)


def test_on_the_line_with_nothing_to_collect_takes_the_worse_status() -> None:
    # a phone size of a trunk at its limit: 1,000 x 144 / (20 x 8) = 900 fpm, plus and minus 20 %
    width = {"value": 20, "how": "phone"}
    trunk = [{"width_in": width, "height_in": 8, "measured_where": "bare_metal"}]
    found = cooling({**SOUND, "supply.trunks": trunk}, collectable=())
    assert 1.0 - SURE < found.over_share < SURE
    assert found.borderline
    assert found.status in FIXABLE


def test_in_between_with_something_to_collect_is_cant_say() -> None:
    # nobody stated the drop: some believed drops are too narrow for 1,000 CFM, some are not
    known = {k: v for k, v in SOUND.items() if k != "return.drops"}
    found = cooling(known)
    assert 1.0 - SURE < found.over_share < SURE
    assert found.status is CANT
    assert not found.borderline
    assert found.treat_as is None


def test_over_by_beliefs_alone_is_not_said() -> None:
    found = verdict({"house.floor_area_ft2": 1800}).modes[COOLING]
    assert found.status is CANT
    assert not any(f.known for f in found.findings if f.over_share >= SURE)


def test_a_job_nobody_spoke_of_wants_the_floor_first() -> None:
    found = judge(Job(), samples=512)
    assert found.modes[COOLING].status is CANT
    keys = {wanted.key for wanted in found.collect_next[:6]}
    assert keys == {
        "target.cooling_high_cfm",
        "supply.trunks",
        "return.drops",
        "return.grilles",
        "filters",
        "equipment.blower_tables",
    }
    assert all(wanted.why for wanted in found.collect_next)


def test_assumptions_are_those_nobody_stated_most_influential_first() -> None:
    known = {k: v for k, v in SOUND.items() if k != "return.drops"}
    assumed = verdict(known).assumed
    assert assumed[0].key == "return.drops"
    assert [a.weight for a in assumed] == sorted((a.weight for a in assumed), reverse=True)
    stated = job_keys(known)
    assert not [a.key for a in assumed if a.key in stated]


def job_keys(mapping) -> set[str]:
    from engine.job.loading import job_from_mapping

    return set(job_from_mapping(mapping).beliefs)


def test_the_best_setting_is_taken_and_named() -> None:
    weak = {
        "setting": "low",
        "rows": [
            {"static_inwc": 0.1, "airflow_cfm": 700},
            {"static_inwc": 1.0, "airflow_cfm": 600},
        ],
    }
    tables = [weak, *SOUND["equipment.blower_tables"]]
    found = cooling({**SOUND, "equipment.blower_tables": tables})
    assert found.setting == "high"
    assert found.status is CARRIES


def test_a_setting_kept_for_another_mode_is_not_used() -> None:
    kept = [{**SOUND["equipment.blower_tables"][0], "modes": ["heating_high"]}]
    found = verdict({**SOUND, "equipment.blower_tables": kept})
    assert found.modes[HEATING].setting == "high"
    assert found.modes[COOLING].setting == ""
    assert "equipment.blower_tables" in found.modes[COOLING].unmet_floor


def test_the_most_air_these_ducts_carry_quietly_is_the_narrowest_of_all() -> None:
    # trunk 240 sq in. x 900 / 144 = 1,500; drop 336 x 700 / 144 = 1,633; grille 720 x 600 / 144 =
    # 3,000; branches 11 x 38.48 sq in. x 900 / 144 = 2,646 CFM
    found = cooling(SOUND)
    assert found.quiet_capacity_cfm is not None
    assert found.quiet_capacity_cfm.likely == pytest.approx(1500.0)


def test_turning_a_limit_turns_the_verdict() -> None:
    # the sound trunk: 1,000 x 144 / 240 = 600 fpm; an office that stops at 550 says no
    strict = turned(LIMITS, "supply_trunk_rigid.recommended_fpm", 500, "our office")
    strict = turned(strict, "supply_trunk_rigid.maximum_fpm", 550, "our office")
    found = cooling(SOUND, limits=strict)
    assert found.status in FIXABLE
    assert finding(found, "trunk_velocity").source == "our office"


def test_a_zoned_house_is_judged_all_open_and_the_rest_refused_by_name() -> None:
    assert "zone" in verdict(facts(house__zoned=True)).refused[0]
    assert verdict(SOUND).refused == ()


def test_the_same_job_has_the_same_verdict() -> None:
    known = {k: v for k, v in SOUND.items() if k != "return.drops"}
    assert verdict(known) == verdict(known)


def test_an_answer_about_something_else_shifts_no_other_draw() -> None:
    known = {k: v for k, v in SOUND.items() if k != "return.drops"}
    before = assessed(known).house.drawn["return.drops.0 in2 per ton"].values
    after = assessed({**known, "house.year_built": 1990}).house.drawn["return.drops.0 in2 per ton"]
    assert np.array_equal(before, after.values)


@pytest.mark.parametrize("member", [0, 1, 7, 31])
def test_every_member_is_the_house_that_states_its_values(member) -> None:
    ranged = {"low": 14, "likely": 20, "high": 26, "how": "phone"}
    rest = {"height_in": 10, "measured_where": "inside"}
    many = assessed({**SOUND, "supply.trunks": [{"width_in": ranged, **rest}]}, 32)
    width = float(many.house.drawn["supply.trunks.0.width_in"].values[member])
    one = assessed({**SOUND, "supply.trunks": [{"width_in": width, **rest}]}, 32)
    for of_many, of_one in zip(many.modes[COOLING].raws, one.modes[COOLING].raws, strict=True):
        assert of_many.check == of_one.check
        assert of_many.figure[member] == pytest.approx(of_one.figure[member], rel=1e-9)
        assert of_many.judged.over[member] == of_one.judged.over[member]
        assert of_many.judged.tight[member] == of_one.judged.tight[member]


def test_known_exactly_is_the_same_in_every_sample() -> None:
    told = finding(cooling(SOUND), "trunk_velocity")
    assert told.spread.low == told.spread.likely == told.spread.high == told.figure


def test_shares_settle_as_samples_grow() -> None:
    known = {k: v for k, v in SOUND.items() if k != "return.drops"}
    few, many = cooling(known, samples=1024), cooling(known, samples=8192)
    # standard error of a share of 1,024 is at most 0.016
    assert few.over_share == pytest.approx(many.over_share, abs=0.05)


CHOKED = [
    {
        "mode": "cooling_high",
        "airflow_cfm": 600,
        "airflow_source": "flow_plate",
        "filter_state": "clean",
        "before_filter_inwc": 0.30,
        "after_filter_inwc": 0.37,
        "before_coil_inwc": 0.58,
        "after_coil_inwc": 0.40,
    }
]
"""Ducts that take 0.30 + 0.40 in. at 600 CFM take 0.7 x 1.67^1.9 = 1.85 at 1,000; with coil 0.20
and filter 0.08 that is 2.13 in., where the table ends at 1.0 with 880 CFM."""

USUAL = {
    "path.total_effective_length_ft": None,
    "return.drops": [{"width_in": 20, "height_in": 12}],
    "supply.trunks": [{"width_in": 20, "height_in": 10}],
    "condition.coil": "clean",
}


def test_readings_of_a_choked_house_turn_its_verdict() -> None:
    usual = {k: v for k, v in {**SOUND, **USUAL}.items() if v is not None}
    assert cooling(usual).status is CARRIES
    found = cooling({**usual, "readings": CHOKED})
    assert found.status in FIXABLE
    static = finding(found, "external_static")
    assert static.over_share >= SURE
    assert set(static.because) == {"return", "supply"}
    assert "readings" in static.known


def test_a_reading_that_contradicts_the_house_keeps_carries_away() -> None:
    # a 24 x 14 drop and 720 sq in. of grille do not pull 0.30 in. at 600 CFM
    found = verdict(facts(readings=CHOKED, condition__coil="clean"))
    assert found.doubts
    doubted = found.doubts[0].reading
    assert doubted in found.modes[COOLING].unmet_floor
    assert found.modes[COOLING].status is not CARRIES
    assert "again" in next(w.why for w in found.collect_next if w.key == doubted)


@settings(max_examples=25, deadline=None)
@given(
    width=st.floats(4, 48),
    target=st.floats(150, 3000),
    tons=st.floats(1, 5.5),
    drop=st.floats(0.05, 0.7),
    elevation=st.floats(-280, 10500),
    how=st.sampled_from(list(How)),
)
def test_whatever_is_stated_the_figures_are_finite(
    width, target, tons, drop, elevation, how
) -> None:
    stated = {
        "supply.trunks.0.width_in": Known(width, how),
        "supply.trunks.0.height_in": Known(8.0, how),
        "target.cooling_high_cfm": Known(target, how),
        "equipment.cooling_tons": Known(tons, how),
        "new.coil_drop_inwc": Between(0.05, drop, 0.7, how),
        "site.elevation_ft": Known(elevation, how),
        "equipment.kind": Known("furnace", how),
    }
    found = judge(Job().with_facts(stated), samples=64)
    for mode in found.modes.values():
        assert 0.0 <= mode.over_share <= 1.0
        for told in mode.findings:
            numbers = (told.figure, told.over_share, told.tight_share)
            assert all(math.isfinite(number) for number in numbers)
            assert told.spread.low <= told.spread.likely <= told.spread.high


def test_every_finding_is_complete() -> None:
    for mode in verdict(facts(house__zoned=True)).modes.values():
        for told in mode.findings:
            assert told.formula
            assert told.source
            assert told.where
            assert told.rests_on
            assert set(told.known) <= set(told.rests_on)
            assert told.over_share + told.tight_share <= 1.0
            if told.ratio is not None and told.maximum is not None:
                assert (told.ratio > 1.0 + 1e-9) == (told.status.value == "over")


def test_an_edited_job_is_judged_on_the_readings_of_the_house_as_found() -> None:
    found = job(readings=CHOKED, **{k.replace(".", "__"): v for k, v in USUAL.items()})
    base = assess(found, samples=512)
    wider = found.with_facts({"return.drops.0.width_in": Known(40.0, How.DOCUMENT)})
    edited = assess(wider, samples=512, evidence=base.evidence)
    before, after = (a.system.parts[PressurePart.RETURN_DUCT].drop_inwc for a in (base, edited))
    assert (after < before).all()
    assert edited.evidence is base.evidence


def test_nothing_known_of_the_ducts_never_says_that_they_wont_carry() -> None:
    """The target and the blower's table alone say nothing of this house's ducts."""
    house = ("supply", "return", "filters", "path")
    asked = {key: value for key, value in SOUND.items() if not key.startswith(house)}
    assert cooling({**asked, "target.cooling_high_cfm": 1900}).status is CANT


def test_a_furnace_with_only_a_rise_range_may_run_anywhere_in_it() -> None:
    """64,000 Btu/h over 35 to 65 F is 912 to 1,693 CFM by Q = output / (1.08 x rise)."""
    rest = {key: value for key, value in SOUND.items() if not key.startswith("target.heating")}
    plate = {
        "equipment.heating_input_btuh": 80000,
        "equipment.heating_efficiency_fraction": 0.8,
        "equipment.rise_low_degf": 35,
        "equipment.rise_high_degf": 65,
    }
    heating = verdict({**rest, **plate}).modes[HEATING]
    assert heating.delivered_cfm is not None
    assert 64000 / (1.08 * 65) <= heating.target_cfm.likely <= 64000 / (1.08 * 35)
    assert heating.target_cfm.likely == pytest.approx(heating.delivered_cfm.likely, rel=0.01)
