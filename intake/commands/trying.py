"""`trunktalk try`: other equipment on a job's ducts, side by side; nothing is kept."""

import json
import shutil
import textwrap
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from engine.job.job import Job
from engine.job.modes import Mode
from engine.verdict import Verdict
from engine.what_if import (
    Candidate,
    LargestQuiet,
    candidate_job,
    compare,
    largest_quiet,
    no_longer_held,
)
from intake.commands.judging import job_of_file
from intake.commands.reporting import kept_talk
from intake.commands.told import ToldError
from intake.interview.candidates import MOST_CANDIDATES, read_candidate
from intake.telling.names import mode_words
from intake.telling.numbers import cfm, sure
from intake.telling.what_if import (
    decided_by,
    largest_sentence,
    left_out_words,
    status_words,
)

__all__ = ["try_json", "try_text"]

TABLE_COLUMNS: Final = 80
"""Columns of the table; where there are fewer, it is read out line by line."""

_LABEL_COLUMNS: Final = 11
_AS_IS: Final = "as it is"
_KEPT: Final = "Only tried; nothing of it is kept."


@dataclass(frozen=True, slots=True)
class _Column:
    """One way to equip the house.

    Attributes:
        words: What it is called.
        job: What is known then.
        verdict: What is said of it.
        left_out: What was known of the equipment as it is and says nothing of this one.
    """

    words: str
    job: Job
    verdict: Verdict
    left_out: str = ""


def try_text(source: str, withs: Sequence[str], store: Path | None) -> str:
    """The candidates beside the job as it is, as a table; line by line on a narrow terminal.

    Args:
        source: A kept job's id, a file of facts, or "-" for the input.
        withs: Other equipment in loose words, at most `MOST_CANDIDATES`.
        store: File of the jobs; None is the person's own.

    Raises:
        ToldError: The job or a candidate can't be read.
        StoreError: There is no such job, or the store can't be read.
        EngineError: A fact that no house has.
    """
    columns, largest = _tried(source, withs, store)
    narrow = shutil.get_terminal_size((TABLE_COLUMNS, 24)).columns < TABLE_COLUMNS
    lines = _read_out(columns) if narrow else _table(columns)
    notes = [
        f"Not known of {column.words}: {column.left_out}." for column in columns if column.left_out
    ]
    notes += [largest_sentence(largest, columns[0].job), _KEPT]
    return "\n".join([*lines, "", *(_wrapped(note) for note in notes)]) + "\n"


def try_json(source: str, withs: Sequence[str], store: Path | None) -> str:
    """The same as a JSON object: `as_is`, `tried`, `largest_quiet`.

    Raises:
        As `try_text`.
    """
    from intake.report.json import verdict_mapping

    columns, largest = _tried(source, withs, store)
    own, *others = columns
    answer = {
        "as_is": verdict_mapping(own.verdict, own.job),
        "tried": [
            {"with": one.words, "verdict": verdict_mapping(one.verdict, one.job)} for one in others
        ],
        "largest_quiet": _largest_mapping(largest),
    }
    return json.dumps(answer, indent=2, allow_nan=False) + "\n"


def _largest_mapping(found: LargestQuiet | None) -> dict[str, Any] | None:
    if found is None:
        return None
    return {
        "tons": found.tons,
        "airflow_cfm": found.airflow_cfm,
        "per_ton_cfm": found.per_ton_cfm,
        "quiet_cfm": None if found.quiet_cfm is None else found.quiet_cfm.likely,
        "needs": list(found.needs),
        "unmet": list(found.unmet),
    }


