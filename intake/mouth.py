"""What every mouth (screen, plain, JSON lines) needs from a conversation and from around it."""

import re
import unicodedata
from collections.abc import Callable
from dataclasses import dataclass
from typing import Protocol

from intake.interview.turns import Ask, Say

__all__ = ["LINE_END", "Around", "Talk", "as_lines", "as_one_line", "is_save", "visible"]

LONGEST_LINE = 20_000
"""Characters of one line that are looked at; a reader cuts further."""

LINE_END = " // "
"""Stands for a line end where only one line can be typed, as in a pasted table."""

_LINE_END = re.compile(r"[ \t]*//[ \t]*")

_SAVE_WORDS = frozenset(
    {"save", "save report", "save the report", "save a report", "write report", "write the report"}
)


class Talk(Protocol):
    """A conversation as a mouth sees it."""

    @property
    def pending(self) -> Ask | None:
        """The open question."""

    @property
    def ended(self) -> bool:
        """Whether the verdict or the card was given, or the person said goodbye."""

    @property
    def left(self) -> bool:
        """Whether the person said goodbye; after a verdict more may be asked."""

    def opening(self) -> list[Say]:
        """What is said first."""

    def hear(self, text: str) -> list[Say]:
        """Take one line; return what the exchange gains."""

    def standing(self) -> str:
        """One line: what would be said if it stopped now."""


@dataclass(frozen=True, slots=True)
class Around:
    """What lies outside a conversation and is handed to its mouth.

    Attributes:
        save: Writes the report of the job as it stands; returns a sentence that says where.
            Raises OSError if it can't.
        farewell: What is told last: the job's id and how to go on with it.
        fault: Takes an error that only a fault of this program can have raised, keeps it for the
            end, and returns a sentence for the person. The talk goes on.
    """

    save: Callable[[], str]
    farewell: Callable[[], str]
    fault: Callable[[Exception], str]


def is_save(text: str) -> bool:
    """Whether a typed line asks to save the report; that is the mouth's own command.

    >>> is_save(" Save the report. "), is_save("save 20x8")
    (True, False)
    """
    return " ".join(text.casefold().strip(" .!\t\r\n").split()) in _SAVE_WORDS


def as_one_line(pasted: str) -> str:
    r"""Pasted lines as one that can be typed and shown; empty lines are left out.

    >>> as_one_line("0.10\t1250\r\n0.20\t1190\n\n")
    '0.10 1250 // 0.20 1190'
    """
    lines = (" ".join(visible(line).split()) for line in pasted.splitlines())
    return LINE_END.join(line for line in lines if line)


def as_lines(typed: str) -> str:
    r"""A typed line with its line ends.

    >>> as_lines("0.10 1250 // 0.20 1190")
    '0.10 1250\n0.20 1190'
    """
    return _LINE_END.sub("\n", typed)


def visible(text: str) -> str:
    r"""The text without what a terminal would obey: control characters become spaces.

    Line ends stay; a tab is a space.

    >>> visible("12\x1b]0;x\x07 ft\r\nof 20x8")
    '12 ]0;x  ft\nof 20x8'
    """
    lines = text[:LONGEST_LINE].replace("\r\n", "\n").split("\n")
    return "\n".join("".join(map(_shown, line)) for line in lines)


def _shown(character: str) -> str:
    return " " if unicodedata.category(character).startswith("C") else character
