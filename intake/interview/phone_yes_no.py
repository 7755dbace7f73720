"""Yes or no of a call, told by what is there: doors that move, photos to come, who is at home."""

import re
from typing import Final

from intake.interview.denials import affirmed, denied
from intake.interview.own_words import whole_words
from intake.reading.household import anybody_frail
from intake.reading.manner import sureness
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Sure, Unknown

__all__ = ["doors", "hoses", "not_noticed", "people", "photos", "works"]

_CLAUSES: Final = re.compile(
    r"[,;.:!]|\b(?:but|except|though|although|and|just|only|or|then)\b|(?<=\w) - "
)
_DENIES: Final = re.compile(
    r"\b(?:no|not|nothing|never|none|without|don'?t|doesn'?t|didn'?t|isn'?t|aren'?t|won'?t|nope|nor"
    r"|neither|haven'?t|hasn'?t)\b"
)
_JUST_NO: Final = re.compile(r"(?:no|nope|nah|naw|none)(?:[,.;]|$)")
_NOT_NOTICED: Final = re.compile(
    r"(?:no,? |nope,? |nah,? )?(?:not|none|nothing|never) (?:that )?(?:i|we|she|he|they|the caller)"
    r"(?:'ve| have|'s| has|'d|'m|'re| is| are| can| could)? (?:ever )?(?:noticed?|seen?|saw|heard?"
    r"|know of|knows? of|knows?|aware(?: of)?|remembers?|recalls?|tell|think of)[^,;.]*[.! ]*"
    r"|(?:no,? )?not to (?:his|her|their|my|our) knowledge[.! ]*"
)


def not_noticed(line: str) -> Reading | None:
    """A no of somebody who never noticed it: "not that she's noticed"."""
    return Accepted({"yes": False}, Sure.HEDGED) if _NOT_NOTICED.fullmatch(line) else None


_MOVES: Final = whole_words(
    r"whistl\w*|mov(?:e|es|ing|ed)|slam\w*|swing\w*|sw[au]ng|bang\w*|rattl\w*|creak\w*|howl\w*|hum"
    r"|hums|flutter\w*|drift\w*|pull(?:s|ed|ing)?|push\w*|suck\w*|clos(?:e|es|ing)|shut(?:s|ting)?"
    r"|open(?:s|ing)?|shak\w*|wobbl\w*|by (?:it|them)sel(?:f|ves)|on (?:its|their) own"
)
_STAY: Final = whole_words(
    r"doors? (?:is |are |all |seems? |stays? |do |they )*(?:fine|ok|okay|good|quiet|still|put|solid"
    r"|tight|normal|where they are)|stays? (?:put|still|open|shut|closed|where they are)"
    r"|they(?:'?re| are) +(?:all )?(?:fine|ok|okay|good|quiet|still)"
)
_WORKS_FINE: Final = re.compile(
    r"\b(?:open|close|shut)s?(?: (?:and|or) (?:open|close|shut)s?)? (?:just )?(?:fine|ok(?:ay)?"
    r"|good|normal\w*|well"
    r"|easy|easily|all right|alright|like (?:they|it) should)\b"
)
_MAYBE: Final = re.compile(
    r"\?|\b(?:if|maybe|used to|not sure|might|wind|windy|windows?|draft outside)\b"
)


_LEFT_OPEN: Final = re.compile(
    r"\b(?:keep|keeps|kept|leave|leaves|left)(?: \w+){0,3} open\b"
    r"|\bdoors?(?: are|'re| is)(?: \w+)? (?:always|usually|all|mostly|kept|left)(?: \w+)? open\b"
    r"|\bdoors?(?: are|'re| is) (?:always|usually|all|mostly|kept|left) open\b"
    r"|\b(?:are|is) open all the time\b"
    r"|\bdoors?(?: are|'re| is|'s)(?: \w+)? (?:shut|closed)(?: all (?:day|the time|night)| mostly"
    r"| usually| always| anyway)?[.! ]*$"
)
_DOORS_DO: Final = re.compile(
    r"(?:no,? |nope,? |yes,? |yeah,? )?(?:the )?doors? (?:do(?:es)?(?P<not>n'?t| not)?)[.! ]*"
)
_SURELY_MOVES: Final = whole_words(
    r"whistl\w*|mov(?:e|es|ing)|slam\w*|swing\w*|bang\w*|rattl\w*|creak\w*|by (?:it"
    r"|them)sel(?:f|ves)"
    r"|on (?:its|their) own|suck\w*"
)


