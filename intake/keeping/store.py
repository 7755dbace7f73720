"""The store: an append-only log of events in one SQLite file; a job is the fold of its events.

Every append is on the disk before it returns. Knows nothing of what the events mean.
"""

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from types import TracebackType
from typing import Self

from pydantic import ValidationError
from sqlite_utils import Database

from intake.interview.events import Event, event_from_json, event_to_json
from intake.keeping.errors import NoSuchJobError, StaleJobError, StoreError
from intake.keeping.schema import (
    APPLICATION_ID,
    is_current,
    steps_of_a_newer_version,
    update,
)
from intake.keeping.summary import JobSummary, summary_of

__all__ = ["Sitting", "Store", "utc_now"]

BUSY_TIMEOUT_S = 10.0
"""How long a write waits for another process's."""


def utc_now() -> datetime:
    """The time, in UTC."""
    return datetime.now(UTC)


class Store:
    """The jobs of one file; made if it isn't there. Any thread may call it, one at a time."""

    def __init__(self, path: Path, *, clock: Callable[[], datetime] = utc_now) -> None:
        """Open the file, bring its tables up to date.

        Args:
            path: The file; its folder is made if need be.
            clock: Gives the time that an event is kept with, with its time zone.

        Raises:
            StoreError: It can't be opened or made, is no store of ours, or is a newer one.
        """
        self.path = path
        self._clock = clock
        with self._told():
            _make_private(path)
            connection = sqlite3.connect(path, timeout=BUSY_TIMEOUT_S, check_same_thread=False)
        self._db = Database(connection, execute_plugins=False)
        try:
            with self._told():
                self._prepare()
        except BaseException:
            self._db.close()
            raise

    def __enter__(self) -> Self:
        """The store itself."""
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        """Close the file."""
        self.close()

    def close(self) -> None:
        """Close the file; what was appended is on the disk already."""
        self._db.close()

    def new_job(self, title: str = "") -> str:
        """Make a job without events.

        Returns:
            Its id: a number as text, one more than the last.

        Raises:
            StoreError: It can't be written.
        """
        with self._told(), self._writing():
            (last,) = self._db.execute("select max(cast(id as integer)) from jobs").fetchone()
            job_id = str((last or 0) + 1)
            self._db.execute(
                "insert into jobs (id, began, title) values (?, ?, ?)",
                (job_id, self._now(), title),
            )
        return job_id

    def append(self, job_id: str, event: Event, *, after: int | None = None) -> int:
        """Keep one more event of a job; on the disk when this returns.

        Args:
            job_id: The job.
            event: What happened.
            after: How many events the writer knows of; None writes after whatever is there.

        Returns:
            How many events the job has now.

        Raises:
            NoSuchJobError: There is no such job.
            StaleJobError: The job has more events than `after`; nothing was kept.
            StoreError: It can't be written; nothing was kept.
        """
        text = event_to_json(event)
        with self._told(), self._writing():
            self._require(job_id)
            held = self._count(job_id)
            if after is not None and held != after:
                raise StaleJobError(self.path, job_id, after, held)
            self._db.execute(
                "insert into events (job_id, seq, time, json) values (?, ?, ?, ?)",
                (job_id, held + 1, self._now(), text),
            )
        return held + 1

    def events(self, job_id: str) -> tuple[Event, ...]:
        """Everything that happened in a job, in order.

        Raises:
            NoSuchJobError: There is no such job.
            StoreError: It can't be read, or holds an event that this version doesn't know.
        """
        with self._told():
            self._require(job_id)
            rows = self._db.execute(
                "select seq, json from events where job_id = ? order by seq", (job_id,)
            ).fetchall()
        return tuple(self._event(job_id, seq, text) for seq, text in rows)

    def jobs(self) -> tuple[JobSummary, ...]:
        """All jobs, the one last spoken in first.

        Raises:
            StoreError: They can't be read.
        """
        kept: dict[str, list[tuple[str, str]]] = {}
        with self._told():
            heads = self._db.execute("select id, title, began from jobs").fetchall()
            for job_id, time, text in self._db.execute(
                "select job_id, time, json from events order by job_id, seq"
            ):
                kept.setdefault(job_id, []).append((time, text))
        try:
            told = [
                summary_of(job_id, title, began, kept.get(job_id, ()))
                for job_id, title, began in heads
            ]
        except ValueError as error:
            raise StoreError(self.path, f"is damaged: an event can't be read ({error}).") from error
        return tuple(sorted(told, key=lambda job: (job.when, int(job.id)), reverse=True))

    def title(self, job_id: str) -> str:
        """The name that a job was given; may be empty.

        Raises:
            NoSuchJobError: There is no such job.
        """
        with self._told():
            self._require(job_id)
            (title,) = self._db.execute("select title from jobs where id = ?", (job_id,)).fetchone()
        return str(title)

    def _prepare(self) -> None:
        self._refuse_what_is_not_ours()
        self._db.execute("pragma foreign_keys = on")
        self._db.execute("pragma synchronous = full")  # an answer survives a power cut too
        if not is_current(self._db):
            with self._writing():
                update(self._db)  # looks again at what is left: another process may have done it
        self._db.enable_wal()

    def _refuse_what_is_not_ours(self) -> None:
        self._db.execute("begin")  # both looks at one state of the file
        (mark,) = self._db.execute("pragma application_id").fetchone()
        strange = mark != APPLICATION_ID and bool(self._db.table_names())
        newer = () if strange else steps_of_a_newer_version(self._db)
        self._db.commit()
        if strange:
            raise StoreError(
                self.path, "is a database of another program; name another file with --store."
            )
        if newer:
            raise StoreError(
                self.path,
                f"was written by a newer Trunk Talk (it has {', '.join(newer)}); "
                "update this one, or name another file with --store.",
            )

    @contextmanager
    def _writing(self) -> Iterator[None]:
        """A transaction that holds the write lock from its first statement on."""
        self._db.execute("begin immediate")
        try:
            yield
            self._db.commit()
        except BaseException:
            self._db.rollback()
            raise

    @contextmanager
    def _told(self) -> Iterator[None]:
        """Turn what the system says about the file into a sentence."""
        try:
            yield
        except OSError as error:
            raise StoreError(
                self.path, f"can't be opened: {error.strerror or error}; {_ELSEWHERE}"
            ) from error
        except sqlite3.Error as error:
            raise StoreError(self.path, _problem(error)) from error

    def _require(self, job_id: str) -> None:
        if not self._db.execute("select 1 from jobs where id = ?", (job_id,)).fetchone():
            raise NoSuchJobError(self.path, job_id)

    def _count(self, job_id: str) -> int:
        (held,) = self._db.execute(
            "select coalesce(max(seq), 0) from events where job_id = ?", (job_id,)
        ).fetchone()
        return int(held)

    def _event(self, job_id: str, seq: int, text: str) -> Event:
        try:
            return event_from_json(text)
        except ValidationError as error:
            raise StoreError(
                self.path,
                f"holds an event that this version can't read (job {job_id}, number {seq}); "
                "was it written by a newer Trunk Talk?",
            ) from error

    def _now(self) -> str:
        return self._clock().astimezone(UTC).isoformat(timespec="seconds")


