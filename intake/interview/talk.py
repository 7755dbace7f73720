"""The inside of a conversation: its state, what is recorded, and what every answer does to it."""

from collections.abc import Callable, Collection, Sequence
from typing import Protocol

from engine.job.job import Job
from engine.verdict import Verdict
from intake.interview.booking import Booking
from intake.interview.booking_card import card_of
from intake.interview.events import Event
from intake.interview.fold import State, fold, step
from intake.interview.planner import collectable, context_of, next_question
from intake.interview.question import Context, Question
from intake.interview.turns import Manner, Say, Speaker, Voice

__all__ = ["Judge", "Talk", "say"]


class Judge(Protocol):
    """Anything that says what it thinks of a job."""

    def __call__(self, job: Job, /) -> Verdict:
        """The verdict of a job."""
        ...


def say(manner: Manner, text: str) -> Say:
    """A line of the tool's."""
    return Say(Speaker.TOOL, manner, text)


class Talk:
    """State and record of one conversation; knows no words of its own.

    Attributes:
        state: The fold of `events`.
        events: Everything that happened, in order.
        left: The person said goodbye in this sitting.
    """

    def __init__(
        self,
        events: Sequence[Event],
        record: Callable[[Event], None] | None,
        judge: Judge | None,
    ) -> None:
        """Fold what happened so far."""
        self.events: list[Event] = list(events)
        self.state: State = fold(self.events)
        self.left = False
        self._record = record
        self._judge = judge
        self._judged: tuple[Job, frozenset[str], Verdict] | None = None
        self._wants: tuple[Job, frozenset[str]] | None = None

    def happened(self, event: Event) -> None:
        """Keep an event, then take it in; an event that can't be kept is not taken in.

        Raises:
            FactError: It states an impossible fact; nothing was kept.
        """
        after = step(self.state, event)
        if self._record is not None:
            self._record(event)
        self.events.append(event)
        self.state = after

    @property
    def context(self) -> Context:
        """What the questions may look at."""
        return context_of(self.state, self._wanted)

    @property
    def question(self) -> Question | None:
        """The open question; None if nothing is left or the script is stopped."""
        return next_question(self.state, self.context)

    @property
    def collectable(self) -> frozenset[str]:
        """Facts that the questions still open could give."""
        return collectable(self.state, self.context)

    def verdict(self) -> Verdict:
        """The verdict of what is known; the same object while nothing changes."""
        job, open_facts = self.state.job, self.collectable
        if self._judged is not None:
            known, had, verdict = self._judged
            if known is job and had == open_facts:
                return verdict
        verdict = self._judge(job) if self._judge is not None else _judged(job, open_facts)
        self._judged = (job, open_facts, verdict)
        return verdict

    def booking(self) -> Booking:
        """The card as it stands."""
        state = self.state
        return card_of(state.job, state.unsaid, state.flags)

    def _wanted(self) -> frozenset[str]:
        """What the verdict asks for, of a technician; judged once for what is known."""
        state = self.state
        if state.voice is not Voice.TECHNICIAN:
            return frozenset()
        if self._wants is None or self._wants[0] is not state.job:
            if self._judge is not None:
                verdict = self._judge(state.job)
            else:
                verdict = _judged(state.job, collectable(state, context_of(state)))
            keys = frozenset(wanted.key for wanted in verdict.collect_next)
            self._wants = (state.job, keys)
        return self._wants[1]


def _judged(job: Job, open_facts: Collection[str]) -> Verdict:
    # Imported here: judging loads numpy and the physics, which the first question doesn't need.
    from engine.judge import judge

    return judge(job, collectable=open_facts)
