"""The JSON report as pydantic models: the names that outside programs see, plain floats, no NaN."""

from pydantic import BaseModel, ConfigDict

__all__ = [
    "AssumedOut",
    "BookingOut",
    "CautionOut",
    "ChangesOut",
    "DoubtOut",
    "FindingOut",
    "FlagOut",
    "ModeOut",
    "RemedyOut",
    "ReportOut",
    "SpreadOut",
    "StatedOut",
    "TurnsAtOut",
    "TypedOut",
    "VerdictOut",
    "WantedOut",
]


class _Out(BaseModel):
    model_config = ConfigDict(
        strict=True, frozen=True, extra="forbid", allow_inf_nan=False, defer_build=True
    )


class SpreadOut(_Out):
    """A figure over the houses that fit: one in ten lies below low, one in ten above high."""

    low: float
    likely: float
    high: float


class TurnsAtOut(_Out):
    """The value of a fact where a finding's status turns."""

    key: str
    value: float
    holds_while: str


class ShareOut(_Out):
    """What one part takes of total external static, and what it usually may."""

    part: str
    inwc: float
    share: float
    usual_share: float


class FindingOut(_Out):
    """One question put to the ducts."""

    check: str
    part: str
    where: str
    figure: float
    unit: str
    recommended: float | None
    maximum: float | None
    ratio: float | None
    status: str
    harm: str
    probability_over: float
    probability_tight: float
    spread: SpreadOut
    turns_at: TurnsAtOut | None
    rests_on: tuple[str, ...]
    known: tuple[str, ...]
    formula: str
    source: str
    setting: str
    because: tuple[str, ...]
    note: str
    votes: bool
    shares: tuple[ShareOut, ...]
    words: str


class ChangesOut(_Out):
    """Changes that are enough together."""

    remedies: tuple[str, ...]
    modes: tuple[str, ...]
    effort_hours: tuple[float, float]
    confidence: float


class ModeOut(_Out):
    """One airflow mode; plain figures are the likely ones, `*_range` their low and high."""

    status: str
    confidence: float
    borderline: bool
    treat_as: str | None
    probability_over: float
    setting: str
    target_cfm: float
    target_cfm_range: SpreadOut
    delivered_cfm: float | None
    delivered_cfm_range: SpreadOut | None
    quiet_capacity_cfm: float | None
    quiet_capacity_cfm_range: SpreadOut | None
    reasons: tuple[str, ...]
    unmet_floor: tuple[str, ...]
    changes: ChangesOut | None
    findings: tuple[FindingOut, ...]
    words: str


class RemedyOut(_Out):
    """One change that helps."""

    key: str
    words: str
    effort_hours: tuple[float, float]
    edits_trunk: bool
    clears: dict[str, str]
    buys: str
    cautions: tuple[str, ...]


class AssumedOut(_Out):
    """A fact nobody stated that the verdict rests on."""

    key: str
    meaning: str
    low: float | None
    likely: float | str
    high: float | None
    unit: str
    source: str
    weight: float


class WantedOut(_Out):
    """A fact worth collecting next."""

    key: str
    meaning: str
    why: str


class DoubtOut(_Out):
    """A contradiction among the readings or with the geometry."""

    chi_square: float
    reading: str
    slip: str
    look_for: str
    words: str


class CautionOut(_Out):
    """A caution that is on."""

    slug: str
    words: str
    because: str


class ZoneOut(_Out):
    """A zoned system with its smallest zone alone."""

    ducts: tuple[str, ...]
    open_fraction: float
    modes: dict[str, ModeOut]
    words: str


class VerdictOut(_Out):
    """The verdict alone, as one line of JSON carries it."""

    headline: str
    modes: dict[str, ModeOut]
    assumed: tuple[AssumedOut, ...]
    collect_next: tuple[WantedOut, ...]
    remedies: tuple[RemedyOut, ...]
    changes: ChangesOut | None
    doubts: tuple[DoubtOut, ...]
    refused: tuple[str, ...]
    smallest_zone: ZoneOut | None
    samples: int
    effective_samples: float


class StatedOut(_Out):
    """A fact somebody stated, in normal form."""

    key: str
    what: str
    value: str
    how: str


class TypedOut(_Out):
    """A typed line that still stands."""

    question: str
    text: str


class FlagOut(_Out):
    """One reason for more than an ordinary visit."""

    question: str
    hard: bool
    words: str


class BookingOut(_Out):
    """The dispatcher's booking."""

    outcome: str
    told: str
    minutes: int
    decided: str
    for_caller: str
    for_board: str
    flags: tuple[FlagOut, ...]
    bring: tuple[str, ...]
    photos: tuple[str, ...]
    safety: tuple[str, ...]
    measure_first: tuple[str, ...]
    unknown: tuple[str, ...]


class ReportOut(VerdictOut):
    """The verdict with what a report adds."""

    title: str
    cautions: tuple[CautionOut, ...]
    limits_turned: tuple[str, ...]
    answers: tuple[StatedOut, ...]
    typed: tuple[TypedOut, ...]
    booking: BookingOut | None
    defers: str
