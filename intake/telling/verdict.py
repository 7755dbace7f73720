"""A verdict in the words of the chat: short lines, worst first, nothing without its meaning."""

from collections.abc import Iterable, Sequence
from typing import Final

from engine.job.job import Job
from engine.verdict import (
    Assumption,
    Finding,
    FindingStatus,
    ModeStatus,
    ModeVerdict,
    Remedy,
    RemedySet,
    Spread,
    Verdict,
)
from intake.telling.capacity import capacity_sentences
from intake.telling.findings import (
    figure_words,
    finding_sentence,
    finding_where,
    odds_sentence,
    of_assumed_size,
    turns_sentence,
)
from intake.telling.names import STATUSES, mode_words, thing_words, value_words, wanted_words
from intake.telling.numbers import cfm, hours, in_how_many, quantity, spread, sure

__all__ = [
    "DEFERS",
    "assumed_value",
    "assumption_words",
    "changes_sentences",
    "deciding",
    "delivered_sentence",
    "headline",
    "mode_lines",
    "notes_of",
    "short_verdict",
    "status_sentence",
    "verdict_lines",
    "way_is_open",
]

DEFERS: Final = (
    "This is a judgement from what was told, not a permit and not a design: local code, the "
    "maker's data and a licensed person on site decide."
)
"""What every verdict ends with."""

_BECAUSE: Final = "Because: "
_IN_DOUBT: Final = "In doubt: "
_CLOSEST: Final = "Closest to its limit: "
_REASON_STARTS: Final = (_BECAUSE, _IN_DOUBT, _CLOSEST)
_DOUBTFUL: Final = 0.1
"""Share of houses in which something is over from which its size had better be known."""
_MOST_REASONS: Final = 3
_MOST_ASSUMED: Final = 3
_MOST_NOTES: Final = 2
_TOLD_FIRST: Final = "effective_length"
_MOST_WANTED: Final = 3
_ORDER: Final = (
    ModeStatus.WONT_CARRY,
    ModeStatus.CANT_SAY,
    ModeStatus.CARRIES_WITH_CHANGES,
    ModeStatus.CARRIES,
)


def verdict_lines(verdict: Verdict, job: Job) -> list[str]:
    """The verdict for the chat.

    Args:
        verdict: What the engine says.
        job: What is known; names pieces and materials.

    Returns:
        One line a thing: the whole in short, each mode with its reasons, the most these ducts
        carry quietly, the changes, what was assumed, what to collect next, doubts about readings,
        questions not answered, and whom the verdict defers to.
    """
    if not verdict.modes:
        return [headline(verdict), *_wanted_lines(verdict, job)]
    lines = [headline(verdict)]
    lines += _modes_lines(verdict, job)
    lines += _note_lines(verdict, job)
    lines += capacity_sentences(verdict, job)
    lines += changes_sentences(verdict)
    lines += _assumed_line(verdict.assumed, job)
    lines += _wanted_lines(verdict, job)
    lines += [_stop(f"The readings don't agree: {one.words}") for one in verdict.doubts]
    lines += [verdict.smallest_zone.words] if verdict.smallest_zone is not None else []
    lines += [_stop(f"Not answered: {one}") for one in verdict.refused]
    return [*lines, DEFERS]


def _modes_lines(verdict: Verdict, job: Job) -> list[str]:
    """Every mode, the worst first; reasons told of one are not told again of the next."""
    lines: list[str] = []
    told: dict[tuple[object, ...], tuple[str, tuple[str, ...]]] = {}
    for mode in sorted(verdict.modes.values(), key=lambda one: _ORDER.index(one.status)):
        head, *rest = mode_lines(mode, job)
        reasons = tuple(line for line in rest if line.startswith(_REASON_STARTS))
        alike = _alike(mode, reasons)
        if reasons and alike in told:
            earlier, words = told[alike]
            figures = "" if words == reasons else f": {_figures(mode)}"
            others = [line for line in rest if line not in reasons]
            lines += [head, f"For the same reasons as {earlier}{figures}.", *others]
        else:
            told[alike] = (mode_words(mode.mode), reasons)
            lines += [head, *rest]
    return lines


