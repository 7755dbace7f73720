"""What the first words of a line said and its last ones take back."""

import pytest
from support.dialogue import opened

TRUNK = {"trunk_count": "1", "trunk_size": "20x8"}
DUCTS = {"trunk_count": "1", "trunk_size": "20x8 bare metal", "drop_size": "20x10 bare metal"}
RUNS = {**DUCTS, "run_supply": "45", "run_return": "12"}


@pytest.mark.parametrize(
    "line",
    ["20x8 bare. no it's lined", "20x8 bare, no, lined", "20x8 bare. wait, lined"],
)
def test_a_withdrawn_skin_leaves_no_place_of_the_tape(line):
    told = opened("trunk_size", trunk_count="1").play(line)
    assert told.talk.job.word("supply.trunks.0.material") == "lined_metal", told.text
    assert not told.talk.job.word("supply.trunks.0.measured_where")
    assert told.key == "trunk_where"


@pytest.mark.parametrize("line", ["20x8 bare, no liner", "20x8 bare metal, not lined", "20x8 bare"])
def test_a_skin_that_is_only_denied_leaves_the_first(line):
    told = opened("trunk_size", trunk_count="1").play(line)
    assert told.talk.job.word("supply.trunks.0.material") == "galvanized"
    assert told.talk.job.word("supply.trunks.0.measured_where") == "bare_metal"


@pytest.mark.parametrize(
    ("key", "before", "line", "fact", "word"),
    [
        (
            "drop_skin",
            {"drop_size": "20x10"},
            "lined, wait no bare",
            "return.drops.0",
            "galvanized",
        ),
        ("trunk_skin", TRUNK, "board, correction metal", "supply.trunks.0", "galvanized"),
        ("trunk_skin", TRUNK, "bare, no hang on it's lined", "supply.trunks.0", "lined_metal"),
        ("trunk_skin", TRUNK, "lined, no wrap", "supply.trunks.0", "lined_metal"),
    ],
)
def test_the_last_skin_counts(key, before, line, fact, word):
    told = opened(key, **before).play(line)
    assert told.talk.job.word(f"{fact}.material") == word, told.text


@pytest.mark.parametrize(
    ("line", "place"),
    [
        ("grille, no the slot", "cabinet"),
        ("slot, not the grille", "cabinet"),
        ("grille", "grille"),
    ],
)
def test_where_the_filter_sits_after_all(line, place):
    told = opened("filter_place", filter="16x25x1").play(line)
    assert told.talk.job.word("filters.0.place") == place


def test_a_choice_that_denies_the_louder_one_is_not_taken_back():
    told = opened("trunk_where", trunk_count="1", trunk_size="20x8 wrapped metal")
    told.play("over the wrap, not on the metal")
    assert told.talk.job.word("supply.trunks.0.measured_where") == "over_wrap"


@pytest.mark.parametrize(
    ("line", "pull", "push"),
    [
        ("return .3, supply .5, no .4", 0.3, 0.4),
        ("return .25, no .28, supply .4", 0.28, 0.4),
        ("return .25 make that .28, supply .4", 0.28, 0.4),
        ("return .3, no .4 supply", 0.3, 0.4),
        ("return .3, supply .4", 0.3, 0.4),
    ],
)
def test_the_last_pressure_of_a_side_counts(line, pull, push):
    job = opened("static_total").play(line).talk.job
    assert job.number("readings.0.after_filter_inwc") == pull
    assert job.number("readings.0.before_coil_inwc") == push


@pytest.mark.parametrize(
    ("line", "gauge"),
    [
        ("tape and gauge, scratch the gauge", False),
        ("tape and gauge, forget the gauge", False),
        ("tape, gauge, no probes", True),
        ("tape and gauge, scratch the probes", True),
        ("tape and probes, the gauge is dead, scratch the probes too", False),
    ],
)
def test_a_tool_that_is_struck_again(line, gauge):
    job = opened("tools").play(line).talk.job
    assert job.value("site.has_tape") is True or job.word("site.has_tape") == "yes"
    assert (job.word("site.has_gauge") == "yes") is gauge


@pytest.mark.parametrize(
    ("line", "kinds"),
    [
        (
            "2 square elbows and boot, make it 3 square elbows",
            [("square_elbow_trunk", 3), ("boot_angle", 1)],
        ),
        ("2 square elbows and 3 vaned elbows", [("square_elbow_trunk", 2), ("vaned_elbow", 3)]),
    ],
)
def test_fittings_counted_anew_replace_the_first_count(line, kinds):
    job = opened("fittings", **RUNS).play(line).talk.job
    rows = [
        (job.word(f"{entry}.kind"), job.number(f"{entry}.count"))
        for entry in job.entries("path.fittings")
    ]
    assert rows == kinds


@pytest.mark.parametrize(
    "line", ["yes, hmm no those are two systems", "yes. wait, no, one thermostat"]
)
def test_a_yes_that_turns_into_a_no(line):
    assert opened("zoned").play(line).talk.job.word("house.zoned") == "no"
