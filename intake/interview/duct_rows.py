"""Ducts told by more than one size in a line: side by side, one narrowing, one taped twice.

What two sizes are hangs on what is asked: two trunks leave the plenum, but of one drop the
narrowest place is wanted, and a trunk that gets smaller tells its smaller part too.
"""

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import Final

from engine.job.job import Job
from intake.interview.beside import ASIDE
from intake.interview.question import Question
from intake.interview.several import bare_metal
from intake.reading.aside import place_of
from intake.reading.duct_groups import Group, Groups, duct_groups
from intake.reading.echo import echo
from intake.reading.manner import sureness
from intake.reading.read import read
from intake.reading.result import (
    Accepted,
    AskBack,
    AskKind,
    Reading,
    Value,
    Values,
    Volunteered,
)
from intake.reading.scan import scan
from intake.reading.second_thought import opens_correction, takes_back

__all__ = ["rows_told"]

_SIZED: Final = ("trunk_size", "return_trunk", "drop_size")
_TIMES_BEHIND: Final = re.compile(
    r"(?P<size>(?!.*\d ?x ?\d).*\d.*?),? x ?(?P<count>[2-6])[.! ]*"
    r"|(?P<sides>\d+ ?x ?\d+) ?x ?(?P<times>[2-4])\b(?P<rest>\D*)"
)


def rows_told(question: Question, line: str, job: Job) -> Reading | None:
    """What a line of two sizes or more says of a trunk or drop; None if it is read as one size.

    Args:
        question: The open question.
        line: Normalised text.
        job: What is known.
    """
    if question.key not in _SIZED or opens_correction(line):
        return None
    single = _one_after_all(question, line, job)
    if single is not None:
        return single
    counted = _times_behind(question, line, job)
    if counted is not None:
        return counted
    said = duct_groups(line)
    one_of = _one_of_several(question, line, job)
    if one_of is not None:
        return one_of
    if said is None or len(said.groups) < 2:
        return None
    taped = _taped_twice(line, said)
    if taped is not None:
        return taped
    if takes_back(line):
        return None
    if question.key == "drop_size" and (narrow := _narrowest(line, said)) is not None:
        return narrow
    if question.key == "trunk_size" and (smaller := _with_its_step(line, said)) is not None:
        return smaller
    if _ALONG.search(line) or (question.key == "drop_size" and _OF_ANOTHER.search(line)):
        return None
    return _side_by_side(question, line, said, job)


def _times_behind(question: Question, line: str, job: Job) -> Accepted | None:
    """ "16 inch flex x2"; "16x8x2" where two are known to be there."""
    behind = _TIMES_BEHIND.fullmatch(line)
    if behind is None:
        return None
    size, count = behind["size"], behind["count"]
    if size is None:
        size, count = behind["sides"] + behind["rest"], behind["times"]
        if job.number(f"{question.section}.0.count") != float(count):
            return None
    found = read("duct", f"{count} {size}")
    return bare_metal(found, line) if isinstance(found, Accepted) else None


_ONE_AFTER_ALL: Final = re.compile(
    r"(?P<size>.*?\d.*?)[,;.]? (?:and |but )?(?:i said (?:there (?:are|were) )?"
    r"(?:two|2|three|3)(?: trunks?)?[,;.]? (?:but |and )?)?(?:it'?s|there'?s|there is|it is"
    r"|make it)"
    r"(?: (?:really|actually|only|just))*(?: the)? (?:one|1"
    r"|a single)(?: trunk)?(?: after all)?[.! ]*"
)


def _one_after_all(question: Question, line: str, job: Job) -> Accepted | None:
    """One trunk where more had been counted: "20x8 bare and it's just the one trunk"."""
    known = job.number(f"{question.section}.0.count")
    match = _ONE_AFTER_ALL.fullmatch(line) if question.key == "trunk_size" else None
    if match is None or known is None or known < 2:
        return None
    found = read("duct", match["size"])
    if not isinstance(found, Accepted) or "ducts" in found.values:
        return None
    found = bare_metal(found, match["size"])
    return replace(found, values={**found.values, "count": 1})


_ONE_OF: Final = re.compile(
    r"(?:the )?(?:one|1|first|front|left)(?: one)? (?:of (?:them|em|those) ?)?(?:'s|is|was)? ?"
    r"(?P<size>\d[^,;]*?)[,;. ]+(?:but |and )?(?:i )?(?:couldn'?t|can'?t|didn'?t"
    r"|haven'?t)\b.*\bother\b\D*"
)