def _alike(mode: ModeVerdict, reasons: Sequence[str]) -> tuple[object, ...]:
    """What two modes share whose reasons differ in nothing but the figure."""
    told = deciding(mode)[: len(reasons)]
    start = reasons[0].partition(":")[0] if reasons else ""
    return (start, *((f.check, f.where, f.status, f.recommended, f.maximum) for f in told))


def _figures(mode: ModeVerdict) -> str:
    told = deciding(mode)[:_MOST_REASONS]
    return _listed(f"{finding_where(one)} at {figure_words(one)}" for one in told).rstrip(".")


def headline(verdict: Verdict) -> str:
    """The whole verdict in one sentence: the worst mode decides."""
    modes = list(verdict.modes.values())
    if not modes:
        return "No airflow can be judged yet: nothing says how much air the new equipment needs."
    worst = min(modes, key=lambda one: _ORDER.index(one.status))
    same = [one for one in modes if one.status is worst.status]
    names = _listed(mode_words(one.mode) for one in same)
    everything = len(same) == len(modes)
    what = "every airflow asked for" if everything and len(modes) > 1 else names
    match worst.status:
        case ModeStatus.CARRIES:
            return f"These ducts carry {what} as they are."
        case ModeStatus.CARRIES_WITH_CHANGES:
            return f"These ducts carry {what} once something is changed; the trunks can stay."
        case ModeStatus.WONT_CARRY:
            return f"These ducts won't carry {what}{_even_with(same, verdict)}."
        case ModeStatus.CANT_SAY:
            if all(one.treat_as is not None for one in same):
                return f"It can't be said of {what}: treat as won't carry until measured."
            return f"It can't be said yet of {what}; answers are still missing."


def _even_with(modes: Sequence[ModeVerdict], verdict: Verdict) -> str:
    if any(one.borderline for one in modes):
        return ", as far as can be told: it is on the line"
    if all(one.changes is None for one in modes):
        if _way_unseen(modes, verdict):
            return "; what would clear it can't be said before more is measured"
        return ", and no change that was tried clears it"
    return " as they are, and only new trunks or less air would clear it"


def _way_unseen(modes: Sequence[ModeVerdict], verdict: Verdict) -> bool:
    doubtful = [f for mode in modes for f in mode.findings if f.over_share > _DOUBTFUL]
    return not verdict.remedies or any(not f.known or of_assumed_size(f) for f in doubtful)


def way_is_open(verdict: Verdict) -> bool:
    """Whether something won't carry and what would clear it can't be said before more is known."""
    over = [one for one in verdict.modes.values() if one.status is ModeStatus.WONT_CARRY]
    without = bool(over) and all(one.changes is None for one in over)
    return without and _way_unseen(over, verdict)


def short_verdict(verdict: Verdict) -> str:
    """Every mode's status on one line, for "what would you say if we stopped now?"."""
    if not verdict.modes:
        return "nothing yet: how much air the new equipment needs isn't known"
    same: dict[str, list[str]] = {}
    for one in verdict.modes.values():
        same.setdefault(_status_words(one), []).append(mode_words(one.mode))
    if len(same) == 1 and len(verdict.modes) > 2:
        return f"every airflow: {next(iter(same))}"
    return "; ".join(f"{_listed(names)}: {words}" for words, names in same.items())


def _status_words(mode: ModeVerdict) -> str:
    if mode.borderline:
        return f"on the line, treat as {STATUSES[mode.status]}"
    if mode.treat_as is not None:
        return "can't say, treat as won't carry until measured"
    if mode.status is ModeStatus.CANT_SAY:
        return STATUSES[mode.status]
    return f"{STATUSES[mode.status]} ({sure(mode.confidence)})"


def status_sentence(mode: ModeVerdict, job: Job) -> str:
    """One mode's status with its airflow, its odds and, where it can't be said, what is missing."""
    setting = f", blower on “{mode.setting}”" if mode.setting else ""
    head = f"{_capital(mode_words(mode.mode))}, {_range(mode.target_cfm)}{setting}:"
    fails = f"{in_how_many(mode.over_share)} of the houses that fit what was told"
    if mode.borderline:
        return (
            f"{head} on the line. Something is over its limit in {fails}, and nothing more can be "
            f"had that would settle it; plan as if {STATUSES[mode.status]}."
        )
    if mode.status is ModeStatus.CANT_SAY:
        missing = _missing(mode, job)
        if mode.treat_as is not None:
            return f"{head} can't say.{missing} Treat as won't carry until measured."
        return f"{head} can't say yet. Something is over its limit in {fails}.{missing}"
    return f"{head} {STATUSES[mode.status]} ({sure(mode.confidence)})."


