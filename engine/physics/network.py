"""How air splits: trees of duct sections that hang on one plenum.

Branches share the plenum's pressure; sections in a row add their losses. The same tree read
backwards is a return: room air comes in at the outlets and is drawn to the plenum, and every
pressure is a suction of the same size. Knows nothing of blowers, equipment or jobs.

Axes: n samples, sections in the order given, outlets (sections that nothing hangs on) in the same
order. Arrays inside are (sections, n), outside (n, sections).
"""

from typing import Final, NamedTuple

import numpy as np
from numpy.typing import NDArray

from engine.arrays import Array, Floats, require_within
from engine.errors import EngineError
from engine.physics.air import STANDARD_DENSITY_LB_FT3, STANDARD_VISCOSITY_FT2_S
from engine.physics.friction import friction_and_exponent
from engine.physics.sections import Network, Section

__all__ = [
    "Network",
    "Section",
    "Shortfall",
    "Split",
    "UnsettledError",
    "shortfall",
    "split_airflow",
    "split_at_pressure",
]

_FPM_PER_ROOT_INWC: Final = 1096.7
_TINY_CFM: Final = 1e-6
_START_EXPONENT: Final = 1.9
_MOST_CFM: Final = 19999.0
_SETTLED_NEWTON: Final = 1e-7  # the step is quadratic: what is left is its square
_SETTLED_SHARING: Final = 1e-10  # the step is linear, losing at least half of the error
_MOST_NEWTON: Final = 25
_MOST_SHARING: Final = 400


class UnsettledError(EngineError):
    """The split did not settle: a network outside anything that was thought of."""


class Split(NamedTuple):
    """How air goes through a network.

    Attributes:
        airflow_cfm: All of it, scalar or (n,).
        plenum_inwc: Pressure of the plenum against the rooms (suction of a return), same shape.
        section_cfm: (sections,) or (n, sections); all ducts of a section together.
        section_loss_inwc: Pressure each section takes, same shape.
        outlet_cfm: (outlets,) or (n, outlets).
        exponent: Power of all the airflow with which plenum_inwc grows just here, as airflow_cfm.
    """

    airflow_cfm: Floats
    plenum_inwc: Floats
    section_cfm: Array
    section_loss_inwc: Array
    outlet_cfm: Array
    exponent: Floats


class Shortfall(NamedTuple):
    """The outlet that falls furthest short of what it should get.

    Attributes:
        outlet: Its place among the outlets, scalar or (n,).
        short_cfm: By how much, CFM; 0 or less where none is short.
        delivered_share: Delivered over wanted there.
    """

    outlet: NDArray[np.intp]
    short_cfm: Floats
    delivered_share: Floats


def split_airflow(
    network: Network,
    airflow_cfm: Floats,
    density_lb_ft3: Floats = STANDARD_DENSITY_LB_FT3,
    viscosity_ft2_s: Floats = STANDARD_VISCOSITY_FT2_S,
) -> Split:
    """Split a known airflow, and the plenum pressure that it takes.

    Args:
        network: The tree.
        airflow_cfm: All the air, 1 to 20,000 CFM; scalar or (n,).
        density_lb_ft3: Air density, 0.02 to 0.12 lb/ft3; scalar or (n,).
        viscosity_ft2_s: Kinematic viscosity, 5e-5 to 1e-3 ft2/s; scalar or (n,).

    Returns:
        See `Split`; outlets add up to the airflow to rounding.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN.
        UnsettledError: No split was found, which no believable network does.

    Source: Darcy and Colebrook at the working flow, C x VP on the real area, drops by their power;
    Newton's method on the whole tree, whose linear step is solved exactly from the outlets up.
    """
    require_within("airflow_cfm", airflow_cfm, 1.0, 20000.0)
    return _split(network, airflow_cfm, None, density_lb_ft3, viscosity_ft2_s)


def split_at_pressure(
    network: Network,
    plenum_inwc: Floats,
    density_lb_ft3: Floats = STANDARD_DENSITY_LB_FT3,
    viscosity_ft2_s: Floats = STANDARD_VISCOSITY_FT2_S,
) -> Split:
    """The airflow that a plenum pressure drives, and how it splits.

    Args:
        network: The tree.
        plenum_inwc: Pressure against the rooms, 1e-5 to 20 in wc; scalar or (n,).
        density_lb_ft3: Air density, 0.02 to 0.12 lb/ft3; scalar or (n,).
        viscosity_ft2_s: Kinematic viscosity, 5e-5 to 1e-3 ft2/s; scalar or (n,).

    Returns:
        See `Split`.

    Raises:
        OutOfRangeError: A value is outside these limits, or NaN; or the airflow would be past
            20,000 CFM a duct.
        UnsettledError: No split was found, which no believable network does.
    """
    require_within("plenum_inwc", plenum_inwc, 1e-5, 20.0)
    return _split(network, None, plenum_inwc, density_lb_ft3, viscosity_ft2_s)


