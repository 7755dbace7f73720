"""Corrections and further answers in one line, each at the fact that it is of."""

import pytest
from support.dialogue import opened

from intake.interview.turns import Voice

PUMP = {"new_equipment": "3 ton single stage heat pump"}
STAGED = {"new_equipment": "3 ton two stage heat pump, 1200 cfm", "low_cfm": "800"}
DUCTS = {"trunk_count": "1", "trunk_size": "20x8 bare metal", "drop_size": "20x10 bare metal"}
BRANCHED = {**DUCTS, "branches": "12 six inch round metal"}
READ = {"static_total": "return .30, supply .40", "static_split": "skip"}
READ_THEN = {**READ, "reading_mode": "cooling", "reading_filter": "clean"}


@pytest.mark.parametrize(
    ("key", "line", "pull", "push"),
    [
        ("reading_mode", "high cool, and return should be .33", 0.33, 0.40),
        ("reading_mode", "return should read .33", 0.33, 0.40),
        ("reading_mode", "cooling. the supply was .45 not .40", 0.30, 0.45),
        ("year_built", "I gave you the wrong supply static, it's .45", 0.30, 0.45),
        ("year_built", "static on the supply was .45 not .4", 0.30, 0.45),
        ("year_built", "supply side static should be .42", 0.30, 0.42),
        ("year_built", "1970", 0.30, 0.40),
    ],
)
def test_a_sides_pressure_is_put_right_there(key, line, pull, push):
    told = opened(key, **BRANCHED, **READ).play(line)
    job = told.talk.job
    assert job.number("readings.0.after_filter_inwc") == pull, told.text
    assert job.number("readings.0.before_coil_inwc") == push
    assert job.number("readings.0.total_external_inwc") is None


@pytest.mark.parametrize(
    ("line", "before", "after"),
    [
        ("no way to reach after the coil, .09 before", 0.09, None),
        (".11 and no after coil", 0.11, None),
        ("after coil .2, can't get before the filter", None, 0.2),
        (".1 and .2", 0.1, 0.2),
    ],
)
def test_one_outer_pressure_where_the_other_is_out_of_reach(line, before, after):
    told = opened("static_split", static_total="return .30, supply .40").play(line)
    assert told.talk.job.number("readings.0.before_filter_inwc") == before
    assert told.talk.job.number("readings.0.after_coil_inwc") == after


def test_a_gauge_that_will_not_zero_reads_nothing():
    told = opened("static_total").play("gauge won't zero")
    assert told.talk.job.number("readings.0.total_external_inwc") is None
    zero = opened("static_total").play("return .3, supply zero").talk.job
    assert zero.number("readings.0.after_filter_inwc") == 0.3


@pytest.mark.parametrize(
    "line",
    ["all clean. airflow was 1050 not 1150", "all clean, the flow plate said 1050, not 1150"],
)
def test_an_airflow_is_put_right_where_the_old_one_was_told(line):
    told = opened("conditions", **READ_THEN, reading_airflow="1150 flow plate").play(line)
    assert told.talk.job.number("readings.0.airflow_cfm") == 1050, told.text
    assert told.talk.job.number("target.cooling_high_cfm") == 1200


def test_low_airflow_called_by_cfm_is_put_right_there():
    told = opened("drop_size", trunk_count="1", trunk_size="20x8 bare metal", **STAGED)
    told.play("20x10 bare, cfm in low is 780 not 800")
    assert told.talk.job.number("target.cooling_low_cfm") == 780
    assert told.talk.job.number("target.cooling_high_cfm") == 1200


@pytest.mark.parametrize(
    ("line", "tons", "stages"),
    [
        ("1200 and it's actually 3.5 tons", 3.5, "single"),
        ("1200, sorry 3.5 tons not 3", 3.5, "single"),
        ("1200. it's a two stage, I told you single", 3.0, "two"),
        ("1200", 3.0, "single"),
        ("400 per ton", 3.0, "single"),
        ("four hundred per", 3.0, "single"),
    ],
)
def test_equipment_put_right_beside_an_airflow(line, tons, stages):
    job = opened("cool_cfm", **PUMP).play(line).talk.job
    assert job.number("target.cooling_high_cfm") == 1200
    assert job.number("equipment.cooling_tons") == tons
    assert job.word("equipment.stages") == stages


@pytest.mark.parametrize("line", ["1974 I mean", "same as before, 1974 I mean"])
def test_a_year_where_a_year_is_asked_corrects_no_area(line):
    job = opened("d_year", Voice.DISPATCHER, d_area="1580").play(line).talk.job
    assert job.number("house.year_built") == 1974
    assert job.number("house.floor_area_ft2") == 1580


def test_a_year_after_a_no_is_no_elevation():
    job = opened("zoned", elevation="200").play("no. 1981").talk.job
    assert job.number("site.elevation_ft") == 200
    assert job.number("house.year_built") == 1981
    assert job.word("house.zoned") == "no"


