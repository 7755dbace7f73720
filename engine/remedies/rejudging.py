"""A house judged again with changes made: each set once, few samples first, and counted."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import Final

from engine.assessment import Assessment, assess
from engine.errors import FactError
from engine.job.found import Evidence
from engine.job.job import Job
from engine.remedies.candidate import Candidate
from engine.trade.limits import Limits

__all__ = ["Rejudge", "edited", "is_possible"]

_MOST_REJUDGED: Final = 44


@dataclass
class Rejudge:
    """Judges edits of one house, each set once, and counts.

    Attributes:
        job: What is edited.
        as_found: What is known of the house; the job itself, unless it tries other equipment.
    """

    job: Job
    as_found: Job
    seed: int
    limits: Limits
    full_samples: int
    full_evidence: Evidence | None
    few: Assessment
    few_samples: int
    known: dict[tuple[str, ...], Assessment] = field(default_factory=dict)
    confirmed: dict[tuple[str, ...], Assessment] = field(default_factory=dict)

    def has_budget(self) -> bool:
        """Whether further sets may be judged."""
        return len(self.known) < _MOST_REJUDGED

    def quickly(self, chosen: Sequence[Candidate]) -> Assessment:
        """The house with a set of changes, by few samples."""
        key = tuple(sorted(one.key for one in chosen))
        if key not in self.known:
            self.known[key] = assess(
                edited(self.job, chosen),
                samples=self.few_samples,
                seed=self.seed,
                limits=self.limits,
                evidence=self.few.evidence,
                as_found=self.as_found,
            )
        return self.known[key]

    def fully(self, chosen: Sequence[Candidate]) -> Assessment:
        """The house with a set of changes, by all samples."""
        key = tuple(sorted(one.key for one in chosen))
        if key not in self.confirmed:
            self.confirmed[key] = assess(
                edited(self.job, chosen),
                samples=self.full_samples,
                seed=self.seed,
                limits=self.limits,
                evidence=self.full_evidence,
                as_found=self.as_found,
            )
        return self.confirmed[key]


def edited(job: Job, chosen: Iterable[Candidate]) -> Job:
    """The job with every change of a set made, in the order given."""
    for one in chosen:
        if one.edit is not None:
            job = one.edit(job)
    return job


def is_possible(job: Job, one: Candidate) -> bool:
    """Whether a change can be made: what it comes to is within what is believable."""
    if one.edit is None:
        return False
    try:
        one.edit(job)
    except FactError:
        return False
    return True
