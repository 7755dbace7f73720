"""Several answers in one breath: the clauses of a line, each with the question that it names."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

from intake.interview.called import begins_with_name, holding_old, without_lead
from intake.interview.clause_words import (
    bare_clause,
    name_alone,
    of_no_question,
    predicate,
    same_size,
    whose,
)
from intake.interview.commands import corrected
from intake.interview.elsewhere import by_its_own_name, denied, elsewhere, named_first
from intake.interview.in_passing import in_passing
from intake.interview.listening import Heard, Nothing, Same, listen
from intake.interview.own_words import TOOLS
from intake.interview.planner import bank_of, question_of
from intake.interview.question import Question
from intake.interview.safety_look import clear
from intake.interview.sided import holder_of_old, of_one_side
from intake.interview.talk import Talk
from intake.interview.weather_told import warm_enough
from intake.reading.clean import normalise
from intake.reading.result import Accepted, Command, Previous

__all__ = ["Clause", "clauses"]

_MARKS: Final = re.compile(r"([,;](?!\d{3}\b)|\.(?!\d)|\b(?:and|plus|but)\b)")
_VALUE_NEXT: Final = re.compile(
    r"(?:it'?s|its|that'?s|should be|is|make it|make that|it should be) .*\d"
)
"""What gives the value of what the piece before it names."""
_ONE_OF_SEVERAL: Final = re.compile(
    r"(?:second|other|first|third|left|right|smaller|bigger|back|front) (?=[a-z])"
)
_FURTHER_DROP: Final = re.compile(
    r"\b(?:another|an?other|one more|a second|second|2nd) (?:return )?drop\b"
)
_PASTED: Final = ("blower_table", "cooling_rows")


@dataclass(frozen=True, slots=True)
class Clause:
    """A part of a line that answers another question than the open one.

    Attributes:
        question: The question that it names; None if it is plainly of another thing, but of which
            can't be told.
        found: What it answers; None if it speaks of one of several ("the second trunk").
        text: Its words.
        corrects: Whether it puts right what was said before.
    """

    question: Question | None
    found: Accepted | Nothing | None
    text: str
    corrects: bool = False


@dataclass(slots=True)
class _Part:
    """The words of a line that are of one question; of none that is known where it is None."""

    question: Question | None
    text: str


def clauses(talk: Talk, question: Question, line: str) -> tuple[str, list[Clause]] | None:
    """The line's own part and the clauses that name and answer other questions.

    Returns:
        None if no clause does, or if a clause that names another question doesn't answer it.
    """
    if question.field in _PASTED or question.field == "text":
        return None
    second = _second_drop(talk, question, line)
    if second is not None:
        return second
    own, parts = _parts(talk, question, line)
    if parts and not own.strip():
        own = _taken_from_the_end(talk, question, parts)
    if not parts or not own.strip():
        return None
    rest = without_its_end(own)
    found: list[Clause] = []
    for part in parts:
        clause = _answered(talk, question, part, rest)
        if clause is None:
            return None
        found.append(clause)
    heard = listen(question, rest, talk.state.job)
    answers = isinstance(heard, Accepted | Same | Nothing)
    safe = question.field == "yes_no" and clear(rest)
    if not answers and not safe and elsewhere(talk, question, rest) is None:
        return None
    return normalise(rest), found


_SECOND_DROP: Final = re.compile(
    r"(?P<own>[^\d]*?)[,;.]+ *(?P<rest>(?:but |and |oh |also |i )*(?:forgot |missed |remembered )?"
    r"[^,;.]*\b(?:another|a second|second|2nd|one more) (?:return )?drop\b.*)"
)


def _second_drop(talk: Talk, question: Question, line: str) -> tuple[str, list[Clause]] | None:
    """A further drop, told behind the answer: "none, but there's another drop, 12 round"."""
    match = _SECOND_DROP.fullmatch(normalise(line))
    drop = question_of("drop_size")
    if match is None or drop is None or talk.state.answer_to(drop.key) is None:
        return None
    heard = listen(question, match["own"], talk.state.job)
    if question is drop or not isinstance(heard, Accepted | Nothing):
        return None
    return match["own"], [Clause(drop, None, match["rest"])]


def _parts(talk: Talk, question: Question, line: str) -> tuple[str, list[_Part]]:
    """The open question's own words, and those of each other question in their order."""
    own = waiting = ""
    parts: list[_Part] = []
    pieces = _pieces(line)
    for k, (mark, piece) in enumerate(pieces):
        said = normalise(piece)
        following = pieces[k + 1][1] if k + 1 < len(pieces) else ""
        if following and name_alone(said) and named_first(talk, bare_clause(said)) is not None:
            waiting = f"{waiting}{mark}{piece}"  # "and trunks, both are 18x8"
            continue
        piece = f"{waiting} {piece}".strip() if waiting else piece
        waiting = ""
        valued = _VALUE_NEXT.match(following) is not None
        other, named = _named(talk, question, piece, valued=valued)
        if other and parts and named is not None and named is parts[-1].question:
            parts[-1].text += mark + piece
        elif other:
            parts.append(_Part(named, piece))
        elif parts and named is None:
            parts[-1].text += mark + piece
        else:
            own += mark + piece
    return own, parts


