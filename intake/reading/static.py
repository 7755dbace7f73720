"""Static pressure: in. w.c. or Pa, signs, pairs, and the traps of both."""

from __future__ import annotations

import itertools
import re
from typing import Final

from intake.reading.asks import implausible, one_end, two_values
from intake.reading.echo import echo
from intake.reading.numbers import kept, labels_of, relation, together, vague
from intake.reading.phrasing import bounded, moved
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Value, Values, number_of
from intake.reading.scan import Item, Scan
from intake.reading.units import convert
from intake.reading.words import words

__all__ = ["read_static"]

_PASCALS: Final = (5.0, 400.0)
"""A bare number in this range may be Pa, or inches with the point left out."""


def _inwc(item: Item) -> float:
    unit = "inwc" if item.unit in ("", "in") else item.unit
    return round(convert(item.value, unit, "inwc"), 5)


def read_static(said: Scan, low: float, high: float, question: str = "") -> Reading | None:
    """Read one or more static pressures, in. w.c.; None if the text holds none."""
    said = together(said, hundreds=False)
    numbers = kept(said, "", "pressure", "length")
    numbers = [n for n in numbers if n.dimension != "length" or n.unit == "in"]
    if not numbers:
        if _TOO_MUCH.search(said.text):
            return AskBack("How much does the gauge read?", (), AskKind.TWO_VALUES)
        if vague(said, "size", "state") or (said.words() & _VAGUE and len(said.words()) <= 4):
            return AskBack(
                "What does the gauge read, in inches of water column?", (), AskKind.MISSING_PART
            )
        return None
    _as_tenths(said, numbers)
    if _IN_PASCALS.search(said.text) and not any(n.unit for n in numbers):
        for number in numbers:
            number.unit = "pa"
    if _OTHER_SIDE.search(said.text) and not said.says("role.return", "role.supply"):
        return AskBack(
            "Which side is that: the return or the supply?",
            tuple({"inwc": _inwc(n)} for n in numbers[:1]),
            AskKind.TWO_READINGS,
        )
    if len(numbers) == 2 and (moved(said.text) or _AT_COIL.search(said.text)):
        return two_values("static_pressure", [{"inwc": _inwc(n)} for n in numbers])
    if _ACROSS_PART.search(said.text) and _ASKS_SIDE.search(question.lower()):
        return AskBack(
            "That is the drop of one part. What does the gauge read where it is asked for?",
            tuple({"inwc": _inwc(n)} for n in numbers[:1]),
            AskKind.WRONG_QUANTITY,
        )
    roles = labels_of(said, numbers, _LABELS)
    if len(numbers) > 1 and all(roles) and len(set(roles)) == len(roles):
        return _labelled(said, dict(zip(roles, numbers, strict=True)), low, high)
    if len(numbers) == 1:
        rating = _RATING.search(said.text) and not _READING.search(said.text)
        if rating and not _ASKS_RATING.search(question.lower()):
            size = _inwc(numbers[0])
            return AskBack(
                f"Is {size:.2f} in. w.c. what it is rated for? And what does the gauge read?",
                ({"inwc": size},),
                AskKind.WRONG_QUANTITY,
            )
        return _one(said, numbers[0], low, high)
    if len(numbers) == 2:
        return _two(said, numbers[0], numbers[1], low, high)
    return _many(said, numbers)


_ACROSS_PART: Final = re.compile(
    r"\b(?:drop|loss|difference|delta)?(?: is)? ?(?:across|thru|through)"
    r" (?:the |my |a )?(?:filter|coil|evap\w*|a-?coil)\b|\b(?:filter|coil) (?:pressure )?drop\b"
)
_IN_PASCALS: Final = re.compile(r"\b(?:in|on|to|shows?|reads?|set to) (?:pascals?|pa)\b")
_OTHER_SIDE: Final = re.compile(r"\b(?:the|that|on) other side\b")
_ASKS_SIDE: Final = re.compile(r"^(?!.*\b(?:filter|coil)\b).*\b(?:total|external|return|supply)\b")
_EACH: Final = re.compile(r"\b(?:each|apiece|per side|both sides|either side)\b")
_RATING: Final = re.compile(
    r"\b(?:plate|tag|label|sticker)\b.*\bmax|\bmax\b.*\b(?:plate|tag|label|sticker)\b"
    r"|\b(?:rated (?:for|at|to)|rating (?:is|of)|design(?:ed)? (?:for|to)|good for|max(?:imum)?"
    r" rated)\b"
)
_ASKS_RATING: Final = re.compile(r"\b(?:max\w*|rated|rating|plate|label|sticker|allowed)\b")
_READING: Final = re.compile(r"\b(?:read(?:s|ing)?|measured?|gauge|manometer|actual)\b")
_AT_COIL: Final = re.compile(
    r"\b(?:before|after|above|below|ahead of|past) (?:the )?(?:coil|filter)\b"
)


