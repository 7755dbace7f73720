from typing import Any

import numpy as np
import pytest
from support.simulated_house import (
    CLEAN,
    MIDDLES,
    SUPPLY,
    Truth,
    airflow_prior,
    prior_of,
    reading_of,
)

from engine.assessment import assess
from engine.job import evidence_doubts
from engine.job.evidence import Dirt, FilterState, Reading, Tap, posterior, tapped
from engine.job.evidence_doubts import doubts_of
from engine.job.evidence_fit import Fit, best_fit
from engine.job.evidence_model import Model
from engine.job.loading import job_from_mapping
from engine.physics.blower_table import BlowerTable

HOUSES = 50
"""Seeds for each of four slips: 200 planted ones in all."""
TAPS = (Tap.BEFORE_FILTER, Tap.AFTER_FILTER, Tap.BEFORE_COIL, Tap.AFTER_COIL)
PRIOR = prior_of(1024)


def doubts_about(taps, airflow, prior=PRIOR, **more):
    model = Model(prior, [reading_of(taps, airflow, n=1024, **more)])
    return doubts_of(model, best_fit(model))


def readings_of_house(seed):
    truth = Truth.drawn(seed)
    return truth.gauged(), truth.airflow_found()


def planted(slip, seed, taps):
    """A usual slip planted in four sound readings; the taps it touches."""
    if slip == "sign":
        # as a gauge shows it, then one sign lost or gained
        for tap in (Tap.BEFORE_FILTER, Tap.AFTER_FILTER):
            taps[tap] = -taps[tap]
        tap = (Tap.BEFORE_COIL, Tap.AFTER_COIL)[seed % 2]
        taps[tap] = -taps[tap]
        return {tap}
    if slip == "pascal":
        tap = TAPS[seed % 4]
        taps[tap] = round(taps[tap] * 249.089)
        return {tap}
    if slip == "decimal_point":
        tap = TAPS[seed % 4]
        taps[tap] = round(10.0 * taps[tap], 2)
        return {tap}
    pair = ((Tap.BEFORE_FILTER, Tap.AFTER_FILTER), (Tap.BEFORE_COIL, Tap.AFTER_COIL))[seed % 2]
    taps[pair[0]], taps[pair[1]] = taps[pair[1]], taps[pair[0]]
    return set(pair)


@pytest.mark.parametrize("slip", ["sign", "pascal", "decimal_point", "ports_swapped"])
def test_a_planted_slip_is_named_first_in_most_houses(slip):
    reading_named = slip_named = 0
    for seed in range(HOUSES):
        taps, airflow = readings_of_house(seed)
        touched = planted(slip, seed, taps)
        doubts, _ = doubts_about(taps, airflow)
        if doubts and any(doubts[0].reading == f"readings.0.{tap}_inwc" for tap in touched):
            reading_named += 1
            slip_named += doubts[0].slip == slip
    assert reading_named >= 0.85 * HOUSES, reading_named
    assert slip_named >= 0.70 * HOUSES, slip_named


def test_sound_houses_are_accused_in_at_most_two_of_a_hundred():
    accused = 0
    for seed in range(5000, 5400):
        taps, airflow = readings_of_house(seed)
        accused += bool(doubts_about(taps, airflow)[0])
    assert accused <= 8, accused


def test_sound_houses_with_unseen_dirt_are_accused_as_seldom():
    prior = prior_of(1024, dirt=Dirt())
    accused = 0
    for seed in range(6000, 6200):
        taps, airflow = readings_of_house(seed)
        rng = np.random.default_rng(seed)
        dirt = float(rng.choice([1.0, 1.4, 2.2], p=[0.75, 0.2, 0.05]))
        coil = taps[Tap.BEFORE_COIL] - taps[Tap.AFTER_COIL]
        taps[Tap.BEFORE_COIL] += round((dirt - 1.0) * max(coil, 0.0), 2)
        accused += bool(doubts_about(taps, airflow, prior)[0])
    assert accused <= 4, accused


def test_a_total_that_is_the_difference_of_its_sides_is_told_as_a_sign():
    taps = {Tap.AFTER_FILTER: -0.30, Tap.BEFORE_COIL: 0.40, Tap.TOTAL_EXTERNAL: 0.10}
    doubts, left_out = doubts_about(taps, 1000.0)
    assert (doubts[0].reading, doubts[0].slip) == ("readings.0.total_external_inwc", "sign")
    assert left_out == ("readings.0.total_external_inwc",)
    assert "add up" in doubts[0].words


def test_a_total_that_is_the_sum_of_its_sides_is_no_second_reading():
    taps = {Tap.AFTER_FILTER: -0.30, Tap.BEFORE_COIL: 0.40, Tap.TOTAL_EXTERNAL: 0.70}
    model = Model(PRIOR, [reading_of(taps, None, n=1024)])
    assert [o.tap for o in model.observations] == [Tap.AFTER_FILTER, Tap.BEFORE_COIL]


def test_return_readings_may_be_typed_with_or_without_their_sign():
    taps = {Tap.BEFORE_FILTER: 0.1, Tap.AFTER_FILTER: 0.3, Tap.BEFORE_COIL: 0.4}
    minus = {tap: -v if tap is not Tap.BEFORE_COIL else v for tap, v in taps.items()}
    models = [Model(PRIOR, [reading_of(t, None, n=1024)]) for t in (taps, minus)]
    assert np.array_equal(models[0].value, models[1].value)


