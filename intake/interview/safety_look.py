"""The short answers to the look for danger: "yes gas", "yeah smells", "none of that", "all good".

Only what is made of known words is read here; any other line is for the reader of dangers.
"""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from intake.reading.clean import normalise
from intake.reading.red_flags import RedFlagKind, RedFlagState, look

__all__ = ["SafetyLook", "clear", "clear_after_a_story", "safety_look", "without_reporter"]


@dataclass(frozen=True, slots=True)
class SafetyLook:
    """What a short answer to the safety question says.

    Attributes:
        state: There, denied, or to be asked.
        kind: What is there; `UNNAMED` if nobody has said.
    """

    state: RedFlagState
    kind: RedFlagKind = RedFlagKind.UNNAMED


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


_NAMED: Final = {
    RedFlagKind.GAS: _words("gas gassy propane egg eggs rotten hissing hiss"),
    RedFlagKind.CARBON_MONOXIDE: _words(
        "alarm alarms detector co monoxide carbon beeping beeps beep sounding"
    ),
    RedFlagKind.BURNING: _words(
        "burning burnt burn smoke smoky electrical plastic sparks sparking fire"
    ),
    RedFlagKind.WATER_ELECTRIC: _words("water wet puddle puddles leak leaking flood flooded"),
    RedFlagKind.ODD_SMELL: _words("smell smells smelly odor odors stinks stink smelling fumes"),
}
_YES: Final = _words("yes yeah yep yup ya yea y yah uh-huh affirmative definitely sure")
_TOLD: Final = _words("there's theres i've we've got have some just only little bit slight faint")
_ALL: Final = _words("both everything all of it them above the these those")
_NO: Final = _words(
    "no nope nah none nothing nothin nuthin never nada negative neither nor zero zip without naw n"
    " don't dont didn't didnt doesn't doesnt haven't havent hasn't hasnt"
)
_NOT: Final = _words("not isn't isnt ain't aint aren't arent wasn't can't cant")
_CALM: Final = _words(
    "good clear fine ok okay safe normal great clean dry quiet well right alright perfect cool"
    " silent problems problem issues issue worries go"
)
_FILLER: Final = _words(
    "a an the any anything thing things of that this these those it its it's is are was all both"
    " here there now right just so at to i we we're we've i'm im you see hear notice noticed"
    " detect know like kind sort unusual weird strange odd out ordinary or and sir ma'am maam"
    " man everything everything's everythings house place on in near by wires wire around going off"
    " sounding report thanks thank far smelled seen looks look seems been have has had with me us"
    " one such happening today them four she he they she's he's they're caller either"
    " questions can could"
)
_REPORTED: Final = re.compile(
    r"(?:(?:the |my |her |his |our )?(?:caller|customer|homeowner|owner|lady|guy|tenant|mom|wife"
    r"|husband|son|daughter|man|woman)|she|he|they|we|i)"
    r"(?:'s| is| just)? (?:says?|said|tells? me|told me|tells? us|reports?|answers?|answered|saying"
    r"|telling me)"
    r"(?: that)?,? "
)
"""What opens an answer that somebody else gave: "caller says no"."""
_BUT: Final = _words("but except just only though however besides")
_WORD: Final = re.compile(r"[a-z'-]+")


def safety_look(line: str) -> SafetyLook | None:
    """What a short answer says, or None if it isn't made of known words alone.

    >>> safety_look("yes gas").kind
    <RedFlagKind.GAS: 'gas'>
    >>> safety_look("nothing like that").state
    <RedFlagState.NEGATED: 'negated'>
    """
    flag = look(line)
    if flag is not None and flag.stops:
        return None
    text = without_reporter(normalise(line))
    words = _WORD.findall(text)
    kinds = [kind for kind, names in _NAMED.items() if not names.isdisjoint(words)]
    if not words or any(ch.isdigit() for ch in text) or _unknown(words):
        return None
    yes, no = words[0] in _YES, not _NO.isdisjoint(words)
    calm, nots = not _CALM.isdisjoint(words), not _NOT.isdisjoint(words)
    if (nots and calm) or re.search(r"\bno good\b", text) or (yes and (no or nots)):
        return SafetyLook(RedFlagState.UNCLEAR, _gravest(kinds))
    if no or nots:
        if kinds and not _BUT.isdisjoint(words):
            return SafetyLook(RedFlagState.UNCLEAR, _gravest(kinds))
        return SafetyLook(RedFlagState.NEGATED)
    if calm and not yes:
        return SafetyLook(RedFlagState.NEGATED)
    if calm:
        return SafetyLook(RedFlagState.UNCLEAR, _gravest(kinds))
    if yes and (kinds or len(words) == 1 or not _ALL.isdisjoint(words)):
        return SafetyLook(RedFlagState.PRESENT, _gravest(kinds))
    if kinds:
        told = not (_TOLD | _ALL).isdisjoint(words)
        state = RedFlagState.PRESENT if told else RedFlagState.UNCLEAR
        return SafetyLook(state, _gravest(kinds))
    return None


def without_reporter(line: str) -> str:
    """A line without the words that say whose answer it is.

    >>> without_reporter("caller says no")
    'no'
    """
    return _REPORTED.sub("", line, count=1)


def clear(line: str) -> bool:
    """Whether a short answer says that nothing is wrong.

    >>> clear("all clear"), clear("yes gas")
    (True, False)
    """
    found = safety_look(line)
    return found is not None and found.state is RedFlagState.NEGATED


_CLAUSES: Final = re.compile(r"[,;.]|\band\b")


def clear_after_a_story(line: str) -> bool:
    """Whether a line tells where somebody looked, and that all is well: nothing else is in it.

    Every clause either denies danger or speaks of none.

    >>> clear_after_a_story("checked around the furnace, all good")
    True
    >>> clear_after_a_story("no smell. floor is wet")
    False
    """
    text = normalise(line)
    clauses = [clause.strip() for clause in _CLAUSES.split(text) if clause.strip()]
    calm = [clause for clause in clauses if clear(clause)]
    return bool(calm) and all(clause in calm or _says_nothing(clause) for clause in clauses)


_TAKES_BACK: Final = re.compile(
    r"\b(?:but|except|though|although|however|maybe|think|guess|sure|if|until|last|yesterday|earlier"
    r"|before|was|were|not|n't|haven'?t|didn'?t|can'?t|couldn'?t|never|later|yet|only|just)\b|\?|\d"
)
_JUST_HERE: Final = re.compile(r"\bjust (?:got|arrived|walked|pulled|came|finished)\b")


def _says_nothing(clause: str) -> bool:
    """Whether a clause speaks of no danger, hedges nothing and takes nothing back."""
    words = _WORD.findall(clause)
    named = any(not names.isdisjoint(words) for names in _NAMED.values())
    plain = _JUST_HERE.sub(" ", clause)
    return look(clause) is None and not named and not _TAKES_BACK.search(plain)


def _unknown(words: Iterable[str]) -> bool:
    known = _YES | _NO | _NOT | _CALM | _FILLER | _BUT | _TOLD | _ALL
    return any(
        word not in known and not any(word in names for names in _NAMED.values()) for word in words
    )


def _gravest(kinds: list[RedFlagKind]) -> RedFlagKind:
    return kinds[0] if kinds else RedFlagKind.UNNAMED
