"""The best fit of a house to its readings, and draws from what is believed after them.

Works on independent standard normals: the prior is their own bell, the readings bend it.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import erfc, exp, log, pi, sqrt
from types import MappingProxyType
from typing import Final

import numpy as np

from engine.arrays import Array, require_within
from engine.job.evidence_model import Model

__all__ = ["Draws", "Fit", "best_fit", "chi_square_share_above", "posterior_draws"]

NOTHING_LOOSE: Final[Mapping[str, float]] = MappingProxyType({})
"""Every unknown as wide as it is believed to be."""

_STEP: Final = 0.05
_MOST_STEPS: Final = 25
_SETTLED_SHARE: Final = 1e-4
_MOST_TRIES: Final = 8
_SETTLED: Final = 1e-3
_FURTHEST: Final = 6.5


@dataclass(frozen=True, slots=True)
class Fit:
    """The most probable house.

    Attributes:
        u: Its unknowns, (d,).
        covariance: Of the normal that fits there, (d, d).
        chi_square: Squares of the readings' misses and of the unknowns' own, in deviations.
        degrees: Readings it was fitted to: each counts once, whatever the unknowns' number.
    """

    u: Array
    covariance: Array
    chi_square: float
    degrees: int

    @property
    def share_above(self) -> float:
        """Share of sound houses that would miss by more."""
        return chi_square_share_above(self.chi_square, self.degrees)


def chi_square_share_above(chi_square: float, degrees: int) -> float:
    """Share of a chi-square distribution above a value.

    Args:
        chi_square: 0 or more.
        degrees: 0 to 200; with none, the share is 1 at 0 and 0 above.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: closed forms of the incomplete gamma function at whole and half orders.

    >>> round(chi_square_share_above(3.841, 1), 3)
    0.05
    """
    require_within("chi_square", chi_square, 0.0, 1e9)
    require_within("degrees", float(degrees), 0.0, 200.0)
    if degrees == 0:
        return 1.0 if chi_square == 0.0 else 0.0
    half = 0.5 * chi_square
    if half > 700.0:
        return 0.0
    if degrees % 2 == 0:
        term = total = exp(-half)
        for k in range(1, degrees // 2):
            term *= half / k
            total += term
        return total
    total = erfc(sqrt(half))
    term = exp(-half) * sqrt(half) / sqrt(pi) * 2.0
    for k in range(1, (degrees + 1) // 2):
        total += term
        term *= half / (k + 0.5)
    return min(total, 1.0)


def best_fit(
    model: Model, start: Array | None = None, looseness: Mapping[str, float] = NOTHING_LOOSE
) -> Fit:
    """The most probable house, by damped Gauss-Newton steps.

    Args:
        model: Its unknowns and readings.
        start: Unknowns to start from, (d,); the prior's middle if None.
        looseness: How many times wider than believed an unknown is taken to be, 1 to 10, by
            name: with all of them wide, only the readings' quarrel among themselves is left.
    """
    size = len(model.latents.names)
    hold = np.ones(size)
    for name, times in looseness.items():
        require_within("looseness", times, 1.0, 10.0)
        hold[model.latents.names.index(name)] = 1.0 / times**2
    u = np.zeros(size) if start is None else np.asarray(start, dtype=np.float64).copy()
    cost = float(_cost(model, u[np.newaxis], hold)[0])
    damping = 0.0
    for _ in range(_MOST_STEPS):
        residual, slope = _slopes(model, u)
        normal = np.diag(hold) + slope.T @ slope
        downhill = -(hold * u + slope.T @ residual)
        moved = False
        for _ in range(_MOST_TRIES):
            step = np.linalg.solve(normal + damping * np.eye(size), downhill)
            step *= min(1.0, 2.5 / max(float(np.abs(step).max()), 1e-12))
            tried = np.clip(u + step, -_FURTHEST, _FURTHEST)
            tried_cost = float(_cost(model, tried[np.newaxis], hold)[0])
            if tried_cost <= cost:
                moved = True
                break
            damping = max(4.0 * damping, 0.5)
        if not moved:
            break
        gained = cost - tried_cost
        u, cost, damping = tried, tried_cost, damping / 6.0 if damping > 0.05 else 0.0
        if gained < max(_SETTLED, _SETTLED_SHARE * cost):
            break
    _, slope = _slopes(model, u)
    normal = np.diag(hold) + slope.T @ slope
    covariance: Array = np.asarray(np.linalg.inv(normal), dtype=np.float64)
    return Fit(u, covariance, 2.0 * cost, len(model.observations))


def _cost(model: Model, u: Array, hold: Array | float = 1.0) -> Array:
    missed = np.sum(model.residuals(u) ** 2, axis=1)
    return np.asarray(0.5 * (missed + _squares(np.sqrt(hold) * u)))


def _squares(rows: Array) -> Array:
    """Sum of squares of each row."""
    return np.asarray(np.einsum("ij,ij->i", rows, rows))


def _slopes(model: Model, u: Array) -> tuple[Array, Array]:
    """Residuals (m,) and their slopes (m, d), by central differences."""
    shift = _STEP * np.eye(len(u))
    found = model.residuals(np.concatenate([u[np.newaxis], u + shift, u - shift]))
    ahead, behind = found[1 : 1 + len(u)], found[1 + len(u) :]
    return found[0], (ahead - behind).T / (2.0 * _STEP)


@dataclass(frozen=True, slots=True)
class Draws:
    """Draws from what is believed after the readings.

    Attributes:
        u: Unknowns, (n, d), equally likely.
        effective_samples: How many independent draws they are worth, at most n.
    """

    u: Array
    effective_samples: float


@dataclass(frozen=True, slots=True)
class _Bell:
    """Normals to propose from, all about one centre and of one shape.

    Attributes:
        centre: (d,).
        root: Lower triangular root of the shape's covariance, (d, d).
        scales: Variance of each normal over the shape's, with its share of the proposals.
    """

    centre: Array
    root: Array
    scales: tuple[tuple[float, float], ...]

    def log_densities(self, u: Array) -> list[Array]:
        """Logarithm of each normal's density times its share, (k,) each, for (k, d)."""
        upright: Array = np.asarray(np.linalg.inv(self.root).T, dtype=np.float64)
        away = _squares((u - self.centre) @ upright)
        size = len(self.centre)
        level = float(np.sum(np.log(np.abs(np.diag(self.root))))) + 0.5 * size * log(2.0 * pi)
        return [
            away * (-0.5 / scale) + (log(share) - level - 0.5 * size * log(scale))
            for scale, share in self.scales
        ]


