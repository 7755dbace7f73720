"""Typed text to items: numbers with their units and signs, words with their meanings.

The passes: numerals are folded, spelling is put right, units are joined to their numbers, feet
and inches become one length, and every known phrase gets its meanings. What the items add up to
is the readers' business.
"""

from __future__ import annotations

from functools import cache, lru_cache
from typing import Final

from intake.reading.clean import normalise
from intake.reading.items import Item, Scan
from intake.reading.lexer import Token, tokenize
from intake.reading.numerals import fold_numbers, may_fold
from intake.reading.phrases import longest_phrase, spelt_right, without_possessive
from intake.reading.sayings import in_plain_words
from intake.reading.token_passes import (
    ORDINAL_ENDINGS,
    is_shorthand,
    with_hyphenated,
    with_models,
    with_ordinals,
    with_sentences,
    with_the_word_with,
    without_plurals,
)
from intake.reading.unit_at import LENGTH_FIELDS, unit_at
from intake.reading.units import PREFIXED, spellings
from intake.reading.words import words

__all__ = ["Item", "Scan", "scan", "scanned"]

_NOT: Final = words("not isn't isnt wasn't wasnt aint ain't")
_NEGATING: Final = _NOT | words("no instead rather")
"""Words without which no number is negated."""


def scan(text: str, field_name: str, *, normal: bool = False) -> Scan:
    """The items of a text, read for a field; the numbers may be changed by whoever asked for them.

    Args:
        text: What was typed.
        field_name: The kind of answer wanted.
        normal: The text has been through `normalise`.
    """
    found = scanned(text if normal else normalise(text), field_name)
    return Scan(found.text, [item.own() for item in found.items])


@lru_cache(maxsize=32)
def scanned(text: str, field_name: str) -> Scan:
    """The items of a normalised text, shared by all who only look at them.

    One answer is scanned by several readers; one that changes items asks `scan` for its own.
    """
    line = in_plain_words(text, field_name)
    tokens = tokenize(line)
    for token in tokens:
        if token.kind == "word":
            word = without_possessive(token.text) if "'" in token.text else token.text
            token.text = spelt_right(word)
            if token.text.startswith("?"):
                token.kind = "code"
    texts = {token.text for token in tokens}
    if " w " in line:
        tokens = with_the_word_with(tokens)
    if not ORDINAL_ENDINGS.isdisjoint(texts):
        tokens = with_ordinals(tokens)
    if "-" in line:
        tokens = with_hyphenated(tokens)
    tokens = with_models(tokens, field_name)
    if may_fold(texts):
        tokens = fold_numbers(tokens)
    if "." in texts:
        tokens = with_sentences(tokens)
    if "s" in texts and (field_name in _SIZED or not is_shorthand(tokens, field_name)):
        tokens = without_plurals(tokens)
    items: list[Item] = []
    i, last = 0, len(tokens)
    while i < last:
        i = _item(tokens, i, field_name, items)
    if "/" in line or "-" in line:
        _share_foreign_units(items, field_name)
    if "ft" in [item.unit for item in items]:
        items = _one_length(items)
    if not _NEGATING.isdisjoint(texts):
        _set_negated(items, field_name)
    return Scan(line, items)


_SIZED: Final = words("duct filter grille")


def _item(tokens: list[Token], i: int, field_name: str, items: list[Item]) -> int:
    """Append the item at i; the place after it."""
    token = tokens[i]
    if token.kind == "num":
        return _number(tokens, i, field_name, items)
    if token.kind == "word" and token.text in _opening():
        after = _prefixed(tokens, i, items) or _worded_length(tokens, i, field_name, items)
        if after:
            return after
    if token.kind in ("word", "sym"):
        found, after = longest_phrase(tokens, i)
        if found:
            text = token.text if after == i + 1 else " ".join(t.text for t in tokens[i:after])
            end = tokens[after - 1].end
            items.append(Item("tag", text, token.start, end, 0.0, "", 0, found, token, token.glued))
            return after
    items.append(
        Item(token.kind, token.text, token.start, token.end, 0.0, "", 0, (), token, token.glued)
    )
    return i + 1


