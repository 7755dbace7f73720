"""Turns of phrase about sizes, and things beside them that have figures of their own."""

from __future__ import annotations

import re
from typing import Final

__all__ = ["COUNT", "FOUR_OR_MORE", "NUMBER", "OF_OTHERS", "OF_SIZES", "SIZE"]

NUMBER: Final = r"[0-9]+(?:\.[0-9]+)?(?: [0-9]/[0-9]+)?"


_INCHES: Final = r" ?(?:inches|inch|in|\")?"


_SPOKEN: Final = (
    r"(?:[0-9][0-9./]*|(?:(?:twenty|thirty)[ -])?(?:one|two|three|four|five|six|seven|eight|nine"
    r"|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)|twenty"
    r"|thirty)"
)


FOUR_OR_MORE: Final = (
    r"four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen"
    r"|eighteen|nineteen|twenty|thirty"
)


COUNT: Final = r"[2-9]|two|three|four|five|six|seven|eight|nine|ten"


_WIDE: Final = (
    r"across|on (?:the|its) (?:bottom|top|flat|wide side|long side|wide)|along the bottom|side to"
    r" side"
    r"|horizontal(?:ly)?|left to right"
)


_TALL: Final = (
    r"down|up|tall|high|deep|on (?:the|its) (?:side|edge|narrow side|short side|narrow|short)|up"
    r" the side"
    r"|vertical(?:ly)?|top to bottom"
)


