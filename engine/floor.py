"""What must be known before a mode may be said to carry, or not to."""

from collections.abc import Collection, Sequence
from typing import Final, Protocol

from engine.job.job import Job
from engine.job.modes import Mode
from engine.job.targets import Target
from engine.verdict import Part

__all__ = [
    "OF_THE_EQUIPMENT",
    "can_collect",
    "decider_is_known",
    "has_reading_with_airflow",
    "unmet_floor",
]

OF_THE_EQUIPMENT: Final = ("target.", "equipment.", "new.", "loads.", "site.")
"""Facts that say what is asked of the ducts, and nothing of the ducts."""


def unmet_floor(job: Job, mode: Mode, target: Target) -> tuple[str, ...]:
    """What is still missing of: target, trunks, drop, openings, filter, and the blower's reach.

    A range that a person gave counts as known, and so does a list stated to be empty.

    Returns:
        Fact keys and list names; empty where nothing is missing.
    """
    missing = [] if target.known else [f"target.{mode}_cfm"]
    missing += _sizes(job, "supply.trunks", _plenum_entries(job))
    missing += _sizes(job, "return.drops", tuple(job.entries("return.drops")))
    filters = tuple(job.entries("filters"))
    missing_filters = _sizes(job, "filters", filters)
    at_grille = any(job.word(f"{key}.place") == "grille" for key in filters)
    if not (at_grille and not missing_filters and job.length("return.grilles") is None):
        missing += _sizes(job, "return.grilles", tuple(job.entries("return.grilles")))
    missing += missing_filters
    if not (_has_table(job, mode) or has_reading_with_airflow(job) or _holds_to_a_limit(job)):
        missing.append("equipment.blower_tables")
    return tuple(missing)


def can_collect(key: str, collectable: Collection[str] | None) -> bool:
    """Whether a fact, or something of a list, can still be had.

    Args:
        key: A fact key or a list name.
        collectable: Keys that can still be had; None means any.
    """
    if collectable is None:
        return True
    return any(
        other == key or other.startswith(f"{key}.") or key.startswith(f"{other}.")
        for other in collectable
    )


class Deciding(Protocol):
    """What is looked at of a finding."""

    @property
    def part(self) -> Part:
        """See `engine.verdict.Finding`."""

    @property
    def over_share(self) -> float:
        """See `engine.verdict.Finding`."""

    @property
    def known(self) -> tuple[str, ...]:
        """See `engine.verdict.Finding`."""

    @property
    def votes(self) -> bool:
        """See `engine.verdict.Finding`."""


def decider_is_known(findings: Sequence[Deciding]) -> bool:
    """Whether the finding that is over most often rests on something known of this house.

    What the equipment asks for says nothing of the ducts: unless the equipment or one of its
    pieces is what holds the mode back, only facts of the house count.
    """
    voting = [finding for finding in findings if finding.votes]
    worst = max(finding.over_share for finding in voting)
    return any(_of_the_house(f) for f in voting if f.over_share >= worst)


def _of_the_house(finding: Deciding) -> bool:
    if finding.part in (Part.EQUIPMENT, Part.COIL, Part.FILTER):
        return bool(finding.known)
    return any(not key.startswith(OF_THE_EQUIPMENT) for key in finding.known)


def _plenum_entries(job: Job) -> tuple[str, ...]:
    return tuple(key for key in job.entries("supply.trunks") if not job.word(f"{key}.from"))


def _sizes(job: Job, name: str, entries: tuple[str, ...]) -> list[str]:
    """The list if nobody spoke of it, else sizes of its entries that nobody stated."""
    if job.length(name) is None:
        return [name]
    missing = []
    for key in entries:
        count = f"{key}.count"
        if job.stated(count) is not None and not job.is_known(count):
            missing.append(count)
        if job.is_known(f"{key}.diameter_in"):
            continue
        sides = (f"{key}.width_in", f"{key}.height_in")
        missing += [side for side in sides if not job.is_known(side)]
    return missing


def _has_table(job: Job, mode: Mode) -> bool:
    return any(not setting.modes or mode in setting.modes for setting in job.blower)


def has_reading_with_airflow(job: Job) -> bool:
    """Whether a pressure was read at an airflow that was stated with it."""
    return any(
        job.is_known(f"{key}.airflow_cfm")
        and any(other.startswith(f"{key}.") and other.endswith("_inwc") for other in job.beliefs)
        for key in job.entries("readings")
    )


def _holds_to_a_limit(job: Job) -> bool:
    return job.word("equipment.blower_kind") == "ecm_variable" and job.is_known(
        "equipment.max_static_inwc"
    )
