"""Air: pressure with height, density, viscosity, velocity pressure, the heat that air carries.

Knows nothing of houses or ducts. Dry air unless a humidity ratio is given. "Standard air" is dry
air at 70 degF and 14.696 psia, rounded by the trade to 0.075 lb/ft3.
"""

from typing import Final

import numpy as np

from engine.arrays import Floats, require_within

__all__ = [
    "SENSIBLE_FACTOR",
    "STANDARD_DENSITY_LB_FT3",
    "STANDARD_VISCOSITY_FT2_S",
    "airflow_for_heat_cfm",
    "density_lb_ft3",
    "density_ratio",
    "enthalpy_btu_lb",
    "humidity_ratio",
    "humidity_ratio_at_wet_bulb",
    "kinematic_viscosity_ft2_s",
    "latent_factor",
    "moist_sensible_factor",
    "pressure_psia",
    "rise_degf",
    "saturation_pressure_psia",
    "sensible_factor",
    "total_factor",
    "velocity_pressure_inwc",
]

STANDARD_DENSITY_LB_FT3: Final = 0.075
"""Density that the trade calls standard, lb/ft3. Source: ASHRAE and AMCA convention (memory)."""

STANDARD_VISCOSITY_FT2_S: Final = 1.62e-4
"""Kinematic viscosity of standard air, ft2/s.

Source: 2021 ASHRAE Handbook-Fundamentals ch. 21, Re = 66.4 D V in mm and m/s (read), converted.
"""

SENSIBLE_FACTOR: Final = 1.08
"""Btu/h per CFM and degF in standard air: 0.075 lb/ft3 x 60 min/h x 0.24 Btu/lb degF (computed)."""

VELOCITY_PRESSURE_FPM: Final = 1096.7
"""Speed whose velocity pressure is 1 in wc at 1 lb/ft3, fpm.

Source: ASHRAE Handbook-Fundamentals, duct design (memory); with water at 68 degF.
"""

_SEA_LEVEL_PSIA: Final = 14.696
_RANKINE: Final = 459.67
_STANDARD_DEGF: Final = 70.0
_GAS_CONSTANT: Final = 53.350  # ft lbf/(lb degR), dry air; 2021 F ch. 1 (memory)
_VAPOUR_RATIO: Final = 1.607858  # molar mass of dry air over water's; 2021 F ch. 1 (memory)
_LOWEST_FT, _HIGHEST_FT = -1500.0, 15000.0
_COLDEST_DEGF, _HOTTEST_DEGF = -40.0, 250.0


def pressure_psia(elevation_ft: Floats) -> Floats:
    """Barometric pressure of the standard atmosphere at a height.

    Args:
        elevation_ft: Height above sea level, ft, -1,500 to 15,000; any shape.

    Returns:
        Pressure, psia, same shape.

    Raises:
        OutOfRangeError: The height is outside these limits, or NaN.

    Source: p = 14.696 (1 - 6.8754e-6 Z)^5.2559, 2021 ASHRAE Handbook-Fundamentals ch. 1 (memory;
    psychrolib agrees).

    >>> round(pressure_psia(5000.0), 3)
    12.228
    """
    require_within("elevation_ft", elevation_ft, _LOWEST_FT, _HIGHEST_FT)
    pressure: Floats = _SEA_LEVEL_PSIA * (1.0 - 6.8754e-6 * elevation_ft) ** 5.2559
    return pressure


def density_lb_ft3(
    elevation_ft: Floats, temperature_degf: Floats = 70.0, humidity_ratio: Floats = 0.0
) -> Floats:
    """Mass of air and vapour in a cubic foot.

    Args:
        elevation_ft: Height above sea level, ft, -1,500 to 15,000; any shape.
        temperature_degf: Dry-bulb temperature, -40 to 250 degF; broadcasts.
        humidity_ratio: Pounds of vapour per pound of dry air, 0 to 0.1; broadcasts.

    Returns:
        Density, lb/ft3, broadcast shape. Standard air gives 0.0749; the trade's 0.075 is rounded.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: ideal gas, 2021 ASHRAE Handbook-Fundamentals ch. 1 (memory; psychrolib agrees).

    >>> round(density_lb_ft3(0.0), 4)
    0.0749
    """
    require_within("temperature_degf", temperature_degf, _COLDEST_DEGF, _HOTTEST_DEGF)
    require_within("humidity_ratio", humidity_ratio, 0.0, 0.1)
    volume_of_dry_pound = _GAS_CONSTANT * (temperature_degf + _RANKINE)
    volume_of_dry_pound = volume_of_dry_pound * (1.0 + _VAPOUR_RATIO * humidity_ratio)
    return 144.0 * pressure_psia(elevation_ft) * (1.0 + humidity_ratio) / volume_of_dry_pound


