"""The new value of a correction in free words.

"Misread the gauge, it's .47", "got the digits backwards, should be 8500 ft", "1100, I wrote 1000
by mistake", "change that last one to a no": the excuse, the words of correcting and the value that
is taken back are taken off, clause by clause, and what is left has to read as an answer to the
question that was answered before.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

from intake.reading.figures import figures_in
from intake.reading.result import Previous
from intake.reading.value_words import Reads

__all__ = ["Restated", "looked_again", "owns_up", "replaced", "restated", "sets_anew"]


@dataclass(frozen=True, slots=True)
class Restated:
    """What is said anew.

    Attributes:
        value: The new value alone.
        old: The value that is taken back, if it is said.
        sure: Something was called wrong, or the earlier answer is meant by name; otherwise the
            text only says that it was looked at once more.
    """

    value: str
    old: str | None = None
    sure: bool = True


_LOOKED_AT: Final = (
    r"(?:read|measured|taped|looked at|was looking at|was reading|had|got|grabbed|hit|pressed"
    r"|pushed|wrote(?: down)?|gave you|picked|used|was on|was in|that was|this was|it was|counted"
    r"|checked|opened|entered|put(?: in| down)?|typed|on|off)"
)
_ERROR: Final = re.compile(
    r"\bmis-?(?:read|type|typed|heard|spoke|measured|counted|keyed|entered|took|remembered|quoted"
    r"|calculated|judged|wrote|understood|placed)\b|\btypos?\b|\bfat[- ]?finger\w*"
    r"|\b(?:stupid|dumb|damn|darn|tiny|sticky|this|my) (?:key ?board|phone|fingers?|thumbs?|gloves)"
    r"\b|\bautocorrect\w*(?: (?:got|bit) me)?"
    r"|\b(?:transposed|swapped|switched|flipped|reversed|mixed up|scrambled|jumbled|inverted"
    r"|crossed)"
    r"(?: up)? (?:the |my |some |two |those |a couple )?(?:digits?|numbers?|figures?|sides)\b"
    r"|\b(?:digits?|numbers?|figures?) (?:were |are |got |was |is )?(?:all )?(?:backwards?|reversed"
    r"|swapped|transposed|flipped|switched|mixed up|scrambled|jumbled|out of order|crossed)\b"
    r"|\b(?:left|dropped|missed|forgot|skipped|lost|added|put|typed|hit|stuck)(?: \w+){0,2}"
    r" (?:zero|0|digit|decimal(?: point)?|point|dot)(?: (?:off|out|in there|in|on|there))?\b"
    r"|\b(?:one|two|an?|extra|1) (?:extra )?(?:zeros?|zeroes|digits?|0s?|decimals?)"
    r" (?:too many|too few|short|off|extra)\b|\btoo many (?:zeros|zeroes|digits)\b"
    r"|\bdecimal(?: point)? (?:was |is )?(?:off|in the wrong (?:place|spot))\b"
    r"|\b(?:had|held|read|got|wrote|saw)(?: it| that| them| those| the [a-z]+| the [a-z]+ [a-z]+"
    r"| my [a-z]+)? (?:backwards?|upside ?down|sideways|wrong|mixed up)\b"
    rf"|\b{_LOOKED_AT}(?: at)? the wrong [a-z]+\b"
    r"|\b(?:by|my) mistake\b|\bmy (?:error|bad|fault)\b"
    r"|\b(?:that|it|i|which) (?:was|am|is|had it) (?:wrong|mistaken|incorrect|not right)\b"
    r"|\bi(?:'m| was) (?:wrong|mistaken|off)\b"
    r"|\b(?:goofed|messed up|screwed up|botched|flubbed|slipped up)\b|\bbrain fart\b"
)
"""How a value came to be wrong."""

_BLURTED: Final = re.compile(
    r"^(?:(?:oh|ah|aw|well|no|ok|and|gosh|good) )*(?:nuts|rats|doh|d'oh|shucks|argh|arg|ack|yikes"
    r"|jeez|geez|dammit|damn(?: it)?|dang it|darn it|crud|blast|bother|bah|whoa|heck|drat|nope|nah"
    r"|sorry(?: '?bout| about) (?:that|it)|sorry|apologies|oops|whoops)\b(?![' ]*(?:sure"
    r"|know))[ ,.!-]*"
)
_AGAIN: Final = re.compile(
    r"\bre-?(?:measured|checked|taped|counted|tested|read|ran|did)\b"
    r"|\b(?:measured|checked|looked|taped|counted|tested|read)(?: at)?(?: it"
    r"| that(?: last)?(?: one)?"
    r"| them| the [a-z]+)? (?:again|twice|over)\b|\bdouble[- ]checked\b|\blooked (?:it|that) up\b"
    r"|\b(?:second|closer|better|good|another) look\b|\bfound the (?:tag|label|plate|sticker"
    r"|book)\b"
    r"|\bwent back (?:and|to|up|down)\b"
)
"""That it was looked at once more; alone it doesn't tell whether an earlier answer is meant."""
_EARLIER: Final = re.compile(
    r"\b(?:that|the|my) (?:last|previous|earlier|prior|other) (?:one|answer|question|number|reading"
    r"|entry|thing)\b|\bthat one\b|\bfor that one\b|\bmy (?:last )?answer\b"
)
_ORDER: Final = re.compile(
    r"^(?:(?:so|and|then|please|pls|can you|could you|would you|go|just|go ahead and|you can"
    r"|lets|let's|better|gotta|need to|i need to) )*(?:fix|change|correct|update|amend|edit|redo"
    r"|strike|scratch|scrap|disregard|ignore|forget|kill|nix)"
    r" (?:that|it|this|the last one|that one|that last one|my answer|my last answer|that answer)"
    r"(?: (?:please|pls|for me|then|up|one))*$"
)
"""An order to change, with no value in it."""
_SET: Final = re.compile(
    r"^(?:(?:so|and|then|please|pls|can you|could you|go|just|actually|let's|lets|no|you can) )*"
    r"(?:change|make|switch|set|mark|flip|put|update|correct|fix|edit|amend|revise|turn|call|redo)"
    r" (?:(?:the |that |my )?(?:(?:last|previous|earlier|prior) )?(?:one|answer|question"
    r"|entry|number"
    r"|reading)|it|that|this)(?: before(?: that)?)?(?: (?:back|over))?"
    r"(?: (?:to|as|into|be|read|say|down as|down to|:))* (?:an? )?(?P<new>\S.*)$"
)
_PUT_FOR: Final = re.compile(
    r"^(?:(?:so|and|then|please|pls|can you|could you|go|just|actually|i'll|let's|no) )*"
    r"(?:put|enter|write|mark|use|give|say|type|make it|change it to|go with)(?: down| me down as)?"
    r" (?:an? )?(?P<new>\S.*?) (?:for|on|in|as) (?:that|the|my) (?:last|previous|earlier"
    r"|prior|other)"
    r" (?:one|answer|question|entry|number|reading|thing)\b"
)
_INSTEAD_OF: Final = re.compile(
    r"^(?P<new>\S.*?),? (?:and not|not|instead of|rather than|in place of|as opposed to)"
    r" (?:an? |the )?(?P<old>\S.*)$"
)
_NOT_IT: Final = re.compile(
    r"^(?:and |it'?s |its |that'?s |it is |it was |definitely |certainly )?(?:not|instead of|rather"
    r" than|isn'?t|wasn'?t|never|in place of) (?:an? |the )?(?P<old>\S.*)$"
)
_BEFORE: Final = (
    r"(?: (?:by mistake|by accident|before|earlier|first|at first|originally|accidentally|in error"
    r"|last time|instead|there|a minute ago|down|just now))*"
)
_WROTE_OLD: Final = re.compile(
    r"^(?:(?:i|we|he|she|they|helper|and|where|think i|must have|had) )*(?:just |accidentally )?"
    r"(?:wrote|put|typed|said|entered|had|gave you|gave|told you|keyed in|keyed|hit|called out"
    r"|called it|logged|punched in|have)(?: it was| it as| down| in| you)* (?:an? |the )?"
    rf"(?P<old>\S+(?: \S+){{0,3}}?){_BEFORE}$"
)
_SHOULD_BE: Final = re.compile(
    r"^(?:the|that) (?P<old>[a-z0-9.]+(?: (?:inch|ft|foot|feet))?) (?:should|was|is|needs|ought)"
    r"(?: (?:be|have been|supposed to be|really|actually|meant to be|to be|an?))* (?P<new>\S.*)$"
)
_CUT: Final = re.compile(
    r"[,;:!]+(?=\s|$)|\.+(?=\s|$)|\s-+\s"
    r"|\s(?:and|but|so|though|then)\s(?=(?:i |it|that|this|make|put|should|go|the |really\b"
    r"|actually"
    r"\b|not\b|its|change|fix|please|is\b|enter|use|we ))"
    r"|\s(?=(?:it'?s|should be|should read|should say|should've been|make (?:it|that)|i meant|meant"
    r"|that'?s|needs to be)\s)"
)
_LEAD: Final = re.compile(
    r"^(?:and|but|so|then|now|well|ok|oh|yeah|it'?s|it is|it was|it'?ll be|it reads|that'?s|that is"
    r"|(?:the|that|this|my|our)(?: last| other| first| new)? [a-z]+(?: [a-z]+)?(?:'s| is| was"
    r"| should| needs to)|they'?re|they are"
    r"|(?:i )?(?:should(?:'ve| have| of)|shoulda) (?:said|put|been|written|typed|read|entered)"
    r"|should(?:'ve)?|shoulda|have been|have|be|been|read"
    r"|say|supposed to|ought to|needs? to|must|make (?:it|that)|put|call it|mark it|set it|enter"
    r"|use|go with|it|down|to|i meant|i mean|we meant|meant|mean|to say|really|actually"
    r"|more like|closer"
    r" to|(?:the )?(?:real|right|actual|correct|new|true) (?:one|number|value|figure|reading|answer"
    r"|size)(?: is| was|'s)?|i (?:get|got|see|read)|is|was|reads|came (?:out |up )?(?:to|at|as)"
    r"|comes? (?:out )?to|just|please|only|um|uh|er)\s+"
)
_TAIL: Final = re.compile(
    r"(?:[ ,]+(?:sorry|my bad|my mistake|oops|please|pls|thanks|thank you|instead|actually|really"
    r"|though|then|now|for (?:that|the) (?:last )?(?:one|question)|by mistake|is right|is correct"
    r"|is what it is))+$"
)
_ARTICLE: Final = re.compile(r"^(?:an?|the)\s+")
_DIGITS: Final = re.compile(
    r"^(?:that'?s |thats |as in )?(?:(?:zero|oh|o|one|two|three|four|five|six|seven|eight"
    r"|nine|[0-9])"
    r"(?: |$)){2,}$"
)
_HINT: Final = re.compile(
    r"\bnot\b|instead|rather|n'?t\b|never|in place|opposed|wrote|\bput|typed|said|entered|\bhad\b"
    r"|gave|told|keyed|\bhit|call|logged|punched|mis|typo|finger|keyboard|phone|thumb|auto|digit"
    r"|number|figure|zero|decimal|\bpoint|\bdot\b|back|upside|wrong|error|bad\b|fault|goof|mess"
    r"|screw"
    r"|botch|flub|slip|brain|nuts|rats|doh|shucks|arg|ack\b|yikes|jeez|geez|dam|dang|darn|crud"
    r"|blast"
    r"|bother|bah|whoa|heck|drat|nope|nah|sorry|apolog|oops|again|twice|over|check|look|found"
    r"|re-?(?:measure|tape|count|test|read|ran|did)|fix|change|correct|update|amend|edit|redo"
    r"|strike"
    r"|scratch|scrap|make|switch|\bset\b|mark|flip|revise|turn|enter|write|should|meant|actually"
    r"|really|way (?:a)?round"
)
"""Some piece of every correction in words; a text without any is none."""


