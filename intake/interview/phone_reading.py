"""What a caller says of the change, read by what goes out and what goes in."""

import re
from typing import Final

from rapidfuzz.distance import OSA

from intake.interview.denials import affirmed
from intake.interview.own_words import whole_words
from intake.interview.phone_swaps import Swap, swap_told
from intake.interview.phone_tons import change_of_tons
from intake.reading.manner import sureness
from intake.reading.result import Accepted, AskBack, AskKind, Reading

__all__ = ["plain_change", "read_change"]

_AC: Final = r"(?:a/?c|air con\w*|air|cooling|central(?: air)?)"
_FIRST: Final = whole_words(
    rf"(?<!as )(?<!as the )first time|first (?:{_AC}|one)|(?:a|his|her|their|our|my|its) first",
    r"(?<!as )(?<!as the )first",
    r"never had (?:a/?c|air|cooling|central|any)\w*",
    rf"add(?:ing)?(?: \w+)? {_AC}",
    rf"(?:have|has|had|got|there'?s|is) no {_AC}|no {_AC} (?:now|yet|today|currently)",
    r"(?:window|wall|portable) (?:units?|a/?cs?|shakers?|air con\w*)"
    r"(?=.*\b(?:wants?|wanna|need|like|getting|going|to|for|central)\b)",
)
_FIRST_IN_ORDER: Final = whole_words(
    rf"(?:{_AC}|condenser|outdoor unit|furnace|heat\w*) first|first (?:the |do |we'?ll )"
    r"|(?:just|only) (?:the )?\w+ first"
)
"""One thing before another, which tells of no first cooling."""
_BIGGER: Final = whole_words(
    r"bigger|larger|stronger|upsiz\w*|up ?siz\w*|more tons|a size up|next size(?: up)?"
    r"|more capacity|higher capacity|(?:go|going|step|stepping|bump\w*) (?:it )?up(?: a)? ?(?:size"
    r"|half|ton)?"
)
_NOT_BIGGER: Final = whole_words(
    r"(?:not|no|nothing|isn'?t|don'?t (?:want|need)|doesn'?t (?:want|need)|without)"
    r" (?:it |anything |going |any )?(?:bigger|larger|upsiz\w*|more tons)"
)
_OF_THE_HOUSE: Final = whole_words(
    r"(?:house|home|place|family|yard|rooms?|garage|kitchen)(?:'?s| is| got| gets| are| was)? "
    r"(?:\w+ )?"
    r"(?:bigger|larger)"
)
_SMALLER: Final = whole_words(r"smaller|downsiz\w*|down ?size|a size down|less tons|fewer tons")
_NOT_SMALLER: Final = whole_words(
    r"(?:not|no|nothing|isn'?t) (?:any |going )?(?:smaller|downsiz\w*)"
)
_HEAT_PUMP: Final = whole_words(r"heat ?pumps?|heat ?bump")
_SAME: Final = whole_words(
    r"(?:the |exact |exactly the )*same (?:kind|type|thing|size|sort|one|again|tonnage|tons"
    r"|capacity"
    r"|set ?up|system|equipment|unit|as (?:before|now|(?:the )?(?:first|last) time|they have|is"
    r" there|what'?s there))",
    r"like (?:for|with) like|identical\w*|no changes?(?: (?:in|of|to) (?:type|kind|size|anything"
    r"|the type))?",
    r"(?:just |straight )?swap(?:ping)? (?:it|them|out|for)",
)
_SAME_ALONE: Final = re.compile(
    r"(?:(?:yeah|yes|well|um|just|it'?s|the|oh)[, ]+)*(?:same|both(?: of (?:them|it))?"
    r"|all of it|everything|the whole (?:thing|system|works)|whole (?:thing|system)"
    r"|heat(?:ing)? and (?:a/?c|air|cool\w*)|straight swap)(?: (?:please|again|thing))?[.! ]*"
)
_THE_SAME: Final = whole_words(r"(?:the|it'?s the|all the|stay(?:s|ing)?(?: the)?) same")
_WHOLE: Final = whole_words(r"(?:whole|entire|complete|full) (?:system|set ?up|works|shebang)")
_TONS: Final = re.compile(r"\b\d(?:\.\d)?[ -]?tons?\b")
_FIGURES: Final = re.compile(r"\d")
_COOLS: Final = whole_words(r"a/?c|air con\w*|air|cool\w*|condenser|outdoor unit|outside unit")
_HEATS: Final = whole_words(r"heat\w*|furnaces?")
_BECOMES: Final = whole_words(r"to|into|switch\w*|convert\w*|chang\w*|instead|going")
_OTHER_FUEL: Final = whole_words(
    r"(?:switch\w*|convert\w*|chang\w*|going|goes)\b[^,;.]*\b(?:to|into) (?:an? |the |all )*"
    r"(?:electric\w*|gas|propane|oil)"
)
_NOT_THAT: Final = whole_words(
    r"(?:no|not (?:to )?an?|not (?:getting|adding|going (?:to|with)|wanting|doing|putting in)"
    r"|(?:don'?t|doesn'?t|didn'?t) (?:want|need|have)|without|never|rather than|nothing like)"
    r" (?:any |an? |the )?(?:more )?heat ?pumps?(?: (?:please|though|at all|thanks|for (?:me|us|him"
    r"|her|them)))?"
)
_NO_COOLING_COMES: Final = whole_words(
    r"(?:not|isn'?t|aren'?t|no plans?(?: to| of)?|won'?t be|don'?t want|doesn'?t want)"
    rf" (?:to )?(?:add\w*|get\w*|want\w*|put\w*|need\w*|do\w*|install\w*)?"
    rf" ?(?:any|one|it|{_AC})?\b"
)
_NONE_NOW: Final = whole_words(
    rf"(?:they |we |he |she |i )?(?:(?:have|has|had|got|there'?s) )?no {_AC}"
    r"(?: (?:now|yet|today|currently))?"
)
_LATER: Final = re.compile(
    r"[^,;.]*\b(?:later(?: on)?|next (?:year|spring|summer|fall|winter)|down the road|eventually"
    r"|some ?day|another time|not yet)\b[^,;.]*"
)
_THING: Final = (
    r"(?:furnaces?|heaters?|a/?c|air con\w*|air ?handlers?|coil|condenser|outdoor unit|cooling)"
)
_KEPT: Final = whole_words(
    rf"(?:the |her |his |their )?{_THING} ?(?:stays?(?: put| as is| there| in)?(?! the same)"
    r"|(?:is|'s) (?:still )?(?:only |just )?(?:a|one|two|three|four|five|six|[1-6]) years? old"
    r"|is (?:still )?(?:fine|ok|okay|good|newer|staying|new|almost new|(?:only |just )?(?:a|one|two"
    r"|three|four|five|[1-5]) years? old)"
    r"|works? (?:fine|good|great)|can stay|'s fine)",
    rf"{_THING} (?:was|is|got|were)(?: just| only)? (?:replaced|changed|redone|put in|new|done)"
    r" (?:just )?(?:\w+ (?:years?|months?) ago|last \w+|recently|in 20\d\d)",
    r"(?:keep|keeps|keeping|leave|leaves|leaving|not touching|not replacing|not changing)"
    rf" (?:the |her |his |their )?(?:old |existing |gas )?{_THING}",
)
"""What stays as it is."""
_ONLY_PART: Final = whole_words(
    rf"(?:just|only) (?:the |her |his |their |an? |new )*{_THING}|{_THING} (?:only|by itself|alone)"
)
_HEAT_SOMETHING: Final = re.compile(r"\b(heat ?)([a-z]{3,6})\b")
_AGAIN: Final = whole_words(
    r"same|both times|already (?:have|got|a)|another(?: one)?|a new one|again|new for old"
    r"|like for like"
)
_TURNING: Final = whole_words(
    r"to|switch\w*|convert\w*|chang\w*|instead|by|for|going|from|replaced? with|want\w*|get rid"
)


