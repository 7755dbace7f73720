"""Turns of phrase of a yes or no in plain words: what they come to, in a table.

These stand beside the idioms of `intake.reading.idioms`; each is read as the words at its right.
"""

from __future__ import annotations

import re
from typing import Final

__all__ = ["in_plain_answer", "is_between"]

_LEADS: Final = re.compile(
    r"^(?:(?:you know what|come to think of it|now that (?:you|u) mention it"
    r"|now (?:that )?i think (?:about|of) it"
    r"|(?:as a )?matter of fact|in fact|believe it or not|lol|ha+|haha|meh|why(?=,? (?:yes|yeah|of"
    r" course|sure|it|certainly))|to tell (?:you )?the truth|good question|let'?s see|let me think"
    r"|hang on|funny you ask|i looked and|just looked and|just checked and|looked and)[,. ]+)+"
)
_SEES: Final = r"(?:see|seein[g']?|find|notice|spot)"
_TABLE: Final = tuple(
    (re.compile(pattern), plain)
    for pattern, plain in (
        (
            r"^(?:it |they |there )?(?:ain'?t|isn'?t|there'?s|there is|there isn'?t|there ain'?t"
            r"|i don'?t"
            r" see|don'?t see|aren'?t|has)? ?(?:nothing|nothin|nuthin|anything|a thing) wrong"
            r"(?: with (?:it|them|that|the \w+))?[.! ]*$",
            "no problem",
        ),
        (r"^not a (?:problem|prob)\b", "no problem"),
        (r"^(?:yeah|yea|yep|ya),? (?=no\b,? (?!there|it (?:is|does|has)|they))", ""),
        (r"^no,? (?=(?:yeah|yep)\b,? )", ""),
        (
            r"^(?:i )?(?:wanna|want to|would|gotta|have to) say (yes|no)\b,?(?: but)?"
            r"(?: (?:don'?t quote me|i could be wrong|not (?:sure|certain)))?[.! ]*$",
            r"i think \1",
        ),
        (
            r"^(?:(?:pretty much |just about |almost )?every (?:single )?time|all the time"
            r"|constantly)(?: (?:it|they) (?:starts?|runs?|kicks? on|comes? on))?[.! ]*$",
            "yes",
        ),
        (r"^never once(?: has| did| have| that i know(?: of)?)?[.! ]*$", "no"),
        (
            r"^(?:there'?s )?no reason (?:why )?(?:i|it|we|they|you) (?:couldn'?t|can'?t|won'?t"
            r"|wouldn'?t|shouldn'?t)\b",
            "probably yes",
        ),
        (r"^(?:i )?wish (?:i|it|we|they|there) (?:could|did|had|was|were|would)\b", "no"),
        (
            r"\b(?:i |we )?(?:can'?t|couldn'?t|cannot) (?:really |honestly )?say (?:that )?(?:it"
            r"|they"
            r"|that|there|i|we)(?:'s| has| have| does| do| is| are"
            r"|'ve)(?: ever)?(?: [a-z]+)?[.! ]*$",
            "probably not",
        ),
        (
            r"\bcould (?:really |probably )?use an? (?:change|cleaning|new one|good cleaning"
            r"|wash)\b",
            "dirty",
        ),
        (r"\b(?:due|ready|time) for an? (?:change|new one|cleaning)\b", "dirty"),
        (
            rf"\b(?:i |we )?(?:don'?t|do not|can'?t|couldn'?t|didn'?t|not) (?:even )?{_SEES}"
            r" (?:any|one|none|nothing|a thing|anything)\b",
            "none that i can find",
        ),
        (
            r"^(?:i |we )?(?:can'?t|don'?t|couldn'?t) (?:even )?(?:hear|feel|smell) (?:a"
            r"|any) ?(?:thing|one)?$",
            "none",
        ),
        (
            r"^(?:no,? )?not (?:on|in|at|for|with) (?:this|that) (?:one|side|run|unit|house|trunk"
            r"|branch"
            r"|duct|room|system)[.! ]*$",
            "no",
        ),
        (
            r"^(?:boy |man |oh |oh boy |wow )*(?:does|is|do|are|did|has) (?:it|they) ever[.! ]*$",
            "yes",
        ),
        (r"^(?:boy|man|oh boy),? (?:does|is|do|are) (?:it|they)[.! ]*$", "yes"),
        (r"^(?:it |they )?(?:still|already) (?:is|are|does|do|has|have)[.! ]*$", "yes"),
        (r"^(?:it |they )?still (?:isn'?t|aren'?t|doesn'?t|don'?t|hasn'?t|haven'?t)[.! ]*$", "no"),
        (r"\bby (?:half|a lot|a mile|a long shot|far)\b(?= *$)", ""),
        (
            r"^(negative|no|nope|nah|yes|yep|yeah|affirmative) (?:on|to) (?:the|that|both|all|any"
            r"|a)\b"
            r"(?: [a-z]+){0,3}[.! ]*$",
            r"\1",
        ),
        (r"^not hardly\b", "no"),
        (
            r"^(?:i'?m |i am |i |we )?(?:think|believe|guess|reckon|suppose|pretty sure|fairly sure"
            r"|almost sure|quite sure|probably|likely|most likely|i'?d say|i'?d guess|seems like"
            r"|looks like)(?: that)? (?:there|it|they|that|she|he)(?:'s|'re| is| are| was| has"
            r"| have| do"
            r"| does| did)? ?(?:not|none|isn'?t|aren'?t|ain'?t|doesn'?t|don'?t|hasn'?t|didn'?t"
            r"|wasn'?t"
            r"|won'?t)\b",
            "probably not",
        ),
        (
            r"^(?:a )?(?:100|110|1000|hundred) ?(?:%|pct|percent)(?: sure)?,? (?=(?:no|nope|nah"
            r"|not|yes"
            r"|yeah|yep|it|there)\b)",
            "",
        ),
        (
            r"^(?:no,? )?not (?:a|one|even a) (?:single )?(?:drop|trace|speck|hint|whiff|peep"
            r"|bit)[.! ]*$",
            "no",
        ),
        (
            r"^right (?=(?:next|by|at|on|in|above|below|behind|beside|under|around|about|after"
            r"|before|off"
            r"|up|down|over|outside|inside)\b)",
            "",
        ),
        (r"^(?:no,? )?not since\b", "no,"),
        (
            r"\bwhen(?:ever)? (?:it|she|he) (?:feels like(?: it)?|wants(?: to)?|decides to)\b",
            "sometimes",
        ),
        (
            r"^(?:no,? |nope,? )?not (?:while|as long as|in (?:my|our) (?:time|years)|in (?:the"
            r"|all the) (?:[a-z0-9]+ )?(?:years?|months?|time)|for as long as)\b",
            "not that i know of,",
        ),
        (
            r"^(?:it|they|that|she|he) (?:sure |really |does |do )?looks? (?:it|that way"
            r"|the part)\b",
            "probably yes",
        ),
        (
            r"^(?:i )?wouldn'?t (?:say|call (?:it|them|that)) (?!so\b|that\b|no\b|yes\b|it\b)",
            "not ",
        ),
        (r"^(?:about |like )?(?:50 50|fifty fifty|half and half|part ?way|partways)\b", "partly"),
    )
)
_DEEDS: Final = re.compile(r"^(?:did|was|were|has|have|had)\b")
_LEFT: Final = re.compile(
    r"^(?:no,? )?(?:they|he|she|we|i|somebody|the \w+)? ?(?:(?:just )?(?:skipped|left|ignored)"
    r"(?: right over)? (?:it|them|those|that|this|that part|the old ones?)(?: alone| out| as is| be"
    r"| in)?|never (?:got (?:to|around to) (?:it|that|those|them)|bothered|touched (?:it|them"
    r"|those))"
    r"|didn'?t (?:bother|touch (?:it|them|those)|get (?:to|around to) (?:it|that|those"
    r"|them)))[.! ]*$"
)
_TO_COME: Final = re.compile(
    r"^(?:i'?m |we'?re |i am |we are )?(?:gonna|going to|about to|fixing to|planning (?:on|to)"
    r"|meaning to)"
    r" (?!check|look|find|see|ask|measure|test)"
)
_TIMES: Final = re.compile(
    r"(?:just |only |at least |about |maybe )*(?:once|twice|(?:a few|a couple|several|two|three"
    r"|four|many"
    r"|plenty of|lots of|couple|[2-9]) times?)(?: or (?:twice|so|more))?[.! ]*"
)
_TIME_OF_IT: Final = re.compile(
    r"(?:just |yes |yeah |about |around |maybe |sometime )*(?:(?:last|this|back in|in|early"
    r"|late) (?:the )?"
    r"(?:spring|summer|fall|winter|autumn|year|month|week|january|february|march|april|may|june"
    r"|july"
    r"|august|september|october|november|december|(?:19|20)[0-9][0-9]|monday|tuesday|wednesday"
    r"|thursday"
    r"|friday|saturday|sunday|morning)|(?:[0-9]+|a|an|one|two|three|four|five|six|ten|a couple"
    r"|a few"
    r"|couple|few) (?:of )?(?:days?|weeks?|months?|years?|yrs?|hours?) (?:ago|back)|yesterday|today"
    r"|the other day)(?: (?:or so|i think|sometime))*[.! ]*"
)
_ACCESS: Final = re.compile(
    r"^(?:can|could) (?:you|someone|anybody|he|she|they)\b.*\b(?:get|reach|see|climb|crawl|go)\b"
    r"|\b(?:reachable|accessible)\b"
)
_THERE: Final = re.compile(
    r"^(?:yes,? |yeah,? )?(?:i'?m|we'?re|i am|already|just|i'?ve|i|we|been|standing|sitting|laying"
    r"|lying)(?: (?:already|just|been|was|am|standing|sitting|right|came|come|laying|crawled))*"
    r" (?:in|up|on|there|under|down|inside|at|back down)(?: (?:it|there|in|here|the \w+|from|up|now"
    r"|already|right|as we speak|twice|once|today|this morning|under|already today))*[.! ]*$"
)
_IN_HAND: Final = re.compile(r"^(?:have you|do you have|did you bring|you got|got|do you carry)\b")
_GOT: Final = re.compile(
    r"^(?:yes,? |yeah,? )?(?:i'?ve |i )?(?:got|have|brought|packed|grabbed) (?:my|mine|one|it|a"
    r"|an|the"
    r"|two)\b(?!.*\b(?:left|home|truck|van|shop|no|not|dead|broke\w*|but|except)\b)"
)


