"""What other equipment would do on these ducts, in a line or two, and the largest they carry."""

from collections.abc import Sequence
from typing import Final

from engine.job.job import Job
from engine.verdict import Finding, FindingStatus, ModeStatus, ModeVerdict, Spread, Verdict
from engine.what_if import LargestQuiet
from intake.telling.checks import Bound
from intake.telling.findings import figure_words, finding_where, limits_words, told_of
from intake.telling.names import mode_words, thing_words, wanted_words
from intake.telling.numbers import cfm, quantity, spread, sure, tons
from intake.telling.verdict import deciding

__all__ = [
    "candidate_sentences",
    "decided_by",
    "delivered_words",
    "largest_sentence",
    "left_out_words",
    "status_words",
]

_STATUS: Final = {
    ModeStatus.CARRIES: "carries",
    ModeStatus.CARRIES_WITH_CHANGES: "carries with changes",
    ModeStatus.WONT_CARRY: "won't carry",
    ModeStatus.CANT_SAY: "can't say yet",
}
_WORST_FIRST: Final = (
    ModeStatus.WONT_CARRY,
    ModeStatus.CANT_SAY,
    ModeStatus.CARRIES_WITH_CHANGES,
    ModeStatus.CARRIES,
)
_START: Final = {ModeStatus.CARRIES: "Closest to its limit"}
_SAME: Final = 0.005
"""Airflows this much apart, as a share, are told as the same."""


def status_words(mode: ModeVerdict) -> str:
    """A mode's status in two or three words ("won't carry")."""
    if mode.borderline:
        return f"on the line, plan as {_STATUS[mode.status]}"
    if mode.treat_as is not None:
        return f"can't say, plan as {_STATUS[mode.treat_as]}"
    return _STATUS[mode.status]


def candidate_sentences(
    words: str, before: Verdict, after: Verdict, job: Job, gone: Sequence[str]
) -> list[str]:
    """One candidate beside the job as it is: what differs, then why and with how much air.

    Args:
        words: What the candidate is ("2.5 tons").
        before: The verdict of the job as it is.
        after: The candidate's.
        job: The candidate's job; names pieces.
        gone: Facts and tables that say nothing of this candidate.

    Returns:
        One line, or two.
    """
    differ = [mode for key, mode in after.modes.items() if _differs(before.modes.get(key), mode)]
    same = [mode for mode in after.modes.values() if mode not in differ]
    if not after.modes:
        return [f"With {words}: nothing can be judged yet."]
    told = [_changed(before.modes.get(mode.mode), mode) for mode in differ]
    if differ and same:
        told.append(f"{' and '.join(mode_words(mode.mode) for mode in same)} as now")
    if not differ:
        stays = ", ".join(f"{mode_words(mode.mode)} {status_words(mode)}" for mode in same)
        told = [f"nothing changes, {stays}"]
    first = f"With {words}: {'; '.join(told)}."
    shown = differ or list(after.modes.values())
    worst = min(shown, key=lambda one: (_WORST_FIRST.index(one.status), -one.over_share))
    return [first, " ".join(_why(worst, job, shown, gone))]


def _differs(before: ModeVerdict | None, after: ModeVerdict) -> bool:
    if before is None or status_words(before) != status_words(after):
        return True
    return not (
        _is_near(before.target_cfm.likely, after.target_cfm.likely)
        and _is_near(_likely(before.delivered_cfm), _likely(after.delivered_cfm))
    )


def _likely(of: Spread | None) -> float:
    return 0.0 if of is None else of.likely


def _is_near(one: float, other: float) -> bool:
    return abs(one - other) <= _SAME * max(abs(one), abs(other))


def _changed(before: ModeVerdict | None, after: ModeVerdict) -> str:
    head = f"{mode_words(after.mode)}, {cfm(after.target_cfm.likely)}, {status_words(after)}"
    if after.status is not ModeStatus.CANT_SAY and not after.borderline:
        head = f"{head} ({sure(after.confidence)})"
    if before is None or status_words(before) == status_words(after):
        return head
    return f"{head}, now {status_words(before)}"


