"""The inside of a conversation: its state, what is recorded, and what every answer does to it."""

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Protocol

from engine.job.job import Job
from engine.verdict import Verdict
from intake.interview.booking import Booking
from intake.interview.booking_card import card_of
from intake.interview.events import Event
from intake.interview.fold import State, fold, step
from intake.interview.planner import Plan, collectable, context_of, plan_of, weighed
from intake.interview.question import Context, Question
from intake.interview.turns import Manner, Say, Speaker, Voice

if TYPE_CHECKING:  # the engine's numbers are loaded once something is judged
    from engine.assessment import Assessment
    from engine.what_if import Candidate, LargestQuiet
    from intake.interview.weighing import Weighing

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
        """Fold what happened so far; with a judge of their own, nobody weighs the questions."""
        self.events: list[Event] = list(events)
        self.state: State = fold(self.events)
        self.left = False
        self._record = record
        self._judge = judge
        self._judged: tuple[Job, frozenset[str], Verdict] | None = None
        self._assessment: tuple[Job, Assessment] | None = None
        self._plan: tuple[State, Plan] | None = None

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
        assessed = self._assessed if self._judge is None else None
        return context_of(self.state, self._wanted, assessed, self._undecided)

    @property
    def plan(self) -> Plan:
        """The open question and what it was chosen by; the same object while nothing changes."""
        if self._plan is None or self._plan[0] is not self.state:
            self._plan = (self.state, plan_of(self.state, self.context))
        return self._plan[1]

    @property
    def question(self) -> Question | None:
        """The open question; None if nothing worth asking is left or the script is stopped."""
        return self.plan.question

    @property
    def weighing(self) -> "Weighing | None":
        """What the technician's open questions are worth; None where nobody weighs them."""
        state = self.state
        if state.voice is not Voice.TECHNICIAN or state.stopped or state.doubt or state.finished:
            return None
        return self.plan.weighing or weighed(state, self.context)

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
        verdict = self._judge(job) if self._judge is not None else self._by_engine(job, open_facts)
        self._judged = (job, open_facts, verdict)
        return verdict

    def verdict_with(self, candidate: "Candidate") -> Verdict:
        """The verdict of what is known with other equipment; nothing of it is kept.

        Raises:
            FactError: The candidate holds a value that no house has.
        """
        # Imported here for the same reason as the engine below.
        from engine.what_if import candidate_job, judge_candidate

        if self._judge is not None:
            return self._judge(candidate_job(self.state.job, candidate))
        return judge_candidate(self._assessed(), candidate, collectable=self.collectable)

    def largest_quiet(self) -> "LargestQuiet | None":
        """The largest cooling size that the ducts carry; see `engine.what_if`."""
        from engine.what_if import largest_quiet

        return largest_quiet(self.state.job, assessment=self._assessed())

    def booking(self) -> Booking:
        """The card as it stands."""
        state = self.state
        return card_of(state.job, state.unsaid, state.flags)

    def _wanted(self) -> frozenset[str]:
        """What the verdict asks for, of a technician."""
        if self.state.voice is not Voice.TECHNICIAN:
            return frozenset()
        return frozenset(wanted.key for wanted in self.verdict().collect_next)

    def _undecided(self) -> bool:
        # Imported here for the same reason as the engine below.
        from engine.worth import may_stand

        return not may_stand(self._assessed(), self.verdict())

    def _assessed(self) -> "Assessment":
        """The job put to the engine's checks; the same object while nothing changes."""
        job = self.state.job
        if self._assessment is None or self._assessment[0] is not job:
            # Imported here: it loads numpy and the physics, which the first question doesn't need.
            from engine.assessment import assess

            self._assessment = (job, assess(job))
        return self._assessment[1]

    def _by_engine(self, job: Job, open_facts: frozenset[str]) -> Verdict:
        # Imported here for the same reason.
        from engine.judge import judge

        return judge(job, collectable=open_facts, assessment=self._assessed())
