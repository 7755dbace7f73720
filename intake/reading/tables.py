"""Pasted tables: blower tables and cooling performance rows.

Columns are told apart by what their numbers can be (static at most 2 in. w.c., airflow at least
100 CFM), by their headings, and by physics: airflow doesn't rise with static, sensible capacity
isn't above total. Whatever these don't settle is asked; nothing is ever swapped to make it fit.
"""

from __future__ import annotations

import itertools
import re
from dataclasses import dataclass, field
from typing import Final

from intake.reading.clean import LONGEST_PASTE, normalise, plain_lines
from intake.reading.result import (
    Accepted,
    AskBack,
    AskKind,
    Reading,
    Rejected,
    Sure,
    Value,
    number_of,
)
from intake.reading.units import convert
from intake.reading.words import words

__all__ = ["read_blower_table", "read_cooling_rows"]

_MOST_STATIC: Final = 2.0
_AIRFLOW: Final = (100.0, 3500.0)
_RISE_ALLOWED: Final = 1.03
"""A constant-airflow blower may hold, even gain a little, as static rises."""

_LONGEST_TABLE: Final = 400
_CELL: Final = re.compile(r"^\d{1,3}(?:,\d{3})+(?:\.\d+)?$|^\d*\.?\d+$|^\d+,\d{1,2}$")
_EMPTY: Final = words("- -- --- n/a na x * **")


@dataclass(slots=True)
class _Line:
    """One line: its words, and its cells (None for an empty one)."""

    words: list[str] = field(default_factory=list)
    cells: list[float | None] = field(default_factory=list)

    @property
    def numbers(self) -> list[float]:
        return [cell for cell in self.cells if cell is not None]


def _split(line: str) -> list[str]:
    if re.search(r"[\s|;\t]", line):
        return [p for p in re.split(r"[\s|;:=@]+|,\s+|,$", line.replace(", ", " ")) if p]
    return [p for p in re.split(r"[,|;:=@]", line) if p]


def _number(cell: str) -> float | None:
    bare = cell.strip("()[]\"'").removesuffix("cfm").removesuffix("in")
    if not _CELL.match(bare):
        return None
    if "," in bare:
        bare = (
            bare.replace(",", "")
            if re.fullmatch(r"[\d,]+,\d{3}(?:\.\d+)?", bare)
            else bare.replace(",", ".")
        )
    return float(bare)


def _lines(text: str) -> list[_Line]:
    found = []
    for raw in plain_lines(text)[:_LONGEST_TABLE]:
        line = _Line()
        for part in _split(normalise(raw)):
            value = _number(part)
            if value is not None:
                line.cells.append(value)
            elif part in _EMPTY:
                line.cells.append(None)
            else:
                line.words.append(part)
        if line.words or line.cells:
            found.append(line)
    return found


def _is_static(value: float) -> bool:
    return 0 <= value <= _MOST_STATIC


def _is_airflow(value: float) -> bool:
    return _AIRFLOW[0] <= value <= _AIRFLOW[1]


_HEAD: Final = words("""
        in wc w.c. w.c inwc iwc static pressure external esp tesp cfm airflow air flow speed
        setting tap tap: the at total of pa pascals inches water column in. in.wc. in.wc wg blower
        table and row rows
    """)


def _setting(words: list[str]) -> str | None:
    name = " ".join(word.strip(":,") for word in words if word.strip(":,()") not in _HEAD)
    return name or None


_Row = tuple[float, float]


def read_blower_table(text: str) -> Reading:
    """Read a pasted blower table; `blower_tables` holds one table a setting."""
    if len(text) > LONGEST_PASTE:
        return Rejected(_NEED)
    lines = _lines(text)
    numeric = [line for line in lines if line.numbers]
    if not numeric:
        return Rejected(_NEED)
    in_pascals = any({"pa", "pascals"} & set(line.words) for line in lines)
    tables = (
        _by_header(lines, in_pascals) or _by_static_first(lines, in_pascals) or _by_pairs(lines)
    )
    if not tables:
        return AskBack(_ASK, (), AskKind.MISSING_PART)
    return _checked(tables)


_NEED: Final = "I need the blower table: CFM at each static pressure, one row a line."
_ASK: Final = (
    "I can't tell static from airflow there. Please give it as lines such as:"
    " 0.3 in. w.c., 1210 CFM; or a first line of statics and a line of CFM for each setting."
)


