"""Ducts of one kind told together: two trunks of two sizes, "8 sixes and 2 sevens", "both"."""

import re
from dataclasses import replace
from typing import Final

from engine.job.job import Job
from intake.interview.bays import bay_size, bays_told
from intake.interview.question import Question
from intake.interview.skins import under_the_wrap
from intake.reading.manner import sureness
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value

__all__ = ["bare_metal", "several_ducts", "several_filters"]

_LISTS: Final = ("supply.trunks", "return.trunks", "return.drops")


def several_ducts(question: Question, found: Reading, line: str, job: Job) -> Reading:
    """What a line says of several ducts, where the question's list takes several.

    Args:
        question: The open question, of ducts.
        found: What was read in the line as one duct.
        line: As typed, normalised.
        job: What is known.
    """
    if question.key == "branches":
        return _branches(found, line)
    if question.key == "return_trunk" and (bays := bays_told(found, line)) is not None:
        return bays
    if question.key == "return_bay_size":
        return bay_size(found, line)
    if question.section in _LISTS:
        return _trunks(question.section, found, line, job)
    return found


_COUNT_FIRST: Final = re.compile(
    r"(?:just |only |the |there(?:'?s| is| are) )*(?P<count>one|two|three|four|both|single|[1-4])"
    r"(?: trunks?| of them| mains?)?[ ,:;.-]+(?P<rest>.*\d.*)"
)
_BOTH: Final = re.compile(r"\bboth\b(?! (?:ways?|sides?|dimensions?|inches|numbers?|ends)\b)")
_COUNTS: Final = {"one": 1, "single": 1, "two": 2, "both": 2, "three": 3, "four": 4}
_CHANGES: Final = re.compile(r"\b(?:reduc\w*|step\w*|then|down|to|becomes|narrow\w*|after|end)\b")


def _trunks(section: str, found: Reading, line: str, job: Job) -> Reading:
    """How many trunks, said with their size; two may be of two sizes."""
    counted = _COUNT_FIRST.fullmatch(line)
    if counted and not (isinstance(found, Accepted) and "count" in found.values):
        rest = read("duct", counted["rest"])
        if isinstance(rest, Accepted) and "shape" in rest.values:
            said = counted["count"]
            count = _COUNTS.get(said) or int(said)
            return bare_metal(replace(rest, values={**rest.values, "count": count}), line)
    if isinstance(found, Accepted) and "count" not in found.values and _BOTH.search(line):
        return replace(found, values={**found.values, "count": 2})
    if not isinstance(found, AskBack) or found.kind is not AskKind.TWO_VALUES:
        return found
    count_known = job.number(f"{section}.0.count")
    sizes = [dict(values) for values in found.readings if "shape" in values]
    if len(sizes) == 1 and count_known is not None and count_known >= 2:
        return Accepted({**sizes[0], "count": int(count_known)})
    beside = count_known == len(sizes) or (count_known is None and not _CHANGES.search(line))
    of_another = section == "return.drops" and re.search(r"\btrunk", line) is not None
    if len(sizes) > 1 and beside and not of_another:
        rows: list[Value] = [*sizes]
        return Accepted({"ducts": rows})
    return found


_WRAPPED: Final = re.compile(r"\b(?:(?:not|un) ?)?w?rap(?:ped)?\b")


def bare_metal(found: Accepted, line: str) -> Accepted:
    """Bare or wrapped said with a size is sheet metal."""
    if under_the_wrap(line) and "shape" in found.values:
        return replace(found, values={"material": "galvanized", **found.values}, place="bare")
    wrapped = _WRAPPED.search(line)
    if found.place != "bare" and (wrapped is None or wrapped[0].startswith(("not", "un"))):
        return found
    if "shape" not in found.values:
        return found
    return replace(found, values={"material": "galvanized", **found.values})


_INSTEAD: Final = re.compile(r"\bor\b|\binstead\b|\bnot\b|\bwas\b|\bnow\b|\bold\b|\bmaybe\b|\?")


def several_filters(question: Question, found: AskBack, line: str) -> Accepted | None:
    """Two filters of two sizes, each of which is there: "20x30x1 and 14x14x1"."""
    if question.key not in ("filter", "d_filter") or found.kind is not AskKind.TWO_VALUES:
        return None
    rows: list[Value] = [dict(one) for one in found.readings if "width_in" in one]
    if len(rows) < 2 or len(rows) != len(found.readings) or _INSTEAD.search(line):
        return None
    return Accepted({"filters": rows}, sureness(line))


