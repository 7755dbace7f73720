"""Readings as plain mappings, for `trunktalk read` and for scoring a corpus of loose inputs."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from intake.reading.echo import echo
from intake.reading.read import read
from intake.reading.result import (
    Accepted,
    AskBack,
    AskKind,
    Command,
    CommandName,
    Previous,
    Reading,
    Rejected,
    Sure,
    Unknown,
)

__all__ = ["as_mapping", "describe", "read_line"]

_OUTSIDE: Final = {
    CommandName.WHERE: "help",
    CommandName.HOW: "help",
    CommandName.TYPICAL: "help",
    CommandName.FINISH: "quit",
    CommandName.SHOW: "repeat",
}
"""Our own requests, in the eight that the line format knows."""


def read_line(line: Mapping[str, Any]) -> dict[str, Any]:
    """Read one line of the loose input format.

    Args:
        line: Keys `field`, `text`, and where they matter `question`, `choices`, `asked_field`
            and `previous` ({"field", "text"}).

    Returns:
        `outcome` ("accept", "ask", "unknown", "reject"); with "accept", `expect`; with "ask",
        `readings` and `why`.

    Raises:
        KeyError: `field` or `text` is missing, or the field is unknown.
    """
    before = line.get("previous")
    reading = read(
        line["field"],
        line["text"],
        question=line.get("question") or "",
        choices=line.get("choices") or (),
        asked_field=line.get("asked_field"),
        previous=Previous(before["field"], before["text"]) if before else None,
    )
    return as_mapping(reading)


def as_mapping(reading: Reading) -> dict[str, Any]:
    """A reading as a plain mapping, in the names of the loose input format."""
    if isinstance(reading, Accepted):
        found: dict[str, Any] = {"outcome": "accept", "expect": dict(reading.values)}
        if reading.sure is not Sure.PLAIN:
            found["sure"] = reading.sure.value
        if reading.place:
            found["place"] = reading.place
        if reading.others:
            found["others"] = [
                {"field": o.field, "expect": dict(o.values), "text": o.text} for o in reading.others
            ]
        return found
    if isinstance(reading, Command):
        if reading.name is CommandName.CORRECT and (reading.either or not reading.value_text):
            return _asked_back(reading)
        expect: dict[str, Any] = {"command": _OUTSIDE.get(reading.name, reading.name.value)}
        if reading.value_text is not None:
            expect["value_text"] = reading.value_text
        if reading.fact_words is not None:
            return {"outcome": "accept", "expect": expect, "fact_words": reading.fact_words}
        return {"outcome": "accept", "expect": expect}
    if isinstance(reading, AskBack):
        return {
            "outcome": "ask",
            "readings": [dict(r) for r in reading.readings],
            "why": reading.why,
            "kind": reading.kind.value,
        }
    return {"outcome": "unknown" if isinstance(reading, Unknown) else "reject", "why": reading.why}


def _asked_back(correction: Command) -> dict[str, Any]:
    """A correction that tells no one value, which the conversation asks about."""
    told = [{"command": "correct", "value_text": value} for value in correction.either]
    values = " or ".join(correction.either)
    fact = correction.fact_words
    return {
        "outcome": "ask",
        "readings": told,
        "why": f"Which is it: {values}?" if told else "What should it be instead?",
        "kind": AskKind.TWO_VALUES.value if told else AskKind.MISSING_PART.value,
    } | ({"fact_words": fact} if fact else {})


def describe(reading: Reading, field: str = "") -> str:
    """A reading in one line for a person.

    >>> describe(read("length", "40 ft"), "length")
    'accept: 40 ft'
    """
    if isinstance(reading, Accepted):
        notes = [echo(field, reading.values)]
        if reading.sure is not Sure.PLAIN:
            notes.append(f"({reading.sure.value})")
        if reading.place:
            notes.append(f"(measured {reading.place})")
        notes += [f"[also {o.field}: {echo(o.field, o.values)}]" for o in reading.others]
        return "accept: " + " ".join(notes)
    if isinstance(reading, Command):
        told = f"command: {reading.name.value}"
        return told + "".join(
            f" {part}" for part in (reading.fact_words, reading.value_text) if part
        )
    if isinstance(reading, AskBack):
        return f"ask: {reading.why}"
    if isinstance(reading, Rejected):
        return f"reject: {reading.why}"
    return f"unknown: {reading.why}"
