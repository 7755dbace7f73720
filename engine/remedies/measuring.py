"""What must be measured before a mode may be given up: sizes nobody stated, room nobody looked for.

A mode that no set clears is not lost while what holds it back, besides what the changes cure, is
only believed of a usual house. Less air may be too little for the equipment: what the other changes
cure at full air counts as well.
"""

from collections.abc import Sequence
from typing import Final

import numpy as np

from engine.assessment import Assessment, ModeAssessment
from engine.checks.raw import Raw, is_known_key
from engine.floor import has_reading_with_airflow
from engine.job.job import Job
from engine.job.modes import Mode
from engine.remedies.candidate import AIRFLOW_GROUP, CARRIED_SHARE, Candidate
from engine.remedies.rejudging import Rejudge
from engine.remedies.told import openings_known
from engine.verdict import Part

__all__ = ["to_measure_first"]

_LISTS: Final = {
    Part.SUPPLY_TRUNK: "supply.trunks",
    Part.SUPPLY_BRANCHES: "supply.branches",
    Part.RETURN_DROP: "return.drops",
    Part.RETURN_TRUNK: "return.trunks",
    Part.RETURN_OPENINGS: "return.grilles",
    Part.FILTER: "filters",
    Part.BLOWER: "equipment.blower_tables",
}
"""What to collect where findings of a part are only believed of a usual house."""

_SEEN_SHARE: Final = 0.02


def to_measure_first(
    judge: Rejudge, mode: Mode, alone: dict[str, Assessment], offered: Sequence[Candidate]
) -> tuple[str, ...]:
    """Facts and lists to collect before a mode may be given up.

    Args:
        judge: Of the house.
        mode: A mode that no set without trunks clears.
        alone: What each change does alone, by its key.
        offered: Changes that leave the trunks alone, those that need something first among them.

    Returns:
        What to collect; empty where the mode fails whatever is found.
    """
    unmeasured = _unmeasured(judge.few.modes[mode], judge.job)
    chosen = _best_of_each_group(judge, mode, alone, offered)
    as_much_air = [one for one in chosen if not one.group.startswith(AIRFLOW_GROUP)]
    for tried in (chosen, as_much_air) if len(as_much_air) < len(chosen) else (chosen,):
        needs = [key for one in tried for key in one.needs]
        if not (unmeasured or needs) or not judge.has_budget():
            continue
        after = judge.quickly(tried) if tried else judge.few
        if _known_over_share(after.modes[mode], after.job) <= CARRIED_SHARE:
            return tuple(dict.fromkeys((*unmeasured, *needs)))
    return ()


def _best_of_each_group(
    judge: Rejudge, mode: Mode, alone: dict[str, Assessment], offered: Sequence[Candidate]
) -> list[Candidate]:
    """Of each kind of change the one that leaves least over, where that is less than now."""
    now = _over_margin(judge.few.modes[mode], judge.job)
    best: dict[str, tuple[float, float, Candidate]] = {}
    for one in offered:
        after = alone[one.key]
        left = _over_margin(after.modes[mode], after.job)
        rank = (left, one.cost_hours)
        if left >= now:
            continue
        if one.group not in best or rank < best[one.group][:2]:
            best[one.group] = (*rank, one)
    return [one for *_, one in best.values()]


def _is_unmeasured(raw: Raw, job: Job) -> bool:
    """Whether a finding is about the size of something nobody has described."""
    name = _LISTS.get(raw.part)
    if name is None:
        return False
    if raw.part is Part.RETURN_OPENINGS:
        return not openings_known(job)
    if raw.part is Part.BLOWER:
        return not (job.blower or has_reading_with_airflow(job))
    return job.length(name) is None or not is_known_key(job, raw.rests_on[0])


def _wanted_first(raw: Raw, job: Job) -> str:
    """The list of what nobody described, or what of it nobody told."""
    name = _LISTS[raw.part]
    told = job.length(name) is not None and raw.part is not Part.RETURN_OPENINGS
    return raw.rests_on[0] if told else name


def _unmeasured(it: ModeAssessment, job: Job) -> tuple[str, ...]:
    found = (
        _wanted_first(raw, job)
        for raw in it.raws
        if raw.votes and raw.over_share > _SEEN_SHARE and _is_unmeasured(raw, job)
    )
    return tuple(dict.fromkeys(found))


def _known_over_share(it: ModeAssessment, job: Job) -> float:
    """Share of the samples in which something is over that isn't only believed."""
    over = np.zeros(it.over.shape, dtype=bool)
    for raw in it.raws:
        if raw.votes and not _is_unmeasured(raw, job):
            over |= raw.judged.over[1:]
    return float(np.mean(over))


def _over_margin(it: ModeAssessment, job: Job) -> float:
    """How many findings are over on the average, of those that aren't only believed."""
    return sum(raw.over_share for raw in it.raws if raw.votes and not _is_unmeasured(raw, job))
