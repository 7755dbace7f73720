"""The plain mode: every line says in words what it is, and it ends properly however it ends."""

import io

import pytest
from support.talks import ScriptedTalk, around, tool

from intake.interview.turns import Manner, Say
from intake.keeping.errors import StoreError
from intake.plain import PREFIXES, run_plain


class Keyboard(io.StringIO):
    def isatty(self) -> bool:
        return True


def talk_over(typed: str, talk: ScriptedTalk | None = None, *, keyboard: bool = False) -> list[str]:
    out = io.StringIO()
    source = Keyboard(typed) if keyboard else io.StringIO(typed)
    assert run_plain(talk or ScriptedTalk(), source, out, around()) == 0
    return out.getvalue().splitlines()


def test_a_piped_talk_reads_as_a_whole() -> None:
    assert talk_over("20x8\nno\n") == [
        "Note: Good day.",
        "Question: How big is the trunk where it leaves the plenum?",
        "You: 20x8",
        "Read: I read 20x8",
        "Question: Is there a damper in the [b]return[/b]?",
        "You: no",
        "Read: I read no",
        "Question: How much air will it need?",
        "End of input.",
        "If stopped now: can't say yet.",
        "Kept as job 7; go on with --job 7.",
    ]


def test_no_input_at_all_ends_properly() -> None:
    assert talk_over("")[-1] == "Kept as job 7; go on with --job 7."


def test_an_input_without_a_last_line_end_is_heard() -> None:
    talk = ScriptedTalk()
    talk_over("20x8", talk)
    assert talk.heard == ["20x8"]


def test_quit_ends_it_and_later_lines_are_not_heard() -> None:
    talk = ScriptedTalk()
    lines = talk_over("20x8\nquit\nno\n", talk)
    assert talk.heard == ["20x8"]
    assert lines[-2:] == ["Note: Goodbye.", "Kept as job 7; go on with --job 7."]


def test_after_the_last_answer_more_can_be_asked() -> None:
    talk = ScriptedTalk()
    lines = talk_over("20x8\nno\n1200\nundo\n", talk)
    assert "Verdict: Nothing is left to ask." in lines
    assert talk.heard == ["20x8", "no"]


def test_at_a_keyboard_what_was_typed_is_not_said_again() -> None:
    lines = talk_over("20x8\n", keyboard=True)
    assert not [line for line in lines if "You" in line]
    assert "Answer: Read: I read 20x8" in lines  # the line end after "20x8" is the person's own


def test_at_a_keyboard_the_end_begins_on_a_line_of_its_own() -> None:
    lines = talk_over("", keyboard=True)
    assert lines[-4:-2] == ["Answer: ", "End of input."]


def test_an_empty_line_at_a_keyboard_says_the_question_again() -> None:
    lines = talk_over("\n", keyboard=True)
    assert sum("How big is the trunk" in line for line in lines) == 2


def test_empty_lines_in_a_pipe_are_no_answers() -> None:
    talk = ScriptedTalk()
    talk_over("\n  \n20x8\n\n", talk)
    assert talk.heard == ["20x8"]


def test_what_a_terminal_would_obey_never_reaches_it() -> None:
    lines = talk_over("20x8\x1b]0;title\x07\x9b31m\n")
    assert not [c for line in lines for c in line if ord(c) < 32 or 127 <= ord(c) < 160]
    assert "You: 20x8 ]0;title  31m" in lines


def test_a_huge_line_is_cut_and_the_next_one_is_heard_whole() -> None:
    talk = ScriptedTalk()
    talk_over("9" * 100_000 + "\nno\n", talk)
    assert [len(text) for text in talk.heard] == [20_000, 2]


def test_a_table_can_be_typed_on_one_line() -> None:
    talk = ScriptedTalk()
    talk_over("0.1 1250 // 0.2 1190//0.3 1100\n", talk)
    assert talk.heard == ["0.1 1250\n0.2 1190\n0.3 1100"]


def test_at_a_keyboard_it_says_first_how_to_type() -> None:
    assert talk_over("", keyboard=True)[0].startswith("Note: One line is one answer")
    assert not [line for line in talk_over("") if "One line is one answer" in line]


def test_the_report_is_saved_on_a_typed_word() -> None:
    talk = ScriptedTalk()
    assert "Saved: report.html" in talk_over("save report\n", talk)
    assert talk.heard == []


def test_a_report_that_cannot_be_saved_is_told_and_the_talk_goes_on() -> None:
    def full() -> str:
        raise OSError(28, "No space left on device")

    out = io.StringIO()
    talk = ScriptedTalk()
    run_plain(talk, io.StringIO("save\n20x8\n"), out, around(full))
    assert "could not be saved: No space left on device" in out.getvalue()
    assert talk.heard == ["20x8"]


def test_an_answer_that_cannot_be_kept_ends_the_talk_with_its_reason(tmp_path) -> None:
    def refuse(text: str) -> None:
        raise StoreError(tmp_path, "can't be written: the disk is full.")

    with pytest.raises(StoreError, match="the disk is full"):
        run_plain(ScriptedTalk(record=refuse), io.StringIO("20x8\n"), io.StringIO(), around())


def test_a_fault_is_told_and_the_talk_goes_on() -> None:
    def faulty(text: str) -> None:
        if text == "12":
            raise RuntimeError("the reader fell over")

    talk = ScriptedTalk(record=faulty)
    assert "Caution: A fault: the reader fell over" in talk_over("12\n20x8\n", talk)
    assert talk.heard == ["20x8"]


def test_a_fault_at_the_end_of_the_input_is_told_and_the_farewell_still_said() -> None:
    def stands() -> str:
        raise RuntimeError("the judge fell over")

    lines = talk_over("20x8\n", ScriptedTalk(standing=stands))
    assert lines[-2:] == ["A fault: the judge fell over", "Kept as job 7; go on with --job 7."]


def test_an_interrupt_from_the_keyboard_still_says_how_to_go_on() -> None:
    class Interrupted(Keyboard):
        def readline(self, size: int | None = -1, /) -> str:
            raise KeyboardInterrupt

    out = io.StringIO()
    assert run_plain(ScriptedTalk(), Interrupted(), out, around()) == 130
    assert out.getvalue().splitlines()[-1] == "Kept as job 7; go on with --job 7."


@pytest.mark.parametrize("manner", list(Manner))
def test_every_manner_has_a_word_in_front(manner: Manner) -> None:
    class Once(ScriptedTalk):
        def opening(self) -> list[Say]:
            return [tool(manner, "the text")]

    assert talk_over("", Once())[0] == f"{PREFIXES[manner]}: the text"
    assert len(set(PREFIXES.values())) == len(Manner)
