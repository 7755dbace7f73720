"""Questions whose own verb tells what an answer must be about: stops, gets smaller, matches, only.

"It goes dead quiet" is a yes to "Does the whistle stop?" although quiet is the opposite of a
whistle; "same size all the way" is a no to "Does the trunk step down?".
"""

from __future__ import annotations

import re
from typing import Final

from intake.reading.scan import scanned

__all__ = ["by_predicate"]

_NOT: Final = re.compile(
    r"\b(?:not|never|no|nope|nah|doesn'?t|don'?t|won'?t|isn'?t|didn'?t|hardly|without|barely"
    r"|wouldn'?t)\b"
)
_MIXED: Final = re.compile(
    r"\b(?:sometimes|but|usually|mostly|only|until|unless|if|depends|might|maybe|kinda|almost|some"
    r"|half|partly)\b"
)

_ENDING_ASKED: Final = re.compile(
    r"^(?:does|do|did|will|would|has|have) .*\b(?:stop|stops|quit|go away|cease|shut off|shut down"
    r"|cut (?:out|off)|die down|turn off|end|kick off)\b(?! and)"
)
_ENDS: Final = re.compile(
    r"\b(?:stops?|stopped|quits?|goes away|went away|shuts? (?:off|down|up)|cuts? (?:out|off)"
    r"|dies?(?: down)?|died(?: down)?|goes (?:dead |totally |completely |right |all )?(?:quiet"
    r"|silent"
    r"|off)|ends|turns off|clicks off|kicks off|disappears?|is gone|it'?s gone)\b"
)
_GOES_ON: Final = re.compile(
    r"\b(?:keeps? (?:on |right on )?(?:going|running|blowing|spinning|whistling|humming|at it)"
    r"|stays? on"
    r"|(?:still|continues to|just) (?:going|runs?|running|blows?|blowing|whistles?|there|does it"
    r"|spins?|spinning|goes)|no (?:change|difference)|makes no difference|just as (?:loud|bad))\b"
)

_HEARING_ASKED: Final = re.compile(r"^(?:can|do|could) (?:you|they|anybody|anyone) (?:\w+ )?hear\b")
_HEARD: Final = re.compile(
    r"\b(?:loud|clear as|plain as day|all night|every time|roar\w*|wakes|from (?:anywhere"
    r"|everywhere"
    r"|outside|the street))\b"
)
_SWITCH_ASKED: Final = re.compile(
    r"^(?:is|are|was|were|did|have|has) .*\b(?:shut|turn|turned|switched|powered|cut"
    r"|still) (?:it |them )?(?:on|off)\b"
    r"|^(?:is|are) (?:the|it|your) .*\b(?:on|off) ?\?"
)
_OFF: Final = re.compile(r"\b(?:off|shut|disconnected|killed|pulled)\b")
_ON: Final = re.compile(
    r"(?:\b(?:it'?s|they'?re|is|are|still|back|turned|switched|left it|come|kicked) (?:it |back "
    r"|still )?|^)on\b(?! (?:the|a|my)\b)"
)
_STEM: Final = 4
_DEED_ASKED: Final = re.compile(r"^(?:has|have|was|were|did)\b")
_DID_IT: Final = re.compile(
    r"^(?:yes,? |yeah,? |yep,? )?(?:i|we|they|he|she|somebody|someone|the \w+|my \w+|guy)"
    r"(?: (?:just|already|had|have|personally))* (?P<verb>[a-z]+) (?:it|them|that|those|the \w+)\b"
    r"(?! (?:if|when|once|next|tomorrow))"
)
_GOING_ON_ASKED: Final = re.compile(
    r"\b(?:keeps? (?:on )?(?:running|going|blowing|spinning)|stays? on)\b"
)
_REDUCING_ASKED: Final = re.compile(
    r"\b(?:step|steps|stepped|reduce|reduces|reduced|reducing|taper|tapers|neck|necks|get smaller"
    r"|gets smaller|change size|changes size|narrow|shrink)\b"
)
_REDUCES: Final = re.compile(
    r"\b(?:steps? (?:down|to)|stepped|reduces|reduced|reducers?|tapers?|necks? down|gets? smaller"
    r"|narrows|shrinks|goes (?:down|from) |drops? (?:to|down)|from \d+.{0,12} to \d+|transitions"
    r"|goes to an? \d+|down to an? ?\d+|down to \d+)\b"
)
_KEEPS_SIZE: Final = re.compile(
    r"\b(?:same (?:size|width|\d+|all|the whole|thing|diameter|from|end)|stays? (?:the )?(?:same"
    r"|\d+)"
    r"|never changes|one size|straight (?:through|run|\d+)|constant|all (?:one|the same)|uniform"
    r"|the whole (?:way|length)|all the way|full size|end to end)\b"
)

