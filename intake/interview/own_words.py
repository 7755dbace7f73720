"""Words by which equipment, tools, skins of ducts, tapes and states are known; one table each.

Patterns are matched against normalised text, whole words only, the first row that fits wins
unless a reader says otherwise.
"""

import re
from collections.abc import Mapping
from typing import Final

__all__ = [
    "KINDS",
    "PARTS",
    "SKINS",
    "STAGES",
    "STATES",
    "TAPED",
    "TOOLS",
    "Table",
    "whole_words",
]


def whole_words(*parts: str) -> re.Pattern[str]:
    """A pattern that finds any of these alternatives as whole words.

    >>> bool(whole_words("coil|fan").search("the coil")), bool(whole_words("fan").search("fancy"))
    (True, False)
    """
    return re.compile(rf"(?<!\w)(?:{'|'.join(parts)})(?!\w)")


Table = tuple[tuple[str, re.Pattern[str]], ...]

KINDS: Final[Table] = (
    ("dual_fuel", whole_words(r"(?:dual|duel|jewel)[- ]?fuel|hybrid")),
    (
        "packaged",
        whole_words(r"(?:gas |heat )?pack(?:aged?|ed)?(?: units?)?|roof ?top|all[- ]in[- ]one|rtu"),
    ),
    ("heat_pump", whole_words(r"heat ?(?:pumps?|bump|pmup|pum)|hp|reverse cycle")),
    ("air_handler", whole_words(r"h?air ?handlers?|ahu|fan ?coil|electric furnace")),
    (
        "furnace",
        whole_words(r"furn\w{1,5}|gas (?:heat|unit)|oil heat|(?:80|9\d) ?(?:%|percent|plus)"),
    ),
)
"""Kinds of equipment."""

_STAGE: Final = r"(?:st(?:a|ae|ea)?ge?s?|staged|satge|stag|speed|spd)"

STAGES: Final[Table] = (
    ("variable", whole_words(r"variable|inverter|modulating|multi[- ]?(?:stage|speed)")),
    (
        "two",
        whole_words(rf"(?:2|two|to|too|dual)[- ]?{_STAGE}", r"hi(?:gh)?[-/ ]lo(?:w)?"),
    ),
    ("single", whole_words(rf"(?:1|one|single|sngle|singl)[- ]?{_STAGE}")),
)
"""Stages of equipment."""

TOOLS: Final[Table] = (
    ("tape", whole_words(r"tape(?:s| measures?)?|measuring tapes?|measures?|ruler|laser")),
    (
        "gauge",
        whole_words(
            r"ga(?:u)?g(?:e|es|d)|guage|(?:slack|u)[- ]tube(?: mano\w*)?|mano\w*"
            r"|static (?:kit|tips?)|meters?"
        ),
    ),
    ("probes", whole_words(r"probes?|thermo(?!stat)\w*|temps?(?: \w*probes?)?|temp \w*sensors?")),
    ("flow_plate", whole_words(r"flow ?(?:plate|hood|grid)s?|hoods?|plates?|anemo\w*")),
)
"""What may be in the bag."""

SKINS: Final[tuple[tuple[str, str, str | None, re.Pattern[str]], ...]] = (
    ("lined", "lined_metal", None, whole_words(r"lin(?:ed|er|ing)|inside|internal\w*|fuzzy")),
    (
        "duct_board",
        "duct_board",
        None,
        whole_words(r"board|duct ?board|duck ?board|fib(?:er|re) ?board"),
    ),
    ("flex", "flex", None, whole_words(r"fl(?:e|a)x\w*|hoses?|accordion|slinky")),
    ("panned", "panned_joist", None, whole_words(r"pan(?:ned|ning)?|joists?|bays?")),
    ("stud", "stud_bay", None, whole_words(r"studs?|cavity")),
    ("wrapped", "galvanized", None, whole_words(r"w?rap(?:ped)?|outside|blanket|insulated")),
    (
        "bare",
        "galvanized",
        "bare",
        whole_words(r"bare|met(?:al|l|la|el|ail)|tin|gal\w*|steel|rings?|none|unlined|spiral"),
    ),
)
"""What a duct looks like: name, material, where the tape then was if that follows, words."""

TAPED: Final[Mapping[str, Table]] = {
    "outside": (
        ("over wrap", whole_words(r"w?rap\w*|over(?! the (?:metal|top))|insulation|blanket")),
        ("inside", whole_words(r"inside|clear|inner|internal\w*|in|liner to liner")),
        ("outside", whole_words(r"outside|outer|out|metal|board|bare|external\w*")),
    ),
    "hole": (
        (
            "slots",
            whole_words(
                r"slot\w*|holes?|openings?|inside|throat|neck|louver\w*|fin(?:s|ned)?|blades?|core"
            ),
        ),
        (
            "frame",
            whole_words(
                r"frames?|edges?|faces?|outside|outer|whole|overall|flange|trim|entire",
                r"total(?: size)?",
            ),
        ),
    ),
    "core": (
        ("jacket", whole_words(r"jacket|outer|outside|insulation|over|wrap")),
        ("core", whole_words(r"core|inner|inside|collar|print\w*")),
    ),
}
"""Where the tape was held, by the first choice of the question."""

PARTS: Final[Table] = (
    ("coil", whole_words(r"coils?|evap\w*|a-?coil")),
    ("blower_wheel", whole_words(r"wheel|blower|fan|cage")),
    ("filter", whole_words(r"filters?")),
)
"""Parts whose state is asked."""

STATES: Final[Table] = (
    (
        "plugged",
        whole_words(
            r"plug\w*|packed|caked|filthy|clog\w*|matted|nasty|terrible|blocked|shot|loaded|choked"
            r"|gross|disgusting|solid|furry",
            r"(?:very|really) dirty",
        ),
    ),
    (
        "some_dirt",
        whole_words(
            r"some|dirty?|dust\w*|film|fair|medium|a (?:bit|little)|meh|so[- ]?so|fuzz\w*|light\w*"
            r"|ok(?:ay)?|bad|black|hairy",
            r"not (?:too |very )?(?:bad|clean|great)",
        ),
    ),
    ("clean", whole_words(r"clean\w*|good|new|spotless|fine|perfect|shiny")),
)
"""How clean a part is."""
