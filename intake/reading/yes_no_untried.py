"""That the person hasn't found out yet, which is neither a yes nor a no.

"Haven't tried that yet" begins like a no, but what is denied is the trying, not what was asked. A
question of the person's own doing ("Did you measure it?", "Can you get in?") is answered by it.
"""

from __future__ import annotations

import re
from typing import Final

__all__ = ["denies_a_deed", "not_found_out"]

_NOT: Final = (
    r"(?:haven'?t|havent|have not|didn'?t|did not|hasn'?t|couldn'?t|could not|can'?t|cannot"
    r"|never|not|wasn'?t able to|unable to|ain'?t|weren'?t able to|don'?t|dont|won'?t)"
)
_STARTS: Final = r"^(?:(?:i|we|i've|we've|no|nope|nah|well|honestly|sorry|just|uh|um|yet)[, ]+)*"
_FINDING: Final = (
    r"(?:tri(?:ed|es)|try|tested|test|looked|look|checked|check|measured|measure|drilled|drill"
    r"|opened|pulled (?:it|the|that)|been (?:up|down|in|out|under|there|back|by|over)"
    r"|gone (?:up|down|in|out|under|there)|went (?:up|down|in|there)|gotten (?:to|up|in|that|there)"
    r"|got(?:ten)? (?:to (?:it|that)|around|up there|in there|that far|a (?:chance|reading|look))"
    r"|crawled|climbed|taken (?:it|the|that|a)|took (?:it|the|that|a)|turned (?:it|that) on"
    r"|run (?:it|that)|ran (?:it|that)|hooked|seen (?:inside|in there|up there|under)"
    r"|inspected|found out|gotten? that far|watched|counted|count|timed|listened|stood|bring"
    r"|brought|asked|ask (?:him"
    r"|her|them)|paid attention"
    r"|noticed either|started|begun|get (?:a look|in there|up there|to see|close)|see (?:in|inside"
    r"|into|under|behind|up|down|from|that far|through)|hear from|tell from|get in\b|read (?:it"
    r"|the|that)|make out|get (?:the|that|it) (?:\w+ )?(?:off|open|out|loose|up)"
    r"|fit in|reach)"
)
_DENIED: Final = re.compile(
    _STARTS
    + _NOT
    + r" (?:(?:even|really|actually|ever|yet|had a chance to|personally|quite) )*"
    + _FINDING
)
_COULD_BUT: Final = re.compile(
    r"\b(?:breaker|power|gas|unit|system|blower|it)(?:'s| is|s)? (?:off|out|down|dead|locked)\b"
    r".*\b(?:so )?(?:can'?t|cannot|couldn'?t|no way to|hard to) (?:tell|say|see|check|test|know)"
)
_IF_IT_WAS: Final = re.compile(
    r"^if (?:it|they|there|he|she|anyone|anybody|somebody|someone) (?:was|were|did|is|has|had|ever)"
    r"\b.*\b(?:nobody|no one|noone|never|don'?t|didn'?t|can'?t|couldn'?t|nothing|wouldn'?t|no)\b"
)
_NO_NOSE: Final = re.compile(
    r"\b(?:a cold|stuffed up|stuffy|sinus\w*|no sense of smell|lost my smell|nose is (?:shot"
    r"|plugged|gone)"
    r"|since covid|covid)\b"
)
_STILL: Final = re.compile(
    r"^(?:i'?m |we'?re )?(?:still|about to|just about to|fixing to|gonna|going to|gotta|i'?ll"
    r"|need to"
    r"|have to|let me|lemme) (?:go |have to |need to )?(?:check|look|find out|see|test|try|measure"
    r"|ask|run up)\b"
)
_OF_THE_PERSON: Final = re.compile(
    r"^(?:so |and |ok |okay )?(?:have|did|can|could|do|are|were|will|would) (?:you|we|someone"
    r"|somebody"
    r"|anyone|the owner|the customer|they|he|she)\b|\b(?:reachable|accessible|reach|get (?:to|at|in"
    r"|into|up)|easy to)\b"
)
_PASSIVE: Final = re.compile(
    r"^(?:was|were|has|have|is|are|had) (?:the|it|that|those|this|your|a|there)\b.*\b(?:tested"
    r"|measured"
    r"|checked|inspected|opened|drilled|looked at|tried)\b"
)
_BUT: Final = re.compile(
    r"\b(?:but|though|i (?:think|believe|guess|suppose|bet|doubt|assume)|probably|should|likely"
    r"|yes|yeah|yep|so (?:no|i)|looks|says?|said)\b"
)


def not_found_out(text: str, question: str) -> bool:
    """Whether a normalised answer says that what was asked hasn't been found out.

    >>> not_found_out("haven't tried that yet", "Does the blower run when you jumper G?")
    True
    >>> not_found_out("haven't tried that yet", "Have you tried it on high?")
    False
    """
    if _IF_IT_WAS.match(text) and _BUT.search(text) is None:
        return True
    asked = question.lower()
    if "smell" in asked and _NO_NOSE.search(text):
        return True
    if _OF_THE_PERSON.search(asked) or _PASSIVE.search(asked):
        return False
    if _COULD_BUT.search(text):
        return True
    found = _DENIED.match(text) or _STILL.match(text)
    return found is not None and _BUT.search(text[found.end() :]) is None


_DEED: Final = re.compile(
    _STARTS
    + r"(?:haven'?t|have not|didn'?t|did not|couldn'?t|could not|can'?t|cannot)"
    + r" (?:(?:even|really|actually|ever|yet|personally|quite) )*(?P<verb>[a-z]{2,}) [a-z]+"
)
_TELLING: Final = frozenset(
    [
        "have",
        "had",
        "has",
        "got",
        "get",
        "need",
        "see",
        "seen",
        "saw",
        "find",
        "found",
        "hear",
        "heard",
        "smell",
        "smelled",
        "feel",
        "felt",
        "notice",
        "noticed",
        "think",
        "believe",
        "use",
        "used",
        "do",
        "done",
        "know",
        "say",
        "imagine",
        "want",
        "like",
        "care",
        "be",
        "been",
        "seem",
        "look",
        "sound",
        "work",
        "works",
        "run",
        "runs",
        "ran",
        "come",
        "came",
        "happen",
        "happened",
        "stop",
        "stops",
        "go",
        "goes",
        "close",
        "open",
        "fit",
        "fits",
        "pull",
        "take",
        "hold",
        "wait",
        "complain",
    ]
)


def denies_a_deed(text: str, question: str) -> bool:
    """Whether a normalised answer denies a deed of the person that the question didn't ask about.

    >>> denies_a_deed("couldn't budge the door", "Is there a filter in the slot?")
    True
    >>> denies_a_deed("didn't replace them", "Did you replace the boots?")
    False
    """
    found = _DEED.match(text)
    if found is None or found["verb"] in _TELLING:
        return False
    asked = question.lower()
    return found["verb"][:4] not in {word[:4] for word in re.findall(r"[a-z]+", asked)}
