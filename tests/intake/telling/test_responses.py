"""The responses to danger say what saves people, in both voices, in the right order."""

from __future__ import annotations

import pytest

from intake.interview.turns import Voice
from intake.reading.red_flags import RedFlag, RedFlagKind, RedFlagState
from intake.telling.responses import LOCAL_RULES, RESPONSES, response


def spoken(kind: RedFlagKind, voice: Voice) -> str:
    return " ".join(response(kind, voice)).lower()


# What must be said, after public advice for gas (a utility commission), carbon monoxide (fire
# departments), cold rooms (a health institute), and common practice (how: read in summary).
MUST_SAY = [
    (RedFlagKind.GAS, ("leave", "switch", "light", "911", "basement", "well away")),
    (RedFlagKind.CARBON_MONOXIDE, ("air now", "911", "windows", "pets", "headache")),
    (RedFlagKind.BURNING, ("thermostat", "breaker", "smoke or flame", "911")),
    (RedFlagKind.SHOCK, ("touch", "dry", "911", "electrician")),
    (RedFlagKind.WATER_ELECTRIC, ("touch", "stand in", "dry", "electrician")),
    (RedFlagKind.FLAME, ("thermostat", "again", "911", "fresh air", "today", "dizzy")),
    (RedFlagKind.CO_READING, ("70", "911")),
    (RedFlagKind.NO_HEAT_VULNERABLE, ("oven", "grill", "911", "confus", "slur", "warm", "drows")),
    (RedFlagKind.NO_COOLING_VULNERABLE, ("cool", "water", "911", "confus", "skin", "faint")),
    (RedFlagKind.UNNAMED, ("911", "switch", "outside", "thermostat", "touch")),
    (RedFlagKind.ODD_SMELL, ("gas", "leave", "switch")),
    (RedFlagKind.LOW_BATTERY_CHIRP, ("battery", "test", "911")),
]


@pytest.mark.parametrize("voice", list(Voice))
@pytest.mark.parametrize(("kind", "words"), MUST_SAY)
def test_both_voices_say_everything_that_matters(
    kind: RedFlagKind, words: tuple[str, ...], voice: Voice
) -> None:
    said = spoken(kind, voice)
    assert [word for word in words if word not in said] == []


def test_every_kind_of_danger_has_a_response_and_a_question() -> None:
    assert set(RESPONSES) == set(RedFlagKind) == {kind for kind, _ in MUST_SAY}
    for row in RESPONSES.values():
        assert row.question.endswith("?")
        assert row.on_site
        assert row.read_out
        assert row.dispatcher


def test_people_leave_before_anybody_telephones() -> None:
    for kind in (RedFlagKind.GAS, RedFlagKind.CARBON_MONOXIDE):
        for voice in Voice:
            said = spoken(kind, voice)
            out = min(said.find(word) for word in ("leave", "out into", "outside") if word in said)
            assert out < said.index("911")


def test_nobody_is_asked_to_open_a_burner_touch_wires_or_climb() -> None:
    for row in RESPONSES.values():
        said = " ".join((*row.read_out, row.dispatcher)).lower()
        for risky in ("open the furnace", "remove the", "look at the flame", "climb", "wire"):
            assert risky not in said


@pytest.mark.parametrize("kind", list(RedFlagKind))
def test_a_response_stops_the_questions_exactly_when_its_flag_does(kind: RedFlagKind) -> None:
    assert RedFlag(kind, RedFlagState.PRESENT, "x").stops == RESPONSES[kind].stops
    for voice in Voice:
        assert (LOCAL_RULES in response(kind, voice)) == RESPONSES[kind].stops


def test_the_dispatcher_reads_out_and_the_technician_is_spoken_to() -> None:
    for kind in RedFlagKind:
        assert response(kind, Voice.DISPATCHER)[0].startswith("Read this to the caller")
        assert "caller" not in spoken(kind, Voice.TECHNICIAN)
