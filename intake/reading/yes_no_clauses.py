"""Which clause of a yes or no stands: what is so now, what is concluded, what the question is of.

"It was dead but it's running now" is of now; "black fuzzy stuff in there so yeah" concludes; "the
plenum is, the trunk isn't" answers for the trunk where the trunk was asked about.
"""

from __future__ import annotations

import re
from typing import Final

__all__ = ["by_parts", "concluded", "insisted", "only_of_then", "standing_clause"]

_WORD: Final = re.compile(r"[a-z]+(?:'[a-z]+)?")
_YES: Final = (
    r"(?:yes+|yeah|yea|yep|yup|ya|yah|definitely|it (?:is|does|has|did|was)|there (?:is|are)"
    r"|there's one|they (?:are|do|did|have)|i'?d say (?:yes|so|yeah|there is|it is|it does|they do"
    r"|they are)|i (?:think|believe|guess) so|i can|i do|we do|it'?s got one|it must(?: be)?"
    r"|must be|probably)"
)
_NO: Final = (
    r"(?:no|nope|nah|it (?:isn'?t|doesn'?t|hasn'?t|didn'?t|wasn'?t|ain'?t)|there (?:isn'?t|aren'?t)"
    r"|they (?:aren'?t|don'?t|didn'?t)|i'?d say (?:no|not|there isn'?t|it isn'?t|it doesn'?t|they"
    r" don'?t)|i doubt (?:it|that)|doubt it|i don'?t think so|i can'?t|i don'?t|probably not"
    r"|not really)"
)
_SAID_FIRST: Final = re.compile(
    rf"^(?:oh |well |uh |um )*(?:{_YES}|{_NO}|none|not|never|nothing)\b"
)
_QUALIFIER: Final = re.compile(
    r"^(?:i |we |it'?s |it )?(?:barely|hardly|just(?: about)?|not (?:easily|well|great|by much|good"
    r"|much|perfect|pretty|a lot|very (?:well|good|much))|didn'?t think so|thought (?:not|so)"
    r"|wasn'?t sure|kinda|sorta|it'?s tight|tight|a little|with (?:some|a little) effort"
    r"|used to not|i had to look|took a (?:minute|while|bit))[, ]*$"
)
_ENDS: Final = re.compile(
    rf"(?P<link>[,. ]but|,? (?:and )?so(?: i'?m gonna say| i'?m going to say| i guess| i think)?,?"
    rf"| which means) (?:(?P<yes>{_YES})|(?P<no>{_NO}))"
    r"(?P<tail>(?: (?:i|it|there|that|is|does|can|one|it's|there's|found|guess|think|do|are|has"
    r"|still|though|sir|now))*)[.! ]*$"
)


def concluded(text: str) -> str | None:
    """The verdict that a text ends with: behind "so", or behind "but" after a mere qualifier.

    >>> concluded("doesn't ring when i tap it so i'd say there is")
    "i'd say there is"
    >>> concluded("barely but yeah")
    'yeah'
    """
    end = _ENDS.search(text)
    if end is None:
        return None
    head = text[: end.start()].strip(" ,.")
    said = text[end.start("yes") if end["yes"] else end.start("no") :]
    if "but" in end["link"]:
        return said if _QUALIFIER.match(head) else None
    first = _SAID_FIRST.match(head)
    if first is None or not _plain_start(head):
        return said
    return None


def _plain_start(head: str) -> bool:
    return (
        re.match(rf"(?:oh |well )*(?:yes|yeah|yep|yup|no|nope|nah|{_YES}|{_NO})\b", head)
        is not None
    )


_INSISTS: Final = re.compile(
    r"^(?:no|nah|nope|oh)[,. ]+(?:no[,. ]+)+(?:wait[,. ]+|sorry[,. ]+)?(?=(?P<said>(?:there (?:is"
    r"|are)"
    r"|there'?s (?!no\b|not\b|none\b|nothing\b)|it (?:is|does|has|did|was)|they (?:are|do|did|have)"
    r"|i (?:do|can|have|did|am)|we (?:do|can|have|did)|yes|yeah|it'?s there)\b)(?! (?:not|no"
    r"|none)\b))"
)
_NO_WAIT: Final = re.compile(
    r"^(?:no|nah|nope)[,. ]+(?:wait|hang on|hold on|hold up|actually|sorry)[,. ]+(?=there (?:is"
    r"|are) "
    r"(?!no\b|not\b)|there'?s (?:a|an|one|two|some)\b|yes\b|yeah\b|it (?:is|does|has)\b(?! not))"
)
_ONE_THERE: Final = re.compile(r"^(?:yes,? )?there(?:'s| is| are) (?:a|an|one|two|some|several)\b")


def insisted(text: str) -> str | None:
    """What is said after a "no, no" or a "no wait" that corrects, or None ("no no there is").

    >>> insisted("no no there is, it's just hidden")
    "there is, it's just hidden"
    """
    found = _INSISTS.match(text) or _NO_WAIT.match(text)
    if found is None:
        return None
    rest = text[found.end() :]
    return "yes" if _ONE_THERE.match(rest) else rest


_CUT: Final = re.compile(r"[,;.!]+ ?|\s-+\s|\b(?:but|although|though|and)\b")
_NOW: Final = re.compile(
    r"\b(?:now|today|currently|these days|nowadays|at the moment|as of today|right now)\b"
)
_PAST: Final = re.compile(
    r"\b(?:was|were|wasn'?t|weren'?t|used to|didn'?t use|had been|had|did|didn'?t)\b|\b(?:it|they"
    r"|that)'?d\b|\b(?:yesterday|last (?:year|week|month|summer|winter|night|time)|before|earlier"
    r"|originally)\b"
)
_PAST_ASKED: Final = re.compile(
    r"^(?:did|was|were|had|has|have)\b|\b(?:ever|did|was|were|had|been|history|past)\b"
)


