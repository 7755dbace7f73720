"""Which unstated facts move the verdict, and by how much."""

from collections.abc import Collection
from typing import Final

import numpy as np

from engine.assessment import Assessment
from engine.checks.raw import is_known_key
from engine.floor import can_collect
from engine.job.facts import catalogue, pattern_of
from engine.job.modes import Mode
from engine.job.sample import Drawn, Mask
from engine.job.sections import ducts_of
from engine.verdict import Assumption, Wanted

__all__ = ["assumptions_of", "meaning_of", "wanted_of", "weights_of"]

_BINS: Final = 8
_TIMES_CHANCE: Final = 3.0
"""Variance over eight bins that chance alone passes in one fact of two hundred (chi-square)."""

_WORTH_NAMING: Final = 0.02
"""Standard deviation of the odds over a fact's values below which it isn't worth naming."""

_LIST_MEANINGS: Final = {
    "supply.trunks": "Supply trunks that leave the plenum: how many, and the size of each.",
    "supply.branches": "Supply branches: how many, and their sizes.",
    "return.drops": "Return drop: its size where it meets the equipment.",
    "return.trunks": "Return trunk: whether there is one, and its size.",
    "return.branches": "Return branches: how many, and their sizes.",
    "return.grilles": "Return openings: how many, and the size of each.",
    "supply.registers": "Supply registers: how many, and the size of each.",
    "filters": "Filter: printed size, thickness and place.",
    "path.fittings": "Fittings on the longest run.",
    "readings": "Pressures read in this house, with the airflow they were read at.",
    "equipment.blower_tables": "The new blower's table: airflow at each static pressure.",
    "equipment.cooling_rows": "The maker's cooling performance rows.",
}


def meaning_of(key: str) -> str:
    """What a fact, list or table is, one sentence."""
    if key in _LIST_MEANINGS:
        return _LIST_MEANINGS[key]
    fact = catalogue().get(pattern_of(key))
    return key if fact is None else fact.meaning


def weights_of(assessment: Assessment) -> dict[str, float]:
    """How much each unstated fact moves the odds that a mode carries.

    Returns:
        By fact: the standard deviation, over the fact's values, of the share of samples that are
        over, in the mode where it is largest; 0 where it drowns in the samples' own scatter.
    """
    found: dict[str, float] = {}
    for mode in assessment.modes.values():
        squares: dict[str, float] = {}
        for drawn in assessment.house.drawn.values():
            if drawn.stated or not drawn.fact or drawn.ranks is None:
                continue
            moved = _variance(drawn, mode.over)
            squares[drawn.fact] = squares.get(drawn.fact, 0.0) + moved
        for fact, square in squares.items():
            found[fact] = max(found.get(fact, 0.0), float(np.sqrt(square)))
    return found


def _variance(drawn: Drawn, over: Mask) -> float:
    """Variance of the conditional odds over eight bins of a fact, less what chance would give."""
    assert drawn.ranks is not None  # only what was drawn has ranks
    bins = (drawn.ranks * _BINS).astype(np.intp)
    count = np.bincount(bins, minlength=_BINS)
    share = np.bincount(bins, weights=over, minlength=_BINS) / np.maximum(count, 1)
    overall = float(np.mean(over))
    between = float(np.average(np.square(share - overall), weights=count))
    by_chance = (_BINS - 1) * overall * (1.0 - overall) / over.size
    return max(between - _TIMES_CHANCE * by_chance, 0.0)


def assumptions_of(assessment: Assessment, weights: dict[str, float]) -> tuple[Assumption, ...]:
    """Facts nobody stated that were drawn, most influential first."""
    facts = [
        fact for fact in weights if fact != "readings" and not is_known_key(assessment.job, fact)
    ]
    facts.sort(key=lambda fact: -weights[fact])
    return tuple(_assumption(assessment, fact, weights[fact]) for fact in facts)


def _assumption(assessment: Assessment, fact: str, weight: float) -> Assumption:
    row = catalogue().get(pattern_of(fact))
    unit = "" if row is None else row.unit
    source = "common practice" if row is None or row.source == "practice" else row.source
    drawn = assessment.house.drawn.get(fact)
    values = _target_values(assessment, fact) if drawn is None else drawn.values
    low = high = None
    likely: float | str
    if drawn is not None and drawn.words:
        likely = drawn.words[int(drawn.values[0])]
    elif values is not None:
        likely = float(values[0])
        low, high = (float(v) for v in np.percentile(values[1:], (10.0, 90.0)))
    else:
        likely = _described(assessment, fact)
    return Assumption(fact, meaning_of(fact), low, likely, high, unit, source, weight)


def _target_values(assessment: Assessment, fact: str) -> np.ndarray | None:
    for mode, found in assessment.modes.items():
        if fact == f"target.{mode}_cfm":
            return found.target.airflow_cfm
    return None


def _described(assessment: Assessment, fact: str) -> str:
    house = assessment.house
    if fact in ("supply.trunks", "return.drops"):
        duct = ducts_of(house, fact)[0]
        assert duct.width_in is not None  # what is believed of these is rectangular
        assert duct.height_in is not None
        size = f"{duct.width_in[0]:,.0f} x {duct.height_in[0]:,.0f} in."
        return f"one, about {size}"
    if fact == "equipment.blower_tables":
        kinds = house.word("equipment.blower_kind")
        return f"a usual blower of the kind {kinds.words[int(kinds.values[0])]}"
    if fact.endswith("measured_where"):
        return "taken as the clear size"
    return "as in a usual house of this size"


def wanted_of(
    assessment: Assessment,
    unmet: dict[Mode, tuple[str, ...]],
    weights: dict[str, float],
    collectable: Collection[str] | None,
    after_floor: Collection[str] = (),
) -> tuple[Wanted, ...]:
    """Facts worth collecting: what the floor of evidence lacks, then what moves the odds most.

    Args:
        assessment: The house.
        unmet: What is missing, by mode.
        weights: How much each fact moves the odds.
        collectable: Keys that can still be had; None means any.
        after_floor: Keys of `unmet` that come after all others of it.
    """
    first = dict.fromkeys(key for keys in unmet.values() for key in keys)
    lacking = sorted(first, key=lambda key: (key in after_floor, -_weight_below(weights, key)))
    found = [
        Wanted(key, meaning_of(key), _why(assessment, key))
        for key in lacking
        if can_collect(key, collectable)
    ]
    named = {wanted.key for wanted in found}
    for fact in sorted(weights, key=lambda key: -weights[key]):
        if weights[fact] < _WORTH_NAMING or fact in named or not can_collect(fact, collectable):
            continue
        if is_known_key(assessment.job, fact) and fact != "readings":
            continue
        points = 100.0 * weights[fact]
        why = f"Knowing it moves the odds by about {points:,.0f} points either way."
        found.append(Wanted(fact, meaning_of(fact), why))
    return tuple(found)


def _why(assessment: Assessment, key: str) -> str:
    if any(doubt.reading == key for doubt in assessment.doubts):
        return "It contradicts the rest of this house: take it again."
    return "Without it I can't say that these ducts carry."


def _weight_below(weights: dict[str, float], key: str) -> float:
    return max(
        (w for fact, w in weights.items() if fact == key or fact.startswith(f"{key}.")),
        default=0.0,
    )
