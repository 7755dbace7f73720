"""The booking rules against the arithmetic and the thresholds of common practice."""

from collections.abc import Mapping

import pytest

from engine.job.belief import How, Known
from engine.job.job import Job
from intake.interview.booking import (
    BOOKING_RULES,
    SIZES_BY_PHONE,
    BookingRules,
    Outcome,
    flags_of,
    outcome_of,
    unknown_sizes,
)
from intake.interview.booking_card import card_lines, card_of
from intake.interview.phone_figures import (
    filter_fpm,
    openings_in2_per_ton,
    phone_airflow,
    trunk_fpm,
)

NOBODY = frozenset[str]()
SIZES: Mapping[str, float | str] = {
    "old.cooling_tons": 3,
    "filters.0.width_in": 20,
    "return.grilles.0.width_in": 30,
    "house.supply_registers_count": 12,
    "supply.branches.0.shape": "rect",
    "phone.trunk_directions": "both",
    "supply.trunks.0.shape": "rect",
}
"""One stated fact for each of the questions about sizes, in their order; none raises a flag."""


def stated(facts: Mapping[str, float | str]) -> Job:
    job = Job()
    for key, value in facts.items():
        said = float(value) if isinstance(value, int | float) else value
        job = job.with_fact(key, Known(said, How.PHONE))
    return job


def told(**facts: float | str) -> Job:
    return stated({name.replace("__", "."): value for name, value in facts.items()})


def with_opening(tons: float, width: float, height: float) -> Job:
    key = "return.grilles.0"
    return stated({"old.cooling_tons": tons, f"{key}.width_in": width, f"{key}.height_in": height})


def with_filter(tons: float, width: float, height: float, depth: float) -> Job:
    sides = {"width_in": width, "height_in": height, "depth_in": depth}
    facts = {f"filters.0.{name}": side for name, side in sides.items()}
    return stated({"old.cooling_tons": tons, **facts})


def with_trunk(tons: float, width: float, height: float, ways: str | None = "one") -> Job:
    key = "supply.trunks.0"
    job = stated({"old.cooling_tons": tons, f"{key}.width_in": width, f"{key}.height_in": height})
    return job.with_fact("phone.trunk_directions", Known(ways, How.PHONE)) if ways else job


# Plain arithmetic: a 16x25 filter is 15.75 x 24.75 in. inside its frame, 2.707 ft2.
@pytest.mark.parametrize(("tons", "expected_fpm"), [(3.0, 443.0), (5.0, 739.0)])
def test_a_printed_16_by_25_filter_is_judged_at_its_true_size(tons, expected_fpm):
    job = with_filter(tons, 16, 25, 1)
    flow = phone_airflow(job, BOOKING_RULES)
    assert flow is not None
    assert filter_fpm(job, flow.airflow_cfm, BOOKING_RULES) == pytest.approx(expected_fpm, abs=0.5)


# Plain arithmetic: 80,000 x 0.80 / (1.08 x 55) = 1,077 CFM.
def test_gas_heat_alone_goes_by_output_over_rise():
    flow = phone_airflow(told(old__heating_input_btuh=80_000), BOOKING_RULES)
    assert flow is not None
    assert flow.airflow_cfm == pytest.approx(1077.0, abs=0.5)


def test_humid_summers_take_350_a_ton():
    flow = phone_airflow(told(old__cooling_tons=3, house__humid="yes"), BOOKING_RULES)
    assert flow is not None
    assert flow.airflow_cfm == 1050.0


def test_an_area_alone_is_a_guess_and_raises_no_hard_flag():
    job = told(house__floor_area_ft2=3000)
    flow = phone_airflow(job, BOOKING_RULES)
    assert flow is not None
    assert flow.tons == 5.0
    assert not flow.firm
    for key, value in (("width_in", 16.0), ("height_in", 20.0), ("depth_in", 1.0)):
        job = job.with_fact(f"filters.0.{key}", Known(value, How.PHONE))
    assert [flag.hard for flag in flags_of(job)] == [False]


# Plain arithmetic: 1,050 CFM through 18 x 8 in. = 1 ft2 is 1,050 fpm; both ways halve it.
def test_the_main_duct_carries_half_if_ducts_leave_both_ways():
    assert trunk_fpm(with_trunk(3, 18, 8), 1050.0) == pytest.approx(1050.0)
    assert trunk_fpm(with_trunk(3, 18, 8, "both"), 1050.0) == pytest.approx(525.0)


def test_openings_count_in_square_inches_a_ton():
    assert openings_in2_per_ton(with_opening(3, 20, 20), 3.0) == pytest.approx(400.0 / 3.0)


