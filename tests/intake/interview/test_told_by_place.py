"""Pressures by where they were read, filters old and new, the rise, heat and cleanliness."""

import pytest
from support.dialogue import opened

GAUGE = {"static_total": "return .3 supply .4"}
READ = {**GAUGE, "reading_mode": "cooling", "reading_filter": "clean", "reading_airflow": "1150"}
FURNACE = {"new_equipment": "3 ton single stage furnace with coil, 80k 80 percent"}
PROBES = {"tools": "tape gauge probes"}


def readings(told) -> dict[str, float]:
    names = ("before_filter", "after_filter", "before_coil", "after_coil", "total_external")
    found = {name: told.talk.job.number(f"readings.0.{name}_inwc") for name in names}
    return {name: size for name, size in found.items() if size is not None}


@pytest.mark.parametrize(
    ("line", "sizes"),
    [
        (
            "before the filter .1, after .28, before coil .41 after coil .19",
            {"before_filter": 0.1, "after_filter": 0.28, "before_coil": 0.41, "after_coil": 0.19},
        ),
        ("Return 0.31, supply after coil 0.22", {"after_filter": 0.31, "after_coil": 0.22}),
        (
            ".31 after the filter, .44 before the coil, .12 before the filter",
            {"after_filter": 0.31, "before_coil": 0.44, "before_filter": 0.12},
        ),
        (
            "0.52 across the unit, return side's .22",
            {"after_filter": 0.22, "before_coil": 0.3, "total_external": 0.52},
        ),
        (
            "0.38 return 0.47 supply tesp .85",
            {"after_filter": 0.38, "before_coil": 0.47, "total_external": 0.85},
        ),
        (
            "pullin four tenths, pushin three and a half tenths",
            {"after_filter": 0.4, "before_coil": 0.35},
        ),
        ("return .30, supply .40", {"after_filter": 0.3, "before_coil": 0.4}),
        (
            "supply .41 before the coil, return .29 after filter",
            {"after_filter": 0.29, "before_coil": 0.41},
        ),
    ],
)
def test_pressures_go_where_they_were_read(line, sizes):
    assert readings(opened("static_total").play(line)) == sizes


@pytest.mark.parametrize(
    ("line", "size"),
    [
        ("couldn't get to the one after the coil, before filter .11", 0.11),
        ("only got the one before the filter, .12", 0.12),
        ("before filter zero since the filters are in the grilles", 0.0),
    ],
)
def test_one_of_the_outer_pair_is_the_one_named(line, size):
    told = readings(opened("static_split", **GAUGE).play(line))
    assert told["before_filter"] == size
    assert "after_coil" not in told


def test_more_pressure_after_the_coil_than_before_it_is_asked_about():
    told = opened("static_split", **GAUGE).play("return .12 supply .45")
    assert "after_coil" not in readings(told)
    assert readings(told.play("yes"))["after_coil"] == 0.45


def test_what_is_told_beside_a_pressure_is_kept():
    told = opened("static_total").play("supply .4, return .3, filter's dirty though")
    assert told.talk.job.word("readings.0.filter_state") == "dirty"
    told = opened("static_total").play("-.3 / .45, that's at 1180 cfm")
    assert told.talk.job.number("readings.0.airflow_cfm") == 1180.0
    told = opened("reading_airflow", **GAUGE).play("1040, temp rise")
    assert told.talk.job.word("readings.0.airflow_source") == "temperature_rise"


@pytest.mark.parametrize(
    ("line", "size"),
    [
        ("currently a 16x25x1 but going to a 20x25x5 cabinet", (20, 25, 5)),
        ("old one is 16x25x1, new one will be 20x25x4", (20, 25, 4)),
        ("existing is 16x25x1 but i plan on a 4 inch media 20x25", (20, 25, 4)),
        ("none yet, there'll be a 20x25x4", (20, 25, 4)),
        ("it's a 16x20x1 now, new cabinet takes a 20x25x5", (20, 25, 5)),
        ("20x25x5, no 4", (20, 25, 4)),
        ("16x25x1, one inch pleat", (16, 25, 1)),
        ("no filter at the unit, theres one in the ceiling grille 20x25x1", (20, 25, 1)),
    ],
)
def test_the_filter_it_will_run_with_is_taken(line, size):
    job = opened("filter").play(line).talk.job
    assert tuple(job.number(f"filters.0.{s}_in") for s in ("width", "height", "depth")) == size
    assert not job.is_known("filters.1.width_in")


