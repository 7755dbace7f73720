"""What one typed line does: danger first, then requests, then the answer it may be."""

import re
from typing import Final

from intake.interview import danger
from intake.interview.bag import tools_alone
from intake.interview.clauses import Clause, clauses
from intake.interview.commands import obey
from intake.interview.danger import SAFETY
from intake.interview.danger_answers import (
    LOOK_FIRST,
    safety_look_answered,
    settle_doubt,
    while_stopped,
)
from intake.interview.elsewhere import denied, elsewhere, named_by
from intake.interview.events import AskedBack, Reopened, Unsaid, WentOn, kept_readings
from intake.interview.fittings_told import as_fitted
from intake.interview.flows_told import as_rated
from intake.interview.heard_words import (
    ASKS_MEANING,
    GO_ON,
    MEANS_WHAT,
    PLAIN_YES,
    holds,
    joined,
    offered,
    only_leaves,
    which_of_two,
)
from intake.interview.like_corrections import plain_answer
from intake.interview.listening import Heard, Nothing, Same, listen, plain_choices
from intake.interview.misreading import (
    MISREADS_BEFORE_CHOICES,
    MISREADS_BEFORE_SKIP,
    REJECTED,
    misread,
)
from intake.interview.phone_answers import as_the_callers
from intake.interview.phone_clauses import phone_clauses
from intake.interview.picking import picked
from intake.interview.placing import (
    CONFIRMS,
    ELSEWHERE,
    ask_of_size,
    ask_whether_corrected,
    placed,
    taken_elsewhere,
)
from intake.interview.planner import left_over, question_of
from intake.interview.question import Question
from intake.interview.second_words import as_put_right
from intake.interview.short_answers import short_answer
from intake.interview.side_corrections import side_corrected
from intake.interview.size_lists import as_listed
from intake.interview.taking import (
    confirm,
    give_up,
    take,
    take_nothing,
    take_same,
)
from intake.interview.talk import Talk, say
from intake.interview.turns import Manner, Say, Voice
from intake.interview.what_if import tried
from intake.reading.clean import normalise
from intake.reading.read import read
from intake.reading.result import (
    Accepted,
    AskBack,
    AskKind,
    Command,
    CommandName,
    Previous,
    Rejected,
    Unknown,
)

__all__ = ["heard", "open_phone_keys"]


def heard(talk: Talk, line: str) -> list[Say]:
    """What is said to a line, without the question that follows it."""
    state = talk.state
    line = as_the_callers(line) if state.voice is Voice.DISPATCHER else line
    if state.stopped:
        return while_stopped(talk, line)
    if state.doubt:
        return settle_doubt(talk, line)
    if only_leaves(line):
        return obey(talk, Command(CommandName.QUIT), talk.question, line) or []
    looked = safety_look_answered(talk, line)
    if looked is not None:
        return looked
    if ASKS_MEANING.fullmatch(normalise(line)):
        return obey(talk, Command(CommandName.HELP), talk.question, line) or []
    flagged = danger.watch(talk, line)
    if flagged is not None:
        return flagged
    asked = short_answer(normalise(line))
    other = tried(talk, line, answers=lambda: _answers(talk, line), answered=asked is not None)
    if other is not None:
        return danger.told_only(talk, line) + other
    means = MEANS_WHAT.match(normalise(line)) is not None
    if asked is not None and (means or not _answers(talk, line)):
        return [say(Manner.HELP, asked)]
    if means:
        return obey(talk, Command(CommandName.HELP), talk.question, line) or []
    told_first = danger.told_only(talk, line)
    return told_first + _answer(talk, line)


def _answers(talk: Talk, line: str) -> bool:
    """Whether a line that asks something answers the open question all the same ("20x8?")."""
    question = talk.question
    return question is not None and isinstance(
        listen(question, line, talk.state.job), Accepted | Nothing | Same
    )


def _answer(talk: Talk, line: str) -> list[Say]:
    question = talk.question
    if question is None:
        return _after_the_end(talk, line)
    line = as_put_right(question, line, talk.state.job)
    line = as_fitted(question, as_listed(question, as_rated(question.field, line)))
    open_ask = talk.state.asked_back
    parts = None
    if open_ask is None or open_ask.kind == REJECTED:
        parts = phone_clauses(talk, question, line)
    if parts is None:
        put_right = side_corrected(talk, question, line)
        parts = (put_right[0], [put_right[1]]) if put_right is not None else None
    if parts is None and open_ask is None:
        parts = clauses(talk, question, line)
    if parts is not None:
        return _in_one_breath(talk, parts)
    found = listen(question, line, talk.state.job, _previous(talk))
    if isinstance(found, Command):
        found = plain_answer(talk, question, found, line) or found
    if isinstance(found, Command):
        said = _corrects_open(talk, question, open_ask, found)
        return said or _obeyed(talk, found, question, line)
    if whose := ask_whether_corrected(talk, question, line):
        return whose
    of_tools = question.key == "old_runs" and tools_alone(line)
    if open_ask is not None and open_ask.question == question.key and not of_tools:
        settled = _settled(talk, question, open_ask, found, line)
        if settled is not None:
            return settled
    phone_keys = open_phone_keys(talk, question)
    if phone_keys and normalise(line).strip(".! ") in CONFIRMS:
        return confirm(talk, question, line, phone_keys)
    absent = denied(talk, question, line)
    if absent is not None:
        return take_nothing(talk, absent, line, volunteered=True)
    if not _own_answer(question, found) or _names_another(talk, question, line):
        other = elsewhere(talk, question, line)
        if other is not None and (said := taken_elsewhere(talk, other, line)):
            if _SKIPS_TOO.match(normalise(line)):
                talk.happened(Unsaid(question=question.key, text=line))
            return said
    if isinstance(found, AskBack | Rejected) and (asked := ask_of_size(talk, question, line)):
        return asked
    return _react(talk, question, found, line)