def density_ratio(elevation_ft: Floats, temperature_degf: Floats = 70.0) -> Floats:
    """Density of dry air over that of standard air; 1 at sea level and 70 degF.

    Args:
        elevation_ft: Height above sea level, ft, -1,500 to 15,000; any shape.
        temperature_degf: Dry-bulb temperature, -40 to 250 degF; broadcasts.

    Returns:
        Ratio, broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: ideal gas; (p / 14.696) x 529.67 / (T + 459.67).

    >>> round(density_ratio(5000.0), 3)
    0.832
    """
    require_within("temperature_degf", temperature_degf, _COLDEST_DEGF, _HOTTEST_DEGF)
    colder = (_STANDARD_DEGF + _RANKINE) / (temperature_degf + _RANKINE)
    return pressure_psia(elevation_ft) / _SEA_LEVEL_PSIA * colder


def kinematic_viscosity_ft2_s(elevation_ft: Floats, temperature_degf: Floats = 70.0) -> Floats:
    """Viscosity of dry air over its density.

    Args:
        elevation_ft: Height above sea level, ft, -1,500 to 15,000; any shape.
        temperature_degf: Dry-bulb temperature, -40 to 250 degF; broadcasts.

    Returns:
        Kinematic viscosity, ft2/s, broadcast shape; 1.64e-4 in standard air.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: dilute-gas viscosity of Lemmon and Jacobsen, Int. J. Thermophysics 25 (2004) (memory;
    CoolProp agrees), over the density of this module.
    """
    require_within("temperature_degf", temperature_degf, _COLDEST_DEGF, _HOTTEST_DEGF)
    kelvin = (temperature_degf + _RANKINE) / 1.8
    x = np.log(kelvin / 103.3)
    collision = np.exp(0.431 + x * (-0.4623 + x * (0.08406 + x * (0.005341 - 0.00331 * x))))
    micropascal_s = 0.0266958 * np.sqrt(28.9586 * kelvin) / (0.360**2 * collision)
    dynamic_lb_ft_s = micropascal_s * 0.671969e-6
    viscosity: Floats = dynamic_lb_ft_s / density_lb_ft3(elevation_ft, temperature_degf)
    return float(viscosity) if np.ndim(viscosity) == 0 else viscosity


def velocity_pressure_inwc(
    velocity_fpm: Floats, density_lb_ft3: Floats = STANDARD_DENSITY_LB_FT3
) -> Floats:
    """Pressure that air gives up when it is brought to rest.

    Args:
        velocity_fpm: Speed, 0 to 20,000 fpm; any shape.
        density_lb_ft3: Density, 0.02 to 0.12 lb/ft3; broadcasts.

    Returns:
        Velocity pressure, in wc, broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: VP = rho (V / 1096.7)^2, ASHRAE Handbook-Fundamentals, duct design (memory).

    >>> round(velocity_pressure_inwc(4005.0), 3)
    1.0
    """
    require_within("velocity_fpm", velocity_fpm, 0.0, 20000.0)
    require_within("density_lb_ft3", density_lb_ft3, 0.02, 0.12)
    return density_lb_ft3 * (velocity_fpm / VELOCITY_PRESSURE_FPM) ** 2


def sensible_factor(density_ratio: Floats = 1.0) -> Floats:
    """Btu/h that one CFM carries per degF: 1.08 in standard air, less in thin air.

    Args:
        density_ratio: Density over standard, 0.3 to 1.6; any shape.

    Raises:
        OutOfRangeError: The ratio is outside these limits, or NaN.

    Source: 0.075 x 60 x 0.24 (computed).

    >>> sensible_factor(1.0)
    1.08
    """
    require_within("density_ratio", density_ratio, 0.3, 1.6)
    return SENSIBLE_FACTOR * density_ratio


