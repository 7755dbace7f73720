"""How the supply air of the central house really splits among the branches that were stated.

The tree is trunk sections with branches hung on them; every branch ends in a register. It serves
two ends: the pressure that all the air feels, and the room that gets too little.
"""

from dataclasses import dataclass

import numpy as np

from engine.job.lengths import Lengths
from engine.job.sections import Duct
from engine.physics.air import STANDARD_DENSITY_LB_FT3
from engine.physics.flex import slack_factor
from engine.physics.network import Network, Section, Split, split_airflow

__all__ = ["SupplyTree", "supply_tree"]

_LEAST_SHARE = 0.02
"""Air without a stated branch below which the stated ones are taken for all."""


_LONGEST_FT = 1000.0
"""No run in a house is worth more; a list of many fittings that were told too long may say so."""


@dataclass(frozen=True, slots=True)
class SupplyTree:
    """The central house's supply side.

    Attributes:
        network: Its sections.
        outlets: Keys of the branches at the outlets, in their order; empty for the others.
        names: What to call them.
        share: What part of the air each outlet should get.
        density_lb_ft3: Of the air there.
    """

    network: Network
    outlets: tuple[str, ...]
    names: tuple[str, ...]
    share: tuple[float, ...]
    density_lb_ft3: float

    def split(self, airflow_cfm: float) -> Split:
        """How an airflow splits, and the plenum pressure that takes."""
        return split_airflow(self.network, airflow_cfm, self.density_lb_ft3)


@dataclass(frozen=True, slots=True)
class _Ends:
    """What a tree takes from the house besides its sections."""

    register_inwc: float
    reference_cfm: float
    takeoff_share: float
    usual: Duct


def supply_tree(
    trunks: tuple[Duct, ...],
    branches: tuple[Duct, ...],
    lengths: Lengths,
    told_ft: dict[str, float],
    *,
    usual: Duct,
    register_inwc: float,
    reference_cfm: float,
    takeoff_share: float,
    ratio: float,
) -> SupplyTree | None:
    """Build the tree, or None where nobody stated branches or what they hang on.

    Args:
        trunks: Trunk sections, as stated or believed.
        branches: Branches, as stated.
        lengths: Lengths of a usual run, for sections without one.
        told_ft: Stated straight lengths by section key.
        usual: A branch like those nobody stated, standing for all of them.
        register_inwc: Drop of a register at its share of the reference airflow.
        reference_cfm: That airflow.
        takeoff_share: Share of a trunk's length that counts at its full airflow.
        ratio: Density over standard.
    """
    starts = [trunk for trunk in trunks if not trunk.parent]
    stated = [branch for branch in branches if branch.stated]
    if not stated or (len(starts) > 1 and any(not b.parent for b in stated)):
        return None
    ends = _Ends(register_inwc, reference_cfm, takeoff_share, usual)
    sections: list[Section] = []
    places: dict[str, int] = {}
    for trunk in _parents_first(trunks):
        places[trunk.key] = len(sections)
        sections.append(_trunk(trunk, places, lengths, told_ft, ends))
    home = places[starts[0].key] if len(starts) == 1 else None
    outlets, names, shares = [], [], []
    for branch in stated:
        at = places.get(branch.parent, home)
        sections.append(_branch(branch, at, lengths, told_ft, ends))
        outlets.append(branch.key)
        names.append(branch.where)
        shares.append(float(branch.share[0]))
    rest = 1.0 - sum(shares)
    if rest > _LEAST_SHARE:
        sections.append(_rest(usual, home, rest, lengths, ends))
        outlets.append("")
        names.append("the other branches")
        shares.append(rest)
    childless = set(range(len(sections))) - {s.parent for s in sections}
    if any(i < len(places) for i in childless):
        return None  # a trunk that nothing is known to hang on
    return SupplyTree(
        Network.of(sections),
        tuple(outlets),
        tuple(names),
        tuple(shares),
        STANDARD_DENSITY_LB_FT3 * ratio,
    )


def _parents_first(trunks: tuple[Duct, ...]) -> list[Duct]:
    ordered: list[Duct] = []
    keys: set[str] = set()
    waiting = list(trunks)
    while waiting:
        ready = [t for t in waiting if not t.parent or t.parent in keys] or waiting
        for trunk in ready:
            ordered.append(trunk)
            keys.add(trunk.key)
        waiting = [t for t in waiting if t.key not in keys]
    return ordered


def _trunk(
    trunk: Duct, places: dict[str, int], lengths: Lengths, told_ft: dict[str, float], ends: _Ends
) -> Section:
    believed = float(lengths.trunk_ft[0]) * (0.5 if trunk.parent else 1.0)
    fittings = 15.0 if trunk.parent else float(lengths.trunk_fittings_ft[0])
    straight = told_ft.get(trunk.key, believed)
    count = float(trunk.count[0]) if trunk.stated else float(1.0 / trunk.share[0])
    return Section(
        trunk.key,
        places.get(trunk.parent),
        float(trunk.area_ft2[0]),
        float(trunk.equivalent_in[0]),
        length_ft=min(straight * ends.takeoff_share, _LONGEST_FT),
        roughness_ft=float(trunk.roughness_ft[0]),
        slack_factor=_slack(trunk),
        fittings_ft=min(fittings, _LONGEST_FT),
        count=count,
    )


def _branch(
    branch: Duct,
    parent: int | None,
    lengths: Lengths,
    told_ft: dict[str, float],
    ends: _Ends,
) -> Section:
    count = float(branch.count[0])
    share = float(branch.share[0])
    return Section(
        branch.key,
        parent,
        float(branch.area_ft2[0]),
        float(branch.equivalent_in[0]),
        length_ft=told_ft.get(branch.key, float(lengths.branch_ft[0])),
        roughness_ft=float(branch.roughness_ft[0]),
        slack_factor=_slack(branch),
        fittings_ft=min(float(lengths.branch_fittings_ft[0]), _LONGEST_FT),
        drop_inwc=ends.register_inwc,
        drop_at_cfm=max(ends.reference_cfm * share / count, 1.0),
        count=count,
    )


def _rest(usual: Duct, parent: int | None, share: float, lengths: Lengths, ends: _Ends) -> Section:
    count = max(float(usual.count[0]) * share, 1.0)
    return Section(
        "the other branches",
        parent,
        float(usual.area_ft2[0]),
        float(usual.equivalent_in[0]),
        length_ft=float(lengths.branch_ft[0]),
        roughness_ft=float(usual.roughness_ft[0]),
        slack_factor=_slack(usual),
        fittings_ft=min(float(lengths.branch_fittings_ft[0]), _LONGEST_FT),
        drop_inwc=ends.register_inwc,
        drop_at_cfm=max(ends.reference_cfm * share / count, 1.0),
        count=count,
    )


def _slack(duct: Duct) -> float:
    if not duct.flexible[0]:
        return 1.0
    across = float(np.clip(duct.equivalent_in[0], 2.0, 30.0))
    return float(slack_factor(across, float(np.clip(duct.slack[0], 0.0, 0.6))))
