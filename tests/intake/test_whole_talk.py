"""A whole talk through the real command line, its figures worked out by hand beside it.

The house is invented. A piped conversation is held as a person would type it; then its report is
read as JSON.
"""

import json
import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from intake.interview.conversation import Conversation
from intake.interview.turns import Voice

TYPED = {
    "safety": ("nope, all clear",),
    "new_equipment": ("80k furnce 96% with 3 ton ac",),
    "new_stages": ("single",),
    "cool_cfm": ("12oo cfm",),
    "rise": ("40-70",),
    "old_runs": ("yep its runnin",),
    "tools": ("just a tape",),
    "blower_table": ("what's static?", "medium high: .1 1310, .3 1250, .5 1190, .7 1090, .9 900"),
    "filter_in_table": ("no",),
    "coil_drop": (".24 @ 1200",),
    "trunk_count": ("two",),
    "trunk_size": ("18 by 8 bare metal",),
    "step_down": ("no",),
    "drop_size": ("22x10 bare metal", "sorry, the drop is 20x10"),
    "filter": ("20x25x4",),
    "filter_place": ("in a cabinet",),
    "openings": ("why", "20x20 and 20x14, slots"),
    "return_trunk": ("none",),
    "run_supply": ("about 40 foot",),
    "run_return": ("15",),
    "fittings": ("2 square elbows, takeoff, boot",),
    "branches": ("9 six inch round metal", "sorry, 10 not 9"),
    "elevation": ("700 ft",),
    "year_built": ("1985 i think",),
}
"""What is typed when a question is open, with requests before and corrections after the answer."""

ASIDE = ("what's static?", "why", "sorry, the drop is 20x10", "sorry, 10 not 9", "go on", "skip")


def _lines() -> list[str]:
    """The lines in the order in which the questions come; all of them, worth asking or not."""
    talk = Conversation()
    talk.choose(Voice.TECHNICIAN)
    left = dict(TYPED)
    lines: list[str] = []
    while left:
        assert len(lines) < 60, f"never asked: {sorted(left)}"
        ask = talk.pending
        typed = ("go on",) if ask is None else left.pop(ask.key, ("skip",))
        for line in typed:
            talk.hear(line)
            lines.append(line)
    return [*lines, *([] if talk.ended else ["finish"])]


LINES = _lines()
ANSWERS = [line for line in LINES if line not in (*ASIDE, "finish")]


