"""The search for changes that make every mode carry: singly, then in sets, cheapest first.

Few samples while searching, all of them for what is told. Every set that is told was re-judged.
"""

from collections.abc import Iterator, Sequence
from itertools import combinations, islice
from types import MappingProxyType
from typing import Final

import numpy as np

from engine.assessment import Assessment, assess
from engine.changes import NO_CHANGES, Changes
from engine.errors import EngineError
from engine.floor import unmet_floor
from engine.job.modes import Mode
from engine.remedies.air_side import air_side_candidates, conditional_candidates
from engine.remedies.airflow import airflow_candidates
from engine.remedies.candidate import CARRIED_SHARE, Candidate, Situation
from engine.remedies.ducts import duct_candidates, trunk_candidates
from engine.remedies.effects import Effects, guessed_over_share
from engine.remedies.gains import buys, lowers_a_figure
from engine.remedies.measuring import to_measure_first
from engine.remedies.rejudging import Rejudge, is_possible
from engine.remedies.told import told_candidates
from engine.trade.limits import LIMITS, Limits
from engine.verdict import ModeStatus, Remedy, RemedySet

__all__ = ["candidates_of", "find_changes"]

_SEARCH_SAMPLES: Final = 400
_MOST_IN_A_SET: Final = 5
_MOST_GUESSED_SETS: Final = 1500
_MOST_TRIES_A_GOAL: Final = 4
_GUESS_SLACK: Final = 0.08
"""How much worse than carrying a guessed set may look and still be re-judged."""
_HELPS_SHARE: Final = 0.01


def candidates_of(assessment: Assessment, limits: Limits = LIMITS) -> tuple[Candidate, ...]:
    """Every change that may help this house, in the order of practice; trunks last."""
    at = Situation(assessment, limits)
    if not at.failing:
        return ()
    return (
        *airflow_candidates(at),
        *air_side_candidates(at),
        *duct_candidates(at),
        *trunk_candidates(at),
        *told_candidates(at),
    )


def find_changes(
    assessment: Assessment,
    *,
    samples: int,
    seed: int = 0,
    limits: Limits = LIMITS,
) -> Changes:
    """Changes that help, and the cheapest sets that make modes carry.

    Args:
        assessment: The house as it stands, of `samples` samples.
        samples: Samples that what is told is confirmed with.
        seed: The assessment's seed.
        limits: The office's figures.

    Returns:
        Nothing where every mode carries. A set never makes a mode fail that carried before, never
        edits a size nobody stated, and leaves the loads met by the checks' own measure.

    Raises:
        EngineError: `samples` isn't the assessment's own number.
    """
    if samples != assessment.house.draws.samples:
        raise EngineError(
            f"the house was drawn with {assessment.house.draws.samples} samples, not {samples}"
        )
    offered = candidates_of(assessment, limits)
    conditional = tuple(conditional_candidates(Situation(assessment, limits)))
    if not offered and not conditional:
        return NO_CHANGES
    few_samples = min(_SEARCH_SAMPLES, samples)
    tried = assessment.house.as_found
    found = assessment.job if tried is None else tried.job
    few = assess(
        found,
        samples=few_samples,
        seed=seed,
        limits=limits,
        posterior=None if assessment.evidence is None else assessment.evidence.posterior,
    )
    if tried is not None:
        few = assess(
            assessment.job,
            samples=few_samples,
            seed=seed,
            limits=limits,
            evidence=few.evidence,
            as_found=found,
        )
    judge = Rejudge(
        assessment.job, found, seed, limits, samples, assessment.evidence, few, few_samples
    )
    search = _Search(assessment, judge, offered, conditional)
    return search.changes()


