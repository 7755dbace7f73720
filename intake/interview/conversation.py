"""The conversation: pure, one line in, a few lines out; every mouth holds the same object."""

from collections.abc import Callable, Sequence

from engine.job.job import Job
from engine.verdict import ModeStatus, Verdict
from intake.interview import danger
from intake.interview.booking import Booking, decided_by_flag
from intake.interview.booking_card import card_lines
from intake.interview.commands import known_lines
from intake.interview.events import Event, Finished, Started
from intake.interview.hearing import heard, open_phone_keys
from intake.interview.listening import plain_choices
from intake.interview.planner import place_of
from intake.interview.question import Question
from intake.interview.talk import Judge, Talk, say
from intake.interview.told import sentence, told
from intake.interview.turns import Ask, Manner, Say, Speaker, Voice
from intake.reading.clean import LONGEST_ANSWER, normalise, plain_line, plain_lines

__all__ = ["Conversation"]

_VOICE_KEY = "voice"
_VOICE_WORDS = "Are you in the house, or on the phone with a caller? (1 house, 2 phone)"
_VOICES = {
    Voice.TECHNICIAN: frozenset(
        ["1", "technician", "tech", "house", "in", "on-site", "site", "inside", "here", "t"]
    ),
    Voice.DISPATCHER: frozenset(
        ["2", "dispatcher", "dispatch", "phone", "call", "caller", "office", "desk", "d"]
    ),
}
_DECIDED = (
    '{why} So it is a visit and duct survey. A few more answers fill the card; "finish" ends here.'
)


