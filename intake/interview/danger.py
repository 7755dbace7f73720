"""Red flags in anything that is typed: stop, ask once, or go on."""

import re
from typing import Final, Literal

from intake.interview.events import FlagRaised, FlagSettled
from intake.interview.own_words import whole_words
from intake.interview.safety_look import safety_look
from intake.interview.talk import Talk, say
from intake.interview.turns import Ask, Manner, Say, Voice
from intake.interview.weather_told import warm_enough
from intake.reading.clean import normalise
from intake.reading.household import anybody_frail
from intake.reading.manner import cant_say
from intake.reading.read import read
from intake.reading.red_flags import RedFlag, RedFlagKind, RedFlagState, look
from intake.reading.result import Accepted, AskBack, Unknown

__all__ = [
    "DOUBT_KEY",
    "SAFETY",
    "STOPPED_HINT",
    "answer_doubt",
    "ask_unnamed",
    "doubt_ask",
    "holds_back",
    "plain_no",
    "raise_unnamed",
    "reports",
    "safety_answer",
    "stand_still",
    "told_only",
    "watch",
]

DOUBT_KEY: Final = "red_flag"
SAFETY: Final = ("safety", "d_safety")
"""Questions that look for danger, of both voices."""
STOPPED_HINT: Final = (
    'The questions are stopped. When it is safe again, type "it\'s safe now" to go on.'
)
_SAFE_AGAIN: Final = re.compile(
    r"(?:(?:ok|okay|yes|alright|all right|good news|update|now)[,. ]+)*"
    r"(?:it'?s |it is |everything'?s |everything is |we'?re |we are |all(?:'s| is)? )?"
    r"(?:all |now )?(?:safe|clear|resume|continue|go on|carry on|resolved|fixed|false alarm"
    r"|sorted|cleared)(?: (?:now|again|to (?:continue|go on|resume)|out|it))*[.! ]*"
)
_PAST: Final = whole_words(
    r"last (?:week|month|year|winter|summer|time)|(?:years?|months?|weeks?) ago",
    r"not (?:now|any ?more)|used to|long gone|(?:was|got|been)? ?fixed",
)


def watch(talk: Talk, line: str) -> list[Say] | None:
    """Look at a line for danger; None if it may be read as an answer."""
    flag = look(line)
    if flag is None or flag.state is RedFlagState.NEGATED or _is_answer(talk, line):
        return None
    if flag.stops and not _away_from_wires(flag, line):
        talk.happened(FlagRaised(kind=flag.kind.value, state="present", text=line))
        return alarm(talk, flag.kind)
    if flag.state is RedFlagState.PRESENT and not flag.stops:
        return None
    talk.happened(FlagRaised(kind=flag.kind.value, state="unclear", text=line))
    return [say(Manner.ALARM, _doubt_words(flag.kind.value))]


_NOT_BY_WIRES: Final = whole_words(
    r"(?:not|isn'?t|aren'?t|nowhere|none(?: of it)?|never|no wires?)(?: (?:anywhere|really|it|even"
    r"|is|all|that|at))* (?:by|near|close to|around|touching|next to|on)(?: (?:any|the|to|a|of))*"
    r" (?:wir\w*|electric\w*|panel|outlets?|breakers?|cords?)"
)


def _away_from_wires(flag: RedFlag, line: str) -> bool:
    """Whether water is told of, and that it is nowhere near wires: a thing to ask about."""
    if flag.kind is not RedFlagKind.WATER_ELECTRIC:
        return False
    text = normalise(line)
    rest = _NOT_BY_WIRES.sub(" ", text)
    return rest != text and _LIVE.search(rest) is None


_LIVE: Final = whole_words(r"wir\w*|electric\w*|panel|outlets?|breakers?|cords?|spark\w*|shock\w*")
_HOOD_AWAY: Final = re.compile(r"\bhoods?(?:'s| is| are| got)? (?:left )?back (?:at|in|with)\b")
"""A flow hood that was left behind; no draft hood."""


