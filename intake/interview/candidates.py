"""Loose words for other equipment, read as candidates: "2.5 tons", "3 ton, 1100 cfm".

Nothing is asked and nothing kept here; what can't be read comes back as one sentence.
"""

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final

from engine.job.job import Job
from engine.job.modes import Mode
from intake.interview.own_reading import read_own
from intake.reading.clean import normalise
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, Rejected, Values

if TYPE_CHECKING:  # it loads the engine's numbers
    from engine.what_if import Candidate

__all__ = ["MOST_CANDIDATES", "NOT_TRIED", "Tried", "read_candidate", "read_candidates"]

MOST_CANDIDATES: Final = 3
NOT_TRIED: Final = (
    'I can try other equipment on these ducts: "2.5 tons", "1000 cfm", "a 4 inch filter",'
    ' "coil .2 at 1000", "60k furnace".'
)
_SOLD_TONS: Final = (1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0)
"""As in `engine.what_if`, which isn't loaded for a word."""


@dataclass(frozen=True, slots=True)
class Tried:
    """A candidate and how it is called.

    Attributes:
        words: In normal form ("2.5 tons, 1,000 CFM").
        candidate: The edits.
    """

    words: str
    candidate: "Candidate"


_SPLIT: Final = re.compile(
    r"[,;]? *(?<!\w)(?:vs\.?|versus|or|against|compared (?:to|with))(?!\w) *|; *"
)
_BARE: Final = re.compile(r"(?:an? )?[\d.,/ ]+")
_UNIT: Final = re.compile(r"[\d ](tons?|cfm)\b")


def read_candidates(text: str, job: Job) -> tuple[Tried, ...] | str:
    """The candidates of a line, side by side.

    Args:
        text: As typed, without the words that ask.
        job: What is known.

    Returns:
        One to three candidates, or the sentence that says what can't be read.
    """
    line = normalise(text).strip(" ?.!")
    pieces = [piece.strip(" ,?") for piece in _SPLIT.split(line) if piece.strip(" ,?")]
    if not pieces:
        return NOT_TRIED
    if len(pieces) > MOST_CANDIDATES:
        return f"That is {len(pieces)} at once; try at most {MOST_CANDIDATES} side by side."
    found: list[Tried] = []
    for piece in pieces:
        one = read_candidate(_with_unit(piece, line), job)
        if isinstance(one, str):
            return one
        found.append(one)
    return tuple(found)


def _with_unit(piece: str, line: str) -> str:
    """A bare number takes the unit that stands elsewhere in the line ("2.5 or 3 tons")."""
    unit = _UNIT.search(line)
    return f"{piece} {unit[1]}" if unit and _BARE.fullmatch(piece) else piece


_PARTS: Final = re.compile(
    r",(?!\d{3}\b)|\b(?:with(?! a drop)|plus)\b|&|\band\b(?! (?:an? |one )?half)"
)
_AT: Final = re.compile(r"\bat\b|@")
_FILLER: Final = re.compile(
    r"(?:(?:i|we|you|it|it'?s|they|he|she|that|this|there|be|been|is|are|was|were|had|have|has"
    r"|puts?|used?|using|go|goes|went|going|gone|do|did|run|ran|running|install(?:ed)?|choose"
    r"|chose|take|took|get|got|just|only|in|on|to|for|of|an?|the|our|my|instead|then|now|new|other"
    r"|another|units?|systems?|one|equipment|down|up|drop(?:ped)?|went|want(?:ed)?|they'?d|i'?d"
    r"|we'?d|would|could|should|want|picks?|tried|try|buy|bought|same|ac|a/c|condenser|rather"
    r"|make|made|set|cooling|please) ?)*"
)
_OTHER_KIND: Final = (
    "Another kind of equipment changes more than can be tried here; correct what goes in instead."
)


_Edits = tuple[dict[str, Any], list[str]]
"""Fields of a candidate, and the words for them."""


def read_candidate(text: str, job: Job) -> Tried | str:
    """One candidate, of one or more parts.

    Args:
        text: As typed, without the words that ask.
        job: What is known; a size "smaller" and CFM "a ton" are reckoned from it.

    Returns:
        The candidate, or the sentence that says what can't be read.
    """
    edits: dict[str, Any] = {}
    words: list[str] = []
    for part in _parts(normalise(text).strip(" ?.!")):
        found = _part(part, job)
        if isinstance(found, str):
            return found
        airflow = {**edits.get("airflow_cfm", {}), **found[0].get("airflow_cfm", {})}
        edits.update(found[0])
        if airflow:
            edits["airflow_cfm"] = airflow
        words += found[1]
    if not words:
        return NOT_TRIED
    per_ton = edits.pop("per_ton_cfm", None)
    if per_ton is not None:
        size = edits.get("tons") or job.number("equipment.cooling_tons")
        if size is None:
            return f"{per_ton:,.0f} CFM per ton of how many tons? Name the size too."
        edits["airflow_cfm"] = {Mode.COOLING_HIGH: per_ton * size}
    if "airflow_cfm" in edits:
        edits["airflow_cfm"] = _with_the_same(edits["airflow_cfm"], job)
    # Imported here: it loads numpy and the physics, which a talk needs once it tries something.
    from engine.what_if import Candidate

    return Tried(_called(words), Candidate(**edits))


