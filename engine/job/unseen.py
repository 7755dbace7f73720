"""Ducts that nobody spoke of and that may yet be too fast: believed sizes, where they are there.

A house whose return trunk, step-down or branches nobody mentioned may still have them. Each is in
the samples with the chance that it is there and the size it is believed to have, so that no mode
is called sure while such a duct may hold it back. What was stated, also as an empty list or a
"no", is not among them. Return branches are left out: air splits among them and the framing bays
by their resistance, and no share of it is believed of any one.
"""

from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from engine.job.sample import House, Mask
from engine.job.sections import Duct, ducts_of, usual_return_trunk
from engine.job.system import has_return_trunk, usual_branches

__all__ = ["STEP_DOWN", "UnseenDuct", "unseen_of"]

STEP_DOWN: Final = "house.trunk_steps_down"
"""The fact that tells whether a supply trunk gets smaller along the way."""

_AIR_LEFT: Final = 0.55
"""Share of a trunk's air behind its step-down; cancels in the speed (common practice)."""

_SPEED_OVER_START: Final = (0.75, 0.92, 1.15)
"""Speed behind a step-down over the speed at the trunk's start, one in ten outside at either end.

A trunk that is reduced at equal friction slows down as it gets smaller; one that is reduced too
early or too far doesn't. Source: common practice, no published source."""


@dataclass(frozen=True, slots=True)
class UnseenDuct:
    """A believed duct.

    Attributes:
        duct: Its size, share and material where it is there.
        present: Where it is, (n + 1,).
    """

    duct: Duct
    present: Mask


def unseen_of(house: House) -> tuple[UnseenDuct, ...]:
    """What may be there though nobody spoke of it, in the way of the air."""
    return house.once("unseen ducts", lambda: _unseen_of(house))


def _unseen_of(house: House) -> tuple[UnseenDuct, ...]:
    found = [_branches(house), *_step_downs(house), _return_trunk(house)]
    return tuple(one for one in found if one is not None and one.present.any())


def _branches(house: House) -> UnseenDuct | None:
    if house.job.length("supply.branches") is not None:
        return None
    usual = usual_branches(house)
    uneven = house.assumed(f"{usual.key} uneven", 0.75, 1.0, 1.3, fact="supply.branches")
    duct = replace(usual, share=np.minimum(usual.share * uneven, 1.0))
    return UnseenDuct(duct, np.ones(house.members, dtype=bool))


def _step_downs(house: House) -> tuple[UnseenDuct, ...]:
    """One behind the fastest of the trunks that leave the plenum."""
    told = house.job.word(STEP_DOWN)
    trunks = ducts_of(house, "supply.trunks")
    first = [trunk for trunk in trunks if not trunk.parent]
    if told == "no" or not first or len(first) < len(trunks):
        return ()
    present = house.is_word(STEP_DOWN, "yes")
    faster = house.assumed("step-down speed over start", *_SPEED_OVER_START, fact=STEP_DOWN)
    trunk = max(first, key=lambda one: float(one.share[0] / one.total_area_ft2[0]))
    duct = replace(
        trunk,
        key=f"{trunk.list_name}.{len(trunks)}",
        where=f"{trunk.where}, smaller part",
        stated=False,
        area_ft2=trunk.area_ft2 * _AIR_LEFT / faster,
        equivalent_in=trunk.equivalent_in * np.sqrt(_AIR_LEFT / faster),
        width_in=None if trunk.width_in is None else trunk.width_in * _AIR_LEFT / faster,
        diameter_in=(
            None if trunk.diameter_in is None
            else trunk.diameter_in * np.sqrt(_AIR_LEFT / faster)
        ),
        share=trunk.share * _AIR_LEFT,
        parent=trunk.key,
        rests_on=(STEP_DOWN, *trunk.rests_on),
    )  # fmt: skip
    return (UnseenDuct(duct, present),)


def _return_trunk(house: House) -> UnseenDuct | None:
    if house.job.length("return.trunks") is not None:
        return None
    return UnseenDuct(usual_return_trunk(house), has_return_trunk(house))
