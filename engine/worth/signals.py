"""What learning a bundle would show, sample by sample, and how far this person's way blurs it.

A signal is a quantity of the house as the judge drew it. What this person can't do better than it
is known already shows nothing.
"""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.assessment import Assessment
from engine.job.belief import How
from engine.job.evidence import AIRFLOW_TOLERANCES, AirflowSource
from engine.job.facts import Quantity, catalogue, fact_for, pattern_of
from engine.job.job import Job
from engine.job.knowing import scatter_of
from engine.job.openings import filters_of, openings_of
from engine.job.sample import Drawn
from engine.job.sections import Duct, ducts_of
from engine.trade.exponents import PressurePart
from engine.worth.bundles import Bundle, Shows, covers
from engine.worth.reliefs import load_ratio

__all__ = ["Signal", "is_known_to", "signals_of"]

_BEST_FIRST: Final = tuple(How)
_EXACT: Final = (How.DOCUMENT, How.PLATE)

_LEAST: Final = 0.01

_MISREAD: Final = 0.03
"""Chance that a word is read wrong (a plate photographed and read: common practice)."""

_FRAME_DOUBT_IN: Final = 0.85
"""Scatter of a grille's side read by somebody who mixes frame and hole: half the frame's excess
(common practice, no published source)."""

_STATIC_INWC, _STATIC_SHARE = 0.03, 0.10
"""Static as taken in the field, the larger (common practice, no published source)."""

_SAME_FILTER: Final = 0.25
"""Standard deviation of the logarithm of the present filter's drop over the new one's."""

_PRESENT_COIL_INWC: Final = (0.20, 0.45)
"""Present coil's drop with its dirt: middle, and standard deviation of its logarithm. Both common
practice, no published source."""


_COIL_WORDS: Final = (1.15, 1.5)
_WHEEL_WORDS: Final = (0.85, 0.93)
"""Factors at which one word for dirt ends and the next begins, by the words' own ranges."""

_DIRT_SEEN: Final = 0.30
"""Scatter of the logarithm of a filter's drop over a clean one's as dirt is judged by eye (common
practice, no published source)."""


@dataclass(frozen=True, slots=True)
class Signal:
    """One quantity that a bundle shows.

    Attributes:
        name: Names its stream of noise.
        values: In the samples, (n,); places of words for a word.
        noise: Standard deviation of this person's way of knowing, in the values' unit; for a word
            the chance that it is read wrong.
        is_word: Whether values count through words.
    """

    name: str
    values: Array
    noise: float
    is_word: bool = False

    def thinned(self, every: int) -> "Signal":
        """The same in every so manieth sample."""
        return self if every == 1 else replace(self, values=self.values[::every])


def is_known_to(job: Job, key: str, how: How) -> bool:
    """Whether a fact is known already as well as this way of knowing could."""
    belief = job.stated(key)
    if belief is None or belief.how is How.ASSUMED:
        return False
    if belief.how in _EXACT:
        return True
    hedged = bool(getattr(belief, "hedged", False))
    return not hedged and _BEST_FIRST.index(belief.how) <= _BEST_FIRST.index(how)


def signals_of(assessment: Assessment, bundle: Bundle, how: How) -> tuple[Signal, ...]:
    """What this bundle would show of the house, that isn't known yet.

    Args:
        assessment: The job put to every check.
        bundle: What is asked.
        how: How the answer would be known.

    Returns:
        Signals that vary over the samples; none where nothing that was drawn depends on it.
    """
    found = _MAKERS[bundle.shows](assessment, bundle, how)
    return tuple(one for one in found if np.ptp(one.values) > 1e-9)