def _by_header(lines: list[_Line], in_pascals: bool) -> dict[str | None, list[_Row]] | None:
    """A line of statics, then a line of airflows for each setting."""
    for i, line in enumerate(lines):
        statics = line.numbers
        if len(statics) < 2 or len(statics) != len(line.cells):
            continue
        if in_pascals and all(0 <= s <= 500 for s in statics) and max(statics) > _MOST_STATIC:
            statics = [round(convert(s, "pa", "inwc"), 4) for s in statics]
        if not all(map(_is_static, statics)) or statics != sorted(statics):
            continue
        tables: dict[str | None, list[_Row]] = {}
        for row in lines[i + 1 :]:
            if not row.numbers:
                continue
            cells, name = row.cells, _setting(row.words)
            if (
                len(cells) == len(statics) + 1
                and name is None
                and cells[0] is not None
                and cells[0] < 20
            ):
                name, cells = f"{cells[0]:g}", cells[1:]
            if (
                len(cells) != len(statics)
                or not all(map(_is_airflow, row_numbers(cells)))
                or name in tables
            ):
                return None
            tables[name] = [(s, c) for s, c in zip(statics, cells, strict=True) if c is not None]
        return tables or None
    return None


def row_numbers(cells: list[float | None]) -> list[float]:
    """The filled cells."""
    return [cell for cell in cells if cell is not None]


def _by_static_first(lines: list[_Line], in_pascals: bool) -> dict[str | None, list[_Row]] | None:
    """Each line one static and the airflow of each setting; the static may stand first or last."""
    rows = [line for line in lines if len(line.cells) >= 2 and line.numbers]
    if len(rows) < 2 or len({len(row.cells) for row in rows}) != 1:
        return None
    places = []
    for column in (0, len(rows[0].cells) - 1):
        cells = [row.cells[column] for row in rows]
        rest = [c for row in rows for k, c in enumerate(row.cells) if k != column and c is not None]
        whole = [c for c in cells if c is not None]
        pascals = in_pascals and all(c <= 500 for c in whole)
        if (
            len(whole) == len(cells)
            and (all(map(_is_static, whole)) or pascals)
            and all(map(_is_airflow, rest))
        ):
            places.append(column)
    if len(places) != 1:
        return None
    column = places[0]
    width = len(rows[0].cells) - 1
    heads = _columns_named(lines, rows, width)
    tables: dict[str | None, list[_Row]] = {}
    for k in range(width):
        name = heads[k] if heads else (None if width == 1 else f"column {k + 1}")
        pairs: list[_Row] = []
        for row in rows:
            static = row.cells[column]
            airflow = [c for j, c in enumerate(row.cells) if j != column][k]
            if airflow is None or static is None:
                continue
            value = (
                round(convert(static, "pa", "inwc"), 4)
                if in_pascals and static > _MOST_STATIC
                else static
            )
            pairs.append((value, airflow))
        tables[name] = pairs
    return tables


def _columns_named(lines: list[_Line], rows: list[_Line], width: int) -> list[str] | None:
    """The settings in the heading, if there are as many as columns."""
    first = lines.index(rows[0])
    for line in reversed(lines[:first]):
        names = [w.strip(":,()") for w in line.words if w.strip(":,()") not in _HEAD]
        if len(names) == width and len(set(names)) == width:
            return names
    return None


def _by_pairs(lines: list[_Line]) -> dict[str | None, list[_Row]] | None:
    """ "high: 0.1 1400 0.2 1350", and single rows "0.1 1400"."""
    tables: dict[str | None, list[_Row]] = {}
    name: str | None = None
    for line in lines:
        named = _setting(line.words)
        name = named or name
        numbers = line.numbers
        if not numbers:
            continue
        if len(numbers) % 2:
            return None
        for one, two in zip(numbers[::2], numbers[1::2], strict=True):
            if _is_static(one) and _is_airflow(two):
                pair = (one, two)
            elif _is_airflow(one) and _is_static(two):
                pair = (two, one)
            else:
                return None
            tables.setdefault(name, []).append(pair)
    return tables or None


