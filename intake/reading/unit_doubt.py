"""A value whose unit the person leaves open ("forty, feet or meters I forget")."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.figures import figures_in
from intake.reading.result import AskBack, AskKind

__all__ = ["unit_doubt"]

_UNIT: Final = (
    r"(?:feet|foot|ft|meters?|metres?|m|yards?|yds?|inches|inch|cent[ai]met(?:er|re)s?|cm"
    r"|millimet(?:er|re)s?|mm|cfm|lit(?:er|re)s?(?: (?:a|per) second)?|l/s|pascals?|pa|kpa|iwc|inwc"
    r"|psi|celsius|centigrade|c|fahrenheit|f|tons?|btus?|btuh|kw|kilowatts?)"
)
_EITHER: Final = re.compile(
    rf"\b(?P<one>{_UNIT}),? (?:or|vs\.?|versus|maybe|or maybe) (?:is it |was it |are they "
    rf"|it'?s |in )?"
    rf"(?P<two>{_UNIT})\b(?! and\b)"
)


def unit_doubt(line: str) -> AskBack | None:
    """What to ask of a normalised text that leaves its unit open; None if it doesn't.

    >>> unit_doubt("forty, feet or meters i forget").why
    'Is that in feet or in meters?'
    >>> unit_doubt("30 feet or 10 meters") is None
    True
    """
    either = _EITHER.search(line)
    if either is None or either["one"] == either["two"] or not figures_in(line[: either.start()]):
        return None
    return AskBack(f"Is that in {either['one']} or in {either['two']}?", (), AskKind.TWO_READINGS)
