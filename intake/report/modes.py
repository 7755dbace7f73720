"""One mode's verdict as content: its reasons with their arithmetic, and the table of its checks."""

from dataclasses import replace
from math import isfinite
from typing import Final

from engine.job.job import Job
from engine.verdict import Finding, FindingStatus, ModeStatus, ModeVerdict, Spread, Verdict
from intake.report.pieces import Bar, ModeContent, Reason, Row
from intake.telling.findings import (
    figure_words,
    finding_sentence,
    finding_where,
    limits_words,
    odds_sentence,
    told_of,
    turns_sentence,
)
from intake.telling.names import HARMS, PARTS, STATUSES, mode_words
from intake.telling.numbers import quantity, spread, sure
from intake.telling.verdict import deciding, delivered_sentence, notes_of, status_sentence

__all__ = ["mode_content", "mode_contents"]

_ROOM: Final = 1.15
"""How much longer a bar's scale is than its longest figure."""


def mode_contents(verdict: Verdict, job: Job) -> tuple[ModeContent, ...]:
    """Every mode in words; reasons that are those of an earlier mode are told there alone."""
    told: dict[tuple[Reason, ...], str] = {}
    found = []
    for mode in verdict.modes.values():
        content = mode_content(mode, job)
        reasons = content.reasons + content.notes
        if reasons and reasons in told:
            content = replace(content, reasons=(), notes=(), same_as=told[reasons])
        else:
            told[reasons] = content.name
        found.append(content)
    return tuple(found)


def mode_content(mode: ModeVerdict, job: Job) -> ModeContent:
    """One mode in words.

    Args:
        mode: What the engine says of it.
        job: What is known; names pieces and materials.
    """
    sentence = status_sentence(mode, job)
    if delivered := delivered_sentence(mode):
        sentence = f"{sentence} {delivered}"
    return ModeContent(
        name=mode_words(mode.mode),
        status=mode.status.value,
        told=_told(mode),
        target=_spread(mode.target_cfm),
        delivered="" if mode.delivered_cfm is None else _spread(mode.delivered_cfm),
        sure="" if mode.status is ModeStatus.CANT_SAY else sure(mode.confidence),
        setting=mode.setting,
        held_back_by=_held_back_by(mode),
        sentence=sentence,
        reasons=tuple(_reason(one, job) for one in deciding(mode)),
        notes=tuple(_reason(one, job) for one in notes_of(mode)),
        rows=tuple(_row(one, job) for one in mode.findings),
    )


def _told(mode: ModeVerdict) -> str:
    if mode.borderline:
        return f"on the line; treat as: {STATUSES[mode.status]}"
    if mode.treat_as is not None:
        return "can't say; treat as won't carry until measured"
    return STATUSES[mode.status]


def _spread(of: Spread) -> str:
    return spread(of.low, of.likely, of.high, "CFM")


def _held_back_by(mode: ModeVerdict) -> str:
    if mode.status is ModeStatus.CARRIES:
        return ""
    over = [PARTS[one.part] for one in mode.findings if one.votes and _is_over(one)]
    return ", ".join(dict.fromkeys(over))


def _is_over(finding: Finding) -> bool:
    return finding.status is FindingStatus.OVER


def _reason(finding: Finding, job: Job) -> Reason:
    return Reason(
        part=finding_where(finding, job),
        status=finding.status.value if finding.votes else "note",
        harm=HARMS[finding.harm],
        words=finding_sentence(finding, job),
        odds=odds_sentence(finding),
        turns=turns_sentence(finding, job),
        formula=finding.formula,
        source=finding.source,
        bar=_bar(finding),
    )


def _row(finding: Finding, job: Job) -> Row:
    told = told_of(finding.check)
    return Row(
        what=f"{told.name}, {finding_where(finding, job)}",
        figure=figure_words(finding),
        limits=limits_words(finding, job, with_source=False),
        status=finding.status.value if finding.votes else "note",
        source=finding.source,
    )


def _bar(finding: Finding) -> Bar | None:
    marks = [
        one for one in (finding.recommended, finding.maximum) if one is not None and isfinite(one)
    ]
    if finding.note in told_of(finding.check).instead:
        return None
    if not marks or finding.figure < 0.0 or min(marks) < 0.0:
        return None
    longest = _ROOM * max(finding.figure, *marks)
    if longest <= 0.0:
        return None

    def place(value: float | None) -> float | None:
        return None if value is None or not isfinite(value) else 100.0 * value / longest

    def text(value: float | None) -> str:
        if value is None or not isfinite(value):
            return ""
        return quantity(value, finding.unit, (finding.figure,))

    return Bar(
        figure_pct=100.0 * finding.figure / longest,
        recommended_pct=place(finding.recommended),
        maximum_pct=place(finding.maximum),
        figure=quantity(finding.figure, finding.unit, marks),
        recommended=text(finding.recommended),
        maximum=text(finding.maximum),
    )
