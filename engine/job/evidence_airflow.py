"""Airflow of a present system, by every way a person in the house can find it.

Each way gives a figure, how far it may be off, and whether a dirty wheel hides in it. Knows
nothing of pressures in the house beyond the one static a blower table is entered with.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import Final

from engine.arrays import require_within
from engine.physics.air import airflow_for_heat_cfm
from engine.physics.blower_table import BlowerTable, TablePlace

__all__ = [
    "AIRFLOW_AS_FOUND_CFM_PER_TON",
    "AIRFLOW_TOLERANCES",
    "AirflowRead",
    "AirflowSource",
    "Tolerance",
    "airflow_from_blower_table",
    "airflow_from_flow_plate",
    "airflow_from_hood_sum",
    "airflow_from_rise",
    "airflow_from_strip_heat",
    "airflow_from_traverse",
    "airflow_told",
]


class AirflowSource(StrEnum):
    """How an airflow was found."""

    BLOWER_TABLE = "blower_table"
    TEMPERATURE_RISE = "temperature_rise"
    TEMPERATURE_RISE_CLOCKED = "temperature_rise_clocked"
    STRIP_HEAT = "strip_heat"
    FLOW_PLATE = "flow_plate"
    TRAVERSE = "traverse"
    HOOD_SUM = "hood_sum"
    OTHER = "other"


@dataclass(frozen=True, slots=True)
class Tolerance:
    """One standard deviation of a way of knowing, as a share of the figure."""

    share: float
    source: str


_CP: Final = "common practice, no published source"

AIRFLOW_TOLERANCES: Final[Mapping[AirflowSource, Tolerance]] = MappingProxyType(
    {
        AirflowSource.BLOWER_TABLE: Tolerance(0.12, f"{_CP}; a clean wheel's table"),
        AirflowSource.TEMPERATURE_RISE: Tolerance(
            0.09, "root of squares of 7 % input, 2 % efficiency, 5.5 % rise (computed)"
        ),
        AirflowSource.TEMPERATURE_RISE_CLOCKED: Tolerance(
            0.065, "root of squares of 3 % input, 2 % efficiency, 5.5 % rise (computed)"
        ),
        AirflowSource.STRIP_HEAT: Tolerance(0.06, f"{_CP}; volts unmeasured"),
        AirflowSource.FLOW_PLATE: Tolerance(0.07, _CP),
        AirflowSource.TRAVERSE: Tolerance(0.15, f"{_CP}; short house ducts"),
        AirflowSource.HOOD_SUM: Tolerance(
            0.18, "plain hoods at registers 11 to 25 %, laboratory studies of flow hoods (read)"
        ),
        AirflowSource.OTHER: Tolerance(0.25, _CP),
    }
)
"""How far each way of finding an airflow may be off."""

AIRFLOW_AS_FOUND_CFM_PER_TON: Final = (222.0, 337.0, 475.0)
"""Cooling airflow of present systems: one in ten below, middle, one in ten above.

