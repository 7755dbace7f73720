"""Loose talk: several answers in one breath, answers out of place, words that aren't answers."""

import pytest
from support.dialogue import Dialogue, opened

from engine.job.belief import How, Known
from engine.job.job import Job
from intake.interview.listening import listen
from intake.interview.planner import question_of
from intake.interview.turns import Manner, Voice
from intake.reading.result import Accepted


def before_the_trunks() -> Dialogue:
    return Dialogue().answer(
        safety="no",
        new_equipment="3 ton single stage heat pump, 1200 cfm",
        heat_pump_cfm="same",
        strip_cfm="none",
        blower_table="skip",
        blower_kind="psc",
        old_runs="yes",
        tools="tape and gauge",
        weather="yes",
    )


def at_the_trunk() -> Dialogue:
    told = before_the_trunks().play("one")
    assert told.key == "trunk_size", told.text
    return told


STAGED = ("no", "3 ton two-stage heat pump")


@pytest.mark.parametrize(
    "line",
    [
        "1200, 850 on low",
        "1200 and 850 low",
        "1200 high, 850 low",
        "1200 high 850 low",
        "high 1200 low 850 cfm",
        "1,200 on high and 850 on low",
        "1200/850",
        "850 in low stage; full 1200 cfm",
    ],
)
def test_airflows_told_apart_by_stage_fill_both(line):
    told = Dialogue().play(*STAGED, line)
    assert told.talk.job.number("target.cooling_high_cfm") == 1200.0
    assert told.talk.job.number("target.cooling_low_cfm") == 850.0
    assert "1,200 CFM" in told.text
    assert "low-stage cooling 850 CFM" in told.text
    assert told.key == "heat_pump_cfm"


def test_airflows_of_cooling_and_heating_in_one_line_fill_both():
    told = Dialogue().play("no", "3 ton single stage heat pump", "1200 cooling, 1250 heating")
    assert told.talk.job.number("target.cooling_high_cfm") == 1200.0
    assert told.talk.job.number("target.heat_pump_heating_cfm") == 1250.0


@pytest.mark.parametrize("line", ["1200 or 850", "1200 850", "1200 high, 850 high"])
def test_two_airflows_not_told_apart_are_asked_about(line):
    told = Dialogue().play(*STAGED, line)
    assert told.key == "cool_cfm"
    assert told.lines(Manner.ASK_BACK)


def test_a_size_where_none_was_asked_for_is_asked_about_and_taken():
    told = Dialogue().play(*STAGED, "20x8 metal")
    assert "20 x 8 in. metal: is that the supply trunk?" in told.text
    told.play("yes")
    assert told.talk.job.number("supply.trunks.0.width_in") == 20.0
    assert "Supply trunk: 20 x 8 in." in told.text
    assert told.key == "cool_cfm"
    told.play("1200")
    assert told.talk.job.number("target.cooling_high_cfm") == 1200.0
    assert told.replayed() == told.state


def test_a_size_where_none_was_asked_for_may_be_of_another_duct():
    told = Dialogue().play(*STAGED, "20x8 metal", "no, the return drop")
    assert told.talk.job.number("return.drops.0.width_in") == 20.0
    assert told.talk.job.number("supply.trunks.0.width_in") is None
    assert told.key == "cool_cfm"


def test_a_size_that_nobody_claims_is_left_out():
    told = Dialogue().play(*STAGED, "20x8 metal", "no")
    assert told.key == "cool_cfm"
    assert told.talk.job.number("supply.trunks.0.width_in") is None
    assert told.play("1200").talk.job.number("target.cooling_high_cfm") == 1200.0


def test_the_motor_told_for_the_blower_table_is_taken_and_the_table_asked_again():
    told = Dialogue().play("no", "3 ton single stage heat pump, 1200 cfm", "same", "none")
    told.play("yes", "tape")
    assert told.key == "blower_table"
    told.play("variable speed")
    assert told.key == "blower_table"
    assert told.talk.job.word("equipment.blower_kind") == "ecm_variable"
    assert "Blower motor: constant-airflow" in told.text
    assert told.play("skip").key == "blower_limit"


@pytest.mark.parametrize("voice", list(Voice))
@pytest.mark.parametrize("line", ["quit", "exit", "bye", "Quit."])
def test_quit_at_the_safety_question_quits(voice, line):
    told = Dialogue(voice).play(line)
    assert told.talk.left
    assert not told.talk.stopped
    assert not told.lines(Manner.ALARM)


