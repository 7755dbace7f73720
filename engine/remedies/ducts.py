"""Changes to ducts: fittings, flex, branches, registers, return branches, and trunks."""

from collections.abc import Iterator
from functools import partial
from math import ceil
from typing import Final

import numpy as np

from engine.job.job import Job
from engine.job.sections import ROLES, Duct, ducts_of
from engine.physics.duct import Shape
from engine.remedies.candidate import (
    Candidate,
    Order,
    Situation,
    exact,
    hours_each,
    shifted,
    size_words,
    with_exact,
    with_parents_by_key,
)
from engine.trade.fittings import FITTINGS
from engine.trade.limits import SpeedLimit, velocity_limits
from engine.verdict import Part

__all__ = ["duct_candidates", "trunk_candidates"]

_EASIER: Final = {
    "square_elbow_trunk": "vaned_elbow",
    "square_elbow_branch": "round_elbow_smooth",
    "mitred_elbow": "round_elbow_smooth",
    "plenum_exit_square": "plenum_exit_tapered",
    "takeoff_straight": "takeoff_conical",
    "takeoff_top": "takeoff_conical",
    "junction_box": "wye",
    "flex_bend_tight": "flex_bend_easy",
    "return_drop_square": "return_drop_radius",
    "transition_abrupt": "transition_gradual",
    "trunk_offset": "transition_gradual",
}
"""What each hard fitting is replaced by."""

_PULLED_TIGHT: Final = 0.04
_SLACK_WORTH_IT: Final = 0.07


def duct_candidates(at: Situation) -> Iterator[Candidate]:
    """Fittings, flex, branches, registers and return branches."""
    starved = at.lacks_pressure
    if starved:
        yield from _fittings(at)
        yield from _flex(at)
    if starved or at.is_over(Part.SUPPLY_BRANCHES):
        yield from _branches(at)
        yield from _registers(at)
    if starved or at.is_over(Part.RETURN_TRUNK):
        yield from _return_branches(at)


def _fittings(at: Situation) -> Iterator[Candidate]:
    by_side: dict[str, list[str]] = {"supply": [], "return": []}
    for entry in at.job.entries("path.fittings"):
        kind = at.job.word(f"{entry}.kind") or ""
        if kind in _EASIER:
            row = FITTINGS[kind]
            side = at.job.word(f"{entry}.side") or ("return" if row.side == "return" else "supply")
            by_side[side].append(entry)
    for side, entries in by_side.items():
        if not entries:
            continue
        counts = [at.job.number(f"{entry}.count") or 1.0 for entry in entries]
        kinds = [at.job.word(f"{entry}.kind") or "" for entry in entries]
        words = "; ".join(
            f"{count:g} x {FITTINGS[kind].words} by {FITTINGS[_EASIER[kind]].words}"
            for count, kind in zip(counts, kinds, strict=True)
        )
        yield Candidate(
            key=f"easier_fittings_{side}",
            words=f"Replace hard fittings on the {side} side of the longest run: {words}.",
            effort_hours=hours_each(1.5, 3.0, sum(counts)),
            order_hours=Order.FITTINGS,
            group=f"fittings:{side}",
            edit=partial(_with_easier, entries=tuple(entries)),
        )


def _with_easier(job: Job, entries: tuple[str, ...]) -> Job:
    for entry in entries:
        kind = job.word(f"{entry}.kind") or ""
        if kind in _EASIER:
            job = with_exact(job, {f"{entry}.kind": _EASIER[kind]}, (f"{entry}.equivalent_ft",))
    return job


def _flex(at: Situation) -> Iterator[Candidate]:
    loose: list[str] = []
    runs = 0.0
    for name in ROLES:
        for duct in ducts_of(at.assessment.house, name):
            slack = at.job.number(f"{duct.key}.slack_fraction")
            if not (duct.stated and duct.flexible[0]) or slack is None:
                continue
            if at.job.is_known(f"{duct.key}.slack_fraction") and slack > _SLACK_WORTH_IT:
                loose.append(duct.key)
                runs += float(duct.count[0])
    if loose:
        yield Candidate(
            key="tighter_flex",
            words=(
                f"Pull {runs:g} run{'s' if runs > 1 else ''} of flex tight: cut off what is too "
                "much, hang it every 4 to 5 ft, replace what is crushed."
            ),
            effort_hours=hours_each(0.8, 1.5, runs),
            order_hours=Order.FITTINGS,
            group="flex",
            edit=partial(_with_tight_flex, keys=tuple(loose)),
        )


