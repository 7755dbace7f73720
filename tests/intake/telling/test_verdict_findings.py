"""A finding as sentences: the figure, its limits with their source, and what it means."""

import ast
import re
from dataclasses import replace
from pathlib import Path

import pytest
from support.verdicts import a_finding, a_job

import engine.checks
from engine.checks.longest_run import NO_REACH, NOTHING_LEFT
from engine.job.belief import How, Known
from engine.job.job import CoolingRow, Job
from engine.judge import judge
from engine.verdict import FindingStatus, Part, Spread, TurnsAt
from intake.telling.checks import CHECKS
from intake.telling.findings import (
    figure_words,
    finding_sentence,
    limits_words,
    odds_sentence,
    plain_source,
    turns_sentence,
)


def test_a_finding_tells_figure_limits_source_meaning_and_cure():
    # 1,200 CFM x 144 / 160 in2 = 1,080 fpm; 1,080 / 900 = 1.2, so a fifth more area (by hand).
    assert finding_sentence(a_finding(), a_job()) == (
        "Air in the supply trunk moves at 1,080 fpm; 700 fpm is recommended and 900 fpm the most "
        "(ANSI/ACCA 1 Manual D velocity table). Loud: the rush is heard in the rooms whenever the "
        "blower runs this way. The same air at 900 fpm needs 20% more area."
    )


def test_the_material_that_the_limits_are_of_is_named():
    finding = a_finding(rests_on=("supply.trunks.0.material",))
    assert "900 fpm the most for bare sheet metal" in finding_sentence(finding, a_job())


def test_the_name_that_somebody_gave_a_piece_is_used():
    job = a_job().with_fact("supply.trunks.0.name", Known("east main", How.MEASURED))
    assert "Air in the supply trunk “east main” moves" in finding_sentence(a_finding(), job)
    by_name = a_finding(where="east main")
    assert "Air in the supply trunk “east main” moves" in finding_sentence(by_name, job)


def test_a_size_that_nobody_gave_is_told_as_a_usual_houses():
    usual = a_finding(known=("target.cooling_high_cfm",))
    assert "Nobody gave its size yet: this is a usual house's." in finding_sentence(usual)
    assert "Nobody gave" not in finding_sentence(a_finding())


def test_a_middle_that_is_fine_is_not_praised_while_it_may_well_be_over():
    doubtful = a_finding(figure=590.0, status=FindingStatus.FINE, over_share=0.3)
    assert "Quiet." not in finding_sentence(doubtful)
    assert "Quiet." in finding_sentence(replace(doubtful, over_share=0.0))


def test_a_limit_that_is_infinite_is_not_told():
    finding = a_finding(recommended=float("inf"), maximum=float("inf"), source="")
    assert limits_words(finding) == ""


@pytest.mark.parametrize(
    ("recommended", "maximum", "told"),
    [
        (None, 900.0, "900 fpm is the most (ours)"),
        (700.0, None, "700 fpm is recommended (ours)"),
        (900.0, 900.0, "900 fpm is the most (ours)"),
        (None, None, ""),
    ],
)
def test_limits_are_told_as_many_as_there_are(recommended, maximum, told):
    finding = a_finding(recommended=recommended, maximum=maximum, source="ours")
    assert limits_words(finding) == told


def test_how_a_source_is_held_is_left_to_the_report():
    assert plain_source("500 (read); 700 is the end (memory, high)") == "500; 700 is the end"


def test_a_blower_that_is_over_names_what_takes_its_push():
    finding = a_finding(because=("filter", "return"), part=Part.BLOWER)
    assert "What takes most of it: the filter, then the return ducts." in finding_sentence(finding)


def test_tight_on_the_side_without_a_limit_of_its_own_is_told_as_what_it_is():
    # Delivered 1,500 of 1,200 wanted: tight because it is too much, though both limits are leasts.
    lavish = a_finding(
        check="delivered_airflow", figure=1500.0, recommended=1140.0, maximum=1020.0, unit="CFM",
        status=FindingStatus.TIGHT,
    )  # fmt: skip
    assert "More than it needs" in finding_sentence(lavish)
    assert "A little short" in finding_sentence(replace(lavish, figure=1100.0))


def test_a_floor_of_zero_is_no_limit_to_tell():
    low = a_finding(check="coil_window", recommended=0.0, maximum=600.0, unit="CFM", source="")
    assert limits_words(low) == "600 CFM is the least"


def test_an_aside_is_left_out_of_the_chat_and_kept_for_the_report():
    chart = a_finding(note="A friction chart shows more.")
    assert "chart" in finding_sentence(chart)
    assert "chart" not in finding_sentence(chart, brief=True)


def test_a_note_is_told_once_with_its_full_stop():
    assert finding_sentence(a_finding(note="Round would be slower")).endswith(
        " Round would be slower."
    )


@pytest.mark.parametrize(
    ("status", "key", "value", "side", "told"),
    [
        (
            FindingStatus.FINE,
            "return.drops.0.width_in",
            13.6,
            "at least",
            "That holds while the return drop is at least 13.75 in. wide.",
        ),
        (
            FindingStatus.OVER,
            "supply.trunks.0.height_in",
            9.6,
            "at most",
            "It stays so while the supply trunk is at most 9.5 in. tall.",
        ),
        (
            FindingStatus.FINE,
            "new.coil_drop_inwc",
            0.313,
            "at most",
            "That holds while this is at most 0.31 in. w.c.: pressure drop of the new coil, wet.",
        ),
        (
            FindingStatus.FINE,
            "supply.branches.0.count",
            7.2,
            "at least",
            "That holds while this is at least 8: "
            "how many equal ducts the supply branch stands for.",
        ),
        (
            FindingStatus.TIGHT,
            "house.leakage_supply_fraction",
            0.0815,
            "at least",
            "It gets no worse while the share of the air that leaks from supply ducts "
            "is at least 9%.",
        ),
    ],
)
def test_a_turning_point_is_told_on_its_safe_side(status, key, value, side, told):
    finding = a_finding(status=status, turns_at=TurnsAt(key, value, side))
    assert turns_sentence(finding) == told