def _corrects_open(
    talk: Talk, question: Question, open_ask: AskedBack | None, command: Command
) -> list[Say]:
    """A correction of what was just asked back about, which stands nowhere yet; else empty."""
    value = command.value_text
    if open_ask is None or open_ask.question != question.key or command.fact_words or not value:
        return []
    if open_ask.kind.startswith(ELSEWHERE):
        return ask_of_size(talk, question, value)
    found = listen(question, value, talk.state.job)
    if isinstance(found, Accepted):
        return _accepted(talk, question, found, value)
    return _asked_back(talk, question, found, value) if isinstance(found, AskBack) else []


_SKIPS_TOO: Final = re.compile(r"(?:skip|pass|no table|(?:i )?don'?t have)\b")


def _in_one_breath(talk: Talk, parts: tuple[str, list[Clause]]) -> list[Say]:
    """Answers to several questions in one line, the open one's first while it is the open one."""
    own, others = parts
    question = talk.question
    heard = listen(question, own, talk.state.job) if own and question is not None else None
    same = isinstance(heard, Same)
    open_yet = not isinstance(heard, Accepted | Nothing | Unknown)
    last = same or (open_yet and talk.state.voice is Voice.DISPATCHER)
    says: list[Say] = []
    if own and not last:
        says = safety_look_answered(talk, own) or _answer(talk, own)
    for clause in others:
        if clause.question is None:
            told = f"I heard “{clause.text}” too, but not of what; say it when I ask."
            says.append(say(Manner.NOTE, told))
            continue
        if isinstance(clause.found, Nothing):
            says += take_nothing(talk, clause.question, clause.text, volunteered=True)
            continue
        if clause.found is None:
            talk.happened(Reopened(question=clause.question.key))
            label = clause.question.label[0].lower() + clause.question.label[1:]
            says.append(say(Manner.ASK_BACK, f"One {label} of several: say them all once more."))
            continue
        said = take(talk, clause.question, clause.found, clause.text, volunteered=True)
        if clause.corrects and not isinstance(said, str):
            says.append(say(Manner.NOTE, "Corrected."))
        says += [say(Manner.ASK_BACK, said)] if isinstance(said, str) else said
    if same and question is not None:
        says += take_same(talk, question, own) or []
    elif own and last and talk.question is question:
        says += _answer(talk, own)
    return says


def _own_answer(question: Question, found: Heard) -> bool:
    """Whether a line answers the open question, or leaves only a choice of its answers open."""
    if question.key in ("d_change", "trunk_count") and isinstance(found, AskBack):
        return True
    if question.key == "blower_table" and isinstance(found, Unknown):
        return False  # who has no table may still know the motor
    return isinstance(found, Accepted | Nothing | Same | Unknown)


def _names_another(talk: Talk, question: Question, line: str) -> bool:
    """Whether the line opens with another question's topic ("return drop is 14x20")."""
    if question.field == "tools":
        return False  # a slack tube is a gauge
    if question.key == "old_runs" and tools_alone(line):
        return True
    named = elsewhere(talk, None, line)
    own = any(line.lower().removeprefix("the ").startswith(topic) for topic in question.topics)
    return named is not None and named[0].key != question.key and not own


def _previous(talk: Talk) -> Previous | None:
    last = talk.state.last_answer
    if last is None:
        return None
    asked = question_of(last.question)
    return Previous(asked.field if asked is not None else "text", last.text)


def _obeyed(talk: Talk, command: Command, question: Question, line: str) -> list[Say]:
    said = obey(talk, command, question, line)
    if said is not None:
        return said
    return misread(talk, question, "There is nothing to correct yet.", line)


def _react(talk: Talk, question: Question, found: Heard, line: str) -> list[Say]:
    match found:
        case Accepted():
            return _accepted(talk, question, found, line)
        case Nothing():
            return take_nothing(talk, question, line)
        case Same():
            same = take_same(talk, question, line)
            if same is not None:
                return same
            return misread(talk, question, "Same as what? A figure, please.", line)
        case AskBack():
            return _asked_back(talk, question, found, line)
        case Unknown() if question.key in SAFETY and not talk.state.misread:
            return misread(talk, question, LOOK_FIRST, line)
        case Unknown():
            return give_up(talk, question, line)
        case Rejected(why=why):
            return misread(talk, question, why, line)
        case Command():
            return _obeyed(talk, found, question, line)


