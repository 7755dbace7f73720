"""How far learning some signals would lower the expected loss, from the samples as they were drawn.

Nothing is judged again. For each thing at stake, a regression on what the person would say gives
one predictor; eight bins of it stand for the answers. The same is done with the truths shuffled,
which shows what chance alone would gain: that is taken off, and what lies within the shuffles' own
scatter is nothing.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import combinations
from typing import Final

import numpy as np
from numpy.typing import NDArray

from engine.arrays import Array
from engine.job.draws import Draws
from engine.job.modes import Mode
from engine.verdict import Part
from engine.worth.losses import SETTLED, ModeStake, Stakes, remedy_loss
from engine.worth.signals import Signal

__all__ = ["Fall", "Learner"]

Codes = NDArray[np.intp]

_BINS: Final = 8
_SHUFFLES: Final = 3
_BY_CHANCE_Z: Final = 3.09
"""Standard normal quantile of 0.999: one regression in a thousand passes by chance."""
_MOST_FEATURES: Final = 20
_LEAST_SHARE: Final = 0.002
"""Share of samples below which a thing is certain enough to be no question."""
_RIDGE: Final = 1e-6
_ROUNDING: Final = 1e-12
_BLOCK: Final = 256


@dataclass(frozen=True, slots=True)
class Fall:
    """Fall in expected loss if some signals were learnt.

    Attributes:
        modes: By mode: the fall by its status, what stands in the way of saying "carries" after
            it (see `ModeStake.free_and_barred`), and the chance that it would be settled.
        parts: Fall by which parts need changing.
        tells: How much of each part's being over it explains, 0 to 1.
    """

    modes: dict[Mode, tuple[float, float, float]]
    parts: float
    tells: dict[Part, float]


class Learner:
    """What is at stake, arranged so that many bundles can be tried quickly.

    Attributes:
        stakes: What stands to be lost.
    """

    def __init__(self, stakes: Stakes, draws: Draws) -> None:
        """Arrange everything at stake in columns, as it is and shuffled."""
        self.stakes, self._draws = stakes, draws
        self._orders = [
            np.argsort(draws.ranks(f"shuffle {index} for worth")) for index in range(_SHUFFLES)
        ]
        columns: list[Array] = []
        self._of_mode: dict[Mode, list[int]] = {}
        self._kinds = {mode.mode: np.argmax(mode.truth, axis=1) for mode in stakes.modes}
        for mode in stakes.modes:
            places = []
            for column in (1.0 - mode.truth[:, 0], mode.truth[:, 2]):
                if _open(column):
                    places.append(len(columns))
                    columns.append(column)
            self._of_mode[mode.mode] = places
        self._of_part: dict[int, int] = {}
        for place in range(len(stakes.names)):
            if _open(stakes.parts[:, place]):
                self._of_part[place] = len(columns)
                columns.append(stakes.parts[:, place])
        self._columns = np.stack(columns, axis=1) if columns else np.zeros((draws.samples, 0))
        self._columns -= self._columns.mean(axis=0)
        self._squares = np.square(self._columns).sum(axis=0)
        self._truths = tuple(
            _Blocks(self._columns if order is None else self._columns[order])
            for order in (None, *self._orders)
        )

    def fall(self, signals: Sequence[Signal]) -> Fall:
        """What learning these signals together would save."""
        if not signals or not self._columns.shape[1]:
            return self._nothing()
        features, codes = self._observed(signals)
        if not features.shape[1]:
            return self._nothing()
        answer = _Answer(features, codes, self._truths, self._squares)
        modes = {mode.mode: self._mode_fall(mode, answer) for mode in self.stakes.modes}
        parts = 0.0
        tells = {}
        for place, column in self._of_part.items():
            if not answer.tells[column]:
                continue
            tells[self.stakes.names[place]] = float(answer.explained[column])
            over = self.stakes.parts[:, place].astype(np.intp)
            share = float(over.mean())
            before = float(remedy_loss(np.array([share, 1.0 - share])))
            parts += self._net(answer, [column], over, 2, before, _part_loss)
        return Fall(modes, parts, tells)

    def _nothing(self) -> Fall:
        modes = {}
        for mode in self.stakes.modes:
            free, barred = mode.free_and_barred(mode.shares)
            modes[mode.mode] = (0.0, float(barred - free), float(_is_sure(mode)))
        return Fall(modes, 0.0, {})

    def _mode_fall(self, mode: ModeStake, answer: "_Answer") -> tuple[float, float, float]:
        free, barred = mode.free_and_barred(mode.shares)
        best = (0.0, float(barred - free), float(_is_sure(mode)))
        columns = [column for column in self._of_mode[mode.mode] if answer.tells[column]]
        if not columns:
            return best

        def loss(shares: Array) -> float:
            return float(mode.free_and_barred(shares)[0].sum())

        kinds = self._kinds[mode.mode]
        net = self._net(answer, columns, kinds, 3, float(free), loss)
        for column in columns:
            shares = _shares(answer.codes(column), kinds, 3)
            free_after, barred_after = mode.free_and_barred(shares)
            sure = shares.max(axis=1) >= SETTLED * shares.sum(axis=1)
            found = (net, float((barred_after - free_after).sum()), float(shares[sure].sum()))
            best = max(best, found, key=lambda one: (one[0], one[2]))
        return best

    def _net(
        self,
        answer: "_Answer",
        columns: list[int],
        kinds: Codes,
        width: int,
        before: float,
        loss: Callable[[Array], float],
    ) -> float:
        """Fall by the best of these columns' bins, less what chance gives; 0 within its scatter."""
        least = min(loss(_shares(answer.codes(column), kinds, width)) for column in columns)
        raw = before - least
        if raw <= _ROUNDING:
            return 0.0
        by_chance = []
        for index, order in enumerate(self._orders):
            shuffled = kinds[order]
            least = min(
                loss(_shares(answer.codes(column, index), shuffled, width)) for column in columns
            )
            by_chance.append(before - least)
        net = raw - sum(by_chance) / _SHUFFLES
        return net if net > max(by_chance) - min(by_chance) else 0.0

    def _observed(self, signals: Sequence[Signal]) -> tuple[Array, Codes | None]:
        """What the person would say: features of the regression, and groups if all are words."""
        numbers: list[Array] = []
        words: list[Array] = []
        groups = np.zeros(self._draws.samples, dtype=np.intp)
        for signal in signals:
            if signal.is_word:
                said = self._said(signal)
                kinds, places = np.unique(said, return_inverse=True)
                groups = groups * kinds.size + places
                words += [(places == kind).astype(np.float64) for kind in range(1, kinds.size)]
            else:
                noise = self._draws.normals(f"{signal.name} as told")
                said = signal.values + signal.noise * noise
                numbers.append((said - said.mean()) / said.std())
        if not numbers:
            kinds, codes = np.unique(groups, return_inverse=True)
            if kinds.size <= _BINS:
                each = codes[:, np.newaxis] == np.arange(1, kinds.size)
                return each.astype(np.float64), codes.astype(np.intp)
        features = [*numbers, *words, *(np.square(one) for one in numbers)]
        for one, other in combinations([*numbers, *words], 2):
            if len(features) >= _MOST_FEATURES:
                break
            features.append(one * other)
        found = np.stack(features[:_MOST_FEATURES], axis=1)
        return found, None

    def _said(self, signal: Signal) -> Array:
        """A word as it would be told: sometimes another one that occurs instead."""
        wrong = self._draws.ranks(f"{signal.name} misread") < signal.noise
        other = signal.values[np.argsort(self._draws.ranks(f"{signal.name} taken for"))]
        return np.where(wrong, other, signal.values)


