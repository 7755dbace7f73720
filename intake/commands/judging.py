"""`trunktalk judge`: facts in a file -> verdict."""

import json
import sys
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import Any

from engine.job.job import Job
from engine.judge import judge
from intake.commands.limits import turned_by
from intake.commands.told import ToldError

__all__ = ["job_of_file", "judge_file"]

LARGEST_BYTES = 4_000_000
"""A file of facts is a few kilobytes; something larger is something else."""

SENSELESS = 1e15


def judge_file(
    source: str, form: str, *, nothing_more: bool = False, limits: Iterable[str] = ()
) -> str:
    """The verdict on the facts of a file.

    Args:
        source: Path of a JSON file; "-" is the input.
        form: "markdown" or "json".
        nothing_more: No further fact can be had; what can't be said is then decided.
        limits: Limits that the office turns, NAME=VALUE each.

    Raises:
        ToldError: The file can't be read or is no JSON object.
        EngineError: A fact is unknown, malformed or impossible; names its key.
    """
    from intake.report.content import content_of

    job = job_of_file(source)
    used = turned_by(limits)
    verdict = judge(job, limits=used, collectable=() if nothing_more else None)
    content = content_of(job, verdict, limits=used)
    if form == "json":
        from intake.report.json import report_json

        return report_json(content)
    from intake.report.markdown import report_markdown

    return report_markdown(content)


def job_of_file(source: str) -> Job:
    """The job that a file of facts tells.

    Args:
        source: Path of a JSON file; "-" is the input.

    Raises:
        ToldError: The file can't be read or is no JSON object.
        EngineError: A fact is unknown, malformed or impossible; names its key.
    """
    from engine.job.loading import job_from_mapping

    job: Job = job_from_mapping(_mapping(_bytes(source), source), whole_lists=True)
    return job


def _bytes(source: str) -> bytes:
    try:
        if source == "-":
            read = sys.stdin.buffer.read(LARGEST_BYTES + 1)
        else:
            with Path(source).open("rb") as file:
                read = file.read(LARGEST_BYTES + 1)
    except OSError as error:
        raise ToldError(f"{source} can't be read: {error.strerror or error}.") from error
    if len(read) > LARGEST_BYTES:
        raise ToldError(f"{_named(source)} is larger than any file of facts (4 MB).")
    return read


def _mapping(read: bytes, source: str) -> dict[str, Any]:
    named = _named(source)
    try:
        text = read.decode("utf-16" if read[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8-sig")
        facts = json.loads(text, object_pairs_hook=_once)
    except UnicodeDecodeError as error:
        raise ToldError(f"{named} is no text in UTF-8.") from error
    except json.JSONDecodeError as error:
        raise ToldError(
            f"{named} is no JSON: {error.msg}, line {error.lineno}, column {error.colno}."
        ) from error
    except (RecursionError, ValueError) as error:
        raise ToldError(f"{named} is no usable JSON: it is nested too deep or too long.") from error
    if not isinstance(facts, dict):
        raise ToldError(f'{named} holds no JSON object; facts go in as {{"KEY": VALUE, ...}}.')
    _refuse_what_no_number_is(facts, "")
    return facts


def _once(pairs: Sequence[tuple[str, Any]]) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for key, value in pairs:
        if key in found:
            raise ToldError(f"{key}: is stated twice; state it once.")
        found[key] = value
    return found


def _refuse_what_no_number_is(value: object, key: str) -> None:
    """Refuse NaN, infinity and numbers beyond all sense, wherever they stand."""
    match value:
        case bool():
            return
        case int() | float():
            if not abs(value) < SENSELESS:
                raise ToldError(f"{key}: takes a finite number; leave it out if nobody knows it.")
        case dict():
            for name, inner in value.items():
                _refuse_what_no_number_is(inner, f"{key}.{name}" if key else name)
        case list():
            for index, inner in enumerate(value):
                _refuse_what_no_number_is(inner, f"{key}.{index}")
        case _:
            return


def _named(source: str) -> str:
    return "The input" if source == "-" else source