def _as_tenths(said: Scan, numbers: list[Item]) -> None:
    """ "3/10" is 0.3: a fraction of an inch in tenths or hundredths."""
    for one, two in itertools.pairwise(list(numbers)):
        between = said.text[one.end : two.start]
        if between.strip() == "/" and one.value < two.value and two.value in (10.0, 100.0):
            one.value, one.unit, one.end = one.value / two.value, two.unit, two.end
            numbers.remove(two)
            said.leave_out(two)


_TOO_MUCH: Final = re.compile(r"\b(?:too|way|really|pretty|very) (?:high|low)\b")
_VAGUE: Final = words(
    "positive negative pegged bouncing jumping maxed scale green red off elevated"
)

_ROLES: Final = ("return", "supply", "total")
_LABELS: Final[dict[str, tuple[str, ...]]] = {role: (f"role.{role}",) for role in _ROLES}


def _labelled(said: Scan, by_role: dict[str, Item], low: float, high: float) -> Reading:
    del low
    units = [n.unit for n in by_role.values() if n.unit not in ("", "in")]
    if units:
        for item in by_role.values():
            item.unit = item.unit or units[-1]
    values: dict[str, Value] = {}
    for role, item in by_role.items():
        if item.unit == "" and item.value > high:
            return _no_unit(said, item, high)
        size = _inwc(item)
        if size > high:
            return implausible("static_pressure", {f"{role}_inwc": size})
        values[f"{role}_inwc"] = size
    order = [r for r in _ROLES if r in by_role]
    values = {f"{r}_inwc": values[f"{r}_inwc"] for r in order}
    if set(order) == set(_ROLES):
        odd = _total_off(values)
        if odd is not None:
            return odd
    pull, push = by_role.get("return"), by_role.get("supply")
    if pull is not None and push is not None and (pull.sign > 0 or push.sign < 0):
        return AskBack(
            "The return pulls and the supply pushes; other signs mean swapped hoses."
            " Which is the return, which the supply?",
            (values,),
            AskKind.IMPLAUSIBLE,
        )
    return Accepted(values)


def _total_off(values: dict[str, Value]) -> AskBack | None:
    pull, push, total = (number_of(values[f"{r}_inwc"]) for r in _ROLES)
    if abs(pull + push - total) <= 0.03 + 0.05 * total:
        return None
    summed = {**values, "total_inwc": round(pull + push, 3)}
    return AskBack(
        f"Return {pull:.2f} and supply {push:.2f} make {pull + push:.2f} in. w.c. in all,"
        f" not {total:.2f}: the sizes are added, the signs left off. Which of the three is right?",
        (summed,),
        AskKind.IMPLAUSIBLE,
    )


_NOT_GOT: Final = re.compile(
    r"\b(?:can'?t|cannot|couldn'?t|could not|didn'?t|did not|no|not|never|haven'?t|without"
    r"|unable)\b"
)
_CLAUSES: Final = re.compile(r"[,;]\s|\.\s|\b(?:but|and|so)\b")


def _not_got(said: Scan, item: Item, role: str) -> bool:
    """ "couldn't get a return reading but supply was .29": the other side has no value."""
    if not role:
        return False
    cuts = [0, *(m.end() for m in _CLAUSES.finditer(said.text)), len(said.text)]
    other = "role.supply" if role == "return" else "role.return"
    for start, end in itertools.pairwise(cuts):
        inside = [i for i in said.items if start <= i.start < end]
        if any(i.means(other) for i in inside):
            return item not in inside and _NOT_GOT.search(said.text[start:end]) is not None
    return False


