"""The adapter that cautions ask: what is known, judged, proposed and said."""

from dataclasses import replace

from support.verdicts import a_finding, a_job, a_mode, a_verdict, same

from engine.job.belief import How, Known
from engine.job.job import Job
from engine.job.modes import Mode
from engine.verdict import FindingStatus, Verdict
from intake.telling.cautions import CAUTIONS
from intake.telling.situation import JudgedHouse, cautions_of


def slugs(*arguments):
    return [one.slug for one in cautions_of(*arguments)]


def test_permits_are_told_even_of_an_empty_job():
    assert "permit" in slugs(Job())


def test_words_switch_cautions_on_whatever_their_case():
    assert "mould_and_droppings" in slugs(Job(), None, "There is BLACK MOLD in the plenum")


def test_the_worst_status_of_a_check_over_all_modes_counts():
    fine = a_finding(status=FindingStatus.FINE)
    modes = {
        Mode.COOLING_HIGH: a_mode(findings=(fine,)),
        Mode.HEATING_HIGH: a_mode(findings=(a_finding(),)),
    }
    house = JudgedHouse(a_job(), Verdict(modes=modes))
    assert house.finding("trunk_velocity") == "over"
    assert house.finding("never_put") is None


def test_air_per_ton_is_what_full_cooling_gets_over_the_nominal_size():
    # 1,100 CFM delivered / 3 tons = 366.7 (by hand).
    house = JudgedHouse(a_job(), a_verdict())
    assert abs(house.predicted("cfm_per_ton") - 1100.0 / 3.0) < 1e-9
    assert house.predicted("rise_degf") is None


def test_little_air_for_the_coil_is_warned_of():
    mode = a_mode(delivered_cfm=same(690.0))  # 690 / 3 tons = 230 CFM per ton (by hand)
    assert "coil_freezing" in slugs(a_job(), Verdict(modes={Mode.COOLING_HIGH: mode}))


def test_a_rise_over_the_plate_is_warned_of_with_its_figures():
    rise = a_finding(
        check="temperature_rise", mode=Mode.HEATING_HIGH, figure=74.0, unit="F",
        recommended=None, maximum=65.0,
    )  # fmt: skip
    verdict = Verdict(modes={Mode.HEATING_HIGH: a_mode(mode=Mode.HEATING_HIGH, findings=(rise,))})
    job = a_job().with_fact("equipment.rise_high_degf", Known(65.0, How.PLATE))
    caution = next(one for one in cautions_of(job, verdict) if one.slug == "rise_too_high")
    assert "74 F" in caution.because
    assert "65 F" in caution.because


def test_a_remedy_brings_its_own_cautions():
    verdict = a_verdict()
    remedy = replace(verdict.remedies[0], cautions=("structure",))
    caution = next(
        one
        for one in cautions_of(a_job(), replace(verdict, remedies=(remedy,)))
        if one.slug == "structure"
    )
    assert "Fit a 20 x 20 filter grille" in caution.because


def test_cautions_come_gravest_first():
    told = cautions_of(a_job(), a_verdict(), "mold, baby, oxygen, ladder, rust, soot")
    assert [one.gravity for one in told] == sorted(one.gravity for one in told)
    assert {one.slug for one in told} <= {row.slug for row in CAUTIONS}