def _tried(
    source: str, withs: Sequence[str], store: Path | None
) -> tuple[list[_Column], LargestQuiet | None]:
    if len(withs) > MOST_CANDIDATES:
        raise ToldError(f"At most {MOST_CANDIDATES} fit side by side; give fewer --with.")
    job, collectable = _job_of(source, store)
    words: list[str] = []
    candidates: list[Candidate] = []
    for text in withs:
        found = read_candidate(text, job)
        if isinstance(found, str):
            raise ToldError(f"--with {text!r}: {found}")
        words.append(found.words)
        candidates.append(found.candidate)
    verdicts = compare(job, candidates, collectable=collectable)
    columns = [_Column(_AS_IS, job, verdicts[0])]
    for called, candidate, verdict in zip(words, candidates, verdicts[1:], strict=True):
        after = candidate_job(job, candidate)
        left_out = left_out_words(no_longer_held(job, after), after)
        columns.append(_Column(called, after, verdict, left_out))
    return columns, largest_quiet(job)


def _job_of(source: str, store: Path | None) -> tuple[Job, frozenset[str] | None]:
    """The job and what can still be had of it; a file is told by its name or by being there."""
    bare = source.strip().lstrip("#")
    if source == "-" or (not bare.isdigit() and (Path(source).exists() or "." in source)):
        return job_of_file(source), None
    from intake.interview.conversation import Conversation

    talk = Conversation(kept_talk(source, store)[0])
    return talk.job, talk.collectable if talk.verdict() is not None else None


# ---- as a table, and read out ----


def _modes(columns: Sequence[_Column]) -> list[Mode]:
    return [mode for mode in Mode if any(mode in one.verdict.modes for one in columns)]


def _rows(column: _Column, mode: Mode) -> tuple[tuple[str, str], ...]:
    """What is told of one mode of one column: (label, words)."""
    it = column.verdict.modes.get(mode)
    if it is None:
        return (("wanted", "–"), ("verdict", "not run"), ("delivered", "–"), ("decides", "–"))
    said = status_words(it)
    if said in ("carries", "carries with changes", "won't carry"):
        said = f"{said}, {sure(it.confidence)}"
    air = "can't be said" if it.delivered_cfm is None else cfm(it.delivered_cfm.likely)
    return (
        ("wanted", cfm(it.target_cfm.likely)),
        ("verdict", said),
        ("delivered", air),
        ("decides", decided_by(it, column.job) or "–"),
    )


def _table(columns: Sequence[_Column]) -> list[str]:
    width = (TABLE_COLUMNS - _LABEL_COLUMNS) // len(columns)
    width = min(width, 34)
    lines = _row("", [one.words for one in columns], width)
    for mode in _modes(columns):
        lines += ["", _capital(mode_words(mode))]
        every = [_rows(one, mode) for one in columns]
        for row in zip(*every, strict=True):
            lines += _row(row[0][0], [words for _, words in row], width)
    return lines


def _row(label: str, cells: Sequence[str], width: int) -> list[str]:
    """One row of the table, on as many lines as its longest cell needs."""
    wrapped = [textwrap.wrap(cell, width - 2) for cell in cells]
    lines = []
    for index in range(max(len(cell) for cell in wrapped)):
        head = f"  {label}" if index == 0 and label else ""
        found = [cell[index] if index < len(cell) else "" for cell in wrapped]
        lines.append(
            f"{head:<{_LABEL_COLUMNS + 1}}" + "".join(f"{one:<{width}}" for one in found).rstrip()
        )
    return [line.rstrip() for line in lines]


def _read_out(columns: Sequence[_Column]) -> list[str]:
    lines: list[str] = []
    for column in columns:
        lines += ["", _capital(column.words)] if lines else [_capital(column.words)]
        for mode in _modes(columns):
            if mode not in column.verdict.modes:
                continue
            lines.append(f"{_capital(mode_words(mode))}:")
            lines += [
                _wrapped(f"  {label}: {words}", "    ") for label, words in _rows(column, mode)
            ]
    return lines


def _wrapped(text: str, indent: str = "") -> str:
    columns = min(shutil.get_terminal_size((TABLE_COLUMNS, 24)).columns, TABLE_COLUMNS)
    return textwrap.fill(text, max(columns, 20), subsequent_indent=indent, break_on_hyphens=False)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
