"""Sections of duct as they are believed to be: clear size, share of the air, material.

`count` equal ducts stand in one section and carry `share` together. Sizes that were read over
liner, wrap or jacket are brought to the clear inside here; where nobody said where the tape was
held, the central house takes the size as it was told, and some samples hold that it was not.
"""

from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.errors import FactError
from engine.job.branch_share import branch_share
from engine.job.clear_size import clear_size_in
from engine.job.job import Job
from engine.job.priors import (
    DROP_IN2_PER_TON,
    RETURN_TRUNK_IN2_PER_TON,
    RETURN_TRUNK_OVER_DROP,
    TRUNK_IN2_PER_TON,
    TWO_TRUNKS,
    TWO_TRUNKS_AREA_RATIO,
    Range,
    tons_of_the_house,
    two_trunks,
)
from engine.job.sample import House, Mask
from engine.physics.duct import Shape, area_ft2, equivalent_diameter_in
from engine.trade.limits import Role
from engine.trade.materials import MATERIALS, Material, is_flexible

__all__ = ["ROLES", "Duct", "believed_round", "ducts_of", "usual_return_trunk", "usual_trunk"]

ROLES: Final = {
    "supply.trunks": Role.SUPPLY_TRUNK,
    "supply.branches": Role.SUPPLY_BRANCH,
    "return.drops": Role.RETURN_DROP,
    "return.trunks": Role.RETURN_TRUNK,
    "return.branches": Role.RETURN_BRANCH,
}

_WORDS: Final = {
    "supply.trunks": "supply trunk",
    "supply.branches": "supply branch",
    "return.drops": "return drop",
    "return.trunks": "return trunk",
    "return.branches": "return branch",
}


@dataclass(frozen=True, slots=True)
class Duct:
    """One section over the central house and the samples; every array is (n + 1,).

    Attributes:
        key: Its key in the job ("supply.trunks.0"), also where nobody stated it.
        role: What it does.
        where: What to call it.
        stated: Whether somebody stated that it is there.
        shape: Cross-section.
        width_in: Clear width; None for round.
        height_in: Clear height; None for round.
        diameter_in: Clear diameter; None otherwise.
        area_ft2: Clear area of one duct.
        equivalent_in: Equivalent diameter of one duct.
        count: Equal ducts in it.
        share: Share of all the air that the section carries.
        material: Of the central house.
        flexible: Where the limits of flexible duct apply.
        roughness_ft: Roughness.
        slack: Share of its length that flex is short of being stretched; 0 for rigid duct.
        parent: Key of the section it hangs on; empty for the plenum.
        rests_on: Keys that its size, share and material come from.
    """

    key: str
    role: Role
    where: str
    stated: bool
    shape: Shape
    width_in: Array | None
    height_in: Array | None
    diameter_in: Array | None
    area_ft2: Array
    equivalent_in: Array
    count: Array
    share: Array
    material: Material
    flexible: Mask
    roughness_ft: Array
    slack: Array
    parent: str
    rests_on: tuple[str, ...]

    @property
    def list_name(self) -> str:
        """The list it stands in."""
        return self.key.rsplit(".", 1)[0]

    @property
    def size_keys(self) -> tuple[str, ...]:
        """Keys of its dimensions."""
        if self.shape is Shape.ROUND:
            return (f"{self.key}.diameter_in",)
        return (f"{self.key}.width_in", f"{self.key}.height_in")

    @property
    def total_area_ft2(self) -> Array:
        """Clear area of all its ducts."""
        return self.area_ft2 * self.count


def ducts_of(house: House, name: str) -> tuple[Duct, ...]:
    """The sections of a list: as stated, or what is believed where nobody spoke of it.

    Args:
        house: The house.
        name: A list of sections of the catalogue.

    Returns:
        Sections in their order with shares filled in; empty where the list was stated to be empty,
        and for branches and return trunks nobody spoke of.
    """
    return house.once(f"ducts of {name}", lambda: _ducts_of(house, name))


def _ducts_of(house: House, name: str) -> tuple[Duct, ...]:
    stated = house.job.length(name)
    if stated is None:
        if name == "supply.trunks":
            return (usual_trunk(house),)
        if name == "return.drops":
            return (_usual(house, name, DROP_IN2_PER_TON, house.full(1.0), house.full(1.0)),)
        return ()
    entries = [_stated_duct(house, name, key) for key in house.job.entries(name)]
    return _with_shares(house, name, entries)


def usual_trunk(house: House) -> Duct:
    """One trunk of the one or two that are believed to leave the plenum."""
    two = two_trunks(house)
    share = np.where(two, 0.5, 1.0)
    size = np.where(two, 0.5 * TWO_TRUNKS_AREA_RATIO, 1.0)
    found = _usual(house, "supply.trunks", TRUNK_IN2_PER_TON, share, size)
    return replace(found, rests_on=(*found.rests_on, "supply.trunks"))


