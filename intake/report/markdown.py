"""The report as Markdown. Every text is escaped: what was typed shows as it was typed."""

import re
from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from intake.report.content import AIR_NOTE, SURE_NOTE, Content
from intake.report.pieces import Line, ModeContent, Reason

__all__ = ["escaped", "report_markdown"]

_SPECIAL: Final = re.compile(r"([\\`*_\[\]|~])")
_STARTS: Final = re.compile(r"^([#+=-])")
_NUMBERED: Final = re.compile(r"^(\d+)([.)])(?=\s|$)")


def escaped(text: str) -> str:
    """Text that shows in Markdown as it is: no markup, no HTML, no link, no table cell, one line.

    >>> escaped("<b>hall</b> 2*3, see https://x")
    '&lt;b&gt;hall&lt;/b&gt; 2\\\\*3, see https&#58;//x'
    """
    line = " ".join(text.split())
    line = line.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    line = _SPECIAL.sub(r"\\\1", line)
    line = line.replace("://", "&#58;//").replace("@", "&#64;")
    line = re.sub(r"(?i)\b(www)\.", r"\1&#46;", line)
    return _NUMBERED.sub(r"\1\\\2", _STARTS.sub(r"\\\1", line))


def report_markdown(content: Content) -> str:
    """The whole report, sections in reading order; a section with nothing to say is left out."""
    lines = [f"# {escaped(content.title)}", "", f"**{escaped(content.headline)}**"]
    for heading, body in (
        ("Booking", _booking(content)),
        ("What was asked", _asked(content)),
        ("The verdict, airflow by airflow", _verdict(content.modes)),
        ("Why", _reasons(content.modes)),
        ("The most these ducts carry quietly", _bullets(content.capacity)),
        ("What to change", _changes(content)),
        ("What was assumed, most influential first", _pairs(content.assumed)),
        ("What to collect next", _pairs(content.collect_next)),
        ("Readings that don't agree", _pairs(content.doubts)),
        ("The smallest zone alone", _bullets(content.zone)),
        ("Not answered", _bullets(content.refused)),
        ("Cautions", _cautions(content)),
        ("Whose limits were used", _limits(content)),
        ("What was answered", _answers(content)),
        ("Every check", _checks(content.modes)),
    ):
        told = list(body)
        if told:
            lines += ["", f"## {heading}", "", *told]
    return "\n".join([*lines, "", "---", "", escaped(content.defers)]) + "\n"


def _bullets(texts: Iterable[str]) -> Iterator[str]:
    for text in texts:
        yield f"- {escaped(text)}"


def _pairs(lines: Iterable[Line]) -> Iterator[str]:
    for line in lines:
        note = f" ({escaped(line.note)})" if line.note else ""
        text = f": {escaped(line.text)}" if line.text else ""
        yield f"- {escaped(line.label)}{text}{note}"


def _table(head: Sequence[str], rows: Iterable[Sequence[str]]) -> Iterator[str]:
    told = list(rows)
    if told:
        yield f"| {' | '.join(head)} |"
        yield f"|{'---|' * len(head)}"
        for row in told:
            yield f"| {' | '.join(escaped(cell) for cell in row)} |"


def _booking(content: Content) -> Iterator[str]:
    if content.booking is None:
        return
    yield f"**{escaped(content.booking.told)}**"
    yield ""
    for line in content.booking.lines:
        yield f"- {escaped(line.label)}: {escaped('; '.join(line.texts))}"


def _asked(content: Content) -> Iterator[str]:
    yield from _pairs(content.equipment)
    for mode in content.modes:
        yield f"- air for {escaped(mode.name)}: {escaped(mode.target)}"
    if content.modes:
        yield ""
        yield escaped(AIR_NOTE)


def _verdict(modes: Sequence[ModeContent]) -> Iterator[str]:
    yield from _table(
        ("Airflow", "Needs", "Will get", "Verdict", "How sure", "Blower on", "Held back by"),
        (
            (
                one.name,
                one.target,
                one.delivered,
                one.told,
                one.sure,
                one.setting,
                one.held_back_by,
            )
            for one in modes
        ),
    )
    if modes:
        yield ""
        yield escaped(SURE_NOTE)


def _reasons(modes: Sequence[ModeContent]) -> Iterator[str]:
    for mode in modes:
        yield f"### {escaped(mode.name)}"
        yield ""
        same = f" For the same reasons as {mode.same_as}." if mode.same_as else ""
        yield escaped(f"{mode.sentence}{same}")
        yield ""
        for reason in (*mode.reasons, *mode.notes):
            yield from _reason(reason)
        yield ""


def _reason(reason: Reason) -> Iterator[str]:
    told = " ".join(part for part in (reason.words, reason.odds, reason.turns) if part)
    yield f"- **{escaped(reason.part)}, {escaped(reason.status)}.** {escaped(told)}"
    if reason.formula:
        yield f"  - Arithmetic: {escaped(reason.formula)}"
    if reason.source:
        yield f"  - Limit from: {escaped(reason.source)}"


def _changes(content: Content) -> Iterator[str]:
    for one in content.sets:
        yield f"**{escaped(one.purpose)}** ({escaped(one.sure)}), about {escaped(one.effort)}:"
        yield ""
        for number, line in enumerate(one.changes, 1):
            yield f"{number}. {escaped(line.label)}: {escaped(line.text)} ({escaped(line.note)})"
        yield ""
    if content.others:
        yield "Also tried, and each helps some:"
        yield ""
        yield from _pairs(content.others)


def _cautions(content: Content) -> Iterator[str]:
    for one in content.cautions:
        because = f" *Because: {escaped(one.because)}*" if one.because else ""
        yield f"- {escaped(one.words)}{because}"


def _limits(content: Content) -> Iterator[str]:
    if content.turned:
        yield "The office has turned these limits:"
        yield ""
        yield from _pairs(content.turned)
        yield ""
    yield from _table(
        ("Check", "Limit", "From"), ((one.label, one.text, one.note) for one in content.limits)
    )


def _answers(content: Content) -> Iterator[str]:
    yield from _table(
        ("Fact", "Value", "How known"), ((one.what, one.value, one.how) for one in content.answers)
    )
    if content.typed:
        yield ""
        yield "As it was typed:"
        yield ""
        for typed in content.typed:
            yield f"- {escaped(typed.question)}: {escaped(typed.text)}"


def _checks(modes: Sequence[ModeContent]) -> Iterator[str]:
    for mode in modes:
        if mode.rows:
            yield f"### {escaped(mode.name)}"
            yield ""
            yield from _table(
                ("Check", "Figure", "Limits", "Stands"),
                ((one.what, one.figure, one.limits, one.status) for one in mode.rows),
            )
            yield ""
