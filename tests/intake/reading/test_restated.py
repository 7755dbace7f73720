"""Corrections in free words: why it was wrong, what it was, and what it is."""

import pytest

from intake.reading.read import read
from intake.reading.result import Accepted, Command, CommandName, Previous

CORRECTED = [
    # how it came to be wrong, then the new value
    ("static_pressure", ".74", "temperature", "read the gauge wrong, .47", ".47"),
    ("static_pressure", ".74", "length", "was looking at the wrong scale, it's .47", ".47"),
    ("airflow", "120", "temperature", "dropped a zero, 1200", "1200"),
    ("airflow", "12000", "length", "put an extra zero in there, it's 1200", "1200"),
    ("airflow", "1520", "filter", "swapped the digits, 1250", "1250"),
    ("capacity", "46k", "length", "numbers were flipped it's 64k", "64k"),
    ("length", "63", "duct", "had the tape upside down, 36", "36"),
    ("length", "14", "airflow", "autocorrect got me, 40", "40"),
    ("filter", "16x25x1", "length", "grabbed the wrong filter, it's 20x25x1", "20x25x1"),
    ("grille", "14x20", "length", "that was the wrong wall, should be 14x24", "14x24"),
    ("duct", "18x8", "length", "ah nuts, it's 16x8", "16x8"),
    ("duct", "18x8", "length", "doh, 16x8", "16x8"),
    ("elevation", "5800", "length", "misremembered, make it 8500", "8500"),
    ("capacity", "2 tons", "airflow", "hit the wrong key. 3 tons", "3 tons"),
    ("temperature", "57", "length", "stupid keyboard, 75", "75"),
    # looked at again
    ("grille", "30x14", "filter", "double checked that one, its 30x12", "30x12"),
    ("duct", "20x8", "length", "measured that one again and it's 20x10", "20x10"),
    ("capacity", "2 tons", "length", "found the tag, it's 2.5 tons", "2.5 tons"),
    ("elevation", "650", "duct", "looked it up and it's 850 ft, please fix that", "850 ft"),
    ("coil_state", "clean", "length", "took a closer look, it's plugged", "plugged"),
    # the value that is taken back
    ("airflow", "1000", "static_pressure", "1100, i wrote 1000 by mistake", "1100"),
    ("airflow", "1000", "static_pressure", "wrote 1000, it's really 1100", "1100"),
    ("static_pressure", ".9", "length", "typed .9 meant .6", ".6"),
    ("static_pressure", ".9", "length", "should be .6 rather than .9", ".6"),
    ("length", "thirteen feet", "airflow", "thirty, three zero, not thirteen", "thirty"),
    ("length", "50", "airflow", "fifteen, one five, not fifty", "fifteen"),
    ("blower_type", "psc", "coil_state", "it's really an ecm with taps, not a psc",
     "ecm with taps"),
    ("coil_state", "clean", "length", "should be some dirt instead of clean", "some dirt"),
    ("material", "galvanized", "length", "it's flex, not galvanized", "flex"),
    ("material", "galvanized", "duct", "nope I was wrong, that's duct board", "duct board"),
    ("duct", "8x20", "airflow", "other way around, 20 wide by 8 tall", "20 wide by 8 tall"),
    # orders
    ("yes_no", "yes", "yes_no", "change that last one to a no", "no"),
    ("yes_no", "no", "coil_state", "actually put yes for that last question", "yes"),
    ("yes_no", "no", "length", "make that last one a yes", "yes"),
    ("yes_no", "no", "length", "switch my answer to yes", "yes"),
    ("length", "40 ft", "elevation", "strike that and put 35 ft", "35 ft"),
    ("length", "40 ft", "duct", "scratch that and make it 35 ft", "35 ft"),
    ("length", "40 ft", "duct", "put 35 ft for the last one", "35 ft"),
    ("material", "flex", "length", "mark the last one as duct board", "duct board"),
]  # fmt: skip


@pytest.mark.parametrize(("before", "was", "field", "text", "value"), CORRECTED)
def test_the_new_value_alone_is_found(before, was, field, text, value) -> None:
    for asked in ("command", field):
        reading = read(asked, text, question="Is it open?", previous=Previous(before, was))
        assert isinstance(reading, Command), (asked, reading)
        assert reading.name is CommandName.CORRECT
        assert reading.value_text == value, (asked, reading)


@pytest.mark.parametrize(
    ("before", "was", "field", "text", "fact", "value"),
    [
        ("length", "30 ft", "duct", "the airflow I gave you before should be 1100 not 1000",
         "airflow", "1100"),
        ("length", "30 ft", "duct", "the static i told you earlier was .6 not .9", "static", ".6"),
        ("airflow", "1200", "length", "the filter i put in should be 20x25x1 not 16x25x1",
         "filter", "20x25x1"),
    ],
)  # fmt: skip
def test_another_fact_is_named_by_when_it_was_told(before, was, field, text, fact, value) -> None:
    for asked in ("command", field):
        reading = read(asked, text, previous=Previous(before, was))
        assert isinstance(reading, Command)
        assert (reading.fact_words, reading.value_text) == (fact, value)


@pytest.mark.parametrize(
    ("before", "was", "text", "value", "old"),
    [
        ("duct", "20x8", "the 8 should be a 10", "10", "8"),
        ("duct", "20x8 lined", "not lined, it's bare metal", "bare metal", "lined"),
        ("filter", "16x25x1 merv 8", "the merv was 11 not 8", "11", "8"),
        ("filter", "two 16x20x1", "3 of em not 2", "3 of em", "2"),
        ("filter", "two 16x20x1", "three of those, not two", "three of those", "two"),
    ],
)
def test_a_part_of_an_answer_is_corrected_with_what_it_replaces(
    before, was, text, value, old
) -> None:
    for asked in ("command", "length"):
        reading = read(asked, text, previous=Previous(before, was))
        assert isinstance(reading, Command)
        assert (reading.value_text, reading.old_text) == (value, old)


@pytest.mark.parametrize(
    ("before", "was", "field", "text"),
    [
        ("duct", "20x8", "length", "22 ft, not counting the elbow"),
        ("duct", "20x8", "length", "went back and taped it, 22 ft"),
        ("length", "30 ft", "duct", "20x8, not lined"),
        ("length", "30 ft", "static_pressure", "double checked the zero first, .47"),
        ("material", "flex", "length", "it's 40 ft"),
        ("duct", "20x8", "grille", "the one in the hall, 20x20, not the bedroom one"),
        ("airflow", "1200", "temperature", "54, put the probe in the supply"),
        ("yes_no", "no", "yes_no", "put in new last year"),
        ("duct", "18x8", "filter", "20x25x1, somebody put it in backwards"),
        ("filter", "16x25x1", "blower_type", "psc, not an ecm"),
    ],
)  # fmt: skip
def test_an_answer_with_such_words_stays_an_answer(before, was, field, text) -> None:
    reading = read(field, text, question="Is the filter clean?", previous=Previous(before, was))
    assert not isinstance(reading, Command), reading


@pytest.mark.parametrize(
    ("field", "text"),
    [("length", "should be 40 ft"), ("duct", "20x8, not 18x8"), ("airflow", "misread it, 1200")],
)
def test_with_nothing_before_it_there_is_nothing_to_correct(field, text) -> None:
    reading = read(field, text)
    assert isinstance(reading, Accepted) or not isinstance(reading, Command)
