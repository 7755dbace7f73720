"""The smaller part of a trunk, told with the trunk's own size or with where it begins.

"Goes from 20x8 to 14x8", "14x8 for the last half", "16x8 after 6 of 10 runs": the size that the
trunk is known to have is no smaller part, and a larger one isn't either.
"""

import re
from typing import Final

from engine.job.job import Job
from intake.interview.beside import ASIDE
from intake.reading.duct_chain import sides_of
from intake.reading.echo import echo
from intake.reading.manner import sureness
from intake.reading.materials import material_of
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value, Volunteered
from intake.reading.scan import scan
from intake.reading.second_thought import opens_correction
from intake.reading.sizes import find_sizes
from intake.reading.small_counts import COUNT, count_said

__all__ = ["air_left", "full_size_told", "step_told"]

_Sides = tuple[float, float]

_ALL_THE_WAY: Final = re.compile(
    r"\b(?:all (?:the way|along)|whole (?:way|length|thing)|entire|throughout|through|straight"
    r"|stays?|still|remains?|keeps?|to the end|end to end|the end|no|nope|nah|never|same)\b"
)
_AFTER: Final = re.compile(
    rf"\b(?P<last>last )?(?P<some>{COUNT}) (?:out )?of (?:the )?(?P<all>{COUNT})\b"
)
_TAKEN_BACK: Final = re.compile(
    r"[,.; ](?:no|no wait|wait|scratch that|make that|i mean|i meant|sorry|actually|oops)[, ]"
)
_ONE_OF_TWO: Final = re.compile(
    r"\b(?:just|only) (?:the |one\b)|\bone of (?:them|the)\b|\bone (?:does|steps|reduces|drops)\b"
    r"|\b(?:left|right|front|back|rear|north|south|east|west) (?:one|trunk|leg|side|run)\b"
)


def _sizes(line: str) -> tuple[list[_Sides], list[int]]:
    """The widths by heights of a line, each once, and where each ends in the text."""
    said = scan(line, "duct")
    sides: list[_Sides] = []
    ends: list[int] = []
    for size in find_sizes(said.items):
        if len(size.sides) == 2:
            values = sides_of(size)
            pair = (float(str(values["width_in"])), float(str(values["height_in"])))
            if pair not in sides:
                sides.append(pair)
                ends.append(size.sides[-1].end)
    return sides, ends


def _own_sizes(job: Job) -> list[_Sides]:
    """The sizes of the trunks that leave the plenum, as far as they are known."""
    found: list[_Sides] = []
    for entry in job.entries("supply.trunks"):
        wide, tall = job.number(f"{entry}.width_in"), job.number(f"{entry}.height_in")
        if not job.is_known(f"{entry}.from") and wide is not None and tall is not None:
            found.append((wide, tall))
    return found


def full_size_told(line: str, job: Job) -> bool:
    """Whether a line says that the trunk keeps its own size: "20x8 all the way"."""
    sides, _ = _sizes(line)
    return (
        bool(sides)
        and _ALL_THE_WAY.search(line) is not None
        and all(pair in _own_sizes(job) for pair in sides)
    )


def step_told(line: str, job: Job) -> Reading | None:
    """The smaller part that a line tells of; None if it tells no width by height.

    Args:
        line: Normalised text.
        job: What is known, with the trunk's own size.
    """
    if opens_correction(line):
        return None
    sides, ends = _sizes(line)
    own = _own_sizes(job)
    if len(sides) > 1:
        for k in range(len(sides) - 1, 0, -1):
            if _TAKEN_BACK.search(line[ends[k - 1] - 1 : ends[k]]):
                sides = sides[k:]
                break
    below = [pair for pair in sides if pair not in own]
    if not sides or (len(sides) > 1 and not own):
        return None
    if not below:
        return AskBack(
            f"{_shown(sides[0])} is the trunk's own size. Does it get smaller anywhere? The smaller"
            " size, or “no”.",
            (),
            AskKind.TWO_READINGS,
        )
    if own and min(w * h for w, h in below) >= max(w * h for w, h in own):
        return AskBack(
            f"{_shown(below[0])} is larger than the trunk's {_shown(own[0])} Does it get smaller"
            " anywhere? The smaller size, or “no”.",
            (),
            AskKind.IMPLAUSIBLE,
        )
    if len(below) > 1:
        names = " and ".join(_shown(pair).rstrip(".") for pair in below)
        return AskBack(
            f"That is more than one smaller size: {names}. Which one carries the longer part?",
            tuple(_rect(pair) for pair in below),
            AskKind.TWO_VALUES,
        )
    values = _rect(below[0])
    materials = material_of(scan(line, "duct").items)
    if len(materials) == 1:
        values["material"] = materials[0]
    trunks = job.number("supply.trunks.0.count") or 1.0
    if trunks > 1 and _ONE_OF_TWO.search(line) and not re.search(r"\bboth\b", line):
        values["count"] = 1
    share = _share_left(line)
    others = (
        (Volunteered(f"{ASIDE}step_share", {"percent": share}, line),) if share is not None else ()
    )
    return Accepted(values, sureness(line), others=others)


def _rect(pair: _Sides) -> dict[str, Value]:
    return {"shape": "rect", "width_in": pair[0], "height_in": pair[1]}


def _shown(pair: _Sides) -> str:
    return echo("duct", _rect(pair))


def _share_left(line: str) -> float | None:
    """The air left behind so many of all branches: "after 6 of 10 runs" leaves 40 per cent."""
    told = _AFTER.search(line)
    if told is None:
        return None
    some, every = count_said(told["some"]), count_said(told["all"])
    if not some or not every or some >= every:
        return None
    left = some if told["last"] else every - some
    return round(100.0 * left / every, 1)


_GONE: Final = re.compile(
    r"\b(?:gone|taken|taken off|peeled off|used up|lost|come off|comes off|came off|off by then"
    r"|branched off|already off|has left|have left|upstream|before (?:it|that|the))\b"
)
_LEFT: Final = re.compile(
    r"\b(?:remains?|remaining|still (?:runs|there|in)|is left|are left|goes on)\b"
)


def air_left(found: Reading, line: str) -> Reading:
    """A share told as what is gone by then is what is left, the other way round."""
    percent = found.values.get("percent") if isinstance(found, Accepted) else None
    if not isinstance(found, Accepted) or not isinstance(percent, int | float):
        return found
    if not _GONE.search(line) or _LEFT.search(line):
        return found
    return Accepted({"percent": 100.0 - percent}, found.sure, found.place, found.others)
