"""Whole interviews with a technician, played with loose answers."""

import pytest
from support.dialogue import Dialogue

from engine.job.belief import Between, How, Known, OneOf
from engine.verdict import ModeStatus
from intake.interview.turns import Manner, Voice

HEAT_PUMP = {
    "safety": "nope all clear",
    "new_equipment": "3 ton two-stage heat pump, 1200 cfm",
    "low_cfm": "800ish",
    "heat_pump_cfm": "same",
    "strip_cfm": "no strips",
    "blower_table": "skip",
    "blower_kind": "variable speed",
    "blower_limit": "0.9",
    "old_runs": "yep",
    "tools": "tape and gauge",
    "weather": "yes",
    "trunk_count": "one",
    "trunk_size": "20x8",
    "trunk_skin": "bare metal",
    "drop_size": "18 by 10 bare metal",
    "filter": "16x25x1",
    "filter_place": "slot at the unit",
    "openings": "20x20 and two 14x8",
    "openings_where": "the slotted part",
    "static_total": "return .30, supply .40",
    "static_split": "return .10 supply .20",
    "reading_mode": "cooling",
    "reading_filter": "clean",
    "reading_airflow": "1100",
    "reading_source": "blower table",
    "conditions": "coil some dirt, wheel clean",
    "return_trunk": "none",
    "run_supply": "about 42 ft",
    "run_return": "15",
    "fittings": "skip",
    "step_down": "no",
    "branches": "12 six inch round metal",
    "elevation": "650 ft",
    "year_built": "1978",
}


def through_the_gates(**more: str) -> Dialogue:
    """A furnace job up to the first trunk question."""
    told = Dialogue().answer(
        safety="no",
        new_equipment="furnace 80k 80%, 3 ton, single stage, 1200 cfm",
        rise="35-65",
        blower_table="skip",
        blower_kind="psc",
        coil_drop=".25 at 1200",
        old_runs="yes",
        tools=more.get("tools", "just a tape"),
        weather="yes",
    )
    assert told.key == "trunk_count", told.text
    return told


@pytest.fixture(scope="module")
def heat_pump() -> Dialogue:
    return Dialogue(judged=True).answer(**HEAT_PUMP)


def test_a_whole_interview_ends_with_a_verdict_for_every_mode(heat_pump):
    assert heat_pump.talk.ended
    assert heat_pump.open is None
    lines = heat_pump.lines(Manner.VERDICT)
    assert any("Full cooling, 1,200 CFM" in line for line in lines)
    assert any("Low-stage cooling, 800 CFM" in line for line in lines)
    assert any("Heat pump heating, 1,200 CFM" in line for line in lines)


def test_the_verdict_rests_on_the_answers_given(heat_pump):
    # 1,200 CFM through 18 x 10 in. is 1200 / 1.25 = 960 fpm and through 20 x 8 in. 1,080 fpm
    # (arithmetic), both over the 700 and 900 of the residential duct standard's velocity table.
    verdict = heat_pump.talk.verdict()
    assert verdict is not None
    statuses = {str(mode): said.status for mode, said in verdict.modes.items()}
    assert statuses["cooling_high"] is ModeStatus.WONT_CARRY
    assert "won't carry" in heat_pump.talk.standing()


def test_only_what_may_still_turn_the_verdict_is_asked(heat_pump):
    questions = {event.question for event in heat_pump.state.standing}
    assert len(questions) <= 25
    assert "trunk_size" in questions
    assert "branches" not in questions


def test_the_bank_alone_takes_no_more_than_thirty_five_questions():
    told = Dialogue().answer(**HEAT_PUMP)
    assert told.talk.ended
    assert len({event.question for event in told.state.standing}) <= 35


def test_every_answer_is_kept_as_it_was_said_and_as_it_was_read():
    told = Dialogue().answer(**HEAT_PUMP)
    job = told.talk.job
    assert job.stated("target.cooling_high_cfm") == Known(1200.0, How.DOCUMENT)
    assert job.stated("target.cooling_low_cfm") == Known(800.0, How.DOCUMENT, hedged=True)
    assert job.stated("target.heat_pump_heating_cfm") == Known(1200.0, How.DOCUMENT)
    assert job.stated("supply.trunks.0.width_in") == Known(20.0, How.MEASURED)
    assert job.stated("path.supply_length_ft") == Known(42.0, How.MEASURED, hedged=True)
    assert job.word("readings.0.airflow_source") == "blower_table"
    assert job.word("condition.coil") == "some_dirt"
    assert [e.text for e in told.state.standing if e.question == "run_supply"] == ["about 42 ft"]


