"""Names for people: of facts, lists, modes, statuses, parts, and of how something is known.

Everything here turns an engine's name into trade words. Knows nothing of sentences or verdicts.
"""

import re
from types import MappingProxyType
from typing import Final

from engine.errors import FactError
from engine.job.belief import Belief, Between, How, Known, OneOf, Scalar
from engine.job.facts import Fact, Quantity, catalogue, fact_for, pattern_of
from engine.job.job import Job
from engine.job.modes import Mode
from engine.physics.blower_table import MotorKind
from engine.trade.fittings import FITTINGS
from engine.trade.materials import MATERIALS, Material
from engine.trade.measuring import MEASURED_WHERE, MeasuredWhere
from engine.verdict import Harm, ModeStatus, Part
from intake.telling.numbers import exactly, quantity

__all__ = [
    "HARMS",
    "HOWS",
    "MODES",
    "PARTS",
    "STATUSES",
    "belief_words",
    "fact_words",
    "mode_words",
    "number_words",
    "place_words",
    "thing_words",
    "value_words",
    "wanted_words",
]

MODES: Final = MappingProxyType(
    {
        Mode.COOLING_HIGH: "full cooling",
        Mode.COOLING_LOW: "low-stage cooling",
        Mode.HEATING_HIGH: "full heat",
        Mode.HEATING_LOW: "low heat",
        Mode.HEAT_PUMP_HEATING: "heat pump heating",
        Mode.STRIP_HEAT: "electric strip heat",
    }
)
"""Each airflow mode as the trade calls it."""

STATUSES: Final = MappingProxyType(
    {
        ModeStatus.CARRIES: "the ducts carry it",
        ModeStatus.CARRIES_WITH_CHANGES: "the ducts carry it with changes",
        ModeStatus.WONT_CARRY: "the ducts won't carry it",
        ModeStatus.CANT_SAY: "can't say yet",
    }
)
"""Each status of a mode in plain words."""

PARTS: Final = MappingProxyType(
    {
        Part.SUPPLY_TRUNK: "supply trunk",
        Part.SUPPLY_BRANCHES: "supply branches",
        Part.RETURN_DROP: "return drop",
        Part.RETURN_TRUNK: "return trunk",
        Part.RETURN_OPENINGS: "return openings",
        Part.FILTER: "filter",
        Part.COIL: "coil",
        Part.BLOWER: "blower",
        Part.EQUIPMENT: "equipment",
    }
)
"""What can hold a mode back."""

HARMS: Final = MappingProxyType(
    {
        Harm.NOISE: "noise",
        Harm.AIR: "less air than the equipment needs",
        Harm.EQUIPMENT: "wear on the equipment",
        Harm.HEALTH: "people's health",
    }
)
"""What a finding that is over does."""

HOWS: Final = MappingProxyType(
    {
        How.MEASURED: "measured",
        How.PLATE: "read from the plate",
        How.DOCUMENT: "from a document",
        How.PHOTO: "seen in a photo",
        How.PHONE: "told by phone",
        How.GUESSED: "a guess",
        How.ASSUMED: "assumed",
    }
)
"""How a fact is known."""

