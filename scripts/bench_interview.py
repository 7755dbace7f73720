"""What each order of asking costs and finds out, side by side, under one stopping rule.

Houses are drawn from the prior. A simulated technician answers from the true house: exactly;
honestly (he misreads, and doesn't know one thing in five); or exactly, in stock whose flex is
slacker and whose ways are longer than the prior's. The full-information result is the verdict when
everything was answered exactly. Then the same of calls, and what a step takes beside one `judge`.
Not a measure of real houses: the truth is drawn from the same prior that the judge believes.

    python scripts/bench_interview.py [--houses 200] [--samples 512] [--seed 0] [--workers 2]
        [--keep FILE [--only-kept]] [--without-steps] [--leave-out BUNDLE ...]

With --keep, houses that are done are kept in FILE and not asked again; 200 houses take an hour or
two of one core.
"""

from __future__ import annotations

import argparse
import json
import multiprocessing
import os
import sys
import time
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from functools import partial
from pathlib import Path
from statistics import median
from typing import Any, Final

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

import numpy as np

from scripts import simulated_interviews as simulated
from scripts.simulated_steps import step_rows

__all__ = ["main"]

_TITLES: Final = {
    "exact": "exact technician",
    "honest": "honest technician: misreads, doesn't know one thing in five",
    "shifted": "exact technician, stock shifted from the prior",
}
_BINS: Final = ((0.90, 0.95), (0.95, 0.99), (0.99, 1.001))
_WITHIN: Final = {"exact": 3.0, "honest": 8.0, "shifted": 8.0}

Record = dict[str, Any]


def main(arguments: Sequence[str] | None = None) -> int:
    """Print every table."""
    chosen = _parsed(arguments)
    start = time.perf_counter()
    found = list(_interviews(chosen))
    for person in simulated.PEOPLE:
        _print_visits(person, [one for one in found if one["person"] == person], chosen)
    _print_calls([one for one in found if one["person"] == "caller"])
    if not chosen.without_steps:
        print("\n".join(step_rows()))
    print(f"\n{time.perf_counter() - start:.0f} s")
    return 0


def _parsed(arguments: Sequence[str] | None) -> argparse.Namespace:
    assert __doc__ is not None
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--houses", type=int, default=200)
    parser.add_argument("--samples", type=int, default=512)
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument("--workers", type=int, default=min(2, os.cpu_count() or 1))
    parser.add_argument("--keep", type=Path, help="where houses that are done are kept")
    parser.add_argument("--only-kept", action="store_true", help="tell of kept houses, ask nobody")
    parser.add_argument("--without-steps", action="store_true", help="time no steps")
    parser.add_argument(
        "--leave-out", nargs="*", default=[], metavar="BUNDLE",
        help="bundles that neither the orders nor the full information ask for",
    )  # fmt: skip
    return parser.parse_args(arguments)


