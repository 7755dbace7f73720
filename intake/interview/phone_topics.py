"""Which question of a call a clause speaks of, by its nouns and what is said of them."""

import re
from collections.abc import Mapping
from typing import Final

from intake.interview.own_words import whole_words
from intake.interview.phone_tons import change_of_tons

__all__ = ["named_on_phone"]

_N: Final = (
    r"(?:\d{1,2}|no|none|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen"
    r"|fourteen|fifteen|sixteen|a dozen|all|some|a couple)"
)
_TWO_SIDES: Final = r"\d+(?:\.\d+)? ?(?:x|by|×) ?\d+(?:\.\d+)?"
_THREE_SIDES: Final = rf"{_TWO_SIDES} ?(?:x|by|×) ?\d"
_PLACE: Final = (
    r"(?:attic|loft|crawl(?: ?space)?|basement|bsmt|cellar|garage|slab|under the (?:house|floor))"
)
_TOPICS: Final[tuple[tuple[str, re.Pattern[str]], ...]] = (
    (
        "d_change",
        whole_words(
            r"(?:they|he|she|we|i|caller|the caller)(?:'d|'ll| would| also| really| now)?"
            r" (?:wants?|wanna|likes?|needs?|thinking of)(?: to)?(?: \w+){0,3}? (?:bigger|larger)",
            r"(?:bigger|larger) (?:equipment|units?|systems?|one|furnace|a/?c)(?! filter)"
            r"|it'?s bigger they"
            r"|(?:cooling|heating|heat|a/?c)[- ]only (?:job|replacement|change|swap)"
            r"|(?:going|switch\w*|chang\w*|convert\w*) (?:over )?to an? heat ?pump",
        ),
    ),
    ("d_filter", re.compile(rf"\bfilters?\b.*{_TWO_SIDES}|{_THREE_SIDES}.*\bfilters?\b")),
    (
        "d_openings",
        re.compile(
            rf"\b(?:returns?|openings?|grill?es?|big vents?)\b(?!.*{_THREE_SIDES}).*{_TWO_SIDES}"
            rf"|(?!.*{_THREE_SIDES}){_TWO_SIDES}.*\b(?:returns?|return (?:vents?|grill?es?"
            rf"|openings?))\b"
        ),
    ),
    (
        "d_trunk",
        re.compile(rf"\b(?:main|trunk|big (?:metal )?duct|fat(?:test)? duct)\b.*{_TWO_SIDES}"),
    ),
    ("d_boot", re.compile(rf"\b(?:hole|boot)\b.*{_TWO_SIDES}|{_TWO_SIDES}.*\b(?:hole|boot)\b")),
    (
        "d_registers",
        whole_words(
            rf"{_N} (?:\w+ )?(?:vents?|registers?)(?: \w+)? (?:that |which |are |do )?blow\w*"
            rf"|{_N} (?:that |which |of them |of 'em |do )?blow(?:s|ing)?|{_N} blowing(?: vents?)?"
            rf"|(?:counted|counts|there'?s|there are|has|have|got) {_N} (?:supply )?(?:vents"
            rf"|registers)"
            rf"|(?:vents|registers)(?: that blow| blowing)?(?: is| are|:)? {_N}"
            rf"|{_N} supply (?:vents|registers)"
            rf"|(?:it'?s|make (?:it|that)|should be) (?:actually |really )?{_N} (?:vents|registers)"
        ),
    ),
    (
        "d_tons",
        re.compile(
            r"\b(?:[1-5](?:\.5)?|one|two|three|four|five)(?: and a half)?[- ]?tons?\b"
            r"|\b(?:tons|tonnage)\b.*\d"
        ),
    ),
    (
        "d_area",
        re.compile(
            r"\d{3}\b.{0,12}\b(?:sq|square|sf|ft2|square feet)\b"
            r"|\bsquare (?:feet|footage)(?:'s| is| was|:)? .*\d{3}"
        ),
    ),
    (
        "d_year",
        re.compile(
            r"\b(?:built|house (?:is|was) from|dates? (?:from|back))\b.*\d{2}"
            r"|\byear(?:'s| is| was)\b.*\d{4}"
        ),
    ),
    (
        "d_ways",
        whole_words(
            r"(?:it|they|ducts?|trunks?|air|main)?(?: all)? ?(?:leaves?|goes|go|going|comes? out"
            r"|runs?|splits?)"
            r" (?:out )?(?:the unit )?(?:both|one|two|just one) (?:ways?|directions?|sides?|ends?)",
            r"(?:ducts?|trunks?) (?:are |is )?(?:both|one|two) (?:ways?|directions?|sides?)",
        ),
    ),
    ("d_flex", whole_words(r"(?:flex\w*|shiny|silver)(?: \w+)? (?:hoses?|ducts?|tubes?)|all flex")),
    (
        "d_location",
        re.compile(
            rf"\bduct(?:s|work)?\b(?!.*\bfilter).*\b{_PLACE}\b|\b{_PLACE}\b.*\bduct(?:s|work)?\b"
        ),
    ),
    (
        "d_doors",
        re.compile(
            r"\bdoors?\b.*\b(?:whistl|mov|slam|swing|bang|rattl|clos|shut)\w*"
            r"|^(?:the )?doors? (?:don'?t|do|are fine|are quiet|stay put)[.! ]*$"
        ),
    ),
    (
        "d_rooms",
        re.compile(
            rf"\b{_N}(?: of the)? (?:bed)?rooms?\b.*\b(?:right|off|bad|hot|cold|stuffy|warm|uneven"
            r"|uncomfortable|chilly|fine|problem|comfortable)\b|\b(?:bad|cold|hot"
            r"|uneven) rooms?\b.*\d"
            r"|\b\w*room\b.*\b(?:never|always|stays|too)\b.*\b(?:cool\w*|heat\w*|right|hot|cold"
            r"|warm|off)\b"
            rf"|\b{_N} (?:bad|cold|hot|problem|stuffy|uneven) rooms?\b"
        ),
    ),
    (
        "d_noise",
        re.compile(
            r"^(?!.*\b(?:doors?|rooms?|outside|outdoor|condenser|compressor|furnace|blower|fan)\b)"
            r".*(?:\b(?:loud|noisy|roar\w*)\b.*\b(?:returns?|grill?e?s?|vents?)\b"
            r"|\b(?:returns?|grill?e?s?|noise|it'?s|its|it is)\b.*\b(?:loud\w*|noisy|quiet|roar\w*"
            r"|terrible|silent"
            r"|whisper\w*)\b|\b(?:they|she|he|you|we|i)\b.*\b(?:shout|yell|whisper)\b"
            r"|\bwhisper quiet\b)"
        ),
    ),
    (
        "d_photos",
        re.compile(
            r"\b(?:text|send|email|take|shoot|snap|get)\w*\b.*\b(?:photos?|pictures?|pics?)\b"
            r"|\b(?:photos?|pictures?|pics?) (?:\w+ ){0,2}(?:on the way|coming|come|to follow|sent"
            r"|tomorrow"
            r"|tonight)\b"
            r"|^(?:the )?(?:photos?|pictures?|pics?)(?: are| is|:)? (?:ok|okay|fine|yes|sure"
            r"|no problem)[.! ]*$"
        ),
    ),
    (
        "d_trouble",
        whole_words(
            r"(?:it|unit|system|coil|a/?c|furnace|did|has|had|has never|never)(?: \w+)? (?:froze"
            r"|frozen|freeze"
            r"|iced|trip\w*|shut (?:itself )?(?:down|off))(?: up| once| twice)?"
        ),
    ),
)
_AFTER: Final[Mapping[str, tuple[tuple[str, re.Pattern[str]], ...]]] = {
    "d_safety": (
        (
            "d_change",
            whole_words(
                r"heat ?pumps? (?:for|instead|in place)",
                r"(?:replac\w+|want\w*|need\w*|swap\w*) (?:out )?(?:the |an? |his |her |their "
                r"|new )*"
                r"(?:a/?c|air con\w*|furnace|heat ?pump|whole system|system|condenser)",
            ),
        ),
    ),
    "d_ways": (
        ("d_trunk", re.compile(rf"^(?:it'?s |about |a )*{_TWO_SIDES}(?: in\w*)?[.! ]*$")),
        (
            "d_location",
            re.compile(rf"^(?:it'?s |they'?re |all )*(?:in|under) (?:the |an? )*{_PLACE}[.! ]*$"),
        ),
    ),
    "d_trouble": (
        (
            "d_works",
            whole_words(
                r"(?:it'?s |its |it |and )*(?:runs?|running|works?|working|been)(?: \w+)? (?:ok"
                r"|okay|fine|good"
                r"|great|well|perfect\w*|all ?right)(?: now| today| since| right now)?",
                r"(?:runs|running|works|working|fine) (?:now|today|right now)",
            ),
        ),
    ),
    "d_registers": (
        (
            "d_boot",
            re.compile(
                r"\b(?:all |mostly )(?:[4-9]|four|five|six|seven|eight|nine)[ -]?inch"
                r"(?: round)? (?:pipes?|hoses?|ducts?|runs?)\b"
            ),
        ),
        ("d_noise", whole_words(r"it'?s (?:pretty |really |very )?(?:loud|noisy|quiet)")),
    ),
}
"""What only means another question while this one is open."""
_NOT_WHILE: Final[Mapping[str, frozenset[str]]] = {
    "d_change": frozenset(("d_tons",)),
    "d_works": frozenset(("d_trouble", "d_noise", "d_rooms")),
    "d_people": frozenset(("d_rooms", "d_noise")),
    "d_trouble": frozenset(("d_noise", "d_doors")),
    "d_boot": frozenset(("d_flex", "d_openings")),
    "d_trunk": frozenset(("d_flex",)),
    "d_filter": frozenset(("d_flex",)),
    "d_safety": frozenset(("d_trouble", "d_noise", "d_doors", "d_rooms", "d_flex", "d_photos")),
}
"""What a clause is not about while this question is open, though it has the nouns of it."""
_OF_ANOTHER: Final = re.compile(r"\b(?:neighbou?r\w*|next door|old house|last house|other house)\b")


def named_on_phone(asked: str, clause: str) -> str:
    """Key of the question of a call that a clause speaks of; empty if it names none.

    Args:
        asked: Key of the open question, which wins where the clause has its nouns.
        clause: Normalised text.
    """
    if _OF_ANOTHER.search(clause):
        return ""
    if change_of_tons(clause):
        return "d_change"
    for key, pattern in _AFTER.get(asked, ()):
        if pattern.search(clause):
            return key
    not_now = _NOT_WHILE.get(asked, frozenset())
    found = [key for key, pattern in _TOPICS if key not in not_now and pattern.search(clause)]
    if asked in found:
        return asked
    return found[0] if found else ""
