"""`facts` lists the whole catalogue; `read` shows what is read in a loose answer."""

import json

from support.commands import call, refused

from engine.job.facts import catalogue


def test_facts_lists_the_whole_catalogue_with_all_there_is_to_say() -> None:
    text = call("facts").stdout
    rows = {row["key"]: row for row in json.loads(call("facts", "--format", "json").stdout)}
    assert set(rows) == set(catalogue())
    for key, fact in catalogue().items():
        assert f"\n{key}" in f"\n{text}"
        assert fact.meaning in text
        row = rows[key]
        assert (row["unit"], row["low"], row["high"]) == (fact.unit, fact.low, fact.high)
        assert row["givers"] == [giver.value for giver in fact.givers]
        assert row["place"] == fact.place.value
        assert (row["starting_range"] is None) == (fact.prior is None)


def test_facts_can_be_looked_for_by_words() -> None:
    told = call("facts", "Trunk", "WIDTH").stdout
    assert "supply.trunks[].width_in  [in]" in told
    assert "elevation" not in told
    assert "'no such thing'" in refused(call("facts", "no", "such", "thing"))


def test_read_shows_the_reading_for_people_and_for_programs() -> None:
    assert "20 x 8" in call("read", "duct", "20x8", "metal").stdout
    read = json.loads(call("read", "duct", "20x8 metal", "--format", "json").stdout)
    assert read["outcome"] == "accept"
    assert read["expect"]["width_in"] == 20
    assert json.loads(call("read", "static_pressure", "-.37", "--format", "json").stdout)[
        "expect"
    ] == {"inwc": 0.37, "sign": -1}


def test_read_refuses_an_unknown_field_and_names_those_there_are() -> None:
    told = refused(call("read", "ducts", "20x8"))
    assert "'ducts'" in told
    assert "static_pressure" in told


def test_read_takes_lines_of_json_and_answers_each_even_a_bad_one() -> None:
    lines = [
        '{"id": "a", "field": "duct", "text": "20x8"}',
        "not json",
        '{"field": "duct"}',
        '{"field": "ducts", "text": "20x8"}',
        '{"field": "duct", "text": "20x8", "previous": {"field": "duct"}}',
        '{"field": "duct", "text": "20x8", "choices": "metal"}',
        "[]",
        "",
        '{"field": "length", "text": "40 ft"}',
    ]
    done = call("read", "--jsonl", typed="\n".join(lines))
    assert done.exit_code == 2
    out = [json.loads(line) for line in done.stdout.splitlines()]
    assert out[0] == {"id": "a", "outcome": "accept", "expect": {"shape": "rect", "width_in": 20.0,
                      "height_in": 8.0}}  # fmt: skip
    assert ["error" in one for one in out] == [False] + [True] * 6 + [False]
    good = call("read", "--jsonl", typed=lines[0])
    assert good.exit_code == 0