def _with_tight_flex(job: Job, keys: tuple[str, ...]) -> Job:
    return with_exact(job, {f"{key}.slack_fraction": _PULLED_TIGHT for key in keys})


# ---- branches and registers ----

_MOST_MORE_SHARE: Final = 0.5
_MOST_BRANCH_IN: Final = 10.0


def _speed_limit(at: Situation, duct: Duct) -> SpeedLimit:
    return velocity_limits(duct.role, duct.material, at.limits)


def _needed_as_it_is(at: Situation, duct: Duct) -> float:
    """Area that ducts made and measured like this one need to be slow enough."""
    return at.needed_ft2(duct, _speed_limit(at, duct).maximum_fpm, as_doubtful=True)


def _fast(at: Situation, ducts: tuple[Duct, ...]) -> list[Duct]:
    """Those that some sample has too fast; all of them where none is but pressure lacks."""
    found = [duct for duct in ducts if _needed_as_it_is(at, duct) > float(duct.area_ft2[0])]
    return found or (list(ducts) if at.lacks_pressure else [])


def _branches(at: Situation) -> Iterator[Candidate]:
    ducts = tuple(d for d in ducts_of(at.assessment.house, "supply.branches") if d.stated)
    chosen = _fast(at, ducts)
    if not chosen or not all(at.is_size_known(d) for d in chosen):
        return
    bigger = {d.key: _next_size(at, d) for d in chosen}
    runs = sum(float(d.count[0]) for d in chosen)
    sizes = {key: size for key, size in bigger.items() if size is not None}
    if len(sizes) == len(chosen):
        words = "; ".join(
            f"{float(d.count[0]):g} of {_said(d)} by {size_words(*sizes[d.key])}" for d in chosen
        )
        yield Candidate(
            key="bigger_branches",
            words=f"Replace supply branches with their boots: {words}.",
            effort_hours=hours_each(2.0, 4.0, runs),
            order_hours=Order.BRANCHES,
            group="branches",
            edit=partial(_with_sizes, sizes=tuple(sizes.items())),
        )
    more = {d.key: _more_of(at, d) for d in chosen}
    counted = all(at.job.is_known(f"{d.key}.count") for d in chosen)
    if counted and all(0 < n <= max(1, _MOST_MORE_SHARE * d.count[0])
                       for d, n in zip(chosen, more.values(), strict=True)):  # fmt: skip
        words = "; ".join(f"{more[d.key]} of {_said(d)}" for d in chosen)
        yield Candidate(
            key="more_branches",
            words=f"Add supply branches to the rooms that want air most: {words}.",
            effort_hours=hours_each(3.0, 5.0, sum(more.values())),
            order_hours=Order.BRANCHES,
            group="branches",
            edit=partial(_with_counts, more=tuple(more.items())),
        )


def _said(duct: Duct) -> str:
    if duct.diameter_in is not None:
        return size_words(float(duct.diameter_in[0]))
    assert duct.width_in is not None  # what isn't round has two sides
    assert duct.height_in is not None
    return size_words(float(duct.width_in[0]), float(duct.height_in[0]))


def _next_size(at: Situation, duct: Duct) -> tuple[float, ...] | None:
    """The next round size, or width at the same height, that is slow enough."""
    need = at.needed_ft2(duct, _speed_limit(at, duct).maximum_fpm) * 144.0
    if duct.diameter_in is not None:
        diameter = float(round(float(duct.diameter_in[0]))) + 1.0
        while 0.7854 * diameter**2 < need:
            diameter += 1.0
        return (diameter,) if diameter <= _MOST_BRANCH_IN else None
    assert duct.width_in is not None  # what isn't round has two sides
    assert duct.height_in is not None
    height = float(duct.height_in[0])
    width = float(duct.width_in[0]) + 2.0
    while width * height < need:
        width += 2.0
    long, short = max(width, height), min(width, height)
    return (width, height) if long <= at.limits.aspect_ratio.value * short else None