def _called(words: Sequence[str]) -> str:
    """The words of all parts; a furnace that was named already isn't named again."""
    named = any(one.endswith(_FURNACE) for one in words)
    told = (one.removeprefix(f"a {_FURNACE} ") if named else one for one in words)
    return ", ".join(told)


def _with_the_same(airflow: Mapping[Mode, float], job: Job) -> Mapping[Mode, float]:
    """Heat pump heating goes along where it was said to need the same air as cooling."""
    cooling, heating = (
        job.number(f"target.{mode}_cfm") for mode in (Mode.COOLING_HIGH, Mode.HEAT_PUMP_HEATING)
    )
    if Mode.COOLING_HIGH in airflow and heating is not None and heating == cooling:
        return {Mode.HEAT_PUMP_HEATING: airflow[Mode.COOLING_HIGH], **airflow}
    return airflow


def _parts(line: str) -> list[str]:
    """The parts of a candidate; a coil keeps the airflow it is listed at."""
    parts: list[str] = []
    for piece in _PARTS.split(line):
        parts += [piece] if re.search(r"\bcoil\b", piece) else _AT.split(piece)
    return [part.strip(" ,") for part in parts if part.strip(" ,")]


def _part(part: str, job: Job) -> _Edits | str:
    """What a part edits and its words, or why it can't be read."""
    if _FILLER.fullmatch(part):
        return {}, []
    for wanted, reader in _READERS:
        if wanted.search(part):
            return reader(part, job)
    return _equipment(part, job)


def _not_tried(part: str) -> str:
    return f"I can't try “{part}”. {NOT_TRIED}"


def _numbers(field: str, part: str, names: Sequence[str]) -> dict[str, float] | str:
    """Figures that a reader takes, as far as they are there; or its own sentence."""
    found = read(field, part)
    if isinstance(found, Accepted):
        return _figures(found.values, names) or _not_tried(part)
    return found.why if isinstance(found, AskBack | Rejected) else _not_tried(part)


def _figures(values: Values, names: Sequence[str]) -> dict[str, float]:
    """Those of a reading's values that are single figures."""
    found = ((name, values.get(name)) for name in names)
    return {name: float(v) for name, v in found if isinstance(v, int | float)}


_LISTED: Final = re.compile(r" at (?=\d[\d,]{2,}\b)|@")


def _coil(part: str, job: Job) -> _Edits | str:
    figure, *at = _LISTED.split(part, maxsplit=1)
    drop = _numbers("static_pressure", figure, ("inwc",))
    if isinstance(drop, str):
        return 'What is the drop of that coil, and at what CFM? Like "coil .2 at 1000".'
    edits: dict[str, Any] = {"coil_drop_inwc": drop["inwc"]}
    told = f"a coil of {drop['inwc']:.2f} in. w.c."
    if at:
        listed = _numbers("airflow", at[0], ("cfm",))
        if isinstance(listed, str):
            return listed
        edits["coil_drop_at_cfm"] = listed["cfm"]
        told = f"{told} at {listed['cfm']:,.0f} CFM"
    return edits, [told]


_SIDES: Final = ("width_in", "height_in", "depth_in")


def _filter(part: str, job: Job) -> _Edits | str:
    sizes = _numbers("filter", part, _SIDES)
    if isinstance(sizes, str):
        thick = read_own("thickness", _COUNTED.sub(_digit, part), ())
        found = _figures(thick.values, ("in",)) if isinstance(thick, Accepted) else {}
        if not found:
            return 'Which filter: its size or its thickness? Like "20x25x4" or "4 inch filter".'
        sizes = {"depth_in": found["in"]}
    told = " x ".join(f"{value:g}" for value in sizes.values())
    return {f"filter_{name}": value for name, value in sizes.items()}, [f"a {told} in. filter"]


_ONE_TO_SIX: Final = {"one": "1", "two": "2", "three": "3", "four": "4", "five": "5", "six": "6"}
_COUNTED: Final = re.compile(rf"\b({'|'.join(_ONE_TO_SIX)})\b")


def _digit(word: re.Match[str]) -> str:
    return _ONE_TO_SIX[word[1]]


def _rise(part: str, job: Job) -> _Edits | str:
    found = _numbers("rise_range", part, ("rise_low_degf", "rise_high_degf"))
    if isinstance(found, str):
        return found
    if len(found) < 2:
        return 'Both ends of the rise, please. Like "rise 35 to 65".'
    return dict(found), [f"a rise of {found['rise_low_degf']:g} to {found['rise_high_degf']:g} F"]


_PER_TON: Final = re.compile(r"(?<![\d.])(\d{3})(?![\d.])")


def _per_ton(part: str, job: Job) -> _Edits | str:
    figure = _PER_TON.search(part)
    if figure is None:
        return _not_tried(part)
    return {"per_ton_cfm": float(figure[1])}, [f"{figure[1]} CFM per ton"]


