"""Loose names of what was answered, as a later correction calls it: "cooling is 1100 actually"."""

import re
from collections.abc import Mapping
from typing import Final

from intake.interview.events import Answered
from intake.interview.planner import bank_of, question_of
from intake.interview.question import Question
from intake.interview.talk import Talk

__all__ = ["begins_with_name", "called", "holding_old", "latest_airflow", "without_lead"]

_CALLED: Final[Mapping[str, tuple[str, ...]]] = {
    "cool_cfm": ("full cooling", "high cooling", "cooling", "cool", "high stage", "the ac"),
    "low_cfm": ("low cooling", "low cool", "low"),
    "heat_pump_cfm": ("heat pump heating", "heat pump heat", "hp heating", "heating"),
    "strip_cfm": ("strip kit", "heat strips", "electric strips", "kit"),
    "furnace_heat": ("furnace",),
    "year_built": ("year", "house"),
    "d_year": ("house",),
    "step_down": ("step down", "reduction", "smaller part", "smaller end"),
    "tools": ("gauge", "probes", "tape measure"),
    "old_heat": ("old furnace",),
    "run_supply": ("run",),
    "zoned": ("zones",),
    "d_change": ("equipment", "system"),
}
"""Names too loose to begin an answer with, by the question that a correction means by them."""

_ANY_AIRFLOW: Final = frozenset(("cfm", "airflow"))
_LEAD: Final = re.compile(
    r"(?:(?:oh|ah|and|also|but|so|then|wait|hold on|sorry|actually|hmm|btw|by the way|my bad|ok"
    r"|okay|yeah|scratch(?: that| what i said(?: about)?)?|strike that|correction(?: on| to| of)?"
    r"|change(?: that)?|make|fix|take|forget|redo|i lied about|i (?:said|told you|was wrong about)"
    r"|(?:she|he|they) says?)[,.:]? +)*(?:(?:the|my|our|new|that|this) )*"
)


def without_lead(words: str) -> str:
    """A clause without the words that lead up to what it names.

    >>> without_lead("oh and scratch that, the heat pump heating is 1425")
    'heat pump heating is 1425'
    """
    line = words.lower().strip()
    match = _LEAD.match(line)
    return line[match.end() :] if match else line


def called(talk: Talk, words: str) -> Question | None:
    """The answered question that a loose name in these words means; the longest name wins."""
    line = words.lower()
    best: tuple[int, Question] | None = None
    for question, names in _answered(talk):
        for name in names:
            longer = best is None or len(name) > best[0]
            if longer and re.search(rf"\b{re.escape(name)}\b", line):
                best = (len(name), question)
    return best[1] if best else None


def begins_with_name(talk: Talk, words: str) -> Question | None:
    """The answered question whose loose name a clause begins with."""
    line = without_lead(words)
    best: tuple[int, Question] | None = None
    for question, names in _answered(talk):
        for name in names:
            longer = best is None or len(name) > best[0]
            if longer and re.match(rf"{re.escape(name)}\b", line):
                best = (len(name), question)
    return best[1] if best else None


def _answered(talk: Talk) -> list[tuple[Question, tuple[str, ...]]]:
    bank = bank_of(talk.state.voice)
    return [
        (question, _CALLED[question.key])
        for question in bank
        if question.key in _CALLED and _was_told(talk, question)
    ]


def _was_told(talk: Talk, question: Question) -> bool:
    """Whether a question was answered, by itself or by an answer to another one."""
    if talk.state.answer_to(question.key) is not None:
        return True
    return bool(question.facts) and all(talk.context.known(key) for key in question.facts)


_NEW_NOT_OLD: Final = re.compile(
    r"(?<![\w.])(?:\d?\.\d+|\d[\d,]*)(?: ?(?:cfm|tons?|ft|feet|in|inch(?:es)?))?,? "
    r"(?:and )?(?:not|instead of) (?P<old>\d?\.\d+|\d[\d,]*\d|\d)(?![\w.,]*\d|x)"
)


def holding_old(talk: Talk, words: str, named: Question | None) -> Question | None:
    """The question that was answered with the figure called wrong; else the one that was named.

    "Airflow was 1050 not 1150" is of the reading where that was 1150, though another question is
    called airflow too.

    Args:
        talk: The conversation.
        words: A clause, with the new figure and the old one.
        named: The question that its words name.
    """
    match = _NEW_NOT_OLD.search(words)
    if match is None:
        return named
    old = re.compile(rf"(?<![\d.]){re.escape(match['old'])}(?![\d.]|,\d)")
    homes: list[Question] = []
    for event in reversed(talk.state.standing):
        home = question_of(event.question) if isinstance(event, Answered) else None
        told = event.text.replace(",", "") if home is not None else ""
        if home is None or home in homes or not old.search(told):
            continue
        if named is None or home.field == named.field:
            homes.append(home)
    if named in homes or (named is None and len(homes) > 1):
        return named
    return homes[0] if homes else named


def latest_airflow(talk: Talk, topic: str, named: Question) -> Question:
    """The airflow said last, where only "cfm" names one; else the question that was named."""
    if topic not in _ANY_AIRFLOW:
        return named
    for event in reversed(talk.state.standing):
        asked = question_of(event.question) if isinstance(event, Answered) else None
        if asked is not None and asked.field == "airflow":
            return asked
    return named
