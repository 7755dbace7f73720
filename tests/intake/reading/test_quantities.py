"""Airflow, pressure, length, elevation, temperature, capacity and efficiency as typed.

Expected values: 1 ft3 = 28.316846592 L, 1 in. w.c. = 249.089 Pa, 1 kW = 3412.142 BTU/h,
1 ton = 12,000 BTU/h, degF = 1.8 degC + 32 (how: definitions, computed).
"""

import pytest

from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, AskKind, Rejected, Unknown


def accepted(field: str, text: str, **more: object) -> dict[str, object]:
    reading = read(field, text, **more)
    assert isinstance(reading, Accepted), reading
    return dict(reading.values)


def asked(field: str, text: str) -> AskBack:
    reading = read(field, text)
    assert isinstance(reading, AskBack), reading
    return reading


@pytest.mark.parametrize(
    ("text", "cfm"),
    [
        ("1200", 1200), ("1,200 cfm", 1200), ("twelve hundred", 1200), ("twelve fifty", 1250),
        ("eleven oh five", 1105), ("1.2k", 1200), ("12OO cfm", 1200), ("1100 cmf", 1100),
        ("1200 cubic feet a minute", 1200), ("3 tons at 400 cfm/ton", 1200),
        ("1.5 ton @ 375", 562.5),
        ("350 a ton on a 3 and a half ton", 1225), ("300 l/s", 635.66), ("1700 m3/h", 1000.58),
        ("30 m3/min", 1059.44), ("3.5 x 400 = 1400", 1400), ("1200 cfm not 1100", 1200),
        ("1200, sorry, 1100 cfm", 1100), ("1 200 cfm", 1200),
    ],
)  # fmt: skip
def test_an_airflow_is_read(text, cfm):
    assert accepted("airflow", text)["cfm"] == pytest.approx(cfm, abs=0.01)


@pytest.mark.parametrize(
    "text", ["700-850 cfm", "700 to 850", "between 700 and 850", "700, maybe 850"]
)
def test_a_range_of_airflow_keeps_both_ends(text):
    assert accepted("airflow", text) == {"cfm_low": 700.0, "cfm_high": 850.0}


def test_plus_or_minus_is_a_range():
    assert accepted("airflow", "1150 plus or minus 50") == {"cfm_low": 1100.0, "cfm_high": 1200.0}


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("700 fpm at the grille", AskKind.WRONG_QUANTITY), ("3 ton", AskKind.WRONG_QUANTITY),
        ("400/ton", AskKind.MISSING_PART), ("at least 900", AskKind.MISSING_PART),
        ("12", AskKind.IMPLAUSIBLE), ("1.200 cfm", AskKind.IMPLAUSIBLE),
        ("900 or 1000", AskKind.TWO_VALUES), ("800 low 1200 high", AskKind.TWO_VALUES),
        ("3 ton 400", AskKind.TWO_READINGS), ("400 x 3", AskKind.TWO_READINGS),
    ],
)  # fmt: skip
def test_an_airflow_that_is_none_or_two_is_asked(text, kind):
    assert asked("airflow", text).kind is kind


@pytest.mark.parametrize("text", ["my truck is a 2015", "700 widgets", "call 555-1234", "page 3"])
def test_a_number_that_belongs_elsewhere_is_no_airflow(text):
    assert not isinstance(read("airflow", text), Accepted)


@pytest.mark.parametrize(
    ("text", "values"),
    [
        (".37", {"inwc": 0.37}), ("0,45", {"inwc": 0.45}), ("point four four", {"inwc": 0.44}),
        ("five tenths", {"inwc": 0.5}), ("half an inch", {"inwc": 0.5}),
        ("0.5 in. w.c.", {"inwc": 0.5}),
        ("-0.19", {"inwc": 0.19, "sign": -1}), ("negative .3", {"inwc": 0.3, "sign": -1}),
        ("+.4", {"inwc": 0.4, "sign": 1}), ("90 Pa", {"inwc": 0.3613}),
        ("rtn .21 sply .47", {"return_inwc": 0.21, "supply_inwc": 0.47}),
        ("r .28 s .36", {"return_inwc": 0.28, "supply_inwc": 0.36}),
        ("return -0.3 supply +0.4", {"return_inwc": 0.3, "supply_inwc": 0.4}),
        (".4-.5", {"inwc_low": 0.4, "inwc_high": 0.5}),
        (".3-.35 bounces around", {"inwc_low": 0.3, "inwc_high": 0.35}),
        ("supply 0.22 return 0.31 total 0.53",
         {"return_inwc": 0.31, "supply_inwc": 0.22, "total_inwc": 0.53}),
    ],
)  # fmt: skip
def test_a_static_pressure_is_read(text, values):
    assert accepted("static_pressure", text) == pytest.approx(values, abs=1e-4)


