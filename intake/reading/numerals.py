"""Numbers written in words and as fractions, folded into single tokens.

"a hundred and ten", "three and a quarter", "point four four", "twelve hundred", "11 1/4",
"forty-four hundredths". Neighbours that don't make one number stay apart ("sixteen twenty-five
one"); whether "twelve fifty" is 1,250 depends on the question and is decided by `run_together`.
"""

from __future__ import annotations

from collections.abc import Set
from dataclasses import replace
from functools import lru_cache
from typing import Final

from intake.reading.cardinals import (
    after_point,
    bare_fraction,
    cardinal,
    named_part,
    plain_word,
    skip_dash,
    slash_fraction,
)
from intake.reading.lexer import Token
from intake.reading.number_words import (
    NUMBER_WORDS,
    ONES,
    PARTS,
    PLURALS,
    SCALES,
    TENS,
    in_plain_form,
)
from intake.reading.words import words

__all__ = ["fold_numbers", "may_fold", "run_together"]

_POINTING: Final = words(
    """
    the that this these those next last first second other another which every no any each only
    same return supply big small old new good bad wrong right little large main previous prior
    left back front final single one's third fourth fifth sixth
    """
)
"""After these, "one" is a pronoun ("the return one")."""

_THOSE: Final = words("those these them the my our")
"""Behind "one of" these, "one" is a pronoun ("one of those ninety threes")."""

_COUNTING: Final = words("just only is are about have has got there's theres qty by")
"""After these, "one" is a number."""

_MEASURES: Final = words("inch inches foot feet ft in ton tons hundred thousand point")

_HOMOPHONES: Final = {
    "sick": "six",
    "sicks": "six",
    "ate": "eight",
    "for": "four",
    "fore": "four",
    "free": "three",
    "tree": "three",
    "to": "two",
    "too": "two",
    "won": "one",
    "tin": "ten",
    "nein": "nine",
    "fife": "five",
    "tan": "ten",
}
"""Speech-to-text slips of numbers, read so only in front of a unit."""

_THREES: Final = words("tree thee threee")
"""Slips of three, read so also in front of digits ("tree 12x20")."""

_SPOKEN_UNITS: Final = frozenset(["inch", "inches", "ton", "tons", "foot"])


def may_fold(texts: Set[str]) -> bool:
    """Whether any of these is of a number in words, a fraction, or glued to its unit.

    >>> may_fold({"40", "feet"}), may_fold({"forty", "feet"}), may_fold({"1", "/", "2"})
    (False, True, True)
    """
    return not _FOLDED.isdisjoint(texts) or any(map(_cut_of, texts))


def fold_numbers(tokens: list[Token]) -> list[Token]:
    """Tokens in which every number, however written, is one token of kind "num"."""
    tokens = _split_units(tokens)
    _put_right_homophones(tokens)
    found: list[Token] = []
    i = 0
    while i < len(tokens):
        token, after = tokens[i], i + 1
        if token.kind == "num":
            token, after = _numeric(tokens, i)
        elif token.kind == "word" and token.text in _STARTING:
            token, after = _worded(tokens, i)
        found.append(token)
        i = after
    return found


_GLUED_UNITS: Final = words(
    "cfm ft feet foot in inch inches pa k btu btuh ton tons mm cm psi percent pct"
)
_ONES_BEHIND: Final = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
_SHORTEST_GLUED: Final = 5
"""Letters of a number word and a unit behind it."""


def _split_units(tokens: list[Token]) -> list[Token]:
    """ "fiftycfm" is a number word and a unit, "twentyfive" two number words."""
    if not any(_cut_of(t.text) for t in tokens):
        return tokens
    found: list[Token] = []
    for token in tokens:
        cut = _cut_of(token.text) if token.kind == "word" else 0
        if cut:
            middle = token.start + cut
            found.append(replace(token, text=token.text[:cut], end=middle))
            found.append(Token("word", token.text[cut:], middle, token.end, True))
        else:
            found.append(token)
    return found


@lru_cache(maxsize=4096)
def _cut_of(word: str) -> int:
    """Where a number word ends and its unit or its ones begin; 0 if a word is one thing."""
    if len(word) < _SHORTEST_GLUED:
        return 0
    for cut in range(3, min(len(word), 10)):
        head, tail = word[:cut], word[cut:]
        if tail in _GLUED_UNITS and (head in ONES or head in TENS or head in SCALES):
            return cut
        if head in TENS and tail in _ONES_BEHIND:
            return cut
    return 0


def _put_right_homophones(tokens: list[Token]) -> None:
    """ "sick inch" is six inch, "free ton" three ton; "10 to foot" stays."""
    for i, token in enumerate(tokens):
        right = _HOMOPHONES.get(token.text)
        if right is not None and _surely_a_number(tokens, i):
            token.text = right
            continue
        if i + 1 == len(tokens):
            break
        if token.text in _THREES and tokens[i + 1].kind == "num":
            token.text = "three"
            continue
        if right is None or tokens[i + 1].text not in _SPOKEN_UNITS:
            continue
        before = tokens[i - 1] if i else None
        if before is None or not (before.kind == "num" or _is_number_word(before)):
            token.text = right


