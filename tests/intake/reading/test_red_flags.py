"""Signs of danger in typed text: none missed, denials understood, trade talk left alone.

The phrases are in `red_flag_phrases`, one a line: `present.tsv` with the kind before each, `asked`
for dangers told so loosely that a question comes first, `negated`, `unclear` and `ordinary`.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from intake.reading.red_flag_ideas import FAMILIES, IDEAS
from intake.reading.red_flag_words import KEYS
from intake.reading.red_flag_words import PRESENT as PATTERNS
from intake.reading.red_flag_words import UNCLEAR as DOUBTFUL_PATTERNS
from intake.reading.red_flags import RedFlagKind, RedFlagState, look

GAS = RedFlagKind.GAS
CO = RedFlagKind.CARBON_MONOXIDE
READING = RedFlagKind.CO_READING

PHRASES = Path(__file__).with_name("red_flag_phrases")


def lines(name: str) -> list[str]:
    return (PHRASES / name).read_text(encoding="utf-8").splitlines()


PRESENT = [
    (RedFlagKind(kind), text)
    for kind, _, text in (row.partition("\t") for row in lines("present.tsv"))
]
ASKED = lines("asked.txt")
NEGATED = lines("negated.txt")
UNCLEAR = lines("unclear.txt")
ORDINARY = lines("ordinary.txt")


@pytest.mark.parametrize(("kind", "text"), PRESENT)
def test_a_danger_that_is_there_is_never_missed(kind: RedFlagKind, text: str) -> None:
    flag = look(text)
    assert flag is not None
    assert (flag.kind, flag.state) == (kind, RedFlagState.PRESENT)


@pytest.mark.parametrize("text", ASKED)
def test_a_danger_told_loosely_is_never_passed_over(text: str) -> None:
    flag = look(text)
    assert flag is not None
    assert flag.state in (RedFlagState.PRESENT, RedFlagState.UNCLEAR)


@pytest.mark.parametrize("text", NEGATED)
def test_a_danger_that_is_plainly_denied_lets_the_questions_go_on(text: str) -> None:
    flag = look(text)
    assert flag is not None
    assert flag.state is RedFlagState.NEGATED


@pytest.mark.parametrize("text", UNCLEAR)
def test_a_danger_past_or_unclear_is_asked_about(text: str) -> None:
    flag = look(text)
    assert flag is not None
    assert flag.state is RedFlagState.UNCLEAR


@pytest.mark.parametrize("text", ORDINARY)
def test_ordinary_trade_talk_raises_nothing(text: str) -> None:
    assert look(text) is None


def test_there_are_enough_phrases_of_each_sort() -> None:
    assert len(PRESENT) >= 250
    assert len(NEGATED) >= 50
    assert len(UNCLEAR) >= 80
    assert len(ORDINARY) >= 200
    assert {kind for kind, _ in PRESENT} >= set(RedFlagKind) - {
        RedFlagKind.ODD_SMELL,
        RedFlagKind.UNNAMED,
    }


def test_only_a_danger_that_is_there_stops_the_questions() -> None:
    stops = {text: look(text) for _, text in PRESENT}
    assert all(flag and flag.stops for text, flag in stops.items() if "chirp" not in text)
    assert not any(flag.stops for text in NEGATED + UNCLEAR if (flag := look(text)))
    chirp = look("co detector chirps once a minute")
    assert chirp is not None
    assert not chirp.stops


@pytest.mark.parametrize(("kind", "text"), [row for row in PRESENT if row[0] is GAS])
def test_capitals_spaces_and_other_answers_around_it_hide_nothing(
    kind: RedFlagKind, text: str
) -> None:
    for dressed in (text.upper(), f"  {text}  !!", f"20x8 galv. {text}", f"{text}. trunk is 18x8"):
        flag = look(dressed)
        assert flag is not None, dressed
        assert (flag.kind, flag.state) == (kind, RedFlagState.PRESENT), dressed


def test_the_gravest_of_several_dangers_is_told() -> None:
    flag = look("no burning smell, soot on the door, and i smell gas")
    assert flag is not None
    assert (flag.kind, flag.state) == (GAS, RedFlagState.PRESENT)


# Action levels in room air (9, 35 and 70 ppm): ANSI/BPI-1200 (how: memory).
@pytest.mark.parametrize(
    ("ppm", "kind", "state"),
    [
        (8, None, None),
        (9, READING, RedFlagState.UNCLEAR),
        (34, READING, RedFlagState.UNCLEAR),
        (35, READING, RedFlagState.PRESENT),
        (69, READING, RedFlagState.PRESENT),
        (70, CO, RedFlagState.PRESENT),
    ],
)
def test_carbon_monoxide_figures_follow_the_action_levels(
    ppm: int, kind: RedFlagKind | None, state: RedFlagState | None
) -> None:
    for text in (f"{ppm} ppm", f"co is {ppm}", f"ambient co reads {ppm} ppm in the kitchen"):
        flag = look(text)
        assert (flag and flag.kind, flag and flag.state) == (kind, state), text


@given(st.text(max_size=80))
def test_any_text_at_all_is_looked_at_without_an_error(text: str) -> None:
    flag = look(text)
    assert flag is None or flag.words


@given(st.text(alphabet="0123456789x .,/\"'", max_size=40))
def test_sizes_and_figures_alone_are_never_a_danger(text: str) -> None:
    assert look(text) is None


def test_every_pattern_is_found_by_the_pieces_of_words_it_is_filed_under() -> None:
    texts = [*UNCLEAR, *ASKED, *NEGATED, *(text for _, text in PRESENT)]
    words = [flag.words for text in texts if (flag := look(text)) is not None]
    for kind, pattern in (*PATTERNS, *DOUBTFUL_PATTERNS):
        for said in words:
            if re.search(pattern, said):
                assert any(key in said for key in KEYS[kind]), (pattern, said)


def test_every_idea_names_known_families_and_a_known_kind() -> None:
    for idea in IDEAS:
        assert RedFlagKind(idea.kind)
        assert set(idea.families) | set(idea.unless) | set(idea.doubt) <= set(FAMILIES)
    used = {name for idea in IDEAS for name in (*idea.families, *idea.unless, *idea.doubt)}
    assert used == set(FAMILIES)


@pytest.mark.parametrize(
    ("text", "state"),
    [
        ("co is 12 in the kitchen", RedFlagState.UNCLEAR),
        ("co at 200 in supply air", RedFlagState.PRESENT),
        ("20x10 co tested 0", None),
        ("reading 78 co in the hall", RedFlagState.PRESENT),
        ("meter says co 4 in the hall", None),
        ("denver co, 5280 feet", None),
        ("aurora co 80012", None),
        ("co2 is high in the office", RedFlagState.UNCLEAR),
        ("carbon dioxide in the basement", RedFlagState.UNCLEAR),
    ],
)
def test_carbon_monoxide_is_told_from_the_state_and_from_carbon_dioxide(
    text: str, state: RedFlagState | None
) -> None:
    flag = look(text)
    assert (flag and flag.state) == state


# 55 F and 60 F: a national health institute's advice on cold rooms (how: read in summary).
@pytest.mark.parametrize(
    ("text", "kind", "state"),
    [
        ("54 degrees in the house", RedFlagKind.NO_HEAT_VULNERABLE, RedFlagState.PRESENT),
        ("56 degrees in the house", None, None),
        ("60 in the house and a newborn", RedFlagKind.NO_HEAT_VULNERABLE, RedFlagState.PRESENT),
        ("63 in the house and a newborn", RedFlagKind.NO_HEAT_VULNERABLE, RedFlagState.UNCLEAR),
        ("70 in the house and a newborn", None, None),
        ("92 in the house", RedFlagKind.NO_COOLING_VULNERABLE, RedFlagState.UNCLEAR),
        ("92 in the house and a newborn", RedFlagKind.NO_COOLING_VULNERABLE, RedFlagState.PRESENT),
    ],
)
def test_a_cold_or_hot_house_counts_more_with_somebody_whom_it_can_harm(
    text: str, kind: RedFlagKind | None, state: RedFlagState | None
) -> None:
    flag = look(text)
    assert (flag and flag.kind, flag and flag.state) == (kind, state)
