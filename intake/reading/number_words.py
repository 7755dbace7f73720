"""The words of numbers, their plurals and their slips."""

from __future__ import annotations

from typing import Final

__all__ = [
    "DIGIT_WORDS",
    "NUMBER_WORDS",
    "ONES",
    "PARTS",
    "PLURALS",
    "SCALES",
    "SLIPS",
    "TENS",
    "in_plain_form",
]

ONES: Final = {
    word: value
    for value, word in enumerate(
        [
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen",
        ]
    )
}
TENS: Final = {
    word: 10 * (value + 2)
    for value, word in enumerate(
        ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"]
    )
}
PLURALS: Final = {
    **{f"{word}s": word for word in ONES if word not in ("zero", "one", "six")},
    **{f"{word[:-1]}ies": word for word in TENS},
    "sixes": "six",
}
"""Numbers that are several ("sevens") or a decade ("seventies")."""

_MISSPELT: Final = {
    "forty": "fourty fourtey",
    "ninety": "ninty",
    "eighty": "eigthy",
    "eighth": "eigth",
    "fifty": "fivty fiffty fify fiddy",
    "twelve": "twelv tewlve",
    "twenty": "twentey tweny twenny",
    "fourteen": "fourten forteen",
    "sixteen": "sixten",
    "seven": "sevin",
    "three": "thre",
    "thirty": "thurty thrity",
    "hundred": "hunderd hundered hunnert hunnerd hunerd hundrd",
    "thousand": "thousnd thousend thous",
    "zero": "nought naught",
}
SLIPS: Final = {
    wrong: right for right, wrongs in _MISSPELT.items() for wrong in wrongs.split()
} | PLURALS
"""Slips and plurals, and the number word that each is."""

PARTS: Final = {
    **dict.fromkeys(("half", "halves"), 2),
    **dict.fromkeys(("third", "thirds"), 3),
    **dict.fromkeys(("quarter", "quarters", "quater"), 4),
    **dict.fromkeys(("eighth", "eighths"), 8),
    **dict.fromkeys(("tenth", "tenths"), 10),
    **dict.fromkeys(("sixteenth", "sixteenths"), 16),
    **dict.fromkeys(("hundredth", "hundredths"), 100),
    **dict.fromkeys(("thousandths",), 1000),
}
"""Words of fractions, and into how many parts each divides."""

SCALES: Final = {"hundred": 100, "thousand": 1000, "thou": 1000, "grand": 1000}
DIGIT_WORDS: Final = {word: value for word, value in ONES.items() if value < 10} | {
    "oh": 0,
    "o": 0,
}

NUMBER_WORDS: Final = frozenset([*ONES, *TENS, *PARTS, *SCALES, *SLIPS, "point", "dozen", "oh"])
"""Words that are never misspelt trade words."""


def in_plain_form(word: str) -> str:
    """A number word without its slip or plural, or the word itself.

    >>> in_plain_form("sevens"), in_plain_form("fourty"), in_plain_form("duct")
    ('seven', 'forty', 'duct')
    """
    return SLIPS.get(word, word)
