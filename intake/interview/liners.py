"""How thick a liner or board is, told with the duct: "20x8 lined one inch"."""

import re
from dataclasses import replace
from typing import Final

from intake.interview.beside import ASIDE
from intake.interview.question import Question
from intake.reading.result import Accepted, Value, Volunteered

__all__ = ["liner_told", "with_liner"]

_INCH: Final = r'(?:-| )?(?:inch(?:es)?\b|in\b\.?|")'
_THICK: Final[tuple[tuple[float, re.Pattern[str]], ...]] = (
    (
        1.5,
        re.compile(
            rf"\binch and a half\b|\bone and a half(?:{_INCH})?|(?<![\d.])1[ -]1/2{_INCH}"
            rf"|(?<![\d.])1\.5{_INCH}"
        ),
    ),
    (0.75, re.compile(rf"\bthree[- ]quarters?{_INCH}|(?<![\d.])3/4{_INCH}|(?<!\d)0?\.75{_INCH}")),
    (0.5, re.compile(rf"\bhalf(?: an)?{_INCH}|(?<![\d.]) ?1/2{_INCH}|(?<!\d)0?\.5{_INCH}")),
    (2.0, re.compile(rf"(?<![\d./x])\b2{_INCH}|\btwo{_INCH}")),
    (
        1.0,
        re.compile(rf"(?<![\d./x])\b1{_INCH}|\b(?:one|an?|about an){_INCH}|(?<![\w\"] )\binch\b"),
    ),
)
_OF_LINER: Final = re.compile(
    r"\b(?:lin(?:ed|er|ing)|board|duct ?board|fib(?:er|re)glass|insulation|insulated|thick)\b"
)
_OTHER: Final = re.compile(r"\b(?:filter|flange|gap|hole|standing seam|wrap(?:ped)?)\b")
_LINED: Final = ("lined_metal", "duct_board")
_HOMES: Final = {"supply.trunks": "trunk_liner", "return.drops": "drop_liner"}


def liner_told(line: str) -> float | None:
    """The one thickness of liner or board in a normalised line, in inches; None if it tells none.

    >>> liner_told("18x8 lined, half inch liner"), liner_told("20x8 lined")
    (0.5, None)
    """
    if not _OF_LINER.search(line) or _OTHER.search(line):
        return None
    rest, found = line, []
    for thick, pattern in _THICK:
        if pattern.search(rest):
            found.append(thick)
            rest = pattern.sub(" ", rest)
    return found[0] if len(found) == 1 else None


def with_liner(question: Question, found: Accepted, line: str) -> Accepted:
    """A duct's size or make together with how thick its line says that the liner is.

    Args:
        question: The open question.
        found: What was read as its answer.
        line: Normalised text.
    """
    home = _HOMES.get(question.section)
    if home is None or question.field not in ("duct", "skin"):
        return found
    rows = found.values.get("ducts")
    made = (
        [found.values] if not isinstance(rows, list) else [r for r in rows if isinstance(r, dict)]
    )
    lined = [row for row in made if row.get("material") in _LINED]
    thick = liner_told(f"{line} lined" if lined and question.field == "skin" else line)
    if thick is None or len(lined) != len(made):
        return found
    if question.field == "skin":
        said = Volunteered(f"{ASIDE}{home}", {"in": thick}, line)
        return replace(found, others=(*found.others, said))
    if isinstance(rows, list):
        with_it: list[Value] = [{**row, "liner_in": thick} for row in lined]
        return replace(found, values={**found.values, "ducts": with_it})
    return replace(found, values={**found.values, "liner_in": thick})
