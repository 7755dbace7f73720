"""The trade's spellings of units, and what each converts to.

`SPELLINGS` is the only way from typed text to a unit. `convert` takes a number and two unit names
of ours. Every conversion that an answer can need stands here as an exact factor, so that no answer
waits for pint to load; pint converts what is left, by expressions written here, never by typed
text.
"""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Final

from intake.reading.words import words

if TYPE_CHECKING:
    import pint

__all__ = ["DIMENSION", "PREFIXED", "SPELLINGS", "convert", "spellings", "unit_words", "warm"]

# Our unit name: (what it measures, the pint expression or "" if nothing converts).
_UNITS: Final[dict[str, tuple[str, str]]] = {
    "in": ("length", "inch"),
    "ft": ("length", "foot"),
    "yd": ("length", "yard"),
    "mi": ("length", "mile"),
    "mm": ("length", "millimeter"),
    "cm": ("length", "centimeter"),
    "m": ("length", "meter"),
    "km": ("length", "kilometer"),
    "sqin": ("area", "inch**2"),
    "sqft": ("area", "foot**2"),
    "sqm": ("area", "meter**2"),
    "cfm": ("airflow", "foot**3/minute"),
    "lps": ("airflow", "liter/second"),
    "m3h": ("airflow", "meter**3/hour"),
    "m3m": ("airflow", "meter**3/minute"),
    "m3s": ("airflow", "meter**3/second"),
    "cfm_ton": ("airflow_per_ton", ""),
    "fpm": ("velocity", "foot/minute"),
    "mps": ("velocity", "meter/second"),
    "mph": ("velocity", "mile/hour"),
    "inwc": ("pressure", "249.089 * pascal"),
    "pa": ("pressure", "pascal"),
    "kpa": ("pressure", "kilopascal"),
    "mbar": ("pressure", "millibar"),
    "mmwc": ("pressure", "9.80665 * pascal"),
    "cmwc": ("pressure", "98.0665 * pascal"),
    "psi": ("high_pressure", "psi"),
    "inhg": ("high_pressure", "inch_Hg"),
    "mmhg": ("high_pressure", "mmHg"),
    "bar": ("high_pressure", "bar"),
    "microns": ("high_pressure", ""),
    "degf": ("temperature", "degF"),
    "degc": ("temperature", "degC"),
    "degk": ("temperature", "kelvin"),
    "deg": ("temperature", "degF"),
    "delta_degf": ("difference", "delta_degF"),
    "delta_degc": ("difference", "delta_degC"),
    "btuh": ("heat", "Btu_it/hour"),
    "kbtuh": ("heat", "1000 * Btu_it/hour"),
    "mmbtuh": ("heat", "1000000 * Btu_it/hour"),
    "kw": ("heat", "kilowatt"),
    "w": ("heat", "watt"),
    "ton": ("heat", "12000 * Btu_it/hour"),
    "hp": ("power", ""),
    "pct": ("percent", ""),
    "seer": ("seer", ""),
    "hspf": ("hspf", ""),
    "eer": ("eer", ""),
    "cop": ("cop", ""),
    "afue": ("afue", ""),
    "merv": ("merv", ""),
    "mpr": ("filter_rating", ""),
    "rvalue": ("rvalue", ""),
    "ga": ("gauge", ""),
    "volt": ("electric", ""),
    "amp": ("electric", ""),
    "hertz": ("electric", ""),
    "rpm": ("speed", ""),
    "lb": ("weight", ""),
    "degree_angle": ("angle", ""),
    "years": ("time", ""),
    "minutes": ("time", ""),
    "ppm": ("gas", ""),
    "dollars": ("money", ""),
    "joists": ("joists", ""),
    "paces": ("paces", ""),
    "rolls": ("rolls", ""),
    "things": ("things", ""),
    "stages": ("stages", ""),
}
# "things" is what a number counts that the table does not hold.
# Source of 249.089 Pa per in. w.c.: conventional inch of water (how: computed, 25.4 mm at
# 1000 kg/m3 and 9.80665 m/s2 is 249.0889 Pa). Btu is the International Table one, 1055.056 J.

