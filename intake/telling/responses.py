"""What to say when somebody speaks of danger, to a technician on site or for a caller to hear.

One table; a response is said whole and in order, before anything else. Knows no conversation.

Sources: published advice of a public utility commission for gas, of fire departments for carbon
monoxide, of a national health institute for cold rooms (how: read in summary); the rest is common
practice, no source. Advice on airing a room before leaving it differs: the stricter is followed.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from intake.interview.turns import Voice
from intake.reading.red_flags import RedFlagKind

__all__ = ["LOCAL_RULES", "RESPONSES", "Response", "response"]

LOCAL_RULES: Final = (
    "Where the local emergency service, gas utility or your company gives other instructions, "
    "follow those."
)
"""Ends every response that stops the questions."""


@dataclass(frozen=True, slots=True)
class Response:
    """What is said to one kind of danger.

    Attributes:
        question: Asked while it's unclear whether the danger is there now.
        on_site: To the technician in the house, in order.
        read_out: For the dispatcher to read to the caller, word for word, in order.
        dispatcher: What the dispatcher does beside reading.
        stops: Whether the questions about ducts end when the danger is there.
    """

    question: str
    on_site: tuple[str, ...]
    read_out: tuple[str, ...]
    dispatcher: str
    stops: bool = True


def response(kind: RedFlagKind, voice: Voice) -> tuple[str, ...]:
    """The lines to show when the danger is there, in order.

    >>> response(RedFlagKind.GAS, Voice.DISPATCHER)[0]
    'Read this to the caller now:'
    """
    row = RESPONSES[kind]
    ending = (LOCAL_RULES,) if row.stops else ()
    if voice is Voice.DISPATCHER:
        spoken = tuple(f"“{line}”" for line in row.read_out)
        return ("Read this to the caller now:", *spoken, row.dispatcher, *ending)
    return (*row.on_site, *ending)


_HANG_UP: Final = (
    "End the questions here, write down the time and the address, and call back only to hear that "
    "everybody is out."
)
_SAME_DAY: Final = (
    "End the questions here, book a safety call for today, and write down what was said."
)

RESPONSES: Final[Mapping[RedFlagKind, Response]] = MappingProxyType(
    {
        RedFlagKind.GAS: Response(
            question=(
                "Is there a smell of gas or rotten eggs, a hiss of gas or a damaged gas line, "
                "right now?"
            ),
            on_site=(
                "Stop and leave now, with everybody in the house.",
                "Touch no switch, light nothing, unplug nothing, and don't call from inside.",
                "Walk well away, then call 911 and the gas utility from there.",
                "Propane sinks and collects low down: don't go into the basement or crawlspace.",
                "Go back in only when they say it is safe.",
            ),
            read_out=(
                "Please leave the house now, with everybody in it.",
                "Don't touch any switch, don't light anything, and don't go to the basement.",
                "Hang up now, walk well away, then call 911 and your gas company from out there.",
                "Stay out until they tell you it is safe.",
            ),
            dispatcher=_HANG_UP,
        ),
        RedFlagKind.CARBON_MONOXIDE: Response(
            question=(
                "Is a carbon monoxide alarm sounding, or does anybody feel ill or have a headache, "
                "right now?"
            ),
            on_site=(
                "Everybody out into the open air now. Call 911 from there.",
                "Don't go back to open windows or fetch pets.",
                "Tell them if anybody has a headache, feels sick or is drowsy.",
                "Stay out until the fire department has measured the air.",
            ),
            read_out=(
                "Please take everybody outside into the open air now.",
                "Call 911 from out there. Don't go back for windows or pets.",
                "Tell them if anybody has a headache, feels sick or is sleepy.",
                "Stay out until they tell you it is safe.",
            ),
            dispatcher=_HANG_UP,
        ),
        RedFlagKind.BURNING: Response(
            question=(
                "Is there smoke, a burning or electrical smell, sparking, or anything electrical "
                "that is hot or melting, right now?"
            ),
            on_site=(
                "Turn the system off at the thermostat; if the breaker is within safe reach, off.",
                "Smoke or flame: everybody out, call 911 from outside.",
                "Leave the power off until a licensed person has found the cause.",
            ),
            read_out=(
                "Please turn the system off at the thermostat.",
                "If you can reach the breaker safely, switch it off too.",
                "If you see smoke or flame, get everybody out and call 911 from outside.",
                "Leave it off until somebody has looked at it.",
            ),
            dispatcher=_SAME_DAY,
        ),
        RedFlagKind.SHOCK: Response(
            question="Does anything give a shock or a tingle when it is touched, right now?",
            on_site=(
                "Don't touch the unit, its ducts or its pipes again, and keep everybody off them.",
                "Only if the panel is dry and within safe reach, switch the circuit off there.",
                "Anybody who was shocked and feels unwell: call 911.",
                "Leave the power off until an electrician or a licensed person has found it.",
            ),
            read_out=(
                "Please don't touch the unit or its ducts again, and keep everybody away from it.",
                "Only if the electrical panel is dry and easy to reach, switch the unit off there.",
                "If anybody was shocked and feels unwell, call 911.",
                "Leave it off until an electrician has looked at it.",
            ),
            dispatcher=_SAME_DAY,
        ),
        RedFlagKind.WATER_ELECTRIC: Response(
            question="Is there water on or near the unit, its wires or the panel right now?",
            on_site=(
                "Don't touch the unit and don't stand in the water.",
                "Only if the panel is dry and within safe reach, switch the circuit off there.",
                "Otherwise stay clear and call the power utility or an electrician.",
            ),
            read_out=(
                "Please don't touch the unit, and don't stand in the water.",
                "Only if the electrical panel is dry and easy to reach, switch the unit off there.",
                "Otherwise stay clear of it and call your power company or an electrician.",
            ),
            dispatcher=_SAME_DAY,
        ),
        RedFlagKind.FLAME: Response(
            question=(
                "Is there soot, a yellow flame, flame outside the burner, an exhaust smell, a vent "
                "pipe that is loose or blocked, or a cracked heat exchanger, right now?"
            ),
            on_site=(
                "Turn the unit off at the thermostat and don't start it again.",
                "Flame outside the cabinet, or anybody dizzy or sick: everybody out, call 911.",
                "Otherwise open up to fresh air and stay away from it; it needs a licensed "
                "combustion check today, before any talk of ducts.",
            ),
            read_out=(
                "Please turn the heat off at the thermostat and don't turn it on again.",
                "If there is flame outside the unit, or anybody is dizzy or sick, get everybody "
                "out and call 911.",
                "Otherwise let fresh air in and stay away from the unit. Somebody licensed must "
                "look at it today.",
            ),
            dispatcher=_SAME_DAY,
        ),
        RedFlagKind.CO_READING: Response(
            question="Is that carbon monoxide figure from the room's air, read just now?",
            on_site=(
                "70 ppm or more in the room: everybody out now, call 911 from outside.",
                "35 ppm or more: shut the burner down, open up, get people out of the room.",
                "9 ppm or more: find out why before anything else.",
                "The duct questions wait until the source is found and the air reads low again.",
            ),
            read_out=(
                "If your meter or alarm shows 70 or more, take everybody outside now and call 911.",
                "If it shows less, turn the heat off, open windows and stay out of that room.",
                "If anybody feels ill at any figure, go outside and call 911.",
            ),
            dispatcher=_SAME_DAY,
        ),
        RedFlagKind.NO_HEAT_VULNERABLE: Response(
            question=(
                "Is the heat out right now, and is anybody there very young, 65 or over, or ill?"
            ),
            on_site=(
                "This is a priority call: get heat on, or people to a warm place, before ducts.",
                "What does a thermometer indoors read? 60 to 65 F can already chill an old person.",
                "One warm room, layers, blankets; a neighbour or a warming centre. Never an oven "
                "or a grill for heat.",
                "Confusion, slurred speech or drowsiness: call 911.",
            ),
            read_out=(
                "We will treat this as urgent. How warm is it indoors now?",
                "Please keep everybody in one warm room, in layers, or go to a neighbour or a "
                "warming centre.",
                "Don't use the oven or a grill for heat.",
                "If anybody is confused, slurs their words or is very drowsy, call 911.",
            ),
            dispatcher="Book a priority visit and stop the questions about ducts.",
        ),
        RedFlagKind.NO_COOLING_VULNERABLE: Response(
            question=(
                "Is the cooling out in the heat right now, and is anybody there very young, 65 or "
                "over, or ill?"
            ),
            on_site=(
                "This is a priority call: get people to a cooler place before ducts.",
                "Water to drink, shade, a cool bath or cloths; a neighbour or a cooling centre.",
                "Confusion, hot dry skin or fainting: call 911.",
            ),
            read_out=(
                "We will treat this as urgent. How hot is it indoors now?",
                "Please take everybody to a cooler place if you can, and drink water.",
                "If anybody is confused, faints, or has hot dry skin, call 911.",
            ),
            dispatcher="Book a priority visit and stop the questions about ducts.",
        ),
        RedFlagKind.UNNAMED: Response(
            question=(
                "Is there a smell of gas or burning, an alarm sounding, anybody ill, or water near "
                "wires, right now?"
            ),
            on_site=(
                "Stop. An alarm sounding, a smell of gas or anybody ill: everybody out now, touch "
                "no switch, call 911 from outside.",
                "Burning: off at the thermostat, off at the breaker if it is safe to reach. Smoke "
                "or flame: everybody out, call 911.",
                "Water near anything electrical: touch nothing, stay out of it.",
            ),
            read_out=(
                "If an alarm is sounding, you smell gas or anybody is ill, please leave now with "
                "everybody, touch no switch, and call 911 from outside.",
                "If something is burning, turn the system off at the thermostat; if you see smoke "
                "or flame, leave and call 911 from outside.",
                "If there is water near anything electrical, don't touch it and stay out of it.",
            ),
            dispatcher="Ask which it is; end the questions here and book a safety call for today.",
        ),
        RedFlagKind.ODD_SMELL: Response(
            question=(
                "Is that smell there right now, and what is it like: gas or rotten eggs, burning, "
                "exhaust, or something else such as dust or must?"
            ),
            on_site=(
                "Treat a smell nobody can name as gas: leave, touch no switch, call from outside.",
            ),
            read_out=(
                "If you can't say what the smell is, please treat it as gas.",
                "Leave now with everybody, touch no switch, and call the gas company from outside.",
            ),
            dispatcher=_HANG_UP,
        ),
        RedFlagKind.LOW_BATTERY_CHIRP: Response(
            question="Is it one short chirp a minute, or is the alarm sounding in earnest?",
            on_site=(
                "One chirp a minute is a weak battery, not an emergency: a new battery, then test.",
                "If you aren't sure, treat it as an alarm: everybody out, call 911 from outside.",
            ),
            read_out=(
                "One short chirp a minute usually means a weak battery. Please put in a new one "
                "and press the test button.",
                "If you aren't sure, treat it as a real alarm: everybody out, then call 911.",
            ),
            dispatcher="Go on with the questions if the caller is sure that it is the battery.",
            stops=False,
        ),
    }
)
"""The response to each kind of danger."""
