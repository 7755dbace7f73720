"""The chat: shows a conversation and passes on what is typed. Holds no rule of its own.

The conversation is only ever called from one thread at a time, away from the one that draws: a
long computation doesn't hold up the typing, and what is typed meanwhile waits its turn.
"""

from collections import deque
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Final

from textual import on, work
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Horizontal
from textual.content import Content
from textual.message import Message
from textual.screen import Screen
from textual.widgets import Input, Static

from intake.interview.turns import Ask, Manner, Say, Speaker
from intake.keeping.errors import StoreError
from intake.mouth import Around, Talk, as_lines, is_save, visible
from intake.screen.answer import AnswerBox
from intake.screen.exchange import Exchange

__all__ = ["KEYS", "ChatScreen", "Left"]

KEYS: Final = "F1 help  ^Z undo  ^S save  ^Q leave"
KEYS_IN_WORDS: Final = (
    "Keys: F1 help, Ctrl+Z undo, Ctrl+S save the report, Ctrl+Q leave; or type help, undo, save, "
    "quit. Up and Down bring back what you typed, PageUp and PageDown scroll. // stands for the "
    "end of a line in a pasted table."
)
WORKING: Final = "Working ..."
OVER_HINT: Final = "PageDown, save, undo, quit"
OVER: Final = (
    "You can still ask, correct or undo. Ctrl+S (or save) saves the report, Ctrl+Q (or quit) "
    "leaves."
)


@dataclass(frozen=True, slots=True)
class Left:
    """How the chat was left.

    Attributes:
        error: Why it could not begin, or why the last answer could not be kept.
    """

    error: Exception | None = None


