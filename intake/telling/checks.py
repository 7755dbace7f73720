"""The words of each check: what its figure is, and what fine, tight and over mean in the house.

One row a check; whoever adds a check adds a row. Figures and limits are put in by
`intake.telling.findings`, so no row holds a number.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from types import MappingProxyType
from typing import Final

from engine.checks.longest_run import NO_REACH, NOTHING_LEFT
from engine.verdict import Finding, FindingStatus

__all__ = ["CHECKS", "Bound", "Told"]


class Bound(StrEnum):
    """Which side of its limit is wrong, in the words that follow the figure."""

    MOST = "the most"
    LEAST = "the least"


@dataclass(frozen=True, slots=True)
class Told:
    """How one check is told.

    Attributes:
        name: What the check is called in a table.
        says: The clause with {where} and {figure} put in; no full stop.
        bound: Whether its limit is a most or a least.
        fine: What it means when it is fine.
        tight: What it means when it is tight.
        over: What it means when it is over.
        other: What it means when it is tight on the side that has no limit of its own (too much
            where the limits are leasts, too little where they are mosts).
        soft: What its recommended figure is.
        hard: What its limit is; the bound's own words if empty.
        instead: By the finding's note, what is told in place of a figure that doesn't exist.
        area: Whether more area in proportion brings it back to its limit (speeds).
        aside: Whether its note is an aside that a short telling leaves out.
    """

    name: str
    says: str
    bound: Bound
    fine: str = ""
    tight: str = ""
    over: str = ""
    other: str = ""
    soft: str = "recommended"
    hard: str = ""
    instead: Mapping[str, str] = field(default_factory=lambda: MappingProxyType({}))
    area: bool = False
    aside: bool = False

    def meaning(self, finding: Finding) -> str:
        """The sentence for a finding's status, and for the side it is on."""
        match finding.status:
            case FindingStatus.FINE:
                return self.fine
            case FindingStatus.OVER:
                return self.over
            case FindingStatus.TIGHT:
                return self.tight if self._is_beyond(finding) else self.other or self.tight

    def _is_beyond(self, finding: Finding) -> bool:
        limit = finding.recommended
        if limit is None:
            return not self.other
        return finding.figure < limit if self.bound is Bound.LEAST else finding.figure > limit


_MOVES: Final = "Air in the {where} moves at {figure}"
_FACE: Final = "Air goes through the {where} at {figure} over its whole face"


def _speed(fine: str, tight: str, over: str, says: str = _MOVES) -> Told:
    return Told("air speed", says, Bound.MOST, fine, tight, over, area=True, aside=says == _MOVES)


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
        "filter_drop": Told(
            "filter's drop",
            "The {where} takes {figure} at this airflow, clean",
            Bound.MOST,
            "Within what a filter should take.",
            "More than its share: the blower lacks it elsewhere, and dirt will add to it.",
            "Far more than its share: this filter alone starves the blower.",
            soft="its budget",
        ),
        "coil_drop": Told(
            "coil's drop",
            "The {where} takes {figure} at this airflow",
            Bound.MOST,
            "Within what a coil should take.",
            "More than its share: little is left for the ducts.",
            "Far more than its share: this coil alone starves the blower.",
            soft="its budget",
        ),
        "filter_face_velocity": Told(
            "filter's face speed",
            "Air meets the {where} at {figure}",
            Bound.MOST,
            "Easy on a filter of this depth.",
            "Fast for a filter of this depth: its drop and its dirt grow sooner.",
        ),
        "aspect_ratio": Told(
            "flatness",
            "The sides of the {where} are {figure}",
            Bound.MOST,
            "",
            "Flat for its area.",
            soft="the usual most",
        ),
        "effective_length": Told(
            "longest run",
            "With its fittings counted as feet, the {where} is {figure}",
            Bound.MOST,
            "A usual length.",
            "Long: whatever the blower has left is spread thin over it.",
            soft="the usual most",
        ),
        "branch_share": Told(
            "the branch that starves most",
            "As these ducts split the air, the {where} gets {figure} of its share",
            Bound.LEAST,
            "Near enough to its share.",
            "The room at its end will lag behind the others.",
            soft="near enough",
        ),
        "friction_rate": Told(
            "friction rate",
            "The blower leaves {figure} for friction along the {where}",
            Bound.LEAST,
            "Enough for ducts of usual sizes.",
            "Little: ducts must be large and smooth to get by on it.",
            soft="the low end of the usual window",
            instead=MappingProxyType(
                {
                    NOTHING_LEFT: "Once coil, filter, registers and grilles are taken off, "
                    "nothing is left for the ducts.",
                    NO_REACH: "This blower setting can't give the target, so no pressure is left "
                    "to share out.",
                }
            ),
        ),
        "reading_total": Told(
            "total external static as read",
            "{where} was {figure} of total external static",
            Bound.MOST,
            "Within the rating.",
            "Over the rating, which is a test point and not a wall.",
            soft="the rating",
        ),
        "delivered_airflow": Told(
            "air the blower gives",
            "Through these ducts the blower gives {figure}",
            Bound.LEAST,
            "The equipment gets the air it needs.",
            "A little short: the equipment works, with some of its capacity gone.",
            "Too little: capacity is lost, a coil may freeze and a furnace may overheat.",
            "More than it needs, and faster: louder, and a coil dries the air less.",
            soft="close enough",
        ),
        "external_static": Told(
            "external static pressure",
            "Ducts, and whatever else is outside the tested box, ask {figure} of the blower",
            Bound.MOST,
            "The blower works within its rating.",
            "Over the printed rating, which is a test point and not a wall: expect more noise and "
            "power from the blower.",
            "More than this blower is made for: what it moves there is nobody's promise.",
            soft="the rating",
            hard="the end",
        ),
        "temperature_rise": Told(
            "temperature rise",
            "At the air it will get, the burner heats it by {figure}",
            Bound.MOST,
            "Inside the range on the plate.",
            "",
            "Above the range on the plate: the limit switch cuts the burner and the heat exchanger "
            "ages.",
            "Below the range on the plate.",
            hard="the top of the plate's range",
        ),
        "coil_window": Told(
            "air over the coil",
            "The coil gets {figure}",
            Bound.LEAST,
            "Inside what the coil works in.",
            "Less than the coil's own range: it runs cold and gives less.",
            "So little that the coil may freeze.",
            "Above the coil's own range.",
            soft="the low end of its range",
        ),
        "sensible_coverage": Told(
            "sensible capacity",
            "At the air it will get, the equipment meets {figure} of the sensible heat gain",
            Bound.LEAST,
            "It holds the temperature on a design day.",
            "Slightly short on a design day.",
            "Too little: it won't hold the temperature on a design day.",
            soft="the whole load",
        ),
        "latent_coverage": Told(
            "drying",
            "In the low stage it takes out {figure} of the moisture gain",
            Bound.LEAST,
            "It keeps the house dry most of the time.",
            "The house may stay damp while it runs in the low stage.",
            "The house will stay damp.",
            soft="wanted",
        ),
        "strip_minimum": Told(
            "least air for the strips",
            "The electric strips get {figure}",
            Bound.LEAST,
            "Enough for the kit.",
            "",
            "Too little: their safety switches cut them, and the elements burn out early.",
        ),
    }
)
"""By the name the check gives its findings."""
