"""Jobs from plain data: every way a value may be written, and every refusal by its key."""

import json
import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from support.houses import SOUND

from engine.errors import FactError
from engine.job.belief import Between, How, Known, OneOf
from engine.job.facts import catalogue
from engine.job.loading import job_from_mapping, job_to_mapping


def test_dotted_nested_and_listed_keys_are_the_same_job() -> None:
    dotted = {"supply.trunks.0.width_in": 20, "supply.trunks.0.height_in": 8}
    nested = {"supply": {"trunks": [{"width_in": 20, "height_in": 8}]}}
    indexed = {"supply": {"trunks": {"0": {"width_in": 20, "height_in": 8}}}}
    bracketed = {"supply.trunks[0].width_in": 20, "supply.trunks[0].height_in": 8}
    jobs = [job_from_mapping(m) for m in (dotted, nested, indexed, bracketed)]
    assert all(job == jobs[0] for job in jobs)


def test_a_bare_value_is_from_a_document_and_true_is_yes() -> None:
    job = job_from_mapping({"target.cooling_high_cfm": 900, "equipment.works": True})
    assert job.stated("target.cooling_high_cfm") == Known(900.0, How.DOCUMENT)
    assert job.word("equipment.works") == "yes"


def test_ranges_choices_and_ways_of_knowing_are_taken() -> None:
    job = job_from_mapping(
        {
            "target.cooling_high_cfm": {"low": 900, "likely": 1000, "high": 1050, "how": "phone"},
            "equipment.cooling_tons": {"one_of": {"2.5": 1, "3": 3}},
            "equipment.kind": {"one_of": {"furnace": 0.7, "heat_pump": 0.3}, "how": "guessed"},
            "site.elevation_ft": {"value": 500, "how": "phone", "hedged": True},
        }
    )
    assert job.stated("target.cooling_high_cfm") == Between(900.0, 1000.0, 1050.0, How.PHONE)
    assert job.stated("equipment.cooling_tons") == OneOf(((2.5, 1.0), (3.0, 3.0)), How.DOCUMENT)
    assert job.word("equipment.kind") == "furnace"
    assert job.stated("site.elevation_ft") == Known(500.0, How.PHONE, hedged=True)


def test_an_empty_list_states_none_and_a_missing_one_says_nothing() -> None:
    job = job_from_mapping({"return.drops": []})
    assert job.length("return.drops") == 0
    assert job.length("supply.trunks") is None


def test_tables_and_rows_are_taken_with_their_modes() -> None:
    job = job_from_mapping(
        {
            "equipment": {
                "blower_tables": [
                    {
                        "setting": "A",
                        "modes": ["heating_high"],
                        "rows": [
                            {"static_inwc": 0.5, "airflow_cfm": 900},
                            {"static_inwc": 0.1, "airflow_cfm": 1000},
                        ],
                    }
                ],
                "cooling_rows": [{"airflow_cfm": 900, "total_btuh": 28000, "sensible_btuh": 21000}],
            }
        }
    )
    assert job.blower[0].table.static_inwc == (0.1, 0.5)
    assert [mode.value for mode in job.blower[0].modes] == ["heating_high"]
    assert job.cooling_rows[0].stage == "high"


