"""Sentences for keys that name a known fact in another unit, or nearly name one."""

from difflib import get_close_matches
from typing import Final

from engine.job.facts import catalogue, pattern_of

__all__ = ["nearest_keys"]

_UNITS: Final = (
    "inwc", "cfm", "fpm", "degf", "btuh", "in", "ft", "ft2", "kw", "tons", "fraction", "count",
    "ppm",
)  # fmt: skip
"""Units that keys of the catalogue end in."""

_FOREIGN: Final = (
    "mm", "cm", "m", "inch", "inches", "feet", "foot", "pa", "kpa", "mbar", "degc", "c", "f", "k",
    "w", "watts", "m3h", "m3s", "ls", "lps", "percent", "pct", "m2", "sqft", "ton", "mbh", "kbtuh",
    "btu", "scfm", "iwc", "wc",
)  # fmt: skip
"""Endings that people write where the catalogue has another unit."""


def nearest_keys(key: str) -> str:
    """What to write instead of an unknown key; empty if nothing is near.

    >>> nearest_keys("supply.trunks.0.width_mm")
    'is in another unit than this tool takes; give it as supply.trunks.0.width_in'
    """
    pattern = pattern_of(key)
    stem, _, ending = pattern.rpartition("_")
    if stem and ending.lower() in (*_FOREIGN, *_UNITS):
        for unit in _UNITS:
            if f"{stem}_{unit}" in catalogue():
                right = key.rpartition("_")[0] + f"_{unit}"
                return f"is in another unit than this tool takes; give it as {right}"
    for unit in _UNITS:
        if f"{pattern}_{unit}" in catalogue():
            return f"lacks its unit; give it as {key}_{unit}"
    near = get_close_matches(pattern, catalogue(), n=3, cutoff=0.6)
    return f"is no fact of the catalogue; did you mean {' or '.join(near)}?" if near else ""
