"""The room that starves: by hand, and over the houses that may stand there."""

import math

import numpy as np
import pytest
from fluids.friction import friction_factor as published_factor
from scipy.optimize import brentq
from support.houses import cooling, facts, finding, house

from engine.job.lengths import lengths_of
from engine.job.sections import ducts_of
from engine.job.system import tree_of
from engine.verdict import FindingStatus


def _pipe_loss_inwc(airflow_cfm: float, feet: float) -> float:
    """Darcy's equation with the library's factor, 7 in. metal pipe, standard air."""
    across_ft = 7.0 / 12.0
    speed_ft_s = airflow_cfm / 60.0 / (math.pi / 4.0 * across_ft**2)
    # figures: 0.0003 ft roughness, 1.62e-4 ft2/s (2021 ASHRAE Fundamentals ch. 21, read)
    factor = published_factor(Re=speed_ft_s * across_ft / 1.62e-4, eD=0.0003 / across_ft)
    velocity_pressure = (speed_ft_s * 60.0 / 4005.0) ** 2
    return factor * feet / across_ft * velocity_pressure


def test_the_far_half_gets_what_one_plenum_pressure_gives_it():
    # Five 7 in. runs of 20 ft and five of 120 ft should get 100 CFM each of 1,000. Each has the
    # usual branch fittings and ends in a register of 0.03 in. at 100 CFM. By hand: the near ones
    # take q, the far ones 200 - q, where both lose the same pressure.
    near = {"diameter_in": 7, "count": 5, "length_ft": 20, "share_fraction": 0.5}
    far = {"diameter_in": 7, "count": 5, "length_ft": 120, "share_fraction": 0.5, "name": "far"}
    told = facts(
        supply__branches=[near, far], new__register_drop_inwc=0.03, target__heating_high_cfm=900
    )
    fittings_ft = float(lengths_of(house(told, samples=1)).branch_fittings_ft[0])

    def difference(near_cfm: float) -> float:
        far_cfm = 200.0 - near_cfm
        near_inwc = _pipe_loss_inwc(near_cfm, 20.0 + fittings_ft) + 0.03 * (near_cfm / 100.0) ** 2
        far_inwc = _pipe_loss_inwc(far_cfm, 120.0 + fittings_ft) + 0.03 * (far_cfm / 100.0) ** 2
        return near_inwc - far_inwc

    by_hand = 200.0 - brentq(difference, 100.0, 190.0)
    found = finding(cooling(told), "branch_share")
    assert "far" in found.where
    assert found.figure == pytest.approx(by_hand, rel=1e-3)  # per cent of 100 CFM
    assert found.status is FindingStatus.FINE  # 87 %; from 85 % on a room counts as served


def test_a_vague_length_leaves_the_starving_room_between_sure_and_unlikely():
    near = {"diameter_in": 7, "count": 9, "length_ft": 10, "share_fraction": 0.9}
    far = {"diameter_in": 7, "share_fraction": 0.1, "name": "far bedroom",
           "length_ft": {"low": 10, "likely": 45, "high": 140}}  # fmt: skip
    found = finding(cooling(facts(supply__branches=[near, far])), "branch_share")
    assert 0.05 < found.tight_share < 0.95
    assert f"In {100.0 * found.tight_share:.0f} of 100" in found.note
    assert found.spread.low < found.spread.high
    assert found.over_share == 0.0
    assert not found.votes


def test_a_tree_of_many_members_equals_the_tree_of_each():
    there = house(facts(supply__branches=[
        {"diameter_in": 7, "count": 6, "length_ft": 10, "share_fraction": 0.6},
        {"diameter_in": {"low": 4, "likely": 5, "high": 6}, "length_ft": 40,
         "share_fraction": 0.4, "count": 5, "material": "flex"},
    ]), samples=6)  # fmt: skip
    args = (ducts_of(there, "supply.trunks"), ducts_of(there, "supply.branches"))
    many = tree_of(there, *args, lengths_of(there), 1000.0, slice(0, 7))
    assert many is not None
    whole = many.split(np.full(7, 900.0))
    for place in range(7):
        one = tree_of(there, *args, lengths_of(there), 1000.0, slice(place, place + 1))
        assert one is not None
        alone = one.split(np.array([900.0]))
        assert whole.outlet_cfm[place] == pytest.approx(alone.outlet_cfm[0], rel=1e-9)
    central = tree_of(there, *args, lengths_of(there), 1000.0)
    assert central is not None
    assert central.split(900.0).outlet_cfm == pytest.approx(whole.outlet_cfm[0], rel=1e-9)
