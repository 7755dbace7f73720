"""How many trunks, branches or registers, where the line tells other numbers beside it.

"13 but 2 are shut" is 13 and "12 minus the one in the closet" is 11; "10 supplies and 2 returns"
is 10 where supplies are asked; of "two legs, one to the front, one to the back" the ones are those
of the two.
"""

import re
from collections.abc import Callable
from dataclasses import replace
from typing import Final

from engine.job.job import Job
from intake.interview.beside import ASIDE
from intake.interview.duct_rows import rows_told
from intake.interview.own_reading import read_own
from intake.interview.question import Question
from intake.interview.several import several_ducts
from intake.interview.trunk_ways import trunks_by_way
from intake.reading.manner import sureness
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Rejected, Volunteered
from intake.reading.second_thought import opens_correction
from intake.reading.small_counts import COUNT, count_said

__all__ = ["count_told"]

_SUPPLY: Final = ("trunk_count", "registers", "branch_count", "d_registers")
_N: Final = rf"(?P<n>{COUNT})"
_M: Final = rf"(?P<m>{COUNT})"
_HEAD: Final = (
    r"(?:(?:about|maybe|like|i count|i see|we have|there'?s|there are|it has|just|only) )*"
)

_CORRECTED: Final = re.compile(
    rf"(?:oh |wait |sorry )*(?:i|we) (?:said|put|told you|wrote|had|typed"
    rf"|gave you)\b.*?,? (?:but )?"
    rf"(?:there'?s|there are|there is|it'?s|its|really|actually)(?: really| actually| only| just)*"
    rf" {_N}\b\D*"
)
_TAKEN_BACK: Final = re.compile(
    rf"{_HEAD}(?P<m>{COUNT})(?: \w+)?[,. ]+(?:no|no,? wait|wait|make that|scratch that"
    rf"|i mean|sorry)"
    rf"[, ]+(?:it'?s |there'?s |there are )?{_N}(?![\d.])(?! ?(?:x|in\b|inch))\b(?! "
    rf"(?:of|are)\b)\D*"
)
_LESS: Final = re.compile(
    rf"{_HEAD}{_N}\b[^\d,;.]*?,? (?:minus|less|except(?: for)?|take away) (?:the )?{_M}\b\D*"
)
_SOME: Final = re.compile(
    rf"{_HEAD}{_N}\b\D*?\b(?:but|counting|including|with|of which|and|,) ?(?:the )?{_M}"
    r" (?:of (?:them|em|those|which) )?(?:is |are |were |'s )?(?:[a-z]+ ){0,4}(?:shut"
    r"|closed|blocked|dead"
    r"|covered|off|broken|stuck|disconnected|dirty|weak|behind|under|painted)\b\D*"
)
_FLOOR: Final = (
    r"(?:up(?:stairs)?|down(?:stairs)?|in the basement|on (?:the )?(?:first|second|main) floor)"
)
_FLOORS: Final = re.compile(rf"{_HEAD}{_N} {_FLOOR}(?:,| and|, and)? {_M} {_FLOOR}[.! ]*")
_AND_ONE: Final = re.compile(
    rf"{_HEAD}{_N}(?: (?:registers|vents))? (?:and|plus) (?P<m>one)(?: more)? (?:in|on"
    rf"|at|under) \D*"
)
_RETURNS: Final = re.compile(
    rf"(?:,? ?(?:and|plus|&) ?|, ?){COUNT} (?:cold air )?returns?\b(?: \w+)?"
)
_WAYS: Final = re.compile(r",? \b(?:one|two) (?:way|direction|side)s?\b")
_WHERE: Final = (
    r"(?:goes|going|to|on|at|for|each|per|up|down|left|right|front|back|runs|heads|feeds|serves)"
)
_ONE_GOES: Final = re.compile(rf"\bone {_WHERE}\b[^,;\d]*?(?=,|;|$| one\b| and\b)")
_TRUNKS: Final = re.compile(
    rf"(?:^|\b){_N} (?:(?:big|main|supply|large|small|rectangular|metal|actual) )*"
    rf"(?:trunks?|mains?)\b"
)
_SPLITS: Final = re.compile(
    rf"{_HEAD}{_N}\b[^\d]*?\b(?:then|and) (?:it )?(?:tees|splits?|divides|wyes|branches)"
    r"(?: off| out)? (?:to|into)? ?(?P<rest>.+)"
)
_ALL_SO: Final = re.compile(
    rf"{_HEAD}{_N},? (?:(?:trunks?|mains?),? )?(?:both|all)(?: of them)?(?: are)? (?P<skin>\D+)"
)
_SLIPS: Final = {"oen": 1, "noe": 1, "onw": 1, "tow": 2, "twp": 2, "teo": 2, "tew": 2, "thre": 3}