def _is_answer(talk: Talk, line: str) -> bool:
    """Whether a line answers the open question in words that elsewhere tell of danger.

    The weather: "it's freezing". The bag: "hood's back at the shop".
    """
    question = talk.question
    if question is None:
        return False
    text = normalise(line)
    if question.key == "tools":
        return _HOOD_AWAY.search(text) is not None and look(_HOOD_AWAY.sub(" ", text)) is None
    if question.key == "d_change" and (given := _GIVEN_UP.sub(" ", text)) != text:
        return look(given) is None
    if question.field in _COUNTS_OR_SIZES and _only_counts(text):
        return True
    return question.key == "weather" and warm_enough(text) is not None


_GIVEN_UP: Final = re.compile(
    r"\bdump(?:s|ed|ing)?(?: (?:the|her|his|their|our|my|an?|old|gas|oil|propane|electric))*"
    r" (?:furnace|tank|boiler|heat ?pump|unit|system|a/?c)\b"
)
"""Equipment that is got rid of, not poured out."""
_COUNTS_OR_SIZES: Final = frozenset(("count", "grille", "duct", "filter"))
_WARMTH: Final = whole_words(
    r"degrees?|deg|f|fahrenheit|cold\w*|cool\w*|heat\w*|freez\w*|froze\w*|chill\w*|warm\w*|hot"
    r"|thermostat|stat|temp\w*|only|down to|now|furnace|a/?c|it'?s|it is|we'?re|baby"
    r"|house (?:is|at)"
)
_BARE_COUNT: Final = re.compile(
    r"\b([1-9]|[12]\d|3[0-2]) (?:more )?(?=in (?:the|our|this|their|her|his|my|here|there)\b|inside"
    r"|indoors|upstairs)"
)
"""A number before a place: a few vents there. Above 32 it may be warmth."""


def _only_counts(text: str) -> bool:
    """Whether a line counts things by place ("8 upstairs") and has no word of warmth or people."""
    if _WARMTH.search(text) is not None:
        return False
    rest = _BARE_COUNT.sub(" ", text)
    return rest != text and look(rest) is None


def told_only(talk: Talk, line: str) -> list[Say]:
    """What is said about a sign that stops nothing (a weak battery's chirp)."""
    flag = look(line)
    if flag is None or flag.state is not RedFlagState.PRESENT or flag.stops:
        return []
    return [say(Manner.CAUTION, words) for words in _response(talk, flag.kind)]


def safety_answer(talk: Talk, line: str) -> list[Say] | Literal[False] | None:
    """A short answer to the safety look: what is said, False for a plain no, None if unread."""
    found = safety_look(line)
    if found is None:
        return None
    if found.state is RedFlagState.NEGATED:
        return False
    if found.state is RedFlagState.UNCLEAR:
        talk.happened(FlagRaised(kind=found.kind.value, state="unclear", text=line))
        return [say(Manner.ALARM, _doubt_words(found.kind.value))]
    if found.kind is RedFlagKind.UNNAMED:
        return raise_unnamed(talk, line)
    talk.happened(FlagRaised(kind=found.kind.value, state="present", text=line))
    return alarm(talk, found.kind)


def raise_unnamed(talk: Talk, line: str) -> list[Say]:
    """A bare yes to the safety look: stop, and say what covers all of it."""
    talk.happened(FlagRaised(kind=RedFlagKind.UNNAMED.value, state="present", text=line))
    lines = alarm(talk, RedFlagKind.UNNAMED)
    return [*lines, say(Manner.ALARM, "Tell me which it is and I'll say what to do.")]


_PLAIN_NO: Final = re.compile(r"(?:no|nope|nah|none|nothing)\b[^\d]*")
_HOLDS_BACK: Final = whole_words(
    r"but|except|though|although|maybe|not (?:too |really |entirely )?sure|unsure|don'?t know"
    r"|no idea|no clue|no one|nobody|not yet|no way to|no chance to|can'?t tell|couldn'?t tell",
    r"(?:isn'?t|aren'?t|ain'?t|wasn'?t|not)(?: (?:too|really|entirely|quite|so|very|all that))*"
    r" (?:sure|certain|positive)|(?:doesn'?t|didn'?t|won'?t) (?:know|say|answer|ask)"
    r"|(?:haven'?t|hasn'?t|not|didn'?t) ask(?:ed)?|(?:isn'?t|not|aren'?t) (?:answer|respond)\w*"
    r"|can'?t (?:really )?smell(?=$|[,.;!])",
    r"(?:i|we|she|he|they|caller|nobody|(?:i|we|she|he|they|caller|nobody)'?(?:m|re|s))(?: is|"
    r" are)?"
    r" ?(?:not|isn'?t|aren'?t|ain'?t)? ?(?:not|isn'?t|aren'?t|ain'?t) (?:at|in|near|by|home|there"
    r"|here|inside|around)",
    r"(?:not|n'?t|hasn'?t|haven'?t) (?:been )?(?:check|look)\w*|didn'?t (?:check|look)",
)


