"""What is said along with an answer is kept: a correction beside a number, the next answers."""

import pytest
from support.dialogue import opened

from intake.interview.turns import Manner, Voice

SINGLE = {"new_equipment": "3 ton single stage heat pump"}
PRESSURES = {"static_total": "return .30, supply .40", "static_split": "skip"}
TONS = "equipment.cooling_tons"


@pytest.mark.parametrize(
    ("key", "before", "line", "facts"),
    [
        ("cool_cfm", SINGLE, "1200 and it's actually 3.5 tons", {TONS: 3.5}),
        ("cool_cfm", SINGLE, "1200, sorry 3.5 tons not 3", {TONS: 3.5}),
        ("cool_cfm", SINGLE, "1050, it's a 2.5 ton actually", {TONS: 2.5}),
        ("cool_cfm", SINGLE, "1200 at 3 tons", {TONS: 3}),
        ("old_runs", {}, "yes, old unit's 2.5 ton", {TONS: 3}),
        (
            "cool_cfm",
            SINGLE,
            "1200. it's a two stage, I told you single",
            {"target.cooling_high_cfm": 1200, "equipment.stages": "two"},
        ),
        (
            "blower_kind",
            {},
            "constant airflow. 10 kw of strips after all, min 800",
            {"equipment.strip_kw": 10, "equipment.strip_minimum_cfm": 800},
        ),
        (
            "heat_pump_cfm",
            {"new_equipment": "3 ton single stage heat pump, 1200 cfm"},
            "equal to cooling, no strips",
            {"target.heat_pump_heating_cfm": 1200},
        ),
        (
            "old_runs",
            {},
            "no, motor's burnt up, tape and gauge",
            {"old.works": "no", "site.has_gauge": "yes"},
        ),
        ("old_runs", {}, "yes. also two trunks leave the plenum", {"supply.trunks.0.count": 2}),
        (
            "reading_mode",
            PRESSURES,
            "heat pump heat, 1100 cfm",
            {"readings.0.mode": "heat_pump_heating", "readings.0.airflow_cfm": 1100},
        ),
        (
            "reading_mode",
            PRESSURES,
            "cooling. the supply was .45 not .40",
            {
                "readings.0.mode": "cooling_high",
                "readings.0.before_coil_inwc": 0.45,
                "readings.0.after_filter_inwc": 0.30,
            },
        ),
        (
            "conditions",
            {**PRESSURES, "reading_mode": "cooling", "reading_filter": "clean"},
            "filter dirty rest is clean",
            {
                "condition.filter": "some_dirt",
                "condition.coil": "clean",
                "condition.blower_wheel": "clean",
            },
        ),
    ],
)
def test_a_technicians_further_words_are_taken(key, before, line, facts):
    told = opened(key, **before).play(line)
    kept = {name: told.talk.job.value(name) for name in facts}
    assert kept == facts, told.text


def test_a_drop_denied_beside_the_trunks_is_not_asked_for():
    told = opened("trunk_count").play("1, and there's no return drop")
    assert told.talk.job.number("supply.trunks.0.count") == 1, told.text
    assert "Return drop: none" in told.text


@pytest.mark.parametrize(
    ("key", "before", "line", "facts"),
    [
        (
            "d_area",
            {},
            "1600 sqft built in 88",
            {"house.floor_area_ft2": 1600, "house.year_built": 1988},
        ),
        (
            "d_year",
            {"d_area": "1580"},
            "square footage was 1,850 not 1,580, and it's from 1974",
            {"house.floor_area_ft2": 1850, "house.year_built": 1974},
        ),
        (
            "d_tons",
            {"d_change": "same"},
            "it's actually a cooling only job, 3 tons",
            {"phone.change": "cooling_only", "old.cooling_tons": 3},
        ),
        (
            "d_registers",
            {"d_year": "1978"},
            "no wait the year's 1968. ten vents",
            {"house.year_built": 1968, "house.supply_registers_count": 10},
        ),
        (
            "d_registers",
            {},
            "8, and they're all six inch pipes",
            {"house.supply_registers_count": 8, "supply.branches.0.diameter_in": 6},
        ),
        (
            "d_ways",
            {},
            "both ways, 20x8",
            {"phone.trunk_directions": "both", "supply.trunks.0.width_in": 20},
        ),
        (
            "d_ways",
            {},
            "two ways and it's in the crawl",
            {"phone.trunk_directions": "both", "house.duct_location": "crawlspace"},
        ),
        (
            "d_rooms",
            {},
            "two, doors don't, noise is quiet, photos ok",
            {
                "symptoms.uneven_rooms_count": 2,
                "symptoms.doors_move": "no",
                "phone.return_noise": "whisper",
                "phone.photos": "yes",
            },
        ),
        (
            "d_photos",
            {"d_registers": "12"},
            "yes, and it's 15 vents",
            {"phone.photos": "yes", "house.supply_registers_count": 15},
        ),
        (
            "d_photos",
            {"d_registers": "12"},
            "yes, it's no problem",
            {"phone.photos": "yes", "house.supply_registers_count": 12},
        ),
        ("d_noise", {}, "a hum, no more", {"phone.return_noise": "whisper"}),
        ("d_noise", {}, "a gentle hum, nothing more", {"phone.return_noise": "whisper"}),
        ("d_noise", {}, "it hums loud", {"phone.return_noise": "louder"}),
        ("d_noise", {}, "a hum you have to shout over", {"phone.return_noise": "shout"}),
    ],
)
def test_a_callers_further_words_are_taken(key, before, line, facts):
    told = opened(key, Voice.DISPATCHER, **before).play(line)
    kept = {name: told.talk.job.value(name) for name in facts}
    assert kept == facts, told.text


@pytest.mark.parametrize(
    "line", ["it's a package unit, can't get to it", "it's gas heat only, no outdoor unit"]
)
def test_a_sticker_that_nobody_reads_leaves_the_tons_open(line):
    told = opened("d_tons", Voice.DISPATCHER).play(line)
    assert told.key == "d_filter", told.text
    assert told.talk.job.number("old.cooling_tons") is None
    assert "already" not in told.text


@pytest.mark.parametrize(
    "line", ["going all electric, dumping the gas furnace", "all electric, dump the furnace"]
)
def test_equipment_that_is_dumped_is_no_water(line):
    told = opened("d_change", Voice.DISPATCHER).play(line)
    assert not told.state.doubt, told.text


def test_water_dumped_on_a_furnace_is_asked_about():
    told = opened("d_change", Voice.DISPATCHER).play("water dumping on the electric furnace")
    assert told.lines(Manner.ALARM)
