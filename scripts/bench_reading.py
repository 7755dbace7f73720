"""How our reading of loose answers compares with two general readers, in one run on one machine.

The same lines go to `intake.reading`, to quantulum3 and to pint's own parser: the share read fully
right, the share misread in silence (accepted, but wrong), and the time an answer takes. The other
two know no fields, so each of their quantities is fitted to the field's first value by its unit;
what they can't express (shapes, materials, choices, commands) counts as not read. The default
corpus is the one that our rules are tested against, so ours is at its best there; name another to
compare on lines that no rule has seen. Ratios are what to look at, not milliseconds.

    python scripts/bench_reading.py [CORPUS.jsonl ...]
"""

from __future__ import annotations

import json
import math
import sys
import time
import warnings
from collections.abc import Callable, Mapping
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


def with_pint() -> Read:
    """Read with pint's own parser of expressions."""
    import pint

    registry = pint.UnitRegistry()

    def read(line: Mapping[str, Any]) -> dict[str, Any]:
        target = _PINT_TARGETS.get(line["field"])
        text = line["text"]
        if target is None or "**" in text or len(text) > _PER_LINE_LIMIT:
            return {"outcome": "reject"}
        name, wanted = target
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


def measured(lines: list[dict[str, Any]], read: Read) -> tuple[float, float, float]:
    """Shares read right and misread in silence, and the median time of an answer, ms."""
    right = silent = 0
    spent = []
    for line in lines:
        start = time.perf_counter()
        found = read(line)
        spent.append(time.perf_counter() - start)
        good, bad = judged(line, found)
        right += good
        silent += bad
    spent.sort()
    return right / len(lines), silent / len(lines), 1000 * spent[len(spent) // 2]


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
    quantities = [line for line in lines if line["field"] in _PINT_TARGETS]
    warm()
    ours: Read = read_line
    readers = {"intake.reading": ours, "quantulum3": with_quantulum(), "pint": with_pint()}
    for title, chosen in (("all fields", lines), ("quantities only", quantities)):
        print(f"{title}: {len(chosen)} answers")
        base = 0.0
        for name, read in readers.items():
            right, silent, median = measured(chosen, read)
            base = base or median
            print(
                f"  {name:16} right {100 * right:6.2f} %   misread in silence {100 * silent:5.2f} %"
                f"   median {median:6.3f} ms ({median / base:.1f} x)"
            )
    return 0


if __name__ == "__main__":
    sys.exit(main())
