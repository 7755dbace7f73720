"""Which question a line is about, where it isn't the open one."""

import re
from collections.abc import Mapping
from typing import Final

from intake.interview.called import begins_with_name, called, latest_airflow, without_lead
from intake.interview.listening import listen
from intake.interview.planner import bank_of, question_of
from intake.interview.question import Question
from intake.interview.talk import Talk
from intake.reading.choice_numbers import numbered
from intake.reading.clean import normalise
from intake.reading.read import read
from intake.reading.result import Accepted, Value

__all__ = ["by_its_own_name", "denied", "elsewhere", "named_by", "named_first"]

_NEIGHBOURS: Final[Mapping[str, tuple[str, ...]]] = {
    "old_runs": ("tools",),
    "trunk_count": ("trunk_size",),
    "branch_count": ("branches",),
    "return_bays": ("return_bay_size",),
    "registers": ("branches",),
    "filter_depth": ("filter",),
    "filter_place": ("filter",),
    "safety": ("new_equipment",),
    "new_equipment": ("cool_cfm",),
    "new_tons": ("cool_cfm",),
    "new_stages": ("cool_cfm", "new_equipment"),
    "furnace_heat": ("rise",),
    "furnace_efficiency": ("rise",),
    "furnace_low_heat": ("rise",),
    "reading_mode": ("reading_airflow",),
    "reading_filter": ("reading_airflow",),
    "d_registers": ("d_openings",),
    "d_change": ("d_tons",),
    "blower_table": ("blower_kind",),
}
"""Questions that people answer together with, or instead of, the open one."""


def elsewhere(talk: Talk, question: Question | None, text: str) -> tuple[Question, Accepted] | None:
    """The other question that a line names and answers, if it does.

    A thing named with what it is made of or how it was taped ("the drop is lined") answers the
    question about that.
    """
    added = _added_opening(talk, question, text)
    if added is not None:
        return added
    named = named_first(talk, text)
    if named is None and question is not None and _FIGURE.search(text):
        named = begins_with_name(talk, text)
    bank = bank_of(talk.state.voice)
    candidates = [named] if named is not None else []
    if question is not None and named is question:
        return None
    if named is not None and named.section and not _FIGURE.search(text):
        same = (other for other in bank if other.section == named.section)
        candidates += [other for other in same if other.field in ("skin", "measured_where")]
    if question is not None and named is None:
        near = (question_of(key) for key in _NEIGHBOURS.get(question.key, ()))
        shaped = (question_of(key) for key in _shaped(text))
        candidates = [q for q in near if q is not None]
        candidates += [q for q in shaped if q is not None and not _known(talk, q)]
    for candidate in candidates:
        if candidate not in bank or (question is not None and candidate.key == question.key):
            continue
        if numbered(normalise(text), candidate.choices) is not None:
            continue  # a bare number picks from choices only where they are asked
        by_the_way = question is not None and question.key == "safety"
        if by_the_way and not _GOES_IN.search(text.lower()):
            continue  # a furnace that somebody walked around says nothing of what goes in
        if candidate.key == "rise" and _OF_HEAT.search(text.lower()):
            continue
        if by_its_own_name(question, candidate, text):
            continue
        found = listen(candidate, text, talk.state.job)
        if isinstance(found, Accepted):
            return candidate, found
        told = _FROM_FIGURE.search(text) if candidate is named else None
        shorter = listen(candidate, told[0], talk.state.job) if told else None
        if isinstance(shorter, Accepted):
            return candidate, shorter
    return None


_FROM_FIGURE: Final = re.compile(
    r"(?<![\w.])\.?\d.*?(?=(?:,? (?:actually|sorry|instead|please|now|though|really))*[.! ]*$)"
)

_OF_HEAT: Final = re.compile(r"%|\bper ?cent\b|\bin\b|\bout\b|\blow\b|\bhigh\b|\d ?k\b|\binput\b")
"""Two figures of a burner's heat, which are no temperature rise."""

_OLD_AND_NEW: Final = {
    "furnace_heat": "old_heat",
    "furnace_efficiency": "old_efficiency",
}
"""Questions about what goes in, and those that ask the same of what is there."""


def by_its_own_name(question: Question | None, candidate: Question, text: str) -> bool:
    """Whether a line names what the open question asks too, of the old thing ("input 80,000")."""
    if question is None or question.key not in _OLD_AND_NEW.values():
        return False
    return candidate.key in _OLD_AND_NEW and not re.search(r"\bnew\b", text.lower())


_GOES_IN: Final = re.compile(
    r"\d|\btons?\b|\b(?:going|goes|putting|put) in\b|\binstall\w*\b|\breplac\w*\b|\bnew\b"
)


_FURTHER: Final = re.compile(r"\b(?:forgot|missed|add|another|one more|a second|second)\b")
_OPENING: Final = re.compile(r"\b(?:opening|return(?! (?:trunk|drop|duct))|grill?e?)s?\b")
_OF_OPENINGS: Final = ("openings_where", "filter_place")


def _added_opening(
    talk: Talk, question: Question | None, text: str
) -> tuple[Question, Accepted] | None:
    """A return opening told beside those that are known: "forgot one opening: 12x6"."""
    line = normalise(text)
    home = question_of("openings")
    known = talk.state.job.length("return.grilles") or 0
    of_these = question is not None and question.key in _OF_OPENINGS
    if home is None or not known or (question is not None and question.key == home.key):
        return None
    if not _FURTHER.search(line) or not (of_these or _OPENING.search(line)):
        return None
    size = _ONE_SIZE.findall(line)
    found = read("grille", size[0]) if len(size) == 1 else None
    if not isinstance(found, Accepted):
        return None
    rows: list[Value] = []
    for entry in talk.state.job.entries("return.grilles"):
        sides = (talk.state.job.number(f"{entry}.{n}") for n in ("width_in", "height_in", "count"))
        wide, tall, count = sides
        if wide is None or tall is None:
            return None
        rows.append({"width_in": wide, "height_in": tall, "count": int(count or 1)})
    rows.append({**found.values, "count": 1})
    return home, Accepted({"grilles": rows})


