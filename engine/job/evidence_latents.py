"""Unknown quantities as standard normals: marginals taken from draws, correlations kept."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from statistics import NormalDist
from typing import Final

import numpy as np
from numpy.typing import NDArray

from engine.arrays import Array, require_within
from engine.errors import FactError

__all__ = [
    "Latents",
    "Marginal",
    "correlations",
    "marginal_of_draws",
    "marginal_of_mixture",
    "marginal_of_spread",
]

_Z_AT_A_TENTH: Final = NormalDist().inv_cdf(0.9)
_Z_MOST: Final = 7.0
_KNOTS_Z: Final = (-2.5, -2.0, -1.6, -1.25, -0.95, -0.7, -0.45, -0.2, 0.0)
_CONSTANT: Final = 1e-9


@dataclass(frozen=True, slots=True)
class Marginal:
    """One quantity at each standard normal score: straight lines between knots.

    Attributes:
        z: Scores of the knots, rising.
        value: Value at each, never falling.
    """

    z: Array
    value: Array

    @property
    def is_constant(self) -> bool:
        """Whether the quantity is known exactly."""
        return bool(self.value[-1] - self.value[0] < _CONSTANT)

    def at(self, z: Array) -> Array:
        """Values at scores of any shape; held beyond seven standard deviations."""
        return np.asarray(np.interp(z, self.z, self.value))

    def wider(self, times: float) -> "Marginal":
        """The same middle, every distance from it this many times as far in the tails too."""
        z = self.z / times
        slopes = np.diff(self.value) / np.diff(z)
        below = self.value[0] - slopes[0] * (_Z_MOST + z[0])
        above = self.value[-1] + slopes[-1] * (_Z_MOST - z[-1])
        return Marginal(
            np.concatenate([[-_Z_MOST], z, [_Z_MOST]]),
            np.concatenate([[below], self.value, [above]]),
        )


def marginal_of_spread(low: float, likely: float, high: float) -> Marginal:
    """The marginal of a spread: one in ten below `low`, half below `likely`, one in ten above.

    Straight on both sides of the middle in the quantity given, which is best a logarithm.
    """
    below = (likely - low) / _Z_AT_A_TENTH
    above = (high - likely) / _Z_AT_A_TENTH
    z = np.array([-_Z_MOST, 0.0, _Z_MOST])
    return Marginal(z, np.array([likely - _Z_MOST * below, likely, likely + _Z_MOST * above]))


def marginal_of_draws(draws: Array) -> Marginal:
    """The marginal of equally likely draws: their quantiles, straight on in the tails.

    Args:
        draws: (n,), finite, n of at least 2.

    Raises:
        FactError: Too few draws, or one that isn't finite.
    """
    if draws.ndim != 1 or draws.size < 2 or not np.isfinite(draws).all():
        raise FactError("draws", "need shape (n,), at least two values, all of them finite")
    most = min(2.5, NormalDist().inv_cdf(1.0 - 0.5 / draws.size))
    half = np.array([z for z in _KNOTS_Z if abs(z) <= most])
    z = np.concatenate([half, -half[-2::-1]])
    value = np.quantile(draws, _cumulative(z))
    tail = np.array([_Z_MOST])
    first = (value[1] - value[0]) / (z[1] - z[0])
    last = (value[-1] - value[-2]) / (z[-1] - z[-2])
    return Marginal(
        np.concatenate([-tail, z, tail]),
        np.concatenate(
            [
                [value[0] - first * (_Z_MOST + z[0])],
                value,
                [value[-1] + last * (_Z_MOST - z[-1])],
            ]
        ),
    )


def marginal_of_mixture(parts: Sequence[tuple[float, Marginal]]) -> Marginal:
    """The marginal of a weighted choice among marginals; weights need not sum to one."""
    total = sum(weight for weight, _ in parts)
    draws: list[Array] = []
    for weight, marginal in parts:
        count = max(round(2000 * weight / total), 1)
        draws.append(marginal.at(_scores(count)))
    return marginal_of_draws(np.concatenate(draws))


_CELLS: Final = 140
"""Equal cells between the furthest scores: none holds more than two knots of a usual marginal."""
_BLOCK: Final = 1024


class _Lines:
    """The straight lines of many marginals, looked up together: a cell tells the line or nearly."""

    def __init__(self, marginals: Sequence[Marginal]) -> None:
        edges = np.linspace(-_Z_MOST, _Z_MOST, _CELLS + 1)
        following: list[Array] = []
        level: list[Array] = []
        slope: list[Array] = []
        first: list[NDArray[np.intp]] = []
        held, never = np.zeros(1), np.full(1, np.inf)
        self._most = 0
        lines = 0
        for one in marginals:
            at_edge = np.searchsorted(one.z, edges, side="right") - 1
            self._most = max(self._most, int(np.diff(at_edge).max()))
            rise = np.diff(one.value) / np.diff(one.z)
            # before the first knot and after the last the value is held
            slope += [held, rise, held]
            level += [one.value[:1], one.value[:-1] - rise * one.z[:-1], one.value[-1:]]
            following += [one.z, never]
            first.append(at_edge[:-1] + 1 + lines)
            lines += one.z.size + 1
        self._first = np.concatenate(first)
        self._following, self._level = np.concatenate(following), np.concatenate(level)
        self._slope = np.concatenate(slope)
        self._offset = (np.arange(len(marginals)) * _CELLS)[:, np.newaxis]

    def at(self, z: Array) -> Array:
        """Values at scores, (d, k) each, one row a marginal."""
        found = np.empty_like(z)
        for start in range(0, z.shape[1], _BLOCK):
            here = np.clip(z[:, start : start + _BLOCK], -_Z_MOST, _Z_MOST)
            cell = ((here + _Z_MOST) * (_CELLS / (2.0 * _Z_MOST))).astype(np.intp)
            line = self._first[np.minimum(cell, _CELLS - 1) + self._offset]
            for _ in range(self._most):
                line += here >= self._following[line]
            found[:, start : start + _BLOCK] = self._level[line] + self._slope[line] * here
        return found


@dataclass(frozen=True, slots=True)
class Latents:
    """The unknowns of one house, in order, as functions of independent standard normals.

    Attributes:
        names: Names in order.
        marginals: Marginal of each.
        root: Lower triangular, (d, d): scores are root @ u for u independent.
    """

    names: tuple[str, ...]
    marginals: tuple[Marginal, ...]
    root: Array
    _lines: _Lines = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Arrange the marginals for looking them up together."""
        object.__setattr__(self, "_lines", _Lines(self.marginals))

    @classmethod
    def of(cls, marginals: Mapping[str, Marginal], correlation: Array) -> "Latents":
        """Join marginals by the correlation of their scores, (d, d) in the mapping's order."""
        root: Array = np.asarray(np.linalg.cholesky(correlation), dtype=np.float64)
        return cls(tuple(marginals), tuple(marginals.values()), root)

    def wider(self, times: Mapping[str, float]) -> "Latents":
        """The same quantities, those named that many times as wide."""
        marginals = tuple(
            marginal.wider(times[name]) if name in times else marginal
            for name, marginal in zip(self.names, self.marginals, strict=True)
        )
        return Latents(self.names, marginals, self.root)

    def values(self, u: Array) -> dict[str, Array]:
        """Each quantity, (k,), for independent standard normals (k, d)."""
        return dict(zip(self.names, self._lines.at(self.root @ u.T), strict=True))


