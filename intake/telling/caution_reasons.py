"""What switches on the cautions whose trigger takes more than one fact or a limit.

Each answers with the reason as a clause, or None. A limit has its source beside it.
"""

from __future__ import annotations

from typing import Final

from intake.telling.caution_triggers import (
    ROWS,
    Situation,
    Trigger,
    above,
    any_of,
    both,
    heard,
    is_one_of,
    material_is,
    number_of,
    remedy_touches,
    rise_readings,
    stated,
)

__all__ = [
    "ASBESTOS",
    "COLD_CFM_PER_TON",
    "CO_LEAVE_PPM",
    "CO_SHUT_DOWN_PPM",
    "CO_WHY_PPM",
    "DAMP",
    "DUCT_WORK",
    "FRAMING",
    "FREEZING_CFM_PER_TON",
    "HIGH_ALTITUDE_FT",
    "HOT_PLACES",
    "READS_PRESSURE",
    "absurd_pressure",
    "co_between",
    "cold_drop",
    "flame_in_the_room",
    "fuel_to_electric",
    "opens_the_cabinet",
    "per_ton_between",
    "return_work_near_a_burner",
    "rise_too_high",
    "rise_too_low",
    "sealed_replaces_vented",
    "too_much_air",
]

# Action levels for carbon monoxide in room air, ppm: find out why, shut down, leave.
# Source: ANSI/BPI-1200 (how: memory).
CO_WHY_PPM: Final = 9.0
CO_SHUT_DOWN_PPM: Final = 35.0
CO_LEAVE_PPM: Final = 70.0


def co_between(low_ppm: float, high_ppm: float) -> Trigger:
    """On while carbon monoxide in room air, ppm, is at least the one and below the other."""

    def trigger(situation: Situation) -> str | None:
        ppm = number_of(situation, "symptoms.co_ppm")
        if ppm is None or not low_ppm <= ppm < high_ppm:
            return None
        return f"{ppm:g} ppm was measured in the room's air"

    return trigger


def rise_too_high(situation: Situation) -> str | None:
    """A predicted or read temperature rise above the top of its plate's range."""
    top = number_of(situation, "equipment.rise_high_degf")
    rise = situation.predicted("rise_degf")
    if top is not None and rise is not None and rise > top:
        return f"a rise of {rise:.0f} F is predicted, and the plate ends at {top:.0f} F"
    old_top = number_of(situation, "old.rise_high_degf")
    read = max(rise_readings(situation, heating=True), default=0.0)
    if old_top is not None and read > old_top:
        return f"a rise of {read:.0f} F was read, and the present plate ends at {old_top:.0f} F"
    return None


def rise_too_low(situation: Situation) -> str | None:
    """A predicted or read temperature rise below the bottom of its plate's range."""
    bottom = number_of(situation, "equipment.rise_low_degf")
    rise = situation.predicted("rise_degf")
    if bottom is not None and rise is not None and rise < bottom:
        return f"a rise of {rise:.0f} F is predicted, and the plate begins at {bottom:.0f} F"
    old_bottom = number_of(situation, "old.rise_low_degf")
    read = min(rise_readings(situation, heating=True), default=999.0)
    if old_bottom is not None and read < old_bottom:
        return (
            f"a rise of {read:.0f} F was read, and the present plate begins at {old_bottom:.0f} F"
        )
    return None


# Air per ton below which a coil runs near freezing, CFM per ton; a drop of air temperature above
# which too little air is likely, degrees F (both common practice, no source).
COLD_CFM_PER_TON: Final = 300.0
FREEZING_CFM_PER_TON: Final = 250.0
_COLD_DROP_DEGF: Final = 24.0
_WET_CFM_PER_TON: Final = 450.0
_COIL_FACE_FPM: Final = 500.0


def per_ton_between(low: float, high: float) -> Trigger:
    """On while the predicted airflow, CFM per ton, is at least the one and below the other."""

    def trigger(situation: Situation) -> str | None:
        per_ton = situation.predicted("cfm_per_ton")
        if per_ton is None or not low <= per_ton < high:
            return None
        return f"{per_ton:.0f} CFM per ton is predicted"

    return trigger


def cold_drop(situation: Situation) -> str | None:
    """A read drop of air temperature over the coil that speaks of too little air."""
    drop = max(rise_readings(situation, heating=False), default=0.0)
    return (
        f"the air was read {drop:.0f} F colder after the coil" if drop > _COLD_DROP_DEGF else None
    )


def too_much_air(situation: Situation) -> str | None:
    """Air fast enough at the coil to carry water off it."""
    face_fpm = situation.predicted("coil_face_fpm")
    if face_fpm is not None and face_fpm > _COIL_FACE_FPM:
        return f"{face_fpm:.0f} fpm is predicted at the coil's face"
    per_ton = situation.predicted("cfm_per_ton")
    damp = DAMP(situation)
    if per_ton is not None and per_ton > _WET_CFM_PER_TON and damp:
        return f"{per_ton:.0f} CFM per ton is predicted and {damp}"
    return None


_DRY_SHARE: Final = 0.80
"""Sensible share of the cooling load below which drying matters (common practice, no source)."""


def _damp_load(situation: Situation) -> str | None:
    sensible = number_of(situation, "loads.sensible_gain_btuh")
    latent = number_of(situation, "loads.latent_gain_btuh")
    if sensible is None or latent is None or sensible + latent <= 0.0:
        return None
    share = sensible / (sensible + latent)
    return f"moisture is {1 - share:.0%} of the cooling load" if share < _DRY_SHARE else None


DAMP: Final = any_of(
    is_one_of("house.humid", ("yes",), "summers are humid here"),
    is_one_of("symptoms.sticky", ("yes",), "it is sticky although cold inside"),
    _damp_load,
)

