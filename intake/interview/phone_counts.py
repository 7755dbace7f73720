"""Numbers of a call that carry other numbers with them: vents, rooms, square feet, years.

Each function takes a normalised line and gives a reading, the line without what isn't asked for,
or None where the usual reader needs no help.
"""

import re
from typing import Final

from intake.interview.own_words import whole_words
from intake.interview.told_otherwise import rooms_named
from intake.reading.manner import sureness
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Sure
from intake.reading.scan import scan

__all__ = ["area", "registers", "rooms", "year"]

_CLAUSES: Final = re.compile(r"[,;](?!\d{3}\b)|\.(?!\d)|\b(?:but|and|though|while)\b| - ")


def _clauses(line: str) -> list[str]:
    return [part.strip() for part in _CLAUSES.split(line) if part.strip()]


def _numbers(text: str, field: str = "count") -> list[float]:
    return [
        float(number.value)
        for number in scan(text, field).numbers
        if not number.negated and not (number.token is not None and number.token.pronoun)
    ]


# --- vents that blow -----------------------------------------------------------------------------

_N: Final = r"(?:\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|another)"
_NOT_BLOWING: Final = whole_words(
    r"suck\w*|pull\w*|returns?|closed|shut|blocked|dead|covered|don'?t blow|doesn'?t blow"
    r"|not blowing"
)
_BLOWING: Final = whole_words(r"blow\w*|supply|supplies|put\w* out|push\w* out|come out|registers?")
_OF_THEM: Final = re.compile(
    rf"\b{_N} of (?:them|'?em|those|these|which) (?:are |is |just )*(?:returns?|suck\w*|pull\w*)\b"
)
_DEAD: Final = re.compile(
    rf"\b{_N}(?: of (?:them|'?em|those))? (?:\w+ )?(?:don'?t|doesn'?t|do not|aren'?t|not) (?:really"
    rf" )?blow\w*"
)
_MINUS: Final = re.compile(rf"\b(?P<all>{_N}) (?:minus|less) (?P<off>{_N})\b")
_PER_ROOM: Final = re.compile(
    rf"\b(?P<each>{_N}) (?:per|each|a|in (?:each|every)|to (?:a|each)|for (?:each|every)) ?(?:bed)?"
    rf"(?:room|each)?\b.*?\b(?P<rooms>{_N})\b(?: \w+)? ?rooms?\b"
    rf"|\b(?P<rooms2>{_N}) (?:\w+ )?rooms?\b.*?\b(?P<each2>{_N}) (?:each|apiece|per room|a room"
    r"|in each|in every)\b"
)
_PLUS: Final = re.compile(
    rf"(?P<before>[^,;]*?\b(?P<first>{_N})\b[^,;\d]*?),? (?:plus|and then|and also|and) "
    rf"(?P<more>{_N})(?: more)?(?P<where> (?:in|at|for|by|under|over|upstairs|downstairs|more|small"
    r"|little|tiny)\b[^\d,;]*)[.! ]*"
)
_BAKERS: Final = re.compile(r"\b(?:a )?baker'?s dozen\b")
_STOPPED_AT: Final = re.compile(
    r"\b(?:stopped|quit|gave up|lost) (?:count|counting|the count|track)?\b ?(?:at|after|around)\b"
)
_MORE_THAN_THAT: Final = re.compile(rf"\b(?P<more>{_N}) (?:more|others?|extra|besides)\b")
_ONE_DEAD: Final = re.compile(
    r"(?P<all>[^,;.]+?),? (?:but|and|though|except) (?:one|1)(?: of (?:them|'?em|those))?"
    r" (?:\w+ )?(?:doesn'?t|don'?t|does not|isn'?t|never) (?:really )?(?:blow\w*|work\w*)[^\d]*"
)
_SO: Final = re.compile(rf"\b(?:so|that'?s|makes|makes it|total|equals)[ :]+(?P<sum>{_N})\b[^\d]*$")


