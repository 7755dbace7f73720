"""What the blower pushes against: return duct, filter, coil, strips and supply duct, in series.

Each part is a drop at a reference airflow that grows with a power of it. Ducts come from their
sizes and lengths as far as these are known: every section's friction counts by the share of the
air that meets it, so that the sum is the pressure that all the air feels, not that of its worst
run. New coil and filter come from the maker's figures.
"""

from dataclasses import replace
from typing import Final

import numpy as np

from engine.arrays import Array, Floats
from engine.job.lengths import Lengths, lengths_of
from engine.job.modes import Mode
from engine.job.openings import FilterBank, Openings, filters_of, openings_of
from engine.job.path import PartDrop, System
from engine.job.priors import (
    BRANCH_DIAMETER_IN,
    FILTER_DROP_AT_300_FPM,
    RETURN_TRUNK_THERE,
    tons_of_the_house,
)
from engine.job.sample import House, Mask
from engine.job.sections import Duct, believed_round, ducts_of, usual_return_trunk
from engine.job.supply_tree import SupplyTree, supply_tree
from engine.job.targets import air_ratio, modes_of
from engine.physics.air import STANDARD_DENSITY_LB_FT3
from engine.physics.flex import slack_factor
from engine.physics.friction import friction_inwc_per_100ft
from engine.trade.allowances import WET_OVER_DRY_COIL
from engine.trade.exponents import EXPONENTS, PressurePart

__all__ = [
    "PartDrop",
    "System",
    "exponent_of",
    "has_return_trunk",
    "is_coil_inside",
    "is_filter_inside",
    "present_filter_inwc",
    "system_of",
    "tree_of",
    "usual_branches",
]

_DOUBT: Final = (0.70, 1.0, 1.45)
"""What a duct's pressure may be over what its sizes give, one in ten outside at either end:
dampers, dents, leaks and pieces nobody saw. Source: common practice, no published source."""

_STRIPS_INSIDE: Final = {"no": 0.6, "yes": 0.4}
"""Whether a blower's table was taken with its electric heat kit; makers do either. Source: common
practice, no published source."""

_TAKEOFF_SHARE: Final = 0.40
"""Straight trunk that counts at full airflow, because air leaves along the way. Between 0.26 for
even takeoffs and 1 for none (computed)."""


def system_of(house: House, reference_cfm: float, cooling_cfm: Array | None) -> System:
    """The path of the air as it will be, with the new pieces.

    Args:
        house: The house.
        reference_cfm: Largest target of the central house: where allowances hold in full.
        cooling_cfm: Target of the cooling mode, where an unlisted coil drop is believed; None
            where nothing cools, and there is no coil.
    """
    openings = openings_of(house)
    lengths = lengths_of(house)
    ratio = air_ratio(house)
    parts: dict[PressurePart, PartDrop] = {
        PressurePart.RETURN_DUCT: _return_duct(house, lengths, openings, reference_cfm, ratio)
    }
    filters = _filter(house, reference_cfm, ratio)
    if filters is not None:
        parts[PressurePart.FILTER] = filters
    if cooling_cfm is not None:
        parts[PressurePart.COIL] = _coil(house, reference_cfm, cooling_cfm, ratio)
    if Mode.STRIP_HEAT in modes_of(house.job):
        parts[PressurePart.STRIP_HEAT] = _strips(house, ratio)
    parts[PressurePart.SUPPLY_DUCT] = _supply_duct(house, lengths, reference_cfm, ratio)
    wet = WET_OVER_DRY_COIL
    return System(
        reference_cfm,
        parts,
        house.assumed("wet over dry coil", wet.low, wet.likely, wet.high).clip(1.0, 2.0),
    )


def exponent_of(house: House, part: PressurePart) -> Array:
    """A part's exponent as a belief, (n + 1,)."""
    row = EXPONENTS[part]
    name = "duct exponent" if row is EXPONENTS[PressurePart.SUPPLY_DUCT] else f"{part} exponent"
    return house.assumed(name, row.low, row.likely, row.high).clip(1.0, 2.2)


def is_coil_inside(house: House) -> Mask:
    """Where the blower's table or rating already includes the coil."""
    told = house.job.word("equipment.coil_outside_rating")
    if told is not None:
        return np.full(house.members, told == "no")
    kind = house.job.word("equipment.kind")
    if kind in ("furnace", "dual_fuel"):
        return np.zeros(house.members, dtype=bool)
    if kind is not None:
        return np.ones(house.members, dtype=bool)
    return house.is_word(
        "coil inside the rating", "yes", prior={"no": 0.65, "yes": 0.35}, fact="equipment.kind"
    )


