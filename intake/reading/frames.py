"""What a value is said under: denied, past, another house's, on a condition, asked, taken back.

"Not 20x8", "used to be flex", "the neighbor's is 1,200", "if it's the big one, 4 ton", "is it
20x8?", "0.5 but that can't be right": each holds a value that the person doesn't give. The readers
find values; this says which clauses of a text speak of one that doesn't stand.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from intake.reading.other_things import is_other_thing
from intake.reading.plain_talk import is_innocent, is_plain
from intake.reading.words import words

__all__ = ["Frame", "Framed", "framed"]


class Frame(StrEnum):
    """Why a value that is said doesn't stand."""

    DENIED = "denied"
    PAST = "past"
    ANOTHERS = "another's"
    OTHER_THING = "another thing's"
    CONDITIONAL = "conditional"
    ASKED = "asked"
    TAKEN_BACK = "taken back"
    WISHED = "wished"
    PLANNED = "planned"
    """Only where another clause says what is really there, or that it isn't known."""
    TOLD = "told"
    """What somebody said or thought, beside what is seen; only where the two don't agree."""


@dataclass(frozen=True, slots=True)
class Framed:
    """The frame of a text.

    Attributes:
        frame: The first one found.
        rest: The clauses that stand, joined; "" if none of them says a value.
        within: The clauses that don't.
    """

    frame: Frame
    rest: str
    within: str

    @property
    def contrasted(self) -> bool:
        """Whether a clause stands beside those that don't."""
        return bool(self.rest)


_CUT: Final = re.compile(
    r"[;!?]+(?=\s|$)|,(?=\s)|\.+(?=\s|$)|\s-+\s|[()]+|\b(?:but|although|though|however|whereas"
    r"|while)\b"
    r"|(?<=\S) (?=(?:and )?(?:now|nowadays|today|currently) (?:it|the|we|there|its|is\b|\d|a\b"
    r"|an\b|at\b|reads?\b|all\b|they|has\b))"
    r"|(?<=\d) (?=(?:used to|oh\b|wait\b|i (?:got|get|measured|read|have)\b|(?:but )?actual|only"
    r" got))"
    r"|(?:(?<=\d)|(?<=ton)|(?<=tons)|(?<=inch)|(?<=round)|(?<=ft)|(?<=cfm)|(?<=flex)|(?<=\"))"
    r" (?=it'?s (?:a |an )?[0-9.])"
)
_NUMBER: Final = re.compile(
    r"[0-9]|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen"
    r"|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty"
    r"|sixty|seventy|eighty|ninety|hundred|half|quarter|point)\b"
)
_IS: Final = r"(?:it'?s|it is|that'?s|that is|its|this is|they'?re|there'?s|there is|it was)"
_DENIED: Final = re.compile(
    r"(?:\b(?:isn'?t|isnt|wasn'?t|wasnt|ain'?t|aint|not|never|nor)"
    r"|\b(?:can'?t|cannot|couldn'?t|wouldn'?t|won'?t|shouldn'?t) (?:possibly )?be"
    r"|\b(?:i )?doubt(?: that)?(?: " + _IS + r")?"
    r"|\bno way(?: that)?(?: " + _IS + r")?"
    r"|\b(?:don'?t|dont|do not|didn'?t) (?:think|believe|figure|reckon|see|have|find|got|use|want)"
    r"(?: that)?(?: " + _IS + r")?"
    r"|\bthere(?:'s| is| are|s) (?:no|not)|\b(?:anything but|nowhere near|far from|other than"
    r"|except(?: for)?|besides|apart from|instead of|rather than)"
    r"|\b(?:ignore|forget|disregard|scratch|(?:don'?t|dont) (?:write|put|use|count)(?: down)?))"
    r"(?: (?:a|an|any|the|that|really|actually|even|close to|anywhere near|near|at|of|like|about"
    r"|around|all|be|been|it|no|size|one of those|one of them|those|your|usual|standard|normal))*"
    r" ?(?:[$#+-]|\.)?$"
)
"""A denial right before the first number of its clause."""

