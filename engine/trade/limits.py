"""What the trade allows: speeds by role and material, and the single figures checks compare with.

Every figure carries its source. An office may turn any of them: `turned` gives a copy with one
figure replaced, and `turned_figures` tells which ones differ from the defaults.
"""

from dataclasses import dataclass, fields, replace
from enum import StrEnum
from math import inf
from typing import Any, Final

from engine.arrays import require_within
from engine.errors import FactError
from engine.trade.materials import Material, is_flexible

__all__ = [
    "LIMITS",
    "Limit",
    "Limits",
    "Role",
    "SpeedLimit",
    "turned",
    "turned_figures",
    "velocity_limits",
]


class Role(StrEnum):
    """What a piece of the system does."""

    SUPPLY_TRUNK = "supply_trunk"
    RISER = "riser"
    SUPPLY_BRANCH = "supply_branch"
    REGISTER = "register"
    RETURN_GRILLE = "return_grille"
    RETURN_BRANCH = "return_branch"
    RETURN_TRUNK = "return_trunk"
    RETURN_DROP = "return_drop"
    FILTER_GRILLE = "filter_grille"
    FILTER = "filter"


@dataclass(frozen=True, slots=True)
class Limit:
    """One figure and where it is from."""

    value: float
    unit: str
    source: str


@dataclass(frozen=True, slots=True)
class SpeedLimit:
    """Air speeds for one role; a speed equal to a limit passes.

    Attributes:
        recommended_fpm: Above it is a note.
        maximum_fpm: Above it is too fast. Infinite where a role has no limit of its own.
        source: Where the two are from.
    """

    recommended_fpm: float
    maximum_fpm: float
    source: str


_RESIDENTIAL: Final = "ANSI/ACCA 1 Manual D velocity table (memory)"
_OLD_TABLES: Final = (
    "500 / 650 to 800 fpm, older ASHRAE and system-design handbook tables (memory); 450 starting "
    "figure in a civil-engineering handbook (read)"
)
_GRILLE: Final = (
    "500 fpm contractor association's design figure, 600 end of a grille maker's range (read)"
)
_FILTER_GRILLE: Final = (
    "300 fpm contractor association's design figure, 450 end of a grille maker's range (read)"
)
_REGISTER: Final = (
    "500 fpm is NC 35 in a table of register speeds (read); 700 is the residential duct "
    "standard's end (memory)"
)
_CODE_FLOOR: Final = (
    "California energy code for altered ducts, as a contractor's page gives it (read)"
)
_WINDOW: Final = "Parker, Sherwin, Raustad, Shirey 1997, FSEC-PF-321-97 (read)"
_CP: Final = "common practice, no published source"
_JUDGED: Final = "this project's choice"


