"""A told choice with its contractions and denials in plain words."""

from __future__ import annotations

import re
from typing import Final

__all__ = ["in_plain_words"]

_NO_MATTER: Final = re.compile(r"\bno (?:matter|doubt|question)(?: (?:what|how|which|about it))?\b")
_APOSTROPHES: Final = {
    "cant": "can't", "wont": "won't", "dont": "don't", "doesnt": "doesn't", "didnt": "didn't",
    "isnt": "isn't", "wasnt": "wasn't", "couldnt": "couldn't", "hasnt": "hasn't", "aint": "ain't",
    "wouldnt": "wouldn't", "arent": "aren't", "werent": "weren't", "havent": "haven't",
}  # fmt: skip
_WORD_IN: Final = re.compile(r"[a-z]+")


def in_plain_words(text: str) -> str:
    """A text without the "no" that denies nothing, its contractions with their apostrophes."""
    text = _NO_MATTER.sub(" ", text)
    text = _WORD_IN.sub(lambda m: _APOSTROPHES.get(m[0], m[0]), text)
    text = _NEITHER.sub(r"not \1 not ", text)
    return _BUT_NOT.sub(r"not \1", text)


_NEITHER: Final = re.compile(r"\bneither (?:an? )?([a-z]+)(?: (?:nor|or)) ")
_BUT_NOT: Final = re.compile(
    r"^(.{3,40}?)(?:,|;|\.| but)+ ?(?:but )?(?:it|they|that) ?(?:isn't|aren't|ain't|is not"
    r"|are not|'s not)"
    r"[.! ]*$"
)
"""What is denied at the end ("they told me it was clean, it isn't")."""
