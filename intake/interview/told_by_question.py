"""Answers that one question alone reads: zones, weather, places, ends, told as people tell them."""

import re
from typing import Final

from engine.job.job import Job
from intake.interview.blower_told import not_tried, runs_not
from intake.interview.built_when import of_the_house
from intake.interview.filters_told import filters_each_in_place, the_filter
from intake.interview.heat_told import dry_drop, of_what_is_asked
from intake.interview.out_and_in import plainly_put
from intake.interview.pressures_told import pressures_told
from intake.interview.question import Question
from intake.interview.rise_told import rise_told
from intake.interview.table_told import coil_in_the_table
from intake.interview.told_otherwise import one_zone, rooms_named
from intake.interview.weather_told import degrees_in_doubt, warm_enough
from intake.interview.zones_told import zones_told
from intake.reading.manner import sureness
from intake.reading.result import Accepted, AskBack, AskKind, Rejected, Unknown

__all__ = ["plainly_asked", "told_by_question"]

Told = Accepted | AskBack | Rejected | Unknown | None


def told_by_question(question: Question, line: str, job: Job) -> Told:
    """What a line says in the open question's own terms; None where the plain reader reads it.

    Args:
        question: The open question.
        line: Normalised text.
        job: What is known.
    """
    yes = _yes_or_no(question, line)
    if yes is not None:
        return Accepted({"yes": yes}, sureness(line))
    if question.key == "weather" and degrees_in_doubt(line):
        return AskBack(_WARM_OR_NOT, ({"yes": True}, {"yes": False}), AskKind.TWO_READINGS)
    if question.field == "elevation" and _SOME_HUNDRED.fullmatch(line):
        return AskBack("About how many feet is that?", (), AskKind.MISSING_PART)
    if question.field == "static_pressure" and _NO_ZERO.search(line):
        return Unknown("The gauge can't be trusted.")
    if question.key == "old_runs" and not_tried(line):
        return Unknown("Nobody has tried.")
    if question.key == "d_rooms" and (rooms := rooms_named(line)):
        return Accepted({"count": rooms}, sureness(line))
    if question.key == "filter":
        return filters_each_in_place(line)
    if question.key == "filter_place" and _IN_BOTH.search(line):
        return AskBack(_WHICH_FILTERS, (), AskKind.MISSING_PART)
    if question.key == "coil_drop":
        return dry_drop(line)
    if question.field == "elevation" and _INCHES.search(line):
        return Rejected(f"Those are inches. {question.words}")
    if question.field == "static_pressure":
        return pressures_told(question, _AND.sub(" and ", line), job)
    return rise_told(line) if question.field == "rise_range" else None


def _yes_or_no(question: Question, line: str) -> bool | None:
    """Yes or no by what is there; None if the line doesn't settle it so."""
    if question.key == "weather":
        return warm_enough(line)
    if question.key == "zoned":
        return False if one_zone(line) else zones_told(line)
    if question.key == "coil_in_table":
        return coil_in_the_table(line)
    return False if question.key == "old_runs" and runs_not(line) else None


def plainly_asked(question: Question, line: str) -> str:
    """The line without what it says beside the point of the open question.

    Args:
        question: The open question.
        line: Normalised text.
    """
    if question.field == "year":
        return of_the_house(line)
    if question.key == "filter":
        return the_filter(line)
    if question.field == "capacity":
        return of_what_is_asked(question.key, plainly_put(line))
    if question.field == "elevation":
        return _METERS_MEANT.sub(r"\1 feet", line)
    if question.key == "blower_limit":
        return " ".join(_RATED_OR_EXTERNAL.sub(" ", line).split())
    return _AND.sub(" and ", line) if question.field == "static_pressure" else line


_WARM_OR_NOT: Final = (
    "Warm enough if those are C, too cold if they are F. Is it warm enough to run the cooling?"
)
_SOME_HUNDRED: Final = re.compile(
    r"(?:maybe |like |about |oh )*(?:a few|some|several) (?:hundred|thousand)"
    r"(?: (?:feet|ft))?[.! ]*"
)
_NO_ZERO: Final = re.compile(
    r"\b(?:won'?t|doesn'?t|can'?t|cannot|couldn'?t|wouldn'?t|will not|does not)"
    r" (?:hold |go to |get to )?zero\b(?!.*\d)"
)
_IN_BOTH: Final = re.compile(r"\bboth\b|\bone\b.*\bgrill?e?s?\b.*\bone\b|\bone\b.*\bone\b.*\bgrill")
_WHICH_FILTERS: Final = (
    "Two filters? Say each with its place, like “20x20x1 in the grille, 16x25x1 at the unit”."
)
_INCHES: Final = re.compile(r"\d ?(?:\"|inch|in\b)|\binch(?:es)?\b")
_METERS_MEANT: Final = re.compile(
    r"([\d,.]+) ?(?:meters?|metres?|m)\b[, ]+(?:i mean|no|sorry|wait|make that)[, ]+"
    r"(?:i mean[, ]+)?(?:feet|ft|foot)\b"
)
_RATED_OR_EXTERNAL: Final = re.compile(
    r"\brated (?:at |for )?\d?\.\d+[, ]*(?=.*\d)|\b(?:esp|tesp|external|static)\b"
)
_AND: Final = re.compile(r"(?<=\d) n (?=\d?\.)")