@pytest.mark.parametrize(
    "line",
    [
        "one 20x20x1 in the hall and 16x25x1 at the unit",
        "theres a 20x20x1 behind the hall grille and a 16x25x1 slot",
    ],
)
def test_two_filters_sit_each_in_its_own_place(line):
    job = opened("filter").play(line).talk.job
    assert [job.word(f"filters.{k}.place") for k in (0, 1)] == ["grille", "cabinet"]


def test_a_filter_in_both_places_is_asked_back():
    told = opened("filter_place", filter="20x25x4").play("both, one in grille one at unit")
    assert told.key == "filter_place"
    assert told.talk.job.word("filters.0.place") is None


@pytest.mark.parametrize("line", ["in the return boot", "slides in at the bottom of the drop"])
def test_a_filter_in_the_drop_is_at_the_unit(line):
    told = opened("filter_place", filter="16x25x1").play(line)
    assert told.talk.job.word("filters.0.place") == "cabinet"
    assert not told.talk.job.is_known("path.fittings.0.kind")


def test_a_thick_one_is_not_one_inch():
    told = opened("filter_depth", filter="16x25").play("thick one")
    assert told.key == "filter_depth"


@pytest.mark.parametrize(
    ("line", "low", "high"),
    [
        ("45 plus or minus 15", 30, 60),
        ("50 +/- 15", 35, 65),
        ("low fire 25 to 55, high 35 to 65", 35, 65),
        ("40 to 70 no 30 to 60", 30, 60),
        ("40 on the low side, 70 top", 40, 70),
        ("thirty five sixty five", 35, 65),
        ("35 to 65", 35, 65),
    ],
)
def test_the_allowed_rise_has_two_ends(line, low, high):
    job = opened("rise", **FURNACE).play(line).talk.job
    assert job.number("equipment.rise_low_degf") == low
    assert job.number("equipment.rise_high_degf") == high


@pytest.mark.parametrize("line", ["80 in, 64 out", "low 48 high 80, 96 percent"])
def test_two_figures_of_heat_are_no_rise(line):
    told = opened("furnace_heat", new_equipment="3 ton single stage furnace with coil").play(line)
    assert not told.talk.job.is_known("equipment.rise_low_degf")


@pytest.mark.parametrize(
    "line", ["input 100,000, output 80,000", "the new one's 80k, old one 100k 80 percent"]
)
def test_the_old_furnace_s_heat_is_not_the_new_one_s(line):
    told = opened("old_heat", **FURNACE, **PROBES, **GAUGE, reading_airflow="skip").play(line)
    assert told.talk.job.number("equipment.heating_input_btuh") == 80_000.0
    assert told.talk.job.number("old.heating_input_btuh") == 100_000.0


def test_clean_except_one_part_asks_how_dirty_that_one_is():
    told = opened("conditions", **READ).play("clean except coil")
    assert told.talk.job.word("condition.coil") is None
    told.play("plugged")
    assert told.talk.job.word("condition.coil") == "plugged"
    assert told.talk.job.word("condition.filter") == "clean"


@pytest.mark.parametrize(
    ("line", "coil", "wheel"),
    [
        ("coil so so, wheel and filter clean", "some_dirt", "clean"),
        ("coils half plugged wheel's caked", "plugged", "plugged"),
        ("coil's got some fuzz, wheel's caked, filter shot", "some_dirt", "plugged"),
        ("coil iffy, wheel clean", None, "clean"),
        ("wheel plugged everything else clean", "clean", "plugged"),
    ],
)
def test_each_part_has_its_own_state(line, coil, wheel):
    job = opened("conditions", **READ).play(line).talk.job
    assert job.word("condition.coil") == coil
    assert job.word("condition.blower_wheel") == wheel


def test_a_dry_coil_s_drop_is_less_than_the_wet_one_s():
    told = opened("coil_drop", **FURNACE).play(".3 dry at 1200")
    assert "0.33 in. w.c. to 0.43 in. w.c., at 1,200 CFM" in told.text


@pytest.mark.parametrize(
    ("line", "mode"), [("second stage", "cooling_high"), ("low", "cooling_low")]
)
def test_the_second_stage_is_the_full_one(line, mode):
    told = opened("reading_mode", **GAUGE).play(line)
    assert told.talk.job.word("readings.0.mode") == mode


@pytest.mark.parametrize(
    ("line", "feet"), [("500 meters, i mean feet", 500.0), ("forgot two 5 inch ones", None)]
)
def test_the_elevation_is_in_feet_and_no_duct(line, feet):
    assert opened("elevation").play(line).talk.job.number("site.elevation_ft") == feet
