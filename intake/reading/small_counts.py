"""How many, as a small whole number in digits or one word, for patterns in which it stands."""

from typing import Final

__all__ = ["COUNT", "count_said"]

_WORDS: Final = (
    *("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven"),
    *("twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"),
    "twenty",
)
_OTHERS: Final = {"a": 1, "an": 1, "single": 1, "both": 2, "couple": 2, "a couple": 2, "pair": 2}

COUNT: Final = rf"(?:\d{{1,2}}|{'|'.join(_WORDS)})"
"""A pattern of such a number."""


def count_said(words: str) -> int | None:
    """The number that words say, or None.

    >>> count_said("eleven"), count_said("12"), count_said("many")
    (11, 12, None)
    """
    if words.isdigit():
        return int(words)
    if words in _WORDS:
        return _WORDS.index(words) + 1
    return _OTHERS.get(words)