def moist_sensible_factor(density_lb_ft3: Floats, humidity_ratio: Floats) -> Floats:
    """Btu/h that one CFM of moist air carries per degF, from its own density and specific heat.

    Args:
        density_lb_ft3: Density of the mixture, 0.02 to 0.12 lb/ft3; any shape.
        humidity_ratio: Pounds of vapour per pound of dry air, 0 to 0.1; broadcasts.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: 60 (0.240 + 0.444 W) / v, 2021 ASHRAE Handbook-Fundamentals ch. 1 (memory).
    """
    require_within("density_lb_ft3", density_lb_ft3, 0.02, 0.12)
    require_within("humidity_ratio", humidity_ratio, 0.0, 0.1)
    dry_density = density_lb_ft3 / (1.0 + humidity_ratio)
    return 60.0 * dry_density * (0.240 + 0.444 * humidity_ratio)


def latent_factor(density_ratio: Floats = 1.0) -> Floats:
    """Btu/h per CFM and pound of vapour per pound of dry air: 4,842 in standard air.

    Args:
        density_ratio: Density over standard, 0.3 to 1.6; any shape.

    Raises:
        OutOfRangeError: The ratio is outside these limits, or NaN.

    Source: 0.075 x 60 x 1076 Btu/lb (computed).
    """
    require_within("density_ratio", density_ratio, 0.3, 1.6)
    return STANDARD_DENSITY_LB_FT3 * 60.0 * 1076.0 * density_ratio


def total_factor(density_ratio: Floats = 1.0) -> Floats:
    """Btu/h per CFM and Btu/lb of enthalpy: 4.5 in standard air.

    Args:
        density_ratio: Density over standard, 0.3 to 1.6; any shape.

    Raises:
        OutOfRangeError: The ratio is outside these limits, or NaN.

    Source: 0.075 x 60 (computed).
    """
    require_within("density_ratio", density_ratio, 0.3, 1.6)
    return STANDARD_DENSITY_LB_FT3 * 60.0 * density_ratio


def airflow_for_heat_cfm(
    heat_btuh: Floats, difference_degf: Floats, density_ratio: Floats = 1.0
) -> Floats:
    """Airflow that carries a sensible heat at a temperature difference.

    Args:
        heat_btuh: Sensible heat, 0 to 1,000,000 Btu/h; any shape.
        difference_degf: Rise or drop, 1 to 200 degF; broadcasts.
        density_ratio: Density over standard, 0.3 to 1.6; broadcasts.

    Returns:
        Actual airflow, CFM, broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: CFM = heat / (1.08 x ratio x difference).

    >>> round(airflow_for_heat_cfm(64000.0, 55.0))
    1077
    """
    require_within("heat_btuh", heat_btuh, 0.0, 1e6)
    require_within("difference_degf", difference_degf, 1.0, 200.0)
    return heat_btuh / (sensible_factor(density_ratio) * difference_degf)


def rise_degf(heat_btuh: Floats, airflow_cfm: Floats, density_ratio: Floats = 1.0) -> Floats:
    """Temperature rise of an airflow that takes up a sensible heat.

    Args:
        heat_btuh: Sensible heat, 0 to 1,000,000 Btu/h; any shape.
        airflow_cfm: Actual airflow, 1 to 20,000 CFM; broadcasts.
        density_ratio: Density over standard, 0.3 to 1.6; broadcasts.

    Returns:
        Rise, degF, broadcast shape.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: rise = heat / (1.08 x ratio x CFM).
    """
    require_within("heat_btuh", heat_btuh, 0.0, 1e6)
    require_within("airflow_cfm", airflow_cfm, 1.0, 20000.0)
    return heat_btuh / (sensible_factor(density_ratio) * airflow_cfm)