_HEDGED_NO: Final = re.compile(
    r"\bnot (?:exactly|quite|sure|certain|positive|100|measured|bad|that|only|just|much|less|more"
    r"|over|under|counting|including)\b|\bdon'?t (?:think|have) (?:so|the|my)\b"
)
_PAST: Final = re.compile(
    r"\bused to (?:be|have|run|read|get|do|pull|move|say|measure|show)\b"
    r"|\b(?:originally|formerly|previously)\b|\bat one time\b|\bback (?:when|then|in the day)\b"
    r"|\bonce (?:was|had)\b|\bonce upon\b"
    r"|\bbefore (?:the |that |this |our |my )?(?:remodel\w*|renovation|addition|rebuild|swap\w*"
    r"|upgrade|change ?out|replacement|cleaning|repair|tune ?-?up|new \w+ (?:went|was|came))\b"
    r"|\bbefore (?:they|we|he|she|i|you|somebody|someone|it was|it got|that was)(?:'d)? (?:was "
    r"|were"
    r" |had |got |even )?(?:chang|replac|redid|redone|remodel|renovat|swapp|clean|fix|add|mov|took"
    r"|cut|upgrad|bought|put|tore|rais|lower|adjust)\w*"
    r"|\b(?:was|were|had|got|read|measured|showed|did|ran)\b.*\blast (?:year|month|summer|winter"
    r"|spring|fall|season|time|visit|owner)\b"
    r"|\blast (?:year|month|summer|winter|spring|fall|season|time|visit)(?:'s)?\b.*\b(?:was|were"
    r"|had|got|read|measured|showed|did|ran)\b"
    r"|\b(?:years?|months?|weeks?) (?:ago|back)\b.*\b(?:was|were|had|got|read|measured|showed)\b"
    r"|\b(?:was|were|had|got|read|measured|showed)\b(?! (?:here|there|out)\b).*"
    r"\b(?:years?|months?|weeks?) (?:ago|back)\b"
)
_OLD_ONE: Final = re.compile(
    r"\b(?:the|our|my|that) (?:old|previous|former|first) (?:one|unit|duct|trunk|grille|return"
    r"|system|reading|setup|drop)s?\b.*\b(?:was|were|had|read)\b"
)
_ANOTHERS: Final = re.compile(
    r"\b(?:neighbou?r(?:'?s)?|next[- ]door(?:'s)?|guy next door)\b"
    r"|\b(?:brother|sister|mother|father|mom|dad|son|daughter|friend|buddy|cousin|uncle|aunt"
    r"|parent|boss|in-?law)s?(?:(?:'s|'|s)? (?:house|place|home|unit|furnace|system|has|have|had)"
    r"|'?s (?:got|one|is|was))\b"
    r"|\b(?:another|a different|(?:the |my |our )?last|the other|your other) (?:house|job|site"
    r"|customer"
    r"|building|address|place)\b"
    r"|\b(?:the|that|my|our) other (?:one|unit|system|furnace|side|trunk|duct|grille|filter|return"
    r"|run|drop|branch)(?:'s| is| was| has| had| reads| says)\b"
    r"|\bthat(?:'s| is| was) (?:for )?(?:the|my|our) other (?:one|unit|system|side|house|trunk|duct"
    r"|grille|filter|run|job)\b"
)
_ONE_AND_OTHER: Final = re.compile(
    r"(?P<one>\bone(?:'s| is| was| of them is)? [^;]*)\bthe other(?: one)?(?=\b)"
)
"""Two things of this house ("one is 16x8, the other one's 12x8")."""
_IF: Final = re.compile(
    r"\bif (?:it|that|this|the|they|you mean|you'?re|we'?re talking|there|he|she|its|all)\b"
    r"(?!(?:'s| is)? (?:what you|helps|matters|counts|any help))"
    r"(?!.*\b(?:label|sticker|tag|plate|tape|print\w*|memory|book|marker|writing|gauge|meter)\b)"
    r"|\bunless\b(?! i'?m (?:wrong|mistaken|misreading|reading it wrong|blind|crazy))"
    r"|\b(?:it |that )?(?:all )?depends\b(?! on how (?:close|exact))"
)
_WHOSE: Final = re.compile(
    r"\bor (?:maybe |wait,? |perhaps |possibly )?(?:that|it|this)(?:'s| was| is) (?:the|my|our"
    r"|on)\b"
)
"""Doubt of what the value is of ("16x8, or maybe that was the return")."""
_NOT_KNOWN_IF: Final = re.compile(
    r"\b(?:know|tell|see|sure|say|idea|clue|check(?:ed)?|remember|look(?:ed)?|certain) if\b"
)
"""Not a condition, but that something isn't known."""
_BE: Final = r"(?:is|are|was|were|isn'?t|aren'?t|does|do|did|should|would|will|shall|could|can)"
_ASKED: Final = re.compile(
    r"^(?:(?:so|wait|um|uh|hmm|well|ok|hey|and|or|but|sorry)[, ]+)*(?:"
    + _BE
    + r" (?:it|that|this|there|they|we|you|these|those)\b(?! (?:say|put|use|write"
    r"|go))|(?:is|are|would|does) [0-9.]+\S*(?: \w+){0,2} (?:normal|ok|okay|good|bad|high|low|too"
    r"|right|enough|standard|typical|common|big|small|plausible|possible|work|do)\b"
    r"|(?:why|how come|what if|who) )"
)
_ASKED_THE: Final = re.compile(
    r"^(?:so |wait |um )*"
    + _BE
    + r" (?:the|my|our|a|an)\b.*\b(?:normal|ok|okay|right|enough|same)$"
)
_TAKEN_BACK: Final = re.compile(
    r"^(?:no|nah|oh|wait|hmm|and|which|i know|although)*[, ]*(?:(?:"
    + _IS
    + r"|that|it|this|which|which is|i think "
    + _IS
    + r") )?(?:(?:is|was|seems?|looks?|sounds?"
    r"|must be|has to be|can'?t be|cannot be|isn'?t|ain'?t|not|doesn'?t|can not be) )?(?:(?:seem"
    r"|look|sound|be|sounds?|even|obviously|clearly|probably|just|totally|way|quite|all) )*"
    r"(?:the )?(?:wrong|not right|isn'?t right|can'?t be right|ain'?t right|right (?!now)"
    r"|incorrect|bogus|impossible|off|a lie|garbage|junk|nonsense|a typo|not true|not correct"
    r"|right$)(?: (?:number|one|side|unit|duct|tape|reading|page|size|line|filter))?(?: i think"
    r"| too| though)?[.! ]*$"
    r"|\b(?:don'?t|dont|do not|didn'?t|can'?t|wouldn'?t) (?:believe|trust|buy) (?:it|that|this|him"
    r"|her|them|the)\b"
)
_WRONG_BEHIND: Final = re.compile(
    r"^[a-z0-9./'\" ]{0,14} (?:is|was|isn'?t|wasn'?t) (?:wrong|not right|right|incorrect|a typo"
    r"|off)$"
    r"(?<! is right)(?<! was right)"
)
_NEGATIVE: Final = words("wrong incorrect bogus impossible garbage junk nonsense")
_WISHED: Final = re.compile(
    r"\b(?:want(?! to (?:say|go with|put))|wants|wanted|would like|i'?d like|we'?d like|would love"
    r"|hoping for|hope for"
    r"|hope it'?s|wish(?:ing)?|shooting for|aiming for|dream\w*)\b"
    r"|\b(?:(?:is|are|am|was) (?:going to|gonna|gunna)|gonna|going to|will|it'?ll|'ll) be\b"
    r"|\b(?:planning|thinking) (?:on|of|about) (?:a|an|putting|getting|going|replacing|doing)\b"
)
_PLANNED: Final = re.compile(
    r"\b(?:supposed to|meant to|should(?:'ve| have)? be|should have|ought to|plans?|drawings?"
    r"|prints?|blueprints?|design\w*|spec\w*|advertised|quoted?|on paper|next size up)\b"
)
_RATED: Final = re.compile(
    r"\b(?:rated?|rating|table|chart|book|set ?point|set (?:to|at|for|on)|(?:plate|tag"
    r"|sticker|label"
    r"|manual|nameplate)(?:'s| says| shows| lists| is| calls for)|max(?:imum)?)\b"
)
"""What a table or plate says, beside a reading of what varies."""
_REAL: Final = re.compile(
    r"\b(?:got|getting|gets|only|reading|showing|running|sitting at|measur\w*|actual\w*|really"
    r"|in reality|(?:i'?m"
    r"|we'?re) (?:reading|getting|seeing|at)|i (?:got|get|see|read|have"
    r"|found|count\w*)|reads"
    r"|hood|added up|adds up|what'?s (?:there|hanging|here|in)|tape\w*|turned out|turns out|they"
    r" (?:put|used|installed|ran)|it'?s|its|it is)\b"
)