def test_by_the_sixth_answer_there_is_a_true_sentence_with_a_number():
    told = Dialogue()
    insights: list[str] = []
    for key in ("safety", "new_equipment", "low_cfm", "heat_pump_cfm", "strip_cfm", "blower_table"):
        told.answer(**{key: HEAT_PUMP[key]})
        insights += told.lines(Manner.INSIGHT)
    # 1,200 CFM / 900 fpm = 1.333 ft2 = 192 in2 (arithmetic).
    assert len(insights) == 1
    assert "1,200 CFM needs at least 192 sq in." in insights[0]


def test_the_trunks_speed_is_told_when_its_size_is_known():
    told = through_the_gates().play("one", "20x8 bare metal")
    # 1,200 CFM over 160 in2 = 1.111 ft2 is 1,080 fpm (arithmetic).
    assert any("1,080 fpm" in line and "900" in line for line in told.lines(Manner.INSIGHT))


def test_two_trunks_share_the_air():
    told = through_the_gates().play("two", "18x8 bare metal")
    # Half of 1,200 CFM through 1.0 ft2 is 600 fpm (arithmetic).
    assert any("600 fpm" in line for line in told.lines(Manner.INSIGHT))
    assert told.talk.job.stated("supply.trunks.0.count") == Known(2.0, How.MEASURED)


def test_the_count_of_trunks_may_come_with_their_size():
    told = through_the_gates().play("one, 20x8 bare metal")
    assert told.key == "drop_size"
    assert told.talk.job.number("supply.trunks.0.count") == 1.0


def test_two_trunks_may_be_of_two_sizes():
    told = through_the_gates().play("2", "20x8 and 16x8", "bare")
    job = told.talk.job
    assert job.length("supply.trunks") == 2
    assert job.number("supply.trunks.1.width_in") == 16.0
    assert job.word("supply.trunks.1.material") == "galvanized"
    assert told.key == "drop_size"


def test_an_everything_unknown_interview_ends_and_judges_nothing():
    told = Dialogue(judged=True)
    for _ in range(60):
        if told.talk.ended:
            break
        told.play("idk")
    assert told.talk.ended
    assert told.lines(Manner.VERDICT)
    verdict = told.talk.verdict()
    assert verdict is not None
    assert all(said.status is not ModeStatus.CARRIES for said in verdict.modes.values())


def test_skipping_everything_after_the_equipment_never_says_that_it_carries():
    told = Dialogue(judged=True).answer(safety="no", new_equipment="3 ton heat pump")
    for _ in range(60):
        if told.talk.ended:
            break
        told.play("skip")
    verdict = told.talk.verdict()
    assert verdict is not None
    assert verdict.modes
    assert all(said.status is not ModeStatus.CARRIES for said in verdict.modes.values())
    assert all("supply.trunks" in said.unmet_floor for said in verdict.modes.values())


def test_finish_gives_the_verdict_as_it_stands_and_go_on_asks_again():
    told = through_the_gates().play("finish")
    assert told.talk.ended
    assert told.open is None
    told.play("go on")
    assert told.key == "trunk_count"


def test_facts_said_early_are_taken_and_not_asked():
    told = Dialogue().play("no", "furnace 80k 96%, 3 ton, single stage, 1200 cfm")
    assert "Also taken" in told.text
    assert told.key == "rise"
    job = told.talk.job
    assert job.number("equipment.heating_input_btuh") == 80_000.0
    assert job.number("equipment.heating_efficiency_fraction") == 0.96
    assert job.number("target.cooling_high_cfm") == 1200.0


def test_only_the_missing_parts_of_the_equipment_are_asked():
    told = Dialogue().play("no", "heat pump")
    assert told.key == "new_tons"
    told.play("2 1/2")
    assert told.key == "new_stages"
    told.play("two")
    assert told.key == "cool_cfm"


def test_heating_alone_asks_nothing_of_cooling():
    told = Dialogue().play("no", "80k 80% furnace, no cooling", "none")
    keys = []
    for _ in range(40):
        if told.talk.ended:
            break
        keys.append(told.key)
        told.play("skip")
    assert not {"cool_cfm", "low_cfm", "coil_drop", "weather", "new_stages"} & set(keys)


def test_without_a_gauge_no_gauge_question_is_asked():
    told = through_the_gates(tools="tape, no gauge")
    keys = []
    while not told.talk.ended:
        keys.append(told.key)
        told.play("skip")
    assert not {"static_total", "static_split", "reading_airflow", "weather"} & set(keys)


def test_a_gauge_that_turns_out_to_be_missing_takes_its_questions_along():
    told = through_the_gates(tools="tape and gauge")
    for _ in range(40):
        if told.key == "static_total":
            break
        told.play("skip")
    told.play("left the gauge at home, no gauge")
    assert "No gauge" in told.text
    assert told.key == "return_trunk"


def test_a_place_out_of_reach_takes_its_questions_along():
    told = through_the_gates()
    while told.key != "run_supply":
        told.play("skip")
    told.play("can't get in there")
    assert told.key not in ("run_return", "fittings", "step_down")
    assert told.key == "branches"