def _range(of: Spread) -> str:
    return spread(of.low, of.likely, of.high, "CFM")


def _missing(mode: ModeVerdict, job: Job) -> str:
    if not mode.unmet_floor:
        return ""
    wanted = "; ".join(dict.fromkeys(wanted_words(one, job) for one in mode.unmet_floor))
    return f" Before it may be called good, these must be known: {wanted}."


def mode_lines(mode: ModeVerdict, job: Job) -> list[str]:
    """One mode: its status, its reasons worst first, and the air it will really get."""
    lines = [status_sentence(mode, job)]
    reasons = deciding(mode)
    if mode.status is ModeStatus.CARRIES and reasons:
        lines.append(f"{_CLOSEST}{_reason(reasons[0], job)}")
    else:
        open_ = mode.borderline or mode.status is ModeStatus.CANT_SAY
        start = _IN_DOUBT if open_ else _BECAUSE
        lines += [f"{start}{_reason(one, job)}" for one in reasons[:_MOST_REASONS]]
    told = {one.check for one in reasons[:_MOST_REASONS]}
    delivered = delivered_sentence(mode)
    if delivered and "delivered_airflow" not in told:
        lines.append(delivered)
    return lines


def deciding(mode: ModeVerdict) -> list[Finding]:
    """The findings that decide a mode, worst first; for one that carries, the closest to a limit.

    The engine's own reasons come first; without any, whatever is over or tight, then the worst
    ratio.
    """
    if mode.reasons:
        named = [_worst(mode.findings, check) for check in dict.fromkeys(mode.reasons)]
        found = [one for one in named if one is not None]
        if found:
            return found
    voting = [one for one in mode.findings if one.votes]
    for status in (FindingStatus.OVER, FindingStatus.TIGHT):
        if chosen := [one for one in voting if one.status is status]:
            return chosen
    rated = [one for one in voting if one.ratio is not None]
    return sorted(rated, key=lambda one: -(one.ratio or 0.0))[:1]


def notes_of(mode: ModeVerdict) -> list[Finding]:
    """What only explains and is worth saying: the length of the longest run first."""
    told = [one for one in mode.findings if not one.votes and one.status is not FindingStatus.FINE]
    return sorted(told, key=lambda one: one.check != _TOLD_FIRST)


def _note_lines(verdict: Verdict, job: Job) -> list[str]:
    worst: dict[tuple[str, str], Finding] = {}
    for mode in verdict.modes.values():
        for one in notes_of(mode):
            before = worst.get((one.check, one.where))
            if before is None or (one.ratio or 0.0) > (before.ratio or 0.0):
                worst[one.check, one.where] = one
    where: dict[str, list[str]] = {}
    for key, finding in worst.items():
        words = _note(finding, job)
        for mode in verdict.modes.values():
            same = (one for one in notes_of(mode) if (one.check, one.where) == key)
            if any(_note(one, job) == words for one in same):
                where.setdefault(words, []).append(mode_words(mode.mode))
    return [
        f"Also{'' if len(names) == len(verdict.modes) else f', in {_listed(names)}'}: {note}"
        for note, names in where.items()
    ][:_MOST_NOTES]


def _note(finding: Finding, job: Job) -> str:
    sentence = finding_sentence(finding, job, brief=True)
    return f"{sentence} ({finding.formula}.)" if finding.check == "branch_share" else sentence


def _worst(findings: Sequence[Finding], check: str) -> Finding | None:
    return next((one for one in findings if one.check == check), None)


def _reason(finding: Finding, job: Job) -> str:
    parts = (
        finding_sentence(finding, job, brief=True),
        odds_sentence(finding),
        turns_sentence(finding, job),
    )
    return " ".join(part for part in parts if part)