def owns_up(line: str) -> bool:
    """Whether a normalised text says that something was wrong, or orders it changed.

    >>> owns_up("misread the gauge, it's .47"), owns_up("it's .47")
    (True, False)
    """
    if _HINT.search(line) is None:
        return False
    if _ERROR.search(line) or _BLURTED.match(line) or _PUT_FOR.match(line):
        return True
    return any(_ORDER.match(part.strip()) for part in _CUT.split(line))


def sets_anew(line: str) -> bool:
    """Whether a normalised text orders a value put in the place of the last one.

    >>> sets_anew("actually put yes for that last question"), sets_anew("last question")
    (True, False)
    """
    return _PUT_FOR.match(line) is not None or _TURNED.search(line) is not None


_TURNED: Final = re.compile(
    r"\b(?:it'?s|it is|it was|make (?:it|that)|should be|should have been|change it to|i meant"
    r"|meant|i mean"
    r"|put|answer is|say) (?:an? |really |actually )*(?:yes|no|yeah|yep|nope)$|(?<=[a-z]),"
    r" (?:yes|yep|nope)$"
)
"""An answer in a word behind what takes the last one back ("i take it back, it is a yes")."""


def looked_again(line: str) -> bool:
    """Whether a normalised text says that what was answered was looked at once more."""
    return _AGAIN.search(line) is not None and _EARLIER.search(line) is not None


