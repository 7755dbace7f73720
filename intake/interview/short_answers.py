"""Short answers to what newer technicians ask in the middle of an interview. One table.

Each answer is one or two sentences; figures are computed with the project's own relations or are
common practice, as said in the row's own words.
"""

import re
from dataclasses import dataclass
from typing import Final

from intake.interview.own_words import whole_words

__all__ = ["SHORT_ANSWERS", "ShortAnswer", "short_answer"]


@dataclass(frozen=True, slots=True)
class ShortAnswer:
    """One question that people ask, by its telling words, and the answer.

    Attributes:
        about: All of these must be in the question.
        words: The answer.
    """

    about: tuple[re.Pattern[str], ...]
    words: str


def _row(*about: str, words: str) -> ShortAnswer:
    return ShortAnswer(tuple(whole_words(one) for one in about), words)


_MEANS: Final = r"what'?s|what is|what are|whats|what do you mean(?: by)?|meaning of"
_STATIC: Final = r"static(?: pressure)?|tesp|esp"

SHORT_ANSWERS: Final[tuple[ShortAnswer, ...]] = (
    _row(
        r"effective length|tel",
        words="Straight feet of the worst path plus what each fitting costs in feet, supply and"
        " return together: 60 ft of duct can be 350 ft effective.",
    ),
    _row(
        r"friction rate",
        words="What is left for the ducts x 100 / total effective length. 0.14 in. w.c. over"
        " 380 ft is 0.037 per 100 ft; 0.1 is a habit, not a law.",
    ),
    _row(
        r"external|tesp|esp",
        words="The push on the supply side plus the pull on the return side, across everything"
        " outside the tested box.",
    ),
    _row(
        r"add|sum|sign|signs|minus|negative",
        rf"{_STATIC}|readings?|numbers?|pressures?|return",
        words="Drop the signs and add the pull and the push: 0.30 return and 0.40 supply make"
        " 0.70.",
    ),
    _row(
        r"high",
        _STATIC,
        r"air ?flow|low|cfm",
        words="Not always. A constant-airflow blower may hold its CFM at 0.9 and only roar; a"
        " standard motor is far down its curve there. Static plus blower table gives airflow.",
    ),
    _row(
        r"filter",
        r"in|out|with|without",
        r"test|measure|reading|leave|take",
        words="Filter in: a clean one for the verdict, the dirty one as found for the story."
        " Without one the reading flatters the ducts.",
    ),
    _row(
        r"merv|high[- ]efficiency filter|pleated",
        words="Size and depth matter more than the number: a bigger face or a deeper filter fixes"
        " most of it.",
    ),
    _row(
        r"0?\.5\d?|half an inch|plate|rated|rating",
        r"fail\w*|over|wall|bad|limit",
        words="The rating is a test point, not a wall. What counts is what the blower table gives"
        " at the pressure you read, the rise, the noise, and which part makes the pressure.",
    ),
    _row(
        r"heat|heating",
        r"cool|cooling",
        r"which|mode|or",
        words="Whichever moves more air: usually cooling with a wet coil, unless a heat pump heats"
        " at more.",
    ),
    _row(
        r"bigger blower|larger blower|stronger blower",
        words="Twice the air asks four times the pressure and about eight times the fan power from"
        " the same ducts. Mend the path.",
    ),
    _row(
        r"seal|sealing|mastic",
        words="Sealing usually raises static a little, because leaks were relief valves. It brings"
        " more air to the rooms; check airflow and return size after.",
    ),
    _row(
        r"clos\w+|shut\w*",
        r"vents?|registers?|rooms?",
        words="Closing vents raises pressure and leakage and seldom cures a room. Open everything,"
        " then look for the restriction.",
    ),
    _row(
        r"350|400|450|per ton",
        words="Where summers are humid nearer 350 CFM a ton, where dry or for heat pump efficiency"
        " nearer 400 to 450. Below about 300 expect a cold coil and poor capacity.",
    ),
    _row(
        r"two[- ]stage|2[- ]stage|staged",
        r"smaller|small",
        words="No: the ducts must pass the high stage, unless the high stage is locked out on"
        " purpose and the load is still met.",
    ),
    _row(
        r"jacket|core",
        r"flex|which|size|measure",
        words="The inner core. Over the jacket a 6 in. core reads 8.5 to 11 in.",
    ),
    _row(
        r"flex",
        r"good|bad|metal|worse|ok",
        words="Pulled tight and short, nearly as good as metal; left loose, several times the"
        " loss. Cut the extra, support it, bend it gently.",
    ),
    _row(
        r"panned|joists?",
        words="They carry air and they leak. Never from a garage or furnace room, never beside a"
        " flue; take them as duct with leakage.",
    ),
    _row(
        r"rise",
        r"too high|high|over",
        words="Filter, registers, coil, blower setting, return, in that order; also check the gas"
        " input. Never more gas.",
    ),
    _row(
        r"rise",
        r"too low|low|under",
        words="Too much air or too little gas: an 80 percent furnace may condense and rooms feel"
        " drafty. Lower the blower setting.",
    ),
    _row(
        r"always",
        r"return",
        words="One or two grilles, one drop and one filter carry all the air; the supply splits"
        " ten ways.",
    ),
    _row(
        r"12[- ]?(?:in\w*)?[- ]?round|equivalent",
        words="Equal area is not equal friction: 20x8 acts like 13.5 in. round.",
    ),
    _row(
        r"where",
        r"measure|ports?|probe|drill",
        rf"{_STATIC}|gauge|furnace|air handler|pressure",
        words="Furnace: after the filter on the return side, before the coil on the supply side."
        " Air handler: before and after the whole cabinet, its coil was in the factory test.",
    ),
    _row(
        _MEANS,
        r"return(?: (?:vent|opening|grille|air))?s?",
        words="A return is an opening that pulls air in: a tissue sticks to it. One that blows is a"
        " supply.",
    ),
    _row(
        _MEANS,
        r"(?:return )?drops?",
        words="The return drop is the duct that comes down or across to the unit with all the"
        " return air in it.",
    ),
    _row(
        _MEANS,
        r"plenums?",
        words="The box right on the unit, before the air goes off into trunks.",
    ),
    _row(
        _MEANS,
        r"(?:supply )?trunks?",
        words="The big duct that leaves the plenum and feeds the smaller ones to the rooms.",
    ),
    _row(
        _MEANS,
        r"take ?offs?|boots?|branch(?:es)?|run ?outs?",
        words="A branch is the small duct to one room: its takeoff is where it leaves the trunk,"
        " its boot the piece under the register.",
    ),
    _row(
        _MEANS,
        r"cfm",
        words="Cubic feet of air a minute.",
    ),
    _row(
        _STATIC,
        words="The push or pull that air gives the duct's wall, read sideways to the stream. It"
        " tells how hard the blower works, not how much air moves.",
    ),
)
"""From the particular to the general; the first row whose words are all there answers."""

_ASKS: Final = re.compile(
    r"^(?:so |and |but |wait,? |hey,? |ok,? )*"
    r"(?:what|why|how|where|which|is|are|do|does|should|can|will|would)\b|\?\s*$"
)
_FIGURES: Final = re.compile(r"\d+ ?(?:x|by) ?\d+")


def short_answer(line: str) -> str | None:
    """The answer to a question that a line asks; None if it asks nothing that is in the table.

    Args:
        line: Normalised text.

    >>> short_answer("what is static pressure anyway?")[:8]
    'The push'
    >>> short_answer("static .5") is None
    True
    """
    if not _ASKS.search(line) or _FIGURES.search(line):
        return None
    for row in SHORT_ANSWERS:
        if all(pattern.search(line) for pattern in row.about):
            return row.words
    return None
