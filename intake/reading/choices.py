"""One of several named choices: material, blower motor, coil, or any list the caller hands in."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import cache
from typing import Final

from intake.reading.choice_plain import in_plain_words
from intake.reading.choice_standing import about_the_coil, of_another_part
from intake.reading.choice_words import BLOWER_WORDS, COIL_WORDS
from intake.reading.echo import echo
from intake.reading.materials import MATERIALS, material_of
from intake.reading.numbers import vague
from intake.reading.plain_words import PLAIN_WORDS
from intake.reading.result import Accepted, AskBack, AskKind, Reading
from intake.reading.scan import Scan
from intake.reading.words import words

__all__ = [
    "read_blower_type",
    "read_choice",
    "read_coil_state",
    "read_material",
]

_NOT: Final = words(
    """not no zero isn't isnt ain't aint never without hardly non don't doesn't wasn't nor
    can't cant cannot couldn't wouldn't aren't weren't nothing"""
)
_SPLIT: Final = re.compile(r"[a-z0-9]+(?:'[a-z]+)?")
_CLAUSES: Final = re.compile(r"[a-z0-9]+(?:'[a-z]+)?|[,;.](?! ?(?:or|nor)\b)")


class _Table:
    """Phrases that name choices, with what reading a text against them needs.

    Attributes:
        keys: The words of each phrase, and the choice that it names.
        longest: Words of the longest phrase.
        words: Every word of the phrases.
    """

    def __init__(self, keys: Mapping[tuple[str, ...], str]) -> None:
        self.keys: Final = keys
        self.longest: Final = max(map(len, keys), default=1)
        self.words: Final = frozenset(word for phrase in keys for word in phrase)
        self._targets: Final = tuple(sorted(w for w in self.words if len(w) >= 4 and w.isalpha()))

    def respelt(self, words: list[str]) -> list[str]:
        """Words put right against the words of the table."""
        return [word if word in self.words else self._right(word) for word in words]

    def _right(self, word: str) -> str:
        if len(word) < 4 or len(word) > 20 or word in PLAIN_WORDS or not word.isalpha():
            return word
        # rapidfuzz is imported here: it costs 25 ms, and most answers hold no unknown word.
        from rapidfuzz import process
        from rapidfuzz.distance import OSA

        cutoff = 1 if len(word) < 8 else 2
        near = process.extract(
            word, self._targets, scorer=OSA.distance, score_cutoff=cutoff, limit=2
        )
        if not near or (len(near) > 1 and near[0][1] == near[1][1]):
            return word
        return str(near[0][0])


@cache
def _phrases(table_name: str) -> _Table:
    table = {"blower": BLOWER_WORDS, "coil": COIL_WORDS}[table_name]
    return _Table({tuple(p.split()): key for key, said in table.items() for p in said.split("|")})


@cache
def _affirmative(table_name: str) -> _Table:
    """The phrases without those that name a choice by denying another ("not variable")."""
    keys = _phrases(table_name).keys
    return _Table({phrase: key for phrase, key in keys.items() if phrase[0] not in _NOT})


@cache
def _strong(table_name: str) -> _Table:
    """The phrases without the single words that tell something only in a short answer."""
    keys = _phrases(table_name).keys
    weak = {(word,) for word in _WEAK}
    return _Table({phrase: key for phrase, key in keys.items() if phrase not in weak})


def _matches(words: list[str], table: _Table) -> tuple[list[str], list[str]]:
    """The keys said and the keys denied, longest phrase first."""
    said: list[str] = []
    denied: list[str] = []
    i = 0
    free = 0  # where the negation of a phrase before ("not clean") has ended
    while i < len(words):
        for n in range(min(table.longest, len(words) - i) if words[i] in table.words else 0, 0, -1):
            key = table.keys.get(tuple(words[i : i + n]))
            if key is not None:
                no = _denied(words[max(free, i - 6) : i]) or words[max(0, i - 2) : i] in _FAR_FROM
                (denied if no else said).append(key)
                if words[i] in _NOT and words[i + n : i + n + 1] not in _ON:
                    free = i + n
                i += n - 1
                break
        i += 1
    return said, denied


