"""Every name of the engine that reaches a person has words."""

import pytest

from engine.job.belief import Between, How, Known, OneOf
from engine.job.facts import catalogue
from engine.job.job import LISTS, Job
from engine.job.modes import Mode
from engine.verdict import Harm, ModeStatus, Part
from intake.telling import names
from intake.telling.names import belief_words, fact_words, place_words, value_words, wanted_words


def test_every_mode_status_part_harm_and_way_of_knowing_has_words():
    for words, kinds in (
        (names.MODES, Mode),
        (names.STATUSES, ModeStatus),
        (names.PARTS, Part),
        (names.HARMS, Harm),
        (names.HOWS, How),
    ):
        assert set(words) == set(kinds)
        assert all(words[kind] for kind in kinds)


@pytest.mark.parametrize("name", LISTS)
def test_every_list_of_a_job_has_words(name):
    assert wanted_words(name) not in (name, f"the {name}")
    assert place_words(f"{name}.0")


@pytest.mark.parametrize("key", [key.replace("[]", ".1") for key in catalogue()])
def test_every_fact_is_told_without_its_key_or_raw_choices(key):
    fact = catalogue()[names.fact_for(key).key]
    assert fact_words(key)
    assert key not in fact_words(key)
    assert all("_" not in value_words(key, choice) for choice in fact.choices)


def test_a_piece_is_numbered_only_where_there_are_several():
    one = Job().with_fact("supply.trunks.0.width_in", Known(20.0, How.MEASURED))
    two = one.with_fact("supply.trunks.1.width_in", Known(14.0, How.MEASURED))
    assert place_words("supply.trunks.0.width_in", one) == "supply trunk"
    assert place_words("supply.trunks.0.width_in", two) == "supply trunk 1"
    assert fact_words("supply.trunks.1.width_in", two) == "width of supply trunk 2"


def test_a_fitting_is_called_by_its_kind():
    job = Job().with_fact("path.fittings.0.kind", Known("wye", How.MEASURED))
    key = "path.fittings.0.equivalent_ft"
    assert fact_words(key, job) == "feet of duct one of “45 degree wye” is worth"


def test_a_piece_that_somebody_named_is_called_so():
    job = Job().with_fact("return.grilles.0.name", Known("hall, low", How.MEASURED))
    assert place_words("return.grilles.0.width_in", job) == "return opening “hall, low”"


@pytest.mark.parametrize(
    ("key", "belief", "told"),
    [
        ("return.drops.0.width_in", Known(14.0, How.MEASURED), "14 in."),
        ("return.drops.0.width_in", Known(14.0, How.PHONE, hedged=True), "about 14 in."),
        ("path.supply_length_ft", Between(30, 40, 55, How.PHONE), "30 ft to 55 ft, likely 40 ft"),
        ("house.year_built", Known(1978.0, How.PHONE), "1978"),
        ("equipment.heating_efficiency_fraction", Known(0.95, How.PLATE), "95%"),
        ("equipment.heating_input_btuh", Known(80000.0, How.PLATE), "80,000 Btu/h"),
        ("equipment.kind", Known("heat_pump", How.DOCUMENT), "heat pump"),
        (
            "supply.trunks.0.material",
            OneOf((("duct_board", 1.0), ("lined_metal", 3.0)), How.PHOTO),
            "sheet metal with liner (75%), duct board (25%)",
        ),
    ],
)
def test_a_belief_is_told_in_normal_form(key, belief, told):
    assert belief_words(key, belief) == told


def test_a_hedged_word_is_told_as_not_sure_and_a_shape_as_it_is():
    motor = Known("psc", How.PLATE, hedged=True)
    assert belief_words("equipment.blower_kind", motor).endswith(", not sure")
    assert belief_words("return.drops.0.shape", Known("rect", How.MEASURED, hedged=True)) == (
        "rectangular"
    )
    assert belief_words("return.drops.0.width_in", Known(14.0, How.MEASURED, hedged=True)) == (
        "about 14 in."
    )


def test_what_a_section_hangs_on_is_told_by_its_name():
    assert value_words("supply.trunks.1.from", "supply.trunks.0") == "supply trunk 1"
