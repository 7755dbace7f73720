"""Corrections of what was said before: "my bad, 17 not 11", "make that 22"."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.contrasts import Contrast, called_wrong, contrasted, wavering
from intake.reading.correction_words import (
    ANSWERING,
    FACT,
    MARKER,
    NOT_OLD,
    OLD_NEW,
    ONLY_BREATH,
    OWNED_UP,
    PATTERNS,
    SWAPPED,
    TAIL,
    WAS_ROLE,
)
from intake.reading.figures import figures_in
from intake.reading.named_facts import field_of
from intake.reading.plain_talk import is_plain
from intake.reading.restated import Restated, restated
from intake.reading.result import Command, CommandName, Previous
from intake.reading.value_words import Reads, bare_value
from intake.reading.valueless import nothing_new
from intake.reading.words import words

__all__ = ["correction", "in_place", "taken_back"]

_TOLD_BEFORE: Final = re.compile(
    r"(?<=\w) (?:that )?i (?:gave you|gave|told you|put in|put down|put|entered|typed(?: in)?"
    r"|said|wrote"
    r"(?: down)?|had)(?: (?:before|earlier|first|a while ago|a minute ago|last|just now))*"
    r"(?= (?:should|was|is|needs|ought)\b)"
)
"""When another fact was told ("the airflow I gave you before should be ...")."""
_FACT_WORDS: Final = words(
    """
    filter trunk return supply drop plenum coil static grille length elevation duct main branch
    furnace ac heat blower tons tonnage year capacity input output airflow cfm temperature rise
    efficiency afue size material register count run riser basement upstairs downstairs first
    width height depth ductwork returns branches address town house hallway
    """
)
_DIGIT: Final = re.compile(
    r"\d|\b(?:(?<!last )(?<!that )(?<!this )(?<!the )(?<!other )(?<!right )one|two|three|four|five"
    r"|six|seven|eight|nine|ten|eleven|twelve|thirteen"
    r"|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty"
    r"|sixty|seventy|eighty|ninety|hundred|point|half|quarter)\b"
)
_SPACES: Final = re.compile(r"\s+")


_CONTRAST: Final = re.compile(
    r"^[^,;]*\b(?:supposed to|should|ought to|meant to)\b.*\bbut\b.*(?:\d|n'?t\b|\bnot\b)"
)
"""What should be, and what is instead ("supposed to be 20x8 but measures 18x8")."""


_NONE_OF_IT: Final = re.compile(
    r"^(?:there(?:'?s| is) |it has |we have |has )?no (?:[a-z]+ )?(?:trunks?|returns?|ducts?"
    r"|duct ?work|drops?|grilles?|grills?|registers?|vents?|filters?|branch(?:es)?"
    r"|plenum|cooling|furnace|strips?|gauge|liner|insulation|wrap|dampers?|coil"
    r"|table|basement|attic|crawl ?space)\b"
    r"(?! (?:is|was|are|were|should)\b)"
)
"""What there is none of; "no" takes nothing back there ("no return trunk, just a 20x30 grille")."""


def correction(
    line: str,
    field: str,
    previous: Previous | None,
    typed: str,
    reads: Reads,
) -> Command | None:
    """The correction that a normalised text is, or None.

    Args:
        line: Normalised.
        field: The kind of the open question.
        previous: The last stored answer, or None.
        typed: The text as typed, from which the new value is taken where it stands there as is.
        reads: What a field reads in a text; tells a corrected word ("flex, not tin") from chat.

    >>> before = Previous("length", "11")
    >>> correction("my bad, 17 not 11", "length", before, "", lambda f, t: None).value_text
    '17'
    """
    if previous is None and field != "command" and is_plain(line):
        return None
    if len(line) > 160 or _CONTRAST.match(line) or _NONE_OF_IT.match(line):
        return None
    body = OWNED_UP.sub("", MARKER.sub("", line)).strip()
    marked = body != line and ONLY_BREATH.match(line[: len(line) - len(body)]) is None
    before = body
    if "i " in body and (without := _TOLD_BEFORE.sub("", body)) != body:
        body = without
    elif previous is not None and _FOR_OLD.search(line) and (told := _told(previous)):
        turned = contrasted(line, previous, field, reads, told)
        if turned is not None and told in line:
            return _commanded(turned, typed)
    if previous is not None and body == before:
        swapped = SWAPPED.search(line) is not None
        anew = restated(body, previous, reads, marked=marked or swapped)
        if anew is not None and _meant_for_it(anew, body, field, reads):
            if both := wavering(anew.value, previous.field, reads) or wavering(
                line, previous.field, reads, twice=True
            ):
                return _commanded(Contrast(both), typed)
            if anew.old is not None and (full := _told_whole(line, anew.value, previous, reads)):
                return Command(CommandName.CORRECT, _as_typed(full, typed))
            value = bare_value(anew.value, previous.field, reads)
            return Command(CommandName.CORRECT, _as_typed(value, typed), None, anew.old)
    if SWAPPED.search(line):
        return Command(CommandName.CORRECT, None, "swap")
    found = _by_pattern(body, marked, field, previous) or _by_word(
        body, marked, field, previous, reads
    )
    if found is None:
        return _by_contrast(line, previous, field, reads, typed)
    new, fact = found
    if new is not None and _DENIED.match(new) and (previous is None or previous.field != "yes_no"):
        return _by_contrast(line, previous, field, reads, typed)
    if new is None:
        return Command(CommandName.CORRECT, None, fact)
    new = new.strip(" ,!;:").rstrip(".- ")
    if previous is not None and (both := wavering(new, previous.field, reads)):
        return _commanded(Contrast(both, fact), typed)
    kinds = (*field_of(fact or ""), *((previous.field,) if previous is not None else ()))
    kind = next((kind for kind in kinds if reads(kind, new) is not None), None)
    if kind is None:
        contrast = _by_contrast(line, previous, field, reads, typed)
        if contrast is not None and (contrast.value_text or "\n").lower() in new:
            return contrast
    if kind is None and not any(figure.text != "one" for figure in figures_in(new)):
        return None
    bare = bare_value(new, kind or (kinds[0] if kinds else field), reads)
    return Command(CommandName.CORRECT, _as_typed(bare, typed) or None, fact)


def _by_contrast(
    line: str, previous: Previous | None, field: str, reads: Reads, typed: str
) -> Command | None:
    if previous is None and field != "command":
        return None
    told = _told(previous)
    found = contrasted(line, previous, field, reads, told)
    if found is None and field == "command":
        found = nothing_new(line, told)
    return _commanded(found, typed) if found is not None else None


def taken_back(
    line: str, field: str, previous: Previous | None, typed: str, reads: Reads
) -> Command | None:
    """The correction that a normalised text is which the open question can't take, or None.

    Here a milder word is enough than where it could be an answer: "temp should be 58", or no new
    value at all ("that number's wrong").
    """
    if previous is None:
        return None
    found = None
    if called_wrong(line):
        found = contrasted(line, previous, "command", reads, _told(previous))
        if found is not None and previous.field in (field, "yes_no"):
            found = found if found.fact is not None and field not in field_of(found.fact) else None
    found = found or nothing_new(line, _told(previous))
    return _commanded(found, typed) if found is not None else None


def _told(previous: Previous | None) -> str | None:
    from intake.reading.clean import normalise

    return normalise(previous.text) if previous is not None else None


def _commanded(found: Contrast, typed: str) -> Command:
    values = tuple(_as_typed(value, typed) or value for value in found.values)
    if len(values) == 1:
        return Command(CommandName.CORRECT, values[0], found.fact)
    told = " or ".join(values) or None
    return Command(CommandName.CORRECT, told, found.fact, either=values)


def _told_whole(line: str, part: str, previous: Previous, reads: Reads) -> str | None:
    """The clause that tells the whole new answer beside the part of it that was wrong."""
    for clause in line.split(", "):
        figures = len(figures_in(clause))
        whole = figures > len(figures_in(part)) and figures == len(figures_in(previous.text))
        if whole and reads(previous.field, clause) and not _DENYING.search(clause):
            return clause.strip(" .")
    return None


def _meant_for_it(anew: Restated, body: str, field: str, reads: Reads) -> bool:
    """Whether a new value is meant for the last answer, not for another or the open question."""
    if anew.old is not None:
        return True
    if _split_fact(body)[1]:
        return False
    return anew.sure or field == "command" or not reads(field, anew.value)


def _as_typed(value: str | None, typed: str) -> str | None:
    """A normalised value as it stands in the text, where it stands there as is."""
    if not value or value not in typed.lower():
        return value
    place = typed.lower().index(value)
    return typed[place : place + len(value)]


def _by_word(
    body: str, marked: bool, field: str, previous: Previous | None, reads: Reads
) -> tuple[str, None] | None:
    """A correction by a word: "no its yes", "flex not tin", "i meant no"."""
    if previous is None:
        return None
    for pattern in (OLD_NEW, NOT_OLD):
        match = pattern.match(body)
        if match and _same(match["old"], previous.text) and reads(previous.field, match["new"]):
            return _clean_new(match["new"]), None
        if match and marked and previous.field == "duct" and reads("material", match["new"]):
            return _clean_new(match["new"]), None
    for pattern in PATTERNS[:4]:
        match = pattern.match(body)
        if match and reads(previous.field, _clean_new(match["new"])):
            return _clean_new(match["new"]), None
    new = _clean_new(body)
    if not marked and reads(field, body):
        return None
    if (marked or new != body) and reads(previous.field, new) and not _same(new, previous.text):
        return new, None
    return None


def _denies(body: str) -> bool:
    """Whether a text holds some piece of every way to say what a value isn't."""
    return _DENYING.search(body) is not None


