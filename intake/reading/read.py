"""One typed answer to one reading."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from typing import Final

from intake.reading.aside import place_of, split_off, volunteered
from intake.reading.asks import WANTED, wrong_quantity
from intake.reading.choice_standing import CHOSEN, of_now
from intake.reading.clean import LONGEST_ANSWER, LONGEST_PASTE, normalise, plain_line
from intake.reading.commands import as_command
from intake.reading.corrections import correction, taken_back
from intake.reading.excused import led
from intake.reading.fields import NUMERIC, read_field
from intake.reading.figures import figures_in
from intake.reading.last_questions import asked_instead
from intake.reading.manner import cant_say, excuse, sureness
from intake.reading.not_requests import shrugged, without_exclaimed_why
from intake.reading.plain_talk import is_plain
from intake.reading.restated import owns_up, sets_anew
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
from intake.reading.scan import scanned
from intake.reading.second_thought import earlier_part, second_thought
from intake.reading.standing import standing
from intake.reading.tables import read_blower_table, read_cooling_rows
from intake.reading.unit_doubt import unit_doubt
from intake.reading.yes_no_request import is_answer

__all__ = ["FIELDS", "read"]

FIELDS: Final = tuple(WANTED)
"""Every kind of answer that can be read."""

_PASTED: Final = frozenset(("blower_table", "cooling_rows"))


def _says_no_value(asked: AskBack, field: str, line: str) -> bool:
    """Whether what would be asked about is no part of an answer ("manometer won't zero")."""
    numbers = scanned(line, field).numbers
    if asked.kind is AskKind.MISSING_PART:
        return not asked.readings and not numbers
    return asked.kind is AskKind.IMPLAUSIBLE and all(number.value == 0 for number in numbers)


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
        return read_field(other, part, question, choices, *ends)

    if command is not None and not (
        is_answer(command, field, line, question)
        or (command.name is CommandName.UNDO and _goes_on(field, line, question, reads))
    ):
        return command
    changed = correction(line, field, previous, typed, _plainly(field, choices))
    if previous is None and field == "yes_no" and not owns_up(line):
        changed = None
    if changed is not None and not (
        _answers_here(changed, field, previous, choices)
        or _takes_back_itself(field, line, previous, reads)
    ):
        return changed
    excused = None if is_plain(line) else led(line, field)
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

    spoken = field in NUMERIC and not is_plain(line)
    if spoken and _ACKNOWLEDGED.fullmatch(line):
        return Rejected(f"I still need {wanted}.")
    if spoken and _OCCUPIED.search(line):
        line = _OCCUPIED.sub(r"\1", line)
    if spoken and _AT_AN_HOUR.search(line):
        return Rejected(f"That is a time. I need {wanted}.")
    if (spoken and _TO_CALL.search(line)) or (field in NUMERIC and _TELEPHONE.search(line)):
        return Rejected(f"That looks like a number to call or to enter with. I need {wanted}.")
    if field in NUMERIC and " or " in line and (doubt := unit_doubt(line)) is not None:
        return doubt
    retaken = second_thought(field, line, reads) if field in NUMERIC else None
    if retaken is not None:
        return _finished(field, line, retaken)
    for stands in of_now(field, line) if field in CHOSEN else ():
        now = standing(field, stands, question, reads(field, stands), reads)
        if isinstance(now, Accepted):
            return _finished(field, line, now)
    found = reads(field, line)
    if not isinstance(found, Accepted) and field in NUMERIC:
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
    r"|\b(?:call|ring|get) (?:me |you |us |him |her )?back (?:at|in|after|by|a?round|about)\b"
)
"""When somebody is in, or is to be called, and nothing else."""
_OCCUPIED: Final = re.compile(
    r"\b(work|school|home|gone|busy|asleep)"
    r" (?:at|till?|until|by|after|before) (?:about )?(?:[0-9]{1,2}(?::[0-9]{2})?|one|two|three"
    r"|four|five|six|seven|eight|nine|ten|eleven|noon)\b(?: ?(?:[ap]\.?m\b|minutes?|mins?"
    r"|o'?clock))?"
)
"""Until when somebody is away, or when to call."""


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
    return field in NUMERIC and isinstance(second_thought(field, line, reads), Accepted)


def _takes_back_itself(
    field: str, line: str, previous: Previous | None, reads: Callable[[str, str], Reading | None]
) -> bool:
    """Whether "16x8, no 14x8" takes back its own first value, not one of the last answer."""
    earlier = earlier_part(line) if field in NUMERIC else ""
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
    found = read_field(field, text, question, choices, None, None)
    return found.values if isinstance(found, Accepted) else None


def _finished(field: str, line: str, found: Reading | None) -> Reading:
    if isinstance(found, Accepted):
        place, others = found.place, found.others
        if field in NUMERIC:
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


def _is_table(text: str) -> bool:
    """Whether a text holds at least two numbers in digits."""
    return len(re.findall(r"[0-9][0-9.,]*", text[:LONGEST_PASTE])) >= 2


def _read_paste(field: str, text: str) -> Reading:
    return read_blower_table(text) if field == "blower_table" else read_cooling_rows(text)