@dataclass(frozen=True, slots=True)
class Limits:
    """Every figure a check compares with. Turn one with `turned`, never by editing a check."""

    supply_trunk_rigid: SpeedLimit = SpeedLimit(700.0, 900.0, _RESIDENTIAL)
    supply_trunk_flex: SpeedLimit = SpeedLimit(600.0, 700.0, _RESIDENTIAL)
    riser_rigid: SpeedLimit = SpeedLimit(500.0, 800.0, _OLD_TABLES)
    riser_flex: SpeedLimit = SpeedLimit(500.0, 700.0, _OLD_TABLES)
    supply_branch_rigid: SpeedLimit = SpeedLimit(600.0, 900.0, _RESIDENTIAL)
    supply_branch_flex: SpeedLimit = SpeedLimit(600.0, 700.0, _RESIDENTIAL)
    register: SpeedLimit = SpeedLimit(500.0, 700.0, _REGISTER)
    return_grille: SpeedLimit = SpeedLimit(500.0, 600.0, _GRILLE)
    return_branch_rigid: SpeedLimit = SpeedLimit(400.0, 700.0, _RESIDENTIAL)
    return_branch_flex: SpeedLimit = SpeedLimit(400.0, 600.0, _RESIDENTIAL)
    return_trunk_rigid: SpeedLimit = SpeedLimit(600.0, 700.0, _RESIDENTIAL)
    return_trunk_flex: SpeedLimit = SpeedLimit(600.0, 700.0, _RESIDENTIAL)
    return_drop_rigid: SpeedLimit = SpeedLimit(600.0, 700.0, f"{_RESIDENTIAL}, as a return trunk")
    return_drop_flex: SpeedLimit = SpeedLimit(600.0, 700.0, f"{_RESIDENTIAL}, as a return trunk")
    filter_grille: SpeedLimit = SpeedLimit(300.0, 450.0, _FILTER_GRILLE)

    return_grille_advised_fpm: Limit = Limit(400.0, "fpm", "trade training article (read)")
    filter_1_in_note_fpm: Limit = Limit(
        300.0, "fpm", "2 CFM per square inch is 288 fpm, grille maker's data (read)"
    )
    filter_2_in_note_fpm: Limit = Limit(400.0, "fpm", _CP)
    filter_4_in_note_fpm: Limit = Limit(
        500.0, "fpm", "a 20x25x4 cabinet at 1,200 CFM is 346 fpm, trade article (read); 500 " + _CP
    )

    friction_rate_low_inwc_per_100ft: Limit = Limit(
        0.06, "in wc per 100 ft", "ANSI/ACCA 1 Manual D, usual window (memory)"
    )
    friction_rate_high_inwc_per_100ft: Limit = Limit(
        0.18, "in wc per 100 ft", "ANSI/ACCA 1 Manual D, usual window (memory)"
    )
    long_path_ft: Limit = Limit(500.0, "ft", "ANSI/ACCA 1 Manual D, effective length (memory)")
    aspect_ratio: Limit = Limit(4.0, "long side to short side", _CP)
    duct_board_static_inwc: Limit = Limit(0.5, "in wc", "fibrous glass duct classes (memory)")
    rated_static_furnace_inwc: Limit = Limit(0.50, "in wc", "usual nameplate figure (memory)")

    filter_drop_furnace_inwc: Limit = Limit(
        0.10, "in wc", "filter budget, trade article on duct renovation (read)"
    )
    filter_drop_air_handler_inwc: Limit = Limit(
        0.15, "in wc", "filter budget, trade article on duct renovation (read)"
    )
    filter_drop_share: Limit = Limit(0.20, "of the rated static", _CP)
    coil_drop_share: Limit = Limit(0.40, "of the rated static", _CP)
    supply_drop_share: Limit = Limit(0.20, "of the rated static", _CP)
    strip_drop_share: Limit = Limit(
        0.15, "of the rated static", f"0.07 of 0.50 in. w.c. (memory); {_CP}"
    )
    return_drop_share: Limit = Limit(0.20, "of the rated static", _CP)
    filter_drop_most_inwc: Limit = Limit(0.38, "in wc", f"one house in ten is above: {_CP}")

    cooling_low_cfm_per_ton: Limit = Limit(350.0, "CFM per ton", _WINDOW)
    cooling_high_cfm_per_ton: Limit = Limit(450.0, "CFM per ton", _WINDOW)
    cooling_floor_cfm_per_ton: Limit = Limit(300.0, "CFM per ton", _CODE_FLOOR)
    cooling_default_cfm_per_ton: Limit = Limit(400.0, "CFM per ton", "usual target (memory)")
    delivered_over_share: Limit = Limit(
        0.85, "of target", "ANSI/ACCA 5 QI, airflow within 15 % of design (memory)"
    )
    delivered_tight_share: Limit = Limit(0.95, "of target", _JUDGED)
    delivered_much_share: Limit = Limit(
        1.15, "of target", "ANSI/ACCA 5 QI, airflow within 15 % of design (memory)"
    )
    sensible_over_share: Limit = Limit(
        0.90, "of the sensible gain", "ANSI/ACCA 3 Manual S, 2014 (memory)"
    )
    sensible_tight_share: Limit = Limit(1.00, "of the sensible gain", _JUDGED)
    cooling_oversize_share: Limit = Limit(
        1.15, "of the total gain", "ENERGY STAR rater checklist v3, single speed (read)"
    )
    heating_oversize_share: Limit = Limit(
        1.40, "of the heat loss", "ANSI/ACCA 3 Manual S, as two summaries give it (read)"
    )
    leakage_share: Limit = Limit(
        0.11, "of airflow, each side", "2021 ASHRAE Handbook-Fundamentals ch. 17, typical (read)"
    )


