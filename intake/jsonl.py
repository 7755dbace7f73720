"""The conversation as JSON, one object a line, for programs.

Out: {"say": [{"speaker", "manner", "text"}], "ask": {"key", "kind", "unit", "choices", "text",
"number"} or null, "ended": false, "verdict": {...} or null, and "booking" where there is one. In:
{"answer": "..."} or the bare text. A line that can't be taken gets {"error": "...", "ask": ...}.
"""

import json
from collections.abc import Callable, Iterable, Mapping
from math import isfinite
from typing import TextIO

from intake.interview.turns import Ask, Say
from intake.keeping.errors import StoreError
from intake.mouth import LONGEST_LINE, Around, Talk, as_lines, is_save, visible

__all__ = ["finite", "run_jsonl"]

Json = None | bool | int | float | str | list["Json"] | dict[str, "Json"]
"""What JSON can say."""

Snapshot = Callable[[], Mapping[str, object]]
"""Gives the verdict (and the booking) as it stands, ready for JSON."""


class _NotTakenError(Exception):
    """A line in can't be taken; the text says what would be."""


def run_jsonl(talk: Talk, stdin: TextIO, stdout: TextIO, around: Around, snapshot: Snapshot) -> int:
    """Hold the conversation until a goodbye or the end of the input.

    Args:
        talk: The conversation.
        stdin: One answer a line, as an object or bare.
        stdout: One object a line, the opening first.
        around: How the report is saved; its farewell goes into the last object as "kept".
        snapshot: The verdict as it stands.

    Returns:
        Exit status: 0.

    Raises:
        StoreError: From the conversation's record: the last answer could not be kept.
    """
    _write(stdout, _turn(talk, talk.opening(), around, snapshot))
    while not talk.left:
        line = stdin.readline()
        if not line:
            break
        if not line.strip():
            continue
        try:
            typed = _answer(line)
        except _NotTakenError as refusal:
            _write(stdout, {"error": str(refusal), "ask": _ask(talk.pending)})
            continue
        if is_save(typed):
            _write(stdout, _saved(around))
        else:
            _write(stdout, _heard(talk, typed, around, snapshot))
    last: dict[str, object] = {
        "say": [],
        "ask": _ask(talk.pending),
        "ended": talk.ended,
        "kept": around.farewell(),
    }
    _write(stdout, last)
    return 0


def finite(value: object) -> Json:
    """The value with nothing in it that JSON can't say: NaN and infinity become null.

    >>> finite({"a": (1.5, float("nan")), 2: True})
    {'a': [1.5, None], '2': True}
    """
    match value:
        case None | bool() | int() | str():
            return value
        case float():
            return value if isfinite(value) else None
        case Mapping():
            return {str(name): finite(inner) for name, inner in value.items()}
        case list() | tuple():
            return [finite(inner) for inner in value]
        case _:
            raise TypeError(f"{type(value).__name__} has no form in JSON")


def _heard(talk: Talk, typed: str, around: Around, snapshot: Snapshot) -> dict[str, object]:
    try:
        says = talk.hear(as_lines(typed))
    except StoreError:
        raise
    except Exception as error:  # told, kept for the end of the program, and the talk goes on
        return {"error": around.fault(error), "ask": None}
    return _turn(talk, says, around, snapshot)


def _turn(talk: Talk, says: Iterable[Say], around: Around, snapshot: Snapshot) -> dict[str, object]:
    said: dict[str, object] = {
        "say": [
            {"speaker": say.speaker.value, "manner": say.manner.value, "text": visible(say.text)}
            for say in says
        ],
        "ask": _ask(talk.pending),
        "ended": talk.ended,
    }
    try:
        return {**said, **snapshot()}
    except Exception as error:  # as above; what was said stands
        return {**said, "verdict": None, "error": around.fault(error)}


def _ask(ask: Ask | None) -> dict[str, object] | None:
    if ask is None:
        return None
    return {
        "key": ask.key,
        "kind": ask.kind,
        "unit": ask.unit,
        "choices": list(ask.choices),
        "text": ask.text,
        "number": ask.number,
    }


def _answer(line: str) -> str:
    text = visible(line).strip()
    if not text.startswith("{"):
        return text
    if len(line) > LONGEST_LINE:
        raise _NotTakenError(f"a line holds at most {LONGEST_LINE} characters")
    try:
        taken = json.loads(line.lstrip("\ufeff"))
    except (ValueError, RecursionError) as error:
        told = error.msg if isinstance(error, json.JSONDecodeError) else "it can't be read"
        raise _NotTakenError(
            f'this line begins like JSON and isn\'t ({told}); send {{"answer": "..."}} or the '
            "bare text"
        ) from error
    if set(taken) != {"answer"}:
        named = ", ".join(repr(visible(name)) for name in taken) or "nothing"
        raise _NotTakenError(f'an answer is {{"answer": "..."}}; this object has {named}')
    if not isinstance(taken["answer"], str):
        raise _NotTakenError('the value of "answer" is the text that a person would type')
    return visible(taken["answer"])


def _saved(around: Around) -> dict[str, object]:
    try:
        return {"saved": around.save()}
    except OSError as error:
        return {"error": f"the report could not be saved: {error.strerror or error}"}


def _write(out: TextIO, record: Mapping[str, object]) -> None:
    out.write(json.dumps(finite(record), allow_nan=False) + "\n")
    out.flush()