# Thresholds: common practice, no source; a figure equal to a limit raises nothing.
@pytest.mark.parametrize(
    ("job", "kinds"),
    [
        (with_opening(4, 20, 28), []),  # 140 a ton
        (with_opening(4, 20, 27), ["soft"]),
        (with_opening(4, 20, 20), ["soft"]),  # 100 a ton
        (with_opening(4, 20, 19), ["hard"]),
        (with_filter(2, 16, 25, 1), []),  # 296 fpm
        (with_filter(3, 16, 25, 1), ["soft"]),  # 443
        (with_filter(4, 16, 25, 1), ["hard"]),  # 591
        (with_filter(4, 16, 25, 4), []),
        (with_filter(5, 16, 25, 4), ["soft"]),  # 739
        (with_filter(5, 12, 20, 4), ["hard"]),
        (with_trunk(3, 24, 8), []),  # 900 fpm
        (with_trunk(3, 20, 8), ["soft"]),  # 1,080
        (with_trunk(3, 14, 8), ["hard"]),  # 1,543
        (with_trunk(3, 14, 8, None), ["soft"]),  # one way or both is unknown
        (with_trunk(3, 14, 8, "both"), []),  # 771
        (told(phone__return_noise="louder"), ["soft"]),
        (told(phone__return_noise="shout"), ["hard"]),
        (told(phone__return_noise="whisper"), []),
        (told(phone__trouble="once"), []),
        (told(phone__trouble="repeated"), ["hard"]),
        (told(phone__change="first_cooling"), ["hard"]),
        (told(phone__change="furnace_to_heat_pump"), ["hard"]),
        (told(phone__change="like_for_like"), []),
        (told(symptoms__uneven_rooms_count=2), ["soft"]),
        (told(symptoms__uneven_rooms_count=1), []),
        (told(symptoms__doors_move="yes"), ["soft"]),
        (told(house__duct_location="attic", phone__flex_seen="yes"), ["soft"]),
        (told(house__duct_location="basement", phone__flex_seen="yes"), []),
        (told(old__cooling_tons=3, house__floor_area_ft2=1000), ["soft"]),  # 333 a ton
        (told(old__cooling_tons=3, house__floor_area_ft2=1800), []),
        (told(old__cooling_tons=3, house__supply_registers_count=9), ["soft"]),  # 133 CFM
        (told(old__cooling_tons=3, house__supply_registers_count=10), []),
    ],
)
def test_flags_turn_where_the_rules_say(job, kinds):
    assert ["hard" if flag.hard else "soft" for flag in flags_of(job)] == kinds


def measured(missing: int = 0, **facts: float | str) -> Job:
    """What was told, with all sizes but the first `missing` stated."""
    sizes = dict(list(SIZES.items())[missing:])
    return stated({**{name.replace("__", "."): v for name, v in facts.items()}, **sizes})


def test_two_soft_flags_are_an_ordinary_visit_and_three_the_survey():
    job = measured(
        phone__change="like_for_like",
        phone__return_noise="louder",
        symptoms__doors_move="yes",
    )
    assert outcome_of(job)[0] is Outcome.ORDINARY
    job = job.with_fact("house.duct_location", Known("attic", How.PHONE))
    job = job.with_fact("phone.flex_seen", Known("yes", How.PHONE))
    assert outcome_of(job)[0] is Outcome.SURVEY


def test_an_unknown_never_counts_as_good():
    assert outcome_of(Job())[0] is Outcome.PHOTOS
    assert outcome_of(measured())[0] is Outcome.SURVEY  # nobody said what is replaced
    same = measured(phone__change="like_for_like", phone__photos="no")
    assert outcome_of(same)[0] is Outcome.ORDINARY
    one_missing = measured(1, phone__change="like_for_like", phone__photos="no")
    assert outcome_of(one_missing)[0] is Outcome.SURVEY


def test_four_unknown_sizes_ask_for_photos_and_three_do_not():
    for photos in ("yes", None):
        more = {"phone__photos": photos} if photos else {}
        assert outcome_of(measured(3, phone__change="like_for_like", **more))[0] is Outcome.ORDINARY
        assert outcome_of(measured(4, phone__change="like_for_like", **more))[0] is Outcome.PHOTOS


def test_four_unknown_sizes_and_no_photos_book_the_survey():
    job = measured(4, phone__change="like_for_like", phone__photos="no")
    outcome, why = outcome_of(job)
    assert outcome is Outcome.SURVEY
    assert "4 of 7 sizes are unknown" in why


def test_heating_alone_lacks_no_tons():
    job = measured(1, phone__change="heating_only")
    assert "d_tons" not in unknown_sizes(job)
    assert unknown_sizes(measured(4)) == SIZES_BY_PHONE[:4]


def test_a_hard_flag_outweighs_missing_sizes_and_danger_outweighs_all():
    job = told(phone__change="first_cooling", phone__photos="yes")
    assert outcome_of(job)[0] is Outcome.SURVEY
    assert outcome_of(job, ["gas"])[0] is Outcome.SAFETY


def test_trouble_books_service_only_while_it_is_not_running():
    running = measured(phone__change="like_for_like", phone__trouble="once", old__works="yes")
    assert outcome_of(running)[0] is Outcome.ORDINARY
    dead = told(phone__change="like_for_like", phone__trouble="once", old__works="no")
    assert outcome_of(dead)[0] is Outcome.SAFETY


def test_an_office_may_turn_a_threshold():
    job = measured(phone__change="like_for_like", symptoms__doors_move="yes")
    strict = BookingRules(soft_flags_for_survey=1)
    assert outcome_of(job)[0] is Outcome.ORDINARY
    assert outcome_of(job, (), strict)[0] is Outcome.SURVEY


def test_the_card_names_everything_a_board_needs():
    job = with_trunk(3, 14, 8).with_fact("phone.change", Known("like_for_like", How.PHONE))
    card = card_of(job, frozenset(["d_filter"]))
    lines = card_lines(card)
    for start in ("Book:", "Why:", "Say:", "Board:", "Flags", "Bring:", "Safety:", "Measure first:",
                  "Nobody knew:", "Copy:"):  # fmt: skip
        assert any(line.startswith(start) for line in lines), start
    assert card.minutes == BOOKING_RULES.visit_minutes + BOOKING_RULES.survey_extra_minutes
    assert "1,543 fpm" in card.decided
    assert "1,200 CFM" in card.for_board
    assert card.photos[0] == "Please text a photo of the printed edge of the filter."
    assert "the filter's size" in card.unknown
    assert "the return openings (not asked)" in card.unknown
    assert not any(words.startswith("the main duct") for words in card.unknown)
