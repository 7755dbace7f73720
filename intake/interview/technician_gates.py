"""Three gates: what can be measured today, with what is at hand, in this weather."""

from typing import Final

from engine.job.facts import Place
from intake.interview.question import Context, Question

__all__ = ["THE_GATES"]

_EQUIPMENT = Place.EQUIPMENT
YES_NO: Final = ("yes", "no")


def _warm_needed(context: Context) -> bool:
    return context.cooling and context.is_yes("old.works") and context.is_yes("site.has_gauge")


THE_GATES: Final[tuple[Question, ...]] = (
    Question(
        "old_runs",
        "yes_no",
        "Does the old blower run today?",
        "Only a running blower gives pressures, temperatures and airflow.",
        "At the thermostat: fan on.",
        "Set the fan to ON and listen at a register.",
        "It usually does.",
        _EQUIPMENT,
        0.5,
        fills=(("yes", "old.works"),),
        facts=("old.works",),
        choices=YES_NO,
        confirm=True,
        topics=("old blower", "old unit"),
        label="Old blower runs",
    ),
    Question(
        "tools",
        "tools",
        "What's in the bag: tape, pressure gauge, temperature probes, flow plate or hood?",
        "I'll only ask for what you can measure.",
        "In your bag or the van.",
        'Name what you have, like "tape and gauge".',
        "A tape and a gauge.",
        _EQUIPMENT,
        0.3,
        section="tools",
        facts=("site.has_tape", "site.has_gauge", "site.has_probes", "site.has_flow_plate"),
        choices=("tape", "gauge", "probes", "flow_plate"),
        topics=("bag", "tools"),
        label="In the bag",
    ),
    Question(
        "weather",
        "yes_no",
        "Is it warm enough to run the cooling today, so the coil gets wet?",
        "A wet coil takes more pressure than a dry one; in the cold it can't be run.",
        "Look at the outdoor temperature.",
        "Above about 60 F outdoors it may run; below, leave the cooling off.",
        "Depends on the season.",
        _EQUIPMENT,
        0.2,
        fills=(("yes", "site.weather_allows_cooling"),),
        facts=("site.weather_allows_cooling",),
        choices=YES_NO,
        when=_warm_needed,
        topics=("weather",),
        label="Warm enough for cooling",
    ),
)
"""What can be measured today."""
