"""Sections of duct: trunks, branches, drops. `count` equal ducts share `share_fraction`."""

from typing import Final

from engine.job.catalogue.rows import (
    EQUIPMENT,
    REGISTERS,
    TRUNKS,
    TT,
    YES_NO,
    C,
    number,
    ranged,
    word,
)
from engine.job.facts import Fact, Place
from engine.job.facts import Quantity as Q
from engine.trade.materials import Material
from engine.trade.measuring import MeasuredWhere

__all__ = ["ROWS"]

_MATERIALS: Final = tuple(material.value for material in Material)
_PLACES: Final = tuple(where.value for where in MeasuredWhere)


def _section(name: str, what: str, place: Place) -> tuple[Fact, ...]:
    return (
        word(f"{name}[].shape", f"Shape of the {what}.", ("rect", "round", "oval"), place,
               (TT,)),
        number(f"{name}[].width_in", f"Width of the {what}.", Q.DUCT_SIDE, "in", (2, 48),
               place, (TT,)),
        number(f"{name}[].height_in", f"Height of the {what}.", Q.DUCT_SIDE, "in", (2, 36),
               place, (TT,)),
        number(f"{name}[].diameter_in", f"Diameter of the {what}.", Q.FLEX_DIAMETER, "in",
               (3, 30), place, (TT,)),
        word(f"{name}[].material", f"What the {what} is made of.",
               _MATERIALS,
               place, (TT,)),
        number(f"{name}[].liner_in", f"Thickness of the liner in the {what}.", Q.LENGTH,
               "in", (0, 2), place, (TT,)),
        number(f"{name}[].slack_fraction",
               f"How much the flex of the {what} is left slack.", Q.SHARE, "", (0, 0.5), place,
               (TT,), ranged(0.03, 0.12, 0.28),
               source="field compression studies; laboratory range to 45 %"),
        word(f"{name}[].measured_where", f"Where on the {what} the tape was held.",
               _PLACES,
               place, (TT,)),
        number(f"{name}[].length_ft", f"Straight length of the {what}.", Q.LENGTH, "ft",
               (0, 150), place, (TT,)),
        number(f"{name}[].share_fraction", f"Share of all the air that the {what} carries.",
               Q.SHARE, "", (0.01, 1), place, (TT, C)),
        number(f"{name}[].count", f"How many equal ducts the {what} stands for.", Q.COUNT,
               "", (1, 40), place, (TT,)),
        word(f"{name}[].name", f"What people call the {what}.", (), place, (TT,)),
        word(f"{name}[].from", f"The section the {what} hangs on; none is the plenum.", (),
               place, (TT,)),
        word(f"{name}[].on_longest_run", f"Whether the {what} is on the longest run.",
               YES_NO, place, (TT,)),
        word(f"{name}[].is_riser", f"Whether the {what} goes up inside a wall.", YES_NO,
               place, (TT,)),
    )  # fmt: skip


ROWS: Final[tuple[Fact, ...]] = (
    *_section("supply.trunks", "supply trunk", TRUNKS),
    *_section("supply.branches", "supply branch", REGISTERS),
    *_section("return.drops", "return drop", EQUIPMENT),
    *_section("return.trunks", "return trunk", TRUNKS),
    *_section("return.branches", "return branch", TRUNKS),
)