def correlations(draws: Sequence[Array | None]) -> Array:
    """Correlation of the normal scores of draws, (d, d), made safely positive.

    Args:
        draws: For each quantity its (n,) draws, paired by index; None where a quantity has no
            draws and stands alone.

    Returns:
        Entries within the scatter of independent draws are zero.
    """
    size = len(draws)
    found = np.eye(size)
    scored = [None if d is None or np.ptp(d) < _CONSTANT else _ranked_scores(d) for d in draws]
    for i in range(size):
        for j in range(i):
            first, second = scored[i], scored[j]
            if first is None or second is None:
                continue
            together = float(np.mean(first * second) / np.sqrt(np.mean(first**2) ** 2))
            if abs(together) > 4.0 / np.sqrt(first.size):
                found[i, j] = found[j, i] = 0.995 * together
    lengths, axes = np.linalg.eigh(found)
    if lengths[0] < 1e-3:
        found = (axes * np.maximum(lengths, 1e-3)) @ axes.T
        scale = 1.0 / np.sqrt(np.diag(found))
        found = found * scale[:, np.newaxis] * scale
    return found


def _ranked_scores(draws: Array) -> Array:
    require_within("draws_count", float(draws.size), 2.0, 1e7)
    scores = np.empty(draws.size)
    scores[np.argsort(draws, kind="stable")] = _scores(draws.size)
    return scores


@lru_cache(maxsize=32)
def _scores(count: int) -> Array:
    normal = NormalDist()
    scores = np.array([normal.inv_cdf((i + 0.5) / count) for i in range(count)])
    scores.setflags(write=False)
    return scores


def _cumulative(z: Array) -> Array:
    normal = NormalDist()
    return np.array([normal.cdf(float(score)) for score in z])
