"""The pieces of a report's content: frozen, in words, with text as it was typed."""

from dataclasses import dataclass

__all__ = ["Bar", "ChangeSet", "Line", "ModeContent", "Reason", "Row"]


@dataclass(frozen=True, slots=True)
class Bar:
    """A figure against its limits as places on a scale of 0 to 100, with the same as text."""

    figure_pct: float
    recommended_pct: float | None
    maximum_pct: float | None
    figure: str
    recommended: str
    maximum: str


@dataclass(frozen=True, slots=True)
class Reason:
    """One finding that decides a mode, with its arithmetic."""

    part: str
    status: str
    harm: str
    words: str
    odds: str
    turns: str
    formula: str
    source: str
    bar: Bar | None


@dataclass(frozen=True, slots=True)
class Row:
    """One check of a mode, in the table of all checks."""

    what: str
    figure: str
    limits: str
    status: str
    source: str


@dataclass(frozen=True, slots=True)
class ModeContent:
    """One airflow mode.

    Attributes:
        name: As the trade calls it.
        status: The engine's word for its status, for looks.
        told: The status in words for a table.
        target: What it needs.
        delivered: What it will get; empty if that can't be said.
        sure: How sure.
        setting: The blower setting it is of; empty without a table.
        held_back_by: The parts whose findings are over.
        sentence: The status in a sentence.
        reasons: What decides it, worst first.
        notes: What only explains, and is worth saying.
        rows: Every check.
        same_as: The earlier mode that has the same reasons and notes; empty if none does.
    """

    name: str
    status: str
    told: str
    target: str
    delivered: str
    sure: str
    setting: str
    held_back_by: str
    sentence: str
    reasons: tuple[Reason, ...]
    notes: tuple[Reason, ...]
    rows: tuple[Row, ...]
    same_as: str = ""


@dataclass(frozen=True, slots=True)
class Line:
    """A labelled line: a change, an assumption, a limit, a thing to collect."""

    label: str
    text: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class ChangeSet:
    """Changes that are enough together, for every mode or for some."""

    purpose: str
    effort: str
    sure: str
    changes: tuple[Line, ...]