DIMENSION: Final = {name: dimension for name, (dimension, _) in _UNITS.items()}
"""What each unit measures, in one word."""

SPELLINGS: Final[dict[str, str]] = {
    "in": 'in|inch|inches|inchs|"|ins|inche|incehs|ich|inces',
    "ft": (
        "ft|feat|foot|feet|'|fts|feets|fee|lf|lineal feet|linear feet|lin ft|lineal ft"
        "|linear ft|foots|running feet|running foot|ft of run|footer|ftt"
    ),
    "yd": "yd|yds|yard|yards",
    "mi": "mi|mile|miles",
    "mm": "mm|mil|mils|millimeter|millimeters|millimetre|millimetres|millimetrs",
    "cm": "cm|centimeter|centimeters|centimetre|centimetres",
    "m": "m|meter|meters|metre|metres|mtr|mtrs|mts",
    "km": "km|kilometer|kilometers|kilometre|kilometres",
    "sqin": "sq in|sqin|square inch|square inches|in2|in 2|in ^ 2|inches squared|sq inches|sq inch",
    "sqft": "sq ft|sqft|square foot|square feet|ft2|ft 2|ft ^ 2|sf|sq feet|sq foot|feet squared",
    "sqm": "sq m|sqm|square meter|square meters|square metres|square metre|m2|m 2|m ^ 2",
    "cfm": (
        "cfm|cfms|c f m|cf m|cubic feet per minute|cubic feet a minute|cubic foot per minute"
        "|cubic feet / minute|cubic feet / min|cu ft / min|cu ft per min|cubic feet per min"
        "|ft3 / min|ft 3 / min|cubic feet|cu ft / minute|cu ft per minute|scfm|acfm"
        "|ft ^ 3 / min|cubes|safe m|see eff em|cfpm|cubic ft per minute"
        "|cubic ft / min|cubic ft a minute|cubic ft min|cu feet per minute|cu feet / min"
        "|cuft / min|cuft per min|cubic foot a minute|cubic foot / min|cubic ft per min"
        "|cubic foot per min|ft3 per min|ft3 per minute|ft3 / minute|cu foot per minute"
        ""
    ),
    "lps": "l / s|lps|ls|litres per second|liters per second|litre per second|liter per second"
    "|l per s|litres / s|liters / s|l / sec|litres a second|liters a second|l per sec|litres / sec"
    "|litres sec|liters / sec|l s",
    "m3h": (
        "m 3 / h|m3 / h|m 3 / hr|m3 / hr|cmh|m 3 h|m3h|cubic meters per hour|m ^ 3 / h"
        "|m ^ 3 / hr|cubic metres per hour|cubic meters an hour|cubic metres an hour|cu m / h"
        "|m 3 per hour|cubic meters / hour|cubic meters / h|cubic metres / hour|m 3 per h"
        "|m 3 an hour|cu m / hr"
    ),
    "m3m": "cubic meters a minute|cubic metres a minute|cubic meters / minute|cubic metres / minute"
    "|m3 a minute|m3 per minute|m 3 / min|m3 / min|cmm|cubic meters per minute|cubic metres per"
    " minute|m ^ 3 / min",
    "m3s": "m 3 / s|m3 / s|cubic meters per second|cubic metres per second|m ^ 3 / s|cms|cu m / s"
    "|m 3 / sec|m 3 per second|cubic meters a second|cubic metres a second|cubic metre per second"
    "|cubic meter per second|m3 per second|m3 a second|m 3 a second|cubic metres / second"
    "|cubic meters per sec|cubic metres per sec|m3 per sec|cubic meters / sec",
    "cfm_ton": "cfm per|cfm per ton|cfm / ton|cfm a ton|per ton|/ ton|a ton|cfm per tons|per"
    " tonne|/ tn"
    "|cfm / t|/ t|each ton|cfm for each ton|cfm each ton|for each ton|for every ton|cfm to the ton"
    "|to the ton|cfm ton|cubic feet per minute per ton|per tn|pr ton|cfm pr ton",
    "fpm": "fpm|f p m|feet per minute|feet a minute|ft per minute|ft / min|ft / minute|ft per min"
    "|feet / min|feet / minute|foot per minute|fmp|feet per min|foot a minute|eff pea m|lfm|sfpm"
    "|ft a minute",
    "mps": (
        "fps|feet per second|ft / s|ft per second|feet a second|feet / sec|m / s|mps"
        "|meters per second|metres per second|m / sec|m per s|meters a second"
    ),
    "mph": "mph|miles per hour|miles an hour|kph|km / h|knots",
    "inwc": "in w c|in wc|inwc|iwc|in w g|in wg|inwg|iwg|wc|w c|wg|w g|inch wc|inches wc|in h 2 o"
    "|inches w c|inch w c|inches of water|inch of water|inches water column|inches of water column"
    "|inch water column|inch of water column|water column|in h2o|inches h2o|in of water"
    "|inches water"
    "|inches of h2o|inches of wc|in of wc|in water|in water column|water gauge|inches water gauge"
    '|inches of water gauge|inch water gauge|" wc|" w c|" wg|" w g|" h2o|" h 2 o|" of water'
    '|inh2o|h2o|inches wg|inch wg|wci|wcin|" water|inches water collum|inches water colum'
    '|inch water|inches of w c|in wtr|iw|water calm|inches water gage|inches w g|" water column',
    "pa": "pa|pascal|pascals|pas|paschal|paschals|pascels|pascle|pass calls",
    "kpa": "kpa|kilopascal|kilopascals",
    "mbar": "mbar|mbars|millibar|millibars|hpa|hectopascal|hectopascals",
    "mmwc": "mmwc|mm wc|mm w c|mmh2o|mm h2o|mm of water|mm water|mmh 2 o|mm h 2 o|mmwg|mm wg"
    "|mm water column|mm w g|millimeters of water|millimetres of water",
    "cmwc": "cm wc|cm w c|cmh2o|cm h2o|cm of water|cm water",
    "psi": "psi|psig|p s i|psia|pounds per square inch|lbs per square inch|pounds|lbs|lb|psid",
    "inhg": (
        'inhg|in hg|inches of mercury|in of mercury|inches hg|" hg|inches mercury'
        "|in mercury|inch mercury"
        '|inch of mercury|" mercury|" of mercury|mercury|inch hg|hg'
    ),
    "mmhg": "mmhg|mm hg|torr",
    "bar": "bar|bars",
    "microns": "micron|microns",
    "degf": "f|deg f|degrees f|degree f|fahrenheit|degrees fahrenheit|degf|farenheit|fahr"
    "|degrees farenheit|fahrenhiet|deg fahrenheit|degress f|degres f|degreees f|dgrees f|digrees f",
    "degc": "c|deg c|degrees c|degree c|celsius|degrees celsius|centigrade|degrees centigrade|degc"
    "|celcius|degrees celcius|deg celsius",
    "degk": "kelvin|kelvins|degrees kelvin|deg k",
    "deg": "deg|degs|degree|degrees|degress|degres|digrees|degreees|dgrees",
    "btuh": (
        "btuh|btu|btus|btu / h|btu / hr|btu per hour|btu h|btu hr|btu an hour|btus per hour"
        "|b t u|btu / hour|btus an hour|btus / hr|btu's|bthu|btuhs|be tea you|b t u h"
        "|british thermal units|btu per hr|btus / h|b t us|bt us|btu / hs"
    ),
    "kbtuh": (
        "mbh|m b h|mbtu|kbtu|kbtuh|kbtu / h|kbtu / hr|mbtuh|k btu|k btuh|k btu / h|k btu / hr"
        "|emm bee h|k btus|mbtu / h|mbtu / hr|mbhs|m btu|m btuh|thousand btu|m btu / h|kbtus"
        "|k btu per hour|mbth|m btus|m btu / hr|mbtus"
    ),
    "mmbtuh": "mmbtu|mmbtuh|mmbh|million btu|mmbtu / h",
    "kw": "kw|kilowatt|kilowatts|kws|k w|kilo watts|kilowat|kilowats|killowatts",
    "w": "w|watt|watts",
    "ton": "ton|tons|tonne|tonnes|tun|tuns|tn|toner|t|tonner|tonns|tns|tonnage|tonage|tonn|toner",
    "hp": "hp|horsepower|horse|horse power",
    "pct": "%|percent|per cent|pct|pc|prcnt|percents|precent|perecnt",
    "seer": "seer|seer2|seer 2|sear|seers|seer to|seer rating|seer two",
    "hspf": "hspf|hspf2|hspf 2|hspf two",
    "eer": "eer|eer2|eer 2|eers|ceer",
    "cop": "cop",
    "afue": (
        "afue|af u e|afu e|a few|afew|a f u e|auef|afeu|pct afue|% afue|percent afue|affue|aufe"
    ),
    "merv": "merv|mrv|mer|murv|nerve|merve|verve|merv rating|mrev|mirv",
    "mpr": "mpr|fpr",
    "rvalue": "rvalue|r value|r",
    "ga": "ga|gauge|gage|guage|gauges",
    "volt": "volt|volts|vac|vdc|v",
    "amp": "amp|amps|ampere|amperes",
    "hertz": "hz|hertz",
    "rpm": "rpm|rpms",
    "lb": "kg|kilos|kilograms|ounces|oz|grams",
    "years": "year|years|yr|yrs|month|months|yrs old|years old",
    "minutes": "minute|minutes|hour|hours|hrs|sec|seconds",
    "ppm": "ppm",
    "dollars": "dollars|bucks|usd",
    "joists": "bays|joist|joists|joist bays over|joists over|studs over|studs|joist spaces",
    "paces": "pace|paces|strides|steps|big steps|long steps|of my steps|of my paces|of my feet"
    "|of his steps|giant steps|footsteps",
    "stages": "stage|stages|speed|speeds|zone|zones|phase|wire|wires",
    "rolls": "roll|rolls|bag|bags|box of flex|boxes of flex|sticks|stick",
}
"""Our unit name: what people type for it. A word joins its neighbours with one space."""