def test_a_dead_blower_removes_every_reading():
    told = Dialogue().answer(**{**HEAT_PUMP, "old_runs": "dead", "tools": "everything"})
    assert not any("static" in event.question for event in told.state.standing)


def test_a_house_without_a_drop_says_so():
    told = through_the_gates().play("one, 20x8 bare metal", "none")
    assert told.talk.job.length("return.drops") == 0
    assert told.key == "filter"


def test_liner_is_asked_where_it_matters():
    told = through_the_gates().play("two", "18x8 lined inside")
    assert told.key == "trunk_where"
    told.play("outside")
    assert told.key == "trunk_liner"
    told.play("1 inch")
    # 18 x 8 less an inch of liner all round is 16 x 6 = 96 in2 (arithmetic); 600 CFM runs 900 fpm.
    assert "96 sq in. clear" in told.text
    assert "900 fpm" in told.text


def test_clear_inside_asks_for_no_liner():
    told = through_the_gates().play("one", "18x8 lined", "clear inside")
    assert told.key == "drop_size"


def test_a_step_down_hangs_on_its_trunk_and_carries_its_share():
    told = through_the_gates().play("one, 20x8 bare metal")
    while told.key != "step_down":
        told.play("skip")
    told.play("14x8", "40%")
    job = told.talk.job
    assert job.word("supply.trunks.1.from") == "supply.trunks.0"
    assert job.word("supply.trunks.1.material") == "galvanized"
    assert job.number("supply.trunks.1.share_fraction") == pytest.approx(0.4)


def test_ranges_and_guesses_are_kept_as_such():
    told = Dialogue().play("no", "3 ton heat pump single stage", "1100 to 1300 cfm")
    belief = told.talk.job.stated("target.cooling_high_cfm")
    assert belief == Between(1100.0, 1200.0, 1300.0, How.DOCUMENT)
    told = through_the_gates().play("one", "just a guess, 20x8")
    assert told.talk.job.stated("supply.trunks.0.width_in") == Known(20.0, How.GUESSED)


def test_a_hedged_yes_leaves_room_for_a_no():
    told = Dialogue()
    while told.key != "old_runs":
        told.play("no" if told.key == "safety" else "skip")
    told.play("i think so")
    belief = told.talk.job.stated("old.works")
    assert isinstance(belief, OneOf)
    assert told.talk.job.word("old.works") == "yes"


def test_without_a_voice_it_is_asked_first():
    told = Dialogue(voice=None)
    assert told.key == "voice"
    told.play("umm")
    assert told.key == "voice"
    told.play("in the house")
    assert told.talk.voice is Voice.TECHNICIAN
    assert told.key == "safety"
    assert Dialogue(voice=None).play("2").talk.voice is Voice.DISPATCHER


def test_dont_know_to_the_safety_look_asks_to_look_once():
    told = Dialogue().play("idk")
    assert told.key == "safety"
    assert "look" in told.text
    assert told.play("idk").key == "new_equipment"


def test_a_measured_rise_is_a_reading_of_its_own_with_the_old_furnaces_output():
    told = through_the_gates(tools="tape and probes")
    while told.key != "old_heat":
        told.play("skip")
    told.play("100k in, 80%", "68 in 128 out")
    job = told.talk.job
    assert job.number("old.heating_input_btuh") == 100_000.0
    assert job.word("readings.0.mode") == "heating_high"
    assert job.number("readings.0.supply_degf") == 128.0
    assert "return 68 F, supply 128 F, full heat" in told.text


def test_an_old_unit_that_burns_nothing_has_no_rise_to_measure():
    told = through_the_gates(tools="tape and probes")
    while told.key != "old_heat":
        told.play("skip")
    assert told.play("none").key != "rise_reading"


def test_what_the_table_holds_is_told_the_right_way_round():
    told = Dialogue().play("no", "3 ton heat pump single stage 1200 cfm", "same", "none")
    told.play("yes", "tape", "high: 0.1 1300, 0.3 1240, 0.5 1180, 0.7 1100")
    assert told.key == "coil_in_table"
    told.play("yes")
    assert told.talk.job.word("equipment.coil_outside_rating") == "no"
    assert "in it" in told.text
    assert "not in it" not in told.text
    told.play("no")
    assert told.talk.job.word("equipment.filter_outside_rating") == "yes"
    assert "not in it" in told.text


def test_a_pasted_table_may_have_several_lines():
    told = Dialogue().play("no", "3 ton heat pump single stage 1200 cfm", "same", "none")
    told.play("yes", "tape", "high: 0.1 1300, 0.3 1240, 0.5 1180\nlow: 0.1 900, 0.3 860, 0.5 800")
    names = [setting.table.setting for setting in told.talk.job.blower]
    assert names == ["high", "low"]
    assert told.replayed() == told.state