class _Search:
    """One house's search."""

    def __init__(
        self,
        assessment: Assessment,
        judge: Rejudge,
        offered: tuple[Candidate, ...],
        conditional: tuple[Candidate, ...] = (),
    ) -> None:
        self.assessment, self.judge = assessment, judge
        self.told = tuple(one for one in offered if one.edit is None)
        possible = [one for one in offered if is_possible(judge.job, one)]
        self.alone = {one.key: judge.quickly([one]) for one in possible}
        self.conditional = [one for one in conditional if is_possible(judge.job, one)]
        self.alone |= {one.key: judge.quickly([one]) for one in self.conditional}
        self.helping = tuple(one for one in possible if self._helps(one))
        self.effects = Effects.of(judge.few, [self.alone[one.key] for one in self.helping])
        self.failing = tuple(
            mode for mode, it in assessment.modes.items() if it.over_share > CARRIED_SHARE
        )

    def changes(self) -> Changes:
        by_mode: dict[Mode, RemedySet] = {}
        with_trunks: dict[Mode, RemedySet] = {}
        measure_first: dict[Mode, tuple[str, ...]] = {}
        for mode in self.failing:
            found = self._cheapest((mode,), trunks=False)
            if found is not None:
                by_mode[mode] = found
                continue
            measure_first[mode] = self._measure_first(mode)
            found = self._cheapest((mode,), trunks=True)
            if found is not None:
                with_trunks[mode] = found
        together = None
        if len(by_mode) == len(self.failing):
            together = self._together(by_mode, trunks=False)
        if together is None and len(by_mode) + len(with_trunks) == len(self.failing):
            together = self._together({**by_mode, **with_trunks}, trunks=True)
        ordered = sorted(self.helping, key=lambda one: one.cost_hours)
        remedies = [self._remedy(one, {**by_mode, **with_trunks}) for one in ordered]
        remedies += [Remedy(t.key, _sentence(t.words), t.effort_hours, False, {}, "", t.cautions)
                     for t in self.told]  # fmt: skip
        return Changes(
            tuple(remedies),
            MappingProxyType(by_mode),
            MappingProxyType(with_trunks),
            together,
            MappingProxyType({mode: keys for mode, keys in measure_first.items() if keys}),
        )

    def _measure_first(self, mode: Mode) -> tuple[str, ...]:
        offered = [one for one in self.helping if not one.edits_trunk]
        return to_measure_first(self.judge, mode, self.alone, [*offered, *self.conditional])

    def _together(self, sets: dict[Mode, RemedySet], *, trunks: bool) -> RemedySet | None:
        """One set for every mode: a mode's own set if it does, else a search over all."""
        by_key = {one.key: one for one in self.helping}
        for found in sorted(sets.values(), key=lambda one: -len(one.remedies)):
            chosen = [by_key[key] for key in found.remedies]
            if self._carries(self.judge.fully(chosen), self.failing):
                return self._set_of(chosen, self.failing)
        return self._cheapest(self.failing, trunks=trunks)

    # ---- single changes ----

    def _helps(self, one: Candidate) -> bool:
        """Whether a change lowers something that is over, and breaks no mode that carried."""
        before, after = self.judge.few, self.alone[one.key]
        if any(
            it.over_share <= CARRIED_SHARE < after.modes[mode].over_share
            for mode, it in before.modes.items()
        ):
            return False
        for mode, it in before.modes.items():
            then = after.modes[mode]
            if then.over_share < it.over_share - _HELPS_SHARE:
                return True
            if it.over_share > CARRIED_SHARE and lowers_a_figure(it.raws, then.raws):
                return True
        return False

    def _remedy(self, one: Candidate, sets: dict[Mode, RemedySet]) -> Remedy:
        after = self.alone[one.key]
        clears = {mode: self._status(one, after, mode, sets) for mode in self.failing}
        return Remedy(
            one.key,
            _sentence(one.words),
            one.effort_hours,
            one.edits_trunk,
            MappingProxyType(clears),
            buys(self.judge.few, after, self.failing),
            one.cautions,
        )

    def _status(
        self, one: Candidate, after: Assessment, mode: Mode, sets: dict[Mode, RemedySet]
    ) -> ModeStatus:
        it = after.modes[mode]
        if it.over_share <= CARRIED_SHARE:
            unmet = unmet_floor(after.job, mode, it.target)
            return ModeStatus.CANT_SAY if unmet else ModeStatus.CARRIES
        if it.over_share < 1.0 - CARRIED_SHARE:
            return ModeStatus.CANT_SAY
        return ModeStatus.CARRIES_WITH_CHANGES if mode in sets else ModeStatus.WONT_CARRY

    # ---- sets ----

    def _cheapest(self, modes: tuple[Mode, ...], *, trunks: bool) -> RemedySet | None:
        """The cheapest set that makes these modes carry and none of the others fail."""
        pool = [i for i, one in enumerate(self.helping) if trunks or not one.edits_trunk]
        for chosen in islice(self._guesses(pool, modes), _MOST_TRIES_A_GOAL):
            if not self.judge.has_budget():
                break
            found = self._confirmed([self.helping[i] for i in chosen], modes)
            if found is not None:
                return found
        return self._pruned(pool, modes)

    def _guesses(self, pool: list[int], modes: tuple[Mode, ...]) -> Iterator[tuple[int, ...]]:
        """Sets in the order of their cost that are guessed to do."""
        useful = [i for i in pool if self._touches(i, modes)]
        sets = [
            chosen
            for size in range(1, min(_MOST_IN_A_SET, len(useful)) + 1)
            for chosen in combinations(useful, size)
            if _compatible([self.helping[i] for i in chosen])
        ]
        sets.sort(key=lambda chosen: sum(self.helping[i].cost_hours for i in chosen))
        watched = (*modes, *(mode for mode in self.effects.modes if mode not in self.failing))
        for chosen in sets[:_MOST_GUESSED_SETS]:
            if all(
                guessed_over_share(self.effects, mode, chosen) <= CARRIED_SHARE + _GUESS_SLACK
                for mode in watched
            ):
                yield chosen

    def _touches(self, i: int, modes: tuple[Mode, ...]) -> bool:
        """Whether a change lowers something that is over in one of these modes."""
        for mode in modes:
            over = self.effects.base[mode] > 0.0
            if (self.effects.change[mode][i] < -1e-3)[over].any():
                return True
        return False

    def _pruned(self, pool: list[int], modes: tuple[Mode, ...]) -> RemedySet | None:
        """Everything at once, one of each kind; if that does, without what it can spare."""
        chosen = self._everything(pool, modes)
        if not chosen or not self._carries(self.judge.quickly(chosen), modes):
            return None
        for one in sorted(chosen, key=lambda c: -c.cost_hours):
            if not self.judge.has_budget():
                break
            rest = [other for other in chosen if other is not one]
            if rest and self._carries(self.judge.quickly(rest), modes):
                chosen = rest
        return self._confirmed(chosen, modes)

    def _everything(self, pool: list[int], modes: tuple[Mode, ...]) -> list[Candidate]:
        """Of each kind of change the one that does most for these modes."""
        best: dict[str, tuple[float, int]] = {}
        for i in pool:
            if not self._touches(i, modes):
                continue
            does = sum(
                float(np.mean(np.maximum(self.effects.base[mode] + self.effects.change[mode][i],
                                         0.0).sum(axis=0)))
                for mode in modes
            )  # fmt: skip
            group = self.helping[i].group
            if group not in best or does < best[group][0]:
                best[group] = (does, i)
        return [self.helping[i] for _, i in sorted(best.values(), key=lambda pair: pair[1])]

    def _confirmed(self, chosen: Sequence[Candidate], modes: tuple[Mode, ...]) -> RemedySet | None:
        """The set, if it does at few samples and then at all of them."""
        if not self._carries(self.judge.quickly(chosen), modes, slack=0.03):
            return None
        if not self._carries(self.judge.fully(chosen), modes):
            return None
        return self._set_of(chosen, modes)

    def _carries(self, after: Assessment, modes: tuple[Mode, ...], slack: float = 0.0) -> bool:
        """Whether these modes carry and no mode fails that carried before."""
        kept = (mode for mode in after.modes if mode in modes or mode not in self.failing)
        return all(after.modes[mode].over_share <= CARRIED_SHARE + slack for mode in kept)

    def _set_of(self, chosen: Sequence[Candidate], modes: tuple[Mode, ...]) -> RemedySet:
        after = self.judge.fully(chosen)
        ordered = sorted(chosen, key=lambda one: one.cost_hours)
        low = sum(one.effort_hours[0] for one in ordered)
        high = sum(one.effort_hours[1] for one in ordered)
        return RemedySet(
            tuple(one.key for one in ordered),
            modes,
            (round(low, 1), round(high, 1)),
            1.0 - max(after.modes[mode].over_share for mode in modes),
        )


def _sentence(words: str) -> str:
    """Words with one full stop at their end: sizes end in "in."."""
    return words.rstrip(".") + "."


def _compatible(chosen: Sequence[Candidate]) -> bool:
    groups = [one.group for one in chosen]
    return len(set(groups)) == len(groups)
