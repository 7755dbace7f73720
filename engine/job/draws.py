"""Seeded streams, one per name, and the distributions that beliefs are drawn from.

Every stream is stratified: n equal slices of probability, one value in the middle of each, in an
order that depends on the name and the seed alone. So a fact that is added shifts no other, and
percentiles of a single fact come out right with any n.
"""

from functools import lru_cache
from hashlib import blake2b
from statistics import NormalDist
from typing import Final

import numpy as np
from numpy.typing import NDArray

from engine.arrays import Array, Floats

__all__ = ["NORMAL_90", "Draws", "skewed"]

NORMAL_90: Final = 1.2815515655446004
"""Standard normal quantile of 0.90: what a range's ends are away from its middle."""


@lru_cache(maxsize=8)
def _normal_slices(samples: int) -> Array:
    normal = NormalDist()
    return np.array([normal.inv_cdf((i + 0.5) / samples) for i in range(samples)])


@lru_cache(maxsize=1024)
def _order(name: str, seed: int, samples: int) -> NDArray[np.int64]:
    digest = blake2b(f"{seed}:{name}".encode(), digest_size=8).digest()
    stream = np.random.Generator(np.random.PCG64(int.from_bytes(digest)))
    order = stream.permutation(samples)
    order.setflags(write=False)
    return order


class Draws:
    """Randomness by name; the same name, seed and number of samples give the same values.

    Attributes:
        samples: n, at least 1.
        seed: Any integer.
    """

    __slots__ = ("samples", "seed")

    def __init__(self, samples: int, seed: int = 0) -> None:
        """Keep the number of samples and the seed."""
        if samples < 1:
            raise ValueError(f"at least one sample is needed, not {samples}")
        self.samples, self.seed = samples, seed

    def ranks(self, name: str) -> Array:
        """Uniform values between 0 and 1, (n,), one in each of n equal slices."""
        return (_order(name, self.seed, self.samples) + 0.5) / self.samples

    def in_order(self, name: str) -> NDArray[np.int64]:
        """The samples in the order of their ranks, (n,)."""
        found = np.empty(self.samples, dtype=np.int64)
        found[_order(name, self.seed, self.samples)] = np.arange(self.samples)
        return found

    def normals(self, name: str) -> Array:
        """Standard normal values, (n,), of the same ranks."""
        return _normal_slices(self.samples)[_order(name, self.seed, self.samples)]


def skewed(normals: Array, low: Floats, likely: Floats, high: Floats) -> Array:
    """Values of a range: two halves of normal curves that meet at the likely value.

    Args:
        normals: Standard normal values, (n,).
        low: One in ten is below; scalar or (n,).
        likely: The median; scalar or (n,).
        high: One in ten is above; scalar or (n,).

    Returns:
        (n,): likely + z/1.2816 x (likely - low) for z below 0, x (high - likely) above.
    """
    reach = np.where(normals < 0.0, np.subtract(likely, low), np.subtract(high, likely))
    return np.asarray(likely + normals * (reach / NORMAL_90))
