"""Whether what could be a request answers a yes or no question ("uh huh", "why not", "right next"
" to it")."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.result import Accepted, Command, CommandName
from intake.reading.yes_no import read_yes_no
from intake.reading.yes_no_bounds import by_bound

__all__ = ["is_answer"]

_ALSO_ANSWERS: Final = frozenset(
    (CommandName.HELP, CommandName.WHY, CommandName.QUIT, CommandName.BACK, CommandName.REPEAT)
)
_TOLD_OF_PLACE: Final = re.compile(r"\bnext (?:to|door|room)\b")


def is_answer(command: Command, field: str, line: str, question: str) -> bool:
    """Whether a normalised line that was read as a request is an answer to a yes or no question."""
    if field != "yes_no":
        return False
    if command.name is CommandName.SKIP and _TOLD_OF_PLACE.search(line):
        return True
    refuses = command.name is CommandName.SKIP and "rather not" in line
    if command.name not in _ALSO_ANSWERS and not refuses:
        return False
    return by_bound(line, question) is not None or isinstance(read_yes_no(line, question), Accepted)
