"""Other equipment as a few edits of a job, with what they bring with them.

The airflow of another size, the heating air of another furnace, and that the figures of the old
pieces no longer hold. Whatever is known or believed of the ducts stays.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from types import MappingProxyType
from typing import Final

from engine.errors import FactError
from engine.job.belief import Belief, Between, How, Known, OneOf, Scalar
from engine.job.job import Job
from engine.job.modes import Mode
from engine.job.sample import draw
from engine.job.targets import target_of

__all__ = [
    "BLOWER_TABLES",
    "COOLING_ROWS",
    "OF_THE_BLOWER",
    "WITH_TONS",
    "Candidate",
    "candidate_job",
    "no_longer_held",
]

BLOWER_TABLES: Final = "equipment.blower_tables"
COOLING_ROWS: Final = "equipment.cooling_rows"
"""Tables that a job holds beside its facts, by the names that they have in a file of facts."""

WITH_TONS: Final = (Mode.COOLING_HIGH, Mode.COOLING_LOW, Mode.HEAT_PUMP_HEATING)
"""Modes whose airflow goes with the cooling size."""

_TONS: Final = "equipment.cooling_tons"
_STAGES: Final = "equipment.stages"
_INPUT: Final = "equipment.heating_input_btuh"
_EFFICIENCY: Final = "equipment.heating_efficiency_fraction"
_OF_THE_COIL: Final = ("new.coil_drop_inwc", "new.coil_drop_at_cfm")
OF_THE_BLOWER: Final = (
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


def candidate_job(job: Job, candidate: Candidate) -> Job:
    """The job with a candidate's equipment in place of its own.

    Another size: airflows that were stated, or taken from the maker's rows, stay at the same CFM
    per ton; the coil's drop and the cooling rows are forgotten, and so is the blower's table where
    the blower comes in the same box (with a furnace it stays the furnace's). Another furnace: the
    heating airflow follows from its output and the rise, low fire keeps its share of the input,
    and the blower's table is forgotten. Other stages are other equipment of the same size, and a
    single stage has no low airflow. Another filter: its listed drop is forgotten. What the
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
    after = _with_stages(after, candidate.facts.get(_STAGES))
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
    return replace(_without(job, OF_THE_BLOWER), blower=())


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
    for mode in WITH_TONS:
        if mode not in candidate.airflow_cfm:
            after = _with_same_per_ton(job, after, mode, None if was is None else tons / was)
    after = replace(_without(after, _OF_THE_COIL), cooling_rows=())
    if not _has_own_blower(job):
        after = _without_blower(after)
    return _with(after, _TONS, tons)


def _with_stages(job: Job, stages: Scalar | None) -> Job:
    """Equipment of the same size with other stages: other rows, and another blower in its box."""
    if stages is None or stages == job.word(_STAGES):
        return job
    after = job if _has_own_blower(job) else _without_blower(job)
    after = _with_same_per_ton(job, after, Mode.COOLING_HIGH, 1.0)
    if stages == "single":
        after = _without_airflow(after, Mode.COOLING_LOW)
    return replace(after, cooling_rows=())


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
