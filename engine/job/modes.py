"""The airflow modes a system runs in; each has its own target and its own verdict."""

from enum import StrEnum
from typing import Final

__all__ = ["Mode"]


class Mode(StrEnum):
    """An airflow mode; `cooling_low` is the drying airflow of staged equipment."""

    COOLING_HIGH = "cooling_high"
    COOLING_LOW = "cooling_low"
    HEATING_HIGH = "heating_high"
    HEATING_LOW = "heating_low"
    HEAT_PUMP_HEATING = "heat_pump_heating"
    STRIP_HEAT = "strip_heat"

    @property
    def words(self) -> str:
        """As the trade calls it."""
        return _WORDS[self]

    @property
    def is_cooling(self) -> bool:
        """Whether the coil is wet in this mode."""
        return self in (Mode.COOLING_HIGH, Mode.COOLING_LOW)

    @property
    def is_burner(self) -> bool:
        """Whether a burner heats the air in this mode."""
        return self in (Mode.HEATING_HIGH, Mode.HEATING_LOW)


_WORDS: Final = {
    Mode.COOLING_HIGH: "full cooling",
    Mode.COOLING_LOW: "low-stage cooling",
    Mode.HEATING_HIGH: "full heat",
    Mode.HEATING_LOW: "low heat",
    Mode.HEAT_PUMP_HEATING: "heat pump heating",
    Mode.STRIP_HEAT: "electric strip heat",
}
