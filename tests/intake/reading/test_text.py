"""Cleaning, numerals, units, words and speed: what every field stands on."""

import subprocess
import sys
from pathlib import Path

import pint
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from intake.reading.clean import normalise, plain_line
from intake.reading.corpus import describe
from intake.reading.echo import echo
from intake.reading.lexer import tokenize
from intake.reading.numerals import fold_numbers
from intake.reading.phrases import spelt_right
from intake.reading.read import FIELDS, read
from intake.reading.result import Accepted, Previous, Rejected
from intake.reading.units import _FACTORS, _UNITS, DIMENSION, SPELLINGS, convert, spellings, warm

CORPUS = Path(__file__).parents[2] / "corpus"


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("20x8\x1b]0;x\x07", "20x8 ]0;x"),
        ("a\u202eb", "a b"),
        ("  a\t\nb ", "a b"),
        ("\ud800x", "x"),
    ],
)
def test_what_is_shown_holds_no_control_or_direction_characters(text, plain):
    assert plain_line(text) == plain


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("11¼", "11 1/4"), ("5′ 6″", "5' 6\""), ("20 × 8", "20 x 8"), ("−0.3", "-0.3"), ("1–2",
        "1-2"),
        ("２０", "20"), ("٣", "3"), ("72°F", "72 deg f"), ("~40", "about 40"), ("m³/h", "m3/h"),
        ("12OO", "1200"),
        ("w/ liner", "with liner"), ("GALVANISÉ", "galvanise"), ("5''", '5"'),
    ],
)  # fmt: skip
def test_each_sign_has_one_form(text, plain):
    assert normalise(text) == plain


@given(st.text(max_size=60))
def test_normalising_twice_changes_nothing_more(text):
    once = normalise(plain_line(text))
    assert normalise(once) == once


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("three and a quarter", [3.25]), ("a hundred and ten", [110]),
        ("twelve hundred fifty", [1250]),
        ("one thousand two hundred and fifty", [1250]), ("point four four", [0.44]),
        ("five tenths", [0.5]),
        ("forty-four hundredths", [0.44]), ("11 1/4", [11.25]), ("3-1/4", [3.25]), ("1/2", [0.5]),
        ("20/8", [20, 8]), ("sixteen twenty-five one", [16, 25, 1]), ("half a dozen", [6]),
        ("1,200", [1200]), ("0,45", [0.45]), ("16,25,1", [16, 25, 1]), ("80 thousand", [80000]),
        ("ninety-two point five", [92.5]), ("two and 3/4", [2.75]),
    ],
)  # fmt: skip
def test_numbers_are_folded_however_they_are_written(text, values):
    numbers = [t.value for t in fold_numbers(tokenize(normalise(text))) if t.kind == "num"]
    assert numbers == pytest.approx(values)


def test_a_model_number_is_no_number():
    assert [t.kind for t in tokenize("4ttr4036a1000")] == ["code"]


def test_every_factor_is_the_one_that_pint_computes():
    registry = pint.UnitRegistry()
    for (unit, to), factor in _FACTORS.items():
        if DIMENSION[unit] == "temperature":
            continue
        ratio = (1.0 * registry.parse_expression(_UNITS[unit][1])) / registry.parse_expression(
            _UNITS[to][1]
        )
        assert factor == pytest.approx(float(ratio.to("").magnitude), rel=1e-9), (unit, to)


@pytest.mark.parametrize(
    ("value", "unit", "to", "expected"),
    [
        (26, "degc", "degf", 78.8), (293.15, "degk", "degf", 68.0), (20, "kw", "btuh", 68242.83),
        (1, "mbar", "inwc", 100 / 249.089), (10, "mmwc", "inwc", 10 / 25.4), (10, "delta_degc",
        "delta_degf", 18),
        (1, "m3s", "cfm", 2118.88), (0.5, "psi", "inwc", 13.84),
    ],
)  # fmt: skip
def test_units_convert_as_defined(value, unit, to, expected):
    assert convert(value, unit, to) == pytest.approx(expected, rel=1e-4)


def test_unlike_units_don_t_convert():
    with pytest.raises(ValueError, match="does not convert"):
        convert(1.0, "ft", "pa")


def test_no_spelling_means_two_units():
    seen: dict[str, str] = {}
    for unit, phrases in SPELLINGS.items():
        for phrase in phrases.split("|"):
            assert seen.setdefault(phrase, unit) == unit, phrase
    assert len(spellings()) == len(seen)


@pytest.mark.parametrize(
    ("word", "right"),
    [("galvanzied", "galvanized"), ("rownd", "round"), ("flxe", "flex"), ("ovel", "oval")],
)
def test_a_slip_of_a_trade_word_is_put_right(word, right):
    assert spelt_right(word) == right


@pytest.mark.parametrize(
    "word", ["house", "different", "weight", "liver", "food", "alex", "boat", "hat"]
)
def test_an_everyday_word_is_no_slip(word):
    assert spelt_right(word) == word


@pytest.mark.parametrize("field", FIELDS)
def test_a_long_paste_is_refused_with_a_sentence_before_anything_looks_at_it(field, monkeypatch):
    def looks(*_):
        raise AssertionError("looked at")

    for name in ("plain_line", "normalise", "as_command"):
        monkeypatch.setattr(f"intake.reading.read.{name}", looks)
    reading = read(field, "20x8 " * 20_000)
    assert isinstance(reading, Rejected)
    assert "characters" in reading.why


