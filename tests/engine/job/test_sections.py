"""Sections: clear sizes from what was read, shares of the air, names."""

import numpy as np
import pytest
from fluids.friction import friction_factor
from scipy.optimize import brentq
from support.houses import house

from engine.errors import FactError
from engine.job.belief import How, Known
from engine.job.job import Job
from engine.job.sample import draw
from engine.job.sections import ducts_of
from engine.trade.limits import Role


def ducts(name="supply.trunks", **more):
    return ducts_of(house(more), name)


def trunk(**facts):
    return ducts(**{"supply.trunks": [facts]})[0]


def test_a_document_size_is_the_clear_size() -> None:
    found = trunk(width_in=20, height_in=8)
    # 20 x 8 / 144 sq ft
    assert found.area_ft2 == pytest.approx(160.0 / 144.0)
    assert (found.share == 1.0).all()


def test_liner_inside_an_outside_size_is_taken_off_on_both_sides() -> None:
    # 18 x 10 with 1 in. liner is 16 x 8 inside
    for where in ({}, {"measured_where": "outside_of_liner"}, {"measured_where": "bare_metal"}):
        found = trunk(width_in=18, height_in=10, liner_in=1, **where)
        assert found.area_ft2[0] == pytest.approx(128.0 / 144.0)
    inside = trunk(width_in=18, height_in=10, liner_in=1, measured_where="inside")
    assert inside.area_ft2[0] == pytest.approx(180.0 / 144.0)


def test_wrap_is_taken_off_by_its_usual_excess() -> None:
    # 2 to 4 in. on each side, 3 in the middle
    found = trunk(width_in=23, height_in=11, measured_where="over_wrap")
    assert found.area_ft2[0] == pytest.approx(160.0 / 144.0)
    assert np.ptp(found.area_ft2) > 0.2


def test_a_tape_size_told_without_its_place_may_be_over_wrap_or_liner() -> None:
    job = Job().with_facts(
        {
            "supply.trunks.0.width_in": Known(20.0, How.MEASURED),
            "supply.trunks.0.height_in": Known(8.0, How.MEASURED),
        }
    )
    found = ducts_of(draw(job, 4096), "supply.trunks")[0]
    assert found.area_ft2[0] == pytest.approx(160.0 / 144.0)
    small = (found.area_ft2[1:] < 0.85 * 160.0 / 144.0).mean()
    assert 0.05 < small < 0.25
    sure = job.with_fact("supply.trunks.0.measured_where", Known("inside", How.MEASURED))
    there = ducts_of(draw(sure, 4096), "supply.trunks")[0]
    assert (there.area_ft2[1:] < 0.85 * 160.0 / 144.0).mean() == 0.0


def test_flex_told_by_phone_may_be_its_jacket() -> None:
    job = Job().with_facts(
        {
            "supply.trunks.0.diameter_in": Known(14.0, How.PHONE),
            "supply.trunks.0.material": Known("flex", How.PHONE),
        }
    )
    found = ducts_of(draw(job, 4096), "supply.trunks")[0]
    assert found.diameter_in is not None
    assert found.diameter_in[0] == 14.0
    assert 0.35 < (found.diameter_in[1:] < 11.8).mean() < 0.6
    assert found.flexible.all()


def test_two_equal_trunks_carry_half_each() -> None:
    found = ducts(**{"supply.trunks": [{"width_in": 18, "height_in": 8}] * 2})
    assert [d.share[0] for d in found] == [0.5, 0.5]
    assert [d.where for d in found] == ["supply trunk 1", "supply trunk 2"]


def test_trunks_of_two_sizes_share_by_area_until_somebody_says() -> None:
    sizes = [{"width_in": 20, "height_in": 8}, {"width_in": 10, "height_in": 8}]
    found = ducts(**{"supply.trunks": sizes})
    assert [d.share[0] for d in found] == pytest.approx([2 / 3, 1 / 3])
    told = ducts(**{"supply.trunks": [{**sizes[0], "share_fraction": 0.7}, sizes[1]]})
    assert [d.share[0] for d in told] == pytest.approx([0.7, 0.3])


def test_count_ducts_share_what_the_section_carries() -> None:
    found = ducts("supply.branches", **{"supply.branches": [{"diameter_in": 6, "count": 10}]})
    assert found[0].count[0] == 10.0
    assert found[0].share[0] == pytest.approx(1.0)