def restated(line: str, previous: Previous, reads: Reads, *, marked: bool) -> Restated | None:
    """What a normalised text says anew of the last answer, or None.

    Args:
        line: Normalised, without the words that open a correction ("sorry", "my bad").
        previous: The last stored answer.
        reads: Whether a field reads a text as a plain answer.
        marked: Such words were there.

    >>> before = Previous("static_pressure", ".74")
    >>> reads = lambda f, t: {"inwc": 0.47} if t == ".47" else None
    >>> restated("misread the gauge, it's .47", before, reads, marked=False).value
    '.47'
    """
    if _HINT.search(line) is None and not marked:
        return None
    ordered = _PUT_FOR.match(line) or _SET.match(line)
    if ordered is not None:
        found = _best([ordered["new"]], None, True, previous, reads)
        if found is not None:
            return found
    part_of = _SHOULD_BE.match(line)
    if part_of is not None and figures_in(part_of["old"]) and _was_told(part_of["old"], previous):
        return _value_in(part_of["new"], previous, reads, part_of["old"])
    again = _AGAIN.search(line) is not None
    sure = marked or (again and _EARLIER.search(line) is not None)
    blurted = _BLURTED.match(line)
    if blurted is not None:
        line, sure = line[blurted.end() :], True
    left: list[str] = []
    old: str | None = None
    for part in _CUT.split(line):
        clause = part.strip(" ,").rstrip(".")
        if not clause or _ORDER.match(clause):
            sure = sure or bool(clause)
            continue
        wrong = _ERROR.search(clause)
        denied = _NOT_IT.match(clause) or (None if wrong else _WROTE_OLD.match(clause))
        if denied is not None and _was_told(denied["old"], previous):
            old, sure = _TAIL.sub("", denied["old"]), True
            continue
        if wrong is not None:
            sure = True
            written = _WROTE_OLD.match(clause)
            if written is not None and figures_in(written["old"]):
                old = old or written["old"]
                continue
            left += [clause[: wrong.start()].rstrip(" ,."), clause[wrong.end() :].lstrip(" ,")]
            continue
        left.append(clause)
    if not (sure or again) and old is None and not any(_INSTEAD_OF.match(p) for p in left):
        return None
    found = _best([part for part in left if part], old, sure or again, previous, reads)
    if found is None or sure or found.old is not None:
        return found
    return Restated(found.value, None, sure=False)