def in_plain_answer(text: str, question: str) -> str:
    """A normalised answer with its turns of phrase in plain words.

    >>> in_plain_answer("come to think of it yes", "Is there a damper?")
    'yes'
    >>> in_plain_answer("they skipped those", "Did the last crew replace the boots?")
    'no'
    """
    text = _LEADS.sub("", text)
    for pattern, plain in _TABLE if " " in text else ():
        text = pattern.sub(plain, text)
    asked = question.lower()
    if _REQUEST.match(asked) and _WILLING.fullmatch(text):
        return "yes"
    if _REQUEST.match(asked) and _UNWILLING.match(text):
        return "no"
    if _EMPTY.fullmatch(text) and _THERE_ASKED.search(asked):
        return "no"
    if _DEEDS.match(asked) and (_LEFT.match(text) or _TO_COME.match(text)):
        return "no"
    if _DEEDS.match(asked) and _TIMES.fullmatch(text):
        return "yes"
    if _DEEDS.match(asked) and not _IN_HAND.match(asked) and _TIME_OF_IT.fullmatch(text):
        return "yes"
    if _ACCESS.search(asked) and _THERE.match(text):
        return "yes"
    if _IN_HAND.match(asked) and _GOT.match(text):
        return "yes"
    return text


_REQUEST: Final = re.compile(r"^(?:would|will|could|can) (?:you|they|he|she|someone|the \w+)\b")
_WILLING: Final = re.compile(
    r"(?:yeah |yes |sure |oh )*(?:no problem|no prob|no sweat|no trouble|happy to|glad to|will do"
    r"|can do)[.! ]*"
)
_UNWILLING: Final = re.compile(
    r"^(?:no,? |i |i'?d |i would |we'?d )*(?:rather not|prefer not|sooner not)\b"
)
_EMPTY: Final = re.compile(
    r"(?:the |its |it'?s |that )*(?:slot|slots|rack|box|cabinet|door)?(?:'?s"
    r"| is)? ?(?:just )?empty[.! ]*"
)
_THERE_ASKED: Final = re.compile(
    r"^(?:is|are) there\b|\bin place\b|\bin (?:it|the slot|the rack)\b"
)