_ON: Final = (["or"], ["nor"])


_TURNS: Final = words("but just only its it's though instead , ; . more rather")
_FAR_FROM: Final = (["far", "from"], ["anything", "but"], ["nowhere", "near"])


def _denied(before: list[str]) -> bool:
    """Whether the words before say no, and nothing after that "no" turns."""
    nos = [k for k, w in enumerate(before) if w in _NOT]
    turns = [k for k, w in enumerate(before) if w in _TURNS]
    return bool(nos) and (not turns or nos[-1] > turns[-1])


def _words(text: str) -> list[str]:
    return _SPLIT.findall(text)


def _said(text: str, table: _Table) -> tuple[list[str], list[str]]:
    """The keys said and denied in a text; a denial ends with its clause.

    A phrase whose words are parted by commas ("black, blue, red wires") is found without them.
    """
    split = table.respelt(_CLAUSES.findall(in_plain_words(text)))
    said, denied = _matches(split, table)
    if said or denied:
        return said, denied
    return _matches([w for w in split if w not in ",;."], table)


def _ask(field: str, keys: Sequence[str]) -> AskBack:
    names = " or ".join(echo(field, {"choice": key}) for key in keys)
    return AskBack(
        f"Which is it: {names}?", tuple({"choice": key} for key in keys), AskKind.AMBIGUOUS_WORD
    )


def _picked(field: str, keys: Sequence[str], allowed: Sequence[str]) -> Reading | None:
    fit = [key for key in dict.fromkeys(keys) if not allowed or key in allowed]
    if len(fit) == 1:
        return Accepted({"choice": fit[0]})
    return _ask(field, fit) if fit else None


def read_material(said: Scan, choices: Sequence[str]) -> Reading | None:
    """Read a duct material; None if the text names none."""
    keys = material_of(said.items)
    if keys == ("foreign",) and _CANT_TELL.match(said.text):
        return None
    if keys == ("foreign",):
        return AskBack(
            "That is none of the usual ones. Is it sheet metal, flex, duct board, lined metal,"
            " a joist or stud bay, aluminum or PVC?",
            (),
            AskKind.AMBIGUOUS_WORD,
        )
    keys = tuple(k for k in keys if k in MATERIALS)
    if keys:
        if said.says("alt.or", "material.mixed") and len(keys) < 2 and said.says("alt.or"):
            return _ask("material", keys)
        return _picked("material", keys, choices)
    if _CANT_TELL.match(said.text):
        return None
    if said.says("material.") and (said.words() & _NOT or "anything but" in said.text):
        denied = {
            m.split(".")[1] for i in said.items for m in i.meanings if m.startswith("material.")
        }
        return _ask("material", [m for m in MATERIALS[:4] if m not in denied])
    if said.says("material.mixed"):
        return _ask("material", MATERIALS[:4])
    if said.says("material.unlined"):
        return (
            _picked("material", ("galvanized",), choices)
            if "metal" in said.text
            else _ask("material", ("galvanized", "flex"))
        )
    if said.says("material.wrapped", "material.shiny"):
        return _ask("material", ("galvanized", "flex", "duct_board"))
    if vague(said, "size") or said.says(
        "shape.roundish", "shape.round", "shape.rect", "shape.square"
    ):
        return _ask("material", ("galvanized", "flex"))
    return None


_CANT_TELL: Final = re.compile(
    r"^(?:i )?(?:can'?t|couldn'?t|cannot|no way to|hard to|impossible to|don'?t|no)"
    r" (?:really |even )?(?:tell|say|know|idea|clue|see (?:it|that|them|in|from))\b"
)


