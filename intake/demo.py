"""One invented house, played through the real conversation without a terminal.

Sizes, airflows and tables are our own inventions. Nothing of the outcome is written here: the
conversation asks, the engine judges, and whatever they say is shown.
"""

from collections.abc import Callable, Iterable, Iterator
from pathlib import Path
from typing import Final

from intake.commands.reporting import content_of_talk, form_of, formatted
from intake.commands.told import write_text
from intake.interview.conversation import Conversation
from intake.interview.turns import Say, Speaker, Voice

__all__ = ["ANSWERS", "TITLE", "run_demo"]

TITLE: Final = "The invented house of the demo"

_ABOUT: Final = (
    "This house is invented, and so is every figure in it. A technician stands in it: the old "
    "furnace goes, a 3.5 ton heat pump comes, and its ducts were made for less air. What is "
    "behind “>” is typed; everything else is Trunk Talk."
)

ANSWERS: Final[dict[str, tuple[str, ...]]] = {
    "safety": ("nope, all clear",),
    "new_equipment": ("3 1/2 ton single stage heat pmup",),
    "cool_cfm": ("1400",),
    "heat_pump_cfm": ("why do you ask?", "same as cooling"),
    "strip_cfm": ("idk",),
    "old_runs": ("yeah it runs",),
    "tools": ("just a tape",),
    "trunk_count": ("two",),
    "trunk_size": ("20 bite 8 bare metal, both",),
    "drop_size": ("24x10",),
    "drop_skin": ("actually the drop is 20x10", "bare metal"),
    "return_trunk": ("nope, none",),
    "filter": ("16x25x1",),
    "filter_place": ("slot at the unit",),
    "openings": ("30x20 in the hall",),
    "openings_where": ("the slotted part",),
    "step_down": ("no",),
    "zoned": ("no",),
    "year_built": ("1996 i think",),
}
"""What is typed, by the key of the question that is open; another question gets "don't know"."""

_ELSE: Final = "not sure"
_MOST_LINES: Final = 120


def run_demo(out: Path | None = None, echo: Callable[[str], None] = print) -> None:
    """Play the invented house and show the exchange and the verdict.

    Args:
        out: Where its report is written: HTML if the name ends in .html, JSON if in .json, else
            Markdown. None writes none.
        echo: Takes each line that is shown.

    Raises:
        ToldError: The report can't be written.
        RuntimeError: The conversation doesn't come to its end.
    """
    talk = Conversation()
    talk.choose(Voice.TECHNICIAN)
    echo(_ABOUT)
    echo("")
    _show(talk.opening(), echo)
    lines = _lines(talk)
    for _ in range(_MOST_LINES):
        if talk.ended:
            break
        _show(talk.hear(next(lines)), echo)
    else:
        raise RuntimeError(f"the demo did not come to its end in {_MOST_LINES} lines")
    echo("")
    if out is None:
        echo("The same as a report: trunktalk demo --out FILE.html (or .md, or .json)")
        return
    write_text(formatted(content_of_talk(talk, talk.events, TITLE), form_of(out)), out)
    echo(f"The report is in {out}.")


def _lines(talk: Conversation) -> Iterator[str]:
    """The line to type at each moment, by the question that is open then."""
    left = {key: list(lines) for key, lines in ANSWERS.items()}
    while True:
        ask = talk.pending
        lines = left.get(ask.key, []) if ask is not None else []
        yield lines.pop(0) if lines else _ELSE


def _show(says: Iterable[Say], echo: Callable[[str], None]) -> None:
    for one in says:
        echo(f"> {one.text}" if one.speaker is Speaker.PERSON else one.text)
