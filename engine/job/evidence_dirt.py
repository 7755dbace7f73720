"""What dirt does to a present system: the words people use for it, as factors with their spread."""

from dataclasses import dataclass
from math import log
from typing import Final

import numpy as np

from engine.errors import FactError
from engine.job.evidence_latents import Marginal, marginal_of_mixture, marginal_of_spread
from engine.trade.allowances import DIRT

__all__ = ["DIRTY_WORDS", "Dirt", "dirt_marginal"]

DIRTY_WORDS: Final = ("some_dirt", "plugged")
"""The words of the catalogue that mean dirt was seen."""


@dataclass(frozen=True, slots=True)
class Dirt:
    """Condition words of the present system as the catalogue has them; None if not looked at."""

    coil: str | None = None
    blower_wheel: str | None = None
    filter: str | None = None
    second_heat_exchanger: str | None = None


# Source of these four tables: common practice, no published source; low, likely, high.
_COIL_DIRT: Final = {"clean": (1.0, 1.03, 1.15), "plugged": (1.5, 2.2, 3.0)}
_FILTER_DIRT: Final = {"clean": (1.0, 1.02, 1.1), "plugged": (1.6, 2.6, 4.5)}
_WHEEL: Final = {"clean": (0.93, 0.98, 1.0), "plugged": (0.6, 0.75, 0.9)}
_LOOKED_AT_SHARES: Final = {
    "coil": (("clean", 0.75), ("some_dirt", 0.2), ("plugged", 0.05)),
    "wheel": (("clean", 0.5), ("some_dirt", 0.35), ("plugged", 0.15)),
    "filter": (("clean", 0.5), ("some_dirt", 0.4), ("plugged", 0.1)),
}


def dirt_marginal(of: str, word: str | None) -> Marginal:
    """Logarithm of what dirt multiplies, by the word for it; a mixture where nobody looked.

    Args:
        of: "coil" or "filter", whose drop it raises, or "wheel", whose airflow it lowers.
        word: "clean", "some_dirt", "plugged", "none", or None.

    Raises:
        FactError: Another word.
    """
    if word in ("none", "clean"):
        return _one_dirt(of, "clean")
    if word in DIRTY_WORDS:
        return _one_dirt(of, word)
    if word is not None:
        raise FactError(f"condition.{of}", f"is clean, some_dirt, plugged or none, not {word!r}")
    return marginal_of_mixture([(w, _one_dirt(of, word)) for word, w in _LOOKED_AT_SHARES[of]])


def _one_dirt(of: str, word: str) -> Marginal:
    if word == "some_dirt":
        name = "wheel_airflow" if of == "wheel" else f"{of}_drop"
        spread = (DIRT[name].low, DIRT[name].likely, DIRT[name].high)
    else:
        spread = {"coil": _COIL_DIRT, "filter": _FILTER_DIRT, "wheel": _WHEEL}[of][word]
    low, likely, high = (log(factor) for factor in spread)
    straight = marginal_of_spread(low, likely, high)
    # dirt never lowers a drop, nor raises a wheel's airflow
    z = np.linspace(-7.0, 7.0, 57)
    free = straight.at(z)
    return Marginal(z, np.minimum(free, 0.0) if of == "wheel" else np.maximum(free, 0.0))
