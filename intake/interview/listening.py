"""One typed line as an answer to one question: the readers, and what only a conversation knows.

"None", "same", two trunks of two sizes, the missing half of an answer: what those mean hangs on
the question and on what was said before.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

from engine.job.facts import fact_for
from engine.job.job import Job
from intake.interview.absent import says_none
from intake.interview.as_asked import as_asked, count_or_inches, stays_the_same, without_the_end
from intake.interview.beside import with_asides, without_the_source
from intake.interview.duct_lines import as_meant, told_of_ducts
from intake.interview.heat_told import burns_nothing
from intake.interview.liners import with_liner
from intake.interview.misplaced import by_side, by_stage
from intake.interview.openings import openings_told
from intake.interview.own_reading import OWN_FIELDS, read_own
from intake.interview.phone_answers import by_phone
from intake.interview.question import Question
from intake.interview.relative_flow import as_low, relative_flow, says_same, without_too
from intake.interview.several import bare_metal, several_ducts, several_filters
from intake.interview.size_lists import without_place
from intake.interview.stage_of import cooling_stage
from intake.interview.steps import air_left, full_size_told
from intake.interview.strips import kit_chosen, no_strips, strip_kw
from intake.interview.told_by_question import plainly_asked, told_by_question
from intake.interview.told_otherwise import declines
from intake.reading.clean import LONGEST_ANSWER, normalise
from intake.reading.manner import excuse, sureness
from intake.reading.read import read
from intake.reading.result import (
    Accepted,
    AskBack,
    AskKind,
    Command,
    Previous,
    Reading,
    Rejected,
    Unknown,
)
from intake.reading.second_thought import takes_back
from intake.reading.small_counts import COUNT

__all__ = ["Heard", "Nothing", "Same", "listen", "plain_choices"]


@dataclass(frozen=True, slots=True)
class Nothing:
    """The person says that there is none of what was asked for."""


@dataclass(frozen=True, slots=True)
class Same:
    """The person says that it is the same as what was said before."""


Heard = Reading | Nothing | Same

_NONE: Final = re.compile(
    r"(?:there (?:is|are) )?(?:no|none|nope|nah|nothing|zero|0|not any|isn'?t (?:one|any)"
    r"|aren'?t any"
    r"|there (?:isn'?t|aren'?t)(?: one| any)?|(?:(?:no|nope|nah),? )?(?:it )?(?:doesn'?t|does not)"
    r"|none at all"
    r"|(?:it )?only heats|heat(?:ing)? only|single|one stage|single[- ]stage|one size"
    r"|(?:stays the |all the )?same(?: size)?(?: all the way)?"
    r"|no (?:return )?(?:drop|strips?|heat strips?|cooling|a/?c|reduction|changes?|fittings"
    r"|low fire|step ?downs?)"
    r"|without|it doesn'?t (?:have|get|change).*)[.! ]*"
)
_NOT_OF_ALL: Final[Mapping[str, re.Pattern[str]]] = {
    "drop_size": re.compile(r"no (?:return )?drop"),
    "strip_cfm": re.compile(r"no (?:heat )?strips?"),
    "new_tons": re.compile(r"no (?:cooling|a/?c)|.*\bheat"),
    "step_down": re.compile(r"no (?:reduction|changes?|step ?downs?)"),
    "fittings": re.compile(r"no fittings"),
    "furnace_low_heat": re.compile(r"no low fire"),
}
"""Denials of `_NONE` that name their thing, by the question that they answer."""


def _denies_another(question: Question, line: str) -> bool:
    """Whether a line says that there is none of what another question asks for."""
    own = _NOT_OF_ALL.get(question.key)
    if own is not None and own.match(line):
        return False
    return any(one.match(line) for one in _NOT_OF_ALL.values())


_NONE_AND_WHY: Final = re.compile(
    r"(?:none|no drop|no|nope|there'?s none|there isn'?t one|there is none) ?[,;.:-] ?[^\d?]+"
    r"|(?:no|nope|nah|none),? (?:it|they|the (?:return|drop|air)) (?:opens?|goes|go|comes?|sits?"
    r"|pulls?|draws?)\b[^\d?]*"
)
_TWO_WAYS: Final = re.compile(
    r"(?:there'?s |there are |yes |it'?s )*(?:two|2)[,; ]+(?:trunks[,; ]+)?(?:one |1 )?"
    r"(?:(?:goes |going |to |on )*(?:each|either) (?:way|side|direction|end)|left and right"
    r"|both (?:ways|sides|directions)|(?:one |1 )?left[, ]+(?:and )?(?:one |1 )?right)[.! ]*"
)
_NO_TRUNK: Final = re.compile(
    r"\b(?:no|isn'?t (?:really )?an?|without an?|not an?) (?:real |actual |main |supply )*trunks?\b"
    r"|\b(?:octopus|spider)\b|\b(?:flex\w*|runs?|branch\w*|everything|all)"
    r" (?:\w+ )?(?:(?:right|straight|directly) )?(?:off|out of|from) (?:the |a |of the )*"
    r"(?:plenum|box)\b"
    r"|\b(?:box|plenum) with (?:\w+ )*?(?:runs|flex\w*|branches|ducts) (?:coming "
    r"|going )?(?:off|out)\b"
)
_NO_OPENINGS: Final = re.compile(
    r"(?:there (?:aren'?t|are not|are no|is no|isn'?t) ?(?:any|none|one)?|none|no)"
    r"(?: (?:at all|anywhere|(?:return )?(?:openings?|grill?e?s?|returns?)))*[.! ]*"
)
_A_TRUNK: Final = re.compile(
    rf"(?:^|\b(?:is|has|have|got|just|only) )(?:{COUNT}|an?) (?:(?:big|main|supply|large"
    rf"|small|short) )*trunks?\b"
)
_UNKNOWN: Final = re.compile(
    r"(?:sorry,? |um+,? |well,? |i |i'?ve |i have |got |really |just |honestly )*"
    r"(?:no (?:idea|clue)|idk|dunno|don'?t (?:really )?know|dont know|not sure|unsure"
    r"|can'?t (?:say|tell)"
    r"|couldn'?t (?:say|tell)(?: you)?|who knows|beats me|haven'?t a clue|\?+)"
    r"(?: (?:that|sorry|really|right now|offhand|man|about that))*[.!? ]*"
)
_SAME: Final = re.compile(
    r"(?:the |it'?s (?:the )?|about the )?(?:same|ditto|identical|as (?:in |for )?cooling"
    r"|as before)(?: (?:as|in|for) .{1,40}| one| thing| airflow)?[.! ]*"
)
_JUST_NO: Final = re.compile(
    r"(?:no|nope|nah|none|n/?a|don'?t have (?:it|one|that|those|any))(?: sorry| sir)?[.! ]*"
)
_MEASURED: Final = frozenset(
    [
        "airflow",
        "static_pressure",
        "length",
        "capacity",
        "efficiency",
        "temperature",
        "rise_range",
        "blower_table",
        "area",
        "year",
        "grille",
        "duct",
    ]
)
"""Fields of figures, where a bare no says that the person hasn't got it."""


