"""Why a question is put, what it would settle, and what the next minutes would buy, in words."""

from collections.abc import Iterable, Mapping, Sequence, Set
from types import MappingProxyType
from typing import TYPE_CHECKING, Final

from engine.job.facts import Place
from engine.job.modes import Mode
from engine.verdict import ModeStatus, Verdict
from intake.telling.names import mode_words

if TYPE_CHECKING:  # the engine's numbers are loaded once something is weighed
    from engine.worth import Worth

__all__ = [
    "BUNDLE_WORDS",
    "bought_sentence",
    "enough_sentence",
    "in_one_go",
    "now_sentence",
    "settles_words",
    "sure_modes",
]

BUNDLE_WORDS: Final[Mapping[str, str]] = MappingProxyType(
    {
        "blower_table": "the new blower's table",
        "coil_drop": "the new coil's drop",
        "filter_drop": "the filter's drop",
        "elevation": "the elevation",
        "loads": "the loads",
        "trunks": "the supply trunks",
        "drop": "the return drop",
        "filter": "the filter",
        "openings": "the return openings",
        "pressures": "the pressures",
        "pressure_parts": "the outer two pressures",
        "old_rise": "the old furnace's rise",
        "step_down": "whether the trunk gets smaller",
        "zones": "the zones",
        "return_trunk": "the return trunk",
        "lengths": "the longest runs",
        "fittings": "the fittings",
        "branches": "the branches",
        "registers": "the registers",
        "flex_slack": "how the flex hangs",
        "year": "the year",
    }
)
"""What is asked in one breath, by the key of its bundle."""

_PLACES: Final[Mapping[Place, str]] = MappingProxyType(
    {
        Place.DESK: "From the maker's pages",
        Place.LIVING_SPACE: "In the rooms",
        Place.EQUIPMENT: "At the equipment",
        Place.TRUNKS: "Along the trunks",
        Place.REGISTERS: "At the registers",
        Place.ATTIC_CRAWL: "In the attic or crawl",
    }
)
_SURE: Final = 0.95
"""Confidence to which the interview goes on while something is worth it."""
_TOGETHER: Final = 3
_WORTH_NAMING: Final = 1
"""Tenths under which nothing is said."""


def sure_modes(verdict: Verdict) -> frozenset[Mode]:
    """Modes of which nothing is open: what is asked can't settle them any more."""
    return frozenset(
        one.mode
        for one in verdict.modes.values()
        if one.status is not ModeStatus.CANT_SAY and one.confidence >= _SURE
    )


def settles_words(worth: "Worth", sure: Set[Mode] = frozenset()) -> str:
    """What a bundle might settle, in tenths; empty under one in ten.

    Args:
        worth: The bundle.
        sure: Modes that are settled already.

    Returns:
        A sentence's end: "6 times in 10 that settles full cooling".
    """
    for settling in [one for one in worth.would_settle if one.mode not in sure][:1]:
        tenths = round(10.0 * settling.chance)
        if _WORTH_NAMING <= tenths < 10:  # at 10 what is said stands; what must change doesn't
            return f"{_times(tenths)} in 10 that settles {mode_words(settling.mode)}"
    if worth.tenths >= _WORTH_NAMING:
        unit = "a tenth" if worth.tenths == 1 else f"{worth.tenths} tenths"
        return f"that clears up about {unit} of what is open"
    return ""


def _times(tenths: int) -> str:
    return "once" if tenths == 1 else f"{tenths} times"


def now_sentence(worth: "Worth", sure: Set[Mode] = frozenset()) -> str:
    """Why a bundle is asked now; empty if it isn't worth a sentence."""
    settles = settles_words(worth, sure)
    return f"Next, {BUNDLE_WORDS[worth.bundle.key]}: {settles}." if settles else ""


def in_one_go(worths: Sequence["Worth"], place: Place) -> str:
    """What can be told together where the person stands now; empty if it is one thing alone."""
    here = [one for one in worths if one.bundle.place is place and one.worth > 0.0]
    if len(here) < 2:
        return ""
    names = _listed(BUNDLE_WORDS[one.bundle.key] for one in here[:_TOGETHER])
    return f"{_PLACES[place]}: {names}. Tell what you see in one go, or one by one."


def bought_sentence(worths: Sequence["Worth"], sure: Set[Mode] = frozenset()) -> str:
    """What the next minutes would buy; empty if it isn't worth a sentence."""
    for one in worths[:1]:
        settles = settles_words(one, sure)
        if settles:
            minutes = max(round(one.minutes), 1)
            unit = "minute" if minutes == 1 else f"{minutes} minutes"
            return f"The next {unit}: {BUNDLE_WORDS[one.bundle.key]}; {settles}."
    return ""


def enough_sentence(*, settled: bool, way_open: bool = False) -> str:
    """Why no more is asked, though more could be.

    Args:
        settled: Whether the verdict is sure.
        way_open: Whether what would clear it can't be said yet.
    """
    if settled and way_open:
        return (
            "That settles whether they carry it. How to make them carry hangs on what is not"
            ' measured yet: "go on" asks it.'
        )
    if settled:
        return 'That settles it; what is left would not change it. "go on" asks it all the same.'
    return 'What is left would take longer than it is worth. "go on" asks it all the same.'


def _listed(names: Iterable[str]) -> str:
    *first, last = names
    return f"{', '.join(first)} and {last}" if first else last
