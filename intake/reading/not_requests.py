"""What holds the words of a request and is none.

A request is somebody's who wants the program to act now. What can't, didn't or would have to be
done ("can't go back there", "we didn't skip it", "I'd have to go back and look"), what somebody or
something else does ("it quit"), and a question nobody wants answered ("how would I know?") are
told, not asked.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from intake.reading.result import CommandName

__all__ = ["shrugged", "told_not_asked", "without_exclaimed_why"]

_DEEDS: Final = frozenset(
    (
        CommandName.SKIP,
        CommandName.BACK,
        CommandName.UNDO,
        CommandName.REPEAT,
        CommandName.QUIT,
        CommandName.FINISH,
    )
)
_COUNTED: Final = re.compile(
    r"(?<!this )(?<!that )(?<!last )(?<!next )\b(?:one|two|three|four|five|six|seven|eight|nine|ten"
    r"|dozen|couple|few)$"
)
"""A count that "no more" bounds: "just the one, no more"."""
_DENIED: Final = re.compile(
    r"\b(?:(?P<inverted>can'?t|couldn'?t|don'?t|won'?t|wouldn'?t|shouldn'?t)|cannot|did ?n'?t"
    r"|never|not|no way|haven'?t|hasn'?t|isn'?t|wasn'?t|needn'?t|nobody|unable)(?: (?:go|get|be"
    r"|to|have|want|wanna|need|able|gonna|going|come|ever|quite|got|wish|mean|mean to|trying"
    r"|try|me|us|no|a|any|way|chance|access|room|how|of|getting|have a way|ladder|time))*$"
)
"""A denial that reaches up to the key phrase."""
_WOULD: Final = re.compile(
    r"\b(?:i'd|id|we'd|you'd|they'd|he'd|she'd|would)(?: \w+)? (?:have|need|got) to\b"
)
_OTHERS: Final = re.compile(
    r"(?<!that's )(?<!thats )\b(?:it|he|she|they|who|which|somebody|someone|nobody)$|^(?:it's"
    r"|he's|she's|they're|they are|it is|it was|they were|it has|it had|it'll)(?: (?:all|just"
    r"|been))*$"
)
"""Who or what does it, where it isn't the person who asks."""
_OWN_DOING: Final = frozenset(
    ("quit", "stop", "close", "end", "exit", "leave", "bail", "finish", "finished", "done", "stuck")
)
"""What a thing or somebody else can do or be as well."""
_GOES_ON: Final = frozenset(
    ("back", "up", "down", "out", "over", "get", "look", "check", "measure", "in", "see", "ask")
)
"""What turns "I have to go" into an errand."""
_BE: Final = re.compile(r"\b(?:be|come|came|comes|coming|went|goes|was|is|be right|right)$")
"""What makes "back" a coming home ("be right back")."""
_THERE: Final = re.compile(r"^(?:in |up |over |down |out |under |behind )*(?:there|here)\b")
_ERRAND: Final = re.compile(
    r"^(?:(?:up|down|out|in|over|there) )*(?:and|to|n|&) (?:look|check|measure|see|read|get"
    r"|find|count|tape|ask)\b(?!.*\b(?:question|answer|last|previous|before)\b)"
)


def told_not_asked(
    before: Sequence[str], key: Sequence[str], after: Sequence[str], name: CommandName
) -> bool:
    """Whether a key phrase with these words around it tells something instead of asking for it.

    >>> told_not_asked(["can't"], ["go", "back"], ["there"], CommandName.BACK)
    True
    >>> told_not_asked(["can't", "we"], ["go", "back"], [], CommandName.BACK)
    False
    """
    if name not in _DEEDS or not (before or after):
        return False
    ahead, behind = " ".join(before), " ".join(after)
    if list(key) == ["no", "more"] and (_COUNTED.search(ahead) or behind.startswith("than")):
        return True
    if before:
        denied = _DENIED.search(ahead)
        if denied is not None and not (denied["inverted"] and ahead.startswith("why")):
            return True
        if _WOULD.search(f"{ahead} {' '.join(key)}"):
            return True
        if key[0] in _OWN_DOING and _OTHERS.search(ahead):
            return True
    if name is CommandName.BACK and before and _BE.search(ahead):
        return True
    if name is CommandName.BACK:
        return _THERE.match(behind) is not None or _ERRAND.match(behind) is not None
    if name is CommandName.QUIT and key[-1] in ("go", "run", "leave"):
        return bool(after) and after[0] in _GOES_ON
    return False


_SHRUGGED: Final = re.compile(
    r"(?:^|[,.;!?-] ?)(?:(?:well|and|but|so|now|man|honestly|heck|hell|geez|jeez|lol|ha|dude|uh"
    r"|um|hey),? )*how (?:(?:the|in the) (?:heck|hell|world|devil) )?(?:(?:should|would|could"
    r"|'?d) (?:the (?:heck|hell) )?(?:i|we|anybody|anyone|he|she)|am i supposed to|are we"
    r" supposed to|am i meant to) (?:even |ever |possibly )?(?:know|tell|remember)(?: (?:that"
    r"|this|it|all that|a thing like that|something like that|these things))?(?: (?:man|dude"
    r"|lol|honestly))?\s*(?:$|[,.;!?-]|(?:i'?m|i am|i just|we just|it'?s|i don'?t|i never|i"
    r" wasn'?t|when|from|without|if i|after)\b)"
)


def shrugged(line: str) -> bool:
    """Whether a question in a normalised text says only that the person can't know.

    >>> shrugged("how would i know, i'm just the renter"), shrugged("how do i know which it is")
    (True, False)
    """
    return "how" in line and _SHRUGGED.search(line) is not None


_EXCLAIMED: Final = re.compile(
    r"^(?:well |oh )?why,? (?=(?:yes|yeah|yep|yup|no|nope|nah|sure|of course|certainly"
    r"|absolutely|indeed|naturally|definitely|i don'?t know|i have no idea|i wouldn'?t know|i"
    r" couldn'?t say)\b(?! (?:return|supply|filter|duct|grille|trunk|need|to)\b))"
)


def without_exclaimed_why(line: str) -> str:
    """A normalised text without a "why" that asks nothing ("why yes it is").

    >>> without_exclaimed_why("why yes it is"), without_exclaimed_why("why not")
    ('yes it is', 'why not')
    """
    return _EXCLAIMED.sub("", line, count=1)
