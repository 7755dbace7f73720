"""Answers in free words, over all fields: what is denied, not known or only mentioned stays out."""

import pytest

from intake.reading.corpus import read_line

READ = [
    ("duct", "stud cavity 14.5 x 3.5, drywall both sides",
     {"shape": "rect", "width_in": 14.5, "height_in": 3.5, "material": "stud_bay"}),
    ("duct", "20x8 tin, taped at both ends",
     {"shape": "rect", "width_in": 20.0, "height_in": 8.0, "material": "galvanized"}),
    ("duct", "goes sixteen wide ten deep, dont know if theres liner",
     {"shape": "rect", "width_in": 16.0, "height_in": 10.0}),
    ("duct", "20x10 metal, couldn't tell if it's lined",
     {"shape": "rect", "width_in": 20.0, "height_in": 10.0, "material": "galvanized"}),
    ("duct", "18x8 tin, no idea about the liner",
     {"shape": "rect", "width_in": 18.0, "height_in": 8.0, "material": "galvanized"}),
    ("duct", "a pair of eight inch hard pipes off the end",
     {"shape": "round", "diameter_in": 8.0, "material": "galvanized", "count": 2}),
    ("duct", "3 slinky hoses, 8 inch",
     {"shape": "round", "diameter_in": 8.0, "material": "flex", "count": 3}),
    ("duct", "two metal pipes, each 7 inch",
     {"shape": "round", "diameter_in": 7.0, "material": "galvanized", "count": 2}),
    ("duct", "6 inch flex, jacket is about 9",
     {"shape": "round", "diameter_in": 6.0, "material": "flex"}),
    ("duct", "six inch core flex, jacket measures about ten",
     {"shape": "round", "diameter_in": 6.0, "material": "flex"}),
    ("duct", "8\" flex, r6 jacket", {"shape": "round", "diameter_in": 8.0, "material": "flex"}),
    ("duct", "3 joist bays panned over with tin, each 14.5 x 7.25",
     {"shape": "rect", "width_in": 14.5, "height_in": 7.25, "material": "panned_joist",
      "count": 3}),
    ("duct", "12,5 x 8 galvanized",
     {"shape": "rect", "width_in": 12.5, "height_in": 8.0, "material": "galvanized"}),
    ("duct", "20x8, dont think its lined", {"shape": "rect", "width_in": 20.0, "height_in": 8.0}),
    ("duct", "20x8, used to be lined", {"shape": "rect", "width_in": 20.0, "height_in": 8.0}),
    ("duct", "20x8, might be lined, not sure", {"shape": "rect", "width_in": 20.0,
                                                "height_in": 8.0}),
    ("filter", "3 in the ceiling, all 20x20x1",
     {"width_in": 20.0, "height_in": 20.0, "depth_in": 1.0, "count": 3}),
    ("filter", "two of em in the hall, each one is 16x20x1",
     {"width_in": 16.0, "height_in": 20.0, "depth_in": 1.0, "count": 2}),
    ("filter", "16x25x1, loaded on both sides", {"width_in": 16.0, "height_in": 25.0,
                                                 "depth_in": 1.0}),
    ("grille", "one big one thirty by twenty", {"width_in": 30.0, "height_in": 20.0}),
    ("grille", "20x25 filter grill", {"width_in": 20.0, "height_in": 25.0}),
    ("airflow", "1600 per the blower chart at .5", {"cfm": 1600.0}),
    ("static_pressure", "tag says .5 max but im reading .83", {"inwc": 0.83}),
    ("static_pressure", "plate shows 0.5, i'm getting 0.71", {"inwc": 0.71}),
    ("capacity", "INPUT 90,000 BTU/HR   OUTPUT 72,000 BTU/HR   RISE 40-70 F",
     {"input_btuh": 90000.0, "output_btuh": 72000.0}),
    ("capacity", "Cooling cap. 34,600 Btu/h, 208/230 V, max fuse 30 A", {"btuh": 34600.0}),
    ("capacity", "36000 BTUH 208-230V MCA 19.5 MOP 30", {"btuh": 36000.0}),
    ("material", "fiberglass bord", {"choice": "duct_board"}),
    ("material", "tin with a fiberglass blanket wrapped around the outside",
     {"choice": "galvanized"}),
    ("material", "sheet metal, can't see whether it's lined", {"choice": "galvanized"}),
]  # fmt: skip


@pytest.mark.parametrize(("field", "text", "values"), READ)
def test_it_is_read_as_it_is_said(field, text, values) -> None:
    got = read_line({"field": field, "text": text})
    assert got["outcome"] == "accept", got
    assert {k: v for k, v in got["expect"].items() if v != "unknown"} == pytest.approx(values)


@pytest.mark.parametrize(
    ("field", "text"),
    [
        ("length", "forty, feet or meters I forget"), ("length", "30 feet or yards"),
        ("airflow", "500, cfm or liters a second, not sure"),
        ("static_pressure", "120, pascals or inches?"), ("temperature", "21, C or F"),
        ("material", "part tin, part flex"), ("material", "half of it flex, half metal"),
        ("duct", "20x8 part tin part flex"), ("duct", "2 pipes"),
        ("duct", "two trunks, the big one is 24x10"), ("duct", "20,8"),
        ("static_pressure", ".5 at the coil, .8 total no wait"),
    ],
)  # fmt: skip
def test_what_leaves_two_readings_is_asked(field, text) -> None:
    assert read_line({"field": field, "text": text})["outcome"] in ("ask", "unknown"), text


@pytest.mark.parametrize(
    ("field", "text", "name", "value"),
    [
        ("duct", "two 18x8, one on both sides of the furnace", "count", 2),
        ("grille", "pair of 20x20, both ends of the hall", "count", 2),
        ("duct", "20x8, don't know how long but it's lined", "material", "lined_metal"),
        ("duct", "not sure of the age, 20x8 duct board", "material", "duct_board"),
        ("duct", "20x8 metal, lined i think", "material", "lined_metal"),
        ("duct", "20x8, don't see why but it's lined", "material", "lined_metal"),
        ("length", "40 feet or so", "ft", 40.0),
        ("static_pressure", ".5 max", "inwc", 0.5),
    ],
)
def test_near_misses_of_those_keep_their_values(field, text, name, value) -> None:
    got = read_line({"field": field, "text": text})
    assert got["outcome"] == "accept", got
    assert got["expect"][name] == value
