"""What people call each fitting, and how they write the commonest words for short."""

from __future__ import annotations

import re
from functools import cache
from typing import Final

__all__ = ["FITTING_WORDS", "LOOSE", "fitting_phrases", "in_plain_words"]

FITTING_WORDS: Final[dict[str, str]] = {
    "round_elbow_smooth": (
        "smooth elbow|smooth round elbow|long sweep|long sweep elbow|five piece elbow"
        "|5 piece elbow|stamped elbow|long radius round elbow|sweep"
    ),
    "round_elbow_adjustable": (
        "round elbow|adjustable elbow|adjustable|four piece elbow|4 piece elbow|pipe elbow"
        "|elbow|ell|90|90 elbow|90 degree elbow|ninety|elbo|l bow|adjustable 90|round 90|bend"
        "|turn|90 degree turn|right angle"
    ),
    "round_elbow_45": "45 elbow|45 degree elbow|45|forty five|45 degree bend|half elbow|round 45",
    "mitred_elbow": (
        "mitered elbow|mitred elbow|mitre|miter|kinked turn|mitered 90|mitered turn|mitred turn"
    ),
    "radius_elbow": (
        "radius elbow|curved elbow|curved square elbow|curved turn|radius turn|radius 90"
        "|curved 90|rounded elbow|radiused elbow|smooth radius elbow|trunk radius elbow"
        "|short radius elbow"
    ),
    "square_elbow_trunk": (
        "square elbow|square turn|square 90|hard 90|hard turn|square trunk elbow|trunk elbow"
        "|square corner|hard elbow|square throat elbow|square elbow no vanes"
        "|square elbow without vanes|sharp turn|sharp 90|sharp elbow|square bend|boxy turn"
        "|boxy elbow"
    ),
    "square_elbow_branch": (
        "square branch elbow|branch square elbow|square elbow in the branch"
        "|square elbow on the branch|stack elbow"
    ),
    "vaned_elbow": (
        "vaned elbow|elbow with vanes|elbow with turning vanes|square elbow with vanes"
        "|square elbow with turning vanes|vaned 90|vaned turn|turning vane elbow"
        "|turn with vanes|elbow with veins"
    ),
    "trunk_offset": "trunk offset|offset|jog|dogleg|dog leg|s turn|s offset|kick",
    "plenum_exit_tapered": (
        "tapered plenum exit|tapered start|tapered takeoff from the plenum|tapered exit"
        "|curved plenum exit|tapered plenum takeoff|radius plenum exit"
    ),
    "plenum_exit_square": (
        "square plenum exit|plenum exit|square start|bullhead tee|bull head tee|bullhead"
        "|bull head|plenum start|square exit|start of the trunk|plenum takeoff"
    ),
    "takeoff_45": (
        "45 takeoff|45 degree takeoff|boot takeoff|boot shaped takeoff|angled takeoff|45 tap"
        "|shoe tap|shoe takeoff|high efficiency takeoff|hi eff takeoff"
    ),
    "takeoff_conical": (
        "conical takeoff|cone tap|cone takeoff|conical tap|flared tap|conical|bellmouth"
        "|bell mouth|flared takeoff"
    ),
    "takeoff_straight": (
        "straight takeoff|straight collar|straight tap|takeoff|take off|takeoff collar"
        "|start collar|starting collar|spin in|side takeoff|side tap|straight collar takeoff"
        "|collar|dovetail|saddle|tap|tee|t"
    ),
    "takeoff_top": (
        "top takeoff|top tap|takeoff from the top|takeoff on top|top collar|takeoff off the top"
    ),
    "boot_straight": "straight boot|straight floor boot|end boot straight|straight register boot",
    "boot_angle": (
        "angle boot|right angle boot|stack boot|90 boot|boot|register boot|floor boot|end boot"
        "|stackhead|stack head|elbow boot|side boot|can|90 degree boot|right angle stack boot"
    ),
    "ceiling_box": "ceiling box|ceiling boot|ceiling can|box in the ceiling|register box",
    "wye": "wye|y|y branch|y fitting|pants|splitter",
    "junction_box": (
        "junction box|j box|distribution box|split box|triangle box|duct board box|plain box|d box"
    ),
    "flex_bend_easy": (
        "easy flex bend|wide flex bend|gentle flex bend|flex bend|wide bend in flex"
        "|gentle bend in flex|easy bend|flex turn|bend in the flex|bend in flex|gentle bend"
        "|flex elbow"
    ),
    "flex_bend_tight": (
        "tight flex bend|tight bend|tight bend in flex|tight bend in the flex|sharp flex bend"
        "|sharp bend in flex|kinked flex|kink|flex kink|hard flex bend"
    ),
    "return_boot": (
        "return boot|return box|return can|box behind the grille|box behind the return"
        "|return grille box|return air boot"
    ),
    "return_drop_square": (
        "square drop turn|square return drop|square turn into the filter"
        "|square turn at the drop|square drop elbow|drop elbow"
        "|square turn into the filter rack|square turn at the bottom of the drop|square drop"
        "|return drop elbow"
    ),
    "return_drop_radius": (
        "radius drop turn|curved drop turn|curved return drop|vaned drop turn"
        "|curved turn into the filter|radius return drop|radius drop elbow|vaned drop elbow"
        "|curved drop elbow|curved drop"
    ),
    "cavity_return": (
        "panned bay|panned joist|stud bay|joist bay|cavity return|joist bay return"
        "|panned joist return|stud bay return|wall cavity|panned return"
    ),
    "transition_gradual": (
        "transition|gradual transition|reducer|reduction|step down|gradual reducer|taper"
        "|tapered transition|square to round|increaser|gradual reduction|size change"
    ),
    "transition_abrupt": (
        "abrupt transition|abrupt reducer|sudden reduction|abrupt reduction|abrupt change"
        "|sudden change|step reduction|hard reduction|blunt reducer|sudden reducer"
    ),
}
"""The engine's name of each fitting, and what people call it."""