def read_blower_type(text: str, choices: Sequence[str]) -> Reading | None:
    """Read the kind of blower motor; None if the text names none."""
    named, not_these = _said(text, _affirmative("blower"))
    named = [k for k in dict.fromkeys(named) if k not in ("ecm", "direct") and k not in not_these]
    if not_these and len(named) == 1 and named != ["other"]:
        return _picked("blower_type", named, choices)
    said, denied = _said(text, _phrases("blower"))
    keys = [k for k in dict.fromkeys(said) if k not in ("ecm", "direct")]
    ecm = "ecm" in said or any(k.startswith("ecm") for k in denied)
    if "psc" in keys and len(keys) == 1 and "ecm" in said:
        words = _words(text)
        return (
            Accepted({"choice": "psc"})
            if "non" in words or "not" in words or "isn't" in words
            else _ask("blower_type", ("psc", "ecm_constant_torque"))
        )
    keys = [k for k in keys if k not in denied]
    if len(keys) > 1 and ecm:  # "not variable, the other ecm": other, among these kinds
        keys = [k for k in keys if k != "other"]
    if keys:
        return _picked("blower_type", keys, choices)
    if ecm:
        left = [k for k in ("ecm_constant_torque", "ecm_variable") if k not in denied]
        if "ecm" in denied and "ecm" not in said:
            return _picked("blower_type", ("psc", "other"), choices)
        return _picked("blower_type", left, choices)
    if "direct" in said:
        return _picked("blower_type", ("psc", "ecm_constant_torque", "ecm_variable"), choices)
    if denied:
        left = [
            k for k in ("psc", "ecm_constant_torque", "ecm_variable", "other") if k not in denied
        ]
        return _ask("blower_type", left)
    return None


_MORE_THAN_DIRTY: Final = re.compile(
    r"\b(?:isn'?t|not|ain'?t) (?:even |just )?dirty[, ]+(?=(?:it'?s|it is|but|more like) )"
)
_OK_FIRST: Final = re.compile(r"(?:ok|okay|alright|all right|fine|good)\b")


def read_coil_state(text: str, choices: Sequence[str]) -> Reading | None:
    """Read how a coil looks; None if the text doesn't say."""
    text = about_the_coil(text)
    if "dirty" in text:
        text = _MORE_THAN_DIRTY.sub("", text)
    said, denied = _said(text, _phrases("coil"))
    if said and of_another_part(text):
        return AskBack(
            "That is another part. And the indoor coil: clean, some dirt, or plugged?",
            (),
            AskKind.WRONG_QUANTITY,
        )
    clear = [k for k in dict.fromkeys(said) if k in ("clean", "some_dirt", "plugged")]
    vague = [k for k in dict.fromkeys(said) if k in ("dirty", "ok", "ice", "none")]
    if not said and "clean" in denied and {"plugged", "dirty"} & set(denied):
        return _picked("coil_state", ("some_dirt",), choices)
    if set(said) == {"dirty", "ok"} and not _OK_FIRST.match(text):
        return _picked("coil_state", ("some_dirt",), choices)
    words = _words(text)
    if clear and len(words) > _FEW_WORDS and not _telling(words):
        return _ask("coil_state", clear) if len(clear) > 1 else None
    if len(clear) == 1 and not any(k in ("ice", "none") for k in vague):
        if (clear[0] == "clean" and "dirty" in vague) or (
            clear[0] == "plugged"
            and re.search(
                r"\b(?:almost|nearly|half|third|quarter|part|one side|bottom|top|partly"
                r"|partially|not quite|getting|starting)\b",
                text,
            )
        ):
            return _ask("coil_state", ("some_dirt", "plugged"))
        return _picked("coil_state", clear, choices)
    if set(clear) == {"plugged", "some_dirt"} and _stuff_after(text):
        return _picked("coil_state", ["plugged"], choices)
    if len(clear) > 1:
        return _picked("coil_state", clear, choices)
    if "dirty" in vague:
        left = [k for k in ("some_dirt", "plugged") if k not in denied]
        return _picked("coil_state", left, choices)
    if "none" in vague or "ice" in vague:
        return AskBack(
            "Between its fins, is it clean, is there some dirt, or is it plugged?",
            (),
            AskKind.AMBIGUOUS_WORD,
        )
    if vague or denied:
        left = [k for k in ("clean", "some_dirt", "plugged") if k not in denied]
        return _picked("coil_state", left if denied else ("clean", "some_dirt"), choices)
    return None


