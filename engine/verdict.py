"""What the engine says about a job: findings, statuses, remedies. Data only."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from engine.job.modes import Mode

__all__ = [
    "Assumption",
    "Doubt",
    "Finding",
    "FindingStatus",
    "Harm",
    "ModeStatus",
    "ModeVerdict",
    "Part",
    "PressureShare",
    "Remedy",
    "RemedySet",
    "Spread",
    "TurnsAt",
    "Verdict",
    "Wanted",
    "ZoneVerdict",
]


class FindingStatus(StrEnum):
    """How one figure stands against its limits; a value equal to a limit passes."""

    FINE = "fine"
    TIGHT = "tight"
    OVER = "over"


class ModeStatus(StrEnum):
    """What is said of one airflow mode."""

    CARRIES = "carries"
    CARRIES_WITH_CHANGES = "carries_with_changes"
    WONT_CARRY = "wont_carry"
    CANT_SAY = "cant_say"


class Part(StrEnum):
    """What can hold a mode back."""

    SUPPLY_TRUNK = "supply_trunk"
    SUPPLY_BRANCHES = "supply_branches"
    RETURN_DROP = "return_drop"
    RETURN_TRUNK = "return_trunk"
    RETURN_OPENINGS = "return_openings"
    FILTER = "filter"
    COIL = "coil"
    BLOWER = "blower"
    EQUIPMENT = "equipment"


class Harm(StrEnum):
    """What a finding that is over does."""

    NOISE = "noise"
    AIR = "air"
    EQUIPMENT = "equipment"
    HEALTH = "health"


@dataclass(frozen=True, slots=True)
class Spread:
    """A figure over the samples: its 10th, 50th and 90th percentile."""

    low: float
    likely: float
    high: float


@dataclass(frozen=True, slots=True)
class TurnsAt:
    """The value of a fact at which a finding's status turns.

    Attributes:
        key: The fact.
        value: Where it turns, in the fact's unit.
        holds_while: "at least" or "at most": the side on which today's status holds.
    """

    key: str
    value: float
    holds_while: str


@dataclass(frozen=True, slots=True)
class PressureShare:
    """What one part takes of total external static.

    Attributes:
        part: "return", "filter", "coil", "strips" or "supply".
        inwc: What it takes, in wc.
        share: That over the total.
        usual_share: What it may take of the rating, as a share of one.
    """

    part: str
    inwc: float
    share: float
    usual_share: float


@dataclass(frozen=True, slots=True)
class Finding:
    """One question put to the ducts, with its arithmetic.

    Attributes:
        check: The check's name ("trunk_velocity", "filter_grille_velocity", ...).
        part: What would hold the mode back.
        mode: The airflow mode.
        where: The place, for a person ("supply trunk 1").
        figure: The figure at the likely values.
        unit: Its unit.
        recommended: Limit above (or below) which it is tight; None if there is none.
        maximum: Limit beyond which it is over; None if there is none.
        ratio: Figure over its maximum (over its recommended limit without one); None
            where neither exists. Limits that are floors are turned over, so that more
            than 1 is always bad.
        status: At the likely values.
        over_share: Share of samples in which it is over.
        tight_share: Share of samples in which it is tight.
        harm: What it does.
        spread: The figure over the samples.
        rests_on: Keys of the facts it is computed from, stated ones first.
        known: Keys among them that somebody stated.
        turns_at: Where the status turns; None if nothing a person can state turns it.
        formula: The arithmetic with its numbers put in.
        source: Where the limit is from.
        setting: The blower setting it was judged at, where that matters.
        because: For a blower that is over, or a reading above the rating: the parts that cause
            it, worst first.
        note: A further true sentence for a person; may be empty.
        votes: False for a finding that only explains.
        shares: For a finding about external static: what each part takes of it, as far as known.
    """

    check: str
    part: Part
    mode: Mode
    where: str
    figure: float
    unit: str
    recommended: float | None
    maximum: float | None
    ratio: float | None
    status: FindingStatus
    over_share: float
    tight_share: float
    harm: Harm
    spread: Spread
    rests_on: tuple[str, ...]
    known: tuple[str, ...]
    turns_at: TurnsAt | None
    formula: str
    source: str
    setting: str = ""
    because: tuple[str, ...] = ()
    note: str = ""
    votes: bool = True
    shares: tuple[PressureShare, ...] = ()


@dataclass(frozen=True, slots=True)
class Remedy:
    """One change to the house or the choice of equipment.

    Attributes:
        key: Own short name ("larger_return_drop").
        words: What to do, for a person, with the sizes.
        effort_hours: Low and high effort.
        edits_trunk: Whether it widens, doubles or replaces a trunk.
        clears: What it does alone, per mode: the status when re-judged with it.
        buys: One sentence: what it buys alone.
        cautions: Slugs of cautions it switches on.
    """

    key: str
    words: str
    effort_hours: tuple[float, float]
    edits_trunk: bool
    clears: Mapping[Mode, ModeStatus]
    buys: str
    cautions: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class RemedySet:
    """Changes that together make every mode of `modes` carry."""

    remedies: tuple[str, ...]
    modes: tuple[Mode, ...]
    effort_hours: tuple[float, float]
    confidence: float


@dataclass(frozen=True, slots=True)
class ModeVerdict:
    """What is said of one mode.

    Attributes:
        mode: The mode.
        status: What is said.
        confidence: Share of samples that agree with the status.
        borderline: Nothing more can be collected and neither side reaches its share.
        over_share: Share of samples in which some finding is over.
        setting: The blower setting the verdict is of; empty without a table.
        target_cfm: What the mode needs.
        delivered_cfm: What it will get at the blower; None if that can't be said.
        quiet_capacity_cfm: The most these ducts carry within every speed limit, CFM.
        findings: All findings of this mode, worst first.
        changes: The cheapest sufficient set for this mode; None if none or not needed.
        unmet_floor: What must be known before `carries` may be said, still missing:
            fact keys or list names, and readings that contradict the rest.
        reasons: Names of the deciding findings' checks, worst first.
        treat_as: "wont_carry" when it can't be said and nothing more is to be had.
    """

    mode: Mode
    status: ModeStatus
    confidence: float
    borderline: bool
    over_share: float
    setting: str
    target_cfm: Spread
    delivered_cfm: Spread | None
    quiet_capacity_cfm: Spread | None
    findings: tuple[Finding, ...]
    changes: RemedySet | None = None
    unmet_floor: tuple[str, ...] = ()
    reasons: tuple[str, ...] = ()
    treat_as: ModeStatus | None = None


@dataclass(frozen=True, slots=True)
class ZoneVerdict:
    """A zoned system with its smallest zone alone.

    Attributes:
        ducts: What the zone's ducts are called.
        open_fraction: Its supply registers over all of the house.
        modes: Of the lowest stage of cooling and that of heating; without remedies.
        words: What is said of it, for a person.
    """

    ducts: tuple[str, ...]
    open_fraction: float
    modes: Mapping[Mode, ModeVerdict]
    words: str


@dataclass(frozen=True, slots=True)
class Assumption:
    """A fact nobody stated that the verdict rests on; the heavier `weight`, the more it moves."""

    key: str
    meaning: str
    low: float | None
    likely: float | str
    high: float | None
    unit: str
    source: str
    weight: float


@dataclass(frozen=True, slots=True)
class Wanted:
    """A fact worth collecting next, and the sentence that says why."""

    key: str
    meaning: str
    why: str


@dataclass(frozen=True, slots=True)
class Doubt:
    """A contradiction among the readings or with the geometry.

    Attributes:
        chi_square: Misfit at the best fit.
        reading: Key of the reading whose removal lowers it most.
        slip: The usual slip that repairs it ("sign", "decimal_point", "ports_swapped",
            "pascal"); empty if none does.
        look_for: What to look for in the house.
        words: A sentence for a person.
    """

    chi_square: float
    reading: str
    slip: str
    look_for: str
    words: str


@dataclass(frozen=True, slots=True)
class Verdict:
    """Everything the engine says about a job.

    Attributes:
        modes: By mode, in the order of `Mode`.
        remedies: Every remedy that was tried and helps, cheapest first.
        changes: The cheapest set with which every mode carries; None if none or not needed.
        assumed: Assumptions, most influential first.
        collect_next: Facts worth collecting, worthiest first.
        doubts: Contradictions found.
        refused: Questions refused by name, with the reason.
        effective_samples: Effective number of samples behind the shares.
        samples: Samples drawn.
        smallest_zone: A zoned system's smallest zone alone, where its ducts are known.
    """

    modes: Mapping[Mode, ModeVerdict]
    remedies: tuple[Remedy, ...] = ()
    changes: RemedySet | None = None
    assumed: tuple[Assumption, ...] = ()
    collect_next: tuple[Wanted, ...] = ()
    doubts: tuple[Doubt, ...] = ()
    refused: tuple[str, ...] = ()
    effective_samples: float = 0.0
    samples: int = 0
    smallest_zone: ZoneVerdict | None = None