def delivered_sentence(mode: ModeVerdict) -> str:
    """The air this mode will really get at the blower; empty where that can't be said."""
    if mode.delivered_cfm is None:
        return ""
    got, wanted = mode.delivered_cfm, mode.target_cfm.likely
    share = got.likely / wanted if wanted > 0.0 else 1.0
    figure = spread(got.low, got.likely, got.high, "CFM")
    against = f"{quantity(share, 'share')} of the {cfm(wanted)} wanted"
    return f"Through these ducts the blower will move about {figure}, {against}."


def changes_sentences(verdict: Verdict) -> list[str]:
    """The cheapest sufficient changes, what each buys alone, and the effort."""
    by_key = {one.key: one for one in verdict.remedies}
    lines: list[str] = []
    told: set[tuple[str, ...]] = set()
    modes, alone = list(verdict.modes.values()), ""
    if verdict.changes is not None:
        lines = _set_lines(verdict.changes, by_key, "To make every airflow carry")
        told.add(verdict.changes.remedies)
        if all(one.status is not ModeStatus.WONT_CARRY for one in modes):
            return lines
        modes = [one for one in modes if one.status is ModeStatus.CARRIES_WITH_CHANGES]
        alone = " alone"
    for mode in modes:
        if mode.changes is not None and mode.changes.remedies not in told:
            told.add(mode.changes.remedies)
            names = _listed(mode_words(one) for one in mode.changes.modes) or mode_words(mode.mode)
            lines += _set_lines(mode.changes, by_key, f"To make {names}{alone} carry")
    return lines


def _set_lines(changes: RemedySet, by_key: dict[str, Remedy], purpose: str) -> list[str]:
    head = f"{purpose} ({sure(changes.confidence)}), about {hours(changes.effort_hours)}:"
    chosen = [by_key[key] for key in changes.remedies if key in by_key]
    return [
        head,
        *(
            f"{number}. {_stop(one.words)} {_stop(_capital(one.buys))}".rstrip()
            for number, one in enumerate(chosen, 1)
        ),
    ]


def _stop(text: str) -> str:
    bare = text.strip()
    return bare if not bare or bare.endswith((".", "!", "?")) else f"{bare}."


def assumption_words(assumption: Assumption, job: Job | None = None) -> str:
    """One assumption: what it is, the value taken and the range it may have.

    >>> assumption_words(Assumption("new.coil_drop_inwc", "", 0.15, 0.25, 0.38, "in. w.c.", "", 1))
    'pressure drop of the new coil, wet: 0.25 in. w.c. (0.15 to 0.38)'
    """
    return f"{thing_words(assumption.key, job)}: {assumed_value(assumption)}"


def assumed_value(assumption: Assumption) -> str:
    """The value that was taken, and the range it may have."""
    if isinstance(assumption.likely, str):
        return value_words(assumption.key, assumption.likely)
    unit = assumption.unit or ("share" if assumption.key.endswith("_fraction") else "")
    if assumption.low is None or assumption.high is None:
        return quantity(assumption.likely, unit)
    return spread(assumption.low, assumption.likely, assumption.high, unit)


def _assumed_line(assumed: Sequence[Assumption], job: Job) -> list[str]:
    if not assumed:
        return []
    first = [one for one in assumed[:_MOST_ASSUMED] if one.weight > 0.0] or assumed[:1]
    told = "; ".join(assumption_words(one, job) for one in first)
    left = len(assumed) - len(first)
    more = f"; and {left} more, in the report" if left > 0 else ""
    return [f"Assumed, what moves the verdict most first: {told}{more}."]


def _wanted_lines(verdict: Verdict, job: Job) -> list[str]:
    by_why: dict[str, list[str]] = {}
    for one in verdict.collect_next[:_MOST_WANTED]:
        by_why.setdefault(one.why, []).append(wanted_words(one.key, job))
    return [
        f"Worth collecting next: {'; '.join(names)}. {_stop(_capital(why))}".rstrip()
        for why, names in by_why.items()
    ]


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def _listed(names: Iterable[str]) -> str:
    every = list(dict.fromkeys(names))
    if len(every) < 2:
        return "".join(every)
    return f"{', '.join(every[:-1])} and {every[-1]}"