def is_filter_inside(house: House, *, at_grille: bool) -> Mask:
    """Where the blower's table or rating already includes the filter."""
    if at_grille:
        return np.zeros(house.members, dtype=bool)
    told = house.job.word("equipment.filter_outside_rating")
    if told is not None:
        return np.full(house.members, told == "no")
    is_furnace = house.job.word("equipment.kind") in ("furnace", "dual_fuel")
    weights = {"no": 0.85, "yes": 0.15} if is_furnace else {"no": 0.6, "yes": 0.4}
    return house.is_word(
        "filter inside the rating", "yes", prior=weights, fact="equipment.filter_outside_rating"
    )


def _never(house: House) -> Mask:
    return np.zeros(house.members, dtype=bool)


def _doubted(house: House, name: str) -> Array:
    return house.assumed(f"{name} doubt", *_DOUBT, fact="readings").clip(0.4, 4.0)


def _listed(
    house: House, name: str, reference_cfm: float, default_cfm: Floats, exponent: Array
) -> tuple[Array, tuple[str, ...], str]:
    """A maker's drop brought from its listed airflow to the reference, in standard air."""
    key, at_key = f"new.{name}_drop_inwc", f"new.{name}_drop_at_cfm"
    drop = house.number(key)
    at = house.stated_number(at_key)
    listed = np.broadcast_to(np.asarray(default_cfm if at is None else at), drop.shape)
    keys = (key,) if at is None else (key, at_key)
    words = f"{drop[0]:.2f} in. at {listed[0]:,.0f} CFM"
    return drop * (reference_cfm / listed) ** exponent, keys, words


def _coil(house: House, reference_cfm: float, cooling_cfm: Array, ratio: Array) -> PartDrop:
    exponent = exponent_of(house, PressurePart.COIL)
    drop, keys, words = _listed(house, "coil", reference_cfm, cooling_cfm, exponent)
    inside = is_coil_inside(house)
    return PartDrop(drop * ratio, exponent, inside, (*keys, "equipment.coil_outside_rating"), words)


def _strips(house: House, ratio: Array) -> PartDrop:
    """The electric heat kit: in the way of the air in every mode, on or off."""
    key, inside_key = "new.strip_drop_inwc", "equipment.strip_outside_rating"
    drop = house.number(key)
    told = house.job.word(inside_key)
    inside = (
        house.is_word("strips inside the rating", "yes", prior=_STRIPS_INSIDE, fact=inside_key)
        if told is None
        else np.full(house.members, told == "no")
    )
    exponent = house.full(EXPONENTS[PressurePart.STRIP_HEAT].likely)
    words = f"{drop[0]:.2f} in. at the full airflow"
    return PartDrop(drop * ratio, exponent, inside, (key, inside_key), words)


def _filter(house: House, reference_cfm: float, ratio: Array) -> PartDrop | None:
    banks = filters_of(house)
    if not banks:
        return None
    exponent = exponent_of(house, PressurePart.FILTER)
    at_grille = banks[0].place == "grille" and len(banks) == 1
    inside = is_filter_inside(house, at_grille=at_grille)
    keys: tuple[str, ...]
    if "new.filter_drop_inwc" in house.job.beliefs:
        drop, keys, words = _listed(house, "filter", reference_cfm, reference_cfm, exponent)
    else:
        drop = _by_faces(house, banks, reference_cfm, exponent)
        keys = (*(key for bank in banks for key in bank.rests_on), "new.filter_drop_inwc")
        words = f"a clean filter of {banks[0].sizes}"
    keys = (*keys, "equipment.filter_outside_rating")
    return PartDrop(drop * ratio, exponent, inside, tuple(dict.fromkeys(keys)), words)


def present_filter_inwc(house: House, reference_cfm: float) -> tuple[Array, Array] | None:
    """Clean drop of the filters that are there, by their size, and its exponent; None without any.

    In this site's air, at the reference airflow, (n + 1,) each.
    """
    banks = filters_of(house)
    if not banks:
        return None
    exponent = exponent_of(house, PressurePart.FILTER)
    return _by_faces(house, banks, reference_cfm, exponent) * air_ratio(house), exponent


def _by_faces(
    house: House, banks: tuple[FilterBank, ...], reference_cfm: float, exponent: Array
) -> Array:
    drop = house.full(0.0)
    for bank in banks:
        one = _by_face(house, bank, reference_cfm, exponent)
        drop = drop + np.where(bank.present, one, 0.0)
    return drop