def _interviews(chosen: argparse.Namespace) -> Iterator[Record]:
    """Records of every house, kept ones first; tells on standard error how far it is."""
    stamp = [chosen.samples, chosen.seed, sorted(chosen.leave_out), max(chosen.houses, 256)]
    done: dict[int, list[Record]] = {}
    if chosen.keep is not None and chosen.keep.exists():
        for line in chosen.keep.read_text().splitlines():
            kept = json.loads(line)
            if kept["stamp"] == stamp and kept["house"] < chosen.houses:
                done[kept["house"]] = kept["records"]
    open_ = [number for number in range(chosen.houses) if number not in done]
    if chosen.only_kept:
        open_, chosen.houses = [], len(done)
    ask = partial(
        simulated.of_house, houses=chosen.houses, samples=chosen.samples, seed=chosen.seed,
        left_out=tuple(chosen.leave_out),
    )  # fmt: skip
    for records in _asked(ask, open_, chosen.workers):
        number = records[0]["house"]
        done[number] = records
        if chosen.keep is not None:
            with chosen.keep.open("a") as file:
                file.write(json.dumps({"stamp": stamp, "house": number, "records": records}) + "\n")
        if len(done) % max(chosen.houses // 10, 1) == 0 and chosen.houses >= 10:
            print(f"{len(done)} of {chosen.houses} houses", file=sys.stderr, flush=True)
    for number in sorted(done):
        yield from done[number]


def _asked(ask: Any, numbers: Sequence[int], workers: int) -> Iterator[list[Record]]:
    if workers <= 1 or len(numbers) < 2:
        yield from map(ask, numbers)
        return
    with multiprocessing.get_context("spawn").Pool(workers) as pool:
        yield from pool.imap_unordered(ask, numbers)


def _print_visits(person: str, found: list[Record], chosen: argparse.Namespace) -> None:
    print(f"{_TITLES[person]}: {chosen.houses} houses of the prior, {chosen.samples} samples")
    print(
        f"{'order':18} {'questions':>9} {'minutes':>8} {'(mean)':>7} {'modes as full %':>16} "
        f"{'houses %':>9} {'side as full %':>15} {'sure %':>7} {'carries on assumed':>19}"
    )
    by_order = {order: [one for one in found if one["order"] == order]
                for order in simulated.ORDERS}  # fmt: skip
    for order, records in by_order.items():
        print(_visit_row(order, records))
    minutes = {order: median(one["minutes"] for one in records)
               for order, records in by_order.items()}  # fmt: skip
    ours = minutes["worth of asking"]
    for other, most in (("the bank's order", 50.0), ("expert's dozen", 75.0)):
        share = 100.0 * ours / minutes[other]
        print(
            f"minutes / {other}: {share:.0f} % (wanted: at most {most:.0f}) {_met(share <= most)}"
        )
    if person == "exact":
        share = _per_cent(m["said"] == m["full"] for m in _modes(by_order["worth of asking"]))
        print(f"modes as full, worth: {share:.1f} % (wanted: at least 97) {_met(share >= 97.0)}")
    _print_bins(person, by_order)
    first = Counter(key for one in by_order["worth of asking"] for key in one["asked"][:2])
    print("asked first by worth:", ", ".join(f"{k} {n}" for k, n in first.most_common(5)), "\n")


def _visit_row(order: str, records: list[Record]) -> str:
    modes = list(_modes(records))
    houses = (all(m["said"] == m["full"] for m in one["modes"]) for one in records)
    assumed = sum(
        m["said"] == "carries" and not one["knows_house"] for one in records for m in one["modes"]
    )
    return (
        f"{order:18} {median(one['questions'] for one in records):9.1f} "
        f"{median(one['minutes'] for one in records):8.1f} "
        f"{np.mean([one['minutes'] for one in records]):7.1f} "
        f"{_per_cent(m['said'] == m['full'] for m in modes):16.1f} {_per_cent(houses):9.1f} "
        f"{_per_cent((m['over_share'] > 0.5) == m['full_is_over'] for m in modes):15.1f} "
        f"{_per_cent(_confidence(m) >= 0.9 for m in modes):7.1f} {assumed:19d}"
    )


def _print_bins(person: str, by_order: dict[str, list[Record]]) -> None:
    """What was said against how often it was so, in the house and by full information.

    Modes of one house and steps of one interview hang together: the scatter, one standard
    deviation, counts houses.
    """
    print(f"{'calibration':18} {'bin':>8} {'modes':>6} {'said %':>7} {'so %':>6} {'as full %':>10}")
    everything = [one for records in by_order.values() for one in records]
    for name, modes in (("worth of asking", list(_modes(by_order["worth of asking"]))),
                        ("all orders", list(_modes(everything))),
                        ("after every answer", list(_believed(everything)))):  # fmt: skip
        for low, high in _BINS:
            inside = [m for m in modes if low <= _confidence(m) < high]
            if not inside:
                print(f"{name:18} {100 * low:3.0f}-{min(100 * high, 100):3.0f}  {0:6d}")
                continue
            said = 100.0 * float(np.mean([_confidence(m) for m in inside]))
            so = _per_cent((m["over_share"] > 0.5) == m["is_over"] for m in inside)
            full = _per_cent((m["over_share"] > 0.5) == m["full_is_over"] for m in inside)
            independent = len({m["house"] for m in inside})
            scatter = float(np.sqrt(said * (100.0 - said) / independent))
            within = "" if high > 1.0 else _within(said - so, scatter, _WITHIN[person])
            print(f"{name:18} {100 * low:3.0f}-{min(100 * high, 100):3.0f}  {len(inside):6d} "
                  f"{said:7.1f} {so:6.1f} {full:10.1f}  +/-{scatter:.1f}{within}")  # fmt: skip


def _within(off: float, scatter: float, goal: float) -> str:
    """Whether a bin is as near as is wanted, or too few houses are in it to tell."""
    few = abs(off) > goal and scatter > goal and abs(off) <= 2.0 * scatter
    found = "too few houses to tell" if few else _met(abs(off) <= goal)
    return f"  within {goal:.0f}: {found}"


def _print_calls(found: list[Record]) -> None:
    print("dispatcher: honest callers, at most seven minutes")
    print(
        f"{'order':18} {'questions':>9} {'minutes':>8} {'(mean)':>7} {'booked as full %':>17} "
        f"{'lost, half days':>16}  booked"
    )
    for order in simulated.PHONE_ORDERS:
        records = [one for one in found if one["order"] == order]
        visits = Counter(one["visit"] for one in records)
        print(
            f"{order:18} {median(one['questions'] for one in records):9.1f} "
            f"{median(one['minutes'] for one in records):8.1f} "
            f"{np.mean([one['minutes'] for one in records]):7.1f} "
            f"{_per_cent(one['as_full'] for one in records):17.1f} "
            f"{np.mean([one['lost'] for one in records]):16.2f}  "
            + ", ".join(f"{visit} {n}" for visit, n in visits.most_common())
        )
    print()


def _modes(records: Iterable[Record]) -> Iterator[dict[str, Any]]:
    for one in records:
        for mode in one["modes"]:
            yield {**mode, "house": one["house"]}


def _believed(records: Iterable[Record]) -> Iterator[dict[str, Any]]:
    """What was believed of every mode after every answer."""
    for one in records:
        for step in one["steps"]:
            for mode, over_share in zip(one["modes"], step, strict=True):
                yield {**mode, "over_share": over_share, "house": one["house"]}


def _confidence(mode: dict[str, Any]) -> float:
    return float(max(mode["over_share"], 1.0 - mode["over_share"]))


def _per_cent(found: Iterable[bool]) -> float:
    told = list(found)
    return 100.0 * sum(told) / len(told) if told else float("nan")


def _met(good: bool) -> str:
    return "met" if good else "NOT MET"


if __name__ == "__main__":
    raise SystemExit(main())
