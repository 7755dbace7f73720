"""Changes on the return side and in the cabinet: openings, filter, drop, second return, coil."""

from collections.abc import Iterator
from dataclasses import replace
from functools import partial
from math import ceil
from typing import Final

from engine.job.facts import fact_for
from engine.job.job import Job
from engine.job.openings import filters_of
from engine.job.sections import Duct, ducts_of
from engine.physics.duct import Shape
from engine.remedies.candidate import (
    Candidate,
    Order,
    Situation,
    hours_each,
    multiplied,
    shifted,
    size_words,
    with_exact,
    with_parents_by_key,
)
from engine.remedies.openings import (
    as_facts,
    grille_sizes_known,
    is_at_grille,
    opening_candidates,
    sides_of,
    with_filter_face,
    with_more_grilles,
)
from engine.verdict import Part

__all__ = ["air_side_candidates", "conditional_candidates", "drop_fits", "larger_rect_in"]

_BACKDRAFT: Final = ("backdraft",)

_CABINET_DEPTH_IN: Final = 28.0
_USUAL_CABINET_WIDTH_IN: Final = 24.5
# Depth and largest usual width of furnaces and air handlers (common practice, no published source).

_ROOM_KEY: Final = "house.clearance_for_return"

_FILTER_GROWTH_UNSEEN: Final = 2.0
_DROP_GROWTH_UNSEEN: Final = 2.5
# How much larger a piece at the cabinet may become where nobody looked at the room beside it
# (judgement): a drop stands where one stood, and only its own size grows.


def air_side_candidates(at: Situation) -> Iterator[Candidate]:
    """Openings, filter, drop, second return and coil, as far as they hold the air back."""
    starved = at.lacks_pressure
    if starved or at.is_over(Part.RETURN_OPENINGS):
        yield from opening_candidates(at)
    if starved or at.is_over(Part.FILTER):
        yield from _filters(at)
    if starved or at.is_over(Part.RETURN_DROP):
        yield from _drops(at)
    if starved or at.is_over(Part.RETURN_DROP, Part.RETURN_OPENINGS, Part.RETURN_TRUNK):
        yield from _second_return(at)
    if starved or at.is_over(Part.COIL):
        yield from _coil(at)


def _has_room(at: Situation) -> bool | None:
    word = at.job.word(_ROOM_KEY)
    return None if word is None else word == "yes"


# ---- filter ----

_CABINET_FACES_IN: Final = ((16.0, 25.0), (20.0, 20.0), (20.0, 25.0), (20.0, 30.0), (24.0, 30.0))
_DEEP_IN: Final = 4.0
_DEEPER_SHARE: Final = (0.40, 0.50, 0.60)
"""A deeper filter's drop over a 1 in. one's of the same media (common practice)."""


def _filters(at: Situation) -> Iterator[Candidate]:
    job = at.job
    entries = [e for e in job.entries("filters") if not is_at_grille(job, e)]
    banks = [bank for bank in filters_of(at.assessment.house) if bank.place == "cabinet"]
    if len(entries) != 1 or len(banks) != 1 or not banks[0].stated or _has_room(at) is False:
        return
    entry = entries[0]
    width, height, count = sides_of(job, entry)
    depth = job.number(f"{entry}.depth_in")
    if count != 1.0 or depth is None:
        return
    if depth < _DEEP_IN - 0.5:
        yield Candidate(
            key="deeper_filter",
            words=(
                f"Put a {size_words(width, height, _DEEP_IN)} filter in a {_DEEP_IN:g} in. rack "
                f"where the {depth:g} in. one is."
            ),
            effort_hours=(2.0, 4.0),
            order_hours=Order.FILTER_RETURN,
            group="filter",
            edit=partial(_with_filter, entry=entry, size=(width, height), was=depth),
        )
    have = width * height
    grown = [s for s in _CABINET_FACES_IN if s[0] * s[1] > 1.1 * have and max(s) >= max(width, 20)]
    most = 3.0 if _has_room(at) else _FILTER_GROWTH_UNSEEN
    grown = [s for s in grown if s[0] * s[1] <= most * have]
    if grown:
        size = grown[0]
        yield Candidate(
            key="larger_filter_cabinet",
            words=(
                f"Build a filter cabinet for {size_words(*size, _DEEP_IN)} instead of "
                f"{size_words(width, height, depth)}."
            ),
            effort_hours=(3.0, 6.0),
            order_hours=Order.FILTER_RETURN,
            group="filter",
            edit=partial(_with_filter, entry=entry, size=size, was=depth),
        )


