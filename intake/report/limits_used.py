"""Whose limits a verdict was made with, and which of them the office has turned."""

from engine.trade.limits import LIMITS, Limit, Limits, SpeedLimit, turned_figures
from engine.verdict import Verdict
from intake.report.pieces import Line
from intake.telling.findings import limits_words, told_of
from intake.telling.numbers import fpm, quantity

__all__ = ["limits_used", "turned_limits"]


def limits_used(verdict: Verdict) -> tuple[Line, ...]:
    """Every limit the findings were compared with, once, with its source."""
    lines: dict[tuple[str, str, str], Line] = {}
    for mode in verdict.modes.values():
        for finding in mode.findings:
            words = limits_words(finding, None, with_source=False)
            name = told_of(finding.check).name
            if words:
                lines.setdefault((name, words, finding.source), Line(name, words, finding.source))
    return tuple(lines.values())


def turned_limits(limits: Limits) -> tuple[Line, ...]:
    """Limits that differ from the project's own: what they were, what they are, whose they are."""
    return tuple(
        Line(
            name.replace("_", " "),
            f"{_words(getattr(limits, name))} instead of {_words(getattr(LIMITS, name))}",
            getattr(limits, name).source,
        )
        for name in turned_figures(limits)
    )


def _words(limit: Limit | SpeedLimit) -> str:
    if isinstance(limit, Limit):
        return quantity(limit.value, limit.unit)
    return f"{fpm(limit.recommended_fpm)} recommended and {fpm(limit.maximum_fpm)} the most"