def holds_back(line: str) -> bool:
    """Whether a no to the safety look takes something back or says that nobody looked."""
    return _HOLDS_BACK.search(normalise(line)) is not None


def plain_no(line: str) -> bool:
    """Whether a line opens with a no, names no danger and takes nothing back."""
    text = normalise(line)
    flag = look(line)
    named = flag is not None and flag.state is not RedFlagState.NEGATED
    if named or holds_back(line) or reports(line):
        return False
    return bool(_PLAIN_NO.fullmatch(text))


_CLAUSES: Final = re.compile(r"[,;.:!?]|\b(?:but|and|though)\b")
_SEEN: Final = whole_words(
    r"there'?s|there is|there are|it'?s|it is|it has|(?:i|we|she|he|they) (?:see|hear|have"
    r"|smell)\w*",
    r"got|some|a (?:little|bit|small|wet|damp|faint|slight)|slight\w*|faint\w*|only|just",
)
_TELLING: Final = whole_words(
    r"wet\w*|damp\w*|moist\w*|drip\w*|leak\w*|puddl\w*|water\w*|smell\w*|odou?rs?|scents?"
    r"|whiffs?|smok\w*|haz[ey]\w*|spark\w*|buzz\w*|hiss\w*|beep\w*|scorch\w*|melt\w*"
)
_DENIES: Final = whole_words(r"no|not|none|nothing|never|without|isn'?t|aren'?t|don'?t|doesn'?t")


def reports(line: str) -> bool:
    """Whether a line tells of something seen, smelt or heard beside what it denies."""
    return any(
        _SEEN.search(clause) and _TELLING.search(clause) and not _DENIES.search(clause)
        for clause in _CLAUSES.split(normalise(line))
    )


def ask_unnamed(talk: Talk, line: str) -> list[Say]:
    """Something that may be a yes to the safety look: ask whether it is happening now."""
    talk.happened(FlagRaised(kind=RedFlagKind.UNNAMED.value, state="unclear", text=line))
    return [say(Manner.ALARM, _doubt_words(RedFlagKind.UNNAMED.value))]


def alarm(talk: Talk, kind: RedFlagKind) -> list[Say]:
    """The standard response, in order."""
    lines = [say(Manner.ALARM, words) for words in _response(talk, kind)]
    return [*lines, say(Manner.ALARM, STOPPED_HINT)]


def _response(talk: Talk, kind: RedFlagKind) -> tuple[str, ...]:
    # Imported here: the responses are needed only in danger.
    from intake.telling.responses import response

    return response(kind, talk.state.voice or Voice.TECHNICIAN)


def _doubt_words(kind: str) -> str:
    from intake.telling.responses import RESPONSES  # needed only in danger

    return RESPONSES[RedFlagKind(kind)].question


def doubt_ask(kind: str, number: int) -> Ask:
    """The open question while a red flag is unclear."""
    return Ask(DOUBT_KEY, "yes_no", "", ("yes", "no"), _doubt_words(kind), number)


