"""A typed line cut into clauses, each with its misspelt and synonymous words in one form."""

from __future__ import annotations

import re
from functools import cache, lru_cache
from typing import Final

from rapidfuzz.distance import OSA

from intake.reading.red_flag_words import CLOSE, FALSE_FRIENDS, SAME

__all__ = ["clauses_in_one_form"]

_ENDS: Final = re.compile(
    r"[;!,:()\[\]|]|\?(?=.)|[.](?!\d)|(?<=\s)-+(?=\s)|\.\.\."
    r"|\b(?:but|however|though|although|except|because|cuz|then)\b"
    r"|\b(?:and|n|also|plus)\b(?= (?:i|im|ive|its?|we|there|theres|the|he|she|they|now|my|our"
    r"|smells?|smelling|something|somethings|no|not|nothing|none|never|dont|didnt)\b)"
    r"|(?<!smell)(?<!smells)(?<!smelled)(?<!see)(?<!hear)(?<!is)(?<!are)(?<!theres)(?<!have)(?<!has)"
    r"(?<!had)(?<!got)(?<!was)(?<!its)(?<!or)(?<!with)(?<!get)(?<!found) (?=no (?!one\b)[a-z])"
)
_NOT_A_WORD: Final = re.compile(r"[^a-z0-9%?./| -]+")
_WORD: Final = re.compile(r"[a-z]{4,14}")


_BETWEEN: Final = " | "


def clauses_in_one_form(line: str) -> list[str]:
    """The parts of a lower-case line in each of which one thing is said or denied.

    In each, misspelt words are put right and every way of saying a thing has one form.
    """
    parts = [part for piece in _ENDS.split(line) if (part := piece.strip())]
    text = _in_one_form(_NOT_A_WORD.sub(" ", _BETWEEN.join(parts)))
    spelt = _WORD.sub(lambda found: _put_right(found[0]), text)
    if spelt != text:
        text = _in_one_form(spelt)
    return [" ".join(re.split(r"[ ./-]+", part)).strip() for part in text.split("|")]


def _in_one_form(text: str) -> str:
    for pattern, form in _same():
        text = pattern.sub(form, text)
    return text


@cache
def _same() -> tuple[tuple[re.Pattern[str], str], ...]:
    return tuple((re.compile(pattern), form) for pattern, form in SAME)


_CLOSE: Final = frozenset(CLOSE)


@cache
def _allowed_slips(length: int) -> int:
    return 1 if length < 8 else 2


@lru_cache(maxsize=4096)
def _put_right(word: str) -> str:
    if word in _CLOSE or word in FALSE_FRIENDS:
        return word
    for right in CLOSE:
        slips = _allowed_slips(len(right))
        if (
            word[0] == right[0]
            and abs(len(word) - len(right)) <= slips
            and OSA.distance(word, right, score_cutoff=slips) <= slips
        ):
            return right
    return word
