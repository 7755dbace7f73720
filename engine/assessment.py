"""A job put to every check, in every mode and at every blower setting it may use.

`assess` is the cheap half of judging: it draws the house, runs the checks and picks the best
setting of each mode. What is said of it, and what would change it, is `engine.judge`'s.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from engine.arrays import Array
from engine.checks.blower import blower
from engine.checks.context import Context
from engine.checks.equipment import coil_window, coverage, strip_minimum, temperature_rise
from engine.checks.longest_run import longest_run
from engine.checks.openings import return_openings, supply_registers
from engine.checks.parts import aspect_ratios, coil_drop, filter_drop, filter_face
from engine.checks.raw import Raw
from engine.checks.readings import readings
from engine.checks.rooms import starved_branch
from engine.checks.velocity import velocities
from engine.floor import has_reading_with_airflow
from engine.job.delivered import Delivered, delivered_by_kind, delivered_by_table
from engine.job.evidence import Posterior
from engine.job.found import Evidence, evidence_of, has_readings, with_evidence
from engine.job.job import BlowerSetting, Job
from engine.job.lengths import lengths_of
from engine.job.modes import Mode
from engine.job.openings import filters_of, openings_of, registers_of
from engine.job.sample import House, Mask, draw
from engine.job.sections import ROLES, ducts_of
from engine.job.system import System, system_of
from engine.job.targets import Target, air_ratio, modes_of, target_of
from engine.job.unseen import unseen_of
from engine.trade.limits import LIMITS, Limits, Role, velocity_limits
from engine.trade.materials import Material
from engine.verdict import Doubt

__all__ = ["SAMPLES", "Assessment", "ModeAssessment", "assess", "assess_house"]

SAMPLES: Final = 4096


@dataclass(frozen=True, slots=True)
class ModeAssessment:
    """One mode, at its best setting.

    Attributes:
        mode: The mode.
        target: What air it needs.
        setting: The best setting's name; empty without a table.
        raws: Every finding at that setting.
        over: Samples in which some voting finding is over, (n,).
        delivered: What the blower gives at that setting.
        quiet_cfm: The most air these ducts carry within every largest speed, (n + 1,).
        over_by_setting: Share of samples with something over, for every setting that is allowed.
    """

    mode: Mode
    target: Target
    setting: str
    raws: tuple[Raw, ...]
    over: Mask
    delivered: Delivered
    quiet_cfm: Array
    over_by_setting: Mapping[str, float]

    @property
    def over_share(self) -> float:
        """Share of samples in which the mode doesn't carry."""
        return float(np.mean(self.over))


@dataclass(frozen=True, slots=True, eq=False)
class Assessment:
    """A job put to every check; equal to itself alone.

    Attributes:
        job: What is known.
        house: The house as arrays; every quantity drawn is in `house.drawn`.
        system: What the blower pushes against.
        modes: In the order of `Mode`.
        doubts: Contradictions among readings or with the sizes.
        effective_samples: Effective number of samples.
        evidence: What readings said of the ducts; None without any.
    """

    job: Job
    house: House
    system: System
    modes: Mapping[Mode, ModeAssessment]
    doubts: tuple[Doubt, ...]
    effective_samples: float
    evidence: Evidence | None = None


def assess(
    job: Job,
    *,
    samples: int = SAMPLES,
    seed: int = 0,
    limits: Limits = LIMITS,
    evidence: Evidence | None = None,
    posterior: Posterior | None = None,
    as_found: Job | None = None,
) -> Assessment:
    """Put a job to every check.

    Args:
        job: What is known.
        samples: Possible houses drawn beside the central one.
        seed: The same job, samples and seed give the same assessment.
        limits: The office's figures.
        evidence: What readings said of the house this job is an edit of; None reads the job's own.
        posterior: Of the job's own readings, where an assessment with at least as many samples
            has found it already.
        as_found: The job this one is an edit of, if it is one.
    """
    house = draw(job, samples, seed, as_found=as_found)
    return assess_house(house, limits=limits, evidence=evidence, posterior=posterior)


def assess_house(
    house: House,
    *,
    limits: Limits = LIMITS,
    evidence: Evidence | None = None,
    posterior: Posterior | None = None,
) -> Assessment:
    """Put a house that was drawn already to every check; see `assess`.

    Args:
        house: As drawn; what it holds already isn't drawn again.
        limits: The office's figures.
        evidence: As in `assess`.
        posterior: As in `assess`.
    """
    job = house.job
    targets = {mode: target_of(house, mode, limits) for mode in modes_of(job)}
    known = [target for target in targets.values() if target.known]
    reference = max(target.likely_cfm for target in known or targets.values())
    system = system_of(house, reference, _cooling_cfm(targets))
    if evidence is None and has_readings(job):
        evidence = evidence_of(house, system, posterior)
    doubts: tuple[Doubt, ...] = ()
    effective = float(house.draws.samples)
    if evidence is not None:
        system = with_evidence(house, system, evidence)
        doubts = evidence.posterior.doubts
        effective = min(effective, evidence.posterior.effective_samples)
    common = _common(house, limits, system, targets)
    modes = {mode: _assess_mode(context) for mode, context in common.items()}
    return Assessment(job, house, system, modes, doubts, effective, evidence)


