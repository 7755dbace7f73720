"""One trunk or two is asked before any trunk size is used."""

from engine.job.belief import How, OneOf
from engine.verdict import ModeStatus
from intake.interview.conversation import Conversation
from intake.interview.turns import Voice


def told(*lines: str) -> Conversation:
    talk = Conversation()
    talk.choose(Voice.TECHNICIAN)
    talk.opening()
    for line in ("no", "3 ton air conditioner, single stage, furnace stays", "1200", *lines):
        talk.hear(line)
    return talk


def test_a_trunk_size_without_a_count_leaves_one_or_two_open() -> None:
    talk = told("20x8 bare metal", "yes")
    count = talk.job.stated("supply.trunks.0.count")
    assert isinstance(count, OneOf)
    assert count.how is How.ASSUMED
    verdict = talk.verdict()
    assert verdict is not None
    for mode in verdict.modes.values():
        assert mode.status is ModeStatus.CANT_SAY
        assert "supply.trunks.0.count" in mode.unmet_floor


def test_the_count_told_later_replaces_what_was_open() -> None:
    talk = told("20x8 bare metal", "yes", "the trunks: two of them, opposite ways")
    assert talk.job.number("supply.trunks.0.count") == 2.0
    assert talk.job.is_known("supply.trunks.0.count")
