"""A request with its excuse behind it ("one more time, the compressor was running")."""

from __future__ import annotations

from typing import Final

from intake.reading.commands import as_command
from intake.reading.figures import figures_in
from intake.reading.result import Command, CommandName
from intake.reading.words import words

__all__ = ["led"]


def led(line: str, field: str) -> tuple[Command, str] | None:
    """The request that opens a normalised text, and the excuse behind it; None without both.

    >>> led("one more time, compressor was running", "length")[0].name.value
    'repeat'
    >>> led("next, the trunk", "duct") is None
    True
    """
    head, comma, rest = line.partition(",")
    if not comma:
        head, comma, rest = line.partition(" - ")
    if not comma or len(rest.split()) > _LONGEST_EXCUSE or figures_in(rest):
        return None
    if len(head.split()) < 2 and head.strip() not in _LEADING:
        return None
    command = as_command(head, field)
    if command is None or command.name not in _WITH_EXCUSE:
        return None
    return command, rest.strip()


_LONGEST_EXCUSE: Final = 12
_LEADING: Final = words("skip repeat quit undo help")
_WITH_EXCUSE: Final = frozenset(
    (CommandName.SKIP, CommandName.REPEAT, CommandName.BACK, CommandName.QUIT)
)
