"""Fan laws, and in one place every name about blowers: tables, systems, operating points."""

from engine.arrays import Floats, require_within
from engine.physics.blower_table import AirflowAt, BlowerTable, MotorKind, StaticAt, TablePlace
from engine.physics.operating import (
    GENERIC_CURVES,
    GenericCurve,
    OperatingPoint,
    System,
    coefficient_at,
    constant_airflow_point,
    generic_operating_point,
    operating_point,
    system_static_inwc,
)

__all__ = [
    "GENERIC_CURVES",
    "AirflowAt",
    "BlowerTable",
    "GenericCurve",
    "MotorKind",
    "OperatingPoint",
    "StaticAt",
    "System",
    "TablePlace",
    "coefficient_at",
    "constant_airflow_point",
    "fan_law_airflow_cfm",
    "fan_law_power_w",
    "fan_law_static_inwc",
    "generic_operating_point",
    "operating_point",
    "system_static_inwc",
]


def fan_law_airflow_cfm(airflow_cfm: Floats, speed_ratio: Floats) -> Floats:
    """Airflow at another wheel speed in the same ducts: in proportion.

    Raises:
        OutOfRangeError: The speed ratio is outside 0.05 to 5, or NaN.

    Source: fan laws (memory, high).
    """
    require_within("speed_ratio", speed_ratio, 0.05, 5.0)
    return airflow_cfm * speed_ratio


def fan_law_static_inwc(
    static_inwc: Floats, speed_ratio: Floats, density_ratio: Floats = 1.0
) -> Floats:
    """Static at another wheel speed and density in the same ducts: speed squared x density.

    Raises:
        OutOfRangeError: A ratio is outside 0.05 to 5, or NaN.

    Source: fan laws (memory, high).
    """
    require_within("speed_ratio", speed_ratio, 0.05, 5.0)
    require_within("density_ratio", density_ratio, 0.05, 5.0)
    return static_inwc * speed_ratio**2 * density_ratio


def fan_law_power_w(power_w: Floats, speed_ratio: Floats, density_ratio: Floats = 1.0) -> Floats:
    """Shaft power at another wheel speed and density: speed cubed x density.

    Raises:
        OutOfRangeError: A ratio is outside 0.05 to 5, or NaN.

    Source: fan laws (memory, high).
    """
    require_within("speed_ratio", speed_ratio, 0.05, 5.0)
    require_within("density_ratio", density_ratio, 0.05, 5.0)
    return power_w * speed_ratio**3 * density_ratio