def _one(said: Scan, item: Item, low: float, high: float) -> Reading:
    role = labels_of(said, [item], _LABELS)[0]
    size = _inwc(item)
    if _EACH.search(said.text) and not role:
        pair: Values = {"return_inwc": size, "supply_inwc": size}
        return AskBack(
            f"Is that {size:.2f} in. w.c. on the return and {size:.2f} on the supply?",
            (pair,),
            AskKind.TWO_READINGS,
        )
    if said.says("role.return") and said.says("role.supply") and not _not_got(said, item, role):
        return AskBack(
            "Which side is it: return, supply, or both?", ({"inwc": size},), AskKind.TWO_READINGS
        )
    if (role == "supply" and item.sign < 0) or (role == "return" and item.sign > 0):
        side = "supply side pushes" if role == "supply" else "return side pulls"
        return AskBack(
            f"The {side}, so its sign looks swapped. Is it {size:.2f} in. w.c., on which side?",
            ({f"{role}_inwc": size},),
            AskKind.IMPLAUSIBLE,
        )
    if bounded(said.text.replace("max", " ")):
        return one_end("static_pressure", size, "in. w.c.")
    if said.says("join.by", "alt.change"):
        return AskBack(
            "What is the static pressure, in inches of water column?", (), AskKind.MISSING_PART
        )
    bare = item.unit in ("",)
    if bare and size > high:
        return _no_unit(said, item, high)
    values: dict[str, Value] = {}
    if role:
        values[f"{role}_inwc"] = size
    else:
        values["inwc"] = size
        if item.sign:
            values["sign"] = item.sign
    if not low <= size <= high:
        meant = [{"inwc": round(size / 10, 4)}] if high < size <= 10 * high and not role else []
        if item.unit == "in" or item.unit == "inwc":
            return implausible("static_pressure", values, meant)
        return implausible("static_pressure", values)
    return Accepted(values)


def _no_unit(said: Scan, item: Item, high: float) -> AskBack:
    """ "65": inches with the point left out, or Pa."""
    del said
    value = item.value
    readings: list[dict[str, Value]] = []
    sign: dict[str, Value] = {"sign": item.sign} if item.sign else {}
    for scale in (10.0, 100.0, 1000.0):
        if value / scale <= high and not readings and (value >= 10 or scale == 10):
            if value >= 10 and scale == 10.0:
                continue
            readings.append({"inwc": round(value / scale, 4), **sign})
    pascals = round(convert(value, "pa", "inwc"), 4)
    if _PASCALS[0] <= value <= _PASCALS[1]:
        readings.append({"inwc": pascals, **sign})
    if not readings:
        return implausible("static_pressure", {"inwc": value})
    parts = [f"{echo('static_pressure', readings[0])}"]
    if _PASCALS[0] <= value <= _PASCALS[1]:
        tail = f"{value:g} Pa, which is {pascals:.2f} in. w.c."
        parts = [*parts, tail] if len(readings) > 1 else [tail]
    return AskBack(
        f"{value:g}: did you mean {', or '.join(parts)}?", tuple(readings), AskKind.TWO_READINGS
    )


def _two(said: Scan, one: Item, two: Item, low: float, high: float) -> Reading:
    unit = two.unit or one.unit
    one.unit, two.unit = one.unit or unit, two.unit or unit
    how = relation(said.items, one, two)
    first, second = _inwc(one), _inwc(two)
    if how == "range" and first < second and not one.sign and not two.sign:
        if one.unit == "" and second > high:
            return _no_unit(said, two, high)
        if not low <= first or not second <= high:
            return implausible("static_pressure", {"inwc_low": first, "inwc_high": second})
        return Accepted({"inwc_low": first, "inwc_high": second})
    if first == second and how in ("or", "range"):
        return _one(said, one, low, high)
    if (
        one.sign < 0 <= two.sign
        and max(first, second) <= high
        and not any(labels_of(said, [one, two], _LABELS))
    ):
        pair: Values = {"return_inwc": first, "supply_inwc": second}
        return AskBack(
            f"Is that return {first:.2f} and supply {second:.2f} in. w.c.?",
            (pair,),
            AskKind.TWO_VALUES,
        )
    return two_values("static_pressure", [{"inwc": first}, {"inwc": second}])


def _many(said: Scan, numbers: list[Item]) -> Reading:
    del said
    return AskBack(
        "Those are several pressures. Please say which is which, such as: return 0.25 supply 0.35.",
        tuple({"inwc": _inwc(n)} for n in numbers[:4]),
        AskKind.TWO_VALUES,
    )
