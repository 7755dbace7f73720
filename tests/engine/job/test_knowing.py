"""Scatter by kind of number and way of knowing it."""

import pytest

from engine.job.belief import How
from engine.job.facts import Quantity
from engine.job.knowing import SCATTER, scatter_of

NUMBERS = [q for q in Quantity if q not in (Quantity.CHOICE, Quantity.TEXT)]
DOUBTED = [How.MEASURED, How.PHOTO, How.PHONE, How.GUESSED]


@pytest.mark.parametrize("quantity", NUMBERS)
def test_every_number_has_a_scatter_for_every_way_of_knowing(quantity) -> None:
    for how in DOUBTED:
        assert (quantity, how) in SCATTER
        assert scatter_of(quantity, how).source


@pytest.mark.parametrize("quantity", NUMBERS)
@pytest.mark.parametrize("value", [1.0, 20.0, 1000.0])
def test_a_guess_is_never_surer_than_a_phone_call_nor_that_than_a_measurement(
    quantity, value
) -> None:
    measured, phone, guessed = (
        scatter_of(quantity, how).sigma(value) for how in (How.MEASURED, How.PHONE, How.GUESSED)
    )
    if quantity not in (Quantity.TEMPERATURE, Quantity.DIFFERENCE):
        assert measured <= phone
    assert phone <= guessed


@pytest.mark.parametrize("how", [How.DOCUMENT, How.PLATE])
def test_documents_and_plates_are_exact_unless_hedged(how) -> None:
    assert scatter_of(Quantity.AIRFLOW, how).sigma(1000.0) == 0.0
    assert scatter_of(Quantity.AIRFLOW, how, hedged=True).sigma(1000.0, hedged=True) > 0.0


# Field practice, one standard deviation: tape on metal, trunk told by phone, static as taken in
# the field (0.03 in. or 10 %, the larger), loads by room, whole house and square foot.
FIGURES = [
    (Quantity.DUCT_SIDE, How.MEASURED, 20.0, 0.25),
    (Quantity.DUCT_SIDE, How.PHONE, 20.0, 4.0),
    (Quantity.GRILLE_SIDE, How.PHONE, 20.0, 0.75),
    (Quantity.STATIC, How.MEASURED, 0.10, 0.03),
    (Quantity.STATIC, How.MEASURED, 0.60, 0.06),
    (Quantity.TEMPERATURE, How.MEASURED, 70.0, 1.0),
    (Quantity.DIFFERENCE, How.MEASURED, 50.0, 3.0),
    (Quantity.LOAD, How.MEASURED, 30000.0, 3600.0),
    (Quantity.LOAD, How.GUESSED, 30000.0, 12000.0),
    (Quantity.YEAR, How.PHONE, 1975.0, 6.0),
    (Quantity.AREA, How.PHONE, 1800.0, 270.0),
]


@pytest.mark.parametrize(("quantity", "how", "value", "sigma"), FIGURES)
def test_figures_are_those_of_field_practice(quantity, how, value, sigma) -> None:
    assert scatter_of(quantity, how).sigma(value) == pytest.approx(sigma)


def test_hedging_doubles() -> None:
    plain = scatter_of(Quantity.LENGTH, How.PHONE)
    assert plain.sigma(40.0, hedged=True) == 2.0 * plain.sigma(40.0)


def test_words_have_none() -> None:
    assert scatter_of(Quantity.CHOICE, How.GUESSED).sigma(1.0) == 0.0