LOOSE: Final = frozenset(
    [
        "elbow",
        "ell",
        "90",
        "ninety",
        "bend",
        "turn",
        "boot",
        "takeoff",
        "take off",
        "tap",
        "tee",
        "t",
        "can",
        "collar",
    ]
)
"""Words that don't say which kind: read as the commonest, and marked as unsure."""

_SHORT: Final = {
    "sq": "square",
    "sqr": "square",
    "elb": "elbow",
    "elbs": "elbows",
    "el": "elbow",
    "els": "elbows",
    "ell": "elbow",
    "ells": "elbows",
    "elbo": "elbow",
    "elbos": "elbows",
    "rad": "radius",
    "tkoff": "takeoff",
    "tkoffs": "takeoffs",
    "tkof": "takeoff",
    "bot": "boot",
    "bots": "boots",
    "boat": "boot",
    "boats": "boots",
    "nighty": "ninety",
    "veins": "vanes",
    "vains": "vanes",
    "vans": "vanes",
}
"""Short forms and slips."""

_LONG: Final = (
    *("square", "elbow", "elbows", "radius", "round", "takeoff", "takeoffs", "straight"),
    *("offset", "offsets", "collar", "collars", "conical", "reducer", "mitered", "curved"),
    *("vaned", "vanes", "transition", "transitions", "ninety", "nineties", "tapered", "boots"),
)
_SHORTEST: Final = 5

_TIMES: Final = re.compile(r"\b(\d+) ?x (?=[a-z])")
_TWO: Final = re.compile(
    r"(?:^|(?<=[,;] )|(?<=\band ))too? (?=(?:[a-z]+ ){0,2}(?:elbow|90|nineti|boot|takeoff|turn"
    r"|bend|offset|ell?)e?s\b)"
)
"""Speech-to-text for "two", in front of several."""

_WITHOUT_VANES: Final = re.compile(
    r"\b(?:no|without|not|minus|lacking|zero|w/o)(?: (?:any|the|turning|got|have))*"
    r" (?:vanes?|vaned|fins)\b|\bun-?vaned\b|\bvaneless\b"
)
_WITH_VANES: Final = re.compile(
    r"\b(?:with|w|have|has|having|got)(?: (?:the|turning|some|air))* (?:vanes?|fins)\b"
)


def in_plain_words(line: str) -> str:
    """Normalised text with short forms and slips written out, and vanes as one word.

    >>> in_plain_words("2x sq elb no vanes, 1x tkoff")
    '2 square elbow unvaned, 1 takeoff'
    """
    line = _TIMES.sub(r"\1 ", line)
    line = re.sub(r"[a-z']+", lambda word: _written_out(word[0]), line)
    line = _TWO.sub("two ", line)
    line = _WITHOUT_VANES.sub("unvaned", line)
    return _WITH_VANES.sub("vaned", line)


def _written_out(word: str) -> str:
    if word in _SHORT:
        return _SHORT[word]
    if len(word) < _SHORTEST or word in _known_words():
        return word
    from rapidfuzz.distance import OSA  # imported here: few answers need it

    near = [one for one in _LONG if one[0] == word[0] and OSA.distance(one, word) == 1]
    return near[0] if len(near) == 1 else word


@cache
def _known_words() -> frozenset[str]:
    table = (word for said in FITTING_WORDS.values() for word in said.replace("|", " ").split())
    return frozenset((*table, *_LONG, "around", "curve", "cover", "vents", "boost"))


@cache
def fitting_phrases() -> dict[tuple[str, ...], tuple[str, str]]:
    """The engine's name and the phrase, by the words of each phrase."""
    table: dict[tuple[str, ...], tuple[str, str]] = {}
    for kind, said in FITTING_WORDS.items():
        for phrase in said.split("|"):
            table[tuple(phrase.split())] = (kind, phrase)
    return table
