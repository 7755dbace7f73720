"""A conversation for tests of the mouths: three questions, no rule of the trade in it."""

from collections.abc import Callable, Sequence

from intake.interview.turns import Ask, Manner, Say, Speaker
from intake.mouth import Around

QUESTIONS = (
    Ask("trunk", "duct", "in", (), "How big is the trunk where it leaves the plenum?", 1),
    Ask("damper", "yes_no", "", ("yes", "no"), "Is there a damper in the [b]return[/b]?", 2),
    Ask("airflow", "airflow", "CFM", (), "How much air will it need?", 3),
)


def tool(manner: Manner, text: str) -> Say:
    return Say(Speaker.TOOL, manner, text)


class ScriptedTalk:
    """Asks its questions one after the other and takes every answer as it is typed."""

    def __init__(
        self,
        *,
        standing: Callable[[], str] = lambda: "If stopped now: can't say yet.",
        record: Callable[[str], None] = lambda text: None,
        heard: Sequence[str] = (),
    ) -> None:
        self.heard = list(heard)
        self.left = False
        self._standing, self._record = standing, record

    @property
    def ended(self) -> bool:
        return self.left or len(self.heard) == len(QUESTIONS)

    @property
    def pending(self) -> Ask | None:
        left = QUESTIONS[len(self.heard) :]
        return left[0] if left and not self.left else None

    def opening(self) -> list[Say]:
        first = "Welcome back." if self.heard else "Good day."
        return [tool(Manner.NOTE, first), *self._question()]

    def hear(self, text: str) -> list[Say]:
        said = Say(Speaker.PERSON, Manner.TYPED, text)
        if text == "quit":
            self.left = True
            return [said, tool(Manner.NOTE, "Goodbye.")]
        if text == "help":
            return [said, tool(Manner.HELP, "Type what you see."), *self._question()]
        if text == "undo":
            del self.heard[-1:]
            return [said, tool(Manner.NOTE, "Taken back."), *self._question()]
        self._record(text)
        self.heard.append(text)
        return [said, tool(Manner.ECHO, f"I read {text}"), *self._question()]

    def standing(self) -> str:
        return self._standing()

    def _question(self) -> list[Say]:
        if self.pending is None:
            return [tool(Manner.VERDICT, "Nothing is left to ask.")]
        return [tool(Manner.QUESTION, self.pending.text)]


def around(saved: Callable[[], str] = lambda: "Saved: report.html") -> Around:
    return Around(
        save=saved,
        farewell=lambda: "Kept as job 7; go on with --job 7.",
        fault=lambda error: f"A fault: {error}",
    )
