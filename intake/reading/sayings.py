"""Turns of phrase about sizes, linings and ranges, put plainly before a text is scanned.

"14 one way and 8 the other" is 14 x 8, "black fuzzy stuff glued inside" a liner, "no less than 20
and no more than 25" between 20 and 25.
"""

from __future__ import annotations

import re
from typing import Final

from intake.reading.plain_talk import is_plain_without, words_in
from intake.reading.sayings_of_sizes import COUNT, FOUR_OR_MORE, NUMBER, OF_OTHERS, OF_SIZES, SIZE
from intake.reading.words import words

__all__ = ["in_plain_words"]

_SIZED: Final = words("duct filter grille")
_LINED: Final = words("duct material")
_SMALL_NUMBERS: Final = r"(?:oh|zero|one|two|three|four|five|six|seven|eight|nine)"
_LEAST: Final = (
    r"(?:no less than|not less than|at least|more than|over|no under|not under|min(?:imum)?)"
)
_MOST: Final = r"(?:no more than|not more than|at most|less than|under|not over|max(?:imum)?|up to)"


_SOFT: Final = (
    r"(?:(?:black|gray|grey|fuzzy|soft|yellow|pink|white|furry|fluffy|insulated|acoustic|spongy"
    r"|matted"
    r"|that|some|thick|thin|old) )+(?:stuff|material|insulation|mat|matting|coating|fiberglass|foam"
    r"|fuzz|fluff|layer|padding|blanket|batting|lining)"
)
_OF_LININGS: Final = (
    re.compile(
        r"\b(?:insulation|fiberglass|foam|blanket)(?: is| was)? (?:glued|stuck|pinned|sprayed"
        r"|attached)"
        r"(?: on| to| onto)?(?: the)? inside\b"
        rf"|\b{_SOFT}(?: is| was)?(?: glued| stuck| sprayed| pinned| attached)?(?: on| to|"
        rf" onto)?(?: the)?"
        r" inside(?: of it)?\b"
    ),
    "fuzzy inside lining",
)
_OF_FLOWS: Final = tuple(
    (re.compile(pattern), plain)
    for pattern, plain in (
        (
            r"(?<=[0-9a-z]) (?:with|at|on|@) (0?\.[0-9]+) (?:(?:on|of|in) )?(?:the )?(?:static"
            r"|total"
            r"|gauge|tesp)\b",
            r" at \1 iwc",
        ),
        (r"(?:#|\bno\.? ?|\bnumber )?\b[0-9]{1,2} (?=plate\b)", ""),
        (r"\bplate (?:#|no\.? ?|number )?[0-9]{1,2}\b(?! ?[0-9])", "plate"),
        (r"\b(?:blink(?:s|ed)?|flash(?:es|ed)?) [0-9]{1,2}(?: times)?\b(?=.*[0-9]{3})", "blinks"),
        (r"\b[0-9]{1,2} (?:blinks?|flashes)\b(?=.*[0-9]{3})", "blinks"),
        (
            r"(?:(?<=[0-9])|(?<= )) ?(?:at|@) (?:about )?(0?\.[0-9]+)(?= |,|$)(?! ?(?:k|in"
            r"|iwc|wc))",
            r" at \1 iwc",
        ),
        (
            rf"(?<=[0-9]) (?:at|@) (point {_SMALL_NUMBERS}(?: {_SMALL_NUMBERS})?)(?= |,|$)",
            r" at \1 iwc",
        ),
    )
)
_OF_PLATES: Final = re.compile(
    r"\b(?:max\.?|min\.?|maximum|minimum)? ?(?:fuse|breaker|hacr|overcurrent|circuit|ckt|mca"
    r"|mop|mocp"
    r"|rla|lra|fla|ampacity|hz|phase|manifold|gas press(?:ure)?|factory charge|charge)"
    r"(?: (?:size|device|amps?|breaker|protection|press(?:ure)?))?[ .:=]*[0-9][0-9./]*"
    r"(?: ?(?:amps?|a|v|volts?|hz|lbs?|oz|psig?|in\.? ?w\.?c\.?|iwc|wc)\b)*"
)
"""Figures of a name plate that are no capacity."""
_PLATE_WORDS: Final = re.compile(
    r"\b(?:fuse|breaker|hacr|overcurrent|circuit|ckt|mca|mop|mocp|[rlf]la|ampacity|hz|phase"
    r"|manifold"
    r"|press|pressure|charge)\b"
)
_OF_PLACES: Final = re.compile(
    r"\bhouse (?:number|no\.?|#)(?:'s| is)? ?[0-9]+|\bzip(?: code)? (?:ends|starts|begins)"
    r" (?:in|with) [0-9]+|"
    r"\bpop(?:ulation)?\.?:? ?[0-9][0-9,]*|\b(?:and )?(?:the |my |our )?zip(?: code)?(?:'s| is|:)?"
    r" ?[0-9]{5}\b"
)
"""Figures of a town on its sign or in an address."""
_MIN_MAX: Final = (
    re.compile(
        rf"\b(?:min(?:imum)? )?({NUMBER}) ?(?:[a-z]{{2,7}} )?(?:min(?:imum)?)?,? ?(?:and |to )?"
        rf"(?:max(?:imum)? )?({NUMBER})(?: ?max(?:imum)?)?\b"
    ),
    r"between \1 and \2",
)
_OF_RANGES: Final = (
    re.compile(
        rf"\b{_LEAST} ({NUMBER})(?: ?[a-z]{{2,7}})?,? ?(?:and|but|,)? ?{_MOST} (?={NUMBER})"
    ),
    r"between \1 and ",
)
_OF_FALLING_RANGES: Final = (
    re.compile(rf"\b{_MOST} ({NUMBER})(?: ?[a-z]{{2,7}})?,? ?(?:and|but|,)? ?{_LEAST} ({NUMBER})"),
    r"between \2 and \1",
)


