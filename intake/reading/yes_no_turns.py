"""Turns of speech around a yes or no, as patterns: irony, other things, what is taken back."""

import re
from typing import Final

__all__ = [
    "ANOTHERS",
    "ASKS_THE_PAST",
    "ASKS_WHETHER_THERE",
    "IRONY",
    "NEVER_DOES",
    "NEVER_LOOKED",
    "NOT_THERE",
    "NO_WAY_THERE",
    "ONE_SAYS",
    "PUT_BACK",
    "SMELLS_OF",
    "SMELL_ASKED",
    "TAKEN_OUT",
    "THINKS_AGAIN",
    "UNTROUBLED",
    "WAS",
    "WITH_OR_WITHOUT",
]

IRONY: Final = re.compile(
    r"(?:oh |ha |haha |lol )?(?:yeah|yah|ya|sure|uh huh),? right(?:,? (?:lol|haha|sure))?[.!]*"
    r"|as if[.!]*|(?:oh )?sure it (?:does|is|did)[.!]*|in my dreams|dream on"
)

THINKS_AGAIN: Final = re.compile(
    r"(?:oh |um |uh )?(?:(?:no|nope|nah)[,.]* (?:(?:wait|hang on|hold on|hold up)\b"
    r"(?: a (?:sec|second|min|minute|moment)\b)?|sorry,? (?:it'?s |that'?s |make it )?(?=\d))"
    r"|(?P<no>wait,? no)\b(?! there))"
)
"""Taking something back, which is no answer by itself; "wait no" may be one."""

NEVER_LOOKED: Final = re.compile(
    r"\bnever (?:thought|paid|looked|checked|tried|been (?:up|down|in)|gave it|asked)\b"
)

NEVER_DOES: Final = re.compile(
    r"\bnever (?:really |quite |ever )?(?:does|do|did|is|has|have|was|were|will|gets?|got)\b[.! ]*$"
)

UNTROUBLED: Final = re.compile(
    r"(?:yeah |yes |yep |yup |nope |nah )?no (?:problems?|issues?|complaints?|worries|trouble)"
    r"(?: (?:at all|with it|with that|there|here|so far|that i know of|yet))*[.!]*"
)

ONE_SAYS: Final = re.compile(
    r"^(?:no|nope|nah)\b.*\b(?:says?|said|thinks?|swears) (?:yes|so\b|it (?:does|is|did)|there is)"
    r"|^(?:yes|yeah|yep)\b.*\b(?:says?|said|thinks?|swears) (?:no\b|not|it (?:doesn'?t|isn'?t))"
)

ANOTHERS: Final = re.compile(
    r"\b(?:neighbou?r(?:'?s)?|next door(?:'s)?)\b|\b(?:the|our|my) (?:old|previous|other|last)"
    r" (?:one"
    r"|unit|furnace|system|house)s?\b"
)

ASKS_THE_PAST: Final = re.compile(r"\b(?:ever|did|was|were|had|been|has|have)\b")

WITH_OR_WITHOUT: Final = re.compile(
    r"(?:it'?s |it was |was |they were |rated |taken )*(?P<how>with(?:out)?)"
    r"(?: (?:it|one|any|(?:an? |the |any )?(?:filter|coil|wet coil)))?(?: in(?: place| it)?)?[.! ]*"
)
"""An answer to whether something was taken with a thing in place."""

WAS: Final = re.compile(
    r"^(?:yes|yeah|yep|yup)?[, ]*(?:there|it|they|we) (?:did|was|were|had)\b.*\b(?:fixed|until|till"
    r"|stopped|gone|not (?:now|any ?more)|replaced|since then)\b"
    r"|^(?:yes|yeah|yep|yup)?[, ]*(?:there|it|they) (?:was|were|had)(?: (?:one|some|a|once|before"
    r"|a little|at one time))*$|^had (?:one|some)$"
    r"|^(?:yes|yeah|yep|yup)\b.*\b(?:gone|not (?:now|any ?more)|no longer|stopped|went away|used to"
    r"|fixed|removed|took it out)\b"
)

SMELLS_OF: Final = re.compile(
    r"\bsmells? (?:like|of)\b|\b(?:a|an|the|some|just|only)(?: [a-z]+){1,3} smell\b"
)

SMELL_ASKED: Final = re.compile(
    r"\b(?:gas|burn\w*|rotten|eggs?|smok\w*|sul\w+|electric\w*|plastic|propane|fumes?|exhaust|no"
    r"|any"
    r"|bad|musty|mold\w*)\b"
)

NO_WAY_THERE: Final = re.compile(
    r"\b(?:can'?t|cannot|couldn'?t|can not|unable|no (?:way|access|hatch|ladder|power"
    r"|opening|door)|won'?t|inaccessible|unreachable|buried|blocked|locked|sealed|shut"
    r"|stuck|too (?:tight|small|hot|high|narrow|low)|dead|down|off|broken|not (?:able"
    r"|reachable|accessible|running|working)|behind|drywalled|flooded|out of reach"
    r"|impossible)\b"
)

ASKS_WHETHER_THERE: Final = re.compile(
    r"^(?:is|are) there\b|^(?:does|do) (?:it|they|the [a-z ]+) have\b|\b(?:in place|installed)\b"
)

NOT_THERE: Final = re.compile(
    r"(?:it'?s|it is|they'?re|they are|that'?s|the \w+(?: is|'s))? ?(?:been )?(?:all )?(?:missing"
    r"|gone|absent|not there|not in there|removed)(?: now| already| altogether)?$"
)

TAKEN_OUT: Final = re.compile(
    r"\b(?:took|pulled|yanked|threw|tossed|ripped) (?:it|them|that|the old one) (?:out|away)\b"
    r"|\b(?:running|ran|been) without (?:one|it|a filter)\b|\b(?:never (?:put|had|got"
    r"|installed|came"
    r" with)|forgot to put) (?:it|one|a new one|a filter|any)\b"
)

PUT_BACK: Final = re.compile(
    r"(?<!never )(?<!forgot to )(?<!didn't )(?<!haven't )\bput (?:it|one|a|the|another)\b"
    r"|\breplaced\b"
    r"|\bswapped\b|(?<!put )\ba new one\b|\banother\b"
)
"""That what was asked for was taken away and not put back."""