def saturation_pressure_psia(temperature_degf: Floats) -> Floats:
    """Pressure of water vapour over liquid water.

    Args:
        temperature_degf: Temperature, 32 to 250 degF; any shape.

    Raises:
        OutOfRangeError: The temperature is outside these limits, or NaN.

    Source: Hyland and Wexler, as in 2021 ASHRAE Handbook-Fundamentals ch. 1 (memory; psychrolib
    agrees).
    """
    require_within("temperature_degf", temperature_degf, 32.0, _HOTTEST_DEGF)
    rankine = temperature_degf + _RANKINE
    logarithm = (
        -1.0440397e4 / rankine
        - 1.1294650e1
        - 2.7022355e-2 * rankine
        + 1.2890360e-5 * rankine**2
        - 2.4780681e-9 * rankine**3
        + 6.5459673 * np.log(rankine)
    )
    pressure: Floats = np.exp(logarithm)
    return float(pressure) if np.ndim(pressure) == 0 else pressure


def humidity_ratio(
    temperature_degf: Floats, relative_humidity_share: Floats, elevation_ft: Floats = 0.0
) -> Floats:
    """Pounds of vapour per pound of dry air.

    Args:
        temperature_degf: Dry bulb, 32 to 140 degF; any shape.
        relative_humidity_share: Relative humidity as a share of one, 0 to 1; broadcasts.
        elevation_ft: Height above sea level, ft, -1,500 to 15,000; broadcasts.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: W = 0.621945 pv / (p - pv), 2021 ASHRAE Handbook-Fundamentals ch. 1 (memory).

    >>> round(humidity_ratio(75.0, 0.5), 5)
    0.00924
    """
    require_within("temperature_degf", temperature_degf, 32.0, 140.0)
    require_within("relative_humidity_share", relative_humidity_share, 0.0, 1.0)
    vapour = relative_humidity_share * saturation_pressure_psia(temperature_degf)
    return 0.621945 * vapour / (pressure_psia(elevation_ft) - vapour)


def humidity_ratio_at_wet_bulb(
    temperature_degf: Floats, wet_bulb_degf: Floats, elevation_ft: Floats = 0.0
) -> Floats:
    """Pounds of vapour per pound of dry air, from the two bulbs of a psychrometer.

    Args:
        temperature_degf: Dry bulb, 32 to 140 degF; any shape.
        wet_bulb_degf: Wet bulb, 32 degF to the dry bulb; broadcasts.
        elevation_ft: Height above sea level, ft, -1,500 to 15,000; broadcasts.

    Returns:
        Humidity ratio, broadcast shape; 0 where the two readings are further apart than dry air
        allows.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: 2021 ASHRAE Handbook-Fundamentals ch. 1, eq. for W above freezing (memory; psychrolib
    agrees).
    """
    require_within("temperature_degf", temperature_degf, 32.0, 140.0)
    require_within("wet_bulb_degf", wet_bulb_degf, 32.0, 140.0)
    depression = temperature_degf - wet_bulb_degf
    require_within("temperature_degf - wet_bulb_degf", depression, 0.0, 108.0)
    saturated = humidity_ratio(wet_bulb_degf, 1.0, elevation_ft)
    ratio = ((1093.0 - 0.556 * wet_bulb_degf) * saturated - 0.240 * depression) / (
        1093.0 + 0.444 * temperature_degf - wet_bulb_degf
    )
    dry: Floats = np.maximum(ratio, 0.0)
    return float(dry) if np.ndim(dry) == 0 else dry


def enthalpy_btu_lb(temperature_degf: Floats, humidity_ratio: Floats = 0.0) -> Floats:
    """Heat in moist air per pound of dry air, from 0 degF.

    Args:
        temperature_degf: Dry bulb, -40 to 250 degF; any shape.
        humidity_ratio: Pounds of vapour per pound of dry air, 0 to 0.1; broadcasts.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.

    Source: h = 0.240 t + W (1061 + 0.444 t), 2021 ASHRAE Handbook-Fundamentals ch. 1 (memory).
    """
    require_within("temperature_degf", temperature_degf, _COLDEST_DEGF, _HOTTEST_DEGF)
    require_within("humidity_ratio", humidity_ratio, 0.0, 0.1)
    return 0.240 * temperature_degf + humidity_ratio * (1061.0 + 0.444 * temperature_degf)
