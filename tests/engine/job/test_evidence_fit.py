from math import log

import numpy as np
import pytest
from scipy import stats
from support.simulated_house import (
    COIL,
    FILTER,
    RETURN,
    SUPPLY,
    Truth,
    prior_of,
    reading_of,
)

from engine.errors import FactError, OutOfRangeError
from engine.job.evidence import (
    Dirt,
    FilterState,
    PartPrior,
    PressurePrior,
    Reading,
    Tap,
    airflow_told,
    matching_draws,
    posterior,
    tapped,
)
from engine.job.evidence_fit import chi_square_share_above
from engine.job.evidence_latents import (
    Latents,
    Marginal,
    marginal_of_draws,
    marginal_of_spread,
)
from engine.job.modes import Mode

TWO_PARTS_SCATTER = np.array([[0.25, 0.10, 0.0], [0.10, 0.20, 0.0], [0.0, 0.0, 0.09]])
TWO_PARTS_MIDDLE = np.array([log(0.15), log(0.25), log(1100.0)])


def two_part_case(taps, airflow):
    """A house without filter or coil: its whole posterior fits on a three-dimensional grid."""
    rng = np.random.default_rng(5)
    draws = (
        TWO_PARTS_MIDDLE + rng.standard_normal((40000, 3)) @ np.linalg.cholesky(TWO_PARTS_SCATTER).T
    )
    even = np.full(len(draws), 1.9)
    prior = PressurePrior(
        1000.0,
        {
            RETURN: PartPrior(np.exp(draws[:, 0]), even),
            SUPPLY: PartPrior(np.exp(draws[:, 1]), even),
        },
    )
    reading = Reading(
        "readings.0",
        {tap: tapped(tap, value) for tap, value in taps.items()},
        np.exp(draws[:, 2]),
        airflow=None if airflow is None else airflow_told(airflow),
        mode=Mode.COOLING_HIGH,
        filter_state=FilterState.NONE,
    )
    return posterior(prior, [reading], seed=3)


def dense_quadrature(taps, airflow):
    """Means, deviations and correlation of the two logarithms, by summing over a fine grid.

    Written from the laws alone: drop = drop at 1,000 CFM x (airflow / 1,000)^1.9, pressures off by
    0.03 in or a tenth, a told airflow by a quarter.
    """
    axes = [
        np.linspace(m - 5.0 * s, m + 5.0 * s, 121)
        for m, s in zip(TWO_PARTS_MIDDLE, np.sqrt(np.diag(TWO_PARTS_SCATTER)), strict=True)
    ]
    grid = np.stack(np.meshgrid(*axes, indexing="ij"), axis=-1)
    density = stats.multivariate_normal(TWO_PARTS_MIDDLE, TWO_PARTS_SCATTER).logpdf(grid)
    back = np.exp(grid[..., 0] + 1.9 * (grid[..., 2] - log(1000.0)))
    supply = np.exp(grid[..., 1] + 1.9 * (grid[..., 2] - log(1000.0)))
    would_read = {Tap.RETURN: back, Tap.SUPPLY: supply, Tap.TOTAL_EXTERNAL: back + supply}
    for tap, value in taps.items():
        density += stats.norm(value, max(0.03, 0.1 * value)).logpdf(would_read[tap])
    if airflow is not None:
        density += stats.norm(log(airflow), 0.25).logpdf(grid[..., 2])
    weight = np.exp(density - density.max())
    weight /= weight.sum()
    mean = [float(np.sum(weight * grid[..., i])) for i in (0, 1)]
    away = [grid[..., i] - mean[i] for i in (0, 1)]
    deviation = [float(np.sqrt(np.sum(weight * a**2))) for a in away]
    together = float(np.sum(weight * away[0] * away[1])) / (deviation[0] * deviation[1])
    return mean, deviation, together


