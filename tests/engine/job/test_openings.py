"""Return openings and filters: gross sizes, in grilles or in the cabinet."""

import numpy as np
import pytest
from support.houses import house

from engine.job.belief import How, Known
from engine.job.job import Job
from engine.job.openings import filters_of, openings_of, registers_of
from engine.job.sample import draw


def test_openings_count_together_on_their_gross_size() -> None:
    found = openings_of(
        house(
            {
                "return.grilles": [
                    {"width_in": 20, "height_in": 20, "count": 2},
                    {"width_in": 20, "height_in": 10},
                ]
            }
        )
    )
    assert found is not None
    # 2 x 400 + 200 = 1,000 sq in.
    assert found.area_ft2 == pytest.approx(1000.0 / 144.0)
    assert found.sizes == "2 x 20 x 20 + 20 x 10"


def test_a_filter_in_the_grille_is_the_opening_where_no_grille_was_stated() -> None:
    facts = {"filters": [{"width_in": 20, "height_in": 25, "place": "grille"}]}
    found = openings_of(house(facts))
    assert found is not None
    assert found.stated
    assert found.filtered.all()
    assert found.area_ft2 == pytest.approx(500.0 / 144.0)


@pytest.mark.parametrize(
    ("grille", "filters", "filtered"),
    [
        ({"has_filter": True}, None, True),
        ({"has_filter": False}, None, False),
        ({}, [{"width_in": 20, "height_in": 20, "place": "grille"}], True),
        ({}, [{"width_in": 20, "height_in": 20, "place": "cabinet"}], False),
    ],
)
def test_whether_a_filter_sits_in_the_opening_follows_from_what_is_stated(
    grille, filters, filtered
) -> None:
    facts = {"return.grilles": [{"width_in": 20, "height_in": 20, **grille}]}
    if filters:
        facts["filters"] = filters
    found = openings_of(house(facts))
    assert found is not None
    assert (found.filtered == filtered).all()


def test_where_nobody_said_the_filter_may_be_in_either_place() -> None:
    found = openings_of(house({"return.grilles": [{"width_in": 20, "height_in": 20}]}, 1000))
    assert found is not None
    assert not found.filtered[0]
    assert found.filtered[1:].mean() == pytest.approx(0.30)


def test_a_frame_is_taken_off_by_its_usual_excess() -> None:
    # 1.5 to 2 in. larger than the hole, 1.75 in the middle (field practice)
    grille = {"width_in": 21.75, "height_in": 21.75, "measured_where": "frame"}
    found = openings_of(house({"return.grilles": [grille]}))
    assert found is not None
    assert found.area_ft2[0] == pytest.approx(400.0 / 144.0)


def test_a_homeowners_grille_is_often_its_frame() -> None:
    job = Job().with_facts(
        {
            "return.grilles.0.width_in": Known(20.0, How.PHONE),
            "return.grilles.0.height_in": Known(20.0, How.PHONE),
        }
    )
    found = openings_of(draw(job, 4096))
    assert found is not None
    assert found.area_ft2[0] == pytest.approx(400.0 / 144.0)
    # seven in ten lose about 1.75 in. each way: 400 -> 333 sq in.
    assert np.mean(found.area_ft2[1:]) == pytest.approx(353.0 / 144.0, rel=0.03)


def test_filters_side_by_side_add_and_places_are_in_series() -> None:
    banks = filters_of(
        house(
            {
                "filters": [
                    {"width_in": 20, "height_in": 20, "depth_in": 1, "place": "grille", "count": 2},
                    {"width_in": 16, "height_in": 25, "depth_in": 4, "place": "cabinet"},
                ]
            }
        )
    )
    assert [(bank.place, round(bank.area_ft2[0] * 144)) for bank in banks] == [
        ("grille", 800),
        ("cabinet", 400),
    ]


def test_lists_stated_empty_are_empty() -> None:
    found = house({"filters": [], "return.grilles": []})
    assert filters_of(found) == ()
    assert openings_of(found) is None


def test_believed_openings_are_those_of_stock() -> None:
    # 90 / 160 / 300 sq in. a ton (field practice); 3 tons
    found = openings_of(house({"equipment.cooling_tons": 3}, 4096))
    assert found is not None
    in2 = np.percentile(found.area_ft2[1:] * 144.0, (10, 50, 90))
    assert in2 == pytest.approx([270, 480, 900], rel=0.01)


def test_registers_are_known_only_where_stated() -> None:
    assert registers_of(house({})) is None
    found = registers_of(
        house({"supply.registers": [{"width_in": 12, "height_in": 4, "count": 9}]})
    )
    assert found is not None
    assert found.area_ft2[0] == pytest.approx(9 * 48 / 144)


def test_no_house_is_believed_to_have_less_than_an_opening():
    there = house({"equipment.cooling_tons": 3}, samples=40_000)
    openings = openings_of(there)
    assert openings is not None
    assert openings.area_ft2.min() > 0.3  # a 6 x 8 in. grille
    assert all(bank.area_ft2.min() > 0.3 for bank in filters_of(there))
