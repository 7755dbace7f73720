"""Ducts as people describe them. Expected values are computed from the words alone."""

import pytest

from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, AskKind, Rejected, Sure, Unknown


def accepted(text: str) -> dict[str, object]:
    reading = read("duct", text)
    assert isinstance(reading, Accepted), reading
    return {
        name: pytest.approx(value) if isinstance(value, float) else value
        for name, value in reading.values.items()
    }


def asked(text: str) -> AskBack:
    reading = read("duct", text)
    assert isinstance(reading, AskBack), reading
    return reading


def rect(width: float, height: float, **more: object) -> dict[str, object]:
    return {"shape": "rect", "width_in": width, "height_in": height, **more}


def round_(diameter: float, **more: object) -> dict[str, object]:
    return {"shape": "round", "diameter_in": diameter, **more}


@pytest.mark.parametrize(
    "text",
    [
        "20x8", "20 X 8", "20*8", "20×8″", "20”x8”", "20 by 8", "twenty by eight", "20 bite 8",
        "20/8", "20-8", '20" W x 8" H', "W20 H8", "width 20, height 8", "20 wide 8 tall",
        "8 high by 20 wide", "8 tall 20 wide", "２０ｘ８", "about 20 by about 8", "20ish by 8",
        "20in x 8in", "20inx8in", "1ft 8in x 8in",
    ],
)  # fmt: skip
def test_a_size_is_read_however_it_is_typed(text):
    assert accepted(text) == rect(20.0, 8.0)


@pytest.mark.parametrize(
    ("text", "width", "height"),
    [
        ("11 1/4 x 17", 11.25, 17.0),
        ("11¼x17", 11.25, 17.0),
        ("3-1/4 x 10 wall stack", 3.25, 10.0),
        ("ten by three and a quarter", 10.0, 3.25),
        ("24 by 8 and a half", 24.0, 8.5),
        ("a foot and a half by ten", 18.0, 10.0),
        ('1\'6" x 10"', 18.0, 10.0),
        ("2' x 1'", 24.0, 12.0),
        ("2 ft x 8", 24.0, 8.0),
        ("12 inch square", 12.0, 12.0),
    ],
)
def test_fractions_and_feet_become_inches(text, width, height):
    assert accepted(text) == rect(width, height)


@pytest.mark.parametrize(
    ("text", "width_mm", "height_mm"),
    [("300mm x 150mm", 300, 150), ("500x200 mm", 500, 200), ("50 cm x 20 cm", 500, 200)],
)
def test_a_metric_unit_holds_for_both_sides(text, width_mm, height_mm):
    # 1 in is 25.4 mm by definition.
    assert accepted(text) == rect(
        pytest.approx(width_mm / 25.4, abs=1e-3), pytest.approx(height_mm / 25.4, abs=1e-3)
    )


@pytest.mark.parametrize(
    ("text", "material"),
    [
        ("20x8 tin", "galvanized"),
        ("20x8 sheet metal", "galvanized"),
        ("20x8 galvinized", "galvanized"),
        ("wrapped metal 20x8", "galvanized"),
        ("20x8 unlined metal", "galvanized"),
        ("20x8 metal, insulated on the outside", "galvanized"),
        ("20x8 insulated inside", "lined_metal"),
        ("metal lined with fiberglass 20x8", "lined_metal"),
        ("duck board 20x8", "duct_board"),
        ("duct bored 20x8", "duct_board"),
        ("tin 20x8 under the joists", "panned_joist"),
        ("20x8 between the studs", "stud_bay"),
        ("20x8 alum", "aluminum"),
    ],
)
def test_a_nickname_names_its_material(text, material):
    assert accepted(text) == rect(20.0, 8.0, material=material)


def test_aluminum_flex_is_flex_and_flex_is_round():
    assert accepted('aluminum flex 6"') == round_(6.0, material="flex")


def test_a_denied_material_is_not_taken():
    assert accepted("not flex, 8 inch metal pipe") == round_(8.0, material="galvanized")


def test_wrap_alone_says_nothing_of_the_metal():
    assert accepted("20x8 wrapped") == rect(20.0, 8.0)


@pytest.mark.parametrize("text", ["20x8 fiberglass", "20x10 insulated", "20x8 insulated metal"])
def test_a_word_that_fits_two_materials_is_asked(text):
    assert asked(text).kind is AskKind.AMBIGUOUS_WORD


@pytest.mark.parametrize(
    "text",
    [
        "1 inch liner 20x10", "20x10 with three-quarter inch liner",
        "20 x 10, inch and a half lined", "20x10 x 1 in liner",
    ],
)  # fmt: skip
def test_the_thickness_of_a_liner_is_no_side(text):
    assert accepted(text) == rect(20.0, 10.0, material="lined_metal")


def test_gauge_and_insulation_value_are_no_sides():
    assert accepted("20x8 26 gauge") == rect(20.0, 8.0)
    assert accepted("R-6 flex 8 inch") == round_(8.0, material="flex")
    assert accepted("R 4.2 flex, six inch core") == round_(6.0, material="flex")


@pytest.mark.parametrize(
    "text", ["8 inch round", 'rnd 8"', "8in dia", "ø8", "8r", "8 rownd", "ate inch round"]
)
def test_a_round_duct_is_read_by_its_diameter(text):
    assert accepted(text) == round_(8.0)


def test_a_bare_inch_figure_could_be_round_or_one_side():
    reading = asked("8 inch")
    assert reading.kind is AskKind.MISSING_PART
    assert dict(reading.readings[0]) == round_(8.0)


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("two 18x8s", 2), ("(3) 18x8", 3), ("18x8 (2)", 2), ("pair of 18x8", 2), ("18x8 x2", 2),
        ("2x 18x8", 2), ("18x8 each side", 2), ("two trunks, 18x8 each", 2), ("18x8, 3 of them", 3),
    ],
)  # fmt: skip
def test_a_count_beside_a_size_is_read(text, count):
    assert accepted(text) == rect(18.0, 8.0, count=count)


