"""A verdict in the chat: statuses, reasons, changes, what was assumed and what to collect."""

from dataclasses import replace

import pytest
from support.verdicts import a_finding, a_job, a_mode, a_verdict, same

from engine.job.job import Job
from engine.job.modes import Mode
from engine.verdict import (
    Assumption,
    FindingStatus,
    ModeStatus,
    RemedySet,
    Spread,
    Verdict,
    Wanted,
)
from intake.telling.asking import enough_sentence
from intake.telling.capacity import capacity_sentence
from intake.telling.verdict import (
    DEFERS,
    deciding,
    delivered_sentence,
    headline,
    short_verdict,
    status_sentence,
    verdict_lines,
    way_is_open,
)


def test_the_worst_airflow_heads_the_verdict_and_comes_first():
    lines = verdict_lines(a_verdict(), a_job())
    assert lines[0].startswith("These ducts won't carry full cooling")
    places = [next(i for i, line in enumerate(lines) if line.startswith(name))
              for name in ("Full cooling, 1,200 CFM", "Heat pump heating, 900 CFM")]  # fmt: skip
    assert places == sorted(places)


def test_reasons_are_at_most_three_with_their_turning_points():
    lines = verdict_lines(a_verdict(), a_job())
    because = [line for line in lines if line.startswith("Because:")]
    assert len(because) == 2
    assert "while the return opening is at most 21.25 in. wide" in because[1]
    many = tuple(a_finding(check=f"check_{n}") for n in range(6))
    mode = a_mode(findings=many, reasons=tuple(one.check for one in many))
    told = verdict_lines(Verdict(modes={Mode.COOLING_HIGH: mode}), a_job())
    assert len([line for line in told if line.startswith("Because:")]) == 3


def test_a_long_run_and_a_starving_branch_are_told_though_they_dont_vote():
    starves = a_finding(
        check="branch_share", where="supply branch 2", figure=70.0, unit="%", recommended=85.0,
        maximum=None, status=FindingStatus.TIGHT, votes=False,
        formula="70 of 100 CFM: 30 CFM short",
        spread=same(70.0),
    )  # fmt: skip
    long_run = replace(
        starves, check="effective_length", where="longest run", figure=560.0, unit="ft",
        recommended=500.0, spread=same(560.0),
    )  # fmt: skip
    mode = a_mode(findings=(a_finding(), starves, long_run))
    lines = [one for one in verdict_lines(Verdict(modes={Mode.COOLING_HIGH: mode}), a_job())
             if one.startswith("Also:")]  # fmt: skip
    assert "560 ft" in lines[0]
    assert "supply branch 2 gets 70% of its share" in lines[1]
    assert "30 CFM short" in lines[1]


def test_a_verdict_without_any_change_to_try_says_that_measuring_comes_first():
    told = headline(a_verdict(remedies=()))
    assert told.endswith("what would clear it can't be said before more is measured.")


def test_the_same_reasons_are_told_once():
    modes = {one: a_mode(mode=one) for one in (Mode.COOLING_HIGH, Mode.HEAT_PUMP_HEATING)}
    lines = verdict_lines(Verdict(modes=modes), a_job())
    assert len([line for line in lines if line.startswith("Because:")]) == 1
    assert "For the same reasons as full cooling." in lines


def test_changes_tell_what_each_buys_and_the_effort():
    lines = verdict_lines(a_verdict(), a_job())
    head = next(i for i, line in enumerate(lines) if line.startswith("To make heat pump heating"))
    assert lines[head].endswith("(nine in ten sure), about 2 to 4 hours:")
    assert lines[head + 1] == (
        "1. Fit a 20 x 20 filter grille in the hall. Brings the filter grille to 324 fpm."
    )


def test_one_set_for_every_airflow_is_told_instead_of_one_a_mode():
    changes = RemedySet(
        ("larger_return_grille",), (Mode.COOLING_HIGH, Mode.HEAT_PUMP_HEATING), (2.0, 4.0), 0.9
    )
    lines = verdict_lines(a_verdict(changes=changes), a_job())
    assert len([line for line in lines if line.startswith("To make")]) == 1
    assert any(line.startswith("To make every airflow carry") for line in lines)