def doors(line: str) -> Reading | None:
    """Whether doors whistle or move; one that does outweighs those that don't."""
    if _LEFT_OPEN.search(line) and not _SURELY_MOVES.search(line):
        return AskBack(
            "And when it starts: does a closed door whistle or move?",
            ({"yes": True}, {"yes": False}),
            AskKind.TWO_READINGS,
        )
    if (plainly := _DOORS_DO.fullmatch(line)) is not None:
        return Accepted({"yes": plainly["not"] is None}, sureness(line))
    if _MAYBE.search(line):
        return None
    line = _WORKS_FINE.sub(" are fine ", line)
    moves, still = False, False
    for clause in _CLAUSES.split(line):
        told = _MOVES.search(clause)
        if told and not _DENIES.search(clause) and not _STAY.search(clause):
            moves = True
        elif told or _STAY.search(clause):
            still = True
    if not moves and not still and _JUST_NO.match(line) and re.search(r"\bdoors?\b", line):
        still = not re.search(r"\b(?:but|except|though)\b", line)
    if moves and _JUST_NO.match(line) and not re.search(r"\b(?:but|except|though)\b", line):
        return None if not still else Accepted({"yes": False}, sureness(line))
    if moves:
        return Accepted({"yes": True}, sureness(line))
    return Accepted({"yes": False}, sureness(line)) if still else None


_SENDS: Final = whole_words(
    r"will do|can do|(?:i|we|she|he|they|you|caller|my \w+|her \w+|his \w+)(?:'ll| will| can"
    r"|'s going"
    r" to| is going to|'re going to|'m going to| are going to) (?:just |try to |try and |go |have "
    r"|get"
    r" |let |be )*(?:\w+ (?:\w+ )?(?:do|send|take|text|shoot|snap|email)\b|send\w*|text\w*|do|take"
    r"|taking|shoot|snap|email\w*|try|get)",
    r"(?:tomorrow|tonight|this (?:evening|afternoon|morning)|after (?:work|lunch|dinner|this"
    r"|the call)"
    r"|when (?:she|he|they|i|we)(?:'s| is| are|'re|'m| gets?| am)? (?:back|home|there)"
    r"|in a (?:bit|minute|few|sec\w*)|later today|right after|as soon as)",
    r"(?:sending|texting|taking)(?: them| it| those| that| some| pics?| photos?)?(?: now| right now"
    r"| over)?|already (?:sent|did|took|texted)|on (?:it|the way|their way|its way)|just sent|will"
    r" come"
    r"|coming|to follow|happy to"
    r"|glad to|no trouble|not a problem",
)
_REFUSES: Final = re.compile(
    r"\b(?:can'?t|cannot|won'?t|not|no (?!problem|prob|trouble|worries)|nope|nah|never|doesn'?t"
    r"|don'?t"
    r"|without|unable|refus\w*|flip phone|land ?line|rather not|maybe|might|if|unless)\b|^no$"
)


_WILL_NOT: Final = re.compile(
    r"(?:no,? |nope,? )?(?:i'?d|she'?d|he'?d|they'?d|would) (?:much )?rather (?:you|somebody"
    r"|someone"
    r"|have|they)\b[^\d]*|(?:no,? )?not (?:really )?comfortable\b[^\d]*"
    r"|(?:no,? |nope,? )?(?:would|prefer|i'd|she'd|he'd|they'd|rather)(?: (?:rather|prefer))?"
    r" not(?: to)?(?: (?:do|send|text) (?:that|it|them|any|photos|pictures))?[.! ]*"
    r"|(?:no,? |nope,? )?(?:(?:i|he|she|they|we|caller)(?:'d)? )(?:will not|won'?t|would not"
    r"|wouldn'?t|refuses?|can'?t"
    r"|cannot|doesn'?t want to|don'?t want to|rather not|not comfortable)[^,;.\d]*[.! ]*"
)
_NOT_NOW: Final = re.compile(r"\bnot (?:today|now|right now|right away|tonight|yet)\b[, ]*(?=.)")
_NO_CAMERA: Final = whole_words(
    r"flip ?phone|land ?line|no camera|no smart ?phone|old phone|no cell(?: ?phone)?"
)