_MODES: Final = (
    (re.compile(r"\blow(?:[- ](?:stage|speed))?\b(?!.*\bheat)"), Mode.COOLING_LOW, "low stage"),
    (re.compile(r"\bheat"), Mode.HEATING_HIGH, "heating"),
)


def _airflow(part: str, job: Job) -> _Edits | str:
    found = _numbers("airflow", part, ("cfm",))
    if isinstance(found, str):
        return found
    mode, name = Mode.COOLING_HIGH, ""
    for words, its, called in _MODES:
        if words.search(part):
            mode, name = its, f" in {called}"
            break
    if mode is Mode.HEATING_HIGH and job.word("equipment.kind") == "heat_pump":
        mode = Mode.HEAT_PUMP_HEATING
    return {"airflow_cfm": {mode: found["cfm"]}}, [f"{found['cfm']:,.0f} CFM{name}"]


_STEP: Final = re.compile(
    r"(?:\bhalf (?:a )?ton |\b(?:one |the next |next |a )?size )?"
    r"\b(?P<way>smaller|less|down|lower|bigger|larger|more|up)\b(?: size\b)?"
)
_LESS: Final = ("smaller", "less", "down", "lower")


def _step(part: str, job: Job) -> _Edits | str:
    match, now = _STEP.search(part), job.number("equipment.cooling_tons")
    if match is None or not _FILLER.fullmatch(" ".join(_STEP.sub("", part).split())):
        return _not_tried(part)
    if now is None:
        return "Smaller or larger than what? Name the size, in tons."
    less = match["way"] in _LESS
    sizes = [size for size in _SOLD_TONS if (size < now if less else size > now)]
    if not sizes:
        return f"No {'smaller' if less else 'larger'} size than {now:g} tons is sold for a house."
    size = max(sizes) if less else min(sizes)
    return {"tons": size}, [_tons_words(size)]


def _tons_words(tons: float) -> str:
    return f"{tons:g} ton{'' if tons == 1.0 else 's'}"


def _equipment(part: str, job: Job) -> _Edits | str:
    """Tons, stages, burner input and efficiency, and an airflow among them."""
    found = read_own("equipment", part, ())
    if _BARE.fullmatch(part) and not (isinstance(found, Accepted) and "tons" in found.values):
        return f"{part} of what? Say CFM, tons, or inches of filter."
    if not isinstance(found, Accepted):
        return found.why if isinstance(found, AskBack | Rejected) else _not_tried(part)
    kind, asked = job.word("equipment.kind"), found.values.get("kind")
    if asked is not None and kind is not None and not _fits(str(asked), kind):
        return _OTHER_KIND
    edits: dict[str, Any] = {**_figures(found.values, ("tons",))}
    told = [_tons_words(edits["tons"])] if edits else []
    stages = found.values.get("stages")
    if stages is not None:
        edits["facts"] = {"equipment.stages": str(stages)}
        told.append({"single": "single stage", "two": "two stages"}.get(str(stages), str(stages)))
    for other in found.others:
        more = _airflow(part, job) if other.field == "airflow" else _heat(other.values, kind)
        if isinstance(more, str):
            return more
        edits.update(more[0])
        told += more[1]
    return (edits, told) if told else _not_tried(part)


def _fits(asked: str, kind: str) -> bool:
    return asked == kind or (asked in ("furnace", "heat_pump") and kind == "dual_fuel")


_FURNACE: Final = "furnace"
_WITH_BURNER: Final = (None, "furnace", "dual_fuel", "packaged")


def _heat(values: Values, kind: str | None) -> _Edits | str:
    if kind not in _WITH_BURNER:
        return "There is no burner in what goes in, so another furnace can't be tried."
    found = _figures(values, ("input_btuh", "efficiency"))
    edits: dict[str, Any] = {}
    told = []
    if "input_btuh" in found:
        edits["heating_input_btuh"] = found["input_btuh"]
        told.append(f"a {found['input_btuh']:,.0f} Btu/h {_FURNACE}")
    if "efficiency" in found:
        edits["heating_efficiency_fraction"] = found["efficiency"]
        told.append(f"a {_FURNACE} {100.0 * found['efficiency']:.0f}% efficient")
    return edits, told


_READERS: Final[tuple[tuple[re.Pattern[str], Callable[[str, Job], _Edits | str]], ...]] = (
    (re.compile(r"\bcoil\b"), _coil),
    (re.compile(r"\bfilters?\b|\d ?x ?\d+(?:\.\d+)? ?x ?\d"), _filter),
    (re.compile(r"\brise\b"), _rise),
    (re.compile(rf"^(?!.*\d).*(?:{_STEP.pattern})"), _step),
    (re.compile(r"\b(?:per|an?|each) ?ton\b|/ ?ton\b"), _per_ton),
    (re.compile(r"^(?!.*\bton).*\b(?:cfm|air ?flow)\b"), _airflow),
)
"""What is said of a part by its words; the first that is found reads it."""