def test_a_wordy_line_that_cant_be_read_asks_once_whether_something_is_wrong():
    told = Dialogue().play(*STAGED, "the lady here has a lovely cat")
    assert any("wrong right now" in line for line in told.lines(Manner.ASK_BACK))
    told.play("and a very big dog too")
    assert not any("wrong right now" in line for line in told.lines(Manner.ASK_BACK))


@pytest.mark.parametrize("line", ["blah blah", "the 3 of them had 4 cats 20x"])
def test_a_short_line_or_one_with_figures_asks_nothing_of_the_kind(line):
    told = Dialogue().play(*STAGED, line)
    assert not any("wrong right now" in line for line in told.lines())


def test_equipment_alone_is_too_early_to_say():
    told = Dialogue(judged=True).play("no", "3 ton heat pump")
    assert "won't carry" not in told.talk.standing()
    assert "too early to say" in told.talk.standing()


def test_stages_of_the_cooling_are_not_the_speeds_of_the_blower():
    told = Dialogue().play(
        "no",
        "4 ton two stage heat pump w/ variable speed air handler, 1600 high 1100 low cfm",
    )
    job = told.talk.job
    assert job.word("equipment.stages") == "two"
    assert job.word("equipment.blower_kind") == "ecm_variable"
    assert job.number("target.cooling_high_cfm") == 1600.0
    assert job.number("target.cooling_low_cfm") == 1100.0
    assert told.key == "heat_pump_cfm"


def test_a_strip_kits_kilowatts_are_no_furnace():
    told = Dialogue().play("no", "3 ton single stage heat pump, 1200 cfm", "same")
    told.play("10kw kit needs 900")
    assert told.talk.job.number("equipment.strip_minimum_cfm") == 900.0
    assert told.talk.job.number("equipment.heating_input_btuh") is None
    assert "furnace" not in told.text.lower()


@pytest.mark.parametrize(
    ("line", "kilowatts"),
    [
        ("2.5 ton single stage heat pump w 10kw strips", 10.0),
        ("3 ton single stage heat pump, 7.5 kW heat kit", 7.5),
        ("3 ton single stage heat pump, 15k strips", 15.0),
        ("3 ton single stage heat pump", None),
        ("3 ton single stage heat pump, 10 kw or 15 kw strips", None),
    ],
)
def test_strips_told_with_the_equipment_are_kept_and_their_air_is_still_asked(line, kilowatts):
    told = Dialogue().play("no", line)
    assert told.talk.job.number("equipment.strip_kw") == kilowatts
    assert told.talk.job.number("equipment.heating_input_btuh") is None
    told.play("1200", "same")
    assert told.key == "strip_cfm"


@pytest.mark.parametrize(
    "line",
    [
        "2 ton single stage heat pump no strips",
        "3 ton single stage heat pump, without electric heat strips",
        "3 ton single stage heat pump w/o a heat kit",
    ],
)
def test_no_strips_told_with_the_equipment_are_not_asked_for(line):
    told = Dialogue().play("no", line)
    assert "strip kit none" in told.text.lower()
    told.play("1200", "same")
    assert told.key == "old_runs"
    assert told.replayed() == told.state


def test_several_drops_share_the_air_in_what_is_said_of_them():
    told = at_the_trunk()
    while told.key != "drop_size":
        told.play("skip")
    told.play("2 of em 14x10 bare metal")
    # 1,200 CFM in two of 140 sq in.: 1,200 x 144 / 280 = 617 fpm
    assert "shared by 2, through the return drop (140 sq in. clear) runs at 617 fpm" in told.text


def test_what_there_is_none_of_takes_no_earlier_size_back():
    told = at_the_trunk()
    while told.key != "drop_size":
        told.play("skip")
    told.play("14x10 bare metal")
    told.play("no trunk return, just one big grille in the hall 20x30")
    assert told.talk.job.number("return.drops.0.width_in") == 14.0
    assert "Corrected" not in told.text


def test_kilowatts_alone_answer_the_question_about_strips():
    told = Dialogue().play("no", "3 ton single stage heat pump, 1200 cfm", "same", "10 kw")
    assert told.talk.job.number("equipment.strip_kw") == 10.0
    assert "Strip kit: 10 kW" in told.text
    assert told.key != "strip_cfm"