_NOT_KNOWN_HERE: Final = re.compile(
    r"\b(?:don'?t|do not|no idea|no clue|not sure|can'?t (?:say|tell)|unsure)(?: know)? what"
    r" (?:it|this|this one|ours|the real|it'?s)\b"
)
"""Beside what was planned: that nobody knows what really is."""
_TOLD: Final = re.compile(
    r"\b(?:i|we) (?:thought|figured|assumed|guessed|expected|said|told you|wrote|gave you|had it)\b"
    r"|\bi'?d have (?:guessed|said|bet)\b|\bwould have (?:guessed|said)\b|\btold you\b|^(?:said"
    r"|thought|figured)\b"
    r"|\b(?:customer|owner|homeowner|landlord|tenant|renter|salesman|seller|inspector|builder|he"
    r"|she"
    r"|they|guy|wife|husband|office|neighbou?r|caller) (?:swore|swears|said|says|thought|thinks"
    r"|claims?|claimed|told (?:me|us)|insists?|insisted|guessed|figured|wrote)\b"
)

_MAYBE_THE_OLD: Final = words("capacity airflow efficiency filter blower_type year area count")
"""Fields in which the question may well be about the old equipment."""

_MAYBE_WISHED: Final = words("airflow capacity efficiency static_pressure blower_type temperature")
"""Fields in which the question may well be about what is wanted or will be put in."""