@pytest.mark.parametrize(
    ("taps", "airflow"),
    [
        ({Tap.RETURN: 0.30, Tap.SUPPLY: 0.22}, 1250.0),
        ({Tap.RETURN: 0.12, Tap.SUPPLY: 0.40}, None),
        ({Tap.TOTAL_EXTERNAL: 0.85}, 1000.0),
        ({Tap.TOTAL_EXTERNAL: 0.25}, None),
        ({Tap.RETURN: 0.05}, 800.0),
    ],
)
def test_the_posterior_is_that_of_a_dense_quadrature(taps, airflow):
    found = two_part_case(taps, airflow)
    mean, deviation, together = dense_quadrature(taps, airflow)
    logs = [np.log(found.drop_inwc[part]) for part in (RETURN, SUPPLY)]
    # 4,096 draws leave a sixtieth of a deviation; quantile knots and 40,000 prior draws as much
    for i in (0, 1):
        assert float(logs[i].mean()) == pytest.approx(mean[i], abs=0.07 * deviation[i])
        assert float(logs[i].std()) == pytest.approx(deviation[i], rel=0.06)
    assert float(np.corrcoef(*logs)[0, 1]) == pytest.approx(together, abs=0.06)


def test_truths_lie_inside_their_bands_as_often_as_promised():
    inside = {RETURN: 0, FILTER: 0, COIL: 0, SUPPLY: 0}
    prior = prior_of(1024)
    houses = 150
    for seed in range(houses):
        truth = Truth.drawn(1000 + seed)
        found = posterior(prior, [reading_of(truth.gauged(), truth.airflow_found(), n=1024)],
                          samples=256, seed=seed)  # fmt: skip
        for part in inside:
            low, high = np.quantile(found.drop_inwc[part], (0.1, 0.9))
            inside[part] += bool(low <= truth.drops[part] <= high)
    # 120 of 150 are due; four standard deviations of counting are 20
    for part, count in inside.items():
        assert 100 <= count <= 140, (part, count)


@pytest.mark.parametrize("seed", range(8))
def test_four_good_readings_and_an_airflow_leave_a_thousand_effective_samples(seed):
    truth = Truth.drawn(seed)
    reading = reading_of(truth.gauged(), truth.airflow_found())
    for dirt in (Dirt("clean", "clean", "clean"), Dirt()):
        found = posterior(prior_of(dirt=dirt), [reading], seed=seed)
        assert found.effective_samples >= 1000.0
        assert len(np.unique(found.drop_inwc[SUPPLY])) >= 1000


def test_weighting_prior_samples_would_leave_few():
    # the reason for drawing from the posterior: the same readings on prior samples alone
    truth = Truth.drawn(3)
    exact = truth.exact()
    prior = prior_of()
    flow = np.exp(0.28 * np.random.default_rng(8).standard_normal(4096)) * 1.05
    drop = {p: prior.parts[p].drop_inwc * flow ** prior.parts[p].exponent for p in prior.parts}
    would_read = {
        Tap.BEFORE_FILTER: drop[RETURN],
        Tap.AFTER_FILTER: drop[RETURN] + drop[FILTER],
        Tap.BEFORE_COIL: drop[SUPPLY] + drop[COIL],
        Tap.AFTER_COIL: drop[SUPPLY],
    }
    log_weight = -0.5 * ((np.log(flow * 1000.0 / truth.airflow_cfm)) / 0.09) ** 2
    for tap, value in exact.items():
        log_weight -= 0.5 * ((would_read[tap] - value) / max(0.03, 0.1 * value)) ** 2
    weight = np.exp(log_weight - log_weight.max())
    assert weight.sum() ** 2 / np.sum(weight**2) < 250.0
    assert posterior(prior, [reading_of(exact, truth.airflow_cfm)]).effective_samples > 1000.0