def test_what_was_assumed_keeps_its_order_and_counts_the_rest():
    four = tuple(
        Assumption(key, "", 0.02, 0.03, 0.05, "in. w.c.", "", 0.1)
        for key in (
            "new.coil_drop_inwc",
            "new.filter_drop_inwc",
            "new.grille_drop_inwc",
            "new.register_drop_inwc",
        )
    )
    line = next(
        line for line in verdict_lines(a_verdict(assumed=four), a_job())
        if line.startswith("Assumed")
    )  # fmt: skip
    assert line.index("new coil") < line.index("new filter") < line.index("return grille")
    assert line.endswith("and 1 more, in the report.")


def test_what_moves_nothing_is_left_to_the_report():
    idle = Assumption("return.trunks", "", None, "as in a usual house", None, "", "", 0.0)
    weighty = Assumption(
        "equipment.blower_tables", "", None, "a usual blower of the kind ecm_variable", None,
        "", "", 0.3,
    )  # fmt: skip
    lines = verdict_lines(a_verdict(assumed=(weighty, idle)), a_job())
    assert (
        "Assumed, what moves the verdict most first: the new blower's table: a usual blower of "
        "the kind constant-airflow ECM; and 1 more, in the report."
    ) in lines


def test_doubts_refusals_and_what_to_collect_are_told():
    lines = verdict_lines(a_verdict(), a_job())
    assert "The readings don't agree: One sign is off." in lines
    assert "Not answered: the smallest zone alone: its ducts aren't known." in lines
    assert (
        "Worth collecting next: how many trunks leave the plenum, and their sizes there. "
        "Two trunks would halve this speed."
    ) in lines


def test_the_verdict_defers_to_code_maker_and_licence():
    assert verdict_lines(a_verdict(), a_job())[-1] == DEFERS
    assert all(word in DEFERS for word in ("local code", "maker's data", "licensed"))


def test_an_airflow_that_carries_tells_what_is_closest_to_its_limit():
    fine = a_finding(
        figure=600.0, ratio=600.0 / 900.0, status=FindingStatus.FINE, over_share=0.0,
        spread=same(600.0), formula="",
    )  # fmt: skip
    slower = replace(fine, figure=300.0, ratio=300.0 / 900.0, where="second trunk")
    mode = a_mode(status=ModeStatus.CARRIES, confidence=0.95, findings=(slower, fine))
    lines = verdict_lines(Verdict(modes={Mode.COOLING_HIGH: mode}), a_job())
    assert lines[0] == "These ducts carry full cooling as they are."
    closest = [line for line in lines if line.startswith("Closest to its limit:")]
    assert len(closest) == 1
    assert "600 fpm" in closest[0]


def test_an_airflow_on_the_line_is_told_with_its_odds_and_the_worse_advice():
    mode = a_mode(borderline=True, over_share=0.6, confidence=0.6)
    told = status_sentence(mode, a_job())
    assert "on the line" in told
    assert "six in ten of the houses" in told
    assert "plan as if the ducts won't carry it" in told
    assert "on the line" in headline(Verdict(modes={Mode.COOLING_HIGH: mode}))


def test_what_cant_be_said_names_what_is_missing():
    mode = a_mode(
        status=ModeStatus.CANT_SAY, over_share=0.4, unmet_floor=("supply.trunks", "filters")
    )
    told = status_sentence(mode, a_job())
    assert "can't say yet" in told
    assert "how many trunks leave the plenum, and their sizes there" in told
    assert "the filter's size, thickness and place" in told
    assert "measured" not in told


def test_what_cant_be_said_with_nothing_more_to_be_had_is_treated_as_the_worse():
    mode = a_mode(
        status=ModeStatus.CANT_SAY, treat_as=ModeStatus.WONT_CARRY, unmet_floor=("supply.trunks",)
    )
    assert status_sentence(mode, a_job()).endswith("Treat as won't carry until measured.")
    assert "treat as won't carry until measured" in headline(
        Verdict(modes={Mode.COOLING_HIGH: mode})
    )