def _why(
    worst: ModeVerdict, job: Job, shown: Sequence[ModeVerdict], gone: Sequence[str]
) -> list[str]:
    told = []
    reason = _reason(worst)
    if reason is not None:
        open_ = worst.borderline or worst.status is ModeStatus.CANT_SAY
        start = "In doubt" if open_ else _START.get(worst.status, "Because")
        told.append(f"{start}: {_reason_words(reason, job)}.")
    air = [one for one in shown if one.delivered_cfm is not None]
    if len(air) == 1:
        told.append(f"The blower will give {delivered_words(air[0])}.")
    elif air:
        each = (f"{cfm(_likely(one.delivered_cfm))} in {mode_words(one.mode)}" for one in air)
        told.append(f"The blower will give about {', '.join(each)}.")
    left_out = left_out_words(gone, job)
    missing = [key for key in worst.unmet_floor if key not in gone]
    if worst.status is ModeStatus.CANT_SAY and missing:
        wanted = "; ".join(dict.fromkeys(wanted_words(key, job) for key in missing[:2]))
        more = f"; and {len(missing) - 2} more" if len(missing) > 2 else ""
        told.append(f"Still missing: {wanted}{more}.")
    if left_out:
        told.append(f"Not known of it: {left_out}.")
    return told


def _reason(mode: ModeVerdict) -> Finding | None:
    return next(iter(deciding(mode)), None)


def _reason_words(finding: Finding, job: Job) -> str:
    told = told_of(finding.check)
    if finding.note in told.instead:
        return told.instead[finding.note].rstrip(".")
    says = told.says.format(figure=figure_words(finding), where=finding_where(finding, job))
    limits = limits_words(finding, job, with_source=False)
    said = f"{says[0].lower()}{says[1:]}"
    return f"{said}; {limits}" if limits else said


def decided_by(mode: ModeVerdict, job: Job) -> str:
    """What decides a mode, in a few words for a table; empty where nothing does.

    "supply trunk 960 fpm, most 900 fpm"
    """
    finding = _reason(mode)
    if finding is None:
        return ""
    told = told_of(finding.check)
    where = finding_where(finding, job)
    if finding.note in told.instead:
        return where
    limit = finding.recommended if finding.status is FindingStatus.TIGHT else finding.maximum
    limit = finding.recommended if limit is None else limit
    said = f"{where} {figure_words(finding)}"
    if limit is None or abs(limit) == float("inf"):
        return said
    side = "least" if told.bound is Bound.LEAST else "most"
    if finding.status is FindingStatus.TIGHT:
        side = "advised"
    return f"{said}, {side} {quantity(limit, finding.unit, (finding.figure,))}"


def delivered_words(mode: ModeVerdict) -> str:
    """The air a mode gets at the blower; "can't be said" where nothing tells."""
    air = mode.delivered_cfm
    return "can't be said" if air is None else spread(air.low, air.likely, air.high, "CFM")


def left_out_words(gone: Sequence[str], job: Job) -> str:
    """What was known of the equipment as it is and says nothing of another, listed.

    >>> left_out_words(("new.coil_drop_inwc", "new.coil_drop_at_cfm"), Job())
    'pressure drop of the new coil, wet'
    """
    told = [key for key in gone if not key.startswith("target.") and not key.endswith("_at_cfm")]
    return "; ".join(dict.fromkeys(thing_words(key, job) for key in told))


def largest_sentence(found: LargestQuiet | None, job: Job) -> str:
    """The largest cooling size that these ducts carry, or why there is none to name."""
    if found is None:
        return "Nothing here cools, so there is no largest cooling size to look for."
    at = f"at {cfm(found.per_ton_cfm)} per ton"
    most = found.quiet_cfm
    by_speed = ""
    if most is not None:
        by_speed = f" By their speeds alone: {spread(most.low, most.likely, most.high, 'CFM')}."
    if found.unmet:
        wanted = "; ".join(dict.fromkeys(wanted_words(key, job) for key in found.unmet[:3]))
        return f"The largest size these ducts carry can't be said yet; first: {wanted}.{by_speed}"
    if found.tons is None or found.airflow_cfm is None:
        return f"These ducts carry not even the smallest size that is sold, {at}.{by_speed}"
    once = ""
    if found.needs:
        needed = " and ".join(dict.fromkeys(thing_words(key, job) for key in found.needs))
        once = f", once {needed} confirms it"
    size = f"{tons(found.tons)}, {cfm(found.airflow_cfm)}"
    return f"The largest size these ducts carry: {size} {at}{once}.{by_speed}"
