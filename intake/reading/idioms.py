"""Turns of phrase that say yes or no in other words, put plainly before they are read.

"Sure isn't" is a no, "couldn't be louder" is loud, "I don't see why not" is a yes. Taken word by
word each of them says the opposite.
"""

from __future__ import annotations

import re
from typing import Final

__all__ = ["contradicts_itself", "plainly"]

_NOT: Final = (
    r"(?:isn'?t|ain'?t|aint|doesn'?t|don'?t|dont|didn'?t|wasn'?t|hasn'?t|haven'?t|aren'?t|won'?t"
    r"|wouldn'?t|can'?t|couldn'?t|weren'?t|is not|does not|do not|did not|was not|has not|are not"
    r"|would not|could not|cannot)"
)
_AFFIRMED_NO: Final = re.compile(
    r"^(?:oh |well |it |they |that |there )?(?:sure|surely|certainly|definitely|ok|okay|alright"
    r"|all right)(?: as (?:heck|hell))?,? (?="
    + _NOT
    + r"\b|(?:hell |heck )?no\b(?! (?:problem|prob|sweat|trouble|worries|issue|doubt|big))"
    r"|nope\b|nah\b|not\b)"
)
"""An emphasis or a filler before a no."""

_NO_LOOK: Final = re.compile(
    r"\b(?:doesn'?t|don'?t|didn'?t|does not|do not) (?:really |even )?(?:look|seem|sound|appear"
    r"|feel)"
    r" (?:like it(?: is| does)?|that way|so|to be)(?=\W|$)"
)
_WOULD_NOT_SAY: Final = re.compile(r"^(?:no,? )?(?:i )?wouldn'?t (?:say|think) (?:so|it is|that)$")
_NO_OBJECTION: Final = re.compile(
    r"\b(?:i )?(?:don'?t|do not|can'?t|cannot) see (?:any reason )?why not\b"
)
_NO_REASON: Final = re.compile(
    r"\b(?:i )?(?:don'?t|do not|can'?t|cannot) see (?:any reason )?why (?:it|they|that|we|you|i|he"
    r"|she|there) (?:wouldn'?t|won'?t|shouldn'?t|couldn'?t|can'?t|would not)\b"
)
_NO_REASON_TO: Final = re.compile(
    r"\b(?:i )?(?:don'?t|do not|can'?t|cannot) see (?:why|how) (?:it|they|that|we|you|i|he|she"
    r"|there) (?:would|could|should|can|will)\b"
)
_NO_JOKE: Final = re.compile(
    r"^(?:no (?:kidding|joke|lie|foolin[g']?|bull)|not kidding|kid you not|i kid you not)\b,? ?"
)
_WELCOME: Final = re.compile(
    r"(?<=[a-z])[, .]+(?:no (?:problem|problems|prob|sweat|trouble|worries|biggie|issues?|big deal"
    r"|sir|ma'?am)(?: at all)?|not a problem|don'?t worry)(?= *$)"
)
_YES_FIRST: Final = re.compile(
    r"^(?:yes|yeah|yep|yup|ya|sure|sure thing|you bet|absolutely|of course|ok|okay|i can)\b"
)
_UTMOST: Final = re.compile(
    r"\b(?:it |they |that |things )?(?:couldn'?t|could not|can'?t) (?:be|get|possibly be)"
    r"(?: any| much)? (?:(?P<more>more) (?P<plain>[a-z]+)|(?P<higher>[a-z]{2,}er|worse))\b"
)
_HEDGE_FIRST: Final = re.compile(
    r"^(?:as far as|far as|from what|as best|best) i(?:'m| am)? (?:know|can tell|aware|can see|see"
    r"|could tell|remember|recall)(?: of)?[, ]+(?=(?:no|nope|nah|not|yes|yeah|yep|it|they|there"
    r"|that)\b)"
)
_PROBABLY_NO: Final = re.compile(r"^probably (?:no|nope|nah)\b(?! doubt)")
_BASES: Final = {"better": "good", "worse": "bad"}


