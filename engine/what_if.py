"""What if: other equipment on the same ducts, judged beside the job as it is; nothing is kept.

A candidate is a few edits of a job. What they bring with them is done too: the airflow of another
size, the heating air of another furnace, and that the figures of the old pieces no longer hold.
Whatever is known or believed of the ducts stays.
"""

from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass, field, replace
from types import MappingProxyType
from typing import Final

from engine.assessment import SAMPLES, Assessment, assess
from engine.checks.raw import spread_of
from engine.errors import FactError
from engine.floor import OF_THE_EQUIPMENT, unmet_floor
from engine.job.belief import Belief, Between, How, Known, OneOf, Scalar
from engine.job.job import Job
from engine.job.modes import Mode
from engine.job.sample import draw
from engine.job.targets import target_of
from engine.judge import SURE, judge
from engine.trade.limits import LIMITS, Limits
from engine.verdict import Spread, Verdict

__all__ = [
    "BLOWER_TABLES",
    "COOLING_ROWS",
    "SOLD_TONS",
    "Candidate",
    "LargestQuiet",
    "candidate_job",
    "compare",
    "judge_candidate",
    "largest_quiet",
    "no_longer_held",
]

SOLD_TONS: Final = (1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0)
"""Nominal cooling sizes that are sold for houses (common practice, no published source)."""

BLOWER_TABLES: Final = "equipment.blower_tables"
COOLING_ROWS: Final = "equipment.cooling_rows"
"""Tables that a job holds beside its facts, by the names that they have in a file of facts."""

_WITH_TONS: Final = (Mode.COOLING_HIGH, Mode.COOLING_LOW, Mode.HEAT_PUMP_HEATING)
"""Modes whose airflow goes with the cooling size."""

_TONS: Final = "equipment.cooling_tons"
_INPUT: Final = "equipment.heating_input_btuh"
_EFFICIENCY: Final = "equipment.heating_efficiency_fraction"
_OF_THE_COIL: Final = ("new.coil_drop_inwc", "new.coil_drop_at_cfm")
_OF_THE_BLOWER: Final = (
    "equipment.rated_static_inwc",
    "equipment.max_static_inwc",
    "new.cabinet_width_in",
)
_OF_THE_FILTER: Final = ("new.filter_drop_inwc", "new.filter_drop_at_cfm")


@dataclass(frozen=True, slots=True)
class Candidate:
    """Other equipment, as a few edits of a job; None leaves a thing as it is.

    Attributes:
        tons: Nominal cooling size.
        airflow_cfm: Airflow wanted, by mode, actual CFM.
        coil_drop_inwc: The coil's wet drop, in wc.
        coil_drop_at_cfm: Airflow that drop is listed at; None takes that of cooling.
        filter_width_in: Printed width of the filter.
        filter_height_in: Printed height.
        filter_depth_in: Printed thickness.
        heating_input_btuh: Burner input of the furnace, Btu/h.
        heating_efficiency_fraction: Its output over its input.
        rise_low_degf: Least temperature rise on its plate.
        rise_high_degf: Greatest temperature rise on its plate.
        facts: Further facts by dotted key, set as they are.
    """

    tons: float | None = None
    airflow_cfm: Mapping[Mode, float] = field(default_factory=lambda: MappingProxyType({}))
    coil_drop_inwc: float | None = None
    coil_drop_at_cfm: float | None = None
    filter_width_in: float | None = None
    filter_height_in: float | None = None
    filter_depth_in: float | None = None
    heating_input_btuh: float | None = None
    heating_efficiency_fraction: float | None = None
    rise_low_degf: float | None = None
    rise_high_degf: float | None = None
    facts: Mapping[str, Scalar] = field(default_factory=lambda: MappingProxyType({}))


@dataclass(frozen=True, slots=True)
class LargestQuiet:
    """The largest cooling size that a house's ducts carry.

    Attributes:
        tons: That size, of `SOLD_TONS`; None if they carry not even the smallest, or if it can't
            be said.
        airflow_cfm: Its airflow in full cooling; None where `tons` is.
        per_ton_cfm: Airflow per ton it was looked for with.
        quiet_cfm: The most air within every largest speed; None if that can't be said.
        needs: Facts of that equipment to be known before it may be called carried.
        unmet: Facts of the ducts that are missing, without which no size may be called carried.
    """

    tons: float | None
    airflow_cfm: float | None
    per_ton_cfm: float
    quiet_cfm: Spread | None
    needs: tuple[str, ...] = ()
    unmet: tuple[str, ...] = ()


