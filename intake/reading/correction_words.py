"""How corrections are worded: what opens one, its patterns, what names its fact."""

from __future__ import annotations

import re
from typing import Final

__all__ = [
    "ANSWERING",
    "FACT",
    "MARKER",
    "NOT_OLD",
    "OLD_NEW",
    "ONLY_BREATH",
    "OWNED_UP",
    "PATTERNS",
    "SWAPPED",
    "TAIL",
    "WAS_ROLE",
]

MARKER: Final = re.compile(
    r"^(?:no,? ?(?!less|more))?(?:oh,? )?(?:(?:on second thoughts?|second thoughts?|come to"
    r" think of it|now that i think (?:about|of) it|thinking about it|wait a (?:minute|sec"
    r"|second)|sorry|oops|whoops|woops|my bad|my mistake|correction|wait|hold on|hang on|hold"
    r" up|actually|ope|ah|crap|shoot|scratch that|strike that|dang|darn|my apologies|apologies"
    r"|pardon|er+|um+|uh|oh(?! (?:point|\.))|no(?! (?:less|more) than)|never ?mind that|typo"
    r"|fat fingered(?: it| that)?|ugh|oh no|forgive me|excuse me|i'm sorry|im sorry|nope|i was"
    r" wrong|i misread(?: it| that)?|misread(?: it| that)?|wrong number|i messed up|messed that"
    r" up|goofed|i goofed|mistyped|i mistyped|misspoke|i misspoke|i lied|mb|forget that|i take"
    r" that back|disregard that|wrong|that was wrong|that's wrong|not right|that's not right|my"
    r" error|i screwed up|screwed up|brain fart|nah|negative(?! ?(?:[-.0-9]|point|zero|oh|one"
    r"|two|three|four|five))|i take it back|i had that wrong|got that wrong|i got that wrong"
    r"|had it wrong|that wasn't right|no no|whoops a daisy|woopsie|oopsie|mistake|that was a"
    r" mistake|scrap that|scratch that|(?:my )?fat fingers?|(?:i )?fat[- ]?fingered(?: it| that"
    r"| that one)?|slip of the (?:finger|thumb)|wrong key|i hit the wrong key|typing"
    r" error)(?:[\s,:;!]|[.-](?!\.?\d))+)+"
)
ONLY_BREATH: Final = re.compile(r"(?:(?:oh|ah|um+|uh|er+)\b[ ,.]*)*$")
"""What says nothing of the answer before ("oh point six")."""
OWNED_UP: Final = re.compile(
    r"^[a-z' ]{0,40}\b(?:wrong|mistake|fix|correct\w*|typo|mis(?:typed|read|spoke|heard)|messed"
    r"|screwed|goof\w*|flubbed|botched|fingers?|fingered)\b[a-z' ]{0,20}(?:[,:;]"
    r"|[.-](?!\.?\d))\s*"
)
PATTERNS: Final = (
    re.compile(r"^(?:please |can you )?change (?P<old>[-+.]?[0-9]\S*) (?:to|into) (?P<new>.+)$"),
    re.compile(
        r"^(?!(?:set|put|fix|switch|adjust) (?:at|to|for|on|in|by|from|\d))(?:let'?s"
        r" )?(?:please )?(?:can you )?(?:make|change|correct|fix|update|set|switch|edit|amend"
        r"|adjust|revise|alter|put)(?: (?:that|it|this|the last one|my last answer|the last"
        r" answer|last one|my answer|my last one|the previous one|that one|that last one|the"
        r" last))?(?: (?:to|be|down|as|back to|into|read|say))* (?P<new>.+)$"
    ),
    re.compile(
        r"^(?:i|it|that|this|the last one|the last answer|last one|that last one|my last answer"
        r"|that one)?(?: (?:was|is))? ?(?:should|shoulda|should've|shouldve|supposed to|ought"
        r" to|needs to|must|was supposed to|was meant to)(?: (?:be|(?:have |of )?(?:been|said"
        r"|put|typed|written|entered|read)|say))+ (?P<new>.+)$"
    ),
    re.compile(
        r"^(?:i )?(?:meant to (?:say|type|put|write|enter)|mean to say|meant|mean|was going to"
        r" say|wanted to say) (?P<new>.+)$"
    ),
    re.compile(
        r"^(?P<old>\S+) (?:should|shoulda|was supposed to|ought to)(?: (?:be|have been|say"
        r"|read))+ (?P<new>.+)$"
    ),
    re.compile(
        r"^(?:i )?(?:said|put|typed|wrote|entered|told you|gave you|had)(?: (?:it was|it is"
        r"|down))? (?P<old>\S+(?: \S+)?),? ?(?:but|and|when|though|,)* ?(?:it'?s|it is|it was|i"
        r" meant|meant|that'?s|its|should be|it should be|it'?s really|it'?s actually|really"
        r"|actually|the real (?:one|number) is|i mean|should have been) (?P<new>.+)$"
    ),
    re.compile(
        r"^(?:it'?s|its|it is|it was|that'?s|thats|that was|was) (?:actually|really)"
        r" (?P<new>.+)$"
    ),
    re.compile(
        r"^(?P<old>\S+) (?:was|is|isn'?t|wasn'?t) (?:wrong|right|a typo|off|bad|incorrect),?"
        r" ?(?:it'?s|its|should be|make it|it was|it should be|i meant)? (?P<new>.+)$"
    ),
    re.compile(
        r"^(?:that|the) (?P<old>[-+.]?\d[\d.]*) (?:was|should be|should have been|needs to be"
        r"|is (?:really|actually|supposed to be)) (?:a |an |really |actually |supposed to be"
        r" )*(?P<new>[-+.]?\d.*)$"
    ),
    re.compile(
        r"^(?:on |for )?(?:the |my |that )?(?:last|previous) (?:one|answer|number),? (?:i meant"
        r"|should be|should have been|was supposed to be|is|was) (?P<new>.+)$"
    ),
    re.compile(r"^change (?P<old>.+?) to (?P<new>.+)$"),
    re.compile(r"^replace (?P<old>.+?) with (?P<new>.+)$"),
)
ANSWERING: Final = (PATTERNS[2], PATTERNS[6])
"""Patterns that, where nothing was answered before, are answers ("must be 18x8")."""

