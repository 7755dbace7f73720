"""Readers of the answers that only this interview asks for."""

import pytest

from intake.interview.own_reading import read_own
from intake.reading.result import Accepted, AskBack, Rejected


def read(field: str, text: str, choices: tuple[str, ...] = ()):
    return read_own(field, text, choices)


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("3 ton two-stage heat pump", {"kind": "heat_pump", "stages": "two", "tons": 3.0}),
        ("Heat Bump, 2 1/2 ton", {"kind": "heat_pump", "tons": 2.5}),
        ("gas furnace with a 036 coil", {"kind": "furnace", "tons": 3.0}),
        ("dual fuel 4 ton variable speed", {"kind": "dual_fuel", "stages": "variable", "tons": 4}),
        ("heat pump over a gas furnace", {"kind": "dual_fuel"}),
        ("hair handler", {"kind": "air_handler"}),
        ("packaged unit, single stage", {"kind": "packaged", "stages": "single"}),
        ("3", {"tons": 3.0}),
        ("36", {"tons": 3.0}),
        ("model AB4C5036X1000", {"tons": 3.0}),
        ("it says ABC048-2", {"tons": 4.0}),
        ("2 1/2", {"tons": 2.5}),
    ],
)
def test_equipment(text, values):
    found = read("equipment", text)
    assert isinstance(found, Accepted)
    assert found.values == values


def test_equipment_keeps_the_figures_beside_it():
    found = read("equipment", "80k 96% furnace with 3 ton coil, 1200 cfm")
    assert isinstance(found, Accepted)
    others = {other.field: other.values for other in found.others}
    assert others == {
        "airflow": {"cfm": 1200.0},
        "capacity": {"input_btuh": 80_000.0, "efficiency": 0.96},
    }


def test_two_sizes_are_asked_back():
    found = read("equipment", "3 or 3.5 ton heat pump")
    assert isinstance(found, AskBack)
    assert [values["tons"] for values in found.readings] == [3.0, 3.5]


def test_cooling_alone_asks_what_moves_the_air():
    assert isinstance(read("equipment", "just the a/c"), AskBack)


@pytest.mark.parametrize("text", ["a boiler", "mini split"])
def test_what_moves_no_air_through_ducts_is_the_wrong_job(text):
    found = read("equipment", text)
    assert isinstance(found, Rejected)
    assert "no air" in found.why


def test_tons_no_house_has_are_asked_back():
    assert isinstance(read("equipment", "25 ton heat pump"), AskBack)


@pytest.mark.parametrize(
    ("text", "has", "lacks"),
    [
        ("tape and gauge", ["tape", "gauge"], ["probes", "flow_plate"]),
        ("just a tape, no gauge", ["tape"], ["gauge", "probes", "flow_plate"]),
        ("everything", ["tape", "gauge", "probes", "flow_plate"], []),
        ("everything but the flow hood", ["tape", "gauge", "probes"], ["flow_plate"]),
        ("all of it", ["tape", "gauge", "probes", "flow_plate"], []),
        ("nothing", [], ["tape", "gauge", "probes", "flow_plate"]),
        ("no gauge", [], ["gauge"]),
        ("manometer and thermometers", ["gauge", "probes"], ["tape", "flow_plate"]),
    ],
)
def test_tools(text, has, lacks):
    found = read("tools", text)
    assert isinstance(found, Accepted)
    assert found.values == {"has": has, "lacks": lacks}


@pytest.mark.parametrize(
    ("text", "material", "place"),
    [
        ("bare metal", "galvanized", "bare"),
        ("it rings", "galvanized", "bare"),
        ("unlined", "galvanized", "bare"),
        ("wrapped", "galvanized", None),
        ("wrapped metal", "galvanized", None),
        ("lined inside", "lined_metal", None),
        ("duct board", "duct_board", None),
        ("flex", "flex", None),
        ("panned joist bay", "panned_joist", None),
    ],
)
def test_skins(text, material, place):
    found = read("skin", text)
    assert isinstance(found, Accepted)
    assert found.values == {"material": material}
    assert found.place == place


def test_two_skins_are_asked_back():
    assert isinstance(read("skin", "duct board or flex"), AskBack)


@pytest.mark.parametrize(
    ("choices", "text", "place"),
    [
        (("outside", "over_wrap", "inside"), "outside on the metal", "outside"),
        (("outside", "over_wrap", "inside"), "over the wrap", "over wrap"),
        (("outside", "over_wrap", "inside"), "clear inside", "inside"),
        (("hole", "frame"), "just the slots", "slots"),
        (("hole", "frame"), "edge of the frame", "frame"),
        (("core", "jacket"), "inner core", "core"),
        (("core", "jacket"), "over the jacket", "jacket"),
    ],
)
def test_where_the_tape_was_held(choices, text, place):
    found = read("measured_where", text, choices)
    assert isinstance(found, Accepted)
    assert found.place == place