_ISH: Final = re.compile(
    rf"\b({NUMBER})[ -]?ish (?=(?:tons?|ft|feet|foot|inch|inches|in\b|cfm|pa\b|btu|percent"
    rf"|degrees))"
)
_BARE_UNIT: Final = re.compile(
    r"(?:^|(?<= by )|(?<= x )|(?<=about )|(?<=, ))(foot|inch|ton) (?=and a (?:half|quarter"
    r"|third)\b)"
)
_MIN: Final = re.compile(r"\bmin(?:imum)?\b")
_MAX: Final = re.compile(r"\bmax(?:imum)?\b")


_BURIED: Final = re.compile(
    r"\bunder (?:a|an|about|[0-9]+)(?: [0-9]+)? ?(?:foot|feet|inch|inches|ft|in) of\b"
)
_ONE_MOMENT: Final = re.compile(
    r"\b(?:one|just a|give me a|hang on a) (?:sec|second|moment)\b(?! (?:stage"
    r"|one))[.,]?"
)
_AT_DROP: Final = re.compile(r"\b(?:at|in|on|by|near|off) the (?:return )?drop\b(?! (?:is|was)\b)")
_SETTLED: Final = re.compile(
    r"^(?!.*\b(?:with|when|if|door)\b).*\b(?:(?:came|come|went|dropped|fell|rose|crept"
    r"|climbed)(?: back)?(?: up| down)?(?= to)"
    r"|settled|stopped|steadied|level?led off|landed|ended up|wound up|stabilized|sat)"
    r"(?: down| in| out)? (?:at|on|around|near|to) (?=(?:about |like |around )?-?[0-9.])"
)
"""What a reading went through before it stood ("climbed then stopped at .46")."""


def _with_roles(match: re.Match[str]) -> str:
    """What a reading is of stays; what it went through before goes."""
    return " ".join([*_ROLES.findall(match[0]), "at "])


_ROLES: Final = re.compile(r"\b(?:total|external|static|return|supply|tesp)\b")
_OF_RISES: Final = re.compile(
    r",? ?\b(?:temp(?:erature)? )?rise (?:range )?(?:of |is )?[0-9]+ ?(?:-|to) ?[0-9]+"
    r"|,? ?\b[0-9]+ ?(?:-|to) ?[0-9]+ (?:degree )?(?:temp(?:erature)? )?rise\b"
    r"|,? ?\b(?:max )?(?:ext(?:ernal)? )?static (?:pressure )?(?:is |of )?0?\.[0-9]+"
)
_THOUSANDS: Final = re.compile(
    r"(?P<of>.{0,20}?),? (?:that'?s |that is )?(?:in )?thousands?(?: that is)?[.! ]*$"
)
"""A scale told behind the figure ("forty eight, thousand that is")."""


def _in_thousands(match: re.Match[str]) -> str:
    """The figure with its scale at it, unless it has one already ("70 M input, that's"
    " thousand")."""
    told = match["of"]
    return told if re.search(r"[0-9] ?[mk]\b", told) else f"{told} thousand"


