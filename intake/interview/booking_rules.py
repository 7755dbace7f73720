"""Rules of thumb by which a phone call is booked: settings, never a verdict on ducts."""

from dataclasses import dataclass
from typing import Final

__all__ = ["BOOKING_RULES", "BookingRules"]


@dataclass(frozen=True, slots=True)
class BookingRules:
    """Thresholds of the call; an office may turn any of them.

    They decide how to book, never whether ducts pass.

    Attributes:
        cfm_per_ton: Likely airflow per ton.
        cfm_per_ton_humid: The same where the caller says that summers are humid.
        heating_rise_degf: Rise taken for a furnace of which nothing is known.
        heating_efficiency: Efficiency taken for one.
        area_per_ton_ft2: Area per ton taken where the tons are unknown.
        area_per_ton_low_ft2, area_per_ton_high_ft2: Outside these, a soft flag.
        thin_filter_soft_fpm, thin_filter_hard_fpm: Speeds at filters under `deep_filter_in`.
        deep_filter_soft_fpm, deep_filter_hard_fpm: Speeds at deeper ones.
        deep_filter_in: Depth from which a filter is deep.
        filter_nominal_excess_in: What a printed side is longer than the true one.
        openings_soft_in2_per_ton, openings_hard_in2_per_ton: Return openings; less is a flag.
        registers_soft_cfm: Airflow per register; more is a soft flag.
        trunk_soft_fpm, trunk_hard_fpm: Speeds in the main duct.
        uneven_rooms_soft_count: Rooms that never feel right; as many are a soft flag.
        soft_flags_for_survey: As many soft flags book the survey.
        unknown_for_photos: As many unknown of the questions about sizes ask for photos first.
        visit_minutes, survey_extra_minutes, photos_minutes, service_minutes: Time to block.
        longest_call_minutes: The call stops asking after this.
    """

    cfm_per_ton: float = 400.0
    cfm_per_ton_humid: float = 350.0
    heating_rise_degf: float = 55.0
    heating_efficiency: float = 0.80
    area_per_ton_ft2: float = 600.0
    area_per_ton_low_ft2: float = 350.0
    area_per_ton_high_ft2: float = 1000.0
    thin_filter_soft_fpm: float = 400.0
    thin_filter_hard_fpm: float = 550.0
    deep_filter_soft_fpm: float = 600.0
    deep_filter_hard_fpm: float = 850.0
    deep_filter_in: float = 3.5
    filter_nominal_excess_in: float = 0.25
    openings_soft_in2_per_ton: float = 140.0
    openings_hard_in2_per_ton: float = 100.0
    registers_soft_cfm: float = 130.0
    trunk_soft_fpm: float = 900.0
    trunk_hard_fpm: float = 1200.0
    uneven_rooms_soft_count: float = 2.0
    soft_flags_for_survey: int = 3
    unknown_for_photos: int = 4
    visit_minutes: int = 45
    survey_extra_minutes: int = 75
    photos_minutes: int = 10
    service_minutes: int = 60
    longest_call_minutes: float = 7.0


BOOKING_RULES: Final = BookingRules()
"""The rules as they come.

Source: common practice, no published source, except 400 CFM per ton, the middle of the 350 to 450
targeted in Parker and others 1997, FSEC-PF-321-97 (read), and about 600 ft2 per ton: 3.1 tons
average in about 5,000 Texas audits (Rhodes and others 2012, read second-hand) over a 1,915 ft2
average home there.
"""