@pytest.mark.parametrize(
    ("text", "inches"),
    [("1 inch", 1.0), ("half inch", 0.5), ("1/2", 0.5), ('1.5"', 1.5), ("25 mm", 0.984)],
)
def test_thickness(text, inches):
    found = read("thickness", text)
    assert isinstance(found, Accepted)
    assert found.values["in"] == pytest.approx(inches, abs=0.001)


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("coil some dirt, wheel clean", {"coil": "some_dirt", "blower_wheel": "clean"}),
        ("coil and wheel filthy, filter new",
         {"coil": "plugged", "blower_wheel": "plugged", "filter": "clean"}),
        ("all clean", {"coil": "clean", "blower_wheel": "clean", "filter": "clean"}),
        ("coil clean but wheel is caked", {"coil": "clean", "blower_wheel": "plugged"}),
        ("not too bad", {"coil": "some_dirt", "blower_wheel": "some_dirt", "filter": "some_dirt"}),
    ],
)  # fmt: skip
def test_conditions(text, values):
    found = read("conditions", text)
    assert isinstance(found, Accepted)
    assert found.values == values


@pytest.mark.parametrize(
    "field", ["equipment", "tools", "skin", "measured_where", "thickness", "conditions"]
)
@pytest.mark.parametrize("text", ["", "purple bananas", "🎉", "[/]", "z" * 500])
def test_what_holds_nothing_of_the_kind_reads_as_nothing(field, text):
    assert read(field, text, ("hole", "frame")) is None


CHANGES = (
    "like_for_like", "cooling_only", "heating_only", "bigger", "furnace_to_heat_pump",
    "first_cooling",
)  # fmt: skip


@pytest.mark.parametrize(
    ("text", "choice"),
    [
        ("just replacing the ac and furnace, same size", "like_for_like"),
        ("both", "like_for_like"),
        ("same heat pump again", "like_for_like"),
        ("only the cooling", "cooling_only"),
        ("the a/c", "cooling_only"),
        ("just the furnace", "heating_only"),
        ("want something bigger", "bigger"),
        ("nothing bigger, the same", "like_for_like"),
        ("going from a gas furnace to a heat pump", "furnace_to_heat_pump"),
        ("switching to a heat pump", "furnace_to_heat_pump"),
        ("we never had air conditioning", "first_cooling"),
        ("adding cooling for the first time", "first_cooling"),
    ],
)
def test_what_is_replaced(text, choice):
    found = read("change", text, CHANGES)
    assert isinstance(found, Accepted)
    assert found.values == {"choice": choice}


def test_a_heat_pump_alone_asks_what_is_there_now():
    found = read("change", "heat pump", CHANGES)
    assert isinstance(found, AskBack)
    assert [values["choice"] for values in found.readings] == [
        "furnace_to_heat_pump", "like_for_like",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("text", "choice"),
    [
        ("never", "never"),
        ("no, not that i know", "never"),
        ("once", "once"),
        ("just one time", "once"),
        ("yes, a board", "once"),
        ("it froze up twice last summer", "repeated"),
        ("more than once", "repeated"),
        ("every summer", "repeated"),
        ("keeps tripping", "repeated"),
    ],
)
def test_past_trouble(text, choice):
    found = read("trouble", text)
    assert isinstance(found, Accepted)
    assert found.values == {"choice": choice}


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("not wrapped", "outside"),
        ("no insulation on it", "outside"),
        ("there isn't any wrap", "outside"),
        ("unwrapped", "outside"),
        ("over the wrap", "over wrap"),
        ("outside, not over the wrap", "outside"),
        ("not inside, over the insulation", "over wrap"),
        ("inside, no wrap", "inside"),
    ],
)
def test_a_place_that_is_denied_is_not_where_the_tape_was(text, place):
    found = read("measured_where", text, ("outside", "over wrap", "inside"))
    assert isinstance(found, Accepted)
    assert found.place == place


def test_only_denied_places_leave_the_tape_open():
    assert read("measured_where", "not inside", ("outside", "over wrap", "inside")) is None


@pytest.mark.parametrize(
    ("text", "share"),
    [
        ("80k 96 furnace and 3.5 ton ac", 0.96),
        ("100,000 btu 80 furnace, 4 ton", 0.80),
        ("80k 3 ton furnace", None),
        ("60k 95k furnace", None),
    ],
)
def test_a_furnace_called_by_input_and_efficiency_gives_both(text, share):
    found = read("equipment", text)
    assert isinstance(found, Accepted)
    heat = [other.values.get("efficiency") for other in found.others if other.field == "capacity"]
    assert heat == [share]


@pytest.mark.parametrize(
    ("field", "text", "values"),
    [
        ("equipment", "3 ton heat pump not two stage", {"kind": "heat_pump", "tons": 3.0}),
        ("skin", "not duct board, metal", {"material": "galvanized"}),
        ("skin", "its not flex", None),
        ("skin", "isn't wrapped", None),
        ("conditions", "coil isn't dirty", {"coil": "clean"}),
        ("conditions", "coil not clean", {"coil": "some_dirt"}),
        ("conditions", "all clean but the wheel", None),
        ("conditions", "can't see the coil, filter's clean", {"filter": "clean"}),
        ("change", "no cooling, only heat", {"choice": "heating_only"}),
        ("change", "just the heat, no ac", {"choice": "heating_only"}),
    ],
)
def test_what_is_denied_is_not_read_as_said(field, text, values):
    found = read(field, text)
    assert (dict(found.values) if isinstance(found, Accepted) else None) == values
