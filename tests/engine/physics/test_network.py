import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import root

from engine.errors import FactError, OutOfRangeError
from engine.physics import network
from engine.physics.branching import counted_branches, trunk_with_branches
from engine.physics.friction import friction_inwc_per_100ft
from engine.physics.network import (
    Network,
    Section,
    UnsettledError,
    shortfall,
    split_airflow,
    split_at_pressure,
)


def _branch(
    name: str, parent: int | None = None, diameter_in: float = 6.0, length_ft: float = 60.0
) -> Section:
    return Section(
        name,
        parent,
        area_ft2=math.pi * diameter_in**2 / 576.0,
        equivalent_diameter_in=diameter_in,
        length_ft=length_ft,
        drop_inwc=0.03,
    )


def _random_tree(rng: np.random.Generator) -> tuple[Section, ...]:
    sections = []
    for index in range(int(rng.integers(2, 14))):
        parent = None if index == 0 or rng.random() < 0.2 else int(rng.integers(0, index))
        diameter = float(rng.uniform(4.0, 16.0))
        sections.append(
            Section(
                f"section {index}",
                parent,
                area_ft2=math.pi * diameter**2 / 576.0 * float(rng.uniform(0.9, 1.3)),
                equivalent_diameter_in=diameter,
                length_ft=float(rng.uniform(1.0, 60.0)),
                roughness_ft=float(10 ** rng.uniform(-4.0, -2.0)),
                slack_factor=float(rng.uniform(1.0, 6.0)),
                coefficient=float(rng.uniform(0.0, 4.0)),
                fittings_ft=float(rng.uniform(0.0, 150.0)),
                drop_inwc=float(rng.uniform(0.0, 0.1)),
                drop_at_cfm=float(rng.uniform(50.0, 400.0)),
                drop_exponent=float(rng.uniform(1.3, 2.0)),
                count=float(rng.integers(1, 4)),
            )
        )
    return tuple(sections)


def _loss(section: Section, flow: float) -> float:
    """The loss of one section, put together here apart from the solver."""
    each = flow / section.count
    per_100 = friction_inwc_per_100ft(each, section.equivalent_diameter_in, section.roughness_ft)
    pressure = 0.075 * (each / section.area_ft2 / 1096.7) ** 2
    return float(
        per_100 * (section.length_ft * section.slack_factor + section.fittings_ft) / 100.0
        + section.coefficient * pressure
        + section.drop_inwc * (each / section.drop_at_cfm) ** section.drop_exponent
    )


@pytest.mark.parametrize("seed", range(25))
def test_random_networks_are_split_as_a_root_finder_splits_them(seed: int) -> None:
    rng = np.random.default_rng(seed)
    sections = _random_tree(rng)
    network, airflow = Network.of(sections), float(rng.uniform(200.0, 2000.0))
    ours = split_airflow(network, airflow)
    outlets = network.outlets

    def paths(unknown: np.ndarray) -> list[float]:
        plenum, shares = unknown[0], unknown[1:]
        flow = np.zeros(len(sections))
        flow[list(outlets)] = airflow * np.abs(shares)
        for index in reversed(range(len(sections))):
            parent = sections[index].parent
            if parent is not None:
                flow[parent] += flow[index]
        misses = [float(np.sum(np.abs(shares)) - 1.0)]
        for outlet in outlets:
            along, at = 0.0, outlet
            while at is not None:
                along += _loss(sections[at], flow[at])
                at = sections[at].parent
            misses.append(along / plenum - 1.0)
        return misses

    start = np.concatenate([[ours.plenum_inwc * 1.1], np.full(len(outlets), 1.0 / len(outlets))])
    start[1:] = 0.7 * ours.outlet_cfm / airflow + 0.3 * start[1:]
    found = root(paths, start, tol=1e-13)
    assert np.max(np.abs(paths(found.x))) < 1e-9
    assert ours.plenum_inwc == pytest.approx(found.x[0], rel=1e-7)
    assert ours.outlet_cfm == pytest.approx(airflow * np.abs(found.x[1:]), rel=1e-6)
    assert np.sum(ours.outlet_cfm) == pytest.approx(airflow, rel=1e-14)


