"""Airflows told with what they are for: cooling, heating, high, low, or both alike."""

import itertools
import re
from typing import Final

from intake.reading.clean import normalise

__all__ = ["as_rated", "flows_told"]

_PER: Final = re.compile(
    r"(?P<lead>(?:about |around |like |call it |figure )*)"
    r"(?P<rate>[2-5]\d\d|(?:three|four) (?:hundred(?: (?:and )?fifty)?|fifty))(?: ?cfm)?"
    r" per(?: tons?)?[.! ]*"
)
_SPOKEN: Final = {"three": 300, "four": 400}


def as_rated(field: str, text: str) -> str:
    """An airflow told by the ton with the ton left out, or in words: "four hundred per".

    >>> as_rated("airflow", "four hundred per"), as_rated("airflow", "1200")
    ('400 per ton', '1200')
    """
    match = _PER.fullmatch(normalise(text)) if field == "airflow" else None
    if match is None:
        return text
    rate = match["rate"]
    if not rate.isdigit():
        rate = str(_SPOKEN[rate.split()[0]] + (50 if "fifty" in rate else 0))
    return f"{match['lead']}{rate} per ton"


_NUMBER: Final = r"(?:\d,\d{3}|\d{3,4})(?![\d.]|,\d{3}| ?(?:btu|k\b|sq|ft|x|by|%))"
_LABELS: Final = (
    ("heating", r"heat\w*(?! ?pump)|hp heat\w*"),
    ("low", r"low(?:er)?(?: stage| cool\w*)?|first stage"),
    ("high", r"high(?: stage| cool\w*)?|full(?: cool\w*)?|cool\w*|a/?c|second stage"),
)
_BOTH: Final = re.compile(
    rf"(?P<flow>{_NUMBER}) ?(?:cfm)?,? ?(?:in |for |on |at |is )*(?:the )?(?:both|either|each"
    r"|heat\w* (?:and|&|or|/) ?cool\w*|cool\w* (?:and|&|or|/) ?heat\w*|all)"
    r"|(?:both|heat\w* (?:and|&) cool\w*|cool\w* (?:and|&) heat\w*)(?: modes?| are| at| is| need\w*"
    rf"|:)* (?P<behind>{_NUMBER})"
)
_TOKEN: Final = re.compile(
    rf"(?P<number>\b{_NUMBER})|"
    + "|".join(rf"(?P<{stage}>\b(?:{words})\b)" for stage, words in _LABELS)
)
_STAGED: Final = re.compile(
    rf"\b{_NUMBER} (?:on |in |at )?(?:high|full)\b[, ]+(?:and )?{_NUMBER} (?:on |in |at )?low\b"
)
_PLAUSIBLE_CFM: Final = (250.0, 2600.0)


def flows_told(line: str) -> dict[str, float]:
    """Airflow by what it is for, CFM: "high", "low", "heating"; empty if fewer than two are told.

    Args:
        line: Normalised text that speaks of CFM.

    >>> flows_told("3 ton heat pump, 1200 cfm cooling and 1150 heating")
    {'high': 1200.0, 'heating': 1150.0}
    >>> flows_told("1200 cfm both modes")
    {'high': 1200.0, 'heating': 1200.0}
    """
    if "cfm" not in line and not _STAGED.search(line):
        return {}
    alike = _BOTH.search(line)
    if alike is not None:
        flow = _value(alike["flow"] or alike["behind"])
        return {"high": flow, "heating": flow} if flow else {}
    tokens = [(m.lastgroup or "", m[0]) for m in _TOKEN.finditer(line)]
    tokens = [t for t in tokens if t[0] != "number" or _value(t[1])]
    kinds = [kind for kind, _ in tokens]
    if kinds.count("number") < 2:
        return {}
    label_first = kinds[0] != "number"
    flows: dict[str, float] = {}
    for (kind, text), (other, text_b) in itertools.pairwise(tokens):
        stage, number = (kind, text_b) if label_first else (other, text)
        if (other if label_first else kind) != "number" or stage == "number":
            continue
        flows[stage] = _value(number)
    return flows if len(flows) > 1 else {}


def _value(text: str) -> float:
    """CFM of a number; 0 if it can be none."""
    flow = float(text.replace(",", ""))
    return flow if _PLAUSIBLE_CFM[0] <= flow <= _PLAUSIBLE_CFM[1] else 0.0
