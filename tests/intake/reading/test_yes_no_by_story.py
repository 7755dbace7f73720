"""Yes or no by what follows from what is told."""

import pytest

from intake.reading.corpus import read_line


def answer(question: str, text: str) -> object:
    got = read_line({"field": "yes_no", "text": text, "question": question})
    return got["expect"]["yes"] if got["outcome"] == "accept" else got["outcome"]


@pytest.mark.parametrize(
    ("question", "text", "right"),
    [
        ("Is there a filter in the unit?", "pulled it out last week and never put one back", False),
        ("Is there a filter in the unit?", "been running without one since spring", False),
        ("Is there a filter in the unit?", "took it out, forgot to put a new one in", False),
        ("Is there a filter in the unit?", "pulled it out and put a new one in", True),
        ("Is the condensate drain clear?", "backed up", False),
        ("Is the condensate drain clear?", "it's overflowing, full of slime", False),
        ("Are all the registers open?", "half of em are shut", False),
        ("Are all the registers open?", "about half of them are open", False),
        ("Are all the registers open?", "most are closed", False),
        ("Do any doors get pulled shut when the blower starts?",
         "the back bedroom one slams on her every time", True),
        ("Do any doors whistle or get pulled shut when the blower starts?",
         "hall door slams", True),
        ("Are the flex runs pulled tight?", "they hang like hammocks between the trusses", False),
        ("Are the flex runs pulled tight?", "big belly in the middle of every one", False),
        ("Is there room for a four inch filter cabinet?",
         "not a chance, the drop's an inch off the wall", False),
        ("Is there room for a four inch filter cabinet?", "no way, closet is tiny", False),
        ("Were the ducts ever replaced?", "kinda doubt it", False),
        ("Were the ducts ever replaced?", "i seriously doubt that", False),
    ],
)  # fmt: skip
def test_a_story_answers(question, text, right) -> None:
    got = answer(question, text)
    assert got == right or (right is True and got == "ask"), got


@pytest.mark.parametrize(
    ("question", "text"),
    [
        ("Are all the registers open?", "i think half the house is fine"),
        ("Is there a filter in the unit?", "i took it out to look at it and put it back"),
        ("Is there room for a cabinet?", "no way to tell"),
        ("Is there a filter in the unit?", "never looked"),
    ],
)
def test_what_tells_neither_is_no_no(question, text) -> None:
    assert answer(question, text) is not False