def standing_clause(text: str, question: str) -> str | None:
    """The clause that tells how it is now, beside one that tells how it was; None without both.

    >>> standing_clause("it was dead but it's running now", "Does the blower run?")
    "it's running now"
    """
    if not _NOW.search(text) or _PAST_ASKED.search(question.lower()):
        return None
    clauses = [part.strip() for part in _CUT.split(text) if part and part.strip()]
    now = [c for c in clauses if _NOW.search(c) and not _PAST.search(c)]
    past = [c for c in clauses if _PAST.search(c) and not _NOW.search(c)]
    if len(now) != 1 or not past or len(now) + len(past) != len(clauses):
        return None
    return now[0]


_USED_TO: Final = re.compile(r"^(?:it |they |we |there )?used to(?: be| have| do)?(?: one)?[.! ]*$")
_DID_TILL: Final = re.compile(
    r"^(?:yes,? |yeah,? |well,? )?(?:it|they|she|he) (?:did|was|were|had|ran|worked"
    r"|used to)\b[a-z ]*"
    r"\b(?:till|til|until|up until|before)\b"
)
_ONLY_THEN: Final = re.compile(
    r"\b(?:yesterday|last (?:night|week|month|year|summer|winter|time|season)|the other day)\b"
)
_STILL: Final = re.compile(r"\b(?:still|now|today|every|always|again|since|this)\b")
_HABIT: Final = re.compile(r"\b(?:is|are|does|do)\b")


def only_of_then(text: str, question: str) -> bool | str | None:
    """No, or "ask", for an answer that tells only of the past to a question of the present.

    "Used to" denies that it is so now; "it ran yesterday" leaves it open.
    """
    asked = question.lower()
    if _PAST_ASKED.search(asked) or not re.match(
        r"(?:so |and )?(?:is|are|does|do|can|any)\b", asked
    ):
        return None
    if _STILL.search(text):
        return None
    if _USED_TO.match(text) or _DID_TILL.match(text):
        return False
    if _ONLY_THEN.search(text) and not _HABIT.search(text) and _PAST_VERB.search(text):
        return "ask"
    return None


_PAST_VERB: Final = re.compile(
    r"\b(?:ran|worked|was|were|had|did|started|came on|fired up|kicked on|spun)\b"
)

_TOPIC: Final = (
    r"(?:the |my |our |its |those |that )?(?P<topic>(?!it\b|they\b|that\b|there\b|this\b|i\b|we\b"
    r"|and\b"
    r"|so\b|he\b|she\b|which\b|what\b|as\b|if\b|you\b|but\b|nothing\b|none\b|one\b|not\b|no\b"
    r"|yes\b)"
    r"[a-z]+(?: (?!is\b|are\b|does\b|do\b|has\b|isn|aren|yes\b|no\b|not\b|yeah\b)[a-z]+)?)"
)
_SAYS: Final = (
    r"(?P<says>is|are|does|do|has|have|yes|yeah|yep|isn'?t|aren'?t|doesn'?t|don'?t|hasn'?t|haven'?t"
    r"|no|nope|not|is not|are not|ain'?t|isnt|aint)"
)
_PART: Final = re.compile(
    _TOPIC + r",? " + _SAYS + r"(?= *(?:$|[,;.!]| and\b| but\b| the\b| just\b))"
)
_SOME_NOT: Final = re.compile(
    r"\b(?:some|half|most|one|a few)\b.*\b(?:some|others|other half|the rest"
    r"|the other)(?: of (?:them|em))?"
    r" (?:is|are|do|does|have|has|isn'?t|aren'?t|don'?t|doesn'?t|haven'?t|not|no)\b"
)
_THIN: Final = frozenset(
    [
        "the",
        "is",
        "are",
        "does",
        "do",
        "any",
        "all",
        "there",
        "inside",
        "outside",
        "this",
        "that",
        "have",
        "has",
        "run",
        "runs",
        "your",
        "you",
    ]
)


def by_parts(text: str, question: str) -> bool | str | None:
    """The answer of the part that was asked about, or "ask" where none of the parts is that one.

    >>> by_parts("the plenum is, the trunk isn't", "Is the trunk lined?")
    False
    >>> by_parts("wrapped yes, lined no", "Is the trunk wrapped on the outside?")
    True
    """
    if _SOME_NOT.search(text):
        every = re.search(r"\b(?:all|every|each|both)\b", question.lower()) is not None
        some = re.search(r"\b(?:any|anywhere|some)\b", question.lower()) is not None
        return some if every is not some else "ask"
    found = [(m["topic"], not re.search(r"n'?t$|^no|not", m["says"])) for m in _PART.finditer(text)]
    if len(found) < 2 or len({yes for _, yes in found}) < 2:
        return None
    asked = question.lower()
    stems = {w[:5] for w in _WORD.findall(asked) if w not in _THIN}
    fits = [yes for topic, yes in found if {w[:5] for w in topic.split()} & stems]
    if len(fits) == 1:
        return fits[0]
    if not fits and re.search(r"\b(?:any|anywhere|some)\b", asked):
        return True
    if not fits and re.search(r"\b(?:all|every|each|both|everything)\b", asked):
        return False
    return "ask"