def _one_of_several(question: Question, line: str, job: Job) -> AskBack | None:
    """One of several is taped, and the other couldn't be: is it like it?"""
    match = _ONE_OF.fullmatch(line.replace("them's", "them 's"))
    known = job.number(f"{question.section}.0.count")
    if match is None or known is None or known < 2:
        return None
    found = read("duct", match["size"])
    if not isinstance(found, Accepted):
        return None
    return AskBack(
        f"{echo('duct', found.values)} for one of them. Is the other one like it? Yes, or its"
        " size.",
        ({**found.values, "count": int(known)},),
        AskKind.MISSING_PART,
    )


_ALONG: Final = re.compile(
    r"\b(?:reduc\w*|steps?|stepping|then|becomes|narrow\w*|necks?|after|tapers?|drops? (?:down )?to"
    r"|down to|goes to|not|or|maybe|no|instead|was)\b|\?"
)


def _side_by_side(question: Question, line: str, said: Groups, job: Job) -> Reading | None:
    """Ducts beside each other, each with how many there are of it."""
    counts = [group.count for group in said.groups]
    known = job.number(f"{question.section}.0.count")
    several = any(count is not None and count > 1 for count in counts)
    total = said.total or (int(known) if known and not several else None)
    if (said.total is None and several and None in counts) or (
        total is not None and sum(count or 1 for count in counts) != total
    ):
        shown = " and ".join(echo("duct", group.values).rstrip(".") for group in said.groups)
        return AskBack(
            f"How many of each: {shown}? Say it like “two 18x8 and one 14x8”.",
            (),
            AskKind.TWO_VALUES,
        )
    bare = re.search(r"\bbare\b", line) is not None
    rows: list[Value] = [
        _made(group, bare=bare and len(said.groups) > 1) | {"count": group.count or 1}
        for group in said.groups
    ]
    place = _place(line)
    made = {row.get("material") for row in rows if isinstance(row, dict)}
    if place == "bare" and made != {"galvanized"}:
        rows = [_bare_or_not(row) for row in rows]
        place = None
    return Accepted({"ducts": rows}, sureness(line), place)


def _bare_or_not(row: Value) -> Value:
    """Where one duct is bare and another lined, the tape was on the metal of the bare one alone."""
    if not isinstance(row, dict) or row.get("material", "galvanized") != "galvanized":
        return row
    return {**row, "material": "galvanized", "place": "bare"}


def _made(group: Group, *, bare: bool) -> dict[str, Value]:
    if bare and "material" not in group.values:
        return {**group.values, "material": "galvanized"}
    return dict(group.values)


def _place(line: str) -> str | None:
    return place_of(scan(line, "duct"))


def _area(values: Values) -> float:
    wide, tall = values.get("width_in"), values.get("height_in")
    across = values.get("diameter_in")
    if isinstance(across, int | float):
        return 0.7854 * across * across
    return float(str(wide)) * float(str(tall))


_NECKS: Final = (
    r"\b(?:narrowest|tightest|smallest|chok\w+|neck\w*|pinch\w*|squeez\w*|narrow\w*|reduc\w*"
    r"|tapers?|drops? (?:down )?to|down to)\b"
)
_NECK: Final = re.compile(_NECKS)
_NECK_BEHIND: Final = re.compile(
    r"^[\"a-z. ]{0,12}\b(?:at (?:its|the)|is (?:the|its)) "
    r"(?:narrowest|tightest|smallest)\b"
)
_DECIDED: Final = re.compile(r"\b(?:final answer|go with|going with|let'?s say|call it)\b")
_PLACED: Final = re.compile(
    r"\b(?:at|by|near|under|below|above|from|off|through) (?:the |its )?(?:top|bottom|beam|elbow"
    r"|floor|ceiling|filter|rack|unit|base|shoe|transition|joists?|start|end|furnace|cabinet)\b"
    r"|\bup top\b|\b(?:below|above|under|over) (?:that|it)\b|\bdown low\b|\blower down\b"
    r"|\bfurther (?:up|down)\b"
)
_TWO: Final = re.compile(
    r"\b(?:two|2|both|pair|each|other|another|second|left|right|side by side|plus)\b"
    r"(?! ?(?:x|in\b))"
)


_OF_ANOTHER: Final = re.compile(r"\b(?:trunks?|mains?|grill?e?s?|openings?)\b")