def _drawn(assessment: Assessment, bundle: Bundle, how: How) -> Iterator[Signal]:
    wanted = (*bundle.facts, *bundle.also)
    for drawn in tuple(assessment.house.drawn.values()):
        if drawn.ranks is None:
            continue
        key = drawn.fact or (drawn.key if pattern_of(drawn.key) in catalogue() else "")
        if not key or not covers(wanted, pattern_of(key)):
            continue
        if drawn.stated and is_known_to(assessment.job, key, how):
            continue
        if key.endswith("measured_where") and not _is_yes_or_no(drawn):
            continue  # how much wrap or frame is on it isn't told by where the tape was held
        yield _of_drawn(drawn, how)


def _is_yes_or_no(drawn: Drawn) -> bool:
    return bool(((drawn.values == 0.0) | (drawn.values == 1.0)).all())


def _of_drawn(drawn: Drawn, how: How) -> Signal:
    values = drawn.values[1:]
    if drawn.words or _is_yes_or_no(drawn):
        return Signal(drawn.key, values, _misread(how), is_word=True)
    row = catalogue().get(pattern_of(drawn.key))
    if row is not None:
        scatter = scatter_of(fact_for(drawn.key).quantity, how)
        return Signal(drawn.key, values, scatter.sigma(float(np.median(values))))
    for ending, quantity in _OWN_NAMES.items():
        if drawn.key.endswith(ending):
            scatter = scatter_of(quantity, how)
            return Signal(drawn.key, values, scatter.sigma(float(np.median(values))))
    return Signal(drawn.key, values, 0.0)


_OWN_NAMES: Final[Mapping[str, Quantity]] = MappingProxyType(
    {
        "branches per ton": Quantity.COUNT,
        "branches diameter": Quantity.FLEX_DIAMETER,
        "branches slack": Quantity.SHARE,
        "usual height": Quantity.DUCT_SIDE,
    }
)
"""Kinds of what is drawn under a name that is no fact."""


def _misread(how: How) -> float:
    return {How.PHONE: 2.0, How.GUESSED: 5.0}.get(how, 1.0) * _MISREAD


def _ducts(assessment: Assessment, bundle: Bundle, how: How) -> Iterator[Signal]:
    name = bundle.facts[0]
    ducts = ducts_of(assessment.house, name)
    if not ducts:
        yield from _drawn(assessment, bundle, how)
        return
    for duct in ducts:
        if duct.stated and _size_is_known(assessment.job, duct, how):
            continue
        yield Signal(f"{duct.key} area", _log(duct.area_ft2), _area_scatter(duct, how))
        if not duct.stated:
            yield Signal(f"{duct.key} share", duct.share[1:], _misread(how), is_word=True)


def _size_is_known(job: Job, duct: Duct, how: How) -> bool:
    if not all(is_known_to(job, key, how) for key in duct.size_keys):
        return False
    exact = all(job.beliefs[key].how in _EXACT for key in duct.size_keys)
    return exact or f"{duct.key}.measured_where" in job.beliefs


def _area_scatter(duct: Duct, how: How) -> float:
    if duct.width_in is None or duct.height_in is None:
        assert duct.diameter_in is not None  # a duct without sides is round
        across = float(duct.diameter_in[0])
        return 2.0 * scatter_of(Quantity.FLEX_DIAMETER, how).sigma(across) / across
    sides = (float(duct.width_in[0]), float(duct.height_in[0]))
    return _relative(Quantity.DUCT_SIDE, how, sides, 0.0)


def _relative(quantity: Quantity, how: How, sides: tuple[float, float], more_in: float) -> float:
    """Scatter of an area's logarithm."""
    scatter = scatter_of(quantity, how)
    each = [np.hypot(scatter.sigma(side), more_in) / side for side in sides]
    return float(np.hypot(*each))


def _openings(assessment: Assessment, bundle: Bundle, how: How) -> Iterator[Signal]:
    openings = openings_of(assessment.house)
    if openings is None:
        return
    job = assessment.job
    entries = tuple(job.entries("return.grilles"))
    known = openings.stated and all(is_known_to(job, key, how) for key in openings.size_keys)
    if known and all(_place_is_known(job, key) for key in entries):
        return
    doubt = 0.0 if how in (How.MEASURED, *_EXACT) else _FRAME_DOUBT_IN
    noise = _relative(Quantity.GRILLE_SIDE, how, (20.0, 20.0), doubt)
    yield Signal("openings area", _log(openings.area_ft2), noise)
    filtered = openings.filtered[1:].astype(np.float64)
    yield Signal("openings filtered", filtered, _misread(how), is_word=True)