def _accepted(talk: Talk, question: Question, found: Accepted, line: str) -> list[Say]:
    if question.key in SAFETY and found.values.get("yes") is True:
        if PLAIN_YES.match(normalise(line)):
            return danger.raise_unnamed(talk, line)
        return danger.ask_unnamed(talk, line)
    if question.key in SAFETY and danger.holds_back(line):
        return misread(talk, question, LOOK_FIRST, line)
    loose = which_of_two(question, found)
    if loose is not None:
        return _asked_back(talk, question, loose, line)
    said = take(talk, question, found, line)
    return misread(talk, question, said, line) if isinstance(said, str) else said


def _asked_back(talk: Talk, question: Question, found: AskBack, line: str) -> list[Say]:
    readings = found.readings
    if len(readings) > 1 and all(values == readings[0] for values in readings):
        return _accepted(talk, question, Accepted(dict(readings[0])), line)
    if talk.state.misread >= MISREADS_BEFORE_SKIP - 1:
        return misread(talk, question, found.why, line)
    talk.happened(
        AskedBack(
            question=question.key,
            text=line,
            why=found.why,
            kind=found.kind.value,
            readings=kept_readings(readings),
        )
    )
    says = [say(Manner.ASK_BACK, found.why)]
    if len(readings) > 1:
        shown = [offered(question, values) for values in readings]
        says.append(say(Manner.ASK_BACK, "  ".join(f"{n}) {w}" for n, w in enumerate(shown, 1))))
    return says


def _settled(
    talk: Talk, question: Question, open_ask: AskedBack, fresh: Heard, line: str
) -> list[Say] | None:
    """An answer to an ask-back: a pick, the missing half, or None for an answer of its own."""
    if open_ask.kind.startswith(ELSEWHERE):
        return placed(talk, question, open_ask, line)
    if open_ask.kind == REJECTED:
        return _numbered(talk, question, fresh, line)
    values = picked(open_ask, fresh, line)
    if values is not None:
        place = values.get("place")
        found = Accepted(
            {k: v for k, v in values.items() if k != "place"},
            place=str(place) if place is not None else None,
        )
        return _accepted(talk, question, found, f"{open_ask.text} ({line})")
    if open_ask.kind != AskKind.MISSING_PART.value:
        return None
    for text in joined(open_ask.text, line):
        whole = listen(question, text, talk.state.job)
        if isinstance(whole, Accepted) and holds(whole, fresh):
            return _accepted(talk, question, whole, text)
    return None


def _numbered(talk: Talk, question: Question, fresh: Heard, line: str) -> list[Say] | None:
    """A number picked from the choices offered after a second misreading."""
    text = normalise(line).strip("#.) ")
    if talk.state.misread < MISREADS_BEFORE_CHOICES:
        return None
    if plain_choices(question):
        if text.isdigit() and 1 <= int(text) <= len(plain_choices(question)):
            key = plain_choices(question)[int(text) - 1]
            again = listen(question, key.replace("_", " "), talk.state.job)
            if isinstance(again, Accepted):
                return _accepted(talk, question, again, key.replace("_", " "))
        return None
    if isinstance(fresh, Accepted):
        return None
    return {
        "1": lambda: give_up(talk, question, line),
        "2": lambda: [say(Manner.HELP, question.where)],
        "3": lambda: [say(Manner.HELP, question.how)],
    }.get(text, lambda: None)()


def _after_the_end(talk: Talk, line: str) -> list[Say]:
    """Nothing is open: requests and corrections still work, and facts that are named."""
    if GO_ON.fullmatch(normalise(line)) and left_over(talk.state, talk.context):
        talk.happened(WentOn())
        return [say(Manner.NOTE, 'Going on with what is left; "finish" ends.')]
    found = read("text", line, previous=_previous(talk))
    if isinstance(found, Command):
        said = obey(talk, found, None, line)
        if said is not None:
            return said
    other = elsewhere(talk, None, line)
    if other is not None:
        said_or_why = take(talk, other[0], other[1], line, volunteered=True)
        if isinstance(said_or_why, str):
            return [say(Manner.ASK_BACK, said_or_why)]
        return said_or_why
    named = named_by(talk, line)
    hint = f' about {named.label.lower()}, e.g. "sorry, ..."' if named is not None else ""
    more = left_over(talk.state, talk.context)
    first = 'Say "go on" for more questions.' if more else "All is asked."
    words = f"{first} You can still correct an answer{hint}, undo, show, or quit."
    return [say(Manner.NOTE, words)]


def open_phone_keys(talk: Talk, question: Question) -> tuple[str, ...]:
    """Facts that the open question would confirm: said on the phone, not yet seen on site."""
    if talk.state.voice is not Voice.TECHNICIAN or not question.confirm or not question.section:
        return ()
    prefix = f"{question.section}."
    keys = [key for key in talk.state.job.beliefs if key.startswith(prefix)]
    return tuple(key for key in keys if not talk.context.firmly(key))