def _checked(tables: dict[str | None, list[_Row]]) -> Reading:
    found: list[Value] = []
    for name, pairs in tables.items():
        rows = sorted(pairs)
        statics = [static for static, _ in rows]
        if len(set(statics)) != len(statics):
            told = name or "the table"
            return AskBack(
                f"In {told} one static has two airflows. Which settings are these?",
                (),
                AskKind.TWO_VALUES,
            )
        for (low, more), (high, less) in itertools.pairwise(rows):
            if less > more * _RISE_ALLOWED:
                return AskBack(
                    f"At {high:g} in. w.c. the table gives more air ({less:,.0f}) than at {low:g}"
                    f" ({more:,.0f}). "
                    "Air falls as static rises: is a column or a digit mixed up?",
                    (),
                    AskKind.IMPLAUSIBLE,
                )
        if not rows:
            continue
        table: dict[str, Value] = {
            "rows": [{"static_inwc": s, "airflow_cfm": c} for s, c in rows],
        }
        if name is not None:
            table = {"setting": name, **table}
        found.append(table)
    if not found:
        return Rejected(_NEED)
    return Accepted({"blower_tables": found}, Sure.PLAIN)


_COOLING_NEED: Final = "I need the cooling table: CFM, total and sensible capacity, one row a line."
_COOLING_ASK: Final = (
    "I can't tell the columns apart. Please give each row as CFM, total, sensible,"
    " such as: 1200 36000 27000."
)
_NAMES: Final = {
    "airflow": frozenset(("cfm", "airflow", "air")),
    "total": words("total tc tot capacity tcap total_capacity mbh"),
    "sensible": words("sensible sens sc shc sensible_capacity scap sens."),
    "ratio": frozenset(("s/t", "shr", "ratio")),
}


def read_cooling_rows(text: str) -> Reading:
    """Read pasted cooling rows; `cooling_rows` holds airflow, total and sensible capacity."""
    if len(text) > LONGEST_PASTE:
        return Rejected(_COOLING_NEED)
    lines = _lines(text)
    rows = [line for line in lines if line.numbers]
    if not rows:
        return Rejected(_COOLING_NEED)
    heads = _heads(lines)
    found: list[dict[str, Value]] = []
    for row in rows:
        if len(row.numbers) < 3:
            return AskBack(_COOLING_ASK, (), AskKind.MISSING_PART)
        made = _cooling_row(row.numbers, heads if len(heads) == len(row.numbers) else [])
        if made is None:
            return AskBack(_COOLING_ASK, (), AskKind.TWO_READINGS)
        found.append(made)
    return _cooling_checked(found)


def _heads(lines: list[_Line]) -> list[str]:
    for line in lines:
        if line.numbers:
            return []
        named = [
            name
            for word in line.words
            for name, words in _NAMES.items()
            if word.strip(":,()") in words
        ]
        if "airflow" in named and len(named) >= 3:
            return named
    return []


def _cooling_row(numbers: list[float], heads: list[str]) -> dict[str, Value] | None:
    if heads:
        cells = dict(zip(heads, numbers, strict=True))
        airflow, total, sensible = cells.get("airflow"), cells.get("total"), cells.get("sensible")
        if sensible is None and total is not None and "ratio" in cells:
            sensible = total * cells["ratio"]
        if airflow is None or total is None or sensible is None:
            return None
    else:
        if len(numbers) != 3:
            return None
        heats = [n for n in numbers if n >= 5000 or 5 < n < 100]
        airflows = [n for n in numbers if 200 <= n <= 3000]
        if len(heats) != 2 or len(airflows) != 1:
            return None
        airflow = airflows[0]
        total, sensible = max(heats), min(heats)
    scale = 1000.0 if total < 100 else 1.0
    return {
        "airflow_cfm": airflow,
        "total_btuh": round(total * scale, 1),
        "sensible_btuh": round(sensible * scale, 1),
    }


def _cooling_checked(rows: list[dict[str, Value]]) -> Reading:
    ordered = sorted(rows, key=lambda r: number_of(r["airflow_cfm"]))
    for row in ordered:
        airflow, total, sensible = (
            number_of(row[k]) for k in ("airflow_cfm", "total_btuh", "sensible_btuh")
        )
        if not (
            0.4 * total <= sensible <= total
            and 5_000 <= total <= 120_000
            and 200 <= airflow <= 3000
        ):
            return AskBack(
                f"A row reads {airflow:,.0f} CFM, total {total:,.0f}, sensible {sensible:,.0f}"
                " BTU/h. Please check the columns.",
                (),
                AskKind.IMPLAUSIBLE,
            )
    for one, two in itertools.pairwise(ordered):
        if number_of(two["sensible_btuh"]) < 0.98 * number_of(one["sensible_btuh"]):
            return AskBack(
                "Sensible capacity falls as airflow rises there. Are the columns or rows mixed up?",
                (),
                AskKind.IMPLAUSIBLE,
            )
    return Accepted({"cooling_rows": list(ordered)}, Sure.PLAIN)