class _Answer:
    """Predictors of every column by what would be said, as it is and shuffled.

    Attributes:
        explained: Share of each column's variance that is explained, (columns,).
        tells: Where that is more than chance explains.
    """

    def __init__(
        self, features: Array, codes: Codes | None, truths: tuple["_Blocks", ...], squares: Array
    ) -> None:
        self._features = _Blocks(features - features.mean(axis=0))
        self._groups, self._truths = codes, truths
        self._gram = self._features.against(self._features)
        self._gram[np.diag_indices_from(self._gram)] += _RIDGE * features.shape[0]
        products = self._features.against(truths[0])
        weights = np.asarray(np.linalg.solve(self._gram, products), dtype=np.float64)
        self.explained = (weights * products).sum(axis=0) / squares
        self.tells = self.explained * features.shape[0] > _chi_square_by_chance(features.shape[1])
        self._telling = {
            int(column): place for place, column in enumerate(np.flatnonzero(self.tells))
        }
        self._predicted = {-1: self._features.times(weights[:, self.tells])}
        self._made: dict[tuple[int, int], Codes] = {}

    def codes(self, column: int, shuffle: int = -1) -> Codes:
        """Bin of each sample by one telling column's predictor; shuffled unless that is -1."""
        if self._groups is not None:
            return self._groups
        if shuffle not in self._predicted:
            products = self._features.against(self._truths[shuffle + 1])[:, self.tells]
            weights = np.asarray(np.linalg.solve(self._gram, products), dtype=np.float64)
            self._predicted[shuffle] = self._features.times(weights)
        if (column, shuffle) not in self._made:
            values = np.ascontiguousarray(self._predicted[shuffle][:, self._telling[column]])
            self._made[column, shuffle] = _eighths(values)
        return self._made[column, shuffle]


