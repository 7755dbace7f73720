"""What stands after a row of events: the state of a conversation, one event at a time.

`fold(events)` and stepping live give the same state; nothing of a conversation lives elsewhere.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from functools import cached_property

from engine.job.job import Job
from intake.interview.events import (
    Answered,
    AskedBack,
    Event,
    Finished,
    FlagRaised,
    FlagSettled,
    Reopened,
    Started,
    Undone,
    Unsaid,
    WentOn,
)
from intake.interview.turns import Voice

__all__ = ["State", "fold", "job_of", "step"]

Standing = Answered | Unsaid
"""What still stands of what was said."""


@dataclass(frozen=True)
class State:
    """What stands.

    Attributes:
        voice: Who is talking; None before the first sitting.
        standing: Answers and "don't know"s that were not taken back, in order.
        voices: Who gave each of them.
        job: The fold of the standing answers.
        asked_back: The ask-back that is open, if any.
        misread: How often the open question was misread in a row.
        reopened: The question that is asked again; empty if none.
        doubt: Kind of the red flag that waits for "is that happening right now?".
        doubts: How often that was asked.
        doubt_text: The line that raised it, which may hold an answer too.
        stopped: Kind of the red flag that stopped the script.
        flags: Every red flag that was there, in order.
        finished: Whether the verdict or the card was asked for, or nothing worth asking was left.
        beyond: Whether the person wants to be asked what isn't worth asking as well.
        sittings: How many sittings began.
    """

    voice: Voice | None = None
    standing: tuple[Standing, ...] = ()
    voices: tuple[Voice, ...] = ()
    job: Job = field(default_factory=Job)
    asked_back: AskedBack | None = None
    misread: int = 0
    reopened: str = ""
    doubt: str = ""
    doubts: int = 0
    doubt_text: str = ""
    stopped: str = ""
    flags: tuple[str, ...] = ()
    finished: bool = False
    beyond: bool = False
    sittings: int = 0

    @cached_property
    def answered(self) -> frozenset[str]:
        """Keys of questions that are settled by an answer."""
        keys: set[str] = set()
        for event, voice in zip(self.standing, self.voices, strict=True):
            if isinstance(event, Answered) and voice is self.voice:
                keys.add(event.question)
                keys.update(event.settles)
        return frozenset(keys)

    @cached_property
    def unsaid(self) -> frozenset[str]:
        """Keys of questions given up in this voice and not answered since."""
        keys: set[str] = set()
        for event, voice in zip(self.standing, self.voices, strict=True):
            if isinstance(event, Unsaid) and voice is self.voice:
                keys.add(event.question)
            elif isinstance(event, Answered):
                keys.discard(event.question)
        return frozenset(keys)

    @cached_property
    def closed(self) -> frozenset[str]:
        """Places that can't be reached today."""
        return frozenset(e.closes for e in self.standing if isinstance(e, Unsaid) and e.closes)

    @cached_property
    def lacks(self) -> frozenset[str]:
        """Facts of tools that turned out not to be at hand."""
        return frozenset(e.lacks for e in self.standing if isinstance(e, Unsaid) and e.lacks)

    @property
    def asked(self) -> tuple[str, ...]:
        """Keys of the questions that were put in this voice and settled, in order."""
        return tuple(
            event.question
            for event, voice in zip(self.standing, self.voices, strict=True)
            if voice is self.voice and not (isinstance(event, Answered) and event.volunteered)
        )

    @property
    def last_answer(self) -> Answered | None:
        """The last answer that stands."""
        for event in reversed(self.standing):
            if isinstance(event, Answered):
                return event
        return None

    def answer_to(self, question: str) -> Answered | None:
        """The last standing answer to a question."""
        for event in reversed(self.standing):
            if isinstance(event, Answered) and event.question == question:
                return event
        return None


def fold(events: Iterable[Event]) -> State:
    """The state after these events."""
    state = State()
    for event in events:
        state = step(state, event)
    return state


def _calm(state: State) -> State:
    """The state with nothing open from before."""
    return replace(state, asked_back=None, misread=0, reopened="")


def step(state: State, event: Event) -> State:
    """The state after one more event."""
    match event:
        case Started(voice=voice):
            turned = state.voice is not None and voice is not state.voice
            fresh = replace(_calm(state), finished=False) if turned else state
            return replace(fresh, voice=voice, sittings=state.sittings + 1)
        case Answered():
            return _stood(state, event, _applied(state.job, event))
        case Unsaid():
            return _stood(state, event, state.job)
        case AskedBack():
            return replace(state, asked_back=event, misread=state.misread + 1)
        case Reopened(question=question):
            return replace(state, reopened=question, asked_back=None, misread=0, finished=False)
        case Undone():
            return _undone(state)
        case FlagRaised(kind=kind, state="present"):
            return replace(state, stopped=kind, doubt="", flags=(*state.flags, kind))
        case FlagRaised(kind=kind, text=text):
            return replace(
                state,
                doubt=kind,
                doubts=state.doubts + 1,
                doubt_text=state.doubt_text or text,
            )
        case FlagSettled(kind=kind, present=True):
            return replace(
                state, stopped=kind, doubt="", doubts=0, doubt_text="", flags=(*state.flags, kind)
            )
        case FlagSettled():
            return replace(state, stopped="", doubt="", doubts=0, doubt_text="")
        case Finished():
            return replace(_calm(state), finished=True, beyond=False)
        case WentOn():
            return replace(_calm(state), finished=False, beyond=True)


def _stood(state: State, event: Standing, job: Job) -> State:
    voice = state.voice or Voice.TECHNICIAN
    open_stays = isinstance(event, Answered) and event.volunteered
    if (
        open_stays
        and state.asked_back is not None
        and state.asked_back.kind.startswith("elsewhere")
    ):
        state = replace(state, asked_back=None, misread=0)
    return replace(
        state if open_stays else _calm(state),
        standing=(*state.standing, event),
        voices=(*state.voices, voice),
        job=job,
    )


def _undone(state: State) -> State:
    if not state.standing:
        return state
    standing = state.standing[:-1]
    return replace(
        _calm(state),
        standing=standing,
        voices=state.voices[:-1],
        job=job_of(standing),
        finished=False,
    )


def job_of(standing: Iterable[Standing]) -> Job:
    """The job that standing answers add up to."""
    job = Job()
    for event in standing:
        if isinstance(event, Answered):
            job = _applied(job, event)
    return job


def _applied(job: Job, event: Answered) -> Job:
    for key in event.forget:
        job = job.without(key)
    job = job.with_facts(event.beliefs)
    for name, entries in event.lengths.items():
        job = job.with_length(name, entries)
    if event.blower is not None:
        job = replace(job, blower=event.blower)
    if event.old_blower is not None:
        job = replace(job, old_blower=event.old_blower)
    if event.cooling_rows is not None:
        job = replace(job, cooling_rows=event.cooling_rows)
    return job
