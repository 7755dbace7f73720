"""How our reading of loose answers compares with two general readers, in one run on one machine.

The same lines go to `intake.reading`, to quantulum3 and to pint's own parser: the share read fully
right, the share misread in silence (accepted, but wrong), and the time an answer takes. The other
two know no fields, so each of their quantities is fitted to the field's first value by its unit;
what they can't express (shapes, materials, choices, commands) counts as not read. The default
corpus is the one that our rules are tested against, so ours is at its best there; name another to
compare on lines that no rule has seen. Ratios are what to look at, not milliseconds.

Each table compares like with like: every reader of it is timed on each of its lines. Line by line
the readers take turns, the first of them changing, through several passes over the whole corpus;
an answer's time is the median of its passes, and a table shows the median of its answers. Pint's
parser is in the tables of what it can be given at all: a quantity's field, a short line.

    python scripts/bench_reading.py [CORPUS.jsonl ...]
"""

from __future__ import annotations

import json
import math
import statistics
import sys
import time
import warnings
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from intake.reading.corpus import read_line
from intake.reading.units import warm

__all__ = ["main"]

CORPUS: Final = Path(__file__).resolve().parents[1] / "tests" / "corpus"
TOLERANCE: Final = 2e-3
"""Relative; conversions rounded to four figures pass."""

_PINT_TARGETS: Final = {
    "airflow": ("cfm", "foot**3/minute"),
    "static_pressure": ("inwc", "inch_H2O_39F"),
    "length": ("ft", "foot"),
    "elevation": ("ft", "foot"),
    "temperature": ("degF", "degF"),
    "capacity": ("btuh", "Btu_it/hour"),
    "efficiency": ("fraction", ""),
}
"""Field: its first value, and the unit that a general reader's quantity is taken to."""

_PER_LINE_LIMIT: Final = 80
"""Characters; pint's parser has no bound on what an expression may cost."""

_PASSES: Final = 5
"""Over the whole corpus, so that nothing kept from a line is still there in the next pass."""

Read = Callable[[Mapping[str, Any]], dict[str, Any]]


def same(one: Any, two: Any) -> bool:
    """Equal within the tolerance; a count of one and an unknown material are as good as absent."""
    if isinstance(one, bool) or isinstance(two, bool):
        return one is two
    if isinstance(one, int | float) and isinstance(two, int | float):
        return math.isclose(one, two, rel_tol=TOLERANCE, abs_tol=1e-4)
    if isinstance(one, dict) and isinstance(two, dict):
        one, two = _bare(one), _bare(two)
        return one.keys() == two.keys() and all(same(one[key], two[key]) for key in one)
    if isinstance(one, list) and isinstance(two, list):
        return len(one) == len(two) and all(map(same, one, two))
    return bool(one == two)


def _bare(values: Mapping[str, Any]) -> dict[str, Any]:
    return {
        key: value
        for key, value in values.items()
        if not (key == "count" and value == 1) and not (key == "material" and value == "unknown")
    }


def judged(line: Mapping[str, Any], read: Mapping[str, Any]) -> tuple[bool, bool]:
    """(fully right, misread in silence)."""
    if read["outcome"] != "accept":
        return read["outcome"] in {line["outcome"], *line.get("also_outcomes", ())}, False
    right = [line["expect"]] if line.get("expect") is not None else []
    for candidate in (*right, *line.get("also_ok", ())):
        extra = {k: v for k, v in line.get("may_have", {}).items() if k not in candidate}
        if same(read["expect"], candidate) or (
            extra and same(read["expect"], {**candidate, **extra})
        ):
            return True, False
    return False, True


def with_quantulum() -> Read:
    """Read with quantulum3: exactly one quantity is accepted, none or several are asked."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        from quantulum3 import parser
    pint_read = _converter()

    def read(line: Mapping[str, Any]) -> dict[str, Any]:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            try:
                found = parser.parse(line["text"][:_PER_LINE_LIMIT])
            except Exception:  # any failure of theirs counts as not read
                return {"outcome": "reject"}
        if not found:
            return {"outcome": "reject"}
        if len(found) > 1:
            return {"outcome": "ask"}
        quantity = found[0]
        return pint_read(line["field"], float(quantity.value), quantity.unit.name)

    return read


def _converter() -> Callable[[str, float, str], dict[str, Any]]:
    import pint

    registry = pint.UnitRegistry()
    registry.define("cubic_foot_per_minute = foot**3/minute")

    def convert(field: str, value: float, unit: str) -> dict[str, Any]:
        target = _PINT_TARGETS.get(field)
        if target is None:
            return {"outcome": "reject"}
        name, wanted = target
        if unit in ("dimensionless", ""):
            return {"outcome": "accept", "expect": {name: value}}
        try:
            expression = unit.replace("degree ", "deg").replace(" per ", "/").replace(" ", "_")
            taken = registry.Quantity(value, expression).to(wanted)
        except Exception:  # a unit that doesn't convert is not read
            return {"outcome": "ask"}
        return {"outcome": "accept", "expect": {name: float(taken.magnitude)}}

    return convert


def parsable(line: Mapping[str, Any]) -> bool:
    """Whether a line is for pint's parser: a field with a unit, short, without powers."""
    short = len(line["text"]) <= _PER_LINE_LIMIT and "**" not in line["text"]
    return short and line["field"] in _PINT_TARGETS