class Sitting:
    """One job while it is talked about: knows what was read, so that nobody overwrites anybody.

    A new job is made with its first event: who leaves without a word leaves nothing behind.
    """

    def __init__(self, store: Store, job_id: str | None = None, *, title: str = "") -> None:
        """Read the job, if there is one.

        Raises:
            StoreError: There is no such job, or it can't be read.
        """
        self._store = store
        self.job_id = job_id
        self.title = title if job_id is None else store.title(job_id)
        self.events: tuple[Event, ...] = () if job_id is None else store.events(job_id)
        self._held = len(self.events)

    def record(self, event: Event) -> None:
        """Keep one more event; on the disk when this returns.

        Raises:
            StaleJobError: The job went on in another window; nothing was kept.
            StoreError: It can't be written; nothing was kept.
        """
        if self.job_id is None:
            self.job_id = self._store.new_job(self.title)
        self._held = self._store.append(self.job_id, event, after=self._held)


_ELSEWHERE = "look at the folder's permissions, or name another file with --store."


def _make_private(path: Path) -> None:
    if path.exists():
        return
    path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
    path.touch(mode=0o600)  # SQLite gives its side files the same mode


def _problem(error: sqlite3.Error) -> str:
    match getattr(error, "sqlite_errorname", ""):
        case "SQLITE_NOTADB":
            return "is no Trunk Talk store (not even a database); name another file with --store."
        case "SQLITE_FULL":
            return "can't be written: the disk is full. Free some space, then open the job again."
        case "SQLITE_READONLY" | "SQLITE_CANTOPEN" | "SQLITE_IOERR" | "SQLITE_PERM":
            return f"can't be written ({error}); {_ELSEWHERE}"
        case "SQLITE_BUSY" | "SQLITE_LOCKED":
            return "is being written by another program; try again in a moment."
        case "SQLITE_CORRUPT":
            return f"is damaged ({error}); take it from a backup, or name another with --store."
        case name:
            if name.startswith(("SQLITE_READONLY", "SQLITE_CANTOPEN", "SQLITE_IOERR")):
                return f"can't be written ({error}); {_ELSEWHERE}"
            return f"refused: {error}."