def _best(
    left: list[str], old: str | None, sure: bool, previous: Previous, reads: Reads
) -> Restated | None:
    """The value among the clauses that are left: all of them, or the last that reads alone."""
    for text in left:
        pair = _INSTEAD_OF.match(text)
        if pair is not None and _was_told(pair["old"], previous):
            return _value_in(pair["new"], previous, reads, _TAIL.sub("", pair["old"]))
    if len(left) > 1:
        left = [p for p in left if _tells(p, previous, reads)]
        left = [p for k, p in enumerate(left) if not (k and _spells(left[k - 1], p))]
    if not sure and old is None:
        return None
    for text in dict.fromkeys((", ".join(left), *reversed(left))):
        if (found := _value_in(text, previous, reads, old)) is not None:
            return found
    return None


def _tells(clause: str, previous: Previous, reads: Reads) -> bool:
    """Whether a clause holds anything of an answer."""
    if any(figure.text != "one" for figure in figures_in(clause)):
        return True
    return bool(
        reads(previous.field, clause) or (previous.field == "duct" and reads("material", clause))
    )


def _value_in(
    text: str, previous: Previous, reads: Reads, old: str | None = None
) -> Restated | None:
    """The value of a clause without the words before it, if the question before reads it."""
    bare = _TAIL.sub("", text)
    while (lead := _LEAD.match(bare)) is not None:
        bare = bare[lead.end() :]
    for value in dict.fromkeys((_ARTICLE.sub("", bare), bare)):
        if value and reads(previous.field, value):
            return Restated(value, old)
    if old is None:
        return None
    whole = replaced(previous.text, old, bare)
    if whole is not None and reads(previous.field, whole):
        return Restated(_short(bare) if figures_in(bare) else bare, old)
    return None