def test_what_a_thing_named_is_made_of_is_taken_wherever_it_is_said():
    told = at_the_trunk()
    told.play("two 20x8 metal, drop is 24x12 metal, filter 20x25x4 in a cabinet")
    told.play("the drop is lined")
    assert told.talk.job.word("return.drops.0.material") == "lined_metal"
    assert told.talk.job.number("return.drops.0.width_in") == 24.0


def test_a_size_told_before_its_thing_goes_to_that_thing():
    told = Dialogue().answer(
        safety="no", new_equipment="3 ton single stage ac, furnace 80k 80 percent",
        cool_cfm="1200", rise="35-65", old_runs="yes", tools="tape, gauge",
    )  # fmt: skip
    assert told.key == "weather"
    told.play("14x20 drop, bare")
    assert told.talk.job.number("return.drops.0.width_in") == 14.0
    told.play("trunks: 1, 20x8 tin")
    # nothing is taken of a line whose size can't be: no material alone
    assert told.talk.job.word("supply.trunks.0.material") is None
    assert told.key == "weather"


def test_a_bare_number_picks_from_no_choices_that_nobody_asked():
    told = Dialogue().answer(
        safety="no", new_equipment="3 ton single stage ac, furnace 80k 80 percent",
        cool_cfm="1200", rise="35-65", old_runs="yes", tools="tape", weather="yes",
    )  # fmt: skip
    assert told.key == "blower_table"
    told.play("two")
    assert told.talk.job.word("equipment.blower_kind") is None


def test_several_answers_in_one_breath_go_each_to_their_question():
    told = at_the_trunk()
    told.play("two 20x8 metal, drop is 24x12 metal, filter 20x25x4 in a cabinet")
    job = told.talk.job
    assert job.length("supply.trunks") == 1
    assert job.number("supply.trunks.0.count") == 2.0
    assert job.number("supply.trunks.0.width_in") == 20.0
    assert job.number("return.drops.0.width_in") == 24.0
    assert job.number("filters.0.depth_in") == 4.0
    assert job.word("filters.0.place") == "cabinet"
    for echoed in ("Supply trunk: 2 of 20 x 8 in.", "Return drop: 24 x 12 in.", "Filter: 20 x 25"):
        assert echoed in told.text
    told.play("actually the drop is 22x12")
    assert told.talk.job.number("return.drops.0.width_in") == 22.0
    assert told.replayed() == told.state


def test_what_a_reading_was_taken_under_may_be_told_with_it():
    told = at_the_trunk()
    while told.key != "static_total":
        told.play("skip")
    told.play("return .25 supply .35 at 1350 cfm cooling clean filter")
    job = told.talk.job
    assert job.number("readings.0.airflow_cfm") == 1350.0
    assert job.word("readings.0.mode") == "cooling_high"
    assert job.word("readings.0.filter_state") == "clean"
    told.play("no")
    assert told.key == "reading_source"


def test_pressures_told_early_never_change_the_airflow_that_is_needed():
    told = at_the_trunk()
    told.play("return .20 supply .30 at 1050 cfm")
    assert told.talk.job.number("target.cooling_high_cfm") == 1200.0
    assert told.talk.job.number("readings.0.after_filter_inwc") == 0.20
    assert told.talk.job.number("readings.0.airflow_cfm") == 1050.0
    assert told.key == "trunk_size"


def test_both_runs_may_be_told_in_one_line():
    told = at_the_trunk()
    while told.key != "run_supply":
        told.play("skip")
    told.play("60 supply 25 return")
    assert told.talk.job.number("path.supply_length_ft") == 60.0
    assert told.talk.job.number("path.return_length_ft") == 25.0
    assert told.key == "fittings"


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("its 82 out", "yes"),
        ("45 degrees", "no"),
        ("yep", "yes"),
        ("60", "yes"),
        ("sunny n 90", "yes"),
        ("cloudy and 48", "no"),
    ],
)
def test_the_weather_may_be_told_as_a_temperature(line, word):
    told = Dialogue().play("no", "3 ton single stage heat pump, 1200 cfm", "same", "none")
    told.play("yes", "tape and gauge")
    assert told.key == "weather"
    assert told.play(line).talk.job.word("site.weather_allows_cooling") == word


