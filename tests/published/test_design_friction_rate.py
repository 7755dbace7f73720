"""The residential duct design sum: available static, effective length, friction rate.

No published example of this sum could be read, and none is claimed: the house is invented. The sum
itself is the residential duct design standard's (ANSI/ACCA 1 Manual D):

    available static = external static - everything in the airstream the rating leaves out
    total effective length = longest supply run + longest return run, straight feet and fittings
    friction rate = available static x 100 / total effective length
    (the three: read in an open training course, and memory, high)

Its usual allowances of 0.03 in. each for register, grille and balancing damper are memory, high;
the usual window 0.06 to 0.18 is memory, high. The coil's and filter's drops are a maker's figures
of this invented house, and the fittings' lengths are stated, so that no table is asked.

By hand, furnace rated 0.50 in., target 1,000 CFM:

    0.50 - coil 0.20 - filter 0.10 - register 0.03 - grille 0.03 - damper 0.03 = 0.11 in.
    supply 45 ft + (35 + 45 + 2 x 15 + 30) ft = 185 ft; return 20 ft + (75 + 20) ft = 115 ft
    185 + 115 = 300 ft;  0.11 x 100 / 300 = 0.0367 in. per 100 ft: below 0.06

The same with a filter of 0.05 and a coil of 0.11 leaves 0.25 in.: 0.0833, inside the window; and
with a coil of 0.32 and a filter of 0.15, 0.50 - 0.56 is less than nothing: no rate is told.
"""

import pytest
from support.houses import cooling, facts, finding

from engine.checks.longest_run import NOTHING_LEFT
from engine.verdict import FindingStatus

RUN = {
    "path.total_effective_length_ft": None,
    "path.supply_length_ft": 45,
    "path.return_length_ft": 20,
    "path.fittings": [
        {"kind": "plenum_exit_tapered", "side": "supply", "count": 1, "equivalent_ft": 35},
        {"kind": "takeoff_straight", "side": "supply", "count": 1, "equivalent_ft": 45},
        {"kind": "round_elbow_smooth", "side": "supply", "count": 2, "equivalent_ft": 15},
        {"kind": "boot_straight", "side": "supply", "count": 1, "equivalent_ft": 30},
        {"kind": "return_drop_square", "side": "return", "count": 1, "equivalent_ft": 75},
        {"kind": "return_boot", "side": "return", "count": 1, "equivalent_ft": 20},
    ],
}
SUM = {
    "equipment.blower_tables": None,
    "equipment.rated_static_inwc": 0.50,
    "target.cooling_high_cfm": 1000,
    "target.heating_high_cfm": 1000,
    "new.register_drop_inwc": 0.03,
    "new.grille_drop_inwc": 0.03,
    "new.damper_drop_inwc": 0.03,
}


def _judged(coil_inwc: float, filter_inwc: float):
    changed = {
        **SUM,
        **RUN,
        "new.coil_drop_inwc": coil_inwc,
        "new.coil_drop_at_cfm": 1000,
        "new.filter_drop_inwc": filter_inwc,
        "new.filter_drop_at_cfm": 1000,
    }
    return cooling(facts(**{key.replace(".", "__"): value for key, value in changed.items()}))


def test_effective_length_is_the_sum_by_hand() -> None:
    assert finding(_judged(0.20, 0.10), "effective_length").figure == pytest.approx(300.0, abs=0.01)


# standard air at sea level stands in the engine at a ratio within 0.2 % of 1
@pytest.mark.parametrize(
    ("coil_inwc", "filter_inwc", "rate", "status"),
    [
        (0.20, 0.10, 0.0367, FindingStatus.TIGHT),
        (0.11, 0.05, 0.0833, FindingStatus.FINE),
    ],
)
def test_friction_rate_is_the_sum_by_hand(
    coil_inwc: float, filter_inwc: float, rate: float, status: FindingStatus
) -> None:
    found = finding(_judged(coil_inwc, filter_inwc), "friction_rate")
    assert found.figure == pytest.approx(rate, abs=5e-4)
    assert found.recommended == 0.06
    assert found.status is status


def test_less_than_nothing_is_no_rate() -> None:
    found = finding(_judged(0.32, 0.15), "friction_rate")
    assert found.figure == 0.0
    assert found.note == NOTHING_LEFT
    assert found.status is FindingStatus.TIGHT