_LISTS: Final = MappingProxyType(
    {
        "supply.trunks": (
            "supply trunk",
            "how many trunks leave the plenum, and their sizes there",
        ),
        "supply.branches": ("supply branch", "the branches: how many, and their sizes"),
        "supply.registers": ("supply register", "the supply registers: how many, and their sizes"),
        "return.drops": ("return drop", "the return drop's size, or that there is none"),
        "return.trunks": ("return trunk", "the return trunk's size, or that there is none"),
        "return.branches": ("return branch", "the return branches: how many, and their sizes"),
        "return.grilles": ("return opening", "every return opening: how many, and their sizes"),
        "filters": ("filter", "the filter's size, thickness and place"),
        "path.fittings": ("fitting", "the fittings on the longest run"),
        "readings": ("reading", "pressure readings with the airflow they were taken at"),
    }
)
_SHORT_WHOLE: Final = MappingProxyType(
    {
        "equipment.blower_tables": "the new blower's table",
        "old.blower_tables": "the present blower's table",
        "equipment.cooling_rows": "the maker's cooling table",
    }
)
_WHOLE: Final = MappingProxyType(
    {
        "equipment.blower_tables": "the new blower's table: airflow at each static pressure",
        "blower": "the new blower's table: airflow at each static pressure",
        "old.blower_tables": "the present blower's table: airflow at each static pressure",
        "equipment.cooling_rows": "the maker's cooling table: capacity at each airflow",
        "blower_evidence": "the new blower's table, or pressures read with their airflow",
    }
)
_WORDS: Final = MappingProxyType(
    {
        MotorKind.PSC.value: "PSC (airflow falls as pressure rises)",
        MotorKind.ECM_CONSTANT_TORQUE.value: "constant-torque ECM",
        MotorKind.ECM_VARIABLE.value: "constant-airflow ECM",
        "r22": "R-22",
        "r410a": "R-410A",
        "a2l": "an A2L refrigerant",
        "rect": "rectangular",
    }
)
_UNIT_WORDS: Final = ("CFM", "Btu", "MERV", "PSC", "ECM")


def mode_words(mode: Mode) -> str:
    """The mode as the trade calls it.

    >>> mode_words(Mode.HEAT_PUMP_HEATING)
    'heat pump heating'
    """
    return MODES[mode]


_INDEXED: Final = re.compile(r"^(?P<list>[a-z.]+?)[.\[](?P<index>\d{1,2})\]?(?:\.(?P<field>\w+))?$")


def place_words(key: str, job: Job | None = None) -> str:
    """The piece of the house a list entry stands for; numbered only where there are several.

    Args:
        key: "supply.trunks.0" or a fact below it.
        job: Gives the piece's own name, if somebody named it, and how many there are.

    Returns:
        "supply trunk", "supply trunk 2", "return opening 'hall'"; empty if the key is in no list.

    >>> place_words("return.drops.0.width_in"), place_words("supply.trunks.1")
    ('return drop', 'supply trunk 2')
    """
    found = _INDEXED.match(key)
    if found is None or found["list"] not in _LISTS:
        return ""
    name, index = found["list"], int(found["index"])
    words = _LISTS[name][0]
    kind = job.word(f"{name}.{index}.kind") if job is not None and name == "path.fittings" else None
    if kind and kind in FITTINGS:
        return FITTINGS[kind].words
    called = job.word(f"{name}.{index}.name") if job is not None else None
    if called:
        return f"{words} “{called}”"
    several = index > 0 if job is None else (job.length(name) or 0) > 1
    return f"{words} {index + 1}" if several else words


def fact_words(key: str, job: Job | None = None) -> str:
    """What a fact is, as a noun phrase in the middle of a sentence.

    >>> fact_words("return.drops.0.width_in"), fact_words("supply.trunks")
    ('width of the return drop', 'how many trunks leave the plenum, and their sizes there')
    """
    if key in _WHOLE or key in _LISTS:
        return wanted_words(key)
    try:
        meaning = fact_for(key).meaning
    except FactError:
        return place_words(key, job) or key
    phrase = _as_phrase(meaning)
    if key.startswith("target."):
        return _with_mode(phrase)
    place, plain = place_words(key, job), place_words(_first(key))
    if place == plain:
        return phrase
    if key.startswith("path.fittings.") and "this fitting" in phrase:
        return phrase.replace("this fitting", f"“{place}”")
    if f"the {plain}" in phrase:
        return phrase.replace(f"the {plain}", place, 1)
    return f"{phrase} ({place})"


def _with_mode(phrase: str) -> str:
    for mode, words in MODES.items():
        phrase = phrase.replace(f" in {mode.value.replace('_', ' ')}", f" in {words}")
        phrase = phrase.replace(f" of {mode.value.replace('_', ' ')} is", f" of {words} is")
    return phrase


def _first(key: str) -> str:
    return re.sub(r"[.\[]\d{1,2}\]?", ".0", key, count=1)