_FIGURE: Final = words("airflow static_pressure temperature capacity percent")
"""Fields of what varies, in which "sometimes" is no value."""


_SWAPS: Final = ("swapped", "replaced", "traded", "switched")
_SWAPPED: Final = re.compile(
    r"\b(?:swapped|replaced|traded|switched)(?: out)? (?:the |an? |my |our |that"
    r" )?(?P<old>[^,;]{1,40}?)"
    r"(?: out)? (?:for|with) (?:the |an? )?(?:new )?(?P<new>[^,;]{1,60})"
)


_SIZED: Final = words("duct filter grille")
"""Fields in whose answers a plain word may name another thing that has a size ("20x8 trunk")."""


def framed(field: str, line: str, question: str = "") -> Framed | None:
    """What a normalised answer is said under, or None if it simply stands.

    >>> framed("duct", "used to be 20x8 but now 24x8").rest
    'now 24x8'
    >>> framed("length", "not sure, 40 ft") is None
    True
    """
    if is_innocent(line) or (field not in _SIZED and is_plain(line)):
        return None
    if any(swap in line for swap in _SWAPS):
        line = _SWAPPED.sub(r"used to be \g<old>, now \g<new>", line)
    if "other" in line:
        line = _ONE_AND_OTHER.sub(r"\g<one>another", line)
    clauses = [part.strip() for part in _CUT.split(line) if part and part.strip()]
    found = [_frame_of(field, clause, question) for clause in clauses]
    _take_back(clauses, found)
    numbered = [bool(_NUMBER.search(clause)) for clause in clauses]
    _set_elsewhere(field, clauses, found, numbered, question)
    valued = numbered if field not in _WORDED else [True] * len(clauses)
    _contrast(clauses, found, valued)
    planned = [k for k, clause in enumerate(clauses) if numbered[k] and _is_planned(field, clause)]
    for k in planned:
        plate = _SPAN_OF_PLATE.search(clauses[k])
        behind = [
            c
            for j, c in enumerate(clauses)
            if j != k and numbered[j] and (plate or _REAL.search(c))
        ]
        if found[k] is None and (behind or any(map(_NOT_KNOWN_HERE.search, clauses))):
            found[k] = Frame.PLANNED
    if not any(found):
        told = [_is_told(field, c) for c in clauses]
        seen = [says and not tells for says, tells in zip(valued, told, strict=True)]
        if any(told) and any(seen) and not any(map(_PLANNED.search, clauses)):
            found = [Frame.TOLD if tells else None for tells in told]
    if not any(found) and _WHOSE.search(line):
        return Framed(Frame.ASKED, "", line)
    first = next((frame for frame in found if frame is not None), None)
    if first is None:
        return None
    rest = [clause for clause, frame in zip(clauses, found, strict=True) if frame is None]
    within = [clause for clause, frame in zip(clauses, found, strict=True) if frame is not None]
    says = bool(rest) and (field in _WORDED or any(_NUMBER.search(clause) for clause in rest))
    said = ", ".join(rest) if says else ""
    return Framed(first, said, ", ".join(within))