@pytest.mark.parametrize("seed", range(8))
def test_every_path_takes_the_plenums_pressure(seed: int) -> None:
    sections = _random_tree(np.random.default_rng(100 + seed))
    network = Network.of(sections)
    split = split_airflow(network, 900.0)
    for outlet in network.outlets:
        along, at = 0.0, outlet
        while at is not None:
            along += _loss(sections[at], split.section_cfm[at])
            at = sections[at].parent
        assert along == pytest.approx(split.plenum_inwc, rel=1e-9)


@given(st.integers(0, 10**6), st.floats(100.0, 3000.0))
@settings(max_examples=40, deadline=None)
def test_pressure_drives_the_airflow_that_took_it(seed: int, airflow_cfm: float) -> None:
    network = Network.of(_random_tree(np.random.default_rng(seed)))
    split = split_airflow(network, airflow_cfm)
    if not 1e-5 <= split.plenum_inwc <= 20.0:
        return
    back = split_at_pressure(network, split.plenum_inwc)
    assert back.airflow_cfm == pytest.approx(airflow_cfm, rel=1e-9)
    assert back.outlet_cfm == pytest.approx(split.outlet_cfm, rel=1e-8)


@given(st.integers(0, 10**6), st.floats(100.0, 2000.0), st.floats(1.0, 2.0))
@settings(max_examples=40, deadline=None)
def test_more_air_takes_more_pressure_with_the_exponent_told(
    seed: int, airflow_cfm: float, factor: float
) -> None:
    network = Network.of(_random_tree(np.random.default_rng(seed)))
    split = split_airflow(network, airflow_cfm)
    assert split_airflow(network, airflow_cfm * factor).plenum_inwc >= split.plenum_inwc
    near = split_airflow(network, airflow_cfm * 1.0001)
    measured = math.log(near.plenum_inwc / split.plenum_inwc) / math.log(1.0001)
    assert split.exponent == pytest.approx(measured, abs=0.02)


@given(st.integers(0, 10**6), st.floats(100.0, 2000.0), st.floats(4.0, 12.0), st.data())
@settings(max_examples=40, deadline=None)
def test_opening_another_branch_never_raises_the_plenum(
    seed: int, airflow_cfm: float, diameter_in: float, data: st.DataObject
) -> None:
    sections = _random_tree(np.random.default_rng(seed))
    parents = [i for i in range(len(sections)) if any(s.parent == i for s in sections)]
    parent = data.draw(st.sampled_from([None, *parents]))
    before = split_airflow(Network.of(sections), airflow_cfm).plenum_inwc
    opened = (*sections, _branch("opened", parent, diameter_in))
    assert split_airflow(Network.of(opened), airflow_cfm).plenum_inwc <= before * (1.0 + 1e-9)


@given(st.integers(0, 10**6), st.floats(1.0, 1.6), st.data())
@settings(max_examples=40, deadline=None)
def test_a_larger_or_smoother_section_never_raises_the_plenum(
    seed: int, factor: float, data: st.DataObject
) -> None:
    sections = list(_random_tree(np.random.default_rng(seed)))
    before = split_airflow(Network.of(sections), 900.0).plenum_inwc
    index = data.draw(st.integers(0, len(sections) - 1))
    old = sections[index]
    fields = {name: getattr(old, name) for name in old.__slots__}
    fields["equivalent_diameter_in"] *= factor
    fields["area_ft2"] *= factor**2
    fields["roughness_ft"] /= factor
    sections[index] = Section(**fields)
    assert split_airflow(Network.of(sections), 900.0).plenum_inwc <= before * (1.0 + 1e-9)


