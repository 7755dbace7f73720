"""Speed of the engine's physics as ratios taken in one run, printed as a table.

A second means something else on every machine; a ratio of two things timed side by side doesn't.
"""

import sys
from collections.abc import Callable
from pathlib import Path
from statistics import median
from time import perf_counter
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

import numpy as np
from fluids.friction import friction_factor as one_friction_factor

from engine.assessment import assess
from engine.job.job import Job
from engine.job.loading import job_from_mapping
from engine.judge import judge
from engine.physics.colebrook import friction_factor
from engine.physics.fan import BlowerTable, System, operating_point
from engine.physics.friction import friction_inwc_per_100ft
from engine.physics.network import Network, Section, split_airflow
from engine.remedies import find_changes

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


def _job(branches: int) -> Job:
    """An invented house whose drop is too narrow, with its branches as so many sections."""
    facts: dict[str, Any] = {
        "equipment.kind": "furnace",
        "equipment.cooling_tons": 2.5,
        "equipment.heating_input_btuh": 66000,
        "equipment.rise_low_degf": 30,
        "equipment.rise_high_degf": 65,
        "target.cooling_high_cfm": 1000,
        "equipment.blower_tables": [
            {
                "setting": setting,
                "rows": [
                    {"static_inwc": static, "airflow_cfm": share * airflow}
                    for static, airflow in ((0.1, 1240), (0.5, 1080), (0.8, 960), (1.0, 880))
                ],
            }
            for setting, share in (("high", 1.0), ("medium", 0.9), ("low", 0.8))
        ],
        "supply.trunks": [{"width_in": 24, "height_in": 8}],
        "supply.branches": [
            {"diameter_in": 6, "length_ft": 8 + place % 7, "share_fraction": 0.96 / branches}
            for place in range(branches)
        ],
        "return.drops": [{"width_in": 16, "height_in": 10}],
        "return.grilles": [{"width_in": 20, "height_in": 20}],
        "filters": [{"width_in": 25, "height_in": 20, "depth_in": 1, "place": "cabinet"}],
    }
    return job_from_mapping(facts)


def judging() -> list[tuple[str, float, str, str]]:
    """What judging costs as samples and sections grow."""
    usual, many = _job(12), _job(36)

    def of(job: Job, samples: int) -> Callable[[], object]:
        return lambda: judge(job, samples=samples)

    one, thousand, four, wide = [], [], [], []
    for _ in range(5):  # side by side: other work falls on all
        one.append(_seconds(of(usual, 1), 1))
        thousand.append(_seconds(of(usual, SAMPLES // 4), 1))
        four.append(_seconds(of(usual, SAMPLES), 1))
        wide.append(_seconds(of(many, SAMPLES), 1))
    all_over_one = median(four) / median(one)
    by_samples = (median(four) - median(one)) / (median(thousand) - median(one))
    by_sections = median(wide) / median(four)
    return [
        (
            f"judge on {SAMPLES:,} samples / on 1",
            all_over_one,
            "at most 30",
            "yes" if all_over_one <= 30.0 else "NO",
        ),
        (
            "what four times the samples cost above one sample",
            by_samples,
            "at most 6",
            "yes" if by_samples <= 6.0 else "NO",
        ),
        (
            "judge on 36 branches / on 12",
            by_sections,
            "at most 3.6",
            "yes" if by_sections <= 3.6 else "NO",
        ),
    ]


_READ: dict[str, Any] = {
    "mode": "cooling_high", "filter_state": "clean", "after_filter_inwc": -0.4,
    "before_coil_inwc": 0.45, "airflow_cfm": 800, "airflow_source": "temperature_rise",
}  # fmt: skip


def changing() -> list[tuple[str, float, str, str]]:
    """What the search for changes costs where the drop is too narrow and readings agree."""
    read = job_from_mapping({f"readings.0.{name}": value for name, value in _READ.items()})
    job = _job(12).with_facts(dict(read.beliefs))
    assessment = assess(job, samples=SAMPLES)
    find_changes(assessment, samples=SAMPLES)  # what is imported or cached on first use
    taken = _seconds(lambda: find_changes(assessment, samples=SAMPLES), 3)
    good = "yes" if taken <= 2.0 else "NO"
    return [("seconds here that the changes of a failing house take", taken, "at most 2", good)]


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

    whole()  # makes its parabolas once
    passes, over_loop, over_passes = [], [], []
    for part in np.split(np.arange(CASES), ROUNDS):  # side by side: other work falls on all

        def loop(part: np.ndarray = part) -> None:
            for speed, rough in zip(reynolds[part], roughness[part], strict=True):
                one_friction_factor(Re=speed, eD=rough)

        before = _seconds(whole, 5)
        looped = ROUNDS * _seconds(loop, 1)
        passes.append(_seconds(three_passes, 5))
        ours = 0.5 * (before + _seconds(whole, 5))
        over_loop.append(looped / ours)
        over_passes.append(ours / passes[-1])
    against_loop, against_passes = median(over_loop), median(over_passes)

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
    found = [*rows(), *judging(), *changing()]
    width = max(len(what) for what, *_ in found)
    print(f"{'what':{width}}  {'ratio':>8}  {'wanted':12}  met")
    for what, ratio, wanted, met in found:
        print(f"{what:{width}}  {ratio:8.2f}  {wanted:12}  {met}")
    return 1 if any(met == "NO" for *_, met in found) else 0


if __name__ == "__main__":
    raise SystemExit(main())
