"""Simulated houses with one thing wrong: what a gauge would show in them, and what was typed.

The forward model is written apart from the engine. Friction of a duct is the old quick formula of
the trade, fittings are loss coefficients times velocity pressure, and each part then grows with a
power of the airflow. What the ducts really take strays from that, as in real houses.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any, Final

import numpy as np

from engine.assessment import assess
from engine.errors import FactError
from engine.job.loading import job_from_mapping
from engine.verdict import Doubt

__all__ = ["FAULTS", "Found", "SimulatedHouse", "found_in", "planted", "share_accused"]

_RETURN, _FILTER, _COIL, _SUPPLY = "return", "filter", "coil", "supply"
_POWERS: Final = {_RETURN: 1.9, _FILTER: 1.4, _COIL: 1.8, _SUPPLY: 1.9}
# Source: what the trade takes for ducts, pleated filters and wet coils (common practice).
_STRAY: Final = {_RETURN: 0.35, _FILTER: 0.25, _COIL: 0.25, _SUPPLY: 0.35}
# Standard deviation of the logarithm of truth over model (judgement).
_PASCALS_PER_INWC: Final = 249.089


class Found(StrEnum):
    """What was said first of a house with one thing wrong."""

    NAMED = "named"
    READING = "right reading, other reason"
    ELSEWHERE = "elsewhere"
    SILENT = "silent"


@dataclass
class SimulatedHouse:
    """One house: its facts, the true pressure parts, and the air that moves today.

    Attributes:
        facts: What a technician with a tape states.
        coefficient: in wc at 1 CFM, by part; drop is this times CFM to the part's power.
        airflow_cfm: What the present blower moves in cooling.
        heating_share: Its heating airflow over that.
        rng: Scatter of gauges, in this house's own stream.
    """

    facts: dict[str, Any]
    coefficient: dict[str, float]
    airflow_cfm: float
    heating_share: float
    rng: np.random.Generator = field(repr=False)

    @classmethod
    def drawn(cls, seed: int) -> SimulatedHouse:
        """A house of 2 to 4 tons with ducts of usual sizes; sound, its dirt as usual."""
        rng = np.random.default_rng([seed, 20240501])
        tons = float(rng.choice([2.0, 2.5, 3.0, 3.5, 4.0]))
        target = 400.0 * tons
        trunk = (float(np.ceil(tons * rng.uniform(46.0, 66.0) / 8.0)), 8.0)
        drop = (float(np.ceil(tons * rng.uniform(55.0, 80.0) / 10.0)), 10.0)
        branches = int(np.ceil(3.8 * tons * rng.uniform(0.85, 1.15)))
        grille_in2 = tons * rng.uniform(120.0, 260.0)
        grilles = 1 if grille_in2 < 600.0 else 2
        grille = (float(np.ceil(grille_in2 / grilles / 20.0)), 20.0)
        depth = float(rng.choice([1.0, 4.0]))
        wide = 20.0 if tons < 3.0 else 25.0
        supply_ft, return_ft = float(rng.integers(28, 52)), float(rng.integers(6, 18))
        bends = float(rng.uniform(0.8, 1.3))
        facts: dict[str, Any] = {
            "site.elevation_ft": 0,
            "equipment.kind": "furnace",
            "equipment.cooling_tons": tons,
            "equipment.stages": "single",
            "equipment.rated_static_inwc": 0.5,
            "equipment.coil_outside_rating": True,
            "equipment.filter_outside_rating": True,
            "target.cooling_high_cfm": target,
            "new.coil_drop_inwc": 0.2,
            "new.coil_drop_at_cfm": target,
            "old.kind": "furnace",
            "old.cooling_tons": tons,
            "old.coil_outside_rating": True,
            "old.filter_outside_rating": True,
            "supply.trunks": [{"width_in": trunk[0], "height_in": trunk[1]}],
            "supply.branches": [{"diameter_in": 6, "count": branches}],
            "return.drops": [{"width_in": drop[0], "height_in": drop[1]}],
            "return.trunks": [],
            "return.grilles": [
                {
                    "width_in": grille[0],
                    "height_in": grille[1],
                    "count": grilles,
                    "has_filter": False,
                }
            ],
            "filters": [{"width_in": wide, "height_in": 20, "depth_in": depth, "place": "cabinet"}],
            "path.supply_length_ft": supply_ft,
            "path.return_length_ft": return_ft,
            "path.total_effective_length_ft": supply_ft + return_ft + round(240.0 * bends),
        }
        at_target = {
            _SUPPLY: _rectangular_inwc(target, trunk, 0.5 * 0.5 * supply_ft, 1.6 * bends)
            + _round_inwc(target / branches, 6.0, 0.5 * supply_ft, 2.4 * bends)
            + 0.03,
            _RETURN: _rectangular_inwc(target, drop, return_ft, 1.6 * bends)
            + 0.03 * (target * 144.0 / (grilles * grille[0] * grille[1]) / 400.0) ** 2,
            _FILTER: (0.13 if depth < 2.0 else 0.07)
            * (target * 144.0 / (wide * 20.0) / 300.0) ** 1.4,
            _COIL: 0.22,
        }
        coefficient = {
            part: inwc * float(np.exp(_STRAY[part] * rng.standard_normal())) / target**power
            for (part, inwc), power in zip(at_target.items(), _powers(at_target), strict=True)
        }
        coefficient[_COIL] *= float(rng.choice([1.0, 1.35], p=[0.75, 0.25]))
        per_ton = float(np.clip(337.0 * np.exp(0.28 * rng.standard_normal()), 200.0, 520.0))
        return cls(facts, coefficient, tons * per_ton, float(rng.uniform(0.70, 0.90)), rng)

    def drop_inwc(self, part: str, airflow_cfm: float) -> float:
        """What a part really takes."""
        return float(self.coefficient[part] * airflow_cfm ** _POWERS[part])

    def reading(self, *, heating: bool = False) -> dict[str, Any]:
        """Four pressures and the airflow as typed by somebody who makes no slip."""
        airflow = self.airflow_cfm * (self.heating_share if heating else 1.0)
        takes = {part: self.drop_inwc(part, airflow) for part in _POWERS}
        if heating:
            takes[_COIL] /= 1.22  # a dry coil takes less
        exact = {
            "before_filter_inwc": -takes[_RETURN],
            "after_filter_inwc": -takes[_RETURN] - takes[_FILTER],
            "before_coil_inwc": takes[_COIL] + takes[_SUPPLY],
            "after_coil_inwc": takes[_SUPPLY],
        }
        typed: dict[str, Any] = {
            name: round(v + float(self.rng.normal()) * max(0.02, 0.07 * abs(v)), 2)
            for name, v in exact.items()
        }
        found = airflow * float(np.exp(0.07 * self.rng.standard_normal()))
        return {
            "mode": "heating_high" if heating else "cooling_high",
            "filter_state": "clean",
            "airflow_cfm": float(round(found)),
            "airflow_source": "flow_plate",
            **typed,
        }


def _powers(parts: Mapping[str, float]) -> list[float]:
    return [_POWERS[part] for part in parts]


def _round_inwc(airflow_cfm: float, diameter_in: float, length_ft: float, fittings: float) -> float:
    """Quick formula 0.109136 q^1.9 / d^5.02 per 100 ft (older handbook, memory), and C x VP."""
    friction = 0.109136 * airflow_cfm**1.9 / diameter_in**5.02 * length_ft / 100.0
    area_ft2 = np.pi * diameter_in**2 / 576.0
    return float(friction + fittings * (airflow_cfm / area_ft2 / 4005.0) ** 2)


def _rectangular_inwc(
    airflow_cfm: float, sides_in: tuple[float, float], length_ft: float, fittings: float
) -> float:
    a, b = sides_in
    round_in = 1.30 * (a * b) ** 0.625 / (a + b) ** 0.25
    friction = 0.109136 * airflow_cfm**1.9 / round_in**5.02 * length_ft / 100.0
    return float(friction + fittings * (airflow_cfm * 144.0 / (a * b) / 4005.0) ** 2)


@dataclass(frozen=True, slots=True)
class Planted:
    """A job with one thing wrong.

    Attributes:
        facts: What is stated.
        touched: Names within readings.0 that the fault lies in.
        slip: The slip to be named; empty for something wrong in the house.
    """

    facts: dict[str, Any]
    touched: tuple[str, ...]
    slip: str


_TAPS: Final = ("before_filter_inwc", "after_filter_inwc", "before_coil_inwc", "after_coil_inwc")


def _sign(house: SimulatedHouse, reading: dict[str, Any]) -> tuple[str, ...]:
    tap = _TAPS[int(house.rng.integers(4))]
    reading[tap] = -reading[tap]
    return (tap,)


def _decimal_point(house: SimulatedHouse, reading: dict[str, Any]) -> tuple[str, ...]:
    tap = _TAPS[int(house.rng.integers(4))]
    times = 10.0 if house.rng.random() < 0.5 else 0.1
    reading[tap] = round(times * reading[tap], 3)
    return (tap,)


def _ports_swapped(house: SimulatedHouse, reading: dict[str, Any]) -> tuple[str, ...]:
    pair = _TAPS[:2] if house.rng.random() < 0.5 else _TAPS[2:]
    reading[pair[0]], reading[pair[1]] = reading[pair[1]], reading[pair[0]]
    return pair


def _pascal(house: SimulatedHouse, reading: dict[str, Any]) -> tuple[str, ...]:
    tap = _TAPS[int(house.rng.integers(4))]
    reading[tap] = float(round(_PASCALS_PER_INWC * reading[tap]))
    return (tap,)


def _wrong_airflow(house: SimulatedHouse, reading: dict[str, Any]) -> tuple[str, ...]:
    """The heating airflow is told for the cooling reading."""
    reading["airflow_cfm"] = float(round(house.heating_share * reading["airflow_cfm"]))
    return ("airflow_cfm",)


def _airflow_decimal(house: SimulatedHouse, reading: dict[str, Any]) -> tuple[str, ...]:
    """One digit too many or too few, as a person types it."""
    times = 10.0 if house.rng.random() < 0.5 else 0.1
    reading["airflow_cfm"] = float(round(times * reading["airflow_cfm"]))
    return ("airflow_cfm",)


_SLIPS: Final[Mapping[str, Callable[[SimulatedHouse, dict[str, Any]], tuple[str, ...]]]] = {
    "sign": _sign,
    "decimal point": _decimal_point,
    "ports swapped": _ports_swapped,
    "pascals typed as in. w.c.": _pascal,
    "airflow's decimal point": _airflow_decimal,
    "heating airflow told for cooling": _wrong_airflow,
    "the same, beside a heating reading": _wrong_airflow,
}
_SLIP_NAMES: Final = {
    "sign": "sign",
    "decimal point": "decimal_point",
    "ports swapped": "ports_swapped",
    "pascals typed as in. w.c.": "pascal",
    "airflow's decimal point": "decimal_point",
}
_CAUSES: Final[Mapping[str, tuple[str, float, float, str]]] = {
    "shut damper in the supply": (_SUPPLY, 3.0, 6.0, "after_coil_inwc"),
    "crushed return flex": (_RETURN, 3.0, 6.0, "before_filter_inwc"),
    "dirty coil": (_COIL, 2.0, 3.5, "before_coil_inwc"),
}
FAULTS: Final = (*_SLIPS, *_CAUSES)
"""Every fault that can be planted, by its words."""


def planted(fault: str, seed: int) -> Planted:
    """A house drawn by a seed with one fault of `FAULTS`; "" leaves it sound."""
    house = SimulatedHouse.drawn(seed)
    if fault in _CAUSES:
        part, low, high, shows = _CAUSES[fault]
        house.coefficient[part] *= float(house.rng.uniform(low, high))
        # more resistance leaves less air: along a blower's curve roughly to the power -0.2
        house.airflow_cfm *= 0.8
        return Planted({**house.facts, "readings": [house.reading()]}, (shows,), "")
    readings = [house.reading()]
    if "beside" in fault:
        readings.append(house.reading(heating=True))
    touched: tuple[str, ...] = ()
    if fault:
        touched = _SLIPS[fault](house, readings[0])
    return Planted({**house.facts, "readings": readings}, touched, _SLIP_NAMES.get(fault, ""))


def found_in(case: Planted, *, samples: int = 1024) -> Found:
    """What is said first when the job is loaded and judged."""
    try:
        doubts = _doubts(case.facts, samples)
    except FactError as refusal:
        wanted = tuple(f"readings.0.{name}" for name in case.touched)
        return Found.NAMED if refusal.key in wanted else Found.ELSEWHERE
    if not doubts:
        return Found.SILENT
    first = doubts[0]
    if first.reading.removeprefix("readings.0.") not in case.touched:
        return Found.ELSEWHERE
    return Found.NAMED if first.slip == case.slip else Found.READING


def share_accused(seeds: range, *, samples: int = 1024) -> float:
    """Share of sound houses of which something is said to be wrong."""
    accused = sum(bool(_doubts(planted("", seed).facts, samples)) for seed in seeds)
    return accused / len(seeds)


def _doubts(facts: dict[str, Any], samples: int) -> tuple[Doubt, ...]:
    return assess(job_from_mapping(facts), samples=samples).doubts
