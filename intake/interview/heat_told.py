"""Heat of the old furnace beside the new one's, of one that burns nothing, and a coil told dry."""

import re
from typing import Final

from intake.reading.manner import sureness
from intake.reading.read import read
from intake.reading.result import Accepted

__all__ = ["burns_nothing", "dry_drop", "of_what_is_asked"]

_CLAUSES: Final = re.compile(r",(?!\d{3}\b)|;|\.(?!\d)|\b(?:but|and|while)\b")
_OLD: Final = re.compile(r"\b(?:old|existing|current|this)\b")
_NEW: Final = re.compile(r"\bnew\b")


_ONE_THING: Final = re.compile(
    r"(?<=old) ones?(?:'s| is)?\b|(?<=new) ones?(?:'s| is)?\b|\b(?:the )?one (?=with |that |of )"
)
"""A "one" that counts nothing."""


def of_what_is_asked(key: str, line: str) -> str:
    """The clause of the old furnace where that is asked, of the new one where that is.

    >>> of_what_is_asked("old_heat", "the new one's 80k, old one 100k 78 percent")
    'old 100k 78 percent'
    """
    line = " ".join(_ONE_THING.sub(" ", line).split())
    clauses = [clause.strip() for clause in _CLAUSES.split(line) if clause.strip()]
    of_old = [c for c in clauses if _OLD.search(c) and not _NEW.search(c)]
    of_new = [c for c in clauses if _NEW.search(c) and not _OLD.search(c)]
    if not of_old or not of_new or len(of_old) + len(of_new) != len(clauses):
        return line
    return ", ".join(of_old if key.startswith("old_") else of_new)


_NO_FIRE: Final = re.compile(
    r"\b(?:all[- ]electric|(?:was|is|it'?s|its) electric|electric (?:air ?handler|furnace|heat"
    r"|strips?|unit)|heat ?pump"
    r"|nothing burn\w*|no (?:burner|gas|flame|fuel|combustion)|doesn'?t burn|burns nothing"
    r"|isn'?t (?:gas|a furnace)|not (?:gas|a (?:gas )?furnace))\b"
)
_BURNS: Final = re.compile(
    r"\d|\b(?:dual|hybrid|gas (?:furnace|back\w*)|oil|propane|with a furnace|or)\b|\?"
)


def burns_nothing(line: str) -> bool:
    """Whether a line says that the old equipment burns nothing.

    >>> burns_nothing("old was a heat pump"), burns_nothing("heat pump over a gas furnace")
    (True, False)
    """
    return _NO_FIRE.search(line) is not None and _BURNS.search(line) is None


_DRY: Final = re.compile(
    r"(?:it'?s |about |the )?(?P<drop>\d?\.\d+)(?: in\w*| inwc)? (?:is )?dry"
    r"(?:,? (?:@|at|for) (?P<at>\d,\d{3}|\d{3,4})(?: cfm)?)?(?: dry)?[.! ]*"
    r"|dry (?:is )?(?P<drop2>\d?\.\d+)(?:,? (?:@|at|for) (?P<at2>\d,\d{3}|\d{3,4})(?: cfm)?)?[.! ]*"
)
_DRY_SHARES: Final = (0.9, 0.7)
"""A dry coil's drop over the wet one's. Source: common practice."""


def dry_drop(line: str) -> Accepted | None:
    """The wet drop, as a range, of a coil whose dry drop is told; None if the line tells none.

    >>> sorted(dry_drop(".3 dry at 1200").values)
    ['cfm', 'inwc_high', 'inwc_low']
    """
    found = _DRY.fullmatch(line)
    if found is None:
        return None
    dry = float(found["drop"] or found["drop2"])
    wet = read("static_pressure", f"{dry:g}")
    at = found["at"] or found["at2"]
    if not isinstance(wet, Accepted) or "inwc" not in wet.values:
        return None
    low, high = (round(dry / share, 2) for share in _DRY_SHARES)
    cfm = {"cfm": float(at.replace(",", ""))} if at else {}
    return Accepted({"inwc_low": low, "inwc_high": high, **cfm}, sureness(line))