def test_a_reading_with_a_slip_is_left_out_of_the_draws():
    taps, airflow = readings_of_house(8)
    sound = posterior(PRIOR, [reading_of(taps, airflow, n=1024)], samples=1024)
    taps[Tap.AFTER_COIL] = round(249.089 * taps[Tap.AFTER_COIL])
    slipped = posterior(PRIOR, [reading_of(taps, airflow, n=1024)], samples=1024)
    assert slipped.left_out == ("readings.0.after_coil_inwc",)
    assert slipped.left_out[0] not in slipped.used
    ratio = np.median(slipped.drop_inwc[SUPPLY]) / np.median(sound.drop_inwc[SUPPLY])
    assert 0.5 < ratio < 2.0


def test_a_house_that_differs_from_its_geometry_is_doubted_but_believed():
    # a supply duct at four times what its sizes say: crushed flex, not a slip of the pen
    small = prior_of(1024, middles={**MIDDLES, SUPPLY: 0.06})
    taps = {Tap.BEFORE_FILTER: 0.12, Tap.AFTER_FILTER: 0.28, Tap.BEFORE_COIL: 0.85,
            Tap.AFTER_COIL: 0.62}  # fmt: skip
    found = posterior(small, [reading_of(taps, 1000.0, n=1024)], samples=1024)
    assert found.doubts[0].reading == "readings.0.after_coil_inwc"
    assert found.doubts[0].slip == ""
    assert "shut damper" in found.doubts[0].look_for
    assert found.left_out == ()
    assert np.median(found.drop_inwc[SUPPLY]) > 0.35


def test_a_drop_far_below_its_filter_asks_for_air_that_passes_beside_it():
    taps = {Tap.FILTER_DROP: 0.0, Tap.AFTER_COIL: 0.2}
    doubts, _ = doubts_about(taps, 1600.0)
    assert doubts[0].reading == "readings.0.filter_drop_inwc"
    assert "beside the filter" in doubts[0].look_for


def test_every_doubt_says_what_was_read_and_ends_as_a_sentence():
    for slip in ("sign", "pascal", "decimal_point", "ports_swapped"):
        taps, airflow = readings_of_house(2)
        planted(slip, 2, taps)
        for doubt in doubts_about(taps, airflow)[0]:
            typed = taps[Tap(doubt.reading.removeprefix("readings.0.").removesuffix("_inwc"))]
            assert f"{typed:g} in wc" in doubt.words
            assert doubt.words.endswith(".")
            assert doubt.chi_square > 0.0


def test_a_blower_table_follows_the_total_it_is_entered_with():
    table = BlowerTable.from_rows("high", [(0.1, 1400.0), (0.5, 1200.0), (0.9, 900.0)])
    taps = {Tap.AFTER_FILTER: 0.30, Tap.BEFORE_COIL: 0.40}
    model = Model(PRIOR, [reading_of(taps, None, n=1024, blower_table=table)])
    airflow = next(o for o in model.observations if o.tap is None)
    assert np.exp(airflow.value) == pytest.approx(1050.0)
    assert airflow.hides_wheel


def test_beyond_a_tables_last_row_the_airflow_is_only_a_bound():
    table = BlowerTable.from_rows("high", [(0.1, 1400.0), (0.5, 1200.0)])
    reading = Reading(
        "readings.0",
        {Tap.TOTAL_EXTERNAL: tapped(Tap.TOTAL_EXTERNAL, 0.9)},
        airflow_prior(1024),
        blower_table=table,
        filter_state=FilterState.CLEAN,
    )
    found = posterior(prior_of(1024, dirt=CLEAN), [reading], samples=1024)
    assert np.quantile(found.airflow_cfm["readings.0"], 0.95) < 1450.0
    assert np.quantile(found.airflow_cfm["readings.0"], 0.05) < 1000.0


def test_readings_that_can_not_all_be_true_leave_a_vague_house_not_a_handful_of_draws():
    taps = {Tap.AFTER_FILTER: 0.2, Tap.FILTER_DROP: 0.75, Tap.BEFORE_COIL: 0.1,
            Tap.COIL_DROP: 0.6, Tap.AFTER_COIL: 0.5, Tap.TOTAL_EXTERNAL: 0.04}  # fmt: skip
    found = posterior(PRIOR, [reading_of(taps, 400.0, n=1024)], samples=1024)
    assert found.doubts
    assert found.effective_samples > 250.0


def test_wild_readings_are_searched_with_a_bounded_number_of_fits(monkeypatch) -> None:
    fits = 0

    def counted(*told: Any, **how: Any) -> Fit:
        nonlocal fits
        fits += 1
        return best_fit(*told, **how)

    monkeypatch.setattr(evidence_doubts, "best_fit", counted)
    taps = ("before_filter", "after_filter", "before_coil", "after_coil", "return", "supply")
    wild = [
        {f"{tap}_inwc": value for tap, value in zip(taps, values, strict=True)}
        | {"mode": "cooling_high", "airflow_cfm": airflow, "airflow_source": "flow_plate"}
        for values, airflow in (
            ((-2.0, 0.9, 0.5, 2.0, 2.0, 0.6), 160),
            ((0.9, -2.0, -0.5, 0.9, 0.1, -2.0), 2500),
        )
    ]
    found = assess(job_from_mapping({"readings": wild}), samples=64)
    assert found.doubts
    # three doubts; each: every one of 14 readings left out, three or so slips in six suspects
    assert fits <= 3 * (14 + 4 * 6) + 20
