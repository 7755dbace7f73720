"""Operating points over all members, held to the one-system solver of the physics."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from support.houses import house

from engine.job.delivered import delivered_by_kind, delivered_by_table
from engine.job.job import BlowerSetting
from engine.job.modes import Mode
from engine.job.system import PartDrop, System
from engine.physics.blower_table import BlowerTable, TablePlace
from engine.physics.operating import System as OneSystem
from engine.physics.operating import coefficient_at, operating_point, system_static_inwc
from engine.trade.exponents import PressurePart

COOL = Mode.COOLING_HIGH
TABLE = BlowerTable.from_rows("high", [(0.1, 1300), (0.4, 1180), (0.7, 1000), (0.9, 820)])
FLAT = BlowerTable.from_rows("flat", [(0.1, 1000), (0.5, 1000), (0.9, 1000)])


def path(drops, exponents=None):
    """A path of two parts with these drops at 1,000 CFM in each member."""
    drops = np.asarray(drops, dtype=float)
    never = np.zeros(drops.shape, dtype=bool)
    powers = np.full(drops.shape, 1.9) if exponents is None else np.asarray(exponents)
    parts = {
        PressurePart.SUPPLY_DUCT: PartDrop(drops * 0.6, powers, never, ()),
        PressurePart.FILTER: PartDrop(drops * 0.4, powers * 0.75, never, ()),
    }
    return System(1000.0, parts, np.ones(drops.shape))


def points(table, drops, kind="psc", ratio=1.0, exponents=None):
    members = len(drops)
    found = house({"equipment.blower_kind": kind}, members - 1)
    system = path(drops, exponents)
    return system, delivered_by_table(
        found, BlowerSetting(table), system, COOL, np.full(members, ratio)
    )


@settings(max_examples=60, deadline=None)
@given(
    st.lists(st.floats(0.02, 2.5), min_size=2, max_size=12),
    st.sampled_from([TABLE, FLAT]),
)
def test_every_member_meets_the_physics_own_answer(drops, table) -> None:
    _, found = points(table, drops)
    for member, drop in enumerate(drops):
        one = OneSystem(
            np.array(
                [
                    coefficient_at(drop * 0.6, 1000.0, 1.9),
                    coefficient_at(drop * 0.4, 1000.0, 1.9 * 0.75),
                ]
            ),
            np.array([1.9, 1.9 * 0.75]),
        )
        expected = operating_point(table, one)
        assert found.airflow_cfm[member] == pytest.approx(expected.airflow_cfm, rel=1e-7)
        taken = [system_static_inwc(one, table.airflow_cfm[end]) for end in (0, -1)]
        if not np.isclose(taken, [table.static_inwc[0], table.static_inwc[-1]], rtol=1e-9).any():
            assert found.place[member] == int(expected.place)


def test_a_path_that_takes_just_the_last_rows_static_is_still_inside() -> None:
    _, found = points(FLAT, [0.9, 0.9])
    assert list(found.place) == [TablePlace.WITHIN, TablePlace.WITHIN]


def test_path_and_blower_agree_on_the_static_where_they_meet() -> None:
    system, found = points(TABLE, [0.3, 0.5, 0.8])
    taken = system.external_inwc(found.airflow_cfm, COOL)
    given_ = [TABLE.static_at(q).static_inwc for q in found.airflow_cfm]
    assert taken == pytest.approx(given_, abs=1e-8)
    assert found.static_inwc == pytest.approx(taken)


def test_beyond_the_last_row_is_at_most_and_below_the_first_at_least() -> None:
    _, found = points(TABLE, [0.01, 3.0])
    assert list(found.place) == [TablePlace.BELOW_FIRST_ROW, TablePlace.BEYOND_LAST_ROW]
    assert list(found.airflow_cfm) == [1300.0, 820.0]
    assert list(found.is_at_least) == [True, False]
    assert list(found.is_beyond) == [False, True]


def test_a_fixed_speed_blower_loses_static_with_density_and_a_held_one_does_not() -> None:
    # path 0.4 at 1,180 in thin air is 0.4 / 0.8 = 0.5 in the table's air
    _, thin = points(TABLE, [0.5, 0.5], ratio=0.8)
    _, like = points(TABLE, [0.625, 0.625], ratio=1.0)
    assert thin.airflow_cfm == pytest.approx(like.airflow_cfm)
    _, held = points(TABLE, [0.5, 0.5], kind="ecm_variable", ratio=0.8)
    _, plain = points(TABLE, [0.5, 0.5], ratio=1.0)
    assert held.airflow_cfm == pytest.approx(plain.airflow_cfm)


def by_kind(drops, **facts):
    found = house({k.replace("__", "."): v for k, v in facts.items()}, len(drops) - 1)
    return delivered_by_kind(found, path(drops), COOL, found.full(1000.0), np.ones(len(drops)))


def test_without_a_table_a_held_airflow_is_the_target_up_to_its_stated_limit() -> None:
    found = by_kind(
        [0.3, 0.8, 0.9],
        equipment__blower_kind="ecm_variable",
        equipment__max_static_inwc=0.8,
    )
    assert found.airflow_cfm[:2] == pytest.approx([1000.0, 1000.0])
    assert found.airflow_cfm[2] < 1000.0
    # at the limit, path 0.9 (Q / 1,000)^n = 0.8
    assert found.static_inwc[2] <= 0.8
    assert found.static_inwc[2] == pytest.approx(0.8, abs=2e-3)
    assert not found.by_table


def test_without_a_table_kinds_of_motor_fall_as_they_do() -> None:
    at = {
        kind: by_kind(
            [0.9, 0.9], equipment__blower_kind=kind, equipment__rated_static_inwc=0.5
        ).airflow_cfm[0]
        for kind in ("psc", "ecm_constant_torque", "ecm_variable")
    }
    assert at["psc"] < at["ecm_constant_torque"] < at["ecm_variable"] + 60.0
    assert at["psc"] < 1000.0
