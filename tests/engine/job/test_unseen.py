"""Ducts nobody spoke of: in the samples where they may be, and gone where somebody said no."""

from typing import Any

import numpy as np
import pytest
from support.houses import COOLING, assessed, facts, house

from engine.job.unseen import unseen_of


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
    at = assessed(facts(return__trunks=None))
    (raw,) = (r for r in at.modes[COOLING].raws if r.check == "return_trunk_velocity")
    there = unseen_of(at.house)[0].present
    assert raw.votes
    assert raw.judged.over.any()
    assert not (raw.judged.over & ~there).any()
    # a usual return trunk of 2.5 tons is about 135 sq in.: 1,000 CFM runs at over 1,000 fpm in it
    assert at.modes[COOLING].over_share >= raw.over_share > 0.4
    assert assessed(facts()).modes[COOLING].over_share < 0.05


def test_no_house_is_called_sound_while_its_return_trunk_is_unseen() -> None:
    known = assessed(facts()).modes[COOLING]
    unseen = assessed(facts(return__trunks=None)).modes[COOLING]
    assert known.over_share <= 0.05 < unseen.over_share


def test_two_drops_share_the_air_among_their_return_trunks() -> None:
    drop = {"width_in": 24, "height_in": 14}
    (one,) = unseen_of(house(facts(return__trunks=None, return__drops=[drop, drop])))
    assert one.duct.share == pytest.approx(0.5)
