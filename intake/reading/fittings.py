"""Lists of fittings: "3 square elbows, a boot and a top takeoff".

An elbow's shape may stand before its noun or behind it ("two 90s, square, no vanes"), and some of
those counted may be told apart ("4 elbows, two of them square").
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import Final

from intake.reading.fitting_words import FITTING_WORDS, LOOSE, fitting_phrases, in_plain_words
from intake.reading.lexer import Token, tokenize
from intake.reading.numerals import fold_numbers
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Sure, Value
from intake.reading.small_counts import COUNT, count_said
from intake.reading.words import words

__all__ = ["FITTING_WORDS", "LOOSE", "read_fittings"]

_COUNTS: Final = {"couple": 2, "pair": 2, "another": 1, "single": 1, "both": 2}
_MOST: Final = 25

_SHAPES: Final = {
    "vaned": "vaned_elbow",
    "unvaned": "square_elbow_trunk",
    "square": "square_elbow_trunk",
    "squared": "square_elbow_trunk",
    "hard": "square_elbow_trunk",
    "sharp": "square_elbow_trunk",
    "boxy": "square_elbow_trunk",
    "radius": "radius_elbow",
    "radiused": "radius_elbow",
    "curved": "radius_elbow",
    "smooth": "round_elbow_smooth",
    "round": "round_elbow_adjustable",
    "adjustable": "round_elbow_adjustable",
    "mitered": "mitred_elbow",
    "mitred": "mitred_elbow",
}
"""Shapes of elbows, told behind their noun or without it."""

_ALONE: Final = words("vaned radius radiused curved mitered mitred square")
"""Shapes that mean an elbow where no noun was told at all."""

_VANES: Final = words("vaned unvaned")
_FAMILIES: Final = ("takeoff", "elbow", "boot")


@dataclass(slots=True)
class _Named:
    """Fittings of one kind, as they were named.

    Attributes:
        kind: The engine's name.
        phrase: What they were called.
        count: How many.
        counted: A number was said.
        end: Place behind the phrase.
        shapes: Some of them told apart: shape and how many.
        of_them: Those are said to be some of these.
    """

    kind: str
    phrase: str
    count: int
    counted: bool
    end: int
    shapes: list[tuple[str, int]] = field(default_factory=list)
    of_them: bool = False

    @property
    def loose(self) -> bool:
        """Whether the words don't say which kind it is."""
        return self.phrase in LOOSE

    @property
    def elbow(self) -> bool:
        """Whether a shape behind it may tell which kind it is."""
        return (self.loose and "elbow" in self.kind) or self.kind == "square_elbow_trunk"


def read_fittings(line: str) -> Reading | None:
    """Read a list of fittings from normalised text; None if it names none."""
    line = _BESIDES.sub("", line)
    again = _COUNTED_AGAIN.fullmatch(line)
    if again is not None:
        first = read_fittings(again["first"])
        rows = first.values["fittings"] if isinstance(first, Accepted) else None
        if isinstance(first, Accepted) and isinstance(rows, list) and len(rows) == 1:
            row = rows[0]
            if isinstance(row, dict):
                return Accepted(
                    {"fittings": [{**row, "count": count_said(again["count"]) or 1}]}, first.sure
                )
    return _List(_words(fold_numbers(tokenize(in_plain_words(line))))).read()


_BESIDES: Final = re.compile(
    r"^.*?\b(?:no(?: other| more| real)? (?:fittings|elbows|bends|turns)|nothing|none)\b[^,.;]*?"
    r"\b(?:besides|except(?: for)?|but|other than|apart from|save|just|only) "
)
"""What there is none of, before what there is: "no fittings besides the boot"."""

_COUNTED_AGAIN: Final = re.compile(
    r"(?P<first>.+?)[,.]* (?:no|no,? wait|wait|make that|sorry|i mean|scratch that)[, ]+"
    r"(?:it'?s |there'?s |there are )?"
    rf"(?P<count>{COUNT})(?: of (?:them|em))?[.! ]*"
)


