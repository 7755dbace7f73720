"""A line of plain words is read as it would be if each rule had searched it.

Rules skip such lines; here nothing is plain, and every reading must stay the same.
"""

from __future__ import annotations

import json
import random
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from intake.reading import plain_talk
from intake.reading.corpus import read_line
from intake.reading.corrections import correction
from intake.reading.frames import framed
from intake.reading.manner import cant_say, sureness
from intake.reading.phrasing import bounded, elsewhere, multiplied
from intake.reading.sayings import in_plain_words
from intake.reading.scan import scan, scanned

CORPUS = Path(__file__).parents[2] / "corpus"
FIELDS = ("airflow", "static_pressure", "length", "elevation", "temperature", "capacity",
          "efficiency", "duct", "filter", "grille", "material", "count", "area")  # fmt: skip
WORDS = sorted(plain_talk.PLAIN)
FIGURES = ("12", "0.4", ".5", "20x8", "1,200", "6", "90", "2")
SIGNS = (",", ".", "-", "/", "'", '"', "(", ")", "@", "+", "%", ";", ":", "=")


@contextmanager
def nothing_plain() -> Iterator[None]:
    """Make every rule search each line."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(plain_talk, "PLAIN", frozenset())
        plain_talk.is_plain.cache_clear()
        scanned.cache_clear()
        yield
    plain_talk.is_plain.cache_clear()
    scanned.cache_clear()


def searched(function: Callable[[], Any]) -> Any:
    with nothing_plain():
        return function()


@settings(max_examples=400, deadline=None)
@given(
    st.sampled_from(FIELDS),
    st.lists(st.sampled_from((*WORDS, *FIGURES * 12, *SIGNS * 3)), min_size=1, max_size=9),
)
def test_a_line_of_plain_words_is_read_as_if_it_were_searched(field: str, parts: list[str]) -> None:
    line = {"field": field, "text": " ".join(parts)}
    assert read_line(line) == searched(lambda: read_line(line))


@pytest.mark.parametrize("path", sorted(CORPUS.glob("*.jsonl")), ids=lambda path: path.stem)
def test_a_line_of_the_corpus_is_read_as_if_it_were_searched(path: Path) -> None:
    lines = [json.loads(line) for line in path.read_text(encoding="utf-8").splitlines()]
    lines = [line for line in lines if plain_talk.is_plain(line["text"].lower())]
    found = [read_line(line) for line in lines]
    assert found == searched(lambda: [read_line(line) for line in lines])


def test_no_rule_finds_anything_in_neighbouring_plain_words() -> None:
    rng = random.Random(5)
    lines = [" ".join((*rng.choices(WORDS, k=4), "12", *rng.choices(WORDS, k=2)))
             for _ in range(5000)]  # fmt: skip

    def told(line: str) -> tuple[Any, ...]:
        return (
            sureness(line),
            cant_say(line),
            bounded(line),
            multiplied(line),
            framed("airflow", line),
            correction(line, "length", None, line, lambda field, text: False),
            in_plain_words(line, "length"),
            in_plain_words(line, "duct"),
            in_plain_words(line, "airflow"),
        )

    found = [told(line) for line in lines]
    assert found == searched(lambda: [told(line) for line in lines])


def test_plain_figures_are_about_what_is_asked() -> None:
    rng = random.Random(6)
    lines = [" ".join((*rng.choices(WORDS, k=3), "12", *rng.choices(WORDS, k=2)))
             for _ in range(1000)]  # fmt: skip
    found = [elsewhere(scan(line, "elevation")) for line in lines]
    assert found == searched(lambda: [elsewhere(scan(line, "elevation")) for line in lines])


def test_a_denied_asked_or_excused_line_is_not_plain() -> None:
    for line in ("not 40 ft", "40 ft?", "can't see it", "used to be flex", "call me", "sorry, 12"):
        assert not plain_talk.is_plain(line)
