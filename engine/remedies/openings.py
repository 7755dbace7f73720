"""Changes to return openings: a larger grille or more of them, with the filters in them."""

from collections.abc import Iterator
from functools import partial
from math import inf
from typing import Final

from engine.job.belief import Belief, Between, OneOf, likely_number
from engine.job.facts import fact_for
from engine.job.job import Job
from engine.job.openings import openings_of
from engine.remedies.candidate import (
    Candidate,
    Order,
    Situation,
    exact,
    hours_each,
    multiplied,
    size_words,
    with_exact,
)
from engine.trade.exponents import EXPONENTS, PressurePart
from engine.trade.limits import Role, velocity_limits
from engine.verdict import Part

__all__ = [
    "as_facts",
    "grille_sizes_known",
    "is_at_grille",
    "opening_candidates",
    "sides_of",
    "with_filter_face",
    "with_more_grilles",
]

_STANDARD_GRILLE_IN: Final = (6.0, 8.0, 10.0, 12.0, 14.0, 16.0, 18.0, 20.0, 24.0, 25.0, 30.0)
_MOST_OPENINGS: Final = 2
_BACKDRAFT: Final = ("backdraft",)
_SIDES: Final = ("width_in", "height_in")


def opening_candidates(at: Situation) -> Iterator[Candidate]:
    """One larger grille, or one or two more like the largest, where their sizes are known."""
    house = at.assessment.house
    openings = openings_of(house)
    if openings is None or not openings.stated or not grille_sizes_known(at):
        return
    name = "return.grilles" if at.job.length("return.grilles") else "filters"
    entries = [e for e in at.job.entries(name) if name != "filters" or is_at_grille(at.job, e)]
    sizes = [sides_of(at.job, entry) for entry in entries]
    filtered = bool(openings.filtered[0])
    role = Role.FILTER_GRILLE if filtered else Role.RETURN_GRILLE
    limit = velocity_limits(role, limits=at.limits)
    have = float(openings.area_ft2[0]) * 144.0
    need = at.needed_openings_ft2(limit.maximum_fpm) * 144.0
    biggest = max(range(len(sizes)), key=lambda i: sizes[i][0] * sizes[i][1])
    width, height, _ = sizes[biggest]
    word = "filter grille" if filtered else "return grille"
    larger = _larger_grille(width, height, max(need - have, 0.0) / sizes[biggest][2])
    if larger is not None:
        yield Candidate(
            key="larger_return_grille",
            words=(
                f"Replace the {size_words(width, height)} {word} with one of "
                f"{size_words(*larger)}, cutting the hole to it."
            ),
            effort_hours=hours_each(1.5, 3.0, sizes[biggest][2]),
            order_hours=Order.FILTER_RETURN,
            group="openings",
            edit=partial(_with_larger_grille, entry=entries[biggest], size=larger),
            cautions=_BACKDRAFT,
        )
    for count in range(1, _MOST_OPENINGS + 1):
        if have + count * width * height < need and count < _MOST_OPENINGS:
            continue
        if have + count * width * height < need and at.is_over(Part.RETURN_OPENINGS):
            return
        many = "a second" if count == 1 else f"{count} more"
        plural = "" if count == 1 else "s"
        yield Candidate(
            key="second_return_opening",
            words=f"Add {many} {word}{plural} of {size_words(width, height)} in the same wall.",
            effort_hours=hours_each(2.0, 4.0, count),
            order_hours=Order.FILTER_RETURN,
            group="openings",
            edit=partial(with_more_grilles, entry=entries[biggest], count=count),
            cautions=_BACKDRAFT,
        )
        return


def grille_sizes_known(at: Situation) -> bool:
    """Whether somebody stated the sides of every return opening."""
    name = "return.grilles" if at.job.length("return.grilles") else "filters"
    entries = tuple(at.job.entries(name))
    return bool(entries) and all(
        at.job.is_known(f"{entry}.{side}") for entry in entries for side in _SIDES
    )


