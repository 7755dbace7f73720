"""`trunktalk read`: what is read in a loosely typed answer, alone or line by line."""

import json
from typing import Any, TextIO

from intake.commands.told import ToldError
from intake.jsonl import finite
from intake.reading.corpus import as_mapping, describe, read_line
from intake.reading.read import FIELDS, read

__all__ = ["read_lines", "read_one"]


def read_one(field: str, text: str, question: str, choices: tuple[str, ...], form: str) -> str:
    """One answer, read.

    Args:
        field: The kind of answer wanted.
        text: As typed.
        question: The words asked; may be empty.
        choices: Allowed words, for a choice.
        form: "text" or "json".

    Raises:
        ToldError: There is no such field.
    """
    if field not in FIELDS:
        raise ToldError(f"There is no field {field!r}; the fields are {', '.join(FIELDS)}.")
    reading = read(field, text, question=question, choices=choices)
    return describe(reading, field) if form == "text" else _line(as_mapping(reading))


def read_lines(stdin: TextIO, stdout: TextIO) -> int:
    """Read JSON objects, one a line; write what each comes to, one a line.

    An object has `field` and `text`, and where they matter `question`, `choices`, `asked_field`,
    `previous`; an `id` comes back. A line that can't be used gets {"error": "..."}.

    Returns:
        How many lines couldn't be used.
    """
    refused = 0
    for line in stdin:
        if not line.strip():
            continue
        try:
            record = _record(line)
            given = {"id": record["id"]} if "id" in record else {}
            answer = {**given, **read_line(record)}
        except ToldError as refusal:
            refused += 1
            answer = {"error": refusal.message}
        stdout.write(_line(answer) + "\n")
        stdout.flush()
    return refused


def _record(line: str) -> dict[str, Any]:
    try:
        record = json.loads(line.lstrip("\ufeff"))
    except (ValueError, RecursionError) as error:
        raise ToldError('this line is no JSON object; send {"field": ..., "text": ...}') from error
    if not isinstance(record, dict):
        raise ToldError('this line is no JSON object; send {"field": ..., "text": ...}')
    for name in ("field", "text"):
        if not isinstance(record.get(name), str):
            raise ToldError(f"{name!r} is missing or no text")
    if record["field"] not in FIELDS:
        raise ToldError(f"there is no field {record['field']!r}; there are {', '.join(FIELDS)}")
    for name in ("question", "asked_field"):
        if not isinstance(record.get(name, ""), str | None):
            raise ToldError(f"{name!r} is no text")
    choices = record.get("choices") or []
    if not (isinstance(choices, list) and all(isinstance(one, str) for one in choices)):
        raise ToldError("'choices' is no list of words")
    before = record.get("previous")
    if before is not None and not (
        isinstance(before, dict)
        and isinstance(before.get("field"), str)
        and isinstance(before.get("text"), str)
    ):
        raise ToldError("'previous' needs a field and a text, both text")
    return record


def _line(answer: dict[str, Any]) -> str:
    return json.dumps(finite(answer), allow_nan=False)