PREFIXED: Final = words("seer hspf eer cop afue merv mpr rvalue")
"""Units that may also stand before their number ("HSPF 9", "MERV 13", "R-8")."""

_FACTORS: Final[dict[tuple[str, str], float]] = {
    ("ft", "in"): 12.0,
    ("in", "ft"): 1 / 12,
    ("mm", "in"): 1 / 25.4,
    ("cm", "in"): 1 / 2.54,
    ("m", "in"): 1 / 0.0254,
    ("mm", "ft"): 1 / 304.8,
    ("cm", "ft"): 1 / 30.48,
    ("m", "ft"): 1 / 0.3048,
    ("yd", "ft"): 3.0,
    ("mi", "ft"): 5280.0,
    ("lps", "cfm"): 60 / 28.316846592,
    ("m3h", "cfm"): 1000 / (60 * 28.316846592),
    ("pa", "inwc"): 1 / 249.089,
    ("kpa", "inwc"): 1000 / 249.089,
    ("ton", "btuh"): 12000.0,
    ("kbtuh", "btuh"): 1000.0,
    ("mmbtuh", "btuh"): 1_000_000.0,
    ("kw", "btuh"): 3_600_000 / 1055.05585262,
    ("w", "btuh"): 3600 / 1055.05585262,
    ("km", "in"): 1 / 0.0000254,
    ("yd", "in"): 36.0,
    ("mi", "in"): 63360.0,
    ("km", "ft"): 1 / 0.0003048,
    ("sqin", "sqft"): 1 / 144,
    ("sqm", "sqft"): 1 / 0.09290304,
    ("m3m", "cfm"): 1000 / 28.316846592,
    ("m3s", "cfm"): 60_000 / 28.316846592,
    ("mbar", "inwc"): 100 / 249.089,
    ("mmwc", "inwc"): 9.80665 / 249.089,
    ("cmwc", "inwc"): 98.0665 / 249.089,
    ("degf", "degf"): 1.0,
    ("deg", "degf"): 1.0,
    ("delta_degc", "delta_degf"): 1.8,
}
"""Factors of all that answers are converted from and to.

Source: the definitions of the inch (25.4 mm), the yard, the mile, the litre, the hour, the
millimetre of water (9.80665 Pa) and the International Table Btu (1055.05585262 J) (how: computed;
a test computes each again with pint).
"""


