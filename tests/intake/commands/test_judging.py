"""`judge` and `limits`: what a file may hold, and one sentence with the key for what it may not."""

import json
from dataclasses import fields
from pathlib import Path

import pytest
from support.commands import FACTS, call, judged, refused

from engine.trade.limits import LIMITS


def test_facts_of_a_file_and_of_the_input_are_judged_alike(tmp_path: Path) -> None:
    path = tmp_path / "facts.json"
    path.write_text(json.dumps(FACTS), encoding="utf-8")
    from_file = call("judge", path, "--format", "json")
    assert from_file.exit_code == 0, from_file.output
    assert from_file.stdout == judged(FACTS, "--format", "json").stdout
    verdict = json.loads(from_file.stdout, parse_constant=lambda name: pytest.fail(name))
    assert verdict["modes"]["cooling_high"]["target_cfm"] == 1200
    markdown = judged(FACTS)
    assert markdown.exit_code == 0
    assert markdown.stdout.startswith("#")


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16"])
def test_files_as_editors_write_them_are_read(encoding: str) -> None:
    text = json.dumps(FACTS).encode(encoding)
    assert judged(text, "--format", "json").exit_code == 0


@pytest.mark.parametrize(
    ("facts", "named"),
    [
        ({"equipment.cooling_tonnes": 3}, "equipment.cooling_tonnes"),
        ({"supply": {"trunks": [{"widht_in": 20}]}}, "supply.trunks.0.widht_in"),
        ({"supply.trunks": [{"width_in": 2000}]}, "supply.trunks.0.width_in"),
        ({"equipment.kind": "steam engine"}, "equipment.kind"),
        ({"equipment.cooling_tons": "three"}, "equipment.cooling_tons"),
        ({"equipment.cooling_tons": None}, "equipment.cooling_tons"),
        ('{"equipment.cooling_tons": NaN}', "equipment.cooling_tons"),
        ('{"supply": {"trunks": [{"width_in": Infinity}]}}', "supply.trunks.0.width_in"),
        ('{"equipment.cooling_tons": 1e400}', "equipment.cooling_tons"),
        ('{"equipment.cooling_tons": 3, "equipment.cooling_tons": 4}', "equipment.cooling_tons"),
        ({"limits.nothing": 3}, "limits.nothing"),
    ],
)
def test_a_fact_that_cannot_be_is_refused_by_its_key(facts: object, named: str) -> None:
    assert named in refused(judged(facts))


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("", "is no JSON"),
        ("{", "line 1, column 2"),
        ("[1]", "holds no JSON object"),
        ("12", "holds no JSON object"),
        (b"\xff\xff\xff", "no text in UTF-8"),
        ("[" * 100_000, "nested too deep"),
        ('{"a": ' + "9" * 5000 + "}", "nested too deep or too long"),
        ('{"a": "' + "x" * 4_000_000 + '"}', "larger than any file of facts"),
    ],
)
def test_what_is_no_file_of_facts_is_told(text: str | bytes, told: str) -> None:
    assert told in refused(judged(text))


def test_a_file_that_is_not_there_is_told(tmp_path: Path) -> None:
    told = refused(call("judge", tmp_path / "none.json"))
    assert "none.json can't be read: No such file" in told


def test_a_limit_that_an_office_turns_is_used_and_told() -> None:
    def most_fpm(*arguments: str) -> float:
        done = judged(FACTS, "--format", "json", *arguments)
        assert done.exit_code == 0, done.output
        findings = json.loads(done.stdout)["modes"]["cooling_high"]["findings"]
        (trunk,) = [one for one in findings if one["check"] == "trunk_velocity"]
        return float(trunk["maximum"])

    assert most_fpm("--limit", "supply_trunk_rigid.maximum_fpm=750") == 750
    assert most_fpm() != 750
    told = judged(FACTS, "--limit", "supply_trunk_rigid.maximum_fpm=750").stdout
    assert "your office" in told


@pytest.mark.parametrize(
    ("option", "named"),
    [
        ("supply_trunk_rigid.maximum_fpm", "NAME=NUMBER"),
        ("supply_trunk_rigid.maximum_fpm=fast", "NAME=NUMBER"),
        ("supply_trunk_rigid.maximum_fpm=nan", "limits.supply_trunk_rigid.maximum_fpm"),
        ("supply_trunk_rigid.maximum_fpm=-3", "limits.supply_trunk_rigid.maximum_fpm"),
        ("supply_trunk_rigid.maximum_fpm=300", "limits.supply_trunk_rigid.maximum_fpm"),
        ("trunks=3", "limits.trunks"),
    ],
)
def test_a_limit_that_cannot_be_turned_so_is_told(option: str, named: str) -> None:
    assert named in refused(judged(FACTS, "--limit", option))


def test_limits_lists_every_limit_with_figure_and_source() -> None:
    text = call("limits").stdout
    rows = json.loads(call("limits", "--format", "json").stdout)
    assert {row["name"].split(".")[0] for row in rows} == {one.name for one in fields(LIMITS)}
    assert all(row["name"] in text and row["source"] in text for row in rows)
    assert {"name": "long_path_ft", "value": 500, "unit": "ft"}.items() <= next(
        row for row in rows if row["name"] == "long_path_ft"
    ).items()
