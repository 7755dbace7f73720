"""One line about each job, told from its events as they are kept."""

import json
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Any

__all__ = ["JobState", "JobSummary", "summary_of"]

TITLE_LENGTH = 40
EQUIPMENT = "equipment."
"""Facts of the new equipment: the answer that states one names a job better than the first one."""


class JobState(StrEnum):
    """How a job stands."""

    OPEN = "open"
    FINISHED = "finished"
    STOPPED = "stopped"  # by a red flag


@dataclass(frozen=True, slots=True)
class JobSummary:
    """One job in a list.

    Attributes:
        id: What is typed to name it.
        title: Its name; without one what was typed of the new equipment, or typed first.
        when: When something was last said.
        voice: "technician" or "dispatcher", as last chosen; empty before that.
        answers: Answers that still stand.
        state: How it stands.
    """

    id: str
    title: str
    when: datetime
    voice: str
    answers: int
    state: JobState


def summary_of(job_id: str, title: str, began: str, kept: Iterable[tuple[str, str]]) -> JobSummary:
    """The summary of a job.

    Args:
        job_id: Its id.
        title: Its name; may be empty.
        began: When it was made, ISO 8601.
        kept: Time and JSON of each event, in order.

    Raises:
        ValueError: An event is no JSON object, or a time is none.
    """
    when, voice, state = began, "", JobState.OPEN
    standing: list[tuple[bool, bool, str]] = []
    for time, text in kept:
        when = time
        event = _object(text)
        match event.get("type"):
            case "started":
                voice = str(event.get("voice", ""))
            case "answered" | "unsaid" as kind:
                telling = any(key.startswith(EQUIPMENT) for key in event.get("beliefs", ()))
                standing.append((kind == "answered", telling, str(event.get("text", ""))))
                state = JobState.OPEN if state is JobState.FINISHED else state
            case "undone":
                del standing[-1:]
                state = JobState.OPEN if state is JobState.FINISHED else state
            case "finished":
                state = JobState.FINISHED
            case "flag_raised" if event.get("state") == "present":
                state = JobState.STOPPED
            case "flag_settled":
                state = JobState.STOPPED if event.get("present") else JobState.OPEN
            case _:
                pass
    answers = [text for is_answer, _, text in standing if is_answer]
    named = [text for _, telling, text in standing if telling]
    name = title or next(iter([*named, *answers]), "")
    return JobSummary(job_id, _cut(name), datetime.fromisoformat(when), voice, len(answers), state)


def _object(text: str) -> dict[str, Any]:
    event = json.loads(text)
    if not isinstance(event, dict):
        raise ValueError("an event is a JSON object")
    return event


def _cut(name: str) -> str:
    return name if len(name) <= TITLE_LENGTH else name[: TITLE_LENGTH - 3].rstrip() + "..."
