"""The box that answers are typed into."""

from typing import Final

from textual import events
from textual.binding import Binding, BindingType
from textual.widgets import Input

from intake.mouth import as_one_line

__all__ = ["AnswerBox"]


class AnswerBox(Input):
    """One line of typing. Up and Down bring back what was sent; a paste keeps all its lines."""

    BINDINGS: Final[list[BindingType]] = [  # type: ignore[misc]
        Binding("up", "older", "What was typed before", show=False),
        Binding("down", "newer", "What was typed after", show=False),
    ]

    def __init__(self, *, id: str) -> None:
        """An empty box."""
        super().__init__(id=id, compact=True, select_on_focus=False)
        self._sent: list[str] = []
        self._back = 0
        self._draft = ""

    def take(self) -> str:
        """Empty the box; return what was in it, and remember it for Up."""
        typed = self.value
        self.clear()
        if typed.strip() and self._sent[-1:] != [typed]:
            self._sent.append(typed)
        self._back, self._draft = 0, ""
        return typed

    def action_older(self) -> None:
        """Show the line sent before the one shown."""
        self._show(self._back + 1)

    def action_newer(self) -> None:
        """Show the line sent after the one shown; last the one being typed."""
        self._show(self._back - 1)

    def _show(self, back: int) -> None:
        if not 0 <= back <= len(self._sent):
            return
        if self._back == 0:
            self._draft = self.value
        self._back = back
        self.value = self._sent[-back] if back else self._draft
        self.cursor_position = len(self.value)

    def _on_paste(self, event: events.Paste) -> None:
        event.prevent_default()  # the box's own way keeps the first line only
        event.stop()
        self._insert(event.text)

    def action_paste(self) -> None:
        """Insert what this program copied."""
        self._insert(self.app.clipboard)

    def _insert(self, pasted: str) -> None:
        self.replace(as_one_line(pasted), *sorted(self.selection))
