"""Readings as observations: each pressure or airflow as a figure with its tolerance."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import log
from typing import Final

from engine.job.evidence_airflow import AirflowRead, airflow_from_blower_table
from engine.job.evidence_dirt import DIRTY_WORDS
from engine.job.evidence_prior import PressurePrior
from engine.job.evidence_readings import (
    FilterState,
    Reading,
    Tap,
    Tapped,
    total_external_inwc,
    with_plain_signs,
)
from engine.physics.blower_table import TablePlace
from engine.trade.exponents import PressurePart

__all__ = ["Observation", "observations_of"]


@dataclass(frozen=True, slots=True)
class Observation:
    """One number that speaks about the house.

    Attributes:
        key: Its fact key.
        reading: Index of its reading.
        tap: Where it was read; None for the airflow.
        value: in wc as an amount, or the logarithm of CFM.
        tolerance: One standard deviation, in the same measure.
        side: 0 for a plain figure; 1 if only a prediction above it counts against it ("at most"),
            -1 if only one below it does.
        hides_wheel: The airflow is one of a clean wheel.
        is_difference: A total that would be the difference of its two sides, not their sum.
    """

    key: str
    reading: int
    tap: Tap | None
    value: float
    tolerance: float
    side: int = 0
    hides_wheel: bool = False
    is_difference: bool = False


_DERIVED_WITHIN_INWC: Final = 0.0151
"""A figure this near to the sum or difference of its parts is theirs, not a reading of its own:
gauges and people round to 0.01."""


def observations_of(prior: PressurePrior, readings: Sequence[Reading]) -> tuple[Observation, ...]:
    """Everything the readings say, each once: signs made plain, sums of other figures left out."""
    found: list[Observation] = []
    for index, reading in enumerate(readings):
        taps = with_plain_signs(reading.taps)
        own = _own(taps)
        for tap, taken in own.items():
            side = 1 if _is_only_a_bound(tap, own, prior, reading) else 0
            key = f"{reading.key}.{tap}_inwc"
            found.append(Observation(key, index, tap, taken.value_inwc, taken.tolerance_inwc, side))
        airflow = _airflow(prior, reading, taps)
        if airflow is not None:
            side = {
                TablePlace.BEYOND_LAST_ROW: 1,
                TablePlace.BELOW_FIRST_ROW: -1,
                TablePlace.WITHIN: 0,
            }[airflow.place]
            found.append(
                Observation(
                    f"{reading.key}.airflow_cfm",
                    index,
                    None,
                    log(airflow.airflow_cfm),
                    airflow.tolerance_share,
                    side,
                    airflow.hides_wheel,
                )
            )
    return tuple(found)


def _airflow(
    prior: PressurePrior, reading: Reading, taps: Mapping[Tap, Tapped]
) -> AirflowRead | None:
    if reading.airflow is not None or reading.blower_table is None:
        return reading.airflow
    total = total_external_inwc(
        taps,
        filter_is_inside=prior.is_inside(PressurePart.FILTER),
        coil_is_inside=prior.is_inside(PressurePart.COIL),
    )
    if total is None or not 0.0 <= total <= 10.0:
        return None
    return airflow_from_blower_table(reading.blower_table, total)


def _own(taps: Mapping[Tap, Tapped]) -> dict[Tap, Tapped]:
    """The pressures that are readings of their own, not worked out from others."""
    value = {tap: taken.value_inwc for tap, taken in taps.items()}
    own = dict(taps)
    for same, others in (
        (Tap.RETURN, (Tap.AFTER_FILTER, Tap.BEFORE_FILTER)),
        (Tap.SUPPLY, (Tap.BEFORE_COIL, Tap.AFTER_COIL)),
    ):
        if same in own and any(
            abs(value[other] - value[same]) < _DERIVED_WITHIN_INWC
            for other in others
            if other in value
        ):
            del own[same]
    for drop, after, before in (
        (Tap.FILTER_DROP, Tap.AFTER_FILTER, Tap.BEFORE_FILTER),
        (Tap.COIL_DROP, Tap.BEFORE_COIL, Tap.AFTER_COIL),
    ):
        if drop in own and after in value and before in value:
            rest = value[after] - value[before] - value[drop]
            if abs(rest) < _DERIVED_WITHIN_INWC:
                del own[drop]
    if Tap.TOTAL_EXTERNAL in own:
        total = value[Tap.TOTAL_EXTERNAL]
        sums = [
            value[a] + value[b]
            for a in (Tap.RETURN, Tap.AFTER_FILTER, Tap.BEFORE_FILTER)
            for b in (Tap.SUPPLY, Tap.BEFORE_COIL, Tap.AFTER_COIL)
            if a in value and b in value
        ]
        if any(abs(total - summed) < _DERIVED_WITHIN_INWC for summed in sums):
            del own[Tap.TOTAL_EXTERNAL]
    return own


_LUMPS: Final = {
    Tap.AFTER_FILTER: (PressurePart.FILTER,),
    Tap.RETURN: (PressurePart.FILTER,),
    Tap.BEFORE_COIL: (PressurePart.COIL,),
    Tap.SUPPLY: (PressurePart.COIL,),
    Tap.TOTAL_EXTERNAL: (PressurePart.FILTER, PressurePart.COIL),
}
_SPLIT_BY: Final = {
    PressurePart.FILTER: ({Tap.FILTER_DROP}, {Tap.BEFORE_FILTER, Tap.AFTER_FILTER}),
    PressurePart.COIL: ({Tap.COIL_DROP}, {Tap.BEFORE_COIL, Tap.AFTER_COIL}),
}


def _is_only_a_bound(
    tap: Tap, own: Mapping[Tap, Tapped], prior: PressurePrior, reading: Reading
) -> bool:
    """Whether a pressure lumps ducts with a part known to be dirty whose own drop wasn't read.

    Nobody can tell how much of it is dirt, so it may lower what is believed of the ducts and
    never raise it.
    """
    return any(
        part in prior.parts
        and _is_stated_dirty(part, prior, reading)
        and not any(split <= own.keys() for split in _SPLIT_BY[part])
        for part in _LUMPS.get(tap, ())
    )


def _is_stated_dirty(part: PressurePart, prior: PressurePrior, reading: Reading) -> bool:
    if part is PressurePart.COIL:
        return prior.dirt.coil in DIRTY_WORDS and not reading.no_coil
    if reading.filter_state is None:
        return prior.dirt.filter in DIRTY_WORDS
    return reading.filter_state is FilterState.DIRTY