def photos(line: str) -> Reading | None:
    """Whether photos will come, by whose hand and whenever it may be."""
    if _NO_CAMERA.search(line) and not _SENDS.search(_NO_CAMERA.sub(" ", line)):
        return AskBack(
            "Can anybody there send photos all the same?",
            ({"yes": True}, {"yes": False}),
            AskKind.TWO_READINGS,
        )
    if _WILL_NOT.fullmatch(line) and " but " not in line:
        return Accepted({"yes": False}, sureness(line))
    willing = _NOT_NOW.sub(" ", line).rpartition(" but ")[2]
    if not _SENDS.search(willing) or _REFUSES.search(willing):
        return None
    return Accepted({"yes": True}, sureness(line))


def people(line: str) -> Reading | None:
    """Whether somebody is at home who can't wait for heat or cooling."""
    frail = anybody_frail(line)
    return None if frail is None else Accepted({"yes": frail}, sureness(line))


_NOT_LOOKED: Final = re.compile(
    r"\b(?:hasn'?t|haven'?t|has not|have not|never|nobody(?:'?s| has)?|no one(?:'?s| has)?|not"
    r"|didn'?t|won'?t|can'?t|doesn'?t)(?: \w+)? (?:been|gone|goes?|gets?|looked|look|checked|check"
    r"|climb\w*|stuck|poked|crawl\w*|ventured|set foot)"
    r"(?: \w+)?(?: \w+)? (?:up|in|into|down|under|there|inside|at|yet)\b"
)
_HOSES: Final = whole_words(
    r"flex\w*|hoses?|shiny|silver\w*|slink\w*|accordion\w*|dryer (?:hoses?|vents?)|snakes?|tubes?"
    r"|bendy|squishy|floppy|bagg?y|soft"
)
_PIPES: Final = whole_words(
    r"metal|tin|sheet ?metal|hard (?:pipes?|ducts?)|rigid|galvani[sz]ed|steel|boards?|square"
    r"|rectangular"
)


_SOME_OF_EACH: Final = re.compile(
    r"\b(?:some|part|half|a few|few|mostly)\b.*\b(?:some|part|half|other|others|rest)\b.*\bpipes?\b"
    r"|\b(?:mostly|mainly) pipes?\b|\bpipes?\b.*\b(?:a couple|a few|few|some|part|half|other"
    r"|others|rest)\b"
)


def hoses(line: str) -> Reading | None:
    """Hoses told by what they look like; of somebody who never looked a line says nothing."""
    soft, hard = affirmed(_HOSES, line), affirmed(_PIPES, line)
    if _NOT_LOOKED.search(line) and not soft and not hard:
        return Unknown("You can't say.")
    if not soft and not hard and denied(_HOSES, line):
        return Accepted({"yes": False}, sureness(line))
    if soft and (hard or _SOME_OF_EACH.search(line)):
        return AskBack(
            "Are most of them soft hoses, or metal pipe? Yes for hoses.",
            ({"yes": True}, {"yes": False}),
            AskKind.TWO_READINGS,
        )
    if re.search(r"\bor\b|\?|\bboth\b|\bsome\b|\bmix\w*|\bhalf\b", line) or soft == hard:
        return None
    opens_with_no = re.match(r"(?:no|nope|nah)\b", line) is not None
    if soft and opens_with_no:
        return None
    return Accepted({"yes": soft}, sureness(line))