def test_openings_may_end_with_where_the_tape_was():
    told = at_the_trunk()
    while told.key != "openings":
        told.play("skip")
    told.play("one 20x20 and one 20x14, slots")
    assert told.talk.job.length("return.grilles") == 2
    assert told.talk.job.word("return.grilles.1.measured_where") == "hole"
    assert told.key == "static_total"


def test_a_temperature_rise_is_asked_only_where_no_airflow_was_measured():
    told = Dialogue().answer(
        safety="no",
        new_equipment="furnace 80k 80%, 3 ton, single stage, 1200 cfm",
        rise="35-65",
        blower_table="skip",
        blower_kind="psc",
        coil_drop=".25 at 1200",
        old_runs="yes",
        tools="tape, gauge and probes",
        weather="yes",
    )
    while told.key != "static_total":
        told.play("skip")
    told.play("return .2 supply .3 at 1100 cfm")
    asked = []
    while not told.talk.ended:
        asked.append(told.key)
        told.play("skip")
    assert "old_heat" not in asked


@pytest.mark.parametrize("line", ["no shes fine", "nope nothing at all here", "none of that today"])
def test_an_unusual_no_to_the_safety_look_is_a_no(line):
    told = Dialogue(Voice.DISPATCHER).play(line)
    assert told.key == "d_change"


@pytest.mark.parametrize("line", ["no one has checked", "no idea", "no but maybe", "not sure"])
def test_a_no_that_knows_nothing_is_no_clearance(line):
    told = Dialogue(Voice.DISPATCHER).play(line)
    assert told.key != "d_change"


def test_rooms_may_be_named_instead_of_counted():
    told = Dialogue(Voice.DISPATCHER).play("no", "same", "never")
    while told.key != "d_rooms":
        told.play("skip")
    told.play("the back bedroom and the office")
    assert told.talk.job.number("symptoms.uneven_rooms_count") == 2.0


def test_a_word_that_isnt_known_is_explained_in_a_sentence():
    told = Dialogue(Voice.DISPATCHER).play("no", "same", "never", "what's a return?")
    assert told.lines(Manner.HELP) == [
        "A return is an opening that pulls air in: a tissue sticks to it."
        " One that blows is a supply."
    ]


def test_what_the_phone_said_of_running_is_asked_again_on_site():
    call = Dialogue(Voice.DISPATCHER).play("no", "same", "once", "yes")
    told = Dialogue(Voice.TECHNICIAN, call.events)
    while told.key not in ("old_runs", "tools"):
        told.play("no" if told.key == "safety" else "skip")
    assert told.key == "old_runs"


def test_square_feet_are_no_year():
    told = Dialogue(Voice.DISPATCHER).play("no", "bigger", "never")
    assert told.key == "d_year"
    told.play("1900 or so sq ft")
    assert told.talk.job.number("house.year_built") is None
    assert told.talk.job.number("house.floor_area_ft2") == 1900.0
    assert told.key == "d_year"


def test_the_tons_of_today_told_with_a_bigger_unit_are_taken():
    told = Dialogue(Voice.DISPATCHER).play("no", "they want a bigger unit, its 3 tons now")
    assert told.talk.job.word("phone.change") == "bigger"
    assert told.talk.job.number("old.cooling_tons") == 3.0
    assert "3 tons" in told.text


def test_bare_said_with_a_size_is_bare_metal_and_not_asked_again():
    told = at_the_trunk().play("20x10 bare")
    assert told.talk.job.word("supply.trunks.0.material") == "galvanized"
    assert told.key == "drop_size"


def test_a_recap_ends_with_one_full_stop():
    call = Dialogue(Voice.DISPATCHER).play("no", "same", "never", "1900", "1980", "idk", "20x8x1")
    again = Dialogue(Voice.DISPATCHER, call.events)
    assert ".." not in again.text


@pytest.mark.parametrize(
    "line", ["there's two, one each way", "2, one left one right", "two, left and right"]
)
def test_one_each_way_are_two_trunks(line):
    told = at_the_trunk()
    told.play("back")
    assert told.key == "trunk_count"
    assert told.play(line).talk.job.number("supply.trunks.0.count") == 2.0


def test_no_drop_may_be_told_with_its_reason():
    told = at_the_trunk().play("20x8 bare metal", "none, its a platform return")
    assert told.talk.job.length("return.drops") == 0


def test_equal_openings_are_echoed_with_their_number():
    told = at_the_trunk()
    while told.key != "openings":
        told.play("skip")
    told.play("16x25 and 16x25")
    assert told.talk.job.length("return.grilles") == 2
    assert "Return openings: 2 of 16 x 25 in." in told.text


