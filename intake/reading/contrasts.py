"""A correction by contrast: the value that was told, and the one that stands now.

"Swap the 42 for 24", "i said 22 but the tape reads 26", "it's some dirt, the coil isn't plugged":
what was answered before is in the text and is taken back, or the thing meant is named; whatever
else reads as its value is what stands now. Where two values are left, the person is asked.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

from intake.reading.figures import figures_in
from intake.reading.named_facts import fact_named, field_of
from intake.reading.result import Previous
from intake.reading.value_words import Reads, Values, bare_value

__all__ = ["Contrast", "called_wrong", "contrasted", "wavering"]


@dataclass(frozen=True, slots=True)
class Contrast:
    """What is put in the place of what.

    Attributes:
        values: The new value alone; two, if the person wavers between them; none, if it isn't said.
        fact: The thing named, if one is.
    """

    values: tuple[str, ...]
    fact: str | None = None


_TAKES_BACK: Final = (
    r"(?:not|isn'?t|wasn'?t|ain'?t|aren'?t|never|instead of|rather than|in place of|as opposed"
    r" to|forget|disregard|scratch|ignore|lose|drop|delete|erase|nix|kill|strike|swap|replace"
    r"|change|switch|trade|correct|fix|said|say|told you|told ya|gave you|gave|put|put in|put"
    r" down|typed|typed in|wrote|wrote down|entered|had|called it|called|have|says|from|over"
    r"|sent)"
)
_ARTICLE: Final = (
    r"(?: (?:the|that|a|an|it was|it's|its|it|was|you|like|my|old|it as|in|down|it is))*"
)
_WRONG: Final = (
    r"(?:'s| is| was)? (?:wrong|incorrect|off|not right|bad|a typo|typo|a mistake|backwards?"
    r"|the old one|was a typo|was wrong|from the old (?:one|house|unit))\b"
)
_MARKS: Final = re.compile(
    r"\b(?:right|real|true|really|was|wrong|mistak\w*|typo|mis-?(?:read|typed|heard|spoke"
    r"|measured|counted)|meant|should|shoulda|should'?ve|supposed|actually|sorry|oops|whoops"
    r"|correct\w*|instead|change|chang(?:ed|ing)|make|put|update|replace|fix|switch|swap"
    r"|swapped|redo|edit|set|mark|re-?(?:check\w*|measur\w*|tap\w*|read)|again|second look"
    r"|turns out|looked|in fact|said|told|gave|lied|not|isn'?t|wasn'?t|ain'?t|scratch|left off"
    r"|forgot|missed|dropped|transposed|flip\w*|backwards?|reversed|off|second thought|after"
    r" all|rather|better make|call it|cut that|hold on|hang on|wait|no|nope|bad|my fault|revise"
    r"|amend|adjust|messed|screwed|goofed|fat|botched|disregard|forget|ignore|drop|lose|nix"
    r"|kill|delete|trade|mean|add|zero|digit|decimal|units?|wrote|typed|than)\b"
)
_CUT: Final = re.compile(
    r"[,;:!?]+(?=\s|$)|\.+(?=\s|$)|\s-+\s|(?:^|\s)(?:but|and|so|not|isn'?t|wasn'?t|instead of"
    r"|rather than|in place of|as opposed to|instead|than|turns out|looking again|looked again"
    r"|it should be|should be|should have been|shoulda been|should read|needs to be|to be|i"
    r" meant|meant|i think|i said|said|i told you|i gave you|i put|i typed|like i said|actually"
    r"|really|it'?s|its|that'?s|thats|it is|it was|make it|make that|make|put|for|to|with|into"
    r"|from|reads|says|read|is|was|sorry|because|cuz|now|after|when|though|with)(?=\s|$)|(?:^"
    r"|\s)(?:not|instead of|disregard|forget|scratch|swap|replace|change|switch|trade|ignore"
    r"|lose|no)(?=\s)"
)
_EITHER: Final = re.compile(
    r"(?:either |could be |maybe |might be |it'?s |its |is |was |be |between |like )*(?P<one>[^"
    r" ,]+(?: [^ ,]+)?) (?:or|and) (?:maybe |possibly |even )?(?P<two>[^ ,]+(?: [^ ,]+)?)"
)
_WAVERS: Final = re.compile(r"\bor\b|\beither\b|\bbetween\b.*\band\b")
_LONGEST: Final = 160


def contrasted(
    line: str, previous: Previous | None, field: str, reads: Reads, told: str | None
) -> Contrast | None:
    """The correction that a normalised text is by contrast, or None.

    Args:
        line: Normalised.
        previous: The last stored answer, or None.
        field: The kind of the open question, "command" where only requests are wanted.
        reads: What a field reads in a text as a plain answer.
        told: The normalised text of the last answer, or None.
    """
    if len(line) > _LONGEST or (field != "command" and previous is None):
        return None
    if _MARKS.search(line) is None:
        return None
    named = fact_named(line)
    if named is not None and _meant_for_it(line, named["fact"], previous, field, reads):
        found = _of_named(line, named, previous, field, reads)
        if found is not None:
            return found
    if previous is None or told is None:
        return None
    taken_back = _takes_back(line, told) or (field == "command" and f" was {told}" in line)
    if not taken_back and field != "command":
        return None
    name = reads(previous.field, told) is None and not figures_in(told)
    if not taken_back and _STRONG.search(line) is None:
        return None
    if name and (taken_back or _WRONG_NAME.search(line)):
        return _of_name(line, told)
    found = _of_field(line, previous.field, told if taken_back else None, field, reads, None)
    if found is None and taken_back:
        return _of_figure(line, told)
    return found


def _meant_for_it(
    line: str, fact: str, previous: Previous | None, field: str, reads: Reads
) -> bool:
    """Whether a text that names a thing corrects it, though another question is open."""
    if reads(field, line) is not None:
        return False
    if field == "command":
        return _STRONG.search(line) is not None or _NOT_THAT.search(line) is not None
    same = previous is not None and previous.field in field_of(fact)
    return _OWNS_UP.search(line) is not None or (same and _SHOULD.search(line) is not None)


_STRONG: Final = re.compile(
    r"^(?:(?:h+m+|um+|uh+|oh|ah|er+|well|no|wait|ope|eh|but|and),? )*(?:no|nope|nah|naw)[,.] "
    r"|^yeah,? no,? |\b(?:right|real|correct|actual|true) (?:one|number|size|value|answer"
    r"|figure|reading) (?:is|was)\b|\breally\b|\b(?:wrong|mistak\w*|typo|mis-?(?:read|typed"
    r"|heard|spoke|measured|counted)|meant|mean|should|shoulda|should'?ve|supposed|actually"
    r"|sorry|oops|whoops|correct\w*|instead|change|changing|make (?:it|that)|put|update|replace"
    r"|fix|switch|swap|swapped|redo|edit|set (?:it|that|the)|mark (?:it|that|the)"
    r"|re-?(?:check\w*|measur\w*|taped|read)|again|second (?:look|thought)|turns out|looked|in"
    r" fact|i (?:said|told|gave|put|typed|wrote|had)|lied|scratch|left off|forgot|missed"
    r"|transposed|flipped|backwards?|reversed|after all|rather|call it|hold on|hang on|wait|my"
    r" fault|revise|amend|adjust|messed|screwed|goofed|fat|botched|disregard|ignore|add a|extra"
    r" zero|not the|like i said|off by)\b"
)
"""What owns up to an error, orders a change or takes a breath before one."""
_NOT_THAT: Final = re.compile(
    r"(?:\bnot|\binstead of|\brather than) (?:an? |the )?(?=[-+.]?\d|psc|ecm|flex|metal|tin"
    r"|clean|plugged|dirty|yes|no\b|duct ?board|constant|variable|lined|galv)|\bis ?n'?t \w+, "
)
"""A value that is denied beside another one."""
_SHOULD: Final = re.compile(
    r"\b(?:instead|replace|go back and|off by)\b|\bright (?:number|size|one|value) is\b"
    r"|\bshould (?:be|read)\b|\bsupposed to be\b|\bactually\b"
)
_OWNS_UP: Final = re.compile(
    r"\b(?:wrong|mistak\w*|typo|mis-?(?:read|typed|heard|spoke|measured|counted)|meant|shoulda"
    r"|should(?:'ve| have| of) (?:said|put|been)|correction|change|update|i (?:said|told you"
    r"|gave you|put|typed|wrote)|oops|whoops|my bad|second thought|looked again|re-?(?:checked"
    r"|measured))\b"
)
"""What owns up to an error, or orders a change."""


def called_wrong(line: str) -> bool:
    """Whether a normalised text owns up to an error, or says what should be instead.

    >>> called_wrong("temp should be 58"), called_wrong("it was 58")
    (True, False)
    """
    return _OWNS_UP.search(line) is not None or _SHOULD.search(line) is not None


def _takes_back(line: str, told: str) -> bool:
    """Whether the value that was told stands in a text as what no longer stands."""
    old = re.escape(told).replace(r"\ ", " ?").replace("_", "[ _]")
    near = rf"(?<![\w.]){old}(?![\w.]*\d)"
    pattern = rf"\b{_TAKES_BACK}{_ARTICLE} {near}|{near}{_WRONG}"
    if re.search(pattern, line):
        return True
    figures = figures_in(told)
    if len(figures) != 1:
        return False
    bare = rf"(?<![\w.x]){re.escape(figures[0].text)}(?![\w.]*\d| ?x)"
    return re.search(rf"\b{_TAKES_BACK}{_ARTICLE} {bare}|{bare}{_WRONG}", line) is not None


def _of_named(
    line: str, named: re.Match[str], previous: Previous | None, field: str, reads: Reads
) -> Contrast | None:
    """The new value of a thing that is named with it."""
    fact = named["fact"]
    kinds = field_of(fact)
    if field in kinds:
        return None
    same = previous is not None and previous.field in kinds
    if same and previous is not None:
        kinds = (previous.field, *(kind for kind in kinds if kind != previous.field))
    rest = f"{line[: named.start()]} , {line[named.end() :]}"
    rest = re.sub(r"(?<= , )(?:'s|s)? ?(?:size|number|reading|one)?\b", "", rest).strip(" ,")
    for kind in kinds:
        old = previous.text.lower() if previous is not None and previous.field == kind else None
        found = _of_field(rest, kind, old, field, reads, fact)
        if found is not None:
            return found
    return None


def _of_field(
    line: str, kind: str, told: str | None, field: str, reads: Reads, fact: str | None
) -> Contrast | None:
    """What a text puts in the place of what was told, read as a kind of answer."""
    before = reads(kind, told.replace("_", " ")) if told is not None else None
    new: dict[str, Values] = {}
    denied: list[Values] = []
    place = 0
    for cut in [*_CUT.finditer(line), None]:
        part = line[place : cut.start() if cut else len(line)].strip(" ,")
        ahead = line[:place]
        place = cut.end() if cut else place
        if not part:
            continue
        if (both := wavering(part, kind, reads)) is not None:
            values = tuple(v for v in both if reads(kind, v) != before)
            return Contrast(values, fact)
        value = reads(kind, part)
        if value is None:
            continue
        bare = bare_value(part, kind, reads)
        if value == before or _DENIES.search(ahead) or _WRONG_AFTER.match(line[place:]):
            denied.append(value)
        elif all(value != other for other in new.values()):
            new[bare] = value
    new = {bare: value for bare, value in new.items() if value not in denied}
    if len(new) == 1:
        return Contrast((next(iter(new)),), fact)
    return None


def _of_name(line: str, told: str) -> Contrast | None:
    """The name that a text puts in the place of one that was told ("not Salem, Bend")."""
    left = []
    for part in _NAME_CUT.split(line):
        name = _NAME_LEAD.sub("", part.strip(" ,.!"), count=1)
        if name and told not in name and not _MARKS.search(name) and not figures_in(name):
            left.append(name)
    if len(left) == 1 and len(left[0].split()) <= _LONGEST_NAME:
        return Contrast((left[0],))
    return None


def _of_figure(line: str, told: str) -> Contrast | None:
    """The one figure beside the one that was told, where neither is a whole answer by itself."""
    old = {figure.value for figure in figures_in(told)}
    new = [f for f in figures_in(line) if f.value not in old and not _NO_FIGURE.match(line, f.end)]
    if len(old) != 1 or len({figure.value for figure in new}) != 1:
        return None
    unit = _UNIT.match(line, new[0].end)
    return Contrast((line[new[0].start : unit.end() if unit else new[0].end],))


_NO_FIGURE: Final = re.compile(
    r" (?:of|more|times|days?|years?|minutes?|hours?|guys|people)\b|st\b|nd\b|th\b"
)
_UNIT: Final = re.compile(
    r"(?:%| ?(?:inch(?:es)?|in|ft|foot|feet|tons?|cfm|percent|degrees|k|round)\b|['\"])"
)
_WRONG_NAME: Final = re.compile(
    r"\b(?:wrong (?:town|city|place|address|house|job)|i meant|should be|make (?:it|that))\b"
)
_LONGEST_NAME: Final = 3
_NAME_CUT: Final = re.compile(
    r"[,;:!?]+(?=\s|$)|\.+(?=\s|$)|\s-+\s|\s(?:but|to|with|into|sorry|instead of|rather than"
    r"|instead|not)(?=\s|$)|^not\s"
)
_NAME_LEAD: Final = re.compile(
    r"^(?:(?:it|that|this|we|they|he|she|i|the (?:job|house|place|home|town|address"
    r"|site))(?:'?s|'re| is| are| was)?(?: actually| really)?(?: (?:in|at|near|up in|down in"
    r"|over in|out in|called))? |in |at |make it |i meant |meant |should be |should have been "
    r"|its )"
)
_DENIES: Final = re.compile(
    r"(?:\bnot|n't|\b(?:is|was|are|ai|did|does)nt|\binstead of|\brather than|\bin place of|\bas"
    r" opposed to|\bforget|\bdisregard|\bscratch|\bignore|\blose|\bswap|\breplace|\bchange"
    r"|\bswitch|\btrade|\bfrom|\bthan|(?<!shoulda )(?<!should have )(?<!should've )\b(?:i|we|he"
    r"|she|they) (?:had )?(?:just )?(?:said|told you|gave you|put|typed|wrote|entered|had)(?:"
    r" (?:it was|in|down|it's|it as))?)(?: (?:the|a|an|that|it was|was))*\s*$"
)
_WRONG_AFTER: Final = re.compile(r"^(?:a )?(?:wrong|incorrect|off|typo|mistake|not right|bad)\b")


def wavering(text: str, kind: str, reads: Reads, *, twice: bool = False) -> tuple[str, str] | None:
    """The two values between which somebody wavers, or None.

    Args:
        text: Normalised.
        kind: What the values are of.
        reads: What a field reads in a text.
        twice: Only a doubt said of each ("maybe 12, maybe 14") counts.

    >>> wavering("either 3 or 3.5 tons", "capacity", lambda f, t: {})
    ('3', '3.5 tons')
    """
    maybe = _MAYBE_TWICE.search(text)
    if maybe is not None:
        return maybe["one"], maybe["two"].rstrip(".")
    if (
        twice
        or _WAVERS.search(text) is None
        or (reads(kind, text) is not None and "either" not in text)
    ):
        return None
    return _either(text, kind, reads)


_MAYBE_TWICE: Final = re.compile(
    r"\b(?:maybe|could be|might be|possibly|may be|(?:may|might|could) have been)(?: it'?s| it"
    r" was| was| a)? (?P<one>[^ ,]*\d[^ ,]*),? (?:or )?(?:maybe|could be|might be|possibly|may"
    r" be|(?:may|might|could) have been)(?: it'?s| it was| was| a)? (?P<two>[^ ,]*\d[^ ,]*)"
)


def _either(part: str, kind: str, reads: Reads) -> tuple[str, str] | None:
    match = _EITHER.search(part)
    if match is None or re.match(r"(?:so|more|less)\b", match["two"]):
        return None
    one, two = match["one"], match["two"]
    for first in (one, one.split()[-1]):
        for second in (two, two.split()[0]):
            if _alike(first, second, kind, reads):
                return first, second
    return None


def _alike(one: str, two: str, kind: str, reads: Reads) -> bool:
    read = (reads(kind, one) is not None, reads(kind, two) is not None)
    figured = len(figures_in(one)) == 1 == len(figures_in(two))
    return all(read) or (figured and (any(read) or kind == "duct"))
