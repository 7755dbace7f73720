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
    r"(?:(?:so|ok|okay|well|oh|hey|um|uh|and|but|now|then|wait|sorry|hold on|hang on|man|dude|or"
    r"|huh|hmm"
    r"|uhh|umm|yeah|quick question|question|just curious|i mean|hm|real quick|dumb question"
    r"|stupid question|help me out|im confused|i'm confused|i'm new|im new"
    r"|eh|ugh),? )*"
)
_ASKED: Final = tuple(
    (name, re.compile(_OPENING + pattern))
    for name, pattern in (
        (
            CommandName.REPEAT,
            r"(?:what'?d|what did|wha'?d) (?:you|ya|u) (?:say|ask)\b|did (?:you|ya|u) (?:say|ask)\b"
            r"|(?:what'?s|what is|what was|what were|whats) (?:that |the |your |my |our"
            r" )?(?:last )?"
            r"(?:question|you (?:say|asking|ask))\b",
        ),
        (
            CommandName.WHY,
            r"why not (?:just |simply )?(?:use|take|go|ask|look|get|do|let|measure)\b|(?:and "
            r"|but )?why\b(?! (?:yes|no|sure|not|of course|i|it'?s|its|he|she|they|there)\b)"
            r"|why (?:it|that|this) (?:matters|is needed|is important)\b"
            r"|(?:tell|explain|say)(?: to)?(?: me)? why\b|how come\b"
            r"|what(?:'s| is| would be|s)(?: even)?(?: the| ur| your)? (?:point|purpose|reason"
            r"|use|deal"
            r"|big deal|sense|idea|relevance|importance)\b"
            r"|what(?: are|'re| will| would| do)? (?:you|ya|u|they|we)(?: guys)? (?:gonna|going"
            r" to|gon|plan to"
            r"|planning to|do|be doing|doing) (?:do )?with\b"
            r"|what does (?:that|this|it|the [a-z]+(?: [a-z]+)?) (?:tell you|change|matter|do"
            r" for you|get you"
            r"|get us|have to do|prove|help)\b"
            r"|who (?:cares|needs)\b|(?:is|are) (?:that|this|it|these|those|the [a-z]+)"
            r" (?:really |that |all"
            r" that |even )?(?:important|necessary|needed|required|relevant)\b"
            r"|do(?:es)? (?:that|this|it|you|we|the [a-z]+)(?: guys)?(?: really| even| actually)*"
            r" (?:matter|need|have to (?:know|have))\b",
        ),
        (
            CommandName.HOW,
            r"how (?:do|does|did|would|should|can|could|am|are|is|many|much|far|long|big|exact"
            r"|exactly|precise"
            r"|accurate|close|to|the heck|the hell|in the)\b",
        ),
        (
            CommandName.WHERE,
            r"(?:where|wheres|where's|where'd)\b",
        ),
        (
            CommandName.HELP,
            r"(?:what|which|whats)(?: (?:the|exact|kind|kinda|sort|type|size|side|part|of|unit"
            r"|units|number"
            r"|numbers|format|order|way|end|direction|dimension|measurement|one|ones|answer"
            r"|reading|if|about"
            r"|counts|do|does|did|should|would|is|are|was|exactly|you|ya|makes|qualifies|tag"
            r"|label|value|temp"
            r"|static|duct|filter|grille|return|supply|coil|blower|motor|pressure|length|run"
            r"|trunk))"
            r"(?![a-z'])(?! (?:heck|hell|ever)\b)"
            r"|what(?:'s|s) (?:an?|the|that|this|it|considered|counted|included|meant|your|all"
            r"|normal|good)\b"
            r"|(?:is|are|was|were) (?:it|that|this|these|those|there|we|you (?:asking|talking"
            r"|looking|after"
            r"|wanting|saying|wondering)|i supposed|the|they)\b"
            r"|(?:does|do|did|doesn'?t|don'?t) (?:it|that|this|i|we|the|these|those|you (?:mean"
            r"|want|need|have|care"
            r"|know)|ya (?:mean|want|need)|u (?:mean|want|need)|a|they)\b"
            r"|(?:do|does|did|is|are|will|would|should|can) (?:[a-z]+ ){1,3}(?:count|matter|work"
            r"|included|ok|okay|good enough|fine)\b"
            r"|(?:you|ya|u) (?:want|mean|need|talking|asking|looking|after)\b|(?:[a-z]+ ){1,8}or"
            r" (?:just|only|is it|do you|should i|what)\b"
            r"|am i\b|(?:should|shall|must|can|could|would|may|will) (?:i|it|that|this|we|the)\b"
            r"|(?:can|could|would|will) (?:you|u|ya|someone|somebody) (?:please |just |maybe |at"
            r" least )?"
            r"(?:explain|show|tell|clarify|define|help|walk|give|put|say|dumb|break|spell"
            r"|describe|elaborate"
            r"|rephrase|translate|be more)\b"
            r"|(?:please )?(?:show|tell|explain|teach|walk) (?:me|it|this|that|what|how|the)\b"
            r"|(?:give|gimme|need|i need|i want|got|you got|have|show me|like)(?: me)?(?: an?|"
            r" some| any| another"
            r"| more| a little)? (?:example|examples|hint|help|clue|pointer|pointers"
            r"|clarification|explanation"
            r"|more info|details|detail|instructions|picture|diagram|idea what)\b"
            r"|like what\b|such as\b|as in\b|meaning what\b|(?:put|say|ask) (?:that|it|this)"
            r" (?:in|more|simpler"
            r"|differently|another)\b|(?:in )?(?:plain )?english\b|(?:i )?(?:don'?t|do not"
            r"|didn'?t) (?:really |quite"
            r"|even |fully )?(?:understand|follow|get) (?:what|that|the question|this|it|you|how"
            r"|which)\b"
            r"|(?:i'?m|im) (?:lost|confused|not following|not sure what (?:you|that|this)"
            r"|unclear|new (?:at|to))\b"
            r"|(?:[a-z]+ ){1,3}(?:what|as in what|meaning|meaning what)\W*$"
            r"|[a-z]+(?: [a-z]+)?\? (?:what|huh|never heard)|(?:[a-z]+ ){2,8}or what\W*$"
            r"|[a-z]+(?: [a-z]+){0,3} or [a-z]+(?: [a-z]+)?\?+$",
        ),
    )
)
_FOR_HELP: Final = re.compile(
    _OPENING
    + r"(?:what (?:units?|format)\b|what (?:kind|kinda|sort) (?:of )?(?:answer|number|unit|reading|size)\b"
    r"|what does [a-z ]{2,30} (?:stand for|mean)\b|(?:do|should|am|can) i (?:have to|need to"
    r"|supposed to"
    r"|count|include|measure|use|put|type|give|enter|write|add|round)\b"
    r"|(?:is|are) (?:that|it|this|those|they) (?:in |on |supposed to be (?:in|on) )(?:the |a |my"
    r" )?(?:feet|inches"
    r"|sticker|label|plate|tag|nameplate|box|manual|door|unit|furnace|panel|side|pa"
    r"|pascals)\b(?!.*,)"
    r"|where (?:is|would|do|does|are) (?:that|it|this|those|they)\b(?: \w+){0,2} (?:on|at|listed"
    r"|printed|found"
    r"|written|be)\b"
    r"|(?:can|could|would|will) (?:you|u|ya) (?:please |just |maybe |at least )?(?:explain|show"
    r"|clarify|define"
    r"|help|walk)\b|(?:please )?(?:show|teach|walk) (?:me )(?:how|where|what)\b"
    r"|(?:give|gimme|need|i need|show)(?: me)?(?: an?| some)? (?:example|hint|help)\b)"
)
"""Questions that no field's answer is, whatever is open."""
_LONGEST: Final = 200
_MAY_ASK: Final = re.compile(
    r"\b(?:what\w*|which|why|how|where\w*|who|is|are|was|were|do|does|did|am|should|shall|can"
    r"|could|would"
    r"|will|may|must|explain|show|tell|give|gimme|need|like|such|as|english|understand|follow"
    r"|lost|confused"
    r"|meaning|don'?t|didn'?t|put|new|huh|say|teach|walk|got|want|have)\b|'s\b|\?"
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
