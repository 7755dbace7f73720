"""What each kind of answer can believably be; outside it, the person is asked.

Common practice for houses, no published source: the widest that an experienced person would take
without asking. A caller with better knowledge of the fact hands in its own bounds.
"""

from __future__ import annotations

from typing import Final

__all__ = ["BELIEVABLE", "believable"]

BELIEVABLE: Final[dict[str, tuple[float, float]]] = {
    "side_in": (3.0, 36.0),
    "stack_side_in": (2.0, 36.0),
    "diameter_in": (3.0, 24.0),
    "duct_length_ft": (1.0, 150.0),
    "aspect": (1.0, 5.0),
    "cfm": (200.0, 3000.0),
    "inwc": (0.02, 1.6),
    "ft": (1.0, 300.0),
    "elevation_ft": (-280.0, 10_500.0),
    "degF": (-40.0, 200.0),
    "delta_degF": (3.0, 100.0),
    "btuh": (9_000.0, 160_000.0),
    "cooling_btuh": (9_000.0, 60_000.0),
    "fraction": (0.55, 1.0),
    "filter_side_in": (6.0, 36.0),
    "filter_depth_in": (0.5, 6.0),
    "merv": (1.0, 20.0),
    "grille_side_in": (4.0, 48.0),
    "count": (0.0, 60.0),
    "duct_count": (1.0, 24.0),
    "year": (1850.0, 2035.0),
    "area_ft2": (100.0, 12_000.0),
    "percent": (0.0, 100.0),
    "rise_degf": (10.0, 110.0),
}


def believable(name: str, value: float) -> bool:
    """Whether a value lies inside the bounds of that name; NaN never does."""
    low, high = BELIEVABLE[name]
    return low <= value <= high
