"""The most that the ducts carry with every speed within its limit, in CFM and in tons."""

from typing import Final

from engine.job.job import Job
from engine.job.modes import Mode
from engine.trade.limits import LIMITS
from engine.verdict import ModeVerdict, Spread, Verdict
from intake.telling.names import mode_words
from intake.telling.numbers import cfm, spread, tons

__all__ = ["capacity_sentence", "capacity_sentences"]

_IN_TONS: Final = (Mode.COOLING_HIGH, Mode.HEAT_PUMP_HEATING)


def _told(of: Spread) -> str:
    return spread(of.low, of.likely, of.high, "CFM")


def capacity_sentences(verdict: Verdict, job: Job) -> list[str]:
    """The most these ducts carry, once for each figure; with tons where they are known."""
    told: dict[str, str] = {}
    in_tons = ""
    for mode in sorted(verdict.modes.values(), key=lambda one: one.mode not in _IN_TONS):
        if mode.quiet_capacity_cfm is not None:
            figure = _told(mode.quiet_capacity_cfm)
            sentence = capacity_sentence(mode, job)
            if in_tons and mode.mode in _IN_TONS:
                sentence = f"{sentence.rstrip('.')} in {mode_words(mode.mode)}."
            told.setdefault(figure, sentence)
            in_tons = in_tons or (sentence if mode.mode in _IN_TONS else "")
    return list(told.values())


def capacity_sentence(mode: ModeVerdict, job: Job) -> str:
    """The most these ducts carry quietly, in CFM and, for cooling, in tons; empty if unknown.

    Tons are told at this job's own airflow per ton where both are known, else at the usual one.
    """
    most = mode.quiet_capacity_cfm
    if most is None:
        return ""
    figure = _told(most)
    sentence = f"The most these ducts carry with every speed within its limit: {figure}"
    if mode.mode not in _IN_TONS:
        return f"{sentence} in {mode_words(mode.mode)}."
    size = job.number("equipment.cooling_tons")
    per_ton = LIMITS.cooling_default_cfm_per_ton.value
    at = f"at the usual {cfm(per_ton)} per ton"
    if size and mode.target_cfm.likely > 0.0:
        per_ton = mode.target_cfm.likely / size
        at = f"at this equipment's {cfm(per_ton)} per ton"
    return f"{sentence}, which serves {tons(most.likely / per_ton)} {at}."