@pytest.mark.parametrize("seed", range(6))
def test_sharing_alone_comes_to_the_same_split(seed: int, monkeypatch: pytest.MonkeyPatch) -> None:
    # the slower way that is kept for networks on which Newton's steps don't settle
    tree = Network.of(_random_tree(np.random.default_rng(200 + seed)))
    newton = split_at_pressure(tree, 0.5)
    monkeypatch.setattr(network, "_MOST_NEWTON", 0)
    driven = split_at_pressure(tree, 0.5)
    assert driven.airflow_cfm == pytest.approx(newton.airflow_cfm, rel=1e-7)
    shared = split_airflow(tree, newton.airflow_cfm)
    assert shared.outlet_cfm == pytest.approx(newton.outlet_cfm, rel=1e-7)
    assert shared.plenum_inwc == pytest.approx(0.5, rel=1e-7)


def test_a_split_that_does_not_settle_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(network, "_MOST_NEWTON", 0)
    monkeypatch.setattr(network, "_MOST_SHARING", 1)
    tree = Network.of([_branch("a"), _branch("b", None, 8.0, 10.0)])
    with pytest.raises(UnsettledError, match="still moves"):
        split_airflow(tree, 900.0)


def test_equal_branches_get_equal_air() -> None:
    split = split_airflow(Network.of([_branch(f"b{i}") for i in range(5)]), 500.0)
    assert split.outlet_cfm == pytest.approx(np.full(5, 100.0), rel=1e-12)
    assert split.plenum_inwc == pytest.approx(_loss(_branch("b"), 100.0), rel=1e-12)


def test_parallel_ducts_are_one_section_with_a_count() -> None:
    apart = split_airflow(Network.of([_branch(f"b{i}") for i in range(4)]), 400.0)
    fields = {name: getattr(_branch("b"), name) for name in Section.__slots__} | {"count": 4.0}
    together = split_airflow(Network.of([Section(**fields)]), 400.0)
    assert together.plenum_inwc == pytest.approx(apart.plenum_inwc, rel=1e-12)


def test_two_trunks_carry_half_at_about_a_quarter_of_the_pressure() -> None:
    one = Section("trunk", None, 1.0, 12.86, length_ft=40.0)
    fields = {name: getattr(one, name) for name in Section.__slots__} | {"count": 2.0}
    single = split_airflow(Network.of([one]), 1050.0).plenum_inwc
    double = split_airflow(Network.of([Section(**fields)]), 1050.0).plenum_inwc
    assert 0.25 < double / single < 0.30


def test_padding_changes_nothing() -> None:
    rng = np.random.default_rng(11)
    live = rng.integers(1, 6, 50)
    present = [(live > i).astype(float) for i in range(6)]
    trunk = Section("trunk", None, 1.0, 12.9, length_ft=30.0, fittings_ft=25.0)
    branches = []
    for index in range(6):
        fields = {name: getattr(_branch(f"b{index}"), name) for name in Section.__slots__}
        branches.append(Section(**fields | {"present": present[index]}))
    padded = split_airflow(Network.of(trunk_with_branches([trunk], branches)), 600.0)
    for sample in range(0, 50, 9):
        count = int(live[sample])
        plain = trunk_with_branches([trunk], [_branch(f"b{i}") for i in range(count)])
        alone = split_airflow(Network.of(plain), 600.0)
        assert padded.plenum_inwc[sample] == pytest.approx(alone.plenum_inwc, rel=1e-10)
        assert padded.outlet_cfm[sample, :count] == pytest.approx(alone.outlet_cfm, rel=1e-9)
        assert np.all(padded.outlet_cfm[sample, count:] == 0.0)


def test_values_of_padding_are_never_looked_at() -> None:
    present = np.array([1.0, 0.0])
    spoilt = Section(
        "perhaps", None, np.array([0.2, np.nan]), np.array([6.0, 0.0]), 30.0, present=present
    )
    split = split_airflow(Network.of([_branch("sure"), spoilt]), 200.0)
    assert split.outlet_cfm[1] == pytest.approx([200.0, 0.0])