@pytest.mark.parametrize(
    ("text", "count"),
    [("5in flex, 3 runs", 3), ('3 x 5" flex', 3), ("5 inch flex x 4", 4), ("8 five-inch flex", 8)],
)
def test_a_count_times_a_diameter_is_no_rectangle(text, count):
    assert accepted(text) == round_(5.0, material="flex", count=count)


def test_a_count_and_the_lone_piece_score_the_same():
    assert accepted("one 11 inch rownd lined") == round_(11.0, material="lined_metal")


@pytest.mark.parametrize(
    "text", ["20x8, 22 ft", "22 ft of 20x8", "20x8x22'", "20 wide by 8 high by 22 feet long"]
)
def test_a_length_in_feet_is_the_length(text):
    assert accepted(text) == rect(20.0, 8.0, length_ft=22.0)


@pytest.mark.parametrize(
    "text",
    [
        "21x9 at the furnace, 15x9 by the end", "24x8 reduces to 16x8", "20x8 or 20x10",
        "inside 18x8 outside 20x10", "tapers from 20x8 to 12x8", "7 inch flex and 8 inch flex",
        "either 6 or 7 inch flex", "20 by 8 maybe 10", "18 to 20 by 8", "20x8 12",
    ],
)  # fmt: skip
def test_two_sizes_are_asked_apart(text):
    asked(text)


@pytest.mark.parametrize("text", ["20.8", "208", "2008", "roughly 17 and 9", "20 8", "300 by 150"])
def test_digits_that_may_hide_a_size_are_asked_with_it(text):
    assert asked(text).readings


@pytest.mark.parametrize(
    "text", ["15 by something", "20x", "x8", "20 wide", "16 in oval", "standard size", "flex"]
)
def test_a_missing_side_is_asked(text):
    assert asked(text).kind is AskKind.MISSING_PART


@pytest.mark.parametrize("text", ["48x40", "0x8", "30x5", "200 round", "2 inch round", "90x8"])
def test_a_size_that_no_house_has_is_asked(text):
    asked(text)


def test_lumber_is_not_the_bay():
    assert "lumber" in asked("2x8 joist bay").why


def test_a_tape_around_the_duct_and_a_radius_give_the_diameter_to_confirm():
    # circumference = pi d; d = 2 r
    assert asked("25 inches around").readings[0]["diameter_in"] == pytest.approx(
        25 / 3.14159, abs=0.1
    )
    assert asked("radius 5").readings[0]["diameter_in"] == 10.0


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("20x8 over the wrap", "over wrap"), ("20x8 outside", "outside"), ("6 in flex core",
        "core"),
        ("20x8 inside the liner", "liner"), ("20x8 bare metal", "bare"),
        ("three-quarter inch liner inside a 19x9", None), ("20x8", None),
    ],
)  # fmt: skip
def test_where_it_was_measured_is_kept(text, place):
    reading = read("duct", text)
    assert isinstance(reading, Accepted)
    assert reading.place == place


def test_the_core_is_taken_where_core_and_jacket_are_given():
    assert accepted("10 in flex core, 14 over jacket") == round_(10.0, material="flex")


@pytest.mark.parametrize(
    "text", ["20x8, no wait, 20x10", "20x8 scratch that 20x10", "20x10 not 20x8"]
)
def test_a_second_thought_wins(text):
    assert accepted(text) == rect(20.0, 10.0)


def test_another_question_answered_in_the_same_breath_is_kept_apart():
    reading = read("duct", "20x8 galv, oh and there's a 1-inch filter, 14 by 20")
    assert isinstance(reading, Accepted)
    assert dict(reading.values) == rect(20.0, 8.0, material="galvanized")
    assert reading.others[0].field == "filter"
    assert dict(reading.others[0].values) == {"width_in": 14.0, "height_in": 20.0, "depth_in": 1.0}


def test_a_value_with_another_unit_is_kept_apart():
    reading = read("duct", "20x8 1200 cfm")
    assert isinstance(reading, Accepted)
    assert [(o.field, dict(o.values)) for o in reading.others] == [("airflow", {"cfm": 1200.0})]


@pytest.mark.parametrize(
    "text", ["buried in spray foam, no way to see it", "drywalled over", "sealed chase", "no idea"]
)
def test_a_duct_nobody_can_see_is_unknown(text):
    assert isinstance(read("duct", text), Unknown)


def test_not_knowing_the_material_leaves_the_size():
    assert accepted("13x9, dont know what kind") == rect(13.0, 9.0)


@pytest.mark.parametrize("text", ["the brown house on the corner", "banana", "hello there"])
def test_chat_is_rejected(text):
    assert isinstance(read("duct", text), Rejected)


@pytest.mark.parametrize("text", ["14.3 SEER2", "400 cfm", "3 ton", "72 F"])
def test_another_quantity_is_named(text):
    assert asked(text).kind is AskKind.WRONG_QUANTITY


@pytest.mark.parametrize(
    ("text", "sure"),
    [
        ("20x8", Sure.PLAIN), ("about 20x8", Sure.HEDGED), ("20x8 or so", Sure.HEDGED),
        ("tape says 20x8", Sure.MEASURED), ("just a guess, 20x8", Sure.GUESSED),
        ("the label says 20x8", Sure.PLATE), ("i measured about 20x8", Sure.HEDGED),
    ],
)  # fmt: skip
def test_how_sure_the_person_is_is_kept(text, sure):
    reading = read("duct", text)
    assert isinstance(reading, Accepted)
    assert reading.sure is sure
