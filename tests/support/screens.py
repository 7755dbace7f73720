"""Drives the chat without a terminal, waiting for conditions, never for a time."""

import asyncio
from collections.abc import Awaitable, Callable, Iterator
from time import monotonic

from rich.color import Color
from textual.pilot import Pilot
from textual.widgets import Static

from intake.screen.app import ChatApp
from intake.screen.chat import Left
from intake.screen.exchange import Exchange

DEADLINE_S = 20.0


def lines(app: ChatApp) -> list[str]:
    """Every line of the exchange."""
    exchange = app.screen.query_one(Exchange)
    return [str(line.content) for line in exchange.query(Static)]


def standing(app: ChatApp) -> str:
    return str(app.screen.query_one("#standing", Static).content)


def picture(app: ChatApp) -> list[str]:
    """The rows of the terminal as they are painted."""
    return ["".join(s.text for s in strip) for strip in app.screen._compositor.render_strips()]


def flat(rows: list[str]) -> str:
    """Painted rows as running text, without bars and borders."""
    return " ".join(" ".join(row.strip(" ┃▁▂▃▄▅▆▇█") for row in rows).split())


def colours(app: ChatApp) -> Iterator[Color]:
    """Every colour that goes out to the terminal."""
    background = app.screen.background_colors[0]
    for strip in app.screen._compositor.render_strips():
        for line_filter in app._filters:
            if line_filter.enabled:
                strip = strip.apply_filter(line_filter, background)
        for segment in strip:
            if segment.style is not None:
                yield from filter(None, (segment.style.color, segment.style.bgcolor))


async def until(condition: Callable[[], bool], pilot: Pilot[Left]) -> None:
    end = monotonic() + DEADLINE_S
    while not condition():
        if monotonic() > end:
            raise AssertionError(f"not so after {DEADLINE_S} s:\n" + "\n".join(picture(pilot.app)))
        await pilot.pause(0.02)


def drive(
    app: ChatApp,
    steps: Callable[[Pilot[Left]], Awaitable[None]],
    size: tuple[int, int] = (40, 12),
) -> Left | None:
    """Run the app, take the steps, return how it was left."""

    async def run() -> None:
        async with app.run_test(size=size) as pilot:
            await until(lambda: bool(app.screen.query(Exchange)), pilot)
            await until(lambda: standing(app) not in ("", "Working ..."), pilot)
            await steps(pilot)

    asyncio.run(run())
    return app.return_value
