"""JSON lines: every line out is one JSON object, whatever comes in."""

import io
import json
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from support.talks import ScriptedTalk, around

from intake.jsonl import finite, run_jsonl


def no_constant(name: str) -> None:
    raise AssertionError(f"{name} is not JSON")


def records(typed: str, talk: ScriptedTalk | None = None, **verdict: Any) -> list[dict[str, Any]]:
    out = io.StringIO()
    status = run_jsonl(
        talk or ScriptedTalk(),
        io.StringIO(typed),
        out,
        around(),
        lambda: {"verdict": None, **verdict},
    )
    assert status == 0
    return [json.loads(line, parse_constant=no_constant) for line in out.getvalue().splitlines()]


def test_the_opening_comes_first_with_its_question() -> None:
    first = records("")[0]
    assert first == {
        "say": [
            {"speaker": "tool", "manner": "note", "text": "Good day."},
            {
                "speaker": "tool",
                "manner": "question",
                "text": "How big is the trunk where it leaves the plenum?",
            },
        ],
        "ask": {
            "key": "trunk",
            "kind": "duct",
            "unit": "in",
            "choices": [],
            "text": "How big is the trunk where it leaves the plenum?",
            "number": 1,
        },
        "ended": False,
        "verdict": None,
    }


@pytest.mark.parametrize(
    "line", ['{"answer": "20x8"}', "20x8", '\ufeff{"answer": "20x8"}', '  {"answer":"20x8"}  ']
)
def test_an_object_and_bare_text_are_the_same_answer(line: str) -> None:
    talk = ScriptedTalk()
    answered = records(line + "\n", talk)[1]
    assert talk.heard == ["20x8"]
    assert answered["ask"]["key"] == "damper"
    assert answered["ask"]["choices"] == ["yes", "no"]


@pytest.mark.parametrize("line", ['{"answer": "0.1 1250\\n0.2 1190"}', "0.1 1250 // 0.2 1190"])
def test_an_answer_may_have_lines(line: str) -> None:
    talk = ScriptedTalk()
    records(line + "\n", talk)
    assert talk.heard == ["0.1 1250\n0.2 1190"]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ('{"answer": "20x8"', "begins like JSON"),
        ('{"answer": 12}', "text that a person would type"),
        ('{"answer": NaN}', "text that a person would type"),
        ('{"answer": null}', "text that a person would type"),
        ('{"reply": "20x8"}', "'reply'"),
        ('{"answer": "20x8", "key": "trunk"}', "'key'"),
        ("{}", "nothing"),
        ('{"answer": ' + "[" * 9000, "begins like JSON"),
        ('{"answer": "' + "9" * 30_000 + '"}', "at most 20000 characters"),
        ('{"answer": ' + "9" * 5000 + "}", "begins like JSON"),
    ],
)
def test_a_line_that_cannot_be_taken_gets_an_error_and_the_question_stays(
    line: str, told: str
) -> None:
    talk = ScriptedTalk()
    said = records(line + "\n20x8\n", talk)
    assert told in said[1]["error"]
    assert said[1]["ask"]["key"] == "trunk"
    assert talk.heard == ["20x8"]


def test_a_fault_is_told_and_the_talk_goes_on() -> None:
    def faulty(text: str) -> None:
        if text == "12":
            raise RuntimeError("the reader fell over")

    talk = ScriptedTalk(record=faulty)
    assert records("12\n20x8\n", talk)[1]["error"] == "A fault: the reader fell over"
    assert talk.heard == ["20x8"]


def test_a_fault_while_judging_is_told_beside_what_was_said() -> None:
    def faulty() -> dict[str, Any]:
        raise RuntimeError("the judge fell over")

    out = io.StringIO()
    assert run_jsonl(ScriptedTalk(), io.StringIO("20x8\n"), out, around(), faulty) == 0
    answered = json.loads(out.getvalue().splitlines()[1])
    assert answered["say"][1]["text"] == "I read 20x8"
    assert answered["verdict"] is None
    assert answered["error"] == "A fault: the judge fell over"


def test_the_last_object_says_how_the_job_is_kept() -> None:
    last = records("quit\n")[-1]
    assert last == {
        "say": [],
        "ask": None,
        "ended": True,
        "kept": "Kept as job 7; go on with --job 7.",
    }


def test_no_number_that_json_lacks_gets_out() -> None:
    verdict = {"modes": {"cooling_high": {"ratio": float("inf"), "figure": float("nan")}}}
    first = records("", verdict=verdict)[0]
    assert first["verdict"] == {"modes": {"cooling_high": {"ratio": None, "figure": None}}}


def test_what_has_no_form_in_json_is_an_error_of_ours_not_a_silent_text() -> None:
    with pytest.raises(TypeError, match="object has no form"):
        finite({"a": object()})


@settings(max_examples=60, deadline=None)
@given(st.lists(st.text(max_size=40), max_size=4))
def test_any_text_gives_one_json_object_a_line(lines: list[str]) -> None:
    typed = "".join(line.replace("\n", " ").replace("\r", " ") + "\n" for line in lines)
    said = records(typed)
    assert all(isinstance(record, dict) for record in said)
    assert all(("say" in record) or ("error" in record) or ("saved" in record) for record in said)
