"""What a line says beside its answer: the place of a filter, the mode of a reading, a motor.

Each row gives answers to other questions of the same interview, by the words that settle them.
"""

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import Final

from intake.interview.flows_told import flows_told
from intake.interview.own_words import whole_words
from intake.interview.phone_tons import new_tons
from intake.interview.question import Question
from intake.interview.strips import denies_strips, strip_kw
from intake.interview.zones_told import smallest_zone
from intake.reading.result import Accepted, Volunteered

__all__ = ["ASIDE", "NONE", "filter_place", "motor_aside", "with_asides", "without_the_source"]

ASIDE: Final = "@"
"""In front of a question's key: the field of an answer to that question itself."""

NONE: Final = "none"
"""Name of the value by which such an answer says that there is none."""

_FILTER_PLACE: Final = (
    (
        "grille",
        whole_words(
            r"(?:behind|in) (?:the |a |both |each |that |this )?(?:return |hall\w* |ceiling "
            r"|wall )*"
            r"grill?e?s?",
            r"(?:in|at) the (?:hall\w*|ceiling|wall)",
        ),
    ),
    (
        "cabinet",
        whole_words(
            r"(?:in|at) (?:the |a |its )?(?:media )?(?:cabinet|slot|rack|furnace|unit)"
            r"|media (?:cabinet|box|filter|rack)"
            r"|(?<=\d )(?:cabinet|slot)"
        ),
    ),
)
_MODES: Final = (
    ("cooling_low", whole_words(r"(?:low|first)(?:[- ]stage)? cool\w*|cool\w* low")),
    ("heat_pump_heating", whole_words(r"heat ?pump heat\w*|hp heat\w*")),
    ("cooling_high", whole_words(r"cool\w*|a/?c (?:on|running)")),
    ("heating_high", whole_words(r"heat(?:ing)?|high fire")),
)
_FILTER_STATES: Final = (
    (
        "none",
        whole_words(
            r"no filter|without (?:a |the )?filter|filter(?:'s| is| was)? (?:out"
            r"|removed|pulled)"
        ),
    ),
    (
        "dirty",
        whole_words(
            r"dirty filter|filter(?:'s| is| was)? (?:dirty|plugged|loaded|filthy"
            r"|as found)"
        ),
    ),
    (
        "clean",
        whole_words(
            r"(?:clean|new|fresh) filter|filter(?:'s| is| was)? (?:clean|new"
            r"|fresh)"
        ),
    ),
)
_SOURCES: Final = (
    ("flow_plate", whole_words(r"flow ?(?:plate|grid)|(?:the|my|a) (?:plate|grid)")),
    ("hood_sum", whole_words(r"(?:flow )?hoods?")),
    ("traverse", whole_words(r"pitot|traverse|hot wire|anemometer")),
    ("temperature_rise", whole_words(r"temp\w* rise|(?:from|by|off|with) (?:the )?rise")),
    ("blower_table", whole_words(r"(?:blower |fan )?(?:table|chart)|(?:the|old) (?:old )?book")),
)
_FROM_A_SOURCE: Final = re.compile(
    r",? *\b(?:by|with|from|off(?: of)?|using|on|per|through) (?:(?:the|my|a|our) )?"
    r"(?:flow ?(?:plate|grid)|plate|grid|(?:flow )?hoods?|pitot|traverse|hot wire|anemometer"
    r"|(?:temp\w* )?rise|(?:old )?(?:blower |fan )?(?:table|book|chart))\b"
    r"|(?<=\d)(?: ?cfm)? (?:flow ?(?:plate|grid)|plate|(?:flow )?hood|pitot|anemometer)[.! ]*$"
    r"|, ?(?:temp\w* rise|flow plate|hood|blower table|table)[.! ]*$|^figure (?=\d)"
    r"|(?<=\d)(?: ?cfm)? (?:flow ?(?:plate|grid)|plate|(?:flow )?hoods?|pitot|traverse"
    r"|blower table)[.! ]*$"
)
_HEATS_ALIKE: Final = re.compile(
    r"\bsame (?:for |in |on |when |as )?(?:the )?heat\w*|\bheat\w*(?: is| needs"
    r"| wants)?(?: the)? same\b"
    r"|\b(?:both (?:modes?|ways)|heat\w* and cool\w*|cool\w* and heat\w*)\b"
)
"""The heat pump heats with the air that it cools with."""

_FLOW_THEN: Final = re.compile(
    r"\b(?P<cfm>\d{3,4}|\d,\d{3}) ?(?:cfm\b|(?:by|on|from|off|with) (?:the |my |a )?(?:flow ?)?"
    r"(?:plate|grid|hood)\b)"
)
"""The airflow at which pressures were read."""

_Rows = tuple[tuple[str, re.Pattern[str]], ...]
_READING: Final[tuple[tuple[str, _Rows], ...]] = (
    ("reading_mode", _MODES),
    ("reading_filter", _FILTER_STATES),
    ("reading_source", _SOURCES),
)
_BESIDE: Final[Mapping[str, tuple[tuple[str, _Rows], ...]]] = {
    "filter": (("filter_place", _FILTER_PLACE),),
    "static_total": _READING,
    "static_split": _READING[:2],
    "reading_mode": _READING[1:2],
    "reading_airflow": (("reading_source", _SOURCES),),
}
"""By the open question: the others that its line may settle."""

