"""The report as JSON, for programs; the names are those of `intake.report.schema`."""

from math import isfinite
from typing import Any

from engine.job.job import Job
from engine.verdict import (
    Finding,
    ModeVerdict,
    Remedy,
    RemedySet,
    Spread,
    Verdict,
    ZoneVerdict,
)
from intake.interview.booking import Booking
from intake.report.booking_card import OUTCOMES
from intake.report.content import Content
from intake.report.schema import (
    AssumedOut,
    BookingOut,
    CautionOut,
    ChangesOut,
    DoubtOut,
    FindingOut,
    FlagOut,
    ModeOut,
    RemedyOut,
    ReportOut,
    ShareOut,
    SpreadOut,
    StatedOut,
    TurnsAtOut,
    TypedOut,
    VerdictOut,
    WantedOut,
    ZoneOut,
)
from intake.telling.findings import finding_sentence
from intake.telling.verdict import headline, status_sentence

__all__ = ["booking_mapping", "report_json", "verdict_mapping", "verdict_out"]


def report_json(content: Content) -> str:
    """The whole report as one JSON object, two spaces a level, UTF-8 characters as they are."""
    out = ReportOut(
        **_fields(verdict_out(content.verdict, content.job)),
        title=content.title,
        cautions=tuple(
            CautionOut(slug=one.slug, words=one.words, because=one.because)
            for one in content.cautions
        ),
        limits_turned=tuple(f"{one.label}: {one.text} ({one.note})" for one in content.turned),
        answers=tuple(
            StatedOut(key=one.key, what=one.what, value=one.value, how=one.how)
            for one in content.answers
        ),
        typed=tuple(TypedOut(question=one.question, text=one.text) for one in content.typed),
        booking=None if content.booking is None else _booking(content.booking.booking),
        defers=content.defers,
    )
    return out.model_dump_json(indent=2) + "\n"


def _fields(out: VerdictOut) -> dict[str, Any]:
    return {name: getattr(out, name) for name in VerdictOut.model_fields}


def verdict_mapping(verdict: Verdict, job: Job) -> dict[str, Any]:
    """The verdict alone as plain JSON values, for the JSON-lines mode."""
    mapping: dict[str, Any] = verdict_out(verdict, job).model_dump(mode="json")
    return mapping


def verdict_out(verdict: Verdict, job: Job) -> VerdictOut:
    """The verdict as the model that leaves the program.

    Args:
        verdict: What the engine says.
        job: What is known; names pieces in the words.
    """
    return VerdictOut(
        headline=headline(verdict),
        modes={mode.value: _mode(one, job) for mode, one in verdict.modes.items()},
        assumed=tuple(
            AssumedOut(
                key=one.key,
                meaning=one.meaning,
                low=_finite(one.low),
                likely=one.likely if isinstance(one.likely, str) else float(one.likely),
                high=_finite(one.high),
                unit=one.unit,
                source=one.source,
                weight=float(one.weight),
            )
            for one in verdict.assumed
        ),
        collect_next=tuple(
            WantedOut(key=one.key, meaning=one.meaning, why=one.why) for one in verdict.collect_next
        ),
        remedies=tuple(_remedy(one) for one in verdict.remedies),
        changes=_changes(verdict.changes),
        doubts=tuple(
            DoubtOut(
                chi_square=float(one.chi_square),
                reading=one.reading,
                slip=one.slip,
                look_for=one.look_for,
                words=one.words,
            )
            for one in verdict.doubts
        ),
        refused=verdict.refused,
        smallest_zone=_zone(verdict.smallest_zone, job),
        samples=int(verdict.samples),
        effective_samples=float(verdict.effective_samples),
    )


