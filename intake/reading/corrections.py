"""Corrections of what was said before: "my bad, 17 not 11", "make that 22"."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from intake.reading.plain_talk import is_plain
from intake.reading.restated import Restated, restated
from intake.reading.result import Command, CommandName, Previous
from intake.reading.words import words

__all__ = ["correction", "in_place"]

_VALUE: Final = r"(?P<new>[^,;]*?\S)"
_MARKER: Final = re.compile(
    r"^(?:no,? ?)?(?:oh,? )?(?:(?:sorry|oops|whoops|woops|my bad|my mistake|correction"
    r"|wait|hold on|hang on|hold up|actually|ope|ah|crap|shoot|scratch that|strike that"
    r"|dang|darn|my apologies|apologies|pardon|er+|um+|uh|oh|no|never ?mind that|typo"
    r"|fat fingered(?: it| that)?|ugh|oh no|forgive me|excuse me|i'm sorry|im sorry|nope"
    r"|i was wrong|i misread(?: it| that)?|misread(?: it| that)?|wrong number|i messed up"
    r"|messed that up|goofed|i goofed|mistyped|i mistyped|misspoke|i misspoke|i lied|mb"
    r"|forget that|i take that back|disregard that|wrong|that was wrong|that's wrong"
    r"|not right|that's not right|my error|i screwed up|screwed up|brain fart|nah|negative"
    r"|i take it back|i had that wrong|got that wrong|i got that wrong|had it wrong"
    r"|that wasn't right|no no|whoops a daisy|woopsie|oopsie|mistake"
    r"|that was a mistake|scrap that|scratch that|(?:my )?fat fingers?"
    r"|(?:i )?fat[- ]?fingered(?: it| that| that one)?"
    r"|slip of the (?:finger|thumb)|wrong key|i hit the wrong key|typing error)(?:[\s,:;!]"
    r"|[.-](?!\.?\d))+)+"
)
_OWNED_UP: Final = re.compile(
    r"^[a-z' ]{0,40}\b(?:wrong|mistake|fix|correct\w*|typo|mis(?:typed|read|spoke|heard)"
    r"|messed|screwed|goof\w*|flubbed|botched|fingers?|fingered)\b[a-z' ]{0,20}"
    r"(?:[,:;]|[.-](?!\.?\d))\s*"
)
_PATTERNS: Final = (
    re.compile(r"^(?:please |can you )?change (?P<old>[-+.]?[0-9]\S*) (?:to|into) (?P<new>.+)$"),
    re.compile(
        r"^(?!(?:set|put|fix|switch|adjust) (?:at|to|for|on|in|by|from|\d))"
        r"(?:let'?s )?(?:please )?(?:can you )?(?:make|change|correct|fix|update|set"
        r"|switch|edit|amend|adjust|revise|alter|put)(?: (?:that|it|this|the last one"
        r"|my last answer|the last answer|last one|my answer|my last one|the previous one"
        r"|that one|that last one|the last))?(?: (?:to|be|down|as|back to|into|read"
        r"|say))* (?P<new>.+)$"
    ),
    re.compile(
        r"^(?:i|it|that|this|the last one|the last answer|last one|that last one"
        r"|my last answer|that one)?(?: (?:was|is))? ?(?:should|shoulda|should've|shouldve"
        r"|supposed to|ought to|needs to|must|was supposed to|was meant to)(?: (?:be"
        r"|(?:have |of )?(?:been|said|put|typed|written|entered|read)|say))+ (?P<new>.+)$"
    ),
    re.compile(
        r"^(?:i )?(?:meant to (?:say|type|put|write|enter)|mean to say|meant|mean"
        r"|was going to say|wanted to say) (?P<new>.+)$"
    ),
    re.compile(
        r"^(?P<old>\S+) (?:should|shoulda|was supposed to|ought to)(?: (?:be|have been|say"
        r"|read))+ (?P<new>.+)$"
    ),
    re.compile(
        r"^(?:i )?(?:said|put|typed|wrote|entered|told you|gave you|had)(?: (?:it was"
        r"|it is|down))? (?P<old>\S+(?: \S+)?),? ?(?:but|and|when|though|,)* ?(?:it'?s"
        r"|it is|it was|i meant|meant|that'?s|its|should be|it should be|it'?s really"
        r"|it'?s actually|really|actually|the real (?:one|number) is|i mean"
        r"|should have been) (?P<new>.+)$"
    ),
    re.compile(
        r"^(?:it'?s|its|it is|it was|that'?s|thats|that was|was) (?:actually|really) (?P<new>.+)$"
    ),
    re.compile(
        r"^(?P<old>\S+) (?:was|is|isn'?t|wasn'?t) (?:wrong|right|a typo|off|bad"
        r"|incorrect),? ?(?:it'?s|its|should be|make it|it was|it should be"
        r"|i meant)? (?P<new>.+)$"
    ),
    re.compile(
        r"^(?:that|the) (?P<old>[-+.]?\d[\d.]*) (?:was|should be|should have been|needs to be|is"
        r" (?:really|actually|supposed to be)) (?:a |an |really |actually |supposed to be )*"
        r"(?P<new>[-+.]?\d.*)$"
    ),
    re.compile(
        r"^(?:on |for )?(?:the |my |that )?(?:last|previous) (?:one|answer|number),? (?:i meant"
        r"|should be|should have been|was supposed to be|is|was) (?P<new>.+)$"
    ),
    re.compile(r"^change (?P<old>.+?) to (?P<new>.+)$"),
    re.compile(r"^replace (?P<old>.+?) with (?P<new>.+)$"),
)
_ANSWERING: Final = (_PATTERNS[2], _PATTERNS[6])
"""Patterns that, where nothing was answered before, are answers ("must be 18x8")."""

_NOT_OLD: Final = re.compile(
    r"^(?P<new>.+?),? ?\b(?:not|instead of|rather than|and not"
    r"|no)\b (?P<old>[^,]+?)(?:,? ?(?:sorry|my bad|my mistake|oops|my apologies|typo"
    r"|whoops))?$"
)
_OLD_NEW: Final = re.compile(
    r"^(?:not|it'?s not|its not|it isn'?t|wasn'?t|it wasn'?t"
    r"|that'?s not) (?P<old>[^,;]+?)(?:[,;] ?(?:but |it'?s |its |it was |make it "
    r"|rather )?| but (?:rather )?| it'?s | - | its | it was | make it | i meant "
    r"| rather )(?P<new>.+)$"
)
_TAIL: Final = re.compile(
    r"^(?P<new>.+?)[\s,.-]+(?:sorry|my bad|my mistake|oops|whoops|typo|i mean|i meant"
    r"|correction|my apologies|(?:i )?misread(?: it| that)?|(?:i )?mistyped(?: it| that)?"
    r"|(?:i )?misspoke|(?:my )?fat fingers?|(?:i )?fat[- ]?fingered(?: it| that)?|i goofed)[.!]?$"
)
_WAS_ROLE: Final = re.compile(
    r"^(?:that|the last one|last one|that one|it|that number"
    r"|that reading)(?: (?:last )?(?:one|number|reading|answer))?(?:'s| was"
    r"| is)(?: actually| really)? (?:for |on )?(?:the "
    r"|my )?(?P<fact>[a-z][a-z -]{2,40}?)(?: one| side| number"
    r"| reading)?(?:,? not (?:the )?[a-z ]+)?$"
)
_SWAPPED: Final = re.compile(
    r"\b(?:other way (?:a)?round|swap (?:those|them|that|the two)|switch (?:those|them"
    r"|the two)|reverse (?:those|them|that)|flip (?:those|them|that)|got (?:those|them"
    r"|that) (?:backwards?|mixed up|reversed|switched)|(?:those|they"
    r"|them) are (?:backwards?|swapped|reversed)|i had (?:those|them|it) backwards?"
    r"|vice versa|had (?:those|them) (?:backwards?|reversed|switched|mixed up))\b"
)
_FACT: Final = re.compile(
    r"^(?:the |my |that )?(?P<fact>(?:(?!was\b|is\b|should\b|are\b)[a-z]+(?![a-z]) ?){1,4}?)(?:'s"
    r"| is| was| should be| should have been| are|:)? (?:actually |really |supposed to be "
    r"|meant to be )?(?P<new>(?:[-+.]?\d|[a-z]+teen|[a-z]+ty\b|one|two|three|four|five|six"
    r"|seven|eight|nine|ten|eleven|twelve).*)$"
)
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
    reads: Callable[[str, str], bool],
) -> Command | None:
    """The correction that a normalised text is, or None.

    Args:
        line: Normalised.
        field: The kind of the open question.
        previous: The last stored answer, or None.
        typed: The text as typed, from which the new value is taken where it stands there as is.
        reads: Whether a field reads a text; tells a corrected word ("flex, not tin") from chat.

    >>> before = Previous("length", "11")
    >>> correction("my bad, 17 not 11", "length", before, "", lambda f, t: False).value_text
    '17'
    """
    if previous is None and field != "command" and is_plain(line):
        return None
    if len(line) > 160 or _CONTRAST.match(line) or _NONE_OF_IT.match(line):
        return None
    body = _OWNED_UP.sub("", _MARKER.sub("", line)).strip()
    marked = body != line
    if "i " in body and (without := _TOLD_BEFORE.sub("", body)) != body:
        body = without
    elif previous is not None:
        swapped = _SWAPPED.search(line) is not None
        anew = restated(body, previous, reads, marked=marked or swapped)
        if anew is not None and _meant_for_it(anew, body, field, reads):
            return Command(CommandName.CORRECT, _as_typed(anew.value, typed), None, anew.old)
    if _SWAPPED.search(line):
        return Command(CommandName.CORRECT, None, "swap")
    found = _by_pattern(body, marked, field, previous) or _by_word(body, marked, previous, reads)
    if found is None:
        return None
    value, fact = found
    value = value.strip(" ,!;:").rstrip(".- ") if value is not None else None
    return Command(CommandName.CORRECT, _as_typed(value, typed) or None, fact)


def _meant_for_it(anew: Restated, body: str, field: str, reads: Callable[[str, str], bool]) -> bool:
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
    body: str, marked: bool, previous: Previous | None, reads: Callable[[str, str], bool]
) -> tuple[str, None] | None:
    """A correction by a word: "no its yes", "flex not tin", "i meant no"."""
    if previous is None:
        return None
    for pattern in (_OLD_NEW, _NOT_OLD):
        match = pattern.match(body)
        if match and _same(match["old"], previous.text) and reads(previous.field, match["new"]):
            return _clean_new(match["new"]), None
        if match and marked and previous.field == "duct" and reads("material", match["new"]):
            return _clean_new(match["new"]), None
    for pattern in _PATTERNS[:4]:
        match = pattern.match(body)
        if match and reads(previous.field, _clean_new(match["new"])):
            return _clean_new(match["new"]), None
    new = _clean_new(body)
    if (marked or new != body) and reads(previous.field, new) and not _same(new, previous.text):
        return new, None
    return None


def _denies(body: str) -> bool:
    """Whether a text holds some piece of every way to say what a value isn't."""
    return _DENYING.search(body) is not None


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
    for pattern in (_OLD_NEW, _NOT_OLD) if _denies(body) else ():
        match = pattern.match(body)
        if match and _DIGIT.search(match["old"]) and _DIGIT.search(match["new"]):
            named = standing and _split_fact(match["new"])[1] is not None
            if (told is not None and _same(match["old"], told)) or (marked and standing) or named:
                return _split_fact(match["new"])
    for pattern in _PATTERNS:
        if not standing and pattern in _ANSWERING:
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
        tail = _TAIL.match(body)
        if tail and _DIGIT.search(tail["new"]):
            return _split_fact(_clean_new(tail["new"]))
    match = _WAS_ROLE.match(body)
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
    match = _NOT_OLD.match(new)
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
    match = _FACT.match(new)
    if match and set(match["fact"].split()) & _FACT_WORDS:
        return match["new"], match["fact"].strip()
    return new, None
