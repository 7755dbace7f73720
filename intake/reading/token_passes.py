"""Tokens of a text folded together or freed of endings before its numbers are read."""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import pairwise
from typing import Final

from intake.reading.lexer import Token
from intake.reading.phrases import is_known
from intake.reading.words import words

__all__ = [
    "ORDINAL_ENDINGS",
    "is_model",
    "is_shorthand",
    "with_hyphenated",
    "with_models",
    "with_ordinals",
    "with_sentences",
    "with_the_word_with",
    "without_plurals",
]

ORDINAL_ENDINGS: Final = words("st nd rd th")

_IN_ORDER: Final = words(
    "floor level story storey one zone section stage page room unit street st ave avenue door bay"
)


def with_ordinals(tokens: list[Token]) -> list[Token]:
    """Fold "3rd" before a floor and the like into one word, so that "rd" isn't round."""
    found: list[Token] = []
    for k, token in enumerate(tokens):
        following = tokens[k + 1].text if k + 1 < len(tokens) else ""
        ends = token.glued and token.text in ORDINAL_ENDINGS and following in _IN_ORDER
        if ends and found and found[-1].kind == "num" and found[-1].text.isdigit():
            number = found.pop()
            text = number.text + token.text
            found.append(Token("word", text, number.start, token.end, number.glued))
        else:
            found.append(token)
    return found


_PLATES: Final = words("capacity efficiency airflow year elevation")

_LONGEST_PREFIX: Final = 3


def with_models(tokens: list[Token], field_name: str) -> list[Token]:
    """Fold letters that mean nothing, glued to digits, into one code ("XV80", "GMH80804BN")."""
    if field_name not in _PLATES:
        return tokens
    found: list[Token] = []
    i = 0
    while i < len(tokens):
        j = i + 1
        while j < len(tokens) and tokens[j].glued and tokens[j].kind in ("num", "word"):
            j += 1
        if j > i + 1 and _is_model(tokens[i:j]):
            text = "".join(t.text for t in tokens[i:j])
            found.append(Token("code", text, tokens[i].start, tokens[j - 1].end, tokens[i].glued))
        else:
            found.extend(tokens[i:j])
        i = j
    return found


_MODEL: Final = re.compile(r"(?![whdxrlo0-9]*$)(?!.*[0-9]x[0-9])[a-z]+-?[0-9][a-z0-9-]*")
_SHORTEST_MODEL: Final = 5


def is_model(code: str) -> bool:
    """Whether a code is plainly a model number, in which no size or value hides.

    >>> is_model("zq4h036b"), is_model("w20h8"), is_model("20x8zz")
    (True, False, False)
    """
    return len(code) >= _SHORTEST_MODEL and _MODEL.fullmatch(code) is not None


def with_hyphenated(tokens: list[Token]) -> list[Token]:
    """Fold unknown letters, a hyphen and digits into one code ("XQW-90")."""
    found: list[Token] = []
    for token in tokens:
        if (
            token.kind == "num"
            and token.glued
            and len(found) > 1
            and found[-1].text == "-"
            and found[-1].glued
            and found[-2].kind == "word"
            and 2 <= len(found[-2].text) <= _LONGEST_PREFIX + 1
            and not is_known(found[-2].text)
        ):
            found.pop()
            word = found.pop()
            text = f"{word.text}-{token.text}"
            found.append(Token("code", text, word.start, token.end, word.glued))
        else:
            found.append(token)
    return found


def _is_model(run: list[Token]) -> bool:
    first = run[0]
    strange = first.kind == "word" and len(first.text) > 1 and not is_known(first.text)
    return strange and run[1].kind == "num" and (len(first.text) <= _LONGEST_PREFIX or len(run) > 2)


_UNITS: Final = words("in inch inches ins ft foot feet mm cm and by x")


_ABBREVIATED: Final = words(
    """
    approx galv insul diam inch feet tons pres press stat retn supp cent wide high tall long thick
    about appx estd incl excl dept temp temps sect sects horiz vert misc prox
    """
)
_SHORTEST_SENTENCE_END: Final = 4


def with_sentences(tokens: list[Token]) -> list[Token]:
    """The tokens without the points of abbreviations; the end of a sentence parts like a comma.

    "In. w.c." and "galv. 20x8" go on; "not flex. 6 inch metal" are two sentences.
    """
    found: list[Token] = []
    for k, token in enumerate(tokens):
        if token.text != "." or not token.glued:
            found.append(token)
            continue
        before = tokens[k - 1] if k else None
        goes_on = k + 1 < len(tokens) and not tokens[k + 1].glued
        ends = (
            before is not None
            and before.kind == "word"
            and len(before.text) >= _SHORTEST_SENTENCE_END
            and before.text not in _ABBREVIATED
        )
        if ends and goes_on:
            found.append(replace(token, text=","))
    return found


def with_the_word_with(tokens: list[Token]) -> list[Token]:
    """The tokens with a lone "w" that follows no number as the word it is short for."""
    for k, token in enumerate(tokens):
        if token.text != "w" or token.glued or not k:
            continue
        one, following = tokens[k - 1], tokens[k + 1].text if k + 1 < len(tokens) else ")"
        measured = one.kind != "word" or one.text in _UNITS
        whole = k > 2 and tokens[k - 2].text in ("x", "by", "*")
        if not measured or (whole and following not in ("x", "by", "*", ",", ")", "h")):
            token.text = "with"
    return tokens


def is_shorthand(tokens: list[Token], field_name: str) -> bool:
    """Whether a letter glued to a number tells the side ("0.3s 0.2r", "75r 55s")."""
    if field_name != "temperature":
        return field_name == "static_pressure"
    return any(t.text == "r" and t.glued and one.kind == "num" for one, t in pairwise(tokens))


def without_plurals(tokens: list[Token]) -> list[Token]:
    """The tokens without the ending of "three 7s", "16x25x1's" and "the 70's"."""
    found: list[Token] = []
    for token in tokens:
        if token.glued and token.text == "s" and found:
            if found[-1].kind == "num":
                found[-1].plural = True
                continue
            if len(found) > 1 and found[-1].text == "'" and found[-2].kind == "num":
                found.pop()
                found[-1].plural = True
                continue
        found.append(token)
    return found