Source: percentiles computed from the airflow distribution of a national stock model that credits
Winkler et al. 2020 (read).
"""

TYPICAL_SUPPLY_LEAK_SHARE: Final = 0.11
"""Source: 2021 ASHRAE Handbook-Fundamentals ch. 17, typical system, each side (read)."""


@dataclass(frozen=True, slots=True)
class AirflowRead:
    """An airflow at the blower, as found.

    Attributes:
        airflow_cfm: The figure.
        tolerance_share: One standard deviation as a share of it.
        source: How it was found.
        hides_wheel: Whether a dirty wheel would move less than this: true for a blower's table.
        place: Beyond a blower table's ends the figure is a bound: "at least" below the first
            row, "at most" beyond the last.
    """

    airflow_cfm: float
    tolerance_share: float
    source: AirflowSource
    hides_wheel: bool = False
    place: TablePlace = TablePlace.WITHIN

    def __post_init__(self) -> None:
        """Refuse an airflow or tolerance that can't be.

        Raises:
            OutOfRangeError: Airflow outside 20 to 20,000 CFM, tolerance outside 0.005 to 2.
        """
        require_within("airflow_cfm", self.airflow_cfm, 20.0, 20000.0)
        require_within("tolerance_share", self.tolerance_share, 0.005, 2.0)


def airflow_told(
    airflow_cfm: float, source: AirflowSource = AirflowSource.OTHER, widened: float = 1.0
) -> AirflowRead:
    """An airflow somebody states, with the tolerance of its source.

    Args:
        airflow_cfm: Airflow at the blower, 20 to 20,000 CFM.
        source: How it was found.
        widened: Factor on the tolerance, 1 to 5; 2 where the person said "about".

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.
    """
    require_within("widened", widened, 1.0, 5.0)
    share = AIRFLOW_TOLERANCES[source].share * widened
    return AirflowRead(airflow_cfm, share, source, source is AirflowSource.BLOWER_TABLE)


def airflow_from_blower_table(table: BlowerTable, static_inwc: float) -> AirflowRead:
    """Airflow of the present blower, from its table at the total external static it was read at.

    Args:
        table: The setting it ran at.
        static_inwc: Total external static, 0 to 10 in wc.

    Returns:
        The table's figure for a clean wheel; a bound beyond the table's ends.

    Raises:
        OutOfRangeError: The static is outside these limits, or NaN.
    """
    found = table.airflow_at(static_inwc)
    return AirflowRead(
        float(found.airflow_cfm),
        AIRFLOW_TOLERANCES[AirflowSource.BLOWER_TABLE].share,
        AirflowSource.BLOWER_TABLE,
        hides_wheel=True,
        place=TablePlace(int(found.place)),
    )


def airflow_from_rise(
    input_btuh: float,
    efficiency_fraction: float,
    rise_degf: float,
    density_ratio: float = 1.0,
    *,
    clocked: bool = False,
) -> AirflowRead:
    """Airflow of a furnace at steady fire, from its output and temperature rise.

    Args:
        input_btuh: Burner input, 5,000 to 500,000 Btu/h: the plate's, or clocked at the meter.
        efficiency_fraction: Output over input, 0.4 to 1.
        rise_degf: Supply less return temperature, 5 to 150 degF.
        density_ratio: Density over standard, 0.3 to 1.6.
        clocked: Whether the input was clocked.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: CFM = output / (1.08 x density ratio x rise).

    >>> round(airflow_from_rise(80000.0, 0.8, 55.0).airflow_cfm)
    1077
    """
    require_within("input_btuh", input_btuh, 5000.0, 500000.0)
    require_within("efficiency_fraction", efficiency_fraction, 0.4, 1.0)
    require_within("rise_degf", rise_degf, 5.0, 150.0)
    airflow = airflow_for_heat_cfm(input_btuh * efficiency_fraction, rise_degf, density_ratio)
    source = AirflowSource.TEMPERATURE_RISE_CLOCKED if clocked else AirflowSource.TEMPERATURE_RISE
    return airflow_told(float(airflow), source)


BTUH_PER_KW: Final = 3412.14
"""1 kW in Btu/h (definition of the Btu, computed)."""


def airflow_from_strip_heat(kw: float, rise_degf: float, density_ratio: float = 1.0) -> AirflowRead:
    """Airflow from the rise across electric strip heat that runs alone.

    Args:
        kw: Electric power of the strips, 1 to 60 kW; best as volts x amps / 1,000.
        rise_degf: Supply less return temperature, 5 to 150 degF.
        density_ratio: Density over standard, 0.3 to 1.6.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.
    """
    require_within("kw", kw, 1.0, 60.0)
    require_within("rise_degf", rise_degf, 5.0, 150.0)
    airflow = airflow_for_heat_cfm(kw * BTUH_PER_KW, rise_degf, density_ratio)
    return airflow_told(float(airflow), AirflowSource.STRIP_HEAT)


def airflow_from_flow_plate(
    airflow_cfm: float,
    with_plate_static_inwc: float | None = None,
    normal_static_inwc: float | None = None,
) -> AirflowRead:
    """Airflow read on a plate that takes the filter's place.

    Args:
        airflow_cfm: The plate's figure, 20 to 20,000 CFM.
        with_plate_static_inwc: Supply static with the plate in, 0.005 to 3 in wc.
        normal_static_inwc: The same static with the filter in, 0.005 to 3 in wc. With both, the
            figure is brought to normal running by the square root of their ratio.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: drop goes with the square of airflow in the same ducts.
    """
    if with_plate_static_inwc is not None and normal_static_inwc is not None:
        require_within("with_plate_static_inwc", with_plate_static_inwc, 0.005, 3.0)
        require_within("normal_static_inwc", normal_static_inwc, 0.005, 3.0)
        airflow_cfm = airflow_cfm * float((normal_static_inwc / with_plate_static_inwc) ** 0.5)
    return airflow_told(airflow_cfm, AirflowSource.FLOW_PLATE)


def airflow_from_traverse(area_ft2: float, velocities_fpm: Iterable[float]) -> AirflowRead:
    """Airflow from speeds read over the cross-section of a duct that carries all the air.

    Args:
        area_ft2: Clear area, 0.05 to 20 ft2.
        velocities_fpm: Speeds at points of equal area, each 0 to 5,000 fpm; at least one.

    Raises:
        OutOfRangeError: A value is outside these limits, or no speed was given.
    """
    require_within("area_ft2", area_ft2, 0.05, 20.0)
    speeds = tuple(velocities_fpm)
    require_within("velocities_count", float(len(speeds)), 1.0, 10000.0)
    for speed in speeds:
        require_within("velocity_fpm", speed, 0.0, 5000.0)
    return airflow_told(area_ft2 * sum(speeds) / len(speeds), AirflowSource.TRAVERSE)


def airflow_from_hood_sum(
    registers_cfm: Iterable[float], supply_leak_share: float = TYPICAL_SUPPLY_LEAK_SHARE
) -> AirflowRead:
    """Airflow at the blower, from a hood held to every supply register.

    Args:
        registers_cfm: Airflow of each register, each 0 to 2,000 CFM; all registers.
        supply_leak_share: Share of the blower's air that leaks before the registers, 0 to 0.6.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.
    """
    require_within("supply_leak_share", supply_leak_share, 0.0, 0.6)
    total = 0.0
    for airflow in registers_cfm:
        require_within("register_cfm", airflow, 0.0, 2000.0)
        total += airflow
    return airflow_told(total / (1.0 - supply_leak_share), AirflowSource.HOOD_SUM)