def _more_of(at: Situation, duct: Duct) -> int:
    need = _needed_as_it_is(at, duct) * float(duct.count[0])
    return max(ceil(need / float(duct.area_ft2[0]) - float(duct.count[0]) - 1e-9), 1)


def _with_sizes(job: Job, sizes: tuple[tuple[str, tuple[float, ...]], ...]) -> Job:
    for key, size in sizes:
        job = job.without(f"{key}.liner_in")
        facts: dict[str, float | str] = {f"{key}.measured_where": "inside"}
        if len(size) == 1:
            facts[f"{key}.diameter_in"] = size[0]
        else:
            facts |= {f"{key}.width_in": size[0], f"{key}.height_in": size[1]}
        job = with_exact(job, facts)
    return job


def _with_counts(job: Job, more: tuple[tuple[str, int], ...]) -> Job:
    for key, added in more:
        job = job.with_fact(f"{key}.count", exact((job.number(f"{key}.count") or 1.0) + added))
    return job


_REGISTERS_IN: Final = ((4.0, 10.0), (4.0, 12.0), (4.0, 14.0), (6.0, 10.0), (6.0, 12.0),
                        (6.0, 14.0), (8.0, 12.0), (8.0, 14.0))  # fmt: skip


def _registers(at: Situation) -> Iterator[Candidate]:
    over = [
        raw
        for mode in at.failing
        for raw in at.assessment.modes[mode].raws
        if raw.check == "register_velocity" and raw.over_share > 0.02
    ]
    if not over:
        return
    speed = max(float(np.quantile(raw.figure[1:], 0.95)) for raw in over)
    ratio = speed / (0.98 * at.limits.register.maximum_fpm)
    sizes: list[tuple[str, tuple[float, float]]] = []
    count = 0.0
    for entry in at.job.entries("supply.registers"):
        width, height = at.job.number(f"{entry}.width_in"), at.job.number(f"{entry}.height_in")
        if width is None or height is None:
            return
        wanted = [s for s in _REGISTERS_IN if s[0] * s[1] >= ratio * width * height]
        if not wanted:
            return
        size = min(wanted, key=lambda s: s[0] * s[1])
        sizes.append((entry, size))
        count += at.job.number(f"{entry}.count") or 1.0
    words = "; ".join(size_words(*size) for size in dict.fromkeys(s for _, s in sizes))
    yield Candidate(
        key="bigger_registers",
        words=f"Put in bigger supply registers with boots to match: {words}.",
        effort_hours=hours_each(0.8, 2.0, count),
        order_hours=Order.BRANCHES,
        group="registers",
        edit=partial(_with_registers, sizes=tuple(sizes)),
    )


def _with_registers(job: Job, sizes: tuple[tuple[str, tuple[float, float]], ...]) -> Job:
    for entry, (width, height) in sizes:
        job = with_exact(job, {f"{entry}.width_in": width, f"{entry}.height_in": height,
                               f"{entry}.measured_where": "hole"})  # fmt: skip
    return job


def _return_branches(at: Situation) -> Iterator[Candidate]:
    ducts = tuple(d for d in ducts_of(at.assessment.house, "return.branches") if d.stated)
    chosen = _fast(at, ducts)
    if not chosen or not all(at.is_size_known(d) for d in chosen):
        return
    sizes = {d.key: size for d in chosen if (size := _next_size(at, d)) is not None}
    if len(sizes) < len(chosen):
        return
    words = "; ".join(f"{_said(d)} by {size_words(*sizes[d.key])}" for d in chosen)
    yield Candidate(
        key="bigger_return_branches",
        words=f"Replace return branches: {words}.",
        effort_hours=hours_each(3.0, 6.0, sum(float(d.count[0]) for d in chosen)),
        order_hours=Order.BRANCHES,
        group="return branches",
        edit=partial(_with_sizes, sizes=tuple(sizes.items())),
        cautions=("backdraft",),
    )


# ---- trunks ----

_TRUNKS: Final = (
    ("supply.trunks", "supply trunk", Part.SUPPLY_TRUNK, (10.0, 20.0)),
    ("return.trunks", "return trunk", Part.RETURN_TRUNK, (8.0, 16.0)),
)


