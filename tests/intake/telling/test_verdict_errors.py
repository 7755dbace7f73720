"""What the engine refused is told with the key, what is odd about it and what to do."""

import pytest

from engine.arrays import require_within
from engine.errors import EngineError, FactError, OutOfRangeError
from engine.job.belief import How, Known
from engine.job.job import Job
from engine.trade.limits import LIMITS, turned
from intake.telling.errors import error_sentence


def refused(call):
    with pytest.raises(EngineError) as caught:
        call()
    return error_sentence(caught.value)


def test_a_size_that_no_duct_has_is_told_with_its_believable_range():
    told = refused(lambda: Job().with_fact("supply.trunks.0.width_in", Known(200.0, How.MEASURED)))
    assert told.startswith("supply.trunks.0.width_in: 200 is outside what is believable")
    assert "width of the supply trunk, from 2 in. to 48 in." in told
    assert told.endswith("leave it out if nobody knows it.")


def test_a_word_that_is_no_choice_is_told_with_the_choices():
    told = refused(lambda: Job().with_fact("equipment.kind", Known("boiler", How.PHONE)))
    assert told.startswith("equipment.kind is one of furnace")
    assert "one of furnace, heat pump, air handler, dual fuel, packaged" in told


def test_a_misspelt_key_is_told_with_its_neighbour_and_where_all_are_listed():
    told = refused(lambda: Job().with_fact("supply.trunks.0.widht_in", Known(20.0, How.PHONE)))
    assert "supply.trunks[].width_in" in told
    assert "`trunktalk facts`" in told


def test_a_limit_that_does_not_exist_names_its_neighbours():
    told = refused(lambda: turned(LIMITS, "supply_trunk_metal.maximum_fpm", 900.0, "office"))
    assert "supply_trunk_rigid" in told


def test_a_quantity_out_of_range_is_told_with_its_unit_and_where_it_holds():
    told = error_sentence(OutOfRangeError("airflow_cfm", 6000.0, 0.0, 5000.0))
    assert "The airflow (airflow_cfm) comes out as 6,000 CFM" in told
    assert "0 CFM to 5,000 CFM" in told
    assert "Check the sizes and airflows" in told


@pytest.mark.parametrize("value", [float("nan"), float("inf")])
def test_a_quantity_that_is_no_number_is_told_without_crashing(value):
    told = refused(lambda: require_within("velocity_fpm", value, 0.0, 5000.0))
    assert "velocity" in told
    assert "nan" not in told


def test_a_fact_out_of_range_by_name_is_told_as_a_fact():
    told = error_sentence(OutOfRangeError("path.supply_length_ft", 900.0, 3.0, 150.0))
    assert told.startswith("path.supply_length_ft is 900 ft.")
    assert "from 3 ft to 150 ft" in told


def test_a_list_with_an_impossible_length_says_how_none_is_written():
    told = error_sentence(FactError("return.drops", "is negative"))
    assert "empty list if the house has none" in told


def test_any_other_refusal_of_the_engine_is_told_as_one_sentence():
    told = error_sentence(EngineError("a range must run up: 3, 2, 1"))
    assert told.startswith("That can't be computed: a range must run up: 3, 2, 1.")