OF_SIZES: Final = tuple(
    (re.compile(pattern), plain)
    for pattern, plain in (
        (
            rf"({NUMBER}){_INCHES} (?:one|this) way,?(?: and| by| x)?(?: about| like)? ({NUMBER})"
            rf"{_INCHES} (?:the other|that)(?: way)?",
            r"\1 x \2",
        ),
        (
            rf"(?<![x\d.])(?<!x )(?<!by )\b({NUMBER}){_INCHES} (?:{_WIDE}),? ?(?:and |by |x )?"
            rf"(?:about |like )?({NUMBER}){_INCHES} (?:{_TALL})\b",
            r"\1 x \2",
        ),
        (
            rf"\b(?:the )?(?:bottom|top|flat|across)(?:'s| is| measures)? ({NUMBER}){_INCHES},?"
            rf" ?(?:and )?"
            rf"(?:the )?(?:side|height|down|edge)(?:'s| is| measures)? ({NUMBER})\b",
            r"\1 x \2",
        ),
        (
            rf"(?<![x\d.])(?<!x )(?<!by )\b({NUMBER}){_INCHES} (?:on )?(?:the )?one side,?"
            rf" ?(?:and )?"
            rf"({NUMBER}){_INCHES} (?:on )?the other(?: side)?\b",
            r"\1 x \2",
        ),
        (
            rf"\b(?:the )?(?:side|height|edge)(?: of it)?(?:'s| is| measures)? ({NUMBER})"
            rf"{_INCHES},? ?(?:and )?(?:the )?(?:bottom|top|flat|width)(?: of it)?(?:'s| is|"
            rf" measures)?"
            rf" ({NUMBER})\b",
            r"\2 x \1",
        ),
        (
            rf"({NUMBER}{_INCHES} ?(?:x|by|\*) ?{NUMBER}{_INCHES}),? (?:and|plus|with)"
            r" (?:its twin|its mate|a matching one|(?:another|one)(?: one)?(?: more)?"
            r" (?:just |exactly )?(?:like it|the same|like that))\b",
            r"(2) \1",
        ),
        (rf"\bsides are ({NUMBER}){_INCHES} and ({NUMBER})", r"\1 x \2"),
        (rf"({NUMBER}){_INCHES} (?:on )?(?:each|every|per|a) side\b(?=.*\bsquare\b)", r"\1"),
        (
            rf"(?<=square)(,? (?:about |like )?{NUMBER}){_INCHES} (?:on )?(?:each|every|per|a)"
            rf" side\b",
            r"\1",
        ),
        (r"\b(?:open|on call|available|around|working|staffed) 24 ?(?:x|/) ?7\b", "open"),
        (r"\b4 ?x ?4s? (?=(?:is|was|truck|jeep|parked|pickup)\b)", "truck "),
        (
            r"\b[0-9]+ ?(?:inches|inch|in|\") of (?:blown[- ]in |blown |fiberglass |pink |loose )?"
            r"(?:insulation|blown[- ]in|cellulose|fluff)(?: on top| over it| around it)?",
            "insulation over it",
        ),
        (rf"({NUMBER}){_INCHES} ?x ?({NUMBER}){_INCHES} ?\(? ?h ?x ?w ?\)?(?![a-z])", r"\2 x \1"),
        (r"\((w|h|wide|tall|high|deep|width|height)\)", r" \1"),
        (r"\bpainted over\b", "painted"),
        (r"\bround (?=(?:it|them|here|back|about|the outside)\b)", "around "),
        (
            r"\b(?:lying|laying|sitting|resting|strapped|hung|hanging|running|runs|run|goes|going"
            r"|lays|sits) (?:right )?(?:on|across|over|along|under|from|above|atop)(?: top of)?"
            r" (?:the |some )?(?:ceiling |floor |attic )?"
            r"(?:joists?|rafters?|trusses|truss|studs?)\b",
            "there",
        ),
        (r"\b(?:a )?foot (?:by|x) (?:a )?foot\b", "12 x 12"),
        (r"(?:^|(?<=, )|(?<=and ))inch thick\b", "1 inch thick"),
        (r"(?:^|(?<=, ))foot by (?=[0-9a-z])", "1 foot by "),
        (
            rf"\b([4-9]|[1-9][0-9]|{FOUR_OR_MORE}){_INCHES} (?:each|every|both) ways?\b",
            r"\1 x \1",
        ),
        (
            rf"(?<![x\d.])\b({NUMBER}){_INCHES} (?:from )?(?:{_TALL}),? ?(?:and |by |x )?"
            rf"(?:about |like )?({NUMBER}){_INCHES} (?:from )?(?:{_WIDE})\b",
            r"\2 x \1",
        ),
        (
            r"\b(drywall|drywalled|sheetrock|plaster|plywood|osb|lined|lining|liner|taped|sealed"
            r"|open"
            r"|insulated|insulation|dirty|painted|finished|wrapped|foil|paneling|studs|capped"
            r"|loaded)"
            r"(?: is| are)?,?(?: on| from| at)? both (?:sides|ends|edges|faces)\b",
            r"\1",
        ),
        (
            rf"\b(?:in |for )?(?:each|every one|all) of (?:the |our |my )?({COUNT})"
            r" (?:bed)?rooms?\b",
            r"(\1)",
        ),
        (
            rf"\b(?:one |a |1 )?({NUMBER}{_INCHES} ?(?:x|by|\*) ?{NUMBER}{_INCHES})"
            r"(?: grilles?| returns?| registers?| vents?)? (?:per|in each|in every|each|every)"
            r" (?:bed)?room,? (?:(?:and|so|there'?s|there are|we have|i have|got) )*"
            rf"({COUNT}) (?:bed)?rooms?\b",
            r"(\2) \1",
        ),
        (r"\bone (?:big|large|long|huge|small|little|old|main|giant|single) one,? ?", "a big, "),
        (
            rf"^(?:there(?:'s| are)? |we have |we got |i (?:got|have|see|count) |it has |got )?"
            rf"({COUNT}) ((?!(?:bed|bath)?rooms?\b|floors?\b|stories\b"
            rf"|elbows?\b)[a-z ]{{3,40}}?),?"
            r" (?:and )?(?:they'?re |they are |are |is )?(?:all|each|every one|each one"
            r"|each one is)"
            rf"(?: of them)?(?: is| are|'s| about)? (?={_SPOKEN}{_INCHES} ?(?:x|by|\*)(?![a-z]))",
            r"\2, (\1) ",
        ),
    )
)


OF_OTHERS: Final = (
    (
        re.compile(
            r"\b2 ?x ?(?:4|6|8|10|12)s? (?:joists?|studs?|framing|lumber|rafters?|blocking)\b"
            r"|\b(?:under|between|below|above|off|to|on) (?:a|the|two|some)"
            r" 2 ?x ?(?:4|6|8|10|12)s?\b"
        ),
        "lumber",
    ),
    (
        re.compile(
            r"\b(?:changed|dated|replaced|installed|cleaned|bought)(?: it)?(?: on| in)?"
            r" [0-9]{1,2}[/-][0-9]{1,4}(?:[/-][0-9]{2,4})?\b"
        ),
        "changed",
    ),
    (
        re.compile(
            r"\b(?:part|model|item|sku|serial|stock)(?: (?:number|no\.?|#)|#)? ?"
            r"(?![0-9]+ ?x)[a-z-]*[0-9][a-z0-9-]*(?! ?(?:x|by)\b)"
        ),
        "model",
    ),
)
"""What has a size or figures of its own beside the one that is asked about."""


SIZE: Final = re.compile(r"[0-9](?:\"| ?in(?:ch|ches)?)? ?(?:x|by|\*) ?[0-9]")
