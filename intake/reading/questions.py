"""Questions about the open question that name a thing of the job ("where do I stick the probe").

They are no key phrase with filler around it: the thing may be any.
"""

from __future__ import annotations

import re
from typing import Final

from intake.reading.result import CommandName
from intake.reading.words import words

__all__ = ["ASKS", "asked_about"]


def asked_about(text: str) -> CommandName | None:
    """The request that a question about a thing of the job is, or None.

    >>> asked_about("where do i stick the probe").value
    'where'
    """
    for name, asks in _ABOUT_A_THING:
        if asks.match(text):
            return name
    return None


ASKS: Final = words(
    "what what's why why's where how how's which who and so but ok wait does do are got"
    " curious is hey"
)
"""The words that open such a question."""
_I: Final = r"(?:do|should|would|can|could|am|are|does|did|do's) (?:i|we|you|ya|a guy|one)\b"
_DOING: Final = (
    r"(?:stick|put|measure|drill|poke|place|find|look|get|take|read|hold|check|tape|hook|start"
    r"|test|insert|point|see|tell|count|aim|set|zero|use|supposed to|know|figure)"
)
_ABOUT_A_THING: Final = (
    (
        CommandName.WHY,
        re.compile(
            r"(?:and |so |but |ok |wait )*(?:what(?:'s| does| has| do)? (?:that|this|it|these"
            r"|those)(?: got| have| has)? to do with\b|(?:what|what's) (?:do|would|did|are"
            r"|could|does|you|the)\b.*\b(?:need|want|using|use|care|know|asking)\b.* for$|why"
            r" (?:do|would|are|did|does|you|the|ya|is)\b.*\b(?:need|want|asking|ask|care|matter"
            r"|matters|important|know|knowing)\b|what(?:'s| does| has) .*\bto do with (?:it"
            r"|this|that|anything|my|the)\b|(?:what does|how does|how do|how would|what do)"
            r" .*\b(?:matter|change anything|figure in|figure into|play into|come into|help you"
            r"|help us|help anything)\b|what(?:'s| is) the (?:point|purpose|use|reason|sense"
            r"|good) (?:of|in|for|behind|to)\b|(?:what|what's) .{0,30}\b(?:do|would|are|could)"
            r" you (?:guys )?(?:need|want|using|use|asking|care)\b.*\b(?:for$|how|about|what"
            r"|if)|(?:what do|why do|why would) you care\b|why's .*\b(?:matter|matters"
            r"|important|needed)$|how(?:'s| is| does| will| would) (?:that|this|it|the"
            r" [a-z]+(?: [a-z]+)?) (?:gonna |going to )?(?:help|matter|change)\b|what (?:would"
            r"|will|does|is) (?:that|this|it) (?:gonna |going to )?(?:change|tell|do for|prove"
            r"|matter)\b|(?:is there|you got|got) (?:a|any) (?:reason|point)\b|how (?:is|does"
            r"|would|will|do) .{3,40}\b(?:affect|change|matter|help)\b|do you (?:guys )?(?:use"
            r"|care about|need)\b|are you (?:gonna|going to) (?:use|do)\b|(?:curious|wondering)"
            r" why\b|does (?:it|that|this|the [a-z]+(?: [a-z]+)?) (?:make (?:a|any|that big a)"
            r" difference|matter|change anything)|what difference (?:does|do|would) .* make$"
            r"|who (?:needs|cares about|cares) )"
        ),
    ),
    (
        CommandName.WHERE,
        re.compile(
            rf"(?:and |so |ok |wait )*(?:where|which (?:spot|place|end|side|hole))(?: at)?"
            rf" {_I}(?: \w+){{0,3}} {_DOING}\b|(?:and |so |ok )*where (?:do|does|should|would)"
            rf" (?:it|this"
            r"|that|the [a-z]+(?: [a-z]+)?) (?:go|goes|get measured|start|belong)\b"
        ),
    ),
    (
        CommandName.HOW,
        re.compile(
            r"how (?!much|many)\w+ (?:is|are|does|do|should|would) (?:it|that|this|an?|the|some"
            r"|too|really)\b[a-z ]{0,10}$|"
            rf"(?:and |so |ok |wait )*how (?:the (?:heck|hell) )?{_I}(?: \w+){{0,2}} {_DOING}\b"
        ),
    ),
)
