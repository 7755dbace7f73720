"""The bare value in the words of a correction: "the plate says 3.5" is "3.5"."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Any, Final

from intake.reading.words import words as words_of

__all__ = ["Values", "bare_value"]

Values = Mapping[str, Any]
Reads = Callable[[str, str], "Values | None"]
"""What a field reads in a text as a plain answer, or None."""

_CUT: Final = re.compile(r"[,;:!?]+(?=\s|$)|\.+(?=\s|$)|\s-+\s")
_AFTER: Final = re.compile(
    r"\s+(?:(?:like|as|than|what|which) (?:i|we)\b.*|i (?:read|had|left|was|got|think|thought"
    r"|misread|forgot|looked|said|put|typed|told|gave|wrote|missed|checked|measured|just"
    r"|dropped)\b.*|because\b.*|cuz\b.*|(?:on|for) (?:that|the|my) (?:last|previous) (?:one"
    r"|question|answer|thing)|on (?:a )?(?:second|closer) look|looking again|now that i look.*"
    r"|sorry|now|please|thanks|instead|my bad|my mistake|oops|lol|not [a-z0-9.]+ like .*|now"
    r" that i .*|after all|for real|for sure)$"
)
_DOUBT: Final = re.compile(
    r"\b(?:about|around|maybe|roughly|approx\w*|probably|almost|nearly|like|ish|guess|think"
    r"|between|at least|at most|over|under|close to|just)\b"
)
_MOST_WORDS: Final = 24


def bare_value(text: str, field: str, reads: Reads) -> str:
    """The shortest end of the telling clause that reads as the whole does; else the text itself.

    Words of doubt stay ("about 40"), and so does a unit behind a figure.

    Args:
        text: The value as found, with whatever stands around it.
        field: The kind of answer it is.
        reads: What a field reads in a text.

    >>> reads = lambda f, t: {"btuh": 42000} if "3.5" in t else None
    >>> bare_value("the plate says 3.5", "capacity", reads)
    '3.5'
    """
    whole = reads(field, text)
    best = text
    clauses = [part.strip() for part in _CUT.split(text) if part.strip()]
    if len(clauses) > 1:
        telling = [(part, found) for part in clauses if (found := reads(field, part)) is not None]
        if telling and (whole is None or any(found == whole for _, found in telling)):
            if whole is not None:
                telling = [(part, found) for part, found in telling if found == whole]
            elif len({repr(sorted(dict(found).items(), key=str)) for _, found in telling}) > 1:
                return text
            best, whole = telling[0]
        elif whole is None and not telling:
            figured = [part for part in clauses if any(char.isdigit() for char in part)]
            best = figured[0] if len(figured) == 1 else text
    trimmed = _AFTER.sub("", best)
    if trimmed != best and (whole is None or reads(field, trimmed) == whole):
        best = trimmed
        whole = reads(field, best)
    if whole is None:
        return best
    if field == "yes_no" and (turned := _TO_WORD.search(best)) is not None:
        best = turned["new"]
    words = best.split()
    if len(words) > _MOST_WORDS:
        return best
    start = 0
    for k in range(1, len(words)):
        if _DOUBT.match(words[k - 1]):
            break
        if field in _IN_WORDS and not _GLUE.match(words[k - 1]):
            break
        if reads(field, " ".join(words[k:])) == whole:
            start = k
        elif not all(_GLUE.match(word) for word in words[:k]):
            break
    return " ".join(words[start:])


_TO_WORD: Final = re.compile(r"^(?:an? )?(?:yes|no) (?:to|into) (?:an? )?(?P<new>yes|no)$")
_IN_WORDS: Final = words_of("material blower_type coil_state yes_no choice duct")
"""Fields whose answers are words; only what joins words is taken off before one."""
_GLUE: Final = re.compile(
    r"^(?:it'?s|it|the|that'?s|that|this|a|an|is|was|to|be|been|have|should|shoulda|says?|said"
    r"|reads|on|for|in|at|of|put|my|actually|really|supposed|make|now|then|and|but|so|i|we"
    r"|meant|mean|got|see|looks|like|just|of|as|down|change|update|set|more|definitely|um|uh"
    r"|sorry|no|[a-z]+'s)$"
)
