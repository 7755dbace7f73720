"""What a search for remedies hands to the judge."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from engine.job.modes import Mode
from engine.verdict import Remedy, RemedySet

__all__ = ["NO_CHANGES", "Changes"]


def _none() -> Mapping[Mode, RemedySet]:
    return MappingProxyType({})


def _nothing() -> Mapping[Mode, tuple[str, ...]]:
    return MappingProxyType({})


@dataclass(frozen=True, slots=True)
class Changes:
    """Remedies that were tried and help.

    Attributes:
        remedies: All of them, cheapest first.
        by_mode: For each mode that doesn't carry, the cheapest set that makes it carry while it
            leaves the trunks as they are and the loads met.
        with_trunks: For modes that no such set clears, the cheapest one that touches a trunk.
        measure_first: For modes that no set without trunks clears, but that may carry yet: facts
            and lists to collect before they are given up.
        together: The cheapest set with which every mode carries; None if there is none.
    """

    remedies: tuple[Remedy, ...] = ()
    by_mode: Mapping[Mode, RemedySet] = field(default_factory=_none)
    with_trunks: Mapping[Mode, RemedySet] = field(default_factory=_none)
    together: RemedySet | None = None
    measure_first: Mapping[Mode, tuple[str, ...]] = field(default_factory=_nothing)


NO_CHANGES = Changes()
"""Nothing was found, or nothing looked for."""
