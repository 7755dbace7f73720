"""What isn't known is measured first: a mode is given up only where that can't save it."""

from typing import Any

import pytest
from support.houses import COOLING, SOUND

from engine.job.loading import job_from_mapping
from engine.job.modes import Mode
from engine.judge import judge
from engine.verdict import ModeStatus, Verdict


def judged(*facts: dict[str, Any], **how: Any) -> Verdict:
    told = {key: value for one in facts for key, value in one.items()}
    return judge(job_from_mapping(told), samples=1024, **how)


# 1,000 CFM through 14 x 8 in.: 1,000 x 144 / 112 = 1,286 fpm, 700 the most; all else is sound.
SMALL_DROP = {"return.drops": [{"width_in": 14, "height_in": 8}]}
UNKNOWN_OPENINGS = {**SOUND, **SMALL_DROP}
del UNKNOWN_OPENINGS["return.grilles"]


def test_a_small_drop_alone_is_cleared_by_a_new_one():
    told = judged(SOUND, SMALL_DROP).modes[COOLING]
    assert told.status is ModeStatus.CARRIES_WITH_CHANGES
    assert told.changes is not None
    assert told.changes.remedies == ("larger_return_drop",)


def test_openings_nobody_measured_leave_a_small_drop_unsaid_and_are_wanted_first():
    told = judged(UNKNOWN_OPENINGS)
    cooling = told.modes[COOLING]
    assert cooling.status is ModeStatus.CANT_SAY
    assert cooling.over_share == 1.0
    assert "return_drop_velocity" in cooling.reasons
    assert "return.grilles" in cooling.unmet_floor
    assert cooling.treat_as is None
    assert "measure_first_openings" in {one.key for one in told.remedies}


def test_openings_nobody_can_measure_leave_it_to_be_treated_as_wont_carry():
    told = judged(UNKNOWN_OPENINGS, collectable=()).modes[COOLING]
    assert told.status is ModeStatus.CANT_SAY
    assert told.treat_as is ModeStatus.WONT_CARRY


def test_measured_openings_settle_it_either_way():
    good = {"return.grilles": [{"width_in": 30, "height_in": 24, "has_filter": "no"}]}
    told = judged(UNKNOWN_OPENINGS, good).modes[COOLING]
    assert told.status is ModeStatus.CARRIES_WITH_CHANGES


def test_a_trunk_known_too_small_is_given_up_whatever_the_openings_are():
    told = judged(UNKNOWN_OPENINGS, {"supply.trunks": [{"width_in": 16, "height_in": 8}]}).modes[
        COOLING
    ]
    assert told.status is ModeStatus.WONT_CARRY


def test_a_drop_that_must_grow_much_waits_for_a_look_at_the_room_beside_the_cabinet():
    tiny = {"return.drops": [{"width_in": 10, "height_in": 8}]}
    told = judged(SOUND, tiny)
    assert told.modes[COOLING].status is ModeStatus.CANT_SAY
    assert "house.clearance_for_return" in told.modes[COOLING].unmet_floor
    room = next(one for one in told.remedies if one.key == "measure_first_room")
    assert "instead of 10 x 8 in." in room.words
    looked = {"house.clearance_for_return": "yes"}
    there = judged(SOUND, tiny, looked).modes[COOLING]
    assert there.status is ModeStatus.CARRIES_WITH_CHANGES
    none = judged(SOUND, tiny, {"house.clearance_for_return": "no"})
    assert none.modes[COOLING].status is ModeStatus.WONT_CARRY


def test_a_change_that_helps_nothing_does_not_give_a_mode_up():
    # 57,600 Btu/h over a rise of 45 F is about 1,190 CFM, 950 fpm through 18 x 10 in.: over 700.
    # Less air would still be too much for it; a new drop clears what is known to be over.
    told = {
        "equipment.kind": "furnace",
        "equipment.cooling_tons": 2.5,
        "equipment.heating_input_btuh": 60000,
        "equipment.heating_efficiency_fraction": 0.96,
        "equipment.rise_low_degf": 30,
        "equipment.rise_high_degf": 60,
        "target.cooling_high_cfm": 1000,
        "return.drops": [{"width_in": 18, "height_in": 10, "material": "galvanized"}],
    }
    found = judged(told).modes[Mode.HEATING_HIGH]
    assert found.over_share > 0.9
    assert found.status is ModeStatus.CANT_SAY
    assert "supply.trunks" in found.unmet_floor


# 64,000 Btu/h at 35 to 65 F wants about 1,200 CFM; the drop of 24 x 10 in. takes 1,167 at 700 fpm
# and can be built anew. Nobody spoke of the trunk.
@pytest.mark.parametrize("told_of_trunk", [{}, {"supply.trunks": [{"count": 1}]}])
def test_an_unknown_trunk_keeps_heat_open_where_less_air_would_be_too_little(told_of_trunk):
    told = judged(
        {
            **told_of_trunk,
            "equipment.kind": "furnace", "equipment.cooling_tons": 3, "equipment.stages": "single",
            "target.cooling_high_cfm": 1200, "equipment.heating_input_btuh": 80000,
            "equipment.heating_efficiency_fraction": 0.8, "equipment.rise_low_degf": 35,
            "equipment.rise_high_degf": 65,
            "return.drops": [{"width_in": 24, "height_in": 10, "measured_where": "bare_metal"}],
        }
    )  # fmt: skip
    heating = told.modes[Mode.HEATING_HIGH]
    assert heating.over_share >= 0.9
    assert heating.status is ModeStatus.CANT_SAY