_PROPOSED_PER_SAMPLE: Final = 3
_PRIOR_SHARE: Final = 0.10
_WIDE_SHARE: Final = 0.20
_WIDENED: Final = 1.15
_WIDE: Final = 3.0
_ENOUGH_SHARE: Final = 0.6
_MOST_ROUNDS: Final = 4


def posterior_draws(
    model: Model, fits: Sequence[Fit], samples: int, rng: np.random.Generator
) -> Draws:
    """Draws from the posterior: proposed about the fits, weighted, resampled.

    Args:
        model: Unknowns and readings.
        fits: Best fits from one or more starts.
        samples: Draws wanted, n.
        rng: Seeded generator.

    Proposals come from the fitted normals, slightly widened, a fifth of them three times as wide
    in variance and a tenth from the prior. Weights are prior x likelihood over the proposals'
    own density, both exact. Where too few draws carry the weight, the proposals are fitted to
    the weighted draws and drawn again.
    """
    count = _PROPOSED_PER_SAMPLE * samples
    bells = _about(_distinct(fits))
    best: tuple[float, Array, Array] | None = None
    for _ in range(_MOST_ROUNDS):
        u = _proposed(bells, count, rng)
        weight = _weights(model, bells, u)
        effective = 1.0 / float(np.sum(weight**2))
        if best is None or effective > best[0]:
            best = (effective, u, weight)
        if effective >= _ENOUGH_SHARE * samples:
            break
        bells = _refitted(u, weight)
    assert best is not None  # at least one round runs
    effective, u, weight = best
    picked = _systematic(weight, samples, rng)
    return Draws(u[rng.permutation(picked)], min(effective, float(samples)))


