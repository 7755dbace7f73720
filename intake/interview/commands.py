"""Requests to the program in the middle of an interview: why, back, undo, show, correct ..."""

import re
from collections.abc import Callable, Iterable, Mapping
from typing import Final

from intake.interview.called import begins_with_name, holding_old, without_lead
from intake.interview.elsewhere import named_by, named_first
from intake.interview.events import (
    Answered,
    AskedBack,
    Finished,
    Reopened,
    Undone,
    Unsaid,
    kept_readings,
)
from intake.interview.listening import listen, plain_choices
from intake.interview.planner import bank_of, question_of
from intake.interview.question import Question
from intake.interview.sided import of_one_side
from intake.interview.taking import take
from intake.interview.talk import Talk, say
from intake.interview.told import sentence, told
from intake.interview.turns import Manner, Say, Voice
from intake.reading.corrections import in_place
from intake.reading.restated import replaced
from intake.reading.result import Accepted, AskBack, AskKind, Command, CommandName

__all__ = ["COMMANDS", "correct", "corrected", "fitting", "known_lines", "obey"]

COMMANDS: Final[tuple[tuple[str, str], ...]] = (
    ("don't know", "leaves a range in place of the answer"),
    ("skip", "leaves the question out"),
    ("why, where, how", "tell about the question"),
    ("what's typical", "tells what is usual"),
    ("back", "asks the question before again"),
    ("undo", "takes the last answer back"),
    ("sorry, 17 not 11", "corrects the last answer; name another to correct that"),
    ("show", "lists what I have and what I'd say now"),
    ("what if 2.5 tons", "tries other tons, CFM, filter, coil or furnace; keeps nothing"),
    ("finish", "ends with what can be said now"),
    ("quit", "stops; everything is kept"),
)
"""What a person may type at any time, and what it does."""


def obey(talk: Talk, command: Command, question: Question | None, text: str) -> list[Say] | None:
    """Do what is asked; the lines said, or None if the command makes no sense here."""
    if command.name is CommandName.CORRECT:
        return correct(talk, command, text)
    return _DEEDS[command.name](talk, question, text)


def _about(
    part: Callable[[Question], str],
) -> Callable[[Talk, Question | None, str], list[Say]]:
    def tell(talk: Talk, question: Question | None, text: str) -> list[Say]:
        if question is None:
            return _help(talk, question, text)
        return [say(Manner.HELP, part(question))]

    return tell


def _why(talk: Talk, question: Question | None, text: str) -> list[Say]:
    if question is None:
        return _help(talk, question, text)
    weighing = talk.weighing if question.bundle else None
    for worth in weighing.worths if weighing is not None else ():
        if worth.bundle.key == question.bundle:
            # Imported here: telling is needed only once something is to be told.
            from intake.telling.asking import settles_words, sure_modes

            settles = settles_words(worth, sure_modes(talk.verdict()))
            words = (
                f"{question.why} {settles[0].upper()}{settles[1:]}." if settles else question.why
            )
            return [say(Manner.HELP, words)]
    return [say(Manner.HELP, question.why)]


def _help(talk: Talk, question: Question | None, text: str) -> list[Say]:
    lines: list[Say] = []
    if question is not None:
        lines += [
            say(Manner.HELP, f"Why: {question.why}"),
            say(Manner.HELP, f"How: {question.how}"),
        ]
        choices = plain_choices(question)
        if choices:
            shown = ", ".join(choice.replace("_", " ") for choice in choices)
            lines.append(say(Manner.HELP, f"Choices: {shown}."))
    calling = talk.state.voice is Voice.DISPATCHER  # nothing else is tried in a call
    rows = [row for row in COMMANDS if not (calling and row[0].startswith("what if"))]
    shown = "; ".join(f"{words}: {does}" for words, does in rows)
    return [*lines, say(Manner.HELP, f"Any time: {shown}.")]


def _skip(talk: Talk, question: Question | None, text: str) -> list[Say]:
    if question is None:
        return _nothing_open()
    talk.happened(Unsaid(question=question.key, text=text))
    return [say(Manner.NOTE, "Skipped.")]


def _nothing_open() -> list[Say]:
    return [say(Manner.NOTE, "No question is open.")]


def _back(talk: Talk, question: Question | None, text: str) -> list[Say]:
    asked = [event.question for event in talk.state.standing if not _aside(event)]
    if talk.state.reopened in asked:
        asked = asked[: asked.index(talk.state.reopened)]
    asked = [key for key in asked if question_of(key) is not None]
    if not asked:
        return [say(Manner.NOTE, "This is the first question.")]
    talk.happened(Reopened(question=asked[-1]))
    return [say(Manner.NOTE, "One back; what was said stands until you answer anew.")]


def _aside(event: Answered | Unsaid) -> bool:
    return isinstance(event, Answered) and event.volunteered


def _undo(talk: Talk, question: Question | None, text: str) -> list[Say]:
    if not talk.state.standing:
        return [say(Manner.NOTE, "There is nothing to take back.")]
    last = talk.state.standing[-1]
    asked = question_of(last.question)
    label = asked.label if asked is not None else last.question
    talk.happened(Undone())
    return [say(Manner.ECHO, f"Taken back: {label}, “{last.text}”.")]


