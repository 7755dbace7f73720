"""From a job to a verdict, per airflow mode.

In each sample a mode carries if nothing is over. Counted over the samples, that gives its status;
what must be known first, and what is on the line, is settled here too.
"""

from collections.abc import Collection, Mapping
from typing import Final

import numpy as np

from engine.assessment import SAMPLES, Assessment, ModeAssessment, assess
from engine.changes import Changes
from engine.checks.raw import finding_of, spread_of
from engine.floor import can_collect, decider_is_known, unmet_floor
from engine.influence import assumptions_of, wanted_of, weights_of
from engine.job.job import Job
from engine.remedies import find_changes
from engine.trade.limits import LIMITS, Limits
from engine.verdict import Finding, ModeStatus, ModeVerdict, RemedySet, Spread, Verdict

__all__ = ["SURE", "assess", "judge"]

SURE: Final = 0.90
"""Share of samples from which a status is said."""

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
    unmet = {
        mode: (*unmet_floor(job, mode, it.target), *doubted)
        for mode, it in assessment.modes.items()
    }
    modes = {
        mode: _mode_verdict(assessment, it, changes, unmet[mode], weights, collectable)
        for mode, it in assessment.modes.items()
    }
    return Verdict(
        modes=modes,
        remedies=changes.remedies,
        changes=changes.together,
        assumed=assumptions_of(assessment, weights),
        collect_next=wanted_of(assessment, unmet, weights, collectable),
        doubts=assessment.doubts,
        refused=_refused(job),
        effective_samples=assessment.effective_samples,
        samples=samples,
    )


def _mode_verdict(
    assessment: Assessment,
    it: ModeAssessment,
    changes: Changes,
    unmet: tuple[str, ...],
    weights: Mapping[str, float],
    collectable: Collection[str] | None,
) -> ModeVerdict:
    findings = _findings(assessment, it)
    over = it.over_share
    change = changes.by_mode.get(it.mode)
    more = [key for key in unmet if can_collect(key, collectable)]
    open_ = bool(more) or any(
        weight >= _STILL_MOVES and can_collect(key, collectable) for key, weight in weights.items()
    )
    status, borderline, treat_as = _status(over, findings, unmet, change, still_open=open_)
    if status is ModeStatus.CARRIES:
        change = None
    elif change is None:
        change = changes.with_trunks.get(it.mode)
    return ModeVerdict(
        mode=it.mode,
        status=status,
        confidence=_confidence(status, over),
        borderline=borderline,
        over_share=over,
        setting=it.setting,
        target_cfm=spread_of(it.target.airflow_cfm),
        delivered_cfm=spread_of(it.delivered.airflow_cfm),
        quiet_capacity_cfm=_finite_spread(it),
        findings=findings,
        changes=change,
        unmet_floor=unmet,
        reasons=_reasons(findings),
        treat_as=treat_as,
    )


def _status(
    over: float,
    findings: tuple[Finding, ...],
    unmet: tuple[str, ...],
    change: RemedySet | None,
    *,
    still_open: bool,
) -> tuple[ModeStatus, bool, ModeStatus | None]:
    """Status, whether it is on the line, and what to treat it as.

    Args:
        over: Share of samples in which something is over.
        findings: Worst first.
        unmet: What the floor of evidence lacks.
        change: A set that clears the mode without touching trunks, if there is one.
        still_open: Whether something that matters can still be collected.
    """
    worse = ModeStatus.WONT_CARRY if change is None else ModeStatus.CARRIES_WITH_CHANGES
    if over <= 1.0 - SURE:
        if not unmet:
            return ModeStatus.CARRIES, False, None
        return ModeStatus.CANT_SAY, False, None if still_open else ModeStatus.WONT_CARRY
    if over >= SURE:
        if decider_is_known(findings):
            return worse, False, None
        return ModeStatus.CANT_SAY, False, None if still_open else ModeStatus.WONT_CARRY
    if still_open:
        return ModeStatus.CANT_SAY, False, None
    return worse, True, None


def _confidence(status: ModeStatus, over: float) -> float:
    if status is ModeStatus.CARRIES:
        return 1.0 - over
    if status is ModeStatus.CANT_SAY:
        return max(over, 1.0 - over)
    return over


def _findings(assessment: Assessment, it: ModeAssessment) -> tuple[Finding, ...]:
    """All findings, worst first."""
    found = [finding_of(raw, assessment.job) for raw in it.raws]
    found.sort(key=lambda f: (f.votes, f.over_share, f.tight_share, f.ratio or 0.0), reverse=True)
    return tuple(found)


def _reasons(findings: tuple[Finding, ...]) -> tuple[str, ...]:
    """Checks that decide: over in more than half of the samples, else the worst that is over."""
    voting = [finding for finding in findings if finding.votes and finding.over_share > 0.0]
    deciding = [finding for finding in voting if finding.over_share > 0.5] or voting[:1]
    return tuple(dict.fromkeys(finding.check for finding in deciding))


def _finite_spread(it: ModeAssessment) -> Spread | None:
    if not np.isfinite(it.quiet_cfm).all():
        return None
    return spread_of(it.quiet_cfm)


def _refused(job: Job) -> tuple[str, ...]:
    if job.word("house.zoned") == "yes":
        return (
            "smallest zone alone: the ducts of single zones aren't described, so the system is "
            "judged with every zone open",
        )
    return ()
