"""Answers that only this interview asks for: equipment, tools, skins, tapes, thickness, states.

Each reader takes normalised text and gives what `intake.reading` gives; None if it holds nothing
of the kind.
"""

import re
from collections.abc import Callable, Mapping
from typing import Final

from intake.interview.bag import read_tools
from intake.interview.cleanliness import read_conditions
from intake.interview.going_in import read_equipment
from intake.interview.phone_reading import read_change
from intake.interview.phone_trouble import read_trouble
from intake.interview.skins import read_measured_where, read_skin
from intake.reading.clean import normalise
from intake.reading.result import (
    Accepted,
    AskBack,
    AskKind,
    Reading,
)
from intake.reading.scan import scan

__all__ = ["OWN_FIELDS", "read_own"]


_THICKEST_IN: Final = 6.5
"""Filters are at most 6 in. deep, liner and board at most 2."""

_PER_UNIT_IN: Final = {"": 1.0, "in": 1.0, "mm": 1 / 25.4, "cm": 1 / 2.54}


_AN_INCH: Final = re.compile(r"\ban? inch\b|^(?:about |like |just )?inch\b(?! and)")


_THE_ONE: Final = re.compile(
    r"\b(?:thick|thin|big|fat|regular|standard|deep|normal|usual|the|this|that) ones?\b(?! inch)"
)
"""A "one" that counts nothing."""


def _thickness(text: str, choices: tuple[str, ...]) -> Reading | None:
    text = _THE_ONE.sub(" ", text)
    numbers = [n for n in scan(text, "duct").numbers if n.unit in _PER_UNIT_IN]
    if not numbers:
        return Accepted({"in": 1.0}) if _AN_INCH.search(text) else None
    sizes = sorted({round(n.value * _PER_UNIT_IN[n.unit], 3) for n in numbers})
    if sizes[-1] > _THICKEST_IN:
        return None
    if len(sizes) > 1:
        return AskBack(
            f"Which thickness: {' or '.join(f'{s:g}' for s in sizes)} in.?",
            tuple({"in": size} for size in sizes),
            AskKind.TWO_VALUES,
        )
    return Accepted({"in": sizes[0]})


_Reader = Callable[[str, tuple[str, ...]], Reading | None]
_READERS: Final[Mapping[str, _Reader]] = {
    "equipment": read_equipment,
    "tools": read_tools,
    "skin": read_skin,
    "measured_where": read_measured_where,
    "thickness": _thickness,
    "conditions": read_conditions,
    "change": read_change,
    "trouble": read_trouble,
}
OWN_FIELDS: Final = frozenset(_READERS)
"""Fields that are read here."""


def read_own(field: str, text: str, choices: tuple[str, ...]) -> Reading | None:
    """Read an answer to one of `OWN_FIELDS`; None if the text holds nothing of it.

    >>> read_own("equipment", "two-stage 3 ton heat pump", ()).values
    {'kind': 'heat_pump', 'stages': 'two', 'tons': 3.0}
    """
    return _READERS[field](normalise(text), choices)
