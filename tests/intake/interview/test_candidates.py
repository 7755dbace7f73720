"""Loose words for other equipment, read as candidates."""

import pytest

from engine.job.belief import How, Known
from engine.job.job import Job
from engine.job.modes import Mode
from engine.what_if import SOLD_TONS, Candidate
from intake.interview import candidates
from intake.interview.candidates import read_candidate, read_candidates

COOLING = Mode.COOLING_HIGH


def furnace(**facts: float | str) -> Job:
    told = {
        "equipment.kind": "furnace",
        "equipment.cooling_tons": 3.0,
        "target.cooling_high_cfm": 1200.0,
        **{name.replace("__", "."): value for name, value in facts.items()},
    }
    return Job().with_facts({key: Known(value, How.DOCUMENT) for key, value in told.items()})


READ = [
    ("it were 2.5 tons", "2.5 tons", Candidate(tons=2.5)),
    ("two and a half tons", "2.5 tons", Candidate(tons=2.5)),
    ("we dropped to 2.5 tons", "2.5 tons", Candidate(tons=2.5)),
    ("a 2.5 ton unit instead of 3", "2.5 tons", Candidate(tons=2.5)),
    ("1000 cfm", "1,000 CFM", Candidate(airflow_cfm={COOLING: 1000.0})),
    ("the airflow was 1,000", "1,000 CFM", Candidate(airflow_cfm={COOLING: 1000.0})),
    (
        "1000 cfm in heating",
        "1,000 CFM in heating",
        Candidate(airflow_cfm={Mode.HEATING_HIGH: 1000.0}),
    ),
    ("350 a ton", "350 CFM per ton", Candidate(airflow_cfm={COOLING: 1050.0})),
    ("we use a 4 inch filter", "a 4 in. filter", Candidate(filter_depth_in=4.0)),
    ("a four inch filter", "a 4 in. filter", Candidate(filter_depth_in=4.0)),
    (
        "20x25x4",
        "a 20 x 25 x 4 in. filter",
        Candidate(filter_width_in=20.0, filter_height_in=25.0, filter_depth_in=4.0),
    ),
    (
        "coil .2 at 1000",
        "a coil of 0.20 in. w.c. at 1,000 CFM",
        Candidate(coil_drop_inwc=0.2, coil_drop_at_cfm=1000.0),
    ),
    ("a coil with a drop of .18", "a coil of 0.18 in. w.c.", Candidate(coil_drop_inwc=0.18)),
    (
        "a 60k furnace at 95 percent",
        "a 60,000 Btu/h furnace, 95% efficient",
        Candidate(heating_input_btuh=60000.0, heating_efficiency_fraction=0.95),
    ),
    (
        "a 96% furnace",
        "a furnace 96% efficient",
        Candidate(heating_efficiency_fraction=0.96),
    ),
    (
        "rise 40 to 70",
        "a rise of 40 to 70 F",
        Candidate(rise_low_degf=40.0, rise_high_degf=70.0),
    ),
    (
        "3 tons, 1100 cfm",
        "3 tons, 1,100 CFM",
        Candidate(tons=3.0, airflow_cfm={COOLING: 1100.0}),
    ),
    (
        "3.5 tons with 1300 cfm and a 4 inch filter",
        "3.5 tons, 1,300 CFM, a 4 in. filter",
        Candidate(tons=3.5, airflow_cfm={COOLING: 1300.0}, filter_depth_in=4.0),
    ),
    (
        "a two stage 3 ton",
        "3 tons, two stages",
        Candidate(tons=3.0, facts={"equipment.stages": "two"}),
    ),
    ("one size smaller", "2.5 tons", Candidate(tons=2.5)),
    ("half a ton less", "2.5 tons", Candidate(tons=2.5)),
    ("a bigger unit", "3.5 tons", Candidate(tons=3.5)),
    ("2.5", "2.5 tons", Candidate(tons=2.5)),
]


@pytest.mark.parametrize(("text", "words", "candidate"), READ)
def test_loose_words_are_read(text, words, candidate):
    found = read_candidate(text, furnace())
    assert not isinstance(found, str), found
    assert found.words == words
    assert found.candidate == candidate


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("3 ton vs 2.5 ton", ["3 tons", "2.5 tons"]),
        ("2.5 or 3 tons", ["2.5 tons", "3 tons"]),
        ("900 or 1000 cfm", ["900 CFM", "1,000 CFM"]),
        ("2 tons vs 1,000 cfm vs a 4 inch filter", ["2 tons", "1,000 CFM", "a 4 in. filter"]),
    ],
)
def test_two_or_three_stand_side_by_side(text, words):
    found = read_candidates(text, furnace())
    assert not isinstance(found, str), found
    assert [one.words for one in found] == words


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("1000", "1000 of what"),
        ("the trunk were 24x10", "I can't try"),
        ("we sealed the ducts", "I can't try"),
        ("smaller ducts", "I can't try"),
        ("a bigger blower", "I can't try"),
        ("the coil", "drop of that coil"),
        ("the filter", "Which filter"),
        ("a heat pump", "Another kind of equipment"),
        ("a 9 ton unit", "9 tons is outside"),
        ("99999 cfm", "hard to believe"),
        ("2 vs 2.5 vs 3 vs 3.5 tons", "at most 3"),
        ("", "I can try"),
        ("?", "I can try"),
    ],
)
def test_what_cannot_be_read_is_asked_back_in_a_sentence(text, part):
    found = read_candidates(text, furnace())
    assert isinstance(found, str), found
    assert part in found


def test_a_furnace_cannot_be_tried_where_none_goes_in():
    told = read_candidate("60k btu", furnace(equipment__kind="heat_pump"))
    assert isinstance(told, str)
    assert "no burner" in told


def test_cfm_a_ton_needs_a_size_and_takes_the_one_it_stands_beside():
    assert "how many tons" in str(read_candidate("350 cfm per ton", Job()))
    found = read_candidate("2 tons at 350 cfm per ton", Job())
    assert not isinstance(found, str)
    assert found.candidate.airflow_cfm == {COOLING: 700.0}


def test_heat_pump_heating_goes_along_where_it_needs_the_same_air():
    same = furnace(equipment__kind="heat_pump", target__heat_pump_heating_cfm=1200.0)
    own = furnace(equipment__kind="heat_pump", target__heat_pump_heating_cfm=1300.0)
    for job, modes in ((same, {COOLING, Mode.HEAT_PUMP_HEATING}), (own, {COOLING})):
        found = read_candidate("1000 cfm", job)
        assert not isinstance(found, str)
        assert set(found.candidate.airflow_cfm) == modes


def test_the_sizes_sold_are_those_of_the_engine():
    assert candidates._SOLD_TONS == SOLD_TONS


@pytest.mark.parametrize(
    "text", ["[bold]", "x" * 400, "½", "at at at", ", , ,", "vs", "0 tons", "9" * 40]
)
def test_no_text_raises(text):
    assert read_candidates(text, furnace())