_DENIED: Final = re.compile(r"(?:not|isn'?t|wasn'?t|never)\b")
_FOR_OLD: Final = re.compile(
    r"\b(?:change|switch|swap|trade|flip|turn) (?:the|that|my|it)\b.* (?:to|for|with|into) "
)
_DENYING: Final = re.compile(r"no|n't|nt\b|instead|rather")


def _same(one: str, two: str) -> bool:
    from intake.reading.clean import normalise

    def squeezed(text: str) -> str:
        return _SPACES.sub("", normalise(text)).strip(".")

    return (
        squeezed(one) == squeezed(two)
        or squeezed(one).startswith(squeezed(two))
        or squeezed(two).startswith(squeezed(one))
    )


def _by_pattern(
    body: str, marked: bool, field: str, previous: Previous | None
) -> tuple[str | None, str | None] | None:
    told = previous.text if previous is not None else None
    standing = previous is not None or field == "command"
    for pattern in (OLD_NEW, NOT_OLD) if _denies(body) else ():
        match = pattern.match(body)
        if match and _DIGIT.search(match["old"]) and _DIGIT.search(match["new"]):
            named = standing and _split_fact(match["new"])[1] is not None
            if (told is not None and _same(match["old"], told)) or (marked and standing) or named:
                return _split_fact(match["new"])
    for pattern in PATTERNS:
        if not standing and pattern in ANSWERING:
            continue
        match = pattern.match(body)
        if match and _DIGIT.search(match["new"]):
            old = match.groupdict().get("old")
            if old and not _DIGIT.search(old) and not set(old.split()) & _FACT_WORDS:
                continue
            new = _clean_new(match["new"])
            if old and not _DIGIT.search(old):
                return new, old
            return _split_fact(new)
    if standing:
        tail = TAIL.match(body)
        if tail and _DIGIT.search(tail["new"]):
            return _split_fact(_clean_new(tail["new"]))
    match = WAS_ROLE.match(body)
    if (
        match
        and set(match["fact"].split()) & _FACT_WORDS
        and standing
        and not _DIGIT.search(body.replace(" one", ""))
    ):
        return None, match["fact"].strip()
    if marked and standing and _DIGIT.search(body):
        return _split_fact(_clean_new(body))
    return None


