"""What is in the bag: tools that are there, that were left, that broke, and all but one of them.

Each tool that is named has a status, and what is said last of it stands ("left the tape ... oh,
found the tape"). A denial reaches from its word to the next turn of the clause; what broke or
stayed away is told behind the tool.
"""

import re
from collections.abc import Callable
from typing import Final

from intake.interview.own_words import TOOLS
from intake.reading.plain_words import PLAIN_WORDS
from intake.reading.result import Accepted, Reading, Value

__all__ = ["read_tools", "tools_alone"]

_NAMES: Final = tuple(tool for tool, _ in TOOLS)
_NO_TOOLS: Final = re.compile(
    r"\b(?:duct|foil|packing|masking|scotch|electrical|teflon) tape\b"
    r"|\b(?:manifold|refrigerant|charging|freon|fuel|gas) ga(?:u)?ges?\b"
    r"|\b(?:volt|multi|amp|clamp|gas|co|combustion|electric|water|parking) ?meters?\b"
    r"|\b(?:name|data|rating) ?plates?\b|\b(?:range|kitchen) hoods?\b|\bthermostats?\b"
)
"""Things that are called nearly as a tool is."""

_NOT_ALL: Final = re.compile(
    r"\b(?:that'?s|thats|is|was|it'?s|are)(?: about| really)? all\b|\ball (?:i|we)(?:'ve)?\b"
    r"|\ball set\b|\b(?:at|after) all\b|\bnothing else\b|\bno (?:other|more) tools?\b"
)
_ALL: Final = (
    r"(?:everything|all of (?:it|them|those|that|the above)|(?:got|have|has|brought) (?:it "
    r"|em )?all"
    r"|all four|all|the lot|the works|full (?:kit|bag)|(?:the )?whole (?:kit|bag|lot|nine yards))"
)
_EXCEPT: Final = (
    r"(?:but|except(?: for)?|cept|'cept|minus|save(?: for)?|besides|apart from|aside from"
    r"|other than|bar|short of|less|without|not)"
)
_ALL_BUT: Final = re.compile(rf"\b{_ALL}[, ]*(?:i need )?{_EXCEPT} (?P<which>.*)")
_NOTHING_BUT: Final = re.compile(
    rf"\b(?:nothing|none|no(?: other)? (?:tools?|gear|instruments?|equipment))[, ]*"
    rf"(?:in (?:the|my) bag |here |with me |on me )?(?:{_EXCEPT}|just|only) (?P<which>.*)"
)
_EVERYTHING: Final = re.compile(rf"\b{_ALL}\b")
_WHOLE: Final = re.compile(r"\b(?:everything|all four|full kit|whole kit)\b(?! else)")
_ALL_OF_THEM: Final = re.compile(
    r"(?:oh |uh |well )?(?:yes|yep|yup|yeah|ya|sure)(?:,? (?:all|everything|i do|we do"
    r"|got).*)?[.! ]*"
)
_NOTHING: Final = re.compile(
    r"^(?:(?:i|i'?ve|ive|we|got|have|brought|there'?s|honestly|sorry|uh|um) )*"
    r"(?:no|none|nope|nothing|empty|nada|zip|zilch|none of (?:them|it|those)|just me"
    r"|didn'?t bring (?:any(?:thing| tools?)?|a thing|my (?:bag|tools?))"
    r"|no tools?|forgot (?:my|the) (?:bag|tools?)|not a thing)\b"
)
_LEFT_ALL: Final = re.compile(
    r"\b(?:forgot|left|lost|didn'?t bring|haven'?t got|don'?t have|need)"
    rf" (?:{_ALL}|anything|any of (?:it|them|that|those)|(?:my|the) (?:bag|tools?|stuff|gear))\b"
)
_SECOND: Final = re.compile(
    r"\b(?:no,? wait|wait,? no|oh,? wait|wait|hold on|hang on|scratch that|actually|i mean|sorry"
    r"|oops|no problem|no doubt|not (?:only|just))\b"
)
_NEGATOR: Final = re.compile(
    r"\b(?:no|not|nor|neither|without|w/o|minus|forgot(?:ten)?|left|lost|missing|need|broke"
    r"|don'?t|didn'?t|haven'?t|hasn'?t|ain'?t|never|can'?t find|couldn'?t find|wish i had|broken"
    r"|busted|dead|out of|lacking|short (?:on|of)|except(?: for)?|cept|could use|waiting on"
    r"|(?:can|could|may|might|will|gonna|have to|going to|i'?ll) (?:get|borrow|grab|buy|bring))\b"
)
_TURN: Final = re.compile(
    r"[,;.]|\b(?:but|just|only|though|however|found|got|instead|i have|i'?ve|ive"
    r"|(?<!n't )(?<!not )have (?:the|a|my)"
    r"|do have|there'?s|still|also|plus|then|yes|works?|working)\b"
)
_REACHES_ON: Final = re.compile(r"[, ]*(?:(?:and|or|nor|&|any|my|the) )+| +")
_ALTERNATIVE: Final = re.compile(r"\b(?:or|nor)\b")
_THE_REST: Final = re.compile(
    r"\b(?:everything else|all else|all the others?|(?:all |got |have )?the (?:rest|others)"
    r"|rest(?: is| are|'?s)"
    r"|the other (?:two|three|ones|stuff))\b"
)
_BEHIND: Final = re.compile(
    r"(?P<verb>'s|s|\ is|\ are|\ was|\ were|\ has|\ have|\ just|\ went|\ got|\ needs?|\ won'?t"
    r"|\ wont|\ don'?t|\ doesn'?t|\ doesnt|\ isn'?t|\ aint|\ ain'?t|\ aren'?t)?"
    r"(?:[ ,]+(?:all|both|currently|still|just|been|also|really|kinda|sort of|again|now"
    r"|today))*[ ,]*"
    r"(?:\b(?:batter(?:y|ies)|screen|hoses?|tips?|head|display)(?:'?s| is| are|s)? )?"
    r"(?:\b(?:dead|busted|broke\w*|shot|fried|toast|kaput|trashed|acting up|on the fritz|out"
    r"|not working|no good|junk|gone|missing|lost|stolen|smashed|cracked|dying|died|useless"
    r"|(?:back )?(?:at|in) (?:the |my )?(?:shop|office|warehouse|home|house|other \w+|garage)"
    r"|back at|at home|on loan|loaned|lent|borrowed out|on order|being (?:fixed|repaired"
    r"|calibrated)"
    r"|left|forgotten|(?:out )?for (?:repair|calibration|service)|need(?:s|ing)? (?:a |new )?"
    r"(?:batter(?:y|ies)|charg\w+|calibrat\w+|fix\w+|repair\w*)|flat|calibrat\w+"
    r"|with (?:my|the) (?:partner|boss|buddy|other|helper)|with another"
    r"|(?:turn(?:ing)?|power(?:ing)?) on|zero\w*|start\w*|work\w*|here|with me|coming|yet"
    r"|no batter(?:y|ies)|out of batter(?:y|ies)|crapped out|quit|ran out|tomorrow)\b)",
)
_WORKS_BEHIND: Final = re.compile(
    r"(?:'s|s| is| are| was| were|:)?(?: (?:all|still|both|working|just))* "
    r"(?:ok|okay|good|fine|here|with me|works?|working|charged|ready|in the (?:truck|van|bag)|yes"
    r"|yep|yeah|check)\b"
)
_NO_BEHIND: Final = re.compile(r":? (?:no|nope|nah|negative|none)(?= ?[,;.]| ?$)")
_NEGATIVE_VERB: Final = re.compile(r"won'?t|don'?t|doesn'?t|isn'?t|ain'?t|aren'?t")
_GOOD_ENDS: Final = re.compile(r"(?:turn|power)(?:ing)? on|zero|start|work|here|with me")
_IT: Final = re.compile(
    r"(?:,? ?(?:but|though|and|only|except|however|which|that|tho))+ "
    r"(?:it|its|it's|is|they|they're|theyre|that one|that|the thing|one)\b"
)
_PLURAL: Final = re.compile(r" (?:are|were|have|all|both|aren'?t|don'?t|need\b)")
_JOINED: Final = re.compile(r"(?: ?(?:and|&|n|or|plus) (?:the |my |a |our )*)")
_WORD: Final = re.compile(r"[a-z]{4,}")
_SPELLINGS: Final = ("tape", "manometer", "gauge", "probes", "thermometer", "plate", "hood")