def trunk_candidates(at: Situation) -> Iterator[Candidate]:
    """Wider trunks at the same height, and a second supply trunk."""
    for name, word, part, hours in _TRUNKS:
        if not (at.lacks_pressure or at.is_over(part)):
            continue
        ducts = tuple(d for d in ducts_of(at.assessment.house, name) if d.stated)
        if not ducts or not all(at.is_size_known(d) for d in ducts):
            continue
        yield from _wider(at, ducts, word, name, hours)
        if name == "supply.trunks":
            yield from _second_trunk(at, ducts)


def _wider(
    at: Situation, ducts: tuple[Duct, ...], word: str, name: str, hours: tuple[float, float]
) -> Iterator[Candidate]:
    chosen = _fast(at, ducts)
    wider = {d.key: by for d in chosen if (by := _wider_by(at, d)) is not None}
    if not chosen or len(wider) < len(chosen):
        return
    words = "; ".join(f"{_said(d)} by {_widened(d, wider[d.key])}" for d in chosen)
    yield Candidate(
        key=f"wider_{name.replace('.', '_').removesuffix('s')}",
        words=f"Replace the {word} by a wider one at the same height: {words}.",
        effort_hours=hours_each(*hours, len(chosen)),
        order_hours=Order.TRUNK,
        group=f"trunk:{name}",
        edit=partial(_with_wider, by=tuple(wider.items())),
        edits_trunk=True,
        cautions=("structure",) if name == "return.trunks" else (),
    )


def _wider_by(at: Situation, duct: Duct) -> float | None:
    """Inches more width (or diameter) that make it slow enough; None beyond 4:1."""
    need = _needed_as_it_is(at, duct)
    by = 2.0
    if duct.diameter_in is not None:
        diameter = float(duct.diameter_in[0])
        while 0.7854 * (diameter + by) ** 2 / 144.0 < need:
            by += 2.0
        return by if diameter + by <= 24.0 else None
    assert duct.width_in is not None  # what isn't round has two sides
    assert duct.height_in is not None
    width, height = float(duct.width_in[0]), float(duct.height_in[0])
    loss = 1.0 if duct.shape is Shape.RECT else 0.9
    while loss * (width + by) * height / 144.0 < need:
        by += 2.0
    return by if width + by <= at.limits.aspect_ratio.value * height else None


def _widened(duct: Duct, by: float) -> str:
    if duct.diameter_in is not None:
        return size_words(float(duct.diameter_in[0]) + by)
    assert duct.width_in is not None  # what isn't round has two sides
    assert duct.height_in is not None
    return size_words(float(duct.width_in[0]) + by, float(duct.height_in[0]))


def _with_wider(job: Job, by: tuple[tuple[str, float], ...]) -> Job:
    """Made like the old one, lined or wrapped as it was, so its size is known the same way."""
    for key, more in by:
        side = f"{key}.width_in" if f"{key}.width_in" in job.beliefs else f"{key}.diameter_in"
        belief = job.stated(side)
        assert belief is not None  # only offered where every size was stated
        job = job.with_fact(side, shifted(belief, more))
    return job


def _second_trunk(at: Situation, ducts: tuple[Duct, ...]) -> Iterator[Candidate]:
    first = [d for d in ducts if not d.parent]
    if len(first) != 1:
        return
    yield Candidate(
        key="second_supply_trunk",
        words=(
            f"Run a second supply trunk of {_said(first[0])} from the plenum to the other side "
            "and move half of the branches to it."
        ),
        effort_hours=(14.0, 28.0),
        order_hours=Order.TRUNK,
        group="trunk:supply.trunks",
        edit=partial(_with_second_trunk, key=first[0].key, count=len(ducts)),
        edits_trunk=True,
    )


def _with_second_trunk(job: Job, key: str, count: int) -> Job:
    job = with_parents_by_key(job).without(f"{key}.share_fraction")
    other = f"supply.trunks.{count}"
    facts = {
        other + fact.removeprefix(key): belief
        for fact, belief in job.beliefs.items()
        if fact.startswith(key + ".") and not fact.endswith((".name", ".from"))
    }
    return job.with_facts(facts)
