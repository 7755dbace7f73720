"""Which branch starves, by how many CFM, when the air splits as the ducts make it split."""

import numpy as np

from engine.checks.context import Context
from engine.checks.raw import Raw, against
from engine.job.system import tree_of
from engine.physics.network import shortfall
from engine.verdict import Harm, Part

__all__ = ["starved_branch"]


def starved_branch(context: Context) -> list[Raw]:
    """The branch furthest below its share at the target, in the central house; no vote."""
    trunks = tuple(d for d in context.ducts if d.key.startswith("supply.trunks"))
    branches = tuple(d for d in context.ducts if d.key.startswith("supply.branches"))
    if len(branches) < 2:
        return []
    tree = tree_of(context.house, trunks, branches, context.lengths, context.system.reference_cfm)
    if tree is None:
        return []
    target = context.target.likely_cfm
    split = tree.split(target)
    worst = shortfall(split, np.asarray(tree.share) * target)
    place = int(worst.outlet)
    key = tree.outlets[place]
    if not key or float(worst.short_cfm) <= 0.0:
        return []
    wanted = tree.share[place] * target
    given = wanted - float(worst.short_cfm)
    figure = context.house.full(100.0 * given / wanted)
    limit = 100.0 * context.limits.delivered_over_share.value
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
            judged=against(figure, limit, None, is_floor=True),
            harm=Harm.AIR,
            rests_on=tuple(dict.fromkeys(k for d in (*trunks, *branches) for k in d.rests_on)),
            formula=f"{given:.0f} of {wanted:.0f} CFM: {worst.short_cfm:.0f} CFM short",
            source="how air splits among branches that share one plenum; "
            f"{context.limits.delivered_over_share.source}",
            is_floor=True,
            note="A damper half shut elsewhere, or a bigger branch here, sends it more.",
            votes=False,
        )
    ]
