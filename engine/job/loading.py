"""A job from plain data and back: what a job file or another program holds.

Keys may be dotted ("supply.trunks.0.width_in") or nested, lists by index or as JSON lists. A value
is a bare number or word (from a document), true or false (yes, no), {"low", "likely", "high"},
{"one_of": {...}} or {"value", "how", "hedged"}; ranges and choices may carry "how" too. An empty
list states that there is none; "NAME.length" states how many there are beyond those with facts.
Everything that can't be is refused with the key and what would do.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from math import isfinite
from typing import Any, Final

from engine.errors import EngineError, FactError
from engine.job.belief import Belief, Between, How, Known, OneOf, Scalar
from engine.job.facts import catalogue, checked, fact_for, pattern_of
from engine.job.job import LISTS, BlowerSetting, CoolingRow, Job
from engine.job.modes import Mode
from engine.job.possible import require_possible
from engine.job.wrong_units import nearest_keys
from engine.physics.blower_table import BlowerTable

__all__ = ["job_from_mapping", "job_to_mapping"]

_TABLES: Final = ("equipment.blower_tables", "old.blower_tables")
_ROWS: Final = "equipment.cooling_rows"
_BELIEF_KEYS: Final = ({"low", "likely", "high"}, {"one_of"}, {"value"})
_MOST_ENTRIES: Final = 40


def job_from_mapping(mapping: Mapping[str, Any]) -> Job:
    """Build a job.

    Args:
        mapping: Plain data as described above.

    Raises:
        FactError: Naming the key: unknown, in another unit, of the wrong kind, not finite, outside
            what is believable, or impossible beside another fact.
    """
    if not isinstance(mapping, Mapping):
        raise FactError("job", "must be an object with facts by key")
    job = Job()
    given: dict[str, Belief] = {}
    lengths: dict[str, int] = {}
    for key, value in _flat("", mapping):
        if key in _TABLES:
            job = _with_tables(job, key, value)
        elif key == _ROWS:
            job = replace(job, cooling_rows=_cooling_rows(value))
        elif key in LISTS:  # an empty list: stated to be none
            job = job.with_length(key, 0)
        elif key.removesuffix(".length") in LISTS:
            lengths[key.removesuffix(".length")] = _length(key, value)
        else:
            if key in given:
                raise FactError(key, "is given twice")
            given[key] = _belief(key, value)
    _require_whole_lists(given, lengths)
    job = job.with_facts(given)
    for name, length in lengths.items():
        if length < (job.length(name) or 0):
            raise FactError(f"{name}.length", f"is {length}, but more entries are given")
        job = job.with_length(name, length)
    require_possible(job)
    return job


def _length(key: str, value: Any) -> int:
    number = _number(key, value)
    if not (number.is_integer() and 0.0 <= number <= _MOST_ENTRIES):
        raise FactError(key, f"takes a whole number of entries, 0 to {_MOST_ENTRIES}")
    return int(number)


def _flat(prefix: str, value: Any) -> Iterator[tuple[str, Any]]:
    """Leaves of nested data, by dotted key; tables and empty lists are leaves."""
    if prefix in _TABLES or prefix == _ROWS:
        yield prefix, value
        return
    if isinstance(value, Mapping) and not _is_belief(prefix, value):
        if prefix in LISTS and value and all(str(k).isdigit() for k in value):
            value = {str(k): v for k, v in value.items()}
        for name, inner in value.items():
            if not isinstance(name, str) or not name:
                raise FactError(prefix or "job", "holds a name that is no text")
            yield from _flat(f"{prefix}.{_dotted(name)}" if prefix else _dotted(name), inner)
        return
    if isinstance(value, list | tuple):
        if prefix not in LISTS:
            raise FactError(prefix, "takes one value, not a list")
        if len(value) > _MOST_ENTRIES:
            raise FactError(prefix, f"has {len(value)} entries; at most {_MOST_ENTRIES} are taken")
        if not value:
            yield prefix, value
        for index, inner in enumerate(value):
            if not isinstance(inner, Mapping):
                raise FactError(f"{prefix}.{index}", "takes an object with the entry's facts")
            if not inner:
                raise FactError(f"{prefix}.{index}", "is an empty entry; leave it out")
            yield from _flat(f"{prefix}.{index}", inner)
        return
    yield prefix, value


def _dotted(name: str) -> str:
    return name.replace("[", ".").replace("]", "").strip()


def _is_belief(key: str, value: Mapping[str, Any]) -> bool:
    names = set(value)
    if not any(shape <= names for shape in _BELIEF_KEYS) and not names & {"likely", "one_of"}:
        return False
    return pattern_of(key) in catalogue() or not any(
        k.startswith(f"{pattern_of(key)}.") for k in catalogue()
    )


def _belief(key: str, value: Any) -> Belief:
    try:
        fact = fact_for(key)
    except FactError as error:
        raise FactError(key, nearest_keys(key) or error.problem) from None
    if value is None:
        raise FactError(key, "is empty; leave the key out when nobody knows")
    if isinstance(value, Mapping):
        return checked(key, _from_object(key, value, is_word=fact.is_word))
    return checked(key, Known(_scalar(key, value, is_word=fact.is_word), How.DOCUMENT))


def _from_object(key: str, value: Mapping[str, Any], *, is_word: bool) -> Belief:
    how = _how(key, value.get("how", "document"))
    names = set(value) - {"how"}
    try:
        if "one_of" in names:
            _only(key, names, {"one_of"})
            return _choice(key, value["one_of"], how, is_word=is_word)
        if "value" in names:
            _only(key, names, {"value", "hedged"})
            hedged = value.get("hedged", False)
            if not isinstance(hedged, bool):
                raise FactError(key, '"hedged" is true or false')
            return Known(_scalar(key, value["value"], is_word=is_word), how, hedged)
        _only(key, names, {"low", "likely", "high"})
        low, likely, high = (_number(key, value.get(name)) for name in ("low", "likely", "high"))
        return Between(low, likely, high, how)
    except FactError:
        raise
    except EngineError as error:
        raise FactError(key, str(error)) from None


def _only(key: str, names: set[str], allowed: set[str]) -> None:
    unknown = sorted(names - allowed)
    if unknown:
        raise FactError(
            key, f"holds {', '.join(unknown)}; it takes {', '.join(sorted(allowed))} and how"
        )


def _choice(key: str, weights: Any, how: How, *, is_word: bool) -> OneOf:
    if not isinstance(weights, Mapping) or not weights:
        raise FactError(key, '"one_of" takes an object with a weight for each option')
    pairs = []
    for option, weight in weights.items():
        value: Any = option
        if not is_word and isinstance(option, str):
            try:
                value = float(option)
            except ValueError:
                raise FactError(key, f"takes numbers, not {option!r}") from None
        pairs.append((_scalar(key, value, is_word=is_word), _number(key, weight)))
    return OneOf(tuple(pairs), how)


def _how(key: str, word: Any) -> How:
    try:
        return How(word)
    except ValueError:
        known = ", ".join(how.value for how in How)
        raise FactError(key, f'"how" is one of {known}, not {word!r}') from None


def _scalar(key: str, value: Any, *, is_word: bool) -> Scalar:
    if isinstance(value, bool):
        if "yes" not in fact_for(key).choices:
            raise FactError(key, "is no yes or no question; true and false don't fit")
        return "yes" if value else "no"
    if isinstance(value, str):
        if not is_word:
            fact = fact_for(key)
            unit = f" in {fact.unit}" if fact.unit else ""
            raise FactError(key, f"takes a number{unit}, not the text {value!r}")
        return value
    return _number(key, value)


def _number(key: str, value: Any) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise FactError(key, f"takes a number, not {value!r}")
    try:
        number = float(value)
    except OverflowError:
        number = float("inf")
    if not isfinite(number):
        raise FactError(key, "takes a finite number")
    return number


def _require_whole_lists(given: Mapping[str, Belief], lengths: Mapping[str, int]) -> None:
    """Refuse an index whose predecessors were left out."""
    for name in LISTS:
        indices = {
            int(key[len(name) + 1 :].split(".", 1)[0])
            for key in given
            if key.startswith(f"{name}.")
        }
        missing = sorted(set(range(max(indices, default=-1) + 1)) - indices)
        if missing and name not in lengths:
            raise FactError(
                f"{name}.{missing[0]}", "is missing before later entries; count from 0 without gaps"
            )


def _with_tables(job: Job, key: str, value: Any) -> Job:
    settings: list[BlowerSetting] = []
    for index, entry in enumerate(_objects(key, value)):
        here = f"{key}.{index}"
        _only_names(here, entry, {"setting", "modes", "rows"})
        name = entry.get("setting", f"setting {index + 1}")
        if not isinstance(name, str | int | float) or isinstance(name, bool) or str(name) == "":
            raise FactError(f"{here}.setting", "takes the setting's name")
        if str(name) in {setting.table.setting for setting in settings}:
            raise FactError(f"{here}.setting", f"{name!r} is there twice")
        rows = [
            (
                _cell(f"{here}.rows.{i}", row, "static_inwc"),
                _cell(f"{here}.rows.{i}", row, "airflow_cfm"),
            )
            for i, row in enumerate(_objects(f"{here}.rows", entry.get("rows")))
        ]
        table = BlowerTable.from_rows(str(name), rows, here)
        settings.append(BlowerSetting(table, _modes(f"{here}.modes", entry.get("modes", ()))))
    if key == "old.blower_tables":
        return replace(job, old_blower=tuple(settings))
    return replace(job, blower=tuple(settings))


def _objects(key: str, value: Any) -> Sequence[Mapping[str, Any]]:
    if not isinstance(value, list | tuple) or not value:
        raise FactError(key, "takes a list of objects, at least one")
    for index, entry in enumerate(value):
        if not isinstance(entry, Mapping):
            raise FactError(f"{key}.{index}", "takes an object")
    return value


def _only_names(key: str, entry: Mapping[str, Any], allowed: set[str]) -> None:
    for name in entry:
        if name not in allowed:
            raise FactError(
                f"{key}.{name}", f"is unknown here; known are {', '.join(sorted(allowed))}"
            )


def _cell(key: str, row: Mapping[str, Any], name: str) -> float:
    if name not in row:
        raise FactError(f"{key}.{name}", "is missing")
    return _number(f"{key}.{name}", row[name])


def _modes(key: str, value: Any) -> tuple[Mode, ...]:
    if not isinstance(value, list | tuple):
        raise FactError(key, "takes a list of modes; leave it out where any mode may use it")
    try:
        return tuple(Mode(word) for word in value)
    except ValueError:
        known = ", ".join(mode.value for mode in Mode)
        raise FactError(key, f"holds a word that is no mode; modes are {known}") from None


def _cooling_rows(value: Any) -> tuple[CoolingRow, ...]:
    found = []
    for index, row in enumerate(_objects(_ROWS, value)):
        here = f"{_ROWS}.{index}"
        _only_names(here, row, {"stage", "airflow_cfm", "total_btuh", "sensible_btuh"})
        stage = row.get("stage", "high")
        if stage not in ("high", "low"):
            raise FactError(f"{here}.stage", f'is "high" or "low", not {stage!r}')
        airflow, total, sensible = (
            _cell(here, row, name) for name in ("airflow_cfm", "total_btuh", "sensible_btuh")
        )
        if not 100.0 <= airflow <= 4000.0:
            raise FactError(f"{here}.airflow_cfm", f"{airflow:,g} is outside 100 to 4,000 CFM")
        if not 3000.0 <= total <= 150000.0:
            raise FactError(f"{here}.total_btuh", f"{total:,g} is outside 3,000 to 150,000 Btu/h")
        if not 0.0 < sensible <= total:
            raise FactError(
                f"{here}.sensible_btuh",
                f"{sensible:,g} is not above 0 and at most the total, {total:,g} Btu/h",
            )
        found.append(CoolingRow(stage, airflow, total, sensible))
    return tuple(found)


def job_to_mapping(job: Job) -> dict[str, Any]:
    """Plain data that `job_from_mapping` turns into the same job; dotted keys."""
    told: dict[str, Any] = {key: _told(belief) for key, belief in job.beliefs.items()}
    for name, length in job.lengths.items():
        if length == 0:
            told[name] = []
        elif not any(key.startswith(f"{name}.{length - 1}.") for key in job.beliefs):
            told[f"{name}.length"] = length
    for key, settings in zip(_TABLES, (job.blower, job.old_blower), strict=True):
        if settings:
            told[key] = [_told_setting(setting) for setting in settings]
    if job.cooling_rows:
        told[_ROWS] = [
            {
                "stage": row.stage,
                "airflow_cfm": row.airflow_cfm,
                "total_btuh": row.total_btuh,
                "sensible_btuh": row.sensible_btuh,
            }
            for row in job.cooling_rows
        ]
    return told


def _told(belief: Belief) -> Any:
    match belief:
        case Known(value=value, how=How.DOCUMENT, hedged=False):
            return value
        case Known(value=value, how=how, hedged=hedged):
            return {"value": value, "how": how.value, "hedged": hedged}
        case Between(low=low, likely=likely, high=high, how=how):
            return {"low": low, "likely": likely, "high": high, "how": how.value}
        case OneOf(weights=weights, how=how):
            return {"one_of": {str(v): w for v, w in weights}, "how": how.value}


def _told_setting(setting: BlowerSetting) -> dict[str, Any]:
    told: dict[str, Any] = {"setting": setting.table.setting}
    if setting.modes:
        told["modes"] = [mode.value for mode in setting.modes]
    told["rows"] = [
        {"static_inwc": static, "airflow_cfm": airflow}
        for static, airflow in zip(
            setting.table.static_inwc, setting.table.airflow_cfm, strict=True
        )
    ]
    return told
