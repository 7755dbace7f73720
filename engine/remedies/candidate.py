"""A change to a house or to the choice of equipment, before anyone knows whether it helps."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.assessment import Assessment
from engine.job.belief import Belief, Between, How, Known, OneOf, Scalar
from engine.job.job import Job
from engine.job.modes import Mode
from engine.job.sections import ROLES, Duct, parent_of
from engine.trade.limits import LIMITS, Limits
from engine.verdict import Part

__all__ = [
    "AIRFLOW_GROUP",
    "CARRIED_SHARE",
    "DESIGN_QUANTILE",
    "Candidate",
    "Order",
    "Situation",
    "exact",
    "hours_each",
    "multiplied",
    "shifted",
    "size_words",
    "with_exact",
    "with_parents_by_key",
]

AIRFLOW_GROUP: Final = "airflow:"
"""Begins the group of changes that give a mode less air."""

CARRIED_SHARE: Final = 0.10
"""A mode carries where at most this share of the samples has something over."""

DESIGN_QUANTILE: Final = 0.95
_MARGIN: Final = 0.98
"""New pieces are sized so that 95 in 100 samples stay 2 % under the limit."""


class Order:
    """Hours added to a change's own when sets are compared: what is tried first in a house.

    Cleaning and settings, then filter and return, fittings and flex, branches, other equipment,
    trunks: the order of practice (common practice, no published source).
    """

    SETTINGS: Final = 0.0
    LESS_AIR: Final = 1.0
    FILTER_RETURN: Final = 0.0
    FITTINGS: Final = 0.5
    BRANCHES: Final = 1.0
    OTHER_EQUIPMENT: Final = 6.0
    TRUNK: Final = 12.0


@dataclass(frozen=True, slots=True)
class Candidate:
    """One change and how to make it.

    Attributes:
        key: Short name.
        words: What to do, for a person, with the sizes.
        effort_hours: Low and high.
        order_hours: Hours added when sets are compared; see `Order`.
        group: Two changes of one group can't both be made.
        edit: The job with the change made; None for what is only told: never in a set.
        edits_trunk: Whether it widens, doubles or replaces a trunk.
        cautions: Slugs of cautions it switches on.
        needs: Facts that must turn out well first; such a change is in no set.
    """

    key: str
    words: str
    effort_hours: tuple[float, float]
    order_hours: float
    group: str
    edit: Callable[[Job], Job] | None
    edits_trunk: bool = False
    cautions: tuple[str, ...] = ()
    needs: tuple[str, ...] = ()

    @property
    def cost_hours(self) -> float:
        """What counts when sets are compared: the middle of the effort and its place in order."""
        return 0.5 * sum(self.effort_hours) + self.order_hours


@dataclass(frozen=True, slots=True)
class Situation:
    """A house whose modes don't all carry.

    Attributes:
        assessment: The house as it stands.
        limits: The office's figures.
    """

    assessment: Assessment
    limits: Limits = LIMITS

    @property
    def job(self) -> Job:
        """What is known."""
        return self.assessment.job

    @property
    def failing(self) -> tuple[Mode, ...]:
        """Modes in which something is over more often than may be."""
        modes = self.assessment.modes
        return tuple(mode for mode, it in modes.items() if it.over_share > CARRIED_SHARE)

    def is_over(self, *parts: Part, share: float = 0.02) -> bool:
        """Whether a finding of one of these parts is over, in any failing mode."""
        return any(
            raw.votes and raw.part in parts and raw.over_share > share
            for mode in self.failing
            for raw in self.assessment.modes[mode].raws
        )

    @property
    def lacks_pressure(self) -> bool:
        """Whether the blower or the equipment gets too little air in a failing mode."""
        return self.is_over(Part.BLOWER, Part.EQUIPMENT)

    @property
    def most_cfm(self) -> Array:
        """The largest target of all modes, (n + 1,)."""
        targets = [it.target.airflow_cfm for it in self.assessment.modes.values()]
        return np.asarray(np.max(targets, axis=0))

    def is_size_known(self, duct: Duct) -> bool:
        """Whether somebody stated every dimension of a section."""
        return all(self.job.is_known(key) for key in duct.size_keys)

    def needed_ft2(self, duct: Duct, speed_fpm: float, *, as_doubtful: bool = False) -> float:
        """Clear area one duct of a section needs to stay within a speed in every mode.

        Args:
            duct: The section.
            speed_fpm: What it should stay within.
            as_doubtful: Whether the size will be known no better than the present one's is, so
                that the area is the central one of a scatter; else it is a new piece's, as made.
        """
        flow = self.most_cfm[1:] * duct.share[1:] / duct.count[1:]
        if as_doubtful:
            flow = flow * duct.area_ft2[0] / duct.area_ft2[1:]
        return float(np.quantile(flow, DESIGN_QUANTILE)) / (_MARGIN * speed_fpm)

    def needed_openings_ft2(self, speed_fpm: float) -> float:
        """Gross area that all return openings need together."""
        return float(np.quantile(self.most_cfm[1:], DESIGN_QUANTILE)) / (_MARGIN * speed_fpm)


def exact(value: Scalar) -> Known:
    """A fact of a piece that is yet to be made or bought: as ordered, without scatter."""
    return Known(value, How.DOCUMENT)


def with_exact(job: Job, facts: Mapping[str, Scalar], without: tuple[str, ...] = ()) -> Job:
    """The job with facts of new pieces, and without what the old ones were known by.

    The lists keep their length: what is forgotten is single facts.
    """
    for key in without:
        job = job.without(key)
    return job.with_facts({key: exact(value) for key, value in facts.items()})


def with_parents_by_key(job: Job) -> Job:
    """The job with every section's `from` said by key, which a further section can't rename."""
    for name in ROLES:
        for key in job.entries(name):
            parent = parent_of(job, key) if f"{key}.from" in job.beliefs else ""
            if parent:
                job = job.with_fact(f"{key}.from", exact(parent))
    return job


def shifted(belief: Belief, by: float, at_least: float = 0.0) -> Belief:
    """A number's belief moved up by an amount, as doubtful as before, nowhere below a least."""

    def moved(value: float) -> float:
        return max(value + by, at_least)

    match belief:
        case Known(value=value) if not isinstance(value, str):
            return replace(belief, value=moved(value))
        case Between(low=low, likely=likely, high=high):
            return replace(belief, low=moved(low), likely=moved(likely), high=moved(high))
        case OneOf(weights=weights):
            options = tuple((v if isinstance(v, str) else moved(v), w) for v, w in weights)
            return replace(belief, weights=options)
    return belief


def multiplied(belief: Belief, low: float, likely: float, high: float) -> Belief:
    """A number's belief times a factor that is itself believed to lie in a range."""
    match belief:
        case Known(value=value) if not isinstance(value, str):
            return Between(value * low, value * likely, value * high, belief.how)
        case Between():
            return Between(belief.low * low, belief.likely * likely, belief.high * high, belief.how)
        case OneOf(weights=weights):
            scaled = tuple((v if isinstance(v, str) else v * likely, w) for v, w in weights)
            return replace(belief, weights=scaled)
    return belief


def hours_each(low: float, high: float, count: float) -> tuple[float, float]:
    """Effort of several like pieces: the first at full, each further one at two thirds."""
    more = max(count - 1.0, 0.0) * 2.0 / 3.0
    return round(low * (1.0 + more), 1), round(high * (1.0 + more), 1)


def size_words(*sides_in: float) -> str:
    """A size as it is said: "20 x 8 in." or "14 in. round"."""
    if len(sides_in) == 1:
        return f"{round(sides_in[0], 1):g} in. round"
    return " x ".join(f"{round(side, 1):g}" for side in sides_in) + " in."