_WAS: Final = re.compile(
    r"\b(?:was|were|wasn't|had|ran|started (?:out )?(?:as|at)|came with)\b"
    r"|\bold (?:one|ones|motor|unit|furnace|filter|grille|duct|trunk|system|blower|return)s?\b"
)
_IS_NOW: Final = re.compile(
    r"\bsold (?:em|them|him|her|us|me)\b|"
    r"\b(?:now|nowadays|today|currently|these days|at present|presently|as of)\b"
    r"|\bthis(?: one| unit| furnace)?(?:'s| is| are)* (?:a |an )?\d"
    r"|\b(?:this|new|present|current) (?:one|ones|motor|unit|furnace|filter|grille|duct|system)?"
    r"(?:'s|'re| is| are)* ?(?:a |an )?\d|\b(?:new|present|current) (?:one|ones|motor|unit"
    r"|furnace)\b"
    r"|\b(?:sold|swapped|replaced|changed|switched|upgraded|went)(?: out)? (?:it |them )?(?:for"
    r"|with|by"
    r"|to)"
    r"\b|\b(?:put|stuck|installed|threw) (?:a |an |the )?(?:new )?.{0,12}in\b|\bput in\b"
)


def _contrast(clauses: list[str], found: list[Frame | None], valued: list[bool]) -> None:
    """Mark what was ("was 80 this morning, 74 now") beside what is said to be now."""
    if len(clauses) < 2 or any(frame is not None for frame in found):
        return
    was = [
        k for k, c in enumerate(clauses) if valued[k] and _WAS.search(c) and not _IS_NOW.search(c)
    ]
    now = [k for k, c in enumerate(clauses) if valued[k] and k not in was and _IS_NOW.search(c)]
    if was and now:
        for k in was:
            found[k] = Frame.PAST


_SPAN_OF_PLATE: Final = re.compile(
    r"\b(?:plate|tag|sticker|label|nameplate|it|unit|furnace|book)(?:'s)?"
    r" (?:allows?|range is|is rated(?: for)?|rates?|calls for|wants|takes)"
    r" (?:about |a )?[0-9.]+ ?(?:-|to|thru) ?[0-9.]+"
)
"""What a plate allows, told as a range beside what was measured."""


_OTHER_UNIT: Final = re.compile(
    r"\b(?:the |that |my |our )?(?:upstairs|downstairs|basement|attics?|garage|addition|second|old)"
    r"(?: (?:unit|one|system|furnace|trunk|zone|side))?"
    r"(?:'s| is| has(?: a| an)?| had| does| do| blows| reads| runs| got| at)\b"
    r"|\b(?:water heater|stove|range|dryer|fireplace|boiler|generator|pool heater|airport"
    r"|downtown|town"
    r"|city|valley|base|summit|gas|manifold|suction)(?: (?:pressure|line))?(?:'s| is| has| at)\b"
    r"|\battics?(?: is|'s)? (?=[0-9])"
    r"|\bthe (?:water heater|stove|dryer|fireplace|boiler|generator|airport|gas|manifold)\b"
)
_THIS_UNIT: Final = re.compile(
    r"\b(?:this|ours|here|you(?:'?re| are)? (?:want|ask\w*|meant?)|youre ask\w*|we(?:'re| are|"
    r" sit)|you asked"
    r"|furnace|house|static|the main|total|return|supply)\b"
)