def test_samples_are_split_as_each_alone() -> None:
    rng = np.random.default_rng(2)
    length, airflow = rng.uniform(10.0, 80.0, 30), rng.uniform(300.0, 900.0, 30)
    density, viscosity = rng.uniform(0.055, 0.08, 30), rng.uniform(1.5e-4, 2.3e-4, 30)

    def network(feet: float | np.ndarray) -> Network:
        return Network.of([_branch("a"), _branch("b", None, 7.0, feet), _branch("c", None, 8.0)])

    whole = split_airflow(network(length), airflow, density, viscosity)
    assert whole.outlet_cfm.shape == (30, 3)
    for i in range(30):
        alone = split_airflow(network(length[i]), airflow[i], density[i], viscosity[i])
        assert whole.outlet_cfm[i] == pytest.approx(alone.outlet_cfm, rel=1e-10)
        assert whole.plenum_inwc[i] == pytest.approx(alone.plenum_inwc, rel=1e-10)
        assert isinstance(alone.plenum_inwc, float)


def test_the_far_room_starves_and_is_named() -> None:
    trunk = [Section("trunk", None, 0.8, 11.0, length_ft=60.0)]
    rooms = [_branch("near"), _branch("middle"), _branch("far", None, 5.0, 120.0)]
    network = Network.of(trunk_with_branches(trunk, rooms))
    split = split_airflow(network, 300.0)
    short = shortfall(split, np.full(3, 100.0))
    assert network.outlet_names()[int(short.outlet)] == "far"
    assert short.short_cfm == pytest.approx(100.0 - split.outlet_cfm[2])
    assert short.delivered_share == pytest.approx(split.outlet_cfm[2] / 100.0)
    many = split_airflow(network, np.array([200.0, 300.0]))
    assert shortfall(many, np.full(3, 100.0)).outlet.tolist() == [2, 2]


def test_a_trunk_piece_carries_what_is_left() -> None:
    trunk = [Section("trunk", None, 1.0, 13.0, length_ft=36.0)]
    sections = trunk_with_branches(trunk, [_branch(f"b{i}") for i in range(6)])
    split = split_airflow(Network.of(sections), 600.0)
    pieces = split.section_cfm[0::2]
    assert pieces[0] == pytest.approx(600.0)
    assert np.all(np.diff(pieces) < 0.0)
    assert sum(s.length_ft for s in sections[0::2]) == pytest.approx(36.0)


def test_a_reducing_trunk_spreads_its_branches() -> None:
    trunk = [
        Section("wide", None, 1.2, 14.0, length_ft=20.0, fittings_ft=25.0),
        Section("narrow", None, 0.6, 10.0, length_ft=20.0, fittings_ft=10.0),
    ]
    sections = trunk_with_branches(trunk, [_branch(f"b{i}") for i in range(5)], takeoffs=(2, 3))
    names = [s.name for s in sections]
    assert names[:3] == ["wide", "b0", "wide, after takeoff 1"]
    assert [s.fittings_ft for s in sections if "takeoff" in s.name] == [0.0] * 3
    split = split_airflow(Network.of(sections), 500.0)
    assert np.sum(split.outlet_cfm) == pytest.approx(500.0)


def test_counts_and_sizes_alone_give_a_network() -> None:
    count = np.array([6.0, 9.5, 14.0])
    trunk = Section("trunk", None, 1.11, 13.5, length_ft=35.0, fittings_ft=40.0)
    network = Network.of(counted_branches(trunk, _branch("branch"), count))
    split = split_airflow(network, 1000.0)
    assert np.all(np.diff(split.plenum_inwc) < 0.0)  # more branches, less pressure
    exact = trunk_with_branches([trunk], [_branch(f"b{i}") for i in range(14)])
    each = split_airflow(Network.of(exact), 1000.0)
    assert split.plenum_inwc[2] == pytest.approx(each.plenum_inwc, rel=0.05)