def test_no_reading_gives_the_prior_back():
    prior = prior_of()
    found = posterior(prior, [])
    for part, before in prior.parts.items():
        for share in (0.1, 0.5, 0.9):
            assert np.quantile(np.log(found.drop_inwc[part]), share) == pytest.approx(
                np.quantile(np.log(before.drop_inwc), share), abs=0.04
            )
    assert found.doubts == ()
    assert found.chi_square == 0.0


def test_the_same_seed_gives_the_same_draws_and_another_seed_others():
    reading = reading_of(Truth.drawn(1).gauged(), 1000.0)
    first, again = (posterior(prior_of(), [reading], seed=4) for _ in range(2))
    other = posterior(prior_of(), [reading], seed=5)
    assert np.array_equal(first.drop_inwc[SUPPLY], again.drop_inwc[SUPPLY])
    assert not np.array_equal(first.drop_inwc[SUPPLY], other.drop_inwc[SUPPLY])


def test_more_readings_narrow_what_they_speak_of():
    truth = Truth.drawn(2)
    taps = truth.exact()
    none = posterior(prior_of(), [])
    some = posterior(prior_of(), [reading_of(taps)])
    all_of_them = posterior(prior_of(), [reading_of(taps, truth.airflow_cfm)])
    spread = [float(np.log(p.drop_inwc[SUPPLY]).std()) for p in (none, some, all_of_them)]
    assert spread[2] < 0.8 * spread[1] < 0.8 * spread[0]


@pytest.mark.parametrize("total", [0.3, 0.6, 0.9, 1.3, 1.8])
@pytest.mark.parametrize("filter_state", [FilterState.DIRTY, None])
def test_a_dirty_total_without_splits_never_raises_what_is_believed_of_the_ducts(
    total, filter_state
):
    prior = prior_of(dirt=Dirt(coil="some_dirt", filter="some_dirt"))
    found = posterior(
        prior,
        [reading_of({Tap.TOTAL_EXTERNAL: total}, 1000.0, filter_state=filter_state)],
    )
    for part in (RETURN, SUPPLY):
        for share in (0.5, 0.9, 0.95):
            believed = np.quantile(np.log(prior.parts[part].drop_inwc), share)
            # three standard errors of a quantile of 4,096 draws with this scatter
            assert np.quantile(np.log(found.drop_inwc[part]), share) < believed + 0.06


def test_a_clean_total_with_its_airflow_does_raise_it():
    found = posterior(prior_of(), [reading_of({Tap.TOTAL_EXTERNAL: 1.3}, 1000.0)])
    assert np.median(found.drop_inwc[SUPPLY]) > 1.2 * 0.16


def test_an_unseen_coil_says_less_of_the_clean_one_than_a_clean_coil_does():
    taps, airflow = {Tap.COIL_DROP: 0.40}, 1000.0
    clean = posterior(prior_of(dirt=Dirt("clean", "clean", "clean")), [reading_of(taps, airflow)])
    unseen = posterior(prior_of(dirt=Dirt(None, "clean", "clean")), [reading_of(taps, airflow)])
    width = [float(np.log(p.drop_inwc[COIL]).std()) for p in (clean, unseen)]
    assert width[1] > 1.1 * width[0]
    assert np.median(unseen.coil_dirt) > np.median(clean.coil_dirt)


def test_a_filter_in_a_grille_is_read_with_the_return_duct():
    prior = prior_of(filter_is_at_grille=True)
    taps = {Tap.AFTER_FILTER: 0.35, Tap.BEFORE_FILTER: 0.0, Tap.AFTER_COIL: 0.2}
    found = posterior(prior, [reading_of(taps, 1000.0)])
    together = found.drop_inwc[RETURN] + found.drop_inwc[FILTER]
    assert np.median(together) == pytest.approx(0.35, abs=0.06)
    assert np.corrcoef(found.drop_inwc[RETURN], found.drop_inwc[FILTER])[0, 1] < -0.3