def _mode(mode: ModeVerdict, job: Job) -> ModeOut:
    target, delivered, quiet = (
        _spread(one) for one in (mode.target_cfm, mode.delivered_cfm, mode.quiet_capacity_cfm)
    )
    if target is None:
        raise ValueError(f"{mode.mode} has no target")
    return ModeOut(
        status=mode.status.value,
        confidence=float(mode.confidence),
        borderline=bool(mode.borderline),
        treat_as=None if mode.treat_as is None else mode.treat_as.value,
        probability_over=float(mode.over_share),
        setting=mode.setting,
        target_cfm=target.likely,
        target_cfm_range=target,
        delivered_cfm=None if delivered is None else delivered.likely,
        delivered_cfm_range=delivered,
        quiet_capacity_cfm=None if quiet is None else quiet.likely,
        quiet_capacity_cfm_range=quiet,
        reasons=mode.reasons,
        unmet_floor=mode.unmet_floor,
        changes=_changes(mode.changes),
        findings=tuple(_finding(one, job) for one in mode.findings),
        words=status_sentence(mode, job),
    )


def _zone(zone: ZoneVerdict | None, job: Job) -> ZoneOut | None:
    if zone is None:
        return None
    return ZoneOut(
        ducts=zone.ducts,
        open_fraction=float(zone.open_fraction),
        modes={mode.value: _mode(one, job) for mode, one in zone.modes.items()},
        words=zone.words,
    )


def _finding(finding: Finding, job: Job) -> FindingOut:
    turns = finding.turns_at
    return FindingOut(
        check=finding.check,
        part=finding.part.value,
        where=finding.where,
        figure=float(finding.figure),
        unit=finding.unit,
        recommended=_finite(finding.recommended),
        maximum=_finite(finding.maximum),
        ratio=_finite(finding.ratio),
        status=finding.status.value,
        harm=finding.harm.value,
        probability_over=float(finding.over_share),
        probability_tight=float(finding.tight_share),
        spread=SpreadOut(
            low=float(finding.spread.low),
            likely=float(finding.spread.likely),
            high=float(finding.spread.high),
        ),
        turns_at=None
        if turns is None
        else TurnsAtOut(key=turns.key, value=float(turns.value), holds_while=turns.holds_while),
        rests_on=finding.rests_on,
        known=finding.known,
        formula=finding.formula,
        source=finding.source,
        setting=finding.setting,
        because=finding.because,
        note=finding.note,
        votes=bool(finding.votes),
        shares=tuple(
            ShareOut(
                part=one.part,
                inwc=float(one.inwc),
                share=float(one.share),
                usual_share=float(one.usual_share),
            )
            for one in finding.shares
        ),
        words=finding_sentence(finding, job),
    )


def _finite(value: float | None) -> float | None:
    """A limit that doesn't exist is null, whichever way the engine writes it."""
    return float(value) if value is not None and isfinite(value) else None


def _spread(of: Spread | None) -> SpreadOut | None:
    if of is None:
        return None
    return SpreadOut(low=float(of.low), likely=float(of.likely), high=float(of.high))


def _changes(changes: RemedySet | None) -> ChangesOut | None:
    if changes is None:
        return None
    return ChangesOut(
        remedies=changes.remedies,
        modes=tuple(one.value for one in changes.modes),
        effort_hours=_hours(changes.effort_hours),
        confidence=float(changes.confidence),
    )


def _remedy(remedy: Remedy) -> RemedyOut:
    return RemedyOut(
        key=remedy.key,
        words=remedy.words,
        effort_hours=_hours(remedy.effort_hours),
        edits_trunk=bool(remedy.edits_trunk),
        clears={mode.value: status.value for mode, status in remedy.clears.items()},
        buys=remedy.buys,
        cautions=remedy.cautions,
    )


def _hours(effort: tuple[float, float]) -> tuple[float, float]:
    return float(effort[0]), float(effort[1])


def booking_mapping(booking: Booking) -> dict[str, Any]:
    """The booking alone as plain JSON values, for the JSON-lines mode."""
    mapping: dict[str, Any] = _booking(booking).model_dump(mode="json")
    return mapping


def _booking(booking: Booking) -> BookingOut:
    return BookingOut(
        outcome=booking.outcome.value,
        told=OUTCOMES[booking.outcome],
        minutes=booking.minutes,
        decided=booking.decided,
        for_caller=booking.for_caller,
        for_board=booking.for_board,
        flags=tuple(
            FlagOut(question=one.question, hard=one.hard, words=one.words) for one in booking.flags
        ),
        bring=booking.bring,
        photos=booking.photos,
        safety=booking.safety,
        measure_first=booking.measure_first,
        unknown=booking.unknown,
    )
