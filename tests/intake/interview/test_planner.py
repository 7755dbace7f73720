"""Which question comes next, as a person meets it: rules, then worth, then enough."""

import pytest
from support.dialogue import Dialogue

from engine.worth import BUNDLES
from intake.interview.planner import question_of
from intake.interview.technician import TECHNICIAN
from intake.interview.turns import Manner, Voice
from intake.telling.asking import BUNDLE_WORDS

GATES = {
    "safety": "no",
    "new_equipment": "3 ton single stage heat pump, 1200 cfm",
    "heat_pump_cfm": "same",
    "strip_cfm": "none",
    "old_runs": "yes",
    "tools": "tape and gauge",
    "weather": "yes",
}
CLEAR = {
    "blower_table": "high: 0.1 1320, 0.3 1270, 0.5 1220, 0.7 1150, 0.9 1050",
    "coil_in_table": "yes",
    "filter_in_table": "no",
    "trunk_count": "two",
    "trunk_size": "18x10 bare metal, inside",
    "step_down": "no",
    "drop_size": "24x14 bare metal, inside",
    "filter": "20x25x4",
    "filter_place": "slot at the unit",
    "openings": "two 24x20",
    "openings_where": "the slotted part",
    "return_trunk": "none",
    "branches": "14 six inch round metal",
    "run_supply": "45",
    "run_return": "20",
    "fittings": "2 square elbows, takeoff, boot",
    "zoned": "no",
    "year_built": "1999",
}
"""1,200 CFM over 2 x 180, 336 and 960 sq in.: 480, 514 and 180 fpm (arithmetic), all under the
residential duct standard's recommended speeds and the grille's 300."""

READINGS = {
    "static_total": "return .18, supply .22",
    "static_split": "return .08 supply .12",
    "reading_mode": "cooling",
    "reading_filter": "clean",
    "reading_airflow": "1150",
    "reading_source": "table",
    "conditions": "all clean",
}


CALL = {
    "d_safety": "no", "d_change": "same", "d_trouble": "never", "d_area": "1800",
    "d_year": "1980", "d_tons": "3 tons", "d_filter": "16x25x1", "d_openings": "20x20",
    "d_registers": "9", "d_boot": "6 inch round", "d_ways": "both", "d_trunk": "about 20 by 8",
    "d_location": "basement", "d_rooms": "1", "d_doors": "no", "d_noise": "whisper",
    "d_photos": "yes",
}  # fmt: skip


def at_the_first_choice(**changed: str) -> Dialogue:
    """A job whose fixed questions are answered."""
    return Dialogue(judged=True).answer(**{**GATES, **changed})


def asked(told: Dialogue) -> list[str]:
    return list(told.state.asked)


def test_every_weighed_question_belongs_to_a_bundle_that_the_engine_weighs():
    known = {bundle.key for bundle in BUNDLES}
    bundles = {question.bundle for question in TECHNICIAN if question.bundle}
    assert bundles <= known
    assert bundles <= set(BUNDLE_WORDS)


def test_rules_come_first_in_their_order():
    told = at_the_first_choice()
    assert asked(told) == list(GATES)
    assert question_of(told.key).bundle


def test_a_bundle_that_is_begun_is_finished_before_another():
    told = at_the_first_choice().answer(**CLEAR, **READINGS)
    bundles = [question_of(key).bundle for key in asked(told) if question_of(key).bundle]
    runs = [one for one, before in zip(bundles, [None, *bundles], strict=False) if one != before]
    assert len(runs) == len(set(runs)), runs


def test_a_clear_house_is_settled_without_walking_every_duct():
    told = at_the_first_choice().answer(**CLEAR, **READINGS)
    assert told.talk.ended, told.key
    assert len(asked(told)) <= 26
    assert not {"run_supply", "fittings", "elevation"} & set(asked(told))
    assert any("go on" in line for line in told.lines(Manner.NOTE))


