"""One question of the bank as data, and what it may look at to know whether it applies."""

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from engine.job.belief import How
from engine.job.facts import Place
from engine.job.job import LISTS, Job
from intake.interview.turns import Voice

if TYPE_CHECKING:  # the engine's numbers are loaded once something is weighed
    from engine.assessment import Assessment

__all__ = ["Context", "Question", "always"]


@dataclass(frozen=True, slots=True)
class Context:
    """What a question may look at to know whether it applies.

    Attributes:
        job: What is known.
        voice: Who is answering.
        unsaid: Keys of questions that were answered "don't know" or skipped.
        answered: Keys of questions that were answered.
        closed: Places that can't be reached today.
        lacks: Facts of tools that turned out not to be at hand ("site.has_gauge").
        wanted: Gives the keys of facts that the verdict asks for; computed when first called.
        assessed: Gives the job put to every check, to weigh questions by; None where nobody
            weighs.
        undecided: Whether the verdict can't be left as it is yet, see `engine.worth.may_stand`;
            judged when called.
        beyond: Whether the person wants to answer what isn't worth asking as well.
    """

    job: Job
    voice: Voice
    unsaid: frozenset[str] = frozenset()
    answered: frozenset[str] = frozenset()
    closed: frozenset[str] = frozenset()
    lacks: frozenset[str] = frozenset()
    wanted: Callable[[], frozenset[str]] = field(default=frozenset)
    assessed: "Callable[[], Assessment] | None" = None
    undecided: Callable[[], bool] = lambda: False
    beyond: bool = False

    def word(self, key: str) -> str:
        """A fact's word; empty if nobody stated it."""
        return self.job.word(key) or ""

    def is_no(self, key: str) -> bool:
        """Whether somebody said no, or found that it isn't there."""
        return key in self.lacks or self.job.word(key) == "no"

    def is_yes(self, key: str) -> bool:
        """Whether somebody said yes."""
        return self.job.word(key) == "yes"

    @property
    def burner(self) -> bool:
        """Whether a burner goes in."""
        return self.word("equipment.kind") in ("furnace", "dual_fuel", "packaged")

    @property
    def heat_pump(self) -> bool:
        """Whether a heat pump goes in."""
        return self.word("equipment.kind") in ("heat_pump", "dual_fuel")

    @property
    def cooling(self) -> bool:
        """Whether it will cool; taken to be so until somebody says that it won't."""
        told = self.job.is_known("equipment.cooling_tons")
        return told or "new_no_cooling" not in self.answered

    @property
    def staged(self) -> bool:
        """Whether it has more than one stage."""
        return self.word("equipment.stages") in ("two", "variable")

    def settled(self, key: str) -> bool:
        """Whether this question was answered or given up."""
        return key in self.answered or key in self.unsaid

    def known(self, key: str) -> bool:
        """Whether somebody stated a fact, or how many entries a list has."""
        if key in LISTS:
            return self.job.length(key) is not None
        return self.job.is_known(key)

    def firmly(self, key: str) -> bool:
        """Whether a fact is known well enough for this voice.

        What was said on the phone is known to a dispatcher and still open to a technician.
        """
        if key in LISTS:
            return self.job.length(key) is not None
        belief = self.job.stated(key)
        if belief is None:
            return False
        if self.voice is Voice.DISPATCHER:
            return True
        return belief.how not in (How.PHONE, How.GUESSED, How.ASSUMED)


def always(context: Context) -> bool:
    """A question that applies to every house."""
    return True


@dataclass(frozen=True, slots=True)
class Question:
    """One row of the bank.

    Attributes:
        key: Its own name, which events keep.
        field: How `reading` reads the answer ("duct", "yes_no", ...).
        words: What is asked, one idea.
        why: Why it is asked.
        where: Where to look or stand.
        how: How to get it.
        typical: What is usual; told only when asked.
        place: Where the person stands.
        minutes: What answering costs.
        fills: Value name and the fact it states, for plain values.
        section: The list it states, for ducts, filters, openings, fittings, readings.
        facts: Facts that settle it; all known, it is not asked.
        choices: The words allowed, for choices.
        unit: Unit taken if none is typed.
        needs: Facts that must not be "no" ("site.has_gauge").
        when: Whether it applies.
        confirm: Answers given by phone are asked again on site.
        topics: Words that name it in a correction or a volunteered answer.
        none: What "none" means: "zero" states that its list is empty, "FACT=WORD" states that
            fact, any other word settles the question (and the question of that name); empty if
            "none" is no answer.
        same: The fact that "same" copies; empty if "same" is no answer.
        caution: What is told before it is asked.
        label: What its answer is called in an echo.
        bundle: The engine's bundle of facts that it belongs to, by whose worth it is asked; empty
            if it is asked by rule, before anything is weighed.
        closing: Asked before the end whatever it is worth: a caution or a verdict of its own hangs
            on it.
    """

    key: str
    field: str
    words: str
    why: str
    where: str
    how: str
    typical: str
    place: Place
    minutes: float
    fills: tuple[tuple[str, str], ...] = ()
    section: str = ""
    facts: tuple[str, ...] = ()
    choices: tuple[str, ...] = ()
    unit: str = ""
    needs: tuple[str, ...] = ()
    when: Callable[[Context], bool] = always
    confirm: bool = False
    topics: tuple[str, ...] = ()
    none: str = ""
    same: str = ""
    caution: str = ""
    label: str = ""
    bundle: str = ""
    closing: bool = False

    def applies(self, context: Context) -> bool:
        """Whether it is worth putting: not settled, not implied, possible here."""
        if context.settled(self.key):
            return False
        if self.place.value in context.closed:
            return False
        if any(context.is_no(need) for need in self.needs):
            return False
        if not self.when(context):
            return False
        known = context.firmly if self.confirm else context.known
        return not (self.facts and all(known(key) for key in self.facts))