_BETWEEN: Final = re.compile(
    r"^if (?:you|u) (?:call|count|consider|mean)\b|^not by (?:me|us)\b"
    r"|^(?:it'?s |kinda |pretty )?(?:borderline|meh|iffy|touch and go|up for debate|debatable)\b"
    r"|^(?:it'?s )?(?:not|neither|isn'?t) (?:really |very |too "
    r"|exactly )?(?P<one>[a-z]+),? (?:and |but )?"
    r"(?:not|nor|isn'?t|or)(?: really| very| exactly| too)? (?P<two>[a-z]+)(?: either)?[.! ]*$"
    r"|^(?:it'?s |i'?d call it |well )?more (?:of an?|like an?|like one|like some) "
    r"|^not [a-z]+, (?:more (?:of|like)|just|only) (?:an? |one |some )"
    r"|^not (?:without|unless|until|on purpose|intentionally|officially|exactly|by design)\b"
)
_ON_CONDITION: Final = re.compile(
    r"\b(?:can|could|will|would|do|does|is|are|might|yes|yeah|yep) (?:if|unless|as long as"
    r"|provided|once)"
    r" (?:i|we|it|they|he|she|somebody|someone|the)\b"
    r"|\b(?:can|could|will|would|does|do) if you (?!want|like|need|say)"
    r"|^(?!no\b)(?:[a-z']+ )*(?:runs?|running|spins|blows|hums"
    r"|heats) (?:[a-z']+ )?no (?:compressor|heat"
    r"|cooling|cold|air|fan|blower)\b"
    r"|\bwouldn'?t (?:surprise|shock) me\b"
)
_ASKS_BACK: Final = re.compile(r"(?:um |uh |wait )?(?:what|which) [a-z]+(?: [a-z]+)?[?. ]*")
_SOME: Final = re.compile(
    r"(?:just |only |maybe |well )*(?:some|half|most|a few|a couple|part)(?: of (?:them|em|it"
    r"|the [a-z]+))?"
    r" (?:are|were|do|did|is|was|have|has|does)[.! ]*"
)
_COUNTS: Final = re.compile(r"\b(?:any|all|every|each|both|some|is there|are there|anywhere)\b")
_WITH_VAN: Final = re.compile(
    r"(?:it'?s |i'?ve got (?:one|it) |mine'?s |out |back )*in (?:the|my) (?:truck|van|car"
    r"|rig)[.! ]*"
)
_SAYS_PLAINLY: Final = re.compile(r"(?:yes|yeah|yep|yup|no|nope|nah|not)\b")
_LATELY: Final = re.compile(
    r"(?:no,? )?not (?:lately|recently|in a (?:long )?while|for a while)[.! ]*"
)
_LAST_OF: Final = re.compile(
    r"^(?:no,? |yes,? |yeah,? )?(?:there (?:was|were|used to be)\b|(?:it |they )?(?:was|were)"
    r" (?:one|some|a|this morning|earlier|yesterday|last|before|when|at first)\b)(?!.*\bstill\b)"
)