_OF_THEM: Final = re.compile(r"^\S+ of (?:them|em|'em|those|these)$")


def _short(bare: str) -> str:
    """The figure of "the merv was 11"; "3 of them" stays whole."""
    return bare if _OF_THEM.match(bare) else figures_in(bare)[0].text


def _was_told(old: str, previous: Previous) -> bool:
    """Whether what is taken back was in the answer before."""
    from intake.reading.clean import normalise

    told = normalise(previous.text)
    old = _TAIL.sub("", old).strip(" ,!").rstrip(".")
    figures = figures_in(old)
    if figures:
        values = {figure.value for figure in figures_in(told)}
        return all(figure.value in values for figure in figures)
    return re.search(rf"\b{re.escape(old)}\b", told.replace("_", " ")) is not None


def _spells(text: str, digits: str) -> bool:
    """Whether a clause spells the number of the one before it ("thirty, three zero")."""
    if not _DIGITS.match(digits):
        return False
    spelled = ""
    for word in digits.split():
        if word in ("zero", "oh", "o"):
            spelled += "0"
        else:
            spelled += "".join(f"{figure.value:g}" for figure in figures_in(word))
    return [f"{figure.value:g}" for figure in figures_in(text)] == [spelled]


def replaced(earlier: str, old: str, new: str) -> str | None:
    """An earlier answer with its one figure or word of an old value replaced, or None.

    >>> replaced("16x25x1 merv 8", "8", "merv was 11"), replaced("two 16x20x1", "2", "3 of em")
    ('16x25x1 merv 11', '3 16x20x1')
    >>> replaced("16x25x1", "one", "two inch")
    '16x25x2'
    >>> replaced("20x20", "20", "22") is None
    True
    """
    gone, fresh = figures_in(old), figures_in(new)
    if not gone and not fresh:
        word = re.compile(rf"\b{re.escape(old)}\b", re.IGNORECASE)
        return word.sub(lambda _: new, earlier) if len(word.findall(earlier)) == 1 else None
    if len(gone) != 1 or len(fresh) != 1:
        return None
    there = [f for f in figures_in(earlier.lower()) if f.value == gone[0].value]
    if len(there) != 1:
        return None
    head, tail = earlier[: there[0].start], earlier[there[0].end :]
    glued = head[-1:].isalnum() or tail[:1].isalnum()
    text = f"{fresh[0].value:g}" if glued and fresh[0].text.isalpha() else fresh[0].text
    return head + text + tail