LIMITS: Final = Limits()
"""The trade's figures, none turned."""

_BY_ROLE: Final = {
    Role.SUPPLY_TRUNK: "supply_trunk",
    Role.RISER: "riser",
    Role.SUPPLY_BRANCH: "supply_branch",
    Role.RETURN_BRANCH: "return_branch",
    Role.RETURN_TRUNK: "return_trunk",
    Role.RETURN_DROP: "return_drop",
}
_OPENINGS: Final = {
    Role.REGISTER: "register",
    Role.RETURN_GRILLE: "return_grille",
    Role.FILTER_GRILLE: "filter_grille",
}
_NO_LIMIT: Final = SpeedLimit(
    inf, inf, "a filter in a cabinet is judged by its drop, not by its face speed"
)


def velocity_limits(
    role: Role, material: Material = Material.GALVANIZED, limits: Limits = LIMITS
) -> SpeedLimit:
    """Recommended and largest air speed of a role.

    Args:
        role: What the piece does.
        material: What it is made of; openings ignore it. Duct board and lined metal count as bare
            metal (memory low: whether the standard groups them so is not certain).
        limits: The office's figures.

    Returns:
        The two speeds and their source; infinite for a filter in a cabinet, which has no speed
        limit of its own.

    >>> velocity_limits(Role.SUPPLY_TRUNK, Material.FLEX).maximum_fpm
    700.0
    """
    if role is Role.FILTER:
        return _NO_LIMIT
    if role in _OPENINGS:
        name = _OPENINGS[role]
    else:
        name = f"{_BY_ROLE[role]}_{'flex' if is_flexible(material) else 'rigid'}"
    found: SpeedLimit = getattr(limits, name)
    return found


def turned(limits: Limits, name: str, value: float, source: str) -> Limits:
    """A copy with one figure replaced.

    Args:
        limits: The figures so far.
        name: A field of `Limits`, or for speeds "field.recommended_fpm" or "field.maximum_fpm".
        value: The new figure, in the field's unit, above 0.
        source: Whose figure it is.

    Raises:
        FactError: No such figure, or a recommended speed above the largest.
        OutOfRangeError: The value isn't above 0, or NaN.

    >>> turned(LIMITS, "supply_trunk_rigid.maximum_fpm", 1000, "our office").supply_trunk_rigid
    SpeedLimit(recommended_fpm=700.0, maximum_fpm=1000.0, source='our office')
    """
    field_name, _, part = name.partition(".")
    key = f"limits.{name}"
    if field_name not in {field.name for field in fields(Limits)}:
        raise FactError(key, "no such limit")
    require_within(key, value, 1e-6, 1e6)
    old: Limit | SpeedLimit = getattr(limits, field_name)
    new: Limit | SpeedLimit
    if isinstance(old, Limit):
        if part:
            raise FactError(key, f"give {field_name} alone")
        new = replace(old, value=float(value), source=source)
    else:
        if part == "recommended_fpm":
            new = replace(old, recommended_fpm=float(value), source=source)
        elif part == "maximum_fpm":
            new = replace(old, maximum_fpm=float(value), source=source)
        else:
            raise FactError(key, f"say {field_name}.recommended_fpm or {field_name}.maximum_fpm")
        if new.recommended_fpm > new.maximum_fpm:
            raise FactError(
                key,
                f"recommended {new.recommended_fpm:,g} fpm would be above the largest, "
                f"{new.maximum_fpm:,g}; turn both",
            )
    change: dict[str, Any] = {field_name: new}
    return replace(limits, **change)


def turned_figures(limits: Limits) -> tuple[str, ...]:
    """Names of the figures that differ from the defaults, in the order of `Limits`.

    >>> turned_figures(turned(LIMITS, "long_path_ft", 450, "our office"))
    ('long_path_ft',)
    """
    return tuple(
        field.name
        for field in fields(Limits)
        if getattr(limits, field.name) != getattr(LIMITS, field.name)
    )
