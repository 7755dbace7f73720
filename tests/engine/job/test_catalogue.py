"""The catalogue of facts: complete rows, priors inside their bounds, keys that carry units."""

import pytest

from engine.errors import FactError
from engine.job.belief import Between, How, OneOf
from engine.job.facts import Quantity, catalogue, fact_for, pattern_of
from engine.job.job import LISTS, Job

FACTS = list(catalogue().values())
UNIT_ENDINGS = {
    "in": ("_in",),
    "ft": ("_ft",),
    "ft2": ("_ft2",),
    "CFM": ("_cfm",),
    "in. w.c.": ("_inwc",),
    "F": ("_degf",),
    "Btu/h": ("_btuh",),
    "tons": ("_tons",),
    "kW": ("_kw",),
    "ppm": ("_ppm",),
}


@pytest.mark.parametrize("fact", FACTS, ids=lambda fact: fact.key)
def test_a_row_is_complete(fact) -> None:
    assert fact.meaning[0].isupper()
    assert fact.meaning.endswith(".")
    assert fact.givers
    assert fact.source
    if fact.is_word:
        assert fact.low is None
        assert fact.high is None
        assert not fact.unit
    else:
        assert fact.low < fact.high
        assert not fact.choices
        assert fact.key.endswith(UNIT_ENDINGS.get(fact.unit, ("",)))


@pytest.mark.parametrize("fact", [f for f in FACTS if f.prior], ids=lambda fact: fact.key)
def test_a_starting_range_is_believable_and_assumed(fact) -> None:
    assert fact.prior.how is How.ASSUMED
    if isinstance(fact.prior, Between):
        assert fact.low <= fact.prior.low
        assert fact.prior.high <= fact.high
    if isinstance(fact.prior, OneOf):
        assert {word for word, _ in fact.prior.weights} <= set(fact.choices)


def test_keys_are_there_once() -> None:
    from engine.job.catalogue import ROWS

    assert len({fact.key for fact in ROWS}) == len(ROWS)


def test_every_list_has_facts_and_every_listed_fact_a_list() -> None:
    listed = {key.split("[]")[0] for key in catalogue() if "[]" in key}
    assert listed == set(LISTS)


@pytest.mark.parametrize("name", LISTS)
def test_a_job_takes_an_entry_of_every_list(name) -> None:
    fact = next(f for key, f in catalogue().items() if key.startswith(f"{name}[]."))
    key = fact.key.replace("[]", ".0")
    assert fact_for(key) is fact
    assert pattern_of(key) == fact.key
    assert Job().with_length(name, 1).length(name) == 1


def test_the_names_outside_programs_see_are_there() -> None:
    for key in (
        "site.elevation_ft",
        "loads.sensible_gain_btuh",
        "equipment.heating_efficiency_fraction",
        "equipment.max_static_inwc",
        "old.cooling_tons",
        "target.heat_pump_heating_cfm",
        "target.cooling_low_difference_degf",
        "new.coil_drop_at_cfm",
        "supply.trunks.3.share_fraction",
        "supply.branches.0.from",
        "return.drops.0.liner_in",
        "return.grilles.0.count",
        "filters.1.place",
        "path.fittings.0.equivalent_ft",
        "readings.0.total_external_inwc",
        "condition.second_heat_exchanger",
        "symptoms.ice",
    ):
        fact_for(key)


def test_an_unknown_fact_is_refused_with_the_nearest() -> None:
    with pytest.raises(FactError, match=r"new\.coil_drop_inwc"):
        fact_for("new.coil_drop")


def test_counts_and_shares_have_no_unit() -> None:
    for fact in FACTS:
        if fact.quantity is Quantity.SHARE:
            assert fact.unit == ""
