"""Somebody on the phone in a house whose truth is known, asked bundle by bundle.

Reads the frame of a grille for its hole, guesses a trunk to a fifth and rounds to even inches, and
often doesn't know. Scatter and biases are common practice without a published source.
"""

from __future__ import annotations

from typing import Final

import numpy as np

from engine.job.belief import How, Known
from engine.job.job import Job
from engine.job.openings import filters_of, openings_of
from engine.job.sections import ducts_of
from engine.worth import Bundle
from scripts.simulated_technician import TrueHouse

__all__ = ["ASKED_BY_PHONE", "answer_by_phone"]

_KNOWS: Final = {"filter": 0.80, "openings": 0.65, "registers": 0.80, "trunk_ways": 0.60,
                 "trunks": 0.35}  # fmt: skip
"""Chance that a caller can tell; one in three can tape the trunk."""

ASKED_BY_PHONE: Final = tuple(_KNOWS)
"""Bundles asked on the phone, in the order of the script."""


def answer_by_phone(house: TrueHouse, job: Job, bundle: Bundle) -> Job | None:
    """The job with what this caller says to a bundle; None for "don't know"."""
    rng = np.random.default_rng([house.seed, house.at, 1, *bundle.key.encode()])
    if rng.random() > _KNOWS[bundle.key]:
        return None
    at, prior = house.at, house.prior
    facts: dict[str, float | str] = {}
    if bundle.key == "trunks":
        duct = ducts_of(prior.house, "supply.trunks")[0]
        assert duct.width_in is not None
        assert duct.height_in is not None
        for side, most in (("width_in", 48.0), ("height_in", 36.0)):
            true = float(getattr(duct, side)[at])
            told = 2.0 * round(true * (1.0 + 0.2 * float(rng.standard_normal())) / 2.0)
            for index in range(1 + (float(duct.share[at]) < 0.75)):
                facts[f"supply.trunks.{index}.{side}"] = float(np.clip(told, 4.0, most))
    elif bundle.key == "trunk_ways":
        two = float(ducts_of(prior.house, "supply.trunks")[0].share[at]) < 0.75
        facts["phone.trunk_directions"] = "both" if two else "one"
    elif bundle.key == "openings":
        openings = openings_of(prior.house)
        assert openings is not None
        area_in2 = max(float(openings.area_ft2[at]) * 144.0, 40.0)
        count = int(np.ceil(area_in2 / 700.0))
        for side in ("width_in", "height_in"):
            read = np.sqrt(area_in2 / count) + 1.75 + 0.75 * float(rng.standard_normal())
            facts[f"return.grilles.0.{side}"] = float(np.clip(read, 4.0, 48.0))
        facts["return.grilles.0.count"] = float(count)
    elif bundle.key == "filter":
        banks = filters_of(prior.house)
        bank = next((one for one in banks if one.present[at]), banks[0])
        area_in2 = max(float(bank.area_ft2[at]) * 144.0, 60.0)
        count = int(np.ceil(area_in2 / 900.0))
        side_in = float(np.sqrt(area_in2 / count))
        facts = {"filters.0.width_in": side_in, "filters.0.height_in": side_in,
                 "filters.0.count": float(count), "filters.0.place": bank.place,
                 "filters.0.depth_in": float(bank.depth_in[at])}  # fmt: skip
    else:
        drawn = prior.house.drawn
        per_ton = float(drawn["supply.branches per ton"].values[at])
        tons = float(drawn["equipment.cooling_tons"].values[at])
        told = tons * per_ton * (1.0 + 0.08 * float(rng.standard_normal()))
        facts["house.supply_registers_count"] = float(np.clip(round(told), 3.0, 40.0))
    return job.with_facts({key: Known(value, How.PHONE) for key, value in facts.items()})
