"""The smallest zone of a zoned system by itself: the house with only that zone's ducts open.

No bypass is counted on: it sends cold or hot air back to the equipment instead of to a room.
"""

from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from engine.job.belief import Belief, How, Known
from engine.job.job import Job
from engine.job.modes import Mode
from engine.job.sections import parent_of, where_of

__all__ = ["Zone", "lowest_stages", "smallest_zone"]

_TRUNKS, _BRANCHES, _REGISTERS = "supply.trunks", "supply.branches", "supply.registers"
_DUCTS_KEY: Final = "zones.smallest_ducts"
_COUNT_KEY: Final = "zones.smallest_registers_count"

_REGISTERS_PER_TON: Final = 3.8
"""Supply registers of a usual house, for one whose registers nobody counted (common practice)."""


@dataclass(frozen=True, slots=True)
class Zone:
    """The smallest zone alone.

    Attributes:
        job: The house with every other zone shut: only this zone's supply ducts are in it.
        ducts: What its ducts are called.
        registers_count: How many supply registers it has.
        open_fraction: That over all the registers of the house.
    """

    job: Job
    ducts: tuple[str, ...]
    registers_count: float
    open_fraction: float


def smallest_zone(job: Job) -> Zone | str:
    """The smallest zone's house, or what isn't known of its ducts, as a clause for a person.

    Known is: which trunks or branches the zone has (`zones.smallest_ducts`, their names or keys,
    with commas between) or, where one trunk feeds every zone through branches, how many registers
    it has (`zones.smallest_registers_count`).
    """
    if job.length(_TRUNKS) in (None, 0):
        return "the supply trunk isn't described"
    told = _told_ducts(job)
    if isinstance(told, str):
        return told
    trunks = _trunks(job, told)
    if not trunks:
        return "which of the trunks feeds it isn't told"
    branches = _branches(job, told)
    registers = job.number(_COUNT_KEY) or sum(_count(job, key) for key in branches)
    if not registers:
        return "how many supply registers it has isn't told"
    whole = max(_all_registers(job), registers)
    alone = _with_only(job, told, trunks, branches, registers)
    alone = alone.with_facts(
        {
            "house.supply_registers_count": Known(registers, How.DOCUMENT),
            "zones.open_fraction": Known(max(registers / whole, 0.05), How.DOCUMENT),
        }
    )
    names = tuple(where_of(job, key) for key in (told or trunks))
    return Zone(alone, names, registers, registers / whole)


def lowest_stages(modes: tuple[Mode, ...]) -> tuple[Mode, ...]:
    """The modes a single zone may call for: the lowest stage of cooling, and that of heating."""
    cooling = (Mode.COOLING_LOW, Mode.COOLING_HIGH)
    heating = (Mode.HEATING_LOW, Mode.HEATING_HIGH, Mode.HEAT_PUMP_HEATING)
    lowest = (next((m for m in side if m in modes), None) for side in (cooling, heating))
    return tuple(mode for mode in lowest if mode is not None)


def _told_ducts(job: Job) -> tuple[str, ...] | str:
    """Keys of the sections that were named; a clause where a name fits none."""
    found = []
    for word in (job.word(_DUCTS_KEY) or "").split(","):
        wanted = word.strip().lower()
        if not wanted:
            continue
        keys = (*job.entries(_TRUNKS), *job.entries(_BRANCHES))
        key = next((k for k in keys if wanted in (k, where_of(job, k).lower())), None)
        if key is None:
            return f"no supply trunk or branch is called {word.strip()!r}"
        found.append(key)
    return tuple(found)


def _trunks(job: Job, told: tuple[str, ...]) -> tuple[str, ...]:
    """Trunks the zone's air goes through: those named, those on the way, those hung on them."""
    entries = tuple(job.entries(_TRUNKS))
    wanted = {key for key in told if key in entries}
    below = {key for key in entries if wanted & set(_way(job, key))}
    for key in told:
        wanted |= set(_way(job, key)) & set(entries)
    for key in tuple(wanted):
        wanted |= set(_way(job, key)) & set(entries)
    if not wanted:
        starts = [key for key in entries if not parent_of(job, key)]
        return entries if len(starts) == 1 else ()
    return tuple(key for key in entries if key in wanted | below)


