"""Invented houses as plain data, for tests of the engine's checks and verdicts."""

from collections.abc import Mapping
from typing import Any

from engine.assessment import Assessment, assess
from engine.job.job import Job
from engine.job.loading import job_from_mapping
from engine.job.modes import Mode
from engine.job.sample import House, draw
from engine.judge import judge
from engine.verdict import Finding, ModeVerdict, Verdict

COOLING = Mode.COOLING_HIGH
HEATING = Mode.HEATING_HIGH

TABLE = [
    {
        "setting": "high",
        "rows": [
            {"static_inwc": 0.1, "airflow_cfm": 1240},
            {"static_inwc": 0.5, "airflow_cfm": 1080},
            {"static_inwc": 0.8, "airflow_cfm": 960},
            {"static_inwc": 1.0, "airflow_cfm": 880},
        ],
    }
]

SOUND: Mapping[str, Any] = {
    "site.elevation_ft": 0,
    "equipment.kind": "furnace",
    "equipment.cooling_tons": 2.5,
    "equipment.stages": "single",
    "equipment.blower_kind": "ecm_constant_torque",
    "equipment.heating_input_btuh": 66000,
    "equipment.heating_efficiency_fraction": 0.80,
    "equipment.rise_low_degf": 30,
    "equipment.rise_high_degf": 65,
    "equipment.rated_static_inwc": 0.5,
    "equipment.blower_tables": TABLE,
    "equipment.coil_outside_rating": True,
    "equipment.filter_outside_rating": True,
    "target.cooling_high_cfm": 1000,
    "new.coil_drop_inwc": 0.20,
    "new.coil_drop_at_cfm": 1000,
    "new.filter_drop_inwc": 0.08,
    "new.filter_drop_at_cfm": 1000,
    "supply.trunks": [{"width_in": 24, "height_in": 10}],
    "house.trunk_steps_down": "no",
    "supply.branches": [{"diameter_in": 7, "count": 11, "length_ft": 12}],
    "return.drops": [{"width_in": 24, "height_in": 14}],
    "return.trunks": [],
    "return.grilles": [{"width_in": 30, "height_in": 24, "has_filter": False}],
    "filters": [{"width_in": 25, "height_in": 20, "depth_in": 4, "place": "cabinet"}],
    "path.total_effective_length_ft": 260,
    "path.supply_length_ft": 35,
    "path.return_length_ft": 8,
}
"""A house with everything known and nothing wrong."""


def facts(**changed: Any) -> dict[str, Any]:
    """The sound house with some facts changed; a name with two underscores stands for a dot.

    None takes a fact away.
    """
    merged = {**SOUND, **{name.replace("__", "."): value for name, value in changed.items()}}
    return {key: value for key, value in merged.items() if value is not None}


def job(**changed: Any) -> Job:
    return job_from_mapping(facts(**changed))


def house(mapping: Mapping[str, Any], samples: int = 512) -> House:
    return draw(job_from_mapping(mapping), samples)


def assessed(mapping: Mapping[str, Any], samples: int = 1024) -> Assessment:
    return assess(job_from_mapping(mapping), samples=samples)


def verdict(mapping: Mapping[str, Any], **how: Any) -> Verdict:
    return judge(job_from_mapping(mapping), **{"samples": 1024, **how})


def cooling(mapping: Mapping[str, Any], **how: Any) -> ModeVerdict:
    return verdict(mapping, **how).modes[COOLING]


def finding(mode: ModeVerdict, check: str, where: str = "") -> Finding:
    found = [f for f in mode.findings if f.check == check and where in f.where]
    assert len(found) == 1, f"{check} is told {len(found)} times"
    return found[0]
