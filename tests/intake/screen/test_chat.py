"""The chat: what was typed is shown as typed, the question is in sight, and it stays alive."""

import asyncio
import threading
from collections.abc import Awaitable, Callable
from pathlib import Path

import pytest
from support.screens import drive, flat, lines, picture, standing, until
from support.talks import QUESTIONS, ScriptedTalk, around, tool
from textual import events
from textual.pilot import Pilot

from intake.interview.turns import Manner, Say
from intake.keeping.errors import StoreError
from intake.screen.answer import AnswerBox
from intake.screen.app import ChatApp
from intake.screen.chat import OVER, Left
from intake.screen.exchange import LONGEST, Exchange

SIZES = [(40, 12), (80, 24)]
Steps = Callable[[Pilot[Left]], Awaitable[None]]


def box(pilot: Pilot[Left]) -> AnswerBox:
    return pilot.app.screen.query_one(AnswerBox)


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("typed", ["12 ft", "[/]", "[bold]12", "2*3*4", "[$primary] 20x8½"])
def test_an_answer_and_its_echo_are_shown_as_typed(size: tuple[int, int], typed: str) -> None:
    talk = ScriptedTalk()
    app = ChatApp(lambda: talk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*typed, "enter")
        await until(lambda: len(lines(app)) == 5, pilot)
        assert lines(app)[2:4] == [f"> {typed}", f"Read: I read {typed}"]
        shown = "\n".join(picture(app))
        assert f"> {typed}" in shown
        assert f"Read: I read {typed}" in shown

    drive(app, steps, size)
    assert talk.heard == [typed]


