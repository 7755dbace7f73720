"""What is said of one mode: counted over the samples, with what must be known first."""

from typing import Final

import numpy as np

from engine.assessment import Assessment, ModeAssessment
from engine.checks.raw import finding_of, spread_of
from engine.floor import decider_is_known
from engine.verdict import Finding, ModeStatus, ModeVerdict, RemedySet, Spread

__all__ = ["SURE", "mode_verdict"]

SURE: Final = 0.90
"""Share of samples from which a status is said."""


def mode_verdict(
    assessment: Assessment,
    it: ModeAssessment,
    unmet: tuple[str, ...],
    change: RemedySet | None = None,
    with_trunk: RemedySet | None = None,
    *,
    still_open: bool,
    measure_first: bool = False,
) -> ModeVerdict:
    """What is said of one mode.

    Args:
        assessment: Of the house.
        it: Of the mode.
        unmet: What the floor of evidence lacks.
        change: The cheapest set that makes it carry and leaves the trunks as they are.
        with_trunk: The cheapest that touches a trunk, where no other does.
        still_open: Whether something that matters can still be collected.
        measure_first: Whether what isn't known may yet leave a change that clears it.
    """
    findings = _findings(assessment, it)
    over = it.over_share
    status, borderline, treat_as = _status(
        over, findings, unmet, change, still_open=still_open, measure_first=measure_first
    )
    if status is ModeStatus.CARRIES:
        change = None
    elif change is None:
        change = with_trunk
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
    measure_first: bool,
) -> tuple[ModeStatus, bool, ModeStatus | None]:
    """Status, whether it is on the line, and what to treat it as.

    Args:
        over: Share of samples in which something is over.
        findings: Worst first.
        unmet: What the floor of evidence lacks.
        change: A set that clears the mode without touching trunks, if there is one.
        still_open: Whether something that matters can still be collected.
        measure_first: Whether what isn't known may yet leave a change that clears it.
    """
    worse = ModeStatus.WONT_CARRY if change is None else ModeStatus.CARRIES_WITH_CHANGES
    if over <= 1.0 - SURE:
        if not unmet:
            return ModeStatus.CARRIES, False, None
        return ModeStatus.CANT_SAY, False, None if still_open else ModeStatus.WONT_CARRY
    if over >= SURE:
        if decider_is_known(findings) and not (measure_first and change is None):
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
