"""Typed text made safe to show and simple to read.

`plain_line` is for showing and keeping: no control, format or direction-changing characters, one
line, a stated length. `normalise` is for reading: lower case, plain digits and letters, one kind
of quote, dash, times sign and fraction. Neither knows what the text is about. Both are linear in
the length of the text, which is cut first.
"""

from __future__ import annotations

import re
import unicodedata
from functools import cache
from typing import Final

__all__ = ["LONGEST_ANSWER", "LONGEST_PASTE", "normalise", "plain_line", "plain_lines"]

LONGEST_ANSWER: Final = 600
"""Characters of an ordinary answer that are read; a longer one is refused, never cut in silence."""

LONGEST_PASTE: Final = 20_000
"""Characters of a pasted table that are read."""

_LETTER_O: Final = re.compile(
    r"(?<=[0-9])(?<!h2)o+(?:(?![a-z])|(?=x ?[0-9]))|(?<![a-z0-9.])o(?=[0-9])"
)
_LETTER_L: Final = re.compile(r"(?<![a-z0-9'])l(?=[0-9])")
_SIDE_L: Final = re.compile(r"([0-9] ?x ?)l(?![a-z0-9'])")
_TIMES_TWICE: Final = re.compile(r"(?<=[0-9]) ?x{2,3} ?(?=[0-9])")
_LETTER_AS_DIGIT: Final = re.compile(r"[0-9](?:o| ?x ?[lx])|[ol][0-9]")
"""Some piece of all that the four above find; a text without it is left as it is."""
_POINT: Final = re.compile(r"(?<![a-z0-9])pt\.? (?=[0-9])")
_I_WOULD: Final = re.compile(
    r"\bid (?=(?:say|have|guess|go|bet|like|call|lean|think|need|put|want|rather)\b)"
)
_WITH: Final = re.compile(r"(?<![a-z0-9])w/(o\b)?(?![hx])")


def plain_line(text: str, limit: int = LONGEST_ANSWER) -> str:
    """One line without control, format, surrogate or private characters, at most `limit` long.

    >>> plain_line("20x8\\x1b]0;x\\n galv\\u202e")
    '20x8 ]0;x galv'
    """
    text = text[: 4 * limit]
    if not (text.isascii() and text.isprintable()):
        text = "".join(" " if unicodedata.category(c)[0] == "C" else c for c in text)
    return " ".join(text.split())[:limit]


def plain_lines(text: str, limit: int = LONGEST_PASTE) -> list[str]:
    """The lines of a paste, each made plain; empty lines are dropped."""
    lines = (plain_line(line, limit) for line in text[:limit].splitlines())
    return [line for line in lines if line]


_ALIKE: Final = {
    "'": "‘’‚‛′´`ʹʼ＇‵",
    '"': "“”„‟″ʺ＂〃‶",
    "-": "‐‑‒–—―−﹣－⁃",
    "x": "×✕✖╳⨯⨉ｘ",
    "*": "∗⋅·•＊",
    " dia ": "Ø⌀ø∅",
    " deg ": "°º˚",
    " delta ": "Δ∆",
    " about ": "~≈∼≅～",
    " +/- ": "±",
    "/": "⁄∕÷／",
    " yes ": "👍✓✔✅☑",
    " no ": "👎✗✘❌",
    " square ": "□",
    "...": "…",
}


@cache
def _same_sign() -> dict[int, str]:
    table = {ord(char): plain for plain, chars in _ALIKE.items() for char in chars}
    for code in (0xBC, 0xBD, 0xBE, *range(0x2150, 0x215F), 0x2189):
        top, bottom = unicodedata.normalize("NFKD", chr(code)).split("\u2044")
        table[code] = f" {top}/{bottom} " if bottom else chr(code)
    return table


def normalise(text: str) -> str:
    """Lower-case text in which each sign has one form.

    >>> normalise("11¼ × 17″ Galvanisé")
    '11 1/4 x 17" galvanise'
    >>> normalise("２０ｘ８")
    '20x8'
    """
    if not text.isascii():
        text = unicodedata.normalize("NFKD", text.translate(_same_sign()))
        text = "".join(map(_ascii_form, text))
    text = text.lower().replace("''", '"').replace("~", " about ")
    if "pt" in text:
        text = _POINT.sub("point ", text)
    if "id " in text:
        text = _I_WOULD.sub("i'd ", text)
    if "half way" in text:
        text = text.replace("half way", "halfway")
    if "w/" in text:
        text = _WITH.sub(lambda m: "without " if m[1] else "with ", text)
    if _LETTER_AS_DIGIT.search(text) is not None:
        text = _TIMES_TWICE.sub("x", text)
        text = _SIDE_L.sub(r"\g<1>1", text)
        text = _LETTER_O.sub(lambda m: "0" * len(m[0]), text)
        text = _LETTER_L.sub("1", text)
    return " ".join(text.split())


def _ascii_form(char: str) -> str:
    if char.isascii():
        return char
    if unicodedata.category(char) == "Mn":
        return ""
    digit = unicodedata.decimal(char, None)
    if digit is not None:
        return str(digit)
    return _same_sign().get(ord(char), char)