def _log(area_or_airflow: Array) -> Array:
    """Logarithm over the samples, of what is never quite nothing."""
    return np.asarray(np.log(np.maximum(area_or_airflow[1:], _LEAST)))


def _place_is_known(job: Job, key: str) -> bool:
    sides = (job.stated(f"{key}.width_in"), job.stated(f"{key}.height_in"))
    exact = all(side is not None and side.how in _EXACT for side in sides)
    return exact or f"{key}.measured_where" in job.beliefs


def _filters(assessment: Assessment, bundle: Bundle, how: How) -> Iterator[Signal]:
    job = assessment.job
    entries = tuple(job.entries("filters"))
    names = ("width_in", "height_in", "depth_in", "place")
    if entries and all(is_known_to(job, f"{key}.{name}", how) for key in entries for name in names):
        return
    for bank in filters_of(assessment.house):
        yield Signal(
            f"filter {bank.place} area",
            _log(bank.area_ft2),
            _relative(Quantity.FILTER_SIDE, how, (16.0, 25.0), 0.0),
        )
        yield Signal(f"filter {bank.place} depth", bank.depth_in[1:], 0.0)
        present = bank.present[1:].astype(np.float64)
        yield Signal(f"filter {bank.place} there", present, _misread(how), is_word=True)


def _target(assessment: Assessment, bundle: Bundle, how: How) -> Iterator[Signal]:
    it = None if bundle.mode is None else assessment.modes.get(bundle.mode)
    key = bundle.facts[0]
    if it is None or it.target.least_cfm is not None or is_known_to(assessment.job, key, how):
        return  # where any airflow of a range will do, there is none to ask for
    scatter = scatter_of(Quantity.AIRFLOW, how).sigma(it.target.likely_cfm)
    yield Signal(key, _log(it.target.airflow_cfm), scatter / it.target.likely_cfm)


def _pressures(assessment: Assessment, bundle: Bundle, how: How) -> Iterator[Signal]:
    for side, (ducts, other) in _sides(assessment).items():
        key = f"readings.0.{'after_filter' if side == 'return' else 'before_coil'}_inwc"
        if not _is_doubted(assessment) and is_known_to(assessment.job, key, how):
            continue
        yield _pressure(assessment, f"{side} side", ducts + other, _airflow_doubt(bundle))


def _pressure_parts(assessment: Assessment, bundle: Bundle, how: How) -> Iterator[Signal]:
    sides = _sides(assessment)
    names = ("before_filter", "after_filter", "before_coil", "after_coil")
    keys = [f"readings.0.{name}_inwc" for name in names]
    if not _is_doubted(assessment) and all(is_known_to(assessment.job, k, how) for k in keys):
        return
    for side, (ducts, other) in sides.items():
        yield _pressure(assessment, f"{side} duct", ducts, _airflow_doubt(bundle))
        if np.ptp(other) > 0.0:
            yield _pressure(assessment, f"{side} piece", other, _airflow_doubt(bundle))


def _is_doubted(assessment: Assessment) -> bool:
    return any(doubt.reading for doubt in assessment.doubts)


def _sides(assessment: Assessment) -> dict[str, tuple[Array, Array]]:
    """Drops of the ducts and of what sits in them today, by side, at the reference, (n,) each."""
    house, system = assessment.house, assessment.system
    zero = np.zeros(house.draws.samples)
    found = {}
    for side, duct, piece in (
        ("return", PressurePart.RETURN_DUCT, PressurePart.FILTER),
        ("supply", PressurePart.SUPPLY_DUCT, PressurePart.COIL),
    ):
        drop = system.parts[duct].drop_inwc[1:]
        other = zero
        if piece in system.parts:
            stray = house.draws.normals(f"present {piece} for worth")
            if piece is PressurePart.COIL:
                other = _PRESENT_COIL_INWC[0] * np.exp(_PRESENT_COIL_INWC[1] * stray)
            else:
                other = system.parts[piece].drop_inwc[1:] * np.exp(_SAME_FILTER * stray)
        found[side] = (drop, other)
    return found


