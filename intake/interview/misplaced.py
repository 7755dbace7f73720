"""Answers that belong to another place than the open question: stages, and sizes without a name."""

import re
from collections.abc import Mapping
from typing import Final

from intake.interview.beside import ASIDE
from intake.interview.question import Question
from intake.reading.manner import sureness
from intake.reading.read import read
from intake.reading.result import Accepted, Value, Volunteered

__all__ = ["by_side", "by_stage", "nameless_size", "one_size"]

_LOW: Final = re.compile(r"\b(?:low(?:er)?|lo|first|1st|stage (?:1|one))\b")
_HIGH: Final = re.compile(r"\b(?:high(?:er)?|hi|full|second|2nd|stage (?:2|two)|max\w*)\b")
_HEAT: Final = re.compile(r"\bheat\w*\b")
_COOL: Final = re.compile(r"\bcool\w*|\ba/?c\b")
_CLAUSES: Final = re.compile(r",(?!\d{3}\b)|[;/]|\band\b|\bthen\b|\bbut\b")
_FLOW_LABELLED: Final = re.compile(
    r"(?P<label>high(?:er)?|hi|full|low(?:er)?|lo|heat(?:ing)?|cool(?:ing)?)\b"
)
_BARE: Final = re.compile(r"(?P<high>\d{3,4}) ?(?:cfm)? ?/ ?(?P<low>\d{3,4}) ?(?:cfm)?[.! ]*")
_OWN_STAGE: Final[Mapping[str, str]] = {
    "cool_cfm": "high",
    "low_cfm": "low",
    "heat_pump_cfm": "heating",
}


def by_stage(question: Question, line: str, *, staged: bool) -> Accepted | None:
    """Several airflows told apart by stage or season: "1200 high, 850 low".

    Args:
        question: The open question.
        line: Normalised text.
        staged: Whether the equipment has stages, so that "1200/850" is high and low.

    Returns:
        The open question's own airflow, the others as answers to theirs; None if the line doesn't
        tell them apart or lacks the own one.
    """
    own = _OWN_STAGE.get(question.key)
    if own is None:
        return None
    bare = _BARE.fullmatch(line)
    if bare and staged and float(bare["high"]) > float(bare["low"]):
        flows = {"high": float(bare["high"]), "low": float(bare["low"])}
    else:
        flows = _labelled(line, own)
    if own not in flows or len(flows) < 2:
        return None
    others = tuple(
        Volunteered("airflow", {"cfm": flow}, f"{flow:g} {stage}")
        for stage, flow in flows.items()
        if stage != own
    )
    return Accepted({"cfm": flows[own]}, sureness(line), others=others)


def _labelled(line: str, own: str) -> dict[str, float]:
    """Airflow by stage; the first may go without a label where it is what was asked for."""
    flows: dict[str, float] = {}
    for clause in _pieces(line):
        stage = _stage(clause) or (own if not flows else "")
        found = read("airflow", _FLOW_LABELLED.sub(" ", clause)) if stage else None
        if not stage or stage in flows or not isinstance(found, Accepted):
            return {}
        flow = found.values.get("cfm")
        if not isinstance(flow, int | float):
            return {}
        flows[stage] = float(flow)
    return flows


def _pieces(line: str) -> list[str]:
    """One clause for each airflow; without marks, labels stand all before or all after."""
    pieces = [piece.strip() for piece in _CLAUSES.split(line) if re.search(r"\d", piece)]
    if len(pieces) != 1:
        return pieces
    numbers = [match for match in re.finditer(r"\d[\d,.]*", line) if len(match[0]) > 2]
    if len(numbers) != 2:
        return pieces
    label_first = _FLOW_LABELLED.search(line[: numbers[0].start()]) is not None
    if not label_first:
        cut = numbers[1].start()
        return [line[:cut], line[cut:]]
    second = _FLOW_LABELLED.search(line, numbers[0].end())
    return [line[: second.start()], line[second.start() :]] if second else pieces


def _stage(clause: str) -> str:
    if _LOW.search(clause):
        return "" if _HIGH.search(clause) or _HEAT.search(clause) else "low"
    if _HEAT.search(clause):
        return "" if _COOL.search(clause) else "heating"
    return "high" if _HIGH.search(clause) or _COOL.search(clause) else ""


_SIDES: Final[Mapping[str, str]] = {"run_supply": "supply", "run_return": "return"}
_SIDE: Final = re.compile(r"\b(supply|return)\b")


def by_side(question: Question, line: str) -> Accepted | None:
    """Both runs in one line: "60 supply 25 return"; None if it doesn't tell them apart."""
    own = _SIDES.get(question.key)
    if own is None or {*_SIDE.findall(line)} != {"supply", "return"}:
        return None
    numbers = list(re.finditer(r"\d[\d,.]*", line))
    labels = list(_SIDE.finditer(line))
    if len(numbers) != 2 or len(labels) != 2:
        return None
    first = labels[1].start() if labels[0].start() < numbers[0].start() else numbers[1].start()
    lengths: dict[str, Mapping[str, Value]] = {}
    for clause in (line[:first], line[first:]):
        side = _SIDE.search(clause)
        found = read("length", _SIDE.sub(" ", clause).strip(" ,;&").removesuffix(" and"))
        if side is None or not isinstance(found, Accepted) or "ft" not in found.values:
            return None
        lengths[side[1]] = found.values
    if len(lengths) < 2:
        return None
    others = tuple(
        Volunteered(f"{ASIDE}{key}", lengths[side], f"{side} run")
        for key, side in _SIDES.items()
        if side != own
    )
    return Accepted(lengths[own], sureness(line), others=others)


_SIZED_FIELDS: Final = ("duct", "filter", "grille", "skin", "measured_where", "thickness", "count")
_ONE_SIZE: Final = re.compile(r"\d+(?:\.\d+)? ?(?:x|by|×|\*) ?\d+(?:\.\d+)?(?! ?(?:x|by|×|\*))\b")


def nameless_size(question: Question, line: str) -> Accepted | None:
    """A duct's size typed where no size was asked for ("20x8 metal"); None if it is none."""
    return None if question.field in _SIZED_FIELDS else one_size(line)


def one_size(line: str) -> Accepted | None:
    """The one width by height that a line tells of a duct; None if it tells none, or several."""
    if len(_ONE_SIZE.findall(line)) != 1:
        return None
    found = read("duct", line)
    if not isinstance(found, Accepted) or "width_in" not in found.values:
        return None
    return found if "height_in" in found.values else None
