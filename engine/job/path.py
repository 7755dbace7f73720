"""The path of the air as numbers: parts in series, each growing with a power of airflow."""

from dataclasses import dataclass

import numpy as np

from engine.arrays import Array, Floats
from engine.job.modes import Mode
from engine.job.sample import Mask
from engine.trade.exponents import PressurePart

__all__ = ["PartDrop", "System"]


@dataclass(frozen=True, slots=True)
class PartDrop:
    """One part of the path; arrays are (n + 1,).

    Attributes:
        drop_inwc: At the system's reference airflow, in this site's air; a coil's when wet.
        exponent: Power of airflow with which it grows.
        inside: Where the blower's rating includes the part, so that it doesn't count outside.
        rests_on: Keys it comes from.
        words: How the central figure comes about, for the arithmetic.
    """

    drop_inwc: Array
    exponent: Array
    inside: Mask
    rests_on: tuple[str, ...]
    words: str = ""


@dataclass(frozen=True, slots=True)
class System:
    """All parts of the path.

    Attributes:
        reference_cfm: Airflow at which drops are stated.
        parts: By name; a house without a filter, coil or strips has none.
        wet_over_dry: A wet coil's drop over its dry one, (n + 1,).
    """

    reference_cfm: float
    parts: dict[PressurePart, PartDrop]
    wet_over_dry: Array

    def drop_inwc(self, part: PressurePart, airflow_cfm: Floats, mode: Mode) -> Array:
        """Drop of one part at an airflow, (n + 1,), whether or not it is inside the rating."""
        found = self.parts[part]
        drop: Array = found.drop_inwc * (airflow_cfm / self.reference_cfm) ** found.exponent
        if part is PressurePart.COIL and not mode.is_cooling:
            drop = drop / self.wet_over_dry
        return drop

    def central_drop_inwc(self, part: PressurePart, airflow_cfm: float, mode: Mode) -> float:
        """`drop_inwc` of the central house alone."""
        found = self.parts[part]
        grown = float((airflow_cfm / self.reference_cfm) ** float(found.exponent[0]))
        drop = float(found.drop_inwc[0]) * grown
        if part is PressurePart.COIL and not mode.is_cooling:
            drop /= float(self.wet_over_dry[0])
        return drop

    def central_external_inwc(self, airflow_cfm: float, mode: Mode) -> float:
        """`external_inwc` of the central house alone."""
        return sum(
            self.central_drop_inwc(part, airflow_cfm, mode)
            for part, found in self.parts.items()
            if not found.inside[0]
        )

    def external(self, mode: Mode) -> tuple[Array, Array]:
        """Drops at the reference airflow and exponents of what is outside the rating.

        Returns:
            Two arrays, (parts, n + 1).
        """
        drops, exponents = [], []
        for part, found in self.parts.items():
            drop = found.drop_inwc
            if part is PressurePart.COIL and not mode.is_cooling:
                drop = drop / self.wet_over_dry
            drops.append(np.where(found.inside, 0.0, drop))
            exponents.append(found.exponent)
        return np.stack(drops), np.stack(exponents)

    def external_inwc(self, airflow_cfm: Floats, mode: Mode) -> Array:
        """Total external static that this path takes at an airflow, (n + 1,)."""
        drops, exponents = self.external(mode)
        return np.asarray(
            np.sum(
                drops * np.exp(exponents * np.log(np.divide(airflow_cfm, self.reference_cfm))),
                axis=0,
            )
        )

    def rests_on(self) -> tuple[str, ...]:
        """Keys of everything outside the rating."""
        keys = [key for found in self.parts.values() for key in found.rests_on]
        return tuple(dict.fromkeys(keys))