def test_the_worst_run_at_its_share_overstates_the_plenum() -> None:
    lengths = np.linspace(60.0, 250.0, 10)
    branches = [_branch(f"b{i}", None, 6.0, feet) for i, feet in enumerate(lengths)]
    split = split_airflow(Network.of(branches), 1000.0)
    assert _loss(branches[-1], 100.0) > 1.3 * split.plenum_inwc


@given(
    st.floats(3.0, 20.0),
    st.floats(3.0, 20.0),
    st.floats(0.0, 150.0),
    st.floats(0.0, 600.0),
    st.floats(1.0, 30.0),
    st.floats(1.0, 35.0),
    st.floats(50.0, 4000.0),
)
@settings(deadline=None)
def test_any_believable_network_settles_to_something_finite(
    trunk_in: float,
    branch_in: float,
    trunk_ft: float,
    branch_ft: float,
    slack: float,
    count: float,
    airflow_cfm: float,
) -> None:
    trunk = Section("trunk", None, math.pi * trunk_in**2 / 576.0, trunk_in, trunk_ft)
    branch = Section(
        "branch",
        None,
        math.pi * branch_in**2 / 576.0,
        branch_in,
        branch_ft,
        3e-3,
        slack_factor=slack,
        drop_inwc=0.03,
    )
    split = split_airflow(Network.of(counted_branches(trunk, branch, count)), airflow_cfm)
    assert math.isfinite(split.plenum_inwc)
    assert split.plenum_inwc > 0.0
    assert np.all(np.isfinite(split.section_cfm))
    assert np.all(split.outlet_cfm >= 0.0)
    assert 1.0 <= split.exponent <= 3.2


@pytest.mark.parametrize(
    ("sections", "words"),
    [
        ([], "at least one section"),
        ([_branch("a", 0)], "listed before"),
        ([_branch("a", 3), _branch("b")], "listed before"),
        ([Section("bare", None, 0.2, 6.0)], "give it at least one"),
        ([Section("gone", None, 0.2, 6.0, 10.0, present=0.0)], "at least one outlet"),
        (
            [
                Section("a", None, 0.2, 6.0, np.ones(3)),
                Section("b", None, 0.2, 6.0, np.ones(4)),
            ],
            "samples where others have",
        ),
    ],
)
def test_trees_that_cannot_be_are_refused_in_words(sections: list[Section], words: str) -> None:
    with pytest.raises(FactError, match=words):
        Network.of(sections)


@pytest.mark.parametrize(
    ("call", "name"),
    [
        (lambda: Network.of([Section("a", None, -1.0, 6.0, 9.0)]), "area_ft2"),
        (lambda: Network.of([Section("a", None, 0.2, 6.0, math.nan)]), "length_ft"),
        (lambda: Network.of([Section("a", None, 0.2, 6.0, 9.0, count=0.0)]), "count"),
        (lambda: Network.of([Section("a", None, 0.2, 6.0, 9.0, present=math.nan)]), "present"),
        (lambda: split_airflow(Network.of([_branch("a")]), 0.0), "airflow_cfm"),
        (lambda: split_airflow(Network.of([_branch("a")]), math.nan), "airflow_cfm"),
        (lambda: split_at_pressure(Network.of([_branch("a")]), -0.1), "plenum_inwc"),
        (lambda: split_airflow(Network.of([_branch("a")]), 100.0, 1.2), "density_lb_ft3"),
    ],
)
def test_the_impossible_is_refused_by_name(call: object, name: str) -> None:
    with pytest.raises(OutOfRangeError, match=name):
        call()  # type: ignore[operator]


@pytest.mark.parametrize("takeoffs", [(1,), (1, 1), (4, -1), (3, 0)])
def test_takeoffs_that_do_not_fit_are_refused(takeoffs: tuple[int, ...]) -> None:
    trunk = [Section("t1", None, 1.0, 13.0, 9.0), Section("t2", None, 1.0, 13.0, 9.0)]
    with pytest.raises(FactError, match="takeoffs"):
        trunk_with_branches(trunk, [_branch(f"b{i}") for i in range(3)], takeoffs)