_SIDES: Final = words("ate sick sicks nein fife")
_BY: Final = words("by buy bye x")


_TAKES_A_COUNT: Final = words(
    "trunks ducts filters grilles returns runs drops branches vents registers"
)


def _surely_a_number(tokens: list[Token], i: int) -> bool:
    """Whether a slip stands where only a number can: "point ate five", "too of em", "sixty ate"."""
    word = tokens[i].text
    before = in_plain_form(tokens[i - 1].text) if i else ""
    if word in _SIDES and (before in TENS or _beside_by(tokens, i)):
        return True
    if word in ("too", "tree") and before in TENS:
        ends = i + 1 == len(tokens)
        return ends or tokens[i + 1].text in _SPOKEN_UNITS | {"feet", "percent", "degrees"}
    if before in ("point", "dot") and word != "to":
        return True
    following = tokens[i + 1].text if i + 1 < len(tokens) else ""
    behind = tokens[i + 2].text if i + 2 < len(tokens) else ""
    if word in ("too", "to") and (not i or before in _COUNTING):
        return following in _TAKES_A_COUNT or (
            following == "of" and behind in ("em", "them", "those")
        )
    return False


def _beside_by(tokens: list[Token], i: int) -> bool:
    """ "fourteen buy ate": a side behind or before the word that joins it to the other."""
    if i > 1 and tokens[i - 1].text in _BY:
        return tokens[i - 2].kind == "num" or _is_number_word(tokens[i - 2])
    if i + 2 < len(tokens) and tokens[i + 1].text in _BY:
        return tokens[i + 2].kind == "num" or _is_number_word(tokens[i + 2])
    return False


def _is_number_word(token: Token) -> bool:
    text = in_plain_form(token.text)
    return token.kind == "num" or text in ONES or text in TENS or text in SCALES or text in PARTS


def run_together(first: float, second: float) -> float | None:
    """ "twelve fifty" as one number, or None if the two can't be said so.

    >>> run_together(12, 50)
    1250.0
    >>> run_together(12, 5) is None
    True
    """
    whole = first == int(first) and second == int(second)
    if whole and 1 <= first <= 99 and 10 <= second <= 99:
        return first * 100.0 + second
    return None


_STARTING: Final = NUMBER_WORDS | {"a", "an", "dot"}
"""Words with which a number can begin."""


def _worded(tokens: list[Token], i: int) -> tuple[Token, int]:
    """The number in words that begins at i, or the word itself, and the place after it."""
    token = tokens[i]
    value, j = cardinal(tokens, i)
    pronoun = value == 1 and j == i + 1 and token.text == "one" and _is_pronoun(tokens, i)
    fraction = False
    if value is None:
        part, after = bare_fraction(tokens, i)
        if part is not None:
            return _made(tokens, i, after, part, fraction=True), after
        decimal, after = after_point(tokens, i)
        if decimal is None:
            return token, i + 1
        return _made(tokens, i, after, decimal, decimals=2), after
    part, after = named_part(tokens, j)
    decimals = 0
    if part is not None and value >= 1:
        value, j, fraction = value * part, after, part < 1
        if not fraction:
            value = value / part
    else:
        value, j, fraction = _with_fraction(tokens, j, value)
        tail, after = after_point(tokens, j)
        if tail is not None and value == int(value):
            value, j, decimals = value + tail, after, 2
    made = _made(tokens, i, j, value, fraction=fraction, decimals=decimals)
    made.pronoun = pronoun and j == i + 1
    made.plural = tokens[j - 1].text in PLURALS
    return made, j


def _made(
    tokens: list[Token], i: int, j: int, value: float, *, fraction: bool = False, decimals: int = 0
) -> Token:
    text = " ".join(t.text for t in tokens[i:j])
    return Token(
        "num",
        text,
        tokens[i].start,
        tokens[j - 1].end,
        tokens[i].glued,
        round(value, 9),
        decimals,
        spelled=True,
        fraction=fraction,
    )


def _is_pronoun(tokens: list[Token], i: int) -> bool:
    """Whether the "one" at i may stand for a thing: a word before it, no number or unit behind."""
    after = tokens[i + 1] if i + 1 < len(tokens) else None
    if after is not None and (after.kind == "num" or _is_number_word(after) or after.text == "x"):
        return False
    if after is not None and after.text in ("oh", "o"):
        return False
    behind = tokens[i + 2] if i + 2 < len(tokens) else None
    if after is not None and after.text == "of" and behind is not None and behind.text in _THOSE:
        return not (i + 3 < len(tokens) and tokens[i + 3].text in ("two", "three", "four"))
    inches = (
        after is not None
        and after.text == "in"
        and not (behind is not None and behind.kind == "word")
    )
    if after is not None and after.text in _MEASURES and (after.text != "in" or inches):
        return False
    before = plain_word(tokens, i - 1) if i else ""
    sized = i > 2 and tokens[i - 1].kind == "num" and tokens[i - 2].text in ("x", "by", "*")
    if sized and after is not None and after.kind == "word" and after.text not in ("of", "each"):
        return True
    if i and tokens[i - 1].text in ('"', "'") and (after is None or after.text == ","):
        return True
    if before in _POINTING:
        return True
    return bool(before) and not _is_number_word(tokens[i - 1]) and before not in _COUNTING


