"""Lists of fittings: "3 square elbows, a boot and a top takeoff"."""

from __future__ import annotations

from functools import cache
from typing import Final

from intake.reading.lexer import Token, tokenize
from intake.reading.numerals import fold_numbers
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Sure, Value
from intake.reading.words import words

__all__ = ["FITTING_WORDS", "LOOSE", "read_fittings"]

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

_FILLER: Final = words(
    """
    and a an the then there is are i see with of on in at to plus also one run side supply return
    both total about like maybe think count counted each into from out it off by main trunk branch
    branches register registers furnace end near up down so that then goes going first last
    another more degree degrees deg inch metal flex round straight ok two three
    """
)
_COUNTS: Final = {"a": 1, "an": 1, "couple": 2, "pair": 2, "another": 1, "single": 1, "both": 2}


@cache
def _phrases() -> dict[tuple[str, ...], tuple[str, str]]:
    table: dict[tuple[str, ...], tuple[str, str]] = {}
    for kind, said in FITTING_WORDS.items():
        for phrase in said.split("|"):
            table[tuple(phrase.split())] = (kind, phrase)
    return table


def _singular(word: str) -> str:
    if word in ("offs", "vanes", "pants", "turning", "radius"):
        return {"offs": "off"}.get(word, word)
    if word.endswith(("ches", "xes")):
        return word[:-2]
    if word.endswith("ies"):
        return word[:-3] + "y"
    return word[:-1] if len(word) > 2 and word.endswith("s") and not word.endswith("ss") else word


def _words(tokens: list[Token]) -> list[Token]:
    """Words and numbers; "90s" and "45's" lose their ending, "take-off" its dash."""
    found: list[Token] = []
    for token in tokens:
        if token.kind == "sym" and token.text in "-.'\"":
            continue
        ending = token.text in ("s", "'s", "degree", "degrees", "deg", "deg's")
        if ending and found and found[-1].kind == "num":
            continue
        found.append(token)
    return found


def read_fittings(line: str) -> Reading | None:
    """Read a list of fittings from normalised text; None if it names none."""
    tokens = _words(fold_numbers(tokenize(line)))
    found: dict[str, int] = {}
    loose = False
    count: int | None = None
    denied = False
    last = ""
    i = 0
    while i < len(tokens):
        token = tokens[i]
        match = _phrase_at(tokens, i) or (
            _elliptic(tokens, i, last) if count is not None and last else None
        )
        if match is not None and not _counts_next(tokens, i, match[2]):
            kind, phrase, i = match
            last = phrase
            loose = loose or phrase in LOOSE
            if not denied:
                found[kind] = found.get(kind, 0) + (1 if count is None else count)
            count, denied = None, False
            continue
        if token.kind == "num":
            if count is not None or not token.value.is_integer() or not 0 <= token.value <= 60:
                return _ask(line)
            count = int(token.value)
        elif token.text in ("no", "zero", "without", "not"):
            denied = True
        elif token.text in _COUNTS and count is None and token.text not in ("a", "an"):
            count = _COUNTS[token.text]
        elif token.kind == "sym" and token.text in ",;":
            if count is not None:
                return _ask(line)
            denied = False
        i += 1
    if count is not None:
        return _ask(line) if found else None
    if not found:
        return None
    rows: list[Value] = [{"kind": kind, "count": n} for kind, n in found.items() if n]
    if not rows:
        return None
    if any(n > 25 for n in found.values()):
        return AskBack(
            "So many? Please count the fittings on the two longest runs only.",
            (),
            AskKind.IMPLAUSIBLE,
        )
    return Accepted({"fittings": rows}, Sure.HEDGED if loose else Sure.PLAIN)


def _phrase_at(tokens: list[Token], i: int) -> tuple[str, str, int] | None:
    table = _phrases()
    for n in (7, 6, 5, 4, 3, 2, 1):
        part = tokens[i : i + n]
        if len(part) < n:
            continue
        words = tuple(_singular(t.text) if t.kind == "word" else f"{t.value:g}" for t in part)
        plain = tuple(t.text if t.kind == "word" else f"{t.value:g}" for t in part)
        for key in (plain, words):
            if key in table:
                return (*table[key], i + n)
    return None


_GOVERNED: Final = words("elbow turn takeoff tap boot bend offset transition reducer")


def _elliptic(tokens: list[Token], i: int, last: str) -> tuple[str, str, int] | None:
    """ "4 square elbows, 2 round": the noun of the phrase before is meant."""
    noun = next((word for word in reversed(last.split()) if word in _GOVERNED), None)
    if noun is None or tokens[i].kind != "word":
        return None
    phrase = f"{tokens[i].text} {noun}"
    found = _phrases().get(tuple(phrase.split()))
    return (found[0], phrase, i + 1) if found is not None else None


def _counts_next(tokens: list[Token], i: int, after: int) -> bool:
    """ "5 elbows" isn't a fitting named "5", but "90 elbow" is one."""
    token = tokens[i]
    return token.kind == "num" and after == i + 1 and token.value not in (45.0, 90.0)


def _ask(line: str) -> AskBack:
    del line
    return AskBack(
        "Which fittings, and how many of each? Such as: 2 square elbows, a takeoff, a boot.",
        (),
        AskKind.MISSING_PART,
    )