def _distinct(fits: Sequence[Fit]) -> list[Fit]:
    kept: list[Fit] = []
    for fit in sorted(fits, key=lambda f: f.chi_square):
        far = all(float(np.abs(fit.u - other.u).max()) > 0.3 for other in kept)
        if far and (not kept or fit.chi_square < kept[0].chi_square + 12.0):
            kept.append(fit)
    return kept


def _about(fits: Sequence[Fit]) -> list[_Bell]:
    lowest = fits[0].chi_square
    mass = np.array(
        [
            exp(-0.5 * (fit.chi_square - lowest)) * sqrt(max(np.linalg.det(fit.covariance), 1e-300))
            for fit in fits
        ]
    )
    share = np.maximum(mass / mass.sum(), 0.05)
    share = (1.0 - _PRIOR_SHARE) * share / share.sum()
    bells: list[_Bell] = []
    for fit, of_all in zip(fits, share, strict=True):
        bells.append(_pair(fit.u, fit.covariance, float(of_all)))
    return [*bells, _prior_bell(len(fits[0].u))]


def _pair(centre: Array, covariance: Array, share: float) -> _Bell:
    root: Array = np.asarray(np.linalg.cholesky(covariance), dtype=np.float64)
    return _Bell(
        centre,
        root,
        ((_WIDENED, (1.0 - _WIDE_SHARE) * share), (_WIDE, _WIDE_SHARE * share)),
    )


def _prior_bell(size: int) -> _Bell:
    return _Bell(np.zeros(size), np.eye(size), ((1.0, _PRIOR_SHARE),))


def _refitted(u: Array, weight: Array) -> list[_Bell]:
    """Proposals fitted to weighted draws, the weights tempered where few carry them all."""
    tempered = weight
    for power in (1.0, 0.7, 0.5, 0.3, 0.2):
        tempered = weight**power
        tempered = tempered / tempered.sum()
        if 1.0 / float(np.sum(tempered**2)) > 8.0 * u.shape[1]:
            break
    centre = tempered @ u
    away = u - centre
    covariance = (away * tempered[:, np.newaxis]).T @ away + 1e-4 * np.eye(u.shape[1])
    return [_pair(centre, covariance, 1.0 - _PRIOR_SHARE), _prior_bell(u.shape[1])]


def _proposed(bells: Sequence[_Bell], count: int, rng: np.random.Generator) -> Array:
    parts = [(bell, scale, share) for bell in bells for scale, share in bell.scales]
    ends = np.round(np.cumsum([share for _, _, share in parts]) * count).astype(int)
    ends[-1] = count
    free = rng.standard_normal((count, len(bells[0].centre)))
    start = 0
    for (bell, scale, _), end in zip(parts, ends, strict=True):
        free[start:end] = bell.centre + free[start:end] @ (sqrt(scale) * bell.root.T)
        start = int(end)
    return free


def _weights(model: Model, bells: Sequence[_Bell], u: Array) -> Array:
    """Normalised weights, (k,)."""
    proposed = np.stack([one for bell in bells for one in bell.log_densities(u)])
    highest = proposed.max(axis=0)
    proposed = highest + np.log(np.exp(proposed - highest).sum(axis=0))
    logs = -_cost(model, u) - proposed
    weight = np.exp(logs - logs.max())
    return np.asarray(weight / weight.sum())


def _systematic(weight: Array, samples: int, rng: np.random.Generator) -> np.ndarray:
    """Indices drawn by weight with one random number: each within one of its due."""
    edges = np.cumsum(weight)
    edges[-1] = 1.0
    return np.searchsorted(edges, (rng.random() + np.arange(samples)) / samples)