def test_a_bare_number_above_any_static_may_be_pascals_or_hundredths():
    readings = [dict(r) for r in asked("static_pressure", "65").readings]
    assert readings == [{"inwc": 0.65}, {"inwc": pytest.approx(65 / 249.089, abs=1e-3)}]


def test_a_total_that_is_the_difference_of_its_parts_is_asked_with_their_sum():
    reading = asked("static_pressure", "return -.3 supply .4 total .1")
    assert reading.readings[0]["total_inwc"] == pytest.approx(0.7)


@pytest.mark.parametrize(
    "text", ["0.5 psi", "3.5", "7 inches", "0", "supply -.2", "before .1 after .3"]
)
def test_an_odd_static_is_asked(text):
    asked("static_pressure", text)


@pytest.mark.parametrize(
    ("text", "ft"),
    [
        ("33 ft", 33), ("33", 33), ("18' 9\"", 18.75), ("5'-10\"", 5 + 10 / 12), ("6'6", 6.5),
        ("12 feet six", 12.5), ("six and a half feet", 6.5), ("a hundred and ten", 110),
        ("one ten", 110), ("45 feat", 45), ("45 fet", 45), ("10 m", 32.808), ("150 inches", 12.5),
        ("not 30, 28", 28), ("28 to the far bedroom", 28),
    ],
)  # fmt: skip
def test_a_length_is_read_in_feet(text, ft):
    assert accepted("length", text)["ft"] == pytest.approx(ft, abs=1e-3)


def test_feet_and_inches_with_a_dash_are_no_range_but_two_feet_are():
    assert accepted("length", "5'-10\"") == {"ft": pytest.approx(5.8333, abs=1e-4)}
    assert accepted("length", "5-10 ft") == {"ft_low": 5.0, "ft_high": 10.0}


@pytest.mark.parametrize(
    ("text", "ft"),
    [("four joists over", 16 * 4 / 12), ("3 sections of 10 ft", 30.0), ("20 plus 15", 35.0)],
)
def test_a_length_by_pieces_is_asked_with_their_sum(text, ft):
    assert asked("length", text).readings[0]["ft"] == pytest.approx(ft, abs=0.01)


@pytest.mark.parametrize(
    "text",
    ["a roll and a bit", "two floors up", "couldn't get past the first 20 ft", "800", "12 x 14"],
)
def test_a_vague_or_partial_length_is_asked(text):
    asked("length", text)


@pytest.mark.parametrize(
    ("text", "ft"),
    [
        ("950 ft", 950), ("1600 m", 5249.3), ("sea level", 0), ("fifty two eighty", 5280),
        ("7k", 7000), ("100 ft below sea level", -100), ("5,280 feet above sea level", 5280),
    ],
)  # fmt: skip
def test_an_elevation_is_read(text, ft):
    assert accepted("elevation", text)["ft"] == pytest.approx(ft, abs=0.1)


@pytest.mark.parametrize("text", ["80202", "5", "900-1000 ft", "in the mountains", "30,000 ft"])
def test_an_elevation_that_is_none_is_asked(text):
    asked("elevation", text)


@pytest.mark.parametrize("text", ["72 F", "two stories"])
def test_another_thing_is_no_elevation(text):
    assert not isinstance(read("elevation", text), Accepted)


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("26 C", {"degF": 78.8}), ("seventy two", {"degF": 72}), ("-5 C", {"degF": 23}),
        ("78 going back, 58 coming out", {"return_degF": 78, "supply_degF": 58}),
        ("75 in 55 out", {"return_degF": 75, "supply_degF": 55}),
        ("sixty nine return one twenty supply", {"return_degF": 69, "supply_degF": 120}),
        ("supply 120", {"supply_degF": 120}), ("dropping 22 across the coil", {"delta_degF": 22}),
        ("20C drop", {"delta_degF": 36}), ("delta of 11 C", {"delta_degF": 19.8}),
        ("72 F return, 20 degree split", {"return_degF": 72, "delta_degF": 20}),
    ],
)  # fmt: skip
def test_temperatures_and_differences_are_told_apart(text, values):
    assert accepted("temperature", text) == pytest.approx(values)


@pytest.mark.parametrize("text", ["26", "75/55", "72 to 75", "700", "warm"])
def test_an_unclear_temperature_is_asked(text):
    asked("temperature", text)


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("4.5 tons", {"btuh": 54000}), ("free ton", {"btuh": 36000}), ("3.5", {"btuh": 42000}),
        ("a ton and a half", {"btuh": 18000}), ("042", {"btuh": 42000}), ("20 kW", {"btuh": 68243}),
        ("80 M", {"btuh": 80000}), ("80MBH", {"btuh": 80000}), ("24 000", {"btuh": 24000}),
        ("110k input 92%", {"input_btuh": 110000, "efficiency": 0.92}),
        ("80k in 64k out", {"input_btuh": 80000, "output_btuh": 64000}),
        ("input 100k output 80k", {"input_btuh": 100000, "output_btuh": 80000}),
        ("model ends in 060", {"btuh": 60000}), ("two stage 80k", {"btuh": 80000}),
    ],
)  # fmt: skip
def test_a_capacity_is_read(text, values):
    assert accepted("capacity", text) == pytest.approx(values, rel=1e-4)


