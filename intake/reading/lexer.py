"""Normalised text cut into numbers, words and signs, each remembering where it stood.

Why written by hand: an answer is one to fifteen words with numbers in it, and nearly every rule
here is about which neighbour a number belongs to. A parsing library wants a grammar that derives
the whole text; loose answers are mostly not in any grammar ("22x10 over the rap, about 30 foot I
guess"), so such a grammar would be full of "anything". A tokenizer, passes that fold neighbours
together (numerals, units, feet and inches, ranges) and a small reader per field keep each trap in
one visible place, need no dependency, and are linear in the length of the text.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

from intake.reading.words import words

__all__ = ["Token", "tokenize"]


@dataclass(slots=True)
class Token:
    """One number, word or sign.

    Attributes:
        kind: "num", "word", "sym" or "code" (letters and digits mixed, such as a model number).
        text: As normalised.
        start, end: Where it stood in the normalised text.
        glued: No space before it.
        value: Of a number.
        decimals: Digits after the point as typed.
        comma: "" or how a comma in a number was read, "decimal" or "thousands".
        spelled: Written in words.
        fraction: Written with a fraction.
        pronoun: A "one" that need not be the number.
        plural: Written as a plural ("sixes", "7s", "70's", "seventies").
    """

    kind: str
    text: str
    start: int
    end: int
    glued: bool = False
    value: float = 0.0
    decimals: int = 0
    comma: str = ""
    spelled: bool = False
    fraction: bool = False
    pronoun: bool = False
    plural: bool = False


_TOKEN: Final = re.compile(
    r"""
    (?P<word>[a-z]+(?:'[a-z]+)*)
  | (?P<num>
        [0-9]+(?![0-9.,])
      | [1-9][0-9]{0,2}(?:,[0-9]{3})+(?:\.[0-9]+)?(?![0-9])     # 1,200 or 12,000.5
      | [1-9][0-9]{0,2}(?:\.[0-9]{3})+,[0-9]{1,2}(?![0-9,])     # 1.200,5
      | (?<![0-9],)[0-9]{1,6},[0-9]{1,2}(?![0-9,])              # 0,45
      | 0,[0-9]{3}(?![0-9,])                                    # 0,450
      | [0-9]*\.[0-9]+
      | [0-9]+
    )
  | (?P<sym>\S)
    """,
    re.VERBOSE,
)

_LONGEST_NUMBER: Final = 15

_SHORTEST_CODE: Final = 3
"""Tokens written together of which a code is made at least: digits, letters, digits."""

_JOINING: Final = words("""x by to ft in inch inches foot feet m mm cm k w h or and l hi wide high
    tall o tons ton wx hx inx ftx mmx cmx mx fx f btu cfm deg p r c d dia
    merv lined flex tin galv metal round rd rnd board pipe""")
"""Letters that may stand between two numbers without making them a model number."""


def tokenize(text: str) -> list[Token]:
    """Cut normalised text into tokens, left to right."""
    tokens: list[Token] = []
    end = run = longest = 0
    for match in _TOKEN.finditer(text):
        kind = match.lastgroup or "sym"
        part = match[0]
        before = end
        start, end = match.span()
        glued = start == before > 0
        token = Token(kind, part, start, end, glued)
        run = run + 1 if glued and kind != "sym" else 1
        longest = run if run > longest else longest
        if kind == "num":
            _set_value(token)
            tokens.append(token)
        elif kind == "word" and token.glued and len(part) > 1 and part[-1] == "x":
            tokens.extend(_split_times(token, tokens))
        else:
            tokens.append(token)
    return _without_codes(tokens) if longest >= _SHORTEST_CODE else tokens


def _set_value(token: Token) -> None:
    text = token.text
    if len(text) > _LONGEST_NUMBER:
        token.kind = "code"
        return
    if text.isdecimal():
        token.value = float(text)
        return
    if "," in text:
        if "." in text and text.index(".") < text.index(","):
            text, token.comma = text.replace(".", "").replace(",", "."), "decimal"
        elif (len(text) - text.rindex(",") == 4 and text[0] != "0") or "." in text:
            text, token.comma = text.replace(",", ""), "thousands"
        else:
            text, token.comma = text.replace(",", "."), "decimal"
    token.value = float(text)
    token.decimals = len(text) - text.index(".") - 1 if "." in text else 0


_BEFORE_TIMES: Final = words("in inch inches ft foot feet mm cm m w h wide tall high")


def _split_times(token: Token, before: list[Token]) -> list[Token]:
    """ "8inx9in": the word "inx" is a unit and a times sign."""
    stem = token.text[:-1]
    if not (before and before[-1].kind == "num" and stem in _BEFORE_TIMES):
        return [token]
    middle = token.end - 1
    return [
        Token("word", stem, token.start, middle, True),
        Token("word", "x", middle, token.end, True),
    ]


def _without_codes(tokens: list[Token]) -> list[Token]:
    """Fold digits glued to foreign letters glued to digits into one "code"."""
    found: list[Token] = []
    i = 0
    while i < len(tokens):
        j = i + 1
        while j < len(tokens) and tokens[j].glued and tokens[j].kind != "sym":
            j += 1
        run = tokens[i:j]
        if len(run) >= _SHORTEST_CODE and _mixed(run):
            text = "".join(t.text for t in run)
            found.append(Token("code", text, run[0].start, run[-1].end, run[0].glued))
        else:
            found.extend(run)
        i = j
    return found


def _mixed(run: list[Token]) -> bool:
    """Whether a foreign word stands between two numbers."""
    middle = [t for t in run[1:-1] if t.kind == "word" and t.text not in _JOINING]
    return bool(middle) and run[0].kind == "num" and run[-1].kind in ("num", "word")
