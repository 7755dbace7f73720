"""Bundles by their worth, and when to stop asking.

Worth is the chance that this person can give a bundle, times how far it would lower the expected
loss, less a price for the minutes it takes. Before "nothing is worth it" the best are tried two at
a time.
"""

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from itertools import combinations
from typing import Final

from engine.assessment import Assessment
from engine.floor import OF_THE_EQUIPMENT
from engine.job.facts import pattern_of
from engine.job.modes import Mode
from engine.verdict import Part
from engine.worth.bundles import BUNDLES, Bundle, covers
from engine.worth.learning import Fall, Learner
from engine.worth.losses import ModeStake, Stakes
from engine.worth.person import TECHNICIAN, Giving, Person, moving_minutes
from engine.worth.signals import Signal, signals_of

__all__ = [
    "LOSS_PER_MINUTE",
    "Settling",
    "StopReason",
    "Worth",
    "ranked",
    "stop_reason",
    "worth_of",
]

LOSS_PER_MINUTE: Final = 0.004
"""What a minute of asking costs, in the unit of the table of losses: four hours are a neighbour.
Source: judgement."""

_LOOKED_AHEAD: Final = 8
_ELSEWHERE: Final = 1.2
"""How much worthier a bundle in another place must be to call the person away (judgement)."""


class StopReason(StrEnum):
    """Why nothing more is asked."""

    SETTLED = "settled"  # every mode is sure, with what must be known for it
    NOTHING_WORTH_IT = "nothing_worth_it"  # what is left costs more than it would save


@dataclass(frozen=True, slots=True)
class Settling:
    """What a bundle might settle.

    Attributes:
        mode: The mode.
        chance: That the mode's status would be sure after it, if it is answered.
        check: The finding it tells most about; empty if none.
        where: That finding's place.
    """

    mode: Mode
    chance: float
    check: str
    where: str


@dataclass(frozen=True, slots=True)
class Worth:
    """One bundle's worth.

    Attributes:
        bundle: What would be asked.
        worth: Expected fall in loss by the chance of an answer, less the price of its minutes; at
            most 0 for what isn't worth asking by itself.
        tenths: Tenths of all that stands to be lost which asking it is expected to save, 0 to 10.
        minutes: What it takes, with the way there.
        would_settle: Modes it might settle, the likeliest first.
        with_other: The bundle it is worth asking together with, where none is by itself.
        worth_together: Of those two.
    """

    bundle: Bundle
    worth: float
    tenths: int
    minutes: float
    would_settle: tuple[Settling, ...] = ()
    with_other: str = ""
    worth_together: float = 0.0


@dataclass(frozen=True, slots=True)
class _Option:
    """What may be asked in one go.

    Attributes:
        bundles: One, or a pair.
        giving: How each is given.
        signals: What they show.
        facts: What they fill.
    """

    bundles: tuple[Bundle, ...]
    giving: tuple[Giving, ...]
    signals: tuple[Signal, ...]
    facts: tuple[str, ...]

    @classmethod
    def of(cls, bundle: Bundle, giving: Giving, signals: tuple[Signal, ...]) -> "_Option":
        return cls((bundle,), (giving,), signals, (*bundle.facts, *bundle.also))

    def and_also(self, other: "_Option") -> "_Option":
        signals = {one.name: one for one in (*self.signals, *other.signals)}
        return _Option(
            (*self.bundles, *other.bundles),
            (*self.giving, *other.giving),
            tuple(signals.values()),
            (*self.facts, *other.facts),
        )

    @property
    def chance(self) -> float:
        found = 1.0
        for bundle, giving in zip(self.bundles, self.giving, strict=True):
            found *= bundle.chance * giving.chance
        return found

    def gives(self, key: str) -> bool:
        """Whether a fact of the job would be known."""
        return covers(self.facts, pattern_of(key))


def worth_of(
    assessment: Assessment,
    bundles: Collection[Bundle] = BUNDLES,
    person: Person = TECHNICIAN,
    *,
    loss_per_minute: float = LOSS_PER_MINUTE,
) -> tuple[Worth, ...]:
    """Bundles by their worth to this job, the worthiest first.

    Nothing is judged again and nothing is drawn into the house: the same assessment, bundles and
    person give the same answer, whatever other bundles there are.

    Args:
        assessment: The job put to every check.
        bundles: What may be asked.
        person: Who is asked; bundles they can't give, can't get to or don't know are left out.
        loss_per_minute: Price of a minute.

    Returns:
        One for each bundle that can be had, what is worth nothing at the end. Bundles elsewhere
        come first only if they are worth a fifth more than what can be had on the spot. Where
        none is worth asking by itself, the best pair among the first eight is named, if there is
        one that is.
    """
    stakes = Stakes.of(assessment)
    return ranked(assessment, stakes, bundles, person, loss_per_minute, settled=stakes.settled)


