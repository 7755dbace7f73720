"""The rows of the catalogue of facts, one file a subject.

Starting ranges are low / likely / high with one house in ten outside at either end. "practice"
means common practice with no published source; where a published figure stands behind a range it
is named. Ranges that depend on other facts are refined in `engine.job.priors`; what stands here
is the national picture.
"""

from typing import Final

from engine.job.catalogue import (
    ducts,
    equipment,
    house,
    openings,
    readings,
    symptoms,
    targets,
)
from engine.job.facts import Fact

__all__ = ["ROWS"]

ROWS: Final[tuple[Fact, ...]] = (
    *house.ROWS,
    *equipment.ROWS,
    *targets.ROWS,
    *ducts.ROWS,
    *openings.ROWS,
    *readings.ROWS,
    *symptoms.ROWS,
)
"""Every fact, in reading order."""
