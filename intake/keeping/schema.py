"""The tables of the store, as steps that are applied once each. A new step goes at the end."""

from collections.abc import Callable
from typing import Final

from sqlite_utils import Database
from sqlite_utils.migrations import Migrations

__all__ = ["APPLICATION_ID", "is_current", "steps_of_a_newer_version", "update"]

APPLICATION_ID: Final = 0x5472546B
"""Marks a SQLite file as ours ("TrTk"), in the header field that is meant for it."""

_MIGRATIONS: Final = Migrations("jobs")
_NAMES: Final[list[str]] = []

Step = Callable[[Database], None]


def _step(function: Step) -> Step:
    name = function.__name__.lstrip("_")
    _NAMES.append(name)
    _MIGRATIONS(name=name)(function)
    return function


@_step
def _jobs_and_events(db: Database) -> None:
    """A job is its events in order; an event is never changed and never removed."""
    db.execute(f"pragma application_id = {APPLICATION_ID}")
    db.table("jobs").create(
        {"id": str, "began": str, "title": str},
        pk="id",
        not_null={"id", "began", "title"},
        strict=True,
    )
    db.table("events").create(
        {"job_id": str, "seq": int, "time": str, "json": str},
        pk=("job_id", "seq"),
        foreign_keys=[("job_id", "jobs", "id")],
        not_null={"job_id", "seq", "time", "json"},
        strict=True,
    )
    for what in ("update", "delete"):
        db.execute(
            f"create trigger events_no_{what} before {what} on events "
            "begin select raise(abort, 'an event is never changed'); end"
        )


def is_current(db: Database) -> bool:
    """Whether no step is left to apply."""
    return not _MIGRATIONS.pending(db)


def update(db: Database) -> None:
    """Apply the steps that are left; call it alone, inside a transaction that can write."""
    _MIGRATIONS.apply(db)


def steps_of_a_newer_version(db: Database) -> tuple[str, ...]:
    """Steps that were applied to this file and that this version doesn't know."""
    return tuple(step.name for step in _MIGRATIONS.applied(db) if step.name not in _NAMES)