def _number(tokens: list[Token], i: int, field_name: str, items: list[Item]) -> int:
    token = tokens[i]
    item = Item("num", token.text, token.start, token.end, token.value, token=token)
    item.glued = token.glued
    _take_sign(items, item)
    after = i + 1
    if after < len(tokens) and tokens[after].text == "k" and tokens[after].kind == "word":
        following = tokens[after + 1].text if after + 1 < len(tokens) else ""
        if field_name in ("temperature", "rise_range"):
            item.unit = "degk"
            after += 1
        elif not following.startswith("btu"):
            item.value *= 1000.0
            after += 1
    unit, past = unit_at(tokens, after, field_name) if not item.unit else ("", after)
    if unit in PREFIXED and _belongs_to_next(tokens, past, unit, item.value):
        unit = ""
    if unit == "merv" and len(items) > 3 and items[-1].means("join.by") and item.value <= 6:
        unit = ""
    if unit:
        item.unit = unit
        after = past
        if unit in ("in", "ft", "ton", "mi") and _half_after(tokens, after):
            item.value += tokens[after + 1].value
            after += 2
    item.end = tokens[after - 1].end
    items.append(item)
    return after


def _belongs_to_next(tokens: list[Token], after: int, unit: str, value: float) -> bool:
    """ "1 merv 10": the rating is that of the number behind it."""
    if after >= len(tokens) or tokens[after].kind != "num":
        return False
    return unit in ("merv", "mpr", "rvalue") or value > 100


_THICK_WORDS: Final = words("inch in inches thick liner lined lining insulation board") | {'"'}


def _half_after(tokens: list[Token], i: int) -> bool:
    """ "a foot and a half": a part of one behind "and"."""
    return (
        i + 1 < len(tokens)
        and tokens[i].text == "and"
        and tokens[i + 1].kind == "num"
        and tokens[i + 1].fraction
        and 0 < tokens[i + 1].value < 1
        and not (i + 2 < len(tokens) and tokens[i + 2].text in _THICK_WORDS)
    )


_MINUS: Final = words("minus negative neg mins menus")

_PLUS: Final = frozenset(["plus", "positive", "pos", "+"])


def _take_sign(items: list[Item], item: Item) -> None:
    """Move a sign that stands before the number into it."""
    if not items:
        return
    before = items[-1]
    earlier = items[-2] if len(items) > 1 else None
    if before.text == "$":
        item.unit = "dollars"
    if before.text == "-" and before.kind == "sym":
        starts = earlier is None or not before.glued
        if starts and (item.glued or earlier is None or earlier.kind == "tag"):
            item.sign = -1
    elif before.text == "+" and item.glued and (earlier is None or not before.glued):
        item.sign = 1
    elif before.text in _MINUS:
        item.sign = -1
    elif before.text in _PLUS and (
        earlier is None or earlier.kind != "num" or before.text not in ("plus", "+")
    ):
        item.sign = 1
    if item.sign:
        item.start = before.start
        items.pop()


@cache
def _opening() -> frozenset[str]:
    """The first word of every unit that may stand before its number, or without one."""
    prefixed = (phrase[0] for phrase, unit in spellings().items() if unit in PREFIXED)
    return frozenset((*prefixed, "a", "an"))


def _prefixed(tokens: list[Token], i: int, items: list[Item]) -> int:
    """A rating before its number ("HSPF 9", "R-8"); the place after, or 0."""
    table = spellings()
    for n in (3, 2, 1):
        words = tuple(t.text for t in tokens[i : i + n])
        unit = table.get(words) if len(words) == n else None
        if unit not in PREFIXED or words == ("a", "few"):
            continue
        j = i + n
        while j < len(tokens) and tokens[j].text in (
            "-",
            ":",
            "=",
            "is",
            "of",
            "rating",
            "rated",
            ".",
        ):
            j += 1
        if j < len(tokens) and tokens[j].kind == "num":
            token = tokens[j]
            near = j == i + n or tokens[j - 1].text == "-"
            if unit == "rvalue" and not (
                (near and token.glued and 1 <= token.value <= 30)
                or tokens[j - 1].text == "value"
                or (j == i + n and token.value in _R_VALUES)
            ):
                return 0
            item = Item(
                "num", token.text, tokens[i].start, token.end, token.value, unit, token=token
            )
            items.append(item)
            after = j + 1
            if after < len(tokens) and tokens[after].text in ("%", "percent"):
                after += 1
            return after
    return 0


_R_VALUES: Final = frozenset((2.1, 3.3, 3.5, 4.2, 5.0, 6.0, 8.0, 11.0, 12.0, 13.0))
"""Insulation values that are sold for ducts."""

_SINGLE_UNITS: Final = words("foot inch mile ft yard meter ton")


