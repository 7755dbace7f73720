"""Whether a word is said, or only said to be not so: "not over the wrap", "isn't flex"."""

import re
from typing import Final

__all__ = ["affirmed", "denied"]

_BEFORE: Final = re.compile(
    r"\b(?:not|never|no|without|isn'?t|wasn'?t|aren'?t|ain'?t|didn'?t|don'?t|nothing|neither|nor)"
    r"(?: (?:on|at|over|in|the|an?|any|to|do|see|have|measure|measured|taken|it|from|really|all"
    r"|that|very|is|looks?)){0,3} $"
)


def affirmed(pattern: re.Pattern[str], text: str) -> bool:
    """Whether a text says it somewhere without denying it there.

    >>> affirmed(re.compile("flex"), "not flex"), affirmed(re.compile("flex"), "not tin, flex")
    (False, True)
    """
    return any(not _BEFORE.search(text[: at.start()]) for at in pattern.finditer(text))


def denied(pattern: re.Pattern[str], text: str) -> bool:
    """Whether a text says it, and denies it wherever it does."""
    return pattern.search(text) is not None and not affirmed(pattern, text)
