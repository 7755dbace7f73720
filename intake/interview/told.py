"""Facts in the normal form in which they are echoed: what was taken, said once, with its units."""

import re
from collections import Counter
from collections.abc import Mapping
from typing import Final

from engine.job.belief import Belief, Between, How, Known, OneOf, likely_value
from engine.job.facts import Quantity, fact_for
from engine.job.job import BlowerSetting, CoolingRow
from intake.reading.echo import figure
from intake.telling.names import fact_words, value_words

__all__ = ["figure", "sentence", "told", "told_facts"]

_ENTRY: Final = re.compile(r"^(?P<entry>[a-z.]+\.\d+)\.(?P<name>\w+)$")
_SIZED: Final = ("width_in", "height_in", "diameter_in", "depth_in")

_AFTER: Final = (
    "liner_in", "length_ft", "share_fraction", "slack_fraction", "merv", "place", "kind",
)  # fmt: skip
"""What is told of an entry after its size."""

_SHORT: Final[Mapping[str, str]] = {
    "equipment.kind": "{}",
    "equipment.cooling_tons": "{}",
    "equipment.stages": "{} stage",
    "equipment.heating_input_btuh": "{} in",
    "equipment.heating_low_input_btuh": "{} in at low fire",
    "equipment.heating_output_btuh": "{} out",
    "equipment.heating_efficiency_fraction": "{} efficient",
    "equipment.strip_kw": "{}",
    "equipment.strip_minimum_cfm": "at least {}",
    "new.coil_drop_inwc": "{}",
    "new.filter_drop_inwc": "{}",
    "new.coil_drop_at_cfm": "at {}",
    "new.filter_drop_at_cfm": "at {}",
    "target.cooling_high_cfm": "{} in full cooling",
    "site.has_tape": "tape",
    "site.has_gauge": "gauge",
    "site.has_probes": "probes",
    "site.has_flow_plate": "flow plate",
    "condition.coil": "coil {}",
    "condition.blower_wheel": "blower wheel {}",
    "condition.filter": "filter {}",
}
"""Facts that are told in one breath with others."""

_TAPED: Final[Mapping[str, str]] = {
    "bare_metal": "outside, on the metal",
    "inside": "clear inside",
    "outside_of_liner": "outside, liner or board not taken off",
    "over_wrap": "over the wrap",
    "hole": "at the hole",
    "frame": "at the frame",
    "flex_core": "at the inner core",
    "flex_jacket": "over the jacket",
}
"""Where the tape was held."""

_READINGS: Final[Mapping[str, str]] = {
    "after_filter_inwc": "return after the filter {}",
    "before_filter_inwc": "return before the filter {}",
    "before_coil_inwc": "supply before the coil {}",
    "after_coil_inwc": "supply after the coil {}",
    "total_external_inwc": "total external {}",
    "mode": "{}",
    "return_degf": "return {}",
    "supply_degf": "supply {}",
}


def sentence(words: str) -> str:
    """The words with one full stop at their end.

    >>> sentence("Filter: 16 x 25 x 1 in.")
    'Filter: 16 x 25 x 1 in.'
    """
    return words if words.endswith(".") else f"{words}."


def told(
    beliefs: Mapping[str, Belief],
    lengths: Mapping[str, int] | None = None,
    blower: tuple[BlowerSetting, ...] | None = None,
    cooling_rows: tuple[CoolingRow, ...] | None = None,
) -> str:
    """What an answer states, in normal form; empty if it states nothing that is told.

    >>> from engine.job.belief import How
    >>> told({"path.supply_length_ft": Known(42.0, How.MEASURED)})
    '42 ft'
    """
    parts = [*told_facts(beliefs)]
    parts += [f"no {fact_words(f'{name}.0')}" for name, n in (lengths or {}).items() if not n]
    for setting in blower or ():
        table = setting.table
        rows = zip(table.static_inwc, table.airflow_cfm, strict=True)
        shown = ", ".join(f"{flow:,.0f} CFM at {static:.2f}" for static, flow in rows)
        parts.append(f"{table.setting}: {shown} in. w.c.")
    for row in cooling_rows or ():
        parts.append(
            f"{row.airflow_cfm:,.0f} CFM: {row.total_btuh:,.0f} BTU/h total,"
            f" {row.sensible_btuh:,.0f} sensible"
        )
    return ", ".join(
        f"{times} of {part}" if times > 1 and part[0].isdigit() else part
        for part, times in Counter(parts).items()
    )