def _cooling_cfm(targets: Mapping[Mode, Target]) -> Array | None:
    """Airflow at which a coil's drop would be listed; None where nothing in the air is cooled."""
    for mode in (Mode.COOLING_HIGH, Mode.HEAT_PUMP_HEATING, Mode.COOLING_LOW):
        if mode in targets:
            return targets[mode].airflow_cfm
    return None


def _common(
    house: House, limits: Limits, system: System, targets: Mapping[Mode, Target]
) -> dict[Mode, Context]:
    ducts = tuple(duct for name in ROLES for duct in ducts_of(house, name))
    openings, filters = openings_of(house), filters_of(house)
    registers, lengths, ratio = registers_of(house), lengths_of(house), air_ratio(house)
    return {
        mode: Context(
            house,
            mode,
            target,
            limits,
            ducts,
            openings,
            filters,
            registers,
            lengths,
            system,
            ratio,
            unseen=unseen_of(house),
        )
        for mode, target in targets.items()
    }


def _assess_mode(context: Context) -> ModeAssessment:
    standing = _standing(context) if context.target.least_cfm is None else None
    best: tuple[tuple[float, float, float, float], ModeAssessment] | None = None
    shares: dict[str, float] = {}
    for setting in _allowed(context):
        delivered = _operating(context, setting)
        target = context.target.met_by(delivered.airflow_cfm) if setting else context.target
        here = replace(context, delivered=delivered, target=target)
        fixed = standing or _standing(here)
        raws = _at_setting(here, setting)
        own = _any_over(context, raws)
        over = _any_over(context, fixed) | own
        shares[delivered.setting] = float(np.mean(over[1:]))
        tight = float(np.mean([raw.tight_share for raw in raws if raw.votes] or [0.0]))
        off = abs(float(np.log(delivered.airflow_cfm[0] / context.target.likely_cfm)))
        # where ducts alone fail every setting, the one that is best by itself is still the best
        rank = (shares[delivered.setting], float(np.mean(own[1:])), tight, off)
        if best is None or rank < best[0]:
            best = (
                rank,
                ModeAssessment(
                    context.mode,
                    target,
                    delivered.setting,
                    (*fixed, *raws),
                    over[1:],
                    delivered,
                    _quiet_cfm(context),
                    shares,
                ),
            )
    assert best is not None  # without a table there is the one believed blower
    return best[1]


def _standing(context: Context) -> list[Raw]:
    """Checks that don't ask what the blower gives, but at the target."""
    return [
        *velocities(context),
        *return_openings(context),
        *supply_registers(context),
        *filter_drop(context),
        *filter_face(context),
        *coil_drop(context),
        *aspect_ratios(context),
        *readings(context),
        *starved_branch(context),
    ]


def _allowed(context: Context) -> tuple[BlowerSetting | None, ...]:
    """Settings that the mode may use; None stands for a blower without a table."""
    settings = tuple(
        setting
        for setting in context.job.blower
        if not setting.modes or context.mode in setting.modes
    )
    return settings or (None,)


def _operating(context: Context, setting: BlowerSetting | None) -> Delivered:
    if setting is None:
        return delivered_by_kind(
            context.house, context.system, context.mode, context.target_cfm, context.ratio
        )
    return delivered_by_table(context.house, setting, context.system, context.mode, context.ratio)


def _at_setting(context: Context, setting: BlowerSetting | None) -> list[Raw]:
    return [
        *blower(context, None if setting is None else setting.table),
        *temperature_rise(context),
        *coil_window(context),
        *coverage(context),
        *strip_minimum(context),
        *longest_run(context, setting, has_reading=has_reading_with_airflow(context.job)),
    ]


def _any_over(context: Context, raws: list[Raw]) -> Mask:
    over = np.zeros(context.house.members, dtype=bool)
    for raw in raws:
        if raw.votes:
            over |= raw.judged.over
    return over


def _quiet_cfm(context: Context) -> Array:
    """The most air that stays within every largest speed, (n + 1,)."""
    most = context.house.full(np.inf)
    everywhere = np.ones(context.house.members, dtype=bool)
    ducts = [(duct, everywhere) for duct in context.ducts]
    for duct, present in (*ducts, *((one.duct, one.present) for one in context.unseen)):
        rigid = velocity_limits(duct.role, Material.GALVANIZED, context.limits).maximum_fpm
        flex = velocity_limits(duct.role, Material.FLEX, context.limits).maximum_fpm
        speed = np.where(duct.flexible, flex, rigid)
        carried = speed * duct.total_area_ft2 / np.maximum(duct.share, 1e-3)
        most = np.where(present, np.minimum(most, carried), most)
    openings = context.openings
    if openings is not None:
        plain = velocity_limits(Role.RETURN_GRILLE, limits=context.limits).maximum_fpm
        filtered = velocity_limits(Role.FILTER_GRILLE, limits=context.limits).maximum_fpm
        speed = np.where(openings.filtered, filtered, plain)
        most = np.minimum(most, speed * openings.area_ft2)
    return most
