"""A line that asks "what if": other equipment tried in the middle of a talk, nothing kept."""

import re
from collections.abc import Callable, Sequence
from typing import Final

from engine.errors import EngineError
from intake.interview.candidates import NOT_TRIED, Tried, read_candidates
from intake.interview.talk import Talk, say
from intake.interview.turns import Manner, Say, Voice
from intake.reading.clean import LONGEST_ANSWER, normalise
from intake.reading.manner import cant_say

__all__ = ["asks_what_if", "tried"]

_LEADS: Final = r"(?:(?:ok|okay|so|and|but|now|well|hm+|wait|then|also|hey|yes|no|oh)[,. ]+)*"
_ASKS: Final = re.compile(
    rf"{_LEADS}(?:what if|what would (?:it be|happen|you say|change) (?:if|with|at|for)"
    r"|what happens (?:if|with|at)|suppose)\b[, :]*(?P<what>.*)"
)
_MAY_ASK: Final = re.compile(
    rf"{_LEADS}(?:what about|how about)\b[, :]*(?P<about>.*)"
    rf"|{_LEADS}(?:would|could|will|can) (?P<would>.+?)"
    r" (?:work|carry|do|fit|help|be (?:ok|okay|fine|better|enough|quieter))\b.*"
)
_LARGEST: Final = re.compile(
    rf"{_LEADS}(?:what(?:'s| is|s)?|how)\b.*\b(?:largest|biggest|most|big|large|maximum|max|many"
    r"|much)\b.*\b(?:ducts?|they|trunks?|house)\b.*\b(?:carry|handle|take|serve|support)\b.*"
)
_ON_SITE: Final = (
    "By phone I settle which visit to book. Other equipment is tried on site, in this same job,"
    " once the ducts are taped. Nothing is kept of that."
)
_KEPT: Final = "Only tried; nothing of it is kept."


def asks_what_if(line: str) -> bool:
    """Whether a line plainly asks what would be.

    >>> asks_what_if("and what if it were 2.5 tons?"), asks_what_if("what's typical")
    (True, False)
    """
    return _ASKS.fullmatch(normalise(line)) is not None


def tried(
    talk: Talk, line: str, *, answers: Callable[[], bool], answered: bool
) -> list[Say] | None:
    """What is said to a line that asks what other equipment would do.

    Args:
        talk: The conversation; nothing happens in it.
        line: As typed.
        answers: Tells whether the line answers the open question as well.
        answered: Whether something else answers it, should no candidate be in it.

    Returns:
        None if the line asks nothing of the kind.
    """
    if len(line) > LONGEST_ANSWER:
        return None
    text = normalise(line)
    calling = talk.state.voice is Voice.DISPATCHER
    if _LARGEST.fullmatch(text):
        return [say(Manner.NOTE, _ON_SITE)] if calling else _largest(talk)
    asks, may = _ASKS.fullmatch(text), _MAY_ASK.fullmatch(text)
    if asks is None and may is None:
        return None
    what = asks["what"] if asks else (may["about"] or may["would"] or "") if may else ""
    found = read_candidates(what, talk.state.job)
    if isinstance(found, str):
        passed_on = asks is None or answered or calling or cant_say(text)
        return None if passed_on else [say(Manner.ASK_BACK, found)]
    offers = may is not None and may["about"] is not None
    if asks is None and (offers if calling else text.startswith("how about")) and answers():
        return None
    if calling:
        return [say(Manner.NOTE, _ON_SITE)]
    return _compared(talk, found)


def _compared(talk: Talk, found: Sequence[Tried]) -> list[Say]:
    # Imported here: telling and judging are needed only once something is tried.
    from engine.what_if import candidate_job, no_longer_held
    from intake.telling.errors import error_sentence
    from intake.telling.what_if import candidate_sentences

    job = talk.state.job
    before = talk.verdict()
    lines: list[str] = []
    for one in found:
        try:
            after = candidate_job(job, one.candidate)
            verdict = talk.verdict_with(one.candidate)
        except EngineError as error:
            return [say(Manner.ASK_BACK, f"{error_sentence(error)} {NOT_TRIED}")]
        gone = no_longer_held(job, after)
        lines += candidate_sentences(one.words, before, verdict, after, gone)
    return [say(Manner.INSIGHT, words) for words in lines] + [say(Manner.NOTE, _KEPT)]


def _largest(talk: Talk) -> list[Say]:
    # Imported here for the same reason.
    from intake.telling.what_if import largest_sentence

    return [say(Manner.INSIGHT, largest_sentence(talk.largest_quiet(), talk.state.job))]
