"""Worth of a bundle by brute force: state each possible answer as known, judge again, average.

Written apart from `engine.worth`'s binning; it shares the table of losses, which is what both mean
by a loss, and nothing of how answers are told apart.
"""

from collections.abc import Callable

import numpy as np

from engine.assessment import Assessment, assess
from engine.job.belief import How, Known
from engine.job.job import Job
from engine.job.openings import openings_of
from engine.job.sections import ducts_of
from engine.worth.losses import Stakes

Answer = Callable[[Assessment, int], Job]


def fall_by_rejudging(prior: Assessment, answer: Answer, answers: int, samples: int) -> float:
    """Mean fall in expected loss over answers taken from the prior's own samples.

    What may be said for want of other facts is the same before and after, so only the losses by
    what is believed are compared.
    """
    members = np.linspace(1, prior.house.draws.samples, answers).astype(int)
    after = [_loss(assess(answer(prior, int(i)), samples=samples, seed=3)) for i in members]
    return _loss(assess(prior.job, samples=samples, seed=3)) - float(np.mean(after))


def _loss(assessment: Assessment) -> float:
    stakes = Stakes.of(assessment)
    over = stakes.parts.mean(axis=0)
    total = 0.25 * float(np.minimum(over, 1.0 - over).sum())
    for mode in stakes.modes:
        total += float(mode.free_and_barred(mode.shares)[0])
    return total


def _known(job: Job, facts: dict[str, float | str]) -> Job:
    return job.with_facts({key: Known(value, How.DOCUMENT) for key, value in facts.items()})


def trunks(prior: Assessment, member: int) -> Job:
    duct = ducts_of(prior.house, "supply.trunks")[0]
    assert duct.width_in is not None
    assert duct.height_in is not None
    job = prior.job
    for index in range(2 if duct.share[member] < 0.75 else 1):
        key = f"supply.trunks.{index}"
        sides = {f"{key}.width_in": float(np.clip(duct.width_in[member], 2.0, 48.0)),
                 f"{key}.height_in": float(duct.height_in[member])}  # fmt: skip
        job = _known(job, {**sides, f"{key}.share_fraction": float(duct.share[member])})
    return job


def drop(prior: Assessment, member: int) -> Job:
    duct = ducts_of(prior.house, "return.drops")[0]
    assert duct.width_in is not None
    assert duct.height_in is not None
    sides = {"return.drops.0.width_in": float(np.clip(duct.width_in[member], 2.0, 48.0)),
             "return.drops.0.height_in": float(duct.height_in[member])}  # fmt: skip
    return _known(prior.job, sides)


def openings(prior: Assessment, member: int) -> Job:
    found = openings_of(prior.house)
    assert found is not None
    side = float(np.sqrt(max(found.area_ft2[member] * 144.0, 80.0) / 4.0))
    key = "return.grilles.0"
    return _known(
        prior.job,
        {
            f"{key}.width_in": side,
            f"{key}.height_in": side,
            f"{key}.count": 4.0,
            f"{key}.has_filter": "yes" if found.filtered[member] else "no",
        },
    )


def number(key: str) -> Answer:
    """A fact that is drawn under its own name."""

    def answer(prior: Assessment, member: int) -> Job:
        return _known(prior.job, {key: float(prior.house.drawn[key].values[member])})

    return answer


def target(key: str, prior: Assessment, member: int) -> Job:
    airflow = next(iter(prior.modes.values())).target.airflow_cfm[member]
    return _known(prior.job, {key: float(airflow)})