@pytest.mark.parametrize(
    ("key", "before", "line", "facts"),
    [
        ("elevation", BRANCHED, "350. 10 branches, not 12",
         {"site.elevation_ft": 350, "supply.branches.0.count": 10}),
        ("branches", DUCTS, "12 six inch metal and the house is at 900 ft",
         {"site.elevation_ft": 900, "supply.branches.0.count": 12}),
        ("branches", DUCTS, "12 six inch round metal, 720 ft elevation",
         {"site.elevation_ft": 720, "supply.branches.0.count": 12}),
        ("return_trunk", DUCTS, "20x8 bare, farthest return 18 ft",
         {"path.return_length_ft": 18, "return.trunks.0.width_in": 20}),
        ("year_built", BRANCHED, "1970, trunk leaves both ends",
         {"house.year_built": 1970, "supply.trunks.0.count": 2}),
        ("year_built", BRANCHED, "trunk runs both directions by the way, 1970",
         {"house.year_built": 1970, "supply.trunks.0.count": 2}),
        ("trunk_size", {"trunk_count": "2"}, "sorry there's 3 trunks, all 14x8 bare",
         {"supply.trunks.0.count": 3, "supply.trunks.0.width_in": 14}),
        ("reading_mode", READ, "heat pump heat, 1100 cfm",
         {"readings.0.airflow_cfm": 1100, "readings.0.mode": "heat_pump_heating"}),
        ("reading_mode", READ, "cooling, clean filter, blower wheel dirty",
         {"readings.0.mode": "cooling_high", "condition.blower_wheel": "some_dirt"}),
        ("trunk_count", {"tools": "tape"}, "two, and i've got a gauge after all",
         {"supply.trunks.0.count": 2, "site.has_gauge": "yes", "site.has_tape": "yes"}),
        ("blower_kind", {}, "constant airflow. 10 kw of strips after all, min 800",
         {"equipment.blower_kind": "ecm_variable", "equipment.strip_kw": 10,
          "equipment.strip_minimum_cfm": 800}),
        ("low_cfm", {"new_equipment": "2.5 ton two stage heat pump", "cool_cfm": "1000"},
         "800, and heating's the same as cooling",
         {"target.cooling_low_cfm": 800, "target.heat_pump_heating_cfm": 1000}),
        ("new_equipment", {}, "3 ton two stage heat pump, 1200 high 820 low, no strips",
         {"target.cooling_high_cfm": 1200, "target.cooling_low_cfm": 820}),
        ("strip_cfm", STAGED, "400 per 5kw, got 10kw",
         {"equipment.strip_minimum_cfm": 800, "equipment.strip_kw": 10}),
        ("run_return", {**DUCTS, "run_supply": "45"}, "there's no run, grille's in the closet door",
         {"path.return_length_ft": 0}),
    ],
)  # fmt: skip
def test_all_that_a_line_tells_is_kept(key, before, line, facts):
    told = opened(key, **before).play(line)
    job = told.talk.job
    for fact, value in facts.items():
        found = job.word(fact) if isinstance(value, str) else job.number(fact)
        assert found == value, (fact, told.text)


def test_no_return_drop_beside_a_count():
    told = opened("trunk_count").play("1, and there's no return drop")
    assert told.talk.job.length("return.drops") == 0
    assert told.talk.job.number("supply.trunks.0.count") == 1


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("there's dampers but hand ones", "no"),
        ("the only dampers are manual", "no"),
        ("motorized dampers, two zones", "yes"),
    ],
)
def test_hand_dampers_are_no_zones(line, word):
    assert opened("zoned").play(line).talk.job.word("house.zoned") == word


@pytest.mark.parametrize("line", ["yes, 31 degrees", "yes it's 27"])
def test_a_yes_with_degrees_that_must_be_celsius_is_asked_about(line):
    told = opened("weather").play(line)
    assert told.key == "weather"
    assert not told.talk.job.word("site.weather_allows_cooling")


@pytest.mark.parametrize(("line", "word"), [("yes, 72", "yes"), ("no, 31", "no"), ("31", "no")])
def test_degrees_that_agree_are_taken(line, word):
    assert opened("weather").play(line).talk.job.word("site.weather_allows_cooling") == word


@pytest.mark.parametrize(
    ("line", "outside"),
    [
        ("furnace only table", "yes"),
        ("it's a furnace book", "yes"),
        ("coil not counted", "yes"),
        ("that's with an A coil", "no"),
        ("air handler with its coil", "no"),
    ],
)
def test_whose_table_tells_whether_the_coil_is_in_it(line, outside):
    told = opened("coil_in_table", blower_table="0.3 1250, 0.5 1190, 0.7 1100").play(line)
    assert told.talk.job.word("equipment.coil_outside_rating") == outside, told.text


@pytest.mark.parametrize(
    ("line", "states"),
    [
        ("filter's black, others fine", ("clean", "clean", "some_dirt")),
        ("filter dirty rest is clean", ("clean", "clean", "some_dirt")),
        ("coil's furry, wheel ain't bad, filter hairy", ("plugged", "clean", "some_dirt")),
        ("filter is weird, others fine", ("clean", "clean", None)),
    ],
)
def test_the_others_are_not_the_part_that_was_named(line, states):
    before = {**READ_THEN, "reading_airflow": "1100", "reading_source": "plate"}
    job = opened("conditions", **before).play(line).talk.job
    parts = ("coil", "blower_wheel", "filter")
    assert tuple(job.word(f"condition.{part}") or None for part in parts) == states


def test_no_cooling_says_nothing_of_strips():
    told = opened("new_tons", new_equipment="heat pump").play("zero, heating only")
    assert "strip" not in told.text.lower()


def test_a_few_hundred_feet_is_asked_about():
    told = opened("elevation", **BRANCHED).play("a few hundred")
    assert told.key == "elevation"
    assert told.talk.job.number("site.elevation_ft") is None
