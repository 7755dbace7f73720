"""The thing of the job that a correction names, and the kind of answer it takes."""

from __future__ import annotations

import re
from typing import Final

__all__ = ["fact_named", "field_of"]

_KINDS: Final[dict[str, str]] = {
    "filter": "filter|filters|filter size",
    "airflow": "airflow|air flow|cfm",
    "static_pressure": (
        "static|pressure|statics|esp|tesp|return static|supply static|total static|static pressure"
        "|external static"
    ),
    "length": "length|run length|distance|trunk length|duct length",
    "temperature": (
        "temp|temperature|supply temp|return temp|temp rise|temperature rise|rise|split"
        "|supply air temp"
    ),
    "capacity": (
        "tonnage|capacity|ac|a/c|condenser|heat pump|furnace input|input|output|btus|btu"
        "|furnace size|ac size"
    ),
    "efficiency": "efficiency|afue|furnace efficiency",
    "elevation": "elevation|altitude",
    "coil_state": "coil|evap|evaporator|indoor coil",
    "blower_type": "motor|blower motor|fan motor|blower type",
    "material": "material|duct material",
    "duct": (
        "plenum|drop|main trunk|supply trunk|return trunk|trunk line|supply duct|return duct"
        "|duct size|trunk size|supply plenum|return plenum"
    ),
    "grille": ("grille|grill|register|return grille|return grill|grille size|vent|filter grille"),
}
"""The names of what each kind of answer is given for."""
_FIELDS: Final = {name: kind for kind, names in _KINDS.items() for name in names.split("|")}
_ALSO: Final[dict[str, tuple[str, ...]]] = {
    "furnace": ("efficiency", "capacity"),
    "unit": ("capacity", "efficiency"),
    "duct": ("duct", "material", "length"),
    "trunk": ("duct", "material", "length"),
    "branch": ("duct", "material", "length"),
    "main": ("duct", "length"),
    "return drop": ("duct", "length", "material"),
    "blower": ("blower_type", "airflow"),
    "input": ("capacity",),
    "return": ("duct", "static_pressure", "temperature", "grille"),
    "supply": ("duct", "static_pressure", "temperature"),
}
_NAME: Final = re.compile(
    r"(?<!\d )(?<!\d)\b(?:(?:the|my|that|our|this|on|for|about) )*(?P<fact>"
    + "|".join(re.escape(name) for name in sorted({*_FIELDS, *_ALSO}, key=len, reverse=True))
    + r")\b(?!-)"
)


def fact_named(text: str) -> re.Match[str] | None:
    """The first thing named in a normalised text, as the group "fact", with its article.

    >>> fact_named("the return drop is 14x20")["fact"]
    'return drop'
    """
    return _NAME.search(text)


def field_of(fact: str) -> tuple[str, ...]:
    """The kinds of answer that a named thing takes, the likeliest first; empty if it is none.

    >>> field_of("coil"), field_of("weather")
    (('coil_state',), ())
    """
    if fact in _ALSO:
        return _ALSO[fact]
    return (_FIELDS[fact],) if fact in _FIELDS else ()
