"""Whatever believable things are told of a house, every figure of its verdict is finite.

Facts, ranges and lists are drawn at random from the catalogue's own bounds, so that combinations
nobody thought of are judged too. A house that can't be is refused with the fact's name, never in
another way.
"""

import math
from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from enum import Enum
from typing import Any

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from engine.errors import FactError
from engine.job.facts import Fact, catalogue
from engine.job.loading import job_from_mapping
from engine.judge import judge
from engine.trade.fittings import FITTINGS
from engine.verdict import Verdict

SINGLE = {key: fact for key, fact in catalogue().items() if "[]" not in key}
LISTED: dict[str, dict[str, Fact]] = {}
for _key, _fact in catalogue().items():
    if "[]" in _key:
        LISTED.setdefault(_key.split("[]")[0], {})[_key.split("[].")[1]] = _fact
NAMED = {"name", "from", "setting"}
"""Free words that must fit something else in the house; drawn by hand where they matter."""


def values(fact: Fact) -> st.SearchStrategy[Any]:
    """A believable answer: a value, a range of three, or a word."""
    if fact.is_word:
        return st.sampled_from(fact.choices) if fact.choices else st.just("upstairs")
    assert fact.low is not None
    assert fact.high is not None
    one = st.one_of(
        st.floats(fact.low, fact.high),
        st.sampled_from([fact.low, fact.high]),
    ).map(lambda value: round(value, 3))
    inside = one.filter(lambda value: fact.low <= value <= fact.high)
    three = st.lists(inside, min_size=3, max_size=3).map(sorted)
    ranged = three.map(lambda v: {"low": v[0], "likely": v[1], "high": v[2], "how": "guessed"})
    return st.one_of(inside, inside, ranged)


def entries(name: str) -> st.SearchStrategy[list[dict[str, Any]]]:
    """A list of ducts that are round or not, of openings with both sides, or of anything else."""
    rows = {field: values(fact) for field, fact in LISTED[name].items() if field not in NAMED}
    if name == "path.fittings":
        rows["kind"] = st.sampled_from(sorted(FITTINGS))
    if "diameter_in" in rows:
        round_ones = {f: v for f, v in rows.items() if f not in ("width_in", "height_in", "shape")}
        flat_ones = {f: v for f, v in rows.items() if f not in ("diameter_in", "shape")}
        return st.lists(
            st.one_of(_some(round_ones, "diameter_in"), _some(flat_ones, "width_in", "height_in")),
            max_size=3,
        )
    sides = [field for field in ("width_in", "height_in") if field in rows]
    return st.lists(st.one_of(_some(rows), _some(rows, *sides)).filter(bool), max_size=3)


def _some(
    rows: dict[str, st.SearchStrategy[Any]], *needed: str
) -> st.SearchStrategy[dict[str, Any]]:
    return st.fixed_dictionaries(
        {field: rows[field] for field in needed},
        optional={field: row for field, row in rows.items() if field not in needed},
    )


@st.composite
def tables(draw: st.DrawFn) -> list[dict[str, Any]]:
    start = draw(st.floats(300.0, 2600.0))
    statics = sorted(draw(st.sets(st.integers(1, 20), min_size=2, max_size=5)))
    rows, airflow = [], start
    for static in statics:
        rows.append({"static_inwc": static / 10.0, "airflow_cfm": round(airflow, 1)})
        airflow *= draw(st.floats(0.5, 1.0))
    kept = [row for row in rows if row["airflow_cfm"] >= 60.0]
    return [{"setting": "any", "rows": kept}] if len(kept) > 1 else []


@st.composite
def houses(draw: st.DrawFn) -> dict[str, Any]:
    keys = draw(st.lists(st.sampled_from(sorted(SINGLE)), max_size=14, unique=True))
    told = {key: draw(values(SINGLE[key])) for key in keys}
    for name in draw(st.lists(st.sampled_from(sorted(LISTED)), max_size=5, unique=True)):
        told[name] = draw(entries(name))
    if draw(st.booleans()):
        told["equipment.blower_tables"] = draw(tables())
    return told


def figures(value: object, path: str = "") -> Iterator[tuple[str, float]]:
    """Every number inside a verdict, with where it stands."""
    if isinstance(value, bool | str | Enum) or value is None:
        return
    if isinstance(value, int | float):
        yield path, float(value)
    elif is_dataclass(value):
        for field in fields(value):
            yield from figures(getattr(value, field.name), f"{path}.{field.name}")
    elif hasattr(value, "items"):
        for key, inner in value.items():
            yield from figures(inner, f"{path}.{key}")
    else:
        for place, inner in enumerate(value):  # type: ignore[arg-type, var-annotated]
            yield from figures(inner, f"{path}.{place}")


UNLIMITED = (".recommended", ".maximum", ".ratio")
"""Limits that don't exist are infinite; a figure is never."""


@settings(
    max_examples=40,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large,
                           HealthCheck.filter_too_much, HealthCheck.large_base_example],
)  # fmt: skip
@given(houses())
def test_every_figure_of_any_believable_house_is_finite(told: dict[str, Any]) -> None:
    try:
        found, refused = judge(job_from_mapping(told), samples=24), None
    except FactError as error:
        found, refused = Verdict({}), error
    assert refused is None or (refused.key and refused.problem)
    for where, figure in figures(found):
        if where.endswith(UNLIMITED):
            assert not math.isnan(figure), where
        else:
            assert math.isfinite(figure), where
    for mode in found.modes.values():
        for finding in mode.findings:
            assert "nan" not in finding.formula.lower().split()
            assert "inf" not in finding.formula.lower().split()
