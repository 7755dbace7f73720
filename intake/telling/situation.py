"""The adapter between a judged job and the triggers of the cautions."""

from dataclasses import dataclass

from engine.job.job import LISTS, Job
from engine.job.modes import Mode
from engine.verdict import Finding, FindingStatus, Verdict
from intake.telling.cautions import CAUTIONS, Caution, cautions_for

__all__ = ["JudgedHouse", "cautions_of"]

_WORSE = (FindingStatus.FINE, FindingStatus.TIGHT, FindingStatus.OVER)
_RISE = "temperature_rise"
_HEATS = (Mode.HEATING_HIGH, Mode.HEATING_LOW)


@dataclass(frozen=True, slots=True)
class JudgedHouse:
    """A house as the triggers ask for it (`intake.telling.caution_triggers.Situation`).

    Attributes:
        job: What is known.
        verdict: What the engine says of it; None before anything was judged.
        said: Everything a person typed, in lower case.
    """

    job: Job
    verdict: Verdict | None = None
    said: str = ""

    @property
    def remedies(self) -> frozenset[str]:
        """Keys of every remedy the report tells of, in a set or not."""
        if self.verdict is None:
            return frozenset()
        return frozenset(one.key for one in self.verdict.remedies)

    def value(self, key: str) -> float | str | None:
        """Likely value of a fact that somebody stated; None if nobody did."""
        return self.job.value(key)

    def known(self, key: str) -> bool:
        """Whether somebody stated the fact, or how many entries a list has."""
        return self.job.length(key) is not None if key in LISTS else self.job.is_known(key)

    def finding(self, check: str) -> str | None:
        """Worst status of a check over all modes; None if it was not put."""
        found = [one.status for one in self._findings(check)]
        return max(found, key=_WORSE.index).value if found else None

    def predicted(self, name: str) -> float | None:
        """A predicted figure: "rise_degf", at its worst over the burner's stages, or "cfm_per_ton".

        Air per ton is what full cooling will get, over the nominal size.
        """
        if name == "rise_degf":
            rises = [one for one in self._findings(_RISE) if one.mode in _HEATS]
            return max(rises, key=_how_bad).figure if rises else None
        if name == "cfm_per_ton":
            return self._cfm_per_ton()
        return None

    def _cfm_per_ton(self) -> float | None:
        size = self.job.number("equipment.cooling_tons")
        cooling = None if self.verdict is None else self.verdict.modes.get(Mode.COOLING_HIGH)
        if not size or cooling is None or cooling.delivered_cfm is None:
            return None
        return cooling.delivered_cfm.likely / size

    def _findings(self, check: str) -> list[Finding]:
        if self.verdict is None:
            return []
        return [
            one
            for mode in self.verdict.modes.values()
            for one in mode.findings
            if one.check == check
        ]


def _how_bad(finding: Finding) -> tuple[int, float]:
    return _WORSE.index(finding.status), finding.over_share


def cautions_of(job: Job, verdict: Verdict | None = None, said: str = "") -> tuple[Caution, ...]:
    """The cautions that are on in a judged house, the gravest first.

    Args:
        job: What is known.
        verdict: What the engine says of it; None before anything was judged.
        said: Everything that was typed.

    Returns:
        Those whose trigger is on, and those that a remedy told of brings with it.
    """
    on = {one.slug: one for one in cautions_for(JudgedHouse(job, verdict, said.lower()))}
    for remedy in () if verdict is None else verdict.remedies:
        for row in CAUTIONS:
            if row.slug in remedy.cautions and row.slug not in on:
                because = f"it goes with: {remedy.words}"
                on[row.slug] = Caution(row.slug, row.gravity, row.words, because)
    order = {row.slug: place for place, row in enumerate(CAUTIONS)}
    return tuple(sorted(on.values(), key=lambda one: (one.gravity, order[one.slug])))