_PIECES_OF: Final = re.compile(
    rf"\b({COUNT}) ([0-9]+|{FOUR_OR_MORE}) ?-?(?:foot|feet|ft|footers?) ?(sections?|sticks?"
    rf"|joints?"
    r"|pieces?|lengths?)\b"
)
_FOR_MONEY: Final = re.compile(
    r"\b(?:for|cost|paid|spent)(?: about| like| around| only)? \$? ?[0-9][0-9.,]* ?(?:grand|bucks"
    r"|dollars)\b"
)
_FILLERS: Final = re.compile(r"\b(?:u+m+|u+h+)\b(?![ -]?(?:huh|uh|oh|no|hu)\b)[,.]* ?")
_TRIGGER: Final = re.compile(
    r"\(|one [a-z]+ one\b|pop|zip|h ?x ?w|sec\b|second|moment|minute|"
    r"way|side|across|bottom|top|flat|horiz|left|square|open|call|avail|working|staffed|4 ?x ?4"
    r"|paint"
    r"|insul|cellulose|fluff|blown|joist|stud|framing|lumber|rafter|truss|foot by|foot x|block"
    r"|inch thick"
    r"|2 ?x ?(?:4|6|8|1)|room"
    r"|changed|dated"
    r"|replaced|installed|cleaned|bought|part|model|item|sku|serial|stock|less|least|more|over"
    r"|under|min"
    r"|max|most|plate|drop|settled|stopped|steadied|landed|ended|wound|stabil|grand|bucks|dollars"
    r"|with|sections?|sticks?|joints?|pieces|level|sat |rise|static|thousand|twin|mate|matching"
    r"|like it|like that|house n|change|round"
    r"|point|came|went|dropped|fell|rose|crept|climbed|glued|stuck|pinned|blink"
    r"|flash"
    r"|(?:at|@) (?:about )?0?\.|inside"
)
"""Some piece of every turn of phrase, or one of the words below; a text without any has none.

Each piece begins with a letter, so that it is found fast.
"""
_TURNING_WORDS: Final = words("both each each's all")
_PLAIN_TURNS: Final = words(
    """
    x at both each one flat square squares across inside outside over joist joists stud model
    second minute minutes max minus aluminum aluminium insulated insulation drop level by thick
    rise static thousand
    """
)
"""The plain words that hold such a piece, or stand beside one."""


def in_plain_words(line: str, field: str) -> str:
    """A normalised text with its turns of phrase in plain words.

    >>> in_plain_words("14 inches one way and 8 the other", "duct")
    '14 x 8'
    >>> in_plain_words("no less than 20 and no more than 25 ft", "length")
    'between 20 and 25 ft'
    """
    turned = not is_plain_without(line, _PLAIN_TURNS) or "(" in line or "@" in line
    if "ish" in line:
        line = _ISH.sub(r"about \1 ", line)
    if "uh" in line or "um" in line:
        line = _FILLERS.sub("", line)
    if " and a " in line:
        line = _BARE_UNIT.sub(r"a \1 ", line)
    if not turned:
        return line
    turned = not _TURNING_WORDS.isdisjoint(words_in(line)) or _TRIGGER.search(line) is not None
    if not turned and not (field == "capacity" and _PLATE_WORDS.search(line)):
        return line
    line = _BURIED.sub("buried", _ONE_MOMENT.sub("", line))
    if field in _SIZED:
        for pattern, plain in OF_SIZES:
            line = pattern.sub(plain, line)
        for pattern, plain in OF_OTHERS:
            without = pattern.sub(plain, line)
            line = without if SIZE.search(without) else line
    else:
        line = _PIECES_OF.sub(r"\1 of \2 ft \3", line)
        line = _OF_RANGES[0].sub(_OF_RANGES[1], line)
        line = _OF_FALLING_RANGES[0].sub(_OF_FALLING_RANGES[1], line)
        if _MIN.search(line) and _MAX.search(line):
            line = _MIN_MAX[0].sub(_MIN_MAX[1], line, count=1)
    if field == "temperature":
        line = line.replace(" and change", "")
    if field in ("temperature", "static_pressure"):
        line = _AT_DROP.sub("at the return", line)
        line = _SETTLED.sub(_with_roles, line)
    if field in ("capacity", "efficiency"):
        line = _OF_RISES.sub(" ", line)
    if field == "capacity":
        line = _THOUSANDS.sub(_in_thousands, _FOR_MONEY.sub("", line))
    if field == "elevation":
        without = _OF_PLACES.sub("", line)
        line = without if re.search("[0-9]", without) else line
    if field == "capacity" and _PLATE_WORDS.search(line):
        without = _OF_PLATES.sub("", line)
        line = without if re.search("[0-9]", without) else line
    if field == "airflow":
        for pattern, plain in _OF_FLOWS:
            line = pattern.sub(plain, line)
    if field in _LINED:
        line = _OF_LININGS[0].sub(_OF_LININGS[1], line)
    return line