def known_lines(talk: Talk) -> list[str]:
    """What stands, one answer a line, in normal form."""
    lines: list[str] = []
    shown: set[str] = set()
    for event in reversed(talk.state.standing):
        asked = question_of(event.question)
        if asked is None or event.question in shown:
            continue
        shown.add(event.question)
        if isinstance(event, Unsaid):
            if event.question in talk.state.unsaid:
                lines.append(f"{asked.label}: not known")
            continue
        words = told(event.beliefs, event.lengths, event.blower, event.cooling_rows)
        lines.append(f"{asked.label}: {words or event.text}")
    return lines[::-1]


def _show(talk: Talk, question: Question | None, text: str) -> list[Say]:
    lines = known_lines(talk)
    if not lines:
        return [say(Manner.NOTE, "Nothing is known yet.")]
    return [say(Manner.NOTE, line) for line in lines]


def _quit(talk: Talk, question: Question | None, text: str) -> list[Say]:
    talk.left = True
    return [say(Manner.NOTE, "Everything said is kept; come back to it any time.")]


def _finish(talk: Talk, question: Question | None, text: str) -> list[Say]:
    if not talk.state.finished:
        talk.happened(Finished())
    return []


def _repeat(talk: Talk, question: Question | None, text: str) -> list[Say]:
    return [] if question is not None else _nothing_open()


_DEEDS: Final[Mapping[CommandName, Callable[[Talk, Question | None, str], list[Say]]]] = {
    CommandName.SKIP: _skip,
    CommandName.BACK: _back,
    CommandName.UNDO: _undo,
    CommandName.WHY: _why,
    CommandName.WHERE: _about(lambda q: q.where),
    CommandName.HOW: _about(lambda q: f"{q.how} Where: {q.where}"),
    CommandName.TYPICAL: _about(lambda q: f"Usual: {q.typical} Yours may differ; measure it."),
    CommandName.HELP: _help,
    CommandName.REPEAT: _repeat,
    CommandName.SHOW: _show,
    CommandName.QUIT: _quit,
    CommandName.FINISH: _finish,
}


_X_NOT_Y: Final = re.compile(
    r"(?:(?P<number>[\d.]+) (?:tons?|cfm|in|inch|inches|ft|feet|foot)"
    r"|(?P<new>\S+)),? (?:not|instead of) (?P<old>\S+?)[.!,]*(?:\s.*)?$"
)


def correct(talk: Talk, command: Command, text: str) -> list[Say] | None:
    """Rewrite the last answer, or the one that the correction names.

    Returns:
        The lines said; None if it names and holds nothing that could be corrected.
    """
    last = talk.state.last_answer
    if command.fact_words == "swap":
        return _swap(talk, last, text)
    named = named_by(talk, command.fact_words or command.value_text or "")
    named = named or named_first(talk, text) or begins_with_name(talk, text)
    named = (
        holding_old(talk, text, named) if named is not None else _holding_old(talk, command, text)
    )
    target = named or (question_of(last.question) if last else None)
    if target is None:
        return None
    if not command.value_text:
        talk.happened(Reopened(question=target.key))
        return [say(Manner.NOTE, "Then once more:")]
    better = corrected(talk, target, command, text, alike=named is not None)
    if better is not None:
        return _retake(talk, *better)
    found = listen(target, command.value_text, talk.state.job)
    if named is None and not (
        isinstance(found, AskBack) and found.kind is not AskKind.WRONG_QUANTITY
    ):
        return _of_another(talk, target, command, text)
    talk.happened(Reopened(question=target.key))
    if isinstance(found, AskBack):
        _ask_back(talk, target, found, command.value_text)
        return [say(Manner.ASK_BACK, found.why)]
    return [say(Manner.ASK_BACK, f"I can't put “{command.value_text}” there. Once more:")]


def corrected(
    talk: Talk, target: Question, command: Command, text: str, *, alike: bool = True
) -> tuple[Question, Accepted, str] | None:
    """The answer that a correction makes of an earlier one, with its question; None if none.

    Args:
        talk: The conversation.
        target: The question whose answer is put right.
        command: The correction.
        text: What was typed.
        alike: Whether it may put right what else was asked of the same thing: a filter's
            thickness, a trunk's material.
    """
    earlier = talk.state.answer_to(target.key)
    for candidate in _rewritten(command, earlier, text):
        found = listen(target, candidate, talk.state.job)
        if isinstance(found, Accepted):
            return target, found, candidate
    value = command.value_text or ""
    for other in bank_of(talk.state.voice) if alike and target.section else ():
        if other.section == target.section and other is not target and not other.choices:
            found = listen(other, value, talk.state.job)
            if isinstance(found, Accepted):
                return other, found, value
    return None


