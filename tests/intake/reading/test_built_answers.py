"""Answers built from known values: whatever is accepted must be those values.

The texts are put together at random from ways to say a size, a count, a material, a length, a
quantity and chatter, so what is meant is known without reading. Asking back is allowed, taking
something else in silence is not.
"""

import math
import random
from collections.abc import Callable, Mapping

import pytest

from intake.reading.read import read
from intake.reading.result import Accepted

ONES = tuple(
    """zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen
    fifteen sixteen seventeen eighteen nineteen""".split()  # noqa: SIM905
)
TENS = ("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
MATERIALS = {
    "galvanized": ("galv", "sheet metal", "tin", "galvanised steel"),
    "duct_board": ("duct board", "ductboard", "fiberglass board"),
    "lined_metal": ("lined metal", "metal with liner", "metal, insulated inside"),
    "panned_joist": ("panned joist", "joist bay"),
    "stud_bay": ("stud bay", "wall cavity"),
    "": ("",),
}
BEFORE = ("", "", "about ", "i think ", "it's ", "measured ", "we got ", "call it ", "maybe ")
BEHIND = ("", "", " or so", " i guess", " at the furnace", " today", " in cooling", ".", " sir")
WHERE = ("", "", "under the stairs", "main trunk", "by the water heater", "in the basement")

Built = tuple[str, dict[str, object]]


def said(number: int, dice: random.Random) -> str:
    """A number below 100 in digits or words."""
    if dice.random() < 0.7:
        return str(number)
    if number < 20:
        return ONES[number]
    rest = number % 10
    return TENS[number // 10] + (dice.choice((" ", "-")) + ONES[rest] if rest else "")


def counted(text: str, count: int, dice: random.Random) -> str:
    forms = (f"{said(count, dice)} {text}", f"({count}) {text}", f"{text}, {count} of them")
    return dice.choice((*forms, f"{text} (x{count})"))


def rectangular(dice: random.Random) -> Built:
    width, height = dice.choice((10, 12, 14, 16, 18, 20, 22, 24)), dice.choice((6, 7, 8, 10, 12))
    one, two = said(width, dice), said(height, dice)
    digits = one.isdigit() and two.isdigit()
    join = dice.choice(("x", " x ", " by ", "×", "*")) if digits else " by "
    text = dice.choice((f"{one}{join}{two}", f"{one} wide by {two} tall", f"{two} high {one} wide"))
    values: dict[str, object] = {"shape": "rect", "width_in": width, "height_in": height}
    if dice.random() < 0.3:
        values["count"] = dice.choice((2, 3))
        text = counted(text, int(str(values["count"])), dice)
    return described(text, values, dice)


def round_flex(dice: random.Random) -> Built:
    diameter = dice.choice((5, 6, 7, 8, 9, 10, 12, 14))
    kind, material = dice.choice((("flex", "flex"), ("round metal", "galvanized"), ("round", "")))
    text = f"{said(diameter, dice)} inch {kind}"
    values: dict[str, object] = {"shape": "round", "diameter_in": diameter}
    if material:
        values["material"] = material
    if dice.random() < 0.3:
        values["count"] = dice.choice((2, 3, 4))
        text = counted(text, int(str(values["count"])), dice)
    return described(text, values, dice, material=False)


def described(
    text: str, values: dict[str, object], dice: random.Random, *, material: bool = True
) -> Built:
    parts = [text]
    if material:
        name = dice.choice(list(MATERIALS))
        if name:
            values["material"] = name
            parts.insert(dice.choice((0, 1)), dice.choice(MATERIALS[name]))
    if dice.random() < 0.4:
        length = dice.choice((12, 18, 22, 30, 40))
        values["length_ft"] = length
        parts.append(dice.choice((f"{said(length, dice)} ft", f"{length} feet long", f"{length}'")))
    where = dice.choice(WHERE)
    if where:
        parts.insert(dice.choice((0, len(parts))), where)
    return dice.choice((" ", ", ")).join(parts), values


def airflow(dice: random.Random) -> Built:
    cfm = dice.randrange(400, 2000, 25)
    if dice.random() < 0.3:
        tons, rate = dice.choice((1.5, 2, 2.5, 3, 4)), dice.choice((325, 350, 400, 425))
        return dice.choice((f"{tons:g} ton @ {rate}", f"{rate} cfm/ton, {tons:g} tons")), {
            "cfm": tons * rate
        }
    if dice.random() < 0.3:
        return around(dice.choice((f"{cfm}-{cfm + 100} cfm", f"{cfm} to {cfm + 100}")), dice), {
            "cfm_low": cfm,
            "cfm_high": cfm + 100,
        }
    return around(f"{cfm}{dice.choice(('', ' cfm', 'CFM'))}", dice), {"cfm": cfm}


def around(text: str, dice: random.Random) -> str:
    return dice.choice(BEFORE) + text + dice.choice(BEHIND)


def static(dice: random.Random) -> Built:
    pull, push = dice.randrange(5, 90) / 100, dice.randrange(5, 90) / 100
    form = dice.randrange(4)
    if form == 0:
        pascals = dice.randrange(20, 250)
        return around(f"{pascals} Pa", dice), {"inwc": pascals / 249.089}
    if form == 1:
        return dice.choice(("-", "minus ", "negative ")) + f"{pull:g}", {"inwc": pull, "sign": -1}
    if form == 2:
        return around(f"{pull:g}{dice.choice(('', ' in wc', ' iwc'))}", dice), {"inwc": pull}
    texts = (f"return {pull:g} supply {push:g}", f"sup {push:g}, rtn {pull:g}", f"{pull:g} return "
             f"{push:g} supply", f"ret: -{pull:g} sup: +{push:g}")  # fmt: skip
    return dice.choice(texts), {"return_inwc": pull, "supply_inwc": push}


def length(dice: random.Random) -> Built:
    feet, inches = dice.randrange(4, 99), dice.randrange(1, 12)
    if dice.random() < 0.4:
        texts = (f"{feet}' {inches}\"", f"{feet} ft {inches} in", f"{feet}'-{inches}\"")
        return around(dice.choice(texts), dice), {"ft": feet + inches / 12}
    return around(f"{said(feet, dice)} {dice.choice(('ft', 'feet', 'foot'))}", dice), {"ft": feet}


def filter_(dice: random.Random) -> Built:
    faces = dice.choice((12, 14, 16, 20)), dice.choice((20, 24, 25, 30))
    depth, merv = dice.choice((1, 2, 4, 5)), dice.choice((0, 8, 11, 13))
    values: dict[str, object] = dict(zip(("width_in", "height_in"), faces, strict=True))
    values["depth_in"] = depth
    text = f"{faces[0]}x{faces[1]}x{depth}"
    if dice.random() < 0.3:
        text = f"{said(faces[0], dice)} by {said(faces[1], dice)} by {said(depth, dice)}"
    if dice.random() < 0.3:
        values["count"] = dice.choice((2, 3))
        text = counted(text, int(str(values["count"])), dice)
    if merv:
        values["merv"] = merv
        text = dice.choice((f"{text} merv {merv}", f"merv {merv} {text}"))
    return text, values


FIELDS: Mapping[str, tuple[Callable[[random.Random], Built], ...]] = {
    "duct": (rectangular, round_flex),
    "airflow": (airflow,),
    "static_pressure": (static,),
    "length": (length,),
    "filter": (filter_,),
}


def agrees(values: Mapping[str, object], meant: Mapping[str, object]) -> bool:
    """The same names, and the same values within 0.2 %."""
    if values.keys() != meant.keys():
        return False
    for name, value in meant.items():
        got = values[name]
        if isinstance(value, str) or isinstance(got, str):
            if got != value:
                return False
        elif not math.isclose(float(str(got)), float(str(value)), rel_tol=2e-3, abs_tol=1e-4):
            return False
    return True


def outcome(field: str, text: str, meant: Mapping[str, object]) -> str:
    reading = read(field, text)
    if not isinstance(reading, Accepted):
        return "asked"
    return "right" if agrees(reading.values, meant) else "wrong"


@pytest.mark.parametrize("field", FIELDS)
def test_what_is_accepted_is_what_was_meant(field):
    dice = random.Random(f"built {field}")
    asked = 0
    for _ in range(400):
        text, meant = dice.choice(FIELDS[field])(dice)
        found = outcome(field, text, meant)
        assert found != "wrong", (text, meant, read(field, text))
        asked += found == "asked"
    assert asked <= 20


def slipped(text: str, dice: random.Random) -> str:
    """One word of four letters or more with one letter lost, doubled, swapped or changed."""
    words = text.split(" ")
    places = [i for i, word in enumerate(words) if len(word) >= 4 and word.isalpha()]
    if not places:
        return text
    place = dice.choice(places)
    word, at = words[place], dice.randrange(1, len(words[place]) - 1)
    forms = (
        word[:at] + word[at + 1 :],
        word[:at] + word[at] + word[at:],
        word[:at] + word[at + 1] + word[at] + word[at + 2 :],
        word[:at] + dice.choice("aeionrst") + word[at + 1 :],
    )
    words[place] = dice.choice(forms)
    return " ".join(words)


@pytest.mark.parametrize("field", FIELDS)
def test_one_slip_of_the_finger_seldom_changes_what_is_taken(field):
    # What remains are slips into other real words ("three" to "there"): 2 in 100 at most.
    dice = random.Random(f"slip {field}")
    wrong = []
    for _ in range(400):
        text, meant = dice.choice(FIELDS[field])(dice)
        typed = slipped(text, dice)
        if outcome(field, typed, meant) == "wrong":
            wrong.append(typed)
    assert len(wrong) <= 8, wrong


@pytest.mark.parametrize(
    ("field", "text", "name", "value"),
    [
        ("length", "fitfy three ft", "ft", 53.0),
        ("length", "one hunderd and nine feet", "ft", 109.0),
        ("airflow", "one thoousand two hundred", "cfm", 1200.0),
        ("airflow", "eight hundred and fiftycfm", "cfm", 850.0),
        ("static_pressure", "negatvie .3", "sign", -1),
        ("temperature", "ries of 50", "delta_degF", 50.0),
        ("filter", "thrre 14x20x1", "count", 3),
        ("grille", "twnety by eight", "width_in", 20.0),
    ],
)
def test_a_misspelt_number_word_is_no_other_number(field, text, name, value):
    reading = read(field, text)
    assert isinstance(reading, Accepted), reading
    assert reading.values[name] == value