def _one(text: str) -> int:
    return 1 if text == "another" else int(_numbers(text)[0])


def _left_over(total: int, off: int) -> AskBack:
    left = total - off
    return AskBack(
        f"Is that {left} that blow?", ({"count": left}, {"count": total}), AskKind.TWO_VALUES
    )


def registers(line: str) -> Reading | str | None:
    """How many vents blow: closed ones and those that suck aside, a sum as it was made."""
    if _BAKERS.search(line):
        return _BAKERS.sub("13", line)
    if _STOPPED_AT.search(line):
        return AskBack("How many are there in all, at a guess?", (), AskKind.MISSING_PART)
    made = _SO.search(line)
    if made is not None and len(_numbers(line)) > 1:
        return Accepted({"count": _one(made["sum"])}, sureness(line))
    per = _PER_ROOM.search(line)
    if per is not None and len(_numbers(line)) >= 1:
        each, count = per["each"] or per["each2"], per["rooms"] or per["rooms2"]
        total = _one(each) * _one(count)
        more = _MORE_THAN_THAT.search(line, per.end())
        if more is not None:
            whole = total + _one(more["more"])
            return AskBack(
                f"Is that {whole} in all?", ({"count": whole}, {"count": total}), AskKind.TWO_VALUES
            )
        if total <= 40:
            return Accepted({"count": total}, Sure.HEDGED)
    minus = _MINUS.search(line)
    if minus is not None:
        return _left_over(_one(minus["all"]), _one(minus["off"]))
    dead = _DEAD.search(line)
    if dead is not None and len(told := _numbers(line)) == 2 and told[0] > told[1]:
        return _left_over(int(told[0]), int(told[1]))
    one_dead = _ONE_DEAD.fullmatch(line)
    if one_dead is not None and len(told := _numbers(one_dead["all"])) == 1 and told[0] > 1:
        return _left_over(int(told[0]), 1)
    parts = [] if _OF_THEM.search(line) else _clauses(line)
    blowing = [p for p in parts if _BLOWING.search(p) and not _NOT_BLOWING.search(p)]
    others = [p for p in parts if _NOT_BLOWING.search(p) and _numbers(p)]
    if others and len(others) < len(parts):
        kept = blowing or [p for p in parts if p not in others]
        return ", ".join(kept)
    less = _OF_THEM.search(line)
    if less is not None and len(told := _numbers(line)) == 2 and told[0] > told[1]:
        return Accepted({"count": int(told[0] - told[1])}, sureness(line))
    plus = _PLUS.fullmatch(line)
    if plus is not None and len(_numbers(plus["before"])) == 1 and "plus" in line:
        return Accepted({"count": _one(plus["first"]) + _one(plus["more"])}, sureness(line))
    return None


# --- rooms that never feel right -----------------------------------------------------------------

_MANY_ROOMS: Final = re.compile(
    r"(?:(?:pretty much|about|like|basically|almost|nearly|it'?s|the|oh|yeah|probably"
    r"|honestly)[, ]+)*"
    r"(?:half(?: of)?(?: the| of)*(?: house| rooms?| them| it)|all(?: of)?(?: the)?(?: ?them| ?'?em"
    r"| it"
    r"| rooms?| house)|every(?: \w+)? room|everything|the whole (?:house|upstairs|place|floor)"
    r"|(?:the )?(?:whole |entire )?(?:upstairs|second floor|downstairs|first floor)"
    r"|most(?: of)?(?: the"
    r"| them| it)*(?: rooms?| house)?)[^\d]*"
)


