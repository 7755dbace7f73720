"""Taking an answer: facts from a reading, the event that keeps them, and the echo."""

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Final

from engine.errors import EngineError, FactError
from engine.job.belief import Belief, Known
from engine.job.job import Job
from intake.interview.answers import BURNER_STAGED, NO_COOLING, facts_from_answers
from intake.interview.beliefs import Facts, Knowing, how_known
from intake.interview.beside import ASIDE, NONE
from intake.interview.danger import SAFETY, ask_unnamed
from intake.interview.events import Answered, Unsaid
from intake.interview.insight import new_insights
from intake.interview.planner import bank_of, question_of
from intake.interview.question import Question
from intake.interview.talk import Talk, say
from intake.interview.told import sentence, told
from intake.interview.turns import Manner, Say, Voice
from intake.reading.result import Accepted, Sure, Volunteered

__all__ = [
    "confirm",
    "give_up",
    "knowing",
    "take",
    "take_nothing",
    "take_same",
]


@dataclass(slots=True)
class _Gathered:
    """Facts of one line, gathered over the questions that it answers."""

    beliefs: dict[str, Belief] = field(default_factory=dict)
    lengths: dict[str, int] = field(default_factory=dict)
    forget: list[str] = field(default_factory=list)
    settles: list[str] = field(default_factory=list)

    def add(self, facts: Facts) -> None:
        """Take these facts in too; what was said first stands."""
        self.beliefs.update({k: b for k, b in facts.beliefs.items() if k not in self.beliefs})
        self.lengths.update({k: n for k, n in facts.lengths.items() if k not in self.lengths})
        self.forget += facts.forget
        self.settles += facts.settles


def knowing(talk: Talk, sure: Sure = Sure.PLAIN) -> Knowing:
    """How what is said now is known."""
    return Knowing(talk.state.voice or Voice.TECHNICIAN, sure)


def take(
    talk: Talk, question: Question, reading: Accepted, text: str, *, volunteered: bool = False
) -> list[Say] | str:
    """Keep an answer and echo it.

    Returns:
        The lines said, or one sentence that says why it can't be true or says nothing.
    """
    if question.key in SAFETY and reading.values.get("yes") is True:
        return ask_unnamed(talk, text)  # danger is never kept in silence
    before = talk.state.job
    knows = knowing(talk, reading.sure)
    try:
        facts = facts_from_answers(question, reading, knows, before)
        gathered = _Gathered()
        gathered.add(facts)
        extra, unplaced = _volunteered(talk, question, reading, gathered)
        if facts.empty and not gathered.beliefs:
            return _says_nothing(question)
        talk.happened(
            Answered(
                question=question.key,
                text=text,
                forget=tuple(dict.fromkeys(gathered.forget)),
                beliefs=gathered.beliefs,
                lengths=gathered.lengths,
                blower=facts.blower,
                cooling_rows=facts.cooling_rows,
                volunteered=volunteered,
                settles=tuple(dict.fromkeys(gathered.settles)),
            )
        )
    except FactError as error:
        return f"That can't be right: {error.problem.rstrip('.')}. {question.words}"
    except EngineError as error:
        return f"I can't take that: {str(error).rstrip('.')}. {question.words}"
    says = [_echo(question, facts)] if not facts.empty else []
    says += [say(Manner.NOTE, sentence(f"Also taken: {words}")) for words in extra]
    says += [
        say(Manner.NOTE, f"I heard {words} too, but not of what; say it when I ask.")
        for words in unplaced
    ]
    return says + _insight(talk, before)


def _echo(question: Question, facts: Facts) -> Say:
    words = told(facts.beliefs, facts.lengths, facts.blower, facts.cooling_rows)
    if NO_COOLING in facts.settles:
        words = f"{words}, no cooling" if words else "no cooling"
    elif BURNER_STAGED in facts.settles:
        words = f"{words}, the burner in stages"
    label = question.label or question.key.replace("_", " ")
    return say(Manner.ECHO, sentence(f"{label}: {words or 'noted'}"))


def _insight(talk: Talk, before: Job) -> list[Say]:
    if talk.state.voice is Voice.DISPATCHER:
        return []
    return [say(Manner.INSIGHT, words) for words in new_insights(before, talk.state.job)]