_PIECES: Final = re.compile(r"(?:[,;&+]|\b(?:and|plus|n|also|then)\b)+")
_DOUBT: Final = re.compile(r"\bor\b|\bmaybe\b|\?")
_ANOTHER: Final = re.compile(r"\b(?:trunks?|mains?|drops?|returns?|plenum|grill\w*)\b")
_THE_REST: Final = re.compile(r"\b(?:rest|others|remain\w*|mostly|most|mix(?:ed)?|mixture)\b")
_NUMBERS: Final = re.compile(
    r"\d+|\b(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?:e?s)?\b"
)
_EACH_SIZE: Final = "How many of each size? Say it like “8 six inch and 2 seven inch”."
_CROSS: Final = re.compile(r"(?<![\d.x])(\d+) ?(?:x|×|\*) ?(\d+)(?! ?(?:x|×|\*|\d|\.\d))")
_FLAT: Final = re.compile(r"\b(?:stacks?|rect\w*|oval\w*|square|wide|tall|high|deep)\b")


def _branches(found: Reading, line: str) -> Reading:
    """Branches of several sizes, each with its count; "12x6" may be 12 of 6 in."""
    if _DOUBT.search(line) or _ANOTHER.search(line):
        return found
    if not _FLAT.search(line) and _CROSS.search(line):
        return _crossed(found, line)
    if not isinstance(found, AskBack):
        return found
    rows = [dict(values) for values in found.readings]
    if len(rows) < 2 or not all("shape" in row and "count" in row for row in rows):
        rows = _by_pieces(line)
    if len(rows) > 1:
        several: list[Value] = [*rows]
        return Accepted({"ducts": several}, sureness(line))
    if _THE_REST.search(line) and len(_NUMBERS.findall(line)) > 1:
        return AskBack(_EACH_SIZE, (), AskKind.MISSING_PART)
    return found


def _by_pieces(line: str) -> list[dict[str, Value]]:
    """Each piece of the line as branches of its own; empty if one of them isn't.

    A material alone holds for the branches told before it without one.
    """
    rows: list[dict[str, Value]] = []
    for piece in filter(None, map(str.strip, _PIECES.split(line))):
        values = _one_size(piece)
        if "shape" not in values and "material" in values and rows:
            rows = [{"material": values["material"], **row} for row in rows]
        elif "shape" in values and "count" in values:
            rows.append(values)
        else:
            return []
    return rows


_ONE: Final = re.compile(r"(?:an?|one|1)\b")
_MADE_FIRST: Final = re.compile(r"(\w+) ([a-z]+) (\d.*)")


def _one_size(piece: str) -> dict[str, Value]:
    """One size with its count; where branches are asked, one figure across is round."""
    one = read("duct", _MADE_FIRST.sub(r"\1 \3 \2", piece))
    if isinstance(one, Accepted):
        values = dict(one.values)
    elif isinstance(one, AskBack) and [r.get("shape") for r in one.readings] == ["round"]:
        values = dict(one.readings[0])
    else:
        return {}
    if "shape" in values and "count" not in values and _ONE.match(piece):
        values["count"] = 1
    return values


_SMALLEST_SIDE_IN: Final = 3
_ROUND_IN: Final = range(4, 10)
"""Diameters of branches, in. Source: common practice."""


def _crossed(found: Reading, line: str) -> Reading:
    """ "8x6 and 2x7": how many of how many inches, as soon as one of them can't be two sides."""
    crossed = [(int(a), int(b)) for a, b in _CROSS.findall(line)]
    if isinstance(found, Accepted) and "count" in found.values:
        return found
    if not all(across in _ROUND_IN for _, across in crossed):
        return found
    counted = _CROSS.sub(r"\1 of \2 inch round", line)
    if len(crossed) == 1:
        one = read("duct", counted)
        if not isinstance(one, Accepted) or not isinstance(found, Accepted):
            return found
        count, across = crossed[0]
        if count < _SMALLEST_SIDE_IN:
            return one
        return AskBack(
            f"Is that {count} branches of {across} in. round, or a duct of {count} x {across} in.?",
            (one.values, found.values),
            AskKind.TWO_READINGS,
        )
    rows: list[Value] = [*_by_pieces(counted)]
    if len(rows) == len(crossed) and min(count for count, _ in crossed) < _SMALLEST_SIDE_IN:
        return Accepted({"ducts": rows}, sureness(line))
    return AskBack(_EACH_SIZE, (), AskKind.MISSING_PART)