_OF_ITS_OWN: Final = re.compile(
    r"\b(?:but|though) (?:that'?s|it'?s|only|just)(?: (?:just|only|because of|from|when))*"
    r" (?:the |she |he |they |we |i )?(?:oven|stove|range|cook\w*|bak\w*|fireplace|wood ?stove"
    r"|dryer)\b"
)
"""A room that something in it heats."""
_NO_MORE_THAN: Final = re.compile(rf"(?:oh |well |just )*no more than (?P<n>{_N})\b(?! or)")
_ONLY_N: Final = re.compile(
    rf"(?:oh |well |yeah,? )*(?:just|only) (?:the )?(?P<n>{_N})(?: (?:bed)?rooms?)?[,;. ]+"
    r"(?:nothing|none|no) (?:else|more|others?)(?: rooms?)?[.! ]*"
)
_ANOTHER_ONE: Final = re.compile(
    r"(?:just |only |about |yeah |oh )*(?:one|1)(?: room)? (?:in |for "
    r"|over )?(?:the )?(?:summer|winter"
    r"|upstairs|downstairs|up|down),? (?:and |then )?(?:a different one|another(?: one)?"
    r"|a different room|a second one|some other one)"
    r"(?: (?:in |for |over )?(?:the )?(?:summer|winter|upstairs|downstairs|up|down))?[.! ]*"
)


def rooms(line: str) -> Reading | None:
    """How many rooms: those that are named, or asked where only a share is told."""
    if _OF_ITS_OWN.search(line):
        return AskBack("And apart from that: how many never feel right?", (), AskKind.MISSING_PART)
    bounded = _NO_MORE_THAN.match(line)
    if bounded is not None:
        return Accepted({"count": _one(bounded["n"])}, Sure.HEDGED)
    only = _ONLY_N.fullmatch(line)
    if only is not None:
        return Accepted({"count": _one(only["n"])}, sureness(line))
    if _ANOTHER_ONE.fullmatch(line):
        return Accepted({"count": 2}, sureness(line))
    named = rooms_named(line)
    if not named and "both" in line and rooms_named(line.replace("both", " ")):
        return AskBack("How many rooms is that?", (), AskKind.MISSING_PART)
    if named:
        return Accepted({"count": named}, sureness(line))
    if _ALL_FINE.fullmatch(line):
        return Accepted({"count": 0}, sureness(line))
    if _MANY_ROOMS.fullmatch(line):
        return AskBack("How many rooms is that?", (), AskKind.MISSING_PART)
    return None


_ALL_FINE: Final = re.compile(
    r"(?:(?:no|nope|nah|oh|honestly|yeah)[, ]+)*(?:the )?(?:whole (?:house|place)|everything|all(?:"
    r" of)?(?: the)?"
    r"(?: them| ?'?em)?(?: rooms)?|every room|they|it)(?:'?s|'?re| is| are| all| feels?| seems?|"
    r" stays?)*"
    r" (?:just |pretty |all )?(?:fine|good|ok|okay|comfortable|great|even|right|perfect|alright|all"
    r" right)[.! ]*"
)

# --- square feet ---------------------------------------------------------------------------------