def test_go_on_asks_what_is_left_until_finish():
    told = at_the_first_choice().answer(**CLEAR, **READINGS)
    before = set(asked(told))
    told.play("go on")
    assert not told.talk.ended
    assert told.key not in before
    first = told.key
    told.play("skip")
    assert told.key not in {first, ""}
    assert told.play("finish").talk.ended


def test_going_on_survives_a_resume():
    told = at_the_first_choice().answer(**CLEAR, **READINGS).play("go on")
    again = Dialogue(events=told.events, judged=True)
    assert again.key == told.key
    assert again.replayed() == again.state


def test_the_same_answers_bring_the_same_question():
    one, other = at_the_first_choice(), at_the_first_choice()
    assert one.key == other.key
    assert one.said == other.said


def test_without_a_gauge_no_pressure_is_ever_asked():
    told = at_the_first_choice(tools="just a tape").answer(**CLEAR, **READINGS)
    assert told.talk.ended, told.key
    assert not {"static_total", "static_split"} & set(asked(told))


def test_a_place_out_of_reach_is_not_chosen():
    told = at_the_first_choice()
    while question_of(told.key).key != "trunk_size":
        told.play("skip" if told.key != "trunk_count" else "one")
    told.play("can't get in there")
    while told.key:
        assert question_of(told.key).place.value != "trunks", told.key
        told.play("skip")


def test_it_is_told_what_the_next_question_may_settle():
    told = at_the_first_choice()
    notes = told.lines(Manner.NOTE)
    assert any("in 10" in note or "tenth" in note for note in notes), notes
    assert "in 10" in told.play("why").text or "tenth" in told.text


def test_what_it_may_settle_is_told_once():
    told = at_the_first_choice().play("where")
    assert not told.lines(Manner.NOTE)


def test_what_the_next_minutes_would_buy_stands_beside_the_verdict_so_far():
    standing = at_the_first_choice().talk.standing()
    assert standing.startswith("If stopped now: ")
    assert "The next " in standing


def test_the_year_is_asked_before_the_end_because_a_caution_hangs_on_it():
    told = at_the_first_choice().answer(**{**CLEAR, **READINGS})
    assert asked(told)[-1] == "year_built"


def test_a_drop_that_is_far_too_small_ends_it_soon():
    # 1,200 CFM over 96 sq in. is 1,800 fpm (arithmetic), more than twice the most for a drop.
    few = {**CLEAR, "drop_size": "12x8 bare metal, inside"}
    told = at_the_first_choice().answer(**few, **READINGS)
    full = at_the_first_choice().answer(**CLEAR, **READINGS)
    assert told.talk.ended
    assert len(asked(told)) <= len(asked(full))


@pytest.mark.parametrize("line", ["idk", "skip"])
def test_what_isnt_known_is_not_asked_twice(line):
    told = at_the_first_choice()
    for _ in range(60):
        if not told.key:
            break
        told.play(line)
    keys = asked(told)
    assert told.talk.ended
    assert len(keys) == len(set(keys))


def test_a_call_asks_the_size_first_that_may_turn_its_booking_most():
    told = Dialogue(Voice.DISPATCHER, judged=True).answer(**CALL)
    sizes = [key for key in asked(told) if question_of(key).bundle]
    others = [key for key in asked(told) if not question_of(key).bundle]
    assert told.talk.ended
    assert sizes[0] in ("d_openings", "d_trunk", "d_filter")
    assert set(sizes) >= {"d_filter", "d_openings", "d_registers", "d_ways"}
    assert asked(told).index(sizes[0]) > others.index("d_tons")
    assert asked(told)[-1] == "d_photos"


def test_a_call_without_the_engine_keeps_the_order_of_its_script():
    told = Dialogue(Voice.DISPATCHER).answer(**CALL)
    sizes = [key for key in asked(told) if question_of(key).bundle]
    assert sizes[:2] == ["d_filter", "d_openings"]
