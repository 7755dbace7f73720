"""What a technician takes back in the line of another answer: one side, one skin, one trunk."""

import pytest
from support.dialogue import opened

from intake.interview.sided import of_one_side

TRUNK = {"trunk_count": "1", "trunk_size": "20x8 bare metal"}
DROP = {**TRUNK, "drop_size": "20x10 bare metal"}
DUCTS = {**DROP, "filter": "16x25x1", "filter_place": "cabinet"}
PRESSURES = {"static_total": "return .30, supply .40", "static_split": "skip"}


@pytest.mark.parametrize(
    ("line", "sizes"),
    [
        ("20x20 and 14x8 slots", [(20, 20), (14, 8)]),
        ("20x20, 14x8 slots. the filter's 2 inch", [(20, 20), (14, 8)]),
        ("20x20 and two 14x8 slots", [(20, 20), (14, 8)]),
        ("20x20 and 18x18 opening", [(18, 18)]),
        ("20x20 with the frame, 18x18 slots", [(18, 18)]),
    ],
)
def test_one_word_of_where_the_tape_was_is_of_all_openings(line, sizes):
    told = opened("openings", **DUCTS).play(line)
    job = told.talk.job
    kept = [
        (job.number(f"{at}.width_in"), job.number(f"{at}.height_in"))
        for at in job.entries("return.grilles")
    ]
    assert kept == sizes, told.text
    assert job.word("return.grilles.0.measured_where") == "hole"


@pytest.mark.parametrize("line", ["high cool, and return should be .33", "return should read .33"])
def test_a_corrected_return_is_no_total(line):
    told = opened("reading_mode", **PRESSURES).play(line)
    job = told.talk.job
    assert job.number("readings.0.after_filter_inwc") == 0.33, told.text
    assert job.number("readings.0.before_coil_inwc") == 0.40
    assert job.number("readings.0.total_external_inwc") is None


def test_both_sides_in_a_correction_are_no_one_side():
    assert of_one_side("return .30, supply .40", "return and supply are .35", ".35") is None
    assert of_one_side("total .70", "return should be .33", ".33") is None


def test_a_withdrawn_airflow_is_that_of_the_answer_that_held_it():
    told = opened(
        "conditions",
        **PRESSURES,
        reading_mode="cooling",
        reading_filter="clean",
        reading_airflow="1150 flow plate",
    ).play("all clean. airflow was 1050 not 1150")
    job = told.talk.job
    assert job.number("readings.0.airflow_cfm") == 1050, told.text
    assert job.number("target.cooling_high_cfm") == 1200


def test_a_withdrawn_airflow_that_nobody_told_is_not_guessed():
    told = opened("drop_size", **TRUNK).play("20x10 bare. airflow was 1050 not 950")
    assert told.talk.job.number("target.cooling_high_cfm") == 1200, told.text
    assert "not of what" in told.text


def test_the_low_stage_is_put_right_by_its_old_value():
    told = opened(
        "drop_size",
        new_equipment="3 ton two stage heat pump, 1200 cfm",
        low_cfm="800",
        **TRUNK,
    ).play("20x10 bare, cfm in low is 780 not 800")
    job = told.talk.job
    assert job.number("target.cooling_low_cfm") == 780, told.text
    assert job.number("target.cooling_high_cfm") == 1200


@pytest.mark.parametrize(
    "line",
    [
        "none, but forgot there's a second drop, 14 round",
        "none. but there's another drop, 12 round",
    ],
)
def test_a_second_drop_is_no_return_trunk(line):
    told = opened("return_trunk", **DROP).play(line)
    assert not told.talk.job.stated("return.trunks.0.diameter_in"), told.text
    assert told.key == "drop_size"


@pytest.mark.parametrize(
    "line", ["20x8 bare. i said two trunks, it's one", "20x8 bare and it's just the one trunk"]
)
def test_one_trunk_after_all_is_one(line):
    told = opened("trunk_size", trunk_count="2").play(line)
    job = told.talk.job
    assert job.number("supply.trunks.0.count") == 1, told.text
    assert job.number("supply.trunks.0.width_in") == 20


def test_one_of_two_trunks_leaves_two():
    told = opened("trunk_size", trunk_count="2").play("20x8 and it's the one on the left")
    assert told.talk.job.number("supply.trunks.0.count") == 2, told.text


def test_branches_told_behind_the_trunk_are_no_trunk():
    told = opened("trunk_size", trunk_count="2").play("18x8 bare and 12 branches 6 inch round")
    job = told.talk.job
    assert job.length("supply.trunks") == 1, told.text
    assert job.number("supply.branches.0.count") == 12


@pytest.mark.parametrize(
    ("line", "material", "place"),
    [
        ("20x8 bare. no it's lined", "lined_metal", None),
        ("20x8 bare, no, lined", "lined_metal", None),
        ("20x8 bare. wait, lined", "lined_metal", None),
        ("20x8 lined, no wait, bare", "galvanized", "bare_metal"),
        ("20x8 bare, no liner", "galvanized", "bare_metal"),
        ("20x8 bare, not lined", "galvanized", "bare_metal"),
        ("20x8 bare outside, lined inside", "lined_metal", "outside_of_liner"),
    ],
)
def test_a_skin_that_is_taken_back_takes_its_tape_along(line, material, place):
    told = opened("trunk_size", trunk_count="1").play(line)
    job = told.talk.job
    assert job.word("supply.trunks.0.material") == material, told.text
    assert job.word("supply.trunks.0.measured_where") == place


@pytest.mark.parametrize(
    ("line", "place"),
    [
        ("wrapped, but I measured the bare tin", "bare_metal"),
        ("over the wrap", "over_wrap"),
        ("wrapped, couldn't get to the bare metal", "over_wrap"),
    ],
)
def test_the_tape_was_where_it_is_said_to_have_been(line, place):
    told = opened("trunk_where", trunk_count="1", trunk_size="20x8 wrapped metal").play(line)
    assert told.talk.job.word("supply.trunks.0.measured_where") == place, told.text


def test_a_no_with_a_year_leaves_the_elevation():
    told = opened("zoned", elevation="200").play("no. 1981")
    job = told.talk.job
    assert job.word("house.zoned") == "no", told.text
    assert job.number("site.elevation_ft") == 200
    assert job.number("house.year_built") == 1981
