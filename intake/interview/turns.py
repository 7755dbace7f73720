"""What is said in a conversation and what is asked: data that every mouth shows in its own way."""

from dataclasses import dataclass
from enum import StrEnum

__all__ = ["Ask", "Manner", "Say", "Speaker", "Voice"]


class Voice(StrEnum):
    """Whom the tool talks with, and so what it may ask."""

    TECHNICIAN = "technician"
    DISPATCHER = "dispatcher"


class Speaker(StrEnum):
    """Who said a line."""

    PERSON = "person"
    TOOL = "tool"


class Manner(StrEnum):
    """What kind of line it is; a mouth may style it, the words carry the meaning alone."""

    TYPED = "typed"  # what the person typed
    ECHO = "echo"  # what was read, in normal form
    QUESTION = "question"
    HELP = "help"  # an answer to why, where, how, what's typical, help
    ASK_BACK = "ask_back"  # what was typed can't be taken yet
    INSIGHT = "insight"  # a true sentence with a number about this house
    CAUTION = "caution"
    ALARM = "alarm"  # a red flag's standard response
    VERDICT = "verdict"
    BOOKING = "booking"
    NOTE = "note"


@dataclass(frozen=True, slots=True)
class Say:
    """One line of the exchange."""

    speaker: Speaker
    manner: Manner
    text: str


@dataclass(frozen=True, slots=True)
class Ask:
    """The open question.

    Attributes:
        key: The question's own key in the question bank ("supply_trunks").
        kind: The field `reading` reads the answer with ("duct", "yes_no", ...).
        unit: Unit that is assumed if none is typed; empty if none.
        choices: Words that would be understood; empty for free answers.
        text: The question as asked.
        number: How many questions have been put, this one included.
    """

    key: str
    kind: str
    unit: str
    choices: tuple[str, ...]
    text: str
    number: int
