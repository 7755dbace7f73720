"""The largest equipment that a house's ducts carry quietly."""

from engine.arrays import require_within
from engine.assessment import Assessment
from engine.checks.raw import spread_of
from engine.job.modes import Mode
from engine.trade.limits import LIMITS, Limits
from engine.verdict import Spread

__all__ = ["quiet_tons"]


def quiet_tons(
    assessment: Assessment, mode: Mode = Mode.COOLING_HIGH, limits: Limits = LIMITS
) -> Spread | None:
    """Tons of cooling whose usual airflow stays within every largest speed.

    Args:
        assessment: The house.
        mode: The mode whose ducts are meant.
        limits: The office's figures: airflow per ton.

    Returns:
        10th, 50th and 90th percentile; None where the house doesn't run in this mode.
    """
    it = assessment.modes.get(mode)
    if it is None:
        return None
    per_ton = limits.cooling_default_cfm_per_ton.value
    require_within("cfm_per_ton", per_ton, 100.0, 1000.0)
    return spread_of(it.quiet_cfm / per_ton)