def with_pint() -> Read:
    """Read with pint's own parser of expressions."""
    import pint

    registry = pint.UnitRegistry()

    def read(line: Mapping[str, Any]) -> dict[str, Any]:
        if not parsable(line):
            return {"outcome": "reject"}
        text = line["text"]
        name, wanted = _PINT_TARGETS[line["field"]]
        try:
            found = registry.parse_expression(text)
            if isinstance(found, int | float):
                return {"outcome": "accept", "expect": {name: float(found)}}
            if wanted and not found.dimensionless:
                return {"outcome": "accept", "expect": {name: float(found.to(wanted).magnitude)}}
            return {"outcome": "accept", "expect": {name: float(found.magnitude)}}
        except Exception:  # any failure of theirs counts as not read
            return {"outcome": "reject"}

    return read


@dataclass(frozen=True, slots=True)
class Tried:
    """What one reader made of one line, and the median time of it, ms."""

    right: bool
    silent: bool
    accepted: bool
    median_ms: float


def measured(lines: list[dict[str, Any]], readers: Mapping[str, Read]) -> dict[str, list[Tried]]:
    """Each reader on each line; the readers take turns, so that a slow moment hits all alike."""
    spent: dict[str, list[list[float]]] = {name: [[] for _ in lines] for name in readers}
    found: dict[str, list[dict[str, Any]]] = {name: [{} for _ in lines] for name in readers}
    names = list(readers)
    for turn in range(_PASSES):
        for k, line in enumerate(lines):
            first = (turn + k) % len(names)
            for name in names[first:] + names[:first]:
                read = readers[name]
                start = time.perf_counter()
                reading = read(line)
                spent[name][k].append(time.perf_counter() - start)
                found[name][k] = reading
    return {
        name: [
            Tried(
                *judged(line, reading), reading["outcome"] == "accept", 1000 * statistics.median(t)
            )
            for line, reading, t in zip(lines, found[name], spent[name], strict=True)
        ]
        for name in names
    }


def told(title: str, tried: Mapping[str, list[Tried]], chosen: list[int]) -> None:
    """Print one table: these readers on these lines."""
    print(f"{title}: {len(chosen)} answers")
    base = 0.0
    for name, every in tried.items() if chosen else ():
        of = [every[k] for k in chosen]
        right, silent = sum(t.right for t in of) / len(of), sum(t.silent for t in of) / len(of)
        median = statistics.median(t.median_ms for t in of)
        base = base or median
        print(
            f"  {name:16} right {100 * right:6.2f} %   misread in silence {100 * silent:5.2f} %"
            f"   median {median:6.3f} ms ({median / base:.2f} x)"
        )


def lines_of(paths: list[Path]) -> list[dict[str, Any]]:
    """The lines of these files."""
    found = []
    for path in paths:
        text = path.read_text(encoding="utf-8")
        found += [json.loads(line) for line in text.splitlines() if line.strip()]
    return found


def main(arguments: list[str] | None = None) -> int:
    """Print the comparison; the corpus of the tests is the default."""
    given = sys.argv[1:] if arguments is None else arguments
    lines = lines_of([Path(name) for name in given] or sorted(CORPUS.glob("*.jsonl")))
    warm()
    readers = {"intake.reading": read_line, "quantulum3": with_quantulum(), "pint": with_pint()}
    tried = measured(lines, readers)
    parsed = [k for k, line in enumerate(lines) if parsable(line)]
    general = {name: every for name, every in tried.items() if name != "pint"}
    told("all fields", general, [*range(len(lines))])
    told("quantities that pint's parser can be given", tried, parsed)
    taken = [k for k in parsed if tried["pint"][k].accepted]
    told("of these, bare enough for pint to accept", tried, taken)
    taken = [k for k in parsed if tried["quantulum3"][k].accepted]
    told("of these, clear enough for quantulum3 to accept", tried, taken)
    return 0


if __name__ == "__main__":
    sys.exit(main())
