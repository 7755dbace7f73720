"""What air each mode needs, and the new pieces in its way."""

from typing import Final

from engine.job.catalogue.rows import (
    DESK,
    EQUIPMENT,
    MD,
    TT,
    YES_NO,
    C,
    number,
    ranged,
    word,
)
from engine.job.facts import Fact
from engine.job.facts import Quantity as Q
from engine.job.modes import Mode

__all__ = ["ROWS"]


def _target(mode: Mode) -> tuple[Fact, ...]:
    name = mode.value.replace("_", " ")
    return (
        number(f"target.{mode}_cfm", f"Airflow the equipment needs in {name}.", Q.AIRFLOW,
               "CFM", (150, 3000), DESK, (MD, C)),
        number(f"target.{mode}_rise_degf", f"Temperature rise wanted in {name}.",
               Q.DIFFERENCE, "F", (10, 90), DESK, (MD,)),
        number(f"target.{mode}_difference_degf",
               f"Room air less supply air wanted in {name}.", Q.DIFFERENCE, "F", (8, 35), DESK,
               (MD,)),
        word(f"target.{mode}_is_standard_air",
               f"Whether the airflow of {name} is given as standard air.", YES_NO, DESK, (MD,)),
    )  # fmt: skip


_NEW: Final = (
    number("new.coil_drop_inwc", "Pressure drop of the new coil, wet.", Q.STATIC, "in. w.c.",
           (0.05, 0.7), DESK, (MD,), ranged(0.15, 0.25, 0.38)),
    number("new.coil_drop_at_cfm", "Airflow the new coil's drop is listed at.", Q.AIRFLOW, "CFM",
           (300, 2600), DESK, (MD,)),
    number("new.filter_drop_inwc", "Pressure drop of the new filter, clean.", Q.STATIC, "in. w.c.",
           (0.02, 0.6), DESK, (MD,), ranged(0.06, 0.15, 0.3)),
    number("new.filter_drop_at_cfm", "Airflow the new filter's drop is listed at.", Q.AIRFLOW,
           "CFM", (300, 2600), DESK, (MD,)),
    number("new.cabinet_width_in", "Width of the new cabinet.", Q.DUCT_SIDE, "in", (10, 30), DESK,
           (MD,)),
    number("new.register_drop_inwc", "Pressure drop of a supply register.", Q.STATIC, "in. w.c.",
           (0, 0.15), DESK, (MD,), ranged(0.015, 0.03, 0.05),
           source="0.03 is the allowance of the residential duct standard (memory)"),
    number("new.grille_drop_inwc", "Pressure drop of a return grille.", Q.STATIC, "in. w.c.",
           (0, 0.15), DESK, (MD,), ranged(0.015, 0.03, 0.05),
           source="0.03 is the allowance of the residential duct standard (memory)"),
    number("new.damper_drop_inwc", "Pressure drop of a balancing damper.", Q.STATIC, "in. w.c.",
           (0, 0.15), DESK, (MD,), ranged(0, 0.02, 0.04),
           source="0.03 is the allowance of the residential duct standard (memory)"),
    number("new.strip_drop_inwc", "Pressure drop of the electric heat kit.", Q.STATIC, "in. w.c.",
           (0, 0.3), DESK, (MD,), ranged(0.05, 0.07, 0.1),
           source="0.05 to 0.10, usual allowance (memory)"),
    word("new.drop_remade", "Whether the crew will build a new return drop.", YES_NO, EQUIPMENT,
           (TT,)),
)  # fmt: skip

ROWS: Final[tuple[Fact, ...]] = (
    *(fact for mode in Mode for fact in _target(mode)),
    *_NEW,
)