def usual_return_trunk(house: House) -> Duct:
    """One of the one or two return trunks believed to be there; one for each stated drop."""
    found = house.as_found or house  # a new drop makes no return trunk larger
    led_to = ducts_of(found, "return.drops")  # stated or believed: what is learnt of one tells
    drops = sum(float(drop.count[0]) for drop in led_to)
    two = house.is_word("return.trunks count", "two", prior=TWO_TRUNKS, fact="return.trunks")
    each = 1.0 / drops if drops > 1 else np.where(two, 0.5, 1.0)
    size = np.where(each < 1.0, each * TWO_TRUNKS_AREA_RATIO, 1.0)
    share = house.full(1.0) * each
    if not led_to:
        return _usual(house, "return.trunks", RETURN_TRUNK_IN2_PER_TON, share, size)
    over = RETURN_TRUNK_OVER_DROP
    ratio = house.assumed(
        "return.trunks over drop", over.low, over.likely, over.high, fact="return.trunks"
    )
    drops_in2 = 144.0 * sum((drop.total_area_ft2 for drop in led_to), house.full(0.0))
    area_in2 = drops_in2 * np.maximum(ratio, over.least) * size
    return _of_area(house, "return.trunks", area_in2, share)


def believed_round(
    house: House, name: str, diameter: Array, count: Array, flexible: Mask, slack: Array
) -> Duct:
    """Round ducts nobody spoke of, all of a list together, carrying all the air."""
    stretched, metal = MATERIALS[Material.FLEX], MATERIALS[Material.GALVANIZED]
    roughness = np.where(flexible, stretched.roughness_likely_ft, metal.roughness_likely_ft)
    return Duct(
        key=f"{name}.0",
        role=ROLES[name],
        where=_WORDS[name],
        stated=False,
        shape=Shape.ROUND,
        width_in=None,
        height_in=None,
        diameter_in=diameter,
        area_ft2=np.asarray(area_ft2(Shape.ROUND, diameter_in=diameter)),
        equivalent_in=diameter,
        count=count,
        share=house.full(1.0),
        material=Material.GALVANIZED,
        flexible=flexible,
        roughness_ft=roughness,
        slack=slack,
        parent="",
        rests_on=(name,),
    )


def _usual(house: House, name: str, per_ton: Range, share: Array, size: Array) -> Duct:
    key = f"{name}.0"
    tons = tons_of_the_house(house) * size
    each_ton = house.assumed(
        f"{key} in2 per ton", per_ton.low, per_ton.likely, per_ton.high, fact=name
    )
    return _of_area(house, name, tons * np.maximum(each_ton, per_ton.least), share)


_WIDEST_IN: Final = 40.0
"""No believed duct is wider or taller (judgement)."""


def _of_area(house: House, name: str, area_in2: Array, share: Array) -> Duct:
    """A believed rectangular duct of an area, of a usual height."""
    key = f"{name}.0"
    height = house.assumed(f"{key} usual height", 8.0, 8.0, 10.0, fact=name)
    width = np.clip(area_in2 / height, 5.0, _WIDEST_IN)
    height = np.clip(area_in2 / width, height, _WIDEST_IN)
    return _duct(
        house,
        key,
        name,
        Shape.RECT,
        (width, height, None),
        stated=False,
        share=share,
        rests_on=(name,),
    )


def _stated_duct(house: House, name: str, key: str) -> Duct:
    shape = _shape(house, key)
    rests = [f"{key}.shape"] if f"{key}.shape" in house.job.beliefs else []
    material = _material(house, key, shape)
    width = height = diameter = None
    if shape is Shape.ROUND:
        diameter = clear_size_in(house, key, "diameter_in", material)
        rests.append(f"{key}.diameter_in")
    else:
        width = clear_size_in(house, key, "width_in", material)
        height = clear_size_in(house, key, "height_in", material)
        rests += [f"{key}.width_in", f"{key}.height_in"]
    for name_of in ("count", "liner_in", "measured_where", "material"):
        if f"{key}.{name_of}" in house.job.beliefs:
            rests.append(f"{key}.{name_of}")
    share = house.stated_number(f"{key}.share_fraction")
    if share is not None:
        rests.append(f"{key}.share_fraction")
    return _duct(
        house,
        key,
        name,
        shape,
        (width, height, diameter),
        stated=True,
        share=house.full(np.nan) if share is None else share,
        rests_on=tuple(rests),
        material=material,
    )