def ranked(
    assessment: Assessment,
    stakes: Stakes,
    bundles: Collection[Bundle],
    person: Person,
    loss_per_minute: float,
    *,
    settled: bool,
) -> tuple[Worth, ...]:
    """Bundles by what they would save of what is at stake; see `worth_of`.

    Args:
        assessment: The job put to every check.
        stakes: What stands to be lost.
        bundles: What may be asked.
        person: Who is asked.
        loss_per_minute: Price of a minute.
        settled: Whether nothing more need be asked, so that no pair is looked for.
    """
    learner = Learner(stakes, assessment.house.draws)
    total = stakes.loss
    found: list[Worth] = []
    options: dict[str, _Option] = {}
    for bundle in bundles:
        giving = person.giving(bundle.givers)
        if giving is None or bundle.key in person.unsaid or bundle.place in person.closed:
            continue
        option = _Option.of(bundle, giving, signals_of(assessment, bundle, giving.how))
        fall = learner.fall(option.signals)
        saved = option.chance * _saved(stakes, option, fall)
        minutes = bundle.minutes + moving_minutes(person, bundle.place)
        options[bundle.key] = option
        found.append(
            Worth(
                bundle,
                saved - loss_per_minute * minutes,
                min(round(10.0 * saved / total), 10) if total > 0.0 else 0,
                minutes,
                _settling(stakes, fall) if saved > 0.0 else (),
            )
        )
    found.sort(key=lambda one: (-_here_first(one, person), one.bundle.key))
    if found and all(one.worth <= 0.0 for one in found) and not settled:
        found = _with_pairs(found, options, stakes, learner, loss_per_minute)
    return tuple(found)


def stop_reason(assessment: Assessment, worths: Sequence[Worth]) -> StopReason | None:
    """Why nothing more need be asked; None while something is worth asking.

    Args:
        assessment: The job put to every check.
        worths: From `worth_of` on it.
    """
    if Stakes.of(assessment).settled:
        return StopReason.SETTLED
    if all(one.worth <= 0.0 and one.worth_together <= 0.0 for one in worths):
        return StopReason.NOTHING_WORTH_IT
    return None


def _here_first(one: Worth, person: Person) -> float:
    elsewhere = moving_minutes(person, one.bundle.place) > 0.0
    return one.worth / _ELSEWHERE if elsewhere and one.worth > 0.0 else one.worth


def _saved(stakes: Stakes, option: _Option, fall: Fall) -> float:
    """Fall in loss over all modes and parts: by what is learnt, and by what may be said after it.

    What keeps "carries" from being said falls by an equal part for each thing that is missing.
    """
    saved = fall.parts
    for mode in stakes.modes:
        by_status, barred, _ = fall.modes[mode.mode]
        saved += by_status
        if mode.missing:
            given = sum(option.gives(key) for key in mode.missing)
            saved += barred * given / len(mode.missing)
        if mode.unsupported_loss:
            saved += mode.unsupported_loss * _supports(option, mode)
        if mode.hidden_loss:
            saved += mode.hidden_loss * _uncovers(option, mode)
    return saved


def _supports(option: _Option, mode: ModeStake) -> float:
    """Chance that something known of the house would stand behind "doesn't carry"."""
    of_house = [
        share
        for key, share in mode.deciding
        if not key.startswith(OF_THE_EQUIPMENT) and option.gives(key)
    ]
    return max(of_house, default=0.0)


def _uncovers(option: _Option, mode: ModeStake) -> float:
    """Part of what is hidden that would be known."""
    shown = sum(share for key, share in mode.hidden if option.gives(key))
    return shown / sum(share for _, share in mode.hidden)


def _settling(stakes: Stakes, fall: Fall) -> tuple[Settling, ...]:
    found = []
    for mode in stakes.modes:
        if not mode.settled:
            check, where = _told_most(mode, fall.tells)
            found.append(Settling(mode.mode, fall.modes[mode.mode][2], check, where))
    return tuple(sorted(found, key=lambda one: -one.chance))


def _told_most(mode: ModeStake, tells: dict[Part, float]) -> tuple[str, str]:
    """The open finding of this mode whose part is told most about."""
    told = [finding for finding in mode.findings if tells.get(finding.part)]
    if not told:
        return "", ""
    best = max(told, key=lambda one: (tells[one.part], -abs(one.over_share - 0.5)))
    return best.raw.check, best.raw.where


def _with_pairs(
    found: list[Worth],
    options: dict[str, _Option],
    stakes: Stakes,
    learner: Learner,
    loss_per_minute: float,
) -> list[Worth]:
    """The same, with the best worthwhile pair of the first eight in front."""
    best: tuple[float, Worth, Worth] | None = None
    for one, other in combinations(found[:_LOOKED_AHEAD], 2):
        both = options[one.bundle.key].and_also(options[other.bundle.key])
        if not both.signals:
            continue
        saved = both.chance * _saved(stakes, both, learner.fall(both.signals))
        together = saved - loss_per_minute * (one.minutes + other.minutes)
        if together > 0.0 and (best is None or together > best[0]):
            best = (together, one, other)
    if best is None:
        return found
    together, one, other = best
    first = replace(one, with_other=other.bundle.key, worth_together=together)
    second = replace(other, with_other=one.bundle.key, worth_together=together)
    rest = [it for it in found if it is not one and it is not other]
    return [first, second, *rest]
