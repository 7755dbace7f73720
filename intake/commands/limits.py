"""`trunktalk limits`, and limits that an office turns: `trunktalk judge --limit NAME=VALUE`."""

import json
from collections.abc import Iterable, Iterator
from dataclasses import fields

from engine.trade.limits import LIMITS, Limit, Limits, SpeedLimit, turned
from intake.commands.told import ToldError

__all__ = ["limits_json", "limits_text", "turned_by"]

OFFICE = "your office's own figure"


def limits_text() -> str:
    """Every limit with its figure and source, for a person."""
    return "".join(
        f"{name}  {value:,.10g} {unit}\n  {source}\n" for name, value, unit, source in _rows()
    )


def limits_json() -> str:
    """The same as a JSON list of objects."""
    rows = [
        {"name": name, "value": value, "unit": unit, "source": source}
        for name, value, unit, source in _rows()
    ]
    return json.dumps(rows, indent=2, allow_nan=False) + "\n"


def turned_by(options: Iterable[str]) -> Limits:
    """The trade's limits with some turned.

    Args:
        options: NAME=VALUE each.

    Raises:
        ToldError: One has not that form.
        EngineError: No such limit, or an impossible figure.
    """
    limits = LIMITS
    for option in options:
        name, equals, value = option.partition("=")
        try:
            figure = float(value)
        except ValueError:
            equals = ""
            figure = 0.0
        if not equals:
            raise ToldError(
                f"{option!r} turns no limit: give NAME=NUMBER, as in "
                "supply_trunk_rigid.maximum_fpm=800; `trunktalk limits` lists the names."
            )
        limits = turned(limits, name.strip().removeprefix("limits."), figure, OFFICE)
    return limits


def _rows() -> Iterator[tuple[str, float, str, str]]:
    for field in fields(LIMITS):
        limit: Limit | SpeedLimit = getattr(LIMITS, field.name)
        if isinstance(limit, Limit):
            yield field.name, limit.value, limit.unit, limit.source
        else:
            yield f"{field.name}.recommended_fpm", limit.recommended_fpm, "fpm", limit.source
            yield f"{field.name}.maximum_fpm", limit.maximum_fpm, "fpm", limit.source