def _worded_length(tokens: list[Token], i: int, field_name: str, items: list[Item]) -> int:
    """ "a foot", "an inch and a half"; the place after, or 0."""
    if tokens[i].text not in ("a", "an") or i + 1 >= len(tokens):
        return 0
    if tokens[i + 1].text == "ton":
        if field_name != "capacity" or not _half_after(tokens, i + 2):
            return 0
    elif field_name not in LENGTH_FIELDS and not (
        field_name == "static_pressure"
        and tokens[i + 1].text == "inch"
        and not (items and items[-1].text == "of")
    ):
        return 0
    if tokens[i + 1].text not in _SINGLE_UNITS:
        return 0
    unit, after = unit_at(tokens, i + 1, field_name)
    if not unit:
        return 0
    value = 1.0
    if (
        items
        and items[-1].kind == "num"
        and items[-1].token
        and items[-1].token.fraction
        and not items[-1].unit
    ):
        half = items.pop()
        half.unit, half.end = unit, tokens[after - 1].end
        items.append(half)
        return after
    if _half_after(tokens, after):
        value += tokens[after + 1].value
        after += 2
    made = Token("num", "a", tokens[i].start, tokens[after - 1].end, value=value, spelled=True)
    items.append(Item("num", "a", made.start, made.end, value, unit, token=made))
    return after


def _one_length(items: list[Item]) -> list[Item]:
    """Feet followed by inches become one length in inches (or feet)."""
    found: list[Item] = []
    i = 0
    while i < len(items):
        item = items[i]
        if item.kind == "num" and item.unit == "ft" and not item.negated:
            j = i + 1
            if j < len(items) and items[j].text in ("-", "and", ",", "&"):
                j += 1
            if j < len(items) and _is_inches(items, i, j):
                inches = items[j]
                item.value += inches.value / 12.0
                item.end = inches.end
                i = j
        found.append(item)
        i += 1
    return found


_FEW_FEET: Final = 2
"""Feet of a side ("1 ft 8 x 9 in"); more of them before a size are a length."""


_AFTER_LENGTH: Final = words(
    "not or so total overall long maybe i exactly taped measured about give roughly"
)
"""Words behind feet and inches without a sign ("11ft 6 not 16ft 6")."""


def _is_inches(items: list[Item], i: int, j: int) -> bool:
    item = items[j]
    if item.kind != "num" or item.value >= 12 or items[i].value != int(items[i].value):
        return False
    if item.unit == "in":
        return not (j > i + 1 and items[j - 1].text == ",")
    if item.unit or (j > i + 1 and not item.glued):
        return False
    following = items[j + 1] if j + 1 < len(items) else None
    if following is not None and following.means("join.by") and not following.glued:
        return items[i].value <= _FEW_FEET and j == i + 1 and item.whole
    alone = (
        following is None
        or following.means("join.by")
        or following.kind == "sym"
        or following.text in _AFTER_LENGTH
    )
    ends = following is None or item.glued or following.text in _AFTER_LENGTH
    return alone and j == i + 1 and item.whole and ends


_FOREIGN: Final = words("volt amp hertz rpm years dollars seer")


def _share_foreign_units(items: list[Item], field_name: str) -> None:
    """ "208/230 volt": the first number is of the second one's kind."""
    for one, sign, two in zip(items, items[1:], items[2:], strict=False):
        numbers = one.kind == "num" and two.kind == "num" and not one.unit
        degrees = two.unit in ("degf", "degc") and field_name not in ("temperature", "rise_range")
        if numbers and sign.text in ("/", "-") and (two.unit in _FOREIGN or degrees):
            one.unit = two.unit


def _set_negated(items: list[Item], field_name: str) -> None:
    for k, item in enumerate(items):
        if item.kind != "num" or not k:
            continue
        before = items[k - 1].text
        two = f"{items[k - 2].text} {before}" if k > 1 else ""
        if before in ("the", "a", "an") and k > 1:
            before = items[k - 2].text
        if before in _NOT or two in ("instead of", "rather than"):
            item.negated = True
        elif before == "no" and field_name in _SIZED and not item.unit and len(items) > k + 2:
            size = items[k + 1].means("join.by")
            item.negated = size and (field_name == "grille" or not _ends_at(items, k + 3))


def _ends_at(items: list[Item], i: int) -> bool:
    """Whether no number stands behind a place."""
    return not any(item.kind == "num" for item in items[i:])
