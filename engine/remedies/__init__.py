"""Changes that make a house's ducts carry what the equipment needs, each one re-judged."""

from engine.remedies.candidate import CARRIED_SHARE, Candidate
from engine.remedies.rejudging import edited
from engine.remedies.search import candidates_of, find_changes
from engine.remedies.what_if import quiet_tons

__all__ = [
    "CARRIED_SHARE",
    "Candidate",
    "candidates_of",
    "edited",
    "find_changes",
    "quiet_tons",
]