def test_one_stated_branch_does_not_carry_the_whole_house() -> None:
    found = ducts(
        "supply.branches",
        **{"supply.branches": [{"diameter_in": 6}], "house.supply_registers_count": 10},
    )
    assert found[0].share[0] == pytest.approx(0.1)


def test_a_step_down_hangs_on_its_trunk_and_carries_a_part_of_its_air() -> None:
    found = ducts(
        **{
            "supply.trunks": [
                {"width_in": 20, "height_in": 8, "name": "main"},
                {"width_in": 14, "height_in": 8, "from": "Main"},
            ]
        }
    )
    assert found[1].parent == "supply.trunks.0"
    assert found[0].share[0] == 1.0
    assert 0.3 < found[1].share[0] < 0.8


def test_what_hangs_on_nothing_known_is_refused() -> None:
    found = draw(Job().with_fact("supply.trunks.0.from", Known("attic", How.MEASURED)), 8)
    with pytest.raises(FactError, match="from"):
        ducts_of(found, "supply.trunks")


def test_a_list_stated_empty_stays_empty() -> None:
    assert ducts("return.drops", **{"return.drops": []}) == ()


def test_nobody_spoke_of_trunks_so_one_or_two_are_believed() -> None:
    found = ducts_of(draw(Job(), 4096), "supply.trunks")
    assert len(found) == 1
    assert found[0].share[0] == 1.0
    assert (found[0].share[1:] == 0.5).mean() == pytest.approx(0.35, abs=0.01)
    assert not found[0].stated


def test_believed_sizes_grow_with_tonnage() -> None:
    small = ducts(**{"equipment.cooling_tons": 2})[0].area_ft2[0]
    large = ducts(**{"equipment.cooling_tons": 4})[0].area_ft2[0]
    assert large == pytest.approx(2.0 * small)


def test_both_ways_on_the_phone_is_two_trunks() -> None:
    found = ducts(**{"phone.trunk_directions": "both"})[0]
    assert (found.share == 0.5).all()


def test_a_branch_in_a_wall_is_a_riser() -> None:
    found = ducts("supply.branches", **{"supply.branches": [{"diameter_in": 6, "is_riser": True}]})
    assert found[0].role is Role.RISER


def test_two_round_trunks_have_the_area_of_two_circles() -> None:
    found = ducts(**{"supply.trunks": [{"diameter_in": 12, "count": 2}]})[0]
    # 2 x pi x 12 x 12 / 4 = 226.2 sq in.
    assert found.total_area_ft2[0] == pytest.approx(226.195 / 144.0, abs=1e-4)


def airflow_at_one_rate_cfm(diameter_in: float) -> float:
    """Darcy's equation with the factor of fluids (Colebrook), 0.1 in. of water in 100 ft."""
    area_ft2 = np.pi / 4.0 * (diameter_in / 12.0) ** 2

    def too_much(cfm: float) -> float:
        fpm = cfm / area_ft2
        reynolds = fpm / 60.0 * (diameter_in / 12.0) / 1.62e-4
        factor = friction_factor(Re=reynolds, eD=0.0003 * 12.0 / diameter_in)
        return float(factor * 100.0 * 12.0 / diameter_in * (fpm / 4005.0) ** 2 - 0.1)

    return float(brentq(too_much, 10.0, 2000.0))


# Rooms that want more air have larger branches: sized at one friction rate (common practice), whose
# airflow by size is computed with fluids.
@pytest.mark.parametrize("sizes", [(6.0, 8.0), (5.0, 7.0), (6.0, 7.0)])
def test_branches_of_several_sizes_share_the_air_by_what_a_size_carries(sizes) -> None:
    small, large = ducts(
        "supply.branches",
        **{"supply.branches": [{"diameter_in": size, "count": 5} for size in sizes]},
    )
    carried = airflow_at_one_rate_cfm(sizes[1]) / airflow_at_one_rate_cfm(sizes[0])
    assert large.share[0] / small.share[0] == pytest.approx(carried, rel=0.03)
    assert large.share[0] + small.share[0] == pytest.approx(1.0, rel=1e-6)


def test_branches_of_one_size_share_the_air_by_their_number() -> None:
    few, many = ducts(
        "supply.branches",
        **{"supply.branches": [{"diameter_in": 6, "count": 2}, {"diameter_in": 6, "count": 8}]},
    )
    assert few.share[0] == pytest.approx(0.2)
    assert many.share[0] == pytest.approx(0.8)
