"""Flexible duct: what slack, sag and bends do to the friction of a fully stretched one."""

from typing import Final

import numpy as np

from engine.arrays import Floats, require_within

__all__ = ["TESTED_TO_IN", "WIDEST_BEYOND", "sag_length_factor", "slack_factor"]

TESTED_TO_IN: Final = 10.0
"""Largest diameter behind the slack correction, in. Tests were made on 6, 8 and 10 in duct."""

WIDEST_BEYOND: Final = 3.0
"""How many times the formula's excess the truth may be in larger duct.

Source: judgement; tests of 12 to 16 in duct found more than four times the stretched friction past
4 % slack (Cantrill 2013, abstract, read), where the formula gives 1.3 to 1.5.
"""

_FULL_DOUBT_IN: Final = 12.0


def slack_factor(diameter_in: Floats, slack_fraction: Floats, beyond_tests: Floats = 0.5) -> Floats:
    """Friction of slack flex over that of the same flex pulled fully straight.

    Applies to friction at the stretched duct's roughness, over the installed length.

    Args:
        diameter_in: Core diameter, in, 2 to 30; any shape.
        slack_fraction: Share of its full length that the duct falls short of, 0 to 0.6; broadcasts.
        beyond_tests: Place in the doubt above 10 in, 0 to 1; broadcasts. The excess over 1 is
            multiplied by 3 ** beyond_tests from 12 in up, by less between 10 and 12 in, and not at
            all up to 10 in.

    Returns:
        Factor, 1 or more, broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: 1 + 0.58 Kc exp(-0.00496 D), D in mm, Kc in per cent; 2021 ASHRAE
    Handbook-Fundamentals ch. 21 eq. 22 and 23 (read). Beyond 10 in: judgement, see
    `WIDEST_BEYOND`. Beyond 45 % slack it goes past the laboratory's range.

    >>> round(slack_factor(8.0, 0.15), 2)
    4.18
    """
    require_within("diameter_in", diameter_in, 2.0, 30.0)
    require_within("slack_fraction", slack_fraction, 0.0, 0.6)
    require_within("beyond_tests", beyond_tests, 0.0, 1.0)
    excess = 58.0 * slack_fraction * np.exp(-0.00496 * 25.4 * diameter_in)
    doubt = np.clip((diameter_in - TESTED_TO_IN) / (_FULL_DOUBT_IN - TESTED_TO_IN), 0.0, 1.0)
    factor: Floats = 1.0 + excess * WIDEST_BEYOND ** (beyond_tests * doubt)
    return float(factor) if np.ndim(factor) == 0 else factor


def sag_length_factor(sag_in_per_ft: Floats) -> Floats:
    """Length of flex that hangs between supports over the straight distance.

    Args:
        sag_in_per_ft: Sag per foot between supports, in, 0 to 6; any shape.

    Returns:
        Factor, 1 or more, same shape.

    Raises:
        OutOfRangeError: The sag is outside these limits, or NaN.

    Source: length of a parabola with sag s over span 1,
    sqrt(1 + 16 s^2)/2 + asinh(4 s)/(8 s) (geometry).

    >>> round(sag_length_factor(0.5), 4)
    1.0046
    """
    require_within("sag_in_per_ft", sag_in_per_ft, 0.0, 6.0)
    slope = np.maximum(np.asarray(sag_in_per_ft, dtype=np.float64) / 3.0, 1e-9)  # 4 s
    factor = np.sqrt(1.0 + slope**2) / 2.0 + np.arcsinh(slope) / (2.0 * slope)
    return float(factor) if factor.ndim == 0 else np.asarray(factor)
