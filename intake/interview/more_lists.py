"""Facts of fittings, flex, tools, the blower table and the allowed rise."""

from collections.abc import Mapping
from typing import Final

from engine.job.belief import Belief, Between, How, Known
from engine.job.job import BlowerSetting, CoolingRow, Job
from engine.job.modes import Mode
from engine.physics.blower_table import BlowerTable
from intake.interview.beliefs import Facts, Knowing, belief_of, how_known, yes_or_no
from intake.interview.list_rows import NO_FACTS, entries, figure_of
from intake.interview.question import Question
from intake.reading.result import Accepted

__all__ = ["blower", "fittings", "inside_table", "rise", "slack", "tools"]


def fittings(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """Elbows, takeoffs and boots along the longest way."""
    rows = [row for row in entries(reading.values, "fittings") if "kind" in row]
    beliefs: dict[str, Belief] = {}
    for index, row in enumerate(rows):
        key = f"path.fittings.{index}"
        for name in ("kind", "side", "count", "equivalent_ft"):
            value = row.get(name)
            if isinstance(value, str | int | float) and not isinstance(value, bool):
                said = float(value) if isinstance(value, int | float) else value
                beliefs[f"{key}.{name}"] = belief_of(f"{key}.{name}", said, knowing)
    if not rows:
        return NO_FACTS
    return Facts(beliefs, {"path.fittings": len(rows)}, ("path.fittings",))


_SLACK: Final[Mapping[str, tuple[float, float, float]]] = {
    "tight": (0.0, 0.03, 0.06),
    "a_little_slack": (0.05, 0.10, 0.16),
    "bunched": (0.15, 0.28, 0.40),
}
"""Slack seen by eye, as a share of the full length: low, likely, high.

Source: 0 to 4 % pulled tight, 4 to 8 % careful, 15 % relaxed, 30 % bunched (reference figures,
judgement); eyes are good to about 8 points and call too little (common practice).
"""


def slack(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """How slack the flex lies, as a share of its length."""
    share = _SLACK.get(str(reading.values.get("choice")))
    if share is None:
        return NO_FACTS
    section = question.facts[0].rpartition(".0.")[0]
    keys = [
        f"{e}.slack_fraction" for e in job.entries(section) if job.word(f"{e}.material") == "flex"
    ]
    return Facts({key: Between(*share, how_known(key, knowing)) for key in keys or question.facts})


def tools(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """What is in the bag and what is not."""
    beliefs: dict[str, Belief] = {}
    for name, said in (("has", "yes"), ("lacks", "no")):
        tools = reading.values.get(name)
        for tool in tools if isinstance(tools, list) else ():
            beliefs[f"site.has_{tool}"] = Known(said, How.MEASURED)
    return Facts(beliefs)


def inside_table(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """In the table is the reverse of outside its rating."""
    yes = reading.values.get("yes")
    if not isinstance(yes, bool):
        return NO_FACTS
    return Facts({question.section: yes_or_no(question.section, not yes, knowing)})


def rise(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """Temperatures of the burner at high fire: a reading of its own beside the gauge's."""
    key = "readings.1" if job.word("site.has_gauge") == "yes" else "readings.0"
    beliefs: dict[str, Belief] = {}
    for name, fact in (("return_degF", "return_degf"), ("supply_degF", "supply_degf")):
        value = reading.values.get(name)
        if isinstance(value, int | float):
            beliefs[f"{key}.{fact}"] = belief_of(f"{key}.{fact}", float(value), knowing)
    if len(beliefs) == 2:
        beliefs[f"{key}.mode"] = Known(Mode.HEATING_HIGH.value, How.MEASURED)
    return Facts(beliefs)


def blower(question: Question, reading: Accepted, knowing: Knowing, job: Job) -> Facts:
    """The blower settings of a table."""
    settings: list[BlowerSetting] = []
    for number, table in enumerate(entries(reading.values, "blower_tables"), start=1):
        rows = [row for row in entries(table, "rows") if "static_inwc" in row]
        pairs = [(figure_of(row["static_inwc"]), figure_of(row["airflow_cfm"])) for row in rows]
        if pairs:
            name = str(table.get("setting") or f"setting {number}")
            settings.append(BlowerSetting(BlowerTable.from_rows(name, pairs)))
    cooling = [
        CoolingRow(
            str(row.get("stage") or "high"),
            figure_of(row["airflow_cfm"]),
            figure_of(row["total_btuh"]),
            figure_of(row["sensible_btuh"]),
        )
        for row in entries(reading.values, "cooling_rows")
        if "sensible_btuh" in row
    ]
    return Facts(blower=tuple(settings) or None, cooling_rows=tuple(cooling) or None)