def shortfall(split: Split, wanted_cfm: Array) -> Shortfall:
    """Which outlet starves, and by how much.

    Args:
        split: How the air goes.
        wanted_cfm: What each outlet should get, (outlets,) or (n, outlets), 0 or more; 0 for
            outlets that are padding.

    Returns:
        The outlet with the largest shortfall in CFM.

    Raises:
        OutOfRangeError: A wanted airflow below 0, above 20,000 CFM, or NaN.
    """
    require_within("wanted_cfm", wanted_cfm, 0.0, 20000.0)
    wanted = np.broadcast_to(
        wanted_cfm, np.broadcast_shapes(wanted_cfm.shape, split.outlet_cfm.shape)
    )
    delivered = np.broadcast_to(split.outlet_cfm, wanted.shape)
    worst = np.asarray(np.argmax(wanted - delivered, axis=-1))
    here = worst[..., np.newaxis]
    wanted_here = np.take_along_axis(wanted, here, -1)[..., 0]
    delivered_here = np.take_along_axis(delivered, here, -1)[..., 0]
    short = wanted_here - delivered_here
    share = delivered_here / np.maximum(wanted_here, _TINY_CFM)
    if worst.ndim == 0:
        return Shortfall(worst, float(short), float(share))
    return Shortfall(worst, short, share)


class _Air(NamedTuple):
    density: Array
    viscosity: Array


def _split(
    network: Network,
    airflow_cfm: Floats | None,
    plenum_inwc: Floats | None,
    density_lb_ft3: Floats,
    viscosity_ft2_s: Floats,
) -> Split:
    require_within("density_lb_ft3", density_lb_ft3, 0.02, 0.12)
    require_within("viscosity_ft2_s", viscosity_ft2_s, 5e-5, 1e-3)
    given = airflow_cfm if airflow_cfm is not None else plenum_inwc
    assert given is not None  # one of the two is always given, by the two callers above
    shape = np.broadcast_shapes(
        np.shape(given),
        np.shape(density_lb_ft3),
        np.shape(viscosity_ft2_s),
        (network.samples,) if network.samples else (),
    )
    n = shape[0] if shape else 1
    air = _Air(
        np.broadcast_to(np.asarray(density_lb_ft3, dtype=np.float64), n),
        np.broadcast_to(np.asarray(viscosity_ft2_s, dtype=np.float64), n),
    )
    drive = np.broadcast_to(np.asarray(given, dtype=np.float64), n)
    tree = _Tree(network, n, air, drive, by_airflow=airflow_cfm is not None)
    flow = tree.settled()
    return tree.told(flow, single=not shape)