def _narrowest(line: str, said: Groups) -> Reading | None:
    """The narrowest of a drop's sizes, where they are those of one drop; None if of several."""
    groups = said.groups
    if _OF_ANOTHER.search(line):
        return None
    if (
        len(groups) > 2
        and _DECIDED.search(line)
        and groups[-1].values in [group.values for group in groups[:-1]]
    ):
        return _one(groups[-1], line)
    if len(groups) != 2 or _area(groups[0].values) == _area(groups[1].values):
        same = {frozenset(map(str, group.values.values())) for group in groups}
        labelled = re.search(r"\b(?:wide|deep|tall|high)\b", line)
        return _one(groups[-1], line) if len(same) == 1 and labelled else None
    first, second = groups
    cut = line.find(" ", _ends(line, first))
    behind = line[_ends(line, first) : second.end] if cut > 0 else ""
    if _NECK_BEHIND.match(behind):
        return _one(first, line)
    if _NECK.search(behind):
        return _one(second, line)
    if _DECIDED.search(line):
        return _one(second, line)
    if _NECK.search(line) or (_PLACED.search(line) and not _TWO.search(line)):
        return _one(min(groups, key=lambda group: _area(group.values)), line)
    if _TWO.search(line) or re.search(r"\band\b|&|\+", line):
        return None
    smaller = min(groups, key=lambda group: _area(group.values))
    rows: list[Value] = [{**group.values, "count": 1} for group in groups]
    return AskBack(
        f"One drop that is {echo('duct', smaller.values)} at its narrowest, or two side by side?"
        " Say “one” or “two”.",
        (smaller.values, {"ducts": rows}),
        AskKind.TWO_READINGS,
    )


def _ends(line: str, group: Group) -> int:
    """Where the size of a group ends in a line, its words left out."""
    sized = re.search(r"\d+(?:\.\d+)? ?(?:x|by|×|\*) ?\d+(?:\.\d+)?", line[group.start :])
    return group.start + sized.end() if sized else group.start


def _one(group: Group, line: str) -> Accepted:
    return Accepted(dict(group.values), sureness(line), _place(line))


_OUTER: Final = re.compile(
    r"\b(?:outside|over|with|including|incl) (?:of )?(?:the |an? )?(?:[\w/.]+ )*?(?:wrap\w*|liner"
    r"|lining|insulation|jacket)|\boutside\b|\bover the wrap\b"
)
_INNER: Final = re.compile(
    r"\b(?:bare|metal|clear|inside|free|under(?:neath)? (?:it|the wrap|that))\b"
)
_CLEAR: Final = re.compile(r"\b(?:clear|inside|free)\b")


def _taped_twice(line: str, said: Groups) -> Accepted | None:
    """One duct taped over its wrap or liner and under it: what the air has is taken."""
    if len(said.groups) != 2 or _area(said.groups[0].values) <= _area(said.groups[1].values):
        return None
    outer, inner = said.groups
    between = line[_ends(line, outer) : inner.end]
    cut = _ends(line, inner) - _ends(line, outer)
    if not _OUTER.search(between[:cut]) or not _INNER.search(line[_ends(line, inner) :]):
        return None
    clear = _CLEAR.search(line[_ends(line, inner) :]) is not None
    values = {**inner.values}
    if re.search(r"\bwrap", line):
        values["material"] = "galvanized"
    return Accepted(values, sureness(line), "inside" if clear else "bare")


_STEPS: Final = re.compile(
    r"\b(?:reduces?|reducing|reduced|drops?|steps?|necks?|narrows?|tapers?|goes|shrinks?|down)"
    r"(?: down)? to\b|\bthen\b(?=.*\b(?:after|halfway|last|past|from there|ft|feet|further|end)\b)"
)


def _with_its_step(line: str, said: Groups) -> Accepted | None:
    """A trunk's size where it leaves the plenum, with the smaller part that it steps down to."""
    step = _STEPS.search(line)
    if step is None or len(said.groups) != 2:
        return None
    first, second = said.groups
    if not first.start <= _ends(line, first) <= step.start() <= _ends(line, second):
        return None
    if "width_in" not in second.values or _area(first.values) <= _area(second.values):
        return None
    place = _place(line)
    made: Mapping[str, Value] = _made(first, bare=place == "bare")
    count = first.count or said.total or (1 if _ONE_FIRST.match(line) else None)
    counted: dict[str, Value] = {"count": count} if count is not None else {}
    smaller = {**counted, **second.values}
    if "material" in made:
        smaller.setdefault("material", made["material"])
    if place is not None:
        smaller["place"] = place
    said_too = Volunteered(f"{ASIDE}step_down", smaller, line)
    return replace(Accepted({**made, **counted}, sureness(line), place), others=(said_too,))


_ONE_FIRST: Final = re.compile(
    r"(?:just |only |there'?s )?(?:one|1|a single)\b(?! ?(?:x|in\b|inch))"
)