def told_facts(beliefs: Mapping[str, Belief]) -> list[str]:
    """Each thing that the beliefs state: one entry of a list, or one plain fact."""
    entries: dict[str, dict[str, Belief]] = {}
    plain: dict[str, Belief] = {}
    for key, belief in beliefs.items():
        match = _ENTRY.match(key)
        if match and not key.startswith("readings"):
            entries.setdefault(match["entry"], {})[match["name"]] = belief
        else:
            plain[key] = belief
    parts = [_entry(entry, fields) for entry, fields in entries.items()]
    return [part for part in (*parts, *_plain(plain)) if part]


def _entry(entry: str, fields: Mapping[str, Belief]) -> str:
    """One duct, filter, opening or fitting."""
    if "kind" in fields and entry.startswith("path.fittings"):
        pieces = _number(fields.get("count")) or 1.0
        return f"{pieces:g} {value_words(f'{entry}.kind', likely_value(fields['kind']))}"
    sides = _sides(fields)
    words: list[str] = []
    if _assumed(fields.get("width_in")):
        return _of_assumed_size(fields, sides)
    if "diameter_in" in fields:
        words.append(f"{sides[0]} in. round")
    elif "width_in" in fields:
        words.append(" x ".join(sides) + (" in. oval" if _is(fields, "shape", "oval") else " in."))
    elif "depth_in" in fields:
        words.append(f"{sides[0]} in. thick")
    if "material" in fields:
        words.append(_material(fields))
    size = " ".join(words)
    count = _number(fields.get("count"))
    if count is not None and count != 1:
        size = f"{count:g} of {size}" if size else f"{count:g}"
    elif count is not None and not size:
        size = "1"
    rest = [size] if size else []
    if "measured_where" in fields and not _bare(fields):
        where = str(likely_value(fields["measured_where"]))
        rest.append(f"{'measured ' if size else ''}{_TAPED.get(where, where)}")
    rest += [_field(f"{entry}.{name}", name, fields[name]) for name in _AFTER if name in fields]
    told_size = ", ".join(rest)
    if not told_size or not _any_hedged(fields):
        return told_size
    return f"about {told_size}" if told_size[0].isdigit() else f"{told_size}, not sure"


def _assumed(belief: Belief | None) -> bool:
    return belief is not None and belief.how is How.ASSUMED


def _of_assumed_size(fields: Mapping[str, Belief], sides: list[str]) -> str:
    """A bay told by its name: its size is the usual one until somebody tapes it."""
    counted = None if _assumed(fields.get("count")) else _number(fields.get("count"))
    many = "" if counted is None or counted == 1 else f"{counted:g} of "
    hedged = ", not sure" if _any_hedged(fields) else ""
    size = " x ".join(sides)
    return f"{many}{_material(fields)}{hedged}; taken as the usual {size} in. until it is taped"


def _sides(fields: Mapping[str, Belief]) -> list[str]:
    numbers = [_number(fields.get(name)) for name in _SIZED]
    return [figure(number) for number in numbers if number is not None]


def _field(key: str, name: str, belief: Belief) -> str:
    value = _value(key, belief)
    return {
        "liner_in": f"{value} of liner or board",
        "length_ft": f"{value} long",
        "share_fraction": f"{value} of the air",
        "slack_fraction": f"{value} slack",
        "merv": f"MERV {value}",
        "place": f"in the {value}",
    }.get(name, value)


def _material(fields: Mapping[str, Belief]) -> str:
    word = str(likely_value(fields["material"]))
    if _bare(fields):
        return "bare metal"
    return word.replace("_", " ").replace("galvanized", "sheet metal")


