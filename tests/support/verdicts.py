"""Hand-made findings, verdicts and a job: an invented house, figures worked by hand beside them."""

from typing import Any

from engine.job.belief import Between, How, Known
from engine.job.job import Job
from engine.job.modes import Mode
from engine.verdict import (
    Assumption,
    Doubt,
    Finding,
    FindingStatus,
    Harm,
    ModeStatus,
    ModeVerdict,
    Part,
    Remedy,
    RemedySet,
    Spread,
    TurnsAt,
    Verdict,
    Wanted,
)

__all__ = ["a_finding", "a_job", "a_mode", "a_verdict", "same"]


def same(value: float) -> Spread:
    """A figure without spread."""
    return Spread(value, value, value)


def a_finding(**changed: Any) -> Finding:
    """A supply trunk 20 x 8 in. carrying 1,200 CFM: 1,200 x 144 / 160 = 1,080 fpm."""
    figure = changed.get("figure", 1080.0)
    fields: dict[str, Any] = {
        "check": "trunk_velocity",
        "part": Part.SUPPLY_TRUNK,
        "mode": Mode.COOLING_HIGH,
        "where": "supply trunk",
        "figure": figure,
        "unit": "fpm",
        "recommended": 700.0,
        "maximum": 900.0,
        "ratio": figure / 900.0,
        "status": FindingStatus.OVER,
        "over_share": 1.0,
        "tight_share": 0.0,
        "harm": Harm.NOISE,
        "spread": same(figure),
        "rests_on": ("supply.trunks.0.width_in", "supply.trunks.0.height_in"),
        "known": ("supply.trunks.0.width_in", "supply.trunks.0.height_in"),
        "turns_at": None,
        "formula": "1,200 CFM x 144 / (20 in x 8 in) = 1,080 fpm",
        "source": "ANSI/ACCA 1 Manual D velocity table (memory)",
    }
    return Finding(**{**fields, **changed})


def a_mode(**changed: Any) -> ModeVerdict:
    """Full cooling at 1,200 CFM through that trunk."""
    fields: dict[str, Any] = {
        "mode": Mode.COOLING_HIGH,
        "status": ModeStatus.WONT_CARRY,
        "confidence": 0.97,
        "borderline": False,
        "over_share": 0.97,
        "setting": "med-high",
        "target_cfm": same(1200.0),
        "delivered_cfm": Spread(1050.0, 1100.0, 1150.0),
        "quiet_capacity_cfm": same(1000.0),
        "findings": (a_finding(),),
    }
    return ModeVerdict(**{**fields, **changed})


def a_job() -> Job:
    """Three tons through one 20 x 8 in. trunk."""
    job = Job().with_facts(
        {
            "equipment.kind": Known("heat_pump", How.DOCUMENT),
            "equipment.cooling_tons": Known(3.0, How.PLATE),
            "supply.trunks.0.width_in": Known(20.0, How.MEASURED),
            "supply.trunks.0.height_in": Known(8.0, How.MEASURED, hedged=True),
            "supply.trunks.0.material": Known("galvanized", How.MEASURED),
            "path.supply_length_ft": Between(30.0, 40.0, 50.0, How.PHONE),
        }
    )
    return job.with_length("return.drops", 0)


def a_verdict(**changed: Any) -> Verdict:
    """Full cooling won't carry, heat pump heating carries once the filter is larger."""
    filter_finding = a_finding(
        check="filter_grille_velocity",
        part=Part.RETURN_OPENINGS,
        mode=Mode.HEAT_PUMP_HEATING,
        where="hall return",
        figure=480.0,
        recommended=300.0,
        maximum=450.0,
        over_share=0.7,
        spread=Spread(430.0, 480.0, 520.0),
        turns_at=TurnsAt("return.grilles.0.width_in", 21.3, "at most"),
        rests_on=("return.grilles.0.width_in",),
        known=(),
        formula="900 CFM x 144 / (18 in x 15 in) = 480 fpm",
        source="300 fpm contractor association's design figure (read)",
    )
    grille = Remedy(
        "larger_return_grille",
        "Fit a 20 x 20 filter grille in the hall",
        (2.0, 4.0),
        edits_trunk=False,
        clears={Mode.HEAT_PUMP_HEATING: ModeStatus.CARRIES},
        buys="brings the filter grille to 324 fpm",
    )
    other = Remedy(
        "turning_vanes",
        "Put turning vanes in the return elbow",
        (1.0, 2.0),
        edits_trunk=False,
        clears={},
        buys="saves about 60 ft of effective length",
    )
    modes = {
        Mode.COOLING_HIGH: a_mode(reasons=("trunk_velocity",)),
        Mode.HEAT_PUMP_HEATING: a_mode(
            mode=Mode.HEAT_PUMP_HEATING,
            status=ModeStatus.CARRIES_WITH_CHANGES,
            confidence=0.92,
            target_cfm=Spread(850.0, 900.0, 950.0),
            delivered_cfm=None,
            findings=(filter_finding,),
            reasons=("filter_grille_velocity",),
            changes=RemedySet(
                ("larger_return_grille",), (Mode.HEAT_PUMP_HEATING,), (2.0, 4.0), 0.92
            ),
        ),
    }
    fields: dict[str, Any] = {
        "modes": modes,
        "remedies": (grille, other),
        "assumed": (
            Assumption(
                "new.coil_drop_inwc", "Drop of the coil.", 0.15, 0.25, 0.38, "in. w.c.",
                "practice", 0.4,
            ),
            Assumption("equipment.blower_kind", "Motor.", None, "psc", None, "", "practice", 0.2),
        ),
        "collect_next": (
            Wanted("supply.trunks", "Trunks.", "two trunks would halve this speed"),
        ),
        "doubts": (
            Doubt(9.0, "readings.0.after_coil_inwc", "sign", "a shut damper", "One sign is off."),
        ),
        "refused": ("the smallest zone alone: its ducts aren't known",),
        "effective_samples": 4096.0,
        "samples": 4096,
    }  # fmt: skip
    return Verdict(**{**fields, **changed})