class _List:
    """A list of fittings while it is read, token by token."""

    def __init__(self, tokens: list[Token]) -> None:
        self.tokens = tokens
        self.named: list[_Named] = []
        self.denied: list[str] = []
        self.count: int | None = None
        self.denies = False
        self.of_them = False
        self.vanes = ""

    def read(self) -> Reading | None:
        """The whole list; None if it names nothing."""
        i = 0
        while i < len(self.tokens):
            after = self._phrase(i) or self._shape(i)
            if after:
                i = after
                continue
            if not self._other(self.tokens[i]):
                return _ask()
            i += 1
        if self.count is not None:
            return _ask() if self.named else None
        if not self.named:
            return _ask_for_others(self.denied) if self.denied else None
        found = _counted(self.named)
        if found is None:
            return _ask()
        rows: list[Value] = [{"kind": kind, "count": n} for kind, n in found.items() if n]
        if not rows:
            return None
        if any(n > _MOST for n in found.values()):
            return AskBack(
                "So many? Please count the fittings on the two longest runs only.",
                (),
                AskKind.IMPLAUSIBLE,
            )
        loose = any(one.loose and not one.shapes for one in self.named)
        return Accepted({"fittings": rows}, Sure.HEDGED if loose else Sure.PLAIN)

    def _phrase(self, i: int) -> int:
        """Take the fitting named at a place; the place behind it, 0 if none is named."""
        match = _phrase_at(self.tokens, i)
        if match is None or _counts_next(self.tokens, i, match[2]):
            return 0
        kind, phrase, after = match
        last = self.named[-1] if self.named else None
        if self.denies:
            self.denied.append(phrase)
        elif last is not None and last.end == i and self.count is None and _alike(last, kind):
            if last.loose:
                last.kind, last.phrase = kind, phrase
            last.end = after
        else:
            counted = self.count is not None
            if self.vanes and "elbow" in kind and (phrase in LOOSE or kind == "square_elbow_trunk"):
                kind, phrase = _SHAPES[self.vanes], f"{self.vanes} elbow"
            self.named.append(
                _Named(kind, phrase, self.count if self.count is not None else 1, counted, after)
            )
        self.count, self.denies, self.of_them, self.vanes = None, False, False, ""
        return after

    def _shape(self, i: int) -> int:
        """Take the shape of elbows told behind their noun; the place behind it, or 0."""
        token = self.tokens[i]
        shape = _SHAPES.get(token.text) if token.kind == "word" else None
        if shape is None:
            return 0
        last = next((one for one in reversed(self.named) if one.elbow or one.shapes), None)
        if self.count is not None:
            if last is None:
                last = next((o for o in reversed(self.named) if "elbow" in o.kind), None)
            if last is not None:
                last.shapes.append((shape, self.count))
                last.of_them = last.of_them or self.of_them
            elif token.text in _ALONE:
                self.named.append(_Named(shape, f"{token.text} elbow", self.count, True, i + 1))
            else:
                return self._governed(i)
            self.count, self.of_them = None, False
            return i + 1
        if last is None or last is not self.named[-1] or self.denies:
            self.vanes = token.text if token.text in _VANES else self.vanes
            return 0
        if token.text not in _VANES and not _ends_clause(self.tokens, i + 1):
            return 0
        if last.loose or token.text == "vaned":
            last.kind, last.phrase, last.end = shape, f"{token.text} elbow", i + 1
        return i + 1

    def _governed(self, i: int) -> int:
        """ "4 straight takeoffs, 2 round": the noun of the phrase before is meant."""
        last = self.named[-1].phrase.split() if self.named else []
        noun = next((word for word in reversed(last) if word in _GOVERNED), None)
        phrase = f"{self.tokens[i].text} {noun}"
        found = fitting_phrases().get(tuple(phrase.split()))
        if found is None or self.count is None:
            return 0
        self.named.append(_Named(found[0], phrase, self.count, True, i + 1))
        self.count = None
        return i + 1

    def _other(self, token: Token) -> bool:
        """Take a number, a word or a sign of no fitting; False if the list can't be read."""
        if token.kind == "num":
            if self.count is not None or not token.value.is_integer() or not 0 <= token.value <= 60:
                return False
            self.count = int(token.value)
        elif token.text in ("no", "zero", "without", "not"):
            self.denies = True
        elif token.text in ("them", "em", "those", "these") and self.count is not None:
            self.of_them = True
        elif token.text in _COUNTS and self.count is None:
            self.count = _COUNTS[token.text]
        elif token.kind == "sym" and token.text in ",;":
            if self.count is not None:
                return False
            self.denies, self.vanes = False, ""
        return True