def answer_doubt(talk: Talk, line: str) -> list[Say]:
    """The answer to "is that happening right now?"; whatever is no plain no counts as yes."""
    kind = talk.state.doubt
    flag = look(line)
    if flag is not None and flag.stops:
        talk.happened(FlagSettled(kind=flag.kind.value, present=True, text=line))
        return alarm(talk, flag.kind)
    question = _doubt_words(kind)
    settled = _settled_by_words(talk, kind, line)
    if settled is not None:
        return settled
    found = read("yes_no", line, question=question)
    said = found.values.get("yes") if isinstance(found, Accepted) else None
    sure = isinstance(found, Accepted) and found.values.get("sure") is not False
    denied = flag is not None and flag.state is RedFlagState.NEGATED
    if said is not True and (denied or (said is False and sure) or _past(line)):
        talk.happened(FlagSettled(kind=kind, present=False, text=line))
        return [say(Manner.ECHO, "Not happening now: going on.")]
    unsure = isinstance(found, AskBack | Unknown) or cant_say(normalise(line))
    if said is True or unsure or talk.state.doubts > 1:
        talk.happened(FlagSettled(kind=kind, present=True, text=line))
        return alarm(talk, RedFlagKind(kind))
    talk.happened(FlagRaised(kind=kind, state="unclear", text=line))
    return [say(Manner.ALARM, f"Yes or no, please: {question}")]


_OUT_OF_HEAT: Final = (RedFlagKind.NO_HEAT_VULNERABLE, RedFlagKind.NO_COOLING_VULNERABLE)
_OPENS_WITH_NO: Final = re.compile(r"(?:no|nope|nah|not)\b")
_BACK_ON: Final = whole_words(
    r"(?:heat|it|a/?c|air|furnace|cooling|power|that)(?:'s| is)? (?:\w+ )?(?:on(?! the)|back|works?"
    r"|working|fine|runs|running|ok|okay|good)|back on|works fine"
)
"""That heat or cooling is there after all."""
_JUST_DUST: Final = re.compile(
    r"(?:(?:no|nope|nah|oh|it'?s|it is|that'?s|smells?|like|only|just|plain|old|a|the|bit|little"
    r"|of|more|she says|he says|they say)[,.]? )*"
    r"(?:dust|dusty|musty|must|mold|moldy|mildew|mildewy|stale(?: air)?|wet dog|dogs?|cats?"
    r"|cooking|food|paint|basement|old house)(?: (?:smell|smells|that'?s (?:it|all)))*[.! ]*"
)
"""A smell that is told to be an ordinary one, and nothing else."""


def _settled_by_words(talk: Talk, kind: str, line: str) -> list[Say] | None:
    """Settle a doubt by who is at home, or by what it is that smells; None if neither is told."""
    if kind in _OUT_OF_HEAT:
        frail = anybody_frail(line)
        opens_with_no = _OPENS_WITH_NO.match(normalise(line)) is not None
        if frail is True and opens_with_no and _BACK_ON.search(normalise(line)):
            talk.happened(FlagSettled(kind=kind, present=False, text=line))
            return [say(Manner.ECHO, "Not out now: going on.")]
        if frail is True and opens_with_no:
            if talk.state.doubts < 2:
                talk.happened(FlagRaised(kind=kind, state="unclear", text=line))
                return [say(Manner.ALARM, f"Yes or no, please: {_doubt_words(kind)}")]
            opens_with_no = False
        if frail is True and not opens_with_no:
            talk.happened(FlagSettled(kind=kind, present=True, text=line))
            return alarm(talk, RedFlagKind(kind))
        if frail is False:
            talk.happened(FlagSettled(kind=kind, present=False, text=line))
            return [say(Manner.ECHO, "Nobody very young, 65 or over, or ill: going on.")]
    if kind in (RedFlagKind.ODD_SMELL, RedFlagKind.UNNAMED) and _JUST_DUST.fullmatch(
        normalise(line)
    ):
        talk.happened(FlagSettled(kind=kind, present=False, text=line))
        return [say(Manner.ECHO, "An ordinary smell: going on.")]
    return None


def _past(line: str) -> bool:
    return bool(_PAST.search(line.lower()))


def stand_still(talk: Talk, line: str) -> list[Say]:
    """A line typed while the script is stopped."""
    text = normalise(line)
    flag = look(line)
    if flag is not None and flag.stops and flag.kind.value != talk.state.stopped:
        talk.happened(FlagRaised(kind=flag.kind.value, state="present", text=line))
        return alarm(talk, flag.kind)
    if _SAFE_AGAIN.fullmatch(text):
        talk.happened(FlagSettled(kind=talk.state.stopped, present=False, text=line))
        return [say(Manner.ECHO, "Safe again: going on where we were.")]
    lines = alarm(talk, RedFlagKind(talk.state.stopped))
    return [lines[0], lines[-1]] if len(lines) > 1 else lines
