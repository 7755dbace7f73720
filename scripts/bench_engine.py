"""Speed of the engine's physics as ratios taken in one run, printed as a table.

A second means something else on every machine; a ratio of two things timed side by side doesn't.
"""

from collections.abc import Callable
from statistics import median
from time import perf_counter

import numpy as np
from fluids.friction import friction_factor as one_friction_factor

from engine.physics.colebrook import friction_factor
from engine.physics.fan import BlowerTable, System, operating_point
from engine.physics.friction import friction_inwc_per_100ft
from engine.physics.network import Network, Section, split_airflow

CASES = 100_000
SAMPLES = 4096
ROUNDS = 20
SEED = 20240229


def _seconds(work: Callable[[], object], rounds: int) -> float:
    taken = []
    for _ in range(rounds):
        start = perf_counter()
        work()
        taken.append(perf_counter() - start)
    return median(taken)


def _house(rng: np.random.Generator) -> Network:
    sections: list[Section] = []
    for index in range(12):
        parent = len(sections) - 2 if index else None
        sections.append(Section(f"trunk {index}", parent, 1.1, 13.0, length_ft=4.0))
        sections.append(
            Section(
                f"branch {index}",
                len(sections) - 1,
                0.196 * rng.uniform(0.9, 1.1, SAMPLES),
                6.0,
                length_ft=rng.uniform(5.0, 30.0, SAMPLES),
                fittings_ft=rng.uniform(40.0, 150.0, SAMPLES),
                drop_inwc=0.03,
            )
        )
    return Network.of(sections)


def rows() -> list[tuple[str, float, str, str]]:
    """What was compared, its ratio, how it should lie, and whether it does."""
    rng = np.random.default_rng(SEED)
    reynolds = 10 ** rng.uniform(np.log10(4e3), 7.0, CASES)
    roughness = 10 ** rng.uniform(-6.0, np.log10(0.05), CASES)

    def three_passes() -> None:
        for _ in range(3):
            np.log10(reynolds)

    def whole() -> None:
        friction_factor(reynolds, roughness)

    whole()  # makes its cubics once
    looped, passes, ours = [], [], []
    for part in np.split(np.arange(CASES), ROUNDS):  # side by side: other work falls on all

        def loop(part: np.ndarray = part) -> None:
            for speed, rough in zip(reynolds[part], roughness[part], strict=True):
                one_friction_factor(Re=speed, eD=rough)

        ours.append(_seconds(whole, 5))
        looped.append(_seconds(loop, 1))
        passes.append(_seconds(three_passes, 5))
        ours.append(_seconds(whole, 5))
    against_loop = sum(looped) / (sum(ours) / len(ours))
    against_passes = sum(ours) / len(ours) / (sum(passes) / len(passes))

    airflow = rng.uniform(50.0, 2000.0, CASES)
    diameter = rng.uniform(5.0, 20.0, CASES)
    duct = _seconds(lambda: friction_inwc_per_100ft(airflow, diameter, 3e-4), 9) / median(passes)
    house, total = _house(rng), rng.uniform(800.0, 1600.0, SAMPLES)
    split = _seconds(lambda: split_airflow(house, total), 5) / median(passes)
    table = BlowerTable.from_rows("high", [(0.1 * row, 1500.0 - 60.0 * row) for row in range(1, 9)])
    system = System(rng.uniform(1e-7, 8e-7, (SAMPLES, 4)), np.array([1.9, 1.8, 1.4, 1.9]))
    point = _seconds(lambda: operating_point(table, system), 9) / median(passes)

    def told(good: bool) -> str:
        return "yes" if good else "NO"

    return [
        (
            f"a loop over fluids.friction_factor / ours, {CASES:,} cases",
            against_loop,
            "at least 200",
            told(against_loop >= 200.0),
        ),
        (
            f"ours / three numpy log10 passes, {CASES:,} cases",
            against_passes,
            "at most 4",
            told(against_passes <= 4.0),
        ),
        (f"duct friction / three log10 passes, {CASES:,} cases", duct, "", ""),
        (f"24-section split of {SAMPLES:,} samples / three log10 passes", split, "", ""),
        (f"operating point of {SAMPLES:,} samples / three log10 passes", point, "", ""),
    ]


def main() -> int:
    """Print the table; 1 if a ratio misses what it should be."""
    found = rows()
    width = max(len(what) for what, *_ in found)
    print(f"{'what':{width}}  {'ratio':>8}  {'wanted':12}  met")
    for what, ratio, wanted, met in found:
        print(f"{what:{width}}  {ratio:8.2f}  {wanted:12}  {met}")
    return 1 if any(met == "NO" for *_, met in found) else 0


if __name__ == "__main__":
    raise SystemExit(main())