_GOVERNED: Final = words("elbow turn takeoff tap boot bend offset transition reducer")


def _alike(one: _Named, kind: str) -> bool:
    """ "takeoff straight tap": one fitting called by two names."""
    return any(family in one.kind and family in kind for family in _FAMILIES) and one.loose


def _ends_clause(tokens: list[Token], i: int) -> bool:
    """Whether a clause ends at a place, so that the word before it describes what came before."""
    return i >= len(tokens) or tokens[i].kind == "sym" or tokens[i].text in _GOES_ON


_GOES_ON: Final = words("and or then plus but vaned unvaned ones in on at with")


def _counted(named: list[_Named]) -> dict[str, int] | None:
    """How many of each kind; None if those told apart don't add up."""
    found: dict[str, int] = {}
    for one in named:
        told = sum(n for _, n in one.shapes)
        left = one.count
        if one.shapes and (one.of_them or one.loose):
            left = one.count - told if one.counted or one.of_them else 0
            if left < 0 or (left and not one.of_them):
                return None
        for kind, n in ((one.kind, left), *one.shapes):
            found[kind] = found.get(kind, 0) + n
    return found


def _singular(word: str) -> str:
    if word in ("offs", "vanes", "pants", "turning", "radius"):
        return {"offs": "off"}.get(word, word)
    if word.endswith(("ches", "xes")):
        return word[:-2]
    if word.endswith("ies"):
        return word[:-3] + "y"
    return word[:-1] if len(word) > 2 and word.endswith("s") and not word.endswith("ss") else word


def _words(tokens: list[Token]) -> list[Token]:
    """Words and numbers; "90s" and "45's" lose their ending, "take-off" its dash."""
    found: list[Token] = []
    for token in tokens:
        if token.kind == "sym" and token.text in "-.'\"":
            continue
        ending = token.text in ("s", "'s", "degree", "degrees", "deg", "deg's")
        if ending and found and found[-1].kind == "num":
            continue
        found.append(token)
    return found


def _phrase_at(tokens: list[Token], i: int) -> tuple[str, str, int] | None:
    table = fitting_phrases()
    for n in (7, 6, 5, 4, 3, 2, 1):
        part = tokens[i : i + n]
        if len(part) < n:
            continue
        singular = tuple(_singular(t.text) if t.kind == "word" else f"{t.value:g}" for t in part)
        plain = tuple(t.text if t.kind == "word" else f"{t.value:g}" for t in part)
        for key in (plain, singular):
            if key in table:
                return (*table[key], i + n)
    return None


def _counts_next(tokens: list[Token], i: int, after: int) -> bool:
    """ "5 elbows" isn't a fitting named "5", but "90 elbow" is one."""
    token = tokens[i]
    return token.kind == "num" and after == i + 1 and token.value not in (45.0, 90.0)


def _ask() -> AskBack:
    return AskBack(
        "Which fittings, and how many of each? Such as: 2 square elbows, a takeoff, a boot.",
        (),
        AskKind.MISSING_PART,
    )


def _ask_for_others(denied: list[str]) -> AskBack:
    """Some fittings are denied and none is named: of the others nothing is known."""
    return AskBack(
        f"No {denied[0]}: and what else, such as a takeoff and a boot? “none” if nothing.",
        (),
        AskKind.MISSING_PART,
    )