_BOUNDED: Final = frozenset(
    [
        "airflow",
        "static_pressure",
        "length",
        "elevation",
        "capacity",
        "efficiency",
        "count",
        "year",
        "area",
    ]
)
_PASTED: Final = frozenset(("blower_table", "cooling_rows"))


def plain_choices(question: Question) -> tuple[str, ...]:
    """The choices without the words that also mean them."""
    return tuple(entry.partition("=")[0] for entry in question.choices)


def listen(question: Question, text: str, job: Job, previous: Previous | None = None) -> Heard:
    """What a line says in answer to a question, and what it settles beside it.

    Args:
        question: The open question.
        text: The line, cleaned; a pasted table keeps its lines.
        job: What is known.
        previous: The last stored answer, against which a correction is read.
    """
    found, line = _listen(question, text, job, previous), normalise(text)
    if question.key == "strip_cfm" and isinstance(found, AskBack | Rejected | Unknown):
        kilowatts = strip_kw(line)
        found = found if kilowatts is None else Accepted({"kw": kilowatts}, sureness(line))
    if not isinstance(found, Accepted):
        return found
    return with_asides(question, with_liner(question, found, line), line)


def _listen(question: Question, text: str, job: Job, previous: Previous | None) -> Heard:
    text = as_meant(question, text)
    line = normalise(text)
    if _UNKNOWN.fullmatch(line):
        return Unknown("You can't say.")
    told = by_phone(question, text)
    if not isinstance(told, str):
        return told
    text, line = told, normalise(told)
    if question.key == "strip_cfm" and (kit := kit_chosen(line)) is not None:
        return kit
    if question.key == "old_heat" and burns_nothing(line):
        return Nothing()
    if question.key == "strip_cfm" and no_strips(line):
        return Nothing()
    if question.field == "airflow" and (flow := relative_flow(question, line, job)) is not None:
        return flow
    if not question.none and question.field in _MEASURED and _JUST_NO.fullmatch(line):
        return Unknown("You don't have it.")
    why = _NONE_AND_WHY.fullmatch(line) is not None
    if question.none == "zero" and why and not _denies_another(question, line):
        return Nothing()
    if question.key == "step_down" and (stays_the_same(line, job) or full_size_told(line, job)):
        return Nothing()
    if says_none(question, line):
        return Nothing()
    if question.section == "return.grilles" and _NO_OPENINGS.fullmatch(line):
        return AskBack(
            "No return opening anywhere? Then what lets the air back to the unit: a louvered door,"
            " an open closet? Its size, width by height.",
            (),
            AskKind.MISSING_PART,
        )
    if question.key == "trunk_count" and _NO_TRUNK.search(line) and not _A_TRUNK.search(line):
        return Nothing()
    if question.key == "trunk_count" and _TWO_WAYS.fullmatch(line):
        return Accepted({"count": 2}, sureness(line))
    none = _NONE.fullmatch(line) and not _denies_another(question, line)
    if question.none and none and not (question.same and _SAME.fullmatch(line)):
        return Nothing()
    if question.same and not as_low(line) and (_SAME.fullmatch(line) or says_same(line)):
        return Same()
    if question.key == "new_stages" and (stage := cooling_stage(line)):
        return Accepted({"choice": stage}, sureness(line))
    exact = _exact_choice(question, line)
    if exact is not None:
        return exact
    ducts = told_of_ducts(question, line, job)
    if ducts is not None:
        return ducts
    if question.field in OWN_FIELDS:
        return _own(question, text, previous)
    if question.field == "yes_no" and declines(line):
        return Accepted({"yes": False})
    if question.field == "year" and _AREA.search(line):
        return Rejected(f"That is an area. {question.words}")
    of_question = told_by_question(question, line, job)
    if of_question is not None:
        return of_question
    if (plain := plainly_asked(question, line)) != line:
        text = line = plain
    if question.field in ("duct", "grille") and takes_back(line):
        previous = None  # what is taken back stands in this line
    text, line = without_the_end(question, text, line)
    text, line = without_the_source(question, text, line)
    text, line = without_too(question, text, line)
    at = (
        _drop_at(question, line)
        or by_stage(question, line, staged=_staged(job))
        or by_side(question, line)
    )
    if at is not None:
        return at
    if question.section == "return.grilles" and question.field == "grille":
        openings = openings_told(line)
        if openings is not None:
            return openings
    low, high = _bounds(question)
    found = read(
        question.field,
        text,
        question=question.words,
        choices=question.choices,
        previous=previous,
        low=low,
        high=high,
    )
    if question.section == "return.grilles":
        found = without_place(question, found, line)
    if question.field in _PASTED and not isinstance(found, Accepted):
        return _around_a_paste(text, found, previous)
    lost = isinstance(found, Rejected) or (
        isinstance(found, AskBack) and found.kind is AskKind.WRONG_QUANTITY
    )
    if isinstance(found, AskBack):
        found = several_filters(question, found, line) or found
        found = as_asked(question, found, line) or found if isinstance(found, AskBack) else found
    if question.choices and lost and len(text) <= LONGEST_ANSWER:
        return Rejected(f"I can't read that as an answer. {_wanted(question)}")
    if isinstance(found, Accepted) and question.field == "duct":
        found = count_or_inches(question, found, line) or bare_metal(found, line)
    if question.key == "step_share":
        return air_left(found, line)
    return several_ducts(question, found, line, job) if question.field == "duct" else found


