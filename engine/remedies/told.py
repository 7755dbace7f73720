"""What is said beside the changes and never counted among them: measure first, clean, seal."""

from collections.abc import Iterator
from typing import Final

from engine.job.job import Job
from engine.job.sections import ducts_of
from engine.remedies.air_side import conditional_candidates
from engine.remedies.candidate import Candidate, Situation
from engine.verdict import Part

__all__ = ["openings_known", "told_candidates"]

_LAST: Final = 100.0
_LEAK_WORTH_SEALING: Final = 0.10
_DIRTY: Final = ("some_dirt", "plugged")


def told_candidates(at: Situation) -> Iterator[Candidate]:
    """Sizes to measure before a change can be planned; cleaning; sealing."""
    yield from _measure_first(at)
    yield from _clean(at.job)
    yield from _seal(at)


def _told(
    key: str, words: str, hours: tuple[float, float], cautions: tuple[str, ...] = ()
) -> Candidate:
    return Candidate(key, words, hours, _LAST, key, None, cautions=cautions)


def _measure_first(at: Situation) -> Iterator[Candidate]:
    starved = at.lacks_pressure
    for name, part, key, words in _SECTIONS:
        if not (starved or at.is_over(part)):
            continue
        spoken = at.job.length(name)
        ducts = [d for d in ducts_of(at.assessment.house, name) if d.stated]
        if spoken is None or not all(at.is_size_known(d) for d in ducts):
            yield _told(key, f"Measure first: {words}", (0.1, 0.3))
    if (starved or at.is_over(Part.RETURN_OPENINGS)) and not openings_known(at.job):
        yield _told(
            "measure_first_openings",
            "Measure first: every return grille, width x height of the hole, and which of them "
            "hold a filter. A larger or further one can't be sized without.",
            (0.2, 0.4),
        )
    if (starved or at.is_over(Part.FILTER)) and not _filter_known(at.job):
        yield _told(
            "measure_first_filter",
            "Look first: size and depth printed on the filter, and where it sits.",
            (0.1, 0.2),
        )
    for one in conditional_candidates(at):
        wanted = one.words.partition(", bare inside")[0].removeprefix("Build a new return drop, ")
        yield _told(
            "measure_first_room",
            f"Look first: is there room beside the cabinet for a return drop of {wanted}?",
            (0.1, 0.2),
        )
    loads = at.job.number("loads.sensible_gain_btuh")
    cooling = any(mode.is_cooling for mode in at.failing)
    if cooling and (loads is None or not at.job.cooling_rows):
        yield _told(
            "measure_first_loads",
            "Get first: the load calculation and the maker's cooling table. Less air or smaller "
            "equipment may be enough, and only these two can say so.",
            (0.3, 2.0),
        )


_SECTIONS: Final = (
    (
        "return.drops",
        Part.RETURN_DROP,
        "measure_first_drop",
        "the return drop, width x height and where the tape was held. A bigger one can't be sized "
        "without.",
    ),
    (
        "supply.trunks",
        Part.SUPPLY_TRUNK,
        "measure_first_supply",
        "whether one trunk or two leave the plenum, and their width x height at the start.",
    ),
)


def openings_known(job: Job) -> bool:
    """Whether the sides of every return opening were stated, or that there is none."""
    for name in ("return.grilles", "filters"):
        entries = tuple(job.entries(name))
        if name == "filters":
            entries = tuple(e for e in entries if job.word(f"{e}.place") == "grille")
        if entries:
            return all(job.is_known(f"{e}.{s}_in") for e in entries for s in ("width", "height"))
    return job.length("return.grilles") == 0


def _filter_known(job: Job) -> bool:
    if job.length("filters") == 0:
        return True
    entries = tuple(job.entries("filters"))
    return bool(entries) and all(
        job.is_known(f"{e}.{s}_in") for e in entries for s in ("width", "height", "depth")
    )


def _clean(job: Job) -> Iterator[Candidate]:
    """Readings through dirt can't tell dirt from ducts: clean and read again."""
    if not job.length("readings"):
        return
    dirty = [
        word
        for word, key in (("filter", "filter"), ("coil", "coil"), ("blower wheel", "blower_wheel"))
        if job.word(f"condition.{key}") in _DIRTY
    ]
    read_dirty = any(job.word(f"{key}.filter_state") == "dirty" for key in job.entries("readings"))
    if read_dirty and "filter" not in dirty:
        dirty.insert(0, "filter")
    if dirty:
        what = " and ".join(dirty)
        yield _told(
            "clean_and_read_again",
            f"Clean the {what} (a new filter, if it is that) and read the pressures again: as "
            "read, nobody can tell dirt from ducts.",
            (0.5, 2.0),
        )


def _seal(at: Situation) -> Iterator[Candidate]:
    leak = at.job.number("house.leakage_supply_fraction")
    uneven = at.job.word("symptoms.uneven_rooms") == "yes"
    if (leak is not None and leak > _LEAK_WORTH_SEALING) or (leak is None and uneven):
        share = "" if leak is None else f" (now about {100.0 * leak:.0f} %)"
        yield _told(
            "seal_ducts",
            f"Seal the ducts with mastic{share}: more of the air reaches the rooms. It doesn't "
            "lower static, it raises it a little; read it again afterwards.",
            (6.0, 12.0),
            ("backdraft",),
        )