@pytest.mark.parametrize(
    "text",
    [
        "80", "36", "3", "45 or 60k", "2 stage 80k/56k", "3 ton heat pump 80k furnace", "7 tons",
        "2 ton or maybe 2 and a half", "80% of 100k", "600", "1200 cfm", "0.5 ton",
    ],
)  # fmt: skip
def test_an_unclear_capacity_is_asked(text):
    asked("capacity", text)


def test_a_bare_number_is_tons_where_tons_were_asked():
    assert accepted("capacity", "3", question="How many tons?") == {"btuh": 36000.0}


@pytest.mark.parametrize(
    ("text", "fraction"),
    [
        ("93", 0.93), ("93%", 0.93), (".8", 0.8), ("ninety-two point five", 0.925),
        ("a few 95", 0.95), ("two-stage 96", 0.96), ("80 not 90", 0.8), ("0,92", 0.92),
    ],
)  # fmt: skip
def test_an_efficiency_is_read(text, fraction):
    assert accepted("efficiency", text) == pytest.approx({"fraction": fraction})


@pytest.mark.parametrize(
    "text", ["HSPF 9", "16 seer2", "90+", "16", "condensing", "80 or 90", "8", "45", "COP 3"]
)
def test_a_rating_that_is_no_furnace_efficiency_is_asked(text):
    asked("efficiency", text)


@pytest.mark.parametrize(
    "field", ["airflow", "static_pressure", "length", "capacity", "temperature"]
)
@pytest.mark.parametrize(
    "text",
    ["hood's out for calibration", "no gauge", "left it in the truck", "can't see it", "idk",
     "the tag is worn off", "nobody's home", "n/a", "?", "i'd have to look", "plate is gone"],
)  # fmt: skip
def test_not_knowing_is_understood_in_its_many_wordings(field, text):
    assert isinstance(read(field, text), Unknown)


@pytest.mark.parametrize("field", ["airflow", "static_pressure", "length", "capacity", "elevation"])
@pytest.mark.parametrize("text", ["the brown house on the corner", "purple", "see attached", "..."])
def test_chat_is_rejected_everywhere(field, text):
    assert isinstance(read(field, text), Rejected)


def test_the_caller_s_bounds_replace_the_field_s():
    assert isinstance(read("airflow", "90"), AskBack)
    assert isinstance(read("airflow", "90", low=20.0, high=300.0), Accepted)
    assert isinstance(read("length", "380", high=1000.0), Accepted)


@pytest.mark.parametrize(
    ("field", "text", "values"),
    [
        ("rise_range", "thirty-five to sixty-five", {"rise_low_degf": 35, "rise_high_degf": 65}),
        ("rise_range", "35/65", {"rise_low_degf": 35, "rise_high_degf": 65}),
        ("count", "a dozen", {"count": 12}), ("count", "none", {"count": 0}),
        ("count", "about 10", {"count": 10}), ("year", "nineteen seventy eight", {"year": 1978}),
        ("year", "1960s", {"year_low": 1960, "year_high": 1969}),
        ("area", "eighteen fifty", {"area_ft2": 1850}), ("area", "150 m2", {"area_ft2": 1614.6}),
        ("percent", "a third", {"percent": 100 / 3}), ("percent", "10 to 20",
         {"percent_low": 10, "percent_high": 20}),
    ],
)  # fmt: skip
def test_small_fields_are_read(field, text, values):
    assert accepted(field, text) == pytest.approx(values, rel=1e-4)


@pytest.mark.parametrize(
    ("field", "text"),
    [("rise_range", "50"), ("rise_range", "160 to 200"), ("count", "3 or 4"), ("count", "2.5"),
     ("year", "78"), ("year", "2050"), ("area", "30x60"), ("percent", "0.4"), ("percent", "110")],
)  # fmt: skip
def test_small_fields_ask_where_it_is_unclear(field, text):
    asked(field, text)


@pytest.mark.parametrize(
    ("field", "text"),
    [
        ("airflow", "400-500 cfm each, 3 of them"),
        ("length", "twice 20"),
        ("length", "20 down and 20 back"),
        ("capacity", "60k each"),
        ("static_pressure", "return and supply both .3"),
        ("duct", "20x8 reducing"),
    ],
)
def test_a_value_of_each_of_several_is_asked_in_all(field, text):
    asked(field, text)
