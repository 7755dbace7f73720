"""Questions put back where an answer was expected and none was found.

"What units?", "is that in feet or inches", "do I count the elbows" name no request, and what they
are about is any thing of the job. Asked of a text in which the field found nothing, they can only
mean that the person needs help with the question.
"""

from __future__ import annotations

import re
from typing import Final

from intake.reading.excused import led
from intake.reading.not_requests import shrugged
from intake.reading.result import Command, CommandName

__all__ = ["asked_instead"]

_OPENING: Final = (
    r"(?:(?:so|ok|okay|well|oh|hey|um|uh|and|but|now|then|wait|sorry|hold on|hang on|man|dude"
    r"|or|huh|hmm|uhh|umm|yeah|quick question|question|just curious|i mean|hm|real quick|dumb"
    r" question|stupid question|help me out|im confused|i'm confused|i'm new|im new|eh|ugh),? )*"
)
_ASKED: Final = tuple(
    (name, re.compile(_OPENING + pattern))
    for name, pattern in (
        (
            CommandName.REPEAT,
            r"(?:what'?d|what did|wha'?d) (?:you|ya|u) (?:say|ask)\b|did (?:you|ya|u) (?:say"
            r"|ask)\b|(?:what'?s|what is|what was|what were|whats) (?:that |the |your |my |our"
            r" )?(?:last )?(?:question|you (?:say|asking|ask))\b",
        ),
        (
            CommandName.WHY,
            r"why not (?:just |simply )?(?:use|take|go|ask|look|get|do|let|measure)\b|(?:and "
            r"|but )?why\b(?! (?:yes|no|sure|not|of course|i|it'?s|its|he|she|they|there)\b)"
            r"|why (?:it|that|this) (?:matters|is needed|is important)\b|(?:tell|explain"
            r"|say)(?: to)?(?: me)? why\b|how come\b|what(?:'s| is| would be|s)(?: even)?(?:"
            r" the| ur| your)? (?:point|purpose|reason|use|deal|big deal|sense|idea|relevance"
            r"|importance)\b|what(?: are|'re| will| would| do)? (?:you|ya|u|they|we)(?: guys)?"
            r" (?:gonna|going to|gon|plan to|planning to|do|be doing|doing) (?:do )?with\b|what"
            r" does (?:that|this|it|the [a-z]+(?: [a-z]+)?) (?:tell you|change|matter|do for"
            r" you|get you|get us|have to do|prove|help)\b|who (?:cares|needs)\b|(?:is|are)"
            r" (?:that|this|it|these|those|the [a-z]+) (?:really |that |all that |even"
            r" )?(?:important|necessary|needed|required|relevant)\b|do(?:es)? (?:that|this|it"
            r"|you|we|the [a-z]+)(?: guys)?(?: really| even| actually)* (?:matter|need|have to"
            r" (?:know|have))\b",
        ),
        (
            CommandName.HOW,
            r"how (?:do|does|did|would|should|can|could|am|are|is|many|much|far|long|big|exact"
            r"|exactly|precise|accurate|close|to|the heck|the hell|in the)\b",
        ),
        (
            CommandName.WHERE,
            r"(?:where|wheres|where's|where'd)\b",
        ),
        (
            CommandName.HELP,
            r"(?:what|which|whats)(?: (?:the|exact|kind|kinda|sort|type|size|side|part|of|unit"
            r"|units|number|numbers|format|order|way|end|direction|dimension|measurement|one"
            r"|ones|answer|reading|if|about|counts|do|does|did|should|would|is|are|was|exactly"
            r"|you|ya|makes|qualifies|tag|label|value|temp|static|duct|filter|grille|return"
            r"|supply|coil|blower|motor|pressure|length|run|trunk))(?![a-z'])(?! (?:heck|hell"
            r"|ever)\b)|what(?:'s|s) (?:an?|the|that|this|it|considered|counted|included|meant"
            r"|your|all|normal|good)\b|(?:is|are|was|were) (?:it|that|this|these|those|there|we"
            r"|you (?:asking|talking|looking|after|wanting|saying|wondering)|i supposed|the"
            r"|they)\b|(?:does|do|did|doesn'?t|don'?t) (?:it|that|this|i|we|the|these|those|you"
            r" (?:mean|want|need|have|care|know)|ya (?:mean|want|need)|u (?:mean|want|need)|a"
            r"|they)\b|(?:do|does|did|is|are|will|would|should|can) (?:[a-z]+ ){1,3}(?:count"
            r"|matter|work|included|ok|okay|good enough|fine)\b|(?:you|ya|u) (?:want|mean|need"
            r"|talking|asking|looking|after)\b|(?:[a-z]+ ){1,8}or (?:just|only|is it|do you"
            r"|should i|what)\b|am i\b|(?:should|shall|must|can|could|would|may|will) (?:i|it"
            r"|that|this|we|the)\b|(?:can|could|would|will) (?:you|u|ya|someone|somebody)"
            r" (?:please |just |maybe |at least )?(?:explain|show|tell|clarify|define|help|walk"
            r"|give|put|say|dumb|break|spell|describe|elaborate|rephrase|translate|be more)\b"
            r"|(?:please )?(?:show|tell|explain|teach|walk) (?:me|it|this|that|what|how|the)\b"
            r"|(?:give|gimme|need|i need|i want|got|you got|have|show me|like)(?: me)?(?: an?|"
            r" some| any| another| more| a little)? (?:example|examples|hint|help|clue|pointer"
            r"|pointers|clarification|explanation|more info|details|detail|instructions|picture"
            r"|diagram|idea what)\b|like what\b|such as\b|as in\b|meaning what\b|(?:put|say"
            r"|ask) (?:that|it|this) (?:in|more|simpler|differently|another)\b|(?:in )?(?:plain"
            r" )?english\b|(?:i )?(?:don'?t|do not|didn'?t) (?:really |quite|even |fully"
            r" )?(?:understand|follow|get) (?:what|that|the question|this|it|you|how|which)\b"
            r"|(?:i'?m|im) (?:lost|confused|not following|not sure what (?:you|that|this)"
            r"|unclear|new (?:at|to))\b|(?:[a-z]+ ){1,3}(?:what|as in what|meaning|meaning"
            r" what)\W*$|[a-z]+(?: [a-z]+)?\? (?:what|huh|never heard)|(?:[a-z]+ ){2,8}or"
            r" what\W*$|[a-z]+(?: [a-z]+){0,3} or [a-z]+(?: [a-z]+)?\?+$",
        ),
    )
)
_FOR_HELP: Final = re.compile(
    _OPENING + r"(?:what (?:units?|format)\b|what (?:kind|kinda|sort) (?:of )?"
    r"(?:answer|number|unit|reading|size)\b"
    r"|what does [a-z ]{2,30} (?:stand for|mean)\b|(?:do|should|am|can) i (?:have to|need to"
    r"|supposed to|count|include|measure|use|put|type|give|enter|write|add|round)\b|(?:is|are)"
    r" (?:that|it|this|those|they) (?:in |on |supposed to be (?:in|on) )(?:the |a |my )?(?:feet"
    r"|inches|sticker|label|plate|tag|nameplate|box|manual|door|unit|furnace|panel|side|pa"
    r"|pascals)\b(?!.*,)|where (?:is|would|do|does|are) (?:that|it|this|those|they)\b(?:"
    r" \w+){0,2} (?:on|at|listed|printed|found|written|be)\b|(?:can|could|would|will) (?:you|u"
    r"|ya) (?:please |just |maybe |at least )?(?:explain|show|clarify|define|help|walk)\b"
    r"|(?:please )?(?:show|teach|walk) (?:me )(?:how|where|what)\b|(?:give|gimme|need|i need"
    r"|show)(?: me)?(?: an?| some)? (?:example|hint|help)\b)"
)
"""Questions that no field's answer is, whatever is open."""
_LONGEST: Final = 200
_MAY_ASK: Final = re.compile(
    r"\b(?:what\w*|which|why|how|where\w*|who|is|are|was|were|do|does|did|am|should|shall|can"
    r"|could|would|will|may|must|explain|show|tell|give|gimme|need|like|such|as|english"
    r"|understand|follow|lost|confused|meaning|don'?t|didn'?t|put|new|huh|say|teach|walk|got"
    r"|want|have)\b|'s\b|\?"
)
_FIGURE: Final = re.compile(r"[0-9]")


def asked_instead(line: str, field: str) -> Command | None:
    """The request for help that a normalised text without an answer is, or None.

    >>> asked_instead("is that in feet or inches", "length").name.value
    'help'
    >>> asked_instead("the brown house on the corner", "length") is None
    True
    """
    if _FIGURE.search(line) or len(line) > _LONGEST or shrugged(line):
        return None
    if field in ("text", "yes_no"):
        return None
    if field != "command":
        return Command(CommandName.HELP) if _FOR_HELP.match(line) else None
    if (among := led(line, field, late=True)) is not None:
        return among[0]
    if _MAY_ASK.search(line) is None:
        return None
    for name, pattern in _ASKED:
        if pattern.match(line):
            return Command(name)
    return None
