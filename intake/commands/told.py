"""How a command ends when it can't do what was asked: one sentence, one exit status."""

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO, Any, Final

import click

__all__ = ["BAD_INPUT", "FAILED", "ToldError", "started_as", "told", "write_text"]

FAILED: Final = 1
"""Exit status: the input was fine, something else was not (a disk, a file in use)."""

BAD_INPUT: Final = 2
"""Exit status: what was given can't be used."""


class ToldError(click.ClickException):
    """Ends the command with one sentence on the error stream."""

    def __init__(self, sentence: str, exit_code: int = BAD_INPUT) -> None:
        """Keep the sentence and the exit status."""
        super().__init__(sentence)
        self.exit_code = exit_code  # type: ignore[misc]  # click reads it from the instance

    def show(self, file: IO[Any] | None = None) -> None:
        """Write the sentence, and nothing around it."""
        click.echo(self.message, err=True, file=file)


def started_as() -> str:
    """What was typed to start the program, for the sentences that say what to type next."""
    return os.environ.get("TRUNK_TALK_STARTED_AS") or "trunktalk"


@contextmanager
def told() -> Iterator[None]:
    """Turn what store and engine refuse into a sentence and an exit status.

    Raises:
        ToldError: In place of StoreError and EngineError.
    """
    from engine.errors import EngineError
    from intake.keeping.errors import NoSuchJobError, StoreError

    try:
        yield
    except NoSuchJobError as error:
        raise ToldError(str(error)) from error
    except StoreError as error:
        raise ToldError(str(error), FAILED) from error
    except EngineError as error:
        from intake.telling.errors import error_sentence  # only on the way to a refusal

        raise ToldError(error_sentence(error)) from error


def write_text(text: str, out: Path | None) -> None:
    """Write to a file, or to the output if there is none.

    Raises:
        ToldError: The file can't be written.
    """
    if out is None:
        click.echo(text, nl=not text.endswith("\n"))
        return
    try:
        out.write_text(text, encoding="utf-8")
    except OSError as error:
        raise ToldError(f"{out} can't be written: {error.strerror or error}.", FAILED) from error
