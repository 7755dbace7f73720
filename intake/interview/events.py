"""What happened in a job, in order. A job is the fold of its events; none is ever changed.

Pydantic models, because events enter and leave the store as JSON.
"""

from collections.abc import Mapping, Sequence
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, JsonValue, TypeAdapter

from engine.job.belief import Belief
from engine.job.job import BlowerSetting, CoolingRow
from intake.interview.turns import Voice

__all__ = [
    "Answered",
    "AskedBack",
    "Event",
    "Finished",
    "FlagRaised",
    "FlagSettled",
    "Reopened",
    "Started",
    "Undone",
    "Unsaid",
    "WentOn",
    "event_from_json",
    "event_to_json",
    "kept_readings",
]


class _Event(BaseModel):
    model_config = ConfigDict(
        strict=True, frozen=True, extra="forbid", allow_inf_nan=False, defer_build=True
    )


class Started(_Event):
    """A sitting began (or was resumed) in a voice."""

    type: Literal["started"] = "started"
    voice: Voice


class Answered(_Event):
    """An answer was taken.

    Attributes:
        question: Key in the question bank.
        text: What was typed, cleaned.
        forget: Keys or list names forgotten first (an answer replaces an earlier one).
        beliefs: Facts it states, by dotted key.
        lengths: Lists whose number of entries it states.
        blower: Blower settings it states; None if it says nothing of them.
        old_blower: The same for the present blower.
        cooling_rows: Performance rows it states; None if it says nothing of them.
        volunteered: It answered another question than the open one.
        settles: Other questions that need not be put after it.
    """

    type: Literal["answered"] = "answered"
    question: str
    text: str
    forget: tuple[str, ...] = ()
    beliefs: dict[str, Belief] = {}
    lengths: dict[str, int] = {}
    blower: tuple[BlowerSetting, ...] | None = None
    old_blower: tuple[BlowerSetting, ...] | None = None
    cooling_rows: tuple[CoolingRow, ...] | None = None
    volunteered: bool = False
    settles: tuple[str, ...] = ()


class Unsaid(_Event):
    """The person can't say, or skipped: the prior stays in place.

    Attributes:
        question: Key in the question bank.
        text: What was typed, cleaned.
        closes: A place that can't be reached today ("attic or crawl"); empty if none.
        lacks: Fact of a tool that is not at hand ("site.has_gauge"); empty if none.
    """

    type: Literal["unsaid"] = "unsaid"
    question: str
    text: str
    closes: str = ""
    lacks: str = ""


class AskedBack(_Event):
    """An answer could not be taken yet.

    Attributes:
        question: Key in the question bank.
        text: What was typed, cleaned.
        why: What was said back.
        kind: Why it could not be taken; "rejected" if nothing usable was in it.
        readings: The readings offered, likeliest first, for "the first one".
    """

    type: Literal["asked_back"] = "asked_back"
    question: str
    text: str
    why: str
    kind: str = ""
    readings: tuple[dict[str, JsonValue], ...] = ()


def kept_readings(readings: Sequence[Mapping[str, object]]) -> tuple[dict[str, JsonValue], ...]:
    """The readings of an ask-back as events keep them: the same values, JSON throughout."""
    return AskedBack(question="", text="", why="", readings=readings).readings  # type: ignore[arg-type]


class Reopened(_Event):
    """A question that was settled is asked again; what it gave stands until it is answered."""

    type: Literal["reopened"] = "reopened"
    question: str


class Undone(_Event):
    """The last answer that still stood was taken back."""

    type: Literal["undone"] = "undone"


class FlagRaised(_Event):
    """A red flag: stopped the script, or waits for "is that happening right now?"."""

    type: Literal["flag_raised"] = "flag_raised"
    kind: str
    state: Literal["present", "unclear"]
    text: str


class FlagSettled(_Event):
    """What became of a red flag that was unclear, or of a stopped script that is resumed."""

    type: Literal["flag_settled"] = "flag_settled"
    kind: str
    present: bool
    text: str


class Finished(_Event):
    """The person asked for the verdict as it stands, or nothing worth asking was left."""

    type: Literal["finished"] = "finished"


class WentOn(_Event):
    """The person wants to answer more after the end, worth asking or not."""

    type: Literal["went_on"] = "went_on"


Event = Annotated[
    Started
    | Answered
    | Unsaid
    | AskedBack
    | Reopened
    | Undone
    | FlagRaised
    | FlagSettled
    | Finished
    | WentOn,
    Field(discriminator="type"),
]

_ADAPTER: TypeAdapter[Event] = TypeAdapter(Event, config=ConfigDict(defer_build=True))


def event_to_json(event: Event) -> str:
    """One event as a JSON object on one line."""
    return event.model_dump_json()


def event_from_json(text: str) -> Event:
    """The event of one JSON object.

    Raises:
        pydantic.ValidationError: It is no event.
    """
    return _ADAPTER.validate_json(text)