def _says_nothing(question: Question) -> str:
    return f"That doesn't tell me what I asked. {question.words}"


_FIELD_HOMES: Final[Mapping[str, tuple[tuple[str, str], ...]]] = {
    "airflow": (
        (r"\bheating\b|\bin heat\b", "heat_pump_cfm"),
        (r"\blow\b", "low_cfm"),
        (r"", "cool_cfm"),
    ),
    "capacity": ((r"", "furnace_heat"),),
    "efficiency": ((r"", "furnace_efficiency"),),
    "filter": ((r"", "filter"), (r"", "d_filter")),
    "grille": ((r"", "openings"), (r"", "d_openings")),
    "elevation": ((r"", "elevation"),),
    "year": ((r"", "year_built"), (r"", "d_year")),
    "duct": (
        (r"\bdrop\b", "drop_size"),
        (r"\breturn (?:trunk|main|duct)\b", "return_trunk"),
        (r"\bbranch\w*\b|\brun ?outs?\b", "branches"),
        (r"\btrunk\b|\bmain\b", "trunk_size"),
    ),
}
"""Where an answer to another question belongs, by the words around it."""


def _volunteered(
    talk: Talk, question: Question, reading: Accepted, gathered: _Gathered
) -> tuple[list[str], list[str]]:
    """Add the facts of the other answers in the line; what they say, and what found no home."""
    taken: list[str] = []
    unplaced: list[str] = []
    for other in reading.others:
        home = _home(talk, question, other)
        if home is None and question.key == "strip_cfm":
            continue
        if home is None:
            unplaced.append(f"“{other.text}”")
            continue
        if NONE in other.values:
            gathered.settles += [home.key, home.none]
            taken.append(f"{home.label.lower()} none")
            continue
        found = Accepted(other.values, reading.sure)
        facts = facts_from_answers(home, found, knowing(talk, reading.sure), talk.state.job)
        if not facts.empty:
            gathered.add(facts)
            gathered.settles += [] if home.facts else [home.key]
            taken.append(f"{home.label.lower()} {told(facts.beliefs, facts.lengths)}")
    return taken, unplaced


def _home(talk: Talk, question: Question, other: Volunteered) -> Question | None:
    if other.field == f"{ASIDE}heat_pump_cfm" and question.key == "cool_cfm":
        return question_of("heat_pump_cfm") if talk.context.heat_pump else None
    if other.field.startswith(ASIDE):
        return question_of(other.field.removeprefix(ASIDE))
    if other.field == "capacity" and question.field != "equipment" and not talk.context.burner:
        return None
    if question.key in ("reading_airflow", "static_total", "static_split"):
        return question_of("reading_airflow") if other.field == "airflow" else None
    keys = {q.key for q in bank_of(talk.state.voice)}
    for words, key in _FIELD_HOMES.get(other.field, ()):
        if key in keys and key != question.key and re.search(words, other.text.lower()):
            return question_of(key)
    return None


def take_nothing(
    talk: Talk, question: Question, text: str, *, volunteered: bool = False
) -> list[Say]:
    """There is none of what was asked for: an empty list, or a question settled without facts."""
    if question.none == "zero":
        section = question.section
        event = Answered(
            question=question.key,
            text=text,
            forget=(section,),
            lengths={section: 0},
            volunteered=volunteered,
        )
    elif "=" in question.none:
        key, _, word = question.none.partition("=")
        event = Answered(
            question=question.key,
            text=text,
            beliefs={key: Known(word, how_known(key, knowing(talk)))},
            volunteered=volunteered,
        )
    else:
        settles = [question.none]
        forget: tuple[str, ...] = ()
        if question.none == NO_COOLING:
            forget = ("equipment.cooling_tons",)
            if talk.context.staged:
                settles.append(BURNER_STAGED)
                forget = (*forget, "equipment.stages")
        event = Answered(
            question=question.key,
            text=text,
            forget=forget,
            settles=tuple(settles),
            volunteered=volunteered,
        )
    talk.happened(event)
    return [say(Manner.ECHO, f"{question.label}: none.")]


