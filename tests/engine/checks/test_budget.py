"""What each part takes of the static pressure, electric heat kits, and duct board."""

import pytest
from support.houses import cooling, facts, finding, verdict

from engine.checks.budget import usual_shares
from engine.job.modes import Mode
from engine.trade.exponents import PressurePart
from engine.trade.limits import LIMITS
from engine.verdict import FindingStatus

READING = {
    "mode": "cooling_high",
    "airflow_cfm": 1000,
    "airflow_source": "flow_plate",
    "before_filter_inwc": -0.10,
    "after_filter_inwc": -0.40,
    "before_coil_inwc": 0.40,
    "after_coil_inwc": 0.16,
}


def read(**changed):
    told = {key: value for key, value in {**READING, **changed}.items() if value is not None}
    return finding(
        cooling(facts(readings=[told], old__rated_static_inwc=0.5, filters=FILTERS)),
        "reading_total",
    )


FILTERS = [{"width_in": 25, "height_in": 20, "depth_in": 1, "place": "cabinet"}]


# By hand: 0.40 pulled and 0.40 pushed make 0.80; before the filter 0.10 (12.5 %), the filter
# 0.40 - 0.10 = 0.30 (37.5 %), the coil 0.40 - 0.16 = 0.24 (30 %), the supply 0.16 (20 %).
def test_the_parts_of_a_reading_take_what_the_taps_say() -> None:
    found = read()
    assert found.figure == pytest.approx(0.80)
    told = {one.part: (one.inwc, one.share) for one in found.shares}
    assert list(told) == ["return", "filter", "coil", "supply"]
    assert told["return"] == pytest.approx((0.10, 0.125))
    assert told["filter"] == pytest.approx((0.30, 0.375))
    assert told["coil"] == pytest.approx((0.24, 0.30))
    assert told["supply"] == pytest.approx((0.16, 0.20))


def test_only_what_is_above_its_usual_share_is_named() -> None:
    found = read()
    assert found.because == ("filter",)
    assert "the filter takes 0.30 in., 38 % (20 % is usual)" in found.note
    within = read(after_filter_inwc=-0.15, before_coil_inwc=0.30, after_coil_inwc=0.10)
    assert within.status is FindingStatus.FINE
    assert within.because == ()


def test_drops_read_across_a_piece_serve_as_the_two_taps_do() -> None:
    across = read(
        before_filter_inwc=None, filter_drop_inwc=0.30, after_coil_inwc=None, coil_drop_inwc=0.24
    )
    assert [(one.part, pytest.approx(one.inwc)) for one in across.shares] == [
        (one.part, one.inwc) for one in read().shares
    ]


def test_two_taps_alone_tell_no_shares() -> None:
    assert read(before_filter_inwc=None, after_coil_inwc=None).shares == ()


def test_a_predicted_static_is_shared_out_whole() -> None:
    found = finding(cooling(facts()), "external_static")
    assert sum(one.inwc for one in found.shares) == pytest.approx(found.figure, rel=1e-6)
    assert sum(one.share for one in found.shares) == pytest.approx(1.0)


def test_usual_shares_of_the_four_parts_are_the_whole_rating() -> None:
    usual = usual_shares(LIMITS)
    assert sum(usual.values()) - usual[PressurePart.STRIP_HEAT] == pytest.approx(1.0)


HANDLER = {
    "equipment__kind": "air_handler",
    "equipment__heating_input_btuh": None,
    "equipment__heating_efficiency_fraction": None,
    "equipment__rise_low_degf": None,
    "equipment__rise_high_degf": None,
    "equipment__coil_outside_rating": False,
    "equipment__blower_tables": [
        {"setting": "A", "rows": [{"static_inwc": 0.05, "airflow_cfm": 1000},
                                  {"static_inwc": 1.0, "airflow_cfm": 1000}]}
    ],
}  # fmt: skip


# The blower holds 1,000 CFM, so the kit adds its own figure at 1,000 CFM and nothing else.
@pytest.mark.parametrize(("outside", "adds"), [(True, 0.08), (False, 0.0)])
def test_an_electric_heat_kit_is_in_the_way_unless_the_table_includes_it(outside, adds) -> None:
    without = finding(cooling(facts(**HANDLER)), "external_static").figure
    kit = facts(
        **HANDLER,
        equipment__strip_kw=10,
        target__strip_heat_cfm=1000,
        equipment__strip_outside_rating=outside,
        new__strip_drop_inwc=0.08,
    )
    for mode in (Mode.COOLING_HIGH, Mode.STRIP_HEAT):
        found = finding(verdict(kit).modes[mode], "external_static")
        if mode is Mode.COOLING_HIGH:
            assert found.figure - without == pytest.approx(adds, rel=2e-3, abs=1e-6)
        assert ("strips 0.08" in found.formula) == outside


def test_a_kit_nobody_has_a_figure_for_takes_the_usual_allowance() -> None:
    # 0.05 to 0.10 in. w.c. (memory, medium)
    found = finding(
        cooling(facts(**HANDLER, equipment__strip_kw=10, equipment__strip_outside_rating=True)),
        "external_static",
    )
    kit = next(one for one in found.shares if one.part == "strips")
    assert 0.05 <= kit.inwc <= 0.10


def test_a_kit_leaves_less_for_the_ducts() -> None:
    told = facts(**HANDLER, equipment__strip_kw=10, equipment__strip_outside_rating=True,
                 new__strip_drop_inwc=0.08)  # fmt: skip
    assert "strips 0.08" in finding(cooling(told), "friction_rate").formula


# Fibrous glass duct board's usual class is 0.5 in. w.c. (memory).
def test_board_in_more_than_its_class_is_a_note() -> None:
    board = [{"width_in": 14, "height_in": 8, "material": "duct_board"}]
    narrow = [{"diameter_in": 5, "count": 6, "length_ft": 25, "material": "galvanized"}]
    strained = finding(
        cooling(facts(supply__trunks=board, supply__branches=narrow)), "external_static"
    )
    assert "is duct board" in strained.note
    easy = finding(
        cooling(facts(supply__trunks=[{**board[0], "width_in": 24, "height_in": 10}])),
        "external_static",
    )
    metal = [{**board[0], "material": "galvanized"}]
    bare = finding(cooling(facts(supply__trunks=metal, supply__branches=narrow)), "external_static")
    assert "duct board" not in easy.note + bare.note
