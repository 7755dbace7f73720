"""A conversation played line by line, to be read as a dialogue and asserted on."""

from collections.abc import Iterable, Sequence

from engine.job.job import Job
from engine.verdict import Verdict
from intake.interview.conversation import Conversation
from intake.interview.events import Event, event_from_json, event_to_json
from intake.interview.fold import State, fold
from intake.interview.turns import Ask, Manner, Say, Speaker, Voice


def no_judge(job: Job) -> Verdict:
    """A judge that says nothing, where a dialogue isn't about the verdict."""
    return Verdict(modes={})


class Dialogue:
    """Plays lines and keeps what is said.

    Attributes:
        said: What the last line brought.
        kept: Events as JSON lines, as a store would hold them.
    """

    def __init__(
        self,
        voice: Voice | None = Voice.TECHNICIAN,
        events: Sequence[Event] = (),
        *,
        judged: bool = False,
    ) -> None:
        self.kept = [event_to_json(event) for event in events]
        self.talk = Conversation(
            events,
            record=lambda event: self.kept.append(event_to_json(event)),
            **({} if judged else {"judge": no_judge}),
        )
        if voice is not None:
            self.talk.choose(voice)
        self.said: list[Say] = self.talk.opening()

    def play(self, *lines: str) -> "Dialogue":
        """Type these lines, one after the other."""
        for line in lines:
            self.said = self.talk.hear(line)
        return self

    def answer(self, **answers: str | Iterable[str]) -> "Dialogue":
        """Answer questions by key until one without an answer here is open."""
        left = {k: [v] if isinstance(v, str) else list(v) for k, v in answers.items()}
        while self.open is not None and left.get(self.open.key):
            self.play(left[self.open.key].pop(0))
        return self

    @property
    def open(self) -> Ask | None:
        """The open question."""
        return self.talk.pending

    @property
    def key(self) -> str:
        """Key of the open question; empty if none is open."""
        return self.open.key if self.open is not None else ""

    def lines(self, *manners: Manner) -> list[str]:
        """What the tool said to the last line, of these manners or of all."""
        return [
            one.text
            for one in self.said
            if one.speaker is Speaker.TOOL and (not manners or one.manner in manners)
        ]

    @property
    def text(self) -> str:
        """Everything that the tool said to the last line."""
        return "\n".join(self.lines())

    @property
    def state(self) -> State:
        """The state of the live conversation."""
        return self.talk._talk.state

    def replayed(self) -> State:
        """The state after replaying what was kept, through JSON."""
        return fold(event_from_json(line) for line in self.kept)

    @property
    def events(self) -> tuple[Event, ...]:
        """What was kept, read back."""
        return tuple(event_from_json(line) for line in self.kept)


TO_THE_DUCTS = {
    "safety": "no",
    "new_equipment": "3 ton single stage heat pump, 1200 cfm",
    "heat_pump_cfm": "same",
    "strip_cfm": "none",
    "blower_table": "skip",
    "blower_kind": "psc",
    "old_runs": "yes",
    "tools": "tape and gauge",
    "weather": "yes",
}
"""Answers of an invented house, up to its ducts."""


def opened(key: str, voice: Voice = Voice.TECHNICIAN, **answers: str) -> Dialogue:
    """A talk in which this question is open; what comes before it is skipped or as in `answers`.

    Raises:
        AssertionError: The question is never asked.
    """
    told = Dialogue(voice)
    said = {**TO_THE_DUCTS, "d_safety": "no", **answers}
    while told.key != key:
        assert told.key, f"{key} is never asked"
        told.play(said.get(told.key, "skip"))
    return told
