"""Slips and causes planted in simulated houses, judged from the facts as typed.

The houses' forward model is written apart from the engine (`scripts/simulated_faults.py`); the
full count is `scripts/bench_faults.py`. Floors are what a person would still call useful, not what
the engine happens to reach.
"""

from collections import Counter

import pytest

from engine.errors import FactError
from engine.job.loading import job_from_mapping
from scripts.simulated_faults import FAULTS, Found, SimulatedHouse, found_in, planted, share_accused

HOUSES = 24


def counted(fault):
    return Counter(found_in(planted(fault, seed), samples=256) for seed in range(HOUSES))


@pytest.mark.parametrize(
    ("fault", "least"),
    [
        ("sign", 0.70),
        ("ports swapped", 0.85),
        ("decimal point", 0.75),
        ("pascals typed as in. w.c.", 0.90),
        ("airflow's decimal point", 0.95),
    ],
)
def test_a_planted_slip_is_named_first_in_most_houses(fault, least):
    counts = counted(fault)
    assert counts[Found.NAMED] >= least * HOUSES, counts
    assert counts[Found.ELSEWHERE] <= 0.10 * HOUSES, counts


def test_sound_houses_are_seldom_accused():
    assert share_accused(range(200_000, 200_040), samples=256) <= 1 / 40


def test_the_same_seed_plants_the_same_fault():
    assert planted("sign", 3) == planted("sign", 3)
    assert len(set(FAULTS)) == len(FAULTS) >= 10


def test_the_simulated_house_follows_its_own_powers():
    # halving the airflow: 2^1.9 = 3.732 in a duct, 2^1.4 = 2.639 in a pleated filter, 2^1.8 = 3.482
    house = SimulatedHouse.drawn(1)
    for part, less in (("supply", 3.732), ("return", 3.732), ("filter", 2.639), ("coil", 3.482)):
        ratio = house.drop_inwc(part, 1000.0) / house.drop_inwc(part, 500.0)
        assert ratio == pytest.approx(less, abs=0.001)


def test_a_pressure_in_pascals_is_refused_with_what_it_is_in_inches():
    # 60 / 249.089 = 0.241
    with pytest.raises(FactError, match=r"in pascals, it is 0\.24 in\. w\.c\.") as refused:
        job_from_mapping({"readings": [{"after_coil_inwc": 60}]})
    assert refused.value.key == "readings.0.after_coil_inwc"
    with pytest.raises(FactError) as slipped:
        job_from_mapping({"readings": [{"after_coil_inwc": 2.5}]})
    assert "pascals" not in slipped.value.problem
