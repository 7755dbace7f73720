"""A value taken back in the same breath: "20x8, no wait, 20x10", "10x30... no 12x30"."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from intake.reading.plain_talk import is_plain
from intake.reading.result import Accepted, AskBack, AskKind, Reading
from intake.reading.scan import scanned

__all__ = ["earlier_part", "opens_correction", "second_thought", "takes_back"]

Reads = Callable[[str, str], Reading | None]
"""Reads a text for a field."""

_AGAIN: Final = (
    r"no wait|(?:no,? )?hold (?:it|up)|no,? make that|wait,? no|wait|scratch that|strike that|i"
    r" mean|i meant|make that"
    r"|actually,? no|actually|correction|oops|whoops|check that|hold on|excuse me|or rather|rather"
    r"|sorry|my bad|er|err|erm|uh no|no no|nope|that's wrong|let me correct that|on second thought"
    r"|scratch|i take that back|(?:no )?hang on|scrap that|forget that|tape slipped"
    r"|misread (?:it|that)|let me (?:re-?)?(?:check|measure|tape|look|zero)(?: that| it)?"
    r"(?: again)?|(?:i )?typo"
    r"|(?:re-?)?(?:checked|measured|taped|looked)(?: it)? again|re-?(?:measured|checked)(?: it)?"
    r"|looking again|wrong (?:one|side|line|number)"
)
_FOUR_OR_MORE: Final = (
    r"four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen"
    r"|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety"
)
_SECOND: Final = re.compile(
    rf"[\s,.;-]+(?:{_AGAIN})(?:[\s,:]|\.(?!\d))+(?:it'?s |it is |that'?s )?"
    rf"|(?:\.{{2,}}|,|;|-|\.)? no(?:,| -)? (?:it'?s (?:an? )?|that'?s )?(?=[0-9.]"
    rf"|(?:{_FOUR_OR_MORE})\b)"
    rf"|, no, "
    r"|,? no,? (?:i'?m?|it|my|the|that'?s?) [a-z' ]{3,40}, (?=[0-9])"
    r"|[,.;-]+ ?(?:well|more like|closer to|call it|nah),? "
    r"(?=(?:more like |closer to |maybe |about )?[0-9.])"
    r"|[,.;] (?:i'?d|i would) (?:say|guess|go|call it)(?: with| about| like)* (?=[0-9])"
    r"|[,.;] (?:so|now|leaves|that leaves|which leaves|down to) (?:it'?s |there'?s |we have )?"
    r"(?:just|only) (?:the |a |one )*(?=[0-9])"
)
_NUMBER: Final = re.compile(
    r"[0-9]|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen"
    r"|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty"
    r"|sixty|seventy|eighty|ninety|hundred|half|quarter|point)\b"
)
_DEPTH: Final = re.compile(r"x ?(?P<deep>[0-9](?:\.[0-9])?)[.! ]*")
_LAST_SIDE: Final = re.compile(r"(?P<faces>[0-9]+ ?x ?[0-9]+ ?x ?)[0-9.]+(?=[^0-9]*$)")
_FURTHER: Final = re.compile(
    r"^(?:(?:and|plus|there'?s|there is|there are|also|we have|i see|got) )*"
    r"(?:another|also|plus|too|and|a second|one more|others?)\b|\btoo$"
)
"""What begins a further value, not a better one ("20x20, wait there's another 14x8")."""

_LAST_CLAUSE: Final = re.compile(r"^.*[,.;] +(?:(?:so|and|then|now) )*")


def earlier_part(line: str) -> str:
    """What a text takes back; "" if it takes back nothing."""
    parts = _SECOND.split(line)
    return " ".join(parts[:-1]) if len(parts) > 1 else ""


def _other_material(before: str, after: str, reads: Reads) -> Reading | None:
    """ "18w 8h, flex no wait duct board": the size stays, the material is the later one."""
    if not isinstance(reads("material", after), Accepted):
        return None
    spans = [item for item in scanned(before, "duct").items if item.means("material.")]
    for item in reversed(spans):
        before = before[: item.start] + before[item.end :]
    return reads("duct", f"{before.strip(' ,')} {after}") if spans else None


def _with_material(after: str, before: str, reads: Reads) -> Reading | None:
    """ "14c8 metal sorry 14x8": of what can't be read, its material stays."""
    later = reads("duct", after)
    told = scanned(before, "duct").items
    if any(item.means("shape.oval") for item in told):
        after = f"{after} oval"
        later = reads("duct", after)
    words = [item.text for item in told if item.means("material.")]
    if not words or not isinstance(later, Accepted) or "material" in later.values:
        return later
    whole = reads("duct", f"{after} {words[0]}")
    return whole if isinstance(whole, Accepted) else later


_OPENS: Final = re.compile(
    r"(?:oh,? |no,? |wait,? |ah,? |and )*(?:sorry|actually|oops|whoops|correction|my bad|my mistake"
    r"|scratch|change|make that|i meant?|what if|how about)\b"
)


def opens_correction(line: str) -> bool:
    """Whether a text begins by taking back what was said before it.

    >>> opens_correction("sorry, 24x8 not 20x8"), opens_correction("20x8, sorry, 24x8")
    (True, False)
    """
    return _OPENS.match(line) is not None


def takes_back(line: str) -> bool:
    """Whether a text holds a value, and after it another that takes its place.

    >>> takes_back("18x8. scratch that, 20x8"), takes_back("scratch that, 20x8")
    (True, False)
    """
    parts = _SECOND.split(line)
    if len(parts) < 2 or _FURTHER.search(parts[-1]):
        return False
    return all(_NUMBER.search(part) for part in (" ".join(parts[:-1]), parts[-1]))


def second_thought(field: str, line: str, reads: Reads) -> Reading | None:
    """The reading of a text whose later value takes back the earlier one; None if none does.

    What the later value leaves standing is kept: in "20x8 flex, 30 ft, no wait, 20x10" the
    length stays.
    """
    if is_plain(line) or (field != "duct" and _NUMBER.search(line) is None):
        return None
    parts = _SECOND.split(line)
    if len(parts) < 2:
        return None
    before, after = " ".join(parts[:-1]), parts[-1]
    if field == "filter" and (deep := _DEPTH.fullmatch(after)) is not None:
        whole = _LAST_SIDE.sub(rf"\g<faces>{deep['deep']}", before)
        return reads(field, whole) if whole != before else None
    if field == "duct" and not _NUMBER.search(after):
        return _other_material(before, after, reads)
    if not _NUMBER.search(after) or _FURTHER.search(after):
        return None
    if not (_NUMBER.search(before) or field == "duct"):
        return None
    later = reads(field, after)
    if not isinstance(later, Accepted):
        later = reads(field, _LAST_CLAUSE.sub("", after))
    if not isinstance(later, Accepted):
        return None
    earlier = reads(field, before)
    if not isinstance(earlier, Accepted):
        return _with_material(after, before, reads) if field == "duct" else later
    if "grilles" in earlier.values and "grilles" not in later.values:
        return AskBack(
            "Which sizes are there now, and how many of each?", (later.values,), AskKind.TWO_VALUES
        )
    if set(later.values) <= set(earlier.values):
        return Accepted({**earlier.values, **later.values})
    return later