def _with_filter(job: Job, entry: str, size: tuple[float, float], was: float) -> Job:
    before = sides_of(job, entry)
    job = with_exact(job, {**as_facts(entry, size), f"{entry}.depth_in": max(was, _DEEP_IN)})
    listed = job.stated("new.filter_drop_inwc")
    if listed is not None and was < _DEEP_IN - 0.5:
        job = job.with_fact("new.filter_drop_inwc", multiplied(listed, *_DEEPER_SHARE))
    return with_filter_face(job, size[0] * size[1] / (before[0] * before[1]))


# ---- return drop and second return ----


def drop_fits(at: Situation, width_in: float, height_in: float, growth: float) -> bool:
    """Whether a drop of this size finds its place at the cabinet.

    Its shorter side meets the cabinet's width, its longer one the cabinet's depth. Where nobody
    looked at the room beside the cabinet, it may grow to two and a half times its area.
    """
    room = _has_room(at)
    cabinet = at.job.number("new.cabinet_width_in") or _USUAL_CABINET_WIDTH_IN
    if room is False or (room is None and growth > _DROP_GROWTH_UNSEEN):
        return False
    return min(width_in, height_in) <= cabinet and max(width_in, height_in) <= _CABINET_DEPTH_IN


def larger_rect_in(
    width_in: float, height_in: float, need_in2: float, longest_in: float
) -> tuple[float, float] | None:
    """The smallest size in even inches with at least this area and no side shorter than now.

    Args:
        width_in: Present width.
        height_in: Present height.
        need_in2: Area wanted.
        longest_in: Longest side allowed.

    Returns:
        Width and height, of equal areas the least flat; None where no such size is short enough.

    >>> larger_rect_in(16.0, 12.0, 294.0, 28.0)
    (22.0, 14.0)
    """
    widths, heights = (
        [2.0 * i for i in range(ceil(side / 2.0 - 0.26), int(longest_in / 2.0) + 1)]
        for side in (width_in, height_in)
    )
    sizes = [(w, h) for w in widths for h in heights if w * h >= need_in2]
    return min(sizes, key=lambda s: (s[0] * s[1], abs(s[0] - s[1])), default=None)


def _drops(at: Situation) -> Iterator[Candidate]:
    found = _new_drop(at)
    if found is not None:
        yield found


def conditional_candidates(at: Situation) -> Iterator[Candidate]:
    """A drop grown by much, where nobody looked whether there is room for it."""
    narrow = at.lacks_pressure or at.is_over(Part.RETURN_DROP)
    if narrow and _has_room(at) is None and _new_drop(at) is None:
        found = _new_drop(at, has_room=True)
        if found is not None:
            yield replace(found, needs=(_ROOM_KEY,))


def _new_drop(at: Situation, *, has_room: bool = False) -> Candidate | None:
    drops = [d for d in ducts_of(at.assessment.house, "return.drops") if d.stated]
    if not drops or not all(at.is_size_known(duct) for duct in drops):
        return None
    limits = at.limits.return_drop_rigid
    for speed in (limits.recommended_fpm, limits.maximum_fpm):
        sizes = [_larger_drop(at, duct, speed, has_room=has_room) for duct in drops]
        if any(size is None for size in sizes):
            continue
        chosen = [size for size in sizes if size is not None]
        words = "; ".join(
            f"{_new_words(size)} instead of {_words(duct)}"
            for duct, size in zip(drops, chosen, strict=True)
        )
        return Candidate(
            key="larger_return_drop",
            words=f"Build a new return drop, {words}, bare inside, with a curved or vaned turn.",
            effort_hours=hours_each(3.0, 6.0, len(drops)),
            order_hours=Order.FILTER_RETURN,
            group="drop",
            edit=partial(_with_drops, drops=tuple(zip(drops, chosen, strict=True))),
            cautions=_BACKDRAFT,
        )
    return None


def _larger_drop(
    at: Situation, duct: Duct, speed_fpm: float, *, has_room: bool
) -> tuple[float, ...] | None:
    """New sides, or a new diameter; None where none fits the cabinet."""
    have = float(duct.area_ft2[0]) * 144.0
    need = max(at.needed_ft2(duct, speed_fpm) * 144.0, 1.15 * have)
    if duct.shape is Shape.ROUND:
        assert duct.diameter_in is not None  # a round duct has a diameter
        diameter = 2.0 * round(float(duct.diameter_in[0]) / 2.0)
        while 0.7854 * diameter**2 < need:
            diameter += 2.0
        growth = 1.0 if has_room else 0.7854 * diameter**2 / have
        fits = drop_fits(at, diameter, diameter, growth)
        return (diameter,) if fits else None
    assert duct.width_in is not None  # what isn't round has two sides
    assert duct.height_in is not None
    size = larger_rect_in(
        float(duct.width_in[0]), float(duct.height_in[0]), need, _CABINET_DEPTH_IN
    )
    if size is None:
        return None
    growth = 1.0 if has_room else size[0] * size[1] / have
    return size if drop_fits(at, *size, growth) else None


