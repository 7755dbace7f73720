"""Whole numbers, parts and decimals in words, each read from its place in the tokens.

"two hundred and ten", "three quarters", "half a dozen", "point forty-four", "3/4": the pieces that
`numerals` puts together. Each function gives a value, or None, and the place after it.
"""

from __future__ import annotations

from typing import Final

from intake.reading.lexer import Token
from intake.reading.number_words import DIGIT_WORDS, ONES, PARTS, TENS, in_plain_form

__all__ = [
    "after_point",
    "bare_fraction",
    "cardinal",
    "named_part",
    "plain_word",
    "skip_dash",
    "slash_fraction",
]

_DENOMINATORS: Final = frozenset((2, 3, 4, 8, 16, 32))


def plain_word(tokens: list[Token], i: int) -> str:
    """The word at a place without its slip or plural, or ""."""
    if i < len(tokens) and tokens[i].kind == "word":
        text = tokens[i].text
        return in_plain_form(text)
    return ""


def skip_dash(tokens: list[Token], i: int) -> int:
    """Past a dash between two words that are written together."""
    if i + 1 < len(tokens) and tokens[i].text == "-" and tokens[i].glued and tokens[i + 1].glued:
        return i + 1
    return i


def slash_fraction(tokens: list[Token], i: int) -> float | None:
    """The value of "3/4" at i; a size such as "20/8" is none."""
    if i + 2 >= len(tokens) or tokens[i + 1].text != "/" or tokens[i + 2].kind != "num":
        return None
    top, bottom = tokens[i], tokens[i + 2]
    if i + 3 < len(tokens) and tokens[i + 3].text == "/":
        return None
    if i and tokens[i - 1].text == "/":
        return None
    if not (tokens[i + 1].glued and bottom.glued) or top.decimals or bottom.decimals:
        return None
    if 0 < top.value < bottom.value and bottom.value in _DENOMINATORS:
        return top.value / bottom.value
    return None


def bare_fraction(tokens: list[Token], i: int) -> tuple[float | None, int]:
    """ "a half", "half", "three quarters", "three-quarter", "five tenths", "one eighth"."""
    word = plain_word(tokens, i)
    if word in ("half", "quarter"):
        return 1 / PARTS[word], i + 1
    if word in ("a", "an"):
        k = i + 1
        part = PARTS.get(plain_word(tokens, k))
        return (1 / part, k + 1) if part else (None, i)
    value, j = cardinal(tokens, i)
    if value is not None:
        part_value, after = named_part(tokens, j)
        if part_value is not None:
            return value * part_value, after
    return None, i


def named_part(tokens: list[Token], j: int) -> tuple[float | None, int]:
    """1/4 for "quarters" at j."""
    k = skip_dash(tokens, j)
    part = PARTS.get(plain_word(tokens, k))
    return (1 / part, k + 1) if part else (None, j)


def cardinal(tokens: list[Token], i: int) -> tuple[float | None, int]:
    """A whole number in words from i."""
    word = plain_word(tokens, i)
    if word in ("a", "an") and plain_word(tokens, i + 1) in (
        "hundred",
        "thousand",
        "grand",
        "dozen",
    ):
        value, j = 1.0, i + 1
    elif word in ("hundred", "thousand", "dozen"):
        value, j = 1.0, i
    elif (
        word == "half" and plain_word(tokens, i + 1) == "a" and plain_word(tokens, i + 2) == "dozen"
    ):
        return 6.0, i + 3
    elif word == "half" and plain_word(tokens, i + 1) == "dozen":
        return 6.0, i + 2
    else:
        small, j = _below_hundred(tokens, i)
        if small is None:
            return None, i
        value = small
    if plain_word(tokens, j) == "dozen":
        return value * 12, j + 1
    return _scaled(tokens, j, value)


def _scaled(tokens: list[Token], j: int, value: float) -> tuple[float, int]:
    """Hundreds and thousands behind a number below a hundred."""
    total = 0.0
    if plain_word(tokens, skip_dash(tokens, j)) == "hundred":
        j = skip_dash(tokens, j)
    if plain_word(tokens, j) == "hundred":
        value, j = value * 100, j + 1
        value, j = _plus_below_hundred(tokens, j, value)
    if plain_word(tokens, j) in ("thousand", "grand"):
        total, j = value * 1000, j + 1
        k = j + 1 if plain_word(tokens, j) == "and" else j
        rest, after = _below_hundred(tokens, k)
        if rest is not None:
            value, j = rest, after
            if plain_word(tokens, j) == "hundred":
                value, j = value * 100, j + 1
                value, j = _plus_below_hundred(tokens, j, value)
        else:
            value = 0.0
    return total + value, j


def _plus_below_hundred(tokens: list[Token], j: int, value: float) -> tuple[float, int]:
    k = j + 1 if plain_word(tokens, j) in ("and", "n", "an", "nd") else skip_dash(tokens, j)
    rest, after = _below_hundred(tokens, k)
    if rest is None or PARTS.get(plain_word(tokens, after)):
        return value, j
    return value + rest, after


def _below_hundred(tokens: list[Token], i: int) -> tuple[float | None, int]:
    word = plain_word(tokens, i)
    if word in TENS:
        k = skip_dash(tokens, i + 1)
        ones = ONES.get(plain_word(tokens, k), 0)
        if 1 <= ones <= 9:
            return float(TENS[word] + ones), k + 1
        return float(TENS[word]), i + 1
    if word in ONES:
        return float(ONES[word]), i + 1
    return None, i


def after_point(tokens: list[Token], i: int) -> tuple[float | None, int]:
    """ "point four four", "point forty-four", "point oh five", "point 4"."""
    if plain_word(tokens, i) not in ("point", "dot"):
        return None, i
    j, digits = i + 1, ""
    while len(digits) < 6:
        word = plain_word(tokens, j)
        if word in DIGIT_WORDS:
            digits, j = digits + str(DIGIT_WORDS[word]), j + 1
            continue
        value, after = _below_hundred(tokens, j)
        if value is not None and value >= 10:
            digits, j = digits + str(int(value)), after
            break
        typed = tokens[j] if j < len(tokens) and tokens[j].kind == "num" else None
        if typed is None or typed.decimals or typed.comma:
            break
        if digits and not (len(typed.text) == 1 and tokens[j - 1].kind == "num"):
            break
        digits, j = digits + typed.text, j + 1
        if len(typed.text) > 1:
            break
    return (float("0." + digits), j) if digits else (None, i)
