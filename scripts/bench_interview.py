"""What each order of asking costs and finds out, side by side, under one stopping rule.

Houses are drawn from the prior, a simulated technician answers from the true house: exactly, or
honestly (he misreads, and doesn't know one thing in five). Every order stops where every mode is
settled, or nothing left is worth asking. The full-information result is the verdict when everything
was answered exactly. Not a measure of real houses: the truth is drawn from the same prior that the
judge believes.

    python scripts/bench_interview.py [--houses 200] [--samples 1024] [--seed 0]
        [--leave-out BUNDLE ...]

Both tables of 200 houses take about three quarters of an hour on one core.
"""

from __future__ import annotations

import argparse
import os
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from statistics import median
from typing import Final

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
os.environ.setdefault(
    "OPENBLAS_NUM_THREADS", "1"
)  # small matrices; threads only wait for each other

import numpy as np

from engine.assessment import assess
from engine.job.job import Job
from engine.job.modes import Mode
from engine.judge import judge
from engine.verdict import ModeStatus
from engine.worth import BUNDLES, TECHNICIAN, Worth, stop_reason, worth_of
from scripts.simulated_technician import TrueHouse, bases_assessed

__all__ = ["main"]

_TARGETS: Final = tuple(f"target_{mode}" for mode in Mode)
BANK: Final = (
    *_TARGETS, "blower_table", "filter_rating", "blower_kind", "coil_drop", "trunks", "drop",
    "filter", "openings", "pressure_parts", "lengths", "fittings", "return_trunk", "branches",
    "flex_slack", "elevation", "filter_drop", "loads", "blower_rating",
)  # fmt: skip
"""The order of the technician's bank of questions."""

DOZEN: Final = (
    *_TARGETS, "pressure_parts", "blower_table", "blower_kind", "openings", "filter", "trunks",
    "drop", "return_trunk", "coil_drop", "branches", "flex_slack", "lengths", "fittings",
)  # fmt: skip
"""An expert's dozen, in the order that he says moves a verdict most."""

_BY_KEY: Final = {bundle.key: bundle for bundle in BUNDLES}
_SURE: Final = 0.90
_MOST_QUESTIONS: Final = 30

Choose = Callable[[Sequence[str], tuple[Worth, ...]], str | None]


@dataclass
class Tally:
    """What one order came to."""

    questions: list[int] = field(default_factory=list)
    minutes: list[float] = field(default_factory=list)
    agrees: list[bool] = field(default_factory=list)
    sides: list[tuple[float, bool]] = field(default_factory=list)
    first: dict[str, int] = field(default_factory=dict)

    def row(self, name: str) -> str:
        sure = [(max(p, 1.0 - p), (p > 0.5) == over) for p, over in self.sides
                if max(p, 1.0 - p) >= _SURE]  # fmt: skip
        said = float(np.mean([p for p, _ in sure])) if sure else float("nan")
        right = float(np.mean([ok for _, ok in sure])) if sure else float("nan")
        brier = float(np.mean([(p - over) ** 2 for p, over in self.sides]))
        return (
            f"{name:16} {median(self.questions):9.1f} {median(self.minutes):8.1f} "
            f"{np.mean(self.minutes):7.1f} {100.0 * np.mean(self.agrees):9.1f} "
            f"{100.0 * len(sure) / len(self.sides):6.1f} {100.0 * said:6.1f} {100.0 * right:6.1f} "
            f"{brier:7.3f}"
        )


def pool_of(modes: Sequence[Mode], left_out: Sequence[str] = ()) -> list[str]:
    """Bundles that may be asked of a job with these modes."""
    targets = {f"target_{mode}" for mode in modes}
    open_ = (key for key in BANK if key not in _TARGETS or key in targets)
    return [key for key in open_ if key not in left_out]


def interview(
    house: TrueHouse, choose: Choose, samples: int, keep: Sequence[str]
) -> tuple[Job, float, list[str], dict[Mode, float]]:
    """Ask until every mode is settled, nothing is worth it, or the order ends."""
    job, person, minutes = house.prior.job, TECHNICIAN, 0.0
    left = list(keep)
    asked: list[str] = []
    while True:
        at = assess(job, samples=samples, seed=1)
        worths = worth_of(at, [_BY_KEY[key] for key in left], person)
        key = None if stop_reason(at, worths) else choose(left, worths)
        if key is None or len(asked) >= _MOST_QUESTIONS:
            return job, minutes, asked, {mode: it.over_share for mode, it in at.modes.items()}
        minutes += next((one.minutes for one in worths if one.bundle.key == key), 0.0)
        asked.append(key)
        left.remove(key)
        told = house.answer(job, _BY_KEY[key])
        if told is not None:
            job = told
        if key == "pressure_parts" and "pressures" in left:
            left.remove("pressures")
        person = person.at(_BY_KEY[key].place)


