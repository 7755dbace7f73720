"""From a job to a verdict, per airflow mode.

In each sample a mode carries if nothing is over. Counted over the samples, that gives its status;
what must be known first, and what is on the line, is settled here too.
"""

from collections.abc import Collection, Mapping
from typing import Final

from engine.assessment import SAMPLES, Assessment, assess
from engine.floor import can_collect, unmet_floor
from engine.influence import assumptions_of, wanted_of, weights_of
from engine.job.job import Job
from engine.mode_verdict import SURE, mode_verdict
from engine.remedies import find_changes
from engine.trade.limits import LIMITS, Limits
from engine.verdict import Verdict
from engine.zone import zone_verdict

__all__ = ["SURE", "assess", "judge"]

_STILL_MOVES: Final = 0.02
"""Odds that a fact must move for collecting it to be a way out of a draw."""


def judge(
    job: Job,
    *,
    samples: int = SAMPLES,
    seed: int = 0,
    limits: Limits = LIMITS,
    collectable: Collection[str] | None = None,
    assessment: Assessment | None = None,
) -> Verdict:
    """Judge a job.

    Args:
        job: What is known.
        samples: Possible houses drawn.
        seed: The same job, samples and seed give the same verdict.
        limits: The office's figures.
        collectable: Keys of facts and lists that can still be had; None means every unstated one,
            an empty collection that nothing can.
        assessment: Of the same job, samples, seed and limits, where it was made already.

    Returns:
        The verdict of every mode, what would change it, what was assumed, what to collect next.
    """
    if assessment is None:
        assessment = assess(job, samples=samples, seed=seed, limits=limits)
    changes = find_changes(assessment, samples=samples, seed=seed, limits=limits)
    weights = weights_of(assessment)
    doubted = tuple(dict.fromkeys(doubt.reading for doubt in assessment.doubts if doubt.reading))
    measure_first = {
        mode: keys
        for mode, keys in changes.measure_first.items()
        if assessment.modes[mode].over_share >= SURE
    }
    unmet = {
        mode: _distinct(
            (*unmet_floor(job, mode, it.target), *doubted, *measure_first.get(mode, ()))
        )
        for mode, it in assessment.modes.items()
    }
    floor = {key for mode, it in assessment.modes.items()
             for key in (*unmet_floor(job, mode, it.target), *doubted)}  # fmt: skip
    beyond_floor = {key for keys in measure_first.values() for key in keys} - floor
    modes = {
        mode: mode_verdict(
            assessment,
            it,
            unmet[mode],
            changes.by_mode.get(mode),
            changes.with_trunks.get(mode),
            still_open=_is_open(unmet[mode], weights, collectable),
            measure_first=mode in measure_first,
        )
        for mode, it in assessment.modes.items()
    }
    zone = zone_verdict(
        assessment,
        lambda mode: unmet.get(mode, ()),
        samples=samples,
        seed=seed,
        limits=limits,
    )
    return Verdict(
        modes=modes,
        remedies=changes.remedies,
        changes=changes.together,
        assumed=assumptions_of(assessment, weights),
        collect_next=wanted_of(assessment, unmet, weights, collectable, beyond_floor),
        doubts=assessment.doubts,
        refused=(zone,) if isinstance(zone, str) else (),
        effective_samples=assessment.effective_samples,
        samples=samples,
        smallest_zone=None if isinstance(zone, str) else zone,
    )


def _distinct(keys: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(keys))


def _is_open(
    unmet: tuple[str, ...], weights: Mapping[str, float], collectable: Collection[str] | None
) -> bool:
    """Whether something that matters can still be collected."""
    return any(can_collect(key, collectable) for key in unmet) or any(
        weight >= _STILL_MOVES and can_collect(key, collectable) for key, weight in weights.items()
    )
