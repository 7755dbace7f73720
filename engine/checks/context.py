"""What every check looks at: one mode of one house, with what was worked out once for all."""

from dataclasses import dataclass

from engine.arrays import Array
from engine.job.delivered import Delivered
from engine.job.job import Job
from engine.job.lengths import Lengths
from engine.job.modes import Mode
from engine.job.openings import FilterBank, Openings, Registers
from engine.job.sample import House
from engine.job.sections import Duct
from engine.job.system import System
from engine.job.targets import Target
from engine.job.unseen import UnseenDuct
from engine.trade.limits import Limits

__all__ = ["Context"]


@dataclass(frozen=True, slots=True)
class Context:
    """One mode of one house.

    Attributes:
        house: Beliefs as arrays.
        mode: The mode.
        target: What air it needs.
        limits: The office's figures.
        ducts: All sections, stated and believed.
        openings: Return openings; None where there are none.
        filters: Filters by place.
        registers: Supply registers with sizes; None where nobody stated any.
        lengths: Feet along the longest run.
        system: What the blower pushes against.
        ratio: Density of the air here over standard, (n + 1,).
        delivered: What the blower gives at the setting being judged; None before one is.
        unseen: Ducts nobody spoke of that may be too fast all the same.
    """

    house: House
    mode: Mode
    target: Target
    limits: Limits
    ducts: tuple[Duct, ...]
    openings: Openings | None
    filters: tuple[FilterBank, ...]
    registers: Registers | None
    lengths: Lengths
    system: System
    ratio: Array
    delivered: Delivered | None = None
    unseen: tuple[UnseenDuct, ...] = ()

    @property
    def job(self) -> Job:
        """What is known."""
        return self.house.job

    @property
    def target_cfm(self) -> Array:
        """What air the mode needs, (n + 1,)."""
        return self.target.airflow_cfm
