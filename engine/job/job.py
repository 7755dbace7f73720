"""A job: what is known about one house, as beliefs by key. Immutable; every change is a new job."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from types import MappingProxyType

from engine.errors import FactError
from engine.job.belief import Belief, How, Scalar, likely_value
from engine.job.facts import checked
from engine.job.modes import Mode
from engine.physics.fan import BlowerTable

__all__ = ["LISTS", "BlowerSetting", "CoolingRow", "Job"]

LISTS = (
    "supply.trunks",
    "supply.branches",
    "return.drops",
    "return.trunks",
    "return.branches",
    "return.grilles",
    "supply.registers",
    "filters",
    "path.fittings",
    "readings",
)
"""Keys of the lists. How many entries were stated is kept beside the facts: none stated
is not the same as zero stated (a house without a return drop)."""


@dataclass(frozen=True, slots=True)
class BlowerSetting:
    """One setting of a blower's table.

    Attributes:
        table: Airflow at each static pressure, with the setting's name.
        modes: The modes this setting may be used in; empty means any.
    """

    table: BlowerTable
    modes: tuple[Mode, ...] = ()


@dataclass(frozen=True, slots=True)
class CoolingRow:
    """One row of the maker's cooling performance.

    Attributes:
        stage: "high" or "low".
        airflow_cfm: Airflow of the row.
        total_btuh: Total capacity.
        sensible_btuh: Sensible capacity; at most the total.
    """

    stage: str
    airflow_cfm: float
    total_btuh: float
    sensible_btuh: float


@dataclass(frozen=True, slots=True)
class Job:
    """What is known about one house.

    Attributes:
        beliefs: Stated beliefs by dotted key; nothing assumed is in here.
        lengths: Entries stated for each list of `LISTS`; a missing list was not spoken of.
        blower: Settings of the new blower's table.
        old_blower: Settings of the present blower's table.
        cooling_rows: The maker's cooling performance rows.
        told_whole: The sections told are all whose speed is judged, as in a file of facts; in an
            interview, what nobody spoke of may be there and be too fast all the same.
    """

    beliefs: Mapping[str, Belief] = field(default_factory=lambda: MappingProxyType({}))
    lengths: Mapping[str, int] = field(default_factory=lambda: MappingProxyType({}))
    blower: tuple[BlowerSetting, ...] = ()
    old_blower: tuple[BlowerSetting, ...] = ()
    cooling_rows: tuple[CoolingRow, ...] = ()
    told_whole: bool = False

    def stated(self, key: str) -> Belief | None:
        """The belief somebody stated for this key, or None."""
        return self.beliefs.get(key)

    def is_known(self, key: str) -> bool:
        """Whether somebody stated this fact: not assumed, not merely guessed by the catalogue."""
        belief = self.beliefs.get(key)
        return belief is not None and belief.how is not How.ASSUMED

    def value(self, key: str) -> Scalar | None:
        """The likely value of a stated fact; None if nobody stated it."""
        belief = self.beliefs.get(key)
        return None if belief is None else likely_value(belief)

    def number(self, key: str) -> float | None:
        """The likely value of a stated fact that is a number; None if not stated."""
        value = self.value(key)
        if isinstance(value, str):
            raise FactError(key, "is held as a word where a number was wanted")
        return value

    def word(self, key: str) -> str | None:
        """The likely value of a stated fact that is a word; None if not stated."""
        value = self.value(key)
        if isinstance(value, float | int):
            raise FactError(key, "is held as a number where a word was wanted")
        return value

    def length(self, name: str) -> int | None:
        """How many entries of a list were stated; None if it was not spoken of."""
        return self.lengths.get(name)

    def entries(self, name: str) -> Iterator[str]:
        """The keys of a list's stated entries: "supply.trunks.0", "supply.trunks.1", ..."""
        for index in range(self.lengths.get(name, 0)):
            yield f"{name}.{index}"

    def with_fact(self, key: str, belief: Belief) -> "Job":
        """A job that holds this belief too; a list grows to hold its index.

        Raises:
            FactError: No such fact, or an impossible value.
        """
        checked(key, belief)
        lengths = dict(self.lengths)
        name, index = _list_and_index(key)
        if name:
            lengths[name] = max(lengths.get(name, 0), index + 1)
        return replace(
            self,
            beliefs=MappingProxyType({**self.beliefs, key: belief}),
            lengths=MappingProxyType(lengths),
        )

    def with_facts(self, beliefs: Mapping[str, Belief]) -> "Job":
        """A job that holds all of these beliefs too."""
        job = self
        for key, belief in beliefs.items():
            job = job.with_fact(key, belief)
        return job

    def without(self, prefix: str) -> "Job":
        """A job that has forgotten this key and everything below it."""
        kept = {
            key: belief
            for key, belief in self.beliefs.items()
            if key != prefix and not key.startswith(prefix + ".")
        }
        lengths = {name: n for name, n in self.lengths.items() if name != prefix}
        return replace(self, beliefs=MappingProxyType(kept), lengths=MappingProxyType(lengths))

    def with_length(self, name: str, entries: int) -> "Job":
        """A job whose list is stated to have this many entries; zero is a statement too.

        Raises:
            FactError: No such list, or a negative number.
        """
        if name not in LISTS or entries < 0:
            raise FactError(name, "is no list of the catalogue, or its length is negative")
        return replace(self, lengths=MappingProxyType({**self.lengths, name: entries}))


def _list_and_index(key: str) -> tuple[str, int]:
    for name in LISTS:
        if key.startswith(name + "."):
            head = key[len(name) + 1 :].split(".", 1)[0]
            if head.isdigit():
                return name, int(head)
            raise FactError(key, f"needs an index after {name}, as in {name}.0")
    return "", 0