def _taken_from_the_end(talk: Talk, question: Question, parts: list[_Part]) -> str:
    """The open question's answer at the end of another one's words: "drop's lined. 1970"."""
    last = parts[-1]
    pieces = _pieces(last.text)
    if len(pieces) < 2 or last.question is None:
        return ""
    tail = pieces[-1][1]
    counted = question.key == "trunk_size" and last.question.key == "trunk_count"
    if not (counted or question.field in _FIGURES or question.key == "branches"):
        return ""
    if not re.search(r"\d", tail) or question.field == last.question.field:
        return ""
    if not isinstance(listen(question, tail, talk.state.job), Accepted):
        return ""
    last.text = "".join(mark + piece for mark, piece in pieces[:-1])
    return tail


_FIGURES: Final = ("year", "elevation")


def _named(
    talk: Talk, question: Question, piece: str, *, valued: bool
) -> tuple[bool, Question | None]:
    """Whether a piece is of another question than the open one, and of which."""
    said = bare_clause(normalise(piece))
    if of_no_question(question, said):
        return True, None
    if _FURTHER_DROP.search(said) and question.section != "return.drops":
        return True, question_of("drop_size")
    alias = whose(question, said) or whose(question, normalise(piece))
    named: Question | None
    if alias:
        named = question_of(alias)
    elif re.search(r"\d", said) or valued:
        bare = _ONE_OF_SEVERAL.sub("", without_lead(piece))
        named = named_first(talk, said) or named_first(talk, bare) or begins_with_name(talk, bare)
    elif predicate(said) or same_size(said):
        named = denied(talk, question, said) or named_first(talk, said)
    else:
        named = denied(talk, question, said)
    if named is not None and by_its_own_name(question, named, piece):
        named = None
    passing = in_passing(talk, question, piece) if named is None else None
    if passing is not None and (
        passing.key == "conditions" or not (passing.bundle and passing.bundle == question.bundle)
    ):
        named = passing
    named = named or _comes_next(talk, question, piece)
    if named is None or named is not question:
        named = holding_old(talk, normalise(piece), named)
    if named is None or named not in (*bank_of(talk.state.voice), question):
        return False, None
    return named.key != question.key, named


def _answered(talk: Talk, question: Question, part: _Part, own: str) -> Clause | None:
    """What the words of another question answer there, or put right; None if they don't."""
    named, words = part.question, part.text.strip()
    if named is None:
        return Clause(None, Accepted({}), words)
    text = bare_clause(normalise(words))
    if named.key == "drop_size" and _FURTHER_DROP.search(text):
        return Clause(named, None, words)
    if _ONE_OF_SEVERAL.match(text) or _ONE_OF_SEVERAL.match(without_lead(words)):
        return Clause(named, None, words)
    earlier = talk.state.answer_to("static_total")
    if named.key == "static_total" and earlier is not None:
        figures = _PRESSURE.findall(words)
        whole = of_one_side(earlier.text, words, figures[0]) if figures else None
        heard_whole = listen(named, whole, talk.state.job) if whole else None
        if whole and isinstance(heard_whole, Accepted):
            return Clause(named, heard_whole, whole, corrects=True)
    absent = denied(talk, question, text)
    if absent is not None:
        return Clause(absent, Nothing(), words)
    text = own if same_size(text) else text
    flow = _as_in_cooling(talk, named)
    if flow is not None and re.search(r"\bsame (?:as|like)\b", text):
        return Clause(named, flow, words)
    holder = holder_of_old(talk, named, words)
    if holder is None:
        return Clause(None, Accepted({}), words)
    named = holder
    stated = talk.state.answer_to(named.key)
    known = stated is not None
    if named.key == "tools" and stated is not None and "after all" in text:
        text = words = f"{stated.text}, {text}"
    for home in _homes(talk, named, text):
        aside = _BY_THE_WAY.sub(" ", words).strip()
        for said in dict.fromkeys((text, words, aside, _without_topic(home, text))):
            heard: Heard = listen(home, said, talk.state.job)
            if isinstance(heard, Accepted) or (isinstance(heard, Nothing) and home.none):
                return Clause(home, heard, said, corrects=known)
    return _better(talk, named, words)


def _as_in_cooling(talk: Talk, home: Question) -> Accepted | None:
    """The airflow in full cooling as that of the heat pump's heating."""
    flow = talk.state.job.number("target.cooling_high_cfm")
    return Accepted({"cfm": flow}) if home.key == "heat_pump_cfm" and flow else None