# What is wrong, and the key and words the refusal must hold.
REFUSED = [
    ({"supply.trunks.0.width_mm": 500}, "supply.trunks.0.width_mm", "supply.trunks.0.width_in"),
    ({"supply.trunks": [{"width_cm": 50}]}, "supply.trunks.0.width_cm", "supply.trunks.0.width_in"),
    ({"site.elevation_m": 300}, "site.elevation_m", "site.elevation_ft"),
    ({"supply.trunks.0.width": 20}, "supply.trunks.0.width", "width_in"),
    ({"suply.trunks.0.width_in": 20}, "suply.trunks.0.width_in", "supply.trunks[].width_in"),
    ({"nonsense": 1}, "nonsense", "no fact"),
    ({"target.cooling_high_cfm": math.nan}, "target.cooling_high_cfm", "finite"),
    ({"target.cooling_high_cfm": math.inf}, "target.cooling_high_cfm", "finite"),
    ({"target.cooling_high_cfm": 10**400}, "target.cooling_high_cfm", "finite"),
    ({"target.cooling_high_cfm": "1000"}, "target.cooling_high_cfm", "number"),
    ({"target.cooling_high_cfm": True}, "target.cooling_high_cfm", "yes or no"),
    ({"target.cooling_high_cfm": None}, "target.cooling_high_cfm", "leave the key out"),
    ({"target.cooling_high_cfm": [900]}, "target.cooling_high_cfm", "one value"),
    ({"target.cooling_high_cfm": 9}, "target.cooling_high_cfm", "150 to 3,000"),
    ({"equipment.kind": 3}, "equipment.kind", "word"),
    ({"equipment.kind": "boiler"}, "equipment.kind", "furnace"),
    ({"equipment.kind": {"low": 1, "likely": 2, "high": 3}}, "equipment.kind", "word"),
    ({"target.cooling_high_cfm": {"value": 900, "how": "magic"}}, "target.cooling_high_cfm", "how"),
    ({"target.cooling_high_cfm": {"value": 900, "x": 1}}, "target.cooling_high_cfm", "x"),
    (
        {"target.cooling_high_cfm": {"low": 900, "likely": 800, "high": 1000}},
        "target.cooling_high_cfm",
        "range",
    ),
    (
        {"target.cooling_high_cfm": {"low": 900, "likely": 950}},
        "target.cooling_high_cfm",
        "number",
    ),
    ({"equipment.kind": {"one_of": {"furnace": -1}}}, "equipment.kind", "positive"),
    ({"equipment.kind": {"one_of": {}}}, "equipment.kind", "weight"),
    ({"supply.trunks.1.width_in": 20}, "supply.trunks.0", "without gaps"),
    ({"supply.trunks": [20]}, "supply.trunks.0", "object"),
    ({"supply.trunks": [{}]}, "supply.trunks.0", "empty"),
    ({"supply.trunks.x.width_in": 20}, "supply.trunks.x.width_in", ""),
    (
        {"supply.trunks": [{"width_in": 20, "share_fraction": 0.7}, {"share_fraction": 0.6}]},
        "supply.trunks.0.share_fraction",
        "1.3",
    ),
    ({"supply.trunks.0.share_fraction": 1.1}, "supply.trunks.0.share_fraction", "1"),
    (
        {"supply.trunks": [{"width_in": 20, "height_in": 2.5, "liner_in": 1}]},
        "supply.trunks.0.liner_in",
        "height_in",
    ),
    (
        {"supply.trunks": [{"width_in": 20, "diameter_in": 12}]},
        "supply.trunks.0.diameter_in",
        "one shape",
    ),
    (
        {"supply.trunks": [{"shape": "round", "width_in": 20}]},
        "supply.trunks.0.shape",
        "diameter_in",
    ),
    ({"supply.trunks": [{"width_in": 20, "from": "attic"}]}, "supply.trunks.0.from", "attic"),
    (
        {"supply.trunks": [{"name": "a", "from": "b"}, {"name": "b", "from": "a"}]},
        "supply.trunks.0.from",
        "itself",
    ),
    (
        {"equipment.rise_low_degf": 60, "equipment.rise_high_degf": 40},
        "equipment.rise_low_degf",
        "above",
    ),
    (
        {"equipment.heating_output_btuh": 90000, "equipment.heating_input_btuh": 80000},
        "equipment.heating_output_btuh",
        "above",
    ),
    (
        {"target.cooling_low_cfm": 1200, "target.cooling_high_cfm": 1000},
        "target.cooling_low_cfm",
        "above",
    ),
    ({"path.fittings": [{"kind": "wormhole"}]}, "path.fittings.0.kind", "wormhole"),
    (
        {
            "equipment.cooling_rows": [
                {"airflow_cfm": 900, "total_btuh": 9000, "sensible_btuh": 9e9}
            ]
        },
        "equipment.cooling_rows.0.sensible_btuh",
        "total",
    ),
    (
        {"equipment.cooling_rows": [{"airflow_cfm": 900, "total_btuh": 9000}]},
        "equipment.cooling_rows.0.sensible_btuh",
        "missing",
    ),
    (
        {
            "equipment.blower_tables": [
                {
                    "setting": "A",
                    "rows": [
                        {"static_inwc": 0.1, "airflow_cfm": 900},
                        {"static_inwc": 0.5, "airflow_cfm": 1100},
                    ],
                }
            ]
        },
        "equipment.blower_tables.0",
        "falls",
    ),
    ({"equipment.blower_tables": []}, "equipment.blower_tables", "at least one"),
    (
        {"equipment.blower_tables": [{"rows": [{"static_inwc": 0.1}]}]},
        "equipment.blower_tables.0.rows.0.airflow_cfm",
        "missing",
    ),
    (
        {"equipment.blower_tables": [{"modes": ["warm"], "rows": []}]},
        "equipment.blower_tables.0.rows",
        "at least one",
    ),
]


@pytest.mark.parametrize(("mapping", "key", "words"), REFUSED, ids=[r[1] for r in REFUSED])
def test_what_cannot_be_is_refused_by_its_key(mapping, key, words) -> None:
    with pytest.raises(FactError) as refused:
        job_from_mapping(mapping)
    assert refused.value.key == key
    assert words in f"{refused.value.key} {refused.value.problem}"


def test_a_job_goes_to_plain_data_and_back() -> None:
    mapping = {
        **SOUND,
        "site.elevation_ft": {"value": 500, "how": "phone", "hedged": True},
        "house.floor_area_ft2": {"low": 1500, "likely": 1800, "high": 2000, "how": "guessed"},
        "equipment.refrigerant": {"one_of": {"r410a": 1, "a2l": 2}, "how": "phone"},
        "return.branches": [],
        "equipment.cooling_rows": [
            {"stage": "high", "airflow_cfm": 1000, "total_btuh": 30000, "sensible_btuh": 22000}
        ],
    }
    job = job_from_mapping(mapping)
    told = json.loads(json.dumps(job_to_mapping(job)))
    assert job_from_mapping(told) == job


def test_a_list_longer_than_its_facts_survives_the_way_there_and_back() -> None:
    job = job_from_mapping({"supply.trunks.0.width_in": 20}).with_length("supply.trunks", 2)
    assert job_from_mapping(job_to_mapping(job)) == job


@settings(max_examples=200, deadline=None)
@given(
    st.dictionaries(
        st.sampled_from([*catalogue(), "supply.trunks.0.width_in", "x.y", "readings", "filters"]),
        st.recursive(
            st.none() | st.booleans() | st.floats() | st.text(max_size=5) | st.integers(),
            lambda inner: (
                st.lists(inner, max_size=2)
                | st.dictionaries(st.text(max_size=6), inner, max_size=3)
            ),
            max_leaves=4,
        ),
        max_size=4,
    )
)
def test_any_plain_data_is_a_job_or_a_refusal_by_key(mapping) -> None:
    try:
        job_from_mapping(mapping)
        refused = None
    except FactError as error:
        refused = error
    assert refused is None or (refused.key and refused.problem)