def read_tools(text: str, choices: tuple[str, ...]) -> Reading | None:
    """Read which tools are there; None if the text names none and denies none.

    Args:
        text: Normalised.
        choices: Unused; every reader takes it.

    >>> read_tools("nothing but a tape", ()).values["has"]
    ['tape']
    """
    text = _NO_TOOLS.sub(" ", _SECOND.sub(" ", _respelt(text)))
    text = _NOT_ALL.sub(" ", text)
    only = _NOTHING_BUT.search(text)
    if only is not None and (named := _named(only["which"])):
        return _answer(named, set(_NAMES) - named)
    but = _ALL_BUT.search(text)
    if but is not None and (named := _named(but["which"])):
        left = _LEFT_ALL.search(text[: but.start() + len(but[0]) - len(but["which"])])
        rest = set(_NAMES) - named
        return _answer(named, rest) if left else _answer(rest, named)
    has, lacks = _told(text)
    if has | lacks and _THE_REST.search(text):
        return _answer(set(_NAMES) - lacks, lacks) if lacks else _answer(has, set(_NAMES) - has)
    if _LEFT_ALL.search(text):
        return _answer(has, set(_NAMES) - has)
    whole = _WHOLE.search(text) or (_EVERYTHING.search(text) and not has)
    if whole or _ALL_OF_THEM.fullmatch(text):
        return _answer(set(_NAMES) - lacks, lacks)
    if not has and not lacks:
        return _answer(set(), set(_NAMES)) if _NOTHING.search(text) else None
    return _answer(has, set(_NAMES) - has if has else lacks)