_WHOLLY_ASKED: Final = re.compile(
    r"\b(?:through|completely|all the way|fully|totally|entirely|solid|badly|really)\b"
)
_A_LITTLE: Final = re.compile(
    r"\b(?:surface|light|lightly|a little|a bit|some|starting|only|just|slight|slightly|minor"
    r"|small)\b"
)


def is_between(text: str, question: str) -> bool:
    """Whether an answer lies between yes and no, or hangs on a condition.

    >>> is_between("not wet not dry", "Is the coil wet?")
    True
    """
    if _ON_CONDITION.search(text) or _ASKS_BACK.fullmatch(text):
        return True
    asked = question.lower()
    if _SOME.fullmatch(text) and not _COUNTS.search(asked):
        return True
    if " rather than " in asked and re.match(r"(?:it'?s |there'?s )?both\b", text):
        return True
    if _WITH_VAN.fullmatch(text) and _IN_HAND.match(question.lower()):
        return True
    found = _BETWEEN.match(text)
    if found is not None:
        return found["one"] is None or found["one"] != found["two"]
    if _A_LITTLE.search(text) and _WHOLLY_ASKED.search(question.lower()):
        return _SAYS_PLAINLY.match(text) is None
    if _LATELY.fullmatch(text) and "recent" not in question.lower():
        return True
    return _LAST_OF.match(text) is not None and not _DEEDS.match(question.lower())