def is_at_grille(job: Job, entry: str) -> bool:
    """Whether a filter was said to sit in a return grille."""
    return job.word(f"{entry}.place") == "grille"


def sides_of(job: Job, entry: str) -> tuple[float, float, float]:
    """Width, height and count of a stated grille or filter; one where no count was stated."""
    width, height = (job.number(f"{entry}.{side}") or 0.0 for side in _SIDES)
    return width, height, job.number(f"{entry}.count") or 1.0


def _larger_grille(width: float, height: float, more_in2: float) -> tuple[float, float] | None:
    """The smallest usual size that holds the present one and this much more."""
    sizes = [
        (w, h)
        for w in _STANDARD_GRILLE_IN
        for h in _STANDARD_GRILLE_IN
        if w >= width and h >= height and w * h > 1.15 * width * height
    ]
    fitting = [size for size in sizes if size[0] * size[1] >= width * height + more_in2]
    return min(fitting, key=lambda s: (s[0] * s[1], abs(s[0] - s[1])), default=None)


def _with_larger_grille(job: Job, entry: str, size: tuple[float, float]) -> Job:
    before = job
    if entry.startswith("return.grilles"):
        job = with_exact(job, as_facts(entry, size), (f"{entry}.measured_where",))
        job = job.with_fact(f"{entry}.measured_where", exact("hole"))
    for bank in _grille_filters(job, entry):
        job = with_exact(job, as_facts(bank, size))
    return _with_filter_area(job, before)


def with_more_grilles(job: Job, entry: str, count: int) -> Job:
    """The same opening some more times; a filter that sits in it comes with it."""
    before, have = job, sides_of(job, entry)[2]
    if entry.startswith("return.grilles"):
        job = job.with_fact(f"{entry}.count", exact(have + count))
    for bank in _grille_filters(job, entry):
        job = job.with_fact(f"{bank}.count", exact(sides_of(job, bank)[2] + count))
    return _with_filter_area(job, before)


def as_facts(entry: str, size: tuple[float, float]) -> dict[str, float]:
    """The two sides of an entry as facts by key."""
    return {f"{entry}.{side}": value for side, value in zip(_SIDES, size, strict=True)}


def _grille_filters(job: Job, entry: str) -> tuple[str, ...]:
    """The filter entries that sit in an opening: itself, or the one of its place."""
    if entry.startswith("filters"):
        return (entry,)
    found = tuple(bank for bank in job.entries("filters") if is_at_grille(job, bank))
    return found if len(found) == 1 else ()


def _with_filter_area(job: Job, before: Job) -> Job:
    """A listed filter drop holds at that much more air as the filters' face in grilles grew."""
    face = _grille_face_in2(before)
    if face <= 0.0:
        return job
    return with_filter_face(job, _grille_face_in2(job) / face)


def with_filter_face(job: Job, ratio: float) -> Job:
    """A listed filter drop, where the face grew by a ratio: the same drop at that much more air.

    Beyond the largest airflow that a drop may be listed at, the rest of the ratio lowers the drop
    by the filter's own power of airflow.
    """
    listed, at_cfm = job.stated("new.filter_drop_inwc"), job.stated("new.filter_drop_at_cfm")
    if listed is None or at_cfm is None:
        return job
    most = fact_for("new.filter_drop_at_cfm").high or inf
    moved = max(min(ratio, most / _highest(at_cfm)), 1.0)
    power = EXPONENTS[PressurePart.FILTER].likely
    rest = (ratio / moved) ** -power
    job = job.with_fact("new.filter_drop_inwc", multiplied(listed, rest, rest, rest))
    return job.with_fact("new.filter_drop_at_cfm", multiplied(at_cfm, moved, moved, moved))


def _highest(belief: Belief) -> float:
    match belief:
        case Between(high=high):
            return high
        case OneOf(weights=weights):
            return max(float(value) for value, _ in weights)
    return likely_number(belief)


def _grille_face_in2(job: Job) -> float:
    banks = [sides_of(job, bank) for bank in job.entries("filters") if is_at_grille(job, bank)]
    return sum(width * height * count for width, height, count in banks)
