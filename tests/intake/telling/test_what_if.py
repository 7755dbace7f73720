"""Other equipment beside the job as it is, in words."""

from support.verdicts import a_finding, a_job, a_mode, same

from engine.job.modes import Mode
from engine.verdict import FindingStatus, ModeStatus, Verdict
from engine.what_if import LargestQuiet
from intake.telling.what_if import (
    candidate_sentences,
    decided_by,
    delivered_words,
    largest_sentence,
    left_out_words,
    status_words,
)

SLOWER = a_finding(figure=720.0, status=FindingStatus.TIGHT, over_share=0.0)
CARRIED = a_mode(
    status=ModeStatus.CARRIES,
    over_share=0.03,
    target_cfm=same(800.0),
    delivered_cfm=same(800.0),
    findings=(SLOWER,),
)
HEATING = a_mode(mode=Mode.HEATING_HIGH, status=ModeStatus.CANT_SAY)


def verdict(*modes):
    return Verdict(modes={mode.mode: mode for mode in modes})


def test_a_turned_mode_is_told_with_what_it_is_now_its_reason_and_its_air():
    before = verdict(a_mode(), HEATING)
    first, second = candidate_sentences(
        "2 tons", before, verdict(CARRIED, HEATING), a_job(), ("equipment.blower_tables",)
    )
    assert first == (
        "With 2 tons: full cooling, 800 CFM, carries (19 in 20 sure), now won't carry; "
        "full heat as now."
    )
    assert "Closest to its limit: air in the supply trunk moves at 720 fpm; 700 fpm" in second
    assert "The blower will give 800 CFM." in second
    assert second.endswith("Not known of it: the new blower's table.")


def test_where_nothing_changes_each_mode_is_named_once():
    first, second = candidate_sentences(
        "3 tons", verdict(a_mode(), HEATING), verdict(a_mode(), HEATING), a_job(), ()
    )
    assert first == (
        "With 3 tons: nothing changes, full cooling won't carry, full heat can't say yet."
    )
    assert second.startswith("Because: air in the supply trunk moves at 1,080 fpm")


def test_without_a_mode_nothing_can_be_judged():
    told = candidate_sentences("2 tons", verdict(), verdict(), a_job(), ())
    assert told == ["With 2 tons: nothing can be judged yet."]


def test_a_status_on_the_line_or_to_be_measured_says_what_to_plan():
    assert status_words(a_mode(borderline=True)) == "on the line, plan as won't carry"
    unmeasured = a_mode(status=ModeStatus.CANT_SAY, treat_as=ModeStatus.WONT_CARRY)
    assert status_words(unmeasured) == "can't say, plan as won't carry"


def test_what_decides_stands_beside_its_own_limit():
    assert decided_by(a_mode(), a_job()) == "supply trunk 1,080 fpm, most 900 fpm"
    assert decided_by(CARRIED, a_job()) == "supply trunk 720 fpm, advised 700 fpm"
    least = a_finding(check="coil_window", figure=250.0, recommended=350.0, maximum=300.0,
                      unit="CFM", where="coil")  # fmt: skip
    assert decided_by(a_mode(findings=(least,)), a_job()) == "coil 250 CFM, least 300 CFM"
    assert decided_by(a_mode(findings=()), a_job()) == ""
    assert delivered_words(a_mode(delivered_cfm=None)) == "can't be said"


def test_airflows_are_not_named_among_what_is_not_known():
    gone = ("target.heating_high_cfm", "new.coil_drop_inwc", "new.coil_drop_at_cfm")
    assert left_out_words(gone, a_job()) == "pressure drop of the new coil, wet"


def test_the_largest_size_is_told_or_why_there_is_none():
    quiet = same(1125.0)
    at = LargestQuiet(2.5, 1000.0, 400.0, quiet)
    assert largest_sentence(at, a_job()) == (
        "The largest size these ducts carry: 2.5 tons, 1,000 CFM at 400 CFM per ton. "
        "By their speeds alone: 1,125 CFM."
    )
    once = LargestQuiet(2.5, 1000.0, 400.0, quiet, needs=("equipment.blower_tables",))
    assert "once the new blower's table confirms it" in largest_sentence(once, a_job())
    none = LargestQuiet(None, None, 400.0, same(375.0))
    assert largest_sentence(none, a_job()).startswith("These ducts carry not even the smallest")
    open_ = LargestQuiet(None, None, 400.0, None, unmet=("supply.trunks",))
    assert "can't be said yet; first: how many trunks" in largest_sentence(open_, a_job())
    assert "Nothing here cools" in largest_sentence(None, a_job())
