"""Requests to the program that stand where an answer is expected.

A request is a key phrase and nothing but filler around it, so "next to the furnace" and "the
return drops back 3 feet" stay answers. The longest key phrase wins ("what's the question" repeats,
"what's the point" asks why).
"""

from __future__ import annotations

import re
from functools import cache, lru_cache
from typing import Final

from intake.reading.not_requests import told_not_asked
from intake.reading.questions import ASKS, asked_about
from intake.reading.request_forms import formed
from intake.reading.request_words import (
    ALIAS,
    ANSWERS,
    FILLER,
    GUESSED,
    KEYS,
    NOISE,
    SEEING,
    THINGS,
    WEAK,
)
from intake.reading.result import Command, CommandName

__all__ = ["as_command"]

_YES_NO: Final = frozenset(("yes", "no", "yeah", "yep", "yup", "nope", "nah"))
_LONGEST_WORDS: Final = 14
_DIGIT: Final = re.compile(r"[0-9]")
_ONE: Final = re.compile(r"(?<=this|that|last|next) 1\b(?![.x/'\"])")
_WORD: Final = re.compile(r"[a-z]+(?:'[a-z]+)*")


@cache
def _by_phrase() -> dict[tuple[str, ...], CommandName]:
    table: dict[tuple[str, ...], CommandName] = {}
    for name, phrases in KEYS.items():
        for phrase in phrases.split("|"):
            key = tuple(word for word in phrase.split() if word not in NOISE)
            table.setdefault(key, name)
    return table


@cache
def _lengths_by_first() -> dict[str, tuple[int, ...]]:
    """How many words the phrases have that begin with a word."""
    lengths: dict[str, set[int]] = {}
    for phrase in _by_phrase():
        if phrase:
            lengths.setdefault(phrase[0], set()).add(len(phrase))
    return {word: tuple(sorted(found)) for word, found in lengths.items()}


def _phrases_in(words: list[str]) -> list[tuple[int, int]]:
    """Where a phrase can stand, as its first place and the one past it: the longest first."""
    by_first = _lengths_by_first()
    last = len(words)
    found = [(i, i + n) for i, w in enumerate(words) for n in by_first.get(w, ()) if i + n <= last]
    return sorted(found, key=lambda place: (place[0] - place[1], words[place[0]] in WEAK))


def as_command(text: str, field: str, *, strong: bool = False) -> Command | None:
    """The request that a normalised text is, or None if it is no request.

    Args:
        text: Normalised.
        field: The kind of the open question.
        strong: A word that is also an answer's ("end", "back") asks for nothing by itself.

    >>> as_command("next one please", "length").name.value
    'skip'
    >>> as_command("next to the furnace", "length") is None
    True
    """
    if " 1" in text:
        text = _ONE.sub(" one", text)
    if _DIGIT.search(text) or (not text.isascii() and any(map(str.isdigit, text))):
        return None
    words = [ALIAS.get(word, word) for word in _WORD.findall(text)]
    if words and ((words[0] == "y" and 1 < len(words) <= 8) or words[0].rstrip("y") == "wh"):
        words[0] = "why"
    words = [word for word in _respelt(words) if word not in NOISE]
    if not words or len(words) > _LONGEST_WORDS:
        return None
    if field in ("yes_no", "choice", "coil_state") and " ".join(words) in ANSWERS:
        return None
    table = _by_phrase()
    if field == "yes_no" and len(words) > 1 and {words[0], words[-1]} & _YES_NO:
        return None
    form = formed(" ".join(words)) if field != "text" else None
    for i, end in _phrases_in(words):
        if form is not None and end == i + 1:
            return Command(form)
        name = table.get(tuple(words[i:end]))
        if name is None:
            continue
        if end == i + 1 and words[i] in WEAK and (strong or len(words) > _MOST_AROUND_WEAK):
            continue
        asked_for = _is_filler(words[:i], name) and _is_filler(words[end:], name)
        if not asked_for or told_not_asked(words[:i], words[i:end], words[end:], name):
            continue
        if _is_whole(words, words[:i] + words[end:], name):
            return Command(name)
    if form is not None:
        return Command(form)
    if field != "text" and words[0] in ASKS and (asks := asked_about(" ".join(words))):
        return Command(asks)
    asked = _WHAT_IS.fullmatch(" ".join(words))
    if asked is not None and field != "text":
        return Command(CommandName.HELP, fact_words=asked["what"])
    return None


def _is_filler(words: list[str], name: CommandName) -> bool:
    """Whether words beside a key phrase say nothing else, or the same once more."""
    table = _by_phrase()
    i = 0
    while i < len(words):
        if words[i] in FILLER or table.get((words[i],)) is name:
            i += 1
        elif table.get(tuple(words[i : i + 2])) is name:
            i += 2
        elif table.get(tuple(words[i : i + 3])) is name:
            i += 3
        else:
            return False
    return True


_WHAT_IS: Final = re.compile(
    r"(?:(?:and|so|ok|um|wait|uh|hey|sorry|now|hang on|hold on|huh|but) )*"
    r"(?:what(?:'s| is| are| do you mean by)|define|explain"
    r"|how do you mean) (?:an? |the )?(?P<what>[a-z' ]{2,40})"
)

_MOST_AROUND_WEAK: Final = 5


def _respelt(words: list[str]) -> list[str]:
    """Key words put right in a text of few words ("undoo")."""
    if len(words) > 5:
        return words
    known = _known_words()
    words = [
        f"{w}g" if w not in known and w[-2:] == "in" and f"{w}g" in known else w for w in words
    ]
    return [w if w in known or len(w) < 4 else _nearest(w) for w in words]


@cache
def _known_words() -> frozenset[str]:
    from intake.reading.plain_words import PLAIN_WORDS
    from intake.reading.vocabulary import vocabulary_words

    keys = {word for phrase in _by_phrase() for word in phrase}
    return frozenset(keys) | FILLER | PLAIN_WORDS | vocabulary_words()


@lru_cache(maxsize=512)
def _nearest(word: str) -> str:
    # rapidfuzz is imported here: it costs 25 ms, and most answers hold no unknown word.
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    near = process.extract(word, GUESSED, scorer=OSA.distance, score_cutoff=1, limit=2)
    return str(near[0][0]) if len(near) == 1 else word


def _is_whole(words: list[str], rest: list[str], name: CommandName) -> bool:
    """Guards against filler that makes an answer of the phrase."""
    if name is CommandName.HELP and "stuck" in words and words[0] in THINGS:
        return False
    if name is CommandName.QUIT and "end" in words and set(words) & SEEING:
        return False
    return not (
        words[0] in ("next", "back") and "to" in words[1:2] and "the" in rest and len(rest) > 3
    )