_ONE_SIZE: Final = re.compile(r"\d+(?:\.\d+)? ?(?:x|by) ?\d+(?:\.\d+)?")


def _known(talk: Talk, question: Question) -> bool:
    """Whether what a question asks for was said: a shape alone never overwrites it."""
    return bool(question.facts) and all(talk.context.known(key) for key in question.facts)


_FIGURE: Final = re.compile(r"\d")
_A_SIZE_OF: Final = r"\d ?(?:x|by|×) ?\d+(?:\.\d+)? ?(?:in|inch|inches|\")? ?"
_SHAPES: Final = (
    (rf"{_A_SIZE_OF}(?:return )?drop\b", ("drop_size",)),
    (rf"{_A_SIZE_OF}(?:supply |main )?trunk\b", ("trunk_size",)),
    (r"\bret(?:urn)?\b\D*\.\d.*\bsup(?:ply)?\b\D*\.\d", ("static_total",)),
    (r"\b(?:\d|one|two|three) (?:supply )?trunks?\b", ("trunk_count", "trunk_size")),
    (r"\d+ ?(?:x|by|×) ?\d+ ?(?:x|by|×) ?\d", ("filter", "d_filter")),
    (r"^(?!.*\b(?:ret|sup)).*\d ?cfm\b", ("cool_cfm",)),
    (r"\b(?:elbows?|take ?offs?|boots?)\b", ("fittings",)),
    (r"\d[ -]?tons?\b", ("new_tons", "d_tons")),
    (
        r"\d ?k?\b.{0,8}\blow[- ]?(?:fire|heat|input)\b|\blow[- ]?fire\b.{0,8}\d",
        ("furnace_low_heat",),
    ),
    (r"\d\b.{0,12}\b(?:sq|square|sf|ft2)\b", ("d_area",)),
)
"""Answers that are told by their shape, whatever is asked."""


def _shaped(text: str) -> tuple[str, ...]:
    line = text.lower()
    return tuple(key for shape, keys in _SHAPES if re.search(shape, line) for key in keys)


def named_first(talk: Talk, text: str) -> Question | None:
    """The question whose topic a line begins with; the longest topic wins."""
    line = without_lead(text)
    if _NARROWS.match(line):
        return None  # it says what the duct becomes there
    best: tuple[int, Question] | None = None
    for question in bank_of(talk.state.voice):
        for topic in question.topics:
            if re.match(rf"{re.escape(topic)}\b", line) and (best is None or len(topic) > best[0]):
                best = (len(topic), question)
    return best[1] if best else None


_NARROWS: Final = re.compile(
    r"filter(?: \w+)? (?:chokes?|necks?|pinches|squeezes|narrows|reduces|takes|brings|cuts)\b"
)

_DENIES: Final = re.compile(
    r"(?:(?:and|also|oh|but|nope|nah|actually|wait),? )*(?:there(?:'?s| is| are)? "
    r"|it has |we have |i (?:see|have) |has )?"
    r"(?:no|not an?|isn'?t an?|aren'?t any|not any) (?P<thing>[a-z ]+?)"
    r"(?: (?:here|there|at all|in this house|on this (?:one|job)"
    r"|though|either|after all|anymore|now|today))*[.! ]*"
    r"(?:[,;.-] ?(?!(?:and|but|no|not|just|only)\b)[^\d?]+)?"
)


_FORGET: Final = re.compile(
    r"(?:oh,? |and |actually,? )*(?:forget|scratch|ignore|lose) (?:the |that )?"
    r"(?P<thing>[a-z ]+?)[,;.]+"
    r" ?(?:and )?(?:there (?:isn'?t|ain'?t|is no)(?: one| any|ne)?|there'?s none"
    r"|it doesn'?t exist)\b.*"
)


def denied(talk: Talk, question: Question, text: str) -> Question | None:
    """The other question whose thing a line says there is none of ("there's no return trunk")."""
    line = text.replace("’", "'")
    match = _FORGET.fullmatch(line.lower().strip()) or _DENIES.fullmatch(without_lead(line))
    if match is None:
        return None
    if question.key == "return_trunk" and match["thing"] in ("trunk", "trunks"):
        return None  # the trunk that is asked about
    bank = bank_of(talk.state.voice)
    named = next((other for other in bank if match["thing"] in other.topics), None)
    if named is None:
        return None
    if question.section and question.section == named.section and question.key != named.key:
        return named if named.none else None  # "actually there is no drop" at what it is made of
    for other in (named, *bank):  # "no trunk" names its size, and answers how many there are
        alike = other is named or bool(other.section and other.section == named.section)
        if alike and other.none and other.key != question.key:
            return other
    return None


def named_by(talk: Talk, words: str) -> Question | None:
    """The question that words in the middle of a sentence name ("the filter", "return drop").

    Where no topic is named, a loose name of what was answered counts ("cooling is 1100").
    """
    line = words.lower()
    best: tuple[str, Question] | None = None
    for question in bank_of(talk.state.voice):
        for topic in question.topics:
            if re.search(rf"\b{re.escape(topic)}\b", line) and (
                best is None or len(topic) > len(best[0])
            ):
                best = (topic, question)
    return latest_airflow(talk, *best) if best else called(talk, line)
