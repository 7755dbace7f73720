"""Figures for people: rounded as the trade says them, with their unit.

Rounding never moves a figure to the other side of a limit it is compared with: 904 fpm against a
most of 900 is told as 904, not as 900. Knows nothing of verdicts.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from math import ceil, floor, isfinite, log10
from types import MappingProxyType
from typing import Final

from engine.errors import EngineError

__all__ = [
    "cfm",
    "count_of",
    "exactly",
    "fpm",
    "hours",
    "in_how_many",
    "inwc",
    "odds",
    "per_cent",
    "quantity",
    "spread",
    "sure",
    "tons",
    "turning",
]


@dataclass(frozen=True, slots=True)
class _Style:
    """How one unit is written: the roundings to try, coarsest first, and the words after it."""

    steps: tuple[float, ...]
    after: str
    factor: float = 1.0
    singular: str = ""


_QUARTER: Final = 0.25
_GAUGE_STEPS: Final = (0.01, 0.001, 0.0001)

_CFM: Final = _Style((5.0, 1.0, 0.1), " CFM")
_FPM: Final = _Style((10.0, 1.0, 0.1), " fpm")
_INWC: Final = _Style((0.01, 0.001, 0.0001), " in. w.c.")
_FRICTION: Final = _Style((0.001, 0.0001), " in. w.c. per 100 ft")
_DEGF: Final = _Style((1.0, 0.1), " °F")
_FEET: Final = _Style((1.0, 0.1), " ft")
_INCHES: Final = _Style((_QUARTER, 0.05), " in.")
_TONS: Final = _Style((0.1, 0.01), " tons", singular=" ton")
_SHARE: Final = _Style((1.0, 0.1), "%", factor=100.0)
_PER_CENT: Final = _Style((1.0, 0.1), "%")
_BTUH: Final = _Style((100.0, 1.0), " Btu/h")
_CFM_PER_TON: Final = _Style((5.0, 1.0, 0.1), " CFM per ton")

_STYLES: Final = MappingProxyType(
    {
        "cfm": _CFM,
        "fpm": _FPM,
        "in wc": _INWC,
        "in wc per 100 ft": _FRICTION,
        "f": _DEGF,
        "degf": _DEGF,
        "°f": _DEGF,
        "ft": _FEET,
        "ft2": _Style((10.0, 1.0, 0.1), " ft²"),
        "in": _INCHES,
        "in2": _Style((1.0, 0.1), " sq in."),
        "tons": _TONS,
        "ton": _TONS,
        "share": _SHARE,
        "%": _PER_CENT,
        "btu/h": _BTUH,
        "btuh": _BTUH,
        "kw": _Style((0.1, 0.01), " kW"),
        "cfm per ton": _CFM_PER_TON,
        "cfm/ton": _CFM_PER_TON,
        "count": _Style((1.0,), ""),
        "ppm": _Style((1.0,), " ppm"),
        "nc": _Style((1.0,), " NC"),
        "db": _Style((1.0,), " dB"),
        "long side to short side": _Style((0.1, 0.01), " to 1"),
        "to 1": _Style((0.1, 0.01), " to 1"),
    }
)
"""By unit in lower case without dots."""


def quantity(value: float, unit: str, against: Iterable[float | None] = ()) -> str:
    """A figure with its unit, as the trade says it.

    Args:
        value: The figure, in `unit`.
        unit: "CFM", "fpm", "in. w.c.", "in wc per 100 ft", "F", "ft", "in", "tons", "share" (of
            one), "of target" (of one), "%", "Btu/h" and the like, in any spelling of the engine.
            Another unit is written as it is.
        against: Figures it will stand beside; rounding keeps it on its side of each.

    Raises:
        EngineError: The figure isn't finite.

    >>> quantity(1083.7, "fpm"), quantity(904.0, "fpm", (900.0,)), quantity(0.5, "in. w.c.")
    ('1,080 fpm', '904 fpm', '0.50 in. w.c.')
    """
    if not isfinite(value):
        raise EngineError(f"a figure for a person must be finite, not {value}")
    style = _style(unit)
    if style is None:
        return f"{value:,.3g} {unit}".rstrip() if abs(value) < 1000.0 else f"{value:,.0f} {unit}"
    shown = value * style.factor
    limits = [one * style.factor for one in against if one is not None and isfinite(one)]
    far = style is _FEET and abs(value) >= 1000.0
    text = _rounded(shown, (10.0, *style.steps) if far else style.steps, limits)
    return text + (style.singular if style.singular and text == "1" else style.after)


def _style(unit: str) -> _Style | None:
    plain = unit.lower().replace(".", "").strip()
    found = _STYLES.get(plain)
    if found is None and plain.startswith("of "):
        return _Style(_SHARE.steps, f"% {plain}", _SHARE.factor)
    return found


def _rounded(value: float, steps: tuple[float, ...], limits: list[float]) -> str:
    finer = tuple(steps[-1] / 10.0**power for power in (1, 2, 3))
    for step in (*steps, *finer):
        near = round(value / step) * step
        vanished = near == 0.0 and abs(value) > step / 100.0
        if not vanished and all(_side(near, one) == _side(value, one) for one in limits):
            return _digits(near, step)
    return f"{value:,.6g}"


def _side(value: float, limit: float) -> int:
    slack = 1e-6 * abs(limit)
    return (value > limit + slack) - (value < limit - slack)


def _digits(value: float, step: float) -> str:
    if step >= 1.0:
        return f"{round(value):,d}"
    places = 2 if step == _QUARTER else max(1, -floor(log10(step) + 1e-9))
    text = f"{value:,.{places}f}"
    # Pressures keep their zeros (0.50 is how a gauge is read); sizes and tons do not.
    return text if step in _GAUGE_STEPS else text.rstrip("0").rstrip(".")


def exactly(value: float, unit: str) -> str:
    """A figure as it was given, to six digits, with its unit; nothing is rounded for reading.

    >>> exactly(1083.0, "CFM"), exactly(0.3, "in. w.c."), exactly(13.3, "in")
    ('1,083 CFM', '0.30 in. w.c.', '13.3 in.')
    """
    style = _style(unit)
    if style is None:
        return f"{value:,.6g} {unit}".rstrip()
    text = f"{float(f'{value * style.factor:.6g}'):,.10f}".rstrip("0").rstrip(".")
    whole, _, digits = text.partition(".")
    if style.steps[0] == _GAUGE_STEPS[0]:
        text = f"{whole}.{digits.ljust(2, '0')}"
    return text + (style.singular if style.singular and text == "1" else style.after)


def cfm(value: float, against: Iterable[float | None] = ()) -> str:
    """An airflow to the nearest 5 CFM.

    >>> cfm(1398.6)
    '1,400 CFM'
    """
    return quantity(value, "CFM", against)


def fpm(value: float, against: Iterable[float | None] = ()) -> str:
    """A speed to the nearest 10 fpm."""
    return quantity(value, "fpm", against)


def inwc(value: float, against: Iterable[float | None] = ()) -> str:
    """A pressure to two decimals, in. w.c."""
    return quantity(value, "in wc", against)


def tons(value: float) -> str:
    """A cooling size to a tenth of a ton.

    >>> tons(3.0), tons(2.46), tons(1.0)
    ('3 tons', '2.5 tons', '1 ton')
    """
    return quantity(value, "tons")


def per_cent(share: float) -> str:
    """A share of one as whole per cent.

    >>> per_cent(0.273)
    '27%'
    """
    return quantity(share, "share")


_ODDS: Final = (
    (0.995, "all but certain"),
    (0.975, "more than 19 in 20"),
    (0.935, "19 in 20"),
    (0.85, "nine in ten"),
    (0.75, "eight in ten"),
    (0.65, "seven in ten"),
    (0.55, "six in ten"),
    (0.45, "five in ten"),
    (0.35, "four in ten"),
    (0.25, "three in ten"),
    (0.15, "two in ten"),
    (0.065, "one in ten"),
    (0.025, "one in 20"),
    (0.005, "less than one in 20"),
    (0.0, "next to none"),
)


def odds(share: float) -> str:
    """A probability as people say it.

    Raises:
        EngineError: It isn't a share of one.

    >>> odds(0.91), odds(0.97), odds(0.5), odds(0.001)
    ('nine in ten', '19 in 20', 'five in ten', 'next to none')
    """
    if not -1e-9 <= share <= 1.0 + 1e-9:
        raise EngineError(f"a probability lies between 0 and 1, not {share}")
    return next((words for least, words in _ODDS if share >= least), _ODDS[-1][1])


def in_how_many(share: float) -> str:
    """A share of the houses that fit what was told, as "in ... of the houses" takes it.

    >>> in_how_many(0.6), in_how_many(0.999)
    ('six in ten', 'nearly all')
    """
    if share >= _ODDS[0][0]:
        return "nearly all"
    return "hardly any" if share < 0.005 else odds(share)


def sure(confidence: float) -> str:
    """How sure something is.

    >>> sure(0.91), sure(0.999)
    ('nine in ten sure', 'all but certain')
    """
    words = odds(confidence)
    return words if confidence >= _ODDS[0][0] else f"{words} sure"


def hours(effort_hours: tuple[float, float]) -> str:
    """Effort, from low to high, in the words of a schedule.

    >>> hours((0.25, 0.5)), hours((1.0, 2.0)), hours((8.0, 16.0)), hours((0.0, 0.0))
    ('15 to 30 minutes', '1 to 2 hours', '8 to 16 hours', 'no extra time')
    """
    low, high = effort_hours
    if high <= 0.0:
        return "no extra time"
    if high < 1.0:
        return f"{_between(5.0 * round(12.0 * low), 5.0 * round(12.0 * high))} minutes"
    low, high = (round(2.0 * one) / 2.0 for one in (low, high))
    return f"{_between(low, high)} {'hour' if low == high == 1.0 else 'hours'}"


def _between(low: float, high: float) -> str:
    return f"{low:g}" if low == high else f"{low:g} to {high:g}"


def spread(low: float, likely: float, high: float, unit: str) -> str:
    """A range with its middle; one figure where rounding leaves no range.

    >>> spread(1051.0, 1190.0, 1322.0, "CFM"), spread(900.0, 901.0, 902.0, "CFM")
    ('1,190 CFM (1,050 to 1,320)', '900 CFM')
    """
    middle, least, most = (quantity(one, unit) for one in (likely, low, high))
    if least == most:
        return middle
    after = _style(unit)
    bare = after.after if after else f" {unit}"
    return f"{middle} ({least.removesuffix(bare)} to {most.removesuffix(bare)})"


def turning(value: float, holds_while: str, unit: str, factor: float = 1.0) -> str:
    """A turning point, rounded to the safe side: "at least" goes up, "at most" goes down.

    Args:
        value: Where it turns, in `unit`.
        holds_while: "at least" or "at most".
        unit: As for `quantity`.
        factor: How much coarser than the unit's own rounding.

    >>> turning(13.62, "at least", "in"), turning(13.62, "at most", "in")
    ('13.75 in.', '13.5 in.')
    """
    style = _style(unit)
    if style is None:
        return quantity(value, unit)
    step = style.steps[0] * factor
    towards = ceil if holds_while == "at least" else floor
    steps = towards(value * style.factor / step - (1e-9 if towards is ceil else -1e-9))
    return quantity(steps * step / style.factor, unit)


def count_of(number: float, one: str, many: str = "") -> str:
    """A count with its noun.

    >>> count_of(1, "elbow"), count_of(3, "return grille"), count_of(2, "branch", "branches")
    ('1 elbow', '3 return grilles', '2 branches')
    """
    whole = round(number)
    return f"{whole:,} {one if whole == 1 else many or one + 's'}"
