"""One typed answer to one reading."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from typing import Final

from intake.reading import choices as choice_readers
from intake.reading.airflow import read_airflow
from intake.reading.aside import place_of, split_off, volunteered
from intake.reading.asks import WANTED, wrong_quantity
from intake.reading.bounds import BELIEVABLE
from intake.reading.choice_numbers import numbered
from intake.reading.choice_standing import CHOSEN, of_now
from intake.reading.clean import LONGEST_ANSWER, LONGEST_PASTE, normalise, plain_line
from intake.reading.commands import as_command
from intake.reading.corrections import correction, taken_back
from intake.reading.counts import read_count, read_percent, read_year
from intake.reading.duct import read_duct
from intake.reading.echo import echo
from intake.reading.excused import led
from intake.reading.figures import figures_in
from intake.reading.filters import read_filter
from intake.reading.fittings import read_fittings
from intake.reading.grilles import read_grille
from intake.reading.heat import read_capacity, read_efficiency
from intake.reading.last_questions import asked_instead
from intake.reading.length import read_area, read_elevation, read_length
from intake.reading.manner import cant_say, excuse, sureness
from intake.reading.not_requests import shrugged, without_exclaimed_why
from intake.reading.numbers import something_else
from intake.reading.owned import (
    without_clock,
    without_joined,
    without_refrigerant,
    without_size,
)
from intake.reading.phrasing import built, dated, elsewhere
from intake.reading.plain_talk import is_plain
from intake.reading.restated import sets_anew
from intake.reading.result import (
    Accepted,
    AskBack,
    AskKind,
    Command,
    CommandName,
    Previous,
    Reading,
    Rejected,
    Sure,
    Unknown,
    Values,
)
from intake.reading.scan import Scan, scan, scanned
from intake.reading.second_thought import earlier_part, second_thought
from intake.reading.standing import standing
from intake.reading.static import read_static
from intake.reading.tables import read_blower_table, read_cooling_rows
from intake.reading.temperature import read_rise_range, read_temperature
from intake.reading.token_passes import is_model
from intake.reading.unit_doubt import unit_doubt
from intake.reading.words import words
from intake.reading.yes_no import read_yes_no
from intake.reading.yes_no_request import is_answer

__all__ = ["FIELDS", "read"]

FIELDS: Final = tuple(WANTED)
"""Every kind of answer that can be read."""

_PASTED: Final = frozenset(("blower_table", "cooling_rows"))

_BOUNDS: Final = {
    "airflow": "cfm",
    "static_pressure": "inwc",
    "length": "ft",
    "elevation": "elevation_ft",
    "temperature": "degF",
    "capacity": "btuh",
    "efficiency": "fraction",
    "count": "count",
    "year": "year",
    "area": "area_ft2",
    "percent": "percent",
}


def _says_no_value(asked: AskBack, field: str, line: str) -> bool:
    """Whether what would be asked about is no part of an answer ("manometer won't zero")."""
    numbers = scanned(line, field).numbers
    if asked.kind is AskKind.MISSING_PART:
        return not asked.readings and not numbers
    return asked.kind is AskKind.IMPLAUSIBLE and all(number.value == 0 for number in numbers)


_MOST_NUMBERS: Final = 16
_MOST_LISTED: Final = 40
"""Numbers in one answer, and in a list of openings; more are asked for one at a time."""

_ONE_NUMBER: Final = words(
    """
    airflow static_pressure length elevation temperature capacity efficiency area rise_range
    """
)
"""Fields in which a number followed by an unknown thing ("two dogs") is no value."""

_OWN: Final[dict[str, frozenset[str]]] = {
    "duct": frozenset(("length",)),
    "airflow": frozenset(("airflow", "airflow_per_ton")),
    "static_pressure": frozenset(("pressure",)),
    "length": frozenset(("length",)),
    "temperature": frozenset(("temperature",)),
    "capacity": frozenset(("heat",)),
    "efficiency": frozenset(("percent", "afue")),
    "filter": frozenset(("length", "merv")),
    "grille": frozenset(("length",)),
    "elevation": frozenset(("length",)),
    "area": frozenset(("area",)),
    "percent": frozenset(("percent",)),
    "rise_range": frozenset(("temperature",)),
}


def read(
    field: str,
    text: str,
    *,
    question: str = "",
    choices: Sequence[str] = (),
    asked_field: str | None = None,
    previous: Previous | None = None,
    low: float | None = None,
    high: float | None = None,
) -> Reading:
    """Read what was typed in answer to a question of a kind.

    Args:
        field: The kind of answer wanted, one of `FIELDS`.
        text: As typed; may be anything.
        question: The words asked; a yes or no is read against them.
        choices: The allowed values of a choice, each "key" or "key=word|word".
        asked_field: The kind of the open question where `field` is "command".
        previous: The last stored answer, against which a correction is read.
        low, high: Believable bounds of this fact in the field's unit, where known better.

    Returns:
        Exactly one reading; no text raises.

    Raises:
        KeyError: `field` is none of `FIELDS`.

    >>> read("static_pressure", ".37").values
    {'inwc': 0.37}
    """
    wanted = WANTED[field]
    longest = LONGEST_PASTE if field in _PASTED else LONGEST_ANSWER
    if len(text) > longest:
        return Rejected(
            f"That is {len(text):,} characters; an answer has at most {longest:,}. I need {wanted}."
        )
    if field in _PASTED and _is_table(text):
        return _read_paste(field, text)
    typed = plain_line(text)
    line = normalise(typed)
    if not line:
        return Rejected(f"Nothing was typed. I need {wanted}.")
    if "why" in line:
        line = without_exclaimed_why(line)
    command = as_command(line, field)
    if command is not None and (
        shrugged(line) or (command.name is CommandName.HELP and _NO_IDEA.search(line))
    ):
        return Unknown("You can't say.")
    if command is not None and previous is not None and sets_anew(line):
        command = None

    def reads(other: str, part: str) -> Reading | None:
        ends = (low, high) if other == field else (None, None)
        return _read_field(other, part, question, choices, *ends)

    if command is not None and not (
        is_answer(command, field, line, question)
        or (command.name is CommandName.UNDO and _goes_on(field, line, question, reads))
    ):
        return command
    changed = correction(line, field, previous, typed, _plainly(field, choices))
    if changed is not None and not (
        _answers_here(changed, field, previous, choices)
        or _takes_back_itself(field, line, previous, reads)
    ):
        return changed
    excused = led(line, field)
    if excused is not None and not (
        _reads(field, excused[1], choices, question) or _goes_on(field, line, question, reads)
    ):
        return excused[0]
    if field in _PASTED and not cant_say(line):
        return Rejected(f"I need {wanted}.")
    if field in _PASTED:
        return Unknown("You can't say.")
    if field == "command":
        if (asked := asked_instead(line, field)) is not None:
            return asked
        known = not (cant_say(line) or shrugged(line))
        return Rejected(f"I need {wanted}.") if known else Unknown("You can't say.")

    spoken = field in _NUMERIC and not is_plain(line)
    if spoken and _ACKNOWLEDGED.fullmatch(line):
        return Rejected(f"I still need {wanted}.")
    if spoken and _OCCUPIED.search(line):
        line = _OCCUPIED.sub(r"\1", line)
    if spoken and _AT_AN_HOUR.search(line):
        return Rejected(f"That is a time. I need {wanted}.")
    if (spoken and _TO_CALL.search(line)) or (field in _NUMERIC and _TELEPHONE.search(line)):
        return Rejected(f"That looks like a number to call or to enter with. I need {wanted}.")
    if field in _NUMERIC and " or " in line and (doubt := unit_doubt(line)) is not None:
        return doubt
    retaken = second_thought(field, line, reads) if field in _NUMERIC else None
    if retaken is not None:
        return _finished(field, line, retaken)
    for stands in of_now(field, line) if field in CHOSEN else ():
        now = standing(field, stands, question, reads(field, stands), reads)
        if isinstance(now, Accepted):
            return _finished(field, line, now)
    found = reads(field, line)
    if not isinstance(found, Accepted) and field in _NUMERIC:
        found = split_off(field, line, reads) or found
    result = _finished(field, line, standing(field, line, question, found, reads))
    if not isinstance(result, Rejected | AskBack):
        return result
    if (late := taken_back(line, field, previous, typed, _plainly(field, choices))) is not None:
        return late
    if isinstance(result, AskBack):
        return result
    if shrugged(line):
        return Unknown("You can't say.")
    return asked_instead(line, field) or result


_NO_IDEA: Final = re.compile(
    r"\b(?:what'?s|what is|what are|never heard of) (?:an? )?.{3,40}\b(?:no idea|no clue|idk|dunno"
    r"|beats me)\W*$"
)
_ACKNOWLEDGED: Final = re.compile(
    r"(?:(?:ok|okay|alright|all right|sure|k|yeah|cool)[,. ]+)+(?:cool|thanks|thank you|great|nice"
    r"|got it"
    r"|sounds good|perfect|will do|man|beans|then|sir|no problem)[.! ]*|thanks|thank you|thx|lol"
    r"|haha"
    r"|got it|sounds good|will do|you bet|no problem|my pleasure"
)
"""Words of politeness that answer nothing."""

_TO_CALL: Final = re.compile(
    r"\b(?:call(?! it)|phone|cell|text|dial|number is|reach me)\b.*\d{3}[- .]\d{4}"
    r"|\b(?:gate|door|lock ?box|garage|access|alarm) code\b"
)
_TELEPHONE: Final = re.compile(r"\d\d\d[-. )]+\d{3}[-. ]\d{4}")
"""A telephone number, or what is said with a shorter one."""

_AT_AN_HOUR: Final = re.compile(
    r"\b(?:be|get|gets|is|are|'s|'ll|i'm|we're) (?:back |home |here |there |in |off |out |open "
    r"|free |available |done )(?:after|before|till|until|by|around|at)"
    r" (?:about )?(?:[0-9]{1,2}|[a-z]{3,6})(?: ?[ap]\.?m\.?| o'?clock)?[.! ]*$"
    r"|\b(?:call|ring|get) (?:me |you |us |him |her )?back (?:at|in|after|by|around)\b"
)
"""When somebody is in, or is to be called, and nothing else."""
_OCCUPIED: Final = re.compile(
    r"\b(work|school|home|gone|busy|asleep)"
    r" (?:at|till?|until|by|after|before) (?:about )?(?:[0-9]{1,2}(?::[0-9]{2})?|one|two|three"
    r"|four|five|six|seven|eight|nine|ten|eleven|noon)\b(?: ?(?:[ap]\.?m\b|minutes?|mins?"
    r"|o'?clock))?"
)
"""Until when somebody is away, or when to call."""

_NUMERIC: Final = words(
    """
    duct airflow static_pressure length temperature capacity efficiency filter grille elevation
    count year area percent
    """
)
"""Fields whose answers are numbers, in which a second thought or another answer may follow."""


def _answers_here(
    changed: Command, field: str, previous: Previous | None, choices: Sequence[str]
) -> bool:
    """Whether a marked value ("sorry, 1200 cfm") fits the open question and not the last one."""
    value = changed.value_text
    if field == "command" or previous is None or value is None:
        return False
    if changed.fact_words is not None or changed.old_text is not None:
        return False
    if field == previous.field or _reads(previous.field, normalise(value), choices):
        return False
    return _reads(field, normalise(value), choices)


def _goes_on(
    field: str, line: str, question: str, reads: Callable[[str, str], Reading | None]
) -> bool:
    """Whether "psc, scratch that, constant torque" gives a better value itself."""
    if field in CHOSEN:
        later = (
            standing(field, part, question, reads(field, part), reads)
            for part in of_now(field, line)
        )
        return any(isinstance(now, Accepted) for now in later)
    return field in _NUMERIC and isinstance(second_thought(field, line, reads), Accepted)


def _takes_back_itself(
    field: str, line: str, previous: Previous | None, reads: Callable[[str, str], Reading | None]
) -> bool:
    """Whether "16x8, no 14x8" takes back its own first value, not one of the last answer."""
    earlier = earlier_part(line) if field in _NUMERIC else ""
    if not earlier or not isinstance(reads(field, earlier.strip(" ,.;-")), Accepted):
        return False
    told = {figure.value for figure in figures_in(normalise(previous.text))} if previous else set()
    if {figure.value for figure in figures_in(earlier)} <= told:
        return False
    return isinstance(second_thought(field, line, reads), Accepted)


def _reads(field: str, text: str, choices: Sequence[str], question: str = "") -> bool:
    """Whether a field reads a text as a plain answer."""
    return _taken(field, text, choices, question) is not None


def _plainly(field: str, choices: Sequence[str]) -> Callable[[str, str], Values | None]:
    """What any field reads in a text as a plain answer; the open one with its choices."""
    return lambda other, text: _taken(other, text, choices if other == field else ())


def _taken(field: str, text: str, choices: Sequence[str], question: str = "") -> Values | None:
    """What a field reads in a text as a plain answer, or None."""
    if field not in WANTED or field in _PASTED or field in ("command", "text"):
        return None
    found = _read_field(field, text, question, choices, None, None)
    return found.values if isinstance(found, Accepted) else None


def _finished(field: str, line: str, found: Reading | None) -> Reading:
    if isinstance(found, Accepted):
        place, others = found.place, found.others
        if field in _NUMERIC:
            said = scanned(line, field)
            place = place_of(said) if field in ("duct", "grille", "filter") else None
            others = others or volunteered(field, said, _OWN.get(field, frozenset()))
        sure = sureness(line)
        return Accepted(found.values, found.sure if sure is Sure.PLAIN else sure, place, others)
    if isinstance(found, AskBack) and cant_say(line) and _says_no_value(found, field, line):
        return Unknown("You can't say.")
    if found is not None:
        return found
    if cant_say(line):
        return Unknown("You can't say.")
    said = scanned(line, field)
    own = _OWN.get(field, frozenset())
    for number in said.numbers:
        if number.dimension and number.dimension not in own:
            return wrong_quantity(field, line, number.dimension)
    if not said.numbers and field not in ("yes_no", "command") and excuse(line):
        return Unknown("You can't say.")
    return Rejected(f"I can't read that as an answer. I need {WANTED[field]}.")


def _read_field(
    field: str,
    line: str,
    question: str,
    choices: Sequence[str],
    low: float | None,
    high: float | None,
) -> Reading | None:
    if field == "yes_no":
        return read_yes_no(line, question)
    if field in ("material", "blower_type", "coil_state", "choice") and choices:
        picked = numbered(line, choices)
        if picked is not None:
            return Accepted({"choice": picked})
    if field == "blower_type":
        return choice_readers.read_blower_type(line, choices)
    if field == "coil_state":
        return choice_readers.read_coil_state(line, choices)
    if field == "choice":
        return choice_readers.read_choice(line, choices)
    if field == "text":
        return None if cant_say(line) else Accepted({"text": line})
    if field == "fittings":
        return read_fittings(line)
    said = without_refrigerant(scan(line, field, normal=True))
    if ":" in line and field in _NUMERIC:
        said = without_clock(said)
    if len(said.numbers) > (_MOST_LISTED if field == "grille" else _MOST_NUMBERS):
        return AskBack(
            "That is a lot of numbers. One thing at a time, please.", (), AskKind.TWO_VALUES
        )
    found = _read_scan(field, said, question, choices, low, high)
    if not isinstance(found, Accepted) or field not in _NUMERIC:
        return found
    codes = [item.text.lstrip("?") for item in said.items if item.kind == "code"]
    codes = [code for code in codes if not is_model(code)]
    if codes:
        told = echo(field, found.values)
        return AskBack(
            f'I read {told}, but what is "{codes[0][:40]}"?', (found.values,), AskKind.TWO_READINGS
        )
    return found


def _read_scan(
    field: str,
    said: Scan,
    question: str,
    choices: Sequence[str],
    low: float | None,
    high: float | None,
) -> Reading | None:
    """Read a scanned text with the reader of its field."""
    if field == "length":
        said = without_size(said)
    if field in ("static_pressure", "airflow", "temperature"):
        said = without_joined(said)
    if field in _ONE_NUMBER and elsewhere(said, plate=field in ("capacity", "efficiency")):
        return None
    if field in _ONE_NUMBER and (decade := _decade(said)) is not None:
        ends: tuple[Values, ...] = (
            ({"degF_low": decade, "degF_high": decade + 9},) if field == "temperature" else ()
        )
        return AskBack(
            f"In the {decade:g}s: what is it, or between what and what?", ends, AskKind.TWO_READINGS
        )
    if field in _ONE_NUMBER:
        for number in said.numbers:
            year = number.whole and _YEARS[0] <= number.value <= _YEARS[1] and not number.unit
            year = year or (number.whole and not number.unit and built(said, number))
            if year and dated(said, number) and field not in ("capacity", "efficiency"):
                number.unit = "years"
            if something_else(said, number) and not (field == "capacity" and number.value >= 1000):
                number.unit = "things"
    if field == "material":
        return choice_readers.read_material(said, choices)
    if field == "duct":
        return read_duct(said)
    if field == "filter":
        return read_filter(said)
    if field == "grille":
        return read_grille(said)
    if field == "rise_range":
        return read_rise_range(said)
    bounds = BELIEVABLE[_BOUNDS[field]]
    low = bounds[0] if low is None else low
    high = bounds[1] if high is None else high
    if field == "capacity":
        found = read_capacity(said, low, high, question)
    elif field == "static_pressure":
        found = read_static(said, low, high, question)
    elif field == "temperature":
        found = read_temperature(said, low, high, question)
    else:
        reader: Callable[[Scan, float, float], Reading | None] = _BOUNDED_READERS[field]
        found = reader(said, low, high)
    if isinstance(found, Accepted) and _leaves_numbers(said):
        told = echo(field, found.values)
        return AskBack(f"I read {told}. Is that all?", (found.values,), AskKind.TWO_VALUES)
    return found


_YEARS: Final = (1850.0, 2035.0)


def _decade(said: Scan) -> float | None:
    """The tens that are told for a value ("the 70s", "low seventies", "40-something"), or None."""
    numbers = said.numbers
    if len(numbers) != 1 or numbers[0].value % 10 != 0:
        return None
    return numbers[0].value if numbers[0].plural or _SOMETHING.search(said.text) else None


_SOMETHING: Final = re.compile(
    r"(?:\b[2-9]0|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)"
    r"[ -](?:something|some|odd)\b"
)


_IN_ALL: Final = re.compile(
    r"\b(?:total\w*|altogether|in all|adds? up to|comes? to|came (?:out )?to|sum|across|combined"
    r"|so)\b|="
)


def _leaves_numbers(said: Scan) -> bool:
    """Whether a bare number was taken while another one counts something unknown."""
    numbers = said.numbers
    things = [number for number in numbers if number.unit == "things"]
    if not things:
        return False
    others = [number for number in numbers if number.unit != "things"]
    pointed = all(n.token is not None and n.token.decimals for n in others)
    if pointed and not any(n.token is not None and n.token.decimals for n in things):
        return False
    return not _IN_ALL.search(said.text) and all(not number.unit for number in others)


_BOUNDED_READERS: Final[dict[str, Callable[[Scan, float, float], Reading | None]]] = {
    "airflow": read_airflow,
    "length": read_length,
    "elevation": read_elevation,
    "efficiency": read_efficiency,
    "count": read_count,
    "year": read_year,
    "area": read_area,
    "percent": read_percent,
}


def _is_table(text: str) -> bool:
    """Whether a text holds at least two numbers in digits."""
    return len(re.findall(r"[0-9][0-9.,]*", text[:LONGEST_PASTE])) >= 2


def _read_paste(field: str, text: str) -> Reading:
    return read_blower_table(text) if field == "blower_table" else read_cooling_rows(text)