def _numeric(tokens: list[Token], i: int) -> tuple[Token, int]:
    """Digits, with a fraction or a scale word behind them."""
    first = tokens[i]
    if not _may_go_on(tokens, i + 1):
        return first, i + 1
    value, j, fraction = first.value, i + 1, False
    plain = slash_fraction(tokens, i)
    if plain is not None:
        return replace(
            first, value=plain, end=tokens[i + 2].end, fraction=True, text=_text(tokens, i, i + 3)
        ), i + 3
    scale = SCALES.get(plain_word(tokens, j))
    if scale is not None:
        value, j = value * scale, j + 1
        if scale == 100 and plain_word(tokens, j) == "thousand":
            value, j = value * 1000, j + 1
        return replace(first, value=value, end=tokens[j - 1].end, text=_text(tokens, i, j)), j
    tail, after = after_point(tokens, j)
    if tail is not None and first.decimals == 0 and not first.comma:
        whole = replace(first, value=value + tail, end=tokens[after - 1].end, decimals=2)
        return replace(whole, text=_text(tokens, i, after)), after
    if first.decimals == 0 and not first.comma:
        value, j, fraction = _with_fraction(tokens, j, value)
        if not fraction:
            value, j, fraction = _with_part(tokens, j, value)
    if j == i + 1:
        return first, j
    return replace(
        first, value=value, end=tokens[j - 1].end, fraction=fraction, text=_text(tokens, i, j)
    ), j


_GOING_ON: Final = NUMBER_WORDS | words("/ - & and n nd a an dot")
"""Words and signs with which a number in digits can go on."""
_FOLDED: Final = _STARTING | _GOING_ON | _THREES | frozenset(_HOMOPHONES)
"""Words and signs without which each number stands as it is."""


def _may_go_on(tokens: list[Token], i: int) -> bool:
    """Whether what stands behind a number in digits can be part of it."""
    return i < len(tokens) and (tokens[i].kind == "num" or tokens[i].text in _GOING_ON)


def _text(tokens: list[Token], i: int, j: int) -> str:
    return " ".join(t.text for t in tokens[i:j])


def _with_part(tokens: list[Token], j: int, value: float) -> tuple[float, int, bool]:
    part, after = named_part(tokens, j)
    if part is None or plain_word(tokens, j) in ("second", "third", "quarter", "half"):
        return value, j, False
    return value * part, after, True


def _with_fraction(tokens: list[Token], j: int, value: float) -> tuple[float, int, bool]:
    """Add what follows a whole number: "and a half", "1/4", "-1/4", "and three quarters"."""
    k = j
    an = plain_word(tokens, k) == "an" and plain_word(tokens, k + 1) == "a"
    if (
        an
        or plain_word(tokens, k) in ("and", "n", "nd")
        or (k < len(tokens) and tokens[k].text == "&")
    ):
        k += 1
    else:
        k = skip_dash(tokens, k)
    if _is_thickness(tokens, j, k):
        return value, j, False
    if k < len(tokens) and tokens[k].kind == "num" and not tokens[k].spelled:
        part = slash_fraction(tokens, k)
        spaced = k > j or not tokens[k].glued
        return (value + part, k + 3, True) if part is not None and spaced else (value, j, False)
    if k == j and not (plain_word(tokens, k) in ("half", "quarter") and _measures(tokens, k + 1)):
        return value, j, False
    part, after = bare_fraction(tokens, k)
    if part is None:
        return value, j, False
    return value + part, after, True


_MEASURED: Final = words("inch inches in ton tons foot feet ft x by") | {'"', "'"}


def _measures(tokens: list[Token], i: int) -> bool:
    """Whether "8 half" is eight and a half: a unit or a times sign stands behind."""
    return i < len(tokens) and tokens[i].text in _MEASURED


_LINERS: Final = words(
    "liner lining insulation insul board wrap thick foam rap fin fins spacing blades flange"
)
_OF_LINERS: Final = words("inch in inches duct acoustic internal fiberglass black of foil") | {'"'}


def _is_thickness(tokens: list[Token], j: int, k: int) -> bool:
    """Whether the fraction behind a side is how thick a liner is ('20x8 1/2" liner')."""
    if k > j or j < 2 or tokens[j - 2].text not in ("x", "by", "*"):
        return False
    after = k + 3 if tokens[k : k + 1] and tokens[k].kind == "num" else k + 1
    while after < len(tokens) and tokens[after].text in _OF_LINERS:
        after += 1
    return after < len(tokens) and tokens[after].text in _LINERS