def _better(talk: Talk, named: Question, text: str) -> Clause | None:
    """A clause that corrects part of what its question was answered ("16 not 15")."""
    earlier = talk.state.answer_to(named.key)
    last = Previous(named.field, earlier.text) if earlier is not None else None
    command = listen(named, text, talk.state.job, last)
    if not (isinstance(command, Command) and command.value_text):
        return None
    better = corrected(talk, named, command, text)
    return Clause(*better, corrects=True) if better is not None else None


def _homes(talk: Talk, named: Question, text: str) -> list[Question]:
    """The questions that a clause about a thing may answer, the likeliest first.

    A size is of the question for sizes; without a figure, what it is made of and where the tape
    was come first.
    """
    bank = bank_of(talk.state.voice)
    near = [q for q in bank if named.section and q.section.startswith(named.section)]
    same = [q for q in near if q is not named]
    further = [q for q in same if not q.choices]
    if re.search(r"\d ?(?:x|by) ?\d", text):
        first = [q for q in same if q.field == "duct" and q.section == named.section]
        return [*(first if named.field == "count" else ()), named, *further]
    if re.search(r"\d", text):
        return [named, *further]
    taped = re.search(r"\b(?:over|under|outside of|on the metal|clear)\b", text) is not None
    order = ("measured_where", "skin") if taped else ("skin", "measured_where")
    about = [q for field in order for q in same if q.field == field and q.section == named.section]
    return [*about, named] if predicate(text) else [named, *about]


def _without_topic(home: Question, text: str) -> str:
    topics = "|".join(re.escape(topic) for topic in sorted(home.topics, key=len, reverse=True))
    return re.sub(rf"^(?:{topics})\b(?:'s| is| are| was)? ?", "", text) if topics else text


def without_its_end(own: str) -> str:
    """A clause without the words that led to the next one ("30x20 slots. sorry").

    >>> without_its_end("runs fine, oh")
    'runs fine'
    """
    return _END.sub("", own).strip(" ,;")


_END: Final = re.compile(r"(?:[\s,;.]+(?:oh|and|sorry|wait|also|but|actually))+[\s,;.]*$")

_BY_THE_WAY: Final = re.compile(
    r"[, ]*\b(?:by the way|btw|fyi|though|too|as well|either)\b[, ]*|^(?:oh|also|and|so"
    r"|it turns out)\b[, ]*"
)

_PRESSURE: Final = re.compile(r"(?<!\d)0?\.\d+")
_NEXT: Final[Mapping[str, tuple[str, ...]]] = {
    "old_runs": ("tools", "weather"),
    "tools": ("weather",),
    "zoned": ("year_built",),
    "reading_mode": ("reading_airflow",),
}
"""Questions that people answer ahead, whose answers need no name."""


def _comes_next(talk: Talk, question: Question, piece: str) -> Question | None:
    """The question after the open one that a piece answers, where the open one can't use it."""
    for key in _NEXT.get(question.key, ()):
        coming = question_of(key)
        if coming is None:
            continue
        if key == "reading_airflow" and not _ALL_CFM.fullmatch(piece.strip(" .!")):
            continue
        if key == "year_built" and not _A_YEAR.fullmatch(piece.strip(" .!")):
            continue
        if key == "weather" and warm_enough(piece) is None and not _of_weather(piece):
            continue
        names_it = coming.field == "tools" and any(tool.search(piece) for _, tool in TOOLS)
        if not names_it and isinstance(listen(question, piece, talk.state.job), Accepted):
            continue
        if isinstance(listen(coming, piece, talk.state.job), Accepted):
            return coming
    return None


_ALL_CFM: Final = re.compile(r"(?:about |around |at )?\d,?\d{2,3} ?cfm", re.IGNORECASE)
_A_YEAR: Final = re.compile(r"(?:about |around )?(?:18|19|20)\d\d")

_WEATHER: Final = re.compile(
    r"\b(?:out(?:side|doors)?|weather|cold|cool|warm|hot|rain\w*|snow\w*|sunny|freezing|chilly"
    r"|runs? (?:the )?(?:cooling|a/?c))\b"
)
_OF_AIR: Final = re.compile(r"\b(?:cfm|static|return|supply|filter|thermostat|tstat|coil)\b")


def _of_weather(piece: str) -> bool:
    return _WEATHER.search(piece) is not None and _OF_AIR.search(piece) is None


def _pieces(line: str) -> list[tuple[str, str]]:
    """The pieces between marks, each with the mark before it, as it was typed."""
    parts = _MARKS.split(line)
    marks = ["", *(f"{mark} " if mark in ",;." else f" {mark} " for mark in parts[1::2])]
    pieces = (part.strip() for part in parts[::2])
    found: list[tuple[str, str]] = []
    for mark, piece in zip(marks, pieces, strict=True):
        if found and _NOT_THAT.fullmatch(piece):
            found[-1] = (found[-1][0], f"{found[-1][1]}{mark}{piece}")  # "12 branches, not 10"
        elif piece:
            found.append((mark, piece))
    return found


_NOT_THAT: Final = re.compile(r"not (?:\d[\d.x]*|\.\d+|one|two|three|four|five)(?: \w+)?[.! ]*")