def _of_another(talk: Talk, last: Question, command: Command, text: str) -> list[Say]:
    """A correction that isn't of the last answer: of the only one it fits, or asked about."""
    value = command.value_text or ""

    def rewritten(key: str) -> Iterable[str]:
        return _rewritten(command, talk.state.answer_to(key), text)

    fits = [one for one in fitting(talk, rewritten) if one[0].key != last.key]
    if len(fits) == 1:
        return _retake(talk, *fits[0])
    names = [asked.label[0].lower() + asked.label[1:] for asked, _, _ in fits[:_NAMED_AT_MOST]]
    whose = f" The {' or the '.join(names)}?" if names else ""
    like = names[0] if names else "return drop"
    example = value if len(value) <= _SHORT_VALUE else "18x10"
    return [
        say(
            Manner.ASK_BACK,
            f"Of what is “{value}” the right value?{whose} Say it with its name, like"
            f" “the {like} is {example}”.",
        )
    ]


_NAMED_AT_MOST: Final = 3
_SHORT_VALUE: Final = 12
"""Characters of a value that may stand in an example."""


def fitting(
    talk: Talk, texts: Callable[[str], Iterable[str]]
) -> list[tuple[Question, Accepted, str]]:
    """The answers that could have been something else: each with its question, the latest first.

    Args:
        talk: The conversation.
        texts: What the answer to a question might have been, by the question's key.
    """
    answered = (e.question for e in reversed(talk.state.standing) if isinstance(e, Answered))
    found: list[tuple[Question, Accepted, str]] = []
    for key in dict.fromkeys(answered):
        asked = question_of(key)
        if asked is None or asked.field == "yes_no":
            continue
        for text in texts(key):
            heard = listen(asked, text, talk.state.job)
            if isinstance(heard, Accepted):
                found.append((asked, heard, text))
                break
    return found


def _holding_old(talk: Talk, command: Command, text: str) -> Question | None:
    """The question whose answer holds the value that is called wrong ("17 not 11")."""
    if command.old_text is not None:
        return None
    match = _X_NOT_Y.search(text)
    if match is None:
        return None
    old = re.compile(rf"(?<![\d.]){re.escape(match['old'])}(?![\d.])", re.IGNORECASE)
    for event in reversed(talk.state.standing):
        if isinstance(event, Answered) and old.search(event.text):
            return question_of(event.question)
    return None


def _ask_back(talk: Talk, target: Question, found: AskBack, text: str) -> None:
    talk.happened(
        AskedBack(
            question=target.key,
            text=text,
            why=found.why,
            kind=found.kind.value,
            readings=kept_readings(found.readings),
        )
    )


def _rewritten(command: Command, earlier: Answered | None, text: str) -> list[str]:
    """The new value as it was typed, and the earlier text with the old value replaced."""
    value = command.value_text or ""
    one_side = of_one_side(earlier.text, text, value) if earlier is not None else None
    if one_side is not None:
        return [one_side]
    found = [value]
    if command.old_text is not None and earlier is not None:
        whole = replaced(earlier.text, command.old_text, value)
        return [whole, value] if whole else found
    swap = _X_NOT_Y.search(text)
    if swap and earlier is not None:
        old = re.compile(rf"(?<![\d.]){re.escape(swap['old'])}(?![\d.])")
        if old.search(earlier.text) and earlier.text.strip() != swap["old"]:
            new = swap["number"] or swap["new"]
            found.insert(0, old.sub(new, earlier.text, count=1))
    whole = in_place(earlier.text, value) if earlier is not None else None
    figures = _FROM_FIGURE.search(value)
    tails = [without_lead(value), figures[0] if figures else ""]
    found += [whole] if whole else []
    return found + [tail for tail in tails if tail and tail not in found]


_FROM_FIGURE: Final = re.compile(r"(?<![\w.])\.?\d.*$")


def _retake(talk: Talk, target: Question, found: Accepted, text: str) -> list[Say]:
    before = talk.state.job
    said = take(talk, target, found, text)
    if isinstance(said, str):
        talk.happened(Reopened(question=target.key))
        return [say(Manner.ASK_BACK, said)]
    if talk.state.job == before:
        return [say(Manner.NOTE, "That is what I have already."), *said]
    return [say(Manner.NOTE, "Corrected."), *said]


def _swap(talk: Talk, last: Answered | None, text: str) -> list[Say] | None:
    """The other way round: width and height, or return and supply, change places."""
    if last is None:
        return None
    pairs = (("width_in", "height_in"), ("after_filter_inwc", "before_coil_inwc"),
             ("before_filter_inwc", "after_coil_inwc"), ("return_degf", "supply_degf"))  # fmt: skip
    beliefs = {}
    for one, two in pairs:
        for key, belief in last.beliefs.items():
            head, _, name = key.rpartition(".")
            other = {one: two, two: one}.get(name)
            if other is not None and f"{head}.{other}" in last.beliefs:
                beliefs[f"{head}.{other}"] = belief
    if not beliefs:
        return None
    talk.happened(Answered(question=last.question, text=text, beliefs=beliefs, volunteered=True))
    asked = question_of(last.question)
    label = asked.label if asked is not None else last.question
    return [say(Manner.ECHO, sentence(f"{label}, the other way round: {told(beliefs)}"))]