@cache
def spellings() -> dict[tuple[str, ...], str]:
    """The words of each spelling, and the unit."""
    table: dict[tuple[str, ...], str] = {}
    for unit, phrases in SPELLINGS.items():
        for phrase in phrases.split("|"):
            table.setdefault(tuple(phrase.split()), unit)
    return table


@cache
def unit_words() -> frozenset[str]:
    """Every word that is part of a unit."""
    return frozenset(word for phrase in spellings() for word in phrase if word.isalpha())


@cache
def _registry() -> pint.UnitRegistry[float]:
    import pint

    return pint.UnitRegistry(cache_folder=None)


_SCALES: Final = {
    "degf": (1.0, 0.0),
    "deg": (1.0, 0.0),
    "degc": (1.8, 32.0),
    "degk": (1.8, 32.0 - 1.8 * 273.15),
}
"""Degrees of a scale in degrees Fahrenheit, and its zero, degF; a bare degree is Fahrenheit."""
_BASES: Final = ("in", "sqft", "cfm", "inwc", "btuh", "degf")
"""Units through which two others of their kind convert."""


def _to_base(unit: str, base: str) -> float | None:
    """The factor from a unit to a base, where it is in the table."""
    return 1.0 if unit == base else _FACTORS.get((unit, base))


@cache
def _line(unit: str, to: str) -> tuple[float, float]:
    """Factor and offset that take a number in `unit` to one in `to`."""
    if unit == to:
        return 1.0, 0.0
    if (unit, to) in _FACTORS:
        return _FACTORS[unit, to], 0.0
    if unit in _SCALES and to in _SCALES:
        (factor, zero), (per, at) = _SCALES[unit], _SCALES[to]
        return factor / per, (zero - at) / per
    for base in _BASES:
        one, two = _to_base(unit, base), _to_base(to, base)
        if one is not None and two is not None:
            return one / two, 0.0
    registry = _registry()
    source, target = _UNITS[unit][1], _UNITS[to][1]
    if DIMENSION[unit] == "temperature":
        at_0 = registry.Quantity(0.0, source).to(target).magnitude
        at_100 = registry.Quantity(100.0, source).to(target).magnitude
        return (float(at_100) - float(at_0)) / 100.0, float(at_0)
    ratio = (1.0 * registry.parse_expression(source)) / registry.parse_expression(target)
    return float(ratio.to("").magnitude), 0.0


def warm() -> None:
    """Load pint now (about 160 ms). No answer needs it; a caller that converts other units may."""
    _registry()


def convert(value: float, unit: str, to: str) -> float:
    """A number in one of our units, in another of the same kind.

    Raises:
        KeyError: A unit is none of ours.
        ValueError: The two measure different things.

    >>> round(convert(300, "lps", "cfm"), 2)
    635.66
    >>> round(convert(26, "degc", "degf"), 1)
    78.8
    """
    if DIMENSION[unit] != DIMENSION[to] and not {DIMENSION[unit], DIMENSION[to]} <= {
        "pressure",
        "high_pressure",
    }:
        raise ValueError(f"{unit} does not convert to {to}")
    if unit == to:
        return value
    factor, offset = _line(unit, to)
    return value * factor + offset
