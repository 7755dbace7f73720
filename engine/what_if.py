"""What if: other equipment on the same ducts, judged beside the job as it is; nothing is kept.

What a candidate's edits bring with them is `engine.candidate`'s subject.
"""

from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass, replace
from typing import Final

from engine.assessment import SAMPLES, Assessment, assess
from engine.candidate import (
    BLOWER_TABLES,
    OF_THE_BLOWER,
    WITH_TONS,
    Candidate,
    candidate_job,
    no_longer_held,
)
from engine.checks.raw import spread_of
from engine.errors import FactError
from engine.floor import OF_THE_EQUIPMENT, unmet_floor
from engine.job.job import Job
from engine.job.modes import Mode
from engine.judge import SURE, judge
from engine.trade.limits import LIMITS, Limits
from engine.verdict import Spread, Verdict

__all__ = [
    "SOLD_TONS",
    "Candidate",
    "LargestQuiet",
    "candidate_job",
    "compare",
    "judge_candidate",
    "largest_quiet",
    "no_longer_held",
]

SOLD_TONS: Final = (1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0)
"""Nominal cooling sizes that are sold for houses (common practice, no published source)."""


@dataclass(frozen=True, slots=True)
class LargestQuiet:
    """The largest cooling size that a house's ducts carry.

    Attributes:
        tons: That size, of `SOLD_TONS`; None if they carry not even the smallest, or if it can't
            be said.
        airflow_cfm: Its airflow in full cooling; None where `tons` is.
        per_ton_cfm: Airflow per ton it was looked for with.
        quiet_cfm: The most air within every largest speed; None if that can't be said.
        needs: Facts of that equipment to be known before it may be called carried.
        unmet: Facts of the ducts that are missing, without which no size may be called carried.
    """

    tons: float | None
    airflow_cfm: float | None
    per_ton_cfm: float
    quiet_cfm: Spread | None
    needs: tuple[str, ...] = ()
    unmet: tuple[str, ...] = ()


def compare(
    job: Job,
    candidates: Sequence[Candidate],
    *,
    samples: int = SAMPLES,
    seed: int = 0,
    limits: Limits = LIMITS,
    collectable: Collection[str] | None = None,
) -> tuple[Verdict, ...]:
    """Judge a job as it is and with each candidate's equipment, on the same possible houses.

    Args:
        job: What is known; it is left as it is.
        candidates: Other equipment.
        samples: Possible houses drawn.
        seed: The same job, candidates, samples and seed give the same verdicts.
        limits: The office's figures.
        collectable: As in `engine.judge.judge`; the figures of a candidate's own equipment can
            always be had.

    Returns:
        The verdict of the job as it is first, then one of each candidate in order.

    Raises:
        FactError: A candidate holds a value that no house has, or no such fact.
    """
    as_is = assess(job, samples=samples, seed=seed, limits=limits)
    own = judge(
        job, samples=samples, seed=seed, limits=limits, collectable=collectable, assessment=as_is
    )
    tried = (
        judge_candidate(
            as_is, one, samples=samples, seed=seed, limits=limits, collectable=collectable
        )
        for one in candidates
    )
    return (own, *tried)


def judge_candidate(
    as_is: Assessment,
    candidate: Candidate,
    *,
    samples: int = SAMPLES,
    seed: int = 0,
    limits: Limits = LIMITS,
    collectable: Collection[str] | None = None,
) -> Verdict:
    """The verdict of a house with a candidate's equipment.

    Args:
        as_is: The house as it is, with the same samples, seed and limits.
        candidate: Other equipment.
        samples: As in `as_is`.
        seed: As in `as_is`.
        limits: As in `as_is`.
        collectable: As in `compare`.

    Raises:
        FactError: As `candidate_job`.
    """
    after = candidate_job(as_is.job, candidate)
    had = None
    if collectable is not None:
        gone = frozenset(no_longer_held(as_is.job, after))
        table = frozenset((BLOWER_TABLES,) if gone.intersection(OF_THE_BLOWER) else ())
        had = gone | table | frozenset(collectable)
    return judge(
        after,
        samples=samples,
        seed=seed,
        limits=limits,
        collectable=had,
        assessment=_tried(as_is, after, samples, seed, limits),
    )


def largest_quiet(
    job: Job,
    *,
    samples: int = SAMPLES,
    seed: int = 0,
    limits: Limits = LIMITS,
    assessment: Assessment | None = None,
) -> LargestQuiet | None:
    """The largest cooling size that is sold and that these ducts carry.

    A size is carried if in cooling and heat pump heating nothing is over in at least `SURE` of the
    possible houses. What must be known of the ducts for `carries` must be known here too; what
    must be known of that equipment is named.

    Args:
        job: What is known.
        samples: Possible houses drawn.
        seed: The same job, samples and seed give the same answer.
        limits: The office's figures.
        assessment: Of the same job, samples, seed and limits, where it was made already.

    Returns:
        None where the equipment doesn't cool.
    """
    as_is = assessment or assess(job, samples=samples, seed=seed, limits=limits)
    cooling = as_is.modes.get(Mode.COOLING_HIGH)
    if cooling is None:
        return None
    per_ton = limits.cooling_default_cfm_per_ton.value
    tons = job.number("equipment.cooling_tons")
    if tons is not None and cooling.target.known:
        per_ton = cooling.target.likely_cfm / tons
    known = all(float(value) < float("inf") for value in cooling.quiet_cfm)
    quiet = spread_of(cooling.quiet_cfm) if known else None
    doubted = tuple(doubt.reading for doubt in as_is.doubts if doubt.reading)
    unmet = (*_unmet(as_is, _is_of_the_ducts), *doubted)
    found = LargestQuiet(None, None, per_ton, quiet, unmet=tuple(dict.fromkeys(unmet)))
    if unmet:
        return found
    for size in reversed(SOLD_TONS):
        airflow_cfm = per_ton * size
        if quiet is not None and airflow_cfm > quiet.high:
            continue  # some speed is over in nine of ten
        edits = Candidate(tons=size, airflow_cfm={Mode.COOLING_HIGH: airflow_cfm})
        try:
            after = candidate_job(job, edits)
        except FactError:
            continue  # no equipment of that size moves so much or so little air
        tried = _tried(as_is, after, samples, seed, limits)
        its = [it for mode, it in tried.modes.items() if mode in WITH_TONS]
        if all(it.over_share <= 1.0 - SURE for it in its):
            needs = _unmet(tried, lambda key: not _is_of_the_ducts(key))
            return replace(found, tons=size, airflow_cfm=airflow_cfm, needs=needs)
    return found


def _unmet(assessment: Assessment, wanted: Callable[[str], bool]) -> tuple[str, ...]:
    """What the floor of evidence lacks in the modes that go with the size."""
    keys = (
        key
        for mode, it in assessment.modes.items()
        if mode in WITH_TONS
        for key in unmet_floor(assessment.job, mode, it.target)
        if wanted(key) and not key.startswith("target.")
    )
    return tuple(dict.fromkeys(keys))


def _is_of_the_ducts(key: str) -> bool:
    return not key.startswith(OF_THE_EQUIPMENT)


def _tried(as_is: Assessment, after: Job, samples: int, seed: int, limits: Limits) -> Assessment:
    return assess(
        after,
        samples=samples,
        seed=seed,
        limits=limits,
        evidence=as_is.evidence,
        as_found=as_is.job,
    )