def count_told(question: Question, line: str, job: Job) -> Reading | None:
    """How many a line tells beside other numbers; None if it is read as a plain number.

    Args:
        question: The open question, of a count.
        line: Normalised text.
        job: What is known.
    """
    if question.key == "trunk_count" and (ways := trunks_by_way(line)) is not None:
        return ways
    if question.key == "trunk_count" and (sized := _with_sizes(question, line, job)) is not None:
        return sized
    slip = _SLIPS.get(line.strip(".! "))
    if slip is not None:
        return Accepted({"count": slip})
    for pattern, counted in _PLAIN:
        match = pattern.fullmatch(line)
        if match is not None and (count := counted(match)) is not None:
            return Accepted({"count": count}, sureness(line))
    every = _ALL_SO.fullmatch(line)
    if every is not None and question.key == "trunk_count":
        return _all_of_a_make(every)
    return _beside_others(question, line)


def _first(match: re.Match[str]) -> int | None:
    return count_said(match["n"])


def _difference(match: re.Match[str]) -> int | None:
    count, less = count_said(match["n"]), count_said(match["m"])
    return count - less if count and less and less < count else None


def _sum(match: re.Match[str]) -> int | None:
    count, other = count_said(match["n"]), count_said(match["m"])
    return count + other if count and other else None


def _whole(match: re.Match[str]) -> int | None:
    count, some = count_said(match["n"]), count_said(match["m"])
    return count if count and some and some < count else None


_PLAIN: Final[tuple[tuple[re.Pattern[str], Callable[[re.Match[str]], int | None]], ...]] = (
    (_CORRECTED, _first),
    (_FLOORS, _sum),
    (_AND_ONE, _sum),
    (_TAKEN_BACK, _first),
    (_LESS, _difference),
    (_SOME, _whole),
)


_NOT_OF_TRUNKS: Final = re.compile(
    r"\b(?:drops?(?! (?:down )?to\b)|filters?|returns?|openings?|grill?e?s?|branch(?:es)?)\b"
)


def _with_sizes(question: Question, line: str, job: Job) -> Rejected | Accepted | None:
    """Sizes told where trunks are to be counted: they are the trunks' own, or further on."""
    splits = _SPLITS.fullmatch(line)
    if splits is not None and (count := count_said(splits["n"])):
        rest = Volunteered("duct", {}, splits["rest"])
        return Accepted({"count": count}, sureness(line), others=(rest,))
    trunks = list(_TRUNKS.finditer(line))
    if len(trunks) == 1 and re.search(r"\bruns?\b|\bbranch", line[trunks[0].end() :]):
        count = count_said(trunks[0]["n"])
        left = line[trunks[0].end() :].strip(" ,;.").removeprefix("and ")
        rest = Volunteered("duct", {}, left)
        return Accepted({"count": count or 1}, sureness(line), others=(rest,))
    if _NOT_OF_TRUNKS.search(line) or opens_correction(line):
        return None
    sized = replace(question, key="trunk_size")
    found = rows_told(sized, line, job) or several_ducts(sized, read("duct", line), line, job)
    if isinstance(found, Accepted) and found.values.keys() & {"shape", "ducts"}:
        return Rejected("That is a size. How many supply trunks leave the plenum?")
    return None


def _all_of_a_make(match: re.Match[str]) -> Accepted | None:
    """ "2, both lined": how many, and what they all are."""
    made = read_own("skin", match["skin"], ())
    count = count_said(match["n"])
    if not isinstance(made, Accepted) or count is None:
        return None
    others = (Volunteered(f"{ASIDE}trunk_skin", made.values, match["skin"]),)
    return Accepted({"count": count}, others=others)


def _beside_others(question: Question, line: str) -> Reading | None:
    """Without returns where supplies are counted, and without where each of them goes."""
    rest = _RETURNS.sub(" ", line) if question.key in _SUPPLY else line
    if question.key == "trunk_count":
        rest = _WAYS.sub(" ", rest)
        ones = _ONE_GOES.findall(rest)
        left = _ONE_GOES.sub(" ", rest).strip(" ,;.&")
        if ones and not re.search(rf"\b{COUNT}\b", left):
            return Accepted({"count": len(ones)}, sureness(line))
        rest = left if ones else rest
    if rest == line:
        return None
    rest = re.sub(r"\b(?:suppl(?:y|ies)|and)\b", " ", rest)
    found = read("count", " ".join(rest.split()))
    return (
        found
        if isinstance(found, Accepted)
        else AskBack("How many is that?", (), AskKind.TWO_VALUES)
    )
