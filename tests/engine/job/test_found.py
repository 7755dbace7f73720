"""What readings make of the path: narrowed, coupled to the sizes, carried to edited houses."""

import numpy as np
import pytest
from support.houses import SOUND, assessed, facts, job

from engine.assessment import assess
from engine.job.belief import How, Known
from engine.job.modes import Mode
from engine.trade.exponents import PressurePart

COOL = Mode.COOLING_HIGH
RETURN, SUPPLY = PressurePart.RETURN_DUCT, PressurePart.SUPPLY_DUCT

READ = [
    {
        "mode": "cooling_high",
        "airflow_cfm": 1000,
        "airflow_source": "flow_plate",
        "filter_state": "clean",
        "before_filter_inwc": 0.09,
        "after_filter_inwc": 0.17,
        "before_coil_inwc": 0.32,
        "after_coil_inwc": 0.12,
    }
]
CLEAN = {"condition__coil": "clean", "condition__blower_wheel": "clean"}
VAGUE = {
    "path__total_effective_length_ft": None,
    "return__drops": [{"width_in": 20, "height_in": 12}],
}


def spread(assessment, part):
    return np.percentile(assessment.system.parts[part].drop_inwc[1:], (10, 50, 90))


def test_readings_move_and_narrow_what_sizes_alone_say() -> None:
    alone = assessed(facts(**VAGUE))
    read = assessed(facts(**VAGUE, **CLEAN, readings=READ))
    for part, gauge in ((RETURN, 0.09), (SUPPLY, 0.12)):
        before, after = spread(alone, part), spread(read, part)
        assert after[1] == pytest.approx(gauge, abs=0.03)  # a field reading's own scatter
        assert abs(after[1] - gauge) <= abs(before[1] - gauge) + 0.005
    assert read.evidence is not None
    assert not read.doubts
    assert read.effective_samples <= 1024


def test_the_new_coil_and_filter_are_the_makers_not_the_old_ones() -> None:
    # the old coil read 0.20; a new one of 0.33 goes in
    read = assessed(facts(**VAGUE, **CLEAN, readings=READ, new__coil_drop_inwc=0.33))
    assert read.system.drop_inwc(PressurePart.COIL, 1000.0, COOL)[0] == pytest.approx(0.33)
    assert read.system.drop_inwc(PressurePart.FILTER, 1000.0, COOL)[0] == pytest.approx(0.08)


def test_houses_whose_sizes_ask_for_much_go_with_draws_that_take_much() -> None:
    read = assessed(facts(**VAGUE, **CLEAN, readings=READ))
    by_sizes = sum(read.evidence.by_sizes_inwc[p][1:] for p in (RETURN, SUPPLY))
    after = sum(read.evidence.drop_inwc[p][1:] for p in (RETURN, SUPPLY))
    assert np.corrcoef(by_sizes, after)[0, 1] > 0.3


def test_an_edit_changes_what_was_read_by_what_its_sizes_change() -> None:
    found = job(**VAGUE, **CLEAN, readings=READ)
    base = assess(found, samples=256)
    grille = {"return.grilles.0.width_in": Known(48.0, How.DOCUMENT)}
    wider = {"return.drops.0.width_in": Known(28.0, How.DOCUMENT)}
    for change, part in ((grille, RETURN), (wider, RETURN)):
        edited = assess(found.with_facts(change), samples=256, evidence=base.evidence)
        ratio = edited.system.parts[part].drop_inwc / base.system.parts[part].drop_inwc
        assert (ratio < 1.0).all()
        same = edited.system.parts[SUPPLY].drop_inwc / base.system.parts[SUPPLY].drop_inwc
        assert same == pytest.approx(np.ones(257))


def test_an_unedited_house_with_its_own_evidence_is_the_same() -> None:
    found = job(**VAGUE, **CLEAN, readings=READ)
    base = assess(found, samples=256)
    again = assess(found, samples=256, evidence=base.evidence)
    for part in base.system.parts:
        assert again.system.parts[part].drop_inwc == pytest.approx(
            base.system.parts[part].drop_inwc
        )


def test_a_known_posterior_serves_fewer_samples() -> None:
    found = job(**VAGUE, **CLEAN, readings=READ)
    base = assess(found, samples=1024)
    few = assess(found, samples=256, posterior=base.evidence.posterior)
    for part in (RETURN, SUPPLY):
        assert spread(few, part) == pytest.approx(spread(base, part), rel=0.15)
    assert few.effective_samples <= 256


def test_without_readings_there_is_no_evidence() -> None:
    assert assessed(SOUND).evidence is None
    assert assessed(facts(readings=[{"mode": "cooling_high"}])).evidence is None