def read_change(text: str, choices: tuple[str, ...]) -> Reading | None:
    """What is replaced, and whether type or size changes; the change that asks for air wins.

    What is denied or comes later doesn't count. A line with figures says something else too; of
    it only the words that name a change count.
    """
    if text.strip(" .!") in choices:
        return Accepted({"choice": text.strip(" .!")})
    plain = _HEAT_SOMETHING.sub(_as_pump, text.replace("_", " "))
    plain = _NOT_THAT.sub(" ", plain)
    if _LATER.sub(" ", plain).strip(" ,;."):
        plain = _LATER.sub(" ", plain)
    if _KEPT.sub(" ", plain).strip(" ,;."):
        plain = _KEPT.sub(" ", plain)
    tons = change_of_tons(plain)
    grows = tons is not None and tons > 0
    if _comes_first(plain):
        return Accepted({"choice": "first_cooling"})
    if _HEAT_PUMP.search(plain):
        return _with_heat_pump(plain, grows or _grows(plain))
    if grows or _grows(plain):
        return Accepted({"choice": "bigger"})
    if tons is not None or (_SMALLER.search(plain) and not _NOT_SMALLER.search(plain)):
        return _smaller()
    return _same_or_part(_without_cooling(plain))


_REQUESTS: Final = whole_words(
    r"actually|sorry|wrong|oops|correct\w*|change|should (?:be|have)|instead|make (?:it|that)"
    r"|meant?|wait"
    r"|skip|undo|forget|remove|delete|scratch|redo|repeat|back to|go back|fix|why|what|how|where"
    r"|help|not \d"
)


def plain_change(line: str) -> Reading | None:
    """A change told without any word of a request to the program or of a correction, else None."""
    if _REQUESTS.search(line) or "?" in line:
        return None
    found = read_change(line, ())
    return Accepted(found.values, sureness(line)) if isinstance(found, Accepted) else None