def _as_phrase(meaning: str) -> str:
    bare = meaning.rstrip(".")
    if bare.startswith(_UNIT_WORDS):
        return bare
    return bare[0].lower() + bare[1:]


def wanted_words(key: str, job: Job | None = None) -> str:
    """What somebody would have to find out, for a fact or a whole list.

    >>> wanted_words("filters")
    "the filter's size, thickness and place"
    """
    if key in _WHOLE:
        return _WHOLE[key]
    if key in _LISTS:
        return _LISTS[key][1]
    phrase = fact_words(key, job)
    starts_alone = phrase.startswith(("how ", "what ", "where ", "whether ", "which "))
    return phrase if starts_alone else f"the {phrase}"


def thing_words(key: str, job: Job | None = None) -> str:
    """What is assumed, in front of a colon: a fact, or a whole list or table by its short name.

    >>> thing_words("return.trunks"), thing_words("new.coil_drop_inwc")
    ('return trunk', 'pressure drop of the new coil, wet')
    """
    if key in _LISTS:
        return _LISTS[key][0]
    return _SHORT_WHOLE.get(key) or fact_words(key, job)


def number_words(fact: Fact, value: float) -> str:
    """A number of a fact with its unit as it was given; shares as per cent, years without commas.

    >>> number_words(fact_for("return.drops.0.width_in"), 14.0)
    '14 in.'
    """
    if fact.quantity is Quantity.SHARE:
        return exactly(value, "share")
    if fact.quantity in (Quantity.YEAR, Quantity.COUNT) and not fact.unit:
        return f"{value:.6g}"
    return exactly(value, fact.unit)


def value_words(key: str, value: Scalar) -> str:
    """One value of a fact as a person would write it.

    >>> value_words("equipment.kind", "heat_pump"), value_words("supply.trunks.0.material", "flex")
    ('heat pump', 'flex, pulled fully straight')
    """
    if not isinstance(value, str):
        return number_words(fact_for(key), float(value))
    fact = catalogue().get(pattern_of(key))
    if fact is None or (fact.choices and value not in fact.choices):
        return _plainly(value)
    field = key.rsplit(".", 1)[-1]
    if field == "material" and value in set(Material):
        return MATERIALS[Material(value)].words
    if field == "measured_where" and value in set(MeasuredWhere):
        return MEASURED_WHERE[MeasuredWhere(value)].words
    if key.startswith("path.fittings") and value in FITTINGS:
        return FITTINGS[value].words
    if field == "from" and (above := _INDEXED.match(value)) and above["list"] in _LISTS:
        return f"{_LISTS[above['list']][0]} {int(above['index']) + 1}"
    if field == "mode" and value in set(Mode):
        return MODES[Mode(value)]
    return value if fact.quantity is Quantity.TEXT else _plainly(value)


def _plainly(text: str) -> str:
    """Words with the engine's own names in them put into trade words."""
    told = " ".join(_WORDS.get(word, word) for word in text.split(" "))
    return told.replace("_", " ")


def belief_words(key: str, belief: Belief) -> str:
    """A belief in normal form: a value, a range, or the choices by weight.

    >>> belief_words("return.drops.0.width_in", Between(12.0, 14.0, 16.0, How.PHONE))
    '12 in. to 16 in., likely 14 in.'
    """
    match belief:
        case Known(value=str(value), hedged=True) if not key.endswith(".shape"):
            return f"{value_words(key, value)}, not sure"
        case Known(value=value, hedged=hedged):
            about = "about " if hedged and not isinstance(value, str) else ""
            return f"{about}{value_words(key, value)}"
        case Between(low=low, likely=likely, high=high):
            low_words, likely_words, high_words = (
                value_words(key, one) for one in (low, likely, high)
            )
            return f"{low_words} to {high_words}, likely {likely_words}"
        case OneOf(weights=weights):
            whole = sum(weight for _, weight in weights)
            shares = sorted(weights, key=lambda pair: -pair[1])
            return ", ".join(
                f"{value_words(key, value)} ({quantity(weight / whole, 'share')})"
                for value, weight in shares
            )
