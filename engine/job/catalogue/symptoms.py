"""What people in the house notice, and what a caller can say."""

from typing import Final

from engine.job.catalogue.rows import (
    DESK,
    HP,
    LIVING,
    TT,
    YES_NO,
    number,
    word,
)
from engine.job.facts import Fact
from engine.job.facts import Quantity as Q

__all__ = ["ROWS"]

ROWS: Final[tuple[Fact, ...]] = (
    word("symptoms.loud", "It is loud when it runs.", YES_NO, LIVING, (HP, TT)),
    word("symptoms.loud_at_return_shout", "One must shout beside the return.", YES_NO, LIVING,
           (HP, TT)),
    word("symptoms.uneven_rooms", "Some rooms never get right.", YES_NO, LIVING, (HP, TT)),
    word("symptoms.doors_move", "Doors whistle or move when it starts.", YES_NO, LIVING, (HP, TT)),
    word("symptoms.short_cycles", "It runs a few minutes, stops, starts again.", YES_NO, LIVING,
           (HP, TT)),
    word("symptoms.limit_trips", "The burner quits while the fan goes on.", YES_NO, LIVING,
           (HP, TT)),
    word("symptoms.ice", "Ice was seen on the coil or the copper.", YES_NO, LIVING, (HP, TT)),
    word("symptoms.dusty", "Dusty soon after cleaning, musty at start.", YES_NO, LIVING, (HP, TT)),
    word("symptoms.sticky", "Sticky although it is cold inside.", YES_NO, LIVING, (HP, TT)),
    word("symptoms.past_failures", "Blower, board or heat exchanger failed before.", YES_NO,
           LIVING, (HP, TT)),
    word("symptoms.vulnerable_people", "Somebody very young, 65 or over, or ill lives there.",
           YES_NO, LIVING, (HP, TT)),
    word("symptoms.gas_smell", "A smell of gas now.", YES_NO, LIVING, (HP, TT)),
    word("symptoms.co_alarm", "A carbon monoxide alarm now.", YES_NO, LIVING, (HP, TT)),
    word("symptoms.burning_smell", "A smell of burning now.", YES_NO, LIVING, (HP, TT)),
    word("symptoms.water_near_electrics", "Water near wires or panels now.", YES_NO, LIVING,
           (HP, TT)),
    number("symptoms.uneven_rooms_count", "How many rooms never get right.", Q.COUNT, "", (0, 20),
           LIVING, (HP,)),
    number("symptoms.co_ppm", "Carbon monoxide measured in room air.", Q.COUNT, "ppm", (0, 1000),
           LIVING, (TT,)),
    word("phone.change", "What is replaced, and whether the type changes.",
           ("like_for_like", "cooling_only", "heating_only", "bigger", "furnace_to_heat_pump",
           "first_cooling"),
           DESK, (HP,)),
    word("phone.trouble", "How often it froze up, shut itself down or broke before.",
           ("never", "once", "repeated"), DESK, (HP,)),
    word("phone.photos", "Whether the caller will send photos.", YES_NO, DESK, (HP,)),
    word("phone.trunk_directions", "Whether ducts leave the unit one way or both.",
           ("one", "both"), DESK, (HP,)),
    word("phone.flex_seen", "Whether round flexible hoses are seen.", YES_NO, DESK, (HP,)),
    word("phone.return_noise", "Speaking beside the return.", ("whisper", "louder", "shout"), DESK,
           (HP,)),
)  # fmt: skip