_CONTRACTED: Final = re.compile(r"\b(nothing|none|nobody|everything|everyone|nothin)'s\b")
_SAYINGS: Final = tuple(
    (re.compile(pattern), plain)
    for pattern, plain in (
        (
            r"\b(?:can'?t|couldn'?t|won'?t) (?:really )?say (?:it|they|that|there) (?:doesn'?t"
            r"|isn'?t|don'?t"
            r"|aren'?t|hasn'?t|wasn'?t)\b",
            "i think so",
        ),
        (
            r"\b(?:i |we )?(?:wouldn'?t|would not|can'?t|couldn'?t) (?:really )?(?:call|say"
            r"|describe)"
            r" (?:it|that|them|it'?s|they'?re)(?: is| as| are)? (?!so\b|that\b)",
            "not ",
        ),
        (
            r"\bcan'?t (?:even )?hear (?:yourself|myself|ourselves|each other|the (?:tv|radio"
            r"|phone)"
            r"|(?:a thing|anything) over)(?: it| think| talk| speak)*",
            "loud",
        ),
        (r"\bcan'?t (?:even )?see (?:any )?(?:light |daylight )?through(?: it)?", "plugged"),
        (
            r"^no (?:problem|prob|sweat|worries)[,. ]+(?=(?:yes|yeah|yep|yup|it does|it is"
            r"|sure)\b)",
            "",
        ),
        (
            r"^(?:i )?(?:kinda|kind of|sorta|sort of|seriously|really|highly|strongly"
            r"|sincerely|rather"
            r"|pretty much|do) doubt (?=(?:it|that)\b)",
            "i doubt ",
        ),
        (
            r"^((?:not a|no|fat) chance|no way|(?:hell|heck) no|(?:absolutely|definitely|certainly)"
            r" not|not even close|not by a long shot|nowhere near)(?:[,.!;]+"
            r"| -) (?!.*\b(?:but|yes|yeah"
            r"|though|except|unless|until|if|to)\b).*$",
            r"\1",
        ),
        (r"^used to,? (?:but )?(?:not|never) (?:since|any ?more|lately|now|for|in)\b", "no,"),
        (r"\bnever (?:leave|go|travel|work)\b.*\bwithout (?:it|one|them|mine)\b", "always have it"),
        (
            r"\bsmells? (?:just |perfectly |pretty )?(?:fine|ok|okay|normal|clean|good|all ?right"
            r"|nice"
            r"|fresh|like nothing)\b",
            "no smell",
        ),
    )
)
"""Sayings whose words, one by one, say the opposite."""


def plainly(text: str) -> str:
    """A normalised answer with its idioms in plain words.

    >>> plainly("sure isn't")
    "isn't"
    >>> plainly("couldn't be louder")
    'loud'
    """
    text = _CONTRACTED.sub(r"\g<1> is", text)
    for pattern, plain in _SAYINGS:
        text = pattern.sub(plain, text)
    text = _AFFIRMED_NO.sub("", text)
    text = _WOULD_NOT_SAY.sub("probably not", _NO_LOOK.sub("probably not", text))
    text = _NO_OBJECTION.sub("yes", _NO_REASON.sub("probably yes", text))
    text = _NO_REASON_TO.sub("probably not", text)
    text = _NO_JOKE.sub("yes ", text).strip()
    text = _HEDGE_FIRST.sub("probably ", text)
    text = _PROBABLY_NO.sub("probably not", text)
    if _YES_FIRST.match(text):
        text = _WELCOME.sub("", text)
    return _UTMOST.sub(lambda m: m["plain"] or _positive(m["higher"]), text)


def _positive(higher: str) -> str:
    """The plain form of a comparative: "louder" is loud, "dirtier" is dirty, "bigger" is big."""
    if higher in _BASES:
        return _BASES[higher]
    stem = higher[:-2]
    if stem.endswith("i"):
        return stem[:-1] + "y"
    if len(stem) > 3 and stem[-1] == stem[-2] and stem[-1] in "bdgmnpt":
        return stem[:-1]
    return stem


_YES_THEN_NOT: Final = re.compile(
    r"^(?:yes|yep|yup|yeah|yea) ?,? (?:it|they|that|there|she|he)? ?"
    + _NOT
    + r"\b(?! (?:it|they)\b)"
)
_PLACED: Final = re.compile(
    r"\b(?:up ?stairs|down ?stairs|basement|attic|main(?: floor)?|first|second|front|back|left"
    r"|right"
    r"|supply|return|one|this side|that side|the other)(?: (?:one|side|floor|unit))?[ :-]+"
    r"(?P<said>yes|yeah|yep|no|nope|nah)\b"
)


def contradicts_itself(text: str) -> bool:
    """Whether an answer says yes and no at once ("yes it isn't", "upstairs yes downstairs no").

    >>> contradicts_itself("yes it isn't")
    True
    """
    placed = {match["said"][0] for match in _PLACED.finditer(text)}
    return len(placed) > 1 or _YES_THEN_NOT.match(text) is not None
