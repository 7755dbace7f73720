"""How the chat looks: words beside colours, the terminal's own colours, every size."""

import pytest
from rich.color import Color, ColorType
from support.screens import colours, drive, flat, lines, picture, until
from support.talks import QUESTIONS, ScriptedTalk, around, tool
from textual.pilot import Pilot

from intake.interview.turns import Manner, Say
from intake.screen.app import ChatApp
from intake.screen.chat import Left
from intake.screen.exchange import WORDS


def test_every_manner_has_its_place_on_the_screen() -> None:
    class All(ScriptedTalk):
        def opening(self) -> list[Say]:
            return [tool(manner, f"this is {manner.value}") for manner in Manner]

    app = ChatApp(lambda: All(), around())

    async def steps(pilot: Pilot[Left]) -> None:
        shown = "\n".join(picture(app))
        for manner in Manner:
            assert f"{WORDS[manner]}this is {manner.value}" in shown

    drive(app, steps, (80, 40))


def test_what_matters_is_told_by_words_and_not_by_colour_alone() -> None:
    told = [WORDS[m] for m in (Manner.ECHO, Manner.CAUTION, Manner.ALARM, Manner.ASK_BACK)]
    assert all(told)
    assert len(set(told)) == len(told)


@pytest.mark.parametrize("no_color", [False, True])
def test_only_the_terminals_own_sixteen_colours_are_used_and_none_if_none_are_wanted(
    no_color: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    if no_color:
        monkeypatch.setenv("NO_COLOR", "1")

    class All(ScriptedTalk):
        def opening(self) -> list[Say]:
            return [tool(manner, f"this is {manner.value}") for manner in Manner]

    app = ChatApp(All, around())
    used: set[Color] = set()

    async def steps(pilot: Pilot[Left]) -> None:
        used.update(colours(app))

    drive(app, steps, (80, 40))
    kinds = {colour.type for colour in used}
    assert kinds == ({ColorType.DEFAULT} if no_color else {ColorType.DEFAULT, ColorType.STANDARD})


@pytest.mark.parametrize("size", [(20, 5), (10, 3), (200, 60)])
def test_no_size_of_terminal_breaks_it(size: tuple[int, int]) -> None:
    talk = ScriptedTalk()

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*"20x8", "enter")
        await until(lambda: talk.heard == ["20x8"], pilot)

    drive(ChatApp(lambda: talk, around()), steps, size)


def test_a_change_of_size_keeps_the_newest_line_in_sight() -> None:
    app = ChatApp(ScriptedTalk, around())

    async def steps(pilot: Pilot[Left]) -> None:
        await pilot.press(*"a long answer " * 12, "enter")
        await until(lambda: QUESTIONS[1].text in lines(app), pilot)
        for size in ((40, 12), (100, 30), (36, 10)):
            await pilot.resize_terminal(*size)
            await until(lambda: "[b]return[/b]?" in flat(picture(app)), pilot)

    drive(app, steps, (80, 24))