def _set_elsewhere(
    field: str,
    clauses: list[str],
    found: list[Frame | None],
    valued: list[bool],
    question: str,
) -> None:
    """Mark another unit's value beside this one's ("downstairs does 1400, this one's 800")."""
    asked = question.lower()
    others = [
        valued[k] and (match := _OTHER_UNIT.search(c)) is not None and match[0] not in asked
        for k, c in enumerate(clauses)
    ]
    this = [valued[k] and not others[k] and _THIS_UNIT.search(c) for k, c in enumerate(clauses)]
    if any(others) and any(this) and field not in ("grille", "filter"):
        for k, other in enumerate(others):
            if other and found[k] is None and not _THIS_UNIT.search(clauses[k]):
                found[k] = Frame.ANOTHERS


def _is_told(field: str, clause: str) -> bool:
    """Whether a clause tells what somebody said, thought or wants, to be held against what is."""
    wished = field in _MAYBE_WISHED and _WISHED.search(clause) is not None
    return wished or (_TOLD.search(clause) is not None and _PLANNED.search(clause) is None)


def _is_planned(field: str, clause: str) -> bool:
    rated = field in _FIGURE and field != "capacity" and _RATED.search(clause) is not None
    if field == "temperature" and _SPAN_OF_PLATE.search(clause):
        return True
    return rated or _PLANNED.search(clause) is not None


def _frame_of(field: str, clause: str, question: str) -> Frame | None:
    number = _NUMBER.search(clause)
    if number is not None:
        before = clause[: number.start()]
        if _DENIED.search(before) and not _HEDGED_NO.search(before):
            return Frame.DENIED
    if number is not None and _WRONG_BEHIND.search(clause[number.end() :]):
        return Frame.TAKEN_BACK
    if (_ASKED.match(clause) or _ASKED_THE.match(clause)) and (
        number is not None or field in _WORDED
    ):
        return Frame.ASKED
    if number is None and field not in _WORDED and _NOT_KNOWN_IF.search(clause):
        return None
    if _IF.search(clause) or (field in _FIGURE and re.search(r"\bsometimes\b", clause)):
        return Frame.CONDITIONAL
    if number is None and field not in _WORDED:
        return None
    if _PAST.search(clause) or (field in _FIGURE and _THE_DAY_BEFORE.search(clause)):
        return Frame.PAST
    asked = question.lower()
    if field not in _MAYBE_THE_OLD and "old" not in asked and _OLD_ONE.search(clause):
        return Frame.PAST
    if _ANOTHERS.search(clause):
        return Frame.ANOTHERS
    if number is not None and is_other_thing(field, clause):
        return Frame.OTHER_THING
    wished = field not in _MAYBE_WISHED and _WISHED.search(clause)
    return Frame.WISHED if wished else None


_THE_DAY_BEFORE: Final = re.compile(
    r"\b(?:was|were|had|read)\b.*\b(?:yesterday|last night|the other day)\b"
    r"|\b(?:yesterday|last night|the other day)\b.*\b(?:was|were|had|read)\b"
)
_WORDED: Final = words("material blower_type coil_state choice")
"""Fields whose answers hold no number."""


def _take_back(clauses: list[str], found: list[Frame | None]) -> None:
    """Mark what stands before "that can't be right" or "that's the other one"."""
    for k, clause in enumerate(clauses):
        if not k or _NUMBER.search(_THE_ONE.sub(" ", clause)):
            continue
        other = _ANOTHERS.search(clause) is not None
        if other and Frame.DENIED in found[:k]:
            continue
        if other or (_TAKEN_BACK.search(clause) and _is_no(clause)):
            for j in range(k):
                if found[j] is None:
                    found[j] = Frame.ANOTHERS if other else Frame.TAKEN_BACK


_THE_ONE: Final = re.compile(
    r"\b(?:other|that|this|the|wrong|right|first|last|big|small|next|old|new|which) one\b"
)


def _is_no(clause: str) -> bool:
    said = set(clause.replace("'", "").split())
    no = re.search(r"\b(?:no|not|off|lie|typo|\w+n'?t)\b", clause) is not None
    return no or bool(said & _NEGATIVE)
