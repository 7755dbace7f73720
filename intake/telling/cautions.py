"""The cautions a person must be told, each with what switches it on. One table.

A caution is data: a short name, how grave it is, its sentences and its trigger. `cautions_for`
picks those that are on, the gravest first. Adding one is one row here and one row in the test.

Sources are beside the rows that rest on a figure; a row without one is common practice.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from typing import Final

from intake.telling.caution_reasons import (
    ASBESTOS,
    CO_LEAVE_PPM,
    CO_SHUT_DOWN_PPM,
    CO_WHY_PPM,
    COLD_CFM_PER_TON,
    DAMP,
    DUCT_WORK,
    FRAMING,
    FREEZING_CFM_PER_TON,
    HIGH_ALTITUDE_FT,
    HOT_PLACES,
    READS_PRESSURE,
    absurd_pressure,
    co_between,
    cold_drop,
    flame_in_the_room,
    fuel_to_electric,
    opens_the_cabinet,
    per_ton_between,
    return_work_near_a_burner,
    rise_too_high,
    rise_too_low,
    sealed_replaces_vented,
    too_much_air,
)
from intake.telling.caution_triggers import (
    Situation,
    Trigger,
    above,
    always,
    any_of,
    both,
    heard,
    is_one_of,
    material_is,
    remedy_touches,
    sizes_taken,
    stated,
)

__all__ = ["CAUTIONS", "Caution", "CautionRow", "Gravity", "Situation", "cautions_for"]


class Gravity(IntEnum):
    """How grave a caution is; they are told in this order."""

    STOP = 0
    """Stop and call somebody."""
    LIFE = 1
    """Gas, fire, poison, falls, shock."""
    INJURY = 2
    """Cuts, dust, heat, and what the law keeps for the trained."""
    EQUIPMENT = 3
    """What breaks or ages the equipment or the house."""
    COMFORT = 4
    """What people will notice."""


@dataclass(frozen=True, slots=True)
class Caution:
    """A caution that is on.

    Attributes:
        slug: Its short name.
        gravity: How grave it is.
        words: What it warns of and what to do.
        because: What switched it on, a clause; empty if it is always on.
    """

    slug: str
    gravity: Gravity
    words: str
    because: str


@dataclass(frozen=True, slots=True)
class CautionRow:
    """A caution of the table, on or off."""

    slug: str
    gravity: Gravity
    words: str
    trigger: Trigger


def cautions_for(situation: Situation) -> tuple[Caution, ...]:
    """The cautions that are on, the gravest first, in the order of the table within a gravity."""
    on = [
        Caution(row.slug, row.gravity, row.words, because)
        for row in CAUTIONS
        if (because := row.trigger(situation)) is not None
    ]
    return tuple(sorted(on, key=lambda caution: caution.gravity))


CAUTIONS: Final[tuple[CautionRow, ...]] = (
    CautionRow(
        "danger_now", Gravity.STOP,
        "Stop work. Gas, a carbon monoxide alarm, burning or water at the wires comes before any "
        "duct: get everybody clear, then call for help from outside.",
        any_of(
            is_one_of("symptoms.gas_smell", ("yes",), "there is a smell of gas"),
            is_one_of("symptoms.co_alarm", ("yes",), "a carbon monoxide alarm is sounding"),
            is_one_of("symptoms.burning_smell", ("yes",), "there is a smell of burning"),
            is_one_of("symptoms.water_near_electrics", ("yes",), "there is water near wires"),
        ),
    ),
    CautionRow(
        "carbon_monoxide_leave", Gravity.STOP,
        "Carbon monoxide at 70 ppm or more in a room: everybody out into the open air and call 911 "
        "from there.",
        co_between(CO_LEAVE_PPM, float("inf")),
    ),
    CautionRow(
        "carbon_monoxide_shut_down", Gravity.STOP,
        "Carbon monoxide at 35 ppm or more in a room: shut the source down, open up, keep people "
        "out, and call somebody licensed for combustion before going on.",
        co_between(CO_SHUT_DOWN_PPM, CO_LEAVE_PPM),
    ),
    CautionRow(
        "stop_and_call", Gravity.STOP,
        "Stop and call somebody: a gas smell, a cracked or soot-filled heat exchanger, exhaust "
        "still spilling after two minutes of firing, 35 ppm of carbon monoxide, melted wires, "
        "water in a panel, a rise or pressure far outside the plate without a plain cause, cut "
        "framing, broken asbestos, or work you hold no licence for.",
        any_of(
            heard(
                r"cracked (?:the )?(?:heat )?exchanger",
                r"(?:heat )?exchanger (?:is |looks )?cracked",
                r"soot\w*", r"spill(?:ing|age)", r"melted (?:wire|wires|wiring|plug)", "rollout",
                r"backdraft(?:ing|s)", r"no licen[cs]e", r"not licen[cs]ed",
            ),
            absurd_pressure,
        ),
    ),
    CautionRow(
        "carbon_monoxide_why", Gravity.LIFE,
        "Carbon monoxide at 9 ppm or more in a room is never normal: find out why before changing "
        "any duct, and air the place meanwhile.",
        co_between(CO_WHY_PPM, CO_SHUT_DOWN_PPM),
    ),
    CautionRow(
        "backdraft", Gravity.LIFE,
        "A blower, a return near a flame, exhaust fans or newly sealed ducts can pull flue gas "
        "back into the house. Check combustion air and test for spillage at its worst, doors shut "
        "and fans on, before and after the work. Keep return openings 10 ft from a draft hood or "
        "open flame in the same space, and never take return air from a garage.",
        # 10 ft and the garage: International Residential Code M1602 (how: memory).
        any_of(flame_in_the_room, return_work_near_a_burner),
    ),
    CautionRow(
        "shared_flue", Gravity.LIFE,
        "Once the furnace leaves, a flue may be too big for the water heater alone: it cools, "
        "drips and spills. Have the vent sized again before the old unit goes.",
        sealed_replaces_vented,
    ),
    CautionRow(
        "lock_out", Gravity.LIFE,
        "Before a hand goes into blower, board or wiring: switch power and gas off, lock and tag "
        "them, prove it dead with a meter, and discharge the capacitor.",
        # 29 CFR 1910.147 and 1910.333 (how: memory).
        opens_the_cabinet,
    ),
    CautionRow(
        "two_feeds", Gravity.LIFE,
        "A cabinet with heat strips can have two electric feeds. Turn both off and test every "
        "conductor.",
        any_of(
            above("equipment.strip_kw", 0.0, "the new unit has {:g} kW of heat strips"),
            above("old.strip_kw", 0.0, "the present unit has {:g} kW of heat strips"),
        ),
    ),
    CautionRow(
        "ladder", Gravity.LIFE,
        "Ladder: one foot out for every four up, rails 3 ft above the landing, belt buckle between "
        "the rails, dry feet on firm ground.",
        # 29 CFR 1926.1053 (how: memory).
        any_of(
            is_one_of("house.duct_location", ("attic",), "the ducts run in the attic"),
            heard("ladder", "hatch", "ceiling (?:grilles?|grills?|return)", "high (?:wall|grille)"),
        ),
    ),
    CautionRow(
        "attic_crawl", Gravity.LIFE,
        "Attic or crawlspace: go early, with water, a light, a mask and a partner; step only on "
        "framing, watch for nails, wires and insects, and come out at the first dizziness.",
        any_of(
            is_one_of("house.duct_location", HOT_PLACES, "that is where most of the ducts run"),
            heard("attic", "crawl ?space", "crawl"),
        ),
    ),
    CautionRow(
        "asbestos", Gravity.INJURY,
        "White or grey cloth-like tape, paper or plaster on old ducts or the furnace may hold "
        "asbestos. Sound and untouched, leave it alone: don't sand, cut, drill, pull or sweep it. "
        "Trained people take samples; licensed people remove it.",
        # Guidance of the American Lung Association and US EPA (how: read in summary); the year is
        # common practice.
        ASBESTOS,
    ),
    CautionRow(
        "test_ports_in_doubt", Gravity.INJURY,
        "Don't drill here until it is clear what is inside. Use holes that exist, or put the hose "
        "in through the filter slot and a register with the cabinet closed, or leave the pressure "
        "as “not measured”. Lined and board ducts are plugged and sealed so that the "
        "lining holds.",
        both(
            READS_PRESSURE,
            any_of(
                ASBESTOS,
                material_is(("duct_board", "lined_metal"), "there is duct board or liner"),
            ),
        ),
    ),
    CautionRow(
        "test_ports", Gravity.INJURY,
        "Test ports: 3/8 in. at most, blower off, wires moved aside, after a look at the inner "
        "side, with a depth stop and a magnet for the shavings; plug and seal after. Good places: "
        "a flat side of the return drop 6 to 12 in. before the blower, the filter cabinet, the "
        "plenum panel between furnace and coil, the plenum after the coil. Never into a coil or "
        "its lines, drain pan, heat exchanger, collector box, vent, burner or wiring compartment, "
        "humidifier pad or an unknown double wall.",
        READS_PRESSURE,
    ),
    CautionRow(
        "sharp_metal", Gravity.INJURY,
        "Sheet metal cuts and a blower wheel grabs: cut-proof gloves, sleeves, glasses, no loose "
        "cuffs, and every door shut before it runs.",
        any_of(sizes_taken("ducts are measured by hand"), DUCT_WORK, opens_the_cabinet),
    ),
    CautionRow(
        "mould_and_droppings", Gravity.INJURY,
        "Mould, sewage, droppings, dead animals or loose old insulation in or near a duct: stop, "
        "don't stir it, wear protection, and hand it to people equipped for it.",
        heard(
            r"mou?ld\w*", "sewage", "droppings",
            r"(?:dead|live) (?:animals?|rats?|mice|mouse|birds?)",
            "vermiculite", "rock ?wool", r"rats?", "raccoons?", "bats",
        ),
    ),
    CautionRow(
        "people", Gravity.INJURY,
        "Somebody here is more easily harmed: agree when heat or cooling may be off, keep flames "
        "away from oxygen, and keep children and pets from open panels.",
        any_of(
            is_one_of(
                "symptoms.vulnerable_people", ("yes",),
                "somebody very young, old or ill lives here",
            ),
            heard("oxygen", "bab(?:y|ies)", "newborn", "toddler", "infant",
                  "dogs?", "cats?", "pets?"),
        ),
    ),
    CautionRow(
        "permit", Gravity.INJURY,
        "A changeout, gas, vent, wiring and duct work fall under local rules: a permit, an "
        "inspection and a licence may be required. This verdict is none of them, and the local "
        "code and the maker's instructions come first.",
        always,
    ),
    CautionRow(
        "refrigerant", Gravity.INJURY,
        "Only people certified for it open the refrigerant circuit, and nothing is vented to the "
        "air.",
        # US EPA, Clean Air Act section 608 (how: memory).
        any_of(
            stated("equipment.cooling_tons", "cooling equipment is to change"),
            remedy_touches(("coil",), "the coil is to change"),
            heard("recharge", "low on charge", "line ?set", "refrigerant"),
        ),
    ),
    CautionRow(
        "mildly_flammable_refrigerant", Gravity.INJURY,
        "The new refrigerant is mildly flammable: keep to the listing on room and duct volume, "
        "sensor and tools, with no open flame. Its blower must start on a leak, so shut dampers "
        "and starved ducts take away part of the protection.",
        # UL 60335-2-40, ASHRAE 15.2 (how: memory).
        is_one_of("equipment.refrigerant", ("a2l",), "the plate shows an A2L refrigerant"),
    ),
    CautionRow(
        "power_and_wires", Gravity.INJURY,
        "A heat pump or heat strips may need a larger breaker and wire: have the circuit and the "
        "panel checked before the unit is chosen.",
        fuel_to_electric,
    ),
    CautionRow(
        "structure", Gravity.INJURY,
        "Joists, studs and beams hold the house up: cutting one for a duct is decided by somebody "
        "qualified for structure, not on the day.",
        FRAMING,
    ),
    CautionRow(
        "rise_too_high", Gravity.EQUIPMENT,
        "Above the plate's temperature rise the limit switch cuts the burner and the heat "
        "exchanger ages. Don't leave it so: give it more air, or change the input only by the "
        "maker's book.",
        any_of(
            rise_too_high,
            is_one_of("symptoms.limit_trips", ("yes",), "the burner quits while the fan goes on"),
            is_one_of("symptoms.short_cycles", ("yes",), "it runs a few minutes and stops"),
        ),
    ),
    CautionRow(
        "rise_too_low", Gravity.EQUIPMENT,
        "Below the plate's temperature rise exhaust can condense where it mustn't, in an 80 per "
        "cent furnace above all, and rooms feel drafty. Use a lower blower setting and check the "
        "gas input.",
        rise_too_low,
    ),
    CautionRow(
        "coil_freezing", Gravity.EQUIPMENT,
        "At this little air the coil is likely to freeze solid. Don't commission cooling like "
        "this: give it air or choose smaller equipment.",
        per_ton_between(0.0, FREEZING_CFM_PER_TON),
    ),
    CautionRow(
        "coil_cold", Gravity.EQUIPMENT,
        "Too little air can make the coil colder than ice. Never run cooling on ice: thaw it, then "
        "find the cause, filter, dirt, charge or ducts.",
        any_of(
            per_ton_between(FREEZING_CFM_PER_TON, COLD_CFM_PER_TON),
            is_one_of("symptoms.ice", ("yes",), "ice was seen"),
            cold_drop,
        ),
    ),
    CautionRow(
        "water_off_coil", Gravity.EQUIPMENT,
        "Too much air through a wet coil blows water into the duct. Use a lower setting or a "
        "larger coil.",
        too_much_air,
    ),
    CautionRow(
        "altitude", Gravity.EQUIPMENT,
        "High up, gas input is cut by the maker's table, the same heat needs more CFM, and rated "
        "capacities shrink.",
        # 2,000 ft: note of NFPA 54 (2015) as a trade paper reports it (how: read in summary).
        above("site.elevation_ft", HIGH_ALTITUDE_FT, "the house is {:g} ft above the sea"),
    ),
    CautionRow(
        "brittle", Gravity.EQUIPMENT,
        "Old board, a rusted pan or a rotted plenum may not survive being worked on. Look first, "
        "and price its replacement.",
        any_of(
            material_is(("duct_board",), "there is duct board"),
            heard(r"rust\w*", r"rott\w*", "brittle", "crumbl(?:ing|es)", "falling apart"),
        ),
    ),
    CautionRow(
        "humidity", Gravity.COMFORT,
        "In a damp house more air per ton dries less. Prefer the low stage or about 350 CFM per "
        "ton, as long as the loads are met.",
        DAMP,
    ),
)  # fmt: skip
"""Every caution, in the order they are told within a gravity."""