def candidate_job(job: Job, candidate: Candidate) -> Job:
    """The job with a candidate's equipment in place of its own.

    Another size: airflows that were stated, or taken from the maker's rows, stay at the same CFM
    per ton; the coil's drop and the cooling rows are forgotten, and so is the blower's table where
    the blower comes in the same box (with a furnace it stays the furnace's). Another furnace: the
    heating airflow follows from its output and the rise, low fire keeps its share of the input,
    and the blower's table is forgotten. Another filter: its listed drop is forgotten. What the
    candidate names itself stands. Everything else stays: the kind of motor, the rise on the plate,
    the efficiency, the ducts.

    Raises:
        FactError: A value that no house has, or no such fact.
    """
    named = dict(candidate.facts)
    candidate = replace(
        candidate,
        tons=_named(candidate.tons, named.pop(_TONS, None), _TONS),
        heating_input_btuh=_named(candidate.heating_input_btuh, named.pop(_INPUT, None), _INPUT),
        heating_efficiency_fraction=_named(
            candidate.heating_efficiency_fraction, named.pop(_EFFICIENCY, None), _EFFICIENCY
        ),
        facts=named,
    )
    after = _with_tons(job, candidate)
    after = _with_furnace(after, candidate)
    after = _with_filter(after, candidate)
    if candidate.coil_drop_inwc is not None:
        after = _without(after, _OF_THE_COIL)
        after = _with(after, "new.coil_drop_inwc", candidate.coil_drop_inwc)
        after = _with(after, "new.coil_drop_at_cfm", candidate.coil_drop_at_cfm)
    for mode, airflow_cfm in candidate.airflow_cfm.items():
        after = _with_airflow(after, mode, airflow_cfm)
    for key, value in candidate.facts.items():
        after = _with(after, key, value)
    return after


def no_longer_held(job: Job, after: Job) -> tuple[str, ...]:
    """Facts and tables of the job as it is that say nothing of what a candidate made of it."""
    gone = [key for key in job.beliefs if key not in after.beliefs]
    if job.blower and not after.blower:
        gone.append(BLOWER_TABLES)
    if job.cooling_rows and not after.cooling_rows:
        gone.append(COOLING_ROWS)
    return tuple(gone)


def compare(
    job: Job,
    candidates: Sequence[Candidate],
    *,
    samples: int = SAMPLES,
    seed: int = 0,
    limits: Limits = LIMITS,
    collectable: Collection[str] | None = None,
) -> tuple[Verdict, ...]:
    """Judge a job as it is and with each candidate's equipment, on the same possible houses.

    Args:
        job: What is known; it is left as it is.
        candidates: Other equipment.
        samples: Possible houses drawn.
        seed: The same job, candidates, samples and seed give the same verdicts.
        limits: The office's figures.
        collectable: As in `engine.judge.judge`; the figures of a candidate's own equipment can
            always be had.

    Returns:
        The verdict of the job as it is first, then one of each candidate in order.

    Raises:
        FactError: A candidate holds a value that no house has, or no such fact.
    """
    as_is = assess(job, samples=samples, seed=seed, limits=limits)
    own = judge(
        job, samples=samples, seed=seed, limits=limits, collectable=collectable, assessment=as_is
    )
    tried = (
        judge_candidate(
            as_is, one, samples=samples, seed=seed, limits=limits, collectable=collectable
        )
        for one in candidates
    )
    return (own, *tried)


def judge_candidate(
    as_is: Assessment,
    candidate: Candidate,
    *,
    samples: int = SAMPLES,
    seed: int = 0,
    limits: Limits = LIMITS,
    collectable: Collection[str] | None = None,
) -> Verdict:
    """The verdict of a house with a candidate's equipment.

    Args:
        as_is: The house as it is, with the same samples, seed and limits.
        candidate: Other equipment.
        samples: As in `as_is`.
        seed: As in `as_is`.
        limits: As in `as_is`.
        collectable: As in `compare`.

    Raises:
        FactError: As `candidate_job`.
    """
    after = candidate_job(as_is.job, candidate)
    had = None
    if collectable is not None:
        had = frozenset(collectable) | frozenset(no_longer_held(as_is.job, after))
    return judge(
        after,
        samples=samples,
        seed=seed,
        limits=limits,
        collectable=had,
        assessment=_tried(as_is, after, samples, seed, limits),
    )