_WEAK: Final = words(
    """light new some little bit fair average mild minor slight fresh clear perfect solid mint
    medium black"""
)
"""Words that say how a coil looks only in a short answer ("turn left at the light")."""

_FEW_WORDS: Final = 4


def _telling(words: list[str]) -> bool:
    """Whether a phrase is there that is no weak word."""
    said, denied = _matches(_phrases("coil").respelt(words), _strong("coil"))
    return bool(said or denied)


def _stuff_after(text: str) -> bool:
    """ "packed with lint": the second word only says with what."""
    return (
        re.search(
            r"\b(?:with|of|by|in)\b (?:\w+ )?(?:lint|dust|fuzz|hair|dirt|fur|grime|film)", text
        )
        is not None
    )


_ORDINALS: Final = {
    "first": 0,
    "second": 1,
    "third": 2,
    "fourth": 3,
    "last": -1,
    "former": 0,
    "latter": 1,
}
_TRIVIAL: Final = words(
    """
    a an the of or and to in on it is other none no not one kind like for same about with from at
    than
    """
)


def read_choice(text: str, choices: Sequence[str]) -> Reading | None:
    """Read one of any choices ("key" or "key=word|word"); None if the text fits none."""
    phrases: dict[tuple[str, ...], str] = {}
    keys: list[str] = []
    for entry in choices:
        key, _, synonyms = entry.partition("=")
        keys.append(key)
        for phrase in (key.replace("_", " "), *filter(None, synonyms.split("|"))):
            phrases[tuple(_words(phrase.lower()))] = key
    phrases.pop((), None)
    table = _Table(phrases)
    words = table.respelt(_words(text))
    said, denied = _said(text, table)
    found = [k for k in dict.fromkeys(said) if k not in denied]
    if not found:
        found = [k for k in _by_single_words(words, keys) if k not in denied]
    if not found and 1 <= len(words) <= 4:
        found = _by_place(words, keys)
    unused = [w for w in words if w[0].isdigit() and w not in table.words]
    if len(found) == 1 and unused and len(words) > 2:
        told = found[0].replace("_", " ")
        return AskBack(
            f"I read {told}, but what is the {unused[0]}?",
            ({"choice": found[0]},),
            AskKind.TWO_READINGS,
        )
    if len(found) == 1:
        return Accepted({"choice": found[0]})
    if found:
        return _ask("choice", found)
    left = [k for k in keys if k not in denied]
    if denied and len(left) == 1:
        return Accepted({"choice": left[0]})
    return _ask("choice", left) if denied else None


def _by_single_words(words: list[str], keys: list[str]) -> list[str]:
    """Keys of which one telling word was said, and not denied."""
    found = []
    for key in keys:
        telling = {w for w in key.split("_") if w not in _TRIVIAL and len(w) > 2}
        hits = [i for i, w in enumerate(words) if w in telling]
        if hits and not any(w in _NOT for w in words[max(0, hits[0] - 2) : hits[0]]):
            found.append(key)
    return found


def _by_place(words: list[str], keys: list[str]) -> list[str]:
    for word in words:
        if word in _ORDINALS and -len(keys) <= _ORDINALS[word] < len(keys):
            return [keys[_ORDINALS[word]]]
        if word.isdigit() and 1 <= int(word) <= len(keys) and len(words) <= 2:
            return [keys[int(word) - 1]]
    return []