def take_same(talk: Talk, question: Question, text: str) -> list[Say] | None:
    """The same as what was said before; None if nothing was said before."""
    belief = talk.state.job.stated(question.same)
    if belief is None:
        if any(question.same in q.facts for q in map(question_of, talk.state.unsaid) if q):
            return give_up(talk, question, text)
        return None
    before = talk.state.job
    talk.happened(Answered(question=question.key, text=text, beliefs={question.facts[0]: belief}))
    words = told({question.facts[0]: belief})
    return [say(Manner.ECHO, f"{question.label}: {words}, the same."), *_insight(talk, before)]


def confirm(talk: Talk, question: Question, text: str, keys: tuple[str, ...]) -> list[Say]:
    """What was said on the phone is right: it becomes what this voice says."""
    job = talk.state.job
    beliefs: dict[str, Belief] = {}
    for key in keys:
        belief = job.stated(key)
        if isinstance(belief, Known):
            beliefs[key] = Known(belief.value, how_known(key, knowing(talk)))
        elif belief is not None:
            beliefs[key] = belief
    talk.happened(Answered(question=question.key, text=text, beliefs=beliefs))
    return [
        say(Manner.ECHO, f"{question.label}: {told(beliefs)}, confirmed."),
        *_insight(talk, Job()),
    ]


_CANT_GET_THERE: Final = re.compile(
    r"\b(?:can'?t|cannot|can not|couldn'?t|won'?t|not) (?:\w+ ){0,2}"
    r"(?:get|go|climb|crawl|fit|reach)\w*\b.*\b(?:up|in|under|there|into|attic|crawl\w*|through)\b"
    r"|\bno (?:access|ladder|hatch|way (?:up|in))\b"
    r"|\b(?:attic|crawl\w*) (?:is )?(?:too|closed|locked|flooded|sealed|blocked)\b"
)
_TOOLS: Final = (
    ("site.has_gauge", r"\b(?:gau?ge?s?|guage|mano\w*|meter)\b"),
    ("site.has_probes", r"\b(?:probes?|thermo\w*)\b"),
    ("site.has_tape", r"\btape\b"),
    ("site.has_flow_plate", r"\b(?:plate|hood)\b"),
)
_NO_TOOL: Final = re.compile(
    r"\b(?:no|not|don'?t|haven'?t|without|forgot|left|broke\w*|dead|lost|out|need|didn'?t)\b"
)
_TAPED: Final = re.compile(
    r"\b(?:didn'?t|did not|haven'?t|couldn'?t|not|never)(?: \w+)? (?:tape|gauge)[a-z]*\b"
)
"""A tape or gauge that wasn't used there: "i didn't tape it" lacks no tape."""
_WORDED: Final = frozenset(
    (
        *("yes_no", "choice", "equipment", "tools", "skin", "measured_where", "conditions"),
        *("change", "trouble"),
    )
)
"""Fields whose unknown leaves a thing open rather than a range."""
_REACHED: Final = ("attic or crawl", "trunks", "registers")


def give_up(talk: Talk, question: Question, text: str) -> list[Say]:
    """The person can't say: the prior stays; a missing tool or closed place takes others along."""
    line = _TAPED.sub(" ", text.lower().replace("’", "'"))
    closes = lacks = ""
    if question.place.value in _REACHED and _CANT_GET_THERE.search(line):
        closes = question.place.value
    if _NO_TOOL.search(line):
        for fact, words in _TOOLS:
            if fact in (*question.needs, *_measures(question)) and re.search(words, line):
                lacks = fact
    talk.happened(Unsaid(question=question.key, text=text, closes=closes, lacks=lacks))
    if closes:
        return [say(Manner.NOTE, f"Then I'll ask for nothing more from there ({closes}).")]
    if lacks:
        tool = lacks.rsplit("has_", 1)[1].replace("_", " ")
        return [say(Manner.NOTE, f"No {tool}: I'll ask for nothing that needs one.")]
    if question.field in _WORDED:
        return [say(Manner.NOTE, "Fine; that stays open.")]
    return [say(Manner.NOTE, "Fine; I'll work with a range for that.")]


def _measures(question: Question) -> tuple[str, ...]:
    return ("site.has_gauge",) if question.field == "static_pressure" else ()
