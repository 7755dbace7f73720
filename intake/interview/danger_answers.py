"""The talk about danger around its answers: the safety question, an open doubt, a stopped talk."""

from typing import Final

from intake.interview import danger
from intake.interview.commands import obey
from intake.interview.danger import SAFETY
from intake.interview.listening import listen
from intake.interview.misreading import misread
from intake.interview.phone_clauses import phone_clauses
from intake.interview.safety_look import clear_after_a_story
from intake.interview.taking import take
from intake.interview.talk import Talk
from intake.interview.turns import Say
from intake.reading.household import anybody_frail
from intake.reading.read import read
from intake.reading.result import Accepted, Command, CommandName

__all__ = ["LOOK_FIRST", "safety_look_answered", "settle_doubt", "while_stopped"]

LOOK_FIRST: Final = "Please look and sniff before going on."


def safety_look_answered(talk: Talk, line: str) -> list[Say] | None:
    """A short answer to the safety question; None if another is open or it is read elsewhere."""
    question = talk.question
    if question is None or question.key not in SAFETY:
        return None
    answer = danger.safety_answer(talk, line)
    if answer is False and danger.holds_back(line):
        return misread(talk, question, LOOK_FIRST, line)
    calm = clear_after_a_story(line) and not danger.holds_back(line)
    plain = answer is None and (danger.plain_no(line) or calm)
    if plain and phone_clauses(talk, question, line) is not None:
        return None
    if answer is False or plain:
        said = take(talk, question, Accepted({"yes": False}), line)
        return None if isinstance(said, str) else said
    return answer if isinstance(answer, list) else None


def while_stopped(talk: Talk, line: str) -> list[Say]:
    """What is said to a line while the questions are stopped."""
    found = read("text", line)
    if isinstance(found, Command) and found.name is CommandName.QUIT:
        return obey(talk, found, None, line) or []
    return danger.stand_still(talk, line)


def settle_doubt(talk: Talk, line: str) -> list[Say]:
    """Settle whether it is happening now, and take what the line that raised it answers."""
    kept = talk.state.doubt_text
    said = danger.answer_doubt(talk, line)
    question = talk.question
    if talk.state.doubt or talk.state.stopped or question is None:
        return said
    found = listen(question, kept, talk.state.job)
    if question.key == "d_works" and anybody_frail(line) is False:
        return said + _taken(talk, kept) + _taken(talk, line, "d_people")
    if isinstance(found, Accepted) and question.field != "yes_no":
        taken = take(talk, question, found, kept)
        if not isinstance(taken, str):
            return said + taken
    return said


def _taken(talk: Talk, line: str, key: str = "") -> list[Say]:
    """What is said to a line that answers the open question, of this key if one is given."""
    question = talk.question
    if question is None or (key and question.key != key):
        return []
    found = listen(question, line, talk.state.job)
    said = take(talk, question, found, line) if isinstance(found, Accepted) else []
    return said if isinstance(said, list) else []