@pytest.mark.parametrize("size", SIZES)
def test_the_open_question_is_in_sight_right_above_the_box(size: tuple[int, int]) -> None:
    app = ChatApp(ScriptedTalk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        for number in range(3):
            question = " ".join(QUESTIONS[number].text.split())
            await until(lambda q=question: q in flat(picture(app)), pilot)
            rows = picture(app)
            entry = max(i for i, row in enumerate(rows) if row.startswith("> "))
            above = [row for row in rows[:entry] if row.strip() and "If stopped" not in row]
            assert question.split()[-1] in flat(above[-3:])
            await pilot.press(*f"answer {number}", "enter")

    drive(app, steps, size)


def test_a_pasted_table_is_one_answer_with_all_its_lines() -> None:
    shown: list[str] = []
    talk = ScriptedTalk()
    app = ChatApp(lambda: talk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        app.post_message(events.Paste("0.10\t1250\r\n0.20  1190\n\n0.30 1120\x1b[31m\n"))
        await until(lambda: bool(box(pilot).value), pilot)
        await pilot.press("enter")
        await until(lambda: bool(talk.heard), pilot)
        shown.extend(lines(app))

    drive(app, steps)
    assert talk.heard == ["0.10 1250\n0.20 1190\n0.30 1120 [31m"]
    assert "> 0.10 1250 // 0.20 1190 // 0.30 1120 [31m" in shown


def test_a_paste_lands_where_the_cursor_is_and_replaces_what_is_selected() -> None:
    app = ChatApp(ScriptedTalk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*"abcd", "left", "left", "shift+left")
        app.post_message(events.Paste("1\n2"))
        await until(lambda: box(pilot).value == "a1 // 2cd", pilot)

    drive(app, steps)


def test_up_and_down_bring_back_what_was_typed_and_keep_the_draft() -> None:
    app = ChatApp(ScriptedTalk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*"one", "enter", *"two", "enter", *"dra")
        seen = []
        for key in ("up", "up", "up", "down", "down", "down"):
            await pilot.press(key)
            seen.append(box(pilot).value)
        assert seen == ["two", "one", "one", "two", "dra", "dra"]

    drive(app, steps)


@pytest.mark.parametrize(
    ("key", "shown"),
    [("f1", "Type what you see."), ("ctrl+z", "Taken back."), ("ctrl+s", "Saved: report.html")],
)
def test_a_key_does_what_its_typed_word_does(key: str, shown: str) -> None:
    def after(*typed: str) -> list[str]:
        talk = ScriptedTalk()
        app = ChatApp(lambda: talk, around())

        async def steps(pilot: Pilot[Left]) -> None:
            await pilot.press(*typed)
            await until(lambda: shown in lines(app), pilot)

        drive(app, steps)
        return talk.heard

    word = {"f1": "help", "ctrl+z": "undo", "ctrl+s": "save"}[key]
    assert after(*"20x8", "enter", key) == after(*"20x8", "enter", *word, "enter")


def test_help_names_every_key() -> None:
    app = ChatApp(ScriptedTalk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press("f1")
        told = next(line for line in lines(app) if line.startswith("Keys:"))
        for key in ("F1", "Ctrl+Z", "Ctrl+S", "Ctrl+Q", "Up", "Down", "PageUp", "PageDown"):
            assert key in told

    drive(app, steps)


def test_escape_loses_nothing() -> None:
    app = ChatApp(ScriptedTalk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*"20x", "escape", "escape", "8")
        assert box(pilot).value == "20x8"

    assert drive(app, steps) is None


@pytest.mark.parametrize("keys", [["ctrl+q"], [*"quit", "enter"]])
def test_leaving_by_key_or_word_leaves_without_a_problem(keys: list[str]) -> None:
    app = ChatApp(ScriptedTalk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*keys)
        await until(lambda: app.return_value is not None, pilot)

    assert drive(app, steps) == Left()


def test_after_the_last_answer_the_chat_stays_and_says_what_can_still_be_done() -> None:
    talk = ScriptedTalk()
    app = ChatApp(lambda: talk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        for answer in ("20x8", "no", "1200"):
            await pilot.press(*answer, "enter")
        await until(lambda: OVER in lines(app), pilot)
        await pilot.press(*"undo", "enter")
        await until(lambda: "Taken back." in lines(app), pilot)

    assert drive(app, steps) is None
    assert talk.heard == ["20x8", "no"]


def test_a_talk_that_was_left_goes_on_where_it_was() -> None:
    talk = ScriptedTalk()

    async def answer_and_leave(pilot: Pilot[Left]) -> None:
        await pilot.press(*"20x8", "enter")
        await until(lambda: bool(talk.heard), pilot)
        await pilot.press("ctrl+q")

    drive(ChatApp(lambda: talk, around()), answer_and_leave)
    again = ChatApp(lambda: ScriptedTalk(heard=talk.heard), around())

    async def look(pilot: Pilot[Left]) -> None:
        assert lines(again) == ["Welcome back.", QUESTIONS[1].text]

    drive(again, look)


def test_an_empty_line_is_no_answer() -> None:
    talk = ScriptedTalk()

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press("enter", "space", "enter", *"20x8", "enter")
        await until(lambda: bool(talk.heard), pilot)

    drive(ChatApp(lambda: talk, around()), steps)
    assert talk.heard == ["20x8"]


def test_a_fault_while_answering_is_told_and_the_chat_lives_on() -> None:
    def faulty(text: str) -> None:
        if text == "12":
            raise RuntimeError("[/] a fault")

    talk = ScriptedTalk(record=faulty)
    app = ChatApp(lambda: talk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*"12", "enter")
        await until(lambda: "Caution: A fault: [/] a fault" in lines(app), pilot)
        await pilot.press(*"20x8", "enter")
        await until(lambda: "Read: I read 20x8" in lines(app), pilot)
        await pilot.press("ctrl+q")
        await until(lambda: app.return_value is not None, pilot)

    assert drive(app, steps) == Left()
    assert talk.heard == ["20x8"]


def test_a_fault_while_weighing_is_told_and_the_chat_lives_on() -> None:
    faults = iter([None, ZeroDivisionError("weighing")])

    def stands() -> str:
        fault = next(faults, None)
        if fault:
            raise fault
        return "If stopped now: fine so far"

    talk = ScriptedTalk(standing=stands)
    app = ChatApp(lambda: talk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*"20x8", "enter")
        await until(lambda: "fault of this program" in standing(app), pilot)
        assert "Read: I read 20x8" in lines(app)
        await pilot.press(*"no", "enter")
        await until(lambda: standing(app) == "If stopped now: fine so far", pilot)

    drive(app, steps)
    assert talk.heard == ["20x8", "no"]


def test_an_answer_that_cannot_be_kept_ends_the_chat_with_its_reason(tmp_path: Path) -> None:
    def refuse(text: str) -> None:
        raise StoreError(tmp_path, "can't be written: the disk is full.")

    app = ChatApp(lambda: ScriptedTalk(record=refuse), around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*"20x8", "enter")
        await until(lambda: app.return_value is not None, pilot)

    left = drive(app, steps)
    assert left is not None
    assert "the disk is full" in str(left.error)


def test_a_talk_that_cannot_begin_leaves_with_its_reason(tmp_path: Path) -> None:
    def start() -> ScriptedTalk:
        raise StoreError(tmp_path, "holds no job '9'.")

    app = ChatApp(start, around())

    async def run() -> None:
        async with app.run_test() as pilot:
            await until(lambda: app.return_value is not None, pilot)

    asyncio.run(run())
    assert app.return_value is not None
    assert "holds no job '9'" in str(app.return_value.error)


def test_a_verdict_longer_than_the_window_is_shown_from_its_first_line() -> None:
    class Wordy(ScriptedTalk):
        def hear(self, text: str) -> list[Say]:
            said = super().hear(text)
            reasons = [tool(Manner.VERDICT, f"reason {n}") for n in range(30)]
            return [*said, *reasons] if self.ended else said

    app = ChatApp(lambda: Wordy(heard=["20x8", "no"]), around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*"1200", "enter")
        await until(lambda: "Read: I read 1200" in picture(app)[0], pilot)
        await pilot.press("pagedown", "pagedown", "pagedown", "pagedown")
        await until(lambda: "leaves." in flat(picture(app)), pilot)
        await pilot.press(*"undo", "enter")
        await until(lambda: "How much air" in flat(picture(app)), pilot)

    drive(app, steps)


def test_an_alarm_longer_than_the_window_is_shown_from_its_first_line() -> None:
    class Alarmed(ScriptedTalk):
        def hear(self, text: str) -> list[Say]:
            return [tool(Manner.ALARM, f"do this, number {n}") for n in range(30)]

    app = ChatApp(Alarmed, around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*"smells of gas", "enter")
        await until(lambda: "STOP: do this, number 0" in picture(app)[0], pilot)

    drive(app, steps)


def test_a_saved_report_leaves_the_question_in_sight() -> None:
    app = ChatApp(ScriptedTalk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press("ctrl+s")
        await until(lambda: lines(app)[-2:] == ["Saved: report.html", QUESTIONS[0].text], pilot)

    drive(app, steps)


def test_what_is_typed_while_it_works_waits_its_turn_and_a_late_standing_is_dropped() -> None:
    gate = threading.Event()
    gate.set()

    def slow() -> str:
        assert gate.wait(20)
        return f"after {len(talk.heard)}"

    talk = ScriptedTalk(standing=slow)
    app = ChatApp(lambda: talk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        gate.clear()
        await pilot.press(*"20x8", "enter")
        await until(lambda: talk.heard == ["20x8"], pilot)
        await pilot.press(*"no", "enter")
        assert standing(app) == "Working ..."
        assert lines(app)[-1] == "> no"
        assert talk.heard == ["20x8"]
        seen = []
        gate.set()
        await until(lambda: "> no" in lines(app)[5:], pilot)
        assert lines(app)[2:6] == ["> 20x8", "Read: I read 20x8", QUESTIONS[1].text, "> no"]
        await until(lambda: not seen.append(standing(app)) and "after 2" in seen[-1], pilot)
        assert not [line for line in seen if "after 1" in line]

    drive(app, steps)
    assert talk.heard == ["20x8", "no"]


def test_old_lines_are_dropped_from_the_top() -> None:
    app = ChatApp(ScriptedTalk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        exchange = app.screen.query_one(Exchange)
        exchange.add([tool(Manner.NOTE, f"line {n}") for n in range(LONGEST + 5)])
        await until(lambda: len(lines(app)) == LONGEST, pilot)
        assert lines(app)[-1] == f"line {LONGEST + 4}"

    drive(app, steps)
