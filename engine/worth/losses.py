"""What a wrong word costs: the table of losses, what is true in each sample, what stands to lose.

In each sample a mode carries, would carry with changes, or needs new trunks; which, follows from
the parts that are over. What is said is the status with the least expected loss.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import lru_cache
from types import MappingProxyType
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.assessment import Assessment, ModeAssessment
from engine.checks.raw import Raw, is_known_key
from engine.floor import decider_is_known, unmet_floor
from engine.job.job import Job
from engine.job.modes import Mode
from engine.job.sample import Mask
from engine.verdict import ModeStatus, Part
from engine.worth.reliefs import needs_trunk, waits_for_loads

__all__ = ["LOSSES", "REMEDY_LOSS", "SETTLED", "STATUSES", "ModeStake", "Stakes"]

STATUSES: Final = (
    ModeStatus.CARRIES,
    ModeStatus.CARRIES_WITH_CHANGES,
    ModeStatus.WONT_CARRY,
)

LOSSES: Final[Mapping[ModeStatus, tuple[float, float, float]]] = MappingProxyType(
    {
        ModeStatus.CARRIES: (0.0, 5.0, 5.0),
        ModeStatus.CARRIES_WITH_CHANGES: (1.0, 0.0, 1.0),
        ModeStatus.WONT_CARRY: (2.0, 1.0, 0.0),
    }
)
"""Loss of saying a status where each of `STATUSES` is true: 5 for "carries" on a house that
doesn't, 2 for the reverse, 1 for a neighbour. Source: judgement."""

_BY_TRUTH: Final = np.array([LOSSES[status] for status in STATUSES]).T
"""Loss by what is true, (3,), and what is said, (3,)."""

REMEDY_LOSS: Final = 0.25
"""Loss for a part that would be changed for nothing, or left as it is though it is over: four
wrong parts of a set are as bad as the wrong neighbour. Source: judgement."""

SETTLED: Final = 0.95
"""Share of samples from which nothing more need be asked about a mode."""

_SAID: Final = 0.90
_HIDES: Final = 0.05
"""Share of samples over in what nobody can change yet: half of what a set of changes may leave."""

_UNSUPPORTED_LOSS: Final = LOSSES[ModeStatus.WONT_CARRY][1]
"""Loss of not being able to say what the samples say, for want of one known fact."""

_NEAR_WORST: Final = 0.5
"""A finding over in more than this part of the worst one's share may come to decide (judgement)."""


@dataclass(frozen=True, slots=True)
class ModeStake:
    """What one mode stands to lose.

    Attributes:
        mode: The mode.
        truth: Which of `STATUSES` is true, one-hot, (n, 3).
        shares: Share of samples in which each is true, (3,).
        missing: What the floor of evidence lacks before `carries` may be said.
        supported: Whether something known of the house stands behind "doesn't carry".
        deciding: Facts that the findings which are over most often rest on, with the share of
            samples in which these are.
        hidden: Facts nobody stated without which no change may be made to a finding, with the
            share of samples in which it is over.
        hidden_share: Share of samples in which any of them is.
        findings: Its voting findings.
    """

    mode: Mode
    truth: Array
    shares: Array
    missing: tuple[str, ...]
    supported: bool
    deciding: tuple[tuple[str, float], ...]
    hidden: tuple[tuple[str, float], ...]
    hidden_share: float
    findings: "tuple[OpenFinding, ...]"

    def free_and_barred(self, shares: Array) -> tuple[Array, Array]:
        """Least expected loss where every status may be said, and where `carries` may not.

        Args:
            shares: Weights of `STATUSES`, (..., 3); need not sum to one.
        """
        said = shares @ _BY_TRUTH
        barred = np.minimum(said[..., 1], said[..., 2])
        return np.minimum(said[..., 0], barred), barred

    @property
    def settled(self) -> bool:
        """Whether its status is sure enough, and may be said."""
        carries, changes, trunks = self.shares
        if carries >= SETTLED:
            return not self.missing
        over = changes + trunks
        sure = over >= SETTLED and max(changes, trunks) >= SETTLED * over
        return bool(sure and self.supported and not (changes > trunks and self.hides_changes))

    @property
    def hides_changes(self) -> bool:
        """Whether too much is unknown for a set of changes to be shown to suffice."""
        return self.hidden_share > _HIDES

    @property
    def hidden_loss(self) -> float:
        """Loss of not being able to say which changes would do."""
        return float(self.shares[1]) if self.hides_changes else 0.0

    @property
    def unsupported_loss(self) -> float:
        """Loss of not being able to say "doesn't carry" for want of a known fact."""
        over = 1.0 - float(self.shares[0])
        return 0.0 if self.supported or over < _SAID else _UNSUPPORTED_LOSS * over


