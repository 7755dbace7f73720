"""How clean coil, blower wheel and filter are, part by part, and all of them but one."""

import itertools
import re
from collections.abc import Mapping
from typing import Final

from intake.interview.denials import affirmed, denied
from intake.interview.own_words import PARTS, STATES
from intake.reading.manner import cant_say
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value

__all__ = ["read_conditions", "told_states"]

_CLAUSES: Final = re.compile(
    r"[,;.]|(?=\b(?:everything else|the rest)\b)|(?<!the )(?=\brest (?:is|are)\b)|\bbut\b|\band\b"
    r"|\bthough\b|\bwhile\b|&|\bn\b"
)
_EXCEPT: Final = re.compile(
    r"\b(?:except(?:ing)?(?: for| that)?|cept|other than|apart from|aside from|besides|save for"
    r"|all but|everything but|both but|not counting|minus"
    r"|but (?!(?:the |its |a )?(?:\w+ ){0,2}(?:is|are|was|looks?|has|needs)\b)"
    r"(?=(?:the |its )?(?:coil|wheel|blower|filter)[.! ]*$))\b"
)
_ALL: Final = re.compile(
    r"\b(?:all|everything|every thing|both|the rest|rest|others|everything else)\b|^(?:it'?s )?\w+$"
)
_HALF: Final = re.compile(
    r"\b(?:half|partly|partially|part|mostly|nearly|almost) (?=plug|clog|block)"
)
_ONLY_NAMED: Final = re.compile(
    r"(?:the|a|an|and|or|both|my|its|old|blower|wheel|fan|coils?|evap\w*|filters?|cage|,|&| )*"
)
_BARE_NOT: Final = re.compile(
    r"\b(?:not|isn'?t|ain'?t|aren'?t|no)(?: so much| really| at all)?[.! ]*$"
)


def read_conditions(text: str, choices: tuple[str, ...]) -> Reading | None:
    """Read how clean the parts are; None if the text says nothing of it.

    Of what is excepted from "clean" it is asked how dirty it is.

    Args:
        text: Normalised.
        choices: Unused; every reader takes it.

    >>> read_conditions("all clean except the coil", ()).why
    'How dirty is the coil: some dirt, or plugged?'
    """
    main, excepted = _cut(text)
    if excepted and (named := _parts(excepted)):
        state, other = _state(main), _state(excepted)
        if not state and other:  # "everything but the filter is clean"
            state, other = other, ""
        if state:
            told = _parts(main) or [part for part, _ in PARTS]
            values: dict[str, Value] = {part: state for part in told if part not in named}
            if other:
                return Accepted({**values, **dict.fromkeys(named, other)})
            return _how_dirty(values, named, state)
    values, unclean = _by_clause(text)
    if re.search(r"\bno coil\b", text):
        values["coil"] = "none"
    if unclean and unclean not in values:
        return _how_dirty(values, [unclean], "clean")
    return Accepted(values) if values else None


def told_states(values: Mapping[str, Value]) -> str:
    """States of parts in words: "coil some dirt, filter clean"."""
    return ", ".join(f"{part} {state}".replace("_", " ") for part, state in values.items())


def _how_dirty(values: dict[str, Value], named: list[str], state: str) -> Reading | None:
    """Asks how dirty the part is that isn't clean; what isn't dirty otherwise stays open."""
    if state != "clean" or len(named) != 1:
        return Accepted(values) if values else None
    part = named[0]
    return AskBack(
        f"How dirty is the {part.replace('_', ' ')}: some dirt, or plugged?",
        tuple({**values, part: how} for how in ("some_dirt", "plugged")),
        AskKind.TWO_READINGS,
    )


def _cut(text: str) -> tuple[str, str]:
    found = _EXCEPT.search(text)
    if found is None:
        return text, ""
    return text[: found.start()] + _kept(found[0]), text[found.end() :]


def _kept(mark: str) -> str:
    """Of "all but" the "all" is left."""
    return mark.split()[0] if mark.endswith("but") and " " in mark else ""


def _by_clause(text: str) -> tuple[dict[str, Value], str]:
    """The state of each part, and the part that is only said not to be clean."""
    values: dict[str, Value] = {}
    unclean = ""
    unread: list[str] = []
    waiting: list[str] = []
    last = ""
    for clause in _CLAUSES.split(text):
        for piece in _one_part_each(clause):
            parts, state = _parts(piece), _state(piece)
            if cant_say(piece):
                continue
            if parts and not state and _BARE_NOT.search(piece) and last == "clean":
                unclean = parts[0]
                continue
            if parts and not state:
                only_named = _ONLY_NAMED.fullmatch(piece) is not None
                waiting = [*waiting, *parts] if only_named else []
                unread += [] if only_named else parts
            elif state:
                for part in [*waiting, *parts] or _others(values, unread):
                    values[part] = state
                waiting = []
            last = state or last
    for part in waiting:  # of these no state was told
        values.pop(part, None)
    return values, unclean


def _others(values: Mapping[str, Value], unread: list[str]) -> list[str]:
    """The parts that nothing was told of yet, neither in words that are known nor in others."""
    return [part for part, _ in PARTS if part not in values and part not in unread]


def _one_part_each(clause: str) -> list[str]:
    """A clause with several parts and several states, cut so that each has its own."""
    starts = sorted(at.start() for _, pattern in PARTS for at in pattern.finditer(clause))
    states = sorted(at.start() for _, pattern in STATES for at in pattern.finditer(clause))
    if len(starts) < 2 or len(states) < 2:
        return [clause]
    cuts = starts if starts[0] < states[0] else states
    cuts = [0, *cuts[1:], len(clause)]
    pieces = [clause[a:b] for a, b in itertools.pairwise(cuts)]
    whole = all(_parts(piece) and _state(piece) for piece in pieces)
    return pieces if whole else [clause]


def _parts(clause: str) -> list[str]:
    return [part for part, pattern in PARTS if pattern.search(clause)]


def _state(clause: str) -> str:
    """How clean a clause says something is; not dirty is clean."""
    clause = _HALF.sub("", clause)
    for state, pattern in STATES:
        if affirmed(pattern, clause):
            return state
    dirty = (pattern for state, pattern in STATES if state != "clean")
    if any(denied(pattern, clause) for pattern in dirty):
        return "clean"
    clean = next(pattern for state, pattern in STATES if state == "clean")
    return "some_dirt" if denied(clean, clause) else ""
