"""What a duct is made of, from the words for it."""

from __future__ import annotations

import itertools
from typing import Final

from intake.reading.scan import Item
from intake.reading.words import words

__all__ = ["MATERIALS", "material_of"]

MATERIALS: Final = (
    "galvanized",
    "flex",
    "duct_board",
    "lined_metal",
    "panned_joist",
    "stud_bay",
    "aluminum",
    "pvc",
)

_BAYS: Final = {"panned_joist", "stud_bay"}
"""What a plain "bay" or "cavity" can be."""

_NO: Final = words(
    """
    not no isn't isnt dont without never wasn't wasnt aint ain't wouldn't don't doesn't aren't
    forget scratch nix instead thought figured assumed
    """
)
_BESIDE: Final = words("below beneath above past beside along")
"""Words that tell where a duct is, not what it is of ("3 feet below the joists")."""

_TURNS: Final = words("but , ; . just only its it's")


def material_of(items: list[Item]) -> tuple[str, ...]:
    """The materials that the words can mean: none, one, or several (ask which)."""
    names: set[str] = set()
    either: set[str] = set()
    for i, item in enumerate(items):
        if item.means("material.") and not (_denied(items, i) or _is_accessory(items, i)):
            meant = {m.split(".")[1] for m in item.meanings if m.startswith("material.")}
            (either if meant == _BAYS else names).update(meant)
    names |= set() if names & _BAYS else either
    return _settled(names, items)


_ACCESSORIES: Final = words(
    """
    tape tapes strap straps strapping hanger hangers tie ties zip clamp clamps screw screws wire
    bracket brackets collar collars boot boots sheeting sticker tag hooks band bands damper dampers
    jacket jackets sleeve sleeves takeoff takeoffs register
    registers grille grilles cap caps elbow elbows
    """
)
"""What is at a duct, and may be of another material than the duct ("flex with metal collars")."""


def _is_accessory(items: list[Item], i: int) -> bool:
    behind = [item.text.split()[0] for item in items[i + 1 : i + 3] if item.text]
    at_once = bool(behind) and behind[0] in _ACCESSORIES
    foil = len(behind) > 1 and behind[0] == "foil" and behind[1] in _ACCESSORIES
    return at_once or foil


_NOT_KNOWN: Final = words(
    """
    know sure tell see say idea clue certain checked looked remember telling guess unsure unknown
    check look wonder wondering recall
    """
)
_WHETHER: Final = words("if whether about on for what which")
_NOR_KNOWN: Final = words("don't dont not can't cant couldn't couldnt no didn't didnt haven't hard")


def _not_known(items: list[Item], i: int) -> bool:
    """ "don't know if there's liner", "no idea on the lining", "liner unknown"."""
    before = [word for item in items[max(0, i - 9) : i] for word in item.text.split()]
    for place in range(len(before) - 1, -1, -1):
        if before[place] in _WHETHER:
            lead = before[max(0, place - 4) : place]
            if set(lead) & _NOT_KNOWN and set(lead) & (_NOR_KNOWN | {"unsure", "wondering"}):
                return True
        if before[place] in _STOPS:
            break
    behind = [item.text for item in items[i + 1 : i + 4]]
    return bool(behind) and (
        behind[0] in ("unknown", "unsure") or behind[:3] in (["or", "not", ","], ["or", "no", ","])
    )


_STOPS: Final = words(", . ; but")
_THINK: Final = words("think believe reckon figure see find")
_PERHAPS: Final = words("maybe perhaps possibly")
_MAY_BE: Final = (["might", "be"], ["may", "be"], ["could", "be"])
"""What leaves a liner open, which is asked about by itself."""


def _denied(items: list[Item], i: int) -> bool:
    before = [item.text for item in items[max(0, i - 4) : i]]
    if before[-2:] == ["anything", "but"]:
        return True
    if before[-3:] == ["used", "to", "be"] or _not_known(items, i):
        return True
    sized = items[i].means("material.lined_metal") and any(n.kind == "num" for n in items)
    if sized and before and (before[-1] in _PERHAPS or before[-2:] in _MAY_BE):
        return True
    if len(before) == 4 and before[0] in _NO and before[1] in _THINK and before[2:] == ["it", "is"]:
        return True
    if len(before) > 2 and before[-3] in _NO and before[-2] in _THINK:
        return True
    for k in range(i - 1, max(i - 4, -1), -1):
        text = items[k].text
        if text in _NO:
            return True
        if text == "top" and items[i].means("material.panned_joist"):
            return True
        if k >= i - 2 and text in _BESIDE and items[i].means("material.panned_joist"):
            return True
        if text in _TURNS:
            return False
    return False


def _settled(names: set[str], items: list[Item]) -> tuple[str, ...]:
    bare = "unlined" in names
    names = names - {"unlined", "shiny"} if names - {"unlined", "shiny"} else names
    wrapped = "wrapped" in names
    names = names - {"wrapped", "mixed"}
    if names & {"panned_joist", "stud_bay"}:
        names -= {"galvanized", "foreign", "shiny"}
        if names >= {"panned_joist", "stud_bay"}:
            return ("panned_joist", "stud_bay")
    if "lined_metal" in names:
        if bare and not names - {"lined_metal"}:
            return ()
        names -= {"galvanized", "insulated", "fiberglass", "shiny"}
        if "flex" in names or "duct_board" in names:
            names -= {"lined_metal"}
    if "flex" in names:
        names -= {"insulated", "shiny", "foreign", "fiberglass"}
        if _touching(items):
            names -= {"galvanized", "aluminum", "pvc"}
    if "duct_board" in names:
        names -= {"insulated", "fiberglass", "shiny", "foreign"}
    if names & {"pvc", "aluminum"}:
        names -= {"insulated"}
        if not any(item.means("alt.or") for item in items):
            names -= {"galvanized"}
    if "fiberglass" in names:
        if wrapped:
            names -= {"fiberglass"}
        elif "galvanized" in names:
            return ("galvanized", "lined_metal")
        else:
            return ("duct_board", "lined_metal")
    if "insulated" in names:
        names -= {"insulated"}
        if "galvanized" in names and not wrapped:
            return ("galvanized", "lined_metal")
        if not names and not wrapped:
            return ("lined_metal", "galvanized", "flex")
    names -= {"shiny", "unlined"} if names != {"unlined"} else {"unlined"}
    return tuple(name for name in (*MATERIALS, "foreign") if name in names)


def _touching(items: list[Item]) -> bool:
    """Whether flex and another material's word are neighbours ("aluminum flex")."""
    for one, two in itertools.pairwise(items):
        if one.means("material.mixed") or two.means("material.mixed"):
            continue
        both = one.means("material.") and two.means("material.")
        if both and one.means("material.flex") != two.means("material.flex"):
            return True
    return False
