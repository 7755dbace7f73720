"""How the supply air really splits among the branches that were stated, in one house or in many.

The tree is trunk sections with branches hung on them; every branch ends in a register. It serves
two ends: the pressure that all the air feels, and the room that gets too little.
"""

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from engine.arrays import Array, Floats
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


Pick = Callable[[Array], Floats]
"""Of an array over all members, what the tree is built of: the central house's, or some."""


@dataclass(frozen=True, slots=True)
class SupplyTree:
    """The supply side of the central house, or of several members at once.

    Attributes:
        network: Its sections.
        outlets: Keys of the branches at the outlets, in their order; empty for the others.
        names: What to call them.
        share: What part of the air each outlet should get; scalars, or (m,) each.
        density_lb_ft3: Of the air there; scalar or (m,).
    """

    network: Network
    outlets: tuple[str, ...]
    names: tuple[str, ...]
    share: tuple[Floats, ...]
    density_lb_ft3: Floats

    def split(self, airflow_cfm: Floats) -> Split:
        """How an airflow splits, and the plenum pressure that takes."""
        return split_airflow(self.network, airflow_cfm, self.density_lb_ft3)


@dataclass(frozen=True, slots=True)
class _Ends:
    """What a tree takes from the house besides its sections."""

    register_inwc: Floats
    reference_cfm: float
    takeoff_share: float
    usual: Duct
    of: Pick


def supply_tree(
    trunks: tuple[Duct, ...],
    branches: tuple[Duct, ...],
    lengths: Lengths,
    told_ft: dict[str, Array],
    *,
    usual: Duct,
    register_inwc: Array,
    reference_cfm: float,
    takeoff_share: float,
    ratio: Array,
    members: slice | None = None,
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
        members: Members to build it of; the central house alone, in scalars, if None.
    """

    def of(values: Array) -> Floats:
        return float(values[0]) if members is None else values[members]

    starts = [trunk for trunk in trunks if not trunk.parent]
    stated = [branch for branch in branches if branch.stated]
    if not stated or (len(starts) > 1 and any(not b.parent for b in stated)):
        return None
    ends = _Ends(of(register_inwc), reference_cfm, takeoff_share, usual, of)
    sections: list[Section] = []
    places: dict[str, int] = {}
    for trunk in _parents_first(trunks):
        places[trunk.key] = len(sections)
        sections.append(_trunk(trunk, places, lengths, told_ft, ends))
    home = places[starts[0].key] if len(starts) == 1 else None
    outlets: list[str] = []
    names: list[str] = []
    shares: list[Floats] = []
    for branch in stated:
        at = places.get(branch.parent, home)
        sections.append(_branch(branch, at, lengths, told_ft, ends))
        outlets.append(branch.key)
        names.append(branch.where)
        shares.append(of(branch.share))
    rest = 1.0 - sum(shares)
    if float(np.min(rest)) > _LEAST_SHARE:
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
        STANDARD_DENSITY_LB_FT3 * of(ratio),
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
    trunk: Duct, places: dict[str, int], lengths: Lengths, told_ft: dict[str, Array], ends: _Ends
) -> Section:
    of = ends.of
    fittings = 15.0 if trunk.parent else of(lengths.trunk_fittings_ft)
    straight = (
        of(told_ft[trunk.key])
        if trunk.key in told_ft
        else of(lengths.trunk_ft) * (0.5 if trunk.parent else 1.0)
    )
    return Section(
        trunk.key,
        places.get(trunk.parent),
        of(trunk.area_ft2),
        of(trunk.equivalent_in),
        length_ft=np.minimum(straight * ends.takeoff_share, _LONGEST_FT),
        roughness_ft=of(trunk.roughness_ft),
        slack_factor=_slack(trunk, of),
        fittings_ft=np.minimum(fittings, _LONGEST_FT),
        count=of(trunk.count) if trunk.stated else 1.0 / of(trunk.share),
    )


def _branch(
    branch: Duct,
    parent: int | None,
    lengths: Lengths,
    told_ft: dict[str, Array],
    ends: _Ends,
) -> Section:
    of = ends.of
    straight = told_ft.get(branch.key, lengths.branch_ft)
    return _run(branch.key, branch, parent, (of(straight), of(lengths.branch_fittings_ft)),
                of(branch.share), of(branch.count), ends)  # fmt: skip


def _rest(usual: Duct, parent: int | None, share: Floats, lengths: Lengths, ends: _Ends) -> Section:
    of = ends.of
    count = np.maximum(of(usual.count) * share, 1.0)
    feet = (of(lengths.branch_ft), of(lengths.branch_fittings_ft))
    return _run("the other branches", usual, parent, feet, share, count, ends)


def _run(
    name: str,
    duct: Duct,
    parent: int | None,
    feet: tuple[Floats, Floats],
    share: Floats,
    count: Floats,
    ends: _Ends,
) -> Section:
    """Branches that end in registers; straight feet, and what their fittings are worth."""
    of = ends.of
    straight, fittings = feet
    return Section(
        name,
        parent,
        of(duct.area_ft2),
        of(duct.equivalent_in),
        length_ft=straight,
        roughness_ft=of(duct.roughness_ft),
        slack_factor=_slack(duct, of),
        fittings_ft=np.minimum(fittings, _LONGEST_FT),
        drop_inwc=ends.register_inwc,
        drop_at_cfm=np.maximum(ends.reference_cfm * share / count, 1.0),
        count=count,
    )


def _slack(duct: Duct, of: Pick) -> Floats:
    if not duct.flexible.any():
        return 1.0
    across = np.clip(of(duct.equivalent_in), 2.0, 30.0)
    factor = slack_factor(across, np.clip(of(duct.slack), 0.0, 0.6))
    return np.where(of(duct.flexible.astype(np.float64)), factor, 1.0)