@dataclass(frozen=True, slots=True)
class Stakes:
    """What a job stands to lose.

    Attributes:
        modes: One for each mode.
        parts: Where each part is over in some mode, (n, parts).
        names: The parts, in the order of `parts`.
    """

    modes: tuple[ModeStake, ...]
    parts: Array
    names: tuple[Part, ...]

    @classmethod
    def of(cls, assessment: Assessment) -> "Stakes":
        """What stands to be lost on an assessed job."""
        return _stakes_of(assessment)

    def thinned(self, every: int) -> "Stakes":
        """The same in every so manieth sample."""
        if every == 1:
            return self
        modes = []
        for mode in self.modes:
            truth = mode.truth[::every]
            modes.append(replace(mode, truth=truth, shares=truth.mean(axis=0)))
        return Stakes(tuple(modes), self.parts[::every], self.names)

    @property
    def settled(self) -> bool:
        """Whether every mode is."""
        return all(mode.settled for mode in self.modes)

    @property
    def loss(self) -> float:
        """Expected loss if nothing more is asked."""
        over = self.parts.mean(axis=0)
        total = float(remedy_loss(np.stack([over, 1.0 - over], axis=1)).sum())
        for mode in self.modes:
            free, barred = mode.free_and_barred(mode.shares)
            total += float(barred if mode.missing else free)
            total += mode.unsupported_loss + mode.hidden_loss
        return total


@lru_cache(maxsize=1)  # a step asks several times about one assessment
def _stakes_of(assessment: Assessment) -> Stakes:
    modes = tuple(_stake(assessment, it) for it in assessment.modes.values())
    found: dict[Part, Mask] = {}
    for it in assessment.modes.values():
        for raw in it.raws:
            if raw.votes:
                over = raw.judged.over[1:]
                found[raw.part] = found[raw.part] | over if raw.part in found else over
    names = tuple(found)
    parts = np.stack([found[name] for name in names], axis=1).astype(np.float64)
    return Stakes(modes, parts, names)


def remedy_loss(shares: Array) -> Array:
    """Least expected loss of changing a part or leaving it.

    Args:
        shares: Weights of its being over and of its not being so, (..., 2).
    """
    return np.asarray(REMEDY_LOSS * shares.min(axis=-1))


@dataclass(frozen=True, slots=True)
class OpenFinding:
    """A voting finding as far as it is looked at here.

    Attributes:
        raw: The finding.
        part: Its part.
        over_share: Share of samples in which it is over.
        known: Facts it rests on that somebody stated.
        votes: Always true.
    """

    raw: Raw
    part: Part
    over_share: float
    known: tuple[str, ...]
    votes: bool = True


def _voting(assessment: Assessment, it: ModeAssessment) -> tuple[OpenFinding, ...]:
    return tuple(
        OpenFinding(
            raw,
            raw.part,
            raw.over_share,
            tuple(key for key in raw.rests_on if is_known_key(assessment.job, key)),
        )
        for raw in it.raws
        if raw.votes
    )


_SIZES: Final = ("supply.trunks", "return.drops", "return.trunks", "return.grilles", "filters")
"""Lists without which no change is found for what rests on them."""

_LOADS: Final = "loads.sensible_gain_btuh"

_FOR_A_SECOND_RETURN: Final = ("return.drops", "return.grilles")


def _unknown_behind(job: Job, raw: Raw) -> tuple[str, ...]:
    """What nobody stated of a finding, and would have to before a change could clear it."""
    keys = [raw.rests_on[0], *(key for key in raw.rests_on if key in _SIZES)]
    if raw.check == "return_trunk_velocity":
        keys += _FOR_A_SECOND_RETURN
    return tuple(key for key in dict.fromkeys(keys) if not is_known_key(job, key))


def _stake(assessment: Assessment, it: ModeAssessment) -> ModeStake:
    over = np.asarray(it.over)
    voting = _voting(assessment, it)
    trunks = needs_trunk(assessment, it)
    hides = np.zeros_like(over)
    hidden: dict[str, float] = {}
    for finding in voting:
        raw = finding.raw
        unknown = _unknown_behind(assessment.job, raw) if finding.over_share else ()
        if unknown:
            hides |= raw.judged.over[1:]
        for key in unknown:
            hidden[key] = hidden.get(key, 0.0) + finding.over_share
    waits = waits_for_loads(assessment, it)
    if waits.any():
        hides |= waits
        hidden[_LOADS] = float(waits.mean())
    doubted = tuple(doubt.reading for doubt in assessment.doubts if doubt.reading)
    least = _NEAR_WORST * max((finding.over_share for finding in voting), default=0.0)
    truth = np.stack([~over, over & ~trunks, over & trunks], axis=1).astype(np.float64)
    return ModeStake(
        mode=it.mode,
        truth=truth,
        shares=truth.mean(axis=0),
        missing=(*unmet_floor(assessment.job, it.mode, it.target), *dict.fromkeys(doubted)),
        supported=decider_is_known(voting),
        deciding=tuple(
            (key, finding.over_share)
            for finding in voting
            if finding.over_share > least
            for key in finding.raw.rests_on
        ),
        hidden=tuple(hidden.items()),
        hidden_share=float(hides.mean()),
        findings=voting,
    )