_AREA: Final = re.compile(r"\b(?:sq|square|sf|ft2|feet)\b")


def _staged(job: Job) -> bool:
    return job.word("equipment.stages") in ("two", "variable")


def _exact_choice(question: Question, line: str) -> Accepted | None:
    """A choice typed as it is; no request to the program hides in it."""
    if question.field not in ("choice", "coil_state"):
        return None
    for entry in question.choices:
        key, _, words = entry.partition("=")
        if line in (key, key.replace("_", " "), *words.split("|")):
            return Accepted({"choice": key})
    return None


_SIZE: Final = re.compile(r"\d ?(?:x|by|×|\*) ?\d", re.IGNORECASE)


def _own(question: Question, text: str, previous: Previous | None) -> Reading:
    plain = read("text", text, previous=previous)
    if isinstance(plain, Command):
        return plain
    if question.field == "measured_where" and _SIZE.search(text):
        return Rejected(f"That is a size. {question.words}")
    found = read_own(question.field, text, question.choices)
    if isinstance(found, Accepted):
        return Accepted(found.values, sureness(normalise(text)), found.place, found.others)
    if found is not None:
        return found
    if isinstance(plain, Unknown):
        return plain
    if not text.strip():
        return Rejected(f"Nothing was typed. {_wanted(question)}")
    return Rejected(f"I can't read that as an answer. {_wanted(question)}")