def _pressure(assessment: Assessment, name: str, drop: Array, airflow_doubt: float) -> Signal:
    middle = float(np.median(drop))
    static = max(_STATIC_INWC, _STATIC_SHARE * middle) / middle
    exponent = float(assessment.system.parts[PressurePart.SUPPLY_DUCT].exponent[0])
    return Signal(name, np.log(drop), float(np.hypot(static, exponent * airflow_doubt)))


def _airflow_doubt(bundle: Bundle) -> float:
    source = AirflowSource.BLOWER_TABLE if bundle.airflow_known else AirflowSource.OTHER
    return AIRFLOW_TOLERANCES[source].share


def _loads(assessment: Assessment, bundle: Bundle, how: How) -> Iterator[Signal]:
    if not is_known_to(assessment.job, "loads.sensible_gain_btuh", how):
        ratio = load_ratio(assessment)
        yield Signal("load ratio", ratio, scatter_of(Quantity.LOAD, how).sigma(1.0))


def _airflow_read(assessment: Assessment, bundle: Bundle, how: How) -> Iterator[Signal]:
    """The airflow of readings whose airflow nobody found yet."""
    evidence, job = assessment.evidence, assessment.job
    for key, airflow in {} if evidence is None else evidence.airflow_cfm.items():
        found = f"{key}.airflow_cfm", f"{key}.supply_degf"
        if not any(job.is_known(one) for one in found):
            noise = AIRFLOW_TOLERANCES[AirflowSource.TEMPERATURE_RISE].share
            yield Signal(f"{key} airflow", np.asarray(np.log(airflow)), noise)


def _dirt(assessment: Assessment, bundle: Bundle, how: How) -> Iterator[Signal]:
    """What dirt did to the readings; without any, dirt goes with the old equipment."""
    evidence, key = assessment.evidence, bundle.facts[0]
    if evidence is None or assessment.job.is_known(key):
        return
    if key == "condition.filter":
        read = evidence.drop_inwc.get(PressurePart.FILTER)
        if read is not None:
            by_size = evidence.by_sizes_inwc[PressurePart.FILTER]
            yield Signal(key, _log(read / np.maximum(by_size, _LEAST)), _DIRT_SEEN)
        return
    dirt, edges = (
        (evidence.coil_dirt, _COIL_WORDS)
        if key == "condition.coil"
        else (evidence.wheel, _WHEEL_WORDS)
    )
    yield Signal(key, np.digitize(dirt, edges).astype(np.float64), _misread(how), is_word=True)


def _ways(assessment: Assessment, bundle: Bundle, how: How) -> Iterator[Signal]:
    drawn = assessment.house.drawn.get("supply.trunks count")
    if drawn is not None and drawn.ranks is not None:
        yield Signal(drawn.key, drawn.values[1:], _misread(how), is_word=True)


_MAKERS: Final[Mapping[Shows, Callable[[Assessment, Bundle, How], Iterator[Signal]]]] = (
    MappingProxyType(
        {
            Shows.DRAWN: _drawn,
            Shows.DUCTS: _ducts,
            Shows.OPENINGS: _openings,
            Shows.FILTERS: _filters,
            Shows.TARGET: _target,
            Shows.PRESSURES: _pressures,
            Shows.PRESSURE_PARTS: _pressure_parts,
            Shows.LOADS: _loads,
            Shows.AIRFLOW_READ: _airflow_read,
            Shows.DIRT: _dirt,
            Shows.WAYS: _ways,
        }
    )
)