def trunktalk(*words: str, store: Path, typed: str | None = None) -> str:
    """What the command prints; its standard input is a pipe."""
    done = subprocess.run(
        [sys.executable, "-m", "intake", *words, "--store", str(store)],
        input=typed,
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=120,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


TALK = ("talk", "--plain", "--voice", "technician")


@pytest.fixture(scope="module")
def held(tmp_path_factory: pytest.TempPathFactory) -> tuple[str, dict]:
    store = tmp_path_factory.mktemp("talk") / "jobs.db"
    said = trunktalk(*TALK, store=store, typed="".join(f"{line}\n" for line in LINES))
    report = trunktalk("report", "1", "--format", "json", store=store)
    return said, json.loads(report)


def finding(report: dict, mode: str, check: str) -> dict:
    found = [f for f in report["modes"][mode]["findings"] if f["check"] == check]
    assert len(found) == 1, [f["check"] for f in report["modes"][mode]["findings"]]
    return found[0]


def test_it_is_heard_to_the_end_without_one_ask_back(held):
    said, _ = held
    assert "Again:" not in said
    assert said.count("\nYou: ") == len(LINES) >= 25
    assert "Verdict: " in said


def test_what_was_read_is_said_in_normal_form(held):
    said, _ = held
    for line in (
        "New equipment: furnace, 3 tons.",
        "Also taken: furnace 80,000 BTU/h in, 96 % efficient.",
        "Airflow in full cooling: 1,200 CFM.",
        "Allowed rise: 40 to 70 F.",
        "New coil, wet: 0.24 in. w.c., at 1,200 CFM.",
        "Return drop: 20 x 10 in.",
        "Longest supply run: about 40 ft.",
        "Branches: 10 of 6 in. round",
    ):
        assert line in said, line


def test_speeds_told_on_the_way_are_those_of_the_sizes(held):
    said, _ = held
    # 1,200 CFM at no more than 900 fpm needs 1200 / 900 x 144 = 192 sq in.
    assert "at least 192 sq in." in said
    # 80,000 x 0.96 = 76,800 BTU/h; / (1.08 x 70) = 1,016 and / (1.08 x 40) = 1,778 CFM.
    assert "1,016 to 1,778 CFM" in said
    # Half of 1,200 CFM through 18 x 8 / 144 = 1.0 sq ft is 600 fpm.
    assert "shared by 2, through the supply trunk (144 sq in. clear) runs at 600 fpm" in said
    # 1,200 / (22 x 10 / 144) = 785 fpm as first told, 1,200 / (20 x 10 / 144) = 864 as corrected.
    assert "(220 sq in. clear) runs at 785 fpm" in said
    # 20 x 20 + 20 x 14 = 680 sq in.; 1,200 x 144 / 680 = 254 fpm.
    assert "680 sq in. of return openings take 1,200 CFM at 254 fpm" in said


@pytest.mark.parametrize(
    ("check", "figure", "status"),
    [
        ("trunk_velocity", 600.0, "fine"),  # 600 / (18 x 8 / 144); 700 and 900 fpm
        ("return_drop_velocity", 864.0, "over"),  # 1200 / (20 x 10 / 144); 600 and 700 fpm
        ("return_grille_velocity", 254.1, "fine"),  # 1200 x 144 / 680; 500 and 600 fpm
        ("branch_velocity", 611.2, "tight"),  # 120 / (pi / 4 x 0.25 sq ft = 0.19635); 600, 900
        ("filter_face_velocity", 345.6, "fine"),  # 1200 x 144 / (20 x 25); a note, 500 fpm
    ],
)
def test_the_speeds_in_the_report_are_those_worked_out_by_hand(held, check, figure, status):
    # Limits: the residential duct standard's velocity table; openings: the grille trade's figures.
    found = finding(held[1], "cooling_high", check)
    assert found["figure"] == pytest.approx(figure, rel=0.001)
    assert found["status"] == status


DENSITY = 0.975
"""Air at 700 ft to air at sea level: (1 - 6.8754e-6 x 700)^5.2559 = exp(5.2559 x -0.0048244)."""


def test_the_air_delivered_is_read_off_the_typed_table_at_the_predicted_pressure(held):
    pressure = finding(held[1], "cooling_high", "external_static")["figure"]
    assert 0.5 < pressure < 0.7 * DENSITY
    # Thin air: a fixed-speed blower makes DENSITY times the table's pressure at the same CFM.
    # Between the rows of 0.50 (1,190 CFM) and 0.70 (1,090 CFM) 0.1 in. costs 50 CFM.
    by_hand = 1190.0 - 500.0 * (pressure / DENSITY - 0.50)
    delivered = finding(held[1], "cooling_high", "delivered_airflow")
    assert delivered["figure"] == pytest.approx(by_hand, rel=0.002)
    share = delivered["figure"] / 1200.0
    assert delivered["status"] == ("fine" if share >= 0.95 else "tight")
    assert held[1]["modes"]["cooling_high"]["delivered_cfm"] == pytest.approx(by_hand, rel=0.01)


def test_the_coils_drop_is_its_books_in_thinner_air(held):
    # 0.24 in. at 1,200 CFM of standard air, at the same 1,200 CFM: 0.24 x 0.975 = 0.234 in.
    found = finding(held[1], "cooling_high", "coil_drop")
    assert found["figure"] == pytest.approx(0.24 * DENSITY, rel=0.005)


def test_the_rise_is_the_burners_heat_over_the_air_that_it_gets(held):
    air = finding(held[1], "heating_high", "delivered_airflow")["figure"]
    rise = finding(held[1], "heating_high", "temperature_rise")
    # 76,800 BTU/h / (1.08 x 0.975 x CFM), about 63 F; the plate allows 40 to 70.
    assert rise["figure"] == pytest.approx(76_800.0 / (1.08 * DENSITY * air), rel=0.003)
    assert 40.0 < rise["figure"] < 70.0
    assert rise["status"] == "fine"


def test_only_the_drop_stands_in_the_way_and_a_new_one_clears_it(held):
    said, report = held
    for mode in ("cooling_high", "heating_high"):
        verdict = report["modes"][mode]
        assert verdict["status"] == "carries_with_changes"
        assert "return_drop_velocity" in verdict["reasons"]
        assert not verdict["unmet_floor"]
    # The drop's speed limit sets the most that these ducts carry quietly:
    # 700 fpm x 20 x 10 / 144 sq ft = 972 CFM.
    assert report["modes"]["cooling_high"]["quiet_capacity_cfm"] == pytest.approx(972.0, rel=0.005)
    assert "the trunks can stay" in said
    assert "Build a new return drop" in said


def test_answers_in_the_report_are_as_they_were_typed(held):
    typed = json.dumps(held[1]["typed"])
    for line in ANSWERS:
        assert json.dumps(line)[1:-1] in typed, line


@pytest.mark.skipif(os.name == "nt", reason="no SIGKILL")
def test_a_talk_killed_in_the_middle_goes_on_without_losing_an_answer(tmp_path):
    store = tmp_path / "jobs.db"
    talk = subprocess.Popen(
        [sys.executable, "-m", "intake", *TALK, "--store", str(store)],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        text=True,
        encoding="utf-8",
    )
    assert talk.stdin is not None
    assert talk.stdout is not None
    first = LINES[:13]
    try:
        _until_question(talk.stdout)
        for line in first:
            talk.stdin.write(f"{line}\n")
            talk.stdin.flush()
            _until_question(talk.stdout)
        talk.send_signal(signal.SIGKILL)
        assert talk.wait(timeout=30) == -signal.SIGKILL
    finally:
        talk.kill()
        talk.stdin.close()
        talk.stdout.close()
    answered = [line for line in first if line in ANSWERS]
    said = trunktalk(
        *TALK, "--job", "1", store=store,
        typed="show\n" + "".join(f"{line}\n" for line in LINES[13:]),
    )  # fmt: skip
    assert f"Back to this job: {len(answered)} answers so far." in said
    assert "Supply trunks leaving the plenum: 2" in said
    assert "80,000 BTU/h in" in said
    assert "any gas or burning smell" not in said  # no answered question is put again
    report = json.loads(trunktalk("report", "1", "--format", "json", store=store))
    assert report["modes"]["cooling_high"]["status"] == "carries_with_changes"


def _until_question(out) -> None:
    for line in out:
        if line.startswith("Question:"):
            return
    raise AssertionError("the talk ended")