class ChatScreen(Screen[Left]):
    """One conversation."""

    CSS_PATH = "chat.tcss"
    AUTO_FOCUS = "#answer"
    BINDINGS: Final[list[BindingType]] = [  # type: ignore[misc]
        Binding("f1", "help", "Help", priority=True),
        Binding("ctrl+z", "undo", "Take back the last answer", priority=True),
        Binding("ctrl+s", "save", "Save the report", priority=True),
        Binding("pageup", "scroll_said(-1)", "Scroll up", show=False),
        Binding("pagedown", "scroll_said(1)", "Scroll down", show=False),
    ]

    @dataclass
    class Heard(Message):
        """What the exchange gains by a typed line."""

        says: list[Say]
        ask: Ask | None
        ended: bool
        left: bool

    @dataclass
    class Stood(Message):
        """Where it stands; `turn` tells whether that is still the latest."""

        turn: int
        standing: str

    @dataclass
    class Failed(Message):
        """The store refused, or the program has a fault."""

        error: Exception

    class Free(Message):
        """The conversation can be called again."""

    def __init__(self, start: Callable[[], Talk], around: Around) -> None:
        """Show the conversation that `start` gives; it is called once, away from the screen."""
        super().__init__()
        self._start, self._around = start, around
        self._talk: Talk | None = None
        self._typed: deque[str] = deque()
        self._turn = 0
        self._busy = False
        self._leaving = False
        self._ended = False

    def compose(self) -> ComposeResult:
        """Head, exchange, standing, the box, the keys."""
        yield Static(Content("Trunk Talk"), id="head")
        yield Exchange(id="exchange")
        yield Static("", id="standing", markup=False)
        with Horizontal(id="entry"):
            yield Static(Content("> "), id="prompt")
            yield AnswerBox(id="answer")
        yield Static(Content(KEYS), id="keys")

    def on_mount(self) -> None:
        """Open the conversation."""
        self._begin(None)

    @on(Input.Submitted, "#answer")
    def take_answer(self) -> None:
        """Pass on what was typed."""
        typed = self.query_one(AnswerBox).take()
        if typed.strip():
            self._send(typed)

    def action_help(self) -> None:
        """Say which keys there are, and ask the conversation for its help."""
        self._note(KEYS_IN_WORDS)
        self._send("help")

    def action_undo(self) -> None:
        """Take back the last answer."""
        self._send("undo")

    def action_save(self) -> None:
        """Save the report."""
        self._send("save")

    def action_scroll_said(self, pages: int) -> None:
        """Scroll what was said by a page."""
        exchange = self.query_one(Exchange)
        exchange.scroll_relative(y=pages * max(exchange.size.height - 1, 1), animate=False)

    def _send(self, typed: str) -> None:
        self.query_one(Exchange).add_waiting(Say(Speaker.PERSON, Manner.TYPED, typed))
        self._typed.append(typed)
        self._turn += 1
        if not self._busy:
            self._next()

    def _next(self) -> None:
        if self._leaving or not self._typed:
            return
        self.query_one(Exchange).begin()
        self._begin(self._typed.popleft())

    def _begin(self, typed: str | None) -> None:
        self._busy = True
        self._stand(WORKING, working=True)
        self._call(self._turn, typed)

    @work(thread=True, group="talk", exit_on_error=False)
    def _call(self, turn: int, typed: str | None) -> None:
        """Call the conversation; the only place that does. Touches no widget."""
        try:
            talk = self._talk or self._start()
            self._talk = talk
            says = self._said(talk, typed)
            self.post_message(self.Heard(says, talk.pending, talk.ended, talk.left))
            if turn == self._turn:
                self.post_message(self.Stood(turn, talk.standing()))
        except Exception as error:  # told to the person, kept for the end, the chat lives on
            self.post_message(self.Failed(error))
        finally:
            self.post_message(self.Free())

    def _said(self, talk: Talk, typed: str | None) -> list[Say]:
        if typed is None:
            return talk.opening()
        if is_save(typed):
            return [Say(Speaker.TOOL, Manner.NOTE, self._saved()), *_asked_again(talk.pending)]
        return talk.hear(as_lines(typed))

    def _saved(self) -> str:
        try:
            return self._around.save()
        except OSError as error:
            return f"The report could not be saved: {error.strerror or error}."

    @on(Heard)
    def _show_heard(self, event: Heard) -> None:
        says = [say for say in event.says if say.speaker is not Speaker.PERSON]
        over = event.ended and not self._ended
        self._ended = event.ended
        if event.left:
            self.leave()
        else:
            says += [Say(Speaker.TOOL, Manner.NOTE, OVER)] if over else []
            alarm = any(say.manner is Manner.ALARM for say in says)
            self._show(says, from_first=over or alarm)
        hint = OVER_HINT if event.ended else _hint(event.ask)
        self.query_one(AnswerBox).placeholder = visible(hint)

    @on(Stood)
    def _show_standing(self, event: Stood) -> None:
        if event.turn == self._turn:
            self._stand(visible(event.standing))

    @on(Failed)
    def _show_failure(self, event: Failed) -> None:
        if isinstance(event.error, StoreError) or self._talk is None:
            self.leave(event.error)
            return
        told = self._around.fault(event.error)
        self._show([Say(Speaker.TOOL, Manner.CAUTION, told)])
        self._stand("Where it stands can't be told, because of a fault of this program.")

    @on(Free)
    def _go_on(self) -> None:
        self._busy = False
        self._next()

    def _show(self, says: Iterable[Say], *, from_first: bool = False) -> None:
        self.query_one(Exchange).add(says, from_first=from_first)

    def _note(self, text: str) -> None:
        self._show([Say(Speaker.TOOL, Manner.NOTE, text)])

    def _stand(self, text: str, *, working: bool = False) -> None:
        line = self.query_one("#standing", Static)
        line.update(Content(text))
        line.set_class(working, "-working")

    def leave(self, error: Exception | None = None) -> None:
        """Leave; whatever was answered is kept already, unless there is an error."""
        self._leaving = True
        self.dismiss(Left(error))


def _asked_again(ask: Ask | None) -> list[Say]:
    """The open question once more, so that it stays in sight."""
    return [] if ask is None else [Say(Speaker.TOOL, Manner.QUESTION, ask.text)]


def _hint(ask: Ask | None) -> str:
    """What the empty box shows: the words that would be understood, or the unit taken."""
    if ask is None:
        return ""
    if ask.choices:
        return ", ".join(ask.choices)
    return f"without a unit: {ask.unit}" if ask.unit else ""
