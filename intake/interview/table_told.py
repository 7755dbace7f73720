"""Whether a blower table was taken with its cooling coil in place, told by whose table it is."""

import re
from typing import Final

__all__ = ["coil_in_the_table"]

_WITHOUT: Final = re.compile(
    r"(?:it'?s |its |that'?s |it is |that is |from |this is )*(?:(?:an?|the|just|only|plain) )*"
    r"(?:bare )?(?:furnace|gas furnace)(?: only)?(?: (?:book|table|chart|sheet|data|manual"
    r"|literature))?(?: only)?[.! ]*"
    r"|(?:the )?coil(?:'?s| is| was)? (?:not|isn'?t|wasn'?t) (?:counted|included|in(?: it)?|there"
    r"|part of it)\b.*"
    r"|(?:with )?no coil(?: in (?:it|place))?[.! ]*|(?:it was |was )?(?:a )?bare(?: furnace)?[.! ]*"
)
_WITH: Final = re.compile(
    r"(?:it'?s |its |that'?s |it is |that is |from |this is )*(?:(?:an?|the) )*air ?handler"
    r"(?: (?:with|and) (?:its|the|a) (?:own )?coil)?(?: (?:book|table|chart))?[.! ]*"
    r"|(?:it'?s |its |that'?s |it is |that is )+(?:taken )?with (?:an?|the|its) (?:a-? ?)?"
    r"(?:cooling )?coil\b[^\d]*"
)
_DOUBT: Final = re.compile(r"\b(?:maybe|think|not sure|if|or|might|except)\b|\?")


def coil_in_the_table(line: str) -> bool | None:
    """Whether the coil is in the table; None if a line doesn't settle it so.

    A furnace's own table is taken without a coil, an air handler's with it. Source: common
    practice.

    Args:
        line: Normalised text.

    >>> coil_in_the_table("furnace only table"), coil_in_the_table("air handler with its coil")
    (False, True)
    >>> coil_in_the_table("furnace table with the coil in") is None
    True
    """
    if _DOUBT.search(line):
        return None
    if _WITHOUT.fullmatch(line):
        return False
    return True if _WITH.fullmatch(line) else None
