"""The conversation line by line: for pipes, for screen readers, for terminals that can't draw.

Nothing is drawn or coloured; each line begins with a word that says what it is.
"""

from collections.abc import Iterable
from typing import TextIO

from intake.interview.turns import Manner, Say, Speaker
from intake.keeping.errors import StoreError
from intake.mouth import LONGEST_LINE, Around, Talk, as_lines, is_save, visible

__all__ = ["run_plain"]

PREFIXES = {
    Manner.TYPED: "You",
    Manner.ECHO: "Read",
    Manner.QUESTION: "Question",
    Manner.HELP: "Help",
    Manner.ASK_BACK: "Again",
    Manner.INSIGHT: "So far",
    Manner.CAUTION: "Caution",
    Manner.ALARM: "STOP",
    Manner.VERDICT: "Verdict",
    Manner.BOOKING: "Booking",
    Manner.NOTE: "Note",
}
HOW_TO_TYPE = (
    "One line is one answer; // stands for the end of a line in a table. Empty: the question "
    "again. save: writes the report. quit: leaves; everything is kept."
)
INTERRUPTED = 130
"""Exit status after an interrupt from the keyboard, as shells have it."""


def run_plain(talk: Talk, stdin: TextIO, stdout: TextIO, around: Around) -> int:
    """Hold the conversation until the person says goodbye or the input ends.

    Args:
        talk: The conversation.
        stdin: One answer a line.
        stdout: Everything that is said.
        around: How the report is saved, and what is told last.

    Returns:
        Exit status: 0, or 130 after an interrupt from the keyboard.

    Raises:
        StoreError: From the conversation's record: the last answer could not be kept.
    """
    mouth = _PlainMouth(stdout, typed_on_screen=stdin.isatty())
    try:
        mouth.tell(HOW_TO_TYPE)
        mouth.say(talk.opening())
        _exchange(talk, stdin, mouth, around)
    except KeyboardInterrupt:
        mouth.close_prompt()
        mouth.line(around.farewell())
        return INTERRUPTED
    mouth.line(around.farewell())
    return 0


def _exchange(talk: Talk, stdin: TextIO, mouth: "_PlainMouth", around: Around) -> None:
    while not talk.left:
        mouth.prompt()
        typed = _one_line(stdin)
        if typed is None:
            mouth.close_prompt()
            mouth.line("End of input.")
            mouth.line(_standing(talk, around))
            return
        if not typed.strip():
            mouth.repeat(talk)
        elif is_save(typed):
            mouth.line(_saved(around))
        else:
            mouth.say(_heard(talk, typed, around))


def _heard(talk: Talk, typed: str, around: Around) -> list[Say]:
    try:
        return talk.hear(as_lines(typed))
    except StoreError:
        raise
    except Exception as error:  # told, kept for the end of the program, and the talk goes on
        return [Say(Speaker.TOOL, Manner.CAUTION, around.fault(error))]


def _standing(talk: Talk, around: Around) -> str:
    try:
        return talk.standing()
    except Exception as error:  # as above
        return around.fault(error)


def _one_line(stdin: TextIO) -> str | None:
    """The next line, without its end; None at the end of input. A huge line is cut."""
    line = stdin.readline(LONGEST_LINE)
    if not line:
        return None
    rest = line
    while rest and not rest.endswith("\n"):
        rest = stdin.readline(LONGEST_LINE)
    return visible(line.rstrip("\r\n"))


def _saved(around: Around) -> str:
    try:
        return around.save()
    except OSError as error:
        return f"Note: the report could not be saved: {error.strerror or error}."


class _PlainMouth:
    """Writes lines, each as soon as it is there."""

    def __init__(self, out: TextIO, *, typed_on_screen: bool) -> None:
        self._out, self._typed_on_screen = out, typed_on_screen

    def say(self, says: Iterable[Say]) -> None:
        """Write what was said; what the person typed only if it isn't on the screen already."""
        for say in says:
            if say.speaker is Speaker.PERSON and self._typed_on_screen:
                continue
            self.line(f"{PREFIXES[say.manner]}: {say.text}")

    def tell(self, text: str) -> None:
        """At a keyboard, tell something about this mouth; a pipe doesn't need it."""
        if self._typed_on_screen:
            self.line(f"{PREFIXES[Manner.NOTE]}: {text}")

    def repeat(self, talk: Talk) -> None:
        """After an empty line at a keyboard, say what is open; in a pipe it means nothing."""
        if self._typed_on_screen and talk.pending is not None:
            self.line(f"{PREFIXES[Manner.QUESTION]}: {talk.pending.text}")

    def prompt(self) -> None:
        """Show at a keyboard that it is the person's turn."""
        if self._typed_on_screen:
            self._out.write("Answer: ")
            self._out.flush()

    def close_prompt(self) -> None:
        """Begin a new line after a prompt that nothing was typed to."""
        if self._typed_on_screen:
            self.line("")

    def line(self, text: str) -> None:
        """Write one line, with nothing in it that a terminal would obey."""
        self._out.write(visible(text) + "\n")
        self._out.flush()
