"""The card that a call ends with, made from what was said, and its lines for a person."""

from collections.abc import Sequence
from typing import Final

from engine.job.job import Job
from intake.interview.booking import (
    BOOKING_RULES,
    Booking,
    BookingRules,
    Flag,
    Outcome,
    flags_of,
    outcome_of,
    unknown_sizes,
)
from intake.interview.phone_figures import phone_airflow

__all__ = ["card_lines", "card_of"]

_FOR_CALLER: Final = {
    Outcome.ORDINARY: "We'll book an ordinary replacement visit; the technician takes a few"
    " readings first, about {minutes} minutes.",
    Outcome.SURVEY: "We'll plan about {minutes} minutes, so the technician can also measure the"
    " ducts; that way the new equipment gets the air it needs and stays quiet.",
    Outcome.PHOTOS: "Please text us the photos on the list; we'll call back within a day and"
    " book the right amount of time.",
    Outcome.SAFETY: "Let's get this safe and looked at first; choosing new equipment comes after.",
}
_NAMES: Final = {
    Outcome.ORDINARY: "Ordinary replacement visit",
    Outcome.SURVEY: "Replacement visit and duct survey",
    Outcome.PHOTOS: "Photos first, then call back",
    Outcome.SAFETY: "Safety or service call first",
}
_ALWAYS_BRING: Final = ("tape", "pressure gauge", "probe thermometers", "camera", "flashlight")
_SURVEY_BRING: Final = ("drill with depth stop", "plugs for test holes", "dust mask")
_PHOTOS: Final = {
    "d_tons": "the sticker on the outdoor unit, and the indoor one if it shows without opening",
    "d_filter": "the printed edge of the filter",
    "d_openings": "each big vent that pulls air in, with a tape or a sheet of paper beside it",
    "d_ways": "the whole indoor unit from the doorway, with the ducts leaving it",
    "d_trunk": "the main metal duct where it leaves the unit",
}
_UNKNOWN: Final = {
    "d_change": "whether type or size changes",
    "d_trouble": "whether it froze, tripped or failed before",
    "d_works": "whether it runs today",
    "d_area": "the floor area it serves",
    "d_year": "the year the house was built",
    "d_tons": "the size of the present equipment",
    "d_filter": "the filter's size",
    "d_openings": "the return openings",
    "d_registers": "the number of blowing vents",
    "d_boot": "the size of a floor vent's hole",
    "d_ways": "whether ducts leave one way or both",
    "d_trunk": "the main duct's size",
    "d_location": "where the ducts run",
    "d_flex": "whether there are flex hoses",
    "d_rooms": "which rooms are uneven",
    "d_doors": "whether doors move",
    "d_noise": "how loud it is",
}


def card_of(
    job: Job,
    unsaid: frozenset[str],
    red_flags: Sequence[str] = (),
    rules: BookingRules = BOOKING_RULES,
) -> Booking:
    """The card as it stands, whole at any moment of the call.

    Args:
        job: What the caller said.
        unsaid: Keys of questions that nobody could answer.
        red_flags: Kinds of red flags that were there.
        rules: The office's thresholds.
    """
    outcome, decided = outcome_of(job, red_flags, rules)
    flags = flags_of(job, rules)
    unknown = unsaid | frozenset(unknown_sizes(job))
    minutes = _minutes(outcome, rules)
    return Booking(
        outcome,
        minutes,
        _FOR_CALLER[outcome].format(minutes=minutes),
        _for_board(job, outcome, decided, minutes, rules),
        _bring(job, outcome),
        _photos(job, unknown, outcome),
        _safety(job, red_flags),
        _measure_first(flags, outcome),
        tuple(
            words if key in unsaid else f"{words} (not asked)"
            for key, words in _UNKNOWN.items()
            if key in unknown
        ),
        flags,
        decided,
    )


def _minutes(outcome: Outcome, rules: BookingRules) -> int:
    return {
        Outcome.ORDINARY: rules.visit_minutes,
        Outcome.SURVEY: rules.visit_minutes + rules.survey_extra_minutes,
        Outcome.PHOTOS: rules.photos_minutes,
        Outcome.SAFETY: rules.service_minutes,
    }[outcome]


