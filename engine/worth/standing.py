"""Whether a verdict may be left as it is where asking would end."""

import numpy as np

from engine.assessment import Assessment
from engine.verdict import ModeStatus, Verdict
from engine.worth.losses import LOSSES, STATUSES, ModeStake, Stakes

__all__ = ["may_stand"]


def may_stand(assessment: Assessment, verdict: Verdict) -> bool:
    """Whether every airflow is spoken of, and as its own samples would have it.

    What is at stake is weighed by an estimate of what changes could do, the verdict by making the
    changes and judging again. Where they differ, what is still worth asking may tell which is so.

    Args:
        assessment: The job put to every check.
        verdict: What is said of it.
    """
    stakes = {stake.mode: stake for stake in Stakes.of(assessment).modes}
    return all(
        it.status is not ModeStatus.CANT_SAY
        and (it.borderline or it.status is _least_lost(stakes[mode]))
        for mode, it in verdict.modes.items()
    )


def _least_lost(stake: ModeStake) -> ModeStatus:
    """The status with the least expected loss, among those that may be said."""
    losses = np.array([LOSSES[status] for status in STATUSES]) @ stake.shares
    if stake.missing:
        losses[0] = np.inf
    return STATUSES[int(np.argmin(losses))]