def test_nothing_is_said_where_nothing_turns_it():
    assert turns_sentence(a_finding()) == ""


def test_odds_are_told_only_while_they_are_open():
    wide = a_finding(over_share=0.7, spread=Spread(850.0, 1080.0, 1210.0))
    assert odds_sentence(wide) == (
        "It may be anything from 850 fpm to 1,210 fpm; over the limit in seven in ten of the "
        "houses that fit what was told."
    )
    assert odds_sentence(a_finding(over_share=1.0)) == ""


def names_given_to_findings():
    """Every name that a file of engine/checks hands to `check=`, or keeps in its `_CHECKS`."""
    names = set()
    for path in sorted(Path(engine.checks.__path__[0]).glob("*.py")):
        tree = ast.parse(path.read_text(encoding="utf-8"))
        for node in ast.walk(tree):
            given = []
            if isinstance(node, ast.keyword) and node.arg == "check":
                given = [node.value]
            elif isinstance(node, ast.AnnAssign) and ast.unparse(node.target) == "_CHECKS":
                given = list(getattr(node.value, "values", []))
            names |= {
                found.value
                for value in given
                for found in ast.walk(value)
                if isinstance(found, ast.Constant) and isinstance(found.value, str)
            }
    return names


def test_every_check_of_the_engine_has_its_own_words_and_no_words_are_left_over():
    names = names_given_to_findings()
    endings = {name for name in names if name.startswith("_")}  # of names put together
    whole = names - endings
    assert len(whole) > 10
    assert whole - set(CHECKS) == set()
    for ending in endings:
        assert any(name.endswith(ending) for name in CHECKS)
    assert {name for name in CHECKS if name not in whole
            and not name.endswith(tuple(endings))} == set()  # fmt: skip


def test_every_finding_of_judged_houses_has_its_own_words():
    found = {
        finding.check
        for job in (Job(), a_job(), furnace_job())
        for mode in judge(job, samples=64).modes.values()
        for finding in mode.findings
    }
    assert len(found) > 10
    assert found - set(CHECKS) == set()


def furnace_job():
    """An invented two-stage furnace with two readings of its present system."""
    told = {
        "equipment.kind": "furnace", "equipment.cooling_tons": 3.0, "equipment.stages": "two",
        "equipment.heating_input_btuh": 80000.0, "equipment.heating_efficiency_fraction": 0.95,
        "equipment.rise_low_degf": 30.0, "equipment.rise_high_degf": 60.0,
        "equipment.strip_minimum_cfm": 900.0, "equipment.strip_kw": 10.0,
        "loads.sensible_gain_btuh": 24000.0, "loads.latent_gain_btuh": 6000.0,
        "supply.trunks.0.width_in": 30.0, "supply.trunks.0.height_in": 6.0,
        "filters.0.width_in": 20.0, "filters.0.height_in": 20.0, "filters.0.depth_in": 1.0,
        "filters.0.place": "cabinet",
        "readings.0.mode": "cooling_high", "readings.0.total_external_inwc": 0.75,
        "readings.0.airflow_cfm": 1050.0,
    }  # fmt: skip
    rows = (
        CoolingRow("high", 1050.0, 34000.0, 25000.0), CoolingRow("high", 1350.0, 36000.0, 27000.0),
        CoolingRow("low", 700.0, 24000.0, 16000.0), CoolingRow("low", 900.0, 25000.0, 17500.0),
    )  # fmt: skip
    job = Job(cooling_rows=rows)
    return job.with_facts({key: Known(value, How.DOCUMENT) for key, value in told.items()})


@pytest.mark.parametrize(
    ("note", "told"),
    [
        (NOTHING_LEFT, "nothing is left for the ducts."),
        (NO_REACH, "This blower setting can't give the target"),
    ],
)
def test_a_friction_rate_that_does_not_exist_is_told_without_a_figure(note, told):
    finding = a_finding(check="friction_rate", figure=0.0, unit="in. w.c. per 100 ft", note=note)
    assert told in finding_sentence(finding)
    assert not re.search(r"\d", finding_sentence(finding))
    assert figure_words(finding) == "–"
    assert odds_sentence(finding) == ""


@pytest.mark.parametrize("name", sorted(CHECKS))
def test_no_row_of_words_holds_a_figure_or_leaves_a_status_without_meaning(name):
    told = CHECKS[name]
    text = " ".join((told.says, told.fine, told.tight, told.over))
    assert not re.search(r"\d", text.replace("{figure}", "").replace("{where}", ""))
    assert "{figure}" in told.says
    assert told.name
    assert told.tight or told.over


@pytest.mark.parametrize("name", sorted(CHECKS))
@pytest.mark.parametrize("status", list(FindingStatus))
def test_every_check_reads_as_sentences_in_every_status(name, status):
    told = finding_sentence(a_finding(check=name, status=status))
    assert told.endswith(".")
    assert ".." not in told
    assert "{" not in told
    assert all(one[0].isupper() or one[0].isdigit() for one in re.split(r"(?<=[a-z)%]\.) ", told))


def test_a_numbered_place_has_no_article():
    sentence = finding_sentence(a_finding(where="supply trunk 1"))
    assert sentence.startswith("Air in supply trunk 1 moves at")