def _words(duct: Duct) -> str:
    if duct.diameter_in is not None:
        return size_words(float(duct.diameter_in[0]))
    assert duct.width_in is not None  # what isn't round has two sides
    assert duct.height_in is not None
    return size_words(float(duct.width_in[0]), float(duct.height_in[0]))


def _new_words(size: tuple[float, ...]) -> str:
    return size_words(*size)


def _with_drops(job: Job, drops: tuple[tuple[Duct, tuple[float, ...]], ...]) -> Job:
    for duct, size in drops:
        job = _with_newsides_of(job, duct.key, size)
    entries = tuple(job.entries("path.fittings"))
    for entry in entries:
        if job.word(f"{entry}.kind") == "return_drop_square":
            job = with_exact(
                job, {f"{entry}.kind": "return_drop_radius"}, (f"{entry}.equivalent_ft",)
            )
    return job


def _with_newsides_of(job: Job, key: str, size: tuple[float, ...]) -> Job:
    """A section made anew of bare metal: its inside is as ordered."""
    job = job.without(f"{key}.liner_in")
    facts: dict[str, float | str] = {f"{key}.measured_where": "inside"}
    if len(size) == 1:
        facts |= {f"{key}.shape": "round", f"{key}.diameter_in": size[0]}
    else:
        facts |= {f"{key}.shape": "rect", f"{key}.width_in": size[0], f"{key}.height_in": size[1]}
    if job.word(f"{key}.material") not in (None, "flex"):
        facts[f"{key}.material"] = "galvanized"
    return with_exact(job, facts)


def _second_return(at: Situation) -> Iterator[Candidate]:
    job, house = at.job, at.assessment.house
    drops = [d for d in ducts_of(house, "return.drops") if d.stated]
    trunks = [d for d in ducts_of(house, "return.trunks") if d.stated]
    known = all(at.is_size_known(duct) for duct in (*drops, *trunks))
    if len(drops) != 1 or len(trunks) > 1 or not known or not grille_sizes_known(at):
        return
    if _has_room(at) is False or job.length("return.grilles") in (None, 0):
        return
    grilles = tuple(job.entries("return.grilles"))
    biggest = max(grilles, key=lambda e: sides_of(job, e)[0] * sides_of(job, e)[1])
    width, height, _ = sides_of(job, biggest)
    yield Candidate(
        key="second_return",
        words=(
            f"Run a second return: a {size_words(width, height)} grille and its own duct of "
            f"{_words(drops[0])} to the cabinet."
        ),
        effort_hours=(6.0, 12.0),
        order_hours=Order.FILTER_RETURN,
        group="second return",
        edit=partial(_with_second_return, grille=biggest),
        cautions=("backdraft", "structure"),
    )


def _with_second_return(job: Job, grille: str) -> Job:
    job = with_parents_by_key(with_more_grilles(job, grille, 1))
    for name in ("return.drops", "return.trunks"):
        if job.length(name) == 1:
            job = job.without(f"{name}.0.share_fraction")
            job = _doubled(job, f"{name}.0", f"{name}.1")
    return job


def _doubled(job: Job, key: str, other: str) -> Job:
    """A second section like the first."""
    facts = {
        other + fact.removeprefix(key): belief
        for fact, belief in job.beliefs.items()
        if fact.startswith(key + ".") and not fact.endswith((".name", ".from"))
    }
    return job.with_facts(facts)


# ---- coil ----

_COIL_SAVES_INWC: Final = (0.05, 0.10, 0.15)
"""What a lower-drop, wider coil saves (common practice, no published source)."""


def _coil(at: Situation) -> Iterator[Candidate]:
    drop = at.job.number("new.coil_drop_inwc")
    belief = at.job.stated("new.coil_drop_inwc")
    if drop is None or belief is None or drop - _COIL_SAVES_INWC[1] < 0.10:
        return
    saved = _COIL_SAVES_INWC[1]
    yield Candidate(
        key="lower_drop_coil",
        words=(
            f"Choose a coil with about {drop - saved:.2f} in. of drop instead of {drop:.2f}, in a "
            "wider case if need be; check the match."
        ),
        effort_hours=(0.0, 1.0),
        order_hours=Order.OTHER_EQUIPMENT,
        group="coil",
        edit=partial(_with_coil, saved=saved),
    )


def _with_coil(job: Job, saved: float) -> Job:
    belief = job.stated("new.coil_drop_inwc")
    assert belief is not None  # only offered where a drop was stated
    least = fact_for("new.coil_drop_inwc").low or 0.0
    return job.with_fact("new.coil_drop_inwc", shifted(belief, -saved, least))
