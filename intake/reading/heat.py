"""Capacities and efficiencies of equipment."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.asks import implausible, one_end, two_values, wrong_quantity
from intake.reading.numbers import kept, labels_of, relation, together, vague
from intake.reading.phrasing import bounded, dated, multiplied
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value, number_of
from intake.reading.scan import Item, Scan
from intake.reading.units import convert
from intake.reading.words import words

__all__ = ["read_capacity", "read_efficiency"]

_MODEL_SIZES: Final = words("018 024 030 036 042 048 060 18 24 30 36 42 48 60")
_PER_CENT: Final = (0.5, 1.0)


def _thousand(said: Scan, item: Item) -> bool:
    """ "80 M": thousand, in this trade."""
    place = said.items.index(item)
    following = said.items[place + 1] if place + 1 < len(said.items) else None
    return following is not None and following.text == "m"


def _btuh(item: Item) -> float:
    return round(convert(item.value, item.unit or "btuh", "btuh"), 1)


def read_capacity(said: Scan, low: float, high: float, question: str = "") -> Reading | None:
    """Read a capacity, BTU/h; None if the text holds none."""
    found = _read_capacity(said, low, high, question)
    if isinstance(found, Accepted) and "efficiency" in found.values:
        share = number_of(found.values["efficiency"])
        if not _PER_CENT[0] <= share <= _PER_CENT[1]:
            return implausible("capacity", found.values)
    return found


def _read_capacity(said: Scan, low: float, high: float, question: str) -> Reading | None:
    said = together(said, hundreds=False, thousands=True)
    _without_places(said)
    for item in said.numbers:
        if not item.unit and _thousand(said, item):
            item.unit = "kbtuh"
    shares = kept(said, "percent", "afue")
    heats = kept(said, "heat")
    bare = kept(said, "")
    heats, bare = _asserted(said, heats, bare)
    bare, share = _bare_efficiency(said, bare, shares)
    for item in bare:
        if item.value >= 1000:
            item.unit = "btuh"
            heats.append(item)
    bare = [item for item in bare if not item.unit]
    heats.sort(key=lambda item: item.start)
    if not heats and not bare:
        return _without_heat(said, share)
    if heats and bare:
        _of_output(said, heats, bare)
        heats = _sharing(said, heats, bare)
        if any(not item.unit for item in bare):
            return two_values("capacity", [{"btuh": _btuh(h)} for h in heats[:2]])
    if not heats:
        return _bare(said, bare, share, low, high, question)
    if "of" in said.words() and share is not None and re.search(r"(?:%|percent) of", said.text):
        whole = _btuh(heats[0])
        return AskBack(
            f"Is that {whole:,.0f} BTU/h input at {100 * share:g} %?",
            ({"input_btuh": whole, "efficiency": share}, {"btuh": round(whole * share, 1)}),
            AskKind.TWO_READINGS,
        )
    return _assigned(said, heats, share, low, high)


def _of_output(said: Scan, heats: list[Item], bare: list[Item]) -> None:
    """ "120,000 btu input, 80 % so 96 out": the bare number is in thousands too."""
    if len(heats) != 1 or len(bare) != 1 or heats[0].value < 1000 or heats[0].unit != "btuh":
        return
    both = sorted((heats[0], bare[0]), key=lambda item: item.start)
    if sorted(_roles(said, both)) == ["input", "output"]:
        bare[0].value, bare[0].unit = bare[0].value * 1000.0, "btuh"
        heats.append(bare[0])
        heats.sort(key=lambda item: item.start)


_MADE: Final = re.compile(r"^ (?:build|built|vintage|model year|manufacture|make|unit)\b")


def _asserted(said: Scan, heats: list[Item], bare: list[Item]) -> tuple[list[Item], list[Item]]:
    """Without what is denied ("3 ton not 3.5", "not a 4 ton it's a 3") and without a year."""
    tons = any(n.unit == "ton" for n in heats)
    years = [
        n
        for n in bare
        if n.whole
        and 1950 <= n.value <= 2035
        and (tons or dated(said, n) or _MADE.match(said.text[n.end :]))
    ]
    told = {_btuh(n) for n in heats}
    bare = [n for n in bare if not (_is_model_size(n) and n.value * 1000.0 in told)]
    if len(heats) + len(bare) > len(years):
        bare = [n for n in bare if n not in years]
    if heats and bare:
        standing = [n for n in (*heats, *bare) if not n.negated]
        dropped = [n for n in (*heats, *bare) if n.negated]
        if standing and dropped:
            for n in standing:
                if not n.unit and n.value <= 6 and dropped[0].unit == "ton":
                    n.unit = "ton"
            return [n for n in standing if n.unit], [n for n in standing if not n.unit]
    return heats, bare


def _is_model_size(item: Item) -> bool:
    """ "036": thousands of BTU/h as model numbers tell them."""
    text = item.token.text if item.token else ""
    return len(text) == 3 and text[0] == "0" and text in _MODEL_SIZES


def _bare_efficiency(
    said: Scan, bare: list[Item], shares: list[Item]
) -> tuple[list[Item], float | None]:
    if shares:
        value = shares[0].value
        return bare, round(value / 100 if value > 1.5 else value, 5)
    for item in bare:
        at_end = item is said.numbers[-1] and re.search(r"\bat $", said.text[: item.start])
        if at_end and 75 <= item.value < 100 and len(said.numbers) > 1:
            return [b for b in bare if b is not item], round(item.value / 100, 5)
    if not said.says("heat.efficient"):
        return bare, None
    for item in bare:
        if 50 <= item.value <= 100 or 0.5 <= item.value < 1:
            rest = [b for b in bare if b is not item]
            return rest, round(item.value / 100 if item.value > 1.5 else item.value, 5)
    return bare, None


def _without_heat(said: Scan, share: float | None) -> Reading | None:
    if share is not None:
        return AskBack(
            "That is the efficiency. What is the input or output, in BTU/h or tons?",
            (),
            AskKind.MISSING_PART,
        )
    if vague(said, "size", "state"):
        return AskBack("How big is it, in tons or BTU/h?", (), AskKind.MISSING_PART)
    return None


def _sharing(said: Scan, heats: list[Item], bare: list[Item]) -> list[Item]:
    """ "45 or 60k": the bare number shares the scale of the other."""
    found = list(heats)
    for item in bare:
        for heat in heats:
            one, two = sorted((item, heat), key=lambda i: i.start)
            related = relation(said.items, one, two) in (
                "range",
                "or",
                "list",
                "plus",
            ) or said.says("heat.stage")
            if related and item.value < 1000:
                scale = 1000.0 if heat.value >= 1000 and heat.unit == "btuh" else 1.0
                item.value *= scale
                item.unit = heat.unit
                found.append(item)
                break
    return sorted(found, key=lambda i: i.start)


_LABELS: Final[dict[str, tuple[str, ...]]] = {"input": ("heat.input",), "output": ("heat.output",)}


def _roles(said: Scan, numbers: list[Item]) -> list[str]:
    """Input or output, by the labels beside the numbers."""
    return labels_of(said, numbers, _LABELS)


def _without_places(said: Scan) -> None:
    """ "ends in 060", "in the model number": such an "in" or "out" says no input."""
    items = said.items
    for k, item in enumerate(items):
        if item.text not in ("in", "out"):
            continue
        following = items[k + 1] if k + 1 < len(items) else None
        phrase = following.text if following is not None and following.kind == "word" else ""
        dated = following is not None and following.whole and 1950 <= following.value <= 2035
        leads = not k and following is not None and following.value >= _LEAST_LED and not dated
        behind = k and items[k - 1].kind == "num" and not (phrase and phrase not in _AFTER_IN)
        pair = following is not None and following.value >= _LEAST_LED and items[0].text in _IN_OUT
        if dated or not (leads or behind or pair):
            said.means_now(k)


_LEAST_LED: Final = 1000.0
_IN_OUT: Final = words("in out input output")
_AFTER_IN: Final = words("and at so i maybe but with")


def _assigned(
    said: Scan, heats: list[Item], share: float | None, low: float, high: float
) -> Reading:
    values: dict[str, Value] = {}
    roles = _roles(said, heats)
    if len(heats) == 2 and sorted(roles) == ["input", "output"]:
        for role, item in zip(roles, heats, strict=True):
            values[f"{role}_btuh"] = _btuh(item)
        values = {k: values[k] for k in ("input_btuh", "output_btuh")}
    elif len(heats) > 1 and len({_btuh(h) for h in heats}) == 1:
        values["btuh"] = _btuh(heats[0])
    elif len(heats) > 1:
        return two_values("capacity", [{"btuh": _btuh(h)} for h in heats[:4]])
    else:
        if multiplied(said.text):
            each: dict[str, Value] = {"btuh": _btuh(heats[0])}
            return AskBack("What is it in all?", (each,), AskKind.MISSING_PART)
        if bounded(said.text):
            return one_end("capacity", _btuh(heats[0]), "BTU/h")
        values[f"{roles[0]}_btuh" if roles[0] else "btuh"] = _btuh(heats[0])
    if share is not None:
        values["efficiency"] = share
        if not _PER_CENT[0] <= share <= _PER_CENT[1]:
            return implausible("capacity", values)
    pair = (values.get("input_btuh"), values.get("output_btuh"))
    if pair[0] and pair[1] and not 0.5 <= number_of(pair[1]) / number_of(pair[0]) <= 1.0:
        return implausible("capacity", values)
    sizes = [number_of(v) for k, v in values.items() if k.endswith("btuh")]
    tons = any(h.unit == "ton" for h in heats)
    top = min(high, 60_000.0) if tons else high
    low = max(low, 12_000.0) if tons else low
    if all(low <= size <= top for size in sizes):
        return Accepted(values)
    meant = []
    if len(sizes) == 1:
        name = next(k for k in values if k.endswith("btuh"))
        if heats[0].unit == "btuh" and sizes[0] < 1000 and low <= sizes[0] * 1000 <= high:
            meant = [{name: sizes[0] * 1000}]
        elif sizes[0] > high and low <= sizes[0] / 10 <= high:
            meant = [{name: sizes[0] / 10}]
    return implausible("capacity", values, meant)


_NO_CAPACITY: Final = re.compile(
    r"\b(?:pressure|manifold|static|amps?|draw|inches|gauge|reads?|reading|years?|old|hours?"
    r"|stars?)\b"
)


def _bare(
    said: Scan, bare: list[Item], share: float | None, low: float, high: float, question: str
) -> Reading:
    extra: dict[str, Value] = {} if share is None else {"efficiency": share}
    pair = _roles(said, bare)
    if len(bare) == 2 and sorted(pair) == ["input", "output"]:
        both: dict[str, Value] = {
            f"{r}_btuh": n.value * 1000 for r, n in zip(pair, bare, strict=True)
        }
        return AskBack("Are those in thousands of BTU/h?", (both,), AskKind.TWO_READINGS)
    if len(bare) > 1:
        return two_values(
            "capacity", [{"btuh": n.value * (12000 if n.value <= 6 else 1000)} for n in bare[:3]]
        )
    item = bare[0]
    role = _roles(said, [item])[0]
    name = f"{role}_btuh" if role else "btuh"
    token = item.token.text if item.token else ""
    tons_asked = "ton" in question.lower() or "tonnage" in said.text
    tons = {name: item.value * 12000.0, **extra}
    thousands = {name: item.value * 1000.0, **extra}
    if len(token) == 3 and token[0] == "0" and token in _MODEL_SIZES:
        return Accepted({name: float(int(token)) * 1000.0, **extra})
    half = item.value in (1.5, 2.5, 3.5, 4.5) and not _NO_CAPACITY.search(said.text)
    if (half or (tons_asked and 1 <= item.value <= 5)) and low <= item.value * 12000 <= high:
        return Accepted(tons)
    if 1 <= item.value <= 5:
        return AskBack(f"Is that {item.value:g} tons?", (tons,), AskKind.TWO_READINGS)
    if low <= item.value * 1000 <= high:
        readings = [thousands]
        why = f"{item.value:g}: is that {item.value:g},000 BTU/h"
        if 55 <= item.value <= 100 and not role:
            return AskBack(
                f"{why}, or {item.value:g} % efficiency?",
                (thousands, {"efficiency": item.value / 100}),
                AskKind.TWO_READINGS,
            )
        return AskBack(f"{why}?", tuple(readings), AskKind.TWO_READINGS)
    return implausible("capacity", {name: item.value, **extra})


def _of_both(said: Scan) -> float | None:
    """ "input 100k output 80k": what share comes out, or None."""
    heats = [n for n in kept(said, "heat", "") if n.unit or n.value >= 1000]
    roles = _roles(said, heats)
    if sorted(roles) != ["input", "output"]:
        return None
    told = dict(zip(roles, heats, strict=True))
    return round(_btuh(told["output"]) / _btuh(told["input"]), 3)


_OTHER_SHARE: Final = re.compile(
    r"\b(?:humidity|rh|battery|chance|charged?|discount|glycol|off the price|tax credit)\b"
)
_OF_FURNACE: Final = re.compile(
    r"\b(?:furnace|afue|burner|gas (?:side|heat))(?:'s| is|:)? (?=[0-9])"
)


def read_efficiency(said: Scan, low: float, high: float) -> Reading | None:
    """Read a furnace's efficiency as a fraction; None if the text holds none."""
    text = said.text
    named = kept(said, "percent", "afue")
    bare = [n for n in kept(said, "") if n.value < 1000]
    years = [n for n in bare if n.whole and n.value < 100 and dated(said, n)]
    if re.search(r"\bfrom [0-9]+ ?(?:%|percent)? ?(?:up )?to\b", text):
        years = []
    bare = [n for n in bare if n not in years]
    if years and not (named or bare):
        return AskBack(
            "That is a year. What is its efficiency, in per cent?", (), AskKind.WRONG_QUANTITY
        )
    rivals = [n for n in bare if 50 <= n.value <= 100 and not n.negated]
    rivals = [n for n in rivals if all(n.value != other.value for other in named)]
    if named and rivals:
        both = sorted((*named, *rivals), key=lambda n: n.start)
        fractions = [round(n.value / 100, 5) for n in both]
        return two_values("efficiency", [{"fraction": f} for f in fractions[:3]])
    numbers = [n for n in named if n.value < 1000] or bare
    if not (named or bare):
        share = _of_both(said)
        if share is not None:
            return Accepted({"fraction": share}) if low <= share <= high else None
    other = _OTHER_SHARE.search(text)
    if other is not None and (named or bare):
        return AskBack(
            f'That is of the "{other[0]}". What is its efficiency, in per cent?',
            (),
            AskKind.WRONG_QUANTITY,
        )
    rating = kept(said, "seer", "hspf", "eer", "cop")
    burner = _OF_FURNACE.search(text)
    if rating and bare and burner is not None:
        bare = [n for n in bare if n.start >= burner.start()] or bare
        numbers = bare
    elif rating and not kept(said, "percent", "afue"):
        return wrong_quantity("efficiency", text, rating[0].dimension)
    if not numbers:
        words = said.words() & {
            "condensing",
            "noncondensing",
            "non-condensing",
            "efficient",
            "efficiency",
            "pvc",
            "plastic",
            "pulse",
        }
        if words or vague(said, "size", "state") or said.says("heat.efficient"):
            return AskBack(
                "How many per cent, such as 80 or 95? It may be on the plate as AFUE.",
                (),
                AskKind.MISSING_PART,
            )
        return None
    if len(numbers) == 1:
        value = numbers[0].value
        fraction = round(value / 100 if value > 1.0 or numbers[0].unit == "pct" else value, 5)
        if bounded(text) or re.search(
            r"\b(?:plus|class|range|something|odd|some)\b|(?<=\d)'s\b|ies\b|\d\s*s\b|\d\s*\+", text
        ):
            return AskBack(
                f"{value:g} and what exactly? The plate or the book gives one figure.",
                ({"fraction": fraction},),
                AskKind.MISSING_PART,
            )
        if low <= fraction <= high:
            return Accepted({"fraction": fraction})
        meant = [{"fraction": round(value / 10, 4)}] if 5.5 <= value < 10 else []
        return implausible("efficiency", {"fraction": fraction}, meant)
    fractions = [n.value / 100 if n.value > 1 else n.value for n in numbers]
    if len(set(fractions)) == 1 and low <= fractions[0] <= high:
        return Accepted({"fraction": fractions[0]})
    return two_values("efficiency", [{"fraction": round(f, 5)} for f in fractions[:3]])