def test_no_speed_is_told_while_nobody_said_how_many_trunks_share_the_air():
    told = at_the_trunk().play("undo", "no idea", "20x8 bare metal")
    assert not told.lines(Manner.INSIGHT)


def test_a_size_told_before_the_number_of_trunks_leaves_the_number_to_be_asked():
    told = Dialogue().play("no", "3 ton single stage heat pump, 1200 cfm", "supply trunk is 20x8")
    while told.key not in ("trunk_count", "trunk_size", "trunk_skin"):
        told.play("skip")
    assert told.key == "trunk_count"


def test_an_unsure_material_is_echoed_as_unsure():
    told = at_the_trunk().play("20x8", "lined i think")
    assert "lined metal, not sure" in told.text


def test_two_stages_with_variable_speed_are_two_stages():
    told = Dialogue().play("no", "80k 96% furnace with 3 ton ac two stage variable speed")
    assert told.talk.job.word("equipment.stages") == "two"
    assert told.talk.job.word("equipment.blower_kind") == "ecm_variable"


def test_phone_answers_stay_phone_answers_on_site_until_they_are_confirmed():
    call = Dialogue(Voice.DISPATCHER).play("no", "same", "never", "1900", "1992", "3 tons")
    call.play("16x25x1")
    told = Dialogue(Voice.TECHNICIAN, call.events)
    while told.key != "filter":
        told.play("no" if told.key == "safety" else "skip")
    belief = told.talk.job.stated("filters.0.width_in")
    assert belief is not None
    assert belief.how is How.PHONE
    assert "By phone: 16 x 25 x 1 in." in told.open.text
    told.play("yep")
    confirmed = told.talk.job.stated("filters.0.width_in")
    assert confirmed is not None
    assert confirmed.how is not How.PHONE


@pytest.mark.parametrize(
    ("line", "word"),
    [("too cold", "no"), ("nope, cold", "no"), ("hot as hell", "yes"), ("in the thirties", "no")],
)
def test_the_weather_may_be_told_in_plain_words(line, word):
    told = Dialogue().play("no", "3 ton single stage heat pump, 1200 cfm", "same", "none")
    told.play("yes", "tape and gauge", line)
    assert told.talk.job.word("site.weather_allows_cooling") == word


@pytest.mark.parametrize("line", ["not hot", "it was cold last week", "is it cold?"])
def test_weather_of_another_day_or_in_doubt_is_asked_again(line):
    told = Dialogue().play("no", "3 ton single stage heat pump, 1200 cfm", "same", "none")
    assert told.play("yes", "tape and gauge", line).key == "weather"


def test_all_three_gates_may_be_told_at_once():
    told = Dialogue().play("no", "3 ton single stage heat pump, 1200 cfm", "same", "none")
    told.play("yes and ive got tape and gauge and its 85 out")
    job = told.talk.job
    assert [job.word(f"site.has_{tool}") for tool in ("tape", "gauge", "probes")] == [
        "yes", "yes", "no"
    ]  # fmt: skip
    assert job.word("old.works") == "yes"
    assert job.word("site.weather_allows_cooling") == "yes"


def test_an_answer_and_a_named_one_may_be_joined_by_and():
    told = at_the_trunk()
    while told.key != "openings":
        told.play("skip")
    told.play("16x10 and filter is 16x25x1")
    assert told.talk.job.number("return.grilles.0.width_in") == 16.0
    assert told.talk.job.number("filters.0.width_in") == 16.0
    assert told.talk.job.number("filters.0.depth_in") == 1.0


@pytest.mark.parametrize("line", ["300 cfm min i think", "at least 300", "minimum is 300 cfm"])
def test_the_least_that_was_asked_for_is_no_open_end(line):
    told = Dialogue().play("no", "3 ton single stage heat pump, 1200 cfm", "same", line)
    assert told.talk.job.number("equipment.strip_minimum_cfm") == 300.0


def test_both_counts_the_trunks_and_both_ways_does_not():
    told = before_the_trunks().play("16x8 on both, bare metal")
    assert told.talk.job.stated("supply.trunks.0.count") == Known(2.0, How.MEASURED)
    told = before_the_trunks().play("16x16, measured both ways")
    assert told.talk.job.stated("supply.trunks.0.count") != Known(2.0, How.MEASURED)