def _by_face(house: House, bank: FilterBank, reference_cfm: float, exponent: Array) -> Array:
    """Drop of a clean filter nobody has a figure for, by its face speed and depth."""
    depths = tuple(FILTER_DROP_AT_300_FPM)
    rows = [FILTER_DROP_AT_300_FPM[d] for d in depths]
    low, likely, high = (
        np.interp(bank.depth_in, depths, [getattr(row, name) for row in rows])
        for name in ("low", "likely", "high")
    )
    at_300 = house.assumed(
        "filter drop at 300 fpm", low, likely, high, fact="new.filter_drop_inwc"
    ).clip(0.01, 0.6)
    return at_300 * (reference_cfm / bank.area_ft2 / 300.0) ** exponent


def _friction(
    house: House, duct: Duct, airflow_cfm: float, feet: Array, fittings: Array, ratio: Array
) -> Array:
    """Pressure that the air in one section loses at its share of an airflow."""
    flow = np.maximum(airflow_cfm * duct.share / duct.count, 1.0)
    rate = friction_inwc_per_100ft(
        flow,
        np.maximum(duct.equivalent_in, 2.0),
        duct.roughness_ft,
        STANDARD_DENSITY_LB_FT3 * ratio,
    )
    slack = np.ones_like(flow)
    if duct.flexible.any():
        beyond = house.assumed("flex beyond its tests", 0.1, 0.5, 0.9).clip(0.0, 1.0)
        across = duct.equivalent_in.clip(2.0, 30.0)
        stretched = slack_factor(across, duct.slack.clip(0.0, 0.6), beyond)
        slack = np.where(duct.flexible, stretched, 1.0)
    return np.asarray(rate * (feet * slack + fittings) / 100.0)


def _weighted(
    house: House, ducts: tuple[Duct, ...], airflow_cfm: float, feet: Array, fittings: Array,
    ratio: Array, part: float = 1.0,
) -> Array:  # fmt: skip
    """Pressure of sections side by side, each by the share of the air that meets it."""
    loss = house.full(0.0)
    for duct in ducts:
        told = house.stated_number(f"{duct.key}.length_ft")
        straight = feet if told is None else told
        one = _friction(house, duct, airflow_cfm, straight * part, fittings, ratio)
        loss = loss + np.minimum(duct.share, 1.0) * one
    return loss


def _supply_duct(house: House, lengths: Lengths, reference_cfm: float, ratio: Array) -> PartDrop:
    trunks = ducts_of(house, "supply.trunks")
    branches = ducts_of(house, "supply.branches")
    if house.job.length("supply.branches") is None:
        branches = (usual_branches(house),)
    first = tuple(t for t in trunks if not t.parent)
    whole = sum((t.share for t in first), start=house.full(0.0))
    first = tuple(_as_all_the_trunks(house, t) for t in first) if whole[0] < 0.99 else first
    further = tuple(t for t in trunks if t.parent)
    loss = _weighted(
        house, first, reference_cfm, lengths.trunk_ft, lengths.trunk_fittings_ft, ratio,
        _TAKEOFF_SHARE,
    )  # fmt: skip
    loss = loss + _weighted(
        house, further, reference_cfm, lengths.trunk_ft * 0.5, house.full(15.0), ratio,
        _TAKEOFF_SHARE,
    )  # fmt: skip
    whole = sum((b.share for b in branches), start=house.full(0.0))
    run = _weighted(
        house, branches, reference_cfm, lengths.branch_ft, lengths.branch_fittings_ft, ratio
    )
    loss = loss + run / np.maximum(whole, 0.05)  # branches nobody stated do as the stated ones
    register = _register_inwc(house)
    keys = ["new.register_drop_inwc", *lengths.supply_keys]
    if "new.damper_drop_inwc" in house.job.beliefs:
        register = register + house.number("new.damper_drop_inwc")
        keys.append("new.damper_drop_inwc")
    keys += [key for duct in (*trunks, *branches) for key in duct.rests_on]
    tree = tree_of(house, trunks, branches, lengths, reference_cfm)
    if tree is not None:  # where branches are known, all the air feels what their tree asks for
        nominal = float(loss[0] + register[0] * ratio[0])
        loss = loss * (float(tree.split(reference_cfm).plenum_inwc) / nominal)
    drop = loss * _doubted(house, "supply duct") + register * ratio
    exponent = exponent_of(house, PressurePart.SUPPLY_DUCT)
    return PartDrop(drop, exponent, _never(house), tuple(dict.fromkeys(keys)))