def largest_quiet(
    job: Job,
    *,
    samples: int = SAMPLES,
    seed: int = 0,
    limits: Limits = LIMITS,
    assessment: Assessment | None = None,
) -> LargestQuiet | None:
    """The largest cooling size that is sold and that these ducts carry.

    A size is carried if in cooling and heat pump heating nothing is over in at least `SURE` of the
    possible houses. What must be known of the ducts for `carries` must be known here too; what
    must be known of that equipment is named.

    Args:
        job: What is known.
        samples: Possible houses drawn.
        seed: The same job, samples and seed give the same answer.
        limits: The office's figures.
        assessment: Of the same job, samples, seed and limits, where it was made already.

    Returns:
        None where the equipment doesn't cool.
    """
    as_is = assessment or assess(job, samples=samples, seed=seed, limits=limits)
    cooling = as_is.modes.get(Mode.COOLING_HIGH)
    if cooling is None:
        return None
    per_ton = limits.cooling_default_cfm_per_ton.value
    tons = job.number(_TONS)
    if tons is not None and cooling.target.known:
        per_ton = cooling.target.likely_cfm / tons
    known = all(float(value) < float("inf") for value in cooling.quiet_cfm)
    quiet = spread_of(cooling.quiet_cfm) if known else None
    doubted = tuple(doubt.reading for doubt in as_is.doubts if doubt.reading)
    unmet = (*_unmet(as_is, _is_of_the_ducts), *doubted)
    found = LargestQuiet(None, None, per_ton, quiet, unmet=tuple(dict.fromkeys(unmet)))
    if unmet:
        return found
    for size in reversed(SOLD_TONS):
        airflow_cfm = per_ton * size
        if quiet is not None and airflow_cfm > quiet.high:
            continue  # some speed is over in nine of ten
        edits = Candidate(tons=size, airflow_cfm={Mode.COOLING_HIGH: airflow_cfm})
        try:
            after = candidate_job(job, edits)
        except FactError:
            continue  # no equipment of that size moves so much or so little air
        tried = _tried(as_is, after, samples, seed, limits)
        its = [it for mode, it in tried.modes.items() if mode in _WITH_TONS]
        if all(it.over_share <= 1.0 - SURE for it in its):
            needs = _unmet(tried, lambda key: not _is_of_the_ducts(key))
            return replace(found, tons=size, airflow_cfm=airflow_cfm, needs=needs)
    return found


def _unmet(assessment: Assessment, wanted: Callable[[str], bool]) -> tuple[str, ...]:
    """What the floor of evidence lacks in the modes that go with the size."""
    keys = (
        key
        for mode, it in assessment.modes.items()
        if mode in _WITH_TONS
        for key in unmet_floor(assessment.job, mode, it.target)
        if wanted(key) and not key.startswith("target.")
    )
    return tuple(dict.fromkeys(keys))


def _is_of_the_ducts(key: str) -> bool:
    return not key.startswith(OF_THE_EQUIPMENT)


def _tried(as_is: Assessment, after: Job, samples: int, seed: int, limits: Limits) -> Assessment:
    return assess(
        after,
        samples=samples,
        seed=seed,
        limits=limits,
        evidence=as_is.evidence,
        as_found=as_is.job,
    )


def _named(own: float | None, by_key: Scalar | None, key: str) -> float | None:
    if own is not None or by_key is None:
        return own
    if isinstance(by_key, str):
        raise FactError(key, "is held as a word where a number was wanted")
    return float(by_key)


def _with(job: Job, key: str, value: Scalar | None) -> Job:
    """The job with a fact of what would be bought: as ordered, without scatter."""
    return job if value is None else job.with_fact(key, Known(value, How.DOCUMENT))


def _without(job: Job, keys: Sequence[str]) -> Job:
    for key in keys:
        job = job.without(key)
    return job


def _without_blower(job: Job) -> Job:
    return replace(_without(job, _OF_THE_BLOWER), blower=())


def _without_airflow(job: Job, mode: Mode) -> Job:
    """The job without what was said of a mode's airflow, however it was said."""
    names = ("cfm", "rise_degf", "difference_degf", "is_standard_air")
    return _without(job, [f"target.{mode}_{name}" for name in names])


