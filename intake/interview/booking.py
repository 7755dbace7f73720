"""What a phone call books: flags, the outcome, and the card. Pure rules, no conversation.

An unknown never counts as good, and a hard flag says which answer decided.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from engine.job.job import Job
from intake.interview.booking_rules import BOOKING_RULES, BookingRules
from intake.interview.phone_figures import (
    PhoneAirflow,
    filter_fpm,
    openings_in2_per_ton,
    phone_airflow,
    register_cfm,
    trunk_fpm,
)

__all__ = [
    "BOOKING_RULES",
    "SIZES_BY_PHONE",
    "Booking",
    "BookingRules",
    "Flag",
    "Outcome",
    "can_change",
    "decided_by_flag",
    "flags_of",
    "outcome_of",
    "unknown_sizes",
]


class Outcome(StrEnum):
    """What is booked."""

    ORDINARY = "ordinary_visit"
    SURVEY = "visit_and_duct_survey"
    PHOTOS = "photos_first"
    SAFETY = "safety_or_service_call"


@dataclass(frozen=True, slots=True)
class Flag:
    """One reason for more than an ordinary visit.

    Attributes:
        question: The question whose answer raised it.
        hard: Whether it decides alone.
        words: The reason with its figure, for the board.
    """

    question: str
    hard: bool
    words: str


@dataclass(frozen=True, slots=True)
class Booking:
    """The card that a call ends with.

    Attributes:
        outcome: What is booked.
        minutes: Time to block.
        for_caller: A sentence to say to the caller.
        for_board: A sentence for the board.
        bring: What the technician brings.
        photos: Photos owed, each as text to copy.
        safety: What was answered about safety.
        measure_first: What is measured first on site.
        unknown: What nobody knew.
        flags: What speaks for more than an ordinary visit, the deciding one first.
        decided: The reason that decided, in one sentence.
    """

    outcome: Outcome
    minutes: int
    for_caller: str
    for_board: str
    bring: tuple[str, ...]
    photos: tuple[str, ...]
    safety: tuple[str, ...]
    measure_first: tuple[str, ...]
    unknown: tuple[str, ...]
    flags: tuple[Flag, ...]
    decided: str


SIZES_BY_PHONE: Final = (
    "d_tons", "d_filter", "d_openings", "d_registers", "d_boot", "d_ways", "d_trunk",
)  # fmt: skip
"""Questions about sizes; many of them unknown ask for photos first."""

_SIZE_FACTS: Final = {
    "d_tons": ("old.cooling_tons", "equipment.cooling_tons"),
    "d_filter": ("filters.0.width_in",),
    "d_openings": ("return.grilles.0.width_in",),
    "d_registers": ("house.supply_registers_count",),
    "d_boot": ("supply.branches.0.shape",),
    "d_ways": ("phone.trunk_directions",),
    "d_trunk": ("supply.trunks.0.shape", "supply.trunks.0.width_in"),
}
"""What each of them states."""

_ALWAYS_OPEN: Final = frozenset(("d_safety", "d_trouble", "d_works", "d_people", "d_photos"))
"""Questions that can still change the booking after a hard flag."""

_FILLS_THE_CARD: Final = frozenset(("d_year", "d_tons", "d_filter", "d_trunk", "d_location"))
"""Questions that tell, after a hard flag, what to bring and what to look at first."""

_CHANGES: Final = {
    "furnace_to_heat_pump": "furnace to heat pump: more air than these ducts carry now",
    "first_cooling": "cooling for the first time: more air than these ducts carry now",
    "bigger": "bigger equipment: more air than these ducts carry now",
}


def flags_of(job: Job, rules: BookingRules = BOOKING_RULES) -> tuple[Flag, ...]:
    """Every flag that what was said raises, hard ones first, in the order of the call."""
    flow = phone_airflow(job, rules)
    found: list[Flag | None] = [_change(job), _trouble(job), _noise(job)]
    if flow is not None:
        found += [
            _openings(job, flow, rules),
            _filter(job, flow, rules),
            _trunk(job, flow, rules),
            _registers(job, flow, rules),
        ]
    found += [_area(job, rules), _flex(job), _rooms(job, rules)]
    flags = [flag for flag in found if flag is not None]
    return tuple(sorted(flags, key=lambda flag: not flag.hard))


def _change(job: Job) -> Flag | None:
    words = _CHANGES.get(job.word("phone.change") or "")
    return Flag("d_change", True, words) if words else None


def _trouble(job: Job) -> Flag | None:
    if job.word("phone.trouble") != "repeated":
        return None
    return Flag("d_trouble", True, "it froze up, shut down or broke more than once")


def _noise(job: Job) -> Flag | None:
    said = job.word("phone.return_noise")
    if said == "shout":
        return Flag("d_noise", True, "one must shout beside the return")
    return Flag("d_noise", False, "loud beside the return") if said == "louder" else None


def _weighed(
    question: str, figure: float, soft: float, hard: float, words: str, firm: bool = True
) -> Flag | None:
    """A flag for a figure above its limits; hard only where it rests on a size that was said."""
    if figure > hard and firm:
        return Flag(question, True, f"{words}, over {hard:,.0f}")
    return Flag(question, False, f"{words}, over {soft:,.0f}") if figure > soft else None


def _filter(job: Job, flow: PhoneAirflow, rules: BookingRules) -> Flag | None:
    speed = filter_fpm(job, flow.airflow_cfm, rules)
    if speed is None:
        return None
    depth = job.number("filters.0.depth_in")
    deep = depth is not None and depth >= rules.deep_filter_in
    soft = rules.deep_filter_soft_fpm if deep else rules.thin_filter_soft_fpm
    hard = rules.deep_filter_hard_fpm if deep else rules.thin_filter_hard_fpm
    words = f"about {speed:.0f} fpm through the filter"
    return _weighed("d_filter", speed, soft, hard, words, flow.firm)


def _openings(job: Job, flow: PhoneAirflow, rules: BookingRules) -> Flag | None:
    area = openings_in2_per_ton(job, flow.tons)
    if area is None:
        return None
    words = f"about {area:.0f} sq in. of return openings a ton"
    if area < rules.openings_hard_in2_per_ton and flow.firm:
        return Flag("d_openings", True, f"{words}, under {rules.openings_hard_in2_per_ton:.0f}")
    if area < rules.openings_soft_in2_per_ton:
        return Flag("d_openings", False, f"{words}, under {rules.openings_soft_in2_per_ton:.0f}")
    return None


def _registers(job: Job, flow: PhoneAirflow, rules: BookingRules) -> Flag | None:
    each = register_cfm(job, flow.airflow_cfm)
    if each is None or each <= rules.registers_soft_cfm:
        return None
    words = f"about {each:.0f} CFM for each blowing vent, over {rules.registers_soft_cfm:.0f}"
    return Flag("d_registers", False, words)


def _trunk(job: Job, flow: PhoneAirflow, rules: BookingRules) -> Flag | None:
    speed = trunk_fpm(job, flow.airflow_cfm)
    if speed is None:
        return None
    ways = job.word("phone.trunk_directions")
    said = {"one": "all one way", "both": "half each way"}.get(ways or "", "if all one way")
    words = f"about {speed:,.0f} fpm in the main duct, {said}"
    firm = flow.firm and ways in ("one", "both")
    return _weighed("d_trunk", speed, rules.trunk_soft_fpm, rules.trunk_hard_fpm, words, firm)


def _area(job: Job, rules: BookingRules) -> Flag | None:
    area = job.number("house.floor_area_ft2")
    tons = job.number("equipment.cooling_tons") or job.number("old.cooling_tons")
    if area is None or not tons:
        return None
    each = area / tons
    if rules.area_per_ton_low_ft2 <= each <= rules.area_per_ton_high_ft2:
        return None
    words = (
        f"{each:,.0f} sq ft a ton, outside {rules.area_per_ton_low_ft2:,.0f} to"
        f" {rules.area_per_ton_high_ft2:,.0f}"
    )
    return Flag("d_area", False, words)


def _flex(job: Job) -> Flag | None:
    hidden = job.word("house.duct_location") in ("attic", "crawlspace")
    if hidden and job.word("phone.flex_seen") == "yes":
        return Flag("d_flex", False, f"flex hoses in the {job.word('house.duct_location')}")
    return None


def _rooms(job: Job, rules: BookingRules) -> Flag | None:
    rooms = job.number("symptoms.uneven_rooms_count")
    if rooms is not None and rooms >= rules.uneven_rooms_soft_count:
        return Flag("d_rooms", False, f"{rooms:.0f} rooms never feel right")
    if job.word("symptoms.doors_move") == "yes":
        return Flag("d_doors", False, "doors move when it runs")
    return None


def unknown_sizes(job: Job) -> tuple[str, ...]:
    """Questions about sizes that nobody answered, whether they were asked or not."""
    heats_only = job.word("phone.change") == "heating_only"
    return tuple(
        question
        for question in SIZES_BY_PHONE
        if not (question == "d_tons" and heats_only)
        and not any(job.is_known(key) for key in _SIZE_FACTS[question])
    )


def outcome_of(
    job: Job,
    red_flags: Sequence[str] = (),
    rules: BookingRules = BOOKING_RULES,
) -> tuple[Outcome, str]:
    """What is booked, and the reason that decided, in one sentence.

    Args:
        job: What the caller said.
        red_flags: Kinds of red flags that were there.
        rules: The office's thresholds.
    """
    if red_flags:
        return Outcome.SAFETY, f"Danger comes first: {red_flags[-1].replace('_', ' ')}."
    trouble = job.word("phone.trouble") in ("once", "repeated")
    if trouble and job.word("old.works") == "no":
        return Outcome.SAFETY, "It isn't running, after freezing up, tripping or failing."
    flags = flags_of(job, rules)
    hard = [flag for flag in flags if flag.hard]
    if hard:
        return Outcome.SURVEY, f"Decided by: {hard[0].words}."
    if len(flags) >= rules.soft_flags_for_survey:
        return Outcome.SURVEY, f"{len(flags)} soft flags together: {flags[0].words}, and others."
    unknown = len(unknown_sizes(job))
    if unknown >= rules.unknown_for_photos:
        known = f"{unknown} of {len(SIZES_BY_PHONE)} sizes are unknown"
        if job.word("phone.photos") == "no":
            return Outcome.SURVEY, f"{known} and no photos will come."
        return Outcome.PHOTOS, f"{known}; unknown never counts as good."
    if job.word("phone.change") is None:
        return Outcome.SURVEY, "Nobody could say whether type or size changes."
    if unknown and job.word("phone.photos") == "no":
        return Outcome.SURVEY, "Something is unknown and no photos will come."
    return Outcome.ORDINARY, "Like for like, and nothing that was said speaks against it."


def decided_by_flag(job: Job) -> bool:
    """Whether a hard flag has decided the booking."""
    return any(flag.hard for flag in flags_of(job))


def can_change(question: str, job: Job, *, late: bool = False) -> bool:
    """Whether a question can still change the booking, or fill its card while there is time.

    When the call has become long only safety, trouble and photos are asked; after a hard flag also
    the few that tell what to bring and what to look at.
    """
    if question in _ALWAYS_OPEN:
        return True
    if late:
        return False
    return question in _FILLS_THE_CARD or not decided_by_flag(job)
