"""`try`: other equipment side by side, on a kept job or a file of facts."""

import json
from pathlib import Path

import pytest
from support.commands import call, refused
from support.houses import facts

THREE_TONS = facts(
    equipment__cooling_tons=3,
    target__cooling_high_cfm=1200,
    supply__trunks=[{"width_in": 20, "height_in": 9, "material": "galvanized"}],
)
"""1,200 CFM in 1.25 ft2 is 960 fpm, 1,000 CFM is 800; bare metal carries at most 900 quietly."""


@pytest.fixture
def house(tmp_path: Path) -> Path:
    path = tmp_path / "house.json"
    path.write_text(json.dumps(THREE_TONS), encoding="utf-8")
    return path


def test_a_table_of_eighty_columns_stands_side_by_side(house: Path) -> None:
    done = call("try", house, "--with", "2.5 tons", "--with", "3 tons, 1100 cfm", "--with", "60k")
    assert done.exit_code == 0, done.output
    lines = done.stdout.splitlines()
    assert max(len(line) for line in lines) <= 80
    assert lines[0].split()[:5] == ["as", "it", "is", "2.5", "tons"]
    wanted = next(line for line in lines if line.startswith("  wanted"))
    assert [word for word in wanted.split() if word[0].isdigit()] == [
        "1,200", "1,000", "1,100", "1,200",
    ]  # fmt: skip
    said = next(line for line in lines if line.startswith("  verdict"))
    assert said.split(maxsplit=1)[1].startswith("won't carry,     carries,")
    assert "supply trunk" in done.stdout
    assert "960 fpm, most" in done.stdout
    assert "Not known of 2.5 tons: pressure drop of the new coil, wet." in done.stdout
    text = " ".join(done.stdout.split())
    assert "The largest size these ducts carry: 2.5 tons, 1,000 CFM at 400 CFM per ton." in text


def test_it_is_read_line_by_line_where_it_is_narrower(
    house: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("COLUMNS", "44")
    lines = call("try", house, "--with", "2.5 tons").stdout.splitlines()
    own, other = lines.index("As it is"), lines.index("2.5 tons")
    assert own < other
    assert lines[own + 1 : own + 4] == [
        "Full cooling:",
        "  wanted: 1,200 CFM",
        "  verdict: won't carry, all but certain",
    ]
    assert "  wanted: 1,000 CFM" in lines[other:]
    assert max(len(line) for line in lines) <= 44


def test_the_json_holds_the_verdicts_and_the_largest_size(house: Path) -> None:
    done = call("try", house, "--with", "2.5 tons", "--format", "json")
    assert done.exit_code == 0, done.output
    told = json.loads(done.stdout)
    judged = json.loads(call("judge", house, "--format", "json").stdout)
    assert told["as_is"]["modes"] == judged["modes"]
    (one,) = told["tried"]
    assert one["with"] == "2.5 tons"
    assert one["verdict"]["modes"]["cooling_high"]["status"] == "carries"
    assert one["verdict"]["modes"]["cooling_high"]["target_cfm"] == 1000
    assert told["largest_quiet"]["tons"] == 2.5
    assert told["largest_quiet"]["airflow_cfm"] == 1000


def test_facts_come_from_the_input_too() -> None:
    done = call("try", "-", "--with", "2.5 tons", typed=json.dumps(THREE_TONS))
    assert done.exit_code == 0, done.output
    assert "1,000 CFM" in done.stdout


def test_a_kept_job_is_tried_and_its_store_is_left_as_it_was(tmp_path: Path) -> None:
    store = tmp_path / "jobs.db"
    lines = ["no, all clear", "3 ton single stage heat pump, 1200 cfm", "same", "quit"]
    talked = call("talk", "--plain", "--voice", "technician", "--store", store,
                  typed="\n".join(lines) + "\n")  # fmt: skip
    assert talked.exit_code == 0, talked.output
    before = store.read_bytes()
    listed = call("jobs", "--store", store, "--format", "json").stdout
    done = call("try", "#1", "--with", "2.5 tons", "--store", store)
    assert done.exit_code == 0, done.output
    assert "1,000 CFM" in done.stdout
    assert "can't say yet" in done.stdout
    assert store.read_bytes() == before
    assert call("jobs", "--store", store, "--format", "json").stdout == listed


@pytest.mark.parametrize(
    ("withs", "part"),
    [
        (["the trunk 24x10"], "I can't try"),
        (["1000"], "1000 of what"),
        (["20 cfm"], "CFM"),
        (["2 tons", "2.5 tons", "3 tons", "4 tons"], "At most 3"),
    ],
)
def test_what_cannot_be_tried_is_told_in_one_sentence(
    house: Path, withs: list[str], part: str
) -> None:
    options = [word for one in withs for word in ("--with", one)]
    assert part in refused(call("try", house, *options))


def test_a_job_that_is_not_there_is_told(tmp_path: Path) -> None:
    assert "No job is kept" in refused(call("try", "4", "--store", tmp_path / "no.db"))
    assert "can't be read" in refused(call("try", tmp_path / "no.json"))