def _branches(job: Job, told: tuple[str, ...]) -> tuple[str, ...]:
    """Branches that were named, or that hang on the named trunks."""
    entries = tuple(job.entries(_BRANCHES))
    named = tuple(key for key in told if key in entries)
    trunks = {key for key in told if key not in entries}
    hung = (key for key in entries if key not in named and trunks & set(_way(job, key)))
    return (*named, *hung)


def _way(job: Job, key: str) -> list[str]:
    """The sections a section hangs on, up to the plenum."""
    found = []
    above = parent_of(job, key)
    while above:
        found.append(above)
        above = parent_of(job, above)
    return found


def _count(job: Job, key: str) -> float:
    return job.number(f"{key}.count") or 1.0


def _all_registers(job: Job) -> float:
    """Every supply register of the house: counted, else by its branches, else by its size."""
    told = job.number("house.supply_registers_count")
    if told is not None:
        return told
    branches = sum(_count(job, key) for key in job.entries(_BRANCHES))
    return max(branches, _REGISTERS_PER_TON * (job.number("equipment.cooling_tons") or 3.0))


def _with_only(
    job: Job,
    told: tuple[str, ...],
    trunks: tuple[str, ...],
    branches: tuple[str, ...],
    registers: float,
) -> Job:
    """The house with the other zones' supply ducts shut."""
    stated = tuple(job.entries(_BRANCHES))
    if not branches and len(stated) == 1:  # all alike: so many of them
        branches = stated
        job = job.with_fact(f"{stated[0]}.count", Known(registers, How.DOCUMENT))
    moved = {old: f"{_TRUNKS}.{place}" for place, old in enumerate(trunks)}
    moved |= {old: f"{_BRANCHES}.{place}" for place, old in enumerate(branches)}
    parents = {old: moved.get(parent_of(job, old), "") for old in moved}
    names = {old: where_of(job, old) for old in moved}
    shares = _shares(job, branches)
    whole = _carrying_all(job, told)
    facts: dict[str, Belief] = {}
    for old, new in moved.items():
        for key, belief in job.beliefs.items():
            if key.startswith(f"{old}."):
                facts[new + key.removeprefix(old)] = belief
        facts.pop(f"{new}.share_fraction", None)
        facts.pop(f"{new}.from", None)
        facts[f"{new}.name"] = Known(names[old], How.DOCUMENT)
        if parents[old]:
            facts[f"{new}.from"] = Known(parents[old], How.DOCUMENT)
        share = shares.get(old, 1.0 if parents[old] and old in whole else None)
        if share is not None:
            facts[f"{new}.share_fraction"] = Known(share, How.DOCUMENT)
    for prefix in (_TRUNKS, _BRANCHES, "zones", "house.zoned", "house.supply_registers_count"):
        job = job.without(prefix)
    if job.length(_REGISTERS) == 1:
        job = job.with_fact(f"{_REGISTERS}.0.count", Known(registers, How.DOCUMENT))
    else:
        job = job.without(_REGISTERS)
    return job.with_facts(MappingProxyType(facts))


def _carrying_all(job: Job, told: tuple[str, ...]) -> set[str]:
    """Sections that all of the zone's air goes through."""
    ways = [{key, *_way(job, key)} for key in told]
    return set.intersection(*ways) if ways else set()


def _shares(job: Job, branches: tuple[str, ...]) -> dict[str, float]:
    """What part of the zone's air each branch carries, where their shares were stated."""
    told = {key: job.number(f"{key}.share_fraction") for key in branches}
    stated = {key: share for key, share in told.items() if share}
    if not branches or len(stated) < len(branches):
        return {}
    whole = sum(stated.values())
    return {key: share / whole for key, share in stated.items()}