HOT_PLACES: Final = ("attic", "crawlspace")
_FAN_COIL: Final = ("heat_pump", "air_handler")
_RETURN_WORK: Final = ("return", "returns", "grille", "grilles", "opening", "openings", "drop")
_CONDENSING_FRACTION: Final = 0.90
_ASBESTOS_BEFORE: Final = 1981
HIGH_ALTITUDE_FT: Final = 2000.0
_ABSURD_STATIC_INWC: Final = 1.6
"""A total pressure that no plate covers and no duct explains (common practice, no source)."""


def flame_in_the_room(situation: Situation) -> str | None:
    """A burner or fire that takes its air from the house and vents by its own warmth."""
    if situation.value("house.vent_type") == "draft_hood":
        return "a draft hood vents into the chimney by its own warmth"
    if situation.value("house.water_heater_shares_flue") == "yes":
        return "a water heater shares the flue"
    words = heard(
        "draft hood", "fireplace", "wood ?stove", "natural draft", "atmospheric", "chimney"
    )
    return words(situation)


def return_work_near_a_burner(situation: Situation) -> str | None:
    """Suction that is to grow, or is great already, beside a burner that is not sealed."""
    pulls = any_of(
        remedy_touches((*_RETURN_WORK, "seal", "sealing"), "returns or leaks are to change"),
        is_one_of("symptoms.doors_move", ("yes",), "doors move when the blower starts"),
        above("house.closed_rooms_count", 2.0, "{:g} rooms have no way back for their air"),
        material_is(("panned_joist",), "joist bays carry return air"),
    )(situation)
    vent = situation.value("house.vent_type")
    burner = situation.value("equipment.kind") in ("furnace", "dual_fuel", "packaged")
    burner = burner or situation.value("old.kind") in ("furnace", "dual_fuel")
    return pulls if burner and vent not in ("sealed", "none") else None


def sealed_replaces_vented(situation: Situation) -> str | None:
    """A water heater that is about to be left alone in a flue."""
    if situation.value("house.water_heater_shares_flue") != "yes":
        return None
    efficiency = number_of(situation, "equipment.heating_efficiency_fraction")
    sealed = efficiency is not None and efficiency >= _CONDENSING_FRACTION
    if sealed or situation.value("equipment.kind") in _FAN_COIL:
        return "the new unit leaves the flue that the water heater shares"
    return None


def fuel_to_electric(situation: Situation) -> str | None:
    """New equipment that draws more electric current than the old."""
    if situation.value("phone.change") in ("furnace_to_heat_pump", "first_cooling"):
        return "this adds a load that the present wiring never carried"
    if situation.value("old.kind") == "furnace" and situation.value("equipment.kind") in (
        *_FAN_COIL,
        "dual_fuel",
    ):
        return "a heat pump replaces a furnace"
    strip_kw = number_of(situation, "equipment.strip_kw")
    return "the new unit has electric heat strips" if strip_kw else None


def _old_metal_ducts(situation: Situation) -> str | None:
    year = number_of(situation, "house.year_built")
    metal = material_is(("galvanized", "lined_metal", "panned_joist"), "metal")(situation)
    if year is None or year >= _ASBESTOS_BEFORE or metal is None:
        return None
    return f"the house is from {year:.0f} and has metal ducts"


ASBESTOS: Final = any_of(
    is_one_of("house.old_duct_wrap", ("yes",), "there is old cloth-like tape, paper or plaster"),
    heard(
        r"asbestos\w*", r"(?:white|gr[ae]y|cloth) (?:\w+ ){0,2}tape",
        r"(?:white|cloth|paper|plaster) wrap",
        r"wrapped in (?:paper|cloth|plaster)", "vermiculite",
    ),
    _old_metal_ducts,
)  # fmt: skip
READS_PRESSURE: Final = any_of(
    is_one_of("site.has_gauge", ("yes",), "pressures are to be read"),
    stated("readings.0.mode", "pressures were read"),
    heard("test ports?", "drill(?:ed|ing)?", "manometer", "take statics?"),
)


def opens_the_cabinet(situation: Situation) -> str | None:
    """Hands that go, or went, into blower, board or coil cabinet."""
    keys = ("condition.coil", "condition.blower_wheel", "condition.second_heat_exchanger")
    if any(situation.known(key) for key in keys):
        return "the cabinet is opened to look inside"
    if any(situation.known(f"readings.{row}.setting") for row in range(ROWS)):
        return "the blower's setting is read at the board"
    return any_of(
        heard(
            "speed tap", "dip switch(?:es)?", "blower door", "panels? (?:is |are )?off", "capacitor"
        ),
        remedy_touches(("setting", "clean", "cleaning", "blower"), "the cabinet is to be opened"),
    )(situation)


def absurd_pressure(situation: Situation) -> str | None:
    """A total external static pressure that no plate covers."""
    for row in range(ROWS):
        total = number_of(situation, f"readings.{row}.total_external_inwc")
        if total is not None and total > _ABSURD_STATIC_INWC:
            return f"{total:.2f} in. w.c. was read, far outside any plate"
    return None


FRAMING: Final = any_of(
    both(
        remedy_touches((*_RETURN_WORK, "trunk", "second"), "a return or a trunk is to be enlarged"),
        material_is(("panned_joist", "stud_bay"), "framing carries air here"),
    ),
    heard(
        r"(?:cut|notch|cutting|notching|drill) (?:\w+ ){0,2}(?:joists?|studs?|beams?|truss(?:es)?)"
    ),
)
DUCT_WORK: Final = remedy_touches(
    (
        *_RETURN_WORK,
        "trunk",
        "branch",
        "branches",
        "takeoff",
        "elbow",
        "fittings",
        "flex",
        "filter",
    ),
    "sheet metal is to be cut",
)
