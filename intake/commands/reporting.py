"""`trunktalk report`, and the report that is saved from a talk."""

from collections.abc import Iterable
from pathlib import Path
from typing import TYPE_CHECKING

from intake.commands.told import ToldError, started_as

if TYPE_CHECKING:
    from intake.interview.conversation import Conversation
    from intake.interview.events import Event
    from intake.report.content import Content

__all__ = [
    "FORMATS",
    "content_of_talk",
    "form_of",
    "formatted",
    "kept_talk",
    "report_of",
    "typed_id",
]

FORMATS = {"markdown": "md", "html": "html", "json": "json"}
"""Forms of a report, and what its file's name ends in."""


def form_of(out: Path | None) -> str:
    """The form that a file's name asks for by its ending; Markdown without one."""
    ending = "" if out is None else out.suffix.lower().removeprefix(".")
    return next((form for form, end in FORMATS.items() if end == ending), "markdown")


def report_of(job_id: str, form: str, store: Path | None) -> str:
    """The report of a kept job.

    Raises:
        ToldError: There is no store.
        StoreError: There is no such job, or it can't be read.
    """
    from intake.interview.conversation import Conversation

    events, title = kept_talk(job_id, store)
    return formatted(content_of_talk(Conversation(events), events, title), form)


def kept_talk(job_id: str, store: Path | None) -> "tuple[tuple[Event, ...], str]":
    """What happened in a kept job, and its title.

    Raises:
        ToldError: There is no store.
        StoreError: There is no such job, or it can't be read.
    """
    from intake.keeping.place import default_store
    from intake.keeping.store import Store

    path = store or default_store()
    if not path.exists():
        raise ToldError(f"No job is kept in {path} yet; `{started_as()} talk` begins one.")
    with Store(path) as opened:
        job_id = typed_id(job_id)
        return tuple(opened.events(job_id)), opened.title(job_id)


def content_of_talk(talk: "Conversation", events: Iterable["Event"], title: str) -> "Content":
    """What the report of a talk as it stands says.

    Args:
        talk: The conversation.
        events: Everything that happened in it.
        title: The job's name; may be empty.
    """
    from engine.judge import judge
    from intake.report.answers import typed_answers
    from intake.report.content import content_of

    answers = typed_answers(events)
    return content_of(
        talk.job,
        talk.verdict() or judge(talk.job),
        booking=talk.booking(),
        said=" ".join(answer.text for answer in answers),
        title=title,
        answers=answers,
    )


def formatted(content: "Content", form: str) -> str:
    """The report in one of `FORMATS`."""
    match form:
        case "html":
            from intake.report.html import report_html

            return report_html(content)
        case "json":
            from intake.report.json import report_json

            return report_json(content)
        case _:
            from intake.report.markdown import report_markdown

            return report_markdown(content)


def typed_id(job_id: str) -> str:
    """A job's id as it may be typed: "#12", " 012 ".

    >>> typed_id(" #012")
    '12'
    """
    bare = job_id.strip().lstrip("#")
    return bare.lstrip("0") or bare
