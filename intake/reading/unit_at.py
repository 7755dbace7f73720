"""The unit that stands behind a number, where its spelling is one in the open question's field."""

from __future__ import annotations

from functools import cache
from typing import Final

from intake.reading.lexer import Token
from intake.reading.phrases import misspelt_unit
from intake.reading.units import spellings
from intake.reading.words import words

__all__ = ["LENGTH_FIELDS", "unit_at"]

LENGTH_FIELDS: Final = words(
    """
    duct filter grille length elevation area fittings count material choice
    """
)

_HEAT: Final = frozenset(["capacity", "efficiency", "cooling_rows", "blower_table"])

_FIELDS_OF_SHORT_UNIT: Final = {
    "m": LENGTH_FIELDS,
    "t": frozenset({"capacity", "airflow"}),
    "w": _HEAT,
    "h": frozenset(),
    "k": frozenset(),
    "r": frozenset(),
    "in": LENGTH_FIELDS | {"static_pressure", "airflow", "yes_no", "text", "efficiency"},
    "ins": LENGTH_FIELDS,
    '"': LENGTH_FIELDS | {"static_pressure", "text"},
    "'": LENGTH_FIELDS | {"text"},
    "ft": LENGTH_FIELDS
    | {"airflow", "text", "static_pressure", "capacity", "temperature", "efficiency"},
    "tons": None,
    "bar": frozenset({"static_pressure"}),
    "bars": frozenset({"static_pressure"}),
    "lb": frozenset({"static_pressure"}),
    "lbs": frozenset({"static_pressure"}),
    "pounds": frozenset({"static_pressure"}),
    "square": frozenset(),
    "ls": frozenset({"airflow"}),
    "pc": frozenset({"percent", "efficiency"}),
    "but": frozenset(),
}
"""Spellings of one or few letters that are units only where that quantity is asked for."""

_ARTICLES: Final = words("""
    it them the a my our there here this that front back each every all hall basement attic
    cooling heating heat cool mode total winter summer series parallel line town both stage
    spring fall july august
""")


_STAGES: Final = words("low high med medium first second stage 1st 2nd")
"""Behind "in", what a blower runs in; no height there ("800 in low")."""


@cache
def _longest_by_first() -> dict[str, int]:
    """How many words the longest unit has that begins with a word."""
    longest: dict[str, int] = {}
    for spelling in spellings():
        longest[spelling[0]] = max(longest.get(spelling[0], 0), len(spelling))
    return longest


def unit_at(tokens: list[Token], i: int, field_name: str) -> tuple[str, int]:
    """The unit whose spelling starts at i (a dash before it is skipped), and the place after."""
    j = i
    if j + 1 < len(tokens) and tokens[j].text == "-" and tokens[j].glued and tokens[j + 1].glued:
        if tokens[j + 1].kind != "word":
            return "", i
        j += 1
    if j >= len(tokens):
        return "", i
    limit = _longest_by_first().get(tokens[j].text, 0)
    words: list[str] = []
    ends: list[int] = []
    k = j
    while k < len(tokens) and len(words) < limit:
        token = tokens[k]
        if token.text == "." and words:
            k += 1
            continue
        if token.text == "-" and words and k + 1 < len(tokens) and tokens[k + 1].kind == "word":
            k += 1
            continue
        if token.kind == "num" and not (token.glued and token.value in (2, 3)):
            break
        words.append(token.text)
        k += 1
        ends.append(k)
    table = spellings()
    for n in range(len(words), 0, -1):
        unit = table.get(tuple(words[:n]))
        if unit and _fits(words[:n], unit, field_name, tokens, ends[n - 1]):
            return unit, ends[n - 1]
    unit = misspelt_unit(tokens[j].text) if tokens[j].kind == "word" else ""
    return (unit, j + 1) if unit else ("", i)


def _fits(words: list[str], unit: str, field_name: str, tokens: list[Token], after: int) -> bool:
    """Whether this spelling is a unit in this field and before what follows."""
    spelling = " ".join(words)
    fields = _FIELDS_OF_SHORT_UNIT.get(spelling)
    if fields is not None and field_name not in fields:
        return False
    if spelling in ("m", "M") and field_name in _HEAT:
        return False
    if spelling in ("in", "ins") and after < len(tokens) and tokens[after].text in _ARTICLES:
        return False
    if spelling == "in" and field_name == "airflow" and after < len(tokens):
        return tokens[after].text not in _STAGES
    return not (unit in ("joists", "rolls", "minutes", "paces") and field_name not in ("length",))