_BARE: Final = re.compile(
    r"(?<![\d.,x/-])\d+(?:\.\d+)?(?![\d.,x/-])(?! ?(?:in|inch|inches|ft|foot|feet|mm|cm|m|cfm|pa"
    r"|btu\w*|tons?|k|%|percent|by|x)\b|['\"])"
)


def in_place(earlier: str, value: str) -> str | None:
    """An earlier answer with its only bare number replaced by a new one, or None.

    >>> in_place("9 six inch", "10")
    '10 six inch'
    >>> in_place("20x8, 30 ft", "10") is None
    True
    """
    told = list(_BARE.finditer(earlier.lower()))
    if len(told) != 1 or not re.fullmatch(r"\d+(?:\.\d+)?", value.strip()):
        return None
    if earlier.strip() == told[0][0]:
        return None
    return earlier[: told[0].start()] + value.strip() + earlier[told[0].end() :]


_THAT_ONE: Final = re.compile(r"\b[a-z]+ one$")
"""What is no figure ("not the bedroom one")."""
_MEANT: Final = re.compile(r"[,.;]\s*i (?:meant|mean)(?: to (?:say|type|put))? (?P<new>\S.*)$")


def _clean_new(new: str) -> str:
    """The new value without the old one ("22 instead of 20") and without courtesies."""
    meant = _MEANT.search(new)
    if meant is not None:
        new = meant["new"]
    match = NOT_OLD.match(new)
    if match and _DIGIT.search(match["new"]) and _DIGIT.search(_THAT_ONE.sub("", match["old"])):
        new = match["new"]
    new = re.sub(
        r",? (?:on|for|with) (?:that|the|my) (?:last|previous) (?:one|answer|number)$", "", new
    )
    new = re.sub(
        r"(?:,? ?(?:actually|really|please|pls|thanks|thank you|sorry|my bad|instead"
        r"|not whatever i said|my mistake|oops))+[.!]?$",
        "",
        new,
    )
    return re.sub(
        r"^(?:(?:the |that |my )?(?:last|previous|other) (?:one|answer|number) (?:is|was|should"
        r" be)|meant"
        r"|(?:the )?one before(?: that)? (?:to|is|was|should be)|it'?s|its|it is|it was|that was"
        r"|that'?s|to"
        r"|a|that is|make that|make it|i meant"
        r"|should be|it should be|more like|the number is)\s+",
        "",
        new,
    )


def _split_fact(new: str) -> tuple[str, str | None]:
    """ "the filter is 20x25" names another fact."""
    new = _clean_new(new)
    match = FACT.match(new)
    if match and set(match["fact"].split()) & _FACT_WORDS:
        return match["new"], match["fact"].strip()
    return new, None