@pytest.mark.parametrize("field", FIELDS)
def test_nothing_typed_is_refused(field):
    assert isinstance(read(field, " \u202e\n"), Rejected)


def test_an_unknown_field_is_an_error():
    with pytest.raises(KeyError):
        read("shoe_size", "9")


PIECES = st.sampled_from(
    ["20", "8", "x", "by", "1/2", "-", ".3", "ft", "in", '"', "'", "cfm", "Pa", "not", "or",
    "and", "k", "flex",
     "two", "half", "point", "oh", "return", "supply", ",", "(", ")", "%", "about",
     "999999999", "½", "to", "no wait"]
)  # fmt: skip
TEXTS = st.one_of(
    st.text(max_size=80),
    st.lists(PIECES, max_size=14).map(" ".join),
    st.lists(PIECES, max_size=14).map("".join),
)


@settings(max_examples=300, deadline=None)
@given(st.sampled_from(FIELDS), TEXTS, st.booleans())
@example("duct", "9**9**9", False)
@example("temperature", "__import__('os')", True)
@example("capacity", "3 or 3.5 tons " * 40, False)
def test_no_text_raises_and_every_reading_can_be_told(field, text, corrected):
    warm()
    before = Previous("length", "11") if corrected else None
    reading = read(field, text, previous=before, question="Is it sound?", choices=("a", "b"))
    assert describe(reading, field)
    if isinstance(reading, Accepted):
        assert echo(field, reading.values)


def test_a_denied_number_is_not_the_value():
    reading = read("airflow", "not 900 but 1000")
    assert isinstance(reading, Accepted)
    assert dict(reading.values) == {"cfm": 1000.0}


@pytest.mark.parametrize(
    ("field", "values", "told"),
    [
        ("duct", {"shape": "rect", "width_in": 20, "height_in": 8, "material": "galvanized",
        "length_ft": 22},
         "20 x 8 in. galvanized, 22 ft"),
        ("static_pressure", {"inwc": 0.4}, "0.40 in. w.c."),
        ("airflow", {"cfm": 1200}, "1,200 CFM"),
        ("airflow", {"cfm_low": 700, "cfm_high": 850}, "700 to 850 CFM"),
        ("static_pressure", {"return_inwc": 0.21, "supply_inwc": 0.47},
         "return 0.21, supply 0.47 in. w.c."),
        ("filter", {"width_in": 16, "height_in": 25, "depth_in": 1, "merv": 8},
         "16 x 25 x 1 in., MERV 8"),
        ("capacity", {"input_btuh": 80000, "efficiency": 0.8},
         "80,000 BTU/h input, 80 % efficient"),
        ("yes_no", {"yes": True, "sure": False}, "yes, not sure"),
        ("rise_range", {"rise_low_degf": 35, "rise_high_degf": 65}, "35 to 65 °F"),
    ],
)  # fmt: skip
def test_values_are_echoed_in_normal_form(field, values, told):
    assert echo(field, values) == told


def test_the_normal_form_reads_back_as_itself():
    for field, text in (
        ("duct", "20x8 galv, 22 ft"), ("airflow", "12 hundred"), ("static_pressure", "-.3"),
        ("length", "40"),
        ("filter", "16x25x1"), ("grille", "two 14x20"), ("elevation", "950"),
    ):  # fmt: skip
        first = read(field, text)
        assert isinstance(first, Accepted)
        again = read(field, echo(field, first.values))
        assert isinstance(again, Accepted), echo(field, first.values)
        assert dict(again.values) == dict(first.values)


def test_importing_the_reader_loads_neither_pint_nor_rapidfuzz():
    heavy = ("pint", "rapidfuzz", "numpy")
    code = f"import sys, intake.reading.read; print([m for m in {heavy} if m in sys.modules])"
    told = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert told.stdout.strip() == "[]"


@pytest.mark.parametrize(
    ("unit", "to", "through"),
    [
        ("ft", "m", ("foot", "meter")),
        ("mm", "yd", ("millimeter", "yard")),
        ("lps", "m3h", ("liter/second", "meter**3/hour")),
        ("sqm", "sqin", ("meter**2", "inch**2")),
        ("mbar", "pa", ("millibar", "pascal")),
        ("kw", "ton", ("kilowatt", "12000 * Btu_it/hour")),
        ("degf", "deg", ("delta_degF", "delta_degF")),
    ],
)
def test_units_convert_through_a_common_one_as_pint_has_it(unit, to, through, monkeypatch):
    one, two = through
    registry = pint.UnitRegistry()
    ratio = registry.parse_expression(one) / registry.parse_expression(two)
    monkeypatch.setattr("intake.reading.units._registry", None)  # no answer waits for pint
    assert convert(1.0, unit, to) == pytest.approx(float(ratio.to("").magnitude), rel=1e-9)


@pytest.mark.parametrize("unit", ["degf", "degc", "degk"])
@pytest.mark.parametrize("to", ["degf", "degc", "degk"])
def test_scales_of_temperature_convert_as_pint_has_them(unit, to, monkeypatch):
    names = {"degf": "degF", "degc": "degC", "degk": "kelvin"}
    told = pint.UnitRegistry().Quantity(300.0, names[unit]).to(names[to]).magnitude
    monkeypatch.setattr("intake.reading.units._registry", None)  # no answer waits for pint
    assert convert(300.0, unit, to) == pytest.approx(float(told), abs=1e-9)