def _register_inwc(house: House) -> Array:
    """A register's drop at the full airflow; with zones shut each open one takes more of it."""
    opened = house.stated_number("zones.open_fraction")
    drop = house.number("new.register_drop_inwc")
    return drop if opened is None else drop / np.square(opened)


def tree_of(
    house: House,
    trunks: tuple[Duct, ...],
    branches: tuple[Duct, ...],
    lengths: Lengths,
    reference_cfm: float,
    members: slice | None = None,
) -> SupplyTree | None:
    """A house's supply tree, of the central house alone or of some members; None where nobody
    stated branches."""
    told = {d.key: house.stated_number(f"{d.key}.length_ft") for d in (*trunks, *branches)}
    return supply_tree(
        trunks,
        branches,
        lengths,
        {key: feet for key, feet in told.items() if feet is not None},
        usual=usual_branches(house),
        register_inwc=_register_inwc(house),
        reference_cfm=reference_cfm,
        takeoff_share=_TAKEOFF_SHARE,
        ratio=air_ratio(house),
        members=members,
    )


def _as_all_the_trunks(house: House, trunk: Duct) -> Duct:
    """The believed one of two trunks stands for both: the air in it feels what all air feels."""
    return (
        replace(trunk, count=1.0 / np.maximum(trunk.share, 0.05), share=house.full(1.0))
        if (not trunk.stated)
        else trunk
    )


def usual_branches(house: House) -> Duct:
    """Branches nobody spoke of: round, as many as the registers, some of them flex."""
    key = "supply.branches"
    tons = tons_of_the_house(house)
    registers = house.stated_number("house.supply_registers_count")
    if registers is None:
        registers = np.maximum(
            tons * house.assumed("supply.branches per ton", 3.0, 3.8, 5.0, fact="supply.branches"),
            3.0,
        )
    r = BRANCH_DIAMETER_IN
    diameter = house.assumed(f"{key} diameter", r.low, r.likely, r.high, fact=key).clip(4.0, 9.0)
    flexible = house.is_word(f"{key} flex", "yes", prior={"no": 0.7, "yes": 0.3}, fact=key)
    slack = house.assumed(f"{key} slack", 0.03, 0.12, 0.28, fact=key).clip(0.0, 0.45)
    return believed_round(house, key, diameter, registers, flexible, slack)


def _return_duct(
    house: House, lengths: Lengths, openings: Openings | None, reference_cfm: float, ratio: Array
) -> PartDrop:
    drops = ducts_of(house, "return.drops")
    trunks = ducts_of(house, "return.trunks")
    branches = ducts_of(house, "return.branches")
    loss = _weighted(house, drops, reference_cfm, house.full(5.0), lengths.drop_fittings_ft, ratio)
    if house.job.length("return.trunks") is None:
        usual = _weighted(
            house, (_as_all_the_trunks(house, usual_return_trunk(house)),), reference_cfm,
            lengths.return_ft, lengths.return_fittings_ft, ratio,
        )  # fmt: skip
        loss = loss + np.where(has_return_trunk(house), usual, 0.0)
    else:
        loss = loss + _weighted(
            house, trunks, reference_cfm, lengths.return_ft, lengths.return_fittings_ft, ratio
        )
    loss = loss + _weighted(
        house, branches, reference_cfm, house.full(12.0), house.full(35.0), ratio
    )
    loss = loss * _doubted(house, "return duct")
    keys = [key for duct in (*drops, *trunks, *branches) for key in duct.rests_on]
    if openings is not None:
        loss = loss + _grille_drop(house, openings, reference_cfm) * ratio
        keys += openings.rests_on
    keys += lengths.return_keys
    exponent = exponent_of(house, PressurePart.RETURN_DUCT)
    return PartDrop(loss, exponent, _never(house), tuple(dict.fromkeys(keys)))


def has_return_trunk(house: House) -> Mask:
    """Where a return trunk is believed to stand before the drop, if nobody spoke of one."""
    return house.is_word("return trunk", "yes", prior=RETURN_TRUNK_THERE, fact="return.trunks")


def _grille_drop(house: House, openings: Openings, reference_cfm: float) -> Array:
    if "new.grille_drop_inwc" in house.job.beliefs:
        return house.number("new.grille_drop_inwc")
    at_400 = house.assumed(
        "grille drop at 400 fpm", 0.02, 0.03, 0.05, fact="new.grille_drop_inwc"
    ).clip(0.005, 0.15)
    return at_400 * np.square(reference_cfm / openings.area_ft2 / 400.0)
