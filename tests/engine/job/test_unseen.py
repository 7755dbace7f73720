"""Ducts nobody spoke of: in the samples where they may be, and gone where somebody said no."""

from typing import Any

import numpy as np
import pytest
from support.houses import COOLING, assessed, facts, house

from engine.job.loading import job_from_mapping
from engine.job.sample import draw
from engine.job.unseen import unseen_of

NEAR_ITS_LIMIT = {"width_in": 18, "height_in": 12, "measured_where": "inside"}


def keys(**changed: Any) -> set[str]:
    return {one.duct.key for one in unseen_of(house(facts(**changed)))}


def test_a_house_of_which_everything_is_known_has_none() -> None:
    assert keys() == set()


def test_what_nobody_spoke_of_may_be_there() -> None:
    assert keys(return__trunks=None) == {"return.trunks.0"}
    assert keys(supply__branches=None) == {"supply.branches.0"}
    assert keys(house__trunk_steps_down=None) == {"supply.trunks.1"}


def test_a_smaller_part_that_was_stated_is_no_unseen_one() -> None:
    trunks = [
        {"width_in": 24, "height_in": 10},
        {"width_in": 16, "height_in": 10, "from": "supply.trunks.0"},
    ]
    assert keys(supply__trunks=trunks, house__trunk_steps_down=None) == set()


def test_a_step_down_that_was_told_without_its_size_is_there_everywhere() -> None:
    (one,) = unseen_of(house(facts(house__trunk_steps_down="yes")))
    assert one.present.all()
    (maybe,) = unseen_of(house(facts(house__trunk_steps_down=None)))
    assert np.mean(maybe.present[1:]) == pytest.approx(0.5, abs=0.01)


def test_a_step_down_is_as_fast_as_its_trunk_give_or_take() -> None:
    (one,) = unseen_of(house(facts(house__trunk_steps_down="yes")))
    trunk_ft2 = 24.0 * 10.0 / 144.0
    over_start = one.duct.share * trunk_ft2 / one.duct.area_ft2
    assert np.percentile(over_start[1:], (10, 50, 90)) == pytest.approx(
        [0.75, 0.92, 1.15], abs=0.01
    )


def test_an_unseen_return_trunk_votes_where_it_is_and_only_there() -> None:
    at = assessed(facts(return__trunks=None, return__drops=[NEAR_ITS_LIMIT]))
    (raw,) = (r for r in at.modes[COOLING].raws if r.check == "return_trunk_velocity")
    there = unseen_of(at.house)[0].present
    assert raw.votes
    assert raw.judged.over.any()
    assert not (raw.judged.over & ~there).any()
    # 216 sq in. carry 1,000 CFM at 667 fpm; a trunk with less than 0.95 of that area is over 700
    assert at.modes[COOLING].over_share >= raw.over_share > 0.1


def test_a_drop_near_its_limit_is_not_called_sound_while_the_trunk_before_it_is_unseen() -> None:
    known = assessed(facts(return__drops=[NEAR_ITS_LIMIT])).modes[COOLING]
    unseen = assessed(facts(return__drops=[NEAR_ITS_LIMIT], return__trunks=None)).modes[COOLING]
    assert known.over_share <= 0.05 < 0.1 < unseen.over_share


def test_a_roomy_drop_speaks_for_the_trunk_before_it() -> None:
    assert assessed(facts(return__trunks=None)).modes[COOLING].over_share < 0.05


def test_a_new_drop_makes_no_unseen_trunk_larger() -> None:
    narrow = {"width_in": 14, "height_in": 10}
    before = job_from_mapping(facts(return__trunks=None, return__drops=[narrow]))
    after = job_from_mapping(facts(return__trunks=None))
    found = [one.duct.area_ft2 for one in unseen_of(draw(before, 64))]
    kept = [one.duct.area_ft2 for one in unseen_of(draw(after, 64, as_found=before))]
    assert kept[0] == pytest.approx(found[0])


def test_what_was_told_whole_hides_nothing() -> None:
    told = job_from_mapping(facts(return__trunks=None, supply__branches=None), whole_lists=True)
    assert unseen_of(draw(told, 64)) == ()


def test_two_drops_share_the_air_among_their_return_trunks() -> None:
    drop = {"width_in": 24, "height_in": 14}
    (one,) = unseen_of(house(facts(return__trunks=None, return__drops=[drop, drop])))
    assert one.duct.share == pytest.approx(0.5)