_RUNS: Final = whole_words(
    r"runs?|running|works?|working|yes|yeah|yep|yup|fine|ok(?:ay)?|good|on|up and running|going"
)
_FAILS: Final = whole_words(
    r"(?:blow|put|push|throw)(?:s|ing)?(?: out)? (?:\w+ )?(?:warm|hot|cold|cool|lukewarm)(?: air)?"
    r"|(?:not|isn'?t|doesn'?t|won'?t|barely|hardly|never|without) (?:really |actually |much "
    r"|even )?"
    r"(?:cool\w*|heat\w*|keep\w* up|blow\w*|cold|warm|hot)",
    r"(?:froze|frozen|freezing|iced|ices|tripped|trips?|tripping|quit|shut(?:s|ting)? (?:off|down)|"
    r"kick(?:s|ed) off|cut(?:s|ting)? (?:off|out)|locks? out)(?: up)?",
    r"(?:won'?t|doesn'?t|can'?t|never|not) (?:shut off|shut down|stop\w*|turn off|kick off|quit\w*"
    r"|cycle off|stay on|come on|start)",
    r"(?:upstairs|downstairs|second floor|first floor|bedrooms?|one (?:side|room|zone)"
    r"|half the house)"
    r"(?:'s|,| is| are| has| have| get| gets)? (?:\w+ )?(?:nothing|no air|no heat|no cool\w*|dead"
    r"|out|not|hot|cold|freezing)|nothing (?:upstairs|downstairs|up there)",
    r"short[- ]?cycl\w*|limp\w*|on its last legs?|on and off|off and on|in and out|by hand"
    r"|have to (?:reset|restart|jump|kick|hit)|keep(?:s)? (?:resetting|tripping|restarting)",
)
_NOT_FAILING: Final = re.compile(
    r"\b(?:no longer|not|hasn'?t|haven'?t|doesn'?t|didn'?t|never|won'?t|isn'?t)"
    r" (?:\w+ )?(?:frozen|froze|freez\w*|iced|tripped|trip\w*|quit|shut\w*|kick\w*|cut\w*"
    r"|short[- ]?cycl\w*)(?: (?:off|down|out|up))?\b(?: (?:since|any ?more|again|now|lately))?"
)
_NEVER_STOPS: Final = re.compile(r"\b(?:won'?t|doesn'?t|can'?t|never|not) (?:shut|kick|turn|cycle)")
_PLAIN_NO: Final = re.compile(
    r"\s*(?:no|nope|nah|not (?:right|really|at all|now))\b(?! (?:problem|issue|trouble|complaint))"
)


_SIDE: Final = r"(?:the )?(?:a/?c|air|cooling|cool side|heat|heating|heater|furnace|heat side)"
_HALF_DEAD: Final = whole_words(
    rf"{_SIDE}(?: part| side)? (?:doesn'?t|does not|isn'?t|is not|won'?t|don'?t|not so much|no"
    rf"|is dead"
    r"|is out|is down|is broken?|'s dead|'s out)(?! (?:have|give|need|seem|any|make))",
    rf"(?:not|nor|just not|only not) {_SIDE}",
    rf"{_SIDE} (?:hasn'?t|has not|haven'?t|wasn'?t) (?:been |yet )*(?:on|tried|run|used|tested)",
)
"""One side of the equipment that is dead while the other may run."""
_RUNS_OR_DOES: Final = whole_words(
    r"runs?|running|works?|working|fine|ok(?:ay)?|good|great|yes|yeah|does|heats|cools"
)
_NO_COMPLAINTS: Final = re.compile(
    r"(?:(?:yes|yeah|oh|well|no|nope|nah|she says|he says|they say|there'?s|has|have|had"
    r"|got)[, ]+)*"
    r"(?:no|zero|without|not any|not a single|nothing)"
    r" (?:(?:real|big|other|new|current|more) )*(?:complaints?|issues?|problems?|troubles?"
    r"|to complain about|to report|wrong"
    r"|the matter)(?: (?:with it|at all|now|right now|today|currently|at the moment|this (?:week"
    r"|year)|lately|so far|as of|that (?:she|he|i|they) knows? of)[, ]*)*[.! ]*"
)
_NO_COMPLAINTS_BUT: Final = re.compile(
    rf"{_NO_COMPLAINTS.pattern}[,;. ]*(?:but|except|though|just|only)\b"
)


def works(line: str) -> Reading | None:
    """Whether it runs all right; what runs and doesn't do its work is asked about."""
    plain = line if _NEVER_STOPS.search(line) else _NOT_FAILING.sub(" ", line)
    half = _HALF_DEAD.search(plain) and _RUNS_OR_DOES.search(plain)
    if _NO_COMPLAINTS.fullmatch(line):
        return Accepted({"yes": True}, sureness(line))
    uneasy = _NO_COMPLAINTS_BUT.match(line)
    if not _FAILS.search(plain) and not half and not uneasy:
        runs = plain != line and _RUNS.search(plain) and not _PLAIN_NO.match(line)
        return Accepted({"yes": True}, sureness(line)) if runs else None
    if _PLAIN_NO.match(line) and not uneasy:
        return None
    return AskBack(
        "So does it heat and cool as it should today, without stopping by itself?",
        ({"yes": True}, {"yes": False}),
        AskKind.TWO_READINGS,
    )
