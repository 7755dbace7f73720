"""A house as arrays: what is stated is held, what isn't is believed."""

import numpy as np
import pytest

from engine.errors import FactError
from engine.job.belief import Between, How, Known, OneOf
from engine.job.job import Job
from engine.job.sample import draw

KEY = "target.cooling_high_cfm"


def house(key, belief, samples=4096):
    return draw(Job().with_fact(key, belief), samples)


@pytest.mark.parametrize("how", [How.DOCUMENT, How.PLATE])
def test_documents_and_plates_have_no_scatter(how) -> None:
    values = house(KEY, Known(1000.0, how)).number(KEY)
    assert (values == 1000.0).all()


def test_a_measured_number_scatters_as_its_kind_does() -> None:
    # tape on metal: 0.25 in. (field practice); hedged: twice that
    key = "supply.trunks.0.width_in"
    plain = house(key, Known(20.0, How.MEASURED)).number(key)
    hedged = house(key, Known(20.0, How.MEASURED, hedged=True)).number(key)
    assert plain[0] == hedged[0] == 20.0
    assert np.std(plain[1:]) == pytest.approx(0.25, rel=0.01)
    assert np.std(hedged[1:]) == pytest.approx(0.50, rel=0.01)
    assert np.mean(plain[1:]) == pytest.approx(20.0, abs=0.01)


def test_a_range_is_drawn_by_its_percentiles() -> None:
    values = house(KEY, Between(900.0, 1000.0, 1300.0, How.PHONE)).number(KEY)
    assert values[0] == 1000.0
    assert np.percentile(values[1:], (10, 50, 90)) == pytest.approx([900, 1000, 1300], abs=2)


def test_a_choice_is_drawn_by_its_weights() -> None:
    belief = OneOf((("furnace", 0.75), ("heat_pump", 0.25)), How.PHONE)
    found = house("equipment.kind", belief)
    assert found.is_word("equipment.kind", "furnace")[0]
    assert found.is_word("equipment.kind", "furnace")[1:].mean() == pytest.approx(0.75)
    numbers = house("equipment.cooling_tons", OneOf(((2.0, 1.0), (3.0, 3.0)), How.PHONE))
    tons = numbers.number("equipment.cooling_tons")
    assert tons[0] == 3.0
    assert (tons[1:] == 2.0).mean() == pytest.approx(0.25)


def test_what_nobody_stated_is_the_catalogues_starting_range() -> None:
    found = draw(Job(), 4096)
    tons = found.number("equipment.cooling_tons")
    assert np.percentile(tons[1:], (10, 50, 90)) == pytest.approx([2, 3, 4], abs=0.01)
    assert not found.drawn["equipment.cooling_tons"].stated


def test_what_has_no_starting_range_is_refused_by_name() -> None:
    with pytest.raises(FactError, match="rise_high"):
        draw(Job(), 16).number("equipment.rise_high_degf")


def test_values_stay_believable_however_wide_the_scatter() -> None:
    key = "supply.trunks.0.width_in"
    values = house(key, Known(3.0, How.PHONE, hedged=True)).number(key)
    assert values.min() >= 2.0


def test_counts_are_whole() -> None:
    key = "house.supply_registers_count"
    values = house(key, Known(11.0, How.PHONE)).number(key)
    assert np.array_equal(values, np.round(values))
    assert np.ptp(values) > 0


def test_a_fact_drawn_twice_is_the_same() -> None:
    found = draw(Job(), 64)
    assert found.number("site.elevation_ft") is found.number("site.elevation_ft")


def test_order_of_asking_does_not_matter() -> None:
    one, other = draw(Job(), 64), draw(Job(), 64)
    first = one.number("site.elevation_ft")
    other.number("equipment.cooling_tons")
    assert np.array_equal(first, other.number("site.elevation_ft"))