def _same_or_part(plain: str) -> Reading | None:
    figures = _FIGURES.search(_TONS.sub(" ", plain)) is not None
    cools, heats = affirmed(_COOLS, plain), affirmed(_HEATS, plain)
    if _OTHER_FUEL.search(plain):
        return _what_becomes()
    if _ONLY_PART.search(plain) and cools != heats:
        return Accepted({"choice": "cooling_only" if cools else "heating_only"})
    if (
        _SAME.search(plain)
        or _SAME_ALONE.fullmatch(plain)
        or _WHOLE.search(plain)
        or (_THE_SAME.search(plain) and not figures)
    ):
        return Accepted({"choice": "like_for_like"})
    if cools and heats:
        return Accepted({"choice": "like_for_like"})
    if (cools or heats) and _BECOMES.search(plain):
        return _what_becomes()
    if (cools or heats) and not figures:
        return Accepted({"choice": "cooling_only" if cools else "heating_only"})
    return None


def _what_becomes() -> AskBack:
    return AskBack(
        "What does it change to: a heat pump, or the same kind again?",
        ({"choice": "furnace_to_heat_pump"}, {"choice": "like_for_like"}),
        AskKind.TWO_READINGS,
    )


def _smaller() -> AskBack:
    return AskBack(
        "Smaller asks for less air. Is it the same kind again otherwise?",
        ({"choice": "like_for_like"},),
        AskKind.TWO_READINGS,
    )


_ONLY_HEAT: Final = whole_words(
    r"(?:just|only) (?:the )?(?:heat\w*|furnace)(?: side| part)?|(?:heat\w*|furnace)(?: side"
    r"| part)?"
    r" (?:only|alone)"
)
_WANTS_COOLING: Final = whole_words(
    rf"(?:wants?|wanna|add\w*|get|getting|like|put in|install\w*|needs?) (?:\w+ ){{0,3}}{_AC}"
    rf"|{_AC} too"
    r"|wants? (?:it|one|that|some)"
    r"|first|never had"
)


def _comes_first(text: str) -> bool:
    """Whether cooling is new to the house: nobody says that it isn't to come."""
    if not _FIRST.search(text):
        return False
    if _ONLY_HEAT.search(text) and not _WANTS_COOLING.search(text):
        return False
    if _without_cooling(text) != text:
        return False
    return not (_FIRST_IN_ORDER.search(text) and not re.search(r"\bfirst time\b", text))


def _without_cooling(text: str) -> str:
    """The text without a cooling of which it says that there is none and none is to come."""
    if _NONE_NOW.search(text) and _NO_COOLING_COMES.search(_NONE_NOW.sub(" ", text)):
        return _NO_COOLING_COMES.sub(" ", _NONE_NOW.sub(" ", text))
    return text


def _grows(text: str) -> bool:
    text = _OF_THE_HOUSE.sub(" ", text)
    return _BIGGER.search(text) is not None and not _NOT_BIGGER.search(text)


def _as_pump(found: re.Match[str]) -> str:
    """ "heat pmup": one slip away from a heat pump."""
    slips = min(OSA.distance(found[2], right) for right in ("pump", "pumps"))
    return f"{found[1]}pump" if slips <= 1 else found[0]


_UNDECIDED: Final = re.compile(
    r"\bmaybe\b.*\bmaybe\b|\b(?:either|don'?t know|doesn'?t know|not sure|undecided"
    r"|(?:hasn'?t|haven'?t) decided|might|could)\b.*\bor\b.*\b(?:furnace|heat ?pump|gas|same"
    r"|boiler|a/?c|another|again)\b"
)
"""Two kinds that are still weighed."""


def _with_heat_pump(text: str, grows: bool) -> Reading:
    if _UNDECIDED.search(text):
        return _what_becomes()
    swapped = swap_told(text)
    if swapped is Swap.TO_HEAT_PUMP:
        return Accepted({"choice": "furnace_to_heat_pump"})
    if swapped is Swap.TO_FURNACE:
        return AskBack(
            "From a heat pump to a furnace: with the same cooling again, or heat alone?",
            ({"choice": "like_for_like"}, {"choice": "heating_only"}),
            AskKind.TWO_READINGS,
        )
    if grows:
        return Accepted({"choice": "bigger"})
    if swapped is Swap.HEAT_PUMP_AGAIN or _SAME.search(text) or _AGAIN.search(text):
        return Accepted({"choice": "like_for_like"})
    if _TURNING.search(text):
        return Accepted({"choice": "furnace_to_heat_pump"})
    return AskBack(
        "Is there a furnace now that becomes a heat pump, or a heat pump already?",
        ({"choice": "furnace_to_heat_pump"}, {"choice": "like_for_like"}),
        AskKind.TWO_READINGS,
    )
