"""How far learning some signals would lower the expected loss, from the samples as they were drawn.

Nothing is judged again. For each thing at stake, a regression on what the person would say gives
one predictor; eight bins of it stand for the answers. The same is done with the truths shuffled,
which shows what chance alone would gain: that is taken off, and what lies within the shuffles' own
scatter is nothing.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import combinations
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from engine.arrays import Array
from engine.job.draws import Draws
from engine.job.modes import Mode
from engine.verdict import Part
from engine.worth.losses import SETTLED, ModeStake, Stakes, remedy_loss
from engine.worth.signals import Signal

__all__ = ["Fall", "Learner"]

Codes = NDArray[np.int16]

_LOOKED_AT: Final = 2048
"""Samples that are enough to tell which questions matter; of more, every second or so is taken."""

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
        stakes: What stands to be lost, in the samples that are looked at.
    """

    def __init__(self, stakes: Stakes, draws: Draws) -> None:
        """Arrange everything at stake in columns, as it is and shuffled."""
        self._every = max(draws.samples // _LOOKED_AT, 1)
        stakes = stakes.thinned(self._every)
        draws = Draws(stakes.parts.shape[0], draws.seed)
        self.stakes, self._draws = stakes, draws
        self._orders = [draws.in_order(f"shuffle {index} for worth") for index in range(_SHUFFLES)]
        columns: list[Array] = []
        self._of_mode: dict[Mode, list[int]] = {}
        self._kinds = {
            mode.mode: self._as_is_and_shuffled(np.argmax(mode.truth, axis=1))
            for mode in stakes.modes
        }
        for mode in stakes.modes:
            places = []
            for column in (1.0 - mode.truth[:, 0], mode.truth[:, 2]):
                if _open(column):
                    places.append(len(columns))
                    columns.append(column)
            self._of_mode[mode.mode] = places
        self._of_part: dict[int, int] = {}
        self._is_over: dict[int, Codes] = {}
        for place in range(len(stakes.names)):
            if _open(stakes.parts[:, place]):
                self._of_part[place] = len(columns)
                self._is_over[place] = self._as_is_and_shuffled(stakes.parts[:, place])
                columns.append(stakes.parts[:, place])
        self._columns = np.stack(columns) if columns else np.zeros((0, draws.samples))
        self._columns -= self._columns.mean(axis=1, keepdims=True)
        self._squares = np.square(self._columns).sum(axis=1)
        self._truths = _Blocks(self._columns)
        self._by_chance = tuple(_Blocks(self._columns[:, order]) for order in self._orders)
        self._nothing = self._told_nothing()

    def fall(self, signals: Sequence[Signal]) -> Fall:
        """What learning these signals together would save."""
        if not signals or not self._columns.shape[0]:
            return self._nothing
        features, codes = self._observed([one.thinned(self._every) for one in signals])
        if not features.shape[0]:
            return self._nothing
        answer = _Answer(features, codes, self._truths, self._by_chance, self._squares)
        if not answer.tells.any():
            return self._nothing
        modes = {mode.mode: self._mode_fall(mode, answer) for mode in self.stakes.modes}
        parts = 0.0
        tells = {}
        for place, column in self._of_part.items():
            if not answer.tells[column]:
                continue
            tells[self.stakes.names[place]] = float(answer.explained[column])
            kinds = self._is_over[place]
            share = float(self.stakes.parts[:, place].mean())
            before = float(remedy_loss(np.array([share, 1.0 - share])))
            shares = _shares(answer.codes([column]), kinds[0], 2)
            parts += self._net(answer, [column], kinds, shares, before, remedy_loss)
        return Fall(modes, parts, tells)

    def _as_is_and_shuffled(self, kinds: Array) -> Codes:
        """Kinds of truth, and the same in every shuffled order, (1 + shuffles, 1, n)."""
        found = kinds.astype(np.int16)
        return np.stack([found, *(found[order] for order in self._orders)])[:, np.newaxis]

    def _told_nothing(self) -> Fall:
        modes = {}
        for mode in self.stakes.modes:
            free, barred = mode.free_and_barred(mode.shares)
            modes[mode.mode] = (0.0, float(barred - free), float(_is_sure(mode)))
        return Fall(modes, 0.0, {})

    def _mode_fall(self, mode: ModeStake, answer: "_Answer") -> tuple[float, float, float]:
        best = self._nothing.modes[mode.mode]
        columns = [column for column in self._of_mode[mode.mode] if answer.tells[column]]
        if not columns:
            return best
        kinds = self._kinds[mode.mode]
        all_shares = _shares(answer.codes(columns), kinds[0], 3)
        before = float(mode.free_and_barred(mode.shares)[0])
        net = self._net(
            answer, columns, kinds, all_shares, before, lambda one: mode.free_and_barred(one)[0]
        )
        for shares in all_shares:
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
        shares: Array,
        before: float,
        loss: Callable[[Array], Array],
    ) -> float:
        """Fall by the best of these columns' bins, less what chance gives; 0 within its scatter."""
        raw = before - float(loss(shares).sum(axis=-1).min())
        if raw <= _ROUNDING:
            return 0.0
        shuffled = _shares(answer.codes_by_chance(columns), kinds[1:], shares.shape[-1])
        by_chance = before - loss(shuffled).sum(axis=-1).min(axis=-1)
        net = raw - float(by_chance.sum()) / _SHUFFLES
        return net if net > float(np.ptp(by_chance)) else 0.0

    def _observed(self, signals: Sequence[Signal]) -> tuple[Array, Codes | None]:
        """What the person would say: features, (f, n), and groups, (n,), if all are words."""
        numbers: list[Array] = []
        words: list[Array] = []
        groups = np.zeros(self._draws.samples, dtype=np.intp)
        for signal in signals:
            if signal.is_word:
                kinds, places = _distinct(self._said(signal))
                groups = groups * kinds.size + places
                words += [(places == kind).astype(np.float64) for kind in range(1, kinds.size)]
            else:
                noise = self._draws.normals(f"{signal.name} as told")
                said = signal.values + signal.noise * noise
                away = said - said.mean()
                numbers.append(away / np.sqrt(np.square(away).mean()))
        if not numbers:
            kinds, codes = _distinct(groups)
            if kinds.size <= _BINS:
                each = codes == np.arange(1, kinds.size)[:, np.newaxis]
                return each.astype(np.float64), codes.astype(np.int16)
        features = [*numbers, *words, *(np.square(one) for one in numbers)]
        for one, other in combinations([*numbers, *words], 2):
            if len(features) >= _MOST_FEATURES:
                break
            features.append(one * other)
        return np.stack(features[:_MOST_FEATURES]), None

    def _said(self, signal: Signal) -> Array:
        """A word as it would be told: sometimes another one that occurs instead."""
        wrong = self._draws.ranks(f"{signal.name} misread") < signal.noise
        other = signal.values[self._draws.in_order(f"{signal.name} taken for")]
        return np.where(wrong, other, signal.values)


