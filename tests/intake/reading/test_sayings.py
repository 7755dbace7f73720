"""Turns of phrase, counted ducts, decades, alternatives and corrections in place."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import pytest

from intake.reading.corrections import in_place
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, Unknown
from intake.reading.sayings import in_plain_words
from intake.reading.yes_no_alternatives import by_alternative


@pytest.mark.parametrize(
    ("field", "text", "plain"),
    [
        ("duct", "14 inches one way and 8 the other", "14 x 8"),
        ("duct", "24 across and 10 down", "24 x 10"),
        ("duct", "24 inches one side, 10 inches the other", "24 x 10"),
        ("duct", "18x8 one side and 16x8 the other", "18x8 one side and 16x8 the other"),
        ("duct", "black fuzzy stuff glued inside", "fuzzy inside lining"),
        ("duct", "under a 2x12, trunk is 18x10", "lumber, trunk is 18x10"),
        ("duct", "it's a 2x10 joist space", "it's a 2x10 joist space"),
        ("length", "no less than 20 and no more than 25 ft", "between 20 and 25 ft"),
        ("airflow", "1000 min 1200 max", "between 1000 and 1200"),
        ("airflow", "board blinks 12 so 1200", "board blinks so 1200"),
        ("filter", "16x20x1 changed 8/1", "16x20x1 changed"),
    ],
)
def test_a_turn_of_phrase_is_put_plainly(field: str, text: str, plain: str) -> None:
    assert in_plain_words(text, field) == plain


@pytest.mark.parametrize(
    ("text", "size"),
    [
        ('20x8 1/2" liner', (20.0, 8.0)),
        ("20x8 half inch duct liner", (20.0, 8.0)),
        ("20 x 8 1/2 lined", (20.0, 8.5)),
        ("20x8 w 1/2 liner", (20.0, 8.0)),
    ],
)
def test_how_thick_a_liner_is_is_no_part_of_a_side(text: str, size: tuple[float, float]) -> None:
    found = read("duct", text)
    assert isinstance(found, Accepted), found
    assert (found.values["width_in"], found.values["height_in"]) == size


def test_how_many_ducts_may_be_open_where_their_size_is_plain() -> None:
    found = read("duct", "10 or 11 sixes")
    assert isinstance(found, Accepted)
    assert found.values == {"shape": "round", "diameter_in": 6.0}
    (count,) = found.others
    assert (count.field, count.values) == ("count", {"count_low": 10, "count_high": 11})


def test_two_sizes_of_counted_ducts_are_asked_with_both_counts() -> None:
    found = read("duct", "16 six inch and 2 sevens")
    assert isinstance(found, AskBack)
    assert [(r["diameter_in"], r["count"]) for r in found.readings] == [(6.0, 16), (7.0, 2)]


@pytest.mark.parametrize(
    ("text", "low", "high"),
    [
        ("the 70s", 1970, 1979),
        ("early seventies", 1970, 1973),
        ("mid '80s", 1984, 1986),
        ("late 1990s", 1997, 1999),
        ("late 60s, early 70s", 1967, 1973),
    ],
)
def test_a_decade_is_a_range_of_years(text: str, low: int, high: int) -> None:
    found = read("year", text)
    assert isinstance(found, Accepted), found
    assert dict(found.values) == {"year_low": low, "year_high": high}


@pytest.mark.parametrize("text", ["70s", "in the 70's", "low seventies"])
def test_a_decade_of_degrees_is_asked_about_and_never_taken_as_supply_air(text: str) -> None:
    assert isinstance(read("temperature", text), AskBack)


@pytest.mark.parametrize(
    ("earlier", "value", "whole"),
    [
        ("9 six inch", "10", "10 six inch"),
        ('12 runs of 6"', "14", '14 runs of 6"'),
        ("20x8, 30 ft", "10", None),
        ("11", "17", None),
        ("9 six inch", "20x8", None),
    ],
)
def test_a_bare_number_corrects_the_only_bare_number_before(
    earlier: str, value: str, whole: str | None
) -> None:
    assert in_place(earlier, value) == whole


@pytest.mark.parametrize(
    ("text", "question", "yes"),
    [
        ("pvc", "Is the vent pipe metal?", False),
        ("galvanized b vent", "Is the vent pipe plastic?", False),
        ("in the attic", "Are the ducts in the attic?", True),
        ("crawl space", "Are the ducts in the attic?", False),
        ("half basement half crawl", "Are the ducts in the attic?", None),
        ("pvc", "Is it loud at the return?", None),
    ],
)
def test_naming_another_of_a_few_things_answers(text: str, question: str, yes: bool | None) -> None:
    assert by_alternative(text, question) is yes


def test_who_never_looked_does_not_say_no() -> None:
    assert isinstance(
        read("yes_no", "never thought about it", question="Is it loud at the return?"), Unknown
    )


def test_no_answer_of_the_corpus_loads_pint() -> None:
    """pint takes about 160 ms to load, more than any answer may take."""
    root = Path(__file__).parents[3]
    lines = [
        json.loads(line)
        for path in sorted((root / "tests" / "corpus").glob("*.jsonl"))
        for line in path.read_text(encoding="utf-8").splitlines()
    ]
    rare = [
        "30 m3/s",
        "30 m3/min",
        "300 mbar",
        "20 mmwc",
        "2 cm wc",
        "20 sqm",
        "300 kelvin",
        "1 km",
    ]
    texts = json.dumps([(line["field"], line["text"]) for line in lines])
    code = (
        "import json, sys\n"
        "from intake.reading.read import FIELDS, read\n"
        "for field, text in json.load(sys.stdin): read(field, text)\n"
        f"for text in {rare!r}:\n"
        "    for field in FIELDS: read(field, text)\n"
        "assert 'pint' not in sys.modules\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], input=texts, text=True, cwd=root, capture_output=True
    )
    assert done.returncode == 0, done.stderr[-500:]


@pytest.mark.parametrize(
    ("text", "count"), [("9 six inch", 9), ("10 six inch", 10), ("two 6 inch runs", 2)]
)
def test_several_ducts_of_one_dimension_are_round(text: str, count: int) -> None:
    found = read("duct", text)
    assert isinstance(found, Accepted), found
    assert dict(found.values) == {"shape": "round", "diameter_in": 6.0, "count": count}


@pytest.mark.parametrize(
    ("field", "text"),
    [("length", "about 7075 give or take 18"), ("airflow", "210 give or take 50")],
)
def test_a_spread_that_leaves_what_houses_have_is_asked_about(field: str, text: str) -> None:
    assert isinstance(read(field, text), AskBack)


@pytest.mark.parametrize("text", ["TD neg .30 supply .91 return .33", "dela 0 C and r .28 s .36"])
def test_a_difference_told_with_its_pair_is_held_to_what_houses_have(text: str) -> None:
    assert not isinstance(read("temperature", text), Accepted)