_ASIDES: Final = re.compile(
    r"[,; ]*\b(?:give or take|plus or minus|\+/-)(?: (?:a )?(?:\d[\d,]*|couple|few"
    r"|hundred)(?: hundred)?)?"
    r"(?: or so)?(?: (?:sq\w*|square)(?: (?:ft|feet|foot))?)?"
    r"|[,; ]*\b(?:and )?(?:with |has |it'?s )?(?:\d|one|two|three|four|a single) ?(?:levels?"
    r"|floors?"
    r"|stor(?:y|ies|eys?)|bed ?rooms?|bd|br|baths?|bath ?rooms?|stories tall)\b"
)
_ROUGHLY: Final = re.compile(r"\b(?:give or take|plus or minus)\b")
_ONLY_FLOOR: Final = re.compile(
    r"\b(?:just|only) (?:does |serves |covers |for |heats |cools )?(?:the |that )?(?:upstairs"
    r"|downstairs"
    r"|main (?:floor|level)|(?:first|second|top|bottom|upper|lower|1st|2nd) (?:floor|level)"
    r"|addition)\b"
)
_ONE_UNIT: Final = re.compile(
    r"\b(?:1|one|a single) (?:unit|system) (?:for|does|serves|covers|heats) (?=(?:about )?\d)"
)
_OWN_UNIT: Final = whole_words(
    r"(?:has|have|got|with|on) (?:its|their|a|an|another)(?: own| separate| other)? (?:unit|system"
    r"|one)"
)
_TAKEN_OFF: Final = re.compile(
    r"\d\D{0,20}\b(?:minus|less|subtract\w*|take (?:off|away|out)) (?:the |a |my "
    r"|our )?[a-z]+\b(?!.*\d)"
)
_FEET: Final = re.compile(
    r"\b(\d,?\d{3}|[4-9]\d{2}) ?(?:feet|foot|ft|footage)\b(?! (?:long|wide|by|x|tall))"
)
_ONLY_PART: Final = re.compile(
    r"\b(?:this|the|that) ?(?:unit|system|one|furnace|a/?c)?(?:'s| is| does| serves| only| just"
    r"| covers"
    r"| handles| runs)+\b|\bit (?:only|just)\b|\b(?:only|just) (?:does|serves|covers|handles|the)\b"
)
_ALL_OF_IT: Final = whole_words(
    r"(?:does|do|serves?|runs?|covers?|handles?|for|heats and cools|cools|heats) (?:it |them )?"
    r"(?:all|both|everything|the (?:whole|entire) (?:house|thing|place))|all (?:of )?it|one unit"
    r"|whole house|in all|altogether|total"
)
_DOES_BOTH: Final = whole_words(
    r"(?:does|do|serves?|runs?|covers?|handles?|for) (?:them )?(?:both|all of it)"
)
_FLOORS: Final[tuple[tuple[str, re.Pattern[str]], ...]] = (
    ("up", whole_words(r"up|upstairs|upper|second floor|2nd floor|top floor|loft|bonus room")),
    (
        "down",
        whole_words(
            r"down|downstairs|lower|main(?: floor| level)?|first floor|1st floor|ground floor"
        ),
    ),
    ("below", whole_words(r"basement|finished basement|cellar")),
    ("garage", whole_words(r"garage|shop")),
)


def _floor(text: str) -> str:
    found = [name for name, pattern in _FLOORS if pattern.search(text)]
    return found[0] if len(found) == 1 else ""


_HUNDREDS: Final = {
    word: 1000 + 100 * n
    for n, word in enumerate(
        (
            "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen",
            "eighteen", "nineteen",
        ),
        1,
    )
}  # fmt: skip
_OR_HUNDRED: Final = re.compile(
    rf"\b({'|'.join(_HUNDREDS)}) (?:or|to) ({'|'.join(_HUNDREDS)}) hundred\b"
)
"""Two figures of one word: "eighteen or nineteen hundred"."""


def area(line: str) -> Reading | str | None:
    """Square feet that this unit serves, of a line that tells of levels or parts too."""
    if _OR_HUNDRED.search(line):
        return _OR_HUNDRED.sub(lambda at: f"{_HUNDREDS[at[1]]} to {_HUNDREDS[at[2]]}", line)
    if _TAKEN_OFF.search(_ASIDES.sub(" ", line)):
        return AskBack("How many square feet is it without that?", (), AskKind.MISSING_PART)
    plain = _FEET.sub(r"\1 sq ft", _ASIDES.sub(" ", line)).strip(" ,;")
    if _ROUGHLY.search(line):
        plain = f"about {plain}"
    plain = _ONE_UNIT.sub(" ", plain).strip(" ,;")
    parts = [(part, _numbers(part, "area")) for part in _clauses(plain)]
    figures = [(part, told[0]) for part, told in parts if len(told) == 1 and told[0] >= 100]
    if len(figures) == 1 and (_ONLY_FLOOR.search(plain) or _OWN_UNIT.search(plain)):
        return Accepted({"area_ft2": figures[0][1]}, sureness(plain))
    if len(figures) == 2 and all(len(told) < 2 for _, told in parts):
        served = _served(parts, figures)
        if served is not None:
            return Accepted({"area_ft2": served}, sureness(plain))
        return _in_all(plain, figures)
    return plain if plain and plain != line else None


