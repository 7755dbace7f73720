"""Which branch starves, by how many CFM, when the air splits as the ducts make it split."""

from typing import Final

import numpy as np

from engine.arrays import Array
from engine.checks.context import Context
from engine.checks.raw import Raw, against
from engine.job.sections import Duct
from engine.job.system import tree_of
from engine.physics.network import shortfall
from engine.verdict import Harm, Part

__all__ = ["starved_branch"]

_MEMBERS: Final = 128
"""Members whose air is split; a share over so many is sure to about four points (computed)."""


def starved_branch(context: Context) -> list[Raw]:
    """The branch furthest below its share at the target, and how likely it is to lag; no vote."""
    trunks = tuple(d for d in context.ducts if d.key.startswith("supply.trunks"))
    branches = tuple(d for d in context.ducts if d.key.startswith("supply.branches"))
    if len(branches) < 2:
        return []
    reference = context.system.reference_cfm
    tree = tree_of(context.house, trunks, branches, context.lengths, reference)
    if tree is None:
        return []
    target = context.target.likely_cfm
    worst = shortfall(tree.split(target), np.asarray(tree.share) * target)
    place = int(worst.outlet)
    key = tree.outlets[place]
    if not key or float(worst.short_cfm) <= 0.0:
        return []
    wanted = float(tree.share[place]) * target
    given = wanted - float(worst.short_cfm)
    figure = _over_members(context, (trunks, branches), key)
    figure[0] = 100.0 * given / wanted
    limit = 100.0 * context.limits.delivered_over_share.value
    judged = against(figure, limit, None, is_floor=True)
    odds = 100.0 * float(np.mean(judged.tight[1:]))
    return [
        Raw(
            check="branch_share",
            part=Part.SUPPLY_BRANCHES,
            mode=context.mode,
            where=tree.names[place],
            figure=figure,
            unit="%",
            recommended=limit,
            maximum=None,
            judged=judged,
            harm=Harm.AIR,
            rests_on=tuple(dict.fromkeys(k for d in (*trunks, *branches) for k in d.rests_on)),
            formula=f"{given:,.0f} of {wanted:,.0f} CFM: {worst.short_cfm:,.0f} CFM short",
            source="how air splits among branches that share one plenum; "
            f"{context.limits.delivered_over_share.source}",
            is_floor=True,
            note=f"In {odds:.0f} of 100 houses like this it gets less than {limit:.0f} %. A damper "
            "half shut elsewhere, or a bigger branch here, sends it more.",
            votes=False,
        )
    ]


def _over_members(
    context: Context, ducts: tuple[tuple[Duct, ...], tuple[Duct, ...]], key: str
) -> Array:
    """Per cent of its share that one branch gets, (n + 1,); some members stand for all."""
    house = context.house
    chosen = slice(0, min(house.members, _MEMBERS + 1))
    tree = tree_of(house, *ducts, context.lengths, context.system.reference_cfm, chosen)
    assert tree is not None  # the central house has one, and what was stated is the same in all
    target = context.target_cfm[chosen]
    place = tree.outlets.index(key)
    given = np.atleast_2d(tree.split(target).outlet_cfm)[:, place]
    share = 100.0 * given / np.maximum(tree.share[place] * target, 1.0)
    return np.concatenate([share[:1], np.resize(share[1:], house.members - 1)])