def test_what_is_open_is_told_as_in_doubt_and_not_as_a_reason():
    for mode in (
        a_mode(status=ModeStatus.CANT_SAY, over_share=0.5),
        a_mode(borderline=True, over_share=0.5),
    ):
        lines = verdict_lines(Verdict(modes={Mode.COOLING_HIGH: mode}), a_job())
        assert any(line.startswith("In doubt: ") for line in lines)
        assert not any(line.startswith("Because: ") for line in lines)


def test_air_that_is_a_reason_is_not_told_a_second_time():
    air = a_finding(check="delivered_airflow", unit="CFM", figure=1000.0)
    lines = verdict_lines(Verdict(modes={Mode.COOLING_HIGH: a_mode(findings=(air,))}), a_job())
    assert len([line for line in lines if "Through these ducts" in line]) == 1


def test_the_same_capacity_is_told_once_and_in_tons_where_something_cools():
    modes = {one: a_mode(mode=one) for one in (Mode.COOLING_HIGH, Mode.HEATING_HIGH)}
    lines = verdict_lines(Verdict(modes=modes), a_job())
    told = [line for line in lines if line.startswith("The most these ducts carry")]
    assert len(told) == 1
    assert "2.5 tons" in told[0]


def test_a_note_of_one_airflow_names_it():
    note = a_finding(check="friction_rate", note="this setting can't give the target", votes=False,
                     status=FindingStatus.TIGHT)  # fmt: skip
    modes = {
        Mode.COOLING_HIGH: a_mode(findings=(a_finding(), note)),
        Mode.HEATING_HIGH: a_mode(mode=Mode.HEATING_HIGH),
    }
    lines = verdict_lines(Verdict(modes=modes), a_job())
    assert any(line.startswith("Also, in full cooling: This blower setting") for line in lines)


def test_tons_are_told_at_the_equipments_own_air_per_ton():
    # 1,200 CFM for 3 tons is 400 a ton; 1,000 / 400 = 2.5 tons (by hand).
    assert capacity_sentence(a_mode(), a_job()).endswith(
        "1,000 CFM, which serves 2.5 tons at this equipment's 400 CFM per ton."
    )


def test_tons_without_a_known_size_are_told_at_the_usual_air_per_ton():
    # 1,000 / 400 = 2.5 tons (by hand); 400 CFM per ton is the usual target (figures, memory).
    assert capacity_sentence(a_mode(), Job()).endswith(
        "which serves 2.5 tons at the usual 400 CFM per ton."
    )


def test_heating_capacity_is_told_without_tons():
    told = capacity_sentence(a_mode(mode=Mode.HEATING_HIGH), a_job())
    assert told.endswith("1,000 CFM in full heat.")


def test_delivered_air_is_told_against_what_is_wanted():
    # 1,100 / 1,200 = 91.7 % (by hand).
    assert delivered_sentence(a_mode()).endswith(
        "about 1,100 CFM (1,050 to 1,150), 92% of the 1,200 CFM wanted."
    )
    assert delivered_sentence(a_mode(delivered_cfm=None)) == ""


def test_a_verdict_without_airflows_says_what_is_missing():
    nothing = Verdict(
        modes={}, collect_next=(Wanted("equipment.cooling_tons", "", "it sets the airflow"),)
    )
    lines = verdict_lines(nothing, Job())
    assert lines[0].startswith("No airflow can be judged yet")
    assert any("nominal cooling size of the new equipment" in line for line in lines)
    assert short_verdict(nothing).startswith("nothing yet")


def test_the_short_form_names_every_airflow():
    told = short_verdict(a_verdict())
    assert "full cooling: the ducts won't carry it (19 in 20 sure)" in told
    assert "heat pump heating: the ducts carry it with changes" in told


def test_the_engines_own_reasons_come_before_the_statuses():
    first, second = a_finding(check="trunk_velocity"), a_finding(check="branch_velocity")
    mode = a_mode(findings=(first, second), reasons=("branch_velocity",))
    assert [one.check for one in deciding(mode)] == ["branch_velocity"]
    assert [one.check for one in deciding(replace(mode, reasons=()))] == [
        "trunk_velocity",
        "branch_velocity",
    ]


