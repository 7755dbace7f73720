"""A zoned system with its smallest zone alone, at the lowest stage's airflow; no bypass counts."""

from collections.abc import Callable

from engine.assessment import Assessment, assess
from engine.job.modes import Mode
from engine.job.targets import modes_of
from engine.job.zones import Zone, lowest_stages, smallest_zone
from engine.mode_verdict import mode_verdict
from engine.trade.limits import Limits
from engine.verdict import ModeStatus, ModeVerdict, ZoneVerdict

__all__ = ["zone_verdict"]

_HELPS = (
    "More or bigger branches in that zone, less air in the lowest stage, or joining it with "
    "another zone helps; a bypass doesn't count, it only sends the air back to the equipment."
)


def zone_verdict(
    assessment: Assessment,
    unmet: Callable[[Mode], tuple[str, ...]],
    *,
    samples: int,
    seed: int,
    limits: Limits,
) -> ZoneVerdict | str | None:
    """The smallest zone alone.

    Args:
        assessment: The house with every zone open.
        unmet: What the floor of evidence lacks, by mode.
        samples: As in the assessment.
        seed: As in the assessment.
        limits: The office's figures.

    Returns:
        None where nothing is zoned; a sentence where the zone's ducts aren't known.
    """
    job = assessment.job
    if job.word("house.zoned") != "yes":
        return None
    zone = smallest_zone(job)
    if isinstance(zone, str):
        return (
            f"smallest zone alone: {zone}, so the system is judged with every zone open; give its "
            "ducts and how many registers it has"
        )
    found = assessment.house.as_found
    alone = assess(
        zone.job,
        samples=samples,
        seed=seed,
        limits=limits,
        evidence=assessment.evidence,
        as_found=None if found is None else found.job,
    )
    modes = {
        mode: mode_verdict(alone, alone.modes[mode], unmet(mode), still_open=bool(unmet(mode)))
        for mode in lowest_stages(modes_of(job))
        if mode in alone.modes
    }
    return ZoneVerdict(zone.ducts, zone.open_fraction, modes, _words(zone, modes))


_SAID = {
    ModeStatus.CARRIES: "carries",
    ModeStatus.CARRIES_WITH_CHANGES: "carries with changes",
    ModeStatus.WONT_CARRY: "won't carry",
    ModeStatus.CANT_SAY: "can't be said yet",
}


def _words(zone: Zone, modes: dict[Mode, ModeVerdict]) -> str:
    """What is said of it, one sentence a mode."""
    who = f"Smallest zone alone ({', '.join(zone.ducts)}, {zone.registers_count:g} registers)"
    told = []
    for mode, it in modes.items():
        air = f"{mode.words}, {it.target_cfm.likely:,.0f} CFM"
        worst = next((f for f in it.findings if f.votes and f.over_share > 0.0), None)
        why = "" if worst is None else f"; {worst.where}: {worst.formula.rstrip('.')}"
        told.append(f"{air}: {_SAID[it.status]}{why}")
    fails = any(it.over_share > 0.1 for it in modes.values())
    return f"{who}. " + ". ".join(told) + "." + (f" {_HELPS}" if fails else "")