def test_a_thing_that_isnt_there_is_taken_for_its_own_question():
    told = before_the_trunks().play("there's no return trunk")
    assert told.talk.job.length("return.trunks") == 0
    assert told.key == "trunk_count"


def test_a_count_before_a_bare_size_keeps_all_three():
    told = before_the_trunks().play("2, 18x8 each, bare")
    job = told.talk.job
    assert job.stated("supply.trunks.0.count") == Known(2.0, How.MEASURED)
    assert job.word("supply.trunks.0.material") == "galvanized"
    assert told.key == "drop_size"


def test_a_size_is_no_answer_to_where_the_tape_was():
    told = before_the_trunks().play("one", "18x8 lined")
    assert told.key == "trunk_where"
    told.play("2, 18x8 each, bare")
    assert told.key == "trunk_where"
    assert told.talk.job.word("supply.trunks.0.measured_where") is None


def test_a_tool_told_behind_a_but_is_no_second_answer_to_the_blower():
    told = Dialogue().play("no", "3 ton single stage heat pump, 1200 cfm", "same", "none")
    told.play("yes but just a tape today")
    assert told.talk.job.word("old.works") == "yes"
    assert told.talk.job.word("site.has_tape") == "yes"
    assert told.talk.job.word("site.has_gauge") == "no"


def ducts_at(key: str) -> Dialogue:
    """A dialogue at one of the questions along the ducts."""
    told = at_the_trunk().play("20x8 bare, outside")
    while told.key != key:
        told.play("skip")
    return told


@pytest.mark.parametrize("line", ["no same all the way", "doesnt change", "stays 20x8", "no"])
def test_a_trunk_that_stays_as_it_is_steps_down_nowhere(line):
    told = ducts_at("step_down").play(line)
    assert told.talk.job.word("house.trunk_steps_down") == "no"
    assert told.talk.job.length("supply.trunks") == 1


@pytest.mark.parametrize("line", ["12", "10 flex runs"])
def test_a_bare_number_of_branches_is_asked_about(line):
    told = ducts_at("branches").play(line)
    assert told.key == "branches"
    assert told.talk.job.length("supply.branches") is None


@pytest.mark.parametrize(("line", "count"), [("ten six inch", 10), ("9 sixes", 9)])
def test_so_many_of_one_size_are_branches(line, count):
    job = ducts_at("branches").play(line).talk.job
    assert job.number("supply.branches.0.count") == count
    assert job.number("supply.branches.0.diameter_in") == 6.0


def test_a_return_that_opens_into_the_room_has_no_trunk():
    job = ducts_at("return_trunk").play("nope it opens straight into the hall").talk.job
    assert job.length("return.trunks") == 0


def test_asking_what_a_word_means_is_no_answer():
    told = ducts_at("zoned").play("what do you mean zoned")
    assert told.key == "zoned"
    assert told.talk.job.word("house.zoned") is None
    assert told.lines(Manner.HELP)


def test_a_count_that_is_concluded_is_the_count():
    told = before_the_trunks().play("one off each end so 2")
    assert told.talk.job.number("supply.trunks.0.count") == 2.0


@pytest.mark.parametrize(
    "line",
    [
        "nah just the one",
        "nope, one thermostat",
        "just one thermostat",
        "single zone",
        "no its all one",
        "one thermostat in the hallway",
        "one for the whole house",
        "no, only one thermostat for everything",
    ],
)
def test_one_thermostat_is_no_to_zones(line):
    told = opened("zoned").play(line)
    assert told.talk.job.word("house.zoned") == "no"


@pytest.mark.parametrize("line", ["one upstairs one downstairs", "theres two units"])
def test_more_thermostats_are_not_taken_for_one(line):
    assert opened("zoned").play(line).talk.job.word("house.zoned") != "no"


@pytest.mark.parametrize(
    ("line", "warm"),
    [
        ("its freezing out", "no"),
        ("it's freezing", "no"),
        ("freezing cold out there", "no"),
        ("not today, its cold", "no"),
        ("nice day, 75", "yes"),
    ],
)
def test_the_weather_told_at_the_question_of_the_weather_is_weather(line, warm):
    told = opened("weather").play(line)
    assert told.talk.job.word("site.weather_allows_cooling") == warm
    assert not told.lines(Manner.ALARM)


