"""The equipment: the same facts of what goes in and of what is there today."""

from typing import Final

from engine.job.belief import Belief
from engine.job.catalogue.rows import (
    DESK,
    DP,
    DR,
    EQUIPMENT,
    HP,
    MD,
    TT,
    YES_NO,
    mixed,
    number,
    ranged,
    word,
)
from engine.job.facts import Fact, Giver, Place
from engine.job.facts import Quantity as Q
from engine.physics.blower_table import MotorKind

__all__ = ["ROWS"]

_MOTORS: Final = tuple(kind.value for kind in MotorKind)


def _unit(
    prefix: str, whose: str, at: Place, givers: tuple[Giver, ...], motors: Belief
) -> tuple[Fact, ...]:
    return (
        word(f"{prefix}.kind", f"Kind of {whose} unit.",
               ("furnace", "heat_pump", "air_handler", "dual_fuel", "packaged"), at, givers),
        number(f"{prefix}.cooling_tons", f"Nominal cooling size of the {whose} equipment.", Q.TONS,
               "tons",
               (1, 5.5), at, givers, ranged(2, 3, 4),
               source="3.1 tons average in about 5,000 Texas audits"),
        word(f"{prefix}.stages", f"Stages of the {whose} cooling.", ("single", "two", "variable"),
               at,
               givers),
        number(f"{prefix}.heating_input_btuh", f"Burner input of the {whose} furnace, high fire.",
               Q.HEAT,
               "Btu/h", (25000, 200000), at, givers),
        number(f"{prefix}.heating_low_input_btuh",
               f"Burner input of the {whose} furnace, low fire.",
               Q.HEAT, "Btu/h", (15000, 150000), at, givers),
        number(f"{prefix}.heating_efficiency_fraction",
               f"Output over input of the {whose} furnace.",
               Q.SHARE, "", (0.55, 0.99), at, givers),
        number(f"{prefix}.heating_output_btuh", f"Heat output of the {whose} equipment, high.",
               Q.HEAT,
               "Btu/h", (10000, 200000), at, givers),
        number(f"{prefix}.heating_low_output_btuh", f"Heat output of the {whose} equipment, low.",
               Q.HEAT,
               "Btu/h", (8000, 150000), at, givers),
        number(f"{prefix}.rise_low_degf", f"Least temperature rise on the {whose} plate.",
               Q.DIFFERENCE,
               "F", (10, 70), at, givers),
        number(f"{prefix}.rise_high_degf", f"Greatest temperature rise on the {whose} plate.",
               Q.DIFFERENCE,
               "F", (25, 100), at, givers),
        number(f"{prefix}.strip_kw", f"Electric heat strips in the {whose} unit.", Q.HEAT, "kW",
               (2, 40),
               at, givers),
        number(f"{prefix}.strip_minimum_cfm", "Least airflow the strip heat kit allows.",
               Q.AIRFLOW,
               "CFM", (200, 2400), at, givers),
        word(f"{prefix}.blower_kind", f"Motor of the {whose} blower.", _MOTORS, at, givers,
               motors),
        number(f"{prefix}.rated_static_inwc",
               f"External static pressure printed on the {whose} plate.",
               Q.STATIC, "in. w.c.", (0.1, 1.2), at, givers, ranged(0.5, 0.5, 0.8),
               source="0.50 is the usual plate figure"),
        number(f"{prefix}.max_static_inwc",
               f"Greatest external static pressure the {whose} maker allows.",
               Q.STATIC, "in. w.c.", (0.1, 2), at, givers),
        word(f"{prefix}.coil_outside_rating",
               "Whether the cooling coil is outside what the blower table was taken with.", YES_NO,
               at, givers),
        word(f"{prefix}.filter_outside_rating",
               "Whether the filter is outside what the blower table was taken with.", YES_NO, at,
               givers),
        word(f"{prefix}.refrigerant", f"Refrigerant on the {whose} plate.",
               ("r22", "r410a", "a2l", "other"), at, givers),
        word(f"{prefix}.works", f"Whether the {whose} blower runs today.", YES_NO, EQUIPMENT, (HP,
               TT)),
    )  # fmt: skip


ROWS: Final[tuple[Fact, ...]] = (
    *_unit(
        "equipment",
        "new",
        DESK,
        (MD, DP, DR),
        mixed(ecm_constant_torque=0.55, ecm_variable=0.40, psc=0.05),
    ),
    *_unit(
        "old",
        "present",
        EQUIPMENT,
        (DP, HP, TT),
        mixed(psc=0.55, ecm_constant_torque=0.25, ecm_variable=0.20),
    ),
    word(
        "equipment.strip_outside_rating",
        "Whether the electric heat kit is outside what the blower table was taken with.",
        YES_NO,
        DESK,
        (MD, DP, DR),
    ),
)