def test_heating_reads_a_dry_coil_so_the_wet_one_is_believed_higher():
    taps, airflow = {Tap.COIL_DROP: 0.25}, 1000.0
    wet = posterior(prior_of(), [reading_of(taps, airflow)])
    dry = posterior(prior_of(), [reading_of(taps, airflow, mode=Mode.HEATING_HIGH)])
    assert np.median(dry.drop_inwc[COIL]) > 1.04 * np.median(wet.drop_inwc[COIL])


def test_drops_scale_to_another_airflow_by_each_draws_own_power():
    found = posterior(prior_of(), [reading_of(Truth.drawn(1).exact(), 1000.0)])
    direct = np.exp(found.log_coefficient(SUPPLY)) * 1400.0 ** found.exponent[SUPPLY]
    assert found.drop_at_inwc(SUPPLY, 1400.0) == pytest.approx(direct)


def test_matching_draws_keep_rank_and_spread():
    rng = np.random.default_rng(1)
    prior = np.exp(rng.standard_normal(4096))
    wanted = np.exp(0.3 + 0.2 * rng.standard_normal(2000))
    matched = prior[matching_draws(prior, wanted, seed=2)]
    assert np.corrcoef(np.log(matched), np.log(wanted))[0, 1] > 0.9
    assert np.log(matched).mean() == pytest.approx(np.log(wanted).mean(), abs=0.03)


@pytest.mark.parametrize("degrees", [1, 2, 3, 4, 5, 8, 13])
def test_chi_square_tail_matches_scipy(degrees):
    for value in (0.01, 0.5, 3.0, 10.0, 40.0):
        assert chi_square_share_above(value, degrees) == pytest.approx(
            stats.chi2.sf(value, degrees), rel=1e-9, abs=1e-14
        )


def test_a_marginal_gives_back_the_quantiles_of_its_draws():
    draws = np.random.default_rng(3).gamma(2.0, size=20000)
    marginal = marginal_of_draws(draws)
    for share in (0.05, 0.1, 0.3, 0.5, 0.8, 0.95):
        z = float(stats.norm.ppf(share))
        assert float(marginal.at(np.array([z]))[0]) == pytest.approx(
            float(stats.gamma(2.0).ppf(share)), rel=0.05
        )


def test_impossible_priors_are_refused():
    one = np.ones(8)
    with pytest.raises(OutOfRangeError):
        PartPrior(np.zeros(8), one)
    with pytest.raises(FactError):
        PartPrior(np.ones(8), np.ones(7))
    with pytest.raises(FactError):
        PressurePrior(1000.0, {RETURN: PartPrior(one, one)})
    with pytest.raises(OutOfRangeError):
        PressurePrior(float("nan"), {RETURN: PartPrior(one, one), SUPPLY: PartPrior(one, one)})
    with pytest.raises(FactError):
        posterior(prior_of(64, dirt=Dirt(coil="filthy")), [reading_of({Tap.RETURN: 0.2}, n=64)])


def test_unknowns_looked_up_together_lie_on_the_lines_of_each() -> None:
    # numpy's own interpolation, one marginal at a time; scores beyond the last knots are held
    rng = np.random.default_rng(8)
    usual = marginal_of_draws(rng.lognormal(size=300))
    marginals = {
        "usual": usual,
        "wide": usual.wider(4.0),
        "bent": marginal_of_spread(-1.0, 0.0, 3.0),
        "known": marginal_of_draws(np.full(20, 2.0)),
        "close knots": Marginal(np.array([-3.0, -2.99, -2.98, -2.97, 5.0]), np.arange(5.0)),
    }
    u = np.concatenate([3.0 * rng.standard_normal((3000, 5)), [[edge] * 5 for edge in (-7, 0, 7)]])
    found = Latents.of(marginals, np.eye(5)).values(u)
    for place, (name, one) in enumerate(marginals.items()):
        assert found[name] == pytest.approx(np.interp(u[:, place], one.z, one.value), abs=1e-12)
