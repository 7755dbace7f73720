"""The lines said so far, as they were said, the newest at the bottom."""

from collections import deque
from collections.abc import Iterable
from typing import Final

from textual.containers import VerticalScroll
from textual.content import Content
from textual.widgets import Static

from intake.interview.turns import Manner, Say
from intake.mouth import visible

__all__ = ["Exchange"]

LONGEST: Final = 1000
"""Lines kept on the screen; older ones are dropped from the top (the store keeps the answers)."""

WORDS: Final = {
    Manner.TYPED: "> ",
    Manner.ECHO: "Read: ",
    Manner.QUESTION: "",
    Manner.HELP: "",
    Manner.ASK_BACK: "Again: ",
    Manner.INSIGHT: "So far: ",
    Manner.CAUTION: "Caution: ",
    Manner.ALARM: "STOP: ",
    Manner.VERDICT: "",
    Manner.BOOKING: "",
    Manner.NOTE: "",
}
"""What stands before a line, so that its kind doesn't hang on its colour."""


class Exchange(VerticalScroll, can_focus=False):
    """Shows lines; knows nothing of who says them or why."""

    DEFAULT_CSS = """
    Exchange {
        height: 1fr;
        layout: stream;
    }
    """

    def __init__(self, *, id: str) -> None:
        """Nothing said yet."""
        super().__init__(id=id)
        self._waiting: deque[Static] = deque()

    def add_waiting(self, say: Say) -> None:
        """Append a line that waits for its turn: what is said meanwhile goes above it."""
        line = _line(say)
        self._waiting.append(line)
        self.mount(line)
        self.anchor()

    def begin(self) -> None:
        """The turn of the line that waits longest has come."""
        if self._waiting:
            self._waiting.popleft()

    def add(self, says: Iterable[Say], *, from_first: bool = False) -> None:
        """Append lines; text shows as it is, never as markup.

        Args:
            says: What was said.
            from_first: Begin the view at the first of these lines; else follow the last.
        """
        lines = [_line(say) for say in says]
        self.mount_all(lines, before=self._waiting[0] if self._waiting else None)
        if from_first and lines:
            self.anchor(False)
            self.call_after_refresh(self.scroll_to_widget, lines[0], animate=False, top=True)
        else:
            self.anchor()
        surplus = len(self.children) - LONGEST
        if surplus > 0:
            self.remove_children(list(self.children)[:surplus])


def _line(say: Say) -> Static:
    return Static(
        Content(WORDS[say.manner] + visible(say.text)),
        classes=f"line -{say.speaker.value} -{say.manner.value}",
    )
