"""Values in the normal form in which they are echoed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

__all__ = ["echo", "figure"]


def figure(value: float, decimals: int = 2) -> str:
    """A number without needless zeros, thousands separated.

    >>> figure(1200.0), figure(11.25), figure(0.4)
    ('1,200', '11.25', '0.4')
    """
    text = f"{value:,.{decimals}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


_MATERIAL_WORDS: Final = {
    "galvanized": "galvanized",
    "flex": "flex",
    "duct_board": "duct board",
    "lined_metal": "lined metal",
    "panned_joist": "panned joist",
    "stud_bay": "stud bay",
    "aluminum": "aluminum",
    "pvc": "PVC",
}

_CHOICE_WORDS: Final = {
    **_MATERIAL_WORDS,
    "psc": "standard motor (PSC)",
    "ecm_constant_torque": "constant torque (ECM)",
    "ecm_variable": "variable speed, constant airflow (ECM)",
    "other": "another kind",
    "clean": "clean",
    "some_dirt": "some dirt",
    "plugged": "plugged",
}


def echo(field: str, values: Mapping[str, Any]) -> str:
    """The normal form of what was read, with its units.

    >>> echo("static_pressure", {"inwc": 0.4})
    '0.40 in. w.c.'
    >>> echo("airflow", {"cfm": 1200})
    '1,200 CFM'
    """
    if "command" in values:
        text = values.get("value_text")
        return f"{values['command']}" + (f": {text}" if text else "")
    teller = _TELLERS.get(field)
    if teller is not None and (told := teller(values)):
        return told
    return ", ".join(f"{name} {_plain(value)}" for name, value in values.items())


def _plain(value: Any) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, int | float):
        return figure(float(value))
    return str(value).replace("_", " ")


def _duct(v: Mapping[str, Any]) -> str:
    parts = []
    if "diameter_in" in v:
        parts.append(f"{figure(v['diameter_in'])} in. round")
    elif "width_in" in v and "height_in" in v:
        oval = " oval" if v.get("shape") == "oval" else ""
        parts.append(f"{figure(v['width_in'])} x {figure(v['height_in'])} in.{oval}")
    if "material" in v:
        parts.append(_MATERIAL_WORDS.get(v["material"], str(v["material"])))
    told = " ".join(parts)
    if v.get("count", 1) != 1:
        told = f"{v['count']} of {told}"
    if "length_ft" in v:
        told += f", {figure(v['length_ft'])} ft"
    return told


def _range(v: Mapping[str, Any], name: str, unit: str, decimals: int) -> str:
    if name in v:
        return f"{_fixed(v[name], decimals)} {unit}"
    if f"{name}_low" in v:
        return (
            f"{_fixed(v[f'{name}_low'], decimals)} to {_fixed(v[f'{name}_high'], decimals)} {unit}"
        )
    return ""


def _fixed(value: float, decimals: int) -> str:
    return f"{value:,.{decimals}f}" if decimals else figure(value, 1)


def _static(v: Mapping[str, Any]) -> str:
    single = _range(v, "inwc", "in. w.c.", 2)
    if single:
        return {-1: "-", 1: "+"}.get(v.get("sign", 0), "") + single
    names = (("return", "return"), ("supply", "supply"), ("total", "total"))
    parts = [f"{word} {v[f'{key}_inwc']:.2f}" for key, word in names if f"{key}_inwc" in v]
    return ", ".join(parts) + " in. w.c." if parts else ""


def _temperature(v: Mapping[str, Any]) -> str:
    parts = []
    if "degF" in v:
        parts.append(f"{figure(v['degF'], 1)} °F")
    if "delta_degF" in v:
        parts.append(f"{figure(v['delta_degF'], 1)} °F difference")
    parts += [
        f"{key} {figure(v[f'{key}_degF'], 1)} °F"
        for key in ("return", "supply")
        if f"{key}_degF" in v
    ]
    return ", ".join(parts)


def _capacity(v: Mapping[str, Any]) -> str:
    parts = []
    if "btuh" in v:
        parts.append(f"{figure(v['btuh'], 0)} BTU/h")
    parts += [
        f"{figure(v[f'{key}_btuh'], 0)} BTU/h {key}"
        for key in ("input", "output")
        if f"{key}_btuh" in v
    ]
    if "efficiency" in v:
        parts.append(f"{figure(100 * v['efficiency'], 1)} % efficient")
    return ", ".join(parts)


def _filter(v: Mapping[str, Any]) -> str:
    sides = [figure(v[name]) for name in ("width_in", "height_in", "depth_in") if name in v]
    told = " x ".join(sides) + " in." if sides else ""
    if v.get("count", 1) != 1:
        told = f"{v['count']} of {told}"
    return told + (f", MERV {figure(v['merv'])}" if "merv" in v else "")


def _grille(v: Mapping[str, Any]) -> str:
    if "grilles" in v:
        return " and ".join(_grille(row) for row in v["grilles"])
    if "width_in" not in v:
        return ""
    told = f"{figure(v['width_in'])} x {figure(v['height_in'])} in."
    return f"{v['count']} of {told}" if v.get("count", 1) != 1 else told


def _yes_no(v: Mapping[str, Any]) -> str:
    return ("yes" if v.get("yes") else "no") + (", not sure" if v.get("sure") is False else "")


def _choice(v: Mapping[str, Any]) -> str:
    value = str(v.get("choice", ""))
    return _CHOICE_WORDS.get(value, value.replace("_", " "))


def _fittings(v: Mapping[str, Any]) -> str:
    return ", ".join(
        f"{row['count']} {str(row['kind']).replace('_', ' ')}" for row in v.get("fittings", [])
    )


def _rows(v: Mapping[str, Any]) -> str:
    tables = v.get("blower_tables") or []
    if tables:
        return "; ".join(
            f"{t.get('setting') or 'one setting'}: "
            + ", ".join(f"{r['airflow_cfm']:,.0f} CFM at {r['static_inwc']:.2f}" for r in t["rows"])
            for t in tables
        )
    return "; ".join(
        f"{r['airflow_cfm']:,.0f} CFM, total {r['total_btuh']:,.0f},"
        f" sensible {r['sensible_btuh']:,.0f} BTU/h"
        for r in v.get("cooling_rows", [])
    )


_TELLERS: Final = {
    "duct": _duct,
    "airflow": lambda v: _range(v, "cfm", "CFM", 0),
    "static_pressure": _static,
    "length": lambda v: _range(v, "ft", "ft", 0),
    "elevation": lambda v: _range(v, "ft", "ft", 0),
    "area": lambda v: _range(v, "area_ft2", "ft2", 0),
    "temperature": _temperature,
    "capacity": _capacity,
    "efficiency": lambda v: f"{figure(100 * v['fraction'], 1)} %" if "fraction" in v else "",
    "percent": lambda v: f"{figure(v['percent'], 1)} %" if "percent" in v else "",
    "filter": _filter,
    "grille": _grille,
    "yes_no": _yes_no,
    "material": _choice,
    "blower_type": _choice,
    "coil_state": _choice,
    "choice": _choice,
    "count": lambda v: str(v["count"]) if "count" in v else "",
    "year": lambda v: str(v["year"]) if "year" in v else "",
    "text": lambda v: str(v.get("text", "")),
    "rise_range": lambda v: (
        f"{figure(v['rise_low_degf'])} to {figure(v['rise_high_degf'])} °F"
        if "rise_low_degf" in v
        else ""
    ),
    "fittings": _fittings,
    "blower_table": _rows,
    "cooling_rows": _rows,
}