def by_worth(left: Sequence[str], worths: tuple[Worth, ...]) -> str | None:
    """The worthiest."""
    return worths[0].bundle.key if worths else None


def in_order(order: Sequence[str]) -> Choose:
    """The first of an order that is left."""

    def choose(left: Sequence[str], worths: tuple[Worth, ...]) -> str | None:
        return next((key for key in order if key in left and _applies(key, worths)), None)

    return choose


def _applies(key: str, worths: tuple[Worth, ...]) -> bool:
    return any(one.bundle.key == key for one in worths)


def full_information(house: TrueHouse, samples: int, keep: Sequence[str]) -> Job:
    """Everything answered exactly."""
    job = house.prior.job
    for key in keep:
        told = TrueHouse(house.prior, house.at, house.seed, exact=True).answer(job, _BY_KEY[key])
        job = job if told is None else told
    return job


def statuses(job: Job, samples: int) -> dict[Mode, ModeStatus]:
    """By mode, when nothing more can be had; what can't be said is treated as it is told to be."""
    verdict = judge(job, samples=samples, seed=1, collectable=())
    return {mode: it.treat_as or it.status for mode, it in verdict.modes.items()}


def run(
    houses: int, samples: int, seed: int, *, exact: bool, left_out: Sequence[str] = ()
) -> dict[str, Tally]:
    """Every order on every house."""
    priors = bases_assessed(max(houses, 256), seed)
    rng = np.random.default_rng(seed)
    tallies: dict[str, Tally] = {}
    for number in range(houses):
        prior = priors[number % len(priors)]
        house = TrueHouse(prior, 1 + number, seed, exact=exact)
        open_modes = [mode for mode, it in prior.modes.items() if it.target.least_cfm is None]
        keep = pool_of(open_modes, left_out)
        truth = full_information(house, samples, keep)
        wanted = statuses(truth, samples)
        over = {mode: it.over_share > 0.5 for mode, it in
                assess(truth, samples=samples, seed=1).modes.items()}  # fmt: skip
        shuffled = [str(key) for key in rng.permutation(keep)]
        for name, choose in (
            ("worth of asking", by_worth),
            ("the bank's order", in_order(BANK)),
            ("expert's dozen", in_order(DOZEN)),
            ("random order", in_order(shuffled)),
        ):
            tally = tallies.setdefault(name, Tally())
            job, minutes, asked, shares = interview(house, choose, samples, keep)
            said = statuses(job, samples)
            tally.questions.append(len(asked))
            tally.minutes.append(minutes)
            tally.agrees += [said[mode] is wanted[mode] for mode in wanted]
            tally.sides += [(shares[mode], over[mode]) for mode in wanted]
            for key in asked[:2]:
                tally.first[key] = tally.first.get(key, 0) + 1
    return tallies


def main(arguments: Sequence[str] | None = None) -> int:
    """Print the table for both kinds of technician."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--houses", type=int, default=200)
    parser.add_argument("--samples", type=int, default=1024)
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument(
        "--leave-out", nargs="*", default=[], metavar="BUNDLE",
        help="bundles that neither the orders nor the full information ask for",
    )  # fmt: skip
    chosen = parser.parse_args(arguments)
    start = time.perf_counter()
    for name, exact in (("exact answers", True), ("honest answers", False)):
        tallies = run(
            chosen.houses,
            chosen.samples,
            chosen.seed,
            exact=exact,
            left_out=chosen.leave_out,
        )
        print(f"{name}, {chosen.houses} houses of the prior, {chosen.samples} samples")
        print(
            f"{'order':16} {'questions':>9} {'minutes':>8} {'(mean)':>7} {'as full %':>9} "
            f"{'sure %':>6} {'said %':>6} {'right%':>6} {'Brier':>7}"
        )
        for order, tally in tallies.items():
            print(tally.row(order))
        first = sorted(tallies["worth of asking"].first.items(), key=lambda pair: -pair[1])
        print("asked first by worth:", ", ".join(f"{key} {n}" for key, n in first[:5]), "\n")
    print(f"{time.perf_counter() - start:.0f} s")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
