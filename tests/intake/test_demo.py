"""The demo: a real conversation about an invented house, and what the README shows of it."""

import json
import re
from pathlib import Path

import pytest
from click.testing import CliRunner

from intake.cli import main
from intake.commands.told import ToldError
from intake.demo import ANSWERS, run_demo

ROOT = Path(__file__).parents[2]


@pytest.fixture(scope="module")
def shown() -> list[str]:
    lines: list[str] = []
    run_demo(None, lines.append)
    return lines


def typed(shown):
    return [line.removeprefix("> ") for line in shown if line.startswith("> ")]


def test_it_says_first_that_everything_is_invented(shown):
    assert "invented" in shown[0]


def test_every_scripted_line_is_really_typed(shown):
    assert set(typed(shown)) >= {line for lines in ANSWERS.values() for line in lines}


def test_loose_answers_are_taken_and_echoed_in_normal_form(shown):
    text = "\n".join(shown)
    assert "heat pmup" in text
    assert "heat pump, 3.5 tons, single stage" in text
    assert "Supply trunk: 2 of 20 x 8 in. bare metal" in text


def test_a_question_back_is_answered_and_a_correction_taken(shown):
    asked = shown.index("> why do you ask?")
    assert "heating" in shown[asked + 1].lower()
    corrected = shown.index("> actually the drop is 20x10")
    assert "20 x 10 in." in "\n".join(shown[corrected : corrected + 3])


def test_the_narrow_return_is_found_by_the_arithmetic_of_its_size(shown):
    # 1,400 CFM x 144 / (20 x 10 in.) = 1,008 fpm, told to the nearest 10 (by hand).
    assert any("return drop moves at 1,010 fpm" in line for line in shown)


def test_the_trunks_are_found_quiet_enough_by_the_arithmetic_of_their_size(shown):
    # 1,400 / 2 = 700 CFM each; 700 x 144 / (20 x 8 in.) = 630 fpm (by hand).
    assert any("630 fpm" in line for line in shown)


def test_the_verdict_asks_for_changes_and_leaves_the_trunks(shown):
    headline = next(line for line in shown if line.startswith("These ducts carry"))
    assert "once something is changed; the trunks can stay" in headline
    assert any(line.startswith("To make every airflow carry") for line in shown)


def test_the_report_is_written_in_the_format_of_its_name(tmp_path):
    for name, begins in (("r.html", "<!DOCTYPE html>"), ("r.md", "# "), ("r.json", "{")):
        run_demo(tmp_path / name, lambda _: None)
        text = (tmp_path / name).read_text(encoding="utf-8")
        assert text.startswith(begins)
        assert "invented" in text
    assert json.loads((tmp_path / "r.json").read_text(encoding="utf-8"))["modes"]


def test_a_report_that_cant_be_written_is_told_in_one_sentence(tmp_path):
    with pytest.raises(ToldError, match="can't be written"):
        run_demo(tmp_path / "no such folder" / "r.html", lambda _: None)


def test_the_command_shows_it_and_ends_well(tmp_path):
    result = CliRunner().invoke(main, ["demo", "--out", str(tmp_path / "demo.html")])
    assert result.exit_code == 0, result.output
    assert "These ducts carry" in result.output
    assert (tmp_path / "demo.html").exists()


def test_the_readme_shows_lines_that_the_demo_really_gives(shown):
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    section = readme.split("## What it looks like", 1)[1].split("\n## ", 1)[0]
    blocks = re.findall(r"```\n(.*?)\n```", section, flags=re.DOTALL)
    assert len(blocks) == 2
    whole = " ".join(" ".join(shown).split())
    pieces = [" ".join(piece.split()) for block in blocks for piece in block.split("\n...\n")]
    assert len(pieces) > 3
    stale = [piece for piece in pieces if piece not in whole]
    assert not stale, "put what `./scripts/run demo` shows now into README.md"
