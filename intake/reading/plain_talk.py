"""Lines of plain words, under which nothing is denied, taken back, put off or excused.

More than half of all answers are a figure, its unit and a few words of the thing itself. No turn
of phrase can stand in such a line, so that the many rules about how a value is said needn't look
for one. A rule that looks for some plain words all the same ("about", "inside") names them beside
itself (`is_plain_without`).
"""

from __future__ import annotations

import re
from collections.abc import Set
from functools import lru_cache
from typing import Final

from intake.reading.words import words

__all__ = ["PLAIN", "is_innocent", "is_plain", "is_plain_without", "words_in"]

INNOCENT: Final = words(
    """
    x by and a an the of to or in inch inches ins ft foot feet cm mm m cfm iwc inwc wc w c h pa
    btu btuh k ton tons pct percent f deg degrees degree degf ish about around roughly approx
    maybe i think say it's its it there's there theres at on with long wide high tall deep each
    ea qty r s round rnd rd dia diameter oval square rect rectangular flex galv galvanized
    galvanised tin metal steel sheet duct board ductboard lined liner pipe spiral flexible
    aluminum pvc wrapped insulated inside outside run runs pieces return supply ret rtn sup
    total tesp static rise split drop delta merv upstairs downstairs hall both two three four
    five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen
    eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand
    point half quarter one zero oh input output afue seer efficient efficiency two's pair
    couple plus up down between per minus thick kw joist joists bay stud psi flat celsius fpm
    stage sq insulation wrap pascals heating cooling panned cavity aluminium metres neg negative
    core fiberglass few dozen built pleated snap lock across ends ecm mbh hood max kind kinda
    pretty somewhere something model constant tap
    """
)
"""Words of plain answers, of whatever is asked: they are in no turn of phrase, or say nothing
alone."""

PLAIN: Final = (INNOCENT - {"max"}) | words(
    """
    btus kbtu kbtuh tonner ton's tuns tun tenths hundredths tenth hundredth quarters halves
    thirds eighths sixteenths meter meters metre yard yards yds mile miles km kpa pascal fps volt
    volts amp amps watts kilowatts eer hspf cop hr hrs hour hours minute minutes cubic second
    litres liters l t o p e g u em eff tea safe cfms cf lf linear lineal fahrenheit centigrade
    elevation sea level altitude elev water column low over from positive external temp
    percenter paces paced sticks stick strips strip elbows elbow turns turn bends bend bays rolls
    roll trunk branch branches plastic gas electric oil heat ac pump psc hp rpm lining pipes
    rounds squares tins galvy flexi spiro unlined bare solid white yellow gray grey black silver
    floor floors times big large small main
    """
)
"""Words of plain answers where no size is asked for; there some of them name another thing."""

_WORD: Final = re.compile(r"[a-z]+(?:'[a-z]+)?")


@lru_cache(maxsize=8)
def words_in(line: str) -> frozenset[str]:
    """The words of a normalised text.

    >>> sorted(words_in("20x8in, it's flex"))
    ['flex', 'in', "it's", 'x']
    """
    return frozenset(_WORD.findall(line))


@lru_cache(maxsize=8)
def is_plain(line: str) -> bool:
    """Whether a normalised text is made of plain words, figures and signs, and asks nothing.

    >>> is_plain("galv trunk, about 30 ft"), is_plain("not 30 ft"), is_plain("30 ft?")
    (True, False, False)
    """
    return words_in(line) <= PLAIN and "?" not in line


def is_plain_without(line: str, some: Set[str]) -> bool:
    """Whether a normalised text is plain and holds none of some words.

    >>> is_plain_without("40 ft", {"about"}), is_plain_without("about 40 ft", {"about"})
    (True, False)
    """
    return is_plain(line) and words_in(line).isdisjoint(some)


def is_innocent(line: str) -> bool:
    """Whether a normalised text is plain even where each of its words may name a thing.

    >>> is_innocent("galv, about 30 ft"), is_innocent("galv trunk, about 30 ft")
    (True, False)
    """
    return words_in(line) <= INNOCENT and "?" not in line
