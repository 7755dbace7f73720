"""The one numeric type of the engine, and the check that a value is inside its limits."""

import numpy as np
from numpy.typing import NDArray

from engine.errors import OutOfRangeError

__all__ = ["Array", "Floats", "require_within"]

Array = NDArray[np.float64]
Floats = float | Array


def require_within(name: str, values: Floats, low: float, high: float) -> None:
    """Raise OutOfRangeError unless every value is in [low, high]; NaN never is.

    Args:
        name: The quantity with its unit, as the error will show it.
        values: Scalar or array of any shape.
        low: Smallest value allowed.
        high: Largest value allowed.

    >>> require_within("airflow_cfm", 900.0, 0.0, 5000.0)
    """
    flat = np.atleast_1d(values)
    outside = ~((flat >= low) & (flat <= high))
    if outside.any():
        raise OutOfRangeError(name, float(flat[outside][0]), low, high)
