"""Whether the old blower runs, told by a reason, or that nobody has tried it."""

import re
from typing import Final

__all__ = ["not_tried", "runs_not"]

_NOT_TRIED: Final = re.compile(
    r"(?:i |we |honestly |still |just |, )*(?:haven'?t|have not|didn'?t|did not|not|never|ain'?t"
    r"|yet to|can'?t)(?: (?:really|even|actually|yet|been able to|had a chance to))*"
    r" (?:tried|try|tested|test|checked|check|turned (?:it|her) on|turn (?:it|her) on|started it"
    r"|start it|looked|fired (?:it|her) up|run it|ran it|flipped it on)"
    r"(?: (?:it|her|that|the blower|the fan))?(?: (?:yet|out|on|today|so far))*[.! ]*"
    r"|(?:no|not) (?:power|juice) (?:yet|here yet)[.! ]*"
)
_DEAD: Final = re.compile(
    r"(?:no[, ]+)?(?:the |that )?(?:old |existing )?(?:one|unit|blower|motor|fan|furnace|system"
    r"|it|she"
    r"|thing)(?:'?s| is| was)?(?: (?:been|long|totally|completely|stone|just|already))*"
    r" (?:dead|toast|shot|fried|seized|kaput|burnt|burned (?:up|out)|locked up|done for)\b"
    r"(?!.*(?:\bbut\b|\?|\bbattery\b)).*"
)
_NO_REASON: Final = re.compile(
    r"(?:no[, ]+)?not (?:with|since|after|until|till|without|unless|when|while|if|because)\b.*"
)


def not_tried(line: str) -> bool:
    """Whether a line says that nobody has looked, which is no no.

    >>> not_tried("haven't tried"), not_tried("tried it, nothing")
    (True, False)
    """
    return _NOT_TRIED.fullmatch(line) is not None


def runs_not(line: str) -> bool:
    """Whether a line says no by its reason: "not with the board fried", "old one's dead"."""
    return (_NO_REASON.fullmatch(line) or _DEAD.fullmatch(line)) is not None
