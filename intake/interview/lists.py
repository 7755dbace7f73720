"""Answers that state entries of a list: ducts, filters, openings, fittings, blower tables."""

from collections.abc import Callable, Mapping
from typing import Final

from engine.job.belief import Belief, How, Known, OneOf
from engine.job.job import Job
from intake.interview.bays import bay_facts
from intake.interview.beliefs import Facts, Knowing, belief_of, how_known, range_of
from intake.interview.list_rows import NO_FACTS, entries
from intake.interview.more_lists import blower, fittings, inside_table, rise, slack, tools
from intake.interview.question import Question
from intake.reading.result import Accepted, Values

__all__ = ["list_facts", "measured_where"]

_SIZES: Final = ("shape", "width_in", "height_in", "diameter_in")
_LINED: Final = ("lined_metal", "duct_board")

_PLACES: Final[Mapping[str, str]] = {
    "bare": "bare_metal",
    "inside": "inside",
    "liner": "inside",
    "over wrap": "over_wrap",
    "slots": "hole",
    "frame": "frame",
    "core": "flex_core",
    "jacket": "flex_jacket",
}
"""Where a tape was held as `reading` says it, and as the engine does."""


def measured_where(place: str | None, material: str | None) -> str | None:
    """The engine's word for where a size was read; None if it was not said.

    "Outside" is the bare metal of a plain duct and the outside of a lined one.
    """
    if place == "outside":
        return "outside_of_liner" if material in _LINED else "bare_metal"
    return _PLACES.get(place or "")