def _duct(
    house: House,
    key: str,
    name: str,
    shape: Shape,
    size: tuple[Array | None, Array | None, Array | None],
    *,
    stated: bool,
    share: Array,
    rests_on: tuple[str, ...],
    material: Material = Material.GALVANIZED,
) -> Duct:
    width, height, diameter = size
    row = MATERIALS[material]
    count = house.stated_number(f"{key}.count") if stated else None
    role = ROLES[name]
    if role is Role.SUPPLY_BRANCH and house.job.word(f"{key}.is_riser") == "yes":
        role = Role.RISER
    flexible = np.full(house.members, is_flexible(material))
    slack = house.full(0.0)
    if is_flexible(material):
        slack = np.maximum(house.number(f"{key}.slack_fraction"), 0.0)
    return Duct(
        key=key,
        role=role,
        where=where_of(house.job, key),
        stated=stated,
        shape=shape,
        width_in=width,
        height_in=height,
        diameter_in=diameter,
        area_ft2=np.asarray(area_ft2(shape, width, height, diameter)),
        equivalent_in=np.asarray(equivalent_diameter_in(shape, width, height, diameter)),
        count=house.full(1.0) if count is None else count,
        share=share,
        material=material,
        flexible=flexible,
        roughness_ft=house.assumed(
            f"{key} roughness",
            row.roughness_low_ft,
            row.roughness_likely_ft,
            row.roughness_high_ft,
        ).clip(1e-5, 0.02),
        slack=slack,
        parent=parent_of(house.job, key),
        rests_on=rests_on,
    )


def _shape(house: House, key: str) -> Shape:
    told = house.job.word(f"{key}.shape")
    if told is not None:
        return Shape(told)
    has_sides = f"{key}.width_in" in house.job.beliefs or f"{key}.height_in" in house.job.beliefs
    if f"{key}.diameter_in" in house.job.beliefs and not has_sides:
        return Shape.ROUND
    return Shape.ROUND if key.startswith("supply.branches") and not has_sides else Shape.RECT


def _material(house: House, key: str, shape: Shape) -> Material:
    told = house.job.word(f"{key}.material")
    if told is not None:
        return Material(told)
    if shape is not Shape.ROUND and (house.job.number(f"{key}.liner_in") or 0.0) > 0.0:
        return Material.LINED_METAL
    return Material.GALVANIZED


def where_of(job: Job, key: str) -> str:
    """What to call a section: the name somebody gave it, else its usual words."""
    told = job.word(f"{key}.name")
    if told:
        return told
    name, _, index = key.rpartition(".")
    alone = (job.length(name) or 1) == 1
    return _WORDS[name] if alone else f"{_WORDS[name]} {int(index) + 1}"


def parent_of(job: Job, key: str) -> str:
    """Key of the section that a section's `from` names; empty for the plenum.

    Raises:
        FactError: `from` names no section, by key, by name or by its usual words; or one that in
            turn hangs on this section.
    """
    parent = _named_section(job, key)
    above, steps = parent, 0
    while above:
        steps += 1
        if above == key or steps > 100:
            raise FactError(f"{key}.from", "hangs on itself; say what it really comes from")
        above = _named_section(job, above)
    return parent


def _named_section(job: Job, key: str) -> str:
    told = job.word(f"{key}.from")
    if told is None or told.strip().lower() in ("", "plenum", "none"):
        return ""
    wanted = told.strip().lower()
    for name in ROLES:
        for other in job.entries(name):
            if other != key and wanted in (other, where_of(job, other).lower()):
                return other
    raise FactError(f"{key}.from", f"names no section: {told!r}; say a section's name or its key")


def _with_shares(house: House, name: str, ducts: list[Duct]) -> tuple[Duct, ...]:
    """Shares nobody stated: what is left of the whole, by area, among those without."""
    if name == "supply.branches":
        return tuple(
            replace(
                duct,
                share=branch_share(house, duct, ducts),
                rests_on=(*duct.rests_on, f"{duct.key}.share_fraction"),
            )
            if np.isnan(duct.share).any()
            else duct
            for duct in ducts
        )
    left = house.full(1.0)
    waiting_area = house.full(0.0)
    for duct in ducts:
        if duct.parent:
            continue
        if np.isnan(duct.share).any():
            waiting_area = waiting_area + duct.total_area_ft2
        else:
            left = left - duct.share
    left = np.maximum(left, 0.05)
    found: list[Duct] = []
    shares: dict[str, Array] = {}
    alone = sum(not duct.parent and bool(np.isnan(duct.share).any()) for duct in ducts) == 1
    for duct in ducts:
        share = duct.share
        rests = duct.rests_on
        if np.isnan(share).any():
            rests = (*rests, f"{duct.key}.share_fraction") if not alone or duct.parent else rests
            if duct.parent:
                above = shares.get(duct.parent, house.full(1.0))
                share = above * house.assumed(
                    f"{duct.key} part of its trunk",
                    0.35,
                    0.55,
                    0.75,
                    fact=f"{duct.key}.share_fraction",
                )
            else:
                share = left * duct.total_area_ft2 / waiting_area
                if not alone:
                    share = share * house.assumed(
                        f"{duct.key} uneven", 0.9, 1.0, 1.1, fact=f"{duct.key}.share_fraction"
                    )
        shares[duct.key] = share
        found.append(replace(duct, share=np.minimum(share, 1.0), rests_on=rests))
    return tuple(found)