def _bare(fields: Mapping[str, Belief]) -> bool:
    return _is(fields, "measured_where", "bare_metal") and _is(fields, "material", "galvanized")


def _is(fields: Mapping[str, Belief], name: str, word: str) -> bool:
    return name in fields and likely_value(fields[name]) == word


def _any_hedged(fields: Mapping[str, Belief]) -> bool:
    return any(isinstance(b, Known) and b.hedged for b in fields.values())


def _number(belief: Belief | None) -> float | None:
    if belief is None:
        return None
    value = likely_value(belief)
    return None if isinstance(value, str) else float(value)


def _plain(beliefs: Mapping[str, Belief]) -> list[str]:
    keys = list(beliefs)
    rise = ("equipment.rise_low_degf", "equipment.rise_high_degf")
    if all(key in beliefs for key in rise):
        low, high = (_number(beliefs[key]) for key in rise)
        return [f"{low:g} to {high:g} F", *_plain({k: beliefs[k] for k in keys if k not in rise})]
    yes_no = {str(likely_value(beliefs[key])) for key in keys}
    if len(keys) > 1 and yes_no == {"no"} and not keys[0].startswith("site.has_"):
        return ["no"]
    if keys and all(key.startswith("site.has_") for key in keys):
        return [_tools(beliefs)]
    return [_one(key, belief, alone=len(keys) == 1) for key, belief in beliefs.items()]


def _tools(beliefs: Mapping[str, Belief]) -> str:
    has = [_SHORT[key] for key, b in beliefs.items() if likely_value(b) == "yes"]
    lacks = [_SHORT[key] for key, b in beliefs.items() if likely_value(b) == "no"]
    parts = [", ".join(has)] if has else []
    parts += [f"no {', no '.join(lacks)}"] if lacks else []
    return "; ".join(parts)


def _one(key: str, belief: Belief, *, alone: bool) -> str:
    value = _value(key, belief)
    if isinstance(belief, Known) and belief.hedged:
        worded = isinstance(belief.value, str)
        value = f"{value}, not sure" if worded else f"about {value}"
    name = key.rsplit(".", 1)[-1]
    if key.startswith("readings") and name in _READINGS:
        return _READINGS[name].format(value)
    short = _SHORT.get(key.replace("old.", "equipment.", 1) if key.startswith("old.") else key)
    if key.endswith(".stages") and value.startswith("variable"):
        return value.replace("variable", "variable speed")
    if key.endswith(".stages") and value.endswith(", not sure"):
        return f"{value.removesuffix(', not sure')} stage, not sure"
    if short is not None and not (alone and key.startswith("target.")):
        return short.format(value)
    return value if alone else f"{fact_words(key)}: {value}"


def _value(key: str, belief: Belief) -> str:
    if key.endswith("_outside_rating"):
        sure = ", not sure" if isinstance(belief, OneOf) else ""
        return ("not in it" if likely_value(belief) == "yes" else "in it") + sure
    match belief:
        case Between(low=low, high=high) if low != high:
            return f"{_written(key, low)} to {_written(key, high)}"
        case OneOf():
            return f"{_written(key, likely_value(belief))}, not sure"
        case _:
            return _written(key, likely_value(belief))


_UNITS: Final[Mapping[str, str]] = {"Btu/h": "BTU/h", "in": "in.", "ft2": "sq ft"}


def _written(key: str, value: float | str) -> str:
    """A value as it was said: no rounding beyond what was typed."""
    if isinstance(value, str):
        return value_words(key, value)
    fact = fact_for(key)
    if fact.quantity is Quantity.SHARE:
        return f"{figure(100.0 * value, 1)} %"
    if fact.quantity is Quantity.YEAR:
        return f"{value:.0f}"
    if fact.quantity is Quantity.STATIC:
        return f"{value:.3f}".rstrip("0").ljust(4, "0") + " in. w.c."
    unit = _UNITS.get(fact.unit, fact.unit)
    if fact.quantity is Quantity.TONS and value == 1:
        unit = "ton"
    return f"{figure(value)} {unit}".rstrip()
