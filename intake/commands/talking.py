"""`trunktalk talk`: a conversation behind one of the three mouths.

What the conversation needs is imported when it is opened: the screen is painted before that.
"""

import os
import sys
import traceback
from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Final

import click

from intake.commands.told import FAILED, ToldError, started_as
from intake.mouth import Around

if TYPE_CHECKING:
    from intake.interview.conversation import Conversation
    from intake.keeping.store import Sitting, Store

__all__ = ["Mouth", "hold_talk", "mouth_for"]

Mouth = str
"""Screen, plain or jsonl."""


def mouth_for(*, plain: bool, jsonl: bool) -> Mouth:
    """The mouth asked for; plain by itself where nothing can be drawn."""
    if jsonl:
        return "jsonl"
    drawable = sys.stdin.isatty() and sys.stdout.isatty() and os.environ.get("TERM") != "dumb"
    return "plain" if plain or not drawable else "screen"


def hold_talk(
    mouth: Mouth, voice: str | None, job: str | None, store: Path | None, title: str
) -> int:
    """Talk until the person leaves.

    Args:
        mouth: Behind which of the three.
        voice: "technician" or "dispatcher"; None is asked for.
        job: A kept job to go on with; None begins one.
        store: File of the jobs; None is the person's own.
        title: Name of a new job.

    Returns:
        Exit status.

    Raises:
        StoreError: The store can't be opened, has no such job, or couldn't keep an answer.
    """
    desk = _Desk(voice, job, store, title)
    try:
        status = _behind(mouth, desk)
    finally:
        desk.close()
        for fault in desk.faults:
            click.echo(fault, err=True)
    return FAILED if desk.faults else status


def _behind(mouth: Mouth, desk: "_Desk") -> int:
    match mouth:
        case "screen":
            return _on_screen(desk)
        case "jsonl":
            from intake.jsonl import run_jsonl

            return run_jsonl(desk.open(), sys.stdin, sys.stdout, desk.around(), desk.snapshot)
        case _:
            from intake.plain import run_plain

            return run_plain(desk.open(), sys.stdin, sys.stdout, desk.around())


def _on_screen(desk: "_Desk") -> int:
    from intake.screen.app import run_screen  # textual only where it draws

    left = run_screen(desk.open, desk.around())
    if left is None:
        raise ToldError(BROKE_DOWN, FAILED)
    if left.error is not None:
        raise left.error
    click.echo(desk.farewell())
    return 0


BROKE_DOWN: Final = (
    "The screen broke down by a fault of this program; every answer that was read is kept. "
    "Go on with --plain."
)


class _Desk:
    """What lies around one talk: its store, where its report goes, how it is gone on with."""

    def __init__(self, voice: str | None, job: str | None, store: Path | None, title: str) -> None:
        self._voice, self._job, self._store_file, self._title = voice, job, store, title
        self._store: Store | None = None
        self._sitting: Sitting | None = None
        self._talk: Conversation | None = None
        self.faults: list[str] = []

    def open(self) -> "Conversation":
        """Open the store, read the job, begin the conversation.

        Raises:
            StoreError: The store can't be opened, or has no such job.
        """
        from intake.commands.reporting import typed_id
        from intake.interview.conversation import Conversation
        from intake.interview.turns import Voice
        from intake.keeping.place import default_store
        from intake.keeping.store import Sitting, Store

        self._store = Store(self._store_file or default_store())
        job_id = None if self._job is None else typed_id(self._job)
        self._sitting = Sitting(self._store, job_id, title=self._title)
        self._talk = Conversation(self._sitting.events, record=self._sitting.record)
        if self._voice is not None:
            self._talk.choose(Voice(self._voice))
        return self._talk

    def close(self) -> None:
        """Close the store."""
        if self._store is not None:
            self._store.close()

    def around(self) -> Around:
        return Around(save=self.save, farewell=self.farewell, fault=self.fault)

    def fault(self, error: Exception) -> str:
        """Keep a fault of the program for the end; a sentence for the person."""
        self.faults.append("".join(traceback.format_exception(error)))
        return (
            f"That ran into a fault of this program ({type(error).__name__}: {error}). Say it in "
            "other words, or type skip; what was answered before is kept."
        )

    def save(self) -> str:
        """Write the report where the program was started; say where that is.

        Raises:
            OSError: It can't be written.
        """
        from intake.commands.reporting import content_of_talk, formatted

        if self._talk is None or self._sitting is None:
            return "Nothing was said yet, so there is no report."
        path = Path.cwd() / f"trunk-talk-{self._sitting.job_id or 'new'}.html"
        content = content_of_talk(self._talk, self._talk.events, self._sitting.title)
        path.write_text(formatted(content, "html"), encoding="utf-8")
        return f"Saved the report as {path}."

    def farewell(self) -> str:
        """The job's id and how to go on with it."""
        job_id = None if self._sitting is None else self._sitting.job_id
        if job_id is None:
            return "Nothing was answered, so nothing is kept."
        store = "" if self._store_file is None else f" --store {_quoted(self._store_file)}"
        return f"Kept as job {job_id}. Go on with: {started_as()} talk --job {job_id}{store}"

    def snapshot(self) -> Mapping[str, object]:
        """The verdict and the booking as they stand, for JSON."""
        from intake.report.json import booking_mapping, verdict_mapping

        if self._talk is None:
            return {"verdict": None}
        verdict, booking = self._talk.verdict(), self._talk.booking()
        told: dict[str, object] = {
            "verdict": None if verdict is None else verdict_mapping(verdict, self._talk.job)
        }
        if booking is not None:
            told["booking"] = booking_mapping(booking)
        return told


def _quoted(path: Path) -> str:
    text = str(path)
    return f'"{text}"' if " " in text else text
