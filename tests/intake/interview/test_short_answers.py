"""Short answers to questions asked in the middle of an interview."""

import pytest
from support.dialogue import Dialogue

from intake.interview.short_answers import SHORT_ANSWERS, short_answer
from intake.interview.turns import Manner

ASKED = [
    ("what is static pressure really?", "sideways"),
    ("is high static always low airflow?", "Not always"),
    ("which numbers do i add, return and supply?", "0.70"),
    ("do i test with the filter in or out?", "Filter in"),
    ("heat or cool, which mode?", "more air"),
    ("0.5 on the plate and i read 0.8, is it failed?", "not a wall"),
    ("why is it always the return?", "all the air"),
    ("can't we just put in a bigger blower?", "four times"),
    ("does sealing lower static?", "raises"),
    ("can i close some vents to push air to the bad room?", "seldom"),
    ("what is total effective length", "350 ft"),
    ("friction rate 0.1, do i use that?", "habit"),
    ("is flex as good as metal?", "nearly"),
    ("which size on flex, core or jacket?", "inner core"),
    ("does a high merv filter kill the system?", "face"),
    ("are panned joists ok?", "leak"),
    ("temperature rise too high, what first?", "Filter"),
    ("350 or 400 per ton?", "humid"),
    ("does two-stage mean smaller ducts?", "high stage"),
]


@pytest.mark.parametrize(("line", "part"), ASKED)
def test_what_newer_technicians_ask_is_answered(line, part):
    answer = short_answer(line)
    assert answer is not None
    assert part in answer


@pytest.mark.parametrize(
    "line", ["20x8 flex", "static .5", "return .30 supply .40", "bare metal", "is it 20x8?", "yes"]
)
def test_an_answer_is_no_question(line):
    assert short_answer(line) is None


def test_answers_are_short():
    assert all(len(row.words) <= 220 for row in SHORT_ANSWERS)


def test_a_question_in_the_middle_is_answered_and_the_open_one_repeated():
    told = Dialogue().play("no", "what is static pressure anyway?")
    assert told.key == "new_equipment"
    assert "sideways" in told.lines(Manner.HELP)[0]
    assert told.lines(Manner.QUESTION)
    assert told.state.misread == 0