class _Answer:
    """Predictors of every column by what would be said, as it is and shuffled.

    Attributes:
        explained: Share of each column's variance that is explained, (columns,).
        tells: Where that is more than chance explains.
    """

    def __init__(
        self,
        features: Array,
        groups: Codes | None,
        truths: "_Blocks",
        by_chance: tuple["_Blocks", ...],
        squares: Array,
    ) -> None:
        count, samples = features.shape
        self._features = _Blocks(features - features.mean(axis=1, keepdims=True))
        self._groups, self._by_chance = groups, by_chance
        self._gram = self._features.against(self._features)
        self._gram[np.diag_indices(count)] += _RIDGE * samples
        products = self._features.against(truths)
        weights: Array = np.asarray(np.linalg.solve(self._gram, products), dtype=np.float64)
        self.explained = (weights * products).sum(axis=0) / squares
        self.tells = self.explained * samples > _chi_square_by_chance(count)
        self._weights_by_chance: Array | None = None
        self._telling = {
            int(column): place for place, column in enumerate(np.flatnonzero(self.tells))
        }
        if groups is None:
            self._codes = _eighths(self._features.times(weights[:, self.tells]))
        else:
            self._codes = np.tile(groups, (len(self._telling), 1))

    def codes(self, columns: list[int]) -> Codes:
        """Bin of each sample by each of these telling columns' predictors, (columns, n)."""
        return self._codes[[self._telling[column] for column in columns]]

    def codes_by_chance(self, columns: list[int]) -> Codes:
        """The same of the shuffled truths, (shuffles, columns, n)."""
        if self._groups is not None:
            return np.tile(self._groups, (_SHUFFLES, len(columns), 1))
        if self._weights_by_chance is None:
            products = [self._features.against(one) for one in self._by_chance]
            self._weights_by_chance = np.asarray(
                np.linalg.solve(self._gram, np.stack(products)), dtype=np.float64
            )
        weights = np.concatenate(list(self._weights_by_chance[:, :, columns]), axis=1)
        codes = _eighths(self._features.times(weights))
        return codes.reshape(_SHUFFLES, len(columns), -1)