def _answer(has: set[str], lacks: set[str]) -> Accepted:
    held: list[Value] = [tool for tool in _NAMES if tool in has]
    without: list[Value] = [tool for tool in _NAMES if tool in lacks]
    return Accepted({"has": held, "lacks": without})


def _named(text: str) -> set[str]:
    return {tool for tool, pattern in TOOLS if pattern.search(text)}


def _told(text: str) -> tuple[set[str], set[str]]:
    """The tools that a text says are there, and those that it says aren't; the last word stands."""
    found = sorted(
        (at.start(), at.end(), tool) for tool, pattern in TOOLS for at in pattern.finditer(text)
    )
    status: dict[str, bool] = {}
    chain: list[str] = []
    before = 0
    denied = False
    for place, (start, end, tool) in enumerate(found):
        between = text[before:start]
        joined = bool(chain) and _JOINED.fullmatch(between) is not None
        last = found[place + 1][0] if place + 1 < len(found) else len(text)
        behind = text[end:last]
        listed = between.strip() == "," and _ALTERNATIVE.search(behind) is not None
        reached = listed or _REACHES_ON.fullmatch(between) is not None
        denied = _denied(between, carried=denied and reached)
        chain = [*chain, tool] if joined else [tool]
        status[tool] = not denied
        verdict = _behind(behind)
        if verdict is not None:
            for one in chain if _PLURAL.match(behind) else [tool]:
                status[one] = verdict
            denied = False
        before = end
    return {t for t, yes in status.items() if yes}, {t for t, yes in status.items() if not yes}


def _denied(between: str, *, carried: bool) -> bool:
    """Whether a "no" before a tool reaches it; one said of the tool before it reaches along."""
    no = [at.start() for at in _NEGATOR.finditer(between)]
    if not no:
        return carried
    turns = [at.start() for at in _TURN.finditer(between)]
    return not turns or turns[-1] <= no[-1]


def _behind(text: str) -> bool | None:
    """What is said of a tool behind its name: it works, it doesn't, or None."""
    if _NO_BEHIND.match(text):
        return False
    again = _IT.match(text)
    rest = text[again.end() :] if again is not None else text
    broken = _BEHIND.match(rest)
    if broken is not None:
        negative = _NEGATIVE_VERB.search(broken["verb"] or "") is not None
        good = _GOOD_ENDS.search(broken[0][len(broken["verb"] or "") :]) is not None
        if good:
            return not negative
        return False
    return True if _WORKS_BEHIND.match(rest) else None


def _respelt(text: str) -> str:
    """A text whose unknown words near a tool's name are put right ("tpae")."""
    return _WORD.sub(_right(lambda word: any(p.search(word) for _, p in TOOLS)), text)


def _right(known: Callable[[str], bool]) -> Callable[[re.Match[str]], str]:
    def right(match: re.Match[str]) -> str:
        word = match[0]
        if word in PLAIN_WORDS or known(word):
            return word
        # rapidfuzz is imported here: it costs 25 ms, and most answers hold no unknown word.
        from rapidfuzz import process
        from rapidfuzz.distance import OSA

        cutoff = 1 if len(word) < 8 else 2
        near = process.extractOne(word, _SPELLINGS, scorer=OSA.distance, score_cutoff=cutoff)
        return str(near[0]) if near is not None else word

    return right


_OPENS: Final = re.compile(r"(?:(?:just|only|got|have|i have|i've got|a|the|my|well|ok) )*")


def tools_alone(line: str) -> bool:
    """Whether a line begins with a tool and speaks of nothing but tools.

    >>> tools_alone("tape, gauge but no probes"), tools_alone("no, the meter reads zero")
    (True, False)
    """
    text = line.lower()
    opening = _OPENS.match(text)
    rest = text[opening.end() :] if opening else text
    begins = any(pattern.match(rest) for _, pattern in TOOLS)
    several = sum(pattern.search(text) is not None for _, pattern in TOOLS) > 1
    return begins and several and _OF_BLOWER.search(text) is None


_OF_BLOWER: Final = re.compile(
    r"\b(?:runs?|running|works?|working|blows?|dead|starts?|blower|motor|furnace|unit|fan)\b"
)
