"""How loud air is at an opening: noise criterion by speed, and the change of sound with speed.

A rough guide for sentences, never a pass or a fail.
"""

from typing import Final

import numpy as np

from engine.arrays import Array, Floats, require_within
from engine.errors import FactError
from engine.trade.limits import Role

__all__ = [
    "FREE_AREA_SHARE",
    "NC_TARGETS",
    "is_beyond_nc_table",
    "noise_criterion_nc",
    "sound_change_db",
]

FREE_AREA_SHARE: Final = (0.60, 0.70, 0.75)
"""Free over gross area of a grille: low, likely, high.

Source: 0.70 to 0.75 for steel (memory); 0.60 to 0.75, common practice.
"""

NC_TARGETS: Final = {"bedroom": 30.0, "living room": 35.0}
"""Largest noise criterion wanted. Source: ASHRAE, NC 25-30 and 30-35 (memory, high)."""

_NC: Final = (15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0)
_SUPPLY_FPM: Final = (250.0, 300.0, 350.0, 425.0, 500.0, 575.0, 650.0)
_RETURN_FPM: Final = (300.0, 360.0, 420.0, 510.0, 600.0, 690.0, 780.0)
# Source of both rows: table of velocities at registers and grilles, architectural acoustics (read).

_SOUND_SLOPE: Final = 60.0
"""dB per decade of speed at a grille or damper.

Source: duct-flow data, 18 dB per doubling (Long, Architectural Acoustics, 13.4, read).
"""


def noise_criterion_nc(role: Role, free_velocity_fpm: Floats) -> Floats:
    """Noise criterion at a register or return grille, by the speed through its free area.

    Args:
        role: REGISTER, RETURN_GRILLE or FILTER_GRILLE.
        free_velocity_fpm: Speed through the clear slots, 0 to 5,000 fpm; any shape.

    Returns:
        NC, same shape: along the published bands from 15 to 45, held at these beyond them; see
        `is_beyond_nc_table`.

    Raises:
        FactError: Another role, for which no table was found.
        OutOfRangeError: The speed is outside these limits, or NaN.

    >>> noise_criterion_nc(Role.REGISTER, 500.0)
    35.0
    """
    require_within("free_velocity_fpm", free_velocity_fpm, 0.0, 5000.0)
    found = np.interp(np.asarray(free_velocity_fpm), _speeds(role), _NC)
    return float(found) if found.ndim == 0 else np.asarray(found)


def is_beyond_nc_table(role: Role, free_velocity_fpm: Floats) -> bool | np.ndarray:
    """Whether the speed is above the table's last band, so that NC is "at least 45"."""
    require_within("free_velocity_fpm", free_velocity_fpm, 0.0, 5000.0)
    beyond = np.asarray(np.asarray(free_velocity_fpm) > _speeds(role)[-1])
    return bool(beyond) if beyond.ndim == 0 else beyond


def sound_change_db(velocity_fpm: Floats, from_velocity_fpm: Floats) -> Floats:
    """Change of sound level when the speed at a grille or damper changes.

    Args:
        velocity_fpm: New speed, 1 to 20,000 fpm; any shape.
        from_velocity_fpm: Speed before, 1 to 20,000 fpm; broadcasts.

    Returns:
        60 log10 of the ratio, dB, broadcast shape; louder is positive.

    Raises:
        OutOfRangeError: A speed is outside these limits, or NaN.

    >>> round(sound_change_db(1000.0, 500.0))
    18
    """
    require_within("velocity_fpm", velocity_fpm, 1.0, 20000.0)
    require_within("from_velocity_fpm", from_velocity_fpm, 1.0, 20000.0)
    change = np.asarray(_SOUND_SLOPE * np.log10(velocity_fpm / from_velocity_fpm))
    return float(change) if change.ndim == 0 else change


def _speeds(role: Role) -> Array:
    if role is Role.REGISTER:
        return np.asarray(_SUPPLY_FPM)
    if role in (Role.RETURN_GRILLE, Role.FILTER_GRILLE):
        return np.asarray(_RETURN_FPM)
    raise FactError("role", f"no table of noise by speed for {role}; only for openings")