def list_facts(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """What a reading states about the list that the question fills.

    Raises:
        FactError: A value that no house has.
    """
    return _TAKERS[question.section](question, reading, knowing, job)


def _size(key: str, values: Values, knowing: Knowing) -> dict[str, Belief]:
    return {
        f"{key}.{name}": belief_of(f"{key}.{name}", values[name], knowing)
        for name in (*_SIZES, "material", "liner_in", "length_ft")
        if name in values and values[name] != "unknown"
    }


def _resized(key: str, values: Values) -> tuple[str, ...]:
    """The sizes of an earlier answer that this one replaces."""
    return tuple(f"{key}.{name}" for name in _SIZES) if "shape" in values else ()


def _alone_again(section: str, job: Job) -> tuple[tuple[str, ...], dict[str, Belief]]:
    """What is forgotten, and kept under another index, when one size replaces several."""
    entries = tuple(job.entries(section))
    hanging = [entry for entry in entries if job.is_known(f"{entry}.from")]
    if len(entries) - len(hanging) < 2:
        return (), {}
    kept: dict[str, Belief] = {}
    for index, entry in enumerate((f"{section}.0", *hanging)):
        for known, belief in job.beliefs.items():
            head, _, name = known.rpartition(".")
            if head == entry and (index or name not in (*_SIZES, "count")):
                kept[f"{section}.{index}.{name}"] = belief
    return (section,), kept


def _where(key: str, reading: Accepted, values: Values, job: Job) -> dict[str, Belief]:
    material = values.get("material") or job.word(f"{key}.material")
    place = str(values["place"]) if "place" in values else reading.place
    said = measured_where(place, str(material) if material else None)
    if said is None:
        return {}
    return {f"{key}.measured_where": Known(said, How.MEASURED)}


def _duct(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """One size of duct; several equal ones are one entry with a count.

    What is said without a size (material, where the tape was) holds for every entry beside it.
    """
    values = reading.values
    if "shape" not in values:
        return _about_ducts(question.section, reading, knowing, job)
    key = f"{question.section}.0"
    forget, kept = _alone_again(question.section, job)
    beliefs = kept | _size(key, values, knowing) | _where(key, reading, values, job)
    count = values.get("count")
    settles: tuple[str, ...] = ()
    if isinstance(count, int | float):
        beliefs[f"{key}.count"] = belief_of(f"{key}.count", float(count), knowing)
        settles = _COUNTED.get(question.section, ())
    elif question.section == "supply.trunks" and (forget or job.stated(f"{key}.count") is None):
        beliefs[f"{key}.count"] = _TRUNKS_UNTOLD
    return Facts(beliefs, {}, forget or _resized(key, values), settles)


def _about_ducts(section: str, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    beliefs: dict[str, Belief] = {}
    for key in tuple(job.entries(section)) or (f"{section}.0",):
        other = reading.place in _OF_FLEX and job.word(f"{key}.material") not in ("flex", None)
        if not job.is_known(f"{key}.from") and not other:
            beliefs |= _size(key, reading.values, knowing)
            beliefs |= _where(key, reading, reading.values, job)
    return Facts(beliefs)


_OF_FLEX: Final = ("core", "jacket")
"""Places of a tape that only flex has."""

_TRUNKS_UNTOLD: Final = OneOf(((1.0, 0.65), (2.0, 0.35)), How.ASSUMED)
"""Trunks of the told size that leave the plenum, while nobody said how many. Source: common
practice, no published source."""

_COUNTED: Final[Mapping[str, tuple[str, ...]]] = {
    "supply.trunks": ("trunk_count",),
    "supply.branches": ("branch_count",),
}
"""Questions that a count given with the size settles."""


def _ducts(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """Ducts of one size, or several of several sizes: an entry each, instead of those before."""
    if question.key == "trunk_count":
        return _trunk_count(reading, knowing)
    section, sizes = question.section, reading.values.get("ducts")
    if not isinstance(sizes, list):
        bays = (
            bay_facts(section, reading.values, knowing) if question.key == "return_trunk" else None
        )
        return bays or _duct(question, reading, knowing, job)
    rows = [size for size in sizes if isinstance(size, dict)]
    beliefs: dict[str, Belief] = {}
    for index, size in enumerate(rows):
        key = f"{section}.{index}"
        beliefs |= _size(key, size, knowing) | _where(key, reading, size, job)
        count = size.get("count", 1)
        beliefs[f"{key}.count"] = belief_of(f"{key}.count", count, knowing)
    return Facts(beliefs, {section: len(rows)}, (section,), _COUNTED.get(section, ()))


def _trunk_count(reading: Accepted, knowing: Knowing) -> Facts:
    key = "supply.trunks.0.count"
    count = reading.values.get("count")
    low, high = reading.values.get("count_low"), reading.values.get("count_high")
    if isinstance(low, int | float) and isinstance(high, int | float):
        return Facts({key: range_of(key, float(low), float(high), knowing)})
    if isinstance(count, int | float) and count >= 1:
        return Facts({key: belief_of(key, float(count), knowing)})
    return NO_FACTS


def _tall(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """Not really taller than wide: the two sides change places."""
    wide, tall = job.stated("supply.trunks.0.width_in"), job.stated("supply.trunks.0.height_in")
    if reading.values.get("yes") is False and wide is not None and tall is not None:
        return Facts(
            {"supply.trunks.0.width_in": tall, "supply.trunks.0.height_in": wide},
            settles=(question.key,),
        )
    return Facts(settles=(question.key,))


_STEP_SETTLED: Final = "step_down_found"


def _step_index(job: Job) -> int:
    for entry in job.entries("supply.trunks"):
        if job.is_known(f"{entry}.from"):
            return int(entry.rsplit(".", 1)[1])
    return max(1, job.length("supply.trunks") or 1)


def _step(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """A smaller piece further on: a section that hangs on the first trunk."""
    key = f"supply.trunks.{_step_index(job)}"
    values = dict(reading.values)
    beliefs = _size(key, values, knowing) | _where(key, reading, values, job)
    for name in ("material", "measured_where", "liner_in", "count"):
        of_trunk = job.stated(f"supply.trunks.0.{name}")
        if of_trunk is not None:
            beliefs.setdefault(f"{key}.{name}", of_trunk)
    if isinstance(values.get("count"), int):
        beliefs[f"{key}.count"] = belief_of(f"{key}.count", values["count"], knowing)
    beliefs[f"{key}.from"] = Known("supply.trunks.0", How.MEASURED)
    return Facts(beliefs, {}, _resized(key, values), (_STEP_SETTLED,))


def _step_share(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    entry = f"supply.trunks.{_step_index(job)}"
    key = f"{entry}.share_fraction"
    values = reading.values
    part = _part_of_trunks(entry, job) / 100.0
    low, high = values.get("percent_low"), values.get("percent_high")
    if isinstance(low, int | float) and isinstance(high, int | float):
        return Facts({key: range_of(key, low * part, high * part, knowing)})
    percent = values.get("percent")
    if not isinstance(percent, int | float):
        return NO_FACTS
    return Facts({key: Known(percent * part, how_known(key, knowing), knowing.hedged)})


def _part_of_trunks(entry: str, job: Job) -> float:
    """The part of equal trunks that step down: one of two is half of their air."""
    smaller, trunks = job.number(f"{entry}.count"), job.number("supply.trunks.0.count")
    return smaller / trunks if smaller and trunks and smaller < trunks else 1.0


def _filters(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    beliefs: dict[str, Belief] = {}
    rows = entries(reading.values, "filters")
    for index, row in enumerate(rows):
        for name in ("width_in", "height_in", "depth_in", "merv", "count"):
            value = row.get(name)
            if isinstance(value, int | float):
                key = f"filters.{index}.{name}"
                beliefs[key] = belief_of(key, float(value), knowing)
        if isinstance(row.get("place"), str):
            beliefs[f"filters.{index}.place"] = belief_of(
                f"filters.{index}.place", row["place"], knowing
            )
    for said in (one for one in reading.others if one.field == "@filter_place"):
        for index in range(1, len(rows)):
            key = f"filters.{index}.place"
            beliefs[key] = belief_of(key, said.values["choice"], knowing)
    if beliefs and max(len(rows), job.length("filters") or 0) > 1:
        return Facts(beliefs, {"filters": len(rows)}, ("filters",))
    forget = tuple(f"filters.0.{name}" for name in ("width_in", "height_in", "depth_in", "count"))
    return Facts(beliefs, {}, forget if beliefs else ())


def _thickness(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """A filter's depth, or the liner of a trunk or drop: of every entry made of the same."""
    value = reading.values.get("in")
    if not isinstance(value, int | float):
        return NO_FACTS
    name, _, fact = question.facts[0].rpartition(".0.")
    material = job.word(f"{name}.0.material")
    beliefs: dict[str, Belief] = {}
    for entry in tuple(job.entries(name)) or (f"{name}.0",):
        if job.word(f"{entry}.material") == material:
            beliefs[f"{entry}.{fact}"] = belief_of(f"{entry}.{fact}", float(value), knowing)
    return Facts(beliefs)


def _openings(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """Every opening in one answer; what was said of the tape before is kept."""
    values = reading.values
    said = measured_where(reading.place, None)
    kept = job.stated("return.grilles.0.measured_where")
    where = Known(said, How.MEASURED) if said in ("hole", "frame", "inside") else kept
    if question.key == "openings_where":
        if where is None:
            return NO_FACTS
        return Facts({f"{entry}.measured_where": where for entry in job.entries("return.grilles")})
    rows = entries(values, "grilles")
    beliefs: dict[str, Belief] = {}
    for index, row in enumerate(rows):
        key = f"return.grilles.{index}"
        for name in ("width_in", "height_in", "count"):
            value = row.get(name)
            if isinstance(value, int | float):
                beliefs[f"{key}.{name}"] = belief_of(f"{key}.{name}", float(value), knowing)
        if where is not None:
            beliefs[f"{key}.measured_where"] = where
    return Facts(beliefs, {"return.grilles": len(rows)}, ("return.grilles",))


_Taker = Callable[[Question, Accepted, Knowing, Job], Facts]
_TAKERS: Final[Mapping[str, _Taker]] = {
    "supply.trunks": _ducts,
    "supply.trunks.tall": _tall,
    "supply.trunks.step": _step,
    "supply.trunks.step_share": _step_share,
    "supply.branches": _ducts,
    "supply.branches.slack": slack,
    "return.drops": _ducts,
    "return.trunks": _ducts,
    "filters": _filters,
    "filters.depth": _thickness,
    "liner": _thickness,
    "return.grilles": _openings,
    "path.fittings": fittings,
    "tools": tools,
    "equipment.coil_outside_rating": inside_table,
    "equipment.filter_outside_rating": inside_table,
    "readings.rise": rise,
    "blower": blower,
}
"""Each list and how an answer to it is taken."""