def _served(parts: list[tuple[str, list[float]]], figures: list[tuple[str, float]]) -> float | None:
    """The figure of the part that this unit serves, where the line says which."""
    at = next((n for n, (part, _) in enumerate(parts) if _ONLY_PART.search(part)), None)
    if at is None:
        return None
    part, told = parts[at]
    if told:
        return told[0] if told[0] >= 100 else None
    floor = _floor(part)
    same = [value for words, value in figures if floor and _floor(words) == floor]
    if len(same) == 1:
        return same[0]
    later = [value for words, value in parts[at + 1 :] if value]
    return later[0][0] if len(later) == 1 and later[0] else None


def _in_all(line: str, figures: list[tuple[str, float]]) -> Reading | None:
    """The sum of two floors; asked where nobody says that one unit does both."""
    floors = [_floor(words) for words, _ in figures]
    total = figures[0][1] + figures[1][1]
    if floors[0] == floors[1] or "garage" in floors:
        return None
    if _DOES_BOTH.search(line):
        return Accepted({"area_ft2": total}, sureness(line))
    if "" in floors:
        return None
    if _ALL_OF_IT.search(line):
        return Accepted({"area_ft2": total}, sureness(line))
    readings = tuple({"area_ft2": value} for value in (total, figures[0][1], figures[1][1]))
    return AskBack(
        f"Does this unit serve both, {total:,.0f} sq ft in all?", readings, AskKind.TWO_VALUES
    )


# --- the year ------------------------------------------------------------------------------------

_NOT_BUILT: Final = whole_words(
    r"mov(?:e|ed|ing) in\w*|moved|bought|been (?:there|here|in it)|liv(?:e|ed|ing)|since|owned"
    r"|got it"
    r"|ducts?|ductwork|redone|redid|remodel\w*|renovat\w*|updated|roof|addition|added|furnace|unit"
    r"|a/?c|heat pump|system|replaced|installed|flipped|gutted|sold"
)
_SHORT_YEAR: Final = re.compile(
    r"(?:built|constructed|put up|went up|from|dates? (?:to|from|back to)|finished)"
    r" (?:in |back in |around |about )*'?(?P<year>[3-9]\d)(?!['\ds,x]|\.\d| ?(?:sq|feet|years?))"
)


_I_MEAN: Final = re.compile(r"[^\d]*\b(?P<year>1[89]\d\d|20[0-3]\d),? i mean(?:t)?[.! ]*")
"""A year behind a slip of the tongue; it takes no earlier figure back."""


def year(line: str) -> Reading | str | None:
    """The year the house was built, apart from when people came or something was redone."""
    meant = _I_MEAN.fullmatch(line)
    if meant is not None:
        return Accepted({"year": int(meant["year"])}, sureness(line))
    parts = _clauses(line)
    dated = [part for part in parts if re.search(r"\d{2}|(?:ties|teens)\b", part)]
    other = [p for p in dated if _NOT_BUILT.search(p) and not re.search(r"\bbuilt\b", p)]
    kept = [part for part in dated if part not in other]
    plain = line
    if other and kept:
        plain = kept[-1] if len(kept) > 1 and re.search(r"\d{4}", kept[-1]) else ", ".join(kept)
    short = _SHORT_YEAR.search(plain)
    if short is not None and len(re.findall(r"\d+", plain)) == 1:
        return Accepted({"year": 1900 + int(short["year"])}, sureness(line))
    return plain if plain != line else None
