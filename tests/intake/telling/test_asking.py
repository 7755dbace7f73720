"""What a question is said to settle: never an airflow of which nothing is open any more."""

import pytest
from support.verdicts import a_mode, a_verdict

from engine.job.facts import Place
from engine.job.modes import Mode
from engine.verdict import ModeStatus
from engine.worth import BUNDLES, Settling, Worth
from intake.telling.asking import now_sentence, settles_words, sure_modes

TRUNKS = next(bundle for bundle in BUNDLES if bundle.key == "trunks")
SETTLES = Worth(
    TRUNKS,
    worth=0.5,
    tenths=4,
    minutes=2.0,
    would_settle=(
        Settling(Mode.COOLING_HIGH, 0.6, "trunk_velocity", "supply trunk"),
        Settling(Mode.HEATING_HIGH, 0.3, "trunk_velocity", "supply trunk"),
    ),
)


def test_the_likeliest_airflow_to_be_settled_is_named():
    assert TRUNKS.place is Place.TRUNKS
    assert settles_words(SETTLES) == "6 times in 10 that settles full cooling"


def test_an_airflow_that_is_sure_is_not_said_to_be_settled_again():
    sure = frozenset([Mode.COOLING_HIGH])
    assert settles_words(SETTLES, sure) == "3 times in 10 that settles full heat"
    both = frozenset([Mode.COOLING_HIGH, Mode.HEATING_HIGH])
    assert now_sentence(SETTLES, both) == (
        "Next, the supply trunks: that clears up about 4 tenths of what is open."
    )


@pytest.mark.parametrize(
    ("status", "confidence", "sure"),
    [
        (ModeStatus.WONT_CARRY, 0.97, True),
        (ModeStatus.WONT_CARRY, 0.91, False),
        (ModeStatus.CANT_SAY, 0.99, False),
    ],
)
def test_an_airflow_is_sure_once_the_interview_would_stop_for_it(status, confidence, sure):
    mode = a_mode(status=status, confidence=confidence)
    verdict = a_verdict(modes={Mode.COOLING_HIGH: mode})
    assert (Mode.COOLING_HIGH in sure_modes(verdict)) is sure