def _for_board(job: Job, outcome: Outcome, decided: str, minutes: int, rules: BookingRules) -> str:
    flow = phone_airflow(job, rules)
    air = f" Likely {flow.airflow_cfm:,.0f} CFM ({flow.because})." if flow else ""
    return (
        f"{_NAMES[outcome]}, {minutes} min. {decided}{air} By phone: measure before relying on it."
    )


def _bring(job: Job, outcome: Outcome) -> tuple[str, ...]:
    if outcome is Outcome.PHOTOS:
        return ()
    if outcome is Outcome.SAFETY:
        return ("combustion analyser and CO monitor", "leak detector", "meter")
    brought = [*_ALWAYS_BRING]
    if outcome is Outcome.SURVEY:
        brought += _SURVEY_BRING
    if job.word("house.duct_location") in ("attic", "crawlspace"):
        brought += ["ladder", "work light", "water"]
    elif outcome is Outcome.SURVEY:
        brought += ["ladder"]
    year = job.number("house.year_built")
    if year is not None and year < 1981:
        brought.append("nothing that cuts old white tape or wrap: it may be asbestos")
    return tuple(dict.fromkeys(brought))


def _photos(job: Job, unknown: frozenset[str], outcome: Outcome) -> tuple[str, ...]:
    if outcome is Outcome.SAFETY or job.word("phone.photos") == "no":
        return ()
    owed = [words for key, words in _PHOTOS.items() if key in unknown]
    if outcome is not Outcome.PHOTOS and not owed:
        owed = [_PHOTOS["d_tons"], _PHOTOS["d_ways"]]
    return tuple(f"Please text a photo of {words}." for words in owed)


def _safety(job: Job, red_flags: Sequence[str]) -> tuple[str, ...]:
    if red_flags:
        return tuple(f"{flag.replace('_', ' ')}: reported on this call" for flag in red_flags)
    if job.word("symptoms.gas_smell") == "no":
        return ("no smell, alarm or water near wires at the time of the call",)
    return ("not answered: ask again before anybody enters",)


def _measure_first(flags: Sequence[Flag], outcome: Outcome) -> tuple[str, ...]:
    if outcome is Outcome.SAFETY:
        return ("CO and gas in the air before anything else",)
    first = ["static pressure: after the filter, before the coil, after the coil"]
    by_question = {
        "d_filter": "filter size and its pressure drop",
        "d_openings": "every return opening, hole not frame",
        "d_trunk": "main duct at the plenum, and how many leave it",
        "d_noise": "return drop at its narrowest",
        "d_registers": "number and size of branches",
        "d_flex": "flex: inner core, and how it is hung",
        "d_trouble": "airflow with a clean filter; coil and wheel for dirt",
        "d_change": "airflow needed per stage, then trunk and return drop",
    }
    first += [words for flag in flags if (words := by_question.get(flag.question))]
    return tuple(dict.fromkeys(first))[:5]


def card_lines(booking: Booking) -> list[str]:
    """The card for the chat, one thing a line."""
    lines = [
        f"Book: {_NAMES[booking.outcome]}, {booking.minutes} minutes.",
        f"Why: {booking.decided}",
        f"Say: “{booking.for_caller}”",
        f"Board: {booking.for_board}",
    ]
    if booking.flags:
        said = "; ".join(f"{'HARD' if f.hard else 'soft'}: {f.words}" for f in booking.flags)
        lines.append(f"Flags (phone rules of thumb): {said}.")
    if booking.bring:
        lines.append(f"Bring: {', '.join(booking.bring)}.")
    lines += [f"Copy: {photo}" for photo in booking.photos]
    lines.append(f"Safety: {'; '.join(booking.safety)}.")
    lines.append(f"Measure first: {'; '.join(booking.measure_first)}.")
    if booking.unknown:
        lines.append(f"Nobody knew: {', '.join(booking.unknown)}.")
    return lines