NOT_OLD: Final = re.compile(
    r"^(?P<new>.+?),? ?\b(?:not|instead of|rather than|and not|no)\b (?P<old>[^,]+?)(?:,?"
    r" ?(?:sorry|my bad|my mistake|oops|my apologies|typo|whoops))?$"
)
OLD_NEW: Final = re.compile(
    r"^(?:not|it'?s not|its not|it isn'?t|wasn'?t|it wasn'?t|that'?s not)"
    r" (?P<old>[^,;]+?)(?:[,;] ?(?:but |it'?s |its |it was |make it |rather )?| but (?:rather"
    r" )?| it'?s | - | its | it was | make it | i meant | rather )(?P<new>.+)$"
)
TAIL: Final = re.compile(
    r"^(?P<new>.+?)[\s,.-]+(?:sorry|my bad|my mistake|oops|whoops|typo|i mean|i meant"
    r"|correction|my apologies|(?:i )?misread(?: it| that)?|(?:i )?mistyped(?: it| that)?|(?:i"
    r" )?misspoke|(?:my )?fat fingers?|(?:i )?fat[- ]?fingered(?: it| that)?|i goofed)[.!]?$"
)
WAS_ROLE: Final = re.compile(
    r"^(?:that|the last one|last one|that one|it|that number|that reading)(?: (?:last )?(?:one"
    r"|number|reading|answer))?(?:'s| was| is)(?: actually| really)? (?:for |on )?(?:the |my"
    r" )?(?P<fact>[a-z][a-z -]{2,40}?)(?: one| side| number| reading)?(?:,? not (?:the )?[a-z"
    r" ]+)?$"
)
SWAPPED: Final = re.compile(
    r"\b(?:other way (?:a)?round|swap (?:those|them|that|the two)|switch (?:those|them|the two)"
    r"|reverse (?:those|them|that)|flip (?:those|them|that)|got (?:those|them|that)"
    r" (?:backwards?|mixed up|reversed|switched)|(?:those|they|them) are (?:backwards?|swapped"
    r"|reversed)|i had (?:those|them|it) backwards?|(?:are|were|is|was|got|had|have)(?: (?:it"
    r"|them|those|these|the|two|both|all|numbers?|digits?|sides?|ones|em|supply|return|and))*"
    r" (?:backwards?|reversed|swapped|flipped|switched|mixed up)(?=[,;.:!]|\Z)|vice versa|had"
    r" (?:those|them) (?:backwards?|reversed|switched|mixed up))\b"
)
FACT: Final = re.compile(
    r"^(?:the |my |that )?(?P<fact>(?:(?!was\b|is\b|should\b|are\b)[a-z]+(?![a-z])"
    r" ?){1,4}?)(?:'s| is| was| should be| should have been| are|:)? (?:actually |really "
    r"|supposed to be |meant to be )?(?P<new>(?:[-+.]?\d|[a-z]+teen|[a-z]+ty\b|one|two|three"
    r"|four|five|six|seven|eight|nine|ten|eleven|twelve).*)$"
)