def _with_airflow(job: Job, mode: Mode, airflow_cfm: float) -> Job:
    return _with(_without_airflow(job, mode), f"target.{mode}_cfm", airflow_cfm)


def _has_own_blower(job: Job) -> bool:
    """Whether the blower is a furnace's, which stays when only the cooling gets another size."""
    kind = job.word("equipment.kind")
    return kind in ("furnace", "dual_fuel") or (kind is None and job.is_known(_INPUT))


def _with_tons(job: Job, candidate: Candidate) -> Job:
    tons, was = candidate.tons, job.number(_TONS)
    if tons is None or tons == was:
        return job
    after = job
    for mode in _WITH_TONS:
        if mode not in candidate.airflow_cfm:
            after = _with_same_per_ton(job, after, mode, None if was is None else tons / was)
    after = replace(_without(after, _OF_THE_COIL), cooling_rows=())
    if not _has_own_blower(job):
        after = _without_blower(after)
    return _with(after, _TONS, tons)


def _with_same_per_ton(job: Job, after: Job, mode: Mode, ratio: float | None) -> Job:
    """A mode's airflow at another size; one stated without a size says nothing of another."""
    key = f"target.{mode}_cfm"
    stated = job.stated(key)
    if stated is not None:
        return after.without(key) if ratio is None else after.with_fact(key, _times(stated, ratio))
    if ratio is None or not job.cooling_rows:
        return after
    by_row = target_of(draw(job, 1), mode)
    if by_row.rests_on != (COOLING_ROWS,):
        return after
    return _with(after, key, by_row.likely_cfm * ratio)


def _times(belief: Belief, ratio: float) -> Belief:
    """A number's belief times a factor, known as it was."""

    def times(value: Scalar) -> float:
        assert not isinstance(value, str)  # an airflow or an input is a number
        return value * ratio

    match belief:
        case Known(value=value):
            return replace(belief, value=times(value))
        case Between():
            return replace(
                belief, low=times(belief.low), likely=times(belief.likely), high=times(belief.high)
            )
        case OneOf(weights=weights):
            return replace(belief, weights=tuple((times(value), w) for value, w in weights))


def _with_furnace(job: Job, candidate: Candidate) -> Job:
    burnt, was = candidate.heating_input_btuh, job.number(_INPUT)
    share, share_was = candidate.heating_efficiency_fraction, job.number(_EFFICIENCY)
    other = (burnt is not None and burnt != was) or (share is not None and share != share_was)
    after = job
    if other:
        if burnt is not None:
            after = _with_low_fire(after, None if was is None else burnt / was)
        after = _with_efficiency_of_output(after)
        for fire in ("", "low_"):
            after = after.without(f"equipment.heating_{fire}output_btuh")
        for mode in (Mode.HEATING_HIGH, Mode.HEATING_LOW):
            after = after.without(f"target.{mode}_cfm").without(f"target.{mode}_is_standard_air")
        after = _without_blower(after)
        after = _with(_with(after, _INPUT, burnt), _EFFICIENCY, share)
    after = _with(after, "equipment.rise_low_degf", candidate.rise_low_degf)
    return _with(after, "equipment.rise_high_degf", candidate.rise_high_degf)


def _with_low_fire(job: Job, ratio: float | None) -> Job:
    """Low fire at the same share of the input; forgotten where the input was not known."""
    key = "equipment.heating_low_input_btuh"
    stated = job.stated(key)
    if stated is None:
        return job
    return job.without(key) if ratio is None else job.with_fact(key, _times(stated, ratio))


def _with_efficiency_of_output(job: Job) -> Job:
    """The efficiency that a stated output tells, kept for the other furnace."""
    burnt, made = job.number(_INPUT), job.number("equipment.heating_output_btuh")
    if burnt is None or made is None or job.is_known(_EFFICIENCY):
        return job
    return _with(job, _EFFICIENCY, made / burnt)


def _with_filter(job: Job, candidate: Candidate) -> Job:
    sides = {
        "width_in": candidate.filter_width_in,
        "height_in": candidate.filter_height_in,
        "depth_in": candidate.filter_depth_in,
    }
    if all(value is None for value in sides.values()):
        return job
    entries = tuple(job.entries("filters")) or ("filters.0",)
    after = _without(job, _OF_THE_FILTER)
    for entry in entries:
        for name, value in sides.items():
            after = _with(after, f"{entry}.{name}", value)
    return after