class _Blocks:
    """The rows of a matrix in blocks so short that no product of two waits for other threads."""

    def __init__(self, matrix: Array) -> None:
        rows, self._samples = matrix.shape
        blocks = -(-self._samples // _BLOCK)
        more = blocks * _BLOCK - self._samples
        padded = np.pad(matrix, ((0, 0), (0, more))) if more else matrix
        self._blocks = padded.reshape(rows, blocks, _BLOCK).transpose(1, 0, 2)

    def against(self, other: "_Blocks") -> Array:
        """Times the transpose of another matrix of as many samples."""
        return np.asarray((self._blocks @ other._blocks.transpose(0, 2, 1)).sum(axis=0))

    def times(self, weights: Array) -> Array:
        """Sums of the rows by each column of a small matrix, (columns, n)."""
        blocks = self._blocks.shape[0]
        found = np.empty((weights.shape[1], blocks, _BLOCK))
        np.matmul(np.ascontiguousarray(weights.T), self._blocks, out=found.transpose(1, 0, 2))
        return found.reshape(weights.shape[1], blocks * _BLOCK)[:, : self._samples]


def _eighths(values: Array) -> Codes:
    """Which eighth of its row each value is in."""
    samples = values.shape[1]
    ordered = np.sort(values, axis=1)
    codes = np.zeros(values.shape, dtype=np.int8)
    for part in range(1, _BINS):
        edge = ordered[:, samples * part // _BINS, np.newaxis]
        codes += (values >= edge).view(np.int8)
    return codes.astype(np.int16)


def _distinct(values: NDArray[Any]) -> tuple[NDArray[Any], NDArray[np.intp]]:
    """The few values that occur, rising, and which of them each one is."""
    kinds = np.unique(values)
    return kinds, np.searchsorted(kinds, values)


def _open(column: Array) -> bool:
    return bool(_LEAST_SHARE < column.mean() < 1.0 - _LEAST_SHARE)


def _is_sure(mode: ModeStake) -> bool:
    return bool(mode.shares.max() >= SETTLED)


def _shares(codes: Codes, kinds: Codes, width: int) -> Array:
    """Share of all samples in each bin with each of `width` kinds of truth, (..., bins, width)."""
    samples = codes.shape[-1]
    cells = (codes * np.int16(width) + kinds).reshape(-1, samples)
    size = _BINS * width
    cells += (np.arange(cells.shape[0], dtype=np.int16) * size)[:, np.newaxis]
    counts = np.bincount(cells.ravel(), minlength=cells.shape[0] * size)
    return np.asarray(counts.reshape(*codes.shape[:-1], _BINS, width) / samples)


def _chi_square_by_chance(freedom: int) -> float:
    """What chi-square passes once in a thousand times (Wilson and Hilferty's approximation)."""
    step = 2.0 / (9.0 * freedom)
    return float(freedom * (1.0 - step + _BY_CHANCE_Z * np.sqrt(step)) ** 3)