_VARIABLE_BLOWER: Final = re.compile(
    r"\b(?:variable[- ]?speed|vs)(?: ecm)?"
    r" (?:air ?handler|blower|motor|fan|furnace|indoor\w*|ahu)\b"
)
_TWO_STAGES: Final = whole_words(r"(?:2|two|dual)[- ]?stages?d?")
_VARIABLE: Final = whole_words(r"variable[- ]?speed")
_TONS: Final = re.compile(r"\b([1-5](?:\.5)?)[ -]?tons?\b")
_PRESENT_TONS: Final = re.compile(
    r"\b([1-5](?:\.5)?)[ -]?tons? (?:now|today|currently|at the moment|there now|in there now)\b"
)


_NEW: Final = whole_words(r"new|wants?|this time|going|to be|will be|instead")


def _present_tons(found: Accepted, line: str) -> float | None:
    """Tons of what is there now; of what comes again as it was, any tons that are told."""
    now = _PRESENT_TONS.search(line)
    if now is not None:
        return float(now[1])
    told = {float(tons) for tons in _TONS.findall(line)}
    choice = found.values.get("choice")
    again = choice == "like_for_like" or (choice == "cooling_only" and not _NEW.search(line))
    return told.pop() if again and len(told) == 1 else None


def motor_aside(line: str) -> tuple[str, bool]:
    """The line without a variable-speed blower told in it, and whether one was.

    The blower's speed says nothing of the stages of the cooling.

    >>> motor_aside("two-stage heat pump, variable speed air handler")
    ('two-stage heat pump, air handler', True)
    """
    found = _VARIABLE_BLOWER.search(line)
    if found is None and _TWO_STAGES.search(line):
        found = _VARIABLE.search(line)
    if found is None:
        return line, False
    kept = re.sub(r"^(?:variable[- ]?speed|vs)(?: ecm)? ?", "", found[0])
    return line[: found.start()] + kept + line[found.end() :], True


def without_the_source(question: Question, text: str, line: str) -> tuple[str, str]:
    """Text and line of an airflow without what it was measured with: "1350 by flow plate"."""
    if question.key != "reading_airflow" or not _FROM_A_SOURCE.search(line):
        return text, line
    plain = " ".join(_FROM_A_SOURCE.sub(" ", line).split())
    return plain, plain


def _each_placed(found: Accepted) -> bool:
    rows = found.values.get("filters")
    return isinstance(rows, list) and all(isinstance(row, dict) and "place" in row for row in rows)


def filter_place(text: str) -> str:
    """Where a filter sits by what a text says: "grille", "cabinet" or empty."""
    return _first(_FILTER_PLACE, text)


def with_asides(question: Question, found: Accepted, line: str) -> Accepted:
    """An answer together with what its line settles beside it.

    Args:
        question: The open question.
        found: What was read as its answer.
        line: Normalised text.
    """
    said = [
        Volunteered(f"{ASIDE}{key}", {"choice": word}, line)
        for key, rows in _BESIDE.get(question.key, ())
        if (word := _first(rows, line)) and not (key == "filter_place" and _each_placed(found))
    ]
    others = [*found.others]
    tons = _present_tons(found, line) if question.key == "d_change" else None
    if tons is not None:
        said.append(Volunteered(f"{ASIDE}d_tons", {"tons": tons}, line))
    if question.key == "d_tons" and _grows(found, line):
        said.append(Volunteered(f"{ASIDE}d_change", {"choice": "bigger"}, line))
    kilowatts = strip_kw(line)
    if kilowatts is not None and question.key == "strip_cfm" and "kw" not in found.values:
        found = replace(found, values={**found.values, "kw": kilowatts})
    flow = _FLOW_THEN.search(line) if question.key in ("static_total", "static_split") else None
    if flow is not None:
        cfm = float(flow["cfm"].replace(",", ""))
        said.append(Volunteered(f"{ASIDE}reading_airflow", {"cfm": cfm}, line))
        others = [other for other in others if other.field != "airflow"]
    if question.key == "cool_cfm" and "cfm" in found.values and _HEATS_ALIKE.search(line):
        said.append(Volunteered(f"{ASIDE}heat_pump_cfm", {"cfm": found.values["cfm"]}, line))
    if question.key == "zoned" and (registers := smallest_zone(line)) is not None:
        said.append(Volunteered(f"{ASIDE}zone_registers", {"count": registers}, line))
    if question.field == "equipment":
        if denies_strips(line):
            said.append(Volunteered(f"{ASIDE}strip_cfm", {NONE: True}, line))
        elif kilowatts is not None:
            said.append(Volunteered(f"{ASIDE}strip_cfm", {"kw": kilowatts}, line))
        flows = _flows(found, line)
        if flows:
            others = [other for other in others if other.field != "airflow"] + flows
        if motor_aside(line)[1]:
            said.append(Volunteered(f"{ASIDE}blower_kind", {"choice": "ecm_variable"}, line))
    return replace(found, others=(*others, *said)) if said or others else found


def _grows(found: Accepted, line: str) -> bool:
    """Whether more tons go in than the present ones that a line tells."""
    tons, new = found.values.get("tons"), new_tons(line)
    return new is not None and isinstance(tons, int | float) and new > tons


def _first(rows: _Rows, line: str) -> str:
    return next((word for word, pattern in rows if pattern.search(line)), "")


_FLOW_OF: Final[Mapping[str, str]] = {
    "high": "cool_cfm",
    "low": "low_cfm",
    "heating": "heat_pump_cfm",
}


def _flows(found: Accepted, line: str) -> list[Volunteered]:
    """Airflows by what they are for; a furnace's heating needs no figure of its own here."""
    burns = found.values.get("kind") in ("furnace", "air_handler")
    return [
        Volunteered(f"{ASIDE}{_FLOW_OF[stage]}", {"cfm": flow}, line)
        for stage, flow in flows_told(line).items()
        if not (burns and stage == "heating")
    ]
