"""`trunktalk talk`: a conversation behind one of the three mouths."""

import os
import sys
import traceback
from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING

import click

from intake.commands.told import FAILED, ToldError
from intake.interview.turns import Voice
from intake.keeping.place import default_store
from intake.keeping.store import Sitting, Store
from intake.mouth import Around

if TYPE_CHECKING:
    from intake.interview.conversation import Conversation

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
    from intake.commands.reporting import typed_id
    from intake.interview.conversation import Conversation

    path = store or default_store()
    with Store(path) as opened:
        sitting = Sitting(opened, None if job is None else typed_id(job), title=title)
        talk = Conversation(sitting.events, record=sitting.record)
        if voice is not None:
            talk.choose(Voice(voice))
        desk = _Desk(talk, sitting, "" if store is None else f" --store {_quoted(store)}")
        try:
            status = _behind(mouth, talk, desk)
        finally:
            for fault in desk.faults:
                click.echo(fault, err=True)
    return FAILED if desk.faults else status


def _behind(mouth: Mouth, talk: "Conversation", desk: "_Desk") -> int:
    match mouth:
        case "screen":
            return _on_screen(talk, desk)
        case "jsonl":
            from intake.jsonl import run_jsonl

            return run_jsonl(talk, sys.stdin, sys.stdout, desk.around(), desk.snapshot)
        case _:
            from intake.plain import run_plain

            return run_plain(talk, sys.stdin, sys.stdout, desk.around())


def _on_screen(talk: "Conversation", desk: "_Desk") -> int:
    from intake.screen.app import run_screen  # textual only where it draws

    left = run_screen(talk, desk.around())
    if left.problem:
        raise ToldError(left.problem, FAILED)
    click.echo(desk.farewell())
    return 0


class _Desk:
    """What lies around one talk: where its report goes, how it is gone on with."""

    def __init__(self, talk: "Conversation", sitting: Sitting, store_option: str) -> None:
        self._talk, self._sitting, self._store_option = talk, sitting, store_option
        self.faults: list[str] = []

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
        """Write the report beside where the program was started; say where."""
        from intake.commands.reporting import content_of_talk, formatted

        name = f"trunk-talk-{self._sitting.job_id or 'new'}.html"
        path = Path.cwd() / name
        content = content_of_talk(self._talk, self._talk.events, self._sitting.title)
        path.write_text(formatted(content, "html"), encoding="utf-8")
        return f"Saved the report as {path}."

    def farewell(self) -> str:
        """The job's id and how to go on with it."""
        job_id = self._sitting.job_id
        if job_id is None:
            return "Nothing was answered, so nothing is kept."
        return (
            f"Kept as job {job_id}. Go on with: trunktalk talk --job {job_id}{self._store_option}"
        )

    def snapshot(self) -> Mapping[str, object]:
        """The verdict and the booking as they stand, for JSON."""
        from intake.report.json import booking_mapping, verdict_mapping

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
