"""Air against psychrolib, CoolProp and figures of the handbooks; never against our own output."""

import psychrolib
import pytest
from CoolProp.CoolProp import PropsSI

from engine.physics import air

PA_PER_PSI = 6894.757
KG_M3_PER_LB_FT3 = 16.018463
M2_S_PER_FT2_S = 0.09290304


@pytest.fixture(autouse=True)
def _inch_pound() -> None:
    psychrolib.SetUnitSystem(psychrolib.IP)


# psychrolib's standard atmosphere and dry-air density (computed with the library).
@pytest.mark.parametrize("elevation_ft", [0.0, 1000.0, 2500.0, 5000.0, 7000.0, 10000.0])
def test_pressure_is_psychrolibs(elevation_ft: float) -> None:
    published = psychrolib.GetStandardAtmPressure(elevation_ft)
    assert air.pressure_psia(elevation_ft) == pytest.approx(published, rel=1e-4)


@pytest.mark.parametrize("elevation_ft", [0.0, 2000.0, 5000.0, 10000.0])
@pytest.mark.parametrize("temperature_degf", [40.0, 70.0, 95.0, 140.0])
def test_dry_density_is_psychrolibs_and_coolprops(
    elevation_ft: float, temperature_degf: float
) -> None:
    psia = psychrolib.GetStandardAtmPressure(elevation_ft)
    published = psychrolib.GetDryAirDensity(temperature_degf, psia)
    ours = air.density_lb_ft3(elevation_ft, temperature_degf)
    assert ours == pytest.approx(published, rel=5e-4)
    kelvin = (temperature_degf + 459.67) / 1.8
    real_gas = PropsSI("D", "P", psia * PA_PER_PSI, "T", kelvin, "Air") / KG_M3_PER_LB_FT3
    assert ours == pytest.approx(real_gas, rel=2e-3)  # an ideal gas differs by up to 0.1 %


@pytest.mark.parametrize("elevation_ft", [0.0, 3000.0, 10000.0])
@pytest.mark.parametrize("temperature_degf", [40.0, 70.0, 120.0, 140.0])
def test_viscosity_is_coolprops(elevation_ft: float, temperature_degf: float) -> None:
    kelvin = (temperature_degf + 459.67) / 1.8
    pascal = psychrolib.GetStandardAtmPressure(elevation_ft) * PA_PER_PSI
    dynamic = PropsSI("V", "P", pascal, "T", kelvin, "Air")
    published = dynamic / PropsSI("D", "P", pascal, "T", kelvin, "Air") / M2_S_PER_FT2_S
    ours = air.kinematic_viscosity_ft2_s(elevation_ft, temperature_degf)
    assert ours == pytest.approx(published, rel=2e-3)


# Moist air at 75 F 50 %, 80 F 50 %, 55 F 95 % (computed with psychrolib).
@pytest.mark.parametrize(("temperature_degf", "share"), [(75.0, 0.5), (80.0, 0.5), (55.0, 0.95)])
def test_moist_air_is_psychrolibs(temperature_degf: float, share: float) -> None:
    ratio = psychrolib.GetHumRatioFromRelHum(temperature_degf, share, 14.696)
    assert air.humidity_ratio(temperature_degf, share) == pytest.approx(ratio, rel=1e-4)
    assert air.density_lb_ft3(0.0, temperature_degf, ratio) == pytest.approx(
        psychrolib.GetMoistAirDensity(temperature_degf, ratio, 14.696), rel=5e-4
    )
    assert air.enthalpy_btu_lb(temperature_degf, ratio) == pytest.approx(
        psychrolib.GetMoistAirEnthalpy(temperature_degf, ratio), rel=1e-3
    )
    published = (
        60.0
        * (0.240 + 0.444 * ratio)
        / psychrolib.GetMoistAirVolume(temperature_degf, ratio, 14.696)
    )
    density = air.density_lb_ft3(0.0, temperature_degf, ratio)
    assert air.moist_sensible_factor(density, ratio) == pytest.approx(published, rel=5e-4)


@pytest.mark.parametrize("temperature_degf", [33.0, 55.0, 75.0, 100.0, 140.0])
def test_saturation_is_psychrolibs(temperature_degf: float) -> None:
    assert air.saturation_pressure_psia(temperature_degf) == pytest.approx(
        psychrolib.GetSatVapPres(temperature_degf), rel=1e-5
    )


@pytest.mark.parametrize(
    ("temperature_degf", "wet_bulb_degf", "elevation_ft"),
    [(80.0, 67.0, 0.0), (75.0, 63.0, 5000.0), (75.0, 62.0, 0.0)],
)
def test_wet_bulb_is_psychrolibs(
    temperature_degf: float, wet_bulb_degf: float, elevation_ft: float
) -> None:
    psia = psychrolib.GetStandardAtmPressure(elevation_ft)
    published = psychrolib.GetHumRatioFromTWetBulb(temperature_degf, wet_bulb_degf, psia)
    ours = air.humidity_ratio_at_wet_bulb(temperature_degf, wet_bulb_degf, elevation_ft)
    assert ours == pytest.approx(published, rel=1e-3)


# Altitude table of the residential trade, three decimals printed, so half of the last is asked:
# density ratio at 70 F of 0.930, 0.864 and 0.801 at 2,000, 4,000 and 6,000 ft (computed with
# psychrolib; 0.864 and 0.801 also stand in common altitude tables, memory high).
@pytest.mark.parametrize(
    ("elevation_ft", "published"),
    [(0.0, 1.000), (1000.0, 0.964), (2000.0, 0.930), (4000.0, 0.864), (6000.0, 0.801)],
)
def test_density_ratio_at_room_temperature(elevation_ft: float, published: float) -> None:
    assert air.density_ratio(elevation_ft) == pytest.approx(published, abs=6e-4)


# ASHRAE and AMCA standard air: 0.075 lb/ft3, velocity pressure (V / 4005)^2 (memory, high).
def test_velocity_pressure_of_4005_fpm_is_one_inch() -> None:
    assert air.velocity_pressure_inwc(4005.0) == pytest.approx(1.0, abs=5e-4)


def test_standard_air_is_0_075() -> None:
    assert air.density_lb_ft3(0.0, 70.0) == pytest.approx(0.075, rel=2e-3)


# Heat constants of the trade: 1.08, 4840 and 4.5 (ASHRAE, memory high).
def test_heat_constants_of_standard_air() -> None:
    assert air.sensible_factor(1.0) == pytest.approx(1.08, abs=5e-4)
    assert air.latent_factor(1.0) == pytest.approx(4840.0, abs=5.0)
    assert air.total_factor(1.0) == pytest.approx(4.5, abs=5e-3)


# Trade formula sheet, CFM = output / (1.08 x rise) (read); worked here by hand: an 80,000 Btu/h
# furnace of 80 % at a 55 degF rise moves 64,000 / 59.4 = 1,077 CFM.
def test_airflow_of_an_80_percent_furnace() -> None:
    assert air.airflow_for_heat_cfm(80000.0 * 0.80, 55.0) == pytest.approx(1077.4, abs=0.1)
