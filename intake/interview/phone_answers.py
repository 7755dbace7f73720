"""Answers of a call that hang on the question put: one reader for each, before the usual ones."""

import re
from collections.abc import Callable, Mapping
from typing import Final

from intake.interview.phone_choices import location, noise, ways
from intake.interview.phone_counts import area, registers, rooms, year
from intake.interview.phone_reading import plain_change
from intake.interview.phone_sizes import filter_size, hole, main_duct, openings
from intake.interview.phone_tons import phone_tons
from intake.interview.phone_trouble import plain_trouble
from intake.interview.phone_yes_no import doors, hoses, not_noticed, people, photos, works
from intake.interview.question import Question
from intake.interview.safety_look import without_reporter
from intake.reading.clean import normalise
from intake.reading.result import Reading

__all__ = ["as_the_callers", "by_phone"]

_Reader = Callable[[str], Reading | str | None]
_READERS: Final[Mapping[str, _Reader]] = {
    "d_safety": without_reporter,
    "d_change": plain_change,
    "d_trouble": plain_trouble,
    "d_works": works,
    "d_people": people,
    "d_area": area,
    "d_year": year,
    "d_tons": phone_tons,
    "d_filter": filter_size,
    "d_openings": openings,
    "d_registers": registers,
    "d_boot": hole,
    "d_ways": ways,
    "d_trunk": main_duct,
    "d_location": location,
    "d_flex": hoses,
    "d_rooms": rooms,
    "d_doors": doors,
    "d_noise": noise,
    "d_photos": photos,
}
_NOTICED: Final = frozenset(("d_doors", "d_flex"))


def by_phone(question: Question, text: str) -> Reading | str:
    """What a line says in answer to a question of a call, or the text to be read by its field.

    Args:
        question: The open question.
        text: The line, cleaned.

    Returns:
        A reading; else the text, without what isn't asked for.
    """
    reader = _READERS.get(question.key)
    if reader is None:
        return text
    line = normalise(text)
    if question.key in _NOTICED and (unnoticed := not_noticed(line)) is not None:
        return unnoticed
    found = reader(line)
    return text if found is None else found


_CALLER_ASKS: Final = re.compile(
    r"(?:(?:and|so|oh|well|ok)[, ]+)*(?:(?:the )?(?:caller|customer|lady|guy|man|homeowner)|she|he"
    r"|they)"
    r"(?:'s| is|'re| are)? (?:also |now |just )?(?:asks?|asking|wants? to know|wonders?|wondering)"
    r" (?:me )?(?P<what>why|what for|where|how)\b[^\d]*",
    re.IGNORECASE,
)
_REQUESTS: Final = {"why": "why", "what for": "why", "where": "where", "how": "how"}


def as_the_callers(line: str) -> str:
    """A caller's question that is passed on, as a request to the program; else the line itself.

    >>> as_the_callers("she asks why you need that")
    'why'
    """
    asked = _CALLER_ASKS.fullmatch(line.strip())
    return _REQUESTS[asked["what"].lower()] if asked else line
