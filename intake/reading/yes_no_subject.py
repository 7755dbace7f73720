"""Whether an answer that says neither yes nor no is at least of the trade, so that it is asked"
" back.

"Hall closet ceiling" to "Is the attic hatch inside the house?" tells something that only knowledge
of houses turns into a yes; "lunch is at noon" tells nothing.
"""

from __future__ import annotations

import re
from typing import Final

from intake.reading.words import words

__all__ = ["of_the_trade"]

_TRADE: Final = words(
    """
    duct ducts trunk plenum return supply register registers vent vents grille filter rack slot
    furnace unit system blower fan motor coil drain pan water condensate hatch attic basement crawl
    crawlspace closet garage ceiling drop flex metal tin board liner liner's insulation insulated
    wrap wrapped damper dampers boot boots humidifier bypass stat thermostat heat heats air hot cold
    warm lukewarm cool tape mastic seam seams joint joints screws screw leak leaks pipe flue chimney
    gas smell noise breaker fuse power wire wires board capacitor belt pulley door doors panel cover
    size inch inches ton tons stage stages speed speeds installed replaced changed fixed tested crew
    tech installer contractor homeowner landlord customer outside inside upstairs downstairs half
    way
    wife husband mother father mom dad grandma grandpa kids kid daughter son
    condensation puddle sweat degrees raining snowing sunny freezing stops stop goes part
    position summer winter runs ran
    run running
    """
)
_WORD: Final = re.compile(r"[a-z]+(?:'[a-z]+)?")
_STEM: Final = 4
_BACK: Final = words("it it's its it'll it'd them they ours theirs em those mine")
"""Words that go back to what was asked."""
_COMMON: Final = words(
    """
    the is a an it does do did has have are was were there this that any all your you in on of to
    can when what who why how where with from for and or at old new today now one kitchen house
    being
    """
)


_SPEAKS_OF_IT: Final = re.compile(
    r"(?:if |well |so |and |right |way |just |all the way )*(?:it|its|it's|they|they're|he|she"
    r"|he's|she's"
    r"|them|there|there's|across|for|until|till|about|between|under|behind|above|beside|by|near"
    r"|next|over"
    r"|in|on|at|with|when|where|wherever|after|during|through|around|down|up|out|every|each)\b"
)
"""A pronoun or a preposition at the start goes back to what was asked."""


def of_the_trade(text: str, question: str) -> bool:
    """Whether a text speaks of something that the question or the trade speaks of.

    >>> of_the_trade("hall closet ceiling", "Is the attic hatch inside the house?")
    True
    >>> of_the_trade("lunch is at noon", "Is the attic hatch inside the house?")
    False
    """
    said = set(_WORD.findall(text))
    if _SPEAKS_OF_IT.match(text) or said & _BACK:
        return True
    said -= _COMMON
    asked = {word[:_STEM] for word in _WORD.findall(question.lower()) if word not in _COMMON}
    return bool(said & _TRADE) or any(word[:_STEM] in asked for word in said if len(word) >= _STEM)