class _Tree:
    """One problem: a network, its air, and what drives it; arrays are (sections, n)."""

    def __init__(
        self, network: Network, n: int, air: _Air, drive: Array, *, by_airflow: bool
    ) -> None:
        self.network, self.n, self.air = network, n, air
        self.drive, self.by_airflow = drive, by_airflow
        count = len(network.sections)
        self.fig = {k: np.broadcast_to(v, (count, n)) for k, v in network.figures.items()}
        self.tops = [i for i, s in enumerate(network.sections) if s.parent is None]
        self.length = self.fig["length_ft"] * self.fig["slack_factor"] + self.fig["fittings_ft"]
        self.per_vp = (
            self.fig["coefficient"]
            * air.density
            / (self.fig["count"] * self.fig["area_ft2"] * _FPM_PER_ROOT_INWC) ** 2
        )
        self.drop = self.fig["drop_inwc"] * (air.density / STANDARD_DENSITY_LB_FT3)
        self.drop_at = self.fig["drop_at_cfm"] * self.fig["count"]
        self.squares = bool(np.all(self.fig["drop_exponent"] == 2.0))

    def losses(self, flow: Array) -> tuple[Array, Array]:
        """Pressure each section takes at a flow above 0, and its slope."""
        straight, exponent = friction_and_exponent(
            flow / self.fig["count"],
            self.fig["equivalent_diameter_in"],
            self.fig["roughness_ft"],
            self.air.density,
            self.air.viscosity,
        )
        straight = straight * self.length / 100.0
        local = self.per_vp * flow**2
        over = flow / self.drop_at
        end = self.drop * (over**2 if self.squares else over ** self.fig["drop_exponent"])
        slope = exponent * straight + 2.0 * local + self.fig["drop_exponent"] * end
        return straight + local + end, slope / flow

    def settled(self) -> Array:
        """Flows at which every outlet sees the same plenum, by Newton, else by sharing."""
        flow = self._shared(self._first_guess())
        for _ in range(_MOST_NEWTON):
            after = self._newton(flow)
            moved = self._moved(flow, after)
            if moved < _SETTLED_NEWTON:
                return after
            flow = self._bounded(np.maximum(after, 0.1 * flow))
        for _ in range(_MOST_SHARING):
            after = self._bounded(self._shared(flow))
            moved = self._moved(flow, after)
            flow = after
            if moved < _SETTLED_SHARING:
                return flow
        raise UnsettledError(f"the split still moves by {moved:g} of the airflow")

    def _moved(self, flow: Array, after: Array) -> float:
        """Largest change of any section's flow, as a share of all the air."""
        whole = np.maximum(np.abs(sum(after[i] for i in self.tops)), _TINY_CFM)
        return float(np.max(np.abs(after - flow) / whole))

    def _bounded(self, flow: Array) -> Array:
        return np.minimum(np.maximum(flow, _TINY_CFM), _MOST_CFM * self.fig["count"])

    def _first_guess(self) -> Array:
        """Airflow by the outlets' area, at about the drive."""
        flow = self.fig["area_ft2"] * self.fig["count"] * self.fig["present"] * 500.0
        flow = self._summed(np.maximum(flow, _TINY_CFM))
        if self.by_airflow:
            flow = flow * (self.drive / sum(flow[i] for i in self.tops))
        return self._bounded(flow)

    def _summed(self, flow: Array) -> Array:
        """Give every section the sum of what hangs on it."""
        flow = flow.copy()
        for index in reversed(range(len(flow))):
            hung = self.network.children[index]
            if hung:
                flow[index] = sum(flow[c] for c in hung)
        return flow

    def _shared(self, flow: Array) -> Array:
        """One step as if every loss grew with the same power: shares follow conductances."""
        flow = np.maximum(flow, _TINY_CFM)
        loss, _ = self.losses(flow)
        power = _START_EXPONENT
        resistance = loss / flow**power
        conductance = np.zeros_like(flow)  # of a section and all that hangs on it
        below = np.zeros_like(flow)
        for index in reversed(range(len(flow))):
            hung = self.network.children[index]
            if hung:
                below[index] = sum(conductance[c] for c in hung)
                open_ = np.maximum(below[index], 1e-100)
                joined = (resistance[index] + open_**-power) ** (-1.0 / power)
                conductance[index] = np.where(below[index] > 0.0, joined, 0.0)
            else:
                conductance[index] = resistance[index] ** (-1.0 / power)
            conductance[index] *= self.fig["present"][index]
        total = sum(conductance[i] for i in self.tops)
        whole = self.drive if self.by_airflow else total * self.drive ** (1.0 / power)
        after = np.zeros_like(flow)
        for index, section in enumerate(self.network.sections):
            if section.parent is None:
                after[index] = whole * conductance[index] / total
            else:
                open_ = np.maximum(below[section.parent], 1e-100)
                after[index] = after[section.parent] * conductance[index] / open_
        return after

    def _newton(self, flow: Array) -> Array:
        """One Newton step; the linear tree is reduced from the outlets up, exactly.

        Each subtree answers a pressure P at its start with Q = a + b P.
        """
        at = np.maximum(flow, _TINY_CFM)
        loss, slope = self.losses(at)
        a, b, total_a, total_b = self._reduced(at, loss, slope)
        plenum = (self.drive - total_a) / total_b if self.by_airflow else self.drive
        pressure = np.empty_like(flow)
        after = np.empty_like(flow)
        for index, section in enumerate(self.network.sections):
            start = plenum if section.parent is None else pressure[section.parent]
            after[index] = a[index] + b[index] * start
            pressure[index] = start - loss[index] - slope[index] * (after[index] - at[index])
        return self._summed(after)

    def _reduced(self, at: Array, loss: Array, slope: Array) -> tuple[Array, Array, Array, Array]:
        a, b = np.zeros_like(at), np.zeros_like(at)
        for index in reversed(range(len(at))):
            hung = self.network.children[index]
            rest = slope[index] * at[index] - loss[index]
            if hung:
                a_below = sum(a[c] for c in hung)
                b_below = sum(b[c] for c in hung)
                whole = 1.0 + b_below * slope[index]
                a[index] = (a_below + b_below * rest) / whole
                b[index] = b_below / whole
            else:
                a[index] = rest / slope[index]
                b[index] = 1.0 / slope[index]
            a[index] *= self.fig["present"][index]
            b[index] *= self.fig["present"][index]
        return a, b, sum(a[i] for i in self.tops), sum(b[i] for i in self.tops)

    def told(self, flow: Array, *, single: bool) -> Split:
        """What a caller gets: outlets brought to add up exactly, losses at the final flow."""
        outlets = list(self.network.outlets)
        flow = flow * self.fig["present"]
        if self.by_airflow:
            flow[outlets] *= self.drive / flow[outlets].sum(axis=0)
        flow = self._summed(flow)
        at = np.maximum(flow, _TINY_CFM)
        loss, slope = self.losses(at)
        _, _, _, total_b = self._reduced(at, loss, slope)
        loss = np.where(flow > 0.0, loss, 0.0)
        reached = np.empty_like(flow)  # sum of losses from the plenum to each section's end
        for index, section in enumerate(self.network.sections):
            before = 0.0 if section.parent is None else reached[section.parent]
            reached[index] = before + loss[index]
        whole = flow[outlets].sum(axis=0)
        plenum = (reached[outlets] * flow[outlets]).sum(axis=0) / whole
        exponent = whole / (plenum * total_b)
        if single:
            return Split(
                float(whole[0]),
                float(plenum[0]),
                flow[:, 0],
                loss[:, 0],
                flow[outlets, 0],
                float(exponent[0]),
            )
        return Split(whole, plenum, flow.T, loss.T, flow[outlets].T, exponent)