def test_freezing_indoors_is_no_weather():
    told = opened("weather").play("its freezing in here")
    assert told.lines(Manner.ALARM)
    assert not told.talk.job.is_known("site.weather_allows_cooling")


@pytest.mark.parametrize(
    ("line", "gauge"),
    [
        ("yes and ive got tape and gauge", "yes"),
        ("yeah it runs, got my tape and manometer", "yes"),
        ("yes, i have a tape measure but no gauge", "no"),
    ],
)
def test_tools_told_with_a_yes_are_taken_and_said(line, gauge):
    told = opened("old_runs").play(line)
    assert told.talk.job.word("old.works") == "yes"
    assert told.talk.job.word("site.has_tape") == "yes"
    assert told.talk.job.word("site.has_gauge") == gauge
    assert "In the bag: tape" in told.text
    assert told.key != "tools"


@pytest.mark.parametrize(("line", "warm"), [("45 and raining", "no"), ("72 sunny", "yes")])
def test_a_temperature_with_the_sky_is_the_weather(line, warm):
    told = opened("weather").play(line)
    assert told.talk.job.word("site.weather_allows_cooling") == warm


def test_wrapped_said_with_a_size_is_sheet_metal_and_not_asked_again():
    told = opened("trunk_size", trunk_count="two").play("both 16x8, wrapped")
    assert told.talk.job.word("supply.trunks.0.material") == "galvanized"
    assert told.key == "trunk_where"
    told = opened("trunk_size", trunk_count="one").play("20x8 not wrapped")
    assert told.key == "trunk_skin"


def test_the_filters_place_told_in_the_plural_is_taken():
    told = opened("filter").play("20x20x1 in the grilles")
    assert told.talk.job.word("filters.0.place") == "grille"
    assert told.key != "filter_place"


def test_a_bare_inch_is_one_inch_of_liner():
    told = opened("drop_size", trunk_count="one", trunk_size="20x8 bare").play("20x10", "lined")
    told.play("outside", "inch")
    assert told.talk.job.number("return.drops.0.liner_in") == 1.0


def test_where_the_tape_was_is_echoed_once():
    told = opened("trunk_where", trunk_count="one", trunk_size="20x8 metal").play("outside")
    assert told.lines(Manner.ECHO) == ["Tape held: outside, on the metal."]


@pytest.mark.parametrize(
    "line",
    [
        "new 60k 95% furnace, no ac",
        "60k 95% furnace, heat only",
        "no cooling, 60k furnace 95%",
        "60k 95% furnace without air conditioning",
    ],
)
def test_no_cooling_said_with_the_equipment_asks_for_none(line):
    told = Dialogue().play("no", line)
    assert "no cooling" in told.lines(Manner.ECHO)[0]
    assert told.talk.job.number("equipment.heating_input_btuh") == 60_000
    assert told.key == "rise"
    assert told.replayed() == told.state


def test_cooling_told_later_is_asked_about_after_all():
    told = Dialogue().play("no", "60k 95% furnace, no ac", "sorry, it gets a 3 ton ac")
    assert told.talk.job.number("equipment.cooling_tons") == 3.0
    assert told.key == "new_stages"


@pytest.mark.parametrize("line", ["3 ton ac, no furnace", "3 ton cooling without a furnace"])
def test_equipment_that_is_denied_does_not_go_in(line):
    told = Dialogue().play("no", line)
    assert told.talk.job.word("equipment.kind") is None
    assert told.key == "new_kind"


@pytest.mark.parametrize(
    ("line", "cfm", "source"),
    [
        ("1350 by flow plate", 1350.0, "flow_plate"),
        ("about 1,300 with the hood", 1300.0, "hood_sum"),
    ],
)
def test_an_airflow_told_with_its_source_gives_both(line, cfm, source):
    question = question_of("reading_airflow")
    assert question is not None
    found = listen(question, line, Job())
    assert isinstance(found, Accepted)
    assert found.values["cfm"] == cfm
    assert [one.values["choice"] for one in found.others] == [source]


@pytest.mark.parametrize("line", ["no cooling", "no strips", "no fittings"])
def test_none_of_another_thing_is_not_none_of_what_is_asked(line):
    told = opened("drop_size").play(line)
    assert told.talk.job.length("return.drops") is None


def test_no_drop_is_none_where_the_drop_is_asked():
    assert opened("drop_size").play("no drop").talk.job.length("return.drops") == 0