class _Blocks:
    """The rows of a matrix in blocks so small that no product of two waits for other threads."""

    def __init__(self, matrix: Array) -> None:
        self._rows = matrix.shape[0]
        blocks = -(-self._rows // _BLOCK)
        padded = np.zeros((blocks * _BLOCK, matrix.shape[1]))
        padded[: self._rows] = matrix
        self._blocks = padded.reshape(blocks, _BLOCK, matrix.shape[1])

    def against(self, other: "_Blocks") -> Array:
        """Transposed, times another matrix of as many rows."""
        return np.asarray((self._blocks.transpose(0, 2, 1) @ other._blocks).sum(axis=0))

    def times(self, weights: Array) -> Array:
        """Times a small matrix."""
        found = self._blocks @ weights
        rows = found.shape[0] * found.shape[1]
        return np.asarray(found.reshape(rows, weights.shape[1])[: self._rows])


def _eighths(values: Array) -> Codes:
    """Which eighth of all values each of them is in."""
    ordered = np.sort(values)
    codes = np.zeros(values.size, dtype=np.int8)
    for part in range(1, _BINS):
        codes += values >= ordered[values.size * part // _BINS]
    return codes.astype(np.intp)


def _open(column: Array) -> bool:
    return bool(_LEAST_SHARE < column.mean() < 1.0 - _LEAST_SHARE)


def _is_sure(mode: ModeStake) -> bool:
    return bool(mode.shares.max() >= SETTLED)


def _shares(codes: Codes, kinds: Codes, width: int) -> Array:
    """Share of all samples in each bin with each of `width` kinds of truth, (bins, width)."""
    counts = np.bincount(codes * width + kinds, minlength=_BINS * width)
    return counts.reshape(_BINS, width) / codes.size


def _part_loss(shares: Array) -> float:
    return float(remedy_loss(shares).sum())


def _chi_square_by_chance(freedom: int) -> float:
    """What chi-square passes once in a thousand times (Wilson and Hilferty's approximation)."""
    step = 2.0 / (9.0 * freedom)
    return float(freedom * (1.0 - step + _BY_CHANCE_Z * np.sqrt(step)) ** 3)
