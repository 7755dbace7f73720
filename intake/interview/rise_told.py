"""The two ends of the allowed temperature rise, told another way than "35 to 65"."""

import re
from typing import Final

from intake.reading.manner import sureness
from intake.reading.read import read
from intake.reading.result import Accepted, Unknown
from intake.reading.scan import scan

__all__ = ["rise_told"]

_SPREAD: Final = re.compile(
    r"(?P<mid>\d{2}) ?(?:f|degrees?|deg)?,? ?(?:plus or minus|plus[ /-]minus|\+ ?/ ?-|±"
    r"|give or take|plus and minus) ?(?P<by>\d{1,2})\b"
)
_FIRE: Final = re.compile(
    r"\b(?P<stage>low|high|hi|lo|first|second|full)(?:[- ]?(?:fire|stage|heat|speed))?"
    r"(?: is|'s|:)? (?P<one>\d{2}) ?(?:to|-|and) ?(?P<two>\d{2})\b"
)
_FIRE_BEHIND: Final = re.compile(
    r"(?P<one>\d{2}) ?(?:to|-|and) ?(?P<two>\d{2})(?: degrees?| f)?(?: on| in| at| for)?(?: the)?"
    r" (?P<stage>low|high|hi|lo|first|second|full)\b"
)
_HIGH: Final = ("high", "hi", "second", "full")
_AGAIN: Final = re.compile(
    r"^.*\d.*?[, ]+(?:no|nope|wait|sorry|i mean|make that|actually|scratch that)(?:[, ]+(?:no|it'?s"
    r"|its|wait|that'?s|sorry))*[, ]+(?P<last>\d{2} ?(?:to|-|and) ?\d{2})[.! ]*$"
)
_ENDS: Final = re.compile(
    r"(?P<one>\d{2}) ?(?:f |degrees )?(?:on |at |for |is |as )*(?:the )?(?:low|bottom|min\w*)\b\D*"
    r"(?P<two>\d{2})\b\D*|(?:low|bottom|min\w*)\D{0,14}(?P<three>\d{2})\b\D*(?P<four>\d{2})\D*"
)
_TENS: Final = (
    r"(?:twenty|thirty|forty|fifty|sixty|seventy|eighty)(?:[ -](?:one|two|three|four|five|six|seven"
    r"|eight|nine))?"
)
_SPOKEN: Final = re.compile(
    rf"(?:about |it says "
    rf"|says )*(?P<one>{_TENS})[, ]+(?P<two>{_TENS})[.! ]*"
)
_UNREADABLE: Final = re.compile(
    r"(?:the )?(?:plate|sticker|label|tag|nameplate)(?:'?s| is| was| got)?"
    r" (?:all )?(?:burn\w*|rust\w*|worn|gone|missing|faded|illegible|unreadable|painted\w*|peeled"
    r"|fell)(?: (?:off|over|out|away|up|and .*))*[.! ]*"
)


def rise_told(line: str) -> Accepted | Unknown | None:
    """The range of a line that gives it as a middle with a spread, by fire, or spoken; else None.

    Args:
        line: Normalised text.

    >>> rise_told("45 plus or minus 15").values
    {'rise_low_degf': 30.0, 'rise_high_degf': 60.0}
    >>> rise_told("low fire 25 to 55, high 35 to 65").values
    {'rise_low_degf': 35.0, 'rise_high_degf': 65.0}
    """
    if _UNREADABLE.fullmatch(line):
        return Unknown("The plate can't be read.")
    spread = _SPREAD.search(line)
    if spread is not None:
        middle, by = float(spread["mid"]), float(spread["by"])
        return _between(middle - by, middle + by, line)
    fires = [*_FIRE.finditer(line)] or [*_FIRE_BEHIND.finditer(line)]
    if len(fires) == 2:
        high = [fire for fire in fires if fire["stage"] in _HIGH]
        return (
            _between(float(high[0]["one"]), float(high[0]["two"]), line) if len(high) == 1 else None
        )
    again = _AGAIN.match(line)
    if again is not None:
        found = read("rise_range", again["last"])
        return found if isinstance(found, Accepted) else None
    spoken = _SPOKEN.fullmatch(line)
    if spoken is not None:
        one, two = (scan(spoken[end], "temperature").numbers for end in ("one", "two"))
        return _between(one[0].value, two[0].value, line) if len(one) == len(two) == 1 else None
    ends = _ENDS.fullmatch(line)
    if ends is not None:
        one_end, other = ends["one"] or ends["three"], ends["two"] or ends["four"]
        return _between(float(one_end), float(other), line)
    return None


def _between(low: float, high: float, line: str) -> Accepted | None:
    """The range, if an ordinary reading of it would stand."""
    found = read("rise_range", f"{low:g} to {high:g}")
    return Accepted(found.values, sureness(line)) if isinstance(found, Accepted) else None