class Conversation:
    """Asks its questions; hear() is the only way in.

    Attributes:
        ended: The verdict or the card was given, or the person said goodbye.
        left: The person said goodbye in this sitting; after a verdict more may be asked.
        stopped: A red flag stopped the script.
    """

    def __init__(
        self,
        events: Sequence[Event] = (),
        *,
        record: Callable[[Event], None] | None = None,
        judge: Judge | None = None,
    ) -> None:
        """Begin, or go on where `events` ended.

        Args:
            events: What happened in this job so far.
            record: Keeps an event; called before `hear` returns. What it raises goes on to the
                caller, and the event is not taken in.
            judge: Says what it thinks of a job; by default the engine, which is also told what
                can still be collected.
        """
        self._talk = Talk(events, record, judge)

    @property
    def voice(self) -> Voice | None:
        """Who is talking; None until it was chosen."""
        return self._talk.state.voice

    @property
    def job(self) -> Job:
        """What is known."""
        return self._talk.state.job

    @property
    def events(self) -> tuple[Event, ...]:
        """Everything that happened, in order."""
        return tuple(self._talk.events)

    @property
    def ended(self) -> bool:
        """Whether the verdict or card was given, or the person said goodbye."""
        return self._talk.state.finished or self._talk.left

    @property
    def left(self) -> bool:
        """Whether the person said goodbye; after the verdict alone more may be asked."""
        return self._talk.left

    @property
    def stopped(self) -> bool:
        """Whether a red flag stopped the script."""
        return bool(self._talk.state.stopped)

    @property
    def collectable(self) -> frozenset[str]:
        """Facts that the questions still open could give."""
        return self._talk.collectable

    @property
    def pending(self) -> Ask | None:
        """The open question; None when stopped or at the end."""
        state = self._talk.state
        number = 1 + len({event.question for event in state.standing})
        if state.stopped or self._talk.left:
            return None
        if state.voice is None:
            return Ask(_VOICE_KEY, "choice", "", ("technician", "dispatcher"), _VOICE_WORDS, number)
        if state.doubt:
            return danger.doubt_ask(state.doubt, number)
        question = self._talk.question
        if question is None:
            return None
        choices = plain_choices(question)
        return Ask(
            question.key, question.field, question.unit, choices, self._words(question), number
        )

    def choose(self, voice: Voice) -> None:
        """Begin a sitting in this voice without asking."""
        self._talk.happened(Started(voice=voice))

    def opening(self) -> list[Say]:
        """Greeting and first question; for a job that goes on, where it stands."""
        state = self._talk.state
        if state.stopped:
            return [say(Manner.ALARM, danger.STOPPED_HINT)]
        if state.standing:
            lines = known_lines(self._talk)
            last = sentence("; ".join(lines[-3:]))
            recap = f"Back to this job: {len(lines)} answers so far. {last}"
            return [say(Manner.NOTE, recap), *self._next(fresh=True)]
        return [
            say(
                Manner.NOTE,
                "Can these ducts carry the new equipment's air? Answer as you'd talk; don't know"
                ' is fine; "help" tells what you can type.',
            ),
            *self._next(fresh=True),
        ]

    def hear(self, text: str) -> list[Say]:
        """Take one line; what the exchange gains, the typed line first.

        Raises:
            Exception: Only what `record` raises; the conversation is then as before.
        """
        line = self._cleaned(text)
        typed = Say(Speaker.PERSON, Manner.TYPED, plain_line(line))
        self._talk.left = False
        if self._talk.state.voice is None:
            return [typed, *self._hear_voice(line)]
        was_finished = self._talk.state.finished
        events_before = len(self._talk.events)
        stopped_before = self._talk.state.stopped
        decided_before = self._decided()
        open_before = self._talk.question
        says = heard(self._talk, line)
        if self._talk.left:
            return [typed, *says]
        changed = len(self._talk.events) != events_before
        if self._talk.state.stopped:
            return [typed, *says, *self._card_of_stop(stopped_before)]
        if self._talk.state.doubt:
            return [typed, *says]
        if was_finished and not changed:
            return [typed, *says]
        if self._decided() and not decided_before and self._talk.question is not None:
            says = [*says, say(Manner.BOOKING, _DECIDED.format(why=self._talk.booking().decided))]
        return [typed, *says, *self._next(fresh=self._talk.question is not open_before)]

    def _decided(self) -> bool:
        """Whether a hard flag of this call has decided its booking."""
        state = self._talk.state
        return state.voice is Voice.DISPATCHER and decided_by_flag(state.job)

    def verdict(self) -> Verdict | None:
        """What the engine says of a technician's job; None for a call or before it began."""
        if self._talk.state.voice is not Voice.TECHNICIAN:
            return None
        return self._talk.verdict()

    def booking(self) -> Booking | None:
        """What a dispatcher would book now; None for a technician."""
        if self._talk.state.voice is not Voice.DISPATCHER:
            return None
        return self._talk.booking()

    def standing(self) -> str:
        """One line: what it would say if stopped now."""
        state = self._talk.state
        if state.stopped:
            return "Stopped for safety."
        if state.voice is None:
            return "Nothing yet."
        if state.voice is Voice.DISPATCHER:
            booking = self._talk.booking()
            name = booking.outcome.value.replace("_", " ")
            return f"If stopped now: {name}. {booking.decided}"
        # Imported here: telling is needed only once something is to be told.
        from intake.telling.asking import bought_sentence, sure_modes
        from intake.telling.verdict import short_verdict

        verdict = self._talk.verdict()
        modes = verdict.modes.values()
        if modes and all(m.status is ModeStatus.CANT_SAY and m.treat_as is None for m in modes):
            now = "too early to say"
        else:
            now = short_verdict(verdict)
        weighing = self._talk.weighing
        buys = ""
        if weighing is not None:
            buys = bought_sentence(weighing.worths, sure_modes(verdict))
        return f"If stopped now: {now}. {buys}".rstrip()

    def _cleaned(self, text: str) -> str:
        question = self._talk.question
        if question is not None and question.field in ("blower_table", "cooling_rows"):
            return "\n".join(plain_lines(text))
        if len(text) > LONGEST_ANSWER:
            return plain_line(text, LONGEST_ANSWER + 1)
        return plain_line(text)

    def _hear_voice(self, line: str) -> list[Say]:
        flag = danger.watch(self._talk, line)
        if flag is not None:
            return flag
        words = set(normalise(line).replace(".", " ").split())
        voices = [voice for voice, said in _VOICES.items() if words & said]
        if len(voices) != 1:
            return [say(Manner.QUESTION, _VOICE_WORDS)]
        self.choose(voices[0])
        return self._next(fresh=True)

    def _words(self, question: Question) -> str:
        """The question as asked; what was said on the phone is told before it is asked again."""
        keys = open_phone_keys(self._talk, question)
        if not keys:
            return question.words
        said = told({key: self.job.beliefs[key] for key in keys})
        return f"By phone: {sentence(said)} Confirm, or say what you find. {question.words}"

    def _next(self, *, fresh: bool) -> list[Say]:
        """The next question, or the end.

        Args:
            fresh: Whether the question is put for the first time; what belongs to it is told then.
        """
        talk = self._talk
        if talk.state.voice is None:
            return [say(Manner.QUESTION, _VOICE_WORDS)]
        question = talk.question
        if question is not None:
            lines = self._before(question) if fresh and not talk.state.reopened else []
            return [*lines, say(Manner.QUESTION, self._words(question))]
        if talk.state.finished:
            return self._end()
        enough = self._enough()
        talk.happened(Finished())
        return [*enough, *self._end()]

    def _before(self, question: Question) -> list[Say]:
        """What is told before a question: why now, what else could be told here, a caution."""
        lines = [say(Manner.CAUTION, question.caution)] if question.caution else []
        weighing = self._talk.plan.weighing
        if weighing is None or not weighing.worths:
            return lines
        # Imported here: telling is needed only once something is to be told.
        from intake.telling.asking import in_one_go, now_sentence, sure_modes

        first = weighing.worths[0]
        if first.bundle.key != question.bundle:
            return lines
        moved = first.bundle.place is not place_of(self._talk.state)
        together = in_one_go(weighing.worths, first.bundle.place) if moved else ""
        now = now_sentence(first, sure_modes(self._talk.verdict()))
        return [*lines, *(say(Manner.NOTE, words) for words in (together, now) if words)]

    def _enough(self) -> list[Say]:
        """Why no more is asked, where more could be."""
        weighing = self._talk.plan.weighing
        if weighing is None or weighing.stop is None or not weighing.worths:
            return []
        from intake.telling.asking import enough_sentence
        from intake.telling.verdict import way_is_open

        settled = weighing.stop == "settled"
        open_way = settled and self._talk.state.voice is Voice.TECHNICIAN
        way = open_way and way_is_open(self._talk.verdict())
        return [say(Manner.NOTE, enough_sentence(settled=settled, way_open=way))]

    def _end(self) -> list[Say]:
        if self._talk.state.voice is Voice.DISPATCHER:
            return self._card()
        # Imported here: telling is needed only once something is to be told.
        from intake.telling.verdict import verdict_lines

        lines = verdict_lines(self._talk.verdict(), self.job)
        return [say(Manner.VERDICT, line) for line in lines]

    def _card(self) -> list[Say]:
        return [say(Manner.BOOKING, line) for line in card_lines(self._talk.booking())]

    def _card_of_stop(self, stopped_before: str) -> list[Say]:
        """A call that was just stopped is booked as a safety call."""
        state = self._talk.state
        if state.voice is Voice.DISPATCHER and state.stopped != stopped_before:
            return self._card()
        return []