_SAME_ASKED: Final = re.compile(
    r"\b(?:match(?:es|ed)?|the same (?:size|tonnage|as|capacity|make)|same size|equal)\b"
)
_ONLY_ASKED: Final = re.compile(r"\b(?:the only|only one|by itself|alone)\b")
_BESIDES: Final = re.compile(
    r"\b(?:too|also|as well|another|a second|second one|shares?|shared|sharing|both|plus the"
    r"|there'?s (?:two|three|another|one more)|two of (?:them|em)|along with)\b"
)
_TAKES: Final = re.compile(
    r"\b(?:take|takes|fit|fits|hold|holds|accept|accepts|room for) an? (?P<size>[0-9.]+) ?(?:inch"
    r"|in\b|\")"
)
_AT_MOST: Final = re.compile(
    r"\b(?:only|all (?:that'?ll|thatll|it'?ll|it will|that will|it)|is all|max|maximum|at most|tops"
    r"|just|biggest|up to|no more)\b"
)


def by_predicate(text: str, question: str) -> bool | None:
    """Yes or no by the verb of the question; None if the question has none of these.

    >>> by_predicate("yep goes dead quiet", "Does the whistle stop when you open the door?")
    True
    >>> by_predicate("water heater tees into it too", "Is the furnace the only thing on that flue?")
    False
    """
    asked = question.lower()
    if _HEARING_ASKED.match(asked) and _HEARD.search(text) and not _NOT.search(text):
        return True
    if (switch := _SWITCH_ASKED.search(asked)) is not None:
        return _by_switch(text, off="off" in switch[0])
    deed = _DID_IT.match(text) if _DEED_ASKED.match(asked) else None
    if deed is not None and not _NOT.search(text) and not _MIXED.search(text):
        stem = deed["verb"][:4]
        if len(stem) == _STEM and stem in {word[:_STEM] for word in asked.split()}:
            return True
    denied, mixed = _NOT.search(text) is not None, _MIXED.search(text) is not None
    if _TAKES.search(asked) is not None:
        return _by_room(text, asked)
    if denied or mixed:
        return None
    if _GOING_ON_ASKED.search(asked):
        ends, on = _ENDS.search(text) is not None, _GOES_ON.search(text) is not None
        return on if ends != on else None
    if _ENDING_ASKED.search(asked) and " start" not in asked:
        ends, on = _ENDS.search(text) is not None, _GOES_ON.search(text) is not None
        return ends if ends != on else None
    if _REDUCING_ASKED.search(asked):
        reduces, same = _REDUCES.search(text) is not None, _KEEPS_SIZE.search(text) is not None
        return reduces if reduces != same else None
    if _SAME_ASKED.search(asked):
        values = [number.value for number in scanned(text, "yes_no").numbers]
        return values[0] == values[1] if len(values) == 2 else None
    if _ONLY_ASKED.search(asked) and _BESIDES.search(text):
        return False
    return None


def _by_switch(text: str, *, off: bool) -> bool | None:
    """Whether what is said to be on or off agrees with what was asked."""
    said_off, said_on = _OFF.search(text), _ON.search(text)
    if (said_off is None) is (said_on is None) or _MIXED.search(text):
        return None
    is_off = said_off is not None
    denied = [word for word in _NOT.findall(text) if word not in ("no", "nope", "nah")]
    if len(denied) > 1:
        return None
    fits = (is_off is not bool(denied)) is off
    plain = re.match(r"(?:(?P<yes>yes|yeah|yep|yup)|no|nope|nah)\b", text)
    if plain is not None and (plain["yes"] is not None) is not fits:
        return None
    return fits


def _by_room(text: str, asked: str) -> bool | None:
    """Whether a size that is said to be the largest that goes is that of the question."""
    wanted = _TAKES.search(asked)
    values = [number.value for number in scanned(text, "yes_no").numbers]
    if wanted is None or len(values) != 1 or not _AT_MOST.search(text):
        return None
    return values[0] >= float(wanted["size"].rstrip("."))
