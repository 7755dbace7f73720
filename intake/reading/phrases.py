"""Words to meanings: spelling first, then the longest phrase of the vocabulary."""

from __future__ import annotations

from functools import cache, lru_cache
from typing import Final

from intake.reading.lexer import Token
from intake.reading.number_words import NUMBER_WORDS
from intake.reading.plain_words import PLAIN_WORDS
from intake.reading.units import unit_words
from intake.reading.vocabulary import meanings, vocabulary_words
from intake.reading.words import in_order

__all__ = ["is_known", "longest_phrase", "misspelt_unit", "spelt_right", "without_possessive"]

_SHORTEST_GUESSED = 4
"""Words of fewer letters must match exactly."""

_LONG = 8
"""From this many letters two slips are forgiven, below it one."""


_GUESSED: Final = in_order(
    """
    round oval rectangular square diameter spiral galvanized galvanised galv metal steel flex
    flexible accordion ductboard fiberboard fibreboard fiberglass fibreglass board lined liner
    lining internally panned joist joists stud cavity wall snap lock pipe pipes aluminum
    aluminium plastic wrapped insulated insulation return supply total external static input
    output efficiency efficient inches degrees percent pascals celsius fahrenheit height width
    filters grilles cubic minute degree approximately uninsulated unlined between inside
    outside discharge plenum register trunk circular sheetmetal circumference difference
    temperature minus negative positive rise drop split delta merv cooling heating three four
    five seven eight nine eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen
    nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand point
    quarter tenths today
    """
)
"""Words worth guessing from a slip; a shorter list makes fewer wrong guesses."""


@cache
def _known() -> frozenset[str]:
    return vocabulary_words() | unit_words() | NUMBER_WORDS | PLAIN_WORDS


def is_known(word: str) -> bool:
    """Whether a word is of the vocabulary or an everyday one."""
    return word in _known()


def without_possessive(word: str) -> str:
    """A word of the vocabulary without its "'s" ("board's an inch thick"), or the word itself."""
    stem = word.removesuffix("'s")
    bare = stem != word and len(stem) > 3 and word not in _known()
    return stem if bare and stem in vocabulary_words() else word


@lru_cache(maxsize=4096)
def spelt_right(word: str) -> str:
    """The word of the table that this one is a slip of, or the word itself.

    A tie between words of different meaning leaves the word as it is.
    """
    if len(word) < _SHORTEST_GUESSED or len(word) > 20 or word in _known():
        return word
    # rapidfuzz is imported here: it costs 25 ms, and most answers hold no unknown word.
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    cutoff = 1 if len(word) < _LONG else 2
    near = process.extract(word, _GUESSED, scorer=OSA.distance, score_cutoff=cutoff, limit=4)
    if not near:
        return word
    best = [target for target, distance, _ in near if distance == near[0][1]]
    senses = {_sense(target) for target in best}
    return best[0] if len(senses) == 1 else _UNREADABLE + word if _numbers(best) else word


_UNREADABLE: Final = "?"
"""Put before a word that may be one number or another ("fity" is fifty, not forty; "sety"?)."""


def _sense(word: str) -> tuple[str, ...]:
    return (word,) if word in NUMBER_WORDS else meanings().get((word,), ("",))[:1]


def _numbers(found: list[str]) -> bool:
    return any(word in NUMBER_WORDS for word in found)


_GUESSED_UNITS: Final = {
    "feet": "ft", "foot": "ft", "inch": "in", "inches": "in", "cfm": "cfm", "tons": "ton",
    "btuh": "btuh", "btus": "btuh", "percent": "pct", "degrees": "deg", "pascals": "pa",
    "pascal": "pa", "celsius": "degc", "fahrenheit": "degf", "meters": "m", "metres": "m",
    "meter": "m", "yards": "yd", "kilowatts": "kw", "afue": "afue", "merv": "merv",
    "iwc": "inwc", "inwc": "inwc",
}  # fmt: skip
"""Units that are guessed from a slip of one letter right behind a number."""


@lru_cache(maxsize=1024)
def misspelt_unit(word: str) -> str:
    """The unit that a word right behind a number is a slip of, or "".

    >>> misspelt_unit("cmf"), misspelt_unit("feeet"), misspelt_unit("fans")
    ('cfm', 'ft', '')
    """
    if len(word) < 3 or len(word) > 12 or word in _known():
        return ""
    # rapidfuzz is imported here: it costs 25 ms, and most answers hold no unknown word.
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    near = process.extract(
        word, tuple(_GUESSED_UNITS), scorer=OSA.distance, score_cutoff=1, limit=4
    )
    units = {_GUESSED_UNITS[target] for target, _, _ in near}
    return units.pop() if len(units) == 1 else ""


@cache
def _longest_by_first() -> dict[str, int]:
    longest: dict[str, int] = {}
    for phrase in meanings():
        longest[phrase[0]] = max(longest.get(phrase[0], 0), len(phrase))
    return longest


def longest_phrase(tokens: list[Token], i: int) -> tuple[tuple[str, ...], int]:
    """The meanings of the longest phrase at i and the place after it; ((), i) if none."""
    first = tokens[i].text
    limit = _longest_by_first().get(first, 0)
    if limit < 2:
        return (meanings()[first,], i + 1) if limit else ((), i)
    words: list[str] = []
    ends: list[int] = []
    j = i
    while j < len(tokens) and len(words) < limit:
        token = tokens[j]
        if token.text in ".-" and words and j + 1 < len(tokens) and tokens[j + 1].kind == "word":
            j += 1
            continue
        if token.kind not in ("word", "num") and token.text != "*" and token.text != "/":
            break
        typed = token.kind == "num" and not token.spelled
        if typed and (not words or token.text != str(int(token.value))):
            break
        words.append(token.text)
        j += 1
        ends.append(j)
    table = meanings()
    for n in range(len(words), 0, -1):
        found = table.get(tuple(words[:n]))
        if found:
            return found, ends[n - 1]
    return (), i