@pytest.mark.parametrize("status", list(ModeStatus))
@pytest.mark.parametrize("borderline", [True, False])
@pytest.mark.parametrize("confidence", [0.0, 0.33, 0.5, 0.91, 1.0])
def test_every_status_is_told_in_sentences(status, borderline, confidence):
    mode = a_mode(
        status=status, borderline=borderline, confidence=confidence, over_share=confidence,
        target_cfm=Spread(1000.0, 1200.0, 1400.0),
    )  # fmt: skip
    for line in verdict_lines(Verdict(modes={Mode.COOLING_HIGH: mode}), a_job()):
        assert line.strip() == line
        assert line[0].isupper() or line[0].isdigit()
        assert line.endswith((".", ":"))
        assert not any(word in line for word in ("_", "nan", "None", "  "))


def test_an_airflow_that_changes_alone_would_clear_is_told_its_own_beside_the_whole_set():
    both = (Mode.COOLING_HIGH, Mode.HEAT_PUMP_HEATING)
    whole = RemedySet(("turning_vanes",), both, (8.0, 16.0), 0.95)
    lines = verdict_lines(a_verdict(changes=whole), a_job())
    heads = [line for line in lines if line.startswith("To make")]
    assert [head.split(" (")[0] for head in heads] == [
        "To make every airflow carry",
        "To make heat pump heating alone carry",
    ]


def test_what_clears_it_isnt_said_to_be_nothing_while_a_narrow_place_is_only_assumed():
    drop = a_finding(
        check="return_drop_velocity", known=("equipment.cooling_tons",), over_share=0.7
    )
    mode = a_mode(findings=(a_finding(), drop))
    told = verdict_lines(a_verdict(modes={Mode.COOLING_HIGH: mode}), a_job())[0]
    assert told.endswith("what would clear it can't be said before more is measured.")
    seen = a_mode(findings=(a_finding(), a_finding(check="return_drop_velocity", over_share=0.7)))
    told = verdict_lines(a_verdict(modes={Mode.COOLING_HIGH: seen}), a_job())[0]
    assert told.endswith("no change that was tried clears it.")


def test_reasons_that_differ_only_in_their_figures_are_told_by_these():
    modes = {
        Mode.COOLING_HIGH: a_mode(),
        Mode.HEATING_HIGH: a_mode(
            mode=Mode.HEATING_HIGH, findings=(a_finding(figure=1100.0, mode=Mode.HEATING_HIGH),)
        ),
    }
    lines = verdict_lines(a_verdict(modes=modes), a_job())
    assert len([line for line in lines if line.startswith("Because: ")]) == 1
    assert "For the same reasons as full cooling: supply trunk at 1,100 fpm." in lines


def test_a_note_of_several_airflows_is_told_once_at_its_worst():
    def note(figure, mode):
        return a_finding(
            check="filter_face_velocity", figure=figure, ratio=figure / 300.0, votes=False,
            where="filter in the cabinet", recommended=300.0, maximum=None,
            status=FindingStatus.TIGHT, mode=mode,
        )  # fmt: skip

    modes = {
        mode: a_mode(mode=mode, findings=(a_finding(), note(figure, mode)))
        for mode, figure in ((Mode.COOLING_HIGH, 410.0), (Mode.HEAT_PUMP_HEATING, 430.0))
    }
    notes = [one for one in verdict_lines(a_verdict(modes=modes), a_job()) if "Also" in one]
    assert len(notes) == 1
    assert notes[0].startswith("Also, in heat pump heating: Air meets the filter")
    assert "430 fpm" in notes[0]


def test_one_capacity_is_told_in_the_tons_of_one_airflow_alone():
    modes = {
        Mode.COOLING_HIGH: a_mode(),
        Mode.HEAT_PUMP_HEATING: a_mode(mode=Mode.HEAT_PUMP_HEATING, target_cfm=same(1150.0)),
    }
    lines = verdict_lines(a_verdict(modes=modes), a_job())
    assert len([line for line in lines if line.startswith("The most these ducts carry")]) == 1


def test_the_way_is_open_while_what_would_clear_it_is_not_measured():
    assert way_is_open(a_verdict(remedies=()))
    assert not way_is_open(a_verdict())
    assert "go on" in enough_sentence(settled=True, way_open=True)