def _wanted(question: Question) -> str:
    choices = [key.replace("_", " ") for key in plain_choices(question)]
    if choices:
        return f"I'd understand {', '.join(choices[:-1])} or {choices[-1]}."
    return {
        "equipment": 'I\'d understand "3 ton two-stage heat pump" or "furnace with 2.5 tons".',
        "thickness": 'I\'d understand inches, like "1" or "half inch".',
    }.get(question.field, question.how)


def _bounds(question: Question) -> tuple[float | None, float | None]:
    if question.field == "count" and question.section == "supply.trunks":
        return 1.0, 6.0
    if question.field not in _BOUNDED or not question.fills:
        return None, None
    fact = fact_for(question.fills[0][1])
    return fact.low, fact.high


def _around_a_paste(text: str, found: Reading, previous: Previous | None) -> Reading:
    """A line where a table was hoped for: a request, "don't know", or no table at all."""
    plain = read("text", text, previous=previous)
    if isinstance(plain, Command | Unknown):
        return plain
    line = normalise(text)
    if not re.search(r"\d", line) and (excuse(line) or _LATER.search(line)):
        return Unknown("You don't have it.")
    return found


_LATER: Final = re.compile(
    r"\b(?:tonight|later|can get|will (?:get|send|find)|i'?ll (?:get|send))\b"
)

_AT: Final = re.compile(r"(?P<drop>.+?)\s*(?:@|\bat\b|\bfor\b|,)\s*(?P<at>[\d,. ]+(?:k|cfm)?.*)")


def _drop_at(question: Question, line: str) -> Accepted | None:
    """A drop and the airflow it is listed at: ".25 at 1200"."""
    if question.key not in ("coil_drop", "filter_drop"):
        return None
    match = _AT.fullmatch(line)
    if match is None:
        return None
    drop = read("static_pressure", match["drop"])
    at = read("airflow", match["at"])
    if isinstance(drop, Accepted) and isinstance(at, Accepted) and "inwc" in drop.values:
        return Accepted({**drop.values, **at.values}, sureness(line))
    return None
