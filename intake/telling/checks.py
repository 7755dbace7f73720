"""The words of each check: what its figure is, and what fine, tight and over mean in the house.

One row a check; whoever adds a check adds a row. Figures and limits are put in by
`intake.telling.findings`, so no row holds a number.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import Final

from engine.verdict import FindingStatus

__all__ = ["CHECKS", "Bound", "Told"]


class Bound(StrEnum):
    """Which side of its limit is wrong, in the words that follow the figure."""

    MOST = "the most"
    LEAST = "the least"


@dataclass(frozen=True, slots=True)
class Told:
    """How one check is told.

    Attributes:
        says: The clause with {where} and {figure} put in; no full stop.
        bound: Whether its limit is a most or a least.
        fine: What it means when it is fine.
        tight: What it means when it is tight.
        over: What it means when it is over.
        advice: What a recommended figure without a maximum is called.
        name: What the check is called in a table.
        area: Whether more area in proportion brings it back to its limit (speeds).
    """

    says: str
    bound: Bound
    fine: str = ""
    tight: str = ""
    over: str = ""
    advice: str = "advised"
    name: str = ""
    area: bool = False

    def meaning(self, status: FindingStatus) -> str:
        """The sentence for a status."""
        return {
            FindingStatus.FINE: self.fine,
            FindingStatus.TIGHT: self.tight,
            FindingStatus.OVER: self.over,
        }[status]


_MOVES: Final = "Air in the {where} moves at {figure}"
_FACE: Final = "Air goes through the {where} at {figure} over its whole face"


def _speed(fine: str, tight: str, over: str, says: str = _MOVES) -> Told:
    return Told(says, Bound.MOST, fine, tight, over, name="air speed", area=True)


_NARROW: Final = (
    "All the air passes here, so it also takes pressure that the blower then lacks elsewhere."
)

CHECKS: Final[Mapping[str, Told]] = MappingProxyType(
    {
        "trunk_velocity": _speed(
            "Quiet.",
            "A rush of air may be heard near it in a quiet house.",
            "Loud: the rush is heard in the rooms whenever the blower runs this way.",
        ),
        "branch_velocity": _speed(
            "Quiet.",
            "The rooms it serves may hear it.",
            "Loud in the rooms it serves, and it takes pressure that the far rooms need.",
        ),
        "riser_velocity": _speed(
            "Quiet.",
            "It may be heard through the wall.",
            "Loud: a riser sits in the wall of a room, and this is heard through it.",
        ),
        "register_velocity": _speed(
            "Quiet.",
            "It may be heard in a bedroom at night.",
            "Loud: a hiss at the register that people close it for.",
            _FACE,
        ),
        "return_drop_velocity": _speed(
            "Quiet.",
            f"A rush may be heard beside the unit. {_NARROW}",
            f"Loud beside the unit. {_NARROW}",
        ),
        "return_trunk_velocity": _speed(
            "Quiet.",
            "A rush may be heard at the return openings.",
            f"Loud: the return carries the sound back into the rooms. {_NARROW}",
        ),
        "return_branch_velocity": _speed(
            "Quiet.",
            "It may be heard at the opening it serves.",
            "Loud at the opening it serves.",
        ),
        "return_grille_velocity": _speed(
            "Quiet.",
            "It may be heard in the room it sits in.",
            "Loud: people talk over it, and doors near it may pull shut.",
            _FACE,
        ),
        "filter_grille_velocity": _speed(
            "Quiet, and easy on the filter.",
            "It may be heard in the room, and the filter loads up sooner.",
            "Loud, and the filter behind it takes much of what the blower can pull.",
            _FACE,
        ),
    }
)
"""By the name the check gives its findings."""
