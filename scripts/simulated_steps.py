"""What one step of asking takes beside one `judge` of the same job and number of samples."""

from __future__ import annotations

from collections.abc import Callable
from statistics import median
from time import perf_counter
from typing import Any, Final

from engine.assessment import SAMPLES, assess
from engine.job.loading import job_from_mapping
from engine.judge import judge
from engine.worth import BUNDLES, stop_reason, worth_of
from intake.interview.technician import TECHNICIAN
from scripts.simulated_technician import BASES

__all__ = ["step_rows"]

_ROUNDS: Final = 5
_MOST_RATIO: Final = 2.5
_SOUND: Final[dict[str, Any]] = {
    "supply.trunks": [{"width_in": 28, "height_in": 10, "measured_where": "bare_metal"}],
    "return.drops": [{"width_in": 28, "height_in": 14, "measured_where": "bare_metal"}],
    "return.trunks": [],
}
_CASES: Final[tuple[tuple[str, dict[str, Any], float], ...]] = (
    ("at the door", dict(BASES[0]), 60.0),
    ("half way, sound so far", {**BASES[0], "target.cooling_high_cfm": 1200, **_SOUND}, 60.0),
    (
        "with readings",
        {
            **BASES[0], "target.cooling_high_cfm": 1200, **_SOUND,
            "readings": [{
                "mode": "cooling_high", "filter_state": "clean", "airflow_cfm": 1050,
                "airflow_source": "flow_plate", "before_filter_inwc": 0.08,
                "after_filter_inwc": 0.20, "before_coil_inwc": 0.30, "after_coil_inwc": 0.12,
            }],
        },
        120.0,
    ),
)  # fmt: skip
"""Invented houses on the way through an interview, with the milliseconds wanted of two-core
laptops."""


def step_rows(samples: int = SAMPLES, rounds: int = _ROUNDS) -> list[str]:
    """A heading and one line a case: milliseconds of each part, and the ratio to one judge.

    A step judges, weighs what the technician's questions may ask for, and asks whether to stop;
    these share one assessment. Each round weighs an assessment of its own.
    """
    asked = {question.bundle for question in TECHNICIAN}
    bundles = [bundle for bundle in BUNDLES if bundle.key in asked]
    found = [
        f"a step at {samples:,} samples, milliseconds for information",
        f"{'house':24} {'assess':>7} {'judge':>7} {'worth+stop':>11} {'step / judge':>13}  wanted",
    ]
    for name, mapping, wanted_ms in _CASES:
        job = job_from_mapping(mapping)
        fresh = iter([assess(job, samples=samples) for _ in range(rounds)])

        def judged(job: Any = job) -> object:
            return judge(job, samples=samples)

        def weighed(fresh: Any = fresh) -> object:
            at = next(fresh)
            return stop_reason(at, worth_of(at, bundles))

        def assessed(job: Any = job) -> object:
            return assess(job, samples=samples)

        drawn, whole, worth = _side_by_side((assessed, judged, weighed), rounds)
        ratio = (whole + worth) / whole
        met = "met" if ratio <= _MOST_RATIO else "NOT MET"
        found.append(
            f"{name:24} {1e3 * drawn:7.0f} {1e3 * whole:7.0f} {1e3 * worth:11.0f} {ratio:13.2f}  "
            f"at most {_MOST_RATIO:g}: {met}; without the search for changes "
            f"{1e3 * (drawn + worth):.0f} ms of {wanted_ms:.0f}"
        )
    return found


def _side_by_side(works: tuple[Callable[[], object], ...], rounds: int) -> list[float]:
    """Median seconds of each, taken in turn so that other work falls on all alike."""
    taken: list[list[float]] = [[] for _ in works]
    for _ in range(rounds):
        for times, work in zip(taken, works, strict=True):
            start = perf_counter()
            work()
            times.append(perf_counter() - start)
    return [median(times) for times in taken]
