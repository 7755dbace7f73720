"""The app around the chat: its colours, its breakpoints, how it is started and left."""

from collections.abc import Callable
from typing import Final

from textual.app import App
from textual.theme import Theme

from intake.mouth import Around, Talk
from intake.screen.chat import ChatScreen, Left

__all__ = ["ChatApp", "run_screen"]

OWN_COLOURS: Final = Theme(
    name="own-colours",
    primary="ansi_blue",
    secondary="ansi_cyan",
    warning="ansi_yellow",
    error="ansi_red",
    success="ansi_green",
    accent="ansi_magenta",
    foreground="ansi_default",
    background="ansi_default",
    surface="ansi_default",
    panel="ansi_default",
    boost="ansi_default",
    ansi=True,
    variables={
        "ansi-background": "ansi_default",
        "ansi-foreground": "ansi_default",
        "border": "ansi_blue",
        "border-blurred": "ansi_default",
        "input-cursor-background": "ansi_default",
        "input-cursor-foreground": "ansi_default",
        "input-cursor-text-style": "reverse",
        "input-selection-background": "ansi_cyan",
        "input-selection-foreground": "ansi_black",
        "screen-selection-background": "ansi_cyan",
        "screen-selection-foreground": "ansi_black",
        "scrollbar": "ansi_cyan",
        "scrollbar-background": "ansi_default",
    },
)
"""The sixteen colours of the person's own terminal, on its own background."""


class ChatApp(App[Left]):
    """One chat, start to end."""

    TITLE = "Trunk Talk"
    ENABLE_COMMAND_PALETTE = False
    HORIZONTAL_BREAKPOINTS: Final = [(0, "-narrow"), (60, "-wide")]  # type: ignore[misc]
    VERTICAL_BREAKPOINTS: Final = [(0, "-low"), (20, "-tall")]  # type: ignore[misc]

    def __init__(self, start: Callable[[], Talk], around: Around) -> None:
        """Chat about the conversation that `start` gives."""
        super().__init__(ansi_color=True)  # also makes NO_COLOR mean no colour, not black on black
        self._chat = ChatScreen(start, around)
        self.register_theme(OWN_COLOURS)
        self.theme = OWN_COLOURS.name

    def on_mount(self) -> None:
        """Show the chat; leave when it is left."""
        self.push_screen(self._chat, self.exit)

    async def action_quit(self) -> None:
        """Leave; whatever was answered is kept already."""
        self._chat.leave()


def run_screen(start: Callable[[], Talk], around: Around) -> Left | None:
    """Chat until the person leaves; takes over the terminal meanwhile.

    Args:
        start: Gives the conversation; called once the screen is there, from another thread.
        around: How the report is saved, where faults go.

    Returns:
        How it was left; None if the screen broke down by a fault, which it has told.
    """
    return ChatApp(start, around).run()
